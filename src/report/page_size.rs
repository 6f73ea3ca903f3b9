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
}
