//! The plan as a spreadsheet workbook, numbers as numbers. Each sheet prints on pages that are as wide as it is.

mod planned;
mod work;

use super::{ReportError, positions, words};
use crate::job::plan::Plan;
use crate::lang::{self, Measure};
use crate::say;
use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, FormatAlign, Workbook, Worksheet, XlsxError};

/// One cell.
enum Cell<'a> {
    /// Text.
    Text(&'a str),
    /// A key of the plan, in words.
    Said(String),
    /// A number, written to so many decimals.
    Number(f64, usize),
    /// A share, shown in percent.
    Share(f64),
    /// Nothing.
    Empty,
}

impl Cell<'_> {
    fn maybe(value: Option<f64>, decimals: usize) -> Self {
        value.map_or(Cell::Empty, |v| Cell::Number(v, decimals))
    }

    /// A metric number in the units of the plan. `decimals`: in metric units.
    fn measured(measure: Measure, value: f64, decimals: usize) -> Self {
        Cell::Number(measure.told(value), measure.places(value, decimals))
    }

    /// A length along the shaft or of the machine.
    fn mm(value_mm: f64) -> Self {
        Cell::measured(Measure::Place, value_mm, 2)
    }

    fn maybe_mm(value_mm: Option<f64>) -> Self {
        value_mm.map_or(Cell::Empty, Cell::mm)
    }

    /// A diameter or a small distance.
    fn fine_mm(value_mm: f64) -> Self {
        Cell::measured(Measure::Size, value_mm, 3)
    }

    fn maybe_fine_mm(value_mm: Option<f64>) -> Self {
        value_mm.map_or(Cell::Empty, Cell::fine_mm)
    }

    fn feed(value_mm: f64) -> Self {
        Cell::measured(Measure::Feed, value_mm, 4)
    }

    fn maybe_force(value_n: Option<f64>) -> Self {
        value_n.map_or(Cell::Empty, |n| Cell::measured(Measure::Force, n, 0))
    }

    /// A speed in whole rev/min, rounded down so that it is never above the limit.
    fn speed(rpm: f64) -> Self {
        Cell::Number((rpm * (1.0 + 1e-9)).floor(), 0)
    }

    fn count(value: usize) -> Self {
        Cell::Number(value as f64, 0)
    }

    /// Letters of a text.
    fn letters(&self) -> Option<usize> {
        match self {
            Cell::Text(text) => Some(text.chars().count()),
            Cell::Said(text) => Some(text.chars().count()),
            _ => None,
        }
    }
}

fn failed(e: XlsxError) -> ReportError {
    ReportError::Workbook { message: e.to_string() }
}

/// A sheet: its name, sentences above its heads, its heads, its rows.
struct Sheet<'a> {
    name: &'a str,
    above: Vec<String>,
    heads: Vec<String>,
    rows: Vec<Vec<Cell<'a>>>,
}

impl<'a> Sheet<'a> {
    fn plain(name: &'a str, heads: Vec<String>, rows: Vec<Vec<Cell<'a>>>) -> Self {
        Sheet { name, above: Vec::new(), heads, rows }
    }
}

/// The workbook's bytes; the same plan gives the same bytes.
///
/// # Errors
/// A number is not finite, or the spreadsheet library fails.
pub fn plan_xlsx(plan: &Plan) -> Result<Vec<u8>, ReportError> {
    let mut book = Workbook::new();
    // Without a fixed date the library writes the current time, and no two workbooks would be the same.
    let date = ExcelDateTime::from_ymd(2000, 1, 1).map_err(failed)?;
    book.set_properties(&DocProperties::new().set_title(&plan.job).set_creation_datetime(&date));
    let positions = positions::positions(plan);
    let mut sheets = vec![
        Sheet::plain(lang::text("xlsx-stages"), planned::stage_heads(), planned::stages(plan)),
        Sheet::plain(lang::text("xlsx-segments"), planned::segment_heads(), planned::segments(plan)),
        Sheet::plain(lang::text("xlsx-checks"), planned::check_heads(), planned::checks(plan)),
        Sheet::plain(lang::text("xlsx-quote"), planned::quote_heads(), planned::quote(plan)),
    ];
    let more = [work::features(plan), work::tools(plan), work::places(plan), work::order(plan)];
    sheets.extend(more.into_iter().flatten());
    sheets.extend(work::positions(&positions));
    let footer = footer(plan);
    for content in &sheets {
        let sheet = book.add_worksheet();
        sheet.set_name(content.name).map_err(failed)?;
        fill(sheet, content)?;
        sheet.set_footer(&footer);
    }
    book.save_to_buffer().map_err(failed)
}

