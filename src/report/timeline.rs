//! The table rows for time, tools and the order of a plan.

use super::table::{number, words as word};
use super::tables::Rows;
use super::{numbers, words};
use crate::job::plan::{Cycle, Operation, OrderQuote, Plan};

/// Facts of the cycle, as key and value.
pub fn facts(cycle: &Cycle) -> Vec<(&'static str, String)> {
    let s = numbers::seconds;
    let mut list = vec![
        ("part to part", format!("{} s in the steady run; one part alone {} s", s(cycle.steady_s), s(cycle.alone_s))),
        ("spindles", format!("headstock {} s, counter-spindle {} s", s(cycle.headstock_s), s(cycle.counter_spindle_s))),
    ];
    let overlap = match cycle.overlap.as_str() {
        "aside" if cycle.wait_s > 0.05 => format!(
            "hides {} s behind the next part's free stage; the headstock waits {} s",
            s(cycle.hidden_s),
            s(cycle.wait_s)
        ),
        "aside" => {
            format!("{} s hidden behind the next part's free stage, {} s to spare", s(cycle.hidden_s), s(cycle.spare_s))
        }
        "in_line" => "done before the next part begins: the counter-spindle works in line".to_string(),
        _ => "none".to_string(),
    };
    list.push(("rear end", overlap));
    if cycle.tool_changes_s > 0.0 {
        list.push((
            "tool changes",
            format!("{}, {} s", numbers::count(cycle.tool_changes, "change", "changes"), s(cycle.tool_changes_s)),
        ));
    }
    if cycle.bar_change_s > 0.0 {
        list.push(("bar change", format!("{} s a part", s(cycle.bar_change_s))));
    }
    list
}

/// The timeline in rows: stages, stops, and what the counter-spindle does alone.
pub fn rows(cycle: &Cycle) -> Rows {
    let heads = vec![number("from"), number("to"), word("side"), word("what"), number("s")];
    let mut groups: Vec<Vec<&Operation>> = Vec::new();
    let stops = |o: &Operation| matches!(o.work.as_str(), "hand_over" | "regrip" | "part_off");
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
            (_, Some(stage)) => format!("stage {stage}: {}", parts(group)),
            (_, None) => format!("part before: {}", parts(group)),
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
    let kinds = [
        ("turning", &["turn", "plunge", "thread", "whirl"][..]),
        ("features", &["feature"]),
        ("rear end", &["back_work"]),
        ("tool changes", &["tool_change"]),
        ("unloading", &["unload"]),
    ];
    let sum = |works: &[&str]| {
        group.iter().filter(|o| works.contains(&o.work.as_str())).map(|o| o.to_s - o.from_s).sum::<f64>()
    };
    let told = kinds.iter().map(|(name, works)| (name, sum(works))).filter(|(_, s)| *s > 0.0);
    told.map(|(name, s)| format!("{name} {}", numbers::seconds(s))).collect::<Vec<_>>().join(", ")
}

/// The works to shorten first.
pub fn shorten_first(cycle: &Cycle) -> Vec<String> {
    let told = |c: &crate::job::plan::Critical| {
        format!(
            "{}: {} s, {} of the time from part to part",
            words::plain(&c.what),
            numbers::seconds(c.seconds),
            numbers::percent(c.share)
        )
    };
    cycle.critical.iter().take(5).map(told).collect()
}

/// Tool places; no rows if the machine file lists none.
pub fn tools(plan: &Plan) -> Rows {
    let heads = vec![
        word("place"),
        number("there are"),
        number("needed"),
        number("elsewhere"),
        number("short"),
        number("left"),
        word("tools"),
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
            "turret".into(),
            tools.to_string(),
            used.to_string(),
            none(),
            none(),
            (tools - used).to_string(),
            "what the places beside the bar and in front do not take".into(),
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
        format!("{}: {}", words::key(&p.place), names.join(", "))
    };
    places.map(told).collect()
}

/// Whether the tools fit, and the places that are left, in a line. None: the machine file lists no places.
pub fn tool_line(plan: &Plan) -> Option<String> {
    let tooling = plan.tooling.as_ref()?;
    let places = |number: fn(&crate::job::plan::ToolRoom) -> usize| {
        let told = tooling.places.iter().filter(|p| number(p) > 0);
        told.map(|p| format!("{} {}", words::key(&p.place), number(p))).collect::<Vec<_>>()
    };
    let mut left = places(|p| p.left);
    if let (Some(tools), Some(used)) = (tooling.turret_tools, tooling.turret_used) {
        left.push(format!("turret {}", tools - used));
    }
    let left = if left.is_empty() { "nothing".to_string() } else { left.join(", ") };
    Some(match (tooling.fits, tooling.no_pair) {
        (true, _) => format!("every tool has its place; left over: {left}"),
        (false, true) => "the turning tools stand on one side, a pair cannot cut".to_string(),
        (false, false) => format!("places short: {}; left over: {left}", places(|p| p.short).join(", ")),
    })
}

/// Facts of the order.
pub fn order(order: &OrderQuote) -> Vec<(&'static str, String)> {
    let hours = |h: f64| numbers::trimmed(h, 1);
    let shifts = hours(order.shifts);
    let mut list = vec![
        (
            "pieces",
            format!(
                "{} from {}, {} a shift",
                order.pieces,
                numbers::count(order.bars, "bar", "bars"),
                numbers::trimmed(order.pieces_per_shift, 0)
            ),
        ),
        (
            "time",
            format!(
                "set-up {} h, run {} h: {shifts} {}",
                hours(order.set_up_h),
                hours(order.run_h),
                if shifts == "1" { "shift" } else { "shifts" }
            ),
        ),
    ];
    if let (Some(each), Some(all)) = (order.cost_per_piece, order.cost) {
        let currency = order.currency.as_deref().map(words::plain).unwrap_or_default();
        let text = format!("{} {currency} a piece, {} {currency} in all", numbers::money(each), numbers::money(all));
        list.push(("cost", text));
    }
    list
}

/// Head of the column of costs.
const COST: &str = "cost a piece";

/// The order by quantity without its cost.
pub fn quantities_unpriced(order: &OrderQuote) -> Rows {
    let mut rows = quantities(order);
    rows.heads.retain(|h| h.title != COST);
    let columns = rows.heads.len();
    rows.rows.iter_mut().for_each(|r| r.truncate(columns));
    rows
}

/// The order by quantity, with its cost last.
pub fn quantities(order: &OrderQuote) -> Rows {
    let heads = vec![number("pieces"), number("bars"), number("shifts"), number(COST)];
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
        let what = if s.what == "cutting_speed" {
            "cutting speed".into()
        } else {
            format!("time of a {}", words::key(&s.what))
        };
        let sign = if s.change_s > 0.0 { "+" } else { "" };
        format!("{what} × {}: {sign}{} s a part", numbers::trimmed(s.factor, 2), numbers::trimmed(s.change_s, 1))
    };
    order.sensitivity.iter().map(told).collect()
}
