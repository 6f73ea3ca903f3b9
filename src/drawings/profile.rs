//! Turns the contour into the turned profile: the radius at every place along the axis, without gaps.

use super::axis::{Axis, Found, open_contour};
use super::geometry::{Segment, circle};
use crate::diag::Diag;
use crate::say;

/// A piece of the profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ProfilePart {
    /// Front end, mm along the axis.
    pub z0: f64,
    /// Rear end.
    pub z1: f64,
    /// Radius at the front end, mm.
    pub r0: f64,
    /// Radius at the rear end.
    pub r1: f64,
    /// The arc, if the piece is a rounding.
    pub arc: Option<Rounding>,
}

/// An arc of the profile.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rounding {
    /// Its radius, mm.
    pub radius: f64,
    /// Whether it rounds off an outer corner. If not, it fills an inner corner.
    pub convex: bool,
}

impl ProfilePart {
    /// Length in mm.
    pub fn length(&self) -> f64 {
        self.z1 - self.z0
    }
}

/// Radii that differ by no more than this are the same, mm.
pub const SAME_MM: f64 = 0.002;
/// If one side is shorter than this share of the other, it is not half of the contour.
const HALF_SHARE: f64 = 0.9;

/// A line or arc of one half of the contour.
#[derive(Clone, Copy)]
struct Edge {
    z0: f64,
    z1: f64,
    r0: f64,
    r1: f64,
    /// Centre and radius of an arc.
    circle: Option<(f64, f64, f64)>,
}

impl Edge {
    /// Radius at a place. A line is extended beyond its ends.
    fn r(&self, z: f64) -> f64 {
        match self.circle {
            None => self.r0 + (self.r1 - self.r0) * (z - self.z0) / (self.z1 - self.z0),
            Some((cz, cr, radius)) => {
                let z = z.clamp(self.z0, self.z1);
                let height = (radius * radius - (z - cz) * (z - cz)).max(0.0).sqrt();
                if (self.r0 + self.r1) / 2.0 >= cr { cr + height } else { cr - height }
            }
        }
    }
}

/// The profile of the longer half of the contour. If the other half is complete too, and differs, a note says so.
///
/// # Errors
/// Nothing lies along the axis, or the contour has a gap that is too wide to be joined.
pub fn profile(found: &Found, gap: f64, notes: &mut Vec<String>) -> Result<Vec<ProfilePart>, Diag> {
    let upper = half(found, 1.0, gap);
    let lower = half(found, -1.0, gap);
    let span = |pieces: &Result<Vec<ProfilePart>, Diag>| match pieces {
        Ok(p) => p.last().zip(p.first()).map_or(0.0, |(l, f)| l.z1 - f.z0),
        Err(_) => 0.0,
    };
    let (above, below) = (span(&upper), span(&lower));
    let longest = above.max(below);
    if longest <= gap {
        return match (upper, lower) {
            (Err(diag), _) | (_, Err(diag)) => Err(diag),
            _ => Err(Diag::new(say!("draft-no-profile")).help(say!("draft-no-profile-help"))),
        };
    }
    let (pieces, other) = if above >= below { (upper?, lower) } else { (lower?, upper) };
    if let Ok(other) = other
        && above.min(below) >= HALF_SHARE * longest
        && let Some((z, r, s)) = first_difference(&pieces, &other, gap)
    {
        let two = |r: f64| (2.0 * r * 1e3).round() / 1e3;
        notes.push(say!(
            "draft-halves-differ",
            at = found.axis.point(z, 0.0).text(),
            used = two(r).to_string(),
            other = two(s).to_string()
        ));
    }
    Ok(pieces)
}

fn first_difference(a: &[ProfilePart], b: &[ProfilePart], gap: f64) -> Option<(f64, f64, f64)> {
    let at = |pieces: &[ProfilePart], z: f64| {
        pieces.iter().find(|p| p.z0 <= z && z <= p.z1).map(|p| p.r0 + (p.r1 - p.r0) * (z - p.z0) / p.length())
    };
    a.iter().filter(|p| p.length() > 4.0 * gap).find_map(|p| {
        let z = (p.z0 + p.z1) / 2.0;
        let (r, s) = (at(a, z)?, at(b, z)?);
        (p.arc.is_none() && (r - s).abs() > gap).then_some((z, r, s))
    })
}

fn edge(axis: &Axis, segment: &Segment, side: f64) -> Edge {
    let of = |p| {
        let (z, r) = axis.of(p);
        (z, side * r)
    };
    let (mut a, mut b) = (of(segment.a), of(segment.b));
    if a.0 > b.0 {
        (a, b) = (b, a);
    }
    let circle = segment.mid.and_then(|m| circle(segment.a, m, segment.b)).map(|(centre, radius)| {
        let (z, r) = of(centre);
        (z, r, radius)
    });
    Edge { z0: a.0, z1: b.0, r0: a.1, r1: b.1, circle }
}

