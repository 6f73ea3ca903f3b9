//! Readings taken on a machine, and the stiffnesses of its supports fitted to them, as plain data.

use super::{Machine, Material};
use crate::diag::Place;
use serde::Serialize;

/// A support whose stiffness can be fitted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Support {
    /// The guide bush.
    Bush,
    /// The headstock's collet.
    Headstock,
    /// The counter-spindle's collet.
    CounterSpindle,
}

impl Support {
    /// All of them, in the order of the machine file.
    pub const ALL: [Support; 3] = [Support::Bush, Support::Headstock, Support::CounterSpindle];

    /// Its key in a machine file.
    pub fn key(self) -> &'static str {
        match self {
            Support::Bush => "bush",
            Support::Headstock => "headstock",
            Support::CounterSpindle => "counter_spindle",
        }
    }

    /// The name in a sentence.
    pub fn name(self) -> &'static str {
        match self {
            Support::Bush => "bush",
            Support::Headstock => "headstock",
            Support::CounterSpindle => "counter-spindle",
        }
    }
}

/// All readings of a file.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Readings {
    /// The machine. The fit starts from its stiffnesses. Supports that are not fitted keep them.
    pub machine: Machine,
    /// Material of the measured bar.
    pub material: Material,
    /// Its diameter, mm.
    pub diameter_mm: f64,
    /// The supports to be fitted.
    pub fit: Vec<Support>,
    /// Errors of the readings.
    pub errors: Errors,
    /// The set-ups, at least one.
    pub set_ups: Vec<SetUp>,
    /// Where the set-ups are in the file.
    pub place: Option<Place>,
}

/// Errors of the readings (standard deviations).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Errors {
    /// Error of a dial reading, µm.
    pub dial_um: f64,
    /// Error of a load, as a share.
    pub load_share: f64,
    /// Error of a frequency, as a share.
    pub tap_share: f64,
}

/// The bar held in one way. Places are distances from the bush face, or without a bush from the nose of the headstock's
/// collet. They are positive towards the counter-spindle.
#[derive(Debug, Clone, PartialEq)]
pub struct SetUp {
    /// Name, for messages.
    pub name: String,
    /// Distance from the bush face back to the nose of the headstock's collet, mm. None if the bar is held without the
    /// bush.
    pub headstock_mm: Option<f64>,
    /// Front end of the bar, mm.
    pub front_mm: f64,
    /// The grip of the counter-spindle, if it holds the bar.
    pub grip: Option<Grip>,
    /// Dial readings.
    pub dial: Vec<Dial>,
    /// First natural frequency, Hz.
    pub frequency_hz: Option<f64>,
}

/// The counter-spindle's collet closed on the bar.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grip {
    /// Place of its nose, mm.
    pub nose_mm: f64,
    /// Length it holds, mm.
    pub hold_mm: f64,
}

/// One dial reading: the change that a load causes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dial {
    /// Load, N.
    pub load_n: f64,
    /// Where the load acts, mm.
    pub at_mm: f64,
    /// Where the dial is, mm.
    pub read_at_mm: f64,
    /// Deflection in the direction of the load, µm.
    pub deflection_um: f64,
}

/// Stiffnesses fitted to readings.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Fitted {
    /// Name of the machine.
    pub machine: String,
    /// The supports that were fitted.
    pub supports: Vec<FittedSupport>,
    /// Every reading and what the fitted machine gives for it.
    pub readings: Vec<Residual>,
    /// Root mean square of the residuals, each as a share of its error: about 1 where model and errors are right.
    pub misfit: f64,
    /// Readings beyond the number of fitted stiffnesses.
    pub spare_readings: usize,
    /// Largest over smallest singular value of the readings' sensitivities: 1 is best.
    pub condition: f64,
    /// What to think of before the values are used.
    pub notes: Vec<String>,
}

/// One fitted support.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct FittedSupport {
    /// Which.
    pub support: Support,
    /// Fitted stiffness, N/µm.
    pub stiffness_n_per_um: f64,
    /// Standard error, as a share (of the logarithm of the stiffness).
    pub standard_error: f64,
    /// Range that holds the stiffness in 95 of 100 cases, N/µm.
    pub likely_n_per_um: [f64; 2],
    /// What the machine file says, N/µm.
    pub before_n_per_um: f64,
}

/// One reading against the fit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Residual {
    /// Name of the set-up.
    pub set_up: String,
    /// What was read, in words.
    pub reading: String,
    /// `µm` or `Hz`.
    pub unit: &'static str,
    /// As measured.
    pub measured: f64,
    /// As the fitted machine gives it.
    pub fitted: f64,
    /// Difference as a share of the reading's error.
    pub off: f64,
}
