//! Finds the plan of a job. Each room is one step from the job to its plan.
//!
//! | room | what it does |
//! |---|---|
//! | `places` | finds where the plan can have stops and grips |
//! | `states` | works out each state of the bar: whether it holds, at which speed, with which margin |
//! | `sequence` | builds the network of stages and finds its best way by a linear program |
//! | `plan` | moves stops and grips for the largest margin by a linear program, settles speeds and checks, writes the plan |
//! | [`steps`] | runs the rooms above one by one, for timing them |
//! | `why_not` | says how far the bar comes and what stops it, where there is no plan |
//! | `solve` | runs all of this for every collet and reach of the cross tools |
//! | `quick` | says whether the bar comes through, without a plan |
//! | `advice` | finds what would help and what limits cost, by planning with a change |
//!
//! A room uses only the rooms above it in this table. No file is part of a circle of imports. A test checks both.
//!
//! [`plan()`] is the entrance. The rooms are private to the library, so that their order and names may change.

pub(crate) mod advice;
pub(crate) mod places;
pub(crate) mod plan;
mod quick;
mod sequence;
mod solve;
mod states;
pub mod steps;
#[cfg(test)]
mod tests;
mod why_not;

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::Plan;
use advice::{dropped, lifting};
pub use places::lessons::Lessons;
use plan::notes;
use solve::{Answer, Effort};
use why_not::shortfall;

/// Whether an answer without a plan also says which changes would help. To find them takes many plans.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Advice {
    /// Say what would help.
    Wanted,
    /// Say only why there is no plan.
    None,
}

/// The plan of a job, feasible or not. It is not yet proven. `lessons` hold what the proofs of earlier plans of this
/// job found. Where there is none, it says why, and not yet what would help.
///
/// # Errors
/// [`Defect`], a fault of this program, when a linear program fails for this job.
pub fn plan(job: &Job, lessons: &Lessons) -> Result<Plan, Defect> {
    match solve::solve(job, Effort::Best, lessons)? {
        Answer::Found(plan) => {
            let notes = notes::notes(job, &plan);
            Ok(Plan { notes, ..*plan })
        }
        Answer::Blocked(blocked) => {
            // Where several reasons together stop the bar, tell one whose lifting alone is enough. Where a wish stands
            // in the way, tell the wish.
            let blocked = dropped::blamed(job, lifting::alone(job, blocked)?)?;
            Ok(shortfall::plan(job, &blocked))
        }
    }
}
