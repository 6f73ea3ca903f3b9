//! The plan as plain data. This is what `plan --format json` prints, and what is stored, checked again and reported. A
//! plan alone must be enough to print everything, so it contains an outline of the shaft and the machine.
//!
//! The order of the fields is the order of the output. Every number is finite. Users rely on the serialised form; see
//! `docs/plan-file.md`.

mod at_stop;
mod cautions;
mod centre;
mod drive;
mod edit;
mod origin;
mod outline;
mod part_off;
mod positions;
mod scatter;
mod shortfall;
mod time;
mod tools;
mod verdict;

pub use at_stop::{AtStop, Done};
pub use cautions::{cautions, estimate, not_a_program, read_first};
pub use centre::OnCentre;
pub use drive::Drive;
pub use origin::{Giver, Origin};
pub use outline::{FeatureOutline, LayoutOutline, SectionOutline, ShaftOutline, TracePoint};
pub use part_off::PartOff;
pub use positions::{Position, Positions};
pub use scatter::{
    Along, BandPoint, Broken, BrokenPart, Confidence, CurvePoint, NearestCheck, Runs, SampledInput, SampledPart,
    ScatterReport, ScatterStage, Tightened, UncertainInput,
};

use super::SAME_MM;
use crate::lang::{self, Language, Units};
use crate::say;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

pub use shortfall::{AND, Change, ChangeSet, Edit, Shortfall};
pub use time::{Critical, Cycle, Operation, OrderQuote, Quantity, Sensitivity, ToolRoom, Tooling};
pub use tools::{Threading, ToolUse, TravelCut};
pub use verdict::Verdict;

/// A plan without this key is older than the languages.
fn english() -> String {
    Language::default().code().to_owned()
}

/// The plan of a job, or the reason why there is none.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Plan {
    /// Code of the language of its texts.
    #[serde(default = "english")]
    pub language: String,
    /// Units of its texts; its numbers are metric. A plan without this key is older than the units.
    #[serde(default)]
    pub units: Units,
    /// Whether the shaft can be made.
    pub verdict: Verdict,
    /// Name of the shaft.
    pub job: String,
    /// Number of the drawing.
    pub drawing: Option<String>,
    /// Revision of the drawing.
    pub revision: Option<String>,
    /// Date of the drawing or of the sheet, as the job gives it.
    #[serde(default)]
    pub date: Option<String>,
    /// Length of the shaft.
    pub length_mm: f64,
    /// Name of the material.
    pub material: String,
    /// `bush` or `no_bush`.
    pub holding: String,
    /// `single`, `opposed` or `tandem`.
    pub tools: String,
    /// Name of the machine.
    pub machine: String,
    /// Name of the counter-spindle collet. None: there is no plan or no counter-spindle.
    pub collet: Option<String>,
    /// Stages, from the front face to the part-off.
    pub stages: Vec<Stage>,
    /// Turned lengths at which the counter-spindle grips anew.
    pub hand_overs_mm: Vec<f64>,
    /// Turned lengths at which the headstock re-grips.
    pub headstock_regrips_mm: Vec<f64>,
    /// Pieces of turning, in the order in which they are cut.
    pub segments: Vec<Segment>,
    /// Speed at part-off, rev/min. None: there is no plan.
    pub part_off_rpm: Option<f64>,
    /// Where the part goes at part-off. None: there is no plan.
    #[serde(default)]
    pub part_off: Option<PartOff>,
    /// The centre in the front face. None: the job does not ask for one, or there is no plan.
    #[serde(default)]
    pub centre: Option<OnCentre>,
    /// The most that turning asks of the headstock. None: there is no plan.
    #[serde(default)]
    pub drive: Option<Drive>,
    /// Features with the moment at which each is made.
    pub features: Vec<FeatureMoment>,
    /// Witness lines that stops leave on surfaces. Lines at shoulders and grooves are left out.
    pub witnesses: Vec<Witness>,
    /// Sum of operations of one part, by cause.
    pub time_s: Times,
    /// Times of both spindles from part to part. None: there is no plan.
    #[serde(default)]
    pub cycle: Option<Cycle>,
    /// Tools and tool places. None: the machine file lists no tool places.
    #[serde(default)]
    pub tooling: Option<Tooling>,
    /// The order. None: the job has no order, or there is no plan.
    #[serde(default)]
    pub order: Option<OrderQuote>,
    /// Margin: the smallest `1 - utilisation` of all checks in all stages.
    pub margin: Option<f64>,
    /// The check with this margin, and its position.
    pub margin_at: Option<CheckResult>,
    /// How far the plan may be from the fastest one.
    pub optimality: Optimality,
    /// Bars, material and cost.
    pub quote: Quote,
    /// Why there is no plan; none with a plan.
    pub shortfall: Option<Shortfall>,
    /// Time that each limit costs, the largest first. Empty without `--costs`.
    #[serde(default)]
    pub limit_costs: Vec<LimitCost>,
    /// The plan with sampled inputs. None: there is no plan, or an older version made it.
    #[serde(default)]
    pub scatter: Option<ScatterReport>,
    /// `sha256:` of the texts of job and machine.
    pub input_digest: String,
    /// The tools that turn, with their cuts. Empty: the job has no `tool_list`.
    #[serde(default)]
    pub tool_list: Vec<ToolUse>,
    /// What the planner assumed or reduced.
    pub notes: Vec<String>,
    /// Values that the job does not give, and where they come from.
    #[serde(default)]
    pub origins: Vec<Origin>,
    /// Cautions for the setter.
    pub cautions: Vec<String>,
    /// Outline of the shaft, for the drawing.
    pub shaft: ShaftOutline,
    /// Outline of the machine, for the drawing.
    pub layout: LayoutOutline,
    /// The check closest to its limit, by turned length. A stop has two points: before it and after it.
    pub trace: Vec<TracePoint>,
}

