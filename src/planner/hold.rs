//! Why nothing takes hold of the finished front, in words: the collets, the places, the stops, what breaks at once.

use super::farthest::{Walk, walk};
use super::frontier::{REASONS, broken};
use super::outlook::{Looker, Side};
use crate::job::{Interrupt, Job, SectionKind};
use crate::process::Rig;
use crate::process::stops::SAME_MM;

/// Why a collet holds nowhere, or not in time.
#[derive(Debug, Clone, PartialEq)]
pub enum NoHold {
    /// No plain section has a diameter in its range.
    Range,
    /// Something else, in words.
    Because(String),
}

/// Why a collet holds nowhere at all.
pub fn nowhere(rig: &Rig<'_>) -> NoHold {
    let Some(collet) = rig.collet else { return NoHold::Because("the machine has no counter-spindle".into()) };
    let sections = rig.job.shaft.sections.iter().enumerate();
    let fitting: Vec<_> = sections.filter(|(_, s)| s.is_plain() && collet.holds(s.largest_mm())).collect();
    if fitting.is_empty() {
        return NoHold::Range;
    }
    let deep_mm = rig.job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.bore_depth_mm);
    let reason = |(i, s): &(usize, &crate::job::Section)| {
        let name = s.label(*i);
        let in_front = rig.profile.largest_in_front_mm(s.to_mm);
        if !s.grip {
            format!("{name} must not be gripped")
        } else if rig.job.wishes.never_grip.iter().any(|n| n.from_mm <= s.from_mm && n.to_mm >= s.to_mm) {
            format!("never to grip {name} is wished")
        } else if in_front > collet.passes_mm {
            format!(
                "{in_front} mm in front of {name} does not pass collet {}, which passes {} mm",
                collet.name, collet.passes_mm
            )
        } else if s.from_mm + collet.hold_mm > deep_mm && s.length_mm() >= collet.hold_mm {
            format!("{name} lies deeper than the counter-spindle's bore of {deep_mm} mm takes in")
        } else {
            format!("{name} has no clear length of {} mm for collet {}", collet.hold_mm, collet.name)
        }
    };
    let told = fitting.iter().take(REASONS).map(reason).collect::<Vec<_>>().join("; ");
    NoHold::Because(match fitting.len().saturating_sub(REASONS) {
        0 => told,
        more => format!("{told}; and so for {more} more"),
    })
}

/// Turned length from which on one of the noses may stand, mm.
fn earliest_mm(rig: &Rig<'_>, noses: &[f64]) -> Option<f64> {
    let nearest_mm = rig.job.machine.counter_spindle.as_ref()?.nearest_mm;
    let first = noses.iter().copied().min_by(f64::total_cmp)?;
    Some((first + nearest_mm - rig.gap_mm()).max(first))
}

/// Why a collet takes hold nowhere up to a turned length, where it holds nowhere at all or farther back alone.
pub fn too_early(rig: &Rig<'_>, noses: &[f64], farthest_mm: f64) -> Option<NoHold> {
    let (Some(collet), Some(from_mm)) = (rig.collet, earliest_mm(rig, noses)) else { return Some(nowhere(rig)) };
    let first = noses.iter().copied().min_by(f64::total_cmp)?;
    let section = rig.held_section(first);
    let told = || {
        NoHold::Because(format!(
            "collet {} can take hold on {} at the earliest, and for that {from_mm:.1} mm must be turned",
            collet.name,
            rig.job.shaft.sections[section].label(section)
        ))
    };
    (from_mm > farthest_mm + SAME_MM).then(told)
}

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
        return NoHold::Because(format!(
            "collet {name} could take hold between {from_mm:.1} and {farthest_mm:.1} mm turned, but {why}"
        ));
    }
    // The way on that comes farthest, or what breaks at once.
    let grips = || 0..looker.noses.len();
    let from = |k: usize, grip: usize| match walk(looker, k, grip, k, |_, _| ()) {
        Walk::Ends(end) => Some((end, grip)),
        Walk::NotBegun | Walk::Through => None,
    };
    let ends = stops.iter().flat_map(|k| looker.noses_at(*k).filter_map(|grip| from(*k, grip)));
    if let Some((end, grip)) = ends.max_by_key(|(end, _)| end.rank()) {
        let (nose, t) = (looker.noses[grip], grid.at(end.station));
        return NoHold::Because(format!("gripped at {nose:.1} mm it comes no farther than {t:.1} mm: {}", end.told()));
    }
    let last = stops.last().copied().unwrap_or(0);
    let t = grid.at(last);
    let near = |g: &usize| {
        let x = t + rig.gap_mm() - looker.noses[*g];
        x >= counter.nearest_mm - SAME_MM && x <= counter.farthest_mm + SAME_MM && looker.noses[*g] <= t + SAME_MM
    };
    let nearest = grips().filter(near).max_by(|a, b| looker.noses[*a].total_cmp(&looker.noses[*b]));
    NoHold::Because(match nearest {
        Some(grip) => {
            let breaks = broken(looker, (grip, last), Side::Start, t);
            let told = breaks.iter().map(|r| r.text.as_str()).collect::<Vec<_>>().join("; and ");
            format!("collet {name} cannot take over there: {told}")
        }
        None => format!("at {t:.1} mm turned no place for collet {name} is within the counter-spindle's travel"),
    })
}

/// Why the feed stops nowhere between two turned lengths.
fn why_no_stop(rig: &Rig<'_>, from_mm: f64, to_mm: f64) -> String {
    let sections = rig.job.shaft.sections.iter().enumerate();
    let mut there = sections.filter(|(_, s)| s.to_mm >= from_mm - SAME_MM && s.from_mm <= to_mm + SAME_MM);
    let Some((i, section)) = there.find(|(_, s)| s.interrupt == Interrupt::Never) else {
        return "no stop lies between them: what is cut in several travels is interrupted between its segments only"
            .into();
    };
    match section.kind {
        SectionKind::Thread(_) => format!("{} is a thread, which must not be interrupted", section.label(i)),
        _ => format!("{} must not be interrupted", section.label(i)),
    }
}

/// Why nothing takes hold, over all collets: those whose range fits no section say nothing where another could hold.
pub fn told(job: &Job, reasons: &[NoHold]) -> String {
    let mut told: Vec<&str> = Vec::new();
    for reason in reasons {
        if let NoHold::Because(text) = reason
            && !told.contains(&text.as_str())
        {
            told.push(text);
        }
    }
    if !told.is_empty() {
        told.truncate(REASONS);
        return told.join("; ");
    }
    let collets = job.machine.counter_spindle.iter().flat_map(|c| &c.collets);
    let ranges: Vec<String> =
        collets.map(|c| format!("collet {} holds {} to {} mm", c.name, c.smallest_mm, c.largest_mm)).collect();
    let mut plain: Vec<f64> =
        job.shaft.sections.iter().filter(|s| s.is_plain()).map(crate::job::Section::largest_mm).collect();
    plain.sort_by(f64::total_cmp);
    plain.dedup();
    let plain: Vec<String> = plain.iter().take(4).map(|d| format!("{d} mm")).collect();
    if plain.is_empty() {
        return "the shaft has no plain section that a collet could hold".into();
    }
    format!("no plain section ({}) fits a collet: {}", plain.join(", "), ranges.join(", "))
}
