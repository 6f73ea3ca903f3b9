//! One line: what was planned, and the plan or why there is none.

use super::super::Ending;
use super::super::plan::ending;
use super::id::{Id, Sizes};
use super::tasks::Task;
use crate::answer::sampled;
use crate::diag::Diag;
use crate::job::plan::{Plan, Verdict};
use crate::planner::Advice;
use crate::say;
use serde::{Deserialize, Serialize};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::time::{Duration, Instant};

/// One line.
#[derive(Debug, Serialize)]
struct Line<'a> {
    file: &'a str,
    document: Option<usize>,
    machine: Option<&'a str>,
    vary: Option<&'a Sizes>,
    /// The exit status `plan` would have had.
    status: u8,
    errors: &'a [String],
    plan: Option<&'a Plan>,
}

/// What is kept of a line: enough for the summary and the map.
#[derive(Debug, Clone, PartialEq)]
pub struct Head {
    /// What it is about.
    pub id: Id,
    /// How it ended.
    pub ending: Ending,
    /// Hand-overs and time of a feasible plan.
    pub made: Option<Made>,
    /// Name of the check or the rule that stops a part without a plan. Empty: there is a plan, or no job.
    pub stopped_by: String,
}

/// What is kept of a feasible plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Made {
    /// Number of hand-overs.
    pub hand_overs: usize,
    /// Time of one part in s.
    pub time_s: f64,
    /// Whether too few sampled parts meet all checks.
    pub at_risk: bool,
}

impl Head {
    /// Reads a line that was written earlier. None: it is not a line of `batch`.
    pub fn read(line: &str) -> Option<Head> {
        #[derive(Deserialize)]
        struct Times {
            total: f64,
        }
        #[derive(Deserialize)]
        struct Cycle {
            steady_s: f64,
        }
        #[derive(Deserialize)]
        struct Stop {
            blocked_by: String,
        }
        #[derive(Deserialize)]
        struct Stored {
            verdict: Verdict,
            hand_overs_mm: Vec<f64>,
            time_s: Times,
            cycle: Option<Cycle>,
            shortfall: Option<Stop>,
        }
        #[derive(Deserialize)]
        struct Read {
            file: String,
            document: Option<usize>,
            machine: Option<String>,
            vary: Option<Sizes>,
            status: u8,
            plan: Option<Stored>,
        }
        let read: Read = serde_json::from_str(line).ok()?;
        let ending = [Ending::Done, Ending::NotFeasible, Ending::WrongInput, Ending::Defect]
            .into_iter()
            .find(|e| e.status() == read.status)?;
        let id = Id { file: read.file, document: read.document, machine: read.machine, vary: read.vary };
        let stopped_by = read.plan.as_ref().and_then(|p| p.shortfall.as_ref()).map(|s| s.blocked_by.clone());
        let made = read.plan.filter(|p| p.verdict.has_plan());
        let made = made.map(|p| Made {
            hand_overs: p.hand_overs_mm.len(),
            time_s: p.cycle.map_or(p.time_s.total, |c| c.steady_s),
            at_risk: p.verdict == Verdict::AtRisk,
        });
        Some(Head { id, ending, made, stopped_by: stopped_by.unwrap_or_default() })
    }
}

/// A finished line.
#[derive(Debug)]
pub struct Planned {
    /// What is kept of it.
    pub head: Head,
    /// The line, without a newline.
    pub text: String,
    /// How long it took.
    pub took: Duration,
}

/// Plans a task. Whatever happens, the task gets its line.
pub fn planned(task: Task) -> Planned {
    let began = Instant::now();
    // An error in this program that stops one job must not end the others.
    let answered = catch_unwind(AssertUnwindSafe(|| plan_of(&task)))
        .unwrap_or_else(|_| (Ending::Defect, vec![say!("defect-of-program")], None));
    let (mut ending, mut errors, plan) = answered;
    let write = |ending: Ending, errors: &[String], plan: Option<&Plan>| {
        serde_json::to_string(&Line {
            file: &task.id.file,
            document: task.id.document,
            machine: task.id.machine.as_deref(),
            vary: task.id.vary.as_ref(),
            status: ending.status(),
            errors,
            plan,
        })
    };
    let text = write(ending, &errors, plan.as_ref()).or_else(|e| {
        (ending, errors) = (Ending::Defect, vec![e.to_string()]);
        write(ending, &errors, None)
    });
    let made = plan.as_ref().filter(|_| ending == Ending::Done);
    let made = made.map(|p| Made {
        hand_overs: p.hand_overs_mm.len(),
        time_s: p.pace_s(),
        at_risk: p.verdict == Verdict::AtRisk,
    });
    let stopped_by = plan.and_then(|p| p.shortfall).map_or_else(String::new, |s| s.blocked_by);
    Planned {
        head: Head { id: task.id, ending, made, stopped_by },
        text: text.unwrap_or_default(),
        took: began.elapsed(),
    }
}

fn plan_of(task: &Task) -> (Ending, Vec<String>, Option<Plan>) {
    let wrong = |diags: &[Diag]| (Ending::WrongInput, diags.iter().map(Diag::to_string).collect(), None);
    let job = match &task.of {
        Err(diags) => return wrong(diags),
        Ok((family, part)) => match family.part(*part) {
            Err(diags) => return wrong(&diags),
            Ok(job) => job,
        },
    };
    match sampled(&job, Advice::None) {
        Ok(plan) => (ending(&plan), Vec::new(), Some(plan)),
        Err(defect) => (Ending::Defect, vec![defect.to_string()], None),
    }
}
