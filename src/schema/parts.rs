//! Parts of schemas: numbers from the table of fields, and values that are not numbers.

use crate::fields::{ALL, Field};
use serde_json::{Map, Value, json};

/// A number of the table: meaning, unit, range, default.
pub(super) fn number(field: &Field) -> Value {
    let unit = if field.unit.is_empty() { String::new() } else { format!("; {}", field.unit) };
    let mut out = json!({
        "description": format!("{}{unit}", field.what()),
        "type": "number",
        "minimum": field.min,
        "maximum": field.max,
    });
    if let (Some(default), Value::Object(map)) = (field.default, &mut out) {
        map.insert("default".into(), json!(default));
    }
    out
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
