//! The words for the keys of a plan, and text of the user made safe to print.

use super::{numbers, table};
use crate::job::plan::{CheckResult, Giver, Plan, SectionOutline, Segment, Shortfall};
use crate::lang::{self, lists};
use crate::say;
use crate::shown;

/// User text as it may be printed: control characters (which would break lines, tables and XML) become spaces.
pub fn plain(text: &str) -> String {
    let clean: String = text.chars().map(|c| if shown::steers(c) { ' ' } else { c }).collect();
    clean.trim().to_string()
}

/// What stops the bar, as a clause; if several things do, all of them.
pub fn stopped_by(shortfall: &Shortfall) -> String {
    let all = shortfall.names().map(stops);
    all.reduce(|first, second| say!("reasons-both", first = first, second = second)).unwrap_or_default()
}

/// What it means that a check or a rule stops the bar.
fn stops(name: &str) -> String {
    let known = match name {
        "stiffness" => lang::text("stops-stiffness"),
        "span_stiffness" => lang::text("stops-span-stiffness"),
        "free_ratio" => lang::text("stops-free-ratio"),
        "whirl" => lang::text("stops-whirl"),
        "whip" => lang::text("stops-whip"),
        "sag" => lang::text("stops-sag"),
        "bore" => lang::text("stops-bore"),
        "cut" => lang::text("stops-cut"),
        "chatter" => lang::text("stops-chatter"),
        "buckling" => lang::text("stops-buckling"),
        "run_out" => lang::text("stops-run-out"),
        "drill" => lang::text("stops-drill"),
        "pick_up" => lang::text("stops-pick-up"),
        "release" => lang::text("stops-release"),
        "torque" => lang::text("stops-torque"),
        "push" => lang::text("stops-push"),
        "back" => lang::text("stops-back"),
        "counter_spindle_travel" => lang::text("stops-travel"),
        "collet" => lang::text("stops-collet"),
        "stroke" => lang::text("stops-stroke"),
        "interrupt" => lang::text("stops-interrupt"),
        "tray" => lang::text("stops-tray"),
        "tool_places" => lang::text("stops-tool-places"),
        "thread_length" => lang::text("stops-thread-length"),
        "support" => lang::text("stops-support"),
        "wish" => lang::text("stops-wish"),
        "bush_size" => lang::text("stops-bush-size"),
        "collet_size" => lang::text("stops-collet-size"),
        "spindle_power" => lang::text("stops-power"),
        "spindle_torque" => lang::text("stops-spindle-torque"),
        "feed_force" => lang::text("stops-feed-force"),
        "counter_spindle_torque" => lang::text("stops-counter-torque"),
        other => return say!("stops-other", rule = key(other)),
    };
    known.to_owned()
}

/// The name of a check in words.
pub fn check_name(name: &str) -> String {
    let known = match name {
        "free_ratio" => lang::text("check-free-ratio"),
        "bore" => lang::text("check-bore"),
        "cut" => lang::text("check-cut"),
        "drill" => lang::text("check-drill"),
        "pick_up" => lang::text("check-pick-up"),
        "release" => lang::text("check-release"),
        "torque" => lang::text("check-torque"),
        "push" => lang::text("check-push"),
        "back" => lang::text("check-back"),
        other => return key(other),
    };
    known.to_owned()
}

/// A key of the plan in words: `counter_spindle_travel` becomes `counter-spindle travel`. One without a text is shown as it is.
pub fn key(key: &str) -> String {
    let plain = plain(key);
    lang::known(&format!("key-{}", plain.replace('_', "-"))).map_or_else(|| plain.replace('_', " "), str::to_owned)
}

/// The holding in words.
pub fn holding(key_of_plan: &str) -> String {
    match key_of_plan {
        "bush" => say!("holding-bush"),
        "no_bush" => say!("holding-no-bush"),
        other => key(other),
    }
}

/// The tools in words.
pub fn tools(key_of_plan: &str) -> String {
    match key_of_plan {
        "single" => say!("tools-single"),
        "opposed" => say!("tools-opposed"),
        "tandem" => say!("tools-tandem"),
        other => key(other),
    }
}

/// The work of a segment in words.
pub fn work(key_of_plan: &str) -> String {
    match key_of_plan {
        "whirl" => say!("work-whirl"),
        "thread" => say!("work-thread"),
        "as_drawn" => say!("work-as-drawn"),
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
        None => say!("section-number", number = number),
    }
}

/// A list longer than this is cut. The whole list is in `plan.json`.
const LISTED: usize = 8;

/// `a, b, c`; a long list ends in `and 12 more`.
pub fn enumeration(items: &[String]) -> String {
    lists::at_most(LISTED, items)
}

/// Columns a name of a section takes at most.
const NAME_WIDTH: usize = 40;

/// See [`section`].
pub fn section_name(section: &SectionOutline) -> String {
    let (number, name) = (section.number, plain(&section.name));
    let what =
        if name.is_empty() || name == say!("section-number", number = number) { kind_and_size(section) } else { name };
    let what = table::fit(&what, NAME_WIDTH);
    if what.is_empty() { say!("section-number", number = number) } else { format!("{number} {what}") }
}

