//! Which reading to add: tries readings in the model and proposes the one that determines the supports best.

use super::MOST_ERROR;
use super::least_squares::{derivatives, spread};
use super::model::Model;
use crate::job::readings::{Dial, Grip, SetUp, Support};
use crate::lang::Measure;
use crate::say;

/// Load of a proposed reading if its set-up has no load, N.
const USUAL_LOAD_N: f64 = 100.0;
/// A reading of this size is far above the error of a dial, µm; loads are steps between these, N. Common practice, no source.
const GOOD_UM: f64 = 30.0;
const LOADS_N: (f64, f64) = (20.0, 400.0);
/// Change of the logarithm of a stiffness with which its readings are compared.
const SOFTER: f64 = 0.05;
/// Places tried along each stretch of the bar.
const PLACES: usize = 12;
/// Distance kept from bush and collets, mm: room for the dial's stylus and the load.
const ROOM_MM: f64 = 5.0;

/// The single reading that determines the `loose` supports best, in words. None: no reading can be tried.
pub(super) fn reading_to_add(model: &Model, at: &[f64], loose: &[(usize, Support)]) -> Option<String> {
    let (_, support) = *loose.first()?;
    let given = derivatives(at, &|p: &[f64]| model.residuals(p))?;
    let mut best: Option<(f64, String)> = None;
    for (set_up, is_new) in set_ups(model, support) {
        for place in places(model, &set_up) {
            let load_n = set_up.dial.iter().map(|d| d.load_n).fold(0.0, f64::max);
            let load_n = if load_n > 0.0 { load_n } else { USUAL_LOAD_N };
            let dial = [Dial { load_n, at_mm: place, read_at_mm: place, deflection_um: 0.0 }];
            let expected = *model.answers(at, &set_up, &dial, false)?.0.first()?;
            let error = model.dial_error_um(expected);
            let row =
                derivatives(at, &|p: &[f64]| Some(vec![model.answers(p, &set_up, &dial, false)?.0.first()? / error]))?;
            let mut rows = given.clone();
            rows.extend(row);
            let known = spread(&rows, at.len());
            let error = loose.iter().map(|(i, _)| known.error(*i)).fold(0.0, f64::max);
            if best.as_ref().is_none_or(|(least, _)| error < 0.98 * least) {
                best = Some((error, in_words(&set_up, is_new, load_n, place, expected)));
            }
        }
    }
    let (error, words) = best?;
    let names: Vec<&str> = loose.iter().map(|(_, s)| s.name()).collect();
    let names = names.join(", ");
    if error > MOST_ERROR {
        return Some(say!("fit-add-several", reading = words, supports = names));
    }
    Some(say!("fit-add", reading = words, supports = names, error = format!("{:.0}", 100.0 * error)))
}

/// The dial reading that tells most of one support, with nothing measured yet, in words. None: no set-up holds a test bar.
///
/// Of all places the one at which a change of this stiffness is largest beside the error of the reading.
pub(super) fn reading_of(model: &Model, at: &[f64], support: Support) -> Option<String> {
    let index = model.readings.fit.iter().position(|s| *s == support)?;
    let mut best: Option<(f64, String)> = None;
    for (set_up, _) in set_ups(model, support) {
        if support == Support::CounterSpindle && set_up.grip.is_none() {
            continue;
        }
        for place in places(model, &set_up) {
            let dial = |load_n: f64| [Dial { load_n, at_mm: place, read_at_mm: place, deflection_um: 0.0 }];
            let bent = |p: &[f64], load_n: f64| model.answers(p, &set_up, &dial(load_n), false)?.0.first().copied();
            // The load bends the bar far enough to be read well, but by no more than a hand-held push.
            let (least_n, most_n) = LOADS_N;
            let load_n = (GOOD_UM / bent(at, 1.0)?).clamp(least_n, most_n);
            let load_n = (load_n / least_n).round() * least_n;
            let expected_um = bent(at, load_n)?;
            let mut softer = at.to_vec();
            *softer.get_mut(index)? -= SOFTER;
            let told = (bent(&softer, load_n)? - expected_um).abs() / SOFTER / model.dial_error_um(expected_um);
            if best.as_ref().is_none_or(|(most, _)| told > 1.02 * most) {
                best = Some((told, set_up_in_words(model, &set_up, load_n, place, expected_um)));
            }
        }
    }
    best.map(|(_, words)| words)
}

