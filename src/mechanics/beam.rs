//! A straight, solid, round, stepped Timoshenko beam on radial springs to ground.
//!
//! Elements are the exact two-node Timoshenko element with consistent mass and rotary inertia. Static answers are
//! exact at nodes for any mesh (the shape functions are the exact solutions of the unloaded element, and distributed
//! weight enters by its work-equivalent nodal loads). Bending stiffness of holes and keyseats is not reduced.
//!
//! Sources: element: Przemieniecki, Theory of Matrix Structural Analysis (1968), sections 5.6 and 11.5; Davis,
//! Henshell & Warburton, J. Sound Vib. 22 (1972) (both from memory). Shear coefficient: Cowper, J. Appl. Mech. 33 (1966).

use super::banded::{BlockTri, Factor};
use crate::units::GRAVITY_MM_PER_S2;
use std::f64::consts::PI;

/// Nodes closer than this are one node, mm. Below it an element would only add rounding.
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
}

impl Elastic {
    /// Shear modulus, N/mm².
    pub fn shear_modulus(&self) -> f64 {
        self.e_n_per_mm2 / (2.0 * (1.0 + self.poisson))
    }

    /// Shear coefficient of a solid circle, `6(1+ν)/(7+6ν)`: Cowper, J. Appl. Mech. 33 (1966).
    pub fn shear_coefficient(&self) -> f64 {
        6.0 * (1.0 + self.poisson) / (7.0 + 6.0 * self.poisson)
    }
}

/// Second moment of area of a solid circle, mm⁴.
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

/// The beam is not held: it has a free rigid motion.
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
    /// - `diameter_mm`: the diameter between two neighbouring nodes, asked for at their middle with ascending places.
    /// - `springs`: each is put on the nearest node, so include its place in the points.
    pub fn new(
        material: &Elastic,
        points_mm: &mut Vec<f64>,
        mut diameter_mm: impl FnMut(f64) -> f64,
        springs: &[Spring],
    ) -> Beam {
        points_mm.sort_by(f64::total_cmp);
        points_mm.dedup_by(|b, a| *b - *a < MERGE_MM);
        let n = points_mm.len();
        let (mut k, mut m) = (BlockTri::zeros(n), BlockTri::zeros(n));
        let mut weight = vec![[0.0; 2]; n];
        let shear = material.shear_coefficient() * material.shear_modulus();
        for i in 0..n.saturating_sub(1) {
            let length = points_mm[i + 1] - points_mm[i];
            let d = diameter_mm(0.5 * (points_mm[i + 1] + points_mm[i]));
            // Worked out anew even where lengths repeat to rounding: one rounding error many times over adds up.
            let element = Element::new(material, shear, length, d);
            element.add_to(&mut k, &mut m, i);
            weight[i][0] += element.weight[0];
            weight[i][1] += element.weight[1];
            weight[i + 1][0] += element.weight[0];
            weight[i + 1][1] -= element.weight[1];
        }
        let beam = Beam { x_mm: points_mm.clone(), stiffness: k, mass: m, weight };
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

    /// Factors the stiffness. Error when the beam is not held.
    pub fn factor(&self) -> Result<Factor<'_>, Unheld> {
        self.stiffness.factor().ok_or(Unheld)
    }

    /// Deflection (mm) and slope of every node under its own weight; positive is down.
    pub fn sag(&self, factor: &Factor<'_>) -> Vec<[f64; 2]> {
        let mut v = self.weight.clone();
        factor.solve(&mut v);
        v
    }

    /// Deflection (mm) and slope of every node under a force in N at a node.
    pub fn under_force(&self, factor: &Factor<'_>, node: usize, force_n: f64) -> Vec<[f64; 2]> {
        let mut v = vec![[0.0; 2]; self.x_mm.len()];
        v[node][0] = force_n;
        factor.solve(&mut v);
        v
    }
}

