//! The tables of standards in use, against values written down apart from the code.
//!
//! Each table names its source and standing. Data files: `tests/data`, each with its own heading. A row of the ledger
//! stands for all entries of a class or a quantity: the one farthest off. Tolerance: rounding of binary numbers where
//! both sides are table values, the rounding of the standard (up to 1 µm) where a formula is compared with its table.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::job::iso286::{it_width_mm, shaft_limits};
use spanhold::job::thread::{Thread, coarse_pitch_mm};
use spanhold::job::{iso2768, iso6411, materials};

/// Both sides are the same table value; in µm, mm, GPa and the like.
const SAME: Agreement = Agreement::Within(1e-9);
const SEEN_IT: Standing = Standing::Verified("two independent reproductions of the table, which agree");

/// Rows of a data file without its heading, as fields.
pub fn data(name: &str) -> Vec<Vec<String>> {
    let path = format!("{}/tests/data/{name}", env!("CARGO_MANIFEST_DIR"));
    let text = std::fs::read_to_string(&path).expect("data file");
    let rows: Vec<Vec<String>> = text.lines().filter(|line| !line.starts_with('#')).skip(1).map(fields).collect();
    assert!(rows.len() >= 8, "{name}: no rows");
    rows
}

/// Fields of one line; commas inside quotes do not count.
fn fields(line: &str) -> Vec<String> {
    let mut out = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => out.push(String::new()),
            c => out.last_mut().expect("never empty").push(c),
        }
    }
    out
}

fn number(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("`{text}` is not a number"))
}

/// Smallest, a middle, and largest diameter of a step "over – up to and including".
fn diameters(over: f64, up_to: f64) -> [f64; 3] {
    [over + 0.001, (over + up_to) / 2.0, up_to]
}

/// The entries of a group of lines of a data file: name, printed value, ours.
type Entries = Vec<(String, String, f64)>;

fn grades() -> Vec<Row> {
    let mut t = Table::new("ISO 286-1, table 1", SEEN_IT, SAME);
    let lines = data("iso286_it_grades.csv");
    for (column, grade) in (5..=13).chain([4]).enumerate() {
        let mut entries = Entries::new();
        for line in &lines {
            for d in diameters(number(&line[0]), number(&line[1])) {
                let width = it_width_mm(grade, d).expect("in the table");
                entries.push((format!("d {d}"), line[column + 2].clone(), 1000.0 * width));
            }
        }
        t.worst_of(&format!("IT{grade} for 0 to 120 mm, µm"), entries);
    }
    t.done()
}

/// A class of the data file over a range of diameters, both deviations.
fn class_entries(class: &str, range: std::ops::Range<f64>) -> Entries {
    let mut entries = Entries::new();
    for line in data("iso286_shaft_limits.csv").iter().filter(|l| l[2] == class && range.contains(&number(&l[0]))) {
        for d in diameters(number(&line[0]), number(&line[1])) {
            let limits = shaft_limits(class, d).expect("in the table");
            assert_eq!(limits.label, class);
            entries.push((format!("d {d}, upper"), line[3].clone(), 1000.0 * limits.upper_mm));
            entries.push((format!("d {d}, lower"), line[4].clone(), 1000.0 * limits.lower_mm));
        }
    }
    entries
}

/// The deviation of each letter nearest to the zero line, over all steps.
fn deviations() -> Vec<Row> {
    let place = "a page reproducing DIN ISO 286-1 (d to k), a textbook of machine drawing (m to x)";
    let mut t = Table::new("ISO 286-1, deviations of shafts", Standing::Verified(place), SAME);
    let lines = data("iso286_deviations.csv");
    for (column, letter) in ["d", "e", "f", "g", "k", "m", "n", "p", "r", "s", "t", "u", "x"].into_iter().enumerate() {
        let mut entries = Entries::new();
        for line in lines.iter().filter(|l| !l[column + 2].is_empty()) {
            for d in diameters(number(&line[0]), number(&line[1])) {
                // Any grade has the same deviation; k only up to 7.
                for grade in [5, 7] {
                    let limits = shaft_limits(&format!("{letter}{grade}"), d).expect("in the table");
                    let nearest = if column < 4 { limits.upper_mm } else { limits.lower_mm };
                    entries.push((format!("d {d}"), line[column + 2].clone(), 1000.0 * nearest));
                }
            }
        }
        t.worst_of(&format!("{letter} for 0 to 120 mm, µm"), entries);
    }
    assert!(shaft_limits("t6", 24.0).is_err() && shaft_limits("t6", 24.001).is_ok());
    t.done()
}

