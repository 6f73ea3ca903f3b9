//! What stands in a DXF file, counted apart from the library that reads it.
//!
//! The library passes over kinds of entities it does not know, and ends a section at one it cannot read. Nothing of a
//! drawing may go unseen, so the raw pairs of code and value are looked at once more: kind, layer and place of each entity.

use std::collections::BTreeMap;

/// First bytes of a binary file, without its last three.
pub const BINARY: &[u8] = b"AutoCAD Binary DXF";

/// Entities of one kind on one layer.
#[derive(Debug, Clone, PartialEq)]
pub struct Kind {
    /// How many.
    pub count: usize,
    /// Place of the first, in the file's own units.
    pub at: (f64, f64),
}

/// The count.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Census {
    /// `$ACADVER`, where there is one.
    pub version: Option<String>,
    /// By kind and layer, of the model and of blocks together.
    pub kinds: BTreeMap<(String, String), Kind>,
    /// By kind, outside blocks.
    pub outside_blocks: BTreeMap<String, usize>,
}

/// A pair of code and value.
enum Value {
    Text(String),
    Number(f64),
}

/// Counts. What cannot be followed any more ends the count; the library then says what is wrong.
pub fn census(bytes: &[u8]) -> Census {
    let mut all = Census::default();
    let (mut section, mut named, mut variable) = (String::new(), false, String::new());
    let mut open: Option<(String, String, (f64, f64))> = None;
    let mut see = |code: i32, value: Value| -> bool {
        match (code, value) {
            (0, Value::Text(word)) => {
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
        binary(bytes.get(BINARY.len() + 4..).unwrap_or_default(), &mut see);
    } else {
        ascii(bytes, &mut see);
    }
    all
}

fn ascii(bytes: &[u8], see: &mut impl FnMut(i32, Value) -> bool) {
    let mut lines = bytes.split(|b| *b == b'\n').map(|l| String::from_utf8_lossy(l.trim_ascii_end()));
    while let (Some(code), Some(value)) = (lines.next(), lines.next()) {
        let Ok(code) = code.trim().trim_start_matches('\u{feff}').parse::<i32>() else { return };
        let value = match code {
            10 | 20 => Value::Number(value.trim().parse().unwrap_or(0.0)),
            _ => Value::Text(value.trim().to_owned()),
        };
        if !see(code, value) {
            return;
        }
    }
}

fn binary(bytes: &[u8], see: &mut impl FnMut(i32, Value) -> bool) {
    // From R13 on a code takes two bytes; before it takes one, or three behind 255. The first pair is 0 SECTION.
    let wide = bytes.get(1) == Some(&0);
    let mut at = 0;
    let mut take = |n: usize| {
        let taken = bytes.get(at..at + n);
        at += n;
        taken
    };
    let short = |b: &[u8]| i32::from(i16::from_le_bytes([b[0], b[1]]));
    loop {
        let Some(first) = take(if wide { 2 } else { 1 }) else { return };
        let code = match first {
            [255] => match take(2) {
                Some(two) => short(two),
                None => return,
            },
            [one] => i32::from(*one),
            two => short(two),
        };
        let length = match code {
            0..=9
            | 100..=102
            | 105
            | 300..=309
            | 320..=369
            | 390..=399
            | 410..=419
            | 430..=439
            | 470..=481
            | 999..=1009 => None,
            10..=59 | 110..=149 | 210..=239 | 460..=469 | 1010..=1059 => Some(8),
            60..=79 | 170..=179 | 270..=289 | 370..=389 | 400..=409 | 1060..=1070 => Some(2),
            90..=99 | 420..=429 | 440..=459 | 1071 => Some(4),
            160..=169 => Some(8),
            290..=299 => Some(if wide { 1 } else { 2 }),
            310..=319 => match take(1) {
                Some(n) => Some(usize::from(n[0])),
                None => return,
            },
            _ => return,
        };
        let value = match length {
            Some(n) => match take(n) {
                Some(taken) if matches!(code, 10 | 20) => {
                    Value::Number(taken.try_into().map_or(0.0, f64::from_le_bytes))
                }
                Some(_) => continue,
                None => return,
            },
            None => {
                let mut text = Vec::new();
                loop {
                    match take(1) {
                        Some([0]) => break,
                        Some(one) => text.extend(one),
                        None => return,
                    }
                }
                Value::Text(String::from_utf8_lossy(&text).into_owned())
            }
        };
        if !see(code, value) {
            return;
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
    fn a_file_that_is_none_is_counted_without_a_panic() {
        for bytes in [&b""[..], b"x", BINARY, b"AutoCAD Binary DXF\r\n\x1a\0\0\0SEC", b"0\n", b"\xff\xfe0\nSECTION"] {
            assert_eq!(census(bytes).kinds.len(), 0);
        }
    }
}
