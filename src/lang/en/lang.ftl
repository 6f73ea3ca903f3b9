# The language itself.

language-name = English
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = yes
decimal-mark = .
unit-rpm = rev/min
unit-feed = mm/rev
