//! Where writing goes wrong: a full disk, a folder that takes nothing, a pipe or a device in the way, Ctrl-C. One message, the
//! right status, nothing half-written.

#[cfg(unix)]
use super::ends::{Running, run, until};
#[cfg(unix)]
use super::jobs;
use super::{GOOD, call, names};
use std::ffi::OsString;
#[cfg(unix)]
use std::io::Write;
use std::path::Path;
#[cfg(unix)]
use std::process::{Command, Output, Stdio};

#[cfg(unix)]
const PROGRAM: &str = env!("CARGO_BIN_EXE_spanhold");

/// Runs a script with the program as `$1` and a folder on a file system of its own as `$2`; none where nobody may mount one.
#[cfg(unix)]
fn on_a_mount(options: &str, script: &str) -> Option<Output> {
    let dir = tempfile::tempdir().expect("a folder");
    let whole = format!(
        "mount -t tmpfs -o size=4m none \"$2\" || exit 77
        cp {0}/{GOOD} {0}/bench-12.yaml \"$2\"
        mount -o remount,{options} \"$2\" || exit 77
        {script}",
        jobs().display()
    );
    let there = Command::new("unshare").arg("--version").output().is_ok();
    let mut mounted = Command::new("unshare");
    mounted.args(["-m", "sh", "-c", &whole, "sh", PROGRAM]).arg(dir.path());
    let output = there.then(|| run(&mut mounted));
    let output = output.filter(|o| o.status.code() != Some(77) && !text(&o.stderr).contains("unshare"));
    if output.is_none() {
        assert!(std::env::var_os("SPANHOLD_NEEDS_TOOLS").is_none(), "a file system can be mounted");
        println!("left out: no file system can be mounted");
    }
    output
}

#[cfg(unix)]
fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

#[test]
#[cfg(unix)]
fn on_a_full_disk_nothing_is_left_and_the_old_stays() {
    let script = r#"cd "$2"
        mkdir old; echo old > old/plan.json
        head -c 3900k /dev/zero > fills 2>/dev/null; head -c 400k /dev/zero > more 2>/dev/null
        "$1" plan stirrer-rod.yaml --out old; echo "plan $?"
        "$1" new job.yaml; echo "new $?"
        cat old/plan.json; ls -A . old"#;
    let Some(output) = on_a_mount("size=4m", script) else { return };
    let (out, err) = (text(&output.stdout), text(&output.stderr));
    assert_eq!(
        out, "plan 2\nnew 2\nold\n.:\nbench-12.yaml\nfills\nmore\nold\nstirrer-rod.yaml\n\nold:\nplan.json\n",
        "{err}"
    );
    assert_eq!(err.matches("No space left").count(), 2, "{err}");
    assert_eq!(err.matches("cannot be written").count(), 2, "{err}");
}

#[test]
#[cfg(unix)]
fn lines_on_a_full_disk_stay_whole_and_the_run_can_go_on() {
    let script = r#"cd "$2"
        head -c 3900k /dev/zero > fills
        "$1" batch $(yes stirrer-rod.yaml | head -12) --out lines; echo "batch $?"
        rm fills
        "$1" batch $(yes stirrer-rod.yaml | head -12) --out lines --resume; echo "again $?"
        wc -l < lines; tail -c 1 lines | od -An -c"#;
    let Some(output) = on_a_mount("size=4m", script) else { return };
    let (out, err) = (text(&output.stdout), text(&output.stderr));
    assert_eq!(out.split_whitespace().collect::<Vec<_>>(), ["batch", "2", "again", "0", "12", "\\n"], "{err}");
    assert!(err.contains("No space left") && err.contains("--resume"), "{err}");
}

#[test]
#[cfg(unix)]
fn a_folder_that_takes_nothing_is_told() {
    let script = r#"cd "$2"
        for call in "plan stirrer-rod.yaml --out ." "plan stirrer-rod.yaml --out below" "new job.yaml" \
            "batch stirrer-rod.yaml --out lines"; do "$1" $call; echo "$?"; done
        ls -A ."#;
    let Some(output) = on_a_mount("ro", script) else { return };
    let (out, err) = (text(&output.stdout), text(&output.stderr));
    assert_eq!(out, "2\n2\n2\n2\nbench-12.yaml\nstirrer-rod.yaml\n", "{err}");
    assert_eq!(err.matches("Read-only file system").count(), 4, "{err}");
}

