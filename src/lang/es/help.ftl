# The topics of `help`: files, checks, materials.
help-job =
    El archivo de trabajo dice qué se tornea: el eje, la barra, la máquina y cómo se corta. Es un archivo YAML.
    Las longitudes están en mm, o en pulgadas con `units: inch`. Las posiciones en el eje se cuentan desde la cara frontal: el extremo que sale primero del casquillo guía.
    `spanhold new` muestra un ejemplo más largo con comentarios. Un editor puede comprobar el archivo mientras se escribe: `spanhold schema job`.
    `[]` después de un nombre significa: cada entrada de la lista.
help-machine =
    El archivo de máquina describe un torno. Es un archivo YAML. Un trabajo lo nombra, o tiene las mismas claves dentro de `machine`.
    Las longitudes están en mm, o en pulgadas con `units: inch`. Las rigideces están en N/µm. Tomar las longitudes y velocidades del manual de la máquina. Medir las rigideces: véase `spanhold help readings`.
    `[]` después de un nombre significa: cada entrada de la lista.
help-shop =
    El archivo del taller contiene lo que es igual para todos los trabajos de un taller: máquinas, pinzas, materiales con precios, barras, tarifas, valores propios del taller.
    Es un archivo YAML. spanhold lo encuentra como `shop.yaml` en la carpeta de un trabajo o en las superiores; `--shop FILE` o `shop` en el trabajo nombran otro.
    Un trabajo puede omitir todo lo que está en él, y lo que un trabajo indica tiene preferencia. `spanhold new shop shop.yaml` escribe uno con comentarios.
    `cutting`, `limits`, `planning`, `scatter`, `order` y `rates` tienen las claves de un trabajo (`spanhold help job`), excepto `cutting.vc` y `order.pieces`.
    `[]` después de un nombre significa: cada entrada de la lista.
help-readings =
    El archivo de lecturas contiene lo que se midió en la máquina. `spanhold fit` calcula con él la rigidez de cada apoyo.
    Las posiciones se cuentan en mm desde la cara del casquillo hacia el contrahusillo. Sin casquillo se cuentan desde la nariz de la pinza del cabezal.
    Consignar la máquina y bloquearla contra la puesta en marcha antes de medir. Seguir su manual y las normas locales.
    `[]` después de un nombre significa: cada entrada de la lista.
help-materials =
    Materiales incorporados para `shaft.material` en un trabajo. Indicar el nombre, el número u otro nombre. No importan las mayúsculas, los espacios, los guiones, el nombre del sistema (AISI, JIS, UNS, W.-Nr.) ni una norma delante del nombre.
    E: módulo de Young. kc1.1 y mc: fuerza específica de corte con 1 mm de espesor de viruta, y su exponente. vc: velocidades de corte habituales con metal duro recubierto y refrigerante.
    La confianza dice hasta qué punto son fiables kc1.1 y mc. high: una fuente conocida para el material. medium: las fuentes difieren, o un grupo que encaja. low: una estimación.
    Los valores son de memoria a partir de manuales y normas, del catálogo de un fabricante de herramientas, o estimaciones. Las fuerzas de corte tienen, en el mejor de los casos, una exactitud de ± 25 %.
    Para otro material, indicar un mapa: `name`, `e_gpa`, `density`, `kc11`, `mc`, y si se quiere `poisson`, `vc` y `class`. Véase `spanhold help job`.
help-speeds =
    Velocidades y avances de brocas, machos y fresas. Salen de la clase del material. Un material incorporado tiene su clase. Indicar `class` para un material propio; si no, se supone a partir de los otros números, y el plan lo dice.
    Las brocas y los machos son de acero rápido, las fresas de metal duro integral recubierto que cortan en toda su anchura, todo con refrigerante. Las brocas de metal duro giran de dos a cuatro veces más rápido. Las herramientas motorizadas no giran más rápido que `driven_max_rpm` de la máquina.
    Las letras dicen de dónde viene cada valor: broca; macho; fresa. Los intervalos de las fuentes son amplios.
    Entre dos diámetros, el avance por diente varía en línea recta. Una fresa más delgada lo tiene en proporción, una más gruesa tiene el último.
help-checks =
    Las comprobaciones de un plan. Una comprobación compara un valor con su límite. Un plan cumple si cada valor usa como máximo el 100 % de su límite.
    Los límites son valores por defecto de la práctica común, sin fuente. Cambiarlos en el trabajo dentro de `limits`.
