//! Natural frequencies and mode shapes of the beam.
//!
//! Frequencies come from inverse iteration and from inertia counts of `K - ω²M`, which prove that no mode is missed.

use super::banded::BlockTri;
use super::beam::{Beam, Unheld};
use super::factor::Factor;

/// The iteration has converged when the Rayleigh quotient changes by less than this share.
const RAYLEIGH_SETTLED: f64 = 1e-7;
/// The inertia count is made this share below the Rayleigh quotient. So this share is an upper bound for the error of the eigenvalue.
const INERTIA_GUARD: f64 = 2e-5;
/// Bisection stops at this relative width of the bracket.
const BISECTION_WIDTH: f64 = 1e-10;
/// Shifted inverse iterations before the iteration with two vectors is used.
const SHIFTS: usize = 3;
/// Iterations with two vectors before bisection is used.
const ITERATIONS: usize = 16;

/// A vibration mode.
#[derive(Debug, Clone)]
pub struct Mode {
    /// Angular frequency, rad/s.
    pub omega: f64,
    /// Shape, scaled to a modal mass of one tonne.
    pub shape: Vec<[f64; 2]>,
}

/// Scalar product of two vectors of equal length.
///
/// It keeps eight independent sums: in a single sum every addition would have to wait for the one before.
pub(super) fn dot(a: &[[f64; 2]], b: &[[f64; 2]]) -> f64 {
    let (a, b) = (a.as_flattened().chunks_exact(8), b.as_flattened().chunks_exact(8));
    let rest: f64 = a.remainder().iter().zip(b.remainder()).map(|(x, y)| x * y).sum();
    let mut sums = [0.0; 8];
    for (x, y) in a.zip(b) {
        for (sum, (x, y)) in sums.iter_mut().zip(x.iter().zip(y)) {
            *sum += x * y;
        }
    }
    sums.iter().sum::<f64>() + rest
}

/// Lowest mode of the beam; its frequency is within 0.001 % of the exact value for this mesh.
///
/// Inverse iteration with a shift comes first. If it does not converge, or if a lower mode exists, `of_two` computes the mode.
/// Either way one inertia count proves that no lower mode was missed. The shape is an estimate, good enough to tell where the bar
/// moves most.
/// Source: Parlett, The Symmetric Eigenvalue Problem (1980), chapter 4 (from memory).
pub fn lowest_mode(beam: &Beam, factor: &Factor) -> Mode {
    let (k, m) = (&beam.stiffness, &beam.mass);
    // In many layouts the overhang and the span sag to opposite sides. The absolute value gives a start vector with a share of both.
    let start: Vec<[f64; 2]> = beam.sag(factor).iter().map(|v| [v[0].abs() + 1e-12, 0.0]).collect();
    let mut mx = Vec::with_capacity(start.len());
    m.multiply(&start, &mut mx);
    let mut moved = Vec::with_capacity(start.len());
    // One step of inverse iteration without a shift. Its Rayleigh quotient is never below the lowest eigenvalue.
    let step = |mx: &mut Vec<[f64; 2]>, moved: &mut Vec<[f64; 2]>| {
        let mut x = mx.clone();
        factor.solve(&mut x);
        m.multiply(&x, moved);
        let lambda = dot(&x, mx) / dot(&x, moved);
        std::mem::swap(mx, moved);
        (x, lambda)
    };
    let (_, mut lambda) = step(&mut mx, &mut moved);
    for _ in 0..SHIFTS {
        let mut y = mx.clone();
        k.solve_shifted(m, lambda, &mut y);
        m.multiply(&y, &mut moved);
        let length = dot(&y, &moved);
        let expected = lambda + dot(&y, &mx) / length;
        let scale = length.sqrt().recip();
        mx.clear();
        mx.extend(moved.iter().map(|v| [v[0] * scale, v[1] * scale]));
        let (x, next) = step(&mut mx, &mut moved);
        lambda = next;
        // Each step at least squares the error, so a small difference means convergence.
        if (expected - lambda).abs() <= RAYLEIGH_SETTLED * lambda {
            let lower = !k.swings_above(m, lambda * (1.0 - INERTIA_GUARD));
            return if lower { of_two(beam, factor) } else { Mode { omega: lambda.sqrt(), shape: x } };
        }
    }
    of_two(beam, factor)
}

