# What is wrong with a job, a machine or a readings file.

# The place of an error in a file.
diag-place = { $file }, line { $line }, column { $column }
diag-place-of-key = { $file }, line { $line }, column { $column }, { $key }

errors-more = { $count ->
    [one] { $count } more error is not shown
   *[other] { $count } more errors are not shown
}
errors-more-help = Correct the errors above first
did-you-mean = Did you mean `{ $near }`?
defect-of-reader = An error in this program stops the reading of the file
defect-of-reader-help = Please report it

# Kinds of values.
kind-nothing = nothing
kind-flag = true or false
kind-number = a number
kind-text = text
kind-list = a list
kind-map = a group of keys

# The text as YAML.
yaml-empty = The file is empty
yaml-empty-help = Start from the job that `spanhold new` prints
yaml-nested = The values are nested too deeply
yaml-nested-help = Use at most eight levels
yaml-anchors = Anchors and aliases (`&`, `*`) are not supported
yaml-anchors-help = Write the values out in full. Put text that begins with & or * in quotes
yaml-documents = The file has more than one document
yaml-documents-help = Write one job per file. Remove the `---` lines
yaml-values = The file has more values than a job can have
yaml-values-help = Write at most 1000 sections and 1000 features
yaml-tags = Tags (`!`) are not supported
yaml-tags-help = Remove the tag. Put text that begins with `!` in quotes
yaml-merge-keys = Merge keys (`<<`) are not supported
yaml-merge-keys-help = Write the keys out in full
yaml-invalid = This is not valid YAML: { $reason }
yaml-invalid-help = Check the brackets, colons, quotes and indentation here and in the lines above

# Keys.
keys-needed = Keys with values are needed here, not { $kind }
keys-needed-help = Write `key: value`. The keys are: { $keys }
key-twice = `{ $key }` is given twice
key-twice-help = Remove one of them. The first one is in line { $line }
key-unknown = Unknown key `{ $key }`
key-unknown-help = Use one of these keys: { $keys }
key-is-of-planning = Write it under `planning`: `planning: {"{"}station_pitch: 5{"}"}`
key-is-decimal = `{ $key }` is not a key
key-is-decimal-help = Write decimal numbers with a point: `{ $meant }`
key-not-text = A key must be text, not { $kind }
key-missing = `{ $key }` is missing
key-missing-help = Add `{ $key }`: { $hint }
value-missing = `{ $key }` has no value
value-missing-help = Write a value, or remove the key

# Numbers.
number-too-small = { $value } is too small
number-too-large = { $value } is too large
number-not-finite = This is not a finite number
number-range = Write a number from { $low } to { $high } ({ $meaning })
number-range-in-unit = Write a number from { $low } to { $high }, in { $unit } ({ $meaning })
number-needed = A number is needed here, not { $kind }
number-not-whole = { $value } is not a whole number
number-not-whole-help = Write a whole number ({ $meaning })
number-not-decimal = `{ $value }` is not a decimal number
number-write = Write { $value }
number-in-quotes = The quotes make { $value } text, not a number
number-in-quotes-help = Write { $value } without quotes
number-unreadable = `{ $text }` is not a number
number-decimal-comma = `{ $text }` has a decimal comma
number-has-unit = `{ $text }` has a unit that does not fit here
number-in-unit = Write one of these units behind the number: { $units }. A number alone counts as { $own }
number-without-unit = Write the number alone. This value has no unit
pair-needed = Two numbers are needed here, not { $kind }
pair-needed-list = Two numbers are needed here, not a list of { $count }
pair-needed-help = Write `{ $key }: { $form }`
pair-needed-point = Write `{ $key }: { $form }`, with decimal points

