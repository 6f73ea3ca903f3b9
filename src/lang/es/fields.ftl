# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = longitud del tramo
field-shaft-sections-diameter = diámetro del tramo
field-shaft-sections-taper = diámetro en un extremo del cono
field-shaft-sections-thread = diámetro exterior de la rosca
field-shaft-sections-corners = diámetro entre vértices de las caras planas
field-shaft-sections-across_flats = distancia entre caras planas
field-shaft-sections-sides = número de caras planas
field-shaft-sections-ra = rugosidad Ra
field-shaft-sections-run_out = salto radial (oscilación circular) del tramo respecto al eje entre agarre y casquillo, como lectura completa (ISO 1101)
field-shaft-sections-tolerance = desviación admisible del diámetro
field-shaft-straightness = curvatura del eje acabado por metro de longitud
field-shaft-features-cross_hole = diámetro del agujero transversal
field-shaft-features-at = distancia de la cara frontal al centro del agujero, o al comienzo del grabado
field-shaft-features-thrust = fuerza axial de la broca
field-shaft-features-keyseat = anchura o profundidad del chavetero
field-shaft-features-from = distancia de la cara frontal al extremo frontal del chavetero
field-shaft-features-to = distancia de la cara frontal al extremo trasero del chavetero
field-shaft-back_work-radial_force = fuerza radial sobre la pieza
field-shaft-back_work-torque = par alrededor del eje de giro de la pieza
field-shaft-back_work-time_s = tiempo de la operación
field-shaft-back_work-tolerance = tolerancia de la operación
field-stock-diameter = diámetro de la barra
field-stock-bar_length = longitud de la barra
field-shaft-material-e_gpa = módulo de Young
field-shaft-material-density = densidad
field-shaft-material-kc11 = fuerza específica de corte kc1.1, con 1 mm de espesor de viruta
field-shaft-material-mc = exponente mc del espesor de viruta
field-shaft-material-poisson = coeficiente de Poisson
field-shaft-material-vc = velocidad de corte habitual mínima o máxima del material
field-cutting-vc = velocidad de corte
field-cutting-feed = avance por revolución
field-cutting-nose_radius = radio de punta de la herramienta
field-cutting-approach_angle = ángulo de posición de la herramienta
field-cutting-ap_max = profundidad de corte máxima
field-cutting-ap_finish = profundidad de corte de la última pasada
field-cutting-speed_floor = velocidad mínima permitida, como parte de la velocidad prevista; 1 significa sin reducción
field-cutting-lag = distancia a lo largo de la barra de la herramienta de desbaste a la de acabado de un par opuesto o de un tándem
field-cutting-finisher-nose_radius = radio de punta de la herramienta de acabado
field-cutting-finisher-approach_angle = ángulo de posición de la herramienta de acabado
field-cutting-unbalance = menor fuerza radial que dejan en la barra dos herramientas en lados opuestos, como parte de la fuerza mayor
field-cutting-in_plane_share = fuerza en el plano de avance de cada porción del filo, como parte de su fuerza principal de corte
field-cutting-passive_floor = menor fuerza pasiva (radial) de una herramienta, como parte de su fuerza principal de corte
field-cutting-ra_factor = rugosidad Ra de una superficie torneada, como múltiplo de la Ra ideal según avance y radio de punta
field-cutting-ra_floor = rugosidad Ra por debajo de la cual el torneado no baja, con ningún avance
field-limits-stiffness_min = menor rigidez lateral permitida
field-limits-span_stiffness_min = menor rigidez lateral permitida entre un agarre y el casquillo, un límite propio del taller
field-limits-free_ratio = mayor longitud libre del extremo frontal, como múltiplo de su diámetro acabado medio, una regla propia del taller
field-limits-whirl_ratio = mayor velocidad permitida, como parte de la velocidad crítica
field-limits-whip = mayor curvatura permitida mientras la barra gira
field-limits-sag = mayor flecha por peso propio de la longitud sin apoyo
field-limits-pick_up = mayor distancia de un extremo frontal libre al eje de giro cuando la pinza del contrahusillo pasa sobre él
field-limits-release = mayor flecha por peso propio en el agarre anterior cuando se abre la pinza
field-limits-tolerance_share = parte de la tolerancia que puede usar la flexión
field-limits-drill = mayor flexión en un agujero transversal bajo la fuerza axial de la broca
field-planning-station_pitch = distancia entre las posiciones de parada que se prueban primero
field-limits-damping_ratio = coeficiente de amortiguamiento de la vibración de la barra
field-limits-bore_clearance = juego alrededor de la pieza en el agujero del contrahusillo, en el radio
field-limits-torque_margin = coeficiente de seguridad del par que debe soportar un agarre
field-limits-buckling_share = mayor carga axial permitida, como parte de la carga con la que pandea la barra
field-limits-avoid_penalty_s = recargo por una marca de parada en una superficie `avoid`, no es tiempo de máquina
field-rates-machine_per_hour = coste de máquina por hora
field-rates-material_per_kg = coste del material por kg

