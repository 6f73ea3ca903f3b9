//! Two thin strips per stage: the bar at its start and at its end, and where counter-spindle, bush and headstock then
//! are.

use svg::node::element::Group;

use super::layout::Layout;
use super::legend::sleeves;
use super::page_size::MARGIN;
use super::shapes::{self, BUSH, GRIP, HEAD, INK, RAW, SMALL, SOFT, STEEL, WHITE, xy};
use super::{numbers, tables, words};
use crate::job::plan::{Plan, Stage};
use crate::lang;
use crate::say;

/// Shares of a strip's height: the bar, and each jaw above and below it.
const BAR_SHARE: f64 = 0.46;
const JAW_SHARE: f64 = 0.17;

/// The machine at one end of a stage.
struct Moment<'a> {
    plan: &'a Plan,
    layout: &'a Layout,
    stage: &'a Stage,
    /// Turned length, mm.
    turned_mm: f64,
    /// Distance of the headstock's nose from the bush face, mm; none: not known.
    headstock_mm: Option<f64>,
    /// Centre line and height of the strip on the page.
    y: f64,
    height: f64,
}

/// The strips. None: the layout has no strips.
pub fn strips(plan: &Plan, layout: &Layout) -> Option<Group> {
    let (top, pair) = layout.strips?;
    let words = lang::text("diagram-strips");
    let mut g = shapes::group("strips")
        .add(shapes::group("caption").add(shapes::text(MARGIN, top - 6.0, SMALL, "start", words).set("fill", SOFT)));
    for (i, stage) in plan.stages.iter().enumerate() {
        let height = pair * 0.45;
        let y = top + i as f64 * pair + height / 2.0;
        let headstock = tables::headstock(stage);
        let at = |turned_mm: f64, headstock_mm: Option<f64>, y: f64| {
            strip(&Moment { plan, layout, stage, turned_mm, headstock_mm, y, height })
        };
        g = g
            .add(at(stage.from_mm, headstock.map(|h| h.0), y))
            .add(at(stage.to_mm, headstock.map(|h| h.1), y + height + 1.0))
            .add(captions(layout, stage, y, height));
    }
    Some(g)
}

fn strip(m: &Moment) -> Group {
    let (plan, a, y) = (m.plan, &m.layout.axis, m.y);
    let per_mm = m.height * BAR_SHARE / plan.shaft.stock_diameter_mm;
    let half = |d: f64| d * per_mm / 2.0;
    let bar = half(plan.shaft.stock_diameter_mm);
    let jaw = m.height * JAW_SHARE;
    let cut = a.x_clamped(m.turned_mm);
    let mut g = shapes::group("strip").add(
        shapes::rect(cut, y - bar, a.right() - cut, 2.0 * bar)
            .set("fill", RAW)
            .set("stroke", SOFT)
            .set("stroke-width", "0.6"),
    );
    if let Some(outline) = turned_outline(m, &half) {
        g = g.add(shapes::path(outline).set("fill", STEEL).set("stroke", INK).set("stroke-width", "0.6"));
    }
    if let Some(grip) = &m.stage.grip {
        let (x1, x2) = (a.x_clamped(grip.from_mm), a.x_clamped(grip.to_mm));
        let h = half(grip.diameter_mm);
        g = g.add(bore(m, x1, bar + jaw)).add(jaws(x1, x2, y, h, bar + jaw - h, "grip"));
    }
    if plan.centre.is_some_and(|c| m.turned_mm <= c.leaves_at_mm) {
        g = g.add(centre(a.left, y, bar));
    }
    let mut nose_mm = m.turned_mm + plan.layout.gap_mm;
    if let Some(land) = plan.layout.bush_land_mm {
        let (x1, x2) = (a.x_clamped(nose_mm), a.x_clamped(nose_mm + land));
        g = g.add(jaws(x1, x2, y, bar, jaw, "bush"));
    }
    let Some(headstock_mm) = m.headstock_mm else { return g };
    nose_mm = if plan.layout.bush_land_mm.is_some() { nose_mm + headstock_mm } else { m.turned_mm + headstock_mm };
    let (h1, h2) = (a.x_clamped(nose_mm), a.x_clamped(nose_mm + plan.layout.headstock_hold_mm));
    g.add(if h2 - h1 > 1.0 { jaws(h1, h2, y, bar, jaw, "headstock") } else { farther(a.right() + 3.0, y) })
}

