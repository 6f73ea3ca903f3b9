//! `back`: deflection of the rear end under work after part-off, when only the last grip holds the part.

use super::super::rig::Rig;
use super::super::state::{Counter, Guide, State};
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::mechanics::beam::Unheld;
use crate::say;

/// Name of the check.
pub const NAME: &str = "back";
const UNIT: &str = "mm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-back"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-back", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["tolerance_share", "tools"],
    find: Find::AtEvent(|rig, _, event| match event {
        Event::HoldsLast { nose_mm, .. } => find(rig, nose_mm).transpose(),
        _ => None,
    }),
};

/// The worst finding of all works on the rear end; none if there is no work.
///
/// The overhang springs back when the tool leaves. The demand is twice the deflection because it counts on the diameter, as for
/// `cut` (derived here).
///
/// # Errors
/// [`Unheld`] when the last grip does not hold the part.
pub fn find(rig: &Rig<'_>, nose_mm: f64) -> Result<Option<Finding>, Unheld> {
    let length = rig.job.shaft.length_mm();
    let state = State { turned_mm: length, counter: Counter::Holds { nose_mm }, guide: Guide::Parted };
    let mut worst: Option<Finding> = None;
    for work in rig.back.iter().map(|b| &b.work) {
        let demand = 2.0 * rig.deflection_at_mm(&state, length, work.radial_force_n)?;
        let limit = rig.job.limits.tolerance_share * work.tolerance_mm / rig.job.limits.reserve.of(NAME);
        let found = Finding::at_most(NAME, UNIT, demand, limit, length);
        if worst.is_none_or(|w| found.utilisation > w.utilisation) {
            worst = Some(found);
        }
    }
    Ok(worst)
}
