//! Gives each text and dimension of a drawing to the one section that it can mean. If it could mean several sections,
//! or none, this is reported.

use super::axis::Axis;
use super::collect::{Collected, Dimension};
use super::geometry::Point;
use super::scale::{SAME_MM, SCALE_SHARE};
use super::sections::{Kind, Section};
use super::title;
use super::words::{INCH_MM, Said, plain, read, read_in};
use crate::job::iso2768;
use crate::lang;
use crate::say;

/// How far outside a surface a text may be that gives only a roughness, mm on the sheet. This is two lines of text.
/// Common practice, no source.
const REACH_MM: f64 = 10.0;
/// Longest quotation of a text, characters.
const QUOTED: usize = 60;

/// Where the sections lie on the drawing.
pub struct Places<'a> {
    /// The axis.
    pub axis: &'a Axis,
    /// Place of the front face along the axis.
    pub front: f64,
    /// 1, or -1 if the front face is the right or upper end.
    pub sign: f64,
    /// Length on the shaft of one mm on the sheet, mm.
    pub sheet: f64,
}

impl Places<'_> {
    fn s(&self, p: Point) -> f64 {
        self.sign * (self.axis.of(p).0 - self.front)
    }
}

/// What the texts add to the sections, and what the title block says.
#[derive(Debug, Default)]
pub struct Read {
    /// Material, drawing number, revision.
    pub title: title::Title,
    /// What was used.
    pub taken: Vec<String>,
    /// What was not understood.
    pub left: Vec<String>,
}

/// Reads all texts and dimensions.
pub fn read_all(collected: &Collected, places: &Places, sections: &mut [Section]) -> Read {
    let mut out = Read::default();
    for dimension in &collected.dimensions {
        of_dimension(dimension, places, sections, &mut out);
    }
    out.title = title::read(&collected.texts, places.sheet);
    for (i, text) in collected.texts.iter().enumerate() {
        if out.title.read.contains(&i) {
            continue;
        }
        let words = plain(&text.text);
        if words.is_empty() || words.eq_ignore_ascii_case("ISO 2768-m") || words.eq_ignore_ascii_case("ISO 2768-mK") {
            continue;
        }
        // The sign of a surface is drawn, or is written as a root sign.
        let said = read(words.trim_start_matches(['√', ' ']));
        let place = |why: &str| {
            let (entity, text_of, layer, at) = (&text.entity, quoted(&words), &text.layer, text.at.text());
            say!("draft-not-understood", entity = entity, text = text_of, layer = layer, at = at, why = why)
        };
        if said.unknown.is_none()
            && let Some(ra_um) = said.ra_um.filter(|_| said == Said::roughness(said.ra_um))
        {
            roughness(ra_um, text.at, places, sections, (&mut out.taken, &mut out.left), place);
            continue;
        }
        // A number alone, or words alone, are not a label of a surface.
        if said.unknown.is_some() || (said.thread.is_none() && !said.diameter) {
            out.left.push(place(lang::text("label-no-size")));
            continue;
        }
        give(&said, said.number, &[places.s(text.at)], sections, &mut out, place);
    }
    out
}

/// Gives a roughness to the section whose surface it is next to.
fn roughness(
    ra_um: f64,
    at: Point,
    places: &Places,
    sections: &mut [Section],
    (taken, left): (&mut Vec<String>, &mut Vec<String>),
    place: impl Fn(&str) -> String,
) {
    let (s, height) = (places.s(at), places.axis.of(at).1.abs());
    let mut from = 0.0;
    let there = sections.iter_mut().enumerate().find_map(|(i, section)| {
        let (a, b) = (from, from + section.length_mm);
        from = b;
        let radius = section.largest_mm() / 2.0;
        let at_surface = radius - SAME_MM <= height && height <= radius + REACH_MM * places.sheet;
        (a + SAME_MM < s && s < b - SAME_MM && at_surface).then_some((i, section))
    });
    match there {
        None => left.push(place(lang::text("label-at-no-surface"))),
        Some((_, section)) if matches!(section.kind, Kind::Knurl(_) | Kind::Flats(..)) => {
            left.push(place(lang::text("label-no-roughness")));
        }
        Some((_, section)) if section.ra_um.is_some_and(|r| r != ra_um) => {
            left.push(place(lang::text("label-second")));
        }
        Some((i, section)) => {
            if section.ra_um.replace(ra_um).is_none() {
                let length = section.length_mm;
                let ra = format!("Ra {ra_um}");
                taken.push(say!("label-given", section = i + 1, length = length.to_string(), values = ra));
            }
        }
    }
}

fn quoted(words: &str) -> String {
    let mut text: String = words.chars().take(QUOTED).collect();
    if words.chars().count() > QUOTED {
        text.push('…');
    }
    text
}

/// Whether the number of a dimension is the drawn size.
fn same(number: f64, drawn_mm: f64) -> bool {
    (number - drawn_mm).abs() <= SCALE_SHARE * number.abs().max(drawn_mm) + SAME_MM
}

