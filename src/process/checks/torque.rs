//! `torque`: torque of part-off and of work on the rear end, compared with the friction of the last grip. The headstock drives all
//! other cuts.
//!
//! At part-off both spindles hold the bar. Without a torsional stiffness of the counter-spindle the last grip carries the whole torque.
//! With it, both sides share the torque by their stiffness (`process::twist`). Work after part-off is never shared.

use super::super::rig::Rig;
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "torque";
const UNIT: &str = "N·m";

/// Torque of part-off with its force at the bar's radius, N·m.
pub fn part_off_nm(rig: &Rig<'_>) -> f64 {
    let job = rig.job;
    let feed = rig.part_off_cutter().feed_mm;
    let force_n = rig.resistance.specific_n_per_mm2(feed) * feed * job.machine.part_off.width_mm;
    force_n * job.stock.diameter_mm / 2.0 / 1000.0
}

/// Torque of part-off on a grip with its nose at `nose_mm`, N·m: all of it, or the share of the grip.
pub fn part_off_on_nm(rig: &Rig<'_>, nose_mm: f64) -> f64 {
    let whole = part_off_nm(rig);
    rig.shared_nm(nose_mm, whole).unwrap_or(whole)
}

/// Largest torque on a last grip with its nose at `nose_mm`, N·m: part-off, or the heaviest work on the rear end.
pub fn demand_nm(rig: &Rig<'_>, nose_mm: f64) -> f64 {
    rig.back.iter().map(|b| b.work.torque_nm).fold(part_off_on_nm(rig, nose_mm), f64::max)
}

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-torque"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-torque", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["clamp_force", "torque_margin", "bar"],
    find: Find::AtEvent(|rig, _, event| match event {
        Event::HoldsLast { nose_mm, held_mm } => find(rig, nose_mm, held_mm).map(Ok),
        _ => None,
    }),
};

/// The finding for a grip with its nose at `nose_mm` on a diameter of `held_mm`; none without a counter-spindle.
pub fn find(rig: &Rig<'_>, nose_mm: f64, held_mm: f64) -> Option<Finding> {
    let (collet, counter) = (rig.collet?, rig.job.machine.counter_spindle.as_ref()?);
    let holds_nm = counter.friction * collet.clamp_force_n * held_mm / 2.0 / 1000.0;
    let demand = demand_nm(rig, nose_mm) * rig.job.limits.torque_margin;
    Some(Finding::at_most(NAME, UNIT, demand, holds_nm / rig.job.limits.reserve.of(NAME), nose_mm))
}
