//! A tandem: depths and choice, forces at two places, the step where the roughing tool lifts, chatter of both tools, times, stops, stroke.

use super::*;
use spanhold::job::plan::Verdict;
use spanhold::planner::Advice;
use spanhold::process::stops::Stop;
use spanhold::process::tandem::NoTandem;
use spanhold::{answer, proof};

/// The usual job with a tandem: 0.5 mm behind, a nose of 0.8 mm. The third section, 60 mm from 57 mm on, asks for IT7 in 1 mm of stock.
fn tandem(more: &str, changes: &[(&str, &str)]) -> Job {
    let text = text(&format!("tandem, lag: 0.5, finisher: {{nose_radius: 0.8{more}}}"), "");
    let text = text.replacen("diameter: 18, tolerance: [-0.2, 0]", "diameter: 18, tolerance: h7", 1);
    read(&changes.iter().fold(text, |text, (from, to)| {
        assert!(text.contains(from), "{from}");
        text.replacen(from, to, 1)
    }))
}

fn third(job: &Job) -> Segment {
    rig(job).segments().expect("can be cut").into_iter().find(|s| s.section == 2).expect("there")
}

fn depths(segment: &Segment) -> Vec<Vec<f64>> {
    segment.travels.iter().map(|t| t.depths_mm.clone()).collect()
}

#[test]
fn what_asks_for_it_is_roughed_and_finished_in_one_travel() {
    let job = tandem("", &[]);
    let fine = third(&job);
    assert_eq!((depths(&fine), fine.lag_mm), (vec![vec![0.75, 0.25]], Some(0.5)));
    // 2 mm of stock and no fine tolerance: 1.75 in two, and the finishing tool saves the third travel.
    let first = &rig(&job).segments().expect("can be cut")[0];
    assert_eq!((depths(first), first.lag_mm), (vec![vec![0.875], vec![0.875, 0.25]], Some(0.5)));
    // Without a wish one cut is enough; a wish, or Ra 0.8, brings the second tool in.
    let third_with = |tolerance: &str| third(&tandem("", &[("tolerance: h7", tolerance)]));
    let plain = third_with("tolerance: h9");
    assert_eq!((depths(&plain), plain.lag_mm), (vec![vec![1.0]], None));
    for asks in ["ra: 0.8", "tolerance: h9, finish_pass: true"] {
        assert_eq!(depths(&third_with(asks)), [[0.75, 0.25]], "{asks}");
    }
    // No more stock than the last pass: nothing to rough.
    let thin = third(&tandem("", &[("diameter: 18, tolerance: h7", "diameter: 19.5, tolerance: h7")]));
    assert_eq!((depths(&thin), thin.lag_mm), (vec![vec![0.25]], None));
}

/// Ra 0.8 with 1.5 times the ideal: `f² = 32 r Ra/1.5`, and the nose is that of the finishing tool.
#[test]
fn the_finishing_tool_gives_the_feed() {
    let feed = |section: &str| {
        third(&tandem("", &[("tolerance: h7", section), ("feed: 0.1", "feed: 0.5")])).travels[0].feed_mm
    };
    near(feed("ra: 0.8"), (32.0 * 0.8 * 0.8e-3 / 1.5f64).sqrt());
    // Where no second tool is asked for, the roughing tool cuts alone, with its own nose.
    near(feed("ra: 1.6"), (32.0 * 0.4 * 1.6e-3 / 1.5f64).sqrt());
}

#[test]
fn forces_add_on_one_side_and_oppose_on_two() {
    let alone = |nose: &str, ap: f64| {
        let single = changed(&[("nose_radius: 0.4", nose)]);
        forces(&rig(&single), &[ap], 0.1).cuts[0]
    };
    let (rough, finish) = (alone("nose_radius: 0.4", 0.75), alone("nose_radius: 0.8", 0.25));
    let same = tandem("", &[]);
    let both = forces(&rig(&same), &[0.75, 0.25], 0.1);
    assert_eq!(both.cuts, [rough, finish]);
    near(both.net_radial_n, rough.passive_n + finish.passive_n);
    near(both.main_n, rough.main_n + finish.main_n);
    let opposite = tandem(", side: opposite", &[]);
    let net = forces(&rig(&opposite), &[0.75, 0.25], 0.1).net_radial_n;
    let larger = rough.passive_n.max(finish.passive_n);
    near(net, (rough.passive_n - finish.passive_n).abs().max(0.1 * larger));
}

