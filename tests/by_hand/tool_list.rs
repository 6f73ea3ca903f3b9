//! Which tool of the list takes a cut, and what follows from it.

use super::*;

/// The job with tools of its own. 160 m/min on 20 mm are 2546 rev/min.
fn with(tools: &str) -> Job {
    read(&format!("{}tool_list:\n{tools}", text("single", "")))
}

fn names(rig: &Rig<'_>, segment: &Segment) -> Vec<String> {
    segment.travels.iter().flat_map(|t| rig.travel_tools(segment, t)).map(|tool| tool.name).collect()
}

#[test]
fn the_tool_that_is_quickest_takes_each_cut() {
    let job = with(
        "  - {name: coarse, kind: turning, nose_radius: 0.8, approach_angle: 95, ap_max: 2.5, rough: {vc: 160, feed: 0.2}}
  - {name: slow, kind: turning, ap_max: 2.5, rough: {vc: 160, feed: 0.1}}
  - {name: fine, kind: turning, nose_radius: 0.2, ap_max: 1, finish: {vc: 200, feed: 0.05}}
  - {name: finer, kind: turning, nose_radius: 0.2, ap_max: 1, finish: {vc: 200, feed: 0.04}}
  - {name: groover 2, kind: grooving, width: 2, feed: 0.03}
  - {name: groover 4, kind: grooving, width: 4, feed: 0.02}
  - {name: groover 9, kind: grooving, width: 9, feed: 0.05}
  - {name: blade, kind: part_off, vc: 90, feed: 0.06}
",
    );
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    // Ø16 from Ø20: 2 mm. No finishing tool takes 2 mm, so 1.75 mm are roughed by the quicker tool and 0.25 mm by the quicker finisher.
    let first = &segments[0];
    assert_eq!(names(&rig, first), ["coarse", "fine"]);
    let [rough, last] = &first.travels[..] else { panic!("{:?}", first.travels) };
    assert_eq!((rough.depths_mm.as_slice(), last.depths_mm.as_slice()), (&[1.75][..], &[0.25][..]));
    near(rough.feed_mm, 0.2);
    near(last.feed_mm, 0.05);
    near(rig.travel_rpm(first, rough, false), 1000.0 * 160.0 / (PI * 20.0));
    near(rig.travel_rpm(first, last, false), 1000.0 * 200.0 / (PI * 16.5));
    // Its own edge makes the force: a nose of 0.8 mm at 95 degrees, not the 0.4 mm at 90 degrees of `cutting`.
    let edge = spanhold::mechanics::cutting::Edge { nose_radius_mm: 0.8, approach_rad: 95f64.to_radians() };
    let own = spanhold::mechanics::cutting::cut(&rig.resistance, &edge, 1.75, 0.2);
    near(rough.net_radial_n, own.passive_n);
    assert!((own.passive_n - forces(&rig, &[1.75], 0.2).net_radial_n).abs() > 1.0);
    // The groove of 7 mm takes the widest tool that goes in; the part-off its blade.
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    assert_eq!(names(&rig, groove), ["groover 4"]);
    near(groove.travels[0].feed_mm, 0.02);
    let off = segments.last().expect("part-off");
    assert_eq!(names(&rig, off), ["blade"]);
    near(off.travels[0].feed_mm, 0.06);
    near(rig.segment_rpm(off, true), 1000.0 * 90.0 / (PI * 20.0));
    near(checks::torque::part_off_nm(&rig), rig.resistance.specific_n_per_mm2(0.06) * 0.06 * 3.0 * 10.0 / 1000.0);
}

#[test]
fn one_tool_that_roughs_and_finishes_takes_the_whole_depth_if_it_may() {
    let both = "  - {name: both, kind: turning, ap_max: 2, vc: 100, feed: 0.1}\n";
    let job = with(both);
    let found = rig(&job).segments().expect("can be cut");
    assert_eq!((names(&rig(&job), &found[0]), found[0].travels.len()), (vec!["both".to_owned()], 1));
    near(found[0].travels[0].vc_m_per_min, 100.0);
    // With 1.9 mm it may not: it roughs 1.75 mm and finishes 0.25 mm.
    let job = with(&both.replace("ap_max: 2", "ap_max: 1.9"));
    let found = rig(&job).segments().expect("can be cut");
    let depths: Vec<f64> = found[0].travels.iter().flat_map(|t| t.depths_mm.clone()).collect();
    assert_eq!(depths, [1.75, 0.25]);
    // In another material it has other cuts; what they leave out is as in any material.
    let own = "  - {name: both, kind: turning, ap_max: 2, vc: 100, feed: 0.1, materials: {C45: {vc: 150}, 1.4305: {rough: {vc: 80}}}}\n";
    let job = |material: &str| {
        let text = format!("{}tool_list:\n{own}", text("single", ""));
        let map = "{name: test steel, kc11: 2000, mc: 0.25, e_gpa: 200, density: 8000, poisson: 0.3}";
        assert!(text.contains(map));
        read(&text.replace(map, material))
    };
    let steel = job("S45C");
    let tool = &steel.tool_list[0].cuts;
    let data = |vc: f64| Some(spanhold::job::CutData { vc_m_per_min: Some(vc), feed_mm: Some(0.1) });
    assert_eq!((tool.rough, tool.finish), (data(150.0), data(150.0)));
    let stainless = job("1.4305");
    assert_eq!((stainless.tool_list[0].cuts.rough, stainless.tool_list[0].cuts.finish), (data(80.0), data(100.0)));
}

#[test]
fn what_the_list_does_not_have_is_as_in_cutting_and_told() {
    let job = with("  - {name: fine, kind: turning, station: T2, nose_radius: 0.2, ap_max: 3, feed: 0.05}\n");
    let plan = spanhold::answer::advised(&job, spanhold::planner::Advice::Wanted).expect("no defect");
    let listed: Vec<(&str, bool, Option<&str>)> =
        plan.tool_list.iter().map(|t| (t.tool.as_str(), t.listed, t.station.as_deref())).collect();
    assert!(listed.contains(&("fine", true, Some("T2"))), "{listed:?}");
    assert!(listed.contains(&("part-off tool", false, None)), "{listed:?}");
    assert!(plan.notes.iter().any(|n| n.starts_with("Not in the tool list: ")), "{:?}", plan.notes);
    // The proof knows the tools: a plan that tells another one, or another feed, is refused.
    let refused = |change: fn(&mut spanhold::job::plan::TravelCut)| {
        let mut told = plan.clone();
        let cut = told.segments.iter_mut().find_map(|s| s.cuts.first_mut()).expect("a cut");
        change(cut);
        spanhold::proof::prove(&told, &job).breaches.iter().any(|b| b.rule == "segments")
    };
    assert!(spanhold::proof::prove(&plan, &job).holds());
    assert!(refused(|cut| cut.tools = vec!["another".into()]));
    assert!(refused(|cut| cut.feed_mm *= 1.01));
    assert!(refused(|cut| cut.rpm *= 1.01));
}

#[test]
fn less_speed_is_less_for_all_tools() {
    let mut job = with("  - {name: fine, kind: turning, vc: 90}\n  - {name: blade, kind: part_off}\n");
    let before = rig(&job).segments().expect("can be cut")[0].travels[0].vc_m_per_min;
    job.set_vc(0.5 * job.cutting.vc_m_per_min);
    near(rig(&job).segments().expect("can be cut")[0].travels[0].vc_m_per_min, 0.5 * before);
}
