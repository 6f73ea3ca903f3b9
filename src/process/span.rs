//! The beam of a state in three parts: inside the counter-spindle, the span from its nose to the bush face, and behind the bush face.
//!
//! The part behind the bush face is always raw bar on the same springs, so it depends only on the place of the headstock. The part in
//! front of the nose does not depend on the place of the tool. Only the span depends on the turned length. Each part is
//! condensed once, and parts are joined by a 2 × 2 block, so a state costs a fraction of a whole beam. The answers are those of
//! [`Rig::answers`](super::Rig) within rounding. One inertia count tells whether the critical speed lies above a speed, without
//! computing an eigenvalue.
//! Source: static condensation, Guyan, AIAA J. 3 (1965) (from memory). Done on `K - σM` instead of `K` it is exact for vibration too.

use super::checks::span_stiffness;
use super::pressed::stiffness_left;
use super::rig::Rig;
use super::state::{Counter, Guide, State};
use crate::mechanics::banded::{BlockTri, Mat2, Sym2};
use crate::mechanics::beam::{Beam, Spring};
use crate::units::n_per_um;
use std::sync::{Arc, OnceLock};

/// The part of the beam in front of a nose.
pub struct Inside {
    beam: Beam,
    rest: Option<InsideAtRest>,
}

/// [`Inside`] condensed onto the nose, without mass terms.
struct InsideAtRest {
    condensed: Sym2,
    load: [f64; 2],
    /// For each node: self-weight deflection with the nose held still, and the deflection for a unit deflection and a unit slope of the
    /// nose.
    nodes: Vec<[f64; 3]>,
    /// Load on the nose when the collet moves sideways by 1 mm; none where nothing asks for it.
    moved: Option<[f64; 2]>,
}

/// The parts of the beam in front of the bush face.
pub struct Front {
    inside: Option<Arc<Inside>>,
    /// The span: from the nose, or from a free front face, to the bush face.
    beam: Beam,
    tool: usize,
    /// Node of the finishing tool of a tandem, else of the tool.
    finisher: usize,
    gripped: bool,
    spanned: bool,
    /// Share of its critical load that presses the bar in front of the bush face, and the load on the bar behind it, N.
    pressed: f64,
    behind_n: f64,
    rest: OnceLock<Option<FrontAtRest>>,
}

/// [`Front`] condensed onto the bush face, without mass terms. It does not depend on the part behind the bush face.
struct FrontAtRest {
    condensed: Sym2,
    load: [f64; 2],
    nodes: Vec<Node>,
    /// Self-weight deflection and slope of the first node with the bush face held still, and its motion for unit motions of the bush face.
    first: ([f64; 2], Mat2),
    /// When the collet moves sideways by 1 mm: motion of the tool with the bush face held still, and load on the bush face.
    moved: Option<(f64, [f64; 2])>,
}

/// A node of the span.
struct Node {
    /// Flexibility (mm/N), and below it self-weight deflection (mm), both with the bush face held still.
    held_mm_per_n: f64,
    held_mm: f64,
    /// Deflection for a unit deflection and for a unit slope of the bush face.
    follows: [f64; 2],
}

/// The part of the beam behind the bush face.
pub struct Rear {
    stiffness: BlockTri,
    mass: BlockTri,
    condensed: Sym2,
    load: [f64; 2],
    /// Axial load at which the bar between bush and headstock buckles, N.
    critical_n: f64,
}

/// The answers that do not depend on the speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtRest {
    /// Lateral stiffness at the tool, N/µm.
    pub stiffness_n_per_um: f64,
    /// Least lateral stiffness of a gripped span, N/µm; infinite where no check asks for it.
    pub span_n_per_um: f64,
    /// Largest self-weight deflection over the unsupported span, mm.
    pub sag_mm: f64,
    /// Largest self-weight deflection of the front inside the counter-spindle, mm.
    pub bore_sag_mm: f64,
    /// Flexibility at the tool, mm/N.
    pub tool_mm_per_n: f64,
    /// Flexibility at the finishing tool of a tandem, mm/N; without a tandem that at the tool.
    pub finisher_mm_per_n: f64,
    /// Part of a sideways motion of the grip that arrives at the tool; 0 where nothing asks for it.
    pub tool_follows: f64,
}

