//! A straight, round, stepped Timoshenko beam on radial springs to ground.
//!
//! Elements are the exact two-node Timoshenko element with consistent mass and rotary inertia. Static answers are
//! exact at nodes for any mesh (the shape functions are the exact solutions of the unloaded element, and distributed
//! weight enters by its work-equivalent nodal loads). Bending stiffness of holes and keyseats is not reduced.
//!
//! Sources: element: Przemieniecki, Theory of Matrix Structural Analysis (1968), sections 5.6 and 11.5; Davis,
//! Henshell & Warburton, J. Sound Vib. 22 (1972). Shear coefficient: Cowper, J. Appl. Mech. 33 (1966). All from memory.

use super::banded::{BlockTri, Mat2, Sym2};
use super::factor::Factor;
use super::torsion::polar_mm4;
use crate::units::GRAVITY_MM_PER_S2;
use std::f64::consts::PI;

/// Nodes closer than this are merged, mm. A shorter element would only add rounding errors.
pub const MERGE_MM: f64 = 1e-6;

/// Elastic properties.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Elastic {
    /// Young's modulus, N/mm².
    pub e_n_per_mm2: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Density, t/mm³.
    pub density_t_per_mm3: f64,
    /// Inner diameter of a hollow bar, mm; 0 for a solid one. It is the same all along.
    pub bore_mm: f64,
}

impl Elastic {
    /// Shear modulus `E/(2(1+ν))`, N/mm²; any text on elasticity (from memory).
    pub fn shear_modulus(&self) -> f64 {
        self.e_n_per_mm2 / (2.0 * (1.0 + self.poisson))
    }

    /// Shear coefficient of a circle with the bore, `6(1+ν)(1+m²)²/((7+6ν)(1+m²)² + (20+12ν)m²)`, `m` = bore over diameter: Cowper,
    /// J. Appl. Mech. 33 (1966) (from memory; three public programs of others have the same formula).
    pub fn shear_coefficient(&self, diameter_mm: f64) -> f64 {
        let m2 = (self.bore_mm / diameter_mm).powi(2);
        let ring = (1.0 + m2) * (1.0 + m2);
        6.0 * (1.0 + self.poisson) * ring / ((7.0 + 6.0 * self.poisson) * ring + (20.0 + 12.0 * self.poisson) * m2)
    }

    /// Second moment of area of a circle with the bore, mm⁴.
    pub fn inertia_mm4(&self, diameter_mm: f64) -> f64 {
        inertia_mm4(diameter_mm) - inertia_mm4(self.bore_mm)
    }

    /// Area of a circle with the bore, mm².
    pub fn area_mm2(&self, diameter_mm: f64) -> f64 {
        area_mm2(diameter_mm) - area_mm2(self.bore_mm)
    }

    /// Twist of a piece of a diameter with the bore under 1 N·mm, `L/(G Ip)`, rad.
    pub fn twist_per_nmm(&self, diameter_mm: f64, length_mm: f64) -> f64 {
        length_mm / (self.shear_modulus() * (polar_mm4(diameter_mm) - polar_mm4(self.bore_mm)))
    }
}

/// Second moment of area of a solid circle, `π d⁴/64`, mm⁴; any handbook of mechanics (from memory).
pub fn inertia_mm4(diameter_mm: f64) -> f64 {
    PI * diameter_mm.powi(4) / 64.0
}

/// Area of a solid circle, mm².
pub fn area_mm2(diameter_mm: f64) -> f64 {
    PI * diameter_mm * diameter_mm / 4.0
}

/// A radial spring to ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spring {
    /// Place, mm.
    pub at_mm: f64,
    /// Stiffness, N/mm.
    pub n_per_mm: f64,
}

/// The beam is not held: its springs allow a rigid motion.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Unheld;

impl std::fmt::Display for Unheld {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("the beam is not held: its springs leave a free motion")
    }
}

impl std::error::Error for Unheld {}

