//! A grip makes a bar stiffer, so it must not break what passes with the front free.

use crate::halves::state;
use crate::{jobs, read};
use spanhold::process::checks::{self, Finding, View};
use spanhold::process::{Counter, Rig, State};

/// What belongs to the grip itself: the room in the bore.
const OWN: [&str; 1] = ["bore"];

#[test]
fn a_grip_breaks_no_check_that_passed_free() {
    let (mut pairs, mut free_passes) = (0, 0);
    for seed in 0..600 {
        let Some(job) = read(&jobs::small_job(seed)) else { continue };
        let Some(counter) = &job.machine.counter_spindle else { continue };
        let collet = counter.collets.first().expect("has one");
        let rig = Rig::new(&job, Some(collet));
        let Ok(segments) = rig.segments() else { continue };
        for i in 0..40 {
            let part = |step: usize| ((i * step) % 40) as f64 / 40.0;
            let gripped = state(&rig, [part(7), 0.15 + 0.85 * part(11), part(17)], None);
            if gripped.counter == Counter::Away || matches!(gripped.guide, spanhold::process::Guide::Parted) {
                continue;
            }
            let free = State { counter: Counter::Away, ..gripped };
            let Some(segment) = segments.iter().find(|s| s.to_mm >= gripped.turned_mm) else { continue };
            // At the slower speed of both, which is the gripped one's.
            let rpm = job.cutting.speed_floor * rig.segment_rpm(segment, true);
            let found = |state: &State| -> Vec<Finding> {
                let answers = rig.answers(state).expect("held");
                checks::all(&View { rig: &rig, state, answers: &answers, segment, rpm }).collect()
            };
            pairs += 1;
            if !found(&free).iter().all(Finding::passes) {
                continue;
            }
            free_passes += 1;
            let broken = found(&gripped).into_iter().find(|f| !f.passes() && !OWN.contains(&f.check));
            assert!(broken.is_none(), "seed {seed}: {gripped:?} {broken:?}\n{}", jobs::small_job(seed));
        }
    }
    assert!(pairs > 2000 && free_passes > 500, "{free_passes} of {pairs}");
}
