# The topics of `help`: files, checks, materials.
help-job =
    Le fichier de travail dit ce qui est à tourner : l’arbre, la barre, la machine, et la façon de couper. C’est un fichier YAML.
    Les longueurs sont en mm, ou en pouces avec `units: inch`. Les positions sur l’arbre se comptent depuis la face avant : le bout qui sort le premier du canon.
    `spanhold new` affiche un exemple plus long avec des commentaires. Un éditeur peut vérifier le fichier pendant la saisie : `spanhold schema job`.
    `[]` après un nom signifie : chaque élément de la liste.
help-machine =
    Le fichier machine décrit un tour. C’est un fichier YAML. Un travail le nomme, ou un travail a les mêmes clés sous `machine`.
    Les longueurs sont en mm, ou en pouces avec `units: inch`. Les raideurs sont en N/µm. Prendre les longueurs et les vitesses dans la notice de la machine. Mesurer les raideurs : voir `spanhold help readings`.
    `[]` après un nom signifie : chaque élément de la liste.
help-shop =
    Le fichier d’atelier contient ce qui est commun à tous les travaux d’un atelier : machines, pinces, matières avec prix, barres, tarifs, valeurs internes.
    C’est un fichier YAML. spanhold le trouve comme `shop.yaml` dans le dossier d’un travail ou au-dessus ; `--shop FILE` ou `shop` dans le travail en nomme un autre.
    Un travail peut omettre tout ce qui s’y trouve, et ce qu’un travail donne compte d’abord. `spanhold new shop shop.yaml` en écrit un avec des commentaires.
    `cutting`, `limits`, `planning`, `scatter`, `order` et `rates` ont les clés d’un travail (`spanhold help job`), sauf `cutting.vc` et `order.pieces`.
    `[]` après un nom signifie : chaque élément de la liste.
help-readings =
    Le fichier de mesures contient ce que vous avez mesuré sur la machine. `spanhold fit` en calcule la raideur de chaque appui.
    Les positions se comptent en mm depuis la face du canon vers la contre-broche. Sans canon, elles se comptent depuis le nez de la pince de la poupée.
    Consigner la machine avant de mesurer. Suivre sa notice et les règles locales.
    `[]` après un nom signifie : chaque élément de la liste.
help-materials =
    Matières intégrées pour `shaft.material` dans un travail. Donner le nom, le numéro ou un autre nom. Les majuscules, les espaces, les traits d’union, le nom du système (AISI, JIS, UNS, W.-Nr.) et une norme devant le nom sont sans importance.
    E : module d’Young. kc1.1 et mc : effort de coupe spécifique à 1 mm d’épaisseur de copeau, et son exposant. vc : vitesses de coupe usuelles avec carbure revêtu et lubrifiant.
    La confiance dit jusqu’où se fier à kc1.1 et mc. high : une source connue de la nuance. medium : les sources diffèrent, ou un groupe qui convient. low : une estimation.
    Les valeurs viennent de la mémoire de manuels et de normes, du catalogue d’un fabricant d’outils, ou sont des estimations. Les efforts de coupe sont justes à ± 25 % près au mieux.
    Pour une autre matière, donner un groupe de clés : `name`, `e_gpa`, `density`, `kc11`, `mc`, et au besoin `poisson`, `vc` et `class`. Voir `spanhold help job`.
help-speeds =
    Vitesses et avances des forets, tarauds et fraises. La classe de la matière les donne. Une matière intégrée a sa classe. Donner `class` pour une matière personnalisée ; sinon, elle est supposée d’après les autres nombres, et la gamme le dit.
    Les forets et les tarauds sont en acier rapide, les fraises en carbure monobloc revêtu et coupent sur toute leur largeur, tous avec lubrifiant. Les forets en carbure tournent deux à quatre fois plus vite. Les outils tournants ne dépassent pas `driven_max_rpm` de la machine.
    Les lettres disent d’où vient chaque valeur : foret ; taraud ; fraise. Les plages des sources sont larges.
    Entre deux diamètres, l’avance par dent est linéaire. Une fraise plus mince l’a en proportion, une plus grosse a la dernière.
help-checks =
    Les critères d’une gamme. Un critère compare une valeur avec sa limite. Une gamme tient si chaque valeur utilise au plus 100 % de sa limite.
    Les limites sont des valeurs par défaut de pratique courante, sans source. Les modifier dans le travail sous `limits`.
