//! The built-in materials.

use super::table::{Table, wrapped};
use crate::job::materials::{ROWS, Row};
use crate::lang;
use crate::say;
use serde_json::{Value, json};

/// The rows whose name, number, other names or group hold a word. Capitals do not matter.
pub fn matching(word: &str) -> Vec<&'static Row> {
    let word = word.to_lowercase();
    let holds = |row: &&Row| {
        let names = [row.name, row.number, row.group.word()].into_iter().chain(row.aliases.iter().copied());
        names.into_iter().any(|name| name.to_lowercase().contains(&word))
    };
    ROWS.iter().filter(holds).collect()
}

/// The numbers of some rows as text, and where they come from.
pub fn text(rows: &[&Row], width: usize) -> String {
    let heads = [
        lang::text("help-head-material"),
        lang::text("help-head-number"),
        lang::text("help-head-group"),
        lang::text("help-head-e"),
        lang::text("help-head-density"),
        lang::text("help-head-kc"),
        lang::text("help-head-mc"),
        lang::text("help-head-vc"),
        lang::text("help-head-confidence"),
    ];
    let cells = rows.iter().map(|r| {
        let [name, number, _, group, _, e, density, _, kc, mc, vc, confidence, _] = cells(r);
        vec![name, number, group, e, density, kc, mc, vc, confidence]
    });
    let mut out = Table { title: String::new(), heads: heads.to_vec(), rows: cells.collect() }.text(width);
    for row in rows {
        let about = say!(
            "help-material-about",
            name = row.name,
            state = row.state,
            poisson = row.poisson.to_string(),
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

/// All columns of all rows.
pub(super) fn table() -> Table {
    let heads = [
        lang::text("help-head-material"),
        lang::text("help-head-number"),
        lang::text("help-head-names"),
        lang::text("help-head-group"),
        lang::text("help-head-state"),
        lang::text("help-head-e"),
        lang::text("help-head-density"),
        lang::text("help-head-poisson"),
        lang::text("help-head-kc"),
        lang::text("help-head-mc"),
        lang::text("help-head-vc"),
        lang::text("help-head-confidence"),
        lang::text("help-head-source"),
    ];
    Table { title: String::new(), heads: heads.to_vec(), rows: ROWS.iter().map(|r| cells(r).to_vec()).collect() }
}

fn cells(row: &Row) -> [String; 13] {
    let (low, high) = row.vc_m_per_min;
    [
        row.name.to_owned(),
        row.number.to_owned(),
        row.aliases.join(", "),
        row.group.word().to_owned(),
        row.state.to_owned(),
        row.e_gpa.to_string(),
        row.density_kg_per_m3.to_string(),
        row.poisson.to_string(),
        row.kc11_n_per_mm2.to_string(),
        format!("{:.2}", row.mc),
        format!("{low}–{high}"),
        row.confidence.word().to_owned(),
        row.cutting_source.to_owned(),
    ]
}

/// Some rows as JSON; the keys of numbers are those of a material in a job.
pub fn json(rows: &[&Row]) -> Value {
    let one = |row: &&Row| {
        json!({
            "name": row.name,
            "number": row.number,
            "other_names": row.aliases,
            "group": row.group.word(),
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
    rows.iter().map(one).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_finds_name_number_other_name_and_group() {
        let names = |word| matching(word).iter().map(|r| r.name).collect::<Vec<_>>();
        assert_eq!(names("1.4301"), ["X5CrNi18-10"]);
        assert_eq!(names("ti grade"), ["Ti-6Al-4V"]);
        assert_eq!(names("ALUMINIUM"), ["EN AW-2011", "EN AW-6082", "EN AW-7075"]);
        assert_eq!(matching("").len(), ROWS.len());
        assert!(names("unobtainium").is_empty());
    }
}
