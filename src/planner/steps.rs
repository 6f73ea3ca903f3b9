//! The steps of planning one by one, for timing them as `benches/planning.rs` does. [`plan`](super::plan()) runs all
//! steps for every collet.

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

/// The search for the fastest plan with a guide bush, for one collet and the first reach of the cross tools. It is
/// ready for its first round.
pub struct Steps<'a> {
    ground: &'a Ground<'a>,
    looker: &'a Looker<'a>,
    builder: &'a Builder<'a>,
}

/// A draft of a plan: its stops and grips.
#[derive(Debug, Clone)]
pub struct Stops(pub(super) Draft);

/// Sets up the search for a rig and passes it to `work`. None: the shaft cannot be cut.
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
    /// Lower bound on the seconds of any plan that depend on its stops.
    pub fn least_s(&self) -> f64 {
        self.builder.least().s
    }

    /// Builds the network of all plans within a share of the least time, and finds its best way by the linear program.
    /// None: the network has no way.
    ///
    /// # Errors
    /// [`Defect`] when the linear program fails, or when its optimum differs from the labels of the network: a fault of
    /// this program.
    pub fn best_within(&self, share: f64) -> Result<Option<Stops>, Defect> {
        let least_s = self.least_s();
        let net = self.builder.within(Price::seconds(least_s * (1.0 + share)));
        let way = best_way(&net, least_s * share.min(EQUALLY_FAST))?;
        Ok(way.map(|way| Stops(Draft::of(&way, self.looker))))
    }

    /// Moves these stops and grips for the largest margin by the linear program. It looks at states at most `apart_mm`
    /// apart.
    ///
    /// # Errors
    /// [`Defect`] when the linear program fails: a fault of this program.
    pub fn placed(&self, stops: &Stops, apart_mm: f64) -> Result<Stops, Defect> {
        place(self.ground, &lands(self.ground.rig), stops.0.clone(), apart_mm, f64::INFINITY).map(Stops)
    }

    /// States looked at so far, grip by grip: the state of the counter-spindle, and the turned length, mm.
    pub fn looked_at(&self) -> Vec<(Counter, f64)> {
        let state = |(grip, k)| (self.looker.counter(grip, k), self.looker.grid.at(k));
        self.looker.looked_at().into_iter().map(state).collect()
    }

    /// All states that are looked at when the speeds of such a plan are settled.
    pub fn settled(&self, stops: &Stops, apart_mm: f64) -> Vec<State> {
        self.ground.settle(&stops.0, apart_mm).looks.iter().map(|look| look.state).collect()
    }
}
