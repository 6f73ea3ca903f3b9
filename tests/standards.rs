//! The tables of standards in use, against values written down apart from the code.
//!
//! Each test names its source and the source's standing: verified (seen on a reproduction of the standard), from memory
//! of a source that was not re-read, or common practice. Data files: `tests/data`, each with its own heading.
//! Tolerance of comparison: 1e-12 mm where both sides are table values, the rounding of the standard (up to 1 µm) where
//! a formula is compared with the rounded table.

use spanhold::job::iso286::{it_width_mm, shaft_limits};
use spanhold::job::thread::{Thread, coarse_pitch_mm};
use spanhold::job::{iso2768, iso6411, materials};

const SAME_MM: f64 = 1e-12;

/// Rows of a data file without its heading, as fields.
fn rows(name: &str) -> Vec<Vec<String>> {
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

/// Source: ISO 286-1, table 1; verified, two independent reproductions agree.
#[test]
fn val_grades_it5_to_it11_are_those_of_the_table() {
    for row in rows("iso286_it_grades.csv") {
        let (over, up_to) = (number(&row[0]), number(&row[1]));
        for (grade, um) in (5..=11).zip(&row[2..]) {
            for d in diameters(over, up_to) {
                let width = it_width_mm(grade, d).expect("in the table");
                assert!((width - number(um) / 1000.0).abs() < SAME_MM, "IT{grade} at {d}: {width}");
            }
        }
    }
}

/// Source: ISO 286-2; standing of each class and range in the data file's heading.
#[test]
fn val_limits_of_h_g_f_k_m_js_are_those_of_the_table() {
    for row in rows("iso286_shaft_limits.csv") {
        let (over, up_to, class) = (number(&row[0]), number(&row[1]), &row[2]);
        for d in diameters(over, up_to) {
            let limits = shaft_limits(class, d).expect("in the table");
            assert!((limits.upper_mm - number(&row[3]) / 1000.0).abs() < SAME_MM, "{class} at {d}: {limits:?}");
            assert!((limits.lower_mm - number(&row[4]) / 1000.0).abs() < SAME_MM, "{class} at {d}: {limits:?}");
            assert_eq!(&limits.label, class);
        }
    }
}

const STEPS: [(f64, f64); 8] =
    [(1.0, 3.0), (3.0, 6.0), (6.0, 10.0), (10.0, 18.0), (18.0, 30.0), (30.0, 50.0), (50.0, 80.0), (80.0, 120.0)];

/// Source: rules behind ISO 286-1, from memory, not re-read: `i = 0.45 D^(1/3) + 0.001 D` with D the geometric mean of the
/// step, IT4 in geometric steps from `IT1 = 0.8 + 0.02 D` to `IT5 = 7 i` (the standard rounds by up to 0.7 µm here), and
/// five grades on a tolerance is ten times as wide, so IT12 is ten times the verified IT7.
#[test]
fn val_grades_it4_and_it12_follow_their_rules() {
    for (over, up_to) in STEPS {
        let mean: f64 = (over * up_to).sqrt();
        let i = 0.45 * mean.cbrt() + 0.001 * mean;
        let it1 = 0.8 + 0.02 * mean;
        let it4 = it1 * (7.0 * i / it1).powf(0.75);
        let table = it_width_mm(4, up_to).expect("in the table") * 1000.0;
        assert!((table - it4).abs() < 0.7, "IT4 up to {up_to}: {table} against {it4:.2}");
    }
    for row in rows("iso286_it_grades.csv") {
        let (up_to, it7_um) = (number(&row[1]), number(&row[4]));
        let table = it_width_mm(12, up_to).expect("in the table");
        assert!((table - it7_um / 100.0).abs() < SAME_MM, "IT12 up to {up_to}: {table}");
    }
}

/// Source: formulas behind ISO 286-1 (e: `11 D^0.41`, f: `5.5 D^0.41`, g: `2.5 D^0.34`, k: `0.6 D^(1/3)`, m: IT7 - IT6,
/// n: `5 D^0.34`, p: IT7 and up to 5 µm more), from memory of ISO 286-1, not re-read. The standard rounds to whole µm and
/// moves single values by one more; below 3 mm its values do not all follow the formulas.
#[test]
fn val_deviations_follow_their_formulas() {
    for (over, up_to) in STEPS.into_iter().skip(1) {
        let mean: f64 = (over * up_to).sqrt();
        let upper = |class: &str| shaft_limits(class, up_to).expect("in the table").upper_mm * 1000.0;
        let lower = |class: &str| shaft_limits(class, up_to).expect("in the table").lower_mm * 1000.0;
        let near = |what: &str, table: f64, formula: f64| {
            assert!((table - formula).abs() <= 1.0, "{what} up to {up_to}: {table} against {formula:.2}");
        };
        near("e", -upper("e8"), 11.0 * mean.powf(0.41));
        near("f", -upper("f7"), 5.5 * mean.powf(0.41));
        near("g", -upper("g6"), 2.5 * mean.powf(0.34));
        near("k", lower("k5"), 0.6 * mean.cbrt());
        near("n", lower("n6"), 5.0 * mean.powf(0.34));
        let (it6, it7) = (upper("k6") - lower("k6"), upper("k7") - lower("k7"));
        near("m", lower("m6"), it7 - it6);
        let over_it7 = lower("p6") - it7;
        assert!((-1e-9..=5.0).contains(&over_it7), "p up to {up_to}: {over_it7} over IT7");
    }
}

/// Source: from memory of ISO 286-2, not re-read.
#[test]
fn val_single_limits_of_e_j_n_p() {
    let cases: [(&str, f64, f64, f64); 10] = [
        ("e8", 2.0, -14.0, -28.0),
        ("e8", 25.0, -40.0, -73.0),
        ("e7", 100.0, -72.0, -107.0),
        ("j5", 12.0, 5.0, -3.0),
        ("j6", 25.0, 9.0, -4.0),
        ("j7", 100.0, 20.0, -15.0),
        ("n6", 2.0, 10.0, 4.0),
        ("n6", 40.0, 33.0, 17.0),
        ("p6", 2.0, 12.0, 6.0),
        ("p6", 100.0, 59.0, 37.0),
    ];
    for (class, d, upper_um, lower_um) in cases {
        let limits = shaft_limits(class, d).expect("in the table");
        assert!((limits.upper_mm - upper_um / 1000.0).abs() < SAME_MM, "{class} at {d}: {limits:?}");
        assert!((limits.lower_mm - lower_um / 1000.0).abs() < SAME_MM, "{class} at {d}: {limits:?}");
    }
}

/// Source: from memory of ISO 286-1, not re-read: k is lifted in the grades 4 to 7 only.
#[test]
fn val_k_starts_at_the_nominal_diameter_from_grade_8() {
    assert_eq!(shaft_limits("k7", 25.0).map(|t| t.lower_mm), Ok(0.002));
    assert_eq!(shaft_limits("k8", 25.0).map(|t| (t.lower_mm, t.upper_mm)), Ok((0.0, 0.033)));
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
    assert!(help("h13", 20.0).contains("4 to 12"));
    assert!(help("j8", 20.0).contains("js"));
    for class in ["", "h", "6", "6g", "z6", "h6h", "h-6", "h99999999999", "ä6", "js"] {
        assert!(shaft_limits(class, 20.0).is_err(), "`{class}`");
    }
    for d in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        assert!(shaft_limits("h6", d).is_err(), "{d}");
    }
}

