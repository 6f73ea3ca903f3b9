//! Threads: sizes of the standards, numbers of passes and infeeds, against printed tables.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use crate::standards::data;
use spanhold::job::thread::Thread;
use spanhold::mechanics::threading::{Profile, infeeds_mm, passes};

const CAD: Standing = Standing::Verified("the thread tables in the source of an open CAD program, a reproduction");
const WEB: Standing = Standing::Verified("web reproductions of the table");
const SOFT: Profile = Profile::Sharp { hard: false };
const HARD: Profile = Profile::Sharp { hard: true };

fn read(text: &str) -> Thread {
    Thread::parse(text).unwrap_or_else(|diag| panic!("{text}: {diag}"))
}

/// The sizes of `tests/data/thread_sizes.csv`, a row of the ledger for each group and quantity.
pub fn sizes() -> Vec<Row> {
    let lines = data("thread_sizes.csv");
    let group = |name: &str| -> Vec<(String, Vec<String>)> {
        let lines = lines.iter().filter(|l| l[0] == name && l[1] != "G1 3/4" && l[1] != "M35x2");
        let all: Vec<_> = lines.map(|l| (l[1].clone(), l[2..].to_vec())).collect();
        assert!(all.len() > 10, "{name}");
        all
    };
    let mut out = Vec::new();
    for (name, source) in [
        ("metric fine", "ISO 261, fine pitches up to 64 mm"),
        ("UNC", "ASME B1.1, UNC"),
        ("UNF", "ASME B1.1, UNF"),
        ("UNEF", "ASME B1.1, UNEF"),
        ("pipe", "ISO 228-1"),
    ] {
        let mut t = Table::new(source, CAD, Agreement::Within(0.001));
        for (column, what) in [(0, "major diameter"), (1, "pitch")] {
            let entry = |(text, line): (String, Vec<String>)| {
                let thread = read(&text);
                assert!(thread.is_usual(), "{text}");
                let ours = if column == 0 { thread.major_mm } else { thread.pitch_mm };
                (text, line[column].clone(), ours)
            };
            t.worst_of(&format!("{what} of {name} threads, mm"), group(name).into_iter().map(entry).collect());
        }
        out.extend(t.done());
    }
    let mut t = Table::new("ISO 2904", WEB, Agreement::Printed);
    let entry = |(text, line): (String, Vec<String>)| {
        assert!(read(&text).is_usual(), "{text}");
        (text.clone(), line[2].clone(), read(&text).minor_mm())
    };
    t.worst_of("minor diameter d3 of trapezoidal threads, mm", group("trapezoidal").into_iter().map(entry).collect());
    out.extend(t.done());
    let mut t = Table::new("ISO 228-1, depth and minor diameter", WEB, Agreement::Within(0.001));
    for (text, depth, minor) in [("G1/8", "0.581", "8.566"), ("G1/4", "0.856", "11.445"), ("G3/8", "0.856", "14.950")] {
        t.printed(format!("depth of {text}, mm"), depth, read(text).depth_mm());
        t.printed(format!("minor diameter of {text}, mm"), minor, read(text).minor_mm());
    }
    out.extend(t.done());
    // The CAD program prints 53.743 mm; ISO 228-1, from memory, has 53.746.
    let mut t = Table::new("ISO 228-1", CAD, Agreement::Missed);
    t.printed("major diameter of G1 3/4, mm", "53.743", read("G1 3/4").major_mm);
    out.extend(t.done());
    out
}

