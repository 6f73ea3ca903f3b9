//! Proves where stages begin and end, where the headstock re-grips, and that the feed may stop there.

use super::{Case, SAME_MM};
use crate::job::Holding;

impl Case<'_> {
    pub(super) fn stops(&mut self) {
        let (plan, job) = (self.plan, self.rig.job);
        let mut at = 0.0;
        for (i, stage) in plan.stages.iter().enumerate() {
            let number = Some(i + 1);
            if stage.number != i + 1 || (stage.from_mm - at).abs() > SAME_MM || stage.to_mm <= stage.from_mm {
                self.breach(
                    number,
                    "order",
                    format!("it runs from {:.2} to {:.2} mm, after {at:.2} mm", stage.from_mm, stage.to_mm),
                );
            }
            if (i == 0) != stage.grip.is_none() {
                self.breach(number, "order", "the first stage is free, and only the first");
            }
            at = stage.to_mm;
        }
        let end = job.parted_at_mm();
        if (at - end).abs() > SAME_MM {
            self.breach(None, "order", format!("the last stage ends at {at:.2} mm, part-off at {end:.2} mm"));
        }
        if job.machine.counter_spindle.is_some() && plan.stages.len() < 2 {
            self.breach(None, "order", "nothing holds the part at part-off");
        }
        self.regrips();
        let inner = plan.stages.iter().skip(1).map(|s| s.from_mm).chain(plan.headstock_regrips_mm.iter().copied());
        for t in inner.collect::<Vec<_>>() {
            if !self.rig.stop_at(self.segments, self.snapped(t)).allowed() {
                self.breach(None, "interrupt", format!("the feed must not stop at {t:.2} mm"));
            }
        }
        let hand_overs: Vec<f64> = plan.stages.iter().skip(1).map(|s| s.from_mm).collect();
        if !same(&hand_overs, &plan.hand_overs_mm) {
            self.breach(None, "order", "the hand-overs listed are not those between the stages");
        }
    }

    fn regrips(&mut self) {
        let (plan, head) = (self.plan, &self.rig.job.machine.headstock);
        let listed: Vec<f64> = plan.stages.iter().flat_map(|s| s.regrips_mm.iter().copied()).collect();
        if !same(&listed, &plan.headstock_regrips_mm) {
            self.breach(None, "regrips", "the re-grips listed are not those of the stages");
        }
        let mut last = 0.0;
        for (i, stage) in plan.stages.iter().enumerate() {
            let starts = stage.regrips_mm.first().is_some_and(|t| (t - stage.from_mm).abs() <= SAME_MM);
            if self.rig.job.holding == Holding::NoBush && i > 0 && !starts {
                self.breach(Some(i + 1), "regrips", "without a bush a stage begins with feeding out: a re-grip");
            }
            for t in &stage.regrips_mm {
                if *t < stage.from_mm - SAME_MM || *t > stage.to_mm + SAME_MM || *t < last {
                    self.breach(Some(i + 1), "regrips", format!("the re-grip at {t:.2} mm is out of its stage"));
                }
                if stage.grip.is_none() {
                    self.breach(
                        Some(i + 1),
                        "regrips",
                        format!("the headstock opens at {t:.2} mm while the front is free"),
                    );
                }
                self.stroke(i + 1, last, *t, head.stroke_mm);
                last = *t;
            }
            self.stroke(i + 1, last, stage.to_mm, head.stroke_mm);
        }
    }

    fn stroke(&mut self, stage: usize, last: f64, t: f64, stroke_mm: f64) {
        if t - last > stroke_mm + SAME_MM {
            let text =
                format!("from {last:.2} to {t:.2} mm the headstock would need more than its stroke of {stroke_mm} mm");
            self.breach(Some(stage), "stroke", text);
        }
    }

    /// The shoulder or segment border of the job that a stored place stands for, within rounding; else the place itself.
    pub(super) fn snapped(&self, t: f64) -> f64 {
        let borders = self.segments.iter().map(|s| s.to_mm);
        borders.min_by(|a, b| (a - t).abs().total_cmp(&(b - t).abs())).filter(|b| (b - t).abs() <= SAME_MM).unwrap_or(t)
    }
}

fn same(a: &[f64], b: &[f64]) -> bool {
    a.len() == b.len() && a.iter().zip(b).all(|(x, y)| (x - y).abs() <= SAME_MM)
}
