//! The diagram: the shaft, its grips and stops, two strips per stage, and the chart of utilisation on the same axis.

use svg::node::element::{Description, Group, SVG, Title};

use super::layout::{Layout, ROW};
use super::page_size::{Canvas, MARGIN, PAGE_WIDTH, Use};
use super::shapes::{self, SOFT, xy};
use super::{ReportError, chart, curves, drawing, help, marks, sampled, speed, strips, table, tables, verdict, words};
use crate::job::plan::{Along, Plan, Verdict, estimate};
use crate::lang;
use crate::say;

/// The diagram as an SVG document with the proportions of A4 landscape.
///
/// # Errors
/// A number that is drawn is not finite, or the chart library fails. No plan of the planner causes either.
pub fn plan_svg(plan: &Plan) -> Result<String, ReportError> {
    let layout = Layout::page(plan)?;
    let root =
        diagram(plan, &layout, None)?.set("width", "297mm").set("height", format!("{}mm", xy(layout.height / 4.0)));
    Ok(shapes::document(&root))
}

/// The diagram as an SVG element for a page that has its own title.
pub(super) fn inline_svg(plan: &Plan) -> Result<String, ReportError> {
    Ok(inline(plan)?.0.to_string())
}

/// The diagram as an element for a page of paper that has its own title, and its layout.
pub(super) fn inline(plan: &Plan) -> Result<(SVG, Layout), ReportError> {
    let layout = Layout::inline(plan)?;
    Ok((diagram(plan, &layout, None)?, layout))
}

/// The diagram as an element for a screen, and its layout.
pub(super) fn on_screen(plan: &Plan, along: Option<&Along>, canvas: Canvas) -> Result<(SVG, Layout), ReportError> {
    let layout = Layout::screen(plan, canvas)?;
    Ok((diagram(plan, &layout, along)?, layout))
}

/// The drawing on the first page of a sheet: its element and its height.
pub(super) fn setting(plan: &Plan) -> Result<(SVG, f64), ReportError> {
    let layout = Layout::setting(plan)?;
    Ok((diagram(plan, &layout, None)?, layout.height))
}

fn diagram(plan: &Plan, layout: &Layout, along: Option<&Along>) -> Result<SVG, ReportError> {
    let job = words::plain(&plan.job);
    let mut root = SVG::new()
        .set("viewBox", format!("0 0 {} {}", xy(layout.canvas.width), xy(layout.height)))
        .set("font-family", shapes::FONT)
        .set("role", "img")
        .add(Title::new(say!("diagram-title", job = job)))
        .add(Description::new().add(svg::node::Text::new(description(plan, layout.of))))
        .add(shapes::definitions())
        .add(shapes::rect(0.0, 0.0, layout.canvas.width, layout.height).set("fill", shapes::WHITE));
    if layout.of == Use::Page {
        root = root.add(title(plan)).add(footer(plan, layout));
    }
    root = root
        .add(marks::legend(layout))
        .add(marks::profile_caption(layout))
        .add(drawing::feature_labels(layout))
        .add(drawing::profile(plan, layout))
        .add(drawing::section_labels(plan, layout))
        .add(marks::grips(plan, layout))
        .add(marks::stop_marks(plan, layout));
    if let Some(lengths) = drawing::lengths(plan, layout) {
        root = root.add(lengths);
    }
    if let Some(rest) = drawing::not_reached(plan, layout) {
        root = root.add(rest);
    }
    if let Some(strips) = strips::strips(plan, layout) {
        root = root.add(strips);
    }
    if let Some(charts) = &layout.charts {
        root = root.add(chart::chart(plan, layout, charts)?);
        if let Some(along) = along {
            root = root.add(sampled::band(plan, along, layout, charts)?);
        }
        root = root.add(curves::curves(plan, layout, charts)?);
        root = root.add(speed::speed(plan, layout, charts)?);
    } else if layout.of == Use::Page {
        root = root.add(what_would_help(plan, layout));
    }
    root = root.add(chart::x_axis(layout));
    let notes = left_out(plan, layout);
    let (right, y) = (layout.canvas.width - MARGIN, layout.axis_y + 29.0);
    let y = if layout.of == Use::Screen { y + ROW } else { y };
    let note = shapes::text(right, y, shapes::SMALL, "end", &notes);
    Ok(if notes.is_empty() { root } else { root.add(note.set("fill", SOFT)) })
}

/// A note on what had no room, and where to find it.
fn left_out(plan: &Plan, layout: &Layout) -> String {
    let mut notes = Vec::new();
    if !layout.section_labels.numbers.is_empty() {
        notes.push(say!("diagram-numbers"));
    }
    let lengths = layout.lengths.as_ref().map_or(0, |(_, lengths)| lengths.dropped);
    match layout.section_labels.dropped + layout.feature_labels.dropped + lengths {
        0 => {}
        n => notes.push(say!("diagram-labels-left-out", number = n)),
    }
    if layout.strips.is_none() && layout.of != Use::Setting && !plan.stages.is_empty() {
        notes.push(say!("diagram-machine-left-out"));
    }
    notes.join("; ")
}

