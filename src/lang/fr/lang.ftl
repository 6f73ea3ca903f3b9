# The language itself.

language-name = français
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = ,
unit-rpm = tr/min
unit-feed = mm/tr
