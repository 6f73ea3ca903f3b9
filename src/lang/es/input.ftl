# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }, línea { $line }, columna { $column }
diag-place-of-key = { $file }, línea { $line }, columna { $column }, { $key }

errors-more = { $count ->
    [one] no se muestra { $count } error más
   *[other] no se muestran { $count } errores más
}
errors-more-help = Corregir primero los errores de arriba
did-you-mean = ¿Se refiere a `{ $near }`?
defect-of-reader = Un error de este programa detiene la lectura del archivo
defect-of-reader-help = Se ruega notificarlo

# Kinds of values.
kind-nothing = un valor vacío
kind-flag = true o false
kind-number = un número
kind-text = un texto
kind-list = una lista
kind-map = un grupo de claves

# The text as YAML.
yaml-empty = El archivo está vacío
yaml-empty-help = Empezar con el trabajo que muestra `spanhold new`
yaml-nested = Los valores están anidados a demasiada profundidad
yaml-nested-help = Usar como máximo ocho niveles
yaml-anchors = No se admiten anclas ni alias (`&`, `*`)
yaml-anchors-help = Escribir los valores completos. Poner entre comillas el texto que empieza por & o *
yaml-documents = El archivo tiene más de un documento
yaml-documents-help = Escribir un trabajo por archivo. Quitar las líneas `---`
yaml-values = El archivo tiene más valores de los que puede tener un trabajo
yaml-values-help = Escribir como máximo 1000 tramos y 1000 elementos
yaml-tags = No se admiten etiquetas (`!`)
yaml-tags-help = Quitar la etiqueta. Poner entre comillas el texto que empieza por `!`
yaml-merge-keys = No se admiten claves de fusión (`<<`)
yaml-merge-keys-help = Escribir las claves completas
yaml-invalid = Esto no es YAML válido: { $reason }
yaml-invalid-help = Comprobar los corchetes, los dos puntos, las comillas y la sangría aquí y en las líneas anteriores

# Keys.
keys-needed = Aquí hacen falta claves con valores, pero hay { $kind }
keys-needed-help = Escribir `key: value`. Las claves son: { $keys }
key-twice = `{ $key }` aparece dos veces
key-twice-help = Quitar una de las dos. La primera está en la línea { $line }
key-unknown = Clave desconocida `{ $key }`
key-unknown-help = Usar una de estas claves: { $keys }
key-is-of-planning = Escribirlo dentro de `planning`: `planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` no es una clave
key-is-decimal-help = Escribir los decimales con punto: `{ $meant }`
key-not-text = Una clave debe ser un texto, pero hay { $kind }
key-missing = Falta `{ $key }`
key-missing-help = Añadir `{ $key }`: { $hint }
value-missing = `{ $key }` no tiene valor
value-missing-help = Escribir un valor, o quitar la clave

# Numbers.
number-too-small = { $value } es demasiado pequeño
number-too-large = { $value } es demasiado grande
number-not-finite = No es un número finito
number-range = Escribir un número de { $low } a { $high } ({ $meaning })
number-range-in-unit = Escribir un número de { $low } a { $high }, en { $unit } ({ $meaning })
number-needed = Aquí hace falta un número, pero hay { $kind }
number-not-whole = { $value } no es un número entero
number-not-whole-help = Escribir un número entero ({ $meaning })
number-not-decimal = `{ $value }` no es un número decimal
number-write = Escribir { $value }
number-in-quotes = Las comillas hacen de { $value } un texto, no un número
number-in-quotes-help = Escribir { $value } sin comillas
number-unreadable = `{ $text }` no es un número
number-decimal-comma = `{ $text }` tiene coma decimal
number-has-unit = `{ $text }` tiene una unidad que no corresponde aquí
number-in-unit = Escribir una de estas unidades detrás del número: { $units }. Un número sin unidad se lee en { $own }
number-without-unit = Escribir solo el número. Este valor no tiene unidad
pair-needed = Aquí hacen falta dos números, pero hay { $kind }
pair-needed-list = Aquí hacen falta dos números, pero hay una lista de { $count }
pair-needed-help = Escribir `{ $key }: { $form }`
pair-needed-point = Escribir `{ $key }: { $form }`, con punto decimal

