//! Finds the scale of a drawing from its dimensions.
//!
//! A dimension of a length has a number of its own, or it shows the drawn length times a factor of its own or of its
//! style. The size of texts and arrows (`DIMSCALE`) says nothing about lengths.

use super::axis::Found;
use super::collect::{Collected, Dimension};
use super::geometry::{Point, bounds};
use super::words::{INCH_MM, plain, read};
use crate::say;

/// Sizes in a drawing that differ by no more than this are the same, mm.
pub(super) const SAME_MM: f64 = 0.02;
/// If a dimension's own number differs from the drawn length by more than this share, the drawing is not to scale.
pub(super) const SCALE_SHARE: f64 = 0.005;

/// Dimensions of lengths that agree on a factor.
struct Group {
    factor: f64,
    /// Number of dimensions, and their total length as drawn, mm.
    count: usize,
    drawn_mm: f64,
    /// Whether at least one of them has a factor, not only a number.
    counted: bool,
    first: Point,
}

/// How many times larger the shaft is than its drawing, if the dimensions say so. What should be checked goes to the
/// notes. `found` is the contour as drawn, if there is one. Dimensions beside it are of a detail. They count only if no
/// dimension is at the contour.
pub fn enlarged(collected: &Collected, found: Option<&Found>, notes: &mut Vec<String>) -> Option<f64> {
    let lengths: Vec<(&Dimension, f64, bool)> =
        collected.dimensions.iter().filter_map(|d| told(d, found).map(|(f, counted)| (d, f, counted))).collect();
    let about = |d: &Dimension| found.is_none_or(|found| lies_at(d, found));
    let mut groups = groups(lengths.iter().filter(|(d, ..)| about(d)));
    if groups.is_empty() {
        groups = self::groups(lengths.iter());
    }
    groups.sort_by(|a, b| b.count.cmp(&a.count).then(b.drawn_mm.total_cmp(&a.drawn_mm)));
    let (best, others) = groups.split_first()?;
    // A number that is not the drawn length is reported with its dimension. A factor is not, so it is reported here.
    for other in others.iter().filter(|g| g.counted) {
        notes.push(say!(
            "draft-other-factor",
            count = other.count,
            factor = tidy(other.factor).to_string(),
            at = other.first.text(),
            used = tidy(best.factor).to_string()
        ));
    }
    // Numbers alone may belong to another shaft, so one is not enough.
    let sure = best.counted || (best.count >= 2 && others.is_empty());
    (sure && (best.factor - 1.0).abs() > 4.0 * SCALE_SHARE).then(|| round(best.factor))
}

fn tidy(factor: f64) -> f64 {
    (factor * 1e4).round() / 1e4
}

/// Rounds a factor to a round number, such as 2, 2.5 or 0.2, if it is near one.
fn round(factor: f64) -> f64 {
    let round = if factor >= 1.0 { (factor * 100.0).round() / 100.0 } else { 1.0 / ((100.0 / factor).round() / 100.0) };
    if (round - factor).abs() <= SCALE_SHARE * factor { round } else { factor }
}

/// Factor from drawn to shown length of a dimension, and whether it is given as a factor. None: it measures a diameter
/// or nothing.
fn told(d: &Dimension, found: Option<&Found>) -> Option<(f64, bool)> {
    let said = read(&plain(&d.text));
    let measured = d.measured();
    if measured <= SAME_MM || d.diametric || said.diameter || said.thread.is_some() || across(d, found) {
        return None;
    }
    match said.number {
        Some(number) => {
            let factor = number / measured;
            let inches = (factor * INCH_MM - 1.0).abs() <= SCALE_SHARE;
            Some((if inches { 1.0 } else { factor }, false))
        }
        None => Some((d.factor, true)),
    }
}

/// Whether a dimension measures across the axis: a diameter, or half of one that is dimensioned as a whole.
fn across(d: &Dimension, found: Option<&Found>) -> bool {
    let [a, b] = d.points;
    let (x, y) = match d.along {
        Some(degrees) => (degrees.to_radians().cos(), degrees.to_radians().sin()),
        None => ((b.x - a.x) / a.distance(b), (b.y - a.y) / a.distance(b)),
    };
    found.is_some_and(|f| (x * f.axis.along.x + y * f.axis.along.y).abs() < 0.5)
}

/// Whether both points of a dimension lie within the ends and the height of the contour.
fn lies_at(d: &Dimension, found: &Found) -> bool {
    let ends: Vec<Point> = found
        .contour
        .iter()
        .flat_map(|s| [s.a, s.b])
        .map(|p| {
            let (z, r) = found.axis.of(p);
            Point { x: z, y: r.abs() }
        })
        .collect();
    let (low, high) = bounds(&ends);
    d.points.iter().all(|p| {
        let (z, r) = found.axis.of(*p);
        low.x - SAME_MM <= z && z <= high.x + SAME_MM && r.abs() <= high.y + SAME_MM
    })
}

fn groups<'a>(lengths: impl Iterator<Item = &'a (&'a Dimension, f64, bool)>) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for (d, factor, counted) in lengths {
        match groups.iter_mut().find(|g| (g.factor - factor).abs() <= SCALE_SHARE * g.factor.max(*factor)) {
            Some(group) => {
                group.count += 1;
                group.drawn_mm += d.measured();
                group.counted |= counted;
            }
            None => groups.push(Group {
                factor: *factor,
                count: 1,
                drawn_mm: d.measured(),
                counted: *counted,
                first: d.points[0],
            }),
        }
    }
    groups
}
