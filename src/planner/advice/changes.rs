//! Single changes that would make an infeasible job feasible, each with the least value needed. A value is told only
//! when planning with it has found a plan.

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::Change;
use crate::planner::advice::candidate::{Candidate, Ease};
use crate::planner::advice::tries::{
    EACH_MAY_TAKE, FARTHEST, Help, least_value, planned_within, spread_told, told, values,
};
use crate::planner::advice::{candidates, pairs};
use crate::say;
use crate::spread::Allowance;

/// A change that works.
struct Works {
    order: (Ease, usize),
    time_s: f64,
    change: Change,
}

/// The result of the tries of one change.
enum Least {
    Works(Works),
    /// There is no plan with any value tried.
    Fails,
    /// The tries would have taken more work than allowed.
    Unknown,
}

/// Ranked changes: easy ones first, equally easy ones by time.
///
/// `extra_time_s` is the time of a part with the change, minus the time with the fastest of the changes.
///
/// # Errors
/// [`Defect`] where planning one of the changes meets one.
pub fn find(job: &Job) -> Result<Help, Defect> {
    let list = candidates::all(job);
    let tried = spread_told(
        |done| say!("progress-single-changes", done = done, all = list.len()),
        &list,
        |c, index| least(job, c, index),
    )?;
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

/// The first value tried with which there is a plan, and its time. None: no value has one.
fn any_value(
    candidate: &Candidate,
    planned: impl Fn(f64) -> Result<Option<f64>, Defect>,
) -> Result<Option<(f64, f64)>, Defect> {
    // Too large a change may fail as too small a one does: a bar without stock to turn, a depth that chatters.
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
    let text = say!("change-works", change = words, seconds = format!("{time_s:.1}"));
    Ok(Least::Works(Works {
        order: (candidate.ease, index),
        time_s,
        change: Change { change: candidate.name.clone(), from, to, extra_time_s: None, text },
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planner::advice::candidate::{Ease, number};

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
