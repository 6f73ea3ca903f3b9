//! Tries of a change: plans with values of it, within an allowance of work.

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::Change;
use crate::planner::advice::candidate::Candidate;
use crate::planner::places::lessons::Lessons;
use crate::planner::solve::{Answer, Effort, solve};
use crate::spread::Allowance;
use serde_json::{Value, json};
use std::sync::atomic::{AtomicUsize, Ordering};

/// Shares of the way to the farthest value worth trying. They are tried until one has a plan: where the farthest value
/// is too much, a smaller one may do.
pub const FARTHEST: [f64; 6] = [1.0, 0.5, 0.25, 0.75, 0.125, 0.0625];
/// Largest number of halvings in the search for the least value.
const HALVINGS: usize = 12;

/// Work that the tries of one change may take together, in steps: some seconds. A change that takes more is not
/// advised.
pub const EACH_MAY_TAKE: u64 = 3_000_000;

/// Time from part to part of the plan of a job, s. None: there is no plan.
///
/// # Errors
/// [`Defect`] as of [`solve`].
pub fn planned_s(job: &Job, effort: Effort) -> Result<Option<f64>, Defect> {
    Ok(match solve(job, effort, &Lessons::default())? {
        Answer::Found(plan) => Some(plan.pace_s()),
        Answer::Blocked(_) => None,
    })
}

/// Time from part to part of the plan of a job, s. None: there is no plan, or it is not found within the allowance.
///
/// # Errors
/// [`Defect`] as of [`solve`], met within the allowance.
pub fn planned_within(allowance: &Allowance, job: &Job) -> Result<Option<f64>, Defect> {
    allowance.until(|| planned_s(job, Effort::Feasible)).unwrap_or(Ok(None))
}

/// What would help.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Help {
    /// Changes, ranked.
    pub changes: Vec<Change>,
    /// Where no single change is enough: what was tried, in words.
    pub tried: Option<String>,
}

/// Works as [`spread`] does, and also reports in words how many items are done.
///
/// # Errors
/// The first defect of `work`.
pub fn spread_told<L: Sync, T: Send>(
    words: impl Fn(usize) -> String + Sync,
    list: &[L],
    work: impl Fn(&L, usize) -> Result<T, Defect> + Sync,
) -> Result<Vec<T>, Defect> {
    let done = AtomicUsize::new(0);
    spread(list, |item, index| {
        let found = work(item, index);
        let n = done.fetch_add(1, Ordering::Relaxed) + 1;
        crate::spread::tell(|| words(n));
        found
    })
}

/// Does `work` for every item of a list on all cores. The results are in the order of the list.
///
/// # Errors
/// The first defect of `work`, in the order of the list.
pub fn spread<L: Sync, T: Send>(
    list: &[L],
    work: impl Fn(&L, usize) -> Result<T, Defect> + Sync,
) -> Result<Vec<T>, Defect> {
    crate::spread::spread(list, work).into_iter().collect()
}

/// A number as it is printed: without a fraction where it has none.
fn found_number(value: f64) -> Value {
    let rounded = (value * 1e6).round() / 1e6;
    if rounded.fract() == 0.0 { json!(rounded as i64) } else { json!(rounded) }
}

/// The least change of a number that still has a plan, in whole steps from the value in the job, and its time. `to` is
/// a value that has a plan, and `known_s` its time.
///
/// # Errors
/// The first defect of `planned`.
pub fn least_value(
    candidate: &Candidate,
    to: f64,
    known_s: f64,
    planned: impl Fn(f64) -> Result<Option<f64>, Defect>,
) -> Result<(f64, f64), Defect> {
    let (mut value, mut time_s) = (to, known_s);
    if candidate.after.is_some() {
        return Ok((value, time_s));
    }
    let at = |n: u64| candidate.at(n, to);
    let steps = candidate.steps(to);
    let (mut bad, mut good) = (0, steps + 1);
    for _ in 0..HALVINGS {
        if good - bad <= 1 {
            break;
        }
        let middle = bad + (good - bad) / 2;
        match planned(at(middle))? {
            Some(t) => (good, value, time_s) = (middle, at(middle), t),
            None => bad = middle,
        }
    }
    Ok((value, time_s))
}

/// The value before a change, the value after it, and its words.
pub fn told(candidate: &Candidate, value: f64) -> (Value, Value, String) {
    let before = candidate.before.as_f64().map_or_else(|| candidate.before.clone(), found_number);
    let after = candidate.after.clone().unwrap_or_else(|| found_number(value));
    (before, after, (candidate.says)((value * 1e6).round() / 1e6))
}

/// Values at some shares of the way to the farthest value worth trying, each once. A change without a number has one
/// value.
pub fn values(candidate: &Candidate, shares: &[f64]) -> Vec<f64> {
    let (from, to) = candidate.range;
    let mut values = vec![to];
    for share in shares.iter().filter(|s| **s < 1.0 && candidate.after.is_none()) {
        let value = candidate.rounded(from + share * (to - from));
        // A value that is rounded back to the value in the job, or beyond it, is no change.
        if (value - from) * (to - from) > 0.0 && !values.contains(&value) {
            values.push(value);
        }
    }
    values
}
