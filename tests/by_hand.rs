//! The machine at one moment against values worked out by hand: checks, forces, depths, speeds, times, the quote. Round numbers, so
//! that each line of a test can be followed on paper; the formulas are those of docs/model.md. They test that what is
//! written there is what is computed, not that it is true: for that see `tests/published` and `.ci/outside`.

use spanhold::job::Job;
use spanhold::process::checks::{self, Finding, View};
use spanhold::process::forces::TravelForces;
use spanhold::process::{Answers, Counter, Guide, Rig, Segment, State, Work, quote};
use std::f64::consts::PI;

#[path = "by_hand/axial.rs"]
mod axial;
#[path = "by_hand/bar_feed.rs"]
mod bar_feed;
#[path = "by_hand/bush.rs"]
mod bush;
#[path = "by_hand/centre.rs"]
mod centre;
#[path = "by_hand/driven.rs"]
mod driven;
#[path = "by_hand/edges.rs"]
mod edges;
#[path = "by_hand/falls.rs"]
mod falls;
#[path = "by_hand/front.rs"]
mod front;
#[path = "by_hand/hollow.rs"]
mod hollow;
#[path = "by_hand/limits.rs"]
mod limits;
#[path = "by_hand/parts.rs"]
mod parts;
#[path = "by_hand/pieces.rs"]
mod pieces;
#[path = "by_hand/run_out.rs"]
mod run_out;
#[path = "by_hand/supports.rs"]
mod supports;
#[path = "by_hand/tandem.rs"]
mod tandem;
#[path = "by_hand/tool_list.rs"]
mod tool_list;
#[path = "by_hand/twist.rs"]
mod twist;
#[path = "by_hand/works.rs"]
mod works;

/// Forces of a travel with these depths of cut by the tools of `cutting`, the leading one first.
fn forces(rig: &Rig<'_>, depths_mm: &[f64], feed_mm: f64) -> TravelForces {
    let usual = rig.usual_cutter();
    let beside = spanhold::process::cutter::Cutter { edge: rig.finishing_edge(), ..usual };
    rig.travel_forces(depths_mm, &[usual, beside], feed_mm)
}

/// A shaft from 20 mm bar: 16 mm, a groove of 12 mm, 18 mm, a thread. The steel's `kc` is 2000 N/mm² at a chip of 1 mm, and twice that
/// at one of 1/16 mm.
fn text(tools: &str, more: &str) -> String {
    format!(
        "shaft:
  material: {{name: test steel, kc11: 2000, mc: 0.25, e_gpa: 200, density: 8000, poisson: 0.3}}
  sections:
    - {{length: 50, diameter: 16, tolerance: [-0.1, 0]}}
    - {{length: 7, diameter: 12, kind: groove}}
    - {{length: 60, diameter: 18, tolerance: [-0.2, 0]}}
    - {{length: 12, thread: M8}}
  straightness: 0.5
  {more}
stock: {{diameter: 20, bar_length: 3000}}
machine:
  bush: {{max_bar: 32, land: 30, gap: 2, stiffness: 10000, engagement_min: 10}}
  headstock: {{nearest: 60, stroke: 300, hold: 40, stiffness: 10000, max_rpm: 5000, regrip_s: 6, clamp_force: 20000}}
  counter_spindle:
    nearest: 10
    farthest: 400
    bore: 24
    bore_depth: 500
    stiffness: 10000
    max_rpm: 3000
    hand_over_s: 5
    friction: 0.2
    collets:
      - {{name: A, range: [15, 18.5], hold: 20, passes: 19, clamp_force: 10000}}
  segment_overhead_s: 2
  cross_tool_reach: 10
  part_off: {{width: 3, time_s: 8}}
  bar_end: 50
  facing: 1
cutting: {{tools: {tools}, vc: 120, feed: 0.1, nose_radius: 0.4, approach_angle: 90, ap_max: 1.5, ap_finish: 0.25}}
limits: {{whirl_ratio: 0.7, whip: 1, sag: 0.1, bore_clearance: 1, stiffness_min: 2, torque_margin: 1.5, drill: 0.02, tolerance_share: 0.25}}
rates: {{machine_per_hour: 72, material_per_kg: 3, currency: EUR}}
"
    )
}

fn job(tools: &str, more: &str) -> Job {
    read(&text(tools, more))
}