# Lists, texts, words.
list-too-long = `{ $key }` has { $count } entries
list-too-long-help = Write at most { $most } entries
list-needed = A list is needed here, not { $kind }
list-needed-help = Write one entry per line, each after `- `, or all entries in brackets: [..., ...]
text-needed = `{ $key }` needs text, not { $kind }
text-needed-help = Write a text on one line
text-empty = `{ $key }` is empty
text-too-long = The text is too long or has line breaks
text-too-long-help = Write at most { $most } characters on one line
choice-unknown = `{ $word }` is not a value of `{ $key }`
choice-help = Write one of these: { $words }
flag-needed = `true` or `false` is needed here, not { $kind }
flag-needed-help = Write `{ $key }: true` or `{ $key }: false`

# Files.
file-missing = The file `{ $file }` does not exist
file-check-path = Check the path
file-not-permitted = There is no permission to read `{ $file }`
file-not-permitted-help = Check the permissions of the file
file-unreadable = `{ $file }` cannot be read: { $reason }
file-not-utf8 = `{ $file }` is not UTF-8 text (first error in line { $line })
file-not-utf8-help = Save the file as UTF-8
file-is-folder = `{ $file }` is a folder
file-is-folder-help = Name a file in this folder
file-too-large = `{ $file }` is larger than { $most } MiB
file-too-large-help = Check the file name: a job or machine file has only a few kB

# Machine files.
machine-not-job = This is a machine file, not a job
machine-not-job-help = Give a job file. Name the machine in the job with `machine: { $file }`, or in the call with `JOB --machine { $file }`
machine-in-file = The machine is in another file, `{ $file }`
machine-in-file-help = Open that file too, or write the machine into the job
machine-path-or-name = Or write a name from `{ $file }`: { $names }
machine-path-from = The path starts from the folder of { $file }
machine-without = The machine `{ $machine }` has no `{ $key }`
machine-without-holding = The machine `{ $machine }` has no `{ $key }`, but the job works with `holding: { $key }`
machine-without-holding-help = Add `{ $key }` to the machine, or write `holding: { $other }`
phase-error-alone = a phase error needs the torsional stiffness of the counter-spindle
phase-error-alone-help = Add torsional_stiffness in N·m/rad, or leave out phase_error
bush-engagement = { $engagement } mm is longer than the land of the bush
bush-engagement-help = Write at most { $most }
spindle-farthest = { $farthest } mm is not beyond `nearest`
spindle-farthest-help = Write a distance from the bush face to the nose of more than { $nearest }
collets-none = The counter-spindle has no collets
collets-none-help = Add at least one collet, or remove `counter_spindle`
collets-same-name = Two collets have the name `{ $name }`
collets-same-name-help = Give each collet its own name
collet-range = The larger diameter is written first
collet-range-help = Write the smaller diameter first: `range: [{ $smallest }, { $largest }]`
collet-passes = { $passes } mm is less than the largest diameter that the collet clamps
collet-passes-help = Write at least { $largest }
headstock-in-bush = { $nearest } mm is less than the land of the bush
headstock-in-bush-help = Write the distance from the bush face to the collet nose: at least { $land }

