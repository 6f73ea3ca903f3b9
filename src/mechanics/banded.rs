//! Symmetric block-tridiagonal systems with 2 × 2 blocks: the band a beam of two unknowns a node gives.
//!
//! Blocks are eliminated one after the other without pivoting: the block form of `L D Lᵀ`. It is stable for the positive definite stiffness
//! of a held beam; for a shifted matrix `K - σM` only the signs of the pivots are used (Sylvester's law of inertia: as many
//! eigenvalues below `σ` as negative pivots), and a pivot that vanishes exactly is nudged, which moves `σ` by less
//! than the rounding of the matrix.
//!
//! Here a structure is condensed onto its last block, to be joined with another; whole beams are eliminated from both ends, see
//! [`factor`](super::factor).

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

    /// Inverse; the caller has made sure that the determinant is not zero.
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

    /// The same block seen from the other side: the sign of slopes turns.
    #[inline]
    pub fn mirrored(self) -> Sym2 {
        Sym2 { b: -self.b, ..self }
    }

    /// Whether both eigenvalues are positive. False for NaN, so that nothing that is not a number ever passes.
    #[inline]
    pub fn is_positive(self) -> bool {
        self.det() > 0.0 && self.a > 0.0
    }

    /// A pivot that vanishes exactly is moved by the rounding of its entries, so that it can be inverted.
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

    /// Number of negative eigenvalues. The sign of the determinant decides unless it drowns in rounding.
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

/// The block across the diagonal from a coupling.
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

/// `adj(P) E` and `Eᵀ adj(P) E`: what is left to do is to divide by the determinant of `P`, and the division need not wait for them.
#[inline]
fn adjugate(p: Sym2, e: &Mat2) -> (Mat2, Sym2) {
    let adj = [p.c * e[0] - p.b * e[2], p.c * e[1] - p.b * e[3], p.a * e[2] - p.b * e[0], p.a * e[3] - p.b * e[1]];
    let square =
        Sym2 { a: e[0] * adj[0] + e[2] * adj[2], b: e[0] * adj[1] + e[2] * adj[3], c: e[1] * adj[1] + e[3] * adj[3] };
    (adj, square)
}

/// What eliminating a pivot that is coupled to its neighbour by `e` takes off the neighbour's block: `Eᵀ P⁻¹ E`.
#[inline]
pub(super) fn taken(p: Sym2, e: &Mat2) -> Sym2 {
    adjugate(p, e).1.scaled(1.0 / p.det())
}

/// A block that was eliminated.
#[derive(Debug, Clone, Copy, Default)]
pub(super) struct Gone {
    /// Inverse of its pivot.
    inverse: Sym2,
    /// `P⁻¹ E`: where nothing acts on it, it follows its neighbour's answer by this, with the sign turned.
    gain: Mat2,
}

impl Gone {
    /// Eliminates a pivot that is coupled to its neighbour by `e`; also what that takes off the neighbour's block.
    #[inline]
    pub(super) fn new(p: Sym2, e: &Mat2) -> (Gone, Sym2) {
        let d = 1.0 / p.det();
        let (adj, square) = adjugate(p, e);
        (Gone { inverse: p.inverse(), gain: adj.map(|x| x * d) }, square.scaled(d))
    }

    /// What acts on the neighbour when this acts here.
    #[inline]
    pub(super) fn hand_on(&self, acts: [f64; 2], neighbour: [f64; 2]) -> [f64; 2] {
        let part = times(&transposed(&self.gain), acts);
        [neighbour[0] - part[0], neighbour[1] - part[1]]
    }

    /// Its answer, from its neighbour's.
    #[inline]
    pub(super) fn answer(&self, acts: [f64; 2], neighbour: [f64; 2]) -> [f64; 2] {
        let (own, part) = (self.inverse.times(acts), times(&self.gain, neighbour));
        [own[0] - part[0], own[1] - part[1]]
    }

    /// Its block of the inverse, from its neighbour's.
    /// Source: Takahashi, Fagan & Chen, PICA Conf. Proc. (1973) (from memory).
    #[inline]
    pub(super) fn flexibility(&self, neighbour: Sym2) -> Sym2 {
        self.inverse.plus(congruence(&self.gain, neighbour))
    }

