# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before } y { $item }
list-comma = { $before }, { $item }
list-semicolon = { $before }; { $item }
list-more = { $items } y { $more } más

## What a check found. The numbers carry their unit.

finding-at-most = el valor de «{ $check }» es { $demand }, se permite como máximo { $limit }
finding-stiffness = la rigidez de la barra en la herramienta es { $demand }, hace falta como mínimo { $limit }
finding-span-stiffness = la menor rigidez entre el agarre y el casquillo es { $demand }, el límite propio del taller es { $limit }
finding-free-ratio = el extremo frontal libre tiene una longitud de { $demand } diámetros, la regla propia del taller permite { $limit }
finding-whirl = la velocidad es { $demand } veces la velocidad crítica, se permite como máximo { $limit } veces
finding-whip = la curvatura de la barra en giro (latigazo) es { $demand }, se permite como máximo { $limit }
finding-sag = la flecha de la barra por peso propio es { $demand }, se permite como máximo { $limit }
finding-pick-up = el extremo frontal libre está a { $demand } del eje de giro al recogerlo, se permite como máximo { $limit }
finding-bore = la curvatura de la pieza en el agujero del contrahusillo es { $demand }, se permite como máximo { $limit }
finding-bore-no-room = la pieza no tiene sitio en el agujero del contrahusillo si se respeta el juego del agujero
finding-cut = la flexión de la barra cambia el diámetro a lo largo del corte en { $demand }, se permite como máximo { $limit }
finding-chatter = la profundidad de corte es { $demand }, la vibración regenerativa empieza en { $limit }
finding-drill = la herramienta dobla la barra { $demand }, se permite como máximo { $limit }
finding-release = la barra cae { $demand } cuando se abre la pinza del contrahusillo, se permite como máximo { $limit }
finding-torque = el par es { $demand }, la pinza aguanta como máximo { $limit }
finding-push = la carga es { $demand }, la pinza aguanta como máximo { $limit }
finding-buckling = la barra está comprimida axialmente con { $demand }, se permite como máximo { $limit } para que no pandee
finding-run-out = el salto radial de la pinza produce en la superficie que se corta un salto radial de { $demand }, se permite como máximo { $limit }
finding-back = la flexión del extremo trasero cambia el diámetro en { $demand }, se permite como máximo { $limit }

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = con la pinza del contrahusillo a { $nose } { -mm } y una longitud torneada de { $turned } { -mm }: { $finding }
reason-front-free = con el extremo frontal libre y una longitud torneada de { $turned } { -mm }: { $finding }
reason-on-centre = con el punto en el extremo frontal y una longitud torneada de { $turned } { -mm }: { $finding }
reason-centre = la fuerza del punto
reason-centre-comes = antes de que entre el punto: { $finding }
reason-turned = con una longitud torneada de { $turned } { -mm }: { $finding }
reason-bar-fed-out = con una longitud torneada de { $turned } { -mm } y la barra avanzada para tornear hasta { $end } { -mm }: { $finding }
reason-along-cut = a lo largo del corte que termina a { $end } { -mm }: { $finding }
reason-under-tool = durante la operación «{ $work }», con una longitud torneada de { $turned } { -mm }: { $finding }
reason-fed-on = con la barra avanzada hasta { $turned } { -mm } para la operación «{ $work }»: { $finding }
reason-last-grip-torque = último agarre, en el tronzado o durante el mecanizado del extremo trasero: { $finding } (torque_margin { $margin } incluido)
reason-last-grip-torque-share = último agarre, en el tronzado o durante el mecanizado del extremo trasero: { $finding } (torque_margin { $margin } incluido; solo por la torsión de la barra iría a este agarre el { $percent } % del par de tronzado; indicar torsional_stiffness para tenerlo en cuenta)
reason-last-grip-push = último agarre, durante la operación «{ $work }»: { $finding } (torque_margin { $margin } incluido)
reason-last-grip-back = último agarre, durante el mecanizado del extremo trasero ({ $work }): { $finding }
reason-part-off = tronzado
reason-front-work = pinza del cabezal, bajo la carga en el extremo frontal ({ $work }): { $finding } (torque_margin { $margin } incluido)
reason-front-work-presses = durante el mecanizado del extremo frontal: { $finding }

## Why there is no plan