# Bar and cutting.
stock-too-thin = The bar of { $bar } mm is too thin: { $section } needs { $needed } mm
stock-too-thin-help = Use a bar of { $needed } mm or more
stock-too-short = The bar of { $bar } mm is too short for one shaft
stock-too-short-help = Set `bar_length` to { $needed } mm (shaft, part-off and facing) plus the remnant, or more
cutting-last-pass = The last pass of { $depth } mm is deeper than `ap_max`
cutting-last-pass-help = Write at most { $most }
cutting-no-lag = In a tandem the finishing tool must stand behind the roughing tool
cutting-no-lag-help = Write `lag` in mm, larger than 0. Two tools at one place are an opposed pair: `tools: opposed`
cutting-finisher-alone = `finisher` describes the finishing tool of a tandem, and `tools` is { $tools }
cutting-finisher-alone-help = Write `tools: tandem`, or leave `finisher` out
cutting-no-speed = The cutting speed is missing, and the material { $material } has no usual range
cutting-no-speed-help = Add `vc` in m/min to `cutting`, or `vc: [low, high]` to the material
material-unknown = no material `{ $name }` in the table
material-near = did you mean `{ $near }`? or give your own: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-far = by its number it is { $family }, and no number near it is in the table; `spanhold materials "{ $word }"` lists this group; or give your own: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-none-near = no name near it is in the table; `spanhold materials` lists all; or give your own: {"{"}name, e_gpa, density, kc11, mc, vc: [low, high]{"}"}
material-unalloyed = an unalloyed steel
material-tool = a tool steel
material-special = a high-speed or bearing steel
material-stainless = a stainless steel
material-heat-resistant = a heat-resistant steel
material-alloyed = an alloyed steel
material-copper = copper or a copper alloy
material-nickel = an alloy of nickel or cobalt
material-aluminium = aluminium or an aluminium alloy
material-titanium = titanium or a titanium alloy
material-vc = The higher speed is written first
material-vc-help = Write `vc: [{ $low }, { $high }]`

# Sections.
shaft-no-sections = The shaft has no sections
shaft-no-sections-help = Write at least one section: `- {"{"}length: 60, diameter: 12{"}"}`
shaft-too-long = The sections together are { $length } mm long
shaft-too-long-help = Write lengths in mm. A shaft can be at most { $most } mm long
section-is-thread = A collet cannot grip a thread
section-is-taper = A collet cannot grip a taper
section-is-groove = A collet cannot grip a groove
section-is-knurl = A collet cannot grip a knurl
section-has-flats = A collet cannot grip a section with flats
section-grip-help = Write `grip: false`, or make the plain cylinder a section of its own
section-no-size = The section has no diameter
section-no-size-help = Add one of these: `diameter: 18`, `thread: M16x1.5`, `taper: [18, 22]`, or `across_flats: 17` with `sides: 6`
section-kind-size = A groove or a knurl has a `diameter` only
section-kind-size-help = Remove `kind`, or give the size as `diameter` alone
section-two-sizes = The section has more than one shape: { $keys }
section-two-sizes-help = Keep one of these keys, or split the section
section-unknown = No section has the name `{ $name }`
section-unknown-help = Write the `name` of a section, or its number from the front, 1 to { $most }
sections-same-name = { $count } sections have the name `{ $name }`
sections-same-name-help = Give each section its own name, or write the number from the front: `section: { $number }`
thread-interrupted = The feed must not stop in a thread
thread-interrupted-help = Remove `interrupt` from this section
thread-class = `{ $class }` is a tolerance class for threads
thread-class-help = Remove `tolerance`, and write the class behind the thread: `thread: { $designation }-{ $class }`
thread-by-alone = `thread_by` is given without `thread`
thread-by-alone-help = Remove `thread_by`. It says how a thread is made
taper-same = Both ends of the taper have the same diameter
taper-same-help = Write `diameter: { $diameter }`
sides-alone = `sides` is given without `across_flats`
sides-alone-help = Write `across_flats: 17, sides: 6`
sides-number = { $sides } is not a possible number of flats
sides-number-help = Write 2, 4, 6 or 8
flats-too-thick = The diameter of { $diameter } mm is not larger than the distance across the flats
flats-too-thick-help = Write a diameter of more than { $across }
flats-beyond-corners = The diameter of { $diameter } mm is larger than the distance across the corners
flats-beyond-corners-help = Remove `diameter`. The bar is turned to { $corners } mm, the distance across the corners
flats-without-diameter = Two flats need the diameter of the cylinder
flats-without-diameter-help = Add `diameter`
tolerance-order = The first deviation is not below the second
tolerance-order-help = Write `tolerance: [lower, upper]`, such as `[-0.05, 0]`
tolerance-one-number = A tolerance needs two deviations, not one number
tolerance-one-number-help = Write both deviations, such as `tolerance: [-0.05, 0.05]` or `tolerance: ±0.05`

