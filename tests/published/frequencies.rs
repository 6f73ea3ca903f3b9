//! Natural frequencies of uniform beams, and the critical speeds that follow.
//!
//! Sources: Thomson, Theory of Vibration with Applications, appendix D and table 9.5-1 (roots to 4 decimals and squares
//! to 3 digits: verified); roots to 6 decimals and the tables with overhang: derived, beam elements agree. All are
//! Euler–Bernoulli, so the slender twin is solved (see `shaft`): what its rotary inertia leaves is below 1e-7 of βL.
//! `ω = (βL)² √(EI/(ρAL⁴))`, for a round bar `√(EI/ρA) = (d/4)√(E/ρ)`. Tolerance: the printed digits.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use crate::shaft::{Hold, STEEL, Shaft};
use Hold::{ClampLeft, ClampRight, Pin};
use std::f64::consts::PI;

const OWN: &str = "worked out for this project, Euler–Bernoulli";
const SPAN: f64 = 300.0;
const D: f64 = 6.0;

/// `βL` of the lowest three modes, `L` the span.
fn roots(length: f64, holds: &[Hold]) -> Vec<f64> {
    let bar = Shaft::uniform(length, D, holds);
    let scale = D / 4.0 * (206_000.0f64 / 7.85e-9).sqrt() / (SPAN * SPAN);
    bar.euler_omegas(3).iter().map(|w| (w / scale).sqrt()).collect()
}

fn uniform() -> Vec<(&'static str, Vec<f64>)> {
    vec![
        ("clamped–free", roots(SPAN, &[ClampLeft])),
        ("pinned–pinned", roots(SPAN, &[Pin(0.0), Pin(SPAN)])),
        ("clamped–pinned", roots(SPAN, &[ClampLeft, Pin(SPAN)])),
        ("clamped–clamped", roots(SPAN, &[ClampLeft, ClampRight])),
    ]
}

fn derived_roots() -> Vec<Row> {
    let mut t = Table::new("roots of the frequency equations (Euler–Bernoulli)", Standing::Derived, Agreement::Printed);
    let printed = [
        ["1.875104", "4.694091", "7.854757"],
        ["3.141593", "6.283185", "9.424778"],
        ["3.926602", "7.068583", "10.210176"],
        ["4.730041", "7.853205", "10.995608"],
    ];
    for ((how, ours), printed) in uniform().into_iter().zip(printed) {
        for (mode, (printed, ours)) in (1..).zip(printed.into_iter().zip(ours)) {
            t.printed(format!("{how}, βL of mode {mode}"), printed, ours);
        }
    }
    t.done()
}

fn thomson_roots() -> Vec<Row> {
    let mut t = Table::new(
        "Thomson, Theory of Vibration with Applications, appendix D",
        Standing::Verified("p. 510 of the book"),
        Agreement::Printed,
    );
    let printed = [(0, ["1.8751", "4.6941", "7.8548"]), (3, ["4.7300", "7.8532", "10.9956"])];
    let ours = uniform();
    for (row, printed) in printed {
        let (how, ours) = &ours[row];
        for (mode, (printed, ours)) in (1..).zip(printed.into_iter().zip(ours)) {
            t.printed(format!("{how}, βL of mode {mode}"), printed, *ours);
        }
    }
    t.done()
}

/// The table gives three digits: its 104.0 and 121.0 stand for 104.25 and 120.90, so the zero is no digit. Its 88.9 is not
/// the rounded 9π² = 88.83 either; there 0.1 % decides.
fn thomson_squares() -> Vec<Row> {
    let table = |agreement| {
        Table::new(
            "Thomson, Theory of Vibration with Applications, table 9.5-1",
            Standing::Verified("p. 283 of the book"),
            agreement,
        )
    };
    let (mut t, mut odd) = (table(Agreement::Printed), table(Agreement::Share(0.001)));
    let printed =
        [["3.52", "22.0", "61.7"], ["9.87", "39.5", "88.9"], ["15.4", "50.0", "104"], ["22.4", "61.7", "121"]];
    for ((how, ours), printed) in uniform().into_iter().zip(printed) {
        for (mode, (printed, ours)) in (1..).zip(printed.into_iter().zip(ours)) {
            let t = if printed == "88.9" { &mut odd } else { &mut t };
            t.printed(format!("{how}, (βL)² of mode {mode}"), printed, ours.powi(2));
        }
    }
    [t.done(), odd.done()].concat()
}

