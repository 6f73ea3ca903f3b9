//! Grips and stops on the shaft, and the legend that says what the marks mean.

use svg::node::element::{Group, Line};

use super::labels;
use super::layout::{Layout, ROW, flag_text, grip_text};
use super::legend::{Mark, SAMPLE};
use super::numbers;
use super::page_size::{MARGIN, Use};
use super::shapes::{self, BUSH, GRIP, HEAD, INK, SMALL, SOFT, WHITE, xy};
use super::stops::{self, Stop};
use super::strips;
use crate::job::plan::Plan;
use crate::lang;
use crate::say;

/// Thickness of the jaws drawn on the shaft.
const JAW: f64 = 6.0;
/// Half the height of a centre drawn on the shaft.
const CENTRE: f64 = 8.0;

/// Jaws on the shaft and, in lanes below, a bar with the number of the stage.
pub fn grips(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("grips");
    if plan.centre.is_some() {
        g = g.add(strips::centre(layout.axis.left, layout.centre_y, CENTRE));
    }
    for (stage, lane) in plan.stages.iter().zip(&layout.grip_lanes) {
        let Some(grip) = &stage.grip else { continue };
        let (x1, x2) = (layout.axis.x_clamped(grip.from_mm), layout.axis.x_clamped(grip.to_mm));
        let h = layout.half(grip.diameter_mm);
        for y in [layout.centre_y - h - JAW, layout.centre_y + h] {
            g = g.add(
                shapes::rect(x1, y, x2 - x1, JAW)
                    .set("fill", shapes::pattern(shapes::GRIP_HATCH))
                    .set("stroke", GRIP)
                    .set("stroke-width", "0.8"),
            );
        }
        let Some(lane) = lane else { continue };
        let y = layout.grips_y + *lane as f64 * ROW;
        g = g
            .add(
                shapes::rect(x1, y + 3.0, x2 - x1, 7.0)
                    .set("fill", shapes::pattern(shapes::GRIP_HATCH))
                    .set("stroke", GRIP)
                    .set("stroke-width", "0.8"),
            )
            .add(
                shapes::text(x2 + 3.0, y + 10.0, SMALL, "start", &grip_text(stage, grip, layout.of))
                    .set("font-weight", "bold"),
            );
    }
    g
}

/// The line of a stop. Its letter says the same as its colour and dashes. None: a stop for other work.
fn line_kind(hand_over: bool, regrip: bool, from: (f64, f64), to: (f64, f64)) -> Option<Line> {
    let line = |colour: &str, width: f64| shapes::line(from.0, from.1, to.0, to.1, colour, width);
    match (hand_over, regrip) {
        (true, true) => Some(line(INK, 1.8)),
        (true, false) => Some(line(INK, 1.5).set("stroke-dasharray", "9 3 2 3")),
        (false, true) => Some(line(BUSH, 1.5).set("stroke-dasharray", "3 3")),
        (false, false) => None,
    }
}

/// The line of a stop for other work.
fn work_line(from: (f64, f64), to: (f64, f64)) -> Line {
    shapes::line(from.0, from.1, to.0, to.1, SOFT, 1.0).set("stroke-dasharray", "1 3")
}

/// Upright lines for hand-overs and headstock re-grips, for the setter also for other work, each with a flag below the shaft.
pub fn stop_marks(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("stops");
    for (stop, row) in stops::stops(plan).iter().zip(&layout.flag_rows) {
        let x = layout.axis.x_clamped(stop.turned_mm);
        let y = layout.flags_y + row.unwrap_or(0) as f64 * ROW;
        let top = layout.centre_y - layout.bar_half - 6.0;
        let (from, to) = ((x, top), (x, y));
        let other = (layout.of == Use::Setting).then(|| work_line(from, to));
        let Some(line) = line_kind(stop.hand_over.is_some(), stop.regrip.is_some(), from, to).or(other) else {
            continue;
        };
        g = g.add(line);
        if row.is_some() {
            g = g.add(flag(stop, x, y, &flag_text(stop, layout.of)));
        }
    }
    g
}

