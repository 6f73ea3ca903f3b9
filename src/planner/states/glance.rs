//! Most states are at ease or beyond help: one count of pivots, or none, tells so, where ranking a state takes several.
//!
//! What a glance says is what the full look would say; where it cannot tell, the full look decides.

use crate::planner::states::demand::apart;
use crate::planner::states::outlook::{AT_EASE, Looker, MOST_ABOVE, Outlook, Row, SAMPLE_GUARD, Seen, Side, guard};
use crate::process::checks::PASSES_UP_TO;
use crate::process::span::Rear;

/// How far above what is needed for ease the critical speed is asked to lie at a glance: more than the last of the ranking steps may miss,
/// a 32nd part of the `MOST_ABOVE` they look at, evenly over the orders of magnitude.
const GLANCE: f64 = 1.14;

impl Looker<'_> {
    /// Whether a state is sure or dead, and how fast it may be, as [`Looker::outlook`] tells; its margin is at most what it
    /// says, for no state uses less than what does not depend on the speed.
    ///
    /// Most states are at ease or beyond help, and one count, or none, tells; ranking them takes several.
    pub fn glance(&self, grip: usize, station: usize, side: Side) -> Outlook {
        let row = &self.rows[grip];
        let cell = row.cell(&row.glances, station).filter(|_| self.ranks && !self.has_shut(grip, station));
        let Some(cell) = cell else { return self.outlook(grip, station, side) };
        let full = || [Side::End, Side::Start].map(|side| self.outlook(grip, station, side));
        cell.get_or_init(|| Box::new(self.quick(grip, station).unwrap_or_else(full)))[side as usize]
    }

    /// Whether a grip index is a grip.
    pub fn grips(&self, grip: usize) -> bool {
        grip < self.noses.len()
    }

    /// Whether a state of a station under a grip is shut.
    pub(super) fn has_shut(&self, grip: usize, station: usize) -> bool {
        self.grid.has_shut(station, self.noses.get(grip).copied())
    }

    /// Every state that was looked at, by grip and station.
    pub fn looked_at(&self) -> Vec<(usize, usize)> {
        let row = |(grip, row): (usize, &'_ Row)| -> Vec<(usize, usize)> {
            let cells = row.glances.get().map_or(&[][..], |cells| cells.as_slice());
            let seen = cells.iter().enumerate().filter(|(_, cell)| cell.get().is_some());
            seen.map(|(i, _)| (grip, row.first + i)).collect()
        };
        self.rows.iter().enumerate().flat_map(row).collect()
    }

    /// Both sides of a state where a glance is enough.
    fn quick(&self, grip: usize, station: usize) -> Option<[Outlook; 2]> {
        let places = self.places(grip, station);
        let ends = if let [far, _, near] = places[..] { vec![far, near] } else { places.clone() };
        let mut seen = self.view(grip, station, &ends)?;
        let dead = Outlook { sure: false, dead: true, hopeful_rpm: 0.0, careful_rpm: 0.0, margin: f64::NAN };
        let bases = |seen: &Seen, side: usize| -> (f64, f64) {
            let side = seen.sides[side].as_ref().or(seen.sides[0].as_ref());
            let all = side.into_iter().flat_map(|s| &s.1).map(|d| d.base);
            all.fold((f64::INFINITY, 0.0f64), |(lo, hi), b| (lo.min(b), hi.max(b)))
        };
        if [0, 1].iter().all(|side| bases(&seen, *side).0 > PASSES_UP_TO) {
            // Softer than allowed at both ends of the headstock's range: in the middle too?
            let mut range = [0, 1].map(|side| bases(&seen, side));
            if let [_, middle, _] = places[..] {
                seen = self.seen(seen.front.clone(), grip, station, &[middle])?;
                range = [0, 1].map(|side| {
                    let (a, b) = bases(&seen, side);
                    (range[side].0.min(a), range[side].1.max(b))
                });
            }
            let all = range
                .iter()
                .all(|(low, high)| low - if places.len() == 1 { 0.0 } else { guard(*low, *high) } > PASSES_UP_TO);
            return all.then_some([dead; 2]);
        }
        let held: Vec<&Rear> = seen.rears.iter().filter_map(|r| r.as_ref().as_ref()).collect();
        let mut found = [dead; 2];
        for side in 0..2 {
            let Some((rpm, demands)) = &seen.sides[side] else {
                found[side] = found[0];
                continue;
            };
            let needed = |share: f64| demands.iter().map(|d| d.needed_rpm(*rpm, share)).fold(0.0, f64::max);
            let (ease, full) = (needed(AT_EASE), needed(1.0));
            // What ranking finds is then at least what ease needs, so no share is larger than at ease ...
            let high = bases(&seen, side).1;
            let at_ease = high <= AT_EASE && ease.is_finite() && GLANCE * ease <= MOST_ABOVE * full;
            // ... and shares spread no more than what does not come from one and the same critical speed.
            let most = demands.iter().map(|d| d.share(*rpm, ease)).fold(0.0, f64::max);
            let spread = apart(demands, *rpm, ease);
            let sure = most * (1.0 + SAMPLE_GUARD) + 0.5 * spread <= 1.0;
            let swings = |rpm: f64| seen.front.swings_above(crate::units::rad_per_s(rpm), &held).iter().all(|p| *p);
            if !(at_ease && sure && swings(GLANCE * ease)) {
                return None;
            }
            let hopeful_rpm = if ends.len() == 1 { *rpm } else { rpm + guard(*rpm, *rpm) };
            found[side] = Outlook { sure: true, dead: false, hopeful_rpm, careful_rpm: *rpm, margin: 1.0 - high };
        }
        Some(found)
    }
}
