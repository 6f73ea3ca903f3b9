//! The checks, one file each. To add a check, write its file and add its line to [`CHECKS`] or [`EVENTS`].
//!
//! A check gives the demand found, its limit and the utilisation, which is the share of the limit used (the check passes when it is at
//! most 1). Its file contains how the demand is found, how a finding is worded, and which changes of a job may make the check pass.

pub mod back;
pub mod bore;
pub mod buckling;
pub mod chatter;
pub mod cut;
pub mod drill;
pub mod free_ratio;
pub mod pick_up;
pub mod push;
pub mod release;
pub mod run_out;
pub mod sag;
pub mod span_stiffness;
pub mod speed_law;
pub mod stiffness;
pub mod torque;
pub mod whip;
pub mod whirl;

use super::answers::Answers;
use super::features::Task;
use super::rig::Rig;
use super::segments::Segment;
use super::state::{Counter, Guide, State};
use crate::job::plan::CheckResult;
use crate::lang::{self, Units};
use crate::mechanics::beam::Unheld;
use crate::say;
use speed_law::SpeedLaw;

/// The largest utilisation reported. It stands for infinity, because every number printed must be finite.
pub const MOST_SHARE: f64 = 1000.0;
/// A check passes up to this utilisation. The slack allows for rounding when a speed or place is set exactly at a limit.
pub const PASSES_UP_TO: f64 = 1.0 + 1e-6;

/// What a check found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finding {
    /// Name of the check.
    pub check: &'static str,
    /// Unit of demand and limit; empty for a ratio.
    pub unit: &'static str,
    /// Value found.
    pub demand: f64,
    /// Its limit.
    pub limit: f64,
    /// Utilisation: share of the limit used.
    pub utilisation: f64,
    /// Place on the shaft where the demand is worst, mm.
    pub at_mm: f64,
}

impl Finding {
    /// Whether it passes.
    pub fn passes(&self) -> bool {
        self.utilisation <= PASSES_UP_TO
    }

    /// The finding as a plan stores it, found at a turned length, mm.
    pub fn result(&self, turned_mm: f64) -> CheckResult {
        CheckResult {
            check: self.check.into(),
            demand: self.demand,
            limit: self.limit,
            unit: self.unit.into(),
            utilisation: self.utilisation,
            turned_mm,
            at_mm: self.at_mm,
        }
    }

    /// The finding in words: `the stiffness of the bar is 0.95 N/µm, at least 1 N/µm is needed`.
    pub fn told(&self) -> String {
        let says = about(self.check).map_or(Says::AS_NAMED, |c| c.says);
        if let Some(text) = says.without_limit.filter(|_| self.limit <= 0.0) {
            return text();
        }
        let unit = if self.unit.is_empty() { String::new() } else { format!(" {}", lang::unit_told(self.unit)) };
        let [demand, limit] = [self.demand, self.limit].map(|value| lang::told(value, self.unit));
        let size = if limit == 0.0 { demand.abs() } else { limit.abs() };
        let least = if size >= 100.0 {
            0
        } else if size >= 10.0 {
            1
        } else if size >= 1.0 {
            2
        } else if size >= 0.1 || lang::units() == Units::Metric {
            3
        } else {
            5
        };
        // The smallest number of decimals with which value and limit look different.
        let told = |decimals: usize| (lang::fixed(demand, decimals), lang::fixed(limit, decimals));
        let (demand, limit) = (least..9).map(told).find(|(d, l)| d != l).unwrap_or_else(|| told(3));
        (says.found)(self.check, &format!("{demand}{unit}"), &format!("{limit}{unit}"))
    }

    /// The finding for a demand that must not exceed a limit.
    pub fn at_most(check: &'static str, unit: &'static str, demand: f64, limit: f64, at_mm: f64) -> Finding {
        // A limit of zero or a huge demand gives the largest utilisation. So does NaN, which must never pass.
        let utilisation =
            if limit > 0.0 && demand <= MOST_SHARE * limit { demand.max(0.0) / limit } else { MOST_SHARE };
        let demand = if demand.is_finite() { demand } else { MOST_SHARE * limit.abs() };
        Finding { check, unit, demand, limit, utilisation, at_mm }
    }

