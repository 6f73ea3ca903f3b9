# Tables, drawings and the sheet.

# Amounts.
stages = { $number ->
    [one] { $number } etapa
   *[other] { $number } etapas
}
hand-overs = { $number ->
    [one] { $number } transferencia
   *[other] { $number } transferencias
}
regrips = { $number ->
    [one] { $number } reagarre del cabezal
   *[other] { $number } reagarres del cabezal
}
pieces = { $number ->
    [one] { $number } pieza
   *[other] { $number } piezas
}
bars = { $number ->
    [one] { $number } barra
   *[other] { $number } barras
}
readings = { $number ->
    [one] { $number } lectura
   *[other] { $number } lecturas
}

# The first line.
verdict-feasible = VIABLE
verdict-at-risk = EN RIESGO
verdict-not-feasible = NO VIABLE
verdict-holds = cumple en { $good } de 100 piezas simuladas; { $made }
verdict-headline = { $name }: { $summary }
verdict-made = { $stages }, { $hand_overs }, { $regrips }, tiempo de ciclo { $seconds } s, { $pieces } por barra
verdict-made-tightest = { $made }; comprobación más ajustada: { $tightest }
verdict-made-short = { $stages }, tiempo de ciclo { $seconds } s, { $pieces } por barra
verdict-tightest = { $check }, { $used } de su límite
verdict-tightest-in-stage = { $check }, { $used } de su límite, en la etapa { $stage }
verdict-stops-before-end = se puede tornear hasta { $reached } { -mm } de { $length } { -mm }; ahí { $what }
verdict-stops-at-part-off = se puede tornear en toda su longitud de { $length } { -mm }, pero no tronzar: { $what }
verdict-no-plan = no se encontró ningún plan
tightest-check = Comprobación más ajustada: { $check }, con { $turned } { -mm } de longitud torneada
reasons-both = { $first }, y además { $second }
stops-stiffness = la barra es demasiado flexible en la herramienta
stops-span-stiffness = la barra es demasiado flexible entre el agarre y el casquillo
stops-free-ratio = el extremo libre es demasiado largo para su diámetro (regla propia del taller)
stops-whirl = la barra gira demasiado cerca de su velocidad crítica
stops-whip = la curvatura de la barra produce demasiado latigazo a esta velocidad
stops-sag = la barra cuelga demasiado entre el agarre y el casquillo
stops-bore = el extremo frontal tiene poco sitio en el agujero del contrahusillo
stops-cut = el diámetro varía demasiado a lo largo del corte
stops-chatter = el corte entra en vibración regenerativa
stops-buckling = la carga axial puede hacer pandear la barra
stops-run-out = el salto radial de la pinza se nota demasiado en la superficie que se corta
stops-drill = la barra se dobla demasiado bajo una herramienta transversal
stops-pick-up = el extremo frontal está demasiado lejos del eje de giro para la pinza o el punto que debe recogerlo
stops-release = el extremo frontal cae demasiado cuando se abre la pinza
stops-torque = la pinza no aguanta el par del tronzado o del mecanizado del extremo trasero
stops-push = la pinza no aguanta la fuerza del mecanizado de un extremo
stops-back = el extremo trasero se dobla demasiado al mecanizarlo después del tronzado
stops-travel = al contrahusillo no le queda recorrido
stops-collet = ninguna pinza sujeta el extremo frontal donde es necesario
stops-stroke = al cabezal no le queda carrera y no puede hacer un reagarre
stops-interrupt = quedaría una marca en una superficie que no debe tenerla
stops-tray = la pieza es demasiado grande para caer suelta
stops-tool-places = faltan puestos de herramienta
stops-thread-length = la rosca es demasiado larga para una cuchilla de roscar
stops-support = los apoyos no sujetan la barra
stops-wish = no se puede cumplir un deseo del trabajo
stops-bush-size = la barra es demasiado gruesa para el casquillo guía
stops-collet-size = la barra es demasiado gruesa para el cabezal
stops-power = el cabezal tiene poca potencia para el corte
stops-spindle-torque = el cabezal tiene poco par para el corte
stops-feed-force = el cabezal avanza con poca fuerza para el corte
stops-counter-torque = el contrahusillo tiene poco par
stops-other = el motivo es: { $rule }
check-free-ratio = longitud libre
check-bore = sitio en el agujero
check-cut = var. de Ø
check-drill = flex. herr. transv.
check-pick-up = frente descentrado
check-release = caída al soltar
check-torque = par en el agarre
check-push = deslizam. en pinza
check-back = flexión trasera

