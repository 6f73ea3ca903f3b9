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
/// A plan whose nearest check uses more than this share is at its limit.
const AT_LIMIT_FROM: f64 = 0.97;
/// So many times as many runs without a good part as mixed ones say that the run decides.
const SAME_RUN_TIMES: usize = 5;
/// An input that moves the nearest check by less than this share of its limit is left out of the table.
const SWING_MIN: f64 = 0.002;

/// A share of good parts as so many of 100, rounded down, so that no plan looks better than it is.
pub fn of_100(share: f64) -> String {
    format!("{:.0}", (100.0 * share + 1e-9).floor())
}

/// A share of parts that fail as so many of 100. Some is never 0.
fn failing_of_100(share: f64) -> String {
    match 100.0 * share {
        n if n <= 0.0 => "0".into(),
        n if n < 1.0 => say!("under-one"),
        n => format!("{:.0}", n.round()),
    }
}

/// In how many of 100 sampled parts the plan holds. None: nothing is known of it.
pub fn good(plan: &Plan) -> Option<String> {
    plan.scatter.as_ref().map(|scatter| of_100(scatter.good_share))
}

/// The lines under the verdict: what breaks, what the number means, what a confidence costs, how to ask for one (left out for a setter),
/// what to measure first.
pub fn lines(plan: &Plan, for_setter: bool) -> Vec<String> {
    let Some(scatter) = &plan.scatter else { return Vec::new() };
    let mut all = Vec::new();
    if scatter.good_share < TOLD_BELOW && !scatter.broken.is_empty() {
        let mut told: Vec<String> = scatter.broken.iter().take(BREAKS_MAX).map(broken).collect();
        if scatter.broken.len() > BREAKS_MAX {
            told.push(say!("sure-more", number = scatter.broken.len() - BREAKS_MAX));
        }
        all.push(say!("sure-breaks", checks = told.join("; ")));
    }
    if scatter.inputs.is_empty() && scatter.runs.is_some() {
        all.push(say!("sure-nothing-uncertain"));
    }
    if let Some(runs) = scatter.runs.filter(|_| !scatter.inputs.is_empty()) {
        let of = |share: f64| (share * runs.count as f64).round() as usize;
        let (both, one, none) = (of(runs.both_hold), of(runs.one_holds), of(runs.none_holds));
        let by = match (one, none) {
            (0, 0) => "none",
            (one, none) if none >= SAME_RUN_TIMES * one => "run",
            (one, none) if one > none => "part",
            _ => "both",
        };
        let told = say!("sure-runs", runs = runs.count, both = both, one = one, none = none, by = by);
        all.push(told.trim_end().to_owned());
    }
    if let Some(c) = &scatter.confidence {
        let (asked, good) = (numbers::trimmed(100.0 * c.asked, 1), of_100(c.fastest_good_share));
        // Of the times as they are printed, so that they add up.
        let tenths = |s: f64| (10.0 * s).round() / 10.0;
        let costs_s = tenths(plan.pace_s()) - tenths(c.fastest_s);
        let (seconds, fastest) = (numbers::fixed(costs_s.max(0.0), 1), numbers::seconds(c.fastest_s));
        all.push(match (c.reached, c.tightened.is_empty()) {
            (true, true) => say!("sure-confidence-free", asked = asked),
            (true, false) => {
                say!("sure-confidence", asked = asked, seconds = seconds, fastest = fastest, good = good)
            }
            (false, _) => say!("sure-confidence-missed", asked = asked),
        });
    }
    all.extend(ask(plan).filter(|_| !for_setter));
    // Where a plan is at its limit, more reserve helps, and a measurement may show either side of it.
    let at_limit = scatter.nearest.as_ref().is_none_or(|n| n.used > AT_LIMIT_FROM && plan.verdict == Verdict::AtRisk);
    let told = plan.verdict == Verdict::AtRisk && !at_limit;
    let useful = scatter.inputs.iter().filter(|i| told && i.gain >= SWING_MIN && !i.advice.is_empty());
    if let (Some(first), Some(nearest)) = (useful.max_by(|a, b| a.gain.total_cmp(&b.gain)), &scatter.nearest) {
        let [low, high] = ends(first);
        let text = say!(
            "sure-measure",
            input = input(&first.input),
            low = with_unit(low, &first.unit),
            high = with_unit(high, &first.unit),
            check = words::check_name(&nearest.check),
            used_low = numbers::utilisation(first.used_low),
            used_high = numbers::utilisation(first.used_high),
            advice = first.advice
        );
        all.push(text);
    }
    all
}

fn broken(b: &Broken) -> String {
    let (check, share) = (words::check_name(&b.check), failing_of_100(b.share));
    match b.from_mm {
        Some(from) if from < 0.5 => say!("sure-break-at-start", check = check, share = share),
        Some(from) => say!("sure-break-from", check = check, share = share, from = numbers::stop_mm(from)),
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

/// How to ask for a plan that holds in more parts, if this one is at risk.
fn ask(plan: &Plan) -> Option<String> {
    let asked = plan.scatter.as_ref().is_none_or(|scatter| scatter.confidence.is_some());
    (plan.verdict == Verdict::AtRisk && !asked).then(|| say!("sure-ask"))
}

/// The lower and the higher value of an input, with as many decimals as tell them apart.
pub fn ends(input: &UncertainInput) -> [String; 2] {
    let told = [input.low, input.high].map(|value| lang::told(value, &input.unit));
    let [low, high] = told.map(numbers::value);
    if low == high { told.map(|v| numbers::fixed(v, 3)) } else { [low, high] }
}

/// A number with its unit.
pub fn with_unit(number: String, unit: &str) -> String {
    let unit = lang::unit_told(unit);
    if unit.is_empty() { number } else { format!("{number} {unit}") }
}

/// The inputs that change something, the one that moves the nearest check most first.
pub fn inputs_told(plan: &Plan) -> impl Iterator<Item = &UncertainInput> {
    let times = |i: &UncertainInput| i.time_low_s != i.time_high_s;
    plan.scatter.iter().flat_map(|s| &s.inputs).filter(move |i| i.swing() >= SWING_MIN || times(i))
}

/// The check that the inputs are told of.
pub fn nearest(plan: &Plan) -> String {
    let nearest = plan.scatter.as_ref().and_then(|s| s.nearest.as_ref());
    nearest.map(|n| words::check_name(&n.check)).unwrap_or_default()
}

/// The inputs with what they change.
pub fn inputs(plan: &Plan) -> Rows {
    let timed = inputs_told(plan).any(|i| i.time_low_s.is_some() || i.time_high_s.is_some());
    let mut heads = vec![
        word(lang::text("col-input")),
        number(lang::text("col-input-range")),
        number(lang::text("col-input-used")),
        number(lang::text("col-input-good")),
    ];
    if timed {
        heads.push(number(lang::text("col-input-time")));
    }
    let row = |i: &UncertainInput| {
        let [least, most] = ends(i);
        let mut row = vec![
            input(&i.input).to_owned(),
            with_unit(say!("cell-range", low = least, high = most), &i.unit),
            say!(
                "cell-range",
                low = numbers::utilisation(i.used_low).trim_end_matches(" %"),
                high = numbers::utilisation(i.used_high)
            ),
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
    let mut useful: Vec<&UncertainInput> = inputs_told(plan).filter(|i| !i.advice.is_empty()).collect();
    useful.sort_by(|a, b| b.gain.total_cmp(&a.gain));
    useful.into_iter().map(|i| say!("sure-advice", input = input(&i.input), advice = i.advice)).collect()
}
