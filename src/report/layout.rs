//! The places of the panels in the diagram, from top to bottom. Each panel is as high as its content needs.
//!
//! The unit is a quarter of a millimetre of an A4 page.

use super::axis::{Axis, FIGURES, axis};
use super::labels::{self, Labels};
use super::page_size::{Canvas, MARGIN, PAGE_HEIGHT, Use};
use super::{ReportError, legend, numbers, stops};
use crate::job::plan::{GripPlace, Plan, Stage};
use crate::lang;
use crate::say;

/// Half the height that the bar may take on a page with many stages, and what it gains for each stage fewer.
const PROFILE_HALF: f64 = 54.0;
const PROFILE_PER_STAGE: f64 = 6.0;
const STAGES_FOR_SMALLEST: usize = 8;
const PROFILE_HALF_MAX: f64 = 84.0;
/// The same on the first page of a sheet.
const PROFILE_HALF_SETTING: f64 = 50.0;

/// The radial exaggerations that are used.
const EXAGGERATIONS: [f64; 18] =
    [1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 100.0];

/// Height of the two strips of a stage: at most on a page, at most in a sheet, at least. Lower strips cannot be read.
/// If there is no room for them, they are left out, because the table of places says the same.
const STRIP_PAIR_MAX: f64 = 46.0;
const STRIP_PAIR_INLINE: f64 = 32.0;
const STRIP_PAIR_MIN: f64 = 17.0;

/// Caption over the strips.
const STRIPS_CAPTION: f64 = 20.0;
/// Space between strips and chart.
const BELOW_STRIPS: f64 = 10.0;

/// Heights of the charts of utilisation: at least on a page, in a sheet, at most.
const CHART_MIN: f64 = 128.0;
const CHART_INLINE: f64 = 126.0;
const CHART_MAX: f64 = 300.0;
/// Height of the chart of speed, and the space over it.
pub const SPEED: f64 = 40.0;
const OVER_SPEED: f64 = 8.0;

/// Height that a sheet has for the diagram on its first page.
const INLINE_HEIGHT: f64 = 640.0;

/// Height of a row of numbers in place of labels.
const NUMBERS: f64 = 11.0;

/// Height of a row of labels, of a lane of grips, of a row of flags.
pub const ROW: f64 = 15.0;
/// Height of the band under the chart.
pub const BAND: f64 = 15.0;
/// Most rows of section labels, feature labels, flags, and most lanes of grips.
const LABEL_ROWS: usize = 4;
const FEATURE_ROWS: usize = 2;
const FLAG_ROWS: usize = 2;
const FLAG_ROWS_SETTING: usize = 4;
const LENGTH_ROWS: usize = 3;
const GRIP_LANES: usize = 3;

/// Height of the ticks and the axis title under the last chart, without and with a footer.
const AXIS: f64 = 38.0;
const AXIS_AND_FOOTER: f64 = 62.0;

/// The panels.
#[derive(Debug, Clone, PartialEq)]
pub struct Layout {
    /// What it is for.
    pub of: Use,
    /// How wide it is, and its smallest text.
    pub canvas: Canvas,
    /// Height of the whole.
    pub height: f64,
    /// The one horizontal axis.
    pub axis: Axis,
    /// How much larger radial distances are drawn than axial ones.
    pub exaggeration: f64,
    /// Base line of the first row of the legend.
    pub legend_y: f64,
    /// Labels of the sections and the bottom of their lowest row.
    pub section_labels: Labels,
    pub labels_bottom: f64,
    /// Centre line of the profile.
    pub centre_y: f64,
    /// Half the height of the bar, and of the largest thing drawn.
    pub bar_half: f64,
    /// Top of the flags, and the row of each stop.
    pub flags_y: f64,
    pub flag_rows: Vec<Option<usize>>,
    /// Top of the lanes of the grips, and the lane of each stage.
    pub grips_y: f64,
    pub grip_lanes: Vec<Option<usize>>,
    /// Labels of the features and the top of their highest row.
    pub feature_labels: Labels,
    pub features_y: f64,
    /// The chain of lengths: its line, and the lengths under it. None: the lengths are not drawn.
    pub lengths: Option<(f64, Labels)>,
    /// Top of the strips and the height of the pair of each stage; none: there are too many stages, or no stage.
    pub strips: Option<(f64, f64)>,
    /// What the legend explains, with the place of each entry.
    pub legend: Vec<legend::Entry>,
    /// The charts; none: the plan has no values along the turned length.
    pub charts: Option<Charts>,
    /// Upper end of the ticks of the common axis.
    pub axis_y: f64,
}

