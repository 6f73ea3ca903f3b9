//! Feed for a wanted roughness.
//!
//! Sources: Tabellenbuch Metall, "Rautiefe in Abhängigkeit vom Spitzenradius und Vorschub" (from memory), printed to 0.01
//! mm; feeds for Ra with the usual rounding Rt = 4 Ra: arithmetic. Tolerance: printed digits.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::mechanics::cutting::feed_for_roughness_mm;

fn handbook() -> Vec<Row> {
    let mut t = Table::new(
        "Tabellenbuch Metall, Rautiefe in Abhängigkeit vom Spitzenradius und Vorschub",
        Standing::Memory,
        Agreement::Printed,
    );
    let table = [
        (1.6, ["0.07", "0.10", "0.12", "0.14"]),
        (4.0, ["0.11", "0.16", "0.20", "0.23"]),
        (10.0, ["0.18", "0.25", "0.31", "0.36"]),
        (16.0, ["0.23", "0.32", "0.39", "0.45"]),
        (25.0, ["0.28", "0.40", "0.49", "0.57"]),
    ];
    for (rth, printed) in table {
        for (r, printed) in [0.4, 0.8, 1.2, 1.6].into_iter().zip(printed) {
            t.printed(format!("feed for Rth {rth} µm, r {r}, mm"), printed, feed_for_roughness_mm(r, rth / 4.0));
        }
    }
    t.done()
}

fn feed_for_ra() -> Vec<Row> {
    let mut t = Table::new("f = √(8 r Rt), Rt = 4 Ra, arithmetic", Standing::Derived, Agreement::Printed);
    let ra = [0.4, 0.8, 1.6, 3.2];
    for (r, printed) in [(0.4, ["0.072", "0.101", "0.143", "0.202"]), (0.2, ["0.051", "0.072", "0.101", "0.143"])] {
        for (ra, printed) in ra.into_iter().zip(printed) {
            t.printed(format!("feed for Ra {ra} µm, r {r}, mm"), printed, feed_for_roughness_mm(r, ra));
        }
    }
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [handbook(), feed_for_ra()].concat()
}

#[test]
fn val_handbook_feeds() {
    assert_agree(&handbook());
}

#[test]
fn val_feeds_for_ra() {
    assert_agree(&feed_for_ra());
}
