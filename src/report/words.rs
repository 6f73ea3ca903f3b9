//! The words for the keys of a plan, and text of the user made safe to print.

use super::{numbers, table};
use crate::job::plan::{AND, CheckResult, Plan, SectionOutline, Shortfall, check_in_words};
use crate::shown;

/// User text as it may be printed: control characters (which would break lines, tables and XML) become spaces.
pub fn plain(text: &str) -> String {
    let clean: String = text.chars().map(|c| if shown::steers(c) { ' ' } else { c }).collect();
    clean.trim().to_string()
}

/// What stops the bar, in words; if several things do, all of them.
pub fn stopped_by(shortfall: &Shortfall) -> String {
    shortfall.names().map(key).collect::<Vec<_>>().join(AND)
}

/// A key of the plan in words: `counter_spindle_travel` becomes `counter-spindle travel`.
pub fn key(key: &str) -> String {
    match key {
        "hand_over" => "hand-over".to_string(),
        "regrip" => "headstock re-grip".to_string(),
        "segment" => "pull-back".to_string(),
        other => plain(check_in_words(other)).replace("counter_spindle", "counter-spindle").replace('_', " "),
    }
}

/// The holding in words.
pub fn holding(key_of_plan: &str) -> String {
    match key_of_plan {
        "bush" => "guide bush".to_string(),
        "no_bush" => "no bush, headstock collet alone".to_string(),
        other => key(other),
    }
}

/// The tools in words.
pub fn tools(key_of_plan: &str) -> String {
    match key_of_plan {
        "single" => "single tool".to_string(),
        "opposed" => "opposed pair".to_string(),
        other => key(other),
    }
}

/// The work of a segment in words.
pub fn work(key_of_plan: &str) -> String {
    match key_of_plan {
        "whirl" => "thread, whirled".to_string(),
        "thread" => "thread, passes".to_string(),
        "as_drawn" => "as the bar is".to_string(),
        other => key(other),
    }
}

/// Whether there is a guide bush, from which the headstock's distance is then measured.
pub fn has_bush(plan: &Plan) -> bool {
    plan.layout.bush_land_mm.is_some()
}

/// A section as `3 front journal`, or with its kind and size if it has no name: `2 groove Ø11.4`.
pub fn section(plan: &Plan, number: usize) -> String {
    match plan.shaft.sections.iter().find(|s| s.number == number) {
        Some(s) => section_name(s),
        None => format!("section {number}"),
    }
}

/// A list longer than this is cut. The whole list is in `plan.json`.
const LISTED: usize = 8;

/// `a, b, c`; a long list ends in `and 12 more`.
pub fn enumeration(items: &[String]) -> String {
    match items.split_at_checked(LISTED) {
        Some((listed, rest)) if !rest.is_empty() => format!("{} and {} more", listed.join(", "), rest.len()),
        _ => items.join(", "),
    }
}

/// Columns a name of a section takes at most.
const NAME_WIDTH: usize = 40;

/// See [`section`].
pub fn section_name(section: &SectionOutline) -> String {
    let (number, name) = (section.number, plain(&section.name));
    let what = if name.is_empty() || name == format!("section {number}") { kind_and_size(section) } else { name };
    let what = table::fit(&what, NAME_WIDTH);
    if what.is_empty() { format!("section {number}") } else { format!("{number} {what}") }
}

/// `groove Ø11.4`, `taper Ø18/Ø22`, `M16x1.5`.
fn kind_and_size(section: &SectionOutline) -> String {
    let label = plain(&section.label);
    let kind = match section.kind.as_str() {
        "cylinder" | "thread" => "",
        kind if label.contains(kind) => "",
        kind => kind,
    };
    format!("{kind} {label}").trim().to_string()
}

/// A sentence that begins with a capital, as all in a list do: `Front journal: feed lowered`.
pub fn sentence(text: &str) -> String {
    let text = plain(text);
    let mut rest = text.chars();
    match rest.next() {
        Some(first) if first.is_lowercase() => first.to_uppercase().chain(rest).collect(),
        _ => text,
    }
}

/// A list of sentences.
pub fn sentences(list: &[String]) -> Vec<String> {
    list.iter().map(|s| sentence(s)).collect()
}

/// A check and its utilisation: `whip 92 %`.
pub fn check(result: &CheckResult) -> String {
    format!("{} {}", key(&result.check), numbers::utilisation(result.utilisation))
}

