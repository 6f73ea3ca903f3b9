//! The cases under `tests/cases`: jobs with the expected errors beside the offending line. In the lines below it, a `^`
//! (or `<` for the first column) stands under the column and is followed by `error: …` and, where it matters, `help: …`.
//! The errors of a job are these and no others, in this order; those of a machine file come last.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use spanhold::diag::Diag;
use spanhold::input::{read_job, render};

use crate::{errors, job_of};

/// An expected or found error: file, line, column, what.
#[derive(Debug, PartialEq, Eq)]
struct Told {
    file: String,
    line: usize,
    column: usize,
    what: String,
}

/// What a file says it is answered with; the help beside it where there is one.
fn expected(path: &Path) -> Vec<(Told, Option<String>)> {
    let text = fs::read_to_string(path).expect("case");
    let mut out: Vec<(Told, Option<String>)> = Vec::new();
    let mut line = 0;
    for (number, content) in text.lines().enumerate() {
        let Some((column, kind, body)) = remark(content) else {
            line = number + 1;
            continue;
        };
        if kind == "error" {
            let file = path.display().to_string();
            out.push((Told { file, line, column, what: body.to_owned() }, None));
        } else {
            out.last_mut().expect("help stands below an error").1 = Some(body.to_owned());
        }
    }
    out
}

/// Column, `error` or `help`, and the text of a remark line.
fn remark(line: &str) -> Option<(usize, &str, &str)> {
    let rest = line.strip_prefix('#')?;
    let (column, rest) = match rest.strip_prefix('<') {
        Some(rest) => (1, rest),
        None => {
            let rest = rest.trim_start_matches(' ');
            (line.len() - rest.len() + 1, rest.strip_prefix('^')?)
        }
    };
    let (kind, body) = rest.trim_start().split_once(": ")?;
    ["error", "help"].contains(&kind).then_some((column, kind, body))
}

fn told(diag: &Diag) -> Told {
    let place = diag.place.as_ref();
    Told {
        file: place.map_or_else(String::new, |p| p.source.path.display().to_string()),
        line: place.map_or(0, |p| p.line),
        column: place.map_or(0, |p| p.column),
        what: diag.what.clone(),
    }
}

fn yaml_files(dir: &str) -> Vec<PathBuf> {
    let mut files: Vec<PathBuf> = fs::read_dir(dir)
        .expect("directory of cases")
        .map(|entry| entry.expect("entry").path())
        .filter(|path| path.extension().is_some_and(|ext| ext == "yaml"))
        .collect();
    files.sort();
    files
}

/// The machine file a case names, where it is one of ours.
fn machine_of(case: &Path) -> Option<PathBuf> {
    let text = fs::read_to_string(case).expect("case");
    let name = text.lines().find_map(|line| line.strip_prefix("machine: "))?.to_owned();
    let path = Path::new("tests/cases").join(name);
    path.is_file().then_some(path)
}

#[test]
fn every_case_is_answered_with_the_errors_beside_its_lines() {
    let mut ran = 0;
    let mut machines = BTreeSet::new();
    let mut wrong = String::new();
    for case in yaml_files("tests/cases") {
        let mut wanted = expected(&case);
        if let Some(machine) = machine_of(&case) {
            wanted.extend(expected(&machine));
            machines.insert(machine);
        }
        assert!(!wanted.is_empty(), "{} expects nothing", case.display());
        let diags = read_job(&case).expect_err("a case is a bad job");
        let found: Vec<Told> = diags.iter().map(told).collect();
        let same = found.len() == wanted.len() && found.iter().zip(&wanted).all(|(found, (wanted, _))| found == wanted);
        let helped = diags.iter().zip(&wanted).all(|(diag, (_, help))| help.is_none() || diag.help == *help);
        if !same || !helped {
            wrong +=
                &format!("{}:\n{}\n", case.display(), diags.iter().map(|d| format!("  {d}\n")).collect::<String>());
        }
        assert!(!render(&diags).is_empty());
        ran += 1;
    }
    assert!(ran >= 30, "only {ran} cases were run");
    for machine in yaml_files("tests/cases/machines") {
        assert!(machines.contains(&machine), "{} is used by no case", machine.display());
    }
    assert!(wrong.is_empty(), "answered otherwise:\n{wrong}");
}

#[test]
fn the_long_form_shows_the_line_with_a_marker_and_the_help() {
    let text = job_of("  sections:\n    - {length: 34 kg, diameter: 12}");
    let shown = render(&errors(&text));
    let wanted = "\
job.yaml, line 4, column 16, length: `34 kg` has a unit that does not fit here. Write one of these units behind the number: mm, µm, in, µin. A number alone counts as mm.
    - {length: 34 kg, diameter: 12}
               ~~~~~
";
    assert_eq!(shown, wanted);
}

#[test]
fn control_characters_and_endless_lines_do_not_reach_the_terminal() {
    let text = format!("\"a\\e[31m\": 1\n{}: 2\n", "k".repeat(900));
    let shown = render(&errors(&text));
    assert!(!shown.contains('\u{1b}') && shown.lines().all(|line| line.len() < 340), "{shown}");
}
