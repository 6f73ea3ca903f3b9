//! Materials: the properties that the beam and the cut need, and a table of common materials.
//!
//! How reliable the table is: modulus, density and Poisson's ratio are ordinary handbook values (EN 10277, EN 10083,
//! EN 10088, EN 12164, EN 755, ISO 5832), from memory, not re-read. Cutting speeds are for coated carbide with coolant:
//! common practice, no source. Each row names the source of its kc1.1 and mc, and how far to trust it. None of these
//! sources was re-read. Values of different authors differ by up to 70 % at thin chips.

use crate::diag::Diag;
use crate::fields::nearest;

/// A material.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Material {
    /// Name.
    pub name: String,
    /// Young's modulus in GPa.
    pub e_gpa: f64,
    /// Density in kg/m³.
    pub density_kg_per_m3: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Specific cutting force at 1 mm chip thickness, N/mm².
    pub kc11_n_per_mm2: f64,
    /// Exponent of the chip thickness.
    pub mc: f64,
    /// Usual cutting speeds, low and high, m/min.
    pub vc_m_per_min: Option<(f64, f64)>,
}

/// How reliable the cutting-force values of a row are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Confidence {
    /// The source is remembered with certainty.
    High,
    /// The source is remembered fairly well, or sources differ.
    Medium,
    /// An estimate.
    Low,
}

impl Confidence {
    /// As a word.
    pub fn word(self) -> &'static str {
        match self {
            Confidence::High => "high",
            Confidence::Medium => "medium",
            Confidence::Low => "low",
        }
    }
}

/// Family of materials.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Group {
    /// Carbon and alloy steels.
    Steel,
    /// Stainless steels.
    StainlessSteel,
    /// Titanium alloys.
    Titanium,
    /// Cobalt-chromium alloys.
    CobaltChromium,
    /// Copper alloys.
    Copper,
    /// Aluminium alloys.
    Aluminium,
    /// Plastics.
    Plastic,
}

impl Group {
    /// As a word.
    pub fn word(self) -> &'static str {
        match self {
            Group::Steel => "steel",
            Group::StainlessSteel => "stainless steel",
            Group::Titanium => "titanium",
            Group::CobaltChromium => "cobalt-chromium",
            Group::Copper => "copper alloy",
            Group::Aluminium => "aluminium",
            Group::Plastic => "plastic",
        }
    }
}

/// One row of the table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Row {
    /// Name.
    pub name: &'static str,
    /// Material number, or the number of its standard.
    pub number: &'static str,
    /// Family it belongs to.
    pub group: Group,
    /// Other names it is known by.
    pub aliases: &'static [&'static str],
    /// State of the material that the values are for.
    pub state: &'static str,
    /// Young's modulus in GPa.
    pub e_gpa: f64,
    /// Density in kg/m³.
    pub density_kg_per_m3: f64,
    /// Poisson's ratio.
    pub poisson: f64,
    /// Specific cutting force at 1 mm chip thickness, N/mm².
    pub kc11_n_per_mm2: f64,
    /// Exponent of the chip thickness.
    pub mc: f64,
    /// Usual cutting speeds, low and high, m/min.
    pub vc_m_per_min: (f64, f64),
    /// Where kc1.1 and mc come from.
    pub cutting_source: &'static str,
    /// How far to trust kc1.1 and mc.
    pub confidence: Confidence,
}

impl Row {
    /// The material of the row.
    pub fn material(&self) -> Material {
        Material {
            name: self.name.to_owned(),
            e_gpa: self.e_gpa,
            density_kg_per_m3: self.density_kg_per_m3,
            poisson: self.poisson,
            kc11_n_per_mm2: self.kc11_n_per_mm2,
            mc: self.mc,
            vc_m_per_min: Some(self.vc_m_per_min),
        }
    }
}

const TSCHAETSCH: &str = "from memory of Tschätsch, Praxis der Zerspantechnik, not checked against the book";
const KOENIG: &str =
    "from memory of König and Essel, Spezifische Schnittkraftwerte (1973), not checked against the book";
const ESTIMATE: &str = "an estimate, no source";
const ALUMINIUM: &str = "an estimate from the group of aluminium alloys (600 to 850 N/mm²), no source";
const STEEL_NU: f64 = 0.3;
const ALUMINIUM_NU: f64 = 0.33;

