//! Answers of the beam of a state: the values that the checks compare with their limits. They do not depend on the speed.

use super::pressed::stiffness_left;
use super::rig::Rig;
use super::state::{Counter, State};
use crate::mechanics::beam::{Beam, Spring, Unheld};
use crate::mechanics::chatter::{least_real_bound, least_real_of};
use crate::mechanics::modes::{lowest_eigenvalues, lowest_mode};
use crate::mechanics::receptance::Receptance;
use crate::units::{n_per_um, rad_per_s, rpm};
use std::cell::OnceCell;

/// Numbers of modes for the receptance at the tool. The next number is tried if the modes left out still count for more than
/// `LEFT_OUT_SHARE` of the value. These numbers and those of the Lanczos steps are
/// not derived: where they are too few, more are taken.
const RECEPTANCE_MODES: [usize; 3] = [12, 30, 60];
/// Lanczos steps for a first estimate of the least real part of the receptance.
pub const FEW_STEPS: usize = 20;
/// Lanczos steps for a better estimate.
pub const MORE_STEPS: usize = 32;
/// Nodes that are added to the beam for the receptance.
const RECEPTANCE_NODES: usize = 160;
/// Chosen here: far below the uncertainty of the damping, to which the limit of the depth is proportional.
const LEFT_OUT_SHARE: f64 = 0.02;

/// Answers of a state.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Answers {
    /// Unsupported length, mm.
    pub unsupported_mm: f64,
    /// Lateral stiffness at the tool, N/µm.
    pub stiffness_n_per_um: f64,
    /// Least lateral stiffness between the nose of the grip and the guide face, N/µm; infinite with a free front.
    pub span_n_per_um: f64,
    /// Its place, mm.
    pub span_at_mm: f64,
    /// Largest self-weight deflection over the unsupported span, mm.
    pub sag_mm: f64,
    /// Place of the largest self-weight deflection of the span, mm.
    pub sag_at_mm: f64,
    /// Largest self-weight deflection of the front inside the counter-spindle, mm; 0 while free.
    pub bore_sag_mm: f64,
    /// Place of the largest self-weight deflection of the front, mm.
    pub bore_sag_at_mm: f64,
    /// Critical speed, rev/min: 60 times the lowest lateral natural frequency of the bar at rest.
    pub critical_rpm: f64,
    /// Place where the mode shape of this frequency is largest, mm.
    pub critical_at_mm: f64,
    /// Flexibility at the tool, mm/N.
    pub tool_mm_per_n: f64,
    /// Flexibility at the finishing tool of a tandem, mm/N; without a tandem that at the tool.
    pub finisher_mm_per_n: f64,
    /// Part of a sideways motion of the grip that arrives at the tool; 0 where nothing asks for it.
    pub tool_follows: f64,
}

/// The beam of a state, and its answers without the critical speed. Mostly it is enough to know whether the critical speed lies above
/// a speed, and this costs only one elimination.
#[derive(Debug, Clone)]
pub struct Posed {
    beam: Beam,
    /// Part of its stiffness that the bar keeps under its axial load.
    left: f64,
    /// The answers, with NaN for the critical speed, so that no check passes without a computed value.
    pub at_rest: Answers,
    /// All answers, after they were asked for.
    full: OnceCell<Answers>,
}

impl Posed {
    /// Whether the critical speed lies above a speed, rev/min.
    pub fn swings_above(&self, speed_rpm: f64) -> bool {
        swings_above(&self.beam, self.left, speed_rpm)
    }

    /// All answers, with the critical speed.
    pub fn with_critical(&self) -> Answers {
        *self.full.get_or_init(|| self.worked_out())
    }

    fn worked_out(&self) -> Answers {
        // The beam is held, otherwise `posed` would have failed.
        let Ok(factor) = self.beam.factor() else { return self.at_rest };
        let (mode, x) = (lowest_mode(&self.beam, &factor), &self.beam.x_mm);
        Answers {
            critical_rpm: rpm(mode.omega * self.left.sqrt()),
            critical_at_mm: x[worst(0..=x.len() - 1, |i| mode.shape[i][0].abs())],
            ..self.at_rest
        }
    }
}