/// A meshed beam.
#[derive(Debug, Clone)]
pub struct Beam {
    /// Node places, ascending, mm.
    pub x_mm: Vec<f64>,
    /// Stiffness with the springs; unknowns of a node are deflection (mm) and slope (rad).
    pub stiffness: BlockTri,
    /// Consistent mass, t.
    pub mass: BlockTri,
    /// Work-equivalent nodal loads of the self-weight, N and N·mm.
    pub weight: Vec<[f64; 2]>,
}

impl Beam {
    /// Builds a beam.
    ///
    /// - `points_mm`: places that must be nodes, any order; sorted and merged in place. At least two different ones.
    /// - `diameter_mm`: the diameter between two neighbouring nodes. It is called with the midpoints of the elements, in ascending order.
    /// - `springs`: each spring is put on the nearest node, so include its place in the points.
    pub fn new(
        material: &Elastic,
        points_mm: &mut Vec<f64>,
        mut diameter_mm: impl FnMut(f64) -> f64,
        springs: &[Spring],
    ) -> Beam {
        points_mm.sort_by(f64::total_cmp);
        points_mm.dedup_by(|b, a| *b - *a < MERGE_MM);
        let n = points_mm.len();
        let (mut stiffness, mut mass, mut weight) = (BlockTri::zeros(n), BlockTri::zeros(n), vec![[0.0; 2]; n]);
        let mut bar = Bar::new(material, 0.0);
        // The element on the front side of the current node.
        let mut front = Element::default();
        let own = stiffness.diag.iter_mut().zip(&mut mass.diag).zip(&mut weight);
        let across = stiffness.upper.iter_mut().zip(&mut mass.upper);
        for ((((k, m), w), (k_across, m_across)), ends) in own.zip(across).zip(points_mm.windows(2)) {
            let diameter_mm = diameter_mm(0.5 * (ends[1] + ends[0]));
            if diameter_mm != bar.diameter_mm {
                bar = Bar::new(material, diameter_mm);
            }
            // Each element is computed on its own, even if lengths differ by rounding only: one repeated rounding error would add up.
            let rear = bar.element(ends[1] - ends[0]);
            (*k, *m, *w) = met(&front, &rear);
            (*k_across, *m_across) = rear.across();
            front = rear;
        }
        if let (Some(k), Some(m), Some(w)) = (stiffness.diag.last_mut(), mass.diag.last_mut(), weight.last_mut()) {
            (*k, *m, *w) = met(&front, &Element::default());
        }
        let beam = Beam { x_mm: points_mm.clone(), stiffness, mass, weight };
        beam.with_springs(springs)
    }

    fn with_springs(mut self, springs: &[Spring]) -> Beam {
        for s in springs {
            let i = self.node(s.at_mm);
            self.stiffness.diag[i].a += s.n_per_mm;
        }
        self
    }

    /// The node nearest to a place.
    pub fn node(&self, x_mm: f64) -> usize {
        let i = self.x_mm.partition_point(|x| *x < x_mm);
        if i == 0 {
            return 0;
        }
        if i == self.x_mm.len() || x_mm - self.x_mm[i - 1] <= self.x_mm[i] - x_mm { i - 1 } else { i }
    }

    /// Factors the stiffness matrix.
    ///
    /// # Errors
    /// [`Unheld`] when the springs leave a free motion.
    pub fn factor(&self) -> Result<Factor, Unheld> {
        self.stiffness.factor().ok_or(Unheld)
    }

    /// Deflection (mm) and slope of every node under its own weight; positive is down.
    pub fn sag(&self, factor: &Factor) -> Vec<[f64; 2]> {
        let mut v = self.weight.clone();
        factor.solve(&mut v);
        v
    }

    /// Deflection (mm) and slope of every node under a force in N at a node.
    pub fn under_force(&self, factor: &Factor, node: usize, force_n: f64) -> Vec<[f64; 2]> {
        let mut v = vec![[0.0; 2]; self.x_mm.len()];
        v[node][0] = force_n;
        factor.solve(&mut v);
        v
    }
}

