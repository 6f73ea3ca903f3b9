//! A finished plan with the nominal share of each check at places along it, and how a sampled part runs through it.

use super::super::SAME_MM;
use super::super::grips::held_mm;
use super::super::moments::{last_regrip, moment};
use super::STEP_MM;
use crate::job::plan::{CurvePoint, Plan};
use crate::job::scatter::Draw;
use crate::job::{Collet, Holding, Job};
use crate::process::Rig;
use crate::process::answers::MORE_STEPS;
use crate::process::checks::{self, CHECKS, Event, Finding, PASSES_UP_TO, View, span_stiffness};
use crate::process::features::Task;
use crate::process::segments::{Segment, Work};
use crate::process::speed::COUNT_GUARD;
use crate::spread::spread;
use std::ops::ControlFlow;

/// A state of a sampled part is left out if no check may fail there. That is judged from the largest ratio of its share to the nominal
/// one at the key places of the piece, times this. Tried, not derived: a test compares with all states of demo jobs.
const RATIO_GUARD: f64 = 1.25;
/// Of places whose shares differ by less the first counts: in a piece that was slowed down many have the same share but for rounding.
const SAME_SHARE: f64 = 1e-4;
/// A nominal share below this says nothing about a ratio.
const NO_SHARE: f64 = 1e-3;

/// Utilisation of each check of a moment, in the order of [`CHECKS`].
type Used = [f64; CHECKS.len()];

/// A check that a sampled part fails, in a stage (index), from a turned length on.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Break {
    /// Index of the stage.
    pub stage: usize,
    /// Name of the check.
    pub check: &'static str,
    /// Turned length of the first state that fails, mm.
    pub turned_mm: f64,
}

/// The part of a segment that a stage cuts without a stop.
struct Piece {
    stage: usize,
    segment: usize,
    rpm: f64,
    last_regrip_mm: f64,
    /// Whether the bar is fed on here, without a cut, for work behind the end of the stage.
    fed_on: bool,
    /// Turned lengths looked at, mm.
    places_mm: Vec<f64>,
    /// The nominal share of each check there.
    used: Vec<Used>,
    /// Places looked at in every part: both ends, the middle, and where a check has its largest nominal share.
    key: Vec<usize>,
    /// Places where a check (index) has its largest nominal share in the stage.
    top: Vec<(usize, usize)>,
    /// What the plan tells of `chatter` in the stage, over the share from some modes at the place of `top`.
    chatter_told: f64,
}

impl Piece {
    fn new(stage: usize, segment: usize, rpm: f64, last_regrip_mm: f64, places_mm: Vec<f64>) -> Piece {
        let (used, key, top) = (Vec::new(), Vec::new(), Vec::new());
        Piece { stage, segment, rpm, last_regrip_mm, fed_on: false, places_mm, used, key, top, chatter_told: 1.0 }
    }
}

/// A finished plan, prepared for many sampled parts.
pub struct Course<'a> {
    pub(super) plan: &'a Plan,
    pub(super) job: &'a Job,
    collet: Option<usize>,
    segments: Vec<Segment>,
    pieces: Vec<Piece>,
}

/// How deep a state is looked at.
#[derive(Clone, Copy)]
enum Depth {
    /// Every check has its share.
    Full,
    /// Checks that depend on the speed have one only if one of them uses more than this share.
    Up(f64),
}

/// The findings of a state.
struct Look {
    used: Used,
    tool_mm_per_n: f64,
}

