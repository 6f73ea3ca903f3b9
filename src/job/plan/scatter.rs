//! What a plan says of uncertain inputs.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The plan with sampled inputs.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterReport {
    /// Number of sampled parts.
    pub samples: usize,
    /// Seed of the samples.
    pub seed: u64,
    /// Share of the sampled parts that meet all checks. Each has a machine and a bar of its own.
    pub good_share: f64,
    /// Two parts of each run: what is unknown about machine and material is the same for both, what varies from part to part is not.
    #[serde(default)]
    pub runs: Option<Runs>,
    /// Checks that parts fail in the whole plan, the most frequent first.
    #[serde(default)]
    pub broken: Vec<Broken>,
    /// The stages, one by one.
    pub stages: Vec<ScatterStage>,
    /// The check that is nearest to its limit, counted in its own standard deviations. None: no input is uncertain.
    #[serde(default)]
    pub nearest: Option<NearestCheck>,
    /// The uncertain inputs, the one that moves this check most first.
    #[serde(default)]
    pub inputs: Vec<UncertainInput>,
    /// How the plan was made to hold; none if the job asks for no confidence.
    #[serde(default)]
    pub confidence: Option<Confidence>,
}

/// Sampled runs of two parts each.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Runs {
    /// Number of runs.
    pub count: usize,
    /// Share of runs in which both parts meet all checks.
    pub both_hold: f64,
    /// Share of runs in which one part does and the other does not.
    pub one_holds: f64,
    /// Share of runs in which neither does.
    pub none_holds: f64,
}

/// Result of a stage with sampled inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterStage {
    /// Number of the stage, from 1.
    pub number: usize,
    /// Share of the parts that fail a check in this stage.
    pub broken_share: f64,
    /// Share of the parts that fail each check, the largest first. Checks that all parts meet are left out.
    pub broken: Vec<Broken>,
    /// Turned length up to which 99 of 100 parts meet all checks.
    pub holds_to_mm: f64,
}

/// Share of the parts that fail a check.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Broken {
    /// Name of the check.
    pub check: String,
    /// Share of parts that break it.
    pub share: f64,
    /// Turned length from which on half of these parts break it. None: a plan of an older version.
    #[serde(default)]
    pub from_mm: Option<f64>,
}

/// The check that is nearest to its limit, counted in its own standard deviations.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct NearestCheck {
    /// Its name.
    pub check: String,
    /// Share of its limit that it uses in the nominal part.
    pub used: f64,
    /// Standard deviation of the logarithm of that share.
    pub spread: f64,
}

/// An uncertain input, and what changes with it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct UncertainInput {
    /// Its key under `scatter`.
    pub input: String,
    /// Its spread: standard deviation as a share of the value; that of the bar's diameter in mm.
    pub spread: f64,
    /// Whether it is the same for all parts of a run.
    pub same_for_run: bool,
    /// The value in the job; 1 for a factor.
    pub value: f64,
    /// One standard deviation below.
    pub low: f64,
    /// One standard deviation above.
    pub high: f64,
    /// Unit of the values. Empty: a factor.
    pub unit: String,
    /// Utilisation of the nearest check with the low value, everything else as given.
    pub used_low: f64,
    /// The same with the high value.
    pub used_high: f64,
    /// Share of good parts among the samples with a value below the one in the job.
    pub good_below: f64,
    /// The same above.
    pub good_above: f64,
    /// Time of a part in the fastest plan for the low value, s. None: not asked for, or no plan.
    #[serde(default)]
    pub time_low_s: Option<f64>,
    /// Time of a part in the fastest plan for the high value, s.
    #[serde(default)]
    pub time_high_s: Option<f64>,
    /// How far the nearest check would move less if the input were measured, as a share of its limit.
    #[serde(default)]
    pub gain: f64,
    /// How to measure it. Empty: measuring gains nothing.
    pub advice: String,
}

impl UncertainInput {
    /// How far the nearest check moves between the low and the high value, as a share of its limit.
    pub fn swing(&self) -> f64 {
        (self.used_high - self.used_low).abs()
    }
}

/// A plan made to hold in a share of the sampled parts.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Confidence {
    /// The share asked for.
    pub asked: f64,
    /// Whether a plan was found that reaches it.
    pub reached: bool,
    /// Time of a part in the fastest plan without it, s.
    pub fastest_s: f64,
    /// What it costs: more time of a part, s.
    pub costs_s: f64,
    /// Share of good parts of that fastest plan.
    pub fastest_good_share: f64,
    /// Checks with the factor by which their limits were tightened for this plan.
    pub tightened: Vec<Tightened>,
}

/// A limit tightened for a confidence.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Tightened {
    /// Name of the check.
    pub check: String,
    /// The factor.
    pub factor: f64,
}

/// How much of its limit the tightest check of sampled parts uses along the turned length.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct Along {
    /// Number of parts that the band is made from.
    pub parts: usize,
    /// The band, in the order of the plan.
    pub band: Vec<BandPoint>,
    /// Parts that break a check, at most a few dozen.
    pub broken: Vec<BrokenPart>,
    /// One part, if it was asked for.
    pub part: Option<SampledPart>,
}

/// A place of the band.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, JsonSchema)]
pub struct BandPoint {
    /// Number of the stage, from 1.
    pub stage: usize,
    /// Turned length, mm.
    pub turned_mm: f64,
    /// Share of its limit that the tightest check uses in 5 of 100 parts or fewer.
    pub low: f64,
    /// Share that it uses at most in 95 of 100 parts.
    pub high: f64,
}

/// A sampled part that breaks a check.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct BrokenPart {
    /// Its number among the samples, from 1.
    pub number: usize,
    /// The check that it breaks first.
    pub check: String,
    /// Turned length from which on it does, mm.
    pub from_mm: f64,
}

/// A sampled part.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct SampledPart {
    /// Its number among the samples, from 1.
    pub number: usize,
    /// Whether it meets all checks.
    pub holds: bool,
    /// Its inputs, the farthest from their medians first.
    pub inputs: Vec<SampledInput>,
    /// The share that its tightest check uses, in the order of the plan.
    pub curve: Vec<CurvePoint>,
}

/// An input of a sampled part.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct SampledInput {
    /// Its key under `scatter`.
    pub input: String,
    /// Its name in words.
    pub name: String,
    /// Its value in this part; a factor if it has no unit.
    pub value: f64,
    /// The value in the job.
    pub nominal: f64,
    /// Unit of both.
    pub unit: String,
    /// Standard deviations by which it is above its median.
    pub off: f64,
}

/// A point of a curve.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct CurvePoint {
    /// Number of the stage, from 1.
    pub stage: usize,
    /// Turned length, mm.
    pub turned_mm: f64,
    /// Share of its limit that the tightest check uses.
    pub used: f64,
    /// The check.
    pub check: String,
}
