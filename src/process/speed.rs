//! Speeds: what the cut asks for, what the machine allows, and how far whirl, whip and bore make it slow down.

use super::answers::{Answers, Posed};
use super::checks::{MOST_SHARE, bore, whip};
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

    /// Critical speed (rev/min) above which whirl, whip and bore at a speed each use no more than a share of their limits; infinite where
    /// none is enough. Asks for no critical speed.
    pub fn critical_needed_rpm(&self, state: &State, still: &Answers, speed_rpm: f64, shares: [f64; 3]) -> f64 {
        let limits = &self.job.limits;
        let grown = |rest: f64, limit: f64, share: f64| {
            if share >= MOST_SHARE || rest <= 0.0 && limit > 0.0 {
                0.0
            } else if limit > 0.0 && rest < limit * share {
                speed_rpm / (1.0 - rest / (limit * share)).sqrt()
            } else {
                f64::INFINITY
            }
        };
        let whirl = if shares[0] >= MOST_SHARE { 0.0 } else { speed_rpm / (limits.whirl_ratio * shares[0]) };
        let whip = grown(whip::bow_mm(self, state, still), limits.whip_mm, shares[1]);
        let bore = bore::room_mm(self, state).map_or(0.0, |room| grown(still.bore_sag_mm, room, shares[2]));
        whirl.max(whip).max(bore)
    }

    /// The slowest of the speeds at which whirl, whip and bore hold in each of some states, where it is below `wanted_rpm`.
    ///
    /// The critical speed is worked out only where it may lower the speed found so far.
    pub fn slowest(&self, states: &[(State, Posed)], wanted_rpm: f64) -> Option<SpeedLimit> {
        let mut slowest: Option<SpeedLimit> = None;
        // The last states of a piece are the slowest as a rule; of equals the first counts.
        for (state, posed) in states.iter().rev() {
            let so_far = slowest.map_or(wanted_rpm, |s| s.rpm);
            let needed = self.critical_needed_rpm(state, &posed.still, so_far, [1.0; 3]) / (1.0 - SLOWING_GUARD);
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

    /// Highest speed at which whirl, whip and bore hold in a state; 0 where they fail at any speed.
    pub fn allowed_rpm(&self, state: &State, answers: &Answers) -> SpeedLimit {
        let limits = &self.job.limits;
        let critical = answers.critical_rpm * (1.0 - SLOWING_GUARD);
        let grown = |rest: f64, limit: f64| if rest < limit { critical * (1.0 - rest / limit).sqrt() } else { 0.0 };
        let candidates = [
            SpeedLimit { rpm: limits.whirl_ratio * critical, check: "whirl" },
            SpeedLimit { rpm: grown(whip::bow_mm(self, state, answers), limits.whip_mm), check: "whip" },
            SpeedLimit {
                rpm: match bore::room_mm(self, state) {
                    Some(room) => grown(answers.bore_sag_mm, room),
                    None => f64::INFINITY,
                },
                check: "bore",
            },
        ];
        candidates.into_iter().fold(candidates[0], |a, b| if b.rpm < a.rpm { b } else { a })
    }
}