# Lists, texts, words.
list-too-long = `{ $key }` tiene { $count } entradas
list-too-long-help = Escribir como máximo { $most } entradas
list-needed = Aquí hace falta una lista, pero hay { $kind }
list-needed-help = Escribir una entrada por línea, cada una después de `- `, o todas las entradas entre corchetes: [..., ...]
text-needed = `{ $key }` necesita un texto, pero hay { $kind }
text-needed-help = Escribir un texto en una sola línea
text-empty = `{ $key }` está vacío
text-too-long = El texto es demasiado largo o tiene saltos de línea
text-too-long-help = Escribir como máximo { $most } caracteres en una sola línea
choice-unknown = `{ $word }` no es un valor de `{ $key }`
choice-help = Escribir uno de estos: { $words }
flag-needed = Aquí hace falta `true` o `false`, pero hay { $kind }
flag-needed-help = Escribir `{ $key }: true` o `{ $key }: false`

# Files.
file-missing = El archivo `{ $file }` no existe
file-check-path = Comprobar la ruta
file-not-permitted = No hay permiso para leer `{ $file }`
file-not-permitted-help = Comprobar los permisos del archivo
file-unreadable = No se puede leer `{ $file }`: { $reason }
file-not-utf8 = `{ $file }` no es texto UTF-8 (primer error en la línea { $line })
file-not-utf8-help = Guardar el archivo como UTF-8
file-is-folder = `{ $file }` es una carpeta
file-is-folder-help = Indicar un archivo de esta carpeta
file-too-large = `{ $file }` es mayor que { $most } MiB
file-too-large-help = Comprobar el nombre del archivo: un archivo de trabajo o de máquina tiene solo unos pocos kB

