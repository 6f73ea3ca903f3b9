//! The best pair of changes where no single change is enough, and the single changes that bring the bar farther.

use crate::defect::Defect;
use crate::job::Job;
use crate::job::plan::{Change, check_in_words};
use crate::lang::lists;
use crate::planner::advice::candidate::{Candidate, Ease};
use crate::planner::advice::tries::{
    EACH_MAY_TAKE, FARTHEST, Help, least_value, planned_within, spread_told, told, values,
};
use crate::planner::advice::{candidates, driven};
use crate::planner::places::lessons::Lessons;
use crate::planner::solve::{Answer, Effort, solve};
use crate::planner::why_not::blocked::Blocked;
use crate::process::checks;
use crate::process::segments::THREAD_LENGTH;
use crate::say;
use crate::spread::Allowance;
use serde_json::json;

/// Largest number of pairs tried. First come pairs where one change lifts what stops the other, then pairs of changes
/// that alone bring the bar farther; of these the easy ones first.
const MOST_PAIRS: usize = 120;
/// A change that brings the bar farther by less than this does not help, mm.
const FARTHER_MM: f64 = 0.5;
/// Largest number of changes told that bring the bar farther, where no pair is enough.
const FARTHER_TOLD: usize = 3;
/// Shares of the way to the farthest value that are tried until one brings the bar farther.
const NEARER: [f64; 3] = [1.0, 0.5, 0.25];

/// A limit counts as lifted completely at this many times its farthest value.
const LIFTED: f64 = 20.0;

/// How far the bar comes, and what stops it there.
struct Reach {
    value: f64,
    far_mm: f64,
    by: Vec<String>,
}

/// How far the bar comes with a change: at the farthest value worth trying, or at a nearer one where the farthest does
/// not help.
fn reach(job: &Job, candidate: &Candidate, now_mm: f64) -> Result<Reach, Defect> {
    let mut farthest: Option<Reach> = None;
    let allowance = Allowance::of(EACH_MAY_TAKE);
    for value in values(candidate, &NEARER) {
        let Some(found) = allowance.until(|| stopped(&(candidate.with)(job, value))) else { break };
        let (far_mm, by) = found?;
        if farthest.as_ref().is_none_or(|r| far_mm > r.far_mm) {
            farthest = Some(Reach { value, far_mm, by });
        }
        if far_mm > now_mm + FARTHER_MM {
            break;
        }
    }
    Ok(farthest.unwrap_or(Reach { value: candidate.range.1, far_mm: 0.0, by: Vec::new() }))
}

fn stopped(job: &Job) -> Result<(f64, Vec<String>), Defect> {
    Ok(match solve(job, Effort::Explain, &Lessons::default())? {
        Answer::Found(_) => (f64::INFINITY, Vec::new()),
        Answer::Blocked(blocked) => (blocked.farthest_mm, blocked.names().into_iter().map(str::to_owned).collect()),
    })
}

/// Whether a change may lift a check or a rule of the machine. A check itself names the changes that may lift it.
pub(super) fn lifts(by: &str, change: &str) -> bool {
    let of_rule = |prefix: &str, names: &[&str]| names.contains(&change) || change.starts_with(prefix);
    match by {
        "stroke" => of_rule("interrupt", &["stroke"]),
        "counter_spindle_travel" => of_rule("interrupt", &["farthest"]),
        "interrupt" => of_rule("interrupt", &[]),
        "collet" => of_rule("grip", &["collet", "bore_depth", "part_off.tray"]),
        "tray" => change == "part_off.tray",
        "tool_places" => of_rule("tools.", &["tools"]),
        _ if driven::lifted_by(by).is_some_and(|names| names.contains(&change)) => true,
        THREAD_LENGTH => matches!(change, "tools.whirling" | "thread_by" | "holding" | "engagement_min"),
        _ => checks::about(by).map_or(change == by, |check| check.lifted_by.contains(&change)),
    }
}

/// Where several reasons together stop the bar: finds one whose lifting alone brings the bar farther, by planning
/// again. Then only this reason is told.
///
/// # Errors
/// [`Defect`] where planning with a reason lifted meets one.
pub fn alone(job: &Job, blocked: Blocked) -> Result<Blocked, Defect> {
    if blocked.together.is_empty() {
        return Ok(blocked);
    }
    let list = candidates::all(job);
    // With the station pitch at which the reasons were found.
    let mut job = job.clone();
    job.planning.station_pitch_mm = blocked.pitch_mm.unwrap_or(job.planning.station_pitch_mm);
    for reason in &blocked.together {
        let of_it = |c: &&Candidate| matches!(c.ease, Ease::Limit | Ease::Machine) && lifts(&reason.by, &c.name);
        for candidate in list.iter().filter(of_it) {
            let allowance = Allowance::of(EACH_MAY_TAKE);
            // The advice has a farthest value; this test has none, so a limit is also lifted completely.
            let (from, to) = candidate.range;
            let lifted = if to > from { LIFTED * to } else { to / LIFTED };
            let lifted = (candidate.ease == Ease::Limit).then_some(lifted);
            for value in values(candidate, &FARTHEST).into_iter().chain(lifted) {
                let Some(found) = allowance.until(|| stopped(&(candidate.with)(&job, value))) else { break };
                if found?.0 <= blocked.farthest_mm + FARTHER_MM {
                    continue;
                }
                let (by, text) = (reason.by.clone(), reason.text.clone());
                return Ok(Blocked { by, text, together: Vec::new(), ..blocked });
            }
        }
    }
    Ok(blocked)
}