## Edges of sections

field-shaft-sections-chamfer = anchura de un chaflán de 45° en el extremo frontal
field-shaft-sections-chamfer-front = anchura de un chaflán de 45°
field-shaft-sections-chamfer-rear = anchura de un chaflán de 45°
field-shaft-sections-radius = radio de la arista frontal o de la esquina de delante
field-shaft-sections-radius-front = radio de una arista redondeada o de una esquina
field-shaft-sections-radius-rear = radio de una arista redondeada o de una esquina
field-shaft-sections-grind = sobremedida en el diámetro que se rectifica después
field-shaft-sections-turned_ra = rugosidad Ra de la superficie torneada antes del rectificado
field-stock-bore = diámetro interior de una barra hueca

## Work on the ends and across

field-shaft-features-facing = longitud que se refrenta del extremo
field-shaft-features-axial_hole = diámetro del agujero axial
field-shaft-features-depth = profundidad del agujero axial, de la rosca, del hexágono interior o del grabado
field-shaft-features-drill_depth = profundidad del agujero taladrado para la rosca
field-shaft-features-hex_socket = entrecaras del hexágono interior
field-shaft-features-keyway = anchura o profundidad del chavetero interior
field-shaft-features-length = longitud del chavetero interior, desde la cara del extremo
field-shaft-features-step = profundidad de corte de una carrera de la herramienta de mortajar
field-shaft-features-height = altura de las letras
field-shaft-back_work-axial_force = fuerza axial sobre la pieza
field-machine-headstock-clamp_force = fuerza de apriete de la pinza del cabezal, como suma de las fuerzas radiales
field-machine-headstock-power = potencia del motor del cabezal en servicio continuo
field-machine-headstock-efficiency = parte de la potencia del motor que llega al corte
field-machine-headstock-torque = par máximo del husillo del cabezal
field-machine-headstock-feed_force = fuerza máxima con la que el cabezal avanza la barra axialmente
field-machine-counter_spindle-torque = par máximo del accionamiento del contrahusillo, para mecanizar el extremo trasero
field-machine-headstock-friction = coeficiente de rozamiento entre la pinza del cabezal y la barra
field-machine-counter_spindle-unload_s = tiempo para descargar la pieza acabada
field-machine-tool_change_s = tiempo de un cambio de herramienta
field-machine-bar_change_s = tiempo para cargar una barra nueva
field-machine-rapid = velocidad de avance rápido
field-machine-tools-turning = número de puestos para herramientas de torneado
field-machine-tools-cross_driven = número de puestos para herramientas transversales motorizadas
field-machine-tools-front_fixed = número de puestos para herramientas fijas en el extremo frontal
field-machine-tools-front_driven = número de puestos para herramientas motorizadas en el extremo frontal
field-machine-tools-back_fixed = número de puestos para herramientas fijas en el extremo trasero
field-machine-tools-back_driven = número de puestos para herramientas motorizadas en el extremo trasero
field-machine-tools-whirling = número de unidades de torbellinado para roscas
field-machine-tools-turret-stations = número de estaciones de la torreta
field-machine-tools-turret-tools_per_station = número de herramientas por estación de la torreta
field-order-pieces = número de piezas que se fabrican
field-order-set_up_h = tiempo de preparación de la máquina
field-order-shift_h = duración de un turno
field-order-running_share = parte del turno en la que la máquina trabaja

