//! Works out the answers to texts. Nothing here knows of connections.

use std::sync::Arc;

use axum::http::StatusCode;

use super::wire::{Changes, ChangesAsked, Planned, Problem, Sampled, SampledAsked, Texts, Told, Value, canvas};
use super::work::{Desk, Kept};
use crate::answer;
use crate::defect::Defect;
use crate::diag::Diag;
use crate::input::tree::{Entry, tree};
use crate::input::{Named, read_texts};
use crate::job::Job;
use crate::job::plan::{Plan, Shortfall};
use crate::lang;
use crate::planner::Advice;
use crate::planner::advice::sets::MOST_SETS;
use crate::proof;
use crate::report::{self, Canvas};
use crate::say;

/// Why there is no answer, with its HTTP status.
pub type Refused = (StatusCode, Problem);

/// The trees of the texts, as far as they can be read.
fn trees(texts: &Texts) -> [Option<Entry>; 2] {
    let one = |text: &super::wire::Text| tree(&text.name, &text.text).ok();
    [one(&texts.job), texts.machine.as_ref().and_then(one)]
}

fn told(diags: &[Diag], texts: &Texts, trees: &[Option<Entry>; 2]) -> Vec<Told> {
    diags.iter().map(|diag| Told::of(diag, texts, [trees[0].as_ref(), trees[1].as_ref()])).collect()
}

fn read(desk: &Desk, texts: &Texts) -> Result<Job, Vec<Diag>> {
    let machine = texts.machine.as_ref().map(Named::from);
    read_texts(&Named::from(&texts.job), machine.as_ref(), desk.start.shop.clone())
}

/// The job of the texts.
///
/// # Errors
/// What is wrong with the texts.
pub fn job_of(desk: &Desk, texts: &Texts) -> Result<Arc<Job>, Refused> {
    desk.job(texts, || read(desk, texts)).map_err(|diags| {
        let problem = Problem::new(lang::text("page-input-wrong"), lang::text("page-input-wrong-help"));
        (StatusCode::UNPROCESSABLE_ENTITY, Problem { errors: told(&diags, texts, &trees(texts)), ..problem })
    })
}

/// The refusal of a request that does not fit the job.
pub fn unusable(diag: Diag) -> Refused {
    (StatusCode::UNPROCESSABLE_ENTITY, Problem::from(diag))
}

/// The refusal for an error in this program.
pub fn defect(defect: &Defect) -> Refused {
    let problem = Problem::new(say!("page-defect", text = defect.to_string()), lang::text("page-defect-help"));
    (StatusCode::INTERNAL_SERVER_ERROR, problem)
}

fn undrawn(error: &report::ReportError) -> Refused {
    defect(&Defect(error.to_string()))
}

/// The name of a plan among those that are kept.
fn key_of(job: &Job, texts: &Texts) -> String {
    // It contains the file name, because a machine without a name takes the name of its file.
    let machine = texts.machine.as_ref().map_or("", |m| &m.name);
    format!("{}\n{machine}\n{} {}", job.input_digest, lang::language().code(), lang::units().code())
}

/// The plan of a job; a plan that is kept is not worked out again. What would help an infeasible job is left out.
///
/// # Errors
/// An error in this program.
pub fn plan_of(desk: &Desk, job: &Job, texts: &Texts) -> Result<Arc<Plan>, Refused> {
    let key = key_of(job, texts);
    let proven = match desk.kept(&key) {
        Some(Kept { plan, settled: true }) => return Ok(plan),
        Some(Kept { plan, .. }) => Arc::unwrap_or_clone(plan),
        None => answer::advised(job, Advice::None).map_err(|d| defect(&d))?,
    };
    let plan = Arc::new(answer::counted(proven, job).map_err(|d| defect(&d))?);
    desk.keep(key, Kept { plan: Arc::clone(&plan), settled: true });
    Ok(plan)
}

/// The proven plan of a job as soon as it is known, and whether it is all that [`plan_of`] gives.
///
/// # Errors
/// An error in this program.
fn first_of(desk: &Desk, job: &Job, texts: &Texts) -> Result<Kept, Refused> {
    let key = key_of(job, texts);
    if let Some(kept) = desk.kept(&key) {
        return Ok(kept);
    }
    // A plan for a confidence is another one than the fastest, so nothing is shown before it.
    if job.scatter.confidence.is_some() {
        return Ok(Kept { plan: plan_of(desk, job, texts)?, settled: true });
    }
    let plan = Arc::new(answer::advised(job, Advice::None).map_err(|d| defect(&d))?);
    let kept = Kept { settled: !plan.verdict.has_plan(), plan };
    desk.keep(key, kept.clone());
    Ok(kept)
}