# Keys of a plan in words.
key-hand-over = transferencia
key-regrip = reagarre del cabezal
key-centre = punto
key-segment = retroceso
key-whirl = velocidad crítica
key-interrupt = marca de parada
key-stroke = carrera del cabezal
key-counter-spindle = contrahusillo
key-counter-spindle-travel = recorrido del contrahusillo
key-part-off = tronzado
key-bar-feed = alimentador de barras
key-back-work = mecanizado trasero
key-cross-driven = transversal, motorizada
key-front-fixed = frontal, fija
key-front-driven = frontal, motorizada
key-back-fixed = trasera, fija
key-back-driven = trasera, motorizada
key-stiffness = rigidez
key-span-stiffness = rigidez entre apoyos
key-whip = latigazo
key-sag = flecha por peso
key-chatter = vibración
key-buckling = pandeo
key-run-out = salto radial
key-turn = torneado
key-plunge = penetración
key-forward = hacia delante
key-back = hacia atrás
key-headstock = cabezal
key-both = ambos
key-turning = torneado
key-cylinder = cilindro
key-groove = ranura
key-knurl = moleteado
key-thread = rosca
key-taper = cono
key-flats = caras planas
key-feature = elemento
key-unload = descarga
key-bar-change = cambio de barra
key-tool-change = cambio de herram.
key-cross-hole = agujero transversal
key-keyseat = chavetero
key-keyway = chavetero interior
key-axial-hole = agujero axial
key-centre-hole = agujero de centrado
key-facing = refrentado
key-tapped-hole = agujero roscado
key-hex-socket = hexágono interior
key-engraving = grabado
key-thread-rolling = laminado de rosca
key-rough = desbaste
key-finish = acabado
key-high = alta
key-medium = media
key-low = baja
key-tray = bandeja
key-collet = pinza
key-support = apoyo
key-wish = deseo
key-tool-places = puestos de herram.
key-thread-length = longitud de rosca
key-bush-size = medida del casquillo
key-collet-size = medida de la pinza
key-spindle-power = potencia del husillo
key-spindle-torque = par del husillo
key-feed-force = fuerza de avance
key-counter-spindle-torque = par del contrahusillo
key-margin = margen
key-witnesses = marcas de parada
key-quote = presupuesto
key-length = longitud
key-whirling = unidad de torbellinado
holding-bush = casquillo guía
holding-no-bush = sin casquillo, solo pinza del cabezal
tools-single = una herramienta
tools-opposed = par opuesto
tools-tandem = tándem: una herramienta de acabado sigue a la de desbaste
work-whirl = torbellinado de rosca
work-thread = pasadas de roscado
work-as-drawn = superficie de la barra
work-turn = torneado
work-repeated = { $number } × { $work }
section-number = tramo { $number }
check-used = { $check } { $used }
check-at-most = { $check } { $value }, máximo { $limit } ({ $used } de su límite)
check-at-least = { $check } { $value }, mínimo { $limit } ({ $used } de su límite)
value-not-set = sin definir
value-yes = sí
value-no = no

# Titles.
title-stages = Etapas ({ -mm }, rpm, s)
title-stages-reached = Etapas hasta donde es posible ({ -mm }, rpm, s)
title-positions = Posiciones ({ $from })
title-look-at = Revisar primero esto
title-stops = Paradas del avance (longitud torneada, { -mm })
title-segments = Segmentos ({ -mm }, rpm, { -mm-rev })
title-features = Elementos ({ -mm }, s)
title-time = Tiempo
title-quote = Presupuesto
title-limit-costs = Cuánto tiempo cuesta cada límite
title-scatter = Piezas simuladas por etapa ({ -mm })
title-inputs = Datos inciertos (menor – mayor en una desviación típica; uso del límite: { $check })
title-measure = Qué conviene medir, lo más útil primero
title-set-up = Preparación
title-notes = Notas
title-origins = Valores que el trabajo no indica
origins-of-shop = Del archivo del taller: { $values }
origins-by-default = Valores habituales de este programa: { $values }
origin-of-shop = { $key } { $value } (línea { $line })
origin = { $key } { $value }
title-cautions = Precauciones
title-cycle = Ciclo
title-timeline = Cronograma de los dos husillos (s)
title-shorten-first = Qué acortar primero
title-tool-places = Puestos de herramienta
title-tools = Herramientas
title-tool-list = Herramientas de torneado ({ -mm }, { -mm-rev }, rpm)
sheet-tool-list = Herramientas de torneado
sheet-tool-list-units = profundidad en { -mm }, avance en { -mm-rev }, velocidad en rpm
tool-not-listed = { $tool } (no está en la lista)
tool-parts-off = tronzado
tool-nose = r { $nose }
tool-insert-nose = { $insert }, { $nose }
tool-range = { $least }–{ $most }
title-order = Pedido
title-quantities = Pedido según la cantidad
title-sensitivity = Efecto de cambiar un tiempo o una velocidad
title-help-sets = Qué lo hace viable (basta una de las líneas; primero lo que un taller cambia antes)
title-help-alone = Cambios únicos que lo hacen viable
title-help-others = Otros cambios únicos que bastan
title-help-house = Límites propios del taller que lo impiden (no es un consejo: un taller solo cambia uno después de una prueba, y responde de ello)
positions-from-bush = { -mm } desde la cara del casquillo
positions-without-bush = { -mm }; contrahusillo desde el final de la separación detrás de la herramienta, cabezal desde la herramienta

