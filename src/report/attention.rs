//! What a setter should look at first: lines on surfaces that should have none, thin margins, slowed speeds, back-turning,
//! bar that is fed on.

use super::{fed_on, numbers, words};
use crate::job::plan::{Plan, Segment};
use crate::say;

/// A check that uses this share of its limit or more is named; common practice, no source.
pub const THIN_MARGIN_FROM: f64 = 0.90;

/// The list, most serious first; empty when there is nothing to look at.
pub fn look_at(plan: &Plan) -> Vec<String> {
    let mut list = Vec::new();
    witness_lines(plan, "never", &mut list);
    witness_lines(plan, "avoid", &mut list);
    thin_margins(plan, &mut list);
    slowed(plan, &mut list);
    back_turning(plan, &mut list);
    bar_fed_on(plan, &mut list);
    list
}

fn witness_lines(plan: &Plan, interrupt: &str, list: &mut Vec<String>) {
    for number in plan.shaft.sections.iter().map(|s| s.number) {
        let places: Vec<String> = plan
            .witnesses
            .iter()
            .filter(|w| w.section == number && w.interrupt == interrupt)
            .map(|w| say!("look-place", at = numbers::stop_mm(w.at_mm), cause = words::key(&w.cause)))
            .collect();
        if !places.is_empty() {
            list.push(say!(
                "look-lines",
                number = places.len(),
                section = words::section(plan, number),
                interrupt = interrupt,
                places = words::enumeration(&places),
            ));
        }
    }
}

fn thin_margins(plan: &Plan, list: &mut Vec<String>) {
    for stage in &plan.stages {
        for c in stage.checks.iter().filter(|c| c.utilisation >= THIN_MARGIN_FROM) {
            let (check, turned) = (words::check_in_full(c), numbers::stop_mm(c.turned_mm));
            list.push(if c.utilisation > 1.0 {
                say!("look-over-limit", stage = stage.number, check = check, turned = turned)
            } else {
                say!("look-near-limit", stage = stage.number, check = check, turned = turned)
            });
        }
    }
}

fn slowed(plan: &Plan, list: &mut Vec<String>) {
    let mut reasons: Vec<&str> = plan.segments.iter().filter_map(|s| s.slowed_by.as_deref()).collect();
    reasons.sort_unstable();
    reasons.dedup();
    for reason in reasons {
        let places = sections_of(plan, |s| s.slowed_by.as_deref() == Some(reason));
        let (places, check) = (words::enumeration(&places), words::check_name(reason));
        let slowed = plan.segments.iter().filter(|s| s.slowed_by.as_deref() == Some(reason));
        let costs: Vec<(f64, f64, f64)> =
            slowed.filter_map(|s| Some((s.full_rpm?, s.rpm, s.slowed_s?))).filter(|(full, ..)| *full > 0.0).collect();
        let most = costs.iter().min_by(|a, b| (a.1 / a.0).total_cmp(&(b.1 / b.0)));
        list.push(match most {
            Some((full, speed, _)) => say!(
                "look-slowed-cost",
                places = places,
                check = check,
                full = numbers::rpm(*full),
                speed = numbers::rpm(*speed),
                seconds = numbers::fixed(costs.iter().map(|c| c.2).sum(), 1)
            ),
            None => say!("look-slowed", places = places, check = check),
        });
    }
}

fn back_turning(plan: &Plan, list: &mut Vec<String>) {
    let places = sections_of(plan, |s| s.turning == "back");
    if !places.is_empty() {
        list.push(say!("look-back-turning", places = words::enumeration(&places)));
    }
}

fn bar_fed_on(plan: &Plan, list: &mut Vec<String>) {
    for stage in &plan.stages {
        let Some(fed) = fed_on::of(plan, stage) else { continue };
        list.push(say!(
            "look-fed-out",
            to = numbers::stop_mm(fed.to_mm),
            works = words::enumeration(&fed.works),
            unsupported = numbers::stop_mm(fed.unsupported_mm),
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
