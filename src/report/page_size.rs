//! The page that drawings are made for.

/// A4 landscape, 297 by 210 mm.
pub const PAGE_WIDTH: f64 = 1188.0;
/// Its height.
pub const PAGE_HEIGHT: f64 = 840.0;

/// Margin on all sides.
pub const MARGIN: f64 = 28.0;

/// What a diagram is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// A page of its own, with a title.
    Page,
    /// A part of a page that has a title.
    Inline,
    /// The first page of a sheet: the shaft alone, with its lengths, and each stop and grip with its place.
    Setting,
    /// A part of a page on a screen: as wide as the screen allows, and as high as it needs.
    Screen,
}

/// How wide a picture is drawn, and its smallest text.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Canvas {
    /// Width, in units of the picture.
    pub width: f64,
    /// Smallest size of text, in units of the picture.
    least_text: f64,
}

/// Pixels of a screen for a unit. [`SMALL`](super::shapes::SMALL) text, the smallest on a screen, is then 11 pixels high, which is read
/// without effort (common practice, no source).
const PX_PER_UNIT: f64 = 1.1;
/// Narrowest and widest picture for a screen, in units. On a narrower screen it is moved sideways.
const NARROWEST: f64 = 560.0;
const WIDEST: f64 = 1800.0;

impl Canvas {
    /// The page.
    pub const PAGE: Canvas = Canvas { width: PAGE_WIDTH, least_text: 0.0 };

    /// A screen with room of so many pixels.
    pub fn screen(width_px: f64) -> Canvas {
        Canvas { width: (width_px / PX_PER_UNIT).clamp(NARROWEST, WIDEST), least_text: super::shapes::SMALL }
    }

    /// A size of text, at least the smallest.
    pub fn text(self, size: f64) -> f64 {
        size.max(self.least_text)
    }
}
