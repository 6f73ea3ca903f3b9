//! Fitted stiffnesses as text, and as a fragment of a machine file.

use super::{numbers, table};
use crate::job::readings::Fitted;
use crate::lang;
use crate::say;

/// A fitted stiffness is never taken as surer than this, as a share: the model and the set-up are not perfect. Common practice, no source.
const LEAST_SPREAD: f64 = 0.02;
/// Width of the text.
const COLUMNS: usize = 98;

/// The fit as text.
pub fn fitted_text(fitted: &Fitted) -> String {
    let readings = say!("readings", number = fitted.readings.len());
    let head = say!("fitted-head", machine = fitted.machine, readings = readings, more = fitted.spare_readings);
    let mut text = format!("{head}\n");
    if fitted.spare_readings > 0 {
        text += &format!("  {}\n", say!("fitted-misfit", misfit = numbers::fixed(fitted.misfit, 2)));
    }
    text += &format!("  {}\n\n", say!("fitted-condition", condition = numbers::fixed(fitted.condition, 1)));
    let heads = [
        table::words(lang::text("fitted-support")),
        table::number(lang::text("fitted-stiffness")),
        table::number(lang::text("fitted-error")),
        table::number(lang::text("fitted-range")),
        table::number(lang::text("fitted-before")),
    ];
    let rows: Vec<Vec<String>> = fitted
        .supports
        .iter()
        .map(|s| {
            let [low, high] = s.likely_n_per_um;
            vec![
                s.support.name().to_string(),
                numbers::value(s.stiffness_n_per_um),
                format!("± {} %", numbers::fixed(100.0 * s.standard_error, 1)),
                say!("fitted-range-of", low = numbers::value(low), high = numbers::value(high)),
                numbers::value(s.before_n_per_um),
            ]
        })
        .collect();
    text += &table::render(&heads, &rows, COLUMNS);
    let heads = [
        table::words(lang::text("fitted-set-up")),
        table::words(lang::text("fitted-reading")),
        table::number(lang::text("fitted-measured")),
        table::number(lang::text("fitted-fitted")),
        table::words(lang::text("fitted-unit")),
        table::number(lang::text("fitted-off")),
    ];
    let rows: Vec<Vec<String>> = fitted
        .readings
        .iter()
        .map(|r| {
            vec![
                r.set_up.clone(),
                r.reading.clone(),
                numbers::fixed(r.measured, 1),
                numbers::fixed(r.fitted, 1),
                r.unit.to_string(),
                numbers::fixed(r.off, 1),
            ]
        })
        .collect();
    text += "\n";
    text += &table::render(&heads, &rows, COLUMNS);
    if !fitted.notes.is_empty() {
        text += "\n";
    }
    for note in &fitted.notes {
        text += &table::wrap("  - ", note, COLUMNS);
        if !text.ends_with('\n') {
            text.push('\n');
        }
    }
    text
}

/// A fragment of a machine file: the fitted stiffnesses, with the text of the fit as comments.
pub fn fitted_yaml(fitted: &Fitted) -> String {
    let mut yaml = String::new();
    for line in fitted_text(fitted).lines() {
        yaml += format!("# {line}").trim_end();
        yaml.push('\n');
    }
    yaml += &format!("#\n# {}\n", lang::text("fitted-into-file"));
    for s in &fitted.supports {
        let key = s.support.key();
        yaml += &format!("{key}: {{stiffness: {}}}\n", three_digits(s.stiffness_n_per_um));
    }
    let spreads = fitted.supports.iter();
    let spreads =
        spreads.map(|s| format!("{}: {}", s.support.key(), numbers::trimmed(s.standard_error.max(LEAST_SPREAD), 3)));
    yaml += &format!("scatter: {{{}}}\n", spreads.collect::<Vec<_>>().join(", "));
    yaml
}

/// A value to three significant digits, without an exponent.
fn three_digits(value: f64) -> String {
    let decimals = (2 - value.abs().log10().floor() as i32).max(0) as usize;
    numbers::trimmed(value, decimals)
}

#[cfg(test)]
mod tests {
    use super::three_digits;

    #[test]
    fn a_stiffness_keeps_three_digits() {
        assert_eq!(three_digits(147.83), "148");
        assert_eq!(three_digits(4.9962), "5");
        assert_eq!(three_digits(0.123_456), "0.123");
        assert_eq!(three_digits(1234.6), "1235");
    }
}
