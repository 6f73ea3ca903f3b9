//! Lays the blocks of the sheet out on pages, each an SVG document, from top to bottom. What does not fit goes to the
//! next page. A row, a sentence or a drawing is never split.

use svg::node::element::{Group, SVG};

use super::fonts::Fonts;
use crate::job::plan::Plan;
use crate::report::content;
use crate::report::page_size::PAGE_WIDTH;
use crate::report::shapes::{self, INK, LIMIT, SOFT, xy};
use crate::report::svg::verdict_colour;

/// Margin of 10 mm; a unit is a quarter of a millimetre.
pub const LEFT: f64 = 40.0;
pub const TOP: f64 = 40.0;
/// Where the footer begins.
const BOTTOM: f64 = 796.0;
pub const FOOTER: f64 = 812.0;

/// Width between the margins.
pub const WIDTH: f64 = PAGE_WIDTH - 2.0 * LEFT;

/// Sizes of text.
pub const BODY: f64 = 12.0;
const TITLE: f64 = 23.0;
const HEADING: f64 = 14.5;
pub const NOTE: f64 = 10.0;

/// Space over a heading and under it.
const OVER_HEADING: f64 = 13.0;
const UNDER_HEADING: f64 = 8.0;

/// Distance of lines as a multiple of the text size.
pub const LINE: f64 = 1.35;

/// Columns of facts in the head.
const FACTS_IN_HEAD: usize = 5;

/// The pages while they are filled.
pub struct Flow<'a> {
    pub fonts: &'a Fonts<'a>,
    pub done: Vec<Group>,
    pub page: Group,
    /// Top of what comes next.
    pub y: f64,
}

