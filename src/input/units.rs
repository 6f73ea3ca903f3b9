//! `units`: the system that the numbers of a file are in.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use crate::diag::Source;
use crate::lang::{Units, lists};
use crate::say;

const WORDS: [(&str, Units); 2] = [(Units::Metric.code(), Units::Metric), (Units::Inch.code(), Units::Inch)];

/// The units of a file, as far as its tree tells them. A word that there is not is told when the file is read.
pub(super) fn of(tree: &Spanned<Node>) -> Option<Units> {
    let Node::Text(word) = &tree.value.get("units")?.value else { return None };
    WORDS.iter().find(|(known, _)| known == word).map(|(_, units)| *units)
}

/// The units of a file. Some(None): it gives none.
pub(super) fn read(r: &mut Reader, map: &Map) -> Option<Option<Units>> {
    r.choice(map, "units", &WORDS.map(|(word, units)| (word, Some(units))), Some(None))
}

/// The note about values in units of the other system than the file's, with the first two of them by key and line.
pub(super) fn mixed(source: &Source, values: &[(&'static str, usize)]) -> Option<String> {
    let told = |(key, line): &(&str, usize)| say!("note-mixed-units-value", key = *key, line = *line);
    let told: Vec<String> = values.iter().take(2).map(told).collect();
    let file = source.path.file_name().unwrap_or(source.path.as_os_str()).to_string_lossy();
    (!told.is_empty()).then(|| say!("note-mixed-units", file = file, values = lists::commas(&told)))
}
