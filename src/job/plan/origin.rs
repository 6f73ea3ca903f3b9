//! Where a value comes from that the job does not give.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where a value comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Giver {
    /// The shop's file.
    Shop,
    /// The program: its usual value, or one that follows from other values.
    Default,
}

/// A value that the job does not give.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
pub struct Origin {
    /// Path of the key in the job, such as `limits.whip`.
    pub key: String,
    /// The value with its unit.
    pub value: String,
    /// Where it comes from.
    pub from: Giver,
    /// Line in the shop's file.
    pub line: Option<usize>,
}
