//! Work that is not turning: forces, times, tools and their places, the order of works, the pace from part to part.

use super::falls::{pin, planned};
use super::*;
use spanhold::job::materials::Class;
use spanhold::job::plan::FeatureMoment;
use spanhold::job::{Place, SectionKind};
use spanhold::mechanics::{drilling, milling, shaving};
use spanhold::process::features::{Task, moments_told};
use spanhold::process::moment;
use spanhold::process::pace::What;
use spanhold::process::tool::Tool;

fn tasks(features: &str) -> Vec<Task> {
    let job = job("single", &format!("features: [{features}]"));
    rig(&job).tasks()
}

fn times(features: &str) -> Vec<f64> {
    tasks(features).iter().map(|t| t.time_s).collect()
}

/// Speeds by hand: from the numbers of the test steel its class is austenitic stainless steel. Drills 15 m/min and 0.012 of the diameter
/// a turn, taps 6 m/min, cutters 60 m/min and 0.018 mm a tooth at 5 mm, 0.014 mm at 4 mm; driven tools at most 6000 rev/min.
/// A hole of 8 mm through 18 mm of shaft at 0.096 mm a turn, and 4 s.
#[test]
fn what_crosses_the_shaft() {
    let [hole] = &tasks("{cross_hole: 8, at: 80}")[..] else { panic!("one") };
    near(hole.time_s, 60.0 * 18.0 / (0.096 * 15_000.0 / (PI * 8.0)) + 4.0);
    let resistance = rig(&job("single", "")).resistance;
    near(hole.thrust_n.expect("a thrust"), drilling::thrust_n(&resistance, 8.0, 0.096));
    assert_eq!((hole.cross, hole.at_mm, hole.moment_mm(10.0)), (true, 80.0, 90.0));
    assert_eq!((hole.axial_n, hole.torque_nm), (0.0, 0.0));
    assert_eq!(hole.tool, Tool::new(Place::CrossDriven, "drill Ø8.00"));
    assert_eq!(tasks("{cross_hole: 8, at: 80, thrust: 55}")[0].thrust_n, Some(55.0));

    // 20 mm long with two teeth and 3 mm deep with one, at 3820 rev/min, and 2 s; the slot's 15 mm².
    let [keyseat] = &tasks("{keyseat: [5, 3], from: 70, to: 90}")[..] else { panic!("one") };
    let tooth = 0.018 * 60_000.0 / (PI * 5.0);
    near(keyseat.time_s, 60.0 * (20.0 / (2.0 * tooth) + 3.0 / tooth) + 2.0);
    near(keyseat.thrust_n.expect("a force"), milling::mean_n(&resistance, 15.0, 5.0, 2.0, 2.0 * tooth, 60.0));
    assert_eq!(keyseat.at_mm, 90.0);

    // M6 across: a hole of 5 mm, then the tap 18 mm and three pitches deep, in and out at 6 m/min, and 2 s.
    let [drill, tap] = &tasks("{tapped_hole: M6, at: 80}")[..] else { panic!("two") };
    near(drill.time_s, 60.0 * 18.0 / (0.06 * 15_000.0 / (PI * 5.0)) + 4.0);
    near(tap.time_s, 2.0 * 60.0 * (18.0 + 3.0) / (6000.0 / (PI * 6.0)) + 2.0);
    assert_eq!((drill.kind, tap.kind, tap.thrust_n), ("tapped_hole", "tapped_hole", None));

    // 0.5 mm would turn at 9549 rev/min. The machine drives it at 6000, or at 4000 if its file says so; then the cutter is slower than it asks too.
    near(tasks("{cross_hole: 0.5, at: 80}")[0].time_s, 60.0 * 18.0 / (0.006 * 6000.0) + 4.0);
    let mut slow = job("single", "features: [{cross_hole: 0.5, at: 80}, {keyseat: [4, 2], from: 70, to: 90}]");
    slow.machine.driven_max_rpm = 4000.0;
    let slow = rig(&slow).tasks();
    near(slow.iter().find(|t| t.kind == "cross_hole").expect("there").time_s, 60.0 * 18.0 / (0.006 * 4000.0) + 4.0);
    let tooth = 0.014 * 4000.0;
    let keyseat = slow.iter().find(|t| t.kind == "keyseat").expect("there");
    near(keyseat.time_s, 60.0 * (20.0 / (2.0 * tooth) + 2.0 / tooth) + 2.0);
    let vc = PI * 4.0 * 4000.0 / 1000.0;
    near(keyseat.thrust_n.expect("a force"), milling::mean_n(&resistance, 8.0, 4.0, 2.0, 2.0 * tooth, vc));
}

