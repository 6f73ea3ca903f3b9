//! Many jobs: a line each, in the order of the call, and one bad job never stops the rest.

use super::ends::{HANGS_AFTER, Running, until};
use super::shape::assert_shape;
use super::{BAD, GOOD, call, jobs, names};
use serde_json::Value;
use std::io::Write;
use std::process::{Command, Stdio};

fn lines(text: &str) -> Vec<Value> {
    text.lines().map(|l| serde_json::from_str(l).unwrap_or_else(|e| panic!("{e}: {l}"))).collect()
}

#[test]
fn lines_come_in_the_order_of_the_call_and_a_bad_job_stops_nothing() {
    let missing = "no-such-job.yaml";
    let order = [BAD, GOOD, missing, BAD, GOOD, "bench-12.yaml", GOOD];
    let called = call(["batch"].into_iter().chain(order));
    assert_eq!(called.status, 2);
    assert!(called.err.starts_with("7 lines in ") && called.err.lines().count() == 4, "{}", called.err);
    let row: Vec<&str> = called.err.lines().nth(3).map(|l| l.split_whitespace().collect()).unwrap_or_default();
    assert_eq!(row[..9], ["machine", "of", "the", "job", "3", "0", "2", "2", "0"], "{}", called.err);
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
                assert_ne!(alone["shortfall"]["sets"], serde_json::json!([]));
                for key in ["sets", "changes", "after_trial"] {
                    alone["shortfall"][key] = serde_json::json!([]);
                }
                alone["shortfall"]["tried"] = Value::Null;
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
        assert_shape(
            &inner,
            "file text\ndocument whole?\nmachine text?\nvary map?\nstatus whole\nerrors list\nplan map?",
        );
        assert_shape(&line["plan"], &super::results::plan_list());
    }
}

