//! `release`: self-weight deflection of the front when the counter-spindle's collet opens at a hand-over.

use super::super::rig::Rig;
use super::super::state::State;
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::mechanics::beam::Unheld;
use crate::say;

/// Name of the check.
pub const NAME: &str = "release";
const UNIT: &str = "mm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-release"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-release", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["release", "sleeve"],
    find: Find::AtEvent(|rig, state, event| {
        (matches!(event, Event::LetsGo) && state.counter.grip_mm().is_some()).then(|| find(rig, state))
    }),
};

/// The finding at a hand-over, for the state just before the collet opens.
///
/// # Errors
/// [`Unheld`] when the supports do not hold the bar with the collet open.
pub fn find(rig: &Rig<'_>, state: &State) -> Result<Finding, Unheld> {
    let at = state.counter.grip_mm().unwrap_or(0.0);
    Ok(of_sag(rig, at, rig.release_mm(state)?))
}

/// The finding for a self-weight deflection at the nose of the open collet, mm.
pub fn of_sag(rig: &Rig<'_>, at_mm: f64, sag_mm: f64) -> Finding {
    let limit = rig.job.limits.release_mm / rig.job.limits.reserve.of(NAME);
    Finding::at_most(NAME, UNIT, sag_mm, limit, at_mm)
}