# Names of columns.
col-stage = etapa
col-from = desde
col-to = hasta
col-travel = recorr.
col-grip = agarre
col-collet = pinza
col-unsupported = sin apoyo
col-l-over-d = L/d
col-unsupported-split = sin apo{ "\u00AD" }yo
col-speed = rpm
col-feed = avance
col-tool = herram.
col-station = estación
col-insert = plaquita
col-sections = tramos
col-depth = prof.
col-time = tiempo
col-seconds = s
col-tightest = más ajustada
col-counter-spindle-start = contrahusillo al inicio
col-headstock-start = cabezal al inicio
col-end = al final
col-regrips-at = reagarres del cabezal en
col-counter-spindle = contrahusillo
col-headstock = cabezal
col-mark = signo
col-done = qué se hace
col-surface = superficie
col-leaves = qué deja
col-section = tramo
col-diameter = Ø
col-work = operación
col-travels = pasadas
col-turning = torneado
col-feature = elemento
col-at = en
col-turned-when-done = longitud torneada al hacerlo
col-planned-to = previsto hasta
col-input = dato incierto
col-input-range = menor – mayor
col-input-used = uso del límite
col-input-good = buenas debajo – encima
col-input-time = la más rápida, s
col-holds-to = el 99 % cumple hasta
col-broken-share = piezas fuera de un límite
col-broken-checks = comprobaciones fuera de límite
col-cause = causa
col-interrupt = indicación de la superficie
col-operation = operación
col-share = parte
col-spindle = husillo
col-what = qué
col-place = puesto
col-places = puestos
col-needed = necesarios
col-elsewhere = en otro puesto
col-missing = faltan
col-free = libres
col-tools = herram.
col-pieces = piezas
col-bars = barras
col-shifts = turnos
col-cost-per-piece = coste por pieza
col-number = n.º
col-size = medida
col-measured = medido

# Cells.
grip-free = libre
grip-centre = punto
cell-none = ninguno
cell-range = { $low } – { $high }
cell-no-plan = sin plan
cell-after-part-off = tras el tronzado
cell-part-off-face = cara de tronzado
cell-part-off = tronzado
feature-with-kind = { $kind }: { $text }
time-cutting = corte
time-travels = aproximación y retorno
time-hand-overs = transferencias
time-regrips = reagarres del cabezal
time-features = elementos
time-part-off = tronzado
time-back-work = mecanizado trasero
time-sum = suma de operaciones
time-cycle = tiempo de ciclo

# Where the feed stops.
stop-hand-over = transferencia
stop-regrip = reagarre del cabezal
stop-regrip-then-hand-over = reagarre + transferencia (común)
stop-hand-over-then-regrip = transferencia + reagarre (común)
stop-then = { $first }, después { $second }
stop-at-shoulder = sin marca (resalte)
stop-at-end = sin marca (cara del extremo)
stop-behind = sin marca (detrás de la pieza)
stop-in-groove = sin marca (ranura)
stop-line = marca de parada ({ $interrupt })
stop-between = entre los tramos { $front } y { $rear }
stop-front-face = cara frontal
stop-part-off-face = cara de tronzado
stop-behind-face = detrás de la cara de tronzado

