//! What each uncertain input changes: the tightest check with the input one standard deviation lower and higher, and the share of good parts
//! on both sides of its median.

use super::course::{Break, Course};
use crate::job::plan::UncertainInput;
use crate::job::scatter::{Draw, Uncertain, Varies};
use crate::spread::spread;

const NOMINAL: Draw = [0.0; Uncertain::COUNT];

/// A draw with one input off its median.
fn moved(input: Uncertain, z: f64) -> Draw {
    let mut draw = NOMINAL;
    draw[input as usize] = z;
    draw
}

/// The inputs that the checks of a job depend on.
fn checked(course: &Course<'_>) -> Vec<Uncertain> {
    Uncertain::ALL.into_iter().filter(|input| input.spread(course.job) > 0.0).collect()
}

/// The inputs, the one that moves the tightest check most first.
pub(super) fn told(course: &Course<'_>, draws: &[Draw], parts: &[Vec<Break>]) -> Vec<UncertainInput> {
    let inputs = checked(course);
    let mut told: Vec<UncertainInput> = spread(&inputs, |input, _| {
        let worst = |z: f64| {
            let most = course.most(&moved(*input, z));
            most.into_iter().max_by(|a, b| a.1.total_cmp(&b.1)).unwrap_or(("", 0.0))
        };
        let ((check_low, used_low), (check_high, used_high)) = (worst(-1.0), worst(1.0));
        let value = |z: f64| input.value(course.job, z).unwrap_or_default();
        let good = |is_side: fn(f64) -> bool| {
            let side = draws.iter().zip(parts).filter(|(draw, _)| is_side(draw[*input as usize]));
            let (mut good, mut all) = (0, 0);
            for (_, part) in side {
                all += 1;
                good += usize::from(part.is_empty());
            }
            f64::from(good as u32) / f64::from(all.max(1) as u32)
        };
        UncertainInput {
            input: input.key().into(),
            spread: input.spread(course.job),
            same_for_run: input.varies() == Varies::BetweenRuns,
            value: input.median(course.job).unwrap_or_default(),
            low: value(-1.0),
            high: value(1.0),
            unit: input.unit().into(),
            used_low,
            check_low: check_low.into(),
            used_high,
            check_high: check_high.into(),
            good_below: good(|z| z < 0.0),
            good_above: good(|z| z >= 0.0),
            time_low_s: None,
            time_high_s: None,
            advice: String::new(),
        }
    });
    told.sort_by(|a, b| b.swing().total_cmp(&a.swing()));
    told
}

/// Spread of the share of each check, as the standard deviation of its logarithm: to first order the root of the sum of the squares of what
/// each input does (propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2; from memory).
pub fn spread_of_checks(course: &Course<'_>) -> Vec<(&'static str, f64)> {
    let inputs = checked(course);
    let halves = spread(&inputs, |input, _| {
        let (low, high) = (course.most(&moved(*input, -1.0)), course.most(&moved(*input, 1.0)));
        let both = high.into_iter().filter_map(|(check, used)| {
            let (_, below) = low.iter().find(|(name, _)| *name == check)?;
            Some((check, 0.5 * (used / below).ln()))
        });
        both.collect::<Vec<_>>()
    });
    let mut squares: Vec<(&'static str, f64)> = Vec::new();
    for (check, half) in halves.into_iter().flatten().filter(|(_, half)| half.is_finite()) {
        match squares.iter_mut().find(|(name, _)| *name == check) {
            Some((_, sum)) => *sum += half * half,
            None => squares.push((check, half * half)),
        }
    }
    squares.into_iter().map(|(check, sum)| (check, sum.sqrt())).collect()
}
