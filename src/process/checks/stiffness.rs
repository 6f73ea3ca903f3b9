//! `stiffness`: the lateral stiffness of the bar at the tool.

use super::{Check, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "stiffness";
const UNIT: &str = "N/µm";

/// The check. What is soft elsewhere does not matter to the cut: nothing is cut there.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-stiffness"),
    unit: UNIT,
    says: Says {
        found: |_, demand, limit| say!("finding-stiffness", demand = demand, limit = limit),
        ..Says::AS_NAMED
    },
    lifted_by: &["stiffness_min", "tools", "bar", "collet"],
    find: Find::AtRest(|v| {
        let limit = v.rig.job.limits.stiffness_min_n_per_um;
        Some(Finding::at_least(NAME, UNIT, v.answers.stiffness_n_per_um, limit, v.state.turned_mm))
    }),
};
