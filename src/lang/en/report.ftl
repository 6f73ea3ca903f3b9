# Tables, drawings and the sheet.

# Amounts.
stages = { $number ->
    [one] { $number } stage
   *[other] { $number } stages
}
hand-overs = { $number ->
    [one] { $number } hand-over
   *[other] { $number } hand-overs
}
regrips = { $number ->
    [one] { $number } headstock re-grip
   *[other] { $number } headstock re-grips
}
pieces = { $number ->
    [one] { $number } piece
   *[other] { $number } pieces
}
bars = { $number ->
    [one] { $number } bar
   *[other] { $number } bars
}
readings = { $number ->
    [one] { $number } reading
   *[other] { $number } readings
}

# The first line.
verdict-feasible = FEASIBLE
verdict-at-risk = AT RISK
verdict-not-feasible = NOT FEASIBLE
verdict-holds = holds in { $good } of 100 sampled parts; { $made }
verdict-headline = { $name }: { $summary }
verdict-made = { $stages }, { $hand_overs }, { $regrips }, cycle time { $seconds } s, { $pieces } from a bar
verdict-made-tightest = { $made }; tightest check: { $tightest }
verdict-made-short = { $stages }, cycle time { $seconds } s, { $pieces } from a bar
verdict-tightest = { $check }, { $used } of its limit
verdict-tightest-in-stage = { $check }, { $used } of its limit, in stage { $stage }
verdict-stops-before-end = it can be turned to { $reached } { -mm } of { $length } { -mm }; there { $what }
verdict-stops-at-part-off = it can be turned to its full length of { $length } { -mm }, but not parted off: { $what }
verdict-no-plan = no plan was found
tightest-check = Tightest check: { $check }, at turned length { $turned } { -mm }
reasons-both = { $first }, and { $second }
stops-stiffness = the bar is too soft at the tool
stops-span-stiffness = the bar is too soft between the grip and the bush
stops-free-ratio = the free front is too long for its diameter (a house rule)
stops-whirl = the bar turns too near to its critical speed
stops-whip = the bow of the bar swings too far at this speed
stops-sag = the bar hangs too low between the grip and the bush
stops-bore = the front has too little room in the counter-spindle bore
stops-cut = the diameter changes too much along the cut
stops-chatter = the cut chatters
stops-buckling = the axial load may buckle the bar
stops-run-out = the run-out of the collet shows too much on the surface in cut
stops-drill = the bar bends too far under a cross tool
stops-pick-up = the front is too far off the axis for the collet or the centre that comes over it
stops-release = the front drops too far when the collet opens
stops-torque = the collet cannot hold the torque of the part-off or of work on the rear end
stops-push = the collet cannot hold against the force of work on an end
stops-back = the rear end bends too far under the work after part-off
stops-travel = the counter-spindle has no travel left
stops-collet = no collet holds the front where one must
stops-stroke = the headstock has no stroke left and may not re-grip
stops-interrupt = a surface that must not show a line would get one
stops-tray = the part is too large to fall free
stops-tool-places = there are too few places for tools
stops-thread-length = the thread is too long for a single-point tool
stops-support = the supports do not hold the bar
stops-wish = a wish of the job cannot be met
stops-bush-size = the bar is too thick for the guide bush
stops-collet-size = the bar is too thick for the headstock
stops-power = the headstock has too little power for the cut
stops-spindle-torque = the headstock has too little torque for the cut
stops-feed-force = the headstock feeds with too little force for the cut
stops-counter-torque = the counter-spindle has too little torque
stops-other = { $rule } stops it
check-free-ratio = free length
check-bore = room in the bore
check-cut = Ø change
check-drill = cross-tool bend
check-pick-up = front off axis
check-release = drop at release
check-torque = torque on grip
check-push = slip in collet
check-back = rear end bending

