//! Cutting forces: Kienzle's law, the force in the plane of the chip, and examples by specific energy.
//!
//! Sources: beside each table. No published Kienzle example with its printed answer could be read, so those rows check
//! arithmetic only; the force direction is the project's own rule with a share of 0.55 (common practice, no source).
//! Axes: main force along the cutting speed, passive force radial (away from the tool), feed force along the axis.
//! Tolerance: printed digits.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::mechanics::cutting::{Cut, Edge, Resistance, cut};
use spanhold::units;
use std::f64::consts::PI;

fn force(kc11: f64, mc: f64, nose: f64, approach_deg: f64, ap: f64, feed: f64) -> Cut {
    let resistance = Resistance { kc11_n_per_mm2: kc11, mc, in_plane_share: 0.55 };
    cut(&resistance, &Edge { nose_radius_mm: nose, approach_rad: approach_deg.to_radians() }, ap, feed)
}

/// A share marked `~` was rounded twice: 0.51449 by way of 0.5145 to 0.515, 0.42948 by way of 0.4295 to 0.430.
/// C45 (1659/0.21): depth, nose radius, approach angle, feed; mean chip, main force, chord angle, shares.
fn nose_table() -> Vec<Row> {
    let mut law = Table::new(
        "Kienzle's law on the mean chip thickness, chord after Colwell, Trans. ASME 76 (1954)",
        Standing::Derived,
        Agreement::Printed,
    );
    let shares_of = |agreement| {
        Table::new("in-plane force 0.55 of the main force, normal to the chord", Standing::Practice, agreement)
    };
    let (mut shares, mut twice) = (shares_of(Agreement::Printed), shares_of(Agreement::RoundedTwice));
    let table = [
        (0.05, 0.4, 90.0, 0.1, ["0.0247", "18.04", "14.48", "0.533", "0.138"]),
        (0.1, 0.2, 90.0, 0.1, ["0.0477", "31.42", "30.00", "0.476", "0.275"]),
        (0.1, 0.4, 45.0, 0.1, ["0.0346", "33.63", "20.70", "~0.515", "~0.195"]),
        (0.2, 0.2, 90.0, 0.1, ["0.0637", "59.16", "45.00", "0.389", "0.389"]),
        (0.2, 0.4, 90.0, 0.1, ["0.0477", "62.85", "30.00", "0.476", "0.275"]),
        (0.5, 0.2, 90.0, 0.1, ["0.0814", "140.47", "68.20", "0.204", "0.511"]),
        (0.5, 0.4, 45.0, 0.1, ["0.0584", "150.59", "36.91", "0.440", "0.330"]),
        (0.5, 0.4, 90.0, 0.1, ["0.0687", "145.59", "51.34", "0.344", "~0.430"]),
        (1.0, 0.4, 45.0, 0.1, ["0.0640", "295.50", "40.63", "0.417", "0.358"]),
        (1.0, 0.4, 90.0, 0.1, ["0.0814", "280.93", "68.20", "0.204", "0.511"]),
        (1.0, 0.8, 90.0, 0.1, ["0.0687", "291.17", "51.34", "0.344", "~0.430"]),
        (2.0, 0.4, 90.0, 0.1, ["0.0898", "550.47", "78.69", "0.108", "0.539"]),
        (2.0, 0.8, 60.0, 0.3, ["0.22344", "1363.56", "51.05", "0.346", "0.428"]),
    ];
    for (ap, nose, approach, feed, printed) in table {
        let c = force(1659.0, 0.21, nose, approach, ap, feed);
        let name = |what: &str| format!("ap {ap}, r {nose}, κ {approach}°, f {feed}, C45 1659/0.21: {what}");
        law.printed(name("mean chip, mm"), printed[0], c.mean_chip_mm);
        law.printed(name("Fc, N"), printed[1], c.main_n);
        law.printed(name("chord angle, °"), printed[2], c.chord_rad.to_degrees());
        for (what, printed, part) in [("Fp/Fc", printed[3], c.passive_n), ("Ff/Fc", printed[4], c.feed_n)] {
            match printed.strip_prefix('~') {
                Some(printed) => twice.printed(name(what), printed, part / c.main_n),
                None => shares.printed(name(what), printed, part / c.main_n),
            }
        }
    }
    [law.done(), shares.done(), twice.done()].concat()
}

