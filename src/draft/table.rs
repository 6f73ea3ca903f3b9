//! A list of sections: a row each, headings in plain words.

use std::path::Path;

use super::sections::{Kind, Section};
use super::words::{self, number};
use crate::diag::Diag;
use crate::fields::{SECTIONS_MAX, nearest};
use crate::job::iso286;
use crate::job::thread::Thread;

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Column {
    Length,
    Diameter,
    RearDiameter,
    Kind,
    Thread,
    Tolerance,
    Roughness,
    Name,
    AcrossFlats,
    Sides,
}

/// Headings, without their unit, in small letters.
const HEADINGS: [(&str, Column); 22] = [
    ("length", Column::Length),
    ("diameter", Column::Diameter),
    ("front diameter", Column::Diameter),
    ("dia", Column::Diameter),
    ("ø", Column::Diameter),
    ("rear diameter", Column::RearDiameter),
    ("end diameter", Column::RearDiameter),
    ("kind", Column::Kind),
    ("type", Column::Kind),
    ("thread", Column::Thread),
    ("tolerance", Column::Tolerance),
    ("fit", Column::Tolerance),
    ("ra", Column::Roughness),
    ("roughness", Column::Roughness),
    ("roughness ra", Column::Roughness),
    ("name", Column::Name),
    ("section", Column::Name),
    ("description", Column::Name),
    ("across flats", Column::AcrossFlats),
    ("sides", Column::Sides),
    ("number of flats", Column::Sides),
    ("flats", Column::Sides),
];

const KINDS: [&str; 7] = ["cylinder", "plain", "groove", "knurl", "taper", "thread", "flats"];

/// More complaints than this help nobody.
const DIAGS_MAX: usize = 50;

/// Rows read of a table: as many as a shaft has sections, and some for headings and empty ones.
pub(super) const ROWS_MAX: usize = SECTIONS_MAX + 100;

/// A table as text: rows of cells.
pub(super) type Rows = Vec<Vec<String>>;

/// Sections of a CSV table, separated by comma, semicolon or tab.
///
/// # Errors
/// Everything that is wrong, with row and column.
pub fn of_csv(path: &Path, bytes: &[u8]) -> Result<Vec<Section>, Vec<Diag>> {
    let shown = path.display();
    let text = std::str::from_utf8(bytes)
        .map_err(|_| vec![Diag::new(format!("{shown} is not UTF-8 text")).help("save the table as CSV in UTF-8")])?;
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
    // Lines and bytes counted so far: a table of millions of rows is read through once.
    let (mut line, mut counted) = (0, 0);
    for record in reader.records() {
        let record = record.map_err(|e| vec![Diag::new(format!("{shown} is not readable as CSV: {e}"))])?;
        // Empty lines are passed over by the reader, which tells where it was before them; rows keep the number of their
        // line.
        let start = record.position().map_or(0, |p| p.byte() as usize);
        let empty = text[start..].bytes().take_while(|b| matches!(b, b'\n' | b'\r')).count();
        let begins = start + empty;
        line += text[counted..begins].bytes().filter(|b| *b == b'\n').count();
        counted = begins;
        if line.max(rows.len()) > ROWS_MAX {
            let most = format!("a shaft has at most {SECTIONS_MAX} sections");
            return Err(vec![Diag::new(format!("{shown} has too many rows")).help(most)]);
        }
        rows.resize(line.max(rows.len()), Vec::new());
        rows.push(record.iter().map(|c| c.trim().to_owned()).collect());
    }
    sections(path, &rows)
}

/// The letter of a column: A, B, … Z, AA.
pub(super) fn letter(column: usize) -> String {
    let mut n = column + 1;
    let mut out = String::new();
    while n > 0 {
        out.insert(0, char::from(b'A' + ((n - 1) % 26) as u8));
        n = (n - 1) / 26;
    }
    out
}

/// Factor to mm of the unit in a heading: `length (mm)`, `diameter [in]`; none where there is no unit.
fn unit_of(heading: &str) -> (String, Option<Result<f64, ()>>) {
    let open = heading.find(['(', '[']).or_else(|| heading.rfind(',').or_else(|| heading.rfind(" in ").map(|i| i + 3)));
    let Some(open) = open else { return (heading.trim().to_lowercase(), None) };
    let name = heading[..open].trim().trim_end_matches(" in").to_lowercase();
    let unit = heading[open..].trim_matches(['(', ')', '[', ']', ',', ' ']).to_lowercase();
    let factor = match unit.as_str() {
        "mm" => Ok(1.0),
        "cm" => Ok(10.0),
        "m" => Ok(1000.0),
        "in" | "inch" | "inches" | "\"" => Ok(25.4),
        "µm" | "um" | "μm" | "micron" | "microns" => Ok(0.001),
        _ => Err(()),
    };
    (name, Some(factor))
}

struct Head {
    column: Column,
    /// Factor to mm, of lengths and diameters.
    factor: f64,
}

