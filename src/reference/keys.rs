//! The keys of a file, read off its schema. The schema of a job, machine or readings file is made from the table of fields.

use super::left_out;
use super::table::Table;
use crate::fields;
use crate::lang;
use crate::say;
use crate::schema::{File, TABLE_RANGE, is_unit, schema};
use serde_json::{Map, Value};

/// Keys whose maps another topic lists.
const ELSEWHERE: [(File, &str); 12] = [
    (File::Job, "machine"),
    (File::Readings, "machine"),
    (File::Readings, "material"),
    (File::Shop, "machines[].machine"),
    (File::Shop, "tool_list"),
    (File::Shop, "cutting"),
    (File::Shop, "limits"),
    (File::Shop, "planning"),
    (File::Shop, "scatter"),
    (File::Shop, "change_prices"),
    (File::Shop, "order"),
    (File::Shop, "rates"),
];
/// More kinds than these are listed once, above the table.
const KINDS_IN_A_CELL: usize = 4;

/// A map of the file.
struct Group<'a> {
    /// Places in the file where it stands; the first is that of the table of fields.
    paths: Vec<String>,
    map: &'a Map<String, Value>,
    /// Name of the type, where other places share it.
    shared: Option<&'a str>,
}

/// All keys of a file: a table for each map of it.
pub fn tables(file: File) -> Vec<Table> {
    let whole = schema(file);
    let mut groups = Vec::new();
    if let Some(map) = whole.as_object() {
        collect(&whole, map, String::new(), None, file, &mut groups);
    }
    // In the order of the files, as the fields have it; maps without a number come where the schema has them.
    if file != File::Plan {
        groups.sort_by_key(|g| (!g.is_root(), g.first_field(file)));
    }
    groups.iter().map(|g| g.table(&whole, file)).collect()
}

/// Path of a key in the table of fields.
fn field_path(file: File, path: &str, key: &str) -> String {
    let root = match file {
        File::Job | File::Plan | File::Positions => "",
        File::Machine => "machine",
        File::Readings => "readings",
        File::Shop if path == "collets[]" => "machine.counter_spindle",
        File::Shop => "shop",
    };
    let path = path.replace("[]", "");
    [root, &path, key].into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(".")
}

/// What a `$ref` stands for, with its name; else the schema itself.
fn resolved<'a>(whole: &'a Value, of: &'a Value) -> (&'a Value, Option<&'a str>) {
    let name = of.get("$ref").and_then(Value::as_str).and_then(|r| r.strip_prefix("#/$defs/"));
    let def = name.and_then(|name| whole.get("$defs")?.get(name));
    (def.unwrap_or(of), name)
}

fn forms(of: &Value) -> impl Iterator<Item = &Value> {
    of.get("anyOf").and_then(Value::as_array).into_iter().flatten()
}

/// Lists a map and the maps below it.
fn collect<'a>(
    whole: &'a Value,
    map: &'a Map<String, Value>,
    path: String,
    shared: Option<&'a str>,
    file: File,
    groups: &mut Vec<Group<'a>>,
) {
    if let Some(known) = groups.iter_mut().find(|g| shared.is_some() && g.shared == shared) {
        known.paths.push(path);
        return;
    }
    groups.push(Group { paths: vec![path.clone()], map, shared });
    let properties = map.get("properties").and_then(Value::as_object);
    for (key, value) in properties.into_iter().flatten() {
        let below = if path.is_empty() { key.clone() } else { format!("{path}.{key}") };
        if !ELSEWHERE.contains(&(file, below.as_str())) {
            inside(whole, value, below, file, groups);
        }
    }
}

/// Lists the maps that a value may be or hold.
fn inside<'a>(whole: &'a Value, value: &'a Value, path: String, file: File, groups: &mut Vec<Group<'a>>) {
    let (value, shared) = resolved(whole, value);
    if let Some(map) = value.as_object().filter(|m| m.contains_key("properties")) {
        collect(whole, map, path.clone(), shared, file, groups);
    }
    if let Some(items) = value.get("items") {
        inside(whole, items, format!("{path}[]"), file, groups);
    }
    for form in forms(value) {
        inside(whole, form, path.clone(), file, groups);
    }
}

