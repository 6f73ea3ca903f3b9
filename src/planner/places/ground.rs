//! The job as the planner works on it.

use crate::process::Rig;
use crate::process::features::Task;
use crate::process::segments::Segment;

/// A job with one collet, its segments and its tasks.
#[derive(Debug, Clone, Copy)]
pub struct Ground<'a> {
    /// The rig.
    pub rig: &'a Rig<'a>,
    /// Its segments.
    pub segments: &'a [Segment],
    /// Its tasks.
    pub tasks: &'a [Task],
    /// Index of each task, and the turned length at which it is done, mm.
    pub moments: &'a [(usize, f64)],
    /// Turned lengths to look at besides the evenly spaced ones, mm.
    pub look_at_mm: &'a [f64],
}
