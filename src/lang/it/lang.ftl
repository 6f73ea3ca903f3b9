# The language itself.

language-name = Italiano
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = ,
unit-rpm = giri/min
unit-feed = mm/giro
