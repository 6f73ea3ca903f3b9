//! Tables on pages: columns as wide as their words, cells that wrap, the head repeated on every page.

use super::flow::{Flow, LEFT, LINE, NOTE, Style, WIDTH};
use crate::lang;
use crate::report::content::{self, Kind};
use crate::report::shapes::{self, INK, RULE, SOFT};
use crate::report::table::Align;
use crate::report::tables::Rows;

/// Size of text in tables.
const SIZE: f64 = 11.0;
/// Space left and right of a cell, over and under it.
const BESIDE: f64 = 6.0;
const OVER: f64 = 2.0;
/// No column of words is squeezed below this.
const NARROWEST: f64 = 60.0;
/// Width of a column to be written into.
const TO_FILL_IN: f64 = 100.0;

/// A table under its heading.
pub fn table(flow: &mut Flow, title: &str, units: &str, table: &Rows, kind: Kind) {
    let columns = widths(flow, table, kind);
    let heads: Vec<String> = table.heads.iter().map(|h| h.title.replace('\u{AD}', "")).collect();
    let row = |cells: &[String], bold: bool| Row {
        lines: cells
            .iter()
            .zip(&columns)
            .map(|(cell, width)| flow.fonts.wrap(cell, SIZE, bold, width - 2.0 * BESIDE))
            .collect(),
        bold,
    };
    let head = row(&heads, true);
    let last = table.rows.len().saturating_sub(1);
    let rows: Vec<Row> =
        table.rows.iter().enumerate().map(|(i, cells)| row(cells, kind == Kind::Sum && i == last)).collect();
    let aligns: Vec<Align> = table.heads.iter().map(|h| h.align).collect();
    // A table is not parted behind its first two rows.
    flow.heading(title, units, head.height() + rows.iter().take(3).map(Row::height).sum::<f64>());
    draw(flow, &head, &columns, &aligns, true);
    for row in &rows {
        if flow.need(row.height()) {
            draw(flow, &head, &columns, &aligns, true);
        }
        draw(flow, row, &columns, &aligns, false);
    }
}

/// A row with its cells in lines.
struct Row {
    lines: Vec<Vec<String>>,
    bold: bool,
}

impl Row {
    fn height(&self) -> f64 {
        self.lines.iter().map(Vec::len).max().unwrap_or(1) as f64 * SIZE * LINE + 2.0 * OVER
    }
}

fn draw(flow: &mut Flow, row: &Row, columns: &[f64], aligns: &[Align], head: bool) {
    let (mut x, height) = (LEFT, row.height());
    for ((lines, width), align) in row.lines.iter().zip(columns).zip(aligns) {
        for (i, line) in lines.iter().enumerate() {
            let base = flow.y + OVER + SIZE * (0.95 + LINE * i as f64);
            let at = match align {
                Align::Left => x + BESIDE,
                Align::Right => x + width - BESIDE - flow.fonts.width(line, SIZE, row.bold),
            };
            flow.text(at, base, SIZE, Style { bold: row.bold, colour: INK }, line);
        }
        x += width;
    }
    flow.y += height;
    let (colour, weight) = if head { (INK, 1.6) } else { (RULE, 0.6) };
    let rule = shapes::line(LEFT, flow.y, x, flow.y, colour, weight);
    flow.add(rule);
}

/// Widths of the columns. A column of numbers gets the width of its widest cell. A column of words gets at least
/// `NARROWEST` or the longest word of its title. What is left goes to the columns that would wrap.
fn widths(flow: &Flow, table: &Rows, kind: Kind) -> Vec<f64> {
    let fonts = flow.fonts;
    let mut wanted: Vec<f64> = Vec::new();
    let mut least: Vec<f64> = Vec::new();
    for (i, head) in table.heads.iter().enumerate() {
        let title = head.title.replace('\u{AD}', "");
        let cells = table.rows.iter().filter_map(|r| r.get(i));
        let widest = cells.map(|c| fonts.width(c, SIZE, kind == Kind::Sum)).fold(0.0, f64::max);
        let title_word = title.split_whitespace().map(|w| fonts.width(w, SIZE, true)).fold(0.0, f64::max);
        let whole = widest.max(fonts.width(&title, SIZE, true)) + 2.0 * BESIDE;
        let narrow = match head.align {
            Align::Right => widest.max(title_word),
            Align::Left => widest.max(title_word).min(NARROWEST.max(title_word)),
        };
        wanted.push(whole);
        least.push(narrow + 2.0 * BESIDE);
    }
    if kind == Kind::ToFillIn
        && let (Some(wanted), Some(least)) = (wanted.last_mut(), least.last_mut())
    {
        (*wanted, *least) = (TO_FILL_IN, TO_FILL_IN);
    }
    share(&wanted, &least, WIDTH, matches!(kind, Kind::Wide | Kind::ToFillIn))
}