help-plan-file =
    Las claves de plan.json, el archivo que escribe `spanhold plan --out` y que muestra `spanhold plan --format json`.
    Todos los números son finitos. `null` significa: no hay. Muchos nombres terminan en su unidad. Las longitudes torneadas y las posiciones en el eje se cuentan desde la cara frontal.
    `[]` después de un nombre significa: cada entrada de la lista.
help-group-root = Claves del archivo: { $what }.
help-group = { $paths }: { $what }.
help-group-kinds = { $title } Indicar exactamente uno de estos tipos: { $kinds }.
help-head-key = clave
help-head-meaning = significado
help-head-unit = unidad
help-head-takes = admite
help-head-holds = contiene
help-head-left-out = si se omite
help-head-check = comprob.
help-head-looks-at = qué mira
help-head-made = cuándo
help-head-limit = clave del límite
help-head-material = nombre
help-head-class = clase
help-head-drill-vc = broca, m/min
help-head-drill-feed = avance de broca, × diámetro
help-head-tap-vc = macho, m/min
help-head-mill-vc = fresa, m/min
help-head-tooth-feed = avance por diente
help-head-sources = fuentes
help-head-cutter = diámetro de la fresa, mm
help-head-letter = letra
help-head-source = fuente
help-speeds-meaning = Clases:
help-speeds-classes = Velocidades y avances:
help-speeds-teeth = Avance por diente según el diámetro de la fresa, mm:
help-speeds-sources = Fuentes:
tooth-feed-full = pleno
tooth-feed-small = pequeño
help-head-number = número
help-head-names = otros nombres
help-head-state = estado
help-head-e = E, GPa
help-head-density = densidad, kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = confianza
help-takes-range = de { $least } a { $most }
help-takes-text = texto
help-takes-number = número
help-takes-whole = número entero
help-takes-flag = `true` o `false`
help-takes-null = `null`
help-takes-map = mapa
help-takes-list = lista: { $item }
help-takes-pair = dos valores: { $item }
help-takes-or = { $one } o { $other }
help-takes-any = cualquier valor
help-must-be-given = obligatorio
help-must-be-given-with = obligatorio con { $keys }
help-another-kind = otro tipo
help-another-kind-of = otro tipo: { $others }
help-material-about = { $name } ({ $group }, { $state }), coeficiente de Poisson { $poisson }, clase { $class }. kc1.1 y mc: { $source }.
help-material-group = { $group }:
help-materials-more =
    `spanhold materials WORD` indica los otros nombres, el estado de la barra y las fuentes de lo que coincide con una palabra: un nombre, un número o un grupo.
    `--format json` lo da todo.
