//! Settles a draft: divides it into pieces, gives each piece the highest speed that its states allow, and finds the
//! largest utilisation of every check on closely spaced states.

use crate::planner::places::ground::Ground;
use crate::planner::plan::draft::Draft;
use crate::process::checks::{self, AtEvent, BY_SPEED, Event, Finding, View};
use crate::process::drive::POWER;
use crate::process::segments::{Segment, Work};
use crate::process::speed::{BAR_FEED, COUNT_GUARD, Shares};
use crate::process::stops::SAME_MM;
use crate::process::timing::PieceTime;
use crate::process::{Answers, Posed, State};
use crate::spread::{Largest, spread};

/// States in the trace of the chart are at least the length divided by this apart.
const TRACE_POINTS: f64 = 400.0;
/// A row of states that break is divided into this many parts, and the states at the borders are told.
const BROKEN_LOOKS: usize = 4;

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
    /// The check that lowered the speed; none: full speed.
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
    /// Index of the piece in cut; none: the state is one between cuts.
    pub piece: Option<usize>,
    /// What the checks found. A check that depends on the speed may be missing where the critical speed is high enough
    /// for its utilisation to be no more than one found elsewhere. At a traced state none is missing.
    pub findings: Vec<Finding>,
    /// Whether it is a point of the trace, with all its findings.
    pub traced: bool,
}

/// The stretch of a piece, before its speed and time are known.
#[derive(Debug, Clone, Copy)]
struct Stretch {
    stage: usize,
    from_mm: f64,
    to_mm: f64,
}

/// How much of a settled draft is worked out.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Detail {
    /// The largest utilisation, and the states that break.
    Largest,
    /// The largest utilisation, as long as it is below this number.
    Safer(f64),
    /// Also the largest utilisation of every check in every stage, and the points of the trace.
    All,
}

/// A settled draft.
#[derive(Debug, Clone, Default)]
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

    /// Index of the stage with the smallest margin; of equals the first.
    pub fn tightest(&self) -> usize {
        let share = |look: &Look| look.findings.iter().map(|f| f.utilisation).fold(0.0, f64::max);
        let worst = self.looks.iter().map(|l| (share(l), l.stage));
        worst.fold((0.0, 0), |most, here| if here.0 > most.0 { here } else { most }).1
    }

    /// States that do not pass. Of each row of such states: both ends, the worst, and some between. A finding that
    /// belongs to a whole piece stands at each of its states, so not all of them are returned.
    pub fn broken(&self) -> Vec<State> {
        let passes = |look: &Look| look.findings.iter().all(Finding::passes);
        let share = |look: &Look| look.findings.iter().map(|f| f.utilisation).fold(0.0, f64::max);
        let mut broken = Vec::new();
        for run in self.looks.chunk_by(|a, b| passes(a) == passes(b) && a.piece == b.piece && a.stage == b.stage) {
            if run.first().is_none_or(passes) {
                continue;
            }
            let worst = run.iter().enumerate().fold(0, |w, (i, l)| if share(l) > share(&run[w]) { i } else { w });
            let mut some: Vec<usize> = (0..=BROKEN_LOOKS).map(|i| i * (run.len() - 1) / BROKEN_LOOKS).collect();
            some.push(worst);
            some.sort_unstable();
            some.dedup();
            broken.extend(some.into_iter().map(|i| run[i].state));
        }
        broken
    }
}

