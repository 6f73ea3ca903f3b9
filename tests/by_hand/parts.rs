//! The beam in three parts against the whole beam: the same answers, whatever is where.

use super::*;
use spanhold::mechanics::chatter::least_real_of;
use spanhold::mechanics::receptance::Receptance;
use spanhold::process::span::{Front, Inside, Rear};
use spanhold::units::rad_per_s;

#[track_caller]
fn same(value: f64, whole: f64, scale: f64) {
    assert!((value - whole).abs() <= 1e-6 * whole.abs().max(scale), "{value}, whole {whole}");
}

/// Long enough for the span to be soft, with sleeves inside the counter-spindle.
fn long(tools: &str) -> Job {
    long_on(tools, "stiffness: 10000")
}

fn long_on(tools: &str, supports: &str) -> Job {
    let longer = text(tools, "").replacen("length: 60,", "length: 400,", 1).replace("stiffness: 10000", supports);
    read(&longer.replacen("bore: 24\n", "bore: 24\n    sleeve: {pitch: 30, stiffness: 3}\n", 1))
}

#[track_caller]
pub(super) fn agree(rig: &Rig<'_>, turned_mm: f64, counter: Counter, headstock_mm: f64) {
    let state = State { turned_mm, counter, guide: Guide::Bush { headstock_mm } };
    let whole = rig.answers(&state).expect("held");
    let (rear, other) = (Rear::new(rig, headstock_mm).expect("held"), Rear::new(rig, 300.0).expect("held"));
    let front = Front::with(rig, turned_mm, counter, Inside::new(rig, counter));
    // Several rears at once, each with its own answer.
    let [at_rest, _] = front.at_rest(&[&rear, &other])[..] else { panic!("two") };
    let at_rest = at_rest.expect("held");
    same(at_rest.stiffness_n_per_um, whole.stiffness_n_per_um, 0.0);
    same(at_rest.tool_mm_per_n, whole.tool_mm_per_n, 0.0);
    same(at_rest.tool_follows, whole.tool_follows, 0.0);
    same(at_rest.sag_mm, whole.sag_mm, 0.0);
    same(at_rest.bore_sag_mm, whole.bore_sag_mm, 1e-3 * whole.sag_mm);
    assert_eq!(Front::new(rig, turned_mm, counter).at_rest(&[&rear])[0], Some(at_rest));

    let critical = rad_per_s(whole.critical_rpm);
    assert_eq!(front.swings_above(0.999 * critical, &[&rear, &rear]), [true, true]);
    assert_eq!(front.swings_above(1.001 * critical, &[&rear]), [false]);
    assert_eq!(front.swings_above(50.0 * critical, &[&rear]), [false]);
    // From any bracket no lower than a share below, and never above.
    for bracket in [[0.5, 1.5], [0.99, 1.01], [0.0, 30.0], [0.999, 4.0]] {
        let found = front.lowest_rad_per_s(&rear, bracket.map(|b| b * critical), 1e-3);
        let share = found / critical;
        assert!((0.998_99..=1.000_01).contains(&share), "{share} from {bracket:?}");
    }
    if let Counter::Holds { nose_mm } = counter {
        let open = Front::new(rig, turned_mm, Counter::Open { nose_mm });
        let dropped = rig.release_mm(&state).expect("held");
        same(open.sag_at_mm(&rear, nose_mm).expect("held"), dropped, 1e-3 * whole.sag_mm);
        let both = open.sags_at_mm(&[&other, &rear], nose_mm);
        assert_eq!(both[1], open.sag_at_mm(&rear, nose_mm));
        assert_ne!(both[0], both[1]);
        // An open collet holds nothing, so nothing hangs from it.
        assert_eq!(open.at_rest(&[&rear])[0].expect("held").bore_sag_mm, 0.0);
        // 41 points of the span, shoulders and tool that fall between them.
        assert!(front.nodes() >= 42 && front.nodes() <= 45 && open.nodes() <= 5, "{} {}", front.nodes(), open.nodes());
    }
}

#[test]
fn parts_answer_as_the_whole() {
    for tools in ["single", "opposed"] {
        let job = long(tools);
        let rig = rig(&job);
        agree(&rig, 300.0, Counter::Away, 100.0);
        agree(&rig, 300.0, Counter::Holds { nose_mm: 40.0 }, 100.0);
        agree(&rig, 450.0, Counter::Holds { nose_mm: 120.0 }, 200.0);
        agree(&rig, 460.0, Counter::Holds { nose_mm: 400.0 }, 60.0);
        agree(&rig, 40.0, Counter::Away, 250.0);
    }
}

