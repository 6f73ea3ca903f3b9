//! The beam of a state in two halves: what lies in front of the bush face, and what lies behind it.
//!
//! Behind the bush face is always raw bar on the same springs, so it depends on the headstock's place alone; in front of
//! it everything depends on the turned length and the grip. Each half is eliminated once and joined by a 2 × 2 block,
//! which makes a state cost a fraction of a whole beam. The answers are those of [`Rig::answers`](super::Rig), to
//! rounding; whether the critical speed lies above a speed is one count of negative pivots, without an eigenvalue.

use super::rig::Rig;
use super::state::{Counter, Guide, State};
use crate::job::Tools;
use crate::mechanics::banded::{BlockTri, Sym2};
use crate::mechanics::beam::Beam;
use crate::units::n_per_um;

/// What lies in front of the bush face.
pub struct Front {
    beam: Beam,
    /// Nodes of the grip's nose (or the front face) and of the tool.
    first: usize,
    tool: usize,
    gripped: bool,
    opposed: bool,
}

/// What lies behind the bush face, seen from there.
pub struct Rear {
    stiffness: BlockTri,
    mass: BlockTri,
    condensed: Sym2,
    load: [f64; 2],
}

/// Answers that do not depend on speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Still {
    /// Least lateral stiffness that counts, N/µm.
    pub stiffness_n_per_um: f64,
    /// Largest self-weight deflection over the unsupported span, mm.
    pub sag_mm: f64,
    /// Largest self-weight deflection of the front inside the counter-spindle, mm.
    pub bore_sag_mm: f64,
    /// Flexibility at the tool, mm/N.
    pub tool_mm_per_n: f64,
}

impl Rear {
    /// What lies behind the bush face with the headstock's nose at a distance from it; none when nothing holds it.
    pub fn new(rig: &Rig<'_>, headstock_mm: f64) -> Option<Rear> {
        let state = State { turned_mm: 0.0, counter: Counter::Away, guide: Guide::Bush { headstock_mm } };
        let beam = rig.rear_beam_mirrored(&state);
        let condensed = beam.stiffness.condense()?;
        let mut weight = beam.weight.clone();
        condensed.reduce(&mut weight);
        let last = weight[weight.len() - 1];
        let condensed = condensed.last().mirrored();
        Some(Rear { condensed, load: [last[0], -last[1]], stiffness: beam.stiffness, mass: beam.mass })
    }
}

impl Front {
    /// What lies in front of the bush face at a turned length, held by a grip or free.
    pub fn new(rig: &Rig<'_>, turned_mm: f64, counter: Counter) -> Front {
        // Where the headstock stands does not matter in front of the bush face.
        let state = State { turned_mm, counter, guide: Guide::Bush { headstock_mm: 0.0 } };
        let beam = rig.front_beam(&state);
        Front {
            first: beam.node(counter.grip_mm().unwrap_or(0.0)),
            tool: beam.node(turned_mm),
            gripped: counter.grip_mm().is_some(),
            opposed: rig.job.cutting.tools == Tools::Opposed,
            beam,
        }
    }

    /// Answers for several rears; none for one that is not held.
    pub fn still(&self, rears: &[&Rear]) -> Vec<Option<Still>> {
        let Some(condensed) = self.beam.stiffness.condense() else { return vec![None; rears.len()] };
        let mut weight = self.beam.weight.clone();
        condensed.reduce(&mut weight);
        let last = self.beam.x_mm.len() - 1;
        let from = if self.opposed { self.tool } else { self.first.min(self.tool) };
        let answer = |rear: &&Rear| {
            let mut sag = weight.clone();
            condensed.solve_joined(rear.condensed, rear.load, &mut sag)?;
            let flexibility = condensed.inverse_diagonal_joined(rear.condensed, from);
            let softest = if self.opposed { self.tool..=self.tool } else { self.first..=last };
            let most = |values: &mut dyn Iterator<Item = f64>| values.fold(0.0, f64::max);
            Some(Still {
                stiffness_n_per_um: n_per_um(1.0 / most(&mut softest.map(|i| flexibility[i].a))),
                sag_mm: most(&mut sag[self.first..].iter().map(|v| v[0].abs())),
                bore_sag_mm: if self.gripped { most(&mut sag[..=self.first].iter().map(|v| v[0].abs())) } else { 0.0 },
                tool_mm_per_n: flexibility[self.tool].a,
            })
        };
        rears.iter().map(answer).collect()
    }

    /// Self-weight deflection at the node nearest to a place, mm; none when nothing holds the bar.
    pub fn sag_at_mm(&self, rear: &Rear, at_mm: f64) -> Option<f64> {
        self.sags_at_mm(&[rear], at_mm)[0]
    }

    /// The same for several rears.
    pub fn sags_at_mm(&self, rears: &[&Rear], at_mm: f64) -> Vec<Option<f64>> {
        let Some(condensed) = self.beam.stiffness.condense() else { return vec![None; rears.len()] };
        let mut weight = self.beam.weight.clone();
        condensed.reduce(&mut weight);
        let node = self.beam.node(at_mm);
        let answer = |rear: &&Rear| {
            let mut sag = weight.clone();
            condensed.solve_joined(rear.condensed, rear.load, &mut sag)?;
            Some(sag[node][0].abs())
        };
        rears.iter().map(answer).collect()
    }

    /// Whether the lowest natural frequency lies above an angular frequency (rad/s), for several rears.
    pub fn swings_above(&self, omega: f64, rears: &[&Rear]) -> Vec<bool> {
        let shift = omega * omega;
        let Some(left) = self.beam.stiffness.condense_above(&self.beam.mass, shift) else {
            return vec![false; rears.len()];
        };
        let above = |rear: &&Rear| {
            let right = rear.stiffness.condense_above(&rear.mass, shift);
            right.is_some_and(|right| left.plus(right.mirrored()).is_positive())
        };
        rears.iter().map(above).collect()
    }
}
