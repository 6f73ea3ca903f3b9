//! A draft of a plan: stops, grips and re-grips as plain numbers, before speeds and checks are settled.

use crate::planner::sequence::network::Edge;
use crate::planner::sequence::unguided::{OPENS, Unguided};
use crate::planner::sequence::way::Way;
use crate::planner::states::outlook::Looker;
use crate::process::stops::SAME_MM;

/// One stage.
#[derive(Debug, Clone, PartialEq)]
pub struct DraftStage {
    /// Turned length at its start, mm.
    pub from_mm: f64,
    /// Turned length at its end, mm.
    pub to_mm: f64,
    /// Place of the collet's nose on the shaft, mm; none: the front is free.
    pub nose_mm: Option<f64>,
    /// Re-grips at its start and inside, mm.
    pub regrips_mm: Vec<f64>,
    /// Whether the headstock re-grips at its end, before the hand-over.
    pub regrip_at_end: bool,
}

/// All stages.
#[derive(Debug, Clone, PartialEq)]
pub struct Draft {
    /// The stages, in order.
    pub stages: Vec<DraftStage>,
    /// Turned length to which the bar is fed in the last stage, mm: the end of the stage, or farther for work behind
    /// it.
    pub fed_to_mm: f64,
}

impl Draft {
    /// The draft of a way through the network.
    pub fn of(way: &Way, looker: &Looker<'_>) -> Draft {
        let grid = looker.grid;
        let stage = |(edge, ends): (&Edge, &[usize])| DraftStage {
            from_mm: grid.at(ends[0]),
            to_mm: grid.at(ends[1]),
            nose_mm: looker.noses.get(edge.grip).copied(),
            regrips_mm: edge.regrips.iter().map(|m| grid.at(*m)).collect(),
            regrip_at_end: edge.regrip_at_end,
        };
        let stages = way.edges.iter().zip(way.stations.windows(2)).map(stage).collect();
        Draft { stages, fed_to_mm: grid.fed_to(grid.last()) }
    }

    /// The draft of a way without a bush: consecutive pieces under one grip are one stage.
    pub fn without_bush(way: &Way, all: &Unguided<'_>) -> Draft {
        let mut stages: Vec<DraftStage> = Vec::new();
        let mut opened = true;
        for (edge, ends) in way.edges.iter().zip(way.stations.windows(2)) {
            if edge.grip == OPENS {
                opened = true;
                continue;
            }
            let (from_mm, to_mm) = (all.grid.at(ends[0]), all.grid.at(ends[1]));
            let nose_mm = all.noses.get(edge.grip).copied();
            match stages.last_mut() {
                Some(stage) if !opened => {
                    stage.regrips_mm.push(from_mm);
                    stage.to_mm = to_mm;
                }
                _ => {
                    let regrips_mm = if nose_mm.is_some() { vec![from_mm] } else { Vec::new() };
                    stages.push(DraftStage { from_mm, to_mm, nose_mm, regrips_mm, regrip_at_end: false });
                }
            }
            // After the free piece, a grip may take the front at once.
            opened = nose_mm.is_none();
        }
        Draft { stages, fed_to_mm: all.grid.fed_to(all.grid.last()) }
    }

    /// Turned length of the last re-grip before each stage begins, mm; 0 before the first.
    pub fn last_regrip_before(&self, stage: usize) -> f64 {
        let mut last = 0.0;
        for s in &self.stages[..stage] {
            if let Some(m) = s.regrips_mm.last() {
                last = *m;
            }
            if s.regrip_at_end {
                last = s.to_mm;
            }
        }
        last
    }

    /// Where the headstock last re-gripped at a turned length of a stage (index), mm.
    pub fn last_regrip_at(&self, stage: usize, turned_mm: f64) -> f64 {
        let inside = self.stages[stage].regrips_mm.iter().rev().find(|m| **m <= turned_mm + SAME_MM);
        inside.copied().unwrap_or_else(|| self.last_regrip_before(stage))
    }

    /// Turned length at which the piece that contains a turned length of a stage ends, mm: at the next re-grip, or at
    /// the end of the stage; the last piece ends where the bar is fed to. A length at the border of two pieces belongs
    /// to the piece in front.
    pub fn piece_end(&self, index: usize, turned_mm: f64) -> f64 {
        let stage = &self.stages[index];
        let next = stage.regrips_mm.iter().find(|m| **m > stage.from_mm + SAME_MM && **m >= turned_mm - SAME_MM);
        let last = if index + 1 == self.stages.len() { self.fed_to_mm } else { stage.to_mm };
        next.copied().unwrap_or(last.max(stage.to_mm))
    }

    /// Turned lengths of all hand-overs, mm.
    pub fn hand_overs_mm(&self) -> Vec<f64> {
        self.stages.iter().skip(1).map(|s| s.from_mm).collect()
    }

    /// Turned lengths of all re-grips, mm, ascending.
    pub fn regrips_mm(&self) -> Vec<f64> {
        let mut all = Vec::new();
        for s in &self.stages {
            all.extend_from_slice(&s.regrips_mm);
            if s.regrip_at_end {
                all.push(s.to_mm);
            }
        }
        all
    }
}