/// The profile of one half: the outermost edge at each place.
fn half(found: &Found, side: f64, gap: f64) -> Result<Vec<ProfilePart>, Diag> {
    let (mut edges, mut walls): (Vec<Edge>, Vec<(f64, f64)>) = (Vec::new(), Vec::new());
    for segment in &found.contour {
        let e = edge(&found.axis, segment, side);
        let upright = e.z1 - e.z0 <= gap && (e.r1 - e.r0).abs() > e.z1 - e.z0;
        if upright && e.circle.is_none() {
            walls.push(((e.z0 + e.z1) / 2.0, e.r0.max(e.r1)));
        } else if (e.r0 + e.r1) / 2.0 > gap && e.z1 - e.z0 > 1e-6 {
            edges.push(e);
        }
    }
    let places = places(&edges, &walls, gap);
    let mut pieces: Vec<ProfilePart> = Vec::new();
    let mut last: Option<Edge> = None;
    for ((z0, wall), (z1, _)) in places.iter().zip(places.iter().skip(1)) {
        let (z0, z1) = (*z0, *z1);
        let mid = (z0 + z1) / 2.0;
        let over = edges.iter().filter(|e| e.z0 - gap <= mid && mid <= e.z1 + gap);
        let Some(e) = over.max_by(|a, b| a.r(mid).total_cmp(&b.r(mid))).copied() else {
            return Err(open_contour([z0, z1].map(|z| found.axis.point(z, 0.0).fine()), gap));
        };
        // An edge that continues straight over the end of another edge is one piece. A wall that reaches up to it
        // separates two surfaces.
        let goes_on = last.is_some_and(|l| {
            l.circle == e.circle && (l.r(z0) - e.r(z0)).abs() <= SAME_MM && (l.r(z1) - e.r(z1)).abs() <= SAME_MM
        });
        let walled = wall.is_some_and(|top| top >= e.r(z0) - gap);
        let arc = e.circle.map(|(_, cr, radius)| Rounding { radius, convex: (e.r0 + e.r1) / 2.0 >= cr });
        match pieces.last_mut() {
            Some(piece) if goes_on && !walled => (piece.z1, piece.r1) = (z1, e.r(z1)),
            _ => pieces.push(ProfilePart { z0, z1, r0: e.r(z0), r1: e.r(z1), arc }),
        }
        last = Some(e);
    }
    meet(&mut pieces, &places, gap);
    Ok(pieces)
}

/// Ends of edges along the axis, merged if they are within the gap. Each has the top of the wall at that place, if
/// there is one.
fn places(edges: &[Edge], walls: &[(f64, f64)], gap: f64) -> Vec<(f64, Option<f64>)> {
    let mut all: Vec<(f64, Option<f64>)> = edges.iter().flat_map(|e| [(e.z0, None), (e.z1, None)]).collect();
    all.extend(walls.iter().map(|(z, top)| (*z, Some(*top))));
    all.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut groups: Vec<Vec<(f64, Option<f64>)>> = Vec::new();
    for place in all {
        match groups.last_mut() {
            Some(group)
                if group.first().is_some_and(|f| place.0 - f.0 <= 2.0 * gap)
                    && group.last().is_some_and(|l| place.0 - l.0 <= gap) =>
            {
                group.push(place);
            }
            _ => groups.push(vec![place]),
        }
    }
    let mean = |values: &[f64]| values.iter().sum::<f64>() / values.len() as f64;
    let place = |group: Vec<(f64, Option<f64>)>| {
        let walls: Vec<f64> = group.iter().filter(|p| p.1.is_some()).map(|p| p.0).collect();
        let all: Vec<f64> = group.iter().map(|p| p.0).collect();
        let top = group.iter().filter_map(|p| p.1).fold(f64::NEG_INFINITY, f64::max);
        // A wall is where it is drawn. The ends of lines that stop short of it do not count.
        if walls.is_empty() { (mean(&all), None) } else { (mean(&walls), Some(top)) }
    };
    let mut places: Vec<(f64, Option<f64>)> = groups.into_iter().map(place).collect();
    // Walls beyond the last edge are not ends of the shaft.
    let low = edges.iter().map(|e| e.z0).fold(f64::INFINITY, f64::min) - gap;
    let high = edges.iter().map(|e| e.z1).fold(f64::NEG_INFINITY, f64::max) + gap;
    places.retain(|p| p.0 >= low && p.0 <= high);
    places
}

/// If two slopes meet without a wall, they meet where their lines cross, whatever gap is left between them.
fn meet(pieces: &mut [ProfilePart], places: &[(f64, Option<f64>)], gap: f64) {
    let mut left = pieces;
    while let [a, behind @ ..] = left {
        if let Some(b) = behind.first_mut()
            && !(places.iter().any(|p| p.0 == b.z0 && p.1.is_some()) || a.arc.is_some() || b.arc.is_some())
        {
            let (slope_a, slope_b) = ((a.r1 - a.r0) / a.length(), (b.r1 - b.r0) / b.length());
            let z = a.z1 + (b.r0 - a.r1) / (slope_a - slope_b);
            if z.is_finite() && (z - a.z1).abs() <= 2.0 * gap && z > a.z0 && z < b.z1 {
                let r = a.r1 + slope_a * (z - a.z1);
                (a.z1, a.r1) = (z, r);
                (b.z0, b.r0) = (z, r);
            }
        }
        left = behind;
    }
}
