//! Thrust and torque of a twist drill from the specific cutting force on its two lips, and torque of a tap.
//!
//! Feed `0.02 d` per turn, chip thickness `0.43 f` per lip (point angle near 118°), thrust share 0.55: common practice, no
//! source.

use super::cutting::Resistance;

/// Chip thickness of one tooth of a tap as a share of the pitch: the depth of the thread divided among four turns of chamfer
/// and three flutes. Common practice, no source.
const TAP_CHIP_SHARE: f64 = 0.045;

/// Feed of a drill, mm/rev.
pub fn feed_mm(diameter_mm: f64) -> f64 {
    0.02 * diameter_mm
}

/// Specific cutting force at the drill's lips, N/mm².
fn specific_n_per_mm2(resistance: &Resistance, diameter_mm: f64) -> f64 {
    resistance.specific_n_per_mm2(0.43 * feed_mm(diameter_mm))
}

/// Thrust along the drill, `0.55 kc f d / 2`, N.
pub fn thrust_n(resistance: &Resistance, diameter_mm: f64) -> f64 {
    0.55 * specific_n_per_mm2(resistance, diameter_mm) * feed_mm(diameter_mm) * diameter_mm / 2.0
}

/// Torque of the drill at its own feed, `kc f d² / 8`, N·mm.
pub fn torque_nmm(resistance: &Resistance, diameter_mm: f64) -> f64 {
    torque_at_nmm(specific_n_per_mm2(resistance, diameter_mm), diameter_mm, feed_mm(diameter_mm))
}

/// Torque of a drill for a specific cutting force (N/mm²) and feed (mm/rev), `kc f d² / 8`, N·mm. Derived here: each of the two
/// lips cuts half the feed over half the diameter, and its force acts at a quarter of the diameter from the axis.
///
/// ```
/// // 10 mm in magnesium (0.5 W·s/mm³) at 0.2 mm/rev.
/// assert_eq!(spanhold::mechanics::drilling::torque_at_nmm(500.0, 10.0, 0.2), 1250.0);
/// ```
pub fn torque_at_nmm(specific_n_per_mm2: f64, diameter_mm: f64, feed_mm: f64) -> f64 {
    specific_n_per_mm2 * feed_mm * diameter_mm * diameter_mm / 8.0
}

/// Torque of a tap of major diameter `d` and pitch `P`, `kc P² d / 8`, N·mm, with the specific cutting force at a chip thickness of
/// `0.045 P`. Machining handbooks (from memory, not re-read); the chip thickness is common practice, no source.
pub fn tapping_torque_nmm(resistance: &Resistance, major_mm: f64, pitch_mm: f64) -> f64 {
    resistance.specific_n_per_mm2(TAP_CHIP_SHARE * pitch_mm) * pitch_mm * pitch_mm * major_mm / 8.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_drill_of_five_in_c45_by_hand() {
        let c45 = Resistance { kc11_n_per_mm2: 2220.0, mc: 0.14, in_plane_share: 0.55, passive_floor: 0.15 };
        // f 0.1, chip 0.043, kc = 2220 * 0.043^-0.14 = 3448.7.
        assert!((thrust_n(&c45, 5.0) - 0.55 * 3448.7 * 0.1 * 2.5).abs() < 0.1, "{}", thrust_n(&c45, 5.0));
        assert!((torque_nmm(&c45, 5.0) - 3448.7 * 0.1 * 25.0 / 8.0).abs() < 0.2, "{}", torque_nmm(&c45, 5.0));
    }

    #[test]
    fn an_m10_tap_in_c45_takes_about_nine_newton_metres() {
        let c45 = Resistance { kc11_n_per_mm2: 2220.0, mc: 0.14, in_plane_share: 0.55, passive_floor: 0.15 };
        let found = tapping_torque_nmm(&c45, 10.0, 1.5);
        // chip 0.0675, kc = 3238; 3238 * 2.25 * 10 / 8.
        assert!((found - 9107.0).abs() < 15.0, "{found}");
    }
}
