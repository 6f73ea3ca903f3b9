# The topics of `help`: files, checks, materials.
help-job =
    The job file says what is to be turned: the shaft, the bar, the machine, and how to cut. It is a YAML file.
    Lengths are in mm, or in inches with `units: inch`. Positions on the shaft count from the front face: the end that leaves the guide bush first.
    `spanhold new` prints a longer example with comments. An editor can check the file while you type: `spanhold schema job`.
    `[]` after a name means: each item of the list.
help-machine =
    The machine file describes one lathe. It is a YAML file. A job names it, or a job has the same keys under `machine`.
    Lengths are in mm, or in inches with `units: inch`. Stiffnesses are in N/µm. Take lengths and speeds from the machine's manual. Measure the stiffnesses: see `spanhold help readings`.
    `[]` after a name means: each item of the list.
help-shop =
    The shop's file has what is the same for all jobs of a workshop: machines, collets, materials with prices, bars, rates, house values.
    It is a YAML file. spanhold finds it as `shop.yaml` in the folder of a job or above it; `--shop FILE` or `shop` in the job names another.
    A job may leave out all that is in it, and what a job gives counts first. `spanhold new shop shop.yaml` writes one with comments.
    `cutting`, `limits`, `planning`, `scatter`, `order` and `rates` have the keys of a job (`spanhold help job`), except `cutting.vc` and `order.pieces`.
    `[]` after a name means: each item of the list.
help-readings =
    The readings file has what you measured on the machine. `spanhold fit` calculates the stiffness of each support from it.
    Positions count in mm from the bush face towards the counter-spindle. Without a bush they count from the nose of the headstock's collet.
    Lock out the machine before you measure. Follow its manual and the local rules.
    `[]` after a name means: each item of the list.
help-materials =
    Built-in materials for `shaft.material` in a job. Give the name, the number or another name. Capitals, spaces, hyphens, the name of the system (AISI, JIS, UNS, W.-Nr.) and a standard before the name do not matter.
    E: Young's modulus. kc1.1 and mc: specific cutting force at 1 mm chip thickness, and its exponent. vc: usual cutting speeds with coated carbide and coolant.
    Confidence says how far to trust kc1.1 and mc. high: one known source of the grade. medium: sources differ, or a group that fits. low: an estimate.
    Values are from memory of handbooks and standards, from a tool maker's catalogue, or estimates. Cutting forces are good to ± 25 % at best.
    For another material give a map: `name`, `e_gpa`, `density`, `kc11`, `mc`, and if you want `poisson`, `vc` and `class`. See `spanhold help job`.
help-speeds =
    Speeds and feeds of drills, taps and milling cutters. The class of the material gives them. A built-in material has its class. Give `class` for a material of your own; else it is assumed from the other numbers, and the plan says so.
    Drills and taps are of high-speed steel, cutters of coated solid carbide that cut over their whole width, all with coolant. Carbide drills run two to four times as fast. Driven tools turn no faster than `driven_max_rpm` of the machine.
    The letters say where each value comes from: drill; tap; cutter. The ranges of the sources are wide.
    Between two diameters the feed of a tooth is straight. A thinner cutter has it in proportion, a thicker one has the last.
help-checks =
    The checks of a plan. A check compares a value with its limit. A plan holds if each value uses at most 100 % of its limit.
    The limits are defaults of common practice, without a source. Change them in the job under `limits`.
help-plan-file =
    The keys of plan.json, the file that `spanhold plan --out` writes and `spanhold plan --format json` prints.
    Every number is finite. `null` means: there is none. Many names end in their unit. Turned lengths and positions on the shaft count from the front face.
    `[]` after a name means: each item of the list.
help-group-root = Keys of the file: { $what }.
help-group = { $paths }: { $what }.
help-group-kinds = { $title } Give exactly one of these kinds: { $kinds }.
help-head-key = key
help-head-meaning = meaning
help-head-unit = unit
help-head-takes = takes
help-head-holds = holds
help-head-left-out = if left out
help-head-check = check
help-head-looks-at = looks at
help-head-made = when
help-head-limit = key of the limit
help-head-material = name
help-head-class = class
help-head-drill-vc = drill, m/min
help-head-drill-feed = feed of drill, × diameter
help-head-tap-vc = tap, m/min
help-head-mill-vc = cutter, m/min
help-head-tooth-feed = feed of a tooth
help-head-sources = sources
help-head-cutter = diameter of the cutter, mm
help-head-letter = letter
help-head-source = source
help-speeds-meaning = Classes:
help-speeds-classes = Speeds and feeds:
help-speeds-teeth = Feed of a tooth by the diameter of the cutter, mm:
help-speeds-sources = Sources:
tooth-feed-full = full
tooth-feed-small = small
help-head-number = number
help-head-names = other names
help-head-state = state
help-head-e = E, GPa
help-head-density = density, kg/m³
help-head-kc = kc1.1, N/mm²
help-head-mc = mc
help-head-vc = vc, m/min
help-head-confidence = confidence
help-takes-range = { $least } to { $most }
help-takes-text = text
help-takes-number = number
help-takes-whole = whole number
help-takes-flag = `true` or `false`
help-takes-null = `null`
help-takes-map = map
help-takes-list = list: { $item }
help-takes-pair = two values: { $item }
help-takes-or = { $one } or { $other }
help-takes-any = any value
help-must-be-given = must be given
help-must-be-given-with = must be given with { $keys }
help-another-kind = another kind
help-another-kind-of = another kind: { $others }
help-material-about = { $name } ({ $group }, { $state }), Poisson's ratio { $poisson }, class { $class }. kc1.1 and mc: { $source }.
help-material-group = { $group }:
help-materials-more =
    `spanhold materials WORD` tells the other names, the state of the bar and the sources of what a word matches: a name, a number or a group.
    `--format json` gives everything.
