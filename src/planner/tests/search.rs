//! The exhaustive search: every sequence of stops, every grip, every pattern of re-grips the model allows, by plain
//! recursion. It takes the list of stations and of noses, and what `process` says of a state; everything else is its own.

use crate::job::plan::Times;
use crate::planner::places::stations::Grid;
use crate::process::checks::{self, View};
use crate::process::features::Task;
use crate::process::stops::Stop;
use crate::process::{Answers, Counter, Guide, Rig, Segment, State, Work};
use std::collections::HashMap;

/// Places closer than this are one, mm.
const SAME_MM: f64 = 1e-6;
/// Shares of a limit pass up to this, as in `process`.
const PASSES: f64 = 1.0 + 1e-6;

/// How the cheapest plan is made.
#[derive(Debug, Clone, Default)]
pub struct Best {
    /// Hand-overs.
    pub hand_overs: usize,
    /// Largest share of a limit at any state.
    pub share: f64,
    /// Seconds that depend on the plan: runs, hand-overs, re-grips, lines left at stops.
    pub cost_s: f64,
    /// Stages.
    pub stages: usize,
    /// Re-grips inside stages.
    pub inner: usize,
    /// Re-grips that share a stop with a hand-over, at the start of a stage.
    pub shared: usize,
    /// Re-grips at the end of a stage, without which the front could not be let go.
    pub at_end: usize,
    /// Stops that leave a line on an `avoid` surface.
    pub lines: usize,
    /// Whether a piece runs slower than the cut asks for.
    pub slowed: bool,
}

/// Which re-grips inside a stage are tried.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Inner {
    /// As late as stroke and interrupts allow (the model's rule): no later place within the stroke leaves a line that
    /// costs as little.
    Late,
    /// Anywhere within the stroke.
    Anywhere,
}

/// What is made least.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Least {
    /// Seconds.
    Time,
    /// Hand-overs, and of those with equally many the seconds.
    HandOvers,
    /// The largest share of any limit.
    Share,
}

/// Highest speed a state allows, infinite where what the cut asks for passes; and the largest share of a limit there.
type Cap = (f64, f64);

/// Seconds of a cut, whether it is slowed, and the largest share of a limit.
type Run = (f64, bool, f64);

/// The search over one collet.
pub struct Search<'a> {
    pub rig: &'a Rig<'a>,
    pub segments: &'a [Segment],
    pub grid: &'a Grid,
    pub tasks: &'a [Task],
    pub noses: &'a [f64],
    pub inner: Inner,
    pub least: Least,
    /// States looked at.
    pub states: usize,
    /// Names of the checks that refused a state.
    pub refused: HashMap<&'static str, usize>,
    answers: HashMap<(usize, usize, usize), Option<(State, Answers)>>,
    caps: HashMap<(usize, usize, usize, usize), Option<Cap>>,
    releases: HashMap<(usize, usize, usize), f64>,
    known: HashMap<(usize, usize), Option<Best>>,
}

