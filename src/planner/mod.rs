//! Finds the plan: stations, arcs, the sequence program, the placing program, what is missing.

pub mod assemble;
pub mod candidates;
pub mod changes;
pub mod costs;
mod demand;
pub mod draft;
mod events;
mod farthest;
pub mod frontier;
mod glance;
pub mod grips;
pub mod hold;
pub mod lessons;
pub mod network;
pub mod outline;
pub mod outlook;
pub mod pairs;
mod piece;
pub mod placing;
pub mod price;
pub mod runs;
pub mod sequence;
pub mod settle;
pub mod shortfall;
pub mod solve;
pub mod stations;
pub mod unguided;
pub mod wishes;
pub mod works;

use crate::job::Job;
use crate::job::plan::Plan;
use lessons::Lessons;
pub use sequence::Defect;
use solve::{Answer, Effort};

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
/// - **Errors**: [`Defect`], a fault of ours.
pub fn plan(job: &Job, advice: Advice, lessons: &Lessons) -> Result<Plan, Defect> {
    match solve::solve(job, Effort::Best, lessons)? {
        Answer::Found(plan) => {
            let notes = solve::notes(job, &plan);
            Ok(Plan { notes, ..*plan })
        }
        Answer::Blocked(blocked) => {
            let blocked = wishes::blamed(job, pairs::alone(job, blocked)?)?;
            shortfall::plan(job, &blocked, advice)
        }
    }
}
