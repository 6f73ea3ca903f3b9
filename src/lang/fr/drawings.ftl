# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = Un montage ne tient pas la barre
fit-loose-bar-help = Vérifier `grip` et `holding`. La barre doit être tenue à deux endroits
fit-spindle-never-used = Aucun montage ne tient la barre dans la contre-broche ; sa raideur ne peut donc pas être trouvée
fit-undetermined = Ces mesures ne suffisent pas pour la raideur de : { $supports }
fit-leave-out = Ou écrire `fit: [{ $supports }]`
fit-other-bar = Mesurer avec une barre plus grosse et plus courte, pour que l’appui fléchisse plus que la barre
fit-add = Ajouter { $reading }. Cela donnerait la raideur ({ $supports }) à ± { $error } % ou mieux
fit-add-several = Ajouter plusieurs mesures. La plus utile est { $reading }, mais seule elle ne suffit pas pour { $supports }
fit-reading-in = une mesure { $reading } (environ { $expected } µm) dans le montage `{ $set_up }`
fit-reading-of-new = un montage avec `{ $key }` et une mesure { $reading } (environ { $expected } µm)
fit-load-free = Tenir une barre d’essai Ø{ $bar } avec le nez de la poupée à { $headstock } { -mm } derrière la face du canon et { $front } { -mm } de barre devant elle. La charger avec { $load } { -n }, à { $at } { -mm } { $behind ->
    [yes] derrière
   *[no] devant
} la face du canon, et y lire un comparateur (environ { $expected } { -um })
fit-load-gripped = Tenir une barre d’essai Ø{ $bar } avec le nez de la poupée à { $headstock } { -mm } derrière la face du canon, et la serrer dans la contre-broche à { $nose } { -mm } devant la face du canon. La charger avec { $load } { -n }, à { $at } { -mm } { $behind ->
    [yes] derrière
   *[no] devant
} la face du canon, et y lire un comparateur (environ { $expected } { -um })
fit-load-no-bush = Tenir une barre d’essai Ø{ $bar } dans la poupée sans le canon, avec { $front } { -mm } de barre devant. La charger avec { $load } { -n }, à { $at } { -mm } devant le nez, et y lire un comparateur (environ { $expected } { -um })
fit-load-no-bush-gripped = Tenir une barre d’essai Ø{ $bar } dans la poupée sans le canon, et la serrer dans la contre-broche à { $nose } { -mm } devant le nez. La charger avec { $load } { -n }, à { $at } { -mm } devant le nez, et y lire un comparateur (environ { $expected } { -um })
fit-misfit = Aucune raideur ne s’accorde avec les mesures. Le plus grand écart est à { $reading } de { $set_up } : mesuré { $measured } { $unit }, calculé { $fitted } { $unit }
fit-misfit-help = Vérifier sa position et ses unités (N, mm, µm, Hz). Précharger la barre contre le jeu. Si la mesure est juste, écrire des `errors` plus grandes
fit-dial-reading = lecture de comparateur { $number }
fit-tap = essai au choc
fit-note-no-spare = Il y a autant de mesures que de raideurs ; le résultat ne peut donc pas être contrôlé. Ajouter des mesures.
fit-note-misfit = Les mesures s’écartent du résultat { $times } fois plus que leurs erreurs ne le permettent. Les erreurs types sont agrandies de ce facteur. Rechercher un jeu, un serrage qui glisse ou une position fausse.
fit-note-fixed = Non calculé, pris dans le fichier machine : { $supports }.
fit-note-sleeves = Les appuis dans l’alésage de la contre-broche ont la raideur du fichier machine. Elle n’est pas calculée.

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` est un fichier DWG, pas un fichier DXF
draft-is-dwg-help = Enregistrer le dessin en DXF (ASCII ou binaire, version R12 à 2018)
draft-not-dxf = `{ $file }` ne peut pas être lu comme DXF (version { $version }) : { $reason }
draft-not-dxf-help = Enregistrer le dessin en DXF ASCII d’une autre version, R12 à 2018, et essayer ce fichier
draft-reader-failed = le contenu est endommagé
draft-empty = `{ $file }` ne contient pas de dessin
draft-empty-help = Vérifier que c’est un fichier DXF et que l’arbre est dans l’espace objet
draft-damaged = `{ $file }` est endommagé : { $read } entités { $kind } sur { $there } peuvent être lues
draft-damaged-help = Ouvrir le fichier dans le logiciel de CAO, le réparer et l’enregistrer de nouveau
draft-unknown-file = Le type de `{ $file }` est inconnu
draft-unknown-file-help = Donner un dessin (.dxf) ou un tableau (.csv, .xlsx)
draft-sections = `{ $file }` donne { $sections ->
    [one] { $sections } tronçon
   *[other] { $sections } tronçons
}
draft-sections-help = Un arbre a de 1 à { $most } tronçons
draft-no-job = Le brouillon de travail tiré de `{ $file }` ne peut pas être calculé
draft-no-job-help = Corriger les erreurs ci-dessous. Leurs positions sont dans le texte du brouillon
draft-no-contour = Le dessin n’a pas de trait pour un contour
draft-no-contour-help = Tracer le contour en traits continus, pas sur des calques de cotes, de cadres, de hachures ou de textes
draft-no-axis = Aucun axe trouvé : il n’y a ni trait d’axe, ni symétrie, ni côté droit d’un demi-contour
draft-no-axis-help = Tracer l’axe sur toute la longueur de l’arbre, comme ligne sur un calque CENTER ou avec le type de ligne CENTER
draft-open-contour = Le contour est ouvert entre { $from } et { $to }
draft-open-contour-help = Fermer le contour dans le dessin, ou prendre un `--gap` plus grand. Les vides jusqu’à { $gap } mm sont fermés actuellement
draft-no-profile = Aucun trait du contour n’est le long de l’axe
draft-no-profile-help = Vérifier que l’axe du dessin est l’axe de l’arbre

# Drawings: what was found and assumed.
draft-axis-is-line = L’axe est le trait d’axe de { $from } à { $to } sur le calque `{ $layer }`.
draft-axis-is-symmetry-level = Il n’y a pas de trait d’axe. L’axe est la ligne de symétrie horizontale passant par { $through }.
draft-axis-is-symmetry-upright = Il n’y a pas de trait d’axe. L’axe est la ligne de symétrie verticale passant par { $through }.
draft-axis-is-side = À VÉRIFIER : il n’y a ni trait d’axe ni symétrie. Le dessin est lu comme un demi-arbre : son axe est le côté droit à { $axis } = { $at }, et les diamètres sont le double de la distance à cet axe.
draft-axis-through-ends = À VÉRIFIER : il n’y a ni trait d’axe ni symétrie. Le dessin est lu comme un demi-arbre : son axe est la ligne passant par ses bouts ouverts { $from } et { $to }.
draft-halves-differ = À VÉRIFIER : les deux moitiés du contour diffèrent, d’abord à { $at } : diamètre { $used } d’un côté, { $other } de l’autre. Le premier est utilisé.
draft-front-left = À VÉRIFIER : l’extrémité avant (sort la première du canon) est le bout gauche, à { $at }. Appeler avec `--flip` si c’est le bout droit.
draft-front-right = À VÉRIFIER : l’extrémité avant (sort la première du canon) est le bout droit, à { $at }. Appeler sans `--flip` si c’est le bout gauche.
draft-front-lower = À VÉRIFIER : l’extrémité avant (sort la première du canon) est le bout inférieur, à { $at }. Appeler avec `--flip` si c’est le bout supérieur.
draft-front-upper = À VÉRIFIER : l’extrémité avant (sort la première du canon) est le bout supérieur, à { $at }. Appeler sans `--flip` si c’est le bout inférieur.
draft-unit = L’unité du dessin est { $unit } : 1 vaut { $mm } mm.
draft-unit-of-call = L’unité du dessin est { $unit }, mais l’appel dit { $used }. Le dessin est lu en { $used }.
draft-no-unit = À VÉRIFIER : le dessin n’a pas d’unité. Il est lu en mm. Si l’unité est le pouce, appeler avec `--units inch`.
draft-no-unit-but-metric = À VÉRIFIER : le dessin n’a pas d’unité, mais il est marqué comme métrique. Il est lu en mm. Si l’unité est le pouce, appeler avec `--units inch`.
unit-inches = pouces
draft-scale = À VÉRIFIER : les cotes sont { $factor } fois les longueurs dessinées. Le dessin est lu à l’échelle { $scale }. S’il est dessiné à 1:1, appeler avec `--scale 1`.
draft-factor-of-new = À VÉRIFIER : le dessin n’a pas de cotes, mais son réglage pour les nouvelles cotes est de { $factor } fois les longueurs dessinées. Le travail a les longueurs dessinées. Si le dessin est à 1:2, appeler avec `--scale 0.5`.
draft-other-factor = À VÉRIFIER : { $count ->
    [one] { $count } cote est
   *[other] { $count } cotes sont
} { $factor } fois la longueur dessinée, la première à { $at }. La plupart des cotes sont { $used } fois la longueur dessinée. Le travail suit la plupart des cotes. Si c’est faux, appeler avec `--scale`.
draft-arc = À VÉRIFIER : l’arc de rayon { $radius } mm à { $at } devient un cône droit dans le travail.
section-with-radius = avec rayon { $radius } mm
section-with-chamfer = avec chanfrein { $chamfer }
section-from-arc = À VÉRIFIER : arc de rayon { $radius } mm dans le dessin
draft-needs-tolerance = À VÉRIFIER : le tronçon { $section } (diamètre { $diameter } mm) est trop mince pour une tolérance générale. Ajouter `tolerance`.
draft-inside = DANS LE CONTOUR, non utilisé (arêtes, trous, filetages, rainures de clavette) : { $count } { $kind } sur le calque `{ $layer }`, le premier élément à { $at }.
draft-beside = HORS DU CONTOUR : { $count } { $kind } sur le calque `{ $layer }`, le premier élément à { $at }.
draft-beside-near = À VÉRIFIER : l’un d’eux finit à { $distance } mm du contour, à { $at }. S’il appartient au contour, prendre un `--gap` plus grand.
draft-not-read = NON LU : { $count } { $kind } sur le calque `{ $layer }`, le premier élément à { $at } : { $why }.
draft-not-understood = NON COMPRIS : { $entity } `{ $text }` sur le calque `{ $layer }` à { $at } : { $why }.

# Why an entity is not read.
entity-unknown = ce type d’entité n’est pas pris en charge
entity-hidden = entité cachée
entity-squeezed = entité inclinée ou à échelle inégale
entity-squeezed-arc = cet arc a une échelle inégale
entity-mesh = c’est un maillage
entity-at-angle = entité inclinée
entity-not-finite = ses nombres ne sont pas finis
entity-too-many = il y a trop de lignes
entity-circle = c’est un cercle complet
entity-no-block = son bloc manque dans le dessin
entity-nested = ses blocs sont imbriqués trop profondément
entity-copies = il y a plus de 100 copies

# Texts and dimensions of a drawing.
label-no-size = il n’y a pas de cote avec tolérance, filetage ou rugosité
label-at-no-surface = il n’est pas à la surface d’un tronçon
label-no-roughness = un moletage ou des méplats ne peuvent pas avoir de rugosité
label-second = le tronçon a déjà une autre valeur
label-given = Le tronçon { $section }, { $length } mm de longueur, reçoit du dessin : { $values }.
label-unknown-word = `{ $word }` est inconnu
label-other-size = le texte dit { $text }, mais { $drawn } mm sont dessinés ; le travail a la cote dessinée
label-length-tolerance = une tolérance de longueur ne peut pas être donnée dans un travail
label-no-diameter = il n’y a pas de diamètre
label-no-section = aucun tronçon lisse n’a le diamètre de { $diameter } mm
label-several-sections = convient à plusieurs tronçons, utilisé pour aucun
title-material = matière
title-drawing = numéro de dessin
title-revision = indice
title-taken = Du dessin : { $field } { $value }.
title-several = À VÉRIFIER : le dessin a plusieurs valeurs ({ $field }) : { $values }. Aucune n’est utilisée.
title-material-unknown = À VÉRIFIER : la matière { $material } du dessin n’est pas parmi les matières intégrées. Le travail a une valeur provisoire. Appeler avec `--material` pour en fixer une.

# The text of a draft.
draft-head = Brouillon tiré de { $file }. Vérifier chaque ligne avec le dessin avant de calculer une gamme avec ce travail.
draft-head-lengths = Les longueurs sont en mm. Les tronçons commencent à la face avant : le bout qui sort le premier du canon.
draft-head-notes = Ce qui a été trouvé, supposé et non compris :
draft-placeholder-material = À REMPLACER : pas de matière connue dans le dessin
draft-placeholder-bar = À REMPLACER : la dimension de barre courante suivante ; `--stock` en fixe une autre
draft-placeholder-machine = À REMPLACER : une machine d’exemple. Indiquer le fichier de votre machine : `machine: my-machine.yaml`, ou faire le brouillon avec `--machine my-machine.yaml`.
draft-placeholder-cutting = À REMPLACER : valeurs courantes. Mettre les vôtres.
draft-straightness = courbure de l’arbre fini, mm par m : mesurer la vôtre
draft-default-speed = m/min ; par défaut : milieu de la plage usuelle de la matière
draft-default-feed = mm/tr ; par défaut : d’après la rugosité, au plus 0,15

# Tables of sections.
table-not-utf8 = `{ $file }` n’est pas un texte UTF-8
table-not-utf8-help = Enregistrer le tableau en CSV, en UTF-8
table-not-csv = `{ $file }` ne peut pas être lu comme CSV : { $reason }
table-too-long = `{ $file }` a trop de lignes
table-empty = `{ $file }` est vide
table-form = Écrire les en-têtes dans la première ligne : length (mm), diameter (mm), et au besoin rear diameter (mm), kind, thread, tolerance, Ra (µm), name, across flats (mm), sides. Écrire une ligne par tronçon, depuis l’avant
table-cell = { $file }, ligne { $row }, colonne { $column } : { $what }
table-row = { $file }, ligne { $row } : { $what }
table-heading = { $file }, ligne { $row }, colonne { $column }, `{ $heading }` : { $what }
table-heading-missing = { $file }, ligne { $row } : il manque l’en-tête `{ $heading }`
table-heading-unknown = en-tête inconnu
table-heading-twice = cette colonne est donnée deux fois
table-heading-twice-help = Supprimer l’une des deux
table-heading-unit = unité inconnue
table-heading-unit-help = Utiliser une de ces unités : { $units }
table-heading-no-unit-help = Supprimer l’unité. Cette colonne n’en a pas
table-tolerance-in-inches = À VÉRIFIER : les écarts de la colonne { $column } (`{ $heading }`) sont lus en pouces, comme les cotes du tableau. S’ils sont en mm, écrire `tolerance (mm)` dans l’en-tête.
table-roughness-unit = il manque l’unité dans un tableau en pouces
table-roughness-unit-help = Écrire `Ra (µin)` ou `Ra (µm)` dans l’en-tête. Ra 16 µin vaut 0,4 µm
table-number = `{ $text }` n’est pas un nombre positif
table-number-help = Écrire le nombre seul avec l’unité dans l’en-tête, `length (mm)`, ou écrire l’unité après le nombre, `1 in`
table-no-length = il manque la longueur
table-no-length-help = Écrire une longueur pour chaque tronçon
table-thread-size = { $thread } a un diamètre de { $major } mm, pas { $given } mm
table-thread-size-help = Supprimer le diamètre du filetage
table-flats = il manque le nombre de méplats
table-flats-help = Écrire 2, 4, 6 ou 8 sous `sides`
table-kind-needs = il manque des cotes ({ $kind })
table-no-kind = la ligne doit être cylindre, cône, filetage ou méplats
table-no-kind-help = Écrire le diamètre et le diamètre arrière pour un cône, la désignation pour un filetage, la cote sur plats et le nombre de méplats pour des méplats, et un diamètre pour tous les autres
table-tolerance-unit = il manque l’unité de `{ $text }` dans un tableau qui n’est pas en mm
table-tolerance-unit-help = Écrire `tolerance (mm)` dans l’en-tête
table-tolerance = `{ $text }` n’est pas une tolérance
table-tolerance-help = Écrire une classe comme h6, ou ±0.1, ou +0.02/-0.01 en mm
table-kind = `{ $text }` n’est pas un type de tronçon

# Workbooks.
workbook-sheet-used = À VÉRIFIER : les tronçons viennent de la feuille `{ $sheet }`. Le classeur a { $sheets } feuilles. Appeler avec `--sheet` pour en prendre une autre.
workbook-cells-beyond = NON LU : { $cells } cellules au-delà de la ligne { $row } ou de la colonne { $column } de la feuille.
workbook-unreadable = `{ $file }` ne peut pas être lu comme classeur : { $reason }
workbook-unreadable-help = L’enregistrer en .xlsx, ou en .csv en UTF-8
workbook-too-large = `{ $file }` est trop grand pour un classeur : { $reason }
workbook-too-large-help = Enregistrer seule la feuille des tronçons, en .xlsx ou .csv
workbook-parts = il a { $parts } parties, et au plus { $most } sont lues
workbook-unpacked = décompressé, il dépasse { $part } Mio dans une partie ou { $all } Mio dans toutes les parties
workbook-cells = il a { $cells } cellules, et au plus { $most } sont lues
workbook-repeats = le nombre d’une ligne ou colonne répétée n’est pas un nombre entier
workbook-no-sheet = `{ $file }` n’a pas de feuille `{ $sheet }`
workbook-no-sheet-help = Prendre une de ces feuilles : { $sheets }
workbook-no-sheets = `{ $file }` n’a pas de feuilles