impl<'a> Course<'a> {
    /// Prepares a proven plan.
    pub fn new(plan: &'a Plan, job: &'a Job) -> Course<'a> {
        let collets = job.machine.counter_spindle.as_ref().map_or(&[][..], |c| &c.collets);
        let collet = plan.collet.as_deref().and_then(|name| collets.iter().position(|c| c.name == name));
        let mut course = Course { plan, job, collet, segments: Vec::new(), pieces: Vec::new() };
        let rig = Rig::new(job, course.collet_of(job));
        course.segments = rig.segments().unwrap_or_default();
        for stage in 0..plan.stages.len() {
            course.pieces_of(&rig, stage);
        }
        let mut pieces = std::mem::take(&mut course.pieces);
        let places = |(p, piece): (usize, &Piece)| (0..piece.places_mm.len()).map(move |place| (p, place));
        let places: Vec<(usize, usize)> = pieces.iter().enumerate().flat_map(places).collect();
        let used = spread(&places, |(p, place), _| course.nominal(&rig, &pieces[*p], *place));
        for ((p, _), used) in places.into_iter().zip(used) {
            pieces[p].used.push(used);
        }
        pieces.iter_mut().for_each(|piece| piece.key = key_places(&piece.used));
        top_places(&mut pieces);
        course.top_of_chatter(&rig, &mut pieces);
        course.pieces = pieces;
        course
    }

    /// Marks the key place of each stage where `chatter` uses most. Its bound, which is all that other places have, may be largest elsewhere.
    fn top_of_chatter(&self, rig: &Rig<'_>, pieces: &mut [Piece]) {
        let slot = checks::order(checks::chatter::NAME);
        let places = |(i, piece): (usize, &Piece)| piece.key.iter().map(move |place| (i, *place)).collect::<Vec<_>>();
        let places: Vec<(usize, usize)> = pieces.iter().enumerate().flat_map(places).collect();
        let used = spread(&places, |(i, place), _| {
            let piece = &pieces[*i];
            self.chatter(rig, piece, &self.segments[piece.segment], *place)
        });
        for stage in 0..self.plan.stages.len() {
            let all = used.iter().zip(&places).map(|(used, (i, place))| (*used, *i, *place));
            let of_stage = all.filter(|(_, i, _)| pieces[*i].stage == stage);
            // The first of equals.
            let most = of_stage.reduce(|most, next| if next.0 > most.0 { next } else { most });
            if let Some((used, i, place)) = most.filter(|most| most.0 > NO_SHARE) {
                pieces[i].top.push((place, slot));
                let told = self.plan.stages[stage].checks.iter().find(|c| c.check == checks::chatter::NAME);
                pieces[i].chatter_told = told.map_or(1.0, |told| told.utilisation / used);
            }
        }
    }

    fn collet_of<'j>(&self, job: &'j Job) -> Option<&'j Collet> {
        job.machine.counter_spindle.as_ref()?.collets.get(self.collet?)
    }

    fn pieces_of(&mut self, rig: &Rig<'_>, stage: usize) {
        let listed = self.plan.segments.iter().filter(|s| s.stage == stage + 1).filter_map(|s| {
            let middle = 0.5 * (s.from_mm + s.to_mm);
            let at = self.segments.iter().position(|g| g.from_mm <= middle && g.to_mm >= middle)?;
            Some((at, s.from_mm, s.to_mm, s.rpm))
        });
        let mut all: Vec<_> = listed.collect();
        let parts_off = |s: &&Segment| s.work == Work::PartOff && stage + 1 == self.plan.stages.len();
        if let (Some(last), Some(rpm)) = (self.segments.last().filter(parts_off), self.plan.part_off_rpm) {
            all.push((self.segments.len() - 1, last.from_mm, last.to_mm, rpm));
        }
        for (segment, from_mm, to_mm, rpm) in all {
            let steps = ((to_mm - from_mm) / STEP_MM).ceil().max(1.0);
            let places_mm = (0..=steps as usize).map(|i| from_mm + (to_mm - from_mm) * i as f64 / steps).collect();
            let last_regrip_mm = last_regrip(self.plan, stage, from_mm, true);
            self.pieces.push(Piece::new(stage, segment, rpm, last_regrip_mm, places_mm));
        }
        // There the bar stands out farther than during any cut.
        let Some(rpm) = self.plan.part_off_rpm.filter(|_| !self.segments.is_empty()) else { return };
        for task in rig.tasks() {
            let Some(t) = told_in(self.plan, &task, stage).filter(|t| *t > self.plan.stages[stage].to_mm + SAME_MM)
            else {
                continue;
            };
            let (segment, last_regrip_mm) = (self.segments.len() - 1, last_regrip(self.plan, stage, t, false));
            self.pieces.push(Piece { fed_on: true, ..Piece::new(stage, segment, rpm, last_regrip_mm, vec![t]) });
        }
    }

    /// The nominal shares at a place of a piece.
    fn nominal(&self, rig: &Rig<'_>, piece: &Piece, place: usize) -> Used {
        let Some(look) = self.look(rig, piece, &self.segments[piece.segment], place, Depth::Full) else {
            return [1.0; _];
        };
        let mut used = look.used;
        // A soft span does not count where the front would also run free. A part in which it would not is looked at.
        let state = moment(rig, self.plan, piece.stage, piece.places_mm[place], piece.last_regrip_mm);
        let slot = checks::order(span_stiffness::NAME);
        if span_stiffness::applies(rig, state.counter) && used[slot] <= 0.0 {
            used[slot] = 1.0;
        }
        used
    }

    /// Looks at a place of a piece. With a depth of `Up`, the checks that depend on the speed have no share where all of them use at most
    /// that share, because one count without the critical speed tells this. None: the supports do not hold the bar.
    fn look(&self, rig: &Rig<'_>, piece: &Piece, segment: &Segment, place: usize, depth: Depth) -> Option<Look> {
        let state = moment(rig, self.plan, piece.stage, piece.places_mm[place], piece.last_regrip_mm);
        let posed = rig.posed(&state).ok()?;
        let holds = match depth {
            Depth::Full => false,
            Depth::Up(share) => {
                let needed = rig.critical_needed_rpm(&state, &posed.at_rest, piece.rpm, [share; checks::BY_SPEED]);
                posed.swings_above(needed * (1.0 + COUNT_GUARD))
            }
        };
        let answers = if holds { posed.at_rest } else { posed.with_critical() };
        let view = View { rig, state: &state, answers: &answers, segment, rpm: piece.rpm };
        let mut used = [0.0; CHECKS.len()];
        for (share, check) in used.iter_mut().zip(&CHECKS) {
            if !(holds && check.depends_on_speed()) {
                *share = check.at(&view).map_or(0.0, |found| found.utilisation);
            }
        }
        Some(Look { used, tool_mm_per_n: posed.at_rest.tool_mm_per_n })
    }

    /// Whether a piece asks for the flexibility at each of its places.
    fn is_one_cut(&self, piece: &Piece) -> bool {
        self.job.holding == Holding::NoBush && self.segments[piece.segment].work == Work::Turn
    }

    /// The checks that a part fails. `all`: looks at every state.
    pub(super) fn breaks(&self, draw: &Draw, all: bool) -> Vec<Break> {
        self.found(draw, all, false)
    }

    /// Whether a part meets all checks.
    pub(super) fn holds(&self, draw: &Draw) -> bool {
        self.found(draw, false, true).is_empty()
    }

    /// The checks that a part fails; with `one` those of the first piece that fails any.
    fn found(&self, draw: &Draw, all: bool, one: bool) -> Vec<Break> {
        let mut breaks = Vec::new();
        let events = self.run(draw, true, |rig, piece, segment| {
            let mut flexibilities = Vec::new();
            self.places(rig, piece, segment, all, |look, at| {
                flexibilities.push(look.tool_mm_per_n);
                for (share, check) in look.used.iter().zip(&CHECKS) {
                    if *share > PASSES_UP_TO {
                        note(&mut breaks, Break { stage: piece.stage, check: check.name, turned_mm: at });
                    }
                }
            });
            let found = self.is_one_cut(piece).then(|| checks::cut::along(rig, segment, &flexibilities)).flatten();
            if let Some(found) = found.filter(|f| !f.passes()) {
                let from_mm = piece.places_mm[0];
                note(&mut breaks, Break { stage: piece.stage, check: found.check, turned_mm: from_mm });
            }
            if one && !breaks.is_empty() { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
        });
        for (stage, turned_mm, found) in events.into_iter().filter(|(_, _, found)| !found.passes()) {
            note(&mut breaks, Break { stage, check: found.check, turned_mm });
        }
        breaks
    }

    /// The largest share of each check in a part, over the places where it has its largest nominal share, and the events. Where the bound
    /// of `chatter` passes, its share is that of the plan, times the ratio of part to nominal part from some modes: the bound may be many
    /// times too high.
    pub(super) fn most(&self, draw: &Draw) -> Vec<(&'static str, f64)> {
        let chatter_slot = checks::order(checks::chatter::NAME);
        let mut most: Vec<(&'static str, f64)> = Vec::new();
        let mut keep = |check: &'static str, used: f64| match most.iter_mut().find(|(name, _)| *name == check) {
            Some((_, so_far)) => *so_far = so_far.max(used),
            None => most.push((check, used)),
        };
        let events = self.run(draw, true, |rig, piece, segment| {
            let one_cut = self.is_one_cut(piece);
            let mut flexibilities = Vec::new();
            for place in 0..piece.places_mm.len() {
                let tops = || piece.top.iter().filter(|(at, _)| *at == place).map(|(_, check)| *check);
                let is_key = tops().next().is_some();
                if !is_key && !one_cut {
                    continue;
                }
                let depth = if is_key { Depth::Full } else { Depth::Up(1.0) };
                let Some(mut look) = self.look(rig, piece, segment, place, depth) else { continue };
                flexibilities.push(look.tool_mm_per_n);
                if is_key {
                    without_bound(&mut look.used);
                    if look.used[chatter_slot] <= 0.0 && tops().any(|check| check == chatter_slot) {
                        look.used[chatter_slot] = piece.chatter_told * self.chatter(rig, piece, segment, place);
                    }
                    look.used.iter().zip(&CHECKS).for_each(|(used, check)| keep(check.name, *used));
                }
            }
            if let Some(found) = one_cut.then(|| checks::cut::along(rig, segment, &flexibilities)).flatten() {
                keep(found.check, found.utilisation);
            }
            ControlFlow::Continue(())
        });
        events.into_iter().for_each(|(_, _, found)| keep(found.check, found.utilisation));
        most.retain(|(_, used)| *used > 0.0);
        most
    }

    /// The share of `chatter` at a place, from some modes.
    fn chatter(&self, rig: &Rig<'_>, piece: &Piece, segment: &Segment, place: usize) -> f64 {
        let state = moment(rig, self.plan, piece.stage, piece.places_mm[place], piece.last_regrip_mm);
        checks::chatter::about(rig, &state, segment, MORE_STEPS).map_or(0.0, |found| found.utilisation)
    }

    /// The largest share of all checks of a part along the turned length, in the order of the plan. Events are left out, and `chatter`
    /// where its bound passes.
    pub(super) fn curve(&self, draw: &Draw) -> Vec<CurvePoint> {
        let mut points = Vec::new();
        self.run(draw, false, |rig, piece, segment| {
            for place in (0..piece.places_mm.len()).filter(|_| !piece.fed_on) {
                let Some(mut look) = self.look(rig, piece, segment, place, Depth::Full) else { continue };
                without_bound(&mut look.used);
                let shares = look.used.iter().zip(&CHECKS);
                if let Some((used, check)) = shares.max_by(|a, b| a.0.total_cmp(b.0)) {
                    let (stage, turned_mm) = (piece.stage + 1, piece.places_mm[place]);
                    points.push(CurvePoint { stage, turned_mm, used: *used, check: check.name.into() });
                }
            }
            ControlFlow::Continue(())
        });
        points
    }

    /// Runs a part through the pieces of the plan until `each` breaks off. Then, if asked for, come the findings of the events with their
    /// stages and turned lengths.
    fn run(
        &self,
        draw: &Draw,
        with_events: bool,
        mut each: impl FnMut(&Rig<'_>, &Piece, &Segment) -> ControlFlow<()>,
    ) -> Vec<(usize, f64, Finding)> {
        let sample = self.job.drawn(draw);
        let force = self.job.force_drawn(draw);
        let rig = Rig::new(&sample, self.collet_of(&sample));
        // The part is cut as planned for the nominal part; only the forces differ.
        let segments: Vec<Segment> = self.segments.iter().map(|s| stronger(s, force)).collect();
        let broken_off = self.pieces.iter().any(|piece| each(&rig, piece, &segments[piece.segment]).is_break());
        if broken_off || !with_events {
            return Vec::new();
        }
        (0..self.plan.stages.len()).flat_map(|stage| self.events(&rig, stage)).collect()
    }

    /// Looks at the places of a piece at which a check may fail.
    fn places(&self, rig: &Rig<'_>, piece: &Piece, segment: &Segment, all: bool, mut seen: impl FnMut(&Look, f64)) {
        let mut ratios = [0.0_f64; CHECKS.len()];
        for place in &piece.key {
            // Where no check that depends on the speed uses more than this, none of them may fail elsewhere in the piece: the place with the
            // largest nominal share is among these.
            let Some(look) = self.look(rig, piece, segment, *place, Depth::Up(1.0 / RATIO_GUARD)) else { continue };
            for ((ratio, used), nominal) in ratios.iter_mut().zip(look.used).zip(piece.used[*place]) {
                if nominal > NO_SHARE {
                    *ratio = ratio.max(used / nominal);
                }
            }
            seen(&look, piece.places_mm[*place]);
        }
        let all = all || self.is_one_cut(piece);
        for (place, nominal) in piece.used.iter().enumerate() {
            let may_fail = || nominal.iter().zip(ratios).any(|(used, ratio)| used * ratio * RATIO_GUARD >= 1.0);
            if piece.key.contains(&place) || !(all || may_fail()) {
                continue;
            }
            if let Some(look) = self.look(rig, piece, segment, place, Depth::Up(1.0)) {
                seen(&look, piece.places_mm[place]);
            }
        }
    }

    fn events(&self, rig: &Rig<'_>, stage: usize) -> Vec<(usize, f64, Finding)> {
        let (plan, s) = (self.plan, &self.plan.stages[stage]);
        let mut all = Vec::new();
        for task in rig.tasks() {
            let Some(t) = told_in(plan, &task, stage) else { continue };
            let done = moment(rig, plan, stage, t, last_regrip(plan, stage, t, false));
            let found = checks::at_event(rig, &done, Event::Works(&task)).flatten();
            all.extend(found.map(|f| (stage, t, f)));
        }
        if stage == 0 {
            let start = moment(rig, plan, stage, s.from_mm, last_regrip(plan, stage, s.from_mm, true));
            let found = checks::at_event(rig, &start, Event::Begins).flatten();
            all.extend(found.map(|f| (stage, s.from_mm, f)));
        }
        if stage + 1 < plan.stages.len() {
            let end = moment(rig, plan, stage, s.to_mm, last_regrip(plan, stage, s.to_mm, true));
            all.extend(checks::at_event(rig, &end, Event::LetsGo).flatten().map(|f| (stage, s.to_mm, f)));
        } else if let Some(grip) = &s.grip {
            let held = held_mm(rig.job, rig.hold_mm(), grip);
            all.extend(checks::of_last_grip(rig, grip.nose_mm, held).flatten().map(|f| (stage, s.to_mm, f)));
        }
        all
    }
}

/// Turned length at which a task is done in a stage (index), mm; none if it is done in another one.
fn told_in(plan: &Plan, task: &Task, stage: usize) -> Option<f64> {
    task.told(plan).filter(|f| f.stage == Some(stage + 1))?.turned_mm
}

/// Notes a failed check of a stage, if it is the first or at a shorter turned length.
fn note(breaks: &mut Vec<Break>, found: Break) {
    match breaks.iter_mut().find(|b| b.stage == found.stage && b.check == found.check) {
        Some(known) => known.turned_mm = known.turned_mm.min(found.turned_mm),
        None => breaks.push(found),
    }
}

/// Marks the places where each check has its largest nominal share in each stage.
fn top_places(pieces: &mut [Piece]) {
    for check in (0..CHECKS.len()).filter(|check| CHECKS[*check].name != checks::chatter::NAME) {
        let mut top: Vec<(usize, f64, usize, usize)> = Vec::new();
        for (i, piece) in pieces.iter().enumerate() {
            for (place, used) in piece.used.iter().map(|used| used[check]).enumerate().filter(|(_, u)| *u > NO_SHARE) {
                match top.iter_mut().find(|t| t.0 == piece.stage) {
                    Some(t) if used > t.1 * (1.0 + SAME_SHARE) => *t = (piece.stage, used, i, place),
                    Some(_) => {}
                    None => top.push((piece.stage, used, i, place)),
                }
            }
        }
        for (_, _, i, place) in top {
            pieces[i].top.push((place, check));
        }
    }
}

/// Both ends, the middle, and where each check has its largest nominal share.
fn key_places(used: &[Used]) -> Vec<usize> {
    let last = used.len().saturating_sub(1);
    let mut key = vec![0, last / 2, last];
    for check in 0..CHECKS.len() {
        let at = |i: &usize| used[*i][check];
        if let Some(most) = (0..used.len()).max_by(|a, b| at(a).total_cmp(&at(b))).filter(|i| at(i) > NO_SHARE) {
            key.push(most);
        }
    }
    key.sort_unstable();
    key.dedup();
    key
}

/// Leaves `chatter` out where it passes: that share is a bound, not how much of the limit is used.
fn without_bound(used: &mut Used) {
    let chatter = &mut used[checks::order(checks::chatter::NAME)];
    if *chatter <= PASSES_UP_TO {
        *chatter = 0.0;
    }
}

fn stronger(segment: &Segment, times: f64) -> Segment {
    let mut segment = segment.clone();
    segment.change_mm *= times;
    for travel in &mut segment.travels {
        travel.net_radial_n *= times;
        travel.stiffness_n_per_mm.iter_mut().for_each(|k| *k *= times);
    }
    segment
}
