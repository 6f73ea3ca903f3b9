//! The staged shaft as a DXF drawing in mm, written as plain text after the reference of the format for release 12, which about
//! every program reads. The front face is at x = 0, the axis at y = 0. The same plan gives the same bytes.
//!
//! Only the contour is drawn with continuous lines on a layer of edges, so that a reader of contours finds nothing else.

use super::stops::{Stop, stops};
use super::table::wrap;
use super::{ReportError, numbers, words};
use crate::job::plan::{Plan, estimate};
use crate::lang::{self, Units};
use crate::say;
use std::fmt::Write;

/// Layers: name, colour number of the format, line type.
const LAYERS: [(&str, u8, &str); 7] = [
    ("CONTOUR", 7, "CONTINUOUS"),
    ("CENTRE_LINE", 1, "CENTER"),
    ("STOPS", 5, "DASHED"),
    ("GRIPS", 3, "PHANTOM"),
    ("FEATURES", 6, "HIDDEN"),
    ("TEXT", 7, "CONTINUOUS"),
    ("NOTES", 7, "CONTINUOUS"),
];

/// Line types: name, drawn and empty lengths in turn, mm. Empty ones are negative.
const LINE_TYPES: [(&str, &[f64]); 5] = [
    ("CONTINUOUS", &[]),
    ("CENTER", &[12.0, -2.0, 2.0, -2.0]),
    ("DASHED", &[6.0, -3.0]),
    ("HIDDEN", &[3.0, -1.5]),
    ("PHANTOM", &[12.0, -2.0, 2.0, -2.0, 2.0, -2.0]),
];

/// Columns of a line of the notes.
const NOTE_WIDTH: usize = 110;
/// Width of a letter as a share of its height, for what must not overlap.
const LETTER: f64 = 0.9;

/// A drawing on its way.
struct Drawing {
    text: String,
    /// Height of letters, mm.
    letter_mm: f64,
}

impl Drawing {
    fn group(&mut self, code: u16, value: impl std::fmt::Display) {
        // Writing into a text cannot fail.
        let _ = write!(self.text, "{code}\r\n{value}\r\n");
    }

    fn point(&mut self, x: f64, y: f64) {
        for (code, value) in [(10, x), (20, y), (30, 0.0)] {
            // A zero without a sign, so that the bytes do not depend on the way it came about.
            self.group(code, format!("{:.6}", value + 0.0));
        }
    }

    fn line(&mut self, layer: &str, (x1, y1): (f64, f64), (x2, y2): (f64, f64)) {
        self.group(0, "LINE");
        self.group(8, layer);
        self.point(x1, y1);
        for (code, value) in [(11, x2), (21, y2), (31, 0.0)] {
            self.group(code, format!("{:.6}", value + 0.0));
        }
    }

    fn closed(&mut self, layer: &str, points: &[(f64, f64)]) {
        self.group(0, "POLYLINE");
        self.group(8, layer);
        self.group(66, 1);
        self.point(0.0, 0.0);
        self.group(70, 1);
        for (x, y) in points {
            self.group(0, "VERTEX");
            self.group(8, layer);
            self.point(*x, *y);
        }
        self.group(0, "SEQEND");
        self.group(8, layer);
    }

    fn boxed(&mut self, layer: &str, (x1, y1): (f64, f64), (x2, y2): (f64, f64)) {
        self.closed(layer, &[(x1, y1), (x2, y1), (x2, y2), (x1, y2)]);
    }

    fn written(&mut self, layer: &str, (x, y): (f64, f64), turned_degrees: u16, text: &str) {
        self.group(0, "TEXT");
        self.group(8, layer);
        self.point(x, y);
        self.group(40, format!("{:.6}", self.letter_mm));
        self.group(1, plain(text));
        self.group(50, turned_degrees);
    }

    fn table(&mut self, name: &str, entries: usize, write: impl FnOnce(&mut Self)) {
        self.group(0, "TABLE");
        self.group(2, name);
        self.group(70, entries);
        write(self);
        self.group(0, "ENDTAB");
    }

    fn section(&mut self, name: &str, write: impl FnOnce(&mut Self)) {
        self.group(0, "SECTION");
        self.group(2, name);
        write(self);
        self.group(0, "ENDSEC");
    }
}

/// A text of a drawing: letters beyond ASCII as `\U+` with their number, in two parts where it has more than four digits. `%%` and
/// `\` begin codes of the format, so user text does not keep them.
fn plain(text: &str) -> String {
    let mut out = String::new();
    for c in words::plain(text).replace("%%", "% %").replace('\\', "/").chars() {
        if c.is_ascii() {
            out.push(c);
        } else {
            for unit in c.encode_utf16(&mut [0; 2]) {
                let _ = write!(out, "\\U+{unit:04X}");
            }
        }
    }
    out
}

