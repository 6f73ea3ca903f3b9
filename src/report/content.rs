//! What the setter's sheet says, block by block, for every format. [`sheet`](super::sheet) makes an HTML page of it,
//! and the feature `pdf` a document to print.

use super::table::fit;
use super::tables::{self, Rows};
use super::{
    attention, cautions, fed_on, help, numbers, positions, sure, timeline, tool_uses, verdict, words, work_list,
};
use crate::job::plan::{Plan, Stage, read_first};
use crate::lang;
use crate::say;

/// Names in the head are cut to this many characters, so that the diagram stays on the first page.
const NAME_WIDTH: usize = 110;
const FACT_WIDTH: usize = 80;
/// Where the user writes by hand.
const TO_FILL_IN: &str = "____________";

/// A part of the sheet.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// A sentence that stands out.
    Why(String),
    /// What follows begins on a new page.
    NewPage,
    /// The shaft with its lengths, grips and stops.
    Setting,
    /// A sentence.
    Say(String),
    /// The diagram.
    Diagram,
    /// Both spindles in time, as a strip under this title.
    Cycle(&'static str),
    /// The chart of the uncertain inputs, under a title.
    Inputs(&'static str),
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
    /// As wide as the sheet, its last column to be written into.
    ToFillIn,
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
pub fn signed() -> [&'static str; 4] {
    [
        lang::text("sheet-sign-read"),
        lang::text("sheet-sign-proved"),
        lang::text("sheet-sign-measured"),
        lang::text("sheet-sign-released"),
    ]
}

/// What is written under each step.
pub fn signed_with() -> String {
    [lang::text("sheet-sign-name"), lang::text("sheet-sign-date"), lang::text("sheet-sign-signature")].join(", ")
}

/// The head of the sheet.
pub fn head(plan: &Plan) -> Head {
    let mut facts = tables::how(plan);
    facts.extend(set_up(plan));
    facts.push((lang::text("fact-input"), short_digest(plan)));
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

/// What the setter prepares, and the date.
fn set_up(plan: &Plan) -> Vec<(&'static str, String)> {
    let mut list = Vec::new();
    if let Some(land_mm) = plan.layout.bush_land_mm {
        let kind = match plan.layout.bush_kind.as_deref() {
            Some("fixed") => lang::text("bush-fixed"),
            Some("following") => lang::text("bush-following"),
            _ => lang::text("bush-kind-not-given"),
        };
        let bar = words::plain(&plan.shaft.stock_label);
        let said = say!("fact-bush-said", bar = bar, kind = kind, land = numbers::mm(land_mm));
        list.push((lang::text("fact-bush"), said));
    }
    list.push((lang::text("fact-bar-ends"), say!("fact-bar-ends-said")));
    list.push((lang::text("fact-date"), plan.date.as_deref().map_or_else(|| TO_FILL_IN.to_owned(), words::plain)));
    list
}

/// Drawing, revision and date as every page tells them: those that the plan gives.
pub fn issue(plan: &Plan) -> String {
    let drawing = tables::drawing(plan);
    let date = plan.date.as_deref().map(words::plain);
    drawing.into_iter().chain(date).collect::<Vec<_>>().join(", ")
}

/// The first characters of the digest, enough to tell two sheets apart. The whole digest is at the end of the sheet.
fn short_digest(plan: &Plan) -> String {
    words::plain(&plan.input_digest).chars().take("sha256:".len() + 12).collect()
}

/// Everything under the head. A feasible plan has the drawing and the limits of the stages on its first page, the list of works and
/// the box to sign on the next, and details behind them. Empty blocks are left out.
pub fn blocks(plan: &Plan) -> Vec<Block> {
    let feasible = plan.verdict.has_plan();
    let mut all = what_would_help(plan);
    if feasible {
        all.push(Block::Setting);
        let items = plan.stages.iter().flat_map(|s| stage_limits(plan, s)).collect();
        let title = lang::text("sheet-stage-limits");
        all.push(Block::List { title, numbered: false, boxed: true, items });
        all.push(Block::Say(read_first()));
        all.push(Block::NewPage);
        let works_in = lang::text("sheet-work-list-units");
        all.push(table(lang::text("sheet-work-list"), works_in, work_list::rows(plan), Kind::ToFillIn));
        all.push(Block::SignOff);
        all.push(Block::NewPage);
    } else {
        all.push(Block::Diagram);
    }
    all.push(bullets(lang::text("title-look-at"), attention::look_at(plan)));
    let items = cautions::to_print(plan);
    all.push(Block::List { title: lang::text("title-cautions"), numbered: true, boxed: false, items });
    if feasible {
        all.push(bullets(lang::text("sheet-directions"), positions::directions(plan)));
    }
    let units = say!("sheet-stages-units", from = tables::places_from(plan));
    all.push(table(lang::text("sheet-stages"), &units, tables::stages_in_full(plan), Kind::Wide));
    let stops_in = lang::text("sheet-stops-units");
    all.push(table(lang::text("sheet-stops"), stops_in, tables::stops(plan), Kind::Wide));
    let tools_in = lang::text("sheet-tool-list-units");
    all.push(table(lang::text("sheet-tool-list"), tools_in, tool_uses::rows(plan), Kind::Wide));
    let lines_in = lang::text("sheet-witness-lines-units");
    all.push(table(lang::text("sheet-witness-lines"), lines_in, tables::witnesses(plan), Kind::Narrow));
    if feasible {
        all.push(table(lang::text("title-time"), "", tables::times(plan), Kind::Sum));
        all.push(Block::Facts { title: lang::text("sheet-bar"), pairs: unpriced(tables::quote(plan)) });
        all.push(bullets(lang::text("title-limit-costs"), costs(plan)));
        all.push(bullets(lang::text("sheet-sure"), sure::lines(plan, true)));
        all.push(table(
            lang::text("sheet-scatter"),
            lang::text("sheet-scatter-units"),
            tables::scatter(plan),
            Kind::Wide,
        ));
        all.push(Block::Inputs(lang::text("sheet-inputs")));
        all.push(table("", &say!("sheet-inputs-units", check = sure::nearest(plan)), sure::inputs(plan), Kind::Wide));
    }
    in_time(plan, &mut all);
    if feasible {
        all.push(Block::Diagram);
    }
    all.retain(|b| match b {
        Block::Table { rows, .. } => !rows.rows.is_empty(),
        Block::List { items, .. } => !items.is_empty(),
        Block::Inputs(_) => sure::inputs_told(plan).next().is_some(),
        _ => true,
    });
    all
}

fn table(title: &'static str, units: &str, rows: Rows, kind: Kind) -> Block {
    Block::Table { title, units: units.into(), rows, kind }
}

fn bullets(title: &'static str, items: Vec<String>) -> Block {
    Block::List { title, numbered: false, boxed: false, items }
}

/// Adds the blocks about time: the two spindles, the tools, the order.
fn in_time(plan: &Plan, all: &mut Vec<Block>) {
    if let Some(cycle) = &plan.cycle {
        if !cycle.operations.is_empty() {
            all.push(Block::Cycle(lang::text("sheet-timeline")));
        }
        all.push(Block::Facts { title: lang::text("title-cycle"), pairs: timeline::facts(cycle) });
        all.push(bullets(lang::text("title-shorten-first"), timeline::shorten_first(cycle)));
    }
    all.push(table(lang::text("title-tool-places"), "", timeline::tools(plan), Kind::Wide));
    if let Some(order) = &plan.order {
        all.push(Block::Facts { title: lang::text("title-order"), pairs: unpriced(timeline::order(order)) });
        let title = lang::text("title-quantities");
        all.push(table(title, "", timeline::quantities_unpriced(order), Kind::Narrow));
    }
}

/// The facts without the cost of a part, which is not for the setter.
fn unpriced(facts: Vec<(&'static str, String)>) -> Vec<(&'static str, String)> {
    facts.into_iter().filter(|(key, _)| *key != lang::text("fact-cost")).collect()
}

/// What each limit costs, if it was asked for.
pub fn costs(plan: &Plan) -> Vec<String> {
    plan.limit_costs.iter().map(help::cost_text).collect()
}

fn what_would_help(plan: &Plan) -> Vec<Block> {
    let Some(shortfall) = &plan.shortfall else { return Vec::new() };
    let why = Block::Why(words::sentence(&shortfall.text));
    let lists = help::helps(shortfall).into_iter();
    let lists = lists.map(|l| Block::List { title: l.title, numbered: l.numbered, boxed: false, items: l.items });
    std::iter::once(why).chain(lists).chain(help::no_help(shortfall).map(Block::Why)).collect()
}

/// The limits of a stage: those of the whole stage, the speed of each stretch if there are several speeds, and the
/// limit of bar that is fed on.
fn stage_limits(plan: &Plan, stage: &Stage) -> Vec<String> {
    let speeds = speeds(plan, stage);
    let mut items = vec![stage_limit(plan, stage, &speeds)];
    if speeds.len() > 1 {
        let row = |s: &(f64, f64, String)| {
            let (from, to) = (numbers::stop_mm(s.0), numbers::stop_mm(s.1));
            say!("limit-range", stage = stage.number, from = from, to = to, speed = s.2)
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
    let one = |(from, to, rpm): &(f64, f64, String)| {
        say!("speed-range", from = numbers::stop_mm(*from), to = numbers::stop_mm(*to), speed = rpm)
    };
    speeds(plan, stage).iter().map(one).collect::<Vec<_>>().join("; ")
}

/// The limits of a stage in words.
fn stage_limit(plan: &Plan, stage: &Stage, speeds: &[(f64, f64, String)]) -> String {
    let unsupported = numbers::stop_mm(stage.unsupported_max_mm);
    let mut limits = vec![
        say!("limit-turn-to", to = numbers::stop_mm(stage.to_mm)),
        match speeds {
            [_, _, ..] => say!("limit-speeds-below"),
            [(_, _, rpm)] => say!("limit-speed", speed = rpm),
            [] => say!("limit-speed", speed = numbers::rpm(stage.rpm_max)),
        },
        // Bar that is fed on, uncut, has a separate limit.
        match fed_on::of(plan, stage) {
            Some(_) => say!("limit-unsupported-turning", unsupported = unsupported),
            None => say!("limit-unsupported", unsupported = unsupported),
        },
    ];
    let grip = tables::grip(plan, stage);
    limits.push(match (&stage.grip, stage.counter_spindle_end_mm) {
        (Some(_), Some(distance_mm)) if words::has_bush(plan) && distance_mm > stage.unsupported_max_mm + 0.005 => {
            say!("limit-grip-distance", grip = grip, distance = numbers::stop_mm(distance_mm))
        }
        (Some(_), _) => say!("limit-grip", grip = grip),
        (None, _) => match &plan.centre {
            Some(centre) => say!("limit-centre", force = numbers::force_n(centre.force_n)),
            None => say!("limit-free"),
        },
    });
    if plan.tray_mm().is_some() && plan.stages.last().is_some_and(|s| s.number == stage.number) {
        limits.push(say!("limit-falls"));
    }
    say!("limit-stage", stage = stage.number, limits = limits.join("; "))
}