impl<'a> Search<'a> {
    pub fn new(
        rig: &'a Rig<'a>,
        segments: &'a [Segment],
        grid: &'a Grid,
        tasks: &'a [Task],
        noses: &'a [f64],
        inner: Inner,
        least: Least,
    ) -> Search<'a> {
        Search {
            rig,
            segments,
            grid,
            tasks,
            noses,
            inner,
            least,
            states: 0,
            refused: HashMap::new(),
            answers: HashMap::new(),
            caps: HashMap::new(),
            releases: HashMap::new(),
            known: HashMap::new(),
        }
    }

    fn t(&self, station: usize) -> f64 {
        self.grid.stations[station].turned_mm
    }

    fn last(&self) -> usize {
        self.grid.stations.len() - 1
    }

    fn may_stop(&self, station: usize) -> bool {
        station == 0 || station == self.last() || self.rig.stop_at(self.segments, self.t(station)) != Stop::Forbidden
    }

    fn line_s(&self, station: usize) -> f64 {
        self.rig.stop_penalty_s(self.rig.stop_at(self.segments, self.t(station)))
    }

    fn nose(&self, grip: usize) -> Option<f64> {
        self.noses.get(grip).copied()
    }

    fn headstock_mm(&self, station: usize, regrip: usize) -> f64 {
        let head = &self.rig.job.machine.headstock;
        head.nearest_mm + head.stroke_mm - (self.t(station) - self.t(regrip))
    }

    fn state(&self, grip: usize, station: usize, regrip: usize) -> State {
        State {
            turned_mm: self.t(station),
            counter: self.nose(grip).map_or(Counter::Away, |nose_mm| Counter::Holds { nose_mm }),
            guide: Guide::Bush { headstock_mm: self.headstock_mm(station, regrip) },
        }
    }

    /// What a state allows the segment in cut; none where even the slowest the job allows fails.
    fn cap_rpm(&mut self, grip: usize, station: usize, regrip: usize, segment: usize) -> Option<Cap> {
        if let Some(known) = self.caps.get(&(grip, station, regrip, segment)) {
            return *known;
        }
        let state = self.state(grip, station, regrip);
        let (rig, states) = (self.rig, &mut self.states);
        let seen = self.answers.entry((grip, station, regrip)).or_insert_with(|| {
            *states += 1;
            rig.answers(&state).ok().map(|a| (state, a))
        });
        let cut = &self.segments[segment];
        let wanted = rig.segment_rpm(cut, grip < self.noses.len());
        let mut refused = None;
        let cap = seen.as_ref().and_then(|(state, answers)| {
            let mut passes = |rpm: f64| {
                let view = View { rig, state, answers, segment: cut, rpm };
                refused = checks::all(&view).find(|f| f.utilisation > PASSES).map(|f| f.check);
                let share = checks::all(&view).map(|f| f.utilisation).fold(0.0, f64::max);
                refused.is_none().then_some(share)
            };
            if let Some(share) = passes(wanted) {
                return Some((f64::INFINITY, share));
            }
            let slow = rig.allowed_rpm(state, answers).rpm.max(rig.job.cutting.speed_floor * wanted).min(wanted);
            passes(slow).map(|share| (slow, share))
        });
        if let (None, Some(check)) = (cap, refused) {
            *self.refused.entry(check).or_default() += 1;
        }
        self.caps.insert((grip, station, regrip, segment), cap);
        cap
    }

    /// Seconds of the cut from one station to another with the headstock as it stands, and whether it must slow down.
    fn run(&mut self, grip: usize, from: usize, to: usize, regrip: usize) -> Option<Run> {
        let (mut sum, mut slowed, mut most) = (0.0, false, 0.0f64);
        let mut k = from;
        while k < to {
            let segment = self.grid.segment[k];
            let mut end = k + 1;
            while end < to && self.grid.segment[end] == segment {
                end += 1;
            }
            let mut cap = f64::INFINITY;
            for station in k..=end {
                let (rpm, share) = self.cap_rpm(grip, station, regrip, segment)?;
                (cap, most) = (cap.min(rpm), most.max(share));
            }
            for station in k + 1..=end {
                let share = self.drills(grip, station, regrip);
                if share > PASSES {
                    *self.refused.entry("drill").or_default() += 1;
                    return None;
                }
                most = most.max(share);
            }
            slowed |= cap.is_finite();
            let cut = &self.segments[segment];
            if cut.work != Work::PartOff {
                let length = self.t(end) - self.t(k);
                sum += self.rig.piece_time(cut, length, grip < self.noses.len(), cap).total_s();
            }
            k = end;
        }
        Some((sum, slowed, most))
    }

    /// Tasks whose moment lies behind the part-off: the bar is fed on for them before the part comes off.
    fn beyond(&self, station: usize) -> Vec<(usize, f64)> {
        if station == self.last() { self.grid.beyond.clone() } else { Vec::new() }
    }

    /// How far the bar is fed in a stage that ends at a station.
    fn fed(&self, station: usize) -> f64 {
        self.beyond(station).iter().map(|b| b.1).fold(self.t(station), f64::max)
    }

    /// Share of the limit that the tasks due at a station use; infinite where nothing holds.
    fn drills(&self, grip: usize, station: usize, regrip: usize) -> f64 {
        let share = |state: &State, i: usize| {
            let task = &self.tasks[i];
            task.thrust_n.map_or(0.0, |thrust| {
                checks::drill::find(self.rig, state, task.at_mm, thrust).map_or(f64::INFINITY, |f| f.utilisation)
            })
        };
        let fed_on = self.beyond(station).into_iter().map(|(i, t)| {
            let guide = self.rig.guide(t, self.t(regrip), t);
            let state = State { turned_mm: t, guide, ..self.state(grip, station, regrip) };
            let fed = checks::fed_on(self.rig, self.segments, &state);
            fed.map_or(f64::INFINITY, |f| f.map_or(0.0, |f| f.utilisation)).max(share(&state, i))
        });
        let here = self.state(grip, station, regrip);
        fed_on.chain(self.grid.stations[station].tasks.iter().map(|i| share(&here, *i))).fold(0.0, f64::max)
    }

    /// Share of the limit used when the collet lets go, or takes hold of a free front; infinite where nothing holds then.
    fn lets_go(&mut self, grip: usize, station: usize, regrip: usize) -> f64 {
        let state = self.state(grip, station, regrip);
        let rig = self.rig;
        if grip >= self.noses.len() {
            return checks::pick_up::find(rig, &state).map_or(f64::INFINITY, |f| f.utilisation);
        }
        *self
            .releases
            .entry((grip, station, regrip))
            .or_insert_with(|| checks::release::find(rig, &state).map_or(f64::INFINITY, |f| f.utilisation))
    }

    /// Share of the limits that the last grip uses; infinite where it does not hold.
    fn holds_at_part_off(&self, grip: usize) -> f64 {
        let Some(nose) = self.nose(grip) else {
            let falls = self.rig.collet.is_none() && super::may_fall(self.rig.job);
            return if falls { 0.0 } else { f64::INFINITY };
        };
        let torque = checks::torque::find(self.rig, nose, self.rig.held_mm(nose)).map_or(0.0, |f| f.utilisation);
        let back = checks::back::find(self.rig, nose);
        torque.max(back.map_or(f64::INFINITY, |f| f.map_or(0.0, |f| f.utilisation)))
    }

    /// Grips that a stage from one station to another may have: turned already, and within the counter-spindle's travel
    /// at both ends. The first stage is free, and only the first.
    fn grips(&self, i: usize, j: usize) -> Vec<usize> {
        if i == 0 {
            return vec![self.noses.len()];
        }
        let Some(counter) = &self.rig.job.machine.counter_spindle else { return Vec::new() };
        let gap = self.rig.gap_mm();
        let within = |t: f64, g: f64| {
            let x = t + gap - g;
            x >= counter.nearest_mm - SAME_MM && x <= counter.farthest_mm + SAME_MM
        };
        let fits = |n: &usize| {
            let g = self.noses[*n];
            g <= self.t(i) + SAME_MM && within(self.t(i), g) && within(self.fed(j), g)
        };
        (0..self.noses.len()).filter(fits).collect()
    }

    /// Rows of inner re-grips between two stations that keep every feed within the stroke.
    fn inner_rows(&self, i: usize, j: usize, regrip: usize) -> Vec<Vec<usize>> {
        let reach = self.t(regrip) + self.rig.job.machine.headstock.stroke_mm + SAME_MM;
        if self.fed(j) <= reach {
            return vec![Vec::new()];
        }
        let within: Vec<usize> = (i.max(regrip) + 1..j).filter(|m| self.may_stop(*m) && self.t(*m) <= reach).collect();
        let beaten = |m: usize| within.iter().any(|later| *later > m && self.line_s(*later) <= self.line_s(m));
        let mut rows = Vec::new();
        for m in within.iter().copied().filter(|m| self.inner == Inner::Anywhere || !beaten(*m)) {
            for mut rest in self.inner_rows(i, j, m) {
                rest.insert(0, m);
                rows.push(rest);
            }
        }
        rows
    }

    /// The cheapest plan from a station on, when the headstock re-gripped last at another; none when there is none.
    pub fn best(&mut self, i: usize, regrip: usize) -> Option<Best> {
        if i == self.last() {
            return Some(Best::default());
        }
        if let Some(known) = self.known.get(&(i, regrip)) {
            return known.clone();
        }
        let machine = &self.rig.job.machine;
        let shared_s = (machine.headstock.regrip_s - machine.shared_stop_saving_s).max(0.0);
        let (regrip_s, hand_over_s) =
            (machine.headstock.regrip_s, machine.counter_spindle.as_ref().map_or(0.0, |c| c.hand_over_s));
        let mut best: Option<Best> = None;
        for j in i + 1..=self.last() {
            if !self.may_stop(j) {
                continue;
            }
            let starts: &[bool] = if i == 0 || regrip == i { &[false] } else { &[false, true] };
            for at_start in starts {
                let first = if *at_start { i } else { regrip };
                let rows = self.inner_rows(i, j, first);
                // With nothing holding the front the headstock must not open.
                for row in rows.into_iter().filter(|row| i > 0 || row.is_empty()) {
                    for grip in self.grips(i, j) {
                        let Some((run_s, slowed, share)) = self.stage(grip, i, j, first, &row) else { continue };
                        let lines = row.iter().chain([&j]).filter(|m| **m < self.last());
                        let lines: Vec<f64> = lines.map(|m| self.line_s(*m)).collect();
                        let stage_s = run_s
                            + if i > 0 { hand_over_s } else { 0.0 }
                            + if *at_start { shared_s } else { 0.0 }
                            + row.len() as f64 * regrip_s
                            + lines.iter().sum::<f64>();
                        let at = row.last().copied().unwrap_or(first);
                        for (end, extra_s, at_end) in self.ends(grip, i, j, at, shared_s) {
                            let Some(rest) = self.best(j, end) else { continue };
                            let cost_s = stage_s + extra_s + rest.cost_s;
                            let share = share.max(at_end).max(rest.share);
                            let hand_overs = rest.hand_overs + usize::from(i > 0);
                            let no_better = |b: &Best| match self.least {
                                Least::Time => b.cost_s <= cost_s,
                                Least::HandOvers => (b.hand_overs, b.cost_s) <= (hand_overs, cost_s),
                                Least::Share => b.share <= share,
                            };
                            if best.as_ref().is_some_and(no_better) {
                                continue;
                            }
                            best = Some(Best {
                                hand_overs,
                                share,
                                cost_s,
                                stages: rest.stages + 1,
                                inner: rest.inner + row.len(),
                                shared: rest.shared + usize::from(*at_start),
                                at_end: rest.at_end + usize::from(end == j && at != j),
                                lines: rest.lines + lines.iter().filter(|s| **s > 0.0).count(),
                                slowed: rest.slowed || slowed,
                            });
                        }
                    }
                }
            }
        }
        self.known.insert((i, regrip), best.clone());
        best
    }

    fn stage(&mut self, grip: usize, i: usize, j: usize, first: usize, row: &[usize]) -> Option<Run> {
        let (mut from, mut regrip) = (i, first);
        let (mut sum, mut slow, mut most) = (0.0, false, 0.0f64);
        for stop in row.iter().copied().chain([j]) {
            let (run_s, slowed, share) = self.run(grip, from, stop, regrip)?;
            sum += run_s;
            slow |= slowed;
            most = most.max(share);
            (from, regrip) = (stop, stop);
        }
        Some((sum, slow, most))
    }

    /// Ways to end a stage: the last re-grip that the next one begins with, what it costs here, and its share of a limit.
    fn ends(&mut self, grip: usize, i: usize, j: usize, at: usize, shared_s: f64) -> Vec<(usize, f64, f64)> {
        if j == self.last() {
            let share = self.holds_at_part_off(grip);
            return if share <= PASSES { vec![(0, 0.0, share)] } else { Vec::new() };
        }
        let mut ends = Vec::new();
        let share = self.lets_go(grip, j, at);
        if share <= PASSES {
            ends.push((at, 0.0, share));
        } else if i > 0 {
            let share = self.lets_go(grip, j, j);
            if share <= PASSES {
                ends.push((j, shared_s, share));
            }
        }
        ends
    }
}

/// Seconds of a plan that do not depend on its stages.
pub fn fixed_s(times: &Times, border_lines_s: f64) -> f64 {
    times.features + times.part_off + times.back_work + border_lines_s
}