# Keys of a plan in words.
key-hand-over = hand-over
key-regrip = headstock re-grip
key-centre = centre
key-segment = pull-back
key-whirl = critical speed
key-interrupt = witness line
key-stroke = headstock stroke
key-counter-spindle = counter-spindle
key-counter-spindle-travel = counter-spindle travel
key-part-off = part-off
key-bar-feed = bar feeder
key-back-work = rear-end work
key-cross-driven = across, driven
key-front-fixed = front end, fixed
key-front-driven = front end, driven
key-back-fixed = rear end, fixed
key-back-driven = rear end, driven
key-stiffness = stiffness
key-span-stiffness = span stiffness
key-whip = whip
key-sag = sag
key-chatter = chatter
key-buckling = buckling
key-run-out = run-out
key-turn = turn
key-plunge = plunge
key-forward = forward
key-back = back
key-headstock = headstock
key-both = both
key-turning = turning
key-cylinder = cylinder
key-groove = groove
key-knurl = knurl
key-thread = thread
key-taper = taper
key-flats = flats
key-feature = feature
key-unload = unload
key-bar-change = bar change
key-tool-change = tool change
key-cross-hole = cross hole
key-keyseat = keyseat
key-keyway = keyway
key-axial-hole = axial hole
key-centre-hole = centre hole
key-facing = facing
key-tapped-hole = tapped hole
key-hex-socket = hex socket
key-engraving = engraving
key-thread-rolling = thread rolling
key-rough = rough
key-finish = finish
key-high = high
key-medium = medium
key-low = low
key-tray = tray
key-collet = collet
key-support = support
key-wish = wish
key-tool-places = tool places
key-thread-length = thread length
key-bush-size = bush size
key-collet-size = collet size
key-spindle-power = spindle power
key-spindle-torque = spindle torque
key-feed-force = feed force
key-counter-spindle-torque = counter-spindle torque
key-margin = margin
key-witnesses = witness lines
key-quote = quote
key-length = length
key-whirling = whirling unit
holding-bush = guide bush
holding-no-bush = no bush, headstock collet only
tools-single = single tool
tools-opposed = opposed pair
tools-tandem = tandem: a finishing tool follows the roughing tool
work-whirl = thread whirling
work-thread = thread passes
work-as-drawn = bar surface
work-turn = turn
work-repeated = { $number } × { $work }
section-number = section { $number }
check-used = { $check } { $used }
check-at-most = { $check } { $value }, at most { $limit } ({ $used } of its limit)
check-at-least = { $check } { $value }, at least { $limit } ({ $used } of its limit)
value-not-set = not set
value-yes = yes
value-no = no

# Titles.
title-stages = Stages ({ -mm }, rev/min, s)
title-stages-reached = Stages as far as possible ({ -mm }, rev/min, s)
title-positions = Positions ({ $from })
title-look-at = Look at these points first
title-stops = Stops of the feed (turned length, { -mm })
title-segments = Segments ({ -mm }, rev/min, { -mm-rev })
title-features = Features ({ -mm }, s)
title-time = Time
title-quote = Quote
title-limit-costs = What each limit costs in time
title-scatter = Sampled parts by stage ({ -mm })
title-inputs = Uncertain inputs (lower – higher by one standard deviation; limit used: { $check })
title-measure = What to measure, the most useful first
title-set-up = Set-up
title-notes = Notes
title-origins = Values that the job does not give
origins-of-shop = From the shop's file: { $values }
origins-by-default = Usual values of this program: { $values }
origin-of-shop = { $key } { $value } (line { $line })
origin = { $key } { $value }
title-cautions = Cautions
title-cycle = Cycle
title-timeline = Timeline of both spindles (s)
title-shorten-first = What to shorten first
title-tool-places = Tool places
title-tools = Tools
title-tool-list = Turning tools ({ -mm }, { -mm-rev }, rev/min)
sheet-tool-list = Turning tools
sheet-tool-list-units = depth in { -mm }, feed in { -mm-rev }, speed in rev/min
tool-not-listed = { $tool } (not in the list)
tool-parts-off = part-off
tool-nose = r { $nose }
tool-insert-nose = { $insert }, { $nose }
tool-range = { $least }–{ $most }
title-order = Order
title-quantities = Order by quantity
title-sensitivity = Effect of a changed time or speed
title-help-sets = What makes it feasible (each line is enough; what a shop does sooner comes first)
title-help-alone = Single changes that make it feasible
title-help-others = Other single changes that are enough
title-help-house = Limits of the house in the way (no advice: a house changes one only after a trial, and answers)
positions-from-bush = { -mm } from the bush face
positions-without-bush = { -mm }; counter-spindle from the end of the gap behind the tool, headstock from the tool

