//! A centre in the front face: its spring, a propped cantilever and a column on paper, and the time it takes.

use super::falls::{pin, planned};
use super::*;
use spanhold::answer::answer;
use spanhold::job::plan::Verdict;

const HOLE: (&str, &str) = ("  straightness", "  features: [{centre_hole: A1, end: front}]\n  straightness");
const HOLD: (&str, &str) = ("cutting:", "hold: centre\ncutting:");

fn with(text: &str, changes: &[(&str, &str)]) -> Job {
    let mut text = text.to_owned();
    for (from, to) in changes {
        assert!(text.contains(from), "no {from}");
        text = text.replacen(from, to, 1);
    }
    read(&text)
}

fn centre(numbers: &str) -> String {
    format!("hand_over_s: 5\n    centre: {{{numbers}}}\n")
}

#[test]
fn a_centre_is_one_spring_at_the_front_face_until_the_shaft_is_turned() {
    let spindle = centre("force: 250, stiffness: 30");
    let job = with(&text("single", ""), &[HOLE, HOLD, ("hand_over_s: 5\n", &spindle)]);
    let rig = Rig::new(&job, None);
    let state = |t| State { turned_mm: t, counter: rig.counter(None, t), guide: Guide::Bush { headstock_mm: 100.0 } };
    let places: Vec<(f64, f64)> = rig.springs(&state(100.0)).iter().map(|s| (s.at_mm, s.n_per_mm)).collect();
    assert_eq!(places[0], (0.0, 30_000.0));
    assert_eq!(places.len(), 5);
    // 129 mm of shaft; behind them the part-off, with the front free.
    assert_eq!((rig.counter(None, 0.0), rig.counter(None, 129.0)), (Counter::Centre, Counter::Centre));
    assert_eq!(rig.counter(None, 129.01), Counter::Away);
    assert_eq!(rig.unsupported_mm(&state(100.0)), 102.0);
    for t in [30.0, 80.0, 129.0] {
        parts::agree(&rig, t, Counter::Centre, 100.0);
    }
    // The bow of a bar held at both ends is a quarter of that of a free front: 0.5 · 0.102² mm.
    let answers = rig.answers(&state(100.0)).expect("held");
    near(checks::whip::bow_mm(&rig, &state(100.0), &answers), 0.5 * 0.102 * 0.102);
    let free = State { counter: Counter::Away, ..state(100.0) };
    near(checks::whip::bow_mm(&rig, &free, &answers), 4.0 * 0.5 * 0.102 * 0.102);
    // The spindle turns with the part up to the part-off: 3000 rev/min for 5000.
    let segments = rig.segments().expect("can be cut");
    let fast = |work| Segment { work, ..segments[0].clone() };
    near(rig.wanted_rpm(&fast(Work::Turn), rig.job.cutting.vc_m_per_min, 2.0, false), 3000.0);
    near(rig.wanted_rpm(&fast(Work::PartOff), rig.job.cutting.vc_m_per_min, 2.0, false), 5000.0);
}

/// A bar of 20 mm, 405 mm from the centre to the headstock collet, which resists its slope with `C`. On two hinges a force at `a` from the
/// centre bends the bar by `a² b²/(3 EI L)` and turns its rear end by `a (L² - a²)/(6 EI L)`; the moment with which the collet turns it
/// back to `1/(1/C + L/3EI)` of that lifts the tool again. Shear counts in the short hold of the collet; in the span it adds up to 3 %.
#[test]
fn a_bar_between_centre_and_collet_is_a_propped_cantilever() {
    let spindle = centre("force: 1, stiffness: 10000");
    let no_bush = ("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 30, collet_gap: 5}\n");
    let whole = text("single", "");
    let (from, to) =
        (whole.find("    - {length: 50").expect("a section"), whole.find("  straightness").expect("there"));
    let bar = format!("{}    - {{length: 400, diameter: 20}}\n{}", &whole[..from], &whole[to..]);
    let job = with(&bar, &[HOLE, HOLD, no_bush, ("hand_over_s: 5\n", &spindle)]);
    let rig = Rig::new(&job, None);
    let (ei, length, hold) = (200_000.0 * PI * 20f64.powi(4) / 64.0, 405.0f64, 40.0f64);
    let shear = 200_000.0 / 2.6 * PI * 100.0 * 7.8 / 8.8;
    let c = 1.0 / (4.0 / (10_000_000.0 * hold * hold) + hold / (3.0 * ei) + 1.0 / (hold * shear));
    for a in [100.0, 200.0, 300.0f64] {
        let (b, square) = (length - a, length * length - a * a);
        let slope = a * square / (6.0 * ei * length);
        let moment = slope / (1.0 / c + length / (3.0 * ei));
        let by_hand = a * a * b * b / (3.0 * ei * length) - moment * slope;
        let state = State { turned_mm: a, counter: Counter::Centre, guide: Guide::Collet { stage_end_mm: 400.0 } };
        let found = 1e-3 / rig.answers(&state).expect("held").stiffness_n_per_um;
        assert!(found > by_hand && found < 1.03 * by_hand, "at {a}: {found}, by hand {by_hand}");
    }
}

