//! A job on its machine with one counter-spindle collet: the data that all states need, computed once.

use super::pressed::Feed;
use super::profile::Profile;
use super::state::{Counter, Guide, State};
use super::supports;
use super::tool::BackTask;
use crate::job::{Collet, Holding, Job};
use crate::mechanics::beam::{Beam, Elastic, MERGE_MM, Spring};
use crate::mechanics::cutting::{Edge, Resistance};
use std::sync::OnceLock;

/// Number of equal parts into which the unsupported span is divided: its stiffness is computed at their ends at least.
pub const SPAN_POINTS: usize = 40;
/// Least number of elements over the front inside the counter-spindle, and below it behind the guide face. Tried, not derived: with
/// them the error of the first natural frequency of a uniform bar is below 0.1 % (tests of `tests/published/frequencies.rs`).
const FRONT_ELEMENTS: f64 = 14.0;
const REAR_ELEMENTS: f64 = 12.0;

/// A job with one collet.
#[derive(Debug, Clone)]
pub struct Rig<'a> {
    /// The job.
    pub job: &'a Job,
    /// The counter-spindle's collet; none if no counter-spindle is used.
    pub collet: Option<&'a Collet>,
    /// Elastic properties.
    pub elastic: Elastic,
    /// Cutting resistance.
    pub resistance: Resistance,
    /// Cutting edge.
    pub edge: Edge,
    /// Finished profile.
    pub profile: Profile,
    /// Work on the rear end, after part-off.
    pub back: Vec<BackTask>,
    /// Axial forces of the segments, worked out when first asked for.
    pub feeds: OnceLock<Vec<Feed>>,
}

