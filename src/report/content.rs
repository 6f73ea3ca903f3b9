//! What the setter's sheet says, block by block, for every format. [`sheet`](super::sheet) makes an HTML page of it,
//! and the feature `pdf` a document to print.

use super::table::fit;
use super::tables::{self, Rows};
use super::{attention, cautions, fed_on, help, numbers, timeline, verdict, words};
use crate::job::plan::{LimitCost, Plan, Stage};

/// Names in the head are cut to this many characters, so that the diagram stays on the first page.
const NAME_WIDTH: usize = 110;
const FACT_WIDTH: usize = 80;

/// A part of the sheet.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// A sentence that stands out.
    Why(String),
    /// The diagram.
    Diagram,
    /// Both spindles in time, as a strip under this title.
    Cycle(&'static str),
    /// A table.
    Table {
        /// Title.
        title: &'static str,
        /// Units, or what places are measured from.
        units: String,
        /// Heads and cells.
        rows: Rows,
        /// Its layout.
        kind: Kind,
    },
    /// Keys and values under a title.
    Facts {
        /// Title.
        title: &'static str,
        /// In order.
        pairs: Vec<(&'static str, String)>,
    },
    /// A list.
    List {
        /// Title.
        title: &'static str,
        /// Numbered, in order of importance.
        numbered: bool,
        /// In a box that stands out.
        boxed: bool,
        /// Sentences.
        items: Vec<String>,
    },
    /// The box to sign.
    SignOff,
}

/// Layout of a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// As wide as the sheet.
    Wide,
    /// Narrow: two tables stand beside each other.
    Narrow,
    /// Narrow, and its last row is a sum.
    Sum,
}

/// The head of a sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Head {
    /// Name of the job.
    pub job: String,
    /// `FEASIBLE` or `NOT FEASIBLE`.
    pub verdict: &'static str,
    /// The rest of the verdict.
    pub summary: String,
    /// How it is made.
    pub facts: Vec<(&'static str, String)>,
}

/// The steps that are signed for.
pub const SIGNED: [&str; 4] = [
    "Plan read, machine and collet match",
    "First piece proved at reduced speed and feed",
    "First piece measured",
    "Released for the run",
];

/// The columns of the box to sign.
pub const SIGNED_HEADS: [&str; 4] = ["step", "name", "date", "signature"];

/// The head of the sheet.
pub fn head(plan: &Plan) -> Head {
    let mut facts = tables::how(plan);
    facts.push(("input", short_digest(plan)));
    for (_, value) in &mut facts {
        *value = fit(value, FACT_WIDTH);
    }
    Head {
        job: fit(&words::plain(&plan.job), NAME_WIDTH),
        verdict: verdict::word(plan),
        summary: verdict::summary(plan),
        facts,
    }
}

/// The first characters of the digest, enough to tell two sheets apart. The whole digest is at the end of the sheet.
fn short_digest(plan: &Plan) -> String {
    words::plain(&plan.input_digest).chars().take("sha256:".len() + 12).collect()
}

/// Everything under the head. Only a feasible plan has limits of stages and a box to sign. Empty blocks are left out.
pub fn blocks(plan: &Plan) -> Vec<Block> {
    let feasible = verdict::is_feasible(plan);
    let table = |title, units: &str, rows, kind| Block::Table { title, units: units.into(), rows, kind };
    let bullets = |title, items| Block::List { title, numbered: false, boxed: false, items };
    let mut all = what_would_help(plan);
    all.push(Block::Diagram);
    let places =
        format!("mm, rev/min, mm/rev, s; counter-spindle and headstock at start → end, {}", tables::places_from(plan));
    all.push(table("Stages", &places, tables::stages_in_full(plan), Kind::Wide));
    if feasible {
        let items = plan.stages.iter().flat_map(|s| stage_limits(plan, s)).collect();
        all.push(Block::List { title: "Limits of the stages: do not exceed", numbered: false, boxed: true, items });
    }
    all.push(bullets("Look at", attention::look_at(plan)));
    all.push(table("Where the feed stops", "mm turned", tables::stops(plan), Kind::Wide));
    all.push(table("Segments", "mm, rev/min, mm/rev", tables::segments(plan), Kind::Wide));
    all.push(table("Features", "mm, s", tables::features(plan), Kind::Narrow));
    all.push(table("Witness lines", "mm", tables::witnesses(plan), Kind::Narrow));
    if feasible {
        all.push(table("Time", "", tables::times(plan), Kind::Sum));
        all.push(Block::Facts { title: "Bar", pairs: unpriced(tables::quote(plan)) });
        all.push(bullets("What a limit costs", costs(plan)));
        let sum = tables::scatter_sum(plan).unwrap_or_default();
        all.push(table("Scatter of inputs", &format!("mm; {sum}"), tables::scatter(plan), Kind::Wide));
    }
    in_time(plan, &mut all);
    all.push(bullets("Notes", words::sentences(&plan.notes)));
    let items = cautions::to_print(plan);
    all.push(Block::List { title: "Cautions", numbered: true, boxed: false, items });
    if feasible {
        all.push(Block::SignOff);
    }
    all.retain(|b| match b {
        Block::Table { rows, .. } => !rows.rows.is_empty(),
        Block::List { items, .. } => !items.is_empty(),
        _ => true,
    });
    all
}

