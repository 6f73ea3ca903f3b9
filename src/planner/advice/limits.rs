//! Limits as changes: those that a house may change after a trial, and those of safety, which are never advised.

use crate::job::Job;
use crate::lang::{self, Measure};
use crate::planner::advice::candidate::{Candidate, Role, number};
use crate::say;

/// A limit of safety is lifted to at most this many times its value.
const SAFE_TIMES: f64 = 5.0;
/// A limit for the quality of the part is relaxed to at most this many times its value.
pub const PART_TIMES: f64 = 25.0;
/// Share of the speed at which the bar whirls up to which that limit is lifted.
const WHIRL_TO: f64 = 0.9;
/// Share of the load at which the bar buckles up to which that limit is lifted.
const BUCKLING_TO: f64 = 0.9;

/// Limits that say what is good enough for the part or for one tool.
pub fn house(job: &Job) -> Vec<Candidate> {
    let l = &job.limits;
    let (stiffness, span) = (l.stiffness_min_n_per_um, l.span_stiffness_min_n_per_um);
    let house = |name, from: f64, to: f64, unit, set| eased(Role::House, name, (from, to), unit, set);
    let mut list = vec![
        house("stiffness_min", stiffness, 0.1 * stiffness, "N/µm", |j, v| j.limits.stiffness_min_n_per_um = v),
        house("span_stiffness_min", span, 0.1 * span, "N/µm", |j, v| j.limits.span_stiffness_min_n_per_um = v),
        house("sag", l.sag_mm, PART_TIMES * l.sag_mm, "mm", |j, v| j.limits.sag_mm = v),
        house("pick_up", l.pick_up_mm, SAFE_TIMES * l.pick_up_mm, "mm", |j, v| j.limits.pick_up_mm = v),
        house("drill", l.drill_mm, PART_TIMES * l.drill_mm, "mm", |j, v| j.limits.drill_mm = v),
        house("tolerance_share", l.tolerance_share, 1.0, "", |j, v| j.limits.tolerance_share = v),
    ];
    let free =
        |ratio: f64| house("free_ratio", ratio, PART_TIMES * ratio, "", |j: &mut Job, v| j.limits.free_ratio = Some(v));
    list.extend(l.free_ratio.map(free));
    list
}

/// Limits that keep the bar, the part and the people from harm. They are lifted only to find out which of several reasons stops the bar.
pub fn safety(job: &Job) -> Vec<Candidate> {
    let l = &job.limits;
    let safety = |name, from: f64, to: f64, unit, set| eased(Role::Safety, name, (from, to), unit, set);
    vec![
        safety("whirl_ratio", l.whirl_ratio, WHIRL_TO, "", |j, v| j.limits.whirl_ratio = v),
        safety("whip", l.whip_mm, SAFE_TIMES * l.whip_mm, "mm", |j, v| j.limits.whip_mm = v),
        safety("release", l.release_mm, SAFE_TIMES * l.release_mm, "mm", |j, v| j.limits.release_mm = v),
        safety("bore_clearance", l.bore_clearance_mm, 0.0, "mm", |j, v| j.limits.bore_clearance_mm = v),
        safety("torque_margin", l.torque_margin, 1.0, "", |j, v| j.limits.torque_margin = v),
        safety("buckling_share", l.buckling_share, (2.0 * l.buckling_share).min(BUCKLING_TO), "", |j, v| {
            j.limits.buckling_share = v;
        }),
    ]
}

fn eased(
    role: Role,
    name: &'static str,
    (from, to): (f64, f64),
    unit: &'static str,
    set: fn(&mut Job, f64),
) -> Candidate {
    // The step is as fine as for a limit of safety, however far the range goes.
    let step = round_step(0.02 * from.max(to.min(SAFE_TIMES * from)));
    // A value has as many decimals as its step.
    let decimals = (-step.log10()).ceil().clamp(0.0, 6.0) as usize;
    let says = move |v: f64| {
        let value = match (unit, Measure::of(unit)) {
            (_, Some(measure)) => format!("{} {}", measure.fixed(v, decimals), lang::unit_told(unit)),
            ("", None) => lang::fixed(v, decimals),
            (_, None) => format!("{} {unit}", lang::fixed(v, decimals)),
        };
        say!("change-limit", limit = name, value = value)
    };
    number(name, role, (from, to), step, says, set)
}

/// The round number (1, 2 or 5 and a power of ten) at or below a step.
pub fn round_step(step: f64) -> f64 {
    if step <= 0.0 {
        return 1.0;
    }
    let power = 10f64.powf(step.log10().floor());
    [5.0, 2.0, 1.0].into_iter().map(|n| n * power).find(|s| *s <= step * (1.0 + 1e-9)).unwrap_or(power)
}
