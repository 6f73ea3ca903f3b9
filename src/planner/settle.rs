//! Settles a draft: cuts it into pieces, gives each the highest speed its states allow, and finds the worst of every
//! check on a fine row of states.

use super::draft::Draft;
use crate::process::checks::{self, Finding, View};
use crate::process::features::Task;
use crate::process::segments::{Segment, Work};
use crate::process::stops::SAME_MM;
use crate::process::timing::PieceTime;
use crate::process::{Answers, Counter, Rig, State};

/// A piece of a segment between two stops.
#[derive(Debug, Clone)]
pub struct Piece {
    /// Index of the segment.
    pub segment: usize,
    /// Index of the stage.
    pub stage: usize,
    /// Front end, mm.
    pub from_mm: f64,
    /// Rear end, mm.
    pub to_mm: f64,
    /// Speed of the last travel, rev/min.
    pub rpm: f64,
    /// The check that asked for a lower speed.
    pub slowed_by: Option<&'static str>,
    /// Time.
    pub time: PieceTime,
}

/// A state that was looked at.
#[derive(Debug, Clone)]
pub struct Look {
    /// Index of the stage.
    pub stage: usize,
    /// The state.
    pub state: State,
    /// Index of the piece in cut; none for what happens between cuts.
    pub piece: Option<usize>,
    /// What was found.
    pub findings: Vec<Finding>,
}

/// A settled draft.
#[derive(Debug, Clone)]
pub struct Settled {
    /// Pieces, in order.
    pub pieces: Vec<Piece>,
    /// States, in order.
    pub looks: Vec<Look>,
    /// Cutting and overheads, s.
    pub run_s: f64,
}

impl Settled {
    /// Smallest `1 - utilisation`.
    pub fn margin(&self) -> f64 {
        let shares = self.looks.iter().flat_map(|l| &l.findings).map(|f| f.utilisation);
        1.0 - shares.fold(0.0, f64::max)
    }

    /// Turned length of the first state that does not pass.
    pub fn first_breach_mm(&self) -> Option<f64> {
        self.looks.iter().find(|l| l.findings.iter().any(|f| !f.passes())).map(|l| l.state.turned_mm)
    }
}

/// What a draft is settled against.
#[derive(Debug, Clone, Copy)]
pub struct Ground<'a> {
    /// The rig.
    pub rig: &'a Rig<'a>,
    /// Its segments.
    pub segments: &'a [Segment],
    /// Its tasks, and the turned lengths at which each is done.
    pub tasks: &'a [Task],
    /// Turned length of each task, mm.
    pub moments: &'a [(usize, f64)],
}

