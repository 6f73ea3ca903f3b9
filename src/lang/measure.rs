//! Lengths, feeds, speeds and forces as people read them: metric as they are, or in inch with the decimals of the trade.

use super::{Units, fixed, number, trimmed, units};
use crate::lang;
use crate::units::{FOOT_M, INCH_MM, POUND_FORCE_N};

/// What a number measures. The number itself is metric everywhere in the program. What is not here (torque, stiffness, mass, power,
/// stress, times) is told in the same units in both systems.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// A length along the shaft or of the machine, mm: 0.001 in.
    Place,
    /// A diameter, tolerance or small distance, mm: 0.0001 in.
    Size,
    /// A feed, mm/rev: 0.00001 in/rev.
    Feed,
    /// A cutting speed, m/min: whole ft/min.
    Speed,
    /// A roughness or deflection, µm: whole µin, one decimal below 10.
    Micro,
    /// A force, N: lbf with three figures.
    Force,
    /// A bow, mm per m: 0.0001 in per ft.
    Bow,
}

impl Measure {
    /// What a unit measures. None: it is told alike in both systems.
    pub fn of(unit: &str) -> Option<Measure> {
        Some(match unit {
            "mm" => Measure::Size,
            "µm" => Measure::Micro,
            "N" => Measure::Force,
            "m/min" => Measure::Speed,
            "mm/rev" => Measure::Feed,
            "mm/m" | "mm per m" => Measure::Bow,
            _ => return None,
        })
    }

    /// The value in the units that this thread tells.
    pub fn told(self, value: f64) -> f64 {
        match (units(), self) {
            (Units::Metric, _) => value,
            (Units::Inch, Measure::Place | Measure::Size | Measure::Feed) => value / INCH_MM,
            (Units::Inch, Measure::Speed) => value / FOOT_M,
            (Units::Inch, Measure::Micro) => value * 1000.0 / INCH_MM,
            (Units::Inch, Measure::Force) => value / POUND_FORCE_N,
            (Units::Inch, Measure::Bow) => value * FOOT_M / INCH_MM,
        }
    }

    /// Decimals of a value in the units that this thread tells. `metric`: those in metric units.
    pub fn places(self, value: f64, metric: usize) -> usize {
        match units() {
            Units::Metric => metric,
            Units::Inch => self.inch_places(self.told(value)),
        }
    }

    /// Decimals of a value in the inch system.
    fn inch_places(self, told: f64) -> usize {
        match (self, told.abs()) {
            (Measure::Place, _) => 3,
            (Measure::Size | Measure::Bow, _) => 4,
            (Measure::Feed, _) => 5,
            (Measure::Micro, v) if v < 10.0 => 1,
            (Measure::Force, v) if v < 10.0 => 2,
            (Measure::Force, v) if v < 100.0 => 1,
            (Measure::Speed | Measure::Micro | Measure::Force, _) => 0,
        }
    }

    fn written(self, value: f64, metric: impl Fn(f64) -> String, inch: impl Fn(f64, usize) -> String) -> String {
        match units() {
            Units::Metric => metric(value),
            Units::Inch => {
                let told = self.told(value);
                inch(told, self.inch_places(told))
            }
        }
    }

    /// In metric units with as many decimals as it has.
    pub fn number(self, value: f64) -> String {
        self.written(value, number, trimmed)
    }

    /// In metric units with exactly `places` decimals.
    pub fn fixed(self, value: f64, places: usize) -> String {
        self.written(value, |v| fixed(v, places), fixed)
    }

    /// In metric units with at most `places` decimals and no zeros at the end.
    pub fn trimmed(self, value: f64, places: usize) -> String {
        self.written(value, |v| trimmed(v, places), trimmed)
    }

    /// As [`Measure::trimmed`], but in inch rounded down: what is told as a limit is never beyond it.
    pub fn at_most(self, value: f64, places: usize) -> String {
        let down = |told: f64, places: usize| {
            let steps = 10f64.powi(i32::try_from(places).unwrap_or_default());
            // A value that is only by a rounding error below a step becomes that step.
            trimmed((told * steps + 1e-6).floor() / steps, places)
        };
        self.written(value, |v| trimmed(v, places), down)
    }
}

