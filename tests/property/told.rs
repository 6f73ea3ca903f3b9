//! What a plan tells is what its proof finds, for jobs of every kind: with and without a bush, all objectives, other work on the part.

use crate::{jobs, read};
use spanhold::answer::advised;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof;

/// Random jobs that are planned here. `SPANHOLD_JOBS=5000` asks for more of them.
const JOBS: u64 = 150;
const FIRST_SEED: u64 = 60_000;

/// A random job with an objective; every fifth is short and thick enough to be held without a bush.
fn job_text(seed: u64) -> String {
    if seed.is_multiple_of(5) {
        let r = &mut jobs::Random::new(seed);
        let [long, longer] = [r.between(6.0, 14.0, 8), r.between(8.0, 20.0, 12)];
        let objective = r.pick(&["time", "fewest_hand_overs", "margin"]);
        return format!(
            "shaft:
  material: C45
  sections:
    - {{length: {long}, diameter: 9}}
    - {{length: {longer}, diameter: 11, tolerance: h9}}
stock: {{diameter: 12, bar_length: 3000}}
machine:
  no_bush: {{max_bar: 16, collet_gap: 2}}
  headstock: {{nearest: 20, stroke: 90, hold: 15, stiffness: 120, max_rpm: 8000, regrip_s: 4}}
  counter_spindle:
    nearest: 3
    farthest: 90
    bore: 14
    bore_depth: 100
    stiffness: 60
    max_rpm: 8000
    hand_over_s: 3
    collets: [{{name: A, range: [8.8, 9.1], hold: 4, passes: 12, clamp_force: 9000}}]
  part_off: {{width: 2, time_s: 4}}
cutting: {{tools: single, vc: 120, feed: 0.06, ap_max: 1, speed_floor: 0.3}}
limits: {{stiffness_min: {}}}
objective: {objective}
holding: no_bush
",
            r.spread(0.02, 2.0, 8)
        );
    }
    let text = if seed % 3 == 1 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
    let objective = ["time", "fewest_hand_overs", "margin"][(seed / 3 % 3) as usize];
    format!("{text}objective: {objective}\n")
}

#[test]
fn a_stored_plan_is_proven_with_the_margin_it_tells() {
    let jobs = std::env::var("SPANHOLD_JOBS").ok().and_then(|n| n.parse().ok()).unwrap_or(JOBS);
    let (mut proven, mut without_bush, mut refused) = ([0; 3], 0, 0);
    for seed in FIRST_SEED..FIRST_SEED + jobs {
        let text = job_text(seed);
        let Some(job) = read(&text) else { continue };
        let plan = advised(&job, Advice::None).unwrap_or_else(|d| panic!("seed {seed}: {d}\n{text}"));
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
        without_bush += usize::from(seed.is_multiple_of(5));
    }
    println!("{proven:?} {without_bush} without a bush, {refused} refused");
    assert!(
        proven.iter().all(|n| *n >= 8) && without_bush >= 8 && refused >= 20,
        "{proven:?} {without_bush} {refused}"
    );
}
