//! The tools of each segment and of the whole job, and whether the machine has places for all of them.

use super::rig::Rig;
use super::segments::{Segment, Work};
use super::tool::Tool;
use crate::job::{Place, SectionKind, Side, Tools};

/// Widest grooving tool, mm: the width that one plunge cuts. A narrower groove needs its own tool. Common practice, no source.
const WIDEST_GROOVING_MM: f64 = 3.0;

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
    /// The tools of a segment, in the order in which they cut.
    pub fn segment_tools(&self, segment: &Segment) -> Vec<Tool> {
        let turning = Tool::turning(self.job.cutting.tools);
        let section = self.job.shaft.sections.get(segment.section);
        let pitch = section.and_then(|s| match &s.kind {
            SectionKind::Thread(t) => Some(t.pitch_mm),
            _ => None,
        });
        let front = if segment.back { Tool::new(Place::Turning, "back-turning tool") } else { turning };
        match (segment.work, pitch) {
            (Work::AsDrawn, _) => Vec::new(),
            (Work::PartOff, _) => vec![Tool::new(Place::Turning, "part-off tool")],
            (Work::Plunge, _) => {
                let width = segment.length_mm().min(WIDEST_GROOVING_MM);
                vec![Tool::new(Place::Turning, format!("grooving tool {width}"))]
            }
            (Work::Whirl, Some(pitch)) => {
                vec![Tool::new(Place::CrossDriven, format!("whirling head, pitch {pitch}"))]
            }
            (Work::Thread, Some(pitch)) => {
                vec![front, Tool::new(Place::Turning, format!("threading tool, pitch {pitch}"))]
            }
            _ => vec![front],
        }
    }

    /// All tools of the job without duplicates, sorted by place and name.
    pub fn tools(&self, segments: &[Segment]) -> Vec<Tool> {
        let mut all: Vec<Tool> = segments.iter().flat_map(|s| self.segment_tools(s)).collect();
        if self.job.cutting.tools == Tools::Opposed && segments.iter().any(|s| s.work == Work::Turn) {
            all.push(Tool::new(Place::Turning, "finishing tool of the pair"));
        }
        if segments.iter().any(|s| s.lag_mm.is_some()) {
            all.push(Tool::new(Place::Turning, "finishing tool"));
        }
        all.extend(self.tasks().into_iter().map(|t| t.tool));
        all.extend(self.back.iter().map(|b| b.tool.clone()));
        all.sort();
        all.dedup();
        all
    }

    /// Whether the machine has a place for every tool; none if the machine file does not list its places.
    ///
    /// A driven place can also take a fixed tool of the same end. A turret takes the remaining tools, except those of the rear end.
    /// Both are filled last, so no tool is short while a place that could take it is free.
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
            for room in rooms.iter_mut().filter(|r| !r.place.is_back()) {
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
