//! Where the feed stops, what happens there, and what it leaves on the shaft.

use super::words;
use crate::job::plan::{AtStop, Plan, SectionOutline, Segment};
use crate::lang;
use crate::say;

/// Two stops nearer than this are one: it is far below what a slide can position, and far above rounding in a plan
/// file.
pub(super) const SAME_PLACE_MM: f64 = 1e-3;

/// The mark of a stop for work at which no collet opens.
pub(super) const WORK: &str = "F";

/// One stop.
#[derive(Debug, Clone, PartialEq)]
pub struct Stop {
    /// Turned length, which is also where the tool leaves its line, mm.
    pub turned_mm: f64,
    /// Number of the hand-over here, from 1.
    pub hand_over: Option<usize>,
    /// Number of the headstock re-grip here, from 1.
    pub regrip: Option<usize>,
    /// Features cut here.
    pub features: Vec<String>,
    /// What is done here, in its order.
    pub order: Vec<AtStop>,
    /// The surface at this place.
    pub surface: String,
    /// What it leaves on the shaft.
    pub leaves: Leaves,
}

/// What a stop leaves.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Leaves {
    /// Nothing to see: the stop is at a shoulder.
    NothingAtShoulder,
    /// Nothing to see: the stop is at an end face.
    NothingAtEnd,
    /// Nothing to see: the tool stands behind the part.
    NothingBehind,
    /// Nothing to see: the stop is in a groove.
    NothingInGroove,
    /// A witness line on a surface marked so (`never`, `avoid`, `free`).
    Line(String),
}

impl Stop {
    /// Whether a collet opens here.
    pub fn opens(&self) -> bool {
        self.hand_over.is_some() || self.regrip.is_some()
    }

    /// `H1`, `R2`, `H1+R2`, `F`: the letters of the diagram.
    pub fn mark(&self) -> String {
        match (self.hand_over, self.regrip) {
            (Some(h), Some(r)) => format!("H{h}+R{r}"),
            (Some(h), None) => format!("H{h}"),
            (None, Some(r)) => format!("R{r}"),
            (None, None) => WORK.to_string(),
        }
    }

    /// What happens, in its order: features, `hand-over`, `headstock re-grip`, `hand-over + re-grip (shared)`.
    pub fn what(&self) -> String {
        let opened = match (self.hand_over, self.regrip) {
            (Some(_), Some(_)) if self.order.contains(&AtStop::RegripBefore) => {
                lang::text("stop-regrip-then-hand-over")
            }
            (Some(_), Some(_)) => lang::text("stop-hand-over-then-regrip"),
            (Some(_), None) => lang::text("stop-hand-over"),
            _ => lang::text("stop-regrip"),
        };
        let said = |what: &AtStop| if *what == AtStop::Work { self.features.join(", ") } else { opened.to_string() };
        let mut parts: Vec<String> = self.order.iter().map(said).collect();
        parts.dedup();
        parts.into_iter().reduce(|first, second| say!("stop-then", first = first, second = second)).unwrap_or_default()
    }

    /// What it leaves, in words.
    pub fn leaves_text(&self) -> String {
        match &self.leaves {
            Leaves::NothingAtShoulder => say!("stop-at-shoulder"),
            Leaves::NothingAtEnd => say!("stop-at-end"),
            Leaves::NothingBehind => say!("stop-behind"),
            Leaves::NothingInGroove => say!("stop-in-groove"),
            Leaves::Line(interrupt) => say!("stop-line", interrupt = words::key(interrupt)),
        }
    }
}

