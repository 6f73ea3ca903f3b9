//! Springs of the supports, places of the beam, and its weight, piece by piece.

use super::*;
use spanhold::mechanics::beam::{Beam, Spring};

const SLEEVE: (&str, &str) = ("bore: 24\n", "bore: 24\n    sleeve: {pitch: 50, stiffness: 3}\n");
const NO_BUSH: (&str, &str) = ("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 30, collet_gap: 5}\n");

fn places(springs: &[Spring]) -> Vec<(f64, f64)> {
    springs.iter().map(|s| (s.at_mm, s.n_per_mm)).collect()
}

/// Two springs to a support, half of 10 000 N/µm each: 5 000 000 N/mm; a sleeve's 3 N/µm alone.
#[test]
fn springs_of_every_support() {
    let half = 5_000_000.0;
    let job = changed(&[SLEEVE]);
    let rig = rig(&job);
    let collet = [(180.0, half), (200.0, half)];
    let sleeves = [(130.0, 3000.0), (80.0, 3000.0), (30.0, 3000.0)];
    let behind = [(252.0, half), (282.0, half), (352.0, half), (392.0, half)];
    let held = state(250.0, Some(200.0));
    assert_eq!(places(&rig.springs(&held)), [&collet[..], &sleeves, &behind].concat());
    let open = State { counter: Counter::Open { nose_mm: 200.0 }, ..held };
    assert_eq!(places(&rig.springs(&open)), [&sleeves[..], &behind].concat());
    assert_eq!(places(&rig.springs(&State { counter: Counter::Away, ..held })), behind);
    assert_eq!(places(&rig.springs(&State { guide: Guide::Parted, ..held })), [&collet[..], &sleeves].concat());
    // The last sleeve may stand at the very front.
    let at: Vec<f64> =
        rig.springs(&State { counter: Counter::Open { nose_mm: 170.0 }, ..held }).iter().map(|s| s.at_mm).collect();
    assert_eq!(at[..3], [100.0, 50.0, 0.0]);

    assert_eq!((rig.gap_mm(), rig.land_mm(), rig.hold_mm()), (2.0, 30.0, 20.0));
    assert_eq!((rig.guide_face_mm(&held), rig.unsupported_mm(&held)), (252.0, 52.0));
    assert_eq!((rig.unsupported_mm(&open), rig.rear_end_mm(&held)), (252.0, 392.0));
    // After part-off the shaft ends at its own length, and with a grip beyond it at the grip.
    let parted = State { turned_mm: 129.0, counter: Counter::Holds { nose_mm: 100.0 }, guide: Guide::Parted };
    assert_eq!((rig.guide_face_mm(&parted), rig.rear_end_mm(&parted)), (129.0, 129.0));
    assert_eq!(Rig::new(&job, None).hold_mm(), 0.0);
}

/// With a bush the headstock follows from `nearest + stroke` = 360 mm; without, its collet waits behind the end of the piece.
#[test]
fn what_guides_behind_the_tool() {
    let job = job("single", "");
    assert_eq!(rig(&job).guide(120.0, 20.0, 999.0), Guide::Bush { headstock_mm: 260.0 });
    let job = changed(&[NO_BUSH]);
    let rig = rig(&job);
    assert_eq!(rig.guide(20.0, 0.0, 50.0), Guide::Collet { stage_end_mm: 50.0 });
    assert_eq!(rig.guide(60.0, 0.0, 50.0), Guide::Collet { stage_end_mm: 60.0 });
    let held = State { turned_mm: 20.0, counter: Counter::Away, guide: rig.guide(20.0, 0.0, 50.0) };
    assert_eq!((rig.gap_mm(), rig.guide_face_mm(&held), rig.unsupported_mm(&held)), (5.0, 55.0, 55.0));
    assert_eq!(places(&rig.springs(&held)), [(55.0, 5e6), (95.0, 5e6)]);
    assert_eq!(rig.rear_end_mm(&held), 95.0);
    // No pull-back where nothing guides; nothing is left on a land.
    let text = text("single", "");
    let (from, to) = (text.find("  bush:").expect("there"), text.find("  headstock:").expect("there"));
    let without = read(&format!("{}{}", &text[..from], &text[to..]).replacen(NO_BUSH.0, NO_BUSH.1, 1));
    let rig = super::rig(&without);
    assert_eq!((rig.land_mm(), rig.pull_back_by_land_mm()), (0.0, 0.0));
}

