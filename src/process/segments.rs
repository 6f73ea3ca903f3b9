//! Segments: the lengths that are finished in one forward travel, or in several travels with pull-backs between them.
//!
//! With a guide bush, a section whose depth of cut is within `ap_max` is finished in one travel at full depth. If more travels are
//! needed, the bar is pulled back by the length `p` of the segment between them. Then the raw bar ends `p - gap` inside the bush, and
//! the tool stands `max(gap, p)` in front of the guided bar. So two rules limit `p`: enough land of the bush must stay on raw bar, and
//! the deflection may change only by a limit from the start of a travel to its end (derived here). Without a bush these rules do not
//! apply; the change along each piece is checked instead.

use super::cutter::{Cutter, Cutters};
use super::rig::Rig;
use crate::job::thread::Thread;
use crate::job::{Holding, Interrupt, Place, Section, SectionKind, ThreadBy, Tools};
use crate::lang::Measure;
use crate::mechanics::overhang::Overhang;
use crate::say;
use crate::units::n_per_mm;

/// Widest groove one plunge cuts, mm. Common practice, no source.
pub const PLUNGE_WIDTH_MM: f64 = 3.0;
/// A section that needs more segments than this is refused as impractical.
const MOST_SEGMENTS: usize = 2000;
/// Relative slack of the rules for a pull-back, so that rounding does not split a length exactly at its limit.
const RULE_SLACK: f64 = 1e-9;
/// The rule of a thread that is too long for a single-point tool.
pub const THREAD_LENGTH: &str = "thread_length";
/// Radial stock below this is not cut, mm: the bar is left as drawn.
const NO_STOCK_MM: f64 = 1e-9;

/// A cut up to this depth counts as a finishing cut by itself, mm. A tool maker's catalogue, 2020, p. A014, recommends 0.2 to 1.0 mm for
/// its finishing and up to 2.0 mm for its light chip breakers in steel; a text on stages of machining gives 0.75 to 2 mm for finishing.
pub const FINISHING_TO_MM: f64 = 2.0;

/// What is done to a segment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Work {
    /// Turned along.
    Turn,
    /// Plunged: a groove.
    Plunge,
    /// Turned to the major diameter, then threaded with a single-point tool.
    Thread,
    /// Thread whirled from the bar in one travel by a driven tool.
    Whirl,
    /// Parted off, over the width of the tool behind the shaft.
    PartOff,
    /// Not cut: the drawn bar already has the finished diameter.
    AsDrawn,
}

impl Work {
    /// The word that is printed.
    pub fn key(self) -> &'static str {
        match self {
            Work::Turn => "turn",
            Work::Plunge => "plunge",
            Work::Thread => "thread",
            Work::Whirl => "whirl",
            Work::PartOff => "part_off",
            Work::AsDrawn => "as_drawn",
        }
    }
}

/// One travel.
#[derive(Debug, Clone, PartialEq)]
pub struct Travel {
    /// Depth of cut of each tool, the leading one first, mm.
    pub depths_mm: Vec<f64>,
    /// Diameter before the travel, mm: the largest in cut.
    pub before_mm: f64,
    /// The tool of each depth.
    pub cutters: Vec<Cutter>,
    /// Feed, mm/rev: the smaller one of two tools.
    pub feed_mm: f64,
    /// Cutting speed, m/min: the lower one of two tools.
    pub vc_m_per_min: f64,
    /// Net radial force, N.
    pub net_radial_n: f64,
    /// Sum of the main forces, N; 0 if another motor drives the cut.
    pub main_n: f64,
    /// Sum of the feed forces along the axis, N.
    pub feed_n: f64,
    /// Cutting stiffness of each tool for a radial motion, N/mm.
    pub stiffness_n_per_mm: Vec<f64>,
}

/// One segment.
#[derive(Debug, Clone, PartialEq)]
pub struct Segment {
    /// Index of the section; for the part-off the last section.
    pub section: usize,
    /// Front end, mm.
    pub from_mm: f64,
    /// Rear end, mm.
    pub to_mm: f64,
    /// What is done.
    pub work: Work,
    /// The travels; the last one makes the finished surface.
    pub travels: Vec<Travel>,
    /// Whether the segment needs a back-turning tool, because the diameter steps down at the shoulder in front of it.
    pub back: bool,
    /// Change of the diameter by deflection along the finishing travel with a bush, mm (0 for a single travel of one tool or a pair).
    pub change_mm: f64,
    /// How far a finishing tool follows the roughing tool in the last travel, mm; none: the section is not cut by a tandem.
    pub lag_mm: Option<f64>,
}

