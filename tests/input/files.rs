//! Files that are missing, too large or not text; machine files; the digest.

use std::fs;
use std::path::Path;

use spanhold::input::{Beside, read_job, read_job_with, render};

use crate::{errors, job, job_of, only};

#[test]
fn a_missing_file_a_directory_and_an_empty_file_are_told_apart() {
    let dir = tempfile::tempdir().expect("a directory");
    assert!(only(read_job(&dir.path().join("none.yaml")).expect_err("missing")).contains("does not exist"));
    assert!(only(read_job(dir.path()).expect_err("directory")).contains("is a folder"));
    for content in ["", " \n\n", "\u{feff}", "# nothing but a remark\n", "---\n"] {
        let path = dir.path().join("empty.yaml");
        fs::write(&path, content).expect("written");
        assert!(only(read_job(&path).expect_err("empty")).contains("The file is empty"), "{content:?}");
    }
}

#[test]
fn a_file_that_is_not_utf_8_is_told_with_its_line() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("latin.yaml");
    fs::write(&path, b"shaft:\n  name: B\xfcgelwelle\n").expect("written");
    assert!(only(read_job(&path).expect_err("latin-1")).contains("not UTF-8 text (first error in line 2)"));
}

#[test]
fn a_file_of_50_mb_is_refused_before_it_is_read() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("large.yaml");
    let line = "# 50 MB of remarks make no job\n";
    fs::write(&path, line.repeat(50_000_000 / line.len())).expect("written");
    assert!(only(read_job(&path).expect_err("too large")).contains("larger than 4 MiB"));
    assert!(only(errors(&line.repeat(50_000_000 / line.len()))).contains("larger than 4 MiB"));
    let machine = format!("machine: {}\n", path.display());
    let text = format!(
        "shaft: {{material: C45, sections: [{{length: 60, diameter: 12}}]}}\nstock: {{diameter: 16}}\n{machine}"
    );
    assert!(only(errors(&text)).contains("larger than 4 MiB"));
}

/// Such a file has no size that could be asked for beforehand.
#[cfg(unix)]
#[test]
fn a_file_without_end_is_refused() {
    assert!(only(read_job(Path::new("/dev/zero")).expect_err("endless")).contains("larger than 4 MiB"));
}

#[test]
fn another_machine_file_takes_the_place_of_the_jobs() {
    let dir = tempfile::tempdir().expect("a directory");
    let path = dir.path().join("job.yaml");
    fs::write(&path, job_of("  sections: [{length: 60, diameter: 12}]").replace("small", "nowhere")).expect("written");
    let machine = Path::new("tests/cases/machines/small.yaml");
    let job = read_job_with(&path, Beside { machine: Some(machine), shop: None })
        .unwrap_or_else(|diags| panic!("{}", render(&diags)));
    assert_eq!(job.machine.name, "small sliding-head lathe");
    assert!(only(read_job(&path).expect_err("no such machine")).contains("does not exist"));
    assert!(
        only(
            read_job_with(&path, Beside { machine: Some(Path::new("nowhere.yaml")), shop: None })
                .expect_err("no such machine")
        )
        .contains("does not exist")
    );
}

#[test]
fn a_machine_without_a_name_has_that_of_its_file() {
    let dir = tempfile::tempdir().expect("a directory");
    let small = fs::read_to_string("tests/cases/machines/small.yaml").expect("machine");
    let nameless: String =
        small.lines().filter(|line| !line.starts_with("name:")).map(|line| format!("{line}\n")).collect();
    fs::write(dir.path().join("long bed.yaml"), nameless).expect("written");
    let path = dir.path().join("job.yaml");
    fs::write(
        &path,
        job_of("  sections: [{length: 60, diameter: 12}]").replace("machines/small.yaml", "long bed.yaml"),
    )
    .expect("written");
    assert_eq!(read_job(&path).map(|job| job.machine.name), Ok("long bed".to_owned()));
}

/// As an editor of Windows leaves it: lines end in two characters, and a mark of the encoding stands at the head.
#[test]
fn a_job_from_an_editor_of_windows_is_the_same_job() {
    let marked = |text: &str| format!("\u{feff}{}", text.replace('\n', "\r\n"));
    let dir = tempfile::tempdir().expect("a directory");
    fs::create_dir(dir.path().join("machines")).expect("made");
    for machine in fs::read_dir("demo/machines").expect("there").map(|entry| entry.expect("readable")) {
        let text = fs::read_to_string(machine.path()).expect("text");
        fs::write(dir.path().join("machines").join(machine.file_name()), marked(&text)).expect("written");
    }
    let mut read = 0;
    for job in fs::read_dir("demo").expect("there").map(|entry| entry.expect("readable")) {
        if job.path().extension().is_none_or(|ending| ending != "yaml") {
            continue;
        }
        let text = fs::read_to_string(job.path()).expect("text");
        assert!(!text.contains('\r'), "{}", job.path().display());
        let path = dir.path().join(job.file_name());
        fs::write(&path, marked(&text)).expect("written");
        let plain = read_job(&job.path()).unwrap_or_else(|diags| panic!("{}", render(&diags)));
        let mut other = read_job(&path).unwrap_or_else(|diags| panic!("{}", render(&diags)));
        // The texts are not the same, and the digest is theirs.
        assert_ne!(other.input_digest, plain.input_digest);
        other.input_digest.clone_from(&plain.input_digest);
        assert_eq!(other, plain, "{}", job.path().display());
        read += 1;
    }
    assert!(read >= 5, "only {read} jobs");
}

/// The digests were worked out with another program, `sha256sum`, over the job text alone, and over the job text, the
/// machine text's length as eight bytes (low byte first) and the machine text.
#[test]
fn the_digest_is_that_of_the_texts() {
    let machine = "bush: {max_bar: 20, land: 20, gap: 1.5, stiffness: 80}\n\
        headstock: {nearest: 50, stroke: 200, hold: 30, stiffness: 90, max_rpm: 10000, regrip_s: 4}\n";
    let shaft = "shaft: {material: C45, sections: [{length: 60, diameter: 12}]}\nstock: {diameter: 16}\n";
    let inline = format!("{shaft}machine: {{{}}}\n", machine.trim_end().replace('\n', ", "));
    assert_eq!(job(&inline).input_digest, "sha256:ea64a7c917b4c7e85d86ba7d72ea32b75ec8a3c8c6592b5658b3ea8554af91d7");

    let dir = tempfile::tempdir().expect("a directory");
    fs::write(dir.path().join("m.yaml"), machine).expect("written");
    let path = dir.path().join("job.yaml");
    fs::write(&path, format!("{shaft}machine: m.yaml\n")).expect("written");
    assert_eq!(
        read_job(&path).map(|job| job.input_digest),
        Ok("sha256:457a05794a403f167f67cf153aefcdf09c259c54a4598babe911e61d5ab2301b".to_owned())
    );
}
