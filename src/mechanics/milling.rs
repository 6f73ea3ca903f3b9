//! Mean force of a cutter that mills a slot or a flat, from the specific cutting force at the mean chip thickness.
//!
//! The cutter is as wide as the slot or flat, so a tooth cuts during half a turn. The cutting power is `kc` (Kienzle) times the
//! volume removed per time; the mean tangential force is this power divided by the cutting speed. The largest force of a tooth is
//! above this mean. The part of the force that pushes across the feed is below it: `π/4` of it as a mean over the half turn.

use super::cutting::Resistance;

/// Mean chip thickness over a half turn of engagement, `2 fz / π`, mm: the thickness follows a sine from zero to `fz` and back.
///
/// - **Source**: any milling text, `hm = 360° ae fz / (π D φ)` with `ae = D`, `φ = 180°`; from memory, not re-read.
pub fn mean_chip_mm(feed_per_tooth_mm: f64) -> f64 {
    feed_per_tooth_mm * std::f64::consts::FRAC_2_PI
}

/// Mean tangential force of all teeth, `kc A vf / vc`, N (derived here, see above). The cutter removes a cross-section `area_mm2` over
/// a width equal to its own diameter; `vf` is `feed_mm_per_min` and `vc` is `vc_m_per_min`.
///
/// ```
/// use spanhold::mechanics::{cutting::Resistance, milling};
/// // 2000 N/mm² for any chip. A slot of 5 × 3 at 150 mm/min is 2250 mm³ or 4500 N·m per minute; at 25 m/min this is 180 N.
/// let plain = Resistance { kc11_n_per_mm2: 2000.0, mc: 0.0, in_plane_share: 0.55, passive_floor: 0.15 };
/// assert!((milling::mean_n(&plain, 15.0, 5.0, 2.0, 150.0, 25.0) - 180.0).abs() < 1e-9);
/// ```
pub fn mean_n(
    resistance: &Resistance,
    area_mm2: f64,
    cutter_mm: f64,
    teeth: f64,
    feed_mm_per_min: f64,
    vc_m_per_min: f64,
) -> f64 {
    let turns_per_min = 1000.0 * vc_m_per_min / (std::f64::consts::PI * cutter_mm);
    let chip_mm = mean_chip_mm(feed_mm_per_min / (teeth * turns_per_min));
    resistance.specific_n_per_mm2(chip_mm) * area_mm2 * feed_mm_per_min / (1000.0 * vc_m_per_min)
}

/// Width (mm) of a flat at a distance from the axis of a round bar, and the area (mm²) of the circular segment outside it.
/// None if the flat lies outside the bar.
pub fn flat(diameter_mm: f64, from_axis_mm: f64) -> Option<(f64, f64)> {
    let radius = diameter_mm / 2.0;
    let half = (radius * radius - from_axis_mm * from_axis_mm).sqrt();
    // The root of a negative number is NaN, and NaN is not larger than zero.
    (half > 0.0).then(|| (2.0 * half, radius * radius * (from_axis_mm / radius).acos() - from_axis_mm * half))
}

#[cfg(test)]
mod tests {
    use super::*;

    const C45: Resistance = Resistance { kc11_n_per_mm2: 2220.0, mc: 0.14, in_plane_share: 0.55, passive_floor: 0.15 };

    #[test]
    fn a_keyseat_of_6_by_3_5_in_c45_by_hand() {
        // 25 m/min on 6 mm: 1326.3 rev/min; two teeth at 150 mm/min: 0.05655 mm, mean chip 0.0360 mm;
        // kc = 2220 * 0.0360^-0.14 = 3535.6; 3535.6 * 21 * 150 / 25000 = 445.5 N.
        let found = mean_n(&C45, 21.0, 6.0, 2.0, 150.0, 25.0);
        assert!((found - 445.5).abs() < 0.5, "{found}");
    }

    /// The mean force from an integral over one turn: the force of each tooth is `kc a h`, with `kc` at the mean chip thickness.
    #[test]
    fn the_mean_is_that_of_the_teeth_over_a_turn() {
        let (depth, cutter, teeth, feed, vc) = (3.0, 8.0, 3_u32, 200.0, 30.0);
        let turns = 1000.0 * vc / (std::f64::consts::PI * cutter);
        let per_tooth = feed / (f64::from(teeth) * turns);
        let kc = C45.specific_n_per_mm2(mean_chip_mm(per_tooth));
        let steps = 100_000;
        let chip = |angle: f64| (per_tooth * angle.sin()).max(0.0);
        let step = std::f64::consts::TAU / f64::from(steps);
        let sum: f64 = (0..steps)
            .flat_map(|i| (0..teeth).map(move |t| f64::from(i) * step + f64::from(t) * std::f64::consts::TAU / 3.0))
            .map(|angle| kc * depth * chip(angle % std::f64::consts::TAU))
            .sum();
        let found = mean_n(&C45, depth * cutter, cutter, f64::from(teeth), feed, vc);
        assert!((sum / f64::from(steps) - found).abs() < 1e-3 * found, "{found}");
    }

    #[test]
    fn flats_of_a_square_take_off_what_lies_between_square_and_circle() {
        // The largest square in a circle of 20 mm: its flats stand 7.0711 mm from the axis.
        let (width, area) = flat(20.0, 50.0_f64.sqrt()).expect("inside");
        assert!((width - 200.0_f64.sqrt()).abs() < 1e-9);
        assert!((4.0 * area - (std::f64::consts::PI * 100.0 - 200.0)).abs() < 1e-9);
        assert_eq!((flat(20.0, 10.0), flat(20.0, 11.0)), (None, None));
    }
}