/// Lowest mode of the beam where the iteration with one vector fails: two modes of nearly equal frequency slow it down, or it
/// converges to a higher mode.
///
/// This is subspace iteration with two vectors, so two modes of nearly equal frequency (a span and an overhang that vibrate
/// independently) do not slow it down. One inertia count proves that no lower mode was missed; if one was missed, bisection with
/// inertia counts finds it. The shape is an estimate, good enough to tell where the bar moves most.
/// Source: Bathe, Finite Element Procedures (1996), section 11.6 (from memory).
fn of_two(beam: &Beam, factor: &Factor) -> Mode {
    let n = beam.x_mm.len();
    let middle = 0.5 * (beam.x_mm[0] + beam.x_mm[n - 1]);
    // In many layouts the overhang and the span sag to opposite sides. The absolute value gives a first start vector with a share of
    // both modes; the second is weighted along the beam, so that the two vectors can separate the modes.
    let mut w: [Vec<[f64; 2]>; 2] = [Vec::with_capacity(n), Vec::with_capacity(n)];
    for (v, x) in beam.sag(factor).iter().zip(&beam.x_mm) {
        let sag = v[0].abs() + 1e-12;
        w[0].push([sag, 0.0]);
        w[1].push([sag * (x - middle), 0.0]);
    }
    let mut mw = [Vec::with_capacity(n), Vec::with_capacity(n)];
    let mut mv = [Vec::with_capacity(n), Vec::with_capacity(n)];
    for (v, m) in w.iter().zip(&mut mw) {
        beam.mass.multiply(v, m);
    }
    let mut lambda = f64::INFINITY;
    for _ in 0..ITERATIONS {
        let mut v = [mw[0].clone(), mw[1].clone()];
        for (x, m) in v.iter_mut().zip(&mut mv) {
            factor.solve(x);
            beam.mass.multiply(x, m);
        }
        let a = [dot(&v[0], &mw[0]), dot(&v[0], &mw[1]), dot(&v[1], &mw[1])];
        let b = [dot(&v[0], &mv[0]), dot(&v[0], &mv[1]), dot(&v[1], &mv[1])];
        let (next, turns) = lowest_of_two(a, b);
        for (k, [p, q]) in turns.into_iter().enumerate() {
            let mix = |x: &[Vec<[f64; 2]>; 2], out: &mut Vec<[f64; 2]>| {
                out.clear();
                out.extend(x[0].iter().zip(&x[1]).map(|(s, t)| [p * s[0] + q * t[0], p * s[1] + q * t[1]]));
            };
            mix(&v, &mut w[k]);
            mix(&mv, &mut mw[k]);
        }
        let settled = (lambda - next).abs() <= RAYLEIGH_SETTLED * next;
        lambda = next;
        if settled {
            break;
        }
    }
    if beam.stiffness.eigenvalues_below(&beam.mass, lambda * (1.0 - INERTIA_GUARD), 1) == 0 {
        let [shape, _] = w;
        return Mode { omega: lambda.sqrt(), shape };
    }
    let lambda = nth_eigenvalue(&beam.stiffness, &beam.mass, 0, 0.0, lambda);
    Mode { omega: lambda.sqrt(), shape: shape_of(beam, lambda, &[]) }
}

/// Lower eigenvalue of the symmetric problem `A x = λ B x` of order two (matrices given as `[11, 12, 22]`), and both eigenvectors,
/// the one of the lower eigenvalue first, scaled to `xᵀBx = 1`.
fn lowest_of_two(a: [f64; 3], b: [f64; 3]) -> (f64, [[f64; 2]; 2]) {
    // The Cholesky factor `B = LLᵀ` gives a standard symmetric problem of order two.
    let l11 = b[0].sqrt();
    let l21 = b[1] / l11;
    let l22 = (b[2] - l21 * l21).max(b[2] * 1e-14).sqrt();
    let c11 = a[0] / (l11 * l11);
    let c12 = (a[1] / l11 - l21 * c11) / l22;
    let c22 = (a[2] - 2.0 * l21 * l22 * c12 - l21 * l21 * c11) / (l22 * l22);
    let (half, mean) = (0.5 * (c22 - c11), 0.5 * (c11 + c22));
    let lower = mean - half.hypot(c12);
    let angle = 0.5 * (-2.0 * c12).atan2(c22 - c11);
    let (sin, cos) = angle.sin_cos();
    let back = |y: [f64; 2]| {
        let y2 = y[1] / l22;
        [(y[0] - l21 * y2) / l11, y2]
    };
    (lower, [back([cos, sin]), back([-sin, cos])])
}

