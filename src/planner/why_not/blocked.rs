//! What stands in the way of a plan.

use crate::job::Job;
use crate::lang::Measure;
use crate::lang::lists;
use crate::planner::why_not::no_hold::{self, NoHold, REASONS};
use crate::process::segments::Refused;
use crate::say;

/// A reason that stops the bar: the name of the check or rule, and words.
#[derive(Debug, Clone, PartialEq)]
pub struct Reason {
    /// Name of the check or rule.
    pub by: String,
    /// One sentence.
    pub text: String,
}

/// What stands in the way of a plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Blocked {
    /// Farthest turned length reached, mm.
    pub farthest_mm: f64,
    /// Name of the check or rule; where several must all be lifted, the first.
    pub by: String,
    /// One sentence.
    pub text: String,
    /// All reasons where several must be lifted together, else empty.
    pub together: Vec<Reason>,
    /// What stopped other collets, to be told after the sentence.
    pub others: Vec<String>,
    /// Index of the section at the farthest turned length.
    pub section: usize,
    /// The station pitch for which this holds, mm, where it is not that of the job.
    pub pitch_mm: Option<f64>,
    /// The stages up to there: from, to, and the grip's nose, mm.
    pub stages: Vec<(f64, f64, Option<f64>)>,
    /// The collet tried.
    pub collet: Option<String>,
    /// Why no grip brings the bar farther than the free front does, where this is so.
    pub no_hold: Option<NoHold>,
}

impl Blocked {
    /// A turned length and what stops the bar there.
    pub fn found(farthest_mm: f64, by: &str, text: String, section: usize) -> Blocked {
        Blocked {
            farthest_mm,
            by: by.into(),
            text,
            together: Vec::new(),
            others: Vec::new(),
            section,
            pitch_mm: None,
            stages: Vec::new(),
            collet: None,
            no_hold: None,
        }
    }
}

impl Blocked {
    /// Whether a finer station pitch could change the answer: where the bar was moved at all, or nothing held it.
    pub fn depends_on_stations(&self) -> bool {
        self.collet.is_some() || !self.stages.is_empty() || self.no_hold.is_some()
    }

    /// The rank of this answer among those of other collets. The farthest ranks highest, then a single reason before
    /// several together, then an answer with a grip before one without.
    pub fn rank(&self) -> (f64, bool, bool) {
        (self.farthest_mm, self.together.is_empty(), self.no_hold.is_none())
    }

    /// Names of all reasons that must be lifted.
    pub fn names(&self) -> Vec<&str> {
        if self.together.is_empty() { vec![&self.by] } else { self.together.iter().map(|r| r.by.as_str()).collect() }
    }

    /// The sentence, with what stopped the other collets.
    pub fn told(&self) -> String {
        let texts: Vec<&String> = std::iter::once(&self.text).chain(&self.others).collect();
        lists::semicolons(&texts)
    }

    /// Adds what stopped the other collets where that was something else: the way on may be with one of them. Where no
    /// collet took hold, it adds why.
    pub fn beside(mut self, job: &Job, others: &[Blocked]) -> Blocked {
        if self.no_hold.is_some() {
            let reasons: Vec<NoHold> = others.iter().filter_map(|b| b.no_hold.clone()).collect();
            self.text = say!("stopped-no-grip", reason = self.text, why = no_hold::told(job, &reasons));
            return self;
        }
        let mut told = vec![self.names()];
        let mut texts = Vec::new();
        for other in others.iter().filter(|b| b.no_hold.is_none()) {
            let Some(collet) = other.collet.as_ref().filter(|c| Some(*c) != self.collet.as_ref()) else { continue };
            if told.contains(&other.names()) || told.len() > REASONS {
                continue;
            }
            told.push(other.names());
            let turned = Measure::Place.fixed(other.farthest_mm, 1);
            texts.push(say!("stopped-other-collet", collet = collet, turned = turned, reason = other.text));
        }
        self.others = texts;
        self
    }
}

impl From<Refused> for Blocked {
    fn from(refused: Refused) -> Blocked {
        Blocked::found(refused.at_mm, refused.rule, refused.text, refused.section)
    }
}

/// The machine has a counter-spindle but no collet for it.
pub fn no_collets() -> Blocked {
    Blocked::found(0.0, "collet", say!("part-off-no-collet"), 0)
}

/// No plan, without a reason.
pub fn unknown() -> Blocked {
    Blocked::found(0.0, "", String::new(), 0)
}
