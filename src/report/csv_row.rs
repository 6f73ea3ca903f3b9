//! A row of a table for programs: RFC 4180, point as decimal sign.

use super::numbers;

/// A speed with one decimal, rounded down so that it is never above the limit.
pub(super) fn at_most(rpm: f64) -> f64 {
    (rpm * 10.0 * (1.0 + 1e-9)).floor() / 10.0
}

/// A number, or an empty field if there is none.
pub(super) fn number(value: Option<f64>, places: usize) -> String {
    value.filter(|v| v.is_finite()).map(|v| numbers::trimmed_pointed(v, places)).unwrap_or_default()
}

/// A row with its line end.
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
