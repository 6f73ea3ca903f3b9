//! The order of the house, read off the sources: a room uses the rooms below it, never one above or beside it.
//!
//! Also: no file is too long to be read at a sitting, and nothing a user can cause ends in a panic. What the checks
//! would find is shown on planted lines, so that an empty list means something.

use std::fmt::Write;
use std::path::{Path, PathBuf};

/// Each room and what it may use; a room may always use itself. The order of the rows is the order of the house.
const ROOMS: &[(&str, &[&str])] = &[
    ("units", &[]),
    ("diag", &[]),
    // Characters alone.
    ("shown", &[]),
    ("fields", &["diag"]),
    // Work on all cores: knows nothing of what is worked out.
    ("spread", &[]),
    ("job", &["units", "diag", "fields"]),
    ("mechanics", &["units"]),
    ("process", &["units", "job", "mechanics"]),
    // A plan in time, from the plan: the planner asks it for what the quote counts with.
    ("cycle", &["units", "job", "mechanics", "process"]),
    // The planner and the proof never see each other: a proof that shares the planner's shortcuts shares its mistakes.
    ("planner", &["units", "spread", "job", "mechanics", "process", "cycle"]),
    ("proof", &["units", "spread", "job", "mechanics", "process"]),
    ("fit", &["units", "diag", "job", "mechanics", "process"]),
    ("schema", &["fields", "job::plan"]),
    ("input", &["units", "diag", "shown", "fields", "job"]),
    // Its text is read back by the reader, so a draft is a job that can be planned.
    ("draft", &["diag", "shown", "fields", "job", "input"]),
    // A finished plan alone is enough to print everything.
    ("report", &["shown", "job::plan", "job::readings"]),
    ("answer", &["diag", "job", "planner", "process", "proof", "report"]),
    ("page", &["diag", "fields", "spread", "input", "job", "planner", "process", "proof", "report", "answer"]),
    (
        "cli",
        &[
            "diag", "shown", "fields", "spread", "input", "draft", "job", "planner", "process", "proof", "fit",
            "schema", "report", "answer", "page",
        ],
    ),
];

/// The longest file that is still read at a sitting.
const MOST_LINES: usize = 500;

/// What must not be reached by anything a user can cause.
const PANICS: [&str; 7] =
    ["todo!(", "unimplemented!(", ".unwrap()", ".expect(", ".unwrap_err()", "panic!(", "unreachable!("];

fn source_root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("src")
}

/// All Rust files under a folder, sorted, so that messages come in the same order.
fn files(dir: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(dir).expect("the sources are there") {
        let path = entry.expect("readable").path();
        if path.is_dir() {
            found.extend(files(&path));
        } else if path.extension().is_some_and(|e| e == "rs") {
            found.push(path);
        }
    }
    found.sort();
    found
}

/// The code with comments, texts and characters blanked, line breaks kept.
fn code_of(source: &str) -> String {
    let chars: Vec<char> = source.chars().collect();
    let mut out = String::with_capacity(source.len());
    let at = |i: usize| chars.get(i).copied().unwrap_or('\0');
    let blank = |out: &mut String, c: char| out.push(if c == '\n' { '\n' } else { ' ' });
    let mut i = 0;
    while i < chars.len() {
        let c = chars[i];
        let is_word = i > 0 && (at(i - 1).is_alphanumeric() || at(i - 1) == '_');
        if c == '/' && at(i + 1) == '/' {
            while i < chars.len() && chars[i] != '\n' {
                i += 1;
            }
        } else if c == '/' && at(i + 1) == '*' {
            let mut depth = 0;
            loop {
                if at(i) == '/' && at(i + 1) == '*' {
                    depth += 1;
                    i += 2;
                } else if at(i) == '*' && at(i + 1) == '/' {
                    depth -= 1;
                    i += 2;
                } else {
                    blank(&mut out, at(i));
                    i += 1;
                }
                if depth == 0 || i >= chars.len() {
                    break;
                }
            }
        } else if c == 'r' && !is_word && (at(i + 1) == '"' || (at(i + 1) == '#' && matches!(at(i + 2), '"' | '#'))) {
            let hashes = (i + 1..).take_while(|k| at(*k) == '#').count();
            i += hashes + 2;
            while i < chars.len() && !(chars[i] == '"' && (1..=hashes).all(|k| at(i + k) == '#')) {
                blank(&mut out, chars[i]);
                i += 1;
            }
            i += hashes + 1;
        } else if c == '"' {
            i += 1;
            while i < chars.len() && chars[i] != '"' {
                let step = if chars[i] == '\\' { 2 } else { 1 };
                (0..step).for_each(|k| blank(&mut out, at(i + k)));
                i += step;
            }
            i += 1;
        } else if c == '\'' && (at(i + 2) == '\'' || at(i + 1) == '\\') {
            i += if at(i + 1) == '\\' { 3 } else { 2 };
            while i < chars.len() && chars[i] != '\'' {
                i += 1;
            }
            i += 1;
        } else {
            out.push(c);
            i += 1;
        }
    }
    out
}