/// A bar of one diameter: the values that all its elements share.
struct Bar {
    diameter_mm: f64,
    /// `EI`, N·mm².
    ei: f64,
    /// `12 EI / (κ G A)`, mm². Divided by the square of the element's length it is the shear parameter `Φ`.
    shear: f64,
    /// `ρ A` (t/mm), and below it `ρ I` (t·mm), the rotary inertia per length.
    mass_per_mm: f64,
    turning_mass: f64,
}

impl Bar {
    fn new(material: &Elastic, diameter_mm: f64) -> Bar {
        let (area, inertia) = (material.area_mm2(diameter_mm), material.inertia_mm4(diameter_mm));
        let ei = material.e_n_per_mm2 * inertia;
        Bar {
            diameter_mm,
            ei,
            shear: 12.0 * ei / (material.shear_coefficient(diameter_mm) * material.shear_modulus() * area),
            mass_per_mm: material.density_t_per_mm3 * area,
            turning_mass: material.density_t_per_mm3 * inertia,
        }
    }

    #[inline]
    fn element(&self, length: f64) -> Element {
        let (l, l2, per_l) = (length, length * length, 1.0 / length);
        let p = self.shear * per_l * per_l;
        let per_one = 1.0 / (1.0 + p);
        // `k = EI / ((1+Φ) L³)`.
        let k = self.ei * per_one * per_l * per_l * per_l;
        // `ρ A L / (1+Φ)²` and `ρ I / ((1+Φ)² L)`.
        let t = self.mass_per_mm * l * per_one * per_one;
        let r = self.turning_mass * per_one * per_one * per_l;
        let p2 = p * p;
        let w = self.mass_per_mm * GRAVITY_MM_PER_S2;
        let turns = r * (0.1 - 0.5 * p);
        Element {
            stiff: [12.0 * k, 6.0 * l * k, (4.0 + p) * l2 * k, (2.0 - p) * l2 * k],
            mass: [
                t * (13.0 / 35.0 + 0.7 * p + p2 * (1.0 / 3.0)) + r * 1.2,
                (t * (11.0 / 210.0 + p * (11.0 / 120.0) + p2 * (1.0 / 24.0)) + turns) * l,
                (t * (1.0 / 105.0 + p * (1.0 / 60.0) + p2 * (1.0 / 120.0))
                    + r * (2.0 / 15.0 + p * (1.0 / 6.0) + p2 * (1.0 / 3.0)))
                    * l2,
                t * (9.0 / 70.0 + 0.3 * p + p2 * (1.0 / 6.0)) - r * 1.2,
                (turns - t * (13.0 / 420.0 + p * (3.0 / 40.0) + p2 * (1.0 / 24.0))) * l,
                (r * (p2 * (1.0 / 6.0) - 1.0 / 30.0 - p * (1.0 / 6.0))
                    - t * (1.0 / 140.0 + p * (1.0 / 60.0) + p2 * (1.0 / 120.0)))
                    * l2,
            ],
            weight: [0.5 * w * l, w * l2 * (1.0 / 12.0)],
        }
    }
}

/// One two-node Timoshenko element: the independent entries of its stiffness and mass matrices, and its weight.
#[derive(Clone, Copy, Default)]
struct Element {
    /// Entries 11, 12, 22, 24; the other entries follow from symmetry.
    stiff: [f64; 4],
    /// Entries 11, 12, 22, 13, 14, 24.
    mass: [f64; 6],
    /// Work-equivalent load of the weight at the front node, N and N·mm.
    weight: [f64; 2],
}

impl Element {
    /// The blocks of stiffness and mass that couple the front node (rows) with the rear node (columns).
    #[inline]
    fn across(&self) -> (Mat2, Mat2) {
        let ([k11, k12, _, k24], [_, _, _, m13, m14, m24]) = (self.stiff, self.mass);
        ([-k11, k12, -k12, k24], [m13, m14, -m14, m24])
    }
}

