//! The order of the house, read off the sources: a room uses the rooms below it, never one above or beside it.
//!
//! Inside the planner, rooms follow the way of a job, and a room uses those before it. No file of the library is in a circle of imports.
//!
//! Also: no file is too long to be read at a sitting. What the checks would find is shown on planted lines, so that an
//! empty list means something. That nothing a user can cause ends in a panic is held by lints, see `src/lib.rs`.

mod read;
mod texts;

use read::{code_of, files, is_test, parts, paths, source_root, without_tests};
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;
use std::path::{Path, PathBuf};

/// Each room and what it may use; a room may always use itself. The order of the rows is the order of the house.
const ROOMS: &[(&str, &[&str])] = &[
    ("units", &[]),
    // What people read: texts by key, numbers in the units told.
    ("lang", &["units"]),
    ("diag", &["lang"]),
    // A fault of ours: a text.
    ("defect", &[]),
    // Characters alone.
    ("shown", &[]),
    ("fields", &["lang", "units", "diag"]),
    // Work on all cores: knows nothing of what is worked out.
    ("spread", &["lang"]),
    ("job", &["lang", "units", "diag", "fields"]),
    ("mechanics", &["units"]),
    ("process", &["lang", "units", "job", "mechanics"]),
    // A plan in time, from the plan: the planner asks it for what the quote counts with.
    ("cycle", &["lang", "units", "job", "mechanics", "process"]),
    // The planner and the proof never see each other: a proof that shares the planner's shortcuts shares its mistakes.
    ("planner", &["lang", "units", "defect", "spread", "job", "mechanics", "process", "cycle"]),
    ("proof", &["lang", "units", "spread", "job", "mechanics", "process"]),
    ("fit", &["lang", "units", "diag", "job", "mechanics", "process"]),
    ("schema", &["lang", "fields", "job::plan"]),
    // Tables of keys, checks and materials.
    ("reference", &["lang", "fields", "job::materials", "job::shop", "process::checks", "schema"]),
    ("input", &["lang", "units", "diag", "shown", "fields", "job"]),
    // Its text is read back by the reader, so a draft is a job that can be planned.
    ("drawings", &["lang", "units", "diag", "shown", "fields", "job", "input"]),
    // A finished plan alone is enough to print everything.
    ("report", &["lang", "shown", "job::plan", "job::readings"]),
    ("answer", &["lang", "diag", "defect", "spread", "job", "planner", "process", "proof", "fit"]),
    (
        "page",
        &[
            "lang", "diag", "defect", "fields", "spread", "input", "drawings", "job", "planner", "process", "proof",
            "report", "answer",
        ],
    ),
    (
        "cli",
        &[
            "lang",
            "diag",
            "defect",
            "shown",
            "fields",
            "spread",
            "input",
            "drawings",
            "job",
            "planner",
            "process",
            "proof",
            "fit",
            "schema",
            "reference",
            "report",
            "answer",
            "page",
        ],
    ),
];

/// The rooms of the planner in the order of a job's way through it; each may use those before it.
const PLANNER: [&str; 9] = ["places", "states", "sequence", "plan", "steps", "why_not", "solve", "quick", "advice"];

/// The longest file that is still read at a sitting.
const MOST_LINES: usize = 500;

/// What a file uses against the order; `file` counts from the sources' folder.
fn against_the_order(source: &str, file: &Path) -> Vec<String> {
    let first = file.iter().next().map(|p| p.to_string_lossy().into_owned()).unwrap_or_default();
    let room = first.trim_end_matches(".rs");
    // The two doors: the library's names the rooms, the program's opens the command line.
    if matches!(room, "lib" | "main") {
        return Vec::new();
    }
    let Some((_, may)) = ROOMS.iter().find(|(name, _)| *name == room) else {
        return vec![format!(
            "{}: the house has no room `{room}`: give it a row in tests/layers/main.rs",
            file.display()
        )];
    };
    let allowed = |path: &str| {
        // The macro of `lang` stands at the root, as exported macros do.
        let path = if path == "say" { "lang" } else { path };
        let inside = |of: &str| path == of || path.strip_prefix(of).is_some_and(|p| p.starts_with("::"));
        inside(room) || may.iter().any(|m| inside(m))
    };
    let used = paths(&code_of(source), file);
    used.into_iter()
        .filter(|(_, path)| !allowed(path))
        .map(|(line, path)| format!("{}:{line}: {room} must not use {path}", file.display()))
        .collect()
}