impl Rear {
    /// The part behind the bush face, with the headstock's nose at a distance from the face; none if the springs do not hold it.
    pub fn new(rig: &Rig<'_>, headstock_mm: f64) -> Option<Rear> {
        let state = State { turned_mm: 0.0, counter: Counter::Away, guide: Guide::Bush { headstock_mm } };
        let beam = rig.rear_beam_mirrored(&state);
        let condensed = beam.stiffness.condense()?;
        let mut weight = beam.weight.clone();
        condensed.reduce(&mut weight);
        let last = weight[weight.len() - 1];
        let condensed = condensed.last().mirrored();
        let critical_n = rig.critical_behind_n(headstock_mm);
        Some(Rear { condensed, load: [last[0], -last[1]], stiffness: beam.stiffness, mass: beam.mass, critical_n })
    }
}

impl Inside {
    /// The part in front of the nose of a closed or an open collet; none if the counter-spindle is away.
    pub fn new(rig: &Rig<'_>, counter: Counter) -> Option<Arc<Inside>> {
        let beam = rig.inside_beam(counter)?;
        let moves = counter.grip_mm().filter(|_| rig.wants_run_out());
        let rest = InsideAtRest::of(&beam, moves.map(|nose_mm| rig.grip_springs(nose_mm)));
        Some(Arc::new(Inside { beam, rest }))
    }
}

impl InsideAtRest {
    /// `moves`: the springs of a collet whose sideways motion is asked for.
    fn of(beam: &Beam, moves: Option<[Spring; 2]>) -> Option<InsideAtRest> {
        let condensed = beam.stiffness.condense()?;
        let mut weight = beam.weight.clone();
        condensed.reduce(&mut weight);
        let load = *weight.last()?;
        condensed.solve_held(&mut weight);
        let nodes = weight.iter().zip(condensed.follow()).map(|(w, t)| [w[0], t[0], t[1]]).collect();
        let moved = moves.and_then(|springs| {
            let mut push = vec![[0.0; 2]; beam.x_mm.len()];
            springs.iter().for_each(|s| push[beam.node(s.at_mm)][0] += s.n_per_mm);
            condensed.reduce(&mut push);
            push.last().copied()
        });
        Some(InsideAtRest { condensed: condensed.last(), load, nodes, moved })
    }

    /// Largest self-weight deflection when the nose has the given deflection and slope, mm.
    fn most_mm(&self, nose: [f64; 2]) -> f64 {
        let all = self.nodes.iter().map(|[own, a, b]| (own + a * nose[0] + b * nose[1]).abs());
        all.fold(0.0, f64::max)
    }
}

impl Front {
    /// The parts in front of the bush face at a turned length, with a grip, an open collet or a free front.
    pub fn new(rig: &Rig<'_>, turned_mm: f64, counter: Counter) -> Front {
        Front::with(rig, turned_mm, counter, Inside::new(rig, counter))
    }

    /// As [`Front::new`], with the part inside the counter-spindle already computed.
    pub fn with(rig: &Rig<'_>, turned_mm: f64, counter: Counter, inside: Option<Arc<Inside>>) -> Front {
        // In front of the bush face the place of the headstock does not matter.
        let state = State { turned_mm, counter, guide: Guide::Bush { headstock_mm: 0.0 } };
        let beam = rig.span_beam(&state);
        let tool = beam.node(turned_mm);
        let (pressed, behind_n) = rig.pressed_in_front(turned_mm, counter, true);
        Front {
            pressed: pressed.share(),
            behind_n,
            tool,
            finisher: rig.finisher_at_mm(&state).map_or(tool, |at_mm| beam.node(at_mm)),
            gripped: counter.grip_mm().is_some(),
            spanned: span_stiffness::applies(rig, counter),
            rest: OnceLock::new(),
            inside,
            beam,
        }
    }

