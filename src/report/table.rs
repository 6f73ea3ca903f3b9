//! Plain text: tables that stay aligned and within a width, and wrapped sentences.

use unicode_linebreak::linebreaks;
use unicode_width::UnicodeWidthChar;

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

/// Columns a character takes in a terminal: two for the wide scripts of East Asia and for pictures, none for combining marks and joiners,
/// else one (Unicode Standard Annex #11).
fn char_columns(c: char) -> usize {
    c.width().unwrap_or(0)
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

/// The pieces of a text between which a line may end, each with whether a blank stands before it: words, and in scripts without blanks what
/// stands between the breaks of Unicode Standard Annex #14.
pub fn pieces(text: &str) -> Vec<(bool, &str)> {
    let mut all = Vec::new();
    let wide = |c: Option<char>| c.is_some_and(|c| char_columns(c) == 2);
    for word in text.split_whitespace() {
        let mut rest = word;
        for (at, _) in linebreaks(word) {
            let (before, after) = word.split_at(at);
            if after.is_empty() || wide(before.chars().next_back()) || wide(after.chars().next()) {
                let (piece, behind) = rest.split_at(rest.len() - after.len());
                all.push((rest.len() == word.len(), piece));
                rest = behind;
            }
        }
    }
    all
}

/// A sentence in lines of at most `width` columns: the first starts with `first`, the others with as many spaces. A word
/// longer than a line is cut.
pub fn wrap(first: &str, text: &str, width: usize) -> String {
    let indent = columns(first);
    let room = width.saturating_sub(indent).max(NARROWEST);
    let mut lines: Vec<String> = Vec::new();
    let mut current = String::new();
    for (blank, piece) in pieces(text) {
        let piece = fit(piece, room);
        let blank = usize::from(blank && !current.is_empty());
        if !current.is_empty() && columns(&current) + blank + columns(&piece) > room {
            lines.push(std::mem::take(&mut current));
        } else {
            current.push_str(&" ".repeat(blank));
        }
        current.push_str(&piece);
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
    fn scripts_without_blanks_wrap_where_the_standard_lets_them_and_lose_nothing() {
        // No line begins with a full stop.
        assert_eq!(wrap("- ", "棒材が曲がります。停止 2 mm で", 14), "- 棒材が曲がり\n  ます。停止 2\n  mm で\n");
        assert_eq!(pieces("a-b/c d"), [(true, "a-b/c"), (true, "d")]);
    }

    #[test]
    fn a_word_longer_than_the_line_is_cut() {
        assert_eq!(wrap("- ", "abcdefghijklmnop", 10), "- abcdefg…\n");
    }
}
