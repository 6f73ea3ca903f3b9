//! Least squares for a few unknowns by the method of Levenberg and Marquardt, and how well the data determine the
//! result.
//!
//! Source: Marquardt, J. SIAM 11 (1963), with the scaling by the diagonal (from memory, not checked). The singular
//! values are the square roots of the eigenvalues of `JᵀJ`, found by Jacobi's rotations. Forming `JᵀJ` loses digits,
//! but with the few unknowns here none that matters.

/// Steps before the search gives up; it needs about ten.
const STEPS: usize = 200;
/// The search ends when no unknown moves by more than this.
const SETTLED: f64 = 1e-9;
/// Step to each side in the central differences for the derivatives.
const DIFFERENCE: f64 = 1e-4;
/// Damping beyond which no step can help.
const MOST_DAMPING: f64 = 1e12;
/// Sweeps of Jacobi's rotations; three unknowns need four.
const SWEEPS: usize = 30;
/// An eigenvalue below this share of the largest is a rounding error.
const NO_VALUE: f64 = 1e-14;

/// A least-squares solution.
pub(super) struct Fit {
    /// The unknowns.
    pub(super) at: Vec<f64>,
    /// Sum of the squared residuals.
    pub(super) cost: f64,
    /// Derivatives of the residuals at `at`, one row for each residual.
    pub(super) jacobian: Vec<Vec<f64>>,
}

/// Moves the unknowns inside `[low, high]` until the sum of squares is least. None: the residuals have no value at a
/// point, or the equations of a step cannot be solved.
pub(super) fn least_squares(
    from: &[f64],
    [low, high]: [f64; 2],
    residuals: impl Fn(&[f64]) -> Option<Vec<f64>>,
) -> Option<Fit> {
    let cost_of = |r: &[f64]| r.iter().map(|v| v * v).sum::<f64>();
    let mut at = from.to_vec();
    let mut r = residuals(&at)?;
    let mut damping = 1e-3;
    for _ in 0..STEPS {
        let jacobian = derivatives(&at, &residuals)?;
        let (normal, gradient) = normal_equations(&jacobian, &r, at.len());
        let mut moved = None;
        while damping < MOST_DAMPING {
            let mut damped = normal.clone();
            for (i, row) in damped.iter_mut().enumerate() {
                // The tiny term keeps the system solvable: an unknown that no residual depends on stays where it is.
                row[i] += damping * (normal[i][i] + NO_VALUE) + NO_VALUE;
            }
            let step = solve(damped, gradient.iter().map(|g| -g).collect())?;
            let next: Vec<f64> = at.iter().zip(&step).map(|(p, s)| (p + s.clamp(-1.5, 1.5)).clamp(low, high)).collect();
            match residuals(&next) {
                Some(better) if cost_of(&better) <= cost_of(&r) => {
                    damping = (0.1 * damping).max(1e-12);
                    moved = Some((next, better));
                    break;
                }
                _ => damping *= 10.0,
            }
        }
        let Some((next, better)) = moved else { break };
        let far = at.iter().zip(&next).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
        (at, r) = (next, better);
        if far < SETTLED {
            break;
        }
    }
    let jacobian = derivatives(&at, &residuals)?;
    Some(Fit { cost: cost_of(&r), at, jacobian })
}

/// Derivatives by central differences, one row for each residual. None: the residuals have no value at a point.
pub(super) fn derivatives(at: &[f64], residuals: &impl Fn(&[f64]) -> Option<Vec<f64>>) -> Option<Vec<Vec<f64>>> {
    let mut columns = Vec::with_capacity(at.len());
    for i in 0..at.len() {
        let moved = |by: f64| {
            let mut p = at.to_vec();
            p[i] += by;
            residuals(&p)
        };
        let (up, down) = (moved(DIFFERENCE)?, moved(-DIFFERENCE)?);
        columns.push(up.iter().zip(&down).map(|(u, d)| (u - d) / (2.0 * DIFFERENCE)).collect::<Vec<f64>>());
    }
    let rows = columns.first().map_or(0, Vec::len);
    Some((0..rows).map(|row| columns.iter().map(|c| c[row]).collect()).collect())
}

fn normal_equations(jacobian: &[Vec<f64>], r: &[f64], n: usize) -> (Vec<Vec<f64>>, Vec<f64>) {
    let (mut normal, mut gradient) = (vec![vec![0.0; n]; n], vec![0.0; n]);
    for (row, value) in jacobian.iter().zip(r) {
        for i in 0..n {
            gradient[i] += row[i] * value;
            for j in 0..n {
                normal[i][j] += row[i] * row[j];
            }
        }
    }
    (normal, gradient)
}

/// Solves a small positive definite system. None: the matrix is not positive definite.
fn solve(mut a: Vec<Vec<f64>>, mut b: Vec<f64>) -> Option<Vec<f64>> {
    let n = b.len();
    for i in 0..n {
        if a[i][i] <= 0.0 || !a[i][i].is_finite() {
            return None;
        }
        let pivot = a[i].clone();
        for k in i + 1..n {
            let factor = a[k][i] / pivot[i];
            for (below, above) in a[k].iter_mut().zip(&pivot).skip(i) {
                *below -= factor * above;
            }
            b[k] -= factor * b[i];
        }
    }
    for i in (0..n).rev() {
        let known: f64 = (i + 1..n).map(|j| a[i][j] * b[j]).sum();
        b[i] = (b[i] - known) / a[i][i];
    }
    Some(b)
}

/// How well the data determine the unknowns.
pub(super) struct Spread {
    /// Singular values of the Jacobian, squared, and their directions.
    modes: Vec<(f64, Vec<f64>)>,
}

