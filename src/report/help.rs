//! The words for what would help if there is no plan.

use super::{numbers, words};
use crate::job::plan::{Change, LimitCost, Shortfall};
use crate::lang;
use crate::say;
use serde_json::Value;

/// Smallest difference in time that is mentioned, s.
const WORTH_TELLING_S: f64 = 0.05;

/// The title over the changes that would help.
pub(super) fn help_title(shortfall: &Shortfall) -> &'static str {
    let pair = shortfall.changes.iter().all(|c| c.to.is_array() && c.change.contains(PAIRED));
    if pair { lang::text("title-help-together") } else { lang::text("title-help-alone") }
}

/// The text if nothing helps: what was tried, and what to do next.
pub(super) fn no_help(shortfall: &Shortfall) -> String {
    let tried = words::sentence(shortfall.tried.as_deref().unwrap_or(lang::text("help-nothing-found")));
    match shortfall.blocked_by.as_str() {
        "back" | "push" => say!("help-next-lighter", tried = tried),
        "torque" => say!("help-next-seat", tried = tried),
        _ => say!("help-next-part", tried = tried),
    }
}

/// Stands between the names of two changes that are made together.
const PAIRED: &str = " + ";

fn pair(value: &Value) -> Option<&[Value; 2]> {
    value.as_array()?.as_slice().try_into().ok()
}

/// One change: its sentence, then the numbers by the keys of the files.
pub(super) fn change_text(change: &Change) -> String {
    let one = |name: &str, from: &Value, to: &Value| {
        let (from, to) = (words::change_value(from), words::change_value(to));
        say!("help-value", name = words::plain(name), from = from, to = to)
    };
    let values = match (change.change.split_once(PAIRED), pair(&change.from), pair(&change.to)) {
        (Some((a, b)), Some([from_a, from_b]), Some([to_a, to_b])) => {
            format!("{}; {}", one(a, from_a, to_a), one(b, from_b, to_b))
        }
        _ => one(&change.change, &change.from, &change.to),
    };
    let text = words::sentence(&change.text);
    match change.extra_time_s {
        Some(s) if s >= WORTH_TELLING_S => {
            say!("help-change-slower", text = text, values = values, seconds = numbers::seconds(s))
        }
        _ => say!("help-change", text = text, values = values),
    }
}

/// What a limit costs, with the value now and the next one tried.
pub(super) fn cost_text(cost: &LimitCost) -> String {
    say!(
        "help-cost-of-limit",
        text = words::sentence(&cost.text),
        limit = words::plain(&cost.limit),
        now = words::change_value(&cost.now),
        next = words::change_value(&cost.next),
    )
}
