//! What cutting asks of the spindle that drives the bar and of the slide that feeds it, against what the machine file gives.
//!
//! The headstock drives the bar up to part-off, the counter-spindle the part after it. The torque of a travel is the sum of its main
//! forces at the radius before the travel. The power at the spindle is torque times speed, and the motor must give `1/efficiency` of it.
//! Torque and feed force depend on no speed, so a section that needs too much is refused. Power falls with the speed, so the speed of
//! a travel is lowered until the power is enough, though not below `speed_floor`. Forces of threading passes are not known here, and a
//! driven whirling head cuts with its own motor.

use super::rig::Rig;
use super::segments::{Refused, Segment, Travel, Work};
use crate::job::Place;
use crate::lang::{self, Measure};
use crate::say;
use crate::units::rad_per_s;

/// Rule and reason of a speed that is lowered because of the power.
pub const POWER: &str = "spindle_power";
/// Rule: torque of the headstock.
pub const TORQUE: &str = "spindle_torque";
/// Rule: force with which the headstock feeds the bar.
pub const FEED_FORCE: &str = "feed_force";
/// Rule: torque of the counter-spindle.
pub const COUNTER_TORQUE: &str = "counter_spindle_torque";

/// Slack of the rules for rounding, as a share.
const SLACK: f64 = 1.0 + 1e-9;

/// Power of a torque (N·m) at a speed (rev/min), kW.
pub fn power_kw(torque_nm: f64, rpm: f64) -> f64 {
    torque_nm * rad_per_s(rpm) / 1000.0
}

impl Travel {
    /// Torque of the travel about the axis, N·m.
    pub fn torque_nm(&self) -> f64 {
        self.main_n * self.before_mm / 2000.0
    }
}

impl Rig<'_> {
    /// Power that the headstock's motor must give, kW.
    pub fn motor_kw(&self, torque_nm: f64, rpm: f64) -> f64 {
        power_kw(torque_nm, rpm) / self.job.machine.headstock.efficiency
    }

    /// Highest speed at which the power of the headstock is enough for a travel, rev/min; infinite if its power is not given.
    pub fn powered_rpm(&self, travel: &Travel) -> f64 {
        let torque_nm = travel.torque_nm();
        match self.job.machine.headstock.power_kw {
            Some(most_kw) if torque_nm > 0.0 => most_kw / self.motor_kw(torque_nm, 1.0),
            _ => f64::INFINITY,
        }
    }

    /// Whether the power of the headstock lowers the speed of a travel of a segment.
    pub fn power_slows(&self, segment: &Segment, gripped: bool) -> bool {
        let slowed = |t: &Travel| self.powered_rpm(t) < self.wanted_rpm(segment, t.vc_m_per_min, t.before_mm, gripped);
        segment.travels.iter().any(slowed)
    }

    /// What the headstock or the counter-spindle cannot drive or feed; the first one from the front.
    pub fn not_driven(&self, segments: &[Segment]) -> Option<Refused> {
        self.front_work_not_driven()
            .or_else(|| segments.iter().find_map(|s| self.segment_not_driven(s)))
            .or_else(|| self.rear_work_not_driven())
    }

    fn segment_not_driven(&self, segment: &Segment) -> Option<Refused> {
        let head = &self.job.machine.headstock;
        let label = match (segment.work, self.job.shaft.sections.get(segment.section)) {
            (Work::PartOff, _) | (_, None) => say!("driven-part-off"),
            (_, Some(section)) => section.label(segment.section),
        };
        let refused =
            |rule, text| Refused { section: segment.section, at_mm: segment.from_mm, segments: 1, rule, text };
        for travel in &segment.travels {
            let torque_nm = travel.torque_nm();
            if let Some(most) = head.torque_nm.filter(|most| torque_nm > most * SLACK) {
                let (needed, most) = (lang::fixed(torque_nm, 1), lang::number(most));
                return Some(refused(TORQUE, say!("driven-torque", section = label, needed = needed, most = most)));
            }
            if let Some(most) = head.feed_force_n.filter(|most| travel.feed_n > most * SLACK) {
                let (needed, most) = (Measure::Force.fixed(travel.feed_n, 0), Measure::Force.number(most));
                return Some(refused(FEED_FORCE, say!("driven-feed", section = label, needed = needed, most = most)));
            }
            // The lowest of the speeds that a travel may want: with a grip.
            let rpm =
                self.job.cutting.speed_floor * self.wanted_rpm(segment, travel.vc_m_per_min, travel.before_mm, true);
            if let Some(most) = head.power_kw.filter(|_| self.powered_rpm(travel) * SLACK < rpm) {
                let needed = lang::fixed(self.motor_kw(torque_nm, rpm), 1);
                let text = say!(
                    "driven-power",
                    section = label,
                    needed = needed,
                    most = lang::number(most),
                    rpm = format!("{rpm:.0}")
                );
                return Some(refused(POWER, text));
            }
        }
        None
    }

    /// Work on the front end whose torque the headstock does not have.
    pub fn front_work_not_driven(&self) -> Option<Refused> {
        let most = self.job.machine.headstock.torque_nm?;
        let works = self.tasks().into_iter().filter(|t| !t.cross && t.tool.place != Place::FrontDriven);
        let work = works.max_by(|a, b| a.torque_nm.total_cmp(&b.torque_nm)).filter(|t| t.torque_nm > most * SLACK)?;
        let needed = lang::fixed(work.torque_nm, 1);
        let text = say!("driven-front-work", work = work.text, needed = needed, most = lang::number(most));
        Some(Refused { section: 0, at_mm: 0.0, segments: 1, rule: TORQUE, text })
    }

    /// Work on the rear end whose torque the counter-spindle does not have.
    pub fn rear_work_not_driven(&self) -> Option<Refused> {
        let most = self.job.machine.counter_spindle.as_ref()?.torque_nm?;
        let works = self.back.iter().filter(|b| b.tool.place != Place::BackDriven).map(|b| &b.work);
        let work = works.max_by(|a, b| a.torque_nm.total_cmp(&b.torque_nm)).filter(|w| w.torque_nm > most * SLACK)?;
        let needed = lang::fixed(work.torque_nm, 1);
        let text = say!("driven-rear-work", work = work.name, needed = needed, most = lang::number(most));
        let section = self.job.shaft.sections.len().saturating_sub(1);
        Some(Refused { section, at_mm: self.job.shaft.length_mm(), segments: 1, rule: COUNTER_TORQUE, text })
    }
}

#[cfg(test)]
mod tests {
    use super::power_kw;

    /// By hand: 9.549 N·m at 1000 rev/min are 1 kW.
    #[test]
    fn power_is_torque_times_speed() {
        assert!((power_kw(9.549_296_585_513_72, 1000.0) - 1.0).abs() < 1e-12);
    }
}
