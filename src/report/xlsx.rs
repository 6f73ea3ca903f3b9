//! The plan as a spreadsheet workbook: stages, segments, checks, quote, a sheet each, numbers as numbers.

use super::{ReportError, content, tables, words};
use crate::job::plan::{Plan, Stage};
use crate::lang;
use crate::say;
use rust_xlsxwriter::{DocProperties, ExcelDateTime, Format, Workbook, Worksheet, XlsxError};

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

    /// A speed in whole rev/min, rounded down so that it is never above the limit.
    fn speed(rpm: f64) -> Self {
        Cell::Number((rpm * (1.0 + 1e-9)).floor(), 0)
    }

    fn count(value: usize) -> Self {
        Cell::Number(value as f64, 0)
    }
}

fn failed(e: XlsxError) -> ReportError {
    ReportError::Workbook { message: e.to_string() }
}

/// A sheet: its name, its heads, its rows.
type Content<'a> = (&'a str, Vec<String>, Vec<Vec<Cell<'a>>>);

/// The workbook's bytes; the same plan gives the same bytes.
///
/// # Errors
/// A number is not finite, or the spreadsheet library fails.
pub fn plan_xlsx(plan: &Plan) -> Result<Vec<u8>, ReportError> {
    let mut book = Workbook::new();
    // Without a fixed date the library writes the current time, and no two workbooks would be the same.
    let date = ExcelDateTime::from_ymd(2000, 1, 1).map_err(failed)?;
    book.set_properties(&DocProperties::new().set_title(&plan.job).set_creation_datetime(&date));
    let sheets: [Content<'_>; 4] = [
        (lang::text("xlsx-stages"), stage_heads(), stages(plan)),
        (lang::text("xlsx-segments"), segment_heads(), segments(plan)),
        (lang::text("xlsx-checks"), check_heads(), checks(plan)),
        (lang::text("xlsx-quote"), quote_heads(), quote(plan)),
    ];
    for (name, heads, rows) in sheets {
        let sheet = book.add_worksheet();
        sheet.set_name(name).map_err(failed)?;
        fill(sheet, &heads, &rows)?;
    }
    book.save_to_buffer().map_err(failed)
}

fn fill(sheet: &mut Worksheet, heads: &[String], rows: &[Vec<Cell<'_>>]) -> Result<(), ReportError> {
    let bold = Format::new().set_bold().set_text_wrap();
    for (column, head) in (0_u16..).zip(heads) {
        sheet.write_string_with_format(0, column, head, &bold).map_err(failed)?;
        sheet.set_column_width(column, if column == 0 { 24.0 } else { 14.0 }).map_err(failed)?;
    }
    sheet.set_freeze_panes(1, 0).map_err(failed)?;
    for (row, cells) in (1_u32..).zip(rows) {
        for (column, cell) in (0_u16..).zip(cells) {
            let (value, format) = match cell {
                Cell::Empty => continue,
                Cell::Text(text) => {
                    sheet.write_string(row, column, *text).map_err(failed)?;
                    continue;
                }
                Cell::Said(text) => {
                    sheet.write_string(row, column, text).map_err(failed)?;
                    continue;
                }
                Cell::Number(value, 0) => (*value, "0".to_string()),
                Cell::Number(value, decimals) => (*value, format!("0.{}", "0".repeat(*decimals))),
                Cell::Share(value) => (*value, "0 %".to_string()),
            };
            if !value.is_finite() {
                let head = heads.get(usize::from(column)).cloned().unwrap_or_default();
                let what = say!("xlsx-cell", head = head, row = row + 1);
                return Err(ReportError::NotDrawable { what });
            }
            sheet
                .write_number_with_format(row, column, value, &Format::new().set_num_format(format))
                .map_err(failed)?;
        }
    }
    Ok(())
}

/// The name of a column with its unit.
fn with_unit(name: &str, unit: &str) -> String {
    say!("xlsx-with-unit", name = name, unit = unit)
}

fn stage_heads() -> Vec<String> {
    vec![
        say!("col-stage"),
        with_unit(lang::text("col-from"), "mm"),
        with_unit(lang::text("col-to"), "mm"),
        with_unit(lang::text("col-travel"), "mm"),
        with_unit(lang::text("xlsx-grip-from"), "mm"),
        with_unit(lang::text("xlsx-grip-to"), "mm"),
        with_unit(lang::text("xlsx-grip-diameter"), "mm"),
        with_unit(lang::text("xlsx-unsupported"), "mm"),
        with_unit(lang::text("xlsx-counter-start"), "mm"),
        with_unit(lang::text("xlsx-counter-end"), "mm"),
        with_unit(lang::text("xlsx-headstock-start"), "mm"),
        with_unit(lang::text("xlsx-headstock-end"), "mm"),
        with_unit(lang::text("xlsx-lowest-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("xlsx-highest-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("col-time"), "s"),
        say!("xlsx-regrips"),
        say!("col-tightest"),
        with_unit(lang::text("xlsx-share"), "%"),
        with_unit(lang::text("xlsx-speeds"), lang::text("unit-rpm")),
        say!("col-l-over-d"),
    ]
}

fn stages(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    fn row<'a>(plan: &Plan, s: &'a Stage) -> Vec<Cell<'a>> {
        let (grip, governing) = (s.grip.as_ref(), s.governing());
        vec![
            Cell::count(s.number),
            Cell::Number(s.from_mm, 2),
            Cell::Number(s.to_mm, 2),
            Cell::Number(s.travel_mm, 2),
            Cell::maybe(grip.map(|g| g.from_mm), 2),
            Cell::maybe(grip.map(|g| g.to_mm), 2),
            Cell::maybe(grip.map(|g| g.diameter_mm), 3),
            Cell::Number(s.unsupported_max_mm, 2),
            Cell::maybe(s.counter_spindle_start_mm, 2),
            Cell::maybe(s.counter_spindle_end_mm, 2),
            Cell::Number(s.headstock_start_mm, 2),
            Cell::Number(s.headstock_end_mm, 2),
            Cell::speed(s.rpm_min),
            Cell::speed(s.rpm_max),
            Cell::Number(s.time_s, 1),
            Cell::count(s.regrips_mm.len()),
            governing.map_or(Cell::Empty, |c| Cell::Said(words::check_name(&c.check))),
            governing.map_or(Cell::Empty, |c| Cell::Share(c.utilisation)),
            Cell::Said(content::speeds_in_row(plan, s)),
            Cell::maybe(s.l_over_d_max, 1),
        ]
    }
    plan.stages.iter().map(|s| row(plan, s)).collect()
}

