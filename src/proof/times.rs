//! Proves the times of a plan by adding them up again.

use super::{Case, SAME_MM};
use crate::job::Hold;
use crate::job::plan::Times;
use crate::lang;
use crate::process::features::moments_told;
use crate::say;

/// Times agree within the sum of this share and this many seconds.
const SAME_SHARE: f64 = 1e-6;
const SAME_S: f64 = 1e-6;

impl Case<'_> {
    pub(super) fn times(&mut self) {
        let plan = self.plan;
        let machine = &self.rig.job.machine;
        let mut sum = Times { part_off: machine.part_off.time_s, ..Times::default() };
        for piece in &plan.segments {
            let middle = 0.5 * (piece.from_mm + piece.to_mm);
            let segment = &self.segments[crate::process::segments::segment_at(self.segments, middle)];
            let gripped = plan.stages.get(piece.stage.wrapping_sub(1)).is_some_and(|s| s.grip.is_some());
            let time = self.rig.stretch_time(segment, [piece.from_mm, piece.to_mm], gripped, piece.rpm);
            // The speed of the last travel as a cap does not change the travels before it: they run slower anyway.
            sum.cutting += time.cutting_s;
            sum.segments += time.overhead_s;
        }
        let stops: Vec<f64> = plan.stages.iter().skip(1).map(|s| s.from_mm).collect();
        // A centre comes and leaves in the time of a hand-over.
        let centre = usize::from(self.rig.job.hold == Hold::Centre);
        sum.hand_overs = (stops.len() + centre) as f64 * machine.hand_over_s();
        let mut places = stops.clone();
        for t in &plan.headstock_regrips_mm {
            let shared = stops.iter().any(|s| (s - t).abs() < SAME_MM);
            let saved = if shared { machine.shared_stop_saving_s } else { 0.0 };
            sum.regrips += (machine.headstock.regrip_s - saved).max(0.0);
            if !shared {
                places.push(*t);
            }
        }
        sum.features = self.rig.tasks().iter().map(|t| t.time_s).sum();
        sum.back_work = self.rig.back.iter().map(|b| b.work.time_s).sum();
        let lines = places.iter().map(|t| self.rig.stop_at(self.segments, self.snapped(*t)));
        sum.penalties =
            lines.map(|s| self.rig.stop_penalty_s(s)).sum::<f64>() + self.rig.border_penalty_s(self.segments);
        sum.total =
            sum.cutting + sum.segments + sum.hand_overs + sum.regrips + sum.features + sum.part_off + sum.back_work;
        let t = &plan.time_s;
        self.pace(&sum);
        let pairs = [
            ("cutting", t.cutting, sum.cutting),
            ("segments", t.segments, sum.segments),
            ("hand_overs", t.hand_overs, sum.hand_overs),
            ("regrips", t.regrips, sum.regrips),
            ("features", t.features, sum.features),
            ("part_off", t.part_off, sum.part_off),
            ("back_work", t.back_work, sum.back_work),
            ("penalties", t.penalties, sum.penalties),
            ("total", t.total, sum.total),
        ];
        for (name, given, found) in pairs {
            if (given - found).abs() > SAME_S + SAME_SHARE * found {
                let (given, sum) = (lang::fixed(given, 3), lang::fixed(found, 3));
                self.breach(None, "times", say!("proof-time", given = given, name = name, sum = sum));
            }
        }
    }
    /// Proves the time from part to part with the closed form of [`crate::process::pace`]: the works of the headstock, and the time that
    /// the counter-spindle adds.
    fn pace(&mut self, sum: &Times) {
        let plan = self.plan;
        let Some(cycle) = &plan.cycle else { return };
        let tasks = self.rig.tasks();
        let moments = moments_told(plan, &tasks);
        let steps = self.rig.steps(self.segments, &tasks, &moments);
        let own_s = sum.cutting + sum.segments + sum.hand_overs + sum.regrips + sum.features + sum.part_off;
        let free: f64 = plan.segments.iter().filter(|s| s.stage == 1).map(|s| s.time_s).sum();
        let gripped = plan.stages.first().is_some_and(|s| s.grip.is_some());
        let end_mm = plan.stages.first().filter(|_| !gripped).map_or(0.0, |s| s.to_mm);
        let first_s = free + self.rig.besides_s(&steps, &tasks, end_mm);
        let found = own_s + self.rig.changes_s(&steps) + self.rig.pace().beyond_s(first_s);
        if (cycle.steady_s - found).abs() > SAME_S + SAME_SHARE * found {
            let (given, sum) = (lang::fixed(cycle.steady_s, 3), lang::fixed(found, 3));
            self.breach(None, "times", say!("proof-cycle-time", given = given, sum = sum));
        }
    }
}
