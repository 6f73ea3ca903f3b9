//! Worked examples of textbooks: stepped shafts, gears on a shaft, a stepped square bar.
//!
//! Axes: x from the left end, y and loads positive downwards; sources that count y upwards have their signs turned.
//! Units are turned into mm, N, t: 1 in = 25.4 mm, 1 lbf = 4.448 221 6 N. All are bending only. Tolerance: the digits
//! of the printed or derived answer; 0.1 % where the case itself is matched only within that (said there).
//!
//! A published stepped beam (El-Sayed & Farghaly, Shock and Vibration 2017, art. 8186976) is left out: its frequencies
//! could be read, its geometry could not.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use crate::shaft::{Hold, Shaft, rigid_in_shear};
use Hold::{ClampLeft, Pin};
use spanhold::mechanics::beam::Elastic;
use std::f64::consts::PI;

const IN: f64 = 25.4;
const LBF: f64 = 4.448_221_6;
const PSI: f64 = LBF / (IN * IN);
/// Free fall of the inch sources, in/s².
const G_IN: f64 = 386.1;
/// 1 lbf of weight as mass in t, by the inch sources' own free fall.
const LBF_MASS: f64 = LBF / (G_IN * IN);
const RPM: f64 = 30.0 / PI;
/// Where the case itself is matched only this well, or the reference is known only this well.
const NEAR: f64 = 0.001;
/// What supports, mesh and iteration leave.
const CLOSED_FORM: f64 = 1e-6;

fn material(e: f64, density: f64) -> Elastic {
    rigid_in_shear(Elastic { e_n_per_mm2: e, poisson: 0.3, density_t_per_mm3: density, bore_mm: 0.0 })
}

/// So light that a mass on the shaft is all there is: below 1e-6 of it.
const MASSLESS: f64 = 1e-16;

fn diameter_of(inertia: f64) -> f64 {
    (64.0 * inertia / PI).powf(0.25)
}

/// A. Simply supported, I in the outer quarters and 2I in the middle half, 400 N at midspan.
fn flywheel() -> Vec<Row> {
    let mut t = Table::new(
        "Ugural, Mechanical Design of Machine Components, example 9.6",
        Standing::Verified("a page reproducing the example (input and formula 3WL³/256EI)"),
        Agreement::Printed,
    );
    let (thin, thick) = (diameter_of(0.3e6), diameter_of(0.6e6));
    let mut shaft = Shaft::stepped(&[(250.0, thin), (500.0, thick), (250.0, thin)], &[Pin(0.0), Pin(1000.0)])
        .of(material(200_000.0, MASSLESS));
    t.printed("shaft with flywheel, deflection, mm", "0.078125", shaft.deflection(500.0, 400.0, 500.0));
    let mut speed = Table::new(
        "Ugural, example 9.6: (1/2π)√(g/δ), the printed speed was not readable",
        Standing::Derived,
        Agreement::Printed,
    );
    shaft.masses = vec![(500.0, 400.0 / 9810.0)];
    speed.printed("shaft with flywheel, critical speed, rev/min", "3384", RPM * shaft.euler_omegas(1)[0]);
    [t.done(), speed.done()].concat()
}

