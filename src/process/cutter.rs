//! Which tool takes a cut: one of the tool list, or the one that `cutting` describes.
//!
//! Of the listed tools that can take a cut, the one that turns it in the least time is taken; of equal ones the first of the list. The
//! time counts travels, feed and speed, without what the checks may lower.

use super::rig::Rig;
use crate::job::{CutData, ListedTool, Section, ToolKind};
use crate::mechanics::cutting::{Edge, Finish};
use crate::units::spindle_rpm;

/// Feed of a travel if the job gives none, mm/rev. Then it is also the upper limit of a finishing feed that follows from roughness.
pub const DEFAULT_FEED_MM: f64 = 0.15;
/// Grooves and part-off are plunged at this share of the feed. Common practice, no source.
pub const PLUNGE_FEED_SHARE: f64 = 0.4;
/// Room for rounding where a depth is compared with the largest one.
const DEPTH_SLACK: f64 = 1e-9;

/// A tool with the cut that it takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cutter {
    /// Its edge.
    pub edge: Edge,
    /// Cutting speed, m/min.
    pub vc_m_per_min: f64,
    /// Feed, mm/rev; for finishing the largest.
    pub feed_mm: f64,
    /// Largest depth of cut, mm.
    pub ap_max_mm: f64,
    /// Its place in the tool list. None: it is the tool of `cutting`.
    pub listed: Option<usize>,
}

/// The tools for a section.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cutters {
    /// Takes the whole depth in one finishing cut. None: no tool can.
    pub one: Option<Cutter>,
    /// Roughs.
    pub rough: Cutter,
    /// Takes the last cut in a travel of its own.
    pub finish: Cutter,
    /// Takes the last cut beside the roughing tool, in the same travel.
    pub beside: Cutter,
}