/// The mark for a headstock that stands to the right of what is shown.
pub fn farther(x: f64, y: f64) -> Group {
    let arrow = shapes::path(format!("M{} {}l5 4l-5 4", xy(x), xy(y - 4.0)))
        .set("fill", "none")
        .set("stroke", HEAD)
        .set("stroke-width", "1.6");
    shapes::group("farther").add(arrow)
}

/// A centre with its tip a little behind the front face at `x`.
pub fn centre(x: f64, y: f64, half: f64) -> Group {
    let tip = shapes::path(format!(
        "M{} {}L{} {}V{}Z",
        xy(x + 0.9 * half),
        xy(y),
        xy(x - 0.6 * half),
        xy(y - 0.8 * half),
        xy(y + 0.8 * half)
    ));
    shapes::group("centre").add(tip.set("fill", GRIP).set("stroke", INK).set("stroke-width", "0.5"))
}

/// Outline of the turned part. None: before the first cut.
fn turned_outline(m: &Moment, half: &dyn Fn(f64) -> f64) -> Option<String> {
    let (a, y) = (&m.layout.axis, m.y);
    let mut points: Vec<(f64, f64)> = Vec::new();
    for s in m.plan.shaft.sections.iter().filter(|s| s.from_mm < m.turned_mm) {
        let end_mm = s.to_mm.min(m.turned_mm);
        let end_diameter = s.diameter_at_mm(end_mm);
        points.push((a.x_clamped(s.from_mm), half(s.front_diameter_mm)));
        points.push((a.x_clamped(end_mm), half(end_diameter)));
    }
    let upper = points.iter().map(|(x, h)| format!("{} {}", xy(*x), xy(y - h)));
    let lower = points.iter().rev().map(|(x, h)| format!("{} {}", xy(*x), xy(y + h)));
    (!points.is_empty()).then(|| format!("M{}Z", upper.chain(lower).collect::<Vec<_>>().join("L")))
}

/// Two blocks that hold the bar from above and below.
fn jaws(x1: f64, x2: f64, y: f64, bar: f64, thickness: f64, kind: &str) -> Group {
    let mut g = shapes::group(kind);
    for top in [y - bar - thickness, y + bar] {
        let block = shapes::rect(x1, top, x2 - x1, thickness);
        g = g.add(match kind {
            "grip" => {
                block.set("fill", shapes::pattern(shapes::GRIP_HATCH)).set("stroke", GRIP).set("stroke-width", "0.7")
            }
            "bush" => block.set("fill", BUSH),
            _ => block.set("fill", WHITE).set("stroke", HEAD).set("stroke-width", "1.4"),
        });
    }
    g
}

/// The counter-spindle's bore around the front that has gone into it, with the sleeves that carry it.
fn bore(m: &Moment, nose: f64, half: f64) -> Group {
    let (a, y) = (&m.layout.axis, m.y);
    let mut g = shapes::group("counter-spindle");
    for edge in [y - half, y + half] {
        g = g.add(shapes::line(a.left, edge, nose, edge, GRIP, 0.9));
    }
    for x in sleeves(m.plan, m.stage).map(|at| a.x_clamped(at)) {
        for (from, to) in [(y - half, y - half * 0.62), (y + half * 0.62, y + half)] {
            g = g.add(shapes::line(x, from, x, to, GRIP, 2.2));
        }
    }
    g
}

/// Left, the stage; right, its longest unsupported length and the check that governs.
fn captions(layout: &Layout, stage: &Stage, y: f64, height: f64) -> Group {
    let size = SMALL.min(height);
    let (base, next) = (y + size * 0.36, y + height + 1.0 + size * 0.36);
    let edge = layout.axis.left - 5.0;
    let x = layout.axis.right() + 14.0;
    let unsupported = say!("diagram-unsupported", unsupported = numbers::short_mm(stage.unsupported_max_mm));
    let governing = stage.governing().map(words::check).unwrap_or_default();
    let room = layout.canvas.width - 4.0 - x;
    shapes::group("figures")
        .add(shapes::text(MARGIN, base, size, "start", &stage.number.to_string()).set("font-weight", "bold"))
        .add(shapes::text(edge, base, size, "end", lang::text("diagram-start")).set("fill", SOFT))
        .add(shapes::text(edge, next, size, "end", lang::text("diagram-end")).set("fill", SOFT))
        .add(shapes::text(x, base, size, "start", &shapes::fit_text(&unsupported, size, room)))
        .add(shapes::text(x, next, size, "start", &shapes::fit_text(&governing, size, room)))
}