/// Weight of cylinders (from, to, diameter), 8 t/m³ · 9.81 m/s², N, and its moment about the front face, N·mm.
fn weight(cylinders: &[(f64, f64, f64)]) -> (f64, f64) {
    let each = cylinders.iter().map(|(a, b, d)| {
        let w = 8e-6 * 9.81 * PI / 4.0 * d * d * (b - a);
        (w, w * (a + b) / 2.0)
    });
    each.fold((0.0, 0.0), |s, e| (s.0 + e.0, s.1 + e.1))
}

/// The same of a beam: nodal forces, and moments with them.
#[track_caller]
fn weighs(beam: &Beam, cylinders: &[(f64, f64, f64)]) {
    let (force, moment) = weight(cylinders);
    let forces: f64 = beam.weight.iter().map(|w| w[0]).sum();
    let moments: f64 = beam.weight.iter().zip(&beam.x_mm).map(|(w, x)| w[0] * x + w[1]).sum();
    near(forces.abs(), force);
    near(moments.abs(), moment);
}

/// Finished in front of the tool, raw bar behind it; a thread with its core; everything up to the headstock's hold.
#[test]
fn beams_weigh_what_their_cylinders_do() {
    let job = changed(&[SLEEVE]);
    let rig = rig(&job);
    let core = 8.0 - 1.226_87 * 1.25;
    let finished = [(0.0, 50.0, 16.0), (50.0, 57.0, 12.0), (57.0, 117.0, 18.0), (117.0, 129.0, core)];
    let held = state(100.0, Some(45.0));
    weighs(&rig.beam(&held, &[]), &[finished[0], finished[1], (57.0, 100.0, 18.0), (100.0, 242.0, 20.0)]);
    weighs(&rig.span_beam(&held), &[(45.0, 50.0, 16.0), finished[1], (57.0, 100.0, 18.0), (100.0, 102.0, 20.0)]);
    weighs(&rig.span_beam(&state(100.0, None)), &[finished[0], finished[1], (57.0, 100.0, 18.0), (100.0, 102.0, 20.0)]);
    let inside = |nose_mm| rig.inside_beam(Counter::Holds { nose_mm }).expect("a collet");
    weighs(&inside(45.0), &[(0.0, 45.0, 16.0)]);
    weighs(&inside(117.0), &finished[..3]);
    let open = Counter::Open { nose_mm: 117.0 };
    weighs(&rig.inside_beam(open).expect("a collet"), &finished[..3]);
    assert!(rig.inside_beam(Counter::Away).is_none());
    // Seen from the rear end: 140 mm of bar from the headstock's hold to the bush face.
    weighs(&rig.rear_beam_mirrored(&held), &[(0.0, 140.0, 20.0)]);
    let parted = State { turned_mm: 129.0, counter: Counter::Holds { nose_mm: 117.0 }, guide: Guide::Parted };
    weighs(&rig.beam(&parted, &[]), &finished);
    // While it is parted off, what the tool has passed behind the shaft still is raw bar.
    weighs(&rig.beam(&state(131.0, None), &[]), &[&finished[..], &[(129.0, 273.0, 20.0)]].concat());
    // All of it turned, the headstock behind.
    weighs(&rig.beam(&state(129.0, None), &[]), &[&finished[..], &[(129.0, 271.0, 20.0)]].concat());
}

