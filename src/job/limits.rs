//! What is good enough, what the planner optimises, and costs.

use super::iso286::it_width_mm;
use super::shaft::Interrupt;

/// Limits of the checks and settings of the planner. Defaults: common practice, no source.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Limits {
    /// Least lateral stiffness at the tool in N/µm (default 0.05 N/µm per mm of stock diameter).
    pub stiffness_min_n_per_um: f64,
    /// Least lateral stiffness between a grip and the guide in N/µm, a house limit (default: that at the tool).
    pub span_stiffness_min_n_per_um: f64,
    /// Largest ratio of the length of a free front to its mean finished diameter, a house rule; none: off.
    pub free_ratio: Option<f64>,
    /// Largest ratio of speed to critical speed.
    pub whirl_ratio: f64,
    /// Largest bow under rotation in mm (default 0.01 mm per mm of stock diameter).
    pub whip_mm: f64,
    /// Largest self-weight deflection over the unsupported span in mm.
    pub sag_mm: f64,
    /// Largest distance of a free front from the axis when the counter-spindle's collet comes over it, mm.
    pub pick_up_mm: f64,
    /// Largest self-weight deflection at the nose of the counter-spindle when its collet opens, mm.
    pub release_mm: f64,
    /// Share of a tolerance that deflection may use.
    pub tolerance_share: f64,
    /// Largest deflection at a cross hole under its thrust, mm.
    pub drill_mm: f64,
    /// Damping ratio of the bar's modes.
    pub damping_ratio: f64,
    /// Clearance kept between the front and the counter-spindle's bore, mm on the radius.
    pub bore_clearance_mm: f64,
    /// Factor on the torque that a grip must carry.
    pub torque_margin: f64,
    /// Largest axial load as a share of the load at which the bar buckles.
    pub buckling_share: f64,
    /// Cost of a witness line on an `avoid` surface, s.
    pub avoid_penalty_s: f64,
    /// What planning keeps in reserve; nothing if the job asks for no confidence.
    pub reserve: Reserve,
}

/// Checks with the factor by which their limits are tightened for a plan that must hold with uncertain inputs too. The proof of a
/// finished plan keeps nothing in reserve.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Reserve(pub Vec<(&'static str, f64)>);

impl Reserve {
    /// The factor of a check, at least 1.
    pub fn of(&self, check: &str) -> f64 {
        self.0.iter().find(|(name, _)| *name == check).map_or(1.0, |(_, factor)| *factor)
    }
}

impl Limits {
    /// Least lateral stiffness if a job gives none, N/µm. Common practice, no source.
    pub fn stiffness_for_bar(diameter_mm: f64) -> f64 {
        crate::fields::STIFFNESS_PER_MM * diameter_mm
    }

    /// Largest bow under rotation if a job gives none, mm. Common practice, no source.
    ///
    /// A share of the diameter means the same for any bar. At one cutting speed and one L/d, the rotating bow `e` bends the bar with
    /// the stress `σ ~ ρ v² (L/d)² e/d`, in which no size is left. What the bow may hit (the lead-in of a collet, the tools beside the
    /// bar) is made in proportion to the bar too. Derived here.
    pub fn whip_for_bar(diameter_mm: f64) -> f64 {
        crate::fields::WHIP_PER_MM * diameter_mm
    }

    /// Lets the limits that are still the default of one bar follow another bar, as in a job with that bar.
    pub fn follow_bar(&mut self, from_mm: f64, to_mm: f64) {
        let follow = |limit: &mut f64, usual: fn(f64) -> f64| {
            if (*limit - usual(from_mm)).abs() < 1e-9 * usual(from_mm) {
                *limit = usual(to_mm);
            }
        };
        follow(&mut self.stiffness_min_n_per_um, Limits::stiffness_for_bar);
        follow(&mut self.span_stiffness_min_n_per_um, Limits::stiffness_for_bar);
        follow(&mut self.whip_mm, Limits::whip_for_bar);
    }
}

/// How finely the planner searches for a plan. This is not a limit. A coarse start loses no plan, because the planner
/// searches more finely before it says that there is none.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Planning {
    /// Largest distance between stations at the start, mm.
    pub station_pitch_mm: f64,
}

/// What the planner optimises.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Objective {
    /// Least time per part.
    Time,
    /// Fewest hand-overs, then least time.
    FewestHandOvers,
    /// Largest value of the smallest margin, then least time.
    Margin,
}

/// Cost rates.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Rates {
    /// Machine cost per hour.
    pub machine_per_hour: f64,
    /// Material cost per kg.
    pub material_per_kg: f64,
    /// Currency.
    pub currency: String,
}

/// Up to this roughness a surface is never interrupted if the job does not say, Ra in µm. Common practice, no source.
const RA_NEVER_UM: f64 = 0.8;
/// Up to this roughness an interruption is avoided if the job does not say, Ra in µm. Common practice, no source.
const RA_AVOID_UM: f64 = 1.6;
/// Allowance for the rounding of a width that is calculated from deviations in decimal mm. Without it, an exact IT7
/// width would count as wider.
const ROUNDING_MM: f64 = 1e-9;

impl Interrupt {
    /// What a surface allows if the job does not say: `Never` for a tolerance of IT7 or finer or Ra 0.8 and finer,
    /// `Avoid` up to IT9 or Ra 1.6, otherwise `Free`.
    ///
    /// - **Units**: mm, µm; `diameter_mm` is the section's largest.
    /// - **Source**: common practice, no source.
    ///
    /// ```
    /// use spanhold::job::Interrupt;
    /// assert_eq!(Interrupt::usual(0.052, 22.0, None), Interrupt::Avoid);
    /// assert_eq!(Interrupt::usual(0.052, 22.0, Some(0.8)), Interrupt::Never);
    /// ```
    pub fn usual(tolerance_width_mm: f64, diameter_mm: f64, ra_um: Option<f64>) -> Interrupt {
        let within = |grade| it_width_mm(grade, diameter_mm).is_ok_and(|it| tolerance_width_mm <= it + ROUNDING_MM);
        let smooth = |limit| ra_um.is_some_and(|ra| ra <= limit);
        if within(7) || smooth(RA_NEVER_UM) {
            Interrupt::Never
        } else if within(9) || smooth(RA_AVOID_UM) {
            Interrupt::Avoid
        } else {
            Interrupt::Free
        }
    }
}
