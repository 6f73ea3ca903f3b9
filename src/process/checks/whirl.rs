//! `whirl`: speed over critical speed.

use super::{Check, Finding};

/// Name of the check.
pub const NAME: &str = "whirl";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    find: |v| {
        let ratio = v.rpm / v.answers.critical_rpm;
        Some(Finding::at_most(NAME, "", ratio, v.rig.job.limits.whirl_ratio, v.answers.critical_at_mm))
    },
};
