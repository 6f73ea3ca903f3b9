# A plan: its reasons, notes, changes and cautions, as they stand in plan.json.

## Lists

list-and = { $before } and { $item }
list-comma = { $before }, { $item }
list-semicolon = { $before }; { $item }
list-more = { $items } and { $more } more

## What a check found. The numbers carry their unit.

finding-at-most = { $check } is { $demand }, at most { $limit } is allowed
finding-stiffness = the stiffness of the bar at the tool is { $demand }, at least { $limit } is needed
finding-span-stiffness = the lowest stiffness between grip and bush is { $demand }, the house limit is { $limit }
finding-free-ratio = the free front has a length of { $demand } diameters, the house rule allows { $limit }
finding-whirl = the speed is { $demand } times the critical speed, at most { $limit } times is allowed
finding-whip = the bow of the rotating bar (whip) is { $demand }, at most { $limit } is allowed
finding-sag = the bar sags by { $demand } under its own weight, at most { $limit } is allowed
finding-pick-up = the free front is { $demand } off the axis at the pick-up, at most { $limit } is allowed
finding-bore = the bow of the part in the counter-spindle bore is { $demand }, at most { $limit } is allowed
finding-bore-no-room = the part has no room in the counter-spindle bore when the bore clearance is kept
finding-cut = the bending of the bar changes the diameter along the cut by { $demand }, at most { $limit } is allowed
finding-chatter = the depth of cut is { $demand }, chatter begins at { $limit }
finding-drill = the tool bends the bar by { $demand }, at most { $limit } is allowed
finding-release = the bar sags by { $demand } when the counter-spindle collet opens, at most { $limit } is allowed
finding-torque = the torque is { $demand }, the collet holds at most { $limit }
finding-push = the load is { $demand }, the collet holds at most { $limit }
finding-buckling = the bar is pressed along its axis with { $demand }, at most { $limit } is allowed so that it does not buckle
finding-run-out = the run-out of the collet gives the surface in cut a run-out of { $demand }, at most { $limit } is allowed
finding-back = the bending of the rear end changes the diameter by { $demand }, at most { $limit } is allowed

## Where a check fails: one clause before the colon, what the check found after it

reason-gripped = with the counter-spindle collet at { $nose } { -mm } and a turned length of { $turned } { -mm }: { $finding }
reason-front-free = with the front end free and a turned length of { $turned } { -mm }: { $finding }
reason-on-centre = with the centre in the front and a turned length of { $turned } { -mm }: { $finding }
reason-centre = the force of the centre
reason-centre-comes = before the centre comes in: { $finding }
reason-turned = at a turned length of { $turned } { -mm }: { $finding }
reason-bar-fed-out = at a turned length of { $turned } { -mm }, with the bar fed out for turning to { $end } { -mm }: { $finding }
reason-along-cut = along the cut that ends at { $end } { -mm }: { $finding }
reason-under-tool = during { $work }, at a turned length of { $turned } { -mm }: { $finding }
reason-fed-on = with the bar fed out to { $turned } { -mm } for { $work }: { $finding }
reason-last-grip-torque = last grip, at part-off or during work on the rear end: { $finding } (torque_margin { $margin } is included)
reason-last-grip-torque-share = last grip, at part-off or during work on the rear end: { $finding } (torque_margin { $margin } is included; by the twist of the bar alone { $percent } % of the part-off torque would go to this grip; give torsional_stiffness to count that)
reason-last-grip-push = last grip, during { $work }: { $finding } (torque_margin { $margin } is included)
reason-last-grip-back = last grip, during work on the rear end ({ $work }): { $finding }
reason-part-off = part-off
reason-front-work = headstock collet, under the load on the front end ({ $work }): { $finding } (torque_margin { $margin } is included)
reason-front-work-presses = during work on the front end: { $finding }

## Why there is no plan

