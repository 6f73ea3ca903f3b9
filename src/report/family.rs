//! A drawing of a family of parts: a map of length against diameter with the number of hand-overs, or the time over one
//! of them.
//!
//! A cell shows its number of hand-overs as a figure and by its lightness. Cells that cannot be made are hatched and
//! crossed, so nothing is shown by colour alone. As in `chart`, plotters draws larger than on the page, and a transform
//! makes it smaller; text is added in this file.

mod around;

use plotters::prelude::*;
use svg::node::element::{Description, Group, SVG, Title};

use around::{legend, x_axis, y_axis};

use super::chart::{self, chart_error, colour};
use super::shapes::{self, INK, LIMIT, RULE, SMALL, SOFT, TRACE, WHITE, xy};
use super::{ReportError, axis, numbers, words};
use crate::job::plan::estimate;
use crate::lang;
use crate::say;

/// The varied values of one axis.
#[derive(Debug, Clone, PartialEq)]
pub struct Axis {
    /// What is varied, with its unit.
    pub title: String,
    /// Ascending, evenly spaced.
    pub values_mm: Vec<f64>,
}

/// The result for a part.
#[derive(Debug, Clone, PartialEq)]
pub enum Outcome {
    /// It can be made.
    Made {
        /// Number of hand-overs.
        hand_overs: usize,
        /// Time of a part in s.
        time_s: f64,
    },
    /// There is no plan.
    NotFeasible {
        /// Name of the check or the rule that stops it. Empty: not known.
        stopped_by: String,
    },
    /// The sizes make no job: thicker than the bar, a feature off the shaft.
    NoJob,
}

/// One part.
#[derive(Debug, Clone, PartialEq)]
pub struct Cell {
    /// Its varied length.
    pub length_mm: Option<f64>,
    /// Its varied diameter.
    pub diameter_mm: Option<f64>,
    /// The result.
    pub outcome: Outcome,
}

/// What is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn {
    /// Name of the part.
    pub name: String,
    /// Name of the machine.
    pub machine: Option<String>,
    /// The lengths; none: the length does not vary.
    pub length: Option<Axis>,
    /// The diameters; none: the diameter does not vary.
    pub diameter: Option<Axis>,
    /// The parts, in any order.
    pub cells: Vec<Cell>,
}

const PAGE_WIDTH: f64 = 1120.0;
const PAGE_HEIGHT: f64 = 640.0;
const LEFT: f64 = 92.0;
const TOP: f64 = 104.0;
const WIDTH: f64 = 850.0;
const HEIGHT: f64 = 440.0;
/// Place of the plot on the page.
const PLACE: [f64; 4] = [LEFT, TOP, WIDTH, HEIGHT];
const MARGIN: f64 = 28.0;

/// Lightest and darkest cell.
const LIGHT: [f64; 3] = [240.0, 245.0, 249.0];
const DARK: [f64; 3] = [35.0, 82.0, 124.0];

/// A scale of the plot: values of one axis, or times.
struct Scale {
    from: f64,
    to: f64,
}

impl Scale {
    /// Half a step of room on both sides.
    fn of(values: &[f64]) -> Scale {
        let (first, last) = (values.first().copied().unwrap_or(0.0), values.last().copied().unwrap_or(1.0));
        let half = step(values) / 2.0;
        Scale { from: first - half, to: last + half }
    }

    fn share(&self, value: f64) -> f64 {
        (value - self.from) / (self.to - self.from)
    }

    fn x(&self, value: f64) -> f64 {
        LEFT + WIDTH * self.share(value)
    }

    fn y(&self, value: f64) -> f64 {
        TOP + HEIGHT * (1.0 - self.share(value))
    }
}

fn step(values: &[f64]) -> f64 {
    match values {
        [first, second, ..] => second - first,
        [only] => only.abs().max(1.0) / 10.0,
        [] => 1.0,
    }
}

