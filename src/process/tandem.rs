//! Roughing and finishing: which sections ask for a finishing cut, and the tandem, two tools that rough and finish in one travel.
//!
//! The roughing tool leads, `gap` in front of the bush. The finishing tool stands `lag` farther from the bush and makes the size. At the
//! end of a segment the roughing tool lifts, the bar is fed on by `lag` until the finishing tool has come to the end too, and returns.
//! In front of the bush there is then raw bar behind the shoulder, so the return puts no turned surface into the bush: the land rule
//! asks nothing of it. It needs stroke of the headstock and travel of the counter-spindle (derived here).

use super::rig::Rig;
use super::segments::{Segment, Travel};
use super::state::{Guide, State};
use crate::job::{Holding, Interrupt, Section, SectionKind, Side, Tools};
use crate::lang::Measure;
use crate::mechanics::cutting::Edge;
use crate::mechanics::overhang::{Overhang, farther_mm_per_n};
use crate::say;
use crate::units::n_per_mm;

/// Number of equal parts of a travel at whose ends the deflection at the finishing tool is computed.
const PARTS: usize = 8;

/// Why a section is not cut by both tools of a tandem.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum NoTandem {
    /// There is no guide bush, so a last pass needs no pull-back and no second tool.
    NoBush,
    /// The machine lists no tools for it.
    NoTools,
    /// The diameter steps down at its front, so both tools would have to be back-turning tools.
    Back,
    /// The counter-spindle comes this near to the bush, mm: the finishing tool would stand in it.
    InCounterSpindle(f64),
    /// When the roughing tool lifts, the diameter changes by more than its limit, mm.
    Step([f64; 2]),
}

impl NoTandem {
    /// In a sentence.
    pub fn told(self) -> String {
        match self {
            NoTandem::NoBush => say!("tandem-no-bush"),
            NoTandem::NoTools => say!("tandem-no-tools"),
            NoTandem::Back => say!("tandem-back"),
            NoTandem::InCounterSpindle(nearest) => {
                say!("tandem-in-counter-spindle", nearest = Measure::Place.number(nearest))
            }
            NoTandem::Step([step, limit]) => {
                let um = |mm: f64| Measure::Micro.fixed(1000.0 * mm, 1);
                say!("tandem-step", step = um(step), limit = um(limit))
            }
        }
    }
}