/// What a full device does to a result: it is no result, and the status says so.
#[test]
#[cfg(target_os = "linux")]
fn a_result_that_could_not_be_printed_is_no_result() {
    let full = std::fs::File::options().write(true).open("/dev/full").expect("the system has it");
    for args in [
        &["plan", GOOD][..],
        &["plan", GOOD, "--format", "json"],
        &["check", GOOD],
        &["new"],
        &["--help"],
        &["batch", GOOD],
    ] {
        let full = full.try_clone().expect("the same device");
        let mut command = Command::new(PROGRAM);
        command.current_dir(jobs()).args(args).stdin(Stdio::null()).stdout(full).stderr(Stdio::piped());
        let output = Running::start(&mut command).output();
        let err = text(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{args:?}: {err}");
        assert!(
            err.lines().count() == 1 && err.contains("could not be printed") || err.contains("cannot be written"),
            "{args:?}: {err}"
        );
    }
}

#[test]
fn nothing_is_written_over_what_is_read_or_in_the_place_of_a_device() {
    let dir = tempfile::tempdir().expect("a folder");
    let job = dir.path().join("job.yaml");
    assert_eq!(call(["new".as_ref(), job.as_os_str()]).status, 0);
    let before = std::fs::read(&job).expect("readable");
    let other_way = dir.path().join(".").join("job.yaml");
    for option in ["--out", "--map"] {
        let called = call(["batch".as_ref(), job.as_os_str(), option.as_ref(), other_way.as_os_str()]);
        assert_eq!(called.status, 2, "{option}: {}", called.err);
        assert!(called.err.contains("would be overwritten"), "{option}: {}", called.err);
    }
    assert_eq!(std::fs::read(&job).expect("readable"), before);
    // A device or a folder in the place of the map is told before the work, not behind it.
    let device = Path::new(if cfg!(windows) { "nul" } else { "/dev/null" });
    for place in [device, dir.path()] {
        let called = call(["batch".as_ref(), GOOD.as_ref(), "--map".as_ref(), place.as_os_str()]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{}", called.err);
        assert!(called.err.contains("is a folder") || called.err.contains("not a file"), "{}", called.err);
    }
    assert_eq!(names(dir.path()), ["job.yaml"]);
}

#[test]
fn a_file_may_have_any_name_the_system_takes() {
    let dir = tempfile::tempdir().expect("a folder");
    let long = format!("{}.yaml", "w".repeat(250));
    let mut taken: Vec<OsString> = Vec::from(["Welle Ø18 軸.yaml", "-- x.yaml", &long].map(OsString::from));
    if cfg!(unix) {
        taken.extend(["-- 'x'.yaml", "nul.yaml"].map(OsString::from));
    }
    #[cfg(unix)]
    taken.push(std::os::unix::ffi::OsStringExt::from_vec(b"a\xff\xfe.yaml".to_vec()));
    for name in taken {
        let path = dir.path().join(name);
        assert_eq!(call(["new".as_ref(), path.as_os_str()]).status, 0);
        assert!(path.is_file(), "{}", path.display());
        assert_eq!(call(["check".as_ref(), path.as_os_str()]).status, 0, "{}", path.display());
        std::fs::remove_file(&path).expect("there");
    }
    assert_eq!(names(dir.path()), [""; 0]);
}

#[test]
#[cfg(unix)]
fn a_reader_of_lines_that_has_seen_enough_ends_the_run() {
    let script = r#""$1" batch $(yes stirrer-rod.yaml | head -300) | head -1 | cut -c 1-8"#;
    let output = run(Command::new("sh").current_dir(jobs()).args(["-c", script, "sh", PROGRAM]));
    assert_eq!(text(&output.stdout), "{\"file\":\n");
    let err = text(&output.stderr);
    assert!(!err.contains("cannot be written") && !err.contains("panicked"), "{err}");
}

/// Ctrl-C in the middle of many jobs: whole lines, one message, the status of a shell; and the run can go on.
#[test]
#[cfg(unix)]
fn an_interrupted_batch_leaves_whole_lines_and_says_so() {
    let dir = tempfile::tempdir().expect("a folder");
    let lines = dir.path().join("lines.jsonl");
    let count = || std::fs::read(&lines).map_or(0, |b| b.iter().filter(|b| **b == b'\n').count());
    // Where this test itself runs with Ctrl-C ignored, as in the background of a script, the program must not.
    let mut command = Command::new("env");
    command.args(["--default-signal=INT", PROGRAM, "batch", "-", "--out"]).arg(&lines);
    command.current_dir(jobs()).stdin(Stdio::piped()).stdout(Stdio::null()).stderr(Stdio::piped());
    let mut running = Running::start(&mut command);
    // Jobs without end: it is never done before it is interrupted, however slow this test is.
    let mut feed = running.feed();
    let feeding = std::thread::spawn(move || while writeln!(feed, "{GOOD}").is_ok() {});
    until("three lines are written", || count() >= 3);
    let id = running.id().to_string();
    assert!(Command::new("kill").args(["-INT", &id]).status().expect("kill").success());
    let output = running.output();
    feeding.join().expect("it ends with the pipe");
    let err = text(&output.stderr);
    assert_eq!(output.status.code(), Some(130), "{err}");
    assert_eq!(err.trim_end().lines().count(), 1, "{err}");
    assert!(err.starts_with("Interrupted") && err.contains("lines.jsonl") && err.contains("--resume"), "{err}");
    let written = std::fs::read_to_string(&lines).expect("readable");
    assert!(written.ends_with("}\n") && count() >= 3);
    for line in written.lines() {
        assert!(serde_json::from_str::<serde_json::Value>(line).is_ok(), "{line}");
    }
}
