//! Headings of a table of sections: what a column holds, and in which unit.

use std::path::Path;

use super::words::INCH_MM;
use crate::diag::Diag;
use crate::fields::nearest;
use crate::say;

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Column {
    /// Length of the section.
    Length,
    /// Diameter. For a taper, the diameter at its front.
    Diameter,
    /// Diameter of a taper at its rear.
    RearDiameter,
    /// Kind of the section.
    Kind,
    /// Designation of a thread.
    Thread,
    /// Tolerance class or deviations.
    Tolerance,
    /// Roughness Ra.
    Roughness,
    /// Name.
    Name,
    /// Distance between opposite flats.
    AcrossFlats,
    /// Number of flats.
    Sides,
}

/// Headings, without their unit, in small letters.
const HEADINGS: [(&str, Column); 49] = [
    ("length", Column::Length),
    ("länge", Column::Length),
    ("laenge", Column::Length),
    ("diameter", Column::Diameter),
    ("front diameter", Column::Diameter),
    ("dia", Column::Diameter),
    ("ø", Column::Diameter),
    ("durchmesser", Column::Diameter),
    ("durchmesser vorn", Column::Diameter),
    ("durchmesser vorne", Column::Diameter),
    ("rear diameter", Column::RearDiameter),
    ("end diameter", Column::RearDiameter),
    ("durchmesser hinten", Column::RearDiameter),
    ("enddurchmesser", Column::RearDiameter),
    ("kind", Column::Kind),
    ("type", Column::Kind),
    ("art", Column::Kind),
    ("typ", Column::Kind),
    ("thread", Column::Thread),
    ("gewinde", Column::Thread),
    ("tolerance", Column::Tolerance),
    ("fit", Column::Tolerance),
    ("toleranz", Column::Tolerance),
    ("passung", Column::Tolerance),
    ("abmaße", Column::Tolerance),
    ("abmasse", Column::Tolerance),
    ("ra", Column::Roughness),
    ("roughness", Column::Roughness),
    ("roughness ra", Column::Roughness),
    ("rauheit", Column::Roughness),
    ("rauheit ra", Column::Roughness),
    ("rauigkeit", Column::Roughness),
    ("mittenrauwert", Column::Roughness),
    ("name", Column::Name),
    ("section", Column::Name),
    ("description", Column::Name),
    ("bezeichnung", Column::Name),
    ("benennung", Column::Name),
    ("abschnitt", Column::Name),
    ("across flats", Column::AcrossFlats),
    ("schlüsselweite", Column::AcrossFlats),
    ("schluesselweite", Column::AcrossFlats),
    ("sw", Column::AcrossFlats),
    ("sides", Column::Sides),
    ("number of flats", Column::Sides),
    ("flats", Column::Sides),
    ("flächen", Column::Sides),
    ("anzahl flächen", Column::Sides),
    ("anzahl der flächen", Column::Sides),
];

/// Reads the headings of a row. Headings that are not known are reported.
pub fn heads(path: &Path, row: &[String], at: usize, diags: &mut Vec<Diag>) -> Vec<Option<Head>> {
    let mut seen: Vec<Column> = Vec::new();
    let mut out = Vec::new();
    for (c, heading) in row.iter().enumerate() {
        if heading.is_empty() {
            out.push(None);
            continue;
        }
        let place = |what: String| {
            let file = path.display().to_string();
            Diag::new(say!(
                "table-heading",
                file = file,
                row = at + 1,
                column = letter(c),
                heading = heading,
                what = what
            ))
        };
        let (name, unit) = unit_of(heading);
        let Some((_, column)) = HEADINGS.iter().find(|(word, _)| *word == name) else {
            let near = nearest(&name, HEADINGS.iter().map(|h| h.0));
            let help = near.map_or_else(|| say!("table-form"), |near| say!("did-you-mean", near = near));
            diags.push(place(say!("table-heading-unknown")).help(help));
            out.push(None);
            continue;
        };
        if seen.contains(column) {
            diags.push(place(say!("table-heading-twice")).help(say!("table-heading-twice-help")));
        }
        seen.push(*column);
        let lengths = matches!(column, Column::Length | Column::Diameter | Column::RearDiameter | Column::AcrossFlats);
        let factor = match (unit, column) {
            (None, _) => Ok(None),
            (Some(Ok(mm)), _) => Head::factor(*column, mm).map(Some).ok_or(()),
            // In a column of words, words in brackets are not a unit: `name (as on the drawing)`.
            (Some(Err(())), Column::Tolerance | Column::Name | Column::Kind | Column::Thread) => Ok(None),
            _ => Err(()),
        };
        if factor.is_err() {
            let units = if lengths {
                "mm, cm, m, in"
            } else if *column == Column::Roughness {
                "µm, µin"
            } else if *column == Column::Tolerance {
                "mm, µm, in"
            } else {
                ""
            };
            let help = match units {
                "" => say!("table-heading-no-unit-help"),
                units => say!("table-heading-unit-help", units = units),
            };
            diags.push(place(say!("table-heading-unit")).help(help));
        }
        out.push(Some(Head { column: *column, factor: factor.unwrap_or(Some(1.0)) }));
    }
    out
}

