//! Speeds: the speed a cut asks for, the limit of the machine, and the lower speed at which checks that depend on it pass.

use super::answers::{Answers, Posed};
use super::checks::speed_law::SpeedLaw;
use super::checks::{BY_SPEED, CHECKS, Find};
use super::rig::Rig;
use super::segments::{Segment, Travel, Work};
use super::state::State;
use crate::units::spindle_rpm;

/// Stands in place of a check where the bar feeder limits a speed.
pub const BAR_FEED: &str = "bar_feed";

/// Allowed speeds are computed for a critical speed lower by this share, because it may be a little lower between the states that
/// are checked.
pub const SLOWING_GUARD: f64 = 1e-4;
/// The inertia count for "the critical speed lies above a speed" is made this share above the speed. The share is twice the relative
/// error of a critical speed from iteration.
pub const COUNT_GUARD: f64 = 2e-5;
/// Thread whirling: a ring with six inserts, a chip of 0.08 mm for each insert, and a ring diameter 1.5 times the bar diameter. They
/// give the workpiece speed. Common practice, no source.
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
    /// Highest speed of headstock with bar feeder and, when gripped, counter-spindle, rev/min.
    pub fn machine_rpm(&self, gripped: bool) -> f64 {
        self.counter_rpm(gripped).min(self.job.machine.headstock_rpm())
    }

    /// Highest speed of the counter-spindle while it turns with the bar, rev/min; infinite while it does not.
    fn counter_rpm(&self, turns: bool) -> f64 {
        self.job.machine.counter_spindle.as_ref().filter(|_| turns).map_or(f64::INFINITY, |c| c.max_rpm)
    }

    /// Whether the counter-spindle turns with the bar in a segment: with a grip, or with a centre, which leaves before the part-off.
    fn turns_counter(&self, segment: &Segment, gripped: bool) -> bool {
        gripped || self.centre().is_some() && segment.work != Work::PartOff
    }

    /// Speed that a cutting speed (m/min) asks for on a diameter, whatever the machine does, rev/min.
    fn asked_rpm(&self, segment: &Segment, vc_m_per_min: f64, before_mm: f64) -> f64 {
        let turning = spindle_rpm(vc_m_per_min, before_mm);
        match segment.work {
            Work::Whirl => {
                let ring_rpm = turning / WHIRL_RING;
                WHIRL_CHIP_MM * WHIRL_INSERTS * ring_rpm / (std::f64::consts::PI * before_mm)
            }
            _ => turning,
        }
    }

    /// Speed that a cutting speed (m/min) asks for on a diameter before the power of the spindle and checks lower it, rev/min.
    pub fn wanted_rpm(&self, segment: &Segment, vc_m_per_min: f64, before_mm: f64, gripped: bool) -> f64 {
        let asked_rpm = self.asked_rpm(segment, vc_m_per_min, before_mm);
        asked_rpm.min(self.machine_rpm(self.turns_counter(segment, gripped)))
    }

    /// Whether the bar feeder lowers the speed of a segment's last travel: neither the cutting speed nor a spindle asks for so low a speed.
    pub fn bar_feed_slows(&self, segment: &Segment, gripped: bool) -> bool {
        let machine = &self.job.machine;
        let Some(feeder_rpm) = machine.bar_feed_max_rpm else { return false };
        let (vc_m_per_min, before_mm) = self.last_of(segment);
        let asked_rpm = self.asked_rpm(segment, vc_m_per_min, before_mm);
        let counter_rpm = self.counter_rpm(self.turns_counter(segment, gripped));
        feeder_rpm < asked_rpm.min(machine.headstock.max_rpm).min(counter_rpm)
    }

    /// Cutting speed of the last travel of a segment (m/min), and the diameter before it, mm.
    fn last_of(&self, segment: &Segment) -> (f64, f64) {
        let usual = (self.job.cutting.vc_m_per_min, self.job.stock.diameter_mm);
        segment.travels.last().map_or(usual, |t| (t.vc_m_per_min, t.before_mm))
    }

    /// Speed of a travel before checks lower it, rev/min.
    pub fn travel_rpm(&self, segment: &Segment, travel: &Travel, gripped: bool) -> f64 {
        self.wanted_rpm(segment, travel.vc_m_per_min, travel.before_mm, gripped).min(self.powered_rpm(travel))
    }

    /// The highest speed a segment asks for, rev/min: usually that of its last travel, where the bar is thinnest.
    pub fn segment_rpm(&self, segment: &Segment, gripped: bool) -> f64 {
        let each = segment.travels.iter().map(|t| self.travel_rpm(segment, t, gripped));
        each.reduce(f64::max).unwrap_or_else(|| {
            self.wanted_rpm(segment, self.job.cutting.vc_m_per_min, self.job.stock.diameter_mm, gripped)
        })
    }

    /// Law and limit of each check that depends on the speed, in a state; none if the check does not apply.
    pub fn speed_laws(&self, state: &State, answers: &Answers) -> Laws {
        let mut laws = Laws([None; BY_SPEED]);
        let asked = CHECKS.iter().filter_map(|check| match check.find {
            Find::BySpeed(law) => Some(law(self, state, answers).map(|law| (check.name, law))),
            Find::AtRest(_) | Find::AtEvent(_) | Find::Both(..) => None,
        });
        laws.0.iter_mut().zip(asked).for_each(|(slot, law)| *slot = law);
        laws
    }

    /// The critical speed (rev/min) that is enough for each check that depends on the speed to have at most its share as utilisation
    /// at a speed; infinite if there is none. The critical speed of the state itself is not needed.
    pub fn critical_needed_rpm(&self, state: &State, at_rest: &Answers, speed_rpm: f64, shares: Shares) -> f64 {
        self.speed_laws(state, at_rest).critical_needed_rpm(speed_rpm, shares)
    }

    /// The highest speed at which the checks that depend on it pass in all of several states; none if it is not below `wanted_rpm`.
    ///
    /// The critical speed of a state is computed only if it may lower the speed found so far.
    pub fn slowest(&self, states: &[(State, Posed)], wanted_rpm: f64) -> Option<SpeedLimit> {
        let mut slowest: Option<SpeedLimit> = None;
        // The last states of a piece usually have the lowest speed, so they come first. Of equal speeds the first state counts.
        for (state, posed) in states.iter().rev() {
            let so_far = slowest.map_or(wanted_rpm, |s| s.rpm);
            let needed =
                self.critical_needed_rpm(state, &posed.at_rest, so_far, [1.0; BY_SPEED]) / (1.0 - SLOWING_GUARD);
            // A little above, so that rounding in the inertia count does not matter.
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

    /// Highest speed at which every check that depends on it passes in a state; 0 if one fails at any speed.
    pub fn allowed_rpm(&self, state: &State, answers: &Answers) -> SpeedLimit {
        self.speed_laws(state, answers).allowed_rpm(answers.critical_rpm * (1.0 - SLOWING_GUARD))
    }
}

/// A utilisation for each check that depends on the speed, in the order of the checks.
pub type Shares = [f64; BY_SPEED];

/// Name and law of each check that depends on the speed, in one state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Laws([Option<(&'static str, SpeedLaw)>; BY_SPEED]);

impl Laws {
    /// The critical speed (rev/min) that is enough for each check to have at most its share as utilisation at a speed; infinite if none is.
    pub fn critical_needed_rpm(&self, speed_rpm: f64, shares: Shares) -> f64 {
        let each = self.0.iter().zip(shares).filter_map(|(law, share)| Some((law.as_ref()?.1, share)));
        each.map(|(law, share)| law.critical_needed_rpm(speed_rpm, share)).fold(0.0, f64::max)
    }

    /// Highest speed at which all checks pass, for a critical speed. Of equal limits the first check counts.
    fn allowed_rpm(&self, critical_rpm: f64) -> SpeedLimit {
        let each = self.0.iter().flatten().map(|(check, law)| SpeedLimit { rpm: law.allowed_rpm(critical_rpm), check });
        each.reduce(|a, b| if b.rpm < a.rpm { b } else { a }).unwrap_or(SpeedLimit { rpm: f64::INFINITY, check: "" })
    }

    /// Largest utilisation of all checks at a speed, for a critical speed.
    pub fn share(&self, rpm: f64, critical_rpm: f64) -> f64 {
        self.0.iter().flatten().map(|(_, law)| law.share(rpm, critical_rpm)).fold(0.0, f64::max)
    }
}
