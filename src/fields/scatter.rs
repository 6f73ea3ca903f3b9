//! How surely inputs are known. A spread is a standard deviation as a share of the value.

use super::{Field, optional, required};

/// Share of sampled parts that a plan must hold in.
pub const CONFIDENCE: Field = required("confidence", "", 0.5, 0.999);
/// Share of sampled parts below which a plan is at risk.
pub const CONFIDENCE_WARN: Field = optional("confidence_warn", "", 0.0, 0.999, 0.9);
/// Sampled parts.
pub const SCATTER_SAMPLES: Field = optional("scatter.samples", "", 10.0, 100_000.0, 400.0);
/// Seed.
pub const SCATTER_SEED: Field = optional("scatter.seed", "", 0.0, 4_294_967_295.0, 1.0);
/// Spread of straightness.
pub const SCATTER_STRAIGHTNESS: Field = optional("scatter.straightness", "", 0.0, 2.0, 0.3);
/// Spread of supports.
pub const SCATTER_SUPPORTS: Field = optional("scatter.supports", "", 0.0, 2.0, 0.25);

const fn support(path: &'static str) -> Field {
    required(path, "", 0.0, 2.0)
}

/// Spread of the bush.
pub const SCATTER_BUSH: Field = support("scatter.bush");
/// Spread of the headstock.
pub const SCATTER_HEADSTOCK: Field = support("scatter.headstock");
/// Spread of the counter-spindle.
pub const SCATTER_COUNTER_SPINDLE: Field = support("scatter.counter_spindle");
/// Spread of the centre.
pub const SCATTER_CENTRE: Field = support("scatter.centre");
/// Spread of the sleeve.
pub const SCATTER_SLEEVE: Field = support("scatter.sleeve");
/// Spread of cutting force: the logarithms of ours over 49 outside values of kc, in 123 pairs (`tests/data/kc_outside.csv`), have a standard
/// deviation of 0.185.
pub const SCATTER_KC: Field = optional("scatter.kc", "", 0.0, 2.0, 0.18);
/// Spread of the passive and the feed force against the main force.
pub const SCATTER_PASSIVE: Field = optional("scatter.passive", "", 0.0, 2.0, 0.25);
/// Spread of the modulus.
pub const SCATTER_E: Field = optional("scatter.e", "", 0.0, 0.5, 0.02);
/// Spread of damping.
pub const SCATTER_DAMPING: Field = optional("scatter.damping", "", 0.0, 2.0, 0.3);
/// Spread of roughness.
pub const SCATTER_RA: Field = optional("scatter.ra", "", 0.0, 2.0, 0.4);
/// Spread of the run-out of collets.
pub const SCATTER_RUN_OUT: Field = optional("scatter.run_out", "", 0.0, 2.0, 0.3);
/// Spread of the bar. Without a value, it is even over the bar's tolerance.
pub const SCATTER_BAR: Field = required("scatter.bar", "mm", 0.0, 2.0);

/// Spread of the bush of a machine.
pub const MACHINE_SCATTER_BUSH: Field = support("machine.scatter.bush");
/// Spread of its headstock.
pub const MACHINE_SCATTER_HEADSTOCK: Field = support("machine.scatter.headstock");
/// Spread of its counter-spindle.
pub const MACHINE_SCATTER_COUNTER_SPINDLE: Field = support("machine.scatter.counter_spindle");
/// Spread of its centre.
pub const MACHINE_SCATTER_CENTRE: Field = support("machine.scatter.centre");
/// Spread of its sleeve.
pub const MACHINE_SCATTER_SLEEVE: Field = support("machine.scatter.sleeve");
/// Spread of the damping on a machine.
pub const MACHINE_SCATTER_DAMPING: Field = support("machine.scatter.damping");
/// Spread of the run-out of its collets.
pub const MACHINE_SCATTER_RUN_OUT: Field = support("machine.scatter.run_out");
/// Spread of the cutting force of a material.
pub const MATERIAL_SCATTER_KC: Field = support("shaft.material.scatter.kc");
/// Spread of its modulus.
pub const MATERIAL_SCATTER_E: Field = required("shaft.material.scatter.e", "", 0.0, 0.5);
/// Spread of the bow of shafts from a bar.
pub const BAR_SCATTER_STRAIGHTNESS: Field = support("shop.bars.scatter.straightness");
/// Spread of its diameter.
pub const BAR_SCATTER_BAR: Field = required("shop.bars.scatter.bar", "mm", 0.0, 2.0);
