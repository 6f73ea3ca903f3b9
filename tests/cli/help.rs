//! `help` with its topics, the same tables in `docs/`, `materials`, completions and man pages.

use super::{COLUMNS, GOOD, call, names};
use spanhold::fields;
use spanhold::reference::{TOPICS, Topic};
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

const SHELLS: [&str; 5] = ["bash", "zsh", "fish", "powershell", "elvish"];

#[test]
fn every_topic_is_told_within_the_columns() {
    for (name, topic) in TOPICS {
        let called = call(["help", name]);
        assert_eq!((called.status, called.err.as_str()), (0, ""), "{name}");
        assert_eq!(called.out, topic.text(COLUMNS), "{name}");
        let wide: Vec<&str> = called.out.lines().filter(|l| l.chars().count() > COLUMNS).collect();
        assert!(wide.is_empty(), "{name}: {wide:#?}");
    }
    assert!(call(["help", "checks"]).out.contains("limits.whirl_ratio"));
    assert!(call(["help", "plan-file"]).out.contains("`stages[].grip`"));
    let told = ["job", "machine", "shop", "readings"]
        .map(|topic| (topic, Topic::named(topic).expect("a topic").text(COLUMNS)));
    for field in fields::ALL {
        let (topic, told) = told.iter().find(|(t, _)| field.path.starts_with(&format!("{t}."))).unwrap_or(&told[0]);
        let row = format!("  {} ", field.key());
        assert!(told.lines().any(|l| l.starts_with(&row)), "{}: not in {topic}", field.path);
    }
}

/// The example in a topic: from its remark to the next empty line.
fn example(topic: &str) -> String {
    let told = call(["help", topic]).out;
    let start = told.find("# An example").expect("an example");
    told[start..].lines().take_while(|l| !l.is_empty()).map(|l| format!("{l}\n")).collect()
}

#[test]
fn the_examples_can_be_used_as_they_are() {
    let dir = tempfile::tempdir().expect("a folder");
    for topic in ["job", "machine", "shop", "readings"] {
        std::fs::write(dir.path().join(format!("{topic}.yaml")), example(topic)).expect("written");
    }
    for command in [["check", "job.yaml"], ["fit", "readings.yaml"]] {
        let called = super::call_in(dir.path(), command);
        assert_eq!(called.status, 0, "{command:?}: {}{}", called.out, called.err);
    }
}

#[test]
fn help_on_a_command_is_that_of_the_command() {
    assert_eq!(call(["help"]).out, call(["--help"]).out);
    for command in ["plan", "check", "completions", "help"] {
        let (topic, own) = (call(["help", command]), call([command, "--help"]));
        assert_eq!((topic.status, topic.out, topic.err), (0, own.out, own.err), "{command}");
    }
}

#[test]
fn an_unknown_topic_is_told_with_all_that_are_known() {
    let called = call(["help", "machin"]);
    assert_eq!((called.status, called.out.as_str()), (2, ""));
    let first = "There is no help on `machin`. Did you mean `machine`? Topics: job, machine, shop, readings, ";
    assert!(called.err.starts_with(first), "{}", called.err);
    assert!(called.err.contains("plan-file. Commands: plan, check, "), "{}", called.err);
}

#[test]
fn materials_are_listed_by_a_word() {
    let all = call(["materials"]);
    assert_eq!((all.status, all.err.as_str()), (0, ""));
    assert!(all.out.lines().all(|l| l.chars().count() <= COLUMNS), "{}", all.out);
    assert!(call(["help", "materials"]).out.ends_with(&all.out));
    let steel = call(["materials", "c45", "--format", "json"]).json();
    let steel = steel.as_array().expect("a list");
    assert_eq!(steel.len(), 1, "{steel:?}");
    assert_eq!((&steel[0]["name"], &steel[0]["group"]), (&"C45".into(), &"steel".into()));
    assert_eq!((steel[0]["kc11"].as_f64(), steel[0]["vc"][1].as_f64()), (Some(2220.0), Some(220.0)));
    // Without a word, no sources: they would fill the screen.
    assert!(all.out.contains("stainless steel:\n") && !all.out.contains("Poisson's"), "{}", all.out);
    assert!(all.out.contains("`spanhold materials WORD`"), "{}", all.out);
    let one = call(["materials", "JIS SUS303"]).out;
    assert!(one.contains("X8CrNiS18-9 (stainless steel, solution annealed)") && one.contains("no source"), "{one}");
    assert!(one.contains("Other names: X10CrNiS18-9, AISI 303, UNS S30300."), "{one}");
    let every = call(["materials", "--format", "json"]).json();
    assert!(every.as_array().is_some_and(|rows| rows.len() >= 60 && rows.iter().all(|row| row["source"].is_string())));
    let none = call(["materials", "unobtainium"]);
    assert_eq!((none.status, none.out.as_str()), (2, ""));
    assert!(none.err.contains("No built-in material matches `unobtainium`"), "{}", none.err);
}

const END: &str = "<!-- end -->";

