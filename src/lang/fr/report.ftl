# Tables, drawings and the sheet.

# Amounts.
stages = { $number ->
    [one] { $number } étape
   *[other] { $number } étapes
}
hand-overs = { $number ->
    [one] { $number } transfert
   *[other] { $number } transferts
}
regrips = { $number ->
    [one] { $number } reprise de barre
   *[other] { $number } reprises de barre
}
pieces = { $number ->
    [one] { $number } pièce
   *[other] { $number } pièces
}
bars = { $number ->
    [one] { $number } barre
   *[other] { $number } barres
}
readings = { $number ->
    [one] { $number } mesure
   *[other] { $number } mesures
}

# The first line.
verdict-feasible = RÉALISABLE
verdict-at-risk = À RISQUE
verdict-not-feasible = NON RÉALISABLE
verdict-holds = tient pour { $good } pièces simulées sur 100 ; { $made }
verdict-headline = { $name } : { $summary }
verdict-made = { $stages }, { $hand_overs }, { $regrips }, temps de cycle { $seconds } s, { $pieces } par barre
verdict-made-tightest = { $made } ; critère le plus serré : { $tightest }
verdict-made-short = { $stages }, temps de cycle { $seconds } s, { $pieces } par barre
verdict-tightest = { $check }, { $used } de sa limite
verdict-tightest-in-stage = { $check }, { $used } de sa limite, à l’étape { $stage }
verdict-stops-before-end = tournage possible jusqu’à { $reached } { -mm } sur { $length } { -mm } ; à cet endroit, { $what }
verdict-stops-at-part-off = tournage possible sur toute la longueur de { $length } { -mm }, mais pas le tronçonnage : { $what }
verdict-no-plan = aucune gamme trouvée
tightest-check = Critère le plus serré : { $check }, à la longueur tournée de { $turned } { -mm }
reasons-both = { $first }, et { $second }
stops-stiffness = la barre manque de raideur à l’outil
stops-span-stiffness = la barre manque de raideur entre la prise et le canon
stops-free-ratio = l’avant libre est trop long pour son diamètre (règle interne)
stops-whirl = la barre tourne trop près de sa vitesse critique
stops-whip = la courbure de la barre donne trop de fouettement à cette vitesse
stops-sag = la barre fléchit trop sous son poids entre la prise et le canon
stops-bore = l’avant manque de place dans l’alésage de la contre-broche
stops-cut = le diamètre varie trop le long de la passe
stops-chatter = la coupe broute
stops-buckling = la charge axiale peut faire flamber la barre
stops-run-out = le battement de la pince se reporte trop sur la surface usinée
stops-drill = la barre fléchit trop sous un outil transversal
stops-pick-up = l’avant est trop désaxé pour la pince ou la pointe qui vient le prendre
stops-release = l’avant descend trop quand la pince s’ouvre
stops-torque = la pince ne tient pas le couple du tronçonnage ou de l’usinage de l’extrémité arrière
stops-push = la pince ne tient pas l’effort d’un usinage sur une extrémité
stops-back = l’extrémité arrière fléchit trop pendant l’usinage après tronçonnage
stops-travel = la contre-broche est en fin de course
stops-collet = aucune pince ne tient l’avant là où il le faut
stops-stroke = la poupée est en fin de course et la reprise de barre n’est pas permise
stops-interrupt = une surface qui ne doit porter aucune marque en recevrait une
stops-tray = la pièce est trop grande pour tomber librement
stops-tool-places = il n’y a pas assez de postes d’outils
stops-thread-length = le filetage est trop long pour un outil à fileter
stops-support = les appuis ne tiennent pas la barre
stops-wish = un souhait du travail ne peut pas être respecté
stops-bush-size = la barre est trop grosse pour le canon
stops-collet-size = la barre est trop grosse pour la poupée
stops-power = la poupée manque de puissance pour la coupe
stops-spindle-torque = la poupée manque de couple pour la coupe
stops-feed-force = la poupée manque d’effort d’avance pour la coupe
stops-counter-torque = la contre-broche manque de couple
stops-other = règle non respectée : { $rule }
check-free-ratio = longueur libre
check-bore = place dans l’alésage
check-cut = variation Ø
check-drill = flexion outil transv.
check-pick-up = désaxage avant
check-release = descente à l’ouv.
check-torque = couple sur prise
check-push = glissement pince
check-back = flexion arrière

