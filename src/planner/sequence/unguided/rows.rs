//! All pieces that end at one station under one grip, from one walk towards the front.
//!
//! A piece that begins farther in front has every state of a shorter one, and more. So the walk looks at each state
//! once, keeps the largest utilisation so far, and ends where a state fails: no longer piece passes either. A critical
//! speed is worked out only where its checks may use more than the others already do; elsewhere one count of
//! frequencies is enough. The modes of the receptance are treated in the same way.

use super::{POSE, Unguided};
use crate::planner::places::stations::divisible;
use crate::process::answers::Posed;
use crate::process::checks::{self, BY_SPEED, Check, Event, PASSES_UP_TO, View, chatter};
use crate::process::segments::Segment;
use crate::process::speed::{COUNT_GUARD, SLOWING_GUARD};
use crate::process::stops::SAME_MM;
use crate::process::{Answers, Rig, State, Work};

/// Time (s) and margin of the pieces that end at a station. The first begins one station in front of it, the second two
/// stations, and so on as far as they pass.
pub type Row = Vec<(f64, f64)>;

/// How exactly a row knows its pieces.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Knows {
    /// Which pieces hold, and their margins.
    Margins,
    /// Which pieces hold; the margin told may be larger than the true one.
    WhatHolds,
}

/// States of one segment in a row.
struct Part<'a> {
    segment: &'a Segment,
    /// Its last station.
    to: usize,
    wanted_rpm: f64,
    /// The lowest speed that its states allow.
    allowed_rpm: f64,
    /// The speed for which `of_speed` is known.
    rpm: f64,
    /// Largest utilisation of the checks that depend on the speed, over the states in `open`.
    of_speed: f64,
    /// States in which a check that depends on the speed may matter.
    open: Vec<(State, Answers)>,
    /// Largest and smallest flexibility at the tool, mm/N.
    flexibilities: [f64; 2],
}

/// The larger of two utilisations. None: the new one does not pass.
fn grown(largest: f64, share: f64) -> Option<f64> {
    (share <= PASSES_UP_TO).then(|| largest.max(share))
}

