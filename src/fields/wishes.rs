//! Numbers of fixed wishes and of a family of parts.

use super::{Field, SHAFT_LENGTH_MAX_MM, required};

/// Turned length of a hand-over that must be made.
pub const WISH_HAND_OVER: Field = required("wishes.hand_over_at", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// The same turned length, if the wish also gives the nose.
pub const WISH_AT: Field = required("wishes.hand_over_at.at", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// Where the nose is at that hand-over.
pub const WISH_NOSE: Field = required("wishes.hand_over_at.nose", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// An end of a stretch that must not be gripped.
pub const WISH_NEVER_GRIP: Field = required("wishes.never_grip", "mm", 0.0, SHAFT_LENGTH_MAX_MM);
/// Most hand-overs.
pub const WISH_AT_MOST: Field = required("wishes.at_most_hand_overs", "", 0.0, 100.0);
/// First length of a family.
pub const VARY_LENGTH_FROM: Field = required("vary.length.from", "mm", 0.01, SHAFT_LENGTH_MAX_MM);
/// Last length of a family.
pub const VARY_LENGTH_TO: Field = required("vary.length.to", "mm", 0.01, SHAFT_LENGTH_MAX_MM);
/// Step of the length.
pub const VARY_LENGTH_STEP: Field = required("vary.length.step", "mm", 0.001, SHAFT_LENGTH_MAX_MM);
/// First diameter of a family.
pub const VARY_DIAMETER_FROM: Field = required("vary.diameter.from", "mm", 0.1, 120.0);
/// Last diameter of a family.
pub const VARY_DIAMETER_TO: Field = required("vary.diameter.to", "mm", 0.1, 120.0);
/// Step of the diameter.
pub const VARY_DIAMETER_STEP: Field = required("vary.diameter.step", "mm", 0.001, 120.0);