fn derived_squares() -> Vec<Row> {
    let mut t = Table::new("roots of the frequency equations (Euler–Bernoulli)", Standing::Derived, Agreement::Printed);
    let printed = [
        ["3.5160", "22.0345", "61.6972"],
        ["9.8696", "39.478", "88.826"],
        ["15.418", "49.965", "104.248"],
        ["22.3733", "61.6728", "120.903"],
    ];
    for ((how, ours), printed) in uniform().into_iter().zip(printed) {
        for (mode, (printed, ours)) in (1..).zip(printed.into_iter().zip(ours)) {
            t.printed(format!("{how}, (βL)² of mode {mode}"), printed, ours.powi(2));
        }
    }
    t.done()
}

fn overhang() -> Vec<Row> {
    let mut t = Table::new(OWN, Standing::Derived, Agreement::Printed);
    let table = [
        (0.10, ["3.1364", "6.2405", "9.2626"], ["3.9159", "7.0068", "9.9933"]),
        (0.20, ["3.0998", "5.8539", "7.7357"], ["3.8376", "6.3989", "8.2240"]),
        (0.25, ["3.0588", "5.3924", "7.1661"], ["3.7461", "5.7888", "7.7891"]),
        (0.30, ["2.9963", "4.8993", "6.9198"], ["3.6035", "5.2742", "7.6133"]),
        (0.40, ["2.7941", "4.2085", "6.7188"], ["3.1900", "4.7181", "7.4423"]),
        (0.50, ["2.5190", "3.8717", "6.5868"], ["2.7591", "4.5012", "7.2639"]),
        (0.75, ["1.9017", "3.5779", "5.6154"], ["2.0059", "4.2658", "5.7693"]),
        (1.00, ["1.5059", "3.4131", "4.4373"], ["1.5708", "3.9266", "4.7124"]),
    ];
    for (share, pinned, clamped) in table {
        let length = SPAN * (1.0 + share);
        for (how, root, printed) in [("pinned", Pin(0.0), pinned), ("clamped", ClampLeft, clamped)] {
            let ours = roots(length, &[root, Pin(SPAN)]);
            for (mode, (printed, ours)) in (1..).zip(printed.into_iter().zip(ours)) {
                let what = format!("{how}–roller–free, overhang {share:.2} of the span, βL of mode {mode}");
                t.printed(what, printed, ours);
            }
        }
    }
    t.done()
}

fn critical_speeds() -> Vec<Row> {
    let mut t = Table::new(
        "worked out for this project, Euler–Bernoulli, E 206 GPa, 7850 kg/m³",
        Standing::Derived,
        Agreement::Truncated,
    );
    let lengths = [100.0, 200.0, 300.0, 500.0, 1000.0];
    let table = [
        (3.0, ["12899", "3224", "1433", "515", "128"], ["36210", "9052", "4023", "1448", "362"]),
        (6.0, ["25799", "6449", "2866", "1031", "257"], ["72420", "18105", "8046", "2896", "724"]),
        (10.0, ["42999", "10749", "4777", "1719", "429"], ["120700", "30175", "13411", "4828", "1207"]),
        (20.0, ["85998", "21499", "9555", "3439", "859"], ["241401", "60350", "26822", "9656", "2414"]),
        (32.0, ["137597", "34399", "15288", "5503", "1375"], ["386242", "96560", "42915", "15449", "3862"]),
        (42.0, ["180596", "45149", "20066", "7223", "1805"], ["506943", "126735", "56327", "20277", "5069"]),
    ];
    for (d, free, pinned) in table {
        for (l, (free, pinned)) in lengths.into_iter().zip(free.into_iter().zip(pinned)) {
            for (how, holds, printed) in
                [("clamped–free", vec![ClampLeft], free), ("pinned–pinned", vec![Pin(0.0), Pin(l)], pinned)]
            {
                let rpm = 30.0 / PI * Shaft::uniform(l, d, &holds).euler_omegas(1)[0];
                t.printed(format!("d {d} × {l}, {how}, critical speed, rev/min"), printed, rpm);
            }
        }
    }
    t.done()
}

