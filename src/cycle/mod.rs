//! The times of a finished plan: what both spindles do from part to part, what lies on the critical path, which tools
//! are at which places, and what an order takes.

mod order;
pub mod schedule;

use crate::job::plan::{AtStop, Critical, Cycle, Done, Operation, Plan, Segment as Piece, ToolRoom, Tooling};
use crate::lang::Measure;
use crate::process::Rig;
use crate::process::features::moments_told;
use crate::process::pace::{Pace, Step, What};
use crate::process::segments::{Segment, Work};
use crate::process::stops::SAME_MM;
use crate::say;
pub use order::order;
use schedule::{Side, mean_s, run};

/// Most items of the critical path that a plan lists.
const TOLD: usize = 8;
/// Two times closer than this are equal, s.
const SAME_S: f64 = 1e-9;

/// A work of one part with its name.
#[derive(Debug, Clone)]
struct Labelled {
    side: Side,
    work: &'static str,
    text: String,
    stage: Option<usize>,
    /// Time in the cut, s.
    cutting_s: f64,
    /// All other time, s.
    other_s: f64,
}

impl Labelled {
    fn seconds(&self) -> f64 {
        self.cutting_s + self.other_s
    }
}

/// Factors on the times of a plan, to see how they change the time from part to part.
#[derive(Debug, Clone, Copy)]
struct Factors {
    cutting: f64,
    hand_over: f64,
    regrip: f64,
    tool_change: f64,
}

const AS_PLANNED: Factors = Factors { cutting: 1.0, hand_over: 1.0, regrip: 1.0, tool_change: 1.0 };

/// The works of one part of a plan on its machine.
struct Works {
    all: Vec<Labelled>,
    pace: Pace,
    /// Tool changes of both sides.
    changes: usize,
}

impl Works {
    fn timed(&self, factors: Factors) -> Vec<(Side, f64)> {
        let seconds = |w: &Labelled| {
            let other = match w.work {
                "hand_over" | "centre" => factors.hand_over,
                "regrip" => factors.regrip,
                "tool_change" => factors.tool_change,
                _ => 1.0,
            };
            w.cutting_s * factors.cutting + w.other_s * other
        };
        self.all.iter().map(|w| (w.side, seconds(w))).collect()
    }

    fn steady_s(&self, factors: Factors) -> f64 {
        mean_s(&self.timed(factors), self.pace.bar_change_s, self.pace.pieces_per_bar)
    }
}

/// Builds the row of works of one part.
struct Row<'a> {
    rig: &'a Rig<'a>,
    plan: &'a Plan,
    segments: &'a [Segment],
    /// Stops in ascending order: turned length, stage that ends or goes on there, work, time.
    stops: std::vec::IntoIter<(f64, usize, &'static str, f64)>,
    ahead: Option<(f64, usize, &'static str, f64)>,
    all: Vec<Labelled>,
    changed: usize,
}

impl Row<'_> {
    fn side(&self, stage: usize) -> Side {
        let gripped = self.plan.stages.get(stage.wrapping_sub(1)).is_some_and(|s| s.grip.is_some());
        if gripped || self.plan.centre.is_some() { Side::Both } else { Side::Headstock }
    }

    /// Adds the stops that are next, as long as `due` accepts their turned lengths.
    fn stops(&mut self, due: impl Fn(f64) -> bool) {
        while let Some((t, stage, work, seconds)) = self.ahead.filter(|s| due(s.0)) {
            let at = Measure::Place.fixed(t, 1);
            let text =
                if work == "regrip" { say!("timeline-regrip", at = at) } else { say!("timeline-hand-over", at = at) };
            self.push(Side::Both, work, text, Some(stage), (0.0, seconds));
            self.ahead = self.stops.next();
        }
    }

    fn push(&mut self, side: Side, work: &'static str, text: String, stage: Option<usize>, (cut, other): (f64, f64)) {
        if cut + other <= 0.0 {
            return;
        }
        match self.all.last_mut() {
            // Cuts in a row on one section become one item.
            Some(last) if cut > 0.0 && (last.work, &last.text, last.stage) == (work, &text, stage) => {
                last.cutting_s += cut;
                last.other_s += other;
            }
            _ => self.all.push(Labelled { side, work, text, stage, cutting_s: cut, other_s: other }),
        }
    }

    fn changes(&mut self, step: &Step, stage: usize) {
        self.changed += step.changes;
        let seconds = step.changes as f64 * self.rig.job.machine.tool_change_s;
        let names: Vec<&str> = step.tools.iter().map(|t| t.name.as_str()).collect();
        self.push(self.side(stage), "tool_change", names.join(", "), Some(stage), (0.0, seconds));
    }

    fn cut(&mut self, step: &Step, index: usize) {
        let segment = &self.segments[index];
        let inside = |p: &&Piece| {
            p.section == segment.section + 1
                && p.from_mm < step.to_mm - SAME_MM
                && p.to_mm > step.at_mm + SAME_MM
                && p.from_mm >= segment.from_mm - 1e-4
                && p.to_mm <= segment.to_mm + 1e-4
        };
        let pieces: Vec<&Piece> = self.plan.segments.iter().filter(inside).collect();
        let mut first = true;
        for piece in pieces {
            let (from, to) = (piece.from_mm.max(step.at_mm), piece.to_mm.min(step.to_mm));
            self.stops(|t| t <= from + 1e-4);
            if std::mem::take(&mut first) {
                self.changes(step, piece.stage);
            }
            let gripped = self.side(piece.stage) == Side::Both;
            let whole = self.rig.stretch_time(segment, [piece.from_mm, piece.to_mm], gripped, piece.rpm);
            let share = (to - from) / (piece.to_mm - piece.from_mm);
            let overhead = whole.overhead_s.min(piece.time_s) * share;
            let label = self.rig.job.shaft.sections[segment.section].label(segment.section);
            let cut = piece.time_s * share - overhead;
            self.push(self.side(piece.stage), segment.work.key(), label, Some(piece.stage), (cut, overhead));
        }
    }
}