help-material-names = { "  " }Other names: { $names }.
help-check-at-rest = at every turned length
help-check-by-speed = at every turned length; a lower speed helps
help-check-at-event = at one event
help-check-at-both = in every state of a cut, and for work on an end
help-check-no-limit = none
help-check-no-default = depends on tool, bar and holding
help-check-stiffness = The lateral stiffness of the bar at the tool.
help-check-span-stiffness = The lowest lateral stiffness between the grip and the bush: a house limit for one tool. It does not apply where the front could run free.
help-check-free-ratio = A house rule, off if the key is left out: the free length at the front divided by its mean finished diameter (L/d).
help-check-whirl = Speed divided by the lowest critical speed. Texts call it "critical speed".
help-check-whip = Bow of the turned shaft, made larger by rotation.
help-check-sag = Bending under the shaft's own weight between the grip and the bush. A free front: see `pick_up`.
help-check-pick-up = How far a free front is off the axis, by its bow and its own weight, when the collet of the counter-spindle comes over it.
help-check-bore = The same bending inside the counter-spindle, made larger by rotation, against the room in the bore. The limit's key is the clearance that stays free.
help-check-cut = Change of the diameter along a cut because the bar bends. The limit is a share of the tolerance.
help-check-chatter = Depth of cut against the depth at which regenerative chatter begins. `limits.damping_ratio` changes that depth.
help-check-buckling = Axial load that presses the bar, against a share of the load at which it buckles. The row is left out below a quarter of that limit.
help-check-run-out = Run-out of the surface in cut because the collet of the counter-spindle runs out. Made where collet and section both have `run_out`.
help-check-drill = Bending under the force of a cross drill or cutter, at the moment it works.
help-check-release = Drop of the shaft at the old grip when the collet opens at a hand-over.
help-check-torque = Torque of part-off and of work on the rear end, times a margin, against the friction of the last grip.
help-check-push = Thrust and torque of work on an end, times a margin, against the friction of the collet that holds.
help-check-back = Bending of the rear end under work after part-off. The limit is a share of that work's tolerance.
help-unknown-topic = there is no help on `{ $word }`
help-topics-and-commands = Topics: { $topics }. Commands: { $commands }
help-nearest = did you mean `{ $near }`? { $all }
help-more-topics = Topics: { $topics }. Read one with: spanhold help TOPIC
help-materials-of-shop = Of `{ $file }`
help-head-price = per kg
help-no-material = no built-in material matches `{ $word }`
help-all-materials = `spanhold materials` lists all
left-out-none = none
left-out-defaults = the defaults of its keys
left-out-shaft-name = `shaft`
left-out-run-out = `run_out` is not checked
left-out-section-name = "section" and its number
left-out-section-kind = a plain cylinder, thread, taper or flats
left-out-section-sides = must be given with `across_flats`
left-out-section-ra = no roughness required
left-out-section-tolerance = ISO 2768-m
left-out-thread-by = `single_point`; `whirling` where the bar cannot be pulled back by the whole thread
left-out-section-interrupt = `never` for a thread, for IT7 or finer, for Ra 0.8 or finer; `avoid` up to IT9 or Ra 1.6; else `free`
left-out-section-grip = `true` for a plain cylinder, else `false`
left-out-feature-thrust = calculated from the hole
left-out-feature-at = must be given with `cross_hole`, and with `tapped_hole` or `engrave` along the shaft
left-out-language = that of the shop's file, else `en`
left-out-feature-depth = must be given with `axial_hole`, `hex_socket`, and `tapped_hole` on an end; { $default } for `engrave`
left-out-feature-drill-depth = `depth` plus four pitches
left-out-material-vc = then give `cutting.vc`
left-out-material-class = assumed from modulus, density and kc1.1
left-out-finisher = same side, with the edge of the roughing tool
left-out-finisher-edge = that of the roughing tool
left-out-cutting-vc = middle of the material's usual range
left-out-cutting-feed = roughing 0.15; finishing from Ra, at most 0.15
left-out-cutting-ap-finish = { $default }, but at most `ap_max`
left-out-stiffness = { $share } N/µm for each mm of bar diameter
left-out-span-stiffness = as `stiffness_min`
left-out-whip = { $share } mm for each mm of bar diameter
left-out-rates = no cost is calculated
left-out-order = no order is quoted
left-out-vary = a single part
left-out-wish-nose = the planner chooses it
left-out-wish-most = no limit
left-out-scatter-support = `scatter` of the machine, else `supports`
left-out-own-scatter = `scatter` of the job or of the shop
left-out-confidence = none: the fastest plan
left-out-scatter-bar = even over the tolerance of the bar; without a tolerance: none
left-out-machine-name = name of the file
left-out-bush = no bush; only `holding: no_bush`
left-out-no-bush = no work without the bush
left-out-engagement = half of `land`
left-out-counter-spindle = no counter-spindle
left-out-sleeve = no supports
left-out-centre = no centre
left-out-centre-stands-out = its tip counts as at the nose
left-out-torsional-stiffness = the last grip carries the whole torque of part-off
left-out-edge = a sharp edge
left-out-grind = it is not ground
left-out-drive = it is not checked; the plan tells what is needed
left-out-clamp-force = `push` on the front end is not checked
left-out-bush-kind = no caution about the tolerance of the bar
left-out-bar-feed = the bar feeder limits no speed
left-out-tray = with a counter-spindle: parts up to { $length } mm × Ø{ $diameter } mm may fall; without: all parts fall
left-out-tools = tool places are not checked
left-out-turret = no turret
left-out-fit = all supports of the machine
left-out-set-up-name = "set-up" and its number
left-out-set-up-headstock = must be given with the bush
left-out-set-up-grip = the front is free
left-out-set-up-collet = must be given if more than one collet can hold the bar
left-out-dial = then give `frequency`
left-out-frequency = then give `dial`
left-out-read-at = at the load
man-unknown-command = there is no command `{ $word }`
man-commands = Commands: { $commands }
class-free-cutting-steel = free-cutting steel
class-structural-steel = structural and case-hardening steel
class-carbon-steel = unalloyed steel from about 0.35 % carbon
class-alloy-steel = alloyed steel, quenched and tempered
class-tool-steel = tool steel
class-free-cutting-stainless = stainless steel with sulphur
class-ferritic-stainless = ferritic and martensitic stainless steel
class-austenitic-stainless = austenitic stainless steel
class-duplex-stainless = duplex and precipitation-hardening stainless steel
class-heat-resistant-steel = heat-resistant alloy of iron
class-pure-titanium = pure titanium
class-titanium-alloy = titanium alloy
class-cobalt-chromium = cobalt-chromium alloy
class-nickel-alloy = nickel alloy
class-free-cutting-copper = leaded brass and other free-cutting copper alloys
class-copper-alloy = copper, bronze, brass without lead
class-aluminium = aluminium alloy
class-plastic = plastic

