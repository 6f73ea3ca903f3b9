//! Grips and stops on the shaft, and the legend that says what the marks mean.

use svg::node::element::{Group, Line};

use super::labels;
use super::layout::{Layout, ROW};
use super::shapes::{self, BUSH, GRIP, HEAD, INK, SMALL, SOFT, WHITE, xy};
use super::stops::{self, Stop};
use super::{numbers, verdict};
use crate::job::plan::Plan;

/// Thickness of the jaws drawn on the shaft.
const JAW: f64 = 6.0;

/// Jaws on the shaft and, in lanes below, a bar with the number of the stage.
pub fn grips(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("grips");
    for (stage, lane) in plan.stages.iter().zip(&layout.grip_lanes) {
        let Some(grip) = &stage.grip else { continue };
        let (x1, x2) = (layout.axis.x_clamped(grip.from_mm), layout.axis.x_clamped(grip.to_mm));
        let h = layout.half(grip.diameter_mm);
        for y in [layout.centre_y - h - JAW, layout.centre_y + h] {
            g = g.add(
                shapes::rect(x1, y, x2 - x1, JAW)
                    .set("fill", format!("url(#{})", shapes::GRIP_HATCH))
                    .set("stroke", GRIP)
                    .set("stroke-width", "0.8"),
            );
        }
        let Some(lane) = lane else { continue };
        let y = layout.grips_y + *lane as f64 * ROW;
        g = g
            .add(
                shapes::rect(x1, y + 3.0, x2 - x1, 7.0)
                    .set("fill", format!("url(#{})", shapes::GRIP_HATCH))
                    .set("stroke", GRIP)
                    .set("stroke-width", "0.8"),
            )
            .add(
                shapes::text(x2 + 3.0, y + 10.0, SMALL, "start", &stage.number.to_string()).set("font-weight", "bold"),
            );
    }
    g
}

/// What kind of line a stop has: its letter says the same.
fn stop_line(stop: &Stop, x: f64, y1: f64, y2: f64) -> Option<Line> {
    match (stop.hand_over.is_some(), stop.regrip.is_some()) {
        (true, true) => Some(shapes::line(x, y1, x, y2, INK, 1.8)),
        (true, false) => Some(shapes::line(x, y1, x, y2, INK, 1.5).set("stroke-dasharray", "9 3 2 3")),
        (false, true) => Some(shapes::line(x, y1, x, y2, BUSH, 1.5).set("stroke-dasharray", "3 3")),
        (false, false) => None,
    }
}

/// Upright lines for hand-overs and headstock re-grips, each with a flag below the shaft.
pub fn stop_marks(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("stops");
    for (stop, row) in stops::stops(plan).iter().zip(&layout.flag_rows) {
        let x = layout.axis.x_clamped(stop.turned_mm);
        let y = layout.flags_y + row.unwrap_or(0) as f64 * ROW;
        let Some(line) = stop_line(stop, x, layout.centre_y - layout.bar_half - 6.0, y) else { continue };
        g = g.add(line);
        if row.is_some() {
            g = g.add(flag(stop, x, y, labels::flag_width(&stop.mark())));
        }
    }
    g
}

/// A filled flag for a hand-over, an open round one for a re-grip.
fn flag(stop: &Stop, x: f64, y: f64, width: f64) -> Group {
    let hand_over = stop.hand_over.is_some();
    let (fill, ink, round) = if hand_over { (INK, WHITE, "1") } else { (WHITE, BUSH, "6") };
    let edge = if hand_over { INK } else { BUSH };
    shapes::group("flag")
        .add(
            shapes::rect(x - width / 2.0, y, width, 13.0)
                .set("rx", round)
                .set("fill", fill)
                .set("stroke", edge)
                .set("stroke-width", "1.1"),
        )
        .add(shapes::text(x, y + 10.0, SMALL, "middle", &stop.mark()).set("fill", ink).set("font-weight", "bold"))
}

/// What the marks mean, in one row; only marks that occur.
pub fn legend(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("legend").set("font-size", xy(SMALL));
    let mut x = super::layout::MARGIN;
    let y = layout.legend_y;
    let mut entry = |g: Group, sample: Group, words: &str, width: f64| {
        let moved = sample.set("transform", format!("translate({} {})", xy(x), xy(y)));
        let g = g.add(moved).add(shapes::text(x + width + 5.0, y, SMALL, "start", words));
        x += width + 5.0 + shapes::text_width(words, SMALL) * 0.93 + 14.0;
        g
    };
    let all = stops::stops(plan);
    let has = |h: bool, r: bool| all.iter().any(|s| s.hand_over.is_some() == h && s.regrip.is_some() == r);
    let sample = |hand_over: bool, regrip: bool| {
        let stop = Stop {
            turned_mm: 0.0,
            hand_over: hand_over.then_some(1),
            regrip: regrip.then_some(1),
            features: Vec::new(),
            surface: String::new(),
            leaves: stops::Leaves::NothingAtShoulder,
        };
        let line = stop_line(&stop, 0.0, 0.0, 0.0).map(|l| l.set("x2", "26").set("y1", "-3.5").set("y2", "-3.5"));
        line.into_iter().fold(shapes::group("sample"), Group::add)
    };
    if plan.stages.iter().any(|s| s.grip.is_some()) {
        let jaw =
            shapes::rect(0.0, -8.0, 20.0, 8.0).set("fill", format!("url(#{})", shapes::GRIP_HATCH)).set("stroke", GRIP);
        g = entry(g, shapes::group("sample").add(jaw), "grip, with its stage", 20.0);
    }
    if has(true, false) {
        g = entry(g, sample(true, false), "H hand-over", 26.0);
    }
    if has(false, true) {
        g = entry(g, sample(false, true), "R headstock re-grip", 26.0);
    }
    if has(true, true) {
        g = entry(g, sample(true, true), "H+R both in one stop", 26.0);
    }
    if layout.strips.is_some() {
        let block = |colour: &str| shapes::rect(0.0, -8.0, 12.0, 8.0).set("fill", colour);
        if plan.layout.bush_land_mm.is_some() {
            g = entry(g, shapes::group("sample").add(block(BUSH)), "bush", 12.0);
        }
        let head = block(WHITE).set("stroke", HEAD).set("stroke-width", "1.6");
        g = entry(g, shapes::group("sample").add(head), "headstock collet", 12.0);
    }
    if !verdict::is_feasible(plan) {
        let hatch = shapes::rect(0.0, -8.0, 20.0, 8.0)
            .set("fill", format!("url(#{})", shapes::HATCH))
            .set("stroke", shapes::LIMIT);
        g = entry(g, shapes::group("sample").add(hatch), "not reached", 20.0);
    }
    g
}

/// Captions at the left of the profile: what it is and how it is scaled.
pub fn profile_caption(layout: &Layout) -> Group {
    let x = super::layout::MARGIN;
    let y = layout.centre_y;
    let scale = if layout.exaggeration == 1.0 {
        ["true to", "scale", ""].map(str::to_string)
    } else {
        ["radial".to_string(), "scale".to_string(), format!("× {}", numbers::trimmed(layout.exaggeration, 2))]
    };
    let mut g =
        shapes::group("caption").add(shapes::text(x, y - 16.0, SMALL, "start", "Shaft").set("font-weight", "bold"));
    for (i, line) in scale.iter().enumerate() {
        g = g.add(shapes::text(x, y - 2.0 + 12.0 * i as f64, SMALL, "start", line).set("fill", SOFT));
    }
    g
}