help-plan-file =
    Les clés de plan.json, le fichier que `spanhold plan --out` écrit et que `spanhold plan --format json` affiche.
    Chaque nombre est fini. `null` signifie : il n’y en a pas. Beaucoup de noms finissent par leur unité. Les longueurs tournées et les positions sur l’arbre se comptent depuis la face avant.
    `[]` après un nom signifie : chaque élément de la liste.
help-group-root = Clés du fichier : { $what }.
help-group = { $paths } : { $what }.
help-group-kinds = { $title } Donner exactement un de ces types : { $kinds }.
help-head-key = clé
help-head-meaning = sens
help-head-unit = unité
help-head-takes = admet
help-head-holds = contient
help-head-left-out = si omis
help-head-check = critère
help-head-looks-at = examine
help-head-made = quand
help-head-limit = clé de la limite
help-head-material = nom
help-head-class = classe
help-head-drill-vc = foret, m/min
help-head-drill-feed = avance du foret, × diamètre
help-head-tap-vc = taraud, m/min
help-head-mill-vc = fraise, m/min
help-head-tooth-feed = avance par dent
help-head-sources = sources
help-head-cutter = diamètre de la fraise, mm
help-head-letter = lettre
help-head-source = source
help-speeds-meaning = Classes :
help-speeds-classes = Vitesses et avances :
help-speeds-teeth = Avance par dent selon le diamètre de la fraise, mm :
help-speeds-sources = Sources :
tooth-feed-full = pleine
tooth-feed-small = petite
help-head-number = numéro
help-head-names = autres noms
help-head-state = état
help-head-e = E, GPa
help-head-density = masse vol., kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = confiance
help-takes-range = { $least } à { $most }
help-takes-text = texte
help-takes-number = nombre
help-takes-whole = nombre entier
help-takes-flag = `true` ou `false`
help-takes-null = `null`
help-takes-map = groupe de clés
help-takes-list = liste : { $item }
help-takes-pair = deux valeurs : { $item }
help-takes-or = { $one } ou { $other }
help-takes-any = toute valeur
help-must-be-given = à donner
help-must-be-given-with = à donner avec { $keys }
help-another-kind = un autre type
help-another-kind-of = un autre type : { $others }
help-material-about = { $name } ({ $group }, { $state }), coefficient de Poisson { $poisson }, classe { $class }. kc1.1 et mc : { $source }.
help-material-group = { $group } :
help-materials-more =
    `spanhold materials WORD` donne les autres noms, l’état de la barre et les sources de ce qui correspond à un mot : un nom, un numéro ou un groupe.
    `--format json` donne tout.
