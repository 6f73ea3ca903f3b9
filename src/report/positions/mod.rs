//! The table for the programmer: the plan as coordinates and wait points of both spindles, in order.
//!
//! A row is an event with where everything stands when it is done. Between two rows the bar moves by the difference of
//! the turned lengths: the headstock's nose goes that far towards the bush, and a counter-spindle that holds the part
//! goes as far away from it. So the sum of both distances changes only where one of them opens.

mod clock;
mod cuts;
mod file;
mod walk;

pub use file::{positions_csv, positions_json};

use super::{numbers, words};
use crate::job::plan::{Plan, Positions, not_a_program};
use crate::say;

/// The table. A plan that cannot be made has no rows. The texts are in the language that the thread speaks.
pub fn positions(plan: &Plan) -> Positions {
    let rows = if plan.verdict.has_plan() { walk::rows(plan) } else { Vec::new() };
    Positions {
        caution: not_a_program(),
        directions: directions(plan),
        job: words::plain(&plan.job),
        drawing: plan.drawing.as_deref().map(words::plain),
        revision: plan.revision.as_deref().map(words::plain),
        length_mm: plan.length_mm,
        gap_mm: plan.layout.gap_mm,
        rows,
    }
}

/// Zero points and directions of the positions in two or three sentences, with the axis letters of ISO 841.
pub fn directions(plan: &Plan) -> Vec<String> {
    let gap = numbers::mm(plan.layout.gap_mm);
    let spindles =
        if words::has_bush(plan) { say!("moves-from-bush", gap = gap) } else { say!("moves-without-bush", gap = gap) };
    vec![say!("moves-on-part"), spindles, say!("moves-across")]
}
