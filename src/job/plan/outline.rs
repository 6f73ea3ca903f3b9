//! What a plan contains for drawing: outline of shaft and machine, utilisation along the turned length.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The shaft as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ShaftOutline {
    pub stock_diameter_mm: f64,
    pub stock_label: String,
    pub bar_length_mm: f64,
    pub sections: Vec<SectionOutline>,
    pub features: Vec<FeatureOutline>,
}

/// A section as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct SectionOutline {
    /// From 1.
    pub number: usize,
    pub name: String,
    /// `cylinder`, `thread`, `taper`, `groove`, `knurl` or `flats`.
    pub kind: String,
    pub from_mm: f64,
    pub to_mm: f64,
    pub front_diameter_mm: f64,
    pub rear_diameter_mm: f64,
    /// Minor diameter of a thread, or width across flats.
    pub inner_diameter_mm: Option<f64>,
    /// As on a drawing: `Ø18 h9`, `M16x1.5`, `Ø18/22`, `AF 17`.
    pub label: String,
    pub tolerance: String,
    pub ra_um: Option<f64>,
    pub interrupt: String,
    pub grip: bool,
}

/// A feature as drawn.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct FeatureOutline {
    /// Kind of feature, such as `cross_hole`, `keyseat` or `centre_hole`.
    pub kind: String,
    pub label: String,
    pub from_mm: f64,
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
    pub headstock_nearest_mm: f64,
    pub headstock_farthest_mm: f64,
    pub headstock_hold_mm: f64,
    pub counter_spindle_nearest_mm: Option<f64>,
    pub counter_spindle_farthest_mm: Option<f64>,
    pub bore_depth_mm: Option<f64>,
    pub sleeve_pitch_mm: Option<f64>,
    pub collet_hold_mm: Option<f64>,
    pub part_off_width_mm: f64,
    pub whirl_ratio_limit: f64,
}

/// One point of the utilisation chart.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct TracePoint {
    pub turned_mm: f64,
    pub stage: usize,
    pub rpm: f64,
    /// The check closest to its limit here.
    pub check: String,
    pub utilisation: f64,
    /// Utilisation of each check here. For `chatter` this is an upper bound.
    pub all: Vec<(String, f64)>,
}
