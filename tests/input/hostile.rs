//! Floods, bombs, and text at random: one clear error, no panic.

use std::fs;
use std::path::Path;

use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use spanhold::input::{TEMPLATE, read_job, read_job_text, render};

use crate::{errors, job, job_of, only};

#[test]
fn more_sections_features_or_collets_than_a_job_has_are_one_error() {
    let sections = "    - {length: 0.1, diameter: 12}\n".repeat(10_000);
    let told = only(errors(&job_of(&format!("  sections:\n{sections}"))));
    assert!(told.contains("`sections` has 10000 entries") && told.contains("at most 1000"), "{told}");

    let features = "    - {cross_hole: 2, at: 30}\n".repeat(1001);
    let told = only(errors(&job_of(&format!("  sections: [{{length: 60, diameter: 12}}]\n  features:\n{features}"))));
    assert!(told.contains("`features` has 1001 entries"), "{told}");

    let collet = "{name: a, range: [11.6, 12.1], hold: 18, passes: 12.4, clamp_force: 6000}, ";
    let text = TEMPLATE.replacen("    collets:", &format!("    collets: [{}]\n    sleeves:", collet.repeat(201)), 1);
    assert!(errors(&text).iter().any(|d| d.what == "`collets` has 201 entries"));

    let values = "    - {length: 0.1, diameter: 12}\n".repeat(100_000);
    assert!(only(errors(&job_of(&format!("  sections:\n{values}")))).contains("more values than a job can have"));
}

#[test]
fn a_thousand_sections_are_read() {
    let sections = "    - {length: 0.1, diameter: 12}\n".repeat(1000);
    let job = job(&job_of(&format!("  sections:\n{sections}")));
    assert_eq!((job.shaft.sections.len(), job.shaft.length_mm()), (1000, 100.0));
}

#[test]
fn nesting_without_end_is_one_error() {
    for (open, close) in [("[", "]"), ("{a: ", "}"), ("- ", ""), ("? ", "")] {
        let deep = format!("shaft:\n  {}x{}\n", open.repeat(100_000), close.repeat(100_000));
        assert!(only(errors(&deep)).contains("nested too deeply"), "{open}");
        let unclosed = open.repeat(100_000);
        assert!(only(errors(&unclosed)).contains("nested too deeply"), "{open}");
    }
    let mut stairs = String::new();
    for depth in 0..1500 {
        stairs += &format!("{}a:\n", " ".repeat(depth));
    }
    assert!(only(errors(&stairs)).contains("nested too deeply"));
}

#[test]
fn alias_bombs_are_one_error() {
    let mut bomb = String::from("a: &a [x, x, x, x, x, x, x, x, x]\n");
    for (from, to) in ('a'..='y').zip('b'..='z') {
        bomb +=
            &format!("{to}: &{to} [*{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}, *{from}]\n");
    }
    assert!(only(errors(&bomb)).contains("Anchors and aliases"));
    assert!(only(errors("a: &a {b: *a}\n")).contains("Anchors and aliases"));
    assert!(only(errors("a: *nobody\n")).contains("Anchors and aliases"));
}

#[test]
fn a_flood_of_errors_is_cut_and_counted() {
    let sections = "    - {length: 0, diameter: 0}\n".repeat(500);
    let diags = errors(&job_of(&format!("  sections:\n{sections}")));
    assert_eq!(diags.len(), 101);
    assert!(diags[100].what.contains("900 more errors"), "{}", diags[100]);
}

/// Places of the template where a number stands behind a key: byte range of the number.
fn numbers_of_the_template() -> Vec<(usize, usize)> {
    let mut out = Vec::new();
    let mut start = 0;
    for line in TEMPLATE.split_inclusive('\n') {
        let code = line.split('#').next().unwrap_or_default();
        for (i, _) in code.match_indices(": ") {
            let value = &code[i + 2..];
            let length = value.find(|c: char| !"+-.0123456789".contains(c)).unwrap_or(value.len());
            let whole = value[length..].trim_start().is_empty() || value[length..].starts_with([',', '}']);
            if length > 0 && whole && value[..length].parse::<f64>().is_ok() {
                out.push((start + i + 2, start + i + 2 + length));
            }
        }
        start += line.len();
    }
    out
}

