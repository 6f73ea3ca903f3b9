//! Runs a finished plan with scattered inputs: straightness, support stiffness, main force, passive and feed force, Young's
//! modulus, damping and bar diameter differ from part to part and from machine to machine.
//!
//! Each sampled part is turned as the plan says, at the speeds of the plan. The result tells how often each check fails, and up to
//! which turned length each stage holds in 99 of 100 parts. Factors have log-normal spreads (common practice, no source). A fixed
//! seed makes the result repeatable.

use super::grips::held_mm;
use super::moments::{last_regrip, moment};
use crate::job::plan::{Broken, Plan, ScatterReport, ScatterStage};
use crate::job::{Collet, Job};
use crate::process::Rig;
use crate::process::checks::{self, BY_SPEED, Event, Finding, View};
use crate::process::segments::{Segment, Work};
use crate::process::speed::COUNT_GUARD;
use crate::spread::spread;
use fastrand::Rng;
use std::f64::consts::PI;

/// Largest distance between two states of a sampled part, mm.
const STEP_MM: f64 = 5.0;
/// Share of parts in which a stage must hold up to the reported length.
const HOLDS_IN: f64 = 0.99;

/// The checks that fail on one sampled part: stage index, check, and the turned length of the first failure.
type Breaks = Vec<(usize, &'static str, f64)>;

/// Runs a proven plan with the scatter of the job. `one_done` is called after each sampled part.
pub fn scatter(plan: &Plan, job: &Job, one_done: &(dyn Fn() + Sync)) -> ScatterReport {
    let collet = plan.collet.as_deref().and_then(|name| job.machine.collet(name));
    let nominal = Rig::new(job, collet);
    let segments = nominal.segments().unwrap_or_default();
    let indices: Vec<u64> = (0..job.scatter.samples as u64).collect();
    let parts: Vec<Breaks> = spread(&indices, |i, _| {
        let breaks = part(plan, job, collet, &segments, *i);
        one_done();
        breaks
    });
    let count = parts.len().max(1) as f64;
    let stages = plan.stages.iter().enumerate().map(|(index, stage)| {
        let mut first: Vec<f64> = Vec::with_capacity(parts.len());
        let mut broken: Vec<(&str, usize)> = Vec::new();
        for breaks in &parts {
            let mine = || breaks.iter().filter(|b| b.0 == index);
            // A failure is found at a state; the stage held up to the state before.
            let earliest = mine().map(|b| b.2).fold(f64::INFINITY, f64::min);
            first.push(if earliest.is_finite() { (earliest - STEP_MM).max(stage.from_mm) } else { stage.to_mm });
            for b in mine() {
                match broken.iter_mut().find(|(name, _)| *name == b.1) {
                    Some((_, n)) => *n += 1,
                    None => broken.push((b.1, 1)),
                }
            }
        }
        first.sort_by(f64::total_cmp);
        let at = ((1.0 - HOLDS_IN) * first.len() as f64).floor() as usize;
        let failed = parts.iter().filter(|p| p.iter().any(|b| b.0 == index)).count();
        broken.sort_by(|a, b| b.1.cmp(&a.1).then(a.0.cmp(b.0)));
        ScatterStage {
            number: stage.number,
            broken_share: failed as f64 / count,
            broken: broken.into_iter().map(|(c, n)| Broken { check: c.into(), share: n as f64 / count }).collect(),
            holds_to_mm: first.get(at).copied().unwrap_or(stage.to_mm),
        }
    });
    ScatterReport {
        samples: parts.len(),
        seed: job.scatter.seed,
        good_share: parts.iter().filter(|p| p.is_empty()).count() as f64 / count,
        stages: stages.collect(),
    }
}

/// A random number with standard normal distribution (Box & Muller, Ann. Math. Stat. 29 (1958); from memory).
fn normal(rng: &mut Rng) -> f64 {
    // 1 - f64() is never 0, so the logarithm is finite.
    (-2.0 * (1.0 - rng.f64()).ln()).sqrt() * (2.0 * PI * rng.f64()).cos()
}

/// A random factor with log-normal distribution, median 1 and a relative spread (coefficient of variation): `σ² = ln(1 + spread²)`,
/// any text on statistics (from memory).
fn factor(rng: &mut Rng, spread: f64) -> f64 {
    let sigma = (1.0 + spread * spread).ln().sqrt();
    (sigma * normal(rng)).exp()
}

/// The job of one sampled part, and the factor on the radial forces of its cuts.
fn sampled(job: &Job, index: u64) -> (Job, f64) {
    let s = &job.scatter;
    let mut rng = Rng::with_seed(s.seed.wrapping_mul(0x9E37_79B9_7F4A_7C15).wrapping_add(index));
    let mut part = job.clone();
    part.shaft.bow_mm_per_m *= factor(&mut rng, s.straightness);
    let kc = factor(&mut rng, s.kc);
    part.shaft.material.kc11_n_per_mm2 *= kc;
    part.shaft.material.e_gpa *= factor(&mut rng, s.e);
    part.limits.damping_ratio *= factor(&mut rng, s.damping);
    let bar = match (s.bar_mm, &job.stock.tolerance) {
        (Some(spread), _) => spread * normal(&mut rng),
        (None, Some(t)) => t.lower_mm + t.width_mm() * rng.f64(),
        (None, None) => 0.0,
    };
    part.stock.diameter_mm = (part.stock.diameter_mm + bar).max(0.5 * part.stock.diameter_mm);
    if let Some(bush) = &mut part.machine.bush {
        bush.stiffness_n_per_um *= factor(&mut rng, s.supports);
    }
    part.machine.headstock.stiffness_n_per_um *= factor(&mut rng, s.supports);
    if let Some(counter) = &mut part.machine.counter_spindle {
        counter.stiffness_n_per_um *= factor(&mut rng, s.supports);
        if let Some(centre) = &mut counter.centre {
            centre.stiffness_n_per_um *= factor(&mut rng, s.supports);
        }
        if let Some(sleeve) = &mut counter.sleeve {
            sleeve.stiffness_n_per_um *= factor(&mut rng, s.supports);
        }
    }
    // The floor stands for what nobody has measured, so it scatters with the rest of the passive force.
    let passive = factor(&mut rng, s.passive);
    part.cutting.in_plane_share *= passive;
    part.cutting.passive_floor *= passive;
    (part, kc * passive)
}

fn part(plan: &Plan, job: &Job, collet: Option<&Collet>, segments: &[Segment], index: u64) -> Breaks {
    let (sample, force) = sampled(job, index);
    let rig = Rig::new(&sample, collet);
    // The part is cut as planned for the nominal part; only the forces differ.
    let segments: Vec<Segment> = segments.iter().map(|s| stronger(s, force)).collect();
    let mut breaks = Breaks::new();
    for stage in 0..plan.stages.len() {
        for piece in pieces(plan, &segments, stage) {
            run_piece(&rig, plan, stage, &piece, &mut breaks);
        }
        events(&rig, plan, stage, &mut breaks);
    }
    breaks
}

fn stronger(segment: &Segment, times: f64) -> Segment {
    let mut segment = segment.clone();
    segment.change_mm *= times;
    for travel in &mut segment.travels {
        travel.net_radial_n *= times;
        travel.stiffness_n_per_mm.iter_mut().for_each(|k| *k *= times);
    }
    segment
}

struct Cut<'a> {
    segment: &'a Segment,
    from_mm: f64,
    to_mm: f64,
    rpm: f64,
}

