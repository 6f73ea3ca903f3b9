//! Thrust and torque of a twist drill, and torque of a tap, from the specific cutting force.
//!
//! **Torque of a drill.** Each of the two lips cuts half the feed over half the diameter, and its force acts at a quarter of the
//! diameter from the axis: `kc f d²/8` (derived here). Specific cutting forces are measured in turning. For drilling they are multiplied
//! by 1.2 (process factor of table books on cutting, from memory, not re-read). This is the whole torque, with the chisel edge.
//!
//! **Thrust of a drill.** The lips push along the axis with a share of their cutting force. The chisel edge between them cuts badly and is
//! pressed into the metal. A machinists' handbook (31st edition, pp. 1152-1153, seen) gives, after Shaw and Oxford 1957:
//!
//! - torque `M = Kd f^0.8 d^1.8 A/40` N·mm, thrust `T = 0.05 Kd f^0.8 d^0.8 B + 0.007 Kd d² J` N,
//! - for a drill of standard design, whose chisel edge is 0.18 of its diameter, `A` 1.085, `B` 1.355, `J` 0.030;
//!   for one with a split point (0.03 of the diameter) 1.000, 1.100, 0.001.
//!
//! `Kd` is a number of the material for this formula alone. It drops out of the ratio, so `T/M` needs no other value than feed and
//! diameter: `T = M/A (2 B/d + 0.28 J (d/f⁴)^0.2)`. The first part is cutting, the second the pressed chisel edge. The drill counts as one of
//! standard design: one with a split point needs about 30 % less.
//!
//! **Tap.** The teeth of the chamfer cut the thread's profile out of the wall of the hole; see [`tapping_torque_nmm`].

use super::cutting::Resistance;

/// Force of drilling over that of turning at the same chip.
const DRILLING_OVER_TURNING: f64 = 1.2;
/// Chip thickness of a lip as a share of the feed: half of it, across a lip at 59° to the axis.
const LIP_CHIP_SHARE: f64 = 0.43;
/// Factors of the chisel edge for torque, for cutting thrust, for pressing thrust, of a drill of standard design.
const CHISEL: [f64; 3] = [1.085, 1.355, 0.030];
/// Smallest and largest diameter (mm) of the tables that belong to the formula of the thrust.
pub const THRUST_TOLD_MM: [f64; 2] = [1.6, 100.0];

/// Turns of the chamfer of a tap for a blind hole, and below it its flutes. Form C of DIN 2197 has two to three turns and a tap up to M12 mostly
/// three flutes (common practice, no source).
const CHAMFER_TURNS: f64 = 2.5;
const FLUTES: f64 = 3.0;
/// Flat at the bottom of an internal thread's groove, as a share of the pitch (ISO 68-1, from memory, not re-read).
const FLAT_SHARE: f64 = 0.125;

/// Chip thickness of a drill's lip, mm.
pub fn chip_mm(feed_mm: f64) -> f64 {
    LIP_CHIP_SHARE * feed_mm
}

/// Thrust along a drill at a feed (mm/rev), N. See above.
pub fn thrust_n(resistance: &Resistance, diameter_mm: f64, feed_mm: f64) -> f64 {
    let [torque, cutting, pressing] = CHISEL;
    let pressed = 0.007 / 0.025 * pressing * diameter_mm.powf(0.2) / feed_mm.powf(0.8);
    torque_nmm(resistance, diameter_mm, feed_mm) / torque * (2.0 * cutting / diameter_mm + pressed)
}

/// Torque of a drill at a feed (mm/rev), N·mm. See above.
pub fn torque_nmm(resistance: &Resistance, diameter_mm: f64, feed_mm: f64) -> f64 {
    let specific = DRILLING_OVER_TURNING * resistance.specific_n_per_mm2(chip_mm(feed_mm));
    torque_at_nmm(specific, diameter_mm, feed_mm)
}

/// Torque of a drill for a specific cutting force (N/mm²) and feed (mm/rev), `kc f d² / 8`, N·mm.
///
/// ```
/// // 10 mm in magnesium (0.5 W·s/mm³) at 0.2 mm/rev.
/// assert_eq!(spanhold::mechanics::drilling::torque_at_nmm(500.0, 10.0, 0.2), 1250.0);
/// ```
pub fn torque_at_nmm(specific_n_per_mm2: f64, diameter_mm: f64, feed_mm: f64) -> f64 {
    specific_n_per_mm2 * feed_mm * diameter_mm * diameter_mm / 8.0
}