    /// How it follows a block that its neighbour follows by `t`, in columns.
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
        let Some((last, first)) = self.diag.split_last() else { return };
        // What the node in front hands over.
        let mut carried = [0.0; 2];
        for ((d, e), x) in first.iter().zip(&self.upper).zip(v.windows(2)) {
            let (own, rear) = (d.times(x[0]), times(e, x[1]));
            out.push([carried[0] + own[0] + rear[0], carried[1] + own[1] + rear[1]]);
            carried = times(&transposed(e), x[0]);
        }
        let own = last.times(v[first.len()]);
        out.push([carried[0] + own[0], carried[1] + own[1]]);
    }

    /// Eliminates all blocks but the last; what is left there can be joined with another structure.
    ///
    /// `None` when a block that is eliminated is not positive definite.
    pub fn condense(&self) -> Option<Condensed> {
        self.condense_onto(Sym2::default())
    }

    /// The same with what another structure, eliminated before, has left at the first block.
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

    /// Diagonal block of `K - σ M`. `self` is `K`, `shift` is `σ`; both matrices have the same shape.
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

    /// Eliminates all blocks but the last of `K - σ M` as long as it is positive definite; none where it is not, and then an eigenvalue
    /// of `K x = λ M x` lies below `σ`. What is left at the last block is to be judged with what it is joined to.
    pub fn condense_above(&self, m: &BlockTri, shift: f64) -> Option<Sym2> {
        self.condense_above_onto(Sym2::default(), m, shift)
    }

    /// The same with what another structure, eliminated before at the same shift, has left at the first block.
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

/// A matrix with all blocks but the last eliminated.
#[derive(Debug, Clone)]
pub struct Condensed {
    gone: Vec<Gone>,
    /// What is left at the last block.
    last: Sym2,
}

impl Condensed {
    /// Reduces a right side in place: its last entry is then what acts on the last block.
    pub fn reduce(&self, v: &mut [[f64; 2]]) {
        let mut acts = v[0];
        for (block, next) in self.gone.iter().zip(&mut v[1..]) {
            acts = block.hand_on(acts, *next);
            *next = acts;
        }
    }

    /// Solves for a reduced right side with the last block held still, in place.
    pub fn solve_held(&self, v: &mut [[f64; 2]]) {
        let mut moved = [0.0; 2];
        v[self.gone.len()] = moved;
        for (block, x) in self.gone.iter().zip(v).rev() {
            moved = block.answer(*x, moved);
            *x = moved;
        }
    }

    /// How each block follows the last one where nothing else acts: its answer for a unit step of either unknown there, in columns.
    pub fn follow(&self) -> Vec<Mat2> {
        let mut all = vec![[1.0, 0.0, 0.0, 1.0]; self.gone.len() + 1];
        for (i, block) in self.gone.iter().enumerate().rev() {
            all[i] = block.follows(&all[i + 1]);
        }
        all
    }

    /// The diagonal blocks of the inverse from a block on, with the last one held still; zeros in front of it.
    pub fn inverse_diagonal_held(&self, from: usize) -> Vec<Sym2> {
        let mut out = vec![Sym2::default(); self.gone.len() + 1];
        let mut behind = Sym2::default();
        for (i, block) in self.gone.iter().enumerate().skip(from).rev() {
            behind = block.flexibility(behind);
            out[i] = behind;
        }
        out
    }

    /// What is left at the last block.
    pub fn last(&self) -> Sym2 {
        self.last
    }
}

#[cfg(test)]
mod tests {
    use super::super::factor::tests::{chain, dense};
    use super::*;

    /// What is left at the last block is the inverse of the last block of the inverse, whatever the length, and with another structure in
    /// front as with that in one matrix.
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

    /// With the last block held still the others are a shorter matrix of their own.
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
            // Joined again: the last block moves under what acts on it, and the others follow.
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

    /// 4 · 1 - 2² is nothing: moved by no more than rounding, and only then.
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
        // The last block is judged with what it is joined to.
        let mut m = chain(4);
        m.diag[3].a = -6.0;
        assert!(m.condense().is_some_and(|c| !c.last().is_positive()));
        assert!(BlockTri::zeros(0).condense().is_none());
    }
}
