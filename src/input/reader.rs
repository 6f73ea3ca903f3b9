//! Reads values from the tree. Every key must be known, and every value is checked against the table of fields. Every
//! error is kept with its place.
//!
//! A reading function returns `None` after it has reported an error. The caller then reads on, so that one run reports
//! all errors.

use std::sync::Arc;

use serde_saphyr::{Location, Spanned};

use super::measure::Measured;
use super::node::{Node, key_at, place_of, raw};
use super::number;
use super::slips::{shown, unknown_key};
use crate::diag::{Diag, Source};
use crate::fields::{Field, nearest};
use crate::job::plan::{Giver, Origin};
use crate::job::shop::{Given, Shop};
use crate::lang::{self, Units};
use crate::say;

/// Most errors that are reported, because more do not help the user. Further errors are only counted.
const DIAGS_MAX: usize = 100;
/// Longest text value, characters. A longer one would not fit into the tables that show it.
const TEXT_MAX: usize = 120;
/// Beginnings of the keys of a job whose defaults are told.
const ORIGIN_OF: [&str; 8] =
    ["stock.", "shaft.straightness", "cutting.", "limits.", "planning.", "scatter.", "confidence", "order."];

/// Reads one text and keeps the errors in it.
pub(super) struct Reader {
    source: Arc<Source>,
    diags: Vec<(Location, Diag)>,
    /// Errors in other files that this one names.
    elsewhere: Vec<Diag>,
    dropped: usize,
    shop: Option<Arc<Shop>>,
    /// Values that the text does not give.
    origins: Vec<Origin>,
    /// Values in units of the other system than those of the text, by key and line.
    foreign: Vec<(&'static str, usize)>,
    /// The system that a number alone is in.
    pub(super) units: Units,
    /// Whether a machine may leave out its collets, because the shop has some.
    pub(super) collets_elsewhere: bool,
}

/// A map whose keys have been checked.
pub(super) struct Map<'a> {
    /// Where it begins.
    pub(super) at: Location,
    entries: &'a [(Spanned<Node>, Spanned<Node>)],
    /// Known keys that are misspelt in the map. The misspelling is reported already, so they are not reported as
    /// missing.
    misspelt: Vec<&'static str>,
}

impl<'a> Map<'a> {
    /// An empty map in place of one that was left out: every key of it is missing.
    pub(super) fn empty(at: Location) -> Self {
        Map { at, entries: &[], misspelt: Vec::new() }
    }

    fn entry(&self, key: &str) -> Option<&'a (Spanned<Node>, Spanned<Node>)> {
        self.entries.iter().find(|(k, _)| matches!(&k.value, Node::Text(text) if text == key))
    }

    /// The value of a key.
    pub(super) fn get(&self, key: &str) -> Option<&'a Spanned<Node>> {
        self.entry(key).map(|(_, value)| value)
    }

    /// Whether a key is given, even if it is misspelt.
    pub(super) fn tried(&self, key: &str) -> bool {
        self.get(key).is_some() || self.misspelt.contains(&key)
    }

    /// Place of a key's value, or of the map if the key is not given.
    pub(super) fn place(&self, key: &str) -> Location {
        self.get(key).map_or(self.at, |value| value.referenced)
    }

    /// Place of a key itself, or of the map if the key is not given.
    pub(super) fn key_place(&self, key: &str) -> Location {
        self.entry(key).map_or(self.at, |(key, _)| key.referenced)
    }

    /// Place of the value `inner` in the map at `key`. If one of them is missing, the place of what would contain it.
    pub(super) fn inner_place(&self, key: &str, inner: &str) -> Location {
        match self.get(key) {
            Some(Spanned { value: Node::Map(entries), referenced, .. }) => {
                Map { at: *referenced, entries, misspelt: Vec::new() }.place(inner)
            }
            _ => self.place(key),
        }
    }
}

impl Reader {
    pub(super) fn new(source: Arc<Source>) -> Self {
        Reader {
            source,
            diags: Vec::new(),
            elsewhere: Vec::new(),
            dropped: 0,
            shop: None,
            origins: Vec::new(),
            foreign: Vec::new(),
            units: Units::Metric,
            collets_elsewhere: false,
        }
    }

