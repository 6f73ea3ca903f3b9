//! Runs known from samples of their stations hide nothing that the runs known from every state have.

use crate::{jobs, read};
use spanhold::job::Job;
use spanhold::planner::network::{Builder, Weights};
use spanhold::planner::outlook::Looker;
use spanhold::planner::runs::{Grips, Runs};
use spanhold::planner::settle::Ground;
use spanhold::planner::stations::{Grid, moments};
use spanhold::process::Rig;

/// Pairs of stations, those that samples take to be better than they are, and mistakes that were noticed.
fn compare(job: &Job) -> [usize; 3] {
    let mut counts = [0; 3];
    let Some(counter) = &job.machine.counter_spindle else { return counts };
    for collet in &counter.collets {
        let rig = Rig::new(job, Some(collet));
        let Ok(segments) = rig.segments() else { continue };
        let tasks = rig.tasks();
        let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
        let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments };
        let grid = Grid::new(ground.rig, &segments, &moments, &[]);
        let looker = Looker::new(&rig, &segments, &grid, &tasks);
        let (every, sampled) = (Runs::new(&looker), Runs::sampled(&looker));
        assert!(!every.mistaken());
        let mut better = 0;
        for i in 0..grid.last() {
            for (j, pair) in every.from(i) {
                let other = sampled.from(i).find(|(k, _)| *k == j).map(|(_, p)| *p);
                let other = other.unwrap_or_else(|| panic!("samples hide the way from {i} to {j}"));
                assert!(other.sure || !pair.sure, "{i} to {j}");
                assert!(other.sure || other.doubtful_s <= pair.doubtful_s + 1e-9, "{i} to {j}");
                counts[0] += 1;
            }
            for (j, pair) in sampled.from(i).filter(|(_, p)| p.sure) {
                let grips = sampled.grips(i, j);
                let truth = every.from(i).find(|(k, _)| *k == j).is_some_and(|(_, p)| p.sure);
                assert_eq!(matches!(*grips, Grips::Sure(..)), truth, "{i} to {j}: {pair:?}");
                better += usize::from(!truth);
            }
        }
        assert_eq!(sampled.mistaken(), better > 0);
        counts[1] += better;
        let bounds = [&sampled, &every].map(|runs| Builder::new(runs, Weights::default()).least_s());
        assert!(bounds[0] <= bounds[1] + 1e-9 || bounds[1].is_infinite(), "{bounds:?}");
        counts[2] += usize::from(sampled.mistaken());
    }
    counts
}

#[test]
fn samples_hide_no_plan_and_a_mistake_is_noticed() {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/feed-roller-shaft.yaml");
    let mut demo = spanhold::input::read_job(path.as_ref()).expect("the demo job");
    demo.limits.station_pitch_mm = 12.0;
    let random = (71_000..71_040).filter_map(|seed| read(&jobs::small_job(seed)));
    let random = random.enumerate().map(|(i, mut job)| {
        // Fine pitches, so that there is something between samples; and so little damping that modes come and go along the way.
        job.limits.station_pitch_mm *= 0.3;
        job.limits.damping_ratio = if i % 8 == 3 { 0.003 } else { job.limits.damping_ratio };
        job
    });
    let all = std::iter::once(demo).chain(random).map(|job| compare(&job));
    let counts = all.fold([0; 3], |a, b| [a[0] + b[0], a[1] + b[1], a[2] + b[2]]);
    assert!(counts[0] > 2000 && counts[2] > 0, "{counts:?}");
}