    /// Part of its stiffness that the bar keeps under its axial load.
    fn left(&self, rear: &Rear) -> f64 {
        stiffness_left(self.pressed.max(self.behind_n / rear.critical_n))
    }

    /// Number of nodes of the span: a measure of the memory it takes.
    pub fn nodes(&self) -> usize {
        self.beam.x_mm.len()
    }

    fn rest(&self) -> Option<&FrontAtRest> {
        self.rest.get_or_init(|| self.worked_out()).as_ref()
    }

    fn worked_out(&self) -> Option<FrontAtRest> {
        let mut weight = self.beam.weight.clone();
        let mut left = Sym2::default();
        if let Some(inside) = &self.inside {
            let rest = inside.rest.as_ref()?;
            left = rest.condensed;
            weight[0] = [weight[0][0] + rest.load[0], weight[0][1] + rest.load[1]];
        }
        let condensed = self.beam.stiffness.condense_onto(left)?;
        condensed.reduce(&mut weight);
        let last = self.beam.x_mm.len() - 1;
        let load = weight[last];
        condensed.solve_held(&mut weight);
        let moved = self.inside.as_ref().and_then(|i| i.rest.as_ref()?.moved).map(|nose| {
            let mut push = vec![[0.0; 2]; last + 1];
            push[0] = nose;
            condensed.reduce(&mut push);
            let load = push[last];
            condensed.solve_held(&mut push);
            (push[self.tool][0], load)
        });
        let from = if self.spanned { 0 } else { self.tool.min(self.finisher) };
        let flexibility = condensed.inverse_diagonal_held(from);
        let follow = condensed.follow();
        let node = |i: usize| Node {
            held_mm_per_n: flexibility[i].a,
            held_mm: weight[i][0],
            follows: [follow[i][0], follow[i][1]],
        };
        Some(FrontAtRest {
            condensed: condensed.last(),
            load,
            nodes: (0..=last).map(node).collect(),
            first: (weight[0], follow[0]),
            moved,
        })
    }

    /// Answers with each of several rear parts; none where the whole beam is not held.
    pub fn at_rest(&self, rears: &[&Rear]) -> Vec<Option<AtRest>> {
        let Some(rest) = self.rest() else { return vec![None; rears.len()] };
        let answer = |rear: &&Rear| {
            let (face, moved) = rest.face(rear)?;
            let left = self.left(rear);
            let flexibility = |node: &Node| {
                let pushed = face.times(node.follows);
                node.held_mm_per_n + node.follows[0] * pushed[0] + node.follows[1] * pushed[1]
            };
            let tool_mm_per_n = flexibility(&rest.nodes[self.tool]);
            let softest = if self.spanned { rest.nodes.iter().map(flexibility).fold(0.0, f64::max) } else { 0.0 };
            let tool_follows = rest.moved.map_or(0.0, |(held, load)| {
                let (tool, face) = (&rest.nodes[self.tool], face.times(load));
                held + tool.follows[0] * face[0] + tool.follows[1] * face[1]
            });
            let bore_sag_mm = match self.inside.as_ref().and_then(|i| i.rest.as_ref()) {
                Some(inside) if self.gripped => {
                    let (own, t) = rest.first;
                    inside.most_mm([
                        own[0] + t[0] * moved[0] + t[1] * moved[1],
                        own[1] + t[2] * moved[0] + t[3] * moved[1],
                    ])
                }
                _ => 0.0,
            };
            Some(AtRest {
                stiffness_n_per_um: n_per_um(left / tool_mm_per_n),
                span_n_per_um: n_per_um(left / softest),
                sag_mm: rest.nodes.iter().map(|node| node.sag_mm(moved)).fold(0.0, f64::max) / left,
                bore_sag_mm: bore_sag_mm / left,
                tool_mm_per_n: tool_mm_per_n / left,
                finisher_mm_per_n: flexibility(&rest.nodes[self.finisher]) / left,
                tool_follows,
            })
        };
        rears.iter().map(answer).collect()
    }

    /// Self-weight deflection at the node of the span nearest to a place, mm; none if the beam is not held.
    pub fn sag_at_mm(&self, rear: &Rear, at_mm: f64) -> Option<f64> {
        self.sags_at_mm(&[rear], at_mm)[0]
    }