/// What is softest, sags most and swings between the grip and the bush; the tool has a stiffness of its own.
#[test]
fn where_the_bar_is_weakest() {
    let one = long("single");
    let held = State {
        turned_mm: 450.0,
        counter: Counter::Holds { nose_mm: 100.0 },
        guide: Guide::Bush { headstock_mm: 100.0 },
    };
    let whole = rig(&one).answers(&held).expect("held");
    near(whole.unsupported_mm, 352.0);
    // A span of one diameter but for the last millimetres: softest and lowest near its middle at 276 mm.
    for at in [whole.span_at_mm, whole.sag_at_mm, whole.critical_at_mm] {
        assert!((at - 276.0).abs() < 15.0, "{at}");
    }
    // Between a beam clamped at both ends and one that is pinned: F L³/(192 EI) and F L³/(48 EI); w L⁴/(384 EI) and five times that.
    let (ei, w) = (200_000.0 * PI * 18f64.powi(4) / 64.0, 8e-6 * 9.81 * PI * 81.0);
    let clamped = 352f64.powi(3) / (192.0 * ei);
    assert!(whole.span_n_per_um < 1e-3 / clamped && whole.span_n_per_um > 0.25e-3 / clamped);
    let sag = w * 352f64.powi(4) / (384.0 * ei);
    assert!(whole.sag_mm > sag && whole.sag_mm < 5.0 * sag, "{} {sag}", whole.sag_mm);
    // Inside the counter-spindle the front sags, less than the span and in front of the nose.
    assert!(whole.bore_sag_mm > 0.0 && whole.bore_sag_mm < whole.sag_mm && whole.bore_sag_at_mm < 100.0);
    near(1e-3 / rig(&one).deflection_at_mm(&held, 276.0, 1.0).expect("held"), {
        let at = rig(&one).beam(&held, &[276.0]);
        let factor = at.factor().expect("held");
        let node = at.node(276.0);
        1e-3 / at.under_force(&factor, node, 1.0)[node][0].abs()
    });
    let pair = long("opposed");
    let at_tool = rig(&pair).answers(&held).expect("held");
    near(at_tool.stiffness_n_per_um, 1e-3 / at_tool.tool_mm_per_n);
    near(whole.stiffness_n_per_um, at_tool.stiffness_n_per_um);
    assert!(whole.stiffness_n_per_um > whole.span_n_per_um);
    near(at_tool.tool_mm_per_n, rig(&pair).deflection_at_mm(&held, 450.0, 1.0).expect("held"));
    near(whole.tool_mm_per_n, at_tool.tool_mm_per_n);
    // Free, the front face is lowest and nothing lies in a bore. Its softness does not count: no span is gripped.
    let away = State { counter: Counter::Away, ..held };
    let free = rig(&one).answers(&away).expect("held");
    assert_eq!((free.span_n_per_um, free.sag_at_mm), (f64::INFINITY, 0.0));
    assert_eq!((free.bore_sag_mm, free.bore_sag_at_mm), (0.0, 0.0));
    near(rig(&one).droop_mm(&away).expect("held"), free.sag_mm);
}

/// The flexibility at the tool that chatter asks for, on a mesh of 160 pieces besides the usual nodes: from 12 modes, 30 or 60, the fewest
/// that leave out no more than 2 %, and never more than the bounds that a few Lanczos steps gave on the way.
#[test]
fn modes_enough_for_the_flexibility_at_the_tool() {
    // Supports of 10 000 N/µm take many modes, such as machines have take few.
    let (stiff, soft) = (long("single"), long_on("single", "stiffness: 100"));
    let mut counts = Vec::new();
    for (job, turned, nose) in
        [(&stiff, 300.0, None), (&soft, 300.0, None), (&soft, 450.0, Some(120.0)), (&soft, 40.0, None)]
    {
        let rig = rig(job);
        let held = state(turned, nose);
        let rear = rig.rear_end_mm(&held);
        let fine: Vec<f64> = (0..=160).map(|i| rear * f64::from(i) / 160.0).collect();
        let beam = rig.beam(&held, &fine);
        let of = |count: usize| {
            let mut seen = Receptance::new(&beam, beam.node(turned)).expect("held");
            let shares = seen.lowest(count);
            least_real_of(&shares, seen.static_mm_per_n, job.limits.damping_ratio)
        };
        let count = [12, 30].into_iter().find(|c| of(*c).left_out <= 0.02).unwrap_or(60);
        let found = rig.least_real_above(&held, held.turned_mm, 0.0).expect("held").expect("above nothing");
        let about = [20, 32].map(|steps| rig.least_real_about(&held, held.turned_mm, steps).expect("held"));
        // Each is a bound, and the least one counts.
        same(found, about.into_iter().fold(of(count).mm_per_n, f64::min), 0.0);
        assert!(found >= of(60).mm_per_n * (1.0 - 1e-6));
        counts.push(count);
    }
    assert!(counts.contains(&12) && counts.iter().any(|c| *c > 12), "{counts:?}");
}
