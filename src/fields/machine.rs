//! Numbers of a machine: guide bush, headstock, counter-spindle with its collets, part-off.

use super::{Field, optional, required};

/// Largest bar of the bush.
pub const BUSH_MAX_BAR: Field =
    required("machine.bush.max_bar", "largest bar diameter in the guide bush", "mm", 0.5, 200.0);
/// Land of the bush.
pub const BUSH_LAND: Field = required("machine.bush.land", "length of the guiding land of the bush", "mm", 1.0, 200.0);
/// Gap of the bush.
pub const BUSH_GAP: Field =
    required("machine.bush.gap", "distance from the tool tip to the bush face", "mm", 0.1, 20.0);
/// Stiffness of the bush.
pub const BUSH_STIFFNESS: Field =
    required("machine.bush.stiffness", "radial stiffness of the bush", "N/µm", 0.1, 10_000.0);
/// Land that stays on raw bar.
pub const ENGAGEMENT_MIN: Field = required(
    "machine.bush.engagement_min",
    "length of the bush land that must stay on unturned bar when the bar is pulled back",
    "mm",
    0.0,
    200.0,
);
/// Largest bar without the bush.
pub const NO_BUSH_MAX_BAR: Field =
    required("machine.no_bush.max_bar", "largest bar diameter without the guide bush", "mm", 0.5, 200.0);
/// Collet gap.
pub const COLLET_GAP: Field = required(
    "machine.no_bush.collet_gap",
    "distance from the end of a stage to the nose of the headstock collet",
    "mm",
    0.1,
    200.0,
);
/// Headstock, nearest.
pub const HEADSTOCK_NEAREST: Field = required(
    "machine.headstock.nearest",
    "shortest distance from the nose of the headstock collet to the bush face",
    "mm",
    1.0,
    2000.0,
);
/// Headstock stroke.
pub const STROKE: Field = required("machine.headstock.stroke", "stroke of the headstock", "mm", 5.0, 3000.0);
/// Headstock hold.
pub const HEADSTOCK_HOLD: Field =
    required("machine.headstock.hold", "clamping length of the headstock collet", "mm", 1.0, 300.0);
/// Headstock stiffness.
pub const HEADSTOCK_STIFFNESS: Field =
    required("machine.headstock.stiffness", "radial stiffness of the headstock collet", "N/µm", 0.1, 10_000.0);
/// Headstock speed.
pub const HEADSTOCK_MAX_RPM: Field =
    required("machine.headstock.max_rpm", "highest speed of the headstock", "rev/min", 10.0, 100_000.0);
/// Re-grip time.
pub const REGRIP_S: Field = required("machine.headstock.regrip_s", "time for one headstock re-grip", "s", 0.0, 600.0);
/// Counter-spindle, nearest.
pub const COUNTER_NEAREST: Field = required(
    "machine.counter_spindle.nearest",
    "shortest distance from the counter-spindle nose to the bush face",
    "mm",
    0.5,
    3000.0,
);
/// Counter-spindle, farthest.
pub const COUNTER_FARTHEST: Field = required(
    "machine.counter_spindle.farthest",
    "longest distance from the counter-spindle nose to the bush face",
    "mm",
    0.5,
    6000.0,
);
/// Bore.
pub const BORE: Field =
    required("machine.counter_spindle.bore", "diameter of the counter-spindle bore", "mm", 0.5, 300.0);
/// Bore depth.
pub const BORE_DEPTH: Field = required(
    "machine.counter_spindle.bore_depth",
    "depth of the counter-spindle bore, from its nose",
    "mm",
    1.0,
    6000.0,
);
/// Counter-spindle stiffness.
pub const COUNTER_STIFFNESS: Field = required(
    "machine.counter_spindle.stiffness",
    "radial stiffness of the counter-spindle collet",
    "N/µm",
    0.1,
    10_000.0,
);
/// Counter-spindle speed.
pub const COUNTER_MAX_RPM: Field =
    required("machine.counter_spindle.max_rpm", "highest speed of the counter-spindle", "rev/min", 10.0, 100_000.0);
/// Hand-over time.
pub const HAND_OVER_S: Field =
    required("machine.counter_spindle.hand_over_s", "time for one hand-over", "s", 0.0, 600.0);