# The shop's file.
schema-shop = what a workshop has
schema-shop-of-job = path of the shop's file; `none`: no shop's file counts
schema-shop-machine = a machine
schema-shop-machines = the machines; the first is the usual one
schema-shop-machine-name = name by which a job asks for it
schema-shop-collets = collets for the counter-spindles, beside those of the machine files
schema-shop-collet-machines = machines that it fits
schema-shop-materials = prices and values of grades, or the path of a file with this list
schema-shop-material = a grade
schema-shop-grade = a grade of the built-in table; values beside it replace those of the table
schema-shop-grade-name = name of a grade of your own
schema-shop-bars = bars in stock
schema-shop-bar = a bar
schema-shop-bar-material = name of its material
schema-language = language of texts and sheets
left-out-to-shop = from the shop's file
left-out-shop-machine-name = name of its file
left-out-shop-machine-file = `machine` must be given
left-out-shop-machine-here = `file` must be given
left-out-shop-per-hour = `rates.machine_per_hour`
left-out-shop-collet = all machines
left-out-shop-grade = a grade of your own
left-out-shop-grade-value = that of the table; must be given without `grade`
left-out-shop-grade-or = that of the table; without `grade` { $default }
left-out-shop-grade-maybe = that of the table; without `grade` none
left-out-shop-grade-name = that of the table; must be given without `grade`
left-out-shop-price = `rates.material_per_kg`
left-out-shop-house = usual values
left-out-shop-bar-length = 3000

# The tool list.
schema-tool-list = the tools that there are; the plan picks from them
schema-tool = a tool
schema-tool-name = name of the tool
schema-tool-kind = what it does
schema-tool-station = where it stands
schema-tool-insert = its insert, in your words
schema-tool-rough = its roughing cut
schema-tool-finish = its finishing cut
schema-tool-materials = other cuts in some materials, by name of the material
schema-tool-material = its cuts in this material
left-out-tool-list = one set of numbers, `cutting`
left-out-tool-cutting = as under `cutting`
left-out-tool-width = it fits every groove
left-out-tool-cut = both, if neither is given
# Units of a file.
schema-units = units of numbers in this file without a unit: metric, or inches
left-out-machine-units = that of the file around it, else `mm`
