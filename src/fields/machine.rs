//! Numbers of a machine: guide bush, headstock, counter-spindle with its collets, part-off.

use super::{Field, optional, required};

/// Largest bar of the bush.
pub const BUSH_MAX_BAR: Field = required("machine.bush.max_bar", "mm", 0.5, 200.0);
/// Land of the bush.
pub const BUSH_LAND: Field = required("machine.bush.land", "mm", 1.0, 200.0);
/// Gap of the bush.
pub const BUSH_GAP: Field = required("machine.bush.gap", "mm", 0.1, 20.0);
/// Stiffness of the bush.
pub const BUSH_STIFFNESS: Field = required("machine.bush.stiffness", "N/µm", 0.1, 10_000.0);
/// Land that stays on raw bar.
pub const ENGAGEMENT_MIN: Field = required("machine.bush.engagement_min", "mm", 0.0, 200.0);
/// Largest bar without the bush.
pub const NO_BUSH_MAX_BAR: Field = required("machine.no_bush.max_bar", "mm", 0.5, 200.0);
/// Collet gap.
pub const COLLET_GAP: Field = required("machine.no_bush.collet_gap", "mm", 0.1, 200.0);
/// Headstock, nearest.
pub const HEADSTOCK_NEAREST: Field = required("machine.headstock.nearest", "mm", 1.0, 2000.0);
/// Headstock stroke.
pub const STROKE: Field = required("machine.headstock.stroke", "mm", 5.0, 3000.0);
/// Headstock hold.
pub const HEADSTOCK_HOLD: Field = required("machine.headstock.hold", "mm", 1.0, 300.0);
/// Headstock stiffness.
pub const HEADSTOCK_STIFFNESS: Field = required("machine.headstock.stiffness", "N/µm", 0.1, 10_000.0);
/// Headstock speed.
pub const HEADSTOCK_MAX_RPM: Field = required("machine.headstock.max_rpm", "rev/min", 10.0, 100_000.0);
/// Re-grip time.
pub const REGRIP_S: Field = required("machine.headstock.regrip_s", "s", 0.0, 600.0);
/// Counter-spindle, nearest.
pub const COUNTER_NEAREST: Field = required("machine.counter_spindle.nearest", "mm", 0.5, 3000.0);
/// Counter-spindle, farthest.
pub const COUNTER_FARTHEST: Field = required("machine.counter_spindle.farthest", "mm", 0.5, 6000.0);
/// Bore.
pub const BORE: Field = required("machine.counter_spindle.bore", "mm", 0.5, 300.0);
/// Bore depth.
pub const BORE_DEPTH: Field = required("machine.counter_spindle.bore_depth", "mm", 1.0, 6000.0);
/// Counter-spindle stiffness.
pub const COUNTER_STIFFNESS: Field = required("machine.counter_spindle.stiffness", "N/µm", 0.1, 10_000.0);
/// Counter-spindle speed.
pub const COUNTER_MAX_RPM: Field = required("machine.counter_spindle.max_rpm", "rev/min", 10.0, 100_000.0);
/// Hand-over time.
pub const HAND_OVER_S: Field = required("machine.counter_spindle.hand_over_s", "s", 0.0, 600.0);
/// Friction in the collet.
pub const FRICTION: Field = optional("machine.counter_spindle.friction", "", 0.01, 1.0, 0.15);
/// Axial load of the counter-spindle.
pub const COUNTER_AXIAL_LOAD: Field = optional("machine.counter_spindle.axial_load", "N", -20_000.0, 20_000.0, 0.0);
/// Torsional stiffness of the counter-spindle. Without a value, the last grip carries the whole torque of part-off.
pub const TORSIONAL_STIFFNESS: Field =
    required("machine.counter_spindle.torsional_stiffness", "N·m/rad", 1.0, 10_000_000.0);
/// Angle between both spindles.
pub const PHASE_ERROR: Field = optional("machine.counter_spindle.phase_error", "degrees", 0.0, 5.0, 0.0);
/// Force of a centre.
pub const CENTRE_FORCE: Field = required("machine.counter_spindle.centre.force", "N", 1.0, 20_000.0);
/// Stiffness of a centre.
pub const CENTRE_STIFFNESS: Field = required("machine.counter_spindle.centre.stiffness", "N/µm", 0.1, 10_000.0);
/// How far a centre stands out.
pub const CENTRE_STANDS_OUT: Field = required("machine.counter_spindle.centre.stands_out", "mm", 0.0, 500.0);
/// Sleeve pitch.
pub const SLEEVE_PITCH: Field = required("machine.counter_spindle.sleeve.pitch", "mm", 5.0, 3000.0);
/// Sleeve stiffness.
pub const SLEEVE_STIFFNESS: Field = required("machine.counter_spindle.sleeve.stiffness", "N/µm", 0.001, 10_000.0);
/// One end of a collet's range.
pub const COLLET_RANGE: Field = required("machine.counter_spindle.collets.range", "mm", 0.1, 200.0);
/// Hold of a collet.
pub const COLLET_HOLD: Field = required("machine.counter_spindle.collets.hold", "mm", 0.5, 300.0);
/// What passes an open collet.
pub const PASSES: Field = required("machine.counter_spindle.collets.passes", "mm", 0.1, 300.0);
/// Clamping force.
pub const CLAMP_FORCE: Field = required("machine.counter_spindle.collets.clamp_force", "N", 1.0, 1e6);
/// Run-out of a collet.
pub const COLLET_RUN_OUT: Field = required("machine.counter_spindle.collets.run_out", "mm", 0.0, 2.0);
/// Highest speed of the bar feeder.
pub const BAR_FEED_MAX_RPM: Field = required("machine.bar_feed.max_rpm", "rev/min", 10.0, 100_000.0);
/// Highest speed of driven tools. Such lathes drive tools across the bar at 6000 to 8000 rev/min; common practice, no source.
pub const DRIVEN_MAX_RPM: Field = optional("machine.driven_max_rpm", "rev/min", 10.0, 200_000.0, 6000.0);
/// Saving of a shared stop.
pub const SHARED_STOP_SAVING_S: Field = optional("machine.shared_stop_saving_s", "s", 0.0, 600.0, 0.0);
/// Reach of cross tools.
pub const CROSS_TOOL_REACH: Field = optional("machine.cross_tool_reach", "mm", 0.0, 1000.0, 10.0);
/// Overhead of a travel.
pub const SEGMENT_OVERHEAD_S: Field = optional("machine.segment_overhead_s", "s", 0.0, 600.0, 1.2);
/// Part-off width.
pub const PART_OFF_WIDTH: Field = optional("machine.part_off.width", "mm", 0.1, 20.0, 3.0);
/// Part-off time.
pub const PART_OFF_TIME_S: Field = optional("machine.part_off.time_s", "s", 0.0, 600.0, 8.0);
/// Length and largest diameter up to which a part may fall on a machine with a counter-spindle whose file does not say it, mm: in steel
/// less than 50 g. Common practice, no source.
pub const TRAY_BY_DEFAULT_MM: [f64; 2] = [30.0, 16.0];
/// Longest part that falls.
pub const TRAY_MAX_LENGTH: Field = required("machine.part_off.tray.max_length", "mm", 0.0, 1000.0);
/// Thickest part that falls.
pub const TRAY_MAX_DIAMETER: Field = required("machine.part_off.tray.max_diameter", "mm", 0.0, 200.0);
/// Bar end.
pub const BAR_END: Field = optional("machine.bar_end", "mm", 0.0, 1000.0, 20.0);
/// Facing.
pub const FACING: Field = optional("machine.facing", "mm", 0.0, 20.0, 0.5);
