//! A plan made to hold in a share of sampled parts does so, and asking for more is never faster.

use crate::{jobs, read};
use spanhold::answer::{advised, sampled};
use spanhold::job::plan::Verdict;
use spanhold::planner::Advice;
use spanhold::proof;

const CONFIDENCES: [&str; 3] = ["0.6", "0.8", "0.95"];
/// Parts with a seed that no search has seen.
const FRESH: (u64, usize) = (987_654, 400);

#[test]
fn a_higher_confidence_is_never_faster_and_its_share_is_reached() {
    let (mut asked, mut reached, mut slower, mut tightened) = (0, 0, 0, 0);
    for seed in 31_000..31_045 {
        let text = format!("{}scatter: {{samples: 60}}\n", jobs::small_job(seed));
        let Some(job) = read(&text) else { continue };
        let fastest = advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}"));
        if !fastest.verdict.has_plan() {
            continue;
        }
        let mut before_s = fastest.pace_s();
        for confidence in CONFIDENCES {
            let text = format!("{text}confidence: {confidence}\n");
            let job = read(&text).expect("the same job with a confidence");
            let plan = sampled(&job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}"));
            let scatter = plan.scatter.as_ref().expect("a plan is sampled");
            let told = scatter.confidence.as_ref().expect("a confidence was asked for");
            assert!(proof::prove(&plan, &job).holds(), "seed {seed}: with the limits of the job\n{text}");
            assert!(told.reached || plan.verdict == Verdict::AtRisk, "seed {seed}\n{text}");
            asked += 1;
            if !told.reached {
                break;
            }
            // The planner's own optimum is known to within its gap.
            let slack_s = 1e-3 * before_s + before_s * plan.optimality.gap;
            assert!(
                plan.pace_s() >= before_s - slack_s,
                "seed {seed}, {confidence}: {} s after {before_s} s",
                plan.pace_s()
            );
            assert!(told.costs_s >= -slack_s, "seed {seed}: {told:?}");
            // The printed count and fresh parts reach it within four standard errors.
            let fresh = proof::counted(&plan, &job, FRESH.0, FRESH.1).good_share;
            let error = |n: usize| (told.asked * (1.0 - told.asked) / n as f64).sqrt();
            assert!(
                scatter.good_share >= told.asked - 4.0 * error(scatter.samples),
                "seed {seed}, {confidence}: {scatter:?}"
            );
            assert!(fresh >= told.asked - 4.0 * error(FRESH.1), "seed {seed}, {confidence}: {fresh} of fresh parts");
            slower += usize::from(plan.pace_s() > before_s + slack_s);
            tightened += usize::from(!told.tightened.is_empty());
            (reached, before_s) = (reached + 1, before_s.max(plan.pace_s()));
        }
    }
    assert!(asked > 40 && reached > 25 && tightened > 8 && slower > 3, "{asked}, {reached}, {tightened}, {slower}");
}
