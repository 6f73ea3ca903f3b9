# Drawings and tables of sections; stiffnesses from readings.

# Stiffnesses from readings.
fit-loose-bar = A set-up does not hold the bar
fit-loose-bar-help = Check `grip` and `holding`. The bar must be held at two places
fit-spindle-never-used = No set-up holds the bar in the counter-spindle, so its stiffness cannot be found
fit-undetermined = These readings are not enough for the stiffness of: { $supports }
fit-leave-out = Or write `fit: [{ $supports }]`
fit-other-bar = Measure with a thicker, shorter bar, so that the support deflects more than the bar
fit-add = Add { $reading }. This would give the stiffness of { $supports } to ± { $error } % or better
fit-add-several = Add several readings. The most useful is { $reading }, but it alone is not enough for { $supports }
fit-reading-in = a reading { $reading } (about { $expected } µm) in the set-up `{ $set_up }`
fit-reading-of-new = a set-up with `{ $key }` and a reading { $reading } (about { $expected } µm)
fit-load-free = Hold a test bar Ø{ $bar } with the headstock nose { $headstock } { -mm } behind the bush face and { $front } { -mm } of bar in front of it. Load it with { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] behind
   *[no] in front of
} the bush face, and read a dial there (about { $expected } { -um })
fit-load-gripped = Hold a test bar Ø{ $bar } with the headstock nose { $headstock } { -mm } behind the bush face, and grip it with the counter-spindle { $nose } { -mm } in front of the bush face. Load it with { $load } { -n }, { $at } { -mm } { $behind ->
    [yes] behind
   *[no] in front of
} the bush face, and read a dial there (about { $expected } { -um })
fit-load-no-bush = Hold a test bar Ø{ $bar } in the headstock without the bush, { $front } { -mm } of it in front. Load it with { $load } { -n }, { $at } { -mm } in front of the nose, and read a dial there (about { $expected } { -um })
fit-load-no-bush-gripped = Hold a test bar Ø{ $bar } in the headstock without the bush, and grip it with the counter-spindle { $nose } { -mm } in front of the nose. Load it with { $load } { -n }, { $at } { -mm } in front of the nose, and read a dial there (about { $expected } { -um })
fit-misfit = No stiffness agrees with the readings. The largest difference is at { $reading } of { $set_up }: measured { $measured } { $unit }, calculated { $fitted } { $unit }
fit-misfit-help = Check its place and units (N, mm, µm, Hz). Preload the bar against play. If the reading is right, write larger `errors`
fit-dial-reading = dial reading { $number }
fit-tap = tap test
fit-note-no-spare = There are as many readings as stiffnesses, so the result cannot be checked. Add readings.
fit-note-misfit = The readings differ from the result { $times } times more than their errors allow. The standard errors are made larger by this factor. Check for play, a slipping clamp or a wrong place.
fit-note-fixed = Not fitted, taken from the machine file: { $supports }.
fit-note-sleeves = The supports in the counter-spindle bore have the stiffness of the machine file. They are not fitted.

# Drawings: what prevents a draft.
draft-is-dwg = `{ $file }` is a DWG file, not a DXF file
draft-is-dwg-help = Save the drawing as DXF (ASCII or binary, version R12 to 2018)
draft-not-dxf = `{ $file }` cannot be read as DXF (version { $version }): { $reason }
draft-not-dxf-help = Save the drawing as ASCII DXF of another version, R12 to 2018, and try that file
draft-reader-failed = the contents are damaged
draft-empty = `{ $file }` has no drawing in it
draft-empty-help = Check that it is a DXF file and that the shaft is in model space
draft-damaged = `{ $file }` is damaged: { $read } of { $there } { $kind } entities can be read
draft-damaged-help = Open the file in the CAD program, repair it, and save it again
draft-unknown-file = The type of `{ $file }` is unknown
draft-unknown-file-help = Give a drawing (.dxf) or a table (.csv, .xlsx)
draft-sections = `{ $file }` gives { $sections ->
    [one] { $sections } section
   *[other] { $sections } sections
}
draft-sections-help = A shaft has 1 to { $most } sections
draft-no-job = The draft of `{ $file }` cannot be planned as a job
draft-no-job-help = Correct the errors below. Their places are in the text of the draft
draft-no-contour = The drawing has no line for a contour
draft-no-contour-help = Draw the contour with continuous lines, not on layers for dimensions, frames, hatches or texts
draft-no-axis = No axis is found: there is no centre line, no symmetry and no straight side of a half contour
draft-no-axis-help = Draw the axis along the whole shaft as a line on a layer CENTER, or with the line type CENTER
draft-open-contour = The contour is open between { $from } and { $to }
draft-open-contour-help = Close the contour in the drawing, or use a larger `--gap`. Gaps of up to { $gap } mm are closed now
draft-no-profile = No line of the contour is along the axis
draft-no-profile-help = Check that the axis in the drawing is the axis of the shaft