/// The best pair, with the least value of each change. Where no pair tried is enough: what was tried. `unknown` is the
/// number of single changes whose result is not known.
///
/// # Errors
/// [`Defect`] where planning one of the changes, or a pair, meets one.
pub fn best(job: &Job, list: &[Candidate], unknown: usize) -> Result<Help, Defect> {
    // A change that alone brings the bar farther is likely to be part of a good pair.
    let now_mm = stopped(job)?.0;
    let reached = spread_told(
        |done| say!("progress-farther", done = done, all = list.len()),
        list,
        |c, _| reach(job, c, now_mm),
    )?;
    let helps = |i: usize| reached[i].far_mm > now_mm + FARTHER_MM;
    let mut pairs: Vec<(usize, usize)> =
        (0..list.len()).flat_map(|a| (a + 1..list.len()).map(move |b| (a, b))).collect();
    let ease = |(a, b): &(usize, usize)| -> (Ease, Ease) {
        (list[*a].ease.max(list[*b].ease), list[*a].ease.min(list[*b].ease))
    };
    let likely = |(a, b): &(usize, usize)| {
        let lifted = |a: usize, b: usize| helps(a) && reached[a].by.iter().any(|by| lifts(by, &list[b].name));
        let alone = usize::from(helps(*a)) + usize::from(helps(*b));
        (usize::from(lifted(*a, *b) || lifted(*b, *a)), alone)
    };
    pairs.sort_by_key(|p| (std::cmp::Reverse(likely(p)), ease(p), *p));
    let all = pairs.len();
    // Where most single changes took too long, most pairs would too.
    let too_long = 2 * unknown > list.len();
    pairs.truncate(if too_long { 0 } else { MOST_PAIRS });
    let with = |(a, b): (usize, usize), va: f64, vb: f64| (list[b].with)(&(list[a].with)(job, va), vb);
    let far = |i: usize| reached[i].value;
    let planned = |may: &Allowance, pair, va, vb| planned_within(may, &with(pair, va, vb));
    let times = spread_told(
        |done| say!("progress-pairs", done = done, all = pairs.len()),
        &pairs,
        |(a, b), _| planned(&Allowance::of(EACH_MAY_TAKE / 3), (*a, *b), far(*a), far(*b)),
    )?;
    let found = pairs.iter().zip(times).filter_map(|(p, t)| t.map(|t| (*p, t)));
    let best = found.min_by(|(p, s), (q, t)| ease(p).cmp(&ease(q)).then(s.total_cmp(t)).then(p.cmp(q)));
    let tried = match unknown {
        0 => say!("tried-single", number = list.len()),
        unknown => say!("tried-single-unknown", number = list.len(), unknown = unknown),
    };
    let Some(((a, b), known_s)) = best else {
        let tried = match too_long {
            true => say!("tried-no-pairs", tried = tried),
            false => say!("tried-pairs-fail", tried = tried, pairs = pairs.len(), all = all),
        };
        let closest = closest(list, &reached, now_mm, job.shaft.length_mm());
        let tried = if closest.is_empty() {
            tried
        } else {
            say!("tried-closest", tried = tried, changes = lists::semicolons(&closest))
        };
        return Ok(Help { changes: Vec::new(), tried: Some(tried) });
    };
    let may = [(); 2].map(|()| Allowance::of(EACH_MAY_TAKE));
    let (first, time_s) = least_value(&list[a], far(a), known_s, |v| planned(&may[0], (a, b), v, far(b)))?;
    let (second, time_s) = least_value(&list[b], far(b), time_s, |v| planned(&may[1], (a, b), first, v))?;
    let ((from_a, to_a, words_a), (from_b, to_b, words_b)) = (told(&list[a], first), told(&list[b], second));
    let change = Change {
        change: format!("{} + {}", list[a].name, list[b].name),
        from: json!([from_a, from_b]),
        to: json!([to_a, to_b]),
        extra_time_s: Some(0.0),
        text: say!("change-pair-works", first = words_a, second = words_b, seconds = format!("{time_s:.1}")),
    };
    let tried = say!("tried-pairs", tried = tried, pairs = pairs.len(), all = all);
    Ok(Help { changes: vec![change], tried: Some(tried) })
}

/// The changes that alone bring the bar farthest, in words.
fn closest(list: &[Candidate], reached: &[Reach], now_mm: f64, length_mm: f64) -> Vec<String> {
    let mut order: Vec<usize> = (0..list.len()).filter(|i| reached[*i].far_mm > now_mm + FARTHER_MM).collect();
    order.sort_by(|a, b| reached[*b].far_mm.total_cmp(&reached[*a].far_mm).then(a.cmp(b)));
    let one = |i: &usize| {
        let (words, r) = (told(&list[*i], reached[*i].value).2, &reached[*i]);
        let by = r.by.iter().map(|by| check_in_words(by).replace('_', " ")).collect::<Vec<_>>();
        let by = lists::and(&by);
        if r.far_mm >= length_mm {
            return say!("tried-closest-full", change = words, by = by);
        }
        say!("tried-closest-to", change = words, turned = format!("{:.1}", r.far_mm), by = by)
    };
    order.iter().take(FARTHER_TOLD).map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::lifts;

    #[test]
    fn a_rule_of_the_machine_is_lifted_by_its_own_number_or_by_leave() {
        for (rule, change) in [
            ("stroke", "stroke"),
            ("stroke", "interrupt of seat"),
            ("counter_spindle_travel", "farthest"),
            ("collet", "grip of seat"),
            ("collet", "bore_depth"),
            ("bore_depth", "bore_depth"),
            ("collet", "part_off.tray"),
            ("tray", "part_off.tray"),
            ("tool_places", "tools.front"),
        ] {
            assert!(lifts(rule, change), "{rule} {change}");
        }
        assert!(!lifts("stroke", "farthest") && !lifts("bore_depth", "collet"));
    }
}