fn of_dimension(d: &Dimension, places: &Places, sections: &mut [Section], out: &mut Read) {
    let words = plain(&d.text);
    let mut said = read(&words);
    let [a, b] = d.points;
    let measured = d.measured();
    let tells = |said: &Said| said.number.is_some_and(|n| same(n, measured) || same(n, 2.0 * measured));
    // In a drawing in inches, numbers are in inches.
    if !tells(&said) && tells(&read_in(&words, INCH_MM)) {
        said = read_in(&words, INCH_MM);
    }
    let place = |why: &str| {
        let text = if words.is_empty() { "<>".to_owned() } else { quoted(&words) };
        let (layer, at) = (&d.layer, a.text());
        say!("draft-not-understood", entity = "DIMENSION", text = text, layer = layer, at = at, why = why)
    };
    if let Some(unknown) = &said.unknown {
        out.left.push(place(&say!("label-unknown-word", word = quoted(unknown))));
        return;
    }
    let (along_a, along_b) = (places.axis.of(a), places.axis.of(b));
    // It measures across the axis and on both sides of it, or the text says that it is a diameter.
    let across = (along_a.1 + along_b.1).abs() <= SAME_MM
        && (along_a.1 - along_b.1 - measured).abs().min((along_b.1 - along_a.1 - measured).abs()) <= SAME_MM;
    let is_diameter = said.diameter || said.thread.is_some() || d.diametric || (across && measured > SAME_MM);
    if let Some(number) = said.number
        && !same(number, measured)
        // Half a contour is often dimensioned with the whole diameter.
        && !(is_diameter && same(number, 2.0 * measured))
    {
        let drawn = (measured * 1e3).round() / 1e3;
        out.left.push(place(&say!("label-other-size", text = number.to_string(), drawn = drawn.to_string())));
        return;
    }
    if !is_diameter {
        if said.tolerance.is_some() {
            out.left.push(place(lang::text("label-length-tolerance")));
        }
        return;
    }
    let at = [places.s(a), places.s(b)];
    give(&said, Some(said.number.unwrap_or(measured)), &at, sections, out, place);
}

/// Gives what a text says to the one section with its diameter. If there are several, to the one at the text's place.
fn give(
    said: &Said,
    number: Option<f64>,
    at: &[f64],
    sections: &mut [Section],
    out: &mut Read,
    place: impl Fn(&str) -> String,
) {
    let Some(diameter) = said.thread.as_ref().map(|t| t.major_mm).or(number) else {
        out.left.push(place(lang::text("label-no-diameter")));
        return;
    };
    if said.thread.is_none() && said.tolerance.is_none() && said.ra_um.is_none() {
        return;
    }
    let fits = |section: &Section| {
        let plain = match section.kind {
            Kind::Cylinder(d) | Kind::Groove(d) => Some(d),
            // A second text at a thread can give its roughness, but not another thread.
            Kind::Thread(_, d) if said.thread.is_none() => Some(d),
            _ => None,
        };
        plain.is_some_and(|d| (d - diameter).abs() <= SAME_MM)
    };
    // Number of the section, the section, and where it begins and ends.
    let mut meant: Vec<(usize, &mut Section, f64, f64)> = Vec::new();
    let mut s = 0.0;
    for (number, section) in (1..).zip(sections) {
        let from = s;
        s += section.length_mm;
        if fits(section) {
            meant.push((number, section, from, s));
        }
    }
    if meant.is_empty() {
        let size = (diameter * 1e3).round() / 1e3;
        out.left.push(place(&say!("label-no-section", diameter = size.to_string())));
        return;
    }
    if meant.len() > 1 {
        meant.retain(|(_, _, from, to)| at.iter().any(|s| from - SAME_MM <= *s && *s <= to + SAME_MM));
    }
    let [(number, section, ..)] = &mut meant[..] else {
        out.left.push(place(lang::text("label-several-sections")));
        return;
    };
    let mut given = Vec::new();
    let mut clash = false;
    if let Some(thread) = &said.thread {
        section.kind = Kind::Thread(thread.designation.clone(), thread.major_mm);
        given.push(thread.designation.clone());
    }
    if let Some(tolerance) = &said.tolerance {
        clash |= section.tolerance.as_ref().is_some_and(|t| t != tolerance);
        if !clash {
            section.tolerance = Some(tolerance.clone());
            given.push(tolerance.clone());
        }
    }
    if let Some(ra) = said.ra_um {
        clash |= section.ra_um.is_some_and(|r| r != ra);
        if section.ra_um.is_none() {
            section.ra_um = Some(ra);
            given.push(format!("Ra {ra}"));
        }
    }
    if clash {
        out.left.push(place(lang::text("label-second")));
    }
    if !given.is_empty() {
        let (number, length, values) = (*number, section.length_mm.to_string(), given.join(", "));
        out.taken.push(say!("label-given", section = number, length = length, values = values));
    }
}

/// Whether a section must have its own tolerance, because the table of general tolerances does not have its diameter.
pub fn needs_tolerance(section: &Section) -> bool {
    section.tolerance.is_none() && iso2768::limits(section.largest_mm()).is_err()
}
