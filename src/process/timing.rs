//! Times of cutting.
//!
//! A travel takes `length / (f n)` (by definition of feed and speed) plus the overhead of the machine. A single-point thread takes the
//! passes of [`threading::passes`] for each start, each with one second for the return (common practice, no source).

use super::features::SAME_MM;
use super::rig::Rig;
use super::segments::{PLUNGE_WIDTH_MM, Segment, Travel, Work};
use crate::job::Edge;
use crate::job::materials::Group;
use crate::job::thread::{Form, Thread};
use crate::mechanics::threading::{self, Profile, infeeds_mm};

/// Speed of threading passes over the speed of turning: a quarter lower (a table book of vocational schools, second hand).
const THREADING_SPEED_SHARE: f64 = 0.75;
/// Time to draw the tool back after a threading pass, s. Common practice, no source.
const THREADING_RETURN_S: f64 = 1.0;

/// Cutting time and overhead time of a piece of a segment, s.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct PieceTime {
    /// Time in the cut, s.
    pub cutting_s: f64,
    /// Overhead of all travels, s.
    pub overhead_s: f64,
}

impl PieceTime {
    /// Sum of both, s.
    pub fn total_s(&self) -> f64 {
        self.cutting_s + self.overhead_s
    }
}

impl Rig<'_> {
    /// Infeed of each single-point threading pass of a segment, mm; empty for other work.
    pub fn infeeds_mm(&self, segment: &Segment) -> Vec<f64> {
        match self.thread_of(segment) {
            Some(thread) if segment.work == Work::Thread => infeeds_mm(thread.depth_mm(), self.passes_each(thread)),
            _ => Vec::new(),
        }
    }

    /// Number of passes for each start of a single-point thread.
    fn passes_each(&self, thread: &Thread) -> usize {
        let material = &self.job.shaft.material;
        let hard = !material.class_assumed && is_hard(material.class.group());
        let profile = if thread.form == Form::Trapezoidal { Profile::Trapezoid } else { Profile::Sharp { hard } };
        threading::passes(thread.pitch_mm, profile)
    }

    /// Time of `length_mm` of a segment if no travel may run faster than `cap_rpm`.
    ///
    /// Grooves and threads are never cut in pieces, so for them the time is always that of the whole segment. The time of the part-off
    /// is a value of the machine that a plan lists separately, so it is zero here.
    pub fn piece_time(&self, segment: &Segment, length_mm: f64, gripped: bool, cap_rpm: f64) -> PieceTime {
        let overhead = self.job.machine.segment_overhead_s;
        // The states of a segment are checked at this speed, so no travel and no threading pass may run faster.
        let cap_rpm = cap_rpm.min(self.segment_rpm(segment, gripped));
        let along = |length: f64| -> f64 {
            let rpm = |t: &Travel| self.travel_rpm(segment, t, gripped).min(cap_rpm);
            segment.travels.iter().map(|t| 60.0 * length / (t.feed_mm * rpm(t))).sum()
        };
        let section = self.job.shaft.sections.get(segment.section);
        let thread = self.thread_of(segment);
        let travels = segment.travels.len() as f64;
        let edges = self.edges_time(segment, self.segment_rpm(segment, gripped).min(cap_rpm));
        // Work that cannot be divided counts whole.
        let part = |length: f64| section.map_or(0.0, |s| length / s.length_mm());
        let time = match (segment.work, thread) {
            (Work::PartOff, _) => return PieceTime::default(),
            (Work::AsDrawn, _) => PieceTime::default(),
            (Work::Plunge, _) => {
                let depth = section.map_or(0.0, |s| (self.job.stock.diameter_mm - s.smallest_turned_mm()) / 2.0);
                let plunges = (segment.length_mm() / PLUNGE_WIDTH_MM - 1e-9).ceil().max(1.0);
                PieceTime { cutting_s: plunges * along(depth), overhead_s: plunges * overhead }
            }
            (Work::Whirl, _) => PieceTime { cutting_s: along(segment.length_mm()), overhead_s: travels * overhead },
            (Work::Thread, Some(thread)) => {
                let (passes, speed) = self.threading(segment, thread, gripped, cap_rpm);
                let pass_s = 60.0 * segment.length_mm() / (thread.lead_mm() * speed) + THREADING_RETURN_S;
                let threading = passes * pass_s;
                PieceTime { cutting_s: along(segment.length_mm()) + threading, overhead_s: travels * overhead }
            }
            _ => PieceTime { cutting_s: along(length_mm), overhead_s: travels * overhead },
        };
        let whole = matches!(segment.work, Work::Plunge | Work::Whirl | Work::Thread);
        let share = part(if whole { segment.length_mm() } else { length_mm });
        PieceTime { cutting_s: time.cutting_s + edges * share, ..time }
    }

    /// Time of the chamfers and radii of a section, s, spread over its length by the caller. The turning tool makes those at the front end on
    /// its way. At the rear end a tool comes once more, as it does where no tool turns the section.
    fn edges_time(&self, segment: &Segment, rpm: f64) -> f64 {
        let Some(section) = self.job.shaft.sections.get(segment.section) else { return 0.0 };
        let on_the_way = matches!(segment.work, Work::Turn | Work::Thread);
        let finishing = segment.travels.last().map(|t| t.feed_mm).filter(|_| on_the_way);
        let feed_mm = finishing.unwrap_or_else(|| self.finishing_feed_mm(&self.usual_cutter(), section));
        let each =
            section.edges.iter().zip([on_the_way, false]).filter_map(|(edge, free)| Some((edge.as_ref()?, free)));
        let time = |(edge, free): (&Edge, bool)| {
            60.0 * edge.path_mm() / (feed_mm * rpm) + if free { 0.0 } else { self.job.machine.segment_overhead_s }
        };
        each.map(time).sum()
    }

    /// Time of a stretch of a segment, as [`Rig::piece_time`]. Where the segment ends, the finishing tool of a tandem runs out.
    pub fn stretch_time(
        &self,
        segment: &Segment,
        [from_mm, to_mm]: [f64; 2],
        gripped: bool,
        cap_rpm: f64,
    ) -> PieceTime {
        let mut time = self.piece_time(segment, to_mm - from_mm, gripped, cap_rpm);
        if to_mm > segment.to_mm - SAME_MM {
            time.cutting_s += self.run_out_s(segment, gripped, cap_rpm);
        }
        time
    }

    /// Number and speed (rev/min) of the passes of a single-point thread, all starts together, if none may run faster than `cap_rpm`.
    /// A pass moves by the lead in each turn, and no faster than the rapid traverse.
    pub fn threading(&self, segment: &Segment, thread: &Thread, gripped: bool, cap_rpm: f64) -> (f64, f64) {
        let rpm = |vc_m_per_min: f64| self.wanted_rpm(segment, vc_m_per_min, thread.major_mm, gripped);
        let own = self.threading_tool().and_then(|tool| tool.cut().vc_m_per_min);
        let wanted_rpm = own.map_or_else(|| THREADING_SPEED_SHARE * rpm(self.job.cutting.vc_m_per_min), rpm);
        let by_lead_rpm = 1000.0 * self.job.machine.rapid_m_per_min / thread.lead_mm();
        let passes = f64::from(thread.starts) * self.passes_each(thread) as f64;
        (passes, wanted_rpm.min(by_lead_rpm).min(cap_rpm))
    }
}

/// Materials for which the tables of passes have their upper ends: the tables say that hard materials need more.
fn is_hard(group: Group) -> bool {
    match group {
        Group::ToolSteel | Group::StainlessSteel | Group::Titanium | Group::CobaltChromium | Group::Nickel => true,
        Group::Steel | Group::Copper | Group::Aluminium | Group::Plastic => false,
    }
}
