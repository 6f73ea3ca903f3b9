//! Symmetric block-tridiagonal matrices with 2 × 2 blocks: the matrices of a beam with two unknowns per node.
//!
//! Blocks are eliminated one after the other without pivoting (block form of `L D Lᵀ`). This is stable for the positive definite
//! stiffness of a held beam. For a shifted matrix `K - σM` only the signs of the pivots are used: by Sylvester's law of inertia
//! the number of eigenvalues below `σ` is the number of negative pivots. A pivot that is exactly singular is changed slightly
//! (nudged); the effect on `σ` is smaller than the rounding of the matrix.
//!
//! This file condenses a structure onto its last block, so that it can be joined with another structure. Whole beams are eliminated
//! from both ends, see [`factor`](super::factor).

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
    #[inline]
    fn det(self) -> f64 {
        self.a * self.c - self.b * self.b
    }

    /// Inverse. The caller makes sure that the determinant is not zero.
    #[inline]
    pub fn inverse(self) -> Sym2 {
        let d = 1.0 / self.det();
        Sym2 { a: self.c * d, b: -self.b * d, c: self.a * d }
    }

    /// Product with a vector.
    #[inline]
    pub fn times(self, v: [f64; 2]) -> [f64; 2] {
        [self.a * v[0] + self.b * v[1], self.b * v[0] + self.c * v[1]]
    }

    /// Sum.
    #[inline]
    pub fn plus(self, o: Sym2) -> Sym2 {
        Sym2 { a: self.a + o.a, b: self.b + o.b, c: self.c + o.c }
    }

    /// The block for the reversed direction of the axis: slopes change their sign.
    #[inline]
    pub fn mirrored(self) -> Sym2 {
        Sym2 { b: -self.b, ..self }
    }

    /// Whether both eigenvalues are positive. False for NaN, so that NaN never passes as positive.
    #[inline]
    pub fn is_positive(self) -> bool {
        self.det() > 0.0 && self.a > 0.0
    }

    /// The pivot itself, or, if it is exactly singular, a pivot changed by the rounding of its entries so that it can be inverted.
    #[inline]
    pub(super) fn nudged(self) -> Sym2 {
        if self.det() != 0.0 {
            return self;
        }
        let shift = |x: f64| x + f64::EPSILON * (x.abs() + self.b.abs() + f64::MIN_POSITIVE);
        Sym2 { a: shift(self.a), b: self.b, c: shift(self.c) }
    }

    /// Difference.
    #[inline]
    pub(super) fn minus(self, o: Sym2) -> Sym2 {
        Sym2 { a: self.a - o.a, b: self.b - o.b, c: self.c - o.c }
    }

    #[inline]
    fn scaled(self, by: f64) -> Sym2 {
        Sym2 { a: self.a * by, b: self.b * by, c: self.c * by }
    }

    /// Number of negative eigenvalues, from the signs of determinant and trace.
    #[inline]
    pub(super) fn negatives(self) -> usize {
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

/// Transpose of a coupling block: the block below the diagonal.
#[inline]
pub(super) fn transposed(e: &Mat2) -> Mat2 {
    [e[0], e[2], e[1], e[3]]
}

/// `E x`.
#[inline]
fn times(e: &Mat2, x: [f64; 2]) -> [f64; 2] {
    [e[0] * x[0] + e[1] * x[1], e[2] * x[0] + e[3] * x[1]]
}

/// `E P Eᵀ` for symmetric `P`.
#[inline]
fn congruence(e: &Mat2, p: Sym2) -> Sym2 {
    let (first, second) = (p.times([e[0], e[1]]), p.times([e[2], e[3]]));
    Sym2 {
        a: e[0] * first[0] + e[1] * first[1],
        b: e[2] * first[0] + e[3] * first[1],
        c: e[2] * second[0] + e[3] * second[1],
    }
}

/// `adj(P) E` and `Eᵀ adj(P) E`. Divided by the determinant of `P` they are `P⁻¹ E` and `Eᵀ P⁻¹ E`. The processor can compute the
/// reciprocal of the determinant at the same time as these products.
#[inline]
fn adjugate(p: Sym2, e: &Mat2) -> (Mat2, Sym2) {
    let adj = [p.c * e[0] - p.b * e[2], p.c * e[1] - p.b * e[3], p.a * e[2] - p.b * e[0], p.a * e[3] - p.b * e[1]];
    let square =
        Sym2 { a: e[0] * adj[0] + e[2] * adj[2], b: e[0] * adj[1] + e[2] * adj[3], c: e[1] * adj[1] + e[3] * adj[3] };
    (adj, square)
}

/// The term `Eᵀ P⁻¹ E` that is subtracted from the neighbour's block when pivot `P` with coupling `E` to that neighbour is eliminated.
#[inline]
pub(super) fn taken(p: Sym2, e: &Mat2) -> Sym2 {
    adjugate(p, e).1.scaled(1.0 / p.det())
}

/// An eliminated block: what back-substitution needs of it.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Gone {
    /// Inverse of the pivot.
    inverse: Sym2,
    /// `P⁻¹ E`: without a load on this block, its solution is minus this matrix times the neighbour's solution.
    gain: Mat2,
}

