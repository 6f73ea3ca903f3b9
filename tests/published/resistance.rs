//! Specific cutting forces of the table of materials against those that others print: for the grade, or for its group.
//!
//! Source and standing: `tests/data/kc_outside.csv`, all of it seen. Tolerance: 25 %, as good as docs/model.md says that
//! forces are. What is farther off is a row of its own, as missed.

use crate::row::{Agreement, Row, Standing, Table, assert_agree, significant};
use crate::standards::data;
use spanhold::job::materials;

/// As docs/model.md says: forces are no better.
const SHARE: f64 = 0.25;
/// Where values with an exponent are compared, mm: an ordinary feed of a slender part.
const THIN_MM: f64 = 0.1;

/// Where a value was seen.
fn source(from: &str) -> (&'static str, &'static str) {
    match from {
        "book" => ("a second-hand copy of a table book", "the second-hand copy, not in the book"),
        "notes" => ("course notes of a university, chapter on cutting", "the notes"),
        "course" => ("an interactive course, values called indicative", "the course"),
        "file" => ("a file of materials that cites a cutting table book, 2022, p. 215", "the file, not in the book"),
        "chuck" => {
            ("curves of kc over the feed in a manual of chucks", "the manual, assigned to materials by their order")
        }
        "catalogue" => ("a tool maker's catalogue, 2022, p. 111, and its edition of 2017, p. 558", "the pages"),
        other => panic!("no source `{other}`"),
    }
}

/// kc of the table at a chip thickness, N/mm².
fn ours(name: &str, at_mm: f64) -> f64 {
    let row = materials::find(name).unwrap_or_else(|diag| panic!("{diag}"));
    assert_eq!(row.name, name);
    row.kc11_n_per_mm2 * at_mm.powf(-row.mc)
}

/// One row for the materials of an outside value that are near, one for each that is not. The case tells all ratios.
pub fn rows() -> Vec<Row> {
    let mut all = Vec::new();
    for line in data("kc_outside.csv") {
        let [told, kc, h, mc, from, met, missed] = &line[..] else { panic!("{line:?}") };
        let number = |text: &str| text.parse::<f64>().unwrap_or_else(|e| panic!("{text}: {e}"));
        let (kc, h) = (number(kc), number(h));
        let (at_mm, theirs) = match mc.as_str() {
            "" => (h, kc),
            mc => (THIN_MM, kc * (THIN_MM / h).powf(-number(mc))),
        };
        let printed = significant(theirs, 5);
        let (source, seen) = source(from);
        let named = |names: &str| -> Vec<(String, f64)> {
            let names = names.split("; ").filter(|name| !name.is_empty());
            names.map(|name| (name.to_owned(), ours(name, at_mm))).collect()
        };
        let case = |of: &[(String, f64)]| {
            let ratios: Vec<String> = of.iter().map(|(name, kc)| format!("{name} {:.2}", kc / theirs)).collect();
            format!("kc at {at_mm} mm, {told}: ours over it {}", ratios.join(", "))
        };
        let table = |agreement| Table::new(source, Standing::Verified(seen), agreement);
        let (near, far) = (named(met), named(missed));
        let mut t = table(Agreement::Share(SHARE));
        match &near[..] {
            [] => {}
            [one] => t.printed(case(&near), &printed, one.1),
            _ => t.worst_of(&case(&near), near.iter().map(|(name, kc)| (name.clone(), printed.clone(), *kc)).collect()),
        }
        let mut missing = table(Agreement::Missed);
        for one in far {
            assert!((one.1 / theirs - 1.0).abs() > SHARE, "{told}: {} is near by now", one.0);
            missing.printed(case(std::slice::from_ref(&one)), &printed, one.1);
        }
        all.extend([t.done(), missing.done()].concat());
    }
    all
}

#[test]
fn val_cutting_forces_are_near_those_of_others_or_known_to_miss() {
    let rows = rows();
    assert_agree(&rows);
    let missed = rows.iter().filter(|row| matches!(row.agreement, Agreement::Missed)).count();
    assert!(rows.len() > 40 && missed < rows.len() / 2, "{missed} of {}", rows.len());
}