/// A filled flag for a hand-over, an open round one for a re-grip, an open one with a thin edge for other work.
fn flag(stop: &Stop, x: f64, y: f64, text: &str) -> Group {
    let (fill, ink, edge, round) = match (stop.hand_over, stop.regrip) {
        (Some(_), _) => (INK, WHITE, INK, "1"),
        (None, Some(_)) => (WHITE, BUSH, BUSH, "6"),
        (None, None) => (WHITE, INK, SOFT, "1"),
    };
    let width = labels::flag_width(text);
    shapes::group("flag")
        .add(
            shapes::rect(x - width / 2.0, y, width, 13.0)
                .set("rx", round)
                .set("fill", fill)
                .set("stroke", edge)
                .set("stroke-width", "1.1"),
        )
        .add(shapes::text(x, y + 10.0, SMALL, "middle", text).set("fill", ink).set("font-weight", "bold"))
}

/// What the marks mean.
pub fn legend(layout: &Layout) -> Group {
    let mut g = shapes::group("legend");
    for entry in &layout.legend {
        let y = layout.legend_y + entry.row as f64 * ROW;
        let moved = sample(entry.mark).set("transform", format!("translate({} {})", xy(entry.x), xy(y)));
        g = g.add(moved).add(shapes::text(entry.x + SAMPLE + 5.0, y, SMALL, "start", entry.words));
    }
    g
}

/// A mark as it looks in the drawing, on the base line of its words.
fn sample(mark: Mark) -> Group {
    let g = shapes::group("sample");
    let block = |width: f64| shapes::rect(SAMPLE - width, -8.0, width, 8.0);
    let stop = |hand_over: bool, regrip: bool| {
        let line = line_kind(hand_over, regrip, (0.0, -3.5), (SAMPLE, -3.5));
        line.into_iter().fold(shapes::group("sample"), Group::add)
    };
    match mark {
        Mark::Grip => g.add(block(20.0).set("fill", shapes::pattern(shapes::GRIP_HATCH)).set("stroke", GRIP)),
        Mark::Centre => g.add(strips::centre(SAMPLE - 4.0, -4.0, 6.0)),
        Mark::HandOver => stop(true, false),
        Mark::Regrip => stop(false, true),
        Mark::Both => stop(true, true),
        Mark::Work => g.add(work_line((0.0, -3.5), (SAMPLE, -3.5))),
        Mark::Bush => g.add(block(14.0).set("fill", BUSH)),
        Mark::Headstock => g.add(block(14.0).set("fill", WHITE).set("stroke", HEAD).set("stroke-width", "1.4")),
        Mark::Bore => {
            g.add(shapes::line(0.0, -8.0, SAMPLE, -8.0, GRIP, 0.9)).add(shapes::line(0.0, 0.0, SAMPLE, 0.0, GRIP, 0.9))
        }
        Mark::Sleeve => g.add(shapes::line(SAMPLE - 6.0, -9.0, SAMPLE - 6.0, -5.5, GRIP, 2.2)).add(shapes::line(
            SAMPLE - 6.0,
            -2.5,
            SAMPLE - 6.0,
            1.0,
            GRIP,
            2.2,
        )),
        Mark::Farther => g.add(strips::farther(SAMPLE - 8.0, -4.0)),
        Mark::NotReached => g.add(block(20.0).set("fill", shapes::pattern(shapes::HATCH)).set("stroke", shapes::LIMIT)),
    }
}

/// Captions at the left of the profile: what it is and how it is scaled.
pub fn profile_caption(layout: &Layout) -> Group {
    let x = MARGIN;
    let y = layout.centre_y;
    let scale = if layout.exaggeration == 1.0 {
        say!("diagram-true-scale")
    } else {
        say!("diagram-radial-scale", factor = numbers::trimmed(layout.exaggeration, 2))
    };
    let mut g = shapes::group("caption")
        .add(shapes::text(x, y - 16.0, SMALL, "start", lang::text("diagram-shaft")).set("font-weight", "bold"));
    for (i, line) in scale.lines().enumerate() {
        g = g.add(shapes::text(x, y - 2.0 + 12.0 * i as f64, SMALL, "start", line).set("fill", SOFT));
    }
    g
}
