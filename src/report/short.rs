//! The short answer as text, at most [`LINES`] lines of [`WIDTH`] columns, for any plan.

use super::help::{helps, no_help};
use super::styled::Styled;
use super::table::{columns, fit, wrap};
use super::text::{WIDTH, headline, mark_near, shortened, stages, tightest, titled};
use super::{attention, content, sure, tables, timeline, verdict, words};
use crate::job::plan::{Plan, estimate};
use crate::lang;
use crate::say;

/// Most lines: a screen.
pub const LINES: usize = 40;

/// A table of more stages than this is shortened to its head and its tail.
const STAGES_MAX: usize = 12;
const STAGES_HEAD: usize = 7;
const STAGES_TAIL: usize = 4;

/// Most lines of the verdict, of a reason, and of a line at the end.
const VERDICT_MAX: usize = 3;
const REASON_MAX: usize = 6;
const LINE_MAX: usize = 2;
/// Most lines of a sentence about the sampled parts, and of all of them.
const SURE_LINE_MAX: usize = 4;
const SURE_MAX: usize = 11;
/// Fewest lines in which a list says something: a blank, its title, an item, how many more there are.
const LIST_MIN: usize = 4;

/// Whose short answer it is.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Of {
    Plan,
    Check,
}

/// What stands before an item of a list.
#[derive(Clone, Copy)]
enum Lead {
    Dash,
    Number,
}

/// The plan in short, with what can be done next as the last lines.
pub fn plan_summary(plan: &Plan, next: &[String]) -> Styled {
    let rows = shortened(tables::stages(plan), STAGES_MAX, STAGES_HEAD, STAGES_TAIL);
    short(plan, Of::Plan, stages(plan, rows), next)
}

/// The verdict alone: whether the part can be made this way; if not, what stops it and what would help.
pub fn check_summary(plan: &Plan) -> Styled {
    short(plan, Of::Check, Styled::default(), &[])
}

fn short(plan: &Plan, of: Of, stages: Styled, next: &[String]) -> Styled {
    let end = end(next);
    let mut out = how_sure(plan, of);
    let left = LINES.saturating_sub(out.lines() + stages.lines() + end.lines());
    if plan.verdict.has_plan() {
        out.append(stages);
        let costs = content::costs(plan);
        let room = if costs.is_empty() { left } else { left / 2 };
        let look_at = look_at(plan, of, room);
        let left = left.saturating_sub(look_at.lines());
        out.append(look_at);
        out.append(list(lang::text("title-limit-costs"), &costs, left, Lead::Dash, |n| more(of, n)));
    } else {
        out.append(what_would_help(plan, of, left));
        out.append(stages);
    }
    out.append(end);
    out
}

/// The verdict, and how sure it is, or what stops the bar.
fn how_sure(plan: &Plan, of: Of) -> Styled {
    let mut out = headline(plan, &fit(&verdict::short(plan), VERDICT_MAX * WIDTH / 2));
    if let Some(shortfall) = &plan.shortfall {
        out.push(&at_most(wrap("  ", &words::sentence(&shortfall.text), WIDTH), REASON_MAX));
    }
    if plan.verdict.has_plan() {
        out.append(tightest(plan));
        let sure = sure::lines(plan, false);
        let sure: String = sure.iter().map(|line| at_most(wrap("  ", line, WIDTH), SURE_LINE_MAX)).collect();
        out.push(&at_most(sure, SURE_MAX));
    }
    if let Some(tools) = timeline::tool_line(plan).filter(|_| of == Of::Check) {
        out.push(&at_most(wrap("  ", &say!("short-tools", tools = tools), WIDTH), LINE_MAX));
    }
    out
}

/// What to look at, the most important first, then the notes.
fn look_at(plan: &Plan, of: Of, room: usize) -> Styled {
    let mut points = attention::look_at(plan);
    points.extend(words::sentences(&plan.notes));
    let mut out = list(lang::text("title-look-at"), &points, room, Lead::Dash, |n| more(of, n));
    mark_near(plan, &mut out);
    out
}

fn more(of: Of, number: usize) -> String {
    match of {
        Of::Plan => say!("short-more", number = number),
        Of::Check => say!("short-more-check", number = number),
    }
}

/// The changes that would help, or what to do if none does; nothing if there is a plan.
fn what_would_help(plan: &Plan, of: Of, room: usize) -> Styled {
    let mut out = Styled::default();
    let Some(shortfall) = &plan.shortfall else { return out };
    let mut left = room;
    for help in helps(shortfall) {
        let lead = if help.numbered { Lead::Number } else { Lead::Dash };
        let told = list(help.title, &help.items, left, lead, |n| match of {
            Of::Plan => say!("short-more-changes", number = n),
            Of::Check => say!("short-more-changes-check", number = n),
        });
        left = left.saturating_sub(told.lines());
        out.append(told);
    }
    if let Some(tried) = no_help(shortfall) {
        out.push(&at_most(format!("\n{}", wrap("", &tried, WIDTH)), left));
    }
    out
}

/// The caution, and what can be done next.
fn end(next: &[String]) -> Styled {
    let mut out = Styled::default();
    out.push(&format!("\n{}\n", estimate()));
    for line in next {
        // A command stays on its line, to be copied.
        let text = if columns(line) <= WIDTH { format!("{line}\n") } else { wrap("", line, WIDTH) };
        out.push(&at_most(text, LINE_MAX));
    }
    out
}

/// A list under its title in at most `room` lines. Items without room are counted.
fn list(title: &str, items: &[String], room: usize, lead: Lead, more: impl Fn(usize) -> String) -> Styled {
    if items.is_empty() || room < LIST_MIN {
        return Styled::default();
    }
    let mut out = titled(title);
    for (i, item) in items.iter().enumerate() {
        let last = i + 1 == items.len();
        let left = room.saturating_sub(out.lines() + usize::from(!last));
        let text = match lead {
            Lead::Dash => wrap("  - ", item, WIDTH),
            Lead::Number => wrap(&format!("  {:>2}. ", i + 1), item, WIDTH),
        };
        if i > 0 && text.lines().count() > left {
            out.push(&format!("  {}\n", more(items.len() - i)));
            break;
        }
        out.push(&at_most(text, left));
    }
    out
}

/// The first lines of a text; an ellipsis says that there are more.
fn at_most(text: String, lines: usize) -> String {
    if text.lines().count() <= lines {
        return text;
    }
    let mut kept: Vec<&str> = text.lines().take(lines).collect();
    let Some(last) = kept.pop() else { return String::new() };
    let last = format!("{}…", fit(last, WIDTH - 1).trim_end_matches('…'));
    kept.push(&last);
    kept.join("\n") + "\n"
}
