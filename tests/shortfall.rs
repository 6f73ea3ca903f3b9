//! What stops a job, and what would help: the text names the cause, the place and the numbers, and every change told is true
//! when it is made by hand, while the round value before it is not enough.

use spanhold::answer::advised;
use spanhold::input::read_job_text;
use spanhold::job::Job;
use spanhold::job::plan::{Shortfall, Verdict};
use spanhold::planner::Advice;
use spanhold::planner::advice::{candidate, candidates, changes, costs};

/// An invented guide rod of a textile machine on a short machine.
fn text(sections: &str, rest: &str) -> String {
    format!(
        "shaft:
  name: guide rod
  material: C45
  straightness: 0.1
  sections:
{sections}
stock: {{diameter: 12}}
machine:
  name: short 16
  bush: {{max_bar: 16, land: 14, gap: 1, stiffness: 80}}
  headstock: {{nearest: 24, stroke: 160, hold: 20, stiffness: 80, max_rpm: 9000, regrip_s: 5, clamp_force: 9000}}
  counter_spindle:
    nearest: 6
    farthest: 110
    bore: 18
    bore_depth: 400
    stiffness: 60
    max_rpm: 9000
    hand_over_s: 4
    collets:
      - {{name: '11', range: [10.8, 11.1], hold: 12, passes: 11.4, clamp_force: 5000}}
cutting: {{vc: 100, feed: 0.1, ap_max: 1.5, speed_floor: 1}}
{rest}"
    )
}

const ROD: &str = "    - {length: 6, diameter: 10, tolerance: h11, name: front}
    - {length: 194, diameter: 11, tolerance: h11, name: rod}";
const LIMITS: &str = "limits: {stiffness_min: 0.1, sag: 0.5, whip: 0.5}\nplanning: {station_pitch: 10}";

fn read(text: &str) -> Job {
    read_job_text("rod.yaml", text, ".".as_ref()).unwrap_or_else(|told| panic!("{told:?}\n{text}"))
}

fn stopped(text: &str) -> Shortfall {
    let plan = advised(&read(text), Advice::None).unwrap_or_else(|d| panic!("{d}"));
    assert_eq!(plan.verdict, Verdict::Infeasible, "{text}");
    plan.shortfall.expect("it says why")
}

/// Each job is that of the rod with one thing changed.
#[test]
fn the_text_says_what_stops_it_and_where() {
    let rod = |from: &str, to: &str| {
        let base = text(ROD, LIMITS);
        assert!(base.contains(from), "{from}");
        base.replace(from, to)
    };
    let plain = advised(&read(&text(ROD, LIMITS)), Advice::None).unwrap_or_else(|d| panic!("{d}"));
    assert_eq!(plain.verdict, Verdict::Feasible, "{:?}", plain.shortfall);
    let cases = [
        // No collet for it: the ranges and the diameters.
        (
            rod("range: [10.8, 11.1]", "range: [8.8, 9.1]"),
            "no plain section (10 mm, 11 mm) fits a collet: collet 11 holds 8.8 to 9.1 mm",
        ),
        // A collar in front that does not pass.
        (rod("diameter: 10,", "diameter: 11.5,"), "does not pass collet 11"),
        (rod("name: rod}", "name: rod, grip: false}"), "rod must not be gripped"),
        (rod("name: rod}", "name: rod, interrupt: never}"), "rod must not be interrupted"),
        (rod("bore_depth: 400", "bore_depth: 10"), "lies deeper than the counter-spindle's bore of 10 mm"),
        (rod("bore: 18", "bore: 11.5"), "the shaft has no room in the counter-spindle's bore"),
        (
            rod(
                "    - {length: 194, diameter: 11, tolerance: h11, name: rod}",
                "    - {length: 164, diameter: 11, tolerance: h11, grip: false, name: rod}\n    \
                 - {length: 30, diameter: 11, tolerance: h11, name: tail}",
            ),
            "collet 11 can take hold on tail at the earliest, and for that 187.0 mm must be turned",
        ),
        (rod("clamp_force: 5000}", "clamp_force: 50}"), "torque of part-off or of work on the rear end"),
        (rod("{diameter: 12}", "{diameter: 17}"), "does not pass the guide bush, which takes 16 mm"),
        (rod("stiffness_min: 0.1", "stiffness_min: 50"), "where at least 50.0 N/µm is needed"),
    ];
    for (job, says) in cases {
        let told = stopped(&job);
        assert!(told.text.contains(says), "{says}\n{}", told.text);
    }
    let front = rod("clamp_force: 9000", "clamp_force: 300")
        .replace("\nstock:", "\n  features: [{axial_hole: 5, depth: 8, end: front}]\nstock:");
    let told = stopped(&front);
    assert!(told.blocked_by == "push" && told.text.contains("hole Ø5, 8 deep, front"), "{told:?}");
}

/// Jobs that one change mends; each change told is made by hand.
#[test]
fn every_change_told_is_true_and_the_value_before_it_is_not_enough() {
    let mut numbers = 0;
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
        if planned(&job).verdict == Verdict::Feasible {
            continue;
        }
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
            }
        }
    }
    assert!(numbers >= 3, "{numbers}");
}

/// A hole across the rod that is drilled far in front of the bush: ten times the deflection allowed.
#[test]
fn a_limit_of_the_part_is_relaxed_as_far_as_it_takes() {
    let base = text(ROD, LIMITS).replace("\nstock:", "\n  features: [{cross_hole: 3, at: 100, thrust: 260}]\nstock:");
    let job = read(&base.replace("whip: 0.5}", "whip: 0.5, drill: 0.0004}"));
    let told = advised(&job, Advice::Wanted).unwrap_or_else(|d| panic!("{d}")).shortfall.expect("it says why");
    assert_eq!(told.blocked_by, "drill", "{told:?}");
    let change = told.changes.iter().find(|c| c.change == "drill").unwrap_or_else(|| panic!("{:?}", told.changes));
    let value = change.to.as_f64().expect("a number");
    assert!(value > 5.0 * 0.0004, "five times the limit would have done: {change:?}");
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
