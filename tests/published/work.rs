//! Work that is not turning: drilling torque, threading passes, holes under threads, hexagons.
//!
//! Sources: beside each table; all from memory, not re-read. Tolerance: printed digits, or as the table says.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::job::thread::{DEPTH_PER_PITCH, Thread};
use spanhold::mechanics::{drilling, shaving, threading};
use spanhold::process::features::tap_drill_mm;

/// A 10 mm drill in magnesium, 0.2 mm a turn at 800 rev/min, 0.5 W·s/mm³: 210 mm³/s, 105 W, 1.25 N·m.
fn drilling_example() -> Vec<Row> {
    let mut t = Table::new(
        "Kalpakjian & Schmid, Manufacturing Engineering and Technology, example on material removal rate and torque in drilling",
        Standing::Memory,
        Agreement::Printed,
    );
    let torque_nm = drilling::torque_at_nmm(500.0, 10.0, 0.2) / 1000.0;
    t.printed("drill 10 mm in magnesium, f 0.2, 0.5 W·s/mm³: torque, N·m", "1.25", torque_nm);
    // Power is torque times speed.
    let power_w = torque_nm * 800.0 * std::f64::consts::TAU / 60.0;
    t.printed("the same at 800 rev/min: power, W", "105", power_w);
    t.done()
}

/// An external thread of 1.5 mm pitch in six passes, 0.94 mm deep: depth after each pass.
fn threading_example() -> Vec<Row> {
    let mut t = Table::new(
        "worked example of radial infeeds in handbooks of threading tools",
        Standing::Memory,
        Agreement::Printed,
    );
    let mut depth = 0.0;
    for (pass, (infeed, printed)) in
        threading::infeeds_mm(0.94, 6).iter().zip(["0.23", "0.42", "0.59", "0.73", "0.84", "0.94"]).enumerate()
    {
        depth += infeed;
        t.printed(format!("thread 0.94 mm deep in 6 passes: depth after pass {}, mm", pass + 1), printed, depth);
    }
    let mut t2 = Table::new("ISO 68-1, DIN 13-1: depth of external threads h3", Standing::Memory, Agreement::Printed);
    for (pitch, printed) in [(1.0, "0.613"), (1.5, "0.920"), (2.0, "1.227"), (3.0, "1.840")] {
        t2.printed(format!("depth of an external thread, pitch {pitch}, mm"), printed, DEPTH_PER_PITCH * pitch);
    }
    [t.done(), t2.done()].concat()
}

/// Drills for threads; the standard rounds to a drill at hand.
fn tap_drills() -> Vec<Row> {
    let mut t = Table::new("ISO 2306: drills for use prior to tapping", Standing::Memory, Agreement::Share(0.011));
    for (name, printed) in
        [("M3", "2.5"), ("M4", "3.3"), ("M5", "4.2"), ("M6", "5.0"), ("M8", "6.8"), ("M10", "8.5"), ("M12", "10.2")]
    {
        let thread = Thread::parse(name).expect("a thread");
        t.printed(format!("hole under {name}, mm"), printed, tap_drill_mm(&thread));
    }
    t.done()
}

/// Across the corners of a hexagon, from its flats.
fn hexagons() -> Vec<Row> {
    let mut t = Table::new("geometry of a hexagon: across corners 1.1547 s", Standing::Derived, Agreement::Printed);
    for (s, printed) in [(3.0, "3.464"), (5.0, "5.774"), (8.0, "9.238")] {
        t.printed(format!("hexagon {s} across flats: across corners, mm"), printed, s + 2.0 * shaving::corner_mm(s));
    }
    t.done()
}

pub fn rows() -> Vec<Row> {
    [drilling_example(), threading_example(), tap_drills(), hexagons()].concat()
}

#[test]
fn drilling_and_threading_agree_with_the_examples() {
    assert_agree(&rows());
}

/// Source: ISO 261, from memory, not re-read.
#[test]
fn pitches_of_iso_261_are_known_and_others_are_not() {
    for name in ["M4", "M8x1", "M10x1.25", "M12x1.25", "M12x1.5", "M14x1.5", "M16x1.5", "M20x1.5", "M24x2", "M30x2"] {
        assert!(Thread::parse(name).expect(name).is_usual(), "{name}");
    }
    for name in ["M16x1.75", "M10x1.1", "M13x1.5", "M4x0.6"] {
        assert!(!Thread::parse(name).expect(name).is_usual(), "{name}");
    }
}
