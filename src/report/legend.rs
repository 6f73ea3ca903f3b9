//! What the legend of the diagram has to explain.

use super::page_size::{MARGIN, Use};
use super::shapes::{self, SMALL};
use super::{stops, tables, words};
use crate::job::plan::{Plan, Stage};
use crate::lang;

/// Largest number of bore sleeves drawn: more would look like a grey area.
const SLEEVES: usize = 60;

/// A mark of the legend.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Mark {
    Grip,
    Centre,
    HandOver,
    Regrip,
    Both,
    Work,
    Bush,
    Headstock,
    Bore,
    Sleeve,
    Farther,
    NotReached,
}

/// An entry of the legend.
#[derive(Debug, Clone, PartialEq)]
pub struct Entry {
    /// The mark.
    pub mark: Mark,
    /// What it means.
    pub words: &'static str,
    /// Left edge on the page.
    pub x: f64,
    /// Row from 0.
    pub row: usize,
}

impl Entry {
    /// Whether the mark occurs in the strips of the stages only.
    pub fn is_of_strips(&self) -> bool {
        matches!(self.mark, Mark::Bush | Mark::Headstock | Mark::Bore | Mark::Sleeve | Mark::Farther)
    }
}

/// Share of the estimated text width that the legend uses. Its words are known, and this share is enough for them.
const OF_WIDTH: f64 = 0.9;

/// Width of a sample.
pub const SAMPLE: f64 = 22.0;

/// The entries of the legend with their places, and the number of its rows. Only marks that can occur are listed. `page`: width of the page.
pub fn entries(plan: &Plan, of: Use, page: f64) -> (Vec<Entry>, usize) {
    let all = stops::stops(plan);
    let has = |h: bool, r: bool| all.iter().any(|s| s.hand_over.is_some() == h && s.regrip.is_some() == r);
    let gripped = plan.stages.iter().any(|s| s.grip.is_some());
    let setting = of == Use::Setting;
    // The machine is not drawn for the setter's first page.
    let stages = !plan.stages.is_empty() && !setting;
    let headstock = stages && plan.stages.iter().any(|s| tables::headstock(s).is_some());
    let list = [
        (gripped, Mark::Grip, lang::text("legend-grip")),
        (plan.centre.is_some(), Mark::Centre, lang::text("legend-centre")),
        (has(true, false), Mark::HandOver, lang::text("legend-hand-over")),
        (has(false, true), Mark::Regrip, lang::text("legend-regrip")),
        (has(true, true), Mark::Both, lang::text("legend-both")),
        (setting && has(false, false), Mark::Work, lang::text("legend-work")),
        (stages && words::has_bush(plan), Mark::Bush, lang::text("legend-bush")),
        (headstock, Mark::Headstock, lang::text("legend-headstock")),
        (headstock, Mark::Farther, lang::text("legend-headstock-right")),
        (gripped && stages, Mark::Bore, lang::text("legend-bore")),
        (
            stages && plan.stages.iter().any(|s| sleeves(plan, s).next().is_some()),
            Mark::Sleeve,
            lang::text("legend-sleeve"),
        ),
        (!plan.verdict.has_plan(), Mark::NotReached, lang::text("legend-not-reached")),
    ];
    let (mut x, mut row) = (MARGIN, 0);
    let mut placed = Vec::new();
    for (_, mark, words) in list.into_iter().filter(|(wanted, _, _)| *wanted) {
        let width = SAMPLE + 5.0 + shapes::text_width(words, SMALL) * OF_WIDTH;
        if x + width > page - MARGIN {
            (x, row) = (MARGIN, row + 1);
        }
        placed.push(Entry { mark, words, x, row });
        x += width + 10.0;
    }
    (placed, row + 1)
}

/// Places of the sleeves that carry the part of the shaft inside the bore in a stage, mm from the front face.
pub fn sleeves(plan: &Plan, stage: &Stage) -> impl Iterator<Item = f64> {
    let pitch_mm = plan.layout.sleeve_pitch_mm.filter(|p| *p > 0.0);
    let first = stage.grip.as_ref().zip(pitch_mm).map(|(grip, pitch_mm)| (grip.from_mm, pitch_mm));
    first.into_iter().flat_map(|(from_mm, pitch_mm)| {
        (1..=SLEEVES).map(move |j| from_mm - j as f64 * pitch_mm).take_while(|at| *at >= 0.0)
    })
}