# Names of columns.
col-stage = stage
col-from = from
col-to = to
col-travel = travel
col-grip = grip
col-collet = collet
col-unsupported = unsupported
col-l-over-d = L/d
col-unsupported-split = un{ "\u00AD" }supported
col-speed = rev/min
col-feed = feed
col-tool = tool
col-station = station
col-insert = insert
col-sections = sections
col-depth = depth
col-time = time
col-seconds = s
col-tightest = tightest check
col-counter-spindle-start = counter-spindle at start
col-headstock-start = headstock at start
col-end = at end
col-regrips-at = headstock re-grips at
col-counter-spindle = counter-spindle
col-headstock = headstock
col-mark = mark
col-done = what is done
col-surface = surface
col-leaves = what it leaves
col-section = section
col-diameter = Ø
col-work = work
col-travels = travels
col-turning = turning
col-feature = feature
col-at = at
col-turned-when-done = turned length when done
col-planned-to = planned to
col-input = uncertain input
col-input-range = lower – higher
col-input-used = limit used
col-input-good = good below – above
col-input-time = fastest, s
col-holds-to = 99 % of samples hold to
col-broken-share = samples over a limit
col-broken-checks = checks over their limit
col-cause = cause
col-interrupt = mark of the surface
col-operation = operation
col-share = share
col-spindle = spindle
col-what = what
col-place = place
col-places = places
col-needed = needed
col-elsewhere = put elsewhere
col-missing = missing
col-free = free
col-tools = tools
col-pieces = pieces
col-bars = bars
col-shifts = shifts
col-cost-per-piece = cost per piece
col-number = no.
col-size = size
col-measured = measured

# Cells.
grip-free = free
grip-centre = centre
cell-none = none
cell-range = { $low } – { $high }
cell-no-plan = no plan
cell-after-part-off = after part-off
cell-part-off-face = part-off face
cell-part-off = part-off
feature-with-kind = { $kind }: { $text }
time-cutting = cutting
time-travels = approach and return
time-hand-overs = hand-overs
time-regrips = headstock re-grips
time-features = features
time-part-off = part-off
time-back-work = rear-end work
time-sum = sum of operations
time-cycle = cycle time

# Where the feed stops.
stop-hand-over = hand-over
stop-regrip = headstock re-grip
stop-regrip-then-hand-over = re-grip + hand-over (shared)
stop-hand-over-then-regrip = hand-over + re-grip (shared)
stop-then = { $first }, then { $second }
stop-at-shoulder = no line (shoulder)
stop-at-end = no line (end face)
stop-behind = no line (behind part)
stop-in-groove = no line (groove)
stop-line = witness line ({ $interrupt })
stop-between = between sections { $front } and { $rear }
stop-front-face = front face
stop-part-off-face = part-off face
stop-behind-face = behind the part-off face

