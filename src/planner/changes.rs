//! Single changes that would make an infeasible job feasible, each with the least value needed, found by planning with
//! it: a value is only told when there is a plan with it.

use super::candidates::{self, Candidate};
use super::lessons::Lessons;
use super::pairs;
use super::sequence::Defect;
use super::solve::{Answer, Effort, solve};
use crate::job::Job;
use crate::job::plan::Change;
use crate::spread::Allowance;
use serde_json::{Value, json};
use std::sync::atomic::{AtomicUsize, Ordering};

/// Shares of the way to the farthest value worth trying that are tried until one has a plan: a little of what is too much
/// at its far end may be enough.
pub const FARTHEST: [f64; 6] = [1.0, 0.5, 0.25, 0.75, 0.125, 0.0625];
/// Halvings on the way to the least value.
const HALVINGS: usize = 12;

/// What the tries of one change may take together, in breaths: some seconds. What takes longer is not advised.
pub const EACH_MAY_TAKE: u64 = 3_000_000;

/// A change that works.
struct Works {
    order: (candidates::Ease, usize),
    time_s: f64,
    change: Change,
}

/// What came of the tries of one change.
enum Least {
    Works(Works),
    /// There is no plan with any value tried.
    Fails,
    /// They would have taken more than they may.
    Unknown,
}

/// Time from part to part of the plan of a job, s; none when there is none.
pub fn planned_s(job: &Job, effort: Effort) -> Result<Option<f64>, Defect> {
    Ok(match solve(job, effort, &Lessons::default())? {
        Answer::Found(plan) => Some(plan.pace_s()),
        Answer::Blocked(_) => None,
    })
}

/// The same as far as it is found out within an allowance; none beyond it.
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

/// Ranked changes: what is easy to do first, then by time.
///
/// `extra_time_s` is the time of a part with the change, less that with the fastest of the changes.
pub fn find(job: &Job) -> Result<Help, Defect> {
    let list = candidates::all(job);
    let tried = spread_told("single changes that would help", &list, |c, index| least(job, c, index))?;
    let unknown = tried.iter().filter(|t| matches!(t, Least::Unknown)).count();
    let works = tried.into_iter().filter_map(|t| if let Least::Works(works) = t { Some(works) } else { None });
    let mut works: Vec<Works> = works.collect();
    if works.is_empty() {
        return pairs::best(job, &list, unknown);
    }
    works.sort_by(|a, b| a.order.0.cmp(&b.order.0).then(a.time_s.total_cmp(&b.time_s)).then(a.order.1.cmp(&b.order.1)));
    let fastest = works.iter().map(|w| w.time_s).fold(f64::INFINITY, f64::min);
    let told = |w: Works| Change { extra_time_s: Some(w.time_s - fastest), ..w.change };
    Ok(Help { changes: works.into_iter().map(told).collect(), tried: None })
}

/// The same as [`spread`], and tells how many are done.
pub fn spread_told<L: Sync, T: Send>(
    what: &str,
    list: &[L],
    work: impl Fn(&L, usize) -> Result<T, Defect> + Sync,
) -> Result<Vec<T>, Defect> {
    let done = AtomicUsize::new(0);
    spread(list, |item, index| {
        let found = work(item, index);
        let n = done.fetch_add(1, Ordering::Relaxed) + 1;
        crate::spread::tell(|| format!("looking for {what}, {n} of {} tried", list.len()));
        found
    })
}

/// Works out something for everything in a list on all cores; results in the order of the list, or the first defect.
pub fn spread<L: Sync, T: Send>(
    list: &[L],
    work: impl Fn(&L, usize) -> Result<T, Defect> + Sync,
) -> Result<Vec<T>, Defect> {
    crate::spread::spread(list, work).into_iter().collect()
}

/// A number as it is printed: whole where it is whole.
fn found_number(value: f64) -> Value {
    let rounded = (value * 1e6).round() / 1e6;
    if rounded.fract() == 0.0 { json!(rounded as i64) } else { json!(rounded) }
}

