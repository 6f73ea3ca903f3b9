//! What a setter should look at first: lines on surfaces that should have none, thin margins, slowed speeds, back-turning,
//! bar that is fed on.

use super::{fed_on, numbers, words};
use crate::job::plan::{Plan, Segment};

/// A check that uses this share of its limit or more is named; common practice, no source.
const THIN_MARGIN_FROM: f64 = 0.90;

/// The list, most serious first; empty when there is nothing to look at.
pub fn look_at(plan: &Plan) -> Vec<String> {
    let mut list = Vec::new();
    witness_lines(plan, "never", &mut list);
    witness_lines(plan, "avoid", &mut list);
    thin_margins(plan, &mut list);
    slowed(plan, &mut list);
    back_turning(plan, &mut list);
    bar_fed_on(plan, &mut list);
    words::sentences(&list)
}

fn witness_lines(plan: &Plan, interrupt: &str, list: &mut Vec<String>) {
    for number in plan.shaft.sections.iter().map(|s| s.number) {
        let places: Vec<String> = plan
            .witnesses
            .iter()
            .filter(|w| w.section == number && w.interrupt == interrupt)
            .map(|w| format!("{} mm ({})", numbers::mm(w.at_mm), words::key(&w.cause)))
            .collect();
        if !places.is_empty() {
            let lines = if places.len() == 1 { "witness line" } else { "witness lines" };
            let section = words::section(plan, number);
            list.push(format!("{lines} on {section}, marked \"{interrupt}\": {}", words::enumeration(&places)));
        }
    }
}

fn thin_margins(plan: &Plan, list: &mut Vec<String>) {
    for stage in &plan.stages {
        for c in stage.checks.iter().filter(|c| c.utilisation >= THIN_MARGIN_FROM) {
            let margin = if c.utilisation > 1.0 { "over the limit" } else { "thin margin" };
            list.push(format!(
                "{margin} in stage {}: {} at turned length {} mm",
                stage.number,
                words::check_in_full(c),
                numbers::mm(c.turned_mm)
            ));
        }
    }
}

fn slowed(plan: &Plan, list: &mut Vec<String>) {
    let mut reasons: Vec<&str> = plan.segments.iter().filter_map(|s| s.slowed_by.as_deref()).collect();
    reasons.sort_unstable();
    reasons.dedup();
    for reason in reasons {
        let places = sections_of(plan, |s| s.slowed_by.as_deref() == Some(reason));
        list.push(format!("speed lowered for {} on {}", words::key(reason), words::enumeration(&places)));
    }
}

fn back_turning(plan: &Plan, list: &mut Vec<String>) {
    let places = sections_of(plan, |s| s.turning == "back");
    if !places.is_empty() {
        list.push(format!("rear-facing shoulder, needs a back-turning tool: {}", words::enumeration(&places)));
    }
}

fn bar_fed_on(plan: &Plan, list: &mut Vec<String>) {
    for stage in &plan.stages {
        let Some(fed) = fed_on::of(plan, stage) else { continue };
        list.push(format!(
            "before the part-off the bar is fed on to {} mm for {}: {} mm unsupported, nothing is turned there",
            numbers::mm(fed.to_mm),
            words::enumeration(&fed.works),
            numbers::mm(fed.unsupported_mm),
        ));
    }
}

/// Names of the sections with at least one such segment, each once, in the order of the shaft.
fn sections_of(plan: &Plan, wanted: impl Fn(&Segment) -> bool) -> Vec<String> {
    let mut numbers: Vec<usize> = plan.segments.iter().filter(|s| wanted(s)).map(|s| s.section).collect();
    numbers.sort_unstable();
    numbers.dedup();
    numbers.into_iter().map(|n| words::section(plan, n)).collect()
}
