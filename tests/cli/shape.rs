//! The documents' keys and types, as lists that can be read beside docs/plan-file.md: `path type`, a line each.
//!
//! `[]` is every item of a list, of which there must be one; `?` behind a type allows null; `*` in front of a path
//! allows that a list above it is empty. What lies inside `any` is not asked for.

use serde_json::Value;

/// Checks a document against its list. Every key of the document must be listed too, so that none comes unnoticed.
pub fn assert_shape(document: &Value, list: &str) {
    let (mut known, mut open) = (Vec::new(), Vec::new());
    for line in list.lines().map(str::trim).filter(|l| !l.is_empty()) {
        let (path, kind) = line.rsplit_once(' ').expect("path and type");
        let (path, may_lack) = path.strip_prefix('*').map_or((path, false), |p| (p, true));
        known.push(path.to_string());
        if kind == "any" {
            open.push(path.to_string());
        }
        let found = values(document, path);
        assert!(may_lack || !found.is_empty(), "{path} is nowhere");
        for value in found {
            let value = value.unwrap_or_else(|| panic!("{path} is missing somewhere"));
            assert!(is(value, kind), "{path} is {value}, not {kind}");
        }
    }
    let mut here = Vec::new();
    paths(document, "", &mut here);
    for path in here {
        let inside = |any: &String| path.strip_prefix(any.as_str()).is_some_and(|p| p.starts_with(['.', '[']));
        assert!(known.contains(&path) || open.iter().any(inside), "{path} is not on the list");
    }
}

/// The values at a path; none where a key is missing. Nothing is asked of what is null above.
fn values<'a>(document: &'a Value, path: &str) -> Vec<Option<&'a Value>> {
    let mut here = vec![Some(document)];
    for part in path.split('.') {
        let (key, lists) = (part.trim_end_matches("[]"), part.matches("[]").count());
        here = here.into_iter().flatten().filter(|v| !v.is_null()).map(|v| v.get(key)).collect();
        for _ in 0..lists {
            here = here.into_iter().flatten().filter_map(Value::as_array).flatten().map(Some).collect();
        }
    }
    here
}

fn is(value: &Value, kind: &str) -> bool {
    if let Some(kind) = kind.strip_suffix('?') {
        return value.is_null() || is(value, kind);
    }
    match kind {
        "text" => value.is_string(),
        "number" => value.as_f64().is_some_and(f64::is_finite),
        "whole" => value.is_u64(),
        "flag" => value.is_boolean(),
        "list" => value.is_array(),
        "map" => value.is_object(),
        "any" => true,
        other => panic!("no type {other}"),
    }
}

fn paths(value: &Value, path: &str, all: &mut Vec<String>) {
    match value {
        Value::Object(map) => {
            for (key, inner) in map {
                let path = if path.is_empty() { key.clone() } else { format!("{path}.{key}") };
                all.push(path.clone());
                paths(inner, &path, all);
            }
        }
        Value::Array(items) => {
            let path = format!("{path}[]");
            if !items.is_empty() {
                all.push(path.clone());
            }
            items.iter().for_each(|item| paths(item, &path, all));
        }
        _ => {}
    }
}

#[test]
#[should_panic(expected = "b is 1, not text")]
fn a_wrong_type_is_found() {
    assert_shape(&serde_json::json!({ "a": [1.5], "b": 1 }), "a list\na[] number\nb text");
}

#[test]
#[should_panic(expected = "a[].d is missing somewhere")]
fn a_missing_key_is_found() {
    assert_shape(&serde_json::json!({ "a": [{ "d": 1 }, {}] }), "a list\na[] map\na[].d number");
}

#[test]
#[should_panic(expected = "c is not on the list")]
fn a_key_that_is_not_listed_is_found() {
    assert_shape(&serde_json::json!({ "b": null, "c": 1 }), "b text?");
}