/// The job with single tools and some of its text changed.
fn changed(changes: &[(&str, &str)]) -> Job {
    let mut text = text("single", "");
    for (from, to) in changes {
        assert!(text.contains(from), "no {from}");
        text = text.replacen(from, to, 1);
    }
    read(&text)
}

fn read(text: &str) -> Job {
    spanhold::input::read_job_text("hand.yaml", text, ".".as_ref())
        .unwrap_or_else(|told| panic!("{}\n{text}", spanhold::input::render(&told)))
}

fn rig(job: &Job) -> Rig<'_> {
    Rig::new(job, job.machine.collet("A"))
}

#[track_caller]
fn near(value: f64, by_hand: f64) {
    assert!((value - by_hand).abs() <= 1e-9 * by_hand.abs().max(1e-3), "{value}, by hand {by_hand}");
}

fn state(turned_mm: f64, nose: Option<f64>) -> State {
    State { turned_mm, counter: Counter::of(nose), guide: Guide::Bush { headstock_mm: 100.0 } }
}

/// Answers of a beam that a hand can work with.
fn answers(unsupported_mm: f64) -> Answers {
    Answers {
        unsupported_mm,
        stiffness_n_per_um: 8.0,
        span_n_per_um: 4.0,
        span_at_mm: 33.0,
        sag_mm: 0.04,
        sag_at_mm: 44.0,
        bore_sag_mm: 0.6,
        bore_sag_at_mm: 1.0,
        critical_rpm: 2000.0,
        critical_at_mm: 22.0,
        tool_mm_per_n: 1e-4,
        finisher_mm_per_n: 1e-4,
        tool_follows: 0.0,
    }
}

fn found(view: &View<'_>, check: &str) -> Finding {
    checks::all(view).find(|f| f.check == check).unwrap_or_else(|| panic!("no {check}"))
}

#[test]
fn shares_of_limits() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let (held, answers) = (state(50.0, Some(30.0)), answers(1000.0));
    let view = View { rig: &rig, state: &held, answers: &answers, segment: &segments[0], rpm: 1000.0 };

    let whirl = found(&view, "whirl");
    near(whirl.demand, 0.5);
    near(whirl.utilisation, 0.5 / 0.7);
    assert_eq!(whirl.at_mm, 22.0);

    // 0.5 mm over a metre, held at both ends; at half the critical speed it grows by 1/(1 - 1/4).
    let whip = found(&view, "whip");
    near(whip.demand, 0.5 / 0.75);
    near(whip.utilisation, 0.5 / 0.75);
    near(whip.at_mm, 530.0);
    // Free, four times that, from the front end.
    let free = state(50.0, None);
    let whip = found(&View { state: &free, ..view }, "whip");
    near(whip.demand, 2.0 / 0.75);
    near(whip.at_mm, 0.0);
    // At the critical speed and above nothing holds.
    let whip = found(&View { rpm: 2000.0, ..view }, "whip");
    assert!(!whip.passes() && whip.demand.is_finite());

    near(found(&view, "sag").utilisation, 0.4);
    let stiffness = found(&view, "stiffness");
    near(stiffness.utilisation, 0.25);
    assert_eq!((stiffness.demand, stiffness.limit, stiffness.at_mm), (8.0, 2.0, 50.0));

    // (24 - 16)/2 - 1 = 3 mm of room around the front; 0.6 mm grown by 4/3.
    let bore = found(&view, "bore");
    near(bore.limit, 3.0);
    near(bore.demand, 0.8);
    assert!(checks::all(&View { state: &free, ..view }).all(|f| f.check != "bore"), "nothing is in the bore");

    assert!(checks::bore::CHECK.depends_on_speed() && !checks::sag::CHECK.depends_on_speed());
    let (at_rest, of_speed) = (checks::at_rest(&view).count(), checks::by_speed(&view).count());
    assert_eq!(of_speed, 3);
    assert_eq!(at_rest + of_speed, checks::all(&view).count());
}