fn pieces<'a>(plan: &Plan, segments: &'a [Segment], stage: usize) -> Vec<Cut<'a>> {
    let listed = plan.segments.iter().filter(|s| s.stage == stage + 1).filter_map(|s| {
        let middle = 0.5 * (s.from_mm + s.to_mm);
        let segment = segments.iter().find(|g| g.from_mm <= middle && g.to_mm >= middle)?;
        Some(Cut { segment, from_mm: s.from_mm, to_mm: s.to_mm, rpm: s.rpm })
    });
    let mut all: Vec<Cut<'a>> = listed.collect();
    let last = segments.last().filter(|s| s.work == Work::PartOff && stage + 1 == plan.stages.len());
    if let (Some(segment), Some(rpm)) = (last, plan.part_off_rpm) {
        all.push(Cut { segment, from_mm: segment.from_mm, to_mm: segment.to_mm, rpm });
    }
    all
}

fn note(breaks: &mut Breaks, stage: usize, found: &Finding, turned_mm: f64) {
    let known = breaks.iter().any(|b| b.0 == stage && b.1 == found.check);
    if !found.passes() && !known {
        breaks.push((stage, found.check, turned_mm));
    }
}

fn run_piece(rig: &Rig<'_>, plan: &Plan, stage: usize, piece: &Cut<'_>, breaks: &mut Breaks) {
    let steps = ((piece.to_mm - piece.from_mm) / STEP_MM).ceil().max(1.0);
    let mut flexibilities = Vec::with_capacity(steps as usize + 1);
    let last = last_regrip(plan, stage, piece.from_mm, true);
    for i in 0..=steps as usize {
        let t = piece.from_mm + (piece.to_mm - piece.from_mm) * i as f64 / steps;
        let s = moment(rig, plan, stage, t, last);
        let Ok(posed) = rig.posed(&s) else { continue };
        flexibilities.push(posed.at_rest.tool_mm_per_n);
        // Only failures count, so the critical speed is computed only if a check that depends on it may fail.
        let needed = rig.critical_needed_rpm(&s, &posed.at_rest, piece.rpm, [1.0; BY_SPEED]);
        let holds = posed.swings_above(needed * (1.0 + COUNT_GUARD));
        let answers = if holds { posed.at_rest } else { posed.with_critical() };
        let view = View { rig, state: &s, answers: &answers, segment: piece.segment, rpm: piece.rpm };
        let found: Vec<_> = if holds { checks::at_rest(&view).collect() } else { checks::all(&view).collect() };
        for found in &found {
            note(breaks, stage, found, t);
        }
    }
    if let Some(found) = checks::cut::along(rig, piece.segment, &flexibilities) {
        note(breaks, stage, &found, piece.from_mm);
    }
}

fn events(rig: &Rig<'_>, plan: &Plan, stage: usize, breaks: &mut Breaks) {
    let s = &plan.stages[stage];
    for task in rig.tasks() {
        let done = plan.features.iter().find(|f| f.stage == Some(stage + 1) && f.text == task.text);
        let Some(t) = done.and_then(|f| f.turned_mm) else { continue };
        let done = moment(rig, plan, stage, t, last_regrip(plan, stage, t, false));
        for found in checks::at_event(rig, &done, Event::Works(&task)).flatten() {
            note(breaks, stage, &found, t);
        }
    }
    let end = moment(rig, plan, stage, s.to_mm, last_regrip(plan, stage, s.to_mm, true));
    if stage + 1 < plan.stages.len() {
        for found in checks::at_event(rig, &end, Event::LetsGo).flatten() {
            note(breaks, stage, &found, s.to_mm);
        }
        return;
    }
    let Some(grip) = &s.grip else { return };
    for found in checks::of_last_grip(rig, grip.nose_mm, held_mm(rig.job, rig.hold_mm(), grip)).flatten() {
        note(breaks, stage, &found, s.to_mm);
    }
}