/// One two-node Timoshenko element: entries of its stiffness and its mass.
#[derive(Clone, Copy)]
struct Element {
    /// `12 k`, `6 k L`, `(4 + Φ) k L²`, `(2 - Φ) k L²` with `k = EI / ((1+Φ) L³)`.
    stiff: [f64; 4],
    /// Entries 11, 12, 22, 13, 14, 24.
    mass: [f64; 6],
    /// Its weight at either node, N and N·mm.
    weight: [f64; 2],
}

impl Element {
    fn new(material: &Elastic, shear: f64, length: f64, diameter: f64) -> Element {
        let (area, inertia) = (area_mm2(diameter), inertia_mm4(diameter));
        let ei = material.e_n_per_mm2 * inertia;
        let (l, l2) = (length, length * length);
        // Shear parameter `Φ = 12 EI / (κ G A L²)`.
        let p = 12.0 * ei / (shear * area * l * l);
        let one = 1.0 + p;
        let k = ei / (one * l.powi(3));
        // `ρ A L / (1+Φ)²` and `ρ I / ((1+Φ)² L)`.
        let t = material.density_t_per_mm3 * area * l / (one * one);
        let r = material.density_t_per_mm3 * inertia / (one * one * l);
        let w = material.density_t_per_mm3 * area * GRAVITY_MM_PER_S2;
        Element {
            stiff: [12.0 * k, 6.0 * l * k, (4.0 + p) * l2 * k, (2.0 - p) * l2 * k],
            mass: [
                t * (13.0 / 35.0 + 0.7 * p + p * p / 3.0) + r * 1.2,
                (t * (11.0 / 210.0 + 11.0 * p / 120.0 + p * p / 24.0) + r * (0.1 - 0.5 * p)) * l,
                (t * (1.0 / 105.0 + p / 60.0 + p * p / 120.0) + r * (2.0 / 15.0 + p / 6.0 + p * p / 3.0)) * l2,
                t * (9.0 / 70.0 + 0.3 * p + p * p / 6.0) - r * 1.2,
                (-t * (13.0 / 420.0 + 3.0 * p / 40.0 + p * p / 24.0) + r * (0.1 - 0.5 * p)) * l,
                (-t * (1.0 / 140.0 + p / 60.0 + p * p / 120.0) + r * (-1.0 / 30.0 - p / 6.0 + p * p / 6.0)) * l2,
            ],
            weight: [0.5 * w * l, w * l * l / 12.0],
        }
    }

    fn add_to(&self, k: &mut BlockTri, m: &mut BlockTri, i: usize) {
        let [k11, k12, k22, k24] = self.stiff;
        add_block(k, i, [k11, k12, k22], [-k11, k12, -k12, k24]);
        let [m11, m12, m22, m13, m14, m24] = self.mass;
        add_block(m, i, [m11, m12, m22], [m13, m14, -m14, m24]);
    }
}

/// Adds an element between nodes `i` and `i + 1`: its own block at the front node, which the rear node mirrors, and the
/// coupling of the two.
fn add_block(matrix: &mut BlockTri, i: usize, [own, tilt, turn]: [f64; 3], coupling: [f64; 4]) {
    let (front, rear) = matrix.diag.split_at_mut(i + 1);
    front[i].a += own;
    front[i].b += tilt;
    front[i].c += turn;
    rear[0].a += own;
    rear[0].b -= tilt;
    rear[0].c += turn;
    matrix.upper[i] = coupling;
}

#[cfg(test)]
mod tests {
    use super::*;

    const STEEL: Elastic = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9 };

    /// By hand: F L³/(48 E I) + F L/(4 κ G A) + F/(2 k): 10 N, 100 mm, d 8, two springs of 50 N/µm.
    #[test]
    fn a_rod_on_two_springs_bends_shears_and_settles() {
        let springs = [Spring { at_mm: 0.0, n_per_mm: 50_000.0 }, Spring { at_mm: 100.0, n_per_mm: 50_000.0 }];
        let beam = Beam::new(&STEEL, &mut vec![0.0, 50.0, 100.0], |_| 8.0, &springs);
        let f = beam.factor().expect("held");
        let middle = beam.under_force(&f, 1, 10.0)[1][0];
        assert!((middle - 0.005_200_749).abs() < 1e-9, "{middle}");
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