help-material-names = { "  " }Otros nombres: { $names }.
help-check-at-rest = en cada longitud torneada
help-check-by-speed = en cada longitud torneada; ayuda una velocidad menor
help-check-at-event = en un suceso
help-check-at-both = en cada estado de un corte, y al mecanizar un extremo
help-check-no-limit = ninguno
help-check-no-default = depende de herramienta, barra y sujeción
help-check-stiffness = La rigidez lateral de la barra en la herramienta.
help-check-span-stiffness = La menor rigidez lateral entre el agarre y el casquillo: un límite propio del taller para una herramienta. No vale donde el extremo frontal podría girar libre.
help-check-free-ratio = Una regla propia del taller, desactivada si se omite la clave: la longitud libre del extremo frontal dividida por su diámetro acabado medio (L/d).
help-check-whirl = Velocidad dividida por la velocidad crítica más baja. Los textos la llaman «velocidad crítica».
help-check-whip = Curvatura del eje torneado, aumentada por el giro.
help-check-sag = Flexión del eje por peso propio entre el agarre y el casquillo. Para un extremo frontal libre: véase `pick_up`.
help-check-pick-up = Cuánto se aparta del eje de giro un extremo frontal libre, por su curvatura y su peso propio, cuando la pinza del contrahusillo pasa sobre él.
help-check-bore = La misma flexión dentro del contrahusillo, aumentada por el giro, frente al sitio en el agujero. La clave del límite es el juego que queda libre.
help-check-cut = Cambio del diámetro a lo largo de un corte porque la barra se dobla. El límite es una parte de la tolerancia.
help-check-chatter = Profundidad de corte frente a la profundidad en la que empieza la vibración regenerativa. `limits.damping_ratio` cambia esa profundidad.
help-check-buckling = Carga axial que comprime la barra, frente a una parte de la carga con la que pandea. La línea se omite por debajo de un cuarto de ese límite.
help-check-run-out = Salto radial de la superficie que se corta, debido al salto radial de la pinza del contrahusillo. Se hace donde tanto la pinza como el tramo tienen `run_out`.
help-check-drill = Flexión bajo la fuerza de una broca o fresa transversal, en el momento en que trabaja.
help-check-release = Caída del eje en el agarre anterior cuando se abre la pinza en una transferencia.
help-check-torque = Par del tronzado y del mecanizado del extremo trasero, multiplicado por un margen, frente al rozamiento del último agarre.
help-check-push = Fuerza axial y par del mecanizado de un extremo, multiplicados por un margen, frente al rozamiento de la pinza que sujeta.
help-check-back = Flexión del extremo trasero al mecanizarlo después del tronzado. El límite es una parte de la tolerancia de esa operación.
help-unknown-topic = no hay ayuda sobre `{ $word }`
help-topics-and-commands = Temas: { $topics }. Comandos: { $commands }
help-nearest = ¿se refiere a `{ $near }`? { $all }
help-more-topics = Temas: { $topics }. Leer uno con: spanhold help TOPIC
help-materials-of-shop = De `{ $file }`
help-head-price = por kg
help-no-material = ningún material incorporado coincide con `{ $word }`
help-all-materials = `spanhold materials` los muestra todos
left-out-none = ninguno
left-out-defaults = los valores por defecto de sus claves
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` no se comprueba
left-out-section-name = «tramo» y su número
left-out-section-kind = cilindro liso, rosca, cono o caras planas
left-out-section-sides = obligatorio con `across_flats`
left-out-section-ra = sin exigencia de rugosidad
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point`; `whirling` donde la barra no puede retroceder toda la rosca
left-out-section-interrupt = `never` para una rosca, para IT7 o más precisa, para Ra 0,8 o más fina; `avoid` hasta IT9 o Ra 1,6; si no, `free`
left-out-section-grip = `true` para un cilindro liso, si no, `false`
left-out-feature-thrust = se calcula según el agujero
left-out-feature-at = obligatorio con `cross_hole`, y con `tapped_hole` o `engrave` a lo largo del eje
left-out-language = el del archivo del taller; si no, `en`
left-out-feature-depth = obligatorio con `axial_hole`, `hex_socket`, y `tapped_hole` en un extremo; { $default } para `engrave`
left-out-feature-drill-depth = `depth` más cuatro pasos de rosca
left-out-material-vc = entonces indicar `cutting.vc`
left-out-material-class = se supone a partir del módulo, la densidad y kc1.1
left-out-finisher = mismo lado, con el filo de la herramienta de desbaste
left-out-finisher-edge = el de la herramienta de desbaste
left-out-cutting-vc = centro de los valores habituales del material
left-out-cutting-feed = desbaste 0,15; acabado según Ra, como máximo 0,15
left-out-cutting-ap-finish = { $default }, pero como máximo `ap_max`
left-out-stiffness = { $share } N/µm por cada mm de diámetro de barra
left-out-span-stiffness = como `stiffness_min`
left-out-whip = { $share } mm por cada mm de diámetro de barra
left-out-rates = no se calcula coste
left-out-order = no se presupuesta ningún pedido
left-out-vary = una sola pieza
left-out-wish-nose = lo elige el planificador
left-out-wish-most = sin límite
left-out-scatter-support = `scatter` de la máquina, si no, `supports`
left-out-own-scatter = `scatter` del trabajo o del taller
left-out-confidence = ninguna: el plan más rápido
left-out-scatter-bar = uniforme en la tolerancia de la barra; sin tolerancia: ninguna
left-out-machine-name = nombre del archivo
left-out-bush = sin casquillo; solo `holding: no_bush`
left-out-no-bush = no se trabaja sin el casquillo
left-out-engagement = la mitad de `land`
left-out-counter-spindle = sin contrahusillo
left-out-sleeve = sin apoyos
left-out-centre = sin punto
left-out-centre-stands-out = su vértice se considera en la nariz
left-out-torsional-stiffness = el último agarre soporta todo el par del tronzado
left-out-edge = una arista viva
left-out-grind = no se rectifica
left-out-drive = no se comprueba; el plan indica lo que hace falta
left-out-clamp-force = `push` en el extremo frontal no se comprueba
left-out-bush-kind = sin precaución sobre la tolerancia de la barra
left-out-bar-feed = el alimentador de barras no limita la velocidad
left-out-tray = con contrahusillo: pueden caer piezas de hasta { $length } mm × Ø{ $diameter } mm; sin él: caen todas las piezas
left-out-tools = los puestos de herramienta no se comprueban
left-out-turret = sin torreta
left-out-fit = todos los apoyos de la máquina
left-out-set-up-name = «montaje» y su número
left-out-set-up-headstock = obligatorio con el casquillo
left-out-set-up-grip = el extremo frontal está libre
left-out-set-up-collet = obligatorio si más de una pinza puede sujetar la barra
left-out-dial = entonces indicar `frequency`
left-out-frequency = entonces indicar `dial`
left-out-read-at = en la carga
man-unknown-command = no existe el comando `{ $word }`
man-commands = Comandos: { $commands }
class-free-cutting-steel = acero de fácil mecanización
class-structural-steel = acero de construcción y de cementación
class-carbon-steel = acero no aleado desde aprox. 0,35 % de carbono
class-alloy-steel = acero aleado, templado y revenido
class-tool-steel = acero para herramientas
class-free-cutting-stainless = acero inoxidable con azufre
class-ferritic-stainless = acero inoxidable ferrítico y martensítico
class-austenitic-stainless = acero inoxidable austenítico
class-duplex-stainless = acero inoxidable dúplex y endurecible por precipitación
class-heat-resistant-steel = aleación de hierro resistente al calor
class-pure-titanium = titanio puro
class-titanium-alloy = aleación de titanio
class-cobalt-chromium = aleación de cobalto-cromo
class-nickel-alloy = aleación de níquel
class-free-cutting-copper = latón con plomo y otras aleaciones de cobre de fácil mecanización
class-copper-alloy = cobre, bronce, latón sin plomo
class-aluminium = aleación de aluminio
class-plastic = plástico

