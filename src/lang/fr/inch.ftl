# Units in place of those in lang.ftl, for one who reads in inch.

-mm = in
-m = ft
-mm-rev = in/tr
-m-min = ft/min
-um = µin
-n = lbf
