//! The bar feeder as the limit of the headstock's speeds.

use super::falls::{pin, planned};
use super::*;
use spanhold::proof;

/// The first job with a bar feeder of `rpm`.
fn with_feeder(rpm: u32, more: &str) -> Job {
    let text = text("single", more);
    read(&text.replace("  counter_spindle:\n", &format!("  bar_feed: {{max_rpm: {rpm}}}\n  counter_spindle:\n")))
}

/// Headstock 5000, counter-spindle 3000 rev/min: the lowest counts as long as the bar is behind the headstock.
#[test]
fn the_lowest_of_spindles_and_bar_feeder_counts() {
    for (feeder, free, gripped) in [(2000, 2000.0, 2000.0), (4000, 4000.0, 3000.0), (9000, 5000.0, 3000.0)] {
        let job = with_feeder(feeder, "");
        assert_eq!((rig(&job).machine_rpm(false), rig(&job).machine_rpm(true)), (free, gripped), "{feeder}");
    }
    // Who lowers the last travel of the first section, before which the bar is 16.5 mm: 120 m/min ask for 2315 rev/min.
    for (feeder, slows) in [(2300, true), (2320, false), (5000, false)] {
        let job = with_feeder(feeder, "");
        let rig = rig(&job);
        let segments = rig.segments().expect("can be cut");
        assert_eq!(
            [rig.bar_feed_slows(&segments[0], false), rig.bar_feed_slows(&segments[0], true)],
            [slows; 2],
            "{feeder}"
        );
    }
    // Drills of 1.5 mm, 15 m/min: 3183 rev/min, 0.018 mm a turn over 4 mm and a point of 0.45 mm, 4 s besides. In front the bar
    // turns, behind only the part does, at the counter-spindle's 3000.
    let drill = |end: &str| format!("features: [{{axial_hole: 1.5, depth: 4, end: {end}}}]");
    let job = with_feeder(2000, &drill("front"));
    near(rig(&job).tasks()[0].time_s, 60.0 * 4.45 / (0.018 * 2000.0) + 4.0);
    let job = with_feeder(2000, &drill("back"));
    near(rig(&job).back[0].work.time_s, 60.0 * 4.45 / (0.018 * 3000.0) + 4.0);
}

/// 20 mm at 0.1 mm/rev and 2000 rev/min: 6 s, 2 s for the travel, 8 s for part-off. The plan says what limits the speed.
#[test]
fn the_plan_names_the_bar_feeder() {
    let fed = |rpm: Option<f64>| {
        let mut job = pin("", "");
        job.machine.bar_feed_max_rpm = rpm;
        job
    };
    let (plain, slow) = (fed(None), fed(Some(2000.0)));
    let plan = planned(&slow);
    near(plan.pace_s(), 6.0 + 2.0 + 8.0);
    assert_eq!((plan.segments[0].rpm, plan.part_off_rpm), (2000.0, Some(2000.0)));
    assert_eq!(plan.segments[0].slowed_by.as_deref(), Some("bar_feed"));
    // A feeder as fast as the headstock changes nothing.
    let free = planned(&plain);
    assert_eq!(free.segments[0].slowed_by, None);
    assert_eq!(planned(&fed(Some(5000.0))), free);
    // The proof finds it by itself.
    let breaches = proof::prove(&free, &slow).breaches;
    assert!(breaches.iter().any(|b| b.rule == "bar_feed" && b.text.contains("at most 2000")), "{breaches:?}");
}
