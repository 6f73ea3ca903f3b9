//! The table as CSV and as JSON, in English and metric: a program reads them.

use super::positions;
use crate::job::plan::{Plan, Position};
use crate::lang::{self, Spoken};
use crate::report::csv::{at_most, number, row};

const HEADER: [&str; 18] = [
    "row",
    "stage",
    "actor",
    "event",
    "what",
    "wait_point",
    "waits_for",
    "start_s",
    "turned_mm",
    "diameter_mm",
    "leading_diameter_mm",
    "lag_mm",
    "headstock_mm",
    "counter_spindle_mm",
    "headstock_rpm",
    "counter_spindle_rpm",
    "feed_mm",
    "tool",
];

/// One row per event (RFC 4180). The last row has no number: it holds the caution in the column `what`.
pub fn positions_csv(plan: &Plan) -> String {
    let table = lang::speaking(Spoken::default(), || positions(plan));
    let caution = HEADER.map(|head| if head == "what" { table.caution.clone() } else { String::new() });
    let rows = table.rows.iter().map(|r| row(fields(r).into_iter()));
    let heads = std::iter::once(row(HEADER.iter().map(|h| h.to_string())));
    heads.chain(rows).chain([row(caution.into_iter())]).collect()
}

fn fields(r: &Position) -> [String; 18] {
    let count = |n: Option<usize>| n.map(|n| n.to_string()).unwrap_or_default();
    [
        r.row.to_string(),
        count(r.stage),
        r.actor.clone(),
        r.event.clone(),
        r.what.clone(),
        count(r.wait_point),
        r.waits_for.clone(),
        number(r.start_s, 1),
        number(r.turned_mm, 3),
        number(r.diameter_mm, 3),
        number(r.leading_diameter_mm, 3),
        number(r.lag_mm, 3),
        number(r.headstock_mm, 3),
        number(r.counter_spindle_mm, 3),
        number(r.headstock_rpm.map(at_most), 1),
        number(r.counter_spindle_rpm.map(at_most), 1),
        number(r.feed_mm, 4),
        r.tool.clone(),
    ]
}

/// The same as JSON, with the zero points and directions of the positions.
///
/// # Errors
/// The library that writes it fails.
pub fn positions_json(plan: &Plan) -> Result<String, serde_json::Error> {
    serde_json::to_string_pretty(&lang::speaking(Spoken::default(), || positions(plan)))
}
