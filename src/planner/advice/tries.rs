//! Tries of changes: plans with them, within an allowance of work.

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::Change;
use crate::planner::advice::candidate::{Candidate, number_told};
use crate::planner::places::lessons::Lessons;
use crate::planner::quick::comes_through;
use crate::planner::solve::{Answer, Effort, solve};
use crate::spread::Allowance;
use serde_json::Value;

/// Shares of the way to the farthest value worth trying. They are tried until one has a plan: where the farthest value
/// is too much, a smaller one may do.
pub const FARTHEST: [f64; 6] = [1.0, 0.5, 0.25, 0.75, 0.125, 0.0625];
/// Largest number of halvings in the search for the least value.
const HALVINGS: usize = 12;

/// Work that the tries of one change may take together, in steps: less than a second. A change that takes more is not
/// advised.
pub const EACH_MAY_TAKE: u64 = 700_000;

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

/// Whether there is a plan, as far as [`comes_through`] tells. None: it is not known within the allowance.
pub fn passes_within(allowance: &Allowance, job: &Job) -> Option<bool> {
    allowance.until(|| comes_through(job))
}

/// How far the bar comes, and the names of what stops it there; infinitely far if there is a plan.
///
/// # Errors
/// [`Defect`] as of [`solve`].
pub fn stopped(job: &Job) -> Result<(f64, Vec<String>), Defect> {
    Ok(match solve(job, Effort::Explain, &Lessons::default())? {
        Answer::Found(_) => (f64::INFINITY, Vec::new()),
        Answer::Blocked(blocked) => (blocked.farthest_mm, blocked.names().into_iter().map(str::to_owned).collect()),
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

/// The first value tried with which there is a plan. None: no value has one.
pub fn any_value(candidate: &Candidate, passes: impl Fn(f64) -> bool) -> Option<f64> {
    // Too large a change may fail as too small a one does: a depth that chatters. One that only adds possibilities may not.
    let shares = if candidate.group.is_some() { &FARTHEST[..] } else { &FARTHEST[..1] };
    values(candidate, shares).into_iter().find(|value| passes(*value))
}

/// The least change of a number that still has a plan, in whole steps from the value in the job. `to` is a value that has one.
pub fn least(candidate: &Candidate, to: f64, passes: impl Fn(f64) -> bool) -> f64 {
    let planned = |value: f64| Ok(passes(value).then_some(0.0));
    least_value(candidate, to, 0.0, planned).map_or(to, |(value, _)| value)
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
    let before = candidate.before.as_f64().map_or_else(|| candidate.before.clone(), number_told);
    let after = candidate.after.clone().unwrap_or_else(|| number_told(value));
    (before, after, (candidate.says)((value * 1e6).round() / 1e6))
}

/// A change with a value, as told.
pub fn change(candidate: &Candidate, value: f64, text: impl FnOnce(String) -> String) -> Change {
    let (from, to, words) = told(candidate, value);
    let edits = (candidate.writes)((value * 1e6).round() / 1e6);
    Change { change: candidate.name.clone(), from, to, extra_time_s: None, text: text(words), edits }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::ChangeKind;
    use crate::planner::advice::candidate::{Role, number};

    /// A number from 100 on whose far end is 500 more.
    fn stroke() -> Candidate {
        let role = Role::Change(ChangeKind::Machine);
        number("stroke", role, (100.0, 600.0), 5.0, |v| format!("{v}"), |_, _| {})
    }

    #[test]
    fn a_value_that_holds_in_a_narrow_stretch_alone_is_found() {
        for stretch in [(150.0, 190.0), (440.0, 480.0), (600.0, 600.0), (130.0, 135.0)] {
            let passes = |v: f64| v >= stretch.0 && v <= stretch.1;
            let may_harm = stroke().in_group("stroke");
            let to = any_value(&may_harm, passes).unwrap_or_else(|| panic!("{stretch:?}"));
            assert_eq!(least(&may_harm, to, passes), stretch.0, "{stretch:?}");
        }
        assert_eq!(any_value(&stroke().in_group("stroke"), |_| false), None);
        // One that only adds possibilities is tried at its far end.
        assert_eq!(any_value(&stroke(), |v| v < 500.0), None);
        assert_eq!(any_value(&stroke(), |v| v > 500.0), Some(600.0));
    }

    #[test]
    fn values_are_round_and_each_is_tried_once() {
        assert_eq!(values(&stroke(), &[1.0, 0.5, 0.25, 0.0625, 0.06, 0.001]), [600.0, 350.0, 225.0, 130.0]);
        let role = Role::Change(ChangeKind::Speed);
        let down = number("floor", role, (1.0, 0.2), 0.05, |v| format!("{v}"), |_, _| {});
        assert!(values(&down, &FARTHEST).iter().all(|v| (0.2..1.0).contains(v)));
    }
}