# Features.
feature-kind = A feature needs one kind
feature-kind-help = Write one of these keys first: { $kinds }. Examples: `{"{"}cross_hole: 5, at: 120{"}"}`, `{"{"}keyseat: [6, 3.5], from: 500, to: 540{"}"}`
feature-key = `{ $key }` is not a key of `{ $kind }`
place-beyond-shaft = The feature reaches from { $from } to { $to } mm, beyond the shaft
place-beyond-shaft-help = Write distances in mm from the front face. The shaft ends at { $length } mm
hole-too-wide = The hole is not smaller than the shaft, which is { $diameter } mm thick at { $at } mm
hole-too-wide-help = Use a smaller hole, or another place
keyseat-backwards = The keyseat goes from { $from } to { $to } mm
keyseat-backwards-help = Write a larger `to` than `from`
keyseat-too-wide = The keyseat is { $width } mm wide, but the shaft is only { $diameter } mm thick there
keyseat-too-wide-help = Write `keyseat: [width, depth]` in mm, with a width smaller than the diameter
keyseat-too-deep = The keyseat is { $depth } mm deep, but the shaft is only { $diameter } mm thick there
keyseat-too-deep-help = Write `keyseat: [width, depth]` in mm, with a depth of less than half the diameter
centre-hole-too-wide = The centre hole { $hole } is { $mouth } mm wide, but the face is only { $face } mm wide
centre-hole-too-wide-help = Use a smaller centre hole
work-too-deep = A depth of { $depth } mm is more than the length of the shaft, { $length } mm
work-too-deep-help = Write the depth in mm from the end face
work-too-wide = The shaft is only { $diameter } mm thick there, but this needs more than { $size } mm
work-too-wide-help = Use a smaller size or a smaller depth
thread-deeper-than-hole = The hole of { $hole } mm is not as deep as the thread
thread-deeper-than-hole-help = Write at least { $least }, or remove `drill_depth`
tapped-hole-where = A tapped hole needs a place across the shaft (`at`) or a depth in an end (`depth`)
tapped-hole-where-help = Write `{"{"}tapped_hole: M4, at: 60{"}"}` or `{"{"}tapped_hole: M6, depth: 12, end: front{"}"}`
socket-punched-step = A punched socket has no `step`
socket-punched-step-help = Remove `step`, or write `forming: shave`
engraving-too-long = The text is too long for an engraving
engraving-too-long-help = Write at most { $most } letters
engraving-beyond-face = The text needs { $needed } mm, but the face is only { $diameter } mm wide
engraving-beyond-face-help = Use smaller letters or a shorter text
engraving-where = An engraving needs a place along the shaft (`at`) or a face (`end`)
engraving-where-help = Write `{"{"}engrave: LP 42, height: 2, at: 60{"}"}` or `{"{"}engrave: 42, height: 2, end: front{"}"}`
engraving-on-two = The text from { $from } to { $to } mm is not on one cylinder or flat
engraving-on-two-help = Move the text, or use smaller letters
engraving-too-high = Letters of { $height } mm are higher than the surface
engraving-too-high-help = Write at most { $most }
keyway-without-hole = The keyway needs an axial hole at the same end, deep and wide enough
keyway-without-hole-help = Add `{"{"}axial_hole: 12, depth: { $depth }{"}"}` at this end, with a diameter of more than { $width }
keyway-no-wall = The keyway leaves no wall: it reaches { $reach } mm from the axis
keyway-no-wall-help = Use a smaller hole or keyway. The surface of the shaft is { $most } mm from the axis