/// Chip thickness of a tooth in the chamfer of a tap, mm: the share of a tooth in the pitch, across an edge that rises by the depth of
/// the thread over the length of the chamfer (derived here).
pub fn tap_chip_mm(pitch_mm: f64) -> f64 {
    let rise = depth_mm(pitch_mm) / (CHAMFER_TURNS * pitch_mm);
    pitch_mm / FLUTES * rise / (1.0 + rise * rise).sqrt()
}

/// Torque of a tap of major diameter `d` and pitch `P` in a hole of `d - P`, N·mm: specific cutting force times the area of the profile
/// that all teeth in cut share, times the radius of this area's centre.
///
/// - **Derived here**: a groove of the depth `h = P/2` has a flat of `P/8` at its bottom and flanks at 30°, so it has the area
///   `h (P/8 + h tan 30°)`. A tool maker's catalogue (2021, p. 639, seen) has the same with a sharp groove, its own specific cutting forces
///   and a factor near 1 for the kind of tap. Friction on the flanks and in the chips is left out.
pub fn tapping_torque_nmm(resistance: &Resistance, major_mm: f64, pitch_mm: f64) -> f64 {
    let moment_mm3 = profile_mm3((major_mm - pitch_mm) / 2.0, depth_mm(pitch_mm), FLAT_SHARE * pitch_mm);
    resistance.specific_n_per_mm2(tap_chip_mm(pitch_mm)) * moment_mm3
}

/// Area of a groove with flanks at 30° times the radius of its centre, mm³: the centre of the flat's part is half the depth from the
/// wall, that of the flanks' part a third.
fn profile_mm3(wall_mm: f64, depth_mm: f64, flat_mm: f64) -> f64 {
    let flanks_mm2 = depth_mm * depth_mm / 3.0_f64.sqrt();
    flat_mm * depth_mm * (wall_mm + depth_mm / 2.0) + flanks_mm2 * (wall_mm + depth_mm / 3.0)
}

/// Depth of a thread in a hole of `d - P`, mm.
fn depth_mm(pitch_mm: f64) -> f64 {
    pitch_mm / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;

    const C45: Resistance = Resistance { kc11_n_per_mm2: 2220.0, mc: 0.14, in_plane_share: 0.55, passive_floor: 0.15 };

    #[test]
    fn a_drill_of_five_in_c45_by_hand() {
        // f 0.1, chip 0.043, kc = 2220 * 0.043^-0.14 = 3448.7; torque 1.2 * 3448.7 * 0.1 * 25 / 8 = 1293.3.
        let torque = torque_nmm(&C45, 5.0, 0.1);
        assert!((torque - 1293.3).abs() < 0.3, "{torque}");
        // 1293.3/1.085 = 1192.0; times 2.71/5 = 646.0; pressed 0.0084 * 1.3797 / 0.15849 = 0.07312, times 1192.0 = 87.2.
        let thrust = thrust_n(&C45, 5.0, 0.1);
        assert!((thrust - 733.2).abs() < 0.4, "{thrust}");
    }

    /// The ratio of thrust and torque is that of the handbook's own formula, for any `Kd`.
    #[test]
    fn the_ratio_of_thrust_and_torque_is_that_of_the_handbook() {
        for (d, f) in [(1.6_f64, 0.03_f64), (5.0, 0.1), (12.5, 0.25), (25.5, 0.4)] {
            let kd = 24_000.0;
            let torque = 25.0 * kd * f.powf(0.8) * d.powf(1.8) * 1.085 / 1000.0;
            let thrust = 0.05 * kd * f.powf(0.8) * d.powf(0.8) * 1.355 + 0.007 * kd * d * d * 0.030;
            let ours = thrust_n(&C45, d, f) / torque_nmm(&C45, d, f);
            assert!((ours / (thrust / torque) - 1.0).abs() < 1e-9, "{d} {f}");
        }
    }

    #[test]
    fn an_m10_tap_in_c45_by_hand() {
        // h 0.75, rise 0.2, chip 0.5 * 0.2/sqrt(1.04) = 0.09806, kc = 2220 * 0.09806^-0.14 = 3072.8; flat 0.140625 at 4.625,
        // flanks 0.324760 at 4.5: 2.11181.
        let found = tapping_torque_nmm(&C45, 10.0, 1.5);
        assert!((found - 3072.8 * 2.11181).abs() < 2.0, "{found}");
    }

    /// A groove without the flat is that of the catalogue: tan 30° (D - Do)² (D + 2 Do)/24.
    #[test]
    fn a_sharp_groove_is_that_of_the_catalogue() {
        let (d, hole): (f64, f64) = (8.0, 6.8);
        let theirs = (d - hole).powi(2) * (d + 2.0 * hole) / 24.0 / 3.0_f64.sqrt();
        assert!((profile_mm3(hole / 2.0, (d - hole) / 2.0, 0.0) - theirs).abs() < 1e-12);
    }
}
