//! Stiffnesses of guide bush, headstock and counter-spindle from a few dial readings and tap tests.
//!
//! The model is the beam on springs that every plan uses. It computes what was measured. The logarithms of the
//! stiffnesses are varied until the sum of the squared differences, each divided by the error of its reading, is least.
//! If the readings do not determine a stiffness, the fit is refused, and the message names a reading that would
//! determine it.

mod advice;
#[expect(clippy::indexing_slicing, reason = "square matrices, a row and a column for each unknown")]
mod least_squares;
mod model;

use crate::diag::Diag;
use crate::job::readings::{Errors, Fitted, FittedSupport, Readings, SetUp, Support};
use crate::job::{Holding, Machine, Material};
use crate::lang;
use crate::say;
use least_squares::{Fit, Spread, least_squares, spread};
use model::Model;

/// A stiffness is undetermined if the standard error of its logarithm is larger: it is known only within a factor of
/// 1.5.
const MOST_ERROR: f64 = 0.4;
/// If the readings differ from the fit by more than this many times their errors (root mean square), something else is
/// wrong.
const MOST_MISFIT: f64 = 6.0;
/// Above this a note says that the readings do not fit as well as their errors say.
const TOLD_MISFIT: f64 = 2.0;
/// Starts of the search, as factors on the stiffnesses in the machine file.
const STARTS: [f64; 3] = [1.0, 8.0, 0.125];
/// Limits of a stiffness, N/µm, as in a machine file.
const RANGE_N_PER_UM: [f64; 2] = [0.1, 10_000.0];
/// Overhang of a bar that is proposed for a reading, in diameters. Common practice, no source.
const OVERHANG: f64 = 4.0;
/// A normally distributed quantity lies within this many standard deviations in 95 of 100 cases.
const LIKELY: f64 = 1.96;

/// Fits the stiffnesses.
///
/// # Errors
/// A set-up does not hold the bar, the readings do not determine a stiffness, or no stiffness explains them. The
/// diagnostic points at the readings and gives advice.
pub fn fit(readings: &Readings) -> Result<Fitted, Diag> {
    let model = Model::new(readings);
    let refused = |diag: Diag| diag.at(readings.place.clone());
    let unheld = || refused(Diag::new(say!("fit-loose-bar")).help(say!("fit-loose-bar-help")));
    let start: Vec<f64> = readings.fit.iter().map(|s| model::stiffness(&readings.machine, *s).ln()).collect();
    let [low, high] = RANGE_N_PER_UM.map(f64::ln);
    let best = STARTS
        .iter()
        .filter_map(|factor| {
            let from: Vec<f64> = start.iter().map(|p| (p + factor.ln()).clamp(low, high)).collect();
            least_squares(&from, [low, high], |p| model.residuals(p))
        })
        .min_by(|a, b| a.cost.total_cmp(&b.cost))
        .ok_or_else(unheld)?;
    let known = spread(&best.jacobian, start.len());
    let fitted = fitted(readings, &model, &best, &known);
    // A wrong reading is reported first: it distorts the stiffnesses, which then do not show what the other readings
    // determine.
    if fitted.misfit > MOST_MISFIT {
        return Err(refused(misfit(&fitted)));
    }
    match undetermined(readings, &model, &start, &known) {
        Some(diag) => Err(refused(diag)),
        None => Ok(fitted),
    }
}

/// How to measure the stiffness of a support of a machine with a bar of a material and a diameter (mm), in words. None: the machine has no
/// such support, or cannot hold the bar so.
pub fn reading_of(
    machine: &Machine,
    material: &Material,
    holding: Holding,
    bar_mm: f64,
    support: Support,
) -> Option<String> {
    if !model::has(machine, support) {
        return None;
    }
    let by_bush = holding == Holding::Bush && machine.bush.is_some();
    let set_up = SetUp {
        name: String::new(),
        headstock_mm: by_bush.then_some(machine.headstock.nearest_mm),
        // Short enough that the support counts beside the bar, long enough for a load.
        front_mm: (OVERHANG * bar_mm).clamp(30.0, 200.0).round(),
        grip: None,
        dial: Vec::new(),
        frequency_hz: None,
    };
    let readings = Readings {
        machine: machine.clone(),
        material: material.clone(),
        diameter_mm: bar_mm,
        fit: Support::ALL.into_iter().filter(|s| model::has(machine, *s)).collect(),
        errors: Errors { dial_um: 0.5, load_share: 0.02, tap_share: 0.01 },
        set_ups: vec![set_up],
        place: None,
    };
    let at: Vec<f64> = readings.fit.iter().map(|s| model::stiffness(machine, *s).ln()).collect();
    advice::reading_of(&Model::new(&readings), &at, support)
}