# Facts: a key and its value.
fact-drawing = drawing
fact-date = date
fact-bush = guide bush
fact-bar-ends = bar ends
fact-drawing-revision = { $drawing }, revision { $revision }
fact-bush-said = for { $bar }, { $kind }, land { $land } { -mm }
bush-fixed = stands still
bush-following = turns with the bar
bush-kind-not-given = kind not given
fact-bar-ends-said = cut square, front end chamfered, free of burrs and bends
length-of-part = length { $length }
fact-length = length
fact-length-mm = { $length } { -mm }
fact-material = material
fact-bar = bar
fact-bar-length = { $stock }, bar length { $length } { -mm }
fact-machine = machine
fact-holding = holding
fact-tools = tools
fact-collet = collet
fact-centre = centre
fact-centre-presses = in the front end with { $force } { -n }; it leaves at { $leaves } { -mm }, before part-off
fact-collet-holds = { $collet } in the counter-spindle, grips over { $hold } { -mm }
fact-collet-named = { $collet } in the counter-spindle
fact-collet-none = none in the counter-spindle
fact-part-off = part-off
fact-part-falls = the part falls into the tray (for parts up to { $length } { -mm } of length and { $diameter } { -mm } of diameter)
fact-input = input
quote-bar = { $pieces } from a bar of { $length } { -mm }, remnant { $remnant } { -mm }
quote-material = { $mass } kg per part
fact-cost = cost
quote-cost = { $total } { $currency } per part: machine { $machine }, material { $material }
fact-optimum = optimum
fact-cycle = cycle time
cycle-steady = { $steady } s from part to part; one part alone takes { $alone } s
fact-spindles = in use
cycle-spindles = headstock { $headstock } s, counter-spindle { $counter } s
fact-rear-end = rear-end work
cycle-hidden-waits = { $hidden } s run during the free stage of the next part; the headstock then waits { $wait } s
cycle-hidden-idle = { $hidden } s run during the free stage of the next part; the counter-spindle is then idle for { $idle } s
cycle-in-line = done before the next part begins
fact-tool-changes = tool changes
cycle-tool-changes = { $number ->
    [one] { $number } change, { $seconds } s
   *[other] { $number } changes, { $seconds } s
}
fact-bar-change = bar change
cycle-bar-change = { $seconds } s per part
timeline-stage = stage { $stage }: { $parts }
timeline-previous = previous part: { $parts }
timeline-turning = turning { $seconds }
timeline-features = features { $seconds }
timeline-back-work = rear end { $seconds }
timeline-tool-changes = tool changes { $seconds }
timeline-unloading = unloading { $seconds }
shorten-one = { $what }: { $seconds } s, { $share } of the cycle time
tools-turret = turret
tools-turret-holds = tools without a place beside the bar or at the front end
tools-at = { $place }: { $names }
tools-places = { $place } { $number }
tools-fit = every tool has a place; free places: { $free }
tools-missing = missing places: { $missing }; free places: { $free }
fact-pieces = pieces
order-pieces = { $pieces } from { $bars }, { $per_shift } per shift
fact-time = time
order-time = set-up { $set_up } h, run { $run } h, shifts: { $shifts }
order-cost = { $each } { $currency } per piece, { $all } { $currency } in total
sensitivity-speed = cutting speed × { $factor }: { $change } s per part
sensitivity-time = time of each { $what } × { $factor }: { $change } s per part

# What to look at first.
look-lines = { $number ->
    [one] Witness line on { $section }, marked "{ $interrupt }": { $places }
   *[other] Witness lines on { $section }, marked "{ $interrupt }": { $places }
}
look-place = { $at } { -mm } ({ $cause })
look-over-limit = Over the limit in stage { $stage }: { $check }, at turned length { $turned } { -mm }
look-near-limit = Close to the limit in stage { $stage }: { $check }, at turned length { $turned } { -mm }
look-slowed = Speed reduced on { $places }, because of { $check }
look-slowed-cost = Speed reduced on { $places }, because of { $check }: at most from { $full } to { $speed } rev/min. This takes { $seconds } s more
look-back-turning = Rear-facing shoulder, needs a back-turning tool: { $places }
look-fed-out = Before the part-off the bar is fed out to { $to } { -mm } for { $works }; { $unsupported } { -mm } are unsupported; no turning while fed out

# What would help.
help-cost-of-limit = { $text } ({ $limit }: { $now } → { $next })
help-values = { " (" }{ $name }: { $from } → { $to })
help-change-slower = { $text }, { $seconds } s more than the fastest of these
help-set-slower = { $text }, { $seconds } s more than the fastest of these
help-set-holds = { $text }; it holds in { $good } of 100 sampled parts
help-edits-job = { $text }. Edit the job: { $edits }.
help-edits-machine = { $text }. Edit the machine file: { $edits }.
help-edits-both = { $text }. Edit the job: { $job }. Edit the machine file: { $machine }.
help-edits-many = { $text }. The page (spanhold page JOB) makes these edits for you.
help-edit-item = { $list } item { $number }
help-edit-new-item = { $list }, a new item
help-edit-set = { $key }: { $value }
help-edit-remove = remove { $item }
help-edit-swap = exchange { $item } with item { $with }
help-next = { $tried }. Ask for a change of the drawing, or compare other machines: spanhold compare JOB --machine FILE.
help-sentence = { $text }.

