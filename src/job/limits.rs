//! What counts as good enough, what the plan is to make best, and what things cost.

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
    /// Largest self-weight deflection at the old nose when the collet opens, mm.
    pub release_mm: f64,
    /// Share of a tolerance that deflection may use.
    pub tolerance_share: f64,
    /// Largest deflection at a cross hole under its thrust, mm.
    pub drill_mm: f64,
    /// Damping ratio of the bar's modes.
    pub damping_ratio: f64,
    /// Clearance kept between the front and the counter-spindle's bore, mm on the radius.
    pub bore_clearance_mm: f64,
    /// Margin on the torque a grip must carry.
    pub torque_margin: f64,
    /// What a witness line on an `avoid` surface costs, s.
    pub avoid_penalty_s: f64,
}

impl Limits {
    /// Least lateral stiffness where a job gives none, N/µm.
    pub fn stiffness_for_bar(diameter_mm: f64) -> f64 {
        crate::fields::STIFFNESS_PER_MM * diameter_mm
    }
}

/// How finely a plan is looked for. No limit: a coarse start finds no less, for the planner looks finer before it says no.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Planning {
    /// Coarsest distance of stations to start with, mm.
    pub station_pitch_mm: f64,
}

/// How inputs scatter from part to part and from machine to machine, for `plan --scatter`. Spreads are standard
/// deviations as a share of the value (log-normal, so that nothing turns negative). Defaults: common practice, no source.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Scatter {
    /// Sampled parts.
    pub samples: usize,
    /// Seed of the samples.
    pub seed: u64,
    /// Spread of the bow left in the shaft.
    pub straightness: f64,
    /// Spread of every support's stiffness, each by itself.
    pub supports: f64,
    /// Spread of the specific cutting force.
    pub kc: f64,
    /// Spread of Young's modulus.
    pub e: f64,
    /// Spread of the damping ratio.
    pub damping: f64,
    /// Spread of the bar's diameter, mm; left out: even over its tolerance.
    pub bar_mm: Option<f64>,
}

/// What the plan is to make best.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Objective {
    /// Least time a part.
    Time,
    /// Fewest hand-overs, then least time.
    FewestHandOvers,
    /// Largest smallest margin, then least time.
    Margin,
}

/// Cost rates.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Rates {
    /// Machine cost an hour.
    pub machine_per_hour: f64,
    /// Material cost a kg.
    pub material_per_kg: f64,
    /// Currency.
    pub currency: String,
}

/// Roughness up to which a surface is never interrupted without leave, Ra in µm. Common practice, no source.
const RA_NEVER_UM: f64 = 0.8;
/// Roughness up to which an interruption is avoided, Ra in µm. Common practice, no source.
const RA_AVOID_UM: f64 = 1.6;
/// Rounding of a width worked out from deviations in decimal mm; without it an exact IT7 band would count as wider.
const ROUNDING_MM: f64 = 1e-9;

impl Interrupt {
    /// What a surface allows where the job does not say: `Never` for a tolerance of IT7 or finer or Ra 0.8 and finer,
    /// `Avoid` up to IT9 or Ra 1.6, else `Free`.
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
