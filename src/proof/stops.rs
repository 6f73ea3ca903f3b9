//! Proves where stages begin and end, where the headstock re-grips, and that the feed may stop there.

use super::{Case, SAME_MM, mm};
use crate::job::plan::PartOff;
use crate::job::{Holding, Tray};
use crate::lang::Measure;
use crate::say;

impl Case<'_> {
    pub(super) fn stops(&mut self) {
        let (plan, job) = (self.plan, self.rig.job);
        let mut at = 0.0;
        for (i, stage) in plan.stages.iter().enumerate() {
            let number = Some(i + 1);
            if stage.number != i + 1 || (stage.from_mm - at).abs() > SAME_MM || stage.to_mm <= stage.from_mm {
                let (from, to) = (mm(stage.from_mm), mm(stage.to_mm));
                self.breach(number, "order", say!("proof-stage-order", from = from, to = to, before = mm(at)));
            }
            if (i == 0) != stage.grip.is_none() {
                self.breach(number, "order", say!("proof-free-stage"));
            }
            at = stage.to_mm;
        }
        let end = job.parted_at_mm();
        if (at - end).abs() > SAME_MM {
            self.breach(None, "order", say!("proof-end", end = mm(at), part_off = mm(end)));
        }
        self.part_off();
        self.regrips();
        let inner = plan.stages.iter().skip(1).map(|s| s.from_mm).chain(plan.headstock_regrips_mm.iter().copied());
        for t in inner.collect::<Vec<_>>() {
            if !self.rig.stop_at(self.segments, self.snapped(t)).allowed() {
                self.breach(None, "interrupt", say!("proof-no-stop", at = mm(t)));
            }
        }
        let hand_overs: Vec<f64> = plan.stages.iter().skip(1).map(|s| s.from_mm).collect();
        if !same(&hand_overs, &plan.hand_overs_mm) {
            self.breach(None, "order", say!("proof-hand-overs-listed"));
        }
    }

    /// Proves that a grip holds the part at part-off, or that the part may fall: its rear end needs no work, and no section is longer or
    /// thicker than the tray takes. Proves that the plan tells it.
    fn part_off(&mut self) {
        let (plan, job) = (self.plan, self.rig.job);
        let held = plan.stages.last().is_some_and(|s| s.grip.is_some());
        let tray = match (&job.machine.part_off.tray, &job.machine.counter_spindle) {
            (Some(tray), _) => Some(*tray),
            (None, Some(_)) => Some(Tray::BY_DEFAULT),
            (None, None) => None,
        };
        if let Some(told) = &plan.part_off {
            let into = if held { PartOff::COUNTER_SPINDLE } else { PartOff::TRAY };
            let bounds = tray.filter(|_| !held).map(|t| (t.max_length_mm, t.max_diameter_mm));
            if told.into != into || told.falls_up_to_mm() != bounds {
                self.breach(None, "part_off", say!("proof-part-off-told"));
            }
        }
        let Some(tray) = tray.filter(|_| !held) else { return };
        if !self.rig.back.is_empty() {
            self.breach(None, "part_off", say!("proof-falls-rear-work"));
        }
        let length_mm: f64 = job.shaft.sections.iter().map(|s| s.to_mm - s.from_mm).sum();
        let thickest_mm = job.shaft.sections.iter().map(|s| s.largest_mm()).fold(0.0, f64::max);
        if length_mm > tray.max_length_mm + SAME_MM || thickest_mm > tray.max_diameter_mm + SAME_MM {
            let text = say!(
                "proof-too-large-to-fall",
                length = mm(length_mm),
                diameter = mm(thickest_mm),
                most_length = Measure::Place.number(tray.max_length_mm),
                most_diameter = Measure::Size.number(tray.max_diameter_mm)
            );
            self.breach(None, "tray", text);
        }
    }

    fn regrips(&mut self) {
        let (plan, head) = (self.plan, &self.rig.job.machine.headstock);
        let listed: Vec<f64> = plan.stages.iter().flat_map(|s| s.regrips_mm.iter().copied()).collect();
        if !same(&listed, &plan.headstock_regrips_mm) {
            self.breach(None, "regrips", say!("proof-regrips-listed"));
        }
        let mut last = 0.0;
        for (i, stage) in plan.stages.iter().enumerate() {
            let starts = stage.regrips_mm.first().is_some_and(|t| (t - stage.from_mm).abs() <= SAME_MM);
            if self.rig.job.holding == Holding::NoBush && i > 0 && !starts {
                self.breach(Some(i + 1), "regrips", say!("proof-no-feed-out"));
            }
            for t in &stage.regrips_mm {
                if *t < stage.from_mm - SAME_MM || *t > stage.to_mm + SAME_MM || *t < last {
                    self.breach(Some(i + 1), "regrips", say!("proof-regrip-outside", at = mm(*t)));
                }
                if stage.grip.is_none() {
                    self.breach(Some(i + 1), "regrips", say!("proof-regrip-front-free", at = mm(*t)));
                }
                self.stroke(i + 1, last, self.fed_to(last, *t), head.stroke_mm);
                last = *t;
            }
            self.stroke(i + 1, last, self.fed_to(last, stage.to_mm), head.stroke_mm);
        }
    }

    /// Place to which the bar is fed from one turned length to another, mm. Where a tandem ends a segment on the way, the bar goes on until
    /// its finishing tool has come to the end too. So two tools need more stroke and travel than one.
    pub(super) fn fed_to(&self, from_mm: f64, to_mm: f64) -> f64 {
        let ends = self.segments.iter().filter(|s| s.to_mm > from_mm + SAME_MM && s.to_mm <= to_mm + SAME_MM);
        let run_outs = ends.filter(|s| s.lag_mm.is_some()).map(|s| s.to_mm + self.rig.job.cutting.lag_mm);
        run_outs.fold(to_mm, f64::max)
    }

    fn stroke(&mut self, stage: usize, last: f64, t: f64, stroke_mm: f64) {
        if t - last > stroke_mm + SAME_MM {
            let stroke = Measure::Place.number(stroke_mm);
            let text = say!("proof-stroke", from = mm(last), to = mm(t), stroke = stroke);
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
