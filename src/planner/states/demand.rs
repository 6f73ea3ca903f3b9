//! What critical speed a state needs, and what share of its limits it uses at a given one.

use crate::process::checks::BY_SPEED;
use crate::process::speed::Laws;

/// What critical speed a state needs.
pub struct Demand {
    /// Largest utilisation of the checks that a lower speed does not help.
    pub base: f64,
    /// The laws of the checks that depend on the speed.
    pub laws: Laws,
}

impl Demand {
    /// Critical speed needed so that no check that depends on the speed uses more than a share of its limit. Infinite:
    /// no critical speed is enough.
    pub fn needed_rpm(&self, rpm: f64, share: f64) -> f64 {
        self.laws.critical_needed_rpm(rpm, [share; BY_SPEED])
    }

    /// Largest utilisation of all checks at a speed, for a given critical speed.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        self.base.max(self.laws.share(rpm, critical_rpm))
    }
}