/// `groove Ø11.4`, `taper Ø18/Ø22`, `M16x1.5`.
fn kind_and_size(section: &SectionOutline) -> String {
    let label = plain(&section.label);
    let kind = match section.kind.as_str() {
        "cylinder" | "thread" => "",
        "knurl" => "",
        kind => &key(kind),
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
    say!("check-used", check = check_name(&result.check), used = numbers::utilisation(result.utilisation))
}

/// A check with its numbers: `whip 0.092 mm, at most 0.1 mm (92 % of its limit)`. Stiffness is the one check whose
/// limit is a least value.
pub fn check_in_full(result: &CheckResult) -> String {
    let unit = plain(lang::unit_told(&result.unit));
    let unit = if unit.is_empty() { unit } else { format!(" {unit}") };
    let told = [result.demand, result.limit].map(|value| lang::told(value, &result.unit));
    let [mut demand, mut limit] = told.map(numbers::value);
    if demand == limit && result.demand != result.limit {
        [demand, limit] = told.map(|value| numbers::trimmed(value, CLOSE_PLACES));
    }
    if result.check == "chatter" {
        limit = numbers::depth_limit(result.limit);
    }
    let (check, used) = (check_name(&result.check), numbers::utilisation(result.utilisation));
    let (value, limit) = (demand + &unit, limit + &unit);
    match result.check.as_str() {
        "stiffness" | "span_stiffness" => {
            say!("check-at-least", check = check, value = value, limit = limit, used = used)
        }
        _ => say!("check-at-most", check = check, value = value, limit = limit, used = used),
    }
}

/// Number of decimals that shows a difference between a value and a limit it almost reaches.
const CLOSE_PLACES: usize = 6;

/// A value of a proposed change.
pub fn change_value(value: &serde_json::Value) -> String {
    use serde_json::Value;
    match value {
        Value::Null => say!("value-not-set"),
        Value::Bool(true) => say!("value-yes"),
        Value::Bool(false) => say!("value-no"),
        Value::Number(n) => n.as_f64().map_or_else(|| n.to_string(), |v| numbers::trimmed(v, 3)),
        Value::String(s) => key(s),
        Value::Array(items) => items.iter().map(change_value).collect::<Vec<_>>().join(", "),
        Value::Object(map) => {
            map.iter().map(|(k, v)| format!("{} {}", plain(k), change_value(v))).collect::<Vec<_>>().join(", ")
        }
    }
}

/// The depths of cut of a segment, in order.
pub fn segment_depths(segment: &Segment) -> String {
    let depths: Vec<String> = segment.depths_mm.iter().map(|mm| numbers::depth_mm(*mm)).collect();
    if depths.is_empty() { numbers::NONE.to_owned() } else { depths.join(", ") }
}

/// The stations of the tools of a segment in order; a tool without a station by its name.
pub fn segment_stations(plan: &Plan, segment: &Segment) -> String {
    let station = |tool: &String| plain(plan.listed(tool).and_then(|listed| listed.station.as_ref()).unwrap_or(tool));
    let mut all: Vec<String> = segment.cuts.iter().flat_map(|cut| &cut.tools).map(station).collect();
    all.dedup();
    if all.is_empty() { numbers::NONE.to_owned() } else { all.join(", ") }
}

/// The station of the tool that parts off, else its name.
pub fn part_off_station(plan: &Plan) -> String {
    let station = plan.part_off_tool().map(|tool| plain(tool.station.as_ref().unwrap_or(&tool.tool)));
    station.unwrap_or_else(|| numbers::NONE.to_owned())
}

/// The values that the job does not give: those of the shop's file, then those of this program.
pub fn origins(plan: &Plan) -> Vec<String> {
    let of = |from: Giver| {
        let values = plan.origins.iter().filter(move |origin| origin.from == from).map(|origin| {
            let (key, value) = (origin.key.as_str(), plain(&lang::with_unit_told(&origin.value)));
            match origin.line {
                Some(line) => say!("origin-of-shop", key = key, value = value, line = line),
                None => say!("origin", key = key, value = value),
            }
        });
        Some(values.collect::<Vec<_>>().join(", ")).filter(|values| !values.is_empty())
    };
    let shop = of(Giver::Shop).map(|values| say!("origins-of-shop", values = values));
    let default = of(Giver::Default).map(|values| say!("origins-by-default", values = values));
    shop.into_iter().chain(default).collect()
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
            front_edge: None,
            rear_edge: None,
            ground_diameter_mm: None,
            ground_tolerance: None,
            ground_ra_um: None,
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
        assert_eq!(check_in_full(&result), "critical speed 0.70028, at most 0.7 (100.1 % of its limit)");
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
            sets: Vec::new(),
            after_trial: Vec::new(),
            tried: None,
        };
        let told = "the bar turns too near to its critical speed, and the counter-spindle has no travel left";
        assert_eq!(stopped_by(&both), told);
        assert_eq!(key("bore_depth"), "bore depth");
        assert_eq!(work("whirl"), "thread whirling");
        assert_eq!(holding("bush"), "guide bush");
    }
}
