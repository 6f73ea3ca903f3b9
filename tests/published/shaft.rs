//! A shaft as textbooks draw it (ideal pins and clamps, point masses, no shear), put into the beam of radial springs.
//!
//! Axes: x from the left end, deflection and load positive downwards, slope `dy/dx`. Units mm, N, t, s, rad.
//!
//! - **Pin**: one spring of [`STIFF`] times the shaft's own `EI/L³`. What it gives is about `48/STIFF` of the answer.
//! - **Clamp without shear**: the shaft goes on by a stub of [`STUB`] of its length and [`STUB_DIAMETER`] of its largest
//!   diameter, held by two such springs. By the shaft's own `L/EI`, the stub turns by `STUB/(3 STUB_DIAMETER⁴)` from
//!   bending, `2/(STIFF STUB²)` on its springs and `STUB³/(24 STUB_DIAMETER²)` under its own weight: 2e-9 together.
//! - **Clamp with shear**: a section between two springs can still turn by shearing, and a stub thick enough against
//!   that has so much rotary inertia that it swings. So the slope is held itself, by [`STIFF`] times `EI/L`.
//! - **No shear**: in the product `κG = 3E/(7+6ν)`, which is all that the beam uses, `ν` just above -7/6 makes the
//!   shear flexibility [`SHEAR_LEFT`] of what it is at `ν = 0`. There is no such material; the formula has such a place.
//! - **No rotary inertia**: lengths times `q`, diameters times `q²`, point masses times `q⁵` leave all Euler–Bernoulli
//!   frequencies where they are, and take rotary inertia down by `q²`. The twin with `q` = [`SLENDER`] is solved; at
//!   L/d = 3 rotary inertia then lowers the first frequency by 1.3e-7.

use spanhold::mechanics::beam::{Beam, Elastic, Spring};
use spanhold::mechanics::modes;

const STIFF: f64 = 1e12;
const STUB: f64 = 0.05;
const STUB_DIAMETER: f64 = 100.0;
const SHEAR_LEFT: f64 = 1e-7;
const SLENDER: f64 = 0.002;
/// Elements of the whole shaft. The third frequency of the mesh is then within 1e-7 of the converged one.
const ELEMENTS: usize = 80;

/// Steel of the derived numbers.
pub const STEEL: Elastic = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };

/// The same material without shear flexibility.
pub fn rigid_in_shear(m: Elastic) -> Elastic {
    Elastic { poisson: -7.0 / 6.0 * (1.0 - SHEAR_LEFT), ..m }
}

/// A support.
#[derive(Debug, Clone, Copy)]
pub enum Hold {
    /// A pin at x.
    Pin(f64),
    /// The left end is clamped.
    ClampLeft,
    /// The right end is clamped.
    ClampRight,
    /// A spring at x, N/mm.
    Soft(f64, f64),
    /// The left end stands on a radial spring (N/mm) and a rotational one (N·mm/rad).
    Root(f64, f64),
}

/// A shaft.
#[derive(Debug, Clone)]
pub struct Shaft {
    /// Length and diameter of each step from the left, mm.
    pub steps: Vec<(f64, f64)>,
    /// Elastic properties; shear as given.
    pub material: Elastic,
    /// Supports.
    pub holds: Vec<Hold>,
    /// Place (mm) and mass (t) of point masses.
    pub masses: Vec<(f64, f64)>,
}

impl Shaft {
    /// A uniform steel shaft without shear.
    pub fn uniform(length: f64, d: f64, holds: &[Hold]) -> Shaft {
        Shaft::stepped(&[(length, d)], holds)
    }

    /// A stepped steel shaft without shear.
    pub fn stepped(steps: &[(f64, f64)], holds: &[Hold]) -> Shaft {
        Shaft { steps: steps.to_vec(), material: rigid_in_shear(STEEL), holds: holds.to_vec(), masses: Vec::new() }
    }

    /// Of another material, as given.
    pub fn of(mut self, material: Elastic) -> Shaft {
        self.material = material;
        self
    }

    /// Whole length, mm.
    pub fn length(&self) -> f64 {
        self.steps.iter().map(|s| s.0).sum()
    }

    /// The twin of the same Euler–Bernoulli frequencies and sag, with next to no rotary inertia.
    pub fn slender_twin(&self) -> Shaft {
        let q = SLENDER;
        let holds = self.holds.iter().map(|h| match *h {
            Hold::Pin(x) => Hold::Pin(q * x),
            Hold::Soft(x, k) => Hold::Soft(q * x, k * q.powi(5)),
            Hold::Root(k, turn) => Hold::Root(k * q.powi(5), turn * q.powi(7)),
            clamp => clamp,
        });
        Shaft {
            steps: self.steps.iter().map(|(l, d)| (q * l, q * q * d)).collect(),
            material: rigid_in_shear(self.material),
            holds: holds.collect(),
            masses: self.masses.iter().map(|(x, m)| (q * x, m * q.powi(5))).collect(),
        }
    }