/// Adds the blocks about time: the two spindles, the tools, the order.
fn in_time(plan: &Plan, all: &mut Vec<Block>) {
    let table = |title, rows, kind| Block::Table { title, units: String::new(), rows, kind };
    if let Some(cycle) = &plan.cycle {
        if !cycle.operations.is_empty() {
            all.push(Block::Cycle("Both spindles in time"));
        }
        all.push(Block::Facts { title: "Part after part", pairs: timeline::facts(cycle) });
        let items = timeline::shorten_first(cycle);
        all.push(Block::List { title: "What to shorten first", numbered: false, boxed: false, items });
    }
    all.push(table("Tool places", timeline::tools(plan), Kind::Wide));
    if let Some(order) = &plan.order {
        all.push(Block::Facts { title: "Order", pairs: unpriced(timeline::order(order)) });
        all.push(table("The order by quantity", timeline::quantities_unpriced(order), Kind::Narrow));
    }
}

/// The facts without the cost of a part, which is not for the setter.
fn unpriced(facts: Vec<(&'static str, String)>) -> Vec<(&'static str, String)> {
    facts.into_iter().filter(|(key, _)| *key != "cost").collect()
}

/// What each limit costs, if it was asked for.
pub fn costs(plan: &Plan) -> Vec<String> {
    let one = |c: &LimitCost| {
        let (now, next) = (words::change_value(&c.now), words::change_value(&c.next));
        format!("{} ({}: {now} → {next})", words::sentence(&c.text), words::plain(&c.limit))
    };
    plan.limit_costs.iter().map(one).collect()
}

fn what_would_help(plan: &Plan) -> Vec<Block> {
    let Some(shortfall) = &plan.shortfall else { return Vec::new() };
    let why = Block::Why(words::sentence(&shortfall.text));
    let items: Vec<String> = shortfall.changes.iter().map(help::change_text).collect();
    let help = if items.is_empty() {
        Block::Why(help::no_help(shortfall))
    } else {
        let title = match help::help_title(shortfall) {
            help::TOGETHER => "What would help: the best two changes together",
            _ => "What would help: each alone makes it feasible; the easiest to do first",
        };
        Block::List { title, numbered: true, boxed: false, items }
    };
    vec![why, help]
}

/// The limits of a stage: those of the whole stage, the speed of each stretch if there are several speeds, and the
/// limit of bar that is fed on.
fn stage_limits(plan: &Plan, stage: &Stage) -> Vec<String> {
    let speeds = speeds(plan, stage);
    let mut items = vec![stage_limit(plan, stage, &speeds)];
    if speeds.len() > 1 {
        let row = |s: &(f64, f64, String)| {
            let (from, to) = (numbers::mm(s.0), numbers::mm(s.1));
            format!("Stage {}, from {from} to {to} mm turned: never above {} rev/min", stage.number, s.2)
        };
        items.extend(speeds.iter().map(row));
    }
    items.extend(fed_on::limit(plan, stage));
    items
}

/// The highest speed of every stretch of a stage (from, to, rev/min as printed), with part-off.
pub(super) fn speeds(plan: &Plan, stage: &Stage) -> Vec<(f64, f64, String)> {
    let pieces = plan.segments.iter().filter(|s| s.stage == stage.number && s.rpm > 0.0);
    let pieces = pieces.map(|s| (s.from_mm, s.to_mm, s.rpm));
    let last = plan.stages.last().is_some_and(|s| s.number == stage.number);
    let part_off = plan.part_off_rpm.filter(|_| last).map(|rpm| (plan.length_mm, stage.to_mm, rpm));
    let mut runs: Vec<(f64, f64, String)> = Vec::new();
    for (from_mm, to_mm, rpm) in pieces.chain(part_off) {
        let rpm = numbers::rpm(rpm);
        match runs.last_mut() {
            Some(run) if run.2 == rpm => run.1 = to_mm,
            _ => runs.push((from_mm, to_mm, rpm)),
        }
    }
    runs
}

/// The speeds of a stage in one field of a table: `0 to 120: 1450; 120 to 210: 1800`.
pub(super) fn speeds_in_row(plan: &Plan, stage: &Stage) -> String {
    let one = |(from, to, rpm): &(f64, f64, String)| format!("{} to {}: {rpm}", numbers::mm(*from), numbers::mm(*to));
    speeds(plan, stage).iter().map(one).collect::<Vec<_>>().join("; ")
}

/// The limits of a stage in words.
fn stage_limit(plan: &Plan, stage: &Stage, speeds: &[(f64, f64, String)]) -> String {
    // Bar that is fed on, uncut, has a separate limit.
    let turning = if fed_on::of(plan, stage).is_some() { " while turning" } else { "" };
    let mut parts = vec![
        format!("turn to {} mm, no farther", numbers::mm(stage.to_mm)),
        match speeds {
            [_, _, ..] => "never above the speed of each stretch, told below".to_string(),
            [(_, _, rpm)] => format!("never above {rpm} rev/min"),
            [] => format!("never above {} rev/min", numbers::rpm(stage.rpm_max)),
        },
        format!("never more than {} mm unsupported{turning}", numbers::mm(stage.unsupported_max_mm)),
    ];
    parts.push(match (&stage.grip, stage.counter_spindle_end_mm) {
        (Some(grip), Some(distance_mm)) if words::has_bush(plan) && distance_mm > stage.unsupported_max_mm + 0.005 => {
            format!(
                "counter-spindle on {}, never farther than {} mm from the bush",
                tables::grip(Some(grip)),
                numbers::mm(distance_mm)
            )
        }
        (Some(grip), _) => format!("counter-spindle on {}", tables::grip(Some(grip))),
        (None, _) => "front end free, nothing may touch it".to_string(),
    });
    format!("Stage {}: {}", stage.number, parts.join("; "))
}
