//! The lathe: what guides, holds and drives the bar, and how long its motions take.

use super::SAME_MM;
use super::cutting::{Holding, Side};
use super::tooling::{BackPlace, ToolPlaces};
use crate::fields::TRAY_BY_DEFAULT_MM;
use crate::lang::Units;

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
    /// Highest speed at which the bar feeder may turn the bar behind the headstock, rev/min, if it is given.
    pub bar_feed_max_rpm: Option<f64>,
    /// Counter-spindle, if it has one.
    pub counter_spindle: Option<CounterSpindle>,
    /// Time saved if a hand-over and a re-grip share one stop, s.
    pub shared_stop_saving_s: f64,
    /// Distances of the cross-driven tools from the cutting tool, on the side away from the bush, mm. At least one.
    pub cross_tool_reach_mm: Vec<f64>,
    /// Highest speed of driven tools, rev/min.
    pub driven_max_rpm: f64,
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
    /// Spreads of its own.
    pub spreads: super::Spreads,
    /// The units that numbers in its file are in.
    pub written: Units,
}

impl Machine {
    /// Side on which the finishing tool of a tandem can stand; none if the machine file lists no tools for it.
    pub fn tandem_side(&self) -> Option<Side> {
        let tools = self.tools.as_ref()?;
        let sides = [(tools.tandem, Side::Same), (tools.opposed, Side::Opposite)];
        sides.into_iter().find_map(|(can, side)| can.then_some(side))
    }

    /// Time of a re-grip that shares a stop with a hand-over, s.
    pub fn shared_regrip_s(&self) -> f64 {
        (self.headstock.regrip_s - self.shared_stop_saving_s).max(0.0)
    }

    /// Time of a hand-over, s. Zero without a counter-spindle.
    pub fn hand_over_s(&self) -> f64 {
        self.counter_spindle.as_ref().map_or(0.0, |c| c.hand_over_s)
    }

    /// Whether the counter-spindle has a centre that comes to the front face before the first cut. With a bush the bar stands out by the
    /// gap then, without one by its whole length. If the file does not give how far the centre stands out, it comes.
    pub fn centre_comes(&self, holding: Holding) -> bool {
        let Some((spindle, centre)) = self.counter_spindle.as_ref().and_then(|c| Some((c, c.centre?))) else {
            return false;
        };
        match (&self.bush, centre.stands_out_mm) {
            (Some(bush), Some(out_mm)) if holding == Holding::Bush => out_mm + bush.gap_mm >= spindle.nearest_mm,
            _ => true,
        }
    }

    /// Highest speed of the headstock with the bar behind it, rev/min: its own, or that of the bar feeder where that is lower. Feeders
    /// for bars of 3.7 m (12 ft) turn small bar at up to 10,000 rev/min and 38 mm bar at 5,000 (trade articles).
    pub fn headstock_rpm(&self) -> f64 {
        self.bar_feed_max_rpm.map_or(self.headstock.max_rpm, |feeder| feeder.min(self.headstock.max_rpm))
    }

    /// The largest part that may fall: that of the file, or with a counter-spindle the default. None: there is no counter-spindle and
    /// the file does not say it, so any part falls.
    pub fn tray(&self) -> Option<Tray> {
        self.part_off.tray.or_else(|| self.counter_spindle.as_ref().map(|_| Tray::BY_DEFAULT))
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
    /// Whether it stands still or turns with the bar, if that is given.
    pub kind: Option<BushKind>,
}

/// Whether a guide bush stands still or turns with the bar.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BushKind {
    /// It stands still, and the bar turns inside it.
    Fixed,
    /// It turns with the bar.
    Following,
}

impl BushKind {
    /// The word in the machine file and in the plan.
    pub fn key(self) -> &'static str {
        match self {
            BushKind::Fixed => "fixed",
            BushKind::Following => "following",
        }
    }
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
    /// Power of its motor, kW, if given.
    pub power_kw: Option<f64>,
    /// Share of that power that arrives at the cut.
    pub efficiency: f64,
    /// Largest torque of the spindle, N·m, if given.
    pub torque_nm: Option<f64>,
    /// Largest force with which it feeds the bar along the axis, N, if given.
    pub feed_force_n: Option<f64>,
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
    /// Largest torque of its drive, N·m, if given.
    pub torque_nm: Option<f64>,
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
    /// The centre that it can carry instead of a collet, if there is one.
    pub centre: Option<Centre>,
    /// The collets that are available.
    pub collets: Vec<Collet>,
}

/// A centre in the counter-spindle, which supports the centre hole of the front face.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Centre {
    /// Axial force with which it presses on the part, N.
    pub force_n: f64,
    /// Radial stiffness at its tip in N/µm.
    pub stiffness_n_per_um: f64,
    /// Distance from the nose of the counter-spindle to its tip, mm, if given.
    pub stands_out_mm: Option<f64>,
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
    /// The tray for parts that fall, if it is given.
    pub tray: Option<Tray>,
}

/// The largest part that may be cut off with its front free and fall into the tray.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Tray {
    /// Longest part, mm.
    pub max_length_mm: f64,
    /// Largest diameter of a part, mm.
    pub max_diameter_mm: f64,
}

impl Tray {
    /// A tray for parts up to a length and a diameter, mm.
    pub const fn new(max_length_mm: f64, max_diameter_mm: f64) -> Tray {
        Tray { max_length_mm, max_diameter_mm }
    }

    /// What may fall on a machine with a counter-spindle whose file does not say it. Common practice, no source.
    pub const BY_DEFAULT: Tray = Tray::new(TRAY_BY_DEFAULT_MM[0], TRAY_BY_DEFAULT_MM[1]);

    /// Whether a part of this length and largest diameter may fall.
    pub fn takes(&self, length_mm: f64, diameter_mm: f64) -> bool {
        length_mm <= self.max_length_mm + SAME_MM && diameter_mm <= self.max_diameter_mm + SAME_MM
    }
}

#[cfg(test)]
mod tests {
    use super::Tray;

    #[test]
    fn a_part_may_fall_up_to_both_bounds_of_a_tray() {
        let tray = Tray::new(30.0, 16.0);
        assert!(tray.takes(30.0, 16.0) && tray.takes(3.0, 1.0));
        assert!(!tray.takes(30.01, 1.0) && !tray.takes(3.0, 16.01));
        assert!(!Tray::new(0.0, 16.0).takes(0.01, 1.0));
    }

    /// 30 mm of 16 mm steel of 7.85 t/m3 are 47 g: `pi/4 d2 l rho`.
    #[test]
    fn what_falls_by_default_is_light() {
        let Tray { max_length_mm: l, max_diameter_mm: d } = Tray::BY_DEFAULT;
        let kg = std::f64::consts::PI / 4.0 * d * d * l * 7.85e-6;
        assert!((kg - 0.04735).abs() < 1e-4, "{kg}");
    }
}