/// The drawing as an SVG document.
///
/// # Errors
/// A number that is drawn is not finite, or the chart library fails. A family that the reader accepts has only finite
/// numbers.
pub fn family_svg(drawn: &Drawn) -> Result<String, ReportError> {
    let finite = |v: Option<f64>| v.is_none_or(f64::is_finite);
    let cells = &drawn.cells;
    let times = cells.iter().all(|c| !matches!(c.outcome, Outcome::Made { time_s, .. } if !time_s.is_finite()));
    if !times || !cells.iter().all(|c| finite(c.length_mm) && finite(c.diameter_mm)) {
        return Err(ReportError::NotDrawable { what: say!("undrawn-family") });
    }
    let body = match (&drawn.length, &drawn.diameter) {
        (Some(length), Some(diameter)) => map(drawn, length, diameter)?,
        (Some(axis), None) => curve(drawn, axis, |c| c.length_mm)?,
        (None, Some(axis)) => curve(drawn, axis, |c| c.diameter_mm)?,
        (None, None) => return Err(ReportError::NotDrawable { what: say!("undrawn-nothing-varies") }),
    };
    let root = SVG::new()
        .set("viewBox", format!("0 0 {} {}", xy(PAGE_WIDTH), xy(PAGE_HEIGHT)))
        .set("width", "297mm")
        .set("height", format!("{}mm", xy(297.0 * PAGE_HEIGHT / PAGE_WIDTH)))
        .set("font-family", shapes::FONT)
        .set("role", "img")
        .add(Title::new(say!("family-title", name = words::plain(&drawn.name))))
        .add(Description::new().add(svg::node::Text::new(summary(drawn))))
        .add(shapes::definitions())
        .add(shapes::rect(0.0, 0.0, PAGE_WIDTH, PAGE_HEIGHT).set("fill", WHITE))
        .add(title(drawn))
        .add(body);
    Ok(shapes::document(&root))
}

/// Hand-overs and time of the parts that can be made.
fn made(drawn: &Drawn) -> impl Iterator<Item = (&Cell, usize, f64)> {
    drawn.cells.iter().filter_map(|c| match c.outcome {
        Outcome::Made { hand_overs, time_s } => Some((c, hand_overs, time_s)),
        _ => None,
    })
}

fn least_and_most(drawn: &Drawn) -> Option<(usize, usize)> {
    made(drawn).map(|m| m.1).min().zip(made(drawn).map(|m| m.1).max())
}

fn summary(drawn: &Drawn) -> String {
    let (all, good) = (drawn.cells.len(), made(drawn).count());
    let mut sentences = vec![say!("family-count", good = good, all = all)];
    if let Some((least, most)) = least_and_most(drawn) {
        let fastest = numbers::seconds(made(drawn).map(|m| m.2).fold(f64::INFINITY, f64::min));
        let slowest = numbers::seconds(made(drawn).map(|m| m.2).fold(0.0, f64::max));
        let hand_overs = say!("hand-overs", number = most);
        sentences.push(if least == most {
            say!("family-same", hand_overs = hand_overs, fastest = fastest, slowest = slowest)
        } else {
            say!("family-range", least = least, hand_overs = hand_overs, fastest = fastest, slowest = slowest)
        });
        let longest = made(drawn).filter_map(|m| m.0.length_mm).fold(f64::NEG_INFINITY, f64::max);
        if longest.is_finite() {
            sentences.push(say!("family-longest", length = numbers::mm(longest)));
        }
    }
    sentences.join(" ")
}

fn title(drawn: &Drawn) -> Group {
    let room = PAGE_WIDTH - 2.0 * MARGIN;
    let machine = drawn.machine.as_ref().map_or(String::new(), |m| say!("family-machine", machine = words::plain(m)));
    let machine = shapes::fit_text(&machine, 12.0, room * 0.45);
    let name_room = room - shapes::text_width(&machine, 12.0) - 20.0;
    let name = shapes::fit_text(&words::plain(&drawn.name), 22.0, name_room);
    shapes::group("title")
        .add(shapes::text(MARGIN, 40.0, 22.0, "start", &name).set("font-weight", "bold"))
        .add(shapes::text(PAGE_WIDTH - MARGIN, 40.0, 12.0, "end", &machine))
        .add(shapes::text(MARGIN, 64.0, 12.0, "start", &summary(drawn)))
        .add(shapes::text(MARGIN, PAGE_HEIGHT - 14.0, 8.5, "start", estimate()).set("fill", SOFT))
}