# Keys of a plan in words.
key-hand-over = transfert
key-regrip = reprise de barre
key-centre = pointe
key-segment = recul de la barre
key-whirl = vitesse critique
key-interrupt = marque d’arrêt
key-stroke = course de la poupée
key-counter-spindle = contre-broche
key-counter-spindle-travel = course de la contre-broche
key-part-off = tronçonnage
key-bar-feed = ravitailleur
key-back-work = usinage arrière
key-cross-driven = transversal, tournant
key-front-fixed = extrémité avant, fixe
key-front-driven = extrémité avant, tournant
key-back-fixed = extrémité arrière, fixe
key-back-driven = extrémité arrière, tournant
key-stiffness = raideur
key-span-stiffness = raideur prise-canon
key-whip = fouettement
key-sag = flèche (poids)
key-chatter = broutement
key-buckling = flambage
key-run-out = battement
key-turn = tournage
key-plunge = plongée
key-forward = avant
key-back = arrière
key-headstock = poupée
key-both = les deux
key-turning = tournage
key-cylinder = cylindre
key-groove = gorge
key-knurl = moletage
key-thread = filetage
key-taper = cône
key-flats = méplats
key-feature = usinage
key-unload = déchargement
key-bar-change = chang. de barre
key-tool-change = chang. d’outil
key-cross-hole = trou transversal
key-keyseat = rainure de clavette
key-keyway = rainure de clavette int.
key-axial-hole = trou axial
key-centre-hole = trou de centre
key-facing = dressage
key-tapped-hole = trou taraudé
key-hex-socket = six pans creux
key-engraving = gravure
key-thread-rolling = roulage
key-rough = ébauche
key-finish = finition
key-high = élevée
key-medium = moyenne
key-low = faible
key-tray = bac
key-collet = pince
key-support = appui
key-wish = souhait
key-tool-places = postes d’outils
key-thread-length = longueur de filetage
key-bush-size = taille du canon
key-collet-size = taille de pince
key-spindle-power = puissance de broche
key-spindle-torque = couple de broche
key-feed-force = effort d’avance
key-counter-spindle-torque = couple de contre-broche
key-margin = marge
key-witnesses = marques d’arrêt
key-quote = devis
key-length = longueur
key-whirling = unité de tourbillonnage
holding-bush = canon
holding-no-bush = sans canon, pince de la poupée seule
tools-single = outil seul
tools-opposed = outils opposés
tools-tandem = tandem : un outil de finition suit l’outil d’ébauche
work-whirl = tourbillonnage
work-thread = passes de filetage
work-as-drawn = surface de la barre
work-turn = tournage
work-repeated = { $number } × { $work }
section-number = tronçon { $number }
check-used = { $check } { $used }
check-at-most = { $check } { $value }, maximum { $limit } ({ $used } de sa limite)
check-at-least = { $check } { $value }, minimum { $limit } ({ $used } de sa limite)
value-not-set = non défini
value-yes = oui
value-no = non

# Titles.
title-stages = Étapes ({ -mm }, tr/min, s)
title-stages-reached = Étapes, aussi loin que possible ({ -mm }, tr/min, s)
title-positions = Positions ({ $from })
title-look-at = Points à regarder d’abord
title-stops = Arrêts de l’avance (longueur tournée, { -mm })
title-segments = Segments ({ -mm }, tr/min, { -mm-rev })
title-features = Usinages complémentaires ({ -mm }, s)
title-time = Temps
title-quote = Devis
title-limit-costs = Ce que chaque limite coûte en temps
title-scatter = Pièces simulées par étape ({ -mm })
title-inputs = Données incertaines (basse – haute, à un écart type ; limite utilisée : { $check })
title-measure = Ce qu’il faut mesurer, le plus utile d’abord
title-set-up = Réglage
title-notes = Remarques
title-origins = Valeurs que le travail ne donne pas
origins-of-shop = Du fichier d’atelier : { $values }
origins-by-default = Valeurs usuelles de ce programme : { $values }
origin-of-shop = { $key } { $value } (ligne { $line })
origin = { $key } { $value }
title-cautions = Mises en garde
title-cycle = Cycle
title-timeline = Chronogramme des deux broches (s)
title-shorten-first = À raccourcir d’abord
title-tool-places = Postes d’outils
title-tools = Outils
title-tool-list = Outils de tournage ({ -mm }, { -mm-rev }, tr/min)
sheet-tool-list = Outils de tournage
sheet-tool-list-units = profondeur en { -mm }, avance en { -mm-rev }, vitesse en tr/min
tool-not-listed = { $tool } (absent de la liste)
tool-parts-off = tronçonnage
tool-nose = r { $nose }
tool-insert-nose = { $insert }, { $nose }
tool-range = { $least }–{ $most }
title-order = Commande
title-quantities = Commande selon la quantité
title-sensitivity = Effet d’un temps ou d’une vitesse modifiés
title-help-sets = Ce qui rend le travail réalisable (chaque ligne suffit ; ce qu’un atelier change le plus volontiers vient d’abord)
title-help-alone = Modifications qui, seules, rendent le travail réalisable
title-help-others = Autres modifications qui suffisent seules
title-help-house = Limites internes qui bloquent (pas un conseil : un atelier n’en change une qu’après un essai, et sous sa responsabilité)
positions-from-bush = { -mm } depuis la face du canon
positions-without-bush = { -mm } ; contre-broche depuis la fin de la distance libre derrière l’outil, poupée depuis l’outil

