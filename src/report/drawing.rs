//! The shaft: sections true to scale along the axis, radial distances exaggerated by a stated factor. In the manner of ISO 128:
//! wide outlines, narrow chain lines for axes, flats by crossed narrow lines; thread roots narrow and the thread's end wide as
//! in ISO 6410; centre holes by hidden edges. The bar is a dashed outline. The standards are from memory, not re-read.

use svg::node::element::Group;

use super::labels::NUMBER;
use super::layout::{Layout, ROW};
use super::shapes::{self, INK, SMALL, SOFT, STEEL, WHITE, xy};
use super::{features, numbers};
use crate::job::plan::{Plan, SectionOutline, Verdict};
use crate::say;

/// Sections, features, bar, centre line.
pub fn profile(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("shaft").set("stroke-linejoin", "round").add(bar(plan, layout));
    for section in &plan.shaft.sections {
        g = g.add(section_shape(section, layout));
    }
    for feature in &plan.shaft.features {
        g = g.add(features::shape(feature, plan, layout));
    }
    let (a, y) = (&layout.axis, layout.centre_y);
    if let Some(bore_mm) = plan.shaft.stock_bore_mm {
        let h = layout.half(bore_mm);
        for y in [y - h, y + h] {
            g = g.add(shapes::line(a.left, y, a.right(), y, INK, 0.6).set("stroke-dasharray", "4 3"));
        }
    }
    g.add(shapes::line(a.left - 10.0, y, a.right() + 4.0, y, SOFT, 0.7).set("stroke-dasharray", shapes::CHAIN))
}

/// Outline of the bar, dashed, with the part-off cut.
fn bar(plan: &Plan, layout: &Layout) -> Group {
    let (a, y, h) = (&layout.axis, layout.centre_y, layout.bar_half);
    let (cut_from, cut_to) =
        (a.x(plan.length_mm), a.x_clamped(plan.length_mm + plan.layout.part_off_width_mm.max(0.0)));
    shapes::group("bar")
        .add(shapes::rect(cut_to, y - h, a.right() - cut_to, 2.0 * h).set("fill", shapes::RAW))
        .add(
            shapes::rect(cut_from, y - h, cut_to - cut_from, 2.0 * h)
                .set("fill", WHITE)
                .set("stroke", SOFT)
                .set("stroke-width", "0.6"),
        )
        .add(
            shapes::path(format!(
                "M{l} {t}H{r}M{l} {b}H{r}M{l} {t}V{b}",
                l = xy(a.left),
                r = xy(a.right()),
                t = xy(y - h),
                b = xy(y + h)
            ))
            .set("fill", "none")
            .set("stroke", SOFT)
            .set("stroke-width", "0.9")
            .set("stroke-dasharray", "6 4"),
        )
}

fn section_shape(s: &SectionOutline, layout: &Layout) -> Group {
    let y = layout.centre_y;
    let (x1, x2) = (layout.axis.x_clamped(s.from_mm), layout.axis.x_clamped(s.to_mm));
    let (h1, h2) = (layout.half(s.front_diameter_mm), layout.half(s.rear_diameter_mm));
    let outline = format!(
        "M{x1} {a}L{x2} {b}V{c}L{x1} {d}Z",
        x1 = xy(x1),
        x2 = xy(x2),
        a = xy(y - h1),
        b = xy(y - h2),
        c = xy(y + h2),
        d = xy(y + h1)
    );
    let shape = |fill: &str| {
        shapes::path(outline.clone()).set("fill", fill).set("stroke", INK).set("stroke-width", outline_width(x2 - x1))
    };
    let mut g = shapes::group("section").add(shape(STEEL));
    let thin = |y: f64| shapes::line(x1, y, x2, y, INK, 0.5);
    match (s.kind.as_str(), s.inner_diameter_mm) {
        ("thread", Some(minor_mm)) => {
            let h = layout.half(minor_mm);
            g = g.add(thin(y - h)).add(thin(y + h));
        }
        ("flats", Some(across_mm)) => {
            let h = layout.half(across_mm.min(s.front_diameter_mm)) * 0.58;
            g = g
                .add(
                    shapes::rect(x1, y - h, x2 - x1, 2.0 * h)
                        .set("fill", "none")
                        .set("stroke", INK)
                        .set("stroke-width", "0.6"),
                )
                .add(shapes::line(x1, y - h, x2, y + h, INK, 0.5))
                .add(shapes::line(x1, y + h, x2, y - h, INK, 0.5));
        }
        ("knurl", _) => g = g.add(shape(&shapes::pattern(shapes::KNURL))),
        _ => {}
    }
    g
}

/// Thinner outlines for sections of only a few units, so that many of them together do not turn black.
fn outline_width(length: f64) -> &'static str {
    if length < 4.0 { "0.6" } else { "1.3" }
}

