//! Edits of a text in place: a value is set, a key is dropped, an item of a list is inserted, removed or moved. The
//! rest of the text stays as it is written, comments included.
//!
//! After every edit the new text is read again. If it does not hold what the edit meant, the edit is refused.

use schemars::JsonSchema;
use serde::Deserialize;

use super::Named;
use super::tree::{Entry, Kind, Step, tree};
use crate::diag::Diag;
use crate::job::plan;
use crate::say;

/// One edit of a text.
#[derive(Debug, Clone, PartialEq, Deserialize, JsonSchema)]
#[serde(rename_all = "snake_case", tag = "edit", deny_unknown_fields)]
pub enum Edit {
    /// Sets the value at the end of the path. Missing maps on the path are added. An empty text removes the key.
    Set {
        /// The path to the value.
        way: Vec<Step>,
        /// The new value, as written in YAML.
        value: String,
    },
    /// Inserts an item into a list.
    Insert {
        /// The path to the list.
        way: Vec<Step>,
        /// The new item comes before the item with this number.
        index: usize,
        /// The new item, as written in YAML.
        item: String,
    },
    /// Removes an item from a list.
    Remove {
        /// The path to the list.
        way: Vec<Step>,
        /// Number of the item, from 0.
        index: usize,
    },
    /// Exchanges two items of a list.
    Swap {
        /// The path to the list.
        way: Vec<Step>,
        /// Number of one item, from 0.
        index: usize,
        /// Number of the other item, from 0.
        with: usize,
    },
}

/// Returns the text after an edit.
///
/// # Errors
/// The text is not YAML that the reader accepts, the place does not exist, or the edit cannot be made in place.
pub fn edited(name: &str, text: &str, edit: &Edit) -> Result<String, Diag> {
    let root = tree(name, text)?;
    let new = match edit {
        Edit::Set { way, value } if value.trim().is_empty() => drop_key(text, &root, way),
        Edit::Set { way, value } => set(text, &root, way, value),
        Edit::Insert { way, index, item } => insert(text, &root, way, *index, item),
        Edit::Remove { way, index } => remove(text, &root, way, *index),
        Edit::Swap { way, index, with } => swap(text, &root, way, *index, *with),
    };
    let new = new.ok_or_else(|| Diag::new(say!("edit-impossible")).help(say!("edit-help")))?;
    let after = tree(name, &new).map_err(|_| refused())?;
    let kept = match edit {
        Edit::Set { way, value } if value.trim().is_empty() => after.at(way).is_none(),
        Edit::Set { way, value } => after.at(way).is_some_and(|e| e.text == meant(value)),
        Edit::Insert { way, .. } => count(&after, way) == count(&root, way) + 1,
        Edit::Remove { way, .. } => count(&after, way) + 1 == count(&root, way),
        Edit::Swap { way, .. } => count(&after, way) == count(&root, way),
    };
    if kept { Ok(new) } else { Err(refused()) }
}

/// The texts of a job and its machine file with the edits of a change of a plan. Without a machine file, the machine is in the job.
///
/// # Errors
/// As [`edited`].
pub fn changed(job: &Named, machine: Option<&Named>, edits: &[plan::Edit]) -> Result<(String, Option<String>), Diag> {
    let (mut job_text, mut machine_text) = (job.text.clone(), machine.map(|m| m.text.clone()));
    for made in edits {
        let of_machine = made.file == "machine";
        let (name, text) = match (&mut machine_text, machine) {
            (Some(text), Some(named)) if of_machine => (&named.name, text),
            _ => (&job.name, &mut job_text),
        };
        let inside = of_machine && machine.is_none();
        *text = edited(name, text, &edit_of(made, inside, name, text)?)?;
    }
    Ok((job_text, machine_text))
}

