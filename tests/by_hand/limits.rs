//! Which of several works or moments counts, and how it is told.

use super::*;
use spanhold::process::answers::Posed;
use spanhold::process::checks::speed_law::{Growth, SpeedLaw};

/// Three works on the rear end: 20 N for 0.1 mm, 60 N for 0.2 mm, 30 N for 0.1 mm. By force over tolerance the last two are equal and the
/// worst; the first of them is told, whatever stands before it.
#[test]
fn the_hardest_work_on_the_rear_end_counts() {
    let work = |force: f64, tolerance: f64| {
        format!("{{name: w, radial_force: {force}, axial_force: 0, torque: 1, time_s: 5, tolerance: {tolerance}}}")
    };
    let (light, hard, same) = (work(20.0, 0.1), work(60.0, 0.2), work(30.0, 0.1));
    for order in [[&light, &hard, &same], [&hard, &light, &same], [&hard, &same, &light]] {
        let job = job("single", &format!("back_work: [{}, {}, {}]", order[0], order[1], order[2]));
        let rig = rig(&job);
        let found = checks::back::find(&rig, 100.0).expect("held").expect("there is work");
        near(found.limit, 0.25 * 0.2);
        let parted = State { turned_mm: 129.0, counter: Counter::Holds { nose_mm: 100.0 }, guide: Guide::Parted };
        near(found.demand, 2.0 * rig.deflection_at_mm(&parted, 129.0, 60.0).expect("held"));
        // None of them pushes, so the grip's friction is not asked about.
        assert!(checks::push::back(&rig, 100.0, 18.0).is_none());
    }
}

/// Without a bush: twice the force of the last travel times the change of the flexibility, 2 F (5 - 2)/10 000.
#[test]
fn the_change_along_a_stage_without_a_bush() {
    let job = changed(&[("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 30, collet_gap: 5}\n")]);
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    // No pull-backs: each section is whole, its change is not the segment's own.
    let ends: Vec<f64> = segments.iter().map(|s| s.to_mm).collect();
    assert_eq!(ends, [50.0, 57.0, 117.0, 129.0, 132.0]);
    assert_eq!((segments[0].travels.len(), segments[0].change_mm), (3, 0.0));

    let force = forces(&rig, &[0.25], 0.1).net_radial_n;
    let cut = checks::cut::along(&rig, &segments[2], &[3e-4, 2e-4, 5e-4]).expect("it turns");
    near(cut.demand, 2.0 * forces(&rig, &[1.0], 0.1).net_radial_n * 3e-4);
    near(cut.limit, 0.25 * 0.2);
    assert_eq!(cut.at_mm, 57.0);
    near(checks::cut::along(&rig, &segments[0], &[5e-4, 2e-4]).expect("it turns").demand, 2.0 * force * 3e-4);
    near(checks::cut::along(&rig, &segments[0], &[]).expect("it turns").demand, 0.0);
    assert!(checks::cut::along(&rig, &segments[1], &[1e-4, 2e-4]).is_none(), "a groove");
    assert!(checks::cut::along(&rig, &segments[3], &[1e-4, 2e-4]).is_none(), "a thread");

    let held = State { turned_mm: 57.0, counter: Counter::Away, guide: rig.guide(57.0, 0.0, 117.0) };
    assert_eq!(held.guide, Guide::Collet { stage_end_mm: 117.0 });
    let view = View { rig: &rig, state: &held, answers: &answers(100.0), segment: &segments[2], rpm: 100.0 };
    assert!(checks::all(&view).all(|f| f.check != "cut"), "not the change of a pull-back");
}

/// The force of 0.25 mm at 0.1 mm/rev, nose 0.4 mm, by an adaptive integral over the edge: 101.37 N, and 42.06 N across.
#[test]
fn the_force_of_a_last_travel() {
    let job = job("single", "");
    let force = forces(&rig(&job), &[0.25], 0.1);
    assert!((force.main_n - 101.368).abs() < 0.002 && (force.net_radial_n - 42.060).abs() < 0.002, "{force:?}");
}

