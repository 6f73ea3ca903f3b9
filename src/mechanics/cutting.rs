//! Cutting force of a turning tool with a nose radius, added up along its edge.
//!
//! Each element of the edge cuts its own chip. Its main force is `kc1.1 h^(1-mc) db` (Kienzle, VDI-Z 94, 1952; from memory). In the
//! plane of the chip it pushes with a share of this, normal to the element (Young, Mathew & Oxley, 1987; from memory). The chip lies
//! between the contour of the tool and the same contour one feed before. Not considered: rake, wear, tool material, speed (each
//! a factor of 0.9 to 1.5). Below 0.05 mm chip thickness real forces are higher. Expect no better than ± 25 %, and less of the
//! passive force.

/// Largest depth of cut whose passive force was compared with a measured one, mm (`tests/published/forces.rs`). Beyond it the
/// force is extrapolated.
pub const MEASURED_TO_MM: f64 = 1.25;
/// Chips that specific cutting forces were fitted to, mm: tables begin at 0.05 to 0.1 mm and end at 1 mm. Common practice, no source.
pub const CHIPS_TOLD_MM: [f64; 2] = [0.05, 1.0];
/// Points of Gauss and Legendre on the interval from 0 to 1, with their weights.
const POINTS: [[f64; 2]; 8] = [
    [0.019_855_071_751_232, 0.050_614_268_145_188],
    [0.101_666_761_293_187, 0.111_190_517_226_687],
    [0.237_233_795_041_836, 0.156_853_322_938_944],
    [0.408_282_678_752_175, 0.181_341_891_689_181],
    [0.591_717_321_247_825, 0.181_341_891_689_181],
    [0.762_766_204_958_164, 0.156_853_322_938_944],
    [0.898_333_238_706_813, 0.111_190_517_226_687],
    [0.980_144_928_248_768, 0.050_614_268_145_188],
];

/// Shape of the cutting edge.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Edge {
    /// Nose radius, mm.
    pub nose_radius_mm: f64,
    /// Approach angle, rad.
    pub approach_rad: f64,
}

/// Resistance of a material to cutting.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Resistance {
    /// Specific cutting force at 1 mm chip thickness, N/mm².
    pub kc11_n_per_mm2: f64,
    /// Exponent `mc` of the chip thickness.
    pub mc: f64,
    /// In-plane force of an element of the edge as a share of its main force.
    pub in_plane_share: f64,
    /// Least passive force as a share of the main force.
    pub passive_floor: f64,
}

impl Resistance {
    /// Specific cutting force at a chip thickness, `kc1.1 h^(-mc)`, N/mm².
    pub fn specific_n_per_mm2(&self, chip_mm: f64) -> f64 {
        self.kc11_n_per_mm2 * chip_mm.powf(-self.mc)
    }
}

/// Forces of a cut.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Cut {
    /// Main force, N.
    pub main_n: f64,
    /// Passive (radial) force, N.
    pub passive_n: f64,
    /// Whether the passive force is the floor, because the edge gives less.
    pub floored: bool,
    /// Feed force, N.
    pub feed_n: f64,
    /// Cutting stiffness for a radial motion of the tool, `q Fc/f cos² c`, N/mm: see [`chatter`](super::chatter).
    pub stiffness_n_per_mm: f64,
}

/// Sums along the edge, for a specific cutting force of 1 N/mm² at 1 mm.
#[derive(Default)]
struct Sums {
    main: f64,
    radial: f64,
    axial: f64,
}

impl Sums {
    /// Adds an element of the edge: width and chip thickness (mm), and the angle of the edge against the axis as sine and cosine.
    fn add(&mut self, width: f64, chip: f64, mc: f64, (sin, cos): (f64, f64)) {
        let main = chip.powf(1.0 - mc) * width;
        self.main += main;
        self.radial += main * cos;
        self.axial += main * sin;
    }

    /// Adds the nose up to the angle `to` of the edge against the axis, for a feed of at most the nose radius.
    ///
    /// The chip begins at the ridge that is left, at `sin θ = -f/2r`, and its thickness is `r + f sin θ - √(r² - f² cos² θ)`. The
    /// width of an element is that in the middle of the chip, so the elements add up to the area of the chip. A `shallow` cut
    /// ends on the nose. There the surface of the bar limits the chip, from the place on that the tool left one feed before.
    fn add_nose(&mut self, r: f64, feed: f64, mc: f64, to: f64, depth_mm: f64, shallow: bool) {
        let from = -(feed / (2.0 * r)).asin().min(to);
        let bar = r - depth_mm;
        let part = if shallow { (r * to.sin() - feed).atan2(bar).max(from) } else { to };
        // From the ends, where the chip is thinnest and its specific force has no bound.
        for (end, other) in [(from, part), (to, part)] {
            for [at, weight] in POINTS {
                let along = other - end;
                let (sin, cos) = (end + along * at.powi(3)).sin_cos();
                let before = r + feed * sin - (r * r - (feed * cos).powi(2)).max(0.0).sqrt();
                let chip = if shallow { before.min(r - bar / cos) } else { before };
                if chip > 0.0 {
                    let angle = along.abs() * 3.0 * at * at * weight;
                    self.add((r - chip / 2.0) * angle, chip, mc, (sin, cos));
                }
            }
        }
    }

    /// The same cut with all chips that many times as thick.
    fn thicker(self, times: f64, mc: f64) -> Sums {
        let force = times.powf(1.0 - mc);
        Sums { main: self.main * force, radial: self.radial * force, axial: self.axial * force }
    }
}