# Families and wishes.
vary-nothing = `vary` is empty
vary-nothing-help = Write `length: {"{"}section: body, from: 200, to: 1200, step: 50{"}"}`, `diameter`, or both
vary-too-many = `vary` gives { $parts } parts
vary-too-many-help = Use a larger `step`. At most { $most } parts are possible
vary-backwards = The range goes from { $from } to { $to } mm
vary-backwards-help = Write a `to` that is not smaller than `from`
vary-no-diameter = { $section } has no plain diameter to vary
vary-no-diameter-help = Vary the length. The diameter of a thread, a taper or flats cannot vary
wish-too-few = { $most } is too few: `hand_over_at` asks for { $wished }
wish-too-few-help = Write at least { $wished }, or remove hand-overs from `hand_over_at`
wish-twice = The hand-over at { $at } mm is given twice
wish-twice-help = Remove one of them
wish-off-shaft = A hand-over at { $at } mm is not on the shaft
wish-off-shaft-help = Write a turned length between 0 and { $length } mm
wish-nose = At { $nose } mm the shaft is not turned yet
wish-nose-help = Write at most { $most }. The counter-spindle grips finished surfaces only
wish-backwards = The length goes from { $from } to { $to } mm
wish-backwards-help = Write the front end first: `[120, 140]`
wish-section-help = Write the name or the number (1 to { $most }) of a section, or two places: `[120, 140]`

# Readings.
set-ups-empty-help = Add at least one set-up with a reading
set-up-unnamed = set-up { $number }
set-up-no-reading = The set-up has no reading
set-up-no-reading-help = Add `dial`, a list of {"{"}load, at, deflection{"}"}, or `frequency`, from a tap test
set-up-bar-too-thick = A bar of { $bar } mm is too thick: `{ $key }` takes at most { $most } mm
set-up-bar-too-thick-help = Check that `diameter` and `machine` are those of the measurement
set-up-holding-help = Add `{ $key }` to the machine, or write the `holding` of the measurement
set-up-headstock = The place of the headstock is not used without the guide bush
set-up-headstock-help = Remove `headstock`. Without the bush, distances start at the nose of the headstock collet
set-up-out-of-travel = { $at } mm from the bush face is out of the travel of `{ $machine }`
set-up-out-of-travel-help = Write a distance from { $nearest } to { $farthest } mm
set-up-collet-alone = `collet` is given without `grip`
set-up-collet-alone-help = Add `grip`, the distance from the bush face to the counter-spindle nose, or remove `collet`
set-up-no-spindle-help = Remove `grip`
set-up-collet-size = The collet `{ $collet }` does not clamp a bar of { $bar } mm
set-up-collet-unknown = No collet has the name `{ $collet }`
set-up-no-collet = No collet of the machine clamps a bar of { $bar } mm
set-up-no-collet-help = Add the collet of the measurement to the machine, or measure with another bar. The collets are { $collets }
set-up-collet-which = More than one collet clamps a bar of { $bar } mm
set-up-collet-which-help = Write `collet: "{ $first }"`, or another of { $collets }
set-up-bar-in-collet = The bar ends { $front } mm from the bush face, inside the collet
set-up-bar-in-collet-help = Set `front` to at least { $least }: the collet { $collet } must be full
fit-not-on-machine-help = Remove it from `fit`, or add it to the machine
fit-twice-help = Remove one of them
reading-beyond-bar = This place is beyond the front end of the bar
reading-in-spindle = This place is inside the counter-spindle
reading-in-headstock = This place is inside the headstock collet
reading-in-bush = This place is inside the bush
reading-behind-headstock = This place is inside the headstock collet or behind it
reading-place-help = Write the distance from the bush face (without the bush: from the headstock nose), negative behind the face
reading-no-deflection = The deflection at the load is not more than 0
reading-no-deflection-help = Write the deflection in the direction of the load, in µm, as a positive number

# Edits of a text.
edit-impossible = This value cannot be edited here
edit-refused = This edit would change more than this value
edit-help = Edit the text of the file

