//! What is asked and answered, as JSON. `/openapi.json` is made from these types.

use crate::answer::moved::Move;
use crate::diag::Diag;
use crate::input::edit::Edit;
use crate::input::tree::{Entry, Kind, Step};
use crate::input::{Named, render};
use crate::job::plan;
use crate::job::plan::{Along, Change, ChangeSet, CheckResult, Plan};
use crate::report::{Canvas, Placed};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A file: its name and its text.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Text {
    /// Name of the file, as messages show it.
    pub name: String,
    /// Text of the file, YAML.
    pub text: String,
}

/// A job file, and the machine file that it names.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Texts {
    /// The job file.
    pub job: Text,
    /// The machine file. Left out: the job contains its machine, or the file is not known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<Text>,
}

/// One of the two files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Which {
    /// The job file.
    Job,
    /// The machine file.
    Machine,
}

/// An error in a file.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Told {
    /// The file. None: the error is in neither file.
    pub file: Option<Which>,
    /// What is wrong.
    pub what: String,
    /// What to do.
    pub help: Option<String>,
    /// Line, from 1.
    pub line: Option<usize>,
    /// Column in characters, from 1.
    pub column: Option<usize>,
    /// Path to the value with the error, as far as the file can be read.
    pub way: Vec<Step>,
    /// The message as the command line prints it, with the line of the file.
    pub printed: String,
}

/// A value in a file.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Value {
    /// Its key. Left out: an item of a list.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub key: Option<String>,
    /// `scalar`, `list` or `map`.
    pub kind: String,
    /// A scalar: its text without quotes. A list or a map: its YAML, if that is short.
    pub text: String,
    /// The values in a list or a map.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub entries: Vec<Value>,
}

/// The plan of a job, or the errors in its files.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Planned {
    /// The job file as a tree. None: the text is not YAML.
    pub job: Option<Value>,
    /// The machine file as a tree. None: there is no machine file, or it is not YAML.
    pub machine: Option<Value>,
    /// Errors in the files. If there are none, there is a plan, feasible or not feasible.
    pub errors: Vec<Told>,
    /// Whether this is the whole answer. If not, the plan is proven, but its sampled parts are not counted yet, and so it has no verdict.
    pub settled: bool,
    /// The plan. What would help is left out of `shortfall` here: `/changes` gives it.
    pub plan: Option<Plan>,
    /// The verdict in one line.
    pub summary: Option<String>,
    /// What to check first, the most serious first.
    pub look_at: Vec<String>,
    /// The diagram.
    pub drawing: Option<Placed>,
    /// Timeline of both spindles, an SVG element. None: there is no plan.
    pub strip: Option<String>,
    /// How sure the plan is, in sentences.
    pub sure: Vec<String>,
    /// What the uncertain inputs change, an SVG element. None: there is no plan, or they change nothing.
    pub inputs: Option<String>,
}

/// A job to plan, and how wide its pictures are.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct PlanAsked {
    /// The job file.
    pub job: Text,
    /// The machine file. Left out: the job contains its machine, or the file is not known.
    #[serde(default)]
    pub machine: Option<Text>,
    /// Room for the pictures, in pixels of the screen. Their text is at least 11 pixels high. Left out: as wide as a page of paper.
    #[serde(default)]
    pub width_px: Option<f64>,
}

impl PlanAsked {
    /// The files, and how the pictures are drawn.
    pub fn parts(self) -> (Texts, Canvas) {
        (Texts { job: self.job, machine: self.machine }, canvas(self.width_px))
    }
}

/// How pictures are drawn for a room in pixels.
pub fn canvas(width_px: Option<f64>) -> Canvas {
    Canvas::screen(width_px.unwrap_or(PAGE_PX))
}

/// The width of a page of paper on a screen, in pixels.
const PAGE_PX: f64 = 1188.0;

/// A job, and one of its sampled parts.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct SampledAsked {
    /// The job file.
    pub texts: Texts,
    /// Room for the diagram, as in [`PlanAsked`].
    #[serde(default)]
    pub width_px: Option<f64>,
    /// Number of a sampled part, from 1. Left out: the band alone.
    #[serde(default)]
    pub part: Option<usize>,
}

/// Sampled parts of a plan.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Sampled {
    /// The diagram with the band of 5 to 95 of 100 parts, and with the curve of the part.
    pub drawing: Placed,
    /// Band, part, and parts that break a check.
    pub along: Along,
}

/// A job for which changes are wanted.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ChangesAsked {
    /// The job file.
    pub texts: Texts,
    /// Whether the first set is enough. It is known sooner than all of them.
    #[serde(default)]
    pub first: bool,
}

/// What would help a job without a plan; the same as in `shortfall` of a plan.
#[derive(Debug, Clone, Default, Serialize, JsonSchema)]
pub struct Changes {
    /// Sets of changes, each of them enough, the cheapest first.
    pub sets: Vec<ChangeSet>,
    /// Single changes that are enough, the cheapest first.
    pub changes: Vec<Change>,
    /// Limits of the house that stand in the way. They are no advice.
    pub after_trial: Vec<Change>,
    /// Where no set is known: what forbids it, or where the search ended.
    pub tried: Option<String>,
}

/// Edits of one file.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EditAsked {
    /// The file.
    pub text: Text,
    /// The edits, in this order.
    pub edits: Vec<Edit>,
}

/// Edits of both files, as a plan tells them.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ApplyAsked {
    /// The files.
    pub texts: Texts,
    /// The edits, in this order.
    pub edits: Vec<plan::Edit>,
}