# Names of columns.
col-stage = étape
col-from = de
col-to = à
col-travel = course
col-grip = prise
col-collet = pince
col-unsupported = non soutenu
col-l-over-d = L/d
col-unsupported-split = non sou{ "\u00AD" }tenu
col-speed = tr/min
col-feed = avance
col-tool = outil
col-station = poste
col-insert = plaquette
col-sections = tronçons
col-depth = prof.
col-time = temps
col-seconds = s
col-tightest = critère le + serré
col-counter-spindle-start = contre-broche au début
col-headstock-start = poupée au début
col-end = à la fin
col-regrips-at = reprises de barre à
col-counter-spindle = contre-broche
col-headstock = poupée
col-mark = rep.
col-done = ce qui est fait
col-surface = surface
col-leaves = ce qu’il laisse
col-section = tronçon
col-diameter = Ø
col-work = usinage
col-travels = passes
col-turning = sens
col-feature = usinage
col-at = à
col-turned-when-done = longueur tournée alors
col-planned-to = prévu à
col-input = donnée incertaine
col-input-range = basse – haute
col-input-used = part de limite
col-input-good = bonnes sous – au-dessus
col-input-time = au mieux, s
col-holds-to = 99 % tiennent jusqu’à
col-broken-share = pièces hors limite
col-broken-checks = critères dépassés
col-cause = cause
col-interrupt = mention de surface
col-operation = opération
col-share = part
col-spindle = broche
col-what = objet
col-place = poste
col-places = postes
col-needed = requis
col-elsewhere = mis ailleurs
col-missing = manquants
col-free = libres
col-tools = outils
col-pieces = pièces
col-bars = barres
col-shifts = équipes
col-cost-per-piece = coût par pièce
col-number = n°
col-size = cote
col-measured = mesuré

# Cells.
grip-free = libre
grip-centre = pointe
cell-none = aucun
cell-range = { $low } – { $high }
cell-no-plan = sans gamme
cell-after-part-off = après tronçonnage
cell-part-off-face = face de tronç.
cell-part-off = tronçonnage
feature-with-kind = { $kind } : { $text }
time-cutting = coupe
time-travels = approches et retours
time-hand-overs = transferts
time-regrips = reprises de barre
time-features = usinages compl.
time-part-off = tronçonnage
time-back-work = usinage arrière
time-sum = somme des opérations
time-cycle = temps de cycle

# Where the feed stops.
stop-hand-over = transfert
stop-regrip = reprise de barre
stop-regrip-then-hand-over = reprise + transfert (commun)
stop-hand-over-then-regrip = transfert + reprise (commun)
stop-then = { $first }, puis { $second }
stop-at-shoulder = sans marque (épaulement)
stop-at-end = sans marque (face)
stop-behind = sans marque (hors pièce)
stop-in-groove = sans marque (gorge)
stop-line = marque d’arrêt ({ $interrupt })
stop-between = entre tronçons { $front } et { $rear }
stop-front-face = face avant
stop-part-off-face = face de tronçonnage
stop-behind-face = derrière la face de tronçonnage