/// The class of a material gives speeds and feeds: brass drills 60 m/min and 0.02 of the diameter.
#[test]
fn a_class_that_is_given_counts() {
    let class = [
        ("poisson: 0.3}", "poisson: 0.3, class: free_cutting_copper}"),
        ("straightness:", "features: [{cross_hole: 8, at: 80}]\n  straightness:"),
    ];
    let [hole] = &rig(&changed(&class)).tasks()[..] else { panic!("one") };
    near(hole.time_s, 60.0 * 18.0 / (0.16 * 60_000.0 / (PI * 8.0)) + 4.0);
    let job = changed(&class);
    assert!(!job.shaft.material.class_assumed && super::job("single", "").shaft.material.class_assumed);
}

/// A plan tells once what lies outside of what its sources know. Of the holes of 1 and 6 mm the smaller goes farthest: its chip is
/// 0.43 · 0.012 mm, and the formula of the thrust begins at 1.6 mm.
#[test]
fn what_no_source_knows_is_told_once() {
    let holes = "features: [{axial_hole: 1, depth: 2, end: front}, {axial_hole: 6, depth: 2, end: front}]";
    let told = |job: &Job, text: &str| planned(job).notes.iter().filter(|note| note.contains(text)).count();
    let job = pin("", holes);
    assert_eq!(told(&job, "The chip of the drill of 1 mm is 0.005 mm thick"), 1, "{:?}", planned(&job).notes);
    assert_eq!((told(&job, "known for chips"), told(&job, "drills of 1.6 to 100 mm")), (1, 1));
    assert_eq!(told(&job, "run as in austenitic stainless steel"), 1);
    // Brass is drilled with 0.12 mm a turn in 6 mm: 0.0516 mm of chip. The feed of turning is 0.1 mm.
    let mut brass = pin("", "features: [{axial_hole: 6, depth: 2, end: front}]");
    (brass.shaft.material.class, brass.shaft.material.class_assumed) = (Class::Brass, false);
    assert_eq!((told(&brass, "known for"), told(&brass, "run as in")), (0, 0), "{:?}", planned(&brass).notes);
    // Without such tools nothing is assumed. A fine feed of turning is told.
    let mut plain = pin("", "");
    assert_eq!((told(&plain, "known for"), told(&plain, "run as in")), (0, 0));
    plain.cutting.feed_mm = Some(0.03);
    assert_eq!(told(&plain, "The chip of turning with a feed of 0.03 mm/rev is 0.030 mm thick"), 1);
}

/// Two flats, 14 across on 18 mm: each 60 mm with four teeth of a cutter as wide as the flat, 11.31 mm, and 2 s. Half a chord of √(9² - 7²) = √32; outside it lies
/// 81 acos(7/9) - 7 √32 mm².
#[test]
fn flats_and_knurls() {
    let flats = changed(&[(
        "length: 60, diameter: 18, tolerance: [-0.2, 0]",
        "length: 60, across_flats: 14, sides: 2, diameter: 18",
    )]);
    let rig = rig(&flats);
    let [task] = &rig.tasks()[..] else { panic!("one") };
    let half = 32f64.sqrt();
    // Between 10 and 12 mm: 0.031 to 0.035 mm a tooth.
    let feed = 4.0 * (0.031 + 0.004 * (2.0 * half - 10.0) / 2.0) * 60_000.0 / (PI * 2.0 * half);
    near(task.time_s, 2.0 * (60.0 * 60.0 / feed + 2.0));
    let area = 81.0 * (7.0f64 / 9.0).acos() - 7.0 * half;
    near(task.thrust_n.expect("a force"), milling::mean_n(&rig.resistance, area, 2.0 * half, 4.0, feed, 60.0));
    assert_eq!((task.at_mm, task.kind, task.cross), (117.0, "flats", true));

    // 60 mm at 0.2 mm a turn, half of 120 m/min on 18 mm, and 2 s.
    let knurled = changed(&[("diameter: 18, tolerance: [-0.2, 0]", "diameter: 18, kind: knurl")]);
    assert!(matches!(knurled.shaft.sections[2].kind, SectionKind::Knurl { .. }));
    let [task] = &super::rig(&knurled).tasks()[..] else { panic!("one") };
    near(task.time_s, 60.0 * 60.0 / (0.2 * 60_000.0 / (PI * 18.0)) + 2.0);
    // Capped by the counter-spindle's 3000 rev/min, here by 500.
    let slow = changed(&[
        ("diameter: 18, tolerance: [-0.2, 0]", "diameter: 18, kind: knurl"),
        ("max_rpm: 3000", "max_rpm: 500"),
    ]);
    near(super::rig(&slow).tasks()[0].time_s, 60.0 * 60.0 / (0.2 * 500.0) + 2.0);
}

