//! Counts what is in a DXF file, independently of the library that reads it.
//!
//! The library skips kinds of entities that it does not know, and ends a section at one it cannot read. No part of a
//! drawing may be lost without notice. So the raw pairs of code and value are read a second time, to find the kind,
//! layer and place of each entity.

use std::collections::BTreeMap;

/// First bytes of a binary file. Four more bytes follow before the first pair.
pub const BINARY: &[u8] = b"AutoCAD Binary DXF";

/// Entities of one kind on one layer.
#[derive(Debug, Clone, PartialEq)]
pub struct Kind {
    /// How many.
    pub count: usize,
    /// Place of the first one, in the units of the file.
    pub at: (f64, f64),
}

/// A dimension as it is in the file, in the units of the file.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct RawDimension {
    /// Its layer.
    pub layer: String,
    /// Its own text.
    pub text: String,
    /// Its points: definition point, first and second end of what is measured, point on a circle.
    pub points: [(f64, f64); 4],
    /// Direction of a rotated dimension, degrees.
    pub angle: f64,
    /// Its type and flags.
    pub flags: i32,
    /// Its dimension style.
    pub style: String,
    /// Its own factor for lengths, which overrides the factor of the style.
    pub factor: Option<f64>,
}

/// Codes of the points of a dimension.
const DIMENSION_POINTS: [i32; 4] = [10, 13, 14, 15];

/// Code of the factor for lengths, in a dimension style and in the data by which a dimension overrides its style. The
/// factor for sizes (`DIMSCALE`, code 40) makes texts and arrows larger and says nothing about lengths.
pub const LENGTH_FACTOR: i32 = 144;

/// Header variables that are kept. `$HANDSEED` and `$HANDLING` are kept only for the library's own order.
const VARIABLES: [&str; 7] =
    ["$ACADVER", "$INSUNITS", "$MEASUREMENT", "$DIMLFAC", "$DWGCODEPAGE", "$HANDSEED", "$HANDLING"];

/// The result of the count.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Census {
    /// `$ACADVER`, if the file has it.
    pub version: Option<String>,
    /// Entities by kind and layer, those of the model and of blocks together.
    pub kinds: BTreeMap<(String, String), Kind>,
    /// Number of entities by kind, outside blocks.
    pub outside_blocks: BTreeMap<String, usize>,
    /// Dimensions outside blocks.
    pub dimensions: Vec<RawDimension>,
    /// Factor for lengths by the name of a dimension style, in capitals.
    pub factors: BTreeMap<String, f64>,
    /// Byte ranges, ascending, that no draft needs and that the library can fail on. One is the table of dimension
    /// styles: in a file of R12 the library takes the name of an arrow for a handle and gives up. The others are most
    /// variables of the header: the library panics at dates and times that are far out of range.
    pub needless: Vec<std::ops::Range<usize>>,
}

/// The value in a pair of code and value.
enum Value {
    Text(String),
    Number(f64),
}

