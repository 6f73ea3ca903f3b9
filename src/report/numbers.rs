//! How a number is written. Every output rounds here and nowhere else, so the same plan gives the same characters.
//!
//! Numbers that are not finite become [`NONE`]; a zero never carries a sign.

use crate::lang::{self, Measure, Units};
pub use crate::lang::{NONE, fixed, trimmed, trimmed_pointed};

/// A length along the shaft in mm: at most two decimals.
pub fn mm(value_mm: f64) -> String {
    Measure::Place.trimmed(value_mm, 2)
}

/// A place where the machine stops, or a length that must not be exceeded: as [`mm`], but in inch never beyond the true value.
pub fn stop_mm(value_mm: f64) -> String {
    Measure::Place.at_most(value_mm, 2)
}

/// As [`stop_mm`] where room is short: at most one decimal in mm.
pub fn short_mm(value_mm: f64) -> String {
    Measure::Place.at_most(value_mm, 1)
}

/// A diameter or a small distance in mm: at most three decimals.
pub fn fine_mm(value_mm: f64) -> String {
    Measure::Size.trimmed(value_mm, 3)
}

/// A depth of cut in mm: at most two decimals.
pub fn depth_mm(value_mm: f64) -> String {
    Measure::Size.trimmed(value_mm, 2)
}

/// A feed in mm/rev: at most four decimals.
pub fn feed_mm(value_mm: f64) -> String {
    Measure::Feed.trimmed(value_mm, 4)
}

/// A feed in mm/rev where room is short: at most three decimals, in inch four.
pub fn short_feed_mm(value_mm: f64) -> String {
    let places = if lang::units() == Units::Inch { 4 } else { 3 };
    trimmed(Measure::Feed.told(value_mm), places)
}

/// A force in N: a whole number.
pub fn force_n(value_n: f64) -> String {
    Measure::Force.trimmed(value_n, 0)
}

/// A time in s: one decimal, always.
pub fn seconds(value_s: f64) -> String {
    fixed(value_s, 1)
}

/// A speed in rev/min: a whole number, rounded down, because it is set at the machine and must not be above the limit.
pub fn rpm(value_rpm: f64) -> String {
    // A number that is only by a rounding error below a whole number becomes that number.
    fixed((value_rpm * (1.0 + 1e-9)).floor(), 0)
}

/// A range of speeds, or one speed if both look the same. A shaft that stands still has no speed.
pub fn rpm_range(low_rpm: f64, high_rpm: f64) -> String {
    if high_rpm <= 0.0 {
        return NONE.to_string();
    }
    let (low, high) = (rpm(low_rpm), rpm(high_rpm));
    if low == high { low } else { format!("{low}–{high}") }
}

/// A share of a whole, in whole percent.
pub fn percent(share: f64) -> String {
    format!("{} %", fixed(share * 100.0, 0))
}

/// A share of counted parts in whole percent. A few are never written as 0 %, and almost all never as 100 %.
///
/// ```
/// use spanhold::report::numbers::share;
/// assert_eq!(share(0.21), "21 %");
/// assert_eq!(share(0.0025), "0.25 %");
/// assert_eq!(share(0.9975), "99.75 %");
/// assert_eq!(share(0.0), "0 %");
/// ```
pub fn share(share: f64) -> String {
    let percent = share * 100.0;
    let places = if percent > 0.0 && !(1.0..=99.0).contains(&percent) { 2 } else { 0 };
    format!("{} %", trimmed(percent, places))
}

/// A utilisation in whole percent, but never rounded across the limit: what passes is never shown as more than 100 %,
/// what fails never as 100 %.
///
/// ```
/// use spanhold::report::numbers::utilisation;
/// assert_eq!(utilisation(0.916), "92 %");
/// assert_eq!(utilisation(0.9991), "99.9 %");
/// assert_eq!(utilisation(1.0), "100 %");
/// assert_eq!(utilisation(1.00001), "100.1 %");
/// ```
pub fn utilisation(share: f64) -> String {
    let percent = share * 100.0;
    if percent > 100.0 && percent < 100.5 {
        format!("{} %", fixed((percent * 10.0).ceil() / 10.0, 1))
    } else if (99.5..100.0).contains(&percent) {
        format!("{} %", fixed((percent * 10.0).floor() / 10.0, 1))
    } else {
        format!("{} %", fixed(percent, 0))
    }
}

/// A value of a check: three significant decimals for small numbers, fewer for large ones.
pub fn value(value: f64) -> String {
    let places = match value.abs() {
        v if v >= 100.0 => 0,
        v if v >= 10.0 => 1,
        v if v >= 1.0 => 2,
        v if v >= 0.01 => 3,
        _ => 5,
    };
    trimmed(value, places)
}

/// Depths of cut beyond this are shown alike, because no tool takes them. Common practice, no source.
const DEEPEST_MM: f64 = 10.0;

/// The depth at which chatter begins, in mm; `> 10` where no cut comes near it.
pub fn depth_limit(value_mm: f64) -> String {
    if value_mm > DEEPEST_MM {
        format!("> {}", Measure::Size.trimmed(DEEPEST_MM, 0))
    } else {
        value_of(Measure::Size, value_mm)
    }
}

/// As [`value`], of something that is told in other units in inch.
pub fn value_of(measure: Measure, metric: f64) -> String {
    value(measure.told(metric))
}

/// A mass in kg: two decimals, four below 0.1 kg.
pub fn kg(value_kg: f64) -> String {
    trimmed(value_kg, if value_kg.abs() < 0.1 { 4 } else { 2 })
}

/// An amount of money: two decimals, always.
pub fn money(value: f64) -> String {
    fixed(value, 2)
}

/// `1 stage`, `5 stages`.
pub fn count(n: usize, one: &str, many: &str) -> String {
    format!("{n} {}", if n == 1 { one } else { many })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_zero_has_no_sign() {
        assert_eq!(fixed(-0.0, 0), "0");
        assert_eq!(trimmed(-0.0004, 2), "0");
        assert_eq!(seconds(-0.01), "0.0");
        assert_eq!(trimmed(-0.4, 1), "-0.4");
    }

    #[test]
    fn what_is_not_finite_is_a_dash() {
        for v in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
            assert_eq!(mm(v), NONE);
            assert_eq!(utilisation(v), "– %");
            assert_eq!(value(v), NONE);
        }
    }

    #[test]
    fn zeros_are_trimmed_behind_the_point_only() {
        assert_eq!(mm(1200.0), "1200");
        assert_eq!(mm(12.50), "12.5");
        assert_eq!(fine_mm(0.025), "0.025");
    }

    #[test]
    fn a_speed_range_of_one_speed_is_one_number() {
        assert_eq!(rpm_range(1782.2, 1782.9), "1782");
        assert_eq!(rpm(1105.6), "1105");
        assert_eq!(rpm(1_105.999_999_999_8), "1106");
        assert_eq!(rpm_range(1450.0, 3714.0), "1450–3714");
        assert_eq!(rpm_range(0.0, 0.0), NONE);
    }

    #[test]
    fn a_depth_no_tool_takes_is_not_told_in_full() {
        assert_eq!(depth_limit(2028.4), "> 10");
        assert_eq!(depth_limit(3.456), "3.46");
    }

    #[test]
    fn values_keep_three_figures() {
        assert_eq!(value(0.41), "0.41");
        assert_eq!(value(0.00321), "0.00321");
        assert_eq!(value(35.27), "35.3");
    }
}