/// Drilled 6 mm, 30 deep on the axis: 31.8 mm of way with the point at 0.072 mm, two ways out beyond three diameters deep.
#[test]
fn holes_on_the_axis() {
    let turn = |d: f64| 15_000.0 / (PI * d);
    near(times("{axial_hole: 6, depth: 30, end: front}")[0], 60.0 * 31.8 / (0.072 * turn(6.0)) + 2.0 + 4.0);
    near(times("{axial_hole: 6, depth: 18, end: front}")[0], 60.0 * 19.8 / (0.072 * turn(6.0)) + 4.0);
    near(times("{axial_hole: 6, depth: 19, end: front}")[0], 60.0 * 20.8 / (0.072 * turn(6.0)) + 1.0 + 4.0);
    // 1 mm would turn at 4775 rev/min, 0.5 mm no faster than the headstock's 5000 rev/min.
    near(times("{axial_hole: 1, depth: 2, end: front}")[0], 60.0 * 2.3 / (0.012 * turn(1.0)) + 4.0);
    near(times("{axial_hole: 0.5, depth: 1, end: front}")[0], 60.0 * 1.15 / (0.006 * 5000.0) + 4.0);
    near(times("{centre_hole: A2, end: front}")[0], 4.0);
    let back = job("single", "features: [{axial_hole: 1, depth: 2, end: back}, {axial_hole: 4, depth: 8, end: front}]");
    let rig = rig(&back);
    let [work] = &rig.back[..] else { panic!("one") };
    // The counter-spindle turns it then, up to 3000 rev/min.
    near(work.work.time_s, 60.0 * 2.3 / (0.012 * 3000.0) + 4.0);
    near(rig.back_work_s(), work.work.time_s);
    let thrust = drilling::thrust_n(&rig.resistance, 1.0, 0.012);
    near(work.work.axial_force_n, thrust);
    near(work.work.radial_force_n, 0.1 * thrust);
    near(work.work.torque_nm, drilling::torque_nmm(&rig.resistance, 1.0, 0.012) / 1000.0);
    assert_eq!((rig.tasks().len(), work.tool.place), (1, Place::BackFixed));
}

