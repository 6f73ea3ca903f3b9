//! Outlooks: the states of one turned length and grip, over all places of the headstock.
//!
//! A state depends on the place of the headstock, which depends on the last re-grip. Most states pass, or fail, at
//! every place of the headstock, and a few samples over its range show it. Only the states in doubt are worked out for
//! their exact place (`exact`), and only when a plan that could be the best runs through them.

use crate::planner::places::grips;
use crate::planner::places::stations::Grid;
use crate::planner::states::demand::Demand;
use crate::process::checks::{self, PASSES_UP_TO, View};
use crate::process::features::Task;
use crate::process::segments::Segment;
use crate::process::span::{AtRest, Front, Inside, Rear};
use crate::process::{Answers, Counter, Guide, Rig, State};
use crate::spread::{checkpoint_worth, lock};
use std::collections::HashMap;
use std::sync::{Arc, Mutex, OnceLock};

/// How far a value between samples may lie outside them: this share of the largest, besides half the spread of the
/// samples.
const SAMPLE_GUARD: f64 = 0.002;
/// At ease: where the samples at both ends of the headstock's range stay below this utilisation, the middle is not
/// sampled.
const AT_EASE: f64 = 0.85;
/// Steps of the bisection that finds how far the critical speed lies above the one needed. Its result is a safe bound,
/// and five steps are fine enough to rank plans that are equally fast.
const RANKING_STEPS: usize = 5;
/// The bisection looks up to this many times the critical speed needed.
const MOST_ABOVE: f64 = 50.0;
/// Relative accuracy of a critical speed that sets the speed of a cut.
const CRITICAL_WIDTH: f64 = 1e-9;
/// Work of one look at a state, in steps of the allowance.
const LOOK: u64 = 50;

/// Whether a state is looked at as the end of the piece in front of it or as the start of the piece behind it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The end of the piece in front.
    End,
    /// The start of the piece behind.
    Start,
}

/// What planning needs of a state, for both sides: the end of the piece in front, and the start of the piece behind.
#[derive(Debug, Clone, Copy)]
struct Sample {
    /// Largest utilisation of the checks that a lower speed does not help.
    base: [f64; 2],
    /// Largest utilisation of all checks at full speed, or an upper bound on it.
    share: [f64; 2],
    /// Highest speed at which the checks that depend on the speed hold, rev/min; infinite where full speed passes.
    cap_rpm: [f64; 2],
}

/// A state that fails at every speed.
const HOPELESS: Sample = Sample { base: [checks::MOST_SHARE; 2], share: [checks::MOST_SHARE; 2], cap_rpm: [0.0; 2] };

/// How far outside the samples a value between them may lie.
pub(super) fn guard(low: f64, high: f64) -> f64 {
    SAMPLE_GUARD * high + 0.5 * (high - low)
}

/// A state for some places of the headstock: the bar behind the bush face, and for each side the full speed, rev/min,
/// with the demands at each place. The second side is none where it is equal to the first.
struct Asked {
    rears: Vec<Arc<Option<Rear>>>,
    sides: [Option<(f64, Vec<Demand>)>; 2],
}

/// What is known of a state over all places of the headstock.
#[derive(Debug, Clone, Copy)]
pub struct Outlook {
    /// Sure: it passes at full speed at every place of the headstock.
    pub sure: bool,
    /// Dead: it fails at every place of the headstock, even at the lowest speed allowed.
    pub dead: bool,
    /// Upper bound on the speed that any place of the headstock allows, rev/min.
    pub hopeful_rpm: f64,
    /// Every place of the headstock allows at least this speed, rev/min; 0 where one may fail.
    pub careful_rpm: f64,
    /// Smallest margin of the samples at full speed.
    pub margin: f64,
}

/// Smallest and largest utilisation by grip, station, and station of the last re-grip (none: over all places of the
/// headstock).
pub(super) type Remembered = Mutex<HashMap<(usize, usize, Option<usize>), [f64; 2]>>;

/// Works out states of one rig, each once. Several threads may ask; they wait for each other only where they need the
/// same state.
pub struct Looker<'a> {
    /// The rig.
    pub rig: &'a Rig<'a>,
    /// Its segments.
    pub segments: &'a [Segment],
    /// Its stations.
    pub grid: &'a Grid,
    /// Its tasks.
    pub tasks: &'a [Task],
    /// Places of the nose that are tried. The index one past the last stands for the free front.
    pub noses: Vec<f64>,
    /// Whether margins must be fine enough to find the safer of two equally cheap grips.
    pub ranks: bool,
    /// Rows by grip; the last row is that of the free front.
    pub(super) rows: Vec<Row>,
    exact: Mutex<HashMap<(usize, usize, usize), Sample>>,
    rears: Mutex<HashMap<u64, Arc<Option<Rear>>>>,
    pub(super) drills: Remembered,
    pub(super) releases: Remembered,
}

