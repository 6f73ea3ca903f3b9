//! Whole block-tridiagonal matrices, eliminated from both ends towards the middle.
//!
//! The elimination of a block needs the result of the block before, so the time depends on the latency of the operations, not on
//! their number. Two independent eliminations, from the front and from the rear, take about half the time with as many operations.
//! Source: twisted factorisation, Meurant, SIAM J. Matrix Anal. Appl. 13 (1992) (from memory).

use super::banded::{BlockTri, Gone, Mat2, Sym2, taken, transposed};

/// Eliminates `n` blocks from both ends and returns the condensed middle block.
///
/// - `diag` and `coupling`: diagonal block `i`, and the block that couples `i` (rows) with `i + 1` (columns).
/// - `pivot`: called for each eliminated block with its number, its pivot and its coupling to the neighbour towards the middle. It
///   returns the term to subtract from the neighbour's block, or `None` to stop the elimination.
#[inline]
fn from_both_ends(
    n: usize,
    diag: impl Fn(usize) -> Sym2,
    coupling: impl Fn(usize) -> Mat2,
    mut pivot: impl FnMut(usize, Sym2, &Mat2) -> Option<Sym2>,
) -> Option<Sym2> {
    let (middle, behind_it) = middle(n)?;
    let (mut ahead, mut behind) = (Sym2::default(), Sym2::default());
    for front in 0..behind_it {
        let rear = n - 1 - front;
        ahead = pivot(front, diag(front).minus(ahead), &coupling(front))?;
        behind = pivot(rear, diag(rear).minus(behind), &transposed(&coupling(rear - 1)))?;
    }
    if behind_it < middle {
        ahead = pivot(behind_it, diag(behind_it).minus(ahead), &coupling(behind_it))?;
    }
    Some(diag(middle).minus(ahead).minus(behind))
}

/// Index of the middle block, and the number of blocks behind it. This number equals the number in front of it or is one less.
#[inline]
fn middle(n: usize) -> Option<(usize, usize)> {
    (n > 0).then(|| (n / 2, (n - 1) / 2))
}

impl BlockTri {
    /// Factors a positive definite matrix; `None` when it is not positive definite.
    pub fn factor(&self) -> Option<Factor> {
        let mut gone = vec![Gone::default(); self.len()];
        let pivot = |i: usize, p: Sym2, e: &Mat2| {
            let (block, taken) = Gone::new(p, e);
            gone[i] = block;
            p.is_positive().then_some(taken)
        };
        let left = from_both_ends(self.len(), |i| self.diag[i], |i| self.upper[i], pivot)?;
        left.is_positive().then(|| Factor { gone, middle: left.inverse() })
    }

    /// [`from_both_ends`] for `K - σ M`. `self` is `K`, `shift` is `σ`.
    fn shifted_from_both_ends(
        &self,
        m: &BlockTri,
        shift: f64,
        pivot: impl FnMut(usize, Sym2, &Mat2) -> Option<Sym2>,
    ) -> Option<Sym2> {
        let (diag, coupling) = (|i| self.shifted(m, shift, i), |i| self.shifted_coupling(m, shift, i));
        from_both_ends(self.len(), diag, coupling, pivot)
    }

    /// Whether all eigenvalues of `K x = λ M x` lie above `shift`. `self` is `K`.
    pub fn swings_above(&self, m: &BlockTri, shift: f64) -> bool {
        let positive = |_, p: Sym2, e: &Mat2| p.is_positive().then(|| taken(p, e));
        let left = self.shifted_from_both_ends(m, shift, positive);
        left.is_some_and(Sym2::is_positive)
    }

    /// Number of eigenvalues of `K x = λ M x` below `shift`. `self` is `K`. Counting stops as soon as `enough` are found.
    ///
    /// By Sylvester's law of inertia this is the number of negative eigenvalues of the pivots (the inertia count).
    /// Source: Parlett, The Symmetric Eigenvalue Problem (1980), section 3.3 (from memory).
    pub fn eigenvalues_below(&self, m: &BlockTri, shift: f64, enough: usize) -> usize {
        let mut count = 0;
        let counted = |_, p: Sym2, e: &Mat2| {
            let p = p.nudged();
            count += p.negatives();
            (count < enough).then(|| taken(p, e))
        };
        let left = self.shifted_from_both_ends(m, shift, counted);
        count + left.map_or(0, |left| left.nudged().negatives())
    }

    /// Solves `(K - σ M) x = v` in place, without pivoting. This is accurate enough for inverse iteration, because its result is checked
    /// by other means.
    pub fn solve_shifted(&self, m: &BlockTri, shift: f64, v: &mut [[f64; 2]]) {
        let mut gone = vec![Gone::default(); self.len()];
        let pivot = |i: usize, p: Sym2, e: &Mat2| {
            let (block, taken) = Gone::new(p.nudged(), e);
            gone[i] = block;
            Some(taken)
        };
        let left = self.shifted_from_both_ends(m, shift, pivot);
        if let Some(left) = left {
            Factor { gone, middle: left.nudged().inverse() }.solve(v);
        }
    }
}

