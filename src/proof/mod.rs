//! Proves a finished plan from the job alone: rules, places, states, times.
//!
//! The proof shares nothing with the planner: no stations, no arcs, no sampled headstock places, no beam in parts. It computes
//! every state with a whole beam, at turned lengths of its own choice. A plan that it does not accept is not printed as a plan.

mod centre;
mod cuts;
mod described;
mod driven;
mod grips;
mod moments;
mod scatter;
mod stops;
mod times;
mod wishes;

use crate::job::plan::{Plan, Stage};
use crate::job::{Holding, Job};
use crate::lang::Measure;
use crate::process::checks::Finding;
use crate::process::segments::Segment;
use crate::process::{Rig, State};
use crate::say;
pub use described::{SAME_MARGIN, described};
pub use scatter::{Course, along, counted, reaches, scatter, spread_of_checks};
use std::collections::BTreeMap;

/// Places and lengths of a plan agree with the job within this, mm, because plans are stored as decimal text.
const SAME_MM: f64 = 1e-4;

/// Two utilisations that differ by less than this share are equal; then the plan keeps the state it states itself.
const SAME_UTILISATION: f64 = 1e-9;

/// A place in a message, mm.
fn mm(value_mm: f64) -> String {
    Measure::Place.fixed(value_mm, 2)
}

/// One rule that a plan breaks.
#[derive(Debug, Clone, PartialEq)]
pub struct Breach {
    /// Stage, from 1; none for the plan as a whole.
    pub stage: Option<usize>,
    /// The rule or check.
    pub rule: String,
    /// One sentence.
    pub text: String,
    /// Turned length of the state that breaks the rule, mm; none if the rule does not concern a state.
    pub turned_mm: Option<f64>,
    /// Utilisation, if the rule is a check.
    pub utilisation: Option<f64>,
    /// The state that breaks the rule, if there is one.
    pub state: Option<State>,
}

impl Breach {
    fn of(stage: Option<usize>, rule: &str, text: impl Into<String>) -> Breach {
        Breach { stage, rule: rule.into(), text: text.into(), turned_mm: None, utilisation: None, state: None }
    }
}

/// What a proof found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Verified {
    /// Breaches in the order of the plan. The plan is proven if there are none.
    pub breaches: Vec<Breach>,
    /// Number of states checked.
    pub states: usize,
    /// Largest utilisation of any check.
    pub utilisation: f64,
    /// The worst finding of each check in each stage, by the index of the stage and the name of the check, with its turned length, mm.
    /// The checks that depend on the speed are computed only where they may be the worst of all.
    pub worst: BTreeMap<(usize, &'static str), (Finding, f64)>,
}

impl Verified {
    /// Whether the plan is proven.
    pub fn holds(&self) -> bool {
        self.breaches.is_empty()
    }

    /// Notes a finding at a turned length, if it is the worst of this check in its stage.
    fn note(&mut self, stage: usize, turned_mm: f64, found: Finding) {
        self.utilisation = self.utilisation.max(found.utilisation);
        let worst = self.worst.entry((stage, found.check)).or_insert((found, turned_mm));
        if worst.0.utilisation < found.utilisation {
            *worst = (found, turned_mm);
        }
    }

    /// Replaces findings in a plan where the proof found a larger utilisation. So no check looks better in the plan than in the proof, and
    /// the margin of the plan is the smallest over the states of planner and proof.
    pub fn tell(&self, plan: &mut Plan) {
        for ((stage, check), (found, turned_mm)) in &self.worst {
            let Some(stage) = plan.stages.get_mut(*stage) else { continue };
            match stage.checks.iter_mut().find(|c| c.check == *check) {
                Some(told) if found.utilisation <= told.utilisation * (1.0 + SAME_UTILISATION) => {}
                Some(told) => *told = found.result(*turned_mm),
                None => stage.checks.push(found.result(*turned_mm)),
            }
        }
        plan.tell_margin();
    }
}

/// The data that all parts of the proof use.
struct Case<'a> {
    plan: &'a Plan,
    rig: &'a Rig<'a>,
    segments: &'a [Segment],
    verified: Verified,
    /// States whose `chatter` passes with a bound: utilisation of the bound, stage (index), segment, state.
    bounded: Vec<(f64, usize, &'a Segment, State)>,
}

impl Case<'_> {
    fn stages_mean_something(&self) -> bool {
        let hold_mm = self.rig.collet.map(|c| c.hold_mm);
        let stands = |s: &Stage| match (&s.grip, hold_mm) {
            (None, _) => true,
            (Some(grip), Some(hold)) => grip.nose_mm >= hold - SAME_MM && grip.nose_mm <= s.from_mm + SAME_MM,
            (Some(_), None) => false,
        };
        let ordered =
            !self.verified.breaches.iter().any(|b| ["order", "regrips", "support"].contains(&b.rule.as_str()));
        ordered && self.plan.stages.iter().all(stands)
    }

    fn breach(&mut self, stage: Option<usize>, rule: &str, text: impl Into<String>) {
        self.verified.breaches.push(Breach::of(stage, rule, text));
    }
}

/// Proves a plan against a job. The result lists the rules that the plan breaks.
pub fn prove(plan: &Plan, job: &Job) -> Verified {
    let refuse =
        |rule: &str, text: String| Verified { breaches: vec![Breach::of(None, rule, text)], ..Verified::default() };
    if !plan.verdict.has_plan() || plan.stages.is_empty() {
        return refuse("verdict", say!("proof-no-plan"));
    }
    let counter = job.machine.counter_spindle.as_ref();
    let collet = match (&plan.collet, counter) {
        (None, _) => None,
        (Some(name), Some(_)) => match job.machine.collet(name) {
            Some(collet) => Some(collet),
            None => return refuse("collet", say!("proof-no-such-collet", collet = name)),
        },
        (Some(name), None) => {
            return refuse("collet", say!("proof-no-counter-spindle", collet = name));
        }
    };
    if plan.holding != job.holding.key() || plan.tools != job.cutting.tools.key() {
        let text = say!(
            "proof-way-of-turning",
            holding = plan.holding,
            tools = plan.tools,
            job_holding = job.holding.key(),
            job_tools = job.cutting.tools.key()
        );
        return refuse("way of turning", text);
    }
    let bar = job.stock.diameter_mm;
    let (most, rule) = match job.holding {
        Holding::Bush => (job.machine.bush.as_ref().map_or(0.0, |b| b.max_bar_mm), "bush_size"),
        Holding::NoBush => (job.machine.no_bush.as_ref().map_or(0.0, |n| n.max_bar_mm), "collet_size"),
    };
    if bar > most {
        return refuse(
            rule,
            say!("proof-bar-too-thick", bar = Measure::Size.number(bar), most = Measure::Size.number(most)),
        );
    }
    let rig = Rig::new(job, collet);
    let segments = match rig.segments() {
        Ok(segments) => segments,
        Err(refused) => return refuse(refused.rule, refused.text),
    };
    let mut case = Case { plan, rig: &rig, segments: &segments, verified: Verified::default(), bounded: Vec::new() };
    case.stops();
    case.grips();
    case.wishes();
    case.centre();
    // A broken rule must not hide a failed check. Only if stages are out of order or a grip has no valid place do the states have no
    // meaning.
    if case.stages_mean_something() {
        case.cuts();
        case.events();
        case.bounded();
        case.times();
        case.driven();
    }
    case.verified
}
