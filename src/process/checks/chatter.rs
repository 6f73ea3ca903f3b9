//! `chatter`: depth of cut against the limit of regenerative chatter at the tool; with a tandem at the place of each tool, on its own.
//!
//! The limit depends on the receptance at the tool. For most moments a bound from the static flexibility alone passes; the modes are
//! computed only if it does not. Plunging, thread whirling and part-off are not checked.

use super::super::rig::Rig;
use super::super::segments::{Segment, Travel, Work};
use super::super::state::State;
use super::{Check, Find, Finding, Says, View};
use crate::lang;
use crate::mechanics::chatter::{depth_limit_mm, least_real_bound};
use crate::say;

/// Name of the check.
pub const NAME: &str = "chatter";
const UNIT: &str = "mm";

/// A tool in cut.
#[derive(Clone, Copy)]
struct InCut {
    /// Its place, mm from the front face.
    at_mm: f64,
    depth_mm: f64,
    /// Cutting stiffness for each mm of depth, N/mm².
    stiffness_n_per_mm2: f64,
}

/// The tool and travel that come closest to the limit, at the tool's place; and the finishing tool of a tandem at its own place.
fn in_cut(rig: &Rig<'_>, state: &State, segment: &Segment) -> [Option<InCut>; 2] {
    let cut = |at_mm: f64, depth: &f64, stiffness: &f64| InCut {
        at_mm,
        depth_mm: *depth,
        stiffness_n_per_mm2: stiffness / depth,
    };
    let finisher_mm = rig.finisher_at_mm(state).filter(|_| segment.lag_mm.is_some());
    let finisher = finisher_mm.and_then(|at_mm| {
        let travel = segment.finishing()?;
        Some(cut(at_mm, travel.depths_mm.last()?, travel.stiffness_n_per_mm.last()?))
    });
    let leading = |t: &Travel| if finisher.is_some() { t.depths_mm.len().min(1) } else { t.depths_mm.len() };
    let tools = segment.travels.iter().flat_map(|t| t.depths_mm.iter().zip(&t.stiffness_n_per_mm).take(leading(t)));
    let hardest = tools.max_by(|a, b| a.1.total_cmp(b.1)).map(|(d, s)| cut(state.turned_mm, d, s));
    [hardest, finisher]
}

/// The finding of the tool that uses the larger share of its limit.
fn worse(found: [Option<Finding>; 2]) -> Option<Finding> {
    found.into_iter().flatten().reduce(|a, b| if b.utilisation > a.utilisation { b } else { a })
}

fn applies(segment: &Segment) -> bool {
    matches!(segment.work, Work::Turn | Work::Thread)
}

fn finding(rig: &Rig<'_>, tool: InCut, least_real: f64) -> Option<Finding> {
    let limit = depth_limit_mm(tool.stiffness_n_per_mm2, least_real) / rig.job.limits.reserve.of(NAME);
    if limit.is_finite() { Some(Finding::at_most(NAME, UNIT, tool.depth_mm, limit, tool.at_mm)) } else { None }
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
    worse(in_cut(rig, state, segment).map(|tool| {
        let tool = tool?;
        // The formula of the limit is symmetric in depth and flexibility, so it also gives the flexibility for a depth.
        let enough = share * depth_limit_mm(tool.stiffness_n_per_mm2, tool.depth_mm) / rig.job.limits.reserve.of(NAME);
        finding(rig, tool, rig.least_real_above(state, tool.at_mm, enough).ok()??)
    }))
}

/// A bound of the finding from the modes that `steps` Lanczos steps find: its limit is never above the exact one.
pub fn about(rig: &Rig<'_>, state: &State, segment: &Segment, steps: usize) -> Option<Finding> {
    if !applies(segment) {
        return None;
    }
    let about = |tool: InCut| finding(rig, tool, rig.least_real_about(state, tool.at_mm, steps).ok()?);
    worse(in_cut(rig, state, segment).map(|tool| tool.and_then(about)))
}

/// A bound of the finding from the static flexibility: its limit is never above the exact one.
pub fn bound(view: &View<'_>) -> Option<Finding> {
    if !applies(view.segment) {
        return None;
    }
    let damping = view.rig.job.limits.damping_ratio;
    let [hardest, finisher] = in_cut(view.rig, view.state, view.segment);
    let bound = |tool: Option<InCut>, mm_per_n: f64| finding(view.rig, tool?, least_real_bound(mm_per_n, damping));
    worse([bound(hardest, view.answers.tool_mm_per_n), bound(finisher, view.answers.finisher_mm_per_n)])
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
