//! What is good enough, what the planner optimises, and costs.

use super::iso286::it_width_mm;
use super::shaft::Interrupt;

/// Limits of the checks and settings of the planner. Defaults: common practice, no source.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Limits {
    /// Least lateral stiffness in N/µm (default 0.05 N/µm per mm of stock diameter).
    pub stiffness_min_n_per_um: f64,
    /// Largest ratio of speed to critical speed.
    pub whirl_ratio: f64,
    /// Largest bow under rotation in mm.
    pub whip_mm: f64,
    /// Largest self-weight deflection over the unsupported span in mm.
    pub sag_mm: f64,
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
    /// Cost of a witness line on an `avoid` surface, s.
    pub avoid_penalty_s: f64,
}

impl Limits {
    /// Least lateral stiffness if a job gives none, N/µm. Common practice, no source.
    pub fn stiffness_for_bar(diameter_mm: f64) -> f64 {
        crate::fields::STIFFNESS_PER_MM * diameter_mm
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

/// How inputs scatter from part to part and from machine to machine, for `plan --scatter`. A spread is a standard
/// deviation as a share of the value. The values are log-normal, so that none becomes negative. Defaults: common
/// practice, no source.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Scatter {
    /// Sampled parts.
    pub samples: usize,
    /// Seed of the samples.
    pub seed: u64,
    /// Spread of the bow left in the shaft.
    pub straightness: f64,
    /// Spread of every support's stiffness. Each support scatters independently.
    pub supports: f64,
    /// Spread of the specific cutting force.
    pub kc: f64,
    /// Spread of Young's modulus.
    pub e: f64,
    /// Spread of the damping ratio.
    pub damping: f64,
    /// Spread of the bar's diameter, mm. None: spread evenly over its tolerance.
    pub bar_mm: Option<f64>,
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
