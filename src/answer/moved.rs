//! A plan with one of its places moved by hand. The plan is settled with the new place and proven again, so that it
//! shows which rules it breaks.

use crate::diag::Diag;
use crate::job::Job;
use crate::job::plan::Plan;
use crate::planner::places::ground::Ground;
use crate::planner::plan::assemble;
use crate::planner::plan::draft::{Draft, DraftStage};
use crate::process::Rig;
use crate::process::features::moments_told;
use crate::proof::{self, Verified};
use crate::say;

/// Largest distance between the states of the moved plan, mm. The proof chooses its states itself.
const STEP_MM: f64 = 2.0;
/// Two places of a stored plan that differ by less than this are the same, mm.
const SAME_MM: f64 = 1e-4;
/// Shortest stage that a move may leave, mm.
const SHORTEST_MM: f64 = 0.5;

/// What is moved; stages count from 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Move {
    /// The turned length at which a stage begins with a hand-over.
    HandOver {
        /// The stage it begins.
        stage: usize,
    },
    /// The nose of a stage's grip, mm from the front face.
    Grip {
        /// The stage.
        stage: usize,
    },
    /// A headstock re-grip, by its place in the plan's list, from 0.
    Regrip {
        /// Its index in that list.
        index: usize,
    },
}

/// The plan with a place moved to `to_mm`, and what the proof says of it.
///
/// # Errors
/// The plan has no such place or is infeasible, the place would leave a stage too short or the collet beside the shaft,
/// or the job cannot be cut in segments.
pub fn moved(job: &Job, plan: &Plan, what: Move, to_mm: f64) -> Result<(Plan, Verified), Diag> {
    if !plan.verdict.has_plan() {
        return Err(Diag::new(say!("move-no-plan")).help(say!("move-no-plan-help")));
    }
    let mut draft = draft_of(plan);
    put(&mut draft, plan, what, to_mm)
        .ok_or_else(|| Diag::new(say!("move-not-there")).help(say!("move-not-there-help")))?;
    let collet = plan.collet.as_deref().and_then(|name| job.machine.collet(name));
    let hold_mm = collet.map_or(0.0, |c| c.hold_mm);
    if matches!(what, Move::Grip { .. }) && (to_mm < hold_mm || to_mm > job.shaft.length_mm()) {
        return Err(Diag::new(say!("move-off-shaft")));
    }
    let rig = Rig::new(job, collet);
    let segments = rig.segments().map_err(|refused| Diag::new(refused.text))?;
    let tasks = rig.tasks();
    let moments = moments_told(plan, &tasks);
    let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
    let settled = ground.settle(&draft, STEP_MM);
    // What is known of the fastest plan: the plan before the move may be slower by its gap.
    let charged_s = |p: &Plan| p.pace_s() + p.time_s.penalties;
    let least_s = charged_s(plan) * (1.0 - plan.optimality.gap);
    let mut plan = assemble::plan(&ground, &draft, &settled, plan.optimality.clone());
    plan.optimality.gap = (1.0 - least_s / charged_s(&plan)).max(0.0);
    let verified = proof::prove(&plan, job);
    verified.tell(&mut plan);
    Ok((plan, verified))
}

/// The stops and grips of a plan.
fn draft_of(plan: &Plan) -> Draft {
    let last = plan.stages.len().saturating_sub(1);
    let stages = plan.stages.iter().enumerate().map(|(i, s)| {
        let at_end = |t: &f64| i < last && (t - s.to_mm).abs() <= SAME_MM;
        DraftStage {
            from_mm: s.from_mm,
            to_mm: s.to_mm,
            nose_mm: s.grip.as_ref().map(|g| g.nose_mm),
            regrips_mm: s.regrips_mm.iter().copied().filter(|t| !at_end(t)).collect(),
            regrip_at_end: s.regrips_mm.iter().any(at_end),
        }
    });
    let end_mm = plan.stages.last().map_or(0.0, |s| s.to_mm);
    Draft { stages: stages.collect(), fed_to_mm: plan.fed_on_mm(last).unwrap_or(end_mm) }
}

fn put(draft: &mut Draft, plan: &Plan, what: Move, to_mm: f64) -> Option<()> {
    if !to_mm.is_finite() {
        return None;
    }
    match what {
        Move::HandOver { stage } => {
            let (front, behind) = draft.stages.split_at_mut_checked(stage.checked_sub(1)?)?;
            let (last, next) = (front.last_mut()?, behind.first_mut()?);
            if to_mm < last.from_mm + SHORTEST_MM || to_mm > next.to_mm - SHORTEST_MM {
                return None;
            }
            let was = next.from_mm;
            last.to_mm = to_mm;
            next.from_mm = to_mm;
            // A re-grip that shares the stop moves with it.
            if let Some(first) = next.regrips_mm.first_mut().filter(|t| (**t - was).abs() <= SAME_MM) {
                *first = to_mm;
            }
        }
        Move::Grip { stage } => {
            let grip = &mut draft.stages.get_mut(stage.checked_sub(1)?)?.nose_mm;
            (*grip)?;
            *grip = Some(to_mm);
        }
        Move::Regrip { index } => {
            let was = *plan.headstock_regrips_mm.get(index)?;
            let inside = |s: &&mut DraftStage| s.regrips_mm.iter().any(|t| (t - was).abs() <= SAME_MM);
            let stage = draft.stages.iter_mut().find(inside)?;
            if to_mm < stage.from_mm || to_mm > stage.to_mm {
                return None;
            }
            let regrip = stage.regrips_mm.iter_mut().find(|t| (**t - was).abs() <= SAME_MM)?;
            *regrip = to_mm;
        }
    }
    Some(())
}
