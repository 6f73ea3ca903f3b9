//! What would help where there is no plan: single changes, the cheapest sets of changes, and limits that a house may change after a trial.

use crate::defect::Defect;
use crate::job::plan::{Change, ChangeSet, Edit};
use crate::job::{ChangeKind, Job};
use crate::lang;
use crate::lang::lists;
use crate::planner::advice::candidate::{Candidate, Role};
use crate::planner::advice::search::{Ended, MOST_CHANGES, Search};
use crate::planner::advice::tries::{self, EACH_MAY_TAKE, any_value, change, passes_within, planned_within, spread};
use crate::planner::advice::{candidates, set_ups};
use crate::planner::places::lessons::Lessons;
use crate::planner::solve::{Answer, Effort, solve};
use crate::say;
use crate::spread::{Allowance, unless_asked_to_stop};
use std::collections::BTreeSet;

/// Largest number of sets told.
pub const MOST_SETS: usize = 3;
/// Work that planning and proving with one set may take, in steps.
const PROOF_MAY_TAKE: u64 = 4_000_000;

/// A plan with changes that was proven.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Proven {
    /// Time from part to part, s.
    pub time_s: f64,
    /// Share of sampled parts in which it holds.
    pub good_share: Option<f64>,
}

/// Plans a job and proves the plan. None: there is no plan.
pub type Prove<'p> = &'p (dyn Fn(&Job) -> Result<Option<Proven>, Defect> + Sync);

/// What would help.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Help {
    /// Single changes, the cheapest first.
    pub changes: Vec<Change>,
    /// Sets of changes, the cheapest first.
    pub sets: Vec<ChangeSet>,
    /// Limits of the house that alone stand in the way.
    pub after_trial: Vec<Change>,
    /// Where no set is known: what forbids it, or where the search ended.
    pub tried: Option<String>,
}

/// A change that is enough.
struct Works {
    order: (u64, usize),
    time_s: f64,
    value: f64,
    change: Change,
}

/// What would help a job that has no plan: up to `most` sets. The work stops early when it is asked to; then what is known is told.
///
/// # Errors
/// [`Defect`] where planning with a change meets one.
pub fn find(job: &Job, most: usize, prove: Prove<'_>) -> Result<Help, Defect> {
    let list = candidates::all(job);
    let mut search = Search::new(job, &list);
    let mut help = Help::default();
    let Some(singles) = unless_asked_to_stop(|| singles(job, &list, &mut search, &mut help)) else {
        help.tried = Some(say!("tried-stopped"));
        return Ok(help);
    };
    singles?;
    let mut told: Vec<BTreeSet<ChangeKind>> = Vec::new();
    // Sets that are told or passed over: no set with one of them inside is of interest.
    let mut known: Vec<BTreeSet<String>> = Vec::new();
    let names = |search: &Search<'_>, set: &[usize]| -> BTreeSet<String> {
        search.names(set).into_iter().map(str::to_owned).collect()
    };
    let ended = loop {
        if told.len() == most {
            break Ended::Done;
        }
        // A set of another kind.
        let skip = |search: &Search<'_>, set: &[usize]| {
            let own = names(search, set);
            told.contains(&search.kinds(set)) || known.iter().any(|inside| inside.is_subset(&own))
        };
        let found = match unless_asked_to_stop(|| search.next(!told.is_empty(), &skip)) {
            Some(found) => found?,
            None => break Ended::Stopped,
        };
        let set = match found {
            Ok(found) => found,
            Err(ended) => break ended,
        };
        let Some(confirmed) = unless_asked_to_stop(|| confirmed(&search, &set, prove)) else {
            break Ended::Stopped;
        };
        match confirmed? {
            Confirmed::Holds(set, values, proven) => {
                // A smaller set may be of a kind that is told.
                if !skip(&search, &set) {
                    told.push(search.kinds(&set));
                    help.sets.push(in_words(&search, &set, &values, proven));
                }
                known.push(names(&search, &set));
            }
            Confirmed::Fails => search.refute(&set),
            Confirmed::Unknown(set) => {
                search.unknown += 1;
                known.push(names(&search, &set));
            }
        }
    };
    help.sets.sort_by(|a, b| a.price.total_cmp(&b.price));
    let fastest = help.sets.iter().map(|s| s.time_s).fold(f64::INFINITY, f64::min);
    help.sets.iter_mut().for_each(|s| s.extra_time_s = s.time_s - fastest);
    help.tried = match ended {
        Ended::Stopped => Some(say!("tried-stopped")),
        _ if !help.sets.is_empty() => None,
        Ended::Bound => Some(say!("tried-bound", sets = search.tried)),
        Ended::Done => Some(unless_asked_to_stop(|| forbidden(job, &search)).unwrap_or(Ok(say!("tried-stopped")))?),
    };
    Ok(help)
}