/// The title of a part that can be made.
fn said_of(part: &str, hand_overs: usize, time_s: f64) -> String {
    let hand_overs = say!("hand-overs", number = hand_overs);
    say!("family-made", part = part, hand_overs = hand_overs, seconds = numbers::seconds(time_s))
}

/// The title of a part that cannot be made: what stops it.
fn not_made(part: &str, stopped_by: &str) -> String {
    if stopped_by.is_empty() {
        return say!("family-not-made", part = part);
    }
    say!("family-stopped", part = part, check = words::check_name(stopped_by))
}

/// Shade for a number of hand-overs between the least and the most, and a text colour that can be read on it.
fn shade(hand_overs: usize, least: usize, most: usize) -> (String, &'static str) {
    let share = if most > least { (hand_overs - least) as f64 / (most - least) as f64 } else { 0.0 };
    let part = |(light, dark): (f64, f64)| format!("{:02x}", (light + (dark - light) * share).round() as u8);
    let colour: String = LIGHT.into_iter().zip(DARK).map(part).collect();
    (format!("#{colour}"), if share > 0.5 { WHITE } else { INK })
}

/// Least width and height of a cell for its figure, and for its figure with the time below.
const FIGURE: (f64, f64) = (15.0, 12.0);
const WITH_TIME: (f64, f64) = (40.0, 26.0);

fn map(drawn: &Drawn, length: &Axis, diameter: &Axis) -> Result<Group, ReportError> {
    let (along, up) = (Scale::of(&length.values_mm), Scale::of(&diameter.values_mm));
    let (half_l, half_d) = (step(&length.values_mm) / 2.0, step(&diameter.values_mm) / 2.0);
    let (least, most) = least_and_most(drawn).unwrap_or((0, 0));
    let placed: Vec<(f64, f64, &Cell)> =
        drawn.cells.iter().filter_map(|c| Some((c.length_mm?, c.diameter_mm?, c))).collect();
    let plot = chart::nested(PLACE, along.from..along.to, up.from..up.to, |chart| {
        for (l, d, cell) in &placed {
            let fill = match &cell.outcome {
                Outcome::Made { hand_overs, .. } => colour(&shade(*hand_overs, least, most).0),
                _ => colour(WHITE),
            };
            let corners = [(l - half_l, d - half_d), (l + half_l, d + half_d)];
            chart.draw_series([Rectangle::new(corners, fill.filled())]).map_err(chart_error)?;
            chart.draw_series([Rectangle::new(corners, chart::pen(RULE, 0.6))]).map_err(chart_error)?;
        }
        Ok(())
    })?;
    let (wide, high) = (along.x(2.0 * half_l) - along.x(0.0), up.y(0.0) - up.y(2.0 * half_d));
    let mut cells = shapes::group("cells");
    for (l, d, cell) in &placed {
        cells = cells.add(cell_marks(along.x(*l), up.y(*d), wide, high, cell, (least, most)));
    }
    if wide < FIGURE.0 || high < FIGURE.1 {
        cells = cells.add(region_figures(&along, &up, &placed));
    }
    Ok(shapes::group("map")
        .add(plot.set("class", "plot"))
        .add(cells)
        .add(chart::frame(PLACE))
        .add(x_axis(&along, length))
        .add(y_axis(&up, &axis::round_mm_ticks(up.from, up.to, 8.0), &diameter.title, numbers::fine_mm))
        .add(legend(drawn, lang::text("family-hand-overs"))))
}

