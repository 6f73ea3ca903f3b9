//! A part that is cut off with its front free and falls into the tray.

use super::*;
use spanhold::answer::{advised, answer};
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof;

/// A pin of 20 mm from 10 mm bar, with a collet for it. `tray` is the text behind the time of part-off.
pub fn pin(tray: &str, more: &str) -> Job {
    let text = text("single", more);
    let (from, to) = (text.find("    - {length: 50").expect("a section"), text.find("  straightness").expect("there"));
    let text = format!("{}    - {{length: 20, diameter: 8, tolerance: [-0.1, 0]}}\n{}", &text[..from], &text[to..]);
    let bar = text
        .replace("diameter: 20, bar_length", "diameter: 10, bar_length")
        .replace("stiffness_min: 2", "stiffness_min: 1");
    let collet = bar.replace("range: [15, 18.5], hold: 20, passes: 19", "range: [7, 8.5], hold: 5, passes: 9");
    read(
        &collet
            .replace("time_s: 8}", &format!("time_s: 8{tray}}}"))
            .replace("hand_over_s: 5\n", "hand_over_s: 5\n    unload_s: 4\n"),
    )
}

pub fn planned(job: &Job) -> Plan {
    let plan = answer(job).unwrap_or_else(|d| panic!("{d}"));
    assert_eq!(plan.verdict, Verdict::Feasible, "{:?}", plan.shortfall);
    assert_eq!(proof::prove(&plan, job).breaches, []);
    plan
}

fn into(plan: &Plan) -> &str {
    &plan.part_off.as_ref().expect("a plan").into
}

/// One travel: 120 m/min at 10 mm bar, 0.1 mm/rev over 20 mm takes `60 · 20 · π · 10/(0.1 · 120 000)` = π s. 2 s for the travel
/// and 8 s for part-off. No hand-over (5 s) and no unloading (4 s), which a grip would take.
#[test]
fn the_cycle_of_a_part_that_falls() {
    let job = pin("", "");
    let plan = planned(&job);
    assert_eq!((into(&plan), plan.stages.len(), plan.collet.as_deref()), ("tray", 1, None));
    near(plan.pace_s(), PI + 2.0 + 8.0);
    let told = plan.part_off.as_ref().expect("a plan");
    assert_eq!((told.falls_up_to_mm(), told.by_default), (Some((30.0, 16.0)), true));
    assert!(
        plan.cautions.iter().any(|c| c.contains("may catch in the tool") && c.contains("Slow the last of the cut"))
    );
    assert!(
        plan.notes.iter().any(|n| n.contains("up to 30 mm of length and 16 mm of diameter may fall")),
        "{:?}",
        plan.notes
    );
    // No check of a last grip is in the plan.
    let checks: Vec<&str> = plan.stages.iter().flat_map(|s| &s.checks).map(|c| c.check.as_str()).collect();
    assert!(!checks.is_empty() && !checks.iter().any(|c| ["torque", "push", "back"].contains(c)), "{checks:?}");
    assert!(!plan.cycle.as_ref().expect("a plan").operations.iter().any(|o| o.work == "unload"));

    // The same part by a grip: no part may fall. The hand-over and the unloading are added.
    let held = planned(&pin(", tray: {max_length: 0, max_diameter: 16}", ""));
    assert_eq!((into(&held), held.stages.len(), held.collet.as_deref()), ("counter_spindle", 2, Some("A")));
    assert!(held.pace_s() > PI + 2.0 + 8.0 + 5.0 + 4.0 - 1e-9, "{}", held.pace_s());
    // The tray of the file replaces the default, on both sides of the part's size.
    for (tray, falls) in [
        (", tray: {max_length: 20, max_diameter: 8}", "tray"),
        (", tray: {max_length: 19.99, max_diameter: 8}", "counter_spindle"),
        (", tray: {max_length: 20, max_diameter: 7.99}", "counter_spindle"),
    ] {
        let plan = planned(&pin(tray, ""));
        assert_eq!(into(&plan), falls, "{tray}");
        assert!(
            !plan.part_off.as_ref().is_some_and(|p| p.by_default) && plan.notes.iter().all(|n| !n.contains("may fall"))
        );
    }
    // Work on the rear end needs the grip.
    let worked = planned(&pin("", "back_work: [{name: deburr, radial_force: 1, time_s: 3}]"));
    assert_eq!(into(&worked), "counter_spindle");
}

#[test]
fn a_part_that_may_not_fall_is_refused_with_its_size() {
    let small = ", tray: {max_length: 15, max_diameter: 10}";
    let refused = |job: &Job| {
        let plan = advised(job, Advice::Wanted).unwrap_or_else(|d| panic!("{d}"));
        plan.shortfall.unwrap_or_else(|| panic!("feasible"))
    };
    // No collet holds it, and it is too large for the tray.
    let mut job = pin(small, "");
    job.machine.counter_spindle.as_mut().expect("there").collets[0].largest_mm = 7.5;
    let why = refused(&job);
    assert_eq!(why.blocked_by, "collet");
    for told in
        ["20 mm of length and 8 mm of diameter", "up to 15 mm of length and 10 mm of diameter", "no collet fits"]
    {
        assert!(why.text.contains(told), "{told}\n{}", why.text);
    }
    let tray = why.changes.iter().find(|c| c.change == "part_off.tray").expect("a larger tray helps");
    // The length grows to that of the part; the diameter is enough.
    assert_eq!(tray.to, serde_json::json!({"max_length": 20.0, "max_diameter": 10.0}));
    // Without a counter-spindle the tray decides alone, and without a tray any part falls.
    let mut job = pin(small, "");
    job.machine.counter_spindle = None;
    let why = refused(&job);
    assert_eq!((why.blocked_by.as_str(), why.farthest_mm), ("tray", 23.0));
    assert!(why.changes.iter().any(|c| c.change == "part_off.tray"), "{:?}", why.changes);
    job.machine.part_off.tray = None;
    let plan = planned(&job);
    assert_eq!((into(&plan), plan.tray_mm()), ("tray", None));
    near(plan.pace_s(), PI + 2.0 + 8.0);
    assert!(plan.cautions.iter().any(|c| c.starts_with("Nothing holds the part at part-off")));
}

/// The proof finds by itself that a part may not fall.
#[test]
fn the_proof_refuses_a_part_that_may_not_fall() {
    let job = pin("", "");
    let plan = planned(&job);
    let rules = |plan: &Plan, job: &Job| -> Vec<String> {
        proof::prove(plan, job).breaches.into_iter().map(|b| b.rule).collect()
    };
    for (length, diameter) in [(19.9, 16.0), (30.0, 7.9)] {
        let mut small = pin(", tray: {max_length: 30, max_diameter: 16}", "");
        let tray = small.machine.part_off.tray.as_mut().expect("there");
        (tray.max_length_mm, tray.max_diameter_mm) = (length, diameter);
        assert!(rules(&plan, &small).contains(&"tray".into()), "{length} {diameter}");
    }
    let worked = pin("", "back_work: [{name: deburr, radial_force: 1, time_s: 3}]");
    assert!(rules(&plan, &worked).contains(&"part_off".into()));
    let mut told = plan.clone();
    told.part_off.as_mut().expect("there").into = "counter_spindle".into();
    assert_eq!(rules(&told, &job), ["part_off"]);
    let mut told = plan.clone();
    told.part_off.as_mut().expect("there").max_length_mm = Some(40.0);
    assert_eq!(rules(&told, &job), ["part_off"]);
    // A plan stored before the key was there tells nothing, and is proven.
    assert!(proof::prove(&Plan { part_off: None, ..plan }, &job).holds());
}
