//! What a grip can do up to one end of a piece: all pieces that end there, from one walk towards the front.
//!
//! A piece from farther in front has every state of a shorter one, and more. So the walk looks at each state once, keeps the largest share so
//! far, and ends where a state fails: no longer piece passes either. A critical speed is worked out only where its checks may use more
//! than the others do already, else one count tells; modes of the receptance likewise.

use super::Unguided;
use crate::planner::stations::divisible;
use crate::process::answers::Posed;
use crate::process::checks::{self, PASSES_UP_TO, View, chatter};
use crate::process::segments::Segment;
use crate::process::speed::{COUNT_GUARD, SLOWING_GUARD};
use crate::process::stops::SAME_MM;
use crate::process::{Answers, State, Work};

/// Time (s) and margin of the pieces that end at a station: from the station in front of it, from the one before that, and so on as far as
/// they pass.
pub(super) type Row = Vec<(f64, f64)>;

/// States of one segment in a row.
struct Part<'a> {
    segment: &'a Segment,
    /// Its last station.
    to: usize,
    wanted_rpm: f64,
    /// The lowest speed that its states allow.
    allowed_rpm: f64,
    /// At which the shares of `of_speed` are known.
    rpm: f64,
    /// Largest share of the checks that depend on the speed, among those that may matter.
    of_speed: f64,
    /// States whose checks of the speed may matter.
    open: Vec<(State, Answers)>,
    /// Largest and smallest flexibility at the tool, mm/N.
    flexibilities: [f64; 2],
}

/// A share that has grown; none where it does not pass.
fn grown(largest: f64, share: f64) -> Option<f64> {
    (share <= PASSES_UP_TO).then(|| largest.max(share))
}

impl Unguided<'_> {
    /// The pieces under a grip that end at a station and begin no farther in front than another.
    pub(super) fn row(&self, grip: usize, end: usize, down_to: usize) -> Row {
        let mut row = Row::new();
        // None: something fails.
        let _ = self.walk(grip, end, down_to, &mut row);
        row
    }

    fn walk(&self, grip: usize, end: usize, down_to: usize, row: &mut Row) -> Option<()> {
        let (rig, grid) = (self.ground.rig, self.grid);
        let gripped = grip < self.noses.len();
        let posed = |station: usize| -> Option<(State, Posed)> {
            crate::spread::breathe();
            let state = self.state(station, grip, end);
            if grid.is_shut(&state) {
                return None;
            }
            Some((state, rig.posed(&state).ok()?))
        };
        // Of what does not depend on the speed, and of segments that are done.
        let mut largest = 0.0;
        let mut part: Option<Part<'_>> = None;
        // Times of segments that are done, the last of them first.
        let mut times_s: Vec<f64> = Vec::new();
        let mut behind = posed(end)?;
        for i in (down_to..end).rev() {
            let segment = &self.ground.segments[grid.segment[i]];
            if part.as_ref().is_none_or(|_| grid.segment[i] != grid.segment[i + 1]) {
                if let Some(done) = part.take() {
                    times_s.push(self.time_s(&done, i + 1, gripped));
                    largest = grown(largest, done.of_speed)?;
                    largest = grown(largest, done.along(self)?)?;
                }
                let mut new = Part::new(segment, i + 1, rig.segment_rpm(segment, gripped));
                new.take(self, &behind, &mut largest)?;
                part = Some(new);
            }
            largest = self.drilled(grip, end, i + 1, &behind.0, largest)?;
            let part = part.as_mut()?;
            let here = posed(i)?;
            part.take(self, &here, &mut largest)?;
            behind = here;
            let share = grown(largest, part.of_speed)?.max(part.along(self)?);
            // In their order from the front.
            let time_s = times_s.iter().rev().fold(self.time_s(part, i, gripped), |sum, s| sum + s);
            row.push((time_s, 1.0 - share));
        }
        Some(())
    }

    /// Time of a part that begins at a station, s. Work that has no pieces counts where it ends.
    fn time_s(&self, part: &Part<'_>, from: usize, gripped: bool) -> f64 {
        let (segment, to_mm) = (part.segment, self.grid.at(part.to));
        let whole = divisible(segment) || to_mm >= segment.to_mm - SAME_MM;
        if !whole || segment.work == Work::PartOff {
            return 0.0;
        }
        let cap_rpm = if part.rpm < part.wanted_rpm { part.rpm } else { f64::INFINITY };
        self.ground.rig.piece_time(segment, to_mm - self.grid.at(from), gripped, cap_rpm).total_s()
    }

    /// The largest share with that of the tasks at a station, and at the part-off of those behind it, for which bar is fed on.
    fn drilled(&self, grip: usize, end: usize, station: usize, state: &State, mut largest: f64) -> Option<f64> {
        let here = self.grid.stations[station].tasks.iter().map(|t| (*t, *state));
        let behind = self.grid.beyond.iter().filter(|_| station == end && end == self.grid.last());
        for (task, state) in here.chain(behind.map(|(t, turned_mm)| (*t, self.fed_on(grip, end, *turned_mm)))) {
            let task = &self.ground.tasks[task];
            if state.turned_mm > self.grid.at(end) + SAME_MM {
                let found = checks::fed_on(self.ground.rig, self.ground.segments, &state).ok()?;
                largest = grown(largest, found.map_or(0.0, |f| f.utilisation))?;
            }
            if let Some(thrust) = task.thrust_n {
                let found = checks::drill::find(self.ground.rig, &state, task.at_mm, thrust).ok()?;
                largest = grown(largest, found.utilisation)?;
            }
        }
        Some(largest)
    }
}