    /// The finding for a value that must reach at least a limit.
    pub fn at_least(check: &'static str, unit: &'static str, value: f64, limit: f64, at_mm: f64) -> Finding {
        let utilisation = if value > 0.0 && limit <= MOST_SHARE * value { limit / value } else { MOST_SHARE };
        Finding { check, unit, demand: value, limit, utilisation, at_mm }
    }
}

/// The data a check can use.
#[derive(Debug, Clone, Copy)]
pub struct View<'a> {
    /// The job on its machine.
    pub rig: &'a Rig<'a>,
    /// The moment.
    pub state: &'a State,
    /// The answers of the beam.
    pub answers: &'a Answers,
    /// The segment in cut.
    pub segment: &'a Segment,
    /// Speed, rev/min.
    pub rpm: f64,
}

/// An event between cuts.
#[derive(Debug, Clone, Copy)]
pub enum Event<'a> {
    /// Before the first cut: the headstock's collet holds the bar under work on the front end.
    Begins,
    /// Work of a tool at a stop.
    Works(&'a Task),
    /// A stage ends at a hand-over: the collet of the counter-spindle opens, or takes hold of a front that was free.
    LetsGo,
    /// The last grip, with its nose at `nose_mm` on a diameter of `held_mm`, holds the part at part-off and after it.
    HoldsLast {
        /// Its nose, mm.
        nose_mm: f64,
        /// Diameter held, mm. It is a parameter, so that the proof can use a diameter it found itself.
        held_mm: f64,
    },
}

