//! Every answer is a proven plan or a reason; never a panic, never a defect.

use crate::{jobs, read};
use spanhold::job::plan::{Plan, Verdict};
use spanhold::proof;

/// Seeds of small jobs that are planned here and tampered with elsewhere.
pub const SEEDS: std::ops::Range<u64> = 10_000..10_160;

/// The answer to a job; fails where the program would call it a fault of ours.
pub fn answer(text: &str) -> Option<(spanhold::job::Job, Plan)> {
    let job = read(text)?;
    let plan = spanhold::answer::answer(&job).unwrap_or_else(|d| panic!("{d}\n{text}"));
    Some((job, plan))
}

#[test]
fn every_plan_is_proven_and_adds_up() {
    let (mut feasible, mut infeasible) = (0, 0);
    for seed in SEEDS {
        let text = jobs::small_job(seed);
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
        let total =
            t.cutting + t.segments + t.hand_overs + t.regrips + t.features + t.part_off + t.back_work + t.penalties;
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
