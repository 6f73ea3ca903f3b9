//! The tools that a shop or a job lists, with the cuts that they take.

/// What a listed tool does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToolKind {
    /// Turns along the bar.
    Turning,
    /// Turns along the bar behind a shoulder that steps down.
    BackTurning,
    /// Plunges grooves.
    Grooving,
    /// Parts off.
    PartOff,
    /// Cuts threads in passes.
    Threading,
}

impl ToolKind {
    /// All of them.
    pub const ALL: [ToolKind; 5] =
        [ToolKind::Turning, ToolKind::BackTurning, ToolKind::Grooving, ToolKind::PartOff, ToolKind::Threading];

    /// The word of the file.
    pub const fn key(self) -> &'static str {
        match self {
            ToolKind::Turning => "turning",
            ToolKind::BackTurning => "back_turning",
            ToolKind::Grooving => "grooving",
            ToolKind::PartOff => "part_off",
            ToolKind::Threading => "threading",
        }
    }

    /// Whether it turns along the bar.
    pub fn turns(self) -> bool {
        matches!(self, ToolKind::Turning | ToolKind::BackTurning)
    }
}

/// Speed and feed of a cut. None: the values under `cutting`, or of the material.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct CutData {
    /// Cutting speed, m/min.
    pub vc_m_per_min: Option<f64>,
    /// Feed, mm/rev; for finishing the largest.
    pub feed_mm: Option<f64>,
}

impl CutData {
    /// These values, and where there is none those of another cut.
    #[must_use]
    pub fn or(self, other: CutData) -> CutData {
        CutData { vc_m_per_min: self.vc_m_per_min.or(other.vc_m_per_min), feed_mm: self.feed_mm.or(other.feed_mm) }
    }
}

/// Which cuts a turning tool takes, with what.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Cuts {
    /// Roughing. None: it does not rough.
    pub rough: Option<CutData>,
    /// Finishing. None: it does not finish.
    pub finish: Option<CutData>,
}

/// A tool of the list.
#[derive(Debug, Clone, PartialEq)]
pub struct ListedTool {
    /// Name.
    pub name: String,
    /// What it does.
    pub kind: ToolKind,
    /// Where it stands.
    pub station: Option<String>,
    /// Its insert, in the shop's words.
    pub insert: Option<String>,
    /// Nose radius, mm.
    pub nose_radius_mm: Option<f64>,
    /// Approach angle, degrees.
    pub approach_deg: Option<f64>,
    /// Largest depth of cut, mm.
    pub ap_max_mm: Option<f64>,
    /// Width of a grooving or part-off tool, mm.
    pub width_mm: Option<f64>,
    /// Its cuts in any material.
    pub cuts: Cuts,
    /// Its cuts in some materials, by name.
    pub by_material: Vec<(String, Cuts)>,
}

impl ListedTool {
    /// The same tool with its cuts in a material.
    #[must_use]
    pub fn in_material(mut self, material: &str) -> ListedTool {
        if let Some((_, own)) = self.by_material.iter().find(|(name, _)| name == material) {
            let both = |own: Option<CutData>, any: Option<CutData>| match (own, any) {
                (Some(own), Some(any)) => Some(own.or(any)),
                (own, any) => own.or(any),
            };
            self.cuts = Cuts { rough: both(own.rough, self.cuts.rough), finish: both(own.finish, self.cuts.finish) };
        }
        self.by_material.clear();
        self
    }

    /// The only cut of a tool that does not turn along the bar.
    pub fn cut(&self) -> CutData {
        self.cuts.finish.or(self.cuts.rough).unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use super::ToolKind;

    #[test]
    fn the_kinds_are_those_of_the_schema() {
        assert_eq!(ToolKind::ALL.map(ToolKind::key), crate::fields::TOOL_KINDS);
    }
}