/// Every change that alone is enough, with the least value, and every limit of the house that alone stands in the way.
fn singles(job: &Job, list: &[Candidate], search: &mut Search<'_>, help: &mut Help) -> Result<(), Defect> {
    let of_search: Vec<usize> = search.alone()?;
    let of_search: BTreeSet<usize> = of_search
        .into_iter()
        .filter_map(|a| list.iter().position(|c| std::ptr::eq(c, search.atoms[a].candidate)))
        .collect();
    let house = (0..list.len()).filter(|i| list[*i].role == Role::House);
    let order: Vec<usize> = of_search.into_iter().chain(house).collect();
    let tried = spread(&order, |i, _| least(job, &list[*i], *i))?;
    let mut works: Vec<Works> = Vec::new();
    for (i, (known, found)) in order.iter().zip(tried) {
        if known && list[*i].role != Role::House {
            search.note(&list[*i], found.as_ref().map(|w| w.value));
        }
        works.extend(found);
    }
    works.sort_by(|a, b| a.order.0.cmp(&b.order.0).then(a.time_s.total_cmp(&b.time_s)).then(a.order.1.cmp(&b.order.1)));
    let (house, changes): (Vec<Works>, Vec<Works>) =
        works.into_iter().partition(|w| list[w.order.1].role == Role::House);
    let fastest = changes.iter().map(|w| w.time_s).fold(f64::INFINITY, f64::min);
    let told = |w: Works| Change { extra_time_s: Some(w.time_s - fastest), ..w.change };
    help.changes = changes.into_iter().map(told).collect();
    // A limit of the house is no advice, so nothing writes it into a file.
    help.after_trial = house.into_iter().map(|w| Change { edits: Vec::new(), ..w.change }).collect();
    Ok(())
}

/// The least value of a change with which there is a plan, and whether the result is known.
fn least(job: &Job, candidate: &Candidate, index: usize) -> Result<(bool, Option<Works>), Defect> {
    let allowance = Allowance::of(EACH_MAY_TAKE);
    let made = |v: f64| (candidate.with)(job, v);
    let passes = |v: f64| passes_within(&allowance, &made(v)) == Some(true);
    let Some(to) = any_value(candidate, passes) else { return Ok((!allowance.is_spent(), None)) };
    let mut found = None;
    // Between stations the least value may fail; then the one that was found first counts.
    let mut values = vec![tries::least(candidate, to, passes), to];
    values.dedup();
    for value in values {
        if let Some(time_s) = planned_within(&allowance, &made(value))? {
            found = Some((value, time_s + elsewhere_s([candidate])));
            break;
        }
    }
    let Some((value, time_s)) = found else { return Ok((!allowance.is_spent(), None)) };
    let price = match candidate.role {
        Role::Change(kind) => job.change_prices.of(kind),
        Role::House | Role::Safety => 0.0,
    };
    let change = change(candidate, value, |words| match candidate.role {
        Role::Change(_) => say!("change-works", change = words, seconds = lang::fixed(time_s, 1)),
        Role::House | Role::Safety => words,
    });
    Ok((true, Some(Works { order: ((price * 1e3).round() as u64, index), time_s, value, change })))
}

/// Time of work in a second set-up, s.
fn elsewhere_s<'c>(all: impl IntoIterator<Item = &'c Candidate>) -> f64 {
    let work_s: f64 = all.into_iter().map(|c| c.elsewhere_s).sum();
    if work_s > 0.0 { work_s + set_ups::LOADING_S } else { 0.0 }
}

/// What planning and proving with a set found.
enum Confirmed {
    /// The set without changes that are not needed, its least values, and its proven plan.
    Holds(Vec<usize>, Vec<f64>, Proven),
    /// No plan of it can be proven.
    Fails,
    /// To tell it of this set would take more work than allowed.
    Unknown(Vec<usize>),
}

