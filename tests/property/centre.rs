//! Parts on a centre.

use crate::jobs;
use crate::plans::answer;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::proof;

/// A small job on a centre, on a machine that lets any part fall. None: its machine has no counter-spindle.
fn on_centre(seed: u64) -> Option<String> {
    let text = jobs::with_tray(&jobs::small_job(seed), 1000.0, 100.0);
    let hole = "{centre_hole: A1, end: front}";
    let text = match text.contains("  features:\n") {
        true => text.replacen("  features:\n", &format!("  features:\n    - {hole}\n"), 1),
        false => text.replacen("  straightness", &format!("  features: [{hole}]\n  straightness"), 1),
    };
    let (force, stiffness) = (10.0 * (seed % 5 + 1) as f64, [2.0, 10.0, 40.0][seed as usize % 3]);
    let centre = format!("    centre: {{force: {force}, stiffness: {stiffness}}}\n    collets:\n");
    let text = text.contains("    collets:\n").then(|| text.replacen("    collets:\n", &centre, 1))?;
    let text = ["stroke", "farthest"].into_iter().try_fold(text, |text, key| jobs::with(&text, key, |_| 400.0))?;
    // With the default limits: those of the small jobs are tight, so that they need many grips.
    let (before, limits) = text.split_once("limits:\n")?;
    let rest: String = limits.lines().skip_while(|l| l.starts_with("  ")).map(|l| format!("{l}\n")).collect();
    let text = format!("{before}{rest}");
    let no_bush = if seed % 2 == 1 { "no_bush\n" } else { "bush\n" };
    let text = text.replacen("machine:\n", "machine:\n  no_bush: {max_bar: 12, collet_gap: 4}\n", 1);
    Some(format!("{text}hold: centre\nholding: {no_bush}"))
}

/// Each plan is one stage without a grip, and is proven; what is changed in its centre is refused.
#[test]
fn a_plan_on_a_centre_is_one_stage_and_is_proven() {
    let (mut feasible, mut refused, mut without_bush) = (0, 0, 0);
    for seed in 52_000..52_032 {
        let Some((job, plan)) = on_centre(seed).and_then(|text| answer(&text)) else { continue };
        if plan.verdict == Verdict::Infeasible {
            let shortfall = plan.shortfall.as_ref().expect("a reason");
            assert!(!shortfall.text.is_empty() && plan.centre.is_none(), "seed {seed}");
            refused += 1;
            continue;
        }
        let verified = proof::prove(&plan, &job);
        assert!(verified.holds(), "seed {seed}: {:?}", verified.breaches);
        assert!(plan.stages.len() == 1 && plan.stages[0].grip.is_none() && plan.collet.is_none(), "seed {seed}");
        assert!(plan.headstock_regrips_mm.is_empty() && plan.hand_overs_mm.is_empty(), "seed {seed}");
        let centre = plan.centre.expect("a centre");
        assert!((centre.leaves_at_mm - plan.length_mm).abs() < 1e-9, "seed {seed}");
        let named = |bad: &Plan| proof::prove(bad, &job).breaches.iter().any(|b| b.rule == "centre");
        assert!(named(&Plan { centre: None, ..plan.clone() }), "seed {seed}: no centre told");
        let mut other = plan.clone();
        other.centre = other.centre.map(|c| spanhold::job::plan::OnCentre { force_n: 0.5 * c.force_n, ..c });
        assert!(named(&other), "seed {seed}: another force");
        feasible += 1;
        without_bush += usize::from(plan.holding == "no_bush");
    }
    println!("{feasible} {refused} {without_bush}");
    assert!(feasible >= 12 && refused >= 5 && without_bush >= 1, "{feasible} {refused} {without_bush}");
}
