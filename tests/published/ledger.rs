//! The ledger `tests/README.md`: every row of every module here and the rows other runs keep, as one table. Written by the
//! test run itself.

use crate::row::{BLESS, KEPT_FOLDER, Row};
use std::fmt::Write;
use std::path::Path;

const HEAD: &str = "\
# What it is checked against

One row a check: what ours is set against, a value from outside or from a second way of working it out, and how near it must be. Every row holds: a
run in which one does not fails. Written by `cargo test --test published`, renewed with `SPANHOLD_BLESS=1 cargo test --test published`; a test
fails when it is stale. No reference value is computed with the code under test.

What a run finds, and how far off it is, is not kept here: last digits differ from processor to processor. The run prints it: `cargo test` into
`target/tmp/ledger`, `bash .ci/outside.sh` to its output.

Standing of a reference value:

- *verified: seen on …*: seen on the page or document named.
- *from memory, not re-read*: from memory of the source named.
- *derived; independent numerical solution agrees*: worked out for this project and solved a second way; published nowhere.
- *worked out in the same run by …*: by a search, a simulation or a library that shares no code with what is checked.
- *common practice, no source*: the arithmetic is checked, not the rule.

*Allowed* is half a unit of the last printed digit, the unit itself where the source cuts digits off, a share, or a
difference (±). *Worst of n* stands for a table of n entries, all of which are compared.

Rows of other runs are kept in `tests/ledger`: `cargo test --lib planner` compares `sequence.md` and `placing.md`; `bash .ci/outside.sh` compares
`reference.md` (general libraries and a simulated cut), `highs.md` (another solver) and `outside.md` (a second reading of
the model). Each fails when what it checks is no longer what its file says; `SPANHOLD_BLESS=1` renews it.

Left out: a published stepped beam whose frequencies could be read and whose geometry could not (El-Sayed & Farghaly, Shock
and Vibration 2017, art. 8186976). Nothing from outside was found for the drill's thrust, and no published worked example of
Kienzle's law with its printed answer.

";

/// Rows that other runs keep, in the order of the ledger.
const KEPT: [&str; 5] = ["sequence.md", "placing.md", "highs.md", "reference.md", "outside.md"];

/// The kept rows of other runs; each line must be a row.
fn kept() -> Vec<String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join(KEPT_FOLDER);
    let mut all = Vec::new();
    for name in KEPT {
        let text = std::fs::read_to_string(folder.join(name)).unwrap_or_default();
        assert!(!text.is_empty(), "tests/ledger/{name} is missing or empty");
        for line in text.lines() {
            assert!(line.starts_with("| ") && line.matches(" | ").count() == 4, "tests/ledger/{name}: no row: {line}");
            all.push(line.to_string());
        }
    }
    all
}

fn text(rows: &[Row]) -> String {
    let mut out = String::from(HEAD);
    let others = kept();
    let _ = writeln!(out, "{} rows.\n", rows.len() + others.len());
    out.push_str("| what | source | standing | reference | allowed |\n|---|---|---|---|---|\n");
    for row in rows {
        let _ = writeln!(out, "{}", row.line());
    }
    for row in others {
        let _ = writeln!(out, "{row}");
    }
    out
}

#[test]
fn the_ledger_is_what_this_run_found() {
    let rows = crate::all_rows();
    crate::row::tell("published.md", rows);
    crate::row::assert_agree(rows);
    let fresh = text(rows);
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/README.md");
    if std::env::var_os(BLESS).is_some() {
        std::fs::write(&path, &fresh).expect("tests/README.md can be written");
        return;
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    let first = fresh.lines().zip(kept.lines()).find(|(a, b)| a != b);
    assert!(
        fresh == kept,
        "tests/README.md is stale; renew it with `{BLESS}=1 cargo test --test published` and read the difference.\n\
         first line that differs (fresh, kept): {first:?}"
    );
}

/// A closed form is worked out in the test, so its last digits differ from processor to processor: its printed ones must not.
#[test]
fn no_reference_stands_where_its_rounding_turns() {
    let mut closed = 0;
    for row in crate::all_rows().iter().filter(|r| r.worst.is_none() && r.printed.len() > 12) {
        let moved = |by: f64| Row { printed: format!("{:e}", row.reference() * (1.0 + by)), ..row.clone() }.line();
        assert_eq!((moved(-1e-11), moved(1e-11)), (row.line(), row.line()), "{}", row.printed);
        closed += 1;
    }
    assert!(closed > 0);
}

#[test]
fn no_check_is_listed_twice() {
    let mut names: Vec<String> = crate::all_rows().iter().map(|r| format!("{} | {}", r.what, r.source)).collect();
    names.sort();
    let twice: Vec<_> = names.windows(2).filter(|w| w[0] == w[1]).map(|w| &w[0]).collect();
    assert!(twice.is_empty(), "{twice:?}");
}