/// M6, 12 deep: the hole of 5 mm, 16 deep; then 12 + 3 mm in and out at 6 m/min. A hole of that size and depth that is there already
/// is not drilled again.
#[test]
fn taps_and_sockets_in_an_end() {
    let tap = 2.0 * 60.0 * 15.0 / (6000.0 / (PI * 6.0)) + 2.0;
    let m6 = "{tapped_hole: M6, depth: 12, end: front}";
    let both = times(m6);
    assert_eq!(both.len(), 2);
    near(both[0], 60.0 * (16.0 + 1.5) / (0.06 * 15_000.0 / (PI * 5.0)) + 1.0 + 4.0);
    near(both[1], tap);
    for (hole, count) in [
        ("{axial_hole: 5, depth: 16, end: front}", 2),
        ("{axial_hole: 5, depth: 20, end: front}", 2),
        ("{axial_hole: 5, depth: 15.9, end: front}", 3),
        ("{axial_hole: 5.1, depth: 16, end: front}", 3),
        ("{axial_hole: 4.9, depth: 16, end: front}", 3),
    ] {
        assert_eq!(tasks(&format!("{hole}, {m6}")).len(), count, "{hole}");
    }
    let resistance = rig(&job("single", "")).resistance;
    near(tasks(m6)[1].torque_nm, drilling::tapping_torque_nmm(&resistance, 6.0, 1.0) / 1000.0);

    // M8: 6.75 mm first; run-in of three pitches of 1.25 mm.
    near(times("{tapped_hole: M8, depth: 12, end: front}")[1], 2.0 * 60.0 * 15.75 / (1.25 * 6000.0 / (PI * 8.0)) + 2.0);

    // A socket of 6, 8 deep: its hole, then strokes of 9 mm in at 6 m/min and back at rapid, 0.2 s each, and six times turned by 0.5 s.
    let job = job("single", "features: [{hex_socket: 6, depth: 8, end: front}]");
    let [hole, shaved] = &rig(&job).tasks()[..] else { panic!("two") };
    near(hole.time_s, 60.0 * 9.8 / (0.072 * 15_000.0 / (PI * 6.0)) + 4.0);
    let step = 0.05;
    let hexagon = shaving::hexagon(&resistance, 6.0, step);
    let stroke = 0.54 / 6.0 + 0.54 / job.machine.rapid_m_per_min + 0.2;
    near(shaved.time_s, hexagon.strokes as f64 * stroke + 3.0);
    near(shaved.axial_n, hexagon.force_n);
    let punched = &tasks("{hex_socket: 6, depth: 8, end: front, forming: punch}")[1];
    near(punched.time_s, 3.5);
    near(punched.axial_n, shaving::punch_n(&resistance, 6.0));
    // A keyway in a bore: 10 + 1 mm each.
    let keyway = &tasks("{axial_hole: 12, depth: 10, end: front}, {keyway: [3, 1.4], length: 10, end: front}")[1];
    let one = shaving::keyway(&resistance, 3.0, 1.4, step);
    near(keyway.time_s, one.strokes as f64 * (0.66 / 6.0 + 0.66 / job.machine.rapid_m_per_min + 0.2) + 0.5);
    near(keyway.axial_n, one.force_n);
}

/// 4 mm off the front in three passes of at most 1.5 mm, 20 mm of bar at 120 m/min, no faster than 5000 rev/min, which is 7.639 mm; 2 s
/// each. On the rear end the thread's 8 mm, with 3000 rev/min, whatever it is cut with.
#[test]
fn facing_an_end() {
    let face = |d: f64, most: f64| {
        let capped = (120_000.0 / (PI * most)).min(d);
        60.0 * (PI * (d * d - capped * capped) / (4000.0 * 120.0 * 0.1) + capped / 2.0 / (0.1 * most))
    };
    let [front] = &tasks("{facing: 4, end: front}")[..] else { panic!("one") };
    near(front.time_s, 3.0 * (face(20.0, 5000.0) + 2.0));
    near(tasks("{facing: 3, end: front}")[0].time_s, 2.0 * (face(20.0, 5000.0) + 2.0));
    let job = job("single", "features: [{facing: 0.5, end: back}]");
    let rig = rig(&job);
    let back = &rig.back[0];
    near(back.work.time_s, face(8.0, 3000.0) + 2.0);
    // What presses on the tool presses along the axis, what resists the feed across it.
    let cut = spanhold::mechanics::cutting::cut(&rig.resistance, &rig.edge, 0.5, 0.1);
    near(back.work.axial_force_n, cut.passive_n);
    near(back.work.radial_force_n, cut.feed_n);
    near(back.work.torque_nm, cut.main_n * 4.0 / 1000.0);
    let third = spanhold::mechanics::cutting::cut(&rig.resistance, &rig.edge, 4.0 / 3.0, 0.1);
    near(front.torque_nm, third.main_n * 10.0 / 1000.0);
    near(front.axial_n, third.passive_n);
    assert_eq!(
        (front.tool.clone(), back.tool.clone()),
        (Tool::new(Place::Turning, "turning tool"), Tool::new(Place::BackFixed, "facing tool"))
    );
}

