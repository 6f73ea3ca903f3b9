//! Chamfers and radii of a section, and sections that are ground later.

use super::falls::planned;
use super::*;
use spanhold::job::Edge;

/// The first job with more keys in its sections of 16 mm and 18 mm.
fn with(front: &str, rear: &str) -> Job {
    changed(&[
        ("diameter: 16, tolerance: [-0.1, 0]", &format!("diameter: 16, tolerance: [-0.1, 0]{front}")),
        ("diameter: 18, tolerance: [-0.2, 0]", &format!("diameter: 18, tolerance: [-0.2, 0]{rear}")),
    ])
}

/// The message of a job that cannot be read.
fn refused(front: &str, rear: &str) -> String {
    let text = text("single", "")
        .replace("diameter: 16, tolerance: [-0.1, 0]", &format!("diameter: 16, tolerance: [-0.1, 0]{front}"))
        .replace("diameter: 18, tolerance: [-0.2, 0]", &format!("diameter: 18, tolerance: [-0.2, 0]{rear}"));
    let told = spanhold::input::read_job_text("hand.yaml", &text, ".".as_ref()).expect_err("refused");
    spanhold::input::render(&told)
}

/// A chamfer of 1 mm is a path of √2 mm on the way of the turning tool. At the rear edge of 0.5 mm a tool comes once more, 2 s.
#[test]
fn edges_take_the_time_of_their_path() {
    let (sharp, cut) = (job("single", ""), with(", chamfer: {front: 1, rear: 0.5}", ""));
    let segments = rig(&cut).segments().expect("can be cut");
    assert_eq!(rig(&sharp).segments().expect("can be cut"), segments, "edges change no travel");
    let rpm = 600.0;
    let whole = |job: &Job, length: f64| {
        let rig = rig(job);
        let segments = rig.segments().expect("can be cut");
        let first: Vec<_> = segments.iter().filter(|s| s.section == 0).collect();
        first.iter().map(|s| rig.piece_time(s, length * s.length_mm() / 50.0, true, rpm).total_s()).sum::<f64>()
    };
    let edges = 60.0 * 1.5 * 2f64.sqrt() / (0.1 * rpm) + 2.0;
    near(whole(&cut, 50.0) - whole(&sharp, 50.0), edges);
    // Half of the length has half of it, so a stop in between changes no sum.
    near(whole(&cut, 25.0) - whole(&sharp, 25.0), 0.5 * edges);
    // A radius of 0.5 mm is a quarter of a circle.
    near(Edge::Radius(0.5).path_mm(), PI / 4.0);
    let round = with(", radius: 0.5", "");
    near(whole(&round, 50.0) - whole(&sharp, 50.0), 60.0 * PI / 4.0 / (0.1 * rpm));
    assert_eq!(cut.shaft.sections[0].edges, [Some(Edge::Chamfer(1.0)), Some(Edge::Chamfer(0.5))]);
    // They do not weaken the beam.
    assert_eq!(rig(&cut).profile, rig(&sharp).profile);
}

/// Sections of 16, 12 (groove), 18 mm and a thread of 8 mm: the step from the groove to 18 mm is 3 mm, that to the thread 5 mm.
#[test]
fn an_edge_is_no_larger_than_its_step() {
    assert!(with("", ", chamfer: {front: 3, rear: 5}").shaft.sections[2].edges.iter().all(Option::is_some));
    for (front, rear, says) in [
        ("", ", chamfer: {front: 3.1, rear: 1}", "3.1 mm is more than the step of 3.000 mm"),
        ("", ", chamfer: {front: 1, rear: 5.1}", "5.1 mm is more than the step of 5.000 mm"),
        (", chamfer: 8", "", "8 mm is more than the step of 8.000 mm"),
        (", chamfer: {front: 1}, radius: {front: 1}", "", "a chamfer and a radius"),
        (", chamfer: -1", "", "too small"),
        (", chamfer: {middle: 1}", "", "middle"),
    ] {
        let told = refused(front, rear);
        assert!(told.contains(says), "{says}: {told}");
    }
    // 7 mm of groove between 16 and 18 mm: its edges are corners, so they take a radius and no chamfer.
    let groove = |keys: &str| {
        let text = text("single", "").replace("kind: groove}", &format!("kind: groove{keys}}}"));
        spanhold::input::read_job_text("hand.yaml", &text, ".".as_ref())
    };
    assert!(groove(", radius: {front: 0.2, rear: 0.2}").is_ok());
    assert!(groove(", chamfer: 0.2").is_err_and(|told| spanhold::input::render(&told).contains("no free edge")));
    assert!(groove(", radius: {rear: 3.5}").is_err());
}