stopped-together = several limits stop the bar here, and all of them must change: { $reasons }
stopped-other-collet = with collet { $collet } the turned length comes to { $turned } { -mm }: { $reason }
stopped-no-grip = { $reason }; the counter-spindle does not help: { $why }
bar-too-thick-for-bush = the bar of { $bar } { -mm } is too thick for the guide bush, which takes at most { $most } { -mm }
bar-too-thick-for-bush-only = the bar of { $bar } { -mm } is too thick for the guide bush, which takes at most { $most } { -mm }; without the bush, the machine takes { $collet } { -mm } for short parts
bar-too-thick-for-both = the bar of { $bar } { -mm } is too thick for the guide bush, which takes at most { $most } { -mm }, and for the headstock collet without the bush, which takes at most { $collet } { -mm }
bar-too-thick-for-collet = the bar of { $bar } { -mm } is too thick for the headstock collet, which takes at most { $most } { -mm }
tools-no-place = the machine has no place for every tool: { $missing }
tools-no-pair = all turning tools stand on one side, so an opposed pair cannot cut
tools-no-tandem = no two turning tools can cut in a tandem with the finishing tool on this side (see `opposed` and `tandem` in the tools of the machine)
tools-room = places for { $place }: { $needed } needed ({ $names }), { $places } on the machine
tools-room-elsewhere = places for { $place }: { $needed } needed ({ $names }), { $places } on the machine, { $elsewhere } more of another kind can be used
place-turning = turning tools
place-cross-driven = cross-driven tools
place-front-fixed = fixed tools for the front end
place-front-driven = driven tools for the front end
place-back-fixed = fixed tools for the rear end
place-back-driven = driven tools for the rear end
place-whirling = whirling heads
support-fails = nothing holds the bar
support-fails-last-grip = the last grip does not hold the part after part-off
check-fails = a limit is exceeded
proof-found-limit = the proof found that a limit is exceeded on this way
drill-fails = a driven tool bends the bar more than allowed
part-off-not-held = nothing holds the part at part-off
part-off-rear-work = work on the rear end needs a grip at part-off, and this machine has no counter-spindle
part-off-too-large = nothing holds the part at part-off, and with { $length } { -mm } of length and { $diameter } { -mm } of diameter it is too large for the tray, which takes parts up to { $most_length } { -mm } of length and { $most_diameter } { -mm } of diameter (part_off.tray)
part-off-too-large-default = nothing holds the part at part-off, and with { $length } { -mm } of length and { $diameter } { -mm } of diameter it is too large to fall without a grip: without part_off.tray in the machine file, parts up to { $most_length } { -mm } of length and { $most_diameter } { -mm } of diameter may fall
part-off-no-collet = the counter-spindle has no collet, so nothing holds the part at part-off
front-not-gripped = no collet takes hold of the finished front end
travel-end = the counter-spindle with its collet at { $nose } { -mm } is at the end of its travel of { $farthest } { -mm }
travel-end-centre = the counter-spindle with its centre is at the end of its travel of { $farthest } { -mm }
travel-too-short = the counter-spindle with its collet at { $nose } { -mm } does not travel that far
stroke-end-no-stop = the headstock is at the end of its stroke of { $stroke } { -mm }, and there is no place for a re-grip: every surface on the way must stay without a witness line
stroke-end-front-free = the headstock is at the end of its stroke of { $stroke } { -mm }, and it must not re-grip while the front end is free
stroke-end-centre = the headstock is at the end of its stroke of { $stroke } { -mm }, and it must not re-grip while a centre presses on the front
driven-part-off = part-off
driven-torque = { $section } needs a torque of { $needed } N·m at the spindle, but the headstock has { $most } N·m
driven-feed = { $section } needs a feed force of { $needed } { -n }, but the headstock feeds with at most { $most } { -n }
driven-power = { $section } needs a motor of { $needed } kW even at the lowest speed allowed, { $rpm } rev/min (speed_floor), but the headstock has { $most } kW
driven-front-work = { $work } needs a torque of { $needed } N·m at the spindle, but the headstock has { $most } N·m
driven-rear-work = { $work } on the rear end needs a torque of { $needed } N·m, but the counter-spindle has { $most } N·m
segments-pull-back = { $section } needs several travels, and no pull-back is short enough for its tolerance
thread-long-no-unit = { $section } is a thread of { $length } { -mm }. A single-point tool needs the bar pulled back by the whole thread, here at most { $longest } { -mm }, because { $stays } { -mm } of the bush land must stay on unturned bar. The machine has no whirling unit (`tools.whirling`). Ways out: a whirling unit, rolling (`thread_by: rolling`), no guide bush, or a shorter thread
thread-long-asked = { $section } is a thread of { $length } { -mm }. A single-point tool needs the bar pulled back by the whole thread, here at most { $longest } { -mm }, because { $stays } { -mm } of the bush land must stay on unturned bar. Remove `thread_by: single_point`: the thread can be whirled. Other ways out: rolling (`thread_by: rolling`), no guide bush, or a shorter thread
segments-interrupt = { $section } must not be interrupted, but it needs { $travels } travels and therefore { $segments } segments with witness lines between them

## Why no collet takes hold of the front

