//! The modes that move one node, and the share of each in the receptance at this node.
//!
//! This is the Lanczos method on `K⁻¹M`; the start vector is the deflection under a unit force at the node. The Ritz values converge to
//! the modes that move the node, the lowest frequency first. The first entries of the eigenvectors of the tridiagonal matrix tell how
//! far each mode moves the node, so no mode shape is computed. A mode that does not move the node never appears; its share is zero.
//! One inertia count tells how many modes lie below a frequency.
//! Source: Golub & Meurant, Matrices, Moments and Quadrature (2010), chapters 4 and 6 (from memory).

use super::beam::{Beam, Unheld};
use super::modes::dot;
use std::ops::RangeInclusive;

/// Lanczos steps at first, and steps added each time if these are too few.
const STEPS: usize = 32;
const MORE_STEPS: usize = 24;
/// A Ritz value has converged when its residual is below this share of the value. The error of the value is of the order of the
/// squared residual.
const FOUND: f64 = 1e-7;
/// The inertia count is made this share above the eigenvalue that a Ritz value stands for.
const ABOVE: f64 = 1e-6;
/// Number of basis vectors that are removed from a vector in one pass.
const TOGETHER: usize = 4;
/// The Krylov space is exhausted when orthogonalisation leaves less than this share of a new vector's length.
const USED_UP: f64 = 1e-12;

/// Share of one mode in the receptance at a node.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Share {
    /// Angular frequency, rad/s.
    pub omega: f64,
    /// Square of the node's deflection in the mode shape scaled to a modal mass of one tonne, 1/t.
    pub per_t: f64,
}

/// The receptance at a node, mode by mode. Lanczos steps are added when they are asked for.
pub struct Receptance<'a> {
    beam: &'a Beam,
    factor: super::factor::Factor,
    /// Static flexibility at the node, mm/N.
    pub static_mm_per_n: f64,
    /// `M`-orthonormal Lanczos basis, and below it the product of each basis vector with `M`.
    basis: Vec<Vec<[f64; 2]>>,
    mass_basis: Vec<Vec<[f64; 2]>>,
    /// Diagonal, and below it off-diagonal, of the tridiagonal Lanczos matrix.
    alpha: Vec<f64>,
    beta: Vec<f64>,
    /// `M`-norm of the start vector.
    start: f64,
    used_up: bool,
}