    /// The same reader; what the text leaves out comes from the shop's file.
    pub(super) fn in_shop(mut self, shop: Option<Arc<Shop>>) -> Self {
        self.collets_elsewhere = shop.as_ref().is_some_and(|shop| !shop.collets.is_empty());
        self.shop = shop;
        self
    }

    /// The shop.
    pub(super) fn shop(&self) -> Option<&Arc<Shop>> {
        self.shop.as_ref()
    }

    /// Notes that a value comes from the shop's file.
    pub(super) fn given_by_shop(&mut self, key: &str, value: String, line: usize) {
        self.origins.push(Origin { key: key.to_owned(), value, from: Giver::Shop, line: Some(line) });
    }

    /// Notes that a value is the program's own.
    pub(super) fn by_default(&mut self, field: &Field, value: f64) {
        if let Some(value) = ORIGIN_OF.iter().any(|of| field.path.starts_with(of)).then(|| with_unit(field, value)) {
            self.origins.push(Origin { key: field.path.to_owned(), value, from: Giver::Default, line: None });
        }
    }

    /// The values that the text does not give, in the order in which they were asked for.
    pub(super) fn take_origins(&mut self) -> Vec<Origin> {
        std::mem::take(&mut self.origins)
    }

    /// Values in units of the other system than those of the text, by key and line.
    pub(super) fn foreign(&self) -> &[(&'static str, usize)] {
        &self.foreign
    }

    /// Keeps an error in another file.
    pub(super) fn complain_elsewhere(&mut self, diag: Diag) {
        self.elsewhere.push(diag);
    }

    /// The number that the shop's file gives for a field.
    fn number_of_shop(&mut self, field: &Field) -> Option<f64> {
        let Given { value, line } = self.shop.as_ref()?.number(field.path)?.clone();
        self.given_by_shop(field.path, with_unit(field, value), line);
        Some(value)
    }

    /// Keeps an error and its place.
    pub(super) fn complain(&mut self, at: &Location, diag: Diag) {
        if self.diags.len() < DIAGS_MAX {
            self.diags.push((*at, diag.at(Some(place_of(&self.source, at)))));
        } else {
            self.dropped += 1;
        }
    }

    /// All errors, in the order of the file, each with the key of its value. `tree`: the tree of the whole text.
    pub(super) fn finish(mut self, tree: &Spanned<Node>) -> Vec<Diag> {
        self.diags.sort_by_key(|(_, diag)| diag.place.as_ref().map_or(0, |place| place.start));
        let keyed = |(at, diag)| Diag { key: key_at(tree, &at, None).map(shown), ..diag };
        let mut diags: Vec<Diag> = self.diags.into_iter().map(keyed).collect();
        diags.append(&mut self.elsewhere);
        if self.dropped > 0 {
            let diag = Diag::new(say!("errors-more", count = self.dropped)).help(lang::text("errors-more-help"));
            diags.push(diag);
        }
        diags
    }

    /// The node as a map of known keys. Reports unknown and repeated keys. If the node is not a map, reports that and
    /// returns `None`.
    pub(super) fn map<'a>(&mut self, node: &'a Spanned<Node>, known: &[&'static str]) -> Option<Map<'a>> {
        let Node::Map(entries) = &node.value else {
            let diag = Diag::new(say!("keys-needed", kind = node.value.kind()))
                .help(say!("keys-needed-help", keys = known.join(", ")));
            self.complain(&node.referenced, diag);
            return None;
        };
        let mut seen: Vec<(&str, &Location)> = Vec::new();
        let mut misspelt = Vec::new();
        let mut before: Option<&(Spanned<Node>, Spanned<Node>)> = None;
        for entry in entries {
            let (key, value) = entry;
            let before = before.replace(entry);
            let Node::Text(text) = &key.value else {
                self.odd_key(key, value, before, known);
                continue;
            };
            if let Some((_, first)) = seen.iter().find(|(earlier, _)| earlier == text) {
                let diag =
                    Diag::new(say!("key-twice", key = shown(text))).help(say!("key-twice-help", line = first.line()));
                self.complain(&key.referenced, diag);
            } else if known.contains(&text.as_str()) {
                seen.push((text, &key.referenced));
            } else if let Some(meant) = self.split_at_comma(key, value, before) {
                let diag = Diag::new(say!("key-is-decimal", key = shown(text)));
                self.complain(&key.referenced, diag.help(say!("key-is-decimal-help", meant = meant)));
            } else {
                let meant = nearest(text, known.iter().copied());
                misspelt.extend(meant);
                self.complain(&key.referenced, unknown_key(text, meant, known));
            }
        }
        Some(Map { at: node.referenced, entries, misspelt })
    }

    /// What was meant where a decimal comma ended a value: YAML reads `{ra: 0,8}` as the key `ra` with the value 0 and the key `8`
    /// without a value, and `{thread: M10x1,25-6g}` likewise.
    fn split_at_comma(
        &self,
        key: &Spanned<Node>,
        value: &Spanned<Node>,
        before: Option<&(Spanned<Node>, Spanned<Node>)>,
    ) -> Option<String> {
        let written = |node: &Spanned<Node>| shown(raw(&self.source, &node.referenced));
        let (named, cut) = before?;
        let (name, head, tail) = (written(named), written(cut), written(key));
        let joins = head.ends_with(|c: char| c.is_ascii_digit()) && tail.starts_with(|c: char| c.is_ascii_digit());
        let ends = matches!(value.value, Node::Null) && matches!(cut.value, Node::Number(_) | Node::Text(_));
        (joins && ends).then(|| format!("{name}: {head}.{tail}"))
    }

    fn odd_key(
        &mut self,
        key: &Spanned<Node>,
        value: &Spanned<Node>,
        before: Option<&(Spanned<Node>, Spanned<Node>)>,
        known: &[&str],
    ) {
        let diag = if matches!((&key.value, &value.value), (Node::Number(_), Node::Null)) {
            let meant = self.split_at_comma(key, value, before).unwrap_or_else(|| "0.8".to_owned());
            let written = shown(raw(&self.source, &key.referenced));
            Diag::new(say!("key-is-decimal", key = written)).help(say!("key-is-decimal-help", meant = meant))
        } else {
            Diag::new(say!("key-not-text", kind = key.value.kind()))
                .help(say!("key-unknown-help", keys = known.join(", ")))
        };
        self.complain(&key.referenced, diag);
    }

    /// The value of a key that must be given.
    pub(super) fn required<'a>(&mut self, map: &Map<'a>, key: &str, hint: &str) -> Option<&'a Spanned<Node>> {
        match map.get(key) {
            None if map.misspelt.contains(&key) => None,
            None => {
                self.complain(
                    &map.at,
                    Diag::new(say!("key-missing", key = key)).help(say!("key-missing-help", key = key, hint = hint)),
                );
                None
            }
            found => self.filled(map, found?, key),
        }
    }