# Facts: a key and its value.
fact-drawing = dessin
fact-date = date
fact-bush = canon de guidage
fact-bar-ends = bouts de la barre
fact-drawing-revision = { $drawing }, indice { $revision }
fact-bush-said = pour { $bar }, { $kind }, portée { $land } { -mm }
bush-fixed = fixe
bush-following = tourne avec la barre
bush-kind-not-given = type non indiqué
fact-bar-ends-said = coupés d’équerre, bout avant chanfreiné, sans bavures, non pliés
length-of-part = longueur { $length }
fact-length = longueur
fact-length-mm = { $length } { -mm }
fact-material = matière
fact-bar = barre
fact-bar-length = { $stock }, longueur de barre { $length } { -mm }
fact-machine = machine
fact-holding = maintien
fact-tools = outils
fact-collet = pince
fact-centre = pointe
fact-centre-presses = dans l’extrémité avant avec { $force } { -n } ; elle se retire à { $leaves } { -mm }, avant le tronçonnage
fact-collet-holds = { $collet } dans la contre-broche, serre sur { $hold } { -mm }
fact-collet-named = { $collet } dans la contre-broche
fact-collet-none = aucune dans la contre-broche
fact-part-off = tronçonnage
fact-part-falls = la pièce tombe dans le bac (pour des pièces jusqu’à { $length } { -mm } de longueur et { $diameter } { -mm } de diamètre)
fact-input = données
quote-bar = { $pieces } par barre de { $length } { -mm }, chute { $remnant } { -mm }
quote-material = { $mass } kg par pièce
fact-cost = coût
quote-cost = { $total } { $currency } par pièce : machine { $machine }, matière { $material }
fact-optimum = optimum
fact-cycle = temps de cycle
cycle-steady = { $steady } s de pièce à pièce ; une pièce seule demande { $alone } s
fact-spindles = occupation
cycle-spindles = poupée { $headstock } s, contre-broche { $counter } s
fact-rear-end = usinage arrière
cycle-hidden-waits = { $hidden } s se font pendant l’étape libre de la pièce suivante ; la poupée attend ensuite { $wait } s
cycle-hidden-idle = { $hidden } s se font pendant l’étape libre de la pièce suivante ; la contre-broche est ensuite inoccupée pendant { $idle } s
cycle-in-line = fait avant le début de la pièce suivante
fact-tool-changes = chang. d’outil
cycle-tool-changes = { $number ->
    [one] { $number } changement, { $seconds } s
   *[other] { $number } changements, { $seconds } s
}
fact-bar-change = chang. de barre
cycle-bar-change = { $seconds } s par pièce
timeline-stage = étape { $stage } : { $parts }
timeline-previous = pièce précédente : { $parts }
timeline-turning = tournage { $seconds }
timeline-features = usinages compl. { $seconds }
timeline-back-work = extr. arrière { $seconds }
timeline-tool-changes = chang. d’outil { $seconds }
timeline-unloading = déchargement { $seconds }
shorten-one = { $what } : { $seconds } s, { $share } du temps de cycle
tools-turret = tourelle
tools-turret-holds = outils sans poste à côté de la barre ni à l’extrémité avant
tools-at = { $place } : { $names }
tools-places = { $place } { $number }
tools-fit = chaque outil a un poste ; postes libres : { $free }
tools-missing = postes manquants : { $missing } ; postes libres : { $free }
fact-pieces = pièces
order-pieces = { $pieces } dans { $bars }, { $per_shift } par équipe
fact-time = temps
order-time = réglage { $set_up } h, production { $run } h, équipes : { $shifts }
order-cost = { $each } { $currency } par pièce, { $all } { $currency } au total
sensitivity-speed = vitesse de coupe × { $factor } : { $change } s par pièce
sensitivity-time = temps unitaire ({ $what }) × { $factor } : { $change } s par pièce

# What to look at first.
look-lines = { $number ->
    [one] Marque d’arrêt sur { $section }, marqué « { $interrupt } » : { $places }
   *[other] Marques d’arrêt sur { $section }, marqué « { $interrupt } » : { $places }
}
look-place = à { $at } { -mm } ({ $cause })
look-over-limit = Limite dépassée à l’étape { $stage } : { $check }, à la longueur tournée de { $turned } { -mm }
look-near-limit = Près de la limite à l’étape { $stage } : { $check }, à la longueur tournée de { $turned } { -mm }
look-slowed = Vitesse réduite sur { $places } ; cause : { $check }
look-slowed-cost = Vitesse réduite sur { $places } ; cause : { $check }. Au plus, de { $full } à { $speed } tr/min. Cela coûte { $seconds } s
look-back-turning = Épaulement tourné vers l’arrière, demande un outil de tournage arrière : { $places }
look-fed-out = Avant le tronçonnage, la barre est avancée jusqu’à { $to } { -mm } pour { $works } ; { $unsupported } { -mm } ne sont pas soutenus ; pas de tournage avec la barre avancée

# What would help.
help-cost-of-limit = { $text } ({ $limit } : { $now } → { $next })
help-values = { " (" }{ $name } : { $from } → { $to })
help-change-slower = { $text }, { $seconds } s de plus que la plus rapide de celles-ci
help-set-slower = { $text }, { $seconds } s de plus que la plus rapide de celles-ci
help-set-holds = { $text } ; tient pour { $good } pièces simulées sur 100
help-edits-job = { $text }. Modifier le fichier de travail : { $edits }.
help-edits-machine = { $text }. Modifier le fichier machine : { $edits }.
help-edits-both = { $text }. Modifier le fichier de travail : { $job }. Modifier le fichier machine : { $machine }.
help-edits-many = { $text }. La page (spanhold page JOB) fait ces modifications pour vous.
help-edit-item = { $list } élément { $number }
help-edit-new-item = { $list }, nouvel élément
help-edit-set = { $key }: { $value }
help-edit-remove = supprimer { $item }
help-edit-swap = échanger { $item } avec l’élément { $with }
help-next = { $tried }. Demander une modification du dessin, ou comparer d’autres machines : spanhold compare JOB --machine FILE.
help-sentence = { $text }.