/// The drawing, in mm whatever the units of the plan.
///
/// # Errors
/// A number that is drawn is not finite.
pub fn plan_dxf(plan: &Plan) -> Result<String, ReportError> {
    lang::speaking(lang::spoken().in_units(Units::Metric), || drawn(plan))
}

fn drawn(plan: &Plan) -> Result<String, ReportError> {
    let sections = &plan.shaft.sections;
    let grips = plan.stages.iter().filter_map(|s| s.grip.as_ref());
    let numbers = [plan.length_mm, plan.shaft.stock_diameter_mm].into_iter();
    let numbers =
        numbers.chain(sections.iter().flat_map(|s| [s.from_mm, s.to_mm, s.front_diameter_mm, s.rear_diameter_mm]));
    let numbers = numbers.chain(plan.shaft.features.iter().flat_map(|f| [f.from_mm, f.to_mm, f.size_mm]));
    let numbers = numbers.chain(grips.flat_map(|g| [g.from_mm, g.to_mm, g.diameter_mm]));
    let mut numbers = numbers.chain(plan.stages.iter().flat_map(|s| [s.from_mm, s.to_mm]));
    if !numbers.all(f64::is_finite) || stops(plan).iter().any(|s| !s.turned_mm.is_finite()) {
        return Err(ReportError::NotDrawable { what: say!("undrawn-dxf") });
    }
    let mut drawing = Drawing { text: String::new(), letter_mm: (plan.length_mm / 120.0).clamp(0.8, 6.0) };
    drawing.section("HEADER", |d| {
        d.group(9, "$ACADVER");
        d.group(1, "AC1009");
        // 4: millimetres.
        d.group(9, "$INSUNITS");
        d.group(70, 4);
    });
    drawing.section("TABLES", |d| {
        d.table("LTYPE", LINE_TYPES.len(), |d| LINE_TYPES.iter().for_each(|(name, dashes)| line_type(d, name, dashes)));
        d.table("LAYER", LAYERS.len(), |d| {
            for (name, colour, line_type) in LAYERS {
                d.group(0, "LAYER");
                d.group(2, name);
                d.group(70, 0);
                d.group(62, colour);
                d.group(6, line_type);
            }
        });
    });
    drawing.section("ENTITIES", |d| {
        contour(d, plan);
        grips_of(d, plan);
        features(d, plan);
        stops_of(d, plan);
        notes(d, plan);
    });
    drawing.group(0, "EOF");
    Ok(drawing.text)
}

fn line_type(d: &mut Drawing, name: &str, dashes: &[f64]) {
    d.group(0, "LTYPE");
    d.group(2, name);
    d.group(70, 0);
    d.group(3, name);
    d.group(72, 65);
    d.group(73, dashes.len());
    d.group(40, format!("{:.6}", dashes.iter().map(|dash| dash.abs()).sum::<f64>()));
    dashes.iter().for_each(|dash| d.group(49, format!("{dash:.6}")));
}

/// The largest radius of what is drawn, mm.
fn radius_mm(plan: &Plan) -> f64 {
    plan.shaft.stock_diameter_mm / 2.0
}

fn contour(d: &mut Drawing, plan: &Plan) {
    let ends = |s: &crate::job::plan::SectionOutline| {
        [(s.from_mm, s.front_diameter_mm / 2.0), (s.to_mm, s.rear_diameter_mm / 2.0)]
    };
    let mut upper: Vec<(f64, f64)> = plan.shaft.sections.iter().flat_map(ends).collect();
    upper.dedup();
    let lower = upper.iter().rev().map(|(x, y)| (*x, -y));
    let both: Vec<(f64, f64)> = upper.iter().copied().chain(lower).collect();
    d.closed("CONTOUR", &both);
    let over_mm = 2.0 * d.letter_mm;
    d.line("CENTRE_LINE", (-over_mm, 0.0), (plan.length_mm + over_mm, 0.0));
}