use Confidence::{High, Low, Medium};
use Group::{Aluminium, CobaltChromium, Copper, Plastic, StainlessSteel, Steel, Titanium};

#[rustfmt::skip]
mod table {
    use super::*;

    #[allow(clippy::too_many_arguments)]
    const fn row(
        name: &'static str, number: &'static str, group: Group, aliases: &'static [&'static str], state: &'static str,
        elastic: (f64, f64, f64), cutting: (f64, f64), vc: (f64, f64), cutting_source: &'static str, confidence: Confidence,
    ) -> Row {
        Row {
            name, number, group, aliases, state, e_gpa: elastic.0, density_kg_per_m3: elastic.1, poisson: elastic.2,
            kc11_n_per_mm2: cutting.0, mc: cutting.1, vc_m_per_min: vc, cutting_source, confidence,
        }
    }

    /// The table; `elastic` is modulus, density, Poisson's ratio.
    pub const ROWS: [Row; 22] = [
        row("11SMn30", "1.0715", Steel, &["9SMn28"], "cold drawn", (206.0, 7850.0, STEEL_NU), (1200.0, 0.18), (120.0, 300.0),
            "from memory of König and Essel (1973) and Tabellenbuch Metall, group of free-cutting steels, not checked against the book", Medium),
        row("C45", "1.0503", Steel, &["Ck45", "C45E", "1.1191"], "normalised or drawn", (206.0, 7850.0, STEEL_NU), (2220.0, 0.14), (100.0, 220.0),
            "from memory of the values of Kienzle and Victor as printed in Tschätsch, not checked against the book; König and Essel (1973) have 1659 / 0.21", High),
        row("C60", "1.0601", Steel, &["Ck60", "C60E"], "normalised", (206.0, 7850.0, STEEL_NU), (2130.0, 0.18), (90.0, 180.0), TSCHAETSCH, High),
        row("E295", "1.0050", Steel, &["St50", "St50-2", "E295 (St50)"], "as rolled or drawn", (206.0, 7850.0, STEEL_NU), (1990.0, 0.26), (120.0, 250.0), TSCHAETSCH, High),
        row("E335", "1.0060", Steel, &["St60", "St60-2", "E335 (St60)"], "as rolled or drawn", (206.0, 7850.0, STEEL_NU), (2110.0, 0.17), (100.0, 220.0), TSCHAETSCH, High),
        row("E360", "1.0070", Steel, &["St70", "St70-2", "E360 (St70)"], "as rolled or drawn", (206.0, 7850.0, STEEL_NU), (2260.0, 0.30), (90.0, 200.0), TSCHAETSCH, High),
        row("16MnCr5", "1.7131", Steel, &[], "annealed or normalised", (206.0, 7850.0, STEEL_NU), (2100.0, 0.26), (120.0, 250.0),
            "from memory of Tschätsch, not checked against the book; König and Essel (1973) have 1411 / 0.30", High),
        row("34CrMo4", "1.7220", Steel, &[], "quenched and tempered", (206.0, 7850.0, STEEL_NU), (2240.0, 0.21), (90.0, 170.0), TSCHAETSCH, High),
        row("42CrMo4", "1.7225", Steel, &[], "quenched and tempered", (206.0, 7850.0, STEEL_NU), (2500.0, 0.26), (80.0, 160.0),
            "from memory of Tschätsch, not checked against the book; König and Essel (1973) have 1773 / 0.17", High),
        row("100Cr6", "1.3505", Steel, &[], "spheroidised", (208.0, 7830.0, STEEL_NU), (1726.0, 0.28), (90.0, 180.0), KOENIG, Medium),
        row("X5CrNi18-10", "1.4301", StainlessSteel, &["304", "AISI 304"], "solution annealed", (200.0, 7900.0, STEEL_NU), (2350.0, 0.21), (80.0, 160.0),
            "from memory of Tabellenbuch Metall, not checked against the book; handbook values go down to 2000", Medium),
        row("X8CrNiS18-9", "1.4305", StainlessSteel, &["303", "AISI 303"], "solution annealed", (200.0, 7900.0, STEEL_NU), (1900.0, 0.21), (100.0, 190.0),
            "an estimate: about 20 % below 1.4301 because of its sulphur, no source", Low),
        row("X2CrNiMo17-12-2", "1.4404", StainlessSteel, &["316L", "AISI 316L"], "solution annealed", (200.0, 8000.0, STEEL_NU), (2300.0, 0.21), (70.0, 140.0),
            "an estimate: the values of 1.4301, no source", Low),
        row("X5CrNiCuNb16-4", "1.4542", StainlessSteel, &["17-4PH", "630", "X5CrNiCuNb16-4 (17-4PH)"], "aged to 930-1070 N/mm²", (200.0, 7800.0, STEEL_NU), (2400.0, 0.21), (60.0, 120.0), ESTIMATE, Low),
        row("X46Cr13", "1.4034", StainlessSteel, &[], "annealed", (215.0, 7700.0, STEEL_NU), (1900.0, 0.21), (100.0, 180.0), ESTIMATE, Low),
        row("Ti-6Al-4V", "3.7165", Titanium, &["TiAl6V4", "Titanium grade 5", "Ti grade 5"], "annealed", (114.0, 4430.0, 0.34), (1370.0, 0.21), (40.0, 80.0),
            "from memory of handbook values for titanium alloys, not checked against a book", Medium),
        row("CoCrMo", "ISO 5832-12", CobaltChromium, &["CoCr28Mo6"], "wrought", (220.0, 8280.0, 0.30), (2700.0, 0.24), (25.0, 60.0), ESTIMATE, Low),
        row("CuZn39Pb3", "CW614N", Copper, &["Ms58"], "half hard", (97.0, 8470.0, 0.34), (780.0, 0.18), (150.0, 300.0),
            "from memory of Tschätsch (brass), not checked against the book; values of leaded brass go down to 600", Medium),
        row("EN AW-2011", "3.1655", Aluminium, &["AlCu6BiPb", "2011"], "T3 or T6", (71.0, 2840.0, ALUMINIUM_NU), (650.0, 0.25), (200.0, 500.0), ALUMINIUM, Low),
        row("EN AW-6082", "3.2315", Aluminium, &["AlSi1MgMn", "6082"], "T6", (70.0, 2700.0, ALUMINIUM_NU), (750.0, 0.25), (200.0, 500.0), ALUMINIUM, Low),
        row("EN AW-7075", "3.4365", Aluminium, &["AlZn5.5MgCu", "7075"], "T6", (71.0, 2810.0, ALUMINIUM_NU), (850.0, 0.25), (200.0, 450.0), ALUMINIUM, Low),
        row("PEEK", "", Plastic, &["PEEK (unfilled)"], "unfilled", (3.8, 1300.0, 0.38), (300.0, 0.20), (100.0, 300.0), ESTIMATE, Low),
    ];
}