impl Rig<'_> {
    /// Answers of a state.
    ///
    /// # Errors
    /// [`Unheld`] when the supports leave a free motion, which a validated machine does not.
    pub fn answers(&self, state: &State) -> Result<Answers, Unheld> {
        Ok(self.posed(state)?.with_critical())
    }

    /// Answers of a state; the critical speed is computed only when asked for.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn posed(&self, state: &State) -> Result<Posed, Unheld> {
        let beam = self.beam(state, &[]);
        let factor = beam.factor()?;
        let x = &beam.x_mm;
        let (face, grip, span) = (self.guide_face_mm(state), state.counter.grip_mm(), state.counter.span_from_mm());
        let (first, last) = (beam.node(grip.unwrap_or(0.0)), beam.node(face));
        let tool = beam.node(state.turned_mm);
        let finisher = self.finisher_at_mm(state).map_or(tool, |at_mm| beam.node(at_mm));
        let from = if span.is_some() { first.min(finisher) } else { finisher };
        let flexibility = factor.inverse_diagonal_from(from.min(tool));
        let softest = span.map(|_| worst(first..=last, |i| flexibility[i].a));
        let left = stiffness_left(self.pressed(state).share());
        // Springs whose ends on the collet move by 1 mm push with their stiffness. By reciprocity the tool then moves by what they would
        // be pushed with under 1 N at the tool (Maxwell and Betti, from memory).
        let follows = |nose_mm: f64| {
            let bent = beam.under_force(&factor, tool, 1.0);
            let at = |s: &Spring| s.n_per_mm * bent[beam.node(s.at_mm)][0];
            self.grip_springs(nose_mm).iter().map(at).sum()
        };
        let sag = beam.sag(&factor);
        let lowest = worst(first..=last, |i| sag[i][0].abs());
        let inside = grip.map(|_| worst(0..=first, |i| sag[i][0].abs()));
        let at_rest = Answers {
            unsupported_mm: self.unsupported_mm(state),
            stiffness_n_per_um: n_per_um(left / flexibility[tool].a),
            span_n_per_um: softest.map_or(f64::INFINITY, |i| n_per_um(left / flexibility[i].a)),
            span_at_mm: softest.map_or(0.0, |i| x[i]),
            sag_mm: sag[lowest][0].abs() / left,
            sag_at_mm: x[lowest],
            bore_sag_mm: inside.map_or(0.0, |i| sag[i][0].abs() / left),
            bore_sag_at_mm: inside.map_or(0.0, |i| x[i]),
            critical_rpm: f64::NAN,
            critical_at_mm: f64::NAN,
            tool_mm_per_n: flexibility[tool].a / left,
            finisher_mm_per_n: flexibility[finisher].a / left,
            tool_follows: grip.filter(|_| self.wants_run_out()).map_or(0.0, follows),
        };
        Ok(Posed { beam, left, at_rest, full: OnceCell::new() })
    }

    /// Whether the critical speed of a state lies above a speed, rev/min; false if the supports leave a free motion. It costs one
    /// elimination, as long as no other answer is asked for.
    pub fn swings_above(&self, state: &State, speed_rpm: f64) -> bool {
        swings_above(&self.beam(state, &[]), stiffness_left(self.pressed(state).share()), speed_rpm)
    }

    /// The lowest lateral natural frequencies of a state, rad/s.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn omegas(&self, state: &State, count: usize) -> Result<Vec<f64>, Unheld> {
        let left = stiffness_left(self.pressed(state).share());
        Ok(lowest_eigenvalues(&self.beam(state, &[]), count)?.into_iter().map(|v| (v * left).sqrt()).collect())
    }

    /// `|min Re G|` at the place of a tool, mm/N, with the damping ratio of the job; never below the exact value. None if the value is at most
    /// `enough_mm_per_n`: the computation stops as soon as this is known.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn least_real_above(&self, state: &State, tool_mm: f64, enough_mm_per_n: f64) -> Result<Option<f64>, Unheld> {
        let beam = self.fine_beam(state);
        let mut seen = Receptance::new(&beam, beam.node(tool_mm))?;
        let damping = self.job.limits.damping_ratio;
        // All modes get softer by the same part, so the receptance grows by the inverse of it.
        let left = stiffness_left(self.pressed(state).share());
        let enough_mm_per_n = enough_mm_per_n * left;
        // Each step gives a bound, and the least one so far counts: whether the computation stops early does not change the answer.
        let mut least = least_real_bound(seen.static_mm_per_n, damping);
        if least <= enough_mm_per_n {
            return Ok(None);
        }
        // A few modes already give a bound. Their Lanczos steps are needed later for all modes too, so no work is lost.
        for steps in [FEW_STEPS, MORE_STEPS] {
            least = least.min(least_real_of(&seen.after(steps), seen.static_mm_per_n, damping).mm_per_n);
            if least <= enough_mm_per_n {
                return Ok(None);
            }
        }
        for count in RECEPTANCE_MODES {
            let shares = seen.lowest(count);
            let found = least_real_of(&shares, seen.static_mm_per_n, damping);
            least = least.min(found.mm_per_n);
            if least <= enough_mm_per_n {
                return Ok(None);
            }
            if found.left_out <= LEFT_OUT_SHARE {
                break;
            }
        }
        Ok(Some(least / left))
    }

    /// An upper bound of `|min Re G|` at the place of a tool from the modes that `steps` Lanczos steps find, mm/N. Mostly it is near the exact value.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn least_real_about(&self, state: &State, tool_mm: f64, steps: usize) -> Result<f64, Unheld> {
        let beam = self.fine_beam(state);
        let mut seen = Receptance::new(&beam, beam.node(tool_mm))?;
        let shares = seen.after(steps);
        let left = stiffness_left(self.pressed(state).share());
        Ok(least_real_of(&shares, seen.static_mm_per_n, self.job.limits.damping_ratio).mm_per_n / left)
    }

    /// The beam of a state for its receptance. Next to a support high modes matter, and the mesh of the other answers is too coarse for
    /// them.
    fn fine_beam(&self, state: &State) -> Beam {
        let rear = self.rear_end_mm(state);
        let fine: Vec<f64> = (0..=RECEPTANCE_NODES).map(|i| rear * i as f64 / RECEPTANCE_NODES as f64).collect();
        self.beam(state, &fine)
    }

    /// Deflection at a place under a radial force (N) at this place, mm, while the turning tool does not cut.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn deflection_at_mm(&self, state: &State, at_mm: f64, force_n: f64) -> Result<f64, Unheld> {
        let beam = self.beam(state, &[at_mm]);
        Ok(deflection(&beam, at_mm, force_n)?.abs() / stiffness_left(self.pressed_standing(state).share()))
    }

    /// Deflection at a place under radial forces at places (mm, N), mm.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn deflection_under_mm(&self, state: &State, at_mm: f64, forces: &[[f64; 2]]) -> Result<f64, Unheld> {
        let beam = self.beam(state, &[]);
        let factor = beam.factor()?;
        let node = beam.node(at_mm);
        let moved = |[from_mm, n]: &[f64; 2]| beam.under_force(&factor, beam.node(*from_mm), *n)[node][0];
        Ok(forces.iter().map(moved).sum::<f64>() / stiffness_left(self.pressed(state).share()))
    }

    /// Self-weight deflection of the front face while the front is free, mm.
    ///
    /// # Errors
    /// [`Unheld`] when the supports leave a free motion.
    pub fn droop_mm(&self, state: &State) -> Result<f64, Unheld> {
        self.sag_at_mm(state, 0.0)
    }

    /// Self-weight deflection at the nose of the grip when its collet opens, mm. Sleeves in the bore still support the bar.
    ///
    /// # Errors
    /// [`Unheld`] when the supports leave a free motion with the collet open.
    pub fn release_mm(&self, state: &State) -> Result<f64, Unheld> {
        let Some(nose_mm) = state.counter.grip_mm() else { return Ok(0.0) };
        self.sag_at_mm(&State { counter: Counter::Open { nose_mm }, ..*state }, nose_mm)
    }

    fn sag_at_mm(&self, state: &State, at_mm: f64) -> Result<f64, Unheld> {
        let beam = self.beam(state, &[at_mm]);
        Ok(beam.sag(&beam.factor()?)[beam.node(at_mm)][0].abs())
    }
}

/// `left`: part of its stiffness that the bar keeps under its axial load.
fn swings_above(beam: &Beam, left: f64, speed_rpm: f64) -> bool {
    let omega = rad_per_s(speed_rpm);
    omega.is_finite() && beam.stiffness.swings_above(&beam.mass, omega * omega / left)
}

fn deflection(beam: &Beam, at_mm: f64, force_n: f64) -> Result<f64, Unheld> {
    let factor = beam.factor()?;
    let node = beam.node(at_mm);
    Ok(beam.under_force(&factor, node, force_n)[node][0])
}

/// The index with the largest value. Of equal values the first counts, so that answers are well defined.
fn worst(range: std::ops::RangeInclusive<usize>, value: impl Fn(usize) -> f64) -> usize {
    let mut best = *range.start();
    for i in range {
        if value(i) > value(best) {
            best = i;
        }
    }
    best
}
