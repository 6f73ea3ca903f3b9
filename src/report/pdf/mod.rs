//! The sheet as a PDF: A4 landscape, its fonts embedded, nothing from outside. With the feature `pdf` only.
//!
//! Each page is an SVG document, so diagram and tables are written in the same way. krilla writes them as text and
//! paths that can be searched and copied.

mod flow;
mod fonts;
mod pages;
mod table;

use krilla::geom::Size;
use krilla::metadata::Metadata;
use krilla::page::PageSettings;
use krilla::{Document, SerializeSettings};
use krilla_svg::{SurfaceExt, SvgSettings};

use super::ReportError;
use super::content;
use crate::job::plan::Plan;
use crate::lang;
use crate::say;
use fonts::Fonts;

/// A4 landscape in points.
const WIDTH_PT: f32 = 841.89;
const HEIGHT_PT: f32 = 595.276;

fn pdf_error(what: impl std::fmt::Display) -> ReportError {
    ReportError::Pdf { message: what.to_string() }
}

/// Whether the fonts can write the language of the texts. `own`: the bytes of a font file of the user.
///
/// # Errors
/// The font cannot be read.
pub fn can_write(own: Option<&[u8]>) -> Result<bool, ReportError> {
    Ok(Fonts::new(own)?.have(lang::text("language-name")))
}

/// The sheet as the bytes of a PDF file: the same for the same plan. `own`: the bytes of a font file of the user, for letters that the
/// embedded fonts lack.
///
/// # Errors
/// As [`plan_svg`](super::plan_svg), or when the PDF library fails.
pub fn sheet_pdf(plan: &Plan, own: Option<&[u8]>) -> Result<Vec<u8>, ReportError> {
    let fonts = Fonts::new(own)?;
    let options = fonts.options();
    let size = Size::from_wh(WIDTH_PT, HEIGHT_PT).ok_or_else(|| pdf_error("no page size"))?;
    let mut document = Document::new_with(SerializeSettings::default());
    for page in pages::pages(plan, &fonts)? {
        let tree = usvg::Tree::from_str(&page, &options).map_err(pdf_error)?;
        let mut on_page = document.start_page_with(PageSettings::new(size));
        let mut surface = on_page.surface();
        surface
            .draw_svg(&tree, size, SvgSettings { embed_text: true, ..SvgSettings::default() })
            .ok_or_else(|| pdf_error("a page cannot be drawn"))?;
        surface.finish();
        on_page.finish();
    }
    let title = say!("sheet-title", job = content::head(plan).job);
    document.set_metadata(Metadata::new().title(title).language(plan.language.clone()).creator("spanhold".to_string()));
    document.finish().map_err(|e| pdf_error(format!("{e:?}")))
}
