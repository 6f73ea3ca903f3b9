# What each number of a file means: a phrase that fits after "the". The key is that of the file, with `-` for each dot.

## Keys of the job

field-shaft-sections-length = length of the section
field-shaft-sections-diameter = diameter of the section
field-shaft-sections-taper = diameter at one end of the taper
field-shaft-sections-thread = major diameter of the thread
field-shaft-sections-corners = diameter across the corners of the flats
field-shaft-sections-across_flats = distance across the flats
field-shaft-sections-sides = number of flats
field-shaft-sections-ra = roughness Ra
field-shaft-sections-run_out = run-out of the section against the axis between grip and bush, as the full reading (ISO 1101)
field-shaft-sections-tolerance = permitted deviation from the diameter
field-shaft-straightness = bow of the finished shaft per metre of length
field-shaft-features-cross_hole = diameter of the cross hole
field-shaft-features-at = distance from the front face to the centre of the hole, or to the start of the engraving
field-shaft-features-thrust = axial force of the drill
field-shaft-features-keyseat = width or depth of the keyseat
field-shaft-features-from = distance from the front face to the front end of the keyseat
field-shaft-features-to = distance from the front face to the rear end of the keyseat
field-shaft-back_work-radial_force = radial force on the part
field-shaft-back_work-torque = torque about the axis of the part
field-shaft-back_work-time_s = time for the work
field-shaft-back_work-tolerance = tolerance of the work
field-stock-diameter = diameter of the bar
field-stock-bar_length = length of the bar
field-shaft-material-e_gpa = Young's modulus
field-shaft-material-density = density
field-shaft-material-kc11 = specific cutting force kc1.1, at 1 mm chip thickness
field-shaft-material-mc = exponent mc of the chip thickness
field-shaft-material-poisson = Poisson's ratio
field-shaft-material-vc = lowest or highest usual cutting speed of the material
field-cutting-vc = cutting speed
field-cutting-feed = feed per revolution
field-cutting-nose_radius = nose radius of the tool
field-cutting-approach_angle = approach angle of the tool
field-cutting-ap_max = largest depth of cut
field-cutting-ap_finish = depth of cut of the last pass
field-cutting-speed_floor = lowest speed allowed, as a share of the planned speed; 1 means no reduction
field-cutting-lag = distance along the bar from the roughing tool to the finishing tool of an opposed pair or a tandem
field-cutting-finisher-nose_radius = nose radius of the finishing tool
field-cutting-finisher-approach_angle = approach angle of the finishing tool
field-cutting-unbalance = smallest radial force left on the bar by two tools on opposite sides, as a share of the larger force
field-cutting-in_plane_share = force in the feed plane of each piece of the edge, as a share of its main cutting force
field-cutting-passive_floor = smallest passive (radial) force of a tool, as a share of its main cutting force
field-cutting-ra_factor = roughness Ra of a turned surface, as a multiple of the ideal Ra from feed and nose radius
field-cutting-ra_floor = roughness Ra that turning does not go below, at any feed
field-limits-stiffness_min = smallest lateral stiffness allowed
field-limits-span_stiffness_min = smallest lateral stiffness allowed between a grip and the bush, a house limit
field-limits-free_ratio = largest free length at the front, as a multiple of its mean finished diameter, a house rule
field-limits-whirl_ratio = largest speed allowed, as a share of the critical speed
field-limits-whip = largest bow allowed while the bar rotates
field-limits-sag = largest deflection of the unsupported length under its own weight
field-limits-pick_up = largest distance of a free front from the axis when the counter-spindle collet comes over it
field-limits-release = largest deflection under its own weight at the old grip when the collet opens
field-limits-tolerance_share = share of the tolerance that deflection may use
field-limits-drill = largest deflection at a cross hole under the axial force of the drill
field-planning-station_pitch = distance between the stop positions that are tried first
field-limits-damping_ratio = damping ratio of bar vibration
field-limits-bore_clearance = clearance around the part in the counter-spindle bore, on the radius
field-limits-torque_margin = safety factor on the torque that a grip must carry
field-limits-buckling_share = largest axial load allowed, as a share of the load at which the bar buckles
field-limits-avoid_penalty_s = allowance for a witness line on an `avoid` surface, no machine time
field-rates-machine_per_hour = machine cost per hour
field-rates-material_per_kg = material cost per kg

