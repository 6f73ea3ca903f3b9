//! The checks of a moment, one file each. To add one: write its file, put it into [`CHECKS`].
//!
//! A check gives the demand found, its limit and the share of the limit used (passes when at most 1).

pub mod back;
pub mod bore;
pub mod chatter;
pub mod cut;
pub mod drill;
pub mod push;
pub mod release;
pub mod sag;
pub mod stiffness;
pub mod torque;
pub mod whip;
pub mod whirl;

use super::answers::Answers;
use super::rig::Rig;
use super::segments::Segment;
use super::state::State;
use crate::job::plan::CheckResult;
use crate::mechanics::beam::Unheld;

/// The largest share reported: anything beyond is as good as infinite, and every number printed must be finite.
pub const MOST_SHARE: f64 = 1000.0;
/// A check passes up to this share: rounding in the last digits of a speed or place set exactly at a limit is no breach.
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
    /// Share of the limit used.
    pub utilisation: f64,
    /// Place on the shaft where it is worst, mm.
    pub at_mm: f64,
}

impl Finding {
    /// Whether it passes.
    pub fn passes(&self) -> bool {
        self.utilisation <= PASSES_UP_TO
    }

    /// The same as a plan tells it, found at a turned length, mm.
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

    /// What was found at a place, against its limit, in words: `stiffness at … is 0.95 N/µm where at least 1 N/µm is needed`.
    pub fn told(&self, place: &str) -> String {
        let unit = if self.unit.is_empty() { String::new() } else { format!(" {}", self.unit) };
        if self.check == bore::NAME && self.limit <= 0.0 {
            return format!("the shaft has no room in the counter-spindle's bore {place}, its clearance left free");
        }
        let size = if self.limit == 0.0 { self.demand.abs() } else { self.limit.abs() };
        let least = if size >= 100.0 {
            0
        } else if size >= 10.0 {
            1
        } else if size >= 1.0 {
            2
        } else {
            3
        };
        // As many decimals as tell the value from the limit.
        let told = |decimals: usize| (format!("{:.decimals$}", self.demand), format!("{:.decimals$}", self.limit));
        let (demand, limit) = (least..9).map(told).find(|(d, l)| d != l).unwrap_or_else(|| told(3));
        let subject = match self.check {
            whirl::NAME => "the speed over the critical speed",
            chatter::NAME => "the depth of cut",
            drill::NAME => "bending",
            back::NAME => "the bending",
            bore::NAME => "the bow in the counter-spindle's bore",
            cut::NAME => "the change of the diameter",
            other => other,
        };
        let holds = match self.check {
            name if name == stiffness::CHECK.name => format!("at least {limit}{unit} is needed"),
            chatter::NAME => format!("chatter begins at {limit}{unit}"),
            _ => format!("at most {limit}{unit} is allowed"),
        };
        format!("{subject} {place} is {demand}{unit} where {holds}")
    }

    /// A demand that must not exceed a limit.
    pub fn at_most(check: &'static str, unit: &'static str, demand: f64, limit: f64, at_mm: f64) -> Finding {
        // A limit of nothing, or a demand beyond bounds, is a full breach; so is NaN, which must never pass.
        let utilisation =
            if limit > 0.0 && demand <= MOST_SHARE * limit { demand.max(0.0) / limit } else { MOST_SHARE };
        let demand = if demand.is_finite() { demand } else { MOST_SHARE * limit.abs() };
        Finding { check, unit, demand, limit, utilisation, at_mm }
    }

    /// A value that must reach at least a limit.
    pub fn at_least(check: &'static str, unit: &'static str, value: f64, limit: f64, at_mm: f64) -> Finding {
        let utilisation = if value > 0.0 && limit <= MOST_SHARE * value { limit / value } else { MOST_SHARE };
        Finding { check, unit, demand: value, limit, utilisation, at_mm }
    }
}

/// What a check may look at.
#[derive(Debug, Clone, Copy)]
pub struct View<'a> {
    /// The job on its machine.
    pub rig: &'a Rig<'a>,
    /// The moment.
    pub state: &'a State,
    /// What the beam answers.
    pub answers: &'a Answers,
    /// The segment in cut.
    pub segment: &'a Segment,
    /// Speed, rev/min.
    pub rpm: f64,
}

/// A check of a moment.
#[derive(Debug, Clone, Copy)]
pub struct Check {
    /// Name, as printed.
    pub name: &'static str,
    /// Finds it; none where it does not apply.
    pub find: fn(&View<'_>) -> Option<Finding>,
}

/// The checks that hold at every moment of a stage, in the order they are printed.
pub const CHECKS: [Check; 7] =
    [stiffness::CHECK, whirl::CHECK, whip::CHECK, sag::CHECK, bore::CHECK, cut::CHECK, chatter::CHECK];

/// The checks that depend on the speed, through the critical speed.
pub const OF_SPEED: [&str; 3] = [whirl::NAME, whip::NAME, bore::NAME];

/// All findings of a moment.
pub fn all(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter_map(move |c| (c.find)(view))
}

/// The findings of a moment that do not ask for the critical speed.
pub fn still(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter(|c| !depends_on_speed(c.name)).filter_map(move |c| (c.find)(view))
}

/// The findings of a moment that ask for the critical speed.
pub fn of_speed(view: &View<'_>) -> impl Iterator<Item = Finding> {
    CHECKS.iter().filter(|c| depends_on_speed(c.name)).filter_map(move |c| (c.find)(view))
}

/// The findings that do not ask for the critical speed, and those of a view that has it, in the order of [`CHECKS`].
pub fn completed(mut still: Vec<Finding>, view: &View<'_>) -> Vec<Finding> {
    still.extend(of_speed(view));
    still.sort_by_key(|f| CHECKS.iter().position(|c| c.name == f.check));
    still
}

/// The finding that uses most of its limit.
pub fn worst(findings: impl Iterator<Item = Finding>) -> Option<Finding> {
    findings.max_by(|a, b| a.utilisation.total_cmp(&b.utilisation))
}

/// The worst finding while bar is fed on, uncut, for work behind the part-off, at the lowest speed the part-off may have. It stands out
/// farther then than at any cut, so every check of a moment is looked at.
pub fn fed_on(rig: &Rig<'_>, segments: &[Segment], state: &State) -> Result<Option<Finding>, Unheld> {
    let Some(segment) = segments.last() else { return Ok(None) };
    let rpm = rig.job.cutting.speed_floor * rig.segment_rpm(segment, state.counter.grip_mm().is_some());
    let answers = rig.answers(state)?;
    Ok(worst(all(&View { rig, state, answers: &answers, segment, rpm })))
}

/// What the last grip, with its nose at `nose_mm` on `held_mm` of diameter, must hold at part-off and after it. An error where it does not
/// hold the part at all. The diameter is asked for, so that the proof counts with one of its own.
pub fn of_last_grip(rig: &Rig<'_>, nose_mm: f64, held_mm: f64) -> impl Iterator<Item = Result<Finding, Unheld>> {
    let (torque, push) = (torque::find(rig, nose_mm, held_mm), push::back(rig, nose_mm, held_mm));
    [torque.map(Ok), push.map(Ok), back::find(rig, nose_mm).transpose()].into_iter().flatten()
}

/// Whether a check depends on the speed, so that slowing down can satisfy it.
pub fn depends_on_speed(name: &str) -> bool {
    OF_SPEED.contains(&name)
}