/// `cut` compares what a pull-back changes with a quarter of 0.1 mm; `chatter` the tool nearest its limit with the
/// static bound `G/(4 · 0.02 · 1.02)`.
#[test]
fn shares_of_the_cut() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let (held, answers) = (state(20.0, Some(20.0)), answers(100.0));
    let turned = Segment { change_mm: 0.02, ..segments[0].clone() };
    let view = View { rig: &rig, state: &held, answers: &answers, segment: &turned, rpm: 1000.0 };
    let cut = found(&view, "cut");
    near(cut.limit, 0.025);
    near(cut.utilisation, 0.8);

    // The share of the radial part in the in-plane force is squared. Of both travels the one with the larger stiffness counts.
    let stiffness = |ap: f64| {
        let c = forces(&rig, &[ap], 0.1).cuts[0];
        0.55 * c.main_n / 0.1 * c.passive_n.powi(2) / (c.passive_n.powi(2) + c.feed_n.powi(2))
    };
    assert!(stiffness(0.25) > stiffness(0.875));
    let chatter = checks::chatter::bound(&view).expect("it turns");
    near(chatter.demand, 0.25);
    near(chatter.limit, 0.25 / (2.0 * stiffness(0.25) * 1e-4 / (4.0 * 0.02 * 1.02)));
    let others: Vec<&Segment> = segments.iter().filter(|s| !matches!(s.work, Work::Turn | Work::Thread)).collect();
    assert!(!others.is_empty(), "all is turned");
    for other in others {
        let names: Vec<&str> = checks::all(&View { segment: other, ..view }).map(|f| f.check).collect();
        assert!(!names.contains(&"cut") && !names.contains(&"chatter"), "{names:?}");
        assert!(checks::chatter::exact(&rig, &held, other).is_none());
    }
    // Worked out, the modes never make the limit lower than the bound from the same flexibility.
    let real = rig.answers(&held).expect("held");
    let bound = checks::chatter::bound(&View { answers: &real, ..view }).expect("it turns");
    let exact = checks::chatter::exact(&rig, &held, &turned).expect("it turns");
    assert!(exact.limit >= bound.limit * (1.0 - 1e-9), "{exact:?} {bound:?}");
    // Next to a bush the change along the stage is not asked for.
    assert!(checks::cut::along(&rig, &turned, &[1e-4, 2e-4]).is_none());
}

#[test]
fn what_is_at_the_limit_passes_and_what_is_beyond_does_not() {
    for (demand, limit, share, passes) in [
        (1.0, 2.0, 0.5, true),
        (2.0, 2.0, 1.0, true),
        (2.000_001, 2.0, 1.000_000_5, true),
        (2.001, 2.0, 1.0005, false),
        (0.0, 2.0, 0.0, true),
        (-1.0, 2.0, 0.0, true),
        (1.0, 0.0, checks::MOST_SHARE, false),
        (1.0, -1.0, checks::MOST_SHARE, false),
        (0.0, 0.0, checks::MOST_SHARE, false),
        // Up to a thousand times the limit the share is told as it is.
        (1500.0, 2.0, 750.0, false),
        (2001.0, 2.0, checks::MOST_SHARE, false),
        (f64::INFINITY, 2.0, checks::MOST_SHARE, false),
        (f64::NAN, 2.0, checks::MOST_SHARE, false),
    ] {
        let found = Finding::at_most("x", "mm", demand, limit, 7.0);
        near(found.utilisation, share);
        assert_eq!(found.passes(), passes, "{demand} of {limit}");
        near(found.demand, if demand.is_finite() { demand } else { checks::MOST_SHARE * limit });
    }
    for (value, limit, share) in [
        (4.0, 2.0, 0.5),
        (2.0, 2.0, 1.0),
        (1.0, 2.0, 2.0),
        (0.004, 2.0, 500.0),
        (0.001, 2.0, checks::MOST_SHARE),
        (0.0, 2.0, checks::MOST_SHARE),
        (0.0, 0.0, checks::MOST_SHARE),
    ] {
        near(Finding::at_least("x", "N/µm", value, limit, 7.0).utilisation, share);
    }
    let told = Finding::at_most("x", "mm", 0.50004, 0.5, 0.0).told();
    assert_eq!(told, "x is 0.50004 mm, at most 0.50000 mm is allowed");
}

