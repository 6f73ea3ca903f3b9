//! What a plan says of scattered inputs.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Result of a plan with scattered inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterReport {
    /// Number of sampled parts.
    pub samples: usize,
    /// Seed of the samples.
    pub seed: u64,
    /// Share of the sampled parts that meet all checks.
    pub good_share: f64,
    /// The stages, one by one.
    pub stages: Vec<ScatterStage>,
}

/// Result of a stage with scattered inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterStage {
    /// Number of the stage, from 1.
    pub number: usize,
    /// Share of the parts that fail a check in this stage.
    pub broken_share: f64,
    /// Share of the parts that fail each check, the largest first. Checks that all parts meet are left out.
    pub broken: Vec<Broken>,
    /// Turned length up to which 99 of 100 parts meet all checks.
    pub holds_to_mm: f64,
}

/// Share of the parts that fail a check.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Broken {
    /// Name of the check.
    pub check: String,
    /// Share of parts that break it.
    pub share: f64,
}
