//! The plan as plain data. This is what `plan --format json` prints, and what is stored, checked again and reported. A
//! plan alone must be enough to print everything, so it contains an outline of the shaft and the machine.
//!
//! The order of the fields is the order of the output. Every number is finite. Users rely on the serialised form; see
//! README, "The plan file".

mod at_stop;
mod cautions;
mod outline;
mod time;

pub use at_stop::{AtStop, Done};
pub use cautions::{cautions, estimate};
pub use outline::{FeatureOutline, LayoutOutline, SectionOutline, ShaftOutline, TracePoint};

use super::SAME_MM;
use crate::say;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

pub use time::{Critical, Cycle, Operation, OrderQuote, Quantity, Sensitivity, ToolRoom, Tooling};

/// Whether it can be made so.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// A proven plan.
    Feasible,
    /// No plan; `shortfall` says why.
    Infeasible,
}

/// The whole answer to a job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Plan {
    pub verdict: Verdict,
    pub job: String,
    pub drawing: Option<String>,
    pub revision: Option<String>,
    pub length_mm: f64,
    pub material: String,
    pub holding: String,
    pub tools: String,
    pub machine: String,
    /// Name of the counter-spindle collet; none when there is no plan or no counter-spindle.
    pub collet: Option<String>,
    pub stages: Vec<Stage>,
    pub hand_overs_mm: Vec<f64>,
    pub headstock_regrips_mm: Vec<f64>,
    pub segments: Vec<Segment>,
    /// Speed at part-off, rev/min; none without a plan.
    pub part_off_rpm: Option<f64>,
    pub features: Vec<FeatureMoment>,
    /// Lines the stops leave on surfaces (not at shoulders and grooves).
    pub witnesses: Vec<Witness>,
    pub time_s: Times,
    /// One part after the other, in time; none without a plan.
    #[serde(default)]
    pub cycle: Option<Cycle>,
    /// Tools and places; none where the machine file does not say what it has.
    #[serde(default)]
    pub tooling: Option<Tooling>,
    /// The order; none where the job gives none, or there is no plan.
    #[serde(default)]
    pub order: Option<OrderQuote>,
    /// Smallest `1 - utilisation` of all checks of all stages.
    pub margin: Option<f64>,
    /// The check the margin belongs to, and where.
    pub margin_at: Option<CheckResult>,
    pub optimality: Optimality,
    pub quote: Quote,
    pub shortfall: Option<Shortfall>,
    /// What each limit costs, dearest first; filled where it was asked for.
    #[serde(default)]
    pub limit_costs: Vec<LimitCost>,
    /// The plan against scattered inputs; filled where it was asked for.
    #[serde(default)]
    pub scatter: Option<ScatterReport>,
    pub input_digest: String,
    /// What was assumed or lowered.
    pub notes: Vec<String>,
    pub cautions: Vec<String>,
    pub shaft: ShaftOutline,
    pub layout: LayoutOutline,
    /// Governing check along the turned length, ascending; a stop has two points, the state before and after it.
    pub trace: Vec<TracePoint>,
}

impl Plan {
    /// Time from one part to the next, s. If the plan has no timeline, the sum of its times.
    pub fn pace_s(&self) -> f64 {
        self.cycle.as_ref().map_or(self.time_s.total, |c| c.steady_s)
    }

    /// Sets the smallest margin of all stages, and the check it comes from.
    pub fn tell_margin(&mut self) {
        let worst = self.stages.iter().filter_map(Stage::governing);
        self.margin_at = worst.max_by(|a, b| a.utilisation.total_cmp(&b.utilisation)).cloned();
        self.margin = self.margin_at.as_ref().map(|m| 1.0 - m.utilisation);
    }

    /// How far the bar is fed on, without cutting, for work behind the end of a stage (index): turned length in mm.
    /// None if there is no such work.
    pub fn fed_on_mm(&self, stage: usize) -> Option<f64> {
        self.behind(stage).filter_map(|f| f.turned_mm).max_by(f64::total_cmp)
    }

    /// The work that lies behind the end of a stage (index).
    pub fn behind(&self, stage: usize) -> impl Iterator<Item = &FeatureMoment> {
        let end_mm = self.stages.get(stage).map_or(f64::INFINITY, |s| s.to_mm);
        let here = self.features.iter().filter(move |f| f.stage == Some(stage + 1));
        here.filter(move |f| f.turned_mm.is_some_and(|t| t > end_mm + SAME_MM))
    }
}

