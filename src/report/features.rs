//! Holes, keyseats and similar features on the drawing of the shaft. What can be seen from the side has outlines and
//! axes in the manner of ISO 128. What lies inside has hidden edges. Threads of holes are drawn as in ISO 6410. The
//! standards are from memory, not re-read.

use svg::node::element::{Group, Path, Rectangle};

use super::layout::Layout;
use super::shapes::{self, INK, WHITE, xy};
use crate::job::plan::{FeatureOutline, Plan};

/// A hidden edge.
const HIDDEN: &str = "3 2";
/// How far the axes of a hole stand out of it.
const OVER: f64 = 6.0;
/// Core diameter of a tapped hole as a share of its thread diameter. It is used for the drawing only.
const CORE: f64 = 0.82;

/// The drawing of a feature; an empty group if only a face is worked.
pub fn shape(f: &FeatureOutline, plan: &Plan, layout: &Layout) -> Group {
    let at_end = f.from_mm <= 0.0 || f.to_mm >= plan.length_mm;
    match f.kind.as_str() {
        "centre_hole" => centre_hole(f, plan, layout),
        "cross_hole" => across(f, layout, false),
        "tapped_hole" if !at_end => across(f, layout, true),
        "tapped_hole" => inside(f, layout, f.size_mm * CORE).add(hidden(bounds(f, layout, f.size_mm), "0.5")),
        "axial_hole" | "hex_socket" | "keyway" => inside(f, layout, f.size_mm),
        "keyseat" => keyseat(f, layout),
        "engraving" if f.to_mm > f.from_mm => {
            shapes::group("engraving").add(hidden(bounds(f, layout, f.size_mm), "0.5").set("stroke-dasharray", "none"))
        }
        _ => shapes::group("face"),
    }
}

/// The rectangle that a feature takes, `size_mm` high.
fn bounds(f: &FeatureOutline, layout: &Layout, size_mm: f64) -> Rectangle {
    let (x1, x2, h) = (layout.axis.x_clamped(f.from_mm), layout.axis.x_clamped(f.to_mm), layout.half(size_mm));
    shapes::rect(x1, layout.centre_y - h, x2 - x1, 2.0 * h)
}

fn hidden(shape: Rectangle, width: &str) -> Rectangle {
    shape.set("fill", "none").set("stroke", INK).set("stroke-width", width).set("stroke-dasharray", HIDDEN)
}

/// A hole or a socket in an end.
fn inside(f: &FeatureOutline, layout: &Layout, size_mm: f64) -> Group {
    shapes::group("inside").add(hidden(bounds(f, layout, size_mm), "1"))
}

/// A hole across the shaft, with both axes. A tapped hole also has the narrow three-quarter circle of its thread.
fn across(f: &FeatureOutline, layout: &Layout, tapped: bool) -> Group {
    let (a, y) = (&layout.axis, layout.centre_y);
    let x = a.x_clamped((f.from_mm + f.to_mm) / 2.0);
    let radii = |mm: f64| ((mm / 2.0 * a.scale).max(1.4), layout.half(mm).max(1.4));
    let (rx, ry) = radii(f.size_mm);
    let (hole_x, hole_y) = radii(if tapped { f.size_mm * CORE } else { f.size_mm });
    let axis = |x1: f64, y1: f64, x2: f64, y2: f64| {
        shapes::line(x1, y1, x2, y2, INK, 0.5).set("stroke-dasharray", "7 1.5 1.5 1.5")
    };
    let hole = shapes::ellipse(x, y, hole_x, hole_y).set("fill", WHITE).set("stroke", INK).set("stroke-width", "0.9");
    let g = shapes::group("cross-hole").add(hole);
    let g = if tapped { g.add(three_quarters(x, y, rx, ry)) } else { g };
    g.add(axis(x, y - ry - OVER, x, y + ry + OVER)).add(axis(x - rx - OVER, y, x + rx + OVER, y))
}

fn three_quarters(x: f64, y: f64, rx: f64, ry: f64) -> Path {
    let d = format!("M{} {}A{} {} 0 1 0 {} {}", xy(x), xy(y - ry), xy(rx), xy(ry), xy(x + rx), xy(y));
    shapes::path(d).set("fill", "none").set("stroke", INK).set("stroke-width", "0.5")
}

fn keyseat(f: &FeatureOutline, layout: &Layout) -> Group {
    let length = layout.axis.x_clamped(f.to_mm) - layout.axis.x_clamped(f.from_mm);
    let rx = (f.size_mm / 2.0 * layout.axis.scale).min(length / 2.0);
    let seat = bounds(f, layout, f.size_mm).set("rx", xy(rx)).set("ry", xy(layout.half(f.size_mm)));
    shapes::group("keyseat").add(seat.set("fill", WHITE).set("stroke", INK).set("stroke-width", "0.9"))
}

/// Depth of a cone of 60° as a share of the diameter of its mouth: 0.5/tan 30° (derived here). The whole centre hole
/// with its pilot is about as deep.
const CONE: f64 = 0.866;

/// A centre hole: its cone as hidden edges, true to scale along the axis.
fn centre_hole(f: &FeatureOutline, plan: &Plan, layout: &Layout) -> Group {
    let front = f.from_mm <= plan.length_mm / 2.0;
    let (end, into) = if front { (layout.axis.left, 1.0) } else { (layout.axis.x(plan.length_mm), -1.0) };
    let (y, h) = (layout.centre_y, layout.half(f.size_mm).max(3.0));
    let tip = end + into * (f.size_mm * CONE * layout.axis.scale).max(3.0);
    let d = format!("M{e} {}L{} {}L{e} {}", xy(y - h), xy(tip), xy(y), xy(y + h), e = xy(end));
    let cone = shapes::path(d).set("fill", "none").set("stroke", INK).set("stroke-width", "1");
    shapes::group("centre-hole").add(cone.set("stroke-dasharray", HIDDEN))
}
