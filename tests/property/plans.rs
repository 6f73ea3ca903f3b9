//! Every answer is a proven plan or a reason; never a panic, never a defect.

use crate::{jobs, read};
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof;

/// Seeds of small jobs that are planned here and tampered with elsewhere.
pub const SEEDS: std::ops::Range<u64> = 10_000..10_160;

/// The answer to a job, without what would help (`sets` looks at that); fails where the program would call it a fault of ours.
pub fn answer(text: &str) -> Option<(spanhold::job::Job, Plan)> {
    let job = read(text)?;
    let plan = spanhold::answer::advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}"));
    Some((job, plan))
}

#[test]
fn every_plan_is_proven_and_adds_up() {
    let (mut feasible, mut infeasible) = (0, 0);
    for seed in SEEDS {
        let text = if seed % 3 == 0 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
        let Some((job, plan)) = answer(&text) else { continue };
        if plan.verdict == Verdict::Infeasible {
            infeasible += 1;
            let shortfall = plan.shortfall.as_ref().unwrap_or_else(|| panic!("no reason given\n{text}"));
            assert!(!shortfall.blocked_by.is_empty() && !shortfall.text.is_empty(), "seed {seed}: no reason\n{text}");
            assert!(shortfall.farthest_mm >= 0.0 && shortfall.farthest_mm <= job.parted_at_mm(), "seed {seed}\n{text}");
            continue;
        }
        feasible += 1;
        let verified = proof::prove(&plan, &job);
        assert!(verified.holds(), "seed {seed}: {:?}\n{text}", verified.breaches);
        let length: f64 = plan.segments.iter().map(|s| s.to_mm - s.from_mm).sum();
        assert!((length - job.shaft.length_mm()).abs() < 1e-6, "seed {seed}: pieces of {length} mm\n{text}");
        let t = &plan.time_s;
        let total = t.cutting + t.segments + t.hand_overs + t.regrips + t.features + t.part_off + t.back_work;
        assert!((total - t.total).abs() < 1e-9 * total, "seed {seed}\n{text}");
        // The proof looks at other states than the plan, so its worst may be a little better; and where a bound on
        // `chatter` is enough it looks no closer, so it may be worse.
        let margin = plan.margin.unwrap_or(f64::NAN);
        assert!(1.0 - verified.utilisation < margin + 0.02, "seed {seed}: {margin} {}", verified.utilisation);
        // Stored and read again it is the same plan.
        let stored = serde_json::to_string(&plan).expect("plain data");
        assert_eq!(serde_json::from_str::<Plan>(&stored).expect("its own text"), plan, "seed {seed}");
    }
    assert!(feasible >= 40 && infeasible >= 40, "{feasible} {infeasible}");
}

/// The safest plan is sought whatever it takes, and found wherever there is a fast one.
#[test]
fn the_safest_plan_is_found_wherever_there_is_one() {
    let mut found = 0;
    for seed in SEEDS.start..SEEDS.start + 60 {
        let text = jobs::small_job(seed);
        let Some((_, fast)) = answer(&text) else { continue };
        let (job, safe) = answer(&format!("{text}objective: margin\n")).expect("the same job");
        assert_eq!(safe.verdict, fast.verdict, "seed {seed}\n{text}");
        if safe.verdict == Verdict::Feasible {
            assert!(proof::prove(&safe, &job).holds(), "seed {seed}\n{text}");
            found += 1;
        }
    }
    assert!(found >= 10, "{found}");
}

/// A shaft whose cross hole comes under its tool 4 mm beyond the part-off, at 70 mm.
fn rear_hole(thrust_n: u32) -> String {
    format!(
        "shaft:
  material: C45
  sections: [{{length: 30, diameter: 7.5}}, {{length: 35, diameter: 8.6}}]
  features: [{{cross_hole: 1.5, at: 60, thrust: {thrust_n}}}]
stock: {{diameter: 9, bar_length: 3000}}
machine:
  bush: {{max_bar: 12, land: 12, gap: 0.5, stiffness: 60}}
  headstock: {{nearest: 32, stroke: 66, hold: 15, stiffness: 30, max_rpm: 12000, regrip_s: 4}}
  counter_spindle:
    {{nearest: 3, farthest: 90, bore: 14, bore_depth: 200, stiffness: 30, max_rpm: 12000, hand_over_s: 3, collets: [
      {{name: A, range: [8.4, 8.7], hold: 8, passes: 8.8, clamp_force: 9000}}]}}
  cross_tool_reach: 10
  part_off: {{width: 1, time_s: 4}}
cutting: {{vc: 60, feed: 0.05}}
limits: {{stiffness_min: 0.01, sag: 0.01}}
"
    )
}

/// There is no station for a moment beyond the part-off, so its thrust is not looked at while planning; where it is too
/// much the finished plan breaks, and a valid job is called a fault of ours.
#[test]
fn regress_a_hole_near_the_rear_end_is_no_fault_of_ours() {
    let (_, plan) = answer(&rear_hole(20_000)).expect("a valid job");
    assert_eq!(plan.verdict, Verdict::Infeasible);
}

/// Neither planner nor proof asks whether headstock and counter-spindle get to such a moment at all.
#[test]
fn regress_a_hole_near_the_rear_end_is_within_the_stroke() {
    let (job, plan) = answer(&rear_hole(5)).expect("a valid job");
    assert_eq!(plan.verdict, Verdict::Feasible, "{:?}", plan.shortfall);
    let hole = plan.features.iter().filter_map(|f| f.turned_mm).fold(0.0, f64::max);
    assert!(hole > job.parted_at_mm(), "hole at {hole}, parted at {}", job.parted_at_mm());
    let last = plan.headstock_regrips_mm.last().copied().unwrap_or(0.0);
    assert!(hole - last <= job.machine.headstock.stroke_mm, "hole at {hole}, last re-grip at {last}");
}

/// The placing program keeps neither a re-grip inside a stage between the stage's ends nor a stage longer than nothing:
/// one moves onto a hand-over, the other vanishes, and the proof then refuses the plan.
#[test]
fn regress_placing_keeps_stops_apart_and_in_their_stage() {
    for seed in [200_000, 200_529] {
        let (_, plan) = answer(&jobs::small_job(seed)).expect("a valid job");
        assert_eq!(plan.verdict, Verdict::Feasible, "seed {seed}");
    }
}
