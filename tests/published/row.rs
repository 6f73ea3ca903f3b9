//! One row of the ledger: a value from outside beside ours, and how far apart they may be.

use std::fmt;

/// How well the reference value itself is known.
#[derive(Debug, Clone, Copy)]
pub enum Standing {
    /// Seen on the page or document named.
    Verified(&'static str),
    /// From memory of the source named, not re-read.
    Memory,
    /// Derived for this project; an independent numerical solution agrees to the digits given.
    Derived,
    /// Common practice, no source; only the arithmetic is checked.
    Practice,
}

impl fmt::Display for Standing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Standing::Verified(place) => write!(f, "verified: seen on {place}"),
            Standing::Memory => f.write_str("from memory, not re-read"),
            Standing::Derived => f.write_str("derived; independent numerical solution agrees"),
            Standing::Practice => f.write_str("common practice, no source"),
        }
    }
}

/// What counts as agreement.
#[derive(Debug, Clone, Copy)]
pub enum Agreement {
    /// Half a unit of the last digit printed.
    Printed,
    /// The printed value is cut off, not rounded: ours lies in the unit that starts there.
    Truncated,
    /// A unit of the last digit: the source rounds a value that was rounded before.
    RoundedTwice,
    /// A share of the reference value.
    Share(f64),
}

/// What stiff springs, mesh and iteration leave (see `shaft`), as a share of the value: a rounding that stands on a
/// border may fall either way.
const BORDER: f64 = 1e-6;

/// A check: what was computed, from where the reference is, both values.
#[derive(Debug, Clone)]
pub struct Row {
    /// What is checked, with its unit.
    pub what: String,
    /// Source of the reference.
    pub source: &'static str,
    /// How well the reference is known.
    pub standing: Standing,
    /// The reference as printed.
    pub printed: String,
    /// Our value.
    pub ours: f64,
    /// How near is near enough.
    pub agreement: Agreement,
}

impl Row {
    /// The reference as a number; for a value cut off, the middle of its unit.
    pub fn reference(&self) -> f64 {
        let value: f64 = self.printed.parse().expect("the reference is a number");
        match self.agreement {
            Agreement::Truncated => value + 0.5 * unit_of_last_digit(&self.printed),
            _ => value,
        }
    }

    /// Largest difference allowed, in the unit of the value.
    pub fn allowed(&self) -> f64 {
        let border = BORDER * self.reference().abs();
        match self.agreement {
            Agreement::Printed | Agreement::Truncated => 0.5 * unit_of_last_digit(&self.printed) + border,
            Agreement::RoundedTwice => unit_of_last_digit(&self.printed),
            Agreement::Share(share) => share * self.reference().abs(),
        }
    }

    /// Whether ours agrees; a value that is not a number never does.
    pub fn agrees(&self) -> bool {
        (self.ours - self.reference()).abs() <= self.allowed()
    }
}

/// `0.0203` has 0.0001, `-1.685e-3` has 0.000001, `1434` has 1.
fn unit_of_last_digit(printed: &str) -> f64 {
    let (mantissa, exponent) = printed.split_once('e').unwrap_or((printed, "0"));
    let decimals = mantissa.split_once('.').map_or(0, |(_, d)| d.len() as i32);
    let exponent: i32 = exponent.parse().expect("an exponent is a whole number");
    10f64.powi(exponent - decimals)
}

/// Rows of one source share source, standing and agreement.
pub struct Table {
    source: &'static str,
    standing: Standing,
    agreement: Agreement,
    rows: Vec<Row>,
}

impl Table {
    /// An empty table of one source.
    pub fn new(source: &'static str, standing: Standing, agreement: Agreement) -> Table {
        Table { source, standing, agreement, rows: Vec::new() }
    }

    /// Adds a check against a printed value.
    pub fn printed(&mut self, what: impl Into<String>, printed: &str, ours: f64) {
        self.rows.push(Row {
            what: what.into(),
            source: self.source,
            standing: self.standing,
            printed: printed.to_string(),
            ours,
            agreement: self.agreement,
        });
    }

    /// Adds a check against a closed form worked out in the test; kept with all its digits.
    pub fn closed(&mut self, what: impl Into<String>, reference: f64, ours: f64) {
        assert!(matches!(self.agreement, Agreement::Share(_)), "a closed form has no printed digits");
        self.printed(what, &format!("{reference:e}"), ours);
    }

    /// The rows.
    pub fn done(self) -> Vec<Row> {
        self.rows
    }
}

/// Fails with every row that does not agree, and when there is none.
pub fn assert_agree(rows: &[Row]) {
    assert!(!rows.is_empty(), "no published value was checked");
    let bad: Vec<String> = rows
        .iter()
        .filter(|r| !r.agrees())
        .map(|r| {
            format!("{}: ours {:.9e}, reference {} ± {:.1e} ({})", r.what, r.ours, r.printed, r.allowed(), r.source)
        })
        .collect();
    assert!(bad.is_empty(), "{} of {} rows disagree:\n{}", bad.len(), rows.len(), bad.join("\n"));
}

#[test]
fn printed_digits_give_the_tolerance() {
    assert_eq!(unit_of_last_digit("1434"), 1.0);
    assert!((unit_of_last_digit("0.0203") - 1e-4).abs() < 1e-18);
    assert!((unit_of_last_digit("-1.685e-3") - 1e-6).abs() < 1e-18);
    let row = |printed: &str, ours, agreement| Row {
        what: String::new(),
        source: "",
        standing: Standing::Practice,
        printed: printed.to_string(),
        ours,
        agreement,
    };
    assert!(row("0.25", 0.2549, Agreement::Printed).agrees());
    assert!(!row("0.25", 0.2551, Agreement::Printed).agrees());
    assert!(row("128", 128.99, Agreement::Truncated).agrees());
    assert!(!row("128", 127.99, Agreement::Truncated).agrees());
    assert!(!row("128", 129.01, Agreement::Truncated).agrees());
    assert!(!row("0.25", f64::NAN, Agreement::Share(0.5)).agrees());
}
