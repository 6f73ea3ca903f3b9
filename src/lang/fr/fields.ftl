# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = longueur du tronçon
field-shaft-sections-diameter = diamètre du tronçon
field-shaft-sections-taper = diamètre à un bout du cône
field-shaft-sections-thread = diamètre extérieur du filetage
field-shaft-sections-corners = cote sur angles des méplats
field-shaft-sections-across_flats = cote sur plats
field-shaft-sections-sides = nombre de méplats
field-shaft-sections-ra = rugosité Ra
field-shaft-sections-run_out = battement du tronçon par rapport à l’axe entre prise et canon, lecture totale (ISO 1101)
field-shaft-sections-tolerance = écart admis sur le diamètre
field-shaft-straightness = courbure de l’arbre fini par mètre de longueur
field-shaft-features-cross_hole = diamètre du trou transversal
field-shaft-features-at = distance de la face avant au centre du trou, ou au début de la gravure
field-shaft-features-thrust = effort axial du foret
field-shaft-features-keyseat = largeur ou profondeur de la rainure de clavette
field-shaft-features-from = distance de la face avant au bout avant de la rainure de clavette
field-shaft-features-to = distance de la face avant au bout arrière de la rainure de clavette
field-shaft-back_work-radial_force = effort radial sur la pièce
field-shaft-back_work-torque = couple autour de l’axe de la pièce
field-shaft-back_work-time_s = temps de l’usinage
field-shaft-back_work-tolerance = tolérance de l’usinage
field-stock-diameter = diamètre de la barre
field-stock-bar_length = longueur de la barre
field-shaft-material-e_gpa = module d’Young
field-shaft-material-density = masse volumique
field-shaft-material-kc11 = effort de coupe spécifique kc1.1, à 1 mm d’épaisseur de copeau
field-shaft-material-mc = exposant mc de l’épaisseur de copeau
field-shaft-material-poisson = coefficient de Poisson
field-shaft-material-vc = vitesse de coupe usuelle de la matière, la plus basse ou la plus haute
field-cutting-vc = vitesse de coupe
field-cutting-feed = avance par tour
field-cutting-nose_radius = rayon de bec de l’outil
field-cutting-approach_angle = angle de direction d’arête de l’outil
field-cutting-ap_max = plus grande profondeur de passe
field-cutting-ap_finish = profondeur de la dernière passe
field-cutting-speed_floor = vitesse la plus basse admise, en part de la vitesse prévue ; 1 : pas de réduction
field-cutting-lag = distance, le long de la barre, de l’outil d’ébauche à l’outil de finition d’une paire d’outils opposés ou d’un tandem
field-cutting-finisher-nose_radius = rayon de bec de l’outil de finition
field-cutting-finisher-approach_angle = angle de direction d’arête de l’outil de finition
field-cutting-unbalance = plus petit effort radial que deux outils opposés laissent sur la barre, en part du plus grand effort
field-cutting-in_plane_share = effort dans le plan d’avance de chaque élément de l’arête, en part de son effort de coupe principal
field-cutting-passive_floor = plus petit effort passif (radial) d’un outil, en part de son effort de coupe principal
field-cutting-ra_factor = rugosité Ra d’une surface tournée, en multiple du Ra idéal d’après l’avance et le rayon de bec
field-cutting-ra_floor = rugosité Ra sous laquelle le tournage ne descend à aucune avance
field-limits-stiffness_min = plus petite raideur latérale admise
field-limits-span_stiffness_min = plus petite raideur latérale admise entre une prise et le canon, limite interne
field-limits-free_ratio = plus grande longueur libre à l’avant, en multiple de son diamètre fini moyen, règle interne
field-limits-whirl_ratio = plus grande vitesse admise, en part de la vitesse critique
field-limits-whip = plus grande courbure admise pendant la rotation de la barre
field-limits-sag = plus grande flèche de la longueur non soutenue sous son propre poids
field-limits-pick_up = plus grand désaxage d’un avant libre quand la pince de la contre-broche vient le prendre
field-limits-release = plus grande flèche due au poids à l’ancienne prise quand la pince s’ouvre
field-limits-tolerance_share = part de la tolérance que la flexion peut utiliser
field-limits-drill = plus grande flèche à un trou transversal sous l’effort axial du foret
field-planning-station_pitch = distance entre les positions d’arrêt essayées d’abord
field-limits-damping_ratio = taux d’amortissement des vibrations de la barre
field-limits-bore_clearance = jeu autour de la pièce dans l’alésage de la contre-broche, au rayon
field-limits-torque_margin = coefficient de sécurité sur le couple qu’une prise doit transmettre
field-limits-buckling_share = plus grande charge axiale admise, en part de la charge de flambage de la barre
field-limits-avoid_penalty_s = supplément pour une marque d’arrêt sur une surface `avoid`, pas un temps machine
field-rates-machine_per_hour = coût machine par heure
field-rates-material_per_kg = coût matière par kg