# Drawings: what was found and assumed.
draft-axis-is-line = The axis is the centre line from { $from } to { $to } on layer `{ $layer }`.
draft-axis-is-symmetry-level = There is no centre line. The axis is the horizontal line of symmetry through { $through }.
draft-axis-is-symmetry-upright = There is no centre line. The axis is the vertical line of symmetry through { $through }.
draft-axis-is-side = CHECK: There is no centre line and no symmetry. The drawing is read as half a shaft: its axis is the straight side at { $axis } = { $at }, and the diameters are twice the distance from it.
draft-axis-through-ends = CHECK: There is no centre line and no symmetry. The drawing is read as half a shaft: its axis is the line through its open ends { $from } and { $to }.
draft-halves-differ = CHECK: The two halves of the contour differ, first at { $at }: diameter { $used } on one side, { $other } on the other side. The first is used.
draft-front-left = CHECK: The front end (first out of the guide bush) is the left end, at { $at }. Call with `--flip` if it is the right end.
draft-front-right = CHECK: The front end (first out of the guide bush) is the right end, at { $at }. Call without `--flip` if it is the left end.
draft-front-lower = CHECK: The front end (first out of the guide bush) is the lower end, at { $at }. Call with `--flip` if it is the upper end.
draft-front-upper = CHECK: The front end (first out of the guide bush) is the upper end, at { $at }. Call without `--flip` if it is the lower end.
draft-unit = The unit of the drawing is { $unit }: 1 is { $mm } mm.
draft-unit-of-call = The unit in the drawing is { $unit }, but the call says { $used }. The drawing is read in { $used }.
draft-no-unit = CHECK: The drawing has no unit. It is read in mm. If the unit is inches, call with `--units inch`.
draft-no-unit-but-metric = CHECK: The drawing has no unit, but it is marked as metric. It is read in mm. If the unit is inches, call with `--units inch`.
unit-inches = inches
draft-scale = CHECK: The dimensions are { $factor } times the drawn lengths. The drawing is read at the scale { $scale }. If it is drawn at 1:1, call with `--scale 1`.
draft-factor-of-new = CHECK: The drawing has no dimensions, but its setting for new dimensions is { $factor } times the drawn lengths. The job has the drawn lengths. If the drawing is at 1:2, call with `--scale 0.5`.
draft-other-factor = CHECK: { $count ->
    [one] { $count } dimension is
   *[other] { $count } dimensions are
} { $factor } times the drawn length, the first at { $at }. Most dimensions are { $used } times the drawn length. The job follows most dimensions. If this is wrong, call with `--scale`.
draft-arc = CHECK: The arc of radius { $radius } mm at { $at } becomes a straight taper in the job.
section-with-radius = with radius { $radius } mm
section-with-chamfer = with chamfer { $chamfer }
section-from-arc = CHECK: arc of radius { $radius } mm in the drawing
draft-needs-tolerance = CHECK: Section { $section } (diameter { $diameter } mm) is too thin for a general tolerance. Add `tolerance`.
draft-inside = INSIDE THE CONTOUR, not used (edges, holes, threads, keyseats): { $count } { $kind } on layer `{ $layer }`, the first at { $at }.
draft-beside = NOT PART OF THE CONTOUR: { $count } { $kind } on layer `{ $layer }`, the first at { $at }.
draft-beside-near = CHECK: One of these ends { $distance } mm from the contour, at { $at }. If it belongs to the contour, use a larger `--gap`.
draft-not-read = NOT READ: { $count } { $kind } on layer `{ $layer }`, the first at { $at }: { $why }.
draft-not-understood = NOT UNDERSTOOD: { $entity } `{ $text }` on layer `{ $layer }` at { $at }: { $why }.

# Why an entity is not read.
entity-unknown = this kind of entity is not supported
entity-hidden = it is hidden
entity-squeezed = it is tilted or scaled unevenly
entity-squeezed-arc = this arc is scaled unevenly
entity-mesh = it is a mesh
entity-at-angle = it is tilted
entity-not-finite = its numbers are not finite
entity-too-many = there are too many lines
entity-circle = it is a full circle
entity-no-block = its block is missing in the drawing
entity-nested = its blocks are nested too deeply
entity-copies = there are more than 100 copies

# Texts and dimensions of a drawing.
label-no-size = it has no size with a tolerance, thread or roughness
label-at-no-surface = it is not at the surface of a section
label-no-roughness = a knurl or flats cannot have a roughness
label-second = the section has another value already
label-given = Section { $section }, { $length } mm long, gets { $values } from the drawing.
label-unknown-word = `{ $word }` is unknown
label-other-size = the text says { $text }, but { $drawn } mm are drawn; the job has the drawn size
label-length-tolerance = a tolerance of a length cannot be given in a job
label-no-diameter = it has no diameter
label-no-section = no plain section has the diameter { $diameter } mm
label-several-sections = it fits several sections and is used for none
title-material = material
title-drawing = drawing number
title-revision = revision
title-taken = From the drawing: { $field } { $value }.
title-several = CHECK: The drawing has more than one { $field }: { $values }. None is used.
title-material-unknown = CHECK: The material { $material } of the drawing is not in the table of materials. The job has a placeholder. Call with `--material` to set one.