# The sheet.
sheet-title = { $job }: set-up sheet
sheet-input = input { $digest }
sheet-page = page { $page } of { $pages }
sheet-sign-off = Sign-off
sheet-sign-read = Plan read; machine and collet are right
sheet-sign-proved = First piece proved at reduced speed and feed
sheet-sign-measured = First piece measured
sheet-sign-released = Released for the run
sheet-sign-name = name
sheet-sign-date = date
sheet-sign-signature = signature
sheet-work-list = Work in its order
sheet-work-list-units = { -mm }, rev/min, { -mm-rev }, s; from and to are turned lengths
sheet-directions = Zero points and directions
sheet-stages = Stages
sheet-stages-units = { -mm }, rev/min, { -mm-rev }, s; counter-spindle and headstock from start → end of the stage, { $from }
sheet-stage-limits = Limits of the stages: do not exceed
sheet-stops = Stops of the feed
sheet-stops-units = turned length, { -mm }
sheet-witness-lines = Witness lines
sheet-witness-lines-units = { -mm }
sheet-sure = How sure this plan is
sheet-scatter = Sampled parts by stage
sheet-scatter-units = { -mm }
sheet-inputs = Uncertain inputs
sheet-inputs-units = lower – higher by one standard deviation; limit used: { $check }; good parts of 100 with a value below – above the one used
sheet-timeline = Timeline of both spindles
sheet-bar = Bar
limit-stage = Stage { $stage }: { $limits }
limit-turn-to = turn to { $to } { -mm }, no farther
limit-speeds-below = never above the speed of each range below
limit-speed = never above { $speed } rev/min
limit-unsupported = never more than { $unsupported } { -mm } unsupported
limit-unsupported-turning = never more than { $unsupported } { -mm } unsupported while turning
limit-grip-distance = counter-spindle grip { $grip }, never farther than { $distance } { -mm } from the bush
limit-grip = counter-spindle grip { $grip }
limit-free = front end free, nothing may touch it
limit-centre = centre in the front end with { $force } { -n }; it leaves before part-off
limit-falls = the part falls into the tray at part-off
limit-range = Stage { $stage }, turned length { $from } to { $to } { -mm }: never above { $speed } rev/min
limit-fed-out = Stage { $stage }, before the part-off: feed out to { $to } { -mm }, no farther, for { $works }. No turning while fed out: { $positions }. Then back to { $back } { -mm }.
limit-fed-out-speed = Stage { $stage }, before the part-off: feed out to { $to } { -mm }, no farther, for { $works }. No turning while fed out: { $positions }; never above { $speed } rev/min. Then back to { $back } { -mm }.
fed-unsupported = { $unsupported } { -mm } unsupported
fed-counter-spindle = counter-spindle { $distance } { -mm } from the bush
fed-headstock-bush = headstock { $distance } { -mm } from the bush
fed-headstock-tool = headstock { $distance } { -mm } from the tool
speed-range = { $from } to { $to }: { $speed }

# The diagram.
diagram-title = { $job }: plan of stages, grips and stops
diagram-description = { $verdict }: { $summary }. { $panels }
diagram-panels = Top: the shaft with its grips, hand-overs and headstock re-grips. Middle: the machine at the start and at the end of each stage. Bottom, on the same axis: the share of its limit that each check uses along the turned length, and the speed.
diagram-description-setting = { $verdict }: { $summary }. The shaft with its lengths, grips, hand-overs, headstock re-grips and stops for other work.
diagram-numbers = numbers: sections of the segment table
diagram-labels-left-out = { $number ->
    [one] no room for { $number } label
   *[other] no room for { $number } labels
}
diagram-machine-left-out = machine positions: see the stage table
diagram-more = … the rest is in the text
diagram-shaft = Shaft
diagram-true-scale =
    true to
    scale
