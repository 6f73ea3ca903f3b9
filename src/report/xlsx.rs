//! The plan as a spreadsheet workbook: stages, segments, checks, quote, a sheet each, numbers as numbers.

use super::{ReportError, content, tables, words};
use crate::job::plan::{Plan, Stage};
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
type Content<'a> = (&'a str, &'a [&'a str], Vec<Vec<Cell<'a>>>);

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
        ("stages", &STAGES, stages(plan)),
        ("segments", &SEGMENTS, segments(plan)),
        ("checks", &CHECKS, checks(plan)),
        ("quote", &QUOTE, quote(plan)),
    ];
    for (name, heads, rows) in sheets {
        let sheet = book.add_worksheet();
        sheet.set_name(name).map_err(failed)?;
        fill(sheet, heads, &rows)?;
    }
    book.save_to_buffer().map_err(failed)
}

fn fill(sheet: &mut Worksheet, heads: &[&str], rows: &[Vec<Cell<'_>>]) -> Result<(), ReportError> {
    let bold = Format::new().set_bold().set_text_wrap();
    for (column, head) in (0_u16..).zip(heads) {
        sheet.write_string_with_format(0, column, *head, &bold).map_err(failed)?;
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
                let head = heads.get(usize::from(column)).copied().unwrap_or_default();
                let what = format!("{head} in row {}", row + 1);
                return Err(ReportError::NotDrawable { what });
            }
            sheet
                .write_number_with_format(row, column, value, &Format::new().set_num_format(format))
                .map_err(failed)?;
        }
    }
    Ok(())
}

const STAGES: [&str; 19] = [
    "stage",
    "from (mm)",
    "to (mm)",
    "travel (mm)",
    "grip from (mm)",
    "grip to (mm)",
    "grip diameter (mm)",
    "unsupported length (mm)",
    "counter-spindle at start (mm)",
    "counter-spindle at end (mm)",
    "headstock at start (mm)",
    "headstock at end (mm)",
    "lowest speed (rev/min)",
    "highest speed (rev/min)",
    "time (s)",
    "re-grips",
    "governing check",
    "share of its limit (%)",
    "highest speed from … to … mm turned (rev/min)",
];

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
            governing.map_or(Cell::Empty, |c| Cell::Said(words::key(&c.check))),
            governing.map_or(Cell::Empty, |c| Cell::Share(c.utilisation)),
            Cell::Said(content::speeds_in_row(plan, s)),
        ]
    }
    plan.stages.iter().map(|s| row(plan, s)).collect()
}

const SEGMENTS: [&str; 13] = [
    "section",
    "number of the section",
    "work",
    "from (mm)",
    "to (mm)",
    "diameter (mm)",
    "travels",
    "speed (rev/min)",
    "feed (mm/rev)",
    "turning",
    "stage",
    "time (s)",
    "slowed by",
];

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
                Cell::Text(&s.turning),
                Cell::count(s.stage),
                Cell::Number(s.time_s, 2),
                s.slowed_by.as_deref().map_or(Cell::Empty, Cell::Text),
            ]
        })
        .collect()
}

const CHECKS: [&str; 8] = [
    "check",
    "stage",
    "value",
    "limit",
    "unit of value and limit",
    "share of its limit (%)",
    "turned length (mm)",
    "place on the shaft (mm)",
];

fn checks(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    plan.stages
        .iter()
        .flat_map(|s| s.checks.iter().map(move |c| (s.number, c)))
        .map(|(stage, c)| {
            vec![
                Cell::Said(words::key(&c.check)),
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

const QUOTE: [&str; 3] = ["what", "value", "unit"];

fn quote(plan: &Plan) -> Vec<Vec<Cell<'_>>> {
    let sums = [("works added up", plan.time_s.total), ("time a part", plan.pace_s())];
    let seconds = tables::causes(&plan.time_s).into_iter().chain(sums);
    let mut rows: Vec<Vec<Cell<'_>>> =
        seconds.map(|(what, s)| vec![Cell::Text(what), Cell::Number(s, 1), Cell::Text("s")]).collect();
    let q = &plan.quote;
    rows.push(vec![Cell::Text("pieces a bar"), Cell::count(q.pieces_per_bar), Cell::Text("pieces")]);
    rows.push(vec![Cell::Text("remnant"), Cell::Number(q.remnant_mm, 1), Cell::Text("mm")]);
    rows.push(vec![Cell::Text("material a part"), Cell::Number(q.material_kg, 3), Cell::Text("kg")]);
    if let Some(cost) = &q.cost {
        let money = [("machine", cost.machine), ("material", cost.material), ("cost a part", cost.total)];
        rows.extend(money.map(|(what, v)| vec![Cell::Text(what), Cell::Number(v, 2), Cell::Text(&cost.currency)]));
    }
    rows
}
