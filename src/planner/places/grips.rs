//! Where one collet may hold: lands, and the places of the nose that are tried on them.

use crate::planner::places::stations::Grid;
use crate::process::Rig;
use crate::process::stops::SAME_MM;

/// A stretch of the shaft in which the collet's nose may stand.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Land {
    /// Index of the section.
    pub section: usize,
    /// First place of the nose, mm.
    pub nose_from_mm: f64,
    /// Last place of the nose, mm.
    pub nose_to_mm: f64,
}

/// Lands of the rig's collet. A land lies on one plain cylinder that may be gripped and is within the collet's range,
/// and is clear of holes and keyseats. Everything in front passes the open collet, and the nose stands no deeper than
/// the bore.
pub fn lands(rig: &Rig<'_>) -> Vec<Land> {
    let (Some(collet), Some(counter)) = (rig.collet, &rig.job.machine.counter_spindle) else { return Vec::new() };
    let mut clear = rig.no_grip_stretches();
    clear.extend(rig.job.wishes.never_grip.iter().map(|n| (n.from_mm, n.to_mm)));
    let mut lands = Vec::new();
    for (index, section) in rig.job.shaft.sections.iter().enumerate() {
        let d = section.largest_mm();
        let fits = section.grip && section.is_plain() && collet.holds(d);
        if !fits || rig.profile.largest_in_front_mm(section.to_mm) > collet.passes_mm {
            continue;
        }
        for (from, to) in free_stretches(section.from_mm, section.to_mm, &clear) {
            let land =
                Land { section: index, nose_from_mm: from + collet.hold_mm, nose_to_mm: to.min(counter.bore_depth_mm) };
            if land.nose_to_mm >= land.nose_from_mm - SAME_MM {
                // A land exactly as long as the hold must not reach beyond its shoulder by rounding.
                lands.push(Land { nose_from_mm: land.nose_from_mm.min(land.nose_to_mm), ..land });
            }
        }
    }
    lands
}

/// The parts of `[from, to]` outside the `taken` stretches.
fn free_stretches(from: f64, to: f64, taken: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut taken: Vec<(f64, f64)> = taken.iter().copied().filter(|(a, b)| *b > from && *a < to).collect();
    taken.sort_by(|a, b| a.0.total_cmp(&b.0));
    let mut free = Vec::new();
    let mut at = from;
    for (a, b) in taken {
        if a > at {
            free.push((at, a));
        }
        at = at.max(b);
    }
    if to > at {
        free.push((at, to));
    }
    free
}

/// Places of the nose that are tried: both ends of every land, a grid on it no coarser than the station pitch, for
/// every station the place nearest to the bush that the counter-spindle's travel allows, and every wished place.
pub fn noses(rig: &Rig<'_>, grid: &Grid, lands: &[Land]) -> Vec<f64> {
    let Some(counter) = &rig.job.machine.counter_spindle else { return Vec::new() };
    let pitch = rig.job.planning.station_pitch_mm;
    let mut noses = Vec::new();
    for land in lands {
        let length = land.nose_to_mm - land.nose_from_mm;
        let pieces = (length / pitch).ceil().max(1.0);
        // The sum of a place and a length may lie beyond the shoulder by rounding.
        let on_land = |at: f64| at.min(land.nose_to_mm);
        noses.extend((0..=pieces as usize).map(|i| on_land(land.nose_from_mm + length * i as f64 / pieces)));
        let nearest = (0..grid.len()).map(|k| grid.at(k) + rig.gap_mm() - counter.nearest_mm);
        let wished = rig.job.wishes.hand_overs.iter().filter_map(|w| w.nose_mm);
        noses.extend(nearest.chain(wished).filter(|g| *g >= land.nose_from_mm && *g <= land.nose_to_mm));
    }
    noses.sort_by(f64::total_cmp);
    noses.dedup_by(|b, a| *b - *a < SAME_MM);
    noses
}
