//! `stiffness`: the lateral stiffness of the bar at the tool; with a tandem at the softer place of both tools.

use super::{Check, Find, Finding, Says};
use crate::lang;
use crate::say;
use crate::units::n_per_um;

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
        let limit = v.rig.job.limits.stiffness_min_n_per_um * v.rig.job.limits.reserve.of(NAME);
        let (tool, at_mm) = (v.answers.stiffness_n_per_um, v.state.turned_mm);
        let finisher_mm = v.rig.finisher_at_mm(v.state).filter(|_| v.segment.lag_mm.is_some());
        let (value, at_mm) = match (n_per_um(1.0 / v.answers.finisher_mm_per_n), finisher_mm) {
            (softer, Some(place_mm)) if softer < tool => (softer, place_mm),
            _ => (tool, at_mm),
        };
        Some(Finding::at_least(NAME, UNIT, value, limit, at_mm))
    }),
};