/// Source: from memory of ISO 2768-1, table 1, class m, not re-read.
#[test]
fn val_general_tolerances_of_class_m() {
    let cases =
        [(0.5, 0.1), (3.0, 0.1), (6.0, 0.1), (6.001, 0.2), (30.0, 0.2), (30.001, 0.3), (120.0, 0.3), (400.0, 0.5)];
    for (size, deviation) in cases {
        let limits = iso2768::limits(size).expect("in the table");
        assert_eq!((limits.lower_mm, limits.upper_mm), (-deviation, deviation), "{size}");
        assert_eq!(limits.label, "ISO 2768-m");
    }
    assert!(iso2768::limits(0.499).is_err(), "below 0.5 mm the deviations are indicated");
}

/// Source: minor diameter d3 of external threads, from memory of ISO 724 and DIN 13-1, not re-read; the tables give
/// three decimals.
#[test]
fn val_minor_diameters_of_threads() {
    let cases = [
        ("M3", 2.387),
        ("M7", 5.773),
        ("M5", 4.019),
        ("M6", 4.773),
        ("M8", 6.466),
        ("M10", 8.160),
        ("M12", 9.853),
        ("M16", 13.546),
        ("M20", 16.933),
        ("M8x1", 6.773),
        ("M16x1.5", 14.160),
        ("M20x1.5", 18.160),
    ];
    for (text, d3) in cases {
        let minor = Thread::parse(text).expect("a thread").minor_mm();
        assert!((minor - d3).abs() <= 0.0006, "{text}: {minor}");
    }
}