pub use table::ROWS;

/// A name in small letters, without spaces and hyphens, for comparison.
fn plain(name: &str) -> String {
    name.chars().filter(|c| !c.is_whitespace() && *c != '-').flat_map(char::to_lowercase).collect()
}

/// The row with a name or number. Capitals, spaces and hyphens do not matter.
///
/// ```
/// use spanhold::job::materials::find;
/// assert_eq!(find("x5crni18 10")?.number, "1.4301");
/// assert_eq!(find("304")?.name, "X5CrNi18-10");
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// There is no such row. The help suggests the nearest name.
pub fn find(name: &str) -> Result<&'static Row, Diag> {
    let wanted = plain(name);
    let names = |row: &'static Row| [row.name, row.number].into_iter().chain(row.aliases.iter().copied());
    if !wanted.is_empty()
        && let Some(row) = ROWS.iter().find(|row| names(row).any(|known| plain(known) == wanted))
    {
        return Ok(row);
    }
    let own = "or give your own: {name, e_gpa, density, kc11, mc, vc: [low, high]}";
    let help = match nearest(name, ROWS.iter().flat_map(names).filter(|known| !known.is_empty())) {
        Some(near) => format!("did you mean `{near}`? {own}"),
        None => {
            let all: Vec<&str> = ROWS.iter().map(|row| row.name).collect();
            format!("known are {}; {own}", all.join(", "))
        }
    };
    Err(Diag::new(format!("no material `{name}` in the table")).help(help))
}