/// An edit of a plan as one of a text. `inside`: the machine is in the job.
fn edit_of(made: &plan::Edit, inside: bool, name: &str, text: &str) -> Result<Edit, Diag> {
    let mut way: Vec<Step> = inside.then(|| Step::Key("machine".to_owned())).into_iter().collect();
    let steps = made.at.split(['.', '[', ']']).filter(|step| !step.is_empty());
    way.extend(steps.map(|step| step.parse().map_or_else(|_| Step::Key(step.to_owned()), Step::Item)));
    let list = way.get(..way.len().saturating_sub(1)).unwrap_or_default().to_vec();
    Ok(match (way.last(), made.with) {
        (Some(Step::Item(index)), Some(with)) => Edit::Swap { way: list, index: *index, with },
        (Some(Step::Item(index)), None) if made.value.is_empty() => Edit::Remove { way: list, index: *index },
        (Some(Step::Key(key)), _) if key == "+" => {
            let index = count(&tree(name, text)?, &list);
            Edit::Insert { way: list, index, item: made.value.clone() }
        }
        _ => Edit::Set { way, value: made.value.clone() },
    })
}

fn refused() -> Diag {
    Diag::new(say!("edit-refused")).help(say!("edit-help"))
}

fn count(root: &Entry, way: &[Step]) -> usize {
    root.at(way).map_or(0, |e| e.entries.len())
}

/// A value as it is written in a map in brackets: unchanged if it then reads as one value, otherwise in quotes.
fn written(value: &str) -> String {
    let value = value.trim();
    let text = format!("{{v: {value}}}");
    let one = tree("", &text).is_ok_and(|root| {
        let [only] = &root.entries[..] else { return false };
        only.start == 4 && only.end == text.len() - 1
    });
    if one && !value.chars().any(char::is_control) { value.to_owned() } else { quoted(value) }
}

fn quoted(value: &str) -> String {
    let plain: String = value.chars().map(|c| if c.is_control() { ' ' } else { c }).collect();
    format!("'{}'", plain.replace('\'', "''"))
}

/// The text of a value when it is read back after writing.
fn meant(value: &str) -> String {
    let text = format!("{{v: {}}}", written(value));
    tree("", &text).ok().and_then(|root| root.entries.first().map(|e| e.text.clone())).unwrap_or_default()
}

fn replaced(text: &str, from: usize, to: usize, with: &str) -> Option<String> {
    Some(format!("{}{with}{}", text.get(..from)?, text.get(to..)?))
}

fn set(text: &str, root: &Entry, way: &[Step], value: &str) -> Option<String> {
    if let Some(entry) = root.at(way) {
        let gap = if entry.start == entry.end && !text.get(..entry.start)?.ends_with(' ') { " " } else { "" };
        return replaced(text, entry.start, entry.end, &format!("{gap}{}", written(value)));
    }
    // The deepest map that exists gets the rest of the way, as maps in brackets.
    let (depth, map) = (0..way.len()).rev().find_map(|n| Some((n, root.at(way.get(..n)?)?)))?;
    let [Step::Key(key), rest @ ..] = way.get(depth..)? else { return None };
    let mut new = written(value);
    for step in rest.iter().rev() {
        let Step::Key(key) = step else { return None };
        new = format!("{{{key}: {new}}}");
    }
    let new = format!("{key}: {new}");
    if map.kind == Kind::Scalar && map.text.is_empty() {
        return replaced(text, map.start, map.end, &format!(" {{{new}}}"));
    }
    if map.kind != Kind::Map {
        return None;
    }
    if map.flow {
        let last = map.entries.last().map_or(map.start + 1, |e| e.end);
        let comma = if map.entries.is_empty() { "" } else { ", " };
        return replaced(text, last, last, &format!("{comma}{new}"));
    }
    let first = map.entries.first()?;
    let indent = indent_of(text, first.from)?;
    let line_end = line_end(text);
    if depth == 0 {
        let missing = if text.ends_with('\n') { "" } else { line_end };
        return Some(format!("{text}{missing}{indent}{new}{line_end}"));
    }
    replaced(text, first.from, first.from, &format!("{new}{line_end}{indent}"))
}

/// The line end of a text. In a file from Windows it may have two characters.
fn line_end(text: &str) -> &'static str {
    if text.contains("\r\n") { "\r\n" } else { "\n" }
}

