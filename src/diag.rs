//! A message about something that a person wrote: its place, one sentence, and what to write instead.
//!
//! Library code builds diagnostics and never prints them. The reader (`input`) knows the text they point into and
//! renders them.

use crate::say;
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
    /// What to write instead, in sentences, the last without a full stop.
    pub help: Option<String>,
    /// The key of the value that is wrong, if there is one and the place does not point at the key itself.
    pub key: Option<String>,
    /// Where; a value built in code has no place.
    pub place: Option<Place>,
}

impl Diag {
    /// A new error without a place.
    pub fn new(what: impl Into<String>) -> Self {
        Diag { what: what.into(), help: None, key: None, place: None }
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

/// A sentence with its capital letter and its full stop. The name of a file at its head stays as it is.
fn sentence(text: &str) -> String {
    let word = text.split(' ').next().unwrap_or_default();
    let plain = word.chars().all(|c| c.is_ascii_alphabetic() || c == '-');
    let mut letters = text.chars();
    let first = letters.next().map(|c| if plain { c.to_ascii_uppercase() } else { c });
    let stop = if text.ends_with(['.', '?', '!', '…']) { "" } else { "." };
    first.into_iter().chain(letters).chain(stop.chars()).collect()
}

/// The one-line form: `file, line 3, column 9, key: What is wrong. What to write.`
impl fmt::Display for Diag {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(p) = &self.place {
            let (file, line, column) = (p.source.path.display().to_string(), p.line, p.column);
            let place = match &self.key {
                Some(key) => say!("diag-place-of-key", file = file, line = line, column = column, key = key),
                None => say!("diag-place", file = file, line = line, column = column),
            };
            write!(f, "{place}: ")?;
        }
        f.write_str(&sentence(&self.what))?;
        match &self.help {
            Some(help) => write!(f, " {}", sentence(help)),
            None => Ok(()),
        }
    }
}

impl std::error::Error for Diag {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_message_is_sentences_behind_its_place() {
        let source = Arc::new(Source { path: "job.yaml".into(), text: "a: 1\nb: 2\n".into() });
        let place = Place { source, start: 8, end: 9, line: 2, column: 4 };
        let mut diag = Diag::new("`2` is too small").help("write 3");
        assert_eq!(diag.to_string(), "`2` is too small. Write 3.");
        diag = diag.at(Some(place));
        assert_eq!(diag.to_string(), "job.yaml, line 2, column 4: `2` is too small. Write 3.");
        diag.key = Some("b".into());
        assert_eq!(diag.to_string(), "job.yaml, line 2, column 4, b: `2` is too small. Write 3.");
        assert_eq!(Diag::new("t.csv, row 2: too short").to_string(), "t.csv, row 2: too short.");
        assert_eq!(Diag::new("unknown key").help("did you mean `b`?").to_string(), "Unknown key. Did you mean `b`?");
    }
}
