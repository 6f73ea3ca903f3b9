//! A reason told for a no is true: where what it names is lifted, the bar comes farther, or there is a plan.

use crate::{jobs, read};
use spanhold::answer::advised;
use spanhold::job::Job;
use spanhold::job::plan::{AND, Plan, Verdict};
use spanhold::planner::Advice;

/// Stations of a no are so far apart at most, mm: how far the bar comes is told no finer.
const STATIONS_MM: f64 = 2.5;

fn planned(job: &Job) -> Plan {
    advised(job, Advice::None).unwrap_or_else(|d| panic!("{d}"))
}

/// Lifts one limit by `much` (a longer stroke also holds the bar farther behind the bush, so a little may be better than a
/// lot); none where the name is not that of a limit that can be lifted for itself.
fn lifted(job: &mut Job, limit: &str, much: f64) -> Option<()> {
    let counter = &mut job.machine.counter_spindle;
    match limit {
        "counter_spindle_travel" => counter.as_mut()?.farthest_mm += much,
        "stroke" => job.machine.headstock.stroke_mm += much,
        "bore" => counter.as_mut()?.bore_mm += much,
        "torque" => counter.as_mut()?.collets.iter_mut().for_each(|c| c.clamp_force_n *= much),
        "stiffness" => job.limits.stiffness_min_n_per_um /= much,
        "span_stiffness" => job.limits.span_stiffness_min_n_per_um /= much,
        "free_ratio" => job.limits.free_ratio.iter_mut().for_each(|r| *r *= much),
        "pick_up" => job.limits.pick_up_mm *= much,
        "whirl" => job.limits.whirl_ratio *= much,
        "whip" => job.limits.whip_mm *= much,
        "sag" => job.limits.sag_mm *= much,
        "release" => job.limits.release_mm *= much,
        "drill" => job.limits.drill_mm *= much,
        _ => return None,
    }
    Some(())
}

/// How far the bar comes at best with all the limits of a reason lifted, mm; infinite where there is a plan.
fn reach_mm(job: &Job, reason: &str) -> Option<f64> {
    let mut best = 0.0f64;
    for much in [500.0, 375.0, 250.0, 125.0, 65.0, 30.0, 8.0, 2.0] {
        let mut with = job.clone();
        reason.split(AND).try_for_each(|limit| lifted(&mut with, limit, much))?;
        best = best.max(planned(&with).shortfall.map_or(f64::INFINITY, |s| s.farthest_mm));
        if best.is_infinite() {
            break;
        }
    }
    Some(best)
}

#[test]
fn lifting_the_limit_a_no_names_brings_the_bar_farther() {
    let (mut travels, mut strokes, mut together, mut others) = (0, 0, 0, 0);
    let mut wrong = Vec::new();
    for seed in 61_000..61_600 {
        let Some(job) = read(&jobs::small_job(seed)) else { continue };
        let plan = planned(&job);
        if plan.verdict == Verdict::Feasible {
            continue;
        }
        let told = plan.shortfall.expect("a no has a reason");
        let blocked_by = told.blocked_names();
        let Some(far_mm) = reach_mm(&job, &blocked_by) else { continue };
        match blocked_by.as_str() {
            "counter_spindle_travel" => travels += 1,
            "stroke" => strokes += 1,
            several if several.contains(AND) => together += 1,
            _ => others += 1,
        }
        // Told together, none of them alone is enough.
        let alone = blocked_by.split(AND).filter(|_| blocked_by.contains(AND));
        for limit in alone.filter(|limit| reach_mm(&job, limit).is_some_and(|mm| mm > told.farthest_mm + STATIONS_MM)) {
            wrong.push(format!("seed {seed}: {limit} alone is enough, told is {}", blocked_by));
        }
        if far_mm < told.farthest_mm + 0.01 {
            wrong.push(format!("seed {seed}: {} at {} mm: {}", blocked_by, told.farthest_mm, told.text));
        }
    }
    assert!(wrong.is_empty(), "{} false:\n{}", wrong.len(), wrong.join("\n"));
    assert!(travels >= 20 && strokes >= 5 && together >= 2 && others >= 5, "{travels} {strokes} {together} {others}");
}
