//! One thin strip a stage: the bar at the end of the stage, and where grip, bush and headstock stand then.

use svg::node::element::Group;

use super::layout::{Layout, MARGIN};
use super::shapes::{self, BUSH, GRIP, HEAD, INK, RAW, SMALL, SOFT, STEEL, WHITE, xy};
use super::{numbers, words};
use crate::job::plan::{Plan, Stage};

/// Share of a strip's height the bar takes, and each jaw above and below it.
const BAR_SHARE: f64 = 0.4;
const JAW_SHARE: f64 = 0.17;

/// The strips; nothing where the layout has none.
pub fn strips(plan: &Plan, layout: &Layout) -> Option<Group> {
    let (top, height) = layout.strips?;
    let mut g = shapes::group("strips");
    for (i, stage) in plan.stages.iter().enumerate() {
        g = g.add(strip(plan, layout, stage, top + (i as f64 + 0.5) * height, height));
    }
    Some(g)
}

fn strip(plan: &Plan, layout: &Layout, stage: &Stage, y: f64, height: f64) -> Group {
    let a = &layout.axis;
    let per_mm = height * BAR_SHARE / plan.shaft.stock_diameter_mm;
    let half = |d: f64| d * per_mm / 2.0;
    let bar = half(plan.shaft.stock_diameter_mm);
    let jaw = height * JAW_SHARE;
    let size = SMALL.min(height);
    let cut = a.x_clamped(stage.to_mm);
    let mut g = shapes::group("strip")
        .add(
            shapes::text(MARGIN, y + 3.5, size, "start", &format!("stage {}", stage.number)).set("font-weight", "bold"),
        )
        .add(
            shapes::rect(cut, y - bar, a.right() - cut, 2.0 * bar)
                .set("fill", RAW)
                .set("stroke", SOFT)
                .set("stroke-width", "0.6"),
        )
        .add(
            shapes::path(turned_path(plan, layout, stage.to_mm, y, &half))
                .set("fill", STEEL)
                .set("stroke", INK)
                .set("stroke-width", "0.6"),
        );
    if let Some(grip) = &stage.grip {
        let (x1, x2) = (a.x_clamped(grip.from_mm), a.x_clamped(grip.to_mm));
        let h = half(grip.diameter_mm);
        g = g.add(body(a.left, x1, y, bar + jaw)).add(jaws(x1, x2, y, h, bar + jaw - h, "grip"));
    }
    let mut nose_mm = stage.to_mm + plan.layout.gap_mm;
    if let Some(land) = plan.layout.bush_land_mm {
        g = g.add(jaws(a.x_clamped(nose_mm), a.x_clamped(nose_mm + land), y, bar, jaw, "bush"));
        nose_mm += stage.headstock_end_mm;
    }
    let (h1, h2) = (a.x_clamped(nose_mm), a.x_clamped(nose_mm + plan.layout.headstock_hold_mm));
    if h2 - h1 > 1.0 {
        g = g.add(jaws(h1, h2, y, bar, jaw, "headstock"));
    } else {
        let x = a.right() + 2.0;
        g = g.add(
            shapes::path(format!("M{} {}l5 {}l-5 {}", xy(x), xy(y - 4.0), "4", "4"))
                .set("fill", "none")
                .set("stroke", HEAD)
                .set("stroke-width", "1.6"),
        );
    }
    g.add(figures(layout, stage, y, height))
}

/// Outline of the turned front up to `to_mm`.
fn turned_path(plan: &Plan, layout: &Layout, to_mm: f64, y: f64, half: &dyn Fn(f64) -> f64) -> String {
    let a = &layout.axis;
    let mut points: Vec<(f64, f64)> = Vec::new();
    for s in plan.shaft.sections.iter().filter(|s| s.from_mm < to_mm) {
        let end_mm = s.to_mm.min(to_mm);
        let share = if s.to_mm > s.from_mm { (end_mm - s.from_mm) / (s.to_mm - s.from_mm) } else { 1.0 };
        let end_diameter = s.front_diameter_mm + (s.rear_diameter_mm - s.front_diameter_mm) * share;
        points.push((a.x_clamped(s.from_mm), half(s.front_diameter_mm)));
        points.push((a.x_clamped(end_mm), half(end_diameter)));
    }
    if points.is_empty() {
        return String::from("M0 0");
    }
    let upper = points.iter().map(|(x, h)| format!("{} {}", xy(*x), xy(y - h)));
    let lower = points.iter().rev().map(|(x, h)| format!("{} {}", xy(*x), xy(y + h)));
    format!("M{}Z", upper.chain(lower).collect::<Vec<_>>().join("L"))
}

/// Two blocks that hold the bar from above and below.
fn jaws(x1: f64, x2: f64, y: f64, bar: f64, thickness: f64, kind: &str) -> Group {
    let mut g = shapes::group(kind);
    for top in [y - bar - thickness, y + bar] {
        let block = shapes::rect(x1, top, x2 - x1, thickness);
        g = g.add(match kind {
            "grip" => block
                .set("fill", format!("url(#{})", shapes::GRIP_HATCH))
                .set("stroke", GRIP)
                .set("stroke-width", "0.7"),
            "bush" => block.set("fill", BUSH),
            _ => block.set("fill", WHITE).set("stroke", HEAD).set("stroke-width", "1.6"),
        });
    }
    g
}

/// The counter-spindle's tube around the front that has gone into it.
fn body(x1: f64, x2: f64, y: f64, half: f64) -> Group {
    let mut g = shapes::group("counter-spindle");
    for edge in [y - half, y + half] {
        g = g.add(shapes::line(x1, edge, x2, edge, GRIP, 0.9));
    }
    g
}

/// Right of the strip: the unsupported length, and the check that governs.
fn figures(layout: &Layout, stage: &Stage, y: f64, height: f64) -> Group {
    let x = layout.axis.right() + 14.0;
    let unsupported = format!("{} mm", numbers::trimmed(stage.unsupported_max_mm, 1));
    let governing = stage.governing().map(words::check).unwrap_or_default();
    let size = SMALL.min(height);
    let g = shapes::group("figures");
    if height >= 22.0 {
        return g
            .add(shapes::text(x, y - 2.0, size, "start", &format!("unsupported {unsupported}")))
            .add(shapes::text(x, y + 9.5, size, "start", &governing));
    }
    g.add(shapes::text(x, y + 3.5, size, "start", &format!("{unsupported}, {governing}")))
}

/// The caption over the strips.
pub fn caption(layout: &Layout) -> Option<Group> {
    let (top, _) = layout.strips?;
    let words = shapes::text(MARGIN, top - 4.0, SMALL, "start", "At the end of each stage").set("fill", SOFT);
    Some(shapes::group("caption").add(words))
}