impl Rig<'_> {
    /// Whether a section asks for a finishing cut: a tolerance of IT7 or finer, or Ra 0.8 µm or finer, as for `interrupt`.
    pub fn asks_to_finish(section: &Section) -> bool {
        let width_mm = section.tolerance.width_mm();
        let usual = Interrupt::usual(width_mm, section.largest_mm(), section.ra_um);
        usual == Interrupt::Never && !matches!(section.kind, SectionKind::Thread(_) | SectionKind::Groove { .. })
    }

    /// The edge of the finishing tool of a tandem.
    pub fn finishing_edge(&self) -> Edge {
        let finisher = &self.job.cutting.finisher;
        Edge { nose_radius_mm: finisher.nose_radius_mm, approach_rad: finisher.approach_deg.to_radians() }
    }

    /// Where the finishing tool of a tandem stands in a state, mm from the front face; none without a tandem. In front of the bar, or of
    /// the nose of the grip, nothing is cut: that end stands for it.
    pub fn finisher_at_mm(&self, state: &State) -> Option<f64> {
        let tandem = self.job.cutting.tools == Tools::Tandem && matches!(state.guide, Guide::Bush { .. });
        let front_mm = state.counter.nose_mm().unwrap_or(0.0);
        tandem.then(|| (state.turned_mm - self.job.cutting.lag_mm).max(front_mm.min(state.turned_mm)))
    }

    /// Whether both tools of a tandem can cut a section with these travels, the last one by both tools.
    ///
    /// # Errors
    /// Why they cannot.
    pub fn tandem_cuts(&self, section: &Section, back: bool, travels: &[Travel]) -> Result<(), NoTandem> {
        if self.job.holding == Holding::NoBush {
            return Err(NoTandem::NoBush);
        }
        if back {
            return Err(NoTandem::Back);
        }
        let counter = self.job.machine.counter_spindle.as_ref();
        if let Some(nearest_mm) = counter.map(|c| c.nearest_mm).filter(|n| *n < self.gap_mm() + self.job.cutting.lag_mm)
        {
            return Err(NoTandem::InCounterSpindle(nearest_mm));
        }
        // Behind a short pull-back the bar stands out no more than without one, so this is the least change of all.
        let least_mm = section.length_mm().min(self.gap_mm() + self.job.cutting.lag_mm);
        let change_mm = self.tandem_change_mm(if travels.len() > 1 { least_mm } else { section.length_mm() }, travels);
        let limit_mm = self.job.limits.tolerance_share * section.tolerance.width_mm();
        if change_mm > limit_mm && !matches!(section.kind, SectionKind::Thread(_)) {
            return Err(NoTandem::Step([change_mm, limit_mm]));
        }
        Ok(())
    }

    /// Why both tools of a tandem cannot cut a section; none if they can.
    pub fn no_tandem(&self, section: &Section, back: bool) -> Option<NoTandem> {
        let tools = self.cutters(section, back, self.stock_mm(section));
        self.tandem_cuts(section, back, &self.together(section, &tools)).err()
    }

    /// Change of the diameter along the last travel of a tandem over a segment of the length `p`, mm.
    ///
    /// It is twice the range of the deflection at the finishing tool. The finishing tool pushes there, the roughing tool `lag` nearer to
    /// the bush, to the same side or to the other one. While both cut after a pull-back, the bar stands out of the land by `u` at the
    /// roughing tool, from `max(gap, p - lag)`, when the finishing tool comes into the cut, to `gap`. Then the roughing tool lifts, and its
    /// force goes. In a segment not longer than `lag` it has lifted before the finishing tool cuts. Derived here.
    pub fn tandem_change_mm(&self, p_mm: f64, travels: &[Travel]) -> f64 {
        let lag = self.job.cutting.lag_mm;
        let (Some(bush), Some(travel)) = (&self.job.machine.bush, travels.last()) else { return 0.0 };
        let cuts = self.travel_forces(&travel.depths_mm, &travel.cutters, travel.feed_mm).cuts;
        let ([rough, finish], [depth_mm, _]) = (cuts.as_slice(), travel.depths_mm.as_slice()) else { return 0.0 };
        if p_mm <= lag {
            return 0.0;
        }
        let rough_n = match self.job.cutting.finisher.side {
            Side::Same => rough.passive_n,
            Side::Opposite => -rough.passive_n,
        };
        let between_mm = travel.before_mm - 2.0 * depth_mm;
        let spring_n_per_mm = n_per_mm(0.5 * bush.stiffness_n_per_um);
        let at = |u: f64, rough_n: f64| {
            let span_mm = bush.land_mm - (u - bush.gap_mm).max(0.0);
            let bar = Overhang { diameter_mm: travel.before_mm, overhang_mm: u, span_mm, spring_n_per_mm };
            let from_rough = bar.tip_mm_per_n(&self.elastic) + lag * bar.slope_per_n(&self.elastic);
            finish.passive_n * farther_mm_per_n(&self.elastic, &bar, lag, between_mm) + rough_n * from_rough
        };
        let gap = bush.gap_mm;
        let first = if travels.len() > 1 { (p_mm - lag).max(gap) } else { gap };
        let alone = at(gap, 0.0);
        let both = (0..=PARTS).map(|i| at(gap + (first - gap) * i as f64 / PARTS as f64, rough_n));
        let (least, most) = both.fold((alone, alone), |(least, most), mm| (least.min(mm), most.max(mm)));
        2.0 * (most - least)
    }

    /// Turned length up to which the bar is fed for what is cut in front of a stop at a turned length: with a tandem the bar runs out
    /// beyond the end of a segment, mm.
    pub fn runs_out_to_mm(&self, segments: &[Segment], turned_mm: f64) -> f64 {
        let ended = segments.iter().filter(|s| s.to_mm <= turned_mm + super::stops::SAME_MM);
        ended.filter_map(|s| Some(s.to_mm + s.lag_mm?)).fold(turned_mm, f64::max)
    }

    /// Time in which the finishing tool runs out at the end of a segment and the bar returns, if no travel may run faster than `cap_rpm`, s;
    /// 0 without a tandem.
    pub fn run_out_s(&self, segment: &Segment, gripped: bool, cap_rpm: f64) -> f64 {
        let (Some(lag_mm), Some(travel)) = (segment.lag_mm, segment.finishing()) else { return 0.0 };
        let rpm = self.segment_rpm(segment, gripped).min(cap_rpm);
        60.0 * lag_mm / (travel.feed_mm * rpm) + 60.0 * lag_mm / (1000.0 * self.job.machine.rapid_m_per_min)
    }
}
