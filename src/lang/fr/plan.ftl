# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before } et { $item }
list-comma = { $before }, { $item }
list-semicolon = { $before } ; { $item }
list-more = { $items } et { $more } de plus

## What a check found. The numbers carry their unit.

finding-at-most = le critère ({ $check }) donne { $demand }, maximum admis { $limit }
finding-stiffness = la raideur de la barre à l’outil est de { $demand }, il faut au moins { $limit }
finding-span-stiffness = la plus faible raideur entre la prise et le canon est de { $demand }, la limite interne est de { $limit }
finding-free-ratio = l’avant libre a une longueur de { $demand } diamètres, la règle interne admet { $limit }
finding-whirl = la vitesse est de { $demand } fois la vitesse critique, maximum admis { $limit } fois
finding-whip = la courbure de la barre en rotation (fouettement) est de { $demand }, maximum admis { $limit }
finding-sag = la flèche de la barre due à son poids est de { $demand }, maximum admis { $limit }
finding-pick-up = l’avant libre est désaxé de { $demand } au moment de la prise, maximum admis { $limit }
finding-bore = la courbure de la pièce dans l’alésage de la contre-broche est de { $demand }, maximum admis { $limit }
finding-bore-no-room = la pièce n’a pas de place dans l’alésage de la contre-broche si le jeu dans l’alésage est respecté
finding-cut = la flexion de la barre fait varier le diamètre de { $demand } le long de la passe, maximum admis { $limit }
finding-chatter = la profondeur de passe est de { $demand }, le broutement commence à { $limit }
finding-drill = l’outil fait fléchir la barre de { $demand }, maximum admis { $limit }
finding-release = la barre descend de { $demand } sous son poids quand la pince de la contre-broche s’ouvre, maximum admis { $limit }
finding-torque = le couple est de { $demand }, la pince tient au plus { $limit }
finding-push = la charge est de { $demand }, la pince tient au plus { $limit }
finding-buckling = la barre est comprimée suivant son axe avec { $demand }, maximum admis { $limit } pour qu’elle ne flambe pas
finding-run-out = le battement de la pince donne à la surface usinée un battement de { $demand }, maximum admis { $limit }
finding-back = la flexion de l’extrémité arrière fait varier le diamètre de { $demand }, maximum admis { $limit }

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = avec la pince de la contre-broche à { $nose } { -mm } et une longueur tournée de { $turned } { -mm } : { $finding }
reason-front-free = avec l’extrémité avant libre et une longueur tournée de { $turned } { -mm } : { $finding }
reason-on-centre = avec la pointe à l’avant et une longueur tournée de { $turned } { -mm } : { $finding }
reason-centre = l’effort de la pointe
reason-centre-comes = avant l’arrivée de la pointe : { $finding }
reason-turned = à une longueur tournée de { $turned } { -mm } : { $finding }
reason-bar-fed-out = à une longueur tournée de { $turned } { -mm }, avec la barre avancée pour tourner jusqu’à { $end } { -mm } : { $finding }
reason-along-cut = le long de la passe qui finit à { $end } { -mm } : { $finding }
reason-under-tool = pendant l’usinage ({ $work }), à une longueur tournée de { $turned } { -mm } : { $finding }
reason-fed-on = avec la barre avancée jusqu’à { $turned } { -mm } pour { $work } : { $finding }
reason-last-grip-torque = dernière prise, au tronçonnage ou pendant l’usinage de l’extrémité arrière : { $finding } (torque_margin { $margin } compris)
reason-last-grip-torque-share = dernière prise, au tronçonnage ou pendant l’usinage de l’extrémité arrière : { $finding } (torque_margin { $margin } compris ; par la seule torsion de la barre, { $percent } % du couple de tronçonnage irait à cette prise ; donner torsional_stiffness pour en tenir compte)
reason-last-grip-push = dernière prise, pendant l’usinage ({ $work }) : { $finding } (torque_margin { $margin } compris)
reason-last-grip-back = dernière prise, pendant l’usinage de l’extrémité arrière ({ $work }) : { $finding }
reason-part-off = tronçonnage
reason-front-work = pince de la poupée, sous la charge à l’extrémité avant ({ $work }) : { $finding } (torque_margin { $margin } compris)
reason-front-work-presses = pendant l’usinage de l’extrémité avant : { $finding }

## Why there is no plan