/// Nodes: 40 pieces of the span, 14 of the front in the counter-spindle, 12 of what lies behind; shoulders, tool and supports.
#[test]
fn beams_are_meshed_as_finely_as_told() {
    let job = job("single", "");
    let rig = rig(&job);
    let held = state(100.0, Some(45.0));
    let beam = rig.beam(&held, &[71.3]);
    let widest = |x: &[f64], from: f64, to: f64| {
        let inner: Vec<f64> = x.iter().copied().filter(|x| (from..=to).contains(x)).collect();
        inner.windows(2).map(|w| w[1] - w[0]).fold(0.0, f64::max)
    };
    near(widest(&beam.x_mm, 45.0, 102.0), 57.0 / 40.0);
    near(widest(&beam.x_mm, 0.0, 45.0), 45.0 / 14.0);
    near(widest(&beam.x_mm, 102.0, 242.0), 140.0 / 12.0);
    // The supports, the shoulders up to the tool, the tool, what was asked for; one of each.
    for must in [0.0, 25.0, 45.0, 50.0, 57.0, 71.3, 100.0, 102.0, 132.0, 202.0, 242.0] {
        assert!(beam.x_mm.iter().any(|x| (x - must).abs() < 1e-9), "{must}");
    }
    // 41 + 14 + 12 of the grid and eleven besides, less those that fall on the grid: 0, 45, 102 and 242.
    assert_eq!(beam.x_mm.len(), 41 + 14 + 12 + 11 - 4);
    let span = rig.span_beam(&held);
    near(widest(&span.x_mm, 45.0, 102.0), 57.0 / 40.0);
    assert_eq!((span.x_mm.len(), span.x_mm[0], span.x_mm[span.x_mm.len() - 1]), (41 + 3, 45.0, 102.0));
    let inside = rig.inside_beam(held.counter).expect("a collet");
    near(widest(&inside.x_mm, 0.0, 45.0), 45.0 / 14.0);
    assert_eq!(inside.x_mm.len(), 15 + 1);
    // Open, no more than they must have.
    let open = State { counter: Counter::Open { nose_mm: 57.0 }, ..held };
    assert_eq!(rig.inside_beam(open.counter).expect("a collet").x_mm, [0.0, 50.0, 57.0]);
    assert_eq!(rig.span_beam(&open).x_mm, [57.0, 100.0, 102.0]);
    assert!(rig.beam(&open, &[]).x_mm.contains(&57.0));
    let rear = rig.rear_beam_mirrored(&held);
    near(widest(&rear.x_mm, 0.0, 140.0), 140.0 / 12.0);
    let mut ends = rear.x_mm.iter().filter(|x| [0.0, 40.0, 110.0, 140.0].iter().any(|e| (*x - e).abs() < 1e-9));
    assert_eq!((ends.by_ref().count(), rear.x_mm.len()), (4, 13 + 2));
}

/// `∛` of nothing: a taper from 10 to 11 mm changes by 10 %, two slices of at most 5 %, each with its middle diameter.
#[test]
fn tapers_in_slices() {
    let job = changed(&[("length: 60, diameter: 18", "length: 60, taper: [10, 11]")]);
    let rig = rig(&job);
    let slices: Vec<(f64, f64, f64)> =
        rig.profile.slices[2..4].iter().map(|s| (s.from_mm, s.to_mm, s.diameter_mm)).collect();
    assert_eq!(slices, [(57.0, 87.0, 10.25), (87.0, 117.0, 10.75)]);
    assert_eq!(rig.profile.slices.len(), 5);
    for (at, largest) in [(0.0, 16.0), (50.0, 16.0), (57.0, 16.0), (129.0, 16.0), (500.0, 16.0)] {
        assert_eq!(rig.profile.largest_in_front_mm(at), largest);
    }
    let job = self::job("single", "");
    let rig = super::rig(&job);
    for (at, largest) in [(50.0, 16.0), (57.0, 16.0), (57.1, 18.0), (117.0, 18.0), (129.0, 18.0)] {
        assert_eq!(rig.profile.largest_in_front_mm(at), largest, "{at}");
    }
}
