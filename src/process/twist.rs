//! How the torque of part-off divides between headstock and counter-spindle, which both hold the bar.
//!
//! The force of the tool acts on the bottom of its groove. From there one half of the neck leads to each side. The headstock's side goes on
//! through the raw bar to its collet, the other side through the stepped shaft to the grip and into the drive of the counter-spindle. The
//! neck gets thinner while the tool goes in, so the lever gets shorter and both sides softer. The worst depth counts. Derived here
//! from the torsion of round bars.

use super::rig::Rig;
use crate::job::Holding;
use crate::mechanics::torsion::share_of;

/// Depths of the plunge that are looked at, evenly spaced from the bar's surface to near its axis.
const DEPTHS: usize = 200;

/// Twists under 1 N·mm of the two sides of the cut, without the neck between them, rad.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sides {
    /// From the cut to the headstock.
    pub headstock: f64,
    /// From the cut to the counter-spindle.
    pub counter: f64,
}

impl Rig<'_> {
    /// The two sides of the part-off for a grip with its nose at `nose_mm`; each with the twist of a drive, rad for 1 N·mm.
    ///
    /// The headstock is at its farthest place. There its side is softest, so the grip gets the largest share.
    pub fn sides_of_part_off(&self, nose_mm: f64, drive: f64) -> Sides {
        let length = self.job.shaft.length_mm();
        let slices = self.profile.slices.iter().map(|s| (s.diameter_mm, s.to_mm - s.from_mm.max(nose_mm)));
        let shaft: f64 = slices.filter(|(_, l)| *l > 0.0).map(|(d, l)| self.elastic.twist_per_nmm(d, l)).sum();
        // Behind the tool the bar reaches over the gap to the bush face, and on to the collet. Bar that is fed out for work behind the
        // part-off stands between the collet and the cut where there is no bush.
        let behind_mm = match self.job.holding {
            Holding::Bush => self.gap_mm() + self.job.machine.headstock.farthest_mm(),
            Holding::NoBush => {
                let reach = self.job.machine.cross_tool_reach_mm.iter().copied().fold(0.0, f64::max);
                let out = self.tasks().into_iter().filter(|t| t.cross).map(|t| t.moment_mm(reach) - length);
                self.gap_mm() + out.fold(0.0, f64::max)
            }
        };
        let bar = self.elastic.twist_per_nmm(self.job.stock.diameter_mm, behind_mm);
        Sides { headstock: bar + drive, counter: shaft + drive }
    }

    /// Torque of part-off on a grip, N·m, with the share of its side and the standing torque of a phase error at the worst depth of
    /// the plunge; `whole_nm` is the torque at the bar's radius. None if the machine file gives no torsional stiffness.
    pub fn shared_nm(&self, nose_mm: f64, whole_nm: f64) -> Option<f64> {
        let counter = self.job.machine.counter_spindle.as_ref()?;
        let drive = 1.0 / (counter.torsional_n_m_per_rad? * 1000.0);
        // A drive of the headstock without any twist would take too much off the grip. It counts as soft as that of the counter-spindle.
        let sides = self.sides_of_part_off(nose_mm, drive);
        let phase_rad = counter.phase_error_deg.to_radians();
        let at = |part: f64| {
            let half = self.half_neck(part);
            let share = share_of(sides.counter + half, sides.headstock + half);
            let standing_nm = phase_rad / (sides.counter + sides.headstock + 2.0 * half) / 1000.0;
            whole_nm * part * share + standing_nm
        };
        // The plunge ends at the bore of a hollow bar.
        let bore = self.job.stock.bore_mm / self.job.stock.diameter_mm;
        let part = |i: usize| bore + (1.0 - bore) * (i as f64 / DEPTHS as f64);
        Some((1..=DEPTHS).map(|i| at(part(i))).fold(0.0, f64::max))
    }

    /// Share of the torque at the start of part-off that the twist of the bar alone gives to a grip; none if the machine file gives a
    /// torsional stiffness, because then it is counted, or if work on the rear end is heavier.
    pub fn share_untold(&self, nose_mm: f64) -> Option<f64> {
        let counter = self.job.machine.counter_spindle.as_ref()?;
        let whole = super::checks::torque::part_off_nm(self);
        if counter.torsional_n_m_per_rad.is_some() || self.back.iter().any(|b| b.work.torque_nm > whole) {
            return None;
        }
        let (sides, half) = (self.sides_of_part_off(nose_mm, 0.0), self.half_neck(1.0));
        Some(share_of(sides.counter + half, sides.headstock + half))
    }

    /// Twist under 1 N·mm of half of the neck when the tool has left `part` of the bar's diameter, rad.
    fn half_neck(&self, part: f64) -> f64 {
        let width_mm = self.job.machine.part_off.width_mm;
        self.elastic.twist_per_nmm(part * self.job.stock.diameter_mm, 0.5 * width_mm)
    }
}