/// Part-off: 0.4 × 0.1 = 0.04 mm of chip, `kc = 2000 × 0.04^-0.25 = 2000 √5`, over 3 mm, at a radius of 10 mm.
#[test]
fn what_the_last_grip_holds() {
    let job = job(
        "single",
        "back_work: [{name: bore, radial_force: 40, axial_force: 300, torque: 8, time_s: 5, tolerance: 0.1}]",
    );
    let rig = rig(&job);
    let part_off = 2000.0 * 5f64.sqrt() * 0.04 * 3.0 * 0.010;
    near(checks::torque::demand_nm(&Rig { back: Vec::new(), ..rig.clone() }, 100.0), part_off);
    // The work on the rear end is heavier.
    near(checks::torque::demand_nm(&rig, 100.0), 8.0);
    let torque = checks::torque::find(&rig, 100.0, 18.0).expect("a collet");
    near(torque.demand, 12.0);
    near(torque.limit, 0.2 * 10_000.0 * 0.009);
    // 300 N along, and 8 N·m at 18 mm around: 888.9 N.
    let push = checks::push::back(&rig, 100.0, 18.0).expect("it pushes");
    near(push.demand, 1.5 * (300f64.powi(2) + (8000.0 / 9.0f64).powi(2)).sqrt());
    near(push.limit, 2000.0);
    assert!(checks::push::front(&rig).is_none(), "nothing pushes on the front");

    // The parted shaft is an overhang on two springs, `hold` apart; the diameters behind the nose: 18 mm, and the thread's core.
    let nose = 116.0;
    let deflection = |at: f64| {
        rig.deflection_at_mm(
            &State { turned_mm: 129.0, counter: Counter::Holds { nose_mm: nose }, guide: Guide::Parted },
            at,
            40.0,
        )
    };
    let back = checks::back::find(&rig, nose).expect("held").expect("there is work");
    near(back.demand, 2.0 * deflection(129.0).expect("held"));
    near(back.limit, 0.25 * 0.1);
    assert_eq!(back.at_mm, 129.0);
    // One millimetre to the shoulder, 12 of the thread behind it: between a rod of 18 mm and one of its core all along.
    let core = 8.0 - 1.226_87 * 1.25;
    let tip = |d: f64| {
        let (a, x, k) = (20.0, 13.0, 5_000_000.0);
        let (ei, ga) = (200_000.0 * PI * f64::powi(d, 4) / 64.0, 200_000.0 / 2.6 * PI * d * d / 4.0 * 7.8 / 8.8);
        let (held, free) = ((a + x) / a, x / a);
        40.0 * (held * held / k + free * free / k + x * x * (a + x) / (3.0 * ei) + (x + x * x / a) / ga)
    };
    assert!(
        back.demand > 2.0 * tip(18.0) && back.demand < 2.0 * tip(core),
        "{} {} {}",
        back.demand,
        tip(18.0),
        tip(core)
    );
    let all: Vec<&str> = checks::of_last_grip(&rig, nose, 18.0).map(|f| f.expect("held").check).collect();
    assert_eq!(all, ["torque", "push", "back"]);
}

/// A hole in the very middle between two stiff holds far from each other, against a beam clamped at both ends: `F L³/(192 EI)` is
/// never reached from below, and `F L³/(48 EI)` never from above.
#[test]
fn a_hole_gives_way_as_a_span_does() {
    let job = job("single", "");
    let rig = rig(&job);
    let held = state(110.0, Some(45.0));
    let drill = checks::drill::find(&rig, &held, 80.0, 100.0).expect("held");
    let span = 112.0 - 45.0;
    let least = 100.0 * f64::powi(span, 3) / (192.0 * 200_000.0 * PI * 18f64.powi(4) / 64.0);
    assert!(drill.demand > least && drill.demand < 8.0 * least, "{} {least}", drill.demand);
    near(drill.limit, 0.02);
    let twice = checks::drill::find(&rig, &held, 80.0, 200.0).expect("held");
    near(twice.demand, 2.0 * drill.demand);
}

