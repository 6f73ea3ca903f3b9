//! The language that a job or a shop's file asks for.

use super::node::Node;
use super::reader::{Map, Reader};
use crate::lang::{LANGUAGES, Language};
use serde_saphyr::Spanned;

/// The language of a file, as far as its tree tells it. A code that there is not is told when the file is read.
pub(super) fn of(tree: &Spanned<Node>) -> Option<Language> {
    match &tree.value.get("language")?.value {
        Node::Text(code) => Language::of(code),
        _ => None,
    }
}

/// The language of a file. Some(None): it gives none.
pub(super) fn read(r: &mut Reader, map: &Map) -> Option<Option<Language>> {
    let known: Vec<(&str, Option<Language>)> = LANGUAGES.iter().map(|code| (*code, Language::of(code))).collect();
    r.choice(map, "language", &known, Some(None))
}