/// B. Two gears on a uniform 1 in shaft, span 31 in.
fn two_gears() -> Vec<Row> {
    let (x1, x2, w1, w2) = (7.0 * IN, 20.0 * IN, 35.0 * LBF, 55.0 * LBF);
    let weight = 0.282 * LBF_MASS / IN.powi(3);
    let shaft = |density| Shaft::uniform(31.0 * IN, IN, &[Pin(0.0), Pin(31.0 * IN)]).of(material(30e6 * PSI, density));
    let bare = shaft(MASSLESS);
    let flexibility = |load: f64, at: f64| bare.deflection(load, 1.0, at) * LBF / IN;
    let (d11, d22, d12) = (flexibility(x1, x1), flexibility(x2, x2), flexibility(x1, x2));
    let y: Vec<f64> = bare.bend(&[(x1, w1), (x2, w2)], &[x1, x2]).iter().map(|v| v[0] / IN).collect();

    let mut t = Table::new(
        "Shigley's Mechanical Engineering Design, 9th ed., example 7–5 (input verified; answers worked out for this project, they agree with memory of the printed ones)",
        Standing::Derived,
        Agreement::Printed,
    );
    let name = |what: &str| format!("two gears on a shaft, {what}");
    t.printed(name("δ₁₁, in/lbf"), "2.0608e-4", d11);
    t.printed(name("δ₂₂, in/lbf"), "3.5340e-4", d22);
    t.printed(name("δ₁₂, in/lbf"), "2.2236e-4", d12);
    t.printed(name("y₁, in"), "0.019443", y[0]);
    t.printed(name("y₂, in"), "0.027220", y[1]);
    let first = 35.0 * y[0] + 55.0 * y[1];
    let second = 35.0 * y[0] * y[0] + 55.0 * y[1] * y[1];
    t.printed(name("Σwy"), "2.1776", first);
    t.printed(name("Σwy²"), "0.053982", second);
    // Rayleigh's and Dunkerley's formulas are worked out here, from our flexibilities.
    let rayleigh = (G_IN * first / second).sqrt();
    t.printed(name("Rayleigh, rad/s"), "124.80", rayleigh);
    t.printed(name("Rayleigh, rev/min"), "1192", RPM * rayleigh);
    let alone = [35.0 * d11, 55.0 * d22].map(|s: f64| (G_IN / s).sqrt());
    t.printed(name("gear 1 alone, rad/s"), "231.36", alone[0]);
    t.printed(name("gear 2 alone, rad/s"), "140.94", alone[1]);
    let dunkerley = alone.iter().map(|w| w.powi(-2)).sum::<f64>().sqrt().recip();
    t.printed(name("Dunkerley, rad/s"), "120.36", dunkerley);
    t.printed(name("Dunkerley, rev/min"), "1149", RPM * dunkerley);

    let mut exact = Table::new(
        "input of Shigley, 9th ed., example 7–5; exact answer worked out for this project",
        Standing::Derived,
        Agreement::Printed,
    );
    let gears = vec![(x1, 35.0 * LBF_MASS), (x2, 55.0 * LBF_MASS)];
    let mut carried = shaft(MASSLESS);
    carried.masses = gears.clone();
    let omegas = carried.euler_omegas(2);
    assert!(dunkerley <= omegas[0] && omegas[0] <= rayleigh, "{dunkerley} ≤ {} ≤ {rayleigh} rad/s", omegas[0]);
    exact.printed(name("exact, rad/s"), "124.68", omegas[0]);
    exact.printed(name("exact, rev/min"), "1190.6", RPM * omegas[0]);
    exact.printed(name("exact, second, rev/min"), "4407", RPM * omegas[1]);
    let alone = shaft(weight).euler_omegas(1)[0];
    exact.printed(name("the shaft alone, rad/s"), "520.4", alone);
    exact.printed(name("the shaft alone, rev/min"), "4969", RPM * alone);
    let all = (dunkerley.powi(-2) + alone.powi(-2)).sqrt().recip();
    exact.printed(name("Dunkerley with the shaft's mass, rad/s"), "117.27", all);
    let mut heavy = shaft(weight);
    heavy.masses = gears;
    let heavy = heavy.euler_omegas(1)[0];
    exact.printed(name("with the shaft's mass, rad/s"), "121.28", heavy);
    exact.printed(name("with the shaft's mass, rev/min"), "1158.1", RPM * heavy);
    [t.done(), exact.done()].concat()
}

/// C. A uniform 1 in × 24 in shaft of 5.316 lbf, as it is and lumped.
fn lumped() -> Vec<Row> {
    let mut t = Table::new(
        "Shigley, solutions manual, chapter 7",
        Standing::Verified("the manual's page (printed to whole rad/s)"),
        Agreement::Printed,
    );
    let shaft = |density| Shaft::uniform(24.0 * IN, IN, &[Pin(0.0), Pin(24.0 * IN)]).of(material(30e6 * PSI, density));
    let weight = 5.316 * LBF_MASS;
    let lumps = |places: &[f64]| {
        let mut s = shaft(MASSLESS);
        s.masses = places.iter().map(|x| (x * IN, weight / places.len() as f64)).collect();
        s.euler_omegas(1)[0]
    };
    t.printed("1 in × 24 in shaft, one lump at the middle, rad/s", "609", lumps(&[12.0]));
    t.printed("1 in × 24 in shaft, lumps at the quarters, rad/s", "862", lumps(&[6.0, 18.0]));
    let mass = weight / (24.0 * IN);
    let omega = (PI / (24.0 * IN)).powi(2) * (30e6 * PSI * PI * IN.powi(4) / 64.0 / mass).sqrt();
    let mut exact =
        Table::new("the same shaft, uniform: (π/L)²√(EI/m)", Standing::Derived, Agreement::Share(CLOSED_FORM));
    let density = mass / (PI / 4.0 * IN * IN);
    exact.closed("1 in × 24 in shaft, as it is, rad/s", omega, shaft(density).euler_omegas(1)[0]);
    [t.done(), exact.done()].concat()
}