/// One tool: 2 mm of radial stock is more than 1.5, so two roughing travels take all but the last 0.25. The bar thins by twice the
/// depth. A pair takes it at once where it is within both.
#[test]
fn depths_of_travels() {
    let one = job("single", "");
    let segments = rig(&one).segments().expect("can be cut");
    let first = &segments[0];
    let depths: Vec<Vec<f64>> = first.travels.iter().map(|t| t.depths_mm.clone()).collect();
    assert_eq!(depths, [vec![0.875], vec![0.875], vec![0.25]]);
    let before: Vec<f64> = first.travels.iter().map(|t| t.before_mm).collect();
    assert_eq!(before, [20.0, 18.25, 16.5]);
    assert_eq!((first.work, first.back), (Work::Turn, false));
    // 1 mm is within ap_max: one travel over the whole section.
    let third: Vec<&Segment> = segments.iter().filter(|s| s.section == 2).collect();
    assert_eq!((third.len(), third[0].travels.len(), third[0].length_mm()), (1, 1, 60.0));
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    near(groove.travels[0].feed_mm, 0.04);
    let last = segments.last().expect("part-off");
    assert_eq!((last.work, last.from_mm, last.to_mm), (Work::PartOff, 129.0, 132.0));
    assert!(segments.windows(2).all(|pair| pair[0].to_mm == pair[1].from_mm));
    // 2 + 30 - 10: what may be pulled back so that 10 mm of the land stay on raw bar.
    near(rig(&one).pull_back_by_land_mm(), 22.0);
    let pieces = segments.iter().filter(|s| s.section == 0).count();
    assert!(pieces >= 3, "50 mm in pieces of at most 22: {pieces}");

    let pair = job("opposed", "");
    let segments = rig(&pair).segments().expect("can be cut");
    // 2 mm: roughing 1.75 in two, the last with the trailing tool behind it.
    let depths: Vec<Vec<f64>> = segments[0].travels.iter().map(|t| t.depths_mm.clone()).collect();
    assert_eq!(depths, [vec![0.875], vec![0.875, 0.25]]);
    let third = segments.iter().find(|s| s.section == 2).expect("there");
    assert_eq!(third.travels[0].depths_mm, [0.75, 0.25]);
}

#[test]
fn a_pair_of_tools_balances_all_but_a_rest() {
    let job = job("opposed", "");
    let rig = rig(&job);
    let alone = |ap: f64| forces(&rig, &[ap], 0.1);
    let both = forces(&rig, &[0.75, 0.25], 0.1);
    let (lead, trail) = (alone(0.75), alone(0.25));
    near(both.main_n, lead.main_n + trail.main_n);
    near(
        both.net_radial_n,
        (lead.net_radial_n - trail.net_radial_n).abs().max(0.1 * lead.net_radial_n.max(trail.net_radial_n)),
    );
    // Equal depths: a tenth is left.
    near(forces(&rig, &[0.5, 0.5], 0.1).net_radial_n, 0.1 * alone(0.5).net_radial_n);
    assert!(lead.net_radial_n > 0.0 && forces(&rig, &[], 0.1).net_radial_n == 0.0);
}

#[test]
fn speeds_of_the_cut_and_of_the_machine() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    assert_eq!((rig.machine_rpm(false), rig.machine_rpm(true)), (5000.0, 3000.0));
    // 120 m/min at the 16.5 mm before the last travel.
    near(rig.segment_rpm(&segments[0], true), 120_000.0 / (PI * 16.5));
    near(rig.wanted_rpm(&segments[0], rig.job.cutting.vc_m_per_min, 2.0, false), 5000.0);
    near(rig.wanted_rpm(&segments[0], rig.job.cutting.vc_m_per_min, 2.0, true), 3000.0);
    let whirled = Segment { work: Work::Whirl, ..segments[0].clone() };
    // Six chips of 0.08 mm a turn of a ring half as large again.
    let ring = 120_000.0 / (PI * 20.0) / 1.5;
    near(rig.wanted_rpm(&whirled, rig.job.cutting.vc_m_per_min, 20.0, false), 0.48 * ring / (PI * 20.0));

    // Whirl: 0.7 of the critical speed; whip of half its limit: √(1/2) of it; each a ten-thousandth below.
    let below = 2000.0 * (1.0 - 1e-4);
    let held = state(50.0, Some(30.0));
    let at = |unsupported| rig.allowed_rpm(&held, &Answers { bore_sag_mm: 0.0, ..answers(unsupported) });
    let whirl = at(500.0);
    near(whirl.rpm, 0.7 * below);
    assert_eq!(whirl.check, "whirl");
    let whip = at(1_300.0);
    near(whip.rpm, below * (1.0 - 0.5 * 1.69f64).sqrt());
    assert_eq!(whip.check, "whip");
    near(at(1_500.0).rpm, 0.0);
    let bore = rig.allowed_rpm(&held, &Answers { bore_sag_mm: 2.5, ..answers(100.0) });
    near(bore.rpm, below * (1.0f64 - 2.5 / 3.0).sqrt());
    assert_eq!(bore.check, "bore");
    near(rig.allowed_rpm(&held, &Answers { bore_sag_mm: 3.0, ..answers(100.0) }).rpm, 0.0);

    // The other way round: what the critical speed must be for a speed.
    let needed = |answers: Answers, shares| rig.critical_needed_rpm(&held, &answers, 700.0, shares);
    let quiet = Answers { bore_sag_mm: 0.0, ..answers(100.0) };
    near(needed(quiet, [1.0; 3]), 1000.0);
    near(needed(quiet, [0.5, 1.0, 1.0]), 2000.0);
    near(needed(Answers { bore_sag_mm: 0.0, ..answers(1_300.0) }, [1.0; 3]), 700.0 / (1.0 - 0.845f64).sqrt());
    near(needed(Answers { bore_sag_mm: 2.5, ..answers(100.0) }, [1.0; 3]), 700.0 * 6f64.sqrt());
    assert!(needed(Answers { bore_sag_mm: 3.0, ..answers(100.0) }, [1.0; 3]).is_infinite());
    assert!(needed(answers(1_500.0), [1.0; 3]).is_infinite());
    near(needed(answers(1_500.0), [checks::MOST_SHARE; 3]), 0.0);
}