/// Friction in the collet.
pub const FRICTION: Field = optional(
    "machine.counter_spindle.friction",
    "friction coefficient between counter-spindle collet and part",
    "",
    0.01,
    1.0,
    0.15,
);
/// Axial load of the counter-spindle.
pub const COUNTER_AXIAL_LOAD: Field = optional(
    "machine.counter_spindle.axial_load",
    "axial force that the counter-spindle keeps on the gripped shaft; a positive force pulls, a negative force presses",
    "N",
    -20_000.0,
    20_000.0,
    0.0,
);
/// Torsional stiffness of the counter-spindle. Without a value, the last grip carries the whole torque of part-off.
pub const TORSIONAL_STIFFNESS: Field = required(
    "machine.counter_spindle.torsional_stiffness",
    "torsional stiffness of the counter-spindle with its drive; the headstock counts as stiff as this",
    "N·m/rad",
    1.0,
    10_000_000.0,
);
/// Angle between both spindles.
pub const PHASE_ERROR: Field = optional(
    "machine.counter_spindle.phase_error",
    "angle between both spindles while they hold the same bar",
    "degrees",
    0.0,
    5.0,
    0.0,
);
/// Force of a centre.
pub const CENTRE_FORCE: Field = required(
    "machine.counter_spindle.centre.force",
    "axial force with which the centre presses on the part",
    "N",
    1.0,
    20_000.0,
);
/// Stiffness of a centre.
pub const CENTRE_STIFFNESS: Field = required(
    "machine.counter_spindle.centre.stiffness",
    "radial stiffness of the centre at its tip",
    "N/µm",
    0.1,
    10_000.0,
);
/// How far a centre stands out.
pub const CENTRE_STANDS_OUT: Field = required(
    "machine.counter_spindle.centre.stands_out",
    "distance from the nose of the counter-spindle to the tip of the centre",
    "mm",
    0.0,
    500.0,
);
/// Sleeve pitch.
pub const SLEEVE_PITCH: Field = required(
    "machine.counter_spindle.sleeve.pitch",
    "distance from one support in the counter-spindle bore to the next",
    "mm",
    5.0,
    3000.0,
);
/// Sleeve stiffness.
pub const SLEEVE_STIFFNESS: Field = required(
    "machine.counter_spindle.sleeve.stiffness",
    "radial stiffness of each support in the counter-spindle bore",
    "N/µm",
    0.001,
    10_000.0,
);
/// One end of a collet's range.
pub const COLLET_RANGE: Field = required(
    "machine.counter_spindle.collets.range",
    "smallest or largest diameter that the collet clamps",
    "mm",
    0.1,
    200.0,
);
/// Hold of a collet.
pub const COLLET_HOLD: Field =
    required("machine.counter_spindle.collets.hold", "clamping length of the collet", "mm", 0.5, 300.0);
/// What passes an open collet.
pub const PASSES: Field = required(
    "machine.counter_spindle.collets.passes",
    "largest diameter that passes through the open collet",
    "mm",
    0.1,
    300.0,
);
/// Clamping force.
pub const CLAMP_FORCE: Field = required(
    "machine.counter_spindle.collets.clamp_force",
    "clamping force of the collet, as the sum of the radial forces",
    "N",
    1.0,
    1e6,
);
/// Run-out of a collet.
pub const COLLET_RUN_OUT: Field = required(
    "machine.counter_spindle.collets.run_out",
    "run-out of the collet at its nose, as the full reading",
    "mm",
    0.0,
    2.0,
);
/// Highest speed of the bar feeder.
pub const BAR_FEED_MAX_RPM: Field = required(
    "machine.bar_feed.max_rpm",
    "highest speed at which the bar feeder may turn the bar behind the headstock",
    "rev/min",
    10.0,
    100_000.0,
);
/// Highest speed of driven tools. Such lathes drive tools across the bar at 6000 to 8000 rev/min; common practice, no source.
pub const DRIVEN_MAX_RPM: Field =
    optional("machine.driven_max_rpm", "highest speed of driven tools", "rev/min", 10.0, 200_000.0, 6000.0);
/// Saving of a shared stop.
pub const SHARED_STOP_SAVING_S: Field = optional(
    "machine.shared_stop_saving_s",
    "time saved when a hand-over and a headstock re-grip are made at the same stop",
    "s",
    0.0,
    600.0,
    0.0,
);
/// Reach of cross tools.
pub const CROSS_TOOL_REACH: Field = optional(
    "machine.cross_tool_reach",
    "distance along the bar from the cutting tool to the cross-driven tool",
    "mm",
    0.0,
    1000.0,
    10.0,
);
/// Overhead of a travel.
pub const SEGMENT_OVERHEAD_S: Field = optional(
    "machine.segment_overhead_s",
    "extra time for each travel of a tool, besides cutting",
    "s",
    0.0,
    600.0,
    1.2,
);
/// Part-off width.
pub const PART_OFF_WIDTH: Field =
    optional("machine.part_off.width", "width of the part-off tool", "mm", 0.1, 20.0, 3.0);
/// Part-off time.
pub const PART_OFF_TIME_S: Field = optional("machine.part_off.time_s", "time for part-off", "s", 0.0, 600.0, 8.0);
/// Length and largest diameter up to which a part may fall on a machine with a counter-spindle whose file does not say it, mm: in steel
/// less than 50 g. Common practice, no source.
pub const TRAY_BY_DEFAULT_MM: [f64; 2] = [30.0, 16.0];
/// Longest part that falls.
pub const TRAY_MAX_LENGTH: Field = required(
    "machine.part_off.tray.max_length",
    "length up to which a part may fall into the tray; 0: no part falls",
    "mm",
    0.0,
    1000.0,
);
/// Thickest part that falls.
pub const TRAY_MAX_DIAMETER: Field = required(
    "machine.part_off.tray.max_diameter",
    "largest diameter up to which a part may fall into the tray",
    "mm",
    0.0,
    200.0,
);
/// Bar end.
pub const BAR_END: Field =
    optional("machine.bar_end", "length of the bar end that no collet can grip", "mm", 0.0, 1000.0, 20.0);
/// Facing.
pub const FACING: Field = optional(
    "machine.facing",
    "length faced off the front end of every part, if the job has no larger facing",
    "mm",
    0.0,
    20.0,
    0.5,
);
