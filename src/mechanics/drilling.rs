//! Thrust of a twist drill, by the specific cutting force on its two lips.
//!
//! Feed `0.02 d` a turn, chip thickness `0.43 f` a lip (point angle near 118°), thrust share 0.55: common practice, no
//! source.

use super::cutting::Resistance;

/// Feed of a drill, mm/rev.
pub fn feed_mm(diameter_mm: f64) -> f64 {
    0.02 * diameter_mm
}

/// Specific cutting force at the drill's lips, N/mm².
fn specific_n_per_mm2(resistance: &Resistance, diameter_mm: f64) -> f64 {
    resistance.specific_n_per_mm2(0.43 * feed_mm(diameter_mm))
}

/// Thrust along the drill, `0.55 kc f d / 2`, N.
pub fn thrust_n(resistance: &Resistance, diameter_mm: f64) -> f64 {
    0.55 * specific_n_per_mm2(resistance, diameter_mm) * feed_mm(diameter_mm) * diameter_mm / 2.0
}
