//! The units that people read. Inside the program and in files for programs everything is metric.

/// A system of units. The default is the metric one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// mm, m/min, mm/rev, µm, N.
    #[default]
    Metric,
    /// in, sfm (ft/min), in/rev, µin, lbf.
    Inch,
}

impl Units {
    /// As a file names them.
    pub const fn code(self) -> &'static str {
        match self {
            Units::Metric => "mm",
            Units::Inch => "inch",
        }
    }
}
