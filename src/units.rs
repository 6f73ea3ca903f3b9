//! Conversions between the units people write and the units the mechanics computes in (mm, N, s, tonne).
//!
//! The mechanics works in the consistent system mm–N–s–t (tonne): a stiffness is N/mm, a density t/mm³, an angular
//! frequency rad/s. Each conversion has one name and is defined only here.

use std::f64::consts::PI;

/// Acceleration of free fall in mm/s²: 9.81 m/s², the rounding engineering tables use (standard value 9.80665).
pub const GRAVITY_MM_PER_S2: f64 = 9810.0;

/// An inch in mm. This and the next two are exact by definition: the international yard and pound of 1959, and the standard free fall of
/// 9.80665 m/s² (NIST SP 811, from memory).
pub const INCH_MM: f64 = 25.4;
/// A foot in m.
pub const FOOT_M: f64 = 0.3048;
/// A pound-force in N.
pub const POUND_FORCE_N: f64 = 4.448_221_615_260_5;

/// N/µm to N/mm.
pub fn n_per_mm(n_per_um: f64) -> f64 {
    n_per_um * 1000.0
}

/// N/mm to N/µm.
pub fn n_per_um(n_per_mm: f64) -> f64 {
    n_per_mm / 1000.0
}

/// GPa to N/mm².
pub fn n_per_mm2(gpa: f64) -> f64 {
    gpa * 1000.0
}

/// kg/m³ to t/mm³.
pub fn t_per_mm3(kg_per_m3: f64) -> f64 {
    kg_per_m3 * 1e-12
}

/// rev/min to rad/s.
pub fn rad_per_s(rpm: f64) -> f64 {
    rpm * PI / 30.0
}

/// rad/s to rev/min.
pub fn rpm(rad_per_s: f64) -> f64 {
    rad_per_s * 30.0 / PI
}

/// rad/s to Hz.
pub fn hz(rad_per_s: f64) -> f64 {
    rad_per_s / (2.0 * PI)
}

/// mm to µm.
pub fn um(mm: f64) -> f64 {
    mm * 1000.0
}

/// µm to mm.
pub fn mm(um: f64) -> f64 {
    um / 1000.0
}

/// Spindle speed in rev/min for a cutting speed in m/min at a diameter in mm: `n = 1000 vc / (π d)`. Derived here from
/// the definition of the cutting speed.
pub fn spindle_rpm(vc_m_per_min: f64, diameter_mm: f64) -> f64 {
    1000.0 * vc_m_per_min / (PI * diameter_mm)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_25_mm_bar_at_140_m_per_min_turns_about_1780_times_a_minute() {
        assert!((spindle_rpm(140.0, 25.0) - 1782.5).abs() < 0.1);
    }

    /// The expected values follow from the prefixes of the units alone: µ 1e-6, m 1e-3, k 1e3, G 1e9. A tonne is 1e3
    /// kg.
    #[test]
    fn every_conversion_by_its_prefixes() {
        assert_eq!((n_per_mm(0.25), n_per_um(250.0)), (250.0, 0.25));
        assert_eq!(n_per_mm2(206.0), 206_000.0);
        assert!((t_per_mm3(7850.0) - 7.85e-9).abs() < 1e-21);
        assert_eq!((um(0.25), mm(250.0)), (250.0, 0.25));
        // From memory: 1 lbf is 4.448 221 615 260 5 N.
        assert!(
            (POUND_FORCE_N - 0.453_592_37 * 9.806_65).abs() < 1e-12 && (FOOT_M * 1000.0 - 12.0 * INCH_MM).abs() < 1e-12
        );
        assert!((rad_per_s(60.0) - std::f64::consts::TAU).abs() < 1e-12);
        assert!((rpm(std::f64::consts::TAU) - 60.0).abs() < 1e-9);
    }

    #[test]
    fn speed_conversions_are_inverse_to_each_other() {
        assert!((rpm(rad_per_s(1234.5)) - 1234.5).abs() < 1e-9);
        // Two turns a second are two hertz.
        assert!((hz(rad_per_s(120.0)) - 2.0).abs() < 1e-12);
    }
}
