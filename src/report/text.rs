//! The plan as plain text, at most [`WIDTH`] columns, no colours: the verdict first, the cautions last.

use super::help::{change_text, help_title, no_help};
use super::table::{columns, fit, render, wrap};
use super::tables::{self, Rows};
use super::{attention, cautions, content, numbers, timeline, verdict, words};
use crate::job::plan::{Plan, estimate};

/// The longest line, columns.
pub const WIDTH: usize = 100;

/// Most columns of the first line that the name of a job takes.
const NAME_WIDTH: usize = 60;

/// A segment table of more rows than this is shortened to its head and its tail.
const ROWS_MAX: usize = 60;
const ROWS_HEAD: usize = 40;
const ROWS_TAIL: usize = 10;

/// The whole plan: the verdict, why, the stages, what to look at; then everything else.
pub fn plan_text(plan: &Plan) -> String {
    let mut out = headline(plan);
    out.push_str(&tightest(plan));
    out.push_str(&shortfall(plan));
    out.push_str(&section("Stages (mm, rev/min, s)", &tables::stages(plan)));
    out.push_str(&section(&format!("Where things stand ({})", tables::places_from(plan)), &tables::places(plan)));
    out.push_str(&bullets("Look at", &attention::look_at(plan)));
    out.push_str(&section("Where the feed stops (mm turned)", &tables::stops(plan)));
    out.push_str(&section("Segments (mm, rev/min, mm/rev)", &shortened(tables::segments(plan))));
    out.push_str(&section("Features (mm, s)", &tables::features(plan)));
    if verdict::is_feasible(plan) {
        out.push_str(&section("Time", &tables::times(plan)));
        out.push_str(&cycle(plan));
        out.push_str(&pairs("Quote", &tables::quote(plan)));
        out.push_str(&order(plan));
        out.push_str(&bullets("What a limit costs", &content::costs(plan)));
        out.push_str(&section("Scatter of inputs (mm)", &tables::scatter(plan)));
        out.push_str(&tables::scatter_sum(plan).map(|s| wrap("  ", &s, WIDTH)).unwrap_or_default());
    }
    out.push_str(&tools(plan));
    out.push_str(&pairs("How it is made", &tables::how(plan)));
    out.push_str(&bullets("Notes", &words::sentences(&plan.notes)));
    out.push_str("\nCautions\n");
    for (i, caution) in cautions::to_print(plan).iter().enumerate() {
        out.push_str(&wrap(&format!("  {:>2}. ", i + 1), caution, WIDTH));
    }
    out
}

/// The verdict alone: whether the part can be made this way; if not, what stops it and what would help.
pub fn verdict_text(plan: &Plan) -> String {
    let mut out = headline(plan);
    out.push_str(&tightest(plan));
    out.push_str(&shortfall(plan));
    if verdict::is_feasible(plan) {
        out.push_str(&bullets("Look at", &attention::look_at(plan)));
        out.push_str(&bullets("What a limit costs", &content::costs(plan)));
        out.push_str(&bullets("Notes", &words::sentences(&plan.notes)));
    }
    if let Some(line) = timeline::tool_line(plan) {
        out.push_str(&wrap("  tools: ", &line, WIDTH));
    }
    out.push_str(&format!("\n{}\n", estimate()));
    out
}

fn headline(plan: &Plan) -> String {
    let name = fit(&words::plain(&plan.job), NAME_WIDTH);
    wrap(&format!("{}  ", verdict::word(plan)), &format!("{name}: {}", verdict::summary(plan)), WIDTH)
}

/// The tightest check of a feasible plan, in numbers.
fn tightest(plan: &Plan) -> String {
    let Some(at) = plan.margin_at.as_ref().filter(|_| verdict::is_feasible(plan)) else { return String::new() };
    let (check, turned) = (words::check_in_full(at), numbers::mm(at.turned_mm));
    wrap("  ", &format!("Tightest check: {check} at turned length {turned} mm"), WIDTH)
}

/// Why there is no plan and what would help; empty if there is a plan.
fn shortfall(plan: &Plan) -> String {
    let Some(shortfall) = &plan.shortfall else { return String::new() };
    let mut out = wrap("  ", &words::sentence(&shortfall.text), WIDTH);
    out.push('\n');
    if shortfall.changes.is_empty() {
        out.push_str(&wrap("", &no_help(shortfall), WIDTH));
        return out;
    }
    out.push_str(&format!("What would help ({})\n", help_title(shortfall)));
    for (i, change) in shortfall.changes.iter().enumerate() {
        out.push_str(&wrap(&format!("  {:>2}. ", i + 1), &change_text(change), WIDTH));
    }
    if let Some(tried) = &shortfall.tried {
        out.push_str(&wrap("  ", &format!("{}.", words::sentence(tried)), WIDTH));
    }
    out
}

/// The two spindles in time.
fn cycle(plan: &Plan) -> String {
    let mut out = String::new();
    if let Some(cycle) = &plan.cycle {
        out.push_str(&pairs("Part after part", &timeline::facts(cycle)));
        out.push_str(&section("Both spindles in time (s)", &timeline::rows(cycle)));
        out.push_str(&bullets("What to shorten first", &timeline::shorten_first(cycle)));
    }
    out
}

/// The tools and their places.
fn tools(plan: &Plan) -> String {
    section("Tool places", &timeline::tool_counts(plan)) + &bullets("Tools", &timeline::tool_names(plan))
}

/// The order; empty if there is none.
fn order(plan: &Plan) -> String {
    let Some(order) = &plan.order else { return String::new() };
    pairs("Order", &timeline::order(order))
        + &section("The order by quantity", &timeline::quantities(order))
        + &bullets("What a change of a time does", &timeline::sensitivity(order))
}

fn section(title: &str, table: &Rows) -> String {
    if table.rows.is_empty() {
        return String::new();
    }
    format!("\n{title}\n{}", render(&table.heads, &table.rows, WIDTH))
}

/// The head and the tail of a very long table, and a row that says what is left out.
fn shortened(mut table: Rows) -> Rows {
    let n = table.rows.len();
    if n > ROWS_MAX {
        let mut gap = vec![format!("… {} more", n - ROWS_HEAD - ROWS_TAIL)];
        gap.resize(table.heads.len(), String::new());
        table.rows.splice(ROWS_HEAD..n - ROWS_TAIL, [gap]);
    }
    table
}

fn pairs(title: &str, list: &[(&'static str, String)]) -> String {
    let width = list.iter().map(|(k, _)| columns(k)).max().unwrap_or(0);
    let mut out = format!("\n{title}\n");
    for (key, value) in list {
        out.push_str(&wrap(&format!("  {key:<width$}  "), value, WIDTH));
    }
    out
}

fn bullets(title: &str, list: &[String]) -> String {
    if list.is_empty() {
        return String::new();
    }
    let mut out = format!("\n{title}\n");
    for item in list {
        out.push_str(&wrap("  - ", item, WIDTH));
    }
    out
}