## Edges of sections

field-shaft-sections-chamfer = largeur d’un chanfrein de 45° au bout avant
field-shaft-sections-chamfer-front = largeur d’un chanfrein de 45°
field-shaft-sections-chamfer-rear = largeur d’un chanfrein de 45°
field-shaft-sections-radius = rayon de l’arête avant ou de l’angle rentrant devant
field-shaft-sections-radius-front = rayon d’une arête arrondie ou d’un angle rentrant
field-shaft-sections-radius-rear = rayon d’une arête arrondie ou d’un angle rentrant
field-shaft-sections-grind = surépaisseur sur le diamètre, enlevée plus tard en rectification
field-shaft-sections-turned_ra = rugosité Ra de la surface tournée avant rectification
field-stock-bore = diamètre intérieur d’une barre creuse

## Work on the ends and across

field-shaft-features-facing = longueur dressée à l’extrémité
field-shaft-features-axial_hole = diamètre du trou axial
field-shaft-features-depth = profondeur du trou axial, du taraudage, du six pans creux ou de la gravure
field-shaft-features-drill_depth = profondeur de l’avant-trou du taraudage
field-shaft-features-hex_socket = cote sur plats du six pans creux
field-shaft-features-keyway = largeur ou profondeur de la rainure de clavette intérieure
field-shaft-features-length = longueur de la rainure de clavette intérieure, depuis la face de l’extrémité
field-shaft-features-step = profondeur de passe d’une course de l’outil à mortaiser
field-shaft-features-height = hauteur des lettres
field-shaft-back_work-axial_force = effort axial sur la pièce
field-machine-headstock-clamp_force = force de serrage de la pince de la poupée, somme des efforts radiaux
field-machine-headstock-power = puissance du moteur de la poupée en service continu
field-machine-headstock-efficiency = part de la puissance du moteur qui arrive à la coupe
field-machine-headstock-torque = plus grand couple de la broche de la poupée
field-machine-headstock-feed_force = plus grand effort avec lequel la poupée avance la barre suivant l’axe
field-machine-counter_spindle-torque = plus grand couple de l’entraînement de la contre-broche, pour l’usinage de l’extrémité arrière
field-machine-headstock-friction = coefficient de frottement entre la pince de la poupée et la barre
field-machine-counter_spindle-unload_s = temps de déchargement de la pièce finie
field-machine-tool_change_s = temps d’un changement d’outil
field-machine-bar_change_s = temps de chargement d’une nouvelle barre
field-machine-rapid = vitesse d’avance rapide
field-machine-tools-turning = nombre de postes pour outils de tournage
field-machine-tools-cross_driven = nombre de postes pour outils tournants transversaux
field-machine-tools-front_fixed = nombre de postes pour outils fixes à l’extrémité avant
field-machine-tools-front_driven = nombre de postes pour outils tournants à l’extrémité avant
field-machine-tools-back_fixed = nombre de postes pour outils fixes à l’extrémité arrière
field-machine-tools-back_driven = nombre de postes pour outils tournants à l’extrémité arrière
field-machine-tools-whirling = nombre d’unités de tourbillonnage pour filetages
field-machine-tools-turret-stations = nombre de postes de la tourelle
field-machine-tools-turret-tools_per_station = nombre d’outils par poste de tourelle
field-order-pieces = nombre de pièces à faire
field-order-set_up_h = temps de réglage de la machine
field-order-shift_h = durée d’une équipe
field-order-running_share = part de l’équipe pendant laquelle la machine tourne

## The machine

