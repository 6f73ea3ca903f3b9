//! The two spindles in time, as a strip: from the start of one part to the start of the next.
//!
//! The upper lane is the headstock side, the lower lane the counter-spindle. While the counter-spindle holds the part
//! that is turned, its lane has a hatched band. A bold line under a bar says that the bar is on the critical path.
//! Every bar has its text as a title.

use svg::node::element::{Description, Group, SVG, Title};

use super::axis::round_ticks;
use super::layout::ROW;
use super::page_size::Canvas;
use super::shapes::{self, BUSH, GRIP, HEAD, INK, LIMIT, RAW, RULE, SMALL, SOFT, STEEL, WHITE, xy};
use super::{ReportError, numbers, words};
use crate::job::plan::{Cycle, Operation, Plan};
use crate::lang;
use crate::say;

/// Height of the strip if its legend takes one row, as on a page.
pub(super) const HEIGHT: f64 = 172.0;
const LEFT: f64 = 120.0;
/// Room right of the axis.
const BEHIND: f64 = 28.0;
const TOP: f64 = 30.0;
/// Height of a lane, and from one to the next.
const LANE: f64 = 34.0;
const PITCH: f64 = 46.0;
/// Text of the head, and from one line of it to the next.
const HEAD_TEXT: f64 = 11.0;
const LINE: f64 = 15.0;
const EDGE: f64 = 8.0;
/// Room for a tick with its number.
const TICK: f64 = 86.0;
/// A bar narrower than this has no text in it.
const WORDS_FROM: f64 = 22.0;

/// The strip as an SVG document. None: the plan has no timeline.
///
/// # Errors
/// A time is not finite. The planner makes no plan with such a time.
pub fn gantt_svg(plan: &Plan) -> Result<Option<String>, ReportError> {
    let strip = inline(plan, Canvas::PAGE)?;
    Ok(strip.map(|svg| shapes::document(&svg)))
}

/// The strip as an SVG element for a page.
///
/// # Errors
/// As [`gantt_svg`].
pub fn inline_svg(plan: &Plan, canvas: Canvas) -> Result<Option<String>, ReportError> {
    Ok(inline(plan, canvas)?.map(|svg| svg.to_string()))
}

/// The strip as an element for a page.
///
/// # Errors
/// As [`gantt_svg`].
pub(super) fn inline(plan: &Plan, canvas: Canvas) -> Result<Option<SVG>, ReportError> {
    let Some(cycle) = plan.cycle.as_ref().filter(|c| !c.operations.is_empty()) else { return Ok(None) };
    let end_s = cycle.operations.iter().map(|o| o.to_s).fold(0.0, f64::max);
    let finite = end_s > 0.0 && cycle.operations.iter().all(|o| o.from_s.is_finite() && o.to_s.is_finite());
    if !finite {
        return Err(ReportError::NotDrawable { what: say!("undrawn-time") });
    }
    let right = canvas.width - BEHIND;
    let x = |s: f64| LEFT + (right - LEFT) * s / end_s;
    let (legend, height) = legend(canvas);
    // Where the head takes more than one line, it begins at the edge, and the rest stands lower.
    let head = shapes::wrapped(&told(cycle), HEAD_TEXT, right - LEFT);
    let (head, start) = if head.len() == 1 {
        (head, LEFT)
    } else {
        (shapes::wrapped(&told(cycle), HEAD_TEXT, canvas.width - 2.0 * EDGE), EDGE)
    };
    let lower = LINE * (head.len().max(1) - 1) as f64;
    let mut root = SVG::new()
        .set("viewBox", format!("0 {} {} {}", xy(0.0 - lower), xy(canvas.width), xy(height + lower)))
        .set("font-family", shapes::FONT)
        .set("role", "img")
        .add(Title::new(say!("gantt-title", job = words::plain(&plan.job))))
        .add(Description::new().add(svg::node::Text::new(told(cycle))))
        .add(shapes::rect(0.0, 0.0 - lower, canvas.width, height + lower).set("fill", WHITE));
    for (i, line) in head.iter().enumerate() {
        root = root.add(shapes::text(start, 16.0 - lower + LINE * i as f64, HEAD_TEXT, "start", line));
    }
    for (lane, name) in [lang::text("gantt-headstock"), lang::text("gantt-counter-spindle")].into_iter().enumerate() {
        let y = TOP + lane as f64 * PITCH;
        root = root.add(shapes::text(LEFT - 8.0, y + LANE / 2.0 + 3.5, SMALL, "end", name)).add(shapes::line(
            LEFT,
            y + LANE,
            right,
            y + LANE,
            RULE,
            0.8,
        ));
    }
    for (from_s, to_s) in held(cycle) {
        root = root.add(band(x(from_s), x(to_s), TOP + PITCH));
    }
    let mut bars = shapes::group("bars");
    for operation in &cycle.operations {
        let lane = if operation.side == "counter_spindle" { 1.0 } else { 0.0 };
        bars = bars.add(bar(operation, x(operation.from_s), x(operation.to_s), TOP + lane * PITCH, canvas.text(8.0)));
    }
    Ok(Some(root.add(bars).add(axis(end_s, &x, canvas)).add(legend)))
}

/// The strip in one line of text.
fn told(cycle: &Cycle) -> String {
    let mut parts = vec![say!("gantt-cycle", seconds = numbers::seconds(cycle.steady_s))];
    if cycle.hidden_s > 0.05 {
        parts.push(say!("gantt-hidden", seconds = numbers::seconds(cycle.hidden_s)));
    }
    if cycle.wait_s > 0.05 {
        parts.push(say!("gantt-wait", seconds = numbers::seconds(cycle.wait_s)));
    }
    parts.join("; ")
}