/// With shear and rotary inertia a pinned bar still vibrates in sines: with `k = nπ/L`, `ω²` is the smaller root of
/// `ρ²I/(κG) ω⁴ - (ρA + ρI (1 + E/(κG)) k²) ω² + EI k⁴ = 0`.
fn pinned_with_shear() -> Vec<Row> {
    let mut t = Table::new("Timoshenko (1921), pinned bar", Standing::Memory, Agreement::Share(0.001));
    for (l, d) in [(300.0, 30.0), (100.0, 20.0), (200.0, 4.0)] {
        let (area, inertia) = (PI * d * d / 4.0, PI * d * d * d * d / 64.0);
        let (e, density) = (STEEL.e_n_per_mm2, STEEL.density_t_per_mm3);
        // κ = 0.88636 for ν = 0.3, by hand.
        let shear = 7.8 / 8.8 * e / 2.6;
        for (mode, ours) in (1..).zip(Shaft::uniform(l, d, &[Pin(0.0), Pin(l)]).of(STEEL).omegas(3)) {
            let k2 = (f64::from(mode) * PI / l).powi(2);
            let (a, b) = (density * density * inertia / shear, density * (area + inertia * (1.0 + e / shear) * k2));
            let c = e * inertia * k2 * k2;
            let omega = (2.0 * c / (b + (b * b - 4.0 * a * c).sqrt())).sqrt();
            t.closed(
                format!("d {d} × {l}, pinned–pinned with shear and rotary inertia, mode {mode}, rad/s"),
                omega,
                ours,
            );
        }
    }
    t.done()
}

/// A bar so stiff that it moves as a whole: up and down with `ω² = 2k/m`, and turning with `ω² = k L²/2J`,
/// `J = m (L²/12 + d²/16)`.
fn rigid_on_springs() -> Vec<Row> {
    let mut t = Table::new("rigid body on two springs, closed form", Standing::Memory, Agreement::Share(0.001));
    let (l, d, k) = (100.0, 40.0, 10.0);
    let mass = STEEL.density_t_per_mm3 * PI * d * d / 4.0 * l;
    let turning = k * l * l / 2.0 / (mass * (l * l / 12.0 + d * d / 16.0));
    let ours = Shaft::uniform(l, d, &[Hold::Soft(0.0, k), Hold::Soft(l, k)]).of(STEEL).omegas(2);
    for (what, squared, ours) in [("up and down", 2.0 * k / mass, ours[0]), ("turning", turning, ours[1])] {
        t.closed(format!("d {d} × {l} on two springs of {k} N/mm, {what}, rad/s"), squared.sqrt(), ours);
    }
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [
        derived_roots(),
        derived_squares(),
        thomson_roots(),
        thomson_squares(),
        overhang(),
        critical_speeds(),
        pinned_with_shear(),
        rigid_on_springs(),
    ]
    .concat()
}

#[test]
fn val_bars_with_shear_and_on_springs() {
    assert_agree(&pinned_with_shear());
    assert_agree(&rigid_on_springs());
}

#[test]
fn val_roots_of_uniform_beams() {
    assert_agree(&derived_roots());
    assert_agree(&derived_squares());
}

#[test]
fn val_roots_printed_by_thomson() {
    assert_agree(&thomson_roots());
    assert_agree(&thomson_squares());
}

#[test]
fn val_roots_with_overhang() {
    assert_agree(&overhang());
}

#[test]
fn val_critical_speeds_of_steel_bars() {
    assert_agree(&critical_speeds());
}
