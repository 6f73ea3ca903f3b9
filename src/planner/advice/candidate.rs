//! A single change: how to put a value of it into a job, its words, and what to write into the files for it.

use crate::job::plan::Edit;
use crate::job::{ChangeKind, Job};
use serde_json::{Value, json};

/// What a change is to those who would make it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Role {
    /// A change that a setter or a shop may make.
    Change(ChangeKind),
    /// A limit of the house, which the house may change after a trial.
    House,
    /// A limit that keeps people and machine from harm. It is never advised; it is only lifted to find out what stops the bar.
    Safety,
}

/// Makes the job with a value of the change.
pub type With = Box<dyn Fn(&Job, f64) -> Job + Sync>;
/// Makes the words of the change at a value.
pub type Says = Box<dyn Fn(f64) -> String + Sync>;
/// What to write into the files for a value.
pub type Writes = Box<dyn Fn(f64) -> Vec<Edit> + Sync>;

/// A change.
pub struct Candidate {
    /// Its name.
    pub name: String,
    /// What it is.
    pub role: Role,
    /// Changes of one group exclude each other, and none of them only adds possibilities: more of it may also harm. None: it only adds
    /// possibilities.
    pub group: Option<&'static str>,
    /// The value in the job as it is.
    pub before: Value,
    /// The value in the job, and the farthest value worth trying; equal for a change that has no number.
    pub range: (f64, f64),
    /// Values are rounded to this step, away from the value in the job.
    pub step: f64,
    /// The value after the change; none: the number tried.
    pub after: Option<Value>,
    /// Time of work that the change moves to a second set-up, s.
    pub elsewhere_s: f64,
    /// Makes the job with it.
    pub with: With,
    /// In words.
    pub says: Says,
    /// In the files.
    pub writes: Writes,
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

    /// Puts it into a group.
    pub fn in_group(self, group: &'static str) -> Candidate {
        Candidate { group: Some(group), ..self }
    }

    /// Gives it the edits of the files.
    pub fn written(self, writes: impl Fn(f64) -> Vec<Edit> + Sync + 'static) -> Candidate {
        Candidate { writes: Box::new(writes), ..self }
    }

    /// Gives it an edit that writes the number.
    pub fn at_key(self, file: &'static str, at: &'static str) -> Candidate {
        self.written(move |v| vec![edit(file, at, &number_told(v).to_string())])
    }
}

/// An edit of a file.
pub fn edit(file: &str, at: &str, value: &str) -> Edit {
    Edit { file: file.into(), at: at.into(), value: value.into(), with: None }
}

/// A number as it is printed: without a fraction where it has none.
pub fn number_told(value: f64) -> Value {
    let rounded = (value * 1e6).round() / 1e6;
    if rounded.fract() == 0.0 { json!(rounded as i64) } else { json!(rounded) }
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
    role: Role,
    before: Value,
    after: Value,
    says: String,
    with: impl Fn(&mut Job) + Sync + 'static,
) -> Candidate {
    Candidate {
        name: name.into(),
        role,
        group: None,
        before,
        range: (0.0, 0.0),
        step: 1.0,
        after: Some(after),
        elsewhere_s: 0.0,
        with: Box::new(move |job, _| changed(job, &with)),
        says: Box::new(move |_| says.clone()),
        writes: Box::new(|_| Vec::new()),
    }
}

/// A change of a number.
pub fn number(
    name: &str,
    role: Role,
    (from, to): (f64, f64),
    step: f64,
    says: impl Fn(f64) -> String + Sync + 'static,
    with: impl Fn(&mut Job, f64) + Sync + 'static,
) -> Candidate {
    Candidate {
        name: name.into(),
        role,
        group: None,
        before: json!(from),
        range: (from, to),
        step,
        after: None,
        elsewhere_s: 0.0,
        with: Box::new(move |job, v| changed(job, |j| with(j, v))),
        says: Box::new(says),
        writes: Box::new(|_| Vec::new()),
    }
}
