//! The timeline of a plan, its tools and its order, as plain data.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What both spindles do from the start of a part to the start of the next part, in continuous work.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Cycle {
    /// Cycle time with the share of the bar change, s.
    pub steady_s: f64,
    /// Time of one part from its first cut to unloading, s.
    pub alone_s: f64,
    /// Busy time of the headstock per part, s.
    pub headstock_s: f64,
    /// Busy time of the counter-spindle per part, s.
    pub counter_spindle_s: f64,
    /// Time per part that the counter-spindle works while the headstock turns the next part, s.
    pub hidden_s: f64,
    /// Time per part that the headstock waits for the counter-spindle, s.
    pub wait_s: f64,
    /// Idle time of the counter-spindle per part, s.
    pub spare_s: f64,
    /// Number of tool changes.
    pub tool_changes: usize,
    /// Time of the tool changes.
    pub tool_changes_s: f64,
    /// Time of unloading.
    pub unload_s: f64,
    /// Share of the bar change per part, s.
    pub bar_change_s: f64,
    /// Rear end work at the same time as the next part: `aside` (yes), `in_line` (no) or `no_work`.
    pub overlap: String,
    /// Operations by start time. Operations of the counter-spindle alone belong to the previous part.
    pub operations: Vec<Operation>,
    /// Operations on the critical path, the longest first. Shorten these first.
    pub critical: Vec<Critical>,
}

/// An operation on the timeline.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Operation {
    /// `headstock`, `both` or `counter_spindle`.
    pub side: String,
    /// `turn`, `plunge`, `thread`, `whirl`, `feature`, `tool_change`, `hand_over`, `regrip`, `part_off`, `back_work`,
    /// `unload`.
    pub work: String,
    /// The operation in words.
    pub text: String,
    /// The stage. None: the counter-spindle works alone.
    pub stage: Option<usize>,
    /// Start.
    pub from_s: f64,
    /// End.
    pub to_s: f64,
    /// Whether one second more here makes the cycle time one second longer.
    pub critical: bool,
}

/// An operation on the critical path.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Critical {
    /// What it is.
    pub what: String,
    /// Its time, s.
    pub seconds: f64,
    /// Share of the cycle time.
    pub share: f64,
}

/// Tools and tool places.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Tooling {
    /// Whether all tools have a place.
    pub fits: bool,
    /// The job needs an opposed pair, but all turning tools of the machine stand on one side.
    pub no_pair: bool,
    /// Kinds of places, one by one.
    pub places: Vec<ToolRoom>,
    /// Number of tools that the turret holds.
    pub turret_tools: Option<usize>,
    /// Number of tools on the turret that the job needs.
    pub turret_used: Option<usize>,
}

/// A kind of tool place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ToolRoom {
    /// `turning`, `cross_driven`, `front_fixed`, `front_driven`, `back_fixed`, `back_driven` or `whirling`.
    pub place: String,
    /// Tools that need such a place.
    pub tools: Vec<String>,
    /// Number of places.
    pub places: usize,
    /// Tools that stand at driven places of the same end or on the turret.
    pub elsewhere: usize,
    /// Tools without a place.
    pub short: usize,
    /// Free places.
    pub left: usize,
}

/// An order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct OrderQuote {
    /// Number of pieces.
    pub pieces: usize,
    /// Number of bars.
    pub bars: usize,
    /// Set-up time, h.
    pub set_up_h: f64,
    /// Running time with an allowance for unplanned stops, h.
    pub run_h: f64,
    /// Set-up and running time in shifts.
    pub shifts: f64,
    /// Pieces in one shift.
    pub pieces_per_shift: f64,
    /// Cost of set-up, machine and whole bars. None: the job has no rates.
    pub cost: Option<f64>,
    /// Cost of one piece.
    pub cost_per_piece: Option<f64>,
    /// Currency of the rates.
    pub currency: Option<String>,
    /// The same for other quantities.
    pub quantities: Vec<Quantity>,
    /// Effect of a change of one time.
    pub sensitivity: Vec<Sensitivity>,
}

/// An order of another size.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Quantity {
    /// Number of pieces.
    pub pieces: usize,
    /// Number of bars.
    pub bars: usize,
    /// Set-up and run in shifts.
    pub shifts: f64,
    /// Cost of one piece; none without rates.
    pub cost_per_piece: Option<f64>,
}

/// Effect of a change of one time on the cycle time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Sensitivity {
    /// `cutting_speed`, `hand_over`, `regrip` or `tool_change`.
    pub what: String,
    /// Factor on the speed or on the time.
    pub factor: f64,
    /// Cycle time with the change.
    pub steady_s: f64,
    /// Change of the cycle time, s.
    pub change_s: f64,
}
