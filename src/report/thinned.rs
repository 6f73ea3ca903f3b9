//! Leaves out the points of a curve that nobody can see.

/// A point is left out if the curve without it is nowhere farther off than this, in page units: 8 µm on paper.
const UNSEEN: f64 = 0.03;

/// The points that make the shape of a curve; both ends stay. `per`: page units for one unit of each axis. Source:
/// Ramer 1972, Douglas & Peucker 1973 (from memory, not checked).
#[expect(clippy::indexing_slicing, reason = "a stretch goes from a point of the curve to one behind it")]
pub fn thinned(points: &[(f64, f64)], per: (f64, f64)) -> Vec<(f64, f64)> {
    let mut kept = vec![false; points.len()];
    let mut parts = Vec::new();
    if let Some(last) = points.len().checked_sub(1) {
        (kept[0], kept[last]) = (true, true);
        parts.push((0, last));
    }
    while let Some((from, to)) = parts.pop() {
        let off = |i: usize| off_line(points[i], [points[from], points[to]], per);
        let farthest = (from + 1..to).map(|i| (off(i), i)).reduce(|a, b| if b.0 > a.0 { b } else { a });
        if let Some((_, middle)) = farthest.filter(|(off, _)| *off > UNSEEN) {
            kept[middle] = true;
            parts.extend([(from, middle), (middle, to)]);
        }
    }
    points.iter().zip(kept).filter(|(_, kept)| *kept).map(|(point, _)| *point).collect()
}

/// How far a point is from the stretch between two others, in page units.
fn off_line((x, y): (f64, f64), [(x1, y1), (x2, y2)]: [(f64, f64); 2], per: (f64, f64)) -> f64 {
    let (along, up) = ((x2 - x1) * per.0, (y2 - y1) * per.1);
    let (px, py) = ((x - x1) * per.0, (y - y1) * per.1);
    let length2 = along * along + up * up;
    let share = if length2 > 0.0 { ((px * along + py * up) / length2).clamp(0.0, 1.0) } else { 0.0 };
    (px - share * along).hypot(py - share * up)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn points_on_a_line_go_and_corners_stay() {
        let steps = [(0.0, 1.0), (1.0, 1.0), (2.0, 1.0), (2.0, 3.0), (3.0, 3.0), (4.0, 3.0)];
        assert_eq!(thinned(&steps, (10.0, 10.0)), [(0.0, 1.0), (2.0, 1.0), (2.0, 3.0), (4.0, 3.0)]);
        // Ten times flatter on the page, the corners are still seen; a thousand times, they are not.
        assert_eq!(thinned(&steps, (10.0, 1.0)).len(), 4);
        assert_eq!(thinned(&steps, (10.0, 0.001)), [(0.0, 1.0), (4.0, 3.0)]);
        assert_eq!(thinned(&[], (1.0, 1.0)), []);
        assert_eq!(thinned(&[(1.0, 2.0)], (1.0, 1.0)), [(1.0, 2.0)]);
        // A curve that goes there and back is not one straight line.
        let back = [(0.0, 0.0), (5.0, 0.0), (0.0, 0.0)];
        assert_eq!(thinned(&back, (1.0, 1.0)), back);
    }

    #[test]
    fn nothing_that_is_left_out_is_seen() {
        let wave: Vec<(f64, f64)> = (0..400).map(|i| f64::from(i) * 0.25).map(|x| (x, (x * 0.2).sin())).collect();
        let per = (9.0, 2.0);
        let thin = thinned(&wave, per);
        assert!(thin.len() < 120, "{}", thin.len());
        for point in &wave {
            let near = thin.windows(2).map(|ends| off_line(*point, [ends[0], ends[1]], per)).fold(f64::MAX, f64::min);
            assert!(near <= UNSEEN, "{near}");
        }
    }
}