impl Segment {
    /// Length, mm.
    pub fn length_mm(&self) -> f64 {
        self.to_mm - self.from_mm
    }

    /// The travel that makes the finished surface.
    pub fn finishing(&self) -> Option<&Travel> {
        self.travels.last()
    }
}

/// A section that cannot be cut this way.
#[derive(Debug, Clone, PartialEq)]
pub struct Refused {
    /// Index of the section.
    pub section: usize,
    /// Turned length up to which the shaft can be cut, mm.
    pub at_mm: f64,
    /// Number of segments the section would need.
    pub segments: usize,
    /// Name of the rule.
    pub rule: &'static str,
    /// One sentence.
    pub text: String,
}

impl Rig<'_> {
    /// All segments from the front face to the part-off, in order.
    ///
    /// # Errors
    /// The first section that cannot be cut this way: it needs borders inside but must not be interrupted, or it needs too many
    /// segments.
    pub fn segments(&self) -> Result<Vec<Segment>, Refused> {
        let mut all = Vec::with_capacity(self.job.shaft.sections.len() + 1);
        let mut front_mm = f64::INFINITY;
        for (index, section) in self.job.shaft.sections.iter().enumerate() {
            let back = index > 0 && section.front_mm() < front_mm - NO_STOCK_MM;
            front_mm = section.rear_mm();
            self.section_segments(index, section, back, &mut all)?;
        }
        let length = self.job.shaft.length_mm();
        all.push(Segment {
            section: self.job.shaft.sections.len().saturating_sub(1),
            from_mm: length,
            to_mm: self.job.parted_at_mm(),
            work: Work::PartOff,
            travels: vec![self.plunge_travel(self.part_off_cutter(), self.job.machine.part_off.width_mm)],
            back: false,
            change_mm: 0.0,
            lag_mm: None,
        });
        Ok(all)
    }

    /// A travel from the bar's surface that `cut` and `chatter` do not look at: a plunge, or whirling.
    fn bar_travel(&self, cutter: Cutter, main_n: f64) -> Travel {
        Travel {
            depths_mm: Vec::new(),
            before_mm: self.job.stock.diameter_mm,
            cutters: vec![cutter],
            feed_mm: cutter.feed_mm,
            vc_m_per_min: cutter.vc_m_per_min,
            net_radial_n: 0.0,
            main_n,
            feed_n: 0.0,
            stiffness_n_per_mm: Vec::new(),
        }
    }

    /// A plunge of a width (mm) from the bar's surface.
    fn plunge_travel(&self, cutter: Cutter, width_mm: f64) -> Travel {
        let feed_mm = cutter.feed_mm;
        self.bar_travel(cutter, self.resistance.specific_n_per_mm2(feed_mm) * feed_mm * width_mm)
    }

    fn section_segments(
        &self,
        index: usize,
        section: &Section,
        back: bool,
        all: &mut Vec<Segment>,
    ) -> Result<(), Refused> {
        let (travels, lag_mm) = self.travels(section, back);
        let mut one = Segment {
            section: index,
            from_mm: section.from_mm,
            to_mm: section.to_mm,
            work: Work::Turn,
            travels,
            back,
            change_mm: 0.0,
            lag_mm,
        };
        let guided = self.job.holding == Holding::Bush;
        match &section.kind {
            SectionKind::Groove { .. } => {
                one.work = Work::Plunge;
                (one.back, one.lag_mm) = (false, None);
                let cutter = self.grooving_cutter(section.length_mm());
                one.travels = vec![self.plunge_travel(cutter, section.length_mm().min(PLUNGE_WIDTH_MM))];
            }
            SectionKind::Thread(thread) if section.thread_by != Some(ThreadBy::Rolling) => {
                one.work = self.thread_work(index, section)?;
                if one.work == Work::Whirl {
                    (one.back, one.lag_mm) = (false, None);
                    // The head moves by the lead in each turn of the bar; each start is a travel.
                    let head = Cutter { feed_mm: thread.lead_mm(), ..self.usual_cutter() };
                    one.travels = vec![self.bar_travel(head, 0.0); thread.starts as usize];
                }
            }
            _ if one.travels.is_empty() => one.work = Work::AsDrawn,
            _ if guided && one.travels.len() > 1 => {
                let pieces = self.pieces(index, section, &one.travels)?;
                let step = section.length_mm() / pieces as f64;
                one.change_mm = self.last_change_mm(step, &one.travels);
                for i in 0..pieces {
                    let from_mm = section.from_mm + step * i as f64;
                    let to_mm = if i + 1 == pieces { section.to_mm } else { section.from_mm + step * (i + 1) as f64 };
                    all.push(Segment { from_mm, to_mm, back: back && i == 0, ..one.clone() });
                }
                return Ok(());
            }
            _ if lag_mm.is_some() => one.change_mm = self.last_change_mm(section.length_mm(), &one.travels),
            _ => {}
        }
        all.push(one);
        Ok(())
    }

    /// How a thread is made that is not rolled: as the section says; else with a single-point tool, and where it is too long to be pulled
    /// back in the bush, whirled by a machine that has a whirling unit.
    ///
    /// # Errors
    /// The thread is too long for a single-point tool, and it is not to be whirled or there is no whirling unit.
    fn thread_work(&self, index: usize, section: &Section) -> Result<Work, Refused> {
        let longest_mm = self.pull_back_by_land_mm();
        let fits = self.job.holding != Holding::Bush || section.length_mm() <= longest_mm * (1.0 + RULE_SLACK);
        // Without a list of tool places a whirling unit is assumed, and the plan says so.
        let has_unit = self.job.machine.tools.as_ref().is_none_or(|tools| tools.of(Place::Whirling) > 0);
        match section.thread_by {
            Some(ThreadBy::Whirling) => Ok(Work::Whirl),
            _ if fits => Ok(Work::Thread),
            None if has_unit => Ok(Work::Whirl),
            given => {
                let stays = Measure::Place.number(self.job.machine.bush.as_ref().map_or(0.0, |b| b.engagement_min_mm));
                let (section_name, length) = (section.label(index), Measure::Place.number(section.length_mm()));
                let longest = Measure::Place.fixed(longest_mm.max(0.0), 2);
                let text = if given.is_some() && has_unit {
                    say!("thread-long-asked", section = section_name, length = length, longest = longest, stays = stays)
                } else {
                    say!(
                        "thread-long-no-unit",
                        section = section_name,
                        length = length,
                        longest = longest,
                        stays = stays
                    )
                };
                Err(Refused { section: index, at_mm: section.from_mm, segments: 1, rule: THREAD_LENGTH, text })
            }
        }
    }

    /// The thread of a segment that is cut or whirled here; none for other work, and for a blank to be rolled.
    pub fn thread_of(&self, segment: &Segment) -> Option<&Thread> {
        match &self.job.shaft.sections.get(segment.section)?.kind {
            SectionKind::Thread(t) if matches!(segment.work, Work::Thread | Work::Whirl) => Some(t),
            _ => None,
        }
    }

    /// Radial stock of a section, mm.
    pub fn stock_mm(&self, section: &Section) -> f64 {
        (self.job.stock.diameter_mm - section.smallest_turned_mm()) / 2.0
    }

    /// The travels that turn a section from bar to size, in order; empty if there is no stock to remove. And the lag of a tandem that makes
    /// the last one.
    fn travels(&self, section: &Section, back: bool) -> (Vec<Travel>, Option<f64>) {
        let cutting = &self.job.cutting;
        let stock_mm = self.stock_mm(section);
        if stock_mm <= NO_STOCK_MM {
            return (Vec::new(), None);
        }
        let last = cutting.ap_finish_mm;
        let tools = self.cutters(section, back, stock_mm);
        let most = tools.one.map_or(0.0, |one| one.ap_max_mm);
        let wants_last = section.finish_pass && stock_mm > last + NO_STOCK_MM;
        let one_cut = stock_mm <= most * (1.0 + RULE_SLACK) && !wants_last;
        let at_once = |finish: Cutter| self.turned(section, &Cutters { finish, ..tools }, vec![vec![stock_mm]]);
        let whole = || at_once(tools.one.unwrap_or(tools.finish));
        match cutting.tools {
            // If the stock is no more than the finishing depth, no roughing is left.
            _ if stock_mm <= last + NO_STOCK_MM => (whole(), None),
            Tools::Opposed => (self.together(section, &tools), None),
            Tools::Tandem if !one_cut || Rig::asks_to_finish(section) => {
                let both = self.together(section, &tools);
                if self.tandem_cuts(section, back, &both).is_ok() {
                    return (both, Some(cutting.lag_mm));
                }
                // What asks for it has a last pass, if the whole section can be pulled back for it.
                let fine = Rig::asks_to_finish(section) && stock_mm > FINISHING_TO_MM;
                let passes = self.apart(section, &tools);
                let apart = !one_cut || fine && self.passes_fit(section, &passes);
                (if apart { passes } else { whole() }, None)
            }
            _ if one_cut => (whole(), None),
            _ => (self.apart(section, &tools), None),
        }
    }

    /// Depths of equal roughing travels that leave the last pass of a section, mm.
    fn roughed(&self, section: &Section, rough: &Cutter) -> Vec<Vec<f64>> {
        let depth_mm = self.stock_mm(section) - self.job.cutting.ap_finish_mm;
        let passes = (depth_mm / rough.ap_max_mm - RULE_SLACK).ceil().max(1.0);
        vec![vec![depth_mm / passes]; passes as usize]
    }

    /// Roughing travels and a last pass of its own.
    fn apart(&self, section: &Section, tools: &Cutters) -> Vec<Travel> {
        let mut depths = self.roughed(section, &tools.rough);
        depths.push(vec![self.job.cutting.ap_finish_mm]);
        self.turned(section, tools, depths)
    }

    /// The same with the last pass by a second tool in the last roughing travel.
    pub fn together(&self, section: &Section, tools: &Cutters) -> Vec<Travel> {
        let mut depths = self.roughed(section, &tools.rough);
        depths.last_mut().into_iter().for_each(|travel| travel.push(self.job.cutting.ap_finish_mm));
        self.turned(section, tools, depths)
    }

    /// Whether a section can be cut with several travels without a border inside.
    fn passes_fit(&self, section: &Section, travels: &[Travel]) -> bool {
        let whole = section.length_mm();
        self.job.holding == Holding::NoBush || self.longest_pull_back_mm(section, travels) >= whole * (1.0 - RULE_SLACK)
    }

    /// Whether a section that is cut at once could have a last pass without a border inside.
    pub fn last_pass_fits(&self, section: &Section, back: bool) -> bool {
        let tools = self.cutters(section, back, self.stock_mm(section));
        self.passes_fit(section, &self.apart(section, &tools))
    }

    /// Travels with the given depths of cut, each of the leading tool first.
    fn turned(&self, section: &Section, tools: &Cutters, depths: Vec<Vec<f64>>) -> Vec<Travel> {
        let count = depths.len();
        let mut before_mm = self.job.stock.diameter_mm;
        depths
            .into_iter()
            .enumerate()
            .map(|(i, depths_mm)| {
                let finishes = i + 1 == count;
                let cutters = match (depths_mm.len(), finishes) {
                    (2.., _) => vec![tools.rough, tools.beside],
                    (_, true) => vec![tools.finish],
                    (_, false) => vec![tools.rough],
                };
                let least = |of: fn(&Cutter) -> f64| cutters.iter().map(of).fold(f64::INFINITY, f64::min);
                let (feed_mm, vc_m_per_min) = (least(|c| c.feed_mm), least(|c| c.vc_m_per_min));
                let by_ra = cutters.last().filter(|_| finishes).map(|last| self.finishing_feed_mm(last, section));
                let feed_mm = by_ra.map_or(feed_mm, |by_ra| by_ra.min(feed_mm));
                let forces = self.travel_forces(&depths_mm, &cutters, feed_mm);
                let stiffness_n_per_mm = forces.cuts.iter().map(|c| c.stiffness_n_per_mm).collect();
                let feed_n = forces.cuts.iter().map(|c| c.feed_n).sum();
                let (net_radial_n, main_n) = (forces.net_radial_n, forces.main_n);
                let travel = Travel {
                    before_mm,
                    cutters,
                    feed_mm,
                    vc_m_per_min,
                    net_radial_n,
                    main_n,
                    feed_n,
                    depths_mm,
                    stiffness_n_per_mm,
                };
                before_mm -= 2.0 * travel.depths_mm.iter().sum::<f64>();
                travel
            })
            .collect()
    }

    /// Longest pull-back that keeps enough land of the bush on raw bar, mm.
    pub fn pull_back_by_land_mm(&self) -> f64 {
        self.job.machine.bush.as_ref().map_or(0.0, |b| b.gap_mm + b.land_mm - b.engagement_min_mm)
    }

    /// Smallest number of equal segments of a section with which both rules hold.
    fn pieces(&self, index: usize, section: &Section, travels: &[Travel]) -> Result<usize, Refused> {
        let length = section.length_mm();
        let longest = self.longest_pull_back_mm(section, travels).min(length);
        let pieces = (length / longest - RULE_SLACK).ceil().max(1.0);
        let refused =
            |rule, text| Refused { section: index, at_mm: section.from_mm, segments: pieces as usize, rule, text };
        let label = section.label(index);
        if !(longest > 0.0 && pieces <= MOST_SEGMENTS as f64) {
            return Err(refused("pull_back", say!("segments-pull-back", section = label)));
        }
        if pieces > 1.0 && section.interrupt == Interrupt::Never {
            let segments = format!("{pieces:.0}");
            let text = say!("segments-interrupt", section = label, travels = travels.len(), segments = segments);
            return Err(refused("interrupt", text));
        }
        Ok(pieces as usize)
    }

    /// Longest pull-back for which both rules hold, mm. The land rule gives an upper limit. The deflection grows with the length, so
    /// bisection finds the limit of the deflection rule.
    fn longest_pull_back_mm(&self, section: &Section, travels: &[Travel]) -> f64 {
        let obeys = |p: f64| {
            travels.iter().enumerate().skip(1).all(|(i, travel)| {
                let (change_mm, limit) = if i + 1 == travels.len() {
                    let limit = self.job.limits.tolerance_share * section.tolerance.width_mm();
                    (self.last_change_mm(p, travels), limit)
                } else {
                    (self.pull_back_change_mm(p, travel), travel.depths_mm.iter().sum())
                };
                change_mm <= limit * (1.0 + RULE_SLACK)
            })
        };
        let by_land = self.pull_back_by_land_mm();
        let whole = by_land.min(section.length_mm());
        if obeys(whole) {
            return whole;
        }
        let (mut good, mut bad) = (self.gap_mm().min(whole), whole);
        while bad - good > 1e-6 * bad {
            let middle = 0.5 * (good + bad);
            if obeys(middle) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        good
    }

    /// Change of the diameter along the last of several travels after a pull-back by `p`, or along the only travel of a tandem, mm.
    fn last_change_mm(&self, p_mm: f64, travels: &[Travel]) -> f64 {
        match travels.last() {
            Some(last) if self.job.cutting.tools == Tools::Tandem && last.depths_mm.len() > 1 => {
                self.tandem_change_mm(p_mm, travels)
            }
            Some(last) => self.pull_back_change_mm(p_mm, last),
            None => 0.0,
        }
    }

    /// Change of the diameter along a travel after a pull-back by `p`, `2 (δ(max(gap, p)) - δ(gap))`, mm.
    ///
    /// `δ` is the deflection at the end of an overhang ([`Overhang`]), for a bar with the diameter before the travel. The rest of the
    /// land supports the bar, with the springs of the bush at the ends of this contact length. Derived here.
    fn pull_back_change_mm(&self, p_mm: f64, travel: &Travel) -> f64 {
        let Some(bush) = &self.job.machine.bush else { return 0.0 };
        let spring_n_per_mm = n_per_mm(0.5 * bush.stiffness_n_per_um);
        let tip = |overhang_mm: f64| {
            let span_mm = bush.land_mm - (overhang_mm - bush.gap_mm).max(0.0);
            let bar = Overhang { diameter_mm: travel.before_mm, overhang_mm, span_mm, spring_n_per_mm };
            bar.tip_mm_per_n(&self.elastic)
        };
        2.0 * travel.net_radial_n * (tip(p_mm.max(bush.gap_mm)) - tip(bush.gap_mm))
    }
}

/// Index of the segment in cut at a turned length; a border belongs to the segment in front of it.
pub fn segment_at(segments: &[Segment], turned_mm: f64) -> usize {
    segments.partition_point(|s| s.to_mm < turned_mm).min(segments.len().saturating_sub(1))
}