diagram-radial-scale =
    radial
    scale
    × { $factor }
diagram-not-reached = not reached; stops at { $at } { -mm }
diagram-axis = position on the shaft and turned length, { -mm } from the front face
diagram-used =
    used
    of the
    limit
diagram-governs = tightest
diagram-limit = limit
diagram-at-most = { $check }, at most
diagram-strips = The machine at the start and at the end of each stage
diagram-start = start
diagram-end = end
diagram-unsupported = unsupported { $unsupported } { -mm }
legend-grip = grip, with its stage
legend-centre = centre in the front face
legend-hand-over = H hand-over
legend-regrip = R headstock re-grip
legend-both = H+R both at one stop
legend-work = F other work at a stop
legend-bush = guide bush
legend-headstock = headstock collet
legend-headstock-right = headstock is farther right
legend-bore = counter-spindle bore
legend-sleeve = sleeve in the bore
legend-not-reached = not reached

# Both spindles in time.
gantt-title = { $job }: timeline of both spindles
gantt-bar = { $work }: { $name }, { $seconds } s
gantt-cycle = cycle time { $seconds } s
gantt-hidden = { $seconds } s of work on the rear end of the previous part run at the same time
gantt-wait = the headstock waits { $seconds } s
gantt-headstock = headstock
gantt-counter-spindle = counter-spindle
gantt-holds = holds the part
gantt-turning = turning
gantt-other-work = other work
gantt-tool-change = tool change
gantt-hand-over = hand-over
gantt-regrip = re-grip
gantt-part-off = part-off
gantt-back-work = rear end of the previous part
gantt-critical = on the critical path

# A family of parts.
family-title = { $name }: a family of parts
family-count = { $good } of { $all } parts can be made.
family-range = { $least } to { $hand_overs }, { $fastest } to { $slowest } s per part.
family-same = { $hand_overs }, { $fastest } to { $slowest } s per part.
family-longest = Longest varied length that can be made: { $length } { -mm }.
family-machine = on { $machine }
family-made = { $part }: { $hand_overs }, { $seconds } s
family-sizes = length { $length } { -mm }, diameter { $diameter } { -mm }
family-size = { $size } { -mm }
family-not-made = { $part }: cannot be made
family-stopped = { $part }: cannot be made, stopped by: { $check }
family-no-job = { $part }: these sizes give no valid job; see its line
family-hand-overs = Hand-overs
family-number-on-line = Number on the line
family-hand-overs-word = { $number ->
    [one] hand-over
   *[other] hand-overs
}
family-time-below = time is below the number
family-from-here = hand-overs from here on
family-cannot = cannot be made
family-invalid = no valid job
family-time-axis = time per part, s

# Stiffnesses from readings.
fitted-head = Fitted: { $machine }, from { $readings }; readings more than needed: { $more }
fitted-misfit = Difference between readings and fit: { $misfit } times the errors of the readings (about 1 is right)
fitted-condition = Condition { $condition } (1 is best)
fitted-support = support
fitted-stiffness = N/µm
fitted-error = standard error
fitted-range = 95 % range
fitted-range-of = { $low } to { $high }
fitted-before = machine file
fitted-set-up = set-up
fitted-reading = reading
fitted-measured = measured
fitted-fitted = fitted
fitted-unit = unit
fitted-off = difference / error
fitted-into-file = Put these values into the machine file. Each one replaces the stiffness there.

# The workbook.
xlsx-with-unit = { $name } ({ $unit })
xlsx-stages = stages
xlsx-segments = segments
xlsx-checks = checks
xlsx-quote = quote
xlsx-grip-from = grip from
xlsx-grip-to = grip to
xlsx-grip-diameter = grip diameter
xlsx-unsupported = unsupported length
xlsx-counter-start = counter-spindle at start
xlsx-counter-end = counter-spindle at end
xlsx-headstock-start = headstock at start
xlsx-headstock-end = headstock at end
xlsx-lowest-speed = lowest speed
xlsx-highest-speed = highest speed
xlsx-regrips = headstock re-grips
xlsx-share = share of its limit
xlsx-speeds = highest speed from … to … { -mm } turned length
xlsx-section-number = section number
xlsx-diameter = diameter
xlsx-speed = speed
xlsx-slowed = speed reduced because of
xlsx-check = check
xlsx-value = value
xlsx-limit = limit
xlsx-unit = unit
xlsx-check-unit = unit of value and limit
xlsx-turned = turned length
xlsx-position = position on the shaft
xlsx-pieces-per-bar = pieces per bar
xlsx-pieces = pieces
xlsx-remnant = remnant
xlsx-material = material per part
xlsx-cost-machine = machine cost per part
xlsx-cost-material = material cost per part
xlsx-cost = cost per part
xlsx-cell = { $head } in row { $row }

