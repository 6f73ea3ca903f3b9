//! Sampled parts in the chart: the band of the share that the tightest check uses, behind the curves, and the curve of one part.

use plotters::prelude::*;
use svg::node::element::Group;

use super::chart::{self, TOP};
use super::layout::{Charts, Layout};
use super::shapes::{self, LIMIT, SMALL, SOFT};
use super::thinned::thinned;
use super::{ReportError, curves};
use crate::job::plan::{Along, Plan};
use crate::lang;

/// Width of the curve of a part.
const WIDTH: f64 = 2.2;

/// The band and the curve.
///
/// # Errors
/// The chart library fails.
pub fn band(plan: &Plan, along: &Along, layout: &Layout, charts: &Charts) -> Result<Group, ReportError> {
    let per = chart::per(layout, charts.height, TOP);
    let at = |x: f64, share: f64| (x.clamp(0.0, layout.axis.max_mm), share.clamp(0.0, TOP));
    let drawn = chart::plotted(layout, charts.y, charts.height, TOP, |plot| {
        for stage in along.band.chunk_by(|a, b| a.stage == b.stage) {
            let line = |share: fn(&crate::job::plan::BandPoint) -> f64| {
                thinned(&stage.iter().map(|p| at(p.turned_mm, share(p))).collect::<Vec<_>>(), per)
            };
            let mut area = line(|p| p.high);
            area.extend(line(|p| p.low).into_iter().rev());
            let shade = Polygon::new(area, chart::colour(SOFT).mix(0.28));
            plot.draw_series(std::iter::once(shade)).map_err(|e| e.to_string())?;
        }
        for stage in along.part.iter().flat_map(|part| part.curve.chunk_by(|a, b| a.stage == b.stage)) {
            let points = thinned(&stage.iter().map(|p| at(p.turned_mm, p.used)).collect::<Vec<_>>(), per);
            plot.draw_series(LineSeries::new(points, chart::pen(LIMIT, WIDTH))).map_err(|e| e.to_string())?;
        }
        Ok(())
    })?;
    Ok(shapes::group("sampled").add(drawn).add(key(plan, along, layout, charts)))
}

/// Right of the chart, below the other names: what band and curve are.
fn key(plan: &Plan, along: &Along, layout: &Layout, charts: &Charts) -> Group {
    let (x, y) = (layout.axis.right() + 8.0, curves::below_key(plan, charts));
    let text = |y: f64, words: &str| shapes::text(x + curves::SAMPLE + 5.0, y, SMALL, "start", words);
    let mut g = shapes::group("key-sampled")
        .add(shapes::rect(x, y - 8.0, curves::SAMPLE, 8.0).set("fill", SOFT).set("opacity", "0.28"))
        .add(text(y, lang::text("diagram-band")));
    if along.part.is_some() {
        g = g
            .add(shapes::line(
                x,
                y + curves::KEY_LINE - 3.5,
                x + curves::SAMPLE,
                y + curves::KEY_LINE - 3.5,
                LIMIT,
                WIDTH,
            ))
            .add(text(y + curves::KEY_LINE, lang::text("diagram-part")));
    }
    g
}