field-machine-bush-max_bar = plus grand diamètre de barre dans le canon
field-machine-bush-land = longueur de la portée de guidage du canon
field-machine-bush-gap = distance du bec de l’outil à la face du canon
field-machine-bush-stiffness = raideur radiale du canon
field-machine-bush-engagement_min = longueur de la portée du canon qui doit rester sur la barre non tournée quand la barre recule
field-machine-no_bush-max_bar = plus grand diamètre de barre sans canon
field-machine-no_bush-collet_gap = distance de la fin d’une étape au nez de la pince de la poupée
field-machine-headstock-nearest = plus courte distance du nez de la pince de la poupée à la face du canon
field-machine-headstock-stroke = course de la poupée
field-machine-headstock-hold = longueur de serrage de la pince de la poupée
field-machine-headstock-stiffness = raideur radiale de la pince de la poupée
field-machine-headstock-max_rpm = vitesse maximale de la poupée
field-machine-headstock-regrip_s = temps d’une reprise de barre
field-machine-counter_spindle-nearest = plus courte distance du nez de la contre-broche à la face du canon
field-machine-counter_spindle-farthest = plus longue distance du nez de la contre-broche à la face du canon
field-machine-counter_spindle-bore = diamètre de l’alésage de la contre-broche
field-machine-counter_spindle-bore_depth = profondeur de l’alésage de la contre-broche, depuis son nez
field-machine-counter_spindle-stiffness = raideur radiale de la pince de la contre-broche
field-machine-counter_spindle-max_rpm = vitesse maximale de la contre-broche
field-machine-counter_spindle-hand_over_s = temps d’un transfert
field-machine-counter_spindle-friction = coefficient de frottement entre la pince de la contre-broche et la pièce
field-machine-counter_spindle-axial_load = effort axial que la contre-broche garde sur l’arbre serré ; positif : elle tire, négatif : elle pousse
field-machine-counter_spindle-torsional_stiffness = raideur en torsion de la contre-broche avec son entraînement ; la poupée est comptée aussi raide
field-machine-counter_spindle-phase_error = angle entre les deux broches pendant qu’elles tiennent la même barre
field-machine-counter_spindle-centre-force = effort axial avec lequel la pointe appuie sur la pièce
field-machine-counter_spindle-centre-stiffness = raideur radiale de la pointe à son bout
field-machine-counter_spindle-centre-stands_out = distance du nez de la contre-broche au bout de la pointe
field-machine-counter_spindle-sleeve-pitch = distance d’un appui au suivant dans l’alésage de la contre-broche
field-machine-counter_spindle-sleeve-stiffness = raideur radiale de chaque appui dans l’alésage de la contre-broche
field-machine-counter_spindle-collets-range = plus petit ou plus grand diamètre que la pince serre
field-machine-counter_spindle-collets-hold = longueur de serrage de la pince
field-machine-counter_spindle-collets-passes = plus grand diamètre qui passe dans la pince ouverte
field-machine-counter_spindle-collets-clamp_force = force de serrage de la pince, somme des efforts radiaux
field-machine-counter_spindle-collets-run_out = battement de la pince à son nez, lecture totale
field-machine-bar_feed-max_rpm = vitesse maximale à laquelle le ravitailleur peut laisser tourner la barre derrière la poupée
field-machine-driven_max_rpm = vitesse maximale des outils tournants
field-machine-shared_stop_saving_s = temps gagné quand un transfert et une reprise de barre se font au même arrêt
field-machine-cross_tool_reach = distance, le long de la barre, de l’outil de coupe à l’outil tournant transversal
field-machine-segment_overhead_s = temps supplémentaire pour chaque passe d’un outil, hors coupe
field-machine-part_off-width = largeur de l’outil à tronçonner
field-machine-part_off-time_s = temps de tronçonnage
field-machine-part_off-tray-max_length = longueur jusqu’à laquelle une pièce peut tomber dans le bac ; 0 : aucune pièce ne tombe
field-machine-part_off-tray-max_diameter = plus grand diamètre jusqu’auquel une pièce peut tomber dans le bac
field-machine-bar_end = longueur du bout de barre qu’aucune pince ne peut serrer
field-machine-facing = longueur dressée à l’extrémité avant de chaque pièce, si le travail n’a pas de dressage plus grand

## Wishes and families

field-wishes-hand_over_at = longueur tournée à laquelle un transfert doit être fait
field-wishes-hand_over_at-at = longueur tournée du transfert
field-wishes-hand_over_at-nose = distance de la face avant au nez de la contre-broche lors du transfert
field-wishes-never_grip = distance de la face avant à un bout d’une longueur qu’aucune prise ne doit toucher
field-wishes-at_most_hand_overs = plus grand nombre de transferts par pièce, première prise comprise
field-vary-length-from = plus petite longueur du tronçon variable
field-vary-length-to = plus grande longueur du tronçon variable
field-vary-length-step = pas d’une longueur à la suivante
field-vary-diameter-from = plus petit diamètre du tronçon variable
field-vary-diameter-to = plus grand diamètre du tronçon variable
field-vary-diameter-step = pas d’un diamètre au suivant

## Spread

