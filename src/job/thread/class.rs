//! Tolerance classes of threads. A class is only told: it changes nothing in a plan.

use super::{Form, Thread};
use crate::diag::Diag;
use crate::say;

/// Which of the two threads that fit together is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// On a shaft.
    External,
    /// In a hole.
    Internal,
}

/// A class in the form of its standard and the side it belongs to; none if it is not a class of this form.
///
/// Metric (ISO 965-1): `6g`, `5g6g`; `6H`. Unified (ASME B1.1): `1A` to `3B`. Pipe (ISO 228-1): `A`, `B`, both external.
/// Trapezoidal (ISO 2903): `7e`, `8c`; `7H`.
pub(super) fn read(form: Form, word: &str) -> Option<(String, Side)> {
    let letters: Vec<char> = word.chars().collect();
    let upper = word.to_ascii_uppercase();
    match form {
        Form::Metric => {
            let sides: Option<Vec<Side>> = letters.chunks(2).map(|pair| grade(pair, "abcdefgh", "EFGH")).collect();
            match sides?[..] {
                [side] => Some((word.to_owned(), side)),
                [first, second] if first == second => Some((word.to_owned(), first)),
                _ => None,
            }
        }
        Form::Trapezoidal => Some((word.to_owned(), grade(&letters, "ce", "H")?)),
        Form::Unified(_) => match upper.as_str() {
            "1A" | "2A" | "3A" => Some((upper, Side::External)),
            "1B" | "2B" | "3B" => Some((upper, Side::Internal)),
            _ => None,
        },
        Form::Pipe => matches!(upper.as_str(), "A" | "B").then_some((upper, Side::External)),
    }
}

/// The side of a grade with its position, as `6g`.
fn grade(pair: &[char], external: &str, internal: &str) -> Option<Side> {
    match pair {
        ['3'..='9', position] if external.contains(*position) => Some(Side::External),
        ['3'..='9', position] if internal.contains(*position) => Some(Side::Internal),
        _ => None,
    }
}

/// Classes to write, as examples.
pub(super) fn examples(form: Form, side: Side) -> &'static str {
    match (form, side) {
        (Form::Metric, Side::External) => "6g",
        (Form::Metric, Side::Internal) => "6H",
        (Form::Unified(_), Side::External) => "2A",
        (Form::Unified(_), Side::Internal) => "2B",
        (Form::Pipe, _) => "A",
        (Form::Trapezoidal, Side::External) => "7e",
        (Form::Trapezoidal, Side::Internal) => "7H",
    }
}

/// See [`Thread::on`].
pub(super) fn on(thread: Thread, side: Side) -> Result<Thread, Diag> {
    let meant = thread.class.as_ref().and_then(|class| Some((class, read(thread.form, class)?.1)));
    let Some((class, _)) = meant.filter(|(_, of)| *of != side) else { return Ok(thread) };
    let what = match side {
        Side::External => say!("thread-class-of-hole", class = class),
        Side::Internal => say!("thread-class-of-shaft", class = class),
    };
    let without = super::write::written(&Thread { class: None, ..thread.clone() });
    // A pipe thread in a hole has one class, which is not written.
    let with = (thread.form != Form::Pipe)
        .then(|| super::write::written(&Thread { class: Some(examples(thread.form, side).into()), ..thread.clone() }));
    Err(Diag::new(what).help(match with {
        Some(with) => say!("thread-class-write", with = with, without = without),
        None => say!("thread-write", designation = without),
    }))
}
