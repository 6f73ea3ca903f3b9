//! Labels that do not overlap. They stand in rows over or under the drawing, each tied to its place by an upright
//! leader line. If there is no room for a section's label, the number of the section stands there, as in the tables. If
//! there is no room for the number, it is left out.

use super::axis::Axis;
use super::shapes::{self, SMALL};
use super::{numbers, words};
use crate::job::plan::Plan;

/// Least space between a label and the leader of another label. Two labels keep twice this space.
const CLEAR: f64 = 3.0;

/// How far labels may stand out of the plot.
const OVERHANG: f64 = 40.0;

/// Text size of a number in place of a label.
pub const NUMBER: f64 = 8.5;

/// Longest label of a section and of a feature.
const SECTION_WIDTH: f64 = 150.0;
const FEATURE_WIDTH: f64 = 200.0;

/// Where a label may be relative to its leader: the share of its width that is left of the leader, in order of
/// preference.
const SHARES: [f64; 3] = [0.5, 0.0, 1.0];

/// A label to be placed.
#[derive(Debug, Clone, PartialEq)]
pub struct Wanted {
    /// Which section or feature, from 0.
    pub index: usize,
    /// Page place it belongs to.
    pub anchor: f64,
    /// The label.
    pub text: String,
    /// Labels with a larger weight are placed first.
    pub weight: f64,
}

/// A label with its place.
#[derive(Debug, Clone, PartialEq)]
pub struct Placed {
    /// Which section or feature, from 0.
    pub index: usize,
    /// Left edge.
    pub left: f64,
    /// Width.
    pub width: f64,
    /// Row; 0 is nearest to the drawing.
    pub row: usize,
    /// Page place it belongs to.
    pub anchor: f64,
    /// The label.
    pub text: String,
}

impl Placed {
    fn right(&self) -> f64 {
        self.left + self.width
    }

    /// Place and anchor of the text. A label that begins or ends at its leader is anchored there, so that this is true
    /// for any font.
    pub fn tied(&self) -> (f64, &'static str) {
        const NEAR: f64 = 0.5;
        if (self.left - self.anchor).abs() < NEAR {
            (self.anchor, "start")
        } else if (self.right() - self.anchor).abs() < NEAR {
            (self.anchor, "end")
        } else {
            (self.left + self.width / 2.0, "middle")
        }
    }
}

/// The placed labels, in the order of their places, and how many had no room.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Labels {
    /// The placed labels.
    pub placed: Vec<Placed>,
    /// Numbers in place of labels that had no room: page place and number.
    pub numbers: Vec<(f64, usize)>,
    /// How many had no room, not even as a number.
    pub dropped: usize,
}

impl Labels {
    /// Rows used.
    pub fn rows(&self) -> usize {
        self.placed.iter().map(|p| p.row + 1).max().unwrap_or(0)
    }
}

/// Labels of the sections; long sections first. `number`: text size of a number in place of a label.
pub fn sections(plan: &Plan, axis: &Axis, rows: usize, number: f64) -> Labels {
    let wanted = |(index, s): (usize, &crate::job::plan::SectionOutline)| Wanted {
        index,
        anchor: axis.x_clamped((s.from_mm + s.to_mm) / 2.0),
        text: shapes::fit_text(&words::plain(&s.label), SMALL, SECTION_WIDTH),
        weight: s.to_mm - s.from_mm,
    };
    let wanted: Vec<Wanted> = plan.shaft.sections.iter().enumerate().map(wanted).collect();
    let labels = place(&wanted, rows, axis.left - OVERHANG, axis.right() + OVERHANG);
    numbered(labels, &wanted, number, |index| plan.shaft.sections.get(index).map_or(index + 1, |s| s.number))
}

/// The lengths of the sections; long sections first.
pub fn lengths(plan: &Plan, axis: &Axis, rows: usize) -> Labels {
    let wanted = |(index, s): (usize, &crate::job::plan::SectionOutline)| Wanted {
        index,
        anchor: axis.x_clamped((s.from_mm + s.to_mm) / 2.0),
        text: numbers::mm(s.to_mm - s.from_mm),
        weight: s.to_mm - s.from_mm,
    };
    let wanted: Vec<Wanted> = plan.shaft.sections.iter().enumerate().map(wanted).collect();
    place(&wanted, rows, axis.left - OVERHANG, axis.right() + OVERHANG)
}

