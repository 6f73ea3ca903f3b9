//! `free_ratio`: length over diameter of a free front, a house rule that is off unless the job gives a limit.

use super::super::rig::Rig;
use super::super::state::State;
use super::{Check, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "free_ratio";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-free-ratio"),
    unit: "",
    says: Says {
        found: |_, demand, limit| say!("finding-free-ratio", demand = demand, limit = limit),
        ..Says::AS_NAMED
    },
    lifted_by: &["free_ratio"],
    find: Find::AtRest(|v| {
        let limit = v.rig.job.limits.free_ratio?;
        v.state.counter.span_from_mm().is_none().then(|| Finding::at_most(NAME, "", ratio(v.rig, v.state), limit, 0.0))
    }),
};

/// Unsupported length over the mean diameter of its turned part (weighted by length): the number that people in the trade call L/d.
/// Before anything is turned there, the bar's diameter counts.
pub fn ratio(rig: &Rig<'_>, state: &State) -> f64 {
    let from_mm = state.counter.grip_mm().unwrap_or(0.0);
    let mean_mm = rig.profile.mean_mm(from_mm, state.turned_mm).unwrap_or(rig.job.stock.diameter_mm);
    rig.unsupported_mm(state) / mean_mm
}
