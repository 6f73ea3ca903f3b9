//! `drill`: deflection under the force of a cross-driven tool (thrust of a drill, force of a cutter), at the moment it works.

use super::super::rig::Rig;
use super::super::state::State;
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::mechanics::beam::Unheld;
use crate::say;

/// Name of the check.
pub const NAME: &str = "drill";
const UNIT: &str = "mm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-drill"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-drill", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["drill"],
    find: Find::AtEvent(|rig, state, event| match event {
        Event::Works(task) => Some(find(rig, state, task.at_mm, task.thrust_n?)),
        _ => None,
    }),
};

/// The finding for a force `thrust_n` across the bar at `at_mm`.
///
/// # Errors
/// [`Unheld`] when the supports leave a free motion.
pub fn find(rig: &Rig<'_>, state: &State, at_mm: f64, thrust_n: f64) -> Result<Finding, Unheld> {
    let demand = rig.deflection_at_mm(state, at_mm, thrust_n)?;
    let limit = rig.job.limits.drill_mm / rig.job.limits.reserve.of(NAME);
    Ok(Finding::at_most(NAME, UNIT, demand, limit, at_mm))
}
