//! A plan made to hold in a share of sampled parts does so, and asking for more is never faster.

use crate::{jobs, read};
use spanhold::answer::{advised, sampled};
use spanhold::input::read_job_text;
use spanhold::job::Job;
use spanhold::job::plan::Verdict;
use spanhold::planner::Advice;
use spanhold::proof;

const CONFIDENCES: [&str; 3] = ["0.6", "0.8", "0.95"];
/// Parts with a seed that no search has seen.
const FRESH: (u64, usize) = (987_654, 400);

/// What was found of jobs: plans that reach a confidence, those with tightened limits, those slower than the one before.
#[derive(Default)]
struct Found {
    reached: usize,
    tightened: usize,
    slower: usize,
}

/// Asks for one confidence after another. `job` reads the job with more lines at its end.
fn ask(name: &str, job: &dyn Fn(&str) -> Option<Job>, found: &mut Found) {
    let Some(plain) = job("") else { return };
    let fastest = advised(&plain, Advice::None).unwrap_or_else(|d| panic!("{name}: {d}"));
    if !fastest.verdict.has_plan() {
        return;
    }
    let mut before_s = fastest.pace_s();
    for confidence in CONFIDENCES {
        let job = job(&format!("confidence: {confidence}\n")).expect("the same job with a confidence");
        let plan = sampled(&job, Advice::None).unwrap_or_else(|d| panic!("{name}: {d}"));
        let scatter = plan.scatter.as_ref().expect("a plan is sampled");
        let told = scatter.confidence.as_ref().expect("a confidence was asked for");
        assert!(proof::prove(&plan, &job).holds(), "{name}: with the limits of the job");
        assert!(told.reached || plan.verdict == Verdict::AtRisk, "{name}");
        if !told.reached {
            return;
        }
        // The planner's own optimum is known to within its gap.
        let slack_s = before_s * (1e-3 + plan.optimality.gap);
        assert!(plan.pace_s() >= before_s - slack_s, "{name}, {confidence}: {} s after {before_s} s", plan.pace_s());
        // The printed count and fresh parts reach it within four standard errors.
        let fresh = proof::counted(&plan, &job, FRESH.0, FRESH.1).good_share;
        let error = |n: usize| (told.asked * (1.0 - told.asked) / n as f64).sqrt();
        assert!(scatter.good_share >= told.asked - 4.0 * error(scatter.samples), "{name}, {confidence}: {told:?}");
        assert!(fresh >= told.asked - 4.0 * error(FRESH.1), "{name}, {confidence}: {fresh} of fresh parts");
        found.reached += 1;
        found.tightened += usize::from(!told.tightened.is_empty());
        found.slower += usize::from(plan.pace_s() > before_s);
        before_s = before_s.max(plan.pace_s());
    }
}

#[test]
fn a_higher_confidence_is_never_faster_and_its_share_is_reached() {
    let mut found = Found::default();
    for seed in 31_000..31_020 {
        let text = format!("{}scatter: {{samples: 60}}\n", jobs::small_job(seed));
        ask(&format!("seed {seed}"), &|more| read(&format!("{text}{more}")), &mut found);
    }
    assert!(found.reached > 5, "{}", found.reached);
    // A demo job whose speed is at a limit needs a reserve.
    let demo = format!("{}/demo", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(format!("{demo}/scanner-rail.yaml")).expect("the demo is there");
    let mut found = Found::default();
    ask("demo", &|more| read_job_text("demo.yaml", &format!("{text}\n{more}"), demo.as_ref()).ok(), &mut found);
    assert!(
        found.reached == 3 && found.tightened > 0 && found.slower > 0,
        "{} {} {}",
        found.reached,
        found.tightened,
        found.slower
    );
}
