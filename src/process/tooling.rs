//! The tools of each segment and of the whole job, and whether the machine has places for all of them.

use super::cutter::Cutter;
use super::rig::Rig;
use super::segments::{Segment, Travel, Work};
use super::tool::Tool;
use crate::job::plan::TravelCut;
use crate::job::{Place, Side, Tools};
use crate::lang::Measure;
use crate::say;

/// Widest grooving tool, mm: the width that one plunge cuts. A narrower groove needs its own tool. Common practice, no source.
const WIDEST_GROOVING_MM: f64 = 3.0;

/// A pitch with at most three decimals, because a pitch of an inch thread has more.
fn shown_mm(pitch_mm: f64) -> f64 {
    (pitch_mm * 1000.0).round() / 1000.0
}

/// One kind of tool place: what the job needs and what the machine has.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// The place.
    pub place: Place,
    /// Tools that need it.
    pub tools: Vec<Tool>,
    /// Number of places on the machine.
    pub places: usize,
    /// Number of tools that use other places: driven places of the same end, or the turret.
    pub elsewhere: usize,
    /// Number of tools without a place.
    pub short: usize,
}

/// Whether the machine has places for the tools.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// All kinds of place.
    pub rooms: Vec<Room>,
    /// Number of places of the turret, and how many of them are used.
    pub turret: Option<(usize, usize)>,
    /// Whether two tools must cut at once and the machine has no such tools: on both sides of the bar, or on slides of their own.
    pub no_pair: bool,
}

impl Fit {
    /// Whether every tool has a place.
    pub fn fits(&self) -> bool {
        !self.no_pair && self.rooms.iter().all(|r| r.short == 0)
    }
}

