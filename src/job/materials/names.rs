//! Finds a material by any of its names, written in any of the usual ways, and says what may be meant.
//!
//! Capitals, spaces and hyphens do not matter, a comma in a number is a point. Left out are the system before a number
//! (`AISI`, `JIS SUS`, `W.-Nr.`), a standard before it (`EN 10088-3`) and the state behind it (`+QT`, `-T6`).

use std::collections::BTreeMap;
use std::sync::LazyLock;

use super::{Group, Row, rows};

/// What may stand before a number, as `plain` writes it. Longer ones come first.
const SYSTEMS: [&str; 17] = [
    "werkstoffnummer",
    "werkstoffnr",
    "werkstoff",
    "materialno",
    "material",
    "matno",
    "matnr",
    "wnr",
    "enaw",
    "aisi",
    "astm",
    "jis",
    "uns",
    "sus",
    "din",
    "aw",
    "en",
];
/// Bodies whose standards may stand before a name.
const BODIES: [&str; 9] = ["din", "en", "iso", "astm", "jis", "bs", "nf", "uni", "ams"];
/// No name is longer, however it is written.
pub(super) const LONGEST: usize = 80;

/// All names with their rows, as they are compared.
static INDEX: LazyLock<BTreeMap<String, &'static Row>> = LazyLock::new(|| {
    let mut index = BTreeMap::new();
    for row in rows() {
        for name in row.names() {
            index.entry(key(name)).or_insert(row);
        }
    }
    index
});

/// A name in small letters, without spaces and hyphens. A point stays only between digits, and so does a comma, as a
/// point.
pub(super) fn plain(name: &str) -> String {
    let letters: Vec<char> = name.chars().filter(|c| !c.is_whitespace() && !"-‐‑–—_".contains(*c)).collect();
    let digit = |i: Option<usize>| i.and_then(|i| letters.get(i)).is_some_and(char::is_ascii_digit);
    let mut out = String::new();
    for (i, c) in letters.iter().enumerate() {
        match c {
            '.' | ',' if digit(i.checked_sub(1)) && digit(Some(i + 1)) => out.push('.'),
            '.' | ',' => {}
            _ => out.extend(c.to_lowercase()),
        }
    }
    match out.strip_prefix("aisi/sae").or_else(|| out.strip_prefix("sae")) {
        Some(rest) => format!("aisi{rest}"),
        None => out,
    }
}

/// What is left of a plain name without the system before it.
pub(super) fn without_system(plain: &str) -> Option<&str> {
    SYSTEMS.iter().find_map(|system| plain.strip_prefix(system)).filter(|rest| !rest.is_empty())
}

/// How a name of the table is kept. A short one keeps its system, because `H13` is also a tolerance and `M2` a thread.
fn key(name: &str) -> String {
    let whole = plain(name);
    match without_system(&whole) {
        Some(rest) if rest.len() > 3 || (rest.len() == 3 && rest.bytes().all(|b| b.is_ascii_digit())) => {
            rest.to_owned()
        }
        _ => whole,
    }
}

/// Whether the system before a plain name allows a row: `AISI` names no aluminium, and `EN AW` no steel.
pub(super) fn allowed(plain: &str, row: &Row) -> bool {
    let system = plain.trim_start_matches("jis").trim_start_matches("din");
    match row.group() {
        Group::StainlessSteel => !system.starts_with("aw") && !system.starts_with("enaw"),
        Group::Steel | Group::ToolSteel => !["aw", "enaw", "sus"].iter().any(|other| system.starts_with(other)),
        Group::Aluminium => !["aisi", "sus"].iter().any(|other| system.starts_with(other)),
        _ => !["aw", "enaw", "aisi", "sus"].iter().any(|other| system.starts_with(other)),
    }
}

/// The row of one name: as it is, then without what stands before it.
fn direct(name: &str) -> Option<&'static Row> {
    let whole = plain(name);
    let mut rest = whole.as_str();
    loop {
        // A UNS number of a carbon or alloy steel is its AISI number between G and 0: G41400.
        let carbon = rest.strip_prefix('g').and_then(|r| r.strip_suffix('0')).filter(|r| r.len() == 4);
        let found = INDEX.get(rest).or_else(|| carbon.and_then(|number| INDEX.get(number)));
        if let Some(row) = found.filter(|row| allowed(&whole, row)) {
            return Some(row);
        }
        rest = without_system(rest)?;
    }
}

