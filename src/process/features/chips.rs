//! Chips of drills, taps and cutters: how thin they are, and on tools of which size.

use super::super::rig::Rig;
use super::super::segments::{Segment, Work};
use super::{FLAT_TEETH, SLOT_TEETH, tap_drill_mm};
use crate::job::{FeatureKind, SectionKind};
use crate::mechanics::{drilling, milling};

/// A tool that cuts with a specific force.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ToolChip {
    /// What it is.
    pub kind: ToolKind,
    /// Diameter, or the feed of turning, mm.
    pub diameter_mm: f64,
    /// Thickness of its chip, of a cutter the mean, of turning the largest, mm.
    pub chip_mm: f64,
}

/// Kind of a tool.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToolKind {
    /// A drill, also one for a centre hole.
    Drill,
    /// A tap.
    Tap,
    /// A milling cutter.
    Cutter,
    /// A turning tool: its size is the feed.
    Turning,
}

impl Rig<'_> {
    /// The drills, taps and cutters of the job with their chips. A drill whose thrust the job gives is left out.
    pub fn tool_chips(&self) -> Vec<ToolChip> {
        let drill = |diameter_mm: f64| ToolChip {
            kind: ToolKind::Drill,
            diameter_mm,
            chip_mm: drilling::chip_mm(self.drill_feed_mm(diameter_mm)),
        };
        let cutter = |diameter_mm: f64, teeth: f64| ToolChip {
            kind: ToolKind::Cutter,
            diameter_mm,
            chip_mm: milling::mean_chip_mm(self.milling(diameter_mm, teeth).per_tooth_mm),
        };
        let shaft = &self.job.shaft;
        let features = shaft.features.iter().flat_map(|f| match &f.kind {
            FeatureKind::CrossHole { diameter_mm, thrust_n: None, .. } | FeatureKind::AxialHole { diameter_mm, .. } => {
                vec![drill(*diameter_mm)]
            }
            FeatureKind::CentreHole { pilot_mm, .. } => vec![drill(*pilot_mm)],
            FeatureKind::HexSocket { across_flats_mm, .. } => vec![drill(*across_flats_mm)],
            FeatureKind::TappedHole { thread, .. } => {
                let chip_mm = drilling::tap_chip_mm(thread.pitch_mm);
                let tap = ToolChip { kind: ToolKind::Tap, diameter_mm: thread.major_mm, chip_mm };
                vec![drill(tap_drill_mm(thread)), tap]
            }
            FeatureKind::Keyseat { width_mm, .. } => vec![cutter(*width_mm, SLOT_TEETH)],
            _ => Vec::new(),
        });
        let flats = shaft.sections.iter().filter_map(|section| match section.kind {
            SectionKind::Flats { across_flats_mm, circle_mm, .. } => {
                milling::flat(circle_mm, across_flats_mm / 2.0).map(|(width_mm, _)| cutter(width_mm, FLAT_TEETH))
            }
            _ => None,
        });
        features.chain(flats).collect()
    }
}

/// The chips of turning: as thick as the feed on a straight edge, thinner on the nose.
pub fn turning_chips(segments: &[Segment]) -> Vec<ToolChip> {
    let along = segments.iter().filter(|s| matches!(s.work, Work::Turn | Work::Plunge));
    let feeds = along.flat_map(|s| &s.travels).map(|travel| travel.feed_mm);
    feeds.map(|feed| ToolChip { kind: ToolKind::Turning, diameter_mm: feed, chip_mm: feed }).collect()
}