/// One stage: one grip (or none) from one stop to the next.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Stage {
    /// From 1.
    pub number: usize,
    pub from_mm: f64,
    pub to_mm: f64,
    pub travel_mm: f64,
    /// None: the front is free.
    pub grip: Option<GripPlace>,
    pub unsupported_max_mm: f64,
    /// Cutting and travel overheads of the stage, s (no stops).
    pub time_s: f64,
    /// Distance of the counter-spindle's nose from the bush face at the start and the end; none while free.
    pub counter_spindle_start_mm: Option<f64>,
    pub counter_spindle_end_mm: Option<f64>,
    /// Distance of the headstock's nose from the bush face at the start (after a re-grip there) and at the end
    /// (before one).
    pub headstock_start_mm: f64,
    pub headstock_end_mm: f64,
    /// Turned lengths at which the headstock re-grips during this stage, both ends included where they belong to it.
    pub regrips_mm: Vec<f64>,
    /// Lowest and highest speed of the stage, rev/min.
    pub rpm_min: f64,
    pub rpm_max: f64,
    /// The worst of each check over the stage, in the order of the list of checks.
    pub checks: Vec<CheckResult>,
}

impl Stage {
    /// The check with the highest utilisation.
    pub fn governing(&self) -> Option<&CheckResult> {
        self.checks.iter().max_by(|a, b| a.utilisation.total_cmp(&b.utilisation))
    }
}

/// Where the counter-spindle holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct GripPlace {
    pub nose_mm: f64,
    pub from_mm: f64,
    pub to_mm: f64,
    pub diameter_mm: f64,
    /// From 1.
    pub section: usize,
}

/// One check at its worst.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct CheckResult {
    pub check: String,
    /// The value found, in `unit`.
    pub demand: f64,
    pub limit: f64,
    /// `N/µm`, `mm`, `N·m` or empty for a ratio.
    pub unit: String,
    /// Share of the limit used; passes when at most 1.
    pub utilisation: f64,
    /// Turned length at which it is worst.
    pub turned_mm: f64,
    /// Place on the shaft at which it is worst.
    pub at_mm: f64,
}

/// One piece of turning: a segment, cut at the stops.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Segment {
    /// From 1.
    pub section: usize,
    /// `turn`, `plunge`, `thread` (single point), `whirl`.
    pub work: String,
    pub from_mm: f64,
    pub to_mm: f64,
    pub diameter_mm: f64,
    pub travels: usize,
    /// Depth of cut of each travel, mm (of a pair: both tools, the leading one first).
    pub depths_mm: Vec<f64>,
    /// Speed of the last travel, rev/min.
    pub rpm: f64,
    /// Feed of the last travel, mm/rev.
    pub feed_mm: f64,
    /// `forward` or `back`.
    pub turning: String,
    pub stage: usize,
    pub time_s: f64,
    /// Why the speed was lowered: the check that asked for it.
    pub slowed_by: Option<String>,
    /// Infeed of each single-point threading pass, mm.
    #[serde(default)]
    pub infeeds_mm: Vec<f64>,
    /// The passes of a single-point thread, after the turning that `rpm` and `feed_mm` belong to.
    #[serde(default)]
    pub threading: Option<Threading>,
}

/// The passes of a single-point thread.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Threading {
    pub passes: usize,
    /// Rev/min.
    pub rpm: f64,
    /// The feed of a pass, mm/rev.
    pub pitch_mm: f64,
}

/// A feature and the moment it is cut.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct FeatureMoment {
    /// `cross_hole`, `keyseat`, `centre_hole`, `flats`, `knurl`, `back_work`.
    pub feature: String,
    pub text: String,
    pub at_mm: f64,
    /// Turned length at which it is done; none after part-off.
    pub turned_mm: Option<f64>,
    /// None after part-off.
    pub stage: Option<usize>,
    pub time_s: f64,
    /// Force along the axis, N, and torque about it, N·m, of work on an end; thrust across the shaft, N.
    #[serde(default)]
    pub axial_n: Option<f64>,
    #[serde(default)]
    pub torque_nm: Option<f64>,
    #[serde(default)]
    pub thrust_n: Option<f64>,
    #[serde(default)]
    pub tool: String,
}

/// A line left on a surface by a stop.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Witness {
    pub at_mm: f64,
    /// From 1.
    pub section: usize,
    /// `hand_over`, `regrip`, `segment`, `feature`.
    pub cause: String,
    /// `never`, `avoid`, `free`: what the section says of it.
    pub interrupt: String,
}

