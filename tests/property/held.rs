//! What a grip holds, where the places of shoulders are sums that do not round: counted by hand.

use crate::plans::answer;
use spanhold::job::Collet;
use spanhold::job::plan::{CheckResult, Plan, Stage, Verdict};
use spanhold::process::Rig;
use spanhold::proof;

/// A pin with a seat in front of a head that the collet does not hold. Lengths are in tenths of a millimetre.
fn pin(seed: u64) -> String {
    let part = |step: u64, from: u64, many: u64| (from + seed * step % many) as f64 / 10.0;
    let (front, middle, seat, head) = (part(37, 31, 60), part(53, 41, 50), part(71, 83, 3), part(13, 61, 20));
    let (hold, force) = (8.3 - 0.1 * (seed % 3) as f64, 3_000 + seed * 97 % 3_000);
    format!(
        "shaft:
  material: C45
  sections: [{{length: {front}, diameter: 7.5}}, {{length: {middle}, diameter: 7.8}}, {{length: {seat}, diameter: 8.6}}, {{length: {head}, diameter: 12}}]
  back_work: [{{name: bore, radial_force: 4, axial_force: 90, torque: 0.3, time_s: 5, tolerance: 0.5}}]
stock: {{diameter: 13, bar_length: 3000}}
machine:
  bush: {{max_bar: 16, land: 12, gap: 0.5, stiffness: 60}}
  headstock: {{nearest: 32, stroke: 66, hold: 15, stiffness: 30, max_rpm: 12000, regrip_s: 4}}
  counter_spindle:
    {{nearest: 3, farthest: 90, bore: 14, bore_depth: 200, stiffness: 30, max_rpm: 12000, hand_over_s: 3, collets: [
      {{name: A, range: [8.4, 8.7], hold: {hold:.1}, passes: 8.8, clamp_force: {force}}}]}}
  cross_tool_reach: 10
  part_off: {{width: 1, time_s: 4}}
cutting: {{vc: 60, feed: 0.05}}
limits: {{stiffness_min: 0.01, sag: 0.05, whip: 1}}
"
    )
}

fn check<'a>(stage: &'a Stage, name: &str) -> &'a CheckResult {
    stage.checks.iter().find(|c| c.check == name).expect("looked at")
}

fn near(found: f64, by_hand: f64) {
    assert!((found - by_hand).abs() <= 1e-9 * by_hand, "{found} {by_hand}");
}

fn gripped(plan: &Plan) -> impl Iterator<Item = &Stage> {
    plan.stages.iter().filter(|s| s.grip.is_some())
}

#[test]
fn a_grip_holds_the_one_section_it_lies_on_and_counts_with_it() {
    let (mut plans, mut at_shoulders) = (0, 0);
    for seed in 0..300 {
        let text = pin(seed);
        let (job, plan) = answer(&text).expect("a valid job");
        let counter = job.machine.counter_spindle.as_ref().expect("has one");
        let collet: &Collet = &counter.collets[0];
        if plan.verdict == Verdict::Infeasible {
            continue;
        }
        plans += 1;
        for stage in gripped(&plan) {
            let grip = stage.grip.as_ref().expect("gripped");
            assert!(collet.holds(grip.diameter_mm), "seed {seed}: {grip:?}\n{text}");
            let section = &job.shaft.sections[grip.section - 1];
            let inside = grip.from_mm >= section.from_mm - 1e-9 && grip.to_mm <= section.to_mm + 1e-9;
            assert!(inside && section.largest_mm() == grip.diameter_mm, "seed {seed}: {grip:?}\n{text}");
            at_shoulders += usize::from((grip.to_mm - section.to_mm).abs() < 1e-9);
        }
        let last = plan.stages.last().expect("stages");
        // µ F d/2; and √(F² + (2T/d)²) with half as much again.
        near(check(last, "torque").limit, counter.friction * collet.clamp_force_n * 8.6 / 2000.0);
        near(check(last, "push").demand, 1.5 * 90f64.hypot(2000.0 * 0.3 / 8.6));
        near(check(last, "push").limit, counter.friction * collet.clamp_force_n);
    }
    assert!(plans >= 60 && at_shoulders >= 20, "{plans} {at_shoulders}");
}

/// The next number above a shoulder is still that shoulder.
#[test]
fn a_nose_a_hair_behind_its_shoulder_holds_the_section_in_front() {
    let (job, plan) =
        (0..300).filter_map(|seed| answer(&pin(seed))).find(|(_, p)| p.verdict == Verdict::Feasible).expect("one");
    let rig = Rig::new(&job, job.machine.collet("A"));
    let shoulder = job.shaft.sections[2].to_mm;
    for nose_mm in [shoulder.next_down(), shoulder, shoulder.next_up(), shoulder + 1e-7] {
        assert_eq!((rig.held_section(nose_mm), rig.held_mm(nose_mm)), (2, 8.6), "{nose_mm}");
    }
    // A plan that tells the diameter behind the shoulder is refused, with the check that it hid.
    let mut told = plan.clone();
    for grip in told.stages.iter_mut().filter_map(|s| s.grip.as_mut()) {
        (grip.diameter_mm, grip.section) = (12.0, 4);
    }
    let verified = proof::prove(&told, &job);
    assert!(
        verified.breaches.iter().any(|b| b.rule == "grip" && b.text.contains("8.6 mm of section 3")),
        "{verified:?}"
    );
}
