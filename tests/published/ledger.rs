//! The ledger `tests/README.md`: every row of every module here, as one table. Written by the test run itself.

use crate::row::Row;
use std::fmt::Write;
use std::path::Path;

/// Set to renew the ledger instead of comparing it.
const BLESS: &str = "SPANHOLD_BLESS";
/// Deviations below this are not told apart: they are rounding and the stated error of the supports.
const SMALLEST_SHOWN_PERCENT: f64 = 0.001;

const HEAD: &str = "\
# What the mechanics is checked against

Written by `cargo test --test published`; renew it with `SPANHOLD_BLESS=1 cargo test --test published`.
Each row is a value from outside beside ours. No reference value is computed with the code under test.

Standing of a reference value:

- *verified: seen on …*: seen on the page or document named.
- *from memory, not re-read*: from memory of the source named.
- *derived; independent numerical solution agrees*: worked out for this project and solved a second way; published nowhere.
- *common practice, no source*: the arithmetic is checked, not the rule.

*Allowed* is half a unit of the last printed digit, the unit itself where the source cuts digits off, or a share.
Beyond this table, `tests/reference_cases.rs` and `.ci/reference.py` compare random stepped shafts with two general
libraries (one of rotordynamics, one of structures), and `tests/published/receptance.rs` compares the chatter limit with a dense scan.
Left out: a published stepped beam whose frequencies could be read and whose geometry could not (El-Sayed & Farghaly, Shock
and Vibration 2017, art. 8186976). Nothing from outside was found for the drill's thrust.

";

fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return format!("{value}");
    }
    let text = format!("{value:.*e}", digits - 1);
    let exponent: i32 = text.split_once('e').map_or(0, |(_, e)| e.parse().unwrap_or(0));
    if (-5..digits as i32).contains(&exponent) {
        let decimals = (digits as i32 - 1 - exponent).max(0) as usize;
        format!("{value:.decimals$}")
    } else {
        text
    }
}

fn line(row: &Row) -> String {
    let percent = |part: f64| 100.0 * part / row.reference().abs();
    let deviation = percent(row.ours - row.reference());
    let deviation = if deviation.abs() < SMALLEST_SHOWN_PERCENT {
        format!("< {SMALLEST_SHOWN_PERCENT} %")
    } else {
        format!("{deviation:+.3} %")
    };
    // Closed forms are kept with every digit for the comparison and shown with as many as ours.
    let reference = if row.printed.len() > 12 { significant(row.reference(), 6) } else { row.printed.clone() };
    let allowed = significant(percent(row.allowed()), 1);
    let ours = significant(row.ours, 6);
    format!("| {} | {} | {} | {reference} | {ours} | {deviation} | {allowed} % |", row.what, row.source, row.standing)
}

fn text(rows: &[Row]) -> String {
    let mut out = String::from(HEAD);
    let _ = writeln!(out, "{} checks.\n", rows.len());
    out.push_str(
        "| what | source | standing | reference | ours | deviation | allowed |\n|---|---|---|---|---|---|---|\n",
    );
    for row in rows {
        let _ = writeln!(out, "{}", line(row));
    }
    out
}

#[test]
fn the_ledger_is_what_this_run_found() {
    let rows = crate::all_rows();
    crate::row::assert_agree(&rows);
    let fresh = text(&rows);
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

#[test]
fn no_check_is_listed_twice() {
    let mut names: Vec<String> = crate::all_rows().iter().map(|r| format!("{} | {}", r.what, r.source)).collect();
    names.sort();
    let twice: Vec<_> = names.windows(2).filter(|w| w[0] == w[1]).map(|w| &w[0]).collect();
    assert!(twice.is_empty(), "{twice:?}");
}
