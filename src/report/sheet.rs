//! One page for the machine: a self-contained HTML file that prints on A4 landscape; no script, nothing from outside.

use super::table::{self, Align};
use super::tables::{self, Rows};
use super::{ReportError, attention, cautions, gantt, numbers, svg, text, timeline, verdict, words};
use crate::job::plan::{Plan, Stage};

const STYLE: &str = include_str!("sheet.css");

/// Names in the head are cut to this many characters, so that the diagram stays on the first page.
const NAME_WIDTH: usize = 110;
const FACT_WIDTH: usize = 80;

/// The sheet: only a feasible plan has limits of stages and a box to sign.
///
/// # Errors
/// As [`plan_svg`](super::plan_svg): the diagram stands in it.
pub fn sheet_html(plan: &Plan) -> Result<String, ReportError> {
    let diagram = svg::inline_svg(plan)?;
    let job = escape(&table::fit(&words::plain(&plan.job), NAME_WIDTH));
    let mut body = head(plan, &job);
    body.push_str(&what_would_help(plan));
    body.push_str(&format!("<figure>{diagram}</figure>\n"));
    body.push_str(&block("Stages", "mm, rev/min, s", &tables::stages(plan), ""));
    if verdict::is_feasible(plan) {
        body.push_str(&stage_limits(plan));
    }
    body.push_str(&block("Where the feed stops", "mm turned", &tables::stops(plan), ""));
    body.push_str(&block("Segments", "mm, rev/min, mm/rev", &tables::segments(plan), ""));
    body.push_str("<div class=\"columns\">\n");
    body.push_str(&block("Features", "mm, s", &tables::features(plan), "narrow"));
    body.push_str(&block("Witness lines", "mm", &tables::witnesses(plan), "narrow"));
    if verdict::is_feasible(plan) {
        body.push_str(&block("Time", "", &tables::times(plan), "narrow sum"));
        body.push_str(&format!("<section><h2>Quote</h2>{}</section>\n", pairs(&tables::quote(plan))));
    }
    body.push_str("</div>\n");
    body.push_str(&in_time(plan)?);
    let notes: Vec<String> = plan.notes.iter().map(|n| words::plain(n)).collect();
    body.push_str(&list("Notes", "ul", "", &notes));
    body.push_str(&list("Look at", "ul", "", &attention::look_at(plan)));
    body.push_str(&list("Cautions", "ol", "", &cautions::to_print(plan)));
    if verdict::is_feasible(plan) {
        body.push_str(SIGN_OFF);
    }
    body.push_str(&format!("<footer>input {}</footer>\n", escape(&words::plain(&plan.input_digest))));
    Ok(format!(
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n\
         <meta name=\"viewport\" content=\"width=device-width\"/>\n<title>{job}: set-up sheet</title>\n\
         <style>\n{STYLE}</style>\n</head>\n<body>\n{body}</body>\n</html>\n"
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

fn head(plan: &Plan, job: &str) -> String {
    let class = if verdict::is_feasible(plan) { "feasible" } else { "infeasible" };
    let mut facts = tables::how(plan);
    facts.push(("input", short_digest(plan)));
    format!(
        "<header>\n<h1>{job}</h1>\n<p class=\"verdict {class}\"><strong>{}</strong> {}</p>\n{}</header>\n",
        verdict::word(plan),
        escape(&verdict::summary(plan)),
        pairs(&facts)
    )
}

/// The first characters of the digest, enough to tell two sheets apart; the whole stands at the end.
fn short_digest(plan: &Plan) -> String {
    let digest = words::plain(&plan.input_digest);
    digest.chars().take("sha256:".len() + 12).collect()
}

fn pairs(list: &[(&'static str, String)]) -> String {
    let items: String = list
        .iter()
        .map(|(k, v)| format!("<div><dt>{}</dt><dd>{}</dd></div>\n", escape(k), escape(&table::fit(v, FACT_WIDTH))))
        .collect();
    format!("<dl>\n{items}</dl>\n")
}

fn block(title: &str, units: &str, table: &Rows, class: &str) -> String {
    if table.rows.is_empty() {
        return String::new();
    }
    let cell_class = |i: usize| match table.heads.get(i).map(|h| h.align) {
        Some(Align::Right) => " class=\"n\"",
        _ => "",
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
                row.iter().enumerate().map(|(i, c)| format!("<td{}>{}</td>", cell_class(i), escape(c))).collect();
            format!("<tr>{cells}</tr>\n")
        })
        .collect();
    let units = if units.is_empty() { String::new() } else { format!(" <small>{units}</small>") };
    format!(
        "<section class=\"{class}\"><h2>{title}{units}</h2>\n<table>\n<thead><tr>{heads}</tr></thead>\n\
         <tbody>\n{rows}</tbody>\n</table></section>\n"
    )
}

fn list(title: &str, tag: &str, class: &str, items: &[String]) -> String {
    if items.is_empty() {
        return String::new();
    }
    let items: String = items.iter().map(|i| format!("<li>{}</li>\n", escape(i))).collect();
    format!("<section class=\"list {class}\"><h2>{title}</h2>\n<{tag}>\n{items}</{tag}></section>\n")
}

fn what_would_help(plan: &Plan) -> String {
    let Some(shortfall) = &plan.shortfall else { return String::new() };
    let why = format!("<p class=\"why\">{}</p>\n", escape(&words::plain(&shortfall.text)));
    let changes: Vec<String> = shortfall.changes.iter().map(text::change_text).collect();
    if changes.is_empty() {
        return format!("{why}<p>No single change was found that makes it feasible.</p>\n");
    }
    format!("{why}{}", list("What would help: each of these makes it feasible, best first", "ol", "", &changes))
}

/// The two spindles in time, the tools, the order.
fn in_time(plan: &Plan) -> Result<String, ReportError> {
    let mut out = String::new();
    if let Some(strip) = gantt::inline(plan)? {
        out.push_str(&format!("<section><h2>Both spindles in time</h2><figure>{strip}</figure></section>\n"));
    }
    out.push_str(&block("Tool places", "", &timeline::tools(plan), ""));
    out.push_str("<div class=\"columns\">\n");
    if let Some(cycle) = &plan.cycle {
        out.push_str(&format!("<section><h2>Part after part</h2>{}</section>\n", pairs(&timeline::facts(cycle))));
        out.push_str(&list("What to shorten first", "ul", "", &timeline::shorten_first(cycle)));
    }
    if let Some(order) = &plan.order {
        out.push_str(&format!("<section><h2>Order</h2>{}</section>\n", pairs(&timeline::order(order))));
        out.push_str(&block("The order by quantity", "", &timeline::quantities(order), "narrow"));
    }
    out.push_str("</div>\n");
    Ok(out)
}

/// The limits of every stage in words.
fn stage_limits(plan: &Plan) -> String {
    let items: Vec<String> = plan.stages.iter().map(|s| stage_limit(plan, s)).collect();
    list("Limits of the stages: do not exceed", "ul", "limits", &items)
}

fn stage_limit(plan: &Plan, stage: &Stage) -> String {
    let mut parts = vec![
        format!("turn to {} mm, no farther", numbers::mm(stage.to_mm)),
        format!("never above {} rev/min", numbers::rpm(stage.rpm_max)),
        format!("never more than {} mm unsupported", numbers::mm(stage.unsupported_max_mm)),
    ];
    parts.push(match (&stage.grip, stage.counter_spindle_end_mm) {
        (Some(grip), Some(distance_mm)) if words::has_bush(plan) => format!(
            "counter-spindle on {}, never farther than {} mm from the bush",
            tables::grip(Some(grip)),
            numbers::mm(distance_mm)
        ),
        (Some(grip), _) => format!("counter-spindle on {}", tables::grip(Some(grip))),
        (None, _) => "front end free, nothing may touch it".to_string(),
    });
    format!("Stage {}: {}", stage.number, parts.join("; "))
}

const SIGN_OFF: &str = "<section class=\"sign-off\"><h2>Sign-off</h2>
<table>
<thead><tr><th scope=\"col\">step</th><th scope=\"col\">name</th><th scope=\"col\">date</th><th scope=\"col\">signature</th></tr></thead>
<tbody>
<tr><td>Plan read, machine and collet match</td><td></td><td></td><td></td></tr>
<tr><td>First piece proved at reduced speed and feed</td><td></td><td></td><td></td></tr>
<tr><td>First piece measured</td><td></td><td></td><td></td></tr>
<tr><td>Released for the run</td><td></td><td></td><td></td></tr>
</tbody>
</table></section>
";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn markup_in_a_name_is_text_on_the_page() {
        assert_eq!(escape("<script>alert('x')</script>"), "&lt;script&gt;alert(&#39;x&#39;)&lt;/script&gt;");
        assert_eq!(escape("Ø18 & Œ"), "Ø18 &amp; Œ");
    }
}