/// Where the charts stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Charts {
    /// Top of the chart of utilisation.
    pub y: f64,
    /// Its height.
    pub height: f64,
    /// Top of the band that names the governing check.
    pub band_y: f64,
    /// Top of the chart of speed.
    pub speed_y: f64,
}

impl Layout {
    /// The diagram on an A4 page.
    ///
    /// # Errors
    /// [`ReportError::NotDrawable`] if a number to draw is not finite, or a length or diameter is not positive.
    pub fn page(plan: &Plan) -> Result<Layout, ReportError> {
        Layout::new(plan, Use::Page, Canvas::PAGE)
    }

    /// The diagram in a sheet: without a title, and lower.
    ///
    /// # Errors
    /// As [`Layout::page`].
    pub fn inline(plan: &Plan) -> Result<Layout, ReportError> {
        Layout::new(plan, Use::Inline, Canvas::PAGE)
    }

    /// The drawing on the first page of a sheet.
    ///
    /// # Errors
    /// As [`Layout::page`].
    pub fn setting(plan: &Plan) -> Result<Layout, ReportError> {
        Layout::new(plan, Use::Setting, Canvas::PAGE)
    }

    /// The diagram on a screen.
    ///
    /// # Errors
    /// As [`Layout::page`].
    pub fn screen(plan: &Plan, canvas: Canvas) -> Result<Layout, ReportError> {
        Layout::new(plan, Use::Screen, canvas)
    }

