//! A table of sections: one row for each section, with headings in plain words.

use std::ops::Range;
use std::path::Path;

use super::headings::{Column, Head, heads, letter, unit_mm, units_left_out};
use super::sections::{Kind, Section};
use super::words::{self, number};
use crate::diag::Diag;
use crate::fields::{SECTIONS_MAX, nearest};
use crate::job::iso286;
use crate::job::thread::{Side, Thread};
use crate::say;

const KINDS: [&str; 7] = ["cylinder", "plain", "groove", "knurl", "taper", "thread", "flats"];
/// Kinds by their German names.
const GERMAN_KINDS: [(&str, &str); 8] = [
    ("zylinder", "cylinder"),
    ("einstich", "groove"),
    ("freistich", "groove"),
    ("rändel", "knurl"),
    ("rändelung", "knurl"),
    ("kegel", "taper"),
    ("gewinde", "thread"),
    ("schlüsselflächen", "flats"),
];

/// Most errors that are reported, because more do not help the user.
const DIAGS_MAX: usize = 50;

/// Most rows that are read: as many as a shaft has sections, and some more for headings and empty rows.
pub(super) const ROWS_MAX: usize = SECTIONS_MAX + 100;

/// A table as text: rows of cells.
pub(super) type Rows = Vec<Vec<String>>;

/// Sections, and notes on what was decided.
pub(super) type Listed = (Vec<Section>, Vec<String>);

/// Sections of a CSV table. The separator is a comma, a semicolon or a tab.
///
/// # Errors
/// All errors, with row and column.
pub fn of_csv(path: &Path, bytes: &[u8]) -> Result<Listed, Vec<Diag>> {
    let shown = path.display().to_string();
    let text = std::str::from_utf8(bytes)
        .map_err(|_| vec![Diag::new(say!("table-not-utf8", file = shown)).help(say!("table-not-utf8-help"))])?;
    let text = text.trim_start_matches('\u{feff}');
    let head = text.lines().find(|l| !l.trim().is_empty()).unwrap_or_default();
    let delimiter =
        [b';', b'\t', b','].into_iter().max_by_key(|d| (head.bytes().filter(|b| b == d).count(), *d == b';'));
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(delimiter.unwrap_or(b','))
        .from_reader(text.as_bytes());
    let mut rows: Rows = Vec::new();
    // Lines and bytes counted so far. So even a table of millions of rows is read only once.
    let (mut line, mut counted) = (0, 0);
    for record in reader.records() {
        let record =
            record.map_err(|e| vec![Diag::new(say!("table-not-csv", file = shown, reason = e.to_string()))])?;
        // The reader skips empty lines, and gives the position in front of them. They are counted here, so that every
        // row keeps the number of its line.
        let start = record.position().map_or(0, |p| p.byte() as usize);
        let bytes_in = |range: Range<usize>| text.as_bytes().get(range).unwrap_or_default().iter();
        let empty = bytes_in(start..text.len()).take_while(|b| matches!(b, b'\n' | b'\r')).count();
        let begins = start + empty;
        line += bytes_in(counted..begins).filter(|b| **b == b'\n').count();
        counted = begins;
        if line.max(rows.len()) > ROWS_MAX {
            let diag = Diag::new(say!("table-too-long", file = shown));
            return Err(vec![diag.help(say!("draft-sections-help", most = SECTIONS_MAX))]);
        }
        rows.resize(line.max(rows.len()), Vec::new());
        rows.push(record.iter().map(|c| c.trim().to_owned()).collect());
    }
    sections(path, &rows)
}

pub(super) fn sections(path: &Path, rows: &Rows) -> Result<Listed, Vec<Diag>> {
    let shown = path.display().to_string();
    let filled = |row: &Vec<String>| row.iter().any(|c| !c.is_empty());
    let Some((head_row, head)) = rows.iter().enumerate().find(|(_, r)| filled(r)) else {
        return Err(vec![Diag::new(say!("table-empty", file = shown)).help(say!("table-form"))]);
    };
    let mut diags = Vec::new();
    let mut heads = heads(path, head, head_row, &mut diags);
    let mut notes = Vec::new();
    units_left_out(&shown, head, head_row, &mut heads, (&mut diags, &mut notes));
    for needed in [Column::Length, Column::Diameter] {
        let there = heads.iter().flatten().any(|h| h.column == needed);
        let other = needed == Column::Diameter
            && heads.iter().flatten().any(|h| matches!(h.column, Column::Thread | Column::AcrossFlats));
        if !there && !other && diags.is_empty() {
            let name = if needed == Column::Length { "length" } else { "diameter" };
            let what = say!("table-heading-missing", file = shown, row = head_row + 1, heading = name);
            diags.push(Diag::new(what).help(say!("table-form")));
        }
    }
    if !diags.is_empty() {
        return Err(diags);
    }
    let mut sections = Vec::new();
    for (i, row) in rows.iter().enumerate().skip(head_row + 1).filter(|(_, r)| filled(r)) {
        let mut cells = Row { shown: shown.clone(), row: i + 1, cells: row, heads: &heads, diags: &mut diags };
        sections.extend(cells.section());
        if diags.len() >= DIAGS_MAX {
            break;
        }
    }
    if diags.is_empty() { Ok((sections, notes)) } else { Err(diags) }
}

