//! Edits of files that are in inches.

use super::Edit;
use crate::fields::{ALL, Field};

impl Edit {
    /// The same edit for a file in inches: each number has the unit of the table, if a number alone would mean
    /// something else there. The value is a number, a list or a map in brackets.
    pub fn with_units(self) -> Edit {
        let root = if self.file == "machine" { "machine." } else { "" };
        let steps = self.at.split('.').map(|step| step.split('[').next().unwrap_or(step));
        let path = format!("{root}{}", steps.collect::<Vec<_>>().join("."));
        let mut key = String::new();
        let parts = self.value.split_inclusive(['{', '}', '[', ']', ',', ':']).map(|part| {
            let (word, mark) = match part.char_indices().last() {
                Some((end, mark)) if "{}[],:".contains(mark) => part.split_at(end),
                _ => (part, ""),
            };
            if mark == ":" {
                key = format!(".{}", word.trim());
            }
            let field =
                field(&format!("{path}{key}")).filter(|field| field.converts() && word.trim().parse::<f64>().is_ok());
            if mark == "}" {
                key.clear();
            }
            field.map_or_else(|| part.to_owned(), |field| format!("{word} {}{mark}", field.unit))
        });
        let value = parts.collect();
        Edit { value, ..self }
    }
}

fn field(path: &str) -> Option<&'static Field> {
    ALL.iter().find(|field| field.path == path)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_number_that_would_mean_inches_gets_its_unit() {
        for (file, at, value, written) in [
            ("job", "stock.diameter", "12.5", "12.5 mm"),
            ("job", "cutting.vc", "120", "120 m/min"),
            ("job", "shaft.sections[2].run_out", "0.02", "0.02 mm"),
            ("job", "shaft.sections[0].taper", "[18, 22]", "[18 mm, 22 mm]"),
            ("job", "shaft.straightness", "0.1", "0.1 mm per m"),
            (
                "job",
                "wishes.hand_over_at",
                "[120, {at: 90.5, nose: 20}, 7]",
                "[120 mm, {at: 90.5 mm, nose: 20 mm}, 7 mm]",
            ),
            ("job", "limits.stiffness_min", "0.4", "0.4"),
            ("job", "limits.free_ratio", "6", "6"),
            ("job", "holding", "no_bush", "no_bush"),
            ("job", "wishes.never_grip[0]", "", ""),
            ("machine", "counter_spindle.collets[3].clamp_force", "4000", "4000 N"),
            ("machine", "counter_spindle.sleeve", "{pitch: 150, stiffness: 5}", "{pitch: 150 mm, stiffness: 5}"),
            (
                "machine",
                "counter_spindle.collets[+]",
                "{name: 12, range: [11.5, 12], hold: 20, passes: 13, clamp_force: 5000}",
                "{name: 12, range: [11.5 mm, 12 mm], hold: 20 mm, passes: 13 mm, clamp_force: 5000 N}",
            ),
            (
                "machine",
                "part_off.tray",
                "{max_length: 90, max_diameter: 20}",
                "{max_length: 90 mm, max_diameter: 20 mm}",
            ),
        ] {
            let edit = Edit { file: file.into(), at: at.into(), value: value.into(), with: None };
            assert_eq!(edit.with_units().value, written, "{at}");
        }
    }
}
