//! The chart of utilisation: its frame, the limit, the area under the governing check, and the band that names it.
//!
//! The plotters library draws the plot. It rounds to whole pixels, so the plot is drawn [`FINE`] times too large, and a
//! transform makes it smaller again. The plot area is the whole canvas, so its axis is the axis of the drawing. Text is
//! added in this file, because plotters would have to estimate its size.

use plotters::coord::Shift;
use plotters::coord::types::RangedCoordf64;
use plotters::prelude::*;
use std::ops::Range;
use svg::node::Blob;
use svg::node::element::Group;

use super::layout::{BAND, Charts, Layout};
use super::shapes::{self, INK, LIMIT, PALE, RULE, SMALL, SOFT, TRACE, WHITE, xy};
use super::thinned::thinned;
use super::{ReportError, numbers, words};
use crate::job::plan::Plan;
use crate::lang;

/// How many times larger than on the page the plot is drawn. The rounding error is then below 0.02 page units, 5 µm on
/// paper. At ten times, stage borders in drawing and chart did not meet.
pub(super) const FINE: f64 = 100.0;

/// Top of the chart: a utilisation of 120 %.
pub const TOP: f64 = 1.2;

/// The drawing area of a plot, and its chart.
pub type Area<'a> = DrawingArea<SVGBackend<'a>, Shift>;
pub type Plot<'a, 'b> = ChartContext<'b, SVGBackend<'a>, Cartesian2d<RangedCoordf64, RangedCoordf64>>;

/// The chart with limit line and stage borders, without the curves.
///
/// # Errors
/// The chart library fails.
pub fn chart(plan: &Plan, layout: &Layout, charts: &Charts) -> Result<Group, ReportError> {
    let (a, top, height) = (&layout.axis, charts.y, charts.height);
    let ground = plotted(layout, top, height, TOP, |plot| ground(plan, layout, per(layout, height, TOP), plot))?;
    Ok(shapes::group("chart")
        .add(
            shapes::rect(a.left, top, a.width(), height * (TOP - 1.0) / TOP)
                .set("fill", shapes::pattern(shapes::HATCH))
                .set("opacity", "0.35"),
        )
        .add(ground.set("class", "plot"))
        .add(frame([a.left, top, a.width(), height]))
        .add(y_axis(layout, charts))
        .add(band(plan, layout, charts)))
}

/// The frame of a chart at a place of the page: left, top, width, height.
pub fn frame([left, top, width, height]: [f64; 4]) -> svg::node::element::Rectangle {
    shapes::rect(left, top, width, height).set("fill", "none").set("stroke", INK).set("stroke-width", "0.9")
}

pub(super) fn chart_error(e: impl std::fmt::Display) -> ReportError {
    ReportError::Chart { message: e.to_string() }
}

/// A colour `#rrggbb` for plotters.
pub(super) fn colour(hex: &str) -> RGBColor {
    let part = |i: usize| hex.get(i..i + 2).and_then(|h| u8::from_str_radix(h, 16).ok()).unwrap_or(0);
    RGBColor(part(1), part(3), part(5))
}

/// A pen for plotters, its width in page units.
pub fn pen(hex: &str, width: f64) -> ShapeStyle {
    colour(hex).stroke_width((width * FINE) as u32)
}

/// What plotters draws over the turned length, for values up to `most`, as a group at its place on the page.
///
/// # Errors
/// The chart library fails.
pub fn plotted(
    layout: &Layout,
    top: f64,
    height: f64,
    most: f64,
    draw: impl FnOnce(&mut Plot<'_, '_>) -> Result<(), Box<dyn std::error::Error>>,
) -> Result<Group, ReportError> {
    let place = [layout.axis.left, top, layout.axis.width(), height];
    nested(place, 0.0..layout.axis.max_mm, 0.0..most, |plot| draw(plot).map_err(chart_error))
}

/// Page units per mm and per unit of the values, in a plot over the turned length with this height and values up to
/// `most`.
pub fn per(layout: &Layout, height: f64, most: f64) -> (f64, f64) {
    (layout.axis.width() / layout.axis.max_mm, height / most)
}

/// What plotters draws over two ranges, as a group at a place of the page: left, top, width, height.
pub(super) fn nested(
    [left, top, width, height]: [f64; 4],
    along: Range<f64>,
    up: Range<f64>,
    draw: impl FnOnce(&mut Plot<'_, '_>) -> Result<(), ReportError>,
) -> Result<Group, ReportError> {
    let size = ((width * FINE).round() as u32, (height * FINE).round() as u32);
    let mut whole = String::new();
    {
        let root: Area = SVGBackend::with_string(&mut whole, size).into_drawing_area();
        draw(&mut ChartBuilder::on(&root).build_cartesian_2d(along, up).map_err(chart_error)?)?;
        root.present().map_err(chart_error)?;
    }
    let scale = numbers::trimmed_pointed(1.0 / FINE, 4);
    Ok(Group::new()
        .set("transform", format!("translate({} {}) scale({scale})", xy(left), xy(top)))
        .add(Blob::new(inner_svg(&whole)?)))
}

/// What plotters has drawn, without its outer `svg` element.
fn inner_svg(whole: &str) -> Result<String, ReportError> {
    let begun = whole.split_once("<svg").and_then(|(_, tag)| tag.split_once('>'));
    let inner = begun.and_then(|(_, behind)| behind.rsplit_once("</svg>"));
    inner.map(|(inner, _)| inner.trim().to_string()).ok_or_else(|| chart_error("no svg element"))
}