## Edges of sections

field-shaft-sections-chamfer = width of a chamfer of 45° at the front end
field-shaft-sections-chamfer-front = width of a chamfer of 45°
field-shaft-sections-chamfer-rear = width of a chamfer of 45°
field-shaft-sections-radius = radius of the front edge or of the corner in front
field-shaft-sections-radius-front = radius of a rounded edge or of a corner
field-shaft-sections-radius-rear = radius of a rounded edge or of a corner
field-shaft-sections-grind = allowance on the diameter that is ground off later
field-shaft-sections-turned_ra = roughness Ra of the turned surface before grinding
field-stock-bore = inner diameter of a hollow bar

## Work on the ends and across

field-shaft-features-facing = length faced off the end
field-shaft-features-axial_hole = diameter of the axial hole
field-shaft-features-depth = depth of the axial hole, thread, socket or engraving
field-shaft-features-drill_depth = depth of the drilled hole for the thread
field-shaft-features-hex_socket = width across flats of the hexagon socket
field-shaft-features-keyway = width or depth of the keyway
field-shaft-features-length = length of the keyway, from the end face
field-shaft-features-step = depth of cut of one stroke of the shaving tool
field-shaft-features-height = height of the letters
field-shaft-back_work-axial_force = axial force on the part
field-machine-headstock-clamp_force = clamping force of the headstock collet, as the sum of the radial forces
field-machine-headstock-power = power of the headstock's motor in continuous work
field-machine-headstock-efficiency = share of the motor's power that arrives at the cut
field-machine-headstock-torque = largest torque of the headstock's spindle
field-machine-headstock-feed_force = largest force with which the headstock feeds the bar along the axis
field-machine-counter_spindle-torque = largest torque of the counter-spindle's drive, for work on the rear end
field-machine-headstock-friction = friction coefficient between headstock collet and bar
field-machine-counter_spindle-unload_s = time for unloading the finished part
field-machine-tool_change_s = time for one tool change
field-machine-bar_change_s = time for loading a new bar
field-machine-rapid = rapid traverse speed
field-machine-tools-turning = number of places for turning tools
field-machine-tools-cross_driven = number of places for driven tools across the bar
field-machine-tools-front_fixed = number of places for fixed tools at the front end
field-machine-tools-front_driven = number of places for driven tools at the front end
field-machine-tools-back_fixed = number of places for fixed tools at the rear end
field-machine-tools-back_driven = number of places for driven tools at the rear end
field-machine-tools-whirling = number of whirling units for threads
field-machine-tools-turret-stations = number of turret stations
field-machine-tools-turret-tools_per_station = number of tools per turret station
field-order-pieces = number of pieces to be made
field-order-set_up_h = set-up time of the machine
field-order-shift_h = length of a shift
field-order-running_share = share of the shift in which the machine runs

## The machine

