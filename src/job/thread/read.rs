//! Reads designations.

use super::sizes::{self, NUMBER_MAX, SERIES, Size};
use super::write::written;
use super::{Form, INCH_MM, Series, Side, Thread, class};
use crate::diag::Diag;
use crate::say;

/// Smallest accepted ratio of minor to major diameter. Below it the text is taken for a mistake. The coarsest thread of
/// ISO 261 (M1) has 0.69.
const MINOR_SHARE_MIN: f64 = 0.5;
/// Finest accepted pitch, mm. The finest of ISO 261 is 0.2.
const PITCH_MIN_MM: f64 = 0.1;
/// Most starts of a thread.
const STARTS_MAX: f64 = 12.0;
/// Fewest threads per inch of a size that is a number: the coarsest of ASME B1.1 has 24.
const NUMBER_TPI_MIN: u32 = 24;
/// Most characters of a text that a message repeats.
const SHOWN_MAX: usize = 40;

/// What is left of a text to read.
struct Rest<'a>(&'a str);

impl<'a> Rest<'a> {
    fn skip(&mut self) {
        self.0 = self.0.trim_start();
    }

    /// Takes a word in capitals or not, after blanks.
    fn eat(&mut self, word: &str) -> bool {
        self.skip();
        let Some((head, behind)) = self.0.split_at_checked(word.len()) else { return false };
        if head.eq_ignore_ascii_case(word) {
            self.0 = behind;
            return true;
        }
        false
    }

    /// Takes the letters that fit.
    fn while_is(&mut self, fits: impl Fn(char) -> bool) -> &'a str {
        self.skip();
        let (head, behind) = self.0.split_at(self.0.find(|c| !fits(c)).unwrap_or(self.0.len()));
        self.0 = behind;
        head
    }

    /// Takes a positive number with a decimal point or comma.
    fn number(&mut self) -> Option<f64> {
        let digits = self.while_is(|c| c.is_ascii_digit() || matches!(c, '.' | ','));
        let value: f64 = digits.replace(',', ".").parse().ok()?;
        (value > 0.0 && value < 1e4).then_some(value)
    }

    /// Takes a whole number.
    fn whole(&mut self) -> Option<u32> {
        self.while_is(|c| c.is_ascii_digit()).parse().ok()
    }

    /// Takes a size in inches: `1/4`, `1 1/8`, `1-1/8`, `2`, `.25`; in sixty-fourths.
    fn sixty_fourths(&mut self) -> Option<u32> {
        let start = self.0;
        let ratio = |rest: &mut Self| -> Option<f64> {
            let over = rest.whole()?;
            if !rest.eat("/") {
                return None;
            }
            let under = rest.whole()?;
            (over < under && under <= 64).then(|| f64::from(over) / f64::from(under))
        };
        let inches = match ratio(self) {
            Some(part) => part,
            None => {
                self.0 = start;
                let whole = self.number()?;
                let behind = self.0;
                let _ = self.eat("-");
                match ratio(self).filter(|_| whole.fract() == 0.0) {
                    Some(part) => whole + part,
                    None => {
                        self.0 = behind;
                        whole
                    }
                }
            }
        };
        let parts = inches * 64.0;
        (parts.fract() == 0.0 && (1.0..=384.0).contains(&parts)).then_some(parts as u32)
    }
}

/// See [`Thread::parse`].
pub(super) fn thread(text: &str) -> Result<Thread, Diag> {
    let plain: String = text
        .trim()
        .chars()
        .map(|c| match c {
            '×' | '*' => 'x',
            '–' | '−' | '‑' | '‐' => '-',
            other => other,
        })
        .collect();
    let mut rest = Rest(&plain);
    let said = shown(text);
    let thread = if rest.eat("Tr") {
        trapezoidal(&mut rest, &said)?
    } else if rest.eat("M") {
        metric(&mut rest, &said)?
    } else if rest.eat("G") {
        pipe(&mut rest, &said)?
    } else {
        unified(&mut rest, &said)?
    };
    let thread = tail(&mut rest, thread, &said)?;
    Ok(Thread { designation: written(&thread), ..thread })
}

