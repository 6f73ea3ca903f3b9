//! The timeline of a plan, its tools and its order, as plain data.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// One part after the other: what both spindles do from the start of a part to the start of the next, in the steady run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Cycle {
    /// Time from part to part, the bar change spread over the parts of a bar, s.
    pub steady_s: f64,
    /// Time of one part alone, from its first cut to unloading, s.
    pub alone_s: f64,
    /// How long the headstock, and the counter-spindle, are busy with a part, s.
    pub headstock_s: f64,
    pub counter_spindle_s: f64,
    /// Work on the rear end and unloading that the next part's free stage hides, s a part.
    pub hidden_s: f64,
    /// Waiting of the headstock for the counter-spindle, s a part.
    pub wait_s: f64,
    /// Time the counter-spindle is ready before it is needed, s a part.
    pub spare_s: f64,
    pub tool_changes: usize,
    pub tool_changes_s: f64,
    pub unload_s: f64,
    /// Share of the bar change, s a part.
    pub bar_change_s: f64,
    /// Whether work on the rear end and the next part overlap, and why not: `aside`, `in_line`, `no_work`.
    pub overlap: String,
    /// In order of their start; those of the counter-spindle alone belong to the part before.
    pub operations: Vec<Operation>,
    /// What to shorten first: what lies on the critical path, longest first.
    pub critical: Vec<Critical>,
}

/// A bar of the timeline.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Operation {
    /// `headstock`, `both`, `counter_spindle`.
    pub side: String,
    /// `turn`, `plunge`, `thread`, `whirl`, `feature`, `tool_change`, `hand_over`, `regrip`, `part_off`, `back_work`,
    /// `unload`.
    pub work: String,
    pub text: String,
    /// None for what the counter-spindle does alone.
    pub stage: Option<usize>,
    pub from_s: f64,
    pub to_s: f64,
    /// Whether a second more of it makes every part a second later.
    pub critical: bool,
}

/// Something on the critical path.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Critical {
    pub what: String,
    pub seconds: f64,
    /// Of the time from part to part.
    pub share: f64,
}

/// Tools and places.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Tooling {
    pub fits: bool,
    /// Whether a pair is asked for on a machine whose turning tools all stand on one side.
    pub no_pair: bool,
    pub places: Vec<ToolRoom>,
    /// Tools the turret takes, and how many of them are set.
    pub turret_tools: Option<usize>,
    pub turret_used: Option<usize>,
}

/// A kind of place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ToolRoom {
    /// `turning`, `cross_driven`, `front_fixed`, `front_driven`, `back_fixed`, `back_driven`.
    pub place: String,
    pub tools: Vec<String>,
    pub places: usize,
    /// Tools that stand at driven places of the same end, or on the turret.
    pub elsewhere: usize,
    /// Tools without a place.
    pub short: usize,
    /// Places left over.
    pub left: usize,
}

/// An order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct OrderQuote {
    pub pieces: usize,
    pub bars: usize,
    pub set_up_h: f64,
    /// Running time, stops that are not in the plan included, h.
    pub run_h: f64,
    /// Set-up and run in shifts.
    pub shifts: f64,
    pub pieces_per_shift: f64,
    /// Set-up, machine and whole bars; none without rates.
    pub cost: Option<f64>,
    pub cost_per_piece: Option<f64>,
    pub currency: Option<String>,
    /// The same by quantity.
    pub quantities: Vec<Quantity>,
    /// What a change of one time does.
    pub sensitivity: Vec<Sensitivity>,
}

/// An order of another size.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Quantity {
    pub pieces: usize,
    pub bars: usize,
    pub shifts: f64,
    pub cost_per_piece: Option<f64>,
}

/// What a change of one time does to the time from part to part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Sensitivity {
    /// `cutting_speed`, `hand_over`, `regrip`, `tool_change`.
    pub what: String,
    /// Factor on the speed, or on the time.
    pub factor: f64,
    pub steady_s: f64,
    /// Against the plan, s a part.
    pub change_s: f64,
}
