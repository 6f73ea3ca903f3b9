//! The one horizontal axis of all panels.

use crate::job::plan::Plan;
use crate::lang::Measure;

/// Left and right edge of the plots. Captions stand left of them, the figures of each stage right of them.
const PLOT_LEFT: f64 = 96.0;
/// Room for the figures of each stage.
pub const FIGURES: f64 = 164.0;
/// Room for a tick with its number.
const TICK: f64 = 50.0;

/// Room behind the part-off face, as a share of the length.
const ROOM_BEHIND: f64 = 0.03;

/// The bush is drawn whole behind the part-off face if it does not take more than this share of the length.
const BUSH_SHARE: f64 = 0.12;

/// From millimetres along the shaft to the page.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Axis {
    /// Page place of the front face.
    pub left: f64,
    /// Page units per mm.
    pub scale: f64,
    /// Length shown, mm.
    pub max_mm: f64,
}

impl Axis {
    /// Page place of a place on the shaft.
    pub fn x(&self, at_mm: f64) -> f64 {
        self.left + at_mm * self.scale
    }

    /// Page place of a place on the shaft, kept within the plot.
    pub fn x_clamped(&self, at_mm: f64) -> f64 {
        self.x(at_mm.clamp(0.0, self.max_mm))
    }

    /// Width of the plot.
    pub fn width(&self) -> f64 {
        self.max_mm * self.scale
    }

    /// Right edge of the plot.
    pub fn right(&self) -> f64 {
        self.left + self.width()
    }

    /// Places of the ticks in mm: about ten where there is room, at 1, 2 or 5 times a power of ten of the unit told.
    pub fn ticks(&self) -> Vec<f64> {
        round_mm_ticks(0.0, self.max_mm, (self.width() / TICK).clamp(4.0, 10.0))
    }
}

/// Round numbers of a range: at most about `count`, at 1, 2 or 5 times a power of ten.
pub fn round_ticks(from: f64, to: f64, count: f64) -> Vec<f64> {
    let rough = (to - from) / count;
    let power = 10f64.powf(rough.log10().floor());
    let step = [1.0, 2.0, 5.0, 10.0].iter().map(|m| m * power).find(|s| *s >= rough).unwrap_or(rough);
    let first = (from / step - 1e-9).ceil();
    (0..).map(|i| (first + f64::from(i)) * step).take_while(|t| *t <= to + 1e-9 * step).collect()
}

/// As [`round_ticks`], of lengths in mm: round numbers of the unit told.
pub fn round_mm_ticks(from_mm: f64, to_mm: f64, count: f64) -> Vec<f64> {
    let of_mm = Measure::Place.told(1.0);
    round_ticks(from_mm * of_mm, to_mm * of_mm, count).into_iter().map(|tick| tick / of_mm).collect()
}

/// The axis of a plan. It ends behind the bush at part-off if the bush takes little room. It is so long that the bar in
/// true proportions fits into twice `profile_half`. `right`: the right edge of its plot.
pub fn axis(plan: &Plan, diameter_mm: f64, profile_half: f64, right: f64) -> Axis {
    let parted_mm = plan.length_mm + plan.layout.part_off_width_mm.max(0.0);
    let bush_mm = plan.layout.gap_mm.max(0.0) + plan.layout.bush_land_mm.unwrap_or(0.0).max(0.0);
    let behind_mm = bush_mm.min(BUSH_SHARE * plan.length_mm) + ROOM_BEHIND * plan.length_mm;
    let width = right - PLOT_LEFT;
    let max_mm = (parted_mm + behind_mm).max(diameter_mm * width / (2.0 * profile_half));
    Axis { left: PLOT_LEFT, scale: width / max_mm, max_mm }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lang::{self, Spoken, Units};

    #[test]
    fn ticks_stand_at_round_numbers() {
        let axis = Axis { left: 0.0, scale: 1.0, max_mm: 1010.0 };
        assert_eq!(axis.ticks(), [0.0, 200.0, 400.0, 600.0, 800.0, 1000.0]);
        let short = Axis { left: 0.0, scale: 20.0, max_mm: 46.0 };
        assert_eq!(short.ticks().len(), 10);
        assert_eq!(short.ticks()[1], 5.0);
        let narrow = Axis { scale: 4.5, ..short };
        assert_eq!(narrow.ticks(), [0.0, 20.0, 40.0], "each tick has room for its number");
    }
    #[test]
    fn ticks_in_inch_stand_at_round_numbers_of_inches() {
        let axis = Axis { left: 0.0, scale: 1.0, max_mm: 1010.0 };
        let ticks = lang::speaking(Spoken::default().in_units(Units::Inch), || axis.ticks());
        let inches: Vec<f64> = ticks.iter().map(|mm| (mm / 25.4 * 1e6).round() / 1e6).collect();
        assert_eq!(inches, [0.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0]);
    }
}
