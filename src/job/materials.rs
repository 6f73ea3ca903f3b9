//! Materials: the properties that the beam and the cut need, and a table of common materials.
//!
//! How reliable the table is: modulus, density and Poisson's ratio are ordinary handbook values (EN 10277, EN 10083,
//! EN 10088, EN 12164, EN 755, ISO 5832), from memory, not re-read; numbers and names are from memory of the same
//! standards. Names of other countries are those of grades that are near, not equal. Cutting speeds are for coated
//! carbide with coolant: common practice, no source. Each row names the source of its kc1.1 and mc, and how far to trust
//! it. A grade without values of its own has those of the nearest grade of the table. Where no grade is near, it has the
//! value of its group in a tool maker's catalogue. Values of different authors differ by up to 70 % at thin chips.

/// A source: the values of another row.
macro_rules! like {
    ($name:literal) => {
        concat!("an estimate: the values of ", $name, ", no source")
    };
}

/// A source: a group of a catalogue that was seen.
macro_rules! group {
    ($group:literal) => {
        concat!("value of its group in a tool maker's catalogue, 2022, p. 111: ", $group)
    };
}

mod class;
mod meant;
mod names;
mod others;
mod speeds;
mod stainless;
mod steels;

pub use class::{CLASSES, Class};
pub use names::{known, matching};
pub use speeds::{FEED_DIAMETERS_MM, SOURCES, Speeds, ToothFeed, fz_mm};

use crate::diag::Diag;
use crate::say;

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
    /// What gives the speeds and feeds of drills, taps and cutters.
    pub class: Class,
    /// Whether the class was worked out from the other values, because nobody gave it.
    pub class_assumed: bool,
    /// Spreads of its own.
    pub spreads: super::Spreads,
}

/// How reliable the cutting-force values of a row are.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Confidence {
    /// The source names the grade, and was seen or is remembered with certainty.
    High,
    /// The source is remembered fairly well, or sources differ; or a group whose values agree with those of its grades.
    Medium,
    /// An estimate; or a group whose values are known to stray from those of its grades, or that does not fit well.
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
    /// Tool steels.
    ToolSteel,
    /// Stainless steels.
    StainlessSteel,
    /// Titanium alloys.
    Titanium,
    /// Cobalt-chromium alloys.
    CobaltChromium,
    /// Nickel alloys.
    Nickel,
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
            Group::ToolSteel => "tool steel",
            Group::StainlessSteel => "stainless steel",
            Group::Titanium => "titanium",
            Group::CobaltChromium => "cobalt-chromium",
            Group::Nickel => "nickel alloy",
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
    /// What gives the speeds and feeds of drills, taps and cutters.
    pub class: Class,
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
    /// All that it is called: name, number, other names.
    pub fn names(&self) -> impl Iterator<Item = &'static str> {
        let number = Some(self.number).filter(|number| !number.is_empty());
        [self.name].into_iter().chain(number).chain(self.aliases.iter().copied())
    }

    /// Family it belongs to.
    pub fn group(&self) -> Group {
        self.class.group()
    }

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
            class: self.class,
            class_assumed: false,
            spreads: super::Spreads::new(),
        }
    }
}

const TSCHAETSCH: &str = "from memory of Tschätsch, Praxis der Zerspantechnik, not checked against the book";
const KOENIG: &str =
    "from memory of König and Essel, Spezifische Schnittkraftwerte (1973), not checked against the book";
const ESTIMATE: &str = "an estimate, no source";
const ALUMINIUM: &str = "an estimate from the group of aluminium alloys (600 to 850 N/mm²), no source";

#[expect(clippy::too_many_arguments, reason = "the columns of a table")]
const fn row(
    name: &'static str,
    number: &'static str,
    class: Class,
    aliases: &'static [&'static str],
    state: &'static str,
    (e_gpa, density_kg_per_m3, poisson): (f64, f64, f64),
    (kc11_n_per_mm2, mc): (f64, f64),
    vc_m_per_min: (f64, f64),
    cutting_source: &'static str,
    confidence: Confidence,
) -> Row {
    Row {
        name,
        number,
        class,
        aliases,
        state,
        e_gpa,
        density_kg_per_m3,
        poisson,
        kc11_n_per_mm2,
        mc,
        vc_m_per_min,
        cutting_source,
        confidence,
    }
}

/// The table, group after group.
pub fn rows() -> impl Iterator<Item = &'static Row> + Clone {
    [steels::ROWS, stainless::ROWS, others::ROWS].into_iter().flatten()
}

/// The row with a name or number.
///
/// ```
/// use spanhold::job::materials::find;
/// assert_eq!(find("x5crni18 10")?.number, "1.4301");
/// assert_eq!(find("EN 10088-3 1.4301")?.name, "X5CrNi18-10");
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// There is no such row. The help suggests a name that is near, but for a number only one of the same family.
pub fn find(name: &str) -> Result<&'static Row, Diag> {
    known(name).ok_or_else(|| Diag::new(say!("material-unknown", name = name)).help(meant::advice(name)))
}
