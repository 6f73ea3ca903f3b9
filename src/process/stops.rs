//! Where the feed may stop, and the penalty for the witness line that a stop leaves on the surface.
//!
//! The feed may always stop at shoulders and at the ends of grooves. Inside a section `interrupt` decides. A section of several
//! segments allows stops only at the borders of the segments, where there is a line anyway.

use super::rig::Rig;
use super::segments::{Segment, Work};
use crate::job::Interrupt;

/// Two places closer than this are one place, mm.
pub const SAME_MM: f64 = 1e-6;

/// The kind of a stop at a place.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stop {
    /// The feed must not stop here.
    Forbidden,
    /// At a shoulder: no line on a surface.
    Shoulder,
    /// At a border between segments, where there is a line anyway.
    Border,
    /// Inside a surface that may be interrupted.
    Free,
    /// Inside a surface that should not be interrupted; a penalty is added.
    Avoid,
}

impl Stop {
    /// Whether the feed may stop.
    pub fn allowed(self) -> bool {
        self != Stop::Forbidden
    }
}

impl Rig<'_> {
    /// The kind of a stop at a turned length.
    pub fn stop_at(&self, segments: &[Segment], turned_mm: f64) -> Stop {
        let shaft = &self.job.shaft;
        let length = shaft.length_mm();
        if turned_mm > length + SAME_MM {
            return Stop::Forbidden;
        }
        let near = |x: f64| (x - turned_mm).abs() <= SAME_MM;
        let index = shaft.section_at(turned_mm);
        let Some(section) = shaft.sections.get(index) else { return Stop::Forbidden };
        if near(section.from_mm) || near(section.to_mm) {
            return Stop::Shoulder;
        }
        let segment = &segments[super::segments::segment_at(segments, turned_mm)];
        if near(segment.from_mm) || near(segment.to_mm) {
            return Stop::Border;
        }
        let whole = segment.length_mm() >= section.length_mm() - SAME_MM;
        if !whole || !matches!(segment.work, Work::Turn | Work::AsDrawn) {
            return Stop::Forbidden;
        }
        // As long as the finishing tool of a tandem is not in the segment, the feed stops at the shoulder instead.
        if segment.lag_mm.is_some_and(|lag| turned_mm - lag < segment.from_mm + SAME_MM) {
            return Stop::Forbidden;
        }
        match section.interrupt {
            Interrupt::Never => Stop::Forbidden,
            Interrupt::Avoid => Stop::Avoid,
            Interrupt::Free => Stop::Free,
        }
    }

    /// Place of the line that a stop at a turned length leaves, mm. With a tandem the finishing tool leaves it, where it stands. As long as
    /// that tool is not in the section, this is the shoulder in front: what the roughing tool leaves is cut away.
    pub fn line_at_mm(&self, segments: &[Segment], turned_mm: f64) -> f64 {
        let segment = &segments[super::segments::segment_at(segments, turned_mm)];
        let inside = turned_mm > segment.from_mm + SAME_MM && turned_mm < segment.to_mm - SAME_MM;
        segment.lag_mm.filter(|_| inside).map_or(turned_mm, |lag| segment.from_mm.max(turned_mm - lag))
    }

    /// Penalty of a stop in addition to its time, s.
    pub fn stop_penalty_s(&self, stop: Stop) -> f64 {
        if stop == Stop::Avoid { self.job.limits.avoid_penalty_s } else { 0.0 }
    }

    /// Penalty of the lines between the segments of sections with `interrupt: avoid`, s. It does not depend on the plan.
    pub fn border_penalty_s(&self, segments: &[Segment]) -> f64 {
        let inner = segments.windows(2).filter(|w| {
            w[0].section == w[1].section
                && w[1].work != Work::PartOff
                && self.job.shaft.sections[w[0].section].interrupt == Interrupt::Avoid
        });
        inner.count() as f64 * self.job.limits.avoid_penalty_s
    }
}
