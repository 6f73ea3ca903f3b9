//! Random jobs without a plan: every set of changes told makes the job feasible when its edits are written into the job's text, and none of
//! its changes can be left out.

use crate::inch::in_inches;
use crate::jobs;
use spanhold::answer::advised;
use spanhold::input::edit::changed;
use spanhold::input::{Named, read_job_text};
use spanhold::job::plan::{Change, Edit, Shortfall, Verdict};
use spanhold::planner::Advice;

/// Checks and rules whose limits keep people and machine from harm.
const SAFETY: [&str; 6] = ["whirl_ratio", "whip", "bore_clearance", "release", "torque_margin", "buckling_share"];

/// The verdict for a job with the edits of some changes.
fn verdict(text: &str, changes: &[&Change]) -> Verdict {
    let mut edits: Vec<Edit> = changes.iter().flat_map(|c| c.edits.clone()).collect();
    // Entries are removed last, so that the numbers of the others stay what they are.
    edits.sort_by_key(|e| e.value.is_empty() && e.with.is_none());
    let named = Named { name: "random.yaml".into(), text: text.to_owned() };
    let (text, _) = changed(&named, None, &edits).unwrap_or_else(|d| panic!("{edits:?}: {d}\n{text}"));
    let job = read_job_text("random.yaml", &text, ".".as_ref());
    let job = job.unwrap_or_else(|told| panic!("{edits:?}: {told:?}\n{text}"));
    advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}")).verdict
}

fn helped(text: &str) -> Option<Shortfall> {
    let job = read_job_text("random.yaml", text, ".".as_ref()).ok()?;
    advised(&job, Advice::Wanted).unwrap_or_else(|d| panic!("{d}\n{text}")).shortfall
}

/// What was found.
#[derive(Debug, Default)]
struct Count {
    jobs: usize,
    sets: usize,
    several: usize,
    without: usize,
}

fn look(text: &str, seed: u64, count: &mut Count) {
    let Some(told) = helped(text) else { return };
    count.jobs += 1;
    count.without += usize::from(told.sets.is_empty());
    assert!(told.sets.is_empty() != told.tried.is_none(), "seed {seed}: {told:?}\n{text}");
    assert!(told.sets.len() <= 3 && told.sets.is_sorted_by(|a, b| a.price <= b.price), "seed {seed}");
    for set in &told.sets {
        count.sets += 1;
        count.several += usize::from(set.changes.len() > 1);
        let all: Vec<&Change> = set.changes.iter().collect();
        assert!((1..=4).contains(&all.len()) && set.time_s > 0.0, "seed {seed}: {set:?}");
        assert!(all.iter().all(|c| !SAFETY.contains(&c.change.as_str())), "seed {seed}: {set:?}");
        assert_eq!(verdict(text, &all), Verdict::Feasible, "seed {seed}: {set:?}\n{text}");
        for i in 0..all.len() {
            let fewer: Vec<&Change> = all.iter().enumerate().filter(|(k, _)| *k != i).map(|(_, c)| *c).collect();
            assert_eq!(
                verdict(text, &fewer),
                Verdict::Infeasible,
                "seed {seed}, without {:?}: {set:?}\n{text}",
                all[i]
            );
        }
    }
    assert!(told.after_trial.iter().all(|c| c.edits.is_empty()), "seed {seed}");
    assert!(told.changes.iter().chain(&told.after_trial).all(|c| !SAFETY.contains(&c.change.as_str())), "seed {seed}");
}

/// Number of jobs looked at: `SPANHOLD_MANY=2000` looks at so many.
fn wanted(few: usize) -> usize {
    let many = std::env::var("SPANHOLD_MANY").ok();
    many.map_or(few, |many| many.parse().unwrap_or_else(|_| panic!("SPANHOLD_MANY is no number: {many}")))
}

#[test]
fn every_set_told_is_enough_and_none_of_its_changes_can_be_left_out() {
    let (mut count, wanted) = (Count::default(), wanted(30));
    for seed in 0.. {
        if count.jobs == wanted {
            break;
        }
        let text = if seed % 3 == 2 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
        // The edits of a job in inches mean what they say in mm.
        let text = if seed % 4 == 1 { in_inches(&text) } else { text };
        look(&text, seed, &mut count);
    }
    println!("{count:?}");
    assert!(count.sets >= wanted && count.several * 8 >= wanted, "{count:?}");
}
