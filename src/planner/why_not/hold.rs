//! Why no collet takes hold of the finished front, in words: the collets, the places, the stops, the checks that fail
//! at once.

use crate::job::{Interrupt, SectionKind};
use crate::lang::Measure;
use crate::lang::lists;
use crate::planner::states::outlook::{Looker, Side};
use crate::planner::why_not::frontier::broken;
use crate::planner::why_not::no_hold::{NoHold, earliest_mm, nowhere, too_early};
use crate::planner::why_not::walk::{Walk, walk};
use crate::process::Rig;
use crate::process::stops::SAME_MM;
use crate::say;

/// Why a collet that could hold somewhere does not take hold up to a turned length.
pub fn not_in_time(looker: &Looker<'_>, stations: &[usize], farthest_mm: f64) -> NoHold {
    let (rig, grid) = (looker.rig, looker.grid);
    let (Some(collet), Some(counter)) = (rig.collet, &rig.job.machine.counter_spindle) else { return nowhere(rig) };
    if let Some(too_early) = too_early(rig, &looker.noses, farthest_mm) {
        return too_early;
    }
    let (from_mm, name) = (earliest_mm(rig, &looker.noses).unwrap_or(0.0), &collet.name);
    let can_begin = |k: &&usize| **k > 0 && grid.at(**k) >= from_mm - SAME_MM;
    let stops: Vec<usize> = stations.iter().filter(can_begin).copied().collect();
    if stops.is_empty() {
        let why = why_no_stop(rig, from_mm, farthest_mm);
        let (from, to) = (Measure::Place.fixed(from_mm, 1), Measure::Place.fixed(farthest_mm, 1));
        return NoHold::Because(say!("grip-no-stop", collet = name, from = from, to = to, why = why));
    }
    // The grip that comes farthest, or else the checks that fail at once.
    let grips = || 0..looker.noses.len();
    let from = |k: usize, grip: usize| match walk(looker, k, grip, k, |_, _| ()) {
        Walk::Ends(end) => Some((end, grip)),
        Walk::NotBegun | Walk::Through => None,
    };
    let ends = stops.iter().flat_map(|k| looker.noses_at(*k).filter_map(|grip| from(*k, grip)));
    if let Some((end, grip)) = ends.max_by_key(|(end, _)| end.rank()) {
        let (nose, turned) =
            (Measure::Place.fixed(looker.noses[grip], 1), Measure::Place.fixed(grid.at(end.station), 1));
        return NoHold::Because(say!("grip-no-farther", nose = nose, turned = turned, why = end.told()));
    }
    let last = stops.last().copied().unwrap_or(0);
    let t = grid.at(last);
    let near = |g: &usize| {
        let x = t + rig.gap_mm() - looker.noses[*g];
        x >= counter.nearest_mm - SAME_MM && x <= counter.farthest_mm + SAME_MM && looker.noses[*g] <= t + SAME_MM
    };
    let nearest = grips().filter(near).max_by(|a, b| looker.noses[*a].total_cmp(&looker.noses[*b]));
    let turned = Measure::Place.fixed(t, 1);
    NoHold::Because(match nearest {
        Some(grip) => {
            let breaks = broken(looker, (grip, last), Side::Start, t);
            let why = lists::semicolons(&breaks.iter().map(|r| &r.text).collect::<Vec<_>>());
            say!("grip-fails", collet = name, turned = turned, why = why)
        }
        None => say!("grip-out-of-travel", turned = turned, collet = name),
    })
}

/// Why the feed may not stop between two turned lengths.
fn why_no_stop(rig: &Rig<'_>, from_mm: f64, to_mm: f64) -> String {
    let sections = rig.job.shaft.sections.iter().enumerate();
    let mut there = sections.filter(|(_, s)| s.to_mm >= from_mm - SAME_MM && s.from_mm <= to_mm + SAME_MM);
    let Some((i, section)) = there.find(|(_, s)| s.interrupt == Interrupt::Never) else {
        return say!("grip-no-stop-segments");
    };
    match section.kind {
        SectionKind::Thread(_) => say!("grip-no-stop-thread", section = section.label(i)),
        _ => say!("grip-no-stop-never", section = section.label(i)),
    }
}