grip-no-stop = collet { $collet } could take hold at a turned length from { $from } to { $to } { -mm }, but the feed cannot stop there: { $why }
grip-no-stop-thread = { $section } is a thread, and a thread must not be interrupted
grip-no-stop-never = { $section } must not be interrupted
grip-no-stop-segments = a section that is cut in several travels allows a stop between its segments only
grip-no-farther = with a grip at { $nose } { -mm } the turned length comes to { $turned } { -mm } only: { $why }
grip-fails = collet { $collet } cannot take hold at a turned length of { $turned } { -mm }: { $why }
grip-out-of-travel = at a turned length of { $turned } { -mm } the counter-spindle cannot bring collet { $collet } to any place where it could grip
grip-no-counter-spindle = the machine has no counter-spindle
grip-forbidden = { $section } must not be gripped
grip-wished-never = a wish forbids a grip on { $section }
grip-front-too-thick = the { $front } { -mm } in front of { $section } does not pass collet { $collet }, which opens to { $passes } { -mm }
grip-too-deep = { $section } lies too deep, the counter-spindle bore takes { $depth } { -mm } only
grip-no-clear-length = { $section } has no clear length of { $hold } { -mm } for collet { $collet }
grip-more-sections = { $reasons }; { $more ->
    [one] { $more } more section cannot be gripped either
   *[other] { $more } more sections cannot be gripped either
}
grip-too-early = collet { $collet } can take hold on { $section } first, and the turned length must be at least { $from } { -mm } for that
grip-nothing-plain = the shaft has no plain section that a collet could grip
grip-no-collet-fits = no collet fits a plain section ({ $diameters }): { $collets }
grip-collet-range = collet { $collet } holds { $from } to { $to } { -mm }
length-mm = { $length } { -mm }

## Wishes

wish-impossible-no-counter-spindle = the wish "{ $wish }" is not possible: the machine has no counter-spindle
wish-impossible-no-stop = the wish "{ $wish }" is not possible: the feed must not stop there, on { $section }
wish-impossible-no-grip = the wish "{ $wish }" is not possible: collet { $collet } cannot grip there
wish-no-grip-goes-on = no grip can go on from the wished hand-over at { $at } { -mm }
wish-prevents = the wish "{ $wish }" prevents a plan: { $reason }; without this wish the cycle time is { $seconds } s
wishes-prevent = the wishes together prevent a plan: { $reason }; without them the cycle time is { $seconds } s

## Changes

change-works = { $change }: cycle time { $seconds } s
set-works = { $changes }: cycle time { $seconds } s
change-saves = { $change }: saves { $seconds } s per part
change-saves-most = { $change }: saves { $seconds } s per part; the largest saving is { $most } s: { $best }
change-drop-wish = drop the wish "{ $wish }"
change-rpm = reduce the speed to { $rpm } rev/min on the bar diameter ({ $vc } { -m-min })
change-speed-floor = allow reduced speed where a limit requires it, down to { $percent } % of the full speed
change-ap-max = allow a depth of cut of { $depth } { -mm } per travel (if the tool permits it)
change-no-bush = work without the guide bush
change-bush = work with the guide bush
change-centre = hold the front with the centre of the counter-spindle (hold: centre)
change-tandem = rough and finish in one travel with a tandem of two tools
change-opposed = turn with an opposed pair of tools, so that their radial forces balance
change-interrupt = allow a stop on { $section } (it leaves a witness line)
change-grip = allow a grip on { $section }
change-straightness = reduce the bow left in the turned shaft to { $bow } { -mm } per { -m }
change-collet = get a collet for { $diameter } { -mm } (holding length { $hold } { -mm }, clamping force { $force } { -n })
change-collet-opens = get a collet for { $diameter } { -mm } that opens to { $opens } { -mm }, so that the larger front passes (holding length { $hold } { -mm }, clamping force { $force } { -n })
change-bar = use a bar of { $diameter } { -mm }
change-set-up = do { $work } in a second set-up, as an operation of its own ({ $seconds } s of work and about { $loading } s to load the part)
change-turn-round = make the part from its other end: the rear face comes out of the bush first
change-shop-machine = make it on { $machine }
change-limit = relax the limit { $limit } to { $value } (if the part and the machine allow it)
change-collet-run-out = use counter-spindle collets with a run-out of at most { $mm } { -mm }
change-section-run-out = allow { $times } times the run-out of the sections (if the drawing office agrees)
change-shorter-stroke = let the headstock use only { $stroke } { -mm } of its stroke and re-grip more often
change-axial-load = let the counter-spindle keep an axial force of only { $force } { -n } on the shaft
change-stroke = use a machine with a headstock stroke of { $stroke } { -mm }
change-bush-max-bar = use a machine with a guide bush for { $bar } { -mm }
change-smaller-ap-max = take at most { $depth } { -mm } in one cut (ap_max)
change-smaller-feed = feed at most { $feed } { -mm-rev }
change-power = use a machine with { $power } kW at the headstock
change-torque = use a machine with { $torque } N·m at the headstock
change-feed-force = use a machine whose headstock feeds with { $force } { -n }
change-counter-torque = use a machine with { $torque } N·m at the counter-spindle
change-headstock-clamp-force = use a headstock collet with a clamping force of { $force } { -n } (if the bar allows it)
change-farthest = use a counter-spindle that travels to { $farthest } { -mm } from the bush face
change-bore-depth = use a counter-spindle with a bore { $depth } { -mm } deep
change-bore = use a counter-spindle with a bore of { $bore } { -mm }
change-clamp-force = use { $times } times the clamping force in the counter-spindle: { $collets } (if the part allows it)
change-clamp-force-collet = collet { $collet } { $force } { -n }
change-tray = let the part fall into a tray for parts up to { $length } { -mm } of length and { $diameter } { -mm } of diameter, if the machine has one (part_off.tray)
change-sleeve = put support sleeves into the counter-spindle bore, { $pitch } { -mm } apart, { $stiffness } N/µm each
change-forming = shave the hexagon socket { $size } in fine strokes instead of punching it
change-step = shave in strokes of { $step } { -mm }
change-whirling = use a machine with a whirling unit, for the threads that are too long for a single-point tool
change-rolling = roll the threads that are too long for a single-point tool (`thread_by: rolling`), with rolls as wide as the thread
change-engagement = leave { $mm } { -mm } of the bush land on unturned bar when the bar is pulled back (`engagement_min`)
change-tool-places = use a machine with { $number ->
    [one] { $number } place
   *[other] { $number } places
} for { $place }