/// Spaces as wide as the text in front of a byte on its line.
fn indent_of(text: &str, byte: usize) -> Option<String> {
    Some(" ".repeat(text.get(line_start(text, byte)?..byte)?.chars().count()))
}

fn line_start(text: &str, byte: usize) -> Option<usize> {
    Some(text.get(..byte)?.rfind('\n').map_or(0, |i| i + 1))
}

/// First byte of the line after the one that a byte is on.
fn next_line(text: &str, byte: usize) -> Option<usize> {
    Some(text.get(byte..)?.find('\n').map_or(text.len(), |i| byte + i + 1))
}

fn drop_key(text: &str, root: &Entry, way: &[Step]) -> Option<String> {
    let Some(entry) = root.at(way) else { return Some(text.to_owned()) };
    let (last, above) = way.split_last()?;
    if matches!(last, Step::Item(_)) {
        return None;
    }
    let map = root.at(above)?;
    let index = map.entries.iter().position(|e| e.from == entry.from)?;
    if map.entries.len() == 1 && !above.is_empty() {
        return replaced(text, map.start, map.end, "{}");
    }
    cut(text, map, index)
}

/// The text without one entry of a map or list that has several entries.
fn cut(text: &str, above: &Entry, index: usize) -> Option<String> {
    let entry = above.entries.get(index)?;
    let start = line_start(text, entry.from)?;
    if !above.flow && text.get(start..entry.from)?.trim().is_empty() {
        return replaced(text, start, next_line(text, entry.end)?, "");
    }
    match (above.entries.get(index + 1), index.checked_sub(1).and_then(|i| above.entries.get(i))) {
        (Some(next), _) => replaced(text, entry.from, next.from, ""),
        (None, Some(previous)) => replaced(text, previous.end, entry.end, ""),
        (None, None) => replaced(text, entry.from, entry.end, ""),
    }
}

/// Where the dash of an item is, in a list without brackets.
fn dash(text: &str, item: &Entry) -> Option<usize> {
    let start = line_start(text, item.from)?;
    let (blanks, _) = text.get(start..item.from)?.rsplit_once('-')?;
    blanks.trim().is_empty().then_some(start + blanks.len())
}

fn insert(text: &str, root: &Entry, way: &[Step], index: usize, item: &str) -> Option<String> {
    let Some(list) = root.at(way).filter(|e| !(e.kind == Kind::Scalar && e.text.is_empty())) else {
        return set(text, root, way, &format!("[{item}]"));
    };
    if list.kind != Kind::List {
        return None;
    }
    if list.flow || list.entries.is_empty() {
        let Some(at) = list.entries.get(index) else {
            let last = list.entries.last().map_or(list.start + 1, |e| e.end);
            let comma = if list.entries.is_empty() { "" } else { ", " };
            return replaced(text, last, last, &format!("{comma}{item}"));
        };
        return replaced(text, at.from, at.from, &format!("{item}, "));
    }
    let first = dash(text, list.entries.first()?)?;
    let (indent, line_end) = (indent_of(text, first)?, line_end(text));
    match list.entries.get(index) {
        Some(next) => {
            let at = line_start(text, dash(text, next)?)?;
            replaced(text, at, at, &format!("{indent}- {item}{line_end}"))
        }
        None => {
            let at = next_line(text, list.end)?;
            let missing = if text.get(..at)?.ends_with('\n') { "" } else { line_end };
            replaced(text, at, at, &format!("{missing}{indent}- {item}{line_end}"))
        }
    }
}

fn remove(text: &str, root: &Entry, way: &[Step], index: usize) -> Option<String> {
    let list = root.at(way).filter(|e| e.kind == Kind::List)?;
    let item = list.entries.get(index)?;
    if list.entries.len() == 1 {
        return replaced(text, list.start, list.end, if list.flow { "[]" } else { "" })
            .filter(|_| list.flow)
            .or_else(|| replaced(text, dash(text, item)?, item.end, "[]"));
    }
    if list.flow {
        return cut(text, list, index);
    }
    replaced(text, line_start(text, dash(text, item)?)?, next_line(text, item.end)?, "")
}

