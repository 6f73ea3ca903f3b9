# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }, ligne { $line }, colonne { $column }
diag-place-of-key = { $file }, ligne { $line }, colonne { $column }, { $key }

errors-more = { $count ->
    [one] { $count } autre erreur n’est pas montrée
   *[other] { $count } autres erreurs ne sont pas montrées
}
errors-more-help = Corriger d’abord les erreurs ci-dessus
did-you-mean = Faut-il lire `{ $near }` ?
defect-of-reader = Une erreur dans ce programme arrête la lecture du fichier
defect-of-reader-help = Merci de la signaler

# Kinds of values.
kind-nothing = une valeur vide
kind-flag = vrai ou faux (true, false)
kind-number = un nombre
kind-text = un texte
kind-list = une liste
kind-map = un groupe de clés

# The text as YAML.
yaml-empty = Le fichier est vide
yaml-empty-help = Partir du travail que `spanhold new` affiche
yaml-nested = Les valeurs sont imbriquées trop profondément
yaml-nested-help = Utiliser au plus huit niveaux
yaml-anchors = Les ancres et alias (`&`, `*`) ne sont pas pris en charge
yaml-anchors-help = Écrire les valeurs en entier. Mettre entre guillemets un texte qui commence par & ou *
yaml-documents = Le fichier a plus d’un document
yaml-documents-help = Écrire un travail par fichier. Supprimer les lignes `---`
yaml-values = Le fichier a plus de valeurs qu’un travail ne peut en avoir
yaml-values-help = Écrire au plus 1000 tronçons et 1000 usinages complémentaires
yaml-tags = Les étiquettes YAML (`!`) ne sont pas prises en charge
yaml-tags-help = Supprimer l’étiquette. Mettre entre guillemets un texte qui commence par `!`
yaml-merge-keys = Les clés de fusion (`<<`) ne sont pas prises en charge
yaml-merge-keys-help = Écrire les clés en entier
yaml-invalid = Ce YAML n’est pas valable : { $reason }
yaml-invalid-help = Vérifier les crochets, les deux-points, les guillemets et les retraits, ici et dans les lignes au-dessus

# Keys.
keys-needed = Il faut ici des clés avec des valeurs, pas { $kind }
keys-needed-help = Écrire `key: value`. Les clés sont : { $keys }
key-twice = `{ $key }` est donné deux fois
key-twice-help = Supprimer l’un des deux. Le premier est à la ligne { $line }
key-unknown = Clé inconnue `{ $key }`
key-unknown-help = Utiliser une de ces clés : { $keys }
key-is-of-planning = L’écrire sous `planning` : `planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` n’est pas une clé
key-is-decimal-help = Écrire les nombres décimaux avec un point : `{ $meant }`
key-not-text = Une clé doit être un texte, pas { $kind }
key-missing = Il manque `{ $key }`
key-missing-help = Ajouter `{ $key }` : { $hint }
value-missing = `{ $key }` n’a pas de valeur
value-missing-help = Écrire une valeur, ou supprimer la clé

# Numbers.
number-too-small = { $value } est trop petit
number-too-large = { $value } est trop grand
number-not-finite = Ce n’est pas un nombre fini
number-range = Écrire un nombre de { $low } à { $high } ({ $meaning })
number-range-in-unit = Écrire un nombre de { $low } à { $high }, en { $unit } ({ $meaning })
number-needed = Il faut ici un nombre, pas { $kind }
number-not-whole = { $value } n’est pas un nombre entier
number-not-whole-help = Écrire un nombre entier ({ $meaning })
number-not-decimal = `{ $value }` n’est pas un nombre décimal
number-write = Écrire { $value }
number-in-quotes = Les guillemets font de { $value } un texte, pas un nombre
number-in-quotes-help = Écrire { $value } sans guillemets
number-unreadable = `{ $text }` n’est pas un nombre
number-decimal-comma = `{ $text }` a une virgule décimale
number-has-unit = `{ $text }` a une unité qui ne convient pas ici
number-in-unit = Écrire une de ces unités après le nombre : { $units }. Un nombre seul compte en { $own }
number-without-unit = Écrire le nombre seul. Cette valeur n’a pas d’unité
pair-needed = Il faut ici deux nombres, pas { $kind }
pair-needed-list = Il faut ici deux nombres, pas une liste de { $count }
pair-needed-help = Écrire `{ $key }: { $form }`
pair-needed-point = Écrire `{ $key }: { $form }`, avec des points décimaux

