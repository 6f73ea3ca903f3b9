//! What the beam of a state answers, whatever the speed: the numbers the checks compare with their limits.

use super::rig::Rig;
use super::state::{Counter, State};
use crate::job::Tools;
use crate::mechanics::beam::{Beam, Unheld};
use crate::mechanics::chatter::{least_real_bound, least_real_of};
use crate::mechanics::modes::{lowest_eigenvalues, lowest_mode};
use crate::mechanics::receptance::Receptance;
use crate::units::{n_per_um, rad_per_s, rpm};
use std::cell::OnceCell;

/// Modes that carry the receptance at the tool: more are taken until those left out matter by less than the share.
const RECEPTANCE_MODES: [usize; 3] = [12, 30, 60];
/// Steps towards modes that tell about where the receptance is worst.
pub const FEW_STEPS: usize = 20;
/// Steps that tell it better.
pub const MORE_STEPS: usize = 32;
/// Nodes added for them.
const RECEPTANCE_NODES: usize = 160;
const LEFT_OUT_SHARE: f64 = 0.02;

/// Answers of a state.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Answers {
    /// Unsupported length, mm.
    pub unsupported_mm: f64,
    /// Least lateral stiffness that counts, N/µm: over the span with one tool, at the tool with an opposed pair.
    pub stiffness_n_per_um: f64,
    /// Where it is least, mm.
    pub stiffness_at_mm: f64,
    /// Largest self-weight deflection over the unsupported span, mm.
    pub sag_mm: f64,
    /// Where, mm.
    pub sag_at_mm: f64,
    /// Largest self-weight deflection of the front inside the counter-spindle, mm; 0 while free.
    pub bore_sag_mm: f64,
    /// Where, mm.
    pub bore_sag_at_mm: f64,
    /// Critical speed, rev/min: 60 times the lowest lateral natural frequency of the bar at rest.
    pub critical_rpm: f64,
    /// Where that mode is largest, mm.
    pub critical_at_mm: f64,
    /// Flexibility at the tool, mm/N.
    pub tool_mm_per_n: f64,
}

/// The beam of a state, and its answers without the critical speed: whether that lies above a speed costs one elimination, and seldom
/// more is needed.
#[derive(Debug, Clone)]
pub struct Posed {
    beam: Beam,
    /// The answers; nothing (NaN) for the critical speed, so that nothing passes that was not worked out.
    pub at_rest: Answers,
    /// All answers, once they were asked for.
    full: OnceCell<Answers>,
}

impl Posed {
    /// Whether the critical speed lies above a speed, rev/min.
    pub fn swings_above(&self, speed_rpm: f64) -> bool {
        let omega = rad_per_s(speed_rpm);
        omega.is_finite() && self.beam.stiffness.swings_above(&self.beam.mass, omega * omega)
    }

    /// All answers.
    pub fn with_critical(&self) -> Answers {
        *self.full.get_or_init(|| self.worked_out())
    }

    fn worked_out(&self) -> Answers {
        // It is held, or there would be no answers.
        let Ok(factor) = self.beam.factor() else { return self.at_rest };
        let (mode, x) = (lowest_mode(&self.beam, &factor), &self.beam.x_mm);
        Answers {
            critical_rpm: rpm(mode.omega),
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

    /// Answers of a state, the critical speed only when asked.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn posed(&self, state: &State) -> Result<Posed, Unheld> {
        let beam = self.beam(state, &[]);
        let factor = beam.factor()?;
        let x = &beam.x_mm;
        let (face, grip) = (self.guide_face_mm(state), state.counter.grip_mm());
        let (first, last) = (beam.node(grip.unwrap_or(0.0)), beam.node(face));
        let tool = beam.node(state.turned_mm);
        let softest_from = match self.job.cutting.tools {
            Tools::Single => first.min(tool),
            Tools::Opposed => tool,
        };
        let flexibility = factor.inverse_diagonal_from(softest_from);
        let softest = match self.job.cutting.tools {
            Tools::Single => worst(first..=last, |i| flexibility[i].a),
            Tools::Opposed => tool,
        };
        let sag = beam.sag(&factor);
        let lowest = worst(first..=last, |i| sag[i][0].abs());
        let inside = grip.map(|_| worst(0..=first, |i| sag[i][0].abs()));
        let at_rest = Answers {
            unsupported_mm: self.unsupported_mm(state),
            stiffness_n_per_um: n_per_um(1.0 / flexibility[softest].a),
            stiffness_at_mm: x[softest],
            sag_mm: sag[lowest][0].abs(),
            sag_at_mm: x[lowest],
            bore_sag_mm: inside.map_or(0.0, |i| sag[i][0].abs()),
            bore_sag_at_mm: inside.map_or(0.0, |i| x[i]),
            critical_rpm: f64::NAN,
            critical_at_mm: f64::NAN,
            tool_mm_per_n: flexibility[tool].a,
        };
        Ok(Posed { beam, at_rest, full: OnceCell::new() })
    }

    /// The lowest lateral natural frequencies of a state, rad/s.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn omegas(&self, state: &State, count: usize) -> Result<Vec<f64>, Unheld> {
        Ok(lowest_eigenvalues(&self.beam(state, &[]), count)?.into_iter().map(f64::sqrt).collect())
    }