/// A text as it is repeated in a message: its beginning, if it is longer than a designation.
fn shown(text: &str) -> String {
    let text = text.trim();
    match text.char_indices().nth(SHOWN_MAX) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        None => text.to_owned(),
    }
}

fn unknown(said: &str) -> Diag {
    Diag::new(say!("thread-unknown", text = said)).help(say!("thread-unknown-help"))
}

fn instead(what: String, designation: String) -> Diag {
    Diag::new(what).help(say!("thread-write", designation = designation))
}

fn bare(form: Form, major_mm: f64, pitch_mm: f64) -> Thread {
    Thread { designation: String::new(), form, major_mm, pitch_mm, starts: 1, left: false, class: None }
}

fn metric(rest: &mut Rest<'_>, said: &str) -> Result<Thread, Diag> {
    let major_mm = rest.number().ok_or_else(|| unknown(said))?;
    let coarse = sizes::coarse_pitch_mm(major_mm);
    if !rest.eat("x") {
        return coarse.map(|pitch_mm| bare(Form::Metric, major_mm, pitch_mm)).ok_or_else(|| {
            let major = major_mm.to_string();
            let diag = Diag::new(say!("thread-no-coarse", major = major));
            match sizes::metric_pitches_mm(major_mm).into_iter().reduce(f64::max) {
                Some(fine) => diag.help(say!("thread-write", designation = format!("M{major}x{fine}"))),
                None => {
                    let near = sizes::nearest(sizes::COARSE_MM.iter(), major_mm, |row| row.0).map_or(0.0, |row| row.0);
                    diag.help(say!("thread-no-coarse-help", near = near.to_string(), major = major))
                }
            }
        });
    }
    let (pitch_mm, lead_mm) = if rest.eat("Ph") {
        let lead_mm = rest.number();
        let pitch_mm = if rest.eat("P") { rest.number() } else { None };
        (pitch_mm, lead_mm)
    } else {
        with_lead(rest)
    };
    let pitch_mm = pitch_mm.ok_or_else(|| unknown(said))?;
    let thread = started(bare(Form::Metric, major_mm, pitch_mm), lead_mm, said)?;
    fits(&thread, said, || match coarse {
        Some(coarse) => say!("thread-write-coarse", major = major_mm.to_string(), coarse = coarse.to_string()),
        None => most(major_mm),
    })?;
    Ok(thread)
}

/// `1.5`, or `3(P1.5)` and `3 P1.5`: pitch, and lead if there is one.
fn with_lead(rest: &mut Rest<'_>) -> (Option<f64>, Option<f64>) {
    let first = rest.number();
    let behind = rest.0;
    let bracket = rest.eat("(");
    if rest.eat("P") {
        let pitch = rest.number();
        if !bracket || rest.eat(")") {
            return (pitch, first);
        }
    }
    rest.0 = behind;
    (first, None)
}

/// The thread with as many starts as the lead has pitches.
fn started(thread: Thread, lead_mm: Option<f64>, said: &str) -> Result<Thread, Diag> {
    let Some(lead_mm) = lead_mm else { return Ok(thread) };
    let starts = (lead_mm / thread.pitch_mm).round();
    if !(1.0..=STARTS_MAX).contains(&starts) || (starts * thread.pitch_mm - lead_mm).abs() > 1e-9 * lead_mm {
        let [lead, pitch, twice] = [lead_mm, thread.pitch_mm, 2.0 * thread.pitch_mm].map(|mm| mm.to_string());
        let diag = Diag::new(say!("thread-lead", text = said, lead = lead, pitch = pitch));
        return Err(diag.help(say!("thread-lead-help", twice = twice, most = STARTS_MAX.to_string())));
    }
    Ok(Thread { starts: starts as u32, ..thread })
}