/// A page with every block of keys made anew, and the names of the blocks.
fn renewed(page: &str, name: &str) -> (String, Vec<String>) {
    let (mut out, mut rest, mut found) = (String::new(), page, Vec::new());
    while let Some(at) = rest.find("<!-- keys: ") {
        let line = rest[at..].lines().next().unwrap_or_default();
        let topic = line.trim_start_matches("<!-- keys: ").trim_end_matches("-->").trim();
        let known = Topic::named(topic).unwrap_or_else(|| panic!("{name}: no keys are known of `{topic}`"));
        let behind = &rest[at + line.len()..];
        let end = behind.find(END).unwrap_or_else(|| panic!("{name}: no {END} behind {line}"));
        out += &format!("{}{line}\n\n{}\n{END}", &rest[..at], known.markdown());
        found.push(topic.to_owned());
        rest = &behind[end + END.len()..];
    }
    (out + rest, found)
}

/// The tables of keys in `docs/` are those of the program. `SPANHOLD_BLESS=1` writes them anew.
#[test]
fn the_tables_of_the_documentation_are_current() {
    let docs = Path::new(env!("CARGO_MANIFEST_DIR")).join("docs");
    let mut found = Vec::new();
    for file in names(&docs).into_iter().filter(|name| name.ends_with(".md")) {
        let path = docs.join(&file);
        let page = std::fs::read_to_string(&path).expect("readable");
        let (new, blocks) = renewed(&page, &file);
        if new != page && std::env::var_os("SPANHOLD_BLESS").is_some() {
            std::fs::write(&path, &new).expect("written");
        } else {
            assert!(new == page, "docs/{file} is not current: run this test with SPANHOLD_BLESS=1");
        }
        found.extend(blocks.into_iter().map(|block| format!("{file}: {block}")));
    }
    for block in ["job.md: job", "machine.md: machine", "materials.md: materials"] {
        assert!(found.iter().any(|f| f == block), "docs has no block of keys `{block}`: {found:?}");
    }
}

#[test]
fn a_stale_block_of_keys_is_renewed_and_nothing_else() {
    let page = format!("# A\n\n<!-- keys: checks -->\nold\n{END}\n\nText.\n");
    let (new, found) = renewed(&page, "a.md");
    assert_eq!(found, ["checks"]);
    assert!(
        new.starts_with("# A\n\n<!-- keys: checks -->\n\n| check |")
            && new.ends_with(&format!("|\n\n{END}\n\nText.\n")),
        "{new}"
    );
    assert_eq!(renewed(&new, "a.md").0, new);
}

/// What a program prints on stderr about a text; none where there is no such program.
fn complaint(program: &str, args: &[&str], text: &str) -> Option<String> {
    let mut command = Command::new(program);
    let command = command.args(args).stdin(Stdio::piped()).stdout(Stdio::null()).stderr(Stdio::piped());
    let mut child = command.spawn().ok()?;
    std::io::Write::write_all(&mut child.stdin.take().expect("piped"), text.as_bytes()).expect("it reads");
    let output = child.wait_with_output().expect("it ends");
    let told = String::from_utf8_lossy(&output.stderr).into_owned();
    Some(if output.status.success() { told } else { format!("{program} fails: {told}") })
}

#[test]
fn completions_know_commands_options_and_topics() {
    for shell in SHELLS {
        let called = call(["completions", shell]);
        assert_eq!((called.status, called.err.as_str()), (0, ""), "{shell}");
        for word in ["recheck", "resume", "plan-file", "completions"] {
            assert!(called.out.contains(word), "{shell}: no {word}");
        }
        if ["bash", "zsh", "fish"].contains(&shell) {
            let told = complaint(shell, &["-n"], &called.out).unwrap_or_default();
            assert_eq!(told, "", "{shell}");
        }
    }
    assert_eq!(call(["completions", "ksh"]).status, 2);
}

#[test]
fn man_pages_are_those_of_the_program_and_of_each_command() {
    let dir = tempfile::tempdir().expect("a folder");
    let into: PathBuf = dir.path().join("man1");
    let called = call(["man".as_ref(), "--out".as_ref(), into.as_os_str()]);
    assert_eq!((called.status, called.out.as_str(), called.err.as_str()), (0, "", ""));
    let pages = names(&into);
    assert!(pages.len() > 12 && pages.contains(&"spanhold.1".to_owned()), "{pages:?}");
    for page in &pages {
        let text = std::fs::read_to_string(into.join(page)).expect("readable");
        let command = page.trim_end_matches(".1").trim_start_matches("spanhold").trim_start_matches('-');
        let printed = if command.is_empty() { call(["man"]) } else { call(["man", command]) };
        assert_eq!((printed.status, &printed.out), (0, &text), "{page}");
        assert!(text.contains(&format!(".TH {} 1 ", page.trim_end_matches(".1"))), "{page}: {text}");
        let told = complaint("groff", &["-man", "-Tascii", "-ww", "-Kutf8"], &text).unwrap_or_default();
        assert_eq!(told, "", "{page}");
    }
    let wrong = call(["man", "plann"]);
    assert_eq!((wrong.status, wrong.out.as_str()), (2, ""));
    assert!(wrong.err.contains("There is no command `plann`"), "{}", wrong.err);
    let over = call(["man", "--out", GOOD]);
    assert!(over.status == 2 && over.err.contains("cannot be made"), "{}", over.err);
}
