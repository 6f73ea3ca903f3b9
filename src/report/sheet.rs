//! The sheet for the machine: a self-contained HTML file that prints on A4 landscape; no script, nothing from outside. What follows a
//! new page stands in a `div` of its own. The browser numbers the printed pages.

use super::content::{self, Block, Head, Kind};
use super::page_size::Canvas;
use super::table::{Align, fit};
use super::tables::Rows;
use super::{ReportError, gantt, shapes, sure_chart, svg, words};
use crate::job::plan::{Plan, Verdict};
use crate::lang;
use crate::say;

const STYLE: &str = include_str!("sheet.css");

/// Longest text in a margin of a printed page, in columns.
const MARGIN_WIDTH: usize = 120;

/// The colours of the diagram, as the style names them.
const COLOURS: [(&str, &str); 7] = [
    ("ink", shapes::INK),
    ("soft", shapes::SOFT),
    ("rule", shapes::RULE),
    ("limit", shapes::LIMIT),
    ("grip", shapes::GRIP),
    ("trace", shapes::TRACE),
    ("white", shapes::WHITE),
];

/// The sheet.
///
/// # Errors
/// As [`plan_svg`](super::plan_svg), because the diagram is part of the sheet.
pub fn sheet_html(plan: &Plan) -> Result<String, ReportError> {
    let pictures = Pictures {
        setting: svg::setting(plan)?.0.to_string(),
        diagram: svg::inline_svg(plan)?,
        cycle: gantt::inline(plan, Canvas::PAGE)?.map(|strip| strip.to_string()).unwrap_or_default(),
        inputs: sure_chart::inline(plan, Canvas::PAGE)?.map(|(chart, _)| chart.to_string()).unwrap_or_default(),
    };
    let about = content::head(plan);
    let mut body = format!("<div class=\"page\">\n{}", head(&about, plan.verdict));
    let mut beside = false;
    for block in content::blocks(plan) {
        let narrow = is_narrow(&block);
        if narrow != beside {
            body.push_str(if narrow { "<div class=\"columns\">\n" } else { "</div>\n" });
            beside = narrow;
        }
        body.push_str(&written(&block, &pictures));
    }
    body.push_str(if beside { "</div>\n" } else { "" });
    let colours: Vec<String> = COLOURS.iter().map(|(name, colour)| format!("--{name}: {colour};")).collect();
    let colours = colours.join(" ");
    let input = say!("sheet-input", digest = words::plain(&plan.input_digest));
    body.push_str(&format!("<footer>{}</footer>\n</div>\n", escape(&input)));
    let margins = margins(plan, &about);
    Ok(format!(
        "<!DOCTYPE html>\n<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\"/>\n\
         <meta name=\"viewport\" content=\"width=device-width\"/>\n<title>{}</title>\n\
         <style>\n:root {{ {colours} }}\n{margins}{STYLE}</style>\n</head>\n<body>\n{body}</body>\n</html>\n",
        escape(&plan.language),
        escape(&say!("sheet-title", job = about.job))
    ))
}

/// Text as HTML, also inside a quoted attribute.
///
/// ```
/// use spanhold::report::sheet::escape;
/// assert_eq!(escape("<b> & \"c\""), "&lt;b&gt; &amp; &quot;c&quot;");
/// ```
pub fn escape(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => out.push_str("&amp;"),
            '<' => out.push_str("&lt;"),
            '>' => out.push_str("&gt;"),
            '"' => out.push_str("&quot;"),
            '\'' => out.push_str("&#39;"),
            other => out.push(other),
        }
    }
    out
}

/// What the margins of the printed pages tell: the job, its drawing, revision and date, and which page of how many it is.
fn margins(plan: &Plan, about: &Head) -> String {
    const PAGE: &str = "\u{1}";
    const PAGES: &str = "\u{2}";
    let number = say!("sheet-page", page = PAGE, pages = PAGES);
    let number: Vec<String> = number
        .split_inclusive([PAGE, PAGES].map(|mark| mark.chars().next().unwrap_or_default()))
        .map(|piece| match piece.strip_suffix(PAGE) {
            Some(text) => format!("{} counter(page)", in_style(text)),
            None => match piece.strip_suffix(PAGES) {
                Some(text) => format!("{} counter(pages)", in_style(text)),
                None => in_style(piece),
            },
        })
        .collect();
    let parts = [about.job.clone(), content::issue(plan)];
    let told = parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ");
    format!(
        "@page {{ @bottom-left {{ content: {}; }} @bottom-right {{ content: {}; }} }}\n",
        in_style(&fit(&told, MARGIN_WIDTH)),
        number.join(" ")
    )
}

/// Text as a quoted string in the style.
fn in_style(text: &str) -> String {
    let plain = |c: char| c.is_alphanumeric() || " .,:;·…–-/+()°×Ø".contains(c);
    let coded = |c: char| if plain(c) { c.to_string() } else { format!("\\{:x} ", c as u32) };
    format!("\"{}\"", text.chars().map(coded).collect::<String>())
}

