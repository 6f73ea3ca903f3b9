//! Texts and dimensions of a drawing, each given to the one section it can only mean; what could mean several, or none, is
//! told.

use super::axis::Axis;
use super::collect::{Collected, Dimension};
use super::geometry::Point;
use super::sections::{Kind, Section};
use super::words::{Said, plain, read};
use crate::job::{iso2768, materials};

/// Sizes that are the same to the eye of a drawing, mm.
const SAME_MM: f64 = 0.02;
/// A dimension whose own number differs from what is drawn by more than this share tells that the drawing is not to scale.
const SCALE_SHARE: f64 = 0.005;
/// Longest text that is quoted, characters.
const QUOTED: usize = 60;

/// Where the sections lie on the drawing.
pub struct Places<'a> {
    /// The axis.
    pub axis: &'a Axis,
    /// Place of the front face along it.
    pub front: f64,
    /// 1, or -1 where the front face is the right or upper end.
    pub sign: f64,
}

impl Places<'_> {
    fn s(&self, p: Point) -> f64 {
        self.sign * (self.axis.of(p).0 - self.front)
    }
}

/// What the texts add to the sections, and a material where one is named.
#[derive(Debug, Default)]
pub struct Read {
    /// Name of the material.
    pub material: Option<String>,
    /// What was taken.
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
    let mut named: Vec<String> = Vec::new();
    for text in &collected.texts {
        let words = plain(&text.text);
        if words.is_empty() || words.eq_ignore_ascii_case("ISO 2768-m") || words.eq_ignore_ascii_case("ISO 2768-mK") {
            continue;
        }
        if let Some(name) = material(&words) {
            named.push(name);
            continue;
        }
        let said = read(&words);
        let place = |why: &str| {
            format!("{} `{}` on layer `{}` at {}: {why}", text.entity, quoted(&words), text.layer, text.at.text())
        };
        // Lone numbers and words are no labels of a surface.
        if said.unknown.is_some() || (said.thread.is_none() && !said.diameter) {
            out.left.push(place("no size with a tolerance, thread or roughness"));
            continue;
        }
        give(&said, said.number, &[places.s(text.at)], sections, &mut out, place);
    }
    named.sort();
    named.dedup();
    match named.len() {
        0 => {}
        1 => out.material = named.pop(),
        _ => out.left.push(format!("texts name several materials: {}", named.join(", "))),
    }
    out
}

fn quoted(words: &str) -> String {
    let mut text: String = words.chars().take(QUOTED).collect();
    if words.chars().count() > QUOTED {
        text.push('…');
    }
    text
}

/// The material a text names: the text alone, or behind `Material:`.
fn material(words: &str) -> Option<String> {
    let name = match words.split_once(':') {
        Some((key, name)) if ["material", "werkstoff", "matière"].contains(&key.trim().to_lowercase().as_str()) => {
            name
        }
        Some(_) => return None,
        None => words,
    };
    // A short number alone is a dimension, not a steel.
    let name = name.trim();
    let lone = words == name && name.chars().all(|c| c.is_ascii_digit());
    (!lone).then(|| materials::find(name).ok()).flatten().map(|row| row.name.to_owned())
}

/// How many times larger the shaft is than its drawing: what all lengths with a number of their own agree on, where they
/// are two or more.
pub fn enlarged(collected: &Collected) -> Option<f64> {
    let mut factors: Vec<f64> = Vec::new();
    for d in &collected.dimensions {
        let said = read(&plain(&d.text));
        if let (Some(number), false, None, measured) = (said.number, said.diameter, &said.thread, d.measured())
            && measured > SAME_MM
            && !d.diametric
        {
            factors.push(number / measured);
        }
    }
    let (low, high) = factors.iter().fold((f64::INFINITY, 0.0_f64), |(l, h), f| (l.min(*f), h.max(*f)));
    let agreed = factors.len() >= 2 && high - low <= SCALE_SHARE * high && (high - 1.0).abs() > 4.0 * SCALE_SHARE;
    agreed.then(|| {
        // A scale is a round number: 2, 2.5, 0.2.
        let mean = factors.iter().sum::<f64>() / factors.len() as f64;
        let round = if mean >= 1.0 { (mean * 100.0).round() / 100.0 } else { 1.0 / ((100.0 / mean).round() / 100.0) };
        if (round - mean).abs() <= SCALE_SHARE * mean { round } else { mean }
    })
}

