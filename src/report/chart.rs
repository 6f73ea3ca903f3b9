//! Utilisation of the governing check along the turned length.
//!
//! The plot itself comes from plotters. It rounds to whole pixels, so it is drawn [`FINE`] times too large and nested
//! with a transform that makes it smaller again; its plot area is its whole canvas, so its axis is the drawing's axis.
//! Words are added here, because plotters would have to estimate their size.

use plotters::prelude::*;
use svg::node::Blob;
use svg::node::element::Group;

use super::layout::{BAND, Layout};
use super::shapes::{self, INK, LIMIT, RULE, SMALL, SOFT, TRACE, WHITE, xy};
use super::{ReportError, numbers, words};
use crate::job::plan::{Plan, TracePoint};

/// How much finer the plot is drawn than the page: what is rounded away stays below 0.02 page units, 5 µm on paper. At
/// ten times, stage borders in drawing and chart were seen to part.
pub(super) const FINE: f64 = 100.0;

/// Top of the chart: a utilisation of 120 %.
const TOP: f64 = 1.2;

/// What the curve is, right of the chart.
const SAYS: [&str; 5] =
    ["Share of its limit", "used by the check", "nearest to it;", "the check is named", "below the chart"];

/// The chart with axes, limit line and stage borders.
pub fn chart(plan: &Plan, layout: &Layout) -> Result<Group, ReportError> {
    let (a, top, height) = (&layout.axis, layout.chart_y, layout.chart_height);
    let plot = plot(plan, layout)?;
    let scaled = shapes::group("plot")
        .set("transform", format!("translate({} {}) scale({})", xy(a.left), xy(top), numbers::trimmed(1.0 / FINE, 4)))
        .add(Blob::new(plot));
    Ok(shapes::group("chart")
        .add(
            shapes::rect(a.left, top, a.width(), height * (TOP - 1.0) / TOP)
                .set("fill", format!("url(#{})", shapes::HATCH))
                .set("opacity", "0.35"),
        )
        .add(scaled)
        .add(
            shapes::rect(a.left, top, a.width(), height)
                .set("fill", "none")
                .set("stroke", INK)
                .set("stroke-width", "0.9"),
        )
        .add(y_axis(layout))
        .add(peaks(plan, layout))
        .add(empty_note(plan, layout))
        .add(band(plan, layout))
        .add(x_axis(layout)))
}

pub(super) fn chart_error(e: impl std::fmt::Display) -> ReportError {
    ReportError::Chart { message: e.to_string() }
}

pub(super) fn colour(hex: &str) -> RGBColor {
    let part = |i: usize| hex.get(i..i + 2).and_then(|h| u8::from_str_radix(h, 16).ok()).unwrap_or(0);
    RGBColor(part(1), part(3), part(5))
}

/// The elements plotters draws, without its outer `svg` element.
fn plot(plan: &Plan, layout: &Layout) -> Result<String, ReportError> {
    let size = ((layout.axis.width() * FINE).round() as u32, (layout.chart_height * FINE).round() as u32);
    let max_mm = layout.axis.max_mm;
    let mut whole = String::new();
    {
        let root = SVGBackend::with_string(&mut whole, size).into_drawing_area();
        let mut chart = ChartBuilder::on(&root).build_cartesian_2d(0.0..max_mm, 0.0..TOP).map_err(chart_error)?;
        let pen = |hex: &str, width: f64| colour(hex).stroke_width((width * FINE) as u32);
        for share in [0.2, 0.4, 0.6, 0.8] {
            let rule = PathElement::new(vec![(0.0, share), (max_mm, share)], pen(RULE, 0.6));
            chart.draw_series(std::iter::once(rule)).map_err(chart_error)?;
        }
        for stage in &plan.stages {
            let points: Vec<(f64, f64)> = plan
                .trace
                .iter()
                .filter(|p| p.stage == stage.number)
                .map(|p| (p.turned_mm.clamp(0.0, max_mm), p.utilisation.clamp(0.0, TOP)))
                .collect();
            if let (Some(first), Some(last)) = (points.first(), points.last()) {
                let mut area = vec![(first.0, 0.0)];
                area.extend(points.iter().copied());
                area.push((last.0, 0.0));
                let shade = Polygon::new(area, colour(TRACE).mix(0.14));
                chart.draw_series(std::iter::once(shade)).map_err(chart_error)?;
            }
            chart.draw_series(LineSeries::new(points, pen(TRACE, 1.6))).map_err(chart_error)?;
        }
        let borders = plan.stages.iter().skip(1).map(|s| s.from_mm);
        let borders = borders.map(|x| PathElement::new(vec![(x, 0.0), (x, TOP)], pen(INK, 0.9)));
        chart.draw_series(borders).map_err(chart_error)?;
        let limit = PathElement::new(vec![(0.0, 1.0), (max_mm, 1.0)], pen(LIMIT, 2.0));
        chart.draw_series(std::iter::once(limit)).map_err(chart_error)?;
        root.present().map_err(chart_error)?;
    }
    inner_svg(&whole)
}