#[test]
fn lines_go_into_a_file_and_nothing_to_stdout() {
    let dir = tempfile::tempdir().expect("a folder");
    let file = dir.path().join("lines.jsonl");
    let called = call(["batch".as_ref(), GOOD.as_ref(), BAD.as_ref(), "--out".as_ref(), file.as_os_str()]);
    assert_eq!((called.status, called.out.as_str()), (0, ""));
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

/// A folder with copies of the good job under other names and lengths, cheap to plan, and a machine.
fn many(count: usize) -> (tempfile::TempDir, Vec<String>) {
    let dir = tempfile::tempdir().expect("a folder");
    let bad = std::fs::read_to_string(jobs().join(BAD)).expect("the job");
    std::fs::copy(jobs().join("bench-12.yaml"), dir.path().join("bench-12.yaml")).expect("copied");
    let names: Vec<String> = (0..count).map(|i| format!("job-{i}.yaml")).collect();
    for (i, name) in names.iter().enumerate() {
        // Every third is wrong, so that lines of every length are written.
        let text = if i % 3 == 2 { "shaft: {}\n".to_owned() } else { format!("# {i}\n{bad}") };
        std::fs::write(dir.path().join(name), text).expect("written");
    }
    (dir, names)
}

#[test]
fn every_job_is_planned_on_every_machine() {
    let order = [GOOD, "no-such-job.yaml", BAD];
    let machines = ["bench-12.yaml", "no-such-machine.yaml"];
    let called = call(["batch"].into_iter().chain(order).chain(["--machine", machines[0], "--machine", machines[1]]));
    assert_eq!(called.status, 2);
    let lines = lines(&called.out);
    let of = |l: &Value| (l["file"].as_str().unwrap_or("").to_owned(), l["machine"].as_str().unwrap_or("").to_owned());
    let expected: Vec<(String, String)> =
        order.iter().flat_map(|j| machines.iter().map(|m| (j.to_string(), m.to_string()))).collect();
    assert_eq!(lines.iter().map(of).collect::<Vec<_>>(), expected);
    let status: Vec<i64> = lines.iter().filter_map(|l| l["status"].as_i64()).collect();
    assert_eq!(status, [0, 2, 2, 2, 1, 2]);
    assert_eq!(lines[0]["plan"], call(["plan", GOOD, "--machine", machines[0], "--format", "json"]).json());
    let rows: Vec<&str> = called.err.lines().collect();
    assert!(rows.len() == 6 && rows[5].trim_start().starts_with("all "), "{}", called.err);
}

/// Calls `batch` with something on stdin.
fn fed(input: &str, args: &[&str]) -> (i32, String) {
    let output = assert_cmd::Command::new(env!("CARGO_BIN_EXE_spanhold"))
        .current_dir(jobs())
        .arg("batch")
        .args(args)
        .write_stdin(input)
        .timeout(HANGS_AFTER)
        .output()
        .expect("it starts");
    (output.status.code().expect("it ends by itself"), String::from_utf8(output.stdout).expect("UTF-8"))
}

#[test]
fn paths_and_documents_from_stdin_give_the_lines_of_their_files() {
    let plans = |text: &str| lines(text).into_iter().map(|l| l["plan"].clone()).collect::<Vec<_>>();
    let files = call(["batch", GOOD, BAD]).out;
    assert_eq!(fed(&format!("{GOOD}\n\n{BAD}\n"), &["-"]), (0, files.clone()));
    let text = |name: &str| std::fs::read_to_string(jobs().join(name)).expect("the job");
    let documents = format!("---\n{}---\n{}", text(GOOD), text(BAD));
    let (status, out) = fed(&documents, &["-"]);
    assert_eq!((status, plans(&out).len()), (0, 2));
    let about: Vec<Value> = lines(&out).iter().map(|l| serde_json::json!([l["file"], l["document"]])).collect();
    assert_eq!(about, [serde_json::json!(["<stdin>", 1]), serde_json::json!(["<stdin>", 2])]);
    // The digest is of the document's own text, without the empty end of the file: the rest is the file's plan.
    let plain = |mut plan: Value| {
        plan["input_digest"] = Value::Null;
        plan
    };
    assert_eq!(
        plans(&out).into_iter().map(plain).collect::<Vec<_>>(),
        plans(&files).into_iter().map(plain).collect::<Vec<_>>()
    );
    let (status, out) = fed("{\"shaft\": 1}\n{\"shaft\"\n", &["-", BAD]);
    let status_of: Vec<i64> = lines(&out).iter().filter_map(|l| l["status"].as_i64()).collect();
    assert_eq!((status, status_of), (2, vec![2, 2, 1]));
    assert!(out.contains("<stdin>#2, line 1, "), "{out}");
}

#[test]
fn an_interrupted_run_goes_on_without_repeating_or_losing_a_line() {
    let (dir, names) = many(24);
    // The jobs stand in the call, or come on stdin.
    let run = |out: &str, in_the_call: bool| {
        let mut command = Command::new(env!("CARGO_BIN_EXE_spanhold"));
        let jobs = if in_the_call { &names[..] } else { &["-".to_owned()][..] };
        command.current_dir(dir.path()).arg("batch").args(jobs).args(["--out", out]);
        command.stdout(Stdio::null()).stderr(Stdio::null());
        command
    };
    let done = |command: &mut Command| Running::start(command.stdin(Stdio::null())).output().status.code();
    assert_eq!(done(&mut run("whole.jsonl", true)), Some(2));
    let whole = std::fs::read_to_string(dir.path().join("whole.jsonl")).expect("written");
    assert_eq!(whole.lines().count(), names.len());
    let mut random = fastrand::Rng::with_seed(7);
    let file = dir.path().join("cut.jsonl");
    let written = || std::fs::read(&file).map_or(0, |b| b.iter().filter(|b| **b == b'\n').count());
    let (mut interrupted, mut at_work) = (0, 0);
    for _ in 0..6 {
        let _ = std::fs::remove_file(&file);
        let mut lines = 0;
        while lines < names.len() {
            let mut command = run("cut.jsonl", false);
            if lines > 0 {
                command.arg("--resume");
            }
            // The end of the list never comes, so it is still at work when it is killed, however slow this test is.
            let mut running = Running::start(command.stdin(Stdio::piped()));
            // At least twice each time.
            let most = if lines == 0 { names.len() / 2 } else { names.len() };
            let wanted = lines + random.usize(1..=most - lines);
            let fed = random.usize(wanted..=most);
            let mut feed = running.feed();
            feed.write_all((names[..fed].join("\n") + "\n").as_bytes()).expect("fed");
            until("so many lines are written", || written() >= wanted);
            running.kill();
            assert!(written() >= wanted && whole.starts_with(&std::fs::read_to_string(&file).expect("written")));
            (interrupted, at_work) = (interrupted + 1, at_work + usize::from(written() < fed));
            lines = written();
        }
        assert_eq!(done(run("cut.jsonl", true).arg("--resume")), Some(2));
        assert_eq!(std::fs::read_to_string(&file).expect("written"), whole);
    }
    println!("killed {interrupted} times, {at_work} times with jobs at hand");
    assert!(interrupted >= 12, "it was killed only {interrupted} times");
    // A line cut at every kind of place, which a kill seldom leaves.
    for cut in [1, 5, whole.len() / 3, whole.len() / 2, whole.len() - 1, whole.len()] {
        std::fs::write(&file, &whole[..cut]).expect("written");
        assert_eq!(done(run("cut.jsonl", true).arg("--resume")), Some(2));
        assert_eq!(std::fs::read_to_string(&file).expect("written"), whole, "cut at {cut}");
    }
}

#[test]
fn a_file_of_something_else_is_left_as_it_is() {
    let (dir, names) = many(3);
    let call_with = |names: &[String], out: &str| {
        let args = ["batch".to_owned()].into_iter().chain(names.iter().cloned());
        super::call_in(dir.path(), args.chain(["--out".to_owned(), out.to_owned(), "--resume".to_owned()]))
    };
    for text in ["a list", "a list\n", "{\"file\":\"x\"}\n"] {
        std::fs::write(dir.path().join("other.jsonl"), text).expect("written");
        let called = call_with(&names, "other.jsonl");
        assert_eq!(called.status, 2);
        assert!(called.err.contains("Line 1 of `other.jsonl` is not a line of `batch`"), "{}", called.err);
        assert_eq!(std::fs::read_to_string(dir.path().join("other.jsonl")).expect("there"), text);
    }
    assert_eq!(call_with(&names, "lines.jsonl").status, 2);
    let before = std::fs::read_to_string(dir.path().join("lines.jsonl")).expect("written");
    let other: Vec<String> = names.iter().rev().cloned().collect();
    let called = call_with(&other, "lines.jsonl");
    assert_eq!(called.status, 2);
    assert!(
        called.err.contains("Line 1 of `lines.jsonl` is the result of job-0.yaml, but this call has job-2.yaml there"),
        "{}",
        called.err
    );
    let fewer = call_with(&names[..1], "lines.jsonl");
    assert!(fewer.err.contains("this call has no more jobs"), "{}", fewer.err);
    assert_eq!(std::fs::read_to_string(dir.path().join("lines.jsonl")).expect("there"), before);
    let done = call_with(&names, "lines.jsonl");
    assert!(done.err.starts_with("3 lines (3 from the interrupted call) in "), "{}", done.err);
    assert_eq!(std::fs::read_to_string(dir.path().join("lines.jsonl")).expect("there"), before);
}

/// The job of a family, cheap to plan.
fn family(dir: &std::path::Path, vary: &str) {
    let bad = std::fs::read_to_string(jobs().join(GOOD)).expect("the job");
    std::fs::copy(jobs().join("bench-12.yaml"), dir.join("bench-12.yaml")).expect("copied");
    std::fs::write(dir.join("family.yaml"), format!("{bad}\nvary: {vary}\n")).expect("written");
}

#[test]
fn a_family_is_planned_part_by_part_and_drawn() {
    let dir = tempfile::tempdir().expect("a folder");
    family(
        dir.path(),
        "{length: {section: 1, from: 10, to: 30, step: 10}, diameter: {section: 1, from: 6, to: 14, step: 4}}",
    );
    let called = super::call_in(dir.path(), ["batch", "family.yaml", "--map", "map.svg"]);
    let lines = lines(&called.out);
    let sizes: Vec<(f64, f64)> = lines
        .iter()
        .map(|l| (l["vary"]["length_mm"].as_f64().unwrap_or(0.0), l["vary"]["diameter_mm"].as_f64().unwrap_or(0.0)))
        .collect();
    let expected: Vec<(f64, f64)> =
        [10.0, 20.0, 30.0].iter().flat_map(|l| [6.0, 10.0, 14.0].iter().map(|d| (*l, *d))).collect();
    assert_eq!(sizes, expected);
    // 14 mm does not come out of the job's bar: a line with an error, and the rest goes on.
    assert_eq!(called.status, 2);
    for line in &lines {
        let wrong = line["vary"]["diameter_mm"] == 14.0;
        assert_eq!(line["status"] == 2, wrong, "{line}");
    }
    let svg = std::fs::read_to_string(dir.path().join("map.svg")).expect("drawn");
    let read = roxmltree::Document::parse(&svg).expect("well-formed");
    let titles: Vec<&str> = read.descendants().filter(|n| n.has_tag_name("title")).filter_map(|n| n.text()).collect();
    assert_eq!(titles.len(), 1 + lines.len(), "{titles:?}");
    for line in lines.iter().filter(|l| l["status"] == 0) {
        let told = format!(
            "length {} mm, diameter {} mm: {}, {:.1} s",
            line["vary"]["length_mm"].as_f64().unwrap_or(0.0),
            line["vary"]["diameter_mm"].as_f64().unwrap_or(0.0),
            match line["plan"]["hand_overs_mm"].as_array().map_or(0, Vec::len) {
                1 => "1 hand-over".to_owned(),
                many => format!("{many} hand-overs"),
            },
            line["plan"]["cycle"]["steady_s"].as_f64().unwrap_or(0.0)
        );
        assert!(titles.contains(&told.as_str()), "{told} is not in {titles:?}");
    }
    let nominal = super::call_in(dir.path(), ["plan", "family.yaml"]);
    assert!(nominal.out.contains("This plan uses the values of the sections"), "{}", nominal.out);
}

#[test]
fn one_varied_size_is_drawn_as_a_curve_and_what_has_no_map_is_told() {
    let dir = tempfile::tempdir().expect("a folder");
    family(dir.path(), "{length: {section: 1, from: 10, to: 30, step: 10}}");
    let called = super::call_in(dir.path(), ["batch", "family.yaml", "--map", "map.svg", "--out", "lines.jsonl"]);
    assert_eq!((called.status, called.out.as_str()), (0, ""));
    let svg = std::fs::read_to_string(dir.path().join("map.svg")).expect("drawn");
    assert!(svg.contains("time per part, s") && svg.contains("2 of 3 parts can be made"), "{svg}");
    // What stops a part is told at its place, and upright in its stripe.
    let stored = std::fs::read_to_string(dir.path().join("lines.jsonl")).expect("written");
    let stopped: Vec<String> = lines(&stored)
        .iter()
        .filter_map(|l| l["plan"]["shortfall"]["blocked_by"].as_str().map(spanhold::report::words::check_name))
        .collect();
    assert_eq!(stopped.len(), 1);
    for told in [format!("mm: cannot be made, stopped by: {}<", stopped[0]), format!(">\n{}\n<", stopped[0])] {
        assert!(svg.contains(&told), "{told}: {svg}");
    }
    // The map of a run that goes on has all its parts.
    let again =
        super::call_in(dir.path(), ["batch", "family.yaml", "--map", "again.svg", "--out", "lines.jsonl", "--resume"]);
    assert_eq!(again.status, 0);
    assert_eq!(std::fs::read_to_string(dir.path().join("again.svg")).expect("drawn"), svg);
    for (args, says) in [
        (vec!["batch", "bench-12.yaml", "--map", "m.svg"], "has no `vary`"),
        (vec!["batch", "family.yaml", "family.yaml", "--map", "m.svg"], "one job and one machine"),
        (vec!["batch", "-", "--map", "m.svg"], "not stdin"),
        (vec!["batch", "family.yaml", "--resume"], "--out"),
        (vec!["batch", "-", "-"], "Stdin (`-`) is given twice"),
    ] {
        let called = super::call_in(dir.path(), &args);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{args:?}");
        assert!(called.err.contains(says), "{args:?}: {}", called.err);
    }
    assert!(!dir.path().join("m.svg").exists());
}
