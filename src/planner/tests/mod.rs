//! The planner's insides against what is worked out another way: an exhaustive search, a search over a fine grid of places, another solver, the
//! full look at every state. What a user of the library sees of it is tested in `tests/`.

mod bounded;
mod defects;
mod export;
// Shared with the tests of `tests/`.
#[path = "../../../tests/jobs/mod.rs"]
mod jobs;
mod lookers;
mod oracle;
mod orders;
mod placing;
#[path = "../../../tests/published/row.rs"]
mod row;
mod samples;
mod search;
mod steps;

use crate::job::{Collet, Job};

fn read(text: &str) -> Option<Job> {
    crate::input::read_job_text("random.yaml", text, ".".as_ref()).ok()
}

fn collets(job: &Job) -> Vec<Option<&Collet>> {
    match &job.machine.counter_spindle {
        Some(c) => c.collets.iter().map(Some).collect(),
        None => vec![None],
    }
}
