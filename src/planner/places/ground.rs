//! What a plan is found for, and settled against.

use crate::process::Rig;
use crate::process::features::Task;
use crate::process::segments::Segment;

/// A job with one collet, its cuts and its other work: what a plan is found for.
#[derive(Debug, Clone, Copy)]
pub struct Ground<'a> {
    /// The rig.
    pub rig: &'a Rig<'a>,
    /// Its segments.
    pub segments: &'a [Segment],
    /// Its tasks, and the turned lengths at which each is done.
    pub tasks: &'a [Task],
    /// Turned length of each task, mm.
    pub moments: &'a [(usize, f64)],
    /// Turned lengths to look at besides the even row of states, mm.
    pub look_at_mm: &'a [f64],
}