/// Both files after the edits.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Applied {
    /// The job file.
    pub job: String,
    /// The machine file, if there is one.
    pub machine: Option<String>,
}

/// The edited file.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Edited {
    /// The file.
    pub text: String,
}

/// One turned length, with the options of `spanhold at`.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AtAsked {
    /// The job file.
    pub texts: Texts,
    /// Turned length, mm.
    pub turned_mm: f64,
    /// Nose of the counter-spindle collet, mm from the front face. Left out: the front end is free.
    #[serde(default)]
    pub grip_mm: Option<f64>,
    /// Name of the collet. Left out: the first collet that holds the diameter there.
    #[serde(default)]
    pub collet: Option<String>,
    /// Distance of the headstock's nose from the bush face, mm. Left out: the worst of nine positions.
    #[serde(default)]
    pub headstock_mm: Option<f64>,
    /// Without a bush: turned length at the end of the stage, mm. Left out: the given turned length.
    #[serde(default)]
    pub stage_end_mm: Option<f64>,
    /// Speed, rev/min. Left out: the speed of the segment that is turned.
    #[serde(default)]
    pub rpm: Option<f64>,
}

/// What is moved in the plan.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// The hand-over at the start of a stage.
    HandOver,
    /// The nose of a stage's grip.
    Grip,
    /// A headstock re-grip.
    Regrip,
}

/// A job, and a position that is moved in its plan.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ProveAsked {
    /// The job file.
    pub texts: Texts,
    /// What is moved.
    pub what: What,
    /// Number of the stage, from 1. Of a re-grip: its number in the list, from 0.
    pub number: usize,
    /// New position, mm.
    pub to_mm: f64,
}

/// Result of the proof.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Proven {
    /// Whether the changed plan passes the proof.
    pub proven: bool,
    /// Rules and checks that fail.
    pub breaches: Vec<Breach>,
    /// Cycle time of the changed plan, s.
    pub total_s: f64,
    /// For each stage, the check closest to its limit.
    pub stages: Vec<StageCheck>,
}

/// A rule or check that fails.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Breach {
    /// Number of the stage, from 1. None: it concerns the whole plan.
    pub stage: Option<usize>,
    /// The rule or check.
    pub rule: String,
    /// What is wrong, in one sentence.
    pub text: String,
    /// Turned length at which it fails, mm.
    pub turned_mm: Option<f64>,
}

/// A stage, and its check closest to its limit.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct StageCheck {
    /// Number of the stage, from 1.
    pub number: usize,
    /// Turned length at its start, mm.
    pub from_mm: f64,
    /// Turned length at its end, mm.
    pub to_mm: f64,
    /// The check closest to its limit.
    pub check: Option<CheckResult>,
}

/// Why a request has no answer.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Problem {
    /// What is wrong, in one sentence.
    pub what: String,
    /// What to do.
    pub help: String,
    /// Errors in the files, if these are the reason.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub errors: Vec<Told>,
}

impl Problem {
    /// A problem.
    pub fn new(what: impl Into<String>, help: impl Into<String>) -> Problem {
        Problem { what: what.into(), help: help.into(), errors: Vec::new() }
    }
}

impl From<Diag> for Problem {
    fn from(diag: Diag) -> Problem {
        Problem::new(diag.what, diag.help.unwrap_or_default())
    }
}

impl From<&Text> for Named {
    fn from(text: &Text) -> Named {
        Named { name: text.name.clone(), text: text.text.clone() }
    }
}

impl From<Named> for Text {
    fn from(named: Named) -> Text {
        Text { name: named.name, text: named.text }
    }
}

impl ProveAsked {
    /// What is moved.
    pub fn moved(&self) -> Move {
        match self.what {
            What::HandOver => Move::HandOver { stage: self.number },
            What::Grip => Move::Grip { stage: self.number },
            What::Regrip => Move::Regrip { index: self.number },
        }
    }
}

/// Longest text of a list or map that is sent with the tree: a range, a taper, a tolerance.
const WRITTEN_MAX: usize = 120;

impl From<&Entry> for Value {
    fn from(entry: &Entry) -> Value {
        let kind = match entry.kind {
            Kind::Scalar => "scalar",
            Kind::List => "list",
            Kind::Map => "map",
        };
        let short = entry.kind == Kind::Scalar || entry.text.len() <= WRITTEN_MAX;
        Value {
            key: entry.key.clone(),
            kind: kind.into(),
            text: if short { entry.text.clone() } else { String::new() },
            entries: entry.entries.iter().map(Value::from).collect(),
        }
    }
}

impl Told {
    /// A message about one of the texts. `trees`: the trees of these texts.
    pub fn of(diag: &Diag, texts: &Texts, trees: [Option<&Entry>; 2]) -> Told {
        let place = diag.place.as_ref();
        let is = |text: &Text| place.is_some_and(|p| p.source.path.as_os_str() == text.name.as_str());
        let file = match &texts.machine {
            // Both texts may have the same name; then their content decides.
            Some(machine) if is(machine) && place.is_some_and(|p| p.source.text == machine.text) => {
                Some(Which::Machine)
            }
            _ if is(&texts.job) => Some(Which::Job),
            _ => None,
        };
        let [of_job, of_machine] = trees;
        let tree = file.and_then(|file| if file == Which::Machine { of_machine } else { of_job });
        Told {
            file,
            what: diag.what.clone(),
            help: diag.help.clone(),
            line: place.map(|p| p.line),
            column: place.map(|p| p.column),
            way: tree.zip(place).map_or(Vec::new(), |(tree, place)| tree.way_to(place.start)),
            printed: render(std::slice::from_ref(diag)),
        }
    }
}
