# Names of works and tools, and wishes, as they stand in a plan.

## Works. Lengths are in mm.

work-centre-hole = centre hole { $hole }
work-hole = hole Ø{ $diameter }, { $depth } deep
work-hole-for-thread = { $hole } for { $thread }
work-hole-for-socket = { $hole } for the socket
work-hole-across-for-thread = hole Ø{ $diameter } for { $thread }
work-tap = tap { $thread }, { $depth } deep
work-tap-across = tap { $thread } across
work-socket-shaved = hexagon socket { $size }, { $depth } deep, shaved in 6 × { $strokes } strokes
work-socket-punched = hexagon socket { $size }, { $depth } deep, punched
work-keyway = keyway { $width } × { $depth }, { $length } long, shaved in { $strokes } strokes
work-keyseat = keyseat { $width } × { $depth }, { $from } to { $to }
work-engraving = engrave { $text }, { $height } high
work-facing = face { $depth } off
work-rolling = roll { $thread } on { $section }
work-flats = { $sides } flats, { $across } across, on { $section }
work-knurl = knurl on { $section }
work-cross-hole = cross hole Ø{ $diameter }
work-front = { $work }, front
work-back = { $work }, back

## Tools

tool-turning = turning tool
tool-roughing-of-pair = roughing tool of the pair
tool-finishing-of-pair = finishing tool of the pair
tool-finishing = finishing tool
tool-back-turning = back-turning tool
tool-pitch = pitch { $pitch }
tool-angle-pitch = { $angle }°, pitch { $pitch }
tool-part-off = part-off tool
tool-grooving = grooving tool { $width }
tool-whirling = whirling head, { $cutter }
tool-threading = threading tool, { $cutter }
tool-centre-drill = centre drill { $hole }
tool-drill = drill Ø{ $diameter }
tool-tap = tap { $thread }
tool-shaving-hexagon = shaving tool, hexagon { $size }
tool-shaving-keyway = shaving tool, keyway { $width }
tool-punch = punch, hexagon { $size }
tool-engraver = engraving cutter
tool-facing = facing tool
tool-rolls = thread rolls { $thread }
tool-flats = cutter for flats
tool-knurling = knurling tool
tool-slot = slot cutter { $width }

## Wishes, to be put after "the wish to".

wish-hand-over = hand over at { $at } { -mm }
wish-hand-over-nose = hand over at { $at } { -mm } with the nose at { $nose } { -mm }
wish-never-grip = never grip { $what }
wish-at-most = { $number ->
    [one] make at most one hand-over
   *[other] make at most { $number } hand-overs
}

## Values that a standard does not have

centre-mouth = `{ $given }`: a centre hole { $name } is { $mouth } mm wide at the face
centre-mouth-help = write `{ $name }`
centre-unknown = `{ $given }` is not a centre hole of ISO 6411
centre-unknown-help = write A, B or R and the pilot diameter, such as `A2.5`; pilots: { $pilots } (B and R from 1)
general-too-small = { $size } mm is below { $from } mm, where ISO 2768 gives no general tolerance
general-too-small-help = give a tolerance: `tolerance: h6`, or in mm `tolerance: [-0.01, 0]`
general-too-large = { $size } mm is beyond the table of general tolerances
general-too-large-help = give a tolerance in mm: `tolerance: [-0.5, 0.5]`
iso286-grade = tolerance grade { $grade } is not in the table
iso286-grade-help = grades go from { $first } to { $last }
iso286-no-class = `{ $class }` is not in the table
iso286-j-help = j exists as j5, j6 and j7; for other grades use js
iso286-no-class-at = `{ $class }` is not in the table for { $diameter } mm
iso286-t-help = t begins above 24 mm; use u below
iso286-hole = `{ $class }` is a class for holes
iso286-hole-help = a shaft takes small letters: `{ $class }`
iso286-unknown = `{ $class }` is not a tolerance class of a shaft
iso286-unknown-help = write a class of ISO 286 with d, e, f, g, h, j, js, k, m, n, p, r, s, t, u or x and a grade from 4 to 13, such as `h6`, or deviations in mm: `[-0.05 mm, 0]`
engraving-letter = `{ $letter }` cannot be engraved
engraving-letter-help = letters A to Z without accents, figures, space, Ø and - . , / + : ( ) are known

## Labels of the drawing

label-knurl = Ø{ $diameter } knurl
label-flats = AF { $size } ×{ $sides }
label-ground = ground Ø{ $diameter } { $class }
label-keyway = keyway { $width } × { $depth }
label-hexagon = hex { $size } × { $depth }
label-face = face { $depth }
label-bore = bore Ø{ $diameter }

## A family of parts.
varied-range = { $key } of { $section }, { $from } to { $to } { -mm } by { $step }
varied-size = { $key } of { $section } { $size } { -mm }