fn works(plan: &Plan, rig: &Rig<'_>, segments: &[Segment]) -> Works {
    let machine = &rig.job.machine;
    let tasks = rig.tasks();
    let moments = moments_told(plan, &tasks);
    let hand_over_s = machine.hand_over_s();
    let stop = |done: Done| match done.what {
        AtStop::Work => None,
        AtStop::HandOver => Some((done.turned_mm, done.stage, "hand_over", hand_over_s)),
        AtStop::RegripBefore | AtStop::RegripAfter => {
            let shared = plan.hand_overs_mm.iter().any(|h| (h - done.turned_mm).abs() < SAME_MM);
            let seconds = if shared { machine.shared_regrip_s() } else { machine.headstock.regrip_s };
            Some((done.turned_mm, done.stage, "regrip", seconds))
        }
    };
    let stops: Vec<(f64, usize, &'static str, f64)> = plan.at_stops().into_iter().filter_map(stop).collect();
    let mut stops = stops.into_iter();
    let ahead = stops.next();
    let mut row = Row { rig, plan, segments, stops, ahead, all: Vec::new(), changed: 0 };
    let last = plan.stages.len();
    let mut centre_s = rig.centre().map(|_| rig.centre_s());
    for step in rig.steps(segments, &tasks, &moments) {
        match step.what {
            What::Cut(index) => {
                // The centre comes when the work on the front end is done.
                if let Some(seconds) = centre_s.take() {
                    row.push(Side::Both, "centre", say!("timeline-centre"), Some(1), (0.0, seconds));
                }
                if segments[index].work != Work::AsDrawn {
                    row.cut(&step, index);
                }
            }
            What::Task(index) => {
                row.stops(|t| t < step.at_mm - SAME_MM);
                let stage = tasks[index].told(plan).and_then(|f| f.stage).unwrap_or(1);
                row.changes(&step, stage);
                row.push(
                    row.side(stage),
                    "feature",
                    tasks[index].text.clone(),
                    Some(stage),
                    (0.0, tasks[index].time_s),
                );
            }
            What::PartOff => {
                row.stops(|_| true);
                row.changes(&step, last);
                let text = match plan.tray_mm() {
                    Some(_) => say!("timeline-part-off-falls"),
                    None => say!("timeline-part-off"),
                };
                row.push(row.side(last), "part_off", text, Some(last), (0.0, machine.part_off.time_s));
            }
        }
    }
    let pace = rig.pace();
    // If the rear end is worked in line, the headstock waits, so both spindles are busy.
    let side = if pace.overlaps { Side::Counter } else { Side::Both };
    let mut tool = rig.back.last().map(|b| &b.tool);
    for task in &rig.back {
        if tool != Some(&task.tool) {
            row.changed += 1;
            row.push(side, "tool_change", task.tool.name.clone(), None, (0.0, machine.tool_change_s));
        }
        tool = Some(&task.tool);
        row.push(side, "back_work", task.work.name.clone(), None, (0.0, task.work.time_s));
    }
    // A part that falls is not unloaded.
    if let (Some(counter), Some(_)) = (&machine.counter_spindle, rig.collet) {
        row.push(side, "unload", say!("timeline-unload"), None, (0.0, counter.unload_s));
    }
    Works { all: row.all, pace, changes: row.changed }
}

/// The timeline of a plan.
pub fn timeline(plan: &Plan, rig: &Rig<'_>, segments: &[Segment]) -> Cycle {
    let works = works(plan, rig, segments);
    let timed = works.timed(AS_PLANNED);
    let sum = |sides: &[Side]| works.all.iter().filter(|w| sides.contains(&w.side)).map(Labelled::seconds).sum::<f64>();
    let (first_s, counter_s) = (sum(&[Side::Headstock]), sum(&[Side::Counter]));
    let headstock_s = sum(&[Side::Headstock, Side::Both]);
    let load_s = works.pace.bar_change_s;
    let steady_s = works.steady_s(AS_PLANNED);
    let bar_change_s = load_s / works.pace.pieces_per_bar;
    let wait_s = if works.pace.overlaps { (steady_s - headstock_s - bar_change_s).max(0.0) } else { 0.0 };
    // The free stage and the work of the counter-spindle run side by side; the longer of the two decides.
    let (free_decides, counter_decides) = (first_s >= counter_s - SAME_S, counter_s >= first_s - SAME_S);
    let critical = |w: &Labelled| match w.side {
        Side::Both => true,
        Side::Headstock => free_decides,
        Side::Counter => counter_decides,
    };
    let parts = run(&timed, &[0.0; 4]);
    // The time axis begins with the third part. The counter-spindle then works on the second part.
    let start_s = parts[2].start_s;
    let mut operations: Vec<Operation> = Vec::with_capacity(works.all.len());
    for (i, work) in works.all.iter().enumerate() {
        let part = if work.side == Side::Counter { &parts[1] } else { &parts[2] };
        let from_s = part.begins_s[i] - start_s;
        operations.push(Operation {
            side: work.side.key().into(),
            work: work.work.into(),
            text: work.text.clone(),
            stage: work.stage,
            from_s,
            to_s: from_s + work.seconds(),
            critical: critical(work),
        });
    }
    operations.sort_by(|a, b| a.from_s.total_cmp(&b.from_s));
    let tool_changes_s = works.all.iter().filter(|w| w.work == "tool_change").map(Labelled::seconds).sum();
    Cycle {
        steady_s,
        alone_s: run(&timed, &[0.0])[0].end_s,
        headstock_s,
        counter_spindle_s: sum(&[Side::Both, Side::Counter]),
        // An empty sum is -0, and its sign would be printed; adding 0 removes the sign.
        hidden_s: counter_s - wait_s + 0.0,
        wait_s,
        spare_s: if works.pace.overlaps { (first_s - counter_s).max(0.0) } else { 0.0 },
        tool_changes: works.changes,
        tool_changes_s,
        unload_s: works.all.iter().filter(|w| w.work == "unload").map(Labelled::seconds).sum(),
        bar_change_s,
        overlap: match (works.pace.counter_s > 0.0, works.pace.overlaps) {
            (false, _) => "no_work",
            (_, true) => "aside",
            (_, false) => "in_line",
        }
        .into(),
        critical: on_the_critical_path(&works, &critical, steady_s),
        operations,
    }
}

/// What lies on the critical path, by name, longest first.
fn on_the_critical_path(works: &Works, critical: &dyn Fn(&Labelled) -> bool, steady_s: f64) -> Vec<Critical> {
    let mut found: Vec<Critical> = Vec::new();
    let mut add = |what: String, seconds: f64| match found.iter_mut().find(|c| c.what == what) {
        Some(c) => c.seconds += seconds,
        None if seconds > 0.0 => found.push(Critical { what, seconds, share: 0.0 }),
        None => {}
    };
    for work in works.all.iter().filter(|w| critical(w)) {
        match work.work {
            "hand_over" => add(say!("critical-hand-overs"), work.other_s),
            "regrip" => add(say!("critical-regrips"), work.other_s),
            "tool_change" => add(say!("critical-tool-changes"), work.other_s),
            "turn" | "plunge" | "thread" | "whirl" => {
                add(say!("critical-cutting", section = work.text), work.cutting_s);
                add(say!("critical-overhead"), work.other_s);
            }
            _ => add(work.text.clone(), work.other_s),
        }
    }
    for c in &mut found {
        c.share = if steady_s > 0.0 { c.seconds / steady_s } else { 0.0 };
    }
    found.sort_by(|a, b| b.seconds.total_cmp(&a.seconds));
    found.truncate(TOLD);
    found
}

/// Tools and places of a job. None: the machine file lists no places.
pub fn tooling(rig: &Rig<'_>, segments: &[Segment]) -> Option<Tooling> {
    let fit = rig.tool_fit(segments)?;
    // Fixed tools that use a driven place of this kind. The count may include tools in the turret, but then no such
    // place is left.
    let taken_over = |place| {
        let guests = fit.rooms.iter().filter(|r| r.place.driven_instead() == Some(place));
        guests.map(|r| r.elsewhere).sum::<usize>()
    };
    let room = |r: &crate::process::tooling::Room| {
        let own = r.tools.len().min(r.places);
        ToolRoom {
            place: r.place.key().into(),
            tools: r.tools.iter().map(|t| t.name.clone()).collect(),
            places: r.places,
            elsewhere: r.elsewhere,
            short: r.short,
            left: (r.places - own).saturating_sub(taken_over(r.place)),
        }
    };
    Some(Tooling {
        fits: fit.fits(),
        no_pair: fit.no_pair,
        places: fit.rooms.iter().map(room).collect(),
        turret_tools: fit.turret.map(|t| t.0),
        turret_used: fit.turret.map(|t| t.1),
    })
}
