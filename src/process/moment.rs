//! All values of one moment, as the command `at` prints them.

use super::checks::{self, Finding, View, chatter, free_ratio, whip};
use super::forces::TravelForces;
use super::pressed::stiffness_left;
use super::rig::Rig;
use super::segments::{Segment, Work};
use super::state::{Guide, State};
use crate::job::Side;
use crate::mechanics::beam::Unheld;
use crate::units::{hz, um};

/// Number of headstock places that are tried when none is given.
const PLACES: usize = 9;
/// Number of natural frequencies reported.
const FREQUENCIES: usize = 3;

/// Everything about one moment.
#[derive(Debug, Clone, PartialEq)]
pub struct Moment {
    /// The state.
    pub state: State,
    /// Speed, rev/min.
    pub rpm: f64,
    /// Unsupported length, mm.
    pub unsupported_mm: f64,
    /// Critical speed, rev/min.
    pub critical_rpm: f64,
    /// Lowest lateral natural frequencies, Hz.
    pub frequencies_hz: Vec<f64>,
    /// Lateral stiffness at the tool, N/µm.
    pub stiffness_n_per_um: f64,
    /// Least lateral stiffness between grip and guide, N/µm, and its place, mm; none with a free front.
    pub span_n_per_um: Option<[f64; 2]>,
    /// Unsupported length over the mean finished diameter of its turned part.
    pub l_over_d: f64,
    /// Self-weight deflection over the unsupported span, µm.
    pub sag_um: f64,
    /// Bow of the turned shaft, increased by rotation, mm.
    pub whip_mm: f64,
    /// Deflection at the tool that makes the size under the radial forces of the finishing travel, µm.
    pub cut_deflection_um: f64,
    /// Change of the diameter along the finishing travel, µm.
    pub cut_diameter_change_um: f64,
    /// Passive force of the leading tool, N.
    pub passive_force_n: f64,
    /// Net radial force of all tools of the travel on the bar, N.
    pub net_radial_force_n: f64,
    /// Radial forces on the bar and their places, mm and N, positive away from the tool that makes the size. Tools at one place count with
    /// their net force.
    pub radial_forces: Vec<[f64; 2]>,
    /// Main cutting force of all tools of the travel, N.
    pub main_force_n: f64,
    /// Limit of the depth of cut from chatter, mm; none if the check does not apply.
    pub chatter_depth_limit_mm: Option<f64>,
    /// All checks; `chatter` is computed with its modes, not with a bound.
    pub checks: Vec<Finding>,
}

/// A point of the bent bar.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bent {
    /// Place from the front face, mm. Behind the end of the shaft is raw bar.
    pub at_mm: f64,
    /// Self-weight deflection, µm; positive is down.
    pub weight_um: f64,
    /// Deflection under the radial forces of the finishing travel, µm; positive is away from the tool that makes the size.
    pub cut_um: f64,
}

/// The bent shape of the bar at a moment, from the front face to the rear end of the headstock's hold.
///
/// # Errors
/// [`Unheld`] when the supports leave a free motion.
pub fn shape(rig: &Rig<'_>, state: &State, radial_forces: &[[f64; 2]]) -> Result<Vec<Bent>, Unheld> {
    let beam = rig.beam(state, &[]);
    let factor = beam.factor()?;
    let sag = beam.sag(&factor);
    let mut cut = vec![0.0; sag.len()];
    for [at_mm, force_n] in radial_forces {
        let bent = beam.under_force(&factor, beam.node(*at_mm), *force_n);
        cut.iter_mut().zip(&bent).for_each(|(sum, b)| *sum += b[0]);
    }
    let left = stiffness_left(rig.pressed(state).share());
    let bent = beam.x_mm.iter().zip(sag.iter().zip(&cut));
    Ok(bent.map(|(x, (s, c))| Bent { at_mm: *x, weight_um: um(s[0] / left), cut_um: um(c / left) }).collect())
}

/// The moment of that state, out of several, in which a check has the largest utilisation; none if there are no states.
///
/// # Errors
/// [`Unheld`] when the supports of one of the states leave a free motion.
pub fn moment(rig: &Rig<'_>, segment: &Segment, states: &[State], rpm: f64) -> Result<Option<Moment>, Unheld> {
    let mut worst: Option<(f64, Moment)> = None;
    for state in states {
        let found = one(rig, segment, *state, rpm)?;
        let share = found.checks.iter().map(|f| f.utilisation).fold(0.0, f64::max);
        if worst.as_ref().is_none_or(|(s, _)| share > *s) {
            worst = Some((share, found));
        }
    }
    let Some((_, mut found)) = worst else { return Ok(None) };
    // Only the worst state needs its natural frequencies.
    found.frequencies_hz = rig.omegas(&found.state, FREQUENCIES)?.into_iter().map(hz).collect();
    Ok(Some(found))
}

