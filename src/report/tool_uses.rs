//! The tools that a plan turns with, and the cuts of each.

use super::table::{number, words as word};
use super::tables::Rows;
use super::{numbers, words};
use crate::job::plan::{Plan, ToolUse};
use crate::lang;
use crate::say;

/// The tools in rows; empty without a tool list.
pub fn rows(plan: &Plan) -> Rows {
    let heads = vec![
        word(lang::text("col-tool")),
        word(lang::text("col-station")),
        word(lang::text("col-insert")),
        word(lang::text("col-sections")),
        number(lang::text("col-depth")),
        number(lang::text("col-feed")),
        number(lang::text("col-speed")),
    ];
    let row = |tool: &ToolUse| {
        let name = words::plain(&tool.tool);
        let name = if tool.listed { name } else { say!("tool-not-listed", tool = name) };
        let sections: Vec<String> = tool.sections.iter().map(usize::to_string).collect();
        vec![
            name,
            said(tool.station.as_deref()),
            insert(tool),
            if sections.is_empty() { say!("tool-parts-off") } else { sections.join(", ") },
            tool.depth_mm.map_or_else(|| numbers::NONE.to_owned(), |depth| range(depth, numbers::depth_mm)),
            range(tool.feed_mm, numbers::feed_mm),
            range(tool.rpm, numbers::rpm),
        ]
    };
    Rows { heads, rows: plan.tool_list.iter().map(row).collect() }
}

/// The insert in the shop's words, and its nose radius.
fn insert(tool: &ToolUse) -> String {
    let own = tool.insert.as_deref().map(words::plain);
    let nose = tool.nose_radius_mm.map(|nose| say!("tool-nose", nose = numbers::depth_mm(nose)));
    match (own, nose) {
        (Some(own), Some(nose)) => say!("tool-insert-nose", insert = own, nose = nose),
        (own, nose) => own.or(nose).unwrap_or_else(|| numbers::NONE.to_owned()),
    }
}

fn said(text: Option<&str>) -> String {
    text.map_or_else(|| numbers::NONE.to_owned(), words::plain)
}

fn range(of: [f64; 2], shown: impl Fn(f64) -> String) -> String {
    let [least, most] = of.map(shown);
    if least == most { least } else { say!("tool-range", least = least, most = most) }
}
