//! `whirl`: ratio of speed to critical speed.

use super::speed_law::{Growth, SpeedLaw};
use super::{Check, Find, Says};
use crate::lang;
use crate::say;

/// Name of the check.
const NAME: &str = "whirl";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-whirl"),
    unit: "",
    says: Says { found: |_, demand, limit| say!("finding-whirl", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["rpm", "speed_floor", "whirl_ratio", "sleeve"],
    find: Find::BySpeed(|rig, _, answers| {
        Some(SpeedLaw {
            growth: Growth::Ratio,
            limit: rig.job.limits.whirl_ratio / rig.job.limits.reserve.of(NAME),
            at_mm: answers.critical_at_mm,
        })
    }),
};
