//! `pick_up`: how far a free front is off the axis when the counter-spindle's collet comes over it.
//!
//! While the front is free, only its far end droops, and nothing is cut there. Its place counts at the pick-up: the lead-in of the open
//! collet must catch it. Bow and deflection may point the same way, so they add up.

use super::super::rig::Rig;
use super::super::state::{Counter, State};
use super::whip::free_bow_mm;
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::mechanics::beam::Unheld;
use crate::say;

/// Name of the check.
pub const NAME: &str = "pick_up";
const UNIT: &str = "mm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-pick-up"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-pick-up", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["pick_up", "straightness"],
    find: Find::AtEvent(|rig, state, event| match event {
        Event::LetsGo => (state.counter == Counter::Away).then(|| find(rig, state)),
        Event::Begins => by_centre(rig),
        Event::Works(_) | Event::HoldsLast { .. } => None,
    }),
};

/// The finding for the front face when a centre comes to it; none without a centre. With a bush the bar stands out by the gap then,
/// without one by its whole length.
pub fn by_centre(rig: &Rig<'_>) -> Option<Result<Finding, Unheld>> {
    rig.centre()?;
    let guide = rig.guide(0.0, 0.0, rig.job.parted_at_mm());
    Some(find(rig, &State { turned_mm: 0.0, counter: Counter::Away, guide }))
}

/// The finding at the first hand-over, for the state just before it.
///
/// # Errors
/// [`Unheld`] when the supports do not hold the bar.
pub fn find(rig: &Rig<'_>, state: &State) -> Result<Finding, Unheld> {
    Ok(of_droop(rig, state, rig.droop_mm(state)?))
}

/// The finding for a deflection of the front face under its own weight, mm.
pub fn of_droop(rig: &Rig<'_>, state: &State, droop_mm: f64) -> Finding {
    let off_mm = droop_mm + free_bow_mm(rig, rig.unsupported_mm(state));
    Finding::at_most(NAME, UNIT, off_mm, rig.job.limits.pick_up_mm / rig.job.limits.reserve.of(NAME), 0.0)
}
