# The language itself.

language-name = Deutsch
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = ,
unit-rpm = 1/min
unit-feed = mm/U
