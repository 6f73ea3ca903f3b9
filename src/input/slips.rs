//! Slips of the pen that the reader knows, and what to write instead.

use super::measure;
use crate::diag::Diag;
use crate::fields::Field;
use crate::lang::{self, Units};
use crate::say;

/// Longest quotation of the file in a message, characters.
const SHOWN_MAX: usize = 60;

/// A key that is not known, and what is meant.
pub(super) fn unknown_key(key: &str, meant: Option<&str>, known: &[&str]) -> Diag {
    if key == "<<" {
        return Diag::new(lang::text("yaml-merge-keys")).help(lang::text("yaml-merge-keys-help"));
    }
    let help = match meant {
        _ if key == "station_pitch" => lang::text("key-is-of-planning").to_owned(),
        Some(near) => say!("did-you-mean", near = near),
        None => say!("key-unknown-help", keys = known.join(", ")),
    };
    Diag::new(say!("key-unknown", key = shown(key))).help(help)
}

/// Text in place of a number, and what to write. `units`: those of the file.
pub(super) fn not_a_number(field: &Field, text: &str, written: &str, units: Units) -> Diag {
    let text = text.trim();
    if let Ok(value) = text.parse::<f64>()
        && value.is_finite()
        && written.starts_with(['"', '\''])
    {
        return Diag::new(say!("number-in-quotes", value = text)).help(say!("number-in-quotes-help", value = text));
    }
    let diag = Diag::new(say!("number-unreadable", text = shown(text))).help(field.advice(units));
    let bare = text.trim_start_matches(['+', '-', '.']).to_lowercase();
    if ["nan", "inf", "infinity"].contains(&bare.as_str()) {
        return diag;
    }
    let with_point = text.replace(',', ".");
    if with_point != text
        && (with_point.parse::<f64>().is_ok() || measure::of_text(field, &with_point, units).is_some())
    {
        return Diag::new(say!("number-decimal-comma", text = text)).help(say!("number-write", value = with_point));
    }
    let (number, word) = measure::split(&with_point);
    if number.parse::<f64>().is_ok() && word.starts_with(|c: char| c.is_alphabetic() || "%°\"″".contains(c)) {
        let help = match field.unit_in(units) {
            None => say!("number-without-unit"),
            Some(own) => say!("number-in-unit", units = field.unit_names(), own = own.name),
        };
        return Diag::new(say!("number-has-unit", text = shown(text))).help(help);
    }
    diag
}

/// A quotation of the file for a message: short, and on one line.
pub(super) fn shown(text: &str) -> String {
    let taken: String = text.chars().take(SHOWN_MAX).collect();
    let mut out = crate::shown::line(&taken).into_owned();
    if text.chars().count() > SHOWN_MAX {
        out.push('…');
    }
    out
}
