//! What a limit costs: the seconds per part, and the next value at which the plan changes. Both come from planning
//! again, not from estimates.

use crate::defect::Defect;
use crate::job::ChangeKind;
use crate::job::Job;
use crate::job::plan::LimitCost;
use crate::lang;
use crate::planner::advice::candidate::{Candidate, Role};
use crate::planner::advice::candidates;
use crate::planner::advice::tries::{least_value, planned_s, spread, told, values};
use crate::planner::solve::Effort;
use crate::say;
use std::cell::Cell;

/// A plan counts as faster only if it saves at least this, s.
const SAME_S: f64 = 0.05;
/// Shares of the way to the farthest value worth trying that are planned with. The farthest value is not always the
/// fastest.
const TRIED: [f64; 4] = [1.0, 0.5, 0.25, 0.1];

/// Every limit that gives a faster plan when it is relaxed, the dearest first. `now_s` is the time of a part with all
/// limits in force.
///
/// # Errors
/// [`Defect`] where planning with a limit relaxed meets one.
pub fn find(job: &Job, now_s: f64) -> Result<Vec<LimitCost>, Defect> {
    let list: Vec<Candidate> = candidates::all(job).into_iter().filter(|c| counts(c.role)).collect();
    let mut found: Vec<LimitCost> = spread(&list, |c, _| cost(job, c, now_s))?.into_iter().flatten().collect();
    found.sort_by(|a, b| b.seconds.total_cmp(&a.seconds));
    Ok(found)
}

/// What a limit is here: what the house, the drawing, the user or the machine sets. Limits of safety are not for sale.
fn counts(role: Role) -> bool {
    use ChangeKind as K;
    match role {
        Role::House => true,
        Role::Safety => false,
        Role::Change(kind) => matches!(
            kind,
            K::Wish
                | K::Stop
                | K::Grip
                | K::Straightness
                | K::Drawing
                | K::Sleeve
                | K::Tray
                | K::ShopMachine
                | K::Machine
        ),
    }
}

fn cost(job: &Job, candidate: &Candidate, now_s: f64) -> Result<Option<LimitCost>, Defect> {
    // The full effort, because this time is compared with that of a plan of full effort.
    least_cost(candidate, now_s, |v| planned_s(&(candidate.with)(job, v), Effort::Best))
}

/// What a limit costs. `planned` gives the time of a part at each of its values.
fn least_cost(
    candidate: &Candidate,
    now_s: f64,
    planned: impl Fn(f64) -> Result<Option<f64>, Defect>,
) -> Result<Option<LimitCost>, Defect> {
    // Every value planned with may be the fastest; of equals the one nearest to the value in the job.
    let best: Cell<Option<(f64, f64)>> = Cell::new(None);
    let away = |v: f64| (v - candidate.range.0).abs();
    let faster = |v: f64| {
        let Some(time_s) = planned(v)?.filter(|t| now_s - t >= SAME_S) else { return Ok(None) };
        if best.get().is_none_or(|(b, s)| time_s < s || (time_s == s && away(v) < away(b))) {
            best.set(Some((v, time_s)));
        }
        Ok(Some(time_s))
    };
    for value in values(candidate, &TRIED) {
        faster(value)?;
    }
    let Some((to, known_s)) = best.get() else { return Ok(None) };
    let (value, time_s) = least_value(candidate, to, known_s, faster)?;
    let Some((fastest, fastest_s)) = best.get() else { return Ok(None) };
    let (seconds, next_seconds) = (now_s - fastest_s, now_s - time_s);
    let (now, next, words) = told(candidate, value);
    let (_, best, best_words) = told(candidate, fastest);
    let (saved, most) = (lang::fixed(next_seconds, 1), lang::fixed(seconds, 1));
    let text = if seconds > next_seconds + SAME_S {
        say!("change-saves-most", change = words, seconds = saved, most = most, best = best_words)
    } else {
        say!("change-saves", change = words, seconds = saved)
    };
    Ok(Some(LimitCost { limit: candidate.name.clone(), now, seconds, best, next, next_seconds, text }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::planner::advice::candidate::number;

    fn stroke() -> Candidate {
        number(
            "stroke",
            Role::Change(ChangeKind::Machine),
            (100.0, 600.0),
            5.0,
            |v| format!("a stroke of {v} mm"),
            |_, _| {},
        )
    }

    /// A longer stroke saves a re-grip at 180 and another at 330 mm; from 400 mm on the bar behind the bush slows the work.
    fn time_s(v: f64) -> Result<Option<f64>, Defect> {
        let slow_s = if v > 400.0 { 6.0 } else { 0.0 };
        Ok(Some(
            if v >= 330.0 {
                90.0
            } else if v >= 180.0 {
                95.0
            } else {
                100.0
            } + slow_s,
        ))
    }

    #[test]
    fn a_limit_costs_what_is_saved_at_the_best_of_its_values_and_says_at_which() {
        let cost = least_cost(&stroke(), 100.0, time_s).expect("no defect").expect("it costs");
        assert_eq!((cost.seconds, cost.next_seconds), (10.0, 5.0), "{cost:?}");
        assert_eq!((cost.best.as_f64(), cost.next.as_f64()), (Some(350.0), Some(180.0)), "{cost:?}");
        let says = "a stroke of 180 mm: saves 5.0 s per part; the largest saving is 10.0 s: a stroke of 350 mm";
        assert_eq!(cost.text, says);
        // One that saves nothing at its far end alone, or nothing anywhere.
        let cost = least_cost(&stroke(), 96.0, time_s).expect("no defect").expect("it costs");
        assert_eq!((cost.seconds, cost.best.as_f64()), (6.0, Some(350.0)), "{cost:?}");
        assert_eq!(least_cost(&stroke(), 90.0, time_s).expect("no defect"), None);
    }
}