    /// As [`Front::sag_at_mm`], for several rear parts.
    pub fn sags_at_mm(&self, rears: &[&Rear], at_mm: f64) -> Vec<Option<f64>> {
        let Some(rest) = self.rest() else { return vec![None; rears.len()] };
        let node = &rest.nodes[self.beam.node(at_mm)];
        rears.iter().map(|rear| Some(node.sag_mm(rest.face(rear)?.1))).collect()
    }

    /// Whether the lowest natural frequency lies above an angular frequency (rad/s), for each of several rear parts.
    pub fn swings_above(&self, omega: f64, rears: &[&Rear]) -> Vec<bool> {
        let whole = omega * omega;
        // An axial load only raises the shift, so what fails here fails with it too.
        let Some(common) = self.condensed_above(whole) else { return vec![false; rears.len()] };
        let above = |rear: &&Rear| {
            let shift = whole / self.left(rear);
            let front = if shift > whole { self.condensed_above(shift) } else { Some(common) };
            let right = rear.stiffness.condense_above(&rear.mass, shift);
            front.zip(right).is_some_and(|(front, right)| front.plus(right.mirrored()).is_positive())
        };
        rears.iter().map(above).collect()
    }

    /// `K - σM` of the parts in front, condensed onto the bush face; none if a pivot is not positive definite.
    fn condensed_above(&self, shift: f64) -> Option<Sym2> {
        let left = match &self.inside {
            Some(inside) => inside.beam.stiffness.condense_above(&inside.beam.mass, shift)?,
            None => Sym2::default(),
        };
        self.beam.stiffness.condense_above_onto(left, &self.beam.mass, shift)
    }

    /// The last pivot of `K - σM`. It is positive if the lowest natural frequency lies above `√σ`. None if another pivot is not positive:
    /// then `√σ` is at or above the lowest natural frequency that the beam has with the last unknown held still.
    fn last_pivot(&self, shift: f64, rear: &Rear) -> Option<f64> {
        let right = rear.stiffness.condense_above(&rear.mass, shift)?;
        let joined = self.condensed_above(shift)?.plus(right.mirrored());
        (joined.a > 0.0).then(|| joined.c - joined.b * joined.b / joined.a)
    }

    /// A lower bound of the lowest natural angular frequency, rad/s, that is below it by no more than `share` of it. The frequency must lie
    /// above `low` and not above `high`.
    ///
    /// The last pivot falls with `σ`, and its slope gets steeper (it is concave) as long as all other pivots are positive. So the chord
    /// through one point on each side of the root is zero below the root, and the line through two points below the root is zero above
    /// it. Together they narrow the bracket about as fast as Newton's method. Derived here.
    pub fn lowest_rad_per_s(&self, rear: &Rear, [low, high]: [f64; 2], share: f64) -> f64 {
        let left = self.left(rear);
        let pivot = |shift: f64| self.last_pivot(shift / left, rear);
        let share = 2.0 * share;
        let [low, high] = [low * low, high * high];
        let mut bracket =
            Bracket { low, at_low: pivot(low).unwrap_or(0.0), high, at_high: pivot(high), least: 0.4 * share };
        while bracket.wider_than(share) {
            let width = bracket.width();
            if let Some(chord) = bracket.chord() {
                let before = (bracket.low, bracket.at_low);
                if bracket.put(chord, pivot(chord)) && bracket.wider_than(share) {
                    let line = bracket.line(before);
                    bracket.put(line, pivot(line));
                }
            }
            if bracket.width() > 0.5 * width {
                let middle = 0.5 * (bracket.low + bracket.high);
                bracket.put(middle, pivot(middle));
            }
        }
        bracket.low.sqrt()
    }
}

/// Bracket of the root of the last pivot: at shift `low` the pivot is positive, at shift `high` it is not positive or not known.
struct Bracket {
    low: f64,
    at_low: f64,
    high: f64,
    at_high: Option<f64>,
    /// Smallest step from an end, as a share of `high`, so that the bracket always closes. It is less than half of the wanted width.
    least: f64,
}

