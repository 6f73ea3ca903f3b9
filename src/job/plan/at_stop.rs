//! The order in which things are done at a stop of the feed. It is defined only here, for the planner, the proof, the
//! timeline and the sheet.

use super::super::SAME_MM;
use super::{Plan, Stage};

/// What is done at one turned length, in the order in which it is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum AtStop {
    /// Work of tools across the shaft, on the bar as the last cut left it. It is done before anything opens.
    Work,
    /// A headstock re-grip that ends a stage, while the grip of that stage still holds.
    RegripBefore,
    /// A hand-over.
    HandOver,
    /// A headstock re-grip that begins a stage, under the grip of that stage, or one inside the stage.
    RegripAfter,
}

impl AtStop {
    /// Which of the two kinds a re-grip of a stage is.
    pub fn of_regrip(stage: &Stage, turned_mm: f64) -> AtStop {
        let ends = turned_mm >= stage.to_mm - SAME_MM && turned_mm > stage.from_mm + SAME_MM;
        if ends { AtStop::RegripBefore } else { AtStop::RegripAfter }
    }
}

/// Something done at a stop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Done {
    /// Turned length, mm.
    pub turned_mm: f64,
    /// What is done.
    pub what: AtStop,
    /// Stage it belongs to, from 1.
    pub stage: usize,
    /// Its number among the features, the hand-overs or the re-grips of the plan, from 0.
    pub index: usize,
}

impl Plan {
    /// Everything done at stops before the part-off, in the order in which it is done.
    pub fn at_stops(&self) -> Vec<Done> {
        let works = self.features.iter().enumerate().filter_map(|(index, f)| {
            Some(Done { turned_mm: f.turned_mm?, what: AtStop::Work, stage: f.stage.unwrap_or(1), index })
        });
        let handed = self.stages.iter().skip(1).enumerate();
        let handed =
            handed.map(|(index, s)| Done { turned_mm: s.from_mm, what: AtStop::HandOver, stage: s.number, index });
        let regrips = self.stages.iter().flat_map(|s| s.regrips_mm.iter().map(move |t| (s, *t))).enumerate();
        let regrips = regrips.map(|(index, (stage, turned_mm))| Done {
            turned_mm,
            what: AtStop::of_regrip(stage, turned_mm),
            stage: stage.number,
            index,
        });
        let mut all: Vec<Done> = works.chain(handed).chain(regrips).collect();
        all.sort_by(|a, b| a.turned_mm.total_cmp(&b.turned_mm));
        // Turned lengths that differ only by rounding are one stop.
        for here in all.chunk_by_mut(|a, b| b.turned_mm - a.turned_mm <= SAME_MM) {
            here.sort_by_key(|done| done.what);
        }
        all
    }
}