# Lists, texts, words.
list-too-long = `{ $key }` a { $count } éléments
list-too-long-help = Écrire au plus { $most } éléments
list-needed = Il faut ici une liste, pas { $kind }
list-needed-help = Écrire un élément par ligne, chacun après `- `, ou tous les éléments entre crochets : [..., ...]
text-needed = `{ $key }` demande un texte, pas { $kind }
text-needed-help = Écrire un texte sur une ligne
text-empty = `{ $key }` est vide
text-too-long = Le texte est trop long ou a des sauts de ligne
text-too-long-help = Écrire au plus { $most } caractères sur une ligne
choice-unknown = `{ $word }` n’est pas une valeur de `{ $key }`
choice-help = Écrire l’un de ceux-ci : { $words }
flag-needed = Il faut ici `true` ou `false`, pas { $kind }
flag-needed-help = Écrire `{ $key }: true` ou `{ $key }: false`

# Files.
file-missing = Le fichier `{ $file }` n’existe pas
file-check-path = Vérifier le chemin
file-not-permitted = Pas de droit de lecture sur `{ $file }`
file-not-permitted-help = Vérifier les droits du fichier
file-unreadable = `{ $file }` ne peut pas être lu : { $reason }
file-not-utf8 = `{ $file }` n’est pas un texte UTF-8 (première erreur à la ligne { $line })
file-not-utf8-help = Enregistrer le fichier en UTF-8
file-is-folder = `{ $file }` est un dossier
file-is-folder-help = Indiquer un fichier de ce dossier
file-too-large = `{ $file }` dépasse { $most } Mio
file-too-large-help = Vérifier le nom du fichier : un fichier de travail ou un fichier machine ne fait que quelques ko

