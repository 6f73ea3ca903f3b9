//! The JSON Schemas against the reader and the table of fields: the same keys, the same numbers. Whether files are valid
//! by them is asked of a validator from outside, in `.ci/schema.py`.

use serde_json::Value;
use spanhold::fields::ALL;
use spanhold::input::shop::read_shop;
use spanhold::input::{read_job_text, read_readings_text};
use spanhold::schema::{File, schema};
use std::path::Path;

/// Every map of a schema with the way to it: keys, and `[]` for an item of a list.
fn maps(schema: &Value, way: &[String], found: &mut Vec<(Vec<String>, Vec<String>)>) {
    if let Some(properties) = schema["properties"].as_object() {
        let mut keys: Vec<String> = properties.keys().cloned().collect();
        keys.sort();
        found.push((way.to_vec(), keys));
        for (key, property) in properties {
            maps(property, &[way, std::slice::from_ref(key)].concat(), found);
        }
    }
    if schema["items"].is_object() {
        maps(&schema["items"], &[way, &["[]".to_string()]].concat(), found);
    }
    for form in schema["anyOf"].as_array().into_iter().flatten() {
        maps(form, way, found);
    }
}

/// YAML with one unknown key at the end of a way.
fn planted(way: &[String]) -> String {
    way.iter().rev().fold("{qqqqqqqq: 1}".to_string(), |inner, key| {
        if key == "[]" { format!("[{inner}]") } else { format!("{{{key}: {inner}}}") }
    })
}

/// The keys the reader names where it finds an unknown one.
fn known_to_reader(file: File, way: &[String]) -> Vec<String> {
    let base = Path::new("demo/readings");
    let diags = match file {
        File::Readings => {
            // Set-ups are read when machine and bar are known.
            let rest = "machine: ../machines/long-bed-32.yaml\nmaterial: C45\ndiameter: 22\n";
            let others = |key: &str| -> String {
                rest.lines().filter(|l| !l.starts_with(key)).map(|l| format!("{l}\n")).collect()
            };
            let text = match way.first().map(String::as_str) {
                None => planted(way),
                Some("set_ups") => {
                    let inner = planted(&way[2..]);
                    let inner = inner.strip_prefix('{').and_then(|t| t.strip_suffix('}')).expect("a map");
                    format!("{rest}set_ups: [{{headstock: 80, front: 100, {inner}}}]\n")
                }
                Some(key) => format!("{}{key}: {}\n", others(key), planted(&way[1..])),
            };
            read_readings_text("r.yaml", &text, base).expect_err("planted")
        }
        File::Shop => {
            let dir = tempfile::tempdir().expect("a folder");
            let path = dir.path().join("shop.yaml");
            // What tells a machine in its own file from one that is written here, and a grade of the table from one of the shop.
            std::fs::write(&path, planted(way)).expect("written");
            read_shop(&path).expect_err("planted")
        }
        _ => read_job_text("j.yaml", &planted(way), base).expect_err("planted"),
    };
    let diag = diags.iter().find(|d| d.what.contains("Unknown key `qqqqqqqq`"));
    let diag = diag.unwrap_or_else(|| panic!("{way:?}: {diags:?}"));
    let keys = diag.help.as_deref().and_then(|h| h.strip_prefix("Use one of these keys: ")).expect("known keys");
    let mut keys: Vec<String> = keys.split(", ").map(str::to_string).collect();
    keys.sort();
    keys
}

#[test]
fn every_map_has_the_keys_the_reader_knows() {
    for (file, least) in [(File::Job, 24), (File::Readings, 15), (File::Shop, 20)] {
        let mut found = Vec::new();
        maps(&schema(file), &[], &mut found);
        assert!(found.len() >= least, "{file:?}: {}", found.len());
        for (way, keys) in found {
            assert_eq!(keys, known_to_reader(file, &way), "{file:?} {way:?}");
        }
    }
}

/// The range of a number in the unit of the table. The bounds of the schema lie at it or outside of it.
fn range(number: &Value) -> [Option<f64>; 2] {
    let bounds = [number["minimum"].as_f64(), number["maximum"].as_f64()];
    let Some(table) = number["x-metric-range"].as_array() else { return bounds };
    let table = [table[0].as_f64(), table[1].as_f64()];
    assert!(bounds[0] <= table[0] && bounds[1] >= table[1], "{number}");
    table
}

/// The numbers of a schema by meaning, range and default.
fn numbers(schema: &Value, found: &mut Vec<Value>) {
    match schema {
        Value::Object(map) => {
            if map.get("type").is_some_and(|t| t == "number" || t[0] == "number") {
                found.push(schema.clone());
            }
            map.values().for_each(|v| numbers(v, found));
        }
        Value::Array(items) => items.iter().for_each(|v| numbers(v, found)),
        _ => {}
    }
}

#[test]
fn every_number_of_the_table_is_there_with_unit_range_and_default() {
    let mut found = Vec::new();
    for file in [File::Job, File::Machine, File::Shop, File::Readings] {
        numbers(&schema(file), &mut found);
    }
    // The number of flats is one of four.
    for f in ALL.iter().filter(|f| f.path != "shaft.sections.sides") {
        let is = |v: &&Value| {
            let told = v["description"].as_str().unwrap_or_default();
            told.starts_with(f.what())
                && told.ends_with(f.unit)
                && range(v) == [Some(f.min), Some(f.max)]
                && v["default"].as_f64() == f.default
        };
        assert!(found.iter().any(|v| is(&v)), "{} is in no schema", f.path);
    }
}

/// The plan's schema asks for every key of a stored plan and knows no other; its numbers tell their units.
#[test]
fn the_plan_s_schema_has_the_keys_of_a_plan() {
    let schema = schema(File::Plan);
    let text = std::fs::read_to_string("plans/feed-roller-shaft/plan.json").expect("a plan");
    let plan: Value = serde_json::from_str(&text).expect("JSON");
    let keys = |v: &Value| v.as_object().expect("a map").keys().cloned().collect::<std::collections::BTreeSet<_>>();
    let known = keys(&schema["properties"]);
    let lacking: Vec<String> = keys(&plan).difference(&known).cloned().collect();
    assert!(lacking.is_empty(), "{lacking:?}");
    let stage = &schema["$defs"]["Stage"];
    assert_eq!(keys(&plan["stages"][0]), keys(&stage["properties"]));
    let told = stage["properties"]["travel_mm"]["description"].as_str().expect("told");
    assert!(told.ends_with("mm"), "{told}");
}

/// The schema of the positions knows every key of a table of them.
#[test]
fn the_schema_of_positions_has_their_keys() {
    let schema = schema(File::Positions);
    let text = std::fs::read_to_string("plans/feed-roller-shaft/plan.json").expect("a plan");
    let plan = serde_json::from_str(&text).expect("a plan");
    let json = spanhold::report::positions_json(&plan).expect("JSON");
    let table: Value = serde_json::from_str(&json).expect("JSON");
    let keys = |v: &Value| v.as_object().expect("a map").keys().cloned().collect::<std::collections::BTreeSet<_>>();
    assert_eq!(keys(&table), keys(&schema["properties"]));
    let row = &schema["$defs"]["Position"]["properties"];
    assert_eq!(keys(&table["rows"][0]), keys(row));
    let told = row["headstock_rpm"]["description"].as_str().expect("told");
    assert!(told.ends_with("rev/min"), "{told}");
}
