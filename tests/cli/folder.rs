//! What `plan --out`, `batch --out` and `new` leave on disk: all of it, or nothing.

use super::{BAD, GOOD, call, jobs, names};
use std::path::Path;

/// What a plan leaves in its folder.
pub const FILES: &[&str] = if cfg!(feature = "pdf") {
    &[
        "plan.dxf",
        "plan.json",
        "plan.svg",
        "plan.xlsx",
        "positions.csv",
        "positions.json",
        "sheet.html",
        "sheet.pdf",
        "stages.csv",
    ]
} else {
    &["plan.dxf", "plan.json", "plan.svg", "plan.xlsx", "positions.csv", "positions.json", "sheet.html", "stages.csv"]
};

fn plan_into(dir: &Path, job: &str) -> super::Called {
    call(["plan".as_ref(), job.as_ref(), "--out".as_ref(), dir.as_os_str()])
}

#[test]
fn the_folder_of_a_plan_holds_its_files_and_nothing_else() {
    let dir = tempfile::tempdir().expect("a folder");
    for (job, status) in [(GOOD, 0), (BAD, 1)] {
        let out = dir.path().join(job).join("made on the way");
        let called = plan_into(&out, job);
        assert_eq!((called.status, called.err.as_str()), (status, ""), "{job}");
        assert_eq!(names(&out), FILES, "{job}");
        let answer = |text: &str| text.split("An estimate").next().map(String::from);
        assert_eq!(answer(&called.out), answer(&call(["plan", job]).out), "the answer is the same with a folder");
        assert!(called.out.contains("are in: ") && !called.out.contains("--out"), "{}", called.out);
        let full = call(["plan", job, "--full"]).out;
        assert!(full.contains("\nCautions\n") && full.contains("\nSet-up\n"), "{full}");
        let stored = std::fs::read_to_string(out.join("plan.json")).expect("readable");
        assert_eq!(stored, call(["plan", job, "--format", "json"]).out, "{job}");
        let svg = std::fs::read_to_string(out.join("plan.svg")).expect("readable");
        assert!(roxmltree::Document::parse(&svg).is_ok(), "{job}");
        let sheet = std::fs::read_to_string(out.join("sheet.html")).expect("readable");
        assert!(sheet.starts_with("<!DOCTYPE html>") && sheet.trim_end().ends_with("</html>"), "{job}");
        let csv = std::fs::read_to_string(out.join("stages.csv")).expect("readable");
        assert!(csv.lines().count() > 1, "{job}");
    }
}

#[test]
fn a_folder_may_have_blanks_and_letters_of_any_script_in_its_name() {
    let dir = tempfile::tempdir().expect("a folder");
    let out = dir.path().join("Welle Ø18 – größer 軸");
    assert_eq!(plan_into(&out, GOOD).status, 0);
    assert_eq!(names(&out), FILES);
    let job = out.join("вал №7.yaml");
    std::fs::copy(jobs().join(GOOD), &job).expect("copied");
    std::fs::copy(jobs().join("bench-12.yaml"), out.join("bench-12.yaml")).expect("copied");
    assert_eq!(call(["check".as_ref(), job.as_os_str()]).status, 0);
}

#[test]
fn a_folder_that_is_there_keeps_what_else_is_in_it_and_gets_the_new_plan() {
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::write(dir.path().join("notes.txt"), "keep me").expect("written");
    std::fs::write(dir.path().join("plan.json"), "old").expect("written");
    assert_eq!(plan_into(dir.path(), GOOD).status, 0);
    assert_eq!(names(dir.path()), [&["notes.txt"][..], FILES].concat());
    assert_eq!(std::fs::read_to_string(dir.path().join("notes.txt")).expect("readable"), "keep me");
    assert_ne!(std::fs::read_to_string(dir.path().join("plan.json")).expect("readable"), "old");
}

#[test]
fn a_folder_that_cannot_be_made_is_wrong_input() {
    let dir = tempfile::tempdir().expect("a folder");
    let file = dir.path().join("file");
    std::fs::write(&file, "in the way").expect("written");
    for out in [file.clone(), file.join("below")] {
        let called = plan_into(&out, GOOD);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{}", out.display());
        assert!(called.err.contains(&*out.to_string_lossy()), "{}", called.err);
    }
    assert_eq!(names(dir.path()), ["file"]);
    assert_eq!(std::fs::read_to_string(&file).expect("readable"), "in the way");
}

#[test]
fn where_one_file_cannot_be_written_none_is() {
    for taken in FILES {
        let dir = tempfile::tempdir().expect("a folder");
        std::fs::create_dir(dir.path().join(taken)).expect("made");
        let called = plan_into(dir.path(), GOOD);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{taken}");
        assert!(called.err.contains(taken), "{}", called.err);
        assert_eq!(names(dir.path()), [*taken], "something was left behind");
    }
}

#[test]
fn a_new_job_is_never_written_over_another() {
    let dir = tempfile::tempdir().expect("a folder");
    let job = dir.path().join("job.yaml");
    let called = call(["new".as_ref(), job.as_os_str()]);
    assert_eq!((called.status, called.out.as_str()), (0, ""), "{}", called.err);
    assert_eq!(names(dir.path()), ["job.yaml"]);
    let text = std::fs::read_to_string(&job).expect("readable");
    assert_eq!(text, call(["new"]).out);
    std::fs::write(&job, "mine").expect("written");
    let again = call(["new".as_ref(), job.as_os_str()]);
    assert_eq!((again.status, again.out.as_str()), (2, ""));
    assert_eq!(std::fs::read_to_string(&job).expect("readable"), "mine");
    assert_eq!(names(dir.path()), ["job.yaml"]);
}

#[test]
fn a_new_job_can_be_planned_as_it_is() {
    let dir = tempfile::tempdir().expect("a folder");
    let job = dir.path().join("job.yaml");
    assert_eq!(call(["new".as_ref(), job.as_os_str()]).status, 0);
    let called = call(["check".as_ref(), job.as_os_str()]);
    assert_eq!(called.status, 0, "{}{}", called.out, called.err);
}