/// What a file of the planner uses of rooms behind its own.
fn against_the_way(source: &str, file: &Path) -> Vec<String> {
    let parts = parts(file);
    let place = |name: &str| PLANNER.iter().position(|room| *room == name);
    let [planner, room, ..] = &parts[..] else { return Vec::new() };
    if planner != "planner" || room == "mod" {
        return Vec::new();
    }
    let Some(own) = place(room) else {
        return vec![format!(
            "{}: the planner has no room `{room}`: give it a place in tests/layers/main.rs",
            file.display()
        )];
    };
    let used = paths(&without_tests(&code_of(source)), file).into_iter();
    let rooms = used.filter_map(|(line, path)| Some((line, path.strip_prefix("planner")?.to_owned())));
    let behind = |(_, path): &(usize, String)| place(path.trim_start_matches(':')).is_none_or(|used| used > own);
    rooms
        .filter(behind)
        .map(|(line, path)| format!("{}:{line}: {room} must not use planner{path}", file.display()))
        .collect()
}

/// Name of the module in a file, that counts from the sources' folder.
fn module_of(file: &Path) -> String {
    parts(file).join("::").trim_end_matches("::mod").to_owned()
}

/// The modules of other files that a piece of code of a module uses. A file may use what its own folder holds for it alone, and that may use
/// the file: together they are one, so a path that begins with a module below is none.
fn modules_used(code: &str, module: &str, known: &BTreeSet<String>) -> BTreeSet<String> {
    let parts: Vec<&str> = module.split("::").collect();
    let mut used = BTreeSet::new();
    let is_path = |c: char| c.is_alphanumeric() || matches!(c, '_' | ':');
    let starts = ["crate::", "super::", "self::"].into_iter().flat_map(|word| code.match_indices(word));
    for (at, _) in starts.filter(|(at, _)| !code[..*at].ends_with(is_path)) {
        let path: String = code[at..].chars().take_while(|c| is_path(*c)).collect();
        let behind = &code[at + path.len()..];
        let above = path.matches("super::").count();
        let base = if path.starts_with("crate") { &[][..] } else { &parts[..parts.len().saturating_sub(above)] };
        let names = path.split("::").filter(|p| !matches!(*p, "crate" | "super" | "self" | ""));
        let path: Vec<&str> = base.iter().copied().chain(names).collect();
        // The first names of a group in braces; deeper ones belong to modules named there.
        let (mut depth, mut group) = (0, vec![String::new()]);
        for c in behind.chars() {
            match c {
                '{' => depth += 1,
                '}' => depth -= 1,
                ',' if depth == 1 => group.push(String::new()),
                c if depth == 1 && !c.is_whitespace() => group.last_mut().expect("begun").push(c),
                _ => {}
            }
            if depth == 0 {
                break;
            }
        }
        for name in group {
            let first = name.split("::").next().unwrap_or_default();
            let whole: Vec<&str> = path.iter().copied().chain([first]).collect();
            let found = (1..=whole.len()).rev().map(|n| whole[..n].join("::")).find(|m| known.contains(m));
            used.extend(found.filter(|m| m != module));
        }
    }
    used
}

/// Modules that use each other in a circle, one circle a line.
fn circles(sources: &BTreeMap<String, String>) -> Vec<String> {
    let known: BTreeSet<String> = sources.keys().cloned().collect();
    let mut uses: BTreeMap<&str, BTreeSet<String>> = BTreeMap::new();
    for (module, code) in sources {
        uses.insert(module, modules_used(code, module, &known));
    }
    // What uses nothing that is left is in no circle: taken out until nothing changes.
    let mut left: BTreeSet<&str> = uses.keys().copied().collect();
    loop {
        let free: Vec<&str> = left.iter().copied().filter(|m| !uses[m].iter().any(|u| left.contains(&u[..]))).collect();
        if free.is_empty() {
            break;
        }
        left.retain(|m| !free.contains(m));
    }
    let told = |m: &&str| {
        let to: Vec<&str> = uses[m].iter().map(String::as_str).filter(|u| left.contains(u)).collect();
        format!("{m} uses {}", to.join(", "))
    };
    left.iter().map(told).collect()
}

/// Every file of the library, with its place below the sources' folder. A file of tests is none: it uses what it needs to look into its
/// room, as the files of `tests/` do.
fn library() -> Vec<(PathBuf, String)> {
    let root = source_root();
    let all = files(&root).into_iter().map(|path| {
        let text = std::fs::read_to_string(&path).expect("readable");
        (path.strip_prefix(&root).expect("below the root").to_owned(), text)
    });
    all.filter(|(file, _)| !is_test(file)).collect()
}