## The machine

field-machine-bush-max_bar = mayor diámetro de barra en el casquillo guía
field-machine-bush-land = longitud de guiado del casquillo
field-machine-bush-gap = distancia de la punta de la herramienta a la cara del casquillo
field-machine-bush-stiffness = rigidez radial del casquillo
field-machine-bush-engagement_min = longitud de guiado del casquillo que debe quedar sobre barra sin tornear cuando la barra retrocede
field-machine-no_bush-max_bar = mayor diámetro de barra sin el casquillo guía
field-machine-no_bush-collet_gap = distancia del final de una etapa a la nariz de la pinza del cabezal
field-machine-headstock-nearest = menor distancia de la nariz de la pinza del cabezal a la cara del casquillo
field-machine-headstock-stroke = carrera del cabezal
field-machine-headstock-hold = longitud de apriete de la pinza del cabezal
field-machine-headstock-stiffness = rigidez radial de la pinza del cabezal
field-machine-headstock-max_rpm = velocidad máxima del cabezal
field-machine-headstock-regrip_s = tiempo de un reagarre del cabezal
field-machine-counter_spindle-nearest = menor distancia de la nariz del contrahusillo a la cara del casquillo
field-machine-counter_spindle-farthest = mayor distancia de la nariz del contrahusillo a la cara del casquillo
field-machine-counter_spindle-bore = diámetro del agujero del contrahusillo
field-machine-counter_spindle-bore_depth = profundidad del agujero del contrahusillo, desde su nariz
field-machine-counter_spindle-stiffness = rigidez radial de la pinza del contrahusillo
field-machine-counter_spindle-max_rpm = velocidad máxima del contrahusillo
field-machine-counter_spindle-hand_over_s = tiempo de una transferencia
field-machine-counter_spindle-friction = coeficiente de rozamiento entre la pinza del contrahusillo y la pieza
field-machine-counter_spindle-axial_load = fuerza axial que el contrahusillo mantiene sobre el eje agarrado; una fuerza positiva tira, una negativa presiona
field-machine-counter_spindle-torsional_stiffness = rigidez torsional del contrahusillo con su accionamiento; el cabezal se considera igual de rígido
field-machine-counter_spindle-phase_error = ángulo entre los dos husillos mientras sujetan la misma barra
field-machine-counter_spindle-centre-force = fuerza axial con la que el punto presiona la pieza
field-machine-counter_spindle-centre-stiffness = rigidez radial del punto en su vértice
field-machine-counter_spindle-centre-stands_out = distancia de la nariz del contrahusillo al vértice del punto
field-machine-counter_spindle-sleeve-pitch = distancia de un apoyo al siguiente en el agujero del contrahusillo
field-machine-counter_spindle-sleeve-stiffness = rigidez radial de cada apoyo en el agujero del contrahusillo
field-machine-counter_spindle-collets-range = diámetro mínimo o máximo que aprieta la pinza
field-machine-counter_spindle-collets-hold = longitud de apriete de la pinza
field-machine-counter_spindle-collets-passes = mayor diámetro que pasa por la pinza abierta
field-machine-counter_spindle-collets-clamp_force = fuerza de apriete de la pinza, como suma de las fuerzas radiales
field-machine-counter_spindle-collets-run_out = salto radial de la pinza en su nariz, como lectura completa
field-machine-bar_feed-max_rpm = velocidad máxima a la que el alimentador de barras puede girar la barra detrás del cabezal
field-machine-driven_max_rpm = velocidad máxima de las herramientas motorizadas
field-machine-shared_stop_saving_s = tiempo ahorrado cuando una transferencia y un reagarre del cabezal se hacen en la misma parada
field-machine-cross_tool_reach = distancia a lo largo de la barra de la herramienta de corte a la herramienta transversal motorizada
field-machine-segment_overhead_s = tiempo adicional de cada pasada de una herramienta, aparte del corte
field-machine-part_off-width = anchura de la herramienta de tronzar
field-machine-part_off-time_s = tiempo del tronzado
field-machine-part_off-tray-max_length = longitud hasta la cual una pieza puede caer en la bandeja; 0: no cae ninguna pieza
field-machine-part_off-tray-max_diameter = mayor diámetro hasta el cual una pieza puede caer en la bandeja
field-machine-bar_end = longitud del final de barra que ninguna pinza puede agarrar
field-machine-facing = longitud que se refrenta del extremo frontal de cada pieza, si el trabajo no tiene un refrentado mayor

