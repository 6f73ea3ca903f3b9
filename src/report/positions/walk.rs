//! One part from its first cut to its unloading, event by event.

use super::clock::Clock;
use crate::job::plan::{AtStop, Done, FeatureMoment, PartOff, Plan, Position, ToolUse};
use crate::lang;
use crate::report::words;
use crate::say;

/// Turned lengths nearer than this are one place, mm: far below what a slide can position, and far above rounding in a
/// plan file.
pub(super) const SAME_MM: f64 = 1e-3;

/// Everything at one moment, and the events so far.
pub(super) struct Walk<'a> {
    pub(super) plan: &'a Plan,
    pub(super) clock: Clock<'a>,
    pub(super) rows: Vec<Position>,
    turned_mm: f64,
    headstock_mm: Option<f64>,
    counter_spindle_mm: Option<f64>,
    pub(super) stage: usize,
    /// Whether the counter-spindle's collet holds the part.
    gripped: bool,
    /// Whether the start of the stage is still to be told.
    starts: bool,
    /// What the next event waits for.
    wait: Option<&'static str>,
    /// Wait points so far.
    points: usize,
}

/// The events of one part of a plan.
pub(super) fn rows(plan: &Plan) -> Vec<Position> {
    let (Some(first), Some(last)) = (plan.stages.first(), plan.stages.last()) else { return Vec::new() };
    let mut walk = Walk {
        plan,
        clock: Clock::new(plan),
        rows: Vec::new(),
        turned_mm: first.from_mm,
        headstock_mm: crate::report::tables::headstock(first).map(|h| h.0),
        counter_spindle_mm: first.counter_spindle_start_mm,
        stage: first.number,
        gripped: first.grip.is_some(),
        starts: true,
        wait: None,
        points: 0,
    };
    let mut stops = plan.at_stops().into_iter().peekable();
    let mut centre = plan.centre;
    for segment in &plan.segments {
        while let Some(stop) = stops.next_if(|s| s.turned_mm <= segment.from_mm + SAME_MM) {
            walk.stop(&stop);
        }
        // The centre comes when the work on the front end is done.
        if centre.take().is_some() {
            walk.wait = Some(lang::text("moves-wait-stopped"));
            walk.centre(lang::text("moves-centre-comes"), "centre_in");
            walk.wait = Some(lang::text("moves-wait-centre"));
        }
        walk.segment(segment, &mut stops);
    }
    let held_to_mm = plan.centre.map_or(f64::INFINITY, |c| c.leaves_at_mm);
    while let Some(stop) = stops.next_if(|s| s.turned_mm <= held_to_mm + SAME_MM) {
        walk.stop(&stop);
    }
    if plan.centre.is_some() {
        walk.wait = Some(lang::text("moves-wait-stopped"));
        walk.centre(lang::text("moves-centre-leaves"), "centre_out");
        walk.wait = Some(lang::text("moves-wait-centre-left"));
    }
    stops.for_each(|stop| walk.stop(&stop));
    walk.feed_to(last.to_mm);
    walk.part_off();
    walk.rows
}

/// A tool with its station.
pub(super) fn tool(of: &ToolUse) -> String {
    let name = words::plain(&of.tool);
    match of.station.as_deref().map(words::plain) {
        Some(station) => format!("{station} {name}"),
        None => name,
    }
}

