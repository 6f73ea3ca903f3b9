//! What stops a job: the text names the cause, the place and the numbers. That every change told is true is tested beside its code.

use crate::rod::{LIMITS, ROD, text};
use spanhold::answer::advised;
use spanhold::input::read_job_text;
use spanhold::job::Job;
use spanhold::job::plan::{Shortfall, Verdict};
use spanhold::planner::Advice;

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
            "no collet fits a plain section (10 mm, 11 mm): collet 11 holds 8.8 to 9.1 mm",
        ),
        // A collar in front that does not pass.
        (rod("diameter: 10,", "diameter: 11.5,"), "does not pass collet 11"),
        (rod("name: rod}", "name: rod, grip: false}"), "rod must not be gripped"),
        (rod("name: rod}", "name: rod, interrupt: never}"), "rod must not be interrupted"),
        (rod("bore_depth: 400", "bore_depth: 10"), "lies too deep, the counter-spindle bore takes 10 mm only"),
        (rod("bore: 18", "bore: 11.5"), "the part has no room in the counter-spindle bore"),
        (
            rod(
                "    - {length: 194, diameter: 11, tolerance: h11, name: rod}",
                "    - {length: 164, diameter: 11, tolerance: h11, grip: false, name: rod}\n    \
                 - {length: 30, diameter: 11, tolerance: h11, name: tail}",
            ),
            "collet 11 can take hold on tail first, and the turned length must be at least 187.0 mm for that",
        ),
        (
            rod("clamp_force: 5000}", "clamp_force: 50}"),
            "last grip, at part-off or during work on the rear end: the torque is",
        ),
        (rod("{diameter: 12}", "{diameter: 17}"), "too thick for the guide bush, which takes at most 16 mm"),
        (rod("stiffness_min: 0.1", "stiffness_min: 50"), "at least 50.0 N/µm is needed"),
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

/// A hole across the rod that is drilled far in front of the bush: ten times the deflection allowed.
#[test]
fn a_limit_of_the_part_is_relaxed_as_far_as_it_takes() {
    let base = text(ROD, LIMITS).replace("\nstock:", "\n  features: [{cross_hole: 3, at: 100, thrust: 260}]\nstock:");
    let job = read(&base.replace("whip: 0.5}", "whip: 0.5, drill: 0.0004}"));
    let told = advised(&job, Advice::Wanted).unwrap_or_else(|d| panic!("{d}")).shortfall.expect("it says why");
    assert_eq!(told.blocked_by, "drill", "{told:?}");
    let change = told.after_trial.iter().find(|c| c.change == "drill").unwrap_or_else(|| panic!("{told:?}"));
    let value = change.to.as_f64().expect("a number");
    assert!(value > 5.0 * 0.0004, "five times the limit would have done: {change:?}");
}
