//! Proves the grips of the counter-spindle: the section held, the collet, what must pass through it, the bore depth, the travel.

use super::{Case, SAME_MM, mm};
use crate::job::plan::GripPlace;
use crate::job::{Job, Section};
use crate::lang::Measure;
use crate::say;

/// The section on which a whole hold lies, with its index. None if the hold does not lie on a single section.
fn held(job: &Job, from_mm: f64, to_mm: f64) -> Option<(usize, &Section)> {
    let mut sections = job.shaft.sections.iter().enumerate();
    sections.find(|(_, s)| from_mm >= s.from_mm - SAME_MM && to_mm <= s.to_mm + SAME_MM)
}

/// Diameter a grip holds, mm. It is 0 if the grip does not lie on a single section: such a grip holds nothing.
pub fn held_mm(job: &Job, hold_mm: f64, grip: &GripPlace) -> f64 {
    held(job, grip.nose_mm - hold_mm, grip.nose_mm).map_or(0.0, |(_, s)| s.largest_mm())
}

impl Case<'_> {
    pub(super) fn grips(&mut self) {
        let (plan, job) = (self.plan, self.rig.job);
        for (i, stage) in plan.stages.iter().enumerate() {
            let Some(grip) = &stage.grip else { continue };
            let number = Some(i + 1);
            let (Some(collet), Some(counter)) = (self.rig.collet, &job.machine.counter_spindle) else {
                self.breach(number, "collet", say!("proof-grip-no-collet"));
                continue;
            };
            let (from, to) = (grip.nose_mm - collet.hold_mm, grip.nose_mm);
            let held = held(job, from, to);
            if (grip.from_mm - from).abs() > SAME_MM || (grip.to_mm - to).abs() > SAME_MM {
                self.breach(number, "grip", say!("proof-grip-length"));
            }
            if let Some((index, section)) = held.filter(|(_, section)| section.is_plain()) {
                if !section.grip {
                    self.breach(number, "grip", say!("proof-grip-forbidden", section = section.label(index)));
                }
                let d = section.largest_mm();
                if d < collet.smallest_mm || d > collet.largest_mm {
                    let text = say!("proof-grip-diameter", collet = collet.name, diameter = Measure::Size.number(d));
                    self.breach(number, "collet", text);
                }
                if grip.section != index + 1 || (grip.diameter_mm - d).abs() > SAME_MM {
                    let text = say!(
                        "proof-grip-described",
                        diameter = Measure::Size.number(grip.diameter_mm),
                        section = grip.section,
                        real_diameter = Measure::Size.number(d),
                        real_section = index + 1
                    );
                    self.breach(number, "grip", text);
                }
            } else {
                self.breach(number, "grip", say!("proof-grip-not-plain", from = mm(from), to = mm(to)));
            }
            for (a, b) in self.rig.no_grip_stretches() {
                if a < to - SAME_MM && b > from + SAME_MM {
                    let text =
                        say!("proof-grip-feature", from = Measure::Place.number(a), to = Measure::Place.number(b));
                    self.breach(number, "grip", text);
                }
            }
            let front = job.shaft.sections.iter().filter(|s| s.from_mm < to - SAME_MM).map(|s| s.largest_mm());
            let largest = front.fold(0.0, f64::max);
            if largest > collet.passes_mm {
                let (front, passes) = (Measure::Size.number(largest), Measure::Size.number(collet.passes_mm));
                let text = say!("proof-grip-front", front = front, collet = collet.name, passes = passes);
                self.breach(number, "collet", text);
            }
            if to > counter.bore_depth_mm + SAME_MM {
                let depth = Measure::Place.number(counter.bore_depth_mm);
                self.breach(number, "bore_depth", say!("proof-grip-depth", length = mm(to), depth = depth));
            }
            if to > stage.from_mm + SAME_MM {
                let text = say!("proof-grip-not-turned", turned = mm(stage.from_mm), to = mm(to));
                self.breach(number, "grip", text);
            }
            for t in [stage.from_mm, self.fed_to(stage.from_mm, stage.to_mm)] {
                let x = t + self.rig.gap_mm() - to;
                if x < counter.nearest_mm - SAME_MM || x > counter.farthest_mm + SAME_MM {
                    let text = say!(
                        "proof-grip-travel",
                        turned = mm(t),
                        distance = mm(x),
                        nearest = Measure::Place.number(counter.nearest_mm),
                        farthest = Measure::Place.number(counter.farthest_mm)
                    );
                    self.breach(number, "counter_spindle_travel", text);
                }
            }
        }
    }
}
