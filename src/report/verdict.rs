//! What the first line says.

use super::{numbers, sure, words};
use crate::job::plan::{CheckResult, Plan, Stage, Verdict};
use crate::lang;
use crate::say;

/// `FEASIBLE`, `AT RISK` or `NOT FEASIBLE`.
pub fn word(plan: &Plan) -> &'static str {
    match plan.verdict {
        Verdict::Feasible => lang::text("verdict-feasible"),
        Verdict::AtRisk => lang::text("verdict-at-risk"),
        Verdict::Infeasible => lang::text("verdict-not-feasible"),
    }
}

/// The rest of the first line without the name of the job: stages, stops, time and the tightest check; or how far it
/// gets and what stops it.
pub fn summary(plan: &Plan) -> String {
    match tightest(plan).filter(|_| plan.verdict.has_plan()) {
        Some(tightest) => say!("verdict-made-tightest", made = made_or_not(plan), tightest = tightest),
        None => made_or_not(plan),
    }
}

/// A plan in words, after the share of sampled parts in which it holds.
fn sure(plan: &Plan, made: String) -> String {
    match sure::good(plan) {
        Some(good) => say!("verdict-holds", good = good, made = made),
        None => made,
    }
}

/// The same without the tightest check.
pub fn made_or_not(plan: &Plan) -> String {
    if !plan.verdict.has_plan() {
        return not_made(plan);
    }
    let made = say!(
        "verdict-made",
        stages = say!("stages", number = plan.stages.len()),
        hand_overs = say!("hand-overs", number = plan.hand_overs_mm.len()),
        regrips = say!("regrips", number = plan.headstock_regrips_mm.len()),
        seconds = numbers::seconds(plan.pace_s()),
        pieces = say!("pieces", number = plan.quote.pieces_per_bar),
    );
    sure(plan, made)
}

/// The same in short, without the stops.
pub fn short(plan: &Plan) -> String {
    if !plan.verdict.has_plan() {
        return not_made(plan);
    }
    let made = say!(
        "verdict-made-short",
        stages = say!("stages", number = plan.stages.len()),
        seconds = numbers::seconds(plan.pace_s()),
        pieces = say!("pieces", number = plan.quote.pieces_per_bar),
    );
    sure(plan, made)
}

fn not_made(plan: &Plan) -> String {
    let length = numbers::mm(plan.length_mm);
    match &plan.shortfall {
        Some(s) if s.farthest_mm >= plan.length_mm => {
            say!("verdict-stops-at-part-off", length = length, what = words::stopped_by(s))
        }
        Some(s) => say!(
            "verdict-stops-before-end",
            reached = numbers::stop_mm(s.farthest_mm),
            length = length,
            what = words::stopped_by(s),
        ),
        None => say!("verdict-no-plan"),
    }
}

/// The tightest check of the plan: `whip, 92 % of its limit, in stage 3`.
pub fn tightest(plan: &Plan) -> Option<String> {
    let result = plan.margin_at.as_ref()?;
    let (check, used) = (words::check_name(&result.check), numbers::utilisation(result.utilisation));
    Some(match stage_of(plan, result) {
        Some(stage) => say!("verdict-tightest-in-stage", check = check, used = used, stage = stage.number),
        None => say!("verdict-tightest", check = check, used = used),
    })
}

/// The stage a result belongs to: the one that lists it, else the one that is cutting there.
fn stage_of<'a>(plan: &'a Plan, result: &CheckResult) -> Option<&'a Stage> {
    let lists = |s: &&Stage| s.checks.contains(result);
    let cuts = |s: &&Stage| s.from_mm <= result.turned_mm && result.turned_mm <= s.to_mm;
    plan.stages.iter().find(lists).or_else(|| plan.stages.iter().find(cuts))
}
