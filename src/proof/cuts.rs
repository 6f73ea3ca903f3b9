//! Every state of every stage, and what happens between cuts: hand-overs, cross holes, part-off, the rear end.

use super::grips::held_mm;
use super::moments::{last_regrip, moment};
use super::{Breach, Case, SAME_MM, Verified};
use crate::job::plan::{AtStop, Done, Operation};
use crate::process::State;
use crate::process::answers::FEW_STEPS;
use crate::process::checks::{self, BY_SPEED, Event, Finding, View, chatter};
use crate::process::segments::{Segment, Work};
use crate::process::speed::COUNT_GUARD;
use crate::process::stops::SAME_MM as ONE_STOP_MM;
use crate::spread::spread;

/// States are no further apart than this, mm.
const STEP_MM: f64 = 0.9;
/// Inner states are moved by this share of their distance, so that they do not fall on a planner's even grid.
const OFF_GRID: f64 = 0.381_966;

/// What is cut of a segment in a stage without a stop.
struct Stretch<'a> {
    stage: usize,
    segment: &'a Segment,
    from_mm: f64,
    to_mm: f64,
}

impl<'a> Case<'a> {
    pub(super) fn cuts(&mut self) {
        let (plan, rig, segments) = (self.plan, self.rig, self.segments);
        let stretches: Vec<Stretch<'a>> = (0..plan.stages.len()).flat_map(|index| self.stretches(index)).collect();
        // Pieces share nothing, so that what is told of one does not hang on which core came to which first.
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

    /// The pieces of a stage: what is cut without a stop.
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

    /// One piece: listed in the plan, at a speed the job allows, and every state of it.
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
                if s.feed_mm > feed * (1.0 + 1e-9) || s.travels != segment.travels.len() || s.work != segment.work.key()
                {
                    self.breach(
                        number,
                        "segments",
                        format!("the piece from {from_mm:.2} to {to_mm:.2} mm is not cut as the job asks"),
                    );
                }
            }
            listed.map(|s| s.rpm)
        };
        let Some(rpm) = rpm else {
            self.breach(number, "segments", format!("nothing cuts the piece from {from_mm:.2} to {to_mm:.2} mm"));
            return;
        };
        if rpm > wanted * (1.0 + 1e-9) || rpm < self.rig.job.cutting.speed_floor * wanted * (1.0 - 1e-6) {
            let floor = self.rig.job.cutting.speed_floor * wanted;
            let asked = if floor.round() < wanted.round() {
                format!("{floor:.0} to {wanted:.0}")
            } else {
                format!("{wanted:.0}")
            };
            let text = format!(
                "from {from_mm:.2} to {to_mm:.2} mm the plan turns at {rpm:.0} rev/min, the job asks for {asked} rev/min"
            );
            self.breach(number, "speed", text);
        }
        let steps = ((to_mm - from_mm) / STEP_MM).ceil().max(1.0);
        let step = (to_mm - from_mm) / steps;
        let inner = (0..steps as usize).map(|i| from_mm + step * (i as f64 + OFF_GRID));
        let last_regrip = last_regrip(self.plan, stage, from_mm, true);
        let mut flexibilities = Vec::with_capacity(steps as usize + 2);
        let places: Vec<f64> = std::iter::once(from_mm).chain(inner).chain([to_mm]).collect();
        // The last state of a piece is the worst as a rule. What it uses spares most others the critical speed.
        let used = self.used(stage, (segment, rpm), to_mm, last_regrip);
        for t in places {
            flexibilities.extend(self.state(stage, (segment, rpm), (t, used), last_regrip));
        }
        if let Some(found) = checks::cut::along(self.rig, segment, &flexibilities) {
            // It belongs to the piece as a whole; planning anew looks at its middle.
            let middle = moment(self.rig, self.plan, stage, 0.5 * (from_mm + to_mm), last_regrip);
            self.finding(stage, from_mm, found, Some(middle));
        }
    }

    /// Largest share of the checks that depend on the speed at one place; nothing where the bar is not held.
    fn used(&self, stage: usize, (segment, rpm): (&Segment, f64), turned_mm: f64, last_regrip_mm: f64) -> f64 {
        let state = moment(self.rig, self.plan, stage, turned_mm, last_regrip_mm);
        let Ok(answers) = self.rig.answers(&state) else { return 0.0 };
        let view = View { rig: self.rig, state: &state, answers: &answers, segment, rpm };
        checks::by_speed(&view).map(|f| f.utilisation).fold(0.0, f64::max)
    }

    /// One state. The critical speed itself is worked out only where a check that depends on it may use more of its limit than `used`,
    /// or than any check of the piece before, or break.
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
            self.breach(Some(stage + 1), "support", format!("at {turned_mm} mm nothing holds the bar"));
            return None;
        };
        let view = View { rig: self.rig, state: &state, answers: &posed.at_rest, segment, rpm };
        let at_rest: Vec<Finding> = checks::at_rest(&view).collect();
        // At the very end, `used` is its own share. A bound of `chatter` hides nothing, for it may be far from the truth.
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

    /// `chatter` where its bound says more than any check was found to use: there its modes are worked out, the most hopeful first.
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
        let unit = if finding.unit.is_empty() { String::new() } else { format!(" {}", finding.unit) };
        self.worst(Breach {
            stage: Some(stage + 1),
            rule: finding.check.into(),
            text: format!(
                "at a turned length of {turned_mm:.2} mm it is {:.4}{unit}, the limit is {:.4}{unit}",
                finding.demand, finding.limit
            ),
            turned_mm: Some(turned_mm),
            utilisation: Some(finding.utilisation),
            state,
        });
    }

    /// Notes a breach; of a check one line for each stage, the worst.
    fn worst(&mut self, breach: Breach) {
        let same = |b: &&mut Breach| b.utilisation.is_some() && b.stage == breach.stage && b.rule == breach.rule;
        let known = breach.utilisation.and_then(|share| Some((share, self.verified.breaches.iter_mut().find(same)?)));
        match known {
            Some((share, known)) if known.utilisation.is_some_and(|u| u >= share) => {}
            Some((_, known)) => *known = breach,
            None => self.verified.breaches.push(breach),
        }
    }

    pub(super) fn events(&mut self) {
        let last = self.plan.stages.len() - 1;
        for index in 1..=last {
            let stage = &self.plan.stages[index];
            let Some(grip) = &stage.grip else { continue };
            if index < last {
                let state =
                    moment(self.rig, self.plan, index, stage.to_mm, last_regrip(self.plan, index, stage.to_mm, true));
                let to_mm = stage.to_mm;
                let found: Vec<_> = checks::at_event(self.rig, &state, Event::LetsGo).collect();
                for found in found {
                    match found {
                        Ok(found) => self.finding(index, to_mm, found, Some(state)),
                        Err(_) => self.breach(Some(index + 1), "release", "with the collet open nothing holds the bar"),
                    }
                }
                continue;
            }
            let (nose_mm, to_mm) = (grip.nose_mm, stage.to_mm);
            let held_mm = held_mm(self.rig.job, self.rig.hold_mm(), grip);
            let found: Vec<_> = checks::of_last_grip(self.rig, nose_mm, held_mm).collect();
            for found in found {
                match found {
                    Ok(found) => self.finding(index, to_mm, found, None),
                    Err(_) => self.breach(Some(index + 1), "back", "the last grip does not hold the part"),
                }
            }
        }
        let start = moment(self.rig, self.plan, 0, 0.0, 0.0);
        let found: Vec<_> = checks::at_event(self.rig, &start, Event::Begins).flatten().collect();
        for found in found {
            self.finding(0, 0.0, found, None);
        }
        if self.rig.tool_fit(self.segments).is_some_and(|fit| !fit.fits()) {
            self.breach(None, "tool_places", "the machine has no place for every tool");
        }
        self.tasks();
        self.printed_order();
    }

    /// The timeline does at each stop what is proven, in that order; what takes no time is not told there.
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
        // Which of two works at one stop comes first changes nothing that is proven.
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
            self.breach(None, "order", "the timeline does not work at the stops in the order that is proven");
        }
    }

    /// Behind the part-off the bar is fed on uncut: counter-spindle and headstock must get there.
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
                let text = format!("{what} is done at {turned_mm} mm, farther than the machine feeds the bar");
                self.breach(Some(stage + 1), rule, text);
            }
        }
    }

    /// Every task is done at a moment its tool can reach it, and `drill` holds.
    fn tasks(&mut self) {
        let reaches = &self.rig.job.machine.cross_tool_reach_mm;
        for task in self.rig.tasks() {
            let done = self.plan.features.iter().find(|f| {
                let moment =
                    f.turned_mm.is_some_and(|t| reaches.iter().any(|r| (task.moment_mm(*r) - t).abs() < SAME_MM));
                f.feature == task.kind && f.text == task.text && moment
            });
            let Some((t, number)) = done.and_then(|f| Some((f.turned_mm?, f.stage?))) else {
                self.breach(None, "features", format!("{} is not done at a moment its tool reaches it", task.text));
                continue;
            };
            let index = number.saturating_sub(1);
            let within = self.plan.stages.get(index).is_some_and(|s| {
                let last = index + 1 == self.plan.stages.len();
                // At a stop works come first, so they belong to the stage that ends there (`AtStop`).
                (t > s.from_mm + ONE_STOP_MM || index == 0) && (t <= s.to_mm + SAME_MM || last)
            });
            if !within {
                self.breach(Some(number), "features", format!("{} at {t:.2} mm is not in this stage", task.text));
                continue;
            }
            self.fed_on(index, t, &task.text);
            if t > self.plan.stages[index].to_mm + SAME_MM
                && let (Some(segment), Some(rpm)) = (self.segments.last(), self.plan.part_off_rpm)
            {
                // Fed on, the bar stands out farther than it is ever turned: everything is looked at, not the tool's work alone.
                self.state(index, (segment, rpm), (t, 0.0), last_regrip(self.plan, index, t, false));
            }
            let state = moment(self.rig, self.plan, index, t, last_regrip(self.plan, index, t, false));
            let found: Vec<_> = checks::at_event(self.rig, &state, Event::Works(&task)).collect();
            for found in found {
                match found {
                    Ok(found) => self.finding(index, t, found, Some(state)),
                    Err(_) => self.breach(Some(number), "drill", "nothing holds the bar"),
                }
            }
        }
    }
}