/// Everything about a pair of texts.
///
/// # Errors
/// An error in this program.
pub fn planned(desk: &Desk, texts: &Texts, canvas: Canvas) -> Result<Planned, Refused> {
    told_of(desk, texts, canvas, |job| Ok(Kept { plan: plan_of(desk, job, texts)?, settled: true }))
}

/// Everything about a pair of texts that is known before sampled parts are counted.
///
/// # Errors
/// An error in this program.
pub fn first(desk: &Desk, texts: &Texts, canvas: Canvas) -> Result<Planned, Refused> {
    told_of(desk, texts, canvas, |job| first_of(desk, job, texts))
}

fn told_of(
    desk: &Desk,
    texts: &Texts,
    canvas: Canvas,
    plan: impl Fn(&Job) -> Result<Kept, Refused>,
) -> Result<Planned, Refused> {
    let trees = trees(texts);
    let [job_tree, machine_tree] = trees.each_ref().map(|t| t.as_ref().map(Value::from));
    let mut answer = Planned {
        job: job_tree,
        machine: machine_tree,
        errors: Vec::new(),
        settled: true,
        plan: None,
        summary: None,
        look_at: Vec::new(),
        drawing: None,
        strip: None,
        sure: Vec::new(),
        inputs: None,
    };
    let job = match desk.job(texts, || read(desk, texts)) {
        Ok(job) => job,
        Err(diags) => return Ok(Planned { errors: told(&diags, texts, &trees), ..answer }),
    };
    let Kept { plan, settled } = plan(&job)?;
    answer.settled = settled;
    answer.drawing = Some(report::placed(&plan, None, canvas).map_err(|e| undrawn(&e))?);
    answer.strip = report::gantt::inline_svg(&plan, canvas).map_err(|e| undrawn(&e))?;
    answer.inputs = report::sure_chart::inline_svg(&plan, canvas).map_err(|e| undrawn(&e))?;
    answer.sure = report::sure::lines(&plan, false);
    answer.summary = settled.then(|| report::verdict::summary(&plan));
    answer.look_at = report::attention::look_at(&plan);
    answer.plan = Some(Arc::unwrap_or_clone(plan));
    Ok(answer)
}

/// Sampled parts of a plan along the turned length, drawn in the diagram; one of them if its number is given.
///
/// # Errors
/// The texts are wrong, there is no plan or no such part, or an error in this program.
pub fn sampled(desk: &Desk, asked: &SampledAsked) -> Result<Sampled, Refused> {
    let job = job_of(desk, &asked.texts)?;
    let plan = plan_of(desk, &job, &asked.texts)?;
    if !plan.verdict.has_plan() {
        return Err(unusable(Diag::new(say!("move-no-plan")).help(say!("sampled-no-plan-help"))));
    }
    let samples = plan.scatter.as_ref().map_or(0, |s| s.samples);
    if asked.part.is_some_and(|number| number == 0 || number > samples) {
        let help = say!("sampled-no-part-help", samples = samples);
        return Err(unusable(Diag::new(say!("sampled-no-part")).help(help)));
    }
    let along = proof::along(&plan, &job, asked.part, report::sure::input);
    let drawing = report::placed(&plan, Some(&along), canvas(asked.width_px)).map_err(|e| undrawn(&e))?;
    Ok(Sampled { drawing, along })
}

/// What would help an infeasible job; nothing for a feasible one.
///
/// # Errors
/// The texts are wrong, or an error in this program.
pub fn changes(desk: &Desk, asked: &ChangesAsked) -> Result<Changes, Refused> {
    let job = job_of(desk, &asked.texts)?;
    let Some(mut shortfall) = plan_of(desk, &job, &asked.texts)?.shortfall.clone() else {
        return Ok(Changes::default());
    };
    answer::helped(&mut shortfall, &job, if asked.first { 1 } else { MOST_SETS }).map_err(|d| defect(&d))?;
    let Shortfall { sets, after_trial, changes, tried, .. } = shortfall;
    Ok(Changes { sets, changes, after_trial, tried })
}
