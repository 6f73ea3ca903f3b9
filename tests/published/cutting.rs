//! Cutting forces: the sum along the edge, Kienzle's law, and examples by specific energy.
//!
//! Sources: beside each table. No published Kienzle example with its printed answer could be read, so those rows check
//! arithmetic only. Measured forces are in `forces`.
//! Axes: main force along the cutting speed, passive force radial (away from the tool), feed force along the axis.
//! Tolerance: printed digits; of the sums what eight points leave.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::fields::HEADSTOCK_EFFICIENCY;
use spanhold::mechanics::cutting::{Cut, Edge, Resistance, cut};
use spanhold::process::drive::power_kw;
use spanhold::units;
use std::f64::consts::PI;

fn force(kc11: f64, mc: f64, nose: f64, approach_deg: f64, ap: f64, feed: f64) -> Cut {
    let resistance = Resistance { kc11_n_per_mm2: kc11, mc, in_plane_share: 0.55, passive_floor: 0.0 };
    cut(&resistance, &Edge { nose_radius_mm: nose, approach_rad: approach_deg.to_radians() }, ap, feed)
}

/// A sharp nose is the plain Kienzle law: `h = f sin κ`, `b = ap/sin κ`.
fn kienzle() -> Vec<Row> {
    let mut t = Table::new("Kienzle's law by hand (arithmetic only)", Standing::Derived, Agreement::Printed);
    let hard = force(2220.0, 0.14, 0.0, 60.0, 2.0, 0.3);
    let soft = force(1659.0, 0.21, 0.0, 60.0, 2.0, 0.3);
    let name = |what: &str| format!("ap 2, f 0.3, κ 60°: {what}");
    t.printed(name("C45 2220/0.14, Fc, N"), "1608.6", hard.main_n);
    t.printed(name("C45 2220/0.14, power at 150 m/min, kW"), "4.02", hard.main_n * 150.0 / 60_000.0);
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

/// A tool maker's example: ap 3, f 0.2, 120 m/min, kc 3100 N/mm², a machine coefficient of 80 %.
fn motor() -> Vec<Row> {
    let place = "a tool maker's page on the power of turning, with its example solved";
    let mut t = Table::new("a tool maker's page on cutting power", Standing::Verified(place), Agreement::Printed);
    let c = force(3100.0, 0.0, 0.0, 90.0, 3.0, 0.2);
    // Any diameter gives the same power.
    let torque_nm = c.main_n * 25.0 / 1000.0;
    let kw = power_kw(torque_nm, units::spindle_rpm(120.0, 50.0)) / HEADSTOCK_EFFICIENCY.default.expect("a default");
    t.printed("ap 3, f 0.2, 120 m/min, kc 3100 N/mm²: power of the motor, kW", "4.65", kw);
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

/// Main, passive and feed force of an edge in C45 (1659/0.21) by a fine sum. The thickness of each chip is
/// searched: from a point of the edge square into the chip, until the point was in the tool one feed before or is out of the bar.
fn fine_sum(ap: f64, nose: f64, approach: f64, feed: f64) -> [f64; 3] {
    const PIECES: u32 = 4000;
    let (top, end) = ([nose * approach.sin(), nose * (1.0 - approach.cos())], [approach.cos(), approach.sin()]);
    // Whether a point (along the axis, above the tip of the tool) is in the tool: behind its edge.
    let in_tool = |[z, y]: [f64; 2]| {
        let on_edge = if y <= 0.0 {
            return false;
        } else if y >= top[1] {
            top[0] + (y - top[1]) / end[1] * end[0]
        } else {
            (nose * nose - (nose - y).powi(2)).max(0.0).sqrt()
        };
        // Left of the tip the nose is round too.
        z <= on_edge && (y >= nose || z >= -(nose * nose - (nose - y).powi(2)).max(0.0).sqrt())
    };
    let rest = (ap - top[1]).max(0.0) / end[1];
    let start = -(feed / (2.0 * nose)).asin();
    let turned = if ap < top[1] { (1.0 - ap / nose).acos() } else { approach };
    let mut sums = [0.0; 3];
    let mut add = |angle: f64, at: [f64; 2], width: f64, radius: f64| {
        let (sin, cos) = angle.sin_cos();
        let inside = |h: f64| {
            let p = [at[0] - h * sin, at[1] + h * cos];
            p[1] <= ap && !in_tool([p[0] + feed, p[1]])
        };
        let (mut low, mut high) = (0.0, nose + 2.0 * feed);
        if !inside(1e-9) {
            return;
        }
        for _ in 0..50 {
            let middle = 0.5 * (low + high);
            if inside(middle) { low = middle } else { high = middle }
        }
        let width = width * (1.0 - low / (2.0 * radius));
        let main = 1659.0 * low.powf(0.79) * width;
        let parts = [main, 0.55 * main * cos, 0.55 * main * sin];
        sums.iter_mut().zip(parts).for_each(|(sum, part)| *sum += part);
    };
    let middle = |i: u32| (f64::from(i) + 0.5) / f64::from(PIECES);
    for i in 0..PIECES {
        let angle = start + (turned - start) * middle(i);
        let at = [nose * angle.sin(), nose * (1.0 - angle.cos())];
        add(angle, at, nose * (turned - start) / f64::from(PIECES), nose);
    }
    for i in 0..PIECES {
        let along = rest * middle(i);
        add(approach, [top[0] + along * end[0], top[1] + along * end[1]], rest / f64::from(PIECES), f64::INFINITY);
    }
    sums
}

fn edge_in_cut() -> Vec<Row> {
    // Where the nose meets the straight edge and where the chip ends, ours takes the circle and square ends.
    let mut t = Table::new(
        "chips between two contours of the tool",
        Standing::Computed("a fine sum along the edge, each chip searched for"),
        Agreement::Share(0.01),
    );
    let cases = [
        (0.05, 0.4, 93.0, 0.1),
        (0.25, 0.4, 93.0, 0.1),
        (0.25, 0.4, 90.0, 0.2),
        (0.5, 0.8, 93.0, 0.15),
        (1.0, 0.4, 90.0, 0.1),
        (2.0, 0.8, 75.0, 0.3),
        (2.0, 0.4, 60.0, 0.1),
        (3.0, 0.4, 93.0, 0.12),
    ];
    let mut entries: [Vec<(String, String, f64)>; 3] = Default::default();
    for (ap, nose, approach, feed) in cases {
        let c = force(1659.0, 0.21, nose, approach, ap, feed);
        let ours = [c.main_n, c.passive_n, c.feed_n];
        let name = format!("ap {ap}, r {nose}, κ {approach}°, f {feed}");
        for ((list, fine), ours) in entries.iter_mut().zip(fine_sum(ap, nose, approach.to_radians(), feed)).zip(ours) {
            list.push((name.clone(), format!("{fine:e}"), ours));
        }
    }
    let names = ["main force", "passive force", "feed force"];
    for (what, entries) in names.into_iter().zip(entries) {
        t.worst_of(&format!("C45 1659/0.21, edge with a nose: {what}"), entries);
    }
    // By hand, with a specific force of 1000 N/mm² for any chip: the area is `ap f` less the ridge that is left, a piece of
    // the circle over the width `f`.
    let mut hand = Table::new("area of the chip by hand", Standing::Derived, Agreement::Printed);
    hand.printed("1000/0, ap 0.3, r 0.4, κ 90°, f 0.2: Fc, N", "59.16", force(1000.0, 0.0, 0.4, 90.0, 0.3, 0.2).main_n);
    hand.printed(
        "1000/0, ap 1.2, r 0.4, κ 90°, f 0.2: Fc, N",
        "239.16",
        force(1000.0, 0.0, 0.4, 90.0, 1.2, 0.2).main_n,
    );
    [t.done(), hand.done()].concat()
}

#[test]
fn val_edge_in_cut() {
    assert_agree(&edge_in_cut());
}

/// The floor counts where the edge gives less, and nowhere else.
#[test]
fn the_floor_is_a_share_of_the_main_force() {
    let edge = Edge { nose_radius_mm: 0.4, approach_rad: 93f64.to_radians() };
    let with = |passive_floor, ap| {
        let c45 = Resistance { kc11_n_per_mm2: 1659.0, mc: 0.21, in_plane_share: 0.55, passive_floor };
        cut(&c45, &edge, ap, 0.12)
    };
    let (deep, shallow) = (with(0.15, 6.5), with(0.15, 0.25));
    assert!(deep.floored && (deep.passive_n / deep.main_n - 0.15).abs() < 1e-12);
    assert!(!shallow.floored && shallow == with(0.0, 0.25));
    // The floor turns the force towards the radius, for chatter too: without it a deep cut would not chatter at all.
    let share = deep.passive_n.powi(2) / (deep.passive_n.powi(2) + deep.feed_n.powi(2));
    assert!((deep.stiffness_n_per_mm / (0.55 * deep.main_n / 0.12 * share) - 1.0).abs() < 1e-12);
    assert!(deep.stiffness_n_per_mm > 10.0 * with(0.0, 6.5).stiffness_n_per_mm);
}

/// Forces stay numbers and grow with the feed where the nose cannot cover it, down to a feed and a depth of nothing.
#[test]
fn no_cut_gives_a_number_that_is_none() {
    for nose in [0.01, 0.4, 10.0] {
        for approach in [30.0, 90.0, 110.0] {
            for ap in [1e-6, 0.01, 0.4, 20.0] {
                let mut before = 0.0;
                for feed in [0.001, 0.1, 0.39, 0.41, 2.0] {
                    let c = force(1659.0, 0.21, nose, approach, ap, feed);
                    let all = [c.main_n, c.passive_n, c.feed_n, c.stiffness_n_per_mm];
                    assert!(all.iter().all(|n| n.is_finite()) && c.main_n > 0.0, "{nose} {approach} {ap} {feed} {c:?}");
                    assert!(c.passive_n >= 0.0 && (ap < 0.4 || c.main_n > before), "{nose} {approach} {ap} {feed}");
                    before = c.main_n;
                }
            }
        }
    }
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [edge_in_cut(), kienzle(), motor(), specific_energy(), speed()].concat()
}

#[test]
fn val_kienzle_by_hand() {
    assert_agree(&kienzle());
    assert_agree(&motor());
}

#[test]
fn val_turning_examples_by_specific_energy() {
    assert_agree(&specific_energy());
    assert_agree(&speed());
}