/// Whether two such blocks stand beside each other.
fn is_narrow(block: &Block) -> bool {
    matches!(block, Block::Facts { .. } | Block::Table { kind: Kind::Narrow | Kind::Sum, .. })
}

/// The pictures of the sheet.
struct Pictures {
    setting: String,
    diagram: String,
    cycle: String,
    inputs: String,
}

fn written(block: &Block, pictures: &Pictures) -> String {
    match block {
        Block::Why(text) => format!("<p class=\"why\">{}</p>\n", escape(text)),
        Block::Say(text) => format!("<p>{}</p>\n", escape(text)),
        Block::NewPage => "</div>\n<div class=\"page\">\n".to_owned(),
        Block::Setting => format!("<figure>{}</figure>\n", pictures.setting),
        Block::Diagram => format!("<figure>{}</figure>\n", pictures.diagram),
        Block::Cycle(title) => format!("<section><h2>{title}</h2><figure>{}</figure></section>\n", pictures.cycle),
        Block::Inputs(title) => {
            format!("<section><h2>{title}</h2><figure>{}</figure></section>\n", pictures.inputs)
        }
        Block::Table { title, units, rows, kind } => {
            let class = match kind {
                Kind::Wide => "",
                Kind::Narrow => "narrow",
                Kind::Sum => "narrow sum",
                Kind::ToFillIn => "fill-in",
            };
            table(title, units, rows, class)
        }
        Block::Facts { title, pairs: list } => {
            format!("<section class=\"facts\"><h2>{title}</h2>{}</section>\n", pairs(list))
        }
        Block::List { title, numbered, boxed, items } => {
            list(title, if *numbered { "ol" } else { "ul" }, if *boxed { "limits" } else { "" }, items)
        }
        Block::SignOff => sign_off(),
    }
}

fn head(about: &Head, verdict: Verdict) -> String {
    let class = match verdict {
        Verdict::Feasible => "feasible",
        Verdict::AtRisk => "at_risk",
        Verdict::Infeasible => "infeasible",
    };
    format!(
        "<header>\n<h1>{}</h1>\n<p class=\"verdict {class}\"><strong>{}</strong> {}</p>\n{}</header>\n",
        escape(&about.job),
        about.verdict,
        escape(&about.summary),
        pairs(&about.facts)
    )
}

fn pairs(list: &[(&'static str, String)]) -> String {
    let items: String =
        list.iter().map(|(k, v)| format!("<div><dt>{}</dt><dd>{}</dd></div>\n", escape(k), escape(v))).collect();
    format!("<dl>\n{items}</dl>\n")
}

fn table(title: &str, units: &str, table: &Rows, class: &str) -> String {
    let cell_class = |i: usize| match table.heads.get(i).map(|h| h.align) {
        Some(Align::Right) => " class=\"n\"",
        _ => "",
    };
    // A short word in a narrow column would break between its letters.
    let whole = |i: usize, cell: &str| match cell_class(i) {
        "" if cell.chars().count() <= 8 && cell.chars().all(char::is_alphabetic) => " class=\"s\"",
        class => class,
    };
    let heads: String = table
        .heads
        .iter()
        .enumerate()
        .map(|(i, h)| format!("<th scope=\"col\"{}>{}</th>", cell_class(i), escape(h.title)))
        .collect();
    let rows: String = table
        .rows
        .iter()
        .map(|row| {
            let cells: String =
                row.iter().enumerate().map(|(i, c)| format!("<td{}>{}</td>", whole(i, c), escape(c))).collect();
            format!("<tr>{cells}</tr>\n")
        })
        .collect();
    let units = if units.is_empty() { String::new() } else { format!(" <small>{}</small>", escape(units)) };
    format!(
        "<section class=\"{class}\"><h2>{title}{units}</h2>\n<table>\n<thead><tr>{heads}</tr></thead>\n\
         <tbody>\n{rows}</tbody>\n</table></section>\n"
    )
}

fn list(title: &str, tag: &str, class: &str, items: &[String]) -> String {
    let items: String = items.iter().map(|i| format!("<li>{}</li>\n", escape(i))).collect();
    format!("<section class=\"list {class}\"><h2>{title}</h2>\n<{tag}>\n{items}</{tag}></section>\n")
}

fn sign_off() -> String {
    let steps: String =
        content::signed().iter().map(|step| format!("<th scope=\"col\">{}</th>", escape(step))).collect();
    let with = content::signed().map(|_| format!("<td>{}</td>", escape(&content::signed_with()))).concat();
    format!(
        "<section class=\"sign-off\"><h2>{}</h2>\n<table>\n<thead><tr>{steps}</tr></thead>\n<tbody>\n<tr>{with}</tr>\n\
         </tbody>\n</table></section>\n",
        lang::text("sheet-sign-off")
    )
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markup_in_a_name_is_text_on_the_page() {
        assert_eq!(escape("<script>alert('x')</script>"), "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;");
        assert_eq!(escape("Ø18 & Œ"), "Ø18 &amp; Œ");
    }
}
