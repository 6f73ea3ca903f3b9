//! Which changes may lift which check or rule, and which of several reasons stops the bar.

use crate::defect::Defect;
use crate::job::{ChangeKind, Job};
use crate::planner::advice::candidate::{Candidate, Role};
use crate::planner::advice::tries::{EACH_MAY_TAKE, FARTHEST, stopped, values};
use crate::planner::advice::{candidates, driven, limits, set_ups};
use crate::planner::why_not::blocked::Blocked;
use crate::process::checks;
use crate::process::segments::THREAD_LENGTH;
use crate::spread::Allowance;

/// A reason counts as lifted if the bar comes farther by more than this, mm.
const FARTHER_MM: f64 = 0.5;
/// A limit counts as lifted completely at this many times its farthest value.
const LIFTED: f64 = 20.0;

/// Whether a change may lift a check or a rule of the machine. A check itself names the changes that may lift it. Work that is done
/// elsewhere, the other end first and another machine may lift anything.
pub fn lifts(by: &str, change: &str) -> bool {
    let of_rule = |prefix: &str, names: &[&str]| names.contains(&change) || change.starts_with(prefix);
    if change.starts_with(set_ups::PREFIX) {
        return true;
    }
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
/// again. Then only this reason is told. Limits of safety are lifted here too, because nothing of it is advice.
///
/// # Errors
/// [`Defect`] where planning with a reason lifted meets one.
pub fn alone(job: &Job, blocked: Blocked) -> Result<Blocked, Defect> {
    if blocked.together.is_empty() {
        return Ok(blocked);
    }
    let list: Vec<Candidate> =
        candidates::all(job).into_iter().chain(candidates::worth_trying(limits::safety(job))).collect();
    // With the station pitch at which the reasons were found.
    let mut job = job.clone();
    job.planning.station_pitch_mm = blocked.pitch_mm.unwrap_or(job.planning.station_pitch_mm);
    for reason in &blocked.together {
        let is_limit = |c: &Candidate| matches!(c.role, Role::House | Role::Safety);
        let of_it = |c: &&Candidate| {
            (is_limit(c) || matches!(c.role, Role::Change(ChangeKind::Machine | ChangeKind::Sleeve | ChangeKind::Tray)))
                && lifts(&reason.by, &c.name)
        };
        for candidate in list.iter().filter(of_it) {
            let allowance = Allowance::of(EACH_MAY_TAKE);
            // The advice has a farthest value; this test has none, so a limit is also lifted completely.
            let (from, to) = candidate.range;
            let lifted = if to > from { LIFTED * to } else { to / LIFTED };
            let lifted = is_limit(candidate).then_some(lifted);
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
            ("back", "set_up of centre hole A2.5, back"),
        ] {
            assert!(lifts(rule, change), "{rule} {change}");
        }
        assert!(!lifts("stroke", "farthest") && !lifts("bore_depth", "collet"));
    }
}
