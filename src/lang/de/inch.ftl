# Units in place of those in lang.ftl, for one who reads in inch.

-mm = Zoll
-m = ft
-mm-rev = Zoll/U
-m-min = ft/min
-um = µin
-n = lbf