/// Puts numbers where labels are missing: each over its place, clear of leaders and of each other.
fn numbered(mut labels: Labels, wanted: &[Wanted], size: f64, number: impl Fn(usize) -> usize) -> Labels {
    let mut right = f64::NEG_INFINITY;
    for w in wanted.iter().filter(|w| !labels.placed.iter().any(|p| p.index == w.index)) {
        let number = number(w.index);
        let half = shapes::text_width(&number.to_string(), size) / 2.0;
        let clear = labels.placed.iter().all(|p| (p.anchor - w.anchor).abs() > half + 1.0);
        if clear && w.anchor - half > right + 1.0 {
            right = w.anchor + half;
            labels.numbers.push((w.anchor, number));
        }
    }
    labels.dropped -= labels.numbers.len().min(labels.dropped);
    labels
}

/// The text of a feature. The label of a keyseat is only two numbers, so the word is added; holes have a sign.
fn feature_text(f: &crate::job::plan::FeatureOutline) -> String {
    let label = words::plain(&f.label);
    if f.kind == "keyseat" { format!("{} {label}", words::key("keyseat")) } else { label }
}

/// Labels of the features. All features of one end share one label at its face.
pub fn features(plan: &Plan, axis: &Axis, rows: usize) -> Labels {
    let mut wanted: Vec<Wanted> = Vec::new();
    for (index, f) in plan.shaft.features.iter().enumerate() {
        let place_mm = match (f.from_mm <= 0.0, f.to_mm >= plan.length_mm) {
            (true, false) => 0.0,
            (false, true) => plan.length_mm,
            _ => (f.from_mm + f.to_mm) / 2.0,
        };
        let (anchor, text) = (axis.x_clamped(place_mm), feature_text(f));
        match wanted.iter_mut().find(|w| (w.anchor - anchor).abs() < 1.0) {
            Some(same) => same.text = format!("{}, {text}", same.text),
            None => wanted.push(Wanted { index, anchor, text, weight: 1.0 }),
        }
    }
    for w in &mut wanted {
        w.text = shapes::fit_text(&w.text, SMALL, FEATURE_WIDTH);
    }
    place(&wanted, rows, axis.left - OVERHANG, axis.right() + OVERHANG)
}

/// Width of a flag with a mark in bold in it.
pub fn flag_width(mark: &str) -> f64 {
    shapes::text_width(mark, SMALL) * 1.12 + 7.0
}

/// The first free lane for each interval, from left to right. None: all lanes are taken there, or there is no interval.
pub fn lanes(intervals: &[Option<(f64, f64)>], most: usize) -> Vec<Option<usize>> {
    let mut ends = vec![f64::NEG_INFINITY; most];
    let lane = |interval: &Option<(f64, f64)>| {
        let (from, to) = (*interval)?;
        let (lane, end) = ends.iter_mut().enumerate().find(|(_, end)| **end <= from)?;
        *end = to;
        Some(lane)
    };
    intervals.iter().map(lane).collect()
}

/// Places labels between `left` and `right` in `rows` rows. It tries four ways: heavy labels first or from left to
/// right, each near the drawing or farther out. It takes the way that drops the fewest labels, and of those the one
/// with the fewest rows.
fn place(wanted: &[Wanted], rows: usize, left: f64, right: f64) -> Labels {
    let mut by_place: Vec<&Wanted> = wanted.iter().filter(|w| !w.text.is_empty()).collect();
    by_place.sort_by(|a, b| a.anchor.total_cmp(&b.anchor));
    let mut by_weight = by_place.clone();
    by_weight.sort_by(|a, b| b.weight.total_cmp(&a.weight));
    let ways = [(&by_weight, false), (&by_place, false), (&by_weight, true), (&by_place, true)];
    let found = ways.map(|(order, outward)| place_in_order(order, rows, outward, left, right));
    found.into_iter().min_by_key(|labels| (labels.dropped, labels.rows())).unwrap_or_default()
}

