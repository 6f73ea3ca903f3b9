//! `recheck`: proves a stored plan against a job that may have been revised.

use super::beside::Files;
use super::plan::read;
use super::{Ending, Format, files, out};
use crate::diag::Diag;
use crate::job::plan::{Plan, ScatterReport, Verdict};
use crate::lang::{self, Language, Spoken};
use crate::proof::{SAME_MARGIN, Verified, counted, described, prove};
use crate::report::sure::of_100;
use crate::report::{numbers, table, words};
use crate::say;
use serde::Serialize;
use std::path::PathBuf;

/// Largest plan file read, MiB.
const PLAN_MAX_MIB: u64 = 64;

/// What `recheck` takes.
#[derive(Debug, clap::Args)]
pub struct Args {
    /// The stored plan (plan.json).
    plan: PathBuf,
    /// The job file.
    job: PathBuf,
    #[command(flatten)]
    files: Files,
    /// Format of the output.
    #[arg(long, value_enum, default_value_t = Format::Text)]
    format: Format,
}

#[derive(Debug, Serialize)]
struct Rechecked {
    proven: bool,
    inputs_changed: bool,
    states: usize,
    margin: Option<f64>,
    margin_told: Option<f64>,
    margin_changed: bool,
    /// Whether the plan may be run with this job.
    verdict: Verdict,
    /// Share of sampled parts that meet all checks; null if the plan is not proven.
    good_share: Option<f64>,
    /// The share in the plan; null if it tells none.
    good_share_told: Option<f64>,
    breaches: Vec<Broken>,
}

#[derive(Debug, Serialize)]
struct Broken {
    stage: Option<usize>,
    rule: String,
    text: String,
}

fn stored(path: &std::path::Path) -> Result<Plan, Diag> {
    let help = lang::text("recheck-no-plan-help");
    let bytes = files::read(path, PLAN_MAX_MIB, help)?;
    serde_json::from_slice(&bytes).map_err(|e| {
        Diag::new(say!("recheck-no-plan", file = path.display().to_string(), reason = e.to_string())).help(help)
    })
}

/// A line wrapped at 100 columns; the further lines are indented too.
fn wrapped(line: &str) -> String {
    let text = line.trim_start();
    table::wrap(line.strip_suffix(text).unwrap_or_default(), text, 100)
}

/// The margin that the proof found. None: it could not look at any state.
fn proven_margin(found: &Verified) -> Option<f64> {
    (found.states > 0).then_some(1.0 - found.utilisation)
}

/// Whether the margin differs from that in the plan by more than neighbouring states differ.
fn margin_changed(plan: &Plan, found: &Verified) -> bool {
    match (plan.margin, proven_margin(found)) {
        (Some(told), Some(proven)) => (proven - told).abs() > SAME_MARGIN,
        (told, proven) => told.is_some() != proven.is_some(),
    }
}

/// A line that says that the margin of a proven plan has changed; empty if it has not.
fn safer(plan: &Plan, found: &Verified) -> String {
    if !margin_changed(plan, found) {
        return String::new();
    }
    let (told, proven) = (100.0 * plan.margin.unwrap_or(0.0), 100.0 * (1.0 - found.utilisation));
    let (found, planned) = (lang::fixed(proven, 1), lang::fixed(told, 1));
    format!("  {}\n", say!("recheck-margin", found = found, planned = planned))
}

/// A line that says in how many sampled parts the plan holds.
fn sure(verdict: Verdict, count: Option<&ScatterReport>, told: Option<f64>) -> String {
    let Some(count) = count else { return String::new() };
    let (good, told) = (of_100(count.good_share), told.map(of_100));
    let line = match (verdict, told.filter(|told| *told != good)) {
        (Verdict::AtRisk, None) => say!("recheck-at-risk", good = good),
        (Verdict::AtRisk, Some(told)) => say!("recheck-at-risk-told", good = good, told = told),
        (_, None) => say!("recheck-holds", good = good),
        (_, Some(told)) => say!("recheck-holds-told", good = good, told = told),
    };
    format!("  {line}\n")
}

/// Runs it.
pub fn run(args: &Args) -> Ending {
    let plan = match stored(&args.plan) {
        Ok(plan) => plan,
        Err(diag) => return out::wrong_input(&[diag]),
    };
    let job = match read(&args.job, args.files.beside()) {
        Ok(job) => job,
        Err(ending) => return ending,
    };
    // The proof compares names of works and tools, so it speaks the language and the units of the plan.
    let language = Language::of(&plan.language).unwrap_or_else(lang::language);
    let told = Spoken::fixed(language).in_units(plan.units);
    let found = lang::speaking(told, || {
        let mut found = prove(&plan, &job);
        found.breaches.extend(described(&plan, &job, &found));
        found
    });
    let changed = plan.input_digest != job.input_digest;
    let sampled = found.holds().then(|| counted(&plan, &job, job.scatter.seed, job.scatter.samples));
    let verdict = match &sampled {
        None => Verdict::Infeasible,
        Some(count) if count.good_share < job.scatter.confidence_warn => Verdict::AtRisk,
        Some(_) => Verdict::Feasible,
    };
    let good_share = sampled.as_ref().map(|count| count.good_share);
    let good_share_told = plan.scatter.as_ref().map(|told| told.good_share.clamp(0.0, 1.0));
    if args.format == Format::Json {
        let breaches = found.breaches.iter();
        let ended = out::json(&Rechecked {
            proven: found.holds(),
            inputs_changed: changed,
            states: found.states,
            margin: proven_margin(&found),
            margin_told: plan.margin,
            margin_changed: margin_changed(&plan, &found),
            verdict,
            good_share,
            good_share_told,
            breaches: breaches.map(|b| Broken { stage: b.stage, rule: b.rule.clone(), text: b.text.clone() }).collect(),
        });
        if ended != Ending::Done {
            return ended;
        }
    } else {
        let inputs = if changed { lang::text("recheck-changed") } else { lang::text("recheck-unchanged") };
        let mut text = if found.holds() {
            let used = numbers::utilisation(found.utilisation);
            let said = say!("recheck-proven", job = plan.job, states = found.states, used = used);
            format!("{said}\n  {inputs}\n{}{}", safer(&plan, &found), sure(verdict, sampled.as_ref(), good_share_told))
        } else {
            format!("{}\n  {inputs}\n", say!("recheck-not-proven", job = plan.job, rules = found.breaches.len()))
        };
        for b in &found.breaches {
            let (rule, why) = (words::check_name(&b.rule), &b.text);
            let line = match b.stage {
                Some(stage) => say!("recheck-breach-of-stage", stage = stage, rule = rule, why = why),
                None => say!("recheck-breach-of-plan", rule = rule, why = why),
            };
            text += &format!("  {line}\n");
        }
        let wrapped: String = text.lines().map(wrapped).collect();
        out::result(&wrapped);
    }
    if found.holds() { Ending::Done } else { Ending::NotFeasible }
}