field-machine-bush-max_bar = largest bar diameter in the guide bush
field-machine-bush-land = length of the guiding land of the bush
field-machine-bush-gap = distance from the tool tip to the bush face
field-machine-bush-stiffness = radial stiffness of the bush
field-machine-bush-engagement_min = length of the bush land that must stay on unturned bar when the bar is pulled back
field-machine-no_bush-max_bar = largest bar diameter without the guide bush
field-machine-no_bush-collet_gap = distance from the end of a stage to the nose of the headstock collet
field-machine-headstock-nearest = shortest distance from the nose of the headstock collet to the bush face
field-machine-headstock-stroke = stroke of the headstock
field-machine-headstock-hold = clamping length of the headstock collet
field-machine-headstock-stiffness = radial stiffness of the headstock collet
field-machine-headstock-max_rpm = highest speed of the headstock
field-machine-headstock-regrip_s = time for one headstock re-grip
field-machine-counter_spindle-nearest = shortest distance from the counter-spindle nose to the bush face
field-machine-counter_spindle-farthest = longest distance from the counter-spindle nose to the bush face
field-machine-counter_spindle-bore = diameter of the counter-spindle bore
field-machine-counter_spindle-bore_depth = depth of the counter-spindle bore, from its nose
field-machine-counter_spindle-stiffness = radial stiffness of the counter-spindle collet
field-machine-counter_spindle-max_rpm = highest speed of the counter-spindle
field-machine-counter_spindle-hand_over_s = time for one hand-over
field-machine-counter_spindle-friction = friction coefficient between counter-spindle collet and part
field-machine-counter_spindle-axial_load = axial force that the counter-spindle keeps on the gripped shaft; a positive force pulls, a negative force presses
field-machine-counter_spindle-torsional_stiffness = torsional stiffness of the counter-spindle with its drive; the headstock counts as stiff as this
field-machine-counter_spindle-phase_error = angle between both spindles while they hold the same bar
field-machine-counter_spindle-centre-force = axial force with which the centre presses on the part
field-machine-counter_spindle-centre-stiffness = radial stiffness of the centre at its tip
field-machine-counter_spindle-centre-stands_out = distance from the nose of the counter-spindle to the tip of the centre
field-machine-counter_spindle-sleeve-pitch = distance from one support in the counter-spindle bore to the next
field-machine-counter_spindle-sleeve-stiffness = radial stiffness of each support in the counter-spindle bore
field-machine-counter_spindle-collets-range = smallest or largest diameter that the collet clamps
field-machine-counter_spindle-collets-hold = clamping length of the collet
field-machine-counter_spindle-collets-passes = largest diameter that passes through the open collet
field-machine-counter_spindle-collets-clamp_force = clamping force of the collet, as the sum of the radial forces
field-machine-counter_spindle-collets-run_out = run-out of the collet at its nose, as the full reading
field-machine-bar_feed-max_rpm = highest speed at which the bar feeder may turn the bar behind the headstock
field-machine-driven_max_rpm = highest speed of driven tools
field-machine-shared_stop_saving_s = time saved when a hand-over and a headstock re-grip are made at the same stop
field-machine-cross_tool_reach = distance along the bar from the cutting tool to the cross-driven tool
field-machine-segment_overhead_s = extra time for each travel of a tool, besides cutting
field-machine-part_off-width = width of the part-off tool
field-machine-part_off-time_s = time for part-off
field-machine-part_off-tray-max_length = length up to which a part may fall into the tray; 0: no part falls
field-machine-part_off-tray-max_diameter = largest diameter up to which a part may fall into the tray
field-machine-bar_end = length of the bar end that no collet can grip
field-machine-facing = length faced off the front end of every part, if the job has no larger facing

## Wishes and families

field-wishes-hand_over_at = turned length at which a hand-over must be made
field-wishes-hand_over_at-at = turned length of the hand-over
field-wishes-hand_over_at-nose = distance from the front face to the counter-spindle nose at the hand-over
field-wishes-never_grip = distance from the front face to one end of a length that no grip may touch
field-wishes-at_most_hand_overs = largest number of hand-overs per part, including the first grip
field-vary-length-from = shortest length of the varied section
field-vary-length-to = longest length of the varied section
field-vary-length-step = step from one length to the next
field-vary-diameter-from = smallest diameter of the varied section
field-vary-diameter-to = largest diameter of the varied section
field-vary-diameter-step = step from one diameter to the next

## Spread