# The short answer on a terminal.
short-rows-left-out = … { $number } more
short-more = { $number } more: see --full
short-more-check = { $number } more: see `spanhold plan JOB --full`
short-more-changes = { $number ->
    [one] { $number } more change: see --full
   *[other] { $number } more changes: see --full
}
short-more-changes-check = { $number ->
    [one] { $number } more change: see `spanhold plan JOB --full`
   *[other] { $number } more changes: see `spanhold plan JOB --full`
}
short-tools = Tools: { $tools }
plan-to-write = To write the sheet, the diagram and the tables:
plan-to-write-with = To write the sheet, the diagram and the tables: { $command }
plan-written = The sheet, the diagram and the tables are in: { $folder }
plan-full = --full prints everything.

# Why something could not be drawn.
undrawn-plan = the plan cannot be drawn: { $what }
undrawn-workbook = the workbook could not be written: { $what }
undrawn-chart = the chart could not be drawn: { $what }
undrawn-pdf = the PDF could not be written: { $what }
undrawn-time = a time of the cycle is not a number
undrawn-beyond = its lengths are too large or too small for a drawing
undrawn-length = its length is not a positive number
undrawn-bar = the diameter of the bar is not a positive number
undrawn-section = a section has a number that is not finite
undrawn-feature = a feature has a number that is not finite
undrawn-stage = a stage has a number that is not finite
undrawn-machine = the machine has a number that is not finite
undrawn-stop = the position of a stop is not finite
undrawn-check = a check has a number that is not finite
undrawn-family = a number of the family is not finite
undrawn-nothing-varies = neither length nor diameter varies
under-one = less than 1
sure-breaks = What breaks: { $checks }.
sure-break = { $check } in { $share } of 100 parts
sure-break-at-start = { $check } in { $share } of 100 parts, in half of them from the start
sure-break-from = { $check } in { $share } of 100 parts, in half of them by { $from } { -mm } turned length
sure-more = { $number } more
sure-runs = A part that does not hold exceeds a limit of this plan; it need not be scrap. Of { $runs } sampled runs of two parts, both parts hold in { $both }, one in { $one }, none in { $none }. { $by ->
    [run] So machine, material or tool decide, the same for the whole run.
    [part] So the single part decides: its bow, its bar.
    [both] So both the run and the single part decide.
   *[none] {""}
}
sure-ask = With `confidence: 0.95` in the job, or `--confidence 0.95`, the program looks for a plan that holds in 95 of 100.
sure-nothing-uncertain = No input is uncertain in this job, so every sampled part is the nominal one.
sure-confidence = Made to hold in { $asked } of 100 sampled parts. This costs { $seconds } s a part: the fastest plan takes { $fastest } s and holds in { $good } of 100.
sure-confidence-free = Made to hold in { $asked } of 100 sampled parts: the fastest plan does.
sure-confidence-missed = No plan was found that holds in { $asked } of 100 sampled parts. This one holds in most of those tried.
sure-measure = Measure first: { $input }. With a likely low and a likely high value ({ $low }, { $high }) { $check } uses { $used_low } and { $used_high } of its limit. { $advice }.
sure-advice = { $input }: { $advice }
input-kc = cutting force kc1.1
input-passive = passive force, as a factor
input-e = Young's modulus
input-damping = damping ratio
input-bush = bush stiffness
input-headstock = headstock stiffness
input-counter-spindle = counter-spindle stiffness
input-centre = centre stiffness
input-sleeve = bore support stiffness
input-ra = roughness over ideal
input-straightness = bow of the shaft
input-bar = bar diameter
input-run-out = collet run-out
input-other = another input
diagram-band = 90 of 100 parts
diagram-part = this part
inputs-title = Uncertain inputs of { $job }
inputs-meaning = Share of its limit that { $check } uses with one input off its value by one standard deviation: pale end lower, dark end higher
inputs-percent = { $percent } %
undrawn-inputs = a share of a check with an uncertain input is not a finite number

