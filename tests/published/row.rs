//! One row of the ledger: a value from outside beside ours, and how far apart they may be. Test targets that keep rows of
//! their own share this file.

#![allow(dead_code)]

use std::fmt;
use std::path::{Path, PathBuf};

/// Set to renew the ledger instead of comparing it.
pub const BLESS: &str = "SPANHOLD_BLESS";
/// The ledger. `.ci/ledger.py` reads and writes it too.
const LEDGER: &str = "tests/ledger/values.csv";
/// Its columns.
const COLUMNS: [&str; 9] = ["run", "layer", "case", "source", "standing", "values", "reference", "allowed", "used"];
/// A row of the ledger.
pub type Record = [String; COLUMNS.len()];
/// The last column depends on the processor and its libraries. It may differ by this much.
const USED_MAY_DIFFER: f64 = 0.1;

/// Where the exact findings of a run go. They depend on the last digits of a processor, so they are not kept.
fn found_folder() -> PathBuf {
    // Tests beside the code are not told the folder: it lies two above that of the tests' programs.
    let beside = || std::env::current_exe().ok()?.ancestors().nth(3).map(|target| target.join("tmp"));
    let told = option_env!("CARGO_TARGET_TMPDIR").map(PathBuf::from);
    told.or_else(beside).expect("a folder of the target").join("ledger")
}

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
    /// Ours differs, and is known to: kept so that it is seen, and so that it is noticed when it changes.
    Missed,
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
    /// For the worst of many: of how many, as the ledger says it, and which it is.
    pub worst: Option<(String, String)>,
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
            Agreement::AtLeast | Agreement::AtMost | Agreement::Missed => 0.0,
        }
    }

    /// Whether ours agrees, or is missed as it is known to be; a value that is not a number never does.
    pub fn agrees(&self) -> bool {
        match self.agreement {
            Agreement::AtLeast => self.ours >= self.reference(),
            Agreement::AtMost => self.ours <= self.reference(),
            Agreement::Missed => self.ours != self.reference(),
            _ => (self.ours - self.reference()).abs() <= self.allowed(),
        }
    }

    /// The row as the ledger keeps it.
    pub fn record(&self, run: &str, layer: &str) -> Record {
        let percent = |part: f64| format!("{} %", significant(100.0 * part / self.reference().abs(), 1));
        // A closed form has every digit for the comparison. The ledger shows six.
        let reference = match &self.worst {
            Some((count, _)) => format!("{count} values"),
            None if self.printed.len() > 12 => significant(self.reference(), 6),
            None => self.printed.clone(),
        };
        let allowed = match self.agreement {
            Agreement::AtLeast => "or more".into(),
            Agreement::AtMost => "or less".into(),
            Agreement::Missed => format!("missed: ours {}", significant(self.ours, 3)),
            Agreement::Within(difference) => format!("± {}", significant(difference, 1)),
            // One digit, but 25 % is not 2e1 %.
            Agreement::Share(share) if share >= 0.1 => format!("{:.0} %", 100.0 * share),
            Agreement::Share(share) => format!("{} %", significant(100.0 * share, 1)),
            // Which value is the worst is found by the run, and so is its share.
            Agreement::Printed if self.worst.is_some() => "half a unit of the last digit".into(),
            Agreement::Truncated | Agreement::RoundedTwice if self.worst.is_some() => "a unit of the last digit".into(),
            _ => percent(self.allowed()),
        };
        let (case, values) = match &self.worst {
            Some((count, _)) => (format!("{}, worst of {count}", self.what), count.clone()),
            None => (self.what.clone(), "1".into()),
        };
        let used = match self.agreement {
            Agreement::AtLeast | Agreement::AtMost | Agreement::Missed => String::new(),
            _ => format!("{:.2}", self.share_of_allowed()),
        };
        let standing = self.standing.to_string();
        [run.into(), layer.into(), case, self.source.into(), standing, values, reference, allowed, used]
    }

    /// What was found, as a line to read: name, reference, ours, how far off and how much of what is allowed that is.
    pub fn found(&self) -> String {
        let name = self.worst.as_ref().map_or(String::new(), |(count, name)| format!(", worst of {count}: {name}"));
        let off = self.ours - self.reference();
        let share = match self.agreement {
            Agreement::AtLeast | Agreement::AtMost => "a bound".into(),
            Agreement::Missed => "missed".into(),
            _ => format!("{:.2} of what is allowed", self.share_of_allowed()),
        };
        format!("{}{name}: {}, ours {}, off by {off:+.1e}, {share}", self.what, self.printed, significant(self.ours, 9))
    }

    /// How far off in terms of what is allowed; to find the worst of many.
    fn share_of_allowed(&self) -> f64 {
        let off = (self.ours - self.reference()).abs();
        if off.is_nan() { f64::INFINITY } else { off / self.allowed().max(f64::MIN_POSITIVE) }
    }
}

/// A number with so many digits that count.
pub fn significant(value: f64, digits: usize) -> String {
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
            worst: None,
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
        let count = entries.len().to_string();
        self.worst(what, count, entries);
    }

    /// The same where how many there are is found too, by a search: the ledger keeps how many there must be.
    pub fn worst_of_at_least(&mut self, least: usize, what: &str, entries: Vec<(String, String, f64)>) {
        assert!(entries.len() >= least, "{what}: only {} of {least}", entries.len());
        self.worst(what, format!("{least} or more"), entries);
    }

    fn worst(&mut self, what: &str, count: String, entries: Vec<(String, String, f64)>) {
        let mut all = Vec::new();
        for (name, printed, ours) in entries {
            let mut one = Table::new(self.source, self.standing, self.agreement);
            one.printed(what, &printed, ours);
            all.extend(one.rows.into_iter().map(|row| Row { worst: Some((count.clone(), name.clone())), ..row }));
        }
        let worst = all.into_iter().reduce(|a, b| if b.share_of_allowed() > a.share_of_allowed() { b } else { a });
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
        .map(|r| format!("{} ({}), ± {:.1e}", r.found(), r.source, r.allowed()))
        .collect();
    assert!(bad.is_empty(), "{} of {} rows disagree:\n{}", bad.len(), rows.len(), bad.join("\n"));
}

