//! How surely inputs are known. A spread is a standard deviation as a share of the value.

use super::{Field, optional, required};

/// Share of sampled parts that a plan must hold in.
pub const CONFIDENCE: Field =
    required("confidence", "share of sampled parts in which the plan must stay within every limit", "", 0.5, 0.999);
/// Share of sampled parts below which a plan is at risk.
pub const CONFIDENCE_WARN: Field = optional(
    "confidence_warn",
    "share of sampled parts that stay within every limit below which a plan is at risk",
    "",
    0.0,
    0.999,
    0.9,
);
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

const fn support(path: &'static str, what: &'static str) -> Field {
    required(path, what, "", 0.0, 2.0)
}

/// Spread of the bush.
pub const SCATTER_BUSH: Field = support("scatter.bush", "spread of the stiffness of the guide bush, as a share");
/// Spread of the headstock.
pub const SCATTER_HEADSTOCK: Field =
    support("scatter.headstock", "spread of the stiffness of the headstock, as a share");
/// Spread of the counter-spindle.
pub const SCATTER_COUNTER_SPINDLE: Field =
    support("scatter.counter_spindle", "spread of the stiffness of the counter-spindle, as a share");
/// Spread of the centre.
pub const SCATTER_CENTRE: Field = support("scatter.centre", "spread of the stiffness of the centre, as a share");
/// Spread of the sleeve.
pub const SCATTER_SLEEVE: Field =
    support("scatter.sleeve", "spread of the stiffness of the supports in the counter-spindle bore, as a share");
/// Spread of cutting force: the logarithms of ours over 49 outside values of kc, in 123 pairs (`tests/data/kc_outside.csv`), have a standard
/// deviation of 0.185.
pub const SCATTER_KC: Field =
    optional("scatter.kc", "spread of the specific cutting force, as a share of its value", "", 0.0, 2.0, 0.18);
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
/// Spread of roughness.
pub const SCATTER_RA: Field = optional(
    "scatter.ra",
    "spread of the real roughness over the ideal one (cutting.ra_factor), as a share of its value",
    "",
    0.0,
    2.0,
    0.4,
);
/// Spread of the run-out of collets.
pub const SCATTER_RUN_OUT: Field = optional(
    "scatter.run_out",
    "spread of the run-out of the counter-spindle's collets, as a share",
    "",
    0.0,
    2.0,
    0.3,
);
/// Spread of the bar. Without a value, it is even over the bar's tolerance.
pub const SCATTER_BAR: Field = required("scatter.bar", "spread of the bar diameter", "mm", 0.0, 2.0);

/// Spread of the bush of a machine.
pub const MACHINE_SCATTER_BUSH: Field =
    support("machine.scatter.bush", "spread of the stiffness of the guide bush, as a share");
/// Spread of its headstock.
pub const MACHINE_SCATTER_HEADSTOCK: Field =
    support("machine.scatter.headstock", "spread of the stiffness of the headstock, as a share");
/// Spread of its counter-spindle.
pub const MACHINE_SCATTER_COUNTER_SPINDLE: Field =
    support("machine.scatter.counter_spindle", "spread of the stiffness of the counter-spindle, as a share");
/// Spread of its centre.
pub const MACHINE_SCATTER_CENTRE: Field =
    support("machine.scatter.centre", "spread of the stiffness of the centre, as a share");
/// Spread of its sleeve.
pub const MACHINE_SCATTER_SLEEVE: Field = support(
    "machine.scatter.sleeve",
    "spread of the stiffness of the supports in the counter-spindle bore, as a share",
);
/// Spread of the damping on a machine.
pub const MACHINE_SCATTER_DAMPING: Field =
    support("machine.scatter.damping", "spread of the damping ratio, as a share");
/// Spread of the run-out of its collets.
pub const MACHINE_SCATTER_RUN_OUT: Field =
    support("machine.scatter.run_out", "spread of the run-out of the counter-spindle's collets, as a share");
/// Spread of the cutting force of a material.
pub const MATERIAL_SCATTER_KC: Field =
    support("shaft.material.scatter.kc", "spread of the specific cutting force, as a share");
/// Spread of its modulus.
pub const MATERIAL_SCATTER_E: Field =
    required("shaft.material.scatter.e", "spread of Young's modulus, as a share", "", 0.0, 0.5);
/// Spread of the bow of shafts from a bar.
pub const BAR_SCATTER_STRAIGHTNESS: Field =
    support("shop.bars.scatter.straightness", "spread of the bow of shafts from this bar, as a share");
/// Spread of its diameter.
pub const BAR_SCATTER_BAR: Field =
    required("shop.bars.scatter.bar", "spread of the diameter of this bar", "mm", 0.0, 2.0);
