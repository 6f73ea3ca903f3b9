//! Drawings and tables come back as the shafts they were made from. The drawings in `tests/drawings` are written by a
//! library from outside (`.ci/drawings.py`, which makes many more), with what must come back.

use super::{call, call_in};
use serde_json::Value;
use spanhold::input::read_job_text;
use spanhold::job::{Job, SectionKind};
use std::path::{Path, PathBuf};

fn drawings() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/drawings")
}

fn job(text: &str) -> Job {
    read_job_text("draft.yaml", text, &drawings()).unwrap_or_else(|diags| panic!("{diags:?}\n{text}"))
}

/// Whether a section of the job is the one that is expected.
fn is(section: &spanhold::job::Section, row: &Value) -> bool {
    let number = |key: &str| row[key].as_f64().unwrap_or(f64::NAN);
    let near = |a: f64, b: f64| (a - b).abs() < 1e-6;
    let kind = match &section.kind {
        SectionKind::Cylinder { diameter_mm } => row["kind"].is_null() && near(*diameter_mm, number("diameter")),
        SectionKind::Groove { diameter_mm } => row["kind"] == "groove" && near(*diameter_mm, number("diameter")),
        SectionKind::Taper { front_mm, rear_mm } => {
            let end = |i: usize| row["taper"][i].as_f64().unwrap_or(f64::NAN);
            near(*front_mm, end(0)) && near(*rear_mm, end(1))
        }
        SectionKind::Thread(thread) => row["thread"] == thread.designation.as_str(),
        _ => false,
    };
    let label = match row["tolerance"].as_str() {
        None => "ISO 2768-m",
        Some("[-0.05, 0]") => "0/-0.05",
        Some(class) => class,
    };
    kind && near(section.length_mm(), number("length"))
        && (section.tolerance.label == label || matches!(section.kind, SectionKind::Thread(_)))
}

fn assert_sections(name: &str, text: &str, rows: &Value) {
    let found = job(text).shaft.sections;
    let rows = rows.as_array().unwrap_or_else(|| panic!("{name}: no rows"));
    assert_eq!(found.len(), rows.len(), "{name}: {text}");
    for (section, row) in found.iter().zip(rows) {
        assert!(is(section, row), "{name}: {section:?} is not {row}");
    }
}

fn expected() -> serde_json::Map<String, Value> {
    let text = std::fs::read_to_string(drawings().join("expected.json")).expect("readable");
    serde_json::from_str(&text).expect("a map")
}

#[test]
fn every_drawing_comes_back_as_its_shaft() {
    let expected = expected();
    assert!(expected.len() >= 5, "{}", expected.len());
    for (name, of) in &expected {
        let mut args = vec!["draft".to_owned(), format!("{name}.dxf")];
        args.extend(of["args"].as_array().into_iter().flatten().filter_map(|a| a.as_str().map(str::to_owned)));
        let called = call_in(&drawings(), &args);
        assert_eq!(called.status, 0, "{name}: {}", called.err);
        assert_sections(name, &called.out, &of["sections"]);
        // What was decided stands in the job as well, as remarks.
        let notes: Vec<&str> = called.err.lines().collect();
        assert!(!notes.is_empty() && called.out.contains("# - "), "{name}");
    }
}

/// The demo's job says that it was drafted from the drawing beside it.
#[test]
fn the_demo_drawing_gives_the_sections_of_the_demo_job() {
    let demo = Path::new(env!("CARGO_MANIFEST_DIR")).join("demo");
    let called = call_in(&demo, ["draft", "platen-shaft.dxf", "--machine", "machines/mid-20.yaml"]);
    assert_eq!(called.status, 0, "{}", called.err);
    let drafted = read_job_text("draft.yaml", &called.out, &demo).unwrap_or_else(|diags| panic!("{diags:?}"));
    let stored = spanhold::input::read_job(&demo.join("platen-shaft.yaml")).unwrap_or_else(|diags| panic!("{diags:?}"));
    assert_eq!(drafted.shaft.material, stored.shaft.material);
    let shapes = |job: &Job| {
        job.shaft.sections.iter().map(|s| (s.kind.clone(), s.to_mm, s.tolerance.clone())).collect::<Vec<_>>()
    };
    assert_eq!(shapes(&drafted), shapes(&stored));
    assert!(called.err.contains("`harden seat to 50 HRC` on layer `FRAME` at ("), "{}", called.err);
}

