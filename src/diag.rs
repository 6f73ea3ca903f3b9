//! A message about something that a person wrote: its place, one sentence, and what to write instead.
//!
//! Library code builds diagnostics and never prints them. The reader (`input`) knows the text they point into and
//! renders them.

use std::fmt;
use std::path::PathBuf;
use std::sync::Arc;

/// One text that diagnostics can point into: a file, or a text given in another way.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Source {
    /// Path as the user gave it, or a name such as `<stdin>`.
    pub path: PathBuf,
    /// The whole text.
    pub text: String,
}

/// A place: a source and a byte range in it. Line and column (both from 1, columns in characters) are precomputed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Place {
    /// The text.
    pub source: Arc<Source>,
    /// First byte.
    pub start: usize,
    /// One past the last byte.
    pub end: usize,
    /// Line, from 1.
    pub line: usize,
    /// Column in characters, from 1.
    pub column: usize,
}

/// One thing that is wrong with what the user wrote.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Diag {
    /// What is wrong, one sentence without a full stop.
    pub what: String,
    /// What to write instead.
    pub help: Option<String>,
    /// Where; a value built in code has no place.
    pub place: Option<Place>,
}

impl Diag {
    /// A new error without a place.
    pub fn new(what: impl Into<String>) -> Self {
        Diag { what: what.into(), help: None, place: None }
    }

    /// The same error with advice.
    #[must_use]
    pub fn help(mut self, help: impl Into<String>) -> Self {
        self.help = Some(help.into());
        self
    }

    /// The same error at a place.
    #[must_use]
    pub fn at(mut self, place: Option<Place>) -> Self {
        self.place = place;
        self
    }
}

/// The one-line form: `file:line:column: error: what (help)`.
impl fmt::Display for Diag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(p) = &self.place {
            write!(f, "{}:{}:{}: ", p.source.path.display(), p.line, p.column)?;
        }
        write!(f, "error: {}", self.what)?;
        if let Some(h) = &self.help {
            write!(f, " ({h})")?;
        }
        Ok(())
    }
}

impl std::error::Error for Diag {}
