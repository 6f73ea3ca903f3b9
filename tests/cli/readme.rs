//! README and `docs/` say what the program does: its commands, every key of the plan file. Tables of keys: `help.rs`.

use super::{call, results};
use std::path::{Path, PathBuf};

/// A page of the project.
fn page(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(name);
    std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{name}: {e}"))
}

/// The first block of a page in a language.
fn block<'a>(page: &'a str, language: &str) -> &'a str {
    let rest = page.split(&format!("```{language}\n")).nth(1);
    rest.and_then(|t| t.split("```").next()).unwrap_or_else(|| panic!("no block of {language}"))
}

/// The first commands are those that other tools read. The job of five lines can be made.
#[test]
fn the_first_commands_are_two_and_the_first_job_can_be_made() {
    let readme = page("README.md");
    assert_eq!(block(&readme, "sh"), "cargo run --release -- plan demo/feed-roller-shaft.yaml\ncargo test\n");
    let job = block(&readme, "yaml");
    assert_eq!(job.lines().count(), 5, "{job}");
    assert_eq!(job, block(&page("docs/job.md"), "yaml"));
    let demo = concat!("machine: ", env!("CARGO_MANIFEST_DIR"), "/demo/");
    let folder = tempfile::tempdir().expect("a folder");
    let path = folder.path().join("my-shaft.yaml");
    std::fs::write(&path, job.replace("machine: demo/", demo)).expect("written");
    let checked = call(["check".as_ref(), path.as_os_str()]);
    assert_eq!(checked.status, 0, "{}{}", checked.out, checked.err);
}

#[test]
fn every_command_is_listed() {
    let page = page("docs/commands.md");
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
        let row = page.lines().find(|l| l.starts_with(&format!("| `spanhold {command} ")));
        let row = row.unwrap_or_else(|| panic!("docs/commands.md does not list `{command}`"));
        let own = call([command, "--help"]).out;
        for word in own.split_whitespace().filter(|w| w.starts_with("--")) {
            let option = word.trim_end_matches([',', '.']);
            // These options are of every command and told once.
            let told = ["--help", "--lang", "--units"].contains(&option) || row.contains(option);
            assert!(told, "{command}: its row does not tell of {option}");
        }
    }
}

#[test]
fn every_key_of_the_plan_file_is_told() {
    let file = page("docs/plan-file.md");
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

/// The places in a page that links name: a heading in small letters, its words joined by hyphens.
fn places(page: &str) -> Vec<String> {
    let headings = page.lines().filter(|l| l.starts_with('#')).map(|l| l.trim_start_matches('#').trim().to_lowercase());
    headings.map(|h| h.replace(' ', "-").replace(|c: char| !c.is_alphanumeric() && c != '-', "")).collect()
}

/// No link leads nowhere, and the book has every page.
#[test]
fn every_link_leads_somewhere() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let named =
        ["README.md", "DEVELOPERS.md", "CHANGELOG.md", "demo/README.md", "benches/README.md", "tests/README.md"];
    let docs = std::fs::read_dir(root.join("docs")).expect("the docs are there").map(|e| e.expect("an entry").path());
    let docs: Vec<PathBuf> = docs.filter(|p| p.extension().is_some_and(|e| e == "md")).collect();
    let summary = page("docs/SUMMARY.md");
    for path in &docs {
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        assert!(name == "SUMMARY.md" || summary.contains(&format!("]({name})")), "docs/SUMMARY.md lacks {name}");
    }
    let mut links = 0;
    for path in named.map(|name| root.join(name)).into_iter().chain(docs) {
        let (text, name) = (std::fs::read_to_string(&path).expect("a page"), path.display());
        let targets = text.split("](").skip(1).filter_map(|t| t.split(')').next());
        for target in targets.filter(|t| !t.starts_with("http")) {
            let (file, place) = target.split_once('#').unwrap_or((target, ""));
            let to = if file.is_empty() { path.clone() } else { path.with_file_name(file) };
            assert!(to.exists(), "{name}: {target}");
            if !place.is_empty() {
                let there = std::fs::read_to_string(&to).expect("a page");
                assert!(places(&there).contains(&place.to_owned()), "{name}: {target}: no such heading");
            }
            links += 1;
        }
    }
    assert!(links >= 40, "only {links} links were followed");
}
