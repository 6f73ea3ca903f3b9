//! The stages for a spreadsheet: RFC 4180, one row per stage, units in the header, point as decimal sign.

use super::{content, numbers};
use crate::job::plan::{Plan, Stage};
use crate::lang::{self, Spoken};

const HEADER: [&str; 28] = [
    "stage",
    "from_mm",
    "to_mm",
    "travel_mm",
    "grip_from_mm",
    "grip_to_mm",
    "grip_nose_mm",
    "grip_diameter_mm",
    "grip_section",
    "unsupported_max_mm",
    "counter_spindle_start_mm",
    "counter_spindle_end_mm",
    "headstock_start_mm",
    "headstock_end_mm",
    "headstock_regrips_mm",
    "rpm_min",
    "rpm_max",
    "time_s",
    "governing_check",
    "demand",
    "limit",
    "unit",
    "utilisation",
    "worst_at_turned_mm",
    "worst_at_mm",
    "rpm_max_by_turned_mm",
    "l_over_d_max",
    "grip_ground_diameter_mm",
];

/// One row per stage. A field that does not apply (the grip of a free stage) is empty. Several re-grips in one stage
/// are separated by `; `. If the stretches of a stage have several speeds, the highest may be too fast elsewhere, so
/// the last field has the speed of each stretch. A program reads it, so it is the same in every language and metric.
pub fn stages_csv(plan: &Plan) -> String {
    lang::speaking(Spoken::default(), || {
        let mut out = row(HEADER.iter().map(|h| h.to_string()));
        for stage in &plan.stages {
            out.push_str(&row(fields(plan, stage)));
        }
        out
    })
}

fn fields(plan: &Plan, stage: &Stage) -> impl Iterator<Item = String> {
    let grip = stage.grip.as_ref();
    let governing = stage.governing();
    let of_grip = |value: fn(&crate::job::plan::GripPlace) -> f64| number(grip.map(value), 3);
    let of_check = |value: fn(&crate::job::plan::CheckResult) -> f64, places| number(governing.map(value), places);
    let regrips: Vec<String> = stage.regrips_mm.iter().map(|&r| number(Some(r), 3)).collect();
    [
        stage.number.to_string(),
        number(Some(stage.from_mm), 3),
        number(Some(stage.to_mm), 3),
        number(Some(stage.travel_mm), 3),
        of_grip(|g| g.from_mm),
        of_grip(|g| g.to_mm),
        of_grip(|g| g.nose_mm),
        of_grip(|g| g.diameter_mm),
        grip.map(|g| g.section.to_string()).unwrap_or_default(),
        number(Some(stage.unsupported_max_mm), 3),
        number(stage.counter_spindle_start_mm, 3),
        number(stage.counter_spindle_end_mm, 3),
        number(Some(stage.headstock_start_mm), 3),
        number(Some(stage.headstock_end_mm), 3),
        regrips.join("; "),
        number(Some(at_most(stage.rpm_min)), 1),
        number(Some(at_most(stage.rpm_max)), 1),
        number(Some(stage.time_s), 1),
        governing.map(|c| c.check.clone()).unwrap_or_default(),
        of_check(|c| c.demand, 6),
        of_check(|c| c.limit, 6),
        governing.map(|c| c.unit.clone()).unwrap_or_default(),
        of_check(|c| c.utilisation, 4),
        of_check(|c| c.turned_mm, 3),
        of_check(|c| c.at_mm, 3),
        content::speeds_in_row(plan, stage),
        number(stage.l_over_d_max, 2),
        number(grip.and_then(|g| plan.shaft.sections.get(g.section - 1)?.ground_diameter_mm), 3),
    ]
    .into_iter()
}

/// A speed with one decimal, rounded down so that it is never above the limit.
pub(super) fn at_most(rpm: f64) -> f64 {
    (rpm * 10.0 * (1.0 + 1e-9)).floor() / 10.0
}

/// A number, or an empty field if there is none.
pub(super) fn number(value: Option<f64>, places: usize) -> String {
    value.filter(|v| v.is_finite()).map(|v| numbers::trimmed_pointed(v, places)).unwrap_or_default()
}

pub(super) fn row(fields: impl Iterator<Item = String>) -> String {
    let mut line = fields.map(|f| quoted(&f)).collect::<Vec<_>>().join(",");
    line.push_str("\r\n");
    line
}

/// RFC 4180, rules 5 to 7: a field with comma, quote or line break stands in quotes, a quote inside is doubled.
fn quoted(field: &str) -> String {
    if field.contains([',', '"', '\r', '\n']) {
        format!("\"{}\"", field.replace('"', "\"\""))
    } else {
        field.to_string()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_are_quoted_as_the_standard_says() {
        assert_eq!(quoted("whirl"), "whirl");
        assert_eq!(quoted("a,b"), "\"a,b\"");
        assert_eq!(quoted("say \"ah\""), "\"say \"\"ah\"\"\"");
        assert_eq!(quoted("two\nlines"), "\"two\nlines\"");
    }

    #[test]
    fn a_missing_number_is_an_empty_field() {
        assert_eq!(number(None, 3), "");
        assert_eq!(number(Some(f64::NAN), 3), "");
    }
}
