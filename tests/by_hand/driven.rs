//! Power, torque and feed force of the headstock, torque of the counter-spindle.

use super::*;
use spanhold::answer::advised;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::process::drive;
use spanhold::proof;

/// A pin of 12 mm from bar of 25 mm in one cut of 6.5 mm, in the steel of the first job. `head` and `counter` are more keys of both spindles.
fn pin(head: &str, counter: &str, more: &str) -> Job {
    let text = text("single", more)
        .replace("clamp_force: 20000}", &format!("clamp_force: 20000{head}}}"))
        .replace("    friction: 0.2\n", &format!("    friction: 0.2\n{counter}"))
        .replace("stock: {diameter: 20", "stock: {diameter: 25")
        .replace("ap_max: 1.5", "ap_max: 6.5")
        .replace("whip: 1,", "whip: 1, pick_up: 5,");
    let (from, to) = (text.find("    - {length: 50").expect("sections"), text.find("  straightness").expect("after"));
    read(&format!("{}    - {{length: 25, diameter: 12, tolerance: [-0.1, 0]}}\n{}", &text[..from], &text[to..]))
}

fn planned(job: &Job, advice: Advice) -> Plan {
    advised(job, advice).unwrap_or_else(|d| panic!("{d}"))
}

/// The edge at 90° with a nose of 0.4 mm: nearly a straight edge of 6.5 mm with a chip of 0.1 mm. `kc` there is 2000/0.1^0.25 = 3557 N/mm²,
/// on 0.65 mm² 2312 N; the thinner chip on the nose gives a little more. At a radius of 12.5 mm: 28.9 N·m.
#[test]
fn torque_and_power_of_one_deep_cut() {
    let job = pin("", "", "");
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let travel = &segments[0].travels[0];
    let straight_n = 2000.0 / 0.1f64.powf(0.25) * 0.65;
    assert!((travel.main_n / straight_n - 1.0).abs() < 0.03, "{}", travel.main_n);
    near(travel.torque_nm(), travel.main_n * 12.5 / 1000.0);
    // 120 m/min at 25 mm are 1527.9 rev/min; Fc vc/60000 over 0.8.
    let rpm = rig.segment_rpm(&segments[0], false);
    near(rpm, 120_000.0 / (PI * 25.0));
    near(rig.motor_kw(travel.torque_nm(), rpm), travel.main_n * 120.0 / 60_000.0 / 0.8);
    // Part-off: 3 mm at a feed of 0.04 mm, with kc at a chip of 0.04 mm.
    let part_off = segments.last().expect("part-off");
    near(part_off.travels[0].main_n, 2000.0 / 0.04f64.powf(0.25) * 0.04 * 3.0);
    // A groove wider than 3 mm is plunged 3 mm at a time.
    let grooved = super::job("single", "");
    let segments = super::rig(&grooved).segments().expect("can be cut");
    let groove = segments.iter().find(|s| s.work == Work::Plunge).expect("a groove");
    near(groove.travels[0].main_n, 2000.0 / 0.04f64.powf(0.25) * 0.04 * 3.0);
    // 3000 N·m at 1 rev/min and 1 N·m at 3000 rev/min are the same power.
    near(drive::power_kw(3000.0, 1.0), drive::power_kw(1.0, 3000.0));
}

/// Without the keys the plan tells what is needed, and that the machine file does not give it.
#[test]
fn the_plan_tells_what_the_headstock_needs() {
    let job = pin("", "", "");
    let plan = planned(&job, Advice::None);
    let needs = plan.drive.expect("told");
    let main_n = rig(&job).segments().expect("can be cut")[0].travels[0].main_n;
    near(needs.power_kw, main_n * 120.0 / 60_000.0 / 0.8);
    near(needs.torque_nm, main_n * 12.5 / 1000.0);
    assert_eq!((needs.power_section, needs.torque_section, needs.feed_force_section), (Some(1), Some(1), Some(1)));
    let note = plan.notes.iter().find(|n| n.contains("headstock.power")).expect("a note");
    assert!(note.contains(&format!("{:.1} kW", needs.power_kw)) && note.contains("check the machine"), "{note}");
    let enough = planned(&pin(", power: 15, torque: 100, feed_force: 5000", "", ""), Advice::None);
    assert_eq!((enough.segments, enough.drive), (plan.segments, plan.drive));
    assert!(enough.notes.iter().all(|n| !n.contains("check the machine")));
}

