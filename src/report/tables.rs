//! The rows of every table, shared by the text and the sheet. Lengths in mm, speeds in rev/min, feeds in mm/rev, times
//! in s.

use super::table::{Head, number, words as word};
use super::{numbers, stops, words};
use crate::job::plan::{Plan, Segment, Stage, Times};
use crate::lang;
use crate::say;

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

/// The grip of a stage as `123–148 Ø18`, `centre` or `free`.
pub fn grip(plan: &Plan, stage: &Stage) -> String {
    match &stage.grip {
        Some(g) => {
            format!("{}–{} Ø{}", numbers::mm(g.from_mm), numbers::mm(g.to_mm), numbers::fine_mm(g.diameter_mm))
        }
        None if plan.centre.is_some() => say!("grip-centre"),
        None => say!("grip-free"),
    }
}

/// The stages, as narrow as a page of text: the travel follows from both ends.
pub fn stages(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-stage")),
        number(lang::text("col-from")),
        number(lang::text("col-to")),
        word(lang::text("col-grip")),
        number(lang::text("col-unsupported")),
        number(lang::text("col-l-over-d")),
        number(lang::text("col-speed")),
        number(lang::text("col-time")),
        word(lang::text("col-tightest")),
    ];
    let row = |s: &Stage| {
        vec![
            s.number.to_string(),
            numbers::stop_mm(s.from_mm),
            numbers::stop_mm(s.to_mm),
            grip(plan, s),
            numbers::stop_mm(s.unsupported_max_mm),
            ratio(s),
            numbers::rpm_range(s.rpm_min, s.rpm_max),
            time(s),
            governing(s),
        ]
    };
    Rows { heads, rows: plan.stages.iter().map(row).collect() }
}

/// L/d of a stage.
fn ratio(stage: &Stage) -> String {
    stage.l_over_d_max.map_or_else(|| numbers::NONE.to_string(), |r| numbers::fixed(r, 1))
}

/// Where counter-spindle and headstock stand at the start and the end of each stage.
pub fn places(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-stage")),
        number(lang::text("col-counter-spindle-start")),
        number(lang::text("col-end")),
        number(lang::text("col-headstock-start")),
        number(lang::text("col-end")),
        word(lang::text("col-regrips-at")),
    ];
    let row = |s: &Stage| {
        let headstock = headstock(s);
        vec![
            s.number.to_string(),
            optional_mm(s.counter_spindle_start_mm),
            optional_mm(s.counter_spindle_end_mm),
            optional_mm(headstock.map(|h| h.0)),
            optional_mm(headstock.map(|h| h.1)),
            regrips(s),
        ]
    };
    Rows { heads, rows: plan.stages.iter().map(row).collect() }
}

/// The stages with everything a setter sets, as wide as a sheet.
pub fn stages_in_full(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-stage")),
        number(lang::text("col-from")),
        number(lang::text("col-to")),
        number(lang::text("col-travel")),
        word(lang::text("col-grip")),
        word(lang::text("col-collet")),
        number(lang::text("col-counter-spindle")),
        number(lang::text("col-headstock")),
        word(lang::text("col-regrips-at")),
        number(lang::text("col-unsupported-split")),
        number(lang::text("col-l-over-d")),
        number(lang::text("col-speed")),
        number(lang::text("col-feed")),
        number(lang::text("col-time")),
        word(lang::text("col-tightest")),
    ];
    let collet = plan.collet.as_deref().map_or_else(|| numbers::NONE.to_string(), words::plain);
    let row = |s: &Stage| {
        let counter = s.counter_spindle_start_mm.zip(s.counter_spindle_end_mm);
        vec![
            s.number.to_string(),
            numbers::stop_mm(s.from_mm),
            numbers::stop_mm(s.to_mm),
            numbers::mm(s.travel_mm),
            grip(plan, s),
            if s.grip.is_some() { collet.clone() } else { numbers::NONE.to_string() },
            from_to(counter),
            from_to(headstock(s)),
            regrips(s),
            numbers::stop_mm(s.unsupported_max_mm),
            ratio(s),
            numbers::rpm_range(s.rpm_min, s.rpm_max),
            feeds(plan, s),
            time(s),
            governing(s),
        ]
    };
    Rows { heads, rows: plan.stages.iter().map(row).collect() }
}

/// What [`places`] and [`stages_in_full`] measure from.
pub fn places_from(plan: &Plan) -> &'static str {
    if words::has_bush(plan) { lang::text("positions-from-bush") } else { lang::text("positions-without-bush") }
}