/// Forces of one tool at depth `ap_mm` and feed `feed_mm`. All are zero if depth or feed is not positive.
///
/// The passive force is the sum of the radial parts, but at least the floor. Above a feed of the nose radius the chips on the nose keep
/// their shape and only get thicker: nobody turns so, and nothing is known there.
///
/// ```
/// use spanhold::mechanics::cutting::{cut, Edge, Resistance};
/// // 0.1 mm deep with a 0.4 mm nose at 0.1 mm feed in C45: the nose cuts, so half of the force pushes the bar away.
/// let c45 = Resistance { kc11_n_per_mm2: 1659.0, mc: 0.21, in_plane_share: 0.55, passive_floor: 0.15 };
/// let c = cut(&c45, &Edge { nose_radius_mm: 0.4, approach_rad: 90f64.to_radians() }, 0.1, 0.1);
/// assert!((c.main_n - 33.1).abs() < 0.1 && (c.passive_n / c.main_n - 0.506).abs() < 0.001);
/// ```
pub fn cut(resistance: &Resistance, edge: &Edge, ap_mm: f64, feed_mm: f64) -> Cut {
    if !(ap_mm > 0.0 && feed_mm > 0.0) {
        return Cut::default();
    }
    let (r, mc) = (edge.nose_radius_mm, resistance.mc);
    let nose_depth = r * (1.0 - edge.approach_rad.cos());
    let straight = (ap_mm - nose_depth).max(0.0) / edge.approach_rad.sin();
    let to = if ap_mm < nose_depth { (1.0 - ap_mm / r).acos() } else { edge.approach_rad };
    let shallow = ap_mm < nose_depth.min(r);
    let mut sums = Sums::default();
    let on_nose = feed_mm.min(r);
    if r > 0.0 {
        sums.add_nose(r, on_nose, mc, to, ap_mm, shallow);
        sums = sums.thicker(feed_mm / on_nose, mc);
    }
    if !shallow {
        // At the surface of the bar the chip ends along the axis, and not square to the edge as an element does.
        let width = straight - 0.5 * on_nose * to.cos();
        sums.add(width, feed_mm * to.sin(), mc, to.sin_cos());
    }
    let (kc, in_plane) = (resistance.kc11_n_per_mm2, resistance.kc11_n_per_mm2 * resistance.in_plane_share);
    let (main_n, radial_n) = (kc * sums.main, in_plane * sums.radial);
    let floor_n = resistance.passive_floor * main_n;
    let (passive_n, feed_n) = (radial_n.max(floor_n), in_plane * sums.axial);
    let radial_share = passive_n * passive_n / (passive_n * passive_n + feed_n * feed_n);
    Cut {
        main_n,
        passive_n,
        floored: radial_n < floor_n,
        feed_n,
        stiffness_n_per_mm: resistance.in_plane_share * main_n / feed_mm * radial_share,
    }
}

/// Largest feed, mm/rev, for an ideal roughness Ra (µm) with a nose radius `r`: `sqrt(8 r Rt)` with `Rt = 4 Ra`.
/// Source: theoretical roughness `Rt = f²/(8r)`, any machining text (from memory); `Rt = 4 Ra` is the usual rounding of 3.9.
pub fn feed_for_roughness_mm(nose_radius_mm: f64, ra_um: f64) -> f64 {
    (8.0 * nose_radius_mm * 4.0 * ra_um / 1000.0).sqrt()
}

/// How a turned surface comes out beside the ideal one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finish {
    /// Real Ra as a multiple of the ideal one.
    pub factor: f64,
    /// Ra that no feed goes below, µm.
    pub floor_um: f64,
}

impl Finish {
    /// Ra (µm) that a feed (mm/rev) leaves: the factor times the ideal `f²/(32 r)`, but at least the floor. The form is decided here.
    pub fn ra_um(&self, nose_radius_mm: f64, feed_mm: f64) -> f64 {
        (self.factor * 1000.0 * feed_mm * feed_mm / (32.0 * nose_radius_mm)).max(self.floor_um)
    }

    /// Largest feed, mm/rev, for an Ra (µm). Below the floor that of the floor: a smaller one would gain nothing.
    pub fn feed_mm(&self, nose_radius_mm: f64, ra_um: f64) -> f64 {
        feed_for_roughness_mm(nose_radius_mm, ra_um.max(self.floor_um) / self.factor)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A feed gives the Ra it was chosen for, down to the floor.
    #[test]
    fn the_feed_for_a_finish_gives_that_finish() {
        let finish = Finish { factor: 1.5, floor_um: 0.2 };
        for ra in [0.2, 0.4, 0.8, 3.2] {
            assert!((finish.ra_um(0.4, finish.feed_mm(0.4, ra)) - ra).abs() < 1e-12);
        }
        assert_eq!(finish.feed_mm(0.4, 0.05), finish.feed_mm(0.4, 0.2));
        assert_eq!(finish.ra_um(0.4, 0.001), 0.2);
        // By hand: √(32 · 0.4 · 0.8/1500).
        assert!((finish.feed_mm(0.4, 0.8) - 0.08262).abs() < 1e-5);
    }

    #[test]
    fn where_nothing_is_cut_there_is_no_force() {
        let steel = Resistance { kc11_n_per_mm2: 2000.0, mc: 0.25, in_plane_share: 0.5, passive_floor: 0.15 };
        let edge = Edge { nose_radius_mm: 0.4, approach_rad: 90f64.to_radians() };
        for (ap_mm, feed_mm) in [(0.0, 0.1), (0.1, 0.0), (0.0, 0.0), (-0.1, 0.1), (0.1, -0.1)] {
            assert_eq!(cut(&steel, &edge, ap_mm, feed_mm), Cut::default(), "{ap_mm} {feed_mm}");
        }
        assert!(cut(&steel, &edge, 0.1, 0.1).main_n > 0.0);
    }
}
