//! Proves the grips of the counter-spindle: the section held, the collet, what must pass through it, the bore depth, the travel.

use super::{Case, SAME_MM};
use crate::job::plan::GripPlace;
use crate::job::{Job, Section};

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
                self.breach(number, "collet", "it is gripped without a collet");
                continue;
            };
            let (from, to) = (grip.nose_mm - collet.hold_mm, grip.nose_mm);
            let held = held(job, from, to);
            if (grip.from_mm - from).abs() > SAME_MM || (grip.to_mm - to).abs() > SAME_MM {
                self.breach(number, "grip", "the length held is not the collet's hold in front of the nose");
            }
            if let Some((index, section)) = held.filter(|(_, section)| section.is_plain()) {
                if !section.grip {
                    self.breach(number, "grip", format!("{} must not be gripped", section.label(index)));
                }
                let d = section.largest_mm();
                if d < collet.smallest_mm || d > collet.largest_mm {
                    self.breach(number, "collet", format!("collet {} does not hold {d} mm", collet.name));
                }
                if grip.section != index + 1 || (grip.diameter_mm - d).abs() > SAME_MM {
                    let text = format!(
                        "the plan tells a grip on {} mm of section {}, it is {d} mm of section {}",
                        grip.diameter_mm,
                        grip.section,
                        index + 1
                    );
                    self.breach(number, "grip", text);
                }
            } else {
                self.breach(number, "grip", format!("{from:.2} to {to:.2} mm does not lie on one cylinder"));
            }
            for (a, b) in self.rig.no_grip_stretches() {
                if a < to - SAME_MM && b > from + SAME_MM {
                    self.breach(number, "grip", format!("a hole or keyseat lies from {a} to {b} mm under the grip"));
                }
            }
            let front = job.shaft.sections.iter().filter(|s| s.from_mm < to - SAME_MM).map(|s| s.largest_mm());
            let largest = front.fold(0.0, f64::max);
            if largest > collet.passes_mm {
                let text = format!(
                    "{largest} mm in front does not pass collet {}, which passes {} mm",
                    collet.name, collet.passes_mm
                );
                self.breach(number, "collet", text);
            }
            if to > counter.bore_depth_mm + SAME_MM {
                self.breach(
                    number,
                    "bore_depth",
                    format!("{to:.2} mm of shaft does not go into {} mm of bore", counter.bore_depth_mm),
                );
            }
            if to > stage.from_mm + SAME_MM {
                self.breach(
                    number,
                    "grip",
                    format!("at {:.2} mm the grip up to {to:.2} mm is not turned yet", stage.from_mm),
                );
            }
            for t in [stage.from_mm, stage.to_mm] {
                let x = t + self.rig.gap_mm() - to;
                if x < counter.nearest_mm - SAME_MM || x > counter.farthest_mm + SAME_MM {
                    let text = format!(
                        "at a turned length of {t:.2} mm the nose stands {x:.2} mm from the bush face, allowed are {} to {} mm",
                        counter.nearest_mm, counter.farthest_mm
                    );
                    self.breach(number, "counter_spindle_travel", text);
                }
            }
        }
    }
}