/// Where the headstock's nose stands at the start and the end of a stage. None: this was not worked out.
pub fn headstock(stage: &Stage) -> Option<(f64, f64)> {
    let known = stage.headstock_start_mm > 0.0 || stage.headstock_end_mm > 0.0;
    known.then_some((stage.headstock_start_mm, stage.headstock_end_mm))
}

fn optional_mm(value_mm: Option<f64>) -> String {
    value_mm.map_or_else(|| numbers::NONE.to_string(), numbers::mm)
}

fn from_to(places_mm: Option<(f64, f64)>) -> String {
    let pair = |(from, to): (f64, f64)| format!("{} → {}", numbers::mm(from), numbers::mm(to));
    places_mm.map_or_else(|| numbers::NONE.to_string(), pair)
}

fn regrips(stage: &Stage) -> String {
    let places: Vec<String> = stage.regrips_mm.iter().map(|t| numbers::stop_mm(*t)).collect();
    if places.is_empty() { numbers::NONE.to_string() } else { places.join(", ") }
}

fn time(stage: &Stage) -> String {
    if stage.time_s > 0.0 { numbers::seconds(stage.time_s) } else { numbers::NONE.to_string() }
}

fn governing(stage: &Stage) -> String {
    stage.governing().map_or_else(|| numbers::NONE.to_string(), words::check)
}

/// Lowest and highest feed of what is turned in a stage.
fn feeds(plan: &Plan, stage: &Stage) -> String {
    let turned = plan.segments.iter().filter(|s| s.stage == stage.number && s.feed_mm > 0.0);
    let (low, high) = turned.fold((f64::INFINITY, 0.0_f64), |(low, high), s| (low.min(s.feed_mm), high.max(s.feed_mm)));
    let (low, high) = (numbers::short_feed_mm(low), numbers::short_feed_mm(high));
    match (high.as_str(), low == high) {
        ("0", _) => numbers::NONE.to_string(),
        (_, true) => high,
        _ => format!("{low}–{high}"),
    }
}

/// The stops.
pub fn stops(plan: &Plan) -> Rows {
    let heads = vec![
        word(lang::text("col-mark")),
        number(lang::text("col-at")),
        word(lang::text("col-done")),
        word(lang::text("col-surface")),
        word(lang::text("col-leaves")),
    ];
    let row =
        |s: stops::Stop| vec![s.mark(), numbers::stop_mm(s.turned_mm), s.what(), s.surface.clone(), s.leaves_text()];
    Rows { heads, rows: stops::stops(plan).into_iter().map(row).collect() }
}

/// The segments; if there are very many, equal neighbours share a row.
pub fn segments(plan: &Plan) -> Rows {
    let mut heads = vec![
        word(lang::text("col-section")),
        number(lang::text("col-from")),
        number(lang::text("col-to")),
        number(lang::text("col-diameter")),
        word(lang::text("col-work")),
        number(lang::text("col-travels")),
        number(lang::text("col-speed")),
        number(lang::text("col-feed")),
        word(lang::text("col-turning")),
        number(lang::text("col-stage")),
    ];
    // With a tool list each cut has its own tool and depth.
    let listed = !plan.tool_list.is_empty();
    if listed {
        heads.extend([word(lang::text("col-depth")), word(lang::text("col-tool"))]);
    }
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
    let mut rows = Vec::new();
    for (s, to_mm, n) in &groups {
        let work = words::work(&s.work);
        let row = |work: String, travels: usize, rpm: f64, feed_mm: f64| {
            let mut cells = vec![
                words::section(plan, s.section),
                numbers::stop_mm(s.from_mm),
                numbers::stop_mm(*to_mm),
                diameters(plan, s, *to_mm),
                work,
                travels.to_string(),
                numbers::rpm(rpm),
                numbers::feed_mm(feed_mm),
                words::key(&s.turning),
                s.stage.to_string(),
            ];
            if listed {
                cells.extend([words::segment_depths(s), words::segment_stations(plan, s)]);
            }
            cells
        };
        match &s.threading {
            Some(t) => {
                rows.push(row(say!("work-turn"), s.travels, s.rpm, s.feed_mm));
                rows.push(row(work, t.passes, t.rpm, t.pitch_mm));
            }
            None if *n > 1 => {
                rows.push(row(say!("work-repeated", number = *n, work = work), s.travels, s.rpm, s.feed_mm))
            }
            None => rows.push(row(work, s.travels, s.rpm, s.feed_mm)),
        }
    }
    rows.extend(part_off(plan).map(|mut cells| {
        if listed {
            cells.extend([numbers::NONE.to_owned(), words::part_off_station(plan)]);
        }
        cells
    }));
    Rows { heads, rows }
}