/// Where the roughing tool lifts, its deflection at the finishing tool goes: `2 Fr (δ + lag θ)` on the diameter, with the bar of 20 mm on
/// the springs of the bush, 2 mm out and 30 mm apart. The thinner bar in front of the roughing tool is straight.
#[test]
fn the_diameter_steps_where_the_roughing_tool_lifts() {
    for side in ["same", "opposite"] {
        let soft = ("gap: 2, stiffness: 10000", "gap: 2, stiffness: 50");
        let job = tandem(&format!(", side: {side}"), &[soft, ("tolerance_share: 0.25", "tolerance_share: 1")]);
        let rough_n = forces(&rig(&job), &[0.75, 0.25], 0.1).cuts[0].passive_n;
        let (c, a, k, d) = (2.0f64, 30.0f64, 25_000.0, 20.0f64);
        let (ei, ga) = (200_000.0 * PI * d.powi(4) / 64.0, 200_000.0 / 2.6 * PI * d * d / 4.0 * 7.8 / 8.8);
        let tip = ((1.0 + c / a).powi(2) + (c / a).powi(2)) / k + c * c * (a + c) / (3.0 * ei) + (c + c * c / a) / ga;
        let slope = (a + 2.0 * c) / (a * a * k) + a * c / (3.0 * ei) + c * c / (2.0 * ei) + c / a / ga;
        let step = 2.0 * rough_n * (tip + 0.5 * slope);
        let segment = third(&job);
        near(segment.change_mm, step);
        // Of a softer bush the step is too large: the section is cut at once, and the reason is told.
        let job = tandem(&format!(", side: {side}"), &[soft, ("tolerance_share: 0.25", "tolerance_share: 0.01")]);
        assert_eq!((depths(&third(&job)), third(&job).lag_mm), (vec![vec![1.0]], None));
        let why = rig(&job).no_tandem(&job.shaft.sections[2], false).expect("a step");
        let NoTandem::Step([found, limit]) = why else { panic!("{why:?}") };
        near(found, step);
        near(limit, 0.01 * 0.018);
    }
    // In a section shorter than the lag the roughing tool has lifted before the other one cuts.
    let short = tandem("", &[("length: 60", "length: 0.4"), ("gap: 2, stiffness: 10000", "gap: 2, stiffness: 5")]);
    assert_eq!((third(&short).change_mm, third(&short).lag_mm), (0.0, Some(0.5)));
}

/// After a pull-back by `p` the finishing tool comes into the cut with the bar `p - lag` out of the land. With a stiff bush and opposite
/// sides the same range, by the beam formula at both ends: here the whole of it lies between the ends.
#[test]
fn a_pull_back_adds_its_bend() {
    let job = tandem("", &[]);
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let first = &segments[0];
    assert!(first.travels.len() == 2 && first.length_mm() < 50.0);
    let travel = &first.travels[1];
    let cuts = rig.travel_forces(&travel.depths_mm, &travel.cutters, travel.feed_mm).cuts;
    let (rough_n, finish_n, d, thin) = (cuts[0].passive_n, cuts[1].passive_n, 18.25f64, 16.5f64);
    let (k, lag) = (5_000_000.0, 0.5);
    let bend = |d: f64| 200_000.0 * PI * d.powi(4) / 64.0;
    let shear = |d: f64| 200_000.0 / 2.6 * PI * d * d / 4.0 * 7.8 / 8.8;
    let at = |u: f64, rough_n: f64| {
        let a = 30.0 - (u - 2.0);
        let tip = ((1.0 + u / a).powi(2) + (u / a).powi(2)) / k
            + u * u * (a + u) / (3.0 * bend(d))
            + (u + u * u / a) / shear(d);
        let slope = (a + 2.0 * u) / (a * a * k) + a * u / (3.0 * bend(d)) + u * u / (2.0 * bend(d)) + u / a / shear(d);
        let turn = 2.0 / (a * a * k) + a / (3.0 * bend(d)) + u / bend(d) + 1.0 / a / shear(d);
        let own = tip + 2.0 * lag * slope + lag * lag * turn + lag.powi(3) / (3.0 * bend(thin)) + lag / shear(thin);
        finish_n * own + rough_n * (tip + lag * slope)
    };
    // On one side all add up: the most with both tools and the bar far out, the least alone at the end.
    near(first.change_mm, 2.0 * (at(first.length_mm() - lag, rough_n) - at(2.0, 0.0)));
}

