//! Finds the shaft's axis, and the lines of its contour.
//!
//! These are tried in order: a centre line, known by its layer or line type; a line of symmetry of the contour; the
//! straight lower side of a half contour, or the line through its two free ends.

use super::geometry::{Point, Segment, bounds};
use crate::diag::Diag;
use crate::say;

/// Words in the name of a layer or line type that mean a centre line.
const CENTRE_WORDS: [&str; 9] = ["CENT", "MITTE", "AXIS", "ACHS", "AXE", "DASHDOT", "ISO04", "ISO10", "STRICHPUNKT"];
/// Words in the names of layers that hold no contour.
const NOISE_WORDS: [&str; 24] = [
    "DIM",
    "BEMA",
    "HATCH",
    "SCHRAFF",
    "FRAME",
    "RAHMEN",
    "BORDER",
    "TITLE",
    "SCHRIFT",
    "TEXT",
    "HIDDEN",
    "VERDECKT",
    "DEFPOINTS",
    "NOTE",
    "VIEWPORT",
    "CONSTR",
    "HILFS",
    "SYMBOL",
    "STAMP",
    "ANNO",
    "LOGO",
    "LABEL",
    "COTE",
    "QUOTE",
];
/// Line types that are not used for edges.
const BROKEN_TYPES: [&str; 7] = ["HIDDEN", "DASH", "DOT", "PHANTOM", "DIVIDE", "BORDER", "ISO0"];

/// Share of the contour's length that must have its mirror image.
const MIRRORED_SHARE: f64 = 0.95;
/// A centre line may end this far inside the ends of the contour, as a share of the contour's length.
const CENTRE_SHORT: f64 = 0.02;
/// A part that goes beyond an end of the centre line by more than this share of the line's length plus this many mm is
/// a frame.
const FRAME_SHARE: f64 = 0.10;
const FRAME_MM: f64 = 10.0;

/// A part on the axis that begins this near to the end of the contour is the rest of the contour, mm.
const REST_MM: f64 = 5.0;

/// The axis: a point on it and its direction.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    /// A point on it.
    pub origin: Point,
    /// Direction, of length 1. It points to the right, or up if the axis is vertical.
    pub along: Point,
}

impl Axis {
    /// The axis through two points. None if they are the same point.
    pub fn through(a: Point, b: Point) -> Option<Axis> {
        let length = a.distance(b);
        let (mut x, mut y) = ((b.x - a.x) / length, (b.y - a.y) / length);
        if x < -1e-6 || (x.abs() <= 1e-6 && y < 0.0) {
            (x, y) = (-x, -y);
        }
        // A line drawn by hand may be slightly off vertical or level.
        if x.abs() < 1e-6 {
            (x, y) = (0.0, 1.0);
        } else if y.abs() < 1e-6 {
            (x, y) = (1.0, 0.0);
        }
        (x.is_finite() && y.is_finite()).then_some(Axis { origin: a, along: Point { x, y } })
    }

    /// Place of a point along the axis, and its height above the axis.
    pub fn of(&self, p: Point) -> (f64, f64) {
        let (x, y) = (p.x - self.origin.x, p.y - self.origin.y);
        (x * self.along.x + y * self.along.y, y * self.along.x - x * self.along.y)
    }

    /// The point of the drawing at a place along the axis and a height above it.
    pub fn point(&self, z: f64, r: f64) -> Point {
        Point {
            x: self.origin.x + z * self.along.x - r * self.along.y,
            y: self.origin.y + z * self.along.y + r * self.along.x,
        }
    }
}

/// The axis and the contour that were found.
#[derive(Debug, Clone)]
pub struct Found {
    /// The axis.
    pub axis: Axis,
    /// Lines of the contour.
    pub contour: Vec<Segment>,
    /// Edges that are not part of the contour.
    pub rest: Vec<Segment>,
    /// How the axis was found.
    pub how: String,
}

/// Whether the layer or the line type of a segment means a centre line.
pub fn is_centre(segment: &Segment) -> bool {
    let layer = segment.layer.to_uppercase();
    CENTRE_WORDS.iter().any(|w| layer.contains(w) || segment.line_type.contains(w))
}

/// Whether a segment can be an edge of the contour.
fn is_edge(segment: &Segment) -> bool {
    let layer = segment.layer.to_uppercase();
    !is_centre(segment)
        && !NOISE_WORDS.iter().any(|w| layer.contains(w))
        && !BROKEN_TYPES.iter().any(|w| segment.line_type.contains(w))
}

