//! What a plan contains for drawing: outline of shaft and machine, utilisation along the turned length.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The shaft as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ShaftOutline {
    /// Diameter of the bar.
    pub stock_diameter_mm: f64,
    /// Inner diameter of a hollow bar. None: it is solid.
    #[serde(default)]
    pub stock_bore_mm: Option<f64>,
    /// The bar in words.
    pub stock_label: String,
    /// Width of the tolerance of the bar. None: it is not given.
    #[serde(default)]
    pub stock_tolerance_mm: Option<f64>,
    /// Length of the bar.
    pub bar_length_mm: f64,
    /// Sections from the front face.
    pub sections: Vec<SectionOutline>,
    /// Features to be drawn.
    pub features: Vec<FeatureOutline>,
}

/// A section as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct SectionOutline {
    /// From 1.
    pub number: usize,
    /// Name of the section.
    pub name: String,
    /// `cylinder`, `thread`, `taper`, `groove`, `knurl` or `flats`.
    pub kind: String,
    /// Front end.
    pub from_mm: f64,
    /// Rear end.
    pub to_mm: f64,
    /// Diameter at the front end.
    pub front_diameter_mm: f64,
    /// Diameter at the rear end.
    pub rear_diameter_mm: f64,
    /// Minor diameter of a thread, or width across flats.
    pub inner_diameter_mm: Option<f64>,
    /// As on a drawing: `Ø18 h9`, `M16x1.5`, `Ø18/22`, `AF 17`.
    pub label: String,
    /// Tolerance of the diameter.
    pub tolerance: String,
    /// Roughness Ra.
    pub ra_um: Option<f64>,
    /// `never`, `avoid` or `free`.
    pub interrupt: String,
    /// Whether a collet may hold it.
    pub grip: bool,
    /// Chamfer or radius of the front end, as on a drawing: `1×45°`, `R0.5`. None: a sharp edge.
    #[serde(default)]
    pub front_edge: Option<String>,
    /// The same of the rear end.
    #[serde(default)]
    pub rear_edge: Option<String>,
    /// The diameter that grinding leaves; the others are those that are turned. None: it is not ground.
    #[serde(default)]
    pub ground_diameter_mm: Option<f64>,
    /// Its tolerance.
    #[serde(default)]
    pub ground_tolerance: Option<String>,
    /// Its roughness Ra.
    #[serde(default)]
    pub ground_ra_um: Option<f64>,
}

impl SectionOutline {
    /// Diameter at a place, mm: on a taper it changes from end to end.
    pub fn diameter_at_mm(&self, at_mm: f64) -> f64 {
        let share = if self.to_mm > self.from_mm { (at_mm - self.from_mm) / (self.to_mm - self.from_mm) } else { 1.0 };
        self.front_diameter_mm + (self.rear_diameter_mm - self.front_diameter_mm) * share
    }
}

/// A feature as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct FeatureOutline {
    /// Kind of feature, such as `cross_hole`, `keyseat` or `centre_hole`.
    pub kind: String,
    /// The feature in words.
    pub label: String,
    /// Front end.
    pub from_mm: f64,
    /// Rear end.
    pub to_mm: f64,
    /// Diameter of a hole, or width of a keyseat.
    pub size_mm: f64,
    /// Depth of a keyseat.
    pub depth_mm: Option<f64>,
}

/// The machine as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct LayoutOutline {
    /// Gap between tool and bush. Without a bush: gap between tool and collet.
    pub gap_mm: f64,
    /// Length of the bush land. None: without a bush.
    pub bush_land_mm: Option<f64>,
    /// `fixed`: the bush stands still; `following`: it turns with the bar. None: without a bush, or not given.
    #[serde(default)]
    pub bush_kind: Option<String>,
    /// Nearest place of the headstock's nose to the bush face.
    pub headstock_nearest_mm: f64,
    /// Farthest place of the headstock's nose.
    pub headstock_farthest_mm: f64,
    /// Length that the headstock's collet holds.
    pub headstock_hold_mm: f64,
    /// Nearest place of the counter-spindle's nose to the bush face.
    pub counter_spindle_nearest_mm: Option<f64>,
    /// Farthest place of the counter-spindle's nose.
    pub counter_spindle_farthest_mm: Option<f64>,
    /// Depth of the counter-spindle's bore.
    pub bore_depth_mm: Option<f64>,
    /// Distance between supports in the bore.
    pub sleeve_pitch_mm: Option<f64>,
    /// Length that the counter-spindle's collet holds.
    pub collet_hold_mm: Option<f64>,
    /// Width of the part-off tool.
    pub part_off_width_mm: f64,
    /// Limit of the check `whirl`.
    pub whirl_ratio_limit: f64,
}

/// One point of the utilisation chart.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct TracePoint {
    /// Turned length.
    pub turned_mm: f64,
    /// Number of the stage, from 1.
    pub stage: usize,
    /// Speed, rev/min.
    pub rpm: f64,
    /// The check closest to its limit here.
    pub check: String,
    /// Share of its limit.
    pub utilisation: f64,
    /// Utilisation of each check here. For `chatter` this is an upper bound.
    pub all: Vec<(String, f64)>,
}
