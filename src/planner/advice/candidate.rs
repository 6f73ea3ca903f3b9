//! A single change: how to put a value of it into a job, and its words.

use crate::job::Job;
use serde_json::{Value, json};

/// The first rank of a change, before its time: easier changes come first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ease {
    /// A wish of the user is given up.
    Wish,
    /// A setting of the process: speed, tools.
    Setting,
    /// Permission of the drawing office or the customer.
    Leave,
    /// Another collet, another bar.
    Tooling,
    /// A limit of the plan is relaxed.
    Limit,
    /// Another machine.
    Machine,
}

/// Makes the job with a value of the change.
pub type With = Box<dyn Fn(&Job, f64) -> Job + Sync>;
/// Makes the words of the change at a value.
pub type Says = Box<dyn Fn(f64) -> String + Sync>;

/// A change.
pub struct Candidate {
    /// Its name.
    pub name: String,
    /// Its rank.
    pub ease: Ease,
    /// The value in the job as it is.
    pub before: Value,
    /// The value in the job, and the farthest value worth trying; equal for a change that has no number.
    pub range: (f64, f64),
    /// Values are rounded to this step, away from the value in the job.
    pub step: f64,
    /// The value after the change; none: the number tried.
    pub after: Option<Value>,
    /// Makes the job with it.
    pub with: With,
    /// In words.
    pub says: Says,
}

impl Candidate {
    /// Number of round values between the value in the job and `to`, without `to` itself.
    pub fn steps(&self, to: f64) -> u64 {
        let (first, last) = self.multiples(to);
        (last - first).abs().round() as u64
    }

    /// The `n`th round value, counted from 1, from the value in the job towards `to`.
    pub fn at(&self, n: u64, to: f64) -> f64 {
        let first = self.multiples(to).0;
        let whole = if to >= self.range.0 { first + n as f64 } else { first - n as f64 };
        whole * self.step
    }

    /// The nearest multiple of the step.
    pub fn rounded(&self, value: f64) -> f64 {
        (value / self.step).round() * self.step
    }

    /// Two multiples of the step, as numbers of steps: the last one not beyond the value in the job, and the last one
    /// before `to`.
    fn multiples(&self, to: f64) -> (f64, f64) {
        let (from, to) = (self.range.0 / self.step, to / self.step);
        if to >= from {
            ((from + 1e-6).floor(), ((to - 1e-6).ceil() - 1.0).max((from + 1e-6).floor()))
        } else {
            ((from - 1e-6).ceil(), ((to + 1e-6).floor() + 1.0).min((from - 1e-6).ceil()))
        }
    }
}

/// A copy of a job with something changed.
fn changed(job: &Job, change: impl FnOnce(&mut Job)) -> Job {
    let mut job = job.clone();
    change(&mut job);
    job
}

/// A change without a number: it is made or not.
pub fn once(
    name: &str,
    ease: Ease,
    before: Value,
    after: Value,
    says: String,
    with: impl Fn(&mut Job) + Sync + 'static,
) -> Candidate {
    Candidate {
        name: name.into(),
        ease,
        before,
        range: (0.0, 0.0),
        step: 1.0,
        after: Some(after),
        with: Box::new(move |job, _| changed(job, &with)),
        says: Box::new(move |_| says.clone()),
    }
}

/// A change of a number.
pub fn number(
    name: &str,
    ease: Ease,
    (from, to): (f64, f64),
    step: f64,
    says: impl Fn(f64) -> String + Sync + 'static,
    with: impl Fn(&mut Job, f64) + Sync + 'static,
) -> Candidate {
    Candidate {
        name: name.into(),
        ease,
        before: json!(from),
        range: (from, to),
        step,
        after: None,
        with: Box::new(move |job, v| changed(job, |j| with(j, v))),
        says: Box::new(says),
    }
}