# Machine files.
machine-not-job = C’est un fichier machine, pas un travail
machine-not-job-help = Donner un fichier de travail. Nommer la machine dans le travail avec `machine: { $file }`, ou dans l’appel avec `JOB --machine { $file }`
machine-in-file = La machine est dans un autre fichier, `{ $file }`
machine-in-file-help = Ouvrir aussi ce fichier, ou écrire la machine dans le travail
machine-path-or-name = Ou écrire un nom de `{ $file }` : { $names }
machine-path-from = Le chemin part du dossier de { $file }
machine-without = La machine `{ $machine }` n’a pas de `{ $key }`
machine-without-holding = La machine `{ $machine }` n’a pas de `{ $key }`, mais le travail demande `holding: { $key }`
machine-without-holding-help = Ajouter `{ $key }` à la machine, ou écrire `holding: { $other }`
phase-error-alone = un décalage angulaire demande la raideur en torsion de la contre-broche
phase-error-alone-help = Ajouter torsional_stiffness en N·m/rad, ou ne pas donner phase_error
bush-engagement = { $engagement } mm dépasse la portée du canon
bush-engagement-help = Écrire au plus { $most }
spindle-farthest = { $farthest } mm n’est pas au-delà de `nearest`
spindle-farthest-help = Écrire une distance de la face du canon au nez supérieure à { $nearest }
collets-none = La contre-broche n’a pas de pinces
collets-none-help = Ajouter au moins une pince, ou supprimer `counter_spindle`
collets-same-name = Deux pinces ont le nom `{ $name }`
collets-same-name-help = Donner à chaque pince son propre nom
collet-range = Le plus grand diamètre est écrit en premier
collet-range-help = Écrire d’abord le plus petit diamètre : `range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm est inférieur au plus grand diamètre que la pince serre
collet-passes-help = Écrire au moins { $largest }
headstock-in-bush = { $nearest } mm est inférieur à la portée du canon
headstock-in-bush-help = Écrire la distance de la face du canon au nez de la pince : au moins { $land }

# Bar and cutting.
stock-too-thin = La barre de { $bar } mm est trop mince : { $section } demande { $needed } mm
stock-too-thin-help = Prendre une barre de { $needed } mm ou plus
stock-too-short = La barre de { $bar } mm est trop courte pour un arbre
stock-too-short-help = Mettre `bar_length` à { $needed } mm (arbre, tronçonnage et dressage) plus la chute, ou davantage
cutting-last-pass = La dernière passe de { $depth } mm est plus profonde que `ap_max`
cutting-last-pass-help = Écrire au plus { $most }
cutting-no-lag = Dans un tandem, l’outil de finition doit se trouver derrière l’outil d’ébauche
cutting-no-lag-help = Écrire `lag` en mm, supérieur à 0. Deux outils au même endroit sont une paire d’outils opposés : `tools: opposed`
cutting-finisher-alone = `finisher` décrit l’outil de finition d’un tandem, et `tools` est { $tools }
cutting-finisher-alone-help = Écrire `tools: tandem`, ou ne pas donner `finisher`
cutting-no-speed = Il manque la vitesse de coupe, et la matière { $material } n’a pas de plage usuelle
cutting-no-speed-help = Ajouter `vc` en m/min à `cutting`, ou `vc: [low, high]` à la matière
material-unknown = pas de matière `{ $name }` dans la table
material-near = faut-il lire `{ $near }` ? ou donner la vôtre : {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = d’après son numéro, c’est { $family }, et la table n’a pas de numéro voisin ; `spanhold materials "{ $word }"` donne la liste de ce groupe ; ou donner la vôtre : {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = la table n’a pas de nom voisin ; `spanhold materials` donne la liste complète ; ou donner la vôtre : {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = un acier non allié
material-tool = un acier à outils
material-special = un acier rapide ou à roulements
material-stainless = un acier inoxydable
material-heat-resistant = un acier réfractaire
material-alloyed = un acier allié
material-copper = du cuivre ou un alliage de cuivre
material-nickel = un alliage de nickel ou de cobalt
material-aluminium = de l’aluminium ou un alliage d’aluminium
material-titanium = du titane ou un alliage de titane
material-vc = La vitesse la plus haute est écrite en premier
material-vc-help = Écrire `vc: [{ $low }, { $high }]`

# Sections.
shaft-no-sections = L’arbre n’a pas de tronçons
shaft-no-sections-help = Écrire au moins un tronçon : `- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = Les tronçons ensemble ont une longueur de { $length } mm
shaft-too-long-help = Écrire les longueurs en mm. Un arbre peut avoir au plus { $most } mm de longueur
section-is-thread = Une pince ne peut pas serrer un filetage
section-is-taper = Une pince ne peut pas serrer un cône
section-is-groove = Une pince ne peut pas serrer une gorge
section-is-knurl = Une pince ne peut pas serrer un moletage
section-has-flats = Une pince ne peut pas serrer un tronçon avec des méplats
section-grip-help = Écrire `grip: false`, ou faire du cylindre lisse un tronçon à part
section-no-size = Le tronçon n’a pas de diamètre
section-no-size-help = Ajouter l’un de ceux-ci : `diameter: 18`, `thread: M16x1.5`, `taper: [18, 22]`, ou `across_flats: 17` avec `sides: 6`
section-kind-size = Une gorge ou un moletage n’a qu’un `diameter`
section-kind-size-help = Supprimer `kind`, ou donner la cote par `diameter` seul
section-two-sizes = Le tronçon a plus d’une forme : { $keys }
section-two-sizes-help = Garder une de ces clés, ou partager le tronçon
section-unknown = Aucun tronçon n’a le nom `{ $name }`
section-unknown-help = Écrire le `name` d’un tronçon, ou son numéro depuis l’avant, 1 à { $most }
sections-same-name = { $count } tronçons ont le nom `{ $name }`
sections-same-name-help = Donner à chaque tronçon son propre nom, ou écrire le numéro depuis l’avant : `section: { $number }`
thread-interrupted = L’avance ne doit pas s’arrêter dans un filetage
thread-interrupted-help = Supprimer `interrupt` de ce tronçon
thread-class = `{ $class }` est une classe de tolérance pour filetages
thread-class-help = Supprimer `tolerance`, et écrire la classe après le filetage : `thread: { $designation }-{ $class }`
thread-by-alone = `thread_by` est donné sans `thread`
thread-by-alone-help = Supprimer `thread_by`. Il dit comment un filetage est fait
taper-same = Les deux bouts du cône ont le même diamètre
taper-same-help = Écrire `diameter: { $diameter }`
sides-alone = `sides` est donné sans `across_flats`
sides-alone-help = Écrire `across_flats: 17, sides: 6`
sides-number = { $sides } n’est pas un nombre de méplats possible
sides-number-help = Écrire 2, 4, 6 ou 8
flats-too-thick = Le diamètre de { $diameter } mm n’est pas plus grand que la cote sur plats
flats-too-thick-help = Écrire un diamètre supérieur à { $across }
flats-beyond-corners = Le diamètre de { $diameter } mm est plus grand que la cote sur angles
flats-beyond-corners-help = Supprimer `diameter`. La barre est tournée à { $corners } mm, la cote sur angles
flats-without-diameter = Deux méplats demandent le diamètre du cylindre
flats-without-diameter-help = Ajouter `diameter`
tolerance-order = Le premier écart n’est pas inférieur au second
tolerance-order-help = Écrire `tolerance: [lower, upper]`, par exemple `[-0.05, 0]`
tolerance-one-number = Une tolérance demande deux écarts, pas un seul nombre
tolerance-one-number-help = Écrire les deux écarts, par exemple `tolerance: [-0.05, 0.05]` ou `tolerance: ±0.05`