/// Refuses a pitch that cannot be meant. `help` says what to write where it is too coarse.
fn fits(thread: &Thread, said: &str, help: impl Fn() -> String) -> Result<(), Diag> {
    let pitch = ((thread.pitch_mm * 1e4).round() / 1e4).to_string();
    if thread.pitch_mm < PITCH_MIN_MM {
        let what = say!("thread-too-fine", text = said, pitch = pitch);
        return Err(Diag::new(what).help(say!("thread-too-fine-help", least = PITCH_MIN_MM.to_string())));
    }
    if thread.minor_mm() < MINOR_SHARE_MIN * thread.major_mm {
        let major = ((thread.major_mm * 1e4).round() / 1e4).to_string();
        return Err(Diag::new(say!("thread-too-coarse", text = said, pitch = pitch, major = major)).help(help()));
    }
    Ok(())
}

fn most(major_mm: f64) -> String {
    let most = (1.0 - MINOR_SHARE_MIN) * major_mm / (2.0 * super::DEPTH_PER_PITCH);
    say!("thread-finer", most = format!("{most:.2}"))
}

fn trapezoidal(rest: &mut Rest<'_>, said: &str) -> Result<Thread, Diag> {
    let major_mm = rest.number().ok_or_else(|| unknown(said))?;
    let (near_mm, pitches) =
        sizes::nearest(sizes::TRAPEZOIDAL.iter(), major_mm, |row| row.0).copied().unwrap_or_default();
    let pitch_near = |pitch: f64| sizes::nearest(pitches.iter().copied(), pitch, |p| p).unwrap_or_default();
    if !rest.eat("x") {
        let preferred = pitches.first().copied().unwrap_or_default();
        return Err(instead(say!("thread-no-pitch", text = said), format!("Tr{near_mm}x{preferred}")));
    }
    let (pitch_mm, lead_mm) = with_lead(rest);
    let pitch_mm = pitch_mm.ok_or_else(|| unknown(said))?;
    let thread = started(bare(Form::Trapezoidal, major_mm, pitch_mm), lead_mm, said)?;
    fits(&thread, said, || say!("thread-write", designation = format!("Tr{near_mm}x{}", pitch_near(pitch_mm))))?;
    Ok(thread)
}

fn pipe(rest: &mut Rest<'_>, said: &str) -> Result<Thread, Diag> {
    let size = rest.sixty_fourths().ok_or_else(|| unknown(said))?;
    let near = sizes::nearest(sizes::PIPE.iter(), f64::from(size), |row| f64::from(row.0)).copied().unwrap_or_default();
    if near.0 != size {
        return Err(instead(say!("thread-no-pipe-size", text = said), format!("G{}", sizes::fraction(near.0))));
    }
    Ok(bare(Form::Pipe, near.2, INCH_MM / f64::from(near.1)))
}

fn unified(rest: &mut Rest<'_>, said: &str) -> Result<Thread, Diag> {
    let numbered = rest.eat("#");
    let start = rest.0;
    let number = rest.whole().filter(|n| *n <= NUMBER_MAX && rest.0.trim_start().starts_with('-')).map(Size::Number);
    let behind_number = rest.0;
    rest.0 = start;
    let inch = if numbered { None } else { rest.sixty_fourths().map(Size::Inch) };
    if inch.is_none() {
        rest.0 = behind_number;
    }
    if !rest.eat("-") {
        return Err(unknown(said));
    }
    let tpi = rest.whole().filter(|tpi| (1..=400).contains(tpi)).ok_or_else(|| unknown(said))?;
    let _ = rest.eat("-");
    let before = rest.0;
    let word = rest.while_is(|c| c.is_ascii_alphabetic()).to_ascii_uppercase();
    let asked = match word.as_str() {
        "UNC" => Some(Series::Unc),
        "UNF" => Some(Series::Unf),
        "UNEF" => Some(Series::Unef),
        "UNS" | "UN" => Some(Series::Uns),
        _ => {
            rest.0 = before;
            None
        }
    };
    // A whole number may be a number or inches: what the tables have decides, then how coarse the thread is.
    let both = || [number, inch].into_iter().flatten();
    let has = |size: &Size| sizes::series_of(*size).any(|(series, n)| n == tpi && (asked.is_none_or(|a| a == series)));
    let as_number = |size: &Size| {
        matches!(size, Size::Number(_)) && tpi >= NUMBER_TPI_MIN && {
            let thread = of(*size, tpi, Series::Uns);
            thread.minor_mm() >= MINOR_SHARE_MIN * thread.major_mm
        }
    };
    let size = both().find(has).or_else(|| both().find(as_number)).or(inch).or(number).ok_or_else(|| unknown(said))?;
    let standard = sizes::series_of(size).find(|(_, n)| *n == tpi).map(|(series, _)| series);
    let series = match (asked, standard) {
        (Some(Series::Uns) | None, Some(series)) => series,
        (Some(Series::Uns), None) => Series::Uns,
        (Some(asked), Some(standard)) if asked == standard => asked,
        _ => return Err(no_unified(size, tpi, asked, said)),
    };
    if series == Series::Uns && matches!(size, Size::Number(_)) && tpi < NUMBER_TPI_MIN {
        return Err(no_unified(size, tpi, asked, said));
    }
    let thread = of(size, tpi, series);
    fits(&thread, said, || most(thread.major_mm))?;
    Ok(thread)
}