/// A name without the standard that stands before it: `1.4301` of `EN 10088-3 1.4301`.
pub(super) fn without_standard(name: &str) -> Option<&str> {
    let mut rest = name.trim();
    let mut body = false;
    while let Some((word, behind)) = rest.split_once(char::is_whitespace) {
        let lower = word.to_ascii_lowercase();
        let number = BODIES.iter().fold(lower.as_str(), |word, body| word.strip_prefix(body).unwrap_or(word));
        body |= number.len() < lower.len();
        let digits = number.trim_start_matches(|c: char| c.is_ascii_alphabetic());
        let standard = digits.len() >= 3 && digits.chars().all(|c| c.is_ascii_digit() || "-:".contains(c));
        if !body {
            return None;
        }
        rest = behind.trim_start();
        if standard {
            return Some(rest).filter(|rest| !rest.is_empty());
        }
        if !number.is_empty() {
            return None;
        }
    }
    None
}

/// A name without the state of the bar behind it: `+QT`, `+AT+C`; for aluminium `T6`.
fn without_state(name: &str) -> Option<&'static Row> {
    if let Some((name, states)) = name.split_once('+') {
        let state = |s: &str| s.starts_with(|c: char| c.is_ascii_alphabetic()) && s.chars().all(char::is_alphanumeric);
        return states.split('+').all(|s| state(s.trim())).then(|| direct(name))?;
    }
    let bare = name.trim_end_matches(|c: char| c.is_ascii_digit()).strip_suffix(['T', 't'])?;
    direct(bare).filter(|row| row.group() == Group::Aluminium && bare.len() + 1 < name.len())
}

/// The row of a name in any of the usual ways. Two names of one material may stand together: `X5CrNi18-10 (1.4301)`.
pub fn known(text: &str) -> Option<&'static Row> {
    let text = text.trim();
    if text.is_empty() || text.chars().count() > LONGEST {
        return None;
    }
    let one = |name: &str| {
        let found = direct(name).or_else(|| without_state(name));
        found.or_else(|| without_standard(name).and_then(|name| direct(name).or_else(|| without_state(name))))
    };
    let agreed = |parts: &[&str]| {
        let mut rows = parts.iter().filter(|part| !part.trim().is_empty()).map(|part| one(part));
        let first = rows.next()??;
        rows.all(|row| row.is_some_and(|row| row.name == first.name)).then_some(first)
    };
    let parts: Vec<&str> = text.split(['(', ')', '/', ';', ',']).collect();
    one(text).or_else(|| agreed(&parts)).or_else(|| {
        let blanks = text.char_indices().filter(|(_, c)| c.is_whitespace()).map(|(i, _)| text.split_at(i));
        blanks.map(|(left, right)| agreed(&[left, right])).find_map(|row| row)
    })
}

/// The rows with a word in a name or the group, and the row that has it as a name.
pub fn matching(word: &str) -> Vec<&'static Row> {
    let (wanted, known) = (plain(word), known(word));
    let inside = |row: &Row| row.names().chain([row.group().word()]).any(|name| plain(name).contains(&wanted));
    rows().filter(|row| inside(row) || known.is_some_and(|known| known.name == row.name)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::materials::find;

    #[test]
    fn no_two_names_of_the_table_are_the_same() {
        let mut seen: BTreeMap<String, &str> = BTreeMap::new();
        for (row, name) in rows().flat_map(|row| row.names().map(move |name| (row, name))) {
            let other = seen.insert(key(name), row.name);
            assert_eq!(other, None, "`{name}` of {} is there already", row.name);
            assert_eq!(known(name).map(|found| found.name), Some(row.name), "`{name}`");
        }
        assert!(rows().count() >= 60 && seen.len() > 3 * rows().count());
        let groups: Vec<Group> = rows().map(|row| row.group()).collect();
        let changes = groups.windows(2).filter(|pair| pair[0] != pair[1]).count();
        assert_eq!(changes, 8, "a group stands in two places of the table");
    }

    /// An estimate that takes the values of another row has them.
    #[test]
    fn a_row_like_another_has_its_values() {
        let mut found = 0;
        for row in rows() {
            let of = row.cutting_source.strip_prefix("an estimate: the values of ");
            let Some(other) = of.and_then(|of| of.strip_suffix(", no source")) else { continue };
            let other = known(other).unwrap_or_else(|| panic!("no `{other}`"));
            let values = |row: &Row| (row.kc11_n_per_mm2, row.mc);
            // 1.4404 was rounded down a little from 1.4301.
            assert!(values(row) == values(other) || row.number == "1.4404", "{} is not like {}", row.name, other.name);
            assert!(row.confidence == super::super::Confidence::Low);
            found += 1;
        }
        assert!(found > 30);
    }

    /// Long texts of a hostile drawing cost no more than a look.
    #[test]
    fn a_long_text_is_no_material() {
        assert!(known(&"1.4301 ".repeat(10_000)).is_none());
        assert!(find(&"(/".repeat(10_000)).is_err());
    }
}
