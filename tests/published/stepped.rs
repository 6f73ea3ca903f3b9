//! Stepped shafts solved by closed form or transfer matrix.
//!
//! Source: worked out for this project. Tip load and self-weight by closed form, frequencies by transfer matrix with
//! Krylov functions (Euler–Bernoulli) and by beam elements (Timoshenko, κ 0.88636). Tolerance: printed digits; for
//! Timoshenko frequencies and values with shear 0.1 %, since the stub that stands for a clamp shears a little.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use crate::shaft::{Hold, STEEL, Shaft};
use Hold::{ClampLeft, Pin};
use std::f64::consts::PI;

const BENDING: &str = "worked out for this project: closed form, transfer matrix";
const WITH_SHEAR: &str = "worked out for this project: Timoshenko beam, κ 0.88636";
/// Clamp stub with shear: below 1e-5; the reference's own mesh is not known closer than this.
const TIMOSHENKO: f64 = 0.001;

struct Cantilever {
    steps: [(f64, f64); 2],
    load: f64,
    tip: &'static str,
    tip_shear: &'static str,
    sag: &'static str,
    f1: &'static str,
    rpm: &'static str,
    f2: &'static str,
    f1_timoshenko: &'static str,
}

const CANTILEVERS: [Cantilever; 4] = [
    Cantilever {
        steps: [(60.0, 20.0), (40.0, 12.0)],
        load: 100.0,
        tip: "0.0294581",
        tip_shear: "0.0302337",
        sag: "0.000108142",
        f1: "2083.45",
        rpm: "125007",
        f2: "7192.24",
        f1_timoshenko: "2029.42",
    },
    Cantilever {
        steps: [(100.0, 30.0), (150.0, 16.0)],
        load: 50.0,
        tip: "0.109807",
        tip_shear: "0.110438",
        sag: "0.00246025",
        f1: "414.441",
        rpm: "24866",
        f2: "1655.88",
        f1_timoshenko: "411.97",
    },
    Cantilever {
        steps: [(30.0, 3.0), (40.0, 0.9)],
        load: 0.5,
        tip: "1.66453",
        tip_shear: "1.66501",
        sag: "0.00269342",
        f1: "391.578",
        rpm: "23495",
        f2: "1950.65",
        f1_timoshenko: "391.46",
    },
    Cantilever {
        steps: [(300.0, 32.0), (300.0, 20.0)],
        load: 100.0,
        tip: "1.15043",
        tip_shear: "1.15232",
        sag: "0.0582018",
        f1: "87.4593",
        rpm: "5247.6",
        f2: "305.716",
        f1_timoshenko: "87.312",
    },
];

fn name(c: &Cantilever) -> String {
    let [(l1, d1), (l2, d2)] = c.steps;
    format!("cantilever d {d1} × {l1}, d {d2} × {l2}")
}

fn cantilevers() -> Vec<Row> {
    let mut t = Table::new(BENDING, Standing::Derived, Agreement::Printed);
    for c in &CANTILEVERS {
        let shaft = Shaft::stepped(&c.steps, &[ClampLeft]);
        let end = shaft.length();
        let f: Vec<f64> = shaft.euler_omegas(2).iter().map(|w| w / (2.0 * PI)).collect();
        t.printed(format!("{}, {} N at tip, mm", name(c), c.load), c.tip, shaft.deflection(end, c.load, end));
        t.printed(format!("{}, self-weight at tip, mm", name(c)), c.sag, shaft.sag(end));
        t.printed(format!("{}, f₁, Hz", name(c)), c.f1, f[0]);
        t.printed(format!("{}, critical speed, rev/min", name(c)), c.rpm, 60.0 * f[0]);
        t.printed(format!("{}, f₂, Hz", name(c)), c.f2, f[1]);
    }
    t.done()
}

fn cantilevers_with_shear() -> Vec<Row> {
    let mut t = Table::new(WITH_SHEAR, Standing::Derived, Agreement::Share(TIMOSHENKO));
    for c in &CANTILEVERS {
        let shaft = Shaft::stepped(&c.steps, &[ClampLeft]).of(STEEL);
        let end = shaft.length();
        t.printed(
            format!("{}, with shear, {} N at tip, mm", name(c), c.load),
            c.tip_shear,
            shaft.deflection(end, c.load, end),
        );
        t.printed(format!("{}, Timoshenko f₁, Hz", name(c)), c.f1_timoshenko, shaft.omegas(1)[0] / (2.0 * PI));
    }
    t.done()
}

const THREE: &str = "shaft d 20 × 150, d 30 × 200, d 20 × 150, pinned at both ends";

fn three_steps() -> Shaft {
    Shaft::stepped(&[(150.0, 20.0), (200.0, 30.0), (150.0, 20.0)], &[Pin(0.0), Pin(500.0)])
}

fn two_bearings() -> Vec<Row> {
    let mut t = Table::new(BENDING, Standing::Derived, Agreement::Printed);
    let shaft = three_steps();
    let f: Vec<f64> = shaft.euler_omegas(2).iter().map(|w| w / (2.0 * PI)).collect();
    t.printed(format!("{THREE}, 100 N at middle, mm"), "0.0596934", shaft.deflection(250.0, 100.0, 250.0));
    t.printed(format!("{THREE}, self-weight at middle, mm"), "0.00849117", shaft.sag(250.0));
    t.printed(format!("{THREE}, f₁, Hz"), "181.346", f[0]);
    t.printed(format!("{THREE}, critical speed, rev/min"), "10881", 60.0 * f[0]);
    t.printed(format!("{THREE}, f₂, Hz"), "649.58", f[1]);
    t.printed(
        format!("{THREE}, Rayleigh with the shape under self-weight, Hz"),
        "181.396",
        shaft.rayleigh_omega() / (2.0 * PI),
    );
    t.done()
}

fn two_bearings_with_shear() -> Vec<Row> {
    let mut t = Table::new(WITH_SHEAR, Standing::Derived, Agreement::Share(TIMOSHENKO));
    let omegas = three_steps().of(STEEL).omegas(2);
    for (mode, printed) in ["180.71", "643.30"].into_iter().enumerate() {
        t.printed(format!("{THREE}, Timoshenko f of mode {}, Hz", mode + 1), printed, omegas[mode] / (2.0 * PI));
    }
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [cantilevers(), cantilevers_with_shear(), two_bearings(), two_bearings_with_shear()].concat()
}

#[test]
fn val_two_step_cantilevers() {
    assert_agree(&cantilevers());
    assert_agree(&cantilevers_with_shear());
}

#[test]
fn val_three_step_shaft_on_two_bearings() {
    assert_agree(&two_bearings());
    assert_agree(&two_bearings_with_shear());
}