impl Gone {
    /// Eliminates pivot `p` with coupling `e` to its neighbour. The second result is the term to subtract from the neighbour's block.
    #[inline]
    pub(super) fn new(p: Sym2, e: &Mat2) -> (Gone, Sym2) {
        let d = 1.0 / p.det();
        let (adj, square) = adjugate(p, e);
        (Gone { inverse: p.inverse(), gain: adj.map(|x| x * d) }, square.scaled(d))
    }

    /// Forward substitution: the neighbour's right side after this block, with right side `acts`, is eliminated.
    #[inline]
    pub(super) fn hand_on(&self, acts: [f64; 2], neighbour: [f64; 2]) -> [f64; 2] {
        let part = times(&transposed(&self.gain), acts);
        [neighbour[0] - part[0], neighbour[1] - part[1]]
    }

    /// Back-substitution: the solution of this block from its right side `acts` and the neighbour's solution.
    #[inline]
    pub(super) fn answer(&self, acts: [f64; 2], neighbour: [f64; 2]) -> [f64; 2] {
        let (own, part) = (self.inverse.times(acts), times(&self.gain, neighbour));
        [own[0] - part[0], own[1] - part[1]]
    }

    /// Diagonal block of the inverse matrix, from the neighbour's diagonal block of the inverse.
    /// Source: Takahashi, Fagan & Chen, PICA Conf. Proc. (1973) (from memory).
    #[inline]
    pub(super) fn flexibility(&self, neighbour: Sym2) -> Sym2 {
        self.inverse.plus(congruence(&self.gain, neighbour))
    }

    /// Chain rule: if the neighbour's solution is `t` times the solution of some block, this gives the same matrix for this block.
    #[inline]
    fn follows(&self, t: &Mat2) -> Mat2 {
        let [first, second] = [[t[0], t[2]], [t[1], t[3]]].map(|column| times(&self.gain, column));
        [-first[0], -second[0], -first[1], -second[1]]
    }
}

