//! Cutting force of a turning tool with a nose radius.
//!
//! The main force follows Kienzle (VDI-Z 94, 1952; from memory), with the mean chip thickness along the active edge. The force
//! in the plane of the chip is normal to the chord of the active edge (Colwell, Trans. ASME 76, 1954; from memory).
//! Not considered: rake, wear, tool material, speed (each a factor of 0.9 to 1.5). Below 0.05 mm chip thickness real
//! forces are higher. Expect no better than ± 25 %.

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
    /// In-plane force as a share of the main force.
    pub in_plane_share: f64,
}

impl Resistance {
    /// Specific cutting force at a chip thickness, `kc1.1 h^(-mc)`, N/mm².
    pub fn specific_n_per_mm2(&self, chip_mm: f64) -> f64 {
        self.kc11_n_per_mm2 * chip_mm.powf(-self.mc)
    }
}

/// The cut and its forces.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Cut {
    /// Length of the active edge, mm.
    pub edge_mm: f64,
    /// Mean chip thickness, mm.
    pub mean_chip_mm: f64,
    /// Angle of the chord of the active edge against the axis, rad.
    pub chord_rad: f64,
    /// Specific cutting force, N/mm².
    pub specific_n_per_mm2: f64,
    /// Main force, N.
    pub main_n: f64,
    /// Passive (radial) force, N.
    pub passive_n: f64,
    /// Feed force, N.
    pub feed_n: f64,
}

/// Forces of one tool at depth `ap_mm` and feed `feed_mm`. All are zero if depth or feed is not positive.
///
/// ```
/// use spanhold::mechanics::cutting::{cut, Edge, Resistance};
/// // 0.1 mm deep with a 0.4 mm nose at 0.1 mm feed in C45: the nose cuts, so half of the force pushes the bar away.
/// let c45 = Resistance { kc11_n_per_mm2: 1659.0, mc: 0.21, in_plane_share: 0.55 };
/// let c = cut(&c45, &Edge { nose_radius_mm: 0.4, approach_rad: 90f64.to_radians() }, 0.1, 0.1);
/// assert!((c.main_n - 33.63).abs() < 0.01 && (c.passive_n / c.main_n - 0.515).abs() < 0.001);
/// ```
pub fn cut(resistance: &Resistance, edge: &Edge, ap_mm: f64, feed_mm: f64) -> Cut {
    if !(ap_mm > 0.0 && feed_mm > 0.0) {
        return Cut::default();
    }
    let (r, k) = (edge.nose_radius_mm, edge.approach_rad);
    let nose_depth = r * (1.0 - k.cos());
    let (edge_mm, chord_z) = if ap_mm <= nose_depth {
        (r * (1.0 - ap_mm / r).acos(), (2.0 * r * ap_mm - ap_mm * ap_mm).sqrt())
    } else {
        let straight = ap_mm - nose_depth;
        (r * k + straight / k.sin(), r * k.sin() + straight / k.tan())
    };
    let area = ap_mm * feed_mm;
    let mean_chip_mm = area / edge_mm;
    let specific = resistance.specific_n_per_mm2(mean_chip_mm);
    let main_n = specific * area;
    let chord_rad = ap_mm.atan2(chord_z);
    let in_plane = resistance.in_plane_share * main_n;
    Cut {
        edge_mm,
        mean_chip_mm,
        chord_rad,
        specific_n_per_mm2: specific,
        main_n,
        passive_n: in_plane * chord_rad.cos(),
        feed_n: in_plane * chord_rad.sin(),
    }
}

/// Largest feed, mm/rev, for a roughness Ra (µm) with a nose radius `r`: `sqrt(8 r Rt)` with `Rt = 4 Ra`.
/// Source: theoretical roughness `Rt = f²/(8r)`, any machining text (from memory); `Rt = 4 Ra` is the usual rounding of 3.9.
pub fn feed_for_roughness_mm(nose_radius_mm: f64, ra_um: f64) -> f64 {
    (8.0 * nose_radius_mm * 4.0 * ra_um / 1000.0).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn where_nothing_is_cut_there_is_no_force() {
        let steel = Resistance { kc11_n_per_mm2: 2000.0, mc: 0.25, in_plane_share: 0.5 };
        let edge = Edge { nose_radius_mm: 0.4, approach_rad: 90f64.to_radians() };
        for (ap_mm, feed_mm) in [(0.0, 0.1), (0.1, 0.0), (0.0, 0.0), (-0.1, 0.1), (0.1, -0.1)] {
            assert_eq!(cut(&steel, &edge, ap_mm, feed_mm), Cut::default(), "{ap_mm} {feed_mm}");
        }
        assert!(cut(&steel, &edge, 0.1, 0.1).main_n > 0.0);
    }
}
