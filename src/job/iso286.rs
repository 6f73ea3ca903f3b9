//! ISO 286 limits of shafts for diameters up to 120 mm: tolerance grades IT4 to IT12, deviations e f g h js j k m n p.
//!
//! A step of the diameter is "over … up to and including …": 3.000 mm belongs to 0–3, 18.000 mm to 10–18.
//!
//! How well the values are confirmed:
//! - IT5 to IT11: verified against two independent reproductions of ISO 286-1, table 1.
//! - IT4 and IT12: from memory of ISO 286-1, not re-read.
//! - f, g, k (grades 4 to 7), m up to 80 mm: verified at f7, g6, k6, m6 in a reproduction of the shaft table of
//!   JIS B 0401:1999 (the same system as ISO 286-2); over 80 mm from memory of ISO 286-2, not re-read.
//! - e, j, n, p: from memory of ISO 286-1, not re-read.

use super::shaft::Tolerance;
use crate::diag::Diag;
use crate::say;

/// Largest diameter of the tables, mm.
pub const DIAMETER_MAX_MM: f64 = 120.0;

/// Upper ends of the main steps, mm. For some deviations the standard divides the steps over 50 mm in two, but not for
/// those used here.
const UP_TO_MM: [f64; 8] = [3.0, 6.0, 10.0, 18.0, 30.0, 50.0, 80.0, 120.0];

/// The finest and the coarsest grade of the table.
const GRADES: std::ops::RangeInclusive<u32> = 4..=12;

/// Standard tolerances in µm, IT4 to IT12, one row for each step of the diameter.
const IT_UM: [[f64; 9]; 8] = [
    [3.0, 4.0, 6.0, 10.0, 14.0, 25.0, 40.0, 60.0, 100.0],
    [4.0, 5.0, 8.0, 12.0, 18.0, 30.0, 48.0, 75.0, 120.0],
    [4.0, 6.0, 9.0, 15.0, 22.0, 36.0, 58.0, 90.0, 150.0],
    [5.0, 8.0, 11.0, 18.0, 27.0, 43.0, 70.0, 110.0, 180.0],
    [6.0, 9.0, 13.0, 21.0, 33.0, 52.0, 84.0, 130.0, 210.0],
    [7.0, 11.0, 16.0, 25.0, 39.0, 62.0, 100.0, 160.0, 250.0],
    [8.0, 13.0, 19.0, 30.0, 46.0, 74.0, 120.0, 190.0, 300.0],
    [10.0, 15.0, 22.0, 35.0, 54.0, 87.0, 140.0, 220.0, 350.0],
];

/// Upper deviations in µm, one value for each step.
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
/// The grade is outside 4 to 12, or the diameter is outside 0 to 120 mm.
pub fn it_width_mm(grade: u32, diameter_mm: f64) -> Result<f64, Diag> {
    Ok(it_um(grade, step(diameter_mm)?)? / 1000.0)
}

fn it_um(grade: u32, step: usize) -> Result<f64, Diag> {
    if !GRADES.contains(&grade) {
        return Err(Diag::new(format!("tolerance grade {grade} is not in the table")).help(format!(
            "grades go from {} to {}",
            GRADES.start(),
            GRADES.end()
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
    let (lower, upper) = match letter {
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
                    return Err(Diag::new(format!("`{class}` is not in the table"))
                        .help("j exists as j5, j6 and j7; for other grades use js"));
                }
            };
            (lower, lower + width)
        }
        // Up to IT7, k has the lower deviation of the table. From IT8 on its lower deviation is 0.
        "k" => {
            let lower = if grade <= 7 { K_UM[step] } else { 0.0 };
            (lower, lower + width)
        }
        "m" => (M_UM[step], M_UM[step] + width),
        "n" => (N_UM[step], N_UM[step] + width),
        "p" => (P_UM[step], P_UM[step] + width),
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
        return Err(Diag::new(format!("`{class}` is a class for holes"))
            .help(format!("a shaft takes small letters: `{lower}`")));
    }
    Ok((letter, grade))
}

fn unknown(class: &str) -> Diag {
    Diag::new(format!("`{class}` is not a tolerance class of a shaft")).help(
        "write a class of ISO 286 with e, f, g, h, j, js, k, m, n or p and a grade from 4 to 12, such as `h6`, \
         or deviations in mm: `[-0.05, 0]`",
    )
}
