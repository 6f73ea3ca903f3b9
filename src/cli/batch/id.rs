//! What a line is about: file, document, machine and sizes.

use crate::job::{Range, Varied};
use serde::{Deserialize, Serialize};

/// The varied sizes of a part of a family.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Sizes {
    /// The varied length.
    pub length_mm: Option<f64>,
    /// The varied diameter.
    pub diameter_mm: Option<f64>,
}

impl Sizes {
    /// The sizes of a part. None: nothing varies.
    pub fn of(ranges: &[Range], values_mm: &[f64]) -> Option<Sizes> {
        let of =
            |varied: Varied| ranges.iter().position(|r| r.varied == varied).and_then(|i| values_mm.get(i).copied());
        (!ranges.is_empty()).then(|| Sizes { length_mm: of(Varied::Length), diameter_mm: of(Varied::Diameter) })
    }
}

/// What a line is about.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Id {
    /// The job file as given; `<stdin>` for a document.
    pub file: String,
    /// Number of the document on stdin, from 1.
    pub document: Option<usize>,
    /// The machine file as given with the call; none: the job's own.
    pub machine: Option<String>,
    /// The sizes of a part of a family.
    pub vary: Option<Sizes>,
}

impl Id {
    /// Its text in messages.
    pub fn text(&self) -> String {
        let document = self.document.map_or(String::new(), |n| format!(" document {n}"));
        let machine = self.machine.as_ref().map_or(String::new(), |m| format!(" on {m}"));
        let size = |name: &str, mm: Option<f64>| mm.map_or(String::new(), |mm| format!(", {name} {mm} mm"));
        let sizes = self
            .vary
            .as_ref()
            .map_or(String::new(), |v| size("length", v.length_mm) + &size("diameter", v.diameter_mm));
        format!("{}{document}{machine}{sizes}", self.file)
    }
}