/// A check with its numbers: `whip 0.092, at most 0.1 mm (92 %)`. Stiffness is the one check whose limit is a least value.
pub fn check_in_full(result: &CheckResult) -> String {
    let unit = if result.unit.is_empty() { String::new() } else { format!(" {}", plain(&result.unit)) };
    let side = if result.check == "stiffness" { "least" } else { "most" };
    let (mut demand, mut limit) = (numbers::value(result.demand), numbers::value(result.limit));
    if demand == limit && result.demand != result.limit {
        (demand, limit) = (numbers::trimmed(result.demand, CLOSE_PLACES), numbers::trimmed(result.limit, CLOSE_PLACES));
    }
    if result.check == "chatter" {
        limit = numbers::depth_limit(result.limit);
    }
    let used = numbers::utilisation(result.utilisation);
    format!("{} {demand}, at {side} {limit}{unit} ({used})", key(&result.check))
}

/// Number of decimals that shows a difference between a value and a limit it almost reaches.
const CLOSE_PLACES: usize = 6;

/// A value of a proposed change.
pub fn change_value(value: &serde_json::Value) -> String {
    use serde_json::Value;
    match value {
        Value::Null => "not set".to_string(),
        Value::Bool(true) => "yes".to_string(),
        Value::Bool(false) => "no".to_string(),
        Value::Number(n) => n.as_f64().map_or_else(|| n.to_string(), |v| numbers::trimmed(v, 3)),
        Value::String(s) => key(s),
        Value::Array(items) => items.iter().map(change_value).collect::<Vec<_>>().join(", "),
        Value::Object(map) => {
            map.iter().map(|(k, v)| format!("{} {}", plain(k), change_value(v))).collect::<Vec<_>>().join(", ")
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn control_characters_do_not_reach_the_page() {
        assert_eq!(plain("a\nb\u{0}c\u{202E}d"), "a b c d");
    }

    #[test]
    fn a_section_without_a_name_is_called_by_what_it_is() {
        let section = |name: &str, kind: &str, label: &str| SectionOutline {
            number: 2,
            name: name.into(),
            kind: kind.into(),
            from_mm: 0.0,
            to_mm: 1.0,
            front_diameter_mm: 1.0,
            rear_diameter_mm: 1.0,
            inner_diameter_mm: None,
            label: label.into(),
            tolerance: String::new(),
            ra_um: None,
            interrupt: "free".into(),
            grip: false,
        };
        let named = |name, kind, label| section_name(&section(name, kind, label));
        assert_eq!(named("section 2", "groove", "Ø11.4"), "2 groove Ø11.4");
        assert_eq!(named("", "thread", "M16x1.5"), "2 M16x1.5");
        assert_eq!(named("", "knurl", "Ø17 knurl"), "2 Ø17 knurl");
        assert_eq!(named("journal", "cylinder", "Ø12 h6"), "2 journal");
        assert_eq!(named("", "cylinder", ""), "section 2");
    }

    #[test]
    fn sentences_begin_alike() {
        assert_eq!(sentence("front journal: feed lowered"), "Front journal: feed lowered");
        assert_eq!(sentence("Ø5 is 2 mm off"), "Ø5 is 2 mm off");
        assert_eq!(sentence(""), "");
    }

    #[test]
    fn a_value_next_to_its_limit_is_not_rounded_onto_it() {
        let result = CheckResult {
            check: "whirl".into(),
            demand: 0.70028,
            limit: 0.7,
            unit: String::new(),
            utilisation: 1.0004,
            turned_mm: 0.0,
            at_mm: 0.0,
        };
        assert_eq!(check_in_full(&result), "critical speed 0.70028, at most 0.7 (100.1 %)");
    }

    #[test]
    fn a_long_list_says_how_much_it_leaves_out() {
        let items: Vec<String> = (1..=10).map(|i| i.to_string()).collect();
        assert_eq!(enumeration(&items[..3]), "1, 2, 3");
        assert_eq!(enumeration(&items), "1, 2, 3, 4, 5, 6, 7, 8 and 2 more");
    }

    #[test]
    fn keys_become_trade_words() {
        assert_eq!(key("counter_spindle_travel"), "counter-spindle travel");
        let both = Shortfall {
            farthest_mm: 100.0,
            blocked_by: "whirl".into(),
            blocked_with: vec!["counter_spindle_travel".into()],
            text: String::new(),
            changes: Vec::new(),
            tried: None,
        };
        assert_eq!(stopped_by(&both), "critical speed and counter-spindle travel");
        assert_eq!(key("bore_depth"), "bore depth");
        assert_eq!(work("whirl"), "thread, whirled");
        assert_eq!(holding("bush"), "guide bush");
    }
}
