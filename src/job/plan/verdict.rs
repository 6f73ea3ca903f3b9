//! The verdict.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Whether the job is feasible.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// There is a plan, and it passes the proof.
    Feasible,
    /// There is a plan, and it passes the proof, but with sampled inputs too few parts meet all checks.
    AtRisk,
    /// There is no plan. `shortfall` says why.
    Infeasible,
}

impl Verdict {
    /// Whether there is a plan.
    pub fn has_plan(self) -> bool {
        self != Verdict::Infeasible
    }
}