/// Plans and proves with a set that the search found.
fn confirmed(search: &Search<'_>, set: &[usize], prove: Prove<'_>) -> Result<Confirmed, Defect> {
    let farthest = search.farthest(set);
    let mut values = farthest.clone();
    for i in 0..set.len() {
        let allowance = Allowance::of(EACH_MAY_TAKE);
        let passes = |v: f64| {
            let mut values = values.clone();
            values[i] = v;
            passes_within(&allowance, &search.made(set, &values)) == Some(true)
        };
        values[i] = tries::least(search.atoms[set[i]].candidate, values[i], passes);
    }
    let tried = if values == farthest { vec![values] } else { vec![values, farthest] };
    // No smaller set may do: this is asked with the effort of a plan that is printed, at the values told and at the farthest.
    let mut smaller: Vec<(Vec<usize>, Vec<f64>)> = Vec::new();
    for i in (0..set.len()).filter(|_| set.len() > 1) {
        for values in &tried {
            let (mut fewer, mut values) = (set.to_vec(), values.clone());
            fewer.remove(i);
            values.remove(i);
            smaller.push((fewer, values));
        }
    }
    let enough = spread(&smaller, |(fewer, values), _| {
        let planned = || solve(&search.made(fewer, values), Effort::Best, &Lessons::default());
        let answer = Allowance::of(PROOF_MAY_TAKE).until(planned).transpose()?;
        Ok(answer.map(|answer| matches!(answer, Answer::Found(_))))
    })?;
    if let Some(found) = enough.iter().position(|enough| *enough == Some(true)) {
        return confirmed(search, &smaller[found].0, prove);
    }
    if let Some(unknown) = enough.iter().position(Option::is_none) {
        return Ok(Confirmed::Unknown(smaller[unknown].0.clone()));
    }
    for values in tried {
        let allowance = Allowance::of(PROOF_MAY_TAKE);
        let proven = allowance.until(|| prove(&search.made(set, &values))).transpose()?;
        match proven {
            Some(Some(mut proven)) => {
                proven.time_s += elsewhere_s(set.iter().map(|a| search.atoms[*a].candidate));
                return Ok(Confirmed::Holds(set.to_vec(), values, proven));
            }
            Some(None) => {}
            None => return Ok(Confirmed::Unknown(set.to_vec())),
        }
    }
    Ok(Confirmed::Fails)
}

fn in_words(search: &Search<'_>, set: &[usize], values: &[f64], proven: Proven) -> ChangeSet {
    let one = |(a, value): (&usize, &f64)| change(search.atoms[*a].candidate, *value, |words| words);
    let mut changes: Vec<Change> = set.iter().zip(values).map(one).collect();
    in_order(&mut changes);
    let words: Vec<&str> = changes.iter().map(|c| c.text.as_str()).collect();
    let text = say!("set-works", changes = lists::semicolons(&words), seconds = lang::fixed(proven.time_s, 1));
    ChangeSet {
        price: search.price(set),
        time_s: proven.time_s,
        extra_time_s: 0.0,
        good_share: proven.good_share,
        text,
        changes,
    }
}

/// Puts the changes in the order in which their edits can be made: entries are removed last, the last one first.
fn in_order(changes: &mut [Change]) {
    let removed = |e: &Edit| e.value.is_empty() && e.with.is_none() && e.at.ends_with(']');
    let last = |c: &Change| c.edits.iter().find(|e| removed(e)).map(|e| e.at.clone());
    let place = |at: &str| at.rsplit_once('[').and_then(|(_, n)| n.trim_end_matches(']').parse::<usize>().ok());
    changes.sort_by_key(|c| last(c).map(|at| (std::cmp::Reverse(place(&at)), at)));
}

/// Why no set of changes is enough, in words.
fn forbidden(job: &Job, search: &Search<'_>) -> Result<String, Defect> {
    if search.unknown > 0 {
        return Ok(say!("tried-bound", sets = search.tried));
    }
    let all: Vec<usize> = (0..search.atoms.len()).filter(|a| search.atoms[*a].candidate.group.is_none()).collect();
    let made = search.made(&all, &search.farthest(&all));
    let allowance = Allowance::of(EACH_MAY_TAKE);
    if passes_within(&allowance, &made) == Some(true) {
        return Ok(say!("tried-more", most = MOST_CHANGES, sets = search.tried));
    }
    Ok(match allowance.until(|| solve(&made, Effort::Explain, &Lessons::default())).transpose()? {
        Some(Answer::Blocked(blocked)) if !blocked.text.is_empty() => {
            say!("tried-forbidden", changes = all.len(), reason = blocked.told())
        }
        _ => say!("tried-all", sets = search.tried, job = job.shaft.name),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn entries_are_removed_last_and_from_the_end() {
        let remove = |at: &str| crate::planner::advice::candidate::edit("job", at, "");
        let one = |name: &str, edit: Edit| Change {
            change: name.into(),
            from: serde_json::Value::Null,
            to: serde_json::Value::Null,
            extra_time_s: None,
            text: String::new(),
            edits: vec![edit],
        };
        let set = |at: &str| Edit { value: "1".into(), ..remove(at) };
        let mut changes = [
            one("first", remove("shaft.features[1]")),
            one("key", remove("wishes.at_most_hand_overs")),
            one("last", remove("shaft.features[10]")),
            one("set", set("cutting.feed")),
        ];
        in_order(&mut changes);
        let order: Vec<&str> = changes.iter().map(|c| c.change.as_str()).collect();
        assert_eq!(order, ["key", "set", "last", "first"]);
    }
}
