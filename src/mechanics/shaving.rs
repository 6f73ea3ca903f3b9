//! Sockets and keyways shaved by a tool that does not turn: it strokes along the axis, a little deeper each time.
//!
//! Geometry is exact; the force is the specific cutting force at the chip's thickness times its area, as in turning:
//! common practice, no source.

use super::cutting::Resistance;

/// cos 30°: inscribed over circumscribed circle of a hexagon.
const COS_30: f64 = 0.866_025_403_784_438_6;
/// Corners of a hexagon.
pub const CORNERS: usize = 6;

/// What shaving a shape takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Strokes {
    /// Strokes in all.
    pub strokes: usize,
    /// Strokes at each corner, or in the one slot of a keyway.
    pub each: usize,
    /// Largest force along the axis, N.
    pub force_n: f64,
}

fn strokes_to(depth_mm: f64, step_mm: f64) -> usize {
    // The slack keeps a depth that is a whole number of steps from one stroke more by rounding.
    ((depth_mm / step_mm - 1e-9).ceil().max(1.0)) as usize
}

/// Depth from the bored circle (diameter: across the flats) to a corner of a hexagon, mm: `s/2 (1/cos 30° - 1)`.
pub fn corner_mm(across_flats_mm: f64) -> f64 {
    0.5 * across_flats_mm * (1.0 / COS_30 - 1.0)
}

/// A hexagon socket of `s` across the flats, shaved corner by corner from a hole of diameter `s`.
///
/// The last stroke cuts on both flanks of the corner, each `s/2 tan 30°` long, with a chip of `step sin 60°`: an area of
/// `s step / 2`.
pub fn hexagon(resistance: &Resistance, across_flats_mm: f64, step_mm: f64) -> Strokes {
    let each = strokes_to(corner_mm(across_flats_mm), step_mm);
    let step = corner_mm(across_flats_mm) / each as f64;
    let force_n = resistance.specific_n_per_mm2(COS_30 * step) * 0.5 * across_flats_mm * step;
    Strokes { strokes: CORNERS * each, each, force_n }
}

/// A keyway of a width and depth in a bore: one slot.
pub fn keyway(resistance: &Resistance, width_mm: f64, depth_mm: f64, step_mm: f64) -> Strokes {
    let each = strokes_to(depth_mm, step_mm);
    let step = depth_mm / each as f64;
    Strokes { strokes: each, each, force_n: resistance.specific_n_per_mm2(step) * width_mm * step }
}

/// Force along the axis when the hexagon is punched in one blow, N: all six corners at once, an area of
/// `s² (√3/2 - π/4)`, with the chip of a whole corner.
pub fn punch_n(resistance: &Resistance, across_flats_mm: f64) -> f64 {
    let area_mm2 = across_flats_mm * across_flats_mm * (COS_30 - std::f64::consts::FRAC_PI_4);
    resistance.specific_n_per_mm2(COS_30 * corner_mm(across_flats_mm)) * area_mm2
}

#[cfg(test)]
mod tests {
    use super::*;

    const PLAIN: Resistance = Resistance { kc11_n_per_mm2: 2000.0, mc: 0.0, in_plane_share: 0.55 };

    /// With a force that does not depend on the chip, the work of all strokes is that of the area taken off: the strokes
    /// of a corner grow in area from 0 to the last, and add up to a sixth of what lies between circle and hexagon.
    #[test]
    fn the_strokes_take_off_what_lies_between_the_circle_and_the_hexagon() {
        let s = 6.0;
        let steps = 100_000;
        let step = corner_mm(s) / f64::from(steps);
        let area: f64 = (0..steps)
            .map(|i| {
                // Half width of the corner that is reached at a depth, where the flanks leave the circle.
                let r = s / 2.0;
                let tip = r + step * (f64::from(i) + 0.5);
                // Flanks at 60° to the axis of the corner through the tip; where they meet the circle of radius r.
                let (a, b) = (tip * COS_30, tip * 0.5);
                2.0 * (b - (r * r - a * a).max(0.0).sqrt()) * step * COS_30
            })
            .sum();
        let sixth = s * s * (COS_30 - std::f64::consts::FRAC_PI_4) / 6.0;
        assert!((area - sixth).abs() < 1e-4 * sixth, "{area} {sixth}");
        // The last of them is the one the force is taken from.
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