fn of(size: Size, tpi: u32, series: Series) -> Thread {
    bare(Form::Unified(series), size.inches() * INCH_MM, INCH_MM / f64::from(tpi))
}

/// A unified thread that is not in the tables: what the standard has nearest.
fn no_unified(size: Size, tpi: u32, asked: Option<Series>, said: &str) -> Diag {
    let label = size.label();
    let has: Vec<String> = sizes::series_of(size).map(|(s, n)| format!("`{label}-{n} {}`", s.word())).collect();
    let near = if has.is_empty() {
        let column = asked.and_then(|a| SERIES.iter().position(|s| *s == a)).unwrap_or(0);
        let sized = sizes::UNIFIED.iter().filter(|(_, row)| row.get(column).is_some_and(|n| *n > 0));
        let near = sizes::nearest(sized, size.inches(), |row| row.0.inches());
        let near = near.and_then(|(size, row)| Some((size.label(), *row.get(column)?, *SERIES.get(column)?)));
        near.map(|(label, n, series)| format!("`{label}-{n} {}`", series.word())).unwrap_or_default()
    } else {
        crate::lang::lists::commas(&has.iter().map(String::as_str).collect::<Vec<_>>())
    };
    let diag = Diag::new(say!("thread-no-unified", text = said));
    if matches!(size, Size::Number(_)) && tpi < NUMBER_TPI_MIN {
        return diag.help(say!("thread-no-unified-help", near = near));
    }
    diag.help(say!("thread-no-unified-special", near = near, special = format!("{label}-{tpi} UNS")))
}

