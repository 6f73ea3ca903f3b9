//! Reads what a title block says: material, drawing number, revision. It knows German and English words.
//!
//! A text may name its field itself (`Material: C45`), and an attribute is named by its tag. Or the word of the field
//! is a text, and its value is another text, right of it or below it.

use std::collections::BTreeSet;

use super::collect::Text;
use super::geometry::Point;
use super::words::plain;
use crate::job::materials;
use crate::lang;
use crate::say;

/// Largest distance of a value to the right of its word, and below it, mm on the sheet. From common title blocks, no
/// source.
const RIGHT_MM: f64 = 60.0;
const BELOW_MM: f64 = 12.0;
/// Texts of one line differ in height by less than this, mm on the sheet. Texts of one column may differ three times as
/// much.
const LINE_MM: f64 = 2.0;

/// What a title block can say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Field {
    Material,
    Drawing,
    Revision,
}

impl Field {
    /// Its name in a message.
    fn word(self) -> &'static str {
        match self {
            Field::Material => lang::text("title-material"),
            Field::Drawing => lang::text("title-drawing"),
            Field::Revision => lang::text("title-revision"),
        }
    }
}

/// Words in small letters, without blanks and punctuation.
const WORDS: [(&str, Field); 41] = [
    ("material", Field::Material),
    ("materialno", Field::Material),
    ("matl", Field::Material),
    ("werkstoff", Field::Material),
    ("werkstoffnr", Field::Material),
    ("werkstoffnummer", Field::Material),
    ("matière", Field::Material),
    ("drawing", Field::Drawing),
    ("drawingno", Field::Drawing),
    ("drawingnr", Field::Drawing),
    ("drawingnumber", Field::Drawing),
    ("drgno", Field::Drawing),
    ("dwgno", Field::Drawing),
    ("dwg", Field::Drawing),
    ("zeichnung", Field::Drawing),
    ("zeichnungnr", Field::Drawing),
    ("zeichnungsnr", Field::Drawing),
    ("zeichnungsnummer", Field::Drawing),
    ("zeichnnr", Field::Drawing),
    ("zchngnr", Field::Drawing),
    ("zngnr", Field::Drawing),
    ("rev", Field::Revision),
    ("revno", Field::Revision),
    ("revnr", Field::Revision),
    ("revision", Field::Revision),
    ("revisionno", Field::Revision),
    ("revisionnr", Field::Revision),
    ("revisionsstand", Field::Revision),
    ("issue", Field::Revision),
    ("index", Field::Revision),
    ("änd", Field::Revision),
    ("ändnr", Field::Revision),
    ("ändindex", Field::Revision),
    ("änderung", Field::Revision),
    ("änderungsnr", Field::Revision),
    ("änderungsstand", Field::Revision),
    ("änderungsindex", Field::Revision),
    ("aenderung", Field::Revision),
    ("aenderungsnr", Field::Revision),
    ("aenderungsstand", Field::Revision),
    ("aenderungsindex", Field::Revision),
];

/// What the title block says.
#[derive(Debug, Default)]
pub struct Title {
    /// A material of the table.
    pub material: Option<String>,
    /// Number of the drawing.
    pub drawing: Option<String>,
    /// Its revision.
    pub revision: Option<String>,
    /// What was used, and what was not.
    pub notes: Vec<String>,
    /// Indices of the texts that were used here.
    pub read: BTreeSet<usize>,
}

/// The field that a text names, if the text says nothing else.
fn field(words: &str) -> Option<Field> {
    let bare: String = words.to_lowercase().chars().filter(|c| !" .:-_/#".contains(*c)).collect();
    WORDS.iter().find(|(word, _)| *word == bare).map(|(_, field)| *field)
}

/// Field and value of one text: `Material: C45`, `Zeichnungs-Nr. 4711`.
fn pair(words: &str) -> Option<(Field, &str)> {
    // Of all words that name a field, the longest are taken: `Drawing no. 7` is not a drawing called `no. 7`.
    let ends = words.char_indices().filter(|(_, c)| matches!(c, ' ' | ':')).map(|(i, _)| i);
    let parts = ends
        .filter_map(|i| words.split_at_checked(i))
        .map(|(word, value)| (word, value.trim_start_matches([' ', ':'])));
    let named = parts.filter(|(_, value)| !value.is_empty() && field(value).is_none());
    let mut named = named.filter_map(|(word, value)| field(word).map(|f| (f, value)));
    let plausible = |f: Field, value: &str| match f {
        // `Material thickness 3` names no material. `Material: C48` names one that is not known.
        Field::Material => words.contains(':') || known(value).is_some(),
        _ => numbered(value, f),
    };
    named.rfind(|(f, value)| plausible(*f, value))
}

