//! The blocks of the sheet on their pages, with a footer on each.

use svg::node::element::{Group, SVG};

use super::flow::{FOOTER, Flow, LEFT, NOTE, TOP};
use super::fonts::Fonts;
use super::table;
use crate::job::plan::Plan;
use crate::report::content::{self, Block};
use crate::report::page_size::{Canvas, PAGE_HEIGHT, PAGE_WIDTH};
use crate::report::shapes::{self, SOFT, xy};
use crate::report::{ReportError, gantt, sure_chart, svg as diagram, words};
use crate::say;

/// Columns of facts in a block.
const FACTS_IN_BLOCK: usize = 2;

/// The pages of a plan's sheet.
///
/// # Errors
/// The diagram or the strip cannot be drawn.
pub fn pages(plan: &Plan, fonts: &Fonts<'_>) -> Result<Vec<String>, ReportError> {
    let mut flow = Flow { fonts, done: Vec::new(), page: Group::new(), y: TOP };
    flow.head(plan);
    for block in content::blocks(plan) {
        match &block {
            Block::Why(text) => flow.paragraph(text, true),
            Block::Say(text) => flow.paragraph(text, false),
            Block::NewPage => flow.new_page(),
            Block::Setting => {
                let (drawing, height) = diagram::setting(plan)?;
                flow.y += 4.0;
                flow.picture(drawing, height);
            }
            Block::Diagram => {
                let (drawing, layout) = diagram::inline(plan)?;
                flow.y += 8.0;
                flow.picture(drawing, layout.height);
            }
            Block::Cycle(title) => {
                if let Some(strip) = gantt::inline(plan, Canvas::PAGE)? {
                    flow.heading(title, "", gantt::HEIGHT);
                    flow.picture(strip, gantt::HEIGHT);
                }
            }
            Block::Inputs(title) => {
                if let Some((chart, height)) = sure_chart::inline(plan, Canvas::PAGE)? {
                    flow.heading(title, "", height);
                    flow.picture(chart, height);
                }
            }
            Block::Table { title, units, rows, kind } => table::table(&mut flow, title, units, rows, *kind),
            Block::Facts { title, pairs } => {
                flow.heading(title, "", 40.0);
                flow.facts(pairs, FACTS_IN_BLOCK);
            }
            Block::List { title, numbered, boxed, items } => flow.list(title, *numbered, *boxed, items),
            Block::SignOff => table::sign_off(&mut flow),
        }
    }
    flow.done.push(flow.page);
    Ok(finished(plan, flow.done))
}

/// The pages with their footers.
fn finished(plan: &Plan, pages: Vec<Group>) -> Vec<String> {
    let count = pages.len();
    let told = [words::plain(&plan.job), content::issue(plan)];
    let told: Vec<&str> = told.iter().map(String::as_str).filter(|part| !part.is_empty()).collect();
    let job = shapes::fit_text(&told.join(" · "), NOTE, 560.0);
    let digest = shapes::fit_text(&words::plain(&plan.input_digest), NOTE, 320.0);
    let page = |(i, page): (usize, Group)| {
        let left = shapes::text(LEFT, FOOTER, NOTE, "start", &job).set("fill", SOFT);
        let middle = shapes::text(PAGE_WIDTH * 0.72, FOOTER, NOTE, "middle", &digest).set("fill", SOFT);
        let number = say!("sheet-page", page = i + 1, pages = count);
        let right = shapes::text(PAGE_WIDTH - LEFT, FOOTER, NOTE, "end", &number).set("fill", SOFT);
        SVG::new()
            .set("width", xy(PAGE_WIDTH))
            .set("height", xy(PAGE_HEIGHT))
            .set("viewBox", format!("0 0 {} {}", xy(PAGE_WIDTH), xy(PAGE_HEIGHT)))
            .set("font-family", shapes::FONT)
            .add(page)
            .add(left)
            .add(middle)
            .add(right)
            .to_string()
    };
    pages.into_iter().enumerate().map(page).collect()
}
