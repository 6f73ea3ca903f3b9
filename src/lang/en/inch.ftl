# Units in place of those in lang.ftl, for one who reads in inch.

-mm = in
-m = ft
-mm-rev = in/rev
-m-min = sfm
-um = µin
-n = lbf