# Features.
feature-kind = Un usinage complémentaire demande un type
feature-kind-help = Écrire d’abord une de ces clés : { $kinds }. Exemples : `{"{"}cross_hole: 5, at: 120{"}"}`, `{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` n’est pas une clé de `{ $kind }`
place-beyond-shaft = L’usinage complémentaire va de { $from } à { $to } mm, au-delà de l’arbre
place-beyond-shaft-help = Écrire les distances en mm depuis la face avant. L’arbre finit à { $length } mm
hole-too-wide = Le trou n’est pas plus petit que l’arbre, qui a { $diameter } mm de diamètre à { $at } mm
hole-too-wide-help = Prendre un trou plus petit, ou un autre endroit
keyseat-backwards = La rainure de clavette va de { $from } à { $to } mm
keyseat-backwards-help = Écrire `to` plus grand que `from`
keyseat-too-wide = La rainure de clavette a { $width } mm de largeur, mais l’arbre n’a que { $diameter } mm de diamètre à cet endroit
keyseat-too-wide-help = Écrire `keyseat: [width, depth]` en mm, avec une largeur inférieure au diamètre
keyseat-too-deep = La rainure de clavette a { $depth } mm de profondeur, mais l’arbre n’a que { $diameter } mm de diamètre à cet endroit
keyseat-too-deep-help = Écrire `keyseat: [width, depth]` en mm, avec une profondeur inférieure à la moitié du diamètre
centre-hole-too-wide = Le trou de centre { $hole } a { $mouth } mm de diamètre à l’entrée, mais la face n’a que { $face } mm
centre-hole-too-wide-help = Prendre un trou de centre plus petit
work-too-deep = Une profondeur de { $depth } mm dépasse la longueur de l’arbre, { $length } mm
work-too-deep-help = Écrire la profondeur en mm depuis la face de l’extrémité
work-too-wide = L’arbre n’a que { $diameter } mm de diamètre à cet endroit, mais il faut ici plus de { $size } mm
work-too-wide-help = Prendre une cote plus petite ou une profondeur plus petite
thread-deeper-than-hole = Le trou de { $hole } mm est moins profond que le taraudage
thread-deeper-than-hole-help = Écrire au moins { $least }, ou supprimer `drill_depth`
tapped-hole-where = Un trou taraudé demande une position en travers de l’arbre (`at`) ou une profondeur dans une extrémité (`depth`)
tapped-hole-where-help = Écrire `{"{"}tapped_hole: M4, at: 60{"}"}` ou `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}`
socket-punched-step = Un six pans creux poinçonné n’a pas de `step`
socket-punched-step-help = Supprimer `step`, ou écrire `forming: shave`
engraving-too-long = Le texte est trop long pour une gravure
engraving-too-long-help = Écrire au plus { $most } lettres
engraving-beyond-face = Le texte demande { $needed } mm, mais la face n’a que { $diameter } mm de largeur
engraving-beyond-face-help = Prendre des lettres plus petites ou un texte plus court
engraving-where = Une gravure demande une position le long de l’arbre (`at`) ou une face (`end`)
engraving-where-help = Écrire `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` ou `{"{"}engrave: 42, height: 2, end: front{"}"}`
engraving-on-two = Le texte de { $from } à { $to } mm n’est pas sur un seul cylindre ou méplat
engraving-on-two-help = Déplacer le texte, ou prendre des lettres plus petites
engraving-too-high = Des lettres de { $height } mm sont plus hautes que la surface
engraving-too-high-help = Écrire au plus { $most }
keyway-without-hole = La rainure de clavette intérieure demande un trou axial à la même extrémité, assez profond et assez large
keyway-without-hole-help = Ajouter `{"{"}axial_hole: 12, depth: { $depth }{"}"}` à cette extrémité, avec un diamètre supérieur à { $width }
keyway-no-wall = La rainure de clavette intérieure ne laisse pas de paroi : elle va jusqu’à { $reach } mm de l’axe
keyway-no-wall-help = Prendre un trou ou une rainure plus petits. La surface de l’arbre est à { $most } mm de l’axe

