//! The checks: what each looks at, and the key of its limit. All of it comes from the list of checks.

use super::table::Table;
use crate::fields::{self, Field};
use crate::lang;
use crate::process::checks::{CHECKS, Check, EVENTS, Find};

/// All checks in the order in which they are printed.
pub(super) fn table() -> Table {
    let heads = [
        lang::text("help-head-check"),
        lang::text("help-head-looks-at"),
        lang::text("help-head-made"),
        lang::text("help-head-limit"),
        lang::text("help-head-left-out"),
    ];
    let rows = CHECKS.iter().chain(&EVENTS).map(|check| {
        let limit = limit(check);
        let key = limit.map_or_else(|| lang::text("help-check-no-limit").to_owned(), |f| format!("`{}`", f.path));
        let default = limit.map_or_else(|| lang::text("help-check-no-default").to_owned(), shown);
        vec![check.name.to_owned(), (check.looks_at)().to_owned(), made(check).to_owned(), key, default]
    });
    Table { title: String::new(), heads: heads.to_vec(), rows: rows.collect() }
}

/// The limit of a check: the one among the changes that may make it pass which is a key of `limits` or of a section.
fn limit(check: &Check) -> Option<&'static Field> {
    let is = |field: &&Field| {
        let key = field.path.strip_prefix("limits.").or(field.path.strip_prefix("shaft.").filter(|k| k.contains('.')));
        key.is_some_and(|key| check.lifted_by.contains(&key))
    };
    fields::ALL.iter().find(is)
}

/// The default with its unit.
fn shown(field: &Field) -> String {
    match field.default {
        Some(default) if field.unit.is_empty() => default.to_string(),
        Some(default) => format!("{default} {}", field.unit),
        None => super::left_out::words(field.path, "").unwrap_or_default(),
    }
}

fn made(check: &Check) -> &'static str {
    match check.find {
        Find::AtRest(_) => lang::text("help-check-at-rest"),
        Find::BySpeed(_) => lang::text("help-check-by-speed"),
        Find::AtEvent(_) => lang::text("help-check-at-event"),
        Find::Both(..) => lang::text("help-check-at-both"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_check_has_words_and_all_but_chatter_a_limit_of_their_own() {
        for check in CHECKS.iter().chain(&EVENTS) {
            assert!(!(check.looks_at)().is_empty(), "{}: say in `looks_at` what it looks at", check.name);
            assert_eq!(limit(check).is_none(), check.name == "chatter", "{}", check.name);
        }
        let key = |name| limit(crate::process::checks::about(name).expect("a check")).map(|f| f.path);
        assert_eq!(key("whirl"), Some("limits.whirl_ratio"));
        assert_eq!(key("bore"), Some("limits.bore_clearance"));
        assert_eq!(key("push"), Some("limits.torque_margin"));
        assert_eq!(key("whip"), Some("limits.whip"));
        assert_eq!(key("run_out"), Some("shaft.sections.run_out"));
        assert_eq!(key("back"), Some("limits.tolerance_share"));
    }
}