/// Finds the axis and the contour. Ends that are at most `gap` mm apart are joined.
///
/// # Errors
/// There are no lines, there is no axis, or there is no contour on it.
pub fn find(segments: &[Segment], gap: f64) -> Result<Found, Diag> {
    let edges: Vec<Segment> = segments.iter().filter(|s| is_edge(s)).cloned().collect();
    if edges.is_empty() {
        return Err(Diag::new(say!("draft-no-contour")).help(say!("draft-no-contour-help")));
    }
    let parts = parts(&edges, gap);
    let mut centres: Vec<&Segment> =
        segments.iter().filter(|s| is_centre(s) && s.mid.is_none() && s.chord() > 0.0).collect();
    centres.sort_by(|a, b| b.chord().total_cmp(&a.chord()));
    for centre in centres {
        let Some(axis) = Axis::through(centre.a, centre.b) else { continue };
        let (from, to) = ordered(axis.of(centre.a).0, axis.of(centre.b).0);
        if let Some(best) = best_on(&edges, &parts, &axis, from, to, gap) {
            goes_on_behind_a_gap(&edges, &parts, best, &axis, gap)?;
            let (from, to) = (centre.a.text(), centre.b.text());
            let how = say!("draft-axis-is-line", from = from, to = to, layer = centre.layer);
            return Ok(split(edges, &parts[best], axis, how));
        }
    }
    // Frames enclose other parts and are left out. The other parts are tried, the largest first.
    let boxes: Vec<(Point, Point)> = parts.iter().map(|part| box_of(&edges, part)).collect();
    let mut sized: Vec<(usize, f64)> = (0..parts.len())
        .filter(|i| !is_frame(&edges, &parts[*i], &boxes, *i))
        .map(|i| {
            let (low, high) = boxes[i];
            (i, (high.x - low.x).max(high.y - low.y))
        })
        .collect();
    sized.sort_by(|a, b| b.1.total_cmp(&a.1).then(a.0.cmp(&b.0)));
    for (i, _) in sized.iter().take(5) {
        let of: Vec<&Segment> = parts[*i].iter().map(|k| &edges[*k]).collect();
        if let Some((axis, how)) = by_symmetry(&of, gap).or_else(|| by_lower_side(&of, gap)) {
            return Ok(split(edges, &parts[*i], axis, how));
        }
    }
    Err(Diag::new(say!("draft-no-axis")).help(say!("draft-no-axis-help")))
}

fn split(edges: Vec<Segment>, part: &[usize], axis: Axis, how: String) -> Found {
    let mut inside = vec![false; edges.len()];
    part.iter().for_each(|k| inside[*k] = true);
    let (mut contour, mut rest) = (Vec::new(), Vec::new());
    for (segment, inside) in edges.into_iter().zip(inside) {
        if inside { contour.push(segment) } else { rest.push(segment) }
    }
    Found { axis, contour, rest, how }
}

fn ordered(a: f64, b: f64) -> (f64, f64) {
    if a <= b { (a, b) } else { (b, a) }
}

fn box_of(edges: &[Segment], part: &[usize]) -> (Point, Point) {
    let corners: Vec<Point> = part.iter().flat_map(|k| <[Point; 2]>::from(edges[*k].bounds())).collect();
    bounds(&corners)
}

/// Smallest and largest place of a part along the axis, and its smallest and largest height above the axis.
fn extent(edges: &[Segment], part: &[usize], axis: &Axis) -> [f64; 4] {
    part.iter()
        .flat_map(|k| [axis.of(edges[*k].a), axis.of(edges[*k].b)])
        .fold([f64::INFINITY, f64::NEG_INFINITY, f64::INFINITY, f64::NEG_INFINITY], |e, (z, r)| {
            [e[0].min(z), e[1].max(z), e[2].min(r), e[3].max(r)]
        })
}

/// The longest part that lies on the centre line and within its ends.
fn best_on(edges: &[Segment], parts: &[Vec<usize>], axis: &Axis, from: f64, to: f64, gap: f64) -> Option<usize> {
    let room = FRAME_SHARE * (to - from) + FRAME_MM;
    let mut best: Option<(usize, f64)> = None;
    for (i, part) in parts.iter().enumerate() {
        let [z0, z1, r0, r1] = extent(edges, part, axis);
        let long = z1 - z0;
        let inside = z0 >= from - room && z1 <= to + room;
        // The centre line must run along the whole part.
        let through = from <= z0 + CENTRE_SHORT * long && to >= z1 - CENTRE_SHORT * long;
        let on = r0 <= gap && r1 >= -gap && r1 - r0 > gap;
        if inside && through && on && long > gap && best.is_none_or(|(_, longest)| long > longest) {
            best = Some((i, long));
        }
    }
    best.map(|(i, _)| i)
}

