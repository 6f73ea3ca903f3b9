//! Symmetric block-tridiagonal systems with 2 × 2 blocks: the band a beam of two unknowns a node gives.
//!
//! Factoring is the block form of `L D Lᵀ` without pivoting. It is stable for the positive definite stiffness of a
//! held beam; for a shifted matrix `K - σM` only the signs of the pivots are used (Sylvester's law of inertia: as many
//! eigenvalues below `σ` as negative pivots), and a pivot that vanishes exactly is nudged, which moves `σ` by less
//! than the rounding of the matrix.

/// A symmetric 2 × 2 block `[[a, b], [b, c]]`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Sym2 {
    /// First diagonal entry.
    pub a: f64,
    /// Off-diagonal entry.
    pub b: f64,
    /// Second diagonal entry.
    pub c: f64,
}

impl Sym2 {
    fn det(self) -> f64 {
        self.a * self.c - self.b * self.b
    }

    /// Inverse; the caller has made sure that the determinant is not zero.
    fn inverse(self) -> Sym2 {
        let d = 1.0 / self.det();
        Sym2 { a: self.c * d, b: -self.b * d, c: self.a * d }
    }

    fn times(self, v: [f64; 2]) -> [f64; 2] {
        [self.a * v[0] + self.b * v[1], self.b * v[0] + self.c * v[1]]
    }

    fn minus(self, o: Sym2) -> Sym2 {
        Sym2 { a: self.a - o.a, b: self.b - o.b, c: self.c - o.c }
    }

    /// Number of negative eigenvalues. The sign of the determinant decides unless it drowns in rounding.
    fn negatives(self) -> usize {
        let det = self.det();
        if det < 0.0 {
            1
        } else if self.a + self.c < 0.0 {
            2
        } else {
            0
        }
    }
}

/// A full 2 × 2 block, row by row.
pub type Mat2 = [f64; 4];

/// `Eᵀ P E` for symmetric `P`.
fn congruence(e: &Mat2, p: Sym2) -> Sym2 {
    let pe0 = p.times([e[0], e[2]]);
    let pe1 = p.times([e[1], e[3]]);
    Sym2 { a: e[0] * pe0[0] + e[2] * pe0[1], b: e[0] * pe1[0] + e[2] * pe1[1], c: e[1] * pe1[0] + e[3] * pe1[1] }
}

/// `E P Eᵀ` for symmetric `P`.
fn congruence_t(e: &Mat2, p: Sym2) -> Sym2 {
    congruence(&[e[0], e[2], e[1], e[3]], p)
}

/// A symmetric block-tridiagonal matrix of `n` diagonal blocks and `n - 1` blocks above the diagonal.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BlockTri {
    /// Diagonal blocks.
    pub diag: Vec<Sym2>,
    /// `upper[i]` couples node `i` (rows) with node `i + 1` (columns).
    pub upper: Vec<Mat2>,
}

impl BlockTri {
    /// A matrix of zeros with `n` blocks.
    pub fn zeros(n: usize) -> Self {
        BlockTri { diag: vec![Sym2::default(); n], upper: vec![[0.0; 4]; n.saturating_sub(1)] }
    }

    /// Number of diagonal blocks.
    pub fn len(&self) -> usize {
        self.diag.len()
    }

    /// Whether it has no blocks.
    pub fn is_empty(&self) -> bool {
        self.diag.is_empty()
    }

    /// Product with a vector of `2 n` values, written to `out`.
    pub fn multiply(&self, v: &[[f64; 2]], out: &mut Vec<[f64; 2]>) {
        out.clear();
        out.extend(self.diag.iter().zip(v).map(|(d, x)| d.times(*x)));
        for (i, e) in self.upper.iter().enumerate() {
            let (lo, hi) = (v[i], v[i + 1]);
            out[i][0] += e[0] * hi[0] + e[1] * hi[1];
            out[i][1] += e[2] * hi[0] + e[3] * hi[1];
            out[i + 1][0] += e[0] * lo[0] + e[2] * lo[1];
            out[i + 1][1] += e[1] * lo[0] + e[3] * lo[1];
        }
    }

    /// Factors a positive definite matrix; `None` when it is not positive definite.
    pub fn factor(&self) -> Option<Factor<'_>> {
        let mut pivots = Vec::with_capacity(self.len());
        let mut inverses = Vec::with_capacity(self.len());
        for i in 0..self.len() {
            let p = match i {
                0 => self.diag[0],
                _ => self.diag[i].minus(congruence(&self.upper[i - 1], inverses[i - 1])),
            };
            // Also false for NaN, so that nothing that is not a number ever passes.
            if !(p.det() > 0.0 && p.a > 0.0) {
                return None;
            }
            pivots.push(p);
            inverses.push(p.inverse());
        }
        Some(Factor { matrix: self, pivots, inverses })
    }

    /// Number of eigenvalues of `K x = σ M x` below `shift = σ`, from the inertia of `K - σ M`; stops counting at
    /// `enough`.
    ///
    /// `self` is `K`; both matrices have the same shape; `M` is positive definite.
    /// Source: Sylvester's law of inertia; Parlett, The Symmetric Eigenvalue Problem (1980), section 3.3 (from memory).
    pub fn eigenvalues_below(&self, m: &BlockTri, shift: f64, enough: usize) -> usize {
        let mut count = 0;
        let mut last = Sym2::default();
        let mut coupling = [0.0; 4];
        for i in 0..self.len() {
            let (k, w) = (self.diag[i], m.diag[i]);
            let mut p = Sym2 { a: k.a - shift * w.a, b: k.b - shift * w.b, c: k.c - shift * w.c };
            if i > 0 {
                p = p.minus(congruence(&coupling, last));
            }
            if p.det() == 0.0 {
                p.a += f64::EPSILON * (k.a.abs() + p.b.abs());
                p.c += f64::EPSILON * (k.c.abs() + p.b.abs());
            }
            count += p.negatives();
            if count >= enough {
                return count;
            }
            last = p.inverse();
            if i + 1 < self.len() {
                let (ke, me) = (&self.upper[i], &m.upper[i]);
                coupling = std::array::from_fn(|j| ke[j] - shift * me[j]);
            }
        }
        count
    }
}

