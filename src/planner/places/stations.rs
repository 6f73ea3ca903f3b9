//! Stations: the turned lengths at which the planner looks, and at which it may stop.
//!
//! They are all shoulders, segment borders, ends of grip lands, turned lengths of tasks and places asked for, and
//! between them an even grid no coarser than the station pitch.

use crate::planner::places::lessons::Lessons;
use crate::process::segments::Segment;
use crate::process::stops::{SAME_MM, Stop};
use crate::process::{Counter, Rig, State, Work};

/// One station.
#[derive(Debug, Clone)]
pub struct Station {
    /// Turned length, mm.
    pub turned_mm: f64,
    /// What a stop there means.
    pub stop: Stop,
    /// What a stop there costs besides its time, s.
    pub penalty_s: f64,
    /// Whether a hand-over is wished here; then no stage goes on beyond.
    pub wished: bool,
    /// Tasks (indices) done at this turned length.
    pub tasks: Vec<usize>,
}

/// All stations of a job, ascending, from 0 to the part-off.
#[derive(Debug, Clone)]
pub struct Grid {
    /// The stations.
    pub stations: Vec<Station>,
    /// The segment in cut between station `k` and `k + 1`.
    pub segment: Vec<usize>,
    /// Tasks behind the part-off, with the turned length of each: bar is fed on for them, uncut, before the part comes
    /// off.
    pub beyond: Vec<(usize, f64)>,
    /// States that no stage may run through (see `Lessons`).
    pub shut: Vec<State>,
    /// Turned length to which headstock and counter-spindle must carry the bar for a stage that ends at a station, mm.
    carried: Vec<f64>,
}

impl Grid {
    /// Builds the grid. `moments` are turned lengths of tasks (index, length).
    pub fn new(rig: &Rig<'_>, segments: &[Segment], moments: &[(usize, f64)], lessons: &Lessons) -> Grid {
        let end = rig.job.parted_at_mm();
        let mut marks: Vec<f64> = vec![0.0, end];
        marks.extend(segments.iter().map(|s| s.to_mm));
        marks.extend(rig.no_grip_stretches().into_iter().flat_map(|(a, b)| [a, b]));
        marks.extend(moments.iter().map(|(_, t)| *t));
        marks.extend_from_slice(&lessons.look_at_mm);
        marks.extend(rig.job.wishes.hand_overs.iter().map(|w| w.at_mm));
        marks.retain(|t| *t >= 0.0 && *t <= end);
        marks.sort_by(f64::total_cmp);
        marks.dedup_by(|b, a| *b - *a < SAME_MM);
        let pitch = rig.job.planning.station_pitch_mm;
        let mut lengths = vec![0.0];
        for pair in marks.windows(2) {
            let pieces = ((pair[1] - pair[0]) / pitch - 1e-9).ceil().max(1.0);
            lengths.extend((1..pieces as usize).map(|i| pair[0] + (pair[1] - pair[0]) * i as f64 / pieces));
            lengths.push(pair[1]);
        }
        let stations: Vec<Station> = lengths
            .iter()
            .map(|t| {
                let stop = rig.stop_at(segments, *t);
                let tasks = moments.iter().filter(|(_, m)| (m - t).abs() < SAME_MM).map(|(i, _)| *i).collect();
                let wished = rig.job.wishes.hand_over_at(*t).is_some();
                Station { turned_mm: *t, stop, penalty_s: rig.stop_penalty_s(stop), wished, tasks }
            })
            .collect();
        let segment =
            lengths.windows(2).map(|w| crate::process::segments::segment_at(segments, 0.5 * (w[0] + w[1]))).collect();
        let beyond = moments.iter().copied().filter(|(_, t)| *t > end + SAME_MM).collect();
        let mut grid = Grid { stations, segment, beyond, shut: lessons.shut.clone(), carried: Vec::new() };
        grid.carried = (0..grid.len()).map(|k| grid.fed_to(k).max(rig.runs_out_to_mm(segments, grid.at(k)))).collect();
        grid
    }

    /// Whether a state is shut.
    pub fn is_shut(&self, state: &State) -> bool {
        self.shut.iter().any(|known| known.is(state))
    }

    /// Whether some state of a station under a grip is shut, at any place of the headstock.
    pub fn has_shut(&self, station: usize, nose_mm: Option<f64>) -> bool {
        let counter = Counter::of(nose_mm);
        self.shut.iter().any(|known| State { turned_mm: self.at(station), counter, guide: known.guide }.is(known))
    }

    /// Number of stations.
    pub fn len(&self) -> usize {
        self.stations.len()
    }

    /// Index of the last station, the part-off.
    pub fn last(&self) -> usize {
        self.stations.len() - 1
    }

    /// Turned length of a station, mm.
    pub fn at(&self, station: usize) -> f64 {
        self.stations[station].turned_mm
    }

    /// Turned length to which the bar is fed when a stage ends at a station, mm; at the last station as far as the
    /// tasks behind the part-off need it.
    pub fn fed_to(&self, station: usize) -> f64 {
        let on = if station == self.last() { self.beyond.iter().map(|b| b.1).fold(0.0, f64::max) } else { 0.0 };
        self.at(station).max(on)
    }

    /// Turned length to which headstock and counter-spindle must carry the bar for a stage that ends at a station, mm: for tasks behind the
    /// part-off, and with a tandem until the finishing tool has come to the end of each segment.
    pub fn carried_to(&self, station: usize) -> f64 {
        self.carried[station]
    }

    /// Number of stations, from the first on, to which the bar can be carried.
    pub fn carried_within(&self, reach_mm: f64) -> usize {
        self.carried.partition_point(|to| *to <= reach_mm)
    }

    /// Tasks done at a station, each with its turned length; at the last station also those behind the part-off.
    pub fn due(&self, station: usize) -> impl Iterator<Item = (usize, f64)> {
        let here = self.stations[station].tasks.iter().map(move |i| (*i, self.at(station)));
        here.chain(self.beyond.iter().copied().filter(move |_| station == self.last()))
    }

    /// Whether a stage may begin or end at a station: where the feed may stop, and at the first and the last station.
    pub fn borders(&self, station: usize) -> bool {
        station == 0 || station == self.last() || self.stations[station].stop.allowed()
    }
}

/// Index and turned length of each task, for one reach of the cross-driven tools.
pub fn moments(rig: &Rig<'_>, reach_mm: f64) -> Vec<(usize, f64)> {
    rig.tasks().iter().enumerate().map(|(i, task)| (i, task.moment_mm(reach_mm))).collect()
}

/// Whether a segment is turned along its length, so that it may be cut in pieces.
pub fn divisible(segment: &Segment) -> bool {
    matches!(segment.work, Work::Turn | Work::AsDrawn)
}