    /// The value of a key that may be left out: `Some(None)` if it is left out.
    pub(super) fn optional<'a>(&mut self, map: &Map<'a>, key: &str) -> Option<Option<&'a Spanned<Node>>> {
        match map.get(key) {
            None => Some(None),
            Some(node) => self.filled(map, node, key).map(Some),
        }
    }

    fn filled<'a>(&mut self, map: &Map<'a>, node: &'a Spanned<Node>, key: &str) -> Option<&'a Spanned<Node>> {
        if !matches!(node.value, Node::Null) {
            return Some(node);
        }
        // A missing value has no place, so the error points at the key.
        let at = map.entry(key).map_or(map.at, |(key, _)| key.referenced);
        self.complain(&at, Diag::new(say!("value-missing", key = key)).help(lang::text("value-missing-help")));
        None
    }

    /// A number that must be given.
    pub(super) fn number(&mut self, map: &Map, field: &Field) -> Option<f64> {
        let hint = format!("{}, {}", field.what(), field.range(self.units));
        let node = self.required(map, field.key(), &hint)?;
        self.number_in(node, field)
    }

    /// A number that may be left out. Its default is the caller's, otherwise the field's.
    pub(super) fn number_or(&mut self, map: &Map, field: &Field, default: Option<f64>) -> Option<f64> {
        match self.optional(map, field.key())? {
            Some(node) => self.number_in(node, field),
            None => self.number_of_shop(field).or_else(|| {
                let value = default.or(field.default)?;
                self.by_default(field, value);
                Some(value)
            }),
        }
    }

    /// A whole number. It may be left out if the field has a default.
    pub(super) fn count(&mut self, map: &Map, field: &Field) -> Option<usize> {
        let value = match field.default {
            Some(_) => self.number_or(map, field, None)?,
            None => self.number(map, field)?,
        };
        if value.fract() == 0.0 {
            return Some(value as usize);
        }
        let diag = Diag::new(say!("number-not-whole", value = value.to_string()))
            .help(say!("number-not-whole-help", meaning = field.what()));
        self.complain(&map.place(field.key()), diag);
        None
    }

    /// A number that may be left out: `Some(None)` if it is left out.
    pub(super) fn number_maybe(&mut self, map: &Map, field: &Field) -> Option<Option<f64>> {
        match self.optional(map, field.key())? {
            Some(node) => self.number_in(node, field).map(Some),
            None => Some(self.number_of_shop(field)),
        }
    }

    /// The number in a node, checked against the field's range.
    pub(super) fn number_in(&mut self, node: &Spanned<Node>, field: &Field) -> Option<f64> {
        let written = raw(&self.source, &node.referenced);
        let read = number::read(field, &node.value, written, self.units);
        self.measured(node, field, read)
    }

    fn measured(&mut self, at: &Spanned<Node>, field: &Field, read: Result<Measured, Diag>) -> Option<f64> {
        let Measured { value, system } = self.settle(&at.referenced, read)?;
        if system != self.units {
            self.foreign.push((field.key(), self.line(at)));
        }
        Some(value)
    }

    /// The number in a part of the text of a node, with or without a unit, checked against the field's range.
    pub(super) fn number_of_text(&mut self, node: &Spanned<Node>, part: &str, field: &Field) -> Option<f64> {
        let part = part.trim();
        let value = match part.parse() {
            Ok(number) => Node::Number(number),
            Err(_) => Node::Text(part.to_owned()),
        };
        let read = number::read(field, &value, part, self.units);
        self.measured(node, field, read)
    }

    /// Line of a node, from 1.
    pub(super) fn line(&self, node: &Spanned<Node>) -> usize {
        place_of(&self.source, &node.referenced).line
    }

    /// A value as it is written in the file, with its quotes.
    pub(super) fn written(&self, node: &Spanned<Node>) -> &str {
        raw(&self.source, &node.referenced)
    }

    /// Two numbers in brackets.
    pub(super) fn pair(&mut self, node: &Spanned<Node>, field: &Field, form: &str) -> Option<(f64, f64)> {
        let items = if let Node::List(items) = &node.value { &items[..] } else { &[] };
        match items {
            [first, second] => {
                let first = self.number_in(first, field);
                let second = self.number_in(second, field);
                Some((first?, second?))
            }
            _ => {
                // YAML reads `[-0,05, 0]` as a list of three. Between its first two items there is only a comma.
                let begins = |item: &Spanned<Node>| place_of(&self.source, &item.referenced).start;
                let comma = items.iter().zip(items.iter().skip(1)).any(|(first, second)| {
                    // YAML does not read `05` as a number, but it is written like one.
                    let digits = |text: &str| !text.is_empty() && text.chars().all(|c| "+-.0123456789".contains(c));
                    let both = [first, second].into_iter().all(|i| digits(self.written(i)));
                    both && begins(first) + self.written(first).len() + 1 == begins(second)
                });
                let what = match &node.value {
                    Node::List(items) => say!("pair-needed-list", count = items.len()),
                    other => say!("pair-needed", kind = other.kind()),
                };
                let key = field.key();
                let diag = Diag::new(what).help(if comma {
                    say!("pair-needed-point", key = key, form = form)
                } else {
                    say!("pair-needed-help", key = key, form = form)
                });
                self.complain(&node.referenced, diag);
                None
            }
        }
    }

    /// The items of a list, at most `max` of them.
    pub(super) fn list<'a>(&mut self, node: &'a Spanned<Node>, key: &str, max: usize) -> Option<&'a [Spanned<Node>]> {
        let diag = match &node.value {
            Node::List(items) if items.len() <= max => return Some(items),
            Node::List(items) => Diag::new(say!("list-too-long", count = items.len(), key = key))
                .help(say!("list-too-long-help", most = max)),
            other => Diag::new(say!("list-needed", kind = other.kind())).help(lang::text("list-needed-help")),
        };
        self.complain(&node.referenced, diag);
        None
    }

    /// Text that must be given.
    pub(super) fn text(&mut self, map: &Map, key: &str, hint: &str) -> Option<String> {
        let node = self.required(map, key, hint)?;
        self.text_in(node, key)
    }

    /// Text that may be left out: `Some(None)` if it is left out.
    pub(super) fn text_maybe(&mut self, map: &Map, key: &str) -> Option<Option<String>> {
        match self.optional(map, key)? {
            Some(node) => self.text_in(node, key).map(Some),
            None => Some(None),
        }
    }

    /// Text of a node. A number, `true` or `false` counts as text as it is written, because names are often numbers.
    pub(super) fn text_in(&mut self, node: &Spanned<Node>, key: &str) -> Option<String> {
        let text = match &node.value {
            Node::Text(text) => text.trim().to_owned(),
            Node::Number(_) | Node::Bool(_) => raw(&self.source, &node.referenced).to_owned(),
            other => {
                let diag =
                    Diag::new(say!("text-needed", key = key, kind = other.kind())).help(lang::text("text-needed-help"));
                self.complain(&node.referenced, diag);
                return None;
            }
        };
        let diag = if text.is_empty() {
            Diag::new(say!("text-empty", key = key)).help(lang::text("value-missing-help"))
        } else if text.chars().count() > TEXT_MAX || text.chars().any(char::is_control) {
            Diag::new(lang::text("text-too-long")).help(say!("text-too-long-help", most = TEXT_MAX))
        } else {
            return Some(text);
        };
        self.complain(&node.referenced, diag);
        None
    }

    /// One of several words, or `default` if the key is left out. Without a default, `None` can mean that the key is
    /// left out or that an error was reported.
    pub(super) fn choice<T: Copy>(
        &mut self,
        map: &Map,
        key: &str,
        words: &[(&str, T)],
        default: Option<T>,
    ) -> Option<T> {
        let Some(node) = self.optional(map, key)? else {
            let Some(Given { value, line }) = self.shop.as_ref().and_then(|shop| shop.word(key)).cloned() else {
                return default;
            };
            let known = words.iter().find(|(word, _)| *word == value);
            known.iter().for_each(|_| self.given_by_shop(key, value.clone(), line));
            return known.map(|(_, meant)| *meant).or(default);
        };
        let text = self.text_in(node, key)?;
        if let Some((_, value)) = words.iter().find(|(word, _)| *word == text) {
            return Some(*value);
        }
        let all: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
        let mut help = say!("choice-help", words = all.join(", "));
        if let Some(near) = nearest(&text, all.iter().copied()) {
            help = format!("{} {help}", say!("did-you-mean", near = near));
        }
        self.complain(&node.referenced, Diag::new(say!("choice-unknown", word = shown(&text), key = key)).help(help));
        None
    }

    /// True or false: `Some(None)` if it is left out.
    pub(super) fn flag(&mut self, map: &Map, key: &str) -> Option<Option<bool>> {
        match self.optional(map, key)? {
            None => Some(None),
            Some(Spanned { value: Node::Bool(value), .. }) => Some(Some(*value)),
            Some(node) => {
                let diag =
                    Diag::new(say!("flag-needed", kind = node.value.kind())).help(say!("flag-needed-help", key = key));
                self.complain(&node.referenced, diag);
                None
            }
        }
    }

    /// The value of a result. If the result is an error, keeps it with a place.
    pub(super) fn settle<T>(&mut self, at: &Location, result: Result<T, Diag>) -> Option<T> {
        result.map_err(|diag| self.complain(at, diag)).ok()
    }
}

/// A value with its unit.
fn with_unit(field: &Field, value: f64) -> String {
    if field.unit.is_empty() { value.to_string() } else { format!("{value} {}", field.unit) }
}