/// Classes as the reproduction of JIS B 0401:1999 prints them: class, a diameter, upper and lower deviation.
const JIS: [(&str, f64, &str, &str); 26] = [
    ("d8", 2.0, "-20", "-34"),
    ("d9", 8.0, "-40", "-76"),
    ("d9", 45.0, "-80", "-142"),
    ("e7", 5.0, "-20", "-32"),
    ("e9", 16.0, "-32", "-75"),
    ("e8", 60.0, "-60", "-106"),
    ("f6", 12.0, "-16", "-27"),
    ("f8", 40.0, "-25", "-64"),
    ("g5", 8.0, "-5", "-11"),
    ("g6", 60.0, "-10", "-29"),
    ("h5", 25.0, "0", "-9"),
    ("js7", 25.0, "10.5", "-10.5"),
    ("k5", 60.0, "15", "2"),
    ("m5", 40.0, "20", "9"),
    ("n6", 2.0, "10", "4"),
    ("n6", 60.0, "39", "20"),
    ("p6", 25.0, "35", "22"),
    ("r6", 5.0, "23", "15"),
    ("r6", 60.0, "60", "41"),
    ("s6", 25.0, "48", "35"),
    ("s6", 65.0, "72", "53"),
    ("t6", 28.0, "54", "41"),
    ("t6", 50.0, "70", "54"),
    ("u6", 22.0, "54", "41"),
    ("x6", 14.0, "51", "40"),
    ("x6", 30.0, "77", "64"),
];

fn limits() -> Vec<Row> {
    let mut basic = Table::new("EN 10278, limits of ISO 286-2", Standing::Verified("pages reproducing EN 10278"), SAME);
    for class in ["h6", "h7", "h8", "h9", "h10", "h11"] {
        basic.worst_of(&format!("{class} for 0 to 120 mm, µm"), class_entries(class, 0.0..120.0));
    }
    let place = "a reproduction of the shaft table of JIS B 0401:1999, the same system";
    let mut seen = Table::new("ISO 286-2", Standing::Verified(place), SAME);
    let mut remembered = Table::new("ISO 286-2", Standing::Memory, SAME);
    for class in ["g6", "f7", "k6", "m6", "js6"] {
        seen.worst_of(&format!("{class} for 0 to 80 mm, µm"), class_entries(class, 0.0..80.0));
    }
    let class_at = |t: &mut Table, class: &str, d: f64, upper: &str, lower: &str| {
        let ours = shaft_limits(class, d).expect("in the table");
        let upper = ("upper".into(), upper.into(), 1000.0 * ours.upper_mm);
        let lower = ("lower".into(), lower.into(), 1000.0 * ours.lower_mm);
        t.worst_of(&format!("{class} at {d} mm, µm"), vec![upper, lower]);
    };
    for (class, d, upper, lower) in JIS {
        class_at(&mut seen, class, d, upper, lower);
    }
    for (class, d, upper, lower) in
        [("j5", 12.0, "5", "-3"), ("j6", 25.0, "9", "-4"), ("j7", 100.0, "20", "-15"), ("k8", 25.0, "33", "0")]
    {
        class_at(&mut remembered, class, d, upper, lower);
    }
    [basic.done(), seen.done(), remembered.done()].concat()
}

const STEPS: [(f64, f64); 8] =
    [(1.0, 3.0), (3.0, 6.0), (6.0, 10.0), (10.0, 18.0), (18.0, 30.0), (30.0, 50.0), (50.0, 80.0), (80.0, 120.0)];

