//! `cut`: change of the diameter along a travel because the bar deflects, compared with a share of the tolerance.
//!
//! Without a bush the flexibilities along the piece give the change (`along`). With a bush only a pull-back changes the overhang, so
//! the demand is a value of the segment (see `segments`). A constant deflection does not count, because the machine operator
//! corrects it with a tool offset. Threads, grooves and part-off are not checked.

use super::super::rig::Rig;
use super::super::segments::{Segment, Work};
use super::{Check, Find, Finding, Says};
use crate::job::Holding;
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "cut";
const UNIT: &str = "mm";

fn limit_mm(rig: &Rig<'_>, segment: &Segment) -> Option<f64> {
    let section = rig.job.shaft.sections.get(segment.section)?;
    Some(rig.job.limits.tolerance_share * section.tolerance.width_mm() / rig.job.limits.reserve.of(NAME))
}

/// The finding for a piece turned without a bush. `flexibilities` are the flexibilities at the tool along the piece, mm/N.
/// The demand is twice the finishing force times their range, because a deflection counts twice on the diameter (derived here).
pub fn along(rig: &Rig<'_>, segment: &Segment, flexibilities: &[f64]) -> Option<Finding> {
    if rig.job.holding == Holding::Bush || segment.work != Work::Turn {
        return None;
    }
    let force = segment.finishing()?.net_radial_n;
    let most = flexibilities.iter().copied().fold(0.0, f64::max);
    let least = flexibilities.iter().copied().fold(most, f64::min);
    Some(Finding::at_most(NAME, UNIT, 2.0 * force * (most - least), limit_mm(rig, segment)?, segment.from_mm))
}

/// The check with a bush.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-cut"),
    unit: UNIT,
    says: Says { found: |_, demand, limit| say!("finding-cut", demand = demand, limit = limit), ..Says::AS_NAMED },
    lifted_by: &["tolerance_share", "tools"],
    find: Find::AtRest(|v| {
        if v.segment.work != Work::Turn || v.rig.job.holding == Holding::NoBush {
            return None;
        }
        Some(Finding::at_most(NAME, UNIT, v.segment.change_mm, limit_mm(v.rig, v.segment)?, v.segment.from_mm))
    }),
};
