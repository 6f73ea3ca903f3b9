//! The cost of a way through the network, compared in this order: hand-overs where the objective counts them, then
//! seconds.
//!
//! The two are kept apart, because one sum of both would need a weight so large that the last digits of the seconds are
//! lost.

use std::ops::Add;

/// Cost of a stage or of a way. Costs are compared field by field, in the order of the fields.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default)]
pub struct Price {
    /// Number of hand-overs, a whole number, where the objective counts them; else 0.
    pub hand_overs: f64,
    /// Seconds, with the charges for witness lines.
    pub s: f64,
}

impl Price {
    /// The cost where there is no way.
    pub const NO_WAY: Price = Price { hand_overs: f64::INFINITY, s: f64::INFINITY };

    /// A cost of seconds only.
    pub fn seconds(s: f64) -> Price {
        Price { hand_overs: 0.0, s }
    }

    /// This cost with more seconds.
    pub fn plus_s(self, s: f64) -> Price {
        Price { s: self.s + s, ..self }
    }

    /// The lower of two costs.
    pub fn min(self, other: Price) -> Price {
        if other < self { other } else { self }
    }

    /// Whether there is a way.
    pub fn is_finite(self) -> bool {
        self.hand_overs.is_finite() && self.s.is_finite()
    }
}

impl Add for Price {
    type Output = Price;

    fn add(self, other: Price) -> Price {
        Price { hand_overs: self.hand_overs + other.hand_overs, s: self.s + other.s }
    }
}

#[cfg(test)]
mod tests {
    use super::Price;

    #[test]
    fn a_hand_over_outweighs_any_time_and_takes_nothing_from_its_digits() {
        let (few, many) = (Price { hand_overs: 1.0, s: 1e9 }, Price { hand_overs: 2.0, s: 0.0 });
        assert!(few < many && few < Price::NO_WAY && !Price::NO_WAY.is_finite());
        assert_eq!(many.min(few), few);
        assert_eq!((few + Price::seconds(1e-6)).s, 1e9 + 1e-6);
        assert!(few.plus_s(1e-6) > few);
    }
}
