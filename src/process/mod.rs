//! The machine at one moment: supports, checks, segments, speeds and times.
//!
//! This module makes no choices. The planner chooses and the proof checks again, and both use this module.

#[expect(clippy::indexing_slicing, reason = "nodes of a beam made here, and hot")]
pub mod answers;
pub mod axial;
mod centre;
pub mod checks;
pub mod cutter;
pub mod drive;
pub mod fall;
pub mod features;
pub mod forces;
pub mod moment;
#[expect(clippy::indexing_slicing, reason = "a step names a task by its index in the same list")]
pub mod pace;
pub mod pressed;
pub mod profile;
pub mod quote;
#[expect(clippy::indexing_slicing, reason = "slices are looked up by where their own list is parted, and it is hot")]
pub mod rig;
pub mod segments;
#[expect(clippy::indexing_slicing, reason = "nodes of a beam made here, and hot")]
pub mod span;
pub mod speed;
pub mod state;
#[expect(
    clippy::indexing_slicing,
    reason = "the segment at a place is one of those it is looked up in, its section one of the shaft"
)]
pub mod stops;
pub mod supports;
pub mod tandem;
pub mod timing;
pub mod tool;
#[expect(clippy::indexing_slicing, reason = "rooms are walked by index where one fills another")]
pub mod tooling;
pub mod twist;

pub use answers::{Answers, Posed};
pub use rig::Rig;
pub use segments::{Segment, Work};
pub use state::{Counter, Guide, State};