/// What is known of the states of one grip, by station from `first` on.
pub(super) struct Row {
    pub(super) first: usize,
    /// The bar inside the counter-spindle, its collet closed and open.
    inside: [OnceLock<Option<Arc<Inside>>>; 2],
    outlooks: Cells<Box<[Outlook; 2]>>,
    /// Outlooks of stations outside the row.
    beyond: Mutex<HashMap<usize, [Outlook; 2]>>,
    pub(super) releases: Cells<Box<[f64; 2]>>,
    len: usize,
}

/// One value for every station of a row; each is made where it is first asked for.
pub(super) type Cells<T> = OnceLock<Vec<OnceLock<T>>>;

impl Row {
    /// The cell of a station. None: the row does not reach it.
    pub(super) fn cell<'c, T>(&self, cells: &'c Cells<T>, station: usize) -> Option<&'c OnceLock<T>> {
        let i = station.checked_sub(self.first).filter(|i| *i < self.len)?;
        Some(&cells.get_or_init(|| (0..self.len).map(|_| OnceLock::new()).collect())[i])
    }
}

impl<'a> Looker<'a> {
    /// A looker for the rig's collet, with exact enough margins for ranking.
    pub fn new(rig: &'a Rig<'a>, segments: &'a [Segment], grid: &'a Grid, tasks: &'a [Task]) -> Looker<'a> {
        Looker::ranking(rig, segments, grid, tasks, true)
    }

    /// A looker for the rig's collet. Without `ranks` it tells which states pass, but not how large their margins are.
    pub fn ranking(
        rig: &'a Rig<'a>,
        segments: &'a [Segment],
        grid: &'a Grid,
        tasks: &'a [Task],
        ranks: bool,
    ) -> Looker<'a> {
        let noses = grips::noses(rig, grid, &grips::lands(rig));
        let travel = rig.job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.farthest_mm) - rig.gap_mm();
        let row = |nose: Option<&f64>| {
            let (from, to) = nose.map_or((0.0, rig.job.machine.headstock.stroke_mm), |g| (*g, g + travel));
            let first = grid.stations.partition_point(|s| s.turned_mm < from - 1.0);
            let end = grid.stations.partition_point(|s| s.turned_mm <= to + 1.0);
            let len = end.saturating_sub(first);
            Row {
                first,
                len,
                inside: [OnceLock::new(), OnceLock::new()],
                outlooks: OnceLock::new(),
                beyond: Mutex::default(),
                releases: OnceLock::new(),
            }
        };
        let rows = noses.iter().map(Some).chain([None]).map(row).collect();
        Looker {
            ranks,
            rig,
            segments,
            grid,
            tasks,
            noses,
            rows,
            exact: Mutex::default(),
            rears: Mutex::default(),
            drills: Mutex::default(),
            releases: Mutex::default(),
        }
    }

    /// Index that stands for the free front.
    pub fn free(&self) -> usize {
        self.noses.len()
    }

    /// Whether a grip index stands for a grip, not for the free front.
    pub fn grips(&self, grip: usize) -> bool {
        grip < self.noses.len()
    }

    /// Whether some state of a station under a grip is shut.
    pub(super) fn has_shut(&self, grip: usize, station: usize) -> bool {
        self.grid.has_shut(station, self.noses.get(grip).copied())
    }

    /// Grip and station of every state that was looked at.
    pub fn looked_at(&self) -> Vec<(usize, usize)> {
        let row = |(grip, row): (usize, &'_ Row)| -> Vec<(usize, usize)> {
            let cells = row.outlooks.get().map_or(&[][..], |cells| cells.as_slice());
            let known = cells.iter().enumerate().filter(|(_, cell)| cell.get().is_some());
            known.map(|(i, _)| (grip, row.first + i)).collect()
        };
        self.rows.iter().enumerate().flat_map(row).collect()
    }

    /// Headstock place at a station when the last re-grip was at a turned length, mm.
    pub(super) fn headstock_mm(&self, station: usize, last_regrip_mm: f64) -> f64 {
        self.rig.job.machine.headstock.farthest_mm() - (self.grid.at(station) - last_regrip_mm)
    }

    /// What holds the front at a station.
    pub fn counter(&self, grip: usize, station: usize) -> Counter {
        self.rig.counter(self.noses.get(grip).copied(), self.grid.at(station))
    }

    /// A state of a station, grip and headstock place.
    pub(super) fn state(&self, grip: usize, station: usize, headstock_mm: f64) -> State {
        State {
            turned_mm: self.grid.at(station),
            counter: self.counter(grip, station),
            guide: Guide::Bush { headstock_mm },
        }
    }

    /// Places of the headstock to sample: one for the free front, up to three over its range for a grip.
    pub(super) fn places(&self, grip: usize, station: usize) -> Vec<f64> {
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

    /// The bar in front of the bush face, with the front free or with the collet closed or open.
    pub(super) fn front_of(&self, grip: usize, station: usize, counter: Counter) -> Front {
        let open = matches!(counter, Counter::Open { .. });
        let inside = self.rows[grip].inside[usize::from(open)].get_or_init(|| Inside::new(self.rig, counter));
        Front::with(self.rig, self.grid.at(station), counter, inside.clone())
    }

    /// The bar in front of the bush face, with the front free or with the collet closed.
    fn front_held(&self, grip: usize, station: usize) -> Front {
        self.front_of(grip, station, self.counter(grip, station))
    }

    /// A state for several places of the headstock. None: at one of them nothing holds the bar.
    fn asked(&self, front: &Front, grip: usize, station: usize, places: &[f64]) -> Option<Asked> {
        checkpoint_worth(LOOK);
        let rears: Vec<Arc<Option<Rear>>> = places.iter().map(|h| self.rear(*h)).collect();
        let held: Vec<&Rear> = rears.iter().filter_map(|r| r.as_ref().as_ref()).collect();
        if held.len() < rears.len() {
            return None;
        }
        let at_rest: Vec<AtRest> = front.at_rest(&held).into_iter().collect::<Option<_>>()?;
        let last = self.grid.segment.len() - 1;
        let pieces = [station.saturating_sub(1), station.min(last)];
        let segments = pieces.map(|p| self.grid.segment[p]);
        let side = |index: usize| {
            let segment = &self.segments[index];
            let rpm = self.rig.segment_rpm(segment, self.grips(grip));
            (rpm, self.demands(&at_rest, (grip, station, places), segment))
        };
        let first = side(segments[0]);
        // Most stations have the same segment on both sides.
        let second = (segments[1] != segments[0]).then(|| side(segments[1]));
        Some(Asked { rears, sides: [Some(first), second] })
    }

    /// Samples of a state for several places of the headstock.
    fn samples(&self, front: &Front, grip: usize, station: usize, places: &[f64]) -> Vec<Sample> {
        let mut samples = vec![HOPELESS; places.len()];
        let Some(asked) = self.asked(front, grip, station, places) else { return samples };
        let held: Vec<&Rear> = asked.rears.iter().filter_map(|r| r.as_ref().as_ref()).collect();
        for (side, work) in asked.sides.iter().enumerate() {
            match work {
                Some((rpm, demands)) => self.side(front, &held, demands, *rpm, |i, base, share, cap| {
                    (samples[i].base[side], samples[i].share[side], samples[i].cap_rpm[side]) = (base, share, cap);
                }),
                None => {
                    for s in &mut samples {
                        (s.base[1], s.share[1], s.cap_rpm[1]) = (s.base[0], s.share[0], s.cap_rpm[0]);
                    }
                }
            }
        }
        samples
    }

    /// The demand of a state on its critical speed, for each place of the headstock.
    fn demands(
        &self,
        at_rest: &[AtRest],
        (grip, station, places): (usize, usize, &[f64]),
        segment: &Segment,
    ) -> Vec<Demand> {
        let demand = |(s, place): (&AtRest, &f64)| {
            // `chatter` may need the whole bar, so the headstock stands at its true place.
            let state = self.state(grip, station, *place);
            let answers = self.as_answers(&state, s);
            Demand { base: self.base_share(&state, &answers, segment), laws: self.rig.speed_laws(&state, &answers) }
        };
        at_rest.iter().zip(places).map(demand).collect()
    }

    pub(super) fn rear(&self, headstock_mm: f64) -> Arc<Option<Rear>> {
        if let Some(known) = lock(&self.rears).get(&headstock_mm.to_bits()) {
            return known.clone();
        }
        let rear: Arc<Option<Rear>> = Rear::new(self.rig, headstock_mm).into();
        lock(&self.rears).insert(headstock_mm.to_bits(), rear.clone());
        rear
    }

    /// One side of a state. `put` gets for each place of the headstock: its index, the utilisation that no lower speed
    /// helps, the utilisation at full speed, and the highest speed.
    fn side(
        &self,
        front: &Front,
        rears: &[&Rear],
        demands: &[Demand],
        rpm: f64,
        mut put: impl FnMut(usize, f64, f64, f64),
    ) {
        let floor = self.rig.job.cutting.speed_floor;
        let needed = |share: f64| demands.iter().map(|d| d.needed_rpm(rpm, share)).fold(0.0, f64::max);
        let above = |critical: f64| front.swings_above(crate::units::rad_per_s(critical), rears);
        if !self.ranks {
            let with_ease = needed(AT_EASE);
            if with_ease.is_finite() && above(with_ease).iter().all(|p| *p) {
                for (i, d) in demands.iter().enumerate() {
                    put(i, d.base, d.base.max(AT_EASE), f64::INFINITY);
                }
                return;
            }
        }
        let full = needed(1.0);
        let passes = if full.is_finite() { above(full) } else { vec![false; rears.len()] };
        if passes.iter().all(|p| *p) {
            // How far above is the critical speed? Beyond what the base share needs, nothing changes.
            let base = demands.iter().map(|d| d.base).fold(0.0, f64::max);
            let (mut known, mut open) = (full, needed(base).min(MOST_ABOVE * full));
            if open > known && above(open).iter().all(|p| *p) {
                known = open;
            }
            for _ in 0..RANKING_STEPS {
                if open <= known {
                    break;
                }
                let middle = (known * open).sqrt();
                if above(middle).iter().all(|p| *p) {
                    known = middle;
                } else {
                    open = middle;
                }
            }
            for (i, d) in demands.iter().enumerate() {
                put(i, d.base, d.share(rpm, known), f64::INFINITY);
            }
            return;
        }
        for (i, d) in demands.iter().enumerate() {
            let own = d.needed_rpm(rpm, 1.0);
            let above_one = |critical: f64| front.swings_above(crate::units::rad_per_s(critical), &rears[i..=i])[0];
            if own.is_finite() && (passes[i] || above_one(own)) {
                put(i, d.base, d.share(rpm, own), f64::INFINITY);
                continue;
            }
            let at_floor = own * floor;
            // The search begins a little below the lowest speed allowed, for places of the headstock between the
            // samples.
            if floor >= 1.0 || !own.is_finite() || !above_one(0.95 * at_floor) {
                put(i, d.base, checks::MOST_SHARE, 0.0);
                continue;
            }
            let range = [0.95 * at_floor, own].map(crate::units::rad_per_s);
            let low = crate::units::rpm(front.lowest_rad_per_s(rears[i], range, CRITICAL_WIDTH));
            put(i, d.base, checks::MOST_SHARE, rpm * low / own);
        }
    }

    /// Answers for the checks that do not depend on the speed. The critical speed is left infinite.
    fn as_answers(&self, state: &State, at_rest: &AtRest) -> Answers {
        Answers {
            unsupported_mm: self.rig.unsupported_mm(state),
            stiffness_n_per_um: at_rest.stiffness_n_per_um,
            span_n_per_um: at_rest.span_n_per_um,
            span_at_mm: 0.0,
            sag_mm: at_rest.sag_mm,
            sag_at_mm: 0.0,
            bore_sag_mm: at_rest.bore_sag_mm,
            bore_sag_at_mm: 0.0,
            critical_rpm: f64::INFINITY,
            critical_at_mm: 0.0,
            tool_mm_per_n: at_rest.tool_mm_per_n,
            finisher_mm_per_n: at_rest.finisher_mm_per_n,
            tool_follows: at_rest.tool_follows,
        }
    }

    /// Largest utilisation of the checks that a lower speed does not help.
    fn base_share(&self, state: &State, answers: &Answers, segment: &Segment) -> f64 {
        let view = View { rig: self.rig, state, answers, segment, rpm: 0.0 };
        checks::at_rest(&view).map(|f| f.utilisation).fold(0.0, f64::max)
    }

    /// The samples of a state. The middle of the headstock's range is sampled only where its ends are not at ease.
    fn cell(&self, grip: usize, station: usize) -> Vec<Sample> {
        let (places, front) = (self.places(grip, station), self.front_held(grip, station));
        let [far, middle, near] = places[..] else { return self.samples(&front, grip, station, &places) };
        let ends = self.samples(&front, grip, station, &[far, near]);
        if ends.iter().all(|s| s.share.iter().all(|u| *u <= AT_EASE)) {
            return ends;
        }
        [ends, self.samples(&front, grip, station, &[middle])].concat()
    }

    /// The outlook of a state for the piece on one side of it.
    pub fn outlook(&self, grip: usize, station: usize, side: Side) -> Outlook {
        let row = &self.rows[grip];
        let found = || {
            let (samples, shut) = (self.cell(grip, station), self.has_shut(grip, station));
            // Where one place of the headstock is shut, the station is not sure: each place must be looked at.
            let told = |o: Outlook| if shut { Outlook { sure: false, careful_rpm: 0.0, ..o } } else { o };
            [0, 1].map(|side| told(self.of_samples(grip, station, side, &samples)))
        };
        if let Some(cell) = row.cell(&row.outlooks, station) {
            return cell.get_or_init(|| Box::new(found()))[side as usize];
        }
        let known = lock(&row.beyond).get(&station).copied();
        known.unwrap_or_else(|| {
            let found = found();
            lock(&row.beyond).insert(station, found);
            found
        })[side as usize]
    }

    fn of_samples(&self, grip: usize, station: usize, side: usize, samples: &[Sample]) -> Outlook {
        let rpm = self.rpm(grip, station, side);
        let range = |value: &dyn Fn(&Sample) -> f64| {
            samples.iter().map(value).fold((f64::INFINITY, 0.0f64), |(lo, hi), v| (lo.min(v), hi.max(v)))
        };
        let (share_low, share_high) = range(&|s| s.share[side]);
        let (base_low, base_high) = range(&|s| s.base[side]);
        let (cap_low, cap_high) = range(&|s| s.cap_rpm[side].min(rpm));
        let guard = |low: f64, high: f64| if samples.len() == 1 { 0.0 } else { guard(low, high) };
        let (hopeful_rpm, careful_rpm) = (cap_high + guard(cap_low, cap_high), cap_low - guard(cap_low, cap_high));
        let floor_rpm = self.rig.job.cutting.speed_floor * rpm;
        Outlook {
            sure: share_high + guard(share_low, share_high) <= PASSES_UP_TO,
            dead: base_low - guard(base_low, base_high) > PASSES_UP_TO || hopeful_rpm < floor_rpm,
            hopeful_rpm,
            careful_rpm: if base_high + guard(base_low, base_high) > PASSES_UP_TO || careful_rpm < floor_rpm {
                0.0
            } else {
                careful_rpm
            },
            margin: 1.0 - share_high,
        }
    }

    /// Full speed of the piece on one side of a station, rev/min.
    fn rpm(&self, grip: usize, station: usize, side: usize) -> f64 {
        let piece = [station.saturating_sub(1), station.min(self.grid.segment.len() - 1)][side];
        self.rig.segment_rpm(&self.segments[self.grid.segment[piece]], self.grips(grip))
    }

    /// A state for the exact place of the headstock: the highest speed at which it passes (infinite: full speed), and
    /// its largest utilisation at that speed. None: it fails.
    pub fn exact(&self, grip: usize, station: usize, side: Side, regrip: usize) -> Option<(f64, f64)> {
        let key = (grip, station, regrip);
        let place = self.headstock_mm(station, self.grid.at(regrip));
        if !self.grid.shut.is_empty() && self.grid.is_shut(&self.state(grip, station, place)) {
            return None;
        }
        let known = lock(&self.exact).get(&key).copied();
        let sample = known.unwrap_or_else(|| {
            let s = self.samples(&self.front_held(grip, station), grip, station, &[place])[0];
            lock(&self.exact).insert(key, s);
            s
        });
        let side = side as usize;
        let floor = self.rig.job.cutting.speed_floor * self.rpm(grip, station, side);
        let passes = sample.base[side] <= PASSES_UP_TO && sample.cap_rpm[side] >= floor;
        // A state that is slowed down exactly as far as needed uses all of its limit.
        passes.then(|| (sample.cap_rpm[side], sample.share[side].min(1.0)))
    }
}