/// `i = 0.45 D^(1/3) + 0.001 D` with D the geometric mean of the step; IT4 in geometric steps from
/// `IT1 = 0.8 + 0.02 D` to `IT5 = 7 i`; five grades on a tolerance is ten times as wide, so IT12 is ten times the verified
/// IT7. Deviations: e `11 D^0.41`, f `5.5 D^0.41`, g `2.5 D^0.34`, k `0.6 D^(1/3)`, m `IT7 - IT6`, n `5 D^0.34`, p IT7 and up
/// to 5 µm more. The standard rounds to whole µm and moves single values by one more; below 3 mm its values do not all
/// follow the formulas.
fn formulas() -> Vec<Row> {
    let source = "rules behind ISO 286-1";
    let mut fourth = Table::new(source, Standing::Memory, Agreement::Within(0.7));
    let mut entries = Entries::new();
    let exact = |x: f64| format!("{x:.2}");
    for (over, up_to) in STEPS {
        let mean: f64 = (over * up_to).sqrt();
        let i = 0.45 * mean.cbrt() + 0.001 * mean;
        let it1 = 0.8 + 0.02 * mean;
        let ours = 1000.0 * it_width_mm(4, up_to).expect("in the table");
        entries.push((format!("d {up_to}"), exact(it1 * (7.0 * i / it1).powf(0.75)), ours));
    }
    fourth.worst_of("IT4 in geometric steps from IT1 to IT5, µm", entries);

    let mut twelfth = Table::new("rule behind ISO 286-1: ten times IT7, which is verified", Standing::Memory, SAME);
    let tens = data("iso286_it_grades.csv").into_iter().map(|line| {
        let ours = 1000.0 * it_width_mm(12, number(&line[1])).expect("in the table");
        (format!("d {}", line[1]), format!("{}", 10.0 * number(&line[4])), ours)
    });
    twelfth.worst_of("IT12 is ten times IT7, µm", tens.collect());

    let mut moved = Table::new(source, Standing::Memory, Agreement::Within(1.0));
    let mut over_it7 = Table::new(source, Standing::Memory, Agreement::Within(2.5));
    let upper = |class: &str, d: f64| shaft_limits(class, d).expect("in the table").upper_mm * 1000.0;
    let lower = |class: &str, d: f64| shaft_limits(class, d).expect("in the table").lower_mm * 1000.0;
    type Value = Box<dyn Fn(f64, f64) -> f64>;
    let rules: [(&str, &str, Value, Value); 6] = [
        ("-e", "11 D^0.41", Box::new(|m, _| 11.0 * m.powf(0.41)), Box::new(move |_, d| -upper("e8", d))),
        ("-f", "5.5 D^0.41", Box::new(|m, _| 5.5 * m.powf(0.41)), Box::new(move |_, d| -upper("f7", d))),
        ("-g", "2.5 D^0.34", Box::new(|m, _| 2.5 * m.powf(0.34)), Box::new(move |_, d| -upper("g6", d))),
        ("k", "0.6 D^(1/3)", Box::new(|m, _| 0.6 * m.cbrt()), Box::new(move |_, d| lower("k5", d))),
        ("n", "5 D^0.34", Box::new(|m, _| 5.0 * m.powf(0.34)), Box::new(move |_, d| lower("n6", d))),
        (
            "m",
            "IT7 - IT6",
            Box::new(move |_, d| 1000.0 * (it_width_mm(7, d).unwrap_or(0.0) - it_width_mm(6, d).unwrap_or(0.0))),
            Box::new(move |_, d| lower("m6", d)),
        ),
    ];
    let steps = || STEPS.into_iter().skip(1).map(|(over, up_to)| ((over * up_to).sqrt(), up_to));
    for (letter, formula, rule, ours) in rules {
        let entries = steps().map(|(mean, d)| (format!("d {d}"), exact(rule(mean, d)), ours(mean, d)));
        moved.worst_of(&format!("deviation {letter} = {formula}, 3 to 120 mm, µm"), entries.collect());
    }
    let p = steps().map(|(_, d)| {
        let it7 = 1000.0 * it_width_mm(7, d).expect("in the table");
        (format!("d {d}"), "2.5".into(), lower("p6", d) - it7)
    });
    over_it7.worst_of("deviation p over IT7 is 0 to 5, 3 to 120 mm, µm", p.collect());
    [fourth.done(), twelfth.done(), moved.done(), over_it7.done()].concat()
}