/// Counts the entities. The count ends where the file cannot be followed. The library then reports what is wrong.
pub fn census(bytes: &[u8]) -> Census {
    let mut all = Census::default();
    let (mut section, mut named, mut variable) = (String::new(), false, String::new());
    let mut dimension: Option<RawDimension> = None;
    let mut open: Option<(String, String, (f64, f64))> = None;
    // Start of the last `TABLE`, of a table of dimension styles, and of a header variable that is not needed.
    let (mut table, mut styles, mut needless): (usize, Option<usize>, Option<usize>) = (0, None, None);
    let mut style = String::new();
    // The code of the value that comes next, in the data by which a dimension overrides its style.
    let mut overriding: Option<i32> = None;
    let mut see = |code: i32, value: Value, at: std::ops::Range<usize>| -> bool {
        match (code, &value) {
            (0 | 9, Value::Text(word)) => {
                all.needless.extend(needless.take().map(|from| from..at.start));
                match word.as_str() {
                    "TABLE" => table = at.start,
                    "ENDTAB" => all.needless.extend(styles.take().map(|from| from..at.end)),
                    name if code == 9 && section == "HEADER" && !VARIABLES.contains(&name) => needless = Some(at.start),
                    _ => {}
                }
            }
            (2, Value::Text(word)) if word == "DIMSTYLE" && section == "TABLES" => styles = styles.or(Some(table)),
            (2, Value::Text(name)) if styles.is_some() => style = name.to_uppercase(),
            (LENGTH_FACTOR, Value::Number(factor)) if styles.is_some() => {
                all.factors.insert(style.clone(), *factor);
            }
            _ => {}
        }
        if let Some(d) = &mut dimension {
            match (code, &value) {
                (0, _) => all.dimensions.extend(dimension.take()),
                (1, Value::Text(text)) => d.text = text.clone(),
                (3, Value::Text(name)) => d.style = name.clone(),
                (1000, Value::Text(what)) => overriding = (what == "DSTYLE").then_some(0),
                (1070, Value::Number(of)) => overriding = overriding.map(|_| *of as i32),
                (1040, Value::Number(factor)) if overriding == Some(LENGTH_FACTOR) => d.factor = Some(*factor),
                (8, Value::Text(text)) => d.layer = text.clone(),
                (50, Value::Number(angle)) => d.angle = *angle,
                (70, Value::Number(flags)) => d.flags = *flags as i32,
                (_, Value::Number(v)) => {
                    for (x, point) in DIMENSION_POINTS.into_iter().zip(&mut d.points) {
                        if code == x {
                            point.0 = *v;
                        } else if code == x + 10 {
                            point.1 = *v;
                        }
                    }
                }
                _ => {}
            }
        }
        match (code, value) {
            (0, Value::Text(word)) => {
                if section == "ENTITIES" && word == "DIMENSION" {
                    dimension = Some(RawDimension::default());
                }
                if let Some((kind, layer, at)) = open.take() {
                    *all.outside_blocks.entry(kind.clone()).or_default() += usize::from(section == "ENTITIES");
                    all.kinds.entry((kind, layer)).or_insert(Kind { count: 0, at }).count += 1;
                }
                match word.as_str() {
                    "SECTION" => named = true,
                    "ENDSEC" => section.clear(),
                    "EOF" => return false,
                    "BLOCK" | "ENDBLK" => {}
                    _ if section == "ENTITIES" || section == "BLOCKS" => {
                        open = Some((word, String::new(), (0.0, 0.0)));
                    }
                    _ => {}
                }
            }
            (2, Value::Text(word)) if named => (section, named) = (word, false),
            (9, Value::Text(word)) => variable = word,
            (1, Value::Text(word)) if variable == "$ACADVER" && section == "HEADER" => all.version = Some(word),
            (8, Value::Text(word)) => {
                if let Some((_, layer, _)) = &mut open {
                    *layer = word;
                }
            }
            (10, Value::Number(x)) => {
                if let Some((_, _, at)) = &mut open {
                    at.0 = x;
                }
            }
            (20, Value::Number(y)) => {
                if let Some((_, _, at)) = &mut open {
                    at.1 = y;
                }
            }
            _ => {}
        }
        true
    };
    if bytes.starts_with(BINARY) {
        binary(bytes, BINARY.len() + 4, &mut see);
    } else {
        ascii(bytes, &mut see);
    }
    all
}

/// UTF-8, as in files from R2007 on. If the bytes are not UTF-8, every byte is one letter.
fn text_of(bytes: &[u8]) -> String {
    std::str::from_utf8(bytes).map_or_else(|_| bytes.iter().map(|b| char::from(*b)).collect(), str::to_owned)
}

/// Is called with each pair and its bytes. Returns whether to go on.
type See<'a> = dyn FnMut(i32, Value, std::ops::Range<usize>) -> bool + 'a;

fn ascii(bytes: &[u8], see: &mut See) {
    let mut at = 0;
    let mut lines = bytes.split_inclusive(|b| *b == b'\n').map(|l| {
        at += l.len();
        (text_of(l.trim_ascii_end()), at)
    });
    let mut from = 0;
    while let (Some((code, _)), Some((value, to))) = (lines.next(), lines.next()) {
        let Ok(code) = code.trim().trim_start_matches('\u{feff}').parse::<i32>() else { return };
        let value = match code {
            10..=79 | 140..=149 | 1010..=1070 => Value::Number(value.trim().parse().unwrap_or(0.0)),
            _ => Value::Text(value.trim().to_owned()),
        };
        if !see(code, value, from..to) {
            return;
        }
        from = to;
    }
}

/// How a value is stored behind its code in a binary file.
enum Stored {
    Text,
    Bytes(usize),
    /// A length in one byte, then as many bytes.
    Counted,
}