    fn new(plan: &Plan, of: Use, canvas: Canvas) -> Result<Layout, ReportError> {
        check_drawable(plan)?;
        let (titled, setting, screen) = (of == Use::Page, of == Use::Setting, of == Use::Screen);
        let n = plan.stages.len();
        let spare = STAGES_FOR_SMALLEST.saturating_sub(n) as f64 * PROFILE_PER_STAGE;
        let profile_half = match of {
            Use::Page => (PROFILE_HALF + spare).min(PROFILE_HALF_MAX),
            Use::Inline | Use::Screen => PROFILE_HALF,
            Use::Setting => PROFILE_HALF_SETTING,
        };
        let diameter_mm = largest_mm(plan);
        let axis = axis(plan, diameter_mm, profile_half, canvas.width - if setting { MARGIN } else { FIGURES });
        if !(axis.max_mm.is_finite() && axis.scale > 0.0 && axis.scale.is_finite()) {
            return Err(ReportError::NotDrawable { what: say!("undrawn-beyond") });
        }
        let room = 2.0 * profile_half / (diameter_mm * axis.scale) * (1.0 + 1e-9);
        let exaggeration = EXAGGERATIONS.iter().copied().rev().find(|e| *e <= room).unwrap_or(room);
        let bar_half = plan.shaft.stock_diameter_mm / 2.0 * axis.scale * exaggeration;
        let half = diameter_mm / 2.0 * axis.scale * exaggeration;

        let section_labels = labels::sections(plan, &axis, LABEL_ROWS, canvas.text(labels::NUMBER));
        let feature_labels = labels::features(plan, &axis, FEATURE_ROWS);
        let flag_rows =
            labels::lanes(&flag_places(plan, &axis, of), if setting { FLAG_ROWS_SETTING } else { FLAG_ROWS });
        let grip_lanes = labels::lanes(&grip_places(plan, &axis, of), GRIP_LANES);
        let rows = |n: usize| n as f64 * ROW;

        let (mut legend, legend_rows) = legend::entries(plan, of, canvas.width);
        let legend_y = if titled { 112.0 } else { 14.0 };
        let labels_bottom = legend_y + rows(legend_rows - 1) + 14.0 + rows(section_labels.rows());
        let numbers = if section_labels.numbers.is_empty() { 0.0 } else { NUMBERS };
        let centre_y = labels_bottom + numbers + 14.0 + half;
        let flags_y = centre_y + half + 14.0;
        let grips_y = flags_y + rows(used(&flag_rows)) + 2.0;
        let features_y = grips_y + rows(used(&grip_lanes));
        let mut y = features_y + rows(feature_labels.rows()) + 8.0;
        let lengths = setting.then(|| (y, labels::lengths(plan, &axis, LENGTH_ROWS)));
        y += lengths.as_ref().map_or(0.0, |(_, lengths)| rows(lengths.rows()) + 4.0);

        let charted = !plan.trace.is_empty() && !setting;
        let under_charts = BAND + OVER_SPEED + SPEED;
        let least = if charted { under_charts + if titled { CHART_MIN } else { CHART_INLINE } } else { 0.0 };
        let (whole, below) = if titled { (PAGE_HEIGHT, AXIS_AND_FOOTER) } else { (INLINE_HEIGHT, AXIS) };
        // A screen has no end below.
        let whole = if screen { f64::INFINITY } else { whole };
        let room = whole - below - least - y - STRIPS_CAPTION - BELOW_STRIPS;
        let pair = (room / n.max(1) as f64).min(if titled { STRIP_PAIR_MAX } else { STRIP_PAIR_INLINE });
        let strips = (n > 0 && pair >= STRIP_PAIR_MIN && !setting).then_some((y + STRIPS_CAPTION, pair));
        y = strips.map_or(y + BELOW_STRIPS, |(top, pair)| top + pair * n as f64 + BELOW_STRIPS);
        if strips.is_none() {
            legend.retain(|e| !e.is_of_strips());
        }
        let charts = charted.then(|| {
            let left_over = whole - below - under_charts - y;
            let height = if titled { left_over.clamp(CHART_MIN, CHART_MAX) } else { CHART_INLINE };
            let band_y = y + height;
            Charts { y, height, band_y, speed_y: band_y + BAND + OVER_SPEED }
        });
        let axis_y = charts.map_or(y, |c| c.speed_y + SPEED);
        let height = match of {
            Use::Page => PAGE_HEIGHT.max(axis_y + AXIS_AND_FOOTER),
            // Below the axis there is a line for what was left out.
            Use::Screen => axis_y + AXIS + ROW,
            Use::Inline | Use::Setting => axis_y + AXIS,
        };
        Ok(Layout {
            of,
            canvas,
            height,
            axis,
            exaggeration,
            legend_y,
            section_labels,
            labels_bottom,
            centre_y,
            bar_half,
            flags_y,
            flag_rows,
            grips_y,
            grip_lanes,
            feature_labels,
            features_y,
            lengths,
            strips,
            legend,
            charts,
            axis_y,
        })
    }

    /// Half the height at which a diameter is drawn.
    pub fn half(&self, diameter_mm: f64) -> f64 {
        diameter_mm / 2.0 * self.axis.scale * self.exaggeration
    }
}

/// Rows used.
fn used(rows: &[Option<usize>]) -> usize {
    rows.iter().flatten().max().map_or(0, |highest| highest + 1)
}

/// Left and right end of the flag of each stop. None: the stop has no flag.
fn flag_places(plan: &Plan, axis: &Axis, of: Use) -> Vec<Option<(f64, f64)>> {
    let place = |s: &stops::Stop| {
        let half = labels::flag_width(&flag_text(s, of)) / 2.0 + 1.5;
        let x = axis.x_clamped(s.turned_mm);
        (of == Use::Setting || s.opens()).then_some((x - half, x + half))
    };
    stops::stops(plan).iter().map(place).collect()
}

