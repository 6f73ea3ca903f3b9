//! Reads what a text of a drawing, or a cell of a table, says about a surface: diameter, tolerance, thread, roughness.

use crate::job::iso286;
use crate::job::thread::{Side, Thread};
pub use crate::units::INCH_MM;

/// What was read from a text.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Said {
    /// Whether it gives a diameter (`Ø`), not a length.
    pub diameter: bool,
    /// The number in it.
    pub number: Option<f64>,
    /// Written as in a job: `h6`, or `[-0.05, 0]`.
    pub tolerance: Option<String>,
    /// A thread.
    pub thread: Option<Thread>,
    /// Roughness in µm.
    pub ra_um: Option<f64>,
    /// Whether it says that its sizes are inches.
    inch: bool,
    /// The part that was not understood.
    pub unknown: Option<String>,
}

impl Said {
    /// A roughness and nothing else.
    pub fn roughness(ra_um: Option<f64>) -> Said {
        Said { ra_um, ..Said::default() }
    }
}

/// The plain text of a text in a drawing. `%%c` and formatting codes are resolved. Fractions that are stacked with `^`
/// or `/` become `upper/lower`.
pub fn plain(text: &str) -> String {
    let mut out = String::new();
    let mut rest = text;
    while let Some(c) = rest.chars().next() {
        let (code, behind) = rest.split_at_checked(3).unwrap_or_default();
        let lower = code.to_lowercase();
        if let Some(sign) = [("%%c", 'Ø'), ("%%p", '±'), ("%%d", '°')].iter().find(|(code, _)| *code == lower) {
            out.push(sign.1);
            rest = behind;
            continue;
        }
        if lower.starts_with("%%") && lower.ends_with(['u', 'o', 'k']) {
            rest = behind;
            continue;
        }
        rest = rest.strip_prefix(c).unwrap_or_default();
        match c {
            '{' | '}' => {}
            '\u{2205}' | '\u{2300}' | 'ø' => out.push('Ø'),
            '\\' => {
                let Some(code) = rest.chars().next() else { break };
                rest = rest.strip_prefix(code).unwrap_or_default();
                match code {
                    'P' | 'X' | '~' => out.push(' '),
                    '\\' | '{' | '}' => out.push(code),
                    'S' => {
                        let (stack, behind) = rest.split_once(';').unwrap_or((rest, ""));
                        out.push(' ');
                        out.push_str(&stack.replace(['^', '#'], "/"));
                        rest = behind;
                    }
                    'U' if rest.starts_with('+') => {
                        let (code, behind) = rest.split_at_checked(5).unwrap_or_default();
                        let hex = code.strip_prefix('+').and_then(|h| u32::from_str_radix(h, 16).ok());
                        if let Some(sign) = hex.and_then(char::from_u32) {
                            out.push(if matches!(sign, '\u{2205}' | '\u{2300}') { 'Ø' } else { sign });
                            rest = behind;
                        }
                    }
                    'L' | 'l' | 'O' | 'o' | 'K' | 'k' => {}
                    // A code with a value that ends at a semicolon: font, height, colour, width…
                    _ => rest = rest.split_once(';').map_or("", |(_, behind)| behind),
                }
            }
            c if c.is_whitespace() => out.push(' '),
            c => out.push(c),
        }
    }
    out.split_whitespace().collect::<Vec<_>>().join(" ")
}

/// A number with a point or a comma.
pub fn number(text: &str) -> Option<f64> {
    let text = text.trim().replace(',', ".");
    let digits = text.trim_start_matches(['+', '-']);
    let plain = !digits.is_empty() && digits.chars().all(|c| c.is_ascii_digit() || c == '.');
    text.parse().ok().filter(|_| plain)
}

/// Reads a plain text. Its sizes are in mm unless it says otherwise.
pub fn read(text: &str) -> Said {
    read_in(text, 1.0)
}

