//! The tree of a text for an editor: every value as it is written, with its bytes.

use std::sync::Arc;

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use serde_saphyr::Spanned;

use super::file;
use super::node::{Node, parse, place_of, raw};
use crate::diag::{Diag, Source};

/// The kind of a value.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Nothing, text, a number, `true` or `false`.
    Scalar,
    /// A list.
    List,
    /// A map.
    Map,
}

/// A value and where it is in the text.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// Its key in the map that contains it. None in a list and at the root.
    pub key: Option<String>,
    /// First byte of the key, or of the value if it has no key.
    pub from: usize,
    /// First byte of the value.
    pub start: usize,
    /// One past the last byte of the value.
    pub end: usize,
    /// Its kind.
    pub kind: Kind,
    /// A scalar without its quotes. A list or map as it is written.
    pub text: String,
    /// Whether a list or map is written in brackets.
    pub flow: bool,
    /// The values in it.
    pub entries: Vec<Entry>,
}

/// A step of the path to a value: a key, or the number of an item, from 0.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(untagged)]
pub enum Step {
    /// A key of a map.
    Key(String),
    /// Number of an item in a list, from 0.
    Item(usize),
}

/// Reads a text as a tree. Messages show `name`.
///
/// # Errors
/// The text is too large, or is not YAML that the reader accepts.
pub fn tree(name: &str, text: &str) -> Result<Entry, Diag> {
    let source = file::source_of(name, text)?;
    let root = parse(&source)?;
    Ok(entry(&source, None, &root))
}

impl Entry {
    /// The value at the end of a way.
    pub fn at(&self, way: &[Step]) -> Option<&Entry> {
        way.iter().try_fold(self, |here, step| here.next(step))
    }

    fn next(&self, step: &Step) -> Option<&Entry> {
        match step {
            Step::Key(key) => self.entries.iter().find(|e| e.key.as_deref() == Some(key)),
            Step::Item(index) if self.kind == Kind::List => self.entries.get(*index),
            Step::Item(_) => None,
        }
    }

    /// The way to the innermost value that contains a byte. A key counts as part of its value.
    pub fn way_to(&self, byte: usize) -> Vec<Step> {
        let mut way = Vec::new();
        let mut here = self;
        let holds = |e: &Entry| byte >= e.from && byte < e.end.max(e.from + 1);
        while let Some((index, next)) = here.entries.iter().enumerate().find(|(_, e)| holds(e)) {
            way.push(next.key.clone().map_or(Step::Item(index), Step::Key));
            here = next;
        }
        way
    }
}

fn entry(source: &Arc<Source>, key: Option<(&Spanned<Node>, String)>, node: &Spanned<Node>) -> Entry {
    let place = place_of(source, &node.referenced);
    let key_place = key.as_ref().map(|(key, _)| place_of(source, &key.referenced));
    let nothing = matches!(node.value, Node::Null) && raw(source, &node.referenced).is_empty();
    // A missing value has no place. A new value is written behind the colon of its key.
    let behind_key = key_place.as_ref().filter(|_| nothing).and_then(|key| {
        let colon = source.text.get(key.end..)?.find(':')?;
        Some(key.end + colon + 1)
    });
    let start = behind_key.unwrap_or(place.start);
    let from = key_place.map_or(start, |key| key.start);
    let entries: Vec<Entry> = match &node.value {
        Node::Map(entries) => entries
            .iter()
            .map(|(key, value)| {
                let name = match &key.value {
                    Node::Text(text) => text.clone(),
                    _ => raw(source, &key.referenced).to_owned(),
                };
                entry(source, Some((key, name)), value)
            })
            .collect(),
        Node::List(items) => items.iter().map(|item| entry(source, None, item)).collect(),
        _ => Vec::new(),
    };
    let written = raw(source, &node.referenced);
    let (kind, text, end) = match &node.value {
        Node::Map(_) => (Kind::Map, String::new(), None),
        Node::List(_) => (Kind::List, String::new(), None),
        Node::Null => (Kind::Scalar, String::new(), Some(start + written.len())),
        Node::Text(text) => (Kind::Scalar, text.clone(), Some(start + written.len())),
        _ => (Kind::Scalar, written.to_owned(), Some(start + written.len())),
    };
    let flow = kind != Kind::Scalar && source.text.get(start..).is_some_and(|t| t.starts_with(['{', '[']));
    let end = end.unwrap_or_else(|| {
        let inner = entries.last().map_or(start + usize::from(flow), |last| last.end);
        if flow { closing(&source.text, inner) } else { inner }
    });
    let text = match kind {
        Kind::Scalar => text,
        _ => source.text.get(start..end).unwrap_or_default().to_owned(),
    };
    Entry { key: key.map(|(_, name)| name), from, start, end, kind, text, flow, entries }
}

/// One past the bracket that closes a list or map whose last item ends at `from`. Only blanks, commas and comments are
/// between the item and the bracket.
fn closing(text: &str, from: usize) -> usize {
    let mut comment = false;
    for (i, c) in text.get(from..).unwrap_or_default().char_indices() {
        match c {
            '\n' => comment = false,
            '#' => comment = true,
            ']' | '}' if !comment => return from + i + 1,
            _ => {}
        }
    }
    text.len()
}
