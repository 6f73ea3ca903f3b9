//! What the first line says.

use super::{numbers, words};
use crate::job::plan::{CheckResult, Plan, Stage, Verdict};
use crate::say;

/// `FEASIBLE` or `NOT FEASIBLE`.
pub fn word(plan: &Plan) -> &'static str {
    match plan.verdict {
        Verdict::Feasible => "FEASIBLE",
        Verdict::Infeasible => "NOT FEASIBLE",
    }
}

/// Whether the plan may be run.
pub fn is_feasible(plan: &Plan) -> bool {
    plan.verdict == Verdict::Feasible
}

/// The rest of the first line without the name of the job: stages, stops, time and the tightest check; or how far it
/// gets and what stops it.
pub fn summary(plan: &Plan) -> String {
    if is_feasible(plan) {
        let mut text = format!(
            "{}, {}, {}, {} s a part, {} a bar",
            say!("stages", number = plan.stages.len()),
            numbers::count(plan.hand_overs_mm.len(), "hand-over", "hand-overs"),
            numbers::count(plan.headstock_regrips_mm.len(), "headstock re-grip", "headstock re-grips"),
            numbers::seconds(plan.pace_s()),
            numbers::count(plan.quote.pieces_per_bar, "piece", "pieces"),
        );
        if let Some(tightest) = tightest(plan) {
            text.push_str(&format!("; tightest: {tightest}"));
        }
        return text;
    }
    match &plan.shortfall {
        Some(s) if s.farthest_mm >= plan.length_mm => {
            format!(
                "turned to its full {} mm, stopped at part-off by {}",
                numbers::mm(plan.length_mm),
                words::stopped_by(s)
            )
        }
        Some(s) => format!(
            "reaches {} mm of {} mm, stopped by {}",
            numbers::mm(s.farthest_mm),
            numbers::mm(plan.length_mm),
            words::stopped_by(s)
        ),
        None => "no plan was found".to_string(),
    }
}

/// The tightest check of the plan: `whip 92 % of its limit in stage 3`.
pub fn tightest(plan: &Plan) -> Option<String> {
    let result = plan.margin_at.as_ref()?;
    let place = match stage_of(plan, result) {
        Some(stage) => format!(" in stage {}", stage.number),
        None => String::new(),
    };
    Some(format!("{} of its limit{place}", words::check(result)))
}

/// The stage a result belongs to: the one that lists it, else the one that is cutting there.
fn stage_of<'a>(plan: &'a Plan, result: &CheckResult) -> Option<&'a Stage> {
    let lists = |s: &&Stage| s.checks.contains(result);
    let cuts = |s: &&Stage| s.from_mm <= result.turned_mm && result.turned_mm <= s.to_mm;
    plan.stages.iter().find(lists).or_else(|| plan.stages.iter().find(cuts))
}
