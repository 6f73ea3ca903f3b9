# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = Un montaje no sujeta la barra
fit-loose-bar-help = Comprobar `grip` y `holding`. La barra debe estar sujeta en dos lugares
fit-spindle-never-used = Ningún montaje sujeta la barra en el contrahusillo, así que no se puede hallar su rigidez
fit-undetermined = Estas lecturas no bastan para la rigidez de: { $supports }
fit-leave-out = O escribir `fit: [{ $supports }]`
fit-other-bar = Medir con una barra más gruesa y más corta, para que el apoyo ceda más que la barra
fit-add = Añadir { $reading }. Esto daría la rigidez de { $supports } con ± { $error } % o mejor
fit-add-several = Añadir varias lecturas. La más útil es { $reading }, pero ella sola no basta para { $supports }
fit-reading-in = una lectura { $reading } (aproximadamente { $expected } µm) en el montaje `{ $set_up }`
fit-reading-of-new = un montaje con `{ $key }` y una lectura { $reading } (aproximadamente { $expected } µm)
fit-load-free = Sujetar una barra de prueba Ø{ $bar } con la nariz del cabezal { $headstock } { -mm } detrás de la cara del casquillo y { $front } { -mm } de barra delante de ella. Cargarla con { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] detrás
   *[no] delante
} de la cara del casquillo, y leer ahí un reloj comparador (aproximadamente { $expected } { -um })
fit-load-gripped = Sujetar una barra de prueba Ø{ $bar } con la nariz del cabezal { $headstock } { -mm } detrás de la cara del casquillo, y agarrarla con el contrahusillo { $nose } { -mm } delante de la cara del casquillo. Cargarla con { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] detrás
   *[no] delante
} de la cara del casquillo, y leer ahí un reloj comparador (aproximadamente { $expected } { -um })
fit-load-no-bush = Sujetar una barra de prueba Ø{ $bar } en el cabezal sin el casquillo, con { $front } { -mm } de barra delante. Cargarla con { $load } { -n }, { $at } { -mm } delante de la nariz, y leer ahí un reloj comparador (aproximadamente { $expected } { -um })
fit-load-no-bush-gripped = Sujetar una barra de prueba Ø{ $bar } en el cabezal sin el casquillo, y agarrarla con el contrahusillo { $nose } { -mm } delante de la nariz. Cargarla con { $load } { -n }, { $at } { -mm } delante de la nariz, y leer ahí un reloj comparador (aproximadamente { $expected } { -um })
fit-misfit = Ninguna rigidez concuerda con las lecturas. La mayor diferencia está en { $reading } de { $set_up }: medido { $measured } { $unit }, calculado { $fitted } { $unit }
fit-misfit-help = Comprobar su lugar y sus unidades (N, mm, µm, Hz). Precargar la barra para eliminar el juego. Si la lectura es correcta, escribir `errors` mayores
fit-dial-reading = lectura de reloj comparador { $number }
fit-tap = ensayo de golpe
fit-note-no-spare = Hay tantas lecturas como rigideces, así que el resultado no se puede comprobar. Añadir lecturas.
fit-note-misfit = Las lecturas difieren del resultado { $times } veces más de lo que permiten sus errores. Los errores típicos se aumentan con este factor. Comprobar si hay juego, un apriete que resbala o un lugar equivocado.
fit-note-fixed = No ajustado, tomado del archivo de máquina: { $supports }.
fit-note-sleeves = Los apoyos en el agujero del contrahusillo tienen la rigidez del archivo de máquina. No se ajustan.

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` es un archivo DWG, no un archivo DXF
draft-is-dwg-help = Guardar el plano como DXF (ASCII o binario, versión R12 a 2018)
draft-not-dxf = `{ $file }` no se puede leer como DXF (versión { $version }): { $reason }
draft-not-dxf-help = Guardar el plano como DXF ASCII de otra versión, R12 a 2018, y probar con ese archivo
draft-reader-failed = el contenido está dañado
draft-empty = `{ $file }` no contiene ningún plano
draft-empty-help = Comprobar que es un archivo DXF y que el eje está en el espacio modelo
draft-damaged = `{ $file }` está dañado: entidades { $kind } legibles: { $read } de { $there }
draft-damaged-help = Abrir el archivo en el programa de CAD, repararlo y guardarlo de nuevo
draft-unknown-file = El tipo de `{ $file }` es desconocido
draft-unknown-file-help = Indicar un plano (.dxf) o una tabla (.csv, .xlsx)
draft-sections = `{ $file }` da { $sections ->
    [one] { $sections } tramo
   *[other] { $sections } tramos
}
draft-sections-help = Un eje tiene de 1 a { $most } tramos
draft-no-job = El borrador de `{ $file }` no se puede planificar como trabajo
draft-no-job-help = Corregir los errores de abajo. Sus lugares están en el texto del borrador
draft-no-contour = El plano no tiene ninguna línea para un contorno
draft-no-contour-help = Dibujar el contorno con líneas continuas, no en capas de cotas, marcos, rayados o textos
draft-no-axis = No se encuentra el eje de giro: no hay línea de centro, ni simetría, ni un lado recto de un medio contorno
draft-no-axis-help = Dibujar el eje de giro a lo largo de toda la pieza como línea en una capa CENTER, o con el tipo de línea CENTER
draft-open-contour = El contorno está abierto entre { $from } y { $to }
draft-open-contour-help = Cerrar el contorno en el plano, o usar un `--gap` mayor. Ahora se cierran huecos de hasta { $gap } mm
draft-no-profile = Ninguna línea del contorno sigue el eje de giro
draft-no-profile-help = Comprobar que el eje de giro del plano es el de la pieza

# Drawings: what was found and assumed.
draft-axis-is-line = El eje de giro es la línea de centro de { $from } a { $to } en la capa `{ $layer }`.
draft-axis-is-symmetry-level = No hay línea de centro. El eje de giro es la línea horizontal de simetría que pasa por { $through }.
draft-axis-is-symmetry-upright = No hay línea de centro. El eje de giro es la línea vertical de simetría que pasa por { $through }.
draft-axis-is-side = COMPROBAR: No hay línea de centro ni simetría. El plano se lee como media pieza: su eje de giro es el lado recto en { $axis } = { $at }, y los diámetros son el doble de la distancia a él.
draft-axis-through-ends = COMPROBAR: No hay línea de centro ni simetría. El plano se lee como media pieza: su eje de giro es la línea que pasa por sus extremos abiertos { $from } y { $to }.
draft-halves-differ = COMPROBAR: Las dos mitades del contorno difieren, por primera vez en { $at }: diámetro { $used } en un lado, { $other } en el otro lado. Se usa el primero.
draft-front-left = COMPROBAR: El extremo frontal (el primero que sale del casquillo guía) es el extremo izquierdo, en { $at }. Llamar con `--flip` si es el extremo derecho.
draft-front-right = COMPROBAR: El extremo frontal (el primero que sale del casquillo guía) es el extremo derecho, en { $at }. Llamar sin `--flip` si es el extremo izquierdo.
draft-front-lower = COMPROBAR: El extremo frontal (el primero que sale del casquillo guía) es el extremo inferior, en { $at }. Llamar con `--flip` si es el extremo superior.
draft-front-upper = COMPROBAR: El extremo frontal (el primero que sale del casquillo guía) es el extremo superior, en { $at }. Llamar sin `--flip` si es el extremo inferior.
draft-unit = La unidad del plano es { $unit }: 1 son { $mm } mm.
draft-unit-of-call = La unidad en el plano es { $unit }, pero la llamada dice { $used }. El plano se lee en { $used }.
draft-no-unit = COMPROBAR: El plano no tiene unidad. Se lee en mm. Si la unidad es la pulgada, llamar con `--units inch`.
draft-no-unit-but-metric = COMPROBAR: El plano no tiene unidad, pero está señalado como métrico. Se lee en mm. Si la unidad es la pulgada, llamar con `--units inch`.
unit-inches = pulgadas
draft-scale = COMPROBAR: Las cotas son { $factor } veces las longitudes dibujadas. El plano se lee a escala { $scale }. Si está dibujado a 1:1, llamar con `--scale 1`.
draft-factor-of-new = COMPROBAR: El plano no tiene cotas, pero su ajuste para cotas nuevas es { $factor } veces las longitudes dibujadas. El trabajo tiene las longitudes dibujadas. Si el plano está a 1:2, llamar con `--scale 0.5`.
draft-other-factor = COMPROBAR: { $count ->
    [one] { $count } cota es
   *[other] { $count } cotas son
} { $factor } veces la longitud dibujada, la primera en { $at }. La mayoría de las cotas son { $used } veces la longitud dibujada. El trabajo sigue a la mayoría de las cotas. Si esto es incorrecto, llamar con `--scale`.
draft-arc = COMPROBAR: El arco de radio { $radius } mm en { $at } se convierte en un cono recto en el trabajo.
section-with-radius = con radio { $radius } mm
section-with-chamfer = con chaflán { $chamfer }
section-from-arc = COMPROBAR: arco de radio { $radius } mm en el plano
draft-needs-tolerance = COMPROBAR: El tramo { $section } (diámetro { $diameter } mm) es demasiado delgado para una tolerancia general. Añadir `tolerance`.
draft-inside = DENTRO DEL CONTORNO, no se usa (aristas, agujeros, roscas, chaveteros): { $count } { $kind } en la capa `{ $layer }`, el primer elemento en { $at }.
draft-beside = NO FORMA PARTE DEL CONTORNO: { $count } { $kind } en la capa `{ $layer }`, el primer elemento en { $at }.
draft-beside-near = COMPROBAR: Uno de ellos termina a { $distance } mm del contorno, en { $at }. Si pertenece al contorno, usar un `--gap` mayor.
draft-not-read = NO LEÍDO: { $count } { $kind } en la capa `{ $layer }`, el primer elemento en { $at }: { $why }.
draft-not-understood = NO ENTENDIDO: { $entity } `{ $text }` en la capa `{ $layer }` en { $at }: { $why }.

# Why an entity is not read.
entity-unknown = este tipo de entidad no se admite
entity-hidden = está oculto
entity-squeezed = está inclinado o escalado de forma desigual
entity-squeezed-arc = este arco está escalado de forma desigual
entity-mesh = es una malla
entity-at-angle = está inclinado
entity-not-finite = sus números no son finitos
entity-too-many = hay demasiadas líneas
entity-circle = es un círculo completo
entity-no-block = su bloque falta en el plano
entity-nested = sus bloques están anidados a demasiada profundidad
entity-copies = hay más de 100 copias

# Texts and dimensions of a drawing.
label-no-size = no tiene una medida con tolerancia, rosca o rugosidad
label-at-no-surface = no está en la superficie de un tramo
label-no-roughness = un moleteado o unas caras planas no pueden tener rugosidad
label-second = el tramo ya tiene otro valor
label-given = El tramo { $section }, de { $length } mm de longitud, recibe { $values } del plano.
label-unknown-word = `{ $word }` es desconocido
label-other-size = el texto dice { $text }, pero están dibujados { $drawn } mm; el trabajo tiene la medida dibujada
label-length-tolerance = en un trabajo no se puede indicar la tolerancia de una longitud
label-no-diameter = no tiene diámetro
label-no-section = ningún tramo liso tiene el diámetro { $diameter } mm
label-several-sections = corresponde a varios tramos y no se usa para ninguno
title-material = material
title-drawing = número de plano
title-revision = revisión
title-taken = Del plano: { $field } { $value }.
title-several = COMPROBAR: El plano tiene más de un valor para «{ $field }»: { $values }. No se usa ninguno.
title-material-unknown = COMPROBAR: El material { $material } del plano no está en la tabla de materiales. El trabajo tiene un valor provisional. Llamar con `--material` para indicar uno.

# The text of a draft.
draft-head = Borrador hecho a partir de { $file }. Comprobar cada línea con el plano antes de planificar con este trabajo.
draft-head-lengths = Las longitudes están en mm. Los tramos empiezan en la cara frontal: el extremo que sale primero del casquillo guía.
draft-head-notes = Qué se encontró, se supuso y no se entendió:
draft-placeholder-material = PROVISIONAL: ningún material conocido en el plano
draft-placeholder-bar = PROVISIONAL: la siguiente medida de barra usual; `--stock` indica otra
draft-placeholder-machine = PROVISIONAL: una máquina de ejemplo. Indicar el archivo de la máquina propia: `machine: my-machine.yaml`, o hacer el borrador con `--machine my-machine.yaml`.
draft-placeholder-cutting = PROVISIONAL: valores usuales. Poner los propios.
draft-straightness = curvatura del eje acabado, mm por m: medir la propia
draft-default-speed = m/min; por defecto: centro de los valores habituales del material
draft-default-feed = mm/rev; por defecto: según la rugosidad, como máximo 0,15

# Tables of sections.
table-not-utf8 = `{ $file }` no es texto UTF-8
table-not-utf8-help = Guardar la tabla como CSV en UTF-8
table-not-csv = `{ $file }` no se puede leer como CSV: { $reason }
table-too-long = `{ $file }` tiene demasiadas filas
table-empty = `{ $file }` está vacío
table-form = Escribir los encabezados en la primera fila: length (mm), diameter (mm), y si hace falta rear diameter (mm), kind, thread, tolerance, Ra (µm), name, across flats (mm), sides. Escribir una fila por cada tramo, desde el frente
table-cell = { $file }, fila { $row }, columna { $column }: { $what }
table-row = { $file }, fila { $row }: { $what }
table-heading = { $file }, fila { $row }, columna { $column }, `{ $heading }`: { $what }
table-heading-missing = { $file }, fila { $row }: falta el encabezado `{ $heading }`
table-heading-unknown = encabezado desconocido
table-heading-twice = esta columna aparece dos veces
table-heading-twice-help = Quitar una de las dos
table-heading-unit = unidad desconocida
table-heading-unit-help = Usar una de estas unidades: { $units }
table-heading-no-unit-help = Quitar la unidad. Esta columna no tiene
table-tolerance-in-inches = COMPROBAR: Las desviaciones en la columna { $column } (`{ $heading }`) se leen en pulgadas, como las medidas de la tabla. Si están en mm, escribir `tolerance (mm)` en el encabezado.
table-roughness-unit = falta la unidad en una tabla en pulgadas
table-roughness-unit-help = Escribir `Ra (µin)` o `Ra (µm)` en el encabezado. Ra 16 µin son 0,4 µm
table-number = `{ $text }` no es un número positivo
table-number-help = Escribir solo el número con la unidad en el encabezado, `length (mm)`, o escribir la unidad después del número, `1 in`
table-no-length = falta la longitud
table-no-length-help = Escribir una longitud para cada tramo
table-thread-size = { $thread } tiene un diámetro de { $major } mm, no de { $given } mm
table-thread-size-help = Quitar el diámetro de la rosca
table-flats = falta el número de caras planas
table-flats-help = Escribir 2, 4, 6 u 8 en `sides`
table-kind-needs = faltan medidas de: { $kind }
table-no-kind = la fila debe ser de un cilindro, un cono, una rosca o unas caras planas
table-no-kind-help = Escribir diameter y rear diameter para un cono, la designación para una rosca, across flats y sides para caras planas, y un diameter para todos los demás
table-tolerance-unit = falta la unidad de `{ $text }` en una tabla que no está en mm
table-tolerance-unit-help = Escribir `tolerance (mm)` en el encabezado
table-tolerance = `{ $text }` no es una tolerancia
table-tolerance-help = Escribir una clase como h6, o ±0.1, o +0.02/-0.01 en mm
table-kind = `{ $text }` no es un tipo de tramo

# Workbooks.
workbook-sheet-used = COMPROBAR: Los tramos son de la hoja `{ $sheet }`. El libro de cálculo tiene { $sheets } hojas. Llamar con `--sheet` para usar otra.
workbook-cells-beyond = NO LEÍDO: { $cells } celdas más allá de la fila { $row } o de la columna { $column } de la hoja.
workbook-unreadable = `{ $file }` no se puede leer como libro de cálculo: { $reason }
workbook-unreadable-help = Guardarlo como .xlsx, o como .csv en UTF-8
workbook-too-large = `{ $file }` es demasiado grande para un libro de cálculo: { $reason }
workbook-too-large-help = Guardar solo la hoja de los tramos, como .xlsx o .csv
workbook-parts = tiene { $parts } partes, y se leen como máximo { $most }
workbook-unpacked = descomprimido ocupa más de { $part } MiB en una parte o { $all } MiB en todas las partes
workbook-cells = tiene { $cells } celdas, y se leen como máximo { $most }
workbook-repeats = el número de una fila o columna repetida no es un número entero
workbook-no-sheet = `{ $file }` no tiene la hoja `{ $sheet }`
workbook-no-sheet-help = Usar una de estas hojas: { $sheets }
workbook-no-sheets = `{ $file }` no tiene hojas
