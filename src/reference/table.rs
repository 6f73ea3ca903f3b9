//! A table of words: as text within a width, cells on several lines, and as Markdown.

use std::fmt::Write;

/// Space between the columns of the text.
const GAP: usize = 2;

/// A table. The first column holds keys or names.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// Line above the table; empty: none.
    pub title: String,
    /// Heads of the columns.
    pub heads: Vec<&'static str>,
    /// Cells, as many in each row as there are heads.
    pub rows: Vec<Vec<String>>,
}

impl Table {
    /// The table as text. No line is longer than `width`, unless single words are.
    pub fn text(&self, width: usize) -> String {
        let widths = self.widths(width);
        let rule: Vec<String> = widths.iter().map(|w| "-".repeat(*w)).collect();
        let heads: Vec<String> = self.heads.iter().map(|h| (*h).to_owned()).collect();
        let mut out = if self.title.is_empty() { String::new() } else { wrapped(&self.title, width) + "\n" };
        for row in [&heads, &rule].into_iter().chain(&self.rows) {
            let cells: Vec<Vec<String>> = row.iter().zip(&widths).map(|(cell, w)| lines(cell, *w)).collect();
            for i in 0..cells.iter().map(Vec::len).max().unwrap_or(0) {
                let mut line = String::new();
                for (cell, &w) in cells.iter().zip(&widths) {
                    let part = cell.get(i).map_or("", String::as_str);
                    let _ = write!(line, "{:GAP$}{part:<w$}", "");
                }
                out.push_str(line.trim_end());
                out.push('\n');
            }
        }
        out
    }

    /// Widths of the columns: those of the longest cells, made narrower where it costs the fewest lines until the table fits.
    fn widths(&self, width: usize) -> Vec<usize> {
        let columns = |of: &dyn Fn(&str) -> usize| -> Vec<usize> {
            let cells = |i: usize| self.rows.iter().filter_map(move |row| row.get(i)).map(String::as_str);
            self.heads.iter().enumerate().map(|(i, h)| cells(i).chain([*h]).map(of).max().unwrap_or(0)).collect()
        };
        let mut widths = columns(&|cell| cell.chars().count());
        let least = columns(&|cell| cell.split(' ').map(|word| word.chars().count()).max().unwrap_or(0));
        let room = width.saturating_sub(GAP * widths.len());
        while widths.iter().sum::<usize>() > room {
            let narrower = (0..widths.len()).filter_map(|i| {
                let mut tried = widths.clone();
                let column = tried.get_mut(i).filter(|w| Some(&**w) > least.get(i))?;
                let was = *column;
                *column -= 1;
                Some((self.height(&tried), std::cmp::Reverse(was), tried))
            });
            let Some((_, _, best)) = narrower.min() else { break };
            widths = best;
        }
        widths
    }

    /// Lines that the rows take.
    fn height(&self, widths: &[usize]) -> usize {
        let of = |row: &Vec<String>| row.iter().zip(widths).map(|(cell, w)| lines(cell, *w).len()).max().unwrap_or(0);
        self.rows.iter().map(of).sum()
    }

    /// The table as Markdown.
    pub fn markdown(&self) -> String {
        let cells = |row: Vec<String>| format!("| {} |\n", row.join(" | "));
        let mut out = if self.title.is_empty() { String::new() } else { format!("{}\n\n", self.title) };
        out.push_str(&cells(self.heads.iter().map(|h| (*h).to_owned()).collect()));
        out.push_str(&format!("|{}\n", "---|".repeat(self.heads.len())));
        for row in &self.rows {
            let named = row.iter().enumerate().map(|(i, cell)| {
                let cell = cell.replace('|', "\\|");
                if i == 0 { format!("`{cell}`") } else { cell }
            });
            out.push_str(&cells(named.collect()));
        }
        out
    }
}

/// A cell on lines of at most `width` columns; a longer word has a line to itself.
fn lines(text: &str, width: usize) -> Vec<String> {
    let mut lines = vec![String::new()];
    for word in text.split(' ') {
        match lines.last_mut() {
            Some(line) if line.is_empty() => line.push_str(word),
            Some(line) if line.chars().count() + 1 + word.chars().count() <= width => {
                line.push(' ');
                line.push_str(word);
            }
            _ => lines.push(word.to_owned()),
        }
    }
    lines
}

/// A text with each of its lines broken at `width` columns; spaces that begin a line begin its further lines too.
pub fn wrapped(text: &str, width: usize) -> String {
    let mut out = String::new();
    for line in text.lines() {
        let words = line.trim_start();
        let indent = line.len() - words.len();
        for part in lines(words, width.saturating_sub(indent)) {
            let _ = writeln!(out, "{}", format!("{:indent$}{part}", "").trim_end());
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table() -> Table {
        let row = |cells: [&str; 3]| cells.map(str::to_owned).to_vec();
        let rows = vec![row(["ra", "roughness of the turned surface", "0.01 | 100"]), row(["name", "text", ""])];
        Table { title: "a section".into(), heads: vec!["key", "meaning", "takes"], rows }
    }

    #[test]
    fn a_wide_cell_goes_on_below_itself() {
        let expected = "a section\n\n  key   meaning           takes\n  ----  ----------------  ------\n  ra    roughness of the  0.01 |\n        \
                        turned surface    100\n  name  text\n";
        assert_eq!(table().text(32), expected);
        assert!(table().text(20).lines().all(|l| l.chars().count() <= 32), "columns keep their longest word");
    }

    #[test]
    fn a_bar_in_a_cell_does_not_end_it_in_markdown() {
        let expected = "a section\n\n| key | meaning | takes |\n|---|---|---|\n\
                        | `ra` | roughness of the turned surface | 0.01 \\| 100 |\n| `name` | text |  |\n";
        assert_eq!(table().markdown(), expected);
    }

    #[test]
    fn further_lines_keep_the_indent() {
        assert_eq!(wrapped("one two\n\n  three four", 8), "one two\n\n  three\n  four\n");
    }
}
