//! Turns YAML text into a tree of nodes that know their place.
//!
//! The parser is set to pass on what the reader reports itself (duplicate keys, merge keys, numbers that are not
//! finite). It refuses early what no honest file contains (anchors, deep nesting, unknown tags).

use std::fmt;
use std::sync::Arc;

use serde::Deserialize;
use serde::de::{Deserializer, MapAccess, SeqAccess, Visitor};
use serde_saphyr::budget::BudgetBreach;
use serde_saphyr::options::{DuplicateKeyPolicy, MergeKeyPolicy, NonFiniteFloatPolicy};
use serde_saphyr::{Error, Location, Options, Spanned};

use crate::diag::{Diag, Place, Source};
use crate::lang;
use crate::say;

/// Deepest nesting. The deepest value of a valid file, the range of a collet, is at level 7.
const DEPTH_MAX: usize = 16;
/// Most nodes. The largest valid file has about 60,000. The limit is higher, so that a file with 10,000 sections gets
/// the error about too many sections.
const NODES_MAX: usize = 200_000;

/// A value of the file.
#[derive(Debug, Clone)]
pub(super) enum Node {
    /// Nothing, or `null`.
    Null,
    /// `true` or `false`.
    Bool(bool),
    /// A number, possibly not finite.
    Number(f64),
    /// Text, quoted or not.
    Text(String),
    /// A list.
    List(Vec<Spanned<Node>>),
    /// Keys and values in file order; keys may repeat.
    Map(Vec<(Spanned<Node>, Spanned<Node>)>),
}

impl Node {
    /// The value of a key, if this is a map that has it.
    pub(super) fn get(&self, key: &str) -> Option<&Spanned<Node>> {
        let Node::Map(entries) = self else { return None };
        let found = entries.iter().find(|(name, _)| matches!(&name.value, Node::Text(text) if text == key));
        found.map(|(_, value)| value)
    }

    /// The kind of value, for messages.
    pub(super) fn kind(&self) -> &'static str {
        match self {
            Node::Null => lang::text("kind-nothing"),
            Node::Bool(_) => lang::text("kind-flag"),
            Node::Number(_) => lang::text("kind-number"),
            Node::Text(_) => lang::text("kind-text"),
            Node::List(_) => lang::text("kind-list"),
            Node::Map(_) => lang::text("kind-map"),
        }
    }
}

impl<'de> Deserialize<'de> for Node {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        deserializer.deserialize_any(NodeVisitor)
    }
}

struct NodeVisitor;

impl<'de> Visitor<'de> for NodeVisitor {
    type Value = Node;

    fn expecting(&self, f: &mut fmt::Formatter) -> fmt::Result {
        f.write_str("a value")
    }

    fn visit_unit<E>(self) -> Result<Node, E> {
        Ok(Node::Null)
    }

    fn visit_none<E>(self) -> Result<Node, E> {
        Ok(Node::Null)
    }