/// A symmetric block-tridiagonal matrix of `n` diagonal blocks and `n - 1` blocks above the diagonal.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct BlockTri {
    /// Diagonal blocks.
    pub diag: Vec<Sym2>,
    /// Blocks above the diagonal: `upper[i]` couples node `i` (rows) with node `i + 1` (columns).
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
        let Some((last, first)) = self.diag.split_last() else { return };
        // Product of the block below the diagonal with the values of the node before.
        let mut carried = [0.0; 2];
        for ((d, e), x) in first.iter().zip(&self.upper).zip(v.windows(2)) {
            let (own, rear) = (d.times(x[0]), times(e, x[1]));
            out.push([carried[0] + own[0] + rear[0], carried[1] + own[1] + rear[1]]);
            carried = times(&transposed(e), x[0]);
        }
        let own = last.times(v[first.len()]);
        out.push([carried[0] + own[0], carried[1] + own[1]]);
    }

    /// Eliminates all blocks except the last. The condensed stiffness at the last block can be joined with another structure.
    ///
    /// `None` when a pivot is not positive definite.
    pub fn condense(&self) -> Option<Condensed> {
        self.condense_onto(Sym2::default())
    }

    /// As [`BlockTri::condense`], with `left` (the condensed stiffness of another structure) added to the first block.
    pub fn condense_onto(&self, left: Sym2) -> Option<Condensed> {
        let mut gone = Vec::with_capacity(self.len());
        let mut last = self.diag.first()?.plus(left);
        for (e, next) in self.upper.iter().zip(&self.diag[1..]) {
            if !last.is_positive() {
                return None;
            }
            let (block, taken) = Gone::new(last, e);
            gone.push(block);
            last = next.minus(taken);
        }
        Some(Condensed { gone, last })
    }

    /// Diagonal block `i` of `K - σ M`. `self` is `K`, `shift` is `σ`; both matrices have the same shape.
    #[inline]
    pub(super) fn shifted(&self, m: &BlockTri, shift: f64, i: usize) -> Sym2 {
        self.diag[i].minus(m.diag[i].scaled(shift))
    }

    /// The block of `K - σ M` above the diagonal that couples node `i` with the next.
    #[inline]
    pub(super) fn shifted_coupling(&self, m: &BlockTri, shift: f64, i: usize) -> Mat2 {
        let (k, m) = (&self.upper[i], &m.upper[i]);
        std::array::from_fn(|j| k[j] - shift * m[j])
    }

    /// Eliminates all blocks of `K - σ M` except the last, and returns the condensed last block. `None` when a pivot is not positive
    /// definite: then an eigenvalue of `K x = λ M x` lies at or below `σ`. The last block is not tested here: the caller tests it after
    /// joining it with another structure.
    pub fn condense_above(&self, m: &BlockTri, shift: f64) -> Option<Sym2> {
        self.condense_above_onto(Sym2::default(), m, shift)
    }

    /// As [`BlockTri::condense_above`], with `left` (another structure, condensed at the same shift) added to the first block.
    pub fn condense_above_onto(&self, left: Sym2, m: &BlockTri, shift: f64) -> Option<Sym2> {
        let mut p = self.shifted(m, shift, 0).plus(left);
        for i in 1..self.len() {
            if !p.is_positive() {
                return None;
            }
            p = self.shifted(m, shift, i).minus(taken(p, &self.shifted_coupling(m, shift, i - 1)));
        }
        Some(p)
    }
}

/// A matrix in which all blocks except the last are eliminated.
#[derive(Debug, Clone)]
pub struct Condensed {
    gone: Vec<Gone>,
    /// Condensed last block.
    last: Sym2,
}

impl Condensed {
    /// Forward substitution in place: afterwards the last entry is the condensed load at the last block.
    pub fn reduce(&self, v: &mut [[f64; 2]]) {
        let mut acts = v[0];
        for (block, next) in self.gone.iter().zip(&mut v[1..]) {
            acts = block.hand_on(acts, *next);
            *next = acts;
        }
    }

    /// Back-substitution in place for a reduced right side, with the last block held still (its solution is zero).
    pub fn solve_held(&self, v: &mut [[f64; 2]]) {
        let mut moved = [0.0; 2];
        v[self.gone.len()] = moved;
        for (block, x) in self.gone.iter().zip(v).rev() {
            moved = block.answer(*x, moved);
            *x = moved;
        }
    }

    /// How each block moves with the last block when no load acts: the columns are the solutions for a unit value of the last block's
    /// first and second unknown.
    pub fn follow(&self) -> Vec<Mat2> {
        let mut all = vec![[1.0, 0.0, 0.0, 1.0]; self.gone.len() + 1];
        for (i, block) in self.gone.iter().enumerate().rev() {
            all[i] = block.follows(&all[i + 1]);
        }
        all
    }

    /// Diagonal blocks of the inverse matrix from block `from` on, with the last block held still. Blocks before `from` are zero.
    pub fn inverse_diagonal_held(&self, from: usize) -> Vec<Sym2> {
        let mut out = vec![Sym2::default(); self.gone.len() + 1];
        let mut behind = Sym2::default();
        for (i, block) in self.gone.iter().enumerate().skip(from).rev() {
            behind = block.flexibility(behind);
            out[i] = behind;
        }
        out
    }

    /// The condensed last block.
    pub fn last(&self) -> Sym2 {
        self.last
    }
}

#[cfg(test)]
mod tests {
    use super::super::factor::tests::{chain, dense};
    use super::*;