# Machine files.
machine-not-job = Esto es un archivo de máquina, no un trabajo
machine-not-job-help = Indicar un archivo de trabajo. Nombrar la máquina en el trabajo con `machine: { $file }`, o en la llamada con `JOB --machine { $file }`
machine-in-file = La máquina está en otro archivo, `{ $file }`
machine-in-file-help = Abrir también ese archivo, o escribir la máquina en el trabajo
machine-path-or-name = O escribir un nombre de `{ $file }`: { $names }
machine-path-from = La ruta parte de la carpeta de { $file }
machine-without = La máquina `{ $machine }` no tiene `{ $key }`
machine-without-holding = La máquina `{ $machine }` no tiene `{ $key }`, pero el trabajo usa `holding: { $key }`
machine-without-holding-help = Añadir `{ $key }` a la máquina, o escribir `holding: { $other }`
phase-error-alone = un error de fase necesita la rigidez torsional del contrahusillo
phase-error-alone-help = Añadir torsional_stiffness en N·m/rad, o quitar phase_error
bush-engagement = { $engagement } mm es más que la longitud de guiado del casquillo
bush-engagement-help = Escribir como máximo { $most }
spindle-farthest = { $farthest } mm no está más allá de `nearest`
spindle-farthest-help = Escribir una distancia de la cara del casquillo a la nariz de más de { $nearest }
collets-none = El contrahusillo no tiene pinzas
collets-none-help = Añadir al menos una pinza, o quitar `counter_spindle`
collets-same-name = Dos pinzas tienen el nombre `{ $name }`
collets-same-name-help = Dar a cada pinza su propio nombre
collet-range = El diámetro mayor está escrito primero
collet-range-help = Escribir primero el diámetro menor: `range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm es menos que el mayor diámetro que aprieta la pinza
collet-passes-help = Escribir al menos { $largest }
headstock-in-bush = { $nearest } mm es menos que la longitud de guiado del casquillo
headstock-in-bush-help = Escribir la distancia de la cara del casquillo a la nariz de la pinza: al menos { $land }

# Bar and cutting.
stock-too-thin = La barra de { $bar } mm es demasiado delgada: { $section } necesita { $needed } mm
stock-too-thin-help = Usar una barra de { $needed } mm o más
stock-too-short = La barra de { $bar } mm es demasiado corta para un eje
stock-too-short-help = Poner `bar_length` en { $needed } mm (eje, tronzado y refrentado) más el resto de barra, o en un valor mayor
cutting-last-pass = La última pasada de { $depth } mm es más profunda que `ap_max`
cutting-last-pass-help = Escribir como máximo { $most }
cutting-no-lag = En un tándem la herramienta de acabado debe estar detrás de la de desbaste
cutting-no-lag-help = Escribir `lag` en mm, mayor que 0. Dos herramientas en un mismo lugar son un par opuesto: `tools: opposed`
cutting-finisher-alone = `finisher` describe la herramienta de acabado de un tándem, y `tools` es { $tools }
cutting-finisher-alone-help = Escribir `tools: tandem`, o quitar `finisher`
cutting-no-speed = Falta la velocidad de corte, y el material { $material } no tiene valores habituales
cutting-no-speed-help = Añadir `vc` en m/min a `cutting`, o `vc: [low, high]` al material
material-unknown = no hay ningún material `{ $name }` en la tabla
material-near = ¿se refiere a `{ $near }`? o indicar uno propio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = por su número es { $family }, y en la tabla no hay ningún número parecido; `spanhold materials "{ $word }"` muestra este grupo; o indicar uno propio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = en la tabla no hay ningún nombre parecido; `spanhold materials` los muestra todos; o indicar uno propio: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = un acero no aleado
material-tool = un acero para herramientas
material-special = un acero rápido o para rodamientos
material-stainless = un acero inoxidable
material-heat-resistant = un acero resistente al calor
material-alloyed = un acero aleado
material-copper = cobre o una aleación de cobre
material-nickel = una aleación de níquel o cobalto
material-aluminium = aluminio o una aleación de aluminio
material-titanium = titanio o una aleación de titanio
material-vc = La velocidad mayor está escrita primero
material-vc-help = Escribir `vc: [{ $low }, { $high }]`

# Sections.
shaft-no-sections = El eje no tiene tramos
shaft-no-sections-help = Escribir al menos un tramo: `- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = Los tramos suman { $length } mm de longitud
shaft-too-long-help = Escribir las longitudes en mm. Un eje puede medir como máximo { $most } mm de largo
section-is-thread = Una pinza no puede agarrar una rosca
section-is-taper = Una pinza no puede agarrar un cono
section-is-groove = Una pinza no puede agarrar una ranura
section-is-knurl = Una pinza no puede agarrar un moleteado
section-has-flats = Una pinza no puede agarrar un tramo con caras planas
section-grip-help = Escribir `grip: false`, o hacer del cilindro liso un tramo aparte
section-no-size = El tramo no tiene diámetro
section-no-size-help = Añadir uno de estos: `diameter: 18`, `thread: M16x1.5`, `taper: [18, 22]`, o `across_flats: 17` con `sides: 6`
section-kind-size = Una ranura o un moleteado solo tiene `diameter`
section-kind-size-help = Quitar `kind`, o indicar la medida solo como `diameter`
section-two-sizes = El tramo tiene más de una forma: { $keys }
section-two-sizes-help = Conservar una de estas claves, o dividir el tramo
section-unknown = Ningún tramo tiene el nombre `{ $name }`
section-unknown-help = Escribir el `name` de un tramo, o su número contado desde el frente, de 1 a { $most }
sections-same-name = { $count } tramos tienen el nombre `{ $name }`
sections-same-name-help = Dar a cada tramo su propio nombre, o escribir el número contado desde el frente: `section: { $number }`
thread-interrupted = El avance no debe parar en una rosca
thread-interrupted-help = Quitar `interrupt` de este tramo
thread-class = `{ $class }` es una clase de tolerancia para roscas
thread-class-help = Quitar `tolerance`, y escribir la clase detrás de la rosca: `thread: { $designation }-{ $class }`
thread-by-alone = Hay un `thread_by` sin `thread`
thread-by-alone-help = Quitar `thread_by`. Dice cómo se hace una rosca
taper-same = Los dos extremos del cono tienen el mismo diámetro
taper-same-help = Escribir `diameter: { $diameter }`
sides-alone = Hay un `sides` sin `across_flats`
sides-alone-help = Escribir `across_flats: 17, sides: 6`
sides-number = { $sides } no es un número posible de caras planas
sides-number-help = Escribir 2, 4, 6 u 8
flats-too-thick = El diámetro de { $diameter } mm no es mayor que la distancia entre caras
flats-too-thick-help = Escribir un diámetro de más de { $across }
flats-beyond-corners = El diámetro de { $diameter } mm es mayor que la distancia entre vértices
flats-beyond-corners-help = Quitar `diameter`. La barra se tornea a { $corners } mm, la distancia entre vértices
flats-without-diameter = Dos caras planas necesitan el diámetro del cilindro
flats-without-diameter-help = Añadir `diameter`
tolerance-order = La primera desviación no es menor que la segunda
tolerance-order-help = Escribir `tolerance: [lower, upper]`, por ejemplo `[-0.05, 0]`
tolerance-one-number = Una tolerancia necesita dos desviaciones, no un solo número
tolerance-one-number-help = Escribir las dos desviaciones, por ejemplo `tolerance: [-0.05, 0.05]` o `tolerance: ±0.05`

