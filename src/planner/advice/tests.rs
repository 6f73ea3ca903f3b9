//! Every change told is true when it is made by hand, while the round value before it is not enough; and a limit costs what is told.

// Shared with the tests of `tests/`.
#[path = "../../../tests/answers/rod.rs"]
mod rod;

use super::pairs::lifts;
use super::{candidate, candidates, changes, costs};
use crate::answer::advised;
use crate::input::read_job_text;
use crate::job::plan::Verdict;
use crate::job::{Collet, Job, Tools};
use crate::planner::Advice;
use crate::process::checks;
use rod::{LIMITS, ROD, text};
use std::collections::BTreeSet;
use std::path::Path;

fn read(text: &str) -> Job {
    read_job_text("rod.yaml", text, ".".as_ref()).unwrap_or_else(|told| panic!("{told:?}\n{text}"))
}

/// Jobs that one change mends; each change told is made by hand.
#[test]
fn every_change_told_is_true_and_the_value_before_it_is_not_enough() {
    let (mut jobs, mut numbers, mut others) = (0, 0, 0);
    for (from, to) in [
        ("clamp_force: 5000}", "clamp_force: 2000}"),
        ("bore: 18", "bore: 11.5"),
        ("bore: 18", "bore: 13"),
        ("range: [10.8, 11.1]", "range: [8.8, 9.1]"),
    ] {
        let base = text(ROD, LIMITS);
        assert!(base.contains(from), "{from}");
        let job = read(&base.replace(from, to));
        let planned = |job: &Job| advised(job, Advice::None).unwrap_or_else(|d| panic!("{d}"));
        assert_eq!(planned(&job).verdict, Verdict::Infeasible, "{to}");
        jobs += 1;
        let help = changes::find(&job).unwrap_or_else(|d| panic!("{d}"));
        for change in help.changes.iter().filter(|c| !c.change.contains(" + ")) {
            let list = candidates::all(&job);
            let value = |c: &candidate::Candidate| match c.after {
                None => change.to.as_f64().expect("a number"),
                Some(_) => c.range.1,
            };
            let is_it =
                |c: &&candidate::Candidate| c.name == change.change && change.text.starts_with(&(c.says)(value(c)));
            let candidate = list.iter().find(is_it).unwrap_or_else(|| panic!("{change:?}"));
            let made = planned(&(candidate.with)(&job, value(candidate)));
            assert_eq!(made.verdict, Verdict::Feasible, "{to}: {change:?}");
            let steps = candidate.steps(value(candidate));
            if candidate.after.is_none() && steps > 0 {
                let less = candidate.at(steps, value(candidate));
                let made = planned(&(candidate.with)(&job, less));
                assert_eq!(made.verdict, Verdict::Infeasible, "{to}: {less} would do for {change:?}");
                numbers += 1;
            } else {
                others += 1;
            }
        }
    }
    println!("{jobs} jobs, {numbers} numbers and {others} other changes");
    assert!(jobs == 4 && numbers >= 3 && others >= 1, "{jobs} {numbers} {others}");
}

/// What a limit costs is what planning by hand with the value told saves, and no other round value tried saves more.
#[test]
fn a_limit_costs_what_planning_with_the_best_value_saves() {
    let mut seen = 0;
    for (from, to) in [("stroke: 160", "stroke: 70"), ("farthest: 110", "farthest: 80")] {
        let base = text(ROD, LIMITS);
        assert!(base.contains(from), "{from}");
        let job = read(&base.replace(from, to));
        let pace_s = |job: &Job| {
            let plan = advised(job, Advice::None).unwrap_or_else(|d| panic!("{d}"));
            (plan.verdict == Verdict::Feasible).then(|| plan.pace_s())
        };
        let now_s = pace_s(&job).expect("a plan");
        let list = candidates::all(&job);
        for cost in costs::find(&job, now_s).unwrap_or_else(|d| panic!("{d}")) {
            // A limit that is no number has no value beside the one told.
            let Some(candidate) = list.iter().find(|c| c.name == cost.limit && c.after.is_none()) else { continue };
            let saved_s = |v: f64| pace_s(&(candidate.with)(&job, v)).map_or(f64::NEG_INFINITY, |t| now_s - t);
            let (best, next) = (cost.best.as_f64().expect("a number"), cost.next.as_f64().expect("a number"));
            assert!((saved_s(best) - cost.seconds).abs() < 1e-3, "{cost:?}");
            assert!((saved_s(next) - cost.next_seconds).abs() < 1e-3, "{cost:?}");
            for share in [1.0, 0.5, 0.25, 0.1] {
                let (from, to) = candidate.range;
                let value = if share < 1.0 { candidate.rounded(from + share * (to - from)) } else { to };
                assert!(saved_s(value) <= cost.seconds + 1e-3, "{value} saves {}: {cost:?}", saved_s(value));
            }
            seen += 1;
        }
    }
    assert!(seen >= 2, "{seen}");
}

/// All changes worth trying for two demo jobs on a plain machine, and with a punched socket.
fn known() -> BTreeSet<String> {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("demo");
    let punched = "forming: punch";
    let mut names = BTreeSet::new();
    for (file, from, to) in [
        ("metering-spindle", "step: 0.05", "step: 0.05"),
        ("metering-spindle", "step: 0.05", punched),
        ("feed-roller-shaft", "", ""),
    ] {
        let text = std::fs::read_to_string(demo.join(file).with_extension("yaml")).expect("a demo");
        assert!(text.contains(from));
        let job = crate::input::read_job_text(file, &text.replace(from, to), &demo);
        let mut job = job.unwrap_or_else(|diags| panic!("{}", crate::input::render(&diags)));
        job.cutting.tools = Tools::Single;
        job.limits.free_ratio = Some(10.0);
        job.machine.headstock.clamp_force_n = Some(10_000.0);
        let counter = job.machine.counter_spindle.as_mut().expect("a counter-spindle");
        (counter.sleeve, counter.bore_depth_mm, counter.axial_load_n) = (None, 100.0, -500.0);
        counter.collets =
            vec![Collet { smallest_mm: 1.0, largest_mm: 1.1, run_out_mm: Some(0.02), ..counter.collets[0].clone() }];
        job.shaft.sections[0].run_out_mm = Some(0.02);
        names.extend(candidates::all(&job).into_iter().map(|c| c.name));
    }
    names
}

#[test]
fn what_a_check_says_may_lift_it_is_a_change_that_is_tried() {
    let known = known();
    let mut looked_at = 0;
    for check in checks::CHECKS.iter().chain(&checks::EVENTS) {
        for change in check.lifted_by {
            assert!(known.contains(*change), "{}: {change} is none of {known:?}", check.name);
            assert!(lifts(check.name, change));
            looked_at += 1;
        }
    }
    assert!(looked_at > 30, "{looked_at}");
    assert!(!lifts("whirl", "bar") && !lifts("whirl", "whirl"));
}
