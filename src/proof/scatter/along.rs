//! Sampled parts along the turned length: a band of the share that the tightest check uses, and single parts.

use super::course::{Break, Course};
use crate::job::Job;
use crate::job::plan::{Along, BandPoint, BrokenPart, CurvePoint, Plan, SampledInput, SampledPart};
use crate::job::scatter::{Draw, Uncertain};
use crate::spread::{checkpoint, spread};

/// Parts that the band is made from.
const BAND_PARTS: usize = 100;
/// The band leaves out this share of the parts at each side.
const OUTSIDE: f64 = 0.05;
/// Most parts that are listed.
const LISTED: usize = 24;

/// The band of a proven plan, the parts that break a check, and one part if it is asked for by its number, from 1. The parts are those of
/// the plan's own count. `name`: the name of an input in words.
pub fn along(plan: &Plan, job: &Job, part: Option<usize>, name: fn(&str) -> &'static str) -> Along {
    let course = Course::new(plan, job);
    let (seed, samples) = plan.scatter.as_ref().map_or((0, 0), |s| (s.seed, s.samples));
    let draws = super::draws(seed, samples);
    let parts = super::sampled(&course, &draws);
    let broken = parts.iter().enumerate().filter_map(|(i, breaks)| {
        let first = breaks.iter().min_by(|a, b| a.turned_mm.total_cmp(&b.turned_mm))?;
        Some(BrokenPart { number: i + 1, check: first.check.into(), from_mm: first.turned_mm })
    });
    let curves = spread(draws.get(..BAND_PARTS.min(samples)).unwrap_or_default(), |draw, _| {
        checkpoint();
        course.curve(draw)
    });
    let one = part.and_then(|number| {
        let index = number.checked_sub(1)?;
        Some(sampled(&course, number, draws.get(index)?, parts.get(index)?, name))
    });
    Along { parts: curves.len(), band: band(&curves), broken: broken.take(LISTED).collect(), part: one }
}

fn sampled(
    course: &Course<'_>,
    number: usize,
    draw: &Draw,
    breaks: &[Break],
    name: fn(&str) -> &'static str,
) -> SampledPart {
    let inputs = Uncertain::ALL.into_iter().filter(|input| input.is_checked() && input.spread(course.job) > 0.0);
    let mut inputs: Vec<SampledInput> = inputs
        .map(|input| SampledInput {
            input: input.key().into(),
            name: name(input.key()).into(),
            value: input.value(course.job, draw[input as usize]).unwrap_or_default(),
            nominal: input.median(course.job).unwrap_or_default(),
            unit: input.unit().into(),
            off: draw[input as usize],
        })
        .collect();
    inputs.sort_by(|a, b| b.off.abs().total_cmp(&a.off.abs()));
    SampledPart { number, holds: breaks.is_empty(), inputs, curve: course.curve(draw) }
}

/// The band over curves with the same places.
fn band(curves: &[Vec<CurvePoint>]) -> Vec<BandPoint> {
    let Some(first) = curves.first() else { return Vec::new() };
    let places = first.iter().enumerate().filter_map(|(i, place)| {
        let mut used: Vec<f64> = curves.iter().filter_map(|c| Some(c.get(i)?.used)).collect();
        used.sort_by(f64::total_cmp);
        let last = used.len().checked_sub(1)?;
        let outside = (OUTSIDE * last as f64).floor() as usize;
        Some(BandPoint {
            stage: place.stage,
            turned_mm: place.turned_mm,
            low: used[outside],
            high: used[last - outside],
        })
    });
    places.collect()
}
