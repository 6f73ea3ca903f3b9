//! Where no single change is enough: the best pair of changes.

use super::candidates::{Candidate, Ease};
use super::changes::{least_value, planned_s, spread, told};
use super::sequence::Defect;
use super::solve::{Answer, Effort, solve};
use crate::job::Job;
use crate::job::plan::Change;
use serde_json::json;

/// Pairs tried at most: first those of changes that alone bring the bar farther, easy ones first.
const MOST_PAIRS: usize = 120;
/// A change that brings the bar farther by less than this does not help, mm.
const FARTHER_MM: f64 = 0.5;

/// The best pair, with the least value of each; none where no pair that was tried is enough.
pub fn best(job: &Job, list: &[Candidate]) -> Result<Option<Change>, Defect> {
    // A change that alone brings the bar farther is likely to be one of the two.
    let reach = |job: &Job| {
        Ok(match solve(job, Effort::Explain, &[])? {
            Answer::Found(_) => f64::INFINITY,
            Answer::Blocked(blocked) => blocked.farthest_mm,
        })
    };
    let now = reach(job)?;
    let farther: Vec<bool> = spread(list, |c, _| Ok(reach(&(c.with)(job, c.range.1))? > now + FARTHER_MM))?;
    let helps = |(a, b): &(usize, usize)| usize::from(farther[*a]) + usize::from(farther[*b]);
    let mut pairs: Vec<(usize, usize)> =
        (0..list.len()).flat_map(|a| (a + 1..list.len()).map(move |b| (a, b))).collect();
    let ease = |(a, b): &(usize, usize)| -> (Ease, Ease) {
        (list[*a].ease.max(list[*b].ease), list[*a].ease.min(list[*b].ease))
    };
    pairs.sort_by_key(|p| (std::cmp::Reverse(helps(p)), ease(p), *p));
    pairs.truncate(MOST_PAIRS);
    let with = |(a, b): (usize, usize), va: f64, vb: f64| (list[b].with)(&(list[a].with)(job, va), vb);
    let times = spread(&pairs, |(a, b), _| planned_s(&with((*a, *b), list[*a].range.1, list[*b].range.1)))?;
    let found = pairs.iter().zip(times).filter_map(|(p, t)| t.map(|t| (*p, t)));
    let best = found.min_by(|(p, s), (q, t)| ease(p).cmp(&ease(q)).then(s.total_cmp(t)).then(p.cmp(q)));
    let Some(((a, b), known_s)) = best else { return Ok(None) };
    let far = list[b].range.1;
    let (first, time_s) = least_value(&list[a], list[a].range.1, known_s, |v| planned_s(&with((a, b), v, far)))?;
    let (second, time_s) = least_value(&list[b], far, time_s, |v| planned_s(&with((a, b), first, v)))?;
    let ((from_a, to_a, words_a), (from_b, to_b, words_b)) = (told(&list[a], first), told(&list[b], second));
    Ok(Some(Change {
        change: format!("{} + {}", list[a].name, list[b].name),
        from: json!([from_a, from_b]),
        to: json!([to_a, to_b]),
        extra_time_s: Some(0.0),
        text: format!("{words_a}, and {words_b}: {time_s:.1} s a part"),
    }))
}
