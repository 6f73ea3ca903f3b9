//! Speeds: what the cut asks for, what the machine allows, and how far the checks that depend on the speed make it slow down.

use super::answers::{Answers, Posed};
use super::checks::speed_law::SpeedLaw;
use super::checks::{BY_SPEED, CHECKS, Find};
use super::rig::Rig;
use super::segments::{Segment, Work};
use super::state::State;
use crate::units::spindle_rpm;

/// Slowing aims this share below the limit: states between those looked at may lie a little lower.
pub const SLOWING_GUARD: f64 = 1e-4;
/// A critical speed counted to lie above a speed is counted at this share above it: twice what the iterated one is known to.
pub const COUNT_GUARD: f64 = 2e-5;
/// Workpiece speed when a thread is whirled, as a share of the turning speed at the same cutting speed: six inserts of
/// 0.08 mm chip each on a ring half as large again as the bar. Common practice, no source.
const WHIRL_INSERTS: f64 = 6.0;
const WHIRL_CHIP_MM: f64 = 0.08;
const WHIRL_RING: f64 = 1.5;

/// A speed limit and the check that sets it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpeedLimit {
    /// Highest speed, rev/min.
    pub rpm: f64,
    /// The check.
    pub check: &'static str,
}

impl Rig<'_> {
    /// Highest speed of headstock and, when gripped, counter-spindle, rev/min.
    pub fn machine_rpm(&self, gripped: bool) -> f64 {
        let machine = &self.job.machine;
        let counter = machine.counter_spindle.as_ref().filter(|_| gripped);
        counter.map_or(machine.headstock.max_rpm, |c| c.max_rpm.min(machine.headstock.max_rpm))
    }

    /// Speed a travel asks for before any slowing, rev/min.
    pub fn wanted_rpm(&self, segment: &Segment, before_mm: f64, gripped: bool) -> f64 {
        let turning = spindle_rpm(self.job.cutting.vc_m_per_min, before_mm);
        let wanted = match segment.work {
            Work::Whirl => {
                let ring_rpm = turning / WHIRL_RING;
                WHIRL_CHIP_MM * WHIRL_INSERTS * ring_rpm / (std::f64::consts::PI * before_mm)
            }
            _ => turning,
        };
        wanted.min(self.machine_rpm(gripped))
    }

    /// The highest speed a segment asks for, rev/min: that of its last travel, where the bar is thinnest.
    pub fn segment_rpm(&self, segment: &Segment, gripped: bool) -> f64 {
        let before = segment.travels.last().map_or(self.job.stock.diameter_mm, |t| t.before_mm);
        self.wanted_rpm(segment, before, gripped)
    }

    /// What each check that depends on the speed asks for in a state; none where it does not apply.
    pub fn speed_laws(&self, state: &State, answers: &Answers) -> Laws {
        let mut laws = Laws([None; BY_SPEED]);
        let asked = CHECKS.iter().filter_map(|check| match check.find {
            Find::BySpeed(law) => Some(law(self, state, answers).map(|law| (check.name, law))),
            Find::AtRest(_) | Find::AtEvent(_) => None,
        });
        laws.0.iter_mut().zip(asked).for_each(|(slot, law)| *slot = law);
        laws
    }

    /// Critical speed (rev/min) above which each check that depends on the speed uses no more than a share of its limit at a speed; infinite
    /// where none is enough. Asks for no critical speed.
    pub fn critical_needed_rpm(&self, state: &State, at_rest: &Answers, speed_rpm: f64, shares: Shares) -> f64 {
        self.speed_laws(state, at_rest).critical_needed_rpm(speed_rpm, shares)
    }

    /// The slowest of the speeds at which the checks that depend on it hold in each of some states, where it is below `wanted_rpm`.
    ///
    /// The critical speed is worked out only where it may lower the speed found so far.
    pub fn slowest(&self, states: &[(State, Posed)], wanted_rpm: f64) -> Option<SpeedLimit> {
        let mut slowest: Option<SpeedLimit> = None;
        // The last states of a piece are the slowest as a rule; of equals the first counts.
        for (state, posed) in states.iter().rev() {
            let so_far = slowest.map_or(wanted_rpm, |s| s.rpm);
            let needed =
                self.critical_needed_rpm(state, &posed.at_rest, so_far, [1.0; BY_SPEED]) / (1.0 - SLOWING_GUARD);
            // A hair above, so that rounding of the count decides nothing.
            if posed.swings_above(needed * (1.0 + COUNT_GUARD)) {
                continue;
            }
            let allowed = self.allowed_rpm(state, &posed.with_critical());
            if allowed.rpm < wanted_rpm && slowest.is_none_or(|s| allowed.rpm <= s.rpm) {
                slowest = Some(allowed);
            }
        }
        slowest
    }

    /// Highest speed at which every check that depends on it holds in a state; 0 where one fails at any speed.
    pub fn allowed_rpm(&self, state: &State, answers: &Answers) -> SpeedLimit {
        self.speed_laws(state, answers).allowed_rpm(answers.critical_rpm * (1.0 - SLOWING_GUARD))
    }
}

/// A share of its limit for each check that depends on the speed, in their order.
pub type Shares = [f64; BY_SPEED];

/// What each check that depends on the speed asks for in one state: its name, and the law.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Laws([Option<(&'static str, SpeedLaw)>; BY_SPEED]);

impl Laws {
    /// Critical speed (rev/min) above which each uses no more than a share of its limit at a speed; infinite where none is enough.
    pub fn critical_needed_rpm(&self, speed_rpm: f64, shares: Shares) -> f64 {
        let each = self.0.iter().zip(shares).filter_map(|(law, share)| Some((law.as_ref()?.1, share)));
        each.map(|(law, share)| law.critical_needed_rpm(speed_rpm, share)).fold(0.0, f64::max)
    }

    /// Highest speed at which all hold, for a critical speed; of equals the first counts.
    fn allowed_rpm(&self, critical_rpm: f64) -> SpeedLimit {
        let each = self.0.iter().flatten().map(|(check, law)| SpeedLimit { rpm: law.allowed_rpm(critical_rpm), check });
        each.reduce(|a, b| if b.rpm < a.rpm { b } else { a }).unwrap_or(SpeedLimit { rpm: f64::INFINITY, check: "" })
    }

    /// Largest share of their limits at a speed, for a critical speed.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        self.0.iter().flatten().map(|(_, law)| law.share(rpm, critical_rpm)).fold(0.0, f64::max)
    }
}