/// The front end: of two drills the larger loads the headstock's collet more, at the bar's 20 mm, and a cross hole does not.
#[test]
fn what_pushes_on_the_front() {
    let features = "features:
    - {axial_hole: 4, depth: 10, end: front}
    - {axial_hole: 6, depth: 10, end: front}
    - {cross_hole: 8, at: 80}
    - {axial_hole: 6.2, depth: 10, end: back}";
    let job = job("single", features);
    let rig = rig(&job);
    // The class of the test steel drills with 0.012 of the diameter: 6 mm at 0.072 mm a turn, kc at 0.43 · 0.072 mm. Torque 1.2 kc 0.072 · 6²/8;
    // thrust of this over 1.085, times 2 · 1.355/6 and what the chisel edge is pressed in with, 0.28 · 0.030 · 6^0.2/0.072^0.8.
    let kc = 2000.0 * (0.43f64 * 0.072).powf(-0.25);
    let torque_nmm = 1.2 * kc * 0.072 * 36.0 / 8.0;
    let thrust = torque_nmm / 1.085 * (2.71 / 6.0 + 0.0084 * 6f64.powf(0.2) / 0.072f64.powf(0.8));
    let (task, carried) = checks::push::heaviest_in_front(&rig).expect("they push");
    near(carried, thrust.hypot(torque_nmm / 10.0));
    assert_eq!(task, "hole Ø6, 10 deep, front");
    let found = checks::push::front(&rig).expect("they push");
    near(found.demand, 1.5 * carried);
    near(found.limit, job.machine.headstock.friction * 20_000.0);
    assert_eq!(found.at_mm, 0.0);
    let across = self::job("single", "features: [{cross_hole: 8, at: 80}]");
    assert!(checks::push::front(&super::rig(&across)).is_none());
}

#[test]
fn findings_in_their_order_and_the_worst_of_them() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let (held, answers) = (state(20.0, Some(20.0)), answers(1000.0));
    let view = View { rig: &rig, state: &held, answers: &answers, segment: &segments[0], rpm: 1000.0 };
    let all: Vec<Finding> = checks::all(&view).collect();
    let names: Vec<&str> = all.iter().map(|f| f.check).collect();
    assert_eq!(names, ["stiffness", "span_stiffness", "whirl", "whip", "sag", "bore", "cut", "chatter"]);
    assert_eq!(checks::completed(checks::at_rest(&view).collect(), &view), all);
    let of_speed: Vec<&str> = checks::by_speed(&view).map(|f| f.check).collect();
    assert_eq!(of_speed, ["whirl", "whip", "bore"]);
    // 0.5/0.7 of whirl, 0.5/0.75 of whip, a quarter of stiffness, half of that of the span.
    assert_eq!(checks::worst(all[..4].iter().copied()).map(|f| f.check), Some("whirl"));
    assert_eq!(checks::worst(std::iter::empty()), None);
    // What is told of a moment at rest: the sag when the collet opens, against 0.5 mm or what the file says.
    let dropped = checks::release::find(&rig, &held).expect("held");
    near(dropped.demand, rig.release_mm(&held).expect("held"));
    assert_eq!((dropped.check, dropped.limit, dropped.at_mm), ("release", job.limits.release_mm, 20.0));
    let free = checks::release::find(&rig, &state(20.0, None)).expect("held");
    assert_eq!((free.demand, free.at_mm), (0.0, 0.0));
}