# Features.
feature-kind = Un elemento necesita un tipo
feature-kind-help = Escribir primero una de estas claves: { $kinds }. Ejemplos: `{"{"}cross_hole: 5, at: 120{"}"}`, `{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` no es una clave de `{ $kind }`
place-beyond-shaft = El elemento va de { $from } a { $to } mm, más allá del eje
place-beyond-shaft-help = Escribir las distancias en mm desde la cara frontal. El eje termina a { $length } mm
hole-too-wide = El agujero no es menor que el eje, que tiene { $diameter } mm de grueso a { $at } mm
hole-too-wide-help = Usar un agujero menor, u otro lugar
keyseat-backwards = El chavetero va de { $from } a { $to } mm
keyseat-backwards-help = Escribir un `to` mayor que `from`
keyseat-too-wide = El chavetero tiene { $width } mm de anchura, pero el eje solo tiene ahí { $diameter } mm de grueso
keyseat-too-wide-help = Escribir `keyseat: [width, depth]` en mm, con una anchura menor que el diámetro
keyseat-too-deep = El chavetero tiene { $depth } mm de profundidad, pero el eje solo tiene ahí { $diameter } mm de grueso
keyseat-too-deep-help = Escribir `keyseat: [width, depth]` en mm, con una profundidad menor que la mitad del diámetro
centre-hole-too-wide = El agujero de centrado { $hole } tiene { $mouth } mm de anchura, pero la cara solo tiene { $face } mm
centre-hole-too-wide-help = Usar un agujero de centrado menor
work-too-deep = Una profundidad de { $depth } mm es más que la longitud del eje, { $length } mm
work-too-deep-help = Escribir la profundidad en mm desde la cara del extremo
work-too-wide = El eje solo tiene ahí { $diameter } mm de grueso, pero esto necesita más de { $size } mm
work-too-wide-help = Usar una medida menor o una profundidad menor
thread-deeper-than-hole = El agujero de { $hole } mm no es tan profundo como la rosca
thread-deeper-than-hole-help = Escribir al menos { $least }, o quitar `drill_depth`
tapped-hole-where = Un agujero roscado necesita un lugar transversal en el eje (`at`) o una profundidad en un extremo (`depth`)
tapped-hole-where-help = Escribir `{"{"}tapped_hole: M4, at: 60{"}"}` o `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}`
socket-punched-step = Un hexágono interior punzonado no tiene `step`
socket-punched-step-help = Quitar `step`, o escribir `forming: shave`
engraving-too-long = El texto es demasiado largo para un grabado
engraving-too-long-help = Escribir como máximo { $most } letras
engraving-beyond-face = El texto necesita { $needed } mm, pero la cara solo tiene { $diameter } mm de anchura
engraving-beyond-face-help = Usar letras más pequeñas o un texto más corto
engraving-where = Un grabado necesita un lugar a lo largo del eje (`at`) o una cara (`end`)
engraving-where-help = Escribir `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` o `{"{"}engrave: 42, height: 2, end: front{"}"}`
engraving-on-two = El texto de { $from } a { $to } mm no está sobre un solo cilindro o una sola cara plana
engraving-on-two-help = Mover el texto, o usar letras más pequeñas
engraving-too-high = Las letras de { $height } mm son más altas que la superficie
engraving-too-high-help = Escribir como máximo { $most }
keyway-without-hole = El chavetero interior necesita un agujero axial en el mismo extremo, lo bastante profundo y ancho
keyway-without-hole-help = Añadir `{"{"}axial_hole: 12, depth: { $depth }{"}"}` en este extremo, con un diámetro de más de { $width }
keyway-no-wall = El chavetero interior no deja pared: llega a { $reach } mm del eje de giro
keyway-no-wall-help = Usar un agujero o un chavetero interior menor. La superficie de la pieza está a { $most } mm del eje de giro