# What the reader assumed: notes of a plan.
note-speed-unusual = The cutting speed of { $speed } { -m-min } is outside the usual range for { $material }, { $low } to { $high } { -m-min }.
note-speed-assumed = No cutting speed is given. { $speed } { -m-min } is assumed, the middle of the usual range for { $material } ({ $low } to { $high } { -m-min }).
note-straightness-of-bar = The straightness of the turned shaft is not given. A bow of { $bow } { -mm } per { -m } is assumed, from the bar (stock.kind: { $kind }).
note-straightness = The straightness of the turned shaft is not given. A bow of { $bow } { -mm } per { -m } is assumed.
note-cutting-force = Cutting force of { $material }: kc1.1 { $kc11 } N/mm², mc { $mc }. Source: { $source }. Confidence: { $confidence }.
note-wishes = The plan keeps these wishes: { $wishes }.
note-not-turned = Section { $section } has the diameter of the bar and is not turned. Its tolerance { $label } allows { $needed }, but the bar tolerance { $bar } gives { $found }. Use a thicker bar to turn it, or order the bar to this tolerance.
note-not-turned-unknown = Section { $section } has the diameter of the bar and is not turned. Its tolerance { $label } allows { $needed }, but the tolerance of the bar is not given. Use a thicker bar to turn it, or order the bar to this tolerance.
note-family = The job varies { $ranges }. This plan uses the values of the sections. `spanhold batch` plans the whole range.
note-part-of-family = One part of a family: { $sizes }.

# A centre in the front face.
centre-not-there = `hold: centre` needs a centre, and the machine { $machine } has none
centre-not-there-help = Write `centre: {"{"}force: 300, stiffness: 40{"}"}` under `counter_spindle` in the machine file, with the numbers of your machine, or write `hold: collet`
centre-no-counter-spindle-help = Choose a machine with a counter-spindle that has a `centre`, or remove `hold`
centre-no-hole = `hold: centre` needs a centre hole in the front face
centre-no-hole-help = Add it under `shaft.features`: `- {"{"}centre_hole: A2, end: front{"}"}`, or write `hold: collet`
centre-hand-over = With `hold: centre` the whole part is one stage, without a hand-over
centre-hand-over-help = Remove `hand_over_at`, or write `hold: collet`
centre-too-short = The centre stands out by { $out } mm, and the counter-spindle comes no nearer to the bush than { $nearest } mm, so it does not reach the front face
centre-too-short-help = Use a centre with `stands_out` of at least { $least } mm, or write `hold: collet`

# The shop's file.
note-shop = From `{ $file }`: { $keys }
note-cutting-force-shop = Cutting force of { $material } (kc1.1 { $kc11 } N/mm², mc { $mc }): the shop's own values, from `{ $file }`
shop-machine-unknown = `{ $name }` is no machine of this shop
shop-machine-unknown-help = Write a name from `machines` above: { $machines }
shop-material-twice = { $name } is listed twice
shop-material-twice-help = Remove one of the entries
shop-no-bar-of = `{ $file }` has no bar of { $material }
shop-no-bar-of-help = Give the bar in the job, such as `stock: {"{"}diameter: 20{"}"}`, or add it to `bars`. There are bars of { $grades }
shop-no-bar = No bar of { $material } in `{ $file }` gives this shaft: it needs Ø{ $needed } or more
shop-no-bar-help = There are { $sizes }, and { $machine } must take the bar. Give the bar in the job, such as `stock: {"{"}diameter: { $needed }{"}"}`
shop-no-collet = No collet is known for the counter-spindle of { $machine }: neither its file nor `{ $file }` has one
shop-no-collet-help = List `collets` in the machine file, or collets for this machine in the shop's file

# The tool list.
tools-number = { $number ->
    [one] { $number } tool
   *[other] { $number } tools
}
tool-twice = The name { $name } is there twice
tool-twice-help = Give each tool its own name
tool-key-unused = A tool of the kind `{ $kind }` has no `{ $key }`
tool-key-unused-help = Remove `{ $key }`, or write another `kind`
tool-materials-help = Write the name of a material and its cuts, such as `C45: {"{"}rough: {"{"}vc: 160, feed: 0.2{"}"}{"}"}`

