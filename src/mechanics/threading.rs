//! Number and infeed of single-point threading passes. Every pass cuts about the same chip area, so each infeed is smaller than the one
//! before.

/// Chip area of the first pass as a share of the area of a later pass. It is small because only the sharp tip of the edge cuts.
const FIRST_SHARE: f64 = 0.3;

/// Shape of the thread, as far as the number of passes depends on it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Profile {
    /// 55° or 60°.
    Sharp {
        /// Whether the material is hard to cut.
        hard: bool,
    },
    /// 30°.
    Trapezoid,
}

/// Pitch (mm) and passes of 55° and 60° threads: the median of seven published tables by pitch, a range counted by its middle.
///
/// - **Source**: tool makers' catalogues of 2011 (p. 1262), 2017 (p. 685), 2019 (p. 404, 415) and 2020 (p. 1636), a table of depths of
///   cut, and a table book of vocational schools. The values are rows of the ledger.
const PASSES: [(f64, f64); 11] = [
    (0.75, 4.0),
    (1.0, 5.0),
    (1.25, 7.0),
    (1.5, 7.0),
    (1.75, 9.5),
    (2.0, 10.0),
    (2.5, 11.75),
    (3.0, 13.75),
    (4.0, 14.5),
    (6.0, 16.5),
    (8.0, 20.0),
];
/// The same for hard materials: the median of the upper ends of the three tables that print ranges.
const PASSES_HARD: [(f64, f64); 12] = [
    (0.5, 5.5),
    (0.75, 6.0),
    (1.0, 8.0),
    (1.25, 9.0),
    (1.5, 10.0),
    (1.75, 12.0),
    (2.0, 12.0),
    (2.5, 14.0),
    (3.0, 16.0),
    (4.0, 18.0),
    (6.0, 22.0),
    (8.0, 25.0),
];
/// The same for trapezoidal threads: the middles of the ranges of the catalogue of 2017.
const PASSES_TRAPEZOID: [(f64, f64); 6] = [(1.5, 5.5), (2.0, 7.5), (3.0, 10.5), (4.0, 12.5), (6.0, 14.0), (8.0, 19.0)];

/// Number of passes of an external thread of one start. Between two pitches of the table it is interpolated, below the first it stays,
/// above the last it grows as between the last two.
///
/// - **Units**: mm.
///
/// ```
/// use spanhold::mechanics::threading::{Profile, passes};
/// assert_eq!([0.5, 1.0, 1.5, 2.0].map(|p| passes(p, Profile::Sharp { hard: false })), [4, 5, 7, 10]);
/// ```
pub fn passes(pitch_mm: f64, profile: Profile) -> usize {
    let table: &[(f64, f64)] = match profile {
        Profile::Sharp { hard: false } => &PASSES,
        Profile::Sharp { hard: true } => &PASSES_HARD,
        Profile::Trapezoid => &PASSES_TRAPEZOID,
    };
    let pair = table.windows(2).find(|w| matches!(w, [_, (p, _)] if pitch_mm <= *p)).or(table.windows(2).last());
    let Some([(p0, n0), (p1, n1)]) = pair else { return 1 };
    (n0 + (n1 - n0) * ((pitch_mm - p0) / (p1 - p0)).max(0.0)).round() as usize
}

/// Infeed of each of `passes` passes, mm, in the order they are cut; the sum is the depth.
///
/// Depth after pass `n` of `N` for a total depth `a`: `a √((n-1)/(N-1))`; after the first pass `a √(0.3/(N-1))`.
///
/// - **Source**: a tool maker's catalogue, 2017, p. 685. Another published rule, `a √(n/N)`, makes a first pass that is 45 to 100 % deeper
///   than those of printed infeeds (see the ledger).
///
/// ```
/// let infeeds = spanhold::mechanics::threading::infeeds_mm(0.94, 6);
/// assert_eq!(infeeds.iter().map(|a| (a * 100.0).round()).collect::<Vec<_>>(), [23.0, 19.0, 17.0, 13.0, 11.0, 10.0]);
/// ```
pub fn infeeds_mm(depth_mm: f64, passes: usize) -> Vec<f64> {
    let reached = |n: usize| match (n, passes) {
        (0, _) => 0.0,
        (n, all) if n >= all => depth_mm,
        (1, all) => depth_mm * (FIRST_SHARE / (all - 1) as f64).sqrt(),
        (n, all) => depth_mm * ((n - 1) as f64 / (all - 1) as f64).sqrt(),
    };
    (1..=passes).map(|n| reached(n) - reached(n - 1)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_passes_add_up_to_the_depth_and_the_area_of_all_but_the_first_is_the_same() {
        let infeeds = infeeds_mm(1.2, 9);
        assert!((infeeds.iter().sum::<f64>() - 1.2).abs() < 1e-12);
        let mut depth = 0.0;
        let areas: Vec<f64> = infeeds
            .iter()
            .map(|a| {
                let before = depth;
                depth += a;
                depth * depth - before * before
            })
            .collect();
        // The first two passes together cut the area that every other pass cuts alone.
        for area in &areas[2..] {
            assert!((area - (areas[0] + areas[1])).abs() < 1e-9, "{areas:?}");
        }
    }

    #[test]
    fn one_pass_takes_it_all_and_none_takes_nothing() {
        assert_eq!(infeeds_mm(0.5, 1), [0.5]);
        assert!(infeeds_mm(0.5, 0).is_empty());
    }
}
