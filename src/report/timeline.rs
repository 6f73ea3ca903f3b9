//! The table rows for time, tools and the order of a plan.

use super::table::{number, words as word};
use super::tables::Rows;
use super::{numbers, words};
use crate::job::plan::{Cycle, Operation, OrderQuote, Plan};
use crate::lang;
use crate::say;

/// Facts of the cycle, as key and value.
pub fn facts(cycle: &Cycle) -> Vec<(&'static str, String)> {
    let s = numbers::seconds;
    let (headstock, counter) = (s(cycle.headstock_s), s(cycle.counter_spindle_s));
    let hidden = s(cycle.hidden_s);
    let rear_end = match cycle.overlap.as_str() {
        "aside" if cycle.wait_s > 0.05 => say!("cycle-hidden-waits", hidden = hidden, wait = s(cycle.wait_s)),
        "aside" => say!("cycle-hidden-idle", hidden = hidden, idle = s(cycle.spare_s)),
        "in_line" => say!("cycle-in-line"),
        _ => say!("cell-none"),
    };
    let mut list = vec![
        (lang::text("fact-cycle"), say!("cycle-steady", steady = s(cycle.steady_s), alone = s(cycle.alone_s))),
        (lang::text("fact-spindles"), say!("cycle-spindles", headstock = headstock, counter = counter)),
        (lang::text("fact-rear-end"), rear_end),
    ];
    if cycle.tool_changes_s > 0.0 {
        let changes = say!("cycle-tool-changes", number = cycle.tool_changes, seconds = s(cycle.tool_changes_s));
        list.push((lang::text("fact-tool-changes"), changes));
    }
    if cycle.bar_change_s > 0.0 {
        list.push((lang::text("fact-bar-change"), say!("cycle-bar-change", seconds = s(cycle.bar_change_s))));
    }
    list
}

/// The timeline in rows: stages, stops, and what the counter-spindle does alone.
pub fn rows(cycle: &Cycle) -> Rows {
    let heads = vec![
        number(lang::text("col-from")),
        number(lang::text("col-to")),
        word(lang::text("col-spindle")),
        word(lang::text("col-what")),
        number(lang::text("col-seconds")),
    ];
    let mut groups: Vec<Vec<&Operation>> = Vec::new();
    let stops = |o: &Operation| matches!(o.work.as_str(), "hand_over" | "centre" | "regrip" | "part_off");
    let mut sorted: Vec<&Operation> = cycle.operations.iter().collect();
    // Works of two sides at the same time are grouped by side, not mixed.
    sorted.sort_by_key(|o| o.side == "headstock" || o.side == "both");
    for o in sorted {
        let alike = |l: &&Operation| l.side == o.side && l.stage == o.stage && !stops(l) && !stops(o);
        match groups.last_mut() {
            Some(group) if group.last().is_some_and(alike) => group.push(o),
            _ => groups.push(vec![o]),
        }
    }
    let from_s = |group: &Vec<&Operation>| group.first().map_or(0.0, |o| o.from_s);
    groups.sort_by(|a, b| from_s(a).total_cmp(&from_s(b)));
    let row = |group: &Vec<&Operation>| {
        let (first, last) = group.first().zip(group.last())?;
        let what = match (group.len(), first.stage) {
            (1, _) => words::plain(&first.text),
            (_, Some(stage)) => say!("timeline-stage", stage = stage, parts = parts(group)),
            (_, None) => say!("timeline-previous", parts = parts(group)),
        };
        Some(vec![
            numbers::seconds(first.from_s),
            numbers::seconds(last.to_s),
            words::key(&first.side),
            what,
            numbers::seconds(group.iter().map(|o| o.to_s - o.from_s).sum()),
        ])
    };
    Rows { heads, rows: groups.iter().filter_map(row).collect() }
}

/// What a group of works is made of: `turning 49.5, features 33.5, tool changes 9.6`.
fn parts(group: &[&Operation]) -> String {
    let sum = |works: &[&str]| {
        group.iter().filter(|o| works.contains(&o.work.as_str())).map(|o| o.to_s - o.from_s).sum::<f64>()
    };
    let turning = sum(&["turn", "plunge", "thread", "whirl"]);
    let kinds = [
        (turning, say!("timeline-turning", seconds = numbers::seconds(turning))),
        (sum(&["feature"]), say!("timeline-features", seconds = numbers::seconds(sum(&["feature"])))),
        (sum(&["back_work"]), say!("timeline-back-work", seconds = numbers::seconds(sum(&["back_work"])))),
        (sum(&["tool_change"]), say!("timeline-tool-changes", seconds = numbers::seconds(sum(&["tool_change"])))),
        (sum(&["unload"]), say!("timeline-unloading", seconds = numbers::seconds(sum(&["unload"])))),
    ];
    kinds.into_iter().filter(|(s, _)| *s > 0.0).map(|(_, text)| text).collect::<Vec<_>>().join(", ")
}

/// The works to shorten first.
pub fn shorten_first(cycle: &Cycle) -> Vec<String> {
    let told = |c: &crate::job::plan::Critical| {
        let (seconds, share) = (numbers::seconds(c.seconds), numbers::percent(c.share));
        say!("shorten-one", what = words::plain(&c.what), seconds = seconds, share = share)
    };
    cycle.critical.iter().take(5).map(told).collect()
}