/// Shares `room` out. If all that is wanted fits, every column gets it, and if `filled` the rest is shared evenly.
/// Otherwise every column gets its least and a part of what is left, in proportion to how much more it wants. If not
/// even the least fits, all shrink by the same factor.
fn share(wanted: &[f64], least: &[f64], room: f64, filled: bool) -> Vec<f64> {
    let (all, fewest): (f64, f64) = (wanted.iter().sum(), least.iter().sum());
    if all <= room {
        let extra = if filled { (room - all) / wanted.len().max(1) as f64 } else { 0.0 };
        return wanted.iter().map(|w| w + extra).collect();
    }
    if fewest >= room {
        return least.iter().map(|l| l * room / fewest).collect();
    }
    let part = (room - fewest) / (all - fewest);
    wanted.iter().zip(least).map(|(w, l)| l + (w - l) * part).collect()
}

/// The box to sign: the steps beside each other, with room under each.
pub fn sign_off(flow: &mut Flow) {
    const HEIGHT: f64 = 48.0;
    let steps = content::signed();
    let width = WIDTH / steps.len() as f64;
    let lines = steps.map(|step| flow.fonts.wrap(step, SIZE, true, width - 2.0 * BESIDE));
    let head = Row { lines: lines.to_vec(), bold: true };
    flow.heading(lang::text("sheet-sign-off"), "", HEIGHT + head.height());
    draw(flow, &head, &[width; 4], &[Align::Left; 4], true);
    let under = flow.y + HEIGHT - OVER - BESIDE;
    for i in 0..steps.len() {
        let x = LEFT + i as f64 * width;
        let cell = shapes::rect(x, flow.y, width, HEIGHT).set("fill", "none").set("stroke", SOFT);
        flow.add(cell.set("stroke-width", "0.6"));
        flow.text(x + BESIDE, under, NOTE, Style { bold: false, colour: SOFT }, &content::signed_with());
    }
    flow.y += HEIGHT;
}

#[cfg(test)]
mod tests {
    use super::super::fonts::Fonts;
    use super::*;
    use crate::report::table::words;

    /// At any height of the page three rows stand under the title of a table, or the table begins on the next page.
    #[test]
    fn no_table_is_parted_behind_two_rows() {
        let fonts = Fonts::new(None).expect("fonts");
        let rows = Rows { heads: vec![words("head")], rows: vec![vec!["row".to_owned()]; 6] };
        let mut parted = 0;
        for y in (400..780).step_by(5) {
            let mut flow =
                Flow { fonts: &fonts, done: Vec::new(), page: svg::node::element::Group::new(), y: f64::from(y) };
            table(&mut flow, "title", "", &rows, Kind::Wide);
            let on_first = flow.done.first().map_or(6, |page| page.to_string().matches("row").count());
            parted += usize::from((1..6).contains(&on_first));
            assert!(on_first == 0 || on_first >= 3, "{y}: {on_first}");
        }
        assert!(parted > 5, "{parted}");
    }

    #[test]
    fn columns_share_the_room_and_never_more() {
        let sum = |w: &[f64]| w.iter().sum::<f64>();
        assert_eq!(share(&[10.0, 20.0], &[5.0, 5.0], 100.0, false), [10.0, 20.0]);
        assert_eq!(sum(&share(&[10.0, 20.0], &[5.0, 5.0], 100.0, true)), 100.0);
        let tight = share(&[50.0, 100.0], &[50.0, 20.0], 100.0, true);
        assert_eq!(tight, [50.0, 50.0]);
        assert!((sum(&share(&[90.0, 100.0], &[80.0, 90.0], 100.0, true)) - 100.0).abs() < 1e-9);
    }
}