#[test]
fn val_grades_and_limits_of_iso_286() {
    assert_agree(&grades());
    assert_agree(&limits());
    assert_agree(&deviations());
    assert_agree(&formulas());
}

#[test]
fn a_step_belongs_to_its_upper_end() {
    assert_eq!(it_width_mm(6, 3.0), Ok(0.006));
    assert_eq!(it_width_mm(6, 3.000_001), Ok(0.008));
    assert_eq!(it_width_mm(6, 0.001), Ok(0.006));
}

#[test]
fn classes_outside_the_table_are_refused_with_advice() {
    let help = |class: &str, d: f64| shaft_limits(class, d).expect_err(class).help.expect("advice");
    assert!(help("h6", 120.1).contains("deviations in mm"));
    assert!(help("H7", 20.0).contains("`h7`"));
    assert!(help("h14", 20.0).contains("4 to 13"));
    assert!(help("j8", 20.0).contains("js"));
    for class in ["", "h", "6", "6g", "z6", "t6", "h6h", "h-6", "h99999999999", "ä6", "js"] {
        assert!(shaft_limits(class, 20.0).is_err(), "`{class}`");
    }
    for d in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(shaft_limits("h6", d).is_err(), "{d}");
    }
}

fn general() -> Vec<Row> {
    let mut t = Table::new("ISO 2768-1, table 1, class m", Standing::Memory, SAME);
    let cases = [
        (0.5, "0.1"),
        (3.0, "0.1"),
        (6.0, "0.1"),
        (6.001, "0.2"),
        (30.0, "0.2"),
        (30.001, "0.3"),
        (120.0, "0.3"),
        (120.001, "0.5"),
        (400.0, "0.5"),
        (400.001, "0.8"),
        (1000.0, "0.8"),
    ];
    let entries = cases.map(|(size, printed)| {
        let limits = iso2768::limits(size).expect("in the table");
        assert_eq!((-limits.lower_mm, limits.label.as_str()), (limits.upper_mm, "ISO 2768-m"), "{size}");
        (format!("size {size}"), printed.to_string(), limits.upper_mm)
    });
    t.worst_of("general tolerance of class m, ± mm", entries.to_vec());
    t.done()
}

/// Minor diameter d3 of external threads; the tables give three decimals, with the pitch's own rounding.
fn threads() -> Vec<Row> {
    let mut t = Table::new("ISO 724 and DIN 13-1, minor diameter d3", Standing::Memory, Agreement::Within(6e-4));
    for (text, d3) in [
        ("M3", "2.387"),
        ("M4", "3.141"),
        ("M5", "4.019"),
        ("M6", "4.773"),
        ("M7", "5.773"),
        ("M8", "6.466"),
        ("M10", "8.160"),
        ("M12", "9.853"),
        ("M16", "13.546"),
        ("M20", "16.933"),
        ("M24", "20.319"),
        ("M30", "25.706"),
        ("M8x1", "6.773"),
        ("M16x1.5", "14.160"),
        ("M20x1.5", "18.160"),
    ] {
        t.printed(format!("d3 of {text}, mm"), d3, Thread::parse(text).expect("a thread").minor_mm());
    }
    let mut pitches = Table::new("ISO 261, coarse pitches", Standing::Memory, SAME);
    let table = [
        (1.6, "0.35"),
        (2.0, "0.4"),
        (2.5, "0.45"),
        (3.0, "0.5"),
        (4.0, "0.7"),
        (5.0, "0.8"),
        (6.0, "1"),
        (8.0, "1.25"),
        (10.0, "1.5"),
        (12.0, "1.75"),
        (16.0, "2"),
        (20.0, "2.5"),
        (24.0, "3"),
        (30.0, "3.5"),
        (36.0, "4"),
        (42.0, "4.5"),
        (48.0, "5"),
        (56.0, "5.5"),
        (64.0, "6"),
    ];
    let entries = table.map(|(major, printed)| {
        (format!("M{major}"), printed.to_string(), coarse_pitch_mm(major).expect("in the table"))
    });
    pitches.worst_of("coarse pitch of M1.6 to M64, mm", entries.to_vec());
    [t.done(), pitches.done()].concat()
}