fn segment_heads() -> Vec<String> {
    vec![
        say!("col-section"),
        say!("xlsx-section-number"),
        say!("col-work"),
        with_unit(lang::text("col-from"), "mm"),
        with_unit(lang::text("col-to"), "mm"),
        with_unit(lang::text("xlsx-diameter"), "mm"),
        say!("col-travels"),
        with_unit(lang::text("xlsx-speed"), lang::text("unit-rpm")),
        with_unit(lang::text("col-feed"), lang::text("unit-feed")),
        say!("col-turning"),
        say!("col-stage"),
        with_unit(lang::text("col-time"), "s"),
        say!("xlsx-slowed"),
    ]
}

fn segments(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    let name = |number: usize| {
        let section = plan.shaft.sections.iter().find(|s| s.number == number);
        section.map_or("", |s| s.name.as_str())
    };
    plan.segments
        .iter()
        .map(|s| {
            vec![
                Cell::Text(name(s.section)),
                Cell::count(s.section),
                Cell::Said(words::work(&s.work)),
                Cell::Number(s.from_mm, 2),
                Cell::Number(s.to_mm, 2),
                Cell::Number(s.diameter_mm, 3),
                Cell::count(s.travels),
                Cell::speed(s.rpm),
                Cell::Number(s.feed_mm, 4),
                Cell::Said(words::key(&s.turning)),
                Cell::count(s.stage),
                Cell::Number(s.time_s, 2),
                s.slowed_by.as_deref().map_or(Cell::Empty, |check| Cell::Said(words::check_name(check))),
            ]
        })
        .collect()
}

fn check_heads() -> Vec<String> {
    vec![
        say!("xlsx-check"),
        say!("col-stage"),
        say!("xlsx-value"),
        say!("xlsx-limit"),
        say!("xlsx-check-unit"),
        with_unit(lang::text("xlsx-share"), "%"),
        with_unit(lang::text("xlsx-turned"), "mm"),
        with_unit(lang::text("xlsx-position"), "mm"),
    ]
}

fn checks(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    plan.stages
        .iter()
        .flat_map(|s| s.checks.iter().map(move |c| (s.number, c)))
        .map(|(stage, c)| {
            vec![
                Cell::Said(words::check_name(&c.check)),
                Cell::count(stage),
                Cell::Number(c.demand, 5),
                Cell::Number(c.limit, 5),
                Cell::Text(&c.unit),
                Cell::Share(c.utilisation),
                Cell::Number(c.turned_mm, 2),
                Cell::Number(c.at_mm, 2),
            ]
        })
        .collect()
}

fn quote_heads() -> Vec<String> {
    vec![say!("col-what"), say!("xlsx-value"), say!("xlsx-unit")]
}

fn quote(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    let sums = [(lang::text("time-sum"), plan.time_s.total), (lang::text("time-cycle"), plan.pace_s())];
    let seconds = tables::causes(&plan.time_s).into_iter().chain(sums);
    let mut rows: Vec<Vec<Cell<'_>>> =
        seconds.map(|(what, s)| vec![Cell::Text(what), Cell::Number(s, 1), Cell::Text("s")]).collect();
    let q = &plan.quote;
    let mut add = |what, value, unit| rows.push(vec![Cell::Text(what), value, Cell::Text(unit)]);
    add(lang::text("xlsx-pieces-per-bar"), Cell::count(q.pieces_per_bar), lang::text("xlsx-pieces"));
    add(lang::text("xlsx-remnant"), Cell::Number(q.remnant_mm, 1), "mm");
    add(lang::text("xlsx-material"), Cell::Number(q.material_kg, 3), "kg");
    if let Some(cost) = &q.cost {
        add(lang::text("xlsx-cost-machine"), Cell::Number(cost.machine, 2), &cost.currency);
        add(lang::text("xlsx-cost-material"), Cell::Number(cost.material, 2), &cost.currency);
        add(lang::text("xlsx-cost"), Cell::Number(cost.total, 2), &cost.currency);
    }
    rows
}