/// A factored matrix.
#[derive(Debug, Clone)]
pub struct Factor {
    /// One entry for each block; the entry of the middle block is not used.
    gone: Vec<Gone>,
    /// Middle diagonal block of the inverse matrix.
    middle: Sym2,
}

impl Factor {
    /// Solves for a right side in place.
    pub fn solve(&self, v: &mut [[f64; 2]]) {
        let (gone, n) = (&self.gone, self.gone.len());
        let Some((middle, behind_it)) = middle(n) else { return };
        let v = &mut v[..n];
        let (mut ahead, mut behind) = (v[0], v[n - 1]);
        for front in 0..behind_it {
            let rear = n - 1 - front;
            ahead = gone[front].hand_on(ahead, v[front + 1]);
            v[front + 1] = ahead;
            behind = gone[rear].hand_on(behind, v[rear - 1]);
            v[rear - 1] = behind;
        }
        if behind_it < middle {
            v[middle] = gone[behind_it].hand_on(ahead, v[middle]);
        }
        v[middle] = self.middle.times(v[middle]);
        (ahead, behind) = (v[middle], v[middle]);
        if behind_it < middle {
            ahead = gone[behind_it].answer(v[behind_it], ahead);
            v[behind_it] = ahead;
        }
        for front in (0..behind_it).rev() {
            let rear = n - 1 - front;
            ahead = gone[front].answer(v[front], ahead);
            v[front] = ahead;
            behind = gone[rear].answer(v[rear], behind);
            v[rear] = behind;
        }
    }

    /// Diagonal blocks of the inverse matrix from block `from` on; blocks before it are zero. The cost is about one more factorisation,
    /// not `n` solutions.
    pub fn inverse_diagonal_from(&self, from: usize) -> Vec<Sym2> {
        let (gone, n) = (&self.gone, self.gone.len());
        let mut out = vec![Sym2::default(); n];
        let Some((middle, behind_it)) = middle(n) else { return out };
        let (mut ahead, mut behind) = (self.middle, self.middle);
        out[middle] = self.middle;
        for away in 1..=middle {
            if away <= behind_it {
                behind = gone[middle + away].flexibility(behind);
                out[middle + away] = behind;
            }
            if middle - away >= from {
                ahead = gone[middle - away].flexibility(ahead);
                out[middle - away] = ahead;
            }
        }
        out[..from].fill(Sym2::default());
        out
    }
}

#[cfg(test)]
pub(super) mod tests {
    use super::*;
    use nalgebra::DMatrix;

    /// A positive definite matrix of any length, with a few diagonal blocks and couplings repeated in turn.
    pub(in super::super) fn chain(n: usize) -> BlockTri {
        let diag = [Sym2 { a: 4.0, b: 1.0, c: 3.0 }, Sym2 { a: 6.0, b: -1.0, c: 5.0 }, Sym2 { a: 7.0, b: 0.5, c: 9.0 }];
        let upper = [[1.0, 0.5, -0.25, 1.0], [0.75, -1.0, 0.5, 0.25]];
        BlockTri {
            diag: diag.into_iter().cycle().take(n).collect(),
            upper: upper.into_iter().cycle().take(n - 1).collect(),
        }
    }

    fn mass(n: usize) -> BlockTri {
        let diag = [Sym2 { a: 2.0, b: 0.1, c: 1.0 }, Sym2 { a: 3.0, b: 0.2, c: 2.0 }, Sym2 { a: 2.0, b: -0.1, c: 1.5 }];
        let upper = [[0.2, 0.1, -0.1, 0.3], [0.1, 0.2, 0.05, -0.1]];
        BlockTri {
            diag: diag.into_iter().cycle().take(n).collect(),
            upper: upper.into_iter().cycle().take(n - 1).collect(),
        }
    }

    pub(in super::super) fn dense(m: &BlockTri) -> DMatrix<f64> {
        let n = m.len();
        let mut d = DMatrix::zeros(2 * n, 2 * n);
        for (i, s) in m.diag.iter().enumerate() {
            d[(2 * i, 2 * i)] = s.a;
            d[(2 * i, 2 * i + 1)] = s.b;
            d[(2 * i + 1, 2 * i)] = s.b;
            d[(2 * i + 1, 2 * i + 1)] = s.c;
        }
        for (i, e) in m.upper.iter().enumerate() {
            for (j, v) in e.iter().enumerate() {
                let (r, c) = (2 * i + j / 2, 2 * i + 2 + j % 2);
                d[(r, c)] = *v;
                d[(c, r)] = *v;
            }
        }
        d
    }

