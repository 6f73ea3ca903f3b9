//! The quantities of a readings file, for `fit`.

use super::{Field, SHAFT_LENGTH_MAX_MM, optional, required};

/// Most set-ups of a file.
pub const SET_UPS_MAX: usize = 100;
/// Most dial readings of a set-up.
pub const READINGS_MAX: usize = 200;

/// Diameter of the measured bar.
pub const DIAMETER: Field = required("readings.diameter", "mm", 0.1, 120.0);
/// Front end of the bar.
pub const FRONT: Field = required("readings.set_ups.front", "mm", 1.0, SHAFT_LENGTH_MAX_MM);
/// Place of the headstock.
pub const HEADSTOCK: Field = required("readings.set_ups.headstock", "mm", 1.0, 5000.0);
/// Place of the counter-spindle.
pub const GRIP: Field = required("readings.set_ups.grip", "mm", 0.5, 6000.0);
/// First natural frequency.
pub const FREQUENCY: Field = required("readings.set_ups.frequency", "Hz", 0.5, 20_000.0);
/// Load on the bar.
pub const LOAD: Field = required("readings.set_ups.dial.load", "N", 0.1, 20_000.0);
/// Place of the load.
pub const AT: Field = required("readings.set_ups.dial.at", "mm", -5000.0, SHAFT_LENGTH_MAX_MM);
/// Place of the dial indicator.
pub const READ_AT: Field = required("readings.set_ups.dial.read_at", "mm", -5000.0, SHAFT_LENGTH_MAX_MM);
/// What the dial shows.
pub const DEFLECTION: Field = required("readings.set_ups.dial.deflection", "µm", -20_000.0, 20_000.0);
/// Error of the dial.
pub const DIAL_ERROR: Field = optional("readings.errors.dial", "µm", 0.01, 1000.0, 1.0);
/// Error of the load.
pub const LOAD_ERROR: Field = optional("readings.errors.load", "", 0.0, 0.5, 0.02);
/// Error of a frequency.
pub const TAP_ERROR: Field = optional("readings.errors.tap", "", 0.0001, 0.5, 0.01);
