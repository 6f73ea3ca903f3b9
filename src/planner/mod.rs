//! Finds the plan of a job: the way of a job through it, room by room.
//!
//! | room | what it tells |
//! |---|---|
//! | `places` | where the plan can have stops and grips |
//! | `states` | what each state of the bar allows: whether it holds, at which speed, how safely |
//! | `sequence` | runs of a grip, the network of them, and its best way by a linear program |
//! | `plan` | the way as stages; their places moved for the largest margin by a linear program; all of it settled and told |
//! | [`steps`] | these one by one, for whoever times them |
//! | `why_not` | where there is no way: how far the bar comes, and what stops it |
//! | `solve` | these together, for every collet and reach of the cross tools |
//! | `advice` | what would help, and what limits cost: the same with something changed |
//!
//! A room uses those above it in this table, never one below; no file is in a circle of imports. A test holds it.
//!
//! [`plan()`] is the entrance; the rooms are private to the library, for their order and their names change with every mending.

pub(crate) mod advice;
pub(crate) mod places;
pub(crate) mod plan;
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
use advice::tries::Help;
use advice::{changes, dropped, pairs};
pub use places::lessons::Lessons;
use solve::{Answer, Effort};
use why_not::shortfall;

/// Whether an answer that there is no plan also says what would help. That takes many plans.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Advice {
    /// It does.
    Wanted,
    /// The reason alone.
    None,
}

/// The plan of a job, feasible or not; not yet proven. `lessons` are what proofs of earlier plans of it found.
///
/// # Errors
/// [`Defect`], a fault of ours, as of [`solve::solve`], of this job or of one with a change that was tried.
pub fn plan(job: &Job, advice: Advice, lessons: &Lessons) -> Result<Plan, Defect> {
    match solve::solve(job, Effort::Best, lessons)? {
        Answer::Found(plan) => {
            let notes = solve::notes(job, &plan);
            Ok(Plan { notes, ..*plan })
        }
        Answer::Blocked(blocked) => {
            // Of reasons that stop the bar together, one that alone would be enough; and a wish where that is what stands in the way.
            let blocked = dropped::blamed(job, pairs::alone(job, blocked)?)?;
            let help = if advice == Advice::Wanted { changes::find(job)? } else { Help::default() };
            Ok(shortfall::plan(job, &blocked, help.changes, help.tried))
        }
    }
}