help-material-names = { "  " }Autres noms : { $names }.
help-check-at-rest = à chaque longueur tournée
help-check-by-speed = à chaque longueur tournée ; une vitesse plus basse aide
help-check-at-event = à un moment précis
help-check-at-both = dans chaque état d’une passe, et pour l’usinage d’une extrémité
help-check-no-limit = aucune
help-check-no-default = dépend de l’outil, de la barre et du maintien
help-check-stiffness = La raideur latérale de la barre à l’outil.
help-check-span-stiffness = La plus faible raideur latérale entre la prise et le canon : une limite interne pour un outil seul. Elle ne s’applique pas là où l’avant pourrait tourner libre.
help-check-free-ratio = Une règle interne, sans effet si la clé est omise : la longueur libre à l’avant divisée par son diamètre fini moyen (L/d).
help-check-whirl = Vitesse divisée par la plus basse vitesse critique. Les textes disent « vitesse critique ».
help-check-whip = Courbure de l’arbre tourné, agrandie par la rotation.
help-check-sag = Flèche due au poids de l’arbre entre la prise et le canon. Pour un avant libre : voir `pick_up`.
help-check-pick-up = De combien un avant libre est désaxé, par sa courbure et son poids, quand la pince de la contre-broche vient le prendre.
help-check-bore = La même flexion dans la contre-broche, agrandie par la rotation, par rapport à la place dans l’alésage. La clé de la limite est le jeu qui reste libre.
help-check-cut = Variation du diamètre le long d’une passe parce que la barre fléchit. La limite est une part de la tolérance.
help-check-chatter = Profondeur de passe par rapport à celle où commence le broutement régénératif. `limits.damping_ratio` change cette profondeur.
help-check-buckling = Charge axiale qui comprime la barre, par rapport à une part de la charge de flambage. La ligne est omise au-dessous d’un quart de cette limite.
help-check-run-out = Battement de la surface usinée dû au battement de la pince de la contre-broche. Calculé là où la pince et le tronçon ont tous deux `run_out`.
help-check-drill = Flexion sous l’effort d’un foret transversal ou d’une fraise, au moment où il travaille.
help-check-release = Descente de l’arbre à l’ancienne prise quand la pince s’ouvre à un transfert.
help-check-torque = Couple du tronçonnage et de l’usinage de l’extrémité arrière, multiplié par une marge, par rapport au frottement de la dernière prise.
help-check-push = Poussée et couple de l’usinage d’une extrémité, multipliés par une marge, par rapport au frottement de la pince qui tient.
help-check-back = Flexion de l’extrémité arrière sous l’usinage après tronçonnage. La limite est une part de la tolérance de cet usinage.
help-unknown-topic = il n’y a pas d’aide sur `{ $word }`
help-topics-and-commands = Sujets : { $topics }. Commandes : { $commands }
help-nearest = faut-il lire `{ $near }` ? { $all }
help-more-topics = Sujets : { $topics }. En lire un avec : spanhold help TOPIC
help-materials-of-shop = De `{ $file }`
help-head-price = par kg
help-no-material = aucune matière intégrée ne correspond à `{ $word }`
help-all-materials = `spanhold materials` donne la liste complète
left-out-none = aucun
left-out-defaults = les valeurs par défaut de ses clés
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` n’est pas contrôlé
left-out-section-name = « tronçon » et son numéro
left-out-section-kind = cylindre lisse, filetage, cône ou méplats
left-out-section-sides = à donner avec `across_flats`
left-out-section-ra = pas de rugosité exigée
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point` ; `whirling` là où la barre ne peut pas reculer de tout le filetage
left-out-section-interrupt = `never` pour un filetage, pour IT7 ou plus fin, pour Ra 0,8 ou plus fin ; `avoid` jusqu’à IT9 ou Ra 1,6 ; sinon `free`
left-out-section-grip = `true` pour un cylindre lisse, sinon `false`
left-out-feature-thrust = calculé d’après le trou
left-out-feature-at = à donner avec `cross_hole`, et avec `tapped_hole` ou `engrave` le long de l’arbre
left-out-language = celle du fichier de l’atelier, sinon `en`
left-out-feature-depth = à donner avec `axial_hole`, `hex_socket`, et `tapped_hole` sur une extrémité ; { $default } pour `engrave`
left-out-feature-drill-depth = `depth` plus quatre pas
left-out-material-vc = donner alors `cutting.vc`
left-out-material-class = supposée d’après le module, la masse volumique et kc1.1
left-out-finisher = même côté, avec l’arête de l’outil d’ébauche
left-out-finisher-edge = celui de l’outil d’ébauche
left-out-cutting-vc = milieu de la plage usuelle de la matière
left-out-cutting-feed = ébauche 0,15 ; finition d’après Ra, au plus 0,15
left-out-cutting-ap-finish = { $default }, mais au plus `ap_max`
left-out-stiffness = { $share } N/µm pour chaque mm de diamètre de barre
left-out-span-stiffness = comme `stiffness_min`
left-out-whip = { $share } mm pour chaque mm de diamètre de barre
left-out-rates = aucun coût n’est calculé
left-out-order = aucun devis de commande
left-out-vary = une seule pièce
left-out-wish-nose = le planificateur la choisit
left-out-wish-most = pas de limite
left-out-scatter-support = `scatter` de la machine, sinon `supports`
left-out-own-scatter = `scatter` du travail ou de l’atelier
left-out-confidence = aucune : la gamme la plus rapide
left-out-scatter-bar = uniforme sur la tolérance de la barre ; sans tolérance : aucune
left-out-machine-name = nom du fichier
left-out-bush = pas de canon ; seulement `holding: no_bush`
left-out-no-bush = pas de travail sans le canon
left-out-engagement = la moitié de `land`
left-out-counter-spindle = pas de contre-broche
left-out-sleeve = pas d’appuis
left-out-centre = pas de pointe
left-out-centre-stands-out = son bout est compté au niveau du nez
left-out-torsional-stiffness = la dernière prise porte tout le couple de tronçonnage
left-out-edge = une arête vive
left-out-grind = pas de rectification
left-out-drive = pas de contrôle ; la gamme indique ce qu’il faut
left-out-clamp-force = `push` à l’extrémité avant n’est pas contrôlé
left-out-bush-kind = pas de mise en garde sur la tolérance de la barre
left-out-bar-feed = le ravitailleur ne limite aucune vitesse
left-out-tray = avec contre-broche : des pièces jusqu’à { $length } mm × Ø{ $diameter } mm peuvent tomber ; sans : toutes les pièces tombent
left-out-tools = les postes d’outils ne sont pas contrôlés
left-out-turret = pas de tourelle
left-out-fit = tous les appuis de la machine
left-out-set-up-name = « montage » et son numéro
left-out-set-up-headstock = à donner avec le canon
left-out-set-up-grip = l’avant est libre
left-out-set-up-collet = à donner si plus d’une pince peut serrer la barre
left-out-dial = donner alors `frequency`
left-out-frequency = donner alors `dial`
left-out-read-at = à l’endroit de la charge
man-unknown-command = il n’y a pas de commande `{ $word }`
man-commands = Commandes : { $commands }
class-free-cutting-steel = acier de décolletage
class-structural-steel = acier de construction et acier de cémentation
class-carbon-steel = acier non allié à partir d’environ 0,35 % de carbone
class-alloy-steel = acier allié, trempé et revenu
class-tool-steel = acier à outils
class-free-cutting-stainless = acier inoxydable au soufre
class-ferritic-stainless = acier inoxydable ferritique et martensitique
class-austenitic-stainless = acier inoxydable austénitique
class-duplex-stainless = acier inoxydable duplex et à durcissement par précipitation
class-heat-resistant-steel = alliage de fer réfractaire
class-pure-titanium = titane pur
class-titanium-alloy = alliage de titane
class-cobalt-chromium = alliage cobalt-chrome
class-nickel-alloy = alliage de nickel
class-free-cutting-copper = laiton au plomb et autres alliages de cuivre de décolletage
class-copper-alloy = cuivre, bronze, laiton sans plomb
class-aluminium = alliage d’aluminium
class-plastic = matière plastique