#[test]
fn findings_in_words() {
    let told = |check, unit, demand, limit| Finding::at_most(check, unit, demand, limit, 0.0).told();
    for (demand, limit, words) in [
        (150.0, 100.0, "150 N, at most 100 N"),
        (99.0, 99.5, "99.0 N, at most 99.5 N"),
        (12.0, 10.0, "12.0 N, at most 10.0 N"),
        (9.0, 9.5, "9.00 N, at most 9.50 N"),
        (2.0, 1.0, "2.00 N, at most 1.00 N"),
        (0.7, 0.5, "0.700 N, at most 0.500 N"),
        // Told by the size of the limit, and of the demand where the limit is nothing.
        (1000.0, 0.5, "1000.000 N, at most 0.500 N"),
        (120.0, 0.0, "120 N, at most 0 N"),
        // As many decimals as tell them apart; where none do, three.
        (100.04, 100.0, "100.04 N, at most 100.00 N"),
        (1.0, 1.0, "1.000 N, at most 1.000 N"),
    ] {
        assert_eq!(told("x", "N", demand, limit), format!("x is {words} is allowed"));
    }
    for (check, unit, words) in [
        ("whirl", "", "the speed is 2.00 times the critical speed, at most 1.50 times is allowed"),
        ("whip", "mm", "the bow of the rotating bar (whip) is 2.00 mm, at most 1.50 mm is allowed"),
        ("sag", "mm", "the bar sags by 2.00 mm under its own weight, at most 1.50 mm is allowed"),
        ("bore", "mm", "the bow of the part in the counter-spindle bore is 2.00 mm, at most 1.50 mm is allowed"),
        (
            "cut",
            "mm",
            "the bending of the bar changes the diameter along the cut by 2.00 mm, at most 1.50 mm is allowed",
        ),
        ("chatter", "mm", "the depth of cut is 2.00 mm, chatter begins at 1.50 mm"),
        ("drill", "mm", "the tool bends the bar by 2.00 mm, at most 1.50 mm is allowed"),
        ("release", "mm", "the bar sags by 2.00 mm when the counter-spindle collet opens, at most 1.50 mm is allowed"),
        ("torque", "N·m", "the torque is 2.00 N·m, the collet holds at most 1.50 N·m"),
        ("push", "N", "the load is 2.00 N, the collet holds at most 1.50 N"),
        ("back", "mm", "the bending of the rear end changes the diameter by 2.00 mm, at most 1.50 mm is allowed"),
    ] {
        assert_eq!(told(check, unit, 2.0, 1.5), words);
    }
    assert_eq!(
        Finding::at_least("stiffness", "N/µm", 0.95, 1.0, 0.0).told(),
        "the stiffness of the bar at the tool is 0.95 N/µm, at least 1.00 N/µm is needed"
    );
    let no_room = "the part has no room in the counter-spindle bore when the bore clearance is kept";
    assert_eq!((told("bore", "mm", 0.1, 0.0), told("bore", "mm", 0.1, -0.5)), (no_room.into(), no_room.into()));
    assert!(told("sag", "mm", 0.1, 0.0).contains("by 0.100 mm under its own weight, at most 0.000 mm"));
}

/// A limit of 0.875 mm of depth at a flexibility is one of 0.875/2 at twice of it: what `exact_above` leaves out is exactly what uses no more
/// than the share.
#[test]
fn chatter_is_told_from_a_share_on() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let (held, turned) = (state(40.0, None), &segments[0]);
    let exact = checks::chatter::exact(&rig, &held, turned).expect("it turns");
    assert!(exact.utilisation > 0.0 && exact.utilisation < checks::MOST_SHARE, "{exact:?}");
    let above = |share: f64| checks::chatter::exact_above(&rig, &held, turned, share * exact.utilisation);
    assert_eq!(above(0.99), Some(exact));
    assert_eq!(above(1.01), None);
    let about = checks::chatter::about(&rig, &held, turned, 32).expect("it turns");
    let bound = checks::chatter::bound(&View {
        rig: &rig,
        state: &held,
        answers: &rig.answers(&held).expect("held"),
        segment: turned,
        rpm: 0.0,
    });
    // Never easier than the true one, and not harder than the static bound.
    assert!(about.limit <= exact.limit * (1.0 + 1e-9) && about.limit >= bound.expect("it turns").limit * (1.0 - 1e-9));
    // With the bound beyond its limit the check tells the exact one; with it within, the bound.
    let view = |answers| View { rig: &rig, state: &held, answers, segment: turned, rpm: 0.0 };
    let soft = Answers { tool_mm_per_n: 1.0, ..answers(100.0) };
    assert_eq!(found(&view(&soft), "chatter"), exact);
    let stiff = Answers { tool_mm_per_n: 1e-9, ..answers(100.0) };
    assert_eq!(Some(found(&view(&stiff), "chatter")), checks::chatter::bound(&view(&stiff)));
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    assert!(checks::chatter::about(&rig, &held, groove, 32).is_none());
    // Depth times cutting stiffness decides, by an adaptive integral 352 N/mm at a last pass of 0.25 and 160 at 0.875, so the last pass
    // counts; with one of 0.05, 132 at it and 142 at 0.975, the one before.
    near(exact.demand, 0.25);
    let fine = changed(&[("ap_finish: 0.25", "ap_finish: 0.05")]);
    let fine = super::rig(&fine);
    let turned = &fine.segments().expect("can be cut")[0];
    near(checks::chatter::exact(&fine, &held, turned).expect("it turns").demand, 0.975);
    // 1.4 and 0.03: 96 against 87 N/mm.
    let deep = changed(&[
        ("ap_finish: 0.25", "ap_finish: 0.03"),
        ("diameter: 18, tol", "diameter: 17.14, finish_pass: true, tol"),
    ]);
    let deep = super::rig(&deep);
    let segments = deep.segments().expect("can be cut");
    let turned = segments.iter().find(|s| s.section == 2).expect("there");
    assert_eq!(turned.travels.len(), 2);
    near(checks::chatter::exact(&deep, &held, turned).expect("it turns").demand, 1.4);
}

