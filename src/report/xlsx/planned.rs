//! The sheets of the plan itself: stages, segments, checks, quote.

use super::{Cell, with_unit};
use crate::job::plan::{Plan, Stage};
use crate::lang::{self, Measure};
use crate::report::{content, tables, words};
use crate::say;

pub(super) fn stage_heads() -> Vec<String> {
    vec![
        say!("col-stage"),
        with_unit(lang::text("col-from"), lang::text("unit-mm")),
        with_unit(lang::text("col-to"), lang::text("unit-mm")),
        with_unit(lang::text("col-travel"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-grip-from"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-grip-to"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-grip-diameter"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-unsupported"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-counter-start"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-counter-end"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-headstock-start"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-headstock-end"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-lowest-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("xlsx-highest-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("col-time"), "s"),
        say!("xlsx-regrips"),
        say!("col-tightest"),
        with_unit(lang::text("xlsx-share"), "%"),
        with_unit(lang::text("xlsx-speeds"), lang::text("unit-rpm")),
        say!("col-l-over-d"),
    ]
}

pub(super) fn stages(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    fn row<'a>(plan: &Plan, s: &'a Stage) -> Vec<Cell<'a>> {
        let (grip, governing) = (s.grip.as_ref(), s.governing());
        vec![
            Cell::count(s.number),
            Cell::mm(s.from_mm),
            Cell::mm(s.to_mm),
            Cell::mm(s.travel_mm),
            Cell::maybe_mm(grip.map(|g| g.from_mm)),
            Cell::maybe_mm(grip.map(|g| g.to_mm)),
            Cell::maybe(grip.map(|g| g.diameter_mm), 3),
            Cell::mm(s.unsupported_max_mm),
            Cell::maybe_mm(s.counter_spindle_start_mm),
            Cell::maybe_mm(s.counter_spindle_end_mm),
            Cell::mm(s.headstock_start_mm),
            Cell::mm(s.headstock_end_mm),
            Cell::speed(s.rpm_min),
            Cell::speed(s.rpm_max),
            Cell::Number(s.time_s, 1),
            Cell::count(s.regrips_mm.len()),
            governing.map_or(Cell::Empty, |c| Cell::Said(words::check_name(&c.check))),
            governing.map_or(Cell::Empty, |c| Cell::Share(c.utilisation)),
            Cell::Said(content::speeds_in_row(plan, s)),
            Cell::maybe(s.l_over_d_max, 1),
        ]
    }
    plan.stages.iter().map(|s| row(plan, s)).collect()
}

pub(super) fn segment_heads() -> Vec<String> {
    vec![
        say!("col-section"),
        say!("xlsx-section-number"),
        say!("col-work"),
        with_unit(lang::text("col-from"), lang::text("unit-mm")),
        with_unit(lang::text("col-to"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-diameter"), lang::text("unit-mm")),
        say!("col-travels"),
        with_unit(lang::text("xlsx-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("col-feed"), lang::text("unit-feed")),
        say!("col-turning"),
        say!("col-stage"),
        with_unit(lang::text("col-time"), "s"),
        say!("xlsx-slowed"),
    ]
}

pub(super) fn segments(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    let name = |number: usize| {
        let section = plan.shaft.sections.iter().find(|s| s.number == number);
        section.map_or("", |s| s.name.as_str())
    };
    plan.segments
        .iter()
        .map(|s| {
            vec![
                Cell::Text(name(s.section)),
                Cell::count(s.section),
                Cell::Said(words::work(&s.work)),
                Cell::mm(s.from_mm),
                Cell::mm(s.to_mm),
                Cell::fine_mm(s.diameter_mm),
                Cell::count(s.travels),
                Cell::speed(s.rpm),
                Cell::feed(s.feed_mm),
                Cell::Said(words::key(&s.turning)),
                Cell::count(s.stage),
                Cell::Number(s.time_s, 2),
                s.slowed_by.as_deref().map_or(Cell::Empty, |check| Cell::Said(words::check_name(check))),
            ]
        })
        .collect()
}

pub(super) fn check_heads() -> Vec<String> {
    vec![
        say!("xlsx-check"),
        say!("col-stage"),
        say!("xlsx-value"),
        say!("xlsx-limit"),
        say!("xlsx-check-unit"),
        with_unit(lang::text("xlsx-share"), "%"),
        with_unit(lang::text("xlsx-turned"), lang::text("unit-mm")),
        with_unit(lang::text("xlsx-position"), lang::text("unit-mm")),
    ]
}

pub(super) fn checks(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    plan.stages
        .iter()
        .flat_map(|s| s.checks.iter().map(move |c| (s.number, c)))
        .map(|(stage, c)| {
            vec![
                Cell::Said(words::check_name(&c.check)),
                Cell::count(stage),
                Cell::Number(lang::told(c.demand, &c.unit), 5),
                Cell::Number(lang::told(c.limit, &c.unit), 5),
                Cell::Text(lang::unit_told(&c.unit)),
                Cell::Share(c.utilisation),
                Cell::mm(c.turned_mm),
                Cell::mm(c.at_mm),
            ]
        })
        .collect()
}

pub(super) fn quote_heads() -> Vec<String> {
    vec![say!("col-what"), say!("xlsx-value"), say!("xlsx-unit")]
}

pub(super) fn quote(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    let sums = [(lang::text("time-sum"), plan.time_s.total), (lang::text("time-cycle"), plan.pace_s())];
    let seconds = tables::causes(&plan.time_s).into_iter().chain(sums);
    let mut rows: Vec<Vec<Cell<'_>>> =
        seconds.map(|(what, s)| vec![Cell::Text(what), Cell::Number(s, 1), Cell::Text("s")]).collect();
    let q = &plan.quote;
    let mut add = |what, value, unit| rows.push(vec![Cell::Text(what), value, Cell::Text(unit)]);
    add(lang::text("xlsx-pieces-per-bar"), Cell::count(q.pieces_per_bar), lang::text("xlsx-pieces"));
    add(lang::text("xlsx-remnant"), Cell::measured(Measure::Place, q.remnant_mm, 1), lang::text("unit-mm"));
    add(lang::text("xlsx-material"), Cell::Number(q.material_kg, 3), "kg");
    if let Some(cost) = &q.cost {
        add(lang::text("xlsx-cost-machine"), Cell::Number(cost.machine, 2), &cost.currency);
        add(lang::text("xlsx-cost-material"), Cell::Number(cost.material, 2), &cost.currency);
        add(lang::text("xlsx-cost"), Cell::Number(cost.total, 2), &cost.currency);
    }
    rows
}
