//! Proves the states of every stage, and the events between cuts: hand-overs, work of tools at stops, part-off, the rear end.

use super::grips::held_mm;
use super::moments::{last_regrip, moment};
use super::{Breach, Case, SAME_MM, Verified, mm};
use crate::job::plan::{AtStop, Done, Operation, TravelCut};
use crate::lang::{self, Measure};
use crate::process::State;
use crate::process::answers::FEW_STEPS;
use crate::process::checks::{self, AtEvent, BY_SPEED, Event, Finding, View, chatter};
use crate::process::segments::{Segment, Work};
use crate::process::speed::COUNT_GUARD;
use crate::process::stops::SAME_MM as ONE_STOP_MM;
use crate::say;
use crate::spread::spread;

/// Largest distance between two states that are checked, mm.
const STEP_MM: f64 = 0.9;
/// Inner states are shifted by this share of their distance, so that they do not fall on the even grid of the planner.
const OFF_GRID: f64 = 0.381_966;

/// The part of a segment that a stage cuts without a stop: a piece.
struct Stretch<'a> {
    stage: usize,
    segment: &'a Segment,
    from_mm: f64,
    to_mm: f64,
}

/// Whether the told cuts are those that are due.
fn same_cuts(told: &[TravelCut], due: &[TravelCut]) -> bool {
    let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * b.abs().max(1e-3);
    let same = |(a, b): (&TravelCut, &TravelCut)| {
        let depths = a.depths_mm.len() == b.depths_mm.len();
        let depths = depths && a.depths_mm.iter().zip(&b.depths_mm).all(|(a, b)| near(*a, *b));
        a.tools == b.tools && depths && near(a.feed_mm, b.feed_mm) && near(a.rpm, b.rpm)
    };
    told.len() == due.len() && told.iter().zip(due).all(same)
}

impl<'a> Case<'a> {
    pub(super) fn cuts(&mut self) {
        let (plan, rig, segments) = (self.plan, self.rig, self.segments);
        let stretches: Vec<Stretch<'a>> = (0..plan.stages.len()).flat_map(|index| self.stretches(index)).collect();
        // Pieces share no data, so the findings do not depend on the order in which cores work.
        let pieces = spread(&stretches, |stretch, _| {
            let mut case = Case { plan, rig, segments, verified: Verified::default(), bounded: Vec::new() };
            case.piece(stretch);
            (case.verified, case.bounded)
        });
        for (piece, bounded) in pieces {
            self.verified.states += piece.states;
            for ((stage, _), (found, turned_mm)) in piece.worst {
                self.verified.note(stage, turned_mm, found);
            }
            self.bounded.extend(bounded);
            piece.breaches.into_iter().for_each(|breach| self.worst(breach));
        }
    }

