//! How sure a plan is, in words: the share of sampled parts that hold, what breaks, what to measure first.

use super::table::{number, words as word};
use super::tables::Rows;
use super::{numbers, words};
use crate::job::plan::{Broken, Plan, UncertainInput, Verdict};
use crate::lang;
use crate::say;

/// Checks that are named in one line.
const BREAKS_MAX: usize = 3;
/// What breaks is told below this share of good parts.
const TOLD_BELOW: f64 = 0.99;
/// An input that moves the tightest check by less than this share of its limit is left out of the table.
const SWING_MIN: f64 = 0.002;

/// A share as so many of 100. Less than all is never 100, and some is never 0.
pub fn of_100(share: f64) -> String {
    match 100.0 * share {
        n if n <= 0.0 => "0".into(),
        n if n < 1.0 => say!("under-one"),
        n if n >= 100.0 => "100".into(),
        n => format!("{:.0}", n.round().min(99.0)),
    }
}

/// In how many of 100 sampled parts the plan holds. None: nothing is known of it.
pub fn good(plan: &Plan) -> Option<String> {
    plan.scatter.as_ref().map(|scatter| of_100(scatter.good_share))
}

/// The lines under the verdict: what breaks, what the number means, what a confidence costs, what to measure first.
pub fn lines(plan: &Plan) -> Vec<String> {
    let Some(scatter) = &plan.scatter else { return Vec::new() };
    let mut all = Vec::new();
    if scatter.good_share < TOLD_BELOW {
        let mut told: Vec<String> = scatter.broken.iter().take(BREAKS_MAX).map(broken).collect();
        if scatter.broken.len() > BREAKS_MAX {
            told.push(say!("sure-more", number = scatter.broken.len() - BREAKS_MAX));
        }
        all.push(say!("sure-breaks", checks = told.join("; ")));
    }
    if let Some(runs) = scatter.runs.filter(|runs| runs.both_hold < 1.0) {
        let of = |share: f64| (share * runs.count as f64).round() as usize;
        let (both, one, none) = (of(runs.both_hold), of(runs.one_holds), of(runs.none_holds));
        all.push(say!("sure-runs", runs = runs.count, both = both, one = one, none = none));
    } else {
        all.push(say!("sure-all-runs"));
    }
    if let Some(c) = &scatter.confidence {
        let (asked, good) = (c.asked.to_string(), of_100(c.fastest_good_share));
        let (seconds, fastest) = (numbers::fixed(c.costs_s.max(0.0), 1), numbers::seconds(c.fastest_s));
        all.push(match (c.reached, c.tightened.is_empty()) {
            (true, true) => say!("sure-confidence-free", asked = asked),
            (true, false) => {
                say!("sure-confidence", asked = asked, seconds = seconds, fastest = fastest, good = good)
            }
            (false, _) => say!("sure-confidence-missed", asked = asked),
        });
    }
    if plan.verdict == Verdict::AtRisk && scatter.confidence.is_none() {
        all.push(say!("sure-ask"));
    }
    if let Some(first) = scatter.inputs.first().filter(|_| plan.verdict == Verdict::AtRisk) {
        let text = say!(
            "sure-measure",
            input = input(&first.input),
            low = value(first.low, &first.unit),
            high = value(first.high, &first.unit),
            used_low = numbers::utilisation(first.used_low),
            used_high = numbers::utilisation(first.used_high),
            advice = first.advice
        );
        all.push(text);
    }
    all
}

fn broken(b: &Broken) -> String {
    let (check, share) = (words::key(&b.check), of_100(b.share));
    match b.from_mm {
        Some(from) => say!("sure-break-from", check = check, share = share, from = numbers::mm(from)),
        None => say!("sure-break", check = check, share = share),
    }
}

/// The name of an uncertain input.
pub fn input(key: &str) -> &'static str {
    match key {
        "kc" => lang::text("input-kc"),
        "passive" => lang::text("input-passive"),
        "e" => lang::text("input-e"),
        "damping" => lang::text("input-damping"),
        "bush" => lang::text("input-bush"),
        "headstock" => lang::text("input-headstock"),
        "counter_spindle" => lang::text("input-counter-spindle"),
        "centre" => lang::text("input-centre"),
        "sleeve" => lang::text("input-sleeve"),
        "ra" => lang::text("input-ra"),
        "straightness" => lang::text("input-straightness"),
        "bar" => lang::text("input-bar"),
        "run_out" => lang::text("input-run-out"),
        _ => lang::text("input-other"),
    }
}

/// A value of an input with its unit.
pub fn value(value: f64, unit: &str) -> String {
    let number = numbers::value(value);
    if unit.is_empty() { number } else { format!("{number} {unit}") }
}

/// The inputs that change something, the one that moves the tightest check most first.
pub fn inputs_told(plan: &Plan) -> impl Iterator<Item = &UncertainInput> {
    let times = |i: &UncertainInput| i.time_low_s != i.time_high_s;
    plan.scatter.iter().flat_map(|s| &s.inputs).filter(move |i| i.swing() >= SWING_MIN || times(i))
}

/// The inputs with what they change.
pub fn inputs(plan: &Plan) -> Rows {
    let timed = inputs_told(plan).any(|i| i.time_low_s.is_some() || i.time_high_s.is_some());
    let mut heads = vec![
        word(lang::text("col-input")),
        number(lang::text("col-input-value")),
        number(lang::text("col-input-range")),
        number(lang::text("col-input-used")),
        word(lang::text("col-input-check")),
        number(lang::text("col-input-good")),
    ];
    if timed {
        heads.push(number(lang::text("col-input-time")));
    }
    let row = |i: &UncertainInput| {
        let (low, high) = (words::key(&i.check_low), words::key(&i.check_high));
        let mut row = vec![
            input(&i.input).to_owned(),
            value(i.value, &i.unit),
            say!("cell-range", low = numbers::value(i.low), high = numbers::value(i.high)),
            say!("cell-range", low = numbers::utilisation(i.used_low), high = numbers::utilisation(i.used_high)),
            if low == high { low } else { say!("cell-range", low = low, high = high) },
            say!("cell-range", low = of_100(i.good_below), high = of_100(i.good_above)),
        ];
        if timed {
            let seconds = |s: Option<f64>| s.map_or_else(|| say!("cell-no-plan"), numbers::seconds);
            row.push(say!("cell-range", low = seconds(i.time_low_s), high = seconds(i.time_high_s)));
        }
        row
    };
    Rows { heads, rows: inputs_told(plan).map(row).collect() }
}

/// How to measure each of them, the most useful first.
pub fn measures(plan: &Plan) -> Vec<String> {
    let useful = inputs_told(plan).filter(|i| !i.advice.is_empty());
    useful.map(|i| say!("sure-advice", input = input(&i.input), advice = i.advice)).collect()
}
