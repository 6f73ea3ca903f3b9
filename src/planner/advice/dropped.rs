//! Finds the wish that stands in the way where there is no plan.

use crate::defect::Defect;
use crate::job::{Job, Wishes};
use crate::planner::advice::tries;
use crate::planner::solve::Effort;
use crate::planner::why_not::blocked::Blocked;
use crate::planner::why_not::wished::NAME;
use crate::say;

/// For each wish: its words, and the wishes that are left without it.
pub fn one_dropped(job: &Job) -> Vec<(String, Wishes)> {
    let all = &job.wishes;
    let mut left = Vec::new();
    for i in 0..all.hand_overs.len() {
        let mut fewer = all.clone();
        fewer.hand_overs.remove(i);
        left.push(fewer);
    }
    for i in 0..all.never_grip.len() {
        let mut fewer = all.clone();
        fewer.never_grip.remove(i);
        left.push(fewer);
    }
    if all.at_most_hand_overs.is_some() {
        left.push(Wishes { at_most_hand_overs: None, ..all.clone() });
    }
    all.told().into_iter().zip(left).collect()
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
        say!("wish-prevents", wish = told, reason = blocked.told(), seconds = format!("{time_s:.1}"))
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
    Ok(tell(say!("wishes-prevent", reason = blocked.told(), seconds = format!("{without_s:.1}"))))
}
