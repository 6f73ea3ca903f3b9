//! Runs for the very place of the headstock, each worked out as far as it is asked for and no part of it twice.

use super::Runs;
use crate::planner::outlook::{Looker, Side};
use crate::process::checks::PASSES_UP_TO;
use crate::process::segments::{Segment, Work};
use crate::spread::open;

/// Runs under way that are kept: some megabytes.
const UNDER_WAY_KEPT: usize = 100_000;

/// A run as far as it was asked for, for the very place of the headstock.
#[derive(Clone, Copy)]
pub(super) struct UnderWay {
    tally: Tally,
    margin: f64,
    /// The nearest station to which it is known to fail.
    fails_to: usize,
}

impl Runs<'_> {
    /// Time and margin of a run for the very place of the headstock; none when a state fails.
    ///
    /// A run that is asked for after a shorter one from the same place goes on where that one ended.
    pub fn exact(&self, i: usize, j: usize, grip: usize, regrip: usize) -> Option<(f64, f64)> {
        let key = (i, grip, regrip);
        let known = open(&self.under_way).get(&key).copied();
        if known.is_some_and(|way| j >= way.fails_to) {
            return None;
        }
        // A shorter run than the one that is known is worked out by itself.
        let start = || UnderWay { tally: Tally::new(self.looker, i), margin: f64::INFINITY, fails_to: usize::MAX };
        let way = known.filter(|way| way.tally.at <= j).unwrap_or_else(start);
        let on = self.on(way, j, grip, regrip);
        let mut all = open(&self.under_way);
        if all.len() >= UNDER_WAY_KEPT {
            all.clear();
        }
        match on {
            Some((on, _)) if known.is_none_or(|way| way.tally.at <= j) => drop(all.insert(key, on)),
            Some(_) => {}
            None => drop(all.insert(key, UnderWay { fails_to: j, ..known.unwrap_or(way) })),
        }
        on.map(|(on, time_s)| (time_s, on.margin))
    }

    /// A run that goes on to a station, and its time, s; none where a state on the way fails.
    ///
    /// A segment is cut at the speed of its slowest state, so the others need not be worked out where no place of the headstock makes them
    /// slower, and where they leave no smaller margin: a slowed state leaves none.
    fn on(&self, way: UnderWay, j: usize, grip: usize, regrip: usize) -> Option<(UnderWay, f64)> {
        let (l, segment) = (self.looker, &self.looker.grid.segment);
        let mut clock = Clock { looker: l, gripped: l.grips(grip), tally: way.tally };
        let mut margin = way.margin;
        let from = way.tally.at;
        let mut open: Vec<(f64, usize, Side)> = Vec::new();
        for k in from..j {
            for (station, side) in [(k, Side::Start), (k + 1, Side::End)] {
                let seen = l.outlook(grip, station, side);
                if seen.sure {
                    margin = margin.min(seen.margin);
                } else {
                    open.push((seen.careful_rpm, k, side));
                }
            }
            let share = l.drill(grip, k + 1, Some(regrip))[1];
            if share > PASSES_UP_TO {
                return None;
            }
            margin = margin.min(1.0 - share);
        }
        open.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut caps = vec![f64::INFINITY; if j > from { segment[j - 1] + 1 - way.tally.segment } else { 0 }];
        if let Some(first) = caps.first_mut() {
            *first = way.tally.cap_rpm;
        }
        for (careful_rpm, k, side) in open {
            let cap = &mut caps[segment[k] - way.tally.segment];
            if careful_rpm >= *cap && margin <= 0.0 {
                continue;
            }
            let (allowed, share) = l.exact(grip, k + usize::from(side == Side::End), side, regrip)?;
            *cap = cap.min(allowed);
            margin = margin.min(1.0 - share);
        }
        (from..j).for_each(|k| clock.advance(k, caps[segment[k] - way.tally.segment]));
        Some((UnderWay { tally: clock.tally, margin, ..way }, clock.total_s()))
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
