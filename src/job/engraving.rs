//! A plain single-stroke alphabet, drawn for this program, for engraved texts. A fine cutter follows its strokes.
//!
//! Letters are drawn on a grid that is 4 wide and 6 high. There are capitals, figures and a few signs. Small letters
//! are engraved as capitals.

use crate::diag::Diag;
use crate::say;

/// Height of a letter on its grid.
const HIGH: f64 = 6.0;
/// Distance from one letter to the next on the grid: the width of a letter and a gap.
const ADVANCE: f64 = 5.5;
/// Width of a letter.
const WIDE: f64 = 4.0;

/// The strokes of each letter. A stroke is a list of points. A point is two digits: x, then y, from the lower left. A
/// space separates strokes.
const LETTERS: [(char, &str); 46] = [
    (' ', ""),
    ('A', "002640 1232"),
    ('B', "00063645443303 3342413000"),
    ('C', "4536160501103041"),
    ('D', "00062644422000"),
    ('E', "46060040 0333"),
    ('F', "460600 0333"),
    ('G', "453616050110304143 4323"),
    ('H', "0006 4046 0343"),
    ('I', "2026"),
    ('J', "4641301001"),
    ('K', "0006 0246 2440"),
    ('L', "060040"),
    ('M', "0006234640"),
    ('N', "00064046"),
    ('O', "010516364541301001"),
    ('P', "00063645443303"),
    ('Q', "010516364541301001 2240"),
    ('R', "00063645443303 2340"),
    ('S', "453616050413334241301001"),
    ('T', "0646 2620"),
    ('U', "060110304146"),
    ('V', "062046"),
    ('W', "0610233046"),
    ('X', "0046 0640"),
    ('Y', "062346 2320"),
    ('Z', "06460040"),
    ('0', "010516364541301001"),
    ('1', "152620"),
    ('2', "05163645440040"),
    ('3', "05163645443313 334241301001"),
    ('4', "30360242"),
    ('5', "460604344341301001"),
    ('6', "4536160501103041423302"),
    ('7', "064610"),
    ('8', "13040516364544331302011030414233"),
    ('9', "011030414536160504133344"),
    ('-', "1333"),
    ('.', "2021"),
    (',', "2110"),
    ('/', "0046"),
    ('+', "1333 2224"),
    (':', "2122 2425"),
    ('(', "36252130"),
    (')', "16252110"),
    ('Ø', "010516364541301001 0046"),
];

/// The size of an engraved text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Path {
    /// Length of all strokes, mm.
    pub length_mm: f64,
    /// Number of strokes. The cutter is lifted after each.
    pub strokes: usize,
    /// Width of the text, mm.
    pub width_mm: f64,
}

/// Strokes of a letter as points on the grid.
fn strokes(letter: char) -> Option<Vec<Vec<(f64, f64)>>> {
    let letter = letter.to_uppercase().next().unwrap_or(letter);
    let (_, drawn) = LETTERS.iter().find(|(known, _)| *known == letter)?;
    let stroke = |text: &str| {
        let figures: Vec<f64> = text.chars().filter_map(|c| c.to_digit(10)).map(f64::from).collect();
        figures.as_chunks().0.iter().map(|[x, y]| (*x, *y)).collect()
    };
    Some(drawn.split_whitespace().map(stroke).collect())
}

/// Path of a text with letters of a given height.
///
/// - **Units**: mm.
///
/// ```
/// // An L of 6 mm: 6 down, 4 across, in one stroke.
/// let path = spanhold::job::engraving::path("L", 6.0)?;
/// assert_eq!((path.length_mm, path.strokes, path.width_mm), (10.0, 1, 4.0));
/// # Ok::<(), spanhold::diag::Diag>(())
/// ```
///
/// # Errors
/// The text has a letter that is not in the alphabet.
pub fn path(text: &str, height_mm: f64) -> Result<Path, Diag> {
    let scale = height_mm / HIGH;
    let mut path = Path { length_mm: 0.0, strokes: 0, width_mm: 0.0 };
    for letter in text.chars() {
        let Some(drawn) = strokes(letter) else {
            return Err(
                Diag::new(say!("engraving-letter", letter = letter.to_string())).help(say!("engraving-letter-help"))
            );
        };
        path.strokes += drawn.len();
        for stroke in drawn {
            let lengths = stroke.iter().zip(stroke.iter().skip(1)).map(|(a, b)| (b.0 - a.0).hypot(b.1 - a.1));
            path.length_mm += scale * lengths.sum::<f64>();
        }
    }
    path.width_mm = scale * (ADVANCE * text.chars().count() as f64 - (ADVANCE - WIDE)).max(0.0);
    Ok(path)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_letter_is_drawn_on_its_grid_and_none_twice() {
        for (i, (letter, drawn)) in LETTERS.iter().enumerate() {
            assert!(LETTERS[..i].iter().all(|(other, _)| other != letter), "{letter}");
            for part in drawn.split_whitespace() {
                assert!(part.len() >= 4 && part.len() % 2 == 0, "{letter}: {part}");
            }
            let drawn = strokes(*letter).expect("known");
            let points: Vec<_> = drawn.iter().flatten().collect();
            assert!(points.iter().all(|p| p.0 <= WIDE && p.1 <= HIGH), "{letter}");
            if letter.is_ascii_alphanumeric() {
                let (low, high) = points.iter().fold((9.0f64, 0.0f64), |(a, b), p| (a.min(p.1), b.max(p.1)));
                assert_eq!((low, high), (0.0, HIGH), "{letter} is not as high as the others");
            }
        }
    }

    #[test]
    fn lengths_grow_with_the_height_and_accents_are_told() {
        let (small, large) = (path("LP 42", 2.0).expect("known"), path("lp 42", 4.0).expect("known"));
        assert!((large.length_mm - 2.0 * small.length_mm).abs() < 1e-12);
        assert_eq!(small.strokes, large.strokes);
        // Five letters: four advances and a width.
        assert!((large.width_mm - 4.0 / 6.0 * (4.0 * 5.5 + 4.0)).abs() < 1e-12);
        assert!(path("é", 2.0).expect_err("not known").to_string().contains("cannot be engraved"));
    }
}
