//! Jobs that say the same in other words, and jobs in another measure of force: the same plan.

use crate::{jobs, read};
use spanhold::answer::advised;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::job::{FeatureKind, Job};
use spanhold::planner::Advice;

fn answered(job: &Job, text: &str) -> Plan {
    advised(job, Advice::None).unwrap_or_else(|d| panic!("{d}\n{text}"))
}

/// Four times the modulus, density, cutting resistance, thrusts, stiffnesses, clamping forces: every deflection and frequency stays,
/// so must the plan. A power of two, so that rounding stays too.
#[test]
fn another_measure_of_force_changes_no_plan() {
    const MORE: f64 = 4.0;
    let mut feasible = 0;
    for seed in 90_000..90_060 {
        let text = if seed % 3 == 0 { jobs::rich_job(seed) } else { jobs::small_job(seed) };
        let Some(job) = read(&text) else { continue };
        let mut other = job.clone();
        let material = &mut other.shaft.material;
        for value in [&mut material.e_gpa, &mut material.density_kg_per_m3, &mut material.kc11_n_per_mm2] {
            *value *= MORE;
        }
        for feature in &mut other.shaft.features {
            if let FeatureKind::CrossHole { thrust_n: Some(thrust), .. } = &mut feature.kind {
                *thrust *= MORE;
            }
        }
        for work in &mut other.shaft.back_work {
            for value in [&mut work.radial_force_n, &mut work.axial_force_n, &mut work.torque_nm] {
                *value *= MORE;
            }
        }
        if let Some(bush) = &mut other.machine.bush {
            bush.stiffness_n_per_um *= MORE;
        }
        other.machine.headstock.stiffness_n_per_um *= MORE;
        if let Some(force) = &mut other.machine.headstock.clamp_force_n {
            *force *= MORE;
        }
        if let Some(counter) = &mut other.machine.counter_spindle {
            counter.stiffness_n_per_um *= MORE;
            if let Some(sleeve) = &mut counter.sleeve {
                sleeve.stiffness_n_per_um *= MORE;
            }
            counter.collets.iter_mut().for_each(|c| c.clamp_force_n *= MORE);
        }
        other.limits.stiffness_min_n_per_um *= MORE;
        other.limits.span_stiffness_min_n_per_um *= MORE;
        let (one, more) = (answered(&job, &text), answered(&other, &text));
        assert_eq!(one.verdict, more.verdict, "seed {seed}\n{text}");
        if one.verdict == Verdict::Infeasible {
            let far = |p: &Plan| p.shortfall.as_ref().map(|s| (s.farthest_mm, s.blocked_by.clone()));
            assert_eq!(far(&one), far(&more), "seed {seed}\n{text}");
            continue;
        }
        feasible += 1;
        let places = |p: &Plan| {
            let noses: Vec<Option<f64>> = p.stages.iter().map(|s| s.grip.as_ref().map(|g| g.nose_mm)).collect();
            let speeds: Vec<f64> = p.segments.iter().map(|s| s.rpm).collect();
            (p.collet.clone(), p.hand_overs_mm.clone(), p.headstock_regrips_mm.clone(), noses, speeds, p.time_s.clone())
        };
        assert_eq!(places(&one), places(&more), "seed {seed}\n{text}");
        for (a, b) in one.stages.iter().zip(&more.stages).flat_map(|(a, b)| a.checks.iter().zip(&b.checks)) {
            assert_eq!(a.check, b.check);
            assert!((a.utilisation - b.utilisation).abs() <= 1e-9 * a.utilisation.max(1.0), "seed {seed}: {a:?} {b:?}");
        }
    }
    assert!(feasible >= 8, "{feasible}");
}

/// A tolerance by letter or in mm, a thread with or without its coarse pitch, one reach or a list of one, blocks or braces.
#[test]
fn the_same_in_other_words_is_the_same_plan() {
    let (mut compared, mut said) = (0, [0; 4]);
    for seed in 91_000..91_040 {
        let text = jobs::small_job(seed);
        let Some(job) = read(&text) else { continue };
        let mut other = text.clone();
        for (i, section) in job.shaft.sections.iter().enumerate() {
            let line = text.lines().filter(|l| l.contains("{length: ")).nth(i).expect("its line");
            let spelt = [": h7", ": h9"].iter().find(|word| line.contains(*word));
            if let Some(word) = spelt {
                let limits = format!(": [{}, {}]", section.tolerance.lower_mm, section.tolerance.upper_mm);
                // The grade says whether a stop may leave a line; in mm the width does, which is said here.
                other = other.replacen(line, &line.replace(word, &limits), 1);
                said[0] += 1;
            }
        }
        for (i, (word, by)) in [("thread: M5", "thread: M5x0.8"), ("cross_tool_reach: 10", "cross_tool_reach: [10]")]
            .into_iter()
            .enumerate()
        {
            said[1 + i] += usize::from(other.contains(word));
            other = other.replace(word, by);
        }
        if let Some(at) = other.find("limits:\n") {
            let inner: Vec<&str> = other[at..].lines().skip(1).map(str::trim).collect();
            other = format!("{}limits: {{{}}}\n", &other[..at], inner.join(", "));
            said[3] += 1;
        }
        let again = read(&other).unwrap_or_else(|| panic!("refused\n{other}"));
        let (one, mut more) = (answered(&job, &text), answered(&again, &other));
        more.input_digest.clone_from(&one.input_digest);
        // The label is what was written.
        for (a, b) in one.shaft.sections.iter().zip(&mut more.shaft.sections) {
            b.tolerance.clone_from(&a.tolerance);
            b.label.clone_from(&a.label);
        }
        assert_eq!(one, more, "seed {seed}\n{text}\n{other}");
        compared += 1;
    }
    assert!(compared >= 25 && said.iter().all(|n| *n >= 3), "{compared} {said:?}");
}