/// A sharp nose is the plain Kienzle law: `h = f sin κ`, `b = ap/sin κ`.
fn kienzle() -> Vec<Row> {
    let mut t = Table::new("Kienzle's law by hand (arithmetic only)", Standing::Derived, Agreement::Printed);
    let hard = force(2220.0, 0.14, 0.0, 60.0, 2.0, 0.3);
    let soft = force(1659.0, 0.21, 0.0, 60.0, 2.0, 0.3);
    let name = |what: &str| format!("ap 2, f 0.3, κ 60°: {what}");
    t.printed(name("h, mm"), "0.25981", hard.mean_chip_mm);
    t.printed(name("b, mm"), "2.3094", hard.edge_mm);
    t.printed(name("C45 2220/0.14, kc, N/mm²"), "2681.0", hard.specific_n_per_mm2);
    t.printed(name("C45 2220/0.14, Fc, N"), "1608.6", hard.main_n);
    t.printed(name("C45 2220/0.14, power at 150 m/min, kW"), "4.02", hard.main_n * 150.0 / 60_000.0);
    t.printed(name("C45 1659/0.21, kc, N/mm²"), "2201.8", soft.specific_n_per_mm2);
    t.printed(name("C45 1659/0.21, Fc, N"), "1321.1", soft.main_n);
    t.printed(name("C45 1659/0.21, power at 150 m/min, kW"), "3.30", soft.main_n * 150.0 / 60_000.0);
    let plain = [
        ("C45 2220/0.14", 2220.0, 0.14, 1.0, 0.1, "306.4"),
        ("C45 1659/0.21", 1659.0, 0.21, 1.0, 0.1, "269.1"),
        ("42CrMo4 2500/0.26", 2500.0, 0.26, 1.0, 0.1, "454.9"),
        ("42CrMo4 1773/0.17", 1773.0, 0.17, 1.0, 0.1, "262.2"),
        ("16MnCr5 2100/0.26", 2100.0, 0.26, 1.0, 0.1, "382.1"),
        ("16MnCr5 1411/0.30", 1411.0, 0.30, 1.0, 0.1, "281.5"),
        ("1.4301 2350/0.21", 2350.0, 0.21, 0.5, 0.05, "110.2"),
        ("Ti-6Al-4V 1370/0.21", 1370.0, 0.21, 0.5, 0.05, "64.25"),
    ];
    for (material, kc11, mc, ap, feed, printed) in plain {
        let c = force(kc11, mc, 0.0, 90.0, ap, feed);
        t.printed(format!("ap {ap}, f {feed}, κ 90°, {material}: Fc, N"), printed, c.main_n);
    }
    t.done()
}

/// Specific energy in W·s/mm³ is a specific force in GPa that does not depend on the chip (`mc` = 0).
fn specific_energy() -> Vec<Row> {
    let source = "Kalpakjian & Schmid, Manufacturing Engineering and Technology, turning chapter";
    let power_w = |c: &Cut, mean_diameter: f64| c.main_n * units::rad_per_s(400.0) * mean_diameter / 2.0 / 1000.0;

    let mut steel = Table::new(source, Standing::Derived, Agreement::Printed);
    let name = |what: &str| format!("304 rod 12.5 → 12.0, f 0.5, 400 rev/min: {what}");
    let (high, low) = (force(4000.0, 0.0, 0.0, 90.0, 0.25, 0.5), force(3000.0, 0.0, 0.0, 90.0, 0.25, 0.5));
    steel.printed(name("4 W·s/mm³, force on the mean radius, N"), "500", high.main_n);
    steel.printed(name("4 W·s/mm³, power, W"), "128", power_w(&high, 12.25));
    steel.printed(name("4 W·s/mm³, torque, N·m"), "3.06", high.main_n * 12.25 / 2000.0);
    steel.printed(name("3 W·s/mm³, force on the mean radius, N"), "375", low.main_n);
    steel.printed(name("3 W·s/mm³, power, W"), "96.2", power_w(&low, 12.25));

    let mut titanium = Table::new(source, Standing::Verified("a page solving it"), Agreement::Printed);
    let name = |what: &str| format!("titanium rod 75 → 65, f 0.5, 400 rev/min: {what}");
    let (low, high) = (force(3000.0, 0.0, 0.0, 90.0, 5.0, 0.5), force(4100.0, 0.0, 0.0, 90.0, 5.0, 0.5));
    titanium.printed(name("3.0 W·s/mm³, power, kW"), "10.996", power_w(&low, 70.0) / 1000.0);
    titanium.printed(name("4.1 W·s/mm³, power, kW"), "15.027", power_w(&high, 70.0) / 1000.0);
    // The page divides the power by the speed of the outer diameter; our force is the one on the mean radius.
    titanium.printed(name("3.0 W·s/mm³, force on the outer radius, kN"), "7.0", low.main_n * 70.0 / 75.0 / 1000.0);
    titanium.printed(name("4.1 W·s/mm³, force on the outer radius, kN"), "9.57", high.main_n * 70.0 / 75.0 / 1000.0);
    [steel.done(), titanium.done()].concat()
}

