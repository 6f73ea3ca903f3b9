//! Numbers of the shop's file that a job does not have.

use super::{Field, required};

/// Most items of a list in the shop's file.
pub const SHOP_ITEMS_MAX: usize = 500;

/// Rate of a machine.
pub const SHOP_PER_HOUR: Field = required("shop.machines.per_hour", "", 0.0, 1e6);
/// Price of a grade.
pub const SHOP_PRICE: Field = required("shop.materials.price_per_kg", "", 0.0, 1e6);
/// Bar diameter.
pub const SHOP_BAR_DIAMETER: Field = required("shop.bars.diameter", "mm", 0.1, 120.0);
/// Bar length.
pub const SHOP_BAR_LENGTH: Field = required("shop.bars.bar_length", "mm", 50.0, 12_000.0);
/// Price of a bar.
pub const SHOP_BAR_PRICE: Field = required("shop.bars.price_per_kg", "", 0.0, 1e6);
