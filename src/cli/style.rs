//! Bold and colour on a terminal, from the tones of a text.

use crate::report::{Styled, Tone};
use crate::shown;
use std::ffi::OsStr;
use std::io::IsTerminal;

/// Ends bold and colour.
const PLAIN: &str = "\u{1b}[0m";

/// What a terminal is told before a part with a tone: bold, bold green, bold red, yellow.
fn begins(tone: Tone) -> &'static str {
    match tone {
        Tone::Title => "\u{1b}[1m",
        Tone::Feasible => "\u{1b}[1;32m",
        Tone::NotFeasible => "\u{1b}[1;31m",
        Tone::NearLimit => "\u{1b}[33m",
    }
}

/// Whether stdout shows bold and colour: a terminal that is not a dumb one, and the user does not want it plain
/// (`NO_COLOR`, <https://no-color.org>).
pub fn wanted() -> bool {
    let told = |name: &str| std::env::var_os(name);
    // Old consoles of Windows print the sequences as they are; newer terminals tell their name.
    let understood = !cfg!(windows) || told("WT_SESSION").is_some() || told("TERM").is_some();
    std::io::stdout().is_terminal() && understood && is_asked(told("NO_COLOR").as_deref(), told("TERM").as_deref())
}

/// Whether the user's settings allow colour.
fn is_asked(no_color: Option<&OsStr>, term: Option<&OsStr>) -> bool {
    no_color.is_none_or(OsStr::is_empty) && term != Some(OsStr::new("dumb"))
}

/// The text for a terminal, with bold and colour if `coloured`. Characters that would control the terminal are written
/// out in every piece, so no text of a user can begin a sequence.
pub fn painted(text: &Styled, coloured: bool) -> String {
    let mut out = String::new();
    for (tone, piece) in text.pieces() {
        let piece = shown::lines(piece);
        match tone.filter(|_| coloured) {
            Some(tone) => out += &format!("{}{piece}{PLAIN}", begins(tone)),
            None => out += &piece,
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_text_of_a_user_begins_a_sequence() {
        let mut text = Styled::default();
        text.push_as(Tone::Feasible, "FEASIBLE\u{1b}[2J");
        text.push("  rod \u{1b}]0;x\u{7} \u{9b}31m 97 %\n");
        text.mark("97 %", Tone::NearLimit);
        let plain = "FEASIBLE\\u001b[2J  rod \\u001b]0;x\\u0007 \\u009b31m 97 %\n";
        assert_eq!(painted(&text, false), plain);
        let coloured = painted(&text, true);
        assert_eq!(coloured.replace("\u{1b}[1;32m", "").replace("\u{1b}[33m", "").replace("\u{1b}[0m", ""), plain);
        assert_eq!(coloured.matches('\u{1b}').count(), 4);
    }

    #[test]
    fn settings_that_ask_for_plain_text_are_followed() {
        let asked =
            |no_color: Option<&str>, term: Option<&str>| is_asked(no_color.map(OsStr::new), term.map(OsStr::new));
        assert!(asked(None, Some("xterm")) && asked(Some(""), None));
        assert!(!asked(Some("1"), Some("xterm")) && !asked(None, Some("dumb")));
    }
}
