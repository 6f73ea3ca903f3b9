//! The sheets of what is around the turning: features, tools, their places, the order, positions for the programmer. A sheet without a
//! row is left out.

use super::{Cell, Sheet, with_unit};
use crate::job::plan::{FeatureMoment, OrderQuote, Plan, Position, Positions, ToolUse};
use crate::lang::{self, Measure};
use crate::report::{timeline, words};
use crate::say;

fn filled<'a>(name: &'a str, heads: Vec<String>, rows: Vec<Vec<Cell<'a>>>) -> Option<Sheet<'a>> {
    (!rows.is_empty()).then(|| Sheet::plain(name, heads, rows))
}

pub(super) fn features(plan: &Plan) -> Option<Sheet<'_>> {
    let heads = vec![
        say!("col-feature"),
        say!("col-what"),
        with_unit(lang::text("xlsx-position"), lang::text("unit-mm")),
        with_unit(lang::text("col-turned-when-done"), lang::text("unit-mm")),
        say!("col-stage"),
        with_unit(lang::text("col-time"), "s"),
        say!("col-tool"),
        with_unit(lang::text("xlsx-thrust"), lang::text("unit-n")),
        with_unit(lang::text("xlsx-axial"), lang::text("unit-n")),
        with_unit(lang::text("xlsx-torque"), "N·m"),
    ];
    let row = |f: &FeatureMoment| {
        vec![
            Cell::Said(words::key(&f.feature)),
            Cell::Said(words::plain(&f.text)),
            Cell::mm(f.at_mm),
            f.turned_mm.map_or_else(|| Cell::Said(say!("cell-after-part-off")), Cell::mm),
            f.stage.map_or(Cell::Empty, Cell::count),
            Cell::Number(f.time_s, 1),
            Cell::Said(words::plain(&f.tool)),
            Cell::maybe_force(f.thrust_n),
            Cell::maybe_force(f.axial_n),
            Cell::maybe(f.torque_nm, 2),
        ]
    };
    filled(lang::text("xlsx-features"), heads, plan.features.iter().map(row).collect())
}

/// The turning tools with their cuts, then the tools that only have a place.
pub(super) fn tools(plan: &Plan) -> Option<Sheet<'_>> {
    let heads = vec![
        say!("col-tool"),
        say!("xlsx-place-kind"),
        say!("col-station"),
        say!("col-insert"),
        with_unit(lang::text("xlsx-nose-radius"), lang::text("unit-mm")),
        say!("col-sections"),
        with_unit(lang::text("xlsx-depth-least"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-depth-most"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-feed-least"), lang::text("unit-feed")),
        with_unit(lang::text("xlsx-feed-most"), lang::text("unit-feed")),
        with_unit(lang::text("xlsx-lowest-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("xlsx-highest-speed"), lang::text("unit-rpm")),
    ];
    let places = || plan.tooling.iter().flat_map(|t| &t.places);
    let place_of = |tool: &str| places().find(|p| p.tools.iter().any(|t| t == tool)).map(|p| words::key(&p.place));
    let told = |text: Option<String>| text.map_or(Cell::Empty, Cell::Said);
    let turning = |t: &ToolUse| {
        let sections: Vec<String> = t.sections.iter().map(usize::to_string).collect();
        vec![
            Cell::Said(words::plain(&t.tool)),
            told(place_of(&t.tool)),
            told(t.station.as_deref().map(words::plain)),
            told(t.insert.as_deref().map(words::plain)),
            t.nose_radius_mm.map_or(Cell::Empty, |mm| Cell::measured(Measure::Size, mm, 2)),
            Cell::Said(sections.join(", ")),
            Cell::maybe_fine_mm(t.depth_mm.map(|d| d[0])),
            Cell::maybe_fine_mm(t.depth_mm.map(|d| d[1])),
            Cell::feed(t.feed_mm[0]),
            Cell::feed(t.feed_mm[1]),
            Cell::speed(t.rpm[0]),
            Cell::speed(t.rpm[1]),
        ]
    };
    let others = places().flat_map(|p| p.tools.iter().map(move |tool| (tool, p)));
    let others = others.filter(|(tool, _)| !plan.tool_list.iter().any(|t| t.tool == **tool));
    let others = others.map(|(tool, p)| vec![Cell::Said(words::plain(tool)), Cell::Said(words::key(&p.place))]);
    filled(lang::text("xlsx-tools"), heads, plan.tool_list.iter().map(turning).chain(others).collect())
}

pub(super) fn places(plan: &Plan) -> Option<Sheet<'_>> {
    let heads = vec![
        say!("col-place"),
        say!("col-places"),
        say!("col-needed"),
        say!("col-elsewhere"),
        say!("col-missing"),
        say!("col-free"),
    ];
    let tooling = plan.tooling.as_ref()?;
    let kinds = tooling.places.iter().filter(|p| p.places > 0 || !p.tools.is_empty()).map(|p| {
        let counts = [p.places, p.tools.len(), p.elsewhere, p.short, p.left];
        [Cell::Said(words::key(&p.place))].into_iter().chain(counts.map(Cell::count)).collect()
    });
    let turret = tooling.turret_tools.zip(tooling.turret_used).map(|(tools, used)| {
        let name = Cell::Text(lang::text("tools-turret"));
        vec![
            name,
            Cell::count(tools),
            Cell::count(used),
            Cell::Empty,
            Cell::Empty,
            Cell::count(tools.saturating_sub(used)),
        ]
    });
    filled(lang::text("xlsx-places"), heads, kinds.chain(turret).collect())
}

