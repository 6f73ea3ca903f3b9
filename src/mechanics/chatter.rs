//! Regenerative chatter: the depth of cut below which a cut is stable at any speed.
//!
//! The limit is `b_lim = 1/(2 K_f |min Re G|)` with `G` the receptance at the tool and `K_f = kc q cos²(c)`, where `kc` is the main force
//! over the area `ap f`, `q` the in-plane force as a share of the main force and `c` the direction of all in-plane force against the
//! radius ([`cutting`](super::cutting)). A radial motion `y` changes the chip thickness by `y cos c`. This changes the in-plane force
//! by `kc q b y cos c`, and its radial part by `kc q b y cos² c`.
//! Source of the limit: Tobias & Fishwick, Trans. ASME 80 (1958); Tlusty & Polacek (1963) (both from memory). The
//! projection is derived here.

use super::modes::Mode;
use super::receptance::Share;

/// The golden section, and the number of steps of the search for a minimum. They narrow the interval to a hundred-thousandth of its
/// width; near a minimum the error of the value goes with the square of this.
const GOLDEN: f64 = 0.618_033_988_749_894_9;
const NARROWINGS: usize = 24;

/// Limit of the depth of cut, mm, for a cutting stiffness for each mm of depth (N/mm²) and `|min Re G|` (mm/N). Infinite if the
/// flexibility is zero.
pub fn depth_limit_mm(cutting_stiffness: f64, least_real_mm_per_n: f64) -> f64 {
    1.0 / (2.0 * cutting_stiffness * least_real_mm_per_n)
}

/// Upper bound of `|min Re G|` from the static flexibility alone: `G(0)/(4ζ(1+ζ))`. Derived here: the real part of a mode is at least
/// `-φ²/(4ζ(1+ζ)ω²)`, and the values `φ²/ω²` of all modes add up to `G(0)`. The bound assumes that all modes are worst at one frequency.
pub fn least_real_bound(static_mm_per_n: f64, damping: f64) -> f64 {
    static_mm_per_n / (4.0 * damping * (1.0 + damping))
}

/// `|min Re G|` at a node, and the part of it that stands for modes left out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeastReal {
    /// The value, mm/N; never below the exact one.
    pub mm_per_n: f64,
    /// Share of the value that is the bound for the modes left out, from their static flexibility.
    pub left_out: f64,
}

/// `|min Re G|` at a node, from modes (unit modal mass) with one damping ratio, and the static flexibility there.
///
/// Modes that are not given count with the bound from their static flexibility ([`least_real_bound`]). It is usual to count them as
/// static, but their positive real part would raise the curve. This can hide the minimum where the tool is next to a support,
/// because the low modes hardly move there. So the value is never too small; add modes until `left_out` is small.
pub fn least_real(modes: &[Mode], node: usize, static_mm_per_n: f64, damping: f64) -> LeastReal {
    let shares: Vec<Share> = modes.iter().map(|m| Share { omega: m.omega, per_t: m.shape[node][0].powi(2) }).collect();
    least_real_of(&shares, static_mm_per_n, damping)
}

/// As [`least_real`], from the share of each mode in the receptance at the node.
pub fn least_real_of(shares: &[Share], static_mm_per_n: f64, damping: f64) -> LeastReal {
    let in_modes: f64 = shares.iter().map(|s| s.per_t / (s.omega * s.omega)).sum();
    let left_out = least_real_bound((static_mm_per_n - in_modes).max(0.0), damping);
    let real = |w: f64| {
        let part = |mode: &Share| {
            let (d, s) = (mode.omega * mode.omega - w * w, 2.0 * damping * mode.omega * w);
            mode.per_t * d / (d * d + s * s)
        };
        shares.iter().map(part).sum::<f64>()
    };
    let mut least: f64 = 0.0;
    for wi in shares.iter().map(|s| s.omega) {
        // The real part of a single mode is least at ω√(1+2ζ). Other modes shift this frequency a little, so a golden-section
        // search looks around it.
        let (mut low, mut high) = (wi, wi * (1.0 + 4.0 * damping));
        let inside = |low: f64, high: f64| [high - GOLDEN * (high - low), low + GOLDEN * (high - low)];
        let [mut a, mut b] = inside(low, high);
        let (mut at_a, mut at_b) = (real(a), real(b));
        for _ in 0..NARROWINGS {
            if at_a < at_b {
                (high, b, at_b) = (b, a, at_a);
                a = inside(low, high)[0];
                at_a = real(a);
            } else {
                (low, a, at_a) = (a, b, at_b);
                b = inside(low, high)[1];
                at_b = real(b);
            }
        }
        least = least.min(at_a).min(at_b);
    }
    let mm_per_n = left_out - least;
    LeastReal { mm_per_n, left_out: if mm_per_n > 0.0 { left_out / mm_per_n } else { 0.0 } }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_does_not_move_has_no_limit() {
        let still = least_real_of(&[], 0.0, 0.02);
        assert_eq!((still.mm_per_n, still.left_out), (0.0, 0.0));
        assert!(depth_limit_mm(250.0, still.mm_per_n).is_infinite());
        // Without modes the whole value is the bound: 1e-3/(4 · 0.25 · 1.25).
        let bound = least_real_of(&[], 1e-3, 0.25);
        assert!((bound.mm_per_n - 8e-4).abs() < 1e-15 && bound.left_out == 1.0);
    }

    /// One mode of 20 N/µm and damping ratio 0.03 with a cutting stiffness of 1500 N/mm²: 0.824 mm, by hand 2kζ(1+ζ)/K.
    #[test]
    fn a_single_mode_has_the_textbook_limit() {
        let omega: f64 = 1000.0;
        let shape = vec![[(omega * omega / 20_000.0).sqrt(), 0.0]];
        let least = least_real(&[Mode { omega, shape }], 0, 1.0 / 20_000.0, 0.03).mm_per_n;
        assert!((depth_limit_mm(1500.0, least) - 0.824).abs() < 1e-3);
        assert!(least <= least_real_bound(1.0 / 20_000.0, 0.03) * (1.0 + 1e-9));
    }
}
