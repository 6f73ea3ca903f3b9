//! What a limit costs: how many seconds a part it takes, and the next value at which the plan changes. By planning anew,
//! not by guesses.

use super::candidates::{self, Candidate, Ease};
use super::changes::{least_value, planned_s, spread, told};
use super::sequence::Defect;
use crate::job::Job;
use crate::job::plan::LimitCost;

/// A plan that is faster by less than this is the same plan, s.
const SAME_S: f64 = 0.05;

/// Every limit whose relaxing gives a faster plan, dearest first. `now_s` is the time of a part with all limits in force.
pub fn find(job: &Job, now_s: f64) -> Result<Vec<LimitCost>, Defect> {
    let list: Vec<Candidate> = candidates::all(job)
        .into_iter()
        .filter(|c| matches!(c.ease, Ease::Wish | Ease::Leave | Ease::Limit | Ease::Machine))
        .collect();
    let mut found: Vec<LimitCost> = spread(&list, |c, _| cost(job, c, now_s))?.into_iter().flatten().collect();
    found.sort_by(|a, b| b.seconds.total_cmp(&a.seconds));
    Ok(found)
}

fn cost(job: &Job, candidate: &Candidate, now_s: f64) -> Result<Option<LimitCost>, Defect> {
    let faster = |v: f64| Ok(planned_s(&(candidate.with)(job, v))?.filter(|t| now_s - t >= SAME_S));
    let Some(fastest_s) = faster(candidate.range.1)? else { return Ok(None) };
    let (value, time_s) = least_value(candidate, candidate.range.1, fastest_s, faster)?;
    let (seconds, next_seconds) = (now_s - fastest_s, now_s - time_s);
    let (now, next, words) = told(candidate, value);
    let text = format!("{words} saves {next_seconds:.1} s a part");
    let text = if seconds > next_seconds + SAME_S { format!("{text}; all of it costs {seconds:.1} s") } else { text };
    Ok(Some(LimitCost { limit: candidate.name.clone(), now, seconds, next, next_seconds, text }))
}
