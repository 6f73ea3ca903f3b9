//! Reads a number of a file, with or without a unit, and checks it.

use super::measure::{Measured, alone, of_text};
use super::node::Node;
use super::slips::{not_a_number, shown};
use crate::diag::Diag;
use crate::fields::Field;
use crate::lang::Units;
use crate::say;

/// The value of a node in a file of a system, checked against the field's range. `written`: as the file has it.
///
/// # Errors
/// It is no number, its unit is not one of the field, or it is not in range. The error has no place.
pub(super) fn read(field: &Field, node: &Node, written: &str, file: Units) -> Result<Measured, Diag> {
    let (read, told) = match node {
        Node::Number(number) if !number.is_finite() || written.chars().all(|c| "+-.0123456789eE".contains(c)) => {
            let unit = field.unit_in(file).map_or("", |unit| unit.name);
            (Measured { value: alone(field, *number, file), system: file }, format!("{number} {unit}"))
        }
        Node::Number(number) => {
            let diag = Diag::new(say!("number-not-decimal", value = shown(written)));
            return Err(diag.help(say!("number-write", value = number.to_string())));
        }
        Node::Text(text) => {
            let read = of_text(field, text, file).ok_or_else(|| not_a_number(field, text, written, file))?;
            (read, shown(text))
        }
        other => return Err(Diag::new(say!("number-needed", kind = other.kind())).help(field.advice(file))),
    };
    field.check_written(read.value, told.trim_end(), read.system)?;
    Ok(read)
}
