//! The fonts of the PDF, and how wide a text is in them.

use std::sync::Arc;
use ttf_parser::Face;

use super::pdf_error;
use crate::report::ReportError;

/// The family of the embedded fonts, as every drawing names it first.
const FAMILY: &str = "DejaVu Sans";

/// Both weights.
pub struct Fonts {
    regular: Face<'static>,
    bold: Face<'static>,
}

impl Fonts {
    /// The fonts that come with the program.
    ///
    /// # Errors
    /// A font cannot be read.
    pub fn embedded() -> Result<Fonts, ReportError> {
        let face = |data| Face::parse(data, 0).map_err(pdf_error);
        Ok(Fonts { regular: face(dejavu::sans::regular())?, bold: face(dejavu::sans::bold())? })
    }

    /// Reads SVG with these fonts alone: a page must not depend on the fonts of a machine.
    pub fn options(&self) -> usvg::Options<'static> {
        let mut options = usvg::Options { font_family: FAMILY.to_string(), ..usvg::Options::default() };
        let known = Arc::make_mut(&mut options.fontdb);
        known.load_font_data(dejavu::sans::regular().to_vec());
        known.load_font_data(dejavu::sans::bold().to_vec());
        known.set_sans_serif_family(FAMILY);
        options
    }

    /// Width of a text in the unit of `size`.
    pub fn width(&self, text: &str, size: f64, bold: bool) -> f64 {
        let face = if bold { &self.bold } else { &self.regular };
        let missing = f64::from(face.units_per_em());
        let advance = |c: char| {
            let glyph = face.glyph_index(c).and_then(|g| face.glyph_hor_advance(g));
            glyph.map_or(missing, f64::from)
        };
        text.chars().map(advance).sum::<f64>() * size / missing
    }

    /// A text in lines no wider than `width`; a word that is wider is broken.
    pub fn wrap(&self, text: &str, size: f64, bold: bool, width: f64) -> Vec<String> {
        let mut lines: Vec<String> = Vec::new();
        let mut line = String::new();
        let fits = |text: &str| self.width(text, size, bold) <= width;
        for word in text.split_whitespace() {
            let longer = if line.is_empty() { word.to_string() } else { format!("{line} {word}") };
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
        let fonts = Fonts::embedded().expect("fonts");
        let text = "critical speed 57 % Donaudampfschifffahrtsgesellschaft";
        let lines = fonts.wrap(text, 10.0, true, 60.0);
        assert!(lines.len() > 4, "{lines:?}");
        assert!(lines.iter().all(|l| fonts.width(l, 10.0, true) <= 60.0), "{lines:?}");
        let letters = |t: &str| t.chars().filter(|c| !c.is_whitespace()).collect::<String>();
        assert_eq!(letters(&lines.concat()), letters(text));
    }

    #[test]
    fn bold_is_wider_and_width_grows_with_size() {
        let fonts = Fonts::embedded().expect("fonts");
        let regular = fonts.width("Ø18 h9", 10.0, false);
        assert!(fonts.width("Ø18 h9", 10.0, true) > regular);
        assert!((fonts.width("Ø18 h9", 20.0, false) - 2.0 * regular).abs() < 1e-9);
    }
}
