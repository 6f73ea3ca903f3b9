//! The supports of the machine as radial springs, and the elastic properties of the bar for the beam.

use super::state::{Counter, Guide};
use crate::job::{Machine, Material};
use crate::mechanics::beam::{Elastic, Spring};
use crate::units::{n_per_mm, n_per_mm2, t_per_mm3};

/// Elastic properties of a bar with a bore (mm) in the units of the beam.
pub fn elastic(material: &Material, bore_mm: f64) -> Elastic {
    Elastic {
        e_n_per_mm2: n_per_mm2(material.e_gpa),
        poisson: material.poisson,
        density_t_per_mm3: t_per_mm3(material.density_kg_per_m3),
        bore_mm,
    }
}

/// The springs of a support with a length: half of its stiffness (N/µm) at each end, mm.
pub fn both_ends(front_mm: f64, rear_mm: f64, n_per_um: f64) -> [Spring; 2] {
    let n_per_mm = n_per_mm(0.5 * n_per_um);
    [Spring { at_mm: front_mm, n_per_mm }, Spring { at_mm: rear_mm, n_per_mm }]
}

/// Radial springs of the machine. Places are measured from the front face, mm.
///
/// A support with a length has half of its stiffness at each end (derived here): together they resist a shift as one spring would,
/// and they resist a tilt as a rigid sleeve that touches at both ends. An even contact over the length would resist a third of that tilt;
/// which of both a collet is nearer to is not measured.
///
/// - `hold_mm`: length that the counter-spindle's collet holds.
/// - `face_mm`: place of the first support behind the tool, the bush face or the headstock's nose.
pub fn springs(machine: &Machine, hold_mm: f64, face_mm: f64, guide: Guide, counter: Counter) -> Vec<Spring> {
    let mut springs = Vec::with_capacity(8);
    let pair = |list: &mut Vec<Spring>, a: f64, b: f64, k_n_per_um: f64| list.extend(both_ends(a, b, k_n_per_um));
    if let Some(spindle) = &machine.counter_spindle {
        if let (Counter::Centre, Some(centre)) = (counter, &spindle.centre) {
            springs.push(Spring { at_mm: 0.0, n_per_mm: n_per_mm(centre.stiffness_n_per_um) });
        }
        if let Counter::Holds { nose_mm } = counter {
            pair(&mut springs, nose_mm - hold_mm, nose_mm, spindle.stiffness_n_per_um);
        }
        if let (Counter::Holds { nose_mm } | Counter::Open { nose_mm }, Some(sleeve)) = (counter, &spindle.sleeve) {
            let mut at_mm = nose_mm - hold_mm - sleeve.pitch_mm;
            while at_mm >= 0.0 {
                springs.push(Spring { at_mm, n_per_mm: n_per_mm(sleeve.stiffness_n_per_um) });
                at_mm -= sleeve.pitch_mm;
            }
        }
    }
    let head = &machine.headstock;
    match guide {
        Guide::Bush { headstock_mm } => {
            let (land, k) = machine.bush.as_ref().map_or((0.0, 0.0), |b| (b.land_mm, b.stiffness_n_per_um));
            pair(&mut springs, face_mm, face_mm + land, k);
            let nose = face_mm + headstock_mm;
            pair(&mut springs, nose, nose + head.hold_mm, head.stiffness_n_per_um);
        }
        Guide::Collet { .. } => pair(&mut springs, face_mm, face_mm + head.hold_mm, head.stiffness_n_per_um),
        Guide::Parted => {}
    }
    springs
}