    fn beam(&self, points: &[f64]) -> Beam {
        let length = self.length();
        let widest = self.steps.iter().fold(0.0, |a: f64, s| a.max(s.1));
        let ei = self.material.e_n_per_mm2 * std::f64::consts::PI * widest.powi(4) / 64.0;
        let stiff = STIFF * ei / length.powi(3);
        let stub = STUB * length;
        let mut at: Vec<f64> = (0..=ELEMENTS).map(|i| length * i as f64 / ELEMENTS as f64).collect();
        at.extend(points);
        at.extend(self.masses.iter().map(|m| m.0));
        let mut edges = vec![];
        let mut x = 0.0;
        for (l, d) in &self.steps {
            x += l;
            edges.push((x, *d));
        }
        at.extend(edges.iter().map(|e| e.0));
        let mut springs = Vec::new();
        // Slopes held directly: the beam itself has radial springs only, so these go into its matrix by hand.
        let mut slopes = Vec::new();
        let sheared = self.material.poisson > -1.0;
        for hold in &self.holds {
            match *hold {
                Hold::Pin(x) => springs.push(Spring { at_mm: x, n_per_mm: stiff }),
                Hold::Soft(x, k) => springs.push(Spring { at_mm: x, n_per_mm: k }),
                Hold::Root(k, turn) => {
                    springs.push(Spring { at_mm: 0.0, n_per_mm: k });
                    slopes.push((0.0, turn));
                }
                Hold::ClampLeft | Hold::ClampRight if sheared => {
                    let x = if matches!(hold, Hold::ClampLeft) { 0.0 } else { length };
                    springs.push(Spring { at_mm: x, n_per_mm: stiff });
                    slopes.push((x, stiff * length * length));
                }
                Hold::ClampLeft => springs.extend([-stub, 0.0].map(|x| Spring { at_mm: x, n_per_mm: stiff })),
                Hold::ClampRight => {
                    springs.extend([length, length + stub].map(|x| Spring { at_mm: x, n_per_mm: stiff }));
                }
            }
        }
        at.extend(springs.iter().map(|s| s.at_mm));
        let diameter = |x: f64| match edges.iter().find(|e| x < e.0) {
            _ if x < 0.0 => STUB_DIAMETER * widest,
            Some(e) => e.1,
            None => STUB_DIAMETER * widest,
        };
        let mut beam = Beam::new(&self.material, &mut at, diameter, &springs);
        for (x, turn) in slopes {
            let node = beam.node(x);
            beam.stiffness.diag[node].c += turn;
        }
        for (x, m) in &self.masses {
            let node = beam.node(*x);
            beam.mass.diag[node].a += m;
        }
        beam
    }

    /// Deflection (mm) and slope (rad) at places under point loads (place, N).
    pub fn bend(&self, loads: &[(f64, f64)], places: &[f64]) -> Vec<[f64; 2]> {
        let points: Vec<f64> = loads.iter().map(|l| l.0).chain(places.iter().copied()).collect();
        let beam = self.beam(&points);
        let factor = beam.factor().expect("held");
        let mut sum = vec![[0.0; 2]; places.len()];
        for (x, p) in loads {
            let v = beam.under_force(&factor, beam.node(*x), *p);
            for (s, at) in sum.iter_mut().zip(places) {
                let y = v[beam.node(*at)];
                *s = [s[0] + y[0], s[1] + y[1]];
            }
        }
        sum
    }

    /// Deflection at a place under one load, mm.
    pub fn deflection(&self, load_at: f64, force: f64, at: f64) -> f64 {
        self.bend(&[(load_at, force)], &[at])[0][0]
    }

    fn sag_and_slope(&self, at: f64) -> [f64; 2] {
        let beam = self.beam(&[at]);
        let factor = beam.factor().expect("held");
        beam.sag(&factor)[beam.node(at)]
    }

    /// Self-weight deflection at a place, mm.
    pub fn sag(&self, at: f64) -> f64 {
        self.sag_and_slope(at)[0]
    }

    /// Slope under self-weight at a place, rad.
    pub fn sag_slope(&self, at: f64) -> f64 {
        self.sag_and_slope(at)[1]
    }

    /// Largest self-weight deflection at any node, mm; the mesh is fine enough to stand within 1e-4 of its top.
    pub fn greatest_sag(&self, near: f64) -> f64 {
        let places: Vec<f64> = (-40..=40).map(|i| near + 0.001 * f64::from(i) * self.length()).collect();
        let beam = self.beam(&places);
        let factor = beam.factor().expect("held");
        let sag = beam.sag(&factor);
        sag.iter()
            .zip(&beam.x_mm)
            .filter(|(_, x)| (0.0..=self.length()).contains(*x))
            .fold(0.0, |a: f64, (v, _)| a.max(v[0]))
    }

    /// Angular frequencies with shear and rotary inertia as the material has them, rad/s. The first comes from
    /// `lowest_mode`, which the planner uses; it must be the first of `lowest_modes` too.
    pub fn omegas(&self, count: usize) -> Vec<f64> {
        let beam = self.beam(&[]);
        let mut omegas: Vec<f64> = modes::lowest_modes(&beam, count).expect("held").iter().map(|m| m.omega).collect();
        let lowest = modes::lowest_mode(&beam, &beam.factor().expect("held")).omega;
        assert!((lowest - omegas[0]).abs() <= 1e-5 * lowest, "lowest_mode {lowest}, lowest_modes {}", omegas[0]);
        omegas[0] = lowest;
        omegas
    }

    /// Euler–Bernoulli angular frequencies, rad/s.
    pub fn euler_omegas(&self, count: usize) -> Vec<f64> {
        self.slender_twin().omegas(count)
    }

    /// Rayleigh's estimate with the shape under self-weight, Euler–Bernoulli, rad/s.
    pub fn rayleigh_omega(&self) -> f64 {
        let beam = self.slender_twin().beam(&[]);
        let v = beam.sag(&beam.factor().expect("held"));
        let mut mv = Vec::new();
        beam.mass.multiply(&v, &mut mv);
        let dot =
            |a: &[[f64; 2]], b: &[[f64; 2]]| -> f64 { a.iter().zip(b).map(|(p, q)| p[0] * q[0] + p[1] * q[1]).sum() };
        (dot(&v, &beam.weight) / dot(&v, &mv)).sqrt()
    }
}
