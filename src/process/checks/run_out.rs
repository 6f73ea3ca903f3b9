//! `run_out`: a collet that runs out moves its grip off the axis, and the surface cut meanwhile gets a run-out against the shaft's axis.
//!
//! The grip's axis is off by half of the reading. It turns with the spindle, so the bar at the tool is off the axis of the machine by a
//! fixed part of this in the frame that turns with it. The tool cuts round about the axis of the machine. When the part is released, this
//! surface is off the axis of the shaft between grip and bush by the same amount. Derived here.

use super::super::segments::Work;
use super::{Check, Find, Finding, Says};
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "run_out";
const UNIT: &str = "mm";

/// The check. It applies where the section in cut and the collet both have a run-out.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-run-out"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-run-out", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["collet_run_out", "sections.run_out"],
    find: Find::AtRest(|v| {
        let collet_mm = v.rig.collet?.run_out_mm?;
        let limit = v.rig.job.shaft.sections.get(v.segment.section)?.run_out_mm? / v.rig.job.limits.reserve.of(NAME);
        if v.state.counter.grip_mm().is_none() || matches!(v.segment.work, Work::PartOff | Work::AsDrawn) {
            return None;
        }
        // Twice the eccentricity: the part of half of the reading that arrives at the tool.
        let demand = collet_mm * v.answers.tool_follows.abs();
        Some(Finding::at_most(NAME, UNIT, demand, limit, v.state.turned_mm))
    }),
};