impl Walk<'_> {
    /// An event with where everything stands now. It takes the wait point that is due.
    pub(super) fn row(&mut self, actor: &str, event: &str, what: String) -> Position {
        let waits_for = self.wait.take();
        self.points += usize::from(waits_for.is_some());
        Position {
            row: self.rows.len() + 1,
            stage: Some(self.stage),
            actor: actor.into(),
            event: event.into(),
            what,
            wait_point: waits_for.map(|_| self.points),
            waits_for: waits_for.unwrap_or_default().into(),
            start_s: None,
            turned_mm: Some(self.turned_mm),
            diameter_mm: None,
            leading_diameter_mm: None,
            lag_mm: None,
            headstock_mm: self.headstock_mm,
            counter_spindle_mm: self.counter_spindle_mm,
            headstock_rpm: None,
            counter_spindle_rpm: None,
            feed_mm: None,
            tool: String::new(),
        }
    }

    fn tell(&mut self, actor: &str, event: &str, what: String) {
        let row = self.row(actor, event, what);
        self.rows.push(row);
    }

    /// Tells the start of the stage, if that is still to be done.
    pub(super) fn begin(&mut self) {
        if std::mem::take(&mut self.starts) {
            self.tell("headstock", "stage_start", say!("moves-stage", stage = self.stage));
        }
    }

    /// Moves the bar, and what holds it, until the tool stands at a turned length.
    pub(super) fn go_to(&mut self, turned_mm: f64) {
        let on_mm = turned_mm - self.turned_mm;
        self.turned_mm = turned_mm;
        self.headstock_mm = self.headstock_mm.map(|at| at - on_mm);
        self.counter_spindle_mm = self.counter_spindle_mm.filter(|_| self.gripped).map(|at| at + on_mm);
    }

    /// Moves the bar without cutting. Nothing is told if it is there.
    pub(super) fn feed_to(&mut self, turned_mm: f64) {
        let on_mm = turned_mm - self.turned_mm;
        if on_mm.abs() <= SAME_MM {
            return;
        }
        self.begin();
        self.go_to(turned_mm);
        if on_mm > 0.0 {
            self.tell("headstock", "feed_out", say!("moves-fed-out"));
        } else {
            self.tell("headstock", "feed_back", say!("moves-fed-back"));
        }
    }

    /// The speed of the counter-spindle if the headstock turns at this speed, rev/min.
    pub(super) fn synchronous(&self, rpm: f64) -> Option<f64> {
        self.gripped.then_some(rpm)
    }

    /// What is done at a stop.
    pub(super) fn stop(&mut self, done: &Done) {
        self.feed_to(done.turned_mm);
        match done.what {
            AtStop::Work => {
                self.begin();
                if let Some(feature) = self.plan.features.get(done.index) {
                    self.work(feature, "tool", "feature");
                }
            }
            AtStop::HandOver => self.hand_over(done.stage),
            AtStop::RegripBefore | AtStop::RegripAfter => self.regrip(done),
        }
    }

    fn work(&mut self, feature: &FeatureMoment, actor: &str, event: &str) {
        let start_s = self.clock.begins_s("feature", self.stage, Some(&feature.text));
        let row = Position {
            start_s,
            tool: words::plain(&feature.tool),
            ..self.row(actor, event, words::plain(&feature.text))
        };
        self.rows.push(row);
    }

    fn hand_over(&mut self, stage: usize) {
        self.begin();
        let start_s = self.clock.begins_s("hand_over", stage, None);
        (self.stage, self.starts) = (stage, true);
        self.wait = Some(match self.gripped {
            true => lang::text("moves-wait-hand-over"),
            false => lang::text("moves-wait-first-hand-over"),
        });
        let opens = self.row("counter_spindle", "open", say!("moves-counter-opens"));
        self.rows.push(Position { start_s, ..opens });
        let next = self.plan.stages.iter().find(|s| s.number == stage);
        self.counter_spindle_mm = next.and_then(|s| s.counter_spindle_start_mm);
        self.gripped = next.is_some_and(|s| s.grip.is_some());
        self.tell("counter_spindle", "move", say!("moves-counter-moves"));
        self.tell("counter_spindle", "close", say!("moves-counter-closes"));
        self.wait = Some(lang::text("moves-wait-counter-closed"));
    }

    fn regrip(&mut self, done: &Done) {
        let start_s = self.clock.begins_s("regrip", done.stage, None);
        self.wait = Some(match self.gripped {
            true => lang::text("moves-wait-regrip"),
            false => lang::text("moves-wait-stopped"),
        });
        let opens = self.row("headstock", "open", say!("moves-headstock-opens"));
        self.rows.push(Position { start_s, ..opens });
        self.headstock_mm = self.headstock_mm.map(|_| self.regripped_mm(done));
        self.tell("headstock", "move", say!("moves-headstock-moves"));
        self.tell("headstock", "close", say!("moves-headstock-closes"));
        self.wait = Some(lang::text("moves-wait-headstock-closed"));
    }

    /// Where the headstock's nose stands after a re-grip, mm. The plan tells it at the start of a stage, and at its end, from which the
    /// bar has come without a break. Between two re-grips it goes to its farthest place, as the planner takes it.
    fn regripped_mm(&self, done: &Done) -> f64 {
        let stages = &self.plan.stages;
        let starts = |number: usize| {
            let stage = stages.iter().find(|s| s.number == number);
            stage.filter(|s| (s.from_mm - done.turned_mm).abs() <= SAME_MM).map(|s| s.headstock_start_mm)
        };
        let ends = || {
            let stage = stages.iter().find(|s| s.number == done.stage)?;
            let last = !stage.regrips_mm.iter().any(|t| *t > done.turned_mm + SAME_MM && *t < stage.to_mm - SAME_MM);
            let inside = done.turned_mm < stage.to_mm - SAME_MM;
            (last && inside).then_some(stage.headstock_end_mm + stage.to_mm - done.turned_mm)
        };
        let next = if done.what == AtStop::RegripBefore { starts(done.stage + 1) } else { starts(done.stage) };
        next.or_else(ends).unwrap_or(self.plan.layout.headstock_farthest_mm)
    }

    fn centre(&mut self, what: &str, event: &str) {
        let start_s = self.clock.begins_s("centre", self.stage, None);
        let row = Position { start_s, ..self.row("counter_spindle", event, what.into()) };
        self.rows.push(row);
    }

    fn part_off(&mut self) {
        self.begin();
        let falls = self.plan.part_off.as_ref().is_some_and(|p| p.into == PartOff::TRAY);
        let what = if falls { say!("timeline-part-off-falls") } else { say!("timeline-part-off") };
        if self.gripped {
            self.wait = Some(lang::text("moves-wait-part-off"));
        }
        let rpm = self.plan.part_off_rpm;
        let start_s = self.clock.begins_s("part_off", self.stage, None);
        let row = Position {
            start_s,
            diameter_mm: Some(self.plan.shaft.stock_bore_mm.unwrap_or(0.0)),
            headstock_rpm: rpm,
            counter_spindle_rpm: rpm.and_then(|rpm| self.synchronous(rpm)),
            tool: self.plan.part_off_tool().map_or_else(String::new, tool),
            ..self.row("tool", "part_off", what)
        };
        self.rows.push(row);
        if self.gripped {
            self.rear_end();
        }
    }

    /// What the counter-spindle does with the part alone.
    fn rear_end(&mut self) {
        let from = self.rows.len();
        self.wait = Some(lang::text("moves-wait-parted"));
        self.counter_spindle_mm = None;
        self.tell("counter_spindle", "take_away", say!("moves-part-taken"));
        for feature in self.plan.features.iter().filter(|f| f.turned_mm.is_none()) {
            self.work(feature, "counter_spindle", "back_work");
        }
        self.tell("counter_spindle", "unload", say!("timeline-unload"));
        for row in self.rows.iter_mut().skip(from) {
            (row.stage, row.turned_mm, row.headstock_mm) = (None, None, None);
        }
    }
}