stopped-together = plusieurs limites arrêtent la barre ici, et toutes doivent changer : { $reasons }
stopped-other-collet = avec la pince { $collet }, la longueur tournée atteint { $turned } { -mm } : { $reason }
stopped-no-grip = { $reason } ; la contre-broche n’aide pas : { $why }
bar-too-thick-for-bush = la barre de { $bar } { -mm } est trop grosse pour le canon, qui admet au plus { $most } { -mm }
bar-too-thick-for-bush-only = la barre de { $bar } { -mm } est trop grosse pour le canon, qui admet au plus { $most } { -mm } ; sans canon, la machine admet { $collet } { -mm } pour des pièces courtes
bar-too-thick-for-both = la barre de { $bar } { -mm } est trop grosse pour le canon, qui admet au plus { $most } { -mm }, et pour la pince de la poupée sans canon, qui admet au plus { $collet } { -mm }
bar-too-thick-for-collet = la barre de { $bar } { -mm } est trop grosse pour la pince de la poupée, qui admet au plus { $most } { -mm }
tools-no-place = la machine n’a pas de poste pour chaque outil : { $missing }
tools-no-pair = tous les outils de tournage sont du même côté ; une paire d’outils opposés ne peut donc pas couper
tools-no-tandem = il n’y a pas deux outils de tournage qui puissent couper en tandem avec l’outil de finition de ce côté (voir `opposed` et `tandem` dans les outils de la machine)
tools-room = postes ({ $place }) : requis { $needed } ({ $names }), sur la machine { $places }
tools-room-elsewhere = postes ({ $place }) : requis { $needed } ({ $names }), sur la machine { $places }, utilisables en plus parmi d’autres types de poste { $elsewhere }
place-turning = outils de tournage
place-cross-driven = outils tournants transversaux
place-front-fixed = outils fixes pour l’extrémité avant
place-front-driven = outils tournants pour l’extrémité avant
place-back-fixed = outils fixes pour l’extrémité arrière
place-back-driven = outils tournants pour l’extrémité arrière
place-whirling = têtes de tourbillonnage
support-fails = rien ne tient la barre
support-fails-last-grip = la dernière prise ne tient pas la pièce après le tronçonnage
check-fails = une limite est dépassée
proof-found-limit = la vérification a trouvé qu’une limite est dépassée de cette façon
drill-fails = un outil tournant fait fléchir la barre plus qu’il n’est admis
part-off-not-held = rien ne tient la pièce au tronçonnage
part-off-rear-work = l’usinage de l’extrémité arrière demande une prise au tronçonnage, et cette machine n’a pas de contre-broche
part-off-too-large = rien ne tient la pièce au tronçonnage, et avec { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre elle est trop grande pour le bac, qui admet des pièces jusqu’à { $most_length } { -mm } de longueur et { $most_diameter } { -mm } de diamètre (part_off.tray)
part-off-too-large-default = rien ne tient la pièce au tronçonnage, et avec { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre elle est trop grande pour tomber sans prise : sans part_off.tray dans le fichier machine, des pièces jusqu’à { $most_length } { -mm } de longueur et { $most_diameter } { -mm } de diamètre peuvent tomber
part-off-no-collet = la contre-broche n’a pas de pince, rien ne tient donc la pièce au tronçonnage
front-not-gripped = aucune pince ne prend l’extrémité avant finie
travel-end = la contre-broche, sa pince à { $nose } { -mm }, est en fin de course à { $farthest } { -mm }
travel-end-centre = la contre-broche, avec sa pointe, est en fin de course à { $farthest } { -mm }
travel-too-short = la contre-broche, sa pince à { $nose } { -mm }, ne va pas aussi loin
stroke-end-no-stop = la poupée est à la fin de sa course de { $stroke } { -mm }, et il n’y a pas d’endroit pour une reprise de barre : chaque surface sur le trajet doit rester sans marque d’arrêt
stroke-end-front-free = la poupée est à la fin de sa course de { $stroke } { -mm }, et elle ne doit pas faire de reprise de barre tant que l’extrémité avant est libre
stroke-end-centre = la poupée est à la fin de sa course de { $stroke } { -mm }, et elle ne doit pas faire de reprise de barre tant qu’une pointe appuie sur l’avant
driven-part-off = tronçonnage
driven-torque = { $section } : il faut un couple de { $needed } N·m à la broche, mais la poupée a { $most } N·m
driven-feed = { $section } : il faut un effort d’avance de { $needed } { -n }, mais la poupée avance avec au plus { $most } { -n }
driven-power = { $section } : il faut un moteur de { $needed } kW même à la vitesse la plus basse admise, { $rpm } tr/min (speed_floor), mais la poupée a { $most } kW
driven-front-work = { $work } : il faut un couple de { $needed } N·m à la broche, mais la poupée a { $most } N·m
driven-rear-work = { $work }, à l’extrémité arrière : il faut un couple de { $needed } N·m, mais la contre-broche a { $most } N·m
segments-pull-back = { $section } : il faut plusieurs passes, et aucun recul de la barre n’est assez court pour sa tolérance
thread-long-no-unit = { $section } est un filetage de { $length } { -mm }. Avec un outil à fileter, la barre doit reculer de toute la longueur du filetage, et elle ne peut ici reculer que de { $longest } { -mm } au plus, car { $stays } { -mm } de la portée du canon doivent rester sur la barre non tournée. La machine n’a pas d’unité de tourbillonnage (`tools.whirling`). Solutions : une unité de tourbillonnage, le roulage (`thread_by: rolling`), travailler sans canon, ou un filetage plus court
thread-long-asked = { $section } est un filetage de { $length } { -mm }. Avec un outil à fileter, la barre doit reculer de toute la longueur du filetage, et elle ne peut ici reculer que de { $longest } { -mm } au plus, car { $stays } { -mm } de la portée du canon doivent rester sur la barre non tournée. Supprimer `thread_by: single_point` : le filetage peut être tourbillonné. Autres solutions : le roulage (`thread_by: rolling`), travailler sans canon, ou un filetage plus court
segments-interrupt = { $section } ne doit pas être interrompu, mais il faut { $travels } passes et donc { $segments } segments avec des marques d’arrêt entre eux

## Why no collet takes hold of the front

grip-no-stop = la pince { $collet } pourrait prendre à une longueur tournée de { $from } à { $to } { -mm }, mais l’avance ne peut pas s’y arrêter : { $why }
grip-no-stop-thread = { $section } est un filetage, et un filetage ne doit pas être interrompu
grip-no-stop-never = { $section } ne doit pas être interrompu
grip-no-stop-segments = un tronçon usiné en plusieurs passes n’admet un arrêt qu’entre ses segments
grip-no-farther = avec une prise à { $nose } { -mm }, la longueur tournée n’atteint que { $turned } { -mm } : { $why }
grip-fails = la pince { $collet } ne peut pas prendre à une longueur tournée de { $turned } { -mm } : { $why }
grip-out-of-travel = à une longueur tournée de { $turned } { -mm }, la contre-broche ne peut amener la pince { $collet } à aucun endroit où elle pourrait serrer
grip-no-counter-spindle = la machine n’a pas de contre-broche
grip-forbidden = { $section } ne doit pas être serré
grip-wished-never = un souhait interdit une prise sur { $section }
grip-front-too-thick = le diamètre de { $front } { -mm } devant { $section } ne passe pas dans la pince { $collet }, qui s’ouvre à { $passes } { -mm }
grip-too-deep = { $section } est trop loin de la face avant : l’alésage de la contre-broche n’admet que { $depth } { -mm }
grip-no-clear-length = { $section } n’a pas une longueur dégagée de { $hold } { -mm } pour la pince { $collet }
grip-more-sections = { $reasons } ; { $more ->
    [one] { $more } autre tronçon ne peut pas être serré non plus
   *[other] { $more } autres tronçons ne peuvent pas être serrés non plus
}
grip-too-early = la pince { $collet } peut prendre au plus tôt sur { $section }, et il faut pour cela une longueur tournée d’au moins { $from } { -mm }
grip-nothing-plain = l’arbre n’a pas de tronçon lisse qu’une pince pourrait serrer
grip-no-collet-fits = aucune pince ne convient à un tronçon lisse ({ $diameters }) : { $collets }
grip-collet-range = la pince { $collet } serre de { $from } à { $to } { -mm }
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = le souhait « { $wish } » est impossible : la machine n’a pas de contre-broche
wish-impossible-no-stop = le souhait « { $wish } » est impossible : l’avance ne doit pas s’arrêter à cet endroit, sur { $section }
wish-impossible-no-grip = le souhait « { $wish } » est impossible : la pince { $collet } ne peut pas serrer à cet endroit
wish-no-grip-goes-on = aucune prise ne permet de continuer après le transfert souhaité à { $at } { -mm }
wish-prevents = le souhait « { $wish } » empêche toute gamme : { $reason } ; sans ce souhait, le temps de cycle est de { $seconds } s
wishes-prevent = les souhaits ensemble empêchent toute gamme : { $reason } ; sans eux, le temps de cycle est de { $seconds } s

## Changes

change-works = { $change } : temps de cycle { $seconds } s
set-works = { $changes } : temps de cycle { $seconds } s
change-saves = { $change } : gagne { $seconds } s par pièce
change-saves-most = { $change } : gagne { $seconds } s par pièce ; le plus grand gain est de { $most } s : { $best }
change-drop-wish = abandonner le souhait « { $wish } »
change-rpm = réduire la vitesse à { $rpm } tr/min sur le diamètre de la barre ({ $vc } { -m-min })
change-speed-floor = autoriser une vitesse réduite là où une limite le demande, jusqu’à { $percent } % de la pleine vitesse
change-ap-max = autoriser une profondeur de { $depth } { -mm } par passe (si l’outil le permet)
change-no-bush = travailler sans le canon
change-bush = travailler avec le canon
change-centre = tenir l’avant avec la pointe de la contre-broche (hold: centre)
change-tandem = ébaucher et finir en une même passe avec deux outils en tandem
change-opposed = tourner avec une paire d’outils opposés, pour équilibrer leurs efforts radiaux
change-interrupt = autoriser un arrêt sur { $section } (il laisse une marque d’arrêt)
change-grip = autoriser une prise sur { $section }
change-straightness = réduire la courbure laissée dans l’arbre tourné à { $bow } { -mm } par { -m }
change-collet = se procurer une pince pour { $diameter } { -mm } (longueur de serrage { $hold } { -mm }, force de serrage { $force } { -n })
change-collet-opens = se procurer une pince pour { $diameter } { -mm } qui s’ouvre à { $opens } { -mm }, pour laisser passer l’avant plus gros (longueur de serrage { $hold } { -mm }, force de serrage { $force } { -n })
change-bar = prendre une barre de { $diameter } { -mm }
change-set-up = faire l’usinage ({ $work }) dans un second montage, comme opération à part ({ $seconds } s d’usinage et environ { $loading } s pour charger la pièce)
change-turn-round = faire la pièce par l’autre bout : la face arrière sort la première du canon
change-shop-machine = la faire sur { $machine }
change-limit = relâcher la limite { $limit } à { $value } (si la pièce et la machine l’admettent)
change-collet-run-out = utiliser des pinces de contre-broche avec un battement d’au plus { $mm } { -mm }
change-section-run-out = admettre { $times } fois le battement des tronçons (si le bureau d’études est d’accord)
change-shorter-stroke = n’utiliser que { $stroke } { -mm } de la course de la poupée et faire plus de reprises de barre
change-axial-load = ne laisser à la contre-broche qu’un effort axial de { $force } { -n } sur l’arbre
change-stroke = utiliser une machine avec une course de poupée de { $stroke } { -mm }
change-bush-max-bar = utiliser une machine avec un canon pour { $bar } { -mm }
change-smaller-ap-max = prendre au plus { $depth } { -mm } en une passe (ap_max)
change-smaller-feed = limiter l’avance à { $feed } { -mm-rev }
change-power = utiliser une machine avec { $power } kW à la poupée
change-torque = utiliser une machine avec { $torque } N·m à la poupée
change-feed-force = utiliser une machine dont la poupée avance avec { $force } { -n }
change-counter-torque = utiliser une machine avec { $torque } N·m à la contre-broche
change-headstock-clamp-force = utiliser une pince de poupée avec une force de serrage de { $force } { -n } (si la barre l’admet)
change-farthest = utiliser une contre-broche qui va jusqu’à { $farthest } { -mm } de la face du canon
change-bore-depth = utiliser une contre-broche avec un alésage profond de { $depth } { -mm }
change-bore = utiliser une contre-broche avec un alésage de { $bore } { -mm }
change-clamp-force = multiplier par { $times } la force de serrage dans la contre-broche : { $collets } (si la pièce l’admet)
change-clamp-force-collet = pince { $collet } { $force } { -n }
change-tray = laisser la pièce tomber dans un bac pour des pièces jusqu’à { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre, si la machine en a un (part_off.tray)
change-sleeve = mettre des manchons dans l’alésage de la contre-broche, espacés de { $pitch } { -mm }, { $stiffness } N/µm chacun
change-forming = mortaiser le six pans creux { $size } par petites courses au lieu de le poinçonner
change-step = mortaiser avec une profondeur de passe de { $step } { -mm } par course
change-whirling = utiliser une machine avec une unité de tourbillonnage, pour les filetages trop longs pour un outil à fileter
change-rolling = rouler les filetages trop longs pour un outil à fileter (`thread_by: rolling`), avec des molettes de roulage aussi larges que le filetage
change-engagement = laisser { $mm } { -mm } de la portée du canon sur la barre non tournée quand la barre recule (`engagement_min`)
change-tool-places = utiliser une machine avec { $number ->
    [one] { $number } poste
   *[other] { $number } postes
} ({ $place })

## What was tried

progress-sets = recherche de modifications utiles : { $tried } combinaisons essayées, en cours { $set }
tried-stopped = La recherche de modifications a été arrêtée. Ce qui est connu jusqu’ici est indiqué
tried-bound = La recherche de modifications s’est arrêtée à sa limite de calcul, après { $sets } combinaisons de modifications. Une combinaison utile existe peut-être
tried-forbidden = Aucune combinaison de modifications n’aide. Même avec les { $changes } modifications de la liste ensemble : { $reason }
tried-more = Aucune combinaison de { $most } modifications au plus ne suffit ({ $sets } combinaisons essayées). Toutes les modifications de la liste ensemble suffiraient
tried-all = Aucune combinaison de modifications ne suffit pour { $job } ({ $sets } combinaisons essayées)
progress-finer-stops = aucune gamme avec des positions d’arrêt tous les { $coarse } { -mm }, essai tous les { $fine } { -mm }

## Notes

note-not-listed = Absents de la liste d’outils : { $tools }. Pour ceux-ci, les nombres sous `cutting` comptent
note-drive = Aux vitesses de cette gamme, le tournage demande jusqu’à { $power } kW au moteur de la poupée ({ $power_at }), un couple de { $torque } N·m à la broche ({ $torque_at }) et un effort d’avance de { $force } { -n } ({ $force_at })
note-drive-not-given = { $told }. Le fichier machine ne donne pas { $keys } : vérifier la machine.
note-power-lowers = { $section } : la puissance de la poupée, { $power } kW, abaisse la vitesse. Ses passes ne dépassent pas { $speeds } tr/min
note-ground = { $section } est rectifié plus tard : tourné à { $turned }, rectifié à { $ground }
note-small-radius = { $section } : l’angle rentrant a un rayon de { $radius } { -mm }, et le bec de l’outil laisse au moins { $nose } { -mm }
note-whirled = un filetage est trop long pour que la barre recule entre les passes d’un outil à fileter, ou `thread_by` le demande : il est tourbillonné en une passe
note-whirled-assumed = un filetage est trop long pour que la barre recule entre les passes d’un outil à fileter, ou `thread_by` le demande : il est tourbillonné en une passe. Une unité de tourbillonnage est supposée, car le fichier machine n’indique aucun poste d’outil. Écrire `tools` avec `whirling: 1`, ou sans `whirling` si la machine n’en a pas
note-rolled = { $section } : le filetage est roulé sur une ébauche de { $blank } { -mm }, environ le diamètre sur flancs. Les molettes de roulage doivent être au moins aussi larges que le filetage, { $length } { -mm }. Trouver l’ébauche exacte par essai ; l’effort de roulage n’est pas calculé
note-left-hand = { $section } : { $thread } est un filetage à gauche. Vérifier le sens de la broche, de l’avance et de l’outil
note-passive-deep = Les efforts passifs ont été comparés à des mesures jusqu’à une profondeur de passe de { $measured } { -mm }. La passe la plus profonde est ici de { $depth } { -mm } ; son effort passif est donc extrapolé.
note-passive-floor = Là où l’arête donne un effort passif plus petit, c’est { $share } de l’effort principal qui compte (cutting.passive_floor ; pratique courante, sans source).
note-chips-of-drill = Le copeau du foret de { $size } { -mm } a une épaisseur de { $chip } { -mm } ; son effort est extrapolé : les efforts de coupe spécifiques sont connus pour des copeaux de { $low } à { $high } { -mm }. Des copeaux plus minces demandent plus d’effort que l’extrapolation, car l’arête n’est pas vive.
note-chips-of-tap = Le copeau du taraud de { $size } { -mm } a une épaisseur de { $chip } { -mm } ; son effort est extrapolé : les efforts de coupe spécifiques sont connus pour des copeaux de { $low } à { $high } { -mm }. Des copeaux plus minces demandent plus d’effort que l’extrapolation, car l’arête n’est pas vive.
note-chips-of-cutter = Le copeau de la fraise de { $size } { -mm } a une épaisseur moyenne de { $chip } { -mm } ; son effort est extrapolé : les efforts de coupe spécifiques sont connus pour des copeaux de { $low } à { $high } { -mm }. Des copeaux plus minces demandent plus d’effort que l’extrapolation, car l’arête n’est pas vive.
note-chips-of-turning = Le copeau de tournage avec une avance de { $size } { -mm-rev } a une épaisseur de { $chip } { -mm } ; son effort est extrapolé : les efforts de coupe spécifiques sont connus pour des copeaux de { $low } à { $high } { -mm }. Des copeaux plus minces demandent plus d’effort que l’extrapolation, car l’arête n’est pas vive.
note-drill-size = La poussée du foret de { $size } { -mm } est extrapolée : sa formule est connue pour des forets de { $low } à { $high } { -mm }.
note-class-assumed = Les forets, tarauds et fraises travaillent comme dans la classe : { $class }. Elle a été supposée d’après le module, la masse volumique et kc1.1 de { $material }. Donner `class` dans shaft.material si c’est autre chose.
note-feed-lowered = { $section } : avance abaissée de { $given } à { $feed } { -mm-rev } pour atteindre Ra { $ra } { -um }, avec { $factor } fois la rugosité idéale (cutting.ra_factor)
note-ra-floor = { $section } : Ra { $ra } { -um } n’est pas au-dessus de ce que le tournage laisse à toute avance, { $floor } { -um } (cutting.ra_floor). L’avance est celle pour { $floor } { -um }. Rectifier ou polir cette surface, ou abaisser ra_floor si votre machine tourne plus fin.
note-unusual-pitch = { $thread } : { $standard } n’a pas ce filetage ; vérifier qu’un outil est disponible
note-falls-by-default = La pièce tombe au tronçonnage, car elle est petite : sans part_off.tray dans le fichier machine, des pièces jusqu’à { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre peuvent tomber (pratique courante, sans source). Si la machine n’a pas de bac, ou un plus petit, donner part_off.tray : avec une longueur de 0, aucune pièce ne tombe.
note-centre = La pointe vient quand l’extrémité avant est finie et se retire avant le tronçonnage. Le temps d’un transfert est compté pour les deux (pratique courante, sans source).
note-torque-share = Le critère le plus serré est le couple de tronçonnage, et la dernière prise compte avec tout ce couple. Par la seule torsion de la barre, { $percent } % irait à cette prise. Pour en tenir compte, donner `torsional_stiffness` de la contre-broche.
note-no-limit-costs = Aucune limite ne coûte de temps : aucune limite relâchée seule ne donne une gamme plus rapide.
note-rule-left-out = { $rule } ; cette règle n’a pas été appliquée pour les valeurs montrées ici
optimum-proven = il n’existe pas de gamme plus rapide ({ $stops } positions d’arrêt essayées)
note-slow-cutting = La vitesse réduite sur { $section } est une vitesse de coupe de { $speed } { -m-min }, sous la plage usuelle de { $low } à { $high } { -m-min } ({ $material }). La surface peut être plus rugueuse. La contrôler sur la première pièce.
optimum-gap = au plus { $percent } % plus lente que la gamme la plus rapide possible ({ $stops } positions d’arrêt essayées)

## The timeline

timeline-hand-over = transfert à { $at } { -mm }
timeline-centre = pointe : vient avant la première passe, se retire avant le tronçonnage
timeline-regrip = reprise de barre à { $at } { -mm }
timeline-part-off = tronçonnage
timeline-part-off-falls = tronçonnage, la pièce tombe dans le bac
timeline-unload = déchargement de la pièce
critical-hand-overs = transferts
critical-regrips = reprises de barre
critical-tool-changes = changements d’outil
critical-cutting = coupe : { $section }
critical-overhead = approches et retours

## Tolerances

tolerance-not-in-table = la table des classes de tolérance n’a pas de diamètre de { $diameter } mm, elle va jusqu’à { $most } mm
tolerance-not-in-table-help = donner les écarts en mm : `tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` vaut { $value }
at-out-of-range-help = `--{ $option }` doit être de { $low } à { $high }
at-not-held = rien ne tient la barre dans cet état
at-not-held-help = vérifier les raideurs dans le fichier machine
at-no-counter-spindle = la machine n’a pas de contre-broche
at-no-counter-spindle-help = ne pas donner `--grip`
at-grip-on-centre = Avec `hold: centre`, aucune pince ne tient l’avant
at-grip-on-centre-help = Ne pas donner `--grip`, ou écrire `hold: collet` dans le fichier de travail
at-no-such-collet = la machine n’a pas de pince { $collet }
at-no-such-collet-help = ses pinces sont : { $collets }
at-no-collet-fits = aucune pince de la machine ne serre { $diameter } { -mm }, le diamètre à { $at } { -mm }
at-no-collet-fits-help = déplacer `--grip`, ou choisir une pince pour le calcul avec `--collet` : { $collets }
at-stage-end-with-bush = `--stage-end` sert au travail sans canon
at-stage-end-with-bush-help = ne pas donner `--stage-end`
at-headstock-without-bush = `--headstock` sert au travail avec canon
at-headstock-without-bush-help = utiliser `--stage-end` : sans canon, la pince de la poupée est placée pour la fin de l’étape
at-cannot-be-cut-help = lancer `check` pour voir ce qui aiderait

## A place of a plan moved by hand

move-no-plan = il n’y a pas de gamme, rien ne peut donc être déplacé
move-no-plan-help = corriger d’abord le travail
move-not-there = un déplacement jusque-là est impossible
move-not-there-help = une étape doit garder une longueur, et un transfert doit rester entre les transferts voisins
move-off-shaft = la pince ne serait pas sur l’arbre

## Faults found by the proof

proof-failed = la gamme ne passe pas sa vérification ({ $rule } : { $text })
proof-limit = à une longueur tournée de { $turned } { -mm }, la valeur est de { $demand }, la limite de { $limit }
proof-no-plan = ce n’est pas une gamme réalisable
proof-no-such-collet = la machine n’a pas de pince { $collet }
proof-no-counter-spindle = la gamme utilise la pince { $collet }, mais la machine n’a pas de contre-broche
proof-way-of-turning = la gamme est faite pour { $holding } et { $tools }, le travail demande { $job_holding } et { $job_tools }
proof-bar-too-thick = la barre de { $bar } { -mm } est trop grosse, cette façon de tourner admet au plus { $most } { -mm }
proof-stage-order = l’étape va de { $from } à { $to } { -mm }, mais l’étape précédente finit à { $before } { -mm }
proof-free-stage = l’extrémité avant doit être libre à la première étape, et à aucune autre
proof-centre-not-asked = la gamme a une pointe, et le travail n’en demande pas
proof-centre-told = la gamme n’indique pas la pointe du travail
proof-centre-stages = sur pointe, toute la pièce est une seule étape
proof-centre-travel = à la fin, le nez de la contre-broche est à { $at } { -mm } de la face du canon, et sa course va jusqu’à { $farthest } { -mm }
proof-driven = la passe de { $from } à { $to } { -mm } demande { $needed }, et la poupée a { $limit }
proof-drive = la gamme indique pour la poupée un autre besoin que { $power } kW, { $torque } N·m et { $force } { -n }
proof-bar-feed = la passe de { $from } à { $to } { -mm } tourne à { $rpm } tr/min, mais le ravitailleur admet au plus { $most }
proof-part-off-told = ce que la gamme dit de la pièce au tronçonnage ne s’accorde pas avec sa dernière étape et la machine
proof-falls-rear-work = rien ne tient la pièce au tronçonnage, mais son extrémité arrière doit être usinée ensuite
proof-too-large-to-fall = rien ne tient la pièce au tronçonnage, et avec { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre elle ne doit pas tomber : maximum admis { $most_length } { -mm } de longueur et { $most_diameter } { -mm } de diamètre
proof-end = la dernière étape finit à { $end } { -mm }, mais le tronçonnage est à { $part_off } { -mm }
proof-no-stop = l’avance ne doit pas s’arrêter à { $at } { -mm }
proof-hand-overs-listed = la liste des transferts ne s’accorde pas avec les étapes
proof-regrips-listed = la liste des reprises de barre ne s’accorde pas avec les étapes
proof-no-feed-out = sans canon, chaque étape après la première doit commencer par une reprise de barre
proof-regrip-outside = la reprise de barre à { $at } { -mm } est hors de son étape
proof-regrip-front-free = la pince de la poupée s’ouvre à { $at } { -mm } alors que l’extrémité avant est libre
proof-stroke = de { $from } à { $to } { -mm }, il faudrait à la poupée plus que sa course de { $stroke } { -mm }
proof-grip-no-collet = l’étape a une prise, mais la gamme n’a pas de pince
proof-grip-length = la prise n’a pas la longueur de serrage de la pince
proof-grip-forbidden = { $section } ne doit pas être serré
proof-grip-diameter = la pince { $collet } ne serre pas { $diameter } { -mm }
proof-grip-described = la gamme dit que la prise est sur { $diameter } { -mm } du tronçon { $section }, mais elle est sur { $real_diameter } { -mm } du tronçon { $real_section }
proof-grip-not-plain = la prise de { $from } à { $to } { -mm } n’est pas sur un seul cylindre
proof-grip-feature = un trou ou une rainure de clavette de { $from } à { $to } { -mm } se trouve sous la prise
proof-grip-front = le diamètre de { $front } { -mm } à l’avant ne passe pas dans la pince { $collet }, qui s’ouvre à { $passes } { -mm }
proof-grip-depth = { $length } { -mm } de l’arbre n’entrent pas dans l’alésage de la contre-broche, profond de { $depth } { -mm }
proof-grip-not-turned = à une longueur tournée de { $turned } { -mm }, la prise jusqu’à { $to } { -mm } n’est pas encore tournée
proof-grip-travel = à une longueur tournée de { $turned } { -mm }, la pince est à { $distance } { -mm } de la face du canon, admis { $nearest } à { $farthest } { -mm }
proof-time = la gamme donne { $given } s ({ $name }), mais la somme est de { $sum } s
proof-cycle-time = la gamme donne un temps de cycle de { $given } s, mais les opérations donnent { $sum } s
proof-wish = le souhait « { $wish } » n’est pas respecté
proof-wish-grip = la prise de { $from } à { $to } { -mm } est contraire au souhait « ne jamais serrer { $name } »
proof-wish-hand-overs = la gamme a { $number } transferts, mais le souhait en admet au plus { $most }
proof-cut-not-as-asked = la passe de { $from } à { $to } { -mm } n’est pas comme le travail la demande
proof-cut-missing = aucune passe n’usine la longueur de { $from } à { $to } { -mm }
proof-speed = de { $from } à { $to } { -mm }, la gamme prévoit { $rpm } tr/min, le travail demande { $wanted } tr/min
proof-speed-range = de { $from } à { $to } { -mm }, la gamme prévoit { $rpm } tr/min, le travail demande { $least } à { $wanted } tr/min
proof-not-held = rien ne tient la barre
proof-not-held-at = à une longueur tournée de { $turned } { -mm }, rien ne tient la barre
proof-not-held-open = rien ne tient la barre pendant que la pince de la contre-broche est ouverte
proof-not-held-last = la dernière prise ne tient pas la pièce
proof-no-tool-place = la machine n’a pas de poste pour chaque outil
proof-timeline-order = le chronogramme ne montre pas les usinages aux arrêts dans l’ordre qui est vérifié
proof-fed-on = l’usinage ({ $work }) est fait à une longueur tournée de { $turned } { -mm }, mais la machine ne peut pas avancer la barre aussi loin
proof-work-missing = l’usinage ({ $work }) n’est pas fait là où son outil peut l’atteindre
proof-work-stage = l’usinage ({ $work }) à une longueur tournée de { $turned } { -mm } n’appartient pas à cette étape
proof-length = la gamme dit { $told } { -mm }, mais l’arbre a une longueur de { $length } { -mm }
proof-margin = la gamme dit { $told }, mais la vérification trouve { $proven }
proof-margin-missing = la gamme ne donne pas de marge, mais la vérification trouve { $proven }
proof-margin-at = le critère ({ $check }) utilise { $used } de sa limite, ce qui ne donne pas une marge de { $margin }
proof-line-missing = l’arrêt à { $at } { -mm } laisse une marque d’arrêt qui n’est pas dans la gamme
proof-line-without-stop = la gamme a une marque d’arrêt à { $at } { -mm }, mais rien ne s’y arrête
proof-line-section = la marque d’arrêt à { $at } { -mm } est sur le tronçon { $section }, marqué { $interrupt }
proof-pieces = la gamme dit { $told } pièces par barre, mais une barre en donne { $real }
proof-material = la gamme dit { $told_kg } kg par pièce et une chute de { $told_mm } { -mm }, mais la vérification trouve { $kg } kg et { $mm } { -mm }
proof-cost = la gamme dit { $told } par pièce, mais le coût est de { $real }
proof-cost-no-rates = la gamme dit { $told } par pièce, mais le travail ne donne pas de tarifs
proof-cost-missing = la gamme ne donne pas de coût, mais les tarifs du travail donnent { $real }

## Cautions: general rules of safe turning, common practice, no source

estimate = Une estimation : la notice de la machine, les règles locales et un régleur qualifié décident.
caution-not-a-plan = Ne pas exécuter ceci : ce n’est pas une gamme. Les étapes montrent seulement jusqu’où l’usinage irait dans ses limites.
caution-twice = { $own } (English: { $english })
caution-read-first = Lire les mises en garde des pages suivantes avant le réglage. La notice de la machine, les règles locales et un régleur qualifié décident.
caution-estimate = Ceci est une estimation. Les efforts de coupe sont justes à ± 25 % près au mieux. Les raideurs ne valent que ce que valent les valeurs données pour la machine.
caution-who-decides = La notice de la machine, les règles locales et un régleur qualifié décident. S’ils s’écartent de cette gamme, les suivre et ne pas suivre la gamme.
caution-first-piece = Essayer la première pièce à vitesse et avance réduites, bloc à bloc, portes fermées. La mesurer avant d’augmenter la vitesse ou l’avance.
caution-limits = Ne jamais dépasser les limites d’une étape : sa longueur tournée, sa longueur non soutenue, sa vitesse. Les limites de la machine, des pinces et du ravitailleur s’appliquent aussi. C’est la limite la plus basse qui compte.
caution-at-risk = Cette gamme est À RISQUE. Avec des données incertaines, seules { $good } pièces simulées sur 100 restent dans toutes les limites. Augmenter la vitesse et la profondeur par petits paliers, observer la barre à chaque palier, et arrêter quand elle vibre, fouette ou sort de sa cote.
caution-bar-behind = Pas de barre non soutenue derrière la broche de la poupée : au-dessus d’une certaine vitesse, elle se plie vers l’extérieur et frappe. Guider la barre sur toute sa longueur, ou la couper plus court.
caution-front-free = { $number ->
    [one] À l’étape { $stages }, l’extrémité avant de la pièce tourne libre. Rester hors du plan dans lequel elle tourne, et augmenter la vitesse par paliers.
   *[other] Aux étapes { $stages }, l’extrémité avant de la pièce tourne libre. Rester hors du plan dans lequel elle tourne, et augmenter la vitesse par paliers.
}
caution-counter-spindle = Pièce dans la contre-broche : vérifier la pince, le serrage et la synchronisation avant que la pince de la poupée ne s’ouvre, et de nouveau avant le tronçonnage. Si le serrage ou la synchronisation est en défaut, les deux broches doivent s’arrêter ensemble.
caution-front-long = L’avant libre atteint une longueur de { $ratio } fois son diamètre. Un avant long et mince peut fouetter : augmenter la vitesse par paliers, l’observer, et rester hors de sa portée.
caution-centre = Une pointe soutient l’avant : la graisser ou la refroidir, régler sa force avant que la barre ne tourne, et vérifier que le trou de centre est propre. Ne pas tourner cette étape sans elle. Elle doit se retirer avant le tronçonnage ; l’avant tourne alors libre : rester hors du plan dans lequel il tourne.
caution-thin-wall = La paroi n’a que { $wall } { -mm } d’épaisseur là où une pince serre Ø{ $held } { -mm }. La pince peut l’écraser : serrer avec moins de force, ou mettre un bouchon dans l’alésage de la pièce, et mesurer la première pièce.
caution-part-off-not-held = Rien ne tient la pièce au tronçonnage : elle se détache pendant qu’elle tourne. Tronçonner lentement, laisser un bac recevoir la pièce, rester hors de sa trajectoire et ne jamais tendre la main vers elle.
caution-part-falls = La pièce tombe dans le bac au tronçonnage. Elle se détache pendant qu’elle tourne : elle peut se prendre dans l’outil, et elle peut être marquée ou pliée en tombant. Ralentir la fin de la coupe, garder libre le chemin vers le bac, garder les portes fermées, et regarder les premières pièces avant de continuer.
caution-no-bush = Sans le canon de guidage, seule la pince de la poupée tient la barre. Ne pas dépasser les longueurs indiquées.
caution-fixed-bush = Le canon est fixe, et le diamètre de la barre { $bar } peut varier de { $width } { -mm }, soit { $side } { -mm } de chaque côté. Un canon fixe demande { $least } à { $widest } { -mm } de jeu de chaque côté, donc une barre h6 ou h7 (au plus { $most } { -mm }). Dans un canon trop large, la pièce perd sa circularité ; dans un canon trop serré, la barre grippe. Utiliser une barre rectifiée, un canon qui tourne avec la barre, ou travailler sans canon.
caution-fixed-bush-unknown = Le canon est fixe, et la tolérance de la barre n’est pas donnée. Un canon fixe demande { $least } à { $widest } { -mm } de jeu de chaque côté, donc une barre rectifiée h6 ou h7 (au plus { $most } { -mm }). Une barre étirée ou tournée (h9 à h12) demande un canon qui tourne avec la barre, ou de travailler sans canon.
caution-following-bush = Le canon tourne avec la barre, et le diamètre de la barre { $bar } peut varier de { $width } { -mm }. Un tel canon admet une barre jusqu’à environ h9 (au plus { $most } { -mm } ; pratique courante). Dans un canon trop large, la pièce perd sa circularité ; dans un canon trop serré, la barre se coince. Utiliser une barre de tolérance h9 ou plus serrée, ou travailler sans canon.
caution-following-bush-unknown = Le canon tourne avec la barre, et la tolérance de la barre n’est pas donnée. Un tel canon admet une barre jusqu’à environ h9 (au plus { $most } { -mm } ; pratique courante). Utiliser une barre de tolérance h9 ou plus serrée, ou travailler sans canon.
caution-bored = La raideur ne tient pas compte des trous, six pans creux et rainures de clavette intérieures : à ces endroits, l’arbre est plus souple que calculé.
caution-cross-work = La raideur ne tient pas compte des trous transversaux et des rainures de clavette : à ces endroits, l’arbre est plus souple que calculé.
caution-work-aside = Pendant l’usinage de l’extrémité arrière d’une pièce, la pièce suivante est déjà tournée à son extrémité avant. S’assurer que contre-broche, pièce et outils en restent à l’écart dans toutes les positions. L’essayer d’abord sans pièce.
caution-shaving = Les outils à mortaiser et à poinçonner ne tournent pas. La broche doit être à l’arrêt, maintenue dans sa position angulaire et verrouillée contre tout démarrage pendant leurs courses. L’effort agit suivant l’axe : vérifier d’abord le serrage.
caution-never-line = L’avance s’arrête pour un usinage complémentaire sur une surface marquée « never » et y laisse une marque d’arrêt : { $places }. Se mettre d’accord avec le bureau d’études, ou faire cet usinage ailleurs.
caution-never-line-place = à { $at } { -mm } sur { $section }
caution-section = tronçon { $number }
caution-section-named = tronçon { $number } ({ $name })
caution-not-a-program = Ce tableau n’est pas un programme : aucune machine ne doit l’exécuter. Un programmeur qualifié doit en tirer un programme et y ajouter les distances de sécurité, les retraits, les vitesses d’usinage qui n’y sont pas indiquées et tous les verrouillages de sécurité. Essayer d’abord le programme à vide, sans pièce. La notice de la machine fait foi.
caution-chips = De longs copeaux s’enroulent autour des pièces élancées. Arrêter la machine pour les enlever. Ne jamais les enlever à la main pendant que la machine tourne.

## Roughing and finishing

tandem-no-bush = il n’y a pas de canon, la dernière passe est donc une passe à part
tandem-no-tools = le fichier machine n’indique pas deux outils pour cela (`opposed` ou `tandem` dans ses outils)
tandem-back = le diamètre diminue à son avant, et les deux outils devraient être des outils de tournage arrière
tandem-in-counter-spindle = la contre-broche vient à { $nearest } { -mm } du canon, et l’outil de finition se trouverait dedans
tandem-step = quand l’outil d’ébauche se retire à la fin, le diamètre change de { $step } { -um }, maximum admis { $limit } { -um }
note-one-cut = { $section } demande { $asked } et est usiné en une seule passe de { $depth } { -mm } de profondeur, sans passe de finition. { $instead }
note-one-cut-both = Une dernière passe est possible sans marque (`finish_pass: true`), ou un second outil finit dans la même passe (`tools: tandem`).
note-one-cut-pass = Une dernière passe est possible sans marque (`finish_pass: true`).
note-one-cut-tandem = La barre ne peut pas reculer de tout le tronçon pour une dernière passe. Un second outil peut finir dans la même passe (`tools: tandem`).
note-one-cut-why = La barre ne peut pas reculer de tout le tronçon pour une dernière passe, et deux outils ne peuvent pas l’usiner en une même passe : { $why }.
note-tandem = Ébauche et finition en une même passe par deux outils : { $sections }.
note-tandem-last-pass = { $section } a une dernière passe à part. Les deux outils du tandem ne l’usinent pas ensemble : { $why }.
asked-ra = Ra { $ra }
asked-tolerance = une tolérance de { $width } { -mm }
asked-both = une tolérance de { $width } { -mm } avec Ra { $ra }
progress-confidence = recherche d’une gamme qui tient pour { $share } des pièces simulées
plan-confidence-range = il faut une part de pièces, { $range } : écrire 0.95 pour 95 pièces sur 100
measure-support = { $reading }. `spanhold fit` calcule à partir de telles mesures une raideur et sa dispersion
measure-centre = Appuyer la pointe sur une barre d’essai, la charger latéralement à côté de la pointe et y lire un comparateur : la charge divisée par la flèche, moins la flexion de la barre, donne la raideur de la pointe
measure-sleeve = Charger latéralement une barre d’essai dans la contre-broche, à côté d’un appui, et y lire un comparateur
measure-kc = Tourner une passe d’essai assez profonde pour lire la puissance de la broche principale avec et sans elle. La différence divisée par la section de copeau et la vitesse de coupe est kc à l’épaisseur de copeau h de cette passe. Écrire kc fois h (en mm) à la puissance mc comme kc11 d’une matière personnalisée
measure-passive = Tourner deux fois une extrémité libre à la même profondeur, près de la pince et loin d’elle. Les diamètres diffèrent de deux fois l’effort passif divisé par la raideur à cet endroit
measure-e = Poser la barre sur deux appuis, la charger au milieu et y lire un comparateur. Mesurer le diamètre à { $fine } { -mm } près : E se déduit de la flèche
measure-damping = Donner un petit choc à la barre serrée, enregistrer la vibration, et compter les oscillations n jusqu’à ce qu’elle ait diminué de moitié : le taux d’amortissement est 0,11 / n
measure-ra = Mesurer le Ra d’une pièce tournée. Le diviser par le carré de l’avance sur 32 rayons de bec et écrire le résultat comme cutting.ra_factor
measure-straightness = Tourner quelques pièces, faire rouler chacune sur deux appuis et lire un comparateur au milieu. La rectitude est la moitié de la lecture moyenne, divisée par le carré de la distance des appuis en mètres
measure-bar = Mesurer les barres du lot aux deux bouts et écrire leur tolérance ou scatter.bar
measure-run-out = Serrer une pige rectifiée dans la pince, la tourner et lire un comparateur. Écrire la lecture comme run_out de la pince
sampled-no-plan-help = il faut d’abord une gamme ; voir ce qui l’empêche
sampled-no-part = il n’y a pas de pièce simulée avec ce numéro
sampled-no-part-help = donner un numéro de 1 à { $samples }
recheck-holds = Elle tient pour { $good } pièces simulées sur 100.
recheck-holds-told = Elle tient pour { $good } pièces simulées sur 100 ; la gamme dit { $told }.
recheck-at-risk = À RISQUE : elle ne tient que pour { $good } pièces simulées sur 100.
recheck-at-risk-told = À RISQUE : elle ne tient que pour { $good } pièces simulées sur 100 ; la gamme dit { $told }.
measure-counter-spindle = Serrer une barre d’essai d’un diamètre qu’une des pinces admet, la charger à côté du nez et y lire un comparateur. `spanhold fit` calcule à partir de telles mesures une raideur et sa dispersion