/// A factored positive definite matrix.
#[derive(Debug, Clone)]
pub struct Factor<'a> {
    matrix: &'a BlockTri,
    pivots: Vec<Sym2>,
    inverses: Vec<Sym2>,
}

impl Factor<'_> {
    /// Solves in place.
    pub fn solve(&self, v: &mut [[f64; 2]]) {
        let n = self.inverses.len();
        let upper = &self.matrix.upper;
        for i in 1..n {
            let y = self.inverses[i - 1].times(v[i - 1]);
            let e = &upper[i - 1];
            v[i][0] -= e[0] * y[0] + e[2] * y[1];
            v[i][1] -= e[1] * y[0] + e[3] * y[1];
        }
        for i in (0..n).rev() {
            if i + 1 < n {
                let (e, x) = (&upper[i], v[i + 1]);
                v[i][0] -= e[0] * x[0] + e[1] * x[1];
                v[i][1] -= e[2] * x[0] + e[3] * x[1];
            }
            v[i] = self.inverses[i].times(v[i]);
        }
    }

    /// The diagonal blocks of the inverse, by one sweep from the rear: with `F` the pivots from the front and `B` those
    /// from the rear, block `i` of the inverse is `(F_i + B_i - D_i)⁻¹`. Costs one more factoring, not `n` solves.
    pub fn inverse_diagonal(&self) -> Vec<Sym2> {
        let n = self.pivots.len();
        let (diag, upper) = (&self.matrix.diag, &self.matrix.upper);
        let mut out = vec![Sym2::default(); n];
        // What the nodes behind take off node i's diagonal.
        let mut behind = Sym2::default();
        for i in (0..n).rev() {
            out[i] = self.pivots[i].minus(behind).inverse();
            if i > 0 {
                behind = congruence_t(&upper[i - 1], diag[i].minus(behind).inverse());
            }
        }
        out
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn chain() -> BlockTri {
        BlockTri {
            diag: vec![
                Sym2 { a: 4.0, b: 1.0, c: 3.0 },
                Sym2 { a: 6.0, b: -1.0, c: 5.0 },
                Sym2 { a: 7.0, b: 0.5, c: 9.0 },
            ],
            upper: vec![[1.0, 0.5, -0.25, 1.0], [0.75, -1.0, 0.5, 0.25]],
        }
    }

    fn dense(m: &BlockTri) -> nalgebra::DMatrix<f64> {
        let n = m.len();
        let mut d = nalgebra::DMatrix::zeros(2 * n, 2 * n);
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

    #[test]
    fn solving_and_the_inverse_diagonal_agree_with_dense_algebra() {
        let m = chain();
        let inverse = dense(&m).try_inverse().expect("regular");
        let f = m.factor().expect("positive definite");
        for column in 0..6 {
            let mut v = vec![[0.0; 2]; 3];
            v[column / 2][column % 2] = 1.0;
            f.solve(&mut v);
            for row in 0..6 {
                assert!((v[row / 2][row % 2] - inverse[(row, column)]).abs() < 1e-14);
            }
        }
        for (i, s) in f.inverse_diagonal().iter().enumerate() {
            assert!((s.a - inverse[(2 * i, 2 * i)]).abs() < 1e-14);
            assert!((s.b - inverse[(2 * i, 2 * i + 1)]).abs() < 1e-14);
            assert!((s.c - inverse[(2 * i + 1, 2 * i + 1)]).abs() < 1e-14);
        }
    }

    #[test]
    fn the_inertia_counts_the_eigenvalues_of_the_dense_matrix() {
        let k = chain();
        let mut one = BlockTri::zeros(3);
        one.diag.fill(Sym2 { a: 1.0, b: 0.0, c: 1.0 });
        let eigen = dense(&k).symmetric_eigenvalues();
        for shift in [0.0, 2.0, 3.5, 4.5, 6.0, 8.0, 20.0] {
            let below = eigen.iter().filter(|e| **e < shift).count();
            assert_eq!(k.eigenvalues_below(&one, shift, 9), below, "at {shift}");
        }
    }

    #[test]
    fn a_matrix_that_is_not_positive_definite_is_refused() {
        let mut m = chain();
        m.diag[1].a = -6.0;
        assert!(m.factor().is_none());
        m.diag[1].a = f64::NAN;
        assert!(m.factor().is_none());
    }
}
