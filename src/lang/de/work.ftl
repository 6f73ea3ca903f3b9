# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = Zentrierbohrung { $hole }
work-hole = Bohrung Ø{ $diameter }, { $depth } tief
work-hole-for-thread = { $hole }, für { $thread }
work-hole-for-socket = { $hole }, für den Innensechskant
work-hole-across-for-thread = Querbohrung Ø{ $diameter } für { $thread }
work-tap = Gewindebohren { $thread }, { $depth } tief
work-tap-across = Gewindebohren { $thread } quer
work-socket-shaved = Innensechskant { $size }, { $depth } tief, gestoßen in 6 × { $strokes } Hüben
work-socket-punched = Innensechskant { $size }, { $depth } tief, mit dem Stempel eingedrückt
work-keyway = Nabennut { $width } × { $depth }, { $length } lang, gestoßen in { $strokes } Hüben
work-keyseat = Passfedernut { $width } × { $depth }, { $from } bis { $to }
work-engraving = Gravur { $text }, { $height } hoch
work-facing = Planen, Abtrag { $depth }
work-rolling = Gewinderollen { $thread } auf { $section }
work-flats = { $sides } Schlüsselflächen, SW { $across }, auf { $section }
work-knurl = Rändeln auf { $section }
work-cross-hole = Querbohrung Ø{ $diameter }
work-front = { $work }, vorn
work-back = { $work }, hinten

## Tools

tool-turning = Drehwerkzeug
tool-roughing-of-pair = Schruppwerkzeug des Paars
tool-finishing-of-pair = Schlichtwerkzeug des Paars
tool-finishing = Schlichtwerkzeug
tool-back-turning = Rückwärtsdrehwerkzeug
tool-pitch = Steigung { $pitch }
tool-angle-pitch = { $angle }°, Steigung { $pitch }
tool-part-off = Abstechwerkzeug
tool-grooving = Einstechwerkzeug { $width }
tool-whirling = Wirbelgerät, { $cutter }
tool-threading = Gewindedrehmeißel, { $cutter }
tool-centre-drill = Zentrierbohrer { $hole }
tool-drill = Bohrer Ø{ $diameter }
tool-tap = Gewindebohrer { $thread }
tool-shaving-hexagon = Stoßwerkzeug, Sechskant { $size }
tool-shaving-keyway = Stoßwerkzeug, Nabennut { $width }
tool-punch = Stempel, Sechskant { $size }
tool-engraver = Gravierfräser
tool-facing = Planwerkzeug
tool-rolls = Gewinderollen { $thread }
tool-flats = Fräser für Schlüsselflächen
tool-knurling = Rändelwerkzeug
tool-slot = Nutenfräser { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = Übergabe bei { $at } { -mm }
wish-hand-over-nose = Übergabe bei { $at } { -mm } mit der Zangenstirn bei { $nose } { -mm }
wish-never-grip = nie spannen: { $what }
wish-at-most = { $number ->
    [one] höchstens eine Übergabe
   *[other] höchstens { $number } Übergaben
}

## Values that a standard does not have

centre-mouth = `{ $given }`: eine Zentrierbohrung { $name } ist an der Stirnfläche { $mouth } mm weit
centre-mouth-help = schreiben Sie `{ $name }`
centre-unknown = `{ $given }` ist keine Zentrierbohrung nach ISO 6411
centre-unknown-help = schreiben Sie A, B oder R und den Durchmesser der Führungsbohrung, etwa `A2.5`; Führungsbohrungen: { $pilots } (B und R ab 1)
general-too-small = { $size } mm liegt unter { $from } mm, dort nennt ISO 2768 keine Allgemeintoleranz
general-too-small-help = geben Sie eine Toleranz an: `tolerance: h6`, oder in mm `tolerance: [-0.01, 0]`
general-too-large = { $size } mm liegt jenseits der Tabelle der Allgemeintoleranzen
general-too-large-help = geben Sie eine Toleranz in mm an: `tolerance: [-0.5, 0.5]`
iso286-grade = der Toleranzgrad { $grade } steht nicht in der Tabelle
iso286-grade-help = die Toleranzgrade reichen von { $first } bis { $last }
iso286-no-class = `{ $class }` steht nicht in der Tabelle
iso286-j-help = j gibt es als j5, j6 und j7; für andere Toleranzgrade js verwenden
iso286-no-class-at = `{ $class }` steht nicht in der Tabelle für { $diameter } mm
iso286-t-help = t beginnt über 24 mm; darunter u verwenden
iso286-hole = `{ $class }` ist eine Klasse für Bohrungen
iso286-hole-help = eine Welle hat Kleinbuchstaben: `{ $class }`
iso286-unknown = `{ $class }` ist keine Toleranzklasse einer Welle
iso286-unknown-help = schreiben Sie eine Klasse nach ISO 286 mit d, e, f, g, h, j, js, k, m, n, p, r, s, t, u oder x und einem Toleranzgrad von 4 bis 13, etwa `h6`, oder Abmaße in mm: `[-0.05 mm, 0]`
engraving-letter = `{ $letter }` lässt sich nicht gravieren
engraving-letter-help = bekannt sind die Buchstaben A bis Z ohne Akzente, Ziffern, das Leerzeichen, Ø und - . , / + : ( )

## Labels of the drawing

label-knurl = Ø{ $diameter } Rändel
label-flats = SW { $size } ×{ $sides }
label-ground = geschliffen Ø{ $diameter } { $class }
label-keyway = Nabennut { $width } × { $depth }
label-hexagon = 6kt { $size } × { $depth }
label-face = Planen { $depth }
label-bore = Bohrung Ø{ $diameter }

## A family of parts.
varied-range = { $key } von { $section }, { $from } bis { $to } { -mm } in Schritten von { $step }
varied-size = { $key } von { $section } { $size } { -mm }