/// Eigenvalue number `n` (from 0) of `K x = λ M x` by bisection. At most `n` eigenvalues lie below `low`; `high` is a first guess of
/// an upper bound and is raised if needed.
fn nth_eigenvalue(k: &BlockTri, m: &BlockTri, n: usize, low: f64, high: f64) -> f64 {
    let (mut low, mut high) = (low, high);
    while k.eigenvalues_below(m, high, n + 1) < n + 1 {
        low = high;
        high *= 4.0;
    }
    while high - low > BISECTION_WIDTH * high {
        // Geometric mean while the bracket is wide, so that a small eigenvalue needs no more steps than a large one.
        let middle = if low > 0.0 && high > 4.0 * low { (low * high).sqrt() } else { 0.5 * (low + high) };
        if middle <= low || middle >= high {
            break;
        }
        if k.eigenvalues_below(m, middle, n + 1) > n {
            high = middle;
        } else {
            low = middle;
        }
    }
    0.5 * (low + high)
}

/// The lowest `count` modes, ascending; fewer if the mesh has fewer.
///
/// # Errors
/// [`Unheld`] when the springs leave a free motion.
pub fn lowest_modes(beam: &Beam, count: usize) -> Result<Vec<Mode>, Unheld> {
    let mut modes: Vec<Mode> = Vec::with_capacity(count);
    for lambda in lowest_eigenvalues(beam, count)? {
        modes.push(Mode { omega: lambda.sqrt(), shape: shape_of(beam, lambda, &modes) });
    }
    Ok(modes)
}

/// Eigenvalues `ω²` of the lowest `count` modes, ascending, (rad/s)².
///
/// # Errors
/// [`Unheld`] when the springs leave a free motion.
pub fn lowest_eigenvalues(beam: &Beam, count: usize) -> Result<Vec<f64>, Unheld> {
    let factor = beam.factor()?;
    let first = lowest_mode(beam, &factor).omega.powi(2);
    let mut all = Vec::with_capacity(count);
    let mut low = 0.0;
    for n in 0..count.min(2 * beam.x_mm.len()) {
        let lambda =
            nth_eigenvalue(&beam.stiffness, &beam.mass, n, low, if n == 0 { first * 1.001 } else { 4.0 * low });
        low = lambda * (1.0 - 1e-9);
        all.push(lambda);
    }
    Ok(all)
}

/// Mode shape of an eigenvalue by inverse iteration with a shift close to it, kept `M`-orthogonal to the modes in `before`.
fn shape_of(beam: &Beam, lambda: f64, before: &[Mode]) -> Vec<[f64; 2]> {
    let n = beam.x_mm.len();
    let shifted = Shifted::new(beam, lambda * (1.0 + 1e-7));
    // Any start vector that is not orthogonal to the mode. Irrational steps make sure that it is not symmetric by chance.
    let mut v: Vec<[f64; 2]> = (0..n).map(|i| [((i as f64 + 1.0) * 0.754_877_666).fract() - 0.3, 0.0]).collect();
    let mut mv = Vec::with_capacity(n);
    for _ in 0..4 {
        for mode in before {
            beam.mass.multiply(&v, &mut mv);
            let share = dot(&mode.shape, &mv);
            for (x, s) in v.iter_mut().zip(&mode.shape) {
                *x = [x[0] - share * s[0], x[1] - share * s[1]];
            }
        }
        beam.mass.multiply(&v, &mut mv);
        let scale = dot(&v, &mv).sqrt().recip();
        let rhs: Vec<[f64; 2]> = mv.iter().map(|m| [m[0] * scale, m[1] * scale]).collect();
        v = shifted.solve(&rhs);
    }
    beam.mass.multiply(&v, &mut mv);
    let scale = dot(&v, &mv).sqrt().recip();
    v.iter().map(|x| [x[0] * scale, x[1] * scale]).collect()
}

/// `K - σM`, solved by banded elimination with row exchanges (half-bandwidth 3); used for mode shapes only.
struct Shifted {
    n: usize,
    /// Band by rows: row `r` holds columns `r - 3 ..= r + 6`, which leaves room for the fill-in of row exchanges.
    band: Vec<[f64; 10]>,
}

impl Shifted {
    fn new(beam: &Beam, shift: f64) -> Shifted {
        let (k, m) = (&beam.stiffness, &beam.mass);
        let n = 2 * k.len();
        let mut band = vec![[0.0; 10]; n];
        let mut put = |r: usize, c: usize, v: f64| band[r][c + 3 - r] = v;
        for i in 0..k.len() {
            let (p, q) = (k.diag[i], m.diag[i]);
            put(2 * i, 2 * i, p.a - shift * q.a);
            put(2 * i, 2 * i + 1, p.b - shift * q.b);
            put(2 * i + 1, 2 * i, p.b - shift * q.b);
            put(2 * i + 1, 2 * i + 1, p.c - shift * q.c);
            if i + 1 < k.len() {
                for j in 0..4 {
                    let v = k.upper[i][j] - shift * m.upper[i][j];
                    put(2 * i + j / 2, 2 * i + 2 + j % 2, v);
                    put(2 * i + 2 + j % 2, 2 * i + j / 2, v);
                }
            }
        }
        Shifted { n, band }
    }

