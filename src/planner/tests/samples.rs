//! Runs known from samples of their stations hide nothing that the runs known from every state have.

use super::lookers::{sums, with_each};
use crate::job::Job;
use crate::planner::sequence::network::{Builder, Weights};
use crate::planner::sequence::runs::{Grips, Runs};

/// Pairs of stations, those that samples take to be better than they are, and mistakes that were noticed.
fn compare(job: &Job) -> [usize; 3] {
    let mut counts = [0; 3];
    with_each(job, |looker| {
        let (every, sampled) = (Runs::new(looker), Runs::sampled(looker));
        assert!(!every.mistaken());
        let mut better = 0;
        // Runs are known from where the bar may come, and by samples it may come to more stations.
        let mut reached = vec![false; looker.grid.len()];
        reached[0] = true;
        for i in 0..looker.grid.last() {
            every.from(i).for_each(|(j, _)| reached[j] = true);
            for (j, pair) in every.from(i) {
                let other = sampled.from(i).find(|(k, _)| *k == j).map(|(_, p)| *p);
                let other = other.unwrap_or_else(|| panic!("samples hide the way from {i} to {j}"));
                assert!(other.sure || !pair.sure, "{i} to {j}");
                assert!(other.sure || other.doubtful_s <= pair.doubtful_s + 1e-9, "{i} to {j}");
                counts[0] += 1;
            }
            for (j, pair) in sampled.from(i).filter(|(_, p)| reached[i] && p.sure) {
                let grips = sampled.grips(i, j);
                let truth = every.from(i).find(|(k, _)| *k == j).is_some_and(|(_, p)| p.sure);
                assert_eq!(matches!(*grips, Grips::Sure(..)), truth, "{i} to {j}: {pair:?}");
                better += usize::from(!truth);
            }
        }
        assert_eq!(sampled.mistaken(), better > 0);
        counts[1] += better;
        let bounds = [&sampled, &every].map(|runs| Builder::new(runs, Weights::default()).least().s);
        assert!(bounds[0] <= bounds[1] + 1e-9 || bounds[1].is_infinite(), "{bounds:?}");
        counts[2] += usize::from(sampled.mistaken());
    });
    counts
}

#[test]
fn samples_hide_no_plan_and_a_mistake_is_noticed() {
    let counts = sums(12.0, 71_000..71_080, compare, |i, job| {
        // Fine pitches, so that there is something between samples; and so little damping that modes come and go along the way.
        job.planning.station_pitch_mm *= 0.3;
        job.limits.damping_ratio = if i % 8 == 3 { 0.003 } else { job.limits.damping_ratio };
        job.limits.free_ratio = None;
        job.limits.stiffness_min_n_per_um = 0.01;
    });
    assert!(counts[0] > 2000 && counts[2] > 0, "{counts:?}");
}
