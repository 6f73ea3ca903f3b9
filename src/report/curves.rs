//! How much of its limit every check uses along the turned length: a curve for each check, a mark for each check of a
//! single moment, a key, and the name of the check at the highest point of every stage.

use plotters::prelude::*;
use svg::node::element::{Group, Path};

use super::chart::{self, FINE, TOP, y_of};
use super::layout::{Charts, Layout};
use super::shapes::{self, INK, LIMIT, SMALL, SOFT, WHITE, xy};
use super::thinned::thinned;
use super::{ReportError, words};
use crate::job::plan::{Plan, Stage};
use crate::lang;
use crate::say;

/// Pens of the curves: colour and dashes in page units. The dashes alone tell them apart in grey; the colours differ in
/// hue and lightness for readers with any kind of colour vision (Okabe & Ito 2008, darker where thin; from memory).
const PENS: [(&str, &str); 8] = [
    (INK, ""),
    ("#0b6aa8", "10 3"),
    ("#b8480a", "4 2"),
    ("#04795a", "1.5 2"),
    ("#9c4f80", "10 2.5 2 2.5"),
    ("#3d8fc4", "6 2 1.5 2 1.5 2"),
    ("#8a6100", "2.5 5"),
    (SOFT, "16 4"),
];
const WIDTH: f64 = 1.4;

/// Marks of the checks of a single moment.
const MARKS: [&str; 6] =
    ["M-4-4h8v8h-8Z", "M0-5L5 4H-5Z", "M0-5L5 0 0 5-5 0Z", "M0 5L5-4H-5Z", "M-4-4L4 4M-4 4L4-4", "M0-5V5M-5 0H5"];

/// Length of a sample of a line in the key.
pub(super) const SAMPLE: f64 = 20.0;
/// Height of a line of the key.
pub(super) const KEY_LINE: f64 = 13.0;

/// The curves, the marks, the key and the peaks.
///
/// # Errors
/// The chart library fails.
pub fn curves(plan: &Plan, layout: &Layout, charts: &Charts) -> Result<Group, ReportError> {
    let mut g = shapes::group("curves");
    let (lines, moments) = checks(plan);
    for (check, (colour, dashes)) in lines.iter().zip(PENS.into_iter().cycle()) {
        let curve = chart::plotted(layout, charts.y, charts.height, TOP, |plot| {
            for run in runs(plan, check) {
                let points = run.into_iter().map(|(x, y)| (x.clamp(0.0, layout.axis.max_mm), y.clamp(0.0, TOP)));
                let points = thinned(&points.collect::<Vec<_>>(), chart::per(layout, charts.height, TOP));
                plot.draw_series(LineSeries::new(points, chart::pen(colour, WIDTH))).map_err(|e| e.to_string())?;
            }
            Ok(())
        })?;
        g = g.add(curve.set("class", "curve").set("stroke-dasharray", finer(dashes)));
    }
    for (check, shape) in moments.iter().zip(MARKS.into_iter().cycle()) {
        for result in plan.stages.iter().flat_map(|s| &s.checks).filter(|c| c.check == *check) {
            let (x, y) = (layout.axis.x_clamped(result.turned_mm), y_of(charts, result.utilisation));
            g = g.add(mark(shape).set("transform", format!("translate({} {})", xy(x), xy(y))));
        }
    }
    Ok(g.add(peaks(plan, layout, charts)).add(key(&lines, &moments, layout, charts)))
}

/// Dashes in the finer units of a plot.
fn finer(dashes: &str) -> String {
    let all: Vec<String> =
        dashes.split_whitespace().filter_map(|d| d.parse::<f64>().ok()).map(|d| xy(d * FINE)).collect();
    if all.is_empty() { "none".to_string() } else { all.join(" ") }
}

/// Names of the checks with a curve and of those with single moments, in the order of the plan.
fn checks(plan: &Plan) -> (Vec<&str>, Vec<&str>) {
    let mut lines: Vec<&str> = Vec::new();
    for (name, _) in plan.trace.iter().flat_map(|p| &p.all) {
        if !lines.contains(&name.as_str()) {
            lines.push(name);
        }
    }
    let mut moments: Vec<&str> = Vec::new();
    for name in plan.stages.iter().flat_map(|s| &s.checks).map(|c| c.check.as_str()) {
        if !lines.contains(&name) && !moments.contains(&name) {
            moments.push(name);
        }
    }
    (lines, moments)
}

