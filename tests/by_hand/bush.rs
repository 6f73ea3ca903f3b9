//! The tolerance of the bar against the kind of its guide bush: a caution with numbers, never a refusal.

use super::falls::{pin, planned};
use super::*;
use spanhold::job::{BushKind, Holding, Tolerance};

/// The caution about bar and bush of the pin from 10 mm bar, with the kind of its bush and a width of the bar's tolerance below
/// nominal, mm.
fn told(kind: Option<BushKind>, width_mm: Option<f64>) -> Option<String> {
    let mut job = pin("", "");
    job.machine.bush.as_mut().expect("a bush").kind = kind;
    job.stock.tolerance = width_mm.map(|w| Tolerance { lower_mm: -w, upper_mm: 0.0, label: "of the test".into() });
    of(&job)
}

fn of(job: &Job) -> Option<String> {
    let mut found = planned(job).cautions.into_iter().filter(|c| c.starts_with("The guide bush"));
    let first = found.next();
    assert_eq!(found.next(), None);
    first
}

/// Widths over 6 up to 10 mm by ISO 286-1, table 1: IT6 9 µm, IT7 15, IT8 22, IT9 36, IT10 58, IT11 90. A fixed bush takes h6 and h7 (a
/// manufacturer's article on bush and tool layout, 2020s), a following one up to about h9 (common practice, no source).
#[test]
fn a_bar_too_wide_for_its_bush_is_told_in_numbers() {
    let (fixed, following) = (Some(BushKind::Fixed), Some(BushKind::Following));
    for width in [0.009, 0.015] {
        assert_eq!(told(fixed, Some(width)), None, "{width}");
    }
    for width in [0.009, 0.015, 0.022, 0.036] {
        assert_eq!(told(following, Some(width)), None, "{width}");
    }
    let says = |kind, width, parts: &[&str]| {
        let caution = told(kind, width).unwrap_or_else(|| panic!("no caution for {width:?}"));
        parts.iter().for_each(|part| assert!(caution.contains(part), "{part}\n{caution}"));
    };
    let needed = "0.005 to 0.015 mm of clearance on each side";
    // h8: half of 22 µm on each side.
    says(
        fixed,
        Some(0.022),
        &["Ø10 of the test", "by 0.022 mm", "0.011 mm on each side", needed, "at most 0.015 mm", "ground bar"],
    );
    says(fixed, Some(0.0151), &["by 0.015 mm"]);
    says(fixed, Some(0.090), &["by 0.090 mm", "0.045 mm on each side", "turns with the bar", "without the bush"]);
    says(following, Some(0.058), &["turns with the bar", "by 0.058 mm", "h9 (at most 0.036 mm"]);
    says(fixed, None, &["the tolerance of the bar is not given", needed, "at most 0.015 mm"]);
    says(following, None, &["the tolerance of the bar is not given", "at most 0.036 mm"]);
    // The kind is not given, or there is no bush: nothing is said.
    assert_eq!(told(None, Some(0.090)), None);
    let text = text("single", "").replacen("  headstock:", "  no_bush: {max_bar: 34, collet_gap: 8}\n  headstock:", 1);
    let mut job = read(&text);
    job.machine.bush.as_mut().expect("a bush").kind = fixed;
    let cautions = |job: &Job| spanhold::answer::answer(job).unwrap_or_else(|d| panic!("{d}")).cautions;
    let about = |job: &Job| cautions(job).iter().filter(|c| c.starts_with("The guide bush")).count();
    // It is said with a plan and without one.
    assert_eq!(about(&job), 1);
    job.holding = Holding::NoBush;
    assert_eq!(about(&job), 0);
}

/// The sheet gives it to the setter.
#[test]
fn the_caution_stands_on_the_sheet() {
    let mut job = pin("", "");
    job.machine.bush.as_mut().expect("a bush").kind = Some(BushKind::Fixed);
    let plan = planned(&job);
    let sheet = spanhold::report::sheet_html(&plan).unwrap_or_else(|e| panic!("{e}"));
    assert!(sheet.contains("The guide bush stands still, and the tolerance of the bar is not given"));
}
