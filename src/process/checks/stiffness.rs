//! `stiffness`: the least lateral stiffness of the unsupported span (of the tool's place with an opposed pair).

use super::{Check, Finding};

/// The check.
pub const CHECK: Check = Check {
    name: "stiffness",
    find: |v| {
        let limit = v.rig.job.limits.stiffness_min_n_per_um;
        let a = v.answers;
        Some(Finding::at_least("stiffness", "N/µm", a.stiffness_n_per_um, limit, a.stiffness_at_mm))
    },
};
