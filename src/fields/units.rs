//! The units that a value may be written in, and how it becomes the unit of the table.
//!
//! Inside the program each field has the unit of the table. A file in inches has other units for lengths, roughness, feeds,
//! cutting speeds, forces and rapid motions; all other units are the same in both systems.

use super::{Field, RAPID, spaced};
use crate::diag::Diag;
use crate::lang::{self, Units};
use crate::say;
use crate::units::{FOOT_M, INCH_MM, POUND_FORCE_N};

/// A unit of a value.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Unit {
    /// As messages tell it.
    pub name: &'static str,
    /// Other ways to write it, in small letters.
    words: &'static [&'static str],
    /// The system that it belongs to. None: it is the same in both.
    pub system: Option<Units>,
    /// One of it in the unit of the table.
    factor: f64,
}

impl Unit {
    /// All ways to write it.
    pub fn ways_to_write(&self) -> impl Iterator<Item = &'static str> {
        std::iter::once(self.name).chain(self.words.iter().copied())
    }

    /// A value in this unit, in the unit of the table. It is rounded to 13 digits, so that 0.5 in is 12.7 mm to the last one.
    pub fn to_table(&self, value: f64) -> f64 {
        if self.factor == 1.0 {
            return value;
        }
        let exact = value * self.factor;
        format!("{exact:.12e}").parse().unwrap_or(exact)
    }

    /// A value of the table in this unit. It may have endless decimals.
    pub fn from_table(&self, value: f64) -> f64 {
        value / self.factor
    }
}

const fn metric(name: &'static str, words: &'static [&'static str], factor: f64) -> Unit {
    Unit { name, words, system: Some(Units::Metric), factor }
}

const fn inch(name: &'static str, words: &'static [&'static str], factor: f64) -> Unit {
    Unit { name, words, system: Some(Units::Inch), factor }
}

const fn same(name: &'static str, words: &'static [&'static str]) -> Unit {
    Unit { name, words, system: None, factor: 1.0 }
}

const IN: &[&str] = &["in.", "inch", "inches", "\"", "″"];
const UM: &[&str] = &["um"];
const UIN: &[&str] = &["uin"];

/// In each list the first unit of a system is that of a number alone.
const LENGTH: &[Unit] =
    &[metric("mm", &[], 1.0), metric("µm", UM, 0.001), inch("in", IN, INCH_MM), inch("µin", UIN, INCH_MM / 1e6)];
const SMALL: &[Unit] = &[
    metric("µm", UM, 1.0),
    metric("mm", &[], 1000.0),
    inch("µin", UIN, INCH_MM / 1000.0),
    inch("in", IN, INCH_MM * 1000.0),
];
const FEED: &[Unit] = &[metric("mm/rev", &["mm/r"], 1.0), inch("in/rev", &["ipr", "in/r"], INCH_MM)];
const SPEED: &[Unit] = &[metric("m/min", &[], 1.0), inch("sfm", &["sfpm", "ft/min"], FOOT_M)];
const RAPID_SPEED: &[Unit] = &[
    metric("m/min", &[], 1.0),
    metric("mm/min", &[], 0.001),
    inch("in/min", &["ipm"], INCH_MM / 1000.0),
    inch("ft/min", &[], FOOT_M),
];
const FORCE: &[Unit] = &[metric("N", &[], 1.0), inch("lbf", &[], POUND_FORCE_N)];
const BOW: &[Unit] = &[metric("mm per m", &["mm/m"], 1.0), inch("in per ft", &["in/ft"], INCH_MM / FOOT_M)];

impl Field {
    /// The units that it may be written in. None: a ratio or a count.
    pub fn units(&self) -> &'static [Unit] {
        match self.unit {
            "mm" => LENGTH,
            "µm" => SMALL,
            "mm/rev" => FEED,
            "m/min" if self.path == RAPID.path => RAPID_SPEED,
            "m/min" => SPEED,
            "N" => FORCE,
            "mm per m" => BOW,
            "degrees" => const { &[same("degrees", &["°", "deg"])] },
            "rev/min" => const { &[same("rev/min", &["rpm", "1/min"])] },
            "s" => const { &[same("s", &[])] },
            "h" => const { &[same("h", &[])] },
            "Hz" => const { &[same("Hz", &[])] },
            "kW" => const { &[same("kW", &[])] },
            "GPa" => const { &[same("GPa", &[])] },
            "kg/m³" => const { &[same("kg/m³", &["kg/m3"])] },
            "N/mm²" => const { &[same("N/mm²", &["n/mm2", "mpa"])] },
            "N/µm" => const { &[same("N/µm", &["n/um"])] },
            "N·m" => const { &[same("N·m", &["nm", "n m"])] },
            "N·m/rad" => const { &[same("N·m/rad", &["nm/rad"])] },
            _ => &[],
        }
    }

    /// The unit of a number alone in a file of a system. None: a ratio or a count.
    pub fn unit_in(&self, system: Units) -> Option<&'static Unit> {
        self.units().iter().find(|unit| unit.system.is_none_or(|of| of == system))
    }

    /// The unit that a word means. Capitals and the two signs for micro make no difference.
    pub fn unit_named(&self, word: &str) -> Option<&'static Unit> {
        let plain = |word: &str| word.trim().to_lowercase().replace('μ', "µ");
        let word = plain(word);
        self.units().iter().find(|unit| plain(unit.name) == word || unit.words.contains(&word.as_str()))
    }

    /// Whether a number alone means another value in inch files than in metric ones.
    pub fn converts(&self) -> bool {
        self.unit_in(Units::Inch).is_some_and(|unit| unit.system.is_some())
    }

    /// The units that it may be written in, as a list: `mm, µm, in, µin`.
    pub fn unit_names(&self) -> String {
        lang::lists::commas(&self.units().iter().map(|unit| unit.name).collect::<Vec<_>>())
    }

    /// The bounds in a system of units, rounded inwards to five digits where they are converted.
    pub fn bounds(&self, system: Units) -> (f64, f64) {
        match self.unit_in(system) {
            Some(unit) if unit.factor != 1.0 => {
                (inwards(self.min / unit.factor, f64::ceil), inwards(self.max / unit.factor, f64::floor))
            }
            _ => (self.min, self.max),
        }
    }

    /// The range in words: `0.01 to 6000 mm`.
    pub fn range(&self, system: Units) -> String {
        let (low, high) = self.bounds(system);
        format!("{low} to {high}{}", spaced(self.unit_in(system).map_or("", |unit| unit.name)))
    }

    /// What to write instead of a value that is not allowed.
    pub fn advice(&self, system: Units) -> String {
        let (low, high) = self.bounds(system);
        let (low, high, meaning) = (low.to_string(), high.to_string(), self.what());
        match self.unit_in(system) {
            None => say!("number-range", low = low, high = high, meaning = meaning),
            Some(unit) => {
                // The sign of the inch is a word of English too.
                let unit = if unit.name == "in" { Units::Inch.code() } else { unit.name };
                say!("number-range-in-unit", low = low, high = high, unit = unit, meaning = meaning)
            }
        }
    }

    /// The value itself, if it is finite and in range. `written`: as the file has it, in a unit of `system`.
    ///
    /// # Errors
    /// The value is not finite or not in range. The error has no place, because only the reader knows it.
    pub fn check_written(&self, value: f64, written: &str, system: Units) -> Result<f64, Diag> {
        if value.is_finite() && value >= self.min && value <= self.max {
            return Ok(value);
        }
        let what = if !value.is_finite() {
            lang::text("number-not-finite").to_owned()
        } else if value < self.min {
            say!("number-too-small", value = written)
        } else {
            say!("number-too-large", value = written)
        };
        Err(Diag::new(what).help(self.advice(system)))
    }
}

