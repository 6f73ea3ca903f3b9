//! Events at a station besides turning: driven tools at work, letting go of the front, and the demands on the last
//! grip.

use crate::planner::states::outlook::{Looker, Remembered, guard};
use crate::process::checks::{self, Event};
use crate::process::span::Rear;
use crate::process::stops::SAME_MM;
use crate::process::{Counter, State};
use crate::spread::lock;
use std::sync::Arc;

/// Smallest and largest of some utilisations, widened by the guard for values between the samples.
fn spread_of(shares: &[f64]) -> [f64; 2] {
    let low = shares.iter().copied().fold(f64::INFINITY, f64::min);
    let high = shares.iter().copied().fold(0.0, f64::max);
    let guard = if shares.len() == 1 { 0.0 } else { guard(low, high) };
    [low - guard, high + guard]
}

impl Looker<'_> {
    /// Smallest and largest utilisation over the tasks of a station: of `drill`, and of all checks where bar is fed on
    /// for a task. Over all places of the headstock, or for the place that follows from a re-grip at a station.
    pub fn drill(&self, grip: usize, station: usize, regrip: Option<usize>) -> [f64; 2] {
        let due: Vec<(usize, f64)> = self.grid.due(station).collect();
        if due.is_empty() {
            return [0.0; 2];
        }
        let shut = self.shut(grip, station, regrip);
        let [low, high] = self.remembered(&self.drills, (grip, station, regrip), |h| {
            let mut worst: f64 = 0.0;
            for (task, turned_mm) in &due {
                // When bar is fed on, the headstock comes nearer.
                let headstock_mm = h - (turned_mm - self.grid.at(station));
                let state = State { turned_mm: *turned_mm, ..self.state(grip, station, headstock_mm) };
                if *turned_mm > self.grid.at(station) + SAME_MM {
                    let found = checks::fed_on(self.rig, self.segments, &state);
                    worst = worst.max(found.map_or(checks::MOST_SHARE, |f| f.map_or(0.0, |f| f.utilisation)));
                }
                for found in checks::at_event(self.rig, &state, Event::Works(&self.tasks[*task])) {
                    worst = worst.max(found.map_or(checks::MOST_SHARE, |f| f.utilisation));
                }
            }
            worst
        });
        [low.max(shut[0]), high.max(shut[1])]
    }

    /// Smallest and largest utilisation that a shut state forces on a station.
    fn shut(&self, grip: usize, station: usize, regrip: Option<usize>) -> [f64; 2] {
        let is = match regrip {
            _ if !self.has_shut(grip, station) => return [0.0; 2],
            Some(l) => self.grid.is_shut(&self.state(grip, station, self.headstock_mm(station, self.grid.at(l)))),
            None => false,
        };
        match regrip {
            Some(_) if is => [checks::MOST_SHARE; 2],
            Some(_) => [0.0; 2],
            None => [0.0, checks::MOST_SHARE],
        }
    }

    /// Smallest and largest utilisation where a stage ends at a station: of `release` when the collet opens, of `pick_up` when the
    /// front was free.
    pub fn release(&self, grip: usize, station: usize, regrip: Option<usize>) -> [f64; 2] {
        let row = &self.rows[grip];
        let (counter, at_mm) = match self.noses.get(grip).copied() {
            Some(nose_mm) => (Counter::Open { nose_mm }, nose_mm),
            None if self.noses.is_empty() => return [0.0; 2],
            None => (Counter::Away, 0.0),
        };
        let share = |places: &[f64]| -> Vec<f64> {
            let front = self.front_of(grip, station, counter);
            let rears: Vec<Arc<Option<Rear>>> = places.iter().map(|h| self.rear(*h)).collect();
            let held: Vec<&Rear> = rears.iter().filter_map(|r| r.as_ref().as_ref()).collect();
            if held.len() < rears.len() {
                return vec![checks::MOST_SHARE; places.len()];
            }
            let of = |mm: f64| match counter {
                Counter::Away => checks::pick_up::of_droop(self.rig, &self.state(grip, station, 0.0), mm).utilisation,
                _ => checks::release::of_sag(self.rig, at_mm, mm).utilisation,
            };
            front.sags_at_mm(&held, at_mm).iter().map(|mm| mm.map_or(checks::MOST_SHARE, of)).collect()
        };
        let shut = self.shut(grip, station, regrip);
        let [low, high] = match (regrip, row.cell(&row.releases, station)) {
            (None, Some(cell)) => **cell.get_or_init(|| Box::new(spread_of(&share(&self.places(grip, station))))),
            _ => self.remembered(&self.releases, (grip, station, regrip), |h| share(&[h])[0]),
        };
        [low.max(shut[0]), high.max(shut[1])]
    }

    fn remembered(
        &self,
        memory: &Remembered,
        key: (usize, usize, Option<usize>),
        share: impl Fn(f64) -> f64,
    ) -> [f64; 2] {
        if let Some(known) = lock(memory).get(&key) {
            return *known;
        }
        let (grip, station, regrip) = key;
        let places = match regrip {
            Some(l) => vec![self.headstock_mm(station, self.grid.at(l))],
            None => self.places(grip, station),
        };
        let shares: Vec<f64> = places.into_iter().map(share).collect();
        let range = spread_of(&shares);
        lock(memory).insert(key, range);
        range
    }

    /// Largest utilisation of the checks of the last grip.
    pub fn last_grip(&self, grip: usize) -> f64 {
        let Some(nose) = self.noses.get(grip) else { return 0.0 };
        let found = checks::of_last_grip(self.rig, *nose, self.rig.held_mm(*nose));
        found.map(|f| f.map_or(checks::MOST_SHARE, |f| f.utilisation)).fold(0.0, f64::max)
    }
}
