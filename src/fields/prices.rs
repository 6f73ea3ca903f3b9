//! What a change is worth to a shop that looks for one: the smaller number is made sooner.

use super::{Field, optional};

const fn price(path: &'static str, usual: f64) -> Field {
    optional(path, "", 0.1, 1000.0, usual)
}

/// The price of each kind of change, in the order of `job::ChangeKind::ALL`. The usual order is common practice, no source: settings first,
/// then what is in stock, then what the customer must allow, then other set-ups and machines.
pub const CHANGE_PRICES: [Field; 18] = [
    price("change_prices.wish", 1.0),
    price("change_prices.speed", 1.0),
    price("change_prices.cut", 2.0),
    price("change_prices.tools", 3.0),
    price("change_prices.hold", 3.0),
    price("change_prices.method", 3.0),
    price("change_prices.turn_round", 3.0),
    price("change_prices.bar", 4.0),
    price("change_prices.straightness", 4.0),
    price("change_prices.collet", 4.0),
    price("change_prices.tray", 4.0),
    price("change_prices.stop", 5.0),
    price("change_prices.grip", 5.0),
    price("change_prices.sleeve", 6.0),
    price("change_prices.set_up", 7.0),
    price("change_prices.drawing", 8.0),
    price("change_prices.shop_machine", 8.0),
    price("change_prices.machine", 12.0),
];
