# The language itself.

language-name = Deutsch
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = ,
unit-rpm = 1/min
# Units that texts tell; inch.ftl has those of the inch system.
-mm = mm
-m = m
-mm-rev = mm/U
-m-min = m/min
-um = µm
-n = N
unit-mm = { -mm }
unit-um = { -um }
unit-n = { -n }
unit-speed = { -m-min }
unit-bow = { -mm }/{ -m }
unit-feed = { -mm-rev }