/// A row that is being read.
struct Row<'a> {
    shown: String,
    row: usize,
    cells: &'a [String],
    heads: &'a [Option<Head>],
    diags: &'a mut Vec<Diag>,
}

impl Row<'_> {
    fn cell(&self, column: Column) -> Option<(usize, &str, Option<f64>)> {
        let mut heads = self.heads.iter().enumerate().filter_map(|(c, head)| Some((c, head.as_ref()?)));
        let (c, head) = heads.find(|(_, head)| head.column == column)?;
        self.cells.get(c).map(String::as_str).filter(|t| !t.is_empty()).map(|t| (c, t, head.factor))
    }

    fn complain(&mut self, c: Option<usize>, what: &str, help: &str) {
        let (file, row) = (&self.shown, self.row);
        let what = match c {
            Some(c) => say!("table-cell", file = file, row = row, column = letter(c), what = what),
            None => say!("table-row", file = file, row = row, what = what),
        };
        self.diags.push(Diag::new(what).help(help));
    }

    /// A number in the unit of the job: `Some(None)` if the cell is empty.
    fn number(&mut self, column: Column) -> Option<Option<f64>> {
        let Some((c, text, factor)) = self.cell(column) else { return Some(None) };
        let text = text.trim_start_matches('Ø').trim();
        // A unit behind the number overrides the unit of the heading: `1in`.
        let end = text.find(|c: char| !c.is_ascii_digit() && !"+-.,".contains(c));
        let (digits, unit) = end.and_then(|end| text.split_at_checked(end)).unwrap_or((text, ""));
        let factor = match unit.trim().to_lowercase().as_str() {
            "" => Some(factor.unwrap_or(1.0)),
            unit => unit_mm(unit).and_then(|mm| Head::factor(column, mm)),
        };
        // A spreadsheet may write a decimal comma instead of a point.
        let value = number(digits).zip(factor).map(|(v, factor)| (v * factor * 1e9).round() / 1e9);
        let value = value.filter(|v| v.is_finite() && *v > 0.0);
        if value.is_none() {
            let what = say!("table-number", text = text);
            self.complain(Some(c), &what, &say!("table-number-help"));
            return None;
        }
        Some(value)
    }

    fn section(&mut self) -> Option<Section> {
        let before = self.diags.len();
        let length = self.number(Column::Length);
        let diameter = self.number(Column::Diameter);
        let rear = self.number(Column::RearDiameter);
        let across = self.number(Column::AcrossFlats);
        let sides = self.number(Column::Sides);
        let ra = self.number(Column::Roughness);
        let tolerance = self.tolerance();
        let thread = self.thread();
        let kind = self.kind();
        let name = self.cell(Column::Name).map(|(_, t, _)| t.to_owned());
        if self.diags.len() > before {
            return None;
        }
        let (diameter, rear, across, sides) = (diameter?, rear?, across?, sides?);
        let kind = kind.as_deref();
        let Some(length) = length? else {
            self.complain(None, &say!("table-no-length"), &say!("table-no-length-help"));
            return None;
        };
        let shape = match (thread, across, rear, diameter) {
            (Some(t), None, None, given) => {
                if given.is_some_and(|d| (d - t.major_mm).abs() > 0.05) {
                    let (major, given) = (t.major_mm.to_string(), given.unwrap_or(0.0).to_string());
                    let what = say!("table-thread-size", thread = t.designation, major = major, given = given);
                    self.complain(None, &what, &say!("table-thread-size-help"));
                    return None;
                }
                Kind::Thread(t.designation, t.major_mm)
            }
            (None, Some(across), None, on) => match sides {
                Some(n) if [2.0, 4.0, 6.0, 8.0].contains(&n) => Kind::Flats(across, n as u32, on),
                _ => {
                    self.complain(None, &say!("table-flats"), &say!("table-flats-help"));
                    return None;
                }
            },
            (None, None, Some(rear), Some(front)) if rear != front => Kind::Taper(front, rear),
            (None, None, _, Some(d)) if matches!(kind, Some("groove")) => Kind::Groove(d),
            (None, None, _, Some(d)) if matches!(kind, Some("knurl")) => Kind::Knurl(d),
            (None, None, _, Some(d)) if !matches!(kind, Some("taper" | "thread" | "flats")) => Kind::Cylinder(d),
            _ => {
                let what = match kind {
                    Some(kind) => say!("table-kind-needs", kind = kind),
                    None => say!("table-no-kind"),
                };
                self.complain(None, &what, &say!("table-no-kind-help"));
                return None;
            }
        };
        Some(Section { tolerance: tolerance?, ra_um: ra?, name, ..Section::plain(length, shape) })
    }

    fn tolerance(&mut self) -> Option<Option<String>> {
        let Some((c, text, unit_mm)) = self.cell(Column::Tolerance) else { return Some(None) };
        if words::is_any_class(text) {
            return Some(Some(text.trim().to_owned()));
        }
        let said = words::read_in(text, unit_mm.unwrap_or(1.0));
        match said.tolerance {
            Some(t) if unit_mm.is_none() && t.starts_with('[') => {
                let what = say!("table-tolerance-unit", text = text);
                self.complain(Some(c), &what, &say!("table-tolerance-unit-help"));
                None
            }
            Some(t) if said.unknown.is_none() && said.number.is_none() => Some(Some(t)),
            _ => {
                let what = say!("table-tolerance", text = text);
                let help = iso286::shaft_limits(text, 10.0).err().and_then(|d| d.help);
                let help = help.unwrap_or_else(|| say!("table-tolerance-help"));
                self.complain(Some(c), &what, &help);
                None
            }
        }
    }

    fn thread(&mut self) -> Option<Thread> {
        let (c, text, _) = self.cell(Column::Thread)?;
        match Thread::parse(text).and_then(|thread| thread.on(Side::External)) {
            Ok(thread) => Some(thread),
            Err(diag) => {
                let (what, help) = (diag.what, diag.help.unwrap_or_default());
                self.complain(Some(c), &what, &help);
                None
            }
        }
    }

    fn kind(&mut self) -> Option<String> {
        let (c, text, _) = self.cell(Column::Kind)?;
        let word = text.to_lowercase();
        let word = GERMAN_KINDS.iter().find(|(german, _)| *german == word).map_or(word, |(_, k)| (*k).to_owned());
        if KINDS.contains(&word.as_str()) {
            return Some(word);
        }
        let what = say!("table-kind", text = text);
        let help = match nearest(&word, KINDS) {
            Some(near) => say!("did-you-mean", near = near),
            None => say!("choice-help", words = KINDS.join(", ")),
        };
        self.complain(Some(c), &what, &help);
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn csv(text: &str) -> Result<Vec<Section>, Vec<String>> {
        of_csv(Path::new("t.csv"), text.as_bytes()).map(|(s, _)| s).map_err(|d| d.iter().map(Diag::to_string).collect())
    }

    #[test]
    fn every_kind_of_row() {
        let text = "Length (mm);Diameter (mm);rear diameter, mm;Kind;Thread;Tolerance;Ra [µm];Name;across flats (mm);sides\n\
            34;12;;;;h6;0,8;front journal;;\n\n2,5;11.4;;groove;;;;;;\n26;;;;M16x1.5;;;;;\n40;18;22;taper;;;;;;\n\
            10;20;;knurl;;±0.1;;;;\n15;;;;;;;;17;6\n";
        let all = csv(text).expect("a table");
        let kinds: Vec<&Kind> = all.iter().map(|s| &s.kind).collect();
        assert_eq!(
            kinds,
            [
                &Kind::Cylinder(12.0),
                &Kind::Groove(11.4),
                &Kind::Thread("M16x1.5".into(), 16.0),
                &Kind::Taper(18.0, 22.0),
                &Kind::Knurl(20.0),
                &Kind::Flats(17.0, 6, None)
            ]
        );
        assert_eq!(
            (all[0].tolerance.as_deref(), all[0].ra_um, all[0].name.as_deref()),
            (Some("h6"), Some(0.8), Some("front journal"))
        );
        assert_eq!(all[4].tolerance.as_deref(), Some("[-0.1, 0.1]"));
    }

    #[test]
    fn units_of_headings_are_honoured() {
        let all = csv("diameter (in),length (cm)\n0.5,3\n").expect("a table");
        assert_eq!((all[0].length_mm, &all[0].kind), (30.0, &Kind::Cylinder(12.7)));
    }

    /// 0.0005 in are 12.7 µm; 32 µin are 0.8128 µm.
    #[test]
    fn deviations_and_roughness_have_the_unit_of_their_column() {
        let (all, notes) = of_csv(
            Path::new("t.csv"),
            "length (in);diameter (in);tolerance;Ra (µin)\n2;0.75;-0.0005/0;32\n50mm;1in;h6;0.8 µm\n".as_bytes(),
        )
        .expect("a table");
        assert_eq!(all[0].tolerance.as_deref(), Some("[-0.0127, 0]"));
        assert_eq!((all[0].ra_um, all[1].ra_um), (Some(0.8128), Some(0.8)));
        assert_eq!((all[1].length_mm, &all[1].kind), (50.0, &Kind::Cylinder(25.4)));
        assert_eq!(all[1].tolerance.as_deref(), Some("h6"));
        assert!(notes.len() == 1 && notes[0].contains("column C (`tolerance`) are read in inches"), "{notes:?}");
        for (head, says) in [
            ("tolerance (mm)", "[-0.0005, 0]"),
            ("tolerance (in)", "[-0.0127, 0]"),
            ("tolerance (µm)", "[-0.000001, 0]"),
        ] {
            let all = csv(&format!("length,diameter (in),{head}\n2,0.75,-0.0005/0\n")).expect(head);
            assert_eq!(all[0].tolerance.as_deref(), Some(says), "{head}");
        }
        for (text, says) in [
            (
                "length (in),diameter (in),Ra\n2,0.75,32\n",
                "t.csv, row 1, column C, `Ra`: the unit is missing in a table in inches",
            ),
            (
                "length (cm),diameter (cm),fit\n2,0.75,+0.1/0\n",
                "t.csv, row 2, column C: the unit of `+0.1/0` is missing",
            ),
            ("length,diameter\n2,5 kg\n", "row 2, column B: `5 kg` is not a positive number"),
        ] {
            let told = csv(text).expect_err(text);
            assert!(told.len() == 1 && told[0].contains(says), "{text:?}: {told:?}");
        }
    }

    #[test]
    fn german_headings_are_read() {
        let text = "Bezeichnung;Länge (mm);Durchmesser in mm;Durchmesser hinten;Art;Gewinde;Toleranz;Rauheit Ra (µm);Schlüsselweite;Flächen\n\
            Lagersitz;34;12;;;;h6;0,8;;\nRille;2;11;;Einstich;;;;;\n;20;12;10;Kegel;;;;;\n;20;;;Gewinde;M8;;;;\n;10;;;;;;;9;2\n";
        let all = csv(text).expect("a table");
        let kinds: Vec<&Kind> = all.iter().map(|s| &s.kind).collect();
        assert_eq!(
            kinds,
            [
                &Kind::Cylinder(12.0),
                &Kind::Groove(11.0),
                &Kind::Taper(12.0, 10.0),
                &Kind::Thread("M8".into(), 8.0),
                &Kind::Flats(9.0, 2, None)
            ]
        );
        assert_eq!((all[0].name.as_deref(), all[0].ra_um), (Some("Lagersitz"), Some(0.8)));
    }

    #[test]
    fn what_is_wrong_is_told_with_row_and_column() {
        for (text, says) in [
            ("", "`t.csv` is empty"),
            ("length\n5\n", "t.csv, row 1: the heading `diameter` is missing"),
            ("lenght,diameter\n5,5\n", "row 1, column A, `lenght`: unknown heading. Did you mean `length`?"),
            ("length,length,diameter\n", "row 1, column B, `length`: this column is given twice"),
            ("length (furlong),diameter\n", "row 1, column A, `length (furlong)`: unknown unit"),
            ("length,diameter\n5,six\n", "row 2, column B: `six` is not a positive number"),
            ("length,diameter\n\n\n-5,6\n", "row 4, column A: `-5` is not a positive number"),
            ("length,diameter,tolerance\n5,6,H7\n", "row 2, column C: `H7` is not a tolerance. "),
            (
                "length,diameter,kind\n5,6,grove\n",
                "row 2, column C: `grove` is not a kind of section. Did you mean `groove`?",
            ),
            ("length,diameter,kind\n5,6,taper\n", "row 2: sizes of the taper are missing"),
            ("length,thread\n5,G1/3\n", "row 2, column B: `G1/3` is not the designation of a thread"),
            ("length,diameter\n,6\n", "row 2: the length is missing"),
        ] {
            let told = csv(text).expect_err(text);
            assert!(told.len() == 1 && told[0].contains(says), "{text:?}: {told:?}");
        }
        let two = csv("length,diameter\nx,y\n").expect_err("two faults");
        assert_eq!(two.len(), 2);
    }

    #[test]
    fn columns_have_letters() {
        assert_eq!([letter(0), letter(25), letter(26), letter(701)], ["A", "Z", "AA", "ZZ"]);
    }
}