# Families and wishes.
vary-nothing = `vary` est vide
vary-nothing-help = Écrire `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`, `diameter`, ou les deux
vary-too-many = `vary` donne { $parts } pièces
vary-too-many-help = Prendre un `step` plus grand. Au plus { $most } pièces sont possibles
vary-backwards = La plage va de { $from } à { $to } mm
vary-backwards-help = Écrire un `to` qui n’est pas inférieur à `from`
vary-no-diameter = { $section } n’a pas de diamètre lisse à faire varier
vary-no-diameter-help = Faire varier la longueur. Le diamètre d’un filetage, d’un cône ou de méplats ne peut pas varier
wish-too-few = { $most } est trop peu : `hand_over_at` en demande { $wished }
wish-too-few-help = Écrire au moins { $wished }, ou enlever des transferts de `hand_over_at`
wish-twice = Le transfert à { $at } mm est donné deux fois
wish-twice-help = Supprimer l’un des deux
wish-off-shaft = Un transfert à { $at } mm n’est pas sur l’arbre
wish-off-shaft-help = Écrire une longueur tournée entre 0 et { $length } mm
wish-nose = À { $nose } mm, l’arbre n’est pas encore tourné
wish-nose-help = Écrire au plus { $most }. La contre-broche ne serre que des surfaces finies
wish-backwards = La longueur va de { $from } à { $to } mm
wish-backwards-help = Écrire d’abord le bout avant : `[120, 140]`
wish-section-help = Écrire le nom ou le numéro (1 à { $most }) d’un tronçon, ou deux positions : `[120, 140]`

