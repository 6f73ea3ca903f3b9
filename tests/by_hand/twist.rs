//! Torque of part-off between both spindles, worked out on paper: `L/(G Ip)` with `Ip = π d⁴/32` and `G = E/(2 (1 + ν))`.

use super::*;
use spanhold::process::checks::{push, torque};

fn with(more: &str) -> Job {
    changed(&[("    friction: 0.2\n", &format!("    friction: 0.2\n{more}"))])
}

/// Twist of a piece of the test steel under 1 N·mm, rad.
fn twist(diameter_mm: f64, length_mm: f64) -> f64 {
    let g = 200_000.0 / 2.6;
    length_mm * 32.0 / (g * PI * diameter_mm.powi(4))
}

/// From the nose at 100 mm: 17 mm of 18 mm, 12 mm of the thread's core. Behind the cut 2 mm of gap and the headstock at its farthest,
/// 360 mm, of the 20 mm bar.
fn sides(drive: f64) -> (f64, f64) {
    let core = 8.0 - 1.226_87 * 1.25;
    (twist(18.0, 17.0) + twist(core, 12.0) + drive, twist(20.0, 362.0) + drive)
}

const WHOLE: f64 = 2000.0 * 2.236_067_977_499_79 * 0.04 * 3.0 * 0.010;

#[test]
fn without_a_stiffness_the_grip_carries_all_and_is_told_its_share() {
    let job = with("");
    let rig = rig(&job);
    near(torque::part_off_nm(&rig), WHOLE);
    near(torque::demand_nm(&rig, 100.0), WHOLE);
    assert_eq!(rig.shared_nm(100.0, WHOLE), None);
    let ((counter, headstock), half) = (sides(0.0), twist(20.0, 1.5));
    let share = (headstock + half) / (counter + headstock + 2.0 * half);
    assert!((share - 0.245).abs() < 0.005, "{share}");
    near(rig.share_untold(100.0).expect("it is not counted"), share);
}

/// 5000 N·m/rad: 2e-7 rad for 1 N·mm at each drive. The grip's side is softer, so it gets less than half, at any depth.
#[test]
fn with_a_stiffness_both_sides_share() {
    let job = with("    torsional_stiffness: 5000\n");
    let rig = rig(&job);
    let (counter, headstock) = sides(2e-7);
    let at = |part: f64| {
        let half = twist(20.0 * part, 1.5);
        WHOLE * part * (headstock + half) / (counter + headstock + 2.0 * half)
    };
    let worst = (1..=200).map(|i| at(f64::from(i) / 200.0)).fold(0.0, f64::max);
    near(torque::part_off_on_nm(&rig, 100.0), worst);
    assert!(worst >= at(1.0) && worst < 0.5 * WHOLE, "{worst}");
    near(torque::find(&rig, 100.0, 18.0).expect("a collet").demand, 1.5 * worst);
    assert_eq!(rig.share_untold(100.0), None);
    // Work on the rear end is never shared.
    let text = text("single", "back_work: [{name: ream, torque: 8, time_s: 5}]").replacen(
        "    friction: 0.2\n",
        "    friction: 0.2\n    torsional_stiffness: 5000\n",
        1,
    );
    near(torque::demand_nm(&self::rig(&read(&text)), 100.0), 8.0);
}

/// A hard counter-spindle side beside a soft headstock side: nearly all of the torque at first. A soft one: the share rises to one half
/// while the neck gets thin, and the worst depth lies between.
#[test]
fn the_worst_depth_of_the_plunge_counts() {
    let deep = |front: f64, rear: f64, half: f64| {
        (1..=200)
            .map(|i| f64::from(i) / 200.0)
            .map(move |part| {
                let neck = half / part.powi(4);
                (part, part * (rear + neck) / (front + rear + 2.0 * neck))
            })
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .expect("depths")
    };
    // The program, on bar of the finished diameter held right at the part-off.
    let job = with("    torsional_stiffness: 10000000\n");
    let rig = rig(&job);
    let near_nose = rig.sides_of_part_off(128.9, 1e-10);
    let (part, share) = deep(near_nose.counter, near_nose.headstock, twist(20.0, 1.5));
    near(rig.shared_nm(128.9, 1.0).expect("given"), share);
    assert!(part > 0.99 && share > 0.9, "{part} {share}");
    // A counter-spindle side a hundred times as soft: the worst is a thin neck, with four times the torque of the start.
    let (part, share) = deep(100.0, 1.0, 0.02);
    assert!(part < 0.2 && share > 0.035 && share < 0.045, "{part} {share}");
    near(deep(100.0, 1.0, 0.0).1, 1.0 / 101.0);
}

/// Half a degree over all springs in a row, while the neck is whole: `φ/(sum of twists)`.
#[test]
fn a_phase_error_twists_the_bar_all_the_time() {
    let job = with("    torsional_stiffness: 5000\n    phase_error: 0.5\n");
    let rig = rig(&job);
    let (counter, headstock) = sides(2e-7);
    let standing = 0.5f64.to_radians() / (counter + headstock + 2.0 * twist(20.0, 1.5)) / 1000.0;
    near(rig.shared_nm(100.0, 0.0).expect("given"), standing);
    assert!(rig.shared_nm(100.0, WHOLE).expect("given") > standing + 0.2 * WHOLE, "both add");
}

#[test]
fn a_phase_error_alone_is_refused() {
    let text = text("single", "").replacen("    friction: 0.2\n", "    friction: 0.2\n    phase_error: 0.5\n", 1);
    let told = spanhold::input::read_job_text("hand.yaml", &text, ".".as_ref()).expect_err("no stiffness");
    let told = spanhold::input::render(&told);
    assert!(told.contains("torsional_stiffness") && told.contains("hand.yaml, line 23,"), "{told}");
}

/// A force that the counter-spindle keeps must be carried by the same friction as the torque of part-off.
#[test]
fn a_kept_force_pushes_on_the_grip() {
    let job = with("    axial_load: -400\n");
    let found = push::back(&rig(&job), 100.0, 18.0).expect("it pushes");
    near(found.demand, 1.5 * 400f64.hypot(2000.0 * WHOLE / 18.0));
    assert!(push::back(&rig(&with("")), 100.0, 18.0).is_none());
}