edge-both = An end has a chamfer and a radius
edge-both-help = Write one of both for each end
edge-too-long = The chamfers or radii of { $section } take its whole length of { $length } mm
edge-no-step = { $section } has no free edge there: the section beside it is as thick or thicker
edge-too-large = { $size } mm is more than the step of { $step } mm at { $section }
edge-help = A chamfer belongs to a free edge, and is no larger than the step. Give the end: `chamfer: {"{"}front: 1, rear: 0.5{"}"}`. One number is the front end
turned-alone = `{ $key }` needs `grind`
turned-alone-help = Write the allowance that is ground off later, such as `grind: 0.3`, or leave the key out
grind-cylinder = Only a plain cylinder can have `grind`
grind-cylinder-help = Give the sizes that are turned, and write the grinding into the name
grind-nothing-left = turned to Ø{ $turned } mm { $label } there may be nothing left to grind
grind-nothing-left-help = Make `grind` larger or `turned_tolerance` finer
bore-too-wide = The bore of { $bore } mm leaves no wall at { $section }: { $smallest } mm
bore-too-wide-help = Write an inner diameter below { $smallest } mm, or leave `bore` out for a solid bar
bore-hole = The bore of the bar is { $bore } mm, so there is nothing to drill for { $size } mm
bore-hole-help = Work in an end must be larger than the bore of the bar

# Designations of threads.
thread-unknown = `{ $text }` is not the designation of a thread
thread-unknown-help = Write it as `M16x1.5`, `1/4-20 UNC`, `G1/4` or `Tr20x4`. A class and `LH` for a left-hand thread may follow: `M16x1.5-6g-LH`
thread-write = Write `{ $designation }`
thread-no-coarse = M{ $major } has no coarse pitch in ISO 261
thread-no-coarse-help = Write the pitch, `M{ $major }x1`, or the nearest size with a coarse pitch, `M{ $near }`
thread-too-fine = `{ $text }`: a pitch of { $pitch } mm is too fine
thread-too-fine-help = Write a pitch of at least { $least } mm
thread-too-coarse = `{ $text }`: a pitch of { $pitch } mm is too coarse for a diameter of { $major } mm
thread-write-coarse = The coarse pitch of M{ $major } is { $coarse } mm: write `M{ $major }` or a finer pitch
thread-finer = Write a finer pitch, at most { $most } mm
thread-lead = `{ $text }`: the lead of { $lead } mm is not a whole number of pitches of { $pitch } mm
thread-lead-help = Write the lead of a thread with several starts as 2 to { $most } pitches, here { $twice } mm or a multiple, and the pitch in brackets
thread-no-pitch = `{ $text }`: a trapezoidal thread needs its pitch
thread-no-pipe-size = `{ $text }`: ISO 228-1 has no pipe thread of this size
thread-no-unified = `{ $text }` is not in ASME B1.1
thread-no-unified-help = ASME B1.1 has { $near }
thread-no-unified-special = ASME B1.1 has { $near }. Write a special thread as `{ $special }`
thread-tail-unknown = `{ $text }`: `{ $word }` is not a tolerance class of this thread
thread-tail-help = Write for example `{ $designation }`, or `LH` for a left-hand thread
thread-class-of-hole = `{ $class }` is a class of threads in holes
thread-class-of-shaft = `{ $class }` is a class of threads on shafts
thread-class-write = Write for example `{ $with }`, or without a class: `{ $without }`
# Units of a file.
note-mixed-units = `{ $file }` has values in both systems of units: { $values }. Each was converted by its own unit. Check that each unit is meant.
note-mixed-units-value = `{ $key }` in line { $line }