# The text of a draft.
draft-head = Drafted from { $file }. Check every line against the drawing before you plan with this job.
draft-head-lengths = Lengths are in mm. The sections begin at the front face: the end that leaves the guide bush first.
draft-head-notes = What was found, assumed and not understood:
draft-placeholder-material = PLACEHOLDER: no known material in the drawing
draft-placeholder-bar = PLACEHOLDER: the next common bar size; `--stock` sets another
draft-placeholder-machine = PLACEHOLDER: an example machine. Name the file of your machine: `machine: my-machine.yaml`, or draft with `--machine my-machine.yaml`.
draft-placeholder-cutting = PLACEHOLDER: common values. Set your own.
draft-straightness = bow of the finished shaft, mm per m: measure yours
draft-default-speed = m/min; default: middle of the usual range for the material
draft-default-feed = mm/rev; default: from the roughness, at most 0.15

# Tables of sections.
table-not-utf8 = `{ $file }` is not UTF-8 text
table-not-utf8-help = Save the table as CSV in UTF-8
table-not-csv = `{ $file }` cannot be read as CSV: { $reason }
table-too-long = `{ $file }` has too many rows
table-empty = `{ $file }` is empty
table-form = Write the headings in the first row: length (mm), diameter (mm), and if needed rear diameter (mm), kind, thread, tolerance, Ra (µm), name, across flats (mm), sides. Write one row for each section, from the front
table-cell = { $file }, row { $row }, column { $column }: { $what }
table-row = { $file }, row { $row }: { $what }
table-heading = { $file }, row { $row }, column { $column }, `{ $heading }`: { $what }
table-heading-missing = { $file }, row { $row }: the heading `{ $heading }` is missing
table-heading-unknown = unknown heading
table-heading-twice = this column is given twice
table-heading-twice-help = Remove one of them
table-heading-unit = unknown unit
table-heading-unit-help = Use one of these units: { $units }
table-heading-no-unit-help = Remove the unit. This column has none
table-tolerance-in-inches = CHECK: The deviations in column { $column } (`{ $heading }`) are read in inches, as the sizes in the table. If they are in mm, write `tolerance (mm)` in the heading.
table-roughness-unit = the unit is missing in a table in inches
table-roughness-unit-help = Write `Ra (µin)` or `Ra (µm)` in the heading. Ra 16 µin is 0.4 µm
table-number = `{ $text }` is not a positive number
table-number-help = Write the number alone with the unit in the heading, `length (mm)`, or write the unit after the number, `1 in`
table-no-length = the length is missing
table-no-length-help = Write a length for every section
table-thread-size = { $thread } has a diameter of { $major } mm, not { $given } mm
table-thread-size-help = Remove the diameter of the thread
table-flats = the number of flats is missing
table-flats-help = Write 2, 4, 6 or 8 under `sides`
table-kind-needs = sizes of the { $kind } are missing
table-no-kind = the row must be one of cylinder, taper, thread or flats
table-no-kind-help = Write diameter and rear diameter for a taper, the designation for a thread, across flats and sides for flats, and a diameter for all others
table-tolerance-unit = the unit of `{ $text }` is missing in a table that is not in mm
table-tolerance-unit-help = Write `tolerance (mm)` in the heading
table-tolerance = `{ $text }` is not a tolerance
table-tolerance-help = Write a class such as h6, or ±0.1, or +0.02/-0.01 in mm
table-kind = `{ $text }` is not a kind of section

# Workbooks.
workbook-sheet-used = CHECK: The sections are from the sheet `{ $sheet }`. The workbook has { $sheets } sheets. Call with `--sheet` to use another.
workbook-cells-beyond = NOT READ: { $cells } cells beyond row { $row } or column { $column } of the sheet.
workbook-unreadable = `{ $file }` cannot be read as a workbook: { $reason }
workbook-unreadable-help = Save it as .xlsx, or as .csv in UTF-8
workbook-too-large = `{ $file }` is too large for a workbook: { $reason }
workbook-too-large-help = Save the sheet of the sections alone, as .xlsx or .csv
workbook-parts = it has { $parts } parts, and at most { $most } are read
workbook-unpacked = it unpacks to more than { $part } MiB in one part or { $all } MiB in all parts
workbook-cells = it has { $cells } cells, and at most { $most } are read
workbook-repeats = the number of a repeated row or column is not a whole number
workbook-no-sheet = `{ $file }` has no sheet `{ $sheet }`
workbook-no-sheet-help = Use one of these sheets: { $sheets }
workbook-no-sheets = `{ $file }` has no sheets