/// Five digits of a value, rounded by `whole`.
fn inwards(value: f64, whole: fn(f64) -> f64) -> f64 {
    if value == 0.0 {
        return 0.0;
    }
    let places = 4 - value.abs().log10().floor() as i32;
    let scale = 10_f64.powi(places.abs());
    if places >= 0 { whole(value * scale) / scale } else { whole(value / scale) * scale }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fields::{ALL, CLAMP_FORCE, LENGTH, MC, RA, STRAIGHTNESS, TOLERANCE, VC};

    /// The factors are exact by definition: the inch is 25.4 mm and the pound-force 4.4482216152605 N (NIST SP 811, from memory).
    #[test]
    fn a_value_in_inch_is_exact_and_comes_back_with_its_digits() {
        let table = |field: &Field, value: f64| field.unit_in(Units::Inch).expect("a unit").to_table(value);
        assert_eq!(table(&LENGTH, 0.5), 12.7);
        assert_eq!(table(&LENGTH, 0.0005), 0.0127);
        assert_eq!(table(&RA, 63.0), 1.6002);
        assert_eq!(table(&VC, 400.0), 121.92);
        assert_eq!(table(&RAPID, 1000.0), 25.4);
        assert_eq!(table(&crate::fields::FEED, 0.005), 0.127);
        assert_eq!(table(&CLAMP_FORCE, 200.0), 889.644_323_052_1);
        // Source: an inch is 1/12 ft, so 0.003 in per ft is 0.00025, which is 0.25 mm per m.
        assert_eq!(table(&STRAIGHTNESS, 0.003), 0.25);
        for field in ALL.iter().filter(|field| field.converts()) {
            let unit = field.unit_in(Units::Inch).expect("a unit");
            for n in 1..4000 {
                let written = f64::from(n) / 10_000.0;
                let back = unit.from_table(unit.to_table(written));
                assert_eq!((back * 1e9).round() / 1e9, written, "{}", field.path);
            }
        }
    }

    #[test]
    fn every_unit_of_the_table_is_known_and_only_ratios_have_none() {
        for field in ALL {
            assert_eq!(field.units().is_empty(), field.unit.is_empty(), "{}", field.path);
            assert_eq!(field.unit_in(Units::Metric).map_or("", |unit| unit.name), field.unit, "{}", field.path);
            assert_eq!(field.units().iter().any(|unit| unit.system == Some(Units::Inch)), field.converts());
        }
        assert_eq!(LENGTH.unit_named("INCH").map(|unit| unit.name), Some("in"));
        assert_eq!(RA.unit_named("μin").map(|unit| unit.name), Some("µin"));
        assert_eq!((LENGTH.unit_named("kg"), MC.unit_named("mm")), (None, None));
    }

    #[test]
    fn a_range_told_in_inch_lies_within_the_range_of_the_table() {
        for field in ALL.iter().filter(|field| field.converts()) {
            let unit = field.unit_in(Units::Inch).expect("a unit");
            let (low, high) = field.bounds(Units::Inch);
            assert!(
                unit.to_table(low) >= field.min - 1e-9 && unit.to_table(high) <= field.max + 1e-9,
                "{}",
                field.path
            );
            assert!(unit.to_table(low) <= field.min + field.min.abs() * 1e-3, "{}", field.path);
        }
        assert_eq!(LENGTH.range(Units::Inch), "0.00039371 to 236.22 in");
        assert_eq!(TOLERANCE.range(Units::Inch), "-0.19685 to 0.19685 in");
        assert_eq!(LENGTH.range(Units::Metric), "0.01 to 6000 mm");
    }
}
