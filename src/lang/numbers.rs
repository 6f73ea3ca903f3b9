//! Numbers as the language writes them. Values that stand in a file or a call keep their point: the program reads nothing else.

use super::text;

/// Stands for a number that is missing or not finite.
pub const NONE: &str = "–";

/// A number written with a point, with the decimal mark of the language.
fn in_language(written: String) -> String {
    match text("decimal-mark") {
        "." => written,
        mark => written.replace('.', mark),
    }
}

/// With as many decimals as it has.
pub fn number(value: f64) -> String {
    in_language(value.to_string())
}

/// With exactly `places` decimals. A zero never carries a sign.
///
/// ```
/// use spanhold::lang::fixed;
/// assert_eq!(fixed(41.25, 1), "41.2");
/// assert_eq!(fixed(-0.04, 1), "0.0");
/// ```
pub fn fixed(value: f64, places: usize) -> String {
    in_language(pointed(value, places))
}

/// As [`fixed`], with a point in every language.
fn pointed(value: f64, places: usize) -> String {
    if !value.is_finite() {
        return NONE.to_owned();
    }
    let text = format!("{value:.places$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.bytes().all(|b| b == b'0' || b == b'.') => rest.to_owned(),
        _ => text,
    }
}

/// With at most `places` decimals and no zeros at the end.
///
/// ```
/// use spanhold::lang::trimmed;
/// assert_eq!(trimmed(958.5, 2), "958.5");
/// assert_eq!(trimmed(180.0, 2), "180");
/// ```
pub fn trimmed(value: f64, places: usize) -> String {
    in_language(trimmed_pointed(value, places))
}

/// As [`trimmed`], with a point in every language: for a file that a program reads.
pub fn trimmed_pointed(value: f64, places: usize) -> String {
    let text = pointed(value, places);
    if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.').to_owned() } else { text }
}
