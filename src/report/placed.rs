//! The diagram with the places of what is drawn, for a page that lays its own marks over it.

use super::page_size::Canvas;
use super::{ReportError, svg};
use crate::job::plan::{Along, Plan};
use schemars::JsonSchema;
use serde::Serialize;

/// The diagram and the position of the shaft in it, in units of its view box.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub struct Placed {
    /// The SVG element.
    pub svg: String,
    /// Width of the view box.
    pub width: f64,
    /// Height of the view box.
    pub height: f64,
    /// Position of the front face.
    pub left: f64,
    /// Units per mm along the shaft.
    pub per_mm: f64,
    /// Centre line of the shaft.
    pub centre: f64,
    /// Half the height of the bar.
    pub bar_half: f64,
}

/// The diagram without a title, with its places, and with sampled parts in its chart if they are given. `canvas`: how wide it is drawn.
///
/// # Errors
/// As [`super::plan_svg`].
pub fn placed(plan: &Plan, along: Option<&Along>, canvas: Canvas) -> Result<Placed, ReportError> {
    let (drawing, layout) = svg::on_screen(plan, along, canvas)?;
    Ok(Placed {
        svg: drawing.to_string(),
        width: layout.canvas.width,
        height: layout.height,
        left: layout.axis.left,
        per_mm: layout.axis.scale,
        centre: layout.centre_y,
        bar_half: layout.bar_half,
    })
}