/// Its force presses the span as Euler's column between hinges, and the bar behind the bush together with the feed force.
#[test]
fn the_force_of_a_centre_presses_the_bar() {
    let thin = axial::thin_text();
    let spindle = centre("force: 4, stiffness: 10000");
    // No hole of ISO 6411 is so small, so the job of the thin bar is put on a centre here.
    let mut job = with(&thin, &[("hand_over_s: 5\n", &spindle)]);
    job.hold = spanhold::job::Hold::Centre;
    let rig = Rig::new(&job, None);
    let state = State { turned_mm: 50.0, counter: Counter::Centre, guide: Guide::Bush { headstock_mm: 70.0 } };
    let (front, behind_n) = rig.pressed_in_front(50.0, Counter::Centre, false);
    let euler = PI * PI * 200_000.0 * PI * 1.2f64.powi(4) / 64.0 / (52.0 * 52.0);
    assert!((front.critical_n / euler - 1.0).abs() < 1e-3, "{} {euler}", front.critical_n);
    assert_eq!((front.load_n, behind_n), (4.0, 4.0));
    near(front.at_mm, 26.0);
    let feed = forces(&rig, &[0.15], 0.03).cuts[0].feed_n;
    near(rig.pressed_in_front(20.0, Counter::Centre, true).1, 4.0 + feed);
    assert!(rig.pressed_standing(&state).share() > 0.05);
    // Heavier than what the collet of the headstock holds: no plan, and the centre is named.
    let heavy = centre("force: 9000, stiffness: 100");
    let job = with(
        &text("single", ""),
        &[HOLE, HOLD, ("hand_over_s: 5\n", &heavy), ("clamp_force: 20000", "clamp_force: 2000")],
    );
    let plan = answer(&job).expect("no defect");
    let shortfall = plan.shortfall.expect("no plan");
    assert!(shortfall.text.contains("the force of the centre"), "{}", shortfall.text);
}

/// The pin that falls takes π s for its cut, 2 s for the travel and 8 s for part-off (`falls`); the centre hole takes 4 s, and the centre the
/// 5 s of a hand-over. With the centre the bar turns no faster than the counter-spindle: `60 · 20/(0.1 · 3000)` = 4 s for the cut.
#[test]
fn the_cycle_of_a_part_on_a_centre() {
    let free = planned(&pin("", "features: [{centre_hole: A1, end: front}]"));
    near(free.pace_s(), PI + 2.0 + 8.0 + 4.0);
    assert!(free.centre.is_none());
    let job = read(&pin_text());
    let plan = planned(&job);
    near(plan.pace_s(), 4.0 + 2.0 + 8.0 + 4.0 + 5.0);
    near(plan.time_s.hand_overs, 5.0);
    let told = plan.centre.expect("a centre");
    assert_eq!((told.force_n, told.leaves_at_mm), (100.0, 20.0));
    assert_eq!((plan.stages.len(), plan.hand_overs_mm.len(), plan.stages[0].grip.is_none()), (1, 0, true));
    let operations = &plan.cycle.as_ref().expect("a plan").operations;
    assert!(operations.iter().any(|o| o.work == "centre" && o.side == "both"));
    assert!(plan.cautions.iter().any(|c| c.contains("must leave before part-off")), "{:?}", plan.cautions);

    // A part too long for the tray, work on the rear end, too short a stroke, too short a travel: each is told.
    for (from, to, says) in [
        ("length: 20, diameter: 8", "length: 31, diameter: 8", "too large to fall"),
        ("  straightness", "  back_work: [{name: deburr, radial_force: 1, time_s: 3}]\n  straightness", "rear end"),
        ("stroke: 300", "stroke: 15", "must not re-grip while a centre presses"),
        ("farthest: 400", "farthest: 15", "the counter-spindle with its centre"),
    ] {
        let text = pin_text();
        assert!(text.contains(from), "no {from}");
        let plan = answer(&read(&text.replacen(from, to, 1))).expect("no defect");
        assert_eq!(plan.verdict, Verdict::Infeasible, "{to}");
        let reason = plan.shortfall.expect("no plan").text;
        assert!(reason.contains(says), "{to}: {reason}");
    }
}

/// The pin of `falls` as text, with its hole, held by a centre.
fn pin_text() -> String {
    let text = text("single", "features: [{centre_hole: A1, end: front}]");
    let (from, to) = (text.find("    - {length: 50").expect("a section"), text.find("  straightness").expect("there"));
    let text = format!("{}    - {{length: 20, diameter: 8, tolerance: [-0.1, 0]}}\n{}", &text[..from], &text[to..]);
    text.replacen("diameter: 20, bar_length", "diameter: 10, bar_length", 1)
        .replacen("stiffness_min: 2", "stiffness_min: 1", 1)
        .replacen(HOLD.0, HOLD.1, 1)
        .replacen("hand_over_s: 5\n", &centre("force: 100, stiffness: 20"), 1)
}
