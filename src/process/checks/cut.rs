//! `cut`: how far the diameter changes along a travel because the bar gives way, against its share of the tolerance.
//!
//! Next to a bush only a pull-back changes what stands out, so the demand is the segment's own (see `segments`). A
//! constant offset is set out at the machine. Threads, grooves and part-off are not checked.

use super::super::segments::Work;
use super::{Check, Finding};

/// Name of the check.
pub const NAME: &str = "cut";

/// The check, next to a bush.
pub const CHECK: Check = Check {
    name: NAME,
    find: |v| {
        if v.segment.work != Work::Turn {
            return None;
        }
        let section = v.rig.job.shaft.sections.get(v.segment.section)?;
        let limit = v.rig.job.limits.tolerance_share * section.tolerance.width_mm();
        Some(Finding::at_most(NAME, "mm", v.segment.change_mm, limit, v.segment.from_mm))
    },
};