/// The diagram in words, for readers who do not see it.
fn description(plan: &Plan, of: Use) -> String {
    let (word, summary) = (verdict::word(plan), verdict::summary(plan));
    let panels = lang::text("diagram-panels");
    match of {
        Use::Setting => say!("diagram-description-setting", verdict = word, summary = summary),
        // The page tells the verdict beside it, when it is known.
        Use::Screen => panels.to_owned(),
        Use::Page | Use::Inline => say!("diagram-description", verdict = word, summary = summary, panels = panels),
    }
}

/// Lines the verdict may take under the name.
const VERDICT_LINES: usize = 2;

/// Colour of the verdict's word.
pub(super) fn verdict_colour(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Feasible => shapes::TRACE,
        Verdict::AtRisk => shapes::GRIP,
        Verdict::Infeasible => shapes::LIMIT,
    }
}

fn title(plan: &Plan) -> Group {
    let width = PAGE_WIDTH - 2.0 * MARGIN;
    let number = tables::drawing(plan).unwrap_or_default();
    let number = shapes::fit_text(&number, 12.0, width * 0.4);
    let name_room = width - shapes::text_width(&number, 12.0) - 20.0;
    let mut g = shapes::group("title")
        .add(
            shapes::text(MARGIN, 40.0, 22.0, "start", &shapes::fit_text(&words::plain(&plan.job), 22.0, name_room))
                .set("font-weight", "bold"),
        )
        .add(shapes::text(PAGE_WIDTH - MARGIN, 40.0, 12.0, "end", &number));
    let word = verdict::word(plan);
    let badge = shapes::text_width(word, 12.0) * 1.12 + 12.0;
    let colour = verdict_colour(plan.verdict);
    g = g.add(shapes::rect(MARGIN, 51.0, badge, 19.0).set("rx", "3").set("fill", colour)).add(
        shapes::text(MARGIN + badge / 2.0, 65.0, 12.0, "middle", word)
            .set("fill", shapes::WHITE)
            .set("font-weight", "bold"),
    );
    let room = ((width - badge - 12.0) / (12.0 * 0.6)).floor().max(20.0) as usize;
    let wrapped = table::wrap("", &verdict::summary(plan), room);
    for (i, line) in wrapped.lines().take(VERDICT_LINES).enumerate() {
        g = g.add(shapes::text(MARGIN + badge + 12.0, 65.0 + 15.0 * i as f64, 12.0, "start", line));
    }
    g.add(shapes::line(MARGIN, 90.0, PAGE_WIDTH - MARGIN, 90.0, shapes::RULE, 1.0))
}

/// Drawn in place of the charts if the plan has no values along the turned length: what stops the bar and what would
/// help.
fn what_would_help(plan: &Plan, layout: &Layout) -> Group {
    const SIZE: f64 = 12.0;
    let mut g = shapes::group("what-would-help");
    let Some(shortfall) = &plan.shortfall else { return g };
    let columns = ((PAGE_WIDTH - 2.0 * MARGIN) / (SIZE * 0.6)) as usize;
    let mut told = table::wrap("", &words::sentence(&shortfall.text), columns);
    for list in help::helps(shortfall) {
        told.push_str(&table::wrap("", list.title, columns));
        for (i, item) in list.items.iter().enumerate() {
            let lead = if list.numbered { format!("{}.  ", i + 1) } else { "–  ".to_owned() };
            told.push_str(&table::wrap(&lead, item, columns));
        }
    }
    if let Some(tried) = help::no_help(shortfall) {
        told.push_str(&table::wrap("", &tried, columns));
    }
    let mut y = layout.axis_y + 62.0;
    for line in told.lines() {
        if y > layout.height - 40.0 {
            return g.add(shapes::text(MARGIN, y, SIZE, "start", lang::text("diagram-more")));
        }
        g = g.add(shapes::text(MARGIN + 10.0 * line.starts_with(' ') as u8 as f64, y, SIZE, "start", line.trim()));
        y += 16.0;
    }
    g
}

fn footer(plan: &Plan, layout: &Layout) -> Group {
    let y = layout.height - 14.0;
    shapes::group("footer").add(shapes::text(MARGIN, y, 8.5, "start", estimate()).set("fill", SOFT)).add(
        shapes::text(
            PAGE_WIDTH - MARGIN,
            y,
            8.5,
            "end",
            &shapes::fit_text(&words::plain(&plan.input_digest), 8.5, 520.0),
        )
        .set("fill", SOFT),
    )
}