stopped-together = aquí varios límites detienen la barra, y todos deben cambiar: { $reasons }
stopped-other-collet = con la pinza { $collet } la longitud torneada llega a { $turned } { -mm }: { $reason }
stopped-no-grip = { $reason }; el contrahusillo no ayuda: { $why }
bar-too-thick-for-bush = la barra de { $bar } { -mm } es demasiado gruesa para el casquillo guía, que admite como máximo { $most } { -mm }
bar-too-thick-for-bush-only = la barra de { $bar } { -mm } es demasiado gruesa para el casquillo guía, que admite como máximo { $most } { -mm }; sin el casquillo, la máquina admite { $collet } { -mm } para piezas cortas
bar-too-thick-for-both = la barra de { $bar } { -mm } es demasiado gruesa para el casquillo guía, que admite como máximo { $most } { -mm }, y para la pinza del cabezal sin el casquillo, que admite como máximo { $collet } { -mm }
bar-too-thick-for-collet = la barra de { $bar } { -mm } es demasiado gruesa para la pinza del cabezal, que admite como máximo { $most } { -mm }
tools-no-place = la máquina no tiene puesto para todas las herramientas: { $missing }
tools-no-pair = todas las herramientas de torneado están en un mismo lado, así que un par opuesto no puede cortar
tools-no-tandem = no hay dos herramientas de torneado que puedan cortar en tándem con la herramienta de acabado en este lado (véanse `opposed` y `tandem` en las herramientas de la máquina)
tools-room = puestos para { $place }: { $needed } necesarios ({ $names }), { $places } en la máquina
tools-room-elsewhere = puestos para { $place }: { $needed } necesarios ({ $names }), { $places } en la máquina, se pueden usar { $elsewhere } más de otro tipo
place-turning = herramientas de torneado
place-cross-driven = herramientas transversales motorizadas
place-front-fixed = herramientas fijas para el extremo frontal
place-front-driven = herramientas motorizadas para el extremo frontal
place-back-fixed = herramientas fijas para el extremo trasero
place-back-driven = herramientas motorizadas para el extremo trasero
place-whirling = unidades de torbellinado
support-fails = nada sujeta la barra
support-fails-last-grip = el último agarre no sujeta la pieza después del tronzado
check-fails = se supera un límite
proof-found-limit = la verificación encontró que de este modo se supera un límite
drill-fails = una herramienta motorizada dobla la barra más de lo permitido
part-off-not-held = nada sujeta la pieza en el tronzado
part-off-rear-work = el mecanizado del extremo trasero necesita un agarre en el tronzado, y esta máquina no tiene contrahusillo
part-off-too-large = nada sujeta la pieza en el tronzado, y con { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro es demasiado grande para la bandeja, que admite piezas de hasta { $most_length } { -mm } de longitud y { $most_diameter } { -mm } de diámetro (part_off.tray)
part-off-too-large-default = nada sujeta la pieza en el tronzado, y con { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro es demasiado grande para caer sin agarre: sin part_off.tray en el archivo de máquina pueden caer piezas de hasta { $most_length } { -mm } de longitud y { $most_diameter } { -mm } de diámetro
part-off-no-collet = el contrahusillo no tiene pinza, así que nada sujeta la pieza en el tronzado
front-not-gripped = ninguna pinza agarra el extremo frontal acabado
travel-end = el contrahusillo con su pinza a { $nose } { -mm } está al final de su recorrido de { $farthest } { -mm }
travel-end-centre = el contrahusillo con su punto está al final de su recorrido de { $farthest } { -mm }
travel-too-short = el contrahusillo con su pinza a { $nose } { -mm } no llega tan lejos
stroke-end-no-stop = el cabezal está al final de su carrera de { $stroke } { -mm }, y no hay sitio para un reagarre: todas las superficies en el camino deben quedar sin marca de parada
stroke-end-front-free = el cabezal está al final de su carrera de { $stroke } { -mm }, y no debe hacer un reagarre mientras el extremo frontal está libre
stroke-end-centre = el cabezal está al final de su carrera de { $stroke } { -mm }, y no debe hacer un reagarre mientras un punto presiona el extremo frontal
driven-part-off = tronzado
driven-torque = { $section } necesita un par de { $needed } N·m en el husillo, pero el cabezal tiene { $most } N·m
driven-feed = { $section } necesita una fuerza de avance de { $needed } { -n }, pero el cabezal avanza como máximo con { $most } { -n }
driven-power = { $section } necesita un motor de { $needed } kW incluso a la velocidad mínima permitida, { $rpm } rpm (speed_floor), pero el cabezal tiene { $most } kW
driven-front-work = la operación «{ $work }» necesita un par de { $needed } N·m en el husillo, pero el cabezal tiene { $most } N·m
driven-rear-work = la operación «{ $work }» en el extremo trasero necesita un par de { $needed } N·m, pero el contrahusillo tiene { $most } N·m
segments-pull-back = { $section } necesita varias pasadas, y ningún retroceso es lo bastante corto para su tolerancia
thread-long-no-unit = { $section } es una rosca de { $length } { -mm }. Con una cuchilla de roscar la barra debe retroceder toda la longitud de la rosca, y aquí puede retroceder como máximo { $longest } { -mm }, porque { $stays } { -mm } de la longitud de guiado deben quedar sobre barra sin tornear. La máquina no tiene unidad de torbellinado (`tools.whirling`). Soluciones: una unidad de torbellinado, laminado (`thread_by: rolling`), trabajar sin casquillo guía, o una rosca más corta
thread-long-asked = { $section } es una rosca de { $length } { -mm }. Con una cuchilla de roscar la barra debe retroceder toda la longitud de la rosca, y aquí puede retroceder como máximo { $longest } { -mm }, porque { $stays } { -mm } de la longitud de guiado deben quedar sobre barra sin tornear. Quitar `thread_by: single_point`: la rosca se puede hacer por torbellinado. Otras soluciones: laminado (`thread_by: rolling`), trabajar sin casquillo guía, o una rosca más corta
segments-interrupt = { $section } no se debe interrumpir, pero necesita { $travels } pasadas y por tanto { $segments } segmentos con marcas de parada entre ellos

## Why no collet takes hold of the front

grip-no-stop = la pinza { $collet } podría agarrar con una longitud torneada de { $from } a { $to } { -mm }, pero el avance no puede parar ahí: { $why }
grip-no-stop-thread = { $section } es una rosca, y una rosca no se debe interrumpir
grip-no-stop-never = { $section } no se debe interrumpir
grip-no-stop-segments = un tramo que se corta en varias pasadas solo permite una parada entre sus segmentos
grip-no-farther = con un agarre a { $nose } { -mm } la longitud torneada solo llega a { $turned } { -mm }: { $why }
grip-fails = la pinza { $collet } no puede agarrar con una longitud torneada de { $turned } { -mm }: { $why }
grip-out-of-travel = con una longitud torneada de { $turned } { -mm } el contrahusillo no puede llevar la pinza { $collet } a ningún lugar donde pueda agarrar
grip-no-counter-spindle = la máquina no tiene contrahusillo
grip-forbidden = { $section } no se debe agarrar
grip-wished-never = un deseo prohíbe agarrar { $section }
grip-front-too-thick = el diámetro de { $front } { -mm } delante de { $section } no pasa por la pinza { $collet }, que se abre hasta { $passes } { -mm }
grip-too-deep = { $section } queda demasiado adentro, el agujero del contrahusillo solo admite { $depth } { -mm }
grip-no-clear-length = { $section } no tiene una longitud despejada de { $hold } { -mm } para la pinza { $collet }
grip-more-sections = { $reasons }; { $more ->
    [one] { $more } tramo más tampoco se puede agarrar
   *[other] { $more } tramos más tampoco se pueden agarrar
}
grip-too-early = la pinza { $collet } puede agarrar por primera vez en { $section }, y para ello la longitud torneada debe ser de al menos { $from } { -mm }
grip-nothing-plain = el eje no tiene ningún tramo liso que una pinza pueda agarrar
grip-no-collet-fits = ninguna pinza sirve para un tramo liso ({ $diameters }): { $collets }
grip-collet-range = la pinza { $collet } sujeta de { $from } a { $to } { -mm }
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = el deseo «{ $wish }» no es posible: la máquina no tiene contrahusillo
wish-impossible-no-stop = el deseo «{ $wish }» no es posible: el avance no debe parar ahí, en { $section }
wish-impossible-no-grip = el deseo «{ $wish }» no es posible: la pinza { $collet } no puede agarrar ahí
wish-no-grip-goes-on = ningún agarre permite continuar desde la transferencia deseada a { $at } { -mm }
wish-prevents = el deseo «{ $wish }» impide un plan: { $reason }; sin este deseo el tiempo de ciclo es { $seconds } s
wishes-prevent = los deseos en conjunto impiden un plan: { $reason }; sin ellos el tiempo de ciclo es { $seconds } s

## Changes

change-works = { $change }: tiempo de ciclo { $seconds } s
set-works = { $changes }: tiempo de ciclo { $seconds } s
change-saves = { $change }: ahorra { $seconds } s por pieza
change-saves-most = { $change }: ahorra { $seconds } s por pieza; el mayor ahorro es { $most } s: { $best }
change-drop-wish = renunciar al deseo «{ $wish }»
change-rpm = reducir la velocidad a { $rpm } rpm en el diámetro de la barra ({ $vc } { -m-min })
change-speed-floor = permitir una velocidad reducida donde un límite lo exige, hasta el { $percent } % de la velocidad plena
change-ap-max = permitir una profundidad de corte de { $depth } { -mm } por pasada (si la herramienta lo permite)
change-no-bush = trabajar sin el casquillo guía
change-bush = trabajar con el casquillo guía
change-centre = sujetar el extremo frontal con el punto del contrahusillo (hold: centre)
change-tandem = desbastar y acabar en una sola pasada con un tándem de dos herramientas
change-opposed = tornear con un par opuesto de herramientas, para que sus fuerzas radiales se compensen
change-interrupt = permitir una parada en { $section } (deja una marca de parada)
change-grip = permitir un agarre en { $section }
change-straightness = reducir la curvatura que queda en el eje torneado a { $bow } { -mm } por { -m }
change-collet = conseguir una pinza para { $diameter } { -mm } (longitud de apriete { $hold } { -mm }, fuerza de apriete { $force } { -n })
change-collet-opens = conseguir una pinza para { $diameter } { -mm } que se abra hasta { $opens } { -mm }, para que pase el extremo frontal más grueso (longitud de apriete { $hold } { -mm }, fuerza de apriete { $force } { -n })
change-bar = usar una barra de { $diameter } { -mm }
change-set-up = hacer «{ $work }» en una segunda sujeción, como operación aparte ({ $seconds } s de mecanizado y unos { $loading } s para cargar la pieza)
change-turn-round = fabricar la pieza desde su otro extremo: la cara trasera sale primero del casquillo
change-shop-machine = fabricarla en { $machine }
change-limit = ampliar el límite { $limit } a { $value } (si la pieza y la máquina lo permiten)
change-collet-run-out = usar pinzas del contrahusillo con un salto radial de { $mm } { -mm } como máximo
change-section-run-out = permitir { $times } veces el salto radial de los tramos (si la oficina técnica está de acuerdo)
change-shorter-stroke = dejar que el cabezal use solo { $stroke } { -mm } de su carrera y haga reagarres más a menudo
change-axial-load = dejar que el contrahusillo mantenga sobre el eje una fuerza axial de solo { $force } { -n }
change-stroke = usar una máquina con una carrera del cabezal de { $stroke } { -mm }
change-bush-max-bar = usar una máquina con un casquillo guía para { $bar } { -mm }
change-smaller-ap-max = cortar como máximo { $depth } { -mm } en una pasada (ap_max)
change-smaller-feed = avanzar como máximo { $feed } { -mm-rev }
change-power = usar una máquina con { $power } kW en el cabezal
change-torque = usar una máquina con { $torque } N·m en el cabezal
change-feed-force = usar una máquina cuyo cabezal avance con { $force } { -n }
change-counter-torque = usar una máquina con { $torque } N·m en el contrahusillo
change-headstock-clamp-force = usar una pinza del cabezal con una fuerza de apriete de { $force } { -n } (si la barra lo permite)
change-farthest = usar un contrahusillo que llegue hasta { $farthest } { -mm } de la cara del casquillo
change-bore-depth = usar un contrahusillo con un agujero de { $depth } { -mm } de profundidad
change-bore = usar un contrahusillo con un agujero de { $bore } { -mm }
change-clamp-force = usar { $times } veces la fuerza de apriete en el contrahusillo: { $collets } (si la pieza lo permite)
change-clamp-force-collet = pinza { $collet } { $force } { -n }
change-tray = dejar caer la pieza en una bandeja para piezas de hasta { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro, si la máquina la tiene (part_off.tray)
change-sleeve = poner manguitos de apoyo en el agujero del contrahusillo, cada { $pitch } { -mm }, { $stiffness } N/µm cada uno
change-forming = mortajar el hexágono interior { $size } en carreras finas en lugar de punzonarlo
change-step = mortajar con { $step } { -mm } de profundidad de corte por carrera
change-whirling = usar una máquina con unidad de torbellinado para las roscas demasiado largas para una cuchilla de roscar
change-rolling = laminar las roscas demasiado largas para una cuchilla de roscar (`thread_by: rolling`), con rodillos tan anchos como la rosca
change-engagement = dejar { $mm } { -mm } de la longitud de guiado sobre barra sin tornear cuando la barra retrocede (`engagement_min`)
change-tool-places = usar una máquina con { $number ->
    [one] { $number } puesto
   *[other] { $number } puestos
} para { $place }

## What was tried

progress-sets = buscando cambios que ayuden: { $tried } conjuntos probados, ahora { $set }
tried-stopped = La búsqueda de cambios se detuvo. Se indica lo que se sabe hasta ahora
tried-bound = La búsqueda de cambios terminó en su límite de cálculo, tras { $sets } conjuntos de cambios. Puede existir un conjunto que ayude
tried-forbidden = Ningún conjunto de cambios ayuda. Incluso con los { $changes } cambios de la lista a la vez: { $reason }
tried-more = Ningún conjunto de hasta { $most } cambios basta (se probaron { $sets } conjuntos). Todos los cambios de la lista a la vez sí bastarían
tried-all = Ningún conjunto de cambios basta para { $job } (se probaron { $sets } conjuntos)
progress-finer-stops = ningún plan con posiciones de parada cada { $coarse } { -mm }, probando cada { $fine } { -mm }

## Notes

note-not-listed = No están en la lista de herramientas: { $tools }. Para ellas valen los números de `cutting`
note-drive = A las velocidades de este plan, el torneado necesita hasta { $power } kW del motor del cabezal ({ $power_at }), un par de { $torque } N·m en el husillo ({ $torque_at }) y una fuerza de avance de { $force } { -n } ({ $force_at })
note-drive-not-given = { $told }. El archivo de máquina no indica { $keys }: comprobar la máquina.
note-power-lowers = { $section }: la potencia del cabezal de { $power } kW reduce la velocidad. Sus pasadas no giran a más de { $speeds } rpm
note-ground = { $section } se rectifica después: torneado a { $turned }, rectificado a { $ground }
note-small-radius = { $section }: la esquina tiene un radio de { $radius } { -mm }, y la punta de la herramienta deja al menos { $nose } { -mm }
note-whirled = una rosca es demasiado larga para hacer retroceder la barra y cortarla con cuchilla de roscar, o así lo dice `thread_by`: se hace por torbellinado en una sola pasada
note-whirled-assumed = una rosca es demasiado larga para hacer retroceder la barra y cortarla con cuchilla de roscar, o así lo dice `thread_by`: se hace por torbellinado en una sola pasada. Se supone una unidad de torbellinado, porque el archivo de máquina no indica puestos de herramienta. Escribir `tools` con `whirling: 1`, o sin `whirling` si la máquina no la tiene
note-rolled = { $section }: la rosca se lamina sobre un diámetro previo de { $blank } { -mm }, aproximadamente el diámetro de flancos. Los rodillos deben ser al menos tan anchos como la rosca, { $length } { -mm }. Hallar el diámetro previo exacto con pruebas; la fuerza de laminado no se calcula
note-left-hand = { $section }: { $thread } es una rosca a izquierdas. Comprobar el sentido del husillo, del avance y de la herramienta
note-passive-deep = Las fuerzas pasivas se compararon con fuerzas medidas hasta una profundidad de corte de { $measured } { -mm }. Aquí el corte más profundo es de { $depth } { -mm }, así que su fuerza pasiva está extrapolada.
note-passive-floor = Donde el filo da una fuerza pasiva menor, se cuenta { $share } de la fuerza principal (cutting.passive_floor; práctica común, sin fuente).
note-chips-of-drill = La viruta de la broca de { $size } { -mm } tiene un espesor de { $chip } { -mm }; su fuerza está extrapolada: las fuerzas específicas de corte se conocen para virutas de { $low } a { $high } { -mm }. Las virutas más finas requieren más fuerza que la extrapolada, porque el filo no es perfectamente agudo.
note-chips-of-tap = La viruta del macho de { $size } { -mm } tiene un espesor de { $chip } { -mm }; su fuerza está extrapolada: las fuerzas específicas de corte se conocen para virutas de { $low } a { $high } { -mm }. Las virutas más finas requieren más fuerza que la extrapolada, porque el filo no es perfectamente agudo.
note-chips-of-cutter = La viruta de la fresa de { $size } { -mm } tiene un espesor medio de { $chip } { -mm }; su fuerza está extrapolada: las fuerzas específicas de corte se conocen para virutas de { $low } a { $high } { -mm }. Las virutas más finas requieren más fuerza que la extrapolada, porque el filo no es perfectamente agudo.
note-chips-of-turning = La viruta del torneado con un avance de { $size } { -mm-rev } tiene un espesor de { $chip } { -mm }; su fuerza está extrapolada: las fuerzas específicas de corte se conocen para virutas de { $low } a { $high } { -mm }. Las virutas más finas requieren más fuerza que la extrapolada, porque el filo no es perfectamente agudo.
note-drill-size = La fuerza axial de la broca de { $size } { -mm } está extrapolada: su fórmula se conoce para brocas de { $low } a { $high } { -mm }.
note-class-assumed = Las brocas, los machos y las fresas trabajan como en esta clase: { $class }. Se supuso a partir del módulo, la densidad y el kc1.1 de { $material }. Indicar `class` en shaft.material si es otra.
note-feed-lowered = { $section }: avance reducido de { $given } a { $feed } { -mm-rev } para alcanzar Ra { $ra } { -um }, con { $factor } veces la rugosidad ideal (cutting.ra_factor)
note-ra-floor = { $section }: Ra { $ra } { -um } no está por encima de { $floor } { -um }, el acabado que el torneado deja con cualquier avance (cutting.ra_floor). El avance es el que corresponde a { $floor } { -um }. Rectificar o pulir esta superficie, o reducir ra_floor si la máquina tornea más fino.
note-unusual-pitch = { $thread }: { $standard } no tiene esta rosca; comprobar que haya una herramienta disponible
note-falls-by-default = La pieza cae en el tronzado porque es pequeña: sin part_off.tray en el archivo de máquina pueden caer piezas de hasta { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro (práctica común, sin fuente). Si la máquina no tiene bandeja, o tiene una menor, indicar part_off.tray: con una longitud de 0 no cae ninguna pieza.
note-centre = El punto entra cuando el extremo frontal está acabado y se retira antes del tronzado. Para ambas cosas se cuenta el tiempo de una transferencia (práctica común, sin fuente).
note-torque-share = La comprobación más ajustada es el par del tronzado, y el último agarre cuenta con todo él. Solo por la torsión de la barra iría a este agarre el { $percent } %. Para tenerlo en cuenta, indicar `torsional_stiffness` del contrahusillo.
note-no-limit-costs = Ningún límite cuesta tiempo: ampliar un solo límite no da un plan más rápido.
note-rule-left-out = { $rule }; esta regla se dejó fuera para los valores que se muestran aquí
optimum-proven = no existe un plan más rápido ({ $stops } posiciones de parada probadas)
note-slow-cutting = La velocidad reducida en { $section } equivale a una velocidad de corte de { $speed } { -m-min }, por debajo de lo habitual de { $low } a { $high } { -m-min } para { $material }. La superficie puede quedar más rugosa. Comprobarla en la primera pieza.
optimum-gap = como máximo un { $percent } % más lento que el plan más rápido posible ({ $stops } posiciones de parada probadas)

## The timeline

timeline-hand-over = transferencia a { $at } { -mm }
timeline-centre = punto: entra antes del primer corte, se retira antes del tronzado
timeline-regrip = reagarre del cabezal a { $at } { -mm }
timeline-part-off = tronzado
timeline-part-off-falls = tronzado, la pieza cae en la bandeja
timeline-unload = descargar la pieza
critical-hand-overs = transferencias
critical-regrips = reagarres del cabezal
critical-tool-changes = cambios de herramienta
critical-cutting = corte de { $section }
critical-overhead = aproximación y retorno

## Tolerances

tolerance-not-in-table = la tabla de clases de tolerancia no tiene un diámetro de { $diameter } mm, llega hasta { $most } mm
tolerance-not-in-table-help = indicar las desviaciones en mm: `tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` es { $value }
at-out-of-range-help = `--{ $option }` debe estar entre { $low } y { $high }
at-not-held = nada sujeta la barra en este estado
at-not-held-help = comprobar las rigideces en el archivo de máquina
at-no-counter-spindle = la máquina no tiene contrahusillo
at-no-counter-spindle-help = quitar `--grip`
at-grip-on-centre = Con `hold: centre` ninguna pinza sujeta el extremo frontal
at-grip-on-centre-help = Quitar `--grip`, o escribir `hold: collet` en el trabajo
at-no-such-collet = la máquina no tiene la pinza { $collet }
at-no-such-collet-help = sus pinzas son: { $collets }
at-no-collet-fits = ninguna pinza de la máquina sujeta { $diameter } { -mm }, el diámetro a { $at } { -mm }
at-no-collet-fits-help = mover `--grip`, o elegir una pinza para el cálculo con `--collet`: { $collets }
at-stage-end-with-bush = `--stage-end` es para trabajar sin casquillo
at-stage-end-with-bush-help = quitar `--stage-end`
at-headstock-without-bush = `--headstock` es para trabajar con casquillo guía
at-headstock-without-bush-help = usar `--stage-end`: sin casquillo la pinza del cabezal se coloca para el final de la etapa
at-cannot-be-cut-help = ejecutar `check` para ver qué ayudaría

## A place of a plan moved by hand

move-no-plan = no hay plan, así que no se puede mover nada
move-no-plan-help = corregir primero el trabajo
move-not-there = el lugar no se puede mover ahí
move-not-there-help = una etapa debe conservar alguna longitud, y una transferencia debe quedar entre las transferencias vecinas
move-off-shaft = la pinza no quedaría sobre el eje

## Faults found by the proof

proof-failed = el plan no pasa su verificación ({ $rule }: { $text })
proof-limit = con una longitud torneada de { $turned } { -mm } el valor es { $demand }, el límite es { $limit }
proof-no-plan = esto no es un plan viable
proof-no-such-collet = la máquina no tiene la pinza { $collet }
proof-no-counter-spindle = el plan usa la pinza { $collet }, pero la máquina no tiene contrahusillo
proof-way-of-turning = el plan es para { $holding } y { $tools }, el trabajo pide { $job_holding } y { $job_tools }
proof-bar-too-thick = la barra de { $bar } { -mm } es demasiado gruesa, esta forma de tornear admite como máximo { $most } { -mm }
proof-stage-order = la etapa va de { $from } a { $to } { -mm }, pero la etapa anterior termina a { $before } { -mm }
proof-free-stage = el extremo frontal debe estar libre en la primera etapa, y en ninguna otra
proof-centre-not-asked = el plan tiene un punto, y el trabajo no lo pide
proof-centre-told = el plan no indica el punto del trabajo
proof-centre-stages = con un punto toda la pieza es una sola etapa
proof-centre-travel = al final la nariz del contrahusillo está a { $at } { -mm } de la cara del casquillo, y llega hasta { $farthest } { -mm }
proof-driven = el corte de { $from } a { $to } { -mm } necesita { $needed }, y el cabezal tiene { $limit }
proof-drive = el plan indica para el cabezal una necesidad distinta de { $power } kW, { $torque } N·m y { $force } { -n }
proof-bar-feed = el corte de { $from } a { $to } { -mm } se hace a { $rpm } rpm, pero el alimentador de barras permite como máximo { $most }
proof-part-off-told = lo que el plan dice de la pieza en el tronzado no concuerda con su última etapa y la máquina
proof-falls-rear-work = nada sujeta la pieza en el tronzado, pero después hay que mecanizar su extremo trasero
proof-too-large-to-fall = nada sujeta la pieza en el tronzado, y con { $length } { -mm } de longitud y { $diameter } { -mm } de diámetro no debe caer: pueden caer como máximo { $most_length } { -mm } de longitud y { $most_diameter } { -mm } de diámetro
proof-end = la última etapa termina a { $end } { -mm }, pero el tronzado está a { $part_off } { -mm }
proof-no-stop = el avance no debe parar a { $at } { -mm }
proof-hand-overs-listed = la lista de transferencias no concuerda con las etapas
proof-regrips-listed = la lista de reagarres del cabezal no concuerda con las etapas
proof-no-feed-out = sin casquillo, cada etapa después de la primera debe empezar con un reagarre del cabezal
proof-regrip-outside = el reagarre del cabezal a { $at } { -mm } está fuera de su etapa
proof-regrip-front-free = la pinza del cabezal se abre a { $at } { -mm } mientras el extremo frontal está libre
proof-stroke = de { $from } a { $to } { -mm } el cabezal necesitaría más que su carrera de { $stroke } { -mm }
proof-grip-no-collet = la etapa tiene un agarre, pero el plan no tiene pinza
proof-grip-length = el agarre no tiene la longitud de apriete de la pinza
proof-grip-forbidden = { $section } no se debe agarrar
proof-grip-diameter = la pinza { $collet } no sujeta { $diameter } { -mm }
proof-grip-described = el plan dice que el agarre está en { $diameter } { -mm } del tramo { $section }, pero está en { $real_diameter } { -mm } del tramo { $real_section }
proof-grip-not-plain = el agarre de { $from } a { $to } { -mm } no está sobre un solo cilindro
proof-grip-feature = bajo el agarre hay un agujero o un chavetero de { $from } a { $to } { -mm }
proof-grip-front = el diámetro de { $front } { -mm } que queda delante no pasa por la pinza { $collet }, que se abre hasta { $passes } { -mm }
proof-grip-depth = { $length } { -mm } del eje no caben en el agujero del contrahusillo, que tiene { $depth } { -mm } de profundidad
proof-grip-not-turned = con una longitud torneada de { $turned } { -mm } el agarre hasta { $to } { -mm } todavía no está torneado
proof-grip-travel = con una longitud torneada de { $turned } { -mm } la pinza está a { $distance } { -mm } de la cara del casquillo, se permite de { $nearest } a { $farthest } { -mm }
proof-time = el plan da { $given } s para { $name }, pero la suma es { $sum } s
proof-cycle-time = el plan da un tiempo de ciclo de { $given } s, pero las operaciones dan { $sum } s
proof-wish = el deseo «{ $wish }» no se cumple
proof-wish-grip = el agarre de { $from } a { $to } { -mm } va contra el deseo «nunca agarrar { $name }»
proof-wish-hand-overs = el plan tiene { $number } transferencias, pero el deseo permite como máximo { $most }
proof-cut-not-as-asked = el corte de { $from } a { $to } { -mm } no es como pide el trabajo
proof-cut-missing = nada corta la longitud de { $from } a { $to } { -mm }
proof-speed = de { $from } a { $to } { -mm } el plan tornea a { $rpm } rpm, el trabajo pide { $wanted } rpm
proof-speed-range = de { $from } a { $to } { -mm } el plan tornea a { $rpm } rpm, el trabajo pide de { $least } a { $wanted } rpm
proof-not-held = nada sujeta la barra
proof-not-held-at = con una longitud torneada de { $turned } { -mm } nada sujeta la barra
proof-not-held-open = nada sujeta la barra mientras la pinza del contrahusillo está abierta
proof-not-held-last = el último agarre no sujeta la pieza
proof-no-tool-place = la máquina no tiene puesto para todas las herramientas
proof-timeline-order = el cronograma no muestra las operaciones en las paradas en el orden verificado
proof-fed-on = «{ $work }» se hace con una longitud torneada de { $turned } { -mm }, pero la máquina no puede avanzar la barra tan lejos
proof-work-missing = «{ $work }» no se hace donde su herramienta puede alcanzarlo
proof-work-stage = «{ $work }» con una longitud torneada de { $turned } { -mm } no pertenece a esta etapa
proof-length = el plan dice { $told } { -mm }, pero el eje mide { $length } { -mm } de largo
proof-margin = el plan dice { $told }, pero la verificación da { $proven }
proof-margin-missing = el plan no da margen, pero la verificación da { $proven }
proof-margin-at = la comprobación «{ $check }» usa { $used } de su límite, lo que no da un margen de { $margin }
proof-line-missing = la parada a { $at } { -mm } deja una marca de parada que no está en el plan
proof-line-without-stop = el plan tiene una marca de parada a { $at } { -mm }, pero ahí no para nada
proof-line-section = la marca de parada a { $at } { -mm } está en el tramo { $section }, con la indicación «{ $interrupt }»
proof-pieces = el plan dice { $told } piezas por barra, pero una barra da { $real }
proof-material = el plan dice { $told_kg } kg por pieza y un resto de barra de { $told_mm } { -mm }, pero son { $kg } kg y { $mm } { -mm }
proof-cost = el plan dice { $told } por pieza, pero el coste es { $real }
proof-cost-no-rates = el plan dice { $told } por pieza, pero el trabajo no da tarifas
proof-cost-missing = el plan no da coste, pero las tarifas del trabajo dan { $real }

## Cautions: general rules of safe turning, common practice, no source

estimate = Una estimación: deciden el manual de la máquina, las normas locales y un preparador cualificado.
caution-not-a-plan = No ejecutar esto: no es un plan. Las etapas solo muestran hasta dónde llegaría el mecanizado dentro de sus límites.
caution-twice = { $own } (English: { $english })
caution-read-first = Antes de preparar la máquina, leer las precauciones de las páginas siguientes. Deciden el manual de la máquina, las normas locales y un preparador cualificado.
caution-estimate = Esto es una estimación. Las fuerzas de corte tienen, en el mejor de los casos, una exactitud de ± 25 %. Las rigideces solo son tan buenas como los valores indicados para la máquina.
caution-who-decides = Deciden el manual de la máquina, las normas locales y un preparador cualificado. Si difieren de este plan, seguirlos a ellos y no al plan.
caution-first-piece = Probar la primera pieza a velocidad y avance reducidos, bloque a bloque, con las puertas cerradas. Medirla antes de aumentar la velocidad o el avance.
caution-limits = No superar nunca los límites de una etapa: su longitud torneada, su longitud sin apoyo, su velocidad. También valen los límites de la máquina, de las pinzas y del alimentador de barras. Rige el límite más bajo.
caution-at-risk = Este plan está EN RIESGO. Con datos inciertos, solo { $good } de 100 piezas simuladas quedan dentro de todos los límites. Aumentar la velocidad y la profundidad en pasos pequeños, vigilar la barra en cada paso y parar cuando vibre, dé latigazos o se salga de medida.
caution-bar-behind = No dejar barra sin apoyo detrás del husillo del cabezal: por encima de cierta velocidad se dobla hacia fuera y golpea. Guiar la barra en toda su longitud o cortarla más corta.
caution-front-free = { $number ->
    [one] En la etapa { $stages } el extremo frontal de la pieza gira libre. Mantenerse fuera del plano en el que gira y aumentar la velocidad por pasos.
   *[other] En las etapas { $stages } el extremo frontal de la pieza gira libre. Mantenerse fuera del plano en el que gira y aumentar la velocidad por pasos.
}
caution-counter-spindle = Pieza en el contrahusillo: comprobar la pinza, el apriete y la sincronización antes de que se abra la pinza del cabezal, y otra vez antes del tronzado. Si falla el apriete o la sincronización, los dos husillos deben parar a la vez.
caution-front-long = La longitud del extremo frontal libre llega a ser { $ratio } veces su diámetro. Un extremo largo y delgado puede dar latigazos: aumentar la velocidad por pasos, vigilarlo y mantenerse fuera de su alcance.
caution-centre = Un punto sirve de apoyo al extremo frontal: engrasarlo o refrigerarlo, ajustar su fuerza antes de que gire la barra y comprobar que el agujero de centrado esté limpio. No tornear la etapa sin él. Debe retirarse antes del tronzado; entonces el extremo frontal gira libre, así que mantenerse fuera del plano en el que gira.
caution-thin-wall = La pared tiene solo { $wall } { -mm } de espesor donde una pinza sujeta Ø{ $held } { -mm }. La pinza puede aplastarla: apretar con menos fuerza, o poner un tapón en el agujero, y medir la primera pieza.
caution-part-off-not-held = Nada sujeta la pieza en el tronzado: se suelta mientras gira. Tronzar despacio, dejar que una bandeja recoja la pieza, mantenerse fuera de su trayectoria y no tender nunca la mano hacia ella.
caution-part-falls = La pieza cae en la bandeja en el tronzado. Se suelta mientras gira: puede engancharse en la herramienta, y puede marcarse o doblarse al caer. Hacer más despacio la última parte del corte, mantener despejado el camino a la bandeja, mantener las puertas cerradas y revisar las primeras piezas antes de continuar.
caution-no-bush = Sin el casquillo guía, solo la pinza del cabezal sujeta la barra. No superar las longitudes indicadas.
caution-fixed-bush = El casquillo guía no gira, y el diámetro de la barra { $bar } puede variar { $width } { -mm }, es decir, { $side } { -mm } por cada lado. Un casquillo fijo necesita de { $least } a { $widest } { -mm } de juego por cada lado, es decir, barra h6 o h7 (tolerancia de { $most } { -mm } como máximo). En un casquillo demasiado ancho la pieza pierde la redondez; en uno demasiado justo la barra se agarrota. Usar barra rectificada, un casquillo que gire con la barra, o trabajar sin el casquillo.
caution-fixed-bush-unknown = El casquillo guía no gira, y la tolerancia de la barra no está indicada. Un casquillo fijo necesita de { $least } a { $widest } { -mm } de juego por cada lado, es decir, barra rectificada h6 o h7 (tolerancia de { $most } { -mm } como máximo). Con barra estirada o torneada (h9 a h12) hace falta un casquillo que gire con la barra, o trabajar sin el casquillo.
caution-following-bush = El casquillo guía gira con la barra, y el diámetro de la barra { $bar } puede variar { $width } { -mm }. Un casquillo así admite barra hasta aproximadamente h9 (tolerancia de { $most } { -mm } como máximo; práctica común). En un casquillo demasiado ancho la pieza pierde la redondez; en uno demasiado justo la barra se atasca. Usar barra h9 o más precisa, o trabajar sin el casquillo.
caution-following-bush-unknown = El casquillo guía gira con la barra, y la tolerancia de la barra no está indicada. Un casquillo así admite barra hasta aproximadamente h9 (tolerancia de { $most } { -mm } como máximo; práctica común). Usar barra h9 o más precisa, o trabajar sin el casquillo.
caution-bored = La rigidez no tiene en cuenta agujeros, hexágonos interiores ni chaveteros interiores: en esos lugares el eje es más flexible de lo calculado.
caution-cross-work = La rigidez no tiene en cuenta agujeros transversales ni chaveteros: en esos lugares el eje es más flexible de lo calculado.
caution-work-aside = Mientras se mecaniza el extremo trasero de una pieza, ya se tornea el extremo frontal de la siguiente. Asegurarse de que el contrahusillo, la pieza y las herramientas guarden distancia con la pieza siguiente en todas las posiciones. Probarlo primero sin pieza.
caution-shaving = Las herramientas de mortajar y de punzonar no giran. Mientras trabajan, el husillo debe estar parado, retenido en su posición angular y bloqueado contra la puesta en marcha. La fuerza actúa a lo largo del eje de giro: comprobar primero el apriete.
caution-never-line = El avance para por un elemento sobre una superficie con la indicación «never» y deja ahí una marca de parada: { $places }. Acordarlo con la oficina técnica, o hacer el elemento en otro lugar.
caution-never-line-place = { $at } { -mm } en el { $section }
caution-section = tramo { $number }
caution-section-named = tramo { $number } ({ $name })
caution-not-a-program = Esta tabla no es un programa: ninguna máquina debe ejecutarla. Un programador cualificado debe hacer de ella un programa: añadir distancias de seguridad, retiradas de las herramientas, las velocidades de las operaciones que la tabla no indica y todos los enclavamientos. Probar primero el programa sin pieza (en vacío). Prevalece el manual de la máquina.
caution-chips = Las virutas largas se enrollan en las piezas delgadas. Parar la máquina para quitarlas. No quitarlas nunca con la mano mientras la máquina gira.

## Roughing and finishing

tandem-no-bush = no hay casquillo guía, así que la última pasada se hace aparte
tandem-no-tools = la máquina no indica dos herramientas para ello (`opposed` o `tandem` en sus herramientas)
tandem-back = el diámetro disminuye en su parte delantera, y las dos herramientas tendrían que ser de torneado inverso
tandem-in-counter-spindle = el contrahusillo llega a { $nearest } { -mm } del casquillo, y la herramienta de acabado quedaría dentro de él
tandem-step = cuando la herramienta de desbaste se retira al final, el diámetro cambia { $step } { -um }, y se permiten como máximo { $limit } { -um }
note-one-cut = { $section } exige { $asked } y se corta con { $depth } { -mm } de profundidad en una sola pasada, sin pasada de acabado. { $instead }
note-one-cut-both = Es posible una última pasada sin marca (`finish_pass: true`), o una segunda herramienta que acabe en la misma pasada (`tools: tandem`).
note-one-cut-pass = Es posible una última pasada sin marca (`finish_pass: true`).
note-one-cut-tandem = La barra no puede retroceder toda esa longitud para una última pasada. Una segunda herramienta puede acabar en la misma pasada (`tools: tandem`).
note-one-cut-why = La barra no puede retroceder toda esa longitud para una última pasada, ni pueden cortar dos herramientas en una pasada: { $why }.
note-tandem = Desbaste y acabado en una sola pasada con dos herramientas: { $sections }.
note-tandem-last-pass = { $section } tiene una última pasada aparte. Las dos herramientas del tándem no lo cortan: { $why }.
asked-ra = Ra { $ra }
asked-tolerance = una tolerancia de { $width } { -mm }
asked-both = una tolerancia de { $width } { -mm } con Ra { $ra }
progress-confidence = buscando un plan que cumpla en { $share } de las piezas simuladas
plan-confidence-range = se pide una parte de las piezas, { $range }: escribir 0.95 para 95 de 100 piezas
measure-support = { $reading }. `spanhold fit` convierte estas lecturas en una rigidez y su dispersión
measure-centre = Presionar una barra de prueba con el punto, cargarla lateralmente junto al punto y leer ahí un reloj comparador: la carga dividida por la flexión, descontada la flexión de la barra, es su rigidez
measure-sleeve = Cargar lateralmente una barra de prueba dentro del contrahusillo junto a un apoyo y leer ahí un reloj comparador
measure-kc = Hacer un corte de prueba lo bastante profundo para leer la potencia del husillo principal con él y sin él. La diferencia dividida por la sección de viruta y la velocidad de corte es kc para el espesor de viruta h de ese corte. Escribir kc por h (en mm) elevado a mc como kc11 de un material propio
measure-passive = Tornear dos veces un extremo libre con la misma profundidad, junto a la pinza y lejos de ella. Los diámetros difieren en el doble de la fuerza pasiva dividida por la rigidez en ese lugar
measure-e = Poner la barra sobre dos apoyos, cargarla en el centro y leer ahí un reloj comparador. Medir el diámetro con { $fine } { -mm } de exactitud: E se obtiene de la flexión
measure-damping = Dar un golpe ligero a la barra agarrada, registrar la vibración y contar las oscilaciones n hasta que se reduzca a la mitad: el coeficiente de amortiguamiento es 0,11 / n
measure-ra = Medir el Ra de una pieza torneada. Dividirlo por avance² / (32 × radio de punta) y escribir el resultado como cutting.ra_factor
measure-straightness = Tornear algunas piezas, hacer rodar cada una sobre dos apoyos y leer un reloj comparador en el centro. La rectitud es la mitad de la lectura media, dividida por el cuadrado de la distancia entre los apoyos en metros
measure-bar = Medir las barras del lote en ambos extremos y escribir su tolerancia o scatter.bar
measure-run-out = Apretar un pasador rectificado en la pinza, girarlo y leer un reloj comparador. Escribir la lectura como run_out de la pinza
sampled-no-plan-help = primero hace falta un plan; ver qué lo impide
sampled-no-part = no hay una pieza simulada con este número
sampled-no-part-help = indicar un número de 1 a { $samples }
recheck-holds = Cumple en { $good } de 100 piezas simuladas.
recheck-holds-told = Cumple en { $good } de 100 piezas simuladas; el plan dice { $told }.
recheck-at-risk = EN RIESGO: solo cumple en { $good } de 100 piezas simuladas.
recheck-at-risk-told = EN RIESGO: solo cumple en { $good } de 100 piezas simuladas; el plan dice { $told }.
measure-counter-spindle = Agarrar una barra de prueba cuyo diámetro sujete una de las pinzas, cargarla junto a la nariz y leer ahí un reloj comparador. `spanhold fit` convierte estas lecturas en una rigidez y su dispersión