fn of_dimension(d: &Dimension, places: &Places, sections: &mut [Section], out: &mut Read) {
    let words = plain(&d.text);
    let said = read(&words);
    let [a, b] = d.points;
    let measured = d.measured();
    let place = |why: &str| {
        let text = if words.is_empty() { "<>".to_owned() } else { quoted(&words) };
        format!("DIMENSION `{text}` on layer `{}` at {}: {why}", d.layer, a.text())
    };
    if let Some(unknown) = &said.unknown {
        out.left.push(place(&format!("`{}` in it is not known", quoted(unknown))));
        return;
    }
    let (along_a, along_b) = (places.axis.of(a), places.axis.of(b));
    // Across the axis and on both sides of it, or said so.
    let across = (along_a.1 + along_b.1).abs() <= SAME_MM
        && (along_a.1 - along_b.1 - measured).abs().min((along_b.1 - along_a.1 - measured).abs()) <= SAME_MM;
    let is_diameter = said.diameter || said.thread.is_some() || d.diametric || (across && measured > SAME_MM);
    if let Some(number) = said.number
        && (number - measured).abs() > SCALE_SHARE * number.abs().max(measured) + SAME_MM
        // Half a contour is often dimensioned with the whole diameter.
        && !(is_diameter && (number - 2.0 * measured).abs() <= SCALE_SHARE * number + SAME_MM)
    {
        let drawn = (measured * 1e3).round() / 1e3;
        out.left.push(place(&format!("it says {number}, drawn are {drawn} mm; the job has what is drawn")));
        return;
    }
    if !is_diameter {
        if said.tolerance.is_some() {
            out.left.push(place("a tolerance of a length, which no job takes"));
        }
        return;
    }
    let at = [places.s(a), places.s(b)];
    give(&said, Some(said.number.unwrap_or(measured)), &at, sections, out, place);
}

/// Gives what was said to the one section of that diameter; among several to the one at the place.
fn give(
    said: &Said,
    number: Option<f64>,
    at: &[f64],
    sections: &mut [Section],
    out: &mut Read,
    place: impl Fn(&str) -> String,
) {
    let Some(diameter) = said.thread.as_ref().map(|t| t.major_mm).or(number) else {
        out.left.push(place("no diameter in it"));
        return;
    };
    if said.thread.is_none() && said.tolerance.is_none() && said.ra_um.is_none() {
        return;
    }
    let mut spans = Vec::with_capacity(sections.len());
    let mut s = 0.0;
    for section in sections.iter() {
        spans.push((s, s + section.length_mm));
        s += section.length_mm;
    }
    let fits = |i: &usize| {
        let plain = match sections[*i].kind {
            Kind::Cylinder(d) | Kind::Groove(d) => Some(d),
            // A second word on a thread: its roughness, not another thread.
            Kind::Thread(_, d) if said.thread.is_none() => Some(d),
            _ => None,
        };
        plain.is_some_and(|d| (d - diameter).abs() <= SAME_MM)
    };
    let mut meant: Vec<usize> = (0..sections.len()).filter(fits).collect();
    if meant.is_empty() {
        let size = (diameter * 1e3).round() / 1e3;
        out.left.push(place(&format!("no plain section has a diameter of {size} mm")));
        return;
    }
    if meant.len() > 1 {
        let inside = |i: &usize| at.iter().any(|s| spans[*i].0 - SAME_MM <= *s && *s <= spans[*i].1 + SAME_MM);
        meant.retain(inside);
    }
    let [index] = meant[..] else {
        out.left.push(place("several sections could be meant; none is given it"));
        return;
    };
    let section = &mut sections[index];
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
        out.left.push(place("the section has another already"));
    }
    if !given.is_empty() {
        out.taken.push(format!(
            "Section {}, {} mm long, is given {}.",
            index + 1,
            section.length_mm,
            given.join(" and ")
        ));
    }
}

/// Below the table of general tolerances a section must have one of its own.
pub fn needs_tolerance(section: &Section) -> bool {
    section.tolerance.is_none() && iso2768::limits(section.largest_mm()).is_err()
}
