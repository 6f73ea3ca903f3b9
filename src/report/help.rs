//! The words for what would help if there is no plan.

use super::{numbers, sure, words};
use crate::job::plan::{Change, ChangeSet, Edit, LimitCost, Shortfall};
use crate::lang::{self, lists};
use crate::say;

/// Smallest difference in time that is mentioned, s.
const WORTH_TELLING_S: f64 = 0.05;

/// Edits of one change that are told in words; more are made on the page.
const EDITS_TOLD: usize = 4;

/// A list under a title.
pub(super) struct Lines {
    /// The title.
    pub title: &'static str,
    /// Whether its items are ways to choose from, and so have numbers.
    pub numbered: bool,
    /// The items.
    pub items: Vec<String>,
}

/// What would help if there is no plan: sets of changes, other single changes, limits of the house; each list only where it has items.
pub(super) fn helps(shortfall: &Shortfall) -> Vec<Lines> {
    let sets = shortfall.sets.iter().map(set_text).collect();
    // A single change that is a set by itself is told once.
    let told = |c: &&Change| {
        let alone = |s: &ChangeSet| s.changes.len() == 1 && s.changes.iter().any(|own| own.change == c.change);
        !shortfall.sets.iter().any(alone)
    };
    let others: Vec<String> = shortfall.changes.iter().filter(told).map(change_text).collect();
    let house = shortfall.after_trial.iter().map(|c| words::sentence(&format!("{}{}", c.text, values(c)))).collect();
    let title =
        if shortfall.sets.is_empty() { lang::text("title-help-alone") } else { lang::text("title-help-others") };
    let all = [
        Lines { title: lang::text("title-help-sets"), numbered: true, items: sets },
        Lines { title, numbered: false, items: others },
        Lines { title: lang::text("title-help-house"), numbered: false, items: house },
    ];
    all.into_iter().filter(|l| !l.items.is_empty()).collect()
}

/// What was tried, and what to do next, where no set is known.
pub(super) fn no_help(shortfall: &Shortfall) -> Option<String> {
    let tried = words::sentence(shortfall.tried.as_deref()?);
    Some(if shortfall.sets.is_empty() && shortfall.changes.is_empty() {
        say!("help-next", tried = tried)
    } else {
        say!("help-sentence", text = tried)
    })
}

/// What a set needs: its changes, its time, in how many sampled parts it holds, and what to edit.
fn set_text(set: &ChangeSet) -> String {
    let mut text = words::sentence(&set.text);
    if set.extra_time_s >= WORTH_TELLING_S {
        text = say!("help-set-slower", text = text, seconds = numbers::seconds(set.extra_time_s));
    }
    if let Some(share) = set.good_share {
        text = say!("help-set-holds", text = text, good = sure::of_100(share));
    }
    with_edits(text, set.changes.iter().flat_map(|c| &c.edits))
}

/// One change: its sentence, then what to edit.
fn change_text(change: &Change) -> String {
    let text = words::sentence(&change.text);
    let text = match change.extra_time_s {
        Some(s) if s >= WORTH_TELLING_S => say!("help-change-slower", text = text, seconds = numbers::seconds(s)),
        _ => text,
    };
    if change.edits.is_empty() { format!("{text}{}", values(change)) } else { with_edits(text, &change.edits) }
}

/// The numbers of a change by the keys of the files: ` (stiffness_min: 1 → 0.8)`.
fn values(change: &Change) -> String {
    let (name, from, to) =
        (words::plain(&change.change), words::change_value(&change.from), words::change_value(&change.to));
    say!("help-values", name = name, from = from, to = to)
}

/// A text, and what to edit in the files for it.
fn with_edits<'e>(text: String, edits: impl IntoIterator<Item = &'e Edit>) -> String {
    let edits: Vec<&Edit> = edits.into_iter().collect();
    if edits.is_empty() {
        return say!("help-sentence", text = text);
    }
    if edits.len() > EDITS_TOLD {
        return say!("help-edits-many", text = text);
    }
    let of = |file: &str| {
        let one = |e: &&&Edit| e.file == file;
        edits.iter().filter(one).map(|e| edit_text(e)).collect::<Vec<_>>()
    };
    let (job, machine) = (of("job"), of("machine"));
    match (job.is_empty(), machine.is_empty()) {
        (false, true) => say!("help-edits-job", text = text, edits = lists::semicolons(&job)),
        (true, _) => say!("help-edits-machine", text = text, edits = lists::semicolons(&machine)),
        (false, false) => {
            let (job, machine) = (lists::semicolons(&job), lists::semicolons(&machine));
            say!("help-edits-both", text = text, job = job, machine = machine)
        }
    }
}

/// An edit as a key and a value; items of lists are counted from 1, as people count.
fn edit_text(edit: &Edit) -> String {
    let place = |at: &str| {
        let mut told = String::new();
        for part in at.split_inclusive(']') {
            match part.split_once('[') {
                Some((key, "+]")) => told.push_str(&say!("help-edit-new-item", list = key)),
                Some((key, number)) => {
                    let number = number.trim_end_matches(']').parse::<usize>().map_or(0, |n| n + 1);
                    told.push_str(&say!("help-edit-item", list = key, number = number));
                }
                None => told.push_str(part),
            }
        }
        words::plain(&told)
    };
    match (edit.with, edit.value.is_empty()) {
        (Some(with), _) => say!("help-edit-swap", item = place(&edit.at), with = with + 1),
        (None, true) => say!("help-edit-remove", item = place(&edit.at)),
        (None, false) => say!("help-edit-set", key = place(&edit.at), value = words::plain(&edit.value)),
    }
}

/// What a limit costs, with the value now and the next one tried.
pub(super) fn cost_text(cost: &LimitCost) -> String {
    say!(
        "help-cost-of-limit",
        text = words::sentence(&cost.text),
        limit = words::plain(&cost.limit),
        now = words::change_value(&cost.now),
        next = words::change_value(&cost.next),
    )
}