impl Spread {
    /// Standard error of an unknown if every residual has a standard deviation of 1. Infinite: the data do not
    /// determine it.
    pub(super) fn error(&self, unknown: usize) -> f64 {
        let largest = self.modes.iter().map(|(v, _)| *v).fold(0.0, f64::max);
        let variance: f64 = self
            .modes
            .iter()
            .map(|(value, direction)| {
                let share = direction[unknown] * direction[unknown];
                if share < NO_VALUE {
                    0.0
                } else if *value > NO_VALUE * largest {
                    share / value
                } else {
                    f64::INFINITY
                }
            })
            .sum();
        variance.sqrt()
    }

    /// Largest over smallest singular value.
    pub(super) fn condition(&self) -> f64 {
        let values = || self.modes.iter().map(|(v, _)| v.max(0.0).sqrt());
        values().fold(0.0, f64::max) / values().fold(f64::INFINITY, f64::min)
    }
}

/// How well the data with this Jacobian determine their `n` unknowns.
pub(super) fn spread(jacobian: &[Vec<f64>], n: usize) -> Spread {
    let (mut a, _) = normal_equations(jacobian, &vec![0.0; jacobian.len()], n);
    let mut v: Vec<Vec<f64>> = (0..n).map(|i| (0..n).map(|j| if i == j { 1.0 } else { 0.0 }).collect()).collect();
    for _ in 0..SWEEPS {
        for p in 0..n {
            for q in p + 1..n {
                if a[p][q] == 0.0 {
                    continue;
                }
                let theta = (a[q][q] - a[p][p]) / (2.0 * a[p][q]);
                let sign = if theta < 0.0 { -1.0 } else { 1.0 };
                let t = sign / (theta.abs() + theta.hypot(1.0));
                let c = 1.0 / t.hypot(1.0);
                let s = t * c;
                for row in &mut a {
                    (row[p], row[q]) = (c * row[p] - s * row[q], s * row[p] + c * row[q]);
                }
                for k in 0..n {
                    (a[p][k], a[q][k]) = (c * a[p][k] - s * a[q][k], s * a[p][k] + c * a[q][k]);
                    (v[k][p], v[k][q]) = (c * v[k][p] - s * v[k][q], s * v[k][p] + c * v[k][q]);
                }
            }
        }
    }
    Spread { modes: (0..n).map(|i| (a[i][i], v.iter().map(|row| row[i]).collect())).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A straight line through three points, by the formulas of any statistics text: y = 1 + 2x with residuals
    /// 1/6, -1/3, 1/6; variances 5/6 and 1/2.
    #[test]
    fn a_line_is_fitted_and_its_errors_are_those_of_the_text() {
        let (x, y) = ([0.0, 1.0, 2.0], [1.0 + 1.0 / 6.0, 3.0 - 1.0 / 3.0, 5.0 + 1.0 / 6.0]);
        let line = |p: &[f64]| Some(x.iter().zip(y).map(|(x, y)| p[0] + p[1] * x - y).collect());
        let fit = least_squares(&[30.0, -20.0], [-100.0, 100.0], line).expect("values");
        assert!((fit.at[0] - 1.0).abs() < 1e-7 && (fit.at[1] - 2.0).abs() < 1e-7, "{:?}", fit.at);
        assert!((fit.cost - 1.0 / 6.0).abs() < 1e-9, "{}", fit.cost);
        let known = spread(&fit.jacobian, 2);
        assert!((known.error(0) - (5.0_f64 / 6.0).sqrt()).abs() < 1e-8, "{}", known.error(0));
        assert!((known.error(1) - 0.5_f64.sqrt()).abs() < 1e-8, "{}", known.error(1));
    }

    /// Rosenbrock's valley (Computer Journal 3, 1960): the minimum is 0 at (1, 1), the search starts at (-1.2, 1).
    #[test]
    fn a_bent_valley_is_walked_to_its_end() {
        let valley = |p: &[f64]| Some(vec![10.0 * (p[1] - p[0] * p[0]), 1.0 - p[0]]);
        let fit = least_squares(&[-1.2, 1.0], [-10.0, 10.0], valley).expect("values");
        assert!((fit.at[0] - 1.0).abs() < 1e-6 && (fit.at[1] - 1.0).abs() < 1e-6, "{:?}", fit.at);
    }

    /// Standard errors and condition number agree with those of a general library.
    #[test]
    fn errors_and_condition_are_those_of_a_dense_library() {
        let rows = [[1.0, 0.4, -2.0], [0.3, 5.0, 1.0], [0.1, -0.2, 0.05], [2.0, 1.0, 1.0], [0.0, 0.7, -0.9]];
        let known = spread(&rows.map(|r| r.to_vec()), 3);
        let j = nalgebra::DMatrix::from_fn(5, 3, |r, c| rows[r][c]);
        let singular = j.clone().singular_values();
        let condition = singular.max() / singular.min();
        assert!((known.condition() / condition - 1.0).abs() < 1e-9, "{} {condition}", known.condition());
        let covariance = (j.transpose() * j).try_inverse().expect("regular");
        for i in 0..3 {
            assert!((known.error(i) / covariance[(i, i)].sqrt() - 1.0).abs() < 1e-9);
        }
    }

    #[test]
    fn what_nothing_depends_on_is_not_known() {
        let known = spread(&[vec![1.0, 0.0], vec![2.0, 0.0]], 2);
        assert!(known.error(0) < 1.0 && known.error(1).is_infinite());
        let both = spread(&[vec![1.0, 1.0], vec![2.0, 2.0]], 2);
        assert!(both.error(0).is_infinite() && both.error(1).is_infinite());
    }
}
