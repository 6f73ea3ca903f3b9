//! What the tests of looks and runs share: every collet of a job with its looker, and what comes of the metre-long demo and of random jobs.

use super::{jobs, read};
use crate::job::Job;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::states::outlook::Looker;
use crate::process::Rig;

/// Does something with the looker of every collet that can be tried.
pub fn with_each(job: &Job, mut work: impl FnMut(&Looker<'_>)) {
    let Some(counter) = &job.machine.counter_spindle else { return };
    for collet in &counter.collets {
        let rig = Rig::new(job, Some(collet));
        let Ok(segments) = rig.segments() else { continue };
        let tasks = rig.tasks();
        let grid = Grid::new(&rig, &segments, &moments(&rig, job.machine.cross_tool_reach_mm[0]), &Lessons::default());
        work(&Looker::new(&rig, &segments, &grid, &tasks));
    }
}

/// Sums of what `count` counts in the metre-long demo, with stations so far apart, and in random jobs.
pub fn sums(
    pitch_mm: f64,
    seeds: std::ops::Range<u64>,
    count: impl Fn(&Job) -> [usize; 3],
    change: impl Fn(usize, &mut Job),
) -> [usize; 3] {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/feed-roller-shaft.yaml");
    let mut demo = crate::input::read_job(path.as_ref()).expect("the demo job");
    demo.planning.station_pitch_mm = pitch_mm;
    let random = seeds.filter_map(|seed| read(&jobs::small_job(seed))).enumerate().map(|(i, mut job)| {
        change(i, &mut job);
        job
    });
    let all = std::iter::once(demo).chain(random).map(|job| count(&job));
    all.fold([0; 3], |a, b| [a[0] + b[0], a[1] + b[1], a[2] + b[2]])
}