/// Pilot and mouth of types A and B; type R has the mouth of A.
fn centre_holes() -> Vec<Row> {
    let source = "ISO 6411:1982 with ISO 866, 2540, 2541";
    let mut t = Table::new(source, Standing::Memory, SAME);
    let table = [
        ("0.5", "1.06", ""),
        ("0.63", "1.32", ""),
        ("0.8", "1.7", ""),
        ("1", "2.12", "3.15"),
        ("1.25", "2.65", "4"),
        ("1.6", "3.35", "5"),
        ("2", "4.25", "6.3"),
        ("2.5", "5.3", "8"),
        ("3.15", "6.7", "10"),
        ("4", "8.5", "12.5"),
        ("5", "10.6", "16"),
        ("6.3", "13.2", "18"),
        ("8", "17", "22.4"),
        ("10", "21.2", "28"),
    ];
    let read = |text: String| iso6411::parse(&text).unwrap_or_else(|diag| panic!("{text}: {diag}"));
    let mouths = |form: &str, of: fn(&(&'static str, &'static str, &'static str)) -> &'static str| -> Entries {
        let sizes = table.iter().filter(|row| !of(row).is_empty() && (form != "R" || number(row.0) >= 1.0));
        let one = |row: &(&'static str, &'static str, &'static str)| {
            let hole = read(format!("{form}{}", row.0));
            assert_eq!(hole.pilot_mm, number(row.0), "{form}{}", row.0);
            (format!("{form}{}", row.0), of(row).to_string(), hole.mouth_mm)
        };
        sizes.map(one).collect()
    };
    t.worst_of("mouth of centre holes of type A, mm", mouths("A", |row| row.1));
    t.worst_of("mouth of centre holes of type B, mm", mouths("B", |row| row.2));
    t.worst_of("mouth of centre holes of type R, mm", mouths("R", |row| row.1));
    t.done()
}

#[test]
fn val_general_tolerances_threads_and_centre_holes() {
    assert_agree(&general());
    assert_agree(&threads());
    assert_agree(&centre_holes());
    assert!(iso2768::limits(0.499).is_err(), "below 0.5 mm the deviations are indicated");
    assert!(iso2768::limits(1000.1).is_err());
    assert_eq!(coarse_pitch_mm(17.0), None);
}

#[test]
fn threads_are_read_in_the_ways_people_write_them() {
    for text in ["M16x1.5", "m16X1.5", "M16 x 1.5", "M16×1.5"] {
        let thread = Thread::parse(text).expect(text);
        assert_eq!((thread.major_mm, thread.pitch_mm), (16.0, 1.5), "{text}");
    }
    let coarse = Thread::parse("M16x9").expect_err("coarser than its diameter");
    assert!(coarse.help.expect("advice").contains("coarse pitch of M16 is 2 mm"));
    for text in
        ["", "M", "16x1.5", "M16x", "Mx1", "M16x-1", "M16x0", "M0x1", "M16x1.5x2", "M1e1", "M17", "Minf", "M16xnan"]
    {
        assert!(Thread::parse(text).is_err(), "`{text}`");
    }
}

#[test]
fn centre_holes_are_read_in_the_ways_people_write_them() {
    for (text, pilot, mouth) in [("A3.15/6.7", 3.15, 6.7), ("ISO 6411 - B4/12.5", 4.0, 12.5), ("R 6.3", 6.3, 13.2)] {
        let hole = iso6411::parse(text).expect(text);
        assert_eq!((hole.pilot_mm, hole.mouth_mm), (pilot, mouth), "{text}");
    }
    for text in ["", "A", "C2.5", "A2.6", "B0.5", "R0.8", "A2.5/6", "A2.5/", "A-1", "A1e0", "2.5", "Ä2.5"] {
        assert!(iso6411::parse(text).is_err(), "`{text}`");
    }
}

/// Elastic values and speeds as one row a quantity, cutting values as one row a material with its own standing.
pub fn metals() -> Vec<Row> {
    let rows = data("materials.csv");
    let entries = |column: usize, of: fn(&materials::Material) -> f64| -> Entries {
        let one = |row: &Vec<String>| {
            let found = materials::find(&row[0]).unwrap_or_else(|diag| panic!("{diag}"));
            (row[0].clone(), row[column].clone(), of(&found.material()))
        };
        rows.iter().map(one).collect()
    };
    let standards = "EN 10277, EN 10083, EN 10088, EN 12164, EN 755, ISO 5832 (ordinary values)";
    let mut elastic = Table::new(standards, Standing::Memory, SAME);
    elastic.worst_of("Young's modulus of materials, GPa", entries(3, |m| m.e_gpa));
    elastic.worst_of("density of materials, kg/m³", entries(4, |m| m.density_kg_per_m3));
    elastic.worst_of("Poisson's ratio of materials", entries(14, |m| m.poisson));
    let mut speeds = Table::new("speeds for coated carbide with coolant", Standing::Practice, SAME);
    speeds.worst_of("usual cutting speed, low, m/min", entries(10, |m| m.vc_m_per_min.map_or(f64::NAN, |v| v.0)));
    speeds.worst_of("usual cutting speed, high, m/min", entries(11, |m| m.vc_m_per_min.map_or(f64::NAN, |v| v.1)));
    let mut all = [elastic.done(), speeds.done()].concat();
    let (kc, mc) = (entries(6, |m| m.kc11_n_per_mm2), entries(7, |m| m.mc));
    let sources: Vec<_> = rows.iter().map(|row| cutting_source(&row[12])).collect();
    let mut seen = Vec::new();
    for (source, standing) in sources.iter().copied() {
        if seen.contains(&source) {
            continue;
        }
        seen.push(source);
        let of = |all: &Entries| -> Entries {
            let named = all.iter().zip(&sources).filter(|(_, from)| from.0 == source);
            named.map(|(entry, _)| entry.clone()).collect()
        };
        let mut t = Table::new(source, standing, SAME);
        t.worst_of("kc1.1 of materials, N/mm²", of(&kc));
        t.worst_of("mc of materials", of(&mc));
        all.extend(t.done());
    }
    all
}

/// The source of a first pair, as the data file tells it, and its standing.
fn cutting_source(told: &str) -> (&'static str, Standing) {
    use Standing::{Memory, Practice, Verified};
    let sources = [
        ("Kienzle/Victor", "Kienzle and Victor, as printed in Tschätsch", Memory),
        ("König/Essel 1973 and Tabellenbuch", "König/Essel (1973) and Tabellenbuch Metall, free-cutting steel", Memory),
        ("first: from memory of Tabellenbuch", "Tabellenbuch Metall", Memory),
        ("Tschätsch", "Tschätsch, Praxis der Zerspantechnik", Memory),
        ("König/Essel", "König/Essel, Spezifische Schnittkraftwerte (1973)", Memory),
        ("handbook values", "handbook values, group titanium alloys", Memory),
        ("second-hand", "a second-hand copy of a table book", Verified("the second-hand copy, not in the book")),
        ("catalogue", "a tool maker's catalogue, 2022, p. 111: groups of materials", Verified("the page")),
        ("estimate", "estimate", Practice),
    ];
    let found = sources.into_iter().find(|(word, ..)| told.contains(word));
    let (_, source, standing) = found.unwrap_or_else(|| panic!("no source in `{told}`"));
    (source, standing)
}

/// Source and standing: heading and columns of the data file.
#[test]
fn val_materials_are_those_of_the_table() {
    assert_agree(&metals());
    let rows = data("materials.csv");
    assert_eq!(rows.len(), materials::rows().count());
    for row in &rows {
        let found = materials::find(&row[0]).unwrap_or_else(|diag| panic!("{diag}"));
        if !row[1].is_empty() {
            assert_eq!(materials::find(&row[1]).map(|by_number| by_number.name), Ok(found.name));
        }
        assert_eq!(found.confidence.word(), row[13], "{}", row[0]);
        assert_eq!(found.class.key(), row[15], "{}", row[0]);
        let honest = ["not checked against", "no source", "not read itself", "a tool maker's catalogue"];
        let honest = honest.iter().any(|standing| found.cutting_source.contains(standing));
        assert!(honest, "{}: {}", row[0], found.cutting_source);
    }
}

/// The second reading of the model has its own copy of the speeds.
#[test]
fn val_speeds_are_those_of_the_table() {
    let number = |text: &str| text.parse::<f64>().expect("a number");
    let rows = data("speeds.csv");
    assert_eq!(rows.len(), materials::CLASSES.len());
    for (row, (key, class)) in rows.iter().zip(materials::CLASSES) {
        let s = class.speeds();
        let ours = [s.drill_m_per_min, s.drill_feed_share, s.tap_m_per_min, s.mill_m_per_min];
        assert_eq!((row[0].as_str(), ours), (key, [1, 2, 3, 4].map(|i| number(&row[i]))));
        assert_eq!(row[5] == "full", s.tooth_feed == materials::ToothFeed::Full, "{key}");
    }
    for row in data("tooth_feeds.csv") {
        let [d, full, small] = [0, 1, 2].map(|i| number(&row[i]));
        assert_eq!(materials::fz_mm(materials::ToothFeed::Full, d), full);
        assert_eq!(materials::fz_mm(materials::ToothFeed::Small, d), small);
    }
}

/// Rows of tolerances, threads and centre holes.
pub fn sizes() -> Vec<Row> {
    [grades(), limits(), deviations(), formulas(), general(), threads(), centre_holes()].concat()
}

#[test]
fn materials_are_found_by_any_of_their_names() {
    for (text, name) in [
        ("C45", "C45"),
        ("c 45", "C45"),
        ("1.0503", "C45"),
        ("X5CrNi18-10", "X5CrNi18-10"),
        ("x5crni1810", "X5CrNi18-10"),
        ("1.4301", "X5CrNi18-10"),
        ("304", "X5CrNi18-10"),
        ("17-4 PH", "X5CrNiCuNb16-4"),
        ("ti6al4v", "Ti-6Al-4V"),
        ("7075", "EN AW-7075"),
        ("1.4057", "X17CrNi16-2"),
        ("4140", "42CrMo4"),
        ("SAE 4140", "42CrMo4"),
        ("AISI/SAE 4140", "42CrMo4"),
        ("UNS G41400", "42CrMo4"),
        ("S45C", "C45"),
        ("SUS303", "X8CrNiS18-9"),
        ("JIS SUS 303", "X8CrNiS18-9"),
        ("12L14", "11SMnPb30"),
        ("1,7225", "42CrMo4"),
        ("W.-Nr. 1.7225", "42CrMo4"),
        ("42CrMo4+QT", "42CrMo4"),
        ("42CrMoS4 + QT", "42CrMo4"),
        ("DIN C45", "C45"),
        ("CW614N", "CuZn39Pb3"),
        ("C36000", "CuZn36Pb3"),
        ("EN 10088-3 1.4301", "X5CrNi18-10"),
        ("DIN EN 10088-3:2014 X5CrNi18-10", "X5CrNi18-10"),
        ("EN10088-3 1.4301+AT", "X5CrNi18-10"),
        ("JIS G4303 SUS304", "X5CrNi18-10"),
        ("X5CrNi18-10 (1.4301)", "X5CrNi18-10"),
        ("1.4301 / AISI 304", "X5CrNi18-10"),
        ("AISI 304 1.4301", "X5CrNi18-10"),
        ("EN AW 6082 T6", "EN AW-6082"),
        ("6082-T6", "EN AW-6082"),
        ("AlZn5,5MgCu", "EN AW-7075"),
        ("Ti Gr. 5", "Ti-6Al-4V"),
        ("AISI H13", "X40CrMoV5-1"),
        ("Alloy 718", "NiCr19Fe19Nb5Mo3"),
    ] {
        assert_eq!(materials::find(text).map(|row| row.name), Ok(name), "{text}");
    }
    let miss = materials::find("42CrMo5").expect_err("not in the table");
    assert!(miss.help.expect("advice").contains("did you mean `42CrMo4`?"));
    // A tolerance, a thread, two materials, dimensions.
    for text in
        ["", " ", "-", "unobtainium", "ß", "H13", "M2", "1.4301 / 1.4305", "304 +0.1", "AISI", "EN 10088-3", "+QT"]
    {
        assert!(materials::find(text).is_err(), "`{text}`");
    }
}