fn cell_marks(x: f64, y: f64, wide: f64, high: f64, cell: &Cell, (least, most): (usize, usize)) -> Group {
    let size = |mm: Option<f64>| numbers::fine_mm(mm.unwrap_or(0.0));
    let sizes = say!("family-sizes", length = size(cell.length_mm), diameter = size(cell.diameter_mm));
    let fits = |(w, h): (f64, f64)| wide >= w && high >= h;
    let g = Group::new();
    match &cell.outcome {
        &Outcome::Made { hand_overs, time_s } => {
            let ink = shade(hand_overs, least, most).1;
            let told = Title::new(said_of(&sizes, hand_overs, time_s));
            let mut g =
                g.add(told).add(shapes::rect(x - wide / 2.0, y - high / 2.0, wide, high).set("fill-opacity", "0"));
            if fits(WITH_TIME) {
                let time = format!("{} s", numbers::fixed(time_s, 0));
                g = g
                    .add(
                        shapes::text(x, y - 0.5, 11.0, "middle", &hand_overs.to_string())
                            .set("fill", ink)
                            .set("font-weight", "bold"),
                    )
                    .add(shapes::text(x, y + 10.5, 8.0, "middle", &time).set("fill", ink));
            } else if fits(FIGURE) {
                g = g.add(shapes::text(x, y + 3.5, SMALL, "middle", &hand_overs.to_string()).set("fill", ink));
            }
            g
        }
        Outcome::NotFeasible { stopped_by } => {
            let g = g.add(Title::new(not_made(&sizes, stopped_by))).add(hatched(
                x - wide / 2.0,
                y - high / 2.0,
                wide,
                high,
            ));
            let cross = |y: f64| shapes::text_on_ground(x, y, 12.0, "middle", "×").set("fill", LIMIT);
            if fits(WITH_TIME) && !stopped_by.is_empty() {
                let word = shapes::fit_text(&words::check_name(stopped_by), 8.0, wide - 4.0);
                g.add(cross(y - 0.5)).add(shapes::text_on_ground(x, y + 10.5, 8.0, "middle", &word).set("fill", LIMIT))
            } else if fits(FIGURE) {
                g.add(cross(y + 4.0))
            } else {
                g
            }
        }
        Outcome::NoJob => {
            let g = g.add(Title::new(say!("family-no-job", part = sizes)));
            if fits(FIGURE) { g.add(shapes::text(x, y + 3.5, SMALL, "middle", "–").set("fill", SOFT)) } else { g }
        }
    }
}

/// A word that reads upwards, above the cross of a part that cannot be made.
fn upright(x: f64, word: &str) -> svg::node::element::Text {
    let (x, y) = (x + 3.0, TOP + HEIGHT - 24.0);
    let turned = format!("rotate(-90 {} {})", xy(x), xy(y));
    shapes::text_on_ground(x, y, SMALL, "start", word).set("fill", LIMIT).set("transform", turned)
}

fn hatched(x: f64, y: f64, wide: f64, high: f64) -> svg::node::element::Rectangle {
    shapes::rect(x, y, wide, high).set("fill", shapes::pattern(shapes::HATCH)).set("fill-opacity", "0.55")
}

/// If cells are too small for figures: one figure for each result, at the cell nearest to the middle of all cells with
/// it.
fn region_figures(along: &Scale, up: &Scale, placed: &[(f64, f64, &Cell)]) -> Group {
    let mut g = shapes::group("region-figures");
    let figure = |c: &Cell| match &c.outcome {
        Outcome::Made { hand_overs, .. } => hand_overs.to_string(),
        Outcome::NotFeasible { stopped_by } => format!("× {}", words::check_name(stopped_by)).trim_end().to_string(),
        Outcome::NoJob => "–".to_string(),
    };
    let mut seen: Vec<String> = placed.iter().map(|(_, _, c)| figure(c)).collect();
    seen.sort();
    seen.dedup();
    for word in seen {
        let of: Vec<(f64, f64)> =
            placed.iter().filter(|(_, _, c)| figure(c) == word).map(|(l, d, _)| (along.x(*l), up.y(*d))).collect();
        let mean = |f: fn(&(f64, f64)) -> f64| of.iter().map(f).sum::<f64>() / of.len() as f64;
        let (mx, my) = (mean(|p| p.0), mean(|p| p.1));
        let near = of.iter().min_by(|a, b| (a.0 - mx).hypot(a.1 - my).total_cmp(&(b.0 - mx).hypot(b.1 - my)));
        if let Some((x, y)) = near {
            g = g.add(shapes::text_on_ground(*x, y + 4.0, 12.0, "middle", &word).set("font-weight", "bold"));
        }
    }
    g
}