# Readings.
set-ups-empty-help = Ajouter au moins un montage avec une mesure
set-up-unnamed = montage { $number }
set-up-no-reading = Le montage n’a pas de mesure
set-up-no-reading-help = Ajouter `dial`, une liste de {"{"}load, at, deflection{"}"}, ou `frequency`, d’un essai au choc
set-up-bar-too-thick = Une barre de { $bar } mm est trop grosse : `{ $key }` admet au plus { $most } mm
set-up-bar-too-thick-help = Vérifier que `diameter` et `machine` sont ceux de la mesure
set-up-holding-help = Ajouter `{ $key }` à la machine, ou écrire le `holding` de la mesure
set-up-headstock = La position de la poupée n’est pas utilisée sans le canon
set-up-headstock-help = Supprimer `headstock`. Sans canon, les distances partent du nez de la pince de la poupée
set-up-out-of-travel = { $at } mm de la face du canon est hors de la course de `{ $machine }`
set-up-out-of-travel-help = Écrire une distance de { $nearest } à { $farthest } mm
set-up-collet-alone = `collet` est donné sans `grip`
set-up-collet-alone-help = Ajouter `grip`, la distance de la face du canon au nez de la contre-broche, ou supprimer `collet`
set-up-no-spindle-help = Supprimer `grip`
set-up-collet-size = La pince `{ $collet }` ne serre pas une barre de { $bar } mm
set-up-collet-unknown = Aucune pince n’a le nom `{ $collet }`
set-up-no-collet = Aucune pince de la machine ne serre une barre de { $bar } mm
set-up-no-collet-help = Ajouter à la machine la pince de la mesure, ou mesurer avec une autre barre. Les pinces sont { $collets }
set-up-collet-which = Plus d’une pince serre une barre de { $bar } mm
set-up-collet-which-help = Écrire `collet: "{ $first }"`, ou une autre de { $collets }
set-up-bar-in-collet = La barre finit à { $front } mm de la face du canon, dans la pince
set-up-bar-in-collet-help = Mettre `front` à au moins { $least } : la barre doit occuper toute la pince { $collet }
fit-not-on-machine-help = L’enlever de `fit`, ou l’ajouter à la machine
fit-twice-help = Supprimer l’un des deux
reading-beyond-bar = Cet endroit est au-delà du bout avant de la barre
reading-in-spindle = Cet endroit est dans la contre-broche
reading-in-headstock = Cet endroit est dans la pince de la poupée
reading-in-bush = Cet endroit est dans le canon
reading-behind-headstock = Cet endroit est dans la pince de la poupée ou derrière elle
reading-place-help = Écrire la distance depuis la face du canon (sans canon : depuis le nez de la poupée), négative derrière la face
reading-no-deflection = La flèche à l’endroit de la charge n’est pas supérieure à 0
reading-no-deflection-help = Écrire la flèche dans le sens de la charge, en µm, comme nombre positif

# Edits of a text.
edit-impossible = Cette valeur ne peut pas être modifiée ici
edit-refused = Cette modification changerait plus que cette valeur
edit-help = Modifier le texte du fichier

# What the reader assumed: notes of a plan.
note-speed-unusual = La vitesse de coupe de { $speed } { -m-min } est hors de la plage usuelle ({ $material }), { $low } à { $high } { -m-min }.
note-speed-assumed = Aucune vitesse de coupe n’est donnée. Supposé : { $speed } { -m-min }, le milieu de la plage usuelle ({ $material }, { $low } à { $high } { -m-min }).
note-straightness-of-bar = La rectitude de l’arbre tourné n’est pas donnée. Une courbure de { $bow } { -mm } par { -m } est supposée, d’après la barre (stock.kind: { $kind }).
note-straightness = La rectitude de l’arbre tourné n’est pas donnée. Une courbure de { $bow } { -mm } par { -m } est supposée.
note-cutting-force = Effort de coupe, { $material } : kc1.1 { $kc11 } N/mm², mc { $mc }. Source : { $source }. Confiance : { $confidence }.
note-wishes = La gamme respecte ces souhaits : { $wishes }.
note-not-turned = Le tronçon { $section } a le diamètre de la barre et n’est pas tourné. Sa tolérance { $label } admet { $needed }, mais la tolérance de la barre { $bar } donne { $found }. Prendre une barre plus grosse pour le tourner, ou commander la barre à cette tolérance.
note-not-turned-unknown = Le tronçon { $section } a le diamètre de la barre et n’est pas tourné. Sa tolérance { $label } admet { $needed }, mais la tolérance de la barre n’est pas donnée. Prendre une barre plus grosse pour le tourner, ou commander la barre à cette tolérance.
note-family = Le travail fait varier { $ranges }. Cette gamme utilise les valeurs des tronçons. `spanhold batch` calcule toute la plage.
note-part-of-family = Une pièce d’une famille : { $sizes }.

