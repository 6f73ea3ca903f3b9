//! One row of the ledger: a value from outside beside ours, and how far apart they may be. Test targets that keep rows of
//! their own share this file.

#![allow(dead_code)]

use std::fmt;
use std::path::Path;

/// Set to renew the ledger, or the rows kept for it, instead of comparing them.
pub const BLESS: &str = "SPANHOLD_BLESS";
/// Where rows of other runs are kept.
pub const KEPT_FOLDER: &str = "tests/ledger";
/// Deviations below this are not told apart: they are rounding and the stated error of the supports.
const SMALLEST_SHOWN_PERCENT: f64 = 0.001;

/// How well the reference value itself is known.
#[derive(Debug, Clone, Copy)]
pub enum Standing {
    /// Seen on the page or document named.
    Verified(&'static str),
    /// From memory of the source named, not re-read.
    Memory,
    /// Derived for this project; an independent numerical solution agrees to the digits given.
    Derived,
    /// Worked out by what is named, in the same test run.
    Computed(&'static str),
    /// Common practice, no source; only the arithmetic is checked.
    Practice,
}

impl fmt::Display for Standing {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Standing::Verified(place) => write!(f, "verified: seen on {place}"),
            Standing::Memory => f.write_str("from memory, not re-read"),
            Standing::Derived => f.write_str("derived; independent numerical solution agrees"),
            Standing::Computed(by) => write!(f, "worked out in the same run by {by}"),
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
    /// A difference, in the unit of the value: both sides are table values, or a table is rounded to it.
    Within(f64),
    /// Not below the reference: a fact that is known as a bound.
    AtLeast,
    /// Not above the reference.
    AtMost,
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
            Agreement::Within(difference) => difference,
            Agreement::AtLeast | Agreement::AtMost => 0.0,
        }
    }

    /// Whether ours agrees; a value that is not a number never does.
    pub fn agrees(&self) -> bool {
        match self.agreement {
            Agreement::AtLeast => self.ours >= self.reference(),
            Agreement::AtMost => self.ours <= self.reference(),
            _ => (self.ours - self.reference()).abs() <= self.allowed(),
        }
    }

    /// The row as a line of the ledger.
    pub fn line(&self) -> String {
        let row = self;
        let percent = |part: f64| 100.0 * part / row.reference().abs();
        let bound = match row.agreement {
            Agreement::AtLeast => Some("or more"),
            Agreement::AtMost => Some("or less"),
            _ => None,
        };
        let off = row.ours - row.reference();
        let absolute = row.reference() == 0.0;
        let deviation = if let Some(bound) = bound {
            bound.to_string()
        } else if absolute {
            if off == 0.0 { "0".into() } else { format!("{off:+.1e}") }
        } else if percent(off).abs() < SMALLEST_SHOWN_PERCENT {
            format!("< {SMALLEST_SHOWN_PERCENT} %")
        } else {
            format!("{:+.3} %", percent(off))
        };
        // Closed forms are kept with every digit for the comparison and shown with as many as ours.
        let reference = if row.printed.len() > 12 { significant(row.reference(), 6) } else { row.printed.clone() };
        let allowed = match row.agreement {
            _ if bound.is_some() => "bound".into(),
            Agreement::Within(difference) => format!("± {}", significant(difference, 1)),
            _ => format!("{} %", significant(percent(row.allowed()), 1)),
        };
        let ours = significant(row.ours, 6);
        format!("| {} | {} | {} | {reference} | {ours} | {deviation} | {allowed} |", row.what, row.source, row.standing)
    }

    /// How far off in terms of what is allowed; to find the worst of many.
    fn share_of_allowed(&self) -> f64 {
        let off = (self.ours - self.reference()).abs();
        if off.is_nan() { f64::INFINITY } else { off / self.allowed().max(f64::MIN_POSITIVE) }
    }
}

fn significant(value: f64, digits: usize) -> String {
    if value == 0.0 || !value.is_finite() {
        return format!("{value}");
    }
    let text = format!("{value:.*e}", digits - 1);
    let exponent: i32 = text.split_once('e').map_or(0, |(_, e)| e.parse().unwrap_or(0));
    if (-5..digits as i32).contains(&exponent) {
        let decimals = (digits as i32 - 1 - exponent).max(0) as usize;
        format!("{value:.decimals$}")
    } else {
        text
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

    /// Adds one row for many entries of a table: the entry farthest off, the first of equals. An entry has a name, the
    /// printed value and ours.
    pub fn worst_of(&mut self, what: &str, entries: Vec<(String, String, f64)>) {
        let count = entries.len();
        let mut all = Table::new(self.source, self.standing, self.agreement);
        for (name, printed, ours) in entries {
            all.printed(format!("{what}, worst of {count}: {name}"), &printed, ours);
        }
        let worst = all.rows.into_iter().reduce(|a, b| if b.share_of_allowed() > a.share_of_allowed() { b } else { a });
        self.rows.push(worst.expect("a table has entries"));
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

/// Compares rows with the kept ones of a run, or renews them.
pub fn keep(name: &str, rows: &[Row]) {
    assert_agree(rows);
    let fresh: String = rows.iter().map(|r| r.line() + "\n").collect();
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(KEPT_FOLDER).join(name);
    if std::env::var_os(BLESS).is_some() {
        std::fs::write(&path, &fresh).expect("the kept rows can be written");
        return;
    }
    let kept = std::fs::read_to_string(&path).unwrap_or_default();
    assert!(
        fresh == kept,
        "{KEPT_FOLDER}/{name} is stale; renew it with {BLESS}=1, then the ledger, and read the difference.\n{fresh}\n{kept}"
    );
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
    assert!(row("0", 0.0, Agreement::Within(1e-9)).agrees() && !row("0", 1e-8, Agreement::Within(1e-9)).agrees());
    assert!(row("3", 3.0, Agreement::AtLeast).agrees() && !row("3", 2.0, Agreement::AtLeast).agrees());
    assert!(!row("3", f64::NAN, Agreement::AtMost).agrees());
}

#[test]
fn the_worst_entry_stands_for_its_table() {
    let mut t = Table::new("", Standing::Practice, Agreement::Within(0.5));
    let entry = |name: &str, ours| (name.to_string(), "10".to_string(), ours);
    t.worst_of("table", vec![entry("good", 10.0), entry("bad", 11.0), entry("fair", 10.4)]);
    let rows = t.done();
    assert_eq!((rows.len(), rows[0].what.as_str()), (1, "table, worst of 3: bad"));
    assert!(!rows[0].agrees());
}
