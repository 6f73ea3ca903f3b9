//! From texts to answers. No connection is known here.

use std::sync::Arc;

use axum::http::StatusCode;

use super::wire::{Drawing, Outline, Planned, Problem, Texts, Told, Value};
use super::work::Desk;
use crate::answer;
use crate::diag::Diag;
use crate::input::tree::{Entry, tree};
use crate::input::{Named, read_texts};
use crate::job::Job;
use crate::job::plan::{Plan, Verdict};
use crate::planner::{Advice, Defect};
use crate::report;

/// Why there is no answer, with the status that says so.
pub type Refused = (StatusCode, Problem);

/// The trees of the texts, as far as they can be read.
fn trees(texts: &Texts) -> [Option<Entry>; 2] {
    let one = |text: &super::wire::Text| tree(&text.name, &text.text).ok();
    [one(&texts.job), texts.machine.as_ref().and_then(one)]
}

fn told(diags: &[Diag], texts: &Texts, trees: &[Option<Entry>; 2]) -> Vec<Told> {
    diags.iter().map(|diag| Told::of(diag, texts, [trees[0].as_ref(), trees[1].as_ref()])).collect()
}

/// The job of the texts.
///
/// # Errors
/// What is wrong with them.
pub fn job_of(texts: &Texts) -> Result<Job, Refused> {
    let machine = texts.machine.as_ref().map(Named::from);
    read_texts(&Named::from(&texts.job), machine.as_ref()).map_err(|diags| {
        let problem = Problem::new("the job cannot be read", "mend what is marked");
        (StatusCode::UNPROCESSABLE_ENTITY, Problem { errors: told(&diags, texts, &trees(texts)), ..problem })
    })
}

/// A defect of ours.
pub fn defect(defect: &Defect) -> Refused {
    let problem = Problem::new(format!("a defect of ours: {defect}"), "please report it, with the job");
    (StatusCode::INTERNAL_SERVER_ERROR, problem)
}

fn undrawn(error: &report::ReportError) -> Refused {
    defect(&Defect(error.to_string()))
}

/// The plan of a job, worked out once. What would help is left out.
///
/// # Errors
/// A defect of ours.
pub fn plan_of(desk: &Desk, job: &Job, texts: &Texts) -> Result<Arc<Plan>, Refused> {
    // A machine without a name takes that of its file.
    let key = format!("{}\n{}", job.input_digest, texts.machine.as_ref().map_or("", |m| &m.name));
    if let Some(plan) = desk.kept(&key) {
        return Ok(plan);
    }
    let plan = Arc::new(answer::advised(job, Advice::None).map_err(|d| defect(&d))?);
    desk.keep(key, Arc::clone(&plan));
    Ok(plan)
}

/// Everything about a pair of texts.
///
/// # Errors
/// A defect of ours.
pub fn planned(desk: &Desk, texts: &Texts) -> Result<Planned, Refused> {
    let trees = trees(texts);
    let [job_tree, machine_tree] = trees.each_ref().map(|t| t.as_ref().map(Value::from));
    let machine = texts.machine.as_ref().map(Named::from);
    let read = read_texts(&Named::from(&texts.job), machine.as_ref());
    let mut answer = Planned {
        job: job_tree,
        machine: machine_tree,
        errors: Vec::new(),
        plan: None,
        summary: None,
        drawing: None,
        strip: None,
        outline: None,
    };
    let job = match read {
        Ok(job) => job,
        Err(diags) => return Ok(Planned { errors: told(&diags, texts, &trees), ..answer }),
    };
    let plan = plan_of(desk, &job, texts)?;
    let drawn = report::placed(&plan).map_err(|e| undrawn(&e))?;
    answer.drawing = Some(Drawing {
        svg: drawn.svg,
        width: drawn.width,
        height: drawn.height,
        left: drawn.left,
        per_mm: drawn.per_mm,
        centre: drawn.centre,
        bar_half: drawn.bar_half,
    });
    answer.strip = report::gantt::inline_svg(&plan).map_err(|e| undrawn(&e))?;
    answer.outline = Some(Outline { hold_mm: plan.layout.collet_hold_mm, parted_mm: job.parted_at_mm() });
    answer.summary = Some(report::verdict::summary(&plan));
    answer.plan = Some(Arc::unwrap_or_clone(plan));
    Ok(answer)
}

/// What would help.
///
/// # Errors
/// The texts are wrong, or a defect of ours.
pub fn changes(texts: &Texts) -> Result<super::wire::Changes, Refused> {
    let job = job_of(texts)?;
    let plan = answer::advised(&job, Advice::Wanted).map_err(|d| defect(&d))?;
    let shortfall = plan.shortfall.filter(|_| plan.verdict == Verdict::Infeasible);
    Ok(super::wire::Changes { changes: shortfall.map_or(Vec::new(), |s| s.changes) })
}
