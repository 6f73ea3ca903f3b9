//! Makes text safe to show. Characters that a terminal or an editor would obey instead of showing are written out.

use std::borrow::Cow;

/// Whether a character controls the display instead of being shown: control characters (with ESC and U+009B), marks and
/// overrides of the direction, line separators, the byte order mark, and code points that XML forbids.
pub fn steers(c: char) -> bool {
    c.is_control()
        || matches!(c, '\u{061C}' | '\u{200E}' | '\u{200F}' | '\u{2028}'..='\u{202E}' | '\u{2066}'..='\u{2069}')
        || matches!(c, '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}' | '\u{FFFE}' | '\u{FFFF}')
}

/// A text of several lines in which all such characters are written out, as `\u001b`. Line ends and tabs stay. In a
/// JSON string, or a quoted YAML string, the written-out form means the same character.
///
/// ```
/// assert_eq!(spanhold::shown::lines("a\u{1b}[2J\n"), "a\\u001b[2J\n");
/// ```
pub fn lines(text: &str) -> Cow<'_, str> {
    written_out(text, |c| steers(c) && !matches!(c, '\n' | '\t'))
}

/// The same for a text that is to stay one line: line ends and tabs are written out too.
///
/// ```
/// assert_eq!(spanhold::shown::line("a\nb"), "a\\u000ab");
/// ```
pub fn line(text: &str) -> Cow<'_, str> {
    written_out(text, steers)
}

fn written_out(text: &str, out: impl Fn(char) -> bool) -> Cow<'_, str> {
    // Most texts have no such character.
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