/// What stands in the flag of a stop: its mark, for the setter with its turned length.
pub fn flag_text(stop: &stops::Stop, of: Use) -> String {
    match of {
        Use::Setting => format!("{} {}", stop.mark(), numbers::stop_mm(stop.turned_mm)),
        _ => stop.mark(),
    }
}

/// Left and right end of the lane of each stage's grip, with its text. None: the stage has no grip.
fn grip_places(plan: &Plan, axis: &Axis, of: Use) -> Vec<Option<(f64, f64)>> {
    let place = |s: &Stage| {
        let text = s.grip.as_ref().map(|grip| (grip, labels::flag_width(&grip_text(s, grip, of))));
        text.map(|(grip, width)| (axis.x_clamped(grip.from_mm), axis.x_clamped(grip.to_mm) + width))
    };
    plan.stages.iter().map(place).collect()
}

/// What stands behind the lane of a grip: the number of the stage, for the setter with what is held.
pub fn grip_text(stage: &Stage, grip: &GripPlace, of: Use) -> String {
    match of {
        Use::Setting => {
            let (from, to) = (numbers::mm(grip.from_mm), numbers::mm(grip.to_mm));
            format!("{}: {from}–{to}", stage.number)
        }
        _ => stage.number.to_string(),
    }
}

/// Largest diameter drawn: that of the bar, or of a section that is wrongly larger than the bar.
fn largest_mm(plan: &Plan) -> f64 {
    plan.shaft
        .sections
        .iter()
        .flat_map(|s| [s.front_diameter_mm, s.rear_diameter_mm])
        .fold(plan.shaft.stock_diameter_mm, f64::max)
}

/// Makes sure that every number to draw is finite, and that lengths and diameters that scale the drawing are positive.
fn check_drawable(plan: &Plan) -> Result<(), ReportError> {
    let wrong = |what: &str| Err(ReportError::NotDrawable { what: what.to_string() });
    let finite = |values: &[f64]| values.iter().all(|v| v.is_finite());
    if !(plan.length_mm.is_finite() && plan.length_mm > 0.0) {
        return wrong(lang::text("undrawn-length"));
    }
    let d = plan.shaft.stock_diameter_mm;
    if !(d.is_finite() && d > 0.0) {
        return wrong(lang::text("undrawn-bar"));
    }
    let sections = plan.shaft.sections.iter().all(|s| {
        finite(&[s.from_mm, s.to_mm, s.front_diameter_mm, s.rear_diameter_mm, s.inner_diameter_mm.unwrap_or(0.0)])
    });
    if !sections {
        return wrong(lang::text("undrawn-section"));
    }
    let features = plan.shaft.features.iter().all(|f| finite(&[f.from_mm, f.to_mm, f.size_mm]));
    if !features {
        return wrong(lang::text("undrawn-feature"));
    }
    let stages = plan.stages.iter().all(|s| {
        let grip = s.grip.as_ref().is_none_or(|g| finite(&[g.from_mm, g.to_mm, g.nose_mm]));
        grip && finite(&[s.from_mm, s.to_mm, s.headstock_start_mm, s.headstock_end_mm, s.unsupported_max_mm])
    });
    if !stages {
        return wrong(lang::text("undrawn-stage"));
    }
    let l = &plan.layout;
    if !finite(&[l.gap_mm, l.part_off_width_mm, l.bush_land_mm.unwrap_or(0.0), l.headstock_hold_mm]) {
        return wrong(lang::text("undrawn-machine"));
    }
    if !(finite(&plan.hand_overs_mm) && finite(&plan.headstock_regrips_mm)) {
        return wrong(lang::text("undrawn-stop"));
    }
    let checks = plan.stages.iter().flat_map(|s| &s.checks).all(|c| finite(&[c.turned_mm, c.utilisation]));
    let shares = |p: &crate::job::plan::TracePoint| p.all.iter().all(|(_, share)| share.is_finite());
    if !(checks && plan.trace.iter().all(|p| finite(&[p.turned_mm, p.utilisation, p.rpm]) && shares(p))) {
        return wrong(lang::text("undrawn-check"));
    }
    Ok(())
}
