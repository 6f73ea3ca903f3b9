//! `bore`: the front hanging inside the counter-spindle must not touch its bore, sagging and growing under rotation.

use super::super::rig::Rig;
use super::super::state::State;
use super::whip::grown;
use super::{Check, Finding};

/// Name of the check.
pub const NAME: &str = "bore";

/// Radial room in mm around the largest diameter in front of the nose, less the clearance kept; none while free.
pub fn room_mm(rig: &Rig<'_>, state: &State) -> Option<f64> {
    let nose = state.counter.grip_mm()?;
    let counter = rig.job.machine.counter_spindle.as_ref()?;
    let clear = (counter.bore_mm - rig.profile.largest_in_front_mm(nose - 0.5 * rig.hold_mm())) / 2.0;
    Some(clear - rig.job.limits.bore_clearance_mm)
}

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    find: |v| {
        let room = room_mm(v.rig, v.state)?;
        let demand = grown(v.answers.bore_sag_mm, v.rpm, v.answers.critical_rpm);
        Some(Finding::at_most(NAME, "mm", demand, room, v.answers.bore_sag_at_mm))
    },
};
