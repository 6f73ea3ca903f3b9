//! Parts of schemas: numbers from the table of fields, and values that are not numbers.

use crate::fields::{ALL, Field};
use crate::lang::Units;
use serde_json::{Map, Value, json};

/// The range of a number in the unit of the table, where the bounds of the schema are wider. A schema does not know which units a file
/// has, so its bounds let through what one of the systems allows; the reader checks the rest.
pub(crate) const TABLE_RANGE: &str = "x-metric-range";

/// A number of the table: meaning, unit, range, default. With a unit behind it, it is a text.
pub(super) fn number(field: &Field) -> Value {
    let unit = if field.unit.is_empty() { String::new() } else { format!("; {}", field.unit) };
    let mut out = json!({
        "description": format!("{}{unit}", field.what()),
        "type": "number",
        "minimum": field.min,
        "maximum": field.max,
    });
    if let Value::Object(map) = &mut out {
        if !field.units().is_empty() {
            map.insert("type".into(), json!(["number", "string"]));
            map.insert("pattern".into(), json!(pattern(field)));
        }
        if field.converts() {
            let (low, high) = field.bounds(Units::Inch);
            map.insert("minimum".into(), json!(field.min.min(low)));
            map.insert("maximum".into(), json!(field.max.max(high)));
            map.insert(TABLE_RANGE.into(), json!([field.min, field.max]));
        }
        map.extend(field.default.map(|default| ("default".to_owned(), json!(default))));
    }
    out
}

/// What a number with a unit looks like: also a fraction, which may stand alone in a file in inches.
fn pattern(field: &Field) -> String {
    let words = field.units().iter().flat_map(|unit| unit.ways_to_write()).map(|word| word.replace('.', "\\."));
    let words = words.collect::<Vec<_>>().join("|");
    let fraction = if field.converts() { "|([0-9]+[ -])?[0-9]+/[0-9]+" } else { "" };
    format!("^[-+]?((([0-9]+\\.?[0-9]*|\\.[0-9]+)([eE][-+]?[0-9]+)?{fraction}) *({words}){fraction})$")
}

/// Two numbers in brackets.
pub(super) fn pair(field: &Field, what: &str) -> Value {
    json!({"description": what, "type": "array", "items": number(field), "minItems": 2, "maxItems": 2})
}

/// Text. A number, `true` or `false` counts as text as it is written, because names are often numbers.
pub(super) fn text(what: &str) -> Value {
    json!({"description": what, "type": ["string", "number", "boolean"]})
}

/// One of several words.
pub(super) fn choice(what: &str, words: &[&str]) -> Value {
    json!({"description": what, "enum": words})
}

/// True or false.
pub(super) fn flag(what: &str) -> Value {
    json!({"description": what, "type": "boolean"})
}

/// A list.
pub(super) fn list(what: &str, items: Value, most: usize) -> Value {
    json!({"description": what, "type": "array", "items": items, "maxItems": most})
}

/// One of several forms.
pub(super) fn either(what: &str, forms: Vec<Value>) -> Value {
    json!({"description": what, "anyOf": forms})
}

/// A map with every number of the table directly under `prefix`, and with `other`. A value of `other` replaces the
/// number with the same key. Nothing else is allowed.
pub(super) fn map(prefix: &str, what: &str, other: Vec<(&str, Value)>, required: &[&str]) -> Value {
    let mut properties = Map::new();
    for field in ALL {
        let under = field.path.strip_prefix(prefix).and_then(|rest| rest.strip_prefix('.'));
        if let Some(key) = under.filter(|key| !key.contains('.')) {
            properties.insert(key.into(), number(field));
        }
    }
    properties.extend(other.into_iter().map(|(key, value)| (key.to_string(), value)));
    json!({
        "description": what,
        "type": "object",
        "properties": properties,
        "required": required,
        "additionalProperties": false,
    })
}
