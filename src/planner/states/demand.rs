//! What a state asks of its critical speed, and what it uses of its limits for one.

use crate::process::checks::BY_SPEED;
use crate::process::speed::Laws;

/// What a state asks of its critical speed.
pub struct Demand {
    /// Largest share of the checks that no slowing helps.
    pub base: f64,
    /// The other checks.
    pub laws: Laws,
}

impl Demand {
    /// Critical speed needed so that no check that depends on the speed uses more than a share of its limit; infinite where none is enough.
    pub fn needed_rpm(&self, rpm: f64, share: f64) -> f64 {
        self.laws.critical_needed_rpm(rpm, [share; BY_SPEED])
    }

    /// Largest share of all checks at a speed, for a critical speed.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        self.base.max(self.laws.share(rpm, critical_rpm))
    }
}