## What was tried

progress-sets = looking for changes that help: { $tried } sets tried, now { $set }
tried-stopped = The search for changes was stopped. What is known so far is told
tried-bound = The search for changes ended at its bound of work, after { $sets } sets of changes. A set that helps may exist
tried-forbidden = No set of changes helps. Even with all { $changes } changes of the list together: { $reason }
tried-more = No set of up to { $most } changes is enough ({ $sets } sets were tried). All changes of the list together would be
tried-all = No set of changes is enough for { $job } ({ $sets } sets were tried)
progress-finer-stops = no plan with stop positions every { $coarse } { -mm }, trying every { $fine } { -mm }

## Notes

note-not-listed = Not in the tool list: { $tools }. For these the numbers under `cutting` count
note-drive = At the speeds of this plan turning needs up to { $power } kW of the headstock's motor ({ $power_at }), a torque of { $torque } N·m at the spindle ({ $torque_at }) and a feed force of { $force } { -n } ({ $force_at })
note-drive-not-given = { $told }. The machine file does not give { $keys }: check the machine.
note-power-lowers = { $section }: the headstock's power of { $power } kW lowers the speed. Its travels run at no more than { $speeds } rev/min
note-ground = { $section } is ground later: turned to { $turned }, ground to { $ground }
note-small-radius = { $section }: the corner has a radius of { $radius } { -mm }, and the nose of the tool leaves at least { $nose } { -mm }
note-whirled = a thread is too long to be pulled back for single-point passes, or `thread_by` says so: it is whirled in one travel
note-whirled-assumed = a thread is too long to be pulled back for single-point passes, or `thread_by` says so: it is whirled in one travel. A whirling unit is assumed, because the machine file lists no tool places. Write `tools` with `whirling: 1`, or without `whirling` if the machine has none
note-rolled = { $section }: the thread is rolled on a blank of { $blank } { -mm }, about the pitch diameter. The rolls must be at least as wide as the thread, { $length } { -mm }. Find the exact blank by trial; its force is not computed
note-left-hand = { $section }: { $thread } is a left-hand thread. Check direction of spindle, feed and tool
note-passive-deep = Passive forces were compared with measured ones up to a depth of cut of { $measured } { -mm }. The deepest cut here is { $depth } { -mm }, so its passive force is extrapolated.
note-passive-floor = Where the edge gives a smaller passive force, { $share } of the main force counts (cutting.passive_floor; common practice, no source).
note-chips-of-drill = The chip of the drill of { $size } { -mm } is { $chip } { -mm } thick; its force is extrapolated: specific cutting forces are known for chips of { $low } to { $high } { -mm }. Thinner chips take more force than extrapolated, because the edge is not sharp.
note-chips-of-tap = The chip of the tap of { $size } { -mm } is { $chip } { -mm } thick; its force is extrapolated: specific cutting forces are known for chips of { $low } to { $high } { -mm }. Thinner chips take more force than extrapolated, because the edge is not sharp.
note-chips-of-cutter = The chip of the milling cutter of { $size } { -mm } is { $chip } { -mm } thick on average; its force is extrapolated: specific cutting forces are known for chips of { $low } to { $high } { -mm }. Thinner chips take more force than extrapolated, because the edge is not sharp.
note-chips-of-turning = The chip of turning with a feed of { $size } { -mm-rev } is { $chip } { -mm } thick; its force is extrapolated: specific cutting forces are known for chips of { $low } to { $high } { -mm }. Thinner chips take more force than extrapolated, because the edge is not sharp.
note-drill-size = The thrust of the drill of { $size } { -mm } is extrapolated: its formula is known for drills of { $low } to { $high } { -mm }.
note-class-assumed = Drills, taps and cutters run as in { $class }. This was assumed from modulus, density and kc1.1 of { $material }. Give `class` in shaft.material if it is something else.
note-feed-lowered = { $section }: feed lowered from { $given } to { $feed } { -mm-rev } to reach Ra { $ra } { -um }, with { $factor } times the ideal roughness (cutting.ra_factor)
note-ra-floor = { $section }: Ra { $ra } { -um } is not above the finish that turning leaves at any feed, { $floor } { -um } (cutting.ra_floor). The feed is that for { $floor } { -um }. Grind or polish this surface, or lower ra_floor if your machine turns finer.
note-unusual-pitch = { $thread }: { $standard } has no such thread; check that a tool is available
note-falls-by-default = The part falls at part-off, because it is small: without part_off.tray in the machine file, parts up to { $length } { -mm } of length and { $diameter } { -mm } of diameter may fall (common practice, no source). If the machine has no tray, or a smaller one, give part_off.tray: with a length of 0 no part falls.
note-centre = The centre comes when the front end is finished and leaves before part-off. The time of one hand-over is counted for both (common practice, no source).
note-torque-share = The tightest check is the torque of part-off, and the last grip counts with the whole of it. By the twist of the bar alone { $percent } % of it would go to this grip. To count that, give `torsional_stiffness` of the counter-spindle.
note-no-limit-costs = No limit costs time: no single limit, when relaxed, gives a faster plan.
note-rule-left-out = { $rule }; this rule was left out for the values shown here
optimum-proven = no faster plan exists ({ $stops } stop positions tried)
note-slow-cutting = The reduced speed on { $section } is a cutting speed of { $speed } { -m-min }, below the usual { $low } to { $high } { -m-min } of { $material }. The surface may be rougher. Check it on the first piece.
optimum-gap = at most { $percent } % slower than the fastest possible plan ({ $stops } stop positions tried)