/// Time a part by cause, s.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Times {
    pub cutting: f64,
    pub segments: f64,
    pub hand_overs: f64,
    /// Re-grips less what shared stops save.
    pub regrips: f64,
    pub features: f64,
    pub part_off: f64,
    pub back_work: f64,
    /// Seconds charged for lines on `avoid` surfaces: the planner counts with them, they take no time and are in no total.
    pub penalties: f64,
    pub total: f64,
}

/// How far from the proven best the plan may be, and on which grid.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Optimality {
    pub gap: f64,
    pub stations: usize,
    pub arcs: usize,
}

impl Optimality {
    /// What is proven about the time of the plan, in words.
    pub fn in_words(&self) -> String {
        if self.gap <= 0.0 {
            return say!("optimum-proven", stops = self.stations);
        }
        // The gap is a share of the time of this plan. Rounded up, because it is told as an upper limit.
        let slower = (10_000.0 * self.gap / (1.0 - self.gap).max(1e-6) - 1e-6).ceil().max(1.0) / 100.0;
        say!("optimum-gap", percent = slower.to_string(), stops = self.stations)
    }
}

/// The quote.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Quote {
    pub pieces_per_bar: usize,
    /// Bar used for one part, kg.
    pub material_kg: f64,
    /// What is left of a bar after its last part, mm.
    pub remnant_mm: f64,
    pub cost: Option<Cost>,
}

/// What one part costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Cost {
    pub machine: f64,
    pub material: f64,
    pub total: f64,
    pub currency: String,
}

/// The name of a check in a sentence. Files call the check of the speed against the critical speed `whirl`. In a
/// sentence this could be mistaken for the whirling of a thread.
pub fn check_in_words(check: &str) -> &str {
    match check {
        "whirl" => "critical speed",
        other => other,
    }
}

/// Separates the names of checks and rules that stop the bar together: `counter_spindle_travel and stroke`.
pub const AND: &str = " and ";

/// Why there is no plan and what would help.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Shortfall {
    pub farthest_mm: f64,
    /// Name of a check, or of a rule (`counter_spindle_travel`, `bore_depth`, `collet`, `stroke`, `interrupt`, …).
    pub blocked_by: String,
    /// Names of those that stop the bar there as well, where it goes farther only if all of them are lifted.
    #[serde(default)]
    pub blocked_with: Vec<String>,
    /// One sentence.
    pub text: String,
    /// Ranked, best first; each alone makes it feasible.
    pub changes: Vec<Change>,
    /// Where no single change is enough: what was tried, and which changes bring the bar farther.
    #[serde(default)]
    pub tried: Option<String>,
}

impl Shortfall {
    /// What stops the bar: `stroke`, or `counter_spindle_travel and stroke`.
    pub fn blocked_names(&self) -> String {
        self.names().collect::<Vec<_>>().join(AND)
    }

    /// Names of all that must be lifted, usually only one.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        std::iter::once(&self.blocked_by).chain(&self.blocked_with).map(String::as_str)
    }
}

/// One change that would make it feasible.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Change {
    pub change: String,
    pub from: serde_json::Value,
    pub to: serde_json::Value,
    /// Time of a part with the change, less that with the fastest of the changes, s.
    pub extra_time_s: Option<f64>,
    pub text: String,
}

/// What a limit costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct LimitCost {
    pub limit: String,
    pub now: serde_json::Value,
    /// What the limit costs in all: the most that is saved without it, or at the best of the values tried, s a part.
    pub seconds: f64,
    /// The value at which that is saved.
    #[serde(default)]
    pub best: serde_json::Value,
    /// The nearest value at which the plan gets faster.
    pub next: serde_json::Value,
    /// The time saved there, s a part.
    pub next_seconds: f64,
    pub text: String,
}

/// A plan against scattered inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterReport {
    pub samples: usize,
    pub seed: u64,
    /// Share of sampled parts that break nothing.
    pub good_share: f64,
    pub stages: Vec<ScatterStage>,
}

/// A stage against scattered inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct ScatterStage {
    pub number: usize,
    /// Share of parts that break something in this stage.
    pub broken_share: f64,
    /// Share of parts that break each check, worst first; checks that hold in all parts are left out.
    pub broken: Vec<Broken>,
    /// Turned length up to which it holds in 99 of 100 parts.
    pub holds_to_mm: f64,
}

/// How often a check breaks.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Broken {
    pub check: String,
    pub share: f64,
}
