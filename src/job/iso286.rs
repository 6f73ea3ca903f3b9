//! ISO 286 limits of shafts for diameters up to 120 mm: tolerance grades IT4 to IT13, deviations d e f g h js j k m n p r s t u x.
//!
//! A step of the diameter is "over … up to and including …": 3.000 mm belongs to 0–3, 18.000 mm to 10–18.
//!
//! How well the values are confirmed:
//! - IT5 to IT11: verified against two independent reproductions of ISO 286-1, table 1.
//! - IT4, IT12, IT13: verified against a page with the grades 1 to 14; IT4 also against the h4 of a cutter maker's table of shafts,
//!   IT12 and IT13 from 3 mm on against the h12 and h13 of a bar trader.
//! - d, e, f, g, k (grades 4 to 7): verified against a page that reproduces the deviations of DIN ISO 286-1 (its g of 6 to 10 mm is a misprint).
//! - m, n, p, r, s, t, u, x: verified against the table of a textbook of machine drawing.
//! - d to x up to 50 mm also agree with the classes of a reproduction of the shaft table of JIS B 0401:1999 (the same system as ISO 286-2).
//! - j: from memory of ISO 286-1; the page above agrees from 65 mm on and up to 18 mm, and is one step off between.

use super::shaft::Tolerance;
use crate::diag::Diag;
use crate::say;

/// Largest diameter of the tables, mm.
pub const DIAMETER_MAX_MM: f64 = 120.0;

/// Upper ends of the main steps, mm.
const UP_TO_MM: [f64; 8] = [3.0, 6.0, 10.0, 18.0, 30.0, 50.0, 80.0, 120.0];
/// Upper ends of the steps of r, s, t, u and x, mm: the standard divides main steps in two for them.
const FINE_UP_TO_MM: [f64; 13] = [3.0, 6.0, 10.0, 14.0, 18.0, 24.0, 30.0, 40.0, 50.0, 65.0, 80.0, 100.0, 120.0];

/// The finest and the coarsest grade of the table.
const GRADES: std::ops::RangeInclusive<u32> = 4..=13;

/// Standard tolerances in µm, IT4 to IT13, one row for each step of the diameter.
const IT_UM: [[f64; 10]; 8] = [
    [3.0, 4.0, 6.0, 10.0, 14.0, 25.0, 40.0, 60.0, 100.0, 140.0],
    [4.0, 5.0, 8.0, 12.0, 18.0, 30.0, 48.0, 75.0, 120.0, 180.0],
    [4.0, 6.0, 9.0, 15.0, 22.0, 36.0, 58.0, 90.0, 150.0, 220.0],
    [5.0, 8.0, 11.0, 18.0, 27.0, 43.0, 70.0, 110.0, 180.0, 270.0],
    [6.0, 9.0, 13.0, 21.0, 33.0, 52.0, 84.0, 130.0, 210.0, 330.0],
    [7.0, 11.0, 16.0, 25.0, 39.0, 62.0, 100.0, 160.0, 250.0, 390.0],
    [8.0, 13.0, 19.0, 30.0, 46.0, 74.0, 120.0, 190.0, 300.0, 460.0],
    [10.0, 15.0, 22.0, 35.0, 54.0, 87.0, 140.0, 220.0, 350.0, 540.0],
];

/// Upper deviations in µm, one value for each step.
const D_UM: [f64; 8] = [-20.0, -30.0, -40.0, -50.0, -65.0, -80.0, -100.0, -120.0];
const E_UM: [f64; 8] = [-14.0, -20.0, -25.0, -32.0, -40.0, -50.0, -60.0, -72.0];
const F_UM: [f64; 8] = [-6.0, -10.0, -13.0, -16.0, -20.0, -25.0, -30.0, -36.0];
const G_UM: [f64; 8] = [-2.0, -4.0, -5.0, -6.0, -7.0, -9.0, -10.0, -12.0];
/// Lower deviations in µm, one value for each step.
const J5_J6_UM: [f64; 8] = [-2.0, -2.0, -2.0, -3.0, -4.0, -5.0, -7.0, -9.0];
const J7_UM: [f64; 8] = [-4.0, -4.0, -5.0, -6.0, -8.0, -10.0, -12.0, -15.0];
const K_UM: [f64; 8] = [0.0, 1.0, 1.0, 1.0, 2.0, 2.0, 2.0, 3.0];
const M_UM: [f64; 8] = [2.0, 4.0, 6.0, 7.0, 8.0, 9.0, 11.0, 13.0];
const N_UM: [f64; 8] = [4.0, 8.0, 10.0, 12.0, 15.0, 17.0, 20.0, 23.0];
const P_UM: [f64; 8] = [6.0, 12.0, 15.0, 18.0, 22.0, 26.0, 32.0, 37.0];
/// Lower deviations in µm, one value for each fine step. t begins above 24 mm.
const R_UM: [f64; 13] = [10.0, 15.0, 19.0, 23.0, 23.0, 28.0, 28.0, 34.0, 34.0, 41.0, 43.0, 51.0, 54.0];
const S_UM: [f64; 13] = [14.0, 19.0, 23.0, 28.0, 28.0, 35.0, 35.0, 43.0, 43.0, 53.0, 59.0, 71.0, 79.0];
const T_FROM: usize = 6;
const T_UM: [f64; 7] = [41.0, 48.0, 54.0, 66.0, 75.0, 91.0, 104.0];
const U_UM: [f64; 13] = [18.0, 23.0, 28.0, 33.0, 33.0, 41.0, 48.0, 60.0, 70.0, 87.0, 102.0, 124.0, 144.0];
const X_UM: [f64; 13] = [20.0, 28.0, 34.0, 40.0, 45.0, 54.0, 64.0, 80.0, 97.0, 122.0, 146.0, 178.0, 210.0];