/// Grid lines, the area under the governing check, stage borders, the limit.
fn ground(
    plan: &Plan,
    layout: &Layout,
    per: (f64, f64),
    plot: &mut Plot<'_, '_>,
) -> Result<(), Box<dyn std::error::Error>> {
    let max_mm = layout.axis.max_mm;
    for share in [0.2, 0.4, 0.6, 0.8] {
        let rule = PathElement::new(vec![(0.0, share), (max_mm, share)], pen(RULE, 0.6));
        plot.draw_series(std::iter::once(rule)).map_err(|e| e.to_string())?;
    }
    for stage in &plan.stages {
        let points = plan.trace.iter().filter(|p| p.stage == stage.number);
        let points = points.map(|p| (p.turned_mm.clamp(0.0, max_mm), p.utilisation.clamp(0.0, TOP)));
        let mut area = thinned(&points.collect::<Vec<_>>(), per);
        if let (Some(first), Some(last)) = (area.first().copied(), area.last().copied()) {
            area.insert(0, (first.0, 0.0));
            area.push((last.0, 0.0));
            let shade = Polygon::new(area, colour(TRACE).mix(0.14));
            plot.draw_series(std::iter::once(shade)).map_err(|e| e.to_string())?;
        }
    }
    borders(plan, plot, TOP)?;
    let limit = PathElement::new(vec![(0.0, 1.0), (max_mm, 1.0)], pen(LIMIT, 2.0));
    plot.draw_series(std::iter::once(limit)).map_err(|e| e.to_string())?;
    Ok(())
}

/// Upright lines between the stages.
///
/// # Errors
/// The chart library fails.
pub fn borders(plan: &Plan, plot: &mut Plot<'_, '_>, most: f64) -> Result<(), Box<dyn std::error::Error>> {
    let borders = plan.stages.iter().skip(1).map(|s| s.from_mm);
    let borders = borders.map(|x| PathElement::new(vec![(x, 0.0), (x, most)], pen(INK, 0.9)));
    plot.draw_series(borders).map_err(|e| e.to_string())?;
    Ok(())
}

/// Page place of a utilisation.
pub fn y_of(charts: &Charts, share: f64) -> f64 {
    charts.y + charts.height * (1.0 - share.clamp(0.0, TOP) / TOP)
}

fn y_axis(layout: &Layout, charts: &Charts) -> Group {
    let x = layout.axis.left;
    let mut g = shapes::group("y-axis");
    for percent in [0u8, 20, 40, 60, 80, 100, 120] {
        let y = y_of(charts, f64::from(percent) / 100.0);
        let label = shapes::text(x - 7.0, y + 3.5, SMALL, "end", &format!("{percent} %"));
        let label = if percent == 100 { label.set("font-weight", "bold").set("fill", LIMIT) } else { label };
        g = g.add(shapes::line(x - 4.0, y, x, y, INK, 0.9)).add(label);
    }
    for (i, words) in lang::text("diagram-used").lines().enumerate() {
        let y = y_of(charts, 0.6) + 13.0 * i as f64;
        g = g.add(shapes::text(super::page_size::MARGIN - 12.0, y, SMALL, "start", words).set("fill", SOFT));
    }
    g
}

/// A band under the plot that names the governing check from place to place.
fn band(plan: &Plan, layout: &Layout, charts: &Charts) -> Group {
    let mut runs: Vec<(&str, f64, f64)> = Vec::new();
    for p in &plan.trace {
        match runs.last_mut() {
            Some((check, _, to)) if *check == p.check => *to = p.turned_mm,
            Some((_, _, to)) => {
                let from = *to;
                runs.push((&p.check, from, p.turned_mm));
            }
            None => runs.push((&p.check, p.turned_mm, p.turned_mm)),
        }
    }
    let caption = shapes::text(
        super::page_size::MARGIN - 12.0,
        charts.band_y + 11.0,
        SMALL,
        "start",
        lang::text("diagram-governs"),
    );
    let mut g = shapes::group("band").add(caption.set("fill", SOFT));
    for (i, (check, from, to)) in runs.iter().enumerate() {
        let (x1, x2) = (layout.axis.x_clamped(*from), layout.axis.x_clamped(*to));
        let fill = if i % 2 == 0 { PALE } else { WHITE };
        g = g.add(
            shapes::rect(x1, charts.band_y, x2 - x1, BAND)
                .set("fill", fill)
                .set("stroke", SOFT)
                .set("stroke-width", "0.5"),
        );
        let name = words::check_name(check);
        if shapes::text_width(&name, SMALL) + 4.0 <= x2 - x1 {
            g = g.add(shapes::text((x1 + x2) / 2.0, charts.band_y + 11.0, SMALL, "middle", &name));
        }
    }
    g
}

/// The common axis of drawing, strips and charts.
pub fn x_axis(layout: &Layout) -> Group {
    let (a, y) = (&layout.axis, layout.axis_y);
    let mut g = shapes::group("x-axis").add(shapes::line(a.left, y, a.right(), y, INK, 0.9));
    for tick in a.ticks() {
        let x = a.x(tick);
        let label = shapes::text(x, y + 15.0, SMALL, "middle", &numbers::fine_mm(tick));
        g = g.add(shapes::line(x, y, x, y + 5.0, INK, 0.9)).add(label);
    }
    let words = lang::text("diagram-axis");
    g.add(shapes::text(a.left + a.width() / 2.0, y + 29.0, SMALL, "middle", words))
}