fn speed() -> Vec<Row> {
    let mut verified = Table::new(
        "Kalpakjian & Schmid, Manufacturing Engineering and Technology, turning chapter",
        Standing::Verified("a page solving it"),
        Agreement::Share(0.001),
    );
    verified.printed("d 75 at 94.25 m/min, rev/min", "400", units::spindle_rpm(94.25, 75.0));
    let mut t = Table::new("n = 1000 vc/(πd), arithmetic", Standing::Derived, Agreement::Printed);
    t.printed("d 20 at 150 m/min, rev/min", "2387", units::spindle_rpm(150.0, 20.0));
    t.printed(
        "d 12.5 at 400 rev/min, m/min, by way of rad/s",
        "15.7",
        units::rad_per_s(400.0) * 12.5 / 2.0 * 60.0 / 1000.0,
    );
    let volume = PI * 12.25 * 0.25 * 0.5 * 400.0;
    assert!((volume - 1924.0).abs() < 0.5, "the example's removal rate fixes its mean diameter");
    [verified.done(), t.done()].concat()
}

/// The tool's contour as a chain of short pieces: the nose from its lowest point up, then the straight edge. Length of
/// what is within the depth of cut, and the angle of its chord.
fn contour(ap: f64, nose: f64, approach: f64) -> (f64, f64) {
    const PIECES: u32 = 200_000;
    let reach = nose * approach + ap / approach.sin();
    let point = |along: f64| {
        let turned = (along / nose).min(approach);
        let rest = (along - nose * approach).max(0.0);
        [nose * turned.sin() + rest * approach.cos(), nose * (1.0 - turned.cos()) + rest * approach.sin()]
    };
    let (mut last, mut length) = ([0.0, 0.0], 0.0);
    for i in 1..=PIECES {
        let next = point(reach * f64::from(i) / f64::from(PIECES));
        if next[1] > ap {
            break;
        }
        length += (next[0] - last[0]).hypot(next[1] - last[1]);
        last = next;
    }
    (length, last[1].atan2(last[0]).to_degrees())
}

fn edge_in_cut() -> Vec<Row> {
    let mut t = Table::new(
        "geometry of a nose with a straight edge",
        Standing::Computed("adding up a fine chain along the tool's contour"),
        Agreement::Share(0.001),
    );
    let cases =
        [(0.05, 0.4, 93.0), (0.4, 0.4, 90.0), (0.3, 0.4, 75.0), (1.5, 0.4, 93.0), (2.0, 0.8, 45.0), (3.0, 0.2, 105.0)];
    for (ap, nose, approach) in cases {
        let ours = force(1659.0, 0.21, nose, approach, ap, 0.1);
        let (length, chord) = contour(ap, nose, f64::to_radians(approach));
        let name = |what: &str| format!("edge in cut, ap {ap}, r {nose}, κ {approach}°: {what}");
        t.closed(name("length, mm"), length, ours.edge_mm);
        t.closed(name("angle of the chord, °"), chord, ours.chord_rad.to_degrees());
    }
    // By hand: a quarter of the nose is r π/2 long and its chord stands at 45°; at κ 90° all beyond it is straight.
    let mut hand = Table::new("by hand: r π/2 and 45°; r π/2 + (ap - r)", Standing::Derived, Agreement::Printed);
    let (quarter, beyond) = (force(1659.0, 0.21, 0.4, 90.0, 0.4, 0.1), force(1659.0, 0.21, 0.4, 90.0, 1.4, 0.1));
    hand.printed("ap = r = 0.4, κ 90°: length of the edge, mm", "0.62832", quarter.edge_mm);
    hand.printed("ap = r = 0.4, κ 90°: angle of the chord, °", "45.000", quarter.chord_rad.to_degrees());
    hand.printed("ap 1.4, r 0.4, κ 90°: length of the edge, mm", "1.62832", beyond.edge_mm);
    hand.printed("ap 1.4, r 0.4, κ 90°: angle of the chord, °", "74.055", beyond.chord_rad.to_degrees());
    [t.done(), hand.done()].concat()
}

#[test]
fn val_edge_in_cut() {
    assert_agree(&edge_in_cut());
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [nose_table(), edge_in_cut(), kienzle(), specific_energy(), speed()].concat()
}

#[test]
fn val_forces_with_a_nose_radius() {
    assert_agree(&nose_table());
}

#[test]
fn val_kienzle_by_hand() {
    assert_agree(&kienzle());
}

#[test]
fn val_turning_examples_by_specific_energy() {
    assert_agree(&specific_energy());
    assert_agree(&speed());
}
