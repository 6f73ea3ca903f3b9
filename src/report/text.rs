//! The whole plan as text, at most [`WIDTH`] columns: the verdict first, the cautions last.

use super::help::{helps, no_help};
use super::styled::{Styled, Tone};
use super::table::{columns, fit, render, wrap};
use super::tables::{self, Rows};
use super::{attention, cautions, content, numbers, sure, timeline, tool_uses, verdict, words};
use crate::job::plan::{Plan, Verdict};
use crate::lang;
use crate::say;

/// The longest line, columns.
pub const WIDTH: usize = 100;

/// Most columns of the first line that the name of a job takes.
const NAME_WIDTH: usize = 60;

/// A segment table of more rows than this is shortened to its head and its tail.
const ROWS_MAX: usize = 60;
const ROWS_HEAD: usize = 40;
const ROWS_TAIL: usize = 10;

/// The whole plan as plain text.
pub fn plan_text(plan: &Plan) -> String {
    plan_full(plan).plain().to_owned()
}

/// The whole plan: the verdict, why, the stages, what to look at; then everything else.
pub fn plan_full(plan: &Plan) -> Styled {
    let mut out = headline(plan, &verdict::made_or_not(plan));
    out.append(tightest(plan));
    for line in sure::lines(plan, false) {
        out.push(&wrap("  ", &line, WIDTH));
    }
    out.append(shortfall(plan));
    out.append(stages(plan, tables::stages(plan)));
    let positions = say!("title-positions", from = tables::places_from(plan));
    out.append(section(&positions, &tables::places(plan)));
    out.append(look_at(plan));
    out.append(section(lang::text("title-stops"), &tables::stops(plan)));
    let segments = shortened(tables::segments(plan), ROWS_MAX, ROWS_HEAD, ROWS_TAIL);
    out.append(section(lang::text("title-segments"), &segments));
    out.append(section(lang::text("title-features"), &tables::features(plan)));
    if plan.verdict.has_plan() {
        out.append(section(lang::text("title-time"), &tables::times(plan)));
        cycle(plan, &mut out);
        out.append(pairs(lang::text("title-quote"), &tables::quote(plan)));
        order(plan, &mut out);
        out.append(bullets(lang::text("title-limit-costs"), &content::costs(plan)));
        out.append(section(lang::text("title-scatter"), &tables::scatter(plan)));
        out.append(section(&say!("title-inputs", check = sure::nearest(plan)), &sure::inputs(plan)));
        out.append(bullets(lang::text("title-measure"), &sure::measures(plan)));
    }
    out.append(section(lang::text("title-tool-list"), &tool_uses::rows(plan)));
    out.append(section(lang::text("title-tool-places"), &timeline::tool_counts(plan)));
    out.append(bullets(lang::text("title-tools"), &timeline::tool_names(plan)));
    out.append(pairs(lang::text("title-set-up"), &tables::how(plan)));
    out.append(bullets(lang::text("title-notes"), &words::sentences(&plan.notes)));
    out.append(bullets(lang::text("title-origins"), &words::origins(plan)));
    out.append(numbered(lang::text("title-cautions"), &cautions::to_print(plan)));
    out
}

/// The first line: the verdict word, the name, and the rest of the verdict.
pub(super) fn headline(plan: &Plan, summary: &str) -> Styled {
    let name = fit(&words::plain(&plan.job), NAME_WIDTH);
    let (word, rest) = (verdict::word(plan), say!("verdict-headline", name = name, summary = summary));
    let tone = match plan.verdict {
        Verdict::Feasible => Tone::Feasible,
        Verdict::AtRisk => Tone::NearLimit,
        Verdict::Infeasible => Tone::NotFeasible,
    };
    let line = wrap(&format!("{word}  "), &rest, WIDTH);
    let mut out = Styled::default();
    out.push_as(tone, word);
    out.push(line.strip_prefix(word).unwrap_or(&line));
    out
}

/// The tightest check of a feasible plan, in numbers.
pub(super) fn tightest(plan: &Plan) -> Styled {
    let mut out = Styled::default();
    if let Some(at) = plan.margin_at.as_ref().filter(|_| plan.verdict.has_plan()) {
        let (check, turned) = (words::check_in_full(at), numbers::stop_mm(at.turned_mm));
        out.push(&wrap("  ", &say!("tightest-check", check = check, turned = turned), WIDTH));
        if at.utilisation >= attention::THIN_MARGIN_FROM {
            out.mark(&numbers::utilisation(at.utilisation), Tone::NearLimit);
        }
    }
    out
}