/// The row of part-off.
fn part_off(plan: &Plan) -> Option<Vec<String>> {
    let (rpm, stage) = (plan.part_off_rpm?, plan.stages.last()?);
    let none = || numbers::NONE.to_string();
    Some(vec![
        say!("cell-part-off-face"),
        numbers::stop_mm(plan.length_mm),
        numbers::stop_mm(plan.length_mm + plan.layout.part_off_width_mm),
        none(),
        say!("cell-part-off"),
        none(),
        numbers::rpm(rpm),
        none(),
        none(),
        stage.number.to_string(),
    ])
}

/// The diameter that a segment leaves; of a piece of a taper both diameters.
fn diameters(plan: &Plan, segment: &Segment, to_mm: f64) -> String {
    let section = plan.shaft.sections.iter().find(|s| s.number == segment.section && s.kind == "taper");
    let Some(s) = section.filter(|s| s.to_mm > s.from_mm) else { return numbers::fine_mm(segment.diameter_mm) };
    let at = |mm: f64| numbers::depth_mm(s.diameter_at_mm(mm));
    format!("{}–{}", at(segment.from_mm), at(to_mm))
}

/// Whether two segments would give the same row except for their places.
fn looks_alike(a: &Segment, b: &Segment) -> bool {
    a.section == b.section
        && a.work == b.work
        && a.travels == b.travels
        && a.turning == b.turning
        && a.stage == b.stage
        && numbers::fine_mm(a.diameter_mm) == numbers::fine_mm(b.diameter_mm)
        && numbers::rpm(a.rpm) == numbers::rpm(b.rpm)
        && numbers::feed_mm(a.feed_mm) == numbers::feed_mm(b.feed_mm)
}

/// The features and their moments.
pub fn features(plan: &Plan) -> Rows {
    let heads = vec![
        word(lang::text("col-feature")),
        number(lang::text("col-at")),
        number(lang::text("col-turned-when-done")),
        number(lang::text("col-stage")),
        number(lang::text("col-time")),
    ];
    let row = |f: &crate::job::plan::FeatureMoment| {
        vec![
            feature(f),
            numbers::mm(f.at_mm),
            f.turned_mm.map_or_else(|| say!("cell-after-part-off"), numbers::stop_mm),
            f.stage.map_or_else(|| numbers::NONE.to_string(), |n| n.to_string()),
            numbers::seconds(f.time_s),
        ]
    };
    Rows { heads, rows: plan.features.iter().map(row).collect() }
}

/// A feature by its text, with its kind in front where the text does not say it.
fn feature(f: &crate::job::plan::FeatureMoment) -> String {
    let (kind, text) = (words::key(&f.feature), words::plain(&f.text));
    if text.to_lowercase().contains(&kind.to_lowercase()) {
        text
    } else {
        say!("feature-with-kind", kind = kind, text = text)
    }
}

/// The checks of the sampled parts.
pub fn scatter(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-stage")),
        number(lang::text("col-planned-to")),
        number(lang::text("col-holds-to")),
        number(lang::text("col-broken-share")),
        word(lang::text("col-broken-checks")),
    ];
    let row = |s: &crate::job::plan::ScatterStage| {
        let to = plan.stages.iter().find(|p| p.number == s.number).map_or(0.0, |p| p.to_mm);
        let checks: Vec<String> = s
            .broken
            .iter()
            .map(|b| say!("check-used", check = words::check_name(&b.check), used = numbers::share(b.share)))
            .collect();
        let checks = if checks.is_empty() { say!("cell-none") } else { checks.join(", ") };
        vec![
            s.number.to_string(),
            numbers::stop_mm(to),
            numbers::stop_mm(s.holds_to_mm),
            numbers::share(s.broken_share),
            checks,
        ]
    };
    Rows { heads, rows: plan.scatter.iter().flat_map(|s| &s.stages).map(row).collect() }
}

/// The witness lines.
pub fn witnesses(plan: &Plan) -> Rows {
    let heads = vec![
        number(lang::text("col-at")),
        word(lang::text("col-surface")),
        word(lang::text("col-cause")),
        word(lang::text("col-interrupt")),
    ];
    let row = |w: &crate::job::plan::Witness| {
        vec![numbers::stop_mm(w.at_mm), words::section(plan, w.section), words::key(&w.cause), words::key(&w.interrupt)]
    };
    Rows { heads, rows: plan.witnesses.iter().map(row).collect() }
}