#[test]
fn what_a_drawing_holds_beside_the_shaft_is_told_with_its_place() {
    let called = call_in(&drawings(), ["draft", "r2018-noise.dxf"]);
    for says in [
        "NOT READ: 1 HATCH on layer `HATCHING`, the first at (",
        "NOT READ: 1 CIRCLE on layer `CONTOUR`, the first at (",
        "NOT READ: 1 ELLIPSE on layer `FRAME`",
        "NOT PART OF THE CONTOUR: 4 LINE on layer `0`",
        "NOT UNDERSTOOD: TEXT `invented works` on layer `FRAME` at (",
        "From the drawing: material X5CrNi18-10.",
        "The axis is the centre line from (",
    ] {
        assert!(called.err.contains(says), "{says} is not in\n{}", called.err);
    }
    assert!(called.out.contains("with chamfer 0.5 x 45°"), "{}", called.out);
    let rounded = call_in(&drawings(), ["draft", "r2007-binary-block.dxf"]).out;
    assert!(rounded.contains("with radius 0.4 mm"), "{rounded}");
    assert!(called.out.contains("PLACEHOLDER: an example machine"), "{}", called.out);
}

#[test]
fn a_draft_goes_into_a_file_with_a_machine_and_is_planned() {
    let dir = tempfile::tempdir().expect("a folder");
    let machine = Path::new(env!("CARGO_MANIFEST_DIR")).join("demo/machines/long-bed-32.yaml");
    let drawing = drawings().join("r12-half-gaps.dxf");
    let out = dir.path().join("job.yaml");
    let args = ["draft".as_ref(), drawing.as_os_str(), "--out".as_ref(), out.as_os_str(), "--machine".as_ref()];
    let args = args.into_iter().chain([machine.as_os_str(), "--stock".as_ref(), "18".as_ref()]);
    let called = call(args.clone());
    assert_eq!((called.status, called.out.as_str()), (0, ""), "{}", called.err);
    assert!(called.err.contains(" is written. Check it"), "{}", called.err);
    let planned = call(["check".as_ref(), out.as_os_str(), "--format".as_ref(), "json".as_ref()]);
    assert!(planned.status <= 1, "{}", planned.err);
    assert_eq!(planned.json()["machine"], "long bed 32");
    // Never over a file that exists.
    let text = std::fs::read_to_string(&out).expect("written");
    let again = call(args);
    assert_eq!((again.status, std::fs::read_to_string(&out).expect("there")), (2, text));
}

#[test]
fn a_table_and_a_workbook_give_the_same_job() {
    let table = call_in(&drawings(), ["draft", "sections.csv"]);
    let book = call_in(&drawings(), ["draft", "sections.xlsx"]);
    assert_eq!((table.status, book.status), (0, 0), "{}{}", table.err, book.err);
    let (of_table, of_book) = (job(&table.out).shaft.sections, job(&book.out).shaft.sections);
    assert_eq!(of_table, of_book);
    assert_eq!(of_table.len(), 6);
    assert_eq!(of_table[0].name.as_deref(), Some("front journal"));
    assert_eq!(of_table[5].tolerance.label, "+0.012/+0.001");
    assert!(book.err.contains("The sections are from the sheet `shaft`"), "{}", book.err);
    let other = call_in(&drawings(), ["draft", "sections.xlsx", "--sheet", "notes"]);
    assert!(other.status == 2 && other.err.contains("row 1, column A, `invented`: unknown heading"), "{}", other.err);
    let none = call_in(&drawings(), ["draft", "sections.xlsx", "--sheet", "none"]);
    assert!(none.status == 2 && none.err.contains("Use one of these sheets: shaft, notes"), "{}", none.err);
}

