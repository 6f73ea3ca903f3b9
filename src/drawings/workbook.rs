//! Reads a sheet of a workbook as rows of cells.

use calamine::{Data, DataRef, Reader, Sheets, open_workbook_auto_from_rs};
use std::io::{Cursor, Read};
use std::path::Path;
use zip::ZipArchive;

use super::caught;
use super::headings::letter;
use super::repeats;
use super::sections::Section;
use super::table::{ROWS_MAX, Rows, sections};
use crate::diag::Diag;
use crate::say;

/// Largest unpacked size of one part of a workbook, MiB. Reading takes several times as much memory.
const PART_MAX_MIB: u64 = 32;
/// Largest unpacked size of all its parts together, MiB.
const PARTS_MAX_MIB: u64 = 128;
/// Most cells of an OpenDocument workbook, with all repeats counted. A stray cell in the last row of a sheet gives
/// more.
const CELLS_MAX: u64 = 2_000_000;
/// Most parts of a workbook.
const PARTS_MAX: usize = 10_000;
/// Most characters that are read of a cell. No value is that long.
const CELL_MAX: usize = 1000;
/// Most columns that are read of a sheet.
const COLUMNS_MAX: usize = 256;

/// What a sheet holds.
struct Sheet {
    rows: Rows,
    /// Number of cells outside what is read.
    beyond: usize,
    name: String,
    /// Number of sheets in the workbook.
    sheets: usize,
}

/// Sections of a workbook's sheet.
///
/// # Errors
/// The file is not a workbook, it has no such sheet, or its table has errors. Those are given with row and column.
pub fn of_workbook(path: &Path, bytes: &[u8], sheet: Option<&str>) -> Result<(Vec<Section>, Vec<String>), Vec<Diag>> {
    let read = caught(|| bounded(path, bytes).and_then(|()| read(path, bytes, sheet)));
    let read = read.unwrap_or_else(|| Err(broken(path, say!("draft-reader-failed"))))?;
    let mut notes = Vec::new();
    if read.sheets > 1 && sheet.is_none() {
        notes.push(say!("workbook-sheet-used", sheet = read.name, sheets = read.sheets));
    }
    if read.beyond > 0 {
        let column = letter(COLUMNS_MAX - 1);
        notes.push(say!("workbook-cells-beyond", cells = read.beyond, row = ROWS_MAX, column = column));
    }
    let (sections, of_table) = sections(path, &read.rows)?;
    notes.extend(of_table);
    Ok((sections, notes))
}

fn text_of(cell: &Data) -> String {
    match cell {
        Data::Float(v) => v.to_string(),
        Data::Int(v) => v.to_string(),
        Data::String(text) => start(text),
        other => start(&other.to_string()),
    }
}

/// The start of a cell's text. A long text may be stored once in a workbook and be used in each of its cells.
fn start(text: &str) -> String {
    text.trim().chars().take(CELL_MAX).collect()
}

fn broken(path: &Path, why: impl std::fmt::Display) -> Vec<Diag> {
    let what = say!("workbook-unreadable", file = path.display().to_string(), reason = why.to_string());
    vec![Diag::new(what).help(say!("workbook-unreadable-help"))]
}

/// Checks the size of a workbook before it is read, because a workbook can be made that unpacks to a thousand times its
/// size. What it unpacks to is counted. The sizes that it gives are not trusted.
fn bounded(path: &Path, bytes: &[u8]) -> Result<(), Vec<Diag>> {
    // Content that is not packed is no larger than its file.
    let Ok(mut parts) = ZipArchive::new(Cursor::new(bytes)) else { return Ok(()) };
    let too_large = |what: String| {
        let what = say!("workbook-too-large", file = path.display().to_string(), reason = what);
        Err(vec![Diag::new(what).help(say!("workbook-too-large-help"))])
    };
    if parts.len() > PARTS_MAX {
        return too_large(say!("workbook-parts", parts = parts.len(), most = PARTS_MAX));
    }
    let (mut all, mut buffer) = (0, vec![0; 64 * 1024]);
    // The part with the sheets of an OpenDocument workbook.
    let mut content = Vec::new();
    for i in 0..parts.len() {
        let Ok(mut part) = parts.by_index(i) else { continue };
        let mut size = 0;
        let sheets = part.name().is_ok_and(|name| name == "content.xml");
        if sheets {
            content.clear();
        }
        // If a part breaks off, the reader meets the same error later.
        while let Ok(read @ 1..) = part.read(&mut buffer) {
            size += read as u64;
            if sheets {
                content.extend(buffer.iter().take(read));
            }
            all += read as u64;
            if size > PART_MAX_MIB << 20 || all > PARTS_MAX_MIB << 20 {
                return too_large(say!("workbook-unpacked", part = PART_MAX_MIB, all = PARTS_MAX_MIB));
            }
        }
    }
    match repeats::cells(&String::from_utf8_lossy(&content)) {
        Some(cells) if cells <= CELLS_MAX => Ok(()),
        Some(cells) => too_large(say!("workbook-cells", cells = cells, most = CELLS_MAX)),
        None => Err(broken(path, say!("workbook-repeats"))),
    }
}

/// The cells of a sheet. If no sheet is named, those of the first.
fn read(path: &Path, bytes: &[u8], sheet: Option<&str>) -> Result<Sheet, Vec<Diag>> {
    let shown = path.display().to_string();
    let unreadable = |e: calamine::Error| broken(path, e);
    let mut book = open_workbook_auto_from_rs(Cursor::new(bytes)).map_err(unreadable)?;
    let names = book.sheet_names();
    let name = match sheet {
        Some(name) if names.iter().any(|n| n == name) => name.to_owned(),
        Some(name) => {
            return Err(vec![
                Diag::new(say!("workbook-no-sheet", file = shown, sheet = name))
                    .help(say!("workbook-no-sheet-help", sheets = names.join(", "))),
            ]);
        }
        None => match names.first() {
            Some(name) => name.clone(),
            None => return Err(vec![Diag::new(say!("workbook-no-sheets", file = shown))]),
        },
    };
    let mut rows = Rows::new();
    let mut beyond = 0;
    let mut put = |(row, column): (usize, usize), text: String| {
        if text.is_empty() {
            return;
        }
        if row >= ROWS_MAX || column >= COLUMNS_MAX {
            beyond += 1;
            return;
        }
        rows.resize(rows.len().max(row + 1), Vec::new());
        let Some(cells) = rows.get_mut(row) else { return };
        cells.resize(cells.len().max(column + 1), String::new());
        if let Some(cell) = cells.get_mut(column) {
            *cell = text;
        }
    };
    if let Sheets::Xlsx(book) = &mut book {
        // Cell by cell: for a whole range the library makes a rectangle, and one stray cell in the last row fills the
        // memory.
        let unreadable = |e| unreadable(calamine::Error::Xlsx(e));
        let mut cells = book.worksheet_cells_reader(&name).map_err(unreadable)?;
        while let Some(cell) = cells.next_cell().map_err(unreadable)? {
            let (row, column) = cell.get_position();
            let text = match cell.get_value() {
                DataRef::String(text) => start(text),
                DataRef::SharedString(text) => start(text),
                other => text_of(&Data::from(other.clone())),
            };
            put((row as usize, column as usize), text);
        }
    } else {
        let range = book.worksheet_range(&name).map_err(unreadable)?;
        let (row0, column0) = range.start().unwrap_or((0, 0));
        for (row, column, cell) in range.used_cells() {
            put((row0 as usize + row, column0 as usize + column), text_of(cell));
        }
    }
    Ok(Sheet { rows, beyond, sheets: names.len(), name })
}
