//! Proves a plan on a centre: the job asks for one, the plan tells it, it turns the part in one stage, and the counter-spindle can follow.

use super::{Case, SAME_MM, mm};
use crate::job::{Hold, Job};
use crate::lang::Measure;
use crate::process::Counter;
use crate::say;

/// What holds the front in a stage without a grip, at a turned length: the centre as far as there are sections to turn.
pub fn without_grip(job: &Job, turned_mm: f64) -> Counter {
    if job.hold == Hold::Centre && turned_mm - job.shaft.length_mm() < SAME_MM {
        Counter::Centre
    } else {
        Counter::Away
    }
}

impl Case<'_> {
    pub(super) fn centre(&mut self) {
        let (plan, job) = (self.plan, self.rig.job);
        let spindle = job.machine.counter_spindle.as_ref().filter(|_| job.hold == Hold::Centre);
        let Some((spindle, centre)) = spindle.and_then(|s| Some((s, s.centre?))) else {
            if plan.centre.is_some() {
                self.breach(None, "centre", say!("proof-centre-not-asked"));
            }
            return;
        };
        let end_mm = job.shaft.length_mm();
        let told = plan.centre.is_some_and(|c| {
            (c.force_n - centre.force_n).abs() <= 1e-9 * centre.force_n && (c.leaves_at_mm - end_mm).abs() <= SAME_MM
        });
        if !told {
            self.breach(None, "centre", say!("proof-centre-told"));
        }
        if plan.stages.len() > 1 {
            self.breach(None, "centre", say!("proof-centre-stages"));
        }
        let out_mm = centre.stands_out_mm.unwrap_or(0.0);
        let reach_mm = self.fed_to(0.0, end_mm) + self.rig.gap_mm() + out_mm;
        if reach_mm > spindle.farthest_mm + SAME_MM {
            let (at, farthest) = (mm(reach_mm), Measure::Place.number(spindle.farthest_mm));
            self.breach(None, "counter_spindle_travel", say!("proof-centre-travel", at = at, farthest = farthest));
        }
    }
}