## The timeline

timeline-hand-over = hand-over at { $at } { -mm }
timeline-centre = centre: comes before the first cut, leaves before part-off
timeline-regrip = headstock re-grip at { $at } { -mm }
timeline-part-off = part-off
timeline-part-off-falls = part-off, the part falls into the tray
timeline-unload = unload the part
critical-hand-overs = hand-overs
critical-regrips = headstock re-grips
critical-tool-changes = tool changes
critical-cutting = cutting { $section }
critical-overhead = approach and return

## Tolerances

tolerance-not-in-table = the table of tolerance classes has no diameter of { $diameter } mm, it goes up to { $most } mm
tolerance-not-in-table-help = give the deviations in mm: `tolerance: [-0.05 mm, 0]`

## The mechanics at one moment

at-out-of-range = `--{ $option }` is { $value }
at-out-of-range-help = `--{ $option }` must be from { $low } to { $high }
at-not-held = nothing holds the bar in this state
at-not-held-help = check the stiffnesses in the machine file
at-no-counter-spindle = the machine has no counter-spindle
at-no-counter-spindle-help = leave out `--grip`
at-grip-on-centre = With `hold: centre` no collet holds the front
at-grip-on-centre-help = Leave `--grip` out, or write `hold: collet` in the job
at-no-such-collet = the machine has no collet { $collet }
at-no-such-collet-help = its collets are: { $collets }
at-no-collet-fits = no collet of the machine holds { $diameter } { -mm }, the diameter at { $at } { -mm }
at-no-collet-fits-help = move `--grip`, or choose a collet for the calculation with `--collet`: { $collets }
at-stage-end-with-bush = `--stage-end` is for work without a bush
at-stage-end-with-bush-help = leave out `--stage-end`
at-headstock-without-bush = `--headstock` is for work with a guide bush
at-headstock-without-bush-help = use `--stage-end`: without a bush the headstock collet is set for the end of the stage
at-cannot-be-cut-help = run `check` to see what would help

## A place of a plan moved by hand

move-no-plan = there is no plan, so nothing can be moved
move-no-plan-help = correct the job first
move-not-there = the place cannot be moved there
move-not-there-help = a stage must keep a length, and a hand-over must stay between the hand-overs beside it
move-off-shaft = the collet would not be on the shaft

## Faults found by the proof

