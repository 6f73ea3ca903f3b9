//! Random jobs with a tandem: never a panic, every plan is proven, and the beam in parts answers as the whole one.

use crate::plans::answer;
use crate::{jobs, read};
use spanhold::job::plan::Verdict;
use spanhold::job::{Holding, Side};
use spanhold::process::span::{Front, Rear};
use spanhold::process::{Counter, Guide, Rig, State};
use spanhold::proof;

/// A random job with a tandem in place of its tools, and more sections that ask for a finishing cut.
fn tandem_job(seed: u64) -> String {
    let text = if seed.is_multiple_of(3) { jobs::rich_job(seed) } else { jobs::small_job(seed) };
    let (side, lag) = (["same", "opposite"][seed as usize % 2], [0.3, 1.0, 2.5][seed as usize / 2 % 3]);
    let tandem = format!("tools: tandem, lag: {lag}, finisher: {{side: {side}, nose_radius: 0.2}}");
    let text = text.replace("tools: single", &tandem).replace("tools: opposed", &tandem);
    text.replace("tolerance: h9", "tolerance: h7").replace("ra: 1.6", "ra: 0.8")
}

#[test]
fn every_plan_with_a_tandem_is_proven() {
    let (mut feasible, mut infeasible, mut both, mut refused) = (0, 0, 0, 0);
    for seed in 50_000..50_140 {
        let text = tandem_job(seed);
        let Some((job, plan)) = answer(&text) else { continue };
        if plan.verdict == Verdict::Infeasible {
            infeasible += 1;
            continue;
        }
        feasible += 1;
        let verified = proof::prove(&plan, &job);
        assert!(verified.holds(), "seed {seed}: {:?}\n{text}", verified.breaches);
        let tandem = plan.segments.iter().filter(|s| s.lag_mm.is_some()).count();
        both += usize::from(tandem > 0);
        for s in plan.segments.iter().filter(|s| s.lag_mm.is_some()) {
            assert!(s.lag_mm == Some(job.cutting.lag_mm) && s.depths_mm.len() == s.travels + 1, "seed {seed}\n{text}");
        }
        // A plan of both tools is refused where it does not tell the second one.
        let mut told = plan.clone();
        if let Some(s) = told.segments.iter_mut().find(|s| s.lag_mm.is_some()) {
            s.lag_mm = None;
            let breaches = proof::prove(&told, &job).breaches;
            refused += usize::from(breaches.iter().any(|b| b.rule == "segments"));
        }
    }
    assert!(feasible >= 25 && infeasible >= 20 && both >= 15, "{feasible} {infeasible} {both}");
    assert_eq!(refused, both);
}

#[test]
fn the_beam_in_parts_knows_the_finishing_tool() {
    let mut compared = 0;
    for seed in 50_000..50_060 {
        let Some(job) = read(&tandem_job(seed)) else { continue };
        assert!(job.holding == Holding::Bush && matches!(job.cutting.finisher.side, Side::Same | Side::Opposite));
        let rig = Rig::new(&job, job.machine.counter_spindle.as_ref().and_then(|c| c.collets.first()));
        let length = job.shaft.length_mm();
        for (share, grip) in [(0.01, false), (0.5, false), (0.5, true), (0.97, true)] {
            let turned_mm = share * length;
            let nose_mm = rig.hold_mm() + 0.3 * (turned_mm - rig.hold_mm());
            let held = grip && rig.collet.is_some() && nose_mm >= rig.hold_mm() && nose_mm < turned_mm;
            let counter = if held { Counter::Holds { nose_mm } } else { Counter::Away };
            let headstock_mm = job.machine.headstock.farthest_mm();
            let state = State { turned_mm, counter, guide: Guide::Bush { headstock_mm } };
            let whole = rig.answers(&state).expect("held");
            let rear = Rear::new(&rig, headstock_mm).expect("held");
            let parts = Front::new(&rig, turned_mm, counter).at_rest(&[&rear])[0].expect("held");
            let near = |a: f64, b: f64| (a - b).abs() <= 1e-7 * b.abs();
            assert!(near(parts.finisher_mm_per_n, whole.finisher_mm_per_n), "seed {seed}: {parts:?} {whole:?}");
            assert!(near(parts.tool_mm_per_n, whole.tool_mm_per_n), "seed {seed}: {parts:?} {whole:?}");
            compared += 1;
        }
    }
    assert!(compared >= 150, "{compared}");
}