/// The letter of a column: A, B, … Z, AA.
pub fn letter(column: usize) -> String {
    let mut n = column + 1;
    let mut out = String::new();
    while n > 0 {
        out.insert(0, char::from(b'A' + ((n - 1) % 26) as u8));
        n = (n - 1) / 26;
    }
    out
}

/// The name in a heading and the factor to mm of its unit: `length (mm)`, `diameter [in]`. None if there is no unit.
fn unit_of(heading: &str) -> (String, Option<Result<f64, ()>>) {
    let open = heading.find(['(', '[']).or_else(|| heading.rfind(',').or_else(|| heading.rfind(" in ").map(|i| i + 3)));
    let Some((name, unit)) = open.and_then(|open| heading.split_at_checked(open)) else {
        return (heading.trim().to_lowercase(), None);
    };
    let name = name.trim().trim_end_matches(" in").to_lowercase();
    let unit = unit.trim_matches(['(', ')', '[', ']', ',', ' ']).to_lowercase();
    (name, Some(unit_mm(&unit).ok_or(())))
}

/// Length of a unit in mm.
pub fn unit_mm(unit: &str) -> Option<f64> {
    Some(match unit {
        "mm" => 1.0,
        "cm" => 10.0,
        "m" => 1000.0,
        "in" | "in." | "inch" | "inches" | "zoll" | "\"" | "″" => INCH_MM,
        "µm" | "um" | "μm" | "micron" | "microns" => UM_MM,
        "µin" | "uin" | "μin" | "microinch" | "microinches" => UIN_MM,
        _ => return None,
    })
}

/// µm and µin in mm.
const UM_MM: f64 = 1e-3;
const UIN_MM: f64 = 25.4e-6;

/// A heading that is read.
pub struct Head {
    /// What its column holds.
    pub column: Column,
    /// Factor to mm, or to µm for a roughness. None: the heading does not give its unit.
    pub factor: Option<f64>,
}

impl Head {
    /// Factor from a unit, given by its length in mm, to the unit of the job. None: the column does not take this unit.
    pub fn factor(column: Column, mm: f64) -> Option<f64> {
        match column {
            Column::Length | Column::Diameter | Column::RearDiameter | Column::AcrossFlats => (mm >= 1.0).then_some(mm),
            Column::Tolerance => [1.0, INCH_MM, UM_MM].contains(&mm).then_some(mm),
            Column::Roughness => [UM_MM, UIN_MM].contains(&mm).then_some(mm / UM_MM),
            _ => None,
        }
    }
}

/// Sets the units that headings leave out. In a table in inches, deviations are in inches too, and a note says so. A
/// roughness there could be µm or µin, so its heading must give the unit.
pub fn units_left_out(
    shown: &str,
    row: &[String],
    at: usize,
    heads: &mut [Option<Head>],
    (diags, notes): (&mut Vec<Diag>, &mut Vec<String>),
) {
    let unit = |column: Column| heads.iter().flatten().find(|h| h.column == column).map(|h| h.factor);
    let of_sizes = unit(Column::Diameter).or(unit(Column::Length)).flatten();
    let inches = [Column::Diameter, Column::Length].iter().any(|c| unit(*c).flatten() == Some(INCH_MM));
    for (c, (head, heading)) in heads.iter_mut().zip(row).enumerate() {
        let Some(head) = head.as_mut().filter(|h| h.factor.is_none()) else { continue };
        match head.column {
            Column::Tolerance if of_sizes == Some(INCH_MM) => {
                head.factor = Some(INCH_MM);
                notes.push(say!("table-tolerance-in-inches", column = letter(c), heading = heading));
            }
            Column::Tolerance if of_sizes.is_some_and(|mm| mm != 1.0) => {}
            Column::Roughness if inches => {
                let (column, what) = (letter(c), say!("table-roughness-unit"));
                let what =
                    say!("table-heading", file = shown, row = at + 1, column = column, heading = heading, what = what);
                diags.push(Diag::new(what).help(say!("table-roughness-unit-help")));
            }
            _ => head.factor = Some(1.0),
        }
    }
}
