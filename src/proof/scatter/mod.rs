//! Runs a finished plan with sampled inputs: bow, stiffness of supports, cutting forces, Young's modulus, damping and bar diameter are
//! known only roughly.
//!
//! Each sampled part is turned as the plan says, at the speeds of the plan. The result tells how often each check fails, and up to
//! which turned length each stage holds in 99 of 100 parts. A fixed seed makes the result repeatable on any number of cores.

mod along;
mod course;
mod inputs;

use crate::job::Job;
use crate::job::plan::{Broken, Plan, Runs, ScatterReport, ScatterStage};
use crate::job::scatter::{Draw, Uncertain, Varies};
use crate::spread::{checkpoint, spread};
pub use along::along;
use course::Break;
pub use course::Course;
use fastrand::Rng;
pub use inputs::spread_of_checks;
use std::f64::consts::PI;

/// Largest distance between two states of a sampled part, mm.
const STEP_MM: f64 = 5.0;
/// Share of parts in which a stage must hold up to the reported length.
const HOLDS_IN: f64 = 0.99;
/// Parts between two looks at whether a count can still reach its share.
const AT_ONCE: usize = 64;
/// Of this many sampled runs a second part is looked at too: one of so many.
const SECOND_PARTS: usize = 2;

/// Runs a proven plan with the scatter of the job.
pub fn scatter(plan: &Plan, job: &Job) -> ScatterReport {
    let course = Course::new(plan, job);
    let draws = draws(job.scatter.seed, job.scatter.samples);
    let parts = sampled(&course, &draws);
    let mut report = report(plan, &parts, job.scatter.seed);
    report.runs = Some(runs(&course, &parts, job.scatter.seed));
    (report.nearest, report.inputs) = inputs::told(&course, &draws, &parts);
    report
}

/// As [`scatter`], with another seed and number of samples and without the inputs.
pub fn counted(plan: &Plan, job: &Job, seed: u64, samples: usize) -> ScatterReport {
    report(plan, &sampled(&Course::new(plan, job), &draws(seed, samples)), seed)
}

/// Whether at least a share of sampled parts meets all checks. It stops as soon as too many do not.
pub fn reaches(course: &Course<'_>, seed: u64, samples: usize, share: f64) -> bool {
    let mut left = samples as f64 * (1.0 - share) * (1.0 + 1e-12);
    for some in draws(seed, samples).chunks(AT_ONCE) {
        let holds = spread(some, |draw, _| {
            checkpoint();
            course.holds(draw)
        });
        left -= holds.iter().filter(|holds| !**holds).count() as f64;
        if left < 0.0 {
            return false;
        }
    }
    true
}

fn share(parts: &[Vec<Break>]) -> f64 {
    parts.iter().filter(|p| p.is_empty()).count() as f64 / parts.len().max(1) as f64
}

/// The inputs of the first parts of so many runs.
fn draws(seed: u64, samples: usize) -> Vec<Draw> {
    (0..samples).map(|run| draw(seed, run, 0)).collect()
}

/// The checks that each part fails.
fn sampled(course: &Course<'_>, draws: &[Draw]) -> Vec<Vec<Break>> {
    spread(draws, |draw, _| {
        checkpoint();
        course.breaks(draw, false)
    })
}

/// Second parts of some of the runs.
fn runs(course: &Course<'_>, first: &[Vec<Break>], seed: u64) -> Runs {
    let indices: Vec<usize> = (0..first.len()).step_by(SECOND_PARTS).collect();
    let holds = spread(&indices, |i, _| {
        checkpoint();
        [first.get(*i).is_some_and(Vec::is_empty), course.holds(&draw(seed, *i, 1))]
    });
    let share = |n: usize| holds.iter().filter(|h| h.iter().filter(|ok| **ok).count() == n).count();
    let of = |n: usize| share(n) as f64 / holds.len().max(1) as f64;
    Runs { count: holds.len(), both_hold: of(2), one_holds: of(1), none_holds: of(0) }
}

