//! The way from a job to an answer that may be printed: plan, prove, and plan again where a state between the looked-at
//! ones broke. No unproven plan leaves this file.

pub mod at;
pub mod moved;

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::{Plan, Verdict};
use crate::planner::places::lessons::Lessons;
use crate::planner::{self, Advice};
use crate::proof;
use crate::report::cautions;

/// Rounds of planning and proving in which stops and grips may move off the stations.
const ROUNDS_MOVED: usize = 4;

/// What is said where costs were asked for and there are none.
const NO_LIMIT_COSTS: &str = "No limit costs time: without any one of them the plan is no faster.";

/// The proven plan of a job, or the answer why there is none.
///
/// # Errors
/// [`Defect`], a fault of ours, as [`advised`]; send us the job.
pub fn answer(job: &Job) -> Result<Plan, Defect> {
    advised(job, Advice::Wanted)
}

/// The proven plan with what each limit costs: many plans more.
///
/// # Errors
/// As [`answer`], and where planning with a limit relaxed meets a [`Defect`].
pub fn with_costs(job: &Job) -> Result<Plan, Defect> {
    let mut plan = answer(job)?;
    if plan.verdict == Verdict::Feasible {
        plan.limit_costs = planner::advice::costs::find(job, plan.pace_s())?;
        if plan.limit_costs.is_empty() {
            plan.notes.push(NO_LIMIT_COSTS.to_owned());
        }
    }
    Ok(plan)
}

/// The same; without advice an answer that there is no plan comes at once.
///
/// A state that the proof finds broken is looked at when planning anew, and shut where that was not enough; see
/// [`Lessons`] for why this ends.
///
/// # Errors
/// [`Defect`] where planning meets one, or a plan does not pass its proof and planning anew would look at no other states.
pub fn advised(job: &Job, advice: Advice) -> Result<Plan, Defect> {
    let mut lessons = Lessons::default();
    let mut rounds = 0;
    loop {
        let mut plan = planner::plan(job, advice, &lessons)?;
        plan.cautions = cautions(&plan);
        if plan.verdict == Verdict::Infeasible {
            return Ok(plan);
        }
        let verified = proof::prove(&plan, job);
        if verified.holds() {
            verified.tell(&mut plan);
            return Ok(plan);
        }
        let new = lessons.learn_all(verified.breaches.iter().filter_map(|b| b.state));
        // Places that move off the stations bring ever new states; where they stay, only finitely many are left.
        rounds += 1;
        let stays = std::mem::replace(&mut lessons.stay, rounds >= ROUNDS_MOVED);
        if !new && stays == lessons.stay {
            let first = verified.breaches.first().map_or(String::new(), |b| format!("{}: {}", b.rule, b.text));
            return Err(Defect(format!("the plan does not pass its proof ({first})")));
        }
    }
}