/// Source: from memory of ISO 261, not re-read.
#[test]
fn val_coarse_pitches() {
    for (major, pitch) in [(1.6, 0.35), (2.0, 0.4), (2.5, 0.45), (3.0, 0.5), (10.0, 1.5), (24.0, 3.0), (64.0, 6.0)] {
        assert_eq!(coarse_pitch_mm(major), Some(pitch), "M{major}");
    }
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

/// Source: from memory of ISO 6411:1982 with ISO 866, 2540, 2541, not re-read.
#[test]
fn val_centre_holes() {
    let cases = [
        ("A0.5", 0.5, 1.06),
        ("A1", 1.0, 2.12),
        ("A2.5", 2.5, 5.3),
        ("A3.15/6.7", 3.15, 6.7),
        ("B1.6", 1.6, 5.0),
        ("ISO 6411 - B4/12.5", 4.0, 12.5),
        ("R 6.3", 6.3, 13.2),
    ];
    for (text, pilot, mouth) in cases {
        let hole = iso6411::parse(text).expect(text);
        assert_eq!((hole.pilot_mm, hole.mouth_mm), (pilot, mouth), "{text}");
    }
    for text in ["", "A", "C2.5", "A2.6", "B0.5", "R0.8", "A2.5/6", "A2.5/", "A-1", "A1e0", "2.5", "Ä2.5"] {
        assert!(iso6411::parse(text).is_err(), "`{text}`");
    }
}

/// Source and standing: heading and columns of the data file; nothing in it was re-read.
#[test]
fn val_materials_are_those_of_the_table() {
    let rows = rows("materials.csv");
    assert!(rows.len() >= 15);
    for row in &rows {
        let found = materials::find(&row[0]).unwrap_or_else(|diag| panic!("{diag}"));
        if !row[1].is_empty() {
            assert_eq!(materials::find(&row[1]).map(|by_number| by_number.name), Ok(found.name));
        }
        let m = found.material();
        let got = [m.e_gpa, m.density_kg_per_m3, m.kc11_n_per_mm2, m.mc];
        assert_eq!(got, [3, 4, 6, 7].map(|i: usize| number(&row[i])), "{}", row[0]);
        assert_eq!(m.vc_m_per_min, Some((number(&row[10]), number(&row[11]))), "{}", row[0]);
        assert_eq!(found.confidence.word(), row[13], "{}", row[0]);
        let honest = ["not re-read", "no source"].iter().any(|standing| found.cutting_source.contains(standing));
        assert!(honest, "{}: {}", row[0], found.cutting_source);
    }
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
    ] {
        assert_eq!(materials::find(text).map(|row| row.name), Ok(name), "{text}");
    }
    let miss = materials::find("42CrMo5").expect_err("not in the table");
    assert!(miss.help.expect("advice").contains("did you mean `42CrMo4`?"));
    for text in ["", " ", "-", "unobtainium", "ß"] {
        assert!(materials::find(text).is_err(), "`{text}`");
    }
}

/// No two rows share a name, so that a name has one meaning.
#[test]
fn no_name_of_a_material_stands_twice() {
    let mut names: Vec<String> = materials::ROWS
        .iter()
        .flat_map(|row| [row.name, row.number].into_iter().chain(row.aliases.iter().copied()))
        .filter(|name| !name.is_empty())
        .map(|name| name.to_lowercase().replace([' ', '-'], ""))
        .collect();
    let count = names.len();
    names.sort();
    names.dedup();
    assert_eq!(names.len(), count);
}
