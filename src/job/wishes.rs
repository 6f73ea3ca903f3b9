//! What the user has decided before planning: fixed hand-overs and grips, stretches that must not be gripped, and the
//! largest number of hand-overs. A plan keeps all these wishes. If that is impossible, the message says which of them
//! prevents it.

use super::SAME_MM;
use crate::lang::Measure;
use crate::say;

/// Fixed wishes. All are empty if the job has none.
#[derive(Debug, Clone, PartialEq, Default)]
#[non_exhaustive]
pub struct Wishes {
    /// Hand-overs that must be made, ascending.
    pub hand_overs: Vec<HandOverWish>,
    /// Stretches that no grip may touch.
    pub never_grip: Vec<NeverGrip>,
    /// Largest number of hand-overs of a part, including the first grip.
    pub at_most_hand_overs: Option<usize>,
}

/// A hand-over that must be made.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct HandOverWish {
    /// Turned length at which the counter-spindle takes hold, mm.
    pub at_mm: f64,
    /// Where its nose is then, mm from the front face. None: at the best place.
    pub nose_mm: Option<f64>,
}

/// A stretch that no grip may touch.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct NeverGrip {
    /// Front end, mm.
    pub from_mm: f64,
    /// Rear end, mm.
    pub to_mm: f64,
    /// Its name in messages.
    pub name: String,
}

impl HandOverWish {
    /// The wish in words, to be put after "the wish to".
    pub fn told(&self) -> String {
        match self.nose_mm {
            Some(nose) => {
                say!("wish-hand-over-nose", at = Measure::Place.number(self.at_mm), nose = Measure::Place.number(nose))
            }
            None => say!("wish-hand-over", at = Measure::Place.number(self.at_mm)),
        }
    }
}

impl Wishes {
    /// Whether there are no wishes.
    pub fn is_empty(&self) -> bool {
        self.hand_overs.is_empty() && self.never_grip.is_empty() && self.at_most_hand_overs.is_none()
    }

    /// The hand-over wished at a turned length.
    pub fn hand_over_at(&self, turned_mm: f64) -> Option<&HandOverWish> {
        self.hand_overs.iter().find(|w| (w.at_mm - turned_mm).abs() <= SAME_MM)
    }

    /// Whether the wishes allow the nose at `nose_mm` for a hand-over at a turned length.
    pub fn allow_nose(&self, turned_mm: f64, nose_mm: f64) -> bool {
        let wished = self.hand_over_at(turned_mm).and_then(|w| w.nose_mm);
        wished.is_none_or(|nose| (nose - nose_mm).abs() <= SAME_MM)
    }

    /// Every wish in words, to be put after "the wish to".
    pub fn told(&self) -> Vec<String> {
        let mut told: Vec<String> = self.hand_overs.iter().map(HandOverWish::told).collect();
        told.extend(self.never_grip.iter().map(|n| say!("wish-never-grip", what = n.name)));
        told.extend(self.at_most_hand_overs.map(|n| say!("wish-at-most", number = n)));
        told
    }
}
