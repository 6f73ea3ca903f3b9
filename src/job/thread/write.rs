//! Writes designations.

use super::sizes::{self, NUMBER_MAX, Size};
use super::{Form, INCH_MM, Thread};

/// The designation in its one form.
pub(super) fn written(thread: &Thread) -> String {
    let (major, pitch) = (thread.major_mm, thread.pitch_mm);
    let class = thread.class.as_deref().unwrap_or_default();
    let dash = if class.is_empty() { "" } else { "-" };
    let lead = (thread.lead_mm() * 1e9).round() / 1e9;
    let hand = |left: &'static str| if thread.left { left } else { "" };
    match thread.form {
        Form::Metric => {
            let pitch = match thread.starts {
                1 if sizes::coarse_pitch_mm(major) == Some(pitch) => String::new(),
                1 => format!("x{pitch}"),
                _ => format!("xPh{lead}P{pitch}"),
            };
            format!("M{major}{pitch}{dash}{class}{}", hand("-LH"))
        }
        Form::Trapezoidal => {
            let pitch = if thread.starts == 1 { pitch.to_string() } else { format!("{lead}(P{pitch})") };
            format!("Tr{major}x{pitch}{}{dash}{class}", hand("LH"))
        }
        Form::Unified(series) => {
            let tpi = (INCH_MM / pitch).round();
            let numbers = (0..=NUMBER_MAX).map(Size::Number).find(|s| s.inches() * INCH_MM == major);
            let size = numbers.unwrap_or(Size::Inch((major / INCH_MM * 64.0).round() as u32));
            format!("{}-{tpi} {}{dash}{class}{}", size.label(), series.word(), hand("-LH"))
        }
        Form::Pipe => {
            let row = sizes::nearest(sizes::PIPE.iter(), major, |row| row.2).copied().unwrap_or_default();
            format!("G{}{class}{}", sizes::fraction(row.0), hand("-LH"))
        }
    }
}