proof-failed = the plan does not pass its proof ({ $rule }: { $text })
proof-limit = at a turned length of { $turned } { -mm } the value is { $demand }, the limit is { $limit }
proof-no-plan = this is not a feasible plan
proof-no-such-collet = the machine has no collet { $collet }
proof-no-counter-spindle = the plan uses collet { $collet }, but the machine has no counter-spindle
proof-way-of-turning = the plan is for { $holding } and { $tools }, the job asks for { $job_holding } and { $job_tools }
proof-bar-too-thick = the bar of { $bar } { -mm } is too thick, this way of turning takes at most { $most } { -mm }
proof-stage-order = the stage runs from { $from } to { $to } { -mm }, but the stage before ends at { $before } { -mm }
proof-free-stage = the front end must be free in the first stage, and in no other stage
proof-centre-not-asked = the plan has a centre, and the job does not ask for one
proof-centre-told = the plan does not tell the centre of the job
proof-centre-stages = on a centre the whole part is one stage
proof-centre-travel = at the end the nose of the counter-spindle is { $at } { -mm } from the bush face, and it travels to { $farthest } { -mm }
proof-driven = the cut from { $from } to { $to } { -mm } needs { $needed }, and the headstock has { $limit }
proof-drive = the plan tells another need of the headstock than { $power } kW, { $torque } N·m and { $force } { -n }
proof-bar-feed = the cut from { $from } to { $to } { -mm } runs at { $rpm } rev/min, but the bar feeder allows at most { $most }
proof-part-off-told = what the plan says of the part at part-off does not agree with its last stage and the machine
proof-falls-rear-work = nothing holds the part at part-off, but its rear end must be worked on afterwards
proof-too-large-to-fall = nothing holds the part at part-off, and with { $length } { -mm } of length and { $diameter } { -mm } of diameter it must not fall: at most { $most_length } { -mm } of length and { $most_diameter } { -mm } of diameter may
proof-end = the last stage ends at { $end } { -mm }, but part-off is at { $part_off } { -mm }
proof-no-stop = the feed must not stop at { $at } { -mm }
proof-hand-overs-listed = the list of hand-overs does not agree with the stages
proof-regrips-listed = the list of headstock re-grips does not agree with the stages
proof-no-feed-out = without a bush, each stage after the first must begin with a headstock re-grip
proof-regrip-outside = the headstock re-grip at { $at } { -mm } is outside its stage
proof-regrip-front-free = the headstock opens at { $at } { -mm } while the front end is free
proof-stroke = from { $from } to { $to } { -mm } the headstock would need more than its stroke of { $stroke } { -mm }
proof-grip-no-collet = the stage has a grip, but the plan has no collet
proof-grip-length = the grip does not have the holding length of the collet
proof-grip-forbidden = { $section } must not be gripped
proof-grip-diameter = collet { $collet } does not hold { $diameter } { -mm }
proof-grip-described = the plan says that the grip is on { $diameter } { -mm } of section { $section }, but it is on { $real_diameter } { -mm } of section { $real_section }
proof-grip-not-plain = the grip from { $from } to { $to } { -mm } is not on one cylinder
proof-grip-feature = a hole or keyseat from { $from } to { $to } { -mm } is under the grip
proof-grip-front = the { $front } { -mm } in front does not pass collet { $collet }, which opens to { $passes } { -mm }
proof-grip-depth = { $length } { -mm } of the shaft do not fit into the counter-spindle bore, which is { $depth } { -mm } deep
proof-grip-not-turned = at a turned length of { $turned } { -mm } the grip up to { $to } { -mm } is not turned yet
proof-grip-travel = at a turned length of { $turned } { -mm } the collet is { $distance } { -mm } from the bush face, allowed is { $nearest } to { $farthest } { -mm }
proof-time = the plan gives { $given } s for { $name }, but the sum is { $sum } s
proof-cycle-time = the plan gives a cycle time of { $given } s, but the operations give { $sum } s
proof-wish = the wish "{ $wish }" is not kept
proof-wish-grip = the grip from { $from } to { $to } { -mm } is against the wish "never grip { $name }"
proof-wish-hand-overs = the plan has { $number } hand-overs, but the wish allows at most { $most }
proof-cut-not-as-asked = the cut from { $from } to { $to } { -mm } is not as the job asks
proof-cut-missing = nothing cuts the length from { $from } to { $to } { -mm }
proof-speed = from { $from } to { $to } { -mm } the plan turns at { $rpm } rev/min, the job asks for { $wanted } rev/min
proof-speed-range = from { $from } to { $to } { -mm } the plan turns at { $rpm } rev/min, the job asks for { $least } to { $wanted } rev/min
proof-not-held = nothing holds the bar
proof-not-held-at = at a turned length of { $turned } { -mm } nothing holds the bar
proof-not-held-open = nothing holds the bar while the counter-spindle collet is open
proof-not-held-last = the last grip does not hold the part
proof-no-tool-place = the machine has no place for every tool
proof-timeline-order = the timeline does not show the work at the stops in the order that is proven
proof-fed-on = { $work } is done at a turned length of { $turned } { -mm }, but the machine cannot feed the bar that far
proof-work-missing = { $work } is not done where its tool can reach it
proof-work-stage = { $work } at a turned length of { $turned } { -mm } does not belong to this stage
proof-length = the plan says { $told } { -mm }, but the shaft is { $length } { -mm } long
proof-margin = the plan says { $told }, but the proof finds { $proven }
proof-margin-missing = the plan gives no margin, but the proof finds { $proven }
proof-margin-at = { $check } uses { $used } of its limit, which does not give a margin of { $margin }
proof-line-missing = the stop at { $at } { -mm } leaves a witness line that is not in the plan
proof-line-without-stop = the plan has a witness line at { $at } { -mm }, but nothing stops there
proof-line-section = the witness line at { $at } { -mm } is on section { $section }, marked { $interrupt }
proof-pieces = the plan says { $told } pieces per bar, but a bar gives { $real }
proof-material = the plan says { $told_kg } kg per part and a remnant of { $told_mm } { -mm }, but it is { $kg } kg and { $mm } { -mm }
proof-cost = the plan says { $told } per part, but the cost is { $real }
proof-cost-no-rates = the plan says { $told } per part, but the job gives no rates
proof-cost-missing = the plan gives no cost, but the rates of the job give { $real }

