//! A sheet of a workbook as rows of cells.

use calamine::{Data, Reader, Sheets, open_workbook_auto_from_rs};
use std::io::Cursor;
use std::panic::catch_unwind;
use std::path::Path;

use super::headings::letter;
use super::sections::Section;
use super::table::{ROWS_MAX, Rows, sections};
use crate::diag::Diag;

/// Columns read of a sheet.
const COLUMNS_MAX: usize = 256;

/// What a sheet holds.
struct Sheet {
    rows: Rows,
    /// Cells beyond what is read.
    beyond: usize,
    name: String,
    /// All sheets of the workbook.
    sheets: usize,
}

/// Sections of a workbook's sheet.
///
/// # Errors
/// No workbook, no such sheet, and everything that is wrong in it, with row and column.
pub fn of_workbook(path: &Path, bytes: &[u8], sheet: Option<&str>) -> Result<(Vec<Section>, Vec<String>), Vec<Diag>> {
    // A broken file must not end in a panic, whatever the library meets in it.
    let read =
        catch_unwind(|| read(path, bytes, sheet)).unwrap_or_else(|_| Err(broken(path, "the reader gave up on it")))?;
    let mut notes = Vec::new();
    if read.sheets > 1 && sheet.is_none() {
        notes.push(format!(
            "CHECK: the sections are those of the sheet `{}`; `--sheet` names another of {}.",
            read.name, read.sheets
        ));
    }
    if read.beyond > 0 {
        notes.push(format!(
            "NOT READ: {} cells beyond row {ROWS_MAX} or column {} of the sheet.",
            read.beyond,
            letter(COLUMNS_MAX - 1)
        ));
    }
    let (sections, of_table) = sections(path, &read.rows)?;
    notes.extend(of_table);
    Ok((sections, notes))
}

fn broken(path: &Path, why: impl std::fmt::Display) -> Vec<Diag> {
    let what = format!("{} cannot be read as a workbook: {why}", path.display());
    vec![Diag::new(what).help("save it as .xlsx or as .csv in UTF-8")]
}

/// The cells of a sheet: of the first where none is named.
fn read(path: &Path, bytes: &[u8], sheet: Option<&str>) -> Result<Sheet, Vec<Diag>> {
    let shown = path.display();
    let unreadable = |e: calamine::Error| broken(path, e);
    let mut book = open_workbook_auto_from_rs(Cursor::new(bytes)).map_err(unreadable)?;
    let names = book.sheet_names();
    let name = match sheet {
        Some(name) if names.iter().any(|n| n == name) => name.to_owned(),
        Some(name) => {
            return Err(vec![
                Diag::new(format!("{shown} has no sheet `{name}`"))
                    .help(format!("its sheets are {}", names.join(", "))),
            ]);
        }
        None => match names.first() {
            Some(name) => name.clone(),
            None => return Err(vec![Diag::new(format!("{shown} has no sheet"))]),
        },
    };
    let mut rows = Rows::new();
    let mut beyond = 0;
    let mut put = |(row, column): (usize, usize), cell: &Data| {
        let text = match cell {
            Data::Empty => return,
            Data::Float(v) => v.to_string(),
            Data::Int(v) => v.to_string(),
            other => other.to_string().trim().to_owned(),
        };
        if row >= ROWS_MAX || column >= COLUMNS_MAX {
            beyond += usize::from(!text.is_empty());
            return;
        }
        rows.resize(rows.len().max(row + 1), Vec::new());
        let cells = &mut rows[row];
        cells.resize(cells.len().max(column + 1), String::new());
        cells[column] = text;
    };
    if let Sheets::Xlsx(book) = &mut book {
        // Cell by cell: of the whole range the library makes a rectangle, and one stray cell in the last row fills the memory.
        let unreadable = |e| unreadable(calamine::Error::Xlsx(e));
        let mut cells = book.worksheet_cells_reader(&name).map_err(unreadable)?;
        while let Some(cell) = cells.next_cell().map_err(unreadable)? {
            let (row, column) = cell.get_position();
            put((row as usize, column as usize), &Data::from(cell.get_value().clone()));
        }
    } else {
        let range = book.worksheet_range(&name).map_err(unreadable)?;
        let (row0, column0) = range.start().unwrap_or((0, 0));
        for (row, column, cell) in range.used_cells() {
            put((row0 as usize + row, column0 as usize + column), cell);
        }
    }
    Ok(Sheet { rows, beyond, sheets: names.len(), name })
}
