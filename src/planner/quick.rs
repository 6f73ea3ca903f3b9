//! Whether the bar comes through, and what stops it, without a plan: much faster than [`solve`](super::solve).

use crate::job::{Holding, Job};
use crate::planner::places::grips::{self, lands};
use crate::planner::places::ground::Ground;
use crate::planner::places::lessons::Lessons;
use crate::planner::places::stations::{Grid, moments};
use crate::planner::sequence::unguided::{Came, Knows, Unguided};
use crate::planner::solve::{reaches, ways_to_hold, weights};
use crate::planner::states::outlook::Looker;
use crate::planner::why_not::blocked::Blocked;
use crate::planner::why_not::{farthest, frontier, wished};
use crate::process::Rig;

/// Whether the bar comes to the part-off in some way: no plan, only that there is one, at the station pitch of the job. This is much faster
/// than [`solve`]. A plan is missed only rarely, where the headstock would have to stand elsewhere; and states between the stations are not
/// looked at, so a plan must still be made.
pub fn comes_through(job: &Job) -> bool {
    quickly(job, &mut |way| match way {
        Way::Refused(_) => false,
        Way::Guided(looker) => looker.may_come_through() && farthest::comes_through(looker),
        Way::Unguided(builder) => Came::of(builder, Knows::WhatHolds).is_none(),
    })
}

/// Names of what stops the bar with each collet and reach, where it comes farthest.
pub fn stopped_by(job: &Job) -> Vec<String> {
    let mut names = Vec::new();
    quickly(job, &mut |way| {
        names.extend(match way {
            Way::Refused(blocked) => blocked.names().into_iter().map(str::to_owned).collect(),
            Way::Guided(looker) => farthest::names(looker),
            Way::Unguided(builder) => {
                let came = Came::of(builder, Knows::WhatHolds);
                came.map(|came| builder.blocked(&came).by).into_iter().collect()
            }
        });
        false
    });
    names.sort_unstable();
    names.dedup();
    names
}

/// A way to hold the bar, ready to be looked at.
enum Way<'w> {
    /// It is refused before any state is looked at.
    Refused(Blocked),
    Guided(&'w Looker<'w>),
    Unguided(&'w Unguided<'w>),
}

/// Looks at every collet and reach until one passes.
fn quickly(job: &Job, passes: &mut dyn FnMut(Way<'_>) -> bool) -> bool {
    if let Some(blocked) = frontier::bar_does_not_fit(job) {
        return passes(Way::Refused(blocked));
    }
    let lessons = Lessons::default();
    for collet in ways_to_hold(job) {
        let rig = Rig::new(job, collet);
        let segments = match rig.segments() {
            Ok(segments) => segments,
            Err(refused) => {
                passes(Way::Refused(Blocked::from(refused)));
                continue;
            }
        };
        if let Some(blocked) = frontier::work_does_not_fit(&rig, &segments) {
            passes(Way::Refused(blocked));
            continue;
        }
        let (tasks, lands) = (rig.tasks(), lands(&rig));
        for reach_mm in reaches(job, &tasks) {
            let moments = moments(&rig, *reach_mm);
            let look_at_mm = &lessons.look_at_mm;
            let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm };
            let grid = Grid::new(&rig, &segments, &moments, &lessons);
            let passed = match (wished::impossible(&rig, &segments, &lands), job.holding) {
                (Some(blocked), _) => passes(Way::Refused(blocked)),
                (None, Holding::Bush) => passes(Way::Guided(&Looker::ranking(&rig, &segments, &grid, &tasks, false))),
                (None, Holding::NoBush) => {
                    let (noses, weights) = (grips::noses(&rig, &grid, &lands), weights(&ground, &grid));
                    passes(Way::Unguided(&Unguided::new(&ground, &grid, noses, weights)))
                }
            };
            if passed {
                return true;
            }
        }
    }
    false
}