fn swap(text: &str, root: &Entry, way: &[Step], a: usize, b: usize) -> Option<String> {
    let list = root.at(way).filter(|e| e.kind == Kind::List)?;
    let (first, second) = (list.entries.get(a.min(b))?, list.entries.get(a.max(b))?);
    if a == b {
        return Some(text.to_owned());
    }
    let (one, other) = (text.get(first.start..first.end)?, text.get(second.start..second.end)?);
    let between = text.get(first.end..second.start)?;
    replaced(text, first.start, second.end, &format!("{other}{between}{one}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "# A comment.
shaft:
  sections:
    - {length: 20, diameter: 12, name: front}   # the journal
    - length: 30   # in block form
      diameter: 14
    - {length: 5, taper: [14, 18]}
stock: {diameter: 25}
limits:
";

    fn way(path: &str) -> Vec<Step> {
        path.split('.').map(|s| s.parse().map_or_else(|_| Step::Key(s.into()), Step::Item)).collect()
    }

    fn set(path: &str, value: &str) -> String {
        edited("job", TEXT, &Edit::Set { way: way(path), value: value.into() })
            .unwrap_or_else(|d| panic!("{path}: {d}"))
    }

    #[test]
    fn a_value_is_set_where_it_stands_and_the_rest_stays() {
        assert_eq!(set("shaft.sections.0.length", "21"), TEXT.replace("length: 20", "length: 21"));
        assert_eq!(set("shaft.sections.1.length", "31.5"), TEXT.replace("length: 30 ", "length: 31.5 "));
        assert_eq!(set("shaft.sections.2.taper", "[14, 20]"), TEXT.replace("[14, 18]", "[14, 20]"));
        assert_eq!(set("shaft.sections.2.taper.1", "20"), TEXT.replace("18]", "20]"));
    }

    #[test]
    fn what_would_break_out_of_its_place_is_quoted() {
        assert_eq!(set("shaft.sections.0.length", "0,8"), TEXT.replace("length: 20", "length: '0,8'"));
        assert_eq!(set("shaft.sections.0.name", "a}, b: {"), TEXT.replace("name: front", "name: 'a}, b: {'"));
        assert_eq!(set("shaft.sections.1.diameter", "it's: #1"), TEXT.replace("diameter: 14", "diameter: 'it''s: #1'"));
        assert_eq!(set("stock.diameter", "25\n- x"), TEXT.replace("{diameter: 25}", "{diameter: '25 - x'}"));
    }

    #[test]
    fn missing_keys_and_maps_are_made_and_empty_values_drop_them() {
        assert_eq!(set("shaft.sections.0.ra", "0.8"), TEXT.replace("name: front}", "name: front, ra: 0.8}"));
        assert_eq!(set("shaft.sections.1.ra", "0.8"), TEXT.replace("- length: 30", "- ra: 0.8\n      length: 30"));
        assert_eq!(set("limits.whip", "0.2"), TEXT.replace("limits:", "limits: {whip: 0.2}"));
        assert_eq!(set("wishes.at_most_hand_overs", "2"), format!("{TEXT}wishes: {{at_most_hand_overs: 2}}\n"));
        assert_eq!(set("shaft.sections.0.name", ""), TEXT.replace(", name: front", ""));
        assert_eq!(set("shaft.sections.1.length", ""), TEXT.replace("length: 30   # in block form\n      ", ""));
        assert_eq!(set("shaft.sections.0.ra", ""), TEXT);
        assert_eq!(set("stock.diameter", ""), TEXT.replace("{diameter: 25}", "{}"));
    }

    #[test]
    fn items_are_put_in_taken_out_and_moved() {
        let edit = |edit: Edit| edited("job", TEXT, &edit).unwrap_or_else(|d| panic!("{d}"));
        let list = way("shaft.sections");
        let front = "    - {length: 20, diameter: 12, name: front}   # the journal\n";
        let item = "{length: 1, diameter: 9}";
        let put = |at: &str| TEXT.replace(at, &format!("    - {item}\n{at}"));
        assert_eq!(edit(Edit::Insert { way: list.clone(), index: 0, item: item.into() }), put(front));
        assert_eq!(edit(Edit::Insert { way: list.clone(), index: 1, item: item.into() }), put("    - length: 30"));
        assert_eq!(
            edit(Edit::Insert { way: list.clone(), index: 3, item: item.into() }),
            TEXT.replace("stock:", &format!("    - {item}\nstock:"))
        );
        assert_eq!(edit(Edit::Remove { way: list.clone(), index: 0 }), TEXT.replace(front, ""));
        assert_eq!(
            edit(Edit::Remove { way: list.clone(), index: 1 }),
            TEXT.replace("    - length: 30   # in block form\n      diameter: 14\n", "")
        );
        let swapped = edit(Edit::Swap { way: list.clone(), index: 0, with: 2 });
        assert!(swapped.contains("- {length: 5, taper: [14, 18]}   # the journal"), "{swapped}");
        let holes = edit(Edit::Insert { way: way("shaft.features"), index: 0, item: "{cross_hole: 5, at: 12}".into() });
        assert!(holes.contains("shaft:\n  features: [{cross_hole: 5, at: 12}]\n  sections:"), "{holes}");
        let none = edited("job", &holes, &Edit::Remove { way: way("shaft.features"), index: 0 })
            .unwrap_or_else(|d| panic!("{d}"));
        assert!(none.contains("features: []"), "{none}");
    }

    /// Edits work the same in a text from Windows, and new lines get the line end of the others.
    #[test]
    fn lines_that_end_in_two_characters_stay_so() {
        let list = || way("shaft.sections");
        let set = |path: &str, value: &str| Edit::Set { way: way(path), value: value.into() };
        let put = |index: usize| Edit::Insert { way: list(), index, item: "{length: 1, diameter: 9}".into() };
        let last = TEXT.trim_end();
        for (text, edit) in [
            (TEXT, set("shaft.sections.1.length", "31.5")),
            (TEXT, set("shaft.sections.1.ra", "0.8")),
            (TEXT, set("shaft.sections.1.length", "")),
            (TEXT, set("limits.whip", "0.2")),
            (TEXT, set("wishes.at_most_hand_overs", "2")),
            (last, set("wishes.at_most_hand_overs", "2")),
            (TEXT, put(0)),
            (TEXT, put(3)),
            (TEXT, Edit::Remove { way: list(), index: 1 }),
            (TEXT, Edit::Swap { way: list(), index: 0, with: 2 }),
        ] {
            let two = |text: &str| text.replace('\n', "\r\n");
            let of = |text: &str| edited("job", text, &edit).unwrap_or_else(|d| panic!("{edit:?}: {d}"));
            assert_eq!(of(&two(text)), two(&of(text)), "{edit:?}");
        }
    }

    #[test]
    fn what_cannot_be_done_in_place_is_refused() {
        for edit in [
            Edit::Set { way: way("shaft.sections.9.length"), value: "1".into() },
            Edit::Set { way: way("stock.diameter.x"), value: "1".into() },
            Edit::Remove { way: way("stock"), index: 0 },
            Edit::Insert { way: way("shaft.sections"), index: 0, item: "{a: 1}, {b: 2".into() },
        ] {
            assert!(edited("job", TEXT, &edit).is_err(), "{edit:?}");
        }
        assert!(edited("job", "a: [", &Edit::Set { way: way("a"), value: "1".into() }).is_err());
    }

    #[test]
    fn every_byte_of_a_value_leads_to_it() {
        let root = tree("job", TEXT).unwrap_or_else(|d| panic!("{d}"));
        let at = TEXT.find("taper").unwrap_or(0);
        assert_eq!(root.way_to(at), way("shaft.sections.2.taper"));
        assert_eq!(root.way_to(at + 12), way("shaft.sections.2.taper.1"));
        assert_eq!(root.way_to(0), Vec::new());
    }
}
