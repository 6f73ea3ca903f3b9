//! What a limit costs: how many seconds a part it takes, and the next value at which the plan changes. By planning anew,
//! not by guesses.

use super::candidates::{self, Candidate, Ease};
use super::changes::{found_number, planned_s, spread};
use super::sequence::Defect;
use crate::job::Job;
use crate::job::plan::LimitCost;

/// A plan that is faster by less than this is the same plan, s.
const SAME_S: f64 = 0.05;
/// Halvings on the way to the next value.
const HALVINGS: usize = 12;

/// Every limit whose relaxing gives a faster plan, dearest first. `now_s` is the time of a part with all limits in force.
pub fn find(job: &Job, now_s: f64) -> Result<Vec<LimitCost>, Defect> {
    let list: Vec<Candidate> = candidates::all(job)
        .into_iter()
        .filter(|c| matches!(c.ease, Ease::Leave | Ease::Limit | Ease::Machine))
        .collect();
    let mut found: Vec<LimitCost> = spread(&list, |c, _| cost(job, c, now_s))?.into_iter().flatten().collect();
    found.sort_by(|a, b| b.seconds.total_cmp(&a.seconds));
    Ok(found)
}

fn cost(job: &Job, candidate: &Candidate, now_s: f64) -> Result<Option<LimitCost>, Defect> {
    let saves = |v: f64| -> Result<f64, Defect> {
        Ok(planned_s(&(candidate.with)(job, v))?.map_or(f64::NEG_INFINITY, |t| now_s - t))
    };
    let (from, to) = candidate.range;
    let seconds = saves(to)?;
    if seconds < SAME_S {
        return Ok(None);
    }
    let (mut next, mut next_seconds) = (to, seconds);
    if candidate.after.is_none() {
        let steps = ((to - from).abs() / candidate.step).floor() as u64;
        let at = |n: u64| from + (to - from).signum() * candidate.step * n as f64;
        let (mut same, mut faster) = (0, steps + 1);
        for _ in 0..HALVINGS {
            if faster - same <= 1 {
                break;
            }
            let middle = same + (faster - same) / 2;
            let saved = saves(at(middle))?;
            if saved >= SAME_S {
                (faster, next, next_seconds) = (middle, at(middle), saved);
            } else {
                same = middle;
            }
        }
    }
    let shown = (next * 1e6).round() / 1e6;
    let text = format!("{} saves {next_seconds:.1} s a part", (candidate.says)(shown));
    let text = if seconds > next_seconds + SAME_S { format!("{text}; all of it costs {seconds:.1} s") } else { text };
    Ok(Some(LimitCost {
        limit: candidate.name.clone(),
        now: candidate.before.as_f64().map_or_else(|| candidate.before.clone(), found_number),
        seconds,
        next: candidate.after.clone().unwrap_or_else(|| found_number(next)),
        next_seconds,
        text,
    }))
}
