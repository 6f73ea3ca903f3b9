//! Numbers of the tool list.

use super::{Field, required};

/// Most tools of a list.
pub const TOOLS_MAX: usize = 200;

/// What a tool of the list may do.
pub const TOOL_KINDS: [&str; 5] = ["turning", "back_turning", "grooving", "part_off", "threading"];

/// Nose radius.
pub const TOOL_NOSE_RADIUS: Field = required("tool_list.nose_radius", "nose radius of the insert", "mm", 0.01, 10.0);
/// Approach angle.
pub const TOOL_APPROACH_ANGLE: Field =
    required("tool_list.approach_angle", "approach angle of the tool", "degrees", 30.0, 110.0);
/// Largest depth.
pub const TOOL_AP_MAX: Field = required("tool_list.ap_max", "largest depth of cut of the tool", "mm", 0.01, 20.0);
/// Width.
pub const TOOL_WIDTH: Field = required("tool_list.width", "width of a grooving or part-off tool", "mm", 0.1, 20.0);
/// Cutting speed.
pub const TOOL_VC: Field = required("tool_list.vc", "cutting speed", "m/min", 1.0, 2000.0);
/// Feed.
pub const TOOL_FEED: Field =
    required("tool_list.feed", "feed per revolution; for finishing the largest", "mm/rev", 0.001, 2.0);
