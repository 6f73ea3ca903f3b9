//! Torsion of round bars, and how a torque between two springs divides.
//!
//! Source: `G Ip/L` and `Ip = π d⁴/32`, any text on strength of materials (from memory).

use std::f64::consts::PI;

/// Polar second moment of area of a solid circle, `π d⁴/32`, mm⁴.
pub fn polar_mm4(diameter_mm: f64) -> f64 {
    PI * diameter_mm.powi(4) / 32.0
}

/// Part of a torque that goes to one of two springs that hold the same place, from their twists under a unit torque.
/// Statics: both twist by the same angle, so the stiffer one carries more.
///
/// ```
/// // One is three times as soft as the other.
/// assert_eq!(spanhold::mechanics::torsion::share_of(3.0, 1.0), 0.25);
/// ```
pub fn share_of(own_twist: f64, other_twist: f64) -> f64 {
    other_twist / (own_twist + other_twist)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A bar of 10 mm: `Ip` = 981.75 mm⁴.
    #[test]
    fn a_bar_twists_as_on_paper() {
        assert!((polar_mm4(10.0) - 981.747).abs() < 1e-3);
    }
}