    fn visit_bool<E>(self, value: bool) -> Result<Node, E> {
        Ok(Node::Bool(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_i128<E>(self, value: i128) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_u128<E>(self, value: u128) -> Result<Node, E> {
        Ok(Node::Number(value as f64))
    }

    fn visit_f64<E>(self, value: f64) -> Result<Node, E> {
        Ok(Node::Number(value))
    }

    fn visit_str<E>(self, value: &str) -> Result<Node, E> {
        Ok(Node::Text(value.to_owned()))
    }

    fn visit_string<E>(self, value: String) -> Result<Node, E> {
        Ok(Node::Text(value))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut seq: A) -> Result<Node, A::Error> {
        let mut items = Vec::new();
        while let Some(item) = seq.next_element::<Spanned<Node>>()? {
            items.push(item);
        }
        Ok(Node::List(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Node, A::Error> {
        let mut entries = Vec::new();
        while let Some(entry) = map.next_entry::<Spanned<Node>, Spanned<Node>>()? {
            entries.push(entry);
        }
        Ok(Node::Map(entries))
    }
}

/// Reads a text as a tree.
///
/// # Errors
/// One error, at the place where the text stops being YAML that the reader accepts.
pub(super) fn parse(source: &Arc<Source>) -> Result<Spanned<Node>, Diag> {
    let empty =
        || Diag::new(lang::text("yaml-empty")).help(lang::text("yaml-empty-help")).at(Some(place(source, 0, 0)));
    if source.text.trim_start_matches('\u{feff}').trim().is_empty() {
        return Err(empty());
    }
    match serde_saphyr::from_str_with_options(&source.text, options()) {
        // The file has nothing but comments.
        Ok(Spanned { value: Node::Null, .. }) => Err(empty()),
        Ok(tree) => Ok(tree),
        Err(error) => {
            let location = error.location().unwrap_or(Location::UNKNOWN);
            let (what, help) = explain(&error);
            let diag = Diag::new(what).at(Some(place_of(source, &location)));
            Err(match help {
                Some(help) => diag.help(help),
                None => diag,
            })
        }
    }
}

fn options() -> Options {
    serde_saphyr::options! {
        budget: serde_saphyr::budget! {
            max_depth: DEPTH_MAX,
            flow_nesting_limit: DEPTH_MAX,
            max_nodes: NODES_MAX,
            max_events: 2 * NODES_MAX,
            max_anchors: 0,
            max_aliases: 0,
            max_documents: 1,
        },
        duplicate_keys: DuplicateKeyPolicy::PassThrough,
        merge_keys: MergeKeyPolicy::AsOrdinary,
        non_finite_float_policy: NonFiniteFloatPolicy::PassThrough,
        leading_zero_numbers_as_strings: true,
        underscored_numbers_as_strings: true,
        strict_booleans: true,
        reject_unsupported_tags: true,
        with_snippet: false,
    }
}

/// What is wrong and what to do about it, in words that the user knows.
fn explain(error: &Error) -> (String, Option<String>) {
    let plain = |what: &str, help: &str| (what.to_owned(), Some(help.to_owned()));
    let nested = || plain(lang::text("yaml-nested"), lang::text("yaml-nested-help"));
    let anchors = || plain(lang::text("yaml-anchors"), lang::text("yaml-anchors-help"));
    let documents = || plain(lang::text("yaml-documents"), lang::text("yaml-documents-help"));
    match error.without_snippet() {
        Error::Budget { breach, .. } => match breach {
            BudgetBreach::Depth { .. } => nested(),
            BudgetBreach::Aliases { .. } | BudgetBreach::Anchors { .. } | BudgetBreach::AliasAnchorRatio { .. } => {
                anchors()
            }
            BudgetBreach::Documents { .. } => documents(),
            _ => plain(lang::text("yaml-values"), lang::text("yaml-values-help")),
        },
        Error::UnknownAnchor { .. } | Error::RecursiveReferencesRequireWeakTypes { .. } => anchors(),
        Error::MultipleDocuments { .. } => documents(),
        Error::UnsupportedTag { .. } => plain(lang::text("yaml-tags"), lang::text("yaml-tags-help")),
        other => {
            let formatted = other.render_with_formatter(&serde_saphyr::UserMessageFormatter);
            // The diagnostic gives the place, so the place at the end of the parser's message is cut off.
            let first = formatted.lines().next().unwrap_or_default();
            let what = first.split(" at line ").next().unwrap_or(first).trim_end_matches('.').to_owned();
            let what = what.strip_prefix("error: ").unwrap_or(&what).to_owned();
            if what.contains("recursion") || what.contains("nest") || what.contains("depth") {
                return nested();
            }
            (say!("yaml-invalid", reason = what), Some(say!("yaml-invalid-help")))
        }
    }
}

/// The key of the value at a place: the last one on the way to it.
pub(super) fn key_at<'a>(node: &'a Spanned<Node>, at: &Location, key: Option<&'a str>) -> Option<&'a str> {
    if node.referenced == *at {
        return key;
    }
    match &node.value {
        Node::Map(entries) => entries.iter().find_map(|(name, value)| match &name.value {
            Node::Text(name) => key_at(value, at, Some(name)),
            _ => None,
        }),
        Node::List(items) => items.iter().find_map(|item| key_at(item, at, key)),
        _ => None,
    }
}

/// A place of a byte range. The range is cut to the text, to whole characters, and to the line it begins on.
pub(super) fn place(source: &Arc<Source>, start: usize, end: usize) -> Place {
    let text = &source.text;
    let mut start = start.min(text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    let (before, behind) = text.split_at_checked(start).unwrap_or_default();
    let line_end = start + behind.find('\n').unwrap_or(behind.len());
    let mut end = end.clamp(start, line_end.max(start));
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    Place {
        source: Arc::clone(source),
        start,
        end,
        line: before.matches('\n').count() + 1,
        column: before.chars().rev().take_while(|c| *c != '\n').count() + 1,
    }
}

/// The place of a parser's location: from its byte offset, or from its line and column if it has no byte offset.
pub(super) fn place_of(source: &Arc<Source>, location: &Location) -> Place {
    let start = bytes(location.span().byte_offset())
        .unwrap_or_else(|| byte_of(&source.text, location.line() as usize, location.column() as usize));
    let length = bytes(location.span().byte_len()).unwrap_or(0);
    place(source, start, start.saturating_add(length.max(1)))
}

/// Byte offset of a line and a column. Both count from 1, and the column counts characters.
fn byte_of(text: &str, line: usize, column: usize) -> usize {
    let start: usize = text.split_inclusive('\n').take(line.saturating_sub(1)).map(str::len).sum();
    let rest = text.get(start..).unwrap_or_default();
    start + rest.char_indices().nth(column.saturating_sub(1)).map_or(rest.len(), |(byte, _)| byte)
}

/// The text of a scalar as it is written, with its quotes.
pub(super) fn raw<'a>(source: &'a Source, location: &Location) -> &'a str {
    let range = bytes(location.span().byte_offset())
        .and_then(|start| Some(start..start.checked_add(bytes(location.span().byte_len())?)?));
    range.and_then(|range| source.text.get(range)).unwrap_or_default().trim()
}

fn bytes(count: Option<u64>) -> Option<usize> {
    count.and_then(|count| usize::try_from(count).ok())
}