impl Plan {
    /// Time from one part to the next, s. If the plan has no timeline, the sum of its times.
    pub fn pace_s(&self) -> f64 {
        self.cycle.as_ref().map_or(self.time_s.total, |c| c.steady_s)
    }

    /// The tool of the tool list with a name. None: it is not in the list, or there is no list.
    pub fn listed(&self, tool: &str) -> Option<&ToolUse> {
        self.tool_list.iter().find(|listed| listed.tool == tool)
    }

    /// The tool of the tool list that parts off.
    pub fn part_off_tool(&self) -> Option<&ToolUse> {
        self.tool_list.iter().find(|listed| listed.sections.is_empty())
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

/// A stage: from one stop to the next, with one grip or with the front end free.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Stage {
    /// From 1.
    pub number: usize,
    /// Turned length at its start.
    pub from_mm: f64,
    /// Turned length at its end.
    pub to_mm: f64,
    /// Length turned in the stage.
    pub travel_mm: f64,
    /// The grip. None: the front end is free.
    pub grip: Option<GripPlace>,
    /// Longest unsupported length.
    pub unsupported_max_mm: f64,
    /// L/d: largest unsupported length over the mean finished diameter of its turned part.
    #[serde(default)]
    pub l_over_d_max: Option<f64>,
    /// Time of the stage for cutting and moves between cuts, without stops, s.
    pub time_s: f64,
    /// Position of the counter-spindle's nose from the bush face at the start. None: the front end is free.
    pub counter_spindle_start_mm: Option<f64>,
    /// The same at the end.
    pub counter_spindle_end_mm: Option<f64>,
    /// Position of the headstock's nose from the bush face at the start, after a re-grip there.
    pub headstock_start_mm: f64,
    /// The same at the end, before a re-grip there.
    pub headstock_end_mm: f64,
    /// Turned lengths of the headstock re-grips of this stage. Re-grips at its start or its end may belong to it.
    pub regrips_mm: Vec<f64>,
    /// Lowest speed of the stage, rev/min.
    pub rpm_min: f64,
    /// Highest speed of the stage, rev/min.
    pub rpm_max: f64,
    /// The worst result of each check in the stage.
    pub checks: Vec<CheckResult>,
}

impl Stage {
    /// The check with the highest utilisation.
    pub fn governing(&self) -> Option<&CheckResult> {
        self.checks.iter().max_by(|a, b| a.utilisation.total_cmp(&b.utilisation))
    }
}

/// The grip: what the counter-spindle's collet holds.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct GripPlace {
    /// Position of the counter-spindle's nose.
    pub nose_mm: f64,
    /// Front end of the length held.
    pub from_mm: f64,
    /// Rear end of the length held.
    pub to_mm: f64,
    /// Diameter held.
    pub diameter_mm: f64,
    /// From 1.
    pub section: usize,
}

/// The worst result of one check.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct CheckResult {
    /// Name of the check.
    pub check: String,
    /// The value found, in the unit that `unit` gives.
    pub demand: f64,
    /// Limit, in `unit`.
    pub limit: f64,
    /// `N/µm`, `mm` or `N·m`. Empty: a ratio.
    pub unit: String,
    /// Share of the limit that is used. The check passes if it is at most 1.
    pub utilisation: f64,
    /// Turned length with the worst result.
    pub turned_mm: f64,
    /// Position on the shaft with the worst result, from the front face.
    pub at_mm: f64,
}