field-confidence = share of sampled parts in which the plan must stay within every limit
field-confidence_warn = share of sampled parts that stay within every limit below which a plan is at risk
field-scatter-samples = number of sampled parts
field-scatter-seed = start number of the random samples
field-scatter-straightness = spread of the bow, as a share of its value
field-scatter-supports = spread of the stiffness of each support, as a share of its value
field-scatter-bush = spread of the stiffness of the guide bush, as a share
field-scatter-headstock = spread of the stiffness of the headstock, as a share
field-scatter-counter_spindle = spread of the stiffness of the counter-spindle, as a share
field-scatter-centre = spread of the stiffness of the centre, as a share
field-scatter-sleeve = spread of the stiffness of the supports in the counter-spindle bore, as a share
field-scatter-kc = spread of the specific cutting force, as a share of its value
field-scatter-passive = spread of the passive and the feed force beside that of the main force, as a share of their value
field-scatter-e = spread of Young's modulus, as a share of its value
field-scatter-damping = spread of the damping ratio, as a share of its value
field-scatter-ra = spread of the real roughness over the ideal one (cutting.ra_factor), as a share of its value
field-scatter-run_out = spread of the run-out of the counter-spindle's collets, as a share
field-scatter-bar = spread of the bar diameter
field-machine-scatter-bush = spread of the stiffness of the guide bush, as a share
field-machine-scatter-headstock = spread of the stiffness of the headstock, as a share
field-machine-scatter-counter_spindle = spread of the stiffness of the counter-spindle, as a share
field-machine-scatter-centre = spread of the stiffness of the centre, as a share
field-machine-scatter-sleeve = spread of the stiffness of the supports in the counter-spindle bore, as a share
field-machine-scatter-damping = spread of the damping ratio, as a share
field-machine-scatter-run_out = spread of the run-out of the counter-spindle's collets, as a share
field-shaft-material-scatter-kc = spread of the specific cutting force, as a share
field-shaft-material-scatter-e = spread of Young's modulus, as a share
field-shop-bars-scatter-straightness = spread of the bow of shafts from this bar, as a share
field-shop-bars-scatter-bar = spread of the diameter of this bar

## What a change is worth

field-change_prices-wish = rank of dropping a wish of the job
field-change_prices-speed = rank of turning more slowly
field-change_prices-cut = rank of another depth of cut, a smaller feed or more strokes
field-change_prices-tools = rank of a second tool in the cut
field-change_prices-hold = rank of another holding: guide bush or not, collet or centre, less stroke
field-change_prices-method = rank of another way to make a thread or a socket
field-change_prices-turn_round = rank of making the part from its other end
field-change_prices-bar = rank of another bar diameter
field-change_prices-straightness = rank of a straighter bar
field-change_prices-collet = rank of another collet
field-change_prices-tray = rank of a tray that takes the part
field-change_prices-stop = rank of a stop on a surface that must not have one
field-change_prices-grip = rank of a grip on a surface that must not be gripped
field-change_prices-sleeve = rank of sleeves in the counter-spindle
field-change_prices-set_up = rank of work in a second set-up
field-change_prices-drawing = rank of a change of the drawing
field-change_prices-shop_machine = rank of another machine of the shop
field-change_prices-machine = rank of a machine that can do more

## The tool list

field-tool_list-nose_radius = nose radius of the insert
field-tool_list-approach_angle = approach angle of the tool
field-tool_list-ap_max = largest depth of cut of the tool
field-tool_list-width = width of a grooving or part-off tool
field-tool_list-vc = cutting speed
field-tool_list-feed = feed per revolution; for finishing the largest

## The shop's file

field-shop-machines-per_hour = cost of this machine per hour
field-shop-materials-price_per_kg = price of the material per kg
field-shop-bars-diameter = diameter of the bar
field-shop-bars-bar_length = length of the bar
field-shop-bars-price_per_kg = price of this bar per kg

## Readings

field-readings-diameter = diameter of the measured bar
field-readings-set_ups-front = distance from the bush face to the front end of the bar
field-readings-set_ups-headstock = distance from the bush face to the nose of the headstock collet
field-readings-set_ups-grip = distance from the bush face to the nose of the counter-spindle collet
field-readings-set_ups-frequency = first lateral natural frequency, from a tap test
field-readings-set_ups-dial-load = load on the bar
field-readings-set_ups-dial-at = distance from the bush face to the load, negative behind the face
field-readings-set_ups-dial-read_at = distance from the bush face to the dial indicator, negative behind the face
field-readings-set_ups-dial-deflection = deflection on the dial indicator, positive in the direction of the load
field-readings-errors-dial = uncertainty of a dial reading
field-readings-errors-load = uncertainty of a load, as a share of its value
field-readings-errors-tap = uncertainty of a frequency, as a share of its value
