//! The rows of every table, shared by the text and the sheet. Lengths in mm, speeds in rev/min, feeds in mm/rev, times
//! in s.

use super::table::{Head, number, words as word};
use super::{numbers, stops, words};
use crate::job::plan::{GripPlace, Plan, Segment};

/// A table: heads and rows of as many cells.
#[derive(Debug, Clone, PartialEq)]
pub struct Rows {
    /// Heads.
    pub heads: Vec<Head>,
    /// Cells.
    pub rows: Vec<Vec<String>>,
}

/// From this number of segments on, equal neighbours are shown as one row.
const GROUP_FROM: usize = 60;

/// A grip as `123–148 Ø18`, or `free`.
pub fn grip(grip: Option<&GripPlace>) -> String {
    match grip {
        Some(g) => {
            format!("{}–{} Ø{}", numbers::mm(g.from_mm), numbers::mm(g.to_mm), numbers::fine_mm(g.diameter_mm))
        }
        None => "free".to_string(),
    }
}

/// The stages.
pub fn stages(plan: &Plan) -> Rows {
    let heads = vec![
        number("stage"),
        number("from"),
        number("to"),
        number("travel"),
        word("grip"),
        number("unsupported"),
        number("rev/min"),
        number("time"),
        word("governing check"),
    ];
    let row = |s: &crate::job::plan::Stage| {
        vec![
            s.number.to_string(),
            numbers::mm(s.from_mm),
            numbers::mm(s.to_mm),
            numbers::mm(s.travel_mm),
            grip(s.grip.as_ref()),
            numbers::mm(s.unsupported_max_mm),
            numbers::rpm_range(s.rpm_min, s.rpm_max),
            numbers::seconds(s.time_s),
            s.governing().map(words::check).unwrap_or_default(),
        ]
    };
    Rows { heads, rows: plan.stages.iter().map(row).collect() }
}

/// The stops.
pub fn stops(plan: &Plan) -> Rows {
    let heads = vec![word("mark"), number("turned"), word("what"), word("surface"), word("leaves")];
    let row = |s: stops::Stop| vec![s.mark(), numbers::mm(s.turned_mm), s.what(), s.surface.clone(), s.leaves_text()];
    Rows { heads, rows: stops::stops(plan).into_iter().map(row).collect() }
}

/// The segments; equal neighbours as one row where there are very many.
pub fn segments(plan: &Plan) -> Rows {
    let heads = vec![
        word("section"),
        number("from"),
        number("to"),
        number("Ø"),
        word("work"),
        number("travels"),
        number("rev/min"),
        number("feed"),
        word("turning"),
        number("stage"),
    ];
    let group = plan.segments.len() >= GROUP_FROM;
    let mut groups: Vec<(&Segment, f64, usize)> = Vec::new();
    for segment in &plan.segments {
        match groups.last_mut() {
            Some((first, to_mm, n)) if group && looks_alike(first, segment) => {
                *to_mm = segment.to_mm;
                *n += 1;
            }
            _ => groups.push((segment, segment.to_mm, 1)),
        }
    }
    let row = |(s, to_mm, n): &(&Segment, f64, usize)| {
        let work = words::work(&s.work);
        vec![
            words::section(plan, s.section),
            numbers::mm(s.from_mm),
            numbers::mm(*to_mm),
            numbers::fine_mm(s.diameter_mm),
            if *n > 1 { format!("{n} × {work}") } else { work },
            s.travels.to_string(),
            numbers::rpm(s.rpm),
            numbers::trimmed(s.feed_mm, 4),
            words::key(&s.turning),
            s.stage.to_string(),
        ]
    };
    Rows { heads, rows: groups.iter().map(row).collect() }
}

/// Whether two segments would give the same row but for their place.
fn looks_alike(a: &Segment, b: &Segment) -> bool {
    a.section == b.section
        && a.work == b.work
        && a.travels == b.travels
        && a.turning == b.turning
        && a.stage == b.stage
        && numbers::fine_mm(a.diameter_mm) == numbers::fine_mm(b.diameter_mm)
        && numbers::rpm(a.rpm) == numbers::rpm(b.rpm)
        && numbers::trimmed(a.feed_mm, 4) == numbers::trimmed(b.feed_mm, 4)
}

