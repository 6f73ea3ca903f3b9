//! What a plan tells is what its proof finds, for jobs of every kind: with and without a bush, all objectives, other work on the part.

use crate::{jobs, read};
use spanhold::job::plan::{Plan, Verdict};
use spanhold::proof;

/// Random jobs that are planned here. `SPANHOLD_JOBS=5000` asks for more of them.
const JOBS: u64 = 150;
const FIRST_SEED: u64 = 60_000;

/// A random job with an objective, and every fifth without a bush.
fn job_text(seed: u64) -> String {
    let text = if seed % 3 == 1 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
    let objective = ["time", "fewest_hand_overs", "margin"][(seed / 3 % 3) as usize];
    let text = format!("{text}objective: {objective}\n");
    if seed % 5 > 0 {
        return text;
    }
    format!("{text}holding: no_bush\n").replace("machine:\n", "machine:\n  no_bush: {max_bar: 12, collet_gap: 2}\n")
}

#[test]
fn a_stored_plan_is_proven_with_the_margin_it_tells() {
    let jobs = std::env::var("SPANHOLD_JOBS").ok().and_then(|n| n.parse().ok()).unwrap_or(JOBS);
    let (mut proven, mut without_bush, mut refused) = ([0; 3], 0, 0);
    for seed in FIRST_SEED..FIRST_SEED + jobs {
        let text = job_text(seed);
        let Some(job) = read(&text) else { continue };
        let plan = spanhold::answer::answer(&job).unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
        if plan.verdict == Verdict::Infeasible {
            refused += 1;
            continue;
        }
        let stored = serde_json::to_string(&plan).expect("plain data");
        let plan: Plan = serde_json::from_str(&stored).expect("its own text");
        let found = proof::prove(&plan, &job);
        let told = proof::described(&plan, &job, &found);
        assert!(found.holds() && told.is_empty(), "seed {seed}: {:?} {told:?}\n{text}", found.breaches);
        // The plan's own states are among those its margin comes from.
        let (margin, proof) = (plan.margin.expect("a margin"), 1.0 - found.utilisation);
        assert!(margin <= proof + 1e-9 && margin >= proof - 0.01, "seed {seed}: {margin} {proof}\n{text}");
        proven[(seed / 3 % 3) as usize] += 1;
        without_bush += usize::from(seed % 5 == 0);
    }
    println!("{proven:?} {without_bush} without a bush, {refused} refused");
    assert!(
        proven.iter().all(|n| *n >= 10) && without_bush >= 4 && refused >= 20,
        "{proven:?} {without_bush} {refused}"
    );
}