/// Stiffness, mass and weight at a node between two elements. The node is the rear end of the front element, where the terms of the
/// slope have the opposite sign.
#[inline]
fn met(front: &Element, rear: &Element) -> (Sym2, Sym2, [f64; 2]) {
    let ([k11, k12, k22, _], [m11, m12, m22, ..]) = (front.stiff, front.mass);
    let ([l11, l12, l22, _], [n11, n12, n22, ..]) = (rear.stiff, rear.mass);
    (
        Sym2 { a: k11 + l11, b: l12 - k12, c: k22 + l22 },
        Sym2 { a: m11 + n11, b: n12 - m12, c: m22 + n22 },
        [front.weight[0] + rear.weight[0], rear.weight[1] - front.weight[1]],
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    const STEEL: Elastic = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };

    /// By hand: F L³/(48 E I) + F L/(4 κ G A) + F/(2 k) for 10 N, 100 mm, diameter 8 mm, two springs of 50 N/µm.
    #[test]
    fn a_rod_on_two_springs_bends_shears_and_settles() {
        let springs = [Spring { at_mm: 0.0, n_per_mm: 50_000.0 }, Spring { at_mm: 100.0, n_per_mm: 50_000.0 }];
        let beam = Beam::new(&STEEL, &mut vec![0.0, 50.0, 100.0], |_| 8.0, &springs);
        let f = beam.factor().expect("held");
        let middle = beam.under_force(&f, 1, 10.0)[1][0];
        assert!((middle - 0.005_200_749).abs() < 1e-9, "{middle}");
    }

    /// By hand for 10 mm with a bore of 6 mm: `π(10⁴ - 6⁴)/64` = 427.26 mm⁴, `π(10² - 6²)/4` = 50.265 mm², `m²` = 0.36 and `ν` = 0.3:
    /// `7.8 · 1.8496/(8.8 · 1.8496 + 23.6 · 0.36)` = 0.582375. A wall of nothing: `2(1+ν)/(4+3ν)`.
    #[test]
    fn a_bore_takes_its_part() {
        let tube = Elastic { bore_mm: 6.0, ..STEEL };
        assert!((tube.inertia_mm4(10.0) - 427.256_6).abs() < 1e-4);
        assert!((tube.area_mm2(10.0) - 50.265_48).abs() < 1e-5);
        assert!((tube.shear_coefficient(10.0) - 0.582_375).abs() < 1e-6);
        assert!((tube.shear_coefficient(6.000_001) - 2.6 / 4.9).abs() < 1e-6);
        assert!((STEEL.shear_coefficient(10.0) - 7.8 / 8.8).abs() < 1e-15);
        let solid = STEEL.twist_per_nmm(10.0, 50.0);
        assert!((tube.twist_per_nmm(10.0, 50.0) / solid - 1.0 / (1.0 - 0.1296)).abs() < 1e-12);
    }

    #[test]
    fn a_beam_on_one_spring_is_not_held() {
        let springs = [Spring { at_mm: 0.0, n_per_mm: 50_000.0 }];
        let beam = Beam::new(&STEEL, &mut vec![0.0, 100.0], |_| 8.0, &springs);
        assert_eq!(beam.factor().err(), Some(Unheld));
    }

    #[test]
    fn the_mass_matrix_holds_the_mass_of_the_bar() {
        let beam = Beam::new(&STEEL, &mut vec![0.0, 3.0, 100.0], |_| 8.0, &[]);
        let ones = vec![[1.0, 0.0]; 3];
        let mut out = Vec::new();
        beam.mass.multiply(&ones, &mut out);
        let total: f64 = out.iter().map(|v| v[0]).sum();
        assert!((total - 7.85e-9 * area_mm2(8.0) * 100.0).abs() < 1e-18);
        let weight: f64 = beam.weight.iter().map(|v| v[0]).sum();
        assert!((weight - total * 9810.0).abs() < 1e-12);
    }
}
