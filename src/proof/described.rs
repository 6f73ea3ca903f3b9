//! Compares the descriptive parts of a stored plan (margin, witness lines, quote) with values computed from the job. `recheck` needs
//! this because a proven plan may still state wrong values.

use super::{Breach, SAME_MM, Verified, mm};
use crate::job::plan::Plan;
use crate::job::{Job, SectionKind};
use crate::lang::{self, Measure};
use crate::process::features::Task;
use crate::process::segments::Segment;
use crate::process::{Rig, Work, quote};
use crate::say;

/// The proof checks other states than those the margin comes from. The two margins agree within this.
pub const SAME_MARGIN: f64 = 0.01;
/// Money and masses agree within this share.
const SAME_SHARE: f64 = 1e-6;

/// The wrong statements of a plan. `verified` is the result of its proof; if the plan breaks a rule there is nothing to compare.
pub fn described(plan: &Plan, job: &Job, verified: &Verified) -> Vec<Breach> {
    if !plan.verdict.has_plan() || !verified.holds() {
        return Vec::new();
    }
    let collet = plan.collet.as_deref().and_then(|name| job.machine.collet(name));
    let rig = Rig::new(job, collet);
    let Ok(segments) = rig.segments() else { return Vec::new() };
    let mut found = Vec::new();
    let mut wrong = |rule: &str, text: String| found.push(Breach::of(None, rule, text));

    let length = job.shaft.length_mm();
    if (plan.length_mm - length).abs() > SAME_MM {
        wrong(
            "length",
            say!("proof-length", told = Measure::Place.number(plan.length_mm), length = Measure::Place.number(length)),
        );
    }
    let proven = 1.0 - verified.utilisation;
    match plan.margin {
        // A plan whose true margin is larger than stated is not wrong.
        Some(margin) if margin - proven <= SAME_MARGIN => {}
        Some(margin) => {
            wrong("margin", say!("proof-margin", told = lang::fixed(margin, 3), proven = lang::fixed(proven, 3)))
        }
        None => wrong("margin", say!("proof-margin-missing", proven = lang::fixed(proven, 3))),
    }
    if let (Some(margin), Some(at)) = (plan.margin, &plan.margin_at)
        && (1.0 - at.utilisation - margin).abs() > SAME_SHARE
    {
        let (used, margin) = (lang::fixed(at.utilisation, 3), lang::fixed(margin, 3));
        wrong("margin", say!("proof-margin-at", check = at.check, used = used, margin = margin));
    }
    let lines = lines(plan, &rig, &segments);
    let told: Vec<f64> = plan.witnesses.iter().map(|w| w.at_mm).collect();
    for t in lines.iter().filter(|t| !told.iter().any(|w| (w - **t).abs() <= SAME_MM)) {
        wrong("witnesses", say!("proof-line-missing", at = mm(*t)));
    }
    for w in &plan.witnesses {
        let section = job.shaft.section_at(w.at_mm);
        if !lines.iter().any(|t| (w.at_mm - t).abs() <= SAME_MM) {
            wrong("witnesses", say!("proof-line-without-stop", at = mm(w.at_mm)));
        } else if w.section != section + 1 || w.interrupt != job.shaft.sections[section].interrupt.key() {
            let (is, word) = (section + 1, job.shaft.sections[section].interrupt.key());
            let at = mm(w.at_mm);
            wrong("witnesses", say!("proof-line-section", at = at, section = is, interrupt = word));
        }
    }
    let (given, due) = (&plan.quote, quote::quote(job, Some(plan.pace_s())));
    let same = |a: f64, b: f64| (a - b).abs() <= SAME_SHARE * b.abs().max(1e-6);
    if given.pieces_per_bar != due.pieces_per_bar {
        let (told, is) = (given.pieces_per_bar, due.pieces_per_bar);
        wrong("quote", say!("proof-pieces", told = told, real = is));
    }
    if !same(given.material_kg, due.material_kg) || !same(given.remnant_mm, due.remnant_mm) {
        wrong(
            "quote",
            say!(
                "proof-material",
                told_kg = lang::fixed(given.material_kg, 3),
                told_mm = Measure::Place.fixed(given.remnant_mm, 1),
                kg = lang::fixed(due.material_kg, 3),
                mm = Measure::Place.fixed(due.remnant_mm, 1)
            ),
        );
    }
    let cost = |c: &crate::job::plan::Cost| format!("{} {}", lang::fixed(c.total, 2), c.currency);
    match (&given.cost, &due.cost) {
        (None, None) => {}
        (Some(a), Some(b)) => {
            let sums = [(a.machine, b.machine), (a.material, b.material), (a.total, b.total)];
            if a.currency != b.currency || sums.iter().any(|(a, b)| !same(*a, *b)) {
                wrong("quote", say!("proof-cost", told = cost(a), real = cost(b)));
            }
        }
        (Some(a), None) => wrong("quote", say!("proof-cost-no-rates", told = cost(a))),
        (None, Some(b)) => wrong("quote", say!("proof-cost-missing", real = cost(b))),
    }
    found
}

/// Places where stops leave witness lines: inside a section that is not a groove.
fn lines(plan: &Plan, rig: &Rig<'_>, segments: &[Segment]) -> Vec<f64> {
    let shaft = &rig.job.shaft;
    let mut stops: Vec<f64> = plan.stages.iter().skip(1).map(|s| s.from_mm).collect();
    stops.extend(plan.stages.iter().flat_map(|s| s.regrips_mm.iter().copied()));
    let borders = segments.iter().filter(|s| s.work != Work::PartOff).map(|s| s.from_mm);
    stops.extend(borders.filter(|x| shaft.sections.iter().all(|s| (s.from_mm - x).abs() > SAME_MM)));
    let cross: Vec<Task> = rig.tasks().into_iter().filter(|t| t.cross).collect();
    let done =
        plan.features.iter().filter(|f| cross.iter().any(|t| t.text == f.text && (t.at_mm - f.at_mm).abs() <= SAME_MM));
    stops.extend(done.filter_map(|f| f.turned_mm));
    stops.retain(|t| {
        shaft.sections.iter().any(|s| {
            *t > s.from_mm + SAME_MM && *t < s.to_mm - SAME_MM && !matches!(s.kind, SectionKind::Groove { .. })
        })
    });
    stops.sort_by(f64::total_cmp);
    stops.dedup_by(|b, a| *b - *a <= SAME_MM);
    stops
}
