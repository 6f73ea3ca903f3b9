//! No file of a user's own is lost: nothing is written over what is read or over what is something else, two calls do not write
//! into one file, and files of a folder are replaced together or not at all.

#[cfg(unix)]
use super::ends::run;
use super::ends::{HANGS_AFTER, Running, until};
use super::{GOOD, call_in, changed, jobs, names};
use std::io::Write;
use std::path::Path;
#[cfg(unix)]
use std::process::Output;
use std::process::{Command, Stdio};

const PROGRAM: &str = env!("CARGO_BIN_EXE_spanhold");

/// A folder with the good job as `job.yaml`, and its machine.
fn folder() -> tempfile::TempDir {
    changed("shaft:", "shaft:")
}

fn text(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}

/// The call is refused, says so, prints nothing, and leaves the folder as it was.
fn refused(dir: &Path, args: &[&str], says: &str) {
    let state = || -> Vec<(String, Vec<u8>)> {
        let read = |name: &String| std::fs::read(dir.join(name)).unwrap_or_default();
        names(dir).into_iter().map(|name| (name.clone(), read(&name))).collect()
    };
    let before = state();
    let called = call_in(dir, args);
    assert_eq!((called.status, called.out.as_str()), (2, ""), "{args:?}: {}", called.err);
    assert!(called.err.contains(says), "{args:?}: {}", called.err);
    assert_eq!(state(), before, "{args:?}");
}

#[test]
fn what_a_job_names_is_read_and_not_written_over() {
    let dir = folder();
    for option in ["--out", "--map"] {
        for machine in ["bench-12.yaml", "./bench-12.yaml"] {
            refused(dir.path(), &["batch", "job.yaml", option, machine], "would be overwritten");
        }
    }
    std::fs::copy(dir.path().join("job.yaml"), dir.path().join("plan.json")).expect("copied");
    refused(dir.path(), &["plan", "plan.json", "--out", "."], "would be overwritten");
    std::fs::copy(dir.path().join("bench-12.yaml"), dir.path().join("plan.svg")).expect("copied");
    refused(dir.path(), &["plan", "job.yaml", "--machine", "plan.svg", "--out", "."], "would be overwritten");
}

#[test]
fn lines_and_maps_are_written_over_their_like_alone() {
    let dir = folder();
    std::fs::write(dir.path().join("notes.txt"), "of my own\n").expect("written");
    refused(dir.path(), &["batch", "job.yaml", "--out", "notes.txt"], "does not have lines of `batch`");
    std::fs::copy(jobs().join(GOOD), dir.path().join("family.yaml")).expect("copied");
    let vary = "\nvary: {length: {section: 1, from: 10, to: 20, step: 10}}\n";
    let mut family = std::fs::File::options().append(true).open(dir.path().join("family.yaml")).expect("there");
    family.write_all(vary.as_bytes()).expect("written");
    refused(dir.path(), &["batch", "family.yaml", "--map", "notes.txt"], "is not a drawing");
    // Twice the same place is one too few, however it is written.
    refused(dir.path(), &["batch", "family.yaml", "--out", "o.svg", "--map", "./o.svg"], "have the same file");
    // Their like, and what is empty, is written anew.
    std::fs::write(dir.path().join("lines"), "").expect("written");
    for _ in 0..2 {
        let called = call_in(dir.path(), ["batch", "family.yaml", "--out", "lines", "--map", "map.svg"]);
        assert_eq!(called.status, 0, "{}", called.err);
        assert_eq!(text(&dir.path().join("lines")).lines().count(), 2);
    }
    // What a list on stdin names is not known before it is read.
    let fed = |list: &'static str, out: &str| {
        let mut command = assert_cmd::Command::new(PROGRAM);
        command.current_dir(dir.path()).args(["batch", "-", "--out", out]).write_stdin(list);
        command.timeout(HANGS_AFTER).output().expect("it starts").status.code()
    };
    let before = (text(&dir.path().join("job.yaml")), text(&dir.path().join("bench-12.yaml")));
    assert_eq!((fed("job.yaml\n", "job.yaml"), fed("job.yaml\n", "bench-12.yaml")), (Some(2), Some(2)));
    assert_eq!((text(&dir.path().join("job.yaml")), text(&dir.path().join("bench-12.yaml"))), before);
}

#[test]
#[cfg(unix)]
fn a_link_is_another_spelling() {
    use std::os::unix::fs::symlink;
    let dir = folder();
    symlink("bench-12.yaml", dir.path().join("soft")).expect("linked");
    std::fs::hard_link(dir.path().join("bench-12.yaml"), dir.path().join("hard")).expect("linked");
    symlink("later.svg", dir.path().join("to-later")).expect("linked");
    for link in ["soft", "hard"] {
        refused(dir.path(), &["batch", "job.yaml", "--out", link], "would be overwritten");
    }
    refused(dir.path(), &["batch", "job.yaml", "--out", "later.svg", "--map", "to-later"], "have the same file");
}

