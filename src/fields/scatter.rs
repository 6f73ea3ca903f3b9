//! How inputs scatter, for `plan --scatter`.

use super::{Field, optional, required};

/// Sampled parts.
pub const SCATTER_SAMPLES: Field = optional("scatter.samples", "number of sampled parts", "", 10.0, 100_000.0, 400.0);
/// Seed.
pub const SCATTER_SEED: Field =
    optional("scatter.seed", "start number of the random samples", "", 0.0, 4_294_967_295.0, 1.0);
/// Spread of straightness.
pub const SCATTER_STRAIGHTNESS: Field =
    optional("scatter.straightness", "spread of the bow, as a share of its value", "", 0.0, 2.0, 0.3);
/// Spread of supports.
pub const SCATTER_SUPPORTS: Field = optional(
    "scatter.supports",
    "spread of the stiffness of each support, as a share of its value",
    "",
    0.0,
    2.0,
    0.25,
);
/// Spread of cutting force.
pub const SCATTER_KC: Field =
    optional("scatter.kc", "spread of the specific cutting force, as a share of its value", "", 0.0, 2.0, 0.15);
/// Spread of the passive and the feed force against the main force.
pub const SCATTER_PASSIVE: Field = optional(
    "scatter.passive",
    "spread of the passive and the feed force beside that of the main force, as a share of their value",
    "",
    0.0,
    2.0,
    0.25,
);
/// Spread of the modulus.
pub const SCATTER_E: Field =
    optional("scatter.e", "spread of Young's modulus, as a share of its value", "", 0.0, 0.5, 0.02);
/// Spread of damping.
pub const SCATTER_DAMPING: Field =
    optional("scatter.damping", "spread of the damping ratio, as a share of its value", "", 0.0, 2.0, 0.3);
/// Spread of the bar. Without a value, it is even over the bar's tolerance.
pub const SCATTER_BAR: Field = required("scatter.bar", "spread of the bar diameter", "mm", 0.0, 2.0);