# Families and wishes.
vary-nothing = `vary` está vacío
vary-nothing-help = Escribir `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`, `diameter`, o ambos
vary-too-many = `vary` da { $parts } piezas
vary-too-many-help = Usar un `step` mayor. Como máximo son posibles { $most } piezas
vary-backwards = El intervalo va de { $from } a { $to } mm
vary-backwards-help = Escribir un `to` que no sea menor que `from`
vary-no-diameter = { $section } no tiene un diámetro liso que pueda variar
vary-no-diameter-help = Variar la longitud. El diámetro de una rosca, de un cono o de caras planas no puede variar
wish-too-few = Un máximo de { $most } es muy poco: `hand_over_at` pide { $wished }
wish-too-few-help = Escribir al menos { $wished }, o quitar transferencias de `hand_over_at`
wish-twice = La transferencia a { $at } mm aparece dos veces
wish-twice-help = Quitar una de las dos
wish-off-shaft = Una transferencia a { $at } mm no está sobre el eje
wish-off-shaft-help = Escribir una longitud torneada entre 0 y { $length } mm
wish-nose = A { $nose } mm el eje todavía no está torneado
wish-nose-help = Escribir como máximo { $most }. El contrahusillo solo agarra superficies acabadas
wish-backwards = La longitud va de { $from } a { $to } mm
wish-backwards-help = Escribir primero el extremo frontal: `[120, 140]`
wish-section-help = Escribir el nombre o el número (de 1 a { $most }) de un tramo, o dos lugares: `[120, 140]`

# Readings.
set-ups-empty-help = Añadir al menos un montaje con una lectura
set-up-unnamed = montaje { $number }
set-up-no-reading = El montaje no tiene lectura
set-up-no-reading-help = Añadir `dial`, una lista de {"{"}load, at, deflection{"}"}, o `frequency`, de un ensayo de golpe
set-up-bar-too-thick = Una barra de { $bar } mm es demasiado gruesa: `{ $key }` admite como máximo { $most } mm
set-up-bar-too-thick-help = Comprobar que `diameter` y `machine` son los de la medición
set-up-holding-help = Añadir `{ $key }` a la máquina, o escribir el `holding` de la medición
set-up-headstock = El lugar del cabezal no se usa sin el casquillo guía
set-up-headstock-help = Quitar `headstock`. Sin el casquillo, las distancias empiezan en la nariz de la pinza del cabezal
set-up-out-of-travel = { $at } mm desde la cara del casquillo está fuera del recorrido de `{ $machine }`
set-up-out-of-travel-help = Escribir una distancia de { $nearest } a { $farthest } mm
set-up-collet-alone = Hay un `collet` sin `grip`
set-up-collet-alone-help = Añadir `grip`, la distancia de la cara del casquillo a la nariz del contrahusillo, o quitar `collet`
set-up-no-spindle-help = Quitar `grip`
set-up-collet-size = La pinza `{ $collet }` no aprieta una barra de { $bar } mm
set-up-collet-unknown = Ninguna pinza tiene el nombre `{ $collet }`
set-up-no-collet = Ninguna pinza de la máquina aprieta una barra de { $bar } mm
set-up-no-collet-help = Añadir a la máquina la pinza de la medición, o medir con otra barra. Las pinzas son { $collets }
set-up-collet-which = Más de una pinza aprieta una barra de { $bar } mm
set-up-collet-which-help = Escribir `collet: "{ $first }"`, u otra de { $collets }
set-up-bar-in-collet = La barra termina a { $front } mm de la cara del casquillo, dentro de la pinza
set-up-bar-in-collet-help = Poner `front` al menos en { $least }: la pinza { $collet } debe estar llena
fit-not-on-machine-help = Quitarlo de `fit`, o añadirlo a la máquina
fit-twice-help = Quitar uno de los dos
reading-beyond-bar = Este lugar está más allá del extremo frontal de la barra
reading-in-spindle = Este lugar está dentro del contrahusillo
reading-in-headstock = Este lugar está dentro de la pinza del cabezal
reading-in-bush = Este lugar está dentro del casquillo
reading-behind-headstock = Este lugar está dentro de la pinza del cabezal o detrás de ella
reading-place-help = Escribir la distancia desde la cara del casquillo (sin casquillo: desde la nariz del cabezal), negativa detrás de la cara
reading-no-deflection = La flexión en la carga no es mayor que 0
reading-no-deflection-help = Escribir la flexión en el sentido de la carga, en µm, como número positivo

# Edits of a text.
edit-impossible = Este valor no se puede editar aquí
edit-refused = Esta edición cambiaría más que este valor
edit-help = Editar el texto del archivo

