//! What turning asks of the headstock.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The most that turning, grooves and part-off ask of the headstock. Threading passes are not in it.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Drive {
    /// Power of the motor at the speeds of the plan, kW.
    pub power_kw: f64,
    /// The section that needs it, from 1. None: part-off.
    pub power_section: Option<usize>,
    /// Torque at the spindle, N·m.
    pub torque_nm: f64,
    /// The section that needs it, from 1. None: part-off.
    pub torque_section: Option<usize>,
    /// Feed force along the axis, N.
    pub feed_force_n: f64,
    /// The section that needs it, from 1. None: part-off.
    pub feed_force_section: Option<usize>,
}