## Cautions: general rules of safe turning, common practice, no source

estimate = An estimate: the machine's manual, the local rules and a qualified setter decide.
caution-not-a-plan = Do not run this: it is not a plan. The stages only show how far the work would come within its limits.
caution-twice = { $own } (English: { $english })
caution-read-first = Read the cautions on the following pages before you set up. The machine's manual, the local rules and a qualified setter decide.
caution-estimate = This is an estimate. Cutting forces are accurate to ± 25 % at best. Stiffnesses are only as good as the values given for the machine.
caution-who-decides = The machine's manual, the local rules and a qualified setter decide. If they differ from this plan, follow them and not the plan.
caution-first-piece = Prove the first piece at reduced speed and feed, block by block, with the doors closed. Measure it before you increase speed or feed.
caution-limits = Never exceed the limits of a stage: its turned length, its unsupported length, its speed. The limits of the machine, the collets and the bar feed also apply. The lowest limit counts.
caution-at-risk = This plan is AT RISK. With uncertain inputs only { $good } of 100 sampled parts stay within every limit. Raise speed and depth in small steps, watch the bar at each step, and stop when it vibrates, whips or leaves its size.
caution-bar-behind = No unsupported bar behind the headstock spindle: above a certain speed it bends out and strikes. Guide the bar over its full length, or cut it shorter.
caution-front-free = { $number ->
    [one] In stage { $stages } the front end of the part turns free. Keep out of the plane in which it turns, and increase the speed in steps.
   *[other] In stages { $stages } the front end of the part turns free. Keep out of the plane in which it turns, and increase the speed in steps.
}
caution-counter-spindle = Part in the counter-spindle: check the collet, the clamping and the synchronisation before the headstock collet opens, and again before part-off. If clamping or synchronisation fails, both spindles must stop together.
caution-front-long = The free front gets { $ratio } times as long as its diameter. A long thin front can whip: raise the speed in steps, watch it, and keep out of its reach.
caution-centre = A centre supports the front: grease or cool it, set its force before the bar turns, and check that the centre hole is clean. Do not turn the stage without it. It must leave before part-off; then the front turns free, so keep out of the plane in which it turns.
caution-thin-wall = The wall is only { $wall } { -mm } where a collet holds Ø{ $held } { -mm }. The collet may crush it: clamp with less force, or put a plug into the bore, and measure the first piece.
caution-part-off-not-held = Nothing holds the part at part-off: it comes loose while it turns. Part off slowly, let a tray catch the part, keep out of its way, and never reach for it.
caution-part-falls = The part falls into the tray at part-off. It comes loose while it turns: it may catch in the tool, and it may be marked or bent when it falls. Slow the last of the cut, keep the way to the tray clear, keep the doors closed, and look at the first parts before you go on.
caution-no-bush = Without the guide bush, only the headstock collet holds the bar. Do not exceed the lengths shown.
caution-fixed-bush = The guide bush stands still, and the diameter of the bar { $bar } may vary by { $width } { -mm }, which is { $side } { -mm } on each side. A fixed bush needs { $least } to { $widest } { -mm } of clearance on each side, so bar of h6 or h7 (at most { $most } { -mm }). In a bush that is too wide the part gets out of round; in one that is too tight the bar seizes. Use ground bar, a bush that turns with the bar, or work without the bush.
caution-fixed-bush-unknown = The guide bush stands still, and the tolerance of the bar is not given. A fixed bush needs { $least } to { $widest } { -mm } of clearance on each side, so ground bar of h6 or h7 (at most { $most } { -mm }). Drawn or turned bar (h9 to h12) needs a bush that turns with the bar, or work without the bush.
caution-following-bush = The guide bush turns with the bar, and the diameter of the bar { $bar } may vary by { $width } { -mm }. Such a bush takes bar up to about h9 (at most { $most } { -mm }; common practice). In a bush that is too wide the part gets out of round; in one that is too tight the bar sticks. Use bar of h9 or finer, or work without the bush.
caution-following-bush-unknown = The guide bush turns with the bar, and the tolerance of the bar is not given. Such a bush takes bar up to about h9 (at most { $most } { -mm }; common practice). Use bar of h9 or finer, or work without the bush.
caution-bored = The stiffness does not include holes, sockets and keyways: at those places the shaft is softer than computed.
caution-cross-work = The stiffness does not include cross holes and keyseats: at those places the shaft is softer than computed.
caution-work-aside = While the rear end of a part is worked on, the next part is already turned at its front end. Make sure that counter-spindle, part and tools keep clear of it in every position. Try this without a part first.
caution-shaving = Shaving and punching tools do not turn. The spindle must stand still, be held at its angle, and be locked against starting while they stroke. The force acts along the axis: check the clamping first.
caution-never-line = The feed stops for a feature on a surface marked "never" and leaves a witness line there: { $places }. Agree this with the drawing office, or cut the feature elsewhere.
caution-never-line-place = { $at } { -mm } on { $section }
caution-section = section { $number }
caution-section-named = section { $number } ({ $name })
caution-not-a-program = This table is not a program, and no machine may run it. A qualified programmer must make a program of it: add clearances, retracts, speeds of works that it does not tell, and every interlock. Test the program without a part first (dry run). The machine's manual counts.
caution-chips = Long chips wind round slender work. Stop the machine to clear them. Never clear them by hand while the machine turns.