## Wishes and families

field-wishes-hand_over_at = longitud torneada a la que se debe hacer una transferencia
field-wishes-hand_over_at-at = longitud torneada de la transferencia
field-wishes-hand_over_at-nose = distancia de la cara frontal a la nariz del contrahusillo en la transferencia
field-wishes-never_grip = distancia de la cara frontal a un extremo de una longitud que ningún agarre puede tocar
field-wishes-at_most_hand_overs = número máximo de transferencias por pieza, incluido el primer agarre
field-vary-length-from = menor longitud del tramo variable
field-vary-length-to = mayor longitud del tramo variable
field-vary-length-step = paso de una longitud a la siguiente
field-vary-diameter-from = menor diámetro del tramo variable
field-vary-diameter-to = mayor diámetro del tramo variable
field-vary-diameter-step = paso de un diámetro al siguiente

## Spread

field-confidence = parte de las piezas simuladas en la que el plan debe quedar dentro de todos los límites
field-confidence_warn = parte de las piezas simuladas dentro de todos los límites por debajo de la cual un plan está en riesgo
field-scatter-samples = número de piezas simuladas
field-scatter-seed = número inicial de las muestras aleatorias
field-scatter-straightness = dispersión de la curvatura, como parte de su valor
field-scatter-supports = dispersión de la rigidez de cada apoyo, como parte de su valor
field-scatter-bush = dispersión de la rigidez del casquillo guía, como fracción
field-scatter-headstock = dispersión de la rigidez del cabezal, como fracción
field-scatter-counter_spindle = dispersión de la rigidez del contrahusillo, como fracción
field-scatter-centre = dispersión de la rigidez del punto, como fracción
field-scatter-sleeve = dispersión de la rigidez de los apoyos en el agujero del contrahusillo, como fracción
field-scatter-kc = dispersión de la fuerza específica de corte, como parte de su valor
field-scatter-passive = dispersión de la fuerza pasiva y de la fuerza de avance además de la de la fuerza principal, como parte de su valor
field-scatter-e = dispersión del módulo de Young, como parte de su valor
field-scatter-damping = dispersión del coeficiente de amortiguamiento, como parte de su valor
field-scatter-ra = dispersión de la rugosidad real respecto a la ideal (cutting.ra_factor), como parte de su valor
field-scatter-run_out = dispersión del salto radial de las pinzas del contrahusillo, como fracción
field-scatter-bar = dispersión del diámetro de la barra
field-machine-scatter-bush = dispersión de la rigidez del casquillo guía, como fracción
field-machine-scatter-headstock = dispersión de la rigidez del cabezal, como fracción
field-machine-scatter-counter_spindle = dispersión de la rigidez del contrahusillo, como fracción
field-machine-scatter-centre = dispersión de la rigidez del punto, como fracción
field-machine-scatter-sleeve = dispersión de la rigidez de los apoyos en el agujero del contrahusillo, como fracción
field-machine-scatter-damping = dispersión del coeficiente de amortiguamiento, como fracción
field-machine-scatter-run_out = dispersión del salto radial de las pinzas del contrahusillo, como fracción
field-shaft-material-scatter-kc = dispersión de la fuerza específica de corte, como fracción
field-shaft-material-scatter-e = dispersión del módulo de Young, como fracción
field-shop-bars-scatter-straightness = dispersión de la curvatura de los ejes de esta barra, como fracción
field-shop-bars-scatter-bar = dispersión del diámetro de esta barra

