//! `chatter`: depth of cut against the limit of regenerative chatter at the tool.
//!
//! The limit depends on the receptance at the tool. For most moments a bound from the static flexibility alone passes; the modes are
//! computed only if it does not. Plunging, thread whirling and part-off are not checked.

use super::super::rig::Rig;
use super::super::segments::{Segment, Work};
use super::super::state::State;
use super::{Check, Find, Finding, Says, View};
use crate::lang;
use crate::mechanics::chatter::{depth_limit_mm, least_real_bound};
use crate::say;

/// Name of the check.
pub const NAME: &str = "chatter";
const UNIT: &str = "mm";

/// Depth (mm) and cutting stiffness for each mm of depth (N/mm²) of the tool and travel that come closest to the limit.
fn hardest(segment: &Segment) -> Option<(f64, f64)> {
    let tools = segment.travels.iter().flat_map(|t| t.depths_mm.iter().zip(&t.stiffness_n_per_mm));
    tools.max_by(|a, b| a.1.total_cmp(b.1)).map(|(depth, stiffness)| (*depth, stiffness / depth))
}

fn applies(segment: &Segment) -> bool {
    matches!(segment.work, Work::Turn | Work::Thread)
}

fn finding(state: &State, segment: &Segment, least_real: f64) -> Option<Finding> {
    let (depth, stiffness) = hardest(segment)?;
    let limit = depth_limit_mm(stiffness, least_real);
    if limit.is_finite() { Some(Finding::at_most(NAME, UNIT, depth, limit, state.turned_mm)) } else { None }
}

/// The finding with computed modes.
pub fn exact(rig: &Rig<'_>, state: &State, segment: &Segment) -> Option<Finding> {
    exact_above(rig, state, segment, 0.0)
}

/// As [`exact`], but none if the utilisation is at most `share`: the computation stops as soon as this is known.
pub fn exact_above(rig: &Rig<'_>, state: &State, segment: &Segment, share: f64) -> Option<Finding> {
    if !applies(segment) {
        return None;
    }
    let (depth, stiffness) = hardest(segment)?;
    // The formula of the limit is symmetric in depth and flexibility, so it also gives the flexibility for a depth.
    let enough = share * depth_limit_mm(stiffness, depth);
    finding(state, segment, rig.least_real_above(state, enough).ok()??)
}

/// A bound of the finding from the modes that `steps` Lanczos steps find: its limit is never above the exact one.
pub fn about(rig: &Rig<'_>, state: &State, segment: &Segment, steps: usize) -> Option<Finding> {
    applies(segment).then(|| finding(state, segment, rig.least_real_about(state, steps).ok()?))?
}

/// A bound of the finding from the static flexibility: its limit is never above the exact one.
pub fn bound(view: &View<'_>) -> Option<Finding> {
    if !applies(view.segment) {
        return None;
    }
    let damping = view.rig.job.limits.damping_ratio;
    finding(view.state, view.segment, least_real_bound(view.answers.tool_mm_per_n, damping))
}

/// The check: the finding of the bound if it passes, else the exact finding.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-chatter"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-chatter", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["tools", "bar", "ap_max"],
    find: Find::AtRest(|v| {
        let safe = bound(v)?;
        if safe.passes() { Some(safe) } else { exact(v.rig, v.state, v.segment) }
    }),
};
