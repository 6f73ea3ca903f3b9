//! A tool, and what it does to the rear end.

use crate::job::{BackWork, Place, Tools};

/// A tool; equal ones share a place.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Tool {
    /// Place it needs.
    pub place: Place,
    /// Name.
    pub name: String,
}

impl Tool {
    /// A tool.
    pub fn new(place: Place, name: impl Into<String>) -> Tool {
        Tool { place, name: name.into() }
    }

    /// What turns along the bar, the first of a pair.
    pub fn turning(tools: Tools) -> Tool {
        Tool::new(Place::Turning, if tools == Tools::Opposed { "roughing tool of the pair" } else { "turning tool" })
    }
}

/// A piece of work on the rear end, after part-off.
#[derive(Debug, Clone, PartialEq)]
pub struct BackTask {
    /// The work.
    pub work: BackWork,
    /// The tool.
    pub tool: Tool,
}