#[test]
fn a_drawing_that_gives_no_shaft_is_told() {
    let dir = tempfile::tempdir().expect("a folder");
    let read = |name: &str| std::fs::read_to_string(drawings().join(name)).expect("readable");
    let half = read("r12-half-gaps.dxf");
    let open = half.replacen("\nARC\n", "\nCIRCLE\n", 1);
    let cases: [(&str, Vec<u8>, &str); 9] = [
        ("a.dxf", b"AC1032\0\0\0".to_vec(), "is a DWG file"),
        ("b.dxf", b"0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n".to_vec(), "has no drawing in it"),
        ("c.dxf", b"this is no drawing".to_vec(), "cannot be read as DXF"),
        ("d.dxf", half.as_bytes()[..half.len() / 2].to_vec(), ""),
        ("e.dxf", half.replace("CONTOUR", "HATCH").into_bytes(), "no line for a contour"),
        ("f.dxf", open.into_bytes(), "The contour is open between ("),
        ("g.dwg", Vec::new(), "is a DWG file"),
        ("h.pdf", Vec::new(), "type of `h.pdf` is unknown"),
        ("i.xlsx", b"PK\x03\x04".to_vec(), "cannot be read as a workbook"),
    ];
    for (name, bytes, says) in cases {
        std::fs::write(dir.path().join(name), bytes).expect("written");
        let called = call_in(dir.path(), ["draft", name]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{name}: {}", called.err);
        assert!(called.err.contains(says) && called.err.contains(". "), "{name}: {}", called.err);
    }
    for (args, says) in [
        (["--gap", "0"], "`--gap` cannot be 0"),
        (["--scale", "-1"], "`--scale` cannot be -1"),
        (["--stock", "1000"], "`--stock` cannot be 1000"),
        (["--material", "unobtainium"], "unobtainium"),
        (["--machine", "nowhere.yaml"], "nowhere.yaml"),
    ] {
        let path = drawings().join("r12-half-gaps.dxf");
        let path = path.to_string_lossy();
        let joined = format!("{}={}", args[0], args[1]);
        let called = call_in(dir.path(), ["draft", &path, &joined]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{args:?}");
        assert!(called.err.contains(says), "{args:?}: {}", called.err);
    }
}

/// A time of the header that is out of all bounds, which the library does not survive, and a broken line here and there.
#[test]
fn damaged_drawings_end_in_a_word_not_in_a_panic() {
    let dir = tempfile::tempdir().expect("a folder");
    let text = std::fs::read_to_string(drawings().join("r2000-inch-upright.dxf")).expect("readable");
    let lines: Vec<&str> = text.split('\n').collect();
    let at = lines.iter().position(|l| l.contains("$TDCREATE")).expect("a time in the header");
    let mut timeless = lines.clone();
    timeless[at + 2] = "1e308";
    std::fs::write(dir.path().join("time.dxf"), timeless.join("\n")).expect("written");
    let called = call_in(dir.path(), ["draft", "time.dxf"]);
    assert_eq!(called.status, 0, "{}", called.err);
    assert_sections("time.dxf", &called.out, &expected()["r2000-inch-upright"]["sections"]);
    // Two bytes too many in the middle of a time: the library stumbles over what comes behind, and what it says of itself is
    // not for the user.
    let mut binary = std::fs::read(drawings().join("r2007-binary-block.dxf")).expect("readable");
    let name = b"$TDUPDATE\0";
    let at = binary.windows(name.len()).position(|w| w == name).expect("a time in the header") + name.len() + 4;
    binary.splice(at..at, [0xad, 0xbc]);
    std::fs::write(dir.path().join("binary.dxf"), binary).expect("written");
    let called = call_in(dir.path(), ["draft", "binary.dxf"]);
    assert_eq!((called.status, called.out.as_str()), (2, ""), "{}", called.err);
    assert!(called.err.contains("cannot be read as DXF") && !called.err.contains(".rs:"), "{}", called.err);
    let mut random = fastrand::Rng::with_seed(11);
    for round in 0..40 {
        let mut broken = lines.clone();
        for _ in 0..random.usize(1..5) {
            let i = random.usize(..broken.len());
            broken[i] = ["", "nan", "1e308", "-1", "99999999999999999999", "\u{fffd}"][random.usize(..6)];
        }
        std::fs::write(dir.path().join("broken.dxf"), broken.join("\n")).expect("written");
        let called = call_in(dir.path(), ["draft", "broken.dxf"]);
        assert!([0, 2].contains(&called.status), "round {round}: {}", called.err);
    }
}

/// One stray cell in the last row and column of a sheet, and a table of a million rows: told, and no memory or time is taken by it.
#[test]
fn tables_of_any_extent_are_answered() {
    let dir = tempfile::tempdir().expect("a folder");
    let sheet = dir.path().join("stray.xlsx");
    let mut book = rust_xlsxwriter::Workbook::new();
    let page = book.add_worksheet();
    for (column, text) in ["length", "diameter"].into_iter().enumerate() {
        page.write(0, column as u16, text).expect("a cell");
        page.write(1, column as u16, 20.0).expect("a cell");
    }
    page.write(1_048_575, 16_383, "stray").expect("a cell");
    book.save(&sheet).expect("written");
    let called = call(["draft".as_ref(), sheet.as_os_str()]);
    assert_eq!(called.status, 0, "{}", called.err);
    assert!(called.err.contains("NOT READ: 1 cells beyond"), "{}", called.err);

    let table = dir.path().join("long.csv");
    std::fs::write(&table, format!("length,diameter\n{}", "20,20\n".repeat(1_000_000))).expect("written");
    let called = call(["draft".as_ref(), table.as_os_str()]);
    assert_eq!((called.status, called.out.as_str()), (2, ""));
    assert!(called.err.contains("rows") && called.err.contains("1000"), "{}", called.err);
}

/// A shaft of Ø10 by 30 and Ø12 by 45 as drawn: half a contour on a centre line, its lengths dimensioned without numbers of
/// their own, in a style that counts `style` times; the second dimension counts `own` times where that is given.
fn dimensioned(version: &str, style: &str, own: Option<&str>, texts: &[(f64, f64, &str)]) -> String {
    let line = |layer: &str, [x0, y0, x1, y1]: [f64; 4]| {
        format!("0\nLINE\n8\n{layer}\n10\n{x0}\n20\n{y0}\n11\n{x1}\n21\n{y1}\n")
    };
    let contour = [
        [0.0, 0.0, 0.0, 5.0],
        [0.0, 5.0, 30.0, 5.0],
        [30.0, 5.0, 30.0, 6.0],
        [30.0, 6.0, 75.0, 6.0],
        [75.0, 6.0, 75.0, 0.0],
    ];
    let mut entities = line("CENTER", [-5.0, 0.0, 80.0, 0.0]);
    entities.extend(contour.map(|at| line("CONTOUR", at)));
    let dimension = |from: f64, to: f64, own: Option<&str>| {
        // Only files after R12 name classes.
        let class = |name: &str| if version == "AC1009" { String::new() } else { format!("100\n{name}\n") };
        let own = own.map_or(String::new(), |factor| {
            format!("1001\nACAD\n1000\nDSTYLE\n1002\n{{\n1070\n40\n1040\n7.0\n1070\n144\n1040\n{factor}\n1002\n}}\n")
        });
        format!(
            "0\nDIMENSION\n{}8\nDIM\n{}10\n{from}\n20\n20\n11\n{to}\n21\n20\n70\n32\n3\nSized\n{}13\n{from}\n23\n5\n14\n{to}\n24\n5\n50\n0\n{}{own}",
            class("AcDbEntity"),
            class("AcDbDimension"),
            class("AcDbAlignedDimension"),
            class("AcDbRotatedDimension"),
        )
    };
    entities += &(dimension(0.0, 30.0, None) + &dimension(30.0, 75.0, own));
    for (x, y, text) in texts {
        entities += &format!("0\nTEXT\n8\nWORDS\n10\n{x}\n20\n{y}\n40\n3.5\n1\n{text}\n");
    }
    format!(
        "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\n{version}\n9\n$INSUNITS\n70\n4\n0\nENDSEC\n0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nDIMSTYLE\n70\n1\n\
         0\nDIMSTYLE\n2\nSized\n40\n5.0\n144\n{style}\n0\nENDTAB\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n{entities}0\nENDSEC\n0\nEOF\n"
    )
}

fn drafted(drawing: &str) -> super::Called {
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::write(dir.path().join("a.dxf"), drawing).expect("written");
    let called = call_in(dir.path(), ["draft", "a.dxf"]);
    assert_eq!(called.status, 0, "{}", called.err);
    called
}

/// A style that counts twice tells a drawing at 1:2; its factor of sizes, 5 and 7 here, tells nothing.
#[test]
fn the_scale_is_that_by_which_the_dimensions_count() {
    for version in ["AC1009", "AC1015"] {
        let lengths = |style: &str, own: Option<&str>| {
            let called = drafted(&dimensioned(version, style, own, &[]));
            let lengths: Vec<f64> = job(&called.out).shaft.sections.iter().map(|s| s.length_mm()).collect();
            (lengths, called.err)
        };
        let (plain, said) = lengths("1.0", None);
        assert!(plain == [30.0, 45.0] && !said.contains("times the drawn length"), "{version}: {said}");
        let (twice, said) = lengths("2.0", None);
        assert!(
            twice == [60.0, 90.0] && said.contains("2 times the drawn lengths. The drawing is read at the scale 0.5"),
            "{version}: {said}"
        );
        // The dimension's own factor goes before its style's. The two do not agree: the longer counts, and it is told.
        let (own, said) = lengths("2.0", Some("1.0"));
        assert!(
            own == [30.0, 45.0] && said.contains("CHECK: 1 dimension is 2 times the drawn length"),
            "{version}: {said}"
        );
        let (own, _) = lengths("1.0", Some("4.0"));
        assert_eq!(own, [120.0, 180.0], "{version}");
        // Inches shown beside mm are no scale.
        assert_eq!(lengths("0.0393700787", None).0, [30.0, 45.0], "{version}");
    }
}

#[test]
fn a_roughness_goes_to_the_section_at_which_it_stands_and_the_title_block_is_read() {
    let texts = [
        (10.0, 7.0, "Ra 0.8"),
        (50.0, 40.0, "Ra 3.2"),
        (60.0, -60.0, "Werkstoff"),
        (80.0, -60.0, "1.4301"),
        (60.0, -80.0, "Zeichnungs-Nr. QX-31"),
        (120.0, -80.0, "Rev. C"),
    ];
    let called = drafted(&dimensioned("AC1015", "1.0", None, &texts));
    let shaft = job(&called.out).shaft;
    assert_eq!(shaft.sections.iter().map(|s| s.ra_um).collect::<Vec<_>>(), [Some(0.8), None]);
    assert!(
        called.err.contains("`Ra 3.2` on layer `WORDS` at (50, 40): it is not at the surface of a section"),
        "{}",
        called.err
    );
    assert_eq!((shaft.drawing.as_deref(), shaft.revision.as_deref()), (Some("QX-31"), Some("C")));
    assert_eq!(shaft.material.name, "X5CrNi18-10");
    assert!(!called.err.contains("NOT UNDERSTOOD: TEXT `Werkstoff`"), "{}", called.err);
}

/// The bar is thicker than a seat that must be turned, and the seat itself where it may stay as drawn.
#[test]
fn the_placeholder_bar_has_room_to_turn_the_largest_section() {
    let dir = tempfile::tempdir().expect("a folder");
    for (tolerance, bar) in [("h7", 30.0), ("h11", 28.0), ("", 28.0), ("-0.2/0", 28.0), ("-0.05/0", 30.0)] {
        std::fs::write(dir.path().join("t.csv"), format!("length;diameter;tolerance\n80;28;{tolerance}\n40;20;\n"))
            .expect("written");
        let called = call_in(dir.path(), ["draft", "t.csv"]);
        assert_eq!((called.status, job(&called.out).stock.diameter_mm), (0, bar), "{tolerance}: {}", called.err);
    }
}

/// A workbook that unpacks to a thousand times its size, in one part or in many: refused in the memory that any other takes.
#[test]
#[cfg(unix)]
fn a_packed_workbook_takes_no_more_memory_than_another() {
    use std::io::{Cursor, Read, Write};
    let dir = tempfile::tempdir().expect("a folder");
    let plain = std::fs::read(drawings().join("sections.xlsx")).expect("readable");
    // Every part as it is; the sheet with something put before its end, and parts of zeros.
    let packed = |cells: &dyn Fn(&mut dyn Write), zeros: usize| -> Vec<u8> {
        let mut from = zip::ZipArchive::new(Cursor::new(&plain)).expect("a workbook");
        let mut to = zip::ZipWriter::new(Cursor::new(Vec::new()));
        let options = zip::write::SimpleFileOptions::default().compression_level(Some(1));
        for i in 0..from.len() {
            let mut part = from.by_index(i).expect("a part");
            let mut bytes = Vec::new();
            part.read_to_end(&mut bytes).expect("unpacked");
            let name = part.name().expect("a name").into_owned();
            to.start_file(name.as_str(), options).expect("begun");
            if name.ends_with("sheet1.xml") {
                let text = String::from_utf8(bytes).expect("text");
                let (head, tail) = text.split_once("</sheetData>").expect("rows");
                to.write_all(head.as_bytes()).expect("written");
                cells(&mut to);
                bytes = format!("</sheetData>{tail}").into_bytes();
            }
            to.write_all(&bytes).expect("written");
        }
        for i in 0..zeros {
            to.start_file(format!("xl/media/{i}.bin"), options).expect("begun");
            for _ in 0..24 {
                to.write_all(&[0; 1 << 20]).expect("written");
            }
        }
        to.finish().expect("whole").into_inner()
    };
    let one_cell = |to: &mut dyn Write| {
        to.write_all(b"<row r=\"400\"><c r=\"A400\" t=\"inlineStr\"><is><t>").expect("written");
        for _ in 0..120 {
            to.write_all(&[b'a'; 1 << 20]).expect("written");
        }
        to.write_all(b"</t></is></c></row>").expect("written");
    };
    let script = r#"ulimit -v 600000; exec "$1" draft "$2""#;
    for (name, bytes) in [("cell.xlsx", packed(&one_cell, 0)), ("parts.xlsx", packed(&|_| {}, 6))] {
        std::fs::write(dir.path().join(name), bytes).expect("written");
        let output = std::process::Command::new("sh")
            .current_dir(dir.path())
            .args(["-c", script, "sh", env!("CARGO_BIN_EXE_spanhold"), name])
            .output()
            .expect("a shell");
        let err = String::from_utf8_lossy(&output.stderr);
        assert_eq!(output.status.code(), Some(2), "{name}: {err}");
        assert!(err.contains("too large for a workbook") && err.contains("32 MiB"), "{name}: {err}");
    }
    std::fs::write(dir.path().join("plain.xlsx"), packed(&|_| {}, 1)).expect("written");
    assert_eq!(call_in(dir.path(), ["draft", "plain.xlsx"]).status, 0, "what is not large is read");
}

/// An OpenDocument workbook of a few hundred bytes whose cells, repeated as it says, are a hundred million.
#[test]
#[cfg(unix)]
fn repeats_of_an_opendocument_workbook_are_bounded() {
    use std::io::{Cursor, Write};
    let dir = tempfile::tempdir().expect("a folder");
    let packed = |rows: &str| -> Vec<u8> {
        let mut to = zip::ZipWriter::new(Cursor::new(Vec::new()));
        let options = zip::write::SimpleFileOptions::default();
        let table = format!("<table:table table:name=\"Sheet\">{rows}</table:table>");
        let content = format!("<office:document-content>{table}</office:document-content>");
        let parts = [
            ("mimetype", "application/vnd.oasis.opendocument.spreadsheet"),
            ("META-INF/manifest.xml", "<manifest:manifest/>"),
            ("content.xml", content.as_str()),
        ];
        for (name, text) in parts {
            to.start_file(name, options).expect("begun");
            to.write_all(text.as_bytes()).expect("written");
        }
        to.finish().expect("whole").into_inner()
    };
    let text =
        |t: &str| format!("<table:table-cell office:value-type=\"string\"><text:p>{t}</text:p></table:table-cell>");
    let row = |more: &str, cells: &[String]| {
        let end = "<table:table-cell table:number-columns-repeated=\"16382\"/>";
        format!("<table:table-row{more}>{}{end}</table:table-row>", cells.concat())
    };
    let head = row("", &[text("length"), text("diameter")]);
    let sections = row("", &[text("80"), text("28")]) + &row("", &[text("40"), text("20")]);
    let rest = row(" table:number-rows-repeated=\"1048573\"", &[]);
    std::fs::write(dir.path().join("plain.ods"), packed(&format!("{head}{sections}{rest}"))).expect("written");
    let called = call_in(dir.path(), ["draft", "plain.ods"]);
    assert_eq!((called.status, job(&called.out).shaft.sections.len()), (0, 2), "{}", called.err);
    let wide =
        "<table:table-cell office:value-type=\"float\" office:value=\"1\" table:number-columns-repeated=\"1000\"/>";
    let bomb = row(" table:number-rows-repeated=\"90000\"", &[wide.to_string()]);
    std::fs::write(dir.path().join("bomb.ods"), packed(&format!("{head}{bomb}"))).expect("written");
    let script = r#"ulimit -v 600000; exec "$1" draft bomb.ods"#;
    let output = std::process::Command::new("sh")
        .current_dir(dir.path())
        .args(["-c", script, "sh", env!("CARGO_BIN_EXE_spanhold")])
        .output()
        .expect("a shell");
    let err = String::from_utf8_lossy(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{err}");
    assert!(err.contains("too large for a workbook") && err.contains("cells"), "{err}");
}
