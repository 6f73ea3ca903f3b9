//! Finds the wish that stands in the way where there is no plan.

use crate::defect::Defect;
use crate::job::plan::Edit;
use crate::job::{HandOverWish, Job, Wishes};
use crate::lang;
use crate::planner::advice::candidate::{edit, number_told};
use crate::planner::advice::tries;
use crate::planner::solve::Effort;
use crate::planner::why_not::blocked::Blocked;
use crate::planner::why_not::wished::NAME;
use crate::say;

/// For each wish: its words, and the wishes that are left without it.
pub fn one_dropped(job: &Job) -> Vec<(String, Wishes)> {
    let without = |i: usize| {
        let mut left = job.wishes.clone();
        drop(&mut left, &job.wishes, i);
        left
    };
    job.wishes.told().into_iter().enumerate().map(|(i, told)| (told, without(i))).collect()
}

/// Drops the wish with a number (in the order of [`Wishes::told`] of all wishes) from those that are left.
pub fn drop(left: &mut Wishes, all: &Wishes, number: usize) {
    let later = number.checked_sub(all.hand_overs.len());
    match (all.hand_overs.get(number), later.and_then(|n| all.never_grip.get(n))) {
        (Some(hand_over), _) => left.hand_overs.retain(|w| w != hand_over),
        (None, Some(never)) => left.never_grip.retain(|w| w != never),
        (None, None) => left.at_most_hand_overs = None,
    }
}

/// What to write into the job to drop each wish, in the order of [`one_dropped`].
pub fn edits(job: &Job) -> Vec<Vec<Edit>> {
    let all = &job.wishes;
    let told = |w: &HandOverWish| match w.nose_mm {
        Some(nose) => format!("{{at: {}, nose: {}}}", number_told(w.at_mm), number_told(nose)),
        None => number_told(w.at_mm).to_string(),
    };
    // The reader sorts the hand-overs, so the list is written anew.
    let without = |i: usize| {
        let left: Vec<String> =
            (0..all.hand_overs.len()).filter(|k| *k != i).map(|k| told(&all.hand_overs[k])).collect();
        let value = if left.is_empty() { String::new() } else { format!("[{}]", left.join(", ")) };
        vec![edit("job", "wishes.hand_over_at", &value)]
    };
    let mut list: Vec<Vec<Edit>> = (0..all.hand_overs.len()).map(without).collect();
    list.extend((0..all.never_grip.len()).map(|i| vec![edit("job", &format!("wishes.never_grip[{i}]"), "")]));
    list.extend(all.at_most_hand_overs.map(|_| vec![edit("job", "wishes.at_most_hand_overs", "")]));
    list
}

/// What stands in the way. Where there is a plan without a wish, this wish is told.
///
/// # Errors
/// [`Defect`] where planning without a wish meets one.
pub fn blamed(job: &Job, blocked: Blocked) -> Result<Blocked, Defect> {
    if job.wishes.is_empty() {
        return Ok(blocked);
    }
    let planned_s = |wishes: Wishes| tries::planned_s(&Job { wishes, ..job.clone() }, Effort::Feasible);
    let Some(without_s) = planned_s(Wishes::default())? else { return Ok(blocked) };
    let tell =
        |text: String| Blocked { by: NAME.into(), text, together: Vec::new(), others: Vec::new(), ..blocked.clone() };
    let one = |told: String, time_s: f64| {
        say!("wish-prevents", wish = told, reason = blocked.told(), seconds = lang::fixed(time_s, 1))
    };
    let wishes = one_dropped(job);
    if let [(told, _)] = &wishes[..] {
        return Ok(tell(one(told.clone(), without_s)));
    }
    for (told, left) in wishes {
        if let Some(time_s) = planned_s(left)? {
            return Ok(tell(one(told, time_s)));
        }
    }
    Ok(tell(say!("wishes-prevent", reason = blocked.told(), seconds = lang::fixed(without_s, 1))))
}
