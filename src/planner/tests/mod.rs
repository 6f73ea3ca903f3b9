//! The planner's insides against what is worked out another way: an exhaustive search, a search over a fine grid of places, another solver, the
//! full look at every state. What a user of the library sees of it is tested in `tests/`.

mod bounded;
mod defects;
mod export;
// Shared with the tests of `tests/`.
#[path = "../../../tests/jobs/mod.rs"]
pub(super) mod jobs;
mod lookers;
mod oracle;
mod orders;
mod placing;
#[path = "../../../tests/published/row.rs"]
mod row;
mod samples;
mod search;
mod steps;

use crate::job::{Collet, Job};

fn read(text: &str) -> Option<Job> {
    crate::input::read_job_text("random.yaml", text, ".".as_ref()).ok()
}

fn collets(job: &Job) -> Vec<Option<&Collet>> {
    let Some(counter) = &job.machine.counter_spindle else { return vec![None] };
    let mut all: Vec<_> = counter.collets.iter().map(Some).collect();
    if may_fall(job) {
        all.push(None);
    }
    all
}

/// Whether the part may be cut off with its front free, from the job alone.
fn may_fall(job: &Job) -> bool {
    let (longest, thickest) = match (&job.machine.part_off.tray, &job.machine.counter_spindle) {
        (Some(tray), _) => (tray.max_length_mm, tray.max_diameter_mm),
        (None, None) => return true,
        (None, Some(_)) => (30.0, 16.0),
    };
    let (mut length, mut thick) = (0.0, 0.0f64);
    for section in &job.shaft.sections {
        length += section.length_mm();
        thick = thick.max(section.largest_mm());
    }
    let worked_behind = |f: &crate::job::Feature| {
        use crate::job::{Engraved, FeatureKind as K};
        let end = match &f.kind {
            K::CentreHole { end, .. } | K::Facing { end, .. } | K::AxialHole { end, .. } => Some(*end),
            K::HexSocket { end, .. } | K::Keyway { end, .. } => Some(*end),
            K::Engraving { place: Engraved::Face { end }, .. } => Some(*end),
            K::TappedHole { place: crate::job::Tapped::InEnd { end, .. }, .. } => Some(*end),
            _ => None,
        };
        end == Some(crate::job::End::Back)
    };
    let rear = !job.shaft.back_work.is_empty() || job.shaft.features.iter().any(worked_behind);
    !rear && length <= longest + 1e-6 && thick <= thickest + 1e-6
}