# The sheet.
sheet-title = { $job } : fiche de réglage
sheet-input = données { $digest }
sheet-page = page { $page } sur { $pages }
sheet-sign-off = Visas
sheet-sign-read = Gamme lue ; machine et pince conformes
sheet-sign-proved = Première pièce essayée à vitesse et avance réduites
sheet-sign-measured = Première pièce mesurée
sheet-sign-released = Bon pour la série
sheet-sign-name = nom
sheet-sign-date = date
sheet-sign-signature = signature
sheet-work-list = Usinages dans l’ordre d’exécution
sheet-work-list-units = { -mm }, tr/min, { -mm-rev }, s ; « de » et « à » sont des longueurs tournées
sheet-directions = Zéros et sens
sheet-stages = Étapes
sheet-stages-units = { -mm }, tr/min, { -mm-rev }, s ; contre-broche et poupée au début → à la fin de l’étape, { $from }
sheet-stage-limits = Limites des étapes : ne pas dépasser
sheet-stops = Arrêts de l’avance
sheet-stops-units = longueur tournée, { -mm }
sheet-witness-lines = Marques d’arrêt
sheet-witness-lines-units = { -mm }
sheet-sure = Fiabilité de cette gamme
sheet-scatter = Pièces simulées par étape
sheet-scatter-units = { -mm }
sheet-inputs = Données incertaines
sheet-inputs-units = basse – haute, à un écart type ; limite utilisée : { $check } ; bonnes pièces sur 100 avec une valeur inférieure – supérieure à celle retenue
sheet-timeline = Chronogramme des deux broches
sheet-bar = Barre
limit-stage = Étape { $stage } : { $limits }
limit-turn-to = tourner jusqu’à { $to } { -mm }, pas plus loin
limit-speeds-below = jamais au-dessus de la vitesse de chaque plage ci-dessous
limit-speed = jamais au-dessus de { $speed } tr/min
limit-unsupported = jamais plus de { $unsupported } { -mm } non soutenus
limit-unsupported-turning = jamais plus de { $unsupported } { -mm } non soutenus pendant le tournage
limit-grip-distance = prise de la contre-broche { $grip }, jamais à plus de { $distance } { -mm } du canon
limit-grip = prise de la contre-broche { $grip }
limit-free = extrémité avant libre, rien ne doit la toucher
limit-centre = pointe dans l’extrémité avant avec { $force } { -n } ; elle se retire avant le tronçonnage
limit-falls = la pièce tombe dans le bac au tronçonnage
limit-range = Étape { $stage }, longueur tournée de { $from } à { $to } { -mm } : jamais au-dessus de { $speed } tr/min
limit-fed-out = Étape { $stage }, avant le tronçonnage : avancer la barre jusqu’à { $to } { -mm }, pas plus loin, pour { $works }. Pas de tournage avec la barre avancée : { $positions }. Puis ramener la barre à { $back } { -mm }.
limit-fed-out-speed = Étape { $stage }, avant le tronçonnage : avancer la barre jusqu’à { $to } { -mm }, pas plus loin, pour { $works }. Pas de tournage avec la barre avancée : { $positions } ; jamais au-dessus de { $speed } tr/min. Puis ramener la barre à { $back } { -mm }.
fed-unsupported = { $unsupported } { -mm } non soutenus
fed-counter-spindle = contre-broche à { $distance } { -mm } du canon
fed-headstock-bush = poupée à { $distance } { -mm } du canon
fed-headstock-tool = poupée à { $distance } { -mm } de l’outil
speed-range = { $from } à { $to } : { $speed }

# The diagram.
diagram-title = { $job } : schéma des étapes, des prises et des arrêts
diagram-description = { $verdict } : { $summary }. { $panels }
diagram-panels = En haut : l’arbre avec ses prises, ses transferts et ses reprises de barre. Au milieu : la machine au début et à la fin de chaque étape. En bas, sur le même axe : la part de sa limite que chaque critère utilise le long de la longueur tournée, et la vitesse.
diagram-description-setting = { $verdict } : { $summary }. L’arbre avec ses longueurs, ses prises, ses transferts, ses reprises de barre et ses arrêts pour d’autres usinages.
diagram-numbers = numéros : tronçons du tableau des segments
diagram-labels-left-out = { $number ->
    [one] pas de place pour { $number } étiquette
   *[other] pas de place pour { $number } étiquettes
}
diagram-machine-left-out = positions de la machine : voir le tableau des étapes
diagram-more = … la suite est dans le texte
diagram-shaft = Arbre
diagram-true-scale =
    à
    l’échelle
diagram-radial-scale =
    échelle
    radiale
    × { $factor }
diagram-not-reached = non atteint ; arrêt à { $at } { -mm }
diagram-axis = position sur l’arbre et longueur tournée, en { -mm } depuis la face avant
diagram-used =
    part
    de la
    limite
