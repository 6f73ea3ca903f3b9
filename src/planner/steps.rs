//! The steps of planning one by one, for whoever times them, as `benches/planning.rs` does. A plan comes from [`plan`](super::plan()),
//! which goes through them all, for every collet.

use crate::defect::Defect;
use crate::planner::places::grips::lands;
use crate::planner::places::ground::Ground;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::plan::draft::Draft;
use crate::planner::plan::placing::place;
use crate::planner::sequence::network::{Builder, Weights};
use crate::planner::sequence::price::Price;
use crate::planner::sequence::runs::Runs;
use crate::planner::sequence::way::{EQUALLY_FAST, best_way};
use crate::planner::states::outlook::Looker;
use crate::process::{Counter, Rig, State};

/// The search for the fastest plan next to a bush, with one collet and the first reach of the cross tools, before its first round.
pub struct Steps<'a> {
    ground: &'a Ground<'a>,
    looker: &'a Looker<'a>,
    builder: &'a Builder<'a>,
}

/// A plan in the making: its stops and grips.
#[derive(Debug, Clone)]
pub struct Stops(pub(super) Draft);

/// Looks at the states of a rig as far as planning begins with, and does something with what is known then; none where the shaft cannot
/// be cut.
pub fn of<T>(rig: &Rig<'_>, work: impl FnOnce(&Steps<'_>) -> T) -> Option<T> {
    let (segments, tasks) = (rig.segments().ok()?, rig.tasks());
    let moments = moments(rig, *rig.job.machine.cross_tool_reach_mm.first()?);
    let ground = Ground { rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
    let grid = Grid::new(rig, &segments, &moments, &Lessons::default());
    let looker = Looker::new(rig, &segments, &grid, &tasks);
    let runs = Runs::sampled(&looker);
    let builder = Builder::new(&runs, Weights::default());
    Some(work(&Steps { ground: &ground, looker: &looker, builder: &builder }))
}

impl Steps<'_> {
    /// What no plan can beat, as far as is known: seconds that depend on its stops.
    pub fn least_s(&self) -> f64 {
        self.builder.least().s
    }

    /// The network of all plans within a share of the least time, and the best way through it by the linear program; none where it has
    /// no way.
    ///
    /// # Errors
    /// [`Defect`] when the linear program fails, or its optimum is not that of the labels: a fault of ours.
    pub fn best_within(&self, share: f64) -> Result<Option<Stops>, Defect> {
        let least_s = self.least_s();
        let net = self.builder.within(Price::seconds(least_s * (1.0 + share)));
        let way = best_way(&net, least_s * share.min(EQUALLY_FAST))?;
        Ok(way.map(|way| Stops(Draft::of(&way, self.looker))))
    }

    /// The same stops and grips moved for the largest margin by the linear program; states are looked at no farther apart than told.
    ///
    /// # Errors
    /// [`Defect`] when the linear program fails: a fault of ours.
    pub fn placed(&self, stops: &Stops, apart_mm: f64) -> Result<Stops, Defect> {
        place(self.ground, &lands(self.ground.rig), stops.0.clone(), apart_mm, f64::INFINITY).map(Stops)
    }

    /// States looked at so far, grip by grip: what the counter-spindle does, and the turned length, mm.
    pub fn looked_at(&self) -> Vec<(Counter, f64)> {
        let nose = |grip: usize| Counter::of(self.looker.noses.get(grip).copied());
        self.looker.looked_at().into_iter().map(|(grip, k)| (nose(grip), self.looker.grid.at(k))).collect()
    }

    /// States that settling the speeds of such a plan looks at.
    pub fn settled(&self, stops: &Stops, apart_mm: f64) -> Vec<State> {
        self.ground.settle(&stops.0, apart_mm).looks.iter().map(|look| look.state).collect()
    }
}