# What the reader assumed: notes of a plan.
note-speed-unusual = La velocidad de corte de { $speed } { -m-min } está fuera de lo habitual para { $material }, de { $low } a { $high } { -m-min }.
note-speed-assumed = No se indica velocidad de corte. Se suponen { $speed } { -m-min }, el centro de lo habitual para { $material } (de { $low } a { $high } { -m-min }).
note-straightness-of-bar = No se indica la rectitud del eje torneado. Se supone una curvatura de { $bow } { -mm } por { -m }, según la barra (stock.kind: { $kind }).
note-straightness = No se indica la rectitud del eje torneado. Se supone una curvatura de { $bow } { -mm } por { -m }.
note-cutting-force = Fuerza de corte de { $material }: kc1.1 { $kc11 } N/mm², mc { $mc }. Fuente: { $source }. Confianza: { $confidence }.
note-wishes = El plan cumple estos deseos: { $wishes }.
note-not-turned = El tramo { $section } tiene el diámetro de la barra y no se tornea. Su tolerancia { $label } permite { $needed }, pero la tolerancia de la barra { $bar } da { $found }. Usar una barra más gruesa para tornearlo, o pedir la barra con esta tolerancia.
note-not-turned-unknown = El tramo { $section } tiene el diámetro de la barra y no se tornea. Su tolerancia { $label } permite { $needed }, pero no se indica la tolerancia de la barra. Usar una barra más gruesa para tornearlo, o pedir la barra con esta tolerancia.
note-family = El trabajo varía { $ranges }. Este plan usa los valores de los tramos. `spanhold batch` planifica todo el intervalo.
note-part-of-family = Una pieza de una familia: { $sizes }.

# A centre in the front face.
centre-not-there = `hold: centre` necesita un punto, y la máquina { $machine } no lo tiene
centre-not-there-help = Escribir `centre: {"{"}force: 300, stiffness: 40{"}"}` dentro de `counter_spindle` en el archivo de máquina, con los números de la máquina propia, o escribir `hold: collet`
centre-no-counter-spindle-help = Elegir una máquina con un contrahusillo que tenga `centre`, o quitar `hold`
centre-no-hole = `hold: centre` necesita un agujero de centrado en la cara frontal
centre-no-hole-help = Añadirlo dentro de `shaft.features`: `- {"{"}centre_hole: A2, end: front{"}"}`, o escribir `hold: collet`
centre-hand-over = Con `hold: centre` toda la pieza es una sola etapa, sin transferencia
centre-hand-over-help = Quitar `hand_over_at`, o escribir `hold: collet`
centre-too-short = El punto sobresale { $out } mm, y el contrahusillo no se acerca al casquillo a menos de { $nearest } mm, así que no llega a la cara frontal
centre-too-short-help = Usar un punto con un `stands_out` de al menos { $least } mm, o escribir `hold: collet`