    fn unit(n: usize, column: usize) -> Vec<[f64; 2]> {
        let mut v = vec![[0.0; 2]; n];
        v[column / 2][column % 2] = 1.0;
        v
    }

    #[track_caller]
    fn same(ours: &[[f64; 2]], inverse: &DMatrix<f64>, column: usize, within: f64) {
        for (row, x) in ours.as_flattened().iter().enumerate() {
            assert!((x - inverse[(row, column)]).abs() < within, "row {row}, column {column} of {}", ours.len());
        }
    }

    /// For odd and even numbers of blocks, down to a single block.
    #[test]
    fn solving_and_the_inverse_diagonal_agree_with_dense_algebra() {
        for n in 1..=8 {
            let m = chain(n);
            let inverse = dense(&m).try_inverse().expect("regular");
            let f = m.factor().expect("positive definite");
            for column in 0..2 * n {
                let mut v = unit(n, column);
                f.solve(&mut v);
                same(&v, &inverse, column, 1e-14);
            }
            for from in 0..=n {
                for (i, s) in f.inverse_diagonal_from(from).iter().enumerate() {
                    let there = f64::from(u8::from(i >= from));
                    assert!((s.a - there * inverse[(2 * i, 2 * i)]).abs() < 1e-14, "{i} of {n} from {from}");
                    assert!((s.b - there * inverse[(2 * i, 2 * i + 1)]).abs() < 1e-14);
                    assert!((s.c - there * inverse[(2 * i + 1, 2 * i + 1)]).abs() < 1e-14);
                }
            }
        }
    }

    #[test]
    fn the_inertia_counts_the_eigenvalues_of_the_dense_matrix() {
        for n in 1..=7 {
            let k = chain(n);
            let mut one = BlockTri::zeros(n);
            one.diag.fill(Sym2 { a: 1.0, b: 0.0, c: 1.0 });
            let eigen = dense(&k).symmetric_eigenvalues();
            for shift in [0.0, 2.0, 3.5, 4.51, 6.0, 8.0, 20.0] {
                let below = eigen.iter().filter(|e| **e < shift).count();
                assert_eq!(k.eigenvalues_below(&one, shift, 99), below, "at {shift} of {n}");
                for enough in 1..=below {
                    // It may count both negative eigenvalues of a block before it stops.
                    let counted = k.eigenvalues_below(&one, shift, enough);
                    assert!(counted >= enough && counted <= (enough + 1).min(below), "{counted} for {enough}");
                }
            }
        }
    }

    /// The shifts lie below, between and above the eigenvalues.
    #[test]
    fn shifted_by_a_mass_it_agrees_with_dense_algebra() {
        for n in 1..=7 {
            let (k, m) = (chain(n), mass(n));
            let inverse_root = dense(&m).cholesky().expect("positive definite").l().try_inverse().expect("regular");
            let eigen = (&inverse_root * dense(&k) * inverse_root.transpose()).symmetric_eigenvalues();
            for shift in [0.5, 1.0, 2.2, 3.1, 20.0] {
                let below = eigen.iter().filter(|e| **e < shift).count();
                assert_eq!(k.eigenvalues_below(&m, shift, 99), below, "at {shift} of {n}");
                assert_eq!(k.swings_above(&m, shift), below == 0, "at {shift} of {n}");
                let inverse = (dense(&k) - dense(&m) * shift).try_inverse().expect("regular");
                for column in 0..2 * n {
                    let mut v = unit(n, column);
                    k.solve_shifted(&m, shift, &mut v);
                    same(&v, &inverse, column, 1e-10);
                }
            }
        }
    }

    #[test]
    fn the_product_with_a_vector_agrees_with_dense_algebra() {
        for n in 1..=7 {
            let (m, mut out) = (chain(n), Vec::new());
            for column in 0..2 * n {
                m.multiply(&unit(n, column), &mut out);
                same(&out, &dense(&m), column, 1e-15);
            }
        }
    }

    /// The wrong block may be in front of the middle, behind it, or the middle itself.
    #[test]
    fn a_matrix_that_is_not_positive_definite_is_refused() {
        for wrong in [-6.0, f64::NAN] {
            for i in 0..5 {
                let mut m = chain(5);
                assert!(m.swings_above(&BlockTri::zeros(5), 0.0));
                m.diag[i].a = wrong;
                assert!(m.factor().is_none() && !m.swings_above(&BlockTri::zeros(5), 0.0));
            }
        }
        let nothing = BlockTri::zeros(0);
        assert!(nothing.is_empty() && !chain(1).is_empty());
        assert!(nothing.factor().is_none() && nothing.eigenvalues_below(&nothing, 1.0, 1) == 0);
    }
}
