//! What an objective and the first stage add to what a stage takes.

use crate::planner::places::ground::Ground;
use crate::planner::places::stations::Grid;
use crate::planner::sequence::price::Price;
use crate::process::pace::Pace;

/// What an objective adds to the seconds of a stage.
#[derive(Debug, Clone, Default)]
pub struct Weights {
    /// Whether hand-overs come first and time after.
    pub counts_hand_overs: bool,
    /// Whether the safest plan is sought, whatever it costs: of several grips the safest is taken then, not the fastest.
    pub safest: bool,
    /// Work on the rear end, that the first stage may hide.
    pub first: FirstStage,
}

/// What the first, free stage adds besides its cuts (see `process::pace`): work on the rear end of the part before that it
/// does not hide, and a share of the bar change. The default adds nothing.
#[derive(Debug, Clone, Default)]
pub struct FirstStage {
    pace: Option<Pace>,
    /// Tasks and tool changes of the stage where it ends at a station, s.
    besides_s: Vec<f64>,
}

impl Weights {
    /// What a hand-over costs that takes so long, s.
    pub fn hand_over(&self, takes_s: f64) -> Price {
        Price { hand_overs: if self.counts_hand_overs { 1.0 } else { 0.0 }, s: takes_s }
    }
}

impl FirstStage {
    /// For the works of a ground and its stations.
    pub fn new(ground: &Ground<'_>, grid: &Grid) -> FirstStage {
        let (rig, tasks) = (ground.rig, ground.tasks);
        let steps = rig.steps(ground.segments, tasks, ground.moments);
        let besides_s = (0..grid.len()).map(|k| rig.besides_s(&steps, tasks, grid.at(k))).collect();
        FirstStage { pace: Some(rig.pace()), besides_s }
    }

    /// What it adds when it ends at a station and its cuts take so long, s. Cuts and this together never fall as the cuts
    /// get longer, so a time that no grip beats stays one.
    pub fn beyond_s(&self, station: usize, run_s: f64) -> f64 {
        self.pace.map_or(0.0, |pace| pace.beyond_s(run_s + self.besides_s[station]))
    }
}
