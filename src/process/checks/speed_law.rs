//! How the demand of a check grows with the speed, and the speeds and critical speeds that follow from its limit.

use super::MOST_SHARE;

/// How a demand grows with the speed `n` for a critical speed `n_c`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Growth {
    /// The demand is the ratio `n/n_c` itself.
    Ratio,
    /// A deflection `e` at rest that rotation increases to `e/(1 - (n/n_c)²)`; infinite from the critical speed on.
    /// Source: the Jeffcott rotor without damping, any text on rotor dynamics (from memory).
    Bow {
        /// `e`, mm.
        at_rest_mm: f64,
    },
}

/// The law and the limit of a check that depends on the speed, in one state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedLaw {
    /// How the demand grows.
    pub growth: Growth,
    /// The limit, in the unit of the demand.
    pub limit: f64,
    /// Place on the shaft where the demand is worst, mm.
    pub at_mm: f64,
}

/// A deflection at rest, increased by rotation, see [`Growth::Bow`].
fn grown(at_rest: f64, rpm: f64, critical_rpm: f64) -> f64 {
    let ratio = rpm / critical_rpm;
    if ratio < 1.0 { at_rest / (1.0 - ratio * ratio) } else { f64::INFINITY }
}

impl SpeedLaw {
    /// The demand at a speed, rev/min.
    pub fn demand(&self, rpm: f64, critical_rpm: f64) -> f64 {
        match self.growth {
            Growth::Ratio => rpm / critical_rpm,
            Growth::Bow { at_rest_mm } => grown(at_rest_mm, rpm, critical_rpm),
        }
    }

    /// Utilisation at rest; [`MOST_SHARE`] if the limit of a bow is not positive.
    pub fn share_at_rest(&self) -> f64 {
        match self.growth {
            Growth::Ratio => 0.0,
            Growth::Bow { at_rest_mm } if self.limit > 0.0 => at_rest_mm / self.limit,
            Growth::Bow { .. } => MOST_SHARE,
        }
    }

    /// Utilisation at a speed, rev/min.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        match self.growth {
            Growth::Ratio => rpm / critical_rpm / self.limit,
            Growth::Bow { .. } => grown(self.share_at_rest(), rpm, critical_rpm),
        }
    }

    /// The smallest critical speed (rev/min) for which the utilisation at speed `rpm` is at most `share`; infinite if there is none.
    pub fn critical_needed_rpm(&self, rpm: f64, share: f64) -> f64 {
        match self.growth {
            _ if share >= MOST_SHARE => 0.0,
            Growth::Ratio => rpm / (self.limit * share),
            Growth::Bow { at_rest_mm } if at_rest_mm <= 0.0 && self.limit > 0.0 => 0.0,
            Growth::Bow { at_rest_mm } if self.limit > 0.0 && at_rest_mm < self.limit * share => {
                rpm / (1.0 - at_rest_mm / (self.limit * share)).sqrt()
            }
            Growth::Bow { .. } => f64::INFINITY,
        }
    }

    /// The highest speed at which the check passes, rev/min; 0 if there is none.
    pub fn allowed_rpm(&self, critical_rpm: f64) -> f64 {
        match self.growth {
            Growth::Ratio => self.limit * critical_rpm,
            Growth::Bow { at_rest_mm } if at_rest_mm < self.limit => {
                critical_rpm * (1.0 - at_rest_mm / self.limit).sqrt()
            }
            Growth::Bow { .. } => 0.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const RATIO: SpeedLaw = SpeedLaw { growth: Growth::Ratio, limit: 0.7, at_mm: 0.0 };
    const BOW: SpeedLaw = SpeedLaw { growth: Growth::Bow { at_rest_mm: 0.3 }, limit: 0.4, at_mm: 0.0 };

    /// At half the critical speed a bow grows by the factor 1/(1 - 1/4) = 4/3: from 0.3 mm to 0.4 mm.
    #[test]
    fn each_question_of_one_law_has_the_same_answer() {
        assert!((BOW.demand(500.0, 1000.0) - 0.4).abs() < 1e-12);
        assert!((BOW.share(500.0, 1000.0) - 1.0).abs() < 1e-12);
        assert!((BOW.allowed_rpm(1000.0) - 500.0).abs() < 1e-9);
        assert!((BOW.critical_needed_rpm(500.0, 1.0) - 1000.0).abs() < 1e-9);
        assert!((RATIO.demand(490.0, 1000.0) - 0.49).abs() < 1e-12);
        for law in [RATIO, BOW] {
            for share in [0.8, 0.9, 1.0] {
                let needed = law.critical_needed_rpm(490.0, share);
                assert!((law.share(490.0, needed) - share).abs() < 1e-12, "{law:?} at {share}");
            }
            assert!((law.share(law.allowed_rpm(900.0), 900.0) - 1.0).abs() < 1e-12, "{law:?}");
        }
    }

    #[test]
    fn without_room_nothing_is_allowed() {
        let none = SpeedLaw { limit: 0.0, ..BOW };
        assert_eq!((none.allowed_rpm(1000.0), none.share_at_rest()), (0.0, MOST_SHARE));
        assert_eq!(none.critical_needed_rpm(500.0, 1.0), f64::INFINITY);
        assert_eq!(BOW.demand(1000.0, 1000.0), f64::INFINITY);
        // There is no deflection at rest, so any speed passes.
        let straight = SpeedLaw { growth: Growth::Bow { at_rest_mm: 0.0 }, ..BOW };
        assert_eq!((straight.critical_needed_rpm(500.0, 0.1), straight.allowed_rpm(900.0)), (0.0, 900.0));
        assert_eq!(RATIO.critical_needed_rpm(500.0, MOST_SHARE), 0.0);
    }
}