impl Group<'_> {
    fn path(&self) -> &str {
        self.paths.first().map_or("", String::as_str)
    }

    fn is_root(&self) -> bool {
        self.path().is_empty()
    }

    /// Place of its first number in the table of fields, those of maps below it included.
    fn first_field(&self, file: File) -> usize {
        let own = field_path(file, self.path(), "");
        let below = |path: &str| path.strip_prefix(&own).is_some_and(|rest| rest.starts_with('.'));
        fields::ALL.iter().position(|f| below(f.path)).unwrap_or(usize::MAX)
    }

    fn table(&self, whole: &Value, file: File) -> Table {
        let required: Vec<&str> = strings(self.map.get("required")).collect();
        let properties = self.map.get("properties").and_then(Value::as_object);
        let mut keys: Vec<(&String, &Value)> = properties.into_iter().flatten().collect();
        if file != File::Plan {
            let field = |key: &str| {
                let path = field_path(file, self.path(), key);
                fields::ALL.iter().position(|f| f.path == path).unwrap_or(usize::MAX)
            };
            keys.sort_by_key(|(key, _)| (!required.contains(&key.as_str()), field(key)));
        }
        let rows = keys.into_iter().map(|(key, value)| {
            let (meaning, unit) = meaning(whole, value);
            let mut row = vec![key.clone(), meaning, unit, takes(whole, value)];
            if file != File::Plan {
                row.push(self.left_out(file, key, value, required.contains(&key.as_str())));
            }
            row
        });
        let mut heads =
            vec![lang::text("help-head-key"), lang::text("help-head-meaning"), lang::text("help-head-unit")];
        match file {
            File::Plan => heads.push(lang::text("help-head-holds")),
            _ => heads.extend([lang::text("help-head-takes"), lang::text("help-head-left-out")]),
        }
        Table { title: self.title(), heads, rows: rows.collect() }
    }

    fn title(&self) -> String {
        let what = self.map.get("description").and_then(Value::as_str).unwrap_or_default();
        let what = what.split_whitespace().collect::<Vec<_>>().join(" ");
        let what = what.trim_end_matches('.');
        let paths: Vec<String> = self.paths.iter().map(|p| format!("`{p}`")).collect();
        let title = if self.is_root() {
            say!("help-group-root", what = what)
        } else {
            say!("help-group", paths = paths.join(", "), what = what)
        };
        let kinds = self.kinds();
        if kinds.len() > KINDS_IN_A_CELL {
            say!("help-group-kinds", title = title, kinds = ticked(&kinds))
        } else {
            title
        }
    }

    /// The keys of which one makes the map what it is: the first of each list of keys that are required together.
    fn kinds(&self) -> Vec<&str> {
        self.together().filter_map(|mut keys| keys.next()).collect()
    }

    fn together(&self) -> impl Iterator<Item = impl Iterator<Item = &str>> {
        let forms = ["oneOf", "anyOf"].into_iter().filter_map(|word| self.map.get(word)?.as_array()).flatten();
        forms.map(|form| strings(form.get("required")))
    }

    /// What holds where a key is left out.
    fn left_out(&self, file: File, key: &str, value: &Value, required: bool) -> String {
        let path = field_path(file, self.path(), key);
        let default = std::iter::once(value).chain(forms(value)).find_map(|v| v.get("default"));
        let default = default.map(number).unwrap_or_default();
        if let Some(words) = left_out::words(&path, &default) {
            return words;
        }
        if required {
            return say!("help-must-be-given");
        }
        if !default.is_empty() {
            return default;
        }
        let kinds = self.kinds();
        if kinds.contains(&key) {
            let others: Vec<&str> = kinds.into_iter().filter(|k| *k != key).collect();
            return if others.len() < KINDS_IN_A_CELL {
                say!("help-another-kind-of", others = ticked(&others))
            } else {
                say!("help-another-kind")
            };
        }
        let with = self.together().filter_map(|keys| {
            let keys: Vec<&str> = keys.collect();
            keys.contains(&key).then_some(keys)?.first().copied()
        });
        let with: Vec<&str> = with.collect();
        if with.is_empty() { String::new() } else { say!("help-must-be-given-with", keys = ticked(&with)) }
    }
}

fn strings(list: Option<&Value>) -> impl Iterator<Item = &str> {
    list.and_then(Value::as_array).into_iter().flatten().filter_map(Value::as_str)
}

fn ticked(words: &[&str]) -> String {
    words.iter().map(|w| format!("`{w}`")).collect::<Vec<_>>().join(", ")
}

/// A number as a person writes it: without `.0`.
fn number(value: &Value) -> String {
    value.as_f64().map_or_else(|| value.to_string(), |n| n.to_string())
}

/// Meaning and unit. The unit stands at the end of the description of the key, or of a form that it may take.
fn meaning(whole: &Value, of: &Value) -> (String, String) {
    let text = |v: &Value| v.get("description").and_then(Value::as_str).map(str::to_owned);
    let told = text(of).or_else(|| text(resolved(whole, of).0)).unwrap_or_default();
    let told = told.split_whitespace().collect::<Vec<_>>().join(" ");
    match told.rsplit_once([';', ',']) {
        Some((meaning, unit)) if is_unit(unit.trim()) => (meaning.to_owned(), unit.trim().to_owned()),
        _ => {
            let inner = forms(of).chain(of.get("items")).map(|form| meaning(whole, form).1);
            let unit = inner.into_iter().find(|unit| !unit.is_empty()).unwrap_or_default();
            (told, if of.get("properties").is_some() { String::new() } else { unit })
        }
    }
}

