//! Inputs that once broke something, found by the fuzz targets in `fuzz/`, and every demo file as it is: each is fed to its
//! entrance. A finding is mended and its input kept in `tests/wild/<entrance>/`.

mod feed;

use std::path::{Path, PathBuf};

fn files(folder: &str) -> Vec<PathBuf> {
    // An entrance of which nothing was ever found has no folder.
    let Ok(entries) = std::fs::read_dir(Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)) else { return Vec::new() };
    let mut files: Vec<PathBuf> = entries.map(|e| e.unwrap().path()).filter(|p| p.is_file()).collect();
    files.sort();
    files
}

/// A job or readings with the machine in it that the file names, since no path leads anywhere from an entrance; a job with stations so far
/// apart that it is planned there. None where it names no machine file.
fn whole(file: &Path) -> Option<Vec<u8>> {
    let text = std::fs::read_to_string(file).ok()?;
    let line = text.lines().find(|l| l.starts_with("machine: ") && l.ends_with(".yaml"))?;
    let machine = std::fs::read_to_string(file.with_file_name(&line["machine: ".len()..])).ok()?;
    let inner: String = machine.lines().map(|l| format!("  {l}\n")).collect();
    let text = text.replacen(line, &format!("machine:\n{inner}"), 1);
    let mut lines: Vec<&str> = text.lines().filter(|l| !l.starts_with("planning: ")).collect();
    lines.extend(text.contains("\nshaft:").then_some("planning: {station_pitch: 100}"));
    Some((lines.join("\n") + "\n").into_bytes())
}

/// Feeds every file of some folders as it is, and with its machine in it; so many at least come through.
fn replay(entrance: fn(&[u8]) -> bool, folders: &[&str], least: usize) {
    let mut through = 0;
    for file in folders.iter().flat_map(|folder| files(folder)) {
        for bytes in [Some(std::fs::read(&file).unwrap()), whole(&file)].into_iter().flatten() {
            let came = entrance(&bytes);
            println!("{}{}", file.display(), if came { "" } else { ": refused" });
            through += usize::from(came);
        }
    }
    assert!(through >= least, "only {through} files of {folders:?} came through");
}

#[test]
fn jobs_are_answered() {
    replay(feed::job, &["demo", "tests/cases", "tests/cli/jobs", "tests/wild/job"], 6);
}

#[test]
fn machines_are_answered() {
    replay(feed::machine, &["demo/machines", "tests/wild/machine"], 4);
}

#[test]
fn readings_are_answered() {
    replay(feed::readings, &["demo/readings", "tests/wild/readings"], 1);
}

#[test]
fn stored_plans_are_answered() {
    // Other files of the folders are no plans, which is answered too.
    replay(feed::plan, &["plans/feed-roller-shaft", "plans/drive-hub", "plans/collared-rod", "tests/wild/plan"], 3);
}

#[test]
fn drawings_are_answered() {
    replay(feed::drawing, &["tests/drawings", "tests/wild/drawing"], 5);
}

#[test]
fn tables_are_answered() {
    replay(feed::table, &["tests/drawings", "tests/wild/table"], 2);
}

#[test]
#[cfg(feature = "page")]
fn bodies_are_answered() {
    replay(feed::page, &["tests/wild/page"], 4);
}
