//! The README says what the program does: its commands, every key with range and default, every key of the plan file.

use super::{call, results};
use spanhold::fields;

fn readme() -> String {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/README.md");
    std::fs::read_to_string(path).expect("the README is there")
}

/// Each number of job and machine file has a row: key, meaning, unit, range, and its default where it has one.
#[test]
fn every_number_has_its_row() {
    let readme = readme();
    for field in fields::ALL {
        let row = format!("| `{}` | {} | {} | {} to {} | ", field.path, field.what, field.unit, field.min, field.max);
        let rest = readme.lines().find_map(|l| l.strip_prefix(&row));
        let rest = rest.unwrap_or_else(|| panic!("README.md has no row that begins with\n{row}"));
        match field.default {
            Some(default) => {
                let told = rest.trim_end_matches(" |").split(',').next().unwrap_or(rest);
                assert_eq!(told, default.to_string(), "{}", field.path);
            }
            None => assert!(rest.len() > 4, "{}: what holds where it is left out?", field.path),
        }
    }
}

#[test]
fn the_first_commands_are_two_and_every_command_is_listed() {
    let readme = readme();
    let first = readme.split("```sh\n").nth(1).and_then(|t| t.split("```").next()).expect("a block of commands");
    assert_eq!(first, "cargo run --release -- plan demo/feed-roller-shaft.yaml\ncargo test\n");
    let help = call(["--help"]).out;
    let commands: Vec<&str> = help
        .lines()
        .skip_while(|l| *l != "Commands:")
        .skip(1)
        .take_while(|l| l.starts_with("  "))
        .filter_map(|l| l.split_whitespace().next())
        .filter(|c| *c != "help")
        .collect();
    assert!(commands.len() >= 6, "{commands:?}");
    for command in commands {
        let row = readme.lines().find(|l| l.starts_with(&format!("| `spanhold {command} ")));
        let row = row.unwrap_or_else(|| panic!("README.md does not list `{command}`"));
        let own = call([command, "--help"]).out;
        for word in own.split_whitespace().filter(|w| w.starts_with("--")) {
            let option = word.trim_end_matches([',', '.']);
            let general = matches!(option, "--help" | "--machine");
            assert!(general || row.contains(option), "{command}: README.md does not tell of {option}");
        }
    }
}

#[test]
fn every_key_of_the_plan_file_is_told() {
    let readme = readme();
    let file = readme.split("## The plan file").nth(1).expect("its chapter");
    let list = results::plan_list();
    let keys: Vec<&str> = list
        .lines()
        .filter_map(|l| l.trim().trim_start_matches('*').split(' ').next())
        // Outlines and trace serve the drawing; their keys stand in the documentation of the sources.
        .filter(|p| !["shaft.", "layout.", "trace["].iter().any(|d| p.starts_with(d)))
        .filter_map(|p| p.rsplit('.').next())
        .map(|k| k.trim_end_matches("[]"))
        .filter(|k| !k.is_empty())
        .collect();
    assert!(keys.len() > 80, "{}", keys.len());
    for key in keys {
        assert!(file.contains(&format!("`{key}`")) || file.contains(&format!("`{key}[]`")), "`{key}` is not told");
    }
}

/// No link leads nowhere.
#[test]
fn every_link_leads_to_a_file() {
    let mut links = 0;
    let pages = [
        "README.md",
        "DEVELOPERS.md",
        "demo/README.md",
        "benches/README.md",
        "tests/README.md",
        "docs/model.md",
        "docs/decisions.md",
    ];
    for name in pages {
        let path = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
        let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{name}: {e}"));
        let targets = text.split("](").skip(1).filter_map(|t| t.split(')').next());
        for target in targets.filter(|t| !t.starts_with("http") && !t.starts_with('#')) {
            let file = path.with_file_name(target.split('#').next().unwrap_or(target));
            assert!(file.exists(), "{name}: {target}");
            links += 1;
        }
    }
    assert!(links >= 10, "only {links} links were followed");
}