/// Why there is no plan and what would help; empty if there is a plan.
fn shortfall(plan: &Plan) -> Styled {
    let mut out = Styled::default();
    let Some(shortfall) = &plan.shortfall else { return out };
    out.push(&wrap("  ", &words::sentence(&shortfall.text), WIDTH));
    for list in helps(shortfall) {
        let items = &list.items;
        out.append(if list.numbered { numbered(list.title, items) } else { bullets(list.title, items) });
    }
    if let Some(tried) = no_help(shortfall) {
        out.push(&format!("\n{}", wrap("", &tried, WIDTH)));
    }
    out
}

/// The stages in a table; shares near a limit, which stand at the ends of its rows, stand out.
pub(super) fn stages(plan: &Plan, rows: Rows) -> Styled {
    let feasible = plan.verdict.has_plan();
    let mut out =
        section(if feasible { lang::text("title-stages") } else { lang::text("title-stages-reached") }, &rows);
    mark_near(plan, &mut out);
    out
}

/// What to look at first.
fn look_at(plan: &Plan) -> Styled {
    let mut out = bullets(lang::text("title-look-at"), &attention::look_at(plan));
    mark_near(plan, &mut out);
    out
}

/// Marks the shares of checks near their limits.
pub(super) fn mark_near(plan: &Plan, text: &mut Styled) {
    let near = plan.stages.iter().flat_map(|s| &s.checks).map(|c| c.utilisation);
    let mut shares: Vec<String> =
        near.filter(|used| *used >= attention::THIN_MARGIN_FROM).map(numbers::utilisation).collect();
    shares.sort_unstable();
    shares.dedup();
    for share in shares {
        text.mark(&share, Tone::NearLimit);
    }
}

/// The two spindles in time.
fn cycle(plan: &Plan, out: &mut Styled) {
    if let Some(cycle) = &plan.cycle {
        out.append(pairs(lang::text("title-cycle"), &timeline::facts(cycle)));
        out.append(section(lang::text("title-timeline"), &timeline::rows(cycle)));
        out.append(bullets(lang::text("title-shorten-first"), &timeline::shorten_first(cycle)));
    }
}

/// The order; nothing if there is none.
fn order(plan: &Plan, out: &mut Styled) {
    if let Some(order) = &plan.order {
        out.append(pairs(lang::text("title-order"), &timeline::order(order)));
        out.append(section(lang::text("title-quantities"), &timeline::quantities(order)));
        out.append(bullets(lang::text("title-sensitivity"), &timeline::sensitivity(order)));
    }
}

/// A blank line and a title.
pub(super) fn titled(title: &str) -> Styled {
    let mut out = Styled::default();
    out.push("\n");
    out.push_as(Tone::Title, title);
    out.push("\n");
    out
}

fn section(title: &str, table: &Rows) -> Styled {
    if table.rows.is_empty() {
        return Styled::default();
    }
    let mut out = titled(title);
    out.push(&render(&table.heads, &table.rows, WIDTH));
    out
}

/// The head and the tail of a table with more than `most` rows, and a row that says how many are left out.
pub(super) fn shortened(mut table: Rows, most: usize, head: usize, tail: usize) -> Rows {
    let n = table.rows.len();
    if n > most {
        let mut gap = vec![say!("short-rows-left-out", number = n - head - tail)];
        gap.resize(table.heads.len(), String::new());
        table.rows.splice(head..n - tail, [gap]);
    }
    table
}

fn pairs(title: &str, list: &[(&'static str, String)]) -> Styled {
    let width = list.iter().map(|(k, _)| columns(k)).max().unwrap_or(0);
    let mut out = titled(title);
    for (key, value) in list {
        let blank = " ".repeat(width.saturating_sub(columns(key)));
        out.push(&wrap(&format!("  {key}{blank}  "), value, WIDTH));
    }
    out
}

fn bullets(title: &str, list: &[String]) -> Styled {
    if list.is_empty() {
        return Styled::default();
    }
    let mut out = titled(title);
    for item in list {
        out.push(&wrap("  - ", item, WIDTH));
    }
    out
}

fn numbered(title: &str, list: &[String]) -> Styled {
    let mut out = titled(title);
    for (i, item) in list.iter().enumerate() {
        out.push(&wrap(&format!("  {:>2}. ", i + 1), item, WIDTH));
    }
    out
}