/// Whether a value can be a drawing number or a revision. Running text can not.
fn numbered(value: &str, field: Field) -> bool {
    let words = value.split_whitespace().count();
    match field {
        Field::Drawing => value.chars().any(|c| c.is_ascii_digit()) && !value.contains(':') && words <= 3,
        _ => words == 1 && value.chars().count() <= 8,
    }
}

/// A drawing number with the revision behind it: `AX-100 Rev. B`.
fn together(words: &str) -> Option<(&str, &str)> {
    let mut parts = words.split(' ');
    let number = parts.next().filter(|n| numbered(n, Field::Drawing) && n.chars().count() >= 3)?;
    let behind = words.strip_prefix(number)?.trim();
    pair(behind).filter(|(f, _)| *f == Field::Revision).map(|(_, revision)| (number, revision))
}

/// The material in a value: the whole value, or one of its words, as in `1.4301 (X5CrNi18-10)`.
fn known(value: &str) -> Option<&'static str> {
    let words = value.split([' ', ',', '/', '(', ')']).filter(|w| !w.is_empty());
    std::iter::once(value).chain(words).find_map(materials::known).map(|row| row.name)
}

/// Reads what the texts of a drawing say. `sheet` is the length on the shaft of one mm on the sheet, mm.
pub fn read(texts: &[Text], sheet: f64) -> Title {
    let words: Vec<String> = texts.iter().map(|t| plain(&t.text)).collect();
    let mut out = Title::default();
    let mut found: Vec<(Field, String, usize)> = Vec::new();
    for (i, (text, said)) in texts.iter().zip(&words).enumerate() {
        if let Some(f) = field(&text.tag) {
            if !said.is_empty() {
                found.push((f, said.clone(), i));
            }
        } else if let Some(f) = field(said) {
            if let Some((k, value)) = beside(texts, &words, (i, text.at), f, sheet) {
                out.read.insert(i);
                found.push((f, value.to_owned(), k));
            }
        } else if let Some((f, value)) = pair(said) {
            found.push((f, value.to_owned(), i));
        } else if let Some((number, revision)) = together(said) {
            found.push((Field::Drawing, number.to_owned(), i));
            found.push((Field::Revision, revision.to_owned(), i));
        } else if !lone_number(said)
            && let Some(row) = materials::known(said)
        {
            found.push((Field::Material, row.name.to_owned(), i));
        }
    }
    for f in [Field::Material, Field::Drawing, Field::Revision] {
        let mut values: Vec<String> = Vec::new();
        for (_, value, i) in found.iter().filter(|(of, ..)| *of == f) {
            let value = if f == Field::Material { known(value).unwrap_or(value) } else { value };
            out.read.insert(*i);
            if !values.iter().any(|v| v == value) {
                values.push(value.to_owned());
            }
        }
        out.settle(f, &values);
    }
    out
}

/// Whether a text is whole numbers alone. They are dimensions, not material numbers.
fn lone_number(words: &str) -> bool {
    words.chars().all(|c| c.is_ascii_digit() || " -".contains(c))
}

/// The text that is the value of a word, with its index: the nearest one to the right, otherwise the nearest one below.
fn beside<'a>(
    texts: &[Text],
    words: &'a [String],
    (i, at): (usize, Point),
    f: Field,
    sheet: f64,
) -> Option<(usize, &'a str)> {
    let off = |text: &Text| (text.at.x - at.x, at.y - text.at.y);
    let value = |k: usize, said: &str| {
        k != i && field(said).is_none() && (f == Field::Material || numbered(said, f)) && !said.is_empty()
    };
    let nearest = |way: &dyn Fn((f64, f64)) -> Option<f64>| {
        let values = texts.iter().zip(words).enumerate().filter(|(k, (_, said))| value(*k, said));
        let all = values.filter_map(|(k, (text, said))| way(off(text)).map(|d| (d, (k, said.as_str()))));
        all.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, value)| value)
    };
    let within = |d: f64, most: f64| d > 0.0 && d <= most * sheet;
    let right = |(x, y): (f64, f64)| (within(x, RIGHT_MM) && y.abs() <= LINE_MM * sheet).then_some(x);
    let below = |(x, y): (f64, f64)| (within(y, BELOW_MM) && x.abs() <= 3.0 * LINE_MM * sheet).then_some(y);
    nearest(&right).or_else(|| nearest(&below))
}

