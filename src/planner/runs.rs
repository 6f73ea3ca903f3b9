//! Runs: travel from one station to another under one grip, without asking yet where the headstock re-grips.
//!
//! For every pair of stations the planner knows the time at full speed, a grip that surely holds all the way (the one
//! with the largest margin), and the grips that may hold, with a time they cannot beat.

use super::outlook::{Looker, Side};
use super::stations::divisible;
use crate::process::checks::PASSES_UP_TO;
use crate::process::segments::{Segment, Work};
use crate::process::stops::SAME_MM;

/// What is known of the travel between two stations.
#[derive(Debug, Clone, Default)]
pub struct Pair {
    /// The sure grip with the largest margin, and that margin.
    pub sure: Option<(usize, f64)>,
    /// Grips that may hold: grip and a time no place of the headstock beats, s.
    pub doubtful: Vec<(usize, f64)>,
}

impl Pair {
    /// Whether no grip can hold.
    pub fn is_hopeless(&self) -> bool {
        self.sure.is_none() && self.doubtful.is_empty()
    }
}

/// All runs of one collet.
pub struct Runs<'a> {
    /// What looks at the states.
    pub looker: &'a Looker<'a>,
    /// `pairs[i][j - i - 1]` for stations `i < j`; rows end where nothing reaches any more. Row of the free front first.
    free: Vec<Pair>,
    gripped: Vec<Vec<Pair>>,
    /// Time to cut up to each station at full speed, free and gripped, s.
    cutting: [Vec<f64>; 2],
    /// Overheads of whole segments up to each segment, s.
    overhead: Vec<f64>,
}

impl<'a> Runs<'a> {
    /// Walks from every station with every grip.
    pub fn new(looker: &'a Looker<'a>) -> Runs<'a> {
        let (rig, segments, grid) = (looker.rig, looker.segments, looker.grid);
        let cutting = [false, true].map(|gripped| {
            let mut sum = vec![0.0];
            for k in 0..grid.last() {
                sum.push(sum[k] + cutting_s(looker, k, gripped));
            }
            sum
        });
        let mut overhead = vec![0.0];
        for (i, s) in segments.iter().enumerate() {
            overhead.push(overhead[i] + rig.piece_time(s, s.length_mm(), true, f64::INFINITY).overhead_s);
        }
        let mut runs = Runs { looker, free: Vec::new(), gripped: vec![Vec::new(); grid.len()], cutting, overhead };
        let mut free = Vec::new();
        runs.walk(0, looker.free(), &mut free);
        runs.free = free;
        let (Some(counter), gap) = (&rig.job.machine.counter_spindle, rig.gap_mm()) else { return runs };
        for i in 1..grid.last() {
            if !grid.borders(i) {
                continue;
            }
            let mut row = Vec::new();
            let (farthest, nearest) = (grid.at(i) + gap - counter.farthest_mm, grid.at(i) + gap - counter.nearest_mm);
            let first = looker.noses.partition_point(|g| *g < farthest - SAME_MM);
            for grip in first..looker.noses.len() {
                let nose = looker.noses[grip];
                if !rig.job.wishes.allow_nose(grid.at(i), nose) {
                    continue;
                }
                if nose > nearest + SAME_MM || nose > grid.at(i) + SAME_MM {
                    break;
                }
                runs.walk(i, grip, &mut row);
            }
            runs.gripped[i] = row;
        }
        runs
    }

    /// The stations a run from `i` may end at, with what is known.
    pub fn from(&self, i: usize) -> impl Iterator<Item = (usize, &Pair)> {
        let row = if i == 0 { &self.free } else { &self.gripped[i] };
        row.iter().enumerate().map(move |(n, p)| (i + 1 + n, p)).filter(|(_, p)| !p.is_hopeless())
    }

    /// Time from one station to another at full speed without a stop between, s.
    pub fn full_s(&self, i: usize, j: usize) -> f64 {
        let cutting = &self.cutting[usize::from(i > 0)];
        let segment = &self.looker.grid.segment;
        cutting[j] - cutting[i] + self.overhead[segment[j - 1] + 1] - self.overhead[segment[i]]
    }

    /// Speed a piece asks for, rev/min.
    pub fn rpm(&self, piece: usize, gripped: bool) -> f64 {
        let l = self.looker;
        l.rig.segment_rpm(&l.segments[l.grid.segment[piece]], gripped)
    }

    /// Walks from station `i` with a grip as far as states may hold, entering each station a stage may end at.
    fn walk(&self, i: usize, grip: usize, row: &mut Vec<Pair>) {
        let (l, grid) = (self.looker, self.looker.grid);
        let machine = &l.rig.job.machine;
        let gripped = l.grips(grip);
        let limit = match (&machine.counter_spindle, l.noses.get(grip)) {
            (Some(counter), Some(nose)) => nose + counter.farthest_mm - l.rig.gap_mm(),
            _ => machine.headstock.stroke_mm,
        };
        let last_share = l.last_grip(grip);
        let mut clock = Clock::new(l, i, gripped);
        let (mut sure, mut margin) = (true, f64::INFINITY);
        for k in i..grid.last() {
            crate::spread::breathe();
            if grid.fed_to(k + 1) > limit + SAME_MM || (k > i && grid.stations[k].wished) {
                return;
            }
            let sides = [l.outlook(grip, k, Side::Start), l.outlook(grip, k + 1, Side::End)];
            if sides.iter().any(|o| o.dead) {
                return;
            }
            sure &= sides.iter().all(|o| o.sure);
            margin = sides.iter().map(|o| o.margin).fold(margin, f64::min);
            let [drill_low, drill_high] = l.drill(grip, k + 1, None);
            if drill_low > PASSES_UP_TO {
                return;
            }
            sure &= drill_high <= PASSES_UP_TO;
            margin = margin.min(1.0 - drill_high);
            let cap = if sides.iter().all(|o| o.sure) {
                f64::INFINITY
            } else {
                sides[0].hopeful_rpm.min(sides[1].hopeful_rpm)
            };
            clock.advance(k, cap);
            if !grid.borders(k + 1) {
                continue;
            }
            let parted = k + 1 == grid.last();
            if parted && machine.counter_spindle.is_some() && !gripped {
                continue;
            }
            let [low, high] = if parted { [last_share; 2] } else { l.release(grip, k + 1, None) };
            if low > PASSES_UP_TO {
                continue;
            }
            let here_margin = margin.min(1.0 - high);
            if row.len() < k + 1 - i {
                row.resize(k + 1 - i, Pair::default());
            }
            let pair = &mut row[k - i];
            if sure && high <= PASSES_UP_TO {
                if pair.sure.is_none_or(|(_, m)| here_margin > m) {
                    pair.sure = Some((grip, here_margin));
                }
            } else {
                pair.doubtful.push((grip, clock.total_s()));
            }
        }
    }

    /// Time and margin of a run for the very place of the headstock; none when a state fails.
    pub fn exact(&self, i: usize, j: usize, grip: usize, regrip: usize) -> Option<(f64, f64)> {
        let l = self.looker;
        let gripped = l.grips(grip);
        let mut clock = Clock::new(l, i, gripped);
        let mut margin = f64::INFINITY;
        for k in i..j {
            let mut cap = f64::INFINITY;
            for (station, side) in [(k, Side::Start), (k + 1, Side::End)] {
                let seen = l.outlook(grip, station, side);
                if seen.sure {
                    margin = margin.min(seen.margin);
                    continue;
                }
                let (allowed, share) = l.exact(grip, station, side, regrip)?;
                cap = cap.min(allowed);
                margin = margin.min(1.0 - share);
            }
            {
                let share = l.drill(grip, k + 1, Some(regrip))[1];
                if share > PASSES_UP_TO {
                    return None;
                }
                margin = margin.min(1.0 - share);
            }
            clock.advance(k, cap);
        }
        Some((clock.total_s(), margin))
    }
}

