//! Where the part goes at part-off.

use super::Plan;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Where the part goes at part-off.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct PartOff {
    /// `counter_spindle`: its last grip holds the part. `tray`: nothing holds the part, and it falls.
    pub into: String,
    /// Length up to which a part may fall. None: the part does not fall, or the machine has no counter-spindle and its file does not
    /// give a tray.
    #[serde(default)]
    pub max_length_mm: Option<f64>,
    /// Diameter up to which a part may fall. None: as of the length.
    #[serde(default)]
    pub max_diameter_mm: Option<f64>,
    /// Whether the machine file does not give these two, so that the default decides.
    #[serde(default)]
    pub by_default: bool,
}

impl PartOff {
    /// The counter-spindle holds the part.
    pub const COUNTER_SPINDLE: &str = "counter_spindle";
    /// The part falls.
    pub const TRAY: &str = "tray";

    /// The largest length and diameter of a part that may fall, mm. None: the part does not fall, or nothing limits what falls.
    pub fn falls_up_to_mm(&self) -> Option<(f64, f64)> {
        self.max_length_mm.zip(self.max_diameter_mm).filter(|_| self.into == PartOff::TRAY)
    }
}

impl Plan {
    /// Length and diameter up to which parts fall into the tray, if the part of this plan falls and the tray is known, mm.
    pub fn tray_mm(&self) -> Option<(f64, f64)> {
        self.part_off.as_ref()?.falls_up_to_mm()
    }
}