/// The ranges of codes are those of the format's public reference. From R13 on a flag takes one byte.
fn stored(code: i32, wide: bool) -> Option<Stored> {
    Some(match code {
        310..=319 | 1004 => Stored::Counted,
        0..=9
        | 100..=102
        | 105
        | 300..=309
        | 320..=369
        | 390..=399
        | 410..=419
        | 430..=439
        | 470..=481
        | 999..=1009 => Stored::Text,
        10..=59 | 110..=149 | 160..=169 | 210..=239 | 460..=469 | 1010..=1059 => Stored::Bytes(8),
        60..=79 | 170..=179 | 270..=289 | 370..=389 | 400..=409 | 1060..=1070 => Stored::Bytes(2),
        90..=99 | 420..=429 | 440..=459 | 1071 => Stored::Bytes(4),
        290..=299 => Stored::Bytes(if wide { 1 } else { 2 }),
        _ => return None,
    })
}

fn binary(bytes: &[u8], start: usize, see: &mut See) {
    // From R13 on a code takes two bytes. Before, it takes one byte, or three if the first is 255. The first pair is
    // 0 SECTION, so its second byte shows which.
    let wide = bytes.get(start + 1) == Some(&0);
    let mut at = start;
    while let Some((code, value, to)) = binary_pair(bytes, at, wide) {
        if !see(code, value, at..to) {
            return;
        }
        at = to;
    }
}

/// The pair that begins at a byte, and the byte where the next pair begins.
fn binary_pair(bytes: &[u8], from: usize, wide: bool) -> Option<(i32, Value, usize)> {
    let short = |at: usize| bytes.get(at..)?.first_chunk().map(|b| i32::from(i16::from_le_bytes(*b)));
    let (code, at) = match (wide, *bytes.get(from)?) {
        (true, _) => (short(from)?, from + 2),
        (false, 255) => (short(from + 1)?, from + 3),
        (false, one) => (i32::from(one), from + 1),
    };
    match stored(code, wide)? {
        Stored::Text => {
            let rest = bytes.get(at..)?;
            let length = rest.iter().position(|b| *b == 0)?;
            Some((code, Value::Text(text_of(rest.get(..length)?)), at + length + 1))
        }
        Stored::Bytes(n) => {
            let number = match *bytes.get(at..at + n)? {
                [a, b] => f64::from(i16::from_le_bytes([a, b])),
                ref taken => taken.try_into().map_or(0.0, f64::from_le_bytes),
            };
            Some((code, Value::Number(number), at + n))
        }
        Stored::Counted => {
            let to = at + 1 + usize::from(*bytes.get(at)?);
            (to <= bytes.len()).then_some((code, Value::Number(0.0), to))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn kinds_layers_and_places_are_counted() {
        let text = "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1015\n0\nENDSEC\n0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n2\nB\n0\nHATCH\n8\nh\n\
            10\n3\n20\n4\n0\nENDBLK\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n0\nLINE\n8\n0\n10\n1.5\n0\nLINE\n8\n0\n0\nENDSEC\n0\nEOF\n";
        let all = census(text.as_bytes());
        assert_eq!(all.version.as_deref(), Some("AC1015"));
        assert_eq!(all.kinds[&("HATCH".into(), "h".into())], Kind { count: 1, at: (3.0, 4.0) });
        assert_eq!(all.kinds[&("LINE".into(), "0".into())], Kind { count: 2, at: (1.5, 0.0) });
        assert_eq!(all.outside_blocks.get("LINE"), Some(&2));
        assert_eq!(all.outside_blocks.get("HATCH"), Some(&0));
    }

    #[test]
    fn what_the_library_stumbles_over_is_found() {
        let styles = "0\nTABLE\n2\nDIMSTYLE\n70\n1\n0\nDIMSTYLE\n5\nARCHTICK\n0\nENDTAB\n";
        let times = "9\n$TDCREATE\n40\n1e308\n9\n$TDUPDATE\n40\n1e308\n";
        let text = format!(
            "0\nSECTION\n2\nHEADER\n9\n$ACADVER\n1\nAC1009\n{times}0\nENDSEC\n0\nSECTION\n2\nTABLES\n0\nTABLE\n2\nLAYER\n0\nENDTAB\n{styles}0\nENDSEC\n0\nEOF\n"
        );
        let found = census(text.as_bytes()).needless;
        let cut: String = found.iter().map(|r| &text[r.clone()]).collect();
        assert_eq!(cut, format!("{times}{styles}"));
    }

    #[test]
    fn a_file_that_is_none_is_counted_without_a_panic() {
        for bytes in [&b""[..], b"x", BINARY, b"AutoCAD Binary DXF\r\n\x1a\0\0\0SEC", b"0\n", b"\xff\xfe0\nSECTION"] {
            assert_eq!(census(bytes).kinds.len(), 0);
        }
    }
}
