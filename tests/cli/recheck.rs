//! A stored plan against its job, a changed job, and a plan someone has edited.

use super::shape::assert_shape;
use super::{BAD, Called, GOOD, call, call_in, changed, jobs};
use serde_json::{Value, json};
use std::path::Path;

/// Stores the plan of the good job.
fn stored(dir: &Path) -> Value {
    let plan = call(["plan", GOOD, "--format", "json"]);
    assert_eq!(plan.status, 0);
    std::fs::write(dir.join("plan.json"), &plan.out).expect("written");
    plan.json()
}

fn recheck(plan: &Value) -> Called {
    let dir = tempfile::tempdir().expect("a folder");
    let path = dir.path().join("plan.json");
    std::fs::write(&path, plan.to_string()).expect("written");
    call(["recheck".as_ref(), path.as_os_str(), GOOD.as_ref(), "--format".as_ref(), "json".as_ref()])
}

#[test]
fn a_stored_plan_is_still_proven() {
    let dir = tempfile::tempdir().expect("a folder");
    let plan = stored(dir.path());
    let path = dir.path().join("plan.json");
    let called = call(["recheck".as_ref(), path.as_os_str(), GOOD.as_ref()]);
    assert_eq!((called.status, called.err.as_str()), (0, ""));
    assert!(called.out.starts_with("STILL PROVEN") && called.out.contains("have not changed"), "{}", called.out);
    assert!(called.out.lines().all(|l| l.chars().count() <= super::COLUMNS), "{}", called.out);
    let called = recheck(&plan);
    assert_eq!(called.status, 0);
    let found = called.json();
    let list = "proven flag
        inputs_changed flag
        states whole
        margin number?
        margin_told number?
        margin_changed flag
        verdict text
        good_share number?
        good_share_told number?
        breaches list";
    assert_shape(&found, list);
    assert_eq!((found["proven"].as_bool(), found["inputs_changed"].as_bool()), (Some(true), Some(false)));
    // The proof looks at other states than the planner, no further apart than 1 mm over 222 mm.
    assert!(found["states"].as_u64().is_some_and(|n| n > 222));
    let (proof, plan) = (found["margin"].as_f64().expect("a margin"), plan["margin"].as_f64().expect("a margin"));
    assert!((proof - plan).abs() < 0.01, "{proof} {plan}");
    assert_eq!((found["margin_told"].as_f64(), found["margin_changed"].as_bool()), (Some(plan), Some(false)));
    // The same parts are counted again.
    assert!(found["good_share"].as_f64().is_some_and(|share| share > 0.0));
    assert_eq!(found["good_share"], found["good_share_told"]);
    assert_eq!(found["verdict"].as_str(), Some("feasible"));
}

#[test]
fn a_plan_no_longer_holds_when_the_job_asks_for_more() {
    let kept = tempfile::tempdir().expect("a folder");
    stored(kept.path());
    let path = kept.path().join("plan.json");
    for (replaced, by, rule) in [
        ("stiffness_min: 0.3", "stiffness_min: 300", "stiffness"),
        ("name: stem}", "name: stem, interrupt: never}", "interrupt"),
        ("name: stem}", "name: stem, grip: false}", "grip"),
        ("feed: 0.08", "feed: 0.05", "segments"),
        ("vc: 100", "vc: 60", "speed"),
        ("{cross_hole: 2, at: 70}", "{cross_hole: 2, at: 50}", "features"),
        ("time_s: 2}", "time_s: 3}", "times"),
        ("tools: single", "tools: opposed", "way of turning"),
        ("radial_force: 0.3", "radial_force: 3", "back"),
        ("{length: 60, diameter: 9", "{length: 61, diameter: 9", "order"),
    ] {
        let dir = changed(replaced, by);
        let args = ["recheck".as_ref(), path.as_os_str(), "job.yaml".as_ref(), "--format".as_ref(), "json".as_ref()];
        let called = call_in(dir.path(), args);
        assert_eq!((called.status, called.err.as_str()), (1, ""), "{by}: {}", called.out);
        let found = called.json();
        assert_eq!((found["proven"].as_bool(), found["inputs_changed"].as_bool()), (Some(false), Some(true)), "{by}");
        assert_shape(&found["breaches"][0], "stage whole?\nrule text\ntext text");
        let rules: Vec<&str> =
            found["breaches"].as_array().expect("a list").iter().filter_map(|b| b["rule"].as_str()).collect();
        assert!(rules.contains(&rule), "{by}: {rules:?}");
        let text = call_in(dir.path(), ["recheck".as_ref(), path.as_os_str(), "job.yaml".as_ref()]);
        assert!(text.status == 1 && text.out.starts_with("NO LONGER PROVEN"), "{}", text.out);
    }
}

/// A plan that tells less margin than it has is proven; both outputs say that the margin is another.
#[test]
fn a_margin_that_has_changed_is_told_in_text_and_json() {
    let dir = tempfile::tempdir().expect("a folder");
    let mut plan = stored(dir.path());
    let told = plan["margin"].as_f64().expect("a margin") - 0.05;
    plan["margin"] = json!(told);
    plan["margin_at"]["utilisation"] = json!(1.0 - told);
    let called = recheck(&plan);
    let found = called.json();
    assert_eq!(called.status, 0, "{found}");
    assert_eq!((found["margin_changed"].as_bool(), found["margin_told"].as_f64()), (Some(true), Some(told)), "{found}");
    let path = dir.path().join("plan.json");
    std::fs::write(&path, plan.to_string()).expect("written");
    let called = call(["recheck".as_ref(), path.as_os_str(), GOOD.as_ref()]);
    assert!(called.status == 0 && called.out.contains("The margin has changed"), "{}", called.out);
}

