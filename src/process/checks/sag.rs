//! `sag`: self-weight deflection of a span whose front is held. The droop of a free front counts where something must meet it
//! (`pick_up`, `bore`).

use super::{Check, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "sag";
const UNIT: &str = "mm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-sag"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-sag", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["sag"],
    find: Find::AtRest(|v| {
        v.state.counter.span_from_mm()?;
        let limit = v.rig.job.limits.sag_mm / v.rig.job.limits.reserve.of(NAME);
        Some(Finding::at_most(NAME, UNIT, v.answers.sag_mm, limit, v.answers.sag_at_mm))
    }),
};