    /// The pieces of a stage (index).
    fn stretches(&self, index: usize) -> Vec<Stretch<'a>> {
        let stage = &self.plan.stages[index];
        let mut all = Vec::new();
        for segment in self.segments {
            let mut marks = vec![segment.from_mm.max(stage.from_mm)];
            let inner = |t: f64| t > marks[0] + SAME_MM && t < segment.to_mm.min(stage.to_mm) - SAME_MM;
            let regrips: Vec<f64> = stage.regrips_mm.iter().copied().filter(|t| inner(*t)).collect();
            marks.extend(regrips);
            marks.push(segment.to_mm.min(stage.to_mm));
            let long = marks.windows(2).filter(|ends| ends[1] - ends[0] > SAME_MM);
            all.extend(long.map(|ends| Stretch { stage: index, segment, from_mm: ends[0], to_mm: ends[1] }));
        }
        all
    }

    /// Proves one piece: the plan lists it, its speed is one the job allows, and its states pass.
    fn piece(&mut self, stretch: &Stretch<'a>) {
        let Stretch { stage, segment, from_mm, to_mm } = *stretch;
        let number = Some(stage + 1);
        let gripped = self.plan.stages[stage].grip.is_some();
        let wanted = self.rig.segment_rpm(segment, gripped);
        let rpm = if segment.work == Work::PartOff {
            self.plan.part_off_rpm
        } else {
            let listed = self.plan.segments.iter().find(|s| {
                s.stage == stage + 1
                    && s.section == segment.section + 1
                    && (s.from_mm - from_mm).abs() < SAME_MM
                    && (s.to_mm - to_mm).abs() < SAME_MM
            });
            if let Some(s) = listed {
                let feed = segment.finishing().map_or(0.0, |t| t.feed_mm);
                let due = self.rig.told_cuts(segment, gripped, s.rpm);
                // A plan of an older version does not tell its cuts; without a tool list it has one tool for all.
                let told = s.cuts.is_empty() && self.rig.job.tool_list.is_empty() || same_cuts(&s.cuts, &due);
                let other_tools = s.travels != segment.travels.len() || s.lag_mm != segment.lag_mm || !told;
                if s.feed_mm > feed * (1.0 + 1e-9) || other_tools || s.work != segment.work.key() {
                    let text = say!("proof-cut-not-as-asked", from = mm(from_mm), to = mm(to_mm));
                    self.breach(number, "segments", text);
                }
            }
            listed.map(|s| s.rpm)
        };
        let Some(rpm) = rpm else {
            self.breach(number, "segments", say!("proof-cut-missing", from = mm(from_mm), to = mm(to_mm)));
            return;
        };
        if rpm > wanted * (1.0 + 1e-9) || rpm < self.rig.job.cutting.speed_floor * wanted * (1.0 - 1e-6) {
            let floor = self.rig.job.cutting.speed_floor * wanted;
            let (from, to, rpm) = (mm(from_mm), mm(to_mm), format!("{rpm:.0}"));
            let (least, wanted) = (format!("{floor:.0}"), format!("{wanted:.0}"));
            let text = if least == wanted {
                say!("proof-speed", from = from, to = to, rpm = rpm, wanted = wanted)
            } else {
                say!("proof-speed-range", from = from, to = to, rpm = rpm, least = least, wanted = wanted)
            };
            self.breach(number, "speed", text);
        }
        if let Some(most) = self.rig.job.machine.bar_feed_max_rpm.filter(|most| rpm > most * (1.0 + 1e-9)) {
            let (from, to, rpm) = (mm(from_mm), mm(to_mm), format!("{rpm:.0}"));
            self.breach(
                number,
                "bar_feed",
                say!("proof-bar-feed", from = from, to = to, rpm = rpm, most = most.to_string()),
            );
        }
        let steps = ((to_mm - from_mm) / STEP_MM).ceil().max(1.0);
        let step = (to_mm - from_mm) / steps;
        let inner = (0..steps as usize).map(|i| from_mm + step * (i as f64 + OFF_GRID));
        let last_regrip = last_regrip(self.plan, stage, from_mm, true);
        let mut flexibilities = Vec::with_capacity(steps as usize + 2);
        let places: Vec<f64> = std::iter::once(from_mm).chain(inner).chain([to_mm]).collect();
        // The last state of a piece is usually the worst. Its utilisation makes the critical speed of most other states unnecessary.
        let used = self.used(stage, (segment, rpm), to_mm, last_regrip);
        for t in places {
            flexibilities.extend(self.state(stage, (segment, rpm), (t, used), last_regrip));
        }
        if let Some(found) = checks::cut::along(self.rig, segment, &flexibilities) {
            // The finding belongs to the whole piece. Its middle state stands for it when the job is planned again.
            let middle = moment(self.rig, self.plan, stage, 0.5 * (from_mm + to_mm), last_regrip);
            self.finding(stage, from_mm, found, Some(middle));
        }
    }

    /// Largest utilisation of the checks that depend on the speed, at one turned length; 0 if the bar is not held.
    fn used(&self, stage: usize, (segment, rpm): (&Segment, f64), turned_mm: f64, last_regrip_mm: f64) -> f64 {
        let state = moment(self.rig, self.plan, stage, turned_mm, last_regrip_mm);
        let Ok(answers) = self.rig.answers(&state) else { return 0.0 };
        let view = View { rig: self.rig, state: &state, answers: &answers, segment, rpm };
        checks::by_speed(&view).map(|f| f.utilisation).fold(0.0, f64::max)
    }

    /// Proves one state and returns the flexibility at the tool, mm/N. The critical speed is computed only if a check that depends on it
    /// may fail, or may have a larger utilisation than `used` and than all checks of the piece so far.
    fn state(
        &mut self,
        stage: usize,
        (segment, rpm): (&'a Segment, f64),
        (turned_mm, used): (f64, f64),
        last_regrip_mm: f64,
    ) -> Option<f64> {
        let state = moment(self.rig, self.plan, stage, turned_mm, last_regrip_mm);
        self.verified.states += 1;
        crate::spread::checkpoint();
        let Ok(posed) = self.rig.posed(&state) else {
            self.breach(
                Some(stage + 1),
                "support",
                say!("proof-not-held-at", turned = Measure::Place.number(turned_mm)),
            );
            return None;
        };
        let view = View { rig: self.rig, state: &state, answers: &posed.at_rest, segment, rpm };
        let at_rest: Vec<Finding> = checks::at_rest(&view).collect();
        // For the last state of the piece `used` is its own utilisation. `chatter` is left out: its value is only a bound and may be
        // far too large.
        let sure = at_rest.iter().filter(|f| f.check != chatter::NAME).map(|f| f.utilisation);
        let known = sure.fold(self.verified.utilisation.max(used), f64::max).min(1.0);
        let needed = self.rig.critical_needed_rpm(&state, &posed.at_rest, rpm, [known; BY_SPEED]);
        let found: Vec<Finding> = if posed.swings_above(needed * (1.0 + COUNT_GUARD)) {
            at_rest
        } else {
            let answers = posed.with_critical();
            checks::completed(at_rest, &View { answers: &answers, ..view })
        };
        for finding in found {
            if finding.check == chatter::NAME && finding.passes() {
                self.bounded.push((finding.utilisation, stage, segment, state));
            } else {
                self.finding(stage, turned_mm, finding, Some(state));
            }
        }
        Some(posed.at_rest.tool_mm_per_n)
    }

    /// Computes the modes for those states whose bound of `chatter` is larger than every utilisation found, in order of the largest
    /// estimate. It stops when no state left can have a larger utilisation than the one found.
    pub(super) fn bounded(&mut self) {
        let (rig, mut least) = (self.rig, self.verified.utilisation);
        let open: Vec<_> = std::mem::take(&mut self.bounded).into_iter().filter(|b| b.0 > least).collect();
        let about = |(_, _, segment, state): &(f64, usize, &Segment, State), _| {
            chatter::about(rig, state, segment, FEW_STEPS).map_or(0.0, |f| f.utilisation)
        };
        let most = spread(&open, about);
        let mut order: Vec<(f64, usize)> = most.into_iter().zip(0..).collect();
        order.sort_by(|a, b| b.0.total_cmp(&a.0).then(a.1.cmp(&b.1)));
        for (most, index) in order {
            if most <= least {
                break;
            }
            let (_, stage, segment, state) = open[index];
            if let Some(found) = chatter::exact_above(rig, &state, segment, least) {
                least = least.max(found.utilisation);
                self.finding(stage, state.turned_mm, found, Some(state));
            }
        }
    }

    fn finding(&mut self, stage: usize, turned_mm: f64, finding: Finding, state: Option<State>) {
        self.verified.note(stage, turned_mm, finding);
        if finding.passes() {
            return;
        }
        let unit = if finding.unit.is_empty() { String::new() } else { format!(" {}", lang::unit_told(finding.unit)) };
        let told = |value: f64| lang::fixed(lang::told(value, finding.unit), 4) + &unit;
        self.worst(Breach {
            stage: Some(stage + 1),
            rule: finding.check.into(),
            text: say!(
                "proof-limit",
                turned = mm(turned_mm),
                demand = told(finding.demand),
                limit = told(finding.limit)
            ),
            turned_mm: Some(turned_mm),
            utilisation: Some(finding.utilisation),
            state,
        });
    }

    /// Notes a breach. For each stage and check only the worst one is kept.
    fn worst(&mut self, breach: Breach) {
        let same = |b: &&mut Breach| b.utilisation.is_some() && b.stage == breach.stage && b.rule == breach.rule;
        let known = breach.utilisation.and_then(|share| Some((share, self.verified.breaches.iter_mut().find(same)?)));
        match known {
            Some((share, known)) if known.utilisation.is_some_and(|u| u >= share) => {}
            Some((_, known)) => *known = breach,
            None => self.verified.breaches.push(breach),
        }
    }

    /// The findings of an event in a stage at a turned length, mm; `unheld` is the breach told where nothing holds the bar or the part.
    fn event(
        &mut self,
        (stage, turned_mm, state): (usize, f64, Option<State>),
        found: AtEvent,
        (rule, unheld): (&str, &'static str),
    ) {
        for found in found {
            match found {
                Ok(found) => self.finding(stage, turned_mm, found, state),
                Err(_) => self.breach(Some(stage + 1), rule, unheld),
            }
        }
    }

    pub(super) fn events(&mut self) {
        let last = self.plan.stages.len() - 1;
        for index in 0..=last {
            let stage = &self.plan.stages[index];
            if index < last {
                let state =
                    moment(self.rig, self.plan, index, stage.to_mm, last_regrip(self.plan, index, stage.to_mm, true));
                let found = checks::at_event(self.rig, &state, Event::LetsGo);
                let unheld = ("release", lang::text("proof-not-held-open"));
                self.event((index, stage.to_mm, Some(state)), found, unheld);
                continue;
            }
            let Some(grip) = &stage.grip else { continue };
            let (nose_mm, to_mm) = (grip.nose_mm, stage.to_mm);
            let held_mm = held_mm(self.rig.job, self.rig.hold_mm(), grip);
            let found = checks::of_last_grip(self.rig, nose_mm, held_mm);
            self.event((index, to_mm, None), found, ("back", lang::text("proof-not-held-last")));
        }
        let start = moment(self.rig, self.plan, 0, 0.0, 0.0);
        let found = checks::at_event(self.rig, &start, Event::Begins);
        self.event((0, 0.0, None), found, ("push", lang::text("proof-not-held")));
        if self.rig.tool_fit(self.segments).is_some_and(|fit| !fit.fits()) {
            self.breach(None, "tool_places", say!("proof-no-tool-place"));
        }
        self.tasks();
        self.printed_order();
    }

    /// Proves that the timeline shows the works at each stop in the order that is proven. It does not show works that take no time.
    fn printed_order(&mut self) {
        let Some(cycle) = &self.plan.cycle else { return };
        let machine = &self.rig.job.machine;
        let takes_time = |done: &Done| match done.what {
            AtStop::Work => self.plan.features[done.index].time_s > 0.0,
            AtStop::HandOver => machine.hand_over_s() > 0.0,
            AtStop::RegripBefore | AtStop::RegripAfter => {
                let shared = self.plan.hand_overs_mm.iter().any(|h| (h - done.turned_mm).abs() < SAME_MM);
                (if shared { machine.shared_regrip_s() } else { machine.headstock.regrip_s }) > 0.0
            }
        };
        // The order of two works at one stop does not matter for the proof.
        let key = |done: &Done| match done.what {
            AtStop::Work => "feature",
            AtStop::HandOver => "hand_over",
            AtStop::RegripBefore | AtStop::RegripAfter => "regrip",
        };
        let due: Vec<&str> = self.plan.at_stops().iter().filter(|d| takes_time(d)).map(key).collect();
        let mut told: Vec<&Operation> = cycle.operations.iter().filter(|o| o.stage.is_some()).collect();
        told.sort_by(|a, b| a.from_s.total_cmp(&b.from_s));
        let told = told.into_iter().map(|o| o.work.as_str());
        let told: Vec<&str> = told.filter(|w| ["feature", "hand_over", "regrip"].contains(w)).collect();
        if told != due {
            self.breach(None, "order", say!("proof-timeline-order"));
        }
    }

    /// For work behind the part-off position the bar is fed on without a cut. Headstock and counter-spindle must reach that far.
    fn fed_on(&mut self, stage: usize, turned_mm: f64, what: &str) {
        let s = &self.plan.stages[stage];
        if turned_mm <= s.to_mm + SAME_MM {
            return;
        }
        let machine = &self.rig.job.machine;
        let stroke = turned_mm - last_regrip(self.plan, stage, s.to_mm, true) > machine.headstock.stroke_mm + SAME_MM;
        let travel = match (&s.grip, &machine.counter_spindle) {
            (Some(g), Some(c)) => turned_mm + self.rig.gap_mm() - g.nose_mm > c.farthest_mm + SAME_MM,
            _ => false,
        };
        for (breaks, rule) in [(stroke, "stroke"), (travel, "counter_spindle_travel")] {
            if breaks {
                let text = say!("proof-fed-on", work = what, turned = Measure::Place.number(turned_mm));
                self.breach(Some(stage + 1), rule, text);
            }
        }
    }

    /// Proves that every task is done at a turned length at which its tool can reach it, and that `drill` passes.
    fn tasks(&mut self) {
        let reaches = &self.rig.job.machine.cross_tool_reach_mm;
        for task in self.rig.tasks() {
            let done = self.plan.features.iter().find(|f| {
                let moment =
                    f.turned_mm.is_some_and(|t| reaches.iter().any(|r| (task.moment_mm(*r) - t).abs() < SAME_MM));
                f.feature == task.kind && f.text == task.text && moment
            });
            let Some((t, number)) = done.and_then(|f| Some((f.turned_mm?, f.stage?))) else {
                self.breach(None, "features", say!("proof-work-missing", work = task.text));
                continue;
            };
            let index = number.saturating_sub(1);
            let within = self.plan.stages.get(index).is_some_and(|s| {
                let last = index + 1 == self.plan.stages.len();
                // At a stop the works of tools come first, so they belong to the stage that ends there (see `AtStop`).
                (t > s.from_mm + ONE_STOP_MM || index == 0) && (t <= s.to_mm + SAME_MM || last)
            });
            if !within {
                self.breach(Some(number), "features", say!("proof-work-stage", work = task.text, turned = mm(t)));
                continue;
            }
            self.fed_on(index, t, &task.text);
            if t > self.plan.stages[index].to_mm + SAME_MM
                && let (Some(segment), Some(rpm)) = (self.segments.last(), self.plan.part_off_rpm)
            {
                // The bar is fed on and stands out farther than during any cut, so all checks of a state are made, not only those of
                // the task.
                self.state(index, (segment, rpm), (t, 0.0), last_regrip(self.plan, index, t, false));
            }
            let state = moment(self.rig, self.plan, index, t, last_regrip(self.plan, index, t, false));
            let found = checks::at_event(self.rig, &state, Event::Works(&task));
            self.event((index, t, Some(state)), found, ("drill", lang::text("proof-not-held")));
        }
    }
}
