//! `push`: axial force and torque of work on an end, compared with the friction of the grip that holds the bar or the part.
//!
//! Thrust `F` and torque `T` of a drill act together, so the friction force on the held diameter `d` is `√(F² + (2T/d)²)` (derived
//! here). On the rear end the last grip holds the part; it also carries an axial force that the counter-spindle keeps, together with the
//! torque of part-off. On the front end the headstock's collet holds the bar, also against a centre; if the machine file does
//! not give its clamping force, there is no check.

use super::super::rig::Rig;
use super::{Check, Event, Find, Finding, Says, torque};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "push";
const UNIT: &str = "N";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-push"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-push", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["clamp_force", "headstock.clamp_force", "torque_margin", "step", "forming"],
    find: Find::AtEvent(|rig, _, event| match event {
        Event::Begins => front(rig).map(Ok),
        Event::HoldsLast { nose_mm, held_mm } => back(rig, nose_mm, held_mm).map(Ok),
        _ => None,
    }),
};

/// Friction force on the surface of a grip under an axial force and a torque, N.
fn carried_n(axial_n: f64, torque_nm: f64, diameter_mm: f64) -> f64 {
    axial_n.hypot(2000.0 * torque_nm / diameter_mm)
}

/// The finding for the rear end and a grip with its nose at `nose_mm` on a diameter of `held_mm`; none if nothing has an axial force.
pub fn back(rig: &Rig<'_>, nose_mm: f64, held_mm: f64) -> Option<Finding> {
    let (collet, counter) = (rig.collet?, rig.job.machine.counter_spindle.as_ref()?);
    let works = rig.back.iter().map(|b| &b.work).filter(|w| w.axial_force_n > 0.0);
    let loads = works.map(|w| carried_n(w.axial_force_n, w.torque_nm, held_mm));
    // A force that the counter-spindle keeps on the shaft acts at part-off too.
    let kept = (counter.axial_load_n != 0.0)
        .then(|| carried_n(counter.axial_load_n, torque::part_off_on_nm(rig, nose_mm), held_mm));
    let most = loads.chain(kept).max_by(f64::total_cmp)?;
    let holds = counter.friction * collet.clamp_force_n / rig.job.limits.reserve.of(NAME);
    Some(Finding::at_most(NAME, UNIT, most * rig.job.limits.torque_margin, holds, nose_mm))
}

/// The finding for the front end; none if nothing presses on it or the clamping force is not given.
pub fn front(rig: &Rig<'_>) -> Option<Finding> {
    let head = &rig.job.machine.headstock;
    let (_, most) = heaviest_in_front(rig)?;
    let holds = head.friction * head.clamp_force_n? / rig.job.limits.reserve.of(NAME);
    Some(Finding::at_most(NAME, UNIT, most * rig.job.limits.torque_margin, holds, 0.0))
}

/// What loads the headstock's collet most along the axis, a work on the front end or the centre, in words, and the friction force it
/// needs, N. The feed force, which adds to that of the centre, is left out here as it is without a centre.
pub fn heaviest_in_front(rig: &Rig<'_>) -> Option<(String, f64)> {
    let bar = rig.job.stock.diameter_mm;
    let works = rig.tasks().into_iter().filter(|t| !t.cross && t.axial_n > 0.0);
    let works = works.map(|t| (carried_n(t.axial_n, t.torque_nm, bar), t.text));
    let centre = rig.centre().map(|c| (c.force_n, say!("reason-centre")));
    works.chain(centre).max_by(|a, b| a.0.total_cmp(&b.0)).map(|(n, text)| (text, n))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thrust_and_torque_add_as_the_sides_of_a_right_angle() {
        // 300 N along the axis, and 2 N·m on a diameter of 10 mm, which is 400 N tangential.
        assert!((carried_n(300.0, 2.0, 10.0) - 500.0).abs() < 1e-9);
        assert_eq!(carried_n(300.0, 0.0, 10.0), 300.0);
    }
}