#[test]
fn both_tools_have_their_own_place() {
    let job = tandem("", &[]);
    let rig = rig(&job);
    let fine = third(&job);
    let held = state(80.0, Some(45.0));
    near(rig.finisher_at_mm(&held).expect("a tandem"), 79.5);
    // At the front face, and in front of the nose, nothing is cut.
    near(rig.finisher_at_mm(&state(0.2, None)).expect("a tandem"), 0.0);
    near(rig.finisher_at_mm(&state(45.2, Some(45.0))).expect("a tandem"), 45.0);
    // Four times as flexible at the finishing tool: there `chatter` is worst, and `stiffness` counts.
    let answers = Answers { finisher_mm_per_n: 4e-4, ..answers(100.0) };
    let view = View { rig: &rig, state: &held, answers: &answers, segment: &fine, rpm: 1000.0 };
    let chatter = checks::chatter::bound(&view).expect("it turns");
    let slope = fine.travels[0].stiffness_n_per_mm[1];
    near(chatter.demand, 0.25);
    near(chatter.limit, 0.25 / (2.0 * slope * 4e-4 / (4.0 * 0.02 * 1.02)));
    near(chatter.at_mm, 79.5);
    let soft = found(&view, "stiffness");
    near(soft.demand, 2.5);
    near(soft.at_mm, 79.5);
    // As stiff as at the roughing tool: the tool nearer its limit counts, each with its own depth.
    let even = Answers { finisher_mm_per_n: 1e-4, ..answers };
    let chatter = checks::chatter::bound(&View { answers: &even, ..view }).expect("it turns");
    let hardest = fine.travels[0].stiffness_n_per_mm.iter().copied().fold(0.0, f64::max);
    near(chatter.utilisation, 2.0 * hardest * 1e-4 / (4.0 * 0.02 * 1.02));
}

/// The flexibility at the finishing tool is that of the whole beam there.
#[test]
fn the_beam_gives_the_flexibility_at_the_finishing_tool() {
    let job = tandem(", side: opposite", &[]);
    let rig = rig(&job);
    let held = state(80.0, Some(45.0));
    let answers = rig.answers(&held).expect("held");
    let at = |place: f64| rig.deflection_under_mm(&held, place, &[[place, 1.0]]).expect("held");
    near(answers.finisher_mm_per_n, at(79.5));
    near(answers.tool_mm_per_n, at(80.0));
    assert!(answers.finisher_mm_per_n > answers.tool_mm_per_n);
    // Both forces at once: by superposition, and the same from each side (Maxwell).
    let cross = rig.deflection_under_mm(&held, 79.5, &[[80.0, 1.0]]).expect("held");
    near(cross, rig.deflection_under_mm(&held, 80.0, &[[79.5, 1.0]]).expect("held"));
    near(
        rig.deflection_under_mm(&held, 79.5, &[[79.5, 3.0], [80.0, -2.0]]).expect("held"),
        3.0 * answers.finisher_mm_per_n - 2.0 * cross,
    );
}

/// 60 mm at 0.1 mm and 500 rev/min: 72 s; the finishing tool runs out for 0.6 s more, and 0.5 mm back at 20 m/min.
#[test]
fn the_finishing_tool_runs_out() {
    let job = tandem("", &[]);
    let rig = rig(&job);
    let fine = third(&job);
    let whole = rig.stretch_time(&fine, [57.0, 117.0], true, 500.0);
    near(whole.cutting_s, 72.0 + 0.6 + 60.0 * 0.5 / 20_000.0);
    near(whole.overhead_s, 2.0);
    // A stop inside ends nothing: both tools stop and go on.
    near(rig.stretch_time(&fine, [57.0, 100.0], true, 500.0).cutting_s, 43.0 * 1.2);
    let segments = rig.segments().expect("can be cut");
    near(rig.runs_out_to_mm(&segments, 117.0), 117.5);
    near(rig.runs_out_to_mm(&segments, 117.2), 117.5);
    near(rig.runs_out_to_mm(&segments, 118.0), 118.0);
    near(rig.runs_out_to_mm(&segments, 100.0), 100.0);
}

#[test]
fn a_stop_leaves_its_line_at_the_finishing_tool() {
    let job = tandem("", &[("tolerance: h7", "tolerance: h7, interrupt: free")]);
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    // As long as only the roughing tool is in the section, the feed stops at the shoulder instead.
    assert_eq!(rig.stop_at(&segments, 57.3), Stop::Forbidden);
    assert_eq!(rig.stop_at(&segments, 57.0), Stop::Shoulder);
    assert_eq!(rig.stop_at(&segments, 57.6), Stop::Free);
    near(rig.line_at_mm(&segments, 57.6), 57.1);
    near(rig.line_at_mm(&segments, 57.3), 57.0);
    near(rig.line_at_mm(&segments, 57.0), 57.0);
}