impl Ground<'_> {
    /// Settles a draft on states no further apart than `step_mm`.
    pub fn settle(&self, draft: &Draft, step_mm: f64) -> Settled {
        let mut settled = Settled { pieces: Vec::new(), looks: Vec::new(), run_s: 0.0 };
        for stage in 0..draft.stages.len() {
            self.settle_stage(draft, stage, step_mm, &mut settled);
        }
        settled.run_s = settled.pieces.iter().map(|p| p.time.total_s()).sum();
        settled
    }

    fn settle_stage(&self, draft: &Draft, index: usize, step_mm: f64, settled: &mut Settled) {
        let stage = &draft.stages[index];
        let state = |t: f64, last: f64, piece_end: f64| State {
            turned_mm: t,
            counter: Counter::of(stage.nose_mm),
            guide: self.rig.guide(t, last, piece_end),
        };
        let last_at = |t: f64| {
            let inside = stage.regrips_mm.iter().rev().find(|m| **m <= t + SAME_MM);
            inside.copied().unwrap_or_else(|| draft.last_regrip_before(index))
        };
        let mut marks = vec![stage.from_mm, stage.to_mm];
        marks.extend(stage.regrips_mm.iter().copied());
        marks.extend(self.segments.iter().map(|s| s.to_mm));
        marks.retain(|t| *t >= stage.from_mm && *t <= stage.to_mm);
        marks.sort_by(f64::total_cmp);
        marks.dedup_by(|b, a| *b - *a < SAME_MM);
        for ends in marks.windows(2) {
            let last = last_at(ends[0]);
            self.settle_piece(
                index,
                [ends[0], ends[1]],
                step_mm,
                |t| state(t, last, draft.piece_end(index, ends[1])),
                settled,
            );
        }
        for (task, t) in self.moments {
            let beyond = index + 1 == draft.stages.len() && *t > stage.to_mm;
            let inside = *t <= stage.to_mm + SAME_MM && (*t > stage.from_mm + SAME_MM || index == 0);
            let (true, Some(thrust)) = (beyond || inside, self.tasks[*task].thrust_n) else { continue };
            // Just after an inner re-grip at the same length would be as good; the moment before it is taken.
            let before = stage.regrips_mm.iter().rev().find(|m| **m < *t - SAME_MM);
            let last = before.copied().unwrap_or_else(|| draft.last_regrip_before(index));
            let s = state(*t, last, draft.piece_end(index, *t));
            let found = checks::drill::find(self.rig, &s, self.tasks[*task].at_mm, thrust);
            self.note(index, s, found.ok(), settled);
        }
        if index == 0 {
            let start = state(0.0, 0.0, draft.piece_end(0, 0.0));
            self.note(index, start, checks::push::front(self.rig), settled);
        }
        let Some(nose) = stage.nose_mm else { return };
        let last = if stage.regrip_at_end { stage.to_mm } else { last_at(stage.to_mm) };
        let end = state(stage.to_mm, last, stage.to_mm);
        if index + 1 < draft.stages.len() {
            self.note(index, end, checks::release::find(self.rig, &end).ok(), settled);
        } else {
            self.note(index, end, checks::torque::find(self.rig, nose), settled);
            self.note(index, end, checks::push::back(self.rig, nose), settled);
            if let Ok(found) = checks::back::find(self.rig, nose) {
                self.note(index, end, found, settled);
            }
        }
    }

    fn note(&self, stage: usize, state: State, found: Option<Finding>, settled: &mut Settled) {
        settled.looks.push(Look { stage, state, piece: None, findings: found.into_iter().collect() });
    }

    fn settle_piece(
        &self,
        stage: usize,
        [from_mm, to_mm]: [f64; 2],
        step_mm: f64,
        state: impl Fn(f64) -> State,
        settled: &mut Settled,
    ) {
        let index = crate::process::segments::segment_at(self.segments, 0.5 * (from_mm + to_mm));
        let segment = &self.segments[index];
        let steps = ((to_mm - from_mm) / step_mm).ceil().max(1.0);
        let states: Vec<(State, Answers)> = (0..=steps as usize)
            .filter_map(|i| {
                crate::spread::breathe();
                let s = state(from_mm + (to_mm - from_mm) * i as f64 / steps);
                self.rig.answers(&s).ok().map(|a| (s, a))
            })
            .collect();
        let gripped = states.first().is_some_and(|(s, _)| s.counter.grip_mm().is_some());
        let wanted = self.rig.segment_rpm(segment, gripped);
        let allowed = states.iter().map(|(s, a)| self.rig.allowed_rpm(s, a));
        let slowest = allowed.min_by(|a, b| a.rpm.total_cmp(&b.rpm)).filter(|a| a.rpm < wanted);
        let floor = self.rig.job.cutting.speed_floor * wanted;
        let rpm = slowest.map_or(wanted, |a| a.rpm.max(floor));
        let piece = settled.pieces.len();
        for (s, a) in &states {
            let view = View { rig: self.rig, state: s, answers: a, segment, rpm };
            settled.looks.push(Look { stage, state: *s, piece: Some(piece), findings: checks::all(&view).collect() });
        }
        let flexibilities: Vec<f64> = states.iter().map(|(_, a)| a.tool_mm_per_n).collect();
        let along = checks::cut::along(self.rig, segment, &flexibilities);
        // It belongs to the piece as a whole, so every state of it carries it.
        for look in settled.looks.iter_mut().filter(|l| l.piece == Some(piece)) {
            look.findings.extend(along);
        }
        let cap = if slowest.is_some() { rpm } else { f64::INFINITY };
        let time = match segment.work {
            Work::PartOff => PieceTime::default(),
            _ => self.rig.piece_time(segment, to_mm - from_mm, gripped, cap),
        };
        let slowed_by = slowest.map(|a| a.check);
        settled.pieces.push(Piece { segment: index, stage, from_mm, to_mm, rpm, slowed_by, time });
    }
}
