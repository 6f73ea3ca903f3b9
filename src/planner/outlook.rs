//! What the states of one turned length and grip look like for the planner, over all places of the headstock.
//!
//! A state depends on the headstock's place, and that on the last re-grip. Most states pass, or fail, wherever the
//! headstock stands; samples over its range tell. Only states in between are worked out for the very place (`exact`),
//! and only when a plan that could be the best runs through them.

use super::grips;
use super::stations::Grid;
use crate::process::checks::{self, Finding, PASSES_UP_TO, View, bore, whip, whirl};
use crate::process::features::Task;
use crate::process::segments::Segment;
use crate::process::{Answers, Counter, Guide, Rig, State};
use std::cell::{OnceCell, RefCell};
use std::collections::HashMap;

/// Besides half the spread of the samples, what a value between samples may lie outside them, as a share.
const SAMPLE_GUARD: f64 = 0.002;

/// Whether a state is looked at as the end of the piece in front of it or as the start of the piece behind it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The end of the piece in front.
    End,
    /// The start of the piece behind.
    Start,
}

/// A state as far as planning needs it.
#[derive(Debug, Clone, Copy)]
pub struct Sample {
    /// The largest share of the checks that do not depend on speed, at the end of the piece in front and at the start of
    /// the one behind.
    base: [f64; 2],
    /// Highest speed at which whirl, whip and bore hold, rev/min.
    allowed_rpm: f64,
    /// Bow at rest, sag in the bore, room in the bore, critical speed: what the speed-dependent shares are made of.
    bow_mm: f64,
    bore: Option<(f64, f64)>,
    critical_rpm: f64,
}

impl Sample {
    /// Largest share of all checks at a speed.
    fn share(&self, side: Side, rpm: f64, rig: &Rig<'_>) -> f64 {
        let limits = &rig.job.limits;
        let ratio = rpm / self.critical_rpm / limits.whirl_ratio;
        let whip = whip::grown(self.bow_mm, rpm, self.critical_rpm) / limits.whip_mm;
        let bore = self.bore.map_or(0.0, |(sag, room)| {
            Finding::at_most("", "", whip::grown(sag, rpm, self.critical_rpm), room, 0.0).utilisation
        });
        self.base[side as usize].max(ratio).max(whip).max(bore)
    }
}

/// How a state looks over all places of the headstock.
#[derive(Debug, Clone, Copy)]
pub struct Outlook {
    /// Passes at full speed wherever the headstock stands.
    pub sure: bool,
    /// Fails wherever it stands, even slowed down as far as allowed.
    pub dead: bool,
    /// At least as fast as the fastest any place allows, rev/min.
    pub hopeful_rpm: f64,
    /// Smallest margin seen at full speed.
    pub margin: f64,
}

/// Looks at states of one rig, each once.
pub struct Looker<'a> {
    /// The rig.
    pub rig: &'a Rig<'a>,
    /// Its segments.
    pub segments: &'a [Segment],
    /// Its stations.
    pub grid: &'a Grid,
    /// Its tasks.
    pub tasks: &'a [Task],
    /// Noses tried; the index one past the last is the free front.
    pub noses: Vec<f64>,
    cells: Vec<OnceCell<Vec<Sample>>>,
    exact: RefCell<HashMap<(usize, usize, usize), Sample>>,
    drills: RefCell<HashMap<(usize, usize, Option<usize>), [f64; 2]>>,
    releases: RefCell<HashMap<(usize, usize, Option<usize>), [f64; 2]>>,
}

