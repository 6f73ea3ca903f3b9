//! A family of parts: one section's length or diameter over a range.

use crate::lang::Measure;
use crate::say;

/// What of a section is varied.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Varied {
    /// Its length.
    Length,
    /// Its diameter.
    Diameter,
}

impl Varied {
    /// The key of the job file.
    pub fn key(self) -> &'static str {
        match self {
            Varied::Length => "length",
            Varied::Diameter => "diameter",
        }
    }
}

/// One range.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Range {
    /// What is varied.
    pub varied: Varied,
    /// Index of the section.
    pub section: usize,
    /// Name of the section, or `section N`.
    pub label: String,
    /// First value in mm.
    pub from_mm: f64,
    /// Upper end of the range in mm. It is a value only if a whole number of steps leads to it.
    pub to_mm: f64,
    /// Distance between two values in mm.
    pub step_mm: f64,
}

/// Decimals are not exact, so a whole number of steps may miss the end by this share of a step.
const STEP_SLACK: f64 = 1e-6;

impl Range {
    /// Number of values; at least 1.
    pub fn count(&self) -> usize {
        // `as` saturates: an endless range gives the largest number, and the reader refuses it.
        ((self.to_mm - self.from_mm) / self.step_mm + STEP_SLACK).floor().max(0.0) as usize + 1
    }

    /// The values in mm, ascending. They are rounded to a nanometre, so that steps of 0.1 give the values a person
    /// would write.
    pub fn values_mm(&self) -> Vec<f64> {
        (0..self.count()).map(|i| ((self.from_mm + i as f64 * self.step_mm) * 1e6).round() / 1e6).collect()
    }

    /// In words: `length of body, 200 to 1200 mm by 50`.
    pub fn text(&self) -> String {
        say!(
            "varied-range",
            key = self.varied.key(),
            section = self.label,
            from = Measure::Size.number(self.from_mm),
            to = Measure::Size.number(self.to_mm),
            step = Measure::Size.number(self.step_mm)
        )
    }

    /// One of its values in words: `length of body 250 mm`.
    pub fn size_text(&self, value_mm: f64) -> String {
        let size = Measure::Size.number(value_mm);
        say!("varied-size", key = self.varied.key(), section = self.label, size = size)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn range(from_mm: f64, to_mm: f64, step_mm: f64) -> Range {
        Range { varied: Varied::Length, section: 0, label: "body".into(), from_mm, to_mm, step_mm }
    }

    #[test]
    fn values_are_those_that_a_person_would_write() {
        assert_eq!(range(0.1, 0.5, 0.1).values_mm(), [0.1, 0.2, 0.3, 0.4, 0.5]);
        assert_eq!(range(10.0, 25.0, 10.0).values_mm(), [10.0, 20.0]);
        assert_eq!(range(10.0, 10.0, 1.0).values_mm(), [10.0]);
        assert_eq!(range(10.0, 5.0, 1.0).values_mm(), [10.0]);
    }
}