pub(super) fn sections(path: &Path, rows: &Rows) -> Result<Vec<Section>, Vec<Diag>> {
    let shown = path.display();
    let filled = |row: &&Vec<String>| row.iter().any(|c| !c.is_empty());
    let Some(head_row) = rows.iter().position(|r| filled(&r)) else {
        return Err(vec![Diag::new(format!("{shown} is empty")).help(FORM)]);
    };
    let mut diags = Vec::new();
    let heads = heads(path, &rows[head_row], head_row, &mut diags);
    for needed in [Column::Length, Column::Diameter] {
        let there = heads.iter().flatten().any(|h| h.column == needed);
        let other = needed == Column::Diameter
            && heads.iter().flatten().any(|h| matches!(h.column, Column::Thread | Column::AcrossFlats));
        if !there && !other && diags.is_empty() {
            let name = if needed == Column::Length { "length" } else { "diameter" };
            diags.push(Diag::new(format!("{shown}: row {} has no heading `{name}`", head_row + 1)).help(FORM));
        }
    }
    if !diags.is_empty() {
        return Err(diags);
    }
    let mut sections = Vec::new();
    for (i, row) in rows.iter().enumerate().skip(head_row + 1).filter(|(_, r)| filled(r)) {
        let mut cells = Row { shown: shown.to_string(), row: i + 1, cells: row, heads: &heads, diags: &mut diags };
        sections.extend(cells.section());
        if diags.len() >= DIAGS_MAX {
            break;
        }
    }
    if diags.is_empty() { Ok(sections) } else { Err(diags) }
}

const FORM: &str = "the first row names the columns: length (mm), diameter (mm), and where needed rear diameter (mm), kind, \
                    thread, tolerance, Ra (µm), name, across flats (mm), sides; a row for each section from the front";

fn heads(path: &Path, row: &[String], at: usize, diags: &mut Vec<Diag>) -> Vec<Option<Head>> {
    let mut seen: Vec<Column> = Vec::new();
    let mut out = Vec::new();
    for (c, heading) in row.iter().enumerate() {
        if heading.is_empty() {
            out.push(None);
            continue;
        }
        let place = format!("{}: row {}, column {} (`{heading}`)", path.display(), at + 1, letter(c));
        let (name, unit) = unit_of(heading);
        let Some((_, column)) = HEADINGS.iter().find(|(word, _)| *word == name) else {
            let near = nearest(&name, HEADINGS.iter().map(|h| h.0));
            let help = near.map_or_else(|| FORM.to_owned(), |n| format!("did you mean `{n}`?"));
            diags.push(Diag::new(format!("{place} is no heading that is known")).help(help));
            out.push(None);
            continue;
        };
        if seen.contains(column) {
            diags.push(Diag::new(format!("{place} names a column that is there already")).help("remove one of them"));
        }
        seen.push(*column);
        let lengths = matches!(column, Column::Length | Column::Diameter | Column::RearDiameter | Column::AcrossFlats);
        let factor = match (unit, column) {
            (None, _) => Some(1.0),
            (Some(Ok(f)), _) if lengths && f >= 1.0 => Some(f),
            (Some(Ok(0.001)), Column::Roughness) | (Some(Ok(1.0)), Column::Tolerance) => Some(1.0),
            // Words in brackets behind a heading of words: `name (as on the drawing)`.
            (Some(Err(_)), Column::Tolerance | Column::Name | Column::Kind | Column::Thread) => Some(1.0),
            _ => None,
        };
        if factor.is_none() {
            let units = if lengths {
                "mm, cm, m or in"
            } else if *column == Column::Roughness {
                "µm"
            } else {
                "no unit"
            };
            diags.push(
                Diag::new(format!("{place} has a unit that is not read")).help(format!("this column takes {units}")),
            );
        }
        out.push(Some(Head { column: *column, factor: factor.unwrap_or(1.0) }));
    }
    out
}

/// A row being read.
struct Row<'a> {
    shown: String,
    row: usize,
    cells: &'a [String],
    heads: &'a [Option<Head>],
    diags: &'a mut Vec<Diag>,
}

