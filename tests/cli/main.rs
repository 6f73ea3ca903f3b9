//! The program itself, called as a user calls it: what it prints and where, how it ends, and what it leaves on disk.

mod batch;
mod draft;
mod ends;
mod folder;
mod help;
mod languages;
mod lost;
mod readme;
mod recheck;
mod results;
mod shape;
mod shop;
mod terminal;
mod writing;
mod wrong;

use assert_cmd::Command;
use serde_json::Value;
use std::path::{Path, PathBuf};

/// Widest line of text that is printed.
const COLUMNS: usize = 100;

/// What a call left behind.
struct Called {
    status: i32,
    out: String,
    err: String,
}

impl Called {
    fn json(&self) -> Value {
        serde_json::from_str(&self.out).unwrap_or_else(|e| panic!("not one JSON document: {e}\n{}", self.out))
    }
}

/// Calls the program. Whatever it was given, it ends, never panics, and what is wrong goes to stderr alone.
fn call<S: AsRef<std::ffi::OsStr>>(args: impl IntoIterator<Item = S>) -> Called {
    call_in(&jobs(), args)
}

fn call_in<S: AsRef<std::ffi::OsStr>>(dir: &Path, args: impl IntoIterator<Item = S>) -> Called {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spanhold"));
    let output = command.current_dir(dir).args(args).timeout(ends::HANGS_AFTER).output().expect("it starts");
    let called = Called {
        status: output.status.code().expect("it ends by itself"),
        out: String::from_utf8(output.stdout).expect("UTF-8"),
        err: String::from_utf8(output.stderr).expect("UTF-8"),
    };
    assert!(!called.err.contains("panicked"), "{}", called.err);
    called
}

/// The folder of this test's own jobs.
fn jobs() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/cli/jobs")
}

/// The job that can be made, and the one that cannot.
const GOOD: &str = "stirrer-rod.yaml";
const BAD: &str = "collared-pin.yaml";

/// A copy of the good job and its machine in a folder of its own, with something in the job replaced.
fn changed(replaced: &str, by: &str) -> tempfile::TempDir {
    let dir = tempfile::tempdir().expect("a folder");
    let job = std::fs::read_to_string(jobs().join(GOOD)).expect("the job");
    assert!(job.contains(replaced), "the job has no `{replaced}`");
    std::fs::write(dir.path().join("job.yaml"), job.replacen(replaced, by, 1)).expect("written");
    std::fs::copy(jobs().join("bench-12.yaml"), dir.path().join("bench-12.yaml")).expect("copied");
    dir
}

/// Names in a folder, hidden ones too, sorted.
fn names(dir: &Path) -> Vec<String> {
    let entries = std::fs::read_dir(dir).expect("readable");
    let mut names: Vec<String> =
        entries.map(|e| e.expect("readable").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}