/// The points of a check, split where the stage changes or the check does not apply.
fn runs(plan: &Plan, check: &str) -> Vec<Vec<(f64, f64)>> {
    let mut runs: Vec<Vec<(f64, f64)>> = Vec::new();
    let mut stage = None;
    for p in &plan.trace {
        match p.all.iter().find(|(name, _)| name == check) {
            Some((_, share)) => {
                if stage != Some(p.stage) {
                    runs.push(Vec::new());
                }
                stage = Some(p.stage);
                if let Some(run) = runs.last_mut() {
                    run.push((p.turned_mm, *share));
                }
            }
            None => stage = None,
        }
    }
    runs
}

fn mark(shape: &str) -> Path {
    shapes::path(shape.to_string()).set("fill", WHITE).set("stroke", INK).set("stroke-width", "1.2")
}

/// Page place of the line below the key of the curves.
pub(super) fn below_key(plan: &Plan, charts: &Charts) -> f64 {
    let (lines, moments) = checks(plan);
    charts.y + 10.0 + KEY_LINE * (lines.len() + moments.len() + 1) as f64
}

/// Right of the chart: the limit, and the name of every curve and mark.
fn key(lines: &[&str], moments: &[&str], layout: &Layout, charts: &Charts) -> Group {
    let x = layout.axis.right() + 8.0;
    let room = layout.canvas.width - x - SAMPLE - 6.0;
    let name =
        |y: f64, words: &str| shapes::text(x + SAMPLE + 5.0, y, SMALL, "start", &shapes::fit_text(words, SMALL, room));
    let mut y = charts.y + 10.0;
    let mut g = shapes::group("key")
        .add(shapes::line(x, y - 3.5, x + SAMPLE, y - 3.5, LIMIT, 2.0))
        .add(name(y, lang::text("diagram-limit")).set("fill", LIMIT).set("font-weight", "bold"));
    for (check, (colour, dashes)) in lines.iter().zip(PENS.into_iter().cycle()) {
        y += KEY_LINE;
        let sample = shapes::line(x, y - 3.5, x + SAMPLE, y - 3.5, colour, WIDTH + 0.2).set("stroke-dasharray", dashes);
        // Where the modes were not worked out, the curve is an upper bound of the utilisation.
        let words = words::check_name(check);
        let words = if *check == "chatter" { say!("diagram-at-most", check = words) } else { words };
        g = g.add(sample).add(name(y, &words));
    }
    for (check, shape) in moments.iter().zip(MARKS.into_iter().cycle()) {
        y += KEY_LINE;
        let sample = mark(shape).set("transform", format!("translate({} {})", xy(x + SAMPLE / 2.0), xy(y - 3.5)));
        g = g.add(sample).add(name(y, &words::check_name(check)));
    }
    g
}

/// Space between a peak and its label.
const APART: f64 = 6.0;

/// A box: left, right, top, bottom.
type Area = (f64, f64, f64, f64);

/// The tightest check of each stage where it is worst, with its percentage. A label near the limit line is moved above
/// that line. A label that would touch another is dropped.
fn peaks(plan: &Plan, layout: &Layout, charts: &Charts) -> Group {
    let mut g = shapes::group("peaks");
    let mut taken: Vec<Area> = Vec::new();
    for top in plan.stages.iter().filter_map(Stage::governing) {
        let (x, y) = (layout.axis.x_clamped(top.turned_mm), y_of(charts, top.utilisation));
        g = g.add(shapes::circle(x, y, 3.0).set("fill", WHITE).set("stroke", INK).set("stroke-width", "1.6"));
        let words = words::check(top);
        let width = shapes::text_width(&words, SMALL);
        let limit = y_of(charts, 1.0);
        let high = y - APART - SMALL < limit + 3.0;
        let base = if high { limit - 5.0 } else { y - APART + 1.0 };
        let starts = [x - width - 2.0, x - width / 2.0, x + 4.0];
        let free = starts.into_iter().map(|left| (left, left + width, base - SMALL, base + 3.0)).find(|b| {
            let inside = b.0 >= layout.axis.left + 2.0 && b.1 <= layout.axis.right() - 2.0;
            inside && !taken.iter().any(|t| b.0 < t.1 + 4.0 && t.0 < b.1 + 4.0 && b.2 < t.3 && t.2 < b.3)
        });
        let Some(place) = free else { continue };
        if high {
            g = g.add(shapes::line(x, y - 3.0, x, base + 2.0, SOFT, 0.7));
        }
        g = g.add(shapes::text_on_ground(place.0 + width / 2.0, base, SMALL, "middle", &words));
        taken.push(place);
    }
    g
}
