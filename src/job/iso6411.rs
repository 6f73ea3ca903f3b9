//! Centre holes of ISO 6411: type A (60°), B (60° with a protecting chamfer), R (radius form).

use crate::diag::Diag;
use crate::say;

/// A centre hole's sizes.
#[derive(Debug, Clone, PartialEq)]
pub struct CentreHole {
    /// Designation in its plain form, e.g. `A2.5`.
    pub designation: String,
    /// Pilot diameter in mm.
    pub pilot_mm: f64,
    /// Largest diameter at the face in mm: the countersink (A, R) or the protecting chamfer (B).
    pub mouth_mm: f64,
}

/// Pilot, mouth of A and R, mouth of B (if there is one), mm. From memory of ISO 6411:1982 and ISO 866, 2540, 2541; not
/// re-read.
const SIZES_MM: [(f64, f64, Option<f64>); 14] = [
    (0.5, 1.06, None),
    (0.63, 1.32, None),
    (0.8, 1.7, None),
    (1.0, 2.12, Some(3.15)),
    (1.25, 2.65, Some(4.0)),
    (1.6, 3.35, Some(5.0)),
    (2.0, 4.25, Some(6.3)),
    (2.5, 5.3, Some(8.0)),
    (3.15, 6.7, Some(10.0)),
    (4.0, 8.5, Some(12.5)),
    (5.0, 10.6, Some(16.0)),
    (6.3, 13.2, Some(18.0)),
    (8.0, 17.0, Some(22.4)),
    (10.0, 21.2, Some(28.0)),
];

/// Smallest pilot of type R, mm.
const R_FROM_MM: f64 = 1.0;

/// Reads a designation: `A2.5`, `B 4`, `R3.15/6.7`, `ISO 6411 - A2.5/5.3`.
///
/// - **Units**: mm.
/// - **Source**: from memory of ISO 6411:1982 and ISO 866, 2540, 2541; not re-read.
///
/// ```
/// let hole = spanhold::job::iso6411::parse("B2.5/8")?;
/// assert_eq!((hole.pilot_mm, hole.mouth_mm, hole.designation.as_str()), (2.5, 8.0, "B2.5"));
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// The type is unknown, the size is not in the table, or the mouth does not belong to the pilot.
pub fn parse(text: &str) -> Result<CentreHole, Diag> {
    let plain: String = text.to_ascii_uppercase().chars().filter(|c| !c.is_whitespace()).collect();
    let plain = plain.strip_prefix("ISO6411").unwrap_or(&plain).trim_start_matches('-');
    let mut letters = plain.chars();
    let form = letters.next().filter(|c| matches!(c, 'A' | 'B' | 'R')).ok_or_else(|| unknown(text))?;
    let (pilot, mouth) = match letters.as_str().split_once('/') {
        Some((pilot, mouth)) => (pilot, Some(number(mouth, text)?)),
        None => (letters.as_str(), None),
    };
    let pilot = number(pilot, text)?;
    let mouth_mm = SIZES_MM
        .iter()
        .find(|size| size.0 == pilot && (form != 'R' || pilot >= R_FROM_MM))
        .and_then(|size| if form == 'B' { size.2 } else { Some(size.1) })
        .ok_or_else(|| unknown(text))?;
    if mouth.is_some_and(|mouth| mouth != mouth_mm) {
        return Err(Diag::new(say!(
            "centre-mouth",
            given = text,
            name = format!("{form}{pilot}"),
            mouth = mouth_mm.to_string()
        ))
        .help(say!("centre-mouth-help", name = format!("{form}{pilot}"))));
    }
    Ok(CentreHole { designation: format!("{form}{pilot}"), pilot_mm: pilot, mouth_mm })
}

fn number(text: &str, whole: &str) -> Result<f64, Diag> {
    if !text.chars().all(|c| c.is_ascii_digit() || c == '.') {
        return Err(unknown(whole));
    }
    text.parse().map_err(|_| unknown(whole))
}

fn unknown(text: &str) -> Diag {
    let pilots: Vec<String> = SIZES_MM.iter().map(|size| size.0.to_string()).collect();
    Diag::new(say!("centre-unknown", given = text)).help(say!("centre-unknown-help", pilots = pilots.join(", ")))
}