# The table of positions for the programmer.
moves-on-part = Turned length (Z): position of the tool on the part, from the front face towards the headstock. In a coordinate system after ISO 841 with its zero on the front face, Z is minus this value.
moves-from-bush = Spindles (Z): distance of the nose from the bush face, which stands still { $gap } { -mm } behind the tool. The headstock counts backwards, the counter-spindle forwards; both values are positive.
moves-without-bush = Spindles (Z): the headstock's nose counts backwards from the tool. The counter-spindle's nose counts forwards from a plane { $gap } { -mm } behind the tool. Both values are positive.
moves-across = Across (X): values are diameters, zero is the axis.
moves-stage = stage { $stage } begins
moves-cut = { $work }, { $section }
moves-travel = { $work }, { $section }, travel { $travel } of { $travels }
moves-pass = thread pass { $pass } of { $passes }, { $section }
moves-approach = to the start of: { $cut }
moves-run-out = run-out of the tandem: the finishing tool cuts to the end
moves-fed-out = bar fed out, not cut
moves-fed-back = bar back, not cut
moves-counter-opens = counter-spindle collet opens
moves-counter-moves = counter-spindle moves to the grip
moves-counter-closes = counter-spindle collet closes
moves-headstock-opens = headstock collet opens
moves-headstock-moves = headstock moves back along the bar
moves-headstock-closes = headstock collet closes
moves-centre-comes = centre comes into the front face
moves-centre-leaves = centre leaves the front face
moves-part-taken = counter-spindle takes the part away
moves-wait-stopped = feed stopped, tool clear
moves-wait-first-hand-over = feed stopped, tool clear, headstock holds the bar, counter-spindle empty
moves-wait-hand-over = feed stopped, tool clear, headstock holds the bar
moves-wait-counter-closed = counter-spindle has closed, both spindles turn at one speed
moves-wait-regrip = feed stopped, tool clear, counter-spindle holds the part
moves-wait-headstock-closed = headstock has closed
moves-wait-centre = centre presses
moves-wait-centre-left = centre is clear
moves-wait-part-off = counter-spindle holds the part, both spindles turn at one speed
moves-wait-parted = part is off
moves-col-actor = who
moves-col-wait = wait point
moves-col-waits-for = waits for
moves-col-start = begins at
moves-col-turned = turned length (Z)
moves-col-diameter = tool diameter (X)
moves-col-leading = leading tool, diameter (X)
moves-col-lag = lag of the finishing tool
moves-col-headstock = headstock nose (Z)
moves-col-counter = counter-spindle nose (Z)
moves-col-headstock-speed = headstock speed
moves-col-counter-speed = counter-spindle speed
key-tool = tool

# The drawing as DXF.
undrawn-dxf = a length of the drawing is not a finite number
dxf-grip = grip { $stage }
dxf-stage = stage { $stage }
dxf-about = Shaft in mm, front face at the left. H hand-over, R headstock re-grip, F stop for a feature, each with its turned length.

# More sheets of the workbook.
xlsx-features = features
xlsx-tools = tools
xlsx-places = tool places
xlsx-order = order
xlsx-positions = positions
xlsx-page = page { $page } of { $pages }
xlsx-fact = { $what }: { $told }
xlsx-thrust = thrust
xlsx-axial = axial force
xlsx-torque = torque
xlsx-place-kind = kind of place
xlsx-nose-radius = nose radius
xlsx-depth-least = least depth of cut
xlsx-depth-most = largest depth of cut
xlsx-feed-least = least feed
xlsx-feed-most = largest feed
