//! A glance at a state says nothing else than the full look.

use crate::lookers::{sums, with_each};
use spanhold::job::Job;
use spanhold::planner::states::outlook::Side;

/// Compares all states of a job within every grip's travel; how many are sure, dead and in doubt.
fn compare(job: &Job) -> [usize; 3] {
    let mut counts = [0; 3];
    let farthest_mm = job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.farthest_mm);
    with_each(job, |looker| {
        let grid = looker.grid;
        for (grip, nose) in looker.noses.iter().enumerate() {
            let travel = *nose..nose + farthest_mm;
            for station in (0..grid.len()).filter(|k| travel.contains(&grid.at(*k))) {
                for side in [Side::End, Side::Start] {
                    let (a, b) = (looker.glance(grip, station, side), looker.outlook(grip, station, side));
                    assert_eq!((a.sure, a.dead), (b.sure, b.dead), "{grip} {station} {side:?} {a:?} {b:?}");
                    assert!(a.dead || a.margin >= b.margin - 1e-12, "{a:?} {b:?}");
                    assert!(a.dead || (a.hopeful_rpm - b.hopeful_rpm).abs() < 1e-9 * b.hopeful_rpm, "{a:?} {b:?}");
                    counts[if a.sure { 0 } else { 2 - usize::from(a.dead) }] += 1;
                }
            }
        }
    });
    counts
}

#[test]
fn a_glance_says_what_the_full_look_says() {
    let counts = sums(17.0, 70_000..70_120, compare, |_, _| {});
    // Enough of each: sure, dead, in doubt.
    assert!(counts[0] > 2000 && counts[1] > 300 && counts[2] > 500, "{counts:?}");
}