/// Time between two neighbouring stations at full speed, s. Works that have no pieces count at their last station.
fn cutting_s(l: &Looker<'_>, k: usize, gripped: bool) -> f64 {
    let segment = &l.segments[l.grid.segment[k]];
    let ends = k + 1 >= l.grid.segment.len() || l.grid.segment[k + 1] != l.grid.segment[k];
    let length = l.grid.at(k + 1) - l.grid.at(k);
    if divisible(segment) || ends { l.rig.piece_time(segment, length, gripped, f64::INFINITY).cutting_s } else { 0.0 }
}

/// Adds up the time of a run, piece by piece, each at the lowest speed its states allow.
struct Clock<'a> {
    looker: &'a Looker<'a>,
    gripped: bool,
    segment: usize,
    from: usize,
    at: usize,
    cap_rpm: f64,
    done_s: f64,
}

impl<'a> Clock<'a> {
    fn new(looker: &'a Looker<'a>, station: usize, gripped: bool) -> Clock<'a> {
        let segment = looker.grid.segment[station];
        Clock { looker, gripped, segment, from: station, at: station, cap_rpm: f64::INFINITY, done_s: 0.0 }
    }

    fn advance(&mut self, k: usize, cap_rpm: f64) {
        if self.looker.grid.segment[k] != self.segment {
            self.done_s = self.total_s();
            (self.segment, self.from, self.cap_rpm) = (self.looker.grid.segment[k], k, f64::INFINITY);
        }
        self.cap_rpm = self.cap_rpm.min(cap_rpm);
        self.at = k + 1;
    }

    fn total_s(&self) -> f64 {
        let segment: &Segment = &self.looker.segments[self.segment];
        let length = self.looker.grid.at(self.at) - self.looker.grid.at(self.from);
        if length <= 0.0 || segment.work == Work::PartOff {
            return self.done_s;
        }
        self.done_s + self.looker.rig.piece_time(segment, length, self.gripped, self.cap_rpm).total_s()
    }
}
