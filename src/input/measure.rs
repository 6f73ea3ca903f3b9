//! Values as files have them: a number alone, in the unit of its file, or a number with a unit.

use super::node::Node;
use crate::fields::Field;
use crate::lang::Units;

/// A value that was read.
#[derive(Debug, PartialEq)]
pub(super) struct Measured {
    /// In the unit of the table.
    pub(super) value: f64,
    /// The system of its unit; that of the file where the unit is the same in both.
    pub(super) system: Units,
}

/// The value of a number alone in a file of a system.
pub(super) fn alone(field: &Field, number: f64, file: Units) -> f64 {
    field.unit_in(file).map_or(number, |unit| unit.to_table(number))
}

/// The value of a text such as `1.5 in`, `1 1/4 in`, `0.8 µm`; in a file in inches also of a fraction alone, such as `1/2`.
/// None: it is no number, or its unit is not one of the field.
pub(super) fn of_text(field: &Field, text: &str, file: Units) -> Option<Measured> {
    let (number, word) = split(text.trim());
    let unit =
        if word.is_empty() { field.unit_in(file).filter(|_| number.contains('/')) } else { field.unit_named(word) };
    let unit = unit?;
    let number = match unit.system {
        Some(Units::Inch) => decimal(number).or_else(|| fraction(number)),
        _ => decimal(number),
    };
    Some(Measured { value: unit.to_table(number?), system: unit.system.unwrap_or(file) })
}

/// The value of a node. None: it is no value of the field.
pub(super) fn of_node(field: &Field, node: &Node, file: Units) -> Option<f64> {
    match node {
        Node::Number(number) => Some(alone(field, *number, file)),
        Node::Text(text) => of_text(field, text, file).map(|read| read.value),
        _ => None,
    }
}

/// A value as a node of a file, in the file's own unit.
pub(super) fn as_node(field: &Field, value: f64, file: Units) -> Node {
    match field.unit_in(file) {
        Some(unit) => Node::Text(format!("{} {}", unit.from_table(value), unit.name)),
        None => Node::Number(value),
    }
}

/// The number that a text begins with, and the word behind it.
pub(super) fn split(text: &str) -> (&str, &str) {
    let digits = |c: char| c.is_ascii_digit() || c == '.';
    let power = |at: usize| {
        let behind = text.get(at + 1..).unwrap_or_default();
        let behind = behind.strip_prefix(['+', '-']).unwrap_or(behind);
        text.get(..at).is_some_and(|before| before.ends_with(digits))
            && behind.starts_with(|c: char| c.is_ascii_digit())
    };
    let end = text.char_indices().find(|(at, c)| match c {
        '+' | '-' | '/' | ' ' => false,
        'e' | 'E' => !power(*at),
        c => !digits(*c),
    });
    let (number, word) = text.split_at(end.map_or(text.len(), |(at, _)| at));
    (number.trim(), word.trim())
}

fn decimal(number: &str) -> Option<f64> {
    number.parse().ok()
}

/// A fraction of an inch: `1/2`, `1 1/4`, `1-1/4`, `-1/8`.
fn fraction(number: &str) -> Option<f64> {
    let (sign, bare) = match number.strip_prefix('-') {
        Some(bare) => (-1.0, bare),
        None => (1.0, number.strip_prefix('+').unwrap_or(number)),
    };
    let whole_number =
        |text: &str| text.parse::<u32>().ok().filter(|_| text.bytes().all(|b| b.is_ascii_digit())).map(f64::from);
    let (before, under) = bare.split_once('/')?;
    let (whole, over) = before.trim().rsplit_once([' ', '-']).unwrap_or(("0", before.trim()));
    let (whole, over, under) = (whole_number(whole.trim())?, whole_number(over)?, whole_number(under.trim())?);
    (over < under).then(|| sign * (whole + over / under))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fields::{CLAMP_FORCE, FEED, LENGTH, MC, RA, RAPID, TOLERANCE, VC};

    fn read(field: &Field, text: &str) -> Option<f64> {
        of_text(field, text, Units::Metric).map(|read| read.value)
    }

    /// From the definitions of the units: 1 in is 25.4 mm, 1 ft is 0.3048 m, 1 lbf is 4.4482216152605 N.
    #[test]
    fn a_value_may_have_any_unit_of_its_kind() {
        for (field, text, value) in [
            (&LENGTH, "1.5 in", 38.1),
            (&LENGTH, "1.5\"", 38.1),
            (&LENGTH, "1.5in.", 38.1),
            (&LENGTH, "1.5″", 38.1),
            (&LENGTH, ".5 IN", 12.7),
            (&LENGTH, "1/2 in", 12.7),
            (&LENGTH, "1 1/4 in", 31.75),
            (&LENGTH, "1-1/4\"", 31.75),
            (&LENGTH, "3/64 in", 1.190_625),
            (&LENGTH, "38 mm", 38.0),
            (&LENGTH, "5e-2 in", 1.27),
            (&TOLERANCE, "-0.0005 in", -0.0127),
            (&TOLERANCE, "-1/8 in", -3.175),
            (&RA, "63 uin", 1.6002),
            (&RA, "32 µin", 0.8128),
            (&RA, "32 μin", 0.8128),
            (&RA, "0.8 um", 0.8),
            (&RA, "0.8 µm", 0.8),
            (&VC, "400 sfm", 121.92),
            (&VC, "120 m/min", 120.0),
            (&FEED, "0.005 ipr", 0.127),
            (&FEED, "0.005 in/rev", 0.127),
            (&FEED, "0.05 mm/rev", 0.05),
            (&CLAMP_FORCE, "200 lbf", 889.644_323_052_1),
            (&CLAMP_FORCE, "800 N", 800.0),
            (&RAPID, "1200 ipm", 30.48),
        ] {
            assert_eq!(read(field, text), Some(value), "{text}");
        }
    }

    #[test]
    fn what_is_no_number_or_has_another_unit_is_not_read() {
        for (field, text) in [
            (&LENGTH, "5 kg"),
            (&LENGTH, "5 sfm"),
            (&VC, "5 in"),
            (&MC, "0.2 in"),
            (&LENGTH, "1/2 mm"),
            (&LENGTH, "1/0 in"),
            (&LENGTH, "3/2 in"),
            (&LENGTH, "1/2"),
            (&LENGTH, "in"),
            (&LENGTH, "1,5 in"),
            (&LENGTH, "34"),
            (&LENGTH, "1 2 in"),
            (&LENGTH, "inf in"),
            (&LENGTH, ""),
        ] {
            assert_eq!(read(field, text), None, "{text}");
        }
    }

    #[test]
    fn a_number_alone_has_the_unit_of_its_file() {
        assert_eq!((alone(&LENGTH, 0.5, Units::Inch), alone(&LENGTH, 0.5, Units::Metric)), (12.7, 0.5));
        assert_eq!(alone(&MC, 0.25, Units::Inch), 0.25);
        assert_eq!(of_text(&LENGTH, "1/2", Units::Inch), Some(Measured { value: 12.7, system: Units::Inch }));
        for system in [Units::Metric, Units::Inch] {
            assert_eq!(of_node(&LENGTH, &as_node(&LENGTH, 12.7, system), system), Some(12.7));
        }
    }
}