/// What plotters has drawn, without its outer `svg` element.
pub(super) fn inner_svg(whole: &str) -> Result<String, ReportError> {
    let inner =
        whole.find("<svg").and_then(|from| whole[from..].find('>').map(|n| from + n + 1)).zip(whole.rfind("</svg>"));
    match inner {
        Some((from, to)) if from <= to => Ok(whole[from..to].trim().to_string()),
        _ => Err(ReportError::Chart { message: "no svg element".to_string() }),
    }
}

/// Page place of a utilisation.
fn y_of(layout: &Layout, share: f64) -> f64 {
    layout.chart_y + layout.chart_height * (1.0 - share.clamp(0.0, TOP) / TOP)
}

fn y_axis(layout: &Layout) -> Group {
    let x = layout.axis.left;
    let mut g = shapes::group("y-axis");
    for percent in [0u8, 20, 40, 60, 80, 100, 120] {
        let y = y_of(layout, f64::from(percent) / 100.0);
        let label = shapes::text(x - 7.0, y + 3.5, SMALL, "end", &format!("{percent} %"));
        let label = if percent == 100 { label.set("font-weight", "bold").set("fill", LIMIT) } else { label };
        g = g.add(shapes::line(x - 4.0, y, x, y, INK, 0.9)).add(label);
    }
    let (x, y) = (layout.axis.right() + 8.0, y_of(layout, 0.5));
    for (i, words) in SAYS.iter().enumerate() {
        g = g.add(shapes::text(x, y + 12.0 * i as f64 - 20.0, SMALL, "start", words).set("fill", SOFT));
    }
    let limit = shapes::text(x, y_of(layout, 1.0) + 3.5, SMALL, "start", "limit");
    g.add(limit.set("fill", LIMIT).set("font-weight", "bold"))
}

/// A label above a point nearer than this below the limit line or the frame would lie on it.
const LABEL_CLEAR: f64 = 20.0;

/// The highest point of each stage, with its percentage; labels that would touch are dropped.
fn peaks(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("peaks");
    let mut taken = f64::NEG_INFINITY;
    for stage in &plan.stages {
        let mut peak: Option<&TracePoint> = None;
        for p in plan.trace.iter().filter(|p| p.stage == stage.number) {
            if peak.is_none_or(|best| p.utilisation > best.utilisation) {
                peak = Some(p);
            }
        }
        let Some(p) = peak else { continue };
        let (x, y) = (layout.axis.x_clamped(p.turned_mm), y_of(layout, p.utilisation));
        g = g.add(shapes::circle(x, y, 3.0).set("fill", WHITE).set("stroke", TRACE).set("stroke-width", "1.6"));
        let words = format!("{} {}", words::key(&p.check), numbers::utilisation(p.utilisation));
        let half = shapes::text_width(&words, SMALL) / 2.0;
        let middle = x.min(layout.axis.right() - half - 2.0).max(layout.axis.left + half + 2.0);
        if middle - half > taken {
            taken = middle + half + 4.0;
            let limit = y_of(layout, 1.0);
            let on_limit_line = (limit - 2.0..limit + LABEL_CLEAR).contains(&y);
            let over_the_top = y < layout.chart_y + LABEL_CLEAR;
            let base = if on_limit_line || over_the_top { y + 17.0 } else { y - 7.0 };
            g = g.add(shapes::text_on_ground(middle, base, SMALL, "middle", &words));
        }
    }
    g
}

/// Says so where there is nothing to show.
fn empty_note(plan: &Plan, layout: &Layout) -> Group {
    let g = shapes::group("empty-note");
    if plan.trace.is_empty() {
        let x = layout.axis.left + layout.axis.width() / 2.0;
        return g.add(shapes::text(x, y_of(layout, 0.5), SMALL, "middle", "nothing to show").set("fill", SOFT));
    }
    g
}

/// A band under the plot that names the governing check from place to place.
fn band(plan: &Plan, layout: &Layout) -> Group {
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
    let mut g = shapes::group("band");
    for (i, (check, from, to)) in runs.iter().enumerate() {
        let (x1, x2) = (layout.axis.x_clamped(*from), layout.axis.x_clamped(*to));
        let fill = if i % 2 == 0 { "#e8edf2" } else { WHITE };
        g = g.add(
            shapes::rect(x1, layout.band_y, x2 - x1, BAND)
                .set("fill", fill)
                .set("stroke", SOFT)
                .set("stroke-width", "0.5"),
        );
        let name = words::key(check);
        if shapes::text_width(&name, SMALL) + 4.0 <= x2 - x1 {
            g = g.add(shapes::text((x1 + x2) / 2.0, layout.band_y + 11.0, SMALL, "middle", &name));
        }
    }
    g
}

fn x_axis(layout: &Layout) -> Group {
    let y = layout.band_y + BAND;
    let mut g = shapes::group("x-axis");
    for tick in layout.axis.ticks() {
        let x = layout.axis.x(tick);
        g = g.add(shapes::line(x, y, x, y + 5.0, INK, 0.9)).add(shapes::text(
            x,
            y + 15.0,
            SMALL,
            "middle",
            &numbers::trimmed(tick, 3),
        ));
    }
    g.add(shapes::text(
        layout.axis.left + layout.axis.width() / 2.0,
        y + 29.0,
        SMALL,
        "middle",
        "place on the shaft, and turned length, in mm from the front face",
    ))
}
