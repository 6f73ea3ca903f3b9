//! Many jobs: a line each, in the order of the call, and one bad job never stops the rest.

use super::shape::assert_shape;
use super::{BAD, GOOD, call, jobs, names};
use serde_json::Value;

fn lines(text: &str) -> Vec<Value> {
    text.lines().map(|l| serde_json::from_str(l).unwrap_or_else(|e| panic!("{e}: {l}"))).collect()
}

#[test]
fn lines_come_in_the_order_of_the_call_and_a_bad_job_stops_nothing() {
    let missing = "no-such-job.yaml";
    let order = [BAD, GOOD, missing, BAD, GOOD, "bench-12.yaml", GOOD];
    let called = call(["batch"].into_iter().chain(order));
    assert_eq!((called.status, called.err.as_str()), (2, ""));
    let lines = lines(&called.out);
    assert_eq!(lines.len(), order.len());
    for (line, job) in lines.iter().zip(order) {
        assert_eq!(line["file"].as_str(), Some(job));
        let status = match job {
            GOOD => 0,
            BAD => 1,
            _ => 2,
        };
        assert_eq!(line["status"].as_i64(), Some(status), "{job}");
        let alone = call(["plan", job, "--format", "json"]);
        assert_eq!(i64::from(alone.status), status, "{job}");
        if status == 2 {
            assert_eq!(line["plan"], Value::Null);
            assert!(line["errors"].as_array().is_some_and(|e| !e.is_empty()), "{job} says nothing");
        } else {
            // What would help takes many plans and is left to `plan` and `check`.
            let mut alone = alone.json();
            if status == 1 {
                assert_ne!(alone["shortfall"]["changes"], serde_json::json!([]));
                alone["shortfall"]["changes"] = serde_json::json!([]);
            }
            assert_eq!(line["plan"], alone, "{job}: not the plan it has alone");
        }
    }
}

#[test]
fn a_line_has_every_key_with_its_type() {
    let called = call(["batch", GOOD, BAD]);
    // That a job cannot be made is an answer: the batch is done.
    assert_eq!(called.status, 0);
    for line in lines(&called.out) {
        let mut inner = line.clone();
        inner["plan"] = Value::Null;
        assert_shape(&inner, "file text\nstatus whole\nerrors list\nplan map?");
        assert_shape(&line["plan"], &super::results::plan_list());
    }
}

#[test]
fn lines_go_into_a_file_and_nothing_to_stdout() {
    let dir = tempfile::tempdir().expect("a folder");
    let file = dir.path().join("lines.jsonl");
    let called = call(["batch".as_ref(), GOOD.as_ref(), BAD.as_ref(), "--out".as_ref(), file.as_os_str()]);
    assert_eq!((called.status, called.out.as_str(), called.err.as_str()), (0, "", ""));
    assert_eq!(names(dir.path()), ["lines.jsonl"]);
    assert_eq!(std::fs::read_to_string(&file).expect("readable"), call(["batch", GOOD, BAD]).out);
}

#[test]
fn a_file_that_cannot_be_written_is_wrong_input() {
    let dir = tempfile::tempdir().expect("a folder");
    for out in [dir.path().to_owned(), jobs().join(GOOD).join("lines.jsonl")] {
        let called = call(["batch".as_ref(), BAD.as_ref(), "--out".as_ref(), out.as_os_str()]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{}", out.display());
    }
    assert_eq!(names(dir.path()), Vec::<String>::new());
}
