//! Lengths along the shaft: rounds them, and finds what is there.

use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::job::Section;
use crate::say;

/// Lengths in a file are decimal. This removes the rounding error of their sum, so that 0.1 + 0.2 is 0.3.
pub(super) fn tidy(mm: f64) -> f64 {
    (mm * 1e9).round() / 1e9
}

/// Checks that a stretch lies on the shaft. Reports an error if it does not.
pub(super) fn on_the_shaft(
    r: &mut Reader,
    map: &Map,
    key: &str,
    from_mm: f64,
    to_mm: f64,
    sections: &[Section],
) -> Option<()> {
    let length_mm = sections.last().map_or(0.0, |section| section.to_mm);
    if from_mm >= 0.0 && to_mm <= length_mm {
        return Some(());
    }
    let diag = Diag::new(say!("place-beyond-shaft", from = from_mm.to_string(), to = to_mm.to_string()))
        .help(say!("place-beyond-shaft-help", length = length_mm.to_string()));
    r.complain(&map.place(key), diag);
    None
}

/// Smallest core diameter of the shaft between two places, mm.
pub(super) fn thinnest_mm(sections: &[Section], from_mm: f64, to_mm: f64) -> f64 {
    sections
        .iter()
        .filter(|section| section.to_mm > from_mm && section.from_mm < to_mm)
        .map(|section| {
            // Every kind of section is thinnest at one of its two ends.
            section.bending_mm(section.from_mm.max(from_mm)).min(section.bending_mm(section.to_mm.min(to_mm)))
        })
        .fold(f64::INFINITY, f64::min)
}