/// Reads a plain text. `unit_mm` is the unit of its diameter and deviations if it names none.
pub fn read_in(text: &str, unit_mm: f64) -> Said {
    let mut said = Said::default();
    // A designation with blanks in it is not read word by word.
    if let Some(thread) = designation(text).filter(|_| text.contains("UN") || text.starts_with(['G', 'T'])) {
        said.thread = Some(thread);
        return said;
    }
    // Spaces separate the parts, so parts that belong together are joined first.
    let text = text.replace("Ø ", "Ø").replace("± ", "±").replace(" x ", "x").replace(" × ", "x").replace('×', "x");
    let text = text.replace(" / ", "/").replace("Ra ", "Ra");
    let mut unknown: Vec<String> = Vec::new();
    let mut limits: Vec<f64> = Vec::new();
    for word in text.split_whitespace() {
        if !one(word, &mut said, &mut limits) {
            unknown.push(word.to_owned());
        }
    }
    let unit_mm = if said.inch { INCH_MM } else { unit_mm };
    let mm = |v: f64| if unit_mm == 1.0 { v } else { (v * unit_mm * 1e6).round() / 1e6 };
    said.number = said.number.map(mm);
    match limits[..] {
        [] => {}
        [a, b] if said.tolerance.is_none() && a != b => {
            said.tolerance = Some(format!("[{}, {}]", mm(a.min(b)), mm(a.max(b))));
        }
        _ => unknown.push(limits.iter().map(f64::to_string).collect::<Vec<_>>().join(" ")),
    }
    if !unknown.is_empty() {
        said.unknown = Some(unknown.join(" "));
    }
    said
}

/// Whether a word is a unit that may follow a size. Inches are noted in `said`.
fn unit(word: &str, said: &mut Said) -> bool {
    let inch = ["in", "in.", "inch", "\"", "″"].contains(&word);
    said.inch |= inch;
    inch || word == "mm"
}

/// Reads one word. Returns whether it was understood.
fn one(word: &str, said: &mut Said, limits: &mut Vec<f64>) -> bool {
    if word == "<>" {
        return true;
    }
    if let Some(rest) = word.strip_prefix('Ø') {
        if said.diameter {
            return false;
        }
        said.diameter = true;
        return rest.is_empty() || rest == "<>" || size(rest, said, limits);
    }
    let lower = word.to_lowercase();
    if let Some(ra) = lower.strip_prefix("ra").and_then(number).filter(|ra| *ra > 0.0) {
        return said.ra_um.replace(ra).is_none();
    }
    let behind = ["M", "Tr", "G"].into_iter().find_map(|form| word.strip_prefix(form));
    if behind.is_some_and(|behind| behind.starts_with(|c: char| c.is_ascii_digit())) {
        return designation(word).is_some_and(|thread| said.thread.replace(thread).is_none());
    }
    if let Some(both) = word.strip_prefix('±').and_then(number) {
        limits.extend([-both.abs(), both.abs()]);
        return true;
    }
    if is_class(word, said) {
        return said.tolerance.replace(word.to_owned()).is_none();
    }
    if let Some((a, b)) = word.split_once('/')
        && let (Some(a), Some(b)) = (number(a), number(b))
    {
        limits.extend([a, b]);
        return true;
    }
    if word.starts_with(['+', '-']) || (word == "0" && said.number.is_some()) {
        return number(word).map(|v| limits.push(v)).is_some();
    }
    (said.number.is_some() && unit(word, said)) || size(word, said, limits)
}

/// The thread of a shaft that a text names.
fn designation(text: &str) -> Option<Thread> {
    Thread::parse(text).and_then(|thread| thread.on(Side::External)).ok()
}

/// A diameter in the table for which each class of it exists, mm.
const ANY_CLASS_MM: f64 = 30.0;

/// Whether a text is a tolerance class and nothing else.
pub fn is_any_class(text: &str) -> bool {
    iso286::shaft_limits(text, ANY_CLASS_MM).is_ok()
}

/// Whether a word is a tolerance class. `d8`, `r5`, `s3` and `t4` may also be a diameter, a radius, a width or a depth, so they count behind a
/// size only. `x` stands between two sizes and never counts.
fn is_class(word: &str, said: &Said) -> bool {
    let sized = said.diameter || said.number.is_some();
    let meant = match word.as_bytes().first() {
        Some(b'x') => false,
        Some(b'd' | b'r' | b's' | b't' | b'u') => sized,
        _ => true,
    };
    meant && is_any_class(word)
}

