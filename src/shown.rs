//! Text that is shown as it is: characters that a terminal or an editor would obey and not show are written out.

use std::borrow::Cow;

/// Whether a character steers what shows it in place of being seen: controls (ESC and U+009B among them), marks and
/// overrides of the direction, line separators, the byte order mark, and code points that XML forbids.
pub fn steers(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{061C}' | '\u{200E}' | '\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
        || matches!(c, '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}' | '\u{FFFE}' | '\u{FFFF}')
}

/// A text of lines with all that steers written out, as `\u001b`: line ends and tabs stay. In a string of JSON, or a quoted
/// one of YAML, this is the same character.
///
/// ```
/// assert_eq!(spanhold::shown::lines("a\u{1b}[2J\n"), "a\\u001b[2J\n");
/// ```
pub fn lines(text: &str) -> Cow<'_, str> {
    written_out(text, |c| steers(c) && !matches!(c, '\n' | '\t'))
}

/// The same of a text that stays one line.
///
/// ```
/// assert_eq!(spanhold::shown::line("a\nb"), "a\\u000ab");
/// ```
pub fn line(text: &str) -> Cow<'_, str> {
    written_out(text, steers)
}

fn written_out(text: &str, out: impl Fn(char) -> bool) -> Cow<'_, str> {
    // Most texts have none.
    if !text.chars().any(&out) {
        return Cow::Borrowed(text);
    }
    let mut shown = String::with_capacity(text.len() + 16);
    for c in text.chars() {
        if out(c) {
            shown.push_str(&format!("\\u{:04x}", u32::from(c)));
        } else {
            shown.push(c);
        }
    }
    Cow::Owned(shown)
}