/// A part on the axis that begins where the contour ends is the rest of the contour, behind a gap too wide to be
/// joined. This is an error, so that half a shaft does not pass for a whole one.
fn goes_on_behind_a_gap(
    edges: &[Segment],
    parts: &[Vec<usize>],
    best: usize,
    axis: &Axis,
    gap: f64,
) -> Result<(), Diag> {
    let [z0, z1, low, high] = extent(edges, &parts[best], axis);
    for (i, part) in parts.iter().enumerate().filter(|(i, _)| *i != best) {
        let [y0, y1, r0, r1] = extent(edges, &parts[i], axis);
        let beyond = if y0 >= z1 - REST_MM {
            Some((z1, y0))
        } else if y1 <= z0 + REST_MM {
            Some((y1, z0))
        } else {
            None
        };
        let Some((end, begin)) = beyond.filter(|(end, begin)| begin - end <= REST_MM) else { continue };
        let on = r0 <= gap && r1 >= -gap && r1 - r0 > gap && part.len() > 1 && r1 <= 2.0 * high.max(-low);
        if on {
            let ends = [end.min(begin), end.max(begin)].map(|z| axis.point(z, 0.0).fine());
            return Err(open_contour(ends, gap));
        }
    }
    Ok(())
}

/// The message about a contour that is open between two places.
pub fn open_contour([from, to]: [String; 2], gap: f64) -> Diag {
    Diag::new(say!("draft-open-contour", from = from, to = to))
        .help(say!("draft-open-contour-help", gap = gap.to_string()))
}

/// Whether a part consists only of vertical and level lines and encloses another part.
fn is_frame(edges: &[Segment], part: &[usize], boxes: &[(Point, Point)], i: usize) -> bool {
    let (low, high) = boxes[i];
    let straight = |k: &usize| {
        let s = &edges[*k];
        s.mid.is_none() && ((s.a.x - s.b.x).abs() < 1e-6 || (s.a.y - s.b.y).abs() < 1e-6)
    };
    let around = |(l, h): &(Point, Point)| l.x > low.x && l.y > low.y && h.x < high.x && h.y < high.y;
    // A box does not lie inside itself, so the part's own box may be in the list.
    part.iter().all(straight) && boxes.iter().any(around)
}

/// Groups of connected edges. Two edges are connected if an end of one of them lies on the other.
fn parts(edges: &[Segment], gap: f64) -> Vec<Vec<usize>> {
    let mut parent: Vec<usize> = (0..edges.len()).collect();
    fn root(parent: &mut [usize], mut i: usize) -> usize {
        while parent[i] != i {
            parent[i] = parent[parent[i]];
            i = parent[i];
        }
        i
    }
    let boxes: Vec<(Point, Point)> = edges.iter().map(Segment::bounds).collect();
    let mut order: Vec<usize> = (0..edges.len()).collect();
    order.sort_by(|a, b| boxes[*a].0.x.total_cmp(&boxes[*b].0.x));
    for (n, i) in order.iter().enumerate() {
        for j in &order[n + 1..] {
            if boxes[*j].0.x > boxes[*i].1.x + gap {
                break;
            }
            let apart = boxes[*j].0.y > boxes[*i].1.y + gap || boxes[*i].0.y > boxes[*j].1.y + gap;
            if !apart && touch(&edges[*i], &edges[*j], gap) {
                let (a, b) = (root(&mut parent, *i), root(&mut parent, *j));
                parent[a] = b;
            }
        }
    }
    let mut groups = std::collections::BTreeMap::<usize, Vec<usize>>::new();
    for i in 0..edges.len() {
        let of = root(&mut parent, i);
        groups.entry(of).or_default().push(i);
    }
    groups.into_values().collect()
}

fn touch(s: &Segment, t: &Segment, gap: f64) -> bool {
    [s.a, s.b].iter().any(|p| off(*p, t) <= gap) || [t.a, t.b].iter().any(|p| off(*p, s) <= gap)
}

/// Distance of a point from a line. For an arc, distance from its nearer end.
pub fn off(p: Point, s: &Segment) -> f64 {
    let at_ends = p.distance(s.a).min(p.distance(s.b));
    if s.mid.is_some() {
        return at_ends;
    }
    let (x, y) = (s.b.x - s.a.x, s.b.y - s.a.y);
    let share = ((p.x - s.a.x) * x + (p.y - s.a.y) * y) / (x * x + y * y);
    if !(0.0..=1.0).contains(&share) {
        return at_ends;
    }
    p.distance(Point { x: s.a.x + share * x, y: s.a.y + share * y })
}