impl Ground<'_> {
    /// Settles a draft on states at most `step_mm` apart.
    pub fn settle(&self, draft: &Draft, step_mm: f64) -> Settled {
        self.settled(draft, step_mm, Detail::All)
    }

    /// Settles a draft only as far as time, margin and the states that break need it.
    pub fn judge(&self, draft: &Draft, step_mm: f64) -> Settled {
        self.settled(draft, step_mm, Detail::Largest)
    }

    /// Settles a draft whose margin is larger than `than`. None: it is not, and the work ends as soon as that is known.
    /// The stage `first` (index) is looked at before the others.
    pub fn safer(&self, draft: &Draft, step_mm: f64, than: f64, first: usize) -> Option<Settled> {
        let (largest, below) = (Largest::default(), 1.0 - than);
        // Events between cuts come first: they are few, and moving a place seldom changes them.
        let events = self.events(draft);
        events.iter().flatten().flat_map(|look| &look.findings).for_each(|f| largest.note(f.utilisation));
        let mut pieces = Vec::new();
        let rest = (0..draft.stages.len()).filter(|index| *index != first);
        for stages in [vec![first], rest.collect()] {
            if largest.so_far() >= below {
                return None;
            }
            let stretches = stages.into_iter().flat_map(|index| self.stretches(draft, index)).collect();
            pieces.extend(self.pieces(draft, stretches, (step_mm, Detail::Safer(below), &largest)));
        }
        // Pieces are left out as soon as one reaches the limit.
        (largest.so_far() < below).then(|| put_together(pieces, events)).filter(|settled| settled.margin() > than)
    }

    fn settled(&self, draft: &Draft, step_mm: f64, detail: Detail) -> Settled {
        let stretches = (0..draft.stages.len()).flat_map(|index| self.stretches(draft, index)).collect();
        let pieces = self.pieces(draft, stretches, (step_mm, detail, &Largest::default()));
        put_together(pieces, self.events(draft))
    }

    /// Pieces with their states. They share only the largest utilisation so far. They are many enough for all cores to
    /// end at about the same time.
    fn pieces(&self, draft: &Draft, stretches: Vec<Stretch>, how: (f64, Detail, &Largest)) -> Vec<(Piece, Vec<Look>)> {
        spread(&stretches, |stretch, _| self.settle_piece(draft, stretch, how)).into_iter().flatten().collect()
    }

    /// The pieces of a stage, without speed and time.
    fn stretches(&self, draft: &Draft, index: usize) -> Vec<Stretch> {
        let stage = &draft.stages[index];
        let mut marks = vec![stage.from_mm, stage.to_mm];
        marks.extend(stage.regrips_mm.iter().copied());
        marks.extend(self.segments.iter().map(|s| s.to_mm));
        marks.retain(|t| *t >= stage.from_mm && *t <= stage.to_mm);
        marks.sort_by(f64::total_cmp);
        marks.dedup_by(|b, a| *b - *a < SAME_MM);
        let stretch = |ends: &[f64]| Stretch { stage: index, from_mm: ends[0], to_mm: ends[1] };
        marks.windows(2).map(stretch).collect()
    }

    /// A state under a stage's grip.
    fn state(&self, nose_mm: Option<f64>, turned_mm: f64, last_regrip_mm: f64, piece_end_mm: f64) -> State {
        State {
            turned_mm,
            counter: self.rig.counter(nose_mm, turned_mm),
            guide: self.rig.guide(turned_mm, last_regrip_mm, piece_end_mm),
        }
    }

    /// The events between cuts of each stage.
    fn events(&self, draft: &Draft) -> Vec<Vec<Look>> {
        (0..draft.stages.len()).map(|index| self.events_of(draft, index)).collect()
    }

    fn events_of(&self, draft: &Draft, index: usize) -> Vec<Look> {
        let stage = &draft.stages[index];
        let mut looks = Vec::new();
        let mut note = |state: State, found: AtEvent| {
            let findings: Vec<Finding> = found.flatten().collect();
            if !findings.is_empty() {
                looks.push(Look { stage: index, state, piece: None, findings, traced: false });
            }
        };
        for (task, t) in self.moments {
            let beyond = index + 1 == draft.stages.len() && *t > stage.to_mm;
            let inside = *t <= stage.to_mm + SAME_MM && (*t > stage.from_mm + SAME_MM || index == 0);
            if !beyond && !inside {
                continue;
            }
            // At the same turned length, work comes before a re-grip (`AtStop`).
            let before = stage.regrips_mm.iter().rev().find(|m| **m < *t - SAME_MM);
            let last = before.copied().unwrap_or_else(|| draft.last_regrip_before(index));
            let s = self.state(stage.nose_mm, *t, last, draft.piece_end(index, *t));
            note(s, checks::at_event(self.rig, &s, Event::Works(&self.tasks[*task])));
        }
        if index == 0 {
            let start = self.state(stage.nose_mm, 0.0, 0.0, draft.piece_end(0, 0.0));
            note(start, checks::at_event(self.rig, &start, Event::Begins));
        }
        let last = if stage.regrip_at_end { stage.to_mm } else { draft.last_regrip_at(index, stage.to_mm) };
        let end = self.state(stage.nose_mm, stage.to_mm, last, stage.to_mm);
        if index + 1 < draft.stages.len() {
            note(end, checks::at_event(self.rig, &end, Event::LetsGo));
        } else if let Some(nose) = stage.nose_mm {
            note(end, checks::of_last_grip(self.rig, nose, self.rig.held_mm(nose)));
        }
        looks
    }

    /// A piece and its states. None: the largest utilisation so far already decides, so the piece is not needed. The
    /// states get the index of their piece when all pieces are put in order.
    fn settle_piece(
        &self,
        draft: &Draft,
        stretch: &Stretch,
        (step_mm, detail, largest): (f64, Detail, &Largest),
    ) -> Option<(Piece, Vec<Look>)> {
        if matches!(detail, Detail::Safer(below) if largest.so_far() >= below) {
            return None;
        }
        let Stretch { stage, from_mm, to_mm } = *stretch;
        let index = crate::process::segments::segment_at(self.segments, 0.5 * (from_mm + to_mm));
        let segment = &self.segments[index];
        let (nose_mm, last) = (draft.stages[stage].nose_mm, draft.last_regrip_at(stage, from_mm));
        let piece_end_mm = draft.piece_end(stage, to_mm);
        let places_mm = self.places_mm(stretch, step_mm);
        let posed = |i: usize| {
            crate::spread::checkpoint();
            let s = self.state(nose_mm, places_mm[i], last, piece_end_mm);
            self.rig.posed(&s).ok().map(|p| (s, p))
        };
        // A piece that fails usually fails at one of its ends, so these are looked at first.
        let [rear, front] = [places_mm.len() - 1, 0].map(posed);
        if let Detail::Safer(below) = detail {
            for (state, p) in rear.iter().chain(&front) {
                let view = View { rig: self.rig, state, answers: &p.at_rest, segment, rpm: 0.0 };
                checks::at_rest(&view).for_each(|f| largest.note(f.utilisation));
            }
            if largest.so_far() >= below {
                return None;
            }
        }
        let inner = (1..places_mm.len() - 1).filter_map(posed);
        let states: Vec<(State, Posed)> = front.into_iter().chain(inner).chain(rear).collect();
        let gripped = nose_mm.is_some();
        let wanted = self.rig.segment_rpm(segment, gripped);
        // Bar that is fed on uncut, for work behind the part-off, turns no faster than at part-off.
        let fed = (segment.work == Work::PartOff && draft.fed_to_mm > to_mm + SAME_MM).then_some(draft.fed_to_mm);
        let fed = fed.map(|t| self.state(nose_mm, t, last, piece_end_mm));
        let fed: Vec<(State, Posed)> = fed.and_then(|s| Some((s, self.rig.posed(&s).ok()?))).into_iter().collect();
        let slowest = [self.rig.slowest(&states, wanted), self.rig.slowest(&fed, wanted)];
        let slowest = slowest.into_iter().flatten().min_by(|a, b| a.rpm.total_cmp(&b.rpm));
        let floor = self.rig.job.cutting.speed_floor * wanted;
        let rpm = slowest.map_or(wanted, |a| a.rpm.max(floor));
        let traced = match detail {
            Detail::Largest | Detail::Safer(_) => Vec::new(),
            Detail::All => self.traced(&states),
        };
        let found = self.found(&states, segment, rpm, &traced, largest.so_far());
        let flexibilities: Vec<f64> = states.iter().map(|(_, p)| p.at_rest.tool_mm_per_n).collect();
        // This finding belongs to the whole piece, so each of its states carries it.
        let along = checks::cut::along(self.rig, segment, &flexibilities);
        let mut looks = Vec::with_capacity(states.len());
        for (i, ((state, _), mut findings)) in states.into_iter().zip(found).enumerate() {
            findings.iter().for_each(|f| largest.note(f.utilisation));
            findings.extend(along);
            looks.push(Look { stage, state, piece: None, findings, traced: traced.get(i) == Some(&true) });
        }
        for (state, p) in fed {
            let view = View { rig: self.rig, state: &state, answers: &p.with_critical(), segment, rpm };
            let findings: Vec<Finding> = checks::all(&view).collect();
            findings.iter().for_each(|f| largest.note(f.utilisation));
            looks.push(Look { stage, state, piece: None, findings, traced: false });
        }
        let cap = if slowest.is_some() { rpm } else { f64::INFINITY };
        let time = match segment.work {
            Work::PartOff => PieceTime::default(),
            _ => self.rig.stretch_time(segment, [from_mm, to_mm], gripped, cap),
        };
        let feeder = (segment.work != Work::AsDrawn && self.rig.bar_feed_slows(segment, gripped)).then_some(BAR_FEED);
        let power = self.rig.power_slows(segment, gripped).then_some(POWER);
        let slowed_by = slowest.map(|a| a.check).or(power).or(feeder);
        Some((Piece { segment: index, stage, from_mm, to_mm, rpm, slowed_by, time }, looks))
    }

    /// Turned lengths of a piece to look at, ascending: evenly spaced with both ends, and those that `look_at_mm` adds.
    fn places_mm(&self, &Stretch { from_mm, to_mm, .. }: &Stretch, step_mm: f64) -> Vec<f64> {
        let steps = ((to_mm - from_mm) / step_mm).ceil().max(1.0);
        let mut places: Vec<f64> =
            (0..=steps as usize).map(|i| from_mm + (to_mm - from_mm) * i as f64 / steps).collect();
        let inside = |t: &f64| *t > from_mm + SAME_MM && *t < to_mm - SAME_MM;
        let asked = self.look_at_mm.iter().copied().filter(inside);
        let asked: Vec<f64> = asked.filter(|t| places.iter().all(|p| (p - t).abs() > SAME_MM)).collect();
        if !asked.is_empty() {
            places.extend(asked);
            places.sort_by(f64::total_cmp);
        }
        places
    }

    /// Which states of a piece are points of the trace: both ends, and states between them as far apart as the chart
    /// needs.
    fn traced(&self, states: &[(State, Posed)]) -> Vec<bool> {
        let spacing = self.rig.job.parted_at_mm() / TRACE_POINTS;
        let mut last = f64::NEG_INFINITY;
        let far = |(i, (s, _)): (usize, &(State, Posed))| {
            let is = i + 1 == states.len() || s.turned_mm - last >= spacing;
            if is {
                last = s.turned_mm;
            }
            is
        };
        states.iter().enumerate().map(far).collect()
    }

    /// The findings in each state of a piece. Traced states are worked out in full. Another state is worked out where a
    /// check may use more than in any state before; without a trace, where it may use more than the largest utilisation
    /// of all.
    fn found(
        &self,
        states: &[(State, Posed)],
        segment: &Segment,
        rpm: f64,
        traced: &[bool],
        largest: f64,
    ) -> Vec<Vec<Finding>> {
        let rig = self.rig;
        let mut found: Vec<Option<Vec<Finding>>> = vec![None; states.len()];
        let at_rest: Vec<Vec<Finding>> = states
            .iter()
            .map(|(s, p)| checks::at_rest(&View { rig, state: s, answers: &p.at_rest, segment, rpm }).collect())
            .collect();
        let largest = at_rest.iter().flatten().map(|f| f.utilisation).fold(largest, f64::max);
        // For each check that depends on the speed: the largest utilisation so far.
        let mut most = if traced.is_empty() { [largest; BY_SPEED] } else { [0.0; BY_SPEED] };
        let mut full = |i: usize, most: &mut Shares| {
            let (s, p) = &states[i];
            let answers: Answers = p.with_critical();
            let view = View { rig, state: s, answers: &answers, segment, rpm };
            let findings = checks::completed(at_rest[i].clone(), &view);
            for finding in &findings {
                let slot = checks::by_speed_slot(finding.check);
                if let Some(most) = slot.and_then(|i| most.get_mut(i)) {
                    *most = most.max(finding.utilisation);
                }
            }
            found[i] = Some(findings);
            if traced.is_empty() {
                let all = most.iter().copied().fold(0.0, f64::max);
                *most = [all; BY_SPEED];
            }
        };
        for i in (0..states.len()).filter(|i| traced.get(*i) == Some(&true)) {
            full(i, &mut most);
        }
        for i in (0..states.len()).rev().filter(|i| traced.get(*i) != Some(&true)) {
            let (s, p) = &states[i];
            // A state that breaks is always worked out, so the share asked for is 1 at most.
            let shares = most.map(|m| m.min(1.0));
            let needed = rig.critical_needed_rpm(s, &p.at_rest, rpm, shares);
            if !p.swings_above(needed * (1.0 + COUNT_GUARD)) {
                full(i, &mut most);
            }
        }
        found.into_iter().zip(at_rest).map(|(found, at_rest)| found.unwrap_or(at_rest)).collect()
    }
}

/// All pieces and all events between cuts, in the order of the stages.
fn put_together(mut pieces: Vec<(Piece, Vec<Look>)>, events: Vec<Vec<Look>>) -> Settled {
    pieces.sort_by_key(|(piece, _)| piece.stage);
    let mut pieces = pieces.into_iter().peekable();
    let mut settled = Settled::default();
    for (index, events) in events.into_iter().enumerate() {
        while let Some((piece, looks)) = pieces.next_if(|(piece, _)| piece.stage == index) {
            let number = settled.pieces.len();
            settled.looks.extend(looks.into_iter().map(|look| Look { piece: Some(number), ..look }));
            settled.pieces.push(piece);
        }
        settled.looks.extend(events);
    }
    settled.run_s = settled.pieces.iter().map(|p| p.time.total_s()).sum();
    settled
}