impl<'a> Looker<'a> {
    /// A looker for the rig's collet.
    pub fn new(rig: &'a Rig<'a>, segments: &'a [Segment], grid: &'a Grid, tasks: &'a [Task]) -> Looker<'a> {
        let noses = grips::noses(rig, grid, &grips::lands(rig));
        let cells = (0..(noses.len() + 1) * grid.len()).map(|_| OnceCell::new()).collect();
        Looker {
            rig,
            segments,
            grid,
            tasks,
            noses,
            cells,
            exact: RefCell::default(),
            drills: RefCell::default(),
            releases: RefCell::default(),
        }
    }

    /// Index that stands for the free front.
    pub fn free(&self) -> usize {
        self.noses.len()
    }

    /// Whether a grip index is a grip.
    pub fn grips(&self, grip: usize) -> bool {
        grip < self.noses.len()
    }

    /// Headstock place at a station when the last re-grip was at a turned length, mm.
    fn headstock_mm(&self, station: usize, last_regrip_mm: f64) -> f64 {
        self.rig.job.machine.headstock.farthest_mm() - (self.grid.at(station) - last_regrip_mm)
    }

    /// A state of a station, grip and headstock place.
    fn state(&self, grip: usize, station: usize, headstock_mm: f64) -> State {
        State {
            turned_mm: self.grid.at(station),
            counter: Counter::of(self.noses.get(grip).copied()),
            guide: Guide::Bush { headstock_mm },
        }
    }

    /// Places of the headstock that are looked at: the free front has one, a grip up to three over the range.
    fn places(&self, grip: usize, station: usize) -> Vec<f64> {
        let far = self.headstock_mm(station, self.grid.at(station));
        let near =
            self.headstock_mm(station, (self.grid.at(station) - self.rig.job.machine.headstock.stroke_mm).max(0.0));
        if !self.grips(grip) {
            vec![self.headstock_mm(station, 0.0)]
        } else if far - near < 1e-6 {
            vec![far]
        } else {
            vec![far, 0.5 * (far + near), near]
        }
    }

    fn sample(&self, grip: usize, station: usize, headstock_mm: f64) -> Sample {
        let state = self.state(grip, station, headstock_mm);
        let Ok(answers) = self.rig.answers(&state) else {
            return Sample {
                base: [checks::MOST_SHARE; 2],
                allowed_rpm: 0.0,
                bow_mm: 0.0,
                bore: None,
                critical_rpm: f64::MIN_POSITIVE,
            };
        };
        let last = self.grid.segment.len() - 1;
        let base = [station.saturating_sub(1), station.min(last)].map(|piece| {
            let segment = &self.segments[self.grid.segment[piece]];
            self.base_share(&state, &answers, segment)
        });
        Sample {
            base,
            allowed_rpm: self.rig.allowed_rpm(&state, &answers).rpm,
            bow_mm: whip::bow_mm(self.rig, &state, &answers),
            bore: bore::room_mm(self.rig, &state).map(|room| (answers.bore_sag_mm, room)),
            critical_rpm: answers.critical_rpm,
        }
    }

    /// Largest share of the checks that no slowing helps.
    fn base_share(&self, state: &State, answers: &Answers, segment: &Segment) -> f64 {
        let view = View { rig: self.rig, state, answers, segment, rpm: 0.0 };
        let still = checks::CHECKS.iter().filter(|c| !checks::depends_on_speed(c.name));
        still.filter_map(|c| (c.find)(&view)).map(|f| f.utilisation).fold(0.0, f64::max)
    }

    fn cell(&self, grip: usize, station: usize) -> &[Sample] {
        self.cells[grip * self.grid.len() + station]
            .get_or_init(|| self.places(grip, station).into_iter().map(|h| self.sample(grip, station, h)).collect())
    }

    /// How a state looks for a piece that asks for `rpm`.
    pub fn outlook(&self, grip: usize, station: usize, side: Side, rpm: f64) -> Outlook {
        let samples = self.cell(grip, station);
        let floor = self.rig.job.cutting.speed_floor;
        let range = |value: &dyn Fn(&Sample) -> f64| {
            samples.iter().map(value).fold((f64::INFINITY, 0.0f64), |(lo, hi), v| (lo.min(v), hi.max(v)))
        };
        let (share_low, share_high) = range(&|s| s.share(side, rpm, self.rig));
        let (base_low, base_high) = range(&|s| s.base[side as usize]);
        let (speed_low, speed_high) = range(&|s| s.allowed_rpm);
        let guard =
            |low: f64, high: f64| if samples.len() == 1 { 0.0 } else { SAMPLE_GUARD * high + 0.5 * (high - low) };
        let hopeful_rpm = speed_high + guard(speed_low, speed_high);
        Outlook {
            sure: share_high + guard(share_low, share_high) <= PASSES_UP_TO,
            dead: base_low - guard(base_low, base_high) > PASSES_UP_TO || hopeful_rpm < floor * rpm,
            hopeful_rpm,
            margin: 1.0 - share_high,
        }
    }

    /// A state for the very place of the headstock: whether it passes and at what speed at most (rev/min), and its
    /// largest share at that speed.
    pub fn exact(&self, grip: usize, station: usize, side: Side, regrip: usize, rpm: f64) -> Option<(f64, f64)> {
        let key = (grip, station, regrip);
        let known = self.exact.borrow().get(&key).copied();
        let sample = known.unwrap_or_else(|| {
            let s = self.sample(grip, station, self.headstock_mm(station, self.grid.at(regrip)));
            self.exact.borrow_mut().insert(key, s);
            s
        });
        let cap = sample.allowed_rpm.min(rpm);
        let passes = sample.base[side as usize] <= PASSES_UP_TO && cap >= self.rig.job.cutting.speed_floor * rpm;
        passes.then(|| (cap, sample.share(side, cap, self.rig)))
    }

    /// Smallest and largest share of `drill` over the tasks of a station: over all places of the headstock, or for the
    /// one a re-grip at a station gives.
    pub fn drill(&self, grip: usize, station: usize, regrip: Option<usize>) -> [f64; 2] {
        let key = (grip, station, regrip);
        self.remembered(&self.drills, key, |h| {
            let mut worst: f64 = 0.0;
            for task in self.grid.stations[station].tasks.iter().map(|i| &self.tasks[*i]) {
                let Some(thrust) = task.thrust_n else { continue };
                let found = checks::drill::find(self.rig, &self.state(grip, station, h), task.at_mm, thrust);
                worst = worst.max(found.map_or(checks::MOST_SHARE, |f| f.utilisation));
            }
            worst
        })
    }

    /// Smallest and largest share of `release` when the collet opens at a station.
    pub fn release(&self, grip: usize, station: usize, regrip: Option<usize>) -> [f64; 2] {
        if !self.grips(grip) {
            return [0.0; 2];
        }
        let key = (grip, station, regrip);
        self.remembered(&self.releases, key, |h| {
            let found = checks::release::find(self.rig, &self.state(grip, station, h));
            found.map_or(checks::MOST_SHARE, |f| f.utilisation)
        })
    }

    fn remembered(
        &self,
        memory: &RefCell<HashMap<(usize, usize, Option<usize>), [f64; 2]>>,
        key: (usize, usize, Option<usize>),
        share: impl Fn(f64) -> f64,
    ) -> [f64; 2] {
        if let Some(known) = memory.borrow().get(&key) {
            return *known;
        }
        let (grip, station, regrip) = key;
        let places = match regrip {
            Some(l) => vec![self.headstock_mm(station, self.grid.at(l))],
            None => self.places(grip, station),
        };
        let shares: Vec<f64> = places.into_iter().map(share).collect();
        let low = shares.iter().copied().fold(f64::INFINITY, f64::min);
        let high = shares.iter().copied().fold(0.0, f64::max);
        let guard = if shares.len() == 1 { 0.0 } else { SAMPLE_GUARD * high + 0.5 * (high - low) };
        let range = [low - guard, high + guard];
        memory.borrow_mut().insert(key, range);
        range
    }

    /// Shares of `torque` and `back` for a last grip, the larger.
    pub fn last_grip(&self, grip: usize) -> f64 {
        let Some(nose) = self.noses.get(grip) else { return 0.0 };
        let torque = checks::torque::find(self.rig, *nose).map_or(0.0, |f| f.utilisation);
        let back = match checks::back::find(self.rig, *nose) {
            Ok(found) => found.map_or(0.0, |f| f.utilisation),
            Err(_) => checks::MOST_SHARE,
        };
        torque.max(back)
    }

    /// `whirl`'s name, for messages about a speed that no slowing reaches.
    pub fn speed_check(&self, grip: usize, station: usize, regrip: usize) -> &'static str {
        let state = self.state(grip, station, self.headstock_mm(station, self.grid.at(regrip)));
        self.rig.answers(&state).map_or(whirl::NAME, |a| self.rig.allowed_rpm(&state, &a).check)
    }
}