/// 16 mm h6 with 0.3 mm to grind is turned to 16.3 mm h9 (0 to -0.043 mm); the surface may show lines.
#[test]
fn what_is_ground_is_turned_thicker() {
    let job = changed(&[(
        "diameter: 16, tolerance: [-0.1, 0]",
        "diameter: 16, tolerance: h6, ra: 0.4, grind: 0.3, turned_ra: 3.2",
    )]);
    let section = &job.shaft.sections[0];
    near(section.largest_mm(), 16.3);
    assert_eq!((section.tolerance.label.as_str(), section.ra_um), ("h9", Some(3.2)));
    near(section.tolerance.width_mm(), 0.043);
    let ground = section.ground.as_ref().expect("ground");
    assert_eq!((ground.diameter_mm, ground.tolerance.label.as_str(), ground.ra_um), (16.0, "h6", Some(0.4)));
    assert_eq!(section.interrupt, spanhold::job::Interrupt::Free);
    // Stiffness, depth of cut and grip are those of the turned size.
    near(rig(&job).profile.slices[0].diameter_mm, 16.3);
    near(rig(&job).held_mm(40.0), 16.3);
    let depths: f64 = rig(&job).segments().expect("can be cut")[0].travels.iter().flat_map(|t| &t.depths_mm).sum();
    near(depths, 1.85);
    let own = changed(&[(
        "diameter: 16, tolerance: [-0.1, 0]",
        "diameter: 16, tolerance: h6, grind: 0.3, turned_tolerance: [-0.1, 0]",
    )]);
    near(own.shaft.sections[0].tolerance.width_mm(), 0.1);
    for (keys, says) in [
        (", grind: 4.1", "too large"),
        (", turned_ra: 3.2", "needs `grind`"),
        (", grind: 0.05, turned_tolerance: [-0.1, 0]", "nothing left to grind"),
    ] {
        assert!(refused(keys, "").contains(says), "{says}: {}", refused(keys, ""));
    }
    // The bar of 20 mm is thick enough for 18 mm with 2 mm, and not for more.
    assert!(refused("", ", grind: 2.1").contains("20.1"), "{}", refused("", ", grind: 2.1"));
}

/// A pin of 8 mm that falls: text, CSV, drawing and notes tell both sizes and the edges.
#[test]
fn the_outputs_tell_both_sizes() {
    let mut job = super::falls::pin("", "");
    job.shaft.sections[0].edges = [Some(Edge::Chamfer(0.5)), None];
    let plan = planned(&job);
    assert_eq!(plan.shaft.sections[0].front_edge.as_deref(), Some("0.5×45°"));
    assert!(plan.shaft.sections[0].label.ends_with(", 0.5×45°"), "{}", plan.shaft.sections[0].label);
    let ground = read(
        &text("single", "")
            .replace("diameter: 16, tolerance: [-0.1, 0]", "diameter: 16, tolerance: h6, grind: 0.3, name: seat"),
    );
    let plan = spanhold::answer::advised(&ground, spanhold::planner::Advice::None).unwrap_or_else(|d| panic!("{d}"));
    assert!(plan.shaft.sections[0].label.contains("Ø16.3 h9 (ground Ø16 h6)"), "{}", plan.shaft.sections[0].label);
    assert!(
        plan.notes.iter().any(|n| n.contains("turned to Ø16.3 h9") && n.contains("ground to Ø16 h6")),
        "{:?}",
        plan.notes
    );
    let rows = spanhold::report::stages_csv(&plan);
    assert!(rows.lines().next().is_some_and(|head| head.ends_with("grip_ground_diameter_mm")), "{rows}");
    if plan.stages.iter().any(|s| s.grip.as_ref().is_some_and(|g| g.section == 1)) {
        assert!(rows.lines().any(|row| row.ends_with(",16")), "{rows}");
    }
}
