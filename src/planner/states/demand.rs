//! What a state asks of its critical speed, and what it uses of its limits for one.

use crate::process::checks::whip;

/// What a state asks of its critical speed.
pub struct Demand {
    /// Largest share of the checks that no slowing helps.
    pub base: f64,
    /// Largest ratio of speed to critical speed.
    pub whirl: f64,
    /// Share of whip at rest.
    pub whip: f64,
    /// Share of bore at rest.
    pub bore: f64,
}

impl Demand {
    /// Critical speed needed so that no speed-dependent check uses more than a share of its limit; infinite where none
    /// is enough.
    pub fn needed_rpm(&self, rpm: f64, share: f64) -> f64 {
        let grown = |rest: f64| if rest < share { rpm / (1.0 - rest / share).sqrt() } else { f64::INFINITY };
        (rpm / (self.whirl * share)).max(grown(self.whip)).max(grown(self.bore))
    }

    /// Share of `bore` at a speed, for a critical speed.
    pub fn bore_share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        whip::grown(self.bore, rpm, critical_rpm)
    }

    /// Largest share of all checks at a speed, for a critical speed.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        let ratio = rpm / critical_rpm;
        let whip = whip::grown(self.whip, rpm, critical_rpm);
        let bore = whip::grown(self.bore, rpm, critical_rpm);
        self.base.max(ratio / self.whirl).max(whip).max(bore)
    }
}