/// A changed remark changes the digest and nothing else.
#[test]
fn a_plan_still_holds_when_the_job_changes_nothing_of_it() {
    let kept = tempfile::tempdir().expect("a folder");
    stored(kept.path());
    let dir = changed("name: stirrer rod", "name: stirring rod");
    let plan = kept.path().join("plan.json");
    let called = call_in(dir.path(), ["recheck".as_ref(), plan.as_os_str(), "job.yaml".as_ref()]);
    assert_eq!(called.status, 0, "{}", called.out);
    assert!(called.out.contains("The job or the machine has changed"), "{}", called.out);
}

#[test]
fn a_plan_edited_by_hand_is_refused() {
    let dir = tempfile::tempdir().expect("a folder");
    let plan = stored(dir.path());
    let number = |pointer: &str| plan.pointer(pointer).and_then(Value::as_f64).expect("a number");
    let edits = [
        ("/stages/0/to_mm", json!(number("/stages/0/to_mm") + 5.0)),
        ("/stages/1/from_mm", json!(number("/stages/1/from_mm") - 5.0)),
        ("/stages/1/grip/nose_mm", json!(number("/stages/1/grip/nose_mm") - 3.0)),
        ("/stages/1/grip/from_mm", json!(number("/stages/1/grip/from_mm") + 3.0)),
        ("/stages/1/grip", Value::Null),
        ("/stages/2/regrips_mm", json!([])),
        ("/headstock_regrips_mm", json!([])),
        ("/hand_overs_mm", json!([])),
        ("/segments/0/rpm", json!(number("/segments/0/rpm") * 1.5)),
        ("/segments/0/rpm", json!(number("/segments/0/rpm") * 0.2)),
        ("/segments/0/feed_mm", json!(number("/segments/0/feed_mm") * 2.0)),
        ("/segments/0/travels", json!(2)),
        ("/segments/0/to_mm", json!(number("/segments/0/to_mm") - 1.0)),
        ("/segments", json!([])),
        ("/part_off_rpm", json!(number("/part_off_rpm") * 2.0)),
        ("/part_off_rpm", Value::Null),
        ("/features", json!([])),
        ("/features/1/turned_mm", json!(number("/features/1/turned_mm") + 1.0)),
        ("/time_s/total", json!(number("/time_s/total") * 0.5)),
        ("/time_s/cutting", json!(number("/time_s/cutting") + 1.0)),
        ("/collet", json!("9")),
        ("/collet", json!("99")),
        ("/holding", json!("no_bush")),
        ("/tools", json!("opposed")),
        ("/verdict", json!("infeasible")),
    ];
    for (pointer, by) in edits {
        let mut edited = plan.clone();
        *edited.pointer_mut(pointer).expect("the key") = by.clone();
        assert_ne!(edited, plan, "{pointer}: the edit changes nothing");
        let called = recheck(&edited);
        assert_eq!(called.status, 1, "{pointer} as {by} was taken:\n{}", called.out);
        assert!(called.json()["breaches"].as_array().is_some_and(|b| !b.is_empty()), "{pointer}");
    }
}

#[test]
fn a_file_that_is_no_plan_is_wrong_input() {
    let dir = tempfile::tempdir().expect("a folder");
    let plan = stored(dir.path());
    let mut lacking = plan.clone();
    lacking.as_object_mut().expect("a map").remove("stages");
    let mut wordy = plan.clone();
    wordy["length_mm"] = json!("220");
    let cut = plan.to_string();
    let cut = &cut[..cut.len() / 2];
    for (name, text) in [
        ("empty", ""),
        ("cut", cut),
        ("list", "[1, 2]"),
        ("lacking", &lacking.to_string()),
        ("wordy", &wordy.to_string()),
        ("nan", &plan.to_string().replacen("220.0", "NaN", 1)),
    ] {
        let path = dir.path().join(name);
        std::fs::write(&path, text).expect("written");
        let called = call(["recheck".as_ref(), path.as_os_str(), GOOD.as_ref()]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{name}");
        assert!(called.err.contains(name) && called.err.contains("Give the plan.json"), "{name}: {}", called.err);
    }
}

/// The answer to a job that cannot be made is no plan to re-check.
#[test]
fn an_infeasible_answer_is_never_proven() {
    let dir = tempfile::tempdir().expect("a folder");
    let path = dir.path().join("plan.json");
    std::fs::write(&path, call(["plan", BAD, "--format", "json"]).out).expect("written");
    let job = jobs().join(BAD);
    let called = call(["recheck".as_ref(), path.as_os_str(), job.as_os_str()]);
    assert_eq!(called.status, 1, "{}", called.out);
}

/// A device that never ends is no plan, and is not read for ever.
#[test]
#[cfg(unix)]
fn a_plan_without_end_is_refused() {
    let script = r#"ulimit -v 600000; exec "$1" recheck /dev/zero "$2""#;
    let args = ["-c", script, "sh", env!("CARGO_BIN_EXE_spanhold"), GOOD];
    let output = super::ends::run(std::process::Command::new("sh").current_dir(jobs()).args(args));
    let err = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{err}");
    assert!(err.contains("larger than 64 MiB"), "{err}");
}
