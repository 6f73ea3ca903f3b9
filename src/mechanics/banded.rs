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
    pub fn inverse(self) -> Sym2 {
        let d = 1.0 / self.det();
        Sym2 { a: self.c * d, b: -self.b * d, c: self.a * d }
    }

    /// Product with a vector.
    pub fn times(self, v: [f64; 2]) -> [f64; 2] {
        [self.a * v[0] + self.b * v[1], self.b * v[0] + self.c * v[1]]
    }

    /// Sum.
    pub fn plus(self, o: Sym2) -> Sym2 {
        Sym2 { a: self.a + o.a, b: self.b + o.b, c: self.c + o.c }
    }

    /// The same block seen from the other side: the sign of slopes turns.
    pub fn mirrored(self) -> Sym2 {
        Sym2 { b: -self.b, ..self }
    }

    /// Whether both eigenvalues are positive. False for NaN, so that nothing that is not a number ever passes.
    pub fn is_positive(self) -> bool {
        self.det() > 0.0 && self.a > 0.0
    }

    /// A pivot that vanishes exactly is moved by the rounding of its entries, so that it can be inverted.
    fn nudged(self) -> Sym2 {
        if self.det() != 0.0 {
            return self;
        }
        let shift = |x: f64| x + f64::EPSILON * (x.abs() + self.b.abs() + f64::MIN_POSITIVE);
        Sym2 { a: shift(self.a), b: self.b, c: shift(self.c) }
    }

    fn minus(self, o: Sym2) -> Sym2 {
        Sym2 { a: self.a - o.a, b: self.b - o.b, c: self.c - o.c }
    }

    /// Number of negative eigenvalues. The sign of the determinant decides unless it drowns in rounding.
    pub fn negatives(self) -> usize {
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
        let condensed = self.condense()?;
        let last = condensed.last();
        last.is_positive().then(|| Factor { last: last.inverse(), condensed })
    }

    /// Eliminates all blocks but the last; what is left there can be joined with another structure.
    ///
    /// `None` when a block that is eliminated is not positive definite.
    pub fn condense(&self) -> Option<Condensed<'_>> {
        self.condense_onto(Sym2::default())
    }

    /// The same with what another structure, eliminated before, has left at the first block.
    pub fn condense_onto(&self, left: Sym2) -> Option<Condensed<'_>> {
        let n = self.len();
        let mut pivots = Vec::with_capacity(n);
        let mut inverses = Vec::with_capacity(n);
        for i in 0..n {
            let p = match i {
                0 => self.diag[0].plus(left),
                _ => self.diag[i].minus(congruence(&self.upper[i - 1], inverses[i - 1])),
            };
            pivots.push(p);
            if i + 1 < n {
                if !p.is_positive() {
                    return None;
                }
                inverses.push(p.inverse());
            }
        }
        Some(Condensed { matrix: self, pivots, inverses })
    }

    /// Eliminates all blocks but the last of `K - σ M`: the number of negative pivots on the way (at most `enough`), and
    /// what is left at the last block.
    ///
    /// `self` is `K`, `shift` is `σ`; both matrices have the same shape. By Sylvester's law of inertia the negative
    /// pivots, with those of the last block, are the eigenvalues of `K x = λ M x` below `σ`.
    /// Source: Parlett, The Symmetric Eigenvalue Problem (1980), section 3.3 (from memory).
    pub fn condense_shifted(&self, m: &BlockTri, shift: f64, enough: usize) -> (usize, Sym2) {
        let mut count = 0;
        let mut last = Sym2::default();
        let mut coupling = [0.0; 4];
        let n = self.len();
        for i in 0..n {
            let (k, w) = (self.diag[i], m.diag[i]);
            let mut p = Sym2 { a: k.a - shift * w.a, b: k.b - shift * w.b, c: k.c - shift * w.c };
            if i > 0 {
                p = p.minus(congruence(&coupling, last));
            }
            if i + 1 == n {
                return (count, p);
            }
            let p = p.nudged();
            count += p.negatives();
            if count >= enough {
                return (count, p);
            }
            last = p.inverse();
            let (ke, me) = (&self.upper[i], &m.upper[i]);
            coupling = std::array::from_fn(|j| ke[j] - shift * me[j]);
        }
        (count, last)
    }

    /// Eliminates all blocks but the last of `K - σ M` as long as it is positive definite; none where it is not, and then an eigenvalue
    /// of `K x = λ M x` lies below `σ`. What is left at the last block is to be judged with what it is joined to.
    pub fn condense_above(&self, m: &BlockTri, shift: f64) -> Option<Sym2> {
        self.condense_above_onto(Sym2::default(), m, shift)
    }

    /// The same with what another structure, eliminated before at the same shift, has left at the first block.
    pub fn condense_above_onto(&self, left: Sym2, m: &BlockTri, shift: f64) -> Option<Sym2> {
        let shifted = |i: usize| {
            let (k, w) = (self.diag[i], m.diag[i]);
            Sym2 { a: k.a - shift * w.a, b: k.b - shift * w.b, c: k.c - shift * w.c }
        };
        let mut p = shifted(0).plus(left);
        for (i, (ke, me)) in self.upper.iter().zip(&m.upper).enumerate() {
            let det = p.det();
            if !(det > 0.0 && p.a > 0.0) {
                return None;
            }
            let coupling: Mat2 = std::array::from_fn(|j| ke[j] - shift * me[j]);
            let d = 1.0 / det;
            p = shifted(i + 1).minus(congruence(&coupling, Sym2 { a: p.c * d, b: -p.b * d, c: p.a * d }));
        }
        Some(p)
    }

    /// Whether no eigenvalue of `K x = λ M x` lies below `shift`. `self` is `K`.
    pub fn swings_above(&self, m: &BlockTri, shift: f64) -> bool {
        self.condense_above(m, shift).is_some_and(Sym2::is_positive)
    }

    /// Solves `(K - σ M) x = v` in place, without pivoting: fit for inverse iteration, whose result is checked by other means.
    pub fn solve_shifted(&self, m: &BlockTri, shift: f64, v: &mut [[f64; 2]]) {
        let n = self.len();
        let mut inverses: Vec<Sym2> = Vec::with_capacity(n);
        let coupling = |i: usize| -> Mat2 { std::array::from_fn(|j| self.upper[i][j] - shift * m.upper[i][j]) };
        for i in 0..n {
            let (k, w) = (self.diag[i], m.diag[i]);
            let mut p = Sym2 { a: k.a - shift * w.a, b: k.b - shift * w.b, c: k.c - shift * w.c };
            if i > 0 {
                let e = coupling(i - 1);
                p = p.minus(congruence(&e, inverses[i - 1]));
                let y = inverses[i - 1].times(v[i - 1]);
                v[i][0] -= e[0] * y[0] + e[2] * y[1];
                v[i][1] -= e[1] * y[0] + e[3] * y[1];
            }
            inverses.push(p.nudged().inverse());
        }
        for i in (0..n).rev() {
            if i + 1 < n {
                let (e, x) = (coupling(i), v[i + 1]);
                v[i][0] -= e[0] * x[0] + e[1] * x[1];
                v[i][1] -= e[2] * x[0] + e[3] * x[1];
            }
            v[i] = inverses[i].times(v[i]);
        }
    }

    /// Number of eigenvalues of `K x = σ M x` below `shift = σ`; stops counting at `enough`. `self` is `K`.
    pub fn eigenvalues_below(&self, m: &BlockTri, shift: f64, enough: usize) -> usize {
        let (count, last) = self.condense_shifted(m, shift, enough);
        if count >= enough { count } else { count + last.nudged().negatives() }
    }
}

