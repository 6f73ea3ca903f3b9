//! Whatever is fed in: nothing that steers a terminal, and nothing that turns or hides text, comes out of any entrance.

use super::{GOOD, call_in, changed, ends};
use assert_cmd::Command;
use std::path::Path;

/// ESC, BEL, DEL, NEL, the C1 form of ESC [, a direction override and its end, line separators, a byte order mark.
const STEERS: [char; 12] = [
    '\u{1b}', '\u{7}', '\u{7f}', '\u{85}', '\u{9b}', '\u{200f}', '\u{202e}', '\u{2066}', '\u{2069}', '\u{2028}',
    '\u{2029}', '\u{feff}',
];

/// The program is called; its output has none of them. Gives both outputs together.
fn shown(dir: &Path, args: &[String]) -> String {
    let mut command = Command::new(env!("CARGO_BIN_EXE_spanhold"));
    let output = command.current_dir(dir).args(args).timeout(ends::HANGS_AFTER).output().expect("it starts");
    let both = [output.stdout, output.stderr].concat();
    let text = String::from_utf8(both).unwrap_or_else(|e| panic!("{args:?}: {e}"));
    let astray = text.chars().find(|c| STEERS.contains(c) || (c.is_control() && !matches!(c, '\n' | '\t')));
    assert_eq!(astray, None, "{args:?}: {text:?}");
    assert!(!text.is_empty() && !text.contains("panicked"), "{args:?}: {text}");
    text
}

fn call(dir: &Path, args: &[&str]) -> String {
    shown(dir, &args.iter().map(|a| (*a).to_owned()).collect::<Vec<_>>())
}

#[test]
fn no_entrance_lets_through_what_steers_a_terminal() {
    let mut named = 0;
    for c in STEERS {
        let dir = changed("shaft:", "shaft:");
        let write = |name: &str, text: &str| std::fs::write(dir.path().join(name), text).expect("written");
        let written_out = format!("\\u{:04x}", u32::from(c));
        // The call itself: an option, a value, the name of a file that is not there.
        assert!(call(dir.path(), &["check", &format!("--{c}]0;x")]).contains(&written_out));
        assert!(call(dir.path(), &["plan", &format!("no{c}[2J.yaml")]).contains(&written_out));
        call(dir.path(), &["plan", "job.yaml", "--format", &format!("a{c}b")]);
        call(dir.path(), &["at", "job.yaml", "--turned", "100", "--grip", "60", "--collet", &format!("a{c}b")]);
        call(dir.path(), &["draft", &format!("no{c}.dxf")]);
        // A key, a value and a text of a job; bare and in the escapes of YAML.
        let job = std::fs::read_to_string(dir.path().join("job.yaml")).expect("there");
        write("key.yaml", &format!("shaft: {{na{c}me: 1}}\n"));
        write("quoted.yaml", &format!("shaft: {{\"na\\u{:04x}me\": 1}}\n", u32::from(c)));
        write(
            "value.yaml",
            &job.replacen("machine: ", &format!("objective: \"ti\\u{:04x}me\"\nmachine: ", u32::from(c)), 1),
        );
        let name = job.lines().find(|l| l.trim_start().starts_with("name:")).expect("a name");
        write("name.yaml", &job.replacen(name, &format!("  name: \"a\\u{:04x}b\"", u32::from(c)), 1));
        write("machine.yaml", &job.replacen("bench-12.yaml", &format!("\"no\\u{:04x}.yaml\"", u32::from(c)), 1));
        for job in ["key.yaml", "quoted.yaml", "value.yaml", "name.yaml", "machine.yaml"] {
            for command in [&["check"][..], &["check", "--format", "json"], &["compare"], &["batch"], &["fit"]] {
                call(dir.path(), &[command, &[job]].concat());
            }
        }
        // A table: its name, a heading, a cell.
        let table = format!("le{c}ngth.csv");
        for text in [
            format!("le{c}ngth,diameter\n"),
            "length,diameter,name\n90,12,a\n".replace(",a\n", &format!(",\"a{c}b\"\n")),
        ] {
            write("table.csv", &text);
            call(dir.path(), &["draft", "table.csv"]);
        }
        write("stdin.yaml", &format!("no{c}.yaml\n"));
        // A file may have any of these in its name, where the system takes it.
        if std::fs::write(dir.path().join(&table), "length,diameter,name\n90,12,a\n").is_ok() {
            named += 1;
            let text = call(dir.path(), &["draft", &table]);
            assert!(text.contains(&written_out), "{text}");
            std::fs::copy(dir.path().join("job.yaml"), dir.path().join(format!("j{c}b.yaml"))).expect("copied");
            for command in ["batch", "plan", "check"] {
                call(dir.path(), &[command, &format!("j{c}b.yaml")]);
            }
            call(dir.path(), &["plan", "job.yaml", "--out", &format!("j{c}b.yaml")]);
        }
    }
    assert!(named == STEERS.len() || !cfg!(target_os = "linux"), "{named} names of files were tried");
}

#[test]
fn the_texts_of_a_drawing_are_shown() {
    let dir = tempfile::tempdir().expect("a folder");
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/drawings/r2000-inch-upright.dxf");
    let drawing = std::fs::read_to_string(path).expect("readable");
    let lines: Vec<&str> = drawing.split('\n').collect();
    // Every text of the drawing, and every name of a layer.
    for c in STEERS {
        let mut changed = 0;
        let steered: Vec<String> = lines
            .iter()
            .enumerate()
            .map(|(i, line)| {
                let code = if i % 2 == 1 { lines[i - 1].trim() } else { "" };
                let text = line.trim_end_matches('\r');
                let is_text = matches!(code, "1" | "8");
                changed += usize::from(is_text);
                if is_text { format!("{text}{c}") } else { text.to_owned() }
            })
            .collect();
        assert!(changed >= 20, "{changed} texts");
        std::fs::write(dir.path().join("d.dxf"), steered.join("\n")).expect("written");
        call(dir.path(), &["draft", "d.dxf"]);
    }
}

#[test]
fn a_stored_plan_is_shown() {
    let dir = changed("shaft:", "shaft:");
    let plan = call_in(dir.path(), ["plan", "job.yaml", "--format", "json"]).out;
    assert!(plan.contains("\"job\": \""), "{GOOD}");
    for c in STEERS {
        // Every text of the plan.
        let steered = plan.replace("\": \"", &format!("\": \"\\u{:04x}", u32::from(c)));
        std::fs::write(dir.path().join("plan.json"), steered).expect("written");
        for format in ["text", "json"] {
            call(dir.path(), &["recheck", "plan.json", "job.yaml", "--format", format]);
        }
    }
}

/// What is written out in JSON is the same text again to the one who reads it.
#[test]
fn json_keeps_what_it_shows() {
    let dir = changed("shaft:", "shaft:");
    let name = "j\u{9b}b\u{202e}.yaml";
    std::fs::copy(dir.path().join("job.yaml"), dir.path().join(name)).expect("copied");
    let called = call_in(dir.path(), ["batch", name]);
    assert_eq!(called.json()["file"], name);
    assert!(called.out.contains(r"j\u009bb\u202e.yaml"), "{}", called.out);
}
