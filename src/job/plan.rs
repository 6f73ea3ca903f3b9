//! The plan as plain data. It is what `plan --format json` prints, what is stored, re-checked and reported: a plan
//! alone is enough to print everything, so it carries an outline of the shaft and the machine with it.
//!
//! Field order is output order. Every number is finite. Serialisation is the contract; see README, "The plan file".

mod outline;

pub use outline::{FeatureOutline, LayoutOutline, SectionOutline, ShaftOutline, TracePoint};

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Whether it can be made so.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[serde(rename_all = "snake_case")]
pub enum Verdict {
    /// A proven plan.
    Feasible,
    /// No plan; `shortfall` says why.
    Infeasible,
}

/// The whole answer to a job.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
    /// Time from part to part, s; where a plan has no timeline, the sum of its times.
    pub fn pace_s(&self) -> f64 {
        self.cycle.as_ref().map_or(self.time_s.total, |c| c.steady_s)
    }
}

/// One stage: one grip (or none) from one stop to the next.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
}

/// A feature and the moment it is cut.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
    pub penalties: f64,
    pub total: f64,
}

/// One part after the other: what both spindles do from the start of a part to the start of the next, in the steady run.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Cycle {
    /// Time from part to part, the bar change spread over the parts of a bar, s.
    pub steady_s: f64,
    /// Time of one part alone, from its first cut to unloading, s.
    pub alone_s: f64,
    /// How long the headstock, and the counter-spindle, are busy with a part, s.
    pub headstock_s: f64,
    pub counter_spindle_s: f64,
    /// Work on the rear end and unloading that the next part's free stage hides, s a part.
    pub hidden_s: f64,
    /// Waiting of the headstock for the counter-spindle, s a part.
    pub wait_s: f64,
    /// Time the counter-spindle is ready before it is needed, s a part.
    pub spare_s: f64,
    pub tool_changes: usize,
    pub tool_changes_s: f64,
    pub unload_s: f64,
    /// Share of the bar change, s a part.
    pub bar_change_s: f64,
    /// Whether work on the rear end and the next part overlap, and why not: `aside`, `in_line`, `no_work`.
    pub overlap: String,
    /// In order of their start; those of the counter-spindle alone belong to the part before.
    pub operations: Vec<Operation>,
    /// What to shorten first: what lies on the critical path, longest first.
    pub critical: Vec<Critical>,
}

/// A bar of the timeline.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Operation {
    /// `headstock`, `both`, `counter_spindle`.
    pub side: String,
    /// `turn`, `plunge`, `thread`, `whirl`, `feature`, `tool_change`, `hand_over`, `regrip`, `part_off`, `back_work`,
    /// `unload`.
    pub work: String,
    pub text: String,
    /// None for what the counter-spindle does alone.
    pub stage: Option<usize>,
    pub from_s: f64,
    pub to_s: f64,
    /// Whether a second more of it makes every part a second later.
    pub critical: bool,
}

/// Something on the critical path.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Critical {
    pub what: String,
    pub seconds: f64,
    /// Of the time from part to part.
    pub share: f64,
}

/// Tools and places.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Tooling {
    pub fits: bool,
    /// Whether a pair is asked for on a machine whose turning tools all stand on one side.
    pub no_pair: bool,
    pub places: Vec<ToolRoom>,
    /// Tools the turret takes, and how many of them are set.
    pub turret_tools: Option<usize>,
    pub turret_used: Option<usize>,
}

/// A kind of place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct ToolRoom {
    /// `turning`, `cross_driven`, `front_fixed`, `front_driven`, `back_fixed`, `back_driven`.
    pub place: String,
    pub tools: Vec<String>,
    pub places: usize,
    /// Tools that stand at driven places of the same end, or on the turret.
    pub elsewhere: usize,
    /// Tools without a place.
    pub short: usize,
    /// Places left over.
    pub left: usize,
}

/// An order.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct OrderQuote {
    pub pieces: usize,
    pub bars: usize,
    pub set_up_h: f64,
    /// Running time, stops that are not in the plan included, h.
    pub run_h: f64,
    /// Set-up and run in shifts.
    pub shifts: f64,
    pub pieces_per_shift: f64,
    /// Set-up, machine and whole bars; none without rates.
    pub cost: Option<f64>,
    pub cost_per_piece: Option<f64>,
    pub currency: Option<String>,
    /// The same by quantity.
    pub quantities: Vec<Quantity>,
    /// What a change of one time does.
    pub sensitivity: Vec<Sensitivity>,
}

/// An order of another size.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Quantity {
    pub pieces: usize,
    pub bars: usize,
    pub shifts: f64,
    pub cost_per_piece: Option<f64>,
}

/// What a change of one time does to the time from part to part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Sensitivity {
    /// `cutting_speed`, `hand_over`, `regrip`, `tool_change`.
    pub what: String,
    /// Factor on the speed, or on the time.
    pub factor: f64,
    pub steady_s: f64,
    /// Against the plan, s a part.
    pub change_s: f64,
}

/// How far from the proven best the plan may be, and on which grid.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Optimality {
    pub gap: f64,
    pub stations: usize,
    pub arcs: usize,
}

/// The quote.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Quote {
    pub pieces_per_bar: usize,
    /// Bar used for one part, kg.
    pub material_kg: f64,
    pub remnant_mm: f64,
    pub cost: Option<Cost>,
}

/// What one part costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Cost {
    pub machine: f64,
    pub material: f64,
    pub total: f64,
    pub currency: String,
}

/// Why there is no plan and what would help.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Shortfall {
    pub farthest_mm: f64,
    /// Name of a check, or of a rule (`counter_spindle_travel`, `bore_depth`, `collet`, `stroke`, `interrupt`, …).
    pub blocked_by: String,
    /// One sentence.
    pub text: String,
    /// Ranked, best first; each alone makes it feasible.
    pub changes: Vec<Change>,
}

/// One change that would make it feasible.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct LimitCost {
    pub limit: String,
    pub now: serde_json::Value,
    /// What the limit costs in all: the time saved without it, or with the most that is worth trying, s a part.
    pub seconds: f64,
    /// The nearest value at which the plan gets faster.
    pub next: serde_json::Value,
    /// The time saved there, s a part.
    pub next_seconds: f64,
    pub text: String,
}

/// A plan against scattered inputs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
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
#[cfg_attr(feature = "page", derive(utoipa::ToSchema))]
#[allow(missing_docs)]
pub struct Broken {
    pub check: String,
    pub share: f64,
}