/// A matrix with all blocks but the last eliminated.
#[derive(Debug, Clone)]
pub struct Condensed<'a> {
    matrix: &'a BlockTri,
    /// The last one is what is left at the last block.
    pivots: Vec<Sym2>,
    inverses: Vec<Sym2>,
}

impl<'a> Condensed<'a> {
    /// Reduces a right side in place: its last entry is then what acts on the last block.
    pub fn reduce(&self, v: &mut [[f64; 2]]) {
        for i in 1..self.pivots.len() {
            let y = self.inverses[i - 1].times(v[i - 1]);
            let e = &self.matrix.upper[i - 1];
            v[i][0] -= e[0] * y[0] + e[2] * y[1];
            v[i][1] -= e[1] * y[0] + e[3] * y[1];
        }
    }

    /// Solves for a reduced right side with the last block held still, in place.
    pub fn solve_held(&self, v: &mut [[f64; 2]]) {
        if let Some(x) = v.last_mut() {
            *x = [0.0; 2];
        }
        self.back(v);
    }

    /// How each block follows the last one where nothing else acts: its answer for a unit step of either unknown there, in columns.
    pub fn follow(&self) -> Vec<Mat2> {
        let n = self.pivots.len();
        let mut all = vec![[1.0, 0.0, 0.0, 1.0]; n];
        for i in (0..n - 1).rev() {
            let (e, t, p) = (&self.matrix.upper[i], all[i + 1], self.inverses[i]);
            let acts = [
                e[0] * t[0] + e[1] * t[2],
                e[0] * t[1] + e[1] * t[3],
                e[2] * t[0] + e[3] * t[2],
                e[2] * t[1] + e[3] * t[3],
            ];
            all[i] = [
                -(p.a * acts[0] + p.b * acts[2]),
                -(p.a * acts[1] + p.b * acts[3]),
                -(p.b * acts[0] + p.c * acts[2]),
                -(p.b * acts[1] + p.c * acts[3]),
            ];
        }
        all
    }

