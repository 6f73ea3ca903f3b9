//! Which tool takes which cut.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A travel of a segment.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct TravelCut {
    /// Tools, the leading one first.
    pub tools: Vec<String>,
    /// Depth of cut of each tool, mm; empty for a plunge.
    pub depths_mm: Vec<f64>,
    /// Feed, mm/rev.
    pub feed_mm: f64,
    /// Speed, rev/min.
    pub rpm: f64,
}

/// A tool with the cuts that it takes in the plan.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ToolUse {
    /// Name.
    pub tool: String,
    /// Where it stands. None: the list does not say.
    pub station: Option<String>,
    /// Its insert. None: the list does not say.
    pub insert: Option<String>,
    /// Nose radius, mm. None: it is not used for forces.
    pub nose_radius_mm: Option<f64>,
    /// Whether it is in the tool list.
    pub listed: bool,
    /// Sections that it cuts, from 1.
    pub sections: Vec<usize>,
    /// Smallest and largest depth of cut, mm. None: it plunges.
    pub depth_mm: Option<[f64; 2]>,
    /// Smallest and largest feed, mm/rev.
    pub feed_mm: [f64; 2],
    /// Lowest and highest speed, rev/min.
    pub rpm: [f64; 2],
}

/// The passes of a single-point thread.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Threading {
    /// Number of passes, those of all starts.
    pub passes: usize,
    /// Speed, rev/min.
    pub rpm: f64,
    /// Feed of a pass, mm/rev: the pitch; of a thread with several starts the lead.
    pub pitch_mm: f64,
}
