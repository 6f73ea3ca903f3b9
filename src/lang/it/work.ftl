# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = foro da centro { $hole }
work-hole = foro Ø{ $diameter }, profondo { $depth }
work-hole-for-thread = { $hole } per { $thread }
work-hole-for-socket = { $hole } per l'esagono incassato
work-hole-across-for-thread = foro Ø{ $diameter } per { $thread }
work-tap = maschiatura { $thread }, profonda { $depth }
work-tap-across = maschiatura trasversale { $thread }
work-socket-shaved = esagono incassato { $size }, profondo { $depth }, stozzato in 6 × { $strokes } corse
work-socket-punched = esagono incassato { $size }, profondo { $depth }, punzonato
work-keyway = cava interna per linguetta { $width } × { $depth }, lunga { $length }, stozzata in { $strokes } corse
work-keyseat = cava per linguetta { $width } × { $depth }, da { $from } a { $to }
work-engraving = incisione { $text }, altezza { $height }
work-facing = sfacciatura di { $depth }
work-rolling = rullatura di { $thread } su { $section }
work-flats = { $sides } spianature, larghezza in chiave { $across }, su { $section }
work-knurl = zigrinatura su { $section }
work-cross-hole = foro trasversale Ø{ $diameter }
work-front = { $work }, lato anteriore
work-back = { $work }, lato posteriore

## Tools

tool-turning = utensile per tornire
tool-roughing-of-pair = utensile contrapposto di sgrossatura
tool-finishing-of-pair = utensile contrapposto di finitura
tool-finishing = utensile di finitura
tool-back-turning = utensile per tornitura posteriore
tool-pitch = passo { $pitch }
tool-angle-pitch = { $angle }°, passo { $pitch }
tool-part-off = utensile per troncare
tool-grooving = utensile per gole { $width }
tool-whirling = gruppo di turbinatura, { $cutter }
tool-threading = utensile per filettare, { $cutter }
tool-centre-drill = punta da centro { $hole }
tool-drill = punta Ø{ $diameter }
tool-tap = maschio { $thread }
tool-shaving-hexagon = utensile per stozzare, esagono { $size }
tool-shaving-keyway = utensile per stozzare, cava interna per linguetta { $width }
tool-punch = punzone, esagono { $size }
tool-engraver = fresa per incidere
tool-facing = utensile per sfacciare
tool-rolls = rulli per filettare { $thread }
tool-flats = fresa per spianature
tool-knurling = utensile per zigrinare
tool-slot = fresa per cave { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = presa del contromandrino a { $at } { -mm }
wish-hand-over-nose = presa del contromandrino a { $at } { -mm } con il naso a { $nose } { -mm }
wish-never-grip = non serrare mai { $what }
wish-at-most = { $number ->
    [one] al massimo una presa del contromandrino
   *[other] al massimo { $number } prese del contromandrino
}

## Values that a standard does not have

centre-mouth = `{ $given }`: un foro da centro { $name } è largo { $mouth } mm sulla faccia
centre-mouth-help = scrivere `{ $name }`
centre-unknown = `{ $given }` non è un foro da centro della ISO 6411
centre-unknown-help = scrivere A, B o R e il diametro della punta, per esempio `A2.5`; diametri: { $pilots } (B e R da 1)
general-too-small = { $size } mm è sotto { $from } mm, dove la ISO 2768 non dà una tolleranza generale
general-too-small-help = indicare una tolleranza: `tolerance: h6`, oppure in mm `tolerance: [-0.01, 0]`
general-too-large = { $size } mm è oltre la tabella delle tolleranze generali
general-too-large-help = indicare una tolleranza in mm: `tolerance: [-0.5, 0.5]`
iso286-grade = il grado di tolleranza { $grade } non è nella tabella
iso286-grade-help = i gradi vanno da { $first } a { $last }
iso286-no-class = `{ $class }` non è nella tabella
iso286-j-help = j esiste come j5, j6 e j7; per gli altri gradi usare js
iso286-no-class-at = `{ $class }` non è nella tabella per { $diameter } mm
iso286-t-help = t comincia sopra 24 mm; sotto usare u
iso286-hole = `{ $class }` è una classe per fori
iso286-hole-help = un albero vuole lettere minuscole: `{ $class }`
iso286-unknown = `{ $class }` non è una classe di tolleranza di un albero
iso286-unknown-help = scrivere una classe della ISO 286 con d, e, f, g, h, j, js, k, m, n, p, r, s, t, u o x e un grado da 4 a 13, per esempio `h6`, oppure gli scostamenti in mm: `[-0.05 mm, 0]`
engraving-letter = `{ $letter }` non si può incidere
engraving-letter-help = sono note le lettere da A a Z senza accenti, le cifre, lo spazio, Ø e - . , / + : ( )

## Labels of the drawing

label-knurl = Ø{ $diameter } zigrinato
label-flats = CH { $size } ×{ $sides }
label-ground = rettificato Ø{ $diameter } { $class }
label-keyway = cava interna { $width } × { $depth }
label-hexagon = esag. { $size } × { $depth }
label-face = sfacc. { $depth }
label-bore = foro Ø{ $diameter }

## A family of parts.
varied-range = { $key } di { $section }, da { $from } a { $to } { -mm } a passi di { $step }
varied-size = { $key } di { $section } { $size } { -mm }