# Facts: a key and its value.
fact-drawing = plano
fact-date = fecha
fact-bush = casquillo guía
fact-bar-ends = extremos de la barra
fact-drawing-revision = { $drawing }, revisión { $revision }
fact-bush-said = para { $bar }, { $kind }, longitud de guiado { $land } { -mm }
bush-fixed = fijo
bush-following = gira con la barra
bush-kind-not-given = tipo no indicado
fact-bar-ends-said = cortados a escuadra, rectos y sin rebabas; el delantero, achaflanado
length-of-part = longitud { $length }
fact-length = longitud
fact-length-mm = { $length } { -mm }
fact-material = material
fact-bar = barra
fact-bar-length = { $stock }, longitud de la barra { $length } { -mm }
fact-machine = máquina
fact-holding = sujeción
fact-tools = herramientas
fact-collet = pinza
fact-centre = punto
fact-centre-presses = en el extremo frontal con { $force } { -n }; se retira a { $leaves } { -mm }, antes del tronzado
fact-collet-holds = { $collet } en el contrahusillo, agarra { $hold } { -mm } de longitud
fact-collet-named = { $collet } en el contrahusillo
fact-collet-none = ninguna en el contrahusillo
fact-part-off = tronzado
fact-part-falls = la pieza cae en la bandeja (para piezas de hasta { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro)
fact-input = datos
quote-bar = { $pieces } de una barra de { $length } { -mm }, resto { $remnant } { -mm }
quote-material = { $mass } kg por pieza
fact-cost = coste
quote-cost = { $total } { $currency } por pieza: máquina { $machine }, material { $material }
fact-optimum = óptimo
fact-cycle = tiempo de ciclo
cycle-steady = { $steady } s de pieza a pieza; una pieza sola tarda { $alone } s
fact-spindles = en uso
cycle-spindles = cabezal { $headstock } s, contrahusillo { $counter } s
fact-rear-end = mecanizado trasero
cycle-hidden-waits = { $hidden } s transcurren durante la etapa libre de la pieza siguiente; después el cabezal espera { $wait } s
cycle-hidden-idle = { $hidden } s transcurren durante la etapa libre de la pieza siguiente; después el contrahusillo queda parado { $idle } s
cycle-in-line = se hace antes de empezar la pieza siguiente
fact-tool-changes = cambios de herramienta
cycle-tool-changes = { $number ->
    [one] { $number } cambio, { $seconds } s
   *[other] { $number } cambios, { $seconds } s
}
fact-bar-change = cambio de barra
cycle-bar-change = { $seconds } s por pieza
timeline-stage = etapa { $stage }: { $parts }
timeline-previous = pieza anterior: { $parts }
timeline-turning = torneado { $seconds }
timeline-features = elementos { $seconds }
timeline-back-work = extremo trasero { $seconds }
timeline-tool-changes = cambios de herramienta { $seconds }
timeline-unloading = descarga { $seconds }
shorten-one = { $what }: { $seconds } s, { $share } del tiempo de ciclo
tools-turret = torreta
tools-turret-holds = herramientas sin puesto junto a la barra o en el extremo frontal
tools-at = { $place }: { $names }
tools-places = { $place } { $number }
tools-fit = todas las herramientas tienen puesto; puestos libres: { $free }
tools-missing = puestos que faltan: { $missing }; puestos libres: { $free }
fact-pieces = piezas
order-pieces = { $pieces } de { $bars }, { $per_shift } por turno
fact-time = tiempo
order-time = preparación { $set_up } h, producción { $run } h, turnos: { $shifts }
order-cost = { $each } { $currency } por pieza, { $all } { $currency } en total
sensitivity-speed = velocidad de corte × { $factor }: { $change } s por pieza
sensitivity-time = tiempo unitario ({ $what }) × { $factor }: { $change } s por pieza

# What to look at first.
look-lines = { $number ->
    [one] Marca de parada en el tramo { $section }, con la indicación «{ $interrupt }»: { $places }
   *[other] Marcas de parada en el tramo { $section }, con la indicación «{ $interrupt }»: { $places }
}
look-place = { $at } { -mm } ({ $cause })
look-over-limit = Fuera del límite en la etapa { $stage }: { $check }, con { $turned } { -mm } de longitud torneada
look-near-limit = Cerca del límite en la etapa { $stage }: { $check }, con { $turned } { -mm } de longitud torneada
look-slowed = Velocidad reducida en { $places }, a causa de: { $check }
look-slowed-cost = Velocidad reducida en { $places }, a causa de: { $check }. Como máximo de { $full } a { $speed } rpm. Esto tarda { $seconds } s más
look-back-turning = Resalte orientado hacia atrás, necesita una herramienta de torneado inverso: { $places }
look-fed-out = Antes del tronzado la barra avanza hasta { $to } { -mm } para { $works }; quedan { $unsupported } { -mm } sin apoyo; no tornear con la barra avanzada

# What would help.
help-cost-of-limit = { $text } ({ $limit }: { $now } → { $next })
help-values = { " (" }{ $name }: { $from } → { $to })
help-change-slower = { $text }, { $seconds } s más que la más rápida de estas opciones
help-set-slower = { $text }, { $seconds } s más que la más rápida de estas opciones
help-set-holds = { $text }; cumple en { $good } de 100 piezas simuladas
help-edits-job = { $text }. Editar el trabajo: { $edits }.
help-edits-machine = { $text }. Editar el archivo de máquina: { $edits }.
help-edits-both = { $text }. Editar el trabajo: { $job }. Editar el archivo de máquina: { $machine }.
help-edits-many = { $text }. La página (spanhold page JOB) hace estos cambios automáticamente.
help-edit-item = { $list } entrada { $number }
help-edit-new-item = { $list }, una entrada nueva
help-edit-set = { $key }: { $value }
help-edit-remove = quitar { $item }
help-edit-swap = intercambiar { $item } con la entrada { $with }
help-next = { $tried }. Pedir un cambio del plano o comparar otras máquinas: spanhold compare JOB --machine FILE.
help-sentence = { $text }.

