//! The long form of diagnostics: place, what is wrong, what to write instead, and the line of the file with a mark under
//! what is wrong.

use crate::diag::{Diag, Place};
use crate::shown;

/// A longer line is not shown, because nobody finds anything in it.
const LINE_MAX_BYTES: usize = 400;
/// Most characters that are shown in front of what is marked, of it, and behind it.
const PARTS_MAX: [usize; 3] = [60, 60, 40];
/// The lines of the file are indented by this.
const INDENT: &str = "    ";
/// Stands under every column of what is wrong.
const MARK: &str = "~";

/// All diagnostics in the long form, separated by empty lines.
///
/// ```
/// let diags = spanhold::input::read_job_text("job.yaml", "shaft: {nmae: spindle}\n", ".".as_ref()).unwrap_err();
/// let text = spanhold::input::render(&diags);
/// assert!(text.contains("job.yaml, line 1, column 9: ") && text.contains("Did you mean `name`?"));
/// ```
pub fn render(diags: &[Diag]) -> String {
    diags.iter().map(block).collect::<Vec<_>>().join("\n")
}

fn block(diag: &Diag) -> String {
    let mut out = format!("{}\n", shown::line(&diag.to_string()));
    if let Some([line, mark]) = diag.place.as_ref().and_then(marked) {
        out += &format!("{INDENT}{line}\n{INDENT}{mark}\n");
    }
    out
}

/// The line of a place without its indentation, and a line with marks under the place.
fn marked(place: &Place) -> Option<[String; 2]> {
    let text = &place.source.text;
    let line_start = text.get(..place.start)?.rfind('\n').map_or(0, |i| i + 1);
    let line = text.get(line_start..)?.lines().next()?;
    if line.trim().is_empty() || line.len() > LINE_MAX_BYTES {
        return None;
    }
    let from = (place.start - line_start).min(line.len());
    let to = place.end.saturating_sub(line_start).clamp(from, line.len());
    // Writing out control characters makes a text longer, so the marks are placed in the line as it is shown.
    let before = end_of(&shown::lines(line.get(..from)?.trim_start()), PARTS_MAX[0]);
    let marked = start_of(&shown::lines(line.get(from..to)?), PARTS_MAX[1]);
    let behind = start_of(&shown::lines(line.get(to..)?), PARTS_MAX[2]);
    let blank = |c: char| if c == '\t' { "\t".to_owned() } else { " ".repeat(columns(c)) };
    let blanks: String = before.chars().map(blank).collect();
    let marks = MARK.repeat(marked.chars().map(columns).sum::<usize>().max(1));
    Some([format!("{before}{marked}{behind}"), blanks + &marks])
}

fn start_of(text: &str, most: usize) -> String {
    let mut cut: String = text.chars().take(most).collect();
    if cut.len() < text.len() {
        cut.push('…');
    }
    cut
}

fn end_of(text: &str, most: usize) -> String {
    let beyond = text.chars().count().saturating_sub(most);
    let cut: String = text.chars().skip(beyond).collect();
    if beyond > 0 { format!("…{cut}") } else { cut }
}

/// Columns of a terminal that a character takes: none for accents of their own, two for the wide letters of East Asia.
fn columns(c: char) -> usize {
    match c {
        '\u{300}'..='\u{36f}' => 0,
        '\u{1100}'..='\u{115f}' | '\u{2e80}'..='\u{a4cf}' | '\u{ac00}'..='\u{d7a3}' | '\u{f900}'..='\u{faff}' => 2,
        '\u{ff01}'..='\u{ff60}' | '\u{1f300}'..='\u{1faff}' | '\u{20000}'..='\u{3fffd}' => 2,
        _ => 1,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diag::Source;
    use std::sync::Arc;

    fn lines(text: &str, marked: &str) -> Vec<String> {
        let start = text.find(marked).expect("in the text");
        let source = Arc::new(Source { path: "a.yaml".into(), text: text.into() });
        let place = Place { source, start, end: start + marked.len(), line: 1, column: 1 };
        render(&[Diag::new("wrong").at(Some(place))]).lines().skip(1).map(str::to_owned).collect()
    }

    #[test]
    fn the_mark_stands_under_the_place_as_it_is_shown() {
        assert_eq!(lines("  - {a: 25,5, b: 1}\n", "25,5"), ["    - {a: 25,5, b: 1}", "          ~~~~"]);
        assert_eq!(lines("{n: 軸, a: xy}", "xy"), ["    {n: 軸, a: xy}", "               ~~"]);
        assert_eq!(lines("{a:\txy}", "xy"), ["    {a:\txy}", "       \t~~"]);
        assert_eq!(lines("a: \u{1b}x", "x"), ["    a: \\u001bx", "             ~"]);
        assert!(lines("a\n", "\n").iter().all(|l| l == "    a" || l == "     ~"));
    }

    #[test]
    fn a_long_line_is_cut_around_the_place() {
        let long = format!("{}, b: xy, {}", "a".repeat(150), "c".repeat(150));
        let shown = lines(&long, "xy");
        assert_eq!(shown[0].chars().filter(|c| *c == '…').count(), 2);
        assert!(shown[0].chars().count() < 120 && shown[0].contains(", b: xy, ccc"), "{shown:?}");
        assert_eq!(shown[0].find("xy").map(|i| shown[0][..i].chars().count()), shown[1].find('~'));
        assert_eq!(lines(&format!("{}xy", "a".repeat(500)), "xy"), Vec::<String>::new());
    }
}
