//! The pens of the diagram: colours, line kinds, and elements whose coordinates are rounded in one place.
//!
//! Meaning is never carried by colour alone: every kind of mark has its own line, pattern or letter. The colours differ
//! in lightness, so they stay apart in grey print and for colour-blind readers.

use svg::node::element::{Circle, Definitions, Ellipse, Group, Line, Path, Pattern, Rectangle, SVG, Text};

use super::{numbers, table};

pub const FONT: &str = "DejaVu Sans, Arial, sans-serif";

/// Outlines and text.
pub const INK: &str = "#1c2430";
/// Captions and second-rank lines.
pub const SOFT: &str = "#5a6572";
/// Finished steel.
pub const STEEL: &str = "#dbe3ea";
/// Raw bar.
pub const RAW: &str = "#f3efe6";
/// Grips of the counter-spindle.
pub const GRIP: &str = "#b3541e";
/// Guide bush.
pub const BUSH: &str = "#1f6f78";
/// Headstock.
pub const HEAD: &str = "#3d4652";
/// Limit and what is over it.
pub const LIMIT: &str = "#8c1c3a";
/// Utilisation.
pub const TRACE: &str = "#23527c";
/// Every other field of a band.
pub const PALE: &str = "#e8edf2";
/// Rules.
pub const RULE: &str = "#c9d0d7";
pub const WHITE: &str = "#ffffff";

/// The colours of the bar and of what holds it, by name, for a page that draws them too.
pub const COLOURS: [(&str, &str); 5] = [("steel", STEEL), ("raw", RAW), ("grip", GRIP), ("bush", BUSH), ("head", HEAD)];

/// Size of ordinary text: 7 points on an A4 page.
pub const SMALL: f64 = 10.0;

/// A narrow chain line, as ISO 128-2 has it for axes (type 04.1; from memory, not re-read).
pub const CHAIN: &str = "14 3 3 3";

/// Ids of the patterns.
pub const HATCH: &str = "spanhold-hatch";
pub const KNURL: &str = "spanhold-knurl";
pub const GRIP_HATCH: &str = "spanhold-grip";

/// A coordinate: at most two decimals.
pub fn xy(value: f64) -> String {
    numbers::trimmed_pointed(value, 2)
}

/// A fill by one of the patterns.
pub fn pattern(id: &str) -> String {
    format!("url(#{id})")
}

/// A drawing as a complete SVG document.
pub fn document(root: &SVG) -> String {
    format!("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{root}\n")
}

pub fn rect(x: f64, y: f64, width: f64, height: f64) -> Rectangle {
    Rectangle::new().set("x", xy(x)).set("y", xy(y)).set("width", xy(width.max(0.0))).set("height", xy(height.max(0.0)))
}

pub fn line(x1: f64, y1: f64, x2: f64, y2: f64, colour: &str, width: f64) -> Line {
    Line::new()
        .set("x1", xy(x1))
        .set("y1", xy(y1))
        .set("x2", xy(x2))
        .set("y2", xy(y2))
        .set("stroke", colour)
        .set("stroke-width", xy(width))
}

pub fn path(d: String) -> Path {
    Path::new().set("d", d)
}

pub fn circle(x: f64, y: f64, r: f64) -> Circle {
    Circle::new().set("cx", xy(x)).set("cy", xy(y)).set("r", xy(r))
}

pub fn ellipse(x: f64, y: f64, rx: f64, ry: f64) -> Ellipse {
    Ellipse::new().set("cx", xy(x)).set("cy", xy(y)).set("rx", xy(rx)).set("ry", xy(ry))
}

/// Text on its base line; `anchor` is `start`, `middle` or `end`.
pub fn text(x: f64, y: f64, size: f64, anchor: &str, content: &str) -> Text {
    Text::new(content)
        .set("x", xy(x))
        .set("y", xy(y))
        .set("font-size", xy(size))
        .set("text-anchor", anchor)
        .set("fill", INK)
}

/// The same text with a white rim, so that it can be read over other lines.
pub fn text_on_ground(x: f64, y: f64, size: f64, anchor: &str, content: &str) -> Text {
    text(x, y, size, anchor, content)
        .set("stroke", WHITE)
        .set("stroke-width", "3")
        .set("stroke-linejoin", "round")
        .set("paint-order", "stroke")
}

pub fn group(class: &str) -> Group {
    Group::new().set("class", class)
}

/// Average width of a character as a share of the text size. It is a little too large, because no font is measured.
const EM: f64 = 0.62;

/// Estimated width of a text.
pub fn text_width(content: &str, size: f64) -> f64 {
    table::columns(content) as f64 * size * EM
}

/// The text, cut with an ellipsis to a width.
pub fn fit_text(content: &str, size: f64, width: f64) -> String {
    table::fit(content, (width / (size * EM)).floor().max(1.0) as usize)
}

/// The text in lines of at most a width.
pub fn wrapped(content: &str, size: f64, width: f64) -> Vec<String> {
    let columns = (width / (size * EM)).floor().max(1.0) as usize;
    table::wrap("", content, columns).lines().map(|line| line.trim().to_owned()).collect()
}

/// The patterns.
pub fn definitions() -> Definitions {
    let pattern = |id: &str, size: f64| {
        Pattern::new()
            .set("id", id)
            .set("width", xy(size))
            .set("height", xy(size))
            .set("patternUnits", "userSpaceOnUse")
    };
    let stroke = |d: &str, colour: &str, width: &str| {
        Path::new().set("d", d).set("stroke", colour).set("stroke-width", width).set("fill", "none")
    };
    Definitions::new()
        .add(pattern(HATCH, 8.0).add(stroke("M-2 2L2-2M0 8L8 0M6 10L10 6", LIMIT, "0.9")))
        .add(pattern(KNURL, 6.0).add(stroke("M0 6L6 0M0 0L6 6", SOFT, "0.5")))
        .add(pattern(GRIP_HATCH, 5.0).add(rect(0.0, 0.0, 5.0, 5.0).set("fill", GRIP)).add(stroke(
            "M-1 1L1-1M0 5L5 0M4 6L6 4",
            WHITE,
            "0.8",
        )))
}