# The sheet.
sheet-title = { $job }: hoja de preparación
sheet-input = datos { $digest }
sheet-page = página { $page } de { $pages }
sheet-sign-off = Visto bueno
sheet-sign-read = Plan leído; máquina y pinza correctas
sheet-sign-proved = Primera pieza probada a velocidad y avance reducidos
sheet-sign-measured = Primera pieza medida
sheet-sign-released = Autorizado para la serie
sheet-sign-name = nombre
sheet-sign-date = fecha
sheet-sign-signature = firma
sheet-work-list = Operaciones en su orden
sheet-work-list-units = { -mm }, rpm, { -mm-rev }, s; «desde» y «hasta» son longitudes torneadas
sheet-directions = Ceros y sentidos
sheet-stages = Etapas
sheet-stages-units = { -mm }, rpm, { -mm-rev }, s; contrahusillo y cabezal: inicio → final de la etapa, { $from }
sheet-stage-limits = Límites de las etapas: no superarlos
sheet-stops = Paradas del avance
sheet-stops-units = longitud torneada, { -mm }
sheet-witness-lines = Marcas de parada
sheet-witness-lines-units = { -mm }
sheet-sure = Qué seguridad tiene este plan
sheet-scatter = Piezas simuladas por etapa
sheet-scatter-units = { -mm }
sheet-inputs = Datos inciertos
sheet-inputs-units = menor – mayor en una desviación típica; uso del límite: { $check }; piezas buenas de cada 100 con un valor por debajo – por encima del utilizado
sheet-timeline = Cronograma de los dos husillos
sheet-bar = Barra
limit-stage = Etapa { $stage }: { $limits }
limit-turn-to = tornear hasta { $to } { -mm }, no más allá
limit-speeds-below = nunca superar la velocidad de cada intervalo indicado abajo
limit-speed = nunca superar { $speed } rpm
limit-unsupported = nunca más de { $unsupported } { -mm } sin apoyo
limit-unsupported-turning = nunca más de { $unsupported } { -mm } sin apoyo durante el torneado
limit-grip-distance = agarre del contrahusillo { $grip }, nunca a más de { $distance } { -mm } del casquillo
limit-grip = agarre del contrahusillo { $grip }
limit-free = extremo frontal libre, nada debe tocarlo
limit-centre = punto en el extremo frontal con { $force } { -n }; se retira antes del tronzado
limit-falls = la pieza cae en la bandeja al tronzar
limit-range = Etapa { $stage }, longitud torneada de { $from } a { $to } { -mm }: nunca superar { $speed } rpm
limit-fed-out = Etapa { $stage }, antes del tronzado: avanzar la barra hasta { $to } { -mm }, no más allá, para { $works }. No tornear con la barra avanzada: { $positions }. Después volver a { $back } { -mm }.
limit-fed-out-speed = Etapa { $stage }, antes del tronzado: avanzar la barra hasta { $to } { -mm }, no más allá, para { $works }. No tornear con la barra avanzada: { $positions }; nunca superar { $speed } rpm. Después volver a { $back } { -mm }.
fed-unsupported = { $unsupported } { -mm } sin apoyo
fed-counter-spindle = contrahusillo a { $distance } { -mm } del casquillo
fed-headstock-bush = cabezal a { $distance } { -mm } del casquillo
fed-headstock-tool = cabezal a { $distance } { -mm } de la herramienta
speed-range = { $from } a { $to }: { $speed }

# The diagram.
diagram-title = { $job }: plan de etapas, agarres y paradas
diagram-description = { $verdict }: { $summary }. { $panels }
diagram-panels = Arriba: el eje con sus agarres, transferencias y reagarres del cabezal. En el centro: la máquina al inicio y al final de cada etapa. Abajo, sobre la misma escala: la parte de su límite que usa cada comprobación a lo largo de la longitud torneada, y la velocidad.
diagram-description-setting = { $verdict }: { $summary }. El eje con sus longitudes, agarres, transferencias, reagarres del cabezal y paradas para otras operaciones.
diagram-numbers = números: tramos de la tabla de segmentos
diagram-labels-left-out = { $number ->
    [one] no hay sitio para { $number } rótulo
   *[other] no hay sitio para { $number } rótulos
}
diagram-machine-left-out = posiciones de la máquina: véase la tabla de etapas
diagram-more = … el resto está en el texto
diagram-shaft = Eje
diagram-true-scale =
    escala
    real
diagram-radial-scale =
    escala
    radial
    × { $factor }