diagram-governs = le + serré
diagram-limit = limite
diagram-at-most = { $check }, au plus
diagram-strips = La machine au début et à la fin de chaque étape
diagram-start = début
diagram-end = fin
diagram-unsupported = non soutenu { $unsupported } { -mm }
legend-grip = prise, avec son étape
legend-centre = pointe dans la face avant
legend-hand-over = H transfert
legend-regrip = R reprise de barre
legend-both = H+R les deux au même arrêt
legend-work = F autre usinage à un arrêt
legend-bush = canon
legend-headstock = pince de la poupée
legend-headstock-right = poupée plus loin à droite
legend-bore = alésage de contre-broche
legend-sleeve = manchon dans l’alésage
legend-not-reached = non atteint

# Both spindles in time.
gantt-title = { $job } : chronogramme des deux broches
gantt-bar = { $work } : { $name }, { $seconds } s
gantt-cycle = temps de cycle { $seconds } s
gantt-hidden = { $seconds } s d’usinage sur l’extrémité arrière de la pièce précédente se font en même temps
gantt-wait = la poupée attend { $seconds } s
gantt-headstock = poupée
gantt-counter-spindle = contre-broche
gantt-holds = tient la pièce
gantt-turning = tournage
gantt-other-work = autre usinage
gantt-tool-change = chang. d’outil
gantt-hand-over = transfert
gantt-regrip = reprise de barre
gantt-part-off = tronçonnage
gantt-back-work = arrière de la pièce précédente
gantt-critical = sur le chemin critique

# A family of parts.
family-title = { $name } : une famille de pièces
family-count = { $good } pièces sur { $all } sont réalisables.
family-range = { $least } à { $hand_overs }, { $fastest } à { $slowest } s par pièce.
family-same = { $hand_overs }, { $fastest } à { $slowest } s par pièce.
family-longest = Plus grande longueur variable réalisable : { $length } { -mm }.
family-machine = sur { $machine }
family-made = { $part } : { $hand_overs }, { $seconds } s
family-sizes = longueur { $length } { -mm }, diamètre { $diameter } { -mm }
family-size = { $size } { -mm }
family-not-made = { $part } : non réalisable
family-stopped = { $part } : non réalisable, arrêtée par : { $check }
family-no-job = { $part } : ces dimensions ne donnent pas un travail valable ; voir sa ligne
family-hand-overs = Transferts
family-number-on-line = Nombre sur la courbe
family-hand-overs-word = { $number ->
    [one] transfert
   *[other] transferts
}
family-time-below = le temps est sous le nombre
family-from-here = transferts à partir d’ici
family-cannot = non réalisable
family-invalid = non valable
family-time-axis = temps par pièce, s

# Stiffnesses from readings.
fitted-head = Raideurs calculées : { $machine }, à partir de { $readings } ; mesures en plus du nécessaire : { $more }
fitted-misfit = Écart entre mesures et calcul : { $misfit } fois les erreurs des mesures (bon : environ 1)
fitted-condition = Conditionnement { $condition } (le meilleur est 1)
fitted-support = appui
fitted-stiffness = N/µm
fitted-error = erreur type
fitted-range = plage à 95 %
fitted-range-of = { $low } à { $high }
fitted-before = fichier machine
fitted-set-up = montage
fitted-reading = mesure
fitted-measured = mesuré
fitted-fitted = calculé
fitted-unit = unité
fitted-off = écart / erreur
fitted-into-file = Reporter ces valeurs dans le fichier machine. Chacune y remplace la raideur.

# The workbook.
xlsx-with-unit = { $name } ({ $unit })
xlsx-stages = étapes
xlsx-segments = segments
xlsx-checks = critères
xlsx-quote = devis
xlsx-grip-from = prise de
xlsx-grip-to = prise à
xlsx-grip-diameter = diamètre de prise
xlsx-unsupported = longueur non soutenue
xlsx-counter-start = contre-broche au début
xlsx-counter-end = contre-broche à la fin
xlsx-headstock-start = poupée au début
xlsx-headstock-end = poupée à la fin
xlsx-lowest-speed = vitesse minimale
xlsx-highest-speed = vitesse maximale
xlsx-regrips = reprises de barre
xlsx-share = part de sa limite
xlsx-speeds = vitesse maximale de … à … { -mm } de longueur tournée
xlsx-section-number = numéro du tronçon
xlsx-diameter = diamètre
xlsx-speed = vitesse
xlsx-slowed = cause de la vitesse réduite
xlsx-check = critère
xlsx-value = valeur
xlsx-limit = limite
xlsx-unit = unité
xlsx-check-unit = unité de valeur et limite
xlsx-turned = longueur tournée
xlsx-position = position sur l’arbre
xlsx-pieces-per-bar = pièces par barre
xlsx-pieces = pièces
xlsx-remnant = chute
xlsx-material = matière par pièce
xlsx-cost-machine = coût machine par pièce
xlsx-cost-material = coût matière par pièce
xlsx-cost = coût par pièce
xlsx-cell = { $head } à la ligne { $row }