    /// `|min Re G|` at the tool, mm/N, with the job's damping ratio, never below the true one; none as soon as it is known to be no
    /// larger than a value, mm/N.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn least_real_above(&self, state: &State, enough_mm_per_n: f64) -> Result<Option<f64>, Unheld> {
        let beam = self.fine_beam(state);
        let mut seen = Receptance::new(&beam, beam.node(state.turned_mm))?;
        let damping = self.job.limits.damping_ratio;
        if least_real_bound(seen.static_mm_per_n, damping) <= enough_mm_per_n {
            return Ok(None);
        }
        // Some of the modes bound it too, and are found in a few steps that all of them need besides.
        for steps in [FEW_STEPS, MORE_STEPS] {
            if least_real_of(&seen.after(steps), seen.static_mm_per_n, damping).mm_per_n <= enough_mm_per_n {
                return Ok(None);
            }
        }
        let mut least = f64::INFINITY;
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
        Ok(Some(least))
    }

    /// A bound of the same from the modes that so many steps find, mm/N: never below the true one, and most often near it.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn least_real_about(&self, state: &State, steps: usize) -> Result<f64, Unheld> {
        let beam = self.fine_beam(state);
        let mut seen = Receptance::new(&beam, beam.node(state.turned_mm))?;
        let shares = seen.after(steps);
        Ok(least_real_of(&shares, seen.static_mm_per_n, self.job.limits.damping_ratio).mm_per_n)
    }

    /// The beam of a state for its receptance: next to a support the high modes count, which the mesh of the other answers is too
    /// coarse for.
    fn fine_beam(&self, state: &State) -> Beam {
        let rear = self.rear_end_mm(state);
        let fine: Vec<f64> = (0..=RECEPTANCE_NODES).map(|i| rear * i as f64 / RECEPTANCE_NODES as f64).collect();
        self.beam(state, &fine)
    }

    /// Deflection in mm at a place under a radial force there, N.
    ///
    /// # Errors
    /// As [`Rig::answers`].
    pub fn deflection_at_mm(&self, state: &State, at_mm: f64, force_n: f64) -> Result<f64, Unheld> {
        let beam = self.beam(state, &[at_mm]);
        Ok(deflection(&beam, at_mm, force_n)?.abs())
    }

    /// Self-weight deflection in mm at the old nose when the collet opens there; sleeves in the bore stay.
    ///
    /// # Errors
    /// As [`Rig::answers`], with the collet open.
    pub fn release_mm(&self, state: &State) -> Result<f64, Unheld> {
        let Some(nose_mm) = state.counter.grip_mm() else { return Ok(0.0) };
        let open = State { counter: Counter::Open { nose_mm }, ..*state };
        let beam = self.beam(&open, &[nose_mm]);
        let factor = beam.factor()?;
        Ok(beam.sag(&factor)[beam.node(nose_mm)][0].abs())
    }
}

fn deflection(beam: &Beam, at_mm: f64, force_n: f64) -> Result<f64, Unheld> {
    let factor = beam.factor()?;
    let node = beam.node(at_mm);
    Ok(beam.under_force(&factor, node, force_n)[node][0])
}

/// The index with the largest value; the first of equals, so that answers do not depend on the direction of the loop.
fn worst(range: std::ops::RangeInclusive<usize>, value: impl Fn(usize) -> f64) -> usize {
    let mut best = *range.start();
    for i in range {
        if value(i) > value(best) {
            best = i;
        }
    }
    best
}