/// An L of 6 mm: 10 mm of path in one stroke, at 200 mm/min 3 s, 0.3 s to lift, 2 s to come; on a face the spindle is turned and held, 0.5 s.
#[test]
fn letters() {
    let [along] = &tasks("{engrave: L, height: 6, at: 20}")[..] else { panic!("one") };
    near(along.time_s, 3.0 + 0.3 + 2.0);
    assert_eq!((along.at_mm, along.cross, along.tool.place), (24.0, true, Place::CrossDriven));
    let [face] = &tasks("{engrave: L, height: 6, end: front}")[..] else { panic!("one") };
    near(face.time_s, 5.8);
    assert_eq!((face.cross, face.tool.place), (false, Place::FrontDriven));
    // Nothing pushes on it.
    let job = job("single", "features: [{engrave: L, height: 6, end: front}]");
    assert!(checks::push::front(&rig(&job)).is_none());
}

/// What is on one end is not on the other.
#[test]
fn works_have_their_own_end() {
    for (feature, works) in [
        ("{centre_hole: A2, END}", 1),
        ("{facing: 0.5, END}", 1),
        ("{axial_hole: 3, depth: 6, END}", 1),
        ("{tapped_hole: M3, depth: 6, END}", 2),
        ("{hex_socket: 3, depth: 6, END}", 2),
        ("{axial_hole: 5, depth: 10, END}, {keyway: [2, 0.5], length: 8, END}", 2),
        ("{engrave: L, height: 2, END}", 1),
    ] {
        for (end, front, back) in [("end: front", works, 0), ("end: back", 0, works)] {
            let job = job("single", &format!("features: [{}]", feature.replace("END", end)));
            let rig = rig(&job);
            assert_eq!((rig.tasks().len(), rig.back.len()), (front, back), "{feature} {end}");
            let places = rig.tasks().into_iter().map(|t| t.tool).chain(rig.back.iter().map(|b| b.tool.clone()));
            assert!(places.into_iter().all(|t| t.place == Place::Turning || t.place.is_back() == (back > 0)));
        }
    }
}

/// Grips stay clear of what crosses the shaft by its own size.
#[test]
fn where_no_grip_may_lie() {
    let job = job(
        "single",
        "features: [{cross_hole: 8, at: 80}, {tapped_hole: M6, at: 100}, {keyseat: [5, 3], from: 60, to: 70}, {facing: 1, end: front}, {engrave: L, height: 6, at: 20}]",
    );
    assert_eq!(rig(&job).no_grip_stretches(), [(76.0, 84.0), (97.0, 103.0), (60.0, 70.0), (20.0, 24.0)]);
}

/// What each piece of work is cut with.
#[test]
fn tools_of_segments() {
    let names = |job: &Job| -> Vec<String> {
        let rig = rig(job);
        rig.tools(&rig.segments().expect("can be cut")).into_iter().map(|t| t.name).collect()
    };
    let mut one = names(&job("single", ""));
    one.sort();
    assert_eq!(
        one,
        ["back-turning tool", "grooving tool 3", "part-off tool", "threading tool, pitch 1.25", "turning tool"]
    );
    let pair = names(&job("opposed", "back_work: [{name: bore, time_s: 5}]"));
    assert!(
        pair.iter().any(|n| n == "finishing tool of the pair") && pair.iter().any(|n| n == "roughing tool of the pair")
    );
    assert!(pair.iter().any(|n| n == "bore"));
    // Where nothing is turned along, the pair's second tool has nothing to do.
    let opposed = job("opposed", "");
    let rig = rig(&opposed);
    let grooves: Vec<Segment> =
        rig.segments().expect("can be cut").into_iter().filter(|s| s.work == Work::Plunge).collect();
    assert_eq!(rig.tools(&grooves), [Tool::new(Place::Turning, "grooving tool 3")]);
    let narrow = names(&changed(&[("length: 7", "length: 2.5"), ("length: 12, thread", "length: 30, thread")]));
    assert!(
        narrow.iter().any(|n| n == "grooving tool 2.5") && narrow.iter().any(|n| n == "whirling head, pitch 1.25"),
        "{narrow:?}"
    );
    assert!(!narrow.iter().any(|n| n == "back-turning tool"));
    let drawn = changed(&[("diameter: 18, tolerance: [-0.2, 0]", "diameter: 20, tolerance: [-0.2, 0]")]);
    let rig = super::rig(&drawn);
    let segments = rig.segments().expect("can be cut");
    let as_drawn = segments.iter().find(|s| s.work == Work::AsDrawn).expect("left as drawn");
    assert!(rig.segment_tools(as_drawn).is_empty());
}

