//! What each uncertain input changes: the check nearest to its limit with the input one standard deviation lower and higher, and the share of
//! good parts on both sides of its median.

use super::course::{Break, Course};
use crate::job::plan::{NearestCheck, UncertainInput};
use crate::job::scatter::{Draw, Uncertain, Varies};
use crate::spread::spread;

const NOMINAL: Draw = [0.0; Uncertain::COUNT];
/// A check that scatters less than this is as good as certain: no number of its standard deviations says how near its limit is.
const NO_SPREAD: f64 = 1e-4;

/// The share that each check uses, by its name.
type Most = Vec<(&'static str, f64)>;

/// A draw with one input off its median.
fn moved(input: Uncertain, z: f64) -> Draw {
    let mut draw = NOMINAL;
    draw[input as usize] = z;
    draw
}

fn of(most: &Most, check: &str) -> f64 {
    most.iter().find(|(name, _)| *name == check).map_or(0.0, |(_, used)| *used)
}

/// The inputs that scatter, with what each check uses one standard deviation lower and higher.
fn moves(course: &Course<'_>) -> Vec<(Uncertain, [Most; 2])> {
    let inputs: Vec<Uncertain> = Uncertain::ALL.into_iter().filter(|input| input.spread(course.job) > 0.0).collect();
    spread(&inputs, |input, _| (*input, [-1.0, 1.0].map(|z| course.most(&moved(*input, z)))))
}

/// Spread of the share of each check, as the standard deviation of its logarithm: to first order the root of the sum of the squares of what
/// each input does (propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2; from memory).
pub fn spread_of_checks(course: &Course<'_>) -> Vec<(&'static str, f64)> {
    spreads(&moves(course))
}

fn spreads(moves: &[(Uncertain, [Most; 2])]) -> Vec<(&'static str, f64)> {
    let mut squares: Vec<(&'static str, f64)> = Vec::new();
    for (_, [low, high]) in moves {
        for (check, above) in high {
            let half = 0.5 * (above / of(low, check)).ln();
            if !half.is_finite() {
                continue;
            }
            match squares.iter_mut().find(|(name, _)| name == check) {
                Some((_, sum)) => *sum += half * half,
                None => squares.push((check, half * half)),
            }
        }
    }
    squares.into_iter().map(|(check, sum)| (check, sum.sqrt())).collect()
}

/// The check nearest to its limit, counted in its own standard deviations, and the inputs, the one that moves this check most first.
pub(super) fn told(
    course: &Course<'_>,
    draws: &[Draw],
    parts: &[Vec<Break>],
) -> (Option<NearestCheck>, Vec<UncertainInput>) {
    let (moves, nominal) = (moves(course), course.most(&NOMINAL));
    let away = |(check, s): &(&'static str, f64)| -of(&nominal, check).ln() / s;
    let scattering = spreads(&moves).into_iter().filter(|(check, s)| *s > NO_SPREAD && of(&nominal, check) > 0.0);
    let nearest = scattering.min_by(|a, b| away(a).total_cmp(&away(b)));
    let Some((check, check_spread)) = nearest else { return (None, Vec::new()) };
    let good = |input: Uncertain, is_side: fn(f64) -> bool| {
        let side = draws.iter().zip(parts).filter(|(draw, _)| is_side(draw[input as usize]));
        let (good, all) =
            side.fold((0.0, 0.0), |(good, all), (_, part)| (good + f64::from(u8::from(part.is_empty())), all + 1.0));
        good / f64::max(all, 1.0)
    };
    let input = |(input, [low, high]): &(Uncertain, [Most; 2])| {
        let (used_low, used_high) = (of(low, check), of(high, check));
        let value = |z: f64| input.value(course.job, z).unwrap_or_default();
        let spread = input.spread(course.job);
        UncertainInput {
            input: input.key().into(),
            spread,
            same_for_run: input.varies() == Varies::BetweenRuns,
            value: input.median(course.job).unwrap_or_default(),
            low: value(-1.0),
            high: value(1.0),
            unit: input.unit().into(),
            used_low,
            used_high,
            good_below: good(*input, |z| z < 0.0),
            good_above: good(*input, |z| z >= 0.0),
            time_low_s: None,
            time_high_s: None,
            gain: (used_high - used_low).abs() * (1.0 - input.measured_spread() / spread).max(0.0),
            advice: String::new(),
        }
    };
    let mut inputs: Vec<UncertainInput> = moves.iter().map(input).collect();
    // Rounded, so that the last digits of a processor do not decide between inputs that change nothing.
    let swing = |input: &UncertainInput| (input.swing() * 1e6).round();
    inputs.sort_by(|a, b| swing(b).total_cmp(&swing(a)));
    (Some(NearestCheck { check: check.into(), used: of(&nominal, check), spread: check_spread }), inputs)
}