/// The inputs of a part of a sampled run. Parts of one run share what does not vary between parts.
fn draw(seed: u64, run: usize, part: usize) -> Draw {
    let of = |stream: u64| Rng::with_seed(mixed(mixed(seed).wrapping_add(stream)));
    // Each run has two streams for its own inputs and its first part, and far away ones for further parts.
    let run = run as u64;
    let (mut same, mut own) = (of(2 * run), of(2 * run + 1 + ((part as u64) << 40)));
    Uncertain::ALL.map(|input| match input.varies() {
        Varies::BetweenRuns => normal(&mut same),
        Varies::BetweenParts => normal(&mut own),
    })
}

/// A number whose bits all depend on all bits of another one: generators with neighbouring seeds would give related numbers. The last step of
/// SplitMix64 (Steele, Lea and Flood, OOPSLA 2014; from memory).
fn mixed(number: u64) -> u64 {
    let z = number.wrapping_add(0x9E37_79B9_7F4A_7C15);
    let z = (z ^ (z >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    let z = (z ^ (z >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
    z ^ (z >> 31)
}

/// A random number with standard normal distribution (Box & Muller, Ann. Math. Stat. 29 (1958); from memory).
fn normal(rng: &mut Rng) -> f64 {
    // 1 - f64() is never 0, so the logarithm is finite.
    (-2.0 * (1.0 - rng.f64()).ln()).sqrt() * (2.0 * PI * rng.f64()).cos()
}

fn report(plan: &Plan, parts: &[Vec<Break>], seed: u64) -> ScatterReport {
    let count = parts.len().max(1) as f64;
    let stages = plan.stages.iter().enumerate().map(|(index, stage)| {
        let mine: Vec<Vec<Break>> =
            parts.iter().map(|part| part.iter().copied().filter(|b| b.stage == index).collect()).collect();
        // A failure is found at a state; the stage held up to the state before.
        let mut first: Vec<f64> = mine
            .iter()
            .map(|breaks| {
                let earliest = breaks.iter().map(|b| b.turned_mm).fold(f64::INFINITY, f64::min);
                if earliest.is_finite() { (earliest - STEP_MM).max(stage.from_mm) } else { stage.to_mm }
            })
            .collect();
        first.sort_by(f64::total_cmp);
        let at = ((1.0 - HOLDS_IN) * first.len() as f64).floor() as usize;
        ScatterStage {
            number: stage.number,
            broken_share: mine.iter().filter(|breaks| !breaks.is_empty()).count() as f64 / count,
            broken: broken(&mine),
            holds_to_mm: first.get(at).copied().unwrap_or(stage.to_mm),
        }
    });
    ScatterReport {
        samples: parts.len(),
        seed,
        good_share: share(parts),
        runs: None,
        broken: broken(parts),
        stages: stages.collect(),
        nearest: None,
        inputs: Vec::new(),
        confidence: None,
    }
}

/// How many of the parts fail each check, the most frequent first.
fn broken(parts: &[Vec<Break>]) -> Vec<Broken> {
    let mut by_check: Vec<(&str, Vec<f64>)> = Vec::new();
    for part in parts {
        let mut seen: Vec<(&str, f64)> = Vec::new();
        for b in part {
            match seen.iter_mut().find(|(check, _)| *check == b.check) {
                Some((_, at)) => *at = at.min(b.turned_mm),
                None => seen.push((b.check, b.turned_mm)),
            }
        }
        for (check, at) in seen {
            match by_check.iter_mut().find(|(known, _)| *known == check) {
                Some((_, places)) => places.push(at),
                None => by_check.push((check, vec![at])),
            }
        }
    }
    let count = parts.len().max(1) as f64;
    let mut all: Vec<Broken> = by_check
        .into_iter()
        .map(|(check, mut places)| {
            places.sort_by(f64::total_cmp);
            let from_mm = places.get((places.len() - 1) / 2).copied();
            Broken { check: check.into(), share: places.len() as f64 / count, from_mm }
        })
        .collect();
    all.sort_by(|a, b| b.share.total_cmp(&a.share).then(a.check.cmp(&b.check)));
    all
}

#[cfg(test)]
mod tests;