    /// The condensed last block is the inverse of the last block of the inverse matrix, for any length. With another structure in front the
    /// result is that of one matrix for both.
    #[test]
    fn condensed_it_answers_as_dense_algebra_does() {
        for n in 1..=6 {
            let whole = chain(n);
            let inverse = dense(&whole).try_inverse().expect("regular");
            let at = 2 * n - 2;
            let last = whole.condense().expect("positive definite").last().inverse();
            assert!((last.a - inverse[(at, at)]).abs() < 1e-14, "{n}");
            assert!((last.b - inverse[(at, at + 1)]).abs() < 1e-14, "{n}");
            assert!((last.c - inverse[(at + 1, at + 1)]).abs() < 1e-14, "{n}");
            let shifted = whole.condense_above(&BlockTri::zeros(n), 0.3).expect("positive definite").inverse();
            assert!((shifted.a - last.a).abs() < 1e-14 && (shifted.b - last.b).abs() < 1e-14, "{n}");
            for cut in 1..n {
                let front = BlockTri { diag: whole.diag[..=cut].to_vec(), upper: whole.upper[..cut].to_vec() };
                let rear = BlockTri { diag: whole.diag[cut..].to_vec(), upper: whole.upper[cut..].to_vec() };
                let left = front.condense().expect("positive definite").last();
                let onto = rear.diag[0];
                let left = left.minus(onto);
                let joined = rear.condense_onto(left).expect("positive definite").last().inverse();
                assert!((joined.a - last.a).abs() < 1e-14 && (joined.c - last.c).abs() < 1e-14, "{n} cut at {cut}");
            }
        }
    }

    /// With the last block held still, the other blocks behave as a matrix without it.
    #[test]
    fn held_it_answers_as_the_matrix_without_its_last_block() {
        for n in 2..=6 {
            let whole = chain(n);
            let inverse = dense(&chain(n - 1)).try_inverse().expect("regular");
            let condensed = whole.condense().expect("positive definite");
            for from in 0..n {
                for (i, s) in condensed.inverse_diagonal_held(from).iter().enumerate() {
                    let there = if i >= from && i + 1 < n { inverse[(2 * i, 2 * i)] } else { 0.0 };
                    assert!((s.a - there).abs() < 1e-14, "{i} of {n} from {from}");
                }
            }
            let acts: Vec<[f64; 2]> = (0..n).map(|i| [1.0 + i as f64, 0.5 - i as f64]).collect();
            let mut v = acts.clone();
            condensed.reduce(&mut v);
            let at_last = v[n - 1];
            condensed.solve_held(&mut v);
            let pushed = nalgebra::DVector::from_iterator(2 * n - 2, acts[..n - 1].as_flattened().iter().copied());
            let held = &inverse * pushed;
            for (row, x) in v[..n - 1].as_flattened().iter().enumerate() {
                assert!((x - held[row]).abs() < 1e-13, "row {row} of {n}");
            }
            assert_eq!(v[n - 1], [0.0; 2]);
            // Joined again: the last block moves under its load, and the others follow it.
            let moved = condensed.last().inverse().times(at_last);
            let whole_inverse = dense(&whole).try_inverse().expect("regular");
            let pushed = nalgebra::DVector::from_iterator(2 * n, acts.as_flattened().iter().copied());
            let together = &whole_inverse * pushed;
            for (i, (t, x)) in condensed.follow().iter().zip(&v).enumerate() {
                let part = times(t, moved);
                for side in 0..2 {
                    assert!((x[side] + part[side] - together[2 * i + side]).abs() < 1e-13, "{i} of {n}");
                }
            }
        }
    }

    /// The determinant 4 · 1 - 2² is zero. Only such a pivot is changed, and by no more than rounding.
    #[test]
    fn a_pivot_that_vanishes_is_moved_a_little() {
        let moved = Sym2 { a: 4.0, b: 2.0, c: 1.0 }.nudged();
        assert!(moved.det() > 0.0 && (moved.a - 4.0).abs() < 1e-14 && (moved.c - 1.0).abs() < 1e-14 && moved.b == 2.0);
        assert!(!Sym2 { a: 4.0, b: 2.0, c: 1.0 }.is_positive(), "nothing holds in one direction");
        let regular = Sym2 { a: 4.0, b: 2.0, c: 2.0 };
        assert_eq!(regular.nudged(), regular);
    }

    #[test]
    fn what_is_condensed_must_be_positive_definite() {
        let mut m = chain(4);
        m.diag[1].a = -6.0;
        assert!(m.condense().is_none() && m.condense_above(&BlockTri::zeros(4), 0.0).is_none());
        // The last block is tested only after it is joined with another structure.
        let mut m = chain(4);
        m.diag[3].a = -6.0;
        assert!(m.condense().is_some_and(|c| !c.last().is_positive()));
        assert!(BlockTri::zeros(0).condense().is_none());
    }
}