diagram-not-reached = no se alcanza; se detiene a { $at } { -mm }
diagram-axis = posición en el eje y longitud torneada, { -mm } desde la cara frontal
diagram-used =
    uso
    del
    límite
diagram-governs = más ajustada
diagram-limit = límite
diagram-at-most = { $check }, máximo
diagram-strips = La máquina al inicio y al final de cada etapa
diagram-start = inicio
diagram-end = final
diagram-unsupported = sin apoyo { $unsupported } { -mm }
legend-grip = agarre, con su etapa
legend-centre = punto en la cara frontal
legend-hand-over = H transferencia
legend-regrip = R reagarre del cabezal
legend-both = H+R ambos en la misma parada
legend-work = F otra operación en una parada
legend-bush = casquillo guía
legend-headstock = pinza del cabezal
legend-headstock-right = el cabezal está más a la derecha
legend-bore = agujero del contrahusillo
legend-sleeve = manguito de apoyo
legend-not-reached = no se alcanza

# Both spindles in time.
gantt-title = { $job }: cronograma de los dos husillos
gantt-bar = { $work }: { $name }, { $seconds } s
gantt-cycle = tiempo de ciclo { $seconds } s
gantt-hidden = { $seconds } s de mecanizado del extremo trasero de la pieza anterior transcurren al mismo tiempo
gantt-wait = el cabezal espera { $seconds } s
gantt-headstock = cabezal
gantt-counter-spindle = contrahusillo
gantt-holds = sujeta la pieza
gantt-turning = torneado
gantt-other-work = otras operaciones
gantt-tool-change = cambio de herram.
gantt-hand-over = transferencia
gantt-regrip = reagarre
gantt-part-off = tronzado
gantt-back-work = extremo trasero de la pieza anterior
gantt-critical = en el camino crítico

# A family of parts.
family-title = { $name }: una familia de piezas
family-count = Se pueden fabricar { $good } de { $all } piezas.
family-range = De { $least } a { $hand_overs }, de { $fastest } a { $slowest } s por pieza.
family-same = { $hand_overs }, de { $fastest } a { $slowest } s por pieza.
family-longest = Mayor longitud variable que se puede fabricar: { $length } { -mm }.
family-machine = en { $machine }
family-made = { $part }: { $hand_overs }, { $seconds } s
family-sizes = longitud { $length } { -mm }, diámetro { $diameter } { -mm }
family-size = { $size } { -mm }
family-not-made = { $part }: no se puede fabricar
family-stopped = { $part }: no se puede fabricar, motivo: { $check }
family-no-job = { $part }: estas medidas no dan un trabajo válido; véase su línea
family-hand-overs = Transferencias
family-number-on-line = Número en la línea
family-hand-overs-word = { $number ->
    [one] transferencia
   *[other] transferencias
}
family-time-below = el tiempo está debajo del número
family-from-here = transferencias a partir de aquí
family-cannot = no se puede fabricar
family-invalid = trabajo no válido
family-time-axis = tiempo por pieza, s

# Stiffnesses from readings.
fitted-head = Ajustado: { $machine }, a partir de { $readings }; lecturas de más: { $more }
fitted-misfit = Diferencia entre lecturas y ajuste: { $misfit } veces el error de las lecturas (lo correcto es alrededor de 1)
fitted-condition = Número de condición { $condition } (lo mejor es 1)
fitted-support = apoyo
fitted-stiffness = N/µm
fitted-error = error típico
fitted-range = intervalo 95 %
fitted-range-of = { $low } a { $high }
fitted-before = archivo de máquina
fitted-set-up = montaje
fitted-reading = lectura
fitted-measured = medido
fitted-fitted = ajustado
fitted-unit = unidad
fitted-off = diferencia / error
fitted-into-file = Escribir estos valores en el archivo de máquina. Cada uno sustituye la rigidez que hay allí.

# The workbook.
xlsx-with-unit = { $name } ({ $unit })
xlsx-stages = etapas
xlsx-segments = segmentos
xlsx-checks = comprobaciones
xlsx-quote = presupuesto
xlsx-grip-from = agarre desde
xlsx-grip-to = agarre hasta
xlsx-grip-diameter = diámetro de agarre
xlsx-unsupported = longitud sin apoyo
xlsx-counter-start = contrahusillo al inicio
xlsx-counter-end = contrahusillo al final
xlsx-headstock-start = cabezal al inicio
xlsx-headstock-end = cabezal al final
xlsx-lowest-speed = velocidad mínima
xlsx-highest-speed = velocidad máxima
xlsx-regrips = reagarres del cabezal
xlsx-share = parte de su límite
xlsx-speeds = velocidad máxima de … a … { -mm } de longitud torneada
xlsx-section-number = número de tramo
xlsx-diameter = diámetro
xlsx-speed = velocidad
xlsx-slowed = velocidad reducida por
xlsx-check = comprobación
xlsx-value = valor
xlsx-limit = límite
xlsx-unit = unidad
xlsx-check-unit = unidad del valor y del límite
xlsx-turned = longitud torneada
xlsx-position = posición en el eje
xlsx-pieces-per-bar = piezas por barra
xlsx-pieces = piezas
xlsx-remnant = resto
xlsx-material = material por pieza
xlsx-cost-machine = coste de máquina por pieza
xlsx-cost-material = coste de material por pieza
xlsx-cost = coste por pieza
xlsx-cell = { $head } en la fila { $row }