/// Number of passes of external threads, one start.
fn numbers_of_passes() -> Vec<Row> {
    let mut out = Vec::new();
    type Printed = &'static [(f64, usize)];
    let tables: [(&'static str, &'static str, Printed); 5] = [
        (
            "full profile",
            "a tool maker's catalogue, 2019, p. 404",
            &[(0.75, 4), (1.0, 5), (1.25, 7), (1.5, 8), (1.75, 10), (2.0, 12), (2.5, 14), (3.0, 16)],
        ),
        (
            "partial profile up to 2 mm",
            "a tool maker's catalogue, 2019, p. 415",
            &[(1.0, 5), (1.25, 6), (1.5, 7), (1.75, 8), (2.0, 10)],
        ),
        (
            "partial profile from 1.5 mm",
            "a tool maker's catalogue, 2019, p. 415",
            &[(1.5, 7), (1.75, 8), (2.0, 9), (2.5, 12), (3.0, 14)],
        ),
        ("radial infeed", "a copied table of depths of cut", &[(0.5, 4), (0.75, 4), (1.0, 5), (1.25, 6), (1.5, 6)]),
        ("school table", "a table book of vocational schools, second hand", &[(0.5, 4), (0.75, 4), (1.0, 5), (1.5, 6)]),
    ];
    for (kind, source, table) in tables {
        for (pitch, printed) in table {
            let ours = passes(*pitch, SOFT);
            let agreement = if ours == *printed { Agreement::Printed } else { Agreement::Missed };
            let mut t = Table::new(source, Standing::Verified("the page named, or a copy of it"), agreement);
            t.printed(format!("passes of a thread of pitch {pitch}, {kind}"), &printed.to_string(), ours as f64);
            out.extend(t.done());
        }
    }
    type Range = &'static [(f64, usize, usize)];
    let ranges: [(&'static str, Range); 3] = [
        (
            "a tool maker's catalogue, 2011, p. 1262",
            &[(1.0, 5, 9), (1.25, 6, 11), (1.5, 6, 12), (1.75, 8, 13), (2.0, 8, 14), (2.5, 10, 15), (3.0, 12, 17)],
        ),
        (
            "a tool maker's catalogue, 2017, p. 685",
            &[
                (0.75, 4, 5),
                (1.0, 5, 6),
                (1.5, 6, 8),
                (2.0, 8, 10),
                (3.0, 9, 12),
                (4.0, 12, 15),
                (6.0, 14, 16),
                (8.0, 15, 25),
            ],
        ),
        (
            "a tool maker's catalogue, 2020, p. 1636",
            &[
                (0.5, 4, 6),
                (0.75, 4, 7),
                (1.0, 4, 8),
                (1.25, 5, 9),
                (1.5, 6, 10),
                (1.75, 7, 12),
                (2.0, 7, 12),
                (2.5, 8, 14),
                (3.0, 10, 16),
                (4.0, 11, 18),
            ],
        ),
    ];
    for (source, range) in ranges {
        for (pitch, least, most) in range {
            for (profile, of) in [(SOFT, "usual"), (HARD, "hard")] {
                let ours = passes(*pitch, profile);
                let inside = (*least..=*most).contains(&ours);
                let agreement = if inside { Agreement::Within((most - least) as f64 / 2.0) } else { Agreement::Missed };
                let mut t = Table::new(source, Standing::Verified("the page named"), agreement);
                let middle = (least + most) as f64 / 2.0;
                let what = format!("passes of a thread of pitch {pitch}, {of} material, {least} to {most}");
                t.printed(what, &middle.to_string(), ours as f64);
                out.extend(t.done());
            }
        }
    }
    let source = "a tool maker's catalogue, 2017, p. 685";
    for (pitch, least, most) in [(1.5, 5, 6), (2.0, 7, 8), (3.0, 10, 11), (4.0, 12, 13), (6.0, 13, 15), (8.0, 18, 20)] {
        let half = f64::from(most - least) / 2.0;
        let mut t = Table::new(source, Standing::Verified("the page named"), Agreement::Within(half));
        let what = format!("passes of a trapezoidal thread of pitch {pitch}, {least} to {most}");
        t.printed(what, &(f64::from(least + most) / 2.0).to_string(), passes(pitch, Profile::Trapezoid) as f64);
        out.extend(t.done());
    }
    out
}

/// Infeeds: the first pass of printed ladders, and a ladder by another rule, which ours is known to miss.
fn infeeds() -> Vec<Row> {
    let source = "a tool maker's catalogue, 2019, p. 415";
    let mut t = Table::new(source, Standing::Verified("the page named"), Agreement::Share(0.25));
    for (pitch, depth, passes, first) in [
        (1.0, 0.65, 5, "0.20"),
        (1.25, 0.84, 6, "0.20"),
        (1.5, 1.03, 7, "0.22"),
        (1.75, 1.22, 8, "0.22"),
        (2.0, 1.41, 10, "0.22"),
    ] {
        let what = format!("first infeed of a thread of pitch {pitch}, {depth} mm deep in {passes} passes, mm");
        t.printed(what, first, infeeds_mm(depth, passes)[0]);
    }
    let mut other = Table::new(
        "a web calculator of threading cycles, depth a √(n/N)",
        Standing::Verified("the page named"),
        Agreement::Missed,
    );
    let mut depth = 0.0;
    for (n, (infeed, printed)) in
        infeeds_mm(0.92, 6).into_iter().zip(["0.376", "0.531", "0.651", "0.751", "0.840"]).enumerate()
    {
        depth += infeed;
        other.printed(
            format!("thread 0.92 mm deep in 6 passes by a √(n/N): depth after pass {}, mm", n + 1),
            printed,
            depth,
        );
    }
    [t.done(), other.done()].concat()
}

pub fn rows() -> Vec<Row> {
    [numbers_of_passes(), infeeds()].concat()
}

#[test]
fn sizes_passes_and_infeeds_agree_with_the_tables() {
    assert_agree(&sizes());
    assert_agree(&rows());
}

/// The tables of passes are the medians of the rows above, a range counted by its middle; for hard materials of the upper ends.
#[test]
fn the_tables_of_passes_are_medians() {
    let median = |mut values: Vec<f64>| {
        values.sort_by(f64::total_cmp);
        let n = values.len();
        0.5 * (values[(n - 1) / 2] + values[n / 2])
    };
    for (pitch, all, upper) in [
        (0.75, vec![4.0, 4.0, 4.0, 4.5, 5.5], vec![5.0, 7.0]),
        (1.0, vec![5.0, 5.0, 5.0, 5.0, 7.0, 5.5, 6.0], vec![9.0, 6.0, 8.0]),
        (1.25, vec![7.0, 6.0, 6.0, 8.5, 7.0, 7.0], vec![11.0, 8.0, 9.0]),
        (1.5, vec![8.0, 7.0, 7.0, 6.0, 6.0, 9.0, 7.0, 8.0], vec![12.0, 8.0, 10.0]),
        (2.0, vec![12.0, 10.0, 9.0, 11.0, 9.0, 9.5], vec![14.0, 10.0, 12.0]),
        (3.0, vec![16.0, 14.0, 14.5, 10.5, 13.0], vec![17.0, 12.0, 16.0]),
    ] {
        assert_eq!(passes(pitch, SOFT), median(all).round() as usize, "{pitch}");
        assert_eq!(passes(pitch, HARD), median(upper).round() as usize, "{pitch}, hard");
    }
    // It never falls with the pitch, and a hard material never takes fewer.
    let mut last = 0;
    for tenths in 1..140 {
        let pitch = f64::from(tenths) / 10.0;
        assert!(passes(pitch, SOFT) >= last && passes(pitch, HARD) >= passes(pitch, SOFT), "{pitch}");
        last = passes(pitch, SOFT);
    }
    assert_eq!([0.25, 0.5, 5.0, 10.0].map(|p| passes(p, SOFT)), [4, 4, 16, 24]);
}
