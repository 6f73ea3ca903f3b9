//! The demo jobs planned for one who reads in inch: the same plan, told in inch, and no limit told beyond the true one.

use serde_json::Value;
use spanhold::job::plan::Plan;
use spanhold::lang::{self, Spoken, Units};
use spanhold::report::{plan_svg, plan_text, sheet_html, stages_csv, tables};
use spanhold::{answer::answer, input};
use std::path::{Path, PathBuf};

/// 1 in in mm, exact (international yard and pound agreement of 1959, from memory).
const IN_MM: f64 = 25.4;

/// Smallest step of a length along the shaft, in.
const STEP_IN: f64 = 0.001;

fn in_units<T>(units: Units, work: impl FnOnce() -> T) -> T {
    lang::speaking(Spoken::default().in_units(units), work)
}

fn demos() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("demo");
    let mut found: Vec<PathBuf> =
        std::fs::read_dir(folder).expect("demos").map(|entry| entry.expect("readable").path()).collect();
    found.retain(|path| path.extension().is_some_and(|ending| ending == "yaml"));
    found.sort();
    assert!(found.len() >= 8, "{found:?}");
    found
}

fn planned(path: &Path, units: Units) -> Plan {
    in_units(units, || {
        let job = input::read_job(path).unwrap_or_else(|diags| panic!("{}", input::render(&diags)));
        answer(&job).unwrap_or_else(|defect| panic!("{defect}"))
    })
}

/// What a reader of a document sees, its blanks squeezed.
fn seen(document: &str) -> String {
    let without_style: String = document
        .split("<style")
        .enumerate()
        .map(|(i, part)| if i == 0 { part } else { part.split_once("</style>").map_or("", |(_, rest)| rest) })
        .collect();
    let texts = without_style.split('<').map(|part| part.split_once('>').map_or(part, |(_, text)| text));
    texts.flat_map(str::split_whitespace).collect::<Vec<_>>().join(" ")
}

/// Metric units that stand as a word in a text, each with what is around it. Units that docs/languages.md keeps are taken out before.
fn metric_words(text: &str) -> Vec<String> {
    let kept = ["N·m", "N/µm", "N/mm²", "(in mm)"].iter().fold(text.to_owned(), |text, unit| text.replace(unit, " "));
    let words: Vec<&str> = kept.split_whitespace().collect();
    let plain = |word: &str| word.trim_matches(|c: char| ",.;:()".contains(c)).to_owned();
    let metric = |word: &&str| ["mm", "µm", "m/min", "mm/rev", "mm/m", "N"].contains(&plain(word).as_str());
    let around = |at: usize| words[at.saturating_sub(5)..(at + 3).min(words.len())].join(" ");
    words.iter().enumerate().filter(|(_, word)| metric(word)).map(|(at, _)| around(at)).collect()
}

/// The numbers of a document, in their order.
fn numbers(value: &Value, found: &mut Vec<f64>) {
    match value {
        Value::Number(number) => found.extend(number.as_f64()),
        Value::Array(items) => items.iter().for_each(|item| numbers(item, found)),
        Value::Object(map) => map.values().for_each(|item| numbers(item, found)),
        _ => {}
    }
}

/// The numbers behind a beginning and before an end of each place of a text that has both.
fn told(text: &str, before: &str, behind: &str) -> Vec<f64> {
    let ends = text.split(before).skip(1).filter_map(|rest| rest.split_once(behind));
    ends.filter_map(|(number, _)| number.parse().ok()).collect()
}

/// A limit in inch is at or below the true one in mm, by less than a step.
fn is_limit(told_in: f64, true_mm: f64) -> bool {
    let below_in = true_mm / IN_MM - told_in;
    (-1e-6..STEP_IN).contains(&below_in)
}

#[test]
fn a_plan_in_inch_is_the_metric_plan_told_in_inch() {
    let (mut limits, mut cells) = (0, 0);
    for path in demos() {
        let name = path.display();
        let (metric, inch) = (planned(&path, Units::Metric), planned(&path, Units::Inch));
        assert_eq!((metric.units, inch.units), (Units::Metric, Units::Inch), "{name}");
        let [own, other] = [&metric, &inch].map(|plan| {
            let mut found = Vec::new();
            numbers(&serde_json::to_value(plan).expect("JSON"), &mut found);
            found
        });
        assert_eq!(own, other, "{name}: numbers of plan.json");
        assert_eq!(stages_csv(&metric), in_units(Units::Inch, || stages_csv(&inch)), "{name}");

        let [text, sheet, svg] = in_units(Units::Inch, || {
            [plan_text(&inch), seen(&sheet_html(&inch).expect("drawn")), seen(&plan_svg(&inch).expect("drawn"))]
        });
        for (what, told) in [("text", &text), ("sheet", &sheet), ("diagram", &svg)] {
            let wrong = metric_words(told);
            assert!(wrong.is_empty(), "{name}: {what} in inch has {wrong:#?}");
        }
        // The limits that a setter keeps, one after the other.
        let ends = told(&sheet, "turn to ", " in, no farther");
        assert_eq!(ends.len(), if inch.verdict.has_plan() { inch.stages.len() } else { 0 }, "{name}");
        for (end, stage) in ends.iter().zip(&inch.stages) {
            assert!(is_limit(*end, stage.to_mm), "{name}: turn to {end} in, {} mm", stage.to_mm);
        }
        let free = told(&sheet, "never more than ", " in unsupported");
        for (most, stage) in free.iter().zip(&inch.stages) {
            assert!(is_limit(*most, stage.unsupported_max_mm), "{name}: {most} in, {} mm", stage.unsupported_max_mm);
        }
        limits += ends.len() + free.len();
        // Cells of the table of stages that are lengths: from, to, unsupported.
        let [own, other] = [(Units::Metric, &metric), (Units::Inch, &inch)]
            .map(|(units, plan)| in_units(units, || tables::stages(plan).rows));
        for (a, b) in own.iter().zip(&other) {
            for column in [1, 2, 4] {
                let [mm, inches] = [a, b].map(|row| row[column].parse::<f64>().expect("a number"));
                assert!((mm / IN_MM - inches).abs() <= STEP_IN + 0.005 / IN_MM, "{name}: {mm} mm, {inches} in");
                cells += 1;
            }
        }
    }
    assert!(limits >= 30 && cells >= 50, "{limits} limits, {cells} cells");
}
