//! `bore`: the front inside the counter-spindle must not touch the bore. It sags, and rotation increases this bow.

use super::super::rig::Rig;
use super::super::state::State;
use super::speed_law::{Growth, SpeedLaw};
use super::{Check, Find, Says};
use crate::lang;
use crate::say;

/// Name of the check.
const NAME: &str = "bore";

/// Radial room around the largest diameter in front of the nose, minus the clearance to keep, mm; none while the front is free.
pub fn room_mm(rig: &Rig<'_>, state: &State) -> Option<f64> {
    let nose = state.counter.grip_mm()?;
    let counter = rig.job.machine.counter_spindle.as_ref()?;
    let clear = (counter.bore_mm - rig.profile.largest_in_front_mm(nose - 0.5 * rig.hold_mm())) / 2.0;
    Some(clear - rig.job.limits.bore_clearance_mm)
}

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-bore"),
    unit: "mm",
    says: Says {
        found: |_, demand, limit| say!("finding-bore", demand = demand, limit = limit),
        without_limit: Some(|| say!("finding-bore-no-room")),
    },
    lifted_by: &["bore", "bore_clearance", "rpm", "speed_floor", "sleeve", "straightness"],
    find: Find::BySpeed(|rig, state, answers| {
        let growth = Growth::Bow { at_rest_mm: answers.bore_sag_mm };
        Some(SpeedLaw {
            growth,
            limit: room_mm(rig, state)? / rig.job.limits.reserve.of(NAME),
            at_mm: answers.bore_sag_at_mm,
        })
    }),
};