## Roughing and finishing

tandem-no-bush = there is no guide bush, so the last pass is a travel of its own
tandem-no-tools = the machine lists no two tools for it (`opposed` or `tandem` in its tools)
tandem-back = the diameter steps down at its front, and both tools would have to be back-turning tools
tandem-in-counter-spindle = the counter-spindle comes to { $nearest } { -mm } from the bush, and the finishing tool would stand in it
tandem-step = when the roughing tool lifts at the end, the diameter changes by { $step } { -um }, and at most { $limit } { -um } are allowed
note-one-cut = { $section } asks for { $asked } and is cut { $depth } { -mm } deep in one cut, without a finishing cut. { $instead }
note-one-cut-both = A last pass is possible without a line (`finish_pass: true`), or a second tool finishes in the same travel (`tools: tandem`).
note-one-cut-pass = A last pass is possible without a line (`finish_pass: true`).
note-one-cut-tandem = It cannot be pulled back as a whole for a last pass. A second tool can finish in the same travel (`tools: tandem`).
note-one-cut-why = It cannot be pulled back as a whole for a last pass, nor can two tools cut it in one travel: { $why }.
note-tandem = Roughed and finished in one travel by two tools: { $sections }.
note-tandem-last-pass = { $section } has a last pass of its own. Both tools of the tandem do not cut it: { $why }.
asked-ra = Ra { $ra }
asked-tolerance = a tolerance of { $width } { -mm }
asked-both = a tolerance of { $width } { -mm } with Ra { $ra }
progress-confidence = looking for a plan that holds in { $share } of sampled parts
plan-confidence-range = a share of parts is wanted, { $range }: write 0.95 for 95 of 100 parts
measure-support = { $reading }. `spanhold fit` turns such readings into a stiffness and its spread
measure-centre = Press a test bar with the centre, load it sideways beside the centre and read a dial there: load over deflection, minus what the bar bends, is its stiffness
measure-sleeve = Load a test bar sideways inside the counter-spindle beside a support and read a dial there
measure-kc = Turn a test cut deep enough to read the power of the main spindle with and without it. The difference over chip area and cutting speed is kc at the chip thickness h of that cut. Write kc times h (in mm) to the power mc as kc11 of an own material
measure-passive = Turn a free end twice at one depth, at the collet and far from it. The diameters differ by twice the passive force over the stiffness there
measure-e = Lay the bar on two supports, load it in the middle and read a dial there. Measure the diameter to { $fine } { -mm }: E follows from the deflection
measure-damping = Tap the gripped bar, record the ringing, and count the swings n until it has halved: the damping ratio is 0.11 / n
measure-ra = Measure the Ra of a turned part. Divide it by feed squared over 32 nose radii and write the result as cutting.ra_factor
measure-straightness = Turn some parts, roll each on two supports and read a dial in the middle. Straightness is half of the mean reading, divided by the square of the distance of the supports in metres
measure-bar = Measure the bars of the lot at both ends and write their tolerance or scatter.bar
measure-run-out = Clamp a ground pin in the collet, turn it and read a dial. Write the reading as run_out of the collet
sampled-no-plan-help = a plan is needed first; see what stops it
sampled-no-part = there is no sampled part with this number
sampled-no-part-help = give a number from 1 to { $samples }
recheck-holds = It holds in { $good } of 100 sampled parts.
recheck-holds-told = It holds in { $good } of 100 sampled parts; the plan says { $told }.
recheck-at-risk = AT RISK: it holds in { $good } of 100 sampled parts only.
recheck-at-risk-told = AT RISK: it holds in { $good } of 100 sampled parts only; the plan says { $told }.
measure-counter-spindle = Grip a test bar whose diameter one of the collets holds, load it beside the nose and read a dial there. `spanhold fit` turns such readings into a stiffness and its spread