/// What takes time, in words, and how much, s. Seconds charged for lines are no time and are left out.
pub fn causes(t: &Times) -> [(&'static str, f64); 7] {
    [
        (lang::text("time-cutting"), t.cutting),
        (lang::text("time-travels"), t.segments),
        (lang::text("time-hand-overs"), t.hand_overs),
        (lang::text("time-regrips"), t.regrips),
        (lang::text("time-features"), t.features),
        (lang::text("time-part-off"), t.part_off),
        (lang::text("time-back-work"), t.back_work),
    ]
}

/// The operations of a part by cause, and the cycle time. That time is not their sum, because both spindles work
/// at once and a new bar takes its share. Causes that take no time are left out.
pub fn times(plan: &Plan) -> Rows {
    let heads =
        vec![word(lang::text("col-operation")), number(lang::text("col-seconds")), number(lang::text("col-share"))];
    let t = &plan.time_s;
    let share = |s: f64| if t.total > 0.0 { numbers::share(s / t.total) } else { numbers::NONE.to_string() };
    let mut rows: Vec<Vec<String>> = causes(t)
        .into_iter()
        .filter(|(_, s)| *s != 0.0)
        .map(|(name, s)| vec![name.to_string(), numbers::seconds(s), share(s)])
        .collect();
    rows.push(vec![say!("time-sum"), numbers::seconds(t.total), share(t.total)]);
    rows.push(vec![say!("time-cycle"), numbers::seconds(plan.pace_s()), String::new()]);
    Rows { heads, rows }
}

/// Number and revision of the drawing. None: the job gives no number.
pub fn drawing(plan: &Plan) -> Option<String> {
    let drawing = words::plain(plan.drawing.as_deref()?);
    Some(match plan.revision.as_deref().map(words::plain) {
        Some(revision) => say!("fact-drawing-revision", drawing = drawing, revision = revision),
        None => drawing,
    })
}

/// How it is made, as key and value; what the job does not give is left out.
pub fn how(plan: &Plan) -> Vec<(&'static str, String)> {
    let mut list: Vec<(&'static str, String)> =
        drawing(plan).into_iter().map(|drawing| (lang::text("fact-drawing"), drawing)).collect();
    list.push((lang::text("fact-length"), say!("fact-length-mm", length = numbers::mm(plan.length_mm))));
    list.push((lang::text("fact-material"), words::plain(&plan.material)));
    let (stock, length) = (words::plain(&plan.shaft.stock_label), numbers::mm(plan.shaft.bar_length_mm));
    list.push((lang::text("fact-bar"), say!("fact-bar-length", stock = stock, length = length)));
    list.push((lang::text("fact-machine"), words::plain(&plan.machine)));
    list.push((lang::text("fact-holding"), words::holding(&plan.holding)));
    list.push((lang::text("fact-tools"), words::tools(&plan.tools)));
    let collet = match (plan.collet.as_deref().map(words::plain), plan.layout.collet_hold_mm) {
        (Some(collet), Some(hold_mm)) => say!("fact-collet-holds", collet = collet, hold = numbers::mm(hold_mm)),
        (Some(collet), None) => say!("fact-collet-named", collet = collet),
        (None, _) => say!("fact-collet-none"),
    };
    list.push((lang::text("fact-collet"), collet));
    if let Some(centre) = &plan.centre {
        let (force, leaves) = (numbers::force_n(centre.force_n), numbers::stop_mm(centre.leaves_at_mm));
        list.push((lang::text("fact-centre"), say!("fact-centre-presses", force = force, leaves = leaves)));
    }
    if let Some((length_mm, diameter_mm)) = plan.tray_mm() {
        let (length, diameter) = (numbers::mm(length_mm), numbers::mm(diameter_mm));
        list.push((lang::text("fact-part-off"), say!("fact-part-falls", length = length, diameter = diameter)));
    }
    list
}

/// The quote, as key and value.
pub fn quote(plan: &Plan) -> Vec<(&'static str, String)> {
    let q = &plan.quote;
    let bar = say!(
        "quote-bar",
        pieces = say!("pieces", number = q.pieces_per_bar),
        length = numbers::mm(plan.shaft.bar_length_mm),
        remnant = numbers::mm(q.remnant_mm),
    );
    let mut list = vec![
        (lang::text("fact-bar"), bar),
        (lang::text("fact-material"), say!("quote-material", mass = numbers::kg(q.material_kg))),
    ];
    if let Some(c) = &q.cost {
        let cost = say!(
            "quote-cost",
            total = numbers::money(c.total),
            currency = words::plain(&c.currency),
            machine = numbers::money(c.machine),
            material = numbers::money(c.material),
        );
        list.push((lang::text("fact-cost"), cost));
    }
    list.push((lang::text("fact-optimum"), plan.optimality.in_words()));
    list
}