field-confidence = part des pièces simulées pour lesquelles la gamme doit rester dans toutes les limites
field-confidence_warn = part des pièces simulées restant dans toutes les limites, au-dessous de laquelle une gamme est à risque
field-scatter-samples = nombre de pièces simulées
field-scatter-seed = nombre initial des tirages aléatoires
field-scatter-straightness = dispersion de la courbure, en part de sa valeur
field-scatter-supports = dispersion de la raideur de chaque appui, en part de sa valeur
field-scatter-bush = dispersion de la raideur du canon, en part
field-scatter-headstock = dispersion de la raideur de la poupée, en part
field-scatter-counter_spindle = dispersion de la raideur de la contre-broche, en part
field-scatter-centre = dispersion de la raideur de la pointe, en part
field-scatter-sleeve = dispersion de la raideur des appuis dans l’alésage de la contre-broche, en part
field-scatter-kc = dispersion de l’effort de coupe spécifique, en part de sa valeur
field-scatter-passive = dispersion de l’effort passif et de l’effort d’avance, en plus de celle de l’effort principal, en part de leur valeur
field-scatter-e = dispersion du module d’Young, en part de sa valeur
field-scatter-damping = dispersion du taux d’amortissement, en part de sa valeur
field-scatter-ra = dispersion du rapport de la rugosité réelle à l’idéale (cutting.ra_factor), en part de sa valeur
field-scatter-run_out = dispersion du battement des pinces de la contre-broche, en part
field-scatter-bar = dispersion du diamètre de la barre
field-machine-scatter-bush = dispersion de la raideur du canon, en part
field-machine-scatter-headstock = dispersion de la raideur de la poupée, en part
field-machine-scatter-counter_spindle = dispersion de la raideur de la contre-broche, en part
field-machine-scatter-centre = dispersion de la raideur de la pointe, en part
field-machine-scatter-sleeve = dispersion de la raideur des appuis dans l’alésage de la contre-broche, en part
field-machine-scatter-damping = dispersion du taux d’amortissement, en part
field-machine-scatter-run_out = dispersion du battement des pinces de la contre-broche, en part
field-shaft-material-scatter-kc = dispersion de l’effort de coupe spécifique, en part
field-shaft-material-scatter-e = dispersion du module d’Young, en part
field-shop-bars-scatter-straightness = dispersion de la courbure des arbres tirés de cette barre, en part
field-shop-bars-scatter-bar = dispersion du diamètre de cette barre

## What a change is worth

field-change_prices-wish = rang de l’abandon d’un souhait du travail
field-change_prices-speed = rang d’un tournage plus lent
field-change_prices-cut = rang d’une autre profondeur de passe, d’une avance plus petite ou de plus de courses
field-change_prices-tools = rang d’un second outil dans la coupe
field-change_prices-hold = rang d’un autre maintien : avec ou sans canon, pince ou pointe, course réduite
field-change_prices-method = rang d’une autre façon de faire un filetage ou un six pans creux
field-change_prices-turn_round = rang de la fabrication par l’autre bout
field-change_prices-bar = rang d’un autre diamètre de barre
field-change_prices-straightness = rang d’une barre plus droite
field-change_prices-collet = rang d’une autre pince
field-change_prices-tray = rang d’un bac qui reçoit la pièce
field-change_prices-stop = rang d’un arrêt sur une surface qui ne doit pas en avoir
field-change_prices-grip = rang d’une prise sur une surface qui ne doit pas être serrée
field-change_prices-sleeve = rang de manchons dans la contre-broche
field-change_prices-set_up = rang d’un usinage dans un second montage
field-change_prices-drawing = rang d’une modification du dessin
field-change_prices-shop_machine = rang d’une autre machine de l’atelier
field-change_prices-machine = rang d’une machine plus performante

## The tool list

field-tool_list-nose_radius = rayon de bec de la plaquette
field-tool_list-approach_angle = angle de direction d’arête de l’outil
field-tool_list-ap_max = plus grande profondeur de passe de l’outil
field-tool_list-width = largeur d’un outil à gorge ou à tronçonner
field-tool_list-vc = vitesse de coupe
field-tool_list-feed = avance par tour ; en finition, la plus grande

## The shop's file

field-shop-machines-per_hour = coût de cette machine par heure
field-shop-materials-price_per_kg = prix de la matière par kg
field-shop-bars-diameter = diamètre de la barre
field-shop-bars-bar_length = longueur de la barre
field-shop-bars-price_per_kg = prix de cette barre par kg

## Readings

field-readings-diameter = diamètre de la barre mesurée
field-readings-set_ups-front = distance de la face du canon au bout avant de la barre
field-readings-set_ups-headstock = distance de la face du canon au nez de la pince de la poupée
field-readings-set_ups-grip = distance de la face du canon au nez de la pince de la contre-broche
field-readings-set_ups-frequency = première fréquence propre latérale, par essai au choc
field-readings-set_ups-dial-load = charge sur la barre
field-readings-set_ups-dial-at = distance de la face du canon à la charge, négative derrière la face
field-readings-set_ups-dial-read_at = distance de la face du canon au comparateur, négative derrière la face
field-readings-set_ups-dial-deflection = flèche lue au comparateur, positive dans le sens de la charge
field-readings-errors-dial = incertitude d’une lecture de comparateur
field-readings-errors-load = incertitude d’une charge, en part de sa valeur
field-readings-errors-tap = incertitude d’une fréquence, en part de sa valeur
