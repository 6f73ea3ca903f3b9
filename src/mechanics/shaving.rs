//! Sockets and keyways shaved by a tool that does not turn. It makes strokes along the axis, each a little deeper.
//!
//! The geometry is derived here and exact. The force is the specific cutting force at the chip thickness times the chip area, as in
//! turning: common practice, no source.

use super::cutting::Resistance;

/// cos 30°: the ratio of inscribed to circumscribed circle of a hexagon.
const COS_30: f64 = 0.866_025_403_784_438_6;
/// Corners of a hexagon.
pub const CORNERS: usize = 6;

/// Strokes and force for shaving a shape.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strokes {
    /// Strokes in all.
    pub strokes: usize,
    /// Strokes in each corner of a hexagon, or in the slot of a keyway.
    pub each: usize,
    /// Largest force along the axis, N.
    pub force_n: f64,
}

fn strokes_to(depth_mm: f64, step_mm: f64) -> usize {
    // The slack avoids an extra stroke from rounding when the depth is a whole number of steps.
    ((depth_mm / step_mm - 1e-9).ceil().max(1.0)) as usize
}

/// Depth from the drilled hole (its diameter is the width `s` across flats) to a corner of the hexagon, mm: `s/2 (1/cos 30° - 1)`.
pub fn corner_mm(across_flats_mm: f64) -> f64 {
    0.5 * across_flats_mm * (1.0 / COS_30 - 1.0)
}

/// A hexagon socket of width `s` across flats, shaved corner by corner from a hole of diameter `s`.
///
/// The last stroke cuts on both flanks of the corner. Each flank is `s/2 tan 30°` long and the chip is `step sin 60°` thick: together an
/// area of `s step / 2`.
pub fn hexagon(resistance: &Resistance, across_flats_mm: f64, step_mm: f64) -> Strokes {
    let each = strokes_to(corner_mm(across_flats_mm), step_mm);
    let step = corner_mm(across_flats_mm) / each as f64;
    let force_n = resistance.specific_n_per_mm2(COS_30 * step) * 0.5 * across_flats_mm * step;
    Strokes { strokes: CORNERS * each, each, force_n }
}

/// A keyway in a bore.
pub fn keyway(resistance: &Resistance, width_mm: f64, depth_mm: f64, step_mm: f64) -> Strokes {
    let each = strokes_to(depth_mm, step_mm);
    let step = depth_mm / each as f64;
    Strokes { strokes: each, each, force_n: resistance.specific_n_per_mm2(step) * width_mm * step }
}

/// Force along the axis when the hexagon is punched in one blow, N. All six corners are cut at once, an area of
/// `s² (√3/2 - π/4)`, with the chip thickness of a whole corner.
pub fn punch_n(resistance: &Resistance, across_flats_mm: f64) -> f64 {
    let area_mm2 = across_flats_mm * across_flats_mm * (COS_30 - std::f64::consts::FRAC_PI_4);
    resistance.specific_n_per_mm2(COS_30 * corner_mm(across_flats_mm)) * area_mm2
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLAIN: Resistance = Resistance { kc11_n_per_mm2: 2000.0, mc: 0.0, in_plane_share: 0.55, passive_floor: 0.15 };

    /// The chip areas of all strokes in one corner add up to a sixth of the area between circle and hexagon.
    #[test]
    fn the_strokes_take_off_what_lies_between_the_circle_and_the_hexagon() {
        let s = 6.0;
        let steps = 100_000;
        let step = corner_mm(s) / f64::from(steps);
        let area: f64 = (0..steps)
            .map(|i| {
                // Tip of the corner at this depth.
                let r = s / 2.0;
                let tip = r + step * (f64::from(i) + 0.5);
                // The flanks run through the tip at 60° to the axis of the corner, up to the circle of radius r.
                let (a, b) = (tip * COS_30, tip * 0.5);
                2.0 * (b - (r * r - a * a).max(0.0).sqrt()) * step * COS_30
            })
            .sum();
        let sixth = s * s * (COS_30 - std::f64::consts::FRAC_PI_4) / 6.0;
        assert!((area - sixth).abs() < 1e-4 * sixth, "{area} {sixth}");
        // The force is the force of the last stroke.
        let last = hexagon(&PLAIN, s, 0.05);
        let exact_step = corner_mm(s) / last.each as f64;
        assert!((last.force_n - 2000.0 * 0.5 * s * exact_step).abs() < 1e-9);
        assert!((punch_n(&PLAIN, s) - 2000.0 * 6.0 * sixth).abs() < 1e-9);
    }

    #[test]
    fn a_finer_step_takes_more_strokes_and_less_force() {
        let (coarse, fine) = (hexagon(&PLAIN, 5.0, 0.1), hexagon(&PLAIN, 5.0, 0.03));
        // 0.387 mm to the corner.
        assert_eq!((coarse.each, fine.each), (4, 13));
        assert!(fine.force_n < 0.4 * coarse.force_n);
        assert_eq!(keyway(&PLAIN, 3.0, 1.4, 0.05).strokes, 28);
    }
}