/// Tool places; no rows if the machine file lists none.
pub fn tools(plan: &Plan) -> Rows {
    let heads = vec![
        word(lang::text("col-place")),
        number(lang::text("col-places")),
        number(lang::text("col-needed")),
        number(lang::text("col-elsewhere")),
        number(lang::text("col-missing")),
        number(lang::text("col-free")),
        word(lang::text("col-tools")),
    ];
    let Some(tooling) = &plan.tooling else { return Rows { heads, rows: Vec::new() } };
    let mut rows: Vec<Vec<String>> = tooling
        .places
        .iter()
        .filter(|p| p.places > 0 || !p.tools.is_empty())
        .map(|p| {
            let names: Vec<String> = p.tools.iter().map(|t| words::plain(t)).collect();
            vec![
                words::key(&p.place),
                p.places.to_string(),
                p.tools.len().to_string(),
                p.elsewhere.to_string(),
                p.short.to_string(),
                p.left.to_string(),
                words::enumeration(&names),
            ]
        })
        .collect();
    if let (Some(tools), Some(used)) = (tooling.turret_tools, tooling.turret_used) {
        let none = || numbers::NONE.to_string();
        rows.push(vec![
            say!("tools-turret"),
            tools.to_string(),
            used.to_string(),
            none(),
            none(),
            (tools - used).to_string(),
            say!("tools-turret-holds"),
        ]);
    }
    Rows { heads, rows }
}

/// The tool places without the names of the tools, for a narrow page.
pub fn tool_counts(plan: &Plan) -> Rows {
    let mut table = tools(plan);
    table.heads.pop();
    for row in &mut table.rows {
        row.pop();
    }
    table
}

/// The names of the tools, by place.
pub fn tool_names(plan: &Plan) -> Vec<String> {
    let places = plan.tooling.iter().flat_map(|t| &t.places).filter(|p| !p.tools.is_empty());
    let told = |p: &crate::job::plan::ToolRoom| {
        let names: Vec<String> = p.tools.iter().map(|t| words::plain(t)).collect();
        say!("tools-at", place = words::key(&p.place), names = names.join(", "))
    };
    places.map(told).collect()
}

/// Whether the tools fit, and the places that are left, in a line. None: the machine file lists no places.
pub fn tool_line(plan: &Plan) -> Option<String> {
    let tooling = plan.tooling.as_ref()?;
    let places = |number: fn(&crate::job::plan::ToolRoom) -> usize| {
        let told = tooling.places.iter().filter(|p| number(p) > 0);
        told.map(|p| say!("tools-places", place = words::key(&p.place), number = number(p))).collect::<Vec<_>>()
    };
    let mut left = places(|p| p.left);
    if let (Some(tools), Some(used)) = (tooling.turret_tools, tooling.turret_used) {
        left.push(say!("tools-places", place = lang::text("tools-turret"), number = tools - used));
    }
    let left = if left.is_empty() { say!("cell-none") } else { left.join(", ") };
    Some(match (tooling.fits, tooling.no_pair) {
        (true, _) => say!("tools-fit", free = left),
        (false, true) if plan.tools == "tandem" => say!("tools-no-tandem"),
        (false, true) => say!("tools-no-pair"),
        (false, false) => say!("tools-missing", missing = places(|p| p.short).join(", "), free = left),
    })
}

/// Facts of the order.
pub fn order(order: &OrderQuote) -> Vec<(&'static str, String)> {
    let hours = |h: f64| numbers::trimmed(h, 1);
    let pieces = say!(
        "order-pieces",
        pieces = say!("pieces", number = order.pieces),
        bars = say!("bars", number = order.bars),
        per_shift = numbers::trimmed(order.pieces_per_shift, 0),
    );
    let (set_up, run, shifts) = (hours(order.set_up_h), hours(order.run_h), hours(order.shifts));
    let mut list = vec![
        (lang::text("fact-pieces"), pieces),
        (lang::text("fact-time"), say!("order-time", set_up = set_up, run = run, shifts = shifts)),
    ];
    if let (Some(each), Some(all)) = (order.cost_per_piece, order.cost) {
        let currency = order.currency.as_deref().map(words::plain).unwrap_or_default();
        let (each, all) = (numbers::money(each), numbers::money(all));
        list.push((lang::text("fact-cost"), say!("order-cost", each = each, all = all, currency = currency)));
    }
    list
}

/// The order by quantity without its cost.
pub fn quantities_unpriced(order: &OrderQuote) -> Rows {
    let mut rows = quantities(order);
    rows.heads.retain(|h| h.title != lang::text("col-cost-per-piece"));
    let columns = rows.heads.len();
    rows.rows.iter_mut().for_each(|r| r.truncate(columns));
    rows
}

/// The order by quantity, with its cost last.
pub fn quantities(order: &OrderQuote) -> Rows {
    let heads = vec![
        number(lang::text("col-pieces")),
        number(lang::text("col-bars")),
        number(lang::text("col-shifts")),
        number(lang::text("col-cost-per-piece")),
    ];
    let row = |q: &crate::job::plan::Quantity| {
        vec![
            q.pieces.to_string(),
            q.bars.to_string(),
            numbers::trimmed(q.shifts, 1),
            q.cost_per_piece.map_or_else(|| numbers::NONE.to_string(), numbers::money),
        ]
    };
    Rows { heads, rows: order.quantities.iter().map(row).collect() }
}

/// The effect of a changed time or speed.
pub fn sensitivity(order: &OrderQuote) -> Vec<String> {
    let told = |s: &crate::job::plan::Sensitivity| {
        let sign = if s.change_s > 0.0 { "+" } else { "" };
        let (factor, change) = (numbers::trimmed(s.factor, 2), format!("{sign}{}", numbers::trimmed(s.change_s, 1)));
        match s.what.as_str() {
            "cutting_speed" => say!("sensitivity-speed", factor = factor, change = change),
            what => say!("sensitivity-time", what = words::key(what), factor = factor, change = change),
        }
    };
    order.sensitivity.iter().map(told).collect()
}