/// How the demand of a check is found.
#[derive(Debug, Clone, Copy)]
pub enum Find {
    /// At every moment, independent of the speed; none if the check does not apply.
    AtRest(fn(&View<'_>) -> Option<Finding>),
    /// At every moment, from the law by which the demand grows with the speed; none if the check does not apply.
    BySpeed(fn(&Rig<'_>, &State, &Answers) -> Option<SpeedLaw>),
    /// At an event, for the state at this event; none if the check does not apply.
    AtEvent(fn(&Rig<'_>, &State, Event<'_>) -> Option<Result<Finding, Unheld>>),
    /// At every moment as [`Find::AtRest`], and at an event as [`Find::AtEvent`].
    Both(fn(&View<'_>) -> Option<Finding>, fn(&Rig<'_>, &State, Event<'_>) -> Option<Result<Finding, Unheld>>),
}

/// The words for a finding.
#[derive(Debug, Clone, Copy)]
pub struct Says {
    /// From the name of the check, the value and its limit, both with their unit.
    pub found: fn(&str, &str, &str) -> String,
    /// Used instead if the limit is not positive, so that nothing can pass.
    pub without_limit: Option<fn() -> String>,
}

impl Says {
    /// The value has the name of the check, and the limit is an upper one.
    pub const AS_NAMED: Says = Says {
        found: |check, demand, limit| say!("finding-at-most", check = check, demand = demand, limit = limit),
        without_limit: None,
    };
}

/// A check.
#[derive(Debug, Clone, Copy)]
pub struct Check {
    /// Name, as printed.
    pub name: &'static str,
    /// What it looks at, in words: for `help` and the docs.
    pub looks_at: fn() -> &'static str,
    /// Unit of demand and limit; empty for a ratio.
    pub unit: &'static str,
    /// The words for a finding.
    pub says: Says,
    /// Names (as in `planner::advice`) of the single changes of a job that may make the check pass.
    pub lifted_by: &'static [&'static str],
    /// How the demand is found.
    pub find: Find,
}

/// The checks of every moment of a stage, in the order in which they are printed.
pub const CHECKS: [Check; 11] = [
    stiffness::CHECK,
    span_stiffness::CHECK,
    free_ratio::CHECK,
    whirl::CHECK,
    whip::CHECK,
    sag::CHECK,
    bore::CHECK,
    cut::CHECK,
    chatter::CHECK,
    buckling::CHECK,
    run_out::CHECK,
];

/// The checks of events between cuts only.
pub const EVENTS: [Check; 6] = [drill::CHECK, pick_up::CHECK, release::CHECK, torque::CHECK, push::CHECK, back::CHECK];

/// Number of checks that depend on the speed.
pub const BY_SPEED: usize = count_by_speed(&CHECKS);

const fn count_by_speed(checks: &[Check]) -> usize {
    match checks {
        [] => 0,
        [first, rest @ ..] => first.depends_on_speed() as usize + count_by_speed(rest),
    }
}

impl Check {
    /// The finding at a moment; none if the check does not apply.
    pub fn at(&self, view: &View<'_>) -> Option<Finding> {
        match self.find {
            Find::AtRest(find) | Find::Both(find, _) => find(view),
            Find::BySpeed(law) => {
                let law = law(view.rig, view.state, view.answers)?;
                let demand = law.demand(view.rpm, view.answers.critical_rpm);
                Some(Finding::at_most(self.name, self.unit, demand, law.limit, law.at_mm))
            }
            Find::AtEvent(_) => None,
        }
    }

    /// Whether the check depends on the speed, so that a lower speed can make it pass.
    pub const fn depends_on_speed(&self) -> bool {
        matches!(self.find, Find::BySpeed(_))
    }
}

/// The check with a name.
pub fn about(name: &str) -> Option<&'static Check> {
    const ALL: [&[Check]; 2] = [&CHECKS, &EVENTS];
    ALL.into_iter().flatten().find(|c| c.name == name)
}

/// Position of a check in the printed order of [`CHECKS`]; after all of them for any other name.
pub fn order(name: &str) -> usize {
    CHECKS.iter().position(|c| c.name == name).unwrap_or(usize::MAX)
}

/// Position of a check among those that depend on the speed.
pub fn by_speed_slot(name: &str) -> Option<usize> {
    CHECKS.iter().filter(|c| c.depends_on_speed()).position(|c| c.name == name)
}

/// All findings of a moment.
pub fn all(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter_map(move |c| c.at(view))
}

/// The findings of a moment that do not need the critical speed.
pub fn at_rest(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter(|c| !c.depends_on_speed()).filter_map(move |c| c.at(view))
}

/// The findings of a moment that need the critical speed.
pub fn by_speed(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter(|c| c.depends_on_speed()).filter_map(move |c| c.at(view))
}

/// All findings of a moment in the order of [`CHECKS`]: `at_rest` are those without the critical speed, and `view` has answers with it.
pub fn completed(mut at_rest: Vec<Finding>, view: &View<'_>) -> Vec<Finding> {
    at_rest.extend(by_speed(view));
    at_rest.sort_by_key(|f| order(f.check));
    at_rest
}

/// The findings of one event.
pub type AtEvent = std::vec::IntoIter<Result<Finding, Unheld>>;

/// The findings at an event, for the state at this event. An error means that the supports do not hold the bar or the part.
pub fn at_event(rig: &Rig<'_>, state: &State, event: Event<'_>) -> AtEvent {
    let found = EVENTS.iter().chain(&CHECKS).filter_map(|c| match c.find {
        Find::AtEvent(find) | Find::Both(_, find) => find(rig, state, event),
        Find::AtRest(_) | Find::BySpeed(_) => None,
    });
    found.collect::<Vec<_>>().into_iter()
}

/// The finding with the largest utilisation.
pub fn worst(findings: impl Iterator<Item = Finding>) -> Option<Finding> {
    findings.max_by(|a, b| a.utilisation.total_cmp(&b.utilisation))
}

/// The worst finding while the bar is fed on without a cut, for work behind the part-off position, at the lowest allowed speed of the
/// part-off. The bar then stands out farther than during any cut, so all checks of a moment are made.
///
/// # Errors
/// [`Unheld`] when the supports leave a free motion.
pub fn fed_on(rig: &Rig<'_>, segments: &[Segment], state: &State) -> Result<Option<Finding>, Unheld> {
    let Some(segment) = segments.last() else { return Ok(None) };
    let rpm = rig.job.cutting.speed_floor * rig.segment_rpm(segment, state.counter.grip_mm().is_some());
    let answers = rig.answers(state)?;
    Ok(worst(all(&View { rig, state, answers: &answers, segment, rpm })))
}

/// The findings for the last grip at part-off and after it, see [`Event::HoldsLast`].
pub fn of_last_grip(rig: &Rig<'_>, nose_mm: f64, held_mm: f64) -> AtEvent {
    let turned_mm = rig.job.shaft.length_mm();
    let state = State { turned_mm, counter: Counter::Holds { nose_mm }, guide: Guide::Parted };
    at_event(rig, &state, Event::HoldsLast { nose_mm, held_mm })
}