/// A value in the units that this thread tells, by its metric unit.
pub fn told(value: f64, unit: &str) -> f64 {
    Measure::of(unit).map_or(value, |measure| measure.told(value))
}

/// The name of a metric unit, or of the one told in its place.
pub fn unit_told(unit: &str) -> &str {
    let measure = Measure::of(unit).filter(|_| units() == Units::Inch);
    measure.map_or(unit, |measure| match measure {
        Measure::Place | Measure::Size => lang::text("unit-mm"),
        Measure::Feed => lang::text("unit-feed"),
        Measure::Speed => lang::text("unit-speed"),
        Measure::Micro => lang::text("unit-um"),
        Measure::Force => lang::text("unit-n"),
        Measure::Bow => lang::text("unit-bow"),
    })
}

/// A value with its metric unit behind it (`0.14 mm`), in the units that this thread tells.
pub fn with_unit_told(value: &str) -> String {
    let parts = value.split_once(' ').filter(|_| units() == Units::Inch);
    let known = parts.and_then(|(number, unit)| Some((number.parse().ok()?, Measure::of(unit)?, unit)));
    known.map_or_else(
        || value.to_owned(),
        |(number, measure, unit)| format!("{} {}", measure.number(number), unit_told(unit)),
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::{apart, prefer_units};

    fn in_inch<T>(work: impl FnOnce() -> T) -> T {
        apart(|| {
            prefer_units(Units::Inch);
            work()
        })
    }

    #[test]
    fn metric_numbers_are_written_as_they_are() {
        assert_eq!((Measure::Size.number(12.345), Measure::Place.fixed(3.0, 1)), ("12.345".into(), "3.0".into()));
        assert_eq!((Measure::Place.at_most(3.456, 2), told(2.5, "N"), unit_told("mm")), ("3.46".into(), 2.5, "mm"));
    }

    /// Worked out by hand: 1 in = 25.4 mm, 1 ft = 12 in, 1 lbf = 4.4482 N.
    #[test]
    fn inch_numbers_have_the_decimals_of_the_trade() {
        in_inch(|| {
            assert_eq!(
                (Measure::Place.fixed(254.0, 1), Measure::Place.trimmed(254.0, 2)),
                ("10.000".into(), "10".into())
            );
            assert_eq!(
                (Measure::Size.number(19.049_999_999), Measure::Feed.number(0.1)),
                ("0.75".into(), "0.00394".into())
            );
            assert_eq!((Measure::Speed.fixed(100.0, 0), Measure::Bow.number(0.5)), ("328".into(), "0.006".into()));
            assert_eq!((Measure::Micro.number(0.8), Measure::Micro.number(0.2)), ("31".into(), "7.9".into()));
            assert_eq!((Measure::Force.fixed(1000.0, 0), Measure::Force.fixed(20.0, 0)), ("225".into(), "4.50".into()));
            assert_eq!(
                (unit_told("mm"), unit_told("µm"), unit_told("N"), unit_told("N/µm")),
                ("in", "µin", "lbf", "N/µm")
            );
            assert_eq!((unit_told("mm/m"), told(25.4, "mm"), told(3.0, "kW")), ("in/ft", 1.0, 3.0));
            let told = ["0.14 mm", "60 m/min", "5 s", "0.7", "all mm"].map(with_unit_told);
            assert_eq!(told, ["0.0055 in", "197 sfm", "5 s", "0.7", "all mm"]);
        });
    }

    #[test]
    fn a_limit_in_inch_is_never_beyond_the_true_one() {
        in_inch(|| {
            assert_eq!(
                (Measure::Place.at_most(35.0, 2), Measure::Place.fixed(35.0, 2)),
                ("1.377".into(), "1.378".into())
            );
            // 10 in are not told as 9.999 because of a rounding error.
            assert!((1..500).all(|i| Measure::Place.at_most(f64::from(i) * 25.4, 2) == i.to_string()));
        });
    }
}
