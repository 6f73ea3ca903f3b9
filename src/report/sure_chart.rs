//! What each uncertain input does to the check nearest to its limit, as bars: from the share used with the input one standard deviation lower to that
//! with it one standard deviation higher, the longest bar first.

use svg::node::element::{Description, Group, SVG, Title};

use super::axis::round_ticks;
use super::page_size::Canvas;
use super::shapes::{self, INK, LIMIT, RULE, SMALL, SOFT, STEEL, TRACE, WHITE, xy};
use super::{ReportError, numbers, sure, words};
use crate::job::plan::{Plan, UncertainInput};
use crate::lang;
use crate::say;

/// Left end of the axis on a page. On a screen it begins behind the longest name.
const LEFT: f64 = 300.0;
/// Room for the value of a bar left of it.
const VALUE: f64 = 70.0;
/// Room right of the axis, on a page and on a screen.
const BEHIND: f64 = 128.0;
const BEHIND_SCREEN: f64 = 80.0;
const EDGE: f64 = 8.0;
const TOP: f64 = 28.0;
const BAR: f64 = 12.0;
const PITCH: f64 = 22.0;
/// Room below the bars for the axis.
const AXIS: f64 = 46.0;
/// Most bars.
const BARS_MAX: usize = 10;
/// Room for a tick with its number.
const TICK: f64 = 95.0;
const LINE: f64 = 14.0;

/// Where the axis is, and the size of its numbers.
struct Plot {
    left: f64,
    right: f64,
    size: f64,
}

/// The chart as an SVG element for a page. None: no input changes anything.
///
/// # Errors
/// A share is not finite. The planner makes no plan with such a share.
pub fn inline_svg(plan: &Plan, canvas: Canvas) -> Result<Option<String>, ReportError> {
    Ok(inline(plan, canvas)?.map(|(chart, _)| chart.to_string()))
}

/// The chart as an element for a page, with its height.
///
/// # Errors
/// A share is not finite. The planner makes no plan with such a share.
pub(super) fn inline(plan: &Plan, canvas: Canvas) -> Result<Option<(SVG, f64)>, ReportError> {
    let told: Vec<&UncertainInput> = sure::inputs_told(plan).take(BARS_MAX).collect();
    if told.is_empty() {
        return Ok(None);
    }
    let ends = told.iter().flat_map(|i| [i.used_low, i.used_high]);
    let (least, most) = ends.fold((1.0_f64, 1.0_f64), |(least, most), used| (least.min(used), most.max(used)));
    if !(least.is_finite() && most.is_finite()) {
        return Err(ReportError::NotDrawable { what: say!("undrawn-inputs") });
    }
    // A little room on both sides, so that the ends of the bars and their values are seen.
    let room = 0.08 * (most - least).max(0.05);
    let (from, to) = ((least - room).max(0.0), most + room);
    let names = told.iter().map(|i| shapes::text_width(sure::input(&i.input), SMALL)).fold(0.0, f64::max);
    let screen = canvas != Canvas::PAGE;
    let (left, behind) = if screen { (EDGE + names + VALUE, BEHIND_SCREEN) } else { (LEFT, BEHIND) };
    let plot = Plot { left, right: canvas.width - behind, size: canvas.text(8.5) };
    let x = |share: f64| plot.left + (plot.right - plot.left) * (share - from) / (to - from);
    let bottom = TOP + PITCH * told.len() as f64;
    let meaning = say!("inputs-meaning", check = sure::nearest(plan));
    let start = if screen { EDGE } else { LEFT };
    let lines = shapes::wrapped(&meaning, SMALL, canvas.width - EDGE - start);
    let height = bottom + AXIS + LINE * (lines.len().max(1) - 1) as f64;
    let mut root = SVG::new()
        .set("viewBox", format!("0 0 {} {}", xy(canvas.width), xy(height)))
        .set("font-family", shapes::FONT)
        .set("role", "img")
        .add(Title::new(say!("inputs-title", job = words::plain(&plan.job))))
        .add(Description::new().add(svg::node::Text::new(meaning.clone())))
        .add(shapes::rect(0.0, 0.0, canvas.width, height).set("fill", WHITE))
        .add(axis([from, to], bottom, &x, &plot));
    for (i, line) in lines.iter().enumerate() {
        let y = bottom + 30.0 + LINE * i as f64;
        root = root.add(shapes::text(start, y, SMALL, "start", line).set("fill", SOFT));
    }
    for (i, input) in told.iter().enumerate() {
        root = root.add(bar(input, TOP + PITCH * i as f64, &x, &plot));
    }
    let limit = shapes::group("limit")
        .add(shapes::line(x(1.0), TOP - 6.0, x(1.0), bottom, LIMIT, 2.0))
        .add(shapes::text(x(1.0), TOP - 10.0, SMALL, "middle", lang::text("diagram-limit")).set("fill", LIMIT));
    Ok(Some((root.add(limit), height)))
}

fn bar(input: &UncertainInput, y: f64, x: &dyn Fn(f64) -> f64, plot: &Plot) -> Group {
    let (low, high) = (x(input.used_low), x(input.used_high));
    let middle = y + BAR / 2.0 + 3.5;
    // The end of the higher value has its own colour, so that it is seen which way the input works.
    let half = 0.5 * (low + high);
    let part = |to: f64, fill: &str| {
        shapes::rect(half.min(to), y, (half - to).abs(), BAR)
            .set("fill", fill)
            .set("stroke", INK)
            .set("stroke-width", "0.5")
    };
    let [least, most] = sure::ends(input).map(|v| sure::with_unit(v, &input.unit));
    let (left, right) = if low <= high { (least, most) } else { (most, least) };
    shapes::group("input")
        .add(shapes::text(plot.left - VALUE, middle, SMALL, "end", sure::input(&input.input)))
        .add(part(low, STEEL))
        .add(part(high, TRACE))
        .add(shapes::text_on_ground(low.min(high) - 4.0, middle, plot.size, "end", &left))
        .add(shapes::text_on_ground(low.max(high) + 4.0, middle, plot.size, "start", &right))
}

fn axis([from, to]: [f64; 2], y: f64, x: &dyn Fn(f64) -> f64, plot: &Plot) -> Group {
    let mut g = shapes::group("axis").add(shapes::line(plot.left, y, plot.right, y, SOFT, 0.8));
    for share in round_ticks(from, to, ((plot.right - plot.left) / TICK).round().max(2.0)) {
        g = g.add(shapes::line(x(share), TOP - 4.0, x(share), y + 4.0, RULE, 0.6)).add(shapes::text(
            x(share),
            y + 14.0,
            plot.size,
            "middle",
            &say!("inputs-percent", percent = numbers::trimmed(100.0 * share, 1)),
        ));
    }
    g
}
