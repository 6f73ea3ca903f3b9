//! What people read, from a finished [`Plan`](crate::job::plan::Plan) alone: nothing here calculates beyond layout
//! and rounding.
//!
//! | file | answers |
//! |---|---|
//! | [`numbers`] | how a number is written: the only place that rounds |
//! | [`words`] | how a key of the plan is said in words |
//! | [`verdict`] | what the first line says |
//! | [`sure`] | how sure the plan is: sampled parts, uncertain inputs |
//! | [`sure_chart`] | the uncertain inputs as bars, the longest first |
//! | [`stops`] | where the feed stops, and what that leaves |
//! | [`attention`] | what a setter should look at first |
//! | `fed_on` | bar that is fed on farther than the last stage turns, for work there |
//! | `cautions` | the cautions as they are printed: no plan is printed without |
//! | [`tables`] | the rows of every table, shared by text and sheet |
//! | [`table`] | a table in plain text, and wrapping |
//! | [`work_list`] | the works in their order, to be ticked off |
//! | [`text`] | the whole plan as text |
//! | [`short`] | the short answer as text: at most a screen |
//! | [`styled`] | text with what stands out in it |
//! | [`csv`] | the stages for a spreadsheet |
//! | `csv_row` | how a row of CSV is written |
//! | [`positions`] | coordinates and wait points of both spindles, for the programmer |
//! | [`fitted`] | stiffnesses fitted to readings, and the fragment of a machine file |
//! | [`svg`] | the diagram: drawing and chart on one axis |
//! | [`dxf`] | the staged shaft as a drawing for other programs |
//! | [`content`] | what the sheet says, block by block |
//! | [`timeline`] | rows of the cycle, the tool places and the order |
//! | [`gantt`] | both spindles in time, as a strip |
//! | [`family`] | a family of parts: a map or a curve |
//! | [`xlsx`] | the plan as a spreadsheet workbook |
//! | [`sheet`] | the sheet as one HTML page |
//! | `pdf` | the sheet as a PDF, with the feature `pdf` |
//!
//! To add an output: one file here, fed by a `&Plan`. The parts of the diagram (`axis`, `layout`, `shapes`, `labels`,
//! `drawing`, `features`, `marks`, `strips`, `chart`,
//! `curves`, `speed`) are used by [`svg`] only.

mod axis;
mod chart;
mod curves;
mod drawing;
pub mod dxf;
mod features;
pub mod gantt;
mod help;
mod labels;
mod layout;
mod legend;
mod marks;
mod page_size;
mod sampled;
mod shapes;
mod speed;
mod strips;
pub mod sure;
pub mod sure_chart;
pub mod timeline;
mod tool_uses;

pub mod attention;
mod cautions;
pub mod content;
pub mod csv;
mod csv_row;
pub mod family;
mod fed_on;
pub mod fitted;
pub mod numbers;
#[cfg(feature = "pdf")]
pub mod pdf;
pub mod placed;
pub mod positions;
pub mod sheet;
pub mod short;
pub mod stops;
pub mod styled;
pub mod svg;
pub mod table;
pub mod tables;
pub mod text;
mod thinned;
pub mod verdict;
pub mod words;
pub mod work_list;
pub mod xlsx;

pub use csv::stages_csv;
pub use dxf::plan_dxf;
pub use fitted::{fitted_text, fitted_yaml};
pub use gantt::gantt_svg;
pub use page_size::Canvas;
#[cfg(feature = "pdf")]
pub use pdf::{can_write, sheet_pdf};
pub use placed::{Placed, placed};
pub use positions::{positions_csv, positions_json};
pub use shapes::COLOURS;
pub use sheet::sheet_html;
pub use short::{check_summary, plan_summary};
pub use styled::{Styled, Tone};
pub use svg::plan_svg;
pub use text::{plan_full, plan_text};
pub use xlsx::plan_xlsx;

use crate::say;
use std::fmt;

/// Why something could not be drawn. A plan that comes from the planner never gives such an error. It means an error in
/// this program, or a plan file that was edited by hand.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub enum ReportError {
    /// A number of the plan that is drawn is not finite, or a length is not positive.
    NotDrawable {
        /// Which one.
        what: String,
    },
    /// The spreadsheet library failed.
    Workbook {
        /// Its message.
        message: String,
    },
    /// The chart library failed.
    Chart {
        /// Its message.
        message: String,
    },
    /// The PDF library failed.
    Pdf {
        /// Its message.
        message: String,
    },
}

impl fmt::Display for ReportError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            ReportError::NotDrawable { what } => f.write_str(&say!("undrawn-plan", what = what)),
            ReportError::Workbook { message } => f.write_str(&say!("undrawn-workbook", what = message)),
            ReportError::Chart { message } => f.write_str(&say!("undrawn-chart", what = message)),
            ReportError::Pdf { message } => f.write_str(&say!("undrawn-pdf", what = message)),
        }
    }
}

impl std::error::Error for ReportError {}