/// Each label takes the free place that is in the way of the fewest other labels, and of those the place in the nearest
/// row. `outward`: a label that is in the way of others goes farther out and leaves the nearer rows to them.
fn place_in_order(order: &[&Wanted], rows: usize, outward: bool, left: f64, right: f64) -> Labels {
    let mut placed: Vec<Placed> = Vec::new();
    for w in order {
        let width = shapes::text_width(&w.text, SMALL);
        let candidates = (0..rows).flat_map(|row| {
            SHARES.map(|share| Placed {
                index: w.index,
                left: w.anchor - share * width,
                width,
                row,
                anchor: w.anchor,
                text: w.text.clone(),
            })
        });
        let fits = |c: &Placed| c.left >= left && c.right() <= right && placed.iter().all(|p| !clash(c, p));
        let in_the_way = |c: &Placed| {
            let others = order.iter().filter(|o| o.index != c.index && crosses(c, o.anchor)).count();
            others * if outward { rows - c.row } else { 1 }
        };
        let best = candidates.filter(fits).min_by_key(in_the_way);
        placed.extend(best);
    }
    placed.sort_by(|a, b| a.anchor.total_cmp(&b.anchor).then(a.row.cmp(&b.row)));
    Labels { dropped: order.len() - placed.len(), placed, numbers: Vec::new() }
}

/// Whether a leader at `anchor` would run through the label or touch it.
fn crosses(label: &Placed, anchor: f64) -> bool {
    label.left - CLEAR < anchor && anchor < label.right() + CLEAR
}

/// Two labels clash when they touch in one row, or when the leader of the farther one runs through the nearer one.
fn clash(a: &Placed, b: &Placed) -> bool {
    if a.row == b.row {
        return a.left < b.right() + 2.0 * CLEAR && b.left < a.right() + 2.0 * CLEAR;
    }
    let (near, far) = if a.row < b.row { (a, b) } else { (b, a) };
    crosses(near, far.anchor)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn wanted(anchor: f64, text: &str) -> Wanted {
        Wanted { index: anchor as usize, anchor, text: text.to_string(), weight: 1.0 }
    }

    #[test]
    fn neighbours_do_not_touch() {
        let found = place(&[wanted(100.0, "Ø18 h9"), wanted(110.0, "Ø20 h8")], 2, 0.0, 300.0);
        assert_eq!(found.dropped, 0);
        let (a, b) = (&found.placed[0], &found.placed[1]);
        assert!(a.row != b.row || a.right() < b.left);
    }

    #[test]
    fn what_does_not_fit_is_dropped_not_laid_over() {
        let crowd: Vec<Wanted> = (0..30).map(|i| wanted(100.0 + f64::from(i), "Ø18 h9")).collect();
        let found = place(&crowd, 3, 0.0, 300.0);
        assert_eq!(found.placed.len() + found.dropped, 30);
        assert!(found.dropped > 15);
        for (i, a) in found.placed.iter().enumerate() {
            for b in &found.placed[i + 1..] {
                let apart = a.row != b.row || a.left + a.width < b.left || b.left + b.width < a.left;
                assert!(apart, "{a:?} lies on {b:?}");
            }
        }
    }

    #[test]
    fn where_a_label_has_no_room_its_number_stands() {
        let crowd: Vec<Wanted> = (0..20).map(|i| wanted(20.0 + 15.0 * f64::from(i), "Ø18 h9 with a name")).collect();
        let found = numbered(place(&crowd, 2, 0.0, 340.0), &crowd, NUMBER, |_| 17);
        assert!(found.placed.len() < 10 && found.dropped == 0, "{found:?}");
        assert_eq!(found.placed.len() + found.numbers.len(), 20);
        let close: Vec<Wanted> = (0..20).map(|i| wanted(20.0 + f64::from(i), "Ø18")).collect();
        let found = numbered(place(&close, 1, 0.0, 340.0), &close, NUMBER, |_| 17);
        assert!(found.dropped > 10, "{found:?}");
    }

    #[test]
    fn a_label_stays_inside() {
        let found = place(&[wanted(2.0, "M16x1.5"), wanted(298.0, "Ø9")], 1, 0.0, 300.0);
        assert!(found.placed.iter().all(|p| p.left >= 0.0 && p.left + p.width <= 300.0));
        assert_eq!(found.placed.len(), 2);
    }

    #[test]
    fn lanes_are_filled_from_the_first() {
        let intervals = [Some((0.0, 10.0)), Some((5.0, 12.0)), None, Some((6.0, 8.0)), Some((10.0, 20.0))];
        assert_eq!(lanes(&intervals, 2), [Some(0), Some(1), None, None, Some(0)]);
    }
}