#[test]
fn times_of_pieces() {
    let job = job("single", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    // Three travels of 10 mm at 0.1 mm/rev and no more than 600 rev/min: 10 s each, and 2 s for each travel.
    let turned = rig.piece_time(&segments[0], 10.0, true, 600.0);
    near(turned.cutting_s, 30.0);
    near(turned.overhead_s, 6.0);
    near(turned.total_s(), 36.0);
    // Not faster than the last travel is checked at, though the cap is higher: 16.5 mm allows more than the machine does at none.
    let most = rig.segment_rpm(&segments[0], true);
    let travels = [20.0, 18.25, 16.5].map(|d: f64| (120_000.0 / (PI * d)).min(most));
    near(rig.piece_time(&segments[0], 10.0, true, 1e9).cutting_s, travels.iter().map(|n| 6000.0 / n).sum());
    // 7 mm are three plunges of at most 3, each 4 mm deep at 0.04 mm/rev.
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    let plunged = rig.piece_time(groove, 1.0, true, 600.0);
    near(plunged.cutting_s, 3.0 * 10.0);
    near(plunged.overhead_s, 6.0);
    // M8: 1.25 mm a turn, 7 passes of 12 mm at three quarters of the speed for 8 mm, here 600 rev/min, a second back each.
    let thread = segments.iter().find(|s| s.work == Work::Thread).expect("a thread");
    let turning: f64 = thread.travels.iter().map(|t| 60.0 * 12.0 / (t.feed_mm * 600.0)).sum();
    let cut = rig.piece_time(thread, 1.0, true, 600.0);
    near(cut.cutting_s, turning + 7.0 * (60.0 * 12.0 / (1.25 * 600.0) + 1.0));
    // Four travels of 1.4375 mm and one of 0.25 in front of it, 2 s each.
    near(cut.overhead_s, 10.0);
    assert_eq!(rig.infeeds_mm(thread).len(), 7);
    assert!(rig.infeeds_mm(&segments[0]).is_empty());
    let whirled = Segment { work: Work::Whirl, ..thread.clone() };
    near(rig.piece_time(&whirled, 1.0, true, 60.0).overhead_s, 2.0 * whirled.travels.len() as f64);
    let part_off = segments.last().expect("part-off");
    near(rig.piece_time(part_off, 3.0, true, 600.0).total_s(), 0.0);
}

/// 129 + 3 + 1 = 133 mm a part off a bar of 20 mm and 8 t/m³; 60 + 40 + 50 mm of a bar are out of
/// reach, so 21 parts come off 3000 mm and 3000 - 21 * 133 = 207 mm are left.
#[test]
fn the_quote() {
    let job = job("single", "");
    let quote = quote::quote(&job, Some(100.0));
    near(job.out_of_reach_mm(), 150.0);
    near(quote.remnant_mm, 207.0);
    assert_eq!(quote.pieces_per_bar, 21);
    let kg = 133.0 * PI * 100.0 * 8e-6;
    near(quote.material_kg, kg);
    let cost = quote.cost.expect("rates are given");
    near(cost.machine, 2.0);
    near(cost.material, 3.0 * kg);
    near(cost.total, 2.0 + 3.0 * kg);
    assert!(quote::quote(&job, None).cost.is_none());
}
