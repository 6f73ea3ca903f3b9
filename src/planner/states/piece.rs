//! What is known of one piece under one grip, and whether the bar may come to the part-off at all.

use crate::planner::states::outlook::{Looker, Side};
use crate::process::checks::PASSES_UP_TO;
use crate::process::stops::SAME_MM;

/// What is known of a piece between two neighbouring stations under a grip.
#[derive(Debug, Clone, Copy)]
pub struct PieceOutlook {
    /// Dead: it fails at every place of the headstock.
    pub dead: bool,
    /// Sure: it holds at full speed at every place of the headstock.
    pub sure: bool,
    /// Upper bound on the speed, rev/min.
    pub cap_rpm: f64,
    /// Upper bound on the margin.
    pub most_margin: f64,
}

impl PieceOutlook {
    /// A piece that is sure, with bounds that limit nothing.
    pub const SURE: PieceOutlook =
        PieceOutlook { dead: false, sure: true, cap_rpm: f64::INFINITY, most_margin: f64::INFINITY };
}

impl Looker<'_> {
    /// Turned length up to which the travel of the counter-spindle carries a grip, or the stroke of the headstock the
    /// free front; with a centre up to which both carry it, mm.
    pub fn limit_mm(&self, grip: usize) -> f64 {
        let machine = &self.rig.job.machine;
        match (&machine.counter_spindle, self.noses.get(grip)) {
            (Some(counter), Some(nose)) => nose + counter.farthest_mm - self.rig.gap_mm(),
            _ => machine.headstock.stroke_mm.min(self.rig.centre_to_mm()),
        }
    }

    /// Grips that the counter-spindle can reach at a station and that the wishes allow.
    pub fn noses_at(&self, station: usize) -> impl DoubleEndedIterator<Item = usize> {
        let at_mm = self.grid.at(station);
        let travel = self.rig.job.machine.counter_spindle.as_ref().map(|c| (c.nearest_mm, c.farthest_mm));
        let range = travel.map_or(0..0, |(nearest_mm, farthest_mm)| {
            let (farthest, nearest) = (at_mm + self.rig.gap_mm() - farthest_mm, at_mm + self.rig.gap_mm() - nearest_mm);
            let first = self.noses.partition_point(|g| *g < farthest - SAME_MM);
            let end = self.noses.partition_point(|g| *g <= nearest + SAME_MM && *g <= at_mm + SAME_MM);
            first..end.max(first)
        });
        range.filter(move |grip| self.rig.job.wishes.allow_nose(at_mm, self.noses[*grip]))
    }

    /// What is known of the piece behind station `k` under a grip.
    pub fn piece(&self, grip: usize, k: usize) -> PieceOutlook {
        let nothing = PieceOutlook { dead: true, sure: false, cap_rpm: 0.0, most_margin: f64::NEG_INFINITY };
        // The far end first: a piece that fails usually fails there.
        let end = self.outlook(grip, k + 1, Side::End);
        if end.dead {
            return nothing;
        }
        let start = self.outlook(grip, k, Side::Start);
        let [drill_low, drill_high] = self.drill(grip, k + 1, None);
        if start.dead || drill_low > PASSES_UP_TO {
            return nothing;
        }
        let sure = start.sure && end.sure;
        let cap_rpm = if sure { f64::INFINITY } else { start.hopeful_rpm.min(end.hopeful_rpm) };
        let most_margin = start.margin.min(end.margin).min(1.0 - drill_high);
        PieceOutlook { dead: false, sure: sure && drill_high <= PASSES_UP_TO, cap_rpm, most_margin }
    }

    /// Smallest and largest utilisation of what must hold where a stage ends at a station under a grip: letting go of
    /// the front, or the last grip. None: no stage may end there. At part-off the front may be free only where the part
    /// falls. On a centre the whole part is one stage.
    pub fn ending(&self, grip: usize, station: usize) -> Option<[f64; 2]> {
        if !self.grid.borders(station) {
            return None;
        }
        if station < self.grid.last() {
            if self.rig.centre().is_some() {
                return None;
            }
            return Some(self.release(grip, station, None));
        }
        let held = self.grips(grip) || self.rig.falls();
        held.then(|| [self.last_grip(grip); 2])
    }

    /// Whether every piece has a grip that may hold it, and the part-off a grip that may hold there. Otherwise there is
    /// surely no plan. This needs only a few states of each station, where runs need all of them.
    ///
    /// It begins at the part-off, where the bar is longest.
    pub fn may_come_through(&self) -> bool {
        self.shut_piece().is_none()
    }

    /// A piece that no grip may hold, or the last one if no grip may hold at the part-off. None: see [`Looker::may_come_through`].
    pub fn shut_piece(&self) -> Option<usize> {
        let last = self.grid.last();
        // A grip that holds one piece usually holds the next one too.
        let mut held = self.free();
        for k in (0..last).rev() {
            crate::spread::checkpoint();
            let may = |grip: &usize| {
                let reaches = self.grid.carried_to(k + 1) <= self.limit_mm(*grip) + SAME_MM
                    && self.noses.get(*grip).is_none_or(|nose| *nose <= self.grid.at(k) + SAME_MM);
                let ends = || self.ending(*grip, last).is_some_and(|[low, _]| low <= PASSES_UP_TO);
                reaches && (k + 1 < last || ends()) && !self.piece(*grip, k).dead
            };
            if may(&held) {
                continue;
            }
            match (0..=self.free()).rev().find(may) {
                Some(grip) => held = grip,
                None => return Some(k),
            }
        }
        None
    }
}