/// At the critical speed even nothing grows without bounds: it is not said to be nothing.
#[test]
fn nothing_holds_at_the_critical_speed() {
    let straight = SpeedLaw { growth: Growth::Bow { at_rest_mm: 0.0 }, limit: 1.0, at_mm: 0.0 };
    assert!(straight.demand(100.0, 100.0).is_infinite() && straight.demand(99.0, 100.0) == 0.0);
}

/// The slowest of some states, and the speed it allows.
#[test]
fn the_slowest_state_sets_the_speed() {
    let job = changed(&[("length: 60", "length: 600")]);
    let rig = rig(&job);
    let of = |turned: f64| -> (State, Posed) {
        let held = state(turned, None);
        (held, rig.posed(&held).expect("held"))
    };
    let allowed = |turned: f64| rig.allowed_rpm(&of(turned).0, &of(turned).1.with_critical());
    // The longer the free end, the slower.
    let (short, long) = (allowed(300.0), allowed(600.0));
    assert!(long.rpm < short.rpm && long.rpm > 0.0, "{short:?} {long:?}");
    let wanted = short.rpm * 1.5;
    assert_eq!(rig.slowest(&[of(600.0), of(300.0)], wanted), Some(long));
    assert_eq!(rig.slowest(&[of(300.0), of(600.0)], wanted), Some(long));
    assert_eq!(rig.slowest(&[of(300.0)], wanted), Some(short));
    // Not slowed where the speed is below what is allowed, nor where it is that very speed.
    assert_eq!(rig.slowest(&[of(300.0)], short.rpm * 0.99), None);
    assert_eq!(rig.slowest(&[of(300.0)], short.rpm), None);
    assert_eq!(rig.slowest(&[], wanted), None);
    // A hair above what is allowed is slowed: by the share the slowing aims below the limit, by that of the count.
    assert_eq!(short.check, "whirl");
    assert_eq!(rig.slowest(&[of(300.0)], short.rpm * (1.0 + 5e-5)), Some(short));
    assert_eq!(rig.slowest(&[of(300.0)], short.rpm * (1.0 + 1e-5)), Some(short));
    // 3000 rev/min are 314.16 rad/s: the critical speed lies above what is below it.
    let posed = of(300.0).1;
    let critical = posed.with_critical().critical_rpm;
    assert!(posed.swings_above(critical * 0.999) && !posed.swings_above(critical * 1.001));
    assert!(!posed.swings_above(f64::INFINITY));
    assert!(posed.at_rest.critical_rpm.is_nan() && posed.at_rest.critical_at_mm.is_nan());
    // A free end swings most at its very front.
    assert_eq!(posed.with_critical().critical_at_mm, 0.0);
    let lowest = rig.omegas(&of(300.0).0, 2).expect("held");
    assert!(lowest.len() == 2 && lowest[1] > lowest[0]);
    near((lowest[0] * 30.0 / PI / critical * 1e4).round(), 1e4);
}

/// What does not bow needs no critical speed while there is room, and none is enough where there is none; a share of twice the limit is
/// twice the limit.
#[test]
fn critical_speed_where_nothing_bows() {
    let held = state(50.0, Some(30.0));
    let needed = |clearance: &str, straightness: &str, bore_sag_mm: f64, shares: [f64; 3]| {
        let room = format!("bore_clearance: {clearance},");
        let job =
            changed(&[("bore_clearance: 1,", &room), ("straightness: 0.5", &format!("straightness: {straightness}"))]);
        rig(&job).critical_needed_rpm(&held, &Answers { bore_sag_mm, ..answers(1_300.0) }, 700.0, shares)
    };
    let most = checks::MOST_SHARE;
    near(needed("1", "0", 0.0, [most, 1.0, 1.0]), 0.0);
    // (24 - 16)/2 - 4 = 0 mm of room, and less.
    assert!(needed("4", "0", 0.0, [most, 1.0, 1.0]).is_infinite());
    assert!(needed("4.5", "0", 0.0, [most, 1.0, 1.0]).is_infinite());
    // 0.5 · 1.3² = 0.845 mm against twice of 1 mm.
    near(needed("1", "0.5", 0.0, [most, 2.0, 1.0]), 700.0 / (1.0 - 0.845f64 / 2.0).sqrt());
    near(needed("1", "0", 2.5, [most, 1.0, 2.0]), 700.0 / (1.0 - 2.5f64 / 6.0).sqrt());
}
