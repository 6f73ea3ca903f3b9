//! Counts the cells of an OpenDocument sheet. One cell or one row in the file may stand for any number of them.

/// Most cells that are counted in one row. The reader takes no more either.
const ROW_MAX: u64 = 16_384;

/// Number of cells that the reader makes of the sheets in a `content.xml`: the cells up to the last one of each row,
/// and for each sheet the rectangle up to its last row with a value. `None` if a number of repeats is not a number.
pub fn cells(xml: &str) -> Option<u64> {
    let (mut all, mut sheet, mut row) = (0u64, Sheet::default(), Row::default());
    for tag in xml.split('<').skip(1) {
        if starts(tag, "table:table-row") {
            row = Row { repeats: repeats(tag, "table:number-rows-repeated")?, ..Row::default() };
        } else if starts(tag, "table:table-cell") || starts(tag, "table:covered-table-cell") {
            row.add(repeats(tag, "table:number-columns-repeated")?, tag);
        } else if starts(tag, "/table:table-row") {
            all = all.saturating_add(row.width());
            sheet.add(&row);
        } else if starts(tag, "/table:table") {
            all = all.saturating_add(sheet.height.saturating_mul(sheet.width));
            sheet = Sheet::default();
        }
    }
    Some(all)
}

fn starts(tag: &str, name: &str) -> bool {
    tag.strip_prefix(name).is_some_and(|rest| rest.starts_with([' ', '\t', '\r', '\n', '>', '/']))
}

/// The number of repeats that a tag gives. If it gives several, the largest.
fn repeats(tag: &str, name: &str) -> Option<u64> {
    let mut most = None;
    for (at, _) in tag.match_indices(name) {
        let value = tag.get(at + name.len()..)?.trim_start().strip_prefix('=')?.trim_start();
        let digits: String =
            value.strip_prefix(['"', '\''])?.chars().take_while(|c| !matches!(c, '"' | '\'')).collect();
        most = most.max(Some(digits.parse::<u64>().ok()?));
    }
    Some(most.unwrap_or(1))
}

#[derive(Default)]
struct Row {
    repeats: u64,
    /// Cells in front of the last one.
    before: u64,
    /// Number of cells that the last one stands for.
    last: u64,
    /// Whether the last cell has a value, and whether any cell has one.
    last_says: bool,
    says: bool,
}

impl Row {
    fn add(&mut self, repeats: u64, tag: &str) {
        self.before = self.before.saturating_add(self.last).min(ROW_MAX);
        self.last = repeats;
        self.last_says = tag.contains("office:") || tag.contains("formula");
        self.says |= self.last_says;
    }

    /// Number of cells that are made of the row. An empty cell at its end is not made.
    fn width(&self) -> u64 {
        let last = if self.last_says { self.last } else { 0 };
        self.before.saturating_add(last).min(ROW_MAX)
    }
}

#[derive(Default)]
struct Sheet {
    rows: u64,
    /// Rows up to the last one with a value.
    height: u64,
    width: u64,
}

impl Sheet {
    fn add(&mut self, row: &Row) {
        self.rows = self.rows.saturating_add(row.repeats);
        if row.says {
            self.height = self.rows;
            self.width = self.width.max(row.width());
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn row(repeats: &str, cells: &str) -> String {
        format!("<table:table-row table:number-rows-repeated={repeats}>{cells}</table:table-row>")
    }

    fn cell(repeats: u64, says: &str) -> String {
        format!("<table:table-cell table:number-columns-repeated = '{repeats}'{says}/>")
    }

    #[test]
    fn cells_are_those_that_the_reader_makes() {
        let says = " office:value-type=\"float\"";
        let sheet = |rows: &str| cells(&format!("<table:table>{rows}</table:table>"));
        // Endless empty rows and cells behind those with a value are not counted.
        let usual = row("\"1\"", &(cell(3, says) + &cell(16_381, ""))) + &row("\"1048575\"", &cell(16_384, ""));
        assert_eq!(sheet(&usual), Some(3 + 3));
        // A rectangle of three columns down to the last row with a value.
        let far = row("\"1\"", &cell(3, says)) + &row("\"999998\"", &cell(3, "")) + &row("\"1\"", &cell(1, says));
        assert_eq!(sheet(&far), Some(3 + 1 + 3_000_000));
        assert_eq!(sheet(&row("\"1000\"", &cell(99_999, says))), Some(ROW_MAX + 1000 * ROW_MAX));
        // Empty cells in front of others are made, even if none has a value.
        assert_eq!(sheet(&row("\"1\"", &(cell(16_000, "") + &cell(1, "")))), Some(16_000));
        for wrong in ["\"&#49;0\"", "\"-1\"", "1", "\"99999999999999999999999\""] {
            assert_eq!(sheet(&row(wrong, &cell(1, says))), None, "{wrong}");
        }
    }
}