/// Letters of a name in the footer, which takes 255 in all.
const FOOTER_NAME: usize = 60;

/// Left the part with its drawing, right the page.
fn footer(plan: &Plan) -> String {
    let named = [Some(&plan.job), plan.drawing.as_ref(), plan.revision.as_ref()].into_iter().flatten();
    let short = |name: &String| words::plain(name).chars().take(FOOTER_NAME).collect::<String>();
    // `&` begins a code of the footer. A blank keeps a name that begins with a figure from being read as a size of letters.
    let named: Vec<String> = named.map(short).map(|name| name.replace('&', "&&")).collect();
    format!("&L {}&R{}", named.join(", "), say!("xlsx-page", page = "&P", pages = "&N"))
}

/// Letters of the widest column. Longer texts go on in a second line.
const WIDEST: usize = 36;
/// Letters of a sentence above the heads that stand in one line, for each column of the table.
const LETTERS_PER_COLUMN: usize = 14;

fn fill(sheet: &mut Worksheet, content: &Sheet<'_>) -> Result<(), ReportError> {
    let bold = Format::new().set_bold().set_text_wrap();
    let wrapped = Format::new().set_text_wrap().set_align(FormatAlign::Top);
    let columns = u16::try_from(content.heads.len()).unwrap_or(u16::MAX);
    let last = columns.saturating_sub(1);
    for (row, sentence) in (0_u32..).zip(&content.above) {
        sheet.merge_range(row, 0, row, last, sentence, &wrapped).map_err(failed)?;
        let lines = sentence.chars().count() / (LETTERS_PER_COLUMN * usize::from(columns)) + 1;
        sheet.set_row_height(row, 15.0 * lines as f64).map_err(failed)?;
    }
    let head = u32::try_from(content.above.len()).unwrap_or(u32::MAX);
    for (column, text) in (0_u16..).zip(&content.heads) {
        sheet.write_string_with_format(head, column, text, &bold).map_err(failed)?;
        let least = if column == 0 { 24 } else { 14 };
        let longest = content.rows.iter().filter_map(|row| row.get(usize::from(column))?.letters()).max();
        let width = longest.unwrap_or(least).clamp(least, WIDEST);
        sheet.set_column_width(column, width as f64).map_err(failed)?;
    }
    sheet.set_freeze_panes(head + 1, 0).map_err(failed)?;
    for (row, cells) in (head + 1..).zip(&content.rows) {
        for (column, cell) in (0_u16..).zip(cells) {
            let (value, format) = match cell {
                Cell::Empty => continue,
                Cell::Text(text) => {
                    sheet.write_string_with_format(row, column, *text, &wrapped).map_err(failed)?;
                    continue;
                }
                Cell::Said(text) => {
                    sheet.write_string_with_format(row, column, text, &wrapped).map_err(failed)?;
                    continue;
                }
                Cell::Number(value, 0) => (*value, "0".to_string()),
                Cell::Number(value, decimals) => (*value, format!("0.{}", "0".repeat(*decimals))),
                Cell::Share(value) => (*value, "0 %".to_string()),
            };
            if !value.is_finite() {
                let head = content.heads.get(usize::from(column)).cloned().unwrap_or_default();
                let what = say!("xlsx-cell", head = head, row = row + 1);
                return Err(ReportError::NotDrawable { what });
            }
            let format = Format::new().set_num_format(format).set_align(FormatAlign::Top);
            sheet.write_number_with_format(row, column, value, &format).map_err(failed)?;
        }
    }
    // 9: A4. As wide as one page, as long as it takes.
    sheet.set_landscape().set_paper_size(9).set_print_fit_to_pages(1, 0);
    sheet.set_repeat_rows(head, head).map_err(failed)?;
    let rows = u32::try_from(content.rows.len()).unwrap_or(u32::MAX);
    sheet.set_print_area(0, 0, head.saturating_add(rows), last).map_err(failed)?;
    Ok(())
}

/// The name of a column with its unit.
fn with_unit(name: &str, unit: &str) -> String {
    say!("xlsx-with-unit", name = name, unit = unit)
}