/// Reads a number and what may follow it directly: `18h6`, `18±0.1`, `18+0.1/-0.2`.
fn size(word: &str, said: &mut Said, limits: &mut Vec<f64>) -> bool {
    let end = word.find(|c: char| !c.is_ascii_digit() && c != '.' && c != ',').unwrap_or(word.len());
    let (digits, behind) = word.split_at(end);
    let Some(value) = number(digits).filter(|_| said.number.is_none()) else { return false };
    said.number = Some(value);
    behind.is_empty() || unit(behind, said) || one(behind, said, limits)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(text: &str) -> Said {
        read(&plain(text))
    }

    #[test]
    fn codes_of_drawings_are_resolved() {
        for (text, says) in [
            ("%%c18 h6", "Ø18 h6"),
            ("%%C<> %%p0.1", "Ø<> ±0.1"),
            ("{\\fArial|b0;\\H2.5;\\U+220518} h6", "Ø18 h6"),
            ("%%c20 \\S+0.02^-0.01;", "Ø20 +0.02/-0.01"),
            ("a\\Pb", "a b"),
            ("%%uM16x1.5", "M16x1.5"),
            ("\\", ""),
        ] {
            assert_eq!(plain(text), says, "{text}");
        }
    }

    #[test]
    fn diameters_tolerances_threads_and_roughness() {
        let of = |t: &str| {
            let s = said(t);
            (s.diameter, s.number, s.tolerance, s.thread.map(|t| t.designation), s.ra_um)
        };
        let h6 = Some("h6".to_owned());
        assert_eq!(of("%%c18 h6"), (true, Some(18.0), h6.clone(), None, None));
        assert_eq!(of("Ø18h6 Ra 0,8"), (true, Some(18.0), h6.clone(), None, Some(0.8)));
        assert_eq!(of("%%c<> h6"), (true, None, h6, None, None));
        assert_eq!(of("Ø 20 ±0.1"), (true, Some(20.0), Some("[-0.1, 0.1]".into()), None, None));
        assert_eq!(of("%%c20 \\S+0.02^-0.01;"), (true, Some(20.0), Some("[-0.01, 0.02]".into()), None, None));
        assert_eq!(of("Ø20 0/-0,05"), (true, Some(20.0), Some("[-0.05, 0]".into()), None, None));
        assert_eq!(of("M16x1,5-6g"), (false, None, None, Some("M16x1.5-6g".into()), None));
        for (text, thread) in [
            ("Tr 20x4 - 7e", "Tr20x4-7e"),
            ("Tr20x4-7e", "Tr20x4-7e"),
            ("G 1/4 A", "G1/4A"),
            ("1/4-20 UNC 2A", "1/4-20 UNC-2A"),
        ] {
            assert_eq!(of(text), (false, None, None, Some(thread.into()), None));
        }
        // The class of a thread in a hole, and numbers that only look like a thread.
        assert!(said("M16-6H").thread.is_none() && said("10-24").thread.is_none());
        assert_eq!(of("M16 x 1.5"), (false, None, None, Some("M16x1.5".into()), None));
        assert_eq!(of("120"), (false, Some(120.0), None, None, None));
        assert_eq!(of("Ø18 r6"), (true, Some(18.0), Some("r6".into()), None, None));
        assert_eq!(of("Ø30t6"), (true, Some(30.0), Some("t6".into()), None, None));
        // A radius, a depth, a hole of 3 mm that is 8 mm deep.
        for text in ["r5", "t6", "Ø3 x 8", "12x5"] {
            assert!(said(text).tolerance.is_none() && said(text).unknown.is_some(), "{text}");
        }
    }

    /// 0.5 in are 12.7 mm, 0.001 in are 25.4 µm.
    #[test]
    fn inches_become_mm_where_they_are_named() {
        let of = |said: Said| (said.number, said.tolerance, said.unknown);
        let wanted = (Some(12.7), Some("[-0.0127, 0.0254]".to_owned()), None);
        for text in ["Ø0.5in +0.001/-0.0005", "Ø0.5 in +0.001/-0.0005", "Ø0.5\" +0.001 -0.0005"] {
            assert_eq!(of(said(text)), wanted, "{text}");
        }
        assert_eq!(of(read_in("Ø0.5 +0.001/-0.0005", INCH_MM)), wanted);
        assert_eq!(of(said("Ø1in h6")), (Some(25.4), Some("h6".into()), None));
        assert_eq!(of(said("Ø12.7mm ±0.1")), (Some(12.7), Some("[-0.1, 0.1]".into()), None));
    }

    #[test]
    fn what_is_not_understood_is_kept() {
        assert_eq!(said("Ø18 H7").unknown.as_deref(), Some("H7"));
        assert_eq!(said("harden and grind").unknown.as_deref(), Some("harden and grind"));
        assert_eq!(said("Ø18 h6 h7").unknown.as_deref(), Some("h7"));
        assert_eq!(said("M16x99").unknown.as_deref(), Some("M16x99"));
        assert_eq!(said("Ø18 +0.1").unknown.as_deref(), Some("0.1"));
    }
}
