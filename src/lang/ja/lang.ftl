# The language itself.

language-name = 日本語
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = .
unit-rpm = min⁻¹
unit-feed = mm/rev
