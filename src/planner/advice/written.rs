//! Edits of files that are in inches: their values get units, because the planner computes in mm.

use crate::job::plan::Edit;
use crate::job::{Job, Machine};
use crate::lang::Units;
use crate::planner::advice::candidate::Candidate;

/// The changes with edits that mean the same in the files of the job, whatever units these are in.
pub fn in_units_of_files(job: &Job, list: Vec<Candidate>) -> Vec<Candidate> {
    // A set of changes may go on to another machine of the shop and change that one.
    let inch = |machine: &Machine| machine.written == Units::Inch;
    let (of_job, of_machine) = (
        job.written == Units::Inch,
        inch(&job.machine) || job.nearby.machines().iter().any(|(_, machine)| inch(machine)),
    );
    if !of_job && !of_machine {
        return list;
    }
    let edited = move |edit: Edit| {
        let in_inches = if edit.file == "machine" { of_machine } else { of_job };
        if in_inches { edit.with_units() } else { edit }
    };
    let one = |candidate: Candidate| {
        let Candidate { writes, .. } = candidate;
        Candidate { writes: Box::new(move |value| writes(value).into_iter().map(edited).collect()), ..candidate }
    };
    list.into_iter().map(one).collect()
}
