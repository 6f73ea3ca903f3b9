//! The page that drawings are made for.

/// A4 landscape, 297 by 210 mm.
pub const PAGE_WIDTH: f64 = 1188.0;
/// Its height.
pub const PAGE_HEIGHT: f64 = 840.0;

/// Margin on all sides.
pub const MARGIN: f64 = 28.0;
