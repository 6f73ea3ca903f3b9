# Units in place of those in lang.ftl, for one who reads in inch.

-mm = in
-m = ft
-mm-rev = in/giro
-m-min = ft/min
-um = µin
-n = lbf
