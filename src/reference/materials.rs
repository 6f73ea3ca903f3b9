//! The built-in materials.

use super::table::{Table, wrapped};
use crate::job::materials::{Row, rows};
use crate::job::shop::Grade;
use crate::lang;
use crate::say;
use serde_json::{Value, json};

/// The numbers of all rows as text, group after group.
pub fn list(width: usize) -> String {
    let mut cells: Vec<Vec<String>> = Vec::new();
    for group in groups() {
        let kind = group.first().map_or("", |row| row.group().word());
        cells.extend([vec![String::new()], vec![say!("help-material-group", group = kind)]]);
        cells.extend(group.iter().map(|row| numbers(row).to_vec()));
    }
    let out = Table { title: String::new(), heads: heads().to_vec(), rows: cells }.text(width);
    out + "\n" + &wrapped(lang::text("help-materials-more"), width)
}

/// The numbers of some rows as text, and where they come from.
pub fn text(rows: &[&Row], width: usize) -> String {
    let cells = rows.iter().map(|row| numbers(row).to_vec()).collect();
    let mut out = Table { title: String::new(), heads: heads().to_vec(), rows: cells }.text(width);
    for row in rows {
        let about = say!(
            "help-material-about",
            name = row.name,
            group = row.group().word(),
            state = row.state,
            poisson = row.poisson.to_string(),
            class = row.class.key(),
            source = row.cutting_source
        );
        let names = match row.aliases {
            [] => String::new(),
            names => say!("help-material-names", names = names.join(", ")),
        };
        out.push('\n');
        out.push_str(&wrapped(&[about, names].join("\n"), width));
    }
    out
}

/// A table of each group, with the other names.
pub(super) fn tables() -> Vec<Table> {
    let table = |group: Vec<&Row>| {
        let [name, number, numbers @ ..] = heads();
        let row = |row: &&Row| {
            let [name, number, numbers @ ..] = self::numbers(row);
            let words = vec![name, number, row.aliases.join(", "), row.state.to_owned(), row.class.key().to_owned()];
            [words, numbers.to_vec()].concat()
        };
        let (names, state) = (lang::text("help-head-names"), lang::text("help-head-state"));
        let words = [name, number, names, state, lang::text("help-head-class")];
        Table {
            title: group.first().map_or_else(String::new, |row| format!("**{}**", row.group().word())),
            heads: [words.as_slice(), numbers.as_slice()].concat(),
            rows: group.iter().map(row).collect(),
        }
    };
    groups().into_iter().map(table).collect()
}

/// The rows of each group. A group stands together in the table.
fn groups() -> Vec<Vec<&'static Row>> {
    let all: Vec<&Row> = rows().collect();
    all.chunk_by(|a, b| a.group() == b.group()).map(<[_]>::to_vec).collect()
}

fn heads() -> [&'static str; 8] {
    [
        lang::text("help-head-material"),
        lang::text("help-head-number"),
        lang::text("help-head-e"),
        lang::text("help-head-density"),
        lang::text("help-head-kc"),
        lang::text("help-head-mc"),
        lang::text("help-head-vc"),
        lang::text("help-head-confidence"),
    ]
}

fn numbers(row: &Row) -> [String; 8] {
    let (low, high) = row.vc_m_per_min;
    [
        row.name.to_owned(),
        row.number.to_owned(),
        row.e_gpa.to_string(),
        row.density_kg_per_m3.to_string(),
        row.kc11_n_per_mm2.to_string(),
        format!("{:.2}", row.mc),
        format!("{low}–{high}"),
        row.confidence.word().to_owned(),
    ]
}

/// Grades of a shop as text.
pub fn of_shop(grades: &[&Grade], file: &str, width: usize) -> String {
    let [name, number, e, density, kc, mc, vc, _] = heads();
    let heads = vec![name, number, e, density, kc, mc, vc, lang::text("help-head-price")];
    let one = |grade: &&Grade| {
        let material = &grade.material;
        vec![
            material.name.clone(),
            grade.row.map_or_else(String::new, |row| row.number.to_owned()),
            material.e_gpa.to_string(),
            material.density_kg_per_m3.to_string(),
            material.kc11_n_per_mm2.to_string(),
            format!("{:.2}", material.mc),
            material.vc_m_per_min.map_or_else(String::new, |(low, high)| format!("{low}–{high}")),
            grade.price_per_kg.map_or_else(String::new, |price| price.to_string()),
        ]
    };
    let rows = grades.iter().map(one).collect();
    Table { title: say!("help-materials-of-shop", file = file), heads, rows }.text(width) + "\n"
}

/// Some rows and grades of a shop as JSON; the keys of numbers are those of a material in a job.
pub fn json(rows: &[&Row], own: &[&Grade], file: &str) -> Value {
    let of_shop = |grade: &&Grade| {
        let material = &grade.material;
        json!({
            "name": material.name,
            "number": grade.row.map(|row| row.number),
            "e_gpa": material.e_gpa,
            "density": material.density_kg_per_m3,
            "poisson": material.poisson,
            "kc11": material.kc11_n_per_mm2,
            "mc": material.mc,
            "vc": material.vc_m_per_min.map(|(low, high)| [low, high]),
            "price_per_kg": grade.price_per_kg,
            "source": file,
        })
    };
    let one = |row: &&Row| {
        json!({
            "name": row.name,
            "number": row.number,
            "other_names": row.aliases,
            "group": row.group().word(),
            "class": row.class.key(),
            "state": row.state,
            "e_gpa": row.e_gpa,
            "density": row.density_kg_per_m3,
            "poisson": row.poisson,
            "kc11": row.kc11_n_per_mm2,
            "mc": row.mc,
            "vc": [row.vc_m_per_min.0, row.vc_m_per_min.1],
            "confidence": row.confidence.word(),
            "source": row.cutting_source,
        })
    };
    own.iter().map(of_shop).chain(rows.iter().map(one)).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::job::materials::matching;

    #[test]
    fn a_word_finds_name_number_other_name_and_group() {
        let names = |word| matching(word).iter().map(|r| r.name).collect::<Vec<_>>();
        assert_eq!(names("1.4301"), ["X5CrNi18-10"]);
        assert_eq!(names("ti grade 5"), ["Ti-6Al-4V"]);
        assert_eq!(names("JIS SUS303"), ["X8CrNiS18-9"]);
        let aluminium = names("ALUMINIUM");
        assert!(aluminium.len() >= 10 && aluminium.iter().all(|name| name.starts_with("EN AW-")), "{aluminium:?}");
        assert_eq!(matching("").len(), rows().count());
        assert!(names("unobtainium").is_empty());
    }
}