fn step(diameter_mm: f64) -> Result<usize, Diag> {
    if !diameter_mm.is_finite() || diameter_mm <= 0.0 || diameter_mm > DIAMETER_MAX_MM {
        let (diameter, most) = (diameter_mm.to_string(), DIAMETER_MAX_MM.to_string());
        return Err(Diag::new(say!("tolerance-not-in-table", diameter = diameter, most = most))
            .help(say!("tolerance-not-in-table-help")));
    }
    Ok(UP_TO_MM.partition_point(|up_to| *up_to < diameter_mm))
}

/// Width of the standard tolerance `IT{grade}` at a diameter.
///
/// - **Units**: mm in, mm out.
/// - **Source**: ISO 286-1, table 1. The head of this file says how well the values are confirmed.
///
/// ```
/// use spanhold::job::iso286::it_width_mm;
/// assert_eq!(it_width_mm(7, 18.0)?, 0.018);
/// assert_eq!(it_width_mm(7, 18.001)?, 0.021);
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// The grade is outside 4 to 13, or the diameter is outside 0 to 120 mm.
pub fn it_width_mm(grade: u32, diameter_mm: f64) -> Result<f64, Diag> {
    Ok(it_um(grade, step(diameter_mm)?)? / 1000.0)
}

fn it_um(grade: u32, step: usize) -> Result<f64, Diag> {
    if !GRADES.contains(&grade) {
        return Err(Diag::new(say!("iso286-grade", grade = grade)).help(say!(
            "iso286-grade-help",
            first = *GRADES.start(),
            last = *GRADES.end()
        )));
    }
    Ok(IT_UM[step][(grade - GRADES.start()) as usize])
}

/// Limits of a shaft class such as `h6` at a diameter; the label is the class.
///
/// - **Units**: mm.
/// - **Source**: ISO 286-1 and -2. The head of this file says how well the values are confirmed.
///
/// ```
/// use spanhold::job::iso286::shaft_limits;
/// let t = shaft_limits("k6", 20.0)?;
/// assert_eq!((t.lower_mm, t.upper_mm, t.label.as_str()), (0.002, 0.015, "k6"));
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// The class is not in the table, or the diameter is outside 0 to 120 mm.
pub fn shaft_limits(class: &str, diameter_mm: f64) -> Result<Tolerance, Diag> {
    let (letter, grade) = parse(class)?;
    let step = step(diameter_mm)?;
    let width = it_um(grade, step)?;
    let fine = FINE_UP_TO_MM.partition_point(|up_to| *up_to < diameter_mm);
    let above = |lower: f64| (lower, lower + width);
    let (lower, upper) = match letter {
        "d" => (D_UM[step] - width, D_UM[step]),
        "e" => (E_UM[step] - width, E_UM[step]),
        "f" => (F_UM[step] - width, F_UM[step]),
        "g" => (G_UM[step] - width, G_UM[step]),
        "h" => (-width, 0.0),
        "js" => (-width / 2.0, width / 2.0),
        "j" => {
            let lower = match grade {
                5 | 6 => J5_J6_UM[step],
                7 => J7_UM[step],
                _ => {
                    return Err(Diag::new(say!("iso286-no-class", class = class)).help(say!("iso286-j-help")));
                }
            };
            above(lower)
        }
        // Up to IT7, k has the lower deviation of the table. From IT8 on its lower deviation is 0.
        "k" => above(if grade <= 7 { K_UM[step] } else { 0.0 }),
        "m" => above(M_UM[step]),
        "n" => above(N_UM[step]),
        "p" => above(P_UM[step]),
        "r" => above(R_UM[fine]),
        "s" => above(S_UM[fine]),
        "t" => match fine.checked_sub(T_FROM) {
            Some(i) => above(T_UM[i]),
            None => {
                return Err(Diag::new(say!("iso286-no-class-at", class = class, diameter = diameter_mm.to_string()))
                    .help(say!("iso286-t-help")));
            }
        },
        "u" => above(U_UM[fine]),
        "x" => above(X_UM[fine]),
        _ => return Err(unknown(class)),
    };
    Ok(Tolerance { lower_mm: lower / 1000.0, upper_mm: upper / 1000.0, label: class.trim().to_owned() })
}

fn parse(class: &str) -> Result<(&str, u32), Diag> {
    let class = class.trim();
    let digits = class.find(|c: char| c.is_ascii_digit()).ok_or_else(|| unknown(class))?;
    let (letter, grade) = class.split_at(digits);
    let grade = grade.parse().map_err(|_| unknown(class))?;
    if letter.chars().any(|c| c.is_ascii_uppercase()) {
        let lower = class.to_ascii_lowercase();
        return Err(Diag::new(say!("iso286-hole", class = class)).help(say!("iso286-hole-help", class = lower)));
    }
    Ok((letter, grade))
}

fn unknown(class: &str) -> Diag {
    Diag::new(say!("iso286-unknown", class = class)).help(say!("iso286-unknown-help"))
}
