//! A centre that supports the front face.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The centre that supports the front face while the shaft is turned.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct OnCentre {
    /// Axial force with which it presses on the part, N.
    pub force_n: f64,
    /// Turned length at which it leaves, before the part-off.
    pub leaves_at_mm: f64,
}