impl<'a> Rig<'a> {
    /// Prepares a job with a collet.
    pub fn new(job: &'a Job, collet: Option<&'a Collet>) -> Rig<'a> {
        let m = &job.shaft.material;
        let mut rig = Rig {
            job,
            collet,
            elastic: supports::elastic(m, job.stock.bore_mm),
            resistance: Resistance {
                kc11_n_per_mm2: m.kc11_n_per_mm2,
                mc: m.mc,
                in_plane_share: job.cutting.in_plane_share,
                passive_floor: job.cutting.passive_floor,
            },
            edge: Edge {
                nose_radius_mm: job.cutting.nose_radius_mm,
                approach_rad: job.cutting.approach_deg.to_radians(),
            },
            profile: Profile::new(&job.shaft),
            back: Vec::new(),
            feeds: OnceLock::new(),
        };
        rig.back = rig.back_tasks();
        rig
    }

    /// What guides the bar behind the tool at a turned length. With a bush: the distance of the headstock, which was farthest at the last
    /// re-grip and has fed the bar since. Without a bush: the headstock's collet, set for the piece that ends at `piece_end_mm`.
    pub fn guide(&self, turned_mm: f64, last_regrip_mm: f64, piece_end_mm: f64) -> Guide {
        match self.job.holding {
            Holding::Bush => {
                let headstock_mm = self.job.machine.headstock.farthest_mm() - (turned_mm - last_regrip_mm);
                Guide::Bush { headstock_mm }
            }
            Holding::NoBush => Guide::Collet { stage_end_mm: piece_end_mm.max(turned_mm) },
        }
    }

    /// Distance from the tool tip to the bush face, mm; without a bush from the end of a piece to the headstock's nose.
    pub fn gap_mm(&self) -> f64 {
        let m = &self.job.machine;
        match self.job.holding {
            Holding::Bush => m.bush.as_ref().map_or(0.0, |b| b.gap_mm),
            Holding::NoBush => m.no_bush.as_ref().map_or(0.0, |n| n.collet_gap_mm),
        }
    }

    /// Length of the guiding land of the bush, mm; 0 without a bush.
    pub fn land_mm(&self) -> f64 {
        self.job.machine.bush.as_ref().map_or(0.0, |b| b.land_mm)
    }

    /// Length that the counter-spindle's collet holds, mm; 0 without a collet.
    pub fn hold_mm(&self) -> f64 {
        self.collet.map_or(0.0, |c| c.hold_mm)
    }

    /// Index of the section that a collet with its nose at `nose_mm` holds. The whole hold lies on one section. Its middle is used to find
    /// the section, because rounding of the places of shoulders could move an end to the next section.
    pub fn held_section(&self, nose_mm: f64) -> usize {
        self.job.shaft.section_at(nose_mm - 0.5 * self.hold_mm())
    }

    /// Diameter that a collet with its nose at `nose_mm` holds, mm.
    pub fn held_mm(&self, nose_mm: f64) -> f64 {
        self.job.shaft.sections.get(self.held_section(nose_mm)).map_or(0.0, |s| s.largest_mm())
    }

    /// The guide face: place of the first support behind the tool, mm. It is the bush face, the headstock's nose without a bush, or the
    /// rear end of a parted shaft.
    pub fn guide_face_mm(&self, state: &State) -> f64 {
        match state.guide {
            Guide::Bush { .. } => state.turned_mm + self.gap_mm(),
            Guide::Collet { stage_end_mm } => stage_end_mm + self.gap_mm(),
            Guide::Parted => self.job.shaft.length_mm(),
        }
    }

    /// Unsupported length, mm: from the nose of the grip, or from a free front face, to the first support behind the tool.
    pub fn unsupported_mm(&self, state: &State) -> f64 {
        self.guide_face_mm(state) - state.counter.grip_mm().unwrap_or(0.0)
    }

    /// Radial springs of a state.
    pub fn springs(&self, state: &State) -> Vec<Spring> {
        let face = self.guide_face_mm(state);
        supports::springs(&self.job.machine, self.hold_mm(), face, state.guide, state.counter)
    }

    /// Radial springs of a closed counter-spindle collet with its nose at a place.
    pub fn grip_springs(&self, nose_mm: f64) -> [Spring; 2] {
        let stiffness = self.job.machine.counter_spindle.as_ref().map_or(0.0, |c| c.stiffness_n_per_um);
        supports::both_ends(nose_mm - self.hold_mm(), nose_mm, stiffness)
    }

    /// Whether a run-out of the collet matters: it is known, and a section limits its own.
    pub fn wants_run_out(&self) -> bool {
        self.collet.is_some_and(|c| c.run_out_mm.is_some())
            && self.job.shaft.sections.iter().any(|s| s.run_out_mm.is_some())
    }

    /// Rear end of the beam of a state, mm.
    pub fn rear_end_mm(&self, state: &State) -> f64 {
        self.rear_of(state, &self.springs(state))
    }

    fn rear_of(&self, state: &State, springs: &[Spring]) -> f64 {
        let front = self.job.shaft.length_mm().min(self.guide_face_mm(state));
        springs.iter().map(|s| s.at_mm).fold(front, f64::max)
    }

    /// The beam of a state, from the front face to the rear end of the headstock's hold (or of the parted shaft).
    /// `extra_mm` are more places that must be nodes.
    pub fn beam(&self, state: &State, extra_mm: &[f64]) -> Beam {
        let springs = self.springs(state);
        let rear = self.rear_of(state, &springs);
        let mut points = Vec::with_capacity(112);
        self.front_points(state, rear, &mut points);
        points.extend(springs.iter().map(|s| s.at_mm));
        points.extend_from_slice(extra_mm);
        self.meshed(state, points, &springs)
    }

    /// The part of the beam from the nose of the grip (or from the front face) to the bush face, without the springs of collets: the
    /// spring at the nose belongs to the part inside the counter-spindle. With an open collet the mesh is as coarse as possible: only
    /// the deflection at the nose is needed then, and static answers are exact at nodes for any mesh.
    pub fn span_beam(&self, state: &State) -> Beam {
        let (face, turned) = (self.guide_face_mm(state), state.turned_mm);
        let from = state.counter.nose_mm().unwrap_or(0.0);
        let mut points = Vec::with_capacity(64);
        points.extend([from, face, turned]);
        points.extend(self.finisher_at_mm(state));
        points.extend(self.shoulders_mm(from, turned));
        if !matches!(state.counter, Counter::Open { .. }) {
            divide(from, face, SPAN_POINTS as f64, &mut points);
        }
        // The spring of a centre is at the front end of the span, and no other part has it.
        let springs = match state.counter {
            Counter::Centre => self.springs(&State { guide: Guide::Parted, ..*state }),
            _ => Vec::new(),
        };
        self.meshed(state, points, &springs)
    }

    /// The part of the beam inside the counter-spindle, with its springs for a closed or an open collet. It does not depend on the place
    /// of the tool.
    pub fn inside_beam(&self, counter: Counter) -> Option<Beam> {
        let nose_mm = counter.nose_mm()?;
        // This part lies completely in front of the tool, so it is turned, and the guide behind the tool is not part of it.
        let state = State { turned_mm: f64::INFINITY, counter, guide: Guide::Parted };
        let springs = self.springs(&state);
        let mut points = vec![0.0, nose_mm];
        points.extend(self.shoulders_mm(0.0, nose_mm));
        if !matches!(counter, Counter::Open { .. }) {
            divide(0.0, nose_mm, FRONT_ELEMENTS, &mut points);
        }
        points.extend(springs.iter().map(|s| s.at_mm));
        Some(self.meshed(&state, points, &springs))
    }

    /// Ends of the profile's cylinders between two places, mm.
    fn shoulders_mm(&self, from_mm: f64, to_mm: f64) -> impl Iterator<Item = f64> {
        let slices = &self.profile.slices;
        let first = slices.partition_point(|s| s.to_mm <= from_mm);
        slices[first..].iter().map(|s| s.to_mm).take_while(move |to| *to < to_mm)
    }

    /// The part of the beam behind the bush face, with its springs. Its axis is reversed: the first node is the rear end and the last
    /// node is the bush face.
    pub fn rear_beam_mirrored(&self, state: &State) -> Beam {
        let face = self.guide_face_mm(state);
        let mut springs = self.springs(state);
        springs.retain(|s| s.at_mm >= face - MERGE_MM);
        let rear = springs.iter().map(|s| s.at_mm).fold(face, f64::max);
        let mut points: Vec<f64> = springs.iter().map(|s| s.at_mm).collect();
        divide(face, rear, REAR_ELEMENTS, &mut points);
        for x in points.iter_mut().chain(springs.iter_mut().map(|s| &mut s.at_mm)) {
            *x = rear - *x;
        }
        let stock = self.job.stock.diameter_mm;
        Beam::new(&self.elastic, &mut points, |_| stock, &springs)
    }

    /// Nodes up to a rear end: the front inside the counter-spindle, the span, the bar behind the span, shoulders, the tool.
    fn front_points(&self, state: &State, rear: f64, points: &mut Vec<f64>) {
        let turned = state.turned_mm.min(rear);
        let face = self.guide_face_mm(state);
        let span_from = state.counter.grip_mm().unwrap_or(0.0);
        // Most points are added in ascending order, because sorting a nearly sorted list is fast.
        divide(0.0, span_from, FRONT_ELEMENTS, points);
        divide(span_from, face.min(rear), SPAN_POINTS as f64, points);
        divide(face, rear, REAR_ELEMENTS, points);
        points.extend([0.0, rear, turned]);
        points.extend(self.finisher_at_mm(state));
        if let Counter::Open { nose_mm } = state.counter {
            points.push(nose_mm);
        }
        points.extend(self.shoulders_mm(0.0, turned));
    }

    fn meshed(&self, state: &State, mut points: Vec<f64>, springs: &[Spring]) -> Beam {
        let turned = state.turned_mm;
        let stock = self.job.stock.diameter_mm;
        let slices = &self.profile.slices;
        let mut i = points.iter().copied().reduce(f64::min).map_or(0, |x| slices.partition_point(|s| s.to_mm <= x));
        Beam::new(
            &self.elastic,
            &mut points,
            |s| {
                if s >= turned {
                    return stock;
                }
                while i + 1 < slices.len() && slices[i].to_mm <= s {
                    i += 1;
                }
                match slices.get(i) {
                    Some(slice) if s < slice.to_mm => slice.diameter_mm,
                    _ => stock,
                }
            },
            springs,
        )
    }
}

fn divide(from: f64, to: f64, pieces: f64, points: &mut Vec<f64>) {
    if to > from {
        points.extend((0..=pieces as usize).map(|i| from + (to - from) * i as f64 / pieces));
    }
}