impl Rig<'_> {
    /// The tools of a segment, in the order in which they cut. Of two tools in one travel it is the leading one.
    pub fn segment_tools(&self, segment: &Segment) -> Vec<Tool> {
        let usual = |segment: &Segment| match segment.back {
            true => Tool::new(Place::Turning, say!("tool-back-turning")),
            false => Tool::turning(self.job.cutting.tools),
        };
        let mut front: Vec<Tool> =
            segment.travels.iter().map(|t| self.tool_of(t.cutters.first(), || usual(segment))).collect();
        front.dedup();
        // Both 60° profiles share their tools; other profiles and several starts of a whirled thread need their own.
        let cutter = self.thread_of(segment).map(|t| match t.angle_deg() {
            60 => say!("tool-pitch", pitch = Measure::Size.number(shown_mm(t.pitch_mm))),
            angle => say!("tool-angle-pitch", angle = angle, pitch = Measure::Size.number(shown_mm(t.pitch_mm))),
        });
        match (segment.work, cutter) {
            (Work::AsDrawn, _) => Vec::new(),
            (Work::PartOff | Work::Plunge, _) => {
                let usual = || match segment.work {
                    Work::PartOff => Tool::new(Place::Turning, say!("tool-part-off")),
                    _ => {
                        let width = shown_mm(segment.length_mm().min(WIDEST_GROOVING_MM));
                        Tool::new(Place::Turning, say!("tool-grooving", width = Measure::Size.number(width)))
                    }
                };
                segment.travels.iter().map(|t| self.tool_of(t.cutters.first(), usual)).collect()
            }
            (Work::Whirl, Some(cutter)) => {
                vec![Tool::new(Place::Whirling, say!("tool-whirling", cutter = cutter))]
            }
            (Work::Thread, Some(cutter)) => {
                let usual = || say!("tool-threading", cutter = cutter);
                let name = self.threading_tool().map_or_else(usual, |tool| tool.name.clone());
                front.push(Tool::new(Place::Turning, name));
                front
            }
            _ => front,
        }
    }

    /// The listed tool of a cutter, else the usual one.
    fn tool_of(&self, cutter: Option<&Cutter>, usual: impl Fn() -> Tool) -> Tool {
        let listed = cutter.and_then(|cutter| self.listed_tool(cutter));
        listed.map_or_else(usual, |tool| Tool::new(Place::Turning, tool.name.clone()))
    }

    /// The tools of each depth of a travel, the leading one first.
    pub fn travel_tools(&self, segment: &Segment, travel: &Travel) -> Vec<Tool> {
        let lead = || self.segment_tools(segment).into_iter().next();
        let usual = |i: usize| match (i, self.job.cutting.tools) {
            (0, _) => lead().unwrap_or_else(|| Tool::turning(self.job.cutting.tools)),
            (_, Tools::Opposed) => Tool::new(Place::Turning, say!("tool-finishing-of-pair")),
            _ => Tool::new(Place::Turning, say!("tool-finishing")),
        };
        travel.cutters.iter().enumerate().map(|(i, cutter)| self.tool_of(Some(cutter), || usual(i))).collect()
    }

    /// The travels of a segment with their tools, if none may run faster than `cap_rpm`, as a plan tells them.
    pub fn told_cuts(&self, segment: &Segment, gripped: bool, cap_rpm: f64) -> Vec<TravelCut> {
        let cut = |travel: &Travel| TravelCut {
            tools: self.travel_tools(segment, travel).into_iter().map(|tool| tool.name).collect(),
            depths_mm: travel.depths_mm.clone(),
            feed_mm: travel.feed_mm,
            rpm: self.travel_rpm(segment, travel, gripped).min(cap_rpm),
        };
        segment.travels.iter().map(cut).collect()
    }

    /// All tools of the job without duplicates, sorted by place and name.
    pub fn tools(&self, segments: &[Segment]) -> Vec<Tool> {
        let mut all: Vec<Tool> = segments.iter().flat_map(|s| self.segment_tools(s)).collect();
        let pairs = segments.iter().flat_map(|s| s.travels.iter().filter(|t| t.cutters.len() > 1).map(move |t| (s, t)));
        all.extend(pairs.flat_map(|(s, t)| self.travel_tools(s, t).into_iter().skip(1)));
        all.extend(self.tasks().into_iter().map(|t| t.tool));
        all.extend(self.back.iter().map(|b| b.tool.clone()));
        all.sort();
        all.dedup();
        all
    }

    /// Whether the machine has a place for every tool; none if the machine file does not list its places.
    ///
    /// A driven place can also take a fixed tool of the same end. A turret takes the remaining tools, except those of the rear end.
    /// A whirling head goes into a whirling unit only. Both are filled last, so no tool is short while a place that could take it is free.
    pub fn tool_fit(&self, segments: &[Segment]) -> Option<Fit> {
        let has = self.job.machine.tools.as_ref()?;
        let tools = self.tools(segments);
        let mut rooms: Vec<Room> = Place::ALL
            .iter()
            .map(|place| {
                let tools: Vec<Tool> = tools.iter().filter(|t| t.place == *place).cloned().collect();
                let short = tools.len().saturating_sub(has.of(*place));
                Room { place: *place, tools, places: has.of(*place), elsewhere: 0, short }
            })
            .collect();
        for i in 0..rooms.len() {
            let Some(other) = rooms[i].place.driven_instead() else { continue };
            let free = rooms.iter().find(|r| r.place == other).map_or(0, |r| r.places.saturating_sub(r.tools.len()));
            let moved = rooms[i].short.min(free);
            rooms[i].short -= moved;
            rooms[i].elsewhere += moved;
        }
        let turret = has.turret.map(|turret| {
            let mut free = turret.tools();
            for room in rooms.iter_mut().filter(|r| r.place.fits_turret()) {
                let moved = room.short.min(free);
                free -= moved;
                room.short -= moved;
                room.elsewhere += moved;
            }
            (turret.tools(), turret.tools() - free)
        });
        let no_pair = match (self.job.cutting.tools, self.job.cutting.finisher.side) {
            (Tools::Single, _) => false,
            (Tools::Opposed, _) => !has.opposed,
            (Tools::Tandem, side) => {
                let can = if side == Side::Same { has.tandem } else { has.opposed };
                !can && segments.iter().any(|s| s.lag_mm.is_some())
            }
        };
        Some(Fit { rooms, turret, no_pair })
    }
}
