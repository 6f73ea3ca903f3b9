# Units in place of those in lang.ftl, for one who reads in inch.

-mm = pulg
-m = pie
-mm-rev = pulg/rev
-m-min = pie/min
-um = µpulg
-n = lbf
