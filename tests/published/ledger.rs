//! The ledger `tests/ledger/values.csv` and its summary in `tests/README.md`: this run keeps its own rows and the summary of all.

use crate::row::{BLESS, Record, Row, keep, ledger, significant};
use std::path::Path;

const BEAM: &str = "beam: deflection and stiffness";
const FREQUENCIES: &str = "beam: frequencies and critical speed";
const SHAFTS: &str = "beam: stepped shafts and textbook examples";
const FORCE: &str = "cutting force";
const MEASURED: &str = "forces: measured and printed";
const FEED: &str = "feed and roughness";
const CHATTER: &str = "chatter limit";
const SIZES: &str = "tolerances, threads and centre holes";
const MATERIALS: &str = "materials";
const WORK: &str = "drills, taps, threads and hexagons";
const SPEEDS: &str = "speeds of drills, taps and cutters";
const TRADE: &str = "plans: facts of the trade";
pub const MADE: &str = "plans: parts told as made";

/// The rows of this run by their layer, in the order of the ledger; worked out once.
pub fn layers() -> &'static [(&'static str, Vec<Row>)] {
    static ROWS: std::sync::OnceLock<Vec<(&'static str, Vec<Row>)>> = std::sync::OnceLock::new();
    ROWS.get_or_init(|| {
        vec![
            (BEAM, crate::beam_tables::rows()),
            (BEAM, crate::shear::rows()),
            (FREQUENCIES, crate::frequencies::rows()),
            (SHAFTS, crate::textbook::rows()),
            (SHAFTS, crate::stepped::rows()),
            (FORCE, crate::cutting::rows()),
            (MEASURED, crate::forces::rows()),
            (FEED, crate::roughness::rows()),
            (CHATTER, crate::chatter::rows()),
            (CHATTER, crate::receptance::rows()),
            (SIZES, crate::standards::sizes()),
            (SIZES, crate::threads::sizes()),
            (MATERIALS, crate::standards::metals()),
            (MATERIALS, crate::resistance::rows()),
            (TRADE, crate::trade::rows()),
            (MADE, crate::made::rows()),
            (WORK, crate::work::rows()),
            (WORK, crate::threads::rows()),
            (SPEEDS, crate::speeds::rows()),
        ]
    })
}

/// A line of the summary: a layer, what the standing of its rows begins with, and what they are checked against.
type Line = (&'static str, &'static str, &'static str);

const SUMMARY: [Line; 30] = [
    (BEAM, "from memory", "beam tables and shear coefficients of handbooks"),
    (BEAM, "derived", "formulas worked out for this project, solved a second way"),
    (FREQUENCIES, "verified", "tables of Thomson, Theory of Vibration with Applications"),
    (FREQUENCIES, "from memory", "Timoshenko's pinned bar (1921); a rigid body on two springs"),
    (FREQUENCIES, "derived", "roots of the frequency equations; critical speeds worked out for this project"),
    (SHAFTS, "verified", "examples of Ugural and Shigley"),
    (SHAFTS, "derived", "shafts of Shigley, Rao and others, answers worked out for this project; transfer matrix"),
    ("beam: general libraries", "worked out", "a rotordynamics library and a structural library, random shafts"),
    (FORCE, "verified", "an example of Kalpakjian & Schmid; one of a tool maker on power"),
    (FORCE, "derived", "Kienzle's law by hand; arithmetic of power and speed"),
    (FORCE, "worked out", "a fine sum along the edge, each chip searched for"),
    (MEASURED, "verified", "measured turning forces; printed formulas and shares of drills, taps, roughing"),
    (FEED, "from memory", "a handbook table of roughness, nose radius and feed"),
    (FEED, "verified", "measured roughness of turned free-cutting steel; rules of real over ideal Ra"),
    (CHATTER, "derived", "Tobias & Fishwick; Tlusty & Polacek; numbers by a scan"),
    (CHATTER, "worked out", "dense eigenvalues and a scan over frequency"),
    ("chatter: simulated cut", "worked out", "the regenerative delay equation, turn by turn"),
    (SIZES, "verified", "ISO 286, EN 10278, ISO 261, ASME B1.1, ISO 228-1, ISO 2904, reproductions of the tables"),
    (SIZES, "from memory", "ISO 286, ISO 2768, ISO 724, ISO 261, ISO 6411"),
    (
        MATERIALS,
        "verified",
        "cutting forces: a tool maker's catalogue, a manual of chucks, courses, second-hand copies of table books",
    ),
    (MATERIALS, "from memory", "EN standards and handbooks of cutting forces"),
    (MATERIALS, "common practice", "usual cutting speeds; estimated cutting forces"),
    (WORK, "from memory", "an example of drilling; ISO 68-1, ISO 2306; infeeds of threading"),
    (WORK, "verified", "passes and infeeds of threads: tool makers' catalogues, table books, a calculator"),
    (WORK, "derived", "geometry of a hexagon"),
    (SPEEDS, "verified", "ranges of courses, tool makers and dealers; missed are told"),
    (TRADE, "common practice", "what every turner knows: feasible or not, number of hand-overs"),
    (MADE, "verified", "parts and rules told by shops and makers: feasible or not, how far a bar may stand out"),
    ("planner", "worked out", "exhaustive search, fine grid search and another solver, random jobs"),
    ("plans: second reading of the model", "worked out", "plans, moments and verdicts worked out again in Python"),
];

/// Where the summary stands in `tests/README.md`.
const MARKS: [&str; 2] =
    ["<!-- summary: written by cargo test --test published -->\n", "<!-- end of the summary -->\n"];

/// The worst deviation of the rows whose `allowed` is a number with this mark, and what is allowed there.
fn worst(rows: &[&Record], number: impl Fn(&str) -> Option<f64>, told: impl Fn(f64) -> String) -> Option<String> {
    let deviations = rows.iter().filter_map(|r| Some((r[8].parse::<f64>().ok()? * number(&r[7])?, number(&r[7])?)));
    let worst = deviations.reduce(|a, b| if b > a { b } else { a });
    worst.map(|(off, allowed)| format!("{} ({})", told(off), told(allowed)))
}

fn summary_line((layer, standing, against): Line, ledger: &[Record]) -> (usize, String) {
    let rows: Vec<&Record> = ledger.iter().filter(|r| r[1] == layer && r[4].starts_with(standing)).collect();
    assert!(!rows.is_empty(), "the ledger has no row of `{layer}`, {standing}");
    let count = |r: &&Record| {
        r[5].split(' ').next().and_then(|n| n.parse::<usize>().ok()).expect("`values` begins with a number")
    };
    let more = if rows.iter().any(|r| r[5].ends_with("or more")) { " or more" } else { "" };
    let percent = worst(&rows, |a| a.strip_suffix(" %")?.parse().ok(), |n| format!("{} %", significant(n, 2)));
    let plain = worst(&rows, |a| a.strip_prefix("± ")?.parse().ok(), |n| significant(n, 2));
    let found: Vec<String> = [percent, plain].into_iter().flatten().collect();
    let found = if found.is_empty() { "a bound".to_owned() } else { found.join("; ") };
    let standing = match standing {
        "verified" => "source read",
        "worked out" => "worked out in the run",
        other => other,
    };
    let values: usize = rows.iter().map(count).sum();
    (rows.len(), format!("| {layer} | {against} | {standing} | {} | {values}{more} | {found} |\n", rows.len()))
}

fn summary(ledger: &[Record]) -> String {
    let lines = SUMMARY.map(|line| summary_line(line, ledger));
    assert_eq!(
        lines.iter().map(|(rows, _)| rows).sum::<usize>(),
        ledger.len(),
        "a row of the ledger is in no line of the summary"
    );
    let lines: String = lines.into_iter().map(|(_, line)| line).collect();
    format!(
        "{} rows.\n\n| layer | checked against | standing | rows | values | worst deviation (allowed there) |\n\
         |---|---|---|---|---|---|\n{lines}",
        ledger.len()
    )
}

#[test]
fn the_ledger_and_its_summary_are_what_this_run_found() {
    keep("published", layers());
    let fresh = summary(&ledger());
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/README.md");
    let page = std::fs::read_to_string(&path).expect("tests/README.md is there");
    let (before, rest) = page.split_once(MARKS[0]).expect("the page marks its summary");
    let (kept, after) = rest.split_once(MARKS[1]).expect("the page marks the end of its summary");
    if std::env::var_os(BLESS).is_some() {
        std::fs::write(&path, [before, MARKS[0], &fresh, MARKS[1], after].concat())
            .expect("tests/README.md can be written");
        return;
    }
    assert!(
        fresh == kept,
        "the summary in tests/README.md is stale. Renew it with `{BLESS}=1 cargo test --test published` and read the difference.\n\
         {fresh}\n{kept}"
    );
}

/// A closed form is worked out in the test, so its last digits differ from processor to processor: its printed ones must not.
#[test]
fn no_reference_stands_where_its_rounding_turns() {
    let mut closed = 0;
    for row in layers().iter().flat_map(|(_, rows)| rows).filter(|r| r.worst.is_none() && r.printed.len() > 12) {
        let shown = |row: &Row| row.record("", "")[..8].to_vec();
        let moved = |by: f64| shown(&Row { printed: format!("{:e}", row.reference() * (1.0 + by)), ..row.clone() });
        assert_eq!((moved(-1e-11), moved(1e-11)), (shown(row), shown(row)), "{}", row.printed);
        closed += 1;
    }
    assert!(closed > 0);
}

#[test]
fn no_check_is_listed_twice() {
    let mut names: Vec<String> = ledger().iter().map(|r| format!("{} | {}", r[2], r[3])).collect();
    names.sort();
    let twice: Vec<_> = names.windows(2).filter(|w| w[0] == w[1]).map(|w| &w[0]).collect();
    assert!(twice.is_empty(), "{twice:?}");
}

#[test]
fn every_row_belongs_to_a_run_that_keeps_it() {
    let runs: std::collections::BTreeSet<String> = ledger().into_iter().map(|[run, ..]| run).collect();
    assert_eq!(Vec::from_iter(runs), ["highs", "outside", "placing", "published", "reference", "sequence"]);
}
