//! Random jobs with random tools: never a panic, every plan is proven, and the cuts are those of listed tools.

use crate::jobs;
use crate::plans::answer;
use spanhold::job::plan::Verdict;
use spanhold::proof;

/// A random job with two to five tools.
fn with_tools(seed: u64) -> String {
    let text = if seed.is_multiple_of(3) { jobs::rich_job(seed) } else { jobs::small_job(seed) };
    let mut next = seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) | 1;
    let mut pick = |n: u64| {
        next ^= next << 13;
        next ^= next >> 7;
        next ^= next << 17;
        next % n
    };
    let mut list = String::from("tool_list:\n");
    for i in 0..2 + pick(4) {
        let kind = ["turning", "turning", "back_turning", "part_off", "grooving", "threading"][pick(6) as usize];
        let mut keys = format!("name: tool {i}, kind: {kind}, station: {i}");
        if kind.ends_with("turning") {
            let nose = ["0.1", "0.2", "0.4", "0.8"][pick(4) as usize];
            keys += &format!(", nose_radius: {nose}, ap_max: {}", 0.5 + 0.5 * pick(6) as f64);
            keys += [", rough: {feed: 0.15}", ", finish: {feed: 0.08}", ", feed: 0.1", ""][pick(4) as usize];
        }
        keys += ["", ", vc: 60", ", vc: 150"][pick(3) as usize];
        list += &format!("  - {{{keys}}}\n");
    }
    text + &list
}

#[test]
fn every_plan_with_listed_tools_is_proven() {
    let (mut feasible, mut infeasible, mut several) = (0, 0, 0);
    for seed in 54_000..54_120 {
        let text = with_tools(seed);
        let Some((job, plan)) = answer(&text) else { continue };
        if plan.verdict == Verdict::Infeasible {
            infeasible += 1;
            continue;
        }
        feasible += 1;
        let verified = proof::prove(&plan, &job);
        assert!(verified.holds(), "seed {seed}: {:?}\n{text}", verified.breaches);
        for cut in plan.segments.iter().flat_map(|s| s.cuts.iter().filter(|cut| !cut.depths_mm.is_empty())) {
            for (tool, depth_mm) in cut.tools.iter().zip(&cut.depths_mm) {
                let listed = job.tool_list.iter().find(|listed| listed.name == *tool);
                let most_mm = listed.map_or(job.cutting.ap_max_mm, |t| t.ap_max_mm.unwrap_or(job.cutting.ap_max_mm));
                // The last cut is no deeper than `ap_finish`, whatever the tool.
                assert!(
                    *depth_mm <= most_mm.max(job.cutting.ap_finish_mm) * (1.0 + 1e-9),
                    "seed {seed}: {cut:?}\n{text}"
                );
            }
        }
        several += usize::from(plan.tool_list.iter().filter(|tool| tool.listed).count() > 1);
    }
    assert!(feasible >= 25 && infeasible >= 15 && several >= 10, "{feasible} {infeasible} {several}");
}