# The shop's file.
schema-shop = ce que possède un atelier
schema-shop-of-job = chemin du fichier d’atelier ; `none` : aucun fichier d’atelier ne compte
schema-shop-machine = une machine
schema-shop-machines = les machines ; la première est la machine habituelle
schema-shop-machine-name = nom par lequel un travail la demande
schema-shop-collets = pinces pour les contre-broches, en plus de celles des fichiers machine
schema-shop-collet-machines = machines où elle se monte
schema-shop-materials = prix et valeurs des nuances, ou chemin d’un fichier avec cette liste
schema-shop-material = une nuance
schema-shop-grade = une nuance de la table intégrée ; les valeurs à côté remplacent celles de la table
schema-shop-grade-name = nom d’une nuance personnalisée
schema-shop-bars = barres en stock
schema-shop-bar = une barre
schema-shop-bar-material = nom de sa matière
schema-language = langue des textes et des fiches
left-out-to-shop = du fichier d’atelier
left-out-shop-machine-name = nom de son fichier
left-out-shop-machine-file = donner `machine`
left-out-shop-machine-here = donner `file`
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = toutes les machines
left-out-shop-grade = une nuance personnalisée
left-out-shop-grade-value = celle de la table ; à donner sans `grade`
left-out-shop-grade-or = celle de la table ; sans `grade` { $default }
left-out-shop-grade-maybe = celle de la table ; sans `grade` aucune
left-out-shop-grade-name = celui de la table ; à donner sans `grade`
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = valeurs usuelles
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = les outils présents ; le calcul choisit parmi eux
schema-tool = un outil
schema-tool-name = nom de l’outil
schema-tool-kind = ce qu’il fait
schema-tool-station = où il se trouve
schema-tool-insert = sa plaquette, dans vos mots
schema-tool-rough = sa passe d’ébauche
schema-tool-finish = sa passe de finition
schema-tool-materials = d’autres conditions de coupe dans certaines matières, par nom de matière
schema-tool-material = ses conditions de coupe dans cette matière
left-out-tool-list = un seul jeu de nombres, `cutting`
left-out-tool-cutting = comme sous `cutting`
left-out-tool-width = il convient à toute gorge
left-out-tool-cut = les deux, si aucune n’est donnée
# Units of a file.
schema-units = unités des nombres sans unité dans ce fichier : métriques ou en pouces
left-out-machine-units = celles du fichier qui l’entoure, sinon `mm`
