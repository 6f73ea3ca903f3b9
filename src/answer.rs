//! The way from a job to an answer that may be printed: plan, prove, and plan again where a state between the looked-at
//! ones broke. No unproven plan leaves this file.

pub mod at;
pub mod moved;

use crate::job::Job;
use crate::job::plan::{Plan, Verdict};
use crate::planner::{self, Advice, Defect};
use crate::proof::{self, Breach};
use crate::report::cautions;

/// Rounds of planning with the states that the proof found broken.
const ROUNDS: usize = 6;

/// What is said where costs were asked for and there are none.
const NO_LIMIT_COSTS: &str = "No limit costs time: without any one of them the plan is no faster.";

/// The proven plan of a job, or the answer why there is none.
///
/// - **Errors**: [`Defect`]: a fault of ours; send us the job.
pub fn answer(job: &Job) -> Result<Plan, Defect> {
    advised(job, Advice::Wanted)
}

/// The proven plan with what each limit costs: many plans more.
pub fn with_costs(job: &Job) -> Result<Plan, Defect> {
    let mut plan = answer(job)?;
    if plan.verdict == Verdict::Feasible {
        plan.limit_costs = planner::costs::find(job, plan.pace_s())?;
        if plan.limit_costs.is_empty() {
            plan.notes.push(NO_LIMIT_COSTS.to_owned());
        }
    }
    Ok(plan)
}

/// The same; without advice an answer that there is no plan comes at once.
pub fn advised(job: &Job, advice: Advice) -> Result<Plan, Defect> {
    let mut look_at = Vec::new();
    let mut last: Vec<Breach> = Vec::new();
    for _ in 0..ROUNDS {
        let mut plan = planner::plan(job, advice, &look_at)?;
        plan.cautions = cautions(&plan);
        if plan.verdict == Verdict::Infeasible {
            return Ok(plan);
        }
        let verified = proof::prove(&plan, job);
        if verified.holds() {
            return Ok(plan);
        }
        let known = look_at.len();
        for t in verified.breaches.iter().filter_map(|b| b.turned_mm) {
            if !look_at.iter().any(|l: &f64| (l - t).abs() < 1e-6) {
                look_at.push(t);
            }
        }
        last = verified.breaches;
        if look_at.len() == known {
            break;
        }
    }
    let first = last.first().map_or(String::new(), |b| format!("{}: {}", b.rule, b.text));
    Err(Defect(format!("the plan does not pass its proof ({first})")))
}
