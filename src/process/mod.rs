//! The machine at one moment: supports, checks, segments, speeds and times.
//!
//! Nothing here chooses; the planner chooses and the proof re-checks, both through this room.

pub mod answers;
pub mod checks;
pub mod features;
pub mod forces;
pub mod moment;
pub mod pace;
pub mod profile;
pub mod quote;
pub mod rig;
pub mod segments;
pub mod span;
pub mod speed;
pub mod state;
pub mod stops;
pub mod supports;
pub mod timing;
pub mod tool;
pub mod tooling;

pub use answers::{Answers, Posed};
pub use rig::Rig;
pub use segments::{Segment, Work};
pub use state::{Counter, Guide, State};
