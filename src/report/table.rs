//! Plain text: tables that stay aligned and within a width, and wrapped sentences.

/// Alignment of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Align {
    /// Words.
    Left,
    /// Numbers.
    Right,
}

/// The head of a column.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Head {
    /// Title.
    pub title: &'static str,
    /// Its alignment.
    pub align: Align,
    /// Whether its cells may be cut with an ellipsis when the table is too wide.
    pub may_shrink: bool,
}

/// A column of numbers.
pub const fn number(title: &'static str) -> Head {
    Head { title, align: Align::Right, may_shrink: false }
}

/// A column of words.
pub const fn words(title: &'static str) -> Head {
    Head { title, align: Align::Left, may_shrink: true }
}

/// Space between columns.
const GAP: usize = 2;

/// No column is cut below this.
const NARROWEST: usize = 4;

/// Columns a character takes in a terminal: two for the wide scripts of East Asia and for pictures, none for combining
/// marks and joiners, else one. Ranges of Unicode Standard Annex #11, shortened; from memory, not re-read.
fn char_columns(c: char) -> usize {
    match c as u32 {
        0x0300..=0x036F | 0x200B..=0x200F | 0x20D0..=0x20FF | 0xFE00..=0xFE0F | 0xFE20..=0xFE2F => 0,
        0x1100..=0x115F | 0x2E80..=0xA4CF | 0xAC00..=0xD7A3 | 0xF900..=0xFAFF | 0xFE30..=0xFE4F | 0xFF00..=0xFF60 => 2,
        0xFFE0..=0xFFE6 | 0x1F300..=0x1FAFF | 0x20000..=0x3FFFD => 2,
        _ => 1,
    }
}

/// Columns a text takes.
pub fn columns(text: &str) -> usize {
    text.chars().map(char_columns).sum()
}

/// The text, cut with an ellipsis if it takes more than `width` columns.
pub fn fit(text: &str, width: usize) -> String {
    if columns(text) <= width {
        return text.to_string();
    }
    let mut out = String::new();
    let mut used = 0;
    for c in text.chars() {
        if used + char_columns(c) + 1 > width {
            break;
        }
        used += char_columns(c);
        out.push(c);
    }
    format!("{}…", out.trim_end())
}

/// A table with a head and a rule, indented by two, no line longer than `width`.
pub fn render(heads: &[Head], rows: &[Vec<String>], width: usize) -> String {
    let mut widths: Vec<usize> = heads.iter().map(|h| columns(h.title)).collect();
    for row in rows {
        for (w, cell) in widths.iter_mut().zip(row) {
            *w = (*w).max(columns(cell));
        }
    }
    shrink(heads, &mut widths, width.saturating_sub(GAP + GAP * heads.len().saturating_sub(1)));
    let mut out = line(heads, &widths, heads.iter().map(|h| h.title));
    out.push_str(&line(
        heads,
        &widths,
        widths.iter().map(|&w| "-".repeat(w)).collect::<Vec<_>>().iter().map(String::as_str),
    ));
    for row in rows {
        out.push_str(&line(heads, &widths, row.iter().map(String::as_str)));
    }
    out
}

/// Takes from the widest column that may shrink, then from any, until the columns fit.
fn shrink(heads: &[Head], widths: &mut [usize], room: usize) {
    while widths.iter().sum::<usize>() > room {
        let wide = widths.iter_mut().zip(heads).filter(|(width, _)| **width > NARROWEST);
        match wide.max_by_key(|(width, head)| (head.may_shrink, **width)) {
            Some((width, _)) => *width -= 1,
            None => return,
        }
    }
}

fn line<'a>(heads: &[Head], widths: &[usize], cells: impl Iterator<Item = &'a str>) -> String {
    let mut out = String::new();
    for ((head, &width), cell) in heads.iter().zip(widths).zip(cells) {
        let cell = fit(cell, width);
        let blank = " ".repeat(width.saturating_sub(columns(&cell)));
        out.push_str(&" ".repeat(GAP));
        match head.align {
            Align::Left => out.push_str(&format!("{cell}{blank}")),
            Align::Right => out.push_str(&format!("{blank}{cell}")),
        }
    }
    format!("{}\n", out.trim_end())
}

/// A sentence in lines of at most `width` columns: the first starts with `first`, the others with as many spaces. A word
/// longer than a line is cut.
pub fn wrap(first: &str, text: &str, width: usize) -> String {
    let indent = columns(first);
    let room = width.saturating_sub(indent).max(NARROWEST);
    let mut lines: Vec<String> = Vec::new();
    let mut current = String::new();
    for word in text.split_whitespace() {
        let word = fit(word, room);
        if !current.is_empty() && columns(&current) + 1 + columns(&word) > room {
            lines.push(std::mem::take(&mut current));
        }
        if !current.is_empty() {
            current.push(' ');
        }
        current.push_str(&word);
    }
    lines.push(current);
    let mut out = String::new();
    for (i, line) in lines.iter().enumerate() {
        let lead = if i == 0 { first.to_string() } else { " ".repeat(indent) };
        out.push_str(format!("{lead}{line}").trim_end());
        out.push('\n');
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_long_cell_is_cut_and_the_table_stays_aligned() {
        let heads = [number("no"), words("name"), number("mm")];
        let rows = vec![
            vec!["1".into(), "short".into(), "12.5".into()],
            vec!["2".into(), "a name that is much too long".into(), "3".into()],
        ];
        let expected =
            "  no  name            mm\n  --  ------------  ----\n   1  short         12.5\n   2  a name that…     3\n";
        assert_eq!(render(&heads, &rows, 24), expected);
    }

    #[test]
    fn wide_characters_count_twice_and_marks_not_at_all() {
        assert_eq!(columns("軸受"), 4);
        assert_eq!(columns("e\u{301}"), 1);
        assert_eq!(fit("軸受軸受", 5), "軸受…");
    }

    #[test]
    fn sentences_wrap_under_their_first_word() {
        assert_eq!(wrap("1. ", "one two three four", 12), "1. one two\n   three\n   four\n");
        assert_eq!(wrap("", "", 12), "\n");
    }

    #[test]
    fn a_word_longer_than_the_line_is_cut() {
        assert_eq!(wrap("- ", "abcdefghijklmnop", 10), "- abcdefg…\n");
    }
}