/// The least value of a number in whole steps from where the job stands that still has a plan, with its time; `to` is a
/// value that has one, and `known_s` its time.
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

/// What a change says of itself at a value: its value before, its value after, and the words.
pub fn told(candidate: &Candidate, value: f64) -> (Value, Value, String) {
    let before = candidate.before.as_f64().map_or_else(|| candidate.before.clone(), found_number);
    let after = candidate.after.clone().unwrap_or_else(|| found_number(value));
    (before, after, (candidate.says)((value * 1e6).round() / 1e6))
}

/// Values at shares of the way to the farthest worth trying, each once; the only one of a change that is made or not.
pub fn values(candidate: &Candidate, shares: &[f64]) -> Vec<f64> {
    let (from, to) = candidate.range;
    let mut values = vec![to];
    for share in shares.iter().filter(|s| **s < 1.0 && candidate.after.is_none()) {
        let value = candidate.rounded(from + share * (to - from));
        // Rounded back to where the job stands, or beyond, it is no change.
        if (value - from) * (to - from) > 0.0 && !values.contains(&value) {
            values.push(value);
        }
    }
    values
}

/// The first of some values with which there is a plan, and its time.
fn any_value(
    candidate: &Candidate,
    planned: impl Fn(f64) -> Result<Option<f64>, Defect>,
) -> Result<Option<(f64, f64)>, Defect> {
    // Too much of some changes is as bad as too little: a bar without stock to turn, a depth that chatters.
    for value in values(candidate, &FARTHEST) {
        if let Some(time_s) = planned(value)? {
            return Ok(Some((value, time_s)));
        }
    }
    Ok(None)
}

/// The least value of a change with which there is a plan.
fn least(job: &Job, candidate: &Candidate, index: usize) -> Result<Least, Defect> {
    let allowance = Allowance::of(EACH_MAY_TAKE);
    let planned = |v: f64| planned_within(&allowance, &(candidate.with)(job, v));
    let Some((to, known_s)) = any_value(candidate, planned)? else {
        return Ok(if allowance.is_spent() { Least::Unknown } else { Least::Fails });
    };
    let (value, time_s) = least_value(candidate, to, known_s, planned)?;
    let (from, to, words) = told(candidate, value);
    let text = format!("{words}: {time_s:.1} s a part");
    Ok(Least::Works(Works {
        order: (candidate.ease, index),
        time_s,
        change: Change { change: candidate.name.clone(), from, to, extra_time_s: None, text },
    }))
}

#[cfg(test)]
mod tests {
    use super::super::candidates::{Ease, number};
    use super::*;

    /// A number from 100 on whose far end is 500 more.
    fn stroke() -> Candidate {
        number("stroke", Ease::Machine, (100.0, 600.0), 5.0, |v| format!("{v}"), |_, _| {})
    }

    #[test]
    fn a_value_that_holds_in_a_narrow_stretch_alone_is_found() {
        for stretch in [(150.0, 190.0), (440.0, 480.0), (600.0, 600.0), (130.0, 135.0)] {
            let planned = |v: f64| Ok((v >= stretch.0 && v <= stretch.1).then_some(v));
            let found = any_value(&stroke(), planned).expect("no defect");
            let (to, time_s) = found.unwrap_or_else(|| panic!("{stretch:?}"));
            let (least, _) = least_value(&stroke(), to, time_s, planned).expect("no defect");
            assert_eq!(least, stretch.0, "{stretch:?}");
        }
        let never = any_value(&stroke(), |_| Ok(None)).expect("no defect");
        assert_eq!(never, None);
    }

    #[test]
    fn values_are_round_and_each_is_tried_once() {
        assert_eq!(values(&stroke(), &[1.0, 0.5, 0.25, 0.0625, 0.06, 0.001]), [600.0, 350.0, 225.0, 130.0]);
        let down = number("floor", Ease::Setting, (1.0, 0.2), 0.05, |v| format!("{v}"), |_, _| {});
        assert!(values(&down, &FARTHEST).iter().all(|v| (0.2..1.0).contains(v)));
    }
}
