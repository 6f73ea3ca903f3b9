//! The words for what would help if there is no plan.

use super::{numbers, words};
use crate::job::plan::{Change, Shortfall};
use serde_json::Value;

/// Smallest difference in time that is mentioned, s.
const WORTH_TELLING_S: f64 = 0.05;

/// The title over the changes that would help.
pub(super) fn help_title(shortfall: &Shortfall) -> &'static str {
    let pair = shortfall.changes.iter().all(|c| c.to.is_array() && c.change.contains(PAIRED));
    if pair { TOGETHER } else { "each alone makes it feasible; the easiest to do first" }
}

/// The text if nothing helps: what was tried, and what to do next.
pub(super) fn no_help(shortfall: &Shortfall) -> String {
    let tried = shortfall.tried.as_deref().unwrap_or("no single change was found that makes it feasible");
    let next = match shortfall.blocked_by.as_str() {
        "back" | "push" => "Do that work in lighter cuts or elsewhere",
        "torque" => "Ask for a seat of a larger diameter to grip",
        _ => "Ask for a shorter or a thicker part",
    };
    format!(
        "{}. {next}, change several things at once, or see what other machines do: \
         spanhold compare JOB --machine FILE.",
        words::sentence(tried)
    )
}

/// The title of a pair of changes.
pub(super) const TOGETHER: &str = "the best two changes together";

/// Stands between the names of two changes that are made together.
const PAIRED: &str = " + ";

fn pair(value: &Value) -> Option<&[Value; 2]> {
    value.as_array()?.as_slice().try_into().ok()
}

/// One change: its sentence, then the numbers by the keys of the files.
pub(super) fn change_text(change: &Change) -> String {
    let extra = match change.extra_time_s {
        Some(s) if s >= WORTH_TELLING_S => format!("; {} s more than the fastest of these", numbers::seconds(s)),
        _ => String::new(),
    };
    let one = |name: &str, from: &Value, to: &Value| {
        format!("{}: {} → {}", words::plain(name), words::change_value(from), words::change_value(to))
    };
    let numbers = match (change.change.split_once(PAIRED), pair(&change.from), pair(&change.to)) {
        (Some((a, b)), Some([from_a, from_b]), Some([to_a, to_b])) => {
            format!("{}; {}", one(a, from_a, to_a), one(b, from_b, to_b))
        }
        _ => one(&change.change, &change.from, &change.to),
    };
    format!("{} ({numbers}{extra})", words::sentence(&change.text))
}
