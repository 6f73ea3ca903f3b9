//! The lathe: what guides, holds and drives the bar, and how long its motions take.

use super::tooling::{BackPlace, ToolPlaces};

/// A sliding-head lathe.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Machine {
    /// Name.
    pub name: String,
    /// Guide bush, if it has one.
    pub bush: Option<Bush>,
    /// How the bar is held without the bush, if that is possible.
    pub no_bush: Option<NoBush>,
    /// Headstock.
    pub headstock: Headstock,
    /// Counter-spindle, if it has one.
    pub counter_spindle: Option<CounterSpindle>,
    /// Time saved if a hand-over and a re-grip share one stop, s.
    pub shared_stop_saving_s: f64,
    /// Distances of the cross-driven tools from the cutting tool, on the side away from the bush, mm. At least one.
    pub cross_tool_reach_mm: Vec<f64>,
    /// Time that every travel takes in addition to its cut, s.
    pub segment_overhead_s: f64,
    /// Part-off.
    pub part_off: PartOff,
    /// End of the bar that cannot be gripped (chamfer, bar-feed end piece), mm.
    pub bar_end_mm: f64,
    /// Length faced off at the front of every part, mm.
    pub facing_mm: f64,
    /// Places for tools, if they are given.
    pub tools: Option<ToolPlaces>,
    /// Time of one tool change, s.
    pub tool_change_s: f64,
    /// Time of loading a new bar, s.
    pub bar_change_s: f64,
    /// Speed of rapid motions, m/min.
    pub rapid_m_per_min: f64,
}

impl Machine {
    /// Time of a re-grip that shares a stop with a hand-over, s.
    pub fn shared_regrip_s(&self) -> f64 {
        (self.headstock.regrip_s - self.shared_stop_saving_s).max(0.0)
    }

    /// Time of a hand-over, s. Zero without a counter-spindle.
    pub fn hand_over_s(&self) -> f64 {
        self.counter_spindle.as_ref().map_or(0.0, |c| c.hand_over_s)
    }

    /// The collet with a name. Names are unique.
    pub fn collet(&self, name: &str) -> Option<&Collet> {
        self.counter_spindle.as_ref()?.collets.iter().find(|c| c.name == name)
    }
}

/// The guide bush.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Bush {
    /// Largest bar in mm.
    pub max_bar_mm: f64,
    /// Length of the guiding land in mm.
    pub land_mm: f64,
    /// Distance from the tool tip to the bush face in mm.
    pub gap_mm: f64,
    /// Radial stiffness in N/µm, shared equally by the two ends of the land.
    pub stiffness_n_per_um: f64,
    /// Length of the land that must stay on raw bar at a pull-back, mm.
    pub engagement_min_mm: f64,
}

/// Work without the guide bush.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct NoBush {
    /// Largest bar in mm.
    pub max_bar_mm: f64,
    /// Distance from the end of the stage to the headstock collet's nose in mm.
    pub collet_gap_mm: f64,
}

/// The headstock: it holds the raw bar and feeds it.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Headstock {
    /// Smallest distance from the bush face to the collet nose, mm.
    pub nearest_mm: f64,
    /// Stroke in mm. The largest distance of the nose is `nearest + stroke`.
    pub stroke_mm: f64,
    /// Length held by the collet in mm.
    pub hold_mm: f64,
    /// Radial stiffness in N/µm, shared equally by the two ends of the hold.
    pub stiffness_n_per_um: f64,
    /// Highest speed, rev/min.
    pub max_rpm: f64,
    /// Time of one re-grip in s.
    pub regrip_s: f64,
    /// Clamping force of its collet, the sum of the radial forces, N, if given.
    pub clamp_force_n: Option<f64>,
    /// Coefficient of friction between its collet and the bar.
    pub friction: f64,
}

impl Headstock {
    /// Largest distance from the bush face to the collet nose, mm.
    pub fn farthest_mm(&self) -> f64 {
        self.nearest_mm + self.stroke_mm
    }
}

/// The counter-spindle.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct CounterSpindle {
    /// Smallest distance from the bush face to its nose, mm.
    pub nearest_mm: f64,
    /// Largest distance from the bush face to its nose, mm.
    pub farthest_mm: f64,
    /// Diameter of the bore in mm.
    pub bore_mm: f64,
    /// Depth of the bore from the nose in mm.
    pub bore_depth_mm: f64,
    /// Radial stiffness in N/µm, shared equally by the two ends of the hold.
    pub stiffness_n_per_um: f64,
    /// Highest speed, rev/min.
    pub max_rpm: f64,
    /// Time of one hand-over in s.
    pub hand_over_s: f64,
    /// Coefficient of friction between collet and part.
    pub friction: f64,
    /// Where the rear end is worked on.
    pub back_place: BackPlace,
    /// Time of unloading the finished part, s.
    pub unload_s: f64,
    /// Axial force that it keeps on the gripped shaft, N; positive pulls, negative presses.
    pub axial_load_n: f64,
    /// Torsional stiffness of the spindle with its drive, N·m/rad, if given.
    pub torsional_n_m_per_rad: Option<f64>,
    /// Angle between both spindles, degrees.
    pub phase_error_deg: f64,
    /// Support inside the bore, if it has one.
    pub sleeve: Option<Sleeve>,
    /// The collets that are available.
    pub collets: Vec<Collet>,
}

/// A support sleeve inside the counter-spindle's bore.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Sleeve {
    /// Distance between supports, counted from the rear end of the collet's hold, mm.
    pub pitch_mm: f64,
    /// Radial stiffness of each support in N/µm.
    pub stiffness_n_per_um: f64,
}

/// A counter-spindle collet.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Collet {
    /// Name.
    pub name: String,
    /// Smallest diameter it holds, mm.
    pub smallest_mm: f64,
    /// Largest diameter it holds, mm.
    pub largest_mm: f64,
    /// Length it holds, mm.
    pub hold_mm: f64,
    /// Largest diameter that passes when open, mm.
    pub passes_mm: f64,
    /// Clamping force, the sum of the radial forces, N.
    pub clamp_force_n: f64,
    /// Run-out at its nose, the full reading, mm, if given.
    pub run_out_mm: Option<f64>,
}

impl Collet {
    /// Whether it holds a diameter.
    pub fn holds(&self, diameter_mm: f64) -> bool {
        self.smallest_mm <= diameter_mm && diameter_mm <= self.largest_mm
    }
}

/// Part-off.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct PartOff {
    /// Width in mm.
    pub width_mm: f64,
    /// Time in s.
    pub time_s: f64,
}