/// The middle line along the longer side, if what lies above it also lies below it.
fn by_symmetry(part: &[&Segment], gap: f64) -> Option<(Axis, String)> {
    let corners: Vec<Point> = part.iter().flat_map(|s| <[Point; 2]>::from(s.bounds())).collect();
    let (low, high) = bounds(&corners);
    let middle = Point { x: (low.x + high.x) / 2.0, y: (low.y + high.y) / 2.0 };
    let level = high.x - low.x >= high.y - low.y;
    let other = if level { Point { x: high.x, y: middle.y } } else { Point { x: middle.x, y: high.y } };
    let axis = Axis::through(middle, other)?;
    let mirror = |p: Point| {
        let (z, r) = axis.of(p);
        axis.point(z, -r)
    };
    let all: f64 = part.iter().map(|s| s.chord()).sum();
    let mut found = 0.0;
    for s in part {
        let (a, b) = (mirror(s.a), mirror(s.b));
        let same = |t: &&&Segment| {
            let straight = a.distance(t.a) <= gap && b.distance(t.b) <= gap;
            let turned = a.distance(t.b) <= gap && b.distance(t.a) <= gap;
            (straight || turned) && t.mid.is_some() == s.mid.is_some()
        };
        if part.iter().find(same).is_some() {
            found += s.chord();
        }
    }
    let how = if level {
        say!("draft-axis-is-symmetry-level", through = middle.text())
    } else {
        say!("draft-axis-is-symmetry-upright", through = middle.text())
    };
    (found >= MIRRORED_SHARE * all).then_some((axis, how))
}

/// The axis of half a contour: a straight side along its whole length, or the line through the two free ends of an open
/// contour.
fn by_lower_side(part: &[&Segment], gap: f64) -> Option<(Axis, String)> {
    let corners: Vec<Point> = part.iter().flat_map(|s| <[Point; 2]>::from(s.bounds())).collect();
    let (low, high) = bounds(&corners);
    let level = high.x - low.x >= high.y - low.y;
    let length = if level { high.x - low.x } else { high.y - low.y };
    // Share of a long side that is covered by lines.
    let side = |at: f64| -> f64 {
        let on = |p: Point| ((if level { p.y } else { p.x }) - at).abs() <= gap;
        let lines = part.iter().filter(|s| s.mid.is_none() && on(s.a) && on(s.b));
        lines.map(|s| s.chord()).sum::<f64>() / length
    };
    let (first, second) = if level { (low.y, high.y) } else { (low.x, high.x) };
    let (on_first, on_second) = (side(first) > 0.98, side(second) > 0.98);
    let at = match (on_first, on_second) {
        (true, false) => Some(first),
        (false, true) => Some(second),
        _ => None,
    };
    let line = |at: f64| {
        if level {
            Axis::through(Point { x: low.x, y: at }, Point { x: high.x, y: at })
        } else {
            Axis::through(Point { x: at, y: low.y }, Point { x: at, y: high.y })
        }
    };
    if let Some(at) = at {
        return Some((
            line(at)?,
            say!(
                "draft-axis-is-side",
                axis = if level { "y" } else { "x" },
                at = ((at * 1e3).round() / 1e3).to_string()
            ),
        ));
    }
    let free: Vec<Point> = part
        .iter()
        .flat_map(|s| [s.a, s.b])
        .filter(|p| part.iter().filter(|s| s.a.distance(*p) <= gap || s.b.distance(*p) <= gap).count() == 1)
        .collect();
    let [a, b] = free[..] else { return None };
    let (ends_at, apart) = if level { (a.y - b.y, (a.x - b.x).abs()) } else { (a.x - b.x, (a.y - b.y).abs()) };
    let at = if level { a.y } else { a.x };
    let outside = (at - first).abs() <= gap || (at - second).abs() <= gap;
    if ends_at.abs() > gap || apart < 0.98 * length || !outside {
        return None;
    }
    Some((line(at)?, say!("draft-axis-through-ends", from = a.fine(), to = b.fine())))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Half a stepped shaft without an axis. The message gives the ends of its contour to the micrometre, as every
    /// message about an open drawing does.
    #[test]
    fn free_ends_of_an_open_contour_are_told_to_the_micrometre() {
        let corners = [(0.0, 2.0004), (0.0, 5.0), (40.0, 5.0), (40.0, 8.0), (100.0374, 8.0), (100.0374, 2.0004)];
        let contour: Vec<Segment> = corners
            .windows(2)
            .map(|w| Segment {
                a: Point { x: w[0].0, y: w[0].1 },
                b: Point { x: w[1].0, y: w[1].1 },
                mid: None,
                entity: "LINE",
                layer: "0".into(),
                line_type: "CONTINUOUS".into(),
            })
            .collect();
        let part: Vec<&Segment> = contour.iter().collect();
        let (axis, how) = by_lower_side(&part, 0.01).expect("an axis");
        assert!(how.contains("its axis is the line through its open ends (0, 2) and (100.037, 2)"), "{how}");
        assert_eq!(axis.of(Point { x: 40.0, y: 5.0 }).1.abs(), 5.0 - 2.0004, "radii are told from it");
    }
}