# A centre in the front face.
centre-not-there = `hold: centre` demande une pointe, et la machine { $machine } n’en a pas
centre-not-there-help = Écrire `centre: {"{"}force: 300, stiffness: 40{"}"}` sous `counter_spindle` dans le fichier machine, avec les nombres de votre machine, ou écrire `hold: collet`
centre-no-counter-spindle-help = Choisir une machine avec une contre-broche qui a une pointe (`centre`), ou supprimer `hold`
centre-no-hole = `hold: centre` demande un trou de centre dans la face avant
centre-no-hole-help = L’ajouter sous `shaft.features` : `- {"{"}centre_hole: A2, end: front{"}"}`, ou écrire `hold: collet`
centre-hand-over = Avec `hold: centre`, toute la pièce est une seule étape, sans transfert
centre-hand-over-help = Supprimer `hand_over_at`, ou écrire `hold: collet`
centre-too-short = La pointe dépasse de { $out } mm, et la contre-broche ne vient pas plus près du canon que { $nearest } mm ; elle n’atteint donc pas la face avant
centre-too-short-help = Prendre une pointe avec `stands_out` d’au moins { $least } mm, ou écrire `hold: collet`

# The shop's file.
note-shop = De `{ $file }` : { $keys }
note-cutting-force-shop = Effort de coupe, { $material } (kc1.1 { $kc11 } N/mm², mc { $mc }) : valeurs propres à l’atelier, de `{ $file }`
shop-machine-unknown = `{ $name }` n’est pas une machine de cet atelier
shop-machine-unknown-help = Écrire un nom de `machines` ci-dessus : { $machines }
shop-material-twice = { $name } est indiqué deux fois
shop-material-twice-help = Supprimer l’un des deux éléments
shop-no-bar-of = `{ $file }` n’a pas de barre de cette matière : { $material }
shop-no-bar-of-help = Donner la barre dans le travail, par exemple `stock: {"{"}diameter: 20{"}"}`, ou l’ajouter à `bars`. Il y a des barres de { $grades }
shop-no-bar = Aucune barre ({ $material }) dans `{ $file }` ne donne cet arbre : il faut Ø{ $needed } ou plus
shop-no-bar-help = Il y a { $sizes }, et { $machine } doit admettre la barre. Donner la barre dans le travail, par exemple `stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = Aucune pince n’est connue pour la contre-broche de { $machine } : ni son fichier ni `{ $file }` n’en a
shop-no-collet-help = Indiquer `collets` dans le fichier machine, ou des pinces pour cette machine dans le fichier d’atelier

# The tool list.
tools-number = { $number ->
    [one] { $number } outil
   *[other] { $number } outils
}
tool-twice = Le nom { $name } y est deux fois
tool-twice-help = Donner à chaque outil son propre nom
tool-key-unused = Un outil de type `{ $kind }` n’a pas de `{ $key }`
tool-key-unused-help = Supprimer `{ $key }`, ou écrire un autre `kind`
tool-materials-help = Écrire le nom d’une matière et ses coupes, par exemple `C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = Un bout a un chanfrein et un rayon
edge-both-help = Écrire l’un des deux pour chaque bout
edge-too-long = Les chanfreins ou rayons de { $section } prennent toute sa longueur de { $length } mm
edge-no-step = { $section } n’a pas d’arête libre à cet endroit : le tronçon voisin est aussi gros ou plus gros
edge-too-large = { $size } mm dépasse l’épaulement de { $step } mm à { $section }
edge-help = Un chanfrein se fait sur une arête libre, et n’est pas plus grand que l’épaulement. Indiquer le bout : `chamfer: {"{"}front: 1, rear: 0.5{"}"}`. Un nombre seul est le bout avant
turned-alone = `{ $key }` demande `grind`
turned-alone-help = Écrire la surépaisseur enlevée plus tard en rectification, par exemple `grind: 0.3`, ou ne pas donner la clé
grind-cylinder = Seul un cylindre lisse peut avoir `grind`
grind-cylinder-help = Donner les cotes qui sont tournées, et écrire la rectification dans le nom
grind-nothing-left = tourné à Ø{ $turned } mm { $label }, il peut ne rien rester à rectifier
grind-nothing-left-help = Augmenter `grind` ou serrer `turned_tolerance`
bore-too-wide = L’alésage de { $bore } mm ne laisse pas de paroi à { $section } : { $smallest } mm
bore-too-wide-help = Écrire un diamètre intérieur inférieur à { $smallest } mm, ou ne pas donner `bore` pour une barre pleine
bore-hole = L’alésage de la barre est de { $bore } mm ; il n’y a donc rien à percer pour { $size } mm
bore-hole-help = Un usinage dans une extrémité doit être plus grand que l’alésage de la barre