/// The second call is refused while the first writes, whichever way it was called, and may go on behind it.
#[test]
fn two_calls_do_not_write_into_one_file() {
    let dir = folder();
    // The first waits for its jobs with the file open.
    let mut first = Command::new(PROGRAM);
    first.current_dir(dir.path()).args(["batch", "-", "--out", "lines"]);
    let mut first = Running::start(first.stdin(Stdio::piped()).stderr(Stdio::piped()));
    let mut feed = first.feed();
    feed.write_all(b"job.yaml\n").expect("fed");
    until("the first has written a line", || std::fs::read(dir.path().join("lines")).is_ok_and(|b| b.ends_with(b"\n")));
    for more in [&["--resume"][..], &[]] {
        let args = [&["batch", "job.yaml", "--out", "lines"], more].concat();
        refused(dir.path(), &args, "Another call is writing into `lines`");
    }
    drop(feed);
    let ended = first.output();
    assert_eq!(ended.status.code(), Some(0), "{}", String::from_utf8_lossy(&ended.stderr));
    assert_eq!(text(&dir.path().join("lines")).lines().count(), 1);
}

/// A shell with the program as `$1` in a folder.
#[cfg(unix)]
fn shell(dir: &Path, script: &str) -> Output {
    run(Command::new("sh").current_dir(dir).args(["-c", script, "sh", PROGRAM]))
}

/// A file that may not grow further is an error of writing as any other.
#[test]
#[cfg(unix)]
fn the_limit_of_a_files_size_is_told() {
    let dir = folder();
    let script = r#"ulimit -f 4; "$1" plan job.yaml --out full; echo "plan $?"
        "$1" batch job.yaml job.yaml --out lines; echo "batch $?"; ls -A full; wc -c < lines"#;
    let output = shell(dir.path(), script);
    let (out, err) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    assert_eq!(out.split_whitespace().collect::<Vec<_>>(), ["plan", "2", "batch", "2", "0"], "{err}");
    assert_eq!(err.matches("File too large").count(), 2, "{err}");
    assert!(err.contains("full/plan.json") && !err.contains(".part"), "{err}");
}

/// Where one file of a folder cannot be replaced, none is.
#[test]
#[cfg(unix)]
fn in_a_folder_of_many_users_files_are_replaced_together() {
    let dir = folder();
    let script = r#"[ "$(id -u)" = 0 ] && command -v setpriv > /dev/null || exit 77
        chmod 755 . && cp "$1" spanhold && mkdir -m 1777 shared && "$1" plan job.yaml --out shared > /dev/null || exit 1
        chown 65534 shared/plan.json; sed 's/revision: A/revision: REPLACED-BY-ANOTHER/' job.yaml > other.yaml; chmod a+r *.yaml
        setpriv --reuid=65534 --regid=65534 --clear-groups ./spanhold plan other.yaml --out shared; echo "status $?"
        grep -l REPLACED-BY-ANOTHER shared/*; ls -A shared"#;
    let output = shell(dir.path(), script);
    if output.status.code() == Some(77) {
        assert!(std::env::var_os("SPANHOLD_NEEDS_TOOLS").is_none(), "another user can be taken on");
        println!("left out: no other user can be taken on");
        return;
    }
    let (out, err) = (String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr));
    let expected = [&["status", "2"][..], super::folder::FILES].concat();
    let told: Vec<&str> = out.split_whitespace().collect();
    assert!(
        err.contains("stages.csv") && told.starts_with(&expected[..2]) && told.ends_with(&expected[2..]),
        "{out}{err}"
    );
    assert_eq!(told.len(), expected.len(), "a mixed folder, or something left: {out}{err}");
}

/// The name of a file on its way was that of the process and a number: a link of that name led the bytes elsewhere.
#[test]
#[cfg(unix)]
fn a_link_laid_in_the_way_of_a_new_file_is_not_followed() {
    let dir = folder();
    let script = r#"echo precious > precious; mkdir public
        for i in 0 1 2; do ln -s ../precious "public/.spanhold-$$-$i.part"; done; exec "$1" new public/n.yaml"#;
    assert!(shell(dir.path(), script).status.success());
    assert_eq!(text(&dir.path().join("precious")), "precious\n");
    assert!(!dir.path().join("public/n.yaml").symlink_metadata().expect("there").is_symlink());
}
