//! What the proof must refuse: proven plans, each changed in one thing.

use crate::jobs;
use crate::plans::{SEEDS, answer};
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::proof;

/// A rule the proof must name, for a change it must refuse.
fn refused(plan: &Plan, job: &Job, rules: &[&str], what: &str) {
    let verified = proof::prove(plan, job);
    let named = verified.breaches.iter().any(|b| rules.contains(&b.rule.as_str()));
    assert!(named, "{what}: {:?}\n{}", verified.breaches, serde_json::to_string(plan).unwrap_or_default());
}

/// Moves the hand-over behind a stage, with everything that stands at its place.
fn move_hand_over(plan: &mut Plan, stage: usize, to: f64) {
    let from = plan.stages[stage].to_mm;
    let mut put = |t: &mut f64| {
        if (*t - from).abs() < 1e-9 {
            *t = to;
        }
    };
    put(&mut plan.stages[stage].to_mm);
    put(&mut plan.stages[stage + 1].from_mm);
    for s in &mut plan.stages {
        s.regrips_mm.iter_mut().for_each(&mut put);
    }
    plan.hand_overs_mm.iter_mut().for_each(&mut put);
    plan.headstock_regrips_mm.iter_mut().for_each(&mut put);
    for s in &mut plan.segments {
        put(&mut s.from_mm);
        put(&mut s.to_mm);
    }
}

#[test]
fn the_proof_refuses_what_was_tampered_with() {
    let mut done = [0; 7];
    for seed in SEEDS {
        let Some((job, plan)) = answer(&jobs::small_job(seed)) else { continue };
        if plan.verdict == Verdict::Infeasible {
            continue;
        }
        for k in 0..plan.stages.len() - 1 {
            let t = plan.stages[k].to_mm;
            for to in [t - 1.0, t + 1.0] {
                let never = plan.shaft.sections.iter().any(|s| {
                    s.interrupt == "never" && s.kind == "cylinder" && to > s.from_mm + 1e-3 && to < s.to_mm - 1e-3
                });
                if never {
                    let mut bad = plan.clone();
                    move_hand_over(&mut bad, k, to);
                    refused(&bad, &job, &["interrupt"], "a hand-over in a surface never to be interrupted");
                    done[0] += 1;
                }
            }
        }
        for i in 0..plan.segments.len() {
            let mut bad = plan.clone();
            bad.segments[i].rpm *= 1.05;
            // What was slowed down breaks the check it was slowed for, at least 5 % beyond its limit at some state.
            let rules = if plan.segments[i].slowed_by.is_some() {
                vec!["whirl", "whip", "bore", "speed"]
            } else {
                vec!["speed"]
            };
            if plan.segments[i].work != "as_drawn" {
                refused(&bad, &job, &rules, "5 % too fast");
                done[1] += 1;
            }
        }
        for (k, stage) in plan.stages.iter().enumerate() {
            for (n, m) in stage.regrips_mm.iter().enumerate() {
                let mut bad = plan.clone();
                bad.stages[k].regrips_mm.remove(n);
                refused(&bad, &job, &["regrips"], "a re-grip missing in its stage");
                bad.headstock_regrips_mm.retain(|t| t != m);
                let verified = proof::prove(&bad, &job);
                // A re-grip that shares its stop may cost nothing, and then be there though the stroke does not ask for it.
                let shared = plan.hand_overs_mm.iter().any(|t| (t - m).abs() < 1e-4);
                if !(shared && job.machine.shared_regrip_s() == 0.0) {
                    assert!(!verified.holds(), "a re-grip left out\n{bad:?}");
                    done[2] += 1;
                }
            }
            if let Some(grip) = &stage.grip {
                let section = &plan.shaft.sections[grip.section - 1];
                let mut bad = plan.clone();
                let shift = section.to_mm + 1.0 - grip.nose_mm;
                if let Some(g) = &mut bad.stages[k].grip {
                    (g.nose_mm, g.from_mm, g.to_mm) = (g.nose_mm + shift, g.from_mm + shift, g.to_mm + shift);
                }
                refused(&bad, &job, &["grip"], "a grip over a shoulder");
                done[3] += 1;
                let mut bad = plan.clone();
                if let Some(g) = &mut bad.stages[k].grip {
                    g.from_mm += 0.5;
                }
                refused(&bad, &job, &["grip"], "a grip shorter than the collet");
            }
        }
        let mut bad = plan.clone();
        bad.time_s.cutting -= 0.01 * plan.time_s.cutting;
        bad.time_s.total -= 0.01 * plan.time_s.cutting;
        refused(&bad, &job, &["times"], "a time too short");
        done[4] += 1;
        if plan.stages.len() > 2 {
            let mut bad = plan.clone();
            let gone = bad.stages.remove(1);
            bad.stages[1].from_mm = gone.from_mm;
            bad.stages.iter_mut().enumerate().for_each(|(i, s)| s.number = i + 1);
            assert!(!proof::prove(&bad, &job).holds(), "a stage left out\n{bad:?}");
            done[5] += 1;
        }
        if let Some(task) = plan.features.iter().position(|f| f.feature == "cross_hole") {
            let mut bad = plan.clone();
            bad.features[task].turned_mm = bad.features[task].turned_mm.map(|t| t + 1.0);
            refused(&bad, &job, &["features"], "a hole drilled where its tool does not reach");
            done[6] += 1;
        }
    }
    assert!(done.iter().zip([4, 80, 30, 40, 34, 8, 3]).all(|(n, least)| *n >= least), "{done:?}");
    println!("{done:?}");
}
