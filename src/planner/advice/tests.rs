//! Every change told is true when it is made by hand, while the round value before it is not enough; and a limit costs what is told.

// Shared with the tests of `tests/`.
#[path = "../../../tests/answers/rod.rs"]
mod rod;

use super::lifting::lifts;
use super::search::{Ended, MOST_CHANGES, Search};
use super::{candidate, candidates, costs, limits};
use crate::answer::advised;
use crate::input::read_job_text;
use crate::job::plan::Verdict;
use crate::job::{Collet, Job, Tools};
use crate::planner::Advice;
use crate::planner::tests::jobs;
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
        let told = advised(&job, Advice::Wanted).unwrap_or_else(|d| panic!("{d}")).shortfall.expect("it says why");
        for change in told.changes.iter().chain(&told.after_trial) {
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
        counter.collets = vec![Collet { run_out_mm: Some(0.02), clamp_force_n: 800.0, ..counter.collets[0].clone() }];

        job.shaft.sections[0].run_out_mm = Some(0.02);
        names.extend(candidates::all(&job).into_iter().chain(limits::safety(&job)).map(|c| c.name));
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

/// A random part of the changes worth trying, in their order.
fn some(seed: u64, list: Vec<candidate::Candidate>) -> Vec<candidate::Candidate> {
    let random = &mut jobs::Random::new(seed);
    let mut drawn: Vec<(f64, usize, candidate::Candidate)> =
        list.into_iter().enumerate().map(|(i, candidate)| (random.unit(), i, candidate)).collect();
    drawn.sort_by(|a, b| a.0.total_cmp(&b.0));
    drawn.truncate(SOME);
    drawn.sort_by_key(|d| d.1);
    drawn.into_iter().map(|d| d.2).collect()
}

/// Number of changes of which all sets are tried.
const SOME: usize = 12;

/// The price of the cheapest set of up to four changes with a plan, by trying every set in the order of price.
fn cheapest(search: &Search<'_>) -> Option<f64> {
    let mut sets: Vec<Vec<usize>> = vec![Vec::new()];
    let mut all: Vec<Vec<usize>> = Vec::new();
    for _ in 0..MOST_CHANGES {
        let wider = |set: &Vec<usize>| {
            let from = set.last().map_or(0, |last| last + 1);
            let set = set.clone();
            (from..search.atoms.len()).map(move |a| set.iter().copied().chain([a]).collect::<Vec<_>>())
        };
        sets = sets.iter().flat_map(wider).filter(|set| search.allows(set)).collect();
        all.extend(sets.iter().cloned());
    }
    all.sort_by(|a, b| search.price(a).total_cmp(&search.price(b)));
    all.iter().find(|set| search.passes(set)).map(|set| search.price(set))
}

/// Small random jobs without a plan, each with a random part of the changes worth trying: the set found has the price of the cheapest one of
/// all sets, and where none is found there is none.
#[test]
fn the_set_found_is_as_cheap_as_the_cheapest_of_all_sets() {
    let (mut jobs, mut found, mut pairs, mut none) = (0, 0, 0, 0);
    for seed in 0..400 {
        let text = jobs::small_job(seed);
        let Ok(job) = read_job_text("random.yaml", &text, ".".as_ref()) else { continue };
        if crate::planner::quick::comes_through(&job) {
            continue;
        }
        let list = some(seed, candidates::all(&job));
        let mut search = Search::new(&job, &list);
        let cheapest = cheapest(&search);
        let told = match search.next(false, &|_, _| false).unwrap_or_else(|d| panic!("{d}")) {
            Ok(set) => {
                pairs += usize::from(set.len() > 1);
                Some(search.price(&set))
            }
            Err(ended) => {
                assert_eq!(ended, Ended::Done, "seed {seed}");
                None
            }
        };
        assert_eq!(told, cheapest, "seed {seed}\n{text}");
        (jobs, found, none) = (jobs + 1, found + usize::from(told.is_some()), none + usize::from(told.is_none()));
        if jobs == 60 {
            break;
        }
    }
    println!("{jobs} jobs: {found} sets, {pairs} of them of several changes; {none} without any");
    assert!(jobs == 60 && found >= 12 && pairs >= 4 && none >= 5, "{jobs} {found} {pairs} {none}");
}
