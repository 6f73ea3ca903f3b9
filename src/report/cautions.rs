//! The cautions as they are printed: those of the plan, and none is printed without.

use super::words;
use crate::job::plan::{self, Plan};

/// The cautions to print: those stored in the plan, or new ones if it has none, so that no plan is printed without
/// cautions.
pub(super) fn to_print(plan: &Plan) -> Vec<String> {
    let new = if plan.cautions.is_empty() { plan::cautions(plan) } else { Vec::new() };
    plan.cautions.iter().chain(&new).map(|c| words::plain(c)).collect()
}
