//! Turns the profile into sections: cylinders, tapers and grooves. Chamfers and small radii become part of the section
//! that they end.

use super::axis::Axis;
use super::profile::{ProfilePart, SAME_MM};
use crate::say;

/// Longest chamfer that is folded into a section, mm, and its smallest and largest angle to the axis, degrees. Common
/// practice, no source.
const CHAMFER_MAX_MM: f64 = 3.0;
const CHAMFER_DEG: std::ops::RangeInclusive<f64> = 20.0..=70.0;
/// Longest chamfer that is folded into a section, as a share of its diameter.
const CHAMFER_SHARE: f64 = 0.25;
/// Largest radius that is folded into a section, mm.
const RADIUS_MAX_MM: f64 = 3.0;
/// Longest cylinder between larger ones that counts as a groove, mm.
const GROOVE_MAX_MM: f64 = 6.0;
/// Sizes are rounded to this share of a mm. Anything finer comes from rounding in the drawing program.
const PER_MM: f64 = 1000.0;

/// What kind of section it is.
#[derive(Debug, Clone, PartialEq)]
pub enum Kind {
    /// A cylinder.
    Cylinder(f64),
    /// A groove.
    Groove(f64),
    /// A knurl.
    Knurl(f64),
    /// A taper: front and rear diameter.
    Taper(f64, f64),
    /// A thread: designation and major diameter.
    Thread(String, f64),
    /// Flats: distance between opposite flats, number, and the diameter they are cut on.
    Flats(f64, u32, Option<f64>),
}

/// A section of the draft.
#[derive(Debug, Clone, PartialEq)]
pub struct Section {
    /// Length in mm.
    pub length_mm: f64,
    /// Its kind.
    pub kind: Kind,
    /// Written as in a job: `h6`, or `[-0.05, 0]`.
    pub tolerance: Option<String>,
    /// Roughness in µm.
    pub ra_um: Option<f64>,
    /// Name.
    pub name: Option<String>,
    /// What was folded in, and what should be checked.
    pub remarks: Vec<String>,
}

impl Section {
    /// A section with nothing but its shape.
    pub fn plain(length_mm: f64, kind: Kind) -> Section {
        Section { length_mm, kind, tolerance: None, ra_um: None, name: None, remarks: Vec::new() }
    }

    /// Largest diameter in mm.
    pub fn largest_mm(&self) -> f64 {
        match &self.kind {
            Kind::Cylinder(d) | Kind::Groove(d) | Kind::Knurl(d) | Kind::Thread(_, d) => *d,
            Kind::Taper(a, b) => a.max(*b),
            Kind::Flats(across, 2, on) => on.unwrap_or(*across),
            Kind::Flats(across, sides, _) => across / (std::f64::consts::PI / f64::from(*sides)).cos(),
        }
    }
}

fn rounded(mm: f64) -> f64 {
    (mm * PER_MM).round() / PER_MM + 0.0
}

/// Whether the piece is a plain cylinder.
fn level(p: &ProfilePart) -> bool {
    p.arc.is_none() && (p.r1 - p.r0).abs() <= SAME_MM
}

fn degrees(p: &ProfilePart) -> f64 {
    (p.r1 - p.r0).abs().atan2(p.length()).to_degrees()
}

/// A piece that is folded into the piece in front of it, or into the piece behind it.
enum Fold {
    Front(String),
    Behind(String),
}

fn fold(pieces: &[ProfilePart], i: usize) -> Option<Fold> {
    let p = pieces.get(i)?;
    let front = i.checked_sub(1).and_then(|k| pieces.get(k));
    let behind = pieces.get(i + 1);
    let rises = p.r1 > p.r0;
    let joins = |n: &&ProfilePart, r: f64, at_rear: bool| {
        level(n) && ((if at_rear { n.r1 } else { n.r0 }) - r).abs() <= 2.0 * SAME_MM
    };
    let in_front = front.filter(|n| joins(n, p.r0, true)).is_some();
    let at_rear = behind.filter(|n| joins(n, p.r1, false)).is_some();
    // A corner that is taken off belongs to the larger side, and a corner that is filled to the smaller side.
    let to_larger = |text: String| match (rises, at_rear, in_front) {
        (true, true, _) => Some(Fold::Behind(text)),
        (false, _, true) => Some(Fold::Front(text)),
        _ => None,
    };
    match p.arc {
        Some(arc) if arc.radius <= RADIUS_MAX_MM => {
            let text = say!("section-with-radius", radius = rounded(arc.radius).to_string());
            if arc.convex {
                return to_larger(text);
            }
            match (rises, in_front, at_rear) {
                (true, true, _) => Some(Fold::Front(text)),
                (false, _, true) => Some(Fold::Behind(text)),
                _ => None,
            }
        }
        Some(_) => None,
        None if level(p) => None,
        None => {
            let small = p.length() <= CHAMFER_MAX_MM && p.length() <= CHAMFER_SHARE * 2.0 * p.r0.max(p.r1);
            if !small || !CHAMFER_DEG.contains(&degrees(p)) {
                return None;
            }
            to_larger(say!(
                "section-with-chamfer",
                chamfer = format!("{} x {}°", rounded(p.length()), rounded(degrees(p) * 10.0).round() / 10.0)
            ))
        }
    }
}

