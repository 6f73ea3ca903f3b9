# Units in place of those in lang.ftl, for one who reads in inch.

-mm = po
-m = pi
-mm-rev = po/tr
-m-min = pi/min
-um = µpo
-n = lbf