impl Title {
    /// Takes the value of a field if there is exactly one. Several values, or an unknown material, give a note.
    fn settle(&mut self, f: Field, values: &[String]) {
        match values {
            [] => {}
            [value] if f == Field::Material && known(value).is_none() => {
                self.notes.push(say!("title-material-unknown", material = value))
            }
            [value] => {
                self.notes.push(say!("title-taken", field = f.word(), value = value));
                let place = match f {
                    Field::Material => &mut self.material,
                    Field::Drawing => &mut self.drawing,
                    Field::Revision => &mut self.revision,
                };
                *place = Some(value.clone());
            }
            several => {
                self.notes.push(say!("title-several", field = f.word(), values = several.join(", ")));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::geometry::Point;
    use super::*;

    fn title(texts: &[(f64, f64, &str, &str)]) -> Title {
        let text = |(x, y, tag, text): &(f64, f64, &str, &str)| Text {
            at: Point { x: *x, y: *y },
            text: (*text).to_owned(),
            entity: "TEXT",
            tag: (*tag).to_owned(),
            layer: "0".to_owned(),
        };
        read(&texts.iter().map(text).collect::<Vec<_>>(), 1.0)
    }

    fn named(title: &Title) -> [Option<&str>; 3] {
        [title.material.as_deref(), title.drawing.as_deref(), title.revision.as_deref()]
    }

    #[test]
    fn a_text_names_its_field_and_value() {
        let english =
            title(&[(0.0, 0.0, "", "Material: C45"), (0.0, 9.0, "", "Drawing no. AX-17"), (9.0, 0.0, "", "Rev. B")]);
        assert_eq!(named(&english), [Some("C45"), Some("AX-17"), Some("B")]);
        let german = title(&[
            (0.0, 0.0, "", "Werkstoff 1.4301 (X5CrNi18-10)"),
            (0.0, 9.0, "", "Zeichnungs-Nr.: 20 4711"),
            (9.0, 0.0, "", "Änderung 03"),
        ]);
        assert_eq!(named(&german), [Some("X5CrNi18-10"), Some("20 4711"), Some("03")]);
        assert_eq!(named(&title(&[(0.0, 0.0, "", "AX-17 Rev. B")])), [None, Some("AX-17"), Some("B")]);
    }

    #[test]
    fn a_value_stands_right_of_its_word_or_below_it_or_in_an_attribute() {
        let right = title(&[(0.0, 0.0, "", "Material"), (25.0, 0.5, "", "C45"), (0.0, -5.0, "", "invented works 12")]);
        assert_eq!((named(&right)[0], right.read.len()), (Some("C45"), 2));
        let below = title(&[
            (0.0, 0.0, "", "Zeichnungsnummer"),
            (1.0, -5.0, "", "AX-17"),
            (40.0, 0.0, "", "Index"),
            (40.0, -5.0, "", "C"),
        ]);
        assert_eq!(named(&below), [None, Some("AX-17"), Some("C")]);
        let attributes =
            title(&[(0.0, 0.0, "DRAWING_NO", "AX-17"), (0.0, 0.0, "REV", "C"), (0.0, 0.0, "WERKSTOFF", "C45")]);
        assert_eq!(named(&attributes), [Some("C45"), Some("AX-17"), Some("C")]);
    }

    #[test]
    fn prose_is_no_title_and_what_is_not_one_thing_is_told() {
        let prose = title(&[
            (0.0, 0.0, "", "Drawing shows the finished part"),
            (0.0, 50.0, "", "revision of the law applies"),
            (0.0, 90.0, "", "45"),
            (0.0, 99.0, "", "60 61"),
            (0.0, 108.0, "", "304 +0.1"),
            (0.0, 117.0, "", "H13"),
            (0.0, 126.0, "", "M2"),
        ]);
        assert_eq!((named(&prose), prose.read.len()), ([None; 3], 0));
        let two = title(&[(0.0, 0.0, "", "Material: C45"), (0.0, 9.0, "", "1.4301")]);
        assert!(
            two.material.is_none() && two.notes[0].contains("more than one material: C45, X5CrNi18-10"),
            "{:?}",
            two.notes
        );
        let unknown = title(&[(0.0, 0.0, "", "Material: unobtainium")]);
        assert!(
            unknown.material.is_none() && unknown.notes[0].contains("unobtainium of the drawing is not in the table")
        );
    }
}