# The shop's file.
note-shop = De `{ $file }`: { $keys }
note-cutting-force-shop = Fuerza de corte de { $material } (kc1.1 { $kc11 } N/mm², mc { $mc }): valores propios del taller, de `{ $file }`
shop-machine-unknown = `{ $name }` no es una máquina de este taller
shop-machine-unknown-help = Escribir un nombre de los de `machines` arriba: { $machines }
shop-material-twice = { $name } aparece dos veces en la lista
shop-material-twice-help = Quitar una de las entradas
shop-no-bar-of = `{ $file }` no tiene barra de { $material }
shop-no-bar-of-help = Indicar la barra en el trabajo, por ejemplo `stock: {"{"}diameter: 20{"}"}`, o añadirla a `bars`. Hay barras de { $grades }
shop-no-bar = Ninguna barra de { $material } en `{ $file }` sirve para este eje: necesita Ø{ $needed } o más
shop-no-bar-help = Hay { $sizes }, y { $machine } debe admitir la barra. Indicar la barra en el trabajo, por ejemplo `stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = No se conoce ninguna pinza para el contrahusillo de { $machine }: no la tiene su archivo ni `{ $file }`
shop-no-collet-help = Escribir `collets` en el archivo de máquina, o pinzas para esta máquina en el archivo del taller

# The tool list.
tools-number = { $number ->
    [one] { $number } herramienta
   *[other] { $number } herramientas
}
tool-twice = El nombre { $name } aparece dos veces
tool-twice-help = Dar a cada herramienta su propio nombre
tool-key-unused = Una herramienta del tipo `{ $kind }` no tiene `{ $key }`
tool-key-unused-help = Quitar `{ $key }`, o escribir otro `kind`
tool-materials-help = Escribir el nombre de un material y sus cortes, por ejemplo `C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = Un extremo tiene un chaflán y un radio
edge-both-help = Escribir uno de los dos para cada extremo
edge-too-long = Los chaflanes o radios de { $section } ocupan toda su longitud de { $length } mm
edge-no-step = { $section } no tiene ahí una arista libre: el tramo contiguo es igual de grueso o más
edge-too-large = { $size } mm es más que el escalón de { $step } mm en { $section }
edge-help = Un chaflán corresponde a una arista libre, y no es mayor que el escalón. Indicar el extremo: `chamfer: {"{"}front: 1, rear: 0.5{"}"}`. Un solo número es el extremo frontal
turned-alone = `{ $key }` necesita `grind`
turned-alone-help = Escribir la sobremedida que se rectifica después, por ejemplo `grind: 0.3`, o quitar la clave
grind-cylinder = Solo un cilindro liso puede tener `grind`
grind-cylinder-help = Indicar las medidas que se tornean, y escribir el rectificado en el nombre
grind-nothing-left = torneado a Ø{ $turned } mm { $label } puede no quedar nada que rectificar
grind-nothing-left-help = Aumentar `grind` o hacer más estrecha `turned_tolerance`
bore-too-wide = El agujero de { $bore } mm no deja pared en { $section }: { $smallest } mm
bore-too-wide-help = Escribir un diámetro interior menor que { $smallest } mm, o quitar `bore` si la barra es maciza
bore-hole = El agujero de la barra es de { $bore } mm, así que no hay nada que taladrar para { $size } mm
bore-hole-help = Lo que se mecaniza en un extremo debe ser mayor que el agujero de la barra

# Designations of threads.
thread-unknown = `{ $text }` no es la designación de una rosca
thread-unknown-help = Escribirla como `M16x1.5`, `1/4-20 UNC`, `G1/4` o `Tr20x4`. Puede seguir una clase, y `LH` para una rosca a izquierdas: `M16x1.5-6g-LH`
thread-write = Escribir `{ $designation }`
thread-no-coarse = M{ $major } no tiene paso grueso en ISO 261
thread-no-coarse-help = Escribir el paso, `M{ $major }x1`, o la medida más próxima con paso grueso, `M{ $near }`
thread-too-fine = `{ $text }`: un paso de { $pitch } mm es demasiado fino
thread-too-fine-help = Escribir un paso de al menos { $least } mm
thread-too-coarse = `{ $text }`: un paso de { $pitch } mm es demasiado grueso para un diámetro de { $major } mm
thread-write-coarse = El paso grueso de M{ $major } es { $coarse } mm: escribir `M{ $major }` o un paso más fino
thread-finer = Escribir un paso más fino, como máximo { $most } mm
thread-lead = `{ $text }`: el avance de la rosca de { $lead } mm no es un número entero de pasos de { $pitch } mm
thread-lead-help = Escribir el avance de una rosca de varias entradas como 2 a { $most } pasos, aquí { $twice } mm o un múltiplo, y el paso entre paréntesis
thread-no-pitch = `{ $text }`: una rosca trapecial necesita su paso
thread-no-pipe-size = `{ $text }`: ISO 228-1 no tiene una rosca para tubos de esta medida
thread-no-unified = `{ $text }` no está en ASME B1.1
thread-no-unified-help = ASME B1.1 tiene { $near }
thread-no-unified-special = ASME B1.1 tiene { $near }. Escribir una rosca especial como `{ $special }`
thread-tail-unknown = `{ $text }`: `{ $word }` no es una clase de tolerancia de esta rosca
thread-tail-help = Escribir por ejemplo `{ $designation }`, o `LH` para una rosca a izquierdas
thread-class-of-hole = `{ $class }` es una clase de roscas en agujeros
thread-class-of-shaft = `{ $class }` es una clase de roscas en ejes
thread-class-write = Escribir por ejemplo `{ $with }`, o sin clase: `{ $without }`
# Units of a file.
note-mixed-units = `{ $file }` tiene valores en los dos sistemas de unidades: { $values }. Cada uno se ha convertido según su propia unidad. Comprobar que cada unidad sea la prevista.
note-mixed-units-value = `{ $key }` en la línea { $line }