#[test]
fn what_both_tools_cannot_cut_has_a_last_pass_or_one_cut_and_a_word() {
    let why = |job: &Job, back: bool| rig(job).no_tandem(&job.shaft.sections[2], back);
    let job = tandem("", &[]);
    assert_eq!(why(&job, false), None);
    assert_eq!(why(&job, true), Some(NoTandem::Back));
    // 2 + 0.5 mm from the bush the finishing tool stands.
    let near_spindle = tandem("", &[("nearest: 10", "nearest: 2.4")]);
    assert_eq!(why(&near_spindle, false), Some(NoTandem::InCounterSpindle(2.4)));
    // Behind a larger collar: the section is short enough to be pulled back as a whole, and 3 mm is no finishing cut.
    let behind = |length: &str| {
        tandem(
            "",
            &[
                ("{length: 7, diameter: 12, kind: groove}", "{length: 7, diameter: 19}"),
                (
                    "{length: 60, diameter: 18, tolerance: h7}",
                    &format!("{{length: {length}, diameter: 14, tolerance: h7, name: neck}}"),
                ),
                ("ap_max: 1.5", "ap_max: 4"),
            ],
        )
    };
    let short = third(&behind("20"));
    assert!(short.back && short.lag_mm.is_none());
    assert_eq!(depths(&short), [[2.75], [0.25]]);
    // Longer than 22 mm the land does not let it: one cut.
    assert_eq!(depths(&third(&behind("30"))), [[3.0]]);
    let note = |job: &Job| answer::advised(job, Advice::None).expect("an answer").notes.join("\n");
    let told = note(&behind("30"));
    assert!(told.contains("neck asks for a tolerance of 0.018 mm and is cut 3.00 mm deep in one cut"), "{told}");
    assert!(told.contains("steps down") && !told.contains("finish_pass"), "{told}");
    assert!(note(&behind("20")).contains("neck has a last pass of its own"));
    // A single tool is told what there is.
    let single = |length: &str| {
        let section = format!("length: {length}, diameter: 14, tolerance: h7, interrupt: free, name: neck");
        note(&changed(&[("length: 60, diameter: 18, tolerance: [-0.2, 0]", &section), ("ap_max: 1.5", "ap_max: 4")]))
    };
    assert!(single("20").contains("finish_pass: true"));
    assert!(single("30").contains("tools: tandem") && !single("30").contains("finish_pass"));
}

/// 100 mm without a stop and a stroke for these and no more: a single tool turns them, the run-out of the finishing tool has no stroke.
#[test]
fn a_run_out_takes_stroke() {
    let pin = |tools: &str, stroke: &str| {
        let shaft =
            "    - {length: 100, diameter: 18, tolerance: h7}\n    - {length: 2, diameter: 19.5}\n  straightness: 0.1";
        let text = text(&format!("{tools}, lag: 4"), "");
        let (front, rest) = text.split_once("    - {length: 50").expect("sections");
        let (_, rest) = rest.split_once("  straightness: 0.5").expect("the end of them");
        let text = format!("{front}{shaft}{rest}").replacen("stroke: 300", stroke, 1);
        let text = text.replacen("whirl_ratio: 0.7, whip: 1", "whirl_ratio: 0.9, whip: 3, pick_up: 2", 1);
        let job = read(&text.replacen("width: 3", "width: 1, tray: {max_length: 200, max_diameter: 30}", 1));
        (answer::advised(&job, Advice::None).expect("an answer"), job)
    };
    // The part-off ends at 103 mm, the run-out at 104 mm.
    for (tools, stroke, verdict) in
        [("single", "stroke: 103.5", Verdict::Feasible), ("tandem", "stroke: 104.5", Verdict::Feasible)]
    {
        let (plan, job) = pin(tools, stroke);
        assert_eq!(plan.verdict, verdict, "{tools}: {:?}", plan.shortfall);
        assert!(proof::prove(&plan, &job).holds());
    }
    let (long, _) = pin("tandem", "stroke: 104.5");
    assert_eq!((long.stages.len(), long.segments[0].lag_mm), (1, Some(4.0)));
    // The same plan on a stroke that is too short: the proof counts the run-out too.
    let (short, job) = pin("tandem", "stroke: 103.5");
    let breaches = proof::prove(&long, &job).breaches;
    assert!(breaches.iter().any(|b| b.rule == "stroke"), "{breaches:?}");
    assert!(short.verdict == Verdict::Infeasible || short.stages.len() > 1, "{:?}", short.stages.len());
}