## What a change is worth

field-change_prices-wish = peso de renunciar a un deseo del trabajo
field-change_prices-speed = peso de girar más despacio
field-change_prices-cut = peso de otra profundidad de corte, un avance menor o más carreras
field-change_prices-tools = peso de una segunda herramienta en el corte
field-change_prices-hold = peso de otra sujeción: con o sin casquillo guía, pinza o punto, menos carrera
field-change_prices-method = peso de otra forma de hacer una rosca o un hexágono interior
field-change_prices-turn_round = peso de fabricar la pieza desde su otro extremo
field-change_prices-bar = peso de otro diámetro de barra
field-change_prices-straightness = peso de una barra más recta
field-change_prices-collet = peso de otra pinza
field-change_prices-tray = peso de una bandeja que admita la pieza
field-change_prices-stop = peso de una parada en una superficie que no debe tenerla
field-change_prices-grip = peso de un agarre en una superficie que no se debe agarrar
field-change_prices-sleeve = peso de manguitos de apoyo en el contrahusillo
field-change_prices-set_up = peso de mecanizar en una segunda sujeción
field-change_prices-drawing = peso de un cambio del plano
field-change_prices-shop_machine = peso de otra máquina del taller
field-change_prices-machine = peso de una máquina con más capacidad

## The tool list

field-tool_list-nose_radius = radio de punta de la plaquita
field-tool_list-approach_angle = ángulo de posición de la herramienta
field-tool_list-ap_max = profundidad de corte máxima de la herramienta
field-tool_list-width = anchura de una herramienta de ranurar o de tronzar
field-tool_list-vc = velocidad de corte
field-tool_list-feed = avance por revolución; en acabado, el máximo

## The shop's file

field-shop-machines-per_hour = coste de esta máquina por hora
field-shop-materials-price_per_kg = precio del material por kg
field-shop-bars-diameter = diámetro de la barra
field-shop-bars-bar_length = longitud de la barra
field-shop-bars-price_per_kg = precio de esta barra por kg

## Readings

field-readings-diameter = diámetro de la barra medida
field-readings-set_ups-front = distancia de la cara del casquillo al extremo frontal de la barra
field-readings-set_ups-headstock = distancia de la cara del casquillo a la nariz de la pinza del cabezal
field-readings-set_ups-grip = distancia de la cara del casquillo a la nariz de la pinza del contrahusillo
field-readings-set_ups-frequency = primera frecuencia propia lateral, de un ensayo de golpe
field-readings-set_ups-dial-load = carga sobre la barra
field-readings-set_ups-dial-at = distancia de la cara del casquillo a la carga, negativa detrás de la cara
field-readings-set_ups-dial-read_at = distancia de la cara del casquillo al reloj comparador, negativa detrás de la cara
field-readings-set_ups-dial-deflection = flexión en el reloj comparador, positiva en el sentido de la carga
field-readings-errors-dial = incertidumbre de una lectura del reloj comparador
field-readings-errors-load = incertidumbre de una carga, como parte de su valor
field-readings-errors-tap = incertidumbre de una frecuencia, como parte de su valor
