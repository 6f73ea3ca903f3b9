//! Where the feed may stop, and what the witness line it leaves there costs.
//!
//! At shoulders and at the ends of grooves always; inside a section by its `interrupt`; inside a section of several
//! segments at their borders only, where there is a line already.

use super::rig::Rig;
use super::segments::{Segment, Work};
use crate::job::Interrupt;

/// Two places closer than this are one, mm.
pub const SAME_MM: f64 = 1e-6;

/// What a stop at a place means.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stop {
    /// The feed must not stop here.
    Forbidden,
    /// At a shoulder: no line on a surface.
    Shoulder,
    /// At a border between segments, where there is a line already.
    Border,
    /// Inside a surface that has leave to be interrupted.
    Free,
    /// Inside a surface that would rather not.
    Avoid,
}

impl Stop {
    /// Whether the feed may stop.
    pub fn allowed(self) -> bool {
        self != Stop::Forbidden
    }
}

impl Rig<'_> {
    /// What a stop at turned length `t` means.
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
        match section.interrupt {
            Interrupt::Never => Stop::Forbidden,
            Interrupt::Avoid => Stop::Avoid,
            Interrupt::Free => Stop::Free,
        }
    }

    /// What a stop costs on top of its time, s.
    pub fn stop_penalty_s(&self, stop: Stop) -> f64 {
        if stop == Stop::Avoid { self.job.limits.avoid_penalty_s } else { 0.0 }
    }

    /// What the lines between the segments of `avoid` sections cost, s. It does not depend on the plan.
    pub fn border_penalty_s(&self, segments: &[Segment]) -> f64 {
        let inner = segments.windows(2).filter(|w| {
            w[0].section == w[1].section
                && w[1].work != Work::PartOff
                && self.job.shaft.sections[w[0].section].interrupt == Interrupt::Avoid
        });
        inner.count() as f64 * self.job.limits.avoid_penalty_s
    }
}