/// What a key takes: a range, words, a text.
fn takes(whole: &Value, of: &Value) -> String {
    let (value, _) = resolved(whole, of);
    let bounds = match value.get(TABLE_RANGE).and_then(Value::as_array).map(Vec::as_slice) {
        Some([min, max]) => (Some(min), Some(max)),
        _ => (value.get("minimum"), value.get("maximum")),
    };
    if let (Some(min), Some(max)) = bounds {
        return say!("help-takes-range", least = number(min), most = number(max));
    }
    if let Some(words) = value.get("enum").and_then(Value::as_array) {
        let words = words.iter().map(|w| w.as_str().map_or_else(|| w.to_string(), str::to_owned));
        return words.map(|w| format!("`{w}`")).collect::<Vec<_>>().join(", ");
    }
    let kinds: Vec<&str> = match value.get("type") {
        Some(Value::Array(_)) => strings(value.get("type")).collect(),
        Some(Value::String(kind)) => vec![kind.as_str()],
        _ => {
            let either = ["anyOf", "oneOf"].into_iter().filter_map(|word| value.get(word)?.as_array()).flatten();
            let mut words: Vec<String> = Vec::new();
            for form in either {
                let word = form
                    .get("const")
                    .map_or_else(|| takes(whole, form), |c| format!("`{}`", c.as_str().unwrap_or_default()));
                if !words.contains(&word) {
                    words.push(word);
                }
            }
            return if words.is_empty() { say!("help-takes-any") } else { joined(words) };
        }
    };
    // A text may be written as a number or a flag too.
    if kinds.contains(&"string") && kinds.contains(&"number") {
        return say!("help-takes-text");
    }
    joined(kinds.into_iter().map(|kind| of_kind(whole, value, kind)).collect())
}

fn joined(words: Vec<String>) -> String {
    words.into_iter().reduce(|a, b| say!("help-takes-or", one = a, other = b)).unwrap_or_default()
}

fn of_kind(whole: &Value, value: &Value, kind: &str) -> String {
    match kind {
        "string" => say!("help-takes-text"),
        "number" => say!("help-takes-number"),
        "integer" => say!("help-takes-whole"),
        "boolean" => say!("help-takes-flag"),
        "null" => say!("help-takes-null"),
        "object" => say!("help-takes-map"),
        "array" => {
            let several = value.get("prefixItems").and_then(Value::as_array).into_iter().flatten();
            let items = value.get("items").into_iter().chain(several).map(|items| takes(whole, items));
            let items = items.collect::<Vec<_>>().join(", ");
            if value.get("minItems") == value.get("maxItems") && value.get("minItems").is_some() {
                say!("help-takes-pair", item = items)
            } else {
                say!("help-takes-list", item = items)
            }
        }
        other => other.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const FILES: [File; 5] = [File::Job, File::Machine, File::Shop, File::Readings, File::Plan];

    #[test]
    fn every_number_of_the_files_has_a_row_with_its_range_and_unit() {
        for field in fields::ALL {
            let file = match field.path.split('.').next() {
                Some("machine") => File::Machine,
                Some("shop") => File::Shop,
                Some("readings") => File::Readings,
                _ => File::Job,
            };
            let range = if *field == fields::SIDES {
                "`2`, `4`, `6`, `8`".into()
            } else {
                format!("{} to {}", field.min, field.max)
            };
            let has = |row: &Vec<String>| row[0] == field.key() && row[2] == field.unit && row[3].contains(&range);
            assert!(tables(file).iter().flat_map(|t| &t.rows).any(has), "{}: {range}", field.path);
        }
    }

    #[test]
    fn no_cell_of_meaning_and_left_out_is_empty() {
        for file in FILES {
            for table in tables(file) {
                for row in table.rows {
                    let last = row.last().expect("cells");
                    assert!(!row[1].is_empty() && !last.is_empty(), "{}: {row:?}", table.title);
                }
            }
        }
    }

    #[test]
    fn a_map_that_stands_twice_in_a_plan_has_one_table() {
        let plan = tables(File::Plan);
        let checks: Vec<&Table> = plan.iter().filter(|t| t.title.contains("`margin_at`")).collect();
        assert!(checks.len() == 1 && checks[0].title.contains("`stages[].checks[]`"), "{checks:?}");
    }
}
