//! Runs: travel from one station to another under one grip. The places of the headstock's re-grips are not chosen yet.
//!
//! A grip is sure where every state of the run passes at full speed wherever the headstock stands. It is doubtful where
//! it may hold at some place of the headstock, perhaps at a lower speed. For every pair of stations the planner knows
//! the time at full speed, and whether a grip is sure. Where none is, it knows a lower bound on the time of all
//! doubtful grips. Which grips these are, and how safe, is worked out only for the few pairs that can be part of a plan
//! near the best.

mod exact;
mod under_way;

use crate::planner::places::stations::divisible;
use crate::planner::states::outlook::{Looker, Side};
use crate::planner::states::piece::PieceOutlook;
use crate::process::checks::PASSES_UP_TO;
use crate::process::stops::SAME_MM;
use crate::spread::{lock, spread};
use exact::Rows;
use std::collections::HashMap;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::{Arc, Mutex};
use under_way::{Clock, Hoped};

/// Number of stations from one sample to the next. A grip that holds at both ends of so short a way usually holds
/// between them.
const SAMPLED_EVERY: usize = 16;

/// What is known of the travel between two stations.
#[derive(Debug, Clone, Copy)]
pub struct Pair {
    /// Whether some grip is sure.
    pub sure: bool,
    /// Where no grip is sure: a lower bound on the time over all grips and all places of the headstock, s. Infinite
    /// where no grip may hold.
    pub doubtful_s: f64,
}

impl Pair {
    const HOPELESS: Pair = Pair { sure: false, doubtful_s: f64::INFINITY };

    /// Whether surely no grip holds.
    pub fn is_hopeless(&self) -> bool {
        !self.sure && self.doubtful_s == f64::INFINITY
    }
}

/// The grips of the travel between two stations.
#[derive(Debug, Clone)]
pub enum Grips {
    /// The sure grip with the largest margin, and its margin.
    Sure(usize, f64),
    /// The grips that may hold, each with a lower bound on its time over all places of the headstock, s; the lowest
    /// first.
    Doubtful(Vec<(f64, usize)>),
}

/// How a grip holds between two stations.
enum Holds {
    /// At every place of the headstock; with an upper bound on its margin.
    Surely(f64),
    /// Perhaps at some places of the headstock; with a lower bound on the time, s.
    Perhaps(f64),
}

/// All runs of one collet.
pub struct Runs<'a> {
    /// The looker, which works out states.
    pub looker: &'a Looker<'a>,
    /// Sampled stations, ascending. Where a grip is sure at two neighbouring ones, a walk does not look between them.
    samples: Vec<usize>,
    /// The pairs of stations `i < j`: `gripped[i][j - i - 1]`, and `free[j - 1]` for the free front, which starts at
    /// station 0. A row ends where the bar comes no farther.
    free: Vec<Pair>,
    gripped: Vec<Vec<Pair>>,
    /// Cutting time from the start to each station at full speed, free and gripped, s.
    cutting: [Vec<f64>; 2],
    /// Sum of the overheads of all segments in front of each segment, s.
    overhead: Vec<f64>,
    /// The grips of each pair, as far as they were asked for.
    grips: Mutex<HashMap<(usize, usize), Arc<Grips>>>,
    /// Runs under way, by first station and grip.
    hoped: Mutex<HashMap<(usize, usize), Hoped>>,
    exact_rows: Mutex<Rows>,
    mistaken: AtomicBool,
}

