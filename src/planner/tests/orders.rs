//! What is known of the sequence program of two jobs that differ in one limit.

use super::jobs::{self, with};
use super::read;
use crate::job::Job;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::sequence::network::{Builder, Weights};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Runs;
use crate::planner::states::outlook::Looker;
use crate::process::Rig;

/// Least seconds of the sequence program with the first collet and reach; infinite where there is no plan.
fn least_s(job: &Job) -> f64 {
    let rig = Rig::new(job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
    let Ok(segments) = rig.segments() else { return f64::INFINITY };
    let tasks = rig.tasks();
    let grid = Grid::new(&rig, &segments, &moments(&rig, job.machine.cross_tool_reach_mm[0]), &Lessons::default());
    let looker = Looker::new(&rig, &segments, &grid, &tasks);
    let runs = Runs::new(&looker);
    let net = Builder::new(&runs, Weights::default()).within(Price::NO_WAY);
    net.goal.map_or(f64::INFINITY, |goal| net.reached[goal].s)
}

#[test]
fn a_tighter_limit_never_gives_a_faster_plan() {
    // The bars are so short that no span sags by the least limit that a file may give; what sag does, `refused by sag` counts.
    let mut felt = [0; 9];
    for seed in 50_000..50_250 {
        let text = jobs::small_job(seed);
        let Some(job) = read(&text) else { continue };
        let least = least_s(&job);
        let changes = [
            with(&text, "farthest", |mm| 0.8 * mm),
            with(&text, "stiffness_min", |k| 3.0 * k),
            with(&text, "span_stiffness_min", |k| 10.0 * k.max(1.0)),
            with(&text, "free_ratio", |k| 0.7 * k),
            with(&text, "pick_up", |mm| (0.02 * mm).max(0.0001)),
            with(&text, "whirl_ratio", |n| 0.7 * n),
            with(&text, "whip", |mm| (0.4 * mm).max(0.001)),
            with(&text, "bore_depth", |mm| 0.5 * mm),
            Some(text.replacen("limits:\n", "limits:\n  bore_clearance: 3.5\n", 1)),
        ];
        for (i, changed) in changes.into_iter().enumerate() {
            let Some(other) = changed.and_then(|t| read(&t)) else { continue };
            let harder = least_s(&other);
            assert!(harder >= least * (1.0 - 1e-9), "seed {seed}, change {i}: {harder} s after {least} s\n{text}");
            felt[i] += usize::from(harder > least * (1.0 + 1e-6));
        }
    }
    assert!(felt.iter().all(|n| *n >= 3), "{felt:?}");
    println!("{felt:?}");
}