/// Places of the headstock's nose that are tried, evenly spaced over its stroke, mm from the bush face.
pub fn headstock_places_mm(rig: &Rig<'_>) -> Vec<f64> {
    let head = &rig.job.machine.headstock;
    let step = head.stroke_mm / (PLACES - 1) as f64;
    (0..PLACES).map(|i| head.nearest_mm + step * i as f64).collect()
}

fn one(rig: &Rig<'_>, segment: &Segment, state: State, rpm: f64) -> Result<Moment, Unheld> {
    let answers = rig.answers(&state)?;
    let view = View { rig, state: &state, answers: &answers, segment, rpm };
    let exact = chatter::exact(rig, &state, segment);
    let checks: Vec<Finding> = checks::all(&view)
        .map(|f| match (f.check, exact) {
            (chatter::NAME, Some(exact)) => exact,
            _ => f,
        })
        .collect();
    let turns = matches!(segment.work, Work::Turn | Work::Thread);
    let travel = segment.finishing().filter(|_| turns);
    let forces = travel.map(|t| rig.travel_forces(&t.depths_mm, &t.cutters, t.feed_mm));
    let net_radial_force_n = forces.as_ref().map_or(0.0, |f| f.net_radial_n);
    let radial_forces = radial_forces(rig, &state, segment, forces.as_ref());
    let cut_deflection_mm = match radial_forces.as_slice() {
        [[finisher_mm, _], _] => rig.deflection_under_mm(&state, *finisher_mm, &radial_forces)?,
        _ => answers.tool_mm_per_n * net_radial_force_n,
    };
    // With a bush this is the change of the segment; without one it is the change from here to the end of the stage.
    let change_mm = match state.guide {
        Guide::Collet { stage_end_mm } => {
            let end = rig.answers(&State { turned_mm: stage_end_mm, ..state })?;
            2.0 * net_radial_force_n * (answers.tool_mm_per_n - end.tool_mm_per_n).abs()
        }
        Guide::Bush { .. } | Guide::Parted => segment.change_mm,
    };
    let whip = checks.iter().find(|f| f.check == whip::NAME);
    Ok(Moment {
        state,
        rpm,
        unsupported_mm: answers.unsupported_mm,
        critical_rpm: answers.critical_rpm,
        frequencies_hz: Vec::new(),
        stiffness_n_per_um: answers.stiffness_n_per_um,
        span_n_per_um: state.counter.span_from_mm().map(|_| [answers.span_n_per_um, answers.span_at_mm]),
        l_over_d: free_ratio::ratio(rig, &state),
        sag_um: um(answers.sag_mm),
        whip_mm: whip.map_or(0.0, |f| f.demand),
        cut_deflection_um: um(cut_deflection_mm),
        cut_diameter_change_um: um(change_mm),
        passive_force_n: forces.as_ref().and_then(|f| f.cuts.first()).map_or(0.0, |c| c.passive_n),
        net_radial_force_n,
        radial_forces,
        main_force_n: forces.as_ref().map_or(0.0, |f| f.main_n),
        chatter_depth_limit_mm: exact.map(|f| f.limit),
        checks,
    })
}

/// The radial forces of a travel with their places (see [`Moment`]): of a tandem first that of the finishing tool.
fn radial_forces(rig: &Rig<'_>, state: &State, segment: &Segment, forces: Option<&TravelForces>) -> Vec<[f64; 2]> {
    let Some(forces) = forces else { return Vec::new() };
    match (forces.cuts.as_slice(), rig.finisher_at_mm(state)) {
        ([rough, finish], Some(finisher_mm)) if segment.lag_mm.is_some() => {
            let side = if rig.job.cutting.finisher.side == Side::Same { 1.0 } else { -1.0 };
            vec![[finisher_mm, finish.passive_n], [state.turned_mm, side * rough.passive_n]]
        }
        _ => vec![[state.turned_mm, forces.net_radial_n]],
    }
}

/// Distance of the headstock's nose from the bush face, mm; none without a bush.
pub fn headstock_mm(state: &State) -> Option<f64> {
    match state.guide {
        Guide::Bush { headstock_mm } => Some(headstock_mm),
        Guide::Collet { .. } | Guide::Parted => None,
    }
}
