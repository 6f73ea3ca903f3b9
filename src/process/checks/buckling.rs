//! `buckling`: axial load on a pressed length of the bar, compared with a share of the load at which it buckles (`process::axial`).
//!
//! It applies from a quarter of its limit on. Below that a load says nothing about a plan, and most plans have no such row.

use super::super::pressed::Pressed;
use super::super::rig::Rig;
use super::{Check, Event, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "buckling";
const UNIT: &str = "N";
/// Share of the limit from which a load counts. With the usual limit this is the share of the critical load from which the bar counts
/// as softer.
const COUNTS_FROM: f64 = 0.25;

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-buckling"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-buckling", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["buckling_share", "axial_load", "shorter_stroke", "tools", "ap_max"],
    find: Find::Both(
        |v| of(v.rig, v.rig.pressed(v.state)),
        |rig, _, event| match event {
            Event::Begins => front(rig).map(Ok),
            Event::HoldsLast { nose_mm, .. } => back(rig, nose_mm).map(Ok),
            Event::Works(_) | Event::LetsGo => None,
        },
    ),
};

/// The finding for a pressed length; none where its load does not count.
pub fn of(rig: &Rig<'_>, pressed: Pressed) -> Option<Finding> {
    let limit = rig.job.limits.buckling_share * pressed.critical_n / rig.job.limits.reserve.of(NAME);
    let counts = pressed.load_n > COUNTS_FROM * limit;
    counts.then(|| Finding::at_most(NAME, UNIT, pressed.load_n, limit, pressed.at_mm))
}

/// The finding for the work on the front end that presses most; none where no work presses enough to count.
pub fn front(rig: &Rig<'_>) -> Option<Finding> {
    of(rig, rig.pressed_by_front_work())
}

/// The finding for the work on the rear end that presses most; none where no work presses enough to count.
fn back(rig: &Rig<'_>, nose_mm: f64) -> Option<Finding> {
    let most = rig.back.iter().map(|b| b.work.axial_force_n).fold(0.0, f64::max);
    of(rig, rig.pressed_on_the_rear(nose_mm, most))
}
