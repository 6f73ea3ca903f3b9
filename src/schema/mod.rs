//! JSON Schemas (2020-12) of the files, so that an editor can complete and check what is typed. Those of the job,
//! machine and readings files are made from the table of fields, those of the plan file and of its positions from their types.
//!
//! A schema sees one value at a time. The reader checks what must hold between values (a bar thick enough for the
//! shaft).

#[expect(clippy::indexing_slicing, reason = "the keys are put into objects of ours")]
mod files;
mod parts;
mod shop;

use crate::fields::ALL;
pub(crate) use parts::TABLE_RANGE;
use schemars::JsonSchema;
use schemars::generate::SchemaSettings;
use serde_json::{Map, Value, json};

/// A file that has a schema.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum File {
    /// The job file.
    Job,
    /// The machine file.
    Machine,
    /// The shop's file.
    Shop,
    /// The readings file of `fit`.
    Readings,
    /// The plan file.
    Plan,
    /// The table of positions of a plan.
    Positions,
}

/// The schema of a file.
pub fn schema(file: File) -> Value {
    let (title, body) = match file {
        File::Job => ("job", files::job()),
        File::Machine => ("machine", files::machine()),
        File::Shop => ("shop", shop::shop()),
        File::Readings => ("readings", files::readings()),
        File::Plan => ("plan", of_types::<crate::job::plan::Plan>()),
        File::Positions => ("positions", of_types::<crate::job::plan::Positions>()),
    };
    let mut out = Map::new();
    out.insert("$schema".into(), json!("https://json-schema.org/draft/2020-12/schema"));
    out.insert("title".into(), json!(format!("spanhold {title} file")));
    if let Value::Object(body) = body {
        out.extend(body.into_iter().filter(|(key, _)| key != "$schema" && key != "title"));
    }
    Value::Object(out)
}

/// A schema made from types. The unit of a number is taken from its name.
fn of_types<T: JsonSchema>() -> Value {
    let settings = SchemaSettings::draft2020_12().for_serialize();
    let mut schema = settings.into_generator().into_root_schema_for::<T>().to_value();
    describe(&mut schema);
    schema
}

/// Units, by the ending of a name.
const UNITS: [(&str, &str); 6] =
    [("_mm", "mm"), ("_s", "s"), ("_rpm", "rev/min"), ("_kg", "kg"), ("_um", "µm"), ("_share", "a share")];

/// Whether a word is a unit that descriptions end in.
pub fn is_unit(word: &str) -> bool {
    !word.is_empty() && (ALL.iter().any(|f| f.unit == word) || UNITS.iter().any(|(_, unit)| *unit == word))
}

/// Whether a description has the unit as a word of its own.
fn tells(text: &str, unit: &str) -> bool {
    text.split([' ', ',', ';']).any(|word| word == unit)
}

/// Gives every property a description that ends in its unit.
fn describe(schema: &mut Value) {
    match schema {
        Value::Object(map) => {
            if let Some(Value::Object(properties)) = map.get_mut("properties") {
                for (name, property) in properties.iter_mut() {
                    if let Value::Object(property) = property {
                        let told = property.get("description").and_then(Value::as_str).unwrap_or_default();
                        let words = || name.replace('_', " ");
                        let text = if told.is_empty() { words() } else { told.trim_end_matches('.').to_string() };
                        let unit = UNITS.iter().find(|(ending, _)| name.ends_with(ending)).map(|(_, unit)| *unit);
                        let text = match unit {
                            Some(unit) if !tells(&text, unit) => format!("{text}; {unit}"),
                            _ => text,
                        };
                        property.insert("description".into(), json!(text));
                    }
                }
            }
            map.values_mut().for_each(describe);
        }
        Value::Array(items) => items.iter_mut().for_each(describe),
        _ => {}
    }
}