impl Rig<'_> {
    /// The tool of `cutting`.
    pub fn usual_cutter(&self) -> Cutter {
        let cutting = &self.job.cutting;
        Cutter {
            edge: self.edge,
            vc_m_per_min: cutting.vc_m_per_min,
            feed_mm: cutting.feed_mm.unwrap_or(DEFAULT_FEED_MM),
            ap_max_mm: cutting.ap_max_mm,
            listed: None,
        }
    }

    /// A tool of the list with a cut. What it does not say is as in `cutting`.
    fn listed_cutter(&self, index: usize, tool: &ListedTool, cut: CutData) -> Cutter {
        let usual = self.usual_cutter();
        let edge = Edge {
            nose_radius_mm: tool.nose_radius_mm.unwrap_or(usual.edge.nose_radius_mm),
            approach_rad: tool.approach_deg.map_or(usual.edge.approach_rad, f64::to_radians),
        };
        Cutter {
            edge,
            vc_m_per_min: cut.vc_m_per_min.unwrap_or(usual.vc_m_per_min),
            feed_mm: cut.feed_mm.unwrap_or(usual.feed_mm),
            ap_max_mm: tool.ap_max_mm.unwrap_or(usual.ap_max_mm),
            listed: Some(index),
        }
    }

    /// The tools of the list of a kind, each with the cut that `of` gives.
    fn listed(&self, kind: ToolKind, of: impl Fn(&ListedTool) -> Option<CutData>) -> Vec<Cutter> {
        let tools = self.job.tool_list.iter().enumerate().filter(|(_, tool)| tool.kind == kind);
        tools.filter_map(|(i, tool)| Some(self.listed_cutter(i, tool, of(tool)?))).collect()
    }

    /// Largest feed of a finishing cut that keeps the roughness of a section, mm/rev.
    pub fn finishing_feed_mm(&self, cutter: &Cutter, section: &Section) -> f64 {
        let cutting = &self.job.cutting;
        let finish = Finish { factor: cutting.ra_factor, floor_um: cutting.ra_floor_um };
        let by_ra = section.ra_um.map(|ra| finish.feed_mm(cutter.edge.nose_radius_mm, ra));
        by_ra.map_or(cutter.feed_mm, |feed| feed.min(cutter.feed_mm))
    }

    /// The tools for a section with a radial stock (mm). `back`: its diameter steps down at its front.
    pub fn cutters(&self, section: &Section, back: bool, stock_mm: f64) -> Cutters {
        let usual = self.usual_cutter();
        let beside = Cutter { edge: self.finishing_edge(), ..usual };
        let kind = if back { ToolKind::BackTurning } else { ToolKind::Turning };
        let (roughers, finishers) = (self.listed(kind, |t| t.cuts.rough), self.listed(kind, |t| t.cuts.finish));
        if self.job.tool_list.is_empty() || roughers.is_empty() && finishers.is_empty() {
            return Cutters { one: Some(usual), rough: usual, finish: usual, beside };
        }
        let bar_mm = self.job.stock.diameter_mm;
        let travel_s = |cutter: &Cutter, feed_mm: f64, diameter_mm: f64| {
            let rpm = spindle_rpm(cutter.vc_m_per_min, diameter_mm).min(self.machine_rpm(true));
            60.0 * section.length_mm() / (feed_mm * rpm) + self.job.machine.segment_overhead_s
        };
        let roughing_s = |cutter: &Cutter| {
            let depth_mm = (stock_mm - self.job.cutting.ap_finish_mm).max(0.0);
            let travels = (depth_mm / cutter.ap_max_mm - DEPTH_SLACK).ceil().max(1.0);
            travels * travel_s(cutter, cutter.feed_mm, bar_mm)
        };
        let finishing_s = |diameter_mm: f64| {
            move |cutter: &Cutter| travel_s(cutter, self.finishing_feed_mm(cutter, section), diameter_mm)
        };
        let last = quickest(finishers.iter().copied(), finishing_s(section.smallest_turned_mm()));
        let whole = finishers.iter().filter(|c| stock_mm <= c.ap_max_mm * (1.0 + DEPTH_SLACK)).copied();
        Cutters {
            one: quickest(whole, finishing_s(bar_mm)),
            rough: quickest(roughers.iter().copied(), roughing_s).unwrap_or(usual),
            finish: last.unwrap_or(usual),
            beside: last.unwrap_or(beside),
        }
    }

    /// The tool that plunges a groove of a width (mm): the widest of the list that goes in. It has no edge that forces are computed with.
    pub fn grooving_cutter(&self, width_mm: f64) -> Cutter {
        let of_width =
            |tool: &ListedTool| tool.width_mm.is_none_or(|own| own <= width_mm + DEPTH_SLACK).then(|| tool.cut());
        let width = |cutter: &Cutter| self.listed_tool(cutter).and_then(|tool| tool.width_mm).unwrap_or(0.0);
        let widest = self.listed(ToolKind::Grooving, of_width).into_iter();
        self.plunging(widest.reduce(|a, b| if width(&b) > width(&a) { b } else { a }))
    }

    /// The tool that parts off.
    pub fn part_off_cutter(&self) -> Cutter {
        self.plunging(self.listed(ToolKind::PartOff, |tool| Some(tool.cut())).into_iter().next())
    }

    /// A plunging tool: without a feed of its own it has a share of the feed of `cutting`.
    fn plunging(&self, listed: Option<Cutter>) -> Cutter {
        let usual = self.usual_cutter();
        let own = listed.and_then(|cutter| self.listed_tool(&cutter)?.cut().feed_mm);
        let feed_mm = own.unwrap_or(usual.feed_mm * PLUNGE_FEED_SHARE);
        Cutter { feed_mm, ..listed.unwrap_or(usual) }
    }

    /// The tool that cuts a thread in passes, if the list has one.
    pub fn threading_tool(&self) -> Option<&ListedTool> {
        self.job.tool_list.iter().find(|tool| tool.kind == ToolKind::Threading)
    }

    /// The tool of the list that a cutter is.
    pub fn listed_tool(&self, cutter: &Cutter) -> Option<&ListedTool> {
        self.job.tool_list.get(cutter.listed?)
    }
}

/// The tool that needs the least time; of equal ones the first.
fn quickest(of: impl Iterator<Item = Cutter>, time_s: impl Fn(&Cutter) -> f64) -> Option<Cutter> {
    of.map(|cutter| (time_s(&cutter), cutter)).reduce(|a, b| if b.0 < a.0 { b } else { a }).map(|(_, cutter)| cutter)
}
