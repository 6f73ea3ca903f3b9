//! Writes the draft as a job file with comments. What the drawing or table does not say gets a placeholder, marked as
//! such.

use super::Options;
use super::sections::{Kind, Section};
use super::title::Title;
use crate::input::TEMPLATE;
use crate::job::{iso286, iso2768};
use crate::lang;
use crate::say;
use crate::shown;

/// Common diameters of drawn bar, mm. Common practice, no source.
const BARS_MM: [f64; 32] = [
    2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0, 13.0, 14.0, 15.0, 16.0, 17.0, 18.0, 20.0, 22.0, 24.0,
    25.0, 26.0, 28.0, 30.0, 32.0, 36.0, 38.0, 40.0, 42.0, 45.0, 50.0, 60.0,
];
/// Tolerance class of drawn bar.
pub const BAR_CLASS: &str = "h11";
/// Smallest allowance on the diameter for turning a section from the bar, mm: a finishing cut. Common practice, no
/// source.
const ROOM_MM: f64 = 0.5;
/// Width of a line of comment.
const COLUMNS: usize = 110;

/// What goes into the file.
pub struct Content<'a> {
    /// File that it is drafted from.
    pub from: &'a str,
    /// Name of the shaft.
    pub name: &'a str,
    /// Sections from the front.
    pub sections: &'a [Section],
    /// What the title block says.
    pub title: &'a Title,
    /// What was decided, used and not understood.
    pub notes: &'a [String],
    /// The options of the call.
    pub options: &'a Options,
}

/// A text written so that YAML reads it as one value, whatever is in it.
fn quoted(text: &str) -> String {
    let plain = text.chars().all(|c| c.is_ascii_alphanumeric() || " -_./".contains(c))
        && text.starts_with(|c: char| c.is_ascii_alphabetic())
        && !text.ends_with(' ')
        && !text.contains(" -")
        && !["true", "false", "null", "yes", "no", "on", "off", "y", "n"].contains(&text.to_lowercase().as_str());
    if plain { text.to_owned() } else { serde_json::to_string(text).unwrap_or_else(|_| "\"\"".into()) }
}

/// Writes a comment, wrapped. A line end in the text would end the comment, so it is written out.
fn remark(out: &mut String, text: &str) {
    let text = shown::line(text);
    let mut line = String::from("#");
    for word in text.split_whitespace() {
        if line.chars().count() + word.chars().count() >= COLUMNS {
            out.push_str(&line);
            out.push_str("\n#  ");
            line.clear();
        }
        line.push(' ');
        line.push_str(word);
    }
    out.push_str(&line);
    out.push('\n');
}

/// The job file.
pub fn job(content: &Content) -> String {
    let mut out = String::new();
    remark(&mut out, &say!("draft-head", file = content.from));
    remark(&mut out, lang::text("draft-head-lengths"));
    if !content.notes.is_empty() {
        out.push_str("#\n");
        remark(&mut out, lang::text("draft-head-notes"));
        for note in content.notes {
            remark(&mut out, &format!("- {note}"));
        }
    }
    out.push_str(&format!("\nshaft:\n  name: {}\n", quoted(&shown::line(content.name))));
    for (key, value) in [("drawing", &content.title.drawing), ("revision", &content.title.revision)] {
        if let Some(value) = value {
            out.push_str(&format!("  {key}: {}\n", quoted(&shown::line(value))));
        }
    }
    match content.options.material.as_deref().or(content.title.material.as_deref()) {
        Some(material) => out.push_str(&format!("  material: {}\n", quoted(&shown::line(material)))),
        None => {
            out.push_str(&format!("  material: C45                 # {}\n", lang::text("draft-placeholder-material")))
        }
    }
    out.push_str("  sections:\n");
    for section in content.sections {
        out.push_str(&line(section));
    }
    out.push_str(&format!("  # straightness: 0.3           # {}\n\n", lang::text("draft-straightness")));
    let length: f64 = content.sections.iter().map(|s| s.length_mm).sum();
    match content.options.stock_mm {
        Some(mm) => out.push_str(&format!("stock: {{diameter: {mm}, bar_length: 3000}}\n")),
        None => {
            let least = content.sections.iter().map(bar_mm).fold(0.0, f64::max);
            let (mm, bar) = (next_bar_mm(least), bar_length_mm(length));
            out.push_str(&format!(
                "stock: {{diameter: {mm}, tolerance: {BAR_CLASS}, bar_length: {bar}}}   # {}\n",
                lang::text("draft-placeholder-bar")
            ));
        }
    }
    match &content.options.machine {
        Some(path) => {
            let quoted = serde_json::to_string(path).unwrap_or_default();
            out.push_str(&format!("\nmachine: {}\n", shown::lines(&quoted)));
        }
        None => {
            out.push('\n');
            remark(&mut out, lang::text("draft-placeholder-machine"));
            out.push_str(template_machine());
            out.push('\n');
        }
    }
    out.push_str(&format!(
        "\n# {}\ncutting:\n  tools: single                 # single | opposed | tandem\n  \
         # vc: ...                     # {}\n  # feed: ...                   # {}\n  \
         ap_max: 1.5\n  ap_finish: 0.25\n  speed_floor: 0.6\n",
        lang::text("draft-placeholder-cutting"),
        lang::text("draft-default-speed"),
        lang::text("draft-default-feed")
    ));
    out
}

