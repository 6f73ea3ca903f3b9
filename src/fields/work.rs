//! Numbers of work that is not turning, of tool places and of an order.

use super::{Field, SHAFT_LENGTH_MAX_MM, optional, required};

/// Facing.
pub const FACE_OFF: Field = required("shaft.features.facing", "mm", 0.01, 20.0);
/// Hole on the axis.
pub const AXIAL_HOLE: Field = required("shaft.features.axial_hole", "mm", 0.2, 100.0);
/// Depth of a hole, a thread, a socket, an engraving.
pub const WORK_DEPTH: Field = required("shaft.features.depth", "mm", 0.01, 1000.0);
/// Depth of the hole under a thread.
pub const DRILL_DEPTH: Field = required("shaft.features.drill_depth", "mm", 0.1, 1000.0);
/// Hexagon socket.
pub const HEX_SOCKET: Field = required("shaft.features.hex_socket", "mm", 1.5, 12.0);
/// Keyway in a bore.
pub const KEYWAY: Field = required("shaft.features.keyway", "mm", 0.5, 50.0);
/// Length of a keyway.
pub const KEYWAY_LENGTH: Field = required("shaft.features.length", "mm", 0.1, SHAFT_LENGTH_MAX_MM);
/// Step of a shaving tool.
pub const SHAVING_STEP: Field = optional("shaft.features.step", "mm", 0.005, 0.5, 0.05);
/// Height of letters.
pub const LETTER_HEIGHT: Field = required("shaft.features.height", "mm", 0.3, 50.0);
/// Depth of an engraving if none is given, mm.
pub const ENGRAVING_DEPTH_MM: f64 = 0.1;
/// Most letters of an engraving.
pub const ENGRAVING_MAX: usize = 40;

/// Axial force of back-end work.
pub const BACK_AXIAL_FORCE: Field = optional("shaft.back_work.axial_force", "N", 0.0, 50_000.0, 0.0);

/// Clamping force of the headstock.
pub const HEADSTOCK_CLAMP_FORCE: Field = required("machine.headstock.clamp_force", "N", 1.0, 1e6);
/// Power of the headstock.
pub const HEADSTOCK_POWER: Field = required("machine.headstock.power", "kW", 0.05, 500.0);
/// Share of the power that arrives at the cut. Default: a tool maker's worked example counts 80 %, another table 0.7 to 0.8.
pub const HEADSTOCK_EFFICIENCY: Field = optional("machine.headstock.efficiency", "", 0.2, 1.0, 0.8);
/// Torque of the headstock.
pub const HEADSTOCK_TORQUE: Field = required("machine.headstock.torque", "N·m", 0.05, 10_000.0);
/// Feed force of the headstock.
pub const HEADSTOCK_FEED_FORCE: Field = required("machine.headstock.feed_force", "N", 1.0, 1e6);
/// Torque of the counter-spindle's drive.
pub const COUNTER_TORQUE: Field = required("machine.counter_spindle.torque", "N·m", 0.05, 10_000.0);
/// Friction in the headstock's collet.
pub const HEADSTOCK_FRICTION: Field = optional("machine.headstock.friction", "", 0.01, 1.0, 0.15);
/// Unloading.
pub const UNLOAD_S: Field = optional("machine.counter_spindle.unload_s", "s", 0.0, 600.0, 0.0);
/// Tool change.
pub const TOOL_CHANGE_S: Field = optional("machine.tool_change_s", "s", 0.0, 120.0, 0.0);
/// Bar change.
pub const BAR_CHANGE_S: Field = optional("machine.bar_change_s", "s", 0.0, 3600.0, 0.0);
/// Rapid motion.
pub const RAPID: Field = optional("machine.rapid", "m/min", 0.5, 200.0, 20.0);

/// Turning places.
pub const TURNING_PLACES: Field = optional("machine.tools.turning", "", 0.0, 200.0, 0.0);
/// Cross-driven places.
pub const CROSS_PLACES: Field = optional("machine.tools.cross_driven", "", 0.0, 200.0, 0.0);
/// Fixed places in front.
pub const FRONT_FIXED: Field = optional("machine.tools.front_fixed", "", 0.0, 200.0, 0.0);
/// Driven places in front.
pub const FRONT_DRIVEN: Field = optional("machine.tools.front_driven", "", 0.0, 200.0, 0.0);
/// Fixed places at the rear end.
pub const BACK_FIXED: Field = optional("machine.tools.back_fixed", "", 0.0, 200.0, 0.0);
/// Driven places at the rear end.
pub const BACK_DRIVEN: Field = optional("machine.tools.back_driven", "", 0.0, 200.0, 0.0);
/// Whirling units.
pub const WHIRLING_PLACES: Field = optional("machine.tools.whirling", "", 0.0, 20.0, 0.0);
/// Stations of the turret.
pub const TURRET_STATIONS: Field = required("machine.tools.turret.stations", "", 1.0, 60.0);
/// Tools per station.
pub const TURRET_TOOLS: Field = optional("machine.tools.turret.tools_per_station", "", 1.0, 10.0, 1.0);

/// Pieces ordered.
pub const ORDER_PIECES: Field = required("order.pieces", "", 1.0, 1e6);
/// Set-up.
pub const SET_UP_H: Field = optional("order.set_up_h", "h", 0.0, 1000.0, 0.0);
/// Shift.
pub const SHIFT_H: Field = optional("order.shift_h", "h", 0.5, 24.0, 8.0);
/// Share of the time in which the machine runs.
pub const RUNNING_SHARE: Field = optional("order.running_share", "", 0.05, 1.0, 0.85);
