//! Why there is no plan, and what would help.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Separates the names of checks and rules that stop the bar together: `counter_spindle_travel and stroke`.
pub const AND: &str = " and ";

/// Why there is no plan, and what would help.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Shortfall {
    /// The largest turned length that can be reached, mm.
    pub farthest_mm: f64,
    /// Cause: name of a check or of a rule (`counter_spindle_travel`, `bore_depth`, `collet`, `stroke`, `interrupt`, …).
    pub blocked_by: String,
    /// Names of further causes at the same place. The plan gets farther only if all of them are removed.
    #[serde(default)]
    pub blocked_with: Vec<String>,
    /// The reason, in one sentence.
    pub text: String,
    /// Single changes that make the job feasible, the cheapest first. Each entry is enough.
    pub changes: Vec<Change>,
    /// Sets of changes that make the job feasible, the cheapest first. Each set is enough, and no change of it can be left out.
    #[serde(default)]
    pub sets: Vec<ChangeSet>,
    /// Limits of the house that alone stand in the way. A house may change them after a trial. They are no advice.
    #[serde(default)]
    pub after_trial: Vec<Change>,
    /// Where no set is known: what forbids it, or where the search ended.
    #[serde(default)]
    pub tried: Option<String>,
}

impl Shortfall {
    /// What stops the bar: `stroke`, or `counter_spindle_travel and stroke`.
    pub fn blocked_names(&self) -> String {
        self.names().collect::<Vec<_>>().join(AND)
    }

    /// Names of all that must be lifted, usually only one.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        std::iter::once(&self.blocked_by).chain(&self.blocked_with).map(String::as_str)
    }
}

/// A change that makes the job feasible.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Change {
    /// Name of the change.
    pub change: String,
    /// Value now.
    pub from: serde_json::Value,
    /// Value that makes it feasible.
    pub to: serde_json::Value,
    /// Extra time per part compared with the fastest of the changes, s.
    pub extra_time_s: Option<f64>,
    /// The change in words.
    pub text: String,
    /// What to write into the files for it.
    #[serde(default)]
    pub edits: Vec<Edit>,
}

/// Changes that together make the job feasible.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ChangeSet {
    /// Sum of the prices of its changes: a rank of what a shop does sooner, no money.
    pub price: f64,
    /// The changes; all of them are needed.
    pub changes: Vec<Change>,
    /// Time from part to part with it, work in a second set-up included, s.
    pub time_s: f64,
    /// Extra time per part compared with the fastest of the sets told, s.
    pub extra_time_s: f64,
    /// Share of sampled parts in which the plan with it holds.
    pub good_share: Option<f64>,
    /// The set in words.
    pub text: String,
}

/// A change of a value in a file.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[schemars(rename = "FileEdit")]
#[allow(missing_docs)]
pub struct Edit {
    /// `job` or `machine`. Where the job contains its machine, a place in the machine is below `machine` of the job.
    pub file: String,
    /// Place in the file: `shaft.sections[2].grip`, items counted from 0; `[+]` adds an item to a list.
    pub at: String,
    /// The new value, as written in the file; empty: the entry is removed.
    pub value: String,
    /// Number of the item of the same list with which this one is exchanged; then the value is empty.
    #[serde(default)]
    pub with: Option<usize>,
}