/// The order by quantity. It has prices if the quote has them.
pub(super) fn order(plan: &Plan) -> Option<Sheet<'_>> {
    let order = plan.order.as_ref()?;
    let priced = plan.quote.cost.is_some();
    let mut heads = vec![say!("col-pieces"), say!("col-bars"), say!("col-shifts")];
    if let Some(currency) = order.currency.as_deref().filter(|_| priced) {
        heads.push(with_unit(lang::text("col-cost-per-piece"), &words::plain(currency)));
    }
    let row = |pieces: usize, bars: usize, shifts: f64, each: Option<f64>| {
        let cost = each.filter(|_| priced).map(|each| Cell::Number(each, 2));
        [Cell::count(pieces), Cell::count(bars), Cell::Number(shifts, 2)].into_iter().chain(cost).collect()
    };
    // The quantities have that of the order among them.
    let rows = order.quantities.iter().map(|q| row(q.pieces, q.bars, q.shifts, q.cost_per_piece)).collect();
    let unpriced = OrderQuote { cost: order.cost.filter(|_| priced), ..order.clone() };
    let above = timeline::order(&unpriced).into_iter().map(|(what, told)| say!("xlsx-fact", what = what, told = told));
    Some(Sheet { above: above.collect(), ..Sheet::plain(lang::text("xlsx-order"), heads, rows) })
}

/// The table for the programmer, below its caution and the directions of its positions.
pub(super) fn positions(positions: &Positions) -> Option<Sheet<'_>> {
    let rpm = lang::text("unit-rpm");
    let heads = vec![
        say!("col-what"),
        say!("col-stage"),
        say!("moves-col-actor"),
        say!("moves-col-wait"),
        say!("moves-col-waits-for"),
        with_unit(lang::text("moves-col-start"), "s"),
        with_unit(lang::text("moves-col-turned"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-diameter"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-leading"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-lag"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-headstock"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-counter"), lang::text("unit-mm")),
        with_unit(lang::text("moves-col-headstock-speed"), rpm),
        with_unit(lang::text("moves-col-counter-speed"), rpm),
        with_unit(lang::text("col-feed"), lang::text("unit-feed")),
        say!("col-tool"),
    ];
    fn row(p: &Position) -> Vec<Cell<'_>> {
        vec![
            Cell::Text(&p.what),
            p.stage.map_or(Cell::Empty, Cell::count),
            Cell::Said(words::key(&p.actor)),
            p.wait_point.map_or(Cell::Empty, Cell::count),
            Cell::Text(&p.waits_for),
            Cell::maybe(p.start_s, 1),
            Cell::maybe_fine_mm(p.turned_mm),
            Cell::maybe_fine_mm(p.diameter_mm),
            Cell::maybe_fine_mm(p.leading_diameter_mm),
            Cell::maybe_fine_mm(p.lag_mm),
            Cell::maybe_fine_mm(p.headstock_mm),
            Cell::maybe_fine_mm(p.counter_spindle_mm),
            p.headstock_rpm.map_or(Cell::Empty, Cell::speed),
            p.counter_spindle_rpm.map_or(Cell::Empty, Cell::speed),
            p.feed_mm.map_or(Cell::Empty, Cell::feed),
            Cell::Text(&p.tool),
        ]
    }
    let above = [&positions.caution].into_iter().chain(&positions.directions).cloned().collect();
    let sheet = filled(lang::text("xlsx-positions"), heads, positions.rows.iter().map(row).collect())?;
    Some(Sheet { above, ..sheet })
}