/// Four turning tools and a threading one for three places, one fixed tool in front and two driven places there, two at the rear end.
#[test]
fn tools_find_their_places() {
    let features = "features: [{centre_hole: A2, end: front}, {axial_hole: 4, depth: 8, end: back}, {axial_hole: 5, depth: 8, end: back}]";
    let fit = |places: &str, tools: &str| {
        let text = text(tools, features).replacen("  bar_end: 50", &format!("  tools: {places}\n  bar_end: 50"), 1);
        let job = read(&text);
        let rig = rig(&job);
        rig.tool_fit(&rig.segments().expect("can be cut")).expect("places are given")
    };
    let room = |fit: &spanhold::process::tooling::Fit, place: Place| {
        let room = fit.rooms.iter().find(|r| r.place == place).expect("there").clone();
        (room.tools.len(), room.places, room.elsewhere, room.short)
    };
    let enough = fit("{turning: 5, front_fixed: 1, back_fixed: 2}", "single");
    assert!(enough.fits() && enough.turret.is_none() && !enough.no_pair);
    assert_eq!(room(&enough, Place::Turning), (5, 5, 0, 0));
    // Two are short, and the rear end's second tool takes the driven place there; the centre drill one in front.
    let short = fit("{turning: 3, front_driven: 2, back_fixed: 1, back_driven: 1}", "single");
    assert!(!short.fits());
    assert_eq!(room(&short, Place::Turning), (5, 3, 0, 2));
    assert_eq!(room(&short, Place::FrontFixed), (1, 0, 1, 0));
    assert_eq!(room(&short, Place::BackFixed), (2, 1, 1, 0));
    // A turret of three takes those two and the centre drill, but nothing of the rear end.
    let turret = fit("{turning: 3, turret: {stations: 2, tools_per_station: 2}, back_fixed: 1}", "single");
    assert_eq!(turret.turret, Some((4, 3)));
    assert_eq!(room(&turret, Place::Turning), (5, 3, 2, 0));
    assert_eq!(room(&turret, Place::FrontFixed), (1, 0, 1, 0));
    assert_eq!(room(&turret, Place::BackFixed), (2, 1, 0, 1));
    assert!(!turret.fits());
    assert!(fit("{turning: 3, turret: {stations: 3}, back_fixed: 2}", "single").fits());
    assert!(!fit("{turning: 2, turret: {stations: 3}, back_fixed: 2}", "single").fits());
    // A pair stands on both sides.
    let pair = |more: &str| fit(&format!("{{turning: 9, front_fixed: 1, back_fixed: 2{more}}}"), "opposed");
    assert!(pair("").no_pair && !pair("").fits() && pair(", opposed: true").fits());
    assert!(rig(&job("single", "")).tool_fit(&[]).is_none());
}