impl<'a> Runs<'a> {
    /// Walks from every station with every grip, and looks at every station.
    pub fn new(looker: &'a Looker<'a>) -> Runs<'a> {
        Runs::walked(looker, (0..looker.grid.len()).collect())
    }

    /// Walks from every station with every grip, but looks at samples of the stations only. Where a grip is sure at two
    /// neighbouring samples, it is taken as sure between them. So a run may be taken as better than it is, never as
    /// worse. `grips` looks at every state of a pair, and [`Runs::mistaken`] says afterwards whether a pair was wrongly
    /// taken as sure.
    pub fn sampled(looker: &'a Looker<'a>) -> Runs<'a> {
        let grid = looker.grid;
        let mut samples = vec![0];
        for k in 1..grid.len() {
            // A change of segment changes the demands, and a task makes demands at its own station only: both are
            // samples. Where shoulders lie close together, one sample is enough for its neighbours.
            let last = samples.last().copied().unwrap_or(0);
            let apart = grid.at(k) - grid.at(last) >= looker.rig.job.planning.station_pitch_mm;
            let changes = k < grid.last() && grid.segment[k - 1] != grid.segment[k] && apart;
            let far = k - last >= SAMPLED_EVERY;
            if changes || far || k == grid.last() || !grid.stations[k].tasks.is_empty() {
                samples.push(k);
            }
        }
        Runs::walked(looker, samples)
    }

    /// Whether a pair was taken as sure and turned out not to be.
    pub fn mistaken(&self) -> bool {
        self.mistaken.load(Ordering::Relaxed)
    }

    fn walked(looker: &'a Looker<'a>, samples: Vec<usize>) -> Runs<'a> {
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
        let gripped = vec![Vec::new(); grid.len()];
        let mut runs = Runs {
            looker,
            samples,
            free: Vec::new(),
            gripped,
            cutting,
            overhead,
            grips: Mutex::default(),
            hoped: Mutex::default(),
            exact_rows: Mutex::default(),
            mistaken: AtomicBool::new(false),
        };
        // Only stations that the bar may reach are looked at.
        let mut reached = vec![false; grid.len()];
        reached[grid.last()] = true;
        let mut wave = vec![0];
        while !wave.is_empty() {
            let rows = spread(&wave, |i, _| runs.row(*i));
            let mut next = Vec::new();
            for (i, row) in wave.into_iter().zip(rows) {
                for j in row.iter().enumerate().filter(|(_, pair)| !pair.is_hopeless()).map(|(n, _)| i + 1 + n) {
                    if !std::mem::replace(&mut reached[j], true) {
                        next.push(j);
                    }
                }
                *(if i == 0 { &mut runs.free } else { &mut runs.gripped[i] }) = row;
            }
            next.sort_unstable();
            wave = next;
        }
        runs
    }

    /// The pairs from a station.
    fn row(&self, i: usize) -> Vec<Pair> {
        let mut row = Vec::new();
        if i == 0 {
            self.walk(0, self.looker.free(), &mut row);
        }
        // The nose nearest to the bush comes first. It usually reaches farthest and leaves little to find for the
        // others.
        for grip in self.looker.noses_at(i).rev().filter(|_| i > 0) {
            self.walk(i, grip, &mut row);
        }
        row
    }

    /// The stations at which a run from `i` may end, with their pairs.
    pub fn from(&self, i: usize) -> impl Iterator<Item = (usize, &Pair)> {
        let row = if i == 0 { &self.free } else { &self.gripped[i] };
        row.iter().enumerate().map(move |(n, p)| (i + 1 + n, p)).filter(|(_, p)| !p.is_hopeless())
    }

    /// The pair of two stations. None: no run reaches so far.
    pub fn pair(&self, i: usize, j: usize) -> Option<&Pair> {
        if i == 0 { &self.free } else { &self.gripped[i] }.get(j.checked_sub(i + 1)?)
    }

    /// Time from one station to another at full speed without a stop between, s.
    pub fn full_s(&self, i: usize, j: usize) -> f64 {
        let cutting = &self.cutting[usize::from(i > 0)];
        let segment = &self.looker.grid.segment;
        cutting[j] - cutting[i] + self.overhead[segment[j - 1] + 1] - self.overhead[segment[i]]
    }

    /// The next sample behind station `k`, where other stations lie between, and what is sure at both: that the grip
    /// holds in the cut, and that it may let go.
    fn surely_to(&self, grip: usize, k: usize) -> Option<(usize, [bool; 2])> {
        let l = self.looker;
        let to = *self.samples.get(self.samples.partition_point(|s| *s <= k))?;
        if to <= k + 1 || l.grid.carried_to(to) > self.looker.limit_mm(grip) + SAME_MM {
            return None;
        }
        let cut = l.outlook(grip, to, Side::End).sure && l.drill(grip, to, None)[1] <= PASSES_UP_TO;
        let cut = cut && l.outlook(grip, k, Side::Start).sure;
        let lets_go = |station| l.release(grip, station, None)[1] <= PASSES_UP_TO;
        Some((to, [cut, lets_go(to) && lets_go(k)]))
    }

    /// Walks from station `i` with a grip as far as states may hold, and enters each station at which a stage may end.
    /// Pairs that already have a sure grip are not asked again.
    fn walk(&self, i: usize, grip: usize, row: &mut Vec<Pair>) {
        let (l, grid) = (self.looker, self.looker.grid);
        let limit = self.looker.limit_mm(grip) + SAME_MM;
        // No stage goes on beyond a wished hand-over.
        let goes_on = |k: &usize| grid.carried_to(k + 1) <= limit && (*k == i || !grid.stations[*k].wished);
        let within = (i..grid.last()).take_while(goes_on).count();
        let open = |row: &Vec<Pair>, k: usize| row.get(k - i).is_none_or(|p| !p.sure) && grid.borders(k + 1);
        let Some(last) = (i..i + within).rev().find(|k| open(row, *k)) else { return };
        let Some(first) = (i..=last).find(|k| open(row, *k)) else { return };
        // A walk that does not pass the first station still open finds nothing new.
        if self.looker.piece(grip, first).dead {
            return;
        }
        let gripped = l.grips(grip);
        let mut clock: Option<Clock<'_>> = None;
        let mut sure = true;
        let (mut sampled_to, mut surely) = (i, [false; 2]);
        for k in i..=last {
            crate::spread::checkpoint();
            if k >= sampled_to {
                (sampled_to, surely) = self.surely_to(grip, k).unwrap_or((k + 1, [false; 2]));
            }
            let piece = if surely[0] { PieceOutlook::SURE } else { self.looker.piece(grip, k) };
            if piece.dead {
                return;
            }
            sure &= piece.sure;
            if let Some(clock) = &mut clock {
                clock.advance(k, piece.cap_rpm);
            }
            if !open(row, k) {
                continue;
            }
            // A stage may end at every open station where letting go, or the last grip, may hold.
            let ending = if surely[1] && k + 1 < sampled_to { Some([0.0; 2]) } else { self.looker.ending(grip, k + 1) };
            let Some([low, high]) = ending else { continue };
            if low > PASSES_UP_TO {
                continue;
            }
            if row.len() < k + 1 - i {
                row.resize(k + 1 - i, Pair::HOPELESS);
            }
            let pair = &mut row[k - i];
            if sure && high <= PASSES_UP_TO {
                pair.sure = true;
            } else {
                let clock = clock.get_or_insert_with(|| {
                    let mut clock = Clock::new(l, i, gripped);
                    (i..=k).for_each(|k| clock.advance(k, self.looker.piece(grip, k).cap_rpm));
                    clock
                });
                pair.doubtful_s = pair.doubtful_s.min(clock.total_s());
            }
        }
    }

    /// The grips of a pair: the sure grip with the largest margin (of equals the first), or else the grips that may
    /// hold.
    pub fn grips(&self, i: usize, j: usize) -> Arc<Grips> {
        if let Some(known) = lock(&self.grips).get(&(i, j)) {
            return known.clone();
        }
        let (l, grid) = (self.looker, self.looker.grid);
        let all: Vec<usize> = if i == 0 { vec![l.free()] } else { self.looker.noses_at(i).collect() };
        // The far end of the run decides first. Most grips that fail do so there, and its margin is an upper bound for
        // the run.
        let (mut hopeful, mut rest) = (Vec::new(), Vec::new());
        for grip in all.into_iter().filter(|g| grid.carried_to(j) <= self.looker.limit_mm(*g) + SAME_MM) {
            let Some([low, high]) = self.looker.ending(grip, j) else { continue };
            let piece = self.looker.piece(grip, j - 1);
            match piece.sure && high <= PASSES_UP_TO {
                _ if piece.dead || low > PASSES_UP_TO => {}
                true => hopeful.push((grip, piece.most_margin.min(1.0 - high))),
                false => rest.push(grip),
            }
        }
        // The largest upper bound on the margin comes first, so that few other grips need a look.
        hopeful.sort_by(|a, b| b.1.total_cmp(&a.1));
        let mut best: Option<(usize, f64)> = None;
        let mut doubtful = Vec::new();
        for (grip, most) in hopeful {
            let loses = |margin: f64| best.is_some_and(|(g, m)| margin < m || (margin == m && grip > g));
            if loses(most) {
                continue;
            }
            let mut margin = match self.holds(i, j, grip) {
                Some(Holds::Surely(most)) => most,
                Some(Holds::Perhaps(least_s)) => {
                    doubtful.push((least_s, grip));
                    continue;
                }
                None => continue,
            };
            for k in (i..j).rev() {
                if loses(margin) {
                    break;
                }
                let sides = [l.outlook(grip, k, Side::Start), l.outlook(grip, k + 1, Side::End)];
                margin = sides.iter().map(|o| o.margin).fold(margin, f64::min);
            }
            if !loses(margin) {
                best = Some((grip, margin));
            }
        }
        if best.is_none() {
            // Each grip has its own states, so no core waits for another.
            let holds = spread(&rest, |grip, _| self.holds(i, j, *grip));
            doubtful.extend(rest.iter().zip(holds).filter_map(|(grip, holds)| match holds? {
                Holds::Surely(_) => None,
                Holds::Perhaps(least_s) => Some((least_s, *grip)),
            }));
            doubtful.sort_by(|a, b| a.partial_cmp(b).unwrap_or(std::cmp::Ordering::Equal));
            if self.pair(i, j).is_some_and(|p| p.sure) {
                self.mistaken.store(true, Ordering::Relaxed);
            }
        }
        let found = Arc::new(best.map_or(Grips::Doubtful(doubtful), |(grip, margin)| Grips::Sure(grip, margin)));
        lock(&self.grips).insert((i, j), found.clone());
        found
    }

    /// Whether a grip holds from one station to another. None: it does not.
    fn holds(&self, i: usize, j: usize, grip: usize) -> Option<Holds> {
        let (hoped, time_s) = self.hoped(i, j, grip)?;
        let [_, high] = self.looker.ending(grip, j).filter(|[low, _]| *low <= PASSES_UP_TO)?;
        let sure = hoped.sure && high <= PASSES_UP_TO;
        Some(if sure { Holds::Surely(hoped.most.min(1.0 - high)) } else { Holds::Perhaps(time_s) })
    }
}

/// Cutting time between two neighbouring stations at full speed, s. Work that cannot be divided counts at its last
/// station.
fn cutting_s(l: &Looker<'_>, k: usize, gripped: bool) -> f64 {
    let segment = &l.segments[l.grid.segment[k]];
    let ends = k + 1 >= l.grid.segment.len() || l.grid.segment[k + 1] != l.grid.segment[k];
    let stretch = [l.grid.at(k), l.grid.at(k + 1)];
    if divisible(segment) || ends {
        l.rig.stretch_time(segment, stretch, gripped, f64::INFINITY).cutting_s
    } else {
        0.0
    }
}
