//! Numbers of the tool list.

use super::{Field, required};

/// Most tools of a list.
pub const TOOLS_MAX: usize = 200;

/// What a tool of the list may do.
pub const TOOL_KINDS: [&str; 5] = ["turning", "back_turning", "grooving", "part_off", "threading"];

/// Nose radius.
pub const TOOL_NOSE_RADIUS: Field = required("tool_list.nose_radius", "mm", 0.01, 10.0);
/// Approach angle.
pub const TOOL_APPROACH_ANGLE: Field = required("tool_list.approach_angle", "degrees", 30.0, 110.0);
/// Largest depth.
pub const TOOL_AP_MAX: Field = required("tool_list.ap_max", "mm", 0.01, 20.0);
/// Width.
pub const TOOL_WIDTH: Field = required("tool_list.width", "mm", 0.1, 20.0);
/// Cutting speed.
pub const TOOL_VC: Field = required("tool_list.vc", "m/min", 1.0, 2000.0);
/// Feed.
pub const TOOL_FEED: Field = required("tool_list.feed", "mm/rev", 0.001, 2.0);