    fn solve(&self, rhs: &[[f64; 2]]) -> Vec<[f64; 2]> {
        let n = self.n;
        let mut a = self.band.clone();
        let mut b: Vec<f64> = rhs.iter().flatten().copied().collect();
        for col in 0..n {
            let last = (col + 3).min(n - 1);
            let at = |a: &Vec<[f64; 10]>, r: usize, c: usize| a[r][c + 3 - r];
            let pivot =
                (col..=last).max_by(|p, q| at(&a, *p, col).abs().total_cmp(&at(&a, *q, col).abs())).unwrap_or(col);
            let width = (col + 6).min(n - 1);
            if pivot != col {
                for c in col..=width {
                    let (x, y) = (at(&a, col, c), at(&a, pivot, c));
                    a[col][c + 3 - col] = y;
                    a[pivot][c + 3 - pivot] = x;
                }
                b.swap(col, pivot);
            }
            if a[col][3] == 0.0 {
                a[col][3] = f64::MIN_POSITIVE.sqrt();
            }
            for r in col + 1..=last {
                let factor = a[r][col + 3 - r] / a[col][3];
                if factor != 0.0 {
                    for c in col..=width {
                        let v = a[col][c + 3 - col];
                        a[r][c + 3 - r] -= factor * v;
                    }
                    b[r] -= factor * b[col];
                }
            }
        }
        for r in (0..n).rev() {
            let width = (r + 6).min(n - 1);
            let sum: f64 = (r + 1..=width).map(|c| a[r][c + 3 - r] * b[c]).sum();
            b[r] = (b[r] - sum) / a[r][3];
        }
        b.chunks_exact(2).map(|p| [p[0], p[1]]).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mechanics::beam::{Elastic, Spring};

    #[test]
    fn the_lower_of_two_is_an_eigenvalue_of_the_pair() {
        let (a, b) = ([4.0, 1.0, 3.0], [2.0, 0.3, 1.0]);
        let (lambda, [[p, q], [r, s]]) = lowest_of_two(a, b);
        let det = (a[0] - lambda * b[0]) * (a[2] - lambda * b[2]) - (a[1] - lambda * b[1]).powi(2);
        assert!(det.abs() < 1e-12);
        assert!(((a[0] - lambda * b[0]) * p + (a[1] - lambda * b[1]) * q).abs() < 1e-12);
        assert!((b[0] * p * p + 2.0 * b[1] * p * q + b[2] * q * q - 1.0).abs() < 1e-12);
        assert!((b[0] * p * r + b[1] * (p * s + q * r) + b[2] * q * s).abs() < 1e-12);
    }

    /// Two equal cantilevers at both ends of a held middle have a double frequency, the hardest case for an iteration.
    #[test]
    fn two_modes_of_one_frequency_are_found() {
        let steel = Elastic { e_n_per_mm2: 206_000.0, poisson: 0.3, density_t_per_mm3: 7.85e-9, bore_mm: 0.0 };
        let springs: Vec<Spring> =
            [200.0, 225.0, 300.0, 325.0].map(|at_mm| Spring { at_mm, n_per_mm: 40_000.0 }).into();
        let mut points: Vec<f64> = (0..=105).map(|i| f64::from(i) * 5.0).collect();
        let beam = Beam::new(&steel, &mut points, |_| 12.0, &springs);
        let lowest = lowest_mode(&beam, &beam.factor().expect("held")).omega;
        let bisected = nth_eigenvalue(&beam.stiffness, &beam.mass, 0, 0.0, lowest * lowest * 4.0).sqrt();
        assert!((lowest / bisected - 1.0).abs() < 1e-5, "{lowest} {bisected}");
        let modes = lowest_modes(&beam, 2).expect("held");
        assert!(modes[1].omega / modes[0].omega < 1.2, "{} {}", modes[0].omega, modes[1].omega);
        // There are still two shapes: each has a modal mass of one tonne, they are `M`-orthogonal, and each has its own `ω²`.
        for (i, mode) in modes.iter().enumerate() {
            let (mut moved, mut pulled) = (Vec::new(), Vec::new());
            beam.mass.multiply(&mode.shape, &mut moved);
            beam.stiffness.multiply(&mode.shape, &mut pulled);
            assert!((dot(&mode.shape, &moved) - 1.0).abs() < 1e-9);
            assert!(dot(&modes[1 - i].shape, &moved).abs() < 1e-5, "{}", dot(&modes[1 - i].shape, &moved));
            assert!((dot(&mode.shape, &pulled) / mode.omega.powi(2) - 1.0).abs() < 1e-6);
        }
    }
}
