//! Parts that fall into the tray at part-off.

use crate::jobs;
use crate::plans::answer;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::proof;

fn falls(plan: &Plan) -> bool {
    plan.part_off.as_ref().is_some_and(|p| p.into == "tray")
}

/// Only what is small enough and needs no work on its rear end falls, and each such plan is proven.
#[test]
fn what_falls_is_small_enough() {
    let (mut fell, mut held, mut refused) = (0, 0, 0);
    for seed in 40_000..40_120 {
        let text = jobs::tray_job(seed);
        let Some((job, plan)) = answer(&text) else { continue };
        if plan.verdict == Verdict::Infeasible {
            refused += 1;
            continue;
        }
        assert!(proof::prove(&plan, &job).holds(), "seed {seed}\n{text}");
        assert_eq!(falls(&plan), plan.stages.iter().all(|s| s.grip.is_none()), "seed {seed}\n{text}");
        if !falls(&plan) {
            held += 1;
            continue;
        }
        fell += 1;
        let tray = job.machine.part_off.tray.expect("each job has one");
        let thickest = job.shaft.sections.iter().map(|s| s.largest_mm()).fold(0.0, f64::max);
        assert!(
            plan.length_mm <= tray.max_length_mm + 1e-6 && thickest <= tray.max_diameter_mm + 1e-6,
            "seed {seed}\n{text}"
        );
        assert!(plan.features.iter().all(|f| f.feature != "back_work"), "seed {seed}\n{text}");
        assert!(
            plan.hand_overs_mm.is_empty() && plan.collet.is_none() && plan.time_s.hand_overs == 0.0,
            "seed {seed}\n{text}"
        );
        let checks = plan.stages.iter().flat_map(|s| &s.checks);
        assert!(checks.into_iter().all(|c| !["torque", "back"].contains(&c.check.as_str())), "seed {seed}\n{text}");
    }
    println!("{fell} {held} {refused}");
    assert!(fell >= 5 && held >= 15 && refused >= 15, "{fell} {held} {refused}");
}

/// A tray only adds ways: with one that takes every part, what could be held stays feasible, and nothing becomes slower by more than
/// the thousandth within which the margin decides.
#[test]
fn a_tray_only_adds_ways() {
    let (mut both, mut fell) = (0, 0);
    for seed in 41_000..41_120 {
        let text = jobs::small_job(seed);
        let held = answer(&jobs::with_tray(&text, 0.0, 9.0));
        let Some(((_, held), (_, free))) = held.zip(answer(&jobs::with_tray(&text, 1000.0, 100.0))) else { continue };
        if held.verdict == Verdict::Infeasible {
            continue;
        }
        assert!(!falls(&held), "seed {seed}\n{text}");
        assert_eq!(free.verdict, Verdict::Feasible, "seed {seed}\n{text}");
        let cost = |p: &Plan| p.pace_s() + p.time_s.penalties;
        assert!(cost(&free) <= cost(&held) * 1.003 + 1e-9, "seed {seed}: {} {}\n{text}", cost(&free), cost(&held));
        both += 1;
        fell += usize::from(falls(&free));
    }
    println!("{both} {fell}");
    assert!(both >= 30 && fell >= 3, "{both} {fell}");
}