/// With 4 kW at 0.8 the cut may have 3.2 kW: `n = 3.2 kW · 60/(2π T)`. Everything else stays.
#[test]
fn too_little_power_lowers_the_speed() {
    let job = pin(", power: 4", "", "");
    let plan = planned(&job, Advice::None);
    let full = planned(&pin("", "", ""), Advice::None);
    assert_eq!(plan.verdict, Verdict::Feasible);
    let (cut, free) = (&plan.segments[0], &full.segments[0]);
    let torque = full.drive.expect("told").torque_nm;
    near(cut.rpm, 3200.0 * 60.0 / (2.0 * PI * torque));
    assert!(cut.rpm < free.rpm);
    near((cut.time_s - 2.0) / (free.time_s - 2.0), free.rpm / cut.rpm);
    assert_eq!((cut.slowed_by.as_deref(), cut.cuts[0].rpm), (Some("spindle_power"), cut.rpm));
    near(plan.drive.expect("told").power_kw, 4.0);
    assert!(plan.notes.iter().any(|n| n.contains("lowers the speed")), "{:?}", plan.notes);
    // The proof finds a speed that the power does not allow, by its own sum of forces.
    let breaches = proof::prove(&full, &job).breaches;
    assert!(breaches.iter().any(|b| b.rule == "spindle_power" && b.text.contains("4 kW")), "{breaches:?}");
    let mut lie = plan.clone();
    lie.drive.as_mut().expect("told").power_kw = 3.0;
    assert!(proof::prove(&lie, &job).breaches.iter().any(|b| b.rule == "drive"));
    assert!(proof::prove(&plan, &job).holds());
}

/// The first travel takes half of the depth, the last one the finishing depth of 0.25 mm: only the first is lowered.
#[test]
fn each_travel_has_its_own_speed() {
    let mut job = pin(", power: 2", "", "");
    job.cutting.ap_max_mm = 3.2;
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let [first, second, last] = segments[0].travels.as_slice() else { panic!("three travels") };
    near(first.depths_mm[0], 3.125);
    let rpm = |t| rig.travel_rpm(&segments[0], t, false);
    near(rpm(first), 2.0 / rig.motor_kw(first.torque_nm(), 1.0));
    near(rpm(last), 120_000.0 / (PI * 12.5));
    assert!(
        rpm(first) < rig.wanted_rpm(&segments[0], rig.job.cutting.vc_m_per_min, 25.0, false)
            && rpm(second) > rpm(first)
    );
    near(rig.segment_rpm(&segments[0], false), rpm(last));
    // 25 mm in each travel at 0.1 mm, and 2 s besides for each.
    let time = rig.piece_time(&segments[0], 25.0, false, f64::INFINITY);
    let by_hand: f64 = [first, second, last].into_iter().map(|t| 60.0 * 25.0 / (0.1 * rpm(t))).sum();
    near(time.total_s(), by_hand + 6.0);
}

/// What no speed mends is refused, with changes that mend it; each of them is made.
#[test]
fn too_little_torque_or_feed_force_is_refused() {
    for (keys, rule, change) in [
        (", torque: 20", "spindle_torque", "headstock.torque"),
        (", feed_force: 500", "feed_force", "headstock.feed_force"),
        (", power: 1", "spindle_power", "headstock.power"),
    ] {
        let job = pin(keys, "", "");
        let plan = planned(&job, Advice::Wanted);
        let shortfall = plan.shortfall.as_ref().unwrap_or_else(|| panic!("{keys} is enough"));
        assert_eq!(shortfall.blocked_by, rule);
        let names: Vec<&str> = shortfall.changes.iter().map(|c| c.change.as_str()).collect();
        assert!(names.contains(&change) && names.contains(&"smaller_ap_max"), "{rule}: {names:?}");
        // A plan for a stronger machine is refused by the proof.
        let breaches = proof::prove(&planned(&pin("", "", ""), Advice::None), &job).breaches;
        assert!(breaches.iter().any(|b| b.rule == rule), "{rule}: {breaches:?}");
    }
}

/// A drill of 10 mm needs `kc f d²/8` of the spindle that turns it: 3.9 N·m in this steel.
#[test]
fn work_on_an_end_needs_torque_too() {
    let drill = |end: &str| format!("features: [{{axial_hole: 8, depth: 10, end: {end}}}]");
    let job = pin("", "", &drill("front"));
    let needed = rig(&job).tasks()[0].torque_nm;
    let blocked = |job: &Job| planned(job, Advice::None).shortfall.map(|s| (s.blocked_by, s.text));
    let few = format!("{:.3}", 0.9 * needed);
    let (by, text) = blocked(&pin(&format!(", torque: {few}"), "", &drill("front"))).expect("refused");
    assert!(by == "spindle_torque" && text.contains("hole Ø8"), "{text}");
    let rear = |torque: f64| pin("", &format!("    torque: {torque}\n"), &drill("back"));
    let told = rig(&rear(0.9 * needed)).rear_work_not_driven().expect("refused");
    assert_eq!((told.rule, told.at_mm), ("counter_spindle_torque", 25.0));
    assert!(rig(&rear(1.1 * needed)).rear_work_not_driven().is_none());
    assert!(blocked(&rear(0.9 * needed)).is_some());
}
