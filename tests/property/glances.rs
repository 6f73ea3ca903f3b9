//! A glance at a state says nothing else than the full look.

use crate::{jobs, read};
use spanhold::job::Job;
use spanhold::planner::outlook::{Looker, Side};
use spanhold::planner::stations::{Grid, moments};
use spanhold::process::Rig;

/// Compares all states of a job within every grip's travel; how many are sure, dead and in doubt.
fn compare(job: &Job) -> [usize; 3] {
    let mut counts = [0; 3];
    let Some(counter) = &job.machine.counter_spindle else { return counts };
    for collet in &counter.collets {
        let rig = Rig::new(job, Some(collet));
        let Ok(segments) = rig.segments() else { continue };
        let tasks = rig.tasks();
        let grid = Grid::new(&rig, &segments, &moments(&rig, job.machine.cross_tool_reach_mm[0]), &[]);
        let looker = Looker::new(&rig, &segments, &grid, &tasks);
        for (grip, nose) in looker.noses.iter().enumerate() {
            let travel = *nose..nose + counter.farthest_mm;
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
    }
    counts
}

#[test]
fn a_glance_says_what_the_full_look_says() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/feed-roller-shaft.yaml");
    let mut demo = spanhold::input::read_job(path.as_ref()).expect("the demo job");
    demo.limits.station_pitch_mm = 17.0;
    let random = (70_000..70_120).filter_map(|seed| read(&jobs::small_job(seed)));
    let all = std::iter::once(demo).chain(random).map(|job| compare(&job));
    let counts = all.fold([0; 3], |a, b| [a[0] + b[0], a[1] + b[1], a[2] + b[2]]);
    // Enough of each: sure, dead, in doubt.
    assert!(counts[0] > 2000 && counts[1] > 300 && counts[2] > 500, "{counts:?}");
}