/// The message about supports that are not determined, with a reading that would determine them. That reading is sought
/// with the stiffnesses of the machine file, because those fitted to too few readings are no good start.
fn undetermined(readings: &Readings, model: &Model, start: &[f64], known: &Spread) -> Option<Diag> {
    let supports = readings.fit.iter().copied().enumerate();
    let (loose, sure): (Vec<_>, Vec<_>) = supports.partition(|(i, _)| known.error(*i) > MOST_ERROR);
    let names: Vec<&str> = loose.iter().map(|(_, s)| s.name()).collect();
    let (_, support) = *loose.first()?;
    let never = support == Support::CounterSpindle && readings.set_ups.iter().all(|s| s.grip.is_none());
    let what = match (never, names.as_slice()) {
        (true, _) => say!("fit-spindle-never-used"),
        (false, several) => say!("fit-undetermined", supports = several.join(", ")),
    };
    let rest: Vec<&str> = sure.iter().map(|(_, s)| s.key()).collect();
    let leave = say!("fit-leave-out", supports = rest.join(", "));
    let add = advice::reading_to_add(model, start, &loose).unwrap_or_else(|| say!("fit-other-bar"));
    Some(Diag::new(what).help(if rest.is_empty() { add } else { format!("{add}. {leave}") }))
}

fn misfit(fitted: &Fitted) -> Diag {
    let worst = fitted.readings.iter().max_by(|a, b| a.off.abs().total_cmp(&b.off.abs()));
    let what = worst.map_or_else(String::new, |r| {
        say!(
            "fit-misfit",
            reading = r.reading,
            set_up = r.set_up,
            unit = r.unit,
            measured = lang::number(rounded(r.measured)),
            fitted = lang::number(rounded(r.fitted))
        )
    });
    Diag::new(what).help(say!("fit-misfit-help"))
}

fn rounded(value: f64) -> f64 {
    (value * 100.0).round() / 100.0
}

fn fitted(readings: &Readings, model: &Model, best: &Fit, known: &Spread) -> Fitted {
    let rows = model.readings(&best.at);
    let spare = rows.len().saturating_sub(readings.fit.len());
    let squares: f64 = rows.iter().map(|r| r.off * r.off).sum();
    let misfit = (squares / spare.max(1) as f64).sqrt();
    // If the readings fit worse than their errors say, the standard errors are widened. If they fit better, nothing is
    // narrowed.
    let widened = if spare > 0 { misfit.max(1.0) } else { 1.0 };
    let supports: Vec<FittedSupport> = readings
        .fit
        .iter()
        .zip(&best.at)
        .enumerate()
        .map(|(i, (support, at))| {
            let (k, error) = (at.exp(), known.error(i) * widened);
            FittedSupport {
                support: *support,
                stiffness_n_per_um: k,
                standard_error: error,
                likely_n_per_um: [k * (-LIKELY * error).exp(), k * (LIKELY * error).exp()],
                before_n_per_um: model::stiffness(&readings.machine, *support),
            }
        })
        .collect();
    let mut notes = Vec::new();
    if spare == 0 {
        notes.push(say!("fit-note-no-spare"));
    } else if misfit > TOLD_MISFIT {
        notes.push(say!("fit-note-misfit", times = lang::fixed(misfit, 1)));
    }
    let fixed: Vec<&str> = Support::ALL
        .into_iter()
        .filter(|s| !readings.fit.contains(s) && model::has(&readings.machine, *s))
        .map(Support::name)
        .collect();
    if !fixed.is_empty() {
        notes.push(say!("fit-note-fixed", supports = fixed.join(", ")));
    }
    let inside = |s: &crate::job::readings::SetUp| s.grip.is_some_and(|g| s.front_mm > g.nose_mm + g.hold_mm);
    if readings.machine.counter_spindle.as_ref().is_some_and(|c| c.sleeve.is_some())
        && readings.set_ups.iter().any(inside)
    {
        notes.push(say!("fit-note-sleeves"));
    }
    Fitted {
        machine: readings.machine.name.clone(),
        supports,
        readings: rows,
        misfit: if spare > 0 { misfit } else { 0.0 },
        spare_readings: spare,
        condition: known.condition(),
        notes,
    }
}
