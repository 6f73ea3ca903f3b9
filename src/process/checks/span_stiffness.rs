//! `span_stiffness`: the least lateral stiffness of a gripped span, a house limit.
//!
//! Nothing is cut at the softest place of the span, so its softness does no harm by itself: what it may lead to has checks of its own
//! (`whirl`, `whip`, `sag`). The limit is a habit of the trade (common practice, no source) for spans that need their grip. Where the
//! front could run free at the lowest speed allowed, a grip only makes the bar stiffer, and the limit does not apply.

use super::super::answers::Answers;
use super::super::rig::Rig;
use super::super::segments::Segment;
use super::super::speed::COUNT_GUARD;
use super::super::state::{Counter, State};
use super::{BY_SPEED, Check, Find, Finding, Says};
use crate::job::Tools;
use crate::lang;
use crate::say;

/// Name of the check.
pub const NAME: &str = "span_stiffness";
const UNIT: &str = "N/µm";

/// The check.
pub const CHECK: Check = Check {
    name: NAME,
    looks_at: || lang::text("help-check-span-stiffness"),
    unit: UNIT,
    says: Says {
        found: |_, demand, limit| say!("finding-span-stiffness", demand = demand, limit = limit),
        ..Says::AS_NAMED
    },
    lifted_by: &["span_stiffness_min", "tools", "bar", "collet"],
    find: Find::AtRest(|v| {
        if !applies(v.rig, v.state.counter) {
            return None;
        }
        let (value, limits) = (v.answers.span_n_per_um, &v.rig.job.limits);
        let limit = limits.span_stiffness_min_n_per_um * limits.reserve.of(NAME);
        let found = Finding::at_least(NAME, UNIT, value, limit, v.answers.span_at_mm);
        (found.passes() || !runs_free(v.rig, v.state, v.segment)).then_some(found)
    }),
};

/// Whether the span is judged: its front is held, and the tools do not balance. The forces of an opposed pair meet at the bar.
pub fn applies(rig: &Rig<'_>, counter: Counter) -> bool {
    rig.job.cutting.tools != Tools::Opposed && counter.span_from_mm().is_some()
}

/// Whether the front could run free in a state: at the lowest speed that the job allows for the segment, the checks that depend on the
/// speed pass without the grip.
fn runs_free(rig: &Rig<'_>, state: &State, segment: &Segment) -> bool {
    let free = State { counter: Counter::Away, ..*state };
    // The checks of the speed of a free front ask for no other answer.
    let answers = Answers { unsupported_mm: rig.unsupported_mm(&free), ..Answers::default() };
    // With the grip the spindles turn no faster than without it, and the slower of both counts.
    let slowest_rpm = rig.job.cutting.speed_floor * rig.segment_rpm(segment, true);
    let needed_rpm = rig.critical_needed_rpm(&free, &answers, slowest_rpm, [1.0; BY_SPEED]);
    rig.swings_above(&free, needed_rpm * (1.0 + COUNT_GUARD))
}