/// D. d 25 × 600, simply supported, 207 GPa, 76 kN/m³; twice as thick; at half the size.
fn uniform_si() -> Vec<Row> {
    let mut t = Table::new(
        "input of a Shigley problem (verified); answer worked out for this project",
        Standing::Derived,
        Agreement::Printed,
    );
    let omega = |l: f64, d: f64| {
        Shaft::uniform(l, d, &[Pin(0.0), Pin(l)]).of(material(207_000.0, 76_000.0 / 9.81 * 1e-12)).euler_omegas(1)[0]
    };
    t.printed("d 25 × 600, 207 GPa, pinned–pinned, rad/s", "885.7", omega(600.0, 25.0));
    t.printed("d 25 × 600, 207 GPa, pinned–pinned, rev/min", "8458", RPM * omega(600.0, 25.0));
    t.printed("d 50 × 600, 207 GPa, pinned–pinned, rad/s", "1771.4", omega(600.0, 50.0));
    t.printed("d 12.5 × 300, 207 GPa, pinned–pinned, rad/s", "1771.4", omega(300.0, 12.5));
    t.done()
}

/// E. 600 lbf at 8 in on a 20 in span; d 1.5 in to 8.5 in, then 1.75 in; and with the 1 in journals of 0.5 in.
fn pulley() -> Vec<Row> {
    let mut t = Table::new(
        "Shigley's Mechanical Engineering Design, 9th ed., example 4–7 (loads verified, step from memory); answer worked out for this project",
        Standing::Derived,
        Agreement::Printed,
    );
    let one_step = vec![(8.5, 1.5), (11.5, 1.75)];
    let journals = vec![(0.5, 1.0), (8.0, 1.5), (11.0, 1.75), (0.5, 1.0)];
    let cases = [
        ("one step", one_step, ["0.009358", "0.009383", "1.685e-3", "-1.199e-3"]),
        ("with journals", journals, ["0.009365", "0.009390", "1.709e-3", "-1.217e-3"]),
    ];
    for (how, steps, printed) in cases {
        let steps: Vec<(f64, f64)> = steps.iter().map(|(l, d)| (l * IN, d * IN)).collect();
        let shaft = Shaft::stepped(&steps, &[Pin(0.0), Pin(20.0 * IN)]).of(material(30e6 * PSI, MASSLESS));
        let mut places = vec![0.0, 8.0 * IN, 8.5 * IN, 20.0 * IN];
        // The largest lies between: no farther off than 0.025 in, which is less than 1e-7 in of it. Closer together, on pins this stiff, rounding would tell.
        places.extend((0..=20).map(|i| (8.0 + 0.05 * f64::from(i)) * IN));
        let v = shaft.bend(&[(8.0 * IN, 600.0 * LBF)], &places);
        let largest = v.iter().fold(0.0, |a: f64, y| a.max(y[0])) / IN;
        let name = |what: &str| format!("step shaft with pulley, {how}, {what}");
        t.printed(name("at the load, in"), printed[0], v[1][0] / IN);
        t.printed(name("largest, in"), printed[1], largest);
        t.printed(name("slope at the left end, rad"), printed[2], v[0][1]);
        t.printed(name("slope at the right end, rad"), printed[3], v[3][1]);
        if how == "one step" {
            t.printed(name("at the step, in"), "0.009380", v[2][0] / IN);
        }
    }
    t.done()
}