impl Bracket {
    fn width(&self) -> f64 {
        self.high - self.low
    }

    fn wider_than(&self, share: f64) -> bool {
        self.width() > share * self.high
    }

    /// Narrows the bracket by the pivot at a shift, and tells whether the shift is the new `low`.
    fn put(&mut self, shift: f64, pivot: Option<f64>) -> bool {
        match pivot {
            Some(at) if at > 0.0 => (self.low, self.at_low) = (shift, at),
            at => (self.high, self.at_high) = (shift, at),
        }
        self.low == shift
    }

    fn inside(&self, shift: f64) -> f64 {
        let least = self.least * self.high;
        shift.clamp(self.low + least, self.high - least)
    }

    /// Shift at which the chord through both ends is zero.
    fn chord(&self) -> Option<f64> {
        let below = self.at_high?;
        Some(self.inside(self.low + self.at_low / (self.at_low - below) * self.width()))
    }

    /// Shift a little beyond the zero of the line through the `low` before and the present `low`, so that it lies safely above the root.
    fn line(&self, (before, at_before): (f64, f64)) -> f64 {
        let ahead = self.at_low * (self.low - before) / (at_before - self.at_low);
        self.inside(self.low + 1.1 * ahead + self.least * self.high)
    }
}

impl FrontAtRest {
    /// Flexibility at the bush face of the whole beam, and the deflection and slope there under self-weight; none if the beam is not held.
    fn face(&self, rear: &Rear) -> Option<(Sym2, [f64; 2])> {
        let joined = self.condensed.plus(rear.condensed);
        let face = joined.is_positive().then(|| joined.inverse())?;
        Some((face, face.times([self.load[0] + rear.load[0], self.load[1] + rear.load[1]])))
    }
}

impl Node {
    fn sag_mm(&self, face: [f64; 2]) -> f64 {
        (self.held_mm + self.follows[0] * face[0] + self.follows[1] * face[1]).abs()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A bracket with pivot 3 at shift 2 and pivot -1 at shift 6.
    const BRACKET: Bracket = Bracket { low: 2.0, at_low: 3.0, high: 6.0, at_high: Some(-1.0), least: 0.01 };

    #[track_caller]
    fn near(value: f64, by_hand: f64) {
        assert!((value - by_hand).abs() < 1e-12, "{value}, by hand {by_hand}");
    }

    #[test]
    fn chord_and_line_meet_zero_where_they_do_on_paper() {
        near(BRACKET.width(), 4.0);
        // Three quarters of the way from 3 to -1.
        near(BRACKET.chord().expect("both ends are known"), 5.0);
        assert_eq!(Bracket { at_high: None, ..BRACKET }.chord(), None);
        // 7 at 0.5 and 3 at 2: the zero lies 3 · 1.5/4 ahead; plus a tenth of this distance and a hundredth of 6.
        near(BRACKET.line((0.5, 7.0)), 2.0 + 1.1 * 1.125 + 0.06);
        // The step stays at least a hundredth of 6 away from both ends.
        near(BRACKET.inside(4.0), 4.0);
        near(BRACKET.inside(1.0), 2.06);
        near(BRACKET.inside(9.0), 5.94);
    }

    #[test]
    fn a_bracket_takes_what_is_positive_as_its_low() {
        // A width of 4 at a `high` of 6 is two thirds.
        assert!(BRACKET.wider_than(0.66) && !BRACKET.wider_than(0.67));
        let mut bracket = BRACKET;
        assert!(bracket.put(3.0, Some(2.0)));
        assert_eq!((bracket.low, bracket.at_low, bracket.high), (3.0, 2.0, 6.0));
        assert!(!bracket.put(5.0, Some(0.0)));
        assert_eq!((bracket.low, bracket.high, bracket.at_high), (3.0, 5.0, Some(0.0)));
        assert!(!bracket.put(4.0, None));
        assert_eq!((bracket.low, bracket.high, bracket.at_high), (3.0, 4.0, None));
    }
}
