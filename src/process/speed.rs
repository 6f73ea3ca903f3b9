//! Speeds: what the cut asks for, what the machine allows, and how far whirl, whip and bore make it slow down.

use super::answers::Answers;
use super::checks::{bore, whip};
use super::rig::Rig;
use super::segments::{Segment, Work};
use super::state::State;
use crate::units::spindle_rpm;

/// Slowing aims this share below the limit: states between those looked at may lie a little lower.
const SLOWING_GUARD: f64 = 1e-4;
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
