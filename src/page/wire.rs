//! What is asked and answered, as JSON. `/openapi.json` is made from these types.

use crate::answer::moved::Move;
use crate::diag::Diag;
use crate::input::edit::Edit;
use crate::input::tree::{Entry, Kind, Step};
use crate::input::{Named, render};
use crate::job::plan::{Change, CheckResult, Plan};
use crate::report::Placed;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A text and its name.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Text {
    /// Name of the file, as it stands in messages.
    pub name: String,
    /// The YAML.
    pub text: String,
}

/// A job and the machine file it names, as they are.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct Texts {
    /// The job file.
    pub job: Text,
    /// The machine file; left out where the job has its machine in it, or the file is not at hand.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub machine: Option<Text>,
}

/// Which of the texts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum Which {
    /// The job.
    Job,
    /// The machine file.
    Machine,
}

/// Something wrong with a text, in the words of the command line.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Told {
    /// Which text; none where it is neither.
    pub file: Option<Which>,
    /// What is wrong.
    pub what: String,
    /// What to write instead.
    pub help: Option<String>,
    /// Line, from 1.
    pub line: Option<usize>,
    /// Column in characters, from 1.
    pub column: Option<usize>,
    /// The way to the value it is about, as far as the text can be read.
    pub way: Vec<Step>,
    /// The message as the command line prints it.
    pub printed: String,
}

/// A value of a text.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Value {
    /// Its key in the map above.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub key: Option<String>,
    /// `scalar`, `list` or `map`.
    pub kind: String,
    /// A scalar without its quotes; of lists and maps what is written, where it is short.
    pub text: String,
    /// What is in it.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub entries: Vec<Value>,
}

/// The answer to a job.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Planned {
    /// The job as a tree; none where it is not YAML.
    pub job: Option<Value>,
    /// The machine file as a tree.
    pub machine: Option<Value>,
    /// What is wrong with them. Without any there is a plan, feasible or not.
    pub errors: Vec<Told>,
    /// The plan. `shortfall.changes` is empty here: ask `/changes`.
    pub plan: Option<Plan>,
    /// The one line that says it.
    pub summary: Option<String>,
    /// What to look at first, the most serious at the front.
    pub look_at: Vec<String>,
    /// The diagram.
    pub drawing: Option<Placed>,
    /// Both spindles in time, an SVG element; none without a plan.
    pub strip: Option<String>,
}

/// What would help, where there is no plan.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Changes {
    /// Ranked, best first.
    pub changes: Vec<Change>,
}

/// An edit of one of the texts.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct EditAsked {
    /// The text.
    pub text: Text,
    /// What is edited, in order.
    pub edits: Vec<Edit>,
}

/// The edited text.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Edited {
    /// The text.
    pub text: String,
}

/// A moment, as the options of `spanhold at`.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct AtAsked {
    /// The job.
    pub texts: Texts,
    /// Turned length, mm.
    pub turned_mm: f64,
    /// Nose of the counter-spindle's collet, mm; left out: the front is free.
    #[serde(default)]
    pub grip_mm: Option<f64>,
    /// Name of the collet.
    #[serde(default)]
    pub collet: Option<String>,
    /// Distance of the headstock's nose from the bush face, mm; left out: the worst of nine.
    #[serde(default)]
    pub headstock_mm: Option<f64>,
    /// Without a bush: where the stage ends, mm.
    #[serde(default)]
    pub stage_end_mm: Option<f64>,
    /// Speed, rev/min; left out: that of the segment in cut.
    #[serde(default)]
    pub rpm: Option<f64>,
}

/// What of the plan is moved.
#[derive(Debug, Clone, Copy, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case")]
pub enum What {
    /// The hand-over that a stage begins with.
    HandOver,
    /// The nose of a stage's grip.
    Grip,
    /// A re-grip of the headstock.
    Regrip,
}

/// The plan of a job with one place moved.
#[derive(Debug, Clone, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields)]
pub struct ProveAsked {
    /// The job.
    pub texts: Texts,
    /// What is moved.
    pub what: What,
    /// The stage, from 1; of a re-grip its place in the list, from 0.
    pub number: usize,
    /// Where to, mm.
    pub to_mm: f64,
}

/// What the proof says.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Proven {
    /// Whether the moved plan holds.
    pub proven: bool,
    /// Rules and checks that break.
    pub breaches: Vec<Breach>,
    /// Time a part with the moved plan, s.
    pub total_s: f64,
    /// Each stage's tightest check.
    pub stages: Vec<StageCheck>,
}

/// A rule that breaks.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Breach {
    /// Stage, from 1.
    pub stage: Option<usize>,
    /// The rule or check.
    pub rule: String,
    /// One sentence.
    pub text: String,
    /// Turned length where a state broke it, mm.
    pub turned_mm: Option<f64>,
}

/// A stage and its tightest check.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct StageCheck {
    /// From 1.
    pub number: usize,
    /// Where it begins, mm.
    pub from_mm: f64,
    /// Where it ends, mm.
    pub to_mm: f64,
    /// The check that uses most of its limit.
    pub check: Option<CheckResult>,
}

/// What went wrong with a request.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub struct Problem {
    /// One sentence.
    pub what: String,
    /// What to do instead.
    pub help: String,
    /// Errors of the texts, where it is these.
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