/// Labels of the sections above the profile.
pub fn section_labels(plan: &Plan, layout: &Layout) -> Group {
    let mut g = shapes::group("section-labels");
    for p in &layout.section_labels.placed {
        let base = layout.labels_bottom - p.row as f64 * ROW - 3.0;
        let (x, anchor) = p.tied();
        let diameter_mm =
            plan.shaft.sections.get(p.index).map_or(0.0, |s| (s.front_diameter_mm + s.rear_diameter_mm) / 2.0);
        let end = layout.centre_y - layout.half(diameter_mm) + 3.0;
        g = g
            .add(shapes::line(p.anchor, base + 3.0, p.anchor, end, SOFT, 0.6))
            .add(shapes::circle(p.anchor, end, 1.4).set("fill", SOFT))
            .add(shapes::text(x, base, SMALL, anchor, &p.text));
    }
    for (x, number) in &layout.section_labels.numbers {
        let size = layout.canvas.text(NUMBER);
        let base = layout.labels_bottom + size;
        g = g.add(shapes::text(*x, base, size, "middle", &number.to_string()).set("fill", SOFT));
    }
    g
}

/// Labels of the features below the grips.
pub fn feature_labels(layout: &Layout) -> Group {
    let mut g = shapes::group("feature-labels");
    for p in &layout.feature_labels.placed {
        let top = layout.features_y + p.row as f64 * ROW;
        let (x, anchor) = p.tied();
        g = g
            .add(
                shapes::line(p.anchor, layout.centre_y + layout.bar_half + 2.0, p.anchor, top + 2.0, SOFT, 0.6)
                    .set("stroke-dasharray", "1 2"),
            )
            .add(shapes::text_on_ground(x, top + 11.0, SMALL, anchor, &p.text));
    }
    g
}

/// The lengths of the sections in a chain under the drawing, with oblique strokes at its ends (ISO 129, from memory, not re-read).
/// None: the layout has no room for them.
pub fn lengths(plan: &Plan, layout: &Layout) -> Option<Group> {
    const STROKE: f64 = 3.0;
    let (y, labels) = layout.lengths.as_ref()?;
    let mut g = shapes::group("lengths");
    let sections = &plan.shaft.sections;
    let edges = sections
        .iter()
        .map(|s| (s.from_mm, s.front_diameter_mm))
        .chain(sections.last().map(|s| (s.to_mm, s.rear_diameter_mm)));
    for (at_mm, diameter_mm) in edges {
        let x = layout.axis.x_clamped(at_mm);
        g = g
            .add(shapes::line(x, layout.centre_y + layout.half(diameter_mm) + 2.0, x, y + STROKE, shapes::RULE, 0.6))
            .add(shapes::line(x - STROKE, y + STROKE, x + STROKE, y - STROKE, SOFT, 0.9));
    }
    let ends = sections.first().zip(sections.last());
    let ends = ends.map(|(first, last)| (layout.axis.x_clamped(first.from_mm), layout.axis.x_clamped(last.to_mm)));
    g = ends.into_iter().fold(g, |g, (from, to)| g.add(shapes::line(from, *y, to, *y, SOFT, 0.7)));
    for label in &labels.placed {
        let base = y + 12.0 + label.row as f64 * ROW;
        let (x, anchor) = label.tied();
        let room = sections
            .get(label.index)
            .map_or(0.0, |s| layout.axis.x_clamped(s.to_mm) - layout.axis.x_clamped(s.from_mm));
        if label.row > 0 || label.width > room {
            g = g.add(shapes::line(label.anchor, *y, label.anchor, base - SMALL + 1.0, SOFT, 0.5));
        }
        g = g.add(shapes::text(x, base, SMALL, anchor, &label.text));
    }
    Some(g)
}

/// The part of the shaft that cannot be reached, hatched, with the place where it stops. None: the plan is feasible.
pub fn not_reached(plan: &Plan, layout: &Layout) -> Option<Group> {
    let shortfall =
        plan.shortfall.as_ref().filter(|s| plan.verdict == Verdict::Infeasible && s.farthest_mm.is_finite())?;
    let a = &layout.axis;
    let (x1, x2) = (a.x_clamped(shortfall.farthest_mm), a.x_clamped(plan.length_mm));
    let (top, height) = (layout.centre_y - layout.bar_half - 4.0, 2.0 * layout.bar_half + 8.0);
    let reason = say!("diagram-not-reached", at = numbers::stop_mm(shortfall.farthest_mm));
    let reason = shapes::fit_text(&reason, 13.0, a.width());
    let half = shapes::text_width(&reason, 13.0) / 2.0;
    let middle = ((x1 + x2) / 2.0).clamp(a.left + half.min(a.width() / 2.0), a.right() - half.min(a.width() / 2.0));
    Some(
        shapes::group("not-reached")
            .add(
                shapes::rect(x1, top, x2 - x1, height)
                    .set("fill", shapes::pattern(shapes::HATCH))
                    .set("stroke", shapes::LIMIT)
                    .set("stroke-width", "1"),
            )
            .add(shapes::line(x1, top - 6.0, x1, top + height + 6.0, shapes::LIMIT, 2.4))
            .add(
                shapes::text_on_ground(middle, layout.centre_y + 5.0, 13.0, "middle", &reason)
                    .set("fill", shapes::LIMIT)
                    .set("font-weight", "bold")
                    .set("stroke-width", "5"),
            ),
    )
}