# The shop's file.
schema-shop = lo que hay en un taller
schema-shop-of-job = ruta del archivo del taller; `none`: no vale ningún archivo del taller
schema-shop-machine = una máquina
schema-shop-machines = las máquinas; la primera es la habitual
schema-shop-machine-name = nombre con el que un trabajo la pide
schema-shop-collets = pinzas para los contrahusillos, además de las de los archivos de máquina
schema-shop-collet-machines = máquinas en las que sirve
schema-shop-materials = precios y valores de los materiales, o la ruta de un archivo con esta lista
schema-shop-material = un material
schema-shop-grade = un material de la tabla incorporada; los valores que se indican junto a él sustituyen a los de la tabla
schema-shop-grade-name = nombre de un material propio
schema-shop-bars = barras en almacén
schema-shop-bar = una barra
schema-shop-bar-material = nombre de su material
schema-language = idioma de los textos y de las hojas
left-out-to-shop = del archivo del taller
left-out-shop-machine-name = nombre de su archivo
left-out-shop-machine-file = `machine` es obligatorio
left-out-shop-machine-here = `file` es obligatorio
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = todas las máquinas
left-out-shop-grade = un material propio
left-out-shop-grade-value = el de la tabla; obligatorio sin `grade`
left-out-shop-grade-or = el de la tabla; sin `grade`, { $default }
left-out-shop-grade-maybe = el de la tabla; sin `grade`, ninguno
left-out-shop-grade-name = el de la tabla; obligatorio sin `grade`
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = valores habituales
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = las herramientas que hay; el plan elige entre ellas
schema-tool = una herramienta
schema-tool-name = nombre de la herramienta
schema-tool-kind = qué hace
schema-tool-station = dónde está
schema-tool-insert = su plaquita, con palabras propias
schema-tool-rough = su corte de desbaste
schema-tool-finish = su corte de acabado
schema-tool-materials = otros cortes en algunos materiales, por nombre del material
schema-tool-material = sus cortes en este material
left-out-tool-list = un solo conjunto de números, `cutting`
left-out-tool-cutting = como en `cutting`
left-out-tool-width = cabe en todas las ranuras
left-out-tool-cut = ambos, si no se indica ninguno
# Units of a file.
schema-units = unidades de los números sin unidad en este archivo: métricas o pulgadas
left-out-machine-units = las del archivo que contiene la máquina; si no, `mm`