/// Every number of the template, replaced by what is no number of any use, is complained about where it stands.
#[test]
fn no_number_of_a_job_may_be_something_else() {
    let places = numbers_of_the_template();
    assert!(places.len() > 50, "{}", places.len());
    for (start, end) in places {
        for bad in [".nan", ".inf", "-1e9", "1e9", "[]", "{}", "\"1\"", "5 kg", "true", "!x 1", "&x 1"] {
            let text = format!("{}{bad}{}", &TEMPLATE[..start], &TEMPLATE[end..]);
            let line = TEMPLATE[..start].matches('\n').count() + 1;
            let diags = errors(&text);
            let here = diags.iter().any(|d| d.place.as_ref().is_some_and(|p| p.line == line));
            assert!(here, "`{bad}` in line {line}: {diags:?}");
        }
    }
}

/// What random edits are made of: the signs of YAML and of our files.
const SCRAPS: &[&str] = &[
    "{",
    "}",
    "[",
    "]",
    ":",
    ": ",
    ",",
    "- ",
    "? ",
    "#",
    "&a ",
    "*a",
    "!x ",
    "|",
    ">",
    "%",
    "@",
    "`",
    "\"",
    "'",
    "\n",
    "\n  ",
    "\t",
    "---\n",
    "...\n",
    "<<: ",
    "0",
    "-1",
    "1e308",
    "1e-308",
    ".nan",
    ".inf",
    "-.inf",
    "null",
    "~",
    "true",
    "0x1F",
    "1_0",
    "é",
    "\u{feff}",
    "\u{0}",
    "\u{85}",
    "\u{2028}",
    "😀",
    "length: ",
    "diameter: ",
    "M1x0.25",
    "across_flats: 3, sides: 2",
    "kind: groove",
    "grip: true",
];

/// The text with some bytes (at whole characters) replaced, taken away or repeated.
fn edited(edits: &[(usize, usize, usize, bool)]) -> String {
    let mut text = TEMPLATE.to_owned();
    for (at, length, scrap, repeat) in edits {
        let mut start = at % (text.len() + 1);
        while !text.is_char_boundary(start) {
            start -= 1;
        }
        let mut end = (start + length).min(text.len());
        while !text.is_char_boundary(end) {
            end += 1;
        }
        let put = if *repeat { text[start..end].repeat(2) } else { SCRAPS[scrap % SCRAPS.len()].to_owned() };
        text.replace_range(start..end, &put);
    }
    text
}

/// Reads a text; whatever comes back must be printable, and a job must be sound.
fn survives(text: &str) {
    match read_job_text("job.yaml", text, Path::new("tests/cases")) {
        Ok(job) => {
            assert!(!job.shaft.sections.is_empty() && job.shaft.length_mm().is_finite());
            let thickest = job.shaft.sections.iter().map(|s| s.largest_mm()).fold(0.0, f64::max);
            assert!(thickest <= job.stock.diameter_mm);
            assert!(job.shaft.sections.iter().all(|s| s.length_mm() > 0.0 && s.tolerance.width_mm() > 0.0));
        }
        Err(diags) => {
            assert!(!diags.is_empty() && !render(&diags).is_empty());
            for place in diags.iter().filter_map(|d| d.place.as_ref()) {
                assert!(place.source.text.get(place.start..place.end).is_some(), "{place:?}");
            }
        }
    }
}

/// As many cases each, always the same ones.
fn config() -> ProptestConfig {
    ProptestConfig { cases: 400, failure_persistence: None, rng_seed: RngSeed::Fixed(20), ..ProptestConfig::default() }
}

/// The edits below must not all break the job: some leave one that can be read.
#[test]
fn some_edits_leave_a_job() {
    let mut random = fastrand::Rng::with_seed(20);
    let mut edit = || (random.usize(..), random.usize(0..40), random.usize(..), random.bool());
    let texts: Vec<String> = (0..400).map(|_| edited(&[edit()])).collect();
    let read = texts.iter().filter(|text| read_job_text("job.yaml", text, Path::new("tests/cases")).is_ok()).count();
    assert!((20..=380).contains(&read), "{read} of 400 are read");
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn no_bytes_make_the_reader_panic(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
        let dir = tempfile::tempdir().expect("a directory");
        let path = dir.path().join("job.yaml");
        fs::write(&path, &bytes).expect("written");
        prop_assert!(read_job(&path).is_err());
        survives(&String::from_utf8_lossy(&bytes));
    }

    #[test]
    fn no_signs_make_the_reader_panic(scraps in proptest::collection::vec(0..SCRAPS.len(), 0..60)) {
        survives(&scraps.iter().map(|i| SCRAPS[*i]).collect::<String>());
    }

    #[test]
    fn no_edit_of_a_job_makes_the_reader_panic(
        edits in proptest::collection::vec((any::<usize>(), 0..40_usize, any::<usize>(), any::<bool>()), 1..6),
    ) {
        survives(&edited(&edits));
    }
}
