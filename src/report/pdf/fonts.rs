//! The fonts of the PDF, and how wide a text is in them.

use std::sync::Arc;
use ttf_parser::Face;

use super::pdf_error;
use crate::report::ReportError;
use crate::report::table::pieces;

/// The family of the embedded fonts, as every drawing names it first.
const FAMILY: &str = "DejaVu Sans";

/// Both weights, and a font of the user for letters that they lack.
pub struct Fonts<'f> {
    regular: Face<'static>,
    bold: Face<'static>,
    own: Option<(&'f [u8], Face<'f>)>,
}

impl<'f> Fonts<'f> {
    /// The fonts that come with the program, and the bytes of a font file of the user.
    ///
    /// # Errors
    /// A font cannot be read.
    pub fn new(own: Option<&'f [u8]>) -> Result<Fonts<'f>, ReportError> {
        let face = |data| Face::parse(data, 0).map_err(pdf_error);
        let own = own.map(|data| Ok::<_, ReportError>((data, Face::parse(data, 0).map_err(pdf_error)?))).transpose()?;
        Ok(Fonts { regular: face(dejavu::sans::regular())?, bold: face(dejavu::sans::bold())?, own })
    }

    /// Whether they have all letters of a text.
    pub fn have(&self, text: &str) -> bool {
        let own = |c: char| self.own.as_ref().is_some_and(|(_, face)| face.glyph_index(c).is_some());
        text.chars().all(|c| self.bold.glyph_index(c).is_some() || own(c))
    }

    /// Reads SVG with these fonts alone: a page must not depend on the fonts of a machine.
    pub fn options(&self) -> usvg::Options<'static> {
        let mut options = usvg::Options { font_family: FAMILY.to_string(), ..usvg::Options::default() };
        let known = Arc::make_mut(&mut options.fontdb);
        known.load_font_data(dejavu::sans::regular().to_vec());
        known.load_font_data(dejavu::sans::bold().to_vec());
        if let Some((data, _)) = &self.own {
            known.load_font_data(data.to_vec());
        }
        known.set_sans_serif_family(FAMILY);
        options
    }

    /// Width of a text in the unit of `size`.
    pub fn width(&self, text: &str, size: f64, bold: bool) -> f64 {
        let face = if bold { &self.bold } else { &self.regular };
        let of = |face: &Face<'_>, c: char| {
            let advance = face.glyph_index(c).and_then(|g| face.glyph_hor_advance(g))?;
            Some(f64::from(advance) / f64::from(face.units_per_em()))
        };
        let own = |c: char| self.own.as_ref().and_then(|(_, face)| of(face, c));
        text.chars().map(|c| of(face, c).or_else(|| own(c)).unwrap_or(1.0)).sum::<f64>() * size
    }

    /// A text in lines no wider than `width`; a word that is wider is broken.
    pub fn wrap(&self, text: &str, size: f64, bold: bool, width: f64) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut line = String::new();
        let fits = |text: &str| self.width(text, size, bold) <= width;
        for (blank, word) in pieces(text) {
            let blank = if blank && !line.is_empty() { " " } else { "" };
            let longer = format!("{line}{blank}{word}");
            if fits(&longer) {
                line = longer;
                continue;
            }
            if !line.is_empty() {
                lines.push(std::mem::take(&mut line));
            }
            for c in word.chars() {
                if !line.is_empty() && !fits(&format!("{line}{c}")) {
                    lines.push(std::mem::take(&mut line));
                }
                line.push(c);
            }
        }
        lines.push(line);
        lines
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_no_wider_than_asked_and_lose_nothing() {
        let fonts = Fonts::new(None).expect("fonts");
        let text = "critical speed 57 % Donaudampfschifffahrtsgesellschaft";
        let lines = fonts.wrap(text, 10.0, true, 60.0);
        assert!(lines.len() > 4, "{lines:?}");
        assert!(lines.iter().all(|l| fonts.width(l, 10.0, true) <= 60.0), "{lines:?}");
        let letters = |t: &str| t.chars().filter(|c| !c.is_whitespace()).collect::<String>();
        assert_eq!(letters(&lines.concat()), letters(text));
    }

    #[test]
    fn bold_is_wider_and_width_grows_with_size() {
        let fonts = Fonts::new(None).expect("fonts");
        let regular = fonts.width("Ø18 h9", 10.0, false);
        assert!(fonts.width("Ø18 h9", 10.0, true) > regular);
        assert!((fonts.width("Ø18 h9", 20.0, false) - 2.0 * regular).abs() < 1e-9);
    }
}