impl Unguided<'_> {
    /// The pieces under a grip that end at station `end` and begin at station `down_to` or behind it.
    pub fn row(&self, grip: usize, end: usize, down_to: usize, knows: Knows) -> Row {
        let mut row = Row::new();
        let _ = self.walk(grip, end, down_to, knows, |_, piece| {
            row.push(piece);
            true
        });
        row
    }

    /// Gives these pieces to `more` one by one, with the station where each begins, until `more` returns false. None: a
    /// piece does not hold.
    pub(super) fn walk(
        &self,
        grip: usize,
        end: usize,
        down_to: usize,
        knows: Knows,
        mut more: impl FnMut(usize, (f64, f64)) -> bool,
    ) -> Option<()> {
        let (rig, grid) = (self.ground.rig, self.grid);
        let gripped = grip < self.noses.len();
        let posed = |station: usize| -> Option<(State, Posed)> {
            crate::spread::checkpoint_worth(POSE);
            let state = self.state(station, grip, end);
            if grid.is_shut(&state) {
                return None;
            }
            Some((state, rig.posed(&state).ok()?))
        };
        // Largest utilisation of the checks that do not depend on the speed, and of all checks of finished segments.
        let mut largest = 0.0;
        let mut part: Option<Part<'_>> = None;
        // Times of finished segments, the last finished one at the end.
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
                new.take(self, &behind, knows, &mut largest)?;
                part = Some(new);
            }
            largest = self.drilled(grip, end, i + 1, &behind.0, largest)?;
            let part = part.as_mut()?;
            let here = posed(i)?;
            part.take(self, &here, knows, &mut largest)?;
            behind = here;
            let share = grown(largest, part.of_speed)?.max(part.along(self)?);
            // Sums in the order of the shaft from the front.
            let time_s = times_s.iter().rev().fold(self.time_s(part, i, gripped), |sum, s| sum + s);
            if !more(i, (time_s, 1.0 - share)) {
                break;
            }
        }
        Some(())
    }

    /// Time of a part that begins at station `from`, s. Work that cannot be divided counts where it ends.
    fn time_s(&self, part: &Part<'_>, from: usize, gripped: bool) -> f64 {
        let (segment, to_mm) = (part.segment, self.grid.at(part.to));
        let whole = divisible(segment) || to_mm >= segment.to_mm - SAME_MM;
        if !whole || segment.work == Work::PartOff {
            return 0.0;
        }
        let cap_rpm = if part.rpm < part.wanted_rpm { part.rpm } else { f64::INFINITY };
        self.ground.rig.piece_time(segment, to_mm - self.grid.at(from), gripped, cap_rpm).total_s()
    }

    /// The largest utilisation so far and that of the tasks at a station. At the part-off these include the tasks
    /// behind it, for which bar is fed on.
    fn drilled(&self, grip: usize, end: usize, station: usize, state: &State, mut largest: f64) -> Option<f64> {
        let here = self.grid.stations[station].tasks.iter().map(|t| (*t, *state));
        let behind = self.grid.beyond.iter().filter(|_| station == end && end == self.grid.last());
        for (task, state) in here.chain(behind.map(|(t, turned_mm)| (*t, self.fed_on(grip, *turned_mm)))) {
            let task = &self.ground.tasks[task];
            if state.turned_mm > self.grid.at(end) + SAME_MM {
                let found = checks::fed_on(self.ground.rig, self.ground.segments, &state).ok()?;
                largest = grown(largest, found.map_or(0.0, |f| f.utilisation))?;
            }
            for found in checks::at_event(self.ground.rig, &state, Event::Works(task)) {
                largest = grown(largest, found.ok()?.utilisation)?;
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

    /// Adds a state to the part. None: the state fails.
    fn take(&mut self, all: &Unguided<'_>, seen: &(State, Posed), knows: Knows, largest: &mut f64) -> Option<()> {
        let (state, posed) = seen;
        let (rig, segment) = (all.ground.rig, self.segment);
        let view = View { rig, state, answers: &posed.at_rest, segment, rpm: 0.0 };
        let plain = |check: &&Check| !check.depends_on_speed() && check.name != chatter::NAME;
        for found in checks::CHECKS.iter().filter(plain).filter_map(|c| c.at(&view)) {
            *largest = grown(*largest, found.utilisation)?;
        }
        let [most, least] = self.flexibilities;
        self.flexibilities = [most.max(posed.at_rest.tool_mm_per_n), least.min(posed.at_rest.tool_mm_per_n)];
        // The costly checks come last: critical speeds, and modes for chatter.
        let known = if knows == Knows::Margins { largest.min(1.0) } else { 1.0 };
        self.take_speed(rig, state, posed, known)?;
        let found = match chatter::bound(&view) {
            Some(safe) if !safe.passes() => chatter::exact_above(rig, state, segment, known),
            safe => safe,
        };
        *largest = grown(*largest, found.map_or(0.0, |f| f.utilisation))?;
        Some(())
    }

    /// Adds the speed that a state allows, and the checks that depend on the speed. None: one fails.
    fn take_speed(&mut self, rig: &Rig<'_>, state: &State, posed: &Posed, known: f64) -> Option<()> {
        let segment = self.segment;
        let needed = rig.critical_needed_rpm(state, &posed.at_rest, self.wanted_rpm, [known; BY_SPEED]);
        if posed.swings_above(needed / (1.0 - SLOWING_GUARD) * (1.0 + COUNT_GUARD)) {
            return Some(());
        }
        let answers = posed.with_critical();
        self.allowed_rpm = self.allowed_rpm.min(rig.allowed_rpm(state, &answers).rpm);
        let floor = rig.job.cutting.speed_floor * self.wanted_rpm;
        let rpm = self.wanted_rpm.min(self.allowed_rpm.max(floor));
        self.open.push((*state, answers));
        // At another speed the utilisation of every open state changes.
        let news = if rpm == self.rpm { self.open.len() - 1 } else { 0 };
        let known = if rpm == self.rpm { self.of_speed } else { 0.0 };
        self.rpm = rpm;
        let most = |(state, answers): &(State, Answers)| {
            let view = View { rig, state, answers, segment, rpm };
            checks::by_speed(&view).map(|f| f.utilisation).fold(0.0, f64::max)
        };
        self.of_speed = self.open[news..].iter().map(most).fold(known, f64::max);
        (self.of_speed <= PASSES_UP_TO).then_some(())
    }

    /// Utilisation of `cut` along the part. None: it does not pass.
    fn along(&self, all: &Unguided<'_>) -> Option<f64> {
        let found = checks::cut::along(all.ground.rig, self.segment, &self.flexibilities);
        let share = found.map_or(0.0, |f| f.utilisation);
        (share <= PASSES_UP_TO).then_some(share)
    }
}