/// The features and their moments.
pub fn features(plan: &Plan) -> Rows {
    let heads =
        vec![word("feature"), word("what"), number("at"), number("done at turned"), number("stage"), number("time")];
    let row = |f: &crate::job::plan::FeatureMoment| {
        vec![
            words::key(&f.feature),
            words::plain(&f.text),
            numbers::mm(f.at_mm),
            f.turned_mm.map_or_else(|| "after part-off".to_string(), numbers::mm),
            f.stage.map_or_else(|| numbers::NONE.to_string(), |n| n.to_string()),
            numbers::seconds(f.time_s),
        ]
    };
    Rows { heads, rows: plan.features.iter().map(row).collect() }
}

/// The witness lines.
pub fn witnesses(plan: &Plan) -> Rows {
    let heads = vec![number("at"), word("surface"), word("cause"), word("surface marked")];
    let row = |w: &crate::job::plan::Witness| {
        vec![numbers::mm(w.at_mm), words::section(plan, w.section), words::key(&w.cause), words::key(&w.interrupt)]
    };
    Rows { heads, rows: plan.witnesses.iter().map(row).collect() }
}

/// The time a part by cause; causes that take none are left out.
pub fn times(plan: &Plan) -> Rows {
    let heads = vec![word("time a part"), number("s"), number("share")];
    let t = &plan.time_s;
    let causes = [
        ("cutting", t.cutting),
        ("overhead of travels", t.segments),
        ("hand-overs", t.hand_overs),
        ("headstock re-grips", t.regrips),
        ("features", t.features),
        ("part-off", t.part_off),
        ("back-end work", t.back_work),
        ("penalties for lines", t.penalties),
    ];
    let share = |s: f64| if t.total > 0.0 { numbers::percent(s / t.total) } else { numbers::NONE.to_string() };
    let mut rows: Vec<Vec<String>> = causes
        .iter()
        .filter(|(_, s)| *s != 0.0)
        .map(|(name, s)| vec![name.to_string(), numbers::seconds(*s), share(*s)])
        .collect();
    rows.push(vec!["total".to_string(), numbers::seconds(t.total), share(t.total)]);
    Rows { heads, rows }
}

/// How it is made, as key and value; what the job does not give is left out.
pub fn how(plan: &Plan) -> Vec<(&'static str, String)> {
    let mut list = Vec::new();
    if let Some(drawing) = &plan.drawing {
        let revision = plan.revision.as_ref().map(|r| format!(", revision {}", words::plain(r))).unwrap_or_default();
        list.push(("drawing", format!("{}{revision}", words::plain(drawing))));
    }
    list.push(("length", format!("{} mm", numbers::mm(plan.length_mm))));
    list.push(("material", words::plain(&plan.material)));
    list.push((
        "bar",
        format!("{}, bars of {} mm", words::plain(&plan.shaft.stock_label), numbers::mm(plan.shaft.bar_length_mm)),
    ));
    list.push(("machine", words::plain(&plan.machine)));
    list.push(("holding", words::holding(&plan.holding)));
    list.push(("tools", words::tools(&plan.tools)));
    let hold = plan.layout.collet_hold_mm.map(|l| format!(", holds {} mm", numbers::mm(l))).unwrap_or_default();
    list.push(match &plan.collet {
        Some(c) => ("collet", format!("{} in the counter-spindle{hold}", words::plain(c))),
        None => ("collet", "none in the counter-spindle".to_string()),
    });
    list
}

/// The quote, as key and value.
pub fn quote(plan: &Plan) -> Vec<(&'static str, String)> {
    let q = &plan.quote;
    let mut list = vec![
        (
            "bar",
            format!(
                "{} from a bar of {} mm, remnant {} mm",
                numbers::count(q.pieces_per_bar, "piece", "pieces"),
                numbers::mm(plan.shaft.bar_length_mm),
                numbers::mm(q.remnant_mm)
            ),
        ),
        ("material", format!("{} kg a part", numbers::kg(q.material_kg))),
    ];
    if let Some(c) = &q.cost {
        let currency = words::plain(&c.currency);
        list.push((
            "cost",
            format!(
                "{} {currency} a part: machine {}, material {}",
                numbers::money(c.total),
                numbers::money(c.machine),
                numbers::money(c.material)
            ),
        ));
    }
    list
}