fn set_up_in_words(model: &Model, set_up: &SetUp, load_n: f64, place: f64, expected_um: f64) -> String {
    let number = |mm: f64| Measure::Place.fixed(mm, 0);
    let (bar, front) = (Measure::Size.number(model.readings.diameter_mm), number(set_up.front_mm));
    let (load, at) = (Measure::Force.fixed(load_n, 0), number(place.abs()));
    let expected = Measure::Micro.fixed(expected_um, 0);
    let behind = if place < 0.0 { "yes" } else { "no" };
    match (set_up.headstock_mm, set_up.grip) {
        (Some(headstock), Some(grip)) => say!(
            "fit-load-gripped",
            bar = bar,
            headstock = number(headstock),
            nose = number(grip.nose_mm),
            load = load,
            at = at,
            behind = behind,
            expected = expected
        ),
        (Some(headstock), None) => say!(
            "fit-load-free",
            bar = bar,
            headstock = number(headstock),
            front = front,
            load = load,
            at = at,
            behind = behind,
            expected = expected
        ),
        (None, Some(grip)) => say!(
            "fit-load-no-bush-gripped",
            bar = bar,
            nose = number(grip.nose_mm),
            load = load,
            at = at,
            expected = expected
        ),
        (None, None) => {
            say!("fit-load-no-bush", bar = bar, front = front, load = load, at = at, expected = expected)
        }
    }
}

/// The set-ups of the file (false), and a new one that loads the support (true), if the machine allows it.
fn set_ups(model: &Model, support: Support) -> Vec<(SetUp, bool)> {
    let readings = model.readings;
    let mut list: Vec<(SetUp, bool)> = readings.set_ups.iter().map(|s| (s.clone(), false)).collect();
    let Some(first) = readings.set_ups.first() else { return list };
    let machine = &readings.machine;
    if let (Support::CounterSpindle, Some(spindle)) = (support, &machine.counter_spindle) {
        let holds = |c: &&crate::job::Collet| c.holds(readings.diameter_mm);
        if let Some(collet) = spindle.collets.iter().find(holds) {
            let nose_mm = (spindle.nearest_mm + 2.0 * ROOM_MM).min(spindle.farthest_mm);
            let grip = Some(Grip { nose_mm, hold_mm: collet.hold_mm });
            let front_mm = first.front_mm.max(nose_mm + collet.hold_mm);
            list.push((SetUp { grip, front_mm, dial: Vec::new(), frequency_hz: None, ..first.clone() }, true));
        }
    }
    if support == Support::Headstock
        && machine.no_bush.as_ref().is_some_and(|n| readings.diameter_mm <= n.max_bar_mm)
        && readings.set_ups.iter().all(|s| s.headstock_mm.is_some())
    {
        let bare = SetUp { headstock_mm: None, grip: None, dial: Vec::new(), frequency_hz: None, ..first.clone() };
        list.push((bare, true));
    }
    list
}

/// Places where load and dial can be, in front of the bush and behind it, mm.
fn places(model: &Model, set_up: &SetUp) -> Vec<f64> {
    let machine = &model.readings.machine;
    let front_to = set_up.grip.map_or(set_up.front_mm, |g| g.nose_mm);
    let mut stretches = vec![(ROOM_MM, front_to - ROOM_MM)];
    if let (Some(headstock_mm), Some(bush)) = (set_up.headstock_mm, &machine.bush) {
        stretches.push((-headstock_mm + ROOM_MM, -bush.land_mm - ROOM_MM));
    }
    let mut places = Vec::new();
    for (from, to) in stretches.into_iter().filter(|(from, to)| to > from) {
        places.extend((0..=PLACES).map(|i| (from + (to - from) * i as f64 / PLACES as f64).round()));
    }
    places.dedup();
    places
}

fn in_words(set_up: &SetUp, is_new: bool, load_n: f64, place: f64, expected_um: f64) -> String {
    let dial = format!("{{load: {load_n}, at: {place}, deflection: …}}");
    let expected = format!("{expected_um:.0}");
    match set_up.grip {
        _ if !is_new => say!("fit-reading-in", reading = dial, expected = expected, set_up = set_up.name),
        Some(grip) => {
            let key = format!("grip: {}", grip.nose_mm);
            say!("fit-reading-of-new", reading = dial, expected = expected, key = key)
        }
        None => say!("fit-reading-of-new", reading = dial, expected = expected, key = "holding: no_bush"),
    }
}