fn curve(drawn: &Drawn, values: &Axis, of: impl Fn(&Cell) -> Option<f64>) -> Result<Group, ReportError> {
    let along = Scale::of(&values.values_mm);
    let half = step(&values.values_mm) / 2.0;
    let most_s = made(drawn).map(|m| m.2).fold(0.0, f64::max).max(1.0);
    let up = Scale { from: 0.0, to: 1.12 * most_s };
    let mut cells: Vec<(f64, &Cell)> = drawn.cells.iter().filter_map(|c| Some((of(c)?, c))).collect();
    cells.sort_by(|a, b| a.0.total_cmp(&b.0));
    // One line for each run of parts that can be made.
    let mut runs: Vec<Vec<(f64, f64)>> = vec![Vec::new()];
    for (value, cell) in &cells {
        match (&cell.outcome, runs.last_mut()) {
            (Outcome::Made { time_s, .. }, Some(run)) => run.push((*value, *time_s)),
            _ => runs.push(Vec::new()),
        }
    }
    let ticks = axis::round_ticks(0.0, up.to, 8.0);
    let plot = chart::nested(PLACE, along.from..along.to, up.from..up.to, |chart| {
        for tick in &ticks {
            let rule = vec![(along.from, *tick), (along.to, *tick)];
            let rule = PathElement::new(rule, chart::pen(RULE, 0.6));
            chart.draw_series([rule]).map_err(chart_error)?;
        }
        for run in runs.iter().filter(|r| r.len() > 1) {
            let line = LineSeries::new(run.iter().copied(), chart::pen(TRACE, 1.8));
            chart.draw_series(line).map_err(chart_error)?;
        }
        Ok(())
    })?;
    let wide = along.x(2.0 * half) - along.x(0.0);
    let mut marks = shapes::group("parts");
    let mut said: Option<usize> = None;
    let mut stopped: Option<&str> = None;
    let mut room_from = f64::NEG_INFINITY;
    for (value, cell) in &cells {
        let x = along.x(*value);
        let at = say!("family-size", size = numbers::fine_mm(*value));
        match &cell.outcome {
            &Outcome::Made { hand_overs, time_s } => {
                let y = up.y(time_s);
                stopped = None;
                let told = Title::new(said_of(&at, hand_overs, time_s));
                let dot = shapes::circle(x, y, 2.6).set("fill", WHITE).set("stroke", TRACE).set("stroke-width", "1.4");
                marks = marks.add(Group::new().add(told).add(dot));
                if said != Some(hand_overs) && x > room_from {
                    marks = marks.add(
                        shapes::text_on_ground(x, y - 9.0, 12.0, "middle", &hand_overs.to_string())
                            .set("font-weight", "bold"),
                    );
                    said = Some(hand_overs);
                    room_from = x + 12.0;
                }
            }
            Outcome::NotFeasible { stopped_by } => {
                let told = Title::new(not_made(&at, stopped_by));
                let cross = shapes::text_on_ground(x, TOP + HEIGHT - 8.0, 12.0, "middle", "×").set("fill", LIMIT);
                let mut mark = Group::new().add(told).add(hatched(x - wide / 2.0, TOP, wide, HEIGHT)).add(cross);
                // What stops the first of neighbours that the same check stops, upright in its stripe.
                if stopped != Some(stopped_by.as_str()) {
                    mark = mark.add(upright(x, &words::check_name(stopped_by)));
                    stopped = Some(stopped_by);
                }
                marks = marks.add(mark);
                said = None;
            }
            Outcome::NoJob => {
                let told = Title::new(say!("family-no-job", part = at));
                let dash = shapes::text(x, TOP + HEIGHT - 8.0, 12.0, "middle", "–").set("fill", SOFT);
                marks = marks.add(Group::new().add(told).add(dash));
                (said, stopped) = (None, None);
            }
        }
    }
    Ok(shapes::group("curve")
        .add(plot.set("class", "plot"))
        .add(marks)
        .add(chart::frame(PLACE))
        .add(x_axis(&along, values))
        .add(y_axis(&up, &ticks, lang::text("family-time-axis"), |s| numbers::trimmed(s, 1)))
        .add(legend(drawn, lang::text("family-number-on-line"))))
}
