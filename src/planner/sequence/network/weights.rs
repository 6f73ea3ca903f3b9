//! What the objective and the first stage add to the time of a stage.

use crate::planner::places::ground::Ground;
use crate::planner::places::stations::Grid;
use crate::planner::sequence::price::Price;
use crate::process::pace::Pace;

/// What the objective adds to the seconds of a stage.
#[derive(Debug, Clone, Default)]
pub struct Weights {
    /// Whether the number of hand-overs counts before the time.
    pub counts_hand_overs: bool,
    /// Whether the safest plan is sought at any cost. Then the safest of several grips is taken, not the fastest.
    pub safest: bool,
    /// What the first stage adds.
    pub first: FirstStage,
}

/// What the first, free stage adds to its cuts (see `process::pace`): the part of the work on the rear end of the part
/// before that the stage does not hide, and a share of the bar change. The default adds nothing.
#[derive(Debug, Clone, Default)]
pub struct FirstStage {
    pace: Option<Pace>,
    /// By end station of the first stage: time of its tasks and tool changes, s.
    besides_s: Vec<f64>,
}

impl Weights {
    /// The cost of a hand-over that takes `takes_s`.
    pub fn hand_over(&self, takes_s: f64) -> Price {
        Price { hand_overs: if self.counts_hand_overs { 1.0 } else { 0.0 }, s: takes_s }
    }
}

impl FirstStage {
    /// The first stage of a job, for each station where it may end.
    pub fn new(ground: &Ground<'_>, grid: &Grid) -> FirstStage {
        let (rig, tasks) = (ground.rig, ground.tasks);
        let steps = rig.steps(ground.segments, tasks, ground.moments);
        let besides_s = (0..grid.len()).map(|k| rig.besides_s(&steps, tasks, grid.at(k))).collect();
        FirstStage { pace: Some(rig.pace()), besides_s }
    }

    /// What the first stage adds when it ends at a station and its cuts take `run_s`, s. The sum of cuts and addition
    /// never falls when the cuts take longer, so a lower bound on the cuts gives a lower bound on the sum.
    pub fn beyond_s(&self, station: usize, run_s: f64) -> f64 {
        self.pace.map_or(0.0, |pace| pace.beyond_s(run_s + self.besides_s[station]))
    }
}