/// All stops, ascending: hand-overs, headstock re-grips and stops for work of tools across the shaft.
pub fn stops(plan: &Plan) -> Vec<Stop> {
    let mut all: Vec<Stop> = Vec::new();
    for done in plan.at_stops() {
        // Work on the front end is done before the feed begins.
        if done.what == AtStop::Work && done.turned_mm <= 0.0 {
            continue;
        }
        let stop = stop_at(&mut all, plan, done.turned_mm);
        match done.what {
            AtStop::Work => stop.features.extend(plan.features.get(done.index).map(|f| words::plain(&f.text))),
            AtStop::HandOver => stop.hand_over = Some(done.index + 1),
            AtStop::RegripBefore | AtStop::RegripAfter => stop.regrip = Some(done.index + 1),
        }
        if !stop.order.contains(&done.what) {
            stop.order.push(done.what);
        }
    }
    all.sort_by(|a, b| a.turned_mm.total_cmp(&b.turned_mm));
    all
}

/// The stop at a place. It is made if there is none yet.
#[expect(clippy::indexing_slicing, reason = "the index is of a stop that was found, or of the last")]
fn stop_at<'a>(all: &'a mut Vec<Stop>, plan: &Plan, at_mm: f64) -> &'a mut Stop {
    let index = match all.iter().position(|s| (s.turned_mm - at_mm).abs() < SAME_PLACE_MM) {
        Some(i) => i,
        None => {
            let (surface, leaves) = place(plan, line_at_mm(plan, at_mm));
            all.push(Stop {
                turned_mm: at_mm,
                hand_over: None,
                regrip: None,
                features: Vec::new(),
                order: Vec::new(),
                surface,
                leaves,
            });
            all.len() - 1
        }
    };
    &mut all[index]
}

/// Place of the line that a stop at a turned length leaves, mm: with a tandem the finishing tool leaves it, behind the shoulder in front.
fn line_at_mm(plan: &Plan, turned_mm: f64) -> f64 {
    let inside = |from: f64, to: f64| from + SAME_PLACE_MM < turned_mm && turned_mm < to - SAME_PLACE_MM;
    let section = plan.shaft.sections.iter().find(|s| inside(s.from_mm, s.to_mm));
    // A section of several travels has lines at the borders of its segments, where both tools have ended.
    let ends =
        |s: &Segment| s.travels > 1 && [s.from_mm, s.to_mm].iter().any(|t| (t - turned_mm).abs() < SAME_PLACE_MM);
    let of = |number: usize| plan.segments.iter().filter(move |s| s.section == number);
    let lag = section.and_then(|s| of(s.number).find_map(|s| s.lag_mm).filter(|_| !of(s.number).any(ends)));
    match (section, lag) {
        (Some(section), Some(lag)) => section.from_mm.max(turned_mm - lag),
        _ => turned_mm,
    }
}

/// The surface at a place, and what a stop leaves there. If the plan has a witness line there, that decides, else the
/// outline of the shaft.
fn place(plan: &Plan, at_mm: f64) -> (String, Leaves) {
    if let Some(w) = plan.witnesses.iter().find(|w| (w.at_mm - at_mm).abs() < SAME_PLACE_MM) {
        return (words::section(plan, w.section), Leaves::Line(w.interrupt.clone()));
    }
    let inside = |s: &&SectionOutline| s.from_mm + SAME_PLACE_MM < at_mm && at_mm < s.to_mm - SAME_PLACE_MM;
    match plan.shaft.sections.iter().find(inside) {
        Some(s) if s.kind == "groove" => (words::section_name(s), Leaves::NothingInGroove),
        Some(s) => (words::section_name(s), Leaves::Line(s.interrupt.clone())),
        None => {
            let front = plan.shaft.sections.iter().find(|s| (s.to_mm - at_mm).abs() <= SAME_PLACE_MM);
            let rear = plan.shaft.sections.iter().find(|s| (s.from_mm - at_mm).abs() <= SAME_PLACE_MM);
            match (front, rear) {
                (Some(a), Some(b)) => {
                    (say!("stop-between", front = a.number, rear = b.number), Leaves::NothingAtShoulder)
                }
                (None, Some(_)) => (say!("stop-front-face"), Leaves::NothingAtEnd),
                (Some(_), None) => (say!("stop-part-off-face"), Leaves::NothingAtEnd),
                (None, None) => (say!("stop-behind-face"), Leaves::NothingBehind),
            }
        }
    }
}
