//! The units that people read. Inside the program and in files for programs everything is metric.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A system of units. The default is the metric one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize, JsonSchema)]
pub enum Units {
    /// mm, m/min, mm/rev, µm, N.
    #[default]
    #[serde(rename = "mm")]
    Metric,
    /// in, sfm (ft/min), in/rev, µin, lbf.
    #[serde(rename = "inch")]
    Inch,
}

impl Units {
    /// The names that files and calls use.
    pub const CODES: [&str; 2] = [Units::Metric.code(), Units::Inch.code()];

    /// The units with a name.
    pub fn of(code: &str) -> Option<Units> {
        [Units::Metric, Units::Inch].into_iter().find(|units| units.code() == code)
    }

    /// As a file names them.
    pub const fn code(self) -> &'static str {
        match self {
            Units::Metric => "mm",
            Units::Inch => "inch",
        }
    }
}