/// A segment: a length that is turned with the same travels. A stop divides it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Segment {
    /// From 1.
    pub section: usize,
    /// `turn`, `plunge`, `thread` (single-point passes) or `whirl` (thread whirling).
    pub work: String,
    /// Turned length at its start.
    pub from_mm: f64,
    /// Turned length at its end.
    pub to_mm: f64,
    /// Finished diameter.
    pub diameter_mm: f64,
    /// Number of travels.
    pub travels: usize,
    /// Depth of cut of each travel, mm. Two tools in one travel: both, the leading tool first.
    pub depths_mm: Vec<f64>,
    /// How far the finishing tool follows the roughing tool of a tandem in the last travel, mm. None: not cut by a tandem.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub lag_mm: Option<f64>,
    /// Speed of the last travel, rev/min.
    /// Highest speed of the travels, rev/min: usually that of the last one.
    pub rpm: f64,
    /// Feed of the last travel, mm/rev.
    pub feed_mm: f64,
    /// Each travel with its tools, the one that makes the finished surface last.
    #[serde(default)]
    pub cuts: Vec<TravelCut>,
    /// Direction of turning: `forward` or `back`.
    pub turning: String,
    /// Number of the stage, from 1.
    pub stage: usize,
    /// Time of the piece.
    pub time_s: f64,
    /// The check that made the speed lower, or `bar_feed`: the bar feeder turns the bar no faster, or `spindle_power`. None: none of them did.
    pub slowed_by: Option<String>,
    /// Speed without the reduction, rev/min. None: no check reduces it.
    #[serde(default)]
    pub full_rpm: Option<f64>,
    /// Extra time because of the reduction, s. None: no check reduces it.
    #[serde(default)]
    pub slowed_s: Option<f64>,
    /// Infeed of each single-point threading pass of one start, mm.
    #[serde(default)]
    pub infeeds_mm: Vec<f64>,
    /// The passes of a single-point thread. They come after the turning, to which `rpm` and `feed_mm` belong.
    #[serde(default)]
    pub threading: Option<Threading>,
}

/// A feature, and the turned length at which it is cut.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct FeatureMoment {
    /// `cross_hole`, `keyseat`, `centre_hole`, `flats`, `knurl`, `thread_rolling`, `back_work`.
    pub feature: String,
    /// The feature in words.
    pub text: String,
    /// Position on the shaft.
    pub at_mm: f64,
    /// Turned length when it is done. None: it is done after part-off.
    pub turned_mm: Option<f64>,
    /// The stage. None: it is done after part-off.
    pub stage: Option<usize>,
    /// Time of the work.
    pub time_s: f64,
    /// Axial force of work on an end, N.
    #[serde(default)]
    pub axial_n: Option<f64>,
    /// Torque of work on an end, N·m.
    #[serde(default)]
    pub torque_nm: Option<f64>,
    /// Thrust of work across the shaft, N.
    #[serde(default)]
    pub thrust_n: Option<f64>,
    /// The tool it needs.
    #[serde(default)]
    pub tool: String,
}

/// A witness line: a line that a stop leaves on a surface.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Witness {
    /// Position on the shaft.
    pub at_mm: f64,
    /// From 1.
    pub section: usize,
    /// Cause of the stop: `hand_over`, `regrip`, `segment` or `feature`.
    pub cause: String,
    /// `interrupt` of the section: `never`, `avoid` or `free`.
    pub interrupt: String,
}

/// Time per part by cause, s.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Times {
    /// Cutting, s.
    pub cutting: f64,
    /// Overheads of travels, s.
    pub segments: f64,
    /// Hand-overs, s.
    pub hand_overs: f64,
    /// Time of headstock re-grips, less the time that shared stops save.
    pub regrips: f64,
    /// Features, s.
    pub features: f64,
    /// Part-off, s.
    pub part_off: f64,
    /// Work on the rear end, s.
    pub back_work: f64,
    /// Allowance for witness lines on `avoid` surfaces, s. It is no machine time and is not in `total`.
    pub penalties: f64,
    /// Sum of all but the penalties, s.
    pub total: f64,
}

/// How close the plan is to the fastest plan on the stop positions that were tried.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Optimality {
    /// Largest share by which a plan on these stop positions can be faster. 0: no faster plan exists.
    pub gap: f64,
    /// Number of stop positions tried.
    pub stations: usize,
    /// Number of possible stages between them.
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
        say!("optimum-gap", percent = lang::number(slower), stops = self.stations)
    }
}

/// The quote.
#[derive(Debug, Clone, Default, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Quote {
    /// Parts from one bar.
    pub pieces_per_bar: usize,
    /// Material for one part, kg.
    pub material_kg: f64,
    /// Bar remnant after the last part, mm.
    pub remnant_mm: f64,
    /// Cost of one part; none without rates.
    pub cost: Option<Cost>,
}

/// Cost per part.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct Cost {
    /// Machine time.
    pub machine: f64,
    /// Material.
    pub material: f64,
    /// Both together.
    pub total: f64,
    /// Currency of the rates.
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

/// Time that a limit costs.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[allow(missing_docs)]
pub struct LimitCost {
    /// Key of the limit.
    pub limit: String,
    /// Value now.
    pub now: serde_json::Value,
    /// The largest time saved without the limit or with the best value tried, s per part.
    pub seconds: f64,
    /// The value that saves this time.
    #[serde(default)]
    pub best: serde_json::Value,
    /// The closest value that makes the plan faster.
    pub next: serde_json::Value,
    /// Time saved with the closest value, s per part.
    pub next_seconds: f64,
    /// The same in words.
    pub text: String,
}
