//! The chart of speed along the turned length, under that of utilisation.

use plotters::prelude::*;
use svg::node::element::Group;

use super::chart;
use super::layout::{Charts, Layout, SPEED};
use super::shapes::{self, INK, SMALL, SOFT};
use super::thinned::thinned;
use super::{ReportError, numbers};
use crate::job::plan::Plan;
use crate::lang;

/// Height of the chart as a multiple of the fastest speed; the room above that speed is for its figure.
const HEADROOM: f64 = 1.6;

/// The chart, with the figure of each speed if there is room.
///
/// # Errors
/// The chart library fails.
pub fn speed(plan: &Plan, layout: &Layout, charts: &Charts) -> Result<Group, ReportError> {
    let fastest = plan.trace.iter().map(|p| p.rpm).fold(0.0, f64::max);
    let most = if fastest > 0.0 { fastest * HEADROOM } else { 1.0 };
    let plot = chart::plotted(layout, charts.speed_y, SPEED, most, |plot| {
        chart::borders(plan, plot, most)?;
        let points = plan.trace.iter().map(|p| (p.turned_mm.clamp(0.0, layout.axis.max_mm), p.rpm.clamp(0.0, most)));
        let points = thinned(&points.collect::<Vec<_>>(), chart::per(layout, SPEED, most));
        plot.draw_series(LineSeries::new(points, chart::pen(INK, 1.6))).map_err(|e| e.to_string())?;
        Ok(())
    })?;
    let (x, y) = (layout.axis.left - 7.0, charts.speed_y);
    Ok(shapes::group("speed")
        .add(plot)
        .add(chart::frame([layout.axis.left, y, layout.axis.width(), SPEED]))
        .add(shapes::text(x, y + 15.0, SMALL, "end", lang::text("unit-rpm")).set("fill", SOFT))
        .add(shapes::text(x, y + SPEED, SMALL, "end", "0"))
        .add(figures(plan, layout, charts, most)))
}

/// Each speed once, over the stretch that turns with it.
fn figures(plan: &Plan, layout: &Layout, charts: &Charts, most: f64) -> Group {
    let mut runs: Vec<(f64, f64, f64)> = Vec::new();
    for p in &plan.trace {
        match runs.last_mut() {
            Some((rpm, _, to)) if numbers::rpm(*rpm) == numbers::rpm(p.rpm) => *to = p.turned_mm,
            _ => runs.push((p.rpm, p.turned_mm, p.turned_mm)),
        }
    }
    let mut g = shapes::group("figures");
    for (rpm, from, to) in runs {
        let (x1, x2) = (layout.axis.x_clamped(from), layout.axis.x_clamped(to));
        let words = numbers::rpm(rpm);
        if shapes::text_width(&words, SMALL) + 4.0 <= x2 - x1 {
            let y = charts.speed_y + SPEED * (1.0 - rpm / most) - 3.0;
            g = g.add(shapes::text_on_ground((x1 + x2) / 2.0, y, SMALL, "middle", &words));
        }
    }
    g
}