/// Writes down what rows found, for reading.
pub fn tell(name: &str, rows: &[Row]) {
    let text: String = rows.iter().map(|r| r.found() + "\n").collect();
    std::fs::create_dir_all(found_folder()).expect("target is writable");
    std::fs::write(found_folder().join(name), text).expect("target is writable");
}

/// Every row of the ledger.
pub fn ledger() -> Vec<Record> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(LEDGER);
    let mut reader = csv::Reader::from_path(path).expect("the ledger is there");
    assert_eq!(reader.headers().expect("the ledger has a header"), &COLUMNS[..]);
    let record = |r: Result<csv::StringRecord, csv::Error>| {
        let fields: Vec<String> = r.expect("a row of the ledger").iter().map(str::to_owned).collect();
        Record::try_from(fields).expect("a row has every column")
    };
    reader.records().map(record).collect()
}

/// Whether two rows say the same: the last column within what it may differ by.
fn same(a: &Record, b: &Record) -> bool {
    let near = match (a[8].parse::<f64>(), b[8].parse::<f64>()) {
        (Ok(a), Ok(b)) => (a - b).abs() <= USED_MAY_DIFFER,
        _ => a[8] == b[8],
    };
    a[..8] == b[..8] && near
}

/// Compares the rows of a run with the ledger, or renews them there.
pub fn keep(run: &str, rows: &[(&str, Vec<Row>)]) {
    // The tests of one program run side by side.
    static WRITING: std::sync::Mutex<()> = std::sync::Mutex::new(());
    let _writing = WRITING.lock();
    let all: Vec<Row> = rows.iter().flat_map(|(_, rows)| rows.clone()).collect();
    tell(&format!("{run}.md"), &all);
    assert_agree(&all);
    let fresh: Vec<Record> = rows.iter().flat_map(|(layer, rows)| rows.iter().map(|r| r.record(run, layer))).collect();
    let mut ledger = ledger();
    let begin = ledger.iter().position(|r| r[0] == run).unwrap_or(ledger.len());
    let kept: Vec<Record> = ledger.iter().filter(|r| r[0] == run).cloned().collect();
    let first = (0..fresh.len().max(kept.len())).find(|i| match (fresh.get(*i), kept.get(*i)) {
        (Some(fresh), Some(kept)) => !same(fresh, kept),
        _ => true,
    });
    let Some(first) = first else { return };
    assert!(
        std::env::var_os(BLESS).is_some(),
        "{LEDGER} is stale in the rows of `{run}`. Renew it with {BLESS}=1 and read the difference.\n\
         fresh: {:?}\nkept:  {:?}",
        fresh.get(first),
        kept.get(first)
    );
    // A row that says the same stays as it is, so that another processor changes nothing.
    let renewed = fresh.into_iter().map(|row| kept.iter().find(|old| same(old, &row)).cloned().unwrap_or(row));
    let renewed: Vec<Record> = renewed.collect();
    ledger.retain(|r| r[0] != run);
    ledger.splice(begin..begin, renewed);
    let mut writer = csv::Writer::from_path(Path::new(env!("CARGO_MANIFEST_DIR")).join(LEDGER)).expect("writable");
    writer.write_record(COLUMNS).expect("writable");
    ledger.iter().for_each(|row| writer.write_record(row).expect("writable"));
    writer.flush().expect("writable");
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
        worst: None,
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
    assert_eq!((rows.len(), rows[0].worst.clone()), (1, Some(("3".to_string(), "bad".to_string()))));
    assert!(!rows[0].agrees() && rows[0].found().starts_with("table, worst of 3: bad: 10, ours 11.0"));
}

/// What a run finds differs in its last digits from processor to processor, and so does which value is the worst.
#[test]
fn the_ledger_does_not_depend_on_last_digits() {
    for agreement in [Agreement::Within(0.5), Agreement::Share(0.1), Agreement::Printed, Agreement::AtLeast] {
        let kept = |good: f64, fair: f64| {
            let mut t = Table::new("", Standing::Practice, agreement);
            t.printed("one", "10", good);
            let entry = |name: &str, printed: &str, ours| (name.to_string(), printed.to_string(), ours);
            t.worst_of("table", vec![entry("good", "10", good), entry("fair", "7.0", fair)]);
            t.done().iter().map(|row| row.record("", "")).collect::<Vec<_>>()
        };
        let (a, b) = (kept(10.000_001, 7.0), kept(10.0, 7.000_02));
        assert!(a.iter().zip(&b).all(|(a, b)| same(a, b)), "{a:?} {b:?}");
    }
}

#[test]
fn a_changed_row_is_not_the_same() {
    let row: Record = std::array::from_fn(|i| if i == 8 { "0.50".to_owned() } else { i.to_string() });
    let with = |i: usize, text: &str| {
        let mut other = row.clone();
        other[i] = text.to_owned();
        other
    };
    assert!(same(&row, &with(8, "0.59")) && !same(&row, &with(8, "0.65")) && !same(&row, &with(8, "")));
    assert!((0..8).all(|i| !same(&row, &with(i, "x"))));
}