# The short answer on a terminal.
short-rows-left-out = … { $number } de plus
short-more = { $number } de plus : voir --full
short-more-check = { $number } de plus : voir `spanhold plan JOB --full`
short-more-changes = { $number ->
    [one] { $number } modification de plus : voir --full
   *[other] { $number } modifications de plus : voir --full
}
short-more-changes-check = { $number ->
    [one] { $number } modification de plus : voir `spanhold plan JOB --full`
   *[other] { $number } modifications de plus : voir `spanhold plan JOB --full`
}
short-tools = Outils : { $tools }
plan-to-write = Pour écrire la fiche, le schéma et les tableaux :
plan-to-write-with = Pour écrire la fiche, le schéma et les tableaux : { $command }
plan-written = La fiche, le schéma et les tableaux sont dans : { $folder }
plan-full = --full affiche tout.

# Why something could not be drawn.
undrawn-plan = la gamme ne peut pas être dessinée : { $what }
undrawn-workbook = le classeur n’a pas pu être écrit : { $what }
undrawn-chart = le graphique n’a pas pu être dessiné : { $what }
undrawn-pdf = le PDF n’a pas pu être écrit : { $what }
undrawn-time = un temps du cycle n’est pas un nombre
undrawn-beyond = ses longueurs sont trop grandes ou trop petites pour un dessin
undrawn-length = sa longueur n’est pas un nombre positif
undrawn-bar = le diamètre de la barre n’est pas un nombre positif
undrawn-section = un tronçon a un nombre qui n’est pas fini
undrawn-feature = un usinage complémentaire a un nombre qui n’est pas fini
undrawn-stage = une étape a un nombre qui n’est pas fini
undrawn-machine = la machine a un nombre qui n’est pas fini
undrawn-stop = la position d’un arrêt n’est pas un nombre fini
undrawn-check = un critère a un nombre qui n’est pas fini
undrawn-family = un nombre de la famille n’est pas fini
undrawn-nothing-varies = ni la longueur ni le diamètre ne varient
under-one = moins de 1
sure-breaks = Ce qui cède : { $checks }.
sure-break = { $check } pour { $share } pièces sur 100
sure-break-at-start = { $check } pour { $share } pièces sur 100, dont la moitié dès le début
sure-break-from = { $check } pour { $share } pièces sur 100, dont la moitié au plus tard à { $from } { -mm } de longueur tournée
sure-more = { $number } de plus
sure-runs = Une pièce qui ne tient pas dépasse une limite de cette gamme ; ce n’est pas forcément un rebut. Sur { $runs } séries simulées de deux pièces, les deux pièces tiennent dans { $both }, une seule dans { $one }, aucune dans { $none }. { $by ->
    [run] C’est donc la machine, la matière ou l’outil qui décident, de la même façon pour toute la série.
    [part] C’est donc la pièce elle-même qui décide : sa courbure, sa barre.
    [both] La série et la pièce elle-même décident donc toutes deux.
   *[none] {""}
}
sure-ask = Avec `confidence: 0.95` dans le fichier de travail, ou `--confidence 0.95`, le programme cherche une gamme qui tient pour 95 pièces sur 100.
sure-nothing-uncertain = Aucune donnée de ce travail n’est incertaine ; chaque pièce simulée est donc la pièce nominale.
sure-confidence = Faite pour tenir pour { $asked } pièces simulées sur 100. Cela coûte { $seconds } s par pièce : la gamme la plus rapide demande { $fastest } s et tient pour { $good } sur 100.
sure-confidence-free = Faite pour tenir pour { $asked } pièces simulées sur 100 : c’est le cas de la gamme la plus rapide.
sure-confidence-missed = Aucune gamme trouvée ne tient pour { $asked } pièces simulées sur 100. De celles essayées, celle-ci tient pour le plus grand nombre.
sure-measure = À mesurer d’abord : { $input }. Avec une valeur basse et une valeur haute probables ({ $low }, { $high }), le critère ({ $check }) utilise { $used_low } et { $used_high } de sa limite. { $advice }.
sure-advice = { $input } : { $advice }
input-kc = effort de coupe kc1.1
input-passive = effort passif, en facteur
input-e = module d’Young
input-damping = amortissement
input-bush = raideur du canon
input-headstock = raideur de la poupée
input-counter-spindle = raideur de contre-broche
input-centre = raideur de la pointe
input-sleeve = raideur d’appui d’alésage
input-ra = rugosité réelle / idéale
input-straightness = courbure de l’arbre
input-bar = diamètre de barre
input-run-out = battement de pince
input-other = autre donnée
diagram-band = 90 pièces sur 100
diagram-part = cette pièce
inputs-title = Données incertaines de { $job }
inputs-meaning = Part de sa limite que le critère ({ $check }) utilise quand une donnée s’écarte de sa valeur d’un écart type : extrémité claire plus bas, extrémité foncée plus haut
inputs-percent = { $percent } %
undrawn-inputs = la part d’un critère avec une donnée incertaine n’est pas un nombre fini