impl<'a> Part<'a> {
    fn new(segment: &'a Segment, to: usize, wanted_rpm: f64) -> Part<'a> {
        Part {
            segment,
            to,
            wanted_rpm,
            allowed_rpm: f64::INFINITY,
            rpm: wanted_rpm,
            of_speed: 0.0,
            open: Vec::new(),
            flexibilities: [0.0, f64::INFINITY],
        }
    }

    /// Takes a state in; none where it fails.
    fn take(&mut self, all: &Unguided<'_>, (state, posed): &(State, Posed), largest: &mut f64) -> Option<()> {
        let (rig, segment) = (all.ground.rig, self.segment);
        let view = View { rig, state, answers: &posed.still, segment, rpm: 0.0 };
        let plain = |name: &str| !checks::depends_on_speed(name) && name != chatter::NAME;
        for found in checks::CHECKS.iter().filter(|c| plain(c.name)).filter_map(|c| (c.find)(&view)) {
            *largest = grown(*largest, found.utilisation)?;
        }
        let [most, least] = self.flexibilities;
        self.flexibilities = [most.max(posed.still.tool_mm_per_n), least.min(posed.still.tool_mm_per_n)];
        let safe = chatter::bound(&view);
        // Modes tell only of a share that is larger than those of the rest.
        let found =
            if safe.is_none_or(|f| f.passes()) { safe } else { chatter::exact_above(rig, state, segment, *largest) };
        *largest = grown(*largest, found.map_or(0.0, |f| f.utilisation))?;
        let needed = rig.critical_needed_rpm(state, &posed.still, self.wanted_rpm, [largest.min(1.0); 3]);
        if posed.swings_above(needed / (1.0 - SLOWING_GUARD) * (1.0 + COUNT_GUARD)) {
            return Some(());
        }
        let answers = posed.with_critical();
        self.allowed_rpm = self.allowed_rpm.min(rig.allowed_rpm(state, &answers).rpm);
        let floor = rig.job.cutting.speed_floor * self.wanted_rpm;
        let rpm = self.wanted_rpm.min(self.allowed_rpm.max(floor));
        self.open.push((*state, answers));
        // At another speed all of them use another share.
        let news = if rpm == self.rpm { self.open.len() - 1 } else { 0 };
        let known = if rpm == self.rpm { self.of_speed } else { 0.0 };
        self.rpm = rpm;
        let most = |(state, answers): &(State, Answers)| {
            let view = View { rig, state, answers, segment, rpm };
            checks::of_speed(&view).map(|f| f.utilisation).fold(0.0, f64::max)
        };
        self.of_speed = self.open[news..].iter().map(most).fold(known, f64::max);
        (self.of_speed <= PASSES_UP_TO).then_some(())
    }

    /// Share of `cut` along it; none where it does not pass.
    fn along(&self, all: &Unguided<'_>) -> Option<f64> {
        let found = checks::cut::along(all.ground.rig, self.segment, &self.flexibilities);
        let share = found.map_or(0.0, |f| f.utilisation);
        (share <= PASSES_UP_TO).then_some(share)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::input::read_job_text;
    use crate::planner::grips::{lands, noses};
    use crate::planner::lessons::Lessons;
    use crate::planner::network::Weights;
    use crate::planner::settle::Ground;
    use crate::planner::stations::{Grid, moments};
    use crate::process::Rig;

    const JOB: &str = "shaft:
  material: C45
  sections:
    - {length: 21, diameter: 7.5, interrupt: free}
    - {length: 5, thread: M6}
    - {length: 34, diameter: 8.6, interrupt: free, tolerance: h9}
    - {length: 2, diameter: 7, kind: groove}
    - {length: 40, taper: [8, 8.6], interrupt: free}
  features:
    - {cross_hole: 1.5, at: 47, thrust: 20}
stock: {diameter: 9, bar_length: 3000}
holding: no_bush
machine:
  no_bush: {max_bar: 12, collet_gap: 6}
  bush: {max_bar: 12, land: 12, gap: 1, stiffness: 60}
  headstock: {nearest: 32, stroke: 50, hold: 15, stiffness: 60, max_rpm: 12000, regrip_s: 4}
  counter_spindle:
    nearest: 3
    farthest: 90
    bore: 14
    bore_depth: 120
    stiffness: 30
    max_rpm: 12000
    hand_over_s: 3
    collets: [{name: A, range: [8.4, 8.7], hold: 6, passes: 8.8, clamp_force: 9000}]
  cross_tool_reach: 10
  part_off: {width: 2, time_s: 4}
cutting: {tools: single, vc: 150, feed: 0.08, ap_max: 2, ap_finish: 0.1, speed_floor: FLOOR}
limits: {stiffness_min: STIFF, whirl_ratio: WHIRL, whip: 0.05, sag: 0.005, release: 0.02, station_pitch: 6, damping_ratio: DAMPING}
";

    /// Time and margin of one piece, from all its states and all their checks.
    fn alone(all: &Unguided<'_>, i: usize, j: usize, grip: usize) -> Option<(f64, f64)> {
        all.stops(i, j, grip).ok()?;
        let (rig, grid, gripped) = (all.ground.rig, all.grid, grip < all.noses.len());
        let column = all.column(grip, j, i);
        let (mut time_s, mut share, mut k) = (0.0, 0.0f64, i);
        while k < j {
            let to = (k..j).take_while(|n| grid.segment[*n] == grid.segment[k]).last()? + 1;
            let segment = &all.ground.segments[grid.segment[k]];
            let seen: Vec<_> = column.iter().filter(|s| (k..=to).contains(&s.station)).collect();
            let wanted = rig.segment_rpm(segment, gripped);
            let allowed = seen.iter().map(|s| rig.allowed_rpm(&s.state, &s.answers).rpm).fold(f64::INFINITY, f64::min);
            let rpm = wanted.min(allowed.max(rig.job.cutting.speed_floor * wanted));
            for s in &seen {
                let view = View { rig, state: &s.state, answers: &s.answers, segment, rpm };
                share = checks::all(&view).map(|f| f.utilisation).fold(share, f64::max);
                for task in grid.stations[s.station].tasks.iter().filter(|_| s.station > i) {
                    let task = &all.ground.tasks[*task];
                    let found = checks::drill::find(rig, &s.state, task.at_mm, task.thrust_n?).ok()?;
                    share = share.max(found.utilisation);
                }
            }
            let flexibilities: Vec<f64> = seen.iter().map(|s| s.answers.tool_mm_per_n).collect();
            share = checks::cut::along(rig, segment, &flexibilities).map_or(share, |f| share.max(f.utilisation));
            if segment.work != Work::PartOff && (divisible(segment) || grid.at(to) >= segment.to_mm - SAME_MM) {
                let cap_rpm = if rpm < wanted { rpm } else { f64::INFINITY };
                time_s += rig.piece_time(segment, grid.at(to) - grid.at(k), gripped, cap_rpm).total_s();
            }
            k = to;
        }
        Some((time_s, 1.0 - share))
    }

    #[test]
    fn a_row_tells_of_each_piece_what_the_piece_alone_tells() {
        let (mut pass, mut fail, mut slow) = (0, 0, 0);
        for [stiff, whirl, damping, floor] in [
            ["0.05", "0.3", "0.03", "0.5"],
            ["0.5", "0.3", "0.03", "0.5"],
            ["0.05", "0.03", "0.03", "0.2"],
            ["0.05", "0.3", "0.003", "0.5"],
            ["0.02", "0.1", "0.001", "0.3"],
        ] {
            let text = JOB.replace("STIFF", stiff).replace("WHIRL", whirl);
            let text = text.replace("DAMPING", damping).replace("FLOOR", floor);
            let job = read_job_text("job.yaml", &text, ".".as_ref()).expect("a job");
            let rig = Rig::new(&job, job.machine.collet("A"));
            let (segments, tasks) = (rig.segments().expect("they can be turned"), rig.tasks());
            let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
            let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
            let grid = Grid::new(&rig, &segments, &moments, &Lessons::default());
            assert!(grid.stations.iter().any(|s| !s.tasks.is_empty()));
            let all = Unguided::new(&ground, &grid, noses(&rig, &grid, &lands(&rig)), Weights::default());
            for (grip, j) in (0..=all.noses.len()).flat_map(|g| (1..=grid.last()).map(move |j| (g, j))) {
                let row = all.row(grip, j, 0);
                for i in (0..j).filter(|i| all.ends(*i, grip).any(|end| end == j)) {
                    match (row.get(j - 1 - i), alone(&all, i, j, grip)) {
                        (Some(a), Some(b)) => {
                            let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * b.abs().max(1.0);
                            assert!(near(a.0, b.0) && near(a.1, b.1), "{grip}, {i} to {j}: {a:?}, alone {b:?}");
                            pass += 1;
                            slow += usize::from(a.1 < 1e-3);
                        }
                        (None, None) => fail += 1,
                        (row, alone) => panic!("{grip}, {i} to {j}: {row:?}, alone {alone:?}"),
                    }
                }
            }
        }
        assert!(pass > 200 && fail > 200 && slow > 20, "{pass} pass, {slow} of them slowed down, {fail} fail");
    }

    #[test]
    fn no_row_runs_through_a_state_that_is_shut() {
        let text = JOB.replace("STIFF", "0.02").replace("WHIRL", "0.3").replace("DAMPING", "0.03");
        let job = read_job_text("job.yaml", &text.replace("FLOOR", "0.5"), ".".as_ref()).expect("a job");
        let rig = Rig::new(&job, job.machine.collet("A"));
        let (segments, tasks) = (rig.segments().expect("they can be turned"), rig.tasks());
        let moments = moments(&rig, job.machine.cross_tool_reach_mm[0]);
        let ground = Ground { rig: &rig, segments: &segments, tasks: &tasks, moments: &moments, look_at_mm: &[] };
        let mut grid = Grid::new(&rig, &segments, &moments, &Lessons::default());
        let noses = noses(&rig, &grid, &lands(&rig));
        let all = Unguided::new(&ground, &grid, noses.clone(), Weights::default());
        let mut pairs = (0..=noses.len()).flat_map(|g| (3..=grid.last()).map(move |j| (g, j)));
        let (grip, j) = pairs
            .find(|(g, j)| all.ends(*j - 2, *g).any(|end| end == *j) && all.row(*g, *j, 0).len() >= 3)
            .expect("a piece over three stations");
        assert!(all.stops(j - 2, j, grip).is_ok());
        let state = all.state(j - 2, grip, j);
        grid.shut.push(state);
        let all = Unguided::new(&ground, &grid, noses, Weights::default());
        // From the end to the station behind the shut one.
        assert_eq!(all.row(grip, j, 0).len(), 1);
        assert!(all.stops(j - 2, j, grip).is_err());
    }
}