/// The next common bar, mm.
fn next_bar_mm(least: f64) -> f64 {
    BARS_MM.into_iter().find(|d| *d >= least).unwrap_or_else(|| (least / 5.0).ceil() * 5.0)
}

/// The common bar that a diameter is turned from, mm.
pub fn usual_bar_mm(diameter_mm: f64) -> f64 {
    next_bar_mm(diameter_mm + ROOM_MM)
}

/// The length of the bar for a shaft, mm: the usual one, unless the shaft is too long for it.
pub fn bar_length_mm(length_mm: f64) -> f64 {
    if length_mm + 100.0 <= 3000.0 { 3000.0 } else { ((length_mm + 100.0) / 1000.0).ceil() * 1000.0 }
}

/// The smallest bar for a section, mm. It leaves room for turning, unless the section may stay as the bar is drawn.
fn bar_mm(section: &Section) -> f64 {
    let largest = section.largest_mm();
    let turned = match section.kind {
        Kind::Cylinder(_) => {
            let kept = |class: &str| iso286::shaft_limits(class, largest).map(|t| (t.lower_mm, t.upper_mm)).ok();
            let asked = match section.tolerance.as_deref() {
                None => iso2768::limits(largest).map(|t| (t.lower_mm, t.upper_mm)).ok(),
                Some(text) => match text.trim_matches(['[', ']']).split_once(',') {
                    Some((low, high)) => low.trim().parse().ok().zip(high.trim().parse().ok()),
                    None => kept(text),
                },
            };
            let keeps = asked.zip(kept(BAR_CLASS)).is_some_and(|(asked, bar)| asked.0 <= bar.0 && bar.1 <= asked.1);
            !keeps || section.ra_um.is_some()
        }
        Kind::Taper(..) => true,
        _ => false,
    };
    if turned { largest + ROOM_MM } else { largest }
}

/// The machine in the example job.
fn template_machine() -> &'static str {
    let from = TEMPLATE.find("\nmachine:").map_or(0, |i| i + 1);
    let to = TEMPLATE.find("\ncutting:").unwrap_or(TEMPLATE.len());
    TEMPLATE.get(from..to).unwrap_or_default().trim_end_matches('\n')
}

fn line(section: &Section) -> String {
    let mut text = format!("    - {{length: {}", section.length_mm);
    text += &match &section.kind {
        Kind::Cylinder(d) => format!(", diameter: {d}"),
        Kind::Groove(d) => format!(", diameter: {d}, kind: groove"),
        Kind::Knurl(d) => format!(", diameter: {d}, kind: knurl"),
        Kind::Taper(a, b) => format!(", taper: [{a}, {b}]"),
        Kind::Thread(designation, _) => format!(", thread: {designation}"),
        Kind::Flats(across, sides, on) => {
            let on = on.map_or(String::new(), |d| format!(", diameter: {d}"));
            format!(", across_flats: {across}, sides: {sides}{on}")
        }
    };
    if let Some(tolerance) = &section.tolerance {
        text += &format!(", tolerance: {tolerance}");
    }
    if let Some(ra) = section.ra_um {
        text += &format!(", ra: {ra}");
    }
    if let Some(name) = &section.name {
        text += &format!(", name: {}", quoted(&shown::line(name)));
    }
    text.push('}');
    if !section.remarks.is_empty() {
        text += &format!("   # {}", shown::line(&section.remarks.join(", ")));
    }
    text.push('\n');
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_are_one_value_whatever_stands_in_them() {
        for text in ["plain name", "a: b", "# x", "1", "yes", "- a", "a -b", "\"q\"", "ä{}", "a\nb"] {
            let read: serde_json::Value =
                serde_saphyr::from_str(&format!("k: {}\n", quoted(text))).unwrap_or_else(|e| panic!("{text}: {e}"));
            assert_eq!(read["k"], text);
        }
    }

    #[test]
    fn a_machine_stands_in_the_template() {
        assert!(template_machine().starts_with("machine:") && template_machine().contains("part_off"));
        assert!(!template_machine().contains("\ncutting:"));
    }
}
