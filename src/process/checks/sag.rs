//! `sag`: self-weight deflection over the unsupported span.

use super::{Check, Finding};

/// The check.
pub const CHECK: Check = Check {
    name: "sag",
    find: |v| Some(Finding::at_most("sag", "mm", v.answers.sag_mm, v.rig.job.limits.sag_mm, v.answers.sag_at_mm)),
};
