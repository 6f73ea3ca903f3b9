//! `whip`: the bow left in the turned shaft, grown by rotation, `e/(1 - (n/n_crit)²)`.

use super::super::answers::Answers;
use super::super::rig::Rig;
use super::super::state::State;
use super::{Check, Finding};

/// Name of the check.
pub const NAME: &str = "whip";

/// Bow at rest in mm: `bow (x/1000)²` over a gripped length `x`; a free end stands out four times as far.
pub fn bow_mm(rig: &Rig<'_>, state: &State, answers: &Answers) -> f64 {
    let span_m = answers.unsupported_mm / 1000.0;
    let ends = if state.counter.grip_mm().is_some() { 1.0 } else { 4.0 };
    ends * rig.job.shaft.bow_mm_per_m * span_m * span_m
}

/// What rotation makes of a deflection at rest; infinite at and above the critical speed.
pub fn grown(rest_mm: f64, rpm: f64, critical_rpm: f64) -> f64 {
    let ratio = rpm / critical_rpm;
    if ratio < 1.0 { rest_mm / (1.0 - ratio * ratio) } else { f64::INFINITY }
}

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    find: |v| {
        let demand = grown(bow_mm(v.rig, v.state, v.answers), v.rpm, v.answers.critical_rpm);
        // A gripped bar bows most in the middle of its span, a free one at its front end.
        let at = v.state.counter.grip_mm().map_or(0.0, |g| g + 0.5 * v.answers.unsupported_mm);
        Some(Finding::at_most(NAME, "mm", demand, v.rig.job.limits.whip_mm, at))
    },
};