/// The sections from the front face to the rear; `flip` makes the other end the front.
pub fn sections(pieces: &[ProfilePart], axis: &Axis, flip: bool, notes: &mut Vec<String>) -> Vec<Section> {
    let mut folded: Vec<(ProfilePart, Vec<String>)> = Vec::new();
    let mut for_next: Vec<String> = Vec::new();
    let mut next_from: Option<f64> = None;
    for (i, piece) in pieces.iter().enumerate() {
        match fold(pieces, i) {
            Some(Fold::Front(text)) => {
                if let Some((p, remarks)) = folded.last_mut() {
                    p.z1 = piece.z1;
                    remarks.push(text);
                }
            }
            Some(Fold::Behind(text)) => {
                next_from = next_from.or(Some(piece.z0));
                for_next.push(text);
            }
            None => {
                let mut piece = *piece;
                if let Some(from) = next_from.take() {
                    piece.z0 = from;
                }
                folded.push((piece, std::mem::take(&mut for_next)));
            }
        }
    }
    if flip {
        folded.reverse();
        for (p, _) in &mut folded {
            *p = ProfilePart { z0: -p.z1, z1: -p.z0, r0: p.r1, r1: p.r0, arc: p.arc };
        }
    }
    let start = folded.first().map_or(0.0, |(p, _)| p.z0);
    let mut sections: Vec<Section> = Vec::new();
    for (p, remarks) in folded {
        let length = rounded(rounded(p.z1 - start) - rounded(p.z0 - start));
        let (d0, d1) = (rounded(2.0 * p.r0), rounded(2.0 * p.r1));
        let same = (d0 - d1).abs() <= 2.0 * SAME_MM;
        let mut section = Section::plain(length, if same { Kind::Cylinder(d0) } else { Kind::Taper(d0, d1) });
        if let Some(arc) = p.arc {
            let z = if flip { -p.z0 } else { p.z0 };
            let radius = rounded(arc.radius).to_string();
            notes.push(say!("draft-arc", radius = radius, at = axis.point(z, p.r0).text()));
            section.remarks.push(say!("section-from-arc", radius = rounded(arc.radius).to_string()));
        }
        section.remarks.extend(remarks.iter().cloned());
        if length > 0.0 {
            sections.push(section);
        }
    }
    let mut left = &mut sections[..];
    while let [front, rest @ ..] = left {
        if let [section, behind, ..] = rest
            && let Kind::Cylinder(d) = section.kind
        {
            let deeper = |n: &Section, rear: bool| match n.kind {
                Kind::Taper(a, b) => (if rear { b } else { a }) > d + 2.0 * SAME_MM,
                _ => n.largest_mm() > d + 2.0 * SAME_MM,
            };
            let short = section.length_mm <= GROOVE_MAX_MM && section.length_mm <= d;
            if short && deeper(front, true) && deeper(behind, false) {
                section.kind = Kind::Groove(d);
            }
        }
        left = rest;
    }
    sections
}

#[cfg(test)]
mod tests {
    use super::super::geometry::Point;
    use super::super::profile::Rounding;
    use super::*;

    fn piece(z0: f64, z1: f64, r0: f64, r1: f64) -> ProfilePart {
        ProfilePart { z0, z1, r0, r1, arc: None }
    }

    fn of(pieces: &[ProfilePart], flip: bool) -> Vec<Section> {
        let axis = Axis { origin: Point::default(), along: Point { x: 1.0, y: 0.0 } };
        sections(pieces, &axis, flip, &mut Vec::new())
    }

    #[test]
    fn chamfers_go_to_the_larger_side_fillets_to_the_smaller() {
        let arc = Some(Rounding { radius: 1.0, convex: false });
        let pieces = [
            piece(0.0, 1.0, 5.0, 6.0),
            piece(1.0, 29.0, 6.0, 6.0),
            ProfilePart { arc, ..piece(29.0, 30.0, 6.0, 7.0) },
            piece(30.0, 79.5, 9.0, 9.0),
            piece(79.5, 80.0, 9.0, 8.5),
        ];
        let all = of(&pieces, false);
        let shapes: Vec<(f64, &Kind)> = all.iter().map(|s| (s.length_mm, &s.kind)).collect();
        assert_eq!(shapes, [(30.0, &Kind::Cylinder(12.0)), (50.0, &Kind::Cylinder(18.0))]);
        assert_eq!(all[0].remarks, ["with chamfer 1 x 45°", "with radius 1 mm"]);
        let turned = of(&pieces, true);
        assert_eq!(turned[0].length_mm, 50.0);
        assert_eq!(turned[1].kind, Kind::Cylinder(12.0));
    }

    #[test]
    fn tapers_stay_and_grooves_are_seen() {
        let pieces = [
            piece(0.0, 20.0, 6.0, 6.0),
            piece(20.0, 22.0, 5.5, 5.5),
            piece(22.0, 60.0, 8.0, 8.0),
            piece(60.0, 100.0, 8.0, 10.0),
            piece(100.0, 110.0, 7.0, 7.0),
        ];
        let kinds: Vec<Kind> = of(&pieces, false).into_iter().map(|s| s.kind).collect();
        assert_eq!(
            kinds,
            [
                Kind::Cylinder(12.0),
                Kind::Groove(11.0),
                Kind::Cylinder(16.0),
                Kind::Taper(16.0, 20.0),
                Kind::Cylinder(14.0)
            ]
        );
    }
}
