//! Why a collet can take hold nowhere, in words: its range, the places, sections that must not be gripped.

use crate::job::Job;
use crate::lang::Measure;
use crate::lang::lists;
use crate::process::Rig;
use crate::process::stops::SAME_MM;
use crate::say;

/// Largest number of sections or other collets that are told as reasons; more would hide the main point.
pub const REASONS: usize = 2;

/// Why a collet can hold nowhere, or not early enough.
#[derive(Debug, Clone, PartialEq)]
pub enum NoHold {
    /// No plain section has a diameter in its range.
    Range,
    /// Another reason, in words.
    Because(String),
}

/// Why a collet can hold nowhere at all.
pub fn nowhere(rig: &Rig<'_>) -> NoHold {
    let Some(collet) = rig.collet else { return NoHold::Because(say!("grip-no-counter-spindle")) };
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
            say!("grip-forbidden", section = name)
        } else if rig.job.wishes.never_grip.iter().any(|n| n.from_mm <= s.from_mm && n.to_mm >= s.to_mm) {
            say!("grip-wished-never", section = name)
        } else if in_front > collet.passes_mm {
            let (front, passes) = (Measure::Size.number(in_front), Measure::Size.number(collet.passes_mm));
            say!("grip-front-too-thick", front = front, section = name, collet = collet.name, passes = passes)
        } else if s.from_mm + collet.hold_mm > deep_mm && s.length_mm() >= collet.hold_mm {
            say!("grip-too-deep", section = name, depth = Measure::Place.number(deep_mm))
        } else {
            say!(
                "grip-no-clear-length",
                section = name,
                hold = Measure::Place.number(collet.hold_mm),
                collet = collet.name
            )
        }
    };
    let told = lists::semicolons(&fitting.iter().take(REASONS).map(reason).collect::<Vec<_>>());
    NoHold::Because(match fitting.len().saturating_sub(REASONS) {
        0 => told,
        more => say!("grip-more-sections", reasons = told, more = more),
    })
}

/// Least turned length at which a grip can take hold, mm.
pub fn earliest_mm(rig: &Rig<'_>, noses: &[f64]) -> Option<f64> {
    let nearest_mm = rig.job.machine.counter_spindle.as_ref()?.nearest_mm;
    let first = noses.iter().copied().min_by(f64::total_cmp)?;
    Some((first + nearest_mm - rig.gap_mm()).max(first))
}

/// Why a collet takes hold nowhere up to a turned length: it can hold nowhere at all, or only farther back.
pub fn too_early(rig: &Rig<'_>, noses: &[f64], farthest_mm: f64) -> Option<NoHold> {
    let (Some(collet), Some(from_mm)) = (rig.collet, earliest_mm(rig, noses)) else { return Some(nowhere(rig)) };
    let first = noses.iter().copied().min_by(f64::total_cmp)?;
    let section = rig.held_section(first);
    let told = || {
        let name = rig.job.shaft.sections[section].label(section);
        NoHold::Because(say!(
            "grip-too-early",
            collet = collet.name,
            section = name,
            from = Measure::Place.fixed(from_mm, 1)
        ))
    };
    (from_mm > farthest_mm + SAME_MM).then(told)
}

/// Why nothing takes hold, over all collets. A collet whose range fits no section is told only where no other collet
/// could hold.
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
        return lists::semicolons(&told);
    }
    let collets = job.machine.counter_spindle.iter().flat_map(|c| &c.collets);
    let range = |c: &crate::job::Collet| {
        let (from, to) = (Measure::Size.number(c.smallest_mm), Measure::Size.number(c.largest_mm));
        say!("grip-collet-range", collet = c.name, from = from, to = to)
    };
    let ranges: Vec<String> = collets.map(range).collect();
    let mut plain: Vec<f64> =
        job.shaft.sections.iter().filter(|s| s.is_plain()).map(crate::job::Section::largest_mm).collect();
    plain.sort_by(f64::total_cmp);
    plain.dedup();
    let plain: Vec<String> =
        plain.iter().take(4).map(|d| say!("length-mm", length = Measure::Size.number(*d))).collect();
    if plain.is_empty() {
        return say!("grip-nothing-plain");
    }
    say!("grip-no-collet-fits", diameters = lists::commas(&plain), collets = lists::commas(&ranges))
}