/// F. Three elements, 150, 75, 125 mm, I 1.25e5, 1.25e5, 4e5 mm⁴, 3000 N at the end of the first.
fn three_elements() -> Vec<Row> {
    let mut t = Table::new(
        "Chandrupatla & Belegundu, Introduction to Finite Elements in Engineering, beam chapter (input verified on a page posing it); answer worked out for this project",
        Standing::Derived,
        Agreement::Printed,
    );
    let steps = [(150.0, diameter_of(1.25e5)), (75.0, diameter_of(1.25e5)), (125.0, diameter_of(4e5))];
    let shaft = Shaft::stepped(&steps, &[Pin(0.0), Pin(350.0)]).of(material(200_000.0, MASSLESS));
    let cases = [(150.0, ["0.092992", "8.7709e-4", "-6.4668e-4"]), (225.0, ["0.068205", "6.6474e-4", "-6.0842e-4"])];
    for (x, printed) in cases {
        let v = shaft.bend(&[(x, 3000.0)], &[x, 0.0, 350.0]);
        t.printed(format!("three-element shaft, 3000 N at {x}, at the load, mm"), printed[0], v[0][0]);
        t.printed(format!("three-element shaft, 3000 N at {x}, slope at the left end, rad"), printed[1], v[1][1]);
        t.printed(format!("three-element shaft, 3000 N at {x}, slope at the right end, rad"), printed[2], v[2][1]);
    }
    t.done()
}

/// G. Square cantilever 100 × 100 × 1200, then 50 × 50 × 1200; 200 GPa, 8000 kg/m³.
///
/// Ours is round. A round bar with the inertia `b⁴/12` of a square has an area larger by the same factor at every size,
/// so a density smaller by that factor gives the square bar's mass all along: Euler–Bernoulli answers are the same. For
/// the Timoshenko answers a Poisson's ratio gives `κGA = (5/6) G A` of the square; rotary inertia comes out 2 % small,
/// which is 0.006 % of the third frequency.
fn square() -> Vec<Row> {
    let round = |b: f64| diameter_of(b.powi(4) / 12.0);
    let larger = PI * round(1.0).powi(2) / 4.0;
    // 3E/(7+6ν) · larger = (5/6) · E/2.6, by hand.
    let poisson = (3.0 * larger * 2.6 * 6.0 / 5.0 - 7.0) / 6.0;
    let bar = Shaft::stepped(&[(1200.0, round(100.0)), (1200.0, round(50.0))], &[ClampLeft]).of(Elastic {
        e_n_per_mm2: 200_000.0,
        poisson,
        density_t_per_mm3: 8e-9 / larger,
        bore_mm: 0.0,
    });
    let source = "Rao, Mechanical Vibrations, a chapter 7 problem (input verified on a page posing it); answer worked out for this project";
    let mut euler = Table::new(source, Standing::Derived, Agreement::Printed);
    let mut shear = Table::new(source, Standing::Derived, Agreement::Share(NEAR));
    let printed = [("127.05", "126.88"), ("369.64", "367.92"), ("1104.6", "1092.1")];
    for (mode, ((w, s), printed)) in bar.euler_omegas(3).iter().zip(bar.omegas(3)).zip(printed).enumerate() {
        euler.printed(format!("stepped square cantilever, mode {}, rad/s", mode + 1), printed.0, *w);
        shear.printed(format!("stepped square cantilever, Timoshenko κ 5/6, mode {}, rad/s", mode + 1), printed.1, s);
    }
    [euler.done(), shear.done()].concat()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [flywheel(), two_gears(), lumped(), uniform_si(), pulley(), three_elements(), square()].concat()
}

#[test]
fn val_stepped_shaft_with_flywheel() {
    assert_agree(&flywheel());
}

#[test]
fn val_two_gears_on_a_shaft() {
    assert_agree(&two_gears());
}

#[test]
fn val_lumped_and_uniform_shaft() {
    assert_agree(&lumped());
    assert_agree(&uniform_si());
}

#[test]
fn val_step_shaft_with_pulley() {
    assert_agree(&pulley());
}

#[test]
fn val_three_element_shaft() {
    assert_agree(&three_elements());
}

#[test]
fn val_stepped_square_cantilever() {
    assert_agree(&square());
}