impl Flow<'_> {
    /// Adds to the page.
    pub fn add(&mut self, node: impl svg::Node) {
        let page = std::mem::replace(&mut self.page, Group::new());
        self.page = page.add(node);
    }

    /// Goes to the next page if `height` does not fit. True: it did.
    pub fn need(&mut self, height: f64) -> bool {
        let full = self.y + height > BOTTOM && self.y > TOP;
        if full {
            self.new_page();
        }
        full
    }

    /// Goes to the next page.
    pub fn new_page(&mut self) {
        self.done.push(std::mem::replace(&mut self.page, Group::new()));
        self.y = TOP;
    }

    /// Text on one line.
    pub fn text(&mut self, x: f64, base: f64, size: f64, style: Style, content: &str) {
        let text = shapes::text(x, base, size, "start", content).set("fill", style.colour);
        self.add(if style.bold { text.set("font-weight", "bold") } else { text });
    }

    pub fn head(&mut self, plan: &Plan) {
        let about = content::head(plan);
        let bold = Style { bold: true, colour: INK };
        for line in self.fonts.wrap(&about.job, TITLE, true, WIDTH) {
            self.text(LEFT, self.y + TITLE * 0.8, TITLE, bold, &line);
            self.y += TITLE * 1.15;
        }
        self.y += 8.0;
        let colour = verdict_colour(plan.verdict);
        let badge = self.fonts.width(about.verdict, BODY, true) + 14.0;
        self.add(shapes::rect(LEFT, self.y - 2.0, badge, BODY * LINE + 4.0).set("rx", "3").set("fill", colour));
        self.text(LEFT + 7.0, self.y + BODY, BODY, Style { bold: true, colour: shapes::WHITE }, about.verdict);
        for line in self.fonts.wrap(&about.summary, BODY, false, WIDTH - badge - 10.0) {
            self.text(LEFT + badge + 10.0, self.y + BODY, BODY, Style::PLAIN, &line);
            self.y += BODY * LINE;
        }
        self.y += 8.0;
        self.facts(&about.facts, FACTS_IN_HEAD);
    }

    /// Keys over values, in columns.
    pub fn facts(&mut self, pairs: &[(&'static str, String)], columns: usize) {
        let column = WIDTH / columns as f64;
        for row in pairs.chunks(columns) {
            let lines: Vec<Vec<String>> =
                row.iter().map(|(_, value)| self.fonts.wrap(value, BODY, false, column - 12.0)).collect();
            let most = lines.iter().map(Vec::len).max().unwrap_or(1) as f64;
            let height = NOTE * LINE + most * BODY * LINE + 3.0;
            self.need(height);
            for (i, ((key, _), lines)) in row.iter().zip(&lines).enumerate() {
                let x = LEFT + i as f64 * column;
                self.text(x, self.y + NOTE, NOTE, Style { bold: false, colour: SOFT }, key);
                for (j, line) in lines.iter().enumerate() {
                    let base = self.y + NOTE * LINE + BODY * (0.9 + LINE * j as f64);
                    self.text(x, base, BODY, Style::PLAIN, line);
                }
            }
            self.y += height;
        }
    }

    /// A heading on the same page as the first `after` units under it.
    pub fn heading(&mut self, title: &str, note: &str, after: f64) {
        let bold = Style { bold: true, colour: INK };
        let width = self.fonts.width(title, HEADING, true);
        let notes = self.fonts.wrap(note, NOTE, false, WIDTH - width - 10.0);
        if !self.need(OVER_HEADING + HEADING * LINE + UNDER_HEADING + after) && self.y > TOP {
            self.y += OVER_HEADING;
        }
        self.text(LEFT, self.y + HEADING, HEADING, bold, title);
        for (i, line) in notes.iter().enumerate() {
            let base = self.y + HEADING + NOTE * LINE * i as f64;
            self.text(LEFT + width + 10.0, base, NOTE, Style { bold: false, colour: SOFT }, line);
        }
        self.y += HEADING * LINE + UNDER_HEADING + NOTE * LINE * (notes.len() as f64 - 1.0);
    }

    pub fn paragraph(&mut self, text: &str, bold: bool) {
        self.y += 6.0;
        for line in self.fonts.wrap(text, BODY, bold, WIDTH) {
            self.need(BODY * LINE);
            self.text(LEFT, self.y + BODY, BODY, Style { bold, colour: INK }, &line);
            self.y += BODY * LINE;
        }
    }

    pub fn list(&mut self, title: &str, numbered: bool, boxed: bool, items: &[String]) {
        const INDENT: f64 = 26.0;
        let lines: Vec<Vec<String>> =
            items.iter().map(|item| self.fonts.wrap(item, BODY, false, WIDTH - INDENT)).collect();
        let height = |lines: &[String]| lines.len() as f64 * BODY * LINE + 1.5;
        self.heading(title, "", lines.first().map_or(0.0, |l| height(l)));
        for (i, lines) in lines.iter().enumerate() {
            self.need(height(lines));
            if boxed {
                let bar = shapes::rect(LEFT, self.y, 4.0, height(lines)).set("fill", LIMIT);
                self.add(bar);
            } else {
                let mark = if numbered { format!("{}.", i + 1) } else { "•".to_string() };
                self.text(LEFT + 4.0, self.y + BODY, BODY, Style::PLAIN, &mark);
            }
            let x = if boxed { LEFT + 14.0 } else { LEFT + INDENT };
            for (j, line) in lines.iter().enumerate() {
                self.text(x, self.y + BODY * (1.0 + LINE * j as f64), BODY, Style::PLAIN, line);
            }
            self.y += height(lines);
        }
    }

    /// A picture as wide as the text, or up to a tenth smaller if it then fits on this page; else on the next page.
    pub fn picture(&mut self, drawing: SVG, height: f64) {
        let least = height * WIDTH / PAGE_WIDTH * 0.9;
        self.need(least.min(BOTTOM - TOP));
        let scale = (WIDTH / PAGE_WIDTH).min((BOTTOM - self.y) / height);
        let (width, height) = (PAGE_WIDTH * scale, height * scale);
        let placed = drawing
            .set("x", xy(LEFT + (WIDTH - width) / 2.0))
            .set("y", xy(self.y))
            .set("width", xy(width))
            .set("height", xy(height));
        self.add(placed);
        self.y += height;
    }
}

/// How a text looks.
#[derive(Debug, Clone, Copy)]
pub struct Style {
    pub bold: bool,
    pub colour: &'static str,
}

impl Style {
    pub const PLAIN: Style = Style { bold: false, colour: INK };
}