# Designations of threads.
thread-unknown = `{ $text }` n’est pas la désignation d’un filetage
thread-unknown-help = L’écrire comme `M16x1.5`, `1/4-20 UNC`, `G1/4` ou `Tr20x4`. Une classe et `LH` pour un filetage à gauche peuvent suivre : `M16x1.5-6g-LH`
thread-write = Écrire `{ $designation }`
thread-no-coarse = M{ $major } n’a pas de pas gros dans ISO 261
thread-no-coarse-help = Écrire le pas, `M{ $major }x1`, ou la dimension la plus proche avec un pas gros, `M{ $near }`
thread-too-fine = `{ $text }` : un pas de { $pitch } mm est trop fin
thread-too-fine-help = Écrire un pas d’au moins { $least } mm
thread-too-coarse = `{ $text }` : un pas de { $pitch } mm est trop gros pour un diamètre de { $major } mm
thread-write-coarse = Le pas gros de M{ $major } est { $coarse } mm : écrire `M{ $major }` ou un pas plus fin
thread-finer = Écrire un pas plus fin, au plus { $most } mm
thread-lead = `{ $text }` : le pas hélicoïdal de { $lead } mm n’est pas un nombre entier de pas de { $pitch } mm
thread-lead-help = Écrire le pas hélicoïdal d’un filetage à plusieurs filets comme 2 à { $most } pas, ici { $twice } mm ou un multiple, et le pas entre parenthèses
thread-no-pitch = `{ $text }` : un filetage trapézoïdal demande son pas
thread-no-pipe-size = `{ $text }` : ISO 228-1 n’a pas de filetage gaz de cette dimension
thread-no-unified = `{ $text }` n’est pas dans ASME B1.1
thread-no-unified-help = ASME B1.1 a { $near }
thread-no-unified-special = ASME B1.1 a { $near }. Écrire un filetage spécial comme `{ $special }`
thread-tail-unknown = `{ $text }` : `{ $word }` n’est pas une classe de tolérance de ce filetage
thread-tail-help = Écrire par exemple `{ $designation }`, ou `LH` pour un filetage à gauche
thread-class-of-hole = `{ $class }` est une classe de filetages intérieurs
thread-class-of-shaft = `{ $class }` est une classe de filetages extérieurs
thread-class-write = Écrire par exemple `{ $with }`, ou sans classe : `{ $without }`
# Units of a file.
note-mixed-units = `{ $file }` contient des valeurs dans les deux systèmes d’unités : { $values }. Chacune a été convertie selon sa propre unité. Vérifier que chaque unité est bien celle qui est voulue.
note-mixed-units-value = `{ $key }` à la ligne { $line }
