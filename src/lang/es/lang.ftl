# The language itself.

language-name = Español
# Whether a tradesman who speaks the language has read its cautions. If not, they stand in English too.
cautions-read = no
decimal-mark = ,
unit-rpm = rpm
# Units that texts tell; inch.ftl has those of the inch system.
-mm = mm
-m = m
-mm-rev = mm/rev
-m-min = m/min
-um = µm
-n = N
unit-mm = { -mm }
unit-um = { -um }
unit-n = { -n }
unit-speed = { -m-min }
unit-bow = { -mm }/{ -m }
unit-feed = { -mm-rev }
