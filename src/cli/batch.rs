//! `batch`: many jobs on all cores, one JSON line each, in input order. What would help a job that cannot be made is not
//! worked out here, it takes many plans: ask `check`.

use super::plan::ending;
use super::progress::spread_counting;
use super::{Ending, files, out};
use crate::answer::advised;
use crate::diag::Diag;
use crate::input;
use crate::job::plan::Plan;
use crate::planner::Advice;
use serde::Serialize;
use std::path::{Path, PathBuf};

/// What `batch` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The job files.
    #[arg(required = true, value_name = "JOB")]
    jobs: Vec<PathBuf>,
    /// Where to write the lines; left out: stdout.
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

/// One line.
#[derive(Debug, Serialize)]
struct Line<'a> {
    file: String,
    /// The exit status `plan` would have had.
    status: u8,
    errors: Vec<String>,
    plan: Option<&'a Plan>,
}

fn line(path: &Path) -> (Ending, String) {
    let file = path.display().to_string();
    let failed = |ending: Ending, errors: Vec<String>| {
        let line = Line { file: file.clone(), status: ending.status(), errors, plan: None };
        (ending, serde_json::to_string(&line).unwrap_or_default())
    };
    let job = match input::read_job(path) {
        Ok(job) => job,
        Err(diags) => return failed(Ending::WrongInput, diags.iter().map(Diag::to_string).collect()),
    };
    match advised(&job, Advice::None) {
        Ok(plan) => {
            let ending = ending(&plan);
            let line = Line { file: file.clone(), status: ending.status(), errors: Vec::new(), plan: Some(&plan) };
            match serde_json::to_string(&line) {
                Ok(text) => (ending, text),
                Err(e) => failed(Ending::Defect, vec![e.to_string()]),
            }
        }
        Err(defect) => failed(Ending::Defect, vec![defect.to_string()]),
    }
}

/// Runs it. One bad job is one line and never stops the rest; the status is that of the worst line's kind: a defect, a
/// wrong input, or done.
pub fn run(args: &Args) -> Ending {
    let mut text = String::new();
    let mut worst = Ending::Done;
    for (ending, line) in spread_counting("jobs", &args.jobs, |path| line(path)) {
        text += &line;
        text.push('\n');
        let counts = matches!(ending, Ending::WrongInput | Ending::Defect);
        if counts && ending.status() > worst.status() {
            worst = ending;
        }
    }
    match &args.out {
        None => out::result(&text),
        Some(path) => {
            if let Err(diag) = files::write_one(path, &text) {
                return out::wrong_input(&[diag]);
            }
        }
    }
    worst
}
