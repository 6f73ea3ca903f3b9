//! Wrong files and wrong calls: status 2, stdout empty, and stderr says where it is and what to write instead.

use super::{GOOD, call, call_in, changed, names};

/// Calls that cannot be meant.
#[test]
fn a_wrong_call_ends_with_2_and_prints_no_result() {
    for args in [
        &[][..],
        &["paln", GOOD],
        &["plan"],
        &["plan", GOOD, "--fromat", "json"],
        &["plan", GOOD, "--format", "xml"],
        &["plan", GOOD, "spare"],
        &["plan", "no-such-job.yaml"],
        &["plan", "."],
        &["plan", GOOD, "--machine", "no-such-machine.yaml"],
        &["check", "no-such-job.yaml"],
        &["at", GOOD],
        &["at", GOOD, "--turned", "far"],
        &["at", GOOD, "--turned", "NaN"],
        &["at", GOOD, "--turned", "inf"],
        &["at", GOOD, "--turned=-1"],
        &["at", GOOD, "--turned", "900"],
        &["at", GOOD, "--turned", "100", "--grip", "NaN"],
        &["at", GOOD, "--turned", "100", "--grip", "120"],
        &["at", GOOD, "--turned", "100", "--grip", "5"],
        &["at", GOOD, "--turned", "100", "--grip", "60", "--headstock", "500"],
        &["at", GOOD, "--turned", "100", "--grip", "60", "--collet", "99"],
        &["at", GOOD, "--turned", "100", "--rpm", "NaN"],
        &["batch"],
        &["compare"],
        &["compare", "no-such-job.yaml"],
        &["compare", GOOD, "--machine", "no-such-machine.yaml"],
        &["recheck", GOOD],
        &["recheck", "no-such-plan.json", GOOD],
        &["recheck", GOOD, GOOD],
        &["new", GOOD],
    ] {
        let called = call(args);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{args:?}: {}", called.err);
        assert!(called.err.len() > 10, "{args:?} says nothing");
    }
}

/// What is wrong with a job, where, and what is said.
#[test]
fn a_wrong_job_is_told_with_its_place_and_what_to_write() {
    for (replaced, by, words) in [
        ("  straightness: 0.2", "  straightnes: 0.2", &["straightnes", "straightness"][..]),
        ("cutting: {", "cutting: {feeed: 0.1, ", &["feeed", "feed"]),
        ("{length: 20, diameter: 6", "{length: 20 kg, diameter: 6", &["length", "kg"]),
        ("{length: 20, diameter: 6", "{length: 20, diameter: '6'", &["diameter"]),
        ("{length: 20, diameter: 6", "{length: 20, length: 21, diameter: 6", &["length"]),
        ("{length: 20, diameter: 6", "{length: .nan, diameter: 6", &["length", "number"]),
        ("{length: 20, diameter: 6", "{length: .inf, diameter: 6", &["length", "number"]),
        ("{length: 20, diameter: 6", "{length: -20, diameter: 6", &["length", "-20", "0.01 to 6000, in mm"]),
        ("{length: 20, diameter: 6", "{length: 1e300, diameter: 6", &["length"]),
        ("{length: 20, diameter: 6", "{diameter: 6", &["length"]),
        ("tolerance: h9}", "tolerance: H9}", &["H9", "h9"]),
        ("material: C45", "material: C46", &["C46", "C45"]),
        ("machine: bench-12.yaml", "machine: bench-21.yaml", &["bench-21.yaml"]),
        ("stock: {diameter: 10", "stock: {diameter: 8", &["too thin", "9"]),
    ] {
        let dir = changed(replaced, by);
        let text = std::fs::read_to_string(dir.path().join("job.yaml")).expect("the job");
        let line = 1 + text.lines().position(|l| l.contains(by)).expect("the changed line");
        for command in ["plan", "check"] {
            let called = call_in(dir.path(), [command, "job.yaml"]);
            assert_eq!((called.status, called.out.as_str()), (2, ""), "{by}: {}", called.err);
            assert!(
                called.err.contains(&format!("job.yaml, line {line}, column ")),
                "{by}: line {line}\n{}",
                called.err
            );
            for word in words {
                assert!(called.err.contains(word), "{by}: no `{word}`\n{}", called.err);
            }
            let head = called.err.lines().next().expect("a message");
            assert!(head.contains(". ") || head.contains("? "), "{by}: only what is wrong\n{}", called.err);
        }
        assert_eq!(names(dir.path()), ["bench-12.yaml", "job.yaml"], "{by}");
    }
}

#[test]
fn everything_that_is_wrong_is_told_in_one_run() {
    let dir = changed("{length: 20, diameter: 6", "{length: -20, diametre: 6");
    let job = std::fs::read_to_string(dir.path().join("job.yaml")).expect("the job");
    let job = job.replace("bar_length: 2000", "bar_length: 2000 kg").replace("vc: 100", "vc: 0");
    std::fs::write(dir.path().join("job.yaml"), job).expect("written");
    let err = call_in(dir.path(), ["plan", "job.yaml"]).err;
    for word in ["-20", "diametre", "bar_length", "vc"] {
        assert!(err.contains(word), "no `{word}` in\n{err}");
    }
}

#[test]
fn what_is_wrong_with_the_machine_points_into_its_own_file() {
    let dir = changed("name: stirrer rod", "name: rod");
    let path = dir.path().join("bench-12.yaml");
    let machine = std::fs::read_to_string(&path).expect("the machine");
    std::fs::write(&path, machine.replace("stroke: 100", "stroke: ten")).expect("written");
    let called = call_in(dir.path(), ["plan", "job.yaml"]);
    assert_eq!((called.status, called.out.as_str()), (2, ""));
    assert!(called.err.contains("bench-12.yaml, line 4, "), "{}", called.err);
}

#[test]
fn a_file_that_is_no_text_or_too_large_is_refused_at_once() {
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::write(dir.path().join("bytes.yaml"), [0xff, 0xfe, 0x00, 0x9f]).expect("written");
    std::fs::write(dir.path().join("large.yaml"), "# a line\n".repeat(600_000)).expect("written");
    std::fs::write(dir.path().join("empty.yaml"), "").expect("written");
    std::fs::write(dir.path().join("deep.yaml"), "[".repeat(100_000)).expect("written");
    for name in ["bytes.yaml", "large.yaml", "empty.yaml", "deep.yaml"] {
        let called = call_in(dir.path(), ["plan", name]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{name}: {}", called.err);
        assert!(called.err.contains(name), "{name}: {}", called.err);
    }
}

#[test]
fn a_machine_file_in_place_of_a_job_is_one_error() {
    let called = call_in(std::path::Path::new("demo/machines"), ["check", "mid-20.yaml"]);
    assert_eq!((called.status, called.out.as_str(), called.err.lines().count()), (2, "", 3), "{}", called.err);
    assert!(called.err.contains("This is a machine file, not a job"), "{}", called.err);
    assert!(
        called.err.contains("`machine: mid-20.yaml`") && called.err.contains("`JOB --machine mid-20.yaml`"),
        "{}",
        called.err
    );
}

#[test]
fn a_decimal_comma_in_a_call_gets_its_hint() {
    for (args, says) in [
        (&["at", GOOD, "--turned", "10,5"][..], "written with a point: `10.5`"),
        (&["draft", "none.dxf", "--gap", "0,05"][..], "written with a point: `0.05`"),
    ] {
        let called = call(args);
        assert!(called.status == 2 && called.err.contains(says), "{args:?}: {}", called.err);
    }
}
