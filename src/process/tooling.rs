//! Tools: which one does what, where it stands, and whether a machine has room for all of a job.

use super::rig::Rig;
use super::segments::{Segment, Work};
use super::tool::Tool;
use crate::job::{Place, SectionKind, Tools};

/// Widest grooving tool, mm; a narrower groove needs its own. As one plunge cuts. Common practice, no source.
const WIDEST_GROOVING_MM: f64 = 3.0;

/// A kind of place: what the job needs, what the machine has.
#[derive(Debug, Clone, PartialEq)]
pub struct Room {
    /// The place.
    pub place: Place,
    /// Tools that need it.
    pub tools: Vec<Tool>,
    /// Places there are.
    pub places: usize,
    /// Tools that stand elsewhere: at driven places of the same end, or on the turret.
    pub elsewhere: usize,
    /// Tools without a place.
    pub short: usize,
}

/// Whether the tools fit.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// Every kind of place.
    pub rooms: Vec<Room>,
    /// Places of the turret, and how many of them are taken.
    pub turret: Option<(usize, usize)>,
    /// An opposed pair is asked for on a machine whose tools all stand on one side.
    pub no_pair: bool,
}

impl Fit {
    /// Whether every tool has its place.
    pub fn fits(&self) -> bool {
        !self.no_pair && self.rooms.iter().all(|r| r.short == 0)
    }
}

impl Rig<'_> {
    /// The tools of a segment, in the order they cut.
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

    /// Every tool of the job, each once, by place and name.
    pub fn tools(&self, segments: &[Segment]) -> Vec<Tool> {
        let mut all: Vec<Tool> = segments.iter().flat_map(|s| self.segment_tools(s)).collect();
        if self.job.cutting.tools == Tools::Opposed && segments.iter().any(|s| s.work == Work::Turn) {
            all.push(Tool::new(Place::Turning, "finishing tool of the pair"));
        }
        all.extend(self.tasks().into_iter().map(|t| t.tool));
        all.extend(self.back.iter().map(|b| b.tool.clone()));
        all.sort();
        all.dedup();
        all
    }

    /// Whether the machine has a place for every tool; none where the machine file does not say what it has.
    ///
    /// A driven place takes a fixed tool of the same end too. A turret takes what is left over of all but the rear end.
    /// Both are filled last, so nothing is short while a place that could take it is free.
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
        let no_pair = self.job.cutting.tools == Tools::Opposed && !has.opposed;
        Some(Fit { rooms, turret, no_pair })
    }
}