impl Row<'_> {
    fn cell(&self, column: Column) -> Option<(usize, &str, f64)> {
        let c = self.heads.iter().position(|h| h.as_ref().is_some_and(|h| h.column == column))?;
        let factor = self.heads[c].as_ref().map_or(1.0, |h| h.factor);
        self.cells.get(c).map(String::as_str).filter(|t| !t.is_empty()).map(|t| (c, t, factor))
    }

    fn complain(&mut self, c: Option<usize>, what: &str, help: &str) {
        let column = c.map_or(String::new(), |c| format!(", column {}", letter(c)));
        self.diags.push(Diag::new(format!("{}: row {}{column}: {what}", self.shown, self.row)).help(help));
    }

    /// A number in mm; `Some(None)` where the cell is empty.
    fn number(&mut self, column: Column) -> Option<Option<f64>> {
        let Some((c, text, factor)) = self.cell(column) else { return Some(None) };
        let text = text.trim_start_matches('Ø').trim();
        // The decimal comma of a spreadsheet is as good as a point.
        let value = number(text).map(|v| (v * factor * 1e9).round() / 1e9).filter(|v| v.is_finite() && *v > 0.0);
        if value.is_none() {
            let what = format!("`{text}` is not a positive number");
            self.complain(Some(c), &what, "write the number alone; its unit stands in the heading: `length (mm)`");
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
            self.complain(None, "the section has no length", "every section has one");
            return None;
        };
        let shape = match (thread, across, rear, diameter) {
            (Some(t), None, None, given) => {
                if given.is_some_and(|d| (d - t.major_mm).abs() > 0.05) {
                    let what =
                        format!("{} has a diameter of {} mm, not {}", t.designation, t.major_mm, given.unwrap_or(0.0));
                    self.complain(None, &what, "leave the diameter of a thread out");
                    return None;
                }
                Kind::Thread(t.designation, t.major_mm)
            }
            (None, Some(across), None, on) => match sides {
                Some(n) if [2.0, 4.0, 6.0, 8.0].contains(&n) => Kind::Flats(across, n as u32, on),
                _ => {
                    self.complain(None, "flats without their number", "`sides` is 2, 4, 6 or 8");
                    return None;
                }
            },
            (None, None, Some(rear), Some(front)) if rear != front => Kind::Taper(front, rear),
            (None, None, _, Some(d)) if matches!(kind, Some("groove")) => Kind::Groove(d),
            (None, None, _, Some(d)) if matches!(kind, Some("knurl")) => Kind::Knurl(d),
            (None, None, _, Some(d)) if !matches!(kind, Some("taper" | "thread" | "flats")) => Kind::Cylinder(d),
            _ => {
                let what = match kind {
                    Some(kind) => format!("what a {kind} needs is not there"),
                    None => "the row is not one thing: a cylinder, a taper, a thread or flats".to_owned(),
                };
                self.complain(None, &what, "a taper has diameter and rear diameter, a thread its designation, flats across flats and sides, all others a diameter");
                return None;
            }
        };
        Some(Section { tolerance: tolerance?, ra_um: ra?, name, ..Section::plain(length, shape) })
    }

    fn tolerance(&mut self) -> Option<Option<String>> {
        let Some((c, text, _)) = self.cell(Column::Tolerance) else { return Some(None) };
        let said = words::read(text);
        match said.tolerance {
            Some(t) if said.unknown.is_none() && said.number.is_none() => Some(Some(t)),
            _ => {
                let what = format!("`{text}` is not a tolerance");
                let help = iso286::shaft_limits(text, 10.0).err().and_then(|d| d.help);
                let help = help.unwrap_or_else(|| "write a class such as h6, or ±0.1, or +0.02/-0.01 in mm".into());
                self.complain(Some(c), &what, &help);
                None
            }
        }
    }

    fn thread(&mut self) -> Option<Thread> {
        let (c, text, _) = self.cell(Column::Thread)?;
        match Thread::parse(&text.replace(',', ".")) {
            Ok(thread) => Some(Thread { designation: thread.designation.split_whitespace().collect(), ..thread }),
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
        if KINDS.contains(&word.as_str()) {
            return Some(word);
        }
        let what = format!("`{text}` is no kind of section");
        let help = match nearest(&word, KINDS) {
            Some(near) => format!("did you mean `{near}`?"),
            None => format!("kinds are {}", KINDS.join(", ")),
        };
        self.complain(Some(c), &what, &help);
        None
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn csv(text: &str) -> Result<Vec<Section>, Vec<String>> {
        of_csv(Path::new("t.csv"), text.as_bytes()).map_err(|d| d.iter().map(Diag::to_string).collect())
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

    #[test]
    fn what_is_wrong_is_told_with_row_and_column() {
        for (text, says) in [
            ("", "t.csv is empty"),
            ("length\n5\n", "row 1 has no heading `diameter`"),
            (
                "lenght,diameter\n5,5\n",
                "row 1, column A (`lenght`) is no heading that is known (did you mean `length`?)",
            ),
            ("length,length,diameter\n", "row 1, column B (`length`) names a column that is there already"),
            ("length (furlong),diameter\n", "row 1, column A (`length (furlong)`) has a unit that is not read"),
            ("length,diameter\n5,six\n", "row 2, column B: `six` is not a positive number"),
            ("length,diameter\n\n\n-5,6\n", "row 4, column A: `-5` is not a positive number"),
            (
                "length,diameter,tolerance\n5,6,H7\n",
                "row 2, column C: `H7` is not a tolerance (a shaft takes small letters: `h7`)",
            ),
            (
                "length,diameter,kind\n5,6,grove\n",
                "row 2, column C: `grove` is no kind of section (did you mean `groove`?)",
            ),
            ("length,diameter,kind\n5,6,taper\n", "row 2: what a taper needs is not there"),
            ("length,thread\n5,G1/2\n", "row 2, column B: `G1/2` is not a metric thread"),
            ("length,diameter\n,6\n", "row 2: the section has no length"),
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
