//! Infeed of single-point threading passes. Every pass cuts about the same chip area, so each infeed is smaller than the one before.

/// Chip area of the first pass as a share of the area of a later pass. It is small because only the sharp tip of the edge cuts.
const FIRST_SHARE: f64 = 0.3;
/// Depth of an external thread over its pitch, `17√3/48` (ISO 68-1 root, DIN 13 `h3`).
pub const DEPTH_PER_PITCH: f64 = 0.613_435;

/// Infeed of each of `passes` passes, mm, in the order they are cut; the sum is the depth.
///
/// Depth after pass `n` of `N` for a total depth `a`: `a √((n-1)/(N-1))`; after the first pass `a √(0.3/(N-1))`.
///
/// - **Source**: usual rule of threading-tool handbooks, from memory, not re-read.
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