/// Stretches in which the counter-spindle holds the part that is turned.
fn held(cycle: &Cycle) -> Vec<(f64, f64)> {
    let mut all: Vec<(f64, f64)> = Vec::new();
    for o in cycle.operations.iter().filter(|o| o.side == "both") {
        match all.last_mut() {
            Some(last) if o.from_s - last.1 < 1e-6 => last.1 = o.to_s,
            _ => all.push((o.from_s, o.to_s)),
        }
    }
    all
}

fn band(x1: f64, x2: f64, y: f64) -> Group {
    let mut g = shapes::group("holds").add(
        shapes::rect(x1, y + 8.0, x2 - x1, LANE - 16.0)
            .set("fill", WHITE)
            .set("stroke", SOFT)
            .set("stroke-width", "0.6"),
    );
    let mut at = x1 + 6.0;
    while at < x2 - 1.0 {
        g = g.add(shapes::line(at, y + 8.0, at - 5.0, y + LANE - 8.0, RULE, 0.8));
        at += 9.0;
    }
    if x2 - x1 > 90.0 {
        g = g.add(shapes::text_on_ground(
            (x1 + x2) / 2.0,
            y + LANE / 2.0 + 3.5,
            SMALL,
            "middle",
            lang::text("gantt-holds"),
        ));
    }
    g
}

/// Fill of a bar, and the colour of text in it.
fn look(work: &str) -> (&'static str, &'static str) {
    match work {
        "turn" | "plunge" | "thread" | "whirl" => (STEEL, INK),
        "feature" => (RAW, INK),
        "hand_over" | "centre" => (GRIP, WHITE),
        "regrip" => (HEAD, WHITE),
        "part_off" => (LIMIT, WHITE),
        "back_work" | "unload" => (BUSH, WHITE),
        _ => (WHITE, INK),
    }
}

fn bar(o: &Operation, x1: f64, x2: f64, y: f64, size: f64) -> Group {
    let (fill, ink) = look(&o.work);
    let seconds = numbers::seconds(o.to_s - o.from_s);
    let name = words::plain(&o.text);
    let mut g = shapes::group("bar")
        .add(Title::new(say!("gantt-bar", work = words::key(&o.work), name = name, seconds = seconds)))
        .add(shapes::rect(x1, y, x2 - x1, LANE).set("fill", fill).set("stroke", INK).set("stroke-width", "0.5"));
    let room = x2 - x1 - 4.0;
    if room > WORDS_FROM {
        let middle = (x1 + x2) / 2.0;
        let word = |y: f64, content: &str| {
            shapes::text(middle, y, size, "middle", &shapes::fit_text(content, size, room)).set("fill", ink)
        };
        g = g.add(word(y + 14.0, &name)).add(word(y + 26.0, &seconds));
    }
    if o.critical {
        g = g.add(shapes::line(x1, y + LANE + 2.5, x2, y + LANE + 2.5, INK, 3.0));
    }
    g
}

fn axis(end_s: f64, x: &dyn Fn(f64) -> f64, canvas: Canvas) -> Group {
    let y = TOP + PITCH + LANE + 8.0;
    let (right, size) = (canvas.width - BEHIND, canvas.text(8.0));
    let mut g = shapes::group("axis").add(shapes::line(LEFT, y, right, y, SOFT, 0.8));
    for s in round_ticks(0.0, end_s, ((right - LEFT) / TICK).round()) {
        g = g.add(shapes::line(x(s), y, x(s), y + 4.0, SOFT, 0.8)).add(shapes::text(
            x(s),
            y + 14.0,
            size,
            "middle",
            &numbers::trimmed(s, 2),
        ));
    }
    g.add(shapes::text(right + 4.0, y + 14.0, size, "start", "s"))
}

/// What the fills mean, and the height of the strip with as many rows as that takes.
fn legend(canvas: Canvas) -> (Group, f64) {
    let size = canvas.text(8.5);
    let mut y = HEIGHT - 16.0;
    let kinds = [
        ("turn", lang::text("gantt-turning")),
        ("feature", lang::text("gantt-other-work")),
        ("tool_change", lang::text("gantt-tool-change")),
        ("hand_over", lang::text("gantt-hand-over")),
        ("regrip", lang::text("gantt-regrip")),
        ("part_off", lang::text("gantt-part-off")),
        ("back_work", lang::text("gantt-back-work")),
    ];
    let mut g = shapes::group("legend");
    let mut at = LEFT;
    let mut place = |room: f64| {
        if at + room > canvas.width - BEHIND && at > LEFT {
            (at, y) = (LEFT, y + ROW);
        }
        let placed = (at, y);
        at += room;
        placed
    };
    for (work, name) in kinds {
        let (at, y) = place(26.0 + shapes::text_width(name, size));
        g = g
            .add(
                shapes::rect(at, y - 8.0, 12.0, 9.0)
                    .set("fill", look(work).0)
                    .set("stroke", INK)
                    .set("stroke-width", "0.5"),
            )
            .add(shapes::text(at + 16.0, y, size, "start", name));
    }
    let critical = lang::text("gantt-critical");
    let (at, y) = place(18.0 + shapes::text_width(critical, size));
    let line = shapes::line(at, y - 3.0, at + 14.0, y - 3.0, INK, 3.0);
    (g.add(line).add(shapes::text(at + 18.0, y, size, "start", critical)), y + 16.0)
}