# The short answer on a terminal.
short-rows-left-out = … { $number } más
short-more = { $number } más: véase --full
short-more-check = { $number } más: véase `spanhold plan JOB --full`
short-more-changes = { $number ->
    [one] { $number } cambio más: véase --full
   *[other] { $number } cambios más: véase --full
}
short-more-changes-check = { $number ->
    [one] { $number } cambio más: véase `spanhold plan JOB --full`
   *[other] { $number } cambios más: véase `spanhold plan JOB --full`
}
short-tools = Herramientas: { $tools }
plan-to-write = Para escribir la hoja, el diagrama y las tablas:
plan-to-write-with = Para escribir la hoja, el diagrama y las tablas: { $command }
plan-written = La hoja, el diagrama y las tablas están en: { $folder }
plan-full = --full lo muestra todo.

# Why something could not be drawn.
undrawn-plan = no se puede dibujar el plan: { $what }
undrawn-workbook = no se pudo escribir el libro de cálculo: { $what }
undrawn-chart = no se pudo dibujar el gráfico: { $what }
undrawn-pdf = no se pudo escribir el PDF: { $what }
undrawn-time = un tiempo del ciclo no es un número
undrawn-beyond = sus longitudes son demasiado grandes o demasiado pequeñas para un dibujo
undrawn-length = su longitud no es un número positivo
undrawn-bar = el diámetro de la barra no es un número positivo
undrawn-section = un tramo tiene un número que no es finito
undrawn-feature = un elemento tiene un número que no es finito
undrawn-stage = una etapa tiene un número que no es finito
undrawn-machine = la máquina tiene un número que no es finito
undrawn-stop = la posición de una parada no es finita
undrawn-check = una comprobación tiene un número que no es finito
undrawn-family = un número de la familia no es finito
undrawn-nothing-varies = no varía ni la longitud ni el diámetro
under-one = menos de 1
sure-breaks = Qué se incumple: { $checks }.
sure-break = { $check } en { $share } de 100 piezas
sure-break-at-start = { $check } en { $share } de 100 piezas, en la mitad de ellas desde el principio
sure-break-from = { $check } en { $share } de 100 piezas, en la mitad de ellas antes de { $from } { -mm } de longitud torneada
sure-more = { $number } más
sure-runs = Una pieza que no cumple supera un límite de este plan; no tiene por qué ser rechazo. De { $runs } series simuladas de dos piezas, cumplen las dos piezas en { $both }, una en { $one } y ninguna en { $none }. { $by ->
    [run] Por tanto deciden la máquina, el material o la herramienta, iguales en toda la serie.
    [part] Por tanto decide cada pieza: su curvatura, su barra.
    [both] Por tanto deciden tanto la serie como cada pieza.
   *[none] {""}
}
sure-ask = Con `confidence: 0.95` en el trabajo, o con `--confidence 0.95`, el programa busca un plan que cumpla en 95 de 100.
sure-nothing-uncertain = En este trabajo ningún dato es incierto, así que cada pieza simulada es la nominal.
sure-confidence = Calculado para cumplir en { $asked } de 100 piezas simuladas. Esto cuesta { $seconds } s por pieza: el plan más rápido tarda { $fastest } s y cumple en { $good } de 100.
sure-confidence-free = Calculado para cumplir en { $asked } de 100 piezas simuladas: el plan más rápido ya lo hace.
sure-confidence-missed = No se encontró ningún plan que cumpla en { $asked } de 100 piezas simuladas. Este es, de los probados, el que cumple en más piezas.
sure-measure = Medir primero: { $input }. Con un valor bajo probable y un valor alto probable ({ $low }, { $high }), esta comprobación usa { $used_low } y { $used_high } de su límite: { $check }. { $advice }.
sure-advice = { $input }: { $advice }
input-kc = fuerza de corte kc1.1
input-passive = fuerza pasiva, como factor
input-e = módulo de Young
input-damping = coeficiente de amortiguamiento
input-bush = rigidez del casquillo
input-headstock = rigidez del cabezal
input-counter-spindle = rigidez del contrahusillo
input-centre = rigidez del punto
input-sleeve = rigidez de los apoyos del agujero
input-ra = rugosidad respecto a la ideal
input-straightness = curvatura del eje
input-bar = diámetro de la barra
input-run-out = salto radial de la pinza
input-other = otro dato
diagram-band = 90 de 100 piezas
diagram-part = esta pieza
inputs-title = Datos inciertos de { $job }
inputs-meaning = Parte de su límite que usa la comprobación «{ $check }» con un solo dato desviado una desviación típica de su valor: extremo claro, menor; extremo oscuro, mayor
inputs-percent = { $percent } %
undrawn-inputs = la parte del límite de una comprobación con un dato incierto no es un número finito

