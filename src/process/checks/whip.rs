//! `whip`: the bow that remains in the turned shaft, increased by rotation.

use super::super::answers::Answers;
use super::super::rig::Rig;
use super::super::state::State;
use super::speed_law::{Growth, SpeedLaw};
use super::{Check, Find, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "whip";

/// Bow at rest, mm: `bow (x/1000)²` over an unsupported length `x` with a grip or a centre. With a free front end it is four times as much.
///
/// Derived here: an even bow is a flat arc of radius `R`. Its height over a chord `x` is `x²/(8R)`, its deflection from a tangent over
/// `x` is `x²/(2R)`. That a bar is bowed evenly is an assumption.
pub fn bow_mm(rig: &Rig<'_>, state: &State, answers: &Answers) -> f64 {
    let free = free_bow_mm(rig, answers.unsupported_mm);
    if state.counter.span_from_mm().is_some() { 0.25 * free } else { free }
}

/// Bow at rest of a free front at its face, mm.
pub fn free_bow_mm(rig: &Rig<'_>, unsupported_mm: f64) -> f64 {
    let span_m = unsupported_mm / 1000.0;
    4.0 * rig.job.shaft.bow_mm_per_m * span_m * span_m
}

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-whip"),
    unit: "mm",
    says: Says { found: |_, demand, limit| say!("finding-whip", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["rpm", "speed_floor", "whip", "straightness"],
    find: Find::BySpeed(|rig, state, answers| {
        // The bow of a gripped bar is largest in the middle of its span, the bow of a free bar at its front end.
        let at_mm = state.counter.span_from_mm().map_or(0.0, |g| g + 0.5 * answers.unsupported_mm);
        let growth = Growth::Bow { at_rest_mm: bow_mm(rig, state, answers) };
        Some(SpeedLaw { growth, limit: rig.job.limits.whip_mm / rig.job.limits.reserve.of(NAME), at_mm })
    }),
};
