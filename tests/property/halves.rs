//! The beam in parts answers what the whole beam answers.

use crate::{cases, jobs, read};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use spanhold::job::{Collet, Job, Tools};
use spanhold::process::span::{Front, Rear};
use spanhold::process::{Counter, Guide, Rig, State};
use spanhold::units::rad_per_s;
use std::cell::Cell;

/// Static answers agree to rounding. An element of some nanometres, where a tool stands next to a shoulder, is 10¹⁷ times stiffer than the
/// bar, and takes that many digits: of the closed form of an overhang, whole beam and parts are then off by as much, either way.
const SAME: f64 = 2e-8;
/// Rounding grows with the ratio of the stiffest element to the softest motion: most of a metre hanging free is a
/// hundred thousand times softer than a short span.
const SAME_FREE: f64 = 1e-6;
/// The lowest frequency of the whole beam is an iterated one.
const SAME_CRITICAL: f64 = 1e-4;

fn demo() -> Job {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/feed-roller-shaft.yaml");
    spanhold::input::read_job(path.as_ref()).expect("the demo job")
}

/// A state of a job from four numbers between 0 and 1; `near` moves the turned length close to a shoulder.
pub fn state(rig: &Rig<'_>, [t, g, h]: [f64; 3], near: Option<f64>) -> State {
    let job = rig.job;
    let mut turned_mm = t * job.parted_at_mm();
    if let Some(off) = near {
        let shoulder = job.shaft.sections[job.shaft.section_at(turned_mm)].to_mm;
        turned_mm = (shoulder + off).clamp(0.0, job.parted_at_mm());
    }
    let head = &job.machine.headstock;
    let guide = Guide::Bush { headstock_mm: head.nearest_mm + h * head.stroke_mm };
    // Where the nose may stand: the collet on one cylinder of its range, turned already.
    let lands = |collet: &Collet| -> Vec<(f64, f64)> {
        let fits = job.shaft.sections.iter().filter(|s| s.is_plain() && collet.holds(s.largest_mm()));
        let room = fits.map(|s| (s.from_mm + collet.hold_mm, s.to_mm.min(turned_mm)));
        room.filter(|(a, b)| b >= a).collect()
    };
    let lands = rig.collet.map_or(Vec::new(), lands);
    let place = g * lands.len() as f64;
    let counter = match lands.get(place as usize) {
        Some((a, b)) if g > 0.1 => Counter::Holds { nose_mm: a + (b - a) * place.fract() },
        _ => Counter::Away,
    };
    State { turned_mm, counter, guide }
}

fn compare(rig: &Rig<'_>, state: &State) -> Result<(), TestCaseError> {
    let whole = rig.answers(state).expect("held by bush and headstock");
    let Guide::Bush { headstock_mm } = state.guide else { unreachable!("states here are next to a bush") };
    let rear = Rear::new(rig, headstock_mm).expect("held");
    let front = Front::new(rig, state.turned_mm, state.counter);
    let at_rest = front.at_rest(&[&rear])[0].expect("held");
    let same = if state.counter == Counter::Away { SAME_FREE } else { SAME };
    // The parts leave it out where no check asks for it.
    let spanned = |n_per_um: f64| if at_rest.span_n_per_um.is_finite() { n_per_um } else { 0.0 };
    for (what, a, b, scale) in [
        ("stiffness", whole.stiffness_n_per_um, at_rest.stiffness_n_per_um, 0.0),
        ("softest place", spanned(whole.span_n_per_um), spanned(at_rest.span_n_per_um), 0.0),
        ("sag", whole.sag_mm, at_rest.sag_mm, 0.0),
        // A sag that all but vanishes is the difference of larger ones.
        ("bore sag", whole.bore_sag_mm, at_rest.bore_sag_mm, 1e-3 * whole.sag_mm),
        ("flexibility at the tool", whole.tool_mm_per_n, at_rest.tool_mm_per_n, 0.0),
    ] {
        prop_assert!((a - b).abs() <= same * a.abs().max(scale), "{what}: {a} whole, {b} in halves, {state:?}");
    }
    let above = |share: f64| front.swings_above(rad_per_s(whole.critical_rpm * share), &[&rear])[0];
    prop_assert!(above(1.0 - SAME_CRITICAL), "{} rev/min, {state:?}", whole.critical_rpm);
    prop_assert!(!above(1.0 + SAME_CRITICAL), "{} rev/min, {state:?}", whole.critical_rpm);
    if let Counter::Holds { nose_mm } = state.counter {
        let open = Front::new(rig, state.turned_mm, Counter::Open { nose_mm });
        let (a, b) = (rig.release_mm(state).expect("held"), open.sag_at_mm(&rear, nose_mm).expect("held"));
        prop_assert!(
            // With the collet open the front is free.
            (a - b).abs() <= SAME_FREE * a.abs().max(1e-3 * whole.sag_mm),
            "release: {a} whole, {b} in halves, {state:?}"
        );
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(400))]

    #[test]
    fn halves_of_the_demo_answer_as_the_whole(at in prop::array::uniform3(0.0..1.0), collet in 0..3usize) {
        let job = demo();
        let counter = job.machine.counter_spindle.as_ref().expect("the demo has one");
        let rig = Rig::new(&job, counter.collets.get(collet));
        compare(&rig, &state(&rig, at, None))?;
    }
}

#[test]
fn halves_of_other_jobs_answer_as_the_whole() {
    let near = prop::sample::select(vec![-1e-2, -1e-5, -2e-6, -1e-7, 0.0, 1e-7, 2e-6, 1e-5, 1e-2]);
    let asked = (20_000..40_000u64, prop::array::uniform3(0.0..1.0), prop::option::of(near));
    let (compared, held) = (Cell::new(0), Cell::new(0));
    let looked = TestRunner::new(cases(400)).run(&asked, |(seed, at, near)| {
        let Some(job) = read(&jobs::small_job(seed)) else { return Ok(()) };
        let rig = Rig::new(&job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
        let state = state(&rig, at, near);
        compared.set(compared.get() + 1);
        held.set(held.get() + usize::from(state.counter != Counter::Away));
        compare(&rig, &state)
    });
    looked.unwrap_or_else(|e| panic!("{e}"));
    println!("{compared:?} states compared, {held:?} of them held in front");
    assert!(compared.get() >= 250 && held.get() >= 60, "{compared:?} {held:?}");
}

/// Both kinds of tools ask for different nodes; the random jobs must have both.
#[test]
fn the_random_jobs_have_both_kinds_of_tools() {
    let jobs: Vec<Job> = (20_000..20_040).filter_map(|seed| read(&jobs::small_job(seed))).collect();
    let opposed = jobs.iter().filter(|j| j.cutting.tools == Tools::Opposed).count();
    assert!(opposed >= 8 && jobs.len() - opposed >= 8, "{opposed} of {}", jobs.len());
}