/// Jaws on the shaft, and each stage as a span above it with its number.
fn grips_of(d: &mut Drawing, plan: &Plan) {
    let h = d.letter_mm;
    for (index, stage) in plan.stages.iter().enumerate() {
        if let Some(grip) = &stage.grip {
            let r = grip.diameter_mm / 2.0;
            for (near, far) in [(r, r + h), (-r, -r - h)] {
                d.boxed("GRIPS", (grip.from_mm, near), (grip.to_mm, far));
            }
            let told = say!("dxf-grip", stage = stage.number);
            d.written("TEXT", (grip.from_mm, r + 1.4 * h), 0, &told);
        }
        let y = radius_mm(plan) + (5.0 + 1.6 * (index % 2) as f64) * h;
        d.line("STOPS", (stage.from_mm, y), (stage.to_mm, y));
        for x in [stage.from_mm, stage.to_mm] {
            d.line("STOPS", (x, y - 0.5 * h), (x, y + 0.5 * h));
        }
        let told = say!("dxf-stage", stage = stage.number);
        d.written("TEXT", ((stage.from_mm + stage.to_mm) / 2.0, y + 0.5 * h), 0, &told);
    }
    if plan.centre.is_some() {
        d.closed("GRIPS", &[(0.5 * h, 0.0), (-h, h), (-h, -h)]);
    }
}

/// Holes and seats as boxes, each with its text above the spans of the stages.
fn features(d: &mut Drawing, plan: &Plan) {
    let h = d.letter_mm;
    let mut right_mm = f64::NEG_INFINITY;
    let mut along: Vec<_> = plan.shaft.features.iter().collect();
    along.sort_by(|a, b| (a.from_mm + a.to_mm).total_cmp(&(b.from_mm + b.to_mm)));
    for feature in along {
        let half = feature.size_mm / 2.0;
        if feature.to_mm > feature.from_mm {
            d.boxed("FEATURES", (feature.from_mm, -half), (feature.to_mm, half));
        }
        // Texts stand upright, side by side.
        let x = ((feature.from_mm + feature.to_mm) / 2.0 + h / 2.0).max(right_mm + 1.4 * h);
        let (kind, label) = (words::key(&feature.kind), words::plain(&feature.label));
        let told = say!("feature-with-kind", kind = kind, text = label);
        d.written("TEXT", (x, radius_mm(plan) + 9.0 * h), 90, &told);
        right_mm = x;
    }
}

/// Upright lines with letter and turned length below the shaft.
fn stops_of(d: &mut Drawing, plan: &Plan) {
    let h = d.letter_mm;
    let mut right_mm = f64::NEG_INFINITY;
    for stop in stops(plan) {
        let (x, r) = (stop.turned_mm, radius_mm(plan));
        d.line("STOPS", (x, r + 2.0 * h), (x, -r - 2.0 * h));
        let at = (x + h / 2.0).max(right_mm + 1.4 * h);
        d.line("STOPS", (x, -r - 2.0 * h), (at - h / 2.0, -r - 3.0 * h));
        let told = stop_text(&stop);
        let length_mm = told.chars().count() as f64 * LETTER * h;
        d.written("TEXT", (at, -r - 3.5 * h - length_mm), 90, &told);
        right_mm = at;
    }
}

fn stop_text(stop: &Stop) -> String {
    format!("{} {}", stop.mark(), numbers::mm(stop.turned_mm))
}

/// What the drawing shows, and who is responsible, below the longest text of a stop.
fn notes(d: &mut Drawing, plan: &Plan) {
    let h = d.letter_mm;
    let longest = stops(plan).iter().map(|s| stop_text(s).chars().count()).max().unwrap_or(0);
    let mut y = -radius_mm(plan) - 6.0 * h - longest as f64 * LETTER * h;
    let named = [Some(&plan.job), plan.drawing.as_ref(), plan.revision.as_ref()].into_iter().flatten();
    let mut lines = vec![named.map(|name| words::plain(name)).collect::<Vec<_>>().join("  ")];
    lines.push(say!("dxf-about"));
    if !plan.verdict.has_plan() {
        lines.push(say!("caution-not-a-plan"));
    }
    lines.push(estimate().to_owned());
    for line in lines.iter().flat_map(|text| wrap("", text, NOTE_WIDTH).lines().map(str::to_owned).collect::<Vec<_>>())
    {
        d.written("NOTES", (0.0, y), 0, &line);
        y -= 1.6 * h;
    }
}

#[cfg(test)]
mod tests {
    use super::plain;

    #[test]
    fn letters_beyond_ascii_are_numbers_and_codes_of_the_format_are_no_codes() {
        assert_eq!(plain("Ø18 軸"), "\\U+00D818 \\U+8EF8");
        assert_eq!(plain("𝛼"), "\\U+D835\\U+DEFC");
        assert_eq!(plain("50 %%d \\P\nx"), "50 % %d /P x");
    }
}
