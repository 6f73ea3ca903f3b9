//! Axial forces that press the bar: the load at which a part of it buckles, and how much softer the bar gets.
//!
//! The tool feeds towards the headstock. So its feed force, and the thrust of work on the front end, presses the bar between tool and
//! headstock collet. A counter-spindle that keeps an axial force pulls on the gripped shaft or presses it, and a centre presses it.
//! Each pressed length counts as a column of its weakest diameter with the ends that the machine gives (`mechanics::column`). A column
//! that is thicker in parts is stiffer, so this is on the safe side.

use super::pressed::{Feed, Pressed};
use super::rig::Rig;
use super::segments::Work;
use super::state::{Counter, Guide, State};
use crate::job::Holding;
use crate::mechanics::column::{on_supports_n, overhang_n, slope_of_hold};
use crate::units::n_per_mm;

/// A state on the border of two segments belongs to both, mm.
const SAME_MM: f64 = 1e-6;

impl Rig<'_> {
    fn ei(&self, diameter_mm: f64) -> f64 {
        self.elastic.e_n_per_mm2 * self.elastic.inertia_mm4(diameter_mm)
    }

    /// The pressed length nearest to its critical load in a state during a cut. At a border of segments the larger feed force counts.
    pub fn pressed(&self, state: &State) -> Pressed {
        self.pressed_under(state, true)
    }

    /// As [`Rig::pressed`], while the tool does not cut: only the counter-spindle presses.
    pub fn pressed_standing(&self, state: &State) -> Pressed {
        self.pressed_under(state, false)
    }

    fn pressed_under(&self, state: &State, cuts: bool) -> Pressed {
        match state.guide {
            Guide::Bush { headstock_mm } => {
                let (front, load_n) = self.pressed_in_front(state.turned_mm, state.counter, cuts);
                front.worse(self.pressed_behind(self.guide_face_mm(state), headstock_mm, load_n))
            }
            Guide::Collet { .. } => self.pressed_without_bush(state, cuts),
            Guide::Parted => Pressed::NONE,
        }
    }

    /// The worst pressed length in front of the bush face, and the load on the bar behind the bush, N.
    ///
    /// A grip could take a part of the feed force as a pull. How much is not known, so the headstock takes all of it; only a force that
    /// the counter-spindle keeps counts. In front of the bush the bar stands out by the gap, after a pull-back by the segment.
    pub fn pressed_in_front(&self, turned_mm: f64, counter: Counter, cuts: bool) -> (Pressed, f64) {
        let pull_n = self.pull_n(counter);
        let (mut front, mut feed_n) = (Pressed::NONE, 0.0f64);
        for feed in self.feeds_at(turned_mm).filter(|_| cuts) {
            front = front.worse(Pressed { at_mm: turned_mm, ..feed.overhang });
            feed_n = feed_n.max(feed.load_n);
        }
        if let (Some(from_mm), true) = (counter.span_from_mm(), pull_n < 0.0) {
            let face_mm = turned_mm + self.gap_mm();
            let bush = self.job.machine.bush.as_ref().map_or(0.0, |b| b.stiffness_n_per_um);
            let critical_n = self.span_n(counter, face_mm, self.weakest_mm(from_mm, turned_mm), (0.0, bush));
            front = front.worse(Pressed { load_n: -pull_n, critical_n, at_mm: 0.5 * (from_mm + face_mm) });
        }
        (front, (feed_n - pull_n).max(0.0))
    }

    /// Critical load of the raw bar between bush and headstock, N. The headstock collet holds its place and resists its slope; the land
    /// of the bush holds its place only, because the bar has play in it.
    pub fn critical_behind_n(&self, headstock_mm: f64) -> f64 {
        let (machine, ei) = (&self.job.machine, self.ei(self.job.stock.diameter_mm));
        let free_mm = headstock_mm - self.land_mm();
        let head = &machine.headstock;
        let bush = machine.bush.as_ref().map_or(0.0, |b| b.stiffness_n_per_um);
        let slope = slope_of_hold(n_per_mm(head.stiffness_n_per_um), head.hold_mm, ei);
        on_supports_n(ei, free_mm, [slope, 0.0], [head.stiffness_n_per_um, bush].map(end_of_hold))
    }

    fn pressed_behind(&self, face_mm: f64, headstock_mm: f64, load_n: f64) -> Pressed {
        if load_n <= 0.0 {
            return Pressed::NONE;
        }
        let at_mm = face_mm + 0.5 * (self.land_mm() + headstock_mm);
        Pressed { load_n, critical_n: self.critical_behind_n(headstock_mm), at_mm }
    }

    /// Without a bush the bar stands out of the headstock collet. A grip holds its front too; then it cannot buckle earlier than the bar
    /// between both collets under the whole load, nor earlier than without the grip.
    fn pressed_without_bush(&self, state: &State, cuts: bool) -> Pressed {
        let (stock_mm, head) = (self.job.stock.diameter_mm, &self.job.machine.headstock);
        let (mut feed_n, mut before_mm) = (0.0f64, stock_mm);
        for feed in self.feeds_at(state.turned_mm).filter(|_| cuts) {
            (feed_n, before_mm) = (feed_n.max(feed.load_n), before_mm.min(feed.before_mm));
        }
        let pull_n = self.pull_n(state.counter);
        let load_n = (feed_n - pull_n).max(0.0);
        if load_n <= 0.0 {
            return Pressed::NONE;
        }
        let face_mm = self.guide_face_mm(state);
        let slope = slope_of_hold(n_per_mm(head.stiffness_n_per_um), head.hold_mm, self.ei(stock_mm));
        let free_n = overhang_n(self.ei(before_mm), face_mm - state.turned_mm, slope);
        let alone = Pressed { load_n, critical_n: free_n, at_mm: 0.5 * (state.turned_mm + face_mm) };
        let Some(from_mm) = state.counter.span_from_mm() else { return alone };
        let weakest = before_mm.min(self.weakest_mm(from_mm, state.turned_mm));
        let held_n = self.span_n(state.counter, face_mm, weakest, (slope, head.stiffness_n_per_um));
        // A force of the counter-spindle presses the whole span, the feed force only the part behind the tool.
        let critical_n = if pull_n < 0.0 { held_n } else { held_n.max(free_n) };
        Pressed { load_n, critical_n, at_mm: 0.5 * (from_mm + face_mm) }
    }

    /// Critical load of the span between a grip or a centre and the guide behind it, N. `rear`: how the guide resists a slope
    /// (N·mm/rad), and its stiffness (N/µm).
    fn span_n(&self, front: Counter, face_mm: f64, diameter_mm: f64, rear: (f64, f64)) -> f64 {
        let grip = self.job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.stiffness_n_per_um);
        let ei = self.ei(diameter_mm);
        // A centre has all of its stiffness at its tip, and holds no slope.
        let (slope, front_n_per_mm) = match (front, self.centre()) {
            (Counter::Centre, Some(centre)) => (0.0, n_per_mm(centre.stiffness_n_per_um)),
            _ => (slope_of_hold(n_per_mm(grip), self.hold_mm(), ei), end_of_hold(grip)),
        };
        let length_mm = face_mm - front.span_from_mm().unwrap_or(0.0);
        on_supports_n(ei, length_mm, [slope, rear.0], [front_n_per_mm, end_of_hold(rear.1)])
    }

    /// The bar under work on the front end that presses most. It is done before the first cut: the headstock is at its farthest place,
    /// and the bar stands out by no more than the gap.
    pub fn pressed_by_front_work(&self) -> Pressed {
        let loads = self.tasks().into_iter().filter(|t| !t.cross).map(|t| t.axial_n);
        let load_n = loads.fold(0.0, f64::max);
        if load_n <= 0.0 {
            return Pressed::NONE;
        }
        let (head, gap_mm) = (&self.job.machine.headstock, self.gap_mm());
        let bush = self.job.holding == Holding::Bush;
        let ei = self.ei(self.job.stock.diameter_mm);
        let slope = match bush {
            true => self.slope_of_land(0.0),
            false => slope_of_hold(n_per_mm(head.stiffness_n_per_um), head.hold_mm, ei),
        };
        let critical_n = overhang_n(ei, gap_mm, slope);
        let out = Pressed { load_n, critical_n, at_mm: 0.0 };
        if bush { out.worse(self.pressed_behind(gap_mm, head.farthest_mm(), load_n)) } else { out }
    }

    /// The part behind the last grip under an axial force on its rear end, N.
    pub fn pressed_on_the_rear(&self, nose_mm: f64, load_n: f64) -> Pressed {
        let length = self.job.shaft.length_mm();
        let grip = self.job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.stiffness_n_per_um);
        let ei = self.ei(self.weakest_mm(nose_mm, length));
        let slope = slope_of_hold(n_per_mm(grip), self.hold_mm(), ei);
        let critical_n = overhang_n(ei, length - nose_mm, slope);
        Pressed { load_n, critical_n, at_mm: 0.5 * (nose_mm + length) }
    }

    /// Force that the counter-spindle keeps on the shaft with its closed collet or its centre, N; positive pulls.
    fn pull_n(&self, counter: Counter) -> f64 {
        match (counter, &self.job.machine.counter_spindle) {
            (Counter::Holds { .. }, Some(spindle)) => spindle.axial_load_n,
            (Counter::Centre, Some(spindle)) => -spindle.centre.map_or(0.0, |c| c.force_n),
            _ => 0.0,
        }
    }

    /// Least diameter of the finished shaft between two places, mm; that of the bar if there is none.
    fn weakest_mm(&self, from_mm: f64, to_mm: f64) -> f64 {
        let within = self.profile.slices.iter().filter(|s| s.to_mm > from_mm + SAME_MM && s.from_mm < to_mm - SAME_MM);
        within.map(|s| s.diameter_mm).fold(self.job.stock.diameter_mm, f64::min)
    }

    /// Stiffness with which the land of the bush resists a slope when a part of it has no raw bar, N·mm/rad.
    fn slope_of_land(&self, empty_mm: f64) -> f64 {
        let ei = self.ei(self.job.stock.diameter_mm);
        let land = |b: &crate::job::Bush| slope_of_hold(n_per_mm(b.stiffness_n_per_um), b.land_mm - empty_mm, ei);
        self.job.machine.bush.as_ref().map_or(0.0, land)
    }

    fn feeds_at(&self, turned_mm: f64) -> impl Iterator<Item = &Feed> {
        let feeds = self.feeds.get_or_init(|| self.worked_out_feeds());
        let rest = feeds.partition_point(|f| f.to_mm < turned_mm - SAME_MM);
        feeds.iter().skip(rest).take_while(move |f| f.from_mm <= turned_mm + SAME_MM)
    }

    /// The feed forces of all segments that are turned along. The force of two tools is the sum of both.
    fn worked_out_feeds(&self) -> Vec<Feed> {
        let segments = self.segments().unwrap_or_default();
        let turned = segments.iter().filter(|s| matches!(s.work, Work::Turn | Work::Thread));
        let feed = |s: &super::Segment| {
            let stands_out = if s.travels.len() > 1 { self.gap_mm().max(s.length_mm()) } else { self.gap_mm() };
            let slope = self.slope_of_land(stands_out - self.gap_mm());
            let mut all = Feed {
                from_mm: s.from_mm,
                to_mm: s.to_mm,
                load_n: 0.0,
                before_mm: f64::INFINITY,
                overhang: Pressed::NONE,
            };
            for travel in &s.travels {
                let load_n = travel.feed_n;
                (all.load_n, all.before_mm) = (all.load_n.max(load_n), all.before_mm.min(travel.before_mm));
                if self.job.holding == Holding::Bush {
                    let critical_n = overhang_n(self.ei(travel.before_mm), stands_out, slope);
                    all.overhang = all.overhang.worse(Pressed { load_n, critical_n, at_mm: s.from_mm });
                }
            }
            all
        };
        turned.map(feed).collect()
    }
}

/// A support of a stiffness (N/µm) has half of it at the end where the column begins, N/mm.
fn end_of_hold(n_per_um: f64) -> f64 {
    0.5 * n_per_mm(n_per_um)
}
