//! The depth of cut below which no speed chatters, for one mode.
//!
//! Sources: `b_lim = 1/(2 K |min Re G|)`: Tobias & Fishwick, Trans. ASME 80 (1958); Tlusty & Polacek, ASME Prod. Eng.
//! Res. Conf. (1963); both from memory. Numbers: scan of Re G, worked out for this project; no printed example was
//! read. Tolerance: printed digits. `.ci/reference.py` sets the limit against a simulated cut in time.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::mechanics::chatter::{depth_limit_mm, least_real};
use spanhold::mechanics::modes::Mode;

const SOURCE: &str = "Tobias & Fishwick (1958); Tlusty & Polacek (1963); numbers by a scan of Re G";

/// One mode of `k` N/mm: modal mass one tonne, so `φ² = ω²/k`.
fn single(k: f64, damping: f64) -> f64 {
    let omega: f64 = 1234.5;
    let mode = Mode { omega, shape: vec![[omega / k.sqrt(), 0.0]] };
    least_real(&[mode], 0, 1.0 / k, damping).mm_per_n
}

fn example() -> Vec<Row> {
    let mut t = Table::new(SOURCE, Standing::Derived, Agreement::Printed);
    let least = single(20_000.0, 0.03);
    t.printed("k 20 N/µm, ζ 0.03: min Re G, m/N", "-4.0453e-7", -1e-3 * least);
    t.printed("k 20 N/µm, ζ 0.03, K 1500 N/mm²: depth limit, mm", "0.824", depth_limit_mm(1500.0, least));
    t.done()
}

fn table() -> Vec<Row> {
    let mut t = Table::new(SOURCE, Standing::Derived, Agreement::Printed);
    let table = [
        (1.0, ["0.013", "0.027", "0.041", "0.070"]),
        (5.0, ["0.067", "0.136", "0.206", "0.350"]),
        (10.0, ["0.135", "0.272", "0.412", "0.700"]),
        (20.0, ["0.269", "0.544", "0.824", "1.400"]),
        (50.0, ["0.673", "1.360", "2.060", "3.500"]),
    ];
    for (k, printed) in table {
        for (damping, printed) in [0.01, 0.02, 0.03, 0.05].into_iter().zip(printed) {
            let ours = depth_limit_mm(1500.0, single(1000.0 * k, damping));
            t.printed(format!("depth limit for K 1500 N/mm², k {k} N/µm, ζ {damping}, mm"), printed, ours);
        }
    }
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [example(), table()].concat()
}

#[test]
fn val_single_mode_example() {
    assert_agree(&example());
}

#[test]
fn val_depth_limit_table() {
    assert_agree(&table());
}
