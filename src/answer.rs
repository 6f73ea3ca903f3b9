//! From a job to an answer that may be printed: plan, prove, and plan again if a state that the planner did not look at
//! fails the proof. No unproven plan leaves this file.

pub mod at;
pub mod moved;
mod sure;

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::{Plan, Shortfall, Verdict, cautions};
use crate::planner::advice::sets::{self, MOST_SETS, Proven};
use crate::planner::places::lessons::Lessons;
use crate::planner::{self, Advice};
use crate::proof;
use crate::say;

/// Rounds of planning and proving in which stops and grips may move off the stations.
const ROUNDS_MOVED: usize = 4;

/// Most sampled parts of a set of changes.
const PARTS_OF_A_SET: usize = 100;

/// The proven plan of a job, or the answer why there is none.
///
/// # Errors
/// [`Defect`], an error in this program, as in [`advised`]. Please send us the job.
pub fn answer(job: &Job) -> Result<Plan, Defect> {
    sampled(job, Advice::Wanted)
}

/// The proven plan with the time that each limit costs. This makes many more plans than [`answer`].
///
/// # Errors
/// As [`answer`], and [`Defect`] if planning with a relaxed limit meets one.
pub fn with_costs(job: &Job) -> Result<Plan, Defect> {
    let mut plan = answer(job)?;
    if plan.verdict.has_plan() {
        // With a confidence, the limits are relaxed for the fastest plan, and its time counts.
        let asked = plan.scatter.as_ref().and_then(|s| s.confidence.as_ref());
        let now_s = asked.map_or(plan.pace_s(), |confidence| confidence.fastest_s);
        plan.limit_costs = planner::advice::costs::find(job, now_s)?;
        if plan.limit_costs.is_empty() {
            plan.notes.push(say!("note-no-limit-costs"));
        }
    }
    Ok(plan)
}

/// Adds to a plan the time of a part planned for each uncertain input one standard deviation lower and higher. This makes many more plans.
///
/// # Errors
/// [`Defect`] if planning with another value meets one.
pub fn with_input_times(plan: &mut Plan, job: &Job) -> Result<(), Defect> {
    sure::with_times(plan, job)
}

/// As [`answer`], with or without advice. Without advice, the answer that there is no plan comes at once.
///
/// The plan says in how many sampled parts it holds. If the job asks for a confidence, it is the fastest plan found that holds in so many.
///
/// # Errors
/// [`Defect`] as in [`advised`].
pub fn sampled(job: &Job, advice: Advice) -> Result<Plan, Defect> {
    counted(advised(job, advice)?, job)
}

/// What [`sampled`] gives, from the plan that [`advised`] gave for the same job.
///
/// # Errors
/// [`Defect`] as in [`advised`]: for a confidence the job is planned again.
pub fn counted(plan: Plan, job: &Job) -> Result<Plan, Defect> {
    sure::sure(plan, job)
}

/// The proven plan without sampled parts: much faster where only the nominal part matters.
///
/// If a state fails the proof, the next round looks at this state too. If that is not enough, the state is excluded.
/// [`Lessons`] says why the rounds end.
///
/// # Errors
/// [`Defect`] if planning meets one, or if a plan fails its proof and another round would look at no new state.
pub fn advised(job: &Job, advice: Advice) -> Result<Plan, Defect> {
    let mut lessons = Lessons::default();
    let mut rounds = 0;
    loop {
        let mut plan = planner::plan(job, &lessons)?;
        plan.cautions = cautions(&plan);
        if plan.verdict == Verdict::Infeasible {
            if let Some(shortfall) = plan.shortfall.as_mut().filter(|_| advice == Advice::Wanted) {
                helped(shortfall, job, MOST_SETS)?;
            }
            return Ok(plan);
        }
        let verified = proof::prove(&plan, job);
        if verified.holds() {
            verified.tell(&mut plan);
            return Ok(plan);
        }
        let new = lessons.learn_all(verified.breaches.iter().filter_map(|b| b.state));
        // Places that move off the stations can bring new states without end. On the stations the number of states is
        // finite.
        rounds += 1;
        let stays = std::mem::replace(&mut lessons.stay, rounds >= ROUNDS_MOVED);
        if !new && stays == lessons.stay {
            let first = verified.breaches.first();
            let told = first.map(|b| say!("proof-failed", rule = b.rule, text = b.text));
            return Err(Defect(told.unwrap_or_default()));
        }
    }
}

/// Adds to the answer why there is no plan what would help: up to `most` sets of changes. If this work is asked to stop, it adds what it
/// has found.
///
/// # Errors
/// [`Defect`] if planning with a change meets one.
pub fn helped(shortfall: &mut Shortfall, job: &Job, most: usize) -> Result<(), Defect> {
    let prove = |job: &Job| {
        let plan = advised(job, Advice::None)?;
        // Enough parts to tell a good set from one at risk.
        let mut few = job.clone();
        few.scatter.samples = few.scatter.samples.min(PARTS_OF_A_SET);
        let share = |plan: &Plan| proof::scatter(plan, &few).good_share;
        Ok(plan.verdict.has_plan().then(|| Proven { time_s: plan.pace_s(), good_share: Some(share(&plan)) }))
    };
    let help = sets::find(job, most, &prove)?;
    shortfall.changes = help.changes;
    shortfall.sets = help.sets;
    shortfall.after_trial = help.after_trial;
    shortfall.tried = help.tried;
    Ok(())
}