/// Reads what follows the size: a class and the hand, in any order.
fn tail(rest: &mut Rest<'_>, mut thread: Thread, said: &str) -> Result<Thread, Diag> {
    let mut hand = None;
    loop {
        rest.while_is(|c| c == '-' || c.is_whitespace());
        let word = rest.while_is(|c| c != '-' && !c.is_whitespace());
        if word.is_empty() {
            return Ok(thread);
        }
        let upper = word.to_ascii_uppercase();
        if matches!(upper.as_str(), "LH" | "RH") {
            if hand.replace(upper.clone()).is_some() {
                return Err(unknown(said));
            }
            thread.left = upper == "LH";
        } else if let Some((class, _)) = class::read(thread.form, word) {
            if thread.class.replace(class).is_some() {
                return Err(unknown(said));
            }
        } else {
            let class = class::examples(thread.form, Side::External);
            let with = written(&Thread { class: Some(class.into()), ..thread });
            let what = say!("thread-tail-unknown", text = said, word = self::shown(word));
            return Err(Diag::new(what).help(say!("thread-tail-help", designation = with)));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn designations_have_one_form() {
        for (text, form) in [
            ("M20x1.5", "M20x1.5"),
            ("M20x1.5-6g", "M20x1.5-6g"),
            ("M20 x 1,5", "M20x1.5"),
            ("M20×1.5 LH", "M20x1.5-LH"),
            ("M20x2.5", "M20"),
            ("M16-5g6g-LH", "M16-5g6g-LH"),
            ("M16xPh3P1.5-6H", "M16xPh3P1.5-6H"),
            ("1/4-20 UNC", "1/4-20 UNC"),
            ("1/4-28UNF-2A", "1/4-28 UNF-2A"),
            ("1/4-20 UN", "1/4-20 UNC"),
            ("#10-32 UNF", "10-32 UNF"),
            ("10-24", "10-24 UNC"),
            ("0-80 UNF", "0-80 UNF"),
            ("1-64 UNC", "1-64 UNC"),
            ("1-8 UNC", "1-8 UNC"),
            ("1-1/8-7 unc-3a lh", "1 1/8-7 UNC-3A-LH"),
            (".25-20 UNC", "1/4-20 UNC"),
            ("1-14 UNS", "1-14 UNS"),
            ("G1/4", "G1/4"),
            ("G 1/2 A", "G1/2A"),
            ("G 1 1/2 B LH", "G1 1/2B-LH"),
            ("Tr20x4", "Tr20x4"),
            ("Tr 20x4-7e", "Tr20x4-7e"),
            ("Tr20x8(P4)", "Tr20x8(P4)"),
            ("TR 20 x 8 (P4) LH - 7e", "Tr20x8(P4)LH-7e"),
            ("Tr20x8 P4", "Tr20x8(P4)"),
        ] {
            let read = thread(text).unwrap_or_else(|diag| panic!("{text}: {diag}"));
            assert_eq!(read.designation, form, "{text}");
            assert_eq!(thread(form).expect("reads back"), read, "{text}");
        }
    }

    #[test]
    fn sizes_are_those_of_the_standards() {
        let near = |a: f64, b: f64| assert!((a - b).abs() < 5e-4, "{a} {b}");
        let number = thread("10-32 UNF").expect("a thread");
        near(number.major_mm, 4.826);
        near(number.pitch_mm, 0.794);
        // One inch, not the number 1.
        near(thread("1-8 UNC").expect("a thread").major_mm, 25.4);
        near(thread("1-64 UNC").expect("a thread").major_mm, 1.854);
        let pipe = thread("G1/4").expect("a thread");
        near(pipe.minor_mm(), 11.445);
        near(pipe.flank_mm(), 12.301);
        let lead = thread("Tr20x8(P4)").expect("a thread");
        assert_eq!((lead.starts, lead.lead_mm(), lead.pitch_mm), (2, 8.0, 4.0));
        near(lead.minor_mm(), 15.5);
        near(thread("M16xPh3P1.5").expect("a thread").lead_mm(), 3.0);
    }

    #[test]
    fn what_is_wrong_has_a_cure() {
        for (text, says) in [
            ("M15", "Write `M15x1.5`"),
            ("1/4-24 UNC", "`1/4-20 UNC`"),
            ("9/32-20 UNC", "`1/4-20 UNC`"),
            ("#10-20 UNS", "`10-24 UNC`, `10-32 UNF`"),
            ("G1/3", "Write it as"),
            ("G5/16", "Write `G1/4`"),
            ("Tr21", "Write `Tr20x4`"),
            ("Tr20x30", "Write `Tr20x4`"),
            ("Tr20x8(P3)", "6 mm"),
            ("M20x1.5 hand", "`M20x1.5-6g`"),
            ("M20x1.5-6g-6g", "Write it as"),
            ("G1/4C", "`G1/4A`"),
            ("#13-20", "Write it as"),
        ] {
            let help = thread(text).expect_err(text).help.unwrap_or_default();
            assert!(help.contains(says), "{text}: {help}");
        }
        for (text, side) in [("M6-6H", Side::External), ("M6-6g", Side::Internal), ("G1/4A", Side::Internal)] {
            let diag = thread(text).and_then(|t| t.on(side)).expect_err(text);
            assert!(diag.help.unwrap_or_default().contains("Write"), "{text}");
        }
        assert!(thread("M6-6H").and_then(|t| t.on(Side::Internal)).is_ok());
    }
}