/// A hole at 80 + 10 mm is drilled while section 2 (57 to 117) is turned, a centre drill before all. Round and round: turning, grooving,
/// turning, drill, turning, back-turning, threading, part-off, centre drill.
#[test]
fn the_order_of_works() {
    let features = "features: [{cross_hole: 8, at: 80}, {centre_hole: A2, end: front}]";
    let text = text("single", features).replacen("  bar_end: 50", "  tool_change_s: 2\n  bar_end: 50", 1);
    let job = read(&text);
    let rig = rig(&job);
    let (segments, tasks) = (rig.segments().expect("can be cut"), rig.tasks());
    assert_eq!((tasks[0].kind, tasks[1].kind), ("centre_hole", "cross_hole"));
    let steps = rig.steps(&segments, &tasks, &[(1, 90.0), (0, 0.0)]);
    let row: Vec<(f64, f64, What, usize)> = steps.iter().map(|s| (s.at_mm, s.to_mm, s.what, s.changes)).collect();
    let third = 50.0 / 3.0;
    assert_eq!(
        row,
        [
            (0.0, 0.0, What::Task(0), 1),
            (0.0, third, What::Cut(0), 1),
            (third, 2.0 * third, What::Cut(1), 0),
            (2.0 * third, 50.0, What::Cut(2), 0),
            (50.0, 57.0, What::Cut(3), 1),
            (57.0, 90.0, What::Cut(4), 1),
            (90.0, 90.0, What::Task(1), 1),
            (90.0, 117.0, What::Cut(4), 1),
            (117.0, 129.0, What::Cut(5), 2),
            (129.0, 132.0, What::PartOff, 1),
        ]
    );
    near(rig.changes_s(&steps), 2.0 * 9.0);
    // Up to 57 mm: the centre hole's 4 s and three changes; a cut that begins there is not yet done, at 90 the hole is.
    near(rig.besides_s(&steps, &tasks, 57.0), 4.0 + 2.0 * 3.0);
    near(rig.besides_s(&steps, &tasks, 89.0), 4.0 + 2.0 * 4.0);
    near(rig.besides_s(&steps, &tasks, 90.0), 4.0 + tasks[1].time_s + 2.0 * 5.0);
    near(rig.besides_s(&steps, &tasks, 0.0), 4.0 + 2.0);
    near(rig.besides_s(&steps, &tasks, 200.0), 4.0 + tasks[1].time_s + 2.0 * 8.0);
    // At a border a task is done before what follows; a thread goes on with its last tool.
    let border = rig.steps(&segments, &tasks, &[(0, 57.0), (1, 120.0)]);
    let row: Vec<(What, usize)> = border.iter().skip(4).map(|s| (s.what, s.tools.len())).collect();
    assert_eq!(
        row,
        [
            (What::Task(0), 1),
            (What::Cut(4), 1),
            (What::Cut(5), 2),
            (What::Task(1), 1),
            (What::Cut(5), 1),
            (What::PartOff, 1)
        ]
    );
}

/// What a stored plan says of the demo's features: the centre hole at once, a hole at 120 mm a keyseat up to 845 mm and flats
/// up to 960 mm at a reach of 10 mm.
#[test]
fn moments_as_a_plan_tells_them() {
    let root = concat!(env!("CARGO_MANIFEST_DIR"), "/");
    let job = spanhold::input::read_job(format!("{root}demo/feed-roller-shaft.yaml").as_ref()).expect("the demo job");
    let stored = std::fs::read_to_string(format!("{root}plans/feed-roller-shaft/plan.json")).expect("its plan");
    let mut plan: spanhold::job::plan::Plan = serde_json::from_str(&stored).expect("a plan");
    let tasks = rig(&job).tasks();
    let told = [(0, 0.0), (1, 130.0), (2, 855.0), (3, 970.0)];
    assert_eq!(moments_told(&plan, &tasks), told);
    // Kind, words and place say which it is, all three.
    let hole = plan.features[1].clone();
    for change in [
        |f: &mut FeatureMoment| f.at_mm = 119.9,
        |f: &mut FeatureMoment| f.text = "another".into(),
        |f: &mut FeatureMoment| f.feature = "keyseat".into(),
    ] {
        let mut other = hole.clone();
        change(&mut other);
        other.turned_mm = Some(1.0);
        plan.features.insert(0, other);
    }
    assert_eq!(moments_told(&plan, &tasks), told);
    plan.features.clear();
    assert_eq!(moments_told(&plan, &tasks), []);
}

/// 8 s of work at the rear end with two tools, two changes of 3 s each, 4 s of unloading.
#[test]
fn the_pace_of_the_job() {
    let work = "back_work: [{name: bore, time_s: 5}, {name: brush, time_s: 3}]";
    for (place, aside) in [("aside", true), ("in_line", false)] {
        let text = text("single", work)
            .replacen("  bar_end: 50", "  tool_change_s: 3\n  bar_change_s: 30\n  bar_end: 50", 1)
            .replacen("friction: 0.2", &format!("friction: 0.2\n    unload_s: 4\n    back_work: {place}"), 1);
        let job = read(&text);
        let pace = rig(&job).pace();
        assert_eq!((pace.counter_s, pace.overlaps, pace.bar_change_s, pace.pieces_per_bar), (18.0, aside, 30.0, 21.0));
    }
}

