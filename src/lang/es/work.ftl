# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = agujero de centrado { $hole }
work-hole = agujero Ø{ $diameter }, prof. { $depth }
work-hole-for-thread = { $hole } para { $thread }
work-hole-for-socket = { $hole } para hexágono
work-hole-across-for-thread = agujero Ø{ $diameter } para { $thread }
work-tap = roscado con macho { $thread }, prof. { $depth }
work-tap-across = roscado transversal con macho { $thread }
work-socket-shaved = hexágono interior { $size }, prof. { $depth }, mortajado en 6 × { $strokes } carreras
work-socket-punched = hexágono interior { $size }, prof. { $depth }, punzonado
work-keyway = chavetero interior { $width } × { $depth }, longitud { $length }, mortajado en { $strokes } carreras
work-keyseat = chavetero { $width } × { $depth }, { $from } a { $to }
work-engraving = grabado { $text }, altura { $height }
work-facing = refrentado { $depth }
work-rolling = laminado de { $thread } en { $section }
work-flats = { $sides } caras planas, entrecaras { $across }, en { $section }
work-knurl = moleteado en { $section }
work-cross-hole = agujero transv. Ø{ $diameter }
work-front = { $work }, extremo frontal
work-back = { $work }, extremo trasero

## Tools

tool-turning = herramienta de tornear
tool-roughing-of-pair = herramienta de desbaste del par
tool-finishing-of-pair = herramienta de acabado del par
tool-finishing = herramienta de acabado
tool-back-turning = herramienta de torneado inverso
tool-pitch = paso { $pitch }
tool-angle-pitch = { $angle }°, paso { $pitch }
tool-part-off = herramienta de tronzar
tool-grooving = herramienta de ranurar { $width }
tool-whirling = unidad de torbellinado, { $cutter }
tool-threading = cuchilla de roscar, { $cutter }
tool-centre-drill = broca de centrar { $hole }
tool-drill = broca Ø{ $diameter }
tool-tap = macho { $thread }
tool-shaving-hexagon = herramienta de mortajar, hexágono { $size }
tool-shaving-keyway = herramienta de mortajar, chavetero interior { $width }
tool-punch = punzón, hexágono { $size }
tool-engraver = fresa de grabar
tool-facing = herramienta de refrentar
tool-rolls = rodillos de laminar { $thread }
tool-flats = fresa para caras planas
tool-knurling = herramienta de moletear
tool-slot = fresa de ranurar { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = transferencia a { $at } { -mm }
wish-hand-over-nose = transferencia a { $at } { -mm } con la nariz a { $nose } { -mm }
wish-never-grip = nunca agarrar { $what }
wish-at-most = { $number ->
    [one] como máximo una transferencia
   *[other] como máximo { $number } transferencias
}

## Values that a standard does not have

centre-mouth = `{ $given }`: un agujero de centrado { $name } tiene { $mouth } mm de anchura en la cara
centre-mouth-help = escribir `{ $name }`
centre-unknown = `{ $given }` no es un agujero de centrado de ISO 6411
centre-unknown-help = escribir A, B o R y el diámetro piloto, por ejemplo `A2.5`; pilotos: { $pilots } (B y R desde 1)
general-too-small = { $size } mm es menos que { $from } mm, donde ISO 2768 no da tolerancia general
general-too-small-help = indicar una tolerancia: `tolerance: h6`, o en mm `tolerance: [-0.01, 0]`
general-too-large = { $size } mm está más allá de la tabla de tolerancias generales
general-too-large-help = indicar una tolerancia en mm: `tolerance: [-0.5, 0.5]`
iso286-grade = el grado de tolerancia { $grade } no está en la tabla
iso286-grade-help = los grados van de { $first } a { $last }
iso286-no-class = `{ $class }` no está en la tabla
iso286-j-help = j existe como j5, j6 y j7; para otros grados usar js
iso286-no-class-at = `{ $class }` no está en la tabla para { $diameter } mm
iso286-t-help = t empieza por encima de 24 mm; usar u por debajo
iso286-hole = `{ $class }` es una clase para agujeros
iso286-hole-help = un eje lleva letras minúsculas: `{ $class }`
iso286-unknown = `{ $class }` no es una clase de tolerancia de un eje
iso286-unknown-help = escribir una clase de ISO 286 con d, e, f, g, h, j, js, k, m, n, p, r, s, t, u o x y un grado de 4 a 13, por ejemplo `h6`, o desviaciones en mm: `[-0.05 mm, 0]`
engraving-letter = `{ $letter }` no se puede grabar
engraving-letter-help = se admiten letras de la A a la Z sin acentos, cifras, espacio, Ø y - . , / + : ( )

## Labels of the drawing

label-knurl = Ø{ $diameter } moleteado
label-flats = e/c { $size } ×{ $sides }
label-ground = rectificado Ø{ $diameter } { $class }
label-keyway = chavetero int. { $width } × { $depth }
label-hexagon = hex. { $size } × { $depth }
label-face = refrent. { $depth }
label-bore = agujero Ø{ $diameter }

## A family of parts.
varied-range = { $key } de { $section }, de { $from } a { $to } { -mm } en pasos de { $step }
varied-size = { $key } de { $section } { $size } { -mm }