/// The same code without its test modules; their lines stay, empty.
fn without_tests(code: &str) -> String {
    let mut out = String::with_capacity(code.len());
    let mut rest = code;
    while let Some(start) = rest.find("#[cfg(test)]") {
        out.push_str(&rest[..start]);
        let mut depth = 0;
        let mut end = rest.len();
        for (i, c) in rest[start..].char_indices() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                ';' if depth == 0 => {}
                _ => continue,
            }
            if depth == 0 {
                end = start + i + 1;
                break;
            }
        }
        out.extend(rest[start..end].chars().filter(|c| *c == '\n'));
        rest = &rest[end..];
    }
    out + rest
}

/// Paths from the crate's root that a piece of code uses, `job::plan` deep, with their line.
fn paths(code: &str, file: &Path) -> Vec<(usize, String)> {
    let module: Vec<String> = {
        let plain = file.with_extension("");
        plain.iter().map(|p| p.to_string_lossy().into_owned()).filter(|p| p != "mod").collect()
    };
    let mut found = Vec::new();
    // Depths of braces at which a module written inside this file was opened: `super` counts from the innermost.
    let (mut depth, mut inner): (usize, Vec<usize>) = (0, Vec::new());
    for (number, line) in code.lines().enumerate() {
        let words = line.trim().trim_start_matches("pub ");
        if words.starts_with("mod ") && words.ends_with('{') {
            inner.push(depth);
        }
        let mut rest = line;
        while let Some((at, word)) = ["crate::", "super::", "spanhold::"]
            .into_iter()
            .filter_map(|w| rest.find(w).map(|at| (at, w)))
            .min_by_key(|(at, _)| *at)
        {
            let joined = rest[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_' || c == ':');
            rest = &rest[at + word.len()..];
            if joined {
                continue;
            }
            let mut above = usize::from(word == "super::");
            while let Some(further) = rest.strip_prefix("super::") {
                above += 1;
                rest = further;
            }
            if word == "super::" && above <= inner.len() {
                continue;
            }
            let above = above.saturating_sub(inner.len());
            let base = if word == "super::" { module.len().saturating_sub(above) } else { 0 };
            let next: String =
                rest.chars().take_while(|c| c.is_alphanumeric() || matches!(c, '_' | ':' | '{' | '*')).collect();
            let mut path: Vec<&str> = module[..base].iter().map(String::as_str).collect();
            path.extend(next.split("::").filter(|p| !p.is_empty()));
            path.truncate(2);
            found.push((number + 1, path.join("::")));
        }
        depth = (depth + line.matches('{').count()).saturating_sub(line.matches('}').count());
        while inner.last().is_some_and(|opened| depth <= *opened) {
            inner.pop();
        }
    }
    found
}

/// What a file uses against the order; `file` counts from the sources' folder.
fn against_the_order(source: &str, file: &Path) -> Vec<String> {
    let first = file.iter().next().map(|p| p.to_string_lossy().into_owned()).unwrap_or_default();
    let room = first.trim_end_matches(".rs");
    // The two doors: the library's names the rooms, the program's opens the command line.
    if matches!(room, "lib" | "main") {
        return Vec::new();
    }
    let Some((_, may)) = ROOMS.iter().find(|(name, _)| *name == room) else {
        return vec![format!("{}: the house has no room `{room}`: give it a row in tests/layers.rs", file.display())];
    };
    let allowed = |path: &str| {
        let inside = |of: &str| path == of || path.strip_prefix(of).is_some_and(|p| p.starts_with("::"));
        inside(room) || may.iter().any(|m| inside(m))
    };
    let used = paths(&code_of(source), file);
    used.into_iter()
        .filter(|(_, path)| !allowed(path))
        .map(|(line, path)| format!("{}:{line}: {room} must not use {path}", file.display()))
        .collect()
}

/// Lines outside tests that may end in a panic.
fn panics(source: &str, file: &Path) -> Vec<String> {
    let code = without_tests(&code_of(source));
    let mut found = Vec::new();
    for (number, line) in code.lines().enumerate() {
        for word in PANICS.into_iter().filter(|w| line.contains(*w)) {
            found.push(format!("{}:{}: `{word}` outside tests", file.display(), number + 1));
        }
    }
    found
}

/// Applies a check to every file and shows everything it found.
fn all_files(check: impl Fn(&str, &Path) -> Vec<String>) {
    let root = source_root();
    let files = files(&root);
    assert!(files.len() > 60, "only {} files were read", files.len());
    let mut found = String::new();
    for path in &files {
        let text = std::fs::read_to_string(path).expect("readable");
        for line in check(&text, path.strip_prefix(&root).expect("below the root")) {
            writeln!(found, "  {line}").expect("a text takes lines");
        }
    }
    assert!(found.is_empty(), "\n{found}");
}

#[test]
fn no_room_uses_one_above_or_beside_it() {
    all_files(against_the_order);
}

#[test]
fn every_room_of_the_library_has_its_place_in_the_order() {
    let lib = code_of(&std::fs::read_to_string(source_root().join("lib.rs")).expect("readable"));
    let rooms: Vec<&str> =
        lib.lines().filter_map(|l| l.trim().strip_prefix("pub mod ")).map(|l| l.trim_end_matches(';')).collect();
    assert!(rooms.len() >= 12, "{rooms:?}");
    for room in &rooms {
        assert!(ROOMS.iter().any(|(name, _)| name == room), "{room} has no row");
    }
    for (i, (room, may)) in ROOMS.iter().enumerate() {
        for used in *may {
            let base = used.split("::").next().unwrap_or(used);
            assert!(ROOMS[..i].iter().any(|(name, _)| *name == base), "{room} may use {used}, which is not below it");
        }
    }
}

#[test]
fn no_file_is_too_long_to_be_read_at_a_sitting() {
    all_files(|text, file| {
        let lines = text.lines().count();
        if lines > MOST_LINES {
            vec![format!("{}: {lines} lines, split it by subject", file.display())]
        } else {
            vec![]
        }
    });
}

#[test]
fn nothing_a_user_can_cause_ends_in_a_panic() {
    all_files(panics);
}

/// Constants outside tests that guard rounding, rounds or meshes: file, name and value as written.
fn guards(source: &str) -> Vec<(String, String)> {
    let code = without_tests(&code_of(source));
    let constants = code.lines().filter_map(|l| {
        let (name, rest) = l.trim().trim_start_matches("pub ").strip_prefix("const ")?.split_once(": ")?;
        let (kind, value) = rest.split_once(" = ")?;
        let number =
            matches!(kind, "f64" | "usize" | "u64" | "u32") || kind.starts_with("[usize") || kind.starts_with("[f64");
        number.then(|| (name.to_string(), value.trim_end_matches(';').trim_matches(['[', ']']).to_string()))
    });
    constants.collect()
}

#[test]
fn every_guard_stands_in_the_table_of_guards() {
    let page = std::fs::read_to_string(source_root().with_file_name("DEVELOPERS.md")).expect("the page is there");
    let mut seen = 0;
    all_files(|text, file| {
        let name = file.to_string_lossy().replace('\\', "/");
        let counts = ["mechanics/", "process/", "cycle/", "planner/", "proof/", "fit/", "answer.rs"]
            .iter()
            .any(|r| name.starts_with(r));
        if !counts {
            return Vec::new();
        }
        let rows: Vec<String> = guards(text)
            .into_iter()
            .map(|(constant, value)| format!("| `{name}` | `{constant}` | {value} | "))
            .collect();
        rows.into_iter().filter(|row| !page.contains(row)).map(|row| format!("DEVELOPERS.md lacks {row}")).collect()
    });
    for path in files(&source_root()) {
        seen += guards(&std::fs::read_to_string(path).expect("readable")).len();
    }
    assert!(seen > 60, "only {seen} constants were read");
    for row in page.lines().filter(|l| l.starts_with("| `") && l.matches('|').count() == 5) {
        let cells: Vec<&str> = row.split('|').map(|c| c.trim().trim_matches('`')).collect();
        let file = source_root().join(cells[1]);
        // Other tables count things of a file.
        if cells[1].ends_with(".rs") && file.is_file() && cells[2].starts_with(|c: char| c.is_ascii_uppercase()) {
            let text = std::fs::read_to_string(file).expect("readable");
            assert!(guards(&text).iter().any(|(name, _)| name == cells[2]), "{} has no {}", cells[1], cells[2]);
        }
    }
}

#[test]
fn a_planted_use_against_the_order_is_found() {
    let planner = Path::new("planner/solve.rs");
    for line in [
        "use crate::proof::prove;",
        "fn f() -> crate::report::ReportError {}",
        "use super::super::answer::answer;",
        "use spanhold::cli;",
        "use crate::{job, proof};",
    ] {
        assert_eq!(against_the_order(line, planner).len(), 1, "{line}");
    }
    let report = Path::new("report/text.rs");
    assert_eq!(against_the_order("use crate::job::materials::find;", report).len(), 1);
    assert_eq!(against_the_order("use crate::job::Job;", report).len(), 1);
    assert_eq!(against_the_order("use crate::units::mm;", Path::new("mystery/mod.rs")).len(), 1);
    for line in [
        "use crate::job::plan::Plan;",
        "use super::numbers;",
        "// use crate::planner;",
        "/// [`crate::planner`]",
        "let t = \"crate::planner\";",
        "let t = r#\"crate::planner \" \"#;",
    ] {
        assert!(against_the_order(line, report).is_empty(), "{line}");
    }
    let inside = "mod tests {\n    use super::*;\n}\nuse super::planner::solve;";
    assert_eq!(against_the_order(inside, Path::new("units.rs")), ["units.rs:4: units must not use planner::solve"]);
    assert!(against_the_order("use super::super::rig::Rig;", Path::new("process/checks/cut.rs")).is_empty());
}

#[test]
fn a_planted_panic_is_found_and_one_in_a_test_or_a_comment_is_not() {
    let file = Path::new("job/mod.rs");
    for line in ["let x = y.unwrap();", "todo!()", "y.expect(\"z\");", "if a { panic!(\"b\") }"] {
        assert_eq!(panics(line, file).len(), 1, "{line}");
    }
    let quiet = "/// y.unwrap()\nlet c = '\"'; // panic!(\nlet t = \"todo!(\";\n#[cfg(test)]\nmod tests {\n fn f() { x.unwrap(); }\n}\n";
    assert_eq!(panics(quiet, file), Vec::<String>::new());
    let after = format!("{quiet}fn g() {{ x.unwrap(); }}");
    assert_eq!(panics(&after, file), ["job/mod.rs:8: `.unwrap()` outside tests"]);
}