    /// Back substitution from the last block, which holds its answer.
    fn back(&self, v: &mut [[f64; 2]]) {
        for i in (0..self.pivots.len() - 1).rev() {
            let (e, x) = (&self.matrix.upper[i], v[i + 1]);
            v[i][0] -= e[0] * x[0] + e[1] * x[1];
            v[i][1] -= e[2] * x[0] + e[3] * x[1];
            v[i] = self.inverses[i].times(v[i]);
        }
    }

    /// The diagonal blocks of the inverse for the blocks of a range, where those behind its end are held still; zeros elsewhere.
    ///
    /// By one sweep from the rear: with `F` the pivots from the front and `B` those from the rear, block `i` of the
    /// inverse is `(F_i + B_i - D_i)⁻¹`. Costs one more factoring, not `n` solves.
    pub fn inverse_diagonal(&self, range: std::ops::Range<usize>) -> Vec<Sym2> {
        let (diag, upper) = (&self.matrix.diag, &self.matrix.upper);
        let mut out = vec![Sym2::default(); self.pivots.len()];
        // What the nodes behind take off node i's diagonal.
        let mut behind = Sym2::default();
        for i in range.clone().rev() {
            out[i] = self.pivots[i].minus(behind).inverse();
            if i > range.start {
                behind = congruence_t(&upper[i - 1], diag[i].minus(behind).inverse());
            }
        }
        out
    }

    /// What is left at the last block.
    pub fn last(&self) -> Sym2 {
        self.pivots[self.pivots.len() - 1]
    }
}

/// A factored positive definite matrix.
#[derive(Debug, Clone)]
pub struct Factor<'a> {
    condensed: Condensed<'a>,
    last: Sym2,
}

impl Factor<'_> {
    /// Solves in place.
    pub fn solve(&self, v: &mut [[f64; 2]]) {
        self.condensed.reduce(v);
        if let Some(x) = v.last_mut() {
            *x = self.last.times(*x);
        }
        self.condensed.back(v);
    }

    /// The diagonal blocks of the inverse from a block on; zeros in front of it.
    pub fn inverse_diagonal_from(&self, from: usize) -> Vec<Sym2> {
        self.condensed.inverse_diagonal(from..self.condensed.pivots.len())
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
        for (i, s) in f.inverse_diagonal_from(0).iter().enumerate() {
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

    fn mass() -> BlockTri {
        BlockTri {
            diag: vec![
                Sym2 { a: 2.0, b: 0.1, c: 1.0 },
                Sym2 { a: 3.0, b: 0.2, c: 2.0 },
                Sym2 { a: 2.0, b: -0.1, c: 1.5 },
            ],
            upper: vec![[0.2, 0.1, -0.1, 0.3], [0.1, 0.2, 0.05, -0.1]],
        }
    }

    /// Below all eigenvalues, between them and above them all.
    #[test]
    fn shifted_by_a_mass_it_agrees_with_dense_algebra() {
        let (k, m) = (chain(), mass());
        let inverse_root = dense(&m).cholesky().expect("positive definite").l().try_inverse().expect("regular");
        let eigen = (&inverse_root * dense(&k) * inverse_root.transpose()).symmetric_eigenvalues();
        for shift in [0.5, 2.2, 3.1, 20.0] {
            let below = eigen.iter().filter(|e| **e < shift).count();
            assert_eq!(k.eigenvalues_below(&m, shift, 9), below, "at {shift}");
            assert_eq!(k.swings_above(&m, shift), below == 0, "at {shift}");
            let inverse = (dense(&k) - dense(&m) * shift).try_inverse().expect("regular");
            for column in 0..6 {
                let mut v = vec![[0.0; 2]; 3];
                v[column / 2][column % 2] = 1.0;
                k.solve_shifted(&m, shift, &mut v);
                for row in 0..6 {
                    assert!((v[row / 2][row % 2] - inverse[(row, column)]).abs() < 1e-11, "at {shift}");
                }
            }
        }
    }

    /// 4 · 1 - 2² is nothing: moved by no more than rounding, and only then.
    #[test]
    fn a_pivot_that_vanishes_is_moved_a_little() {
        let moved = Sym2 { a: 4.0, b: 2.0, c: 1.0 }.nudged();
        assert!(moved.det() > 0.0 && (moved.a - 4.0).abs() < 1e-14 && (moved.c - 1.0).abs() < 1e-14 && moved.b == 2.0);
        let regular = Sym2 { a: 4.0, b: 2.0, c: 2.0 };
        assert_eq!(regular.nudged(), regular);
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
