//! Runs under one grip over all places of the headstock, each worked out as far as it is asked for and no part of it twice.

use super::Runs;
use crate::planner::states::outlook::Looker;
use crate::process::segments::{Segment, Work};
use crate::spread::lock;

/// Runs under way that are kept: some megabytes.
const RUNS_KEPT: usize = 100_000;

/// A run as far as it was asked for, over all places of the headstock.
#[derive(Clone, Copy)]
pub(super) struct Hoped {
    tally: Tally,
    /// Whether every piece surely holds.
    pub(super) sure: bool,
    /// The margin is no larger than this.
    pub(super) most: f64,
    /// The nearest station to which it is known to fail.
    fails_to: usize,
}

impl Runs<'_> {
    /// What a run promises, and a time that it does not beat, s; none where a piece of it surely fails.
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
            // All are forgotten where they would be too many.
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

/// How far a clock is.
#[derive(Clone, Copy)]
struct Tally {
    segment: usize,
    /// Stations at which the piece begins, and to which it has come.
    from: usize,
    at: usize,
    cap_rpm: f64,
    /// Time of the segments before, s.
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
        let length = self.looker.grid.at(at) - self.looker.grid.at(from);
        if length <= 0.0 || segment.work == Work::PartOff {
            return done_s;
        }
        done_s + self.looker.rig.piece_time(segment, length, self.gripped, cap_rpm).total_s()
    }
}