# The table of positions for the programmer.
moves-on-part = Longueur tournée (Z) : position de l’outil sur la pièce, de la face avant vers la poupée. Dans un système de coordonnées selon ISO 841 avec son zéro sur la face avant, Z est l’opposé de cette valeur.
moves-from-bush = Broches (Z) : distance du nez à la face du canon, qui reste à { $gap } { -mm } derrière l’outil. La position de la poupée se compte vers l’arrière, celle de la contre-broche vers l’avant ; les deux valeurs sont positives.
moves-without-bush = Broches (Z) : la position du nez de la poupée se compte vers l’arrière depuis l’outil. Celle du nez de la contre-broche se compte vers l’avant depuis un plan situé à { $gap } { -mm } derrière l’outil. Les deux valeurs sont positives.
moves-across = Sens transversal (X) : les valeurs sont des diamètres, le zéro est sur l’axe de rotation.
moves-stage = début de l’étape { $stage }
moves-cut = { $work }, { $section }
moves-travel = { $work }, { $section }, passe { $travel } sur { $travels }
moves-pass = passe de filetage { $pass } sur { $passes }, { $section }
moves-approach = approche jusqu’au début de : { $cut }
moves-run-out = surcourse du tandem : l’outil de finition usine jusqu’au bout
moves-fed-out = barre avancée, sans usinage
moves-fed-back = barre reculée, sans usinage
moves-counter-opens = la pince de la contre-broche s’ouvre
moves-counter-moves = la contre-broche va à la prise
moves-counter-closes = la pince de la contre-broche se ferme
moves-headstock-opens = la pince de la poupée s’ouvre
moves-headstock-moves = la poupée recule le long de la barre
moves-headstock-closes = la pince de la poupée se ferme
moves-centre-comes = la pointe entre dans la face avant
moves-centre-leaves = la pointe quitte la face avant
moves-part-taken = la contre-broche emporte la pièce
moves-wait-stopped = avance arrêtée, outil dégagé
moves-wait-first-hand-over = avance arrêtée, outil dégagé, la poupée tient la barre, contre-broche vide
moves-wait-hand-over = avance arrêtée, outil dégagé, la poupée tient la barre
moves-wait-counter-closed = pince de la contre-broche fermée, les deux broches tournent à la même vitesse
moves-wait-regrip = avance arrêtée, outil dégagé, la contre-broche tient la pièce
moves-wait-headstock-closed = pince de la poupée fermée
moves-wait-centre = la pointe appuie
moves-wait-centre-left = la pointe est dégagée
moves-wait-part-off = la contre-broche tient la pièce, les deux broches tournent à la même vitesse
moves-wait-parted = pièce tronçonnée
moves-col-actor = organe
moves-col-wait = point d’attente
moves-col-waits-for = attend
moves-col-start = début à
moves-col-turned = longueur tournée (Z)
moves-col-diameter = outil, diamètre (X)
moves-col-leading = outil d’ébauche, diamètre (X)
moves-col-lag = retard de l’outil de finition
moves-col-headstock = nez de la poupée (Z)
moves-col-counter = nez de la contre-broche (Z)
moves-col-headstock-speed = vitesse de la poupée
moves-col-counter-speed = vitesse de la contre-broche
key-tool = outil

# The drawing as DXF.
undrawn-dxf = une cote du dessin n’est pas un nombre fini
dxf-grip = prise { $stage }
dxf-stage = étape { $stage }
dxf-about = Arbre en mm, face avant à gauche. H transfert, R reprise de barre, F arrêt pour un usinage complémentaire, chacun avec sa longueur tournée.

# More sheets of the workbook.
xlsx-features = usinages complémentaires
xlsx-tools = outils
xlsx-places = postes d’outils
xlsx-order = commande
xlsx-positions = positions
xlsx-page = page { $page } sur { $pages }
xlsx-fact = { $what } : { $told }
xlsx-thrust = poussée
xlsx-axial = effort axial
xlsx-torque = couple
xlsx-place-kind = type de poste
xlsx-nose-radius = rayon de bec
xlsx-depth-least = plus petite profondeur de passe
xlsx-depth-most = plus grande profondeur de passe
xlsx-feed-least = plus petite avance
xlsx-feed-most = plus grande avance
