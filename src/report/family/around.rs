//! What stands around the plot of a family: both axes and the legend.

use svg::node::element::Group;

use super::{Axis, Drawn, HEIGHT, LEFT, Outcome, PAGE_WIDTH, Scale, TOP, WIDTH, hatched, least_and_most, shade};
use crate::lang;
use crate::report::shapes::{self, INK, LIMIT, SMALL, SOFT, WHITE};
use crate::report::{axis, numbers, words};
use crate::say;

pub(super) fn x_axis(along: &Scale, values: &Axis) -> Group {
    let bottom = TOP + HEIGHT;
    let mut g = shapes::group("x-axis");
    for tick in axis::round_mm_ticks(along.from, along.to, 12.0) {
        let x = along.x(tick);
        g = g.add(shapes::line(x, bottom, x, bottom + 5.0, INK, 0.9)).add(shapes::text(
            x,
            bottom + 16.0,
            SMALL,
            "middle",
            &numbers::fine_mm(tick),
        ));
    }
    let title = shapes::fit_text(&words::plain(&values.title), 11.0, WIDTH);
    g.add(shapes::text(LEFT + WIDTH / 2.0, bottom + 36.0, 11.0, "middle", &title))
}

pub(super) fn y_axis(up: &Scale, ticks: &[f64], title: &str, told: fn(f64) -> String) -> Group {
    let mut g = shapes::group("y-axis");
    for tick in ticks {
        let y = up.y(*tick);
        g = g.add(shapes::line(LEFT - 5.0, y, LEFT, y, INK, 0.9)).add(shapes::text(
            LEFT - 8.0,
            y + 3.5,
            SMALL,
            "end",
            &told(*tick),
        ));
    }
    let title = shapes::fit_text(&words::plain(title), 11.0, PAGE_WIDTH / 2.0);
    g.add(shapes::text(LEFT, TOP - 10.0, 11.0, "start", &title))
}

pub(super) fn legend(drawn: &Drawn, figures: &str) -> Group {
    let x = LEFT + WIDTH + 20.0;
    let mut y = TOP + 6.0;
    let mut g = shapes::group("legend").add(shapes::text(x, y, 11.0, "start", figures).set("font-weight", "bold"));
    let is_map = drawn.length.is_some() && drawn.diameter.is_some();
    let row = |y: f64, words: &str| shapes::text(x + 34.0, y + 11.0, SMALL, "start", words);
    let boxed = |y: f64| shapes::rect(x, y, 26.0, 15.0).set("stroke", SOFT).set("stroke-width", "0.6");
    if let (true, Some((least, most))) = (is_map, least_and_most(drawn)) {
        // More than about a dozen rows would not fit on the page.
        let every = (most - least) / 12 + 1;
        for n in (least..=most).step_by(every) {
            y += 20.0;
            let (fill, ink) = shade(n, least, most);
            g = g
                .add(boxed(y).set("fill", fill))
                .add(shapes::text(x + 13.0, y + 11.0, SMALL, "middle", &n.to_string()).set("fill", ink))
                .add(row(y, &say!("family-hand-overs-word", number = n)));
        }
        y += 32.0;
        g = g.add(shapes::text(x, y, SMALL, "start", lang::text("family-time-below")).set("fill", SOFT));
    } else {
        y += 18.0;
        g = g.add(shapes::text(x, y, SMALL, "start", lang::text("family-from-here")));
    }
    if drawn.cells.iter().any(|c| matches!(c.outcome, Outcome::NotFeasible { .. })) {
        y += 12.0;
        g = g
            .add(boxed(y).set("fill", WHITE))
            .add(hatched(x, y, 26.0, 15.0))
            .add(shapes::text_on_ground(x + 13.0, y + 12.0, 12.0, "middle", "×").set("fill", LIMIT))
            .add(row(y, lang::text("family-cannot")));
        y += 12.0;
    }
    if drawn.cells.iter().any(|c| c.outcome == Outcome::NoJob) {
        y += 12.0;
        g = g
            .add(boxed(y).set("fill", WHITE))
            .add(shapes::text(x + 13.0, y + 11.0, SMALL, "middle", "–").set("fill", SOFT))
            .add(row(y, lang::text("family-invalid")));
    }
    g
}