# The table of positions for the programmer.
moves-on-part = Longitud torneada (Z): posición de la herramienta en la pieza, desde la cara frontal hacia el cabezal. En un sistema de coordenadas según ISO 841 con el cero en la cara frontal, Z es este valor con signo menos.
moves-from-bush = Husillos (Z): distancia de la nariz a la cara del casquillo, que queda fija { $gap } { -mm } detrás de la herramienta. El cabezal cuenta hacia atrás, el contrahusillo hacia delante; ambos valores son positivos.
moves-without-bush = Husillos (Z): la nariz del cabezal cuenta hacia atrás desde la herramienta. La del contrahusillo cuenta hacia delante desde un plano { $gap } { -mm } detrás de la herramienta. Ambos valores son positivos.
moves-across = Transversal (X): los valores son diámetros, el cero es el eje.
moves-stage = empieza la etapa { $stage }
moves-cut = { $work }, { $section }
moves-travel = { $work }, { $section }, pasada { $travel } de { $travels }
moves-pass = pasada de roscado { $pass } de { $passes }, { $section }
moves-approach = al inicio de: { $cut }
moves-run-out = salida del tándem: la herramienta de acabado corta hasta el final
moves-fed-out = barra avanzada, sin corte
moves-fed-back = la barra vuelve, sin corte
moves-counter-opens = se abre la pinza del contrahusillo
moves-counter-moves = el contrahusillo va al agarre
moves-counter-closes = se cierra la pinza del contrahusillo
moves-headstock-opens = se abre la pinza del cabezal
moves-headstock-moves = el cabezal retrocede a lo largo de la barra
moves-headstock-closes = se cierra la pinza del cabezal
moves-centre-comes = el punto entra en la cara frontal
moves-centre-leaves = el punto se retira de la cara frontal
moves-part-taken = el contrahusillo se lleva la pieza
moves-wait-stopped = avance parado, herramienta retirada
moves-wait-first-hand-over = avance parado, herramienta retirada, el cabezal sujeta la barra, contrahusillo vacío
moves-wait-hand-over = avance parado, herramienta retirada, el cabezal sujeta la barra
moves-wait-counter-closed = pinza del contrahusillo cerrada, los dos husillos giran a la misma velocidad
moves-wait-regrip = avance parado, herramienta retirada, el contrahusillo sujeta la pieza
moves-wait-headstock-closed = pinza del cabezal cerrada
moves-wait-centre = el punto presiona
moves-wait-centre-left = punto retirado
moves-wait-part-off = el contrahusillo sujeta la pieza, los dos husillos giran a la misma velocidad
moves-wait-parted = pieza tronzada
moves-col-actor = quién
moves-col-wait = punto de espera
moves-col-waits-for = espera a
moves-col-start = inicio
moves-col-turned = longitud torneada (Z)
moves-col-diameter = herramienta, diámetro (X)
moves-col-leading = herramienta delantera, diámetro (X)
moves-col-lag = desfase de la herramienta de acabado
moves-col-headstock = nariz del cabezal (Z)
moves-col-counter = nariz del contrahusillo (Z)
moves-col-headstock-speed = velocidad del cabezal
moves-col-counter-speed = velocidad del contrahusillo
key-tool = herramienta

# The drawing as DXF.
undrawn-dxf = una medida del dibujo no es un número finito
dxf-grip = agarre { $stage }
dxf-stage = etapa { $stage }
dxf-about = Eje en mm, cara frontal a la izquierda. H transferencia, R reagarre del cabezal, F parada para un elemento, cada una con su longitud torneada.

# More sheets of the workbook.
xlsx-features = elementos
xlsx-tools = herramientas
xlsx-places = puestos de herramienta
xlsx-order = pedido
xlsx-positions = posiciones
xlsx-page = página { $page } de { $pages }
xlsx-fact = { $what }: { $told }
xlsx-thrust = fuerza transversal
xlsx-axial = fuerza axial
xlsx-torque = par
xlsx-place-kind = tipo de puesto
xlsx-nose-radius = radio de punta
xlsx-depth-least = profundidad mínima
xlsx-depth-most = profundidad máxima
xlsx-feed-least = avance mínimo
xlsx-feed-most = avance máximo
