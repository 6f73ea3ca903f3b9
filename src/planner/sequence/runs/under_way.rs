//! Runs under one grip over all places of the headstock. Each run is worked out only as far as it is asked for, and is
//! continued from there later.

use super::Runs;
use crate::planner::states::outlook::Looker;
use crate::process::segments::{Segment, Work};
use crate::spread::lock;

/// Largest number of unfinished runs that are kept: some megabytes.
const RUNS_KEPT: usize = 100_000;

/// The bounds of a run over all places of the headstock, as far as it was asked for.
#[derive(Clone, Copy)]
pub(super) struct Hoped {
    tally: Tally,
    /// Whether every piece holds at full speed at every place of the headstock.
    pub(super) sure: bool,
    /// Upper bound on the margin.
    pub(super) most: f64,
    /// The first station that the run is known not to reach.
    fails_to: usize,
}

impl Runs<'_> {
    /// The bounds of a run, and a lower bound on its time, s. None: a piece of the run surely fails.
    pub(super) fn hoped(&self, i: usize, j: usize, grip: usize) -> Option<(Hoped, f64)> {
        let known = lock(&self.hoped).get(&(i, grip)).copied();
        if known.is_some_and(|way| j >= way.fails_to) {
            return None;
        }
        let start =
            || Hoped { tally: Tally::new(self.looker, i), sure: true, most: f64::INFINITY, fails_to: usize::MAX };
        let mut way = known.filter(|way| way.tally.at <= j).unwrap_or_else(start);
        let mut clock = Clock { looker: self.looker, gripped: self.looker.grips(grip), tally: way.tally };
        for k in way.tally.at..j {
            crate::spread::checkpoint();
            let piece = self.looker.piece(grip, k);
            if piece.dead {
                way.fails_to = k + 1;
                break;
            }
            way.sure &= piece.sure;
            way.most = way.most.min(piece.most_margin);
            clock.advance(k, piece.cap_rpm);
        }
        way.tally = clock.tally;
        if known.is_none_or(|known| known.tally.at <= way.tally.at) {
            let mut all = lock(&self.hoped);
            // Too many: forget them all.
            if all.len() >= RUNS_KEPT {
                all.clear();
            }
            all.insert((i, grip), way);
        }
        (way.fails_to > j).then(|| (way, clock.total_s()))
    }
}

/// Adds up the time of a run, piece by piece, each at the lowest speed its states allow.
pub(super) struct Clock<'a> {
    looker: &'a Looker<'a>,
    gripped: bool,
    tally: Tally,
}

/// The state of a clock.
#[derive(Clone, Copy)]
struct Tally {
    segment: usize,
    /// Station at which the part of the run in this segment begins, and the station reached.
    from: usize,
    at: usize,
    cap_rpm: f64,
    /// Time of the segments already finished, s.
    done_s: f64,
}

impl Tally {
    fn new(looker: &Looker<'_>, station: usize) -> Tally {
        let segment = looker.grid.segment[station];
        Tally { segment, from: station, at: station, cap_rpm: f64::INFINITY, done_s: 0.0 }
    }
}

impl<'a> Clock<'a> {
    pub(super) fn new(looker: &'a Looker<'a>, station: usize, gripped: bool) -> Clock<'a> {
        Clock { looker, gripped, tally: Tally::new(looker, station) }
    }

    pub(super) fn advance(&mut self, k: usize, cap_rpm: f64) {
        let segment = self.looker.grid.segment[k];
        if segment != self.tally.segment {
            self.tally = Tally { done_s: self.total_s(), ..Tally::new(self.looker, k) };
        }
        self.tally.cap_rpm = self.tally.cap_rpm.min(cap_rpm);
        self.tally.at = k + 1;
    }

    pub(super) fn total_s(&self) -> f64 {
        let Tally { segment, from, at, cap_rpm, done_s } = self.tally;
        let segment: &Segment = &self.looker.segments[segment];
        let [from_mm, to_mm] = [from, at].map(|station| self.looker.grid.at(station));
        if to_mm <= from_mm || segment.work == Work::PartOff {
            return done_s;
        }
        done_s + self.looker.rig.stretch_time(segment, [from_mm, to_mm], self.gripped, cap_rpm).total_s()
    }
}
