//! What a change is worth to a shop that looks for one: the smaller number is made sooner.

use super::{Field, optional};

const fn price(path: &'static str, what: &'static str, usual: f64) -> Field {
    optional(path, what, "", 0.1, 1000.0, usual)
}

/// The price of each kind of change, in the order of `job::ChangeKind::ALL`. The usual order is common practice, no source: settings first,
/// then what is in stock, then what the customer must allow, then other set-ups and machines.
pub const CHANGE_PRICES: [Field; 18] = [
    price("change_prices.wish", "rank of dropping a wish of the job", 1.0),
    price("change_prices.speed", "rank of turning more slowly", 1.0),
    price("change_prices.cut", "rank of another depth of cut, a smaller feed or more strokes", 2.0),
    price("change_prices.tools", "rank of a second tool in the cut", 3.0),
    price("change_prices.hold", "rank of another holding: guide bush or not, collet or centre, less stroke", 3.0),
    price("change_prices.method", "rank of another way to make a thread or a socket", 3.0),
    price("change_prices.turn_round", "rank of making the part from its other end", 3.0),
    price("change_prices.bar", "rank of another bar diameter", 4.0),
    price("change_prices.straightness", "rank of a straighter bar", 4.0),
    price("change_prices.collet", "rank of another collet", 4.0),
    price("change_prices.tray", "rank of a tray that takes the part", 4.0),
    price("change_prices.stop", "rank of a stop on a surface that must not have one", 5.0),
    price("change_prices.grip", "rank of a grip on a surface that must not be gripped", 5.0),
    price("change_prices.sleeve", "rank of sleeves in the counter-spindle", 6.0),
    price("change_prices.set_up", "rank of work in a second set-up", 7.0),
    price("change_prices.drawing", "rank of a change of the drawing", 8.0),
    price("change_prices.shop_machine", "rank of another machine of the shop", 8.0),
    price("change_prices.machine", "rank of a machine that can do more", 12.0),
];
