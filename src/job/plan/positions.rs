//! A plan as coordinates: each event of one part with where everything then stands, for the one who writes the program.

use schemars::JsonSchema;
use serde::Serialize;

/// The table of positions of a plan.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Positions {
    /// This is not a program, and what must be done to make one.
    pub caution: String,
    /// Zero points and directions of the positions, in words.
    pub directions: Vec<String>,
    /// Name of the shaft.
    pub job: String,
    /// Number of the drawing.
    pub drawing: Option<String>,
    /// Revision of the drawing.
    pub revision: Option<String>,
    /// Length of the shaft.
    pub length_mm: f64,
    /// Gap between tool and bush. Without a bush: gap between tool and collet.
    pub gap_mm: f64,
    /// The events of one part in order. Empty: there is no plan.
    pub rows: Vec<Position>,
}

/// An event, with where everything stands when it is done.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Position {
    /// From 1.
    pub row: usize,
    /// Number of the stage, from 1. None: after part-off.
    pub stage: Option<usize>,
    /// Who acts: `headstock`, `counter_spindle` or `tool`.
    pub actor: String,
    /// `stage_start`, `approach`, `turn`, `plunge`, `thread`, `whirl`, `run_out`, `feed_out`, `feed_back`, `feature`, `open`, `move`,
    /// `close`, `centre_in`, `centre_out`, `part_off`, `take_away`, `back_work`, `unload`.
    pub event: String,
    /// The event in words.
    pub what: String,
    /// Synchronisation point, from 1: the event begins when both sides have come to it. None: nothing is waited for.
    pub wait_point: Option<usize>,
    /// What must have happened at this point, in words. Empty: nothing is waited for.
    pub waits_for: String,
    /// When the event begins, from the start of the part, s. None: the timeline does not tell it.
    pub start_s: Option<f64>,
    /// Turned length: position of the tool on the part, from the front face. None: after part-off.
    pub turned_mm: Option<f64>,
    /// Diameter at which the tool stands. Two tools in one travel: that of the tool that follows. None: the tool is clear, or the plan
    /// does not tell it.
    pub diameter_mm: Option<f64>,
    /// Diameter of the leading one of two tools. None: one tool cuts.
    pub leading_diameter_mm: Option<f64>,
    /// How far the finishing tool of a tandem stands in front of the turned length. None: not cut by a tandem.
    pub lag_mm: Option<f64>,
    /// Position of the headstock's nose, backwards from the bush face; without a bush, from the tool. None: not known.
    pub headstock_mm: Option<f64>,
    /// Position of the counter-spindle's nose, forwards from the bush face; without a bush, from the end of the gap behind the tool.
    /// None: it holds nothing, or after part-off.
    pub counter_spindle_mm: Option<f64>,
    /// Speed of the headstock spindle, rev/min. None: the plan does not tell it.
    pub headstock_rpm: Option<f64>,
    /// Speed of the counter-spindle, rev/min: synchronous. None: it does not hold the part, or the plan does not tell the speed.
    pub counter_spindle_rpm: Option<f64>,
    /// Feed, mm/rev; of a pass of a thread its pitch, with several starts the lead. None: not cut at feed, or the plan does not tell it.
    pub feed_mm: Option<f64>,
    /// Tools with their stations, the leading one first. Empty: no tool acts, or the plan does not tell it.
    pub tool: String,
}