/// Applies a check to every file of the library and shows everything it found.
fn all_files(check: impl Fn(&str, &Path) -> Vec<String>) {
    let files = library();
    assert!(files.len() > 60, "only {} files were read", files.len());
    let mut found = String::new();
    for (file, text) in &files {
        for line in check(text, file) {
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
fn the_planner_s_rooms_follow_the_way_of_a_job() {
    all_files(against_the_way);
    let hold = Path::new("planner/why_not/hold.rs");
    assert_eq!(against_the_way("use crate::planner::advice::pairs;", hold).len(), 1);
    assert_eq!(against_the_way("use super::super::solve::solve;", hold).len(), 1);
    assert!(against_the_way("use crate::planner::places::stations::Grid;\nuse super::walk;", hold).is_empty());
    assert_eq!(against_the_way("", Path::new("planner/hut/mod.rs")).len(), 1);
}

#[test]
fn no_file_is_in_a_circle_of_imports() {
    let sources = library().into_iter().map(|(file, text)| (module_of(&file), without_tests(&code_of(&text))));
    let sources: BTreeMap<String, String> = sources.filter(|(m, _)| !matches!(&m[..], "lib" | "main")).collect();
    let found = circles(&sources);
    assert!(found.is_empty(), "in a circle, or using one:\n{}", found.join("\n"));
}

#[test]
fn a_planted_circle_is_found() {
    let of = |list: &[(&str, &str)]| {
        circles(&list.iter().map(|(m, code)| ((*m).to_owned(), (*code).to_owned())).collect::<BTreeMap<_, _>>())
    };
    let ring = [
        ("a", "use crate::b::{c, d};"),
        ("b::c", "use crate::e::X;"),
        ("b", "mod c;"),
        ("e", "let x = super::a::y();"),
    ];
    assert_eq!(of(&ring), ["a uses b::c", "b::c uses e", "e uses a"]);
    assert!(of(&ring[..3]).is_empty());
    // A file and what its folder holds for it are one.
    assert!(of(&[("b", "mod c;\nuse c::X;"), ("b::c", "use super::Y;")]).is_empty());
}

#[test]
fn every_room_of_the_library_has_its_place_in_the_order() {
    let lib = code_of(&std::fs::read_to_string(source_root().join("lib.rs")).expect("readable"));
    let named = lib.lines().filter_map(|l| l.trim().trim_start_matches("pub ").strip_prefix("mod "));
    let rooms: Vec<&str> = named.map(|l| l.trim_end_matches(';')).collect();
    assert!(rooms.len() >= 20, "{rooms:?}");
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
    let files = files(&source_root());
    let lines = |file: &PathBuf| std::fs::read_to_string(file).expect("readable").lines().count();
    let long = files.iter().map(|file| (file, lines(file))).filter(|(_, lines)| *lines > MOST_LINES);
    let long: Vec<String> = long.map(|(file, lines)| format!("{}: {lines} lines", file.display())).collect();
    assert!(files.len() > 60 && long.is_empty(), "split by subject:\n{}", long.join("\n"));
}

/// What a file of tests says goes unseen only where the compiler leaves the file out of the library.
#[test]
fn a_file_of_tests_is_in_no_build_of_the_library() {
    for name in ["planner/tests/oracle.rs", "planner/tests.rs", "planner/tests/mod.rs", "planner/advice/tests.rs"] {
        assert!(is_test(Path::new(name)), "{name}");
    }
    for name in ["planner/attests.rs", "planner/advice/tested.rs", "tests_of/mod.rs"] {
        assert!(!is_test(Path::new(name)), "{name}");
    }
    let heads = files(&source_root());
    let heads = heads.iter().filter(|f| f.ends_with("tests.rs") || f.ends_with("tests/mod.rs")).count();
    let library = library();
    let named: usize = library.iter().map(|(_, text)| text.matches("#[cfg(test)]\nmod tests;").count()).sum();
    assert!(heads == named && heads >= 3, "{heads} files of tests, {named} of them named");
    let loose: Vec<_> = library.iter().filter(|(_, text)| loose_tests(text)).map(|(file, _)| file).collect();
    assert!(loose.is_empty(), "`mod tests;` without `#[cfg(test)]` above it: {loose:?}");
    assert!(loose_tests("mod a;\nmod tests;\n") && loose_tests("#[cfg(test)]\nmod a;\npub mod tests;\n"));
    assert!(!loose_tests("#[cfg(test)]\nmod tests;\n// mod tests;\n"));
}

/// Whether a file names its tests without leaving them out of the library.
fn loose_tests(text: &str) -> bool {
    let code = code_of(text);
    let lines: Vec<&str> = code.lines().map(str::trim).collect();
    let names = |line: &str| line.ends_with("mod tests;");
    (0..lines.len()).any(|i| names(lines[i]) && (i == 0 || lines[i - 1] != "#[cfg(test)]"))
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
    let page = std::fs::read_to_string(source_root().with_file_name("docs/model.md")).expect("the page is there");
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
        rows.into_iter().filter(|row| !page.contains(row)).map(|row| format!("docs/model.md lacks {row}")).collect()
    });
    for (_, text) in library() {
        seen += guards(&text).len();
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