impl<'a> Receptance<'a> {
    /// Prepares the Lanczos method for a node.
    ///
    /// # Errors
    /// [`Unheld`] when the springs leave a free motion.
    pub fn new(beam: &'a Beam, node: usize) -> Result<Receptance<'a>, Unheld> {
        let factor = beam.factor()?;
        let mut first = beam.under_force(&factor, node, 1.0);
        let static_mm_per_n = first[node][0];
        let mut mass = Vec::with_capacity(first.len());
        beam.mass.multiply(&first, &mut mass);
        let start = dot(&first, &mass).sqrt();
        scale(&mut first, 1.0 / start);
        scale(&mut mass, 1.0 / start);
        Ok(Receptance {
            beam,
            factor,
            static_mm_per_n,
            basis: vec![first],
            mass_basis: vec![mass],
            alpha: Vec::new(),
            beta: Vec::new(),
            start,
            used_up: false,
        })
    }

    /// Shares of those among the lowest `count` modes of the beam that move the node, ascending in frequency.
    pub fn lowest(&mut self, count: usize) -> Vec<Share> {
        self.extend(STEPS.max(count));
        loop {
            let (found, all) = self.ritz();
            let all_found = found == all.len() || self.used_up;
            let known = &all[..if self.used_up { all.len() } else { found }];
            let below = |share: &Share| {
                let lambda = share.omega * share.omega * (1.0 + ABOVE);
                self.beam.stiffness.eigenvalues_below(&self.beam.mass, lambda, count + 1)
            };
            // The count of modes up to a Ritz value grows with the value, so bisection finds the last one among the lowest `count`.
            if all_found || known.last().is_some_and(|s| below(s) >= count) {
                let within = known.partition_point(|s| below(s) <= count);
                return known[..within].to_vec();
            }
            self.extend(self.alpha.len() + MORE_STEPS);
        }
    }

    /// Shares of the modes that have converged after at least `steps` steps. They are some of the lowest modes of the beam.
    pub fn after(&mut self, steps: usize) -> Vec<Share> {
        self.extend(steps);
        let (found, all) = self.ritz();
        all[..if self.used_up { all.len() } else { found }].to_vec()
    }

    fn extend(&mut self, steps: usize) {
        let steps = steps.min(2 * self.beam.x_mm.len());
        while self.alpha.len() < steps && !self.used_up {
            let j = self.alpha.len();
            let mut next = self.mass_basis[j].clone();
            self.factor.solve(&mut next);
            let length = |v: &[[f64; 2]]| dot(v, v).sqrt();
            let before = length(&next);
            // First the last two basis vectors are removed, which is enough in exact arithmetic. Then all are removed, to take away what
            // rounding left: "twice is enough" (Parlett 1980, section 6.9, from memory).
            let mut here = self.take_out(&mut next, j.saturating_sub(1)..=j);
            here += self.take_out(&mut next, 0..=j);
            self.alpha.push(here);
            let mut mass = Vec::with_capacity(next.len());
            self.beam.mass.multiply(&next, &mut mass);
            let beta = dot(&next, &mass).max(0.0).sqrt();
            if length(&next) <= USED_UP * before || beta <= 0.0 || self.alpha.len() >= 2 * self.beam.x_mm.len() {
                self.used_up = true;
                return;
            }
            scale(&mut next, 1.0 / beta);
            scale(&mut mass, 1.0 / beta);
            self.beta.push(beta);
            self.basis.push(next);
            self.mass_basis.push(mass);
        }
    }

    /// Makes a vector `M`-orthogonal to some basis vectors, and returns the coefficient of the last one.
    fn take_out(&self, vector: &mut [[f64; 2]], directions: RangeInclusive<usize>) -> f64 {
        let (basis, mass) = (&self.basis[directions.clone()], &self.mass_basis[directions]);
        let mut last = 0.0;
        // Four at a time, so that the vector is read and written only a quarter as often.
        for (basis, mass) in basis.chunks(TOGETHER).zip(mass.chunks(TOGETHER)) {
            if let ([a, b, c, d], [ma, mb, mc, md]) = (basis, mass) {
                let shares = dots(vector, [ma, mb, mc, md]);
                let parts = a.as_flattened().iter().zip(b.as_flattened()).zip(c.as_flattened()).zip(d.as_flattened());
                for (x, (((a, b), c), d)) in vector.as_flattened_mut().iter_mut().zip(parts) {
                    *x -= shares[0] * a + shares[1] * b + shares[2] * c + shares[3] * d;
                }
                last = shares[3];
                continue;
            }
            for (basis, mass) in basis.iter().zip(mass) {
                last = dot(vector, mass);
                for (x, b) in vector.as_flattened_mut().iter_mut().zip(basis.as_flattened()) {
                    *x -= last * b;
                }
            }
        }
        last
    }

    /// How many of the lowest Ritz values have converged, and all Ritz values as modes, ascending in frequency.
    fn ritz(&self) -> (usize, Vec<Share>) {
        let m = self.alpha.len();
        let mut first = vec![0.0; m];
        let mut last = vec![0.0; m];
        first[0] = 1.0;
        last[m - 1] = 1.0;
        let mut theta = self.alpha.clone();
        let mut off = self.beta[..m - 1].to_vec();
        tridiagonal_eigen(&mut theta, &mut off, &mut first, &mut last);
        let mut order: Vec<usize> = (0..m).filter(|i| theta[*i] > 0.0).collect();
        order.sort_by(|a, b| theta[*b].total_cmp(&theta[*a]));
        let rest = self.beta.get(m - 1).copied().unwrap_or(0.0);
        let found = order.iter().take_while(|i| (rest * last[**i]).abs() <= FOUND * theta[**i]).count();
        let share = |i: &usize| {
            let lambda = 1.0 / theta[*i];
            Share { omega: lambda.sqrt(), per_t: (first[*i] * self.start * lambda).powi(2) }
        };
        (found, order.iter().map(share).collect())
    }
}

/// Scalar products of a vector with four others.
fn dots(vector: &[[f64; 2]], others: [&Vec<[f64; 2]>; TOGETHER]) -> [f64; TOGETHER] {
    let [a, b, c, d] = others.map(|o| o.as_slice());
    let mut sums = [[0.0; 2]; TOGETHER];
    for ((((x, a), b), c), d) in vector.iter().zip(a).zip(b).zip(c).zip(d) {
        for (sum, other) in sums.iter_mut().zip([a, b, c, d]) {
            sum[0] += x[0] * other[0];
            sum[1] += x[1] * other[1];
        }
    }
    sums.map(|[a, b]| a + b)
}

fn scale(v: &mut [[f64; 2]], by: f64) {
    for x in v {
        *x = [x[0] * by, x[1] * by];
    }
}

/// Eigenvalues of a symmetric tridiagonal matrix (in place, in `diag`), and the first and last entries of its eigenvectors. On entry
/// `first` and `last` are the first and last row of the unit matrix. Implicit QL method; `off` is overwritten.
/// Source: Golub & Welsch, Math. Comp. 23 (1969) (from memory).
fn tridiagonal_eigen(diag: &mut [f64], off: &mut Vec<f64>, first: &mut [f64], last: &mut [f64]) {
    let n = diag.len();
    off.push(0.0);
    for l in 0..n {
        // Thirty sweeps for each eigenvalue are far more than ever needed; then only rounding is left off the diagonal.
        for _ in 0..30 {
            let m = (l..n - 1).find(|m| off[*m].abs() <= f64::EPSILON * (diag[*m].abs() + diag[*m + 1].abs()));
            let m = m.unwrap_or(n - 1);
            if m == l {
                break;
            }
            let mut g = (diag[l + 1] - diag[l]) / (2.0 * off[l]);
            let mut r = g.hypot(1.0);
            g = diag[m] - diag[l] + off[l] / (g + r.copysign(g));
            let (mut s, mut c, mut p) = (1.0, 1.0, 0.0);
            let mut split = false;
            for i in (l..m).rev() {
                let (f, b) = (s * off[i], c * off[i]);
                // The values are far from overflow, so the ten times slower `hypot` is not needed.
                r = (f * f + g * g).sqrt();
                off[i + 1] = r;
                if r == 0.0 {
                    diag[i + 1] -= p;
                    off[m] = 0.0;
                    split = true;
                    break;
                }
                (s, c) = (f / r, g / r);
                g = diag[i + 1] - p;
                r = (diag[i] - g) * s + 2.0 * c * b;
                p = s * r;
                diag[i + 1] = g + p;
                g = c * r - b;
                for row in [&mut *first, &mut *last] {
                    let z = row[i + 1];
                    row[i + 1] = s * row[i] + c * z;
                    row[i] = c * row[i] - s * z;
                }
            }
            if split {
                continue;
            }
            diag[l] -= p;
            off[l] = g;
            off[m] = 0.0;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mechanics::beam::{Elastic, Spring};
    use crate::mechanics::modes::lowest_modes;

    fn beam(thick: bool) -> Beam {
        let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
        let springs: Vec<Spring> =
            [400.0, 440.0, 600.0, 640.0].map(|at_mm| Spring { at_mm, n_per_mm: 40_000.0 }).into();
        let mut points: Vec<f64> = (0..=128).map(|i| f64::from(i) * 5.0).collect();
        Beam::new(&steel, &mut points, |x| if thick || x > 395.0 { 20.0 } else { 12.0 }, &springs)
    }

    /// Compared with the modes computed one by one, with their shapes.
    #[test]
    fn shares_are_those_of_the_modes() {
        for (thick, at_mm) in [(true, 395.0), (false, 395.0), (false, 200.0)] {
            let beam = beam(thick);
            let node = beam.node(at_mm);
            let modes = lowest_modes(&beam, 30).expect("held");
            let mut seen = Receptance::new(&beam, node).expect("held");
            for count in [12, 30] {
                let shares = seen.lowest(count);
                let sum = |v: &mut dyn Iterator<Item = f64>| v.sum::<f64>();
                let ours = sum(&mut shares.iter().map(|s| s.per_t / (s.omega * s.omega)));
                let theirs = sum(&mut modes[..count].iter().map(|m| m.shape[node][0].powi(2) / (m.omega * m.omega)));
                assert!((ours / theirs - 1.0).abs() < 1e-6, "{count}: {ours} {theirs}");
                assert!(ours <= seen.static_mm_per_n * (1.0 + 1e-12));
                for share in shares.iter().filter(|s| s.per_t > 1e-3 * shares[0].per_t) {
                    let near = modes.iter().map(|m| (m.omega / share.omega - 1.0).abs()).fold(1.0, f64::min);
                    assert!(near < 1e-7, "{} rad/s: {near}", share.omega);
                }
            }
        }
    }

    /// The shares of all modes of a small mesh add up to the static flexibility.
    #[test]
    fn all_modes_together_are_the_static_flexibility() {
        let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
        let springs: Vec<Spring> = [0.0, 40.0].map(|at_mm| Spring { at_mm, n_per_mm: 40_000.0 }).into();
        let beam = Beam::new(&steel, &mut vec![0.0, 40.0, 70.0, 100.0], |_| 12.0, &springs);
        let mut seen = Receptance::new(&beam, 3).expect("held");
        let sum: f64 = seen.lowest(60).iter().map(|s| s.per_t / (s.omega * s.omega)).sum();
        assert!((sum / seen.static_mm_per_n - 1.0).abs() < 1e-9, "{sum} {}", seen.static_mm_per_n);
    }
}