/// `at` in full: 9 places of the headstock, 60 to 360 mm; of several states the worst.
#[test]
fn a_moment_in_full() {
    let job = changed(&[("length: 60", "length: 600")]);
    let rig = rig(&job);
    let places = moment::headstock_places_mm(&rig);
    assert_eq!((places.len(), places[0], places[1], places[8]), (9, 60.0, 97.5, 360.0));
    let segments = rig.segments().expect("can be cut");
    let segment = segments.iter().find(|s| s.section == 2).expect("there");
    let states = [300.0, 500.0, 400.0].map(|turned| state(turned, None));
    let found = moment::moment(&rig, segment, &states, 100.0).expect("held").expect("there are states");
    assert_eq!((found.state, found.rpm), (states[1], 100.0));
    assert!(moment::moment(&rig, segment, &[], 100.0).expect("nothing asked").is_none());
    let answers = rig.answers(&states[1]).expect("held");
    let forces = forces(&rig, &[1.0], 0.1);
    near(found.net_radial_force_n, forces.net_radial_n);
    near(found.main_force_n, forces.main_n);
    near(found.passive_force_n, forces.cuts[0].passive_n);
    near(found.cut_deflection_um, 1000.0 * answers.tool_mm_per_n * forces.net_radial_n);
    near(found.sag_um, 1000.0 * answers.sag_mm);
    near(found.cut_diameter_change_um, 0.0);
    assert_eq!(found.frequencies_hz.len(), 3);
    near((found.frequencies_hz[0] * 60.0 / found.critical_rpm * 1e4).round(), 1e4);
    // 0.5 mm a metre over 502 mm, free: four times, grown by 1/(1 - (n/n_crit)²).
    near(found.whip_mm, 4.0 * 0.5 * 0.502 * 0.502 / (1.0 - (100.0 / found.critical_rpm).powi(2)));
    let exact = checks::chatter::exact(&rig, &states[1], segment).expect("it turns");
    assert_eq!(found.chatter_depth_limit_mm, Some(exact.limit));
    assert!(found.checks.contains(&exact));
    assert_eq!(moment::headstock_mm(&states[1]), Some(100.0));
    assert_eq!(moment::headstock_mm(&State { guide: Guide::Parted, ..states[1] }), None);
    // A groove is plunged: no force of a travel, no chatter.
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    let plunged = moment::moment(&rig, groove, &[state(55.0, None)], 100.0).expect("held").expect("a state");
    assert_eq!((plunged.net_radial_force_n, plunged.chatter_depth_limit_mm), (0.0, None));
    // The bent line: the weight's largest is the sag, the cut's at the tool its deflection.
    let bent = moment::shape(&rig, &states[1], &[[states[1].turned_mm, forces.net_radial_n]]).expect("held");
    let at_tool = bent.iter().find(|b| b.at_mm == 500.0).expect("a node at the tool");
    near(at_tool.cut_um.abs(), found.cut_deflection_um);
    near(bent.iter().map(|b| b.weight_um.abs()).fold(0.0, f64::max), found.sag_um);

    // Without a bush: twice the force times what the flexibility at the tool changes to the end of the stage.
    let job = changed(&[("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 30, collet_gap: 5}\n")]);
    let rig = super::rig(&job);
    let segments = rig.segments().expect("can be cut");
    let at = |turned_mm| State { turned_mm, counter: Counter::Away, guide: rig.guide(turned_mm, 0.0, 117.0) };
    let found = moment::moment(&rig, &segments[2], &[at(60.0)], 100.0).expect("held").expect("a state");
    let (here, end) = (rig.answers(&at(60.0)).expect("held"), rig.answers(&at(117.0)).expect("held"));
    near(found.cut_diameter_change_um, 2000.0 * forces.net_radial_n * (here.tool_mm_per_n - end.tool_mm_per_n));
    assert_eq!(moment::headstock_mm(&at(60.0)), None);
}
