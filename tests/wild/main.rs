//! Inputs that once broke something, found by the fuzz targets in `fuzz/`, and every demo file as it is: each is fed to its
//! entrance. A finding is mended and its input kept in `tests/wild/<entrance>/`.

mod feed;

use std::path::{Path, PathBuf};

fn files(folder: &str) -> Vec<PathBuf> {
    let Ok(entries) = std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)) else { return Vec::new() };
    let mut files: Vec<PathBuf> = entries.map(|e| e.unwrap().path()).filter(|p| p.is_file()).collect();
    files.sort();
    files
}

/// Feeds every file of some folders.
fn replay(entrance: fn(&[u8]), folders: &[&str]) {
    let files: Vec<PathBuf> = folders.iter().flat_map(|folder| files(folder)).collect();
    assert!(!files.is_empty(), "nothing in {folders:?}");
    for file in files {
        println!("{}", file.display());
        entrance(&std::fs::read(&file).unwrap());
    }
}

#[test]
fn jobs_are_answered() {
    replay(feed::job, &["demo", "tests/cases", "tests/wild/job"]);
}

#[test]
fn machines_are_answered() {
    replay(feed::machine, &["demo/machines", "tests/wild/machine"]);
}

#[test]
fn readings_are_answered() {
    replay(feed::readings, &["demo/readings", "tests/wild/readings"]);
}

#[test]
fn stored_plans_are_answered() {
    // Other files of the folders are no plans, which is answered too.
    replay(feed::plan, &["plans/feed-roller-shaft", "plans/drive-hub", "plans/collared-rod", "tests/wild/plan"]);
}

#[test]
fn drawings_are_answered() {
    replay(feed::drawing, &["tests/drawings", "tests/wild/drawing"]);
}

#[test]
fn tables_are_answered() {
    replay(feed::table, &["tests/drawings", "tests/wild/table"]);
}

#[test]
#[cfg(feature = "page")]
fn bodies_are_answered() {
    replay(feed::page, &["tests/wild/page"]);
}
