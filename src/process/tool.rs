//! A tool, and a piece of work on the rear end with its tool.

use crate::job::{BackWork, Place, Tools};
use crate::say;

/// A tool. Equal tools are one tool and need one place.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Tool {
    /// Kind of place it needs.
    pub place: Place,
    /// Name.
    pub name: String,
}

impl Tool {
    /// A tool.
    pub fn new(place: Place, name: impl Into<String>) -> Tool {
        Tool { place, name: name.into() }
    }

    /// The tool that turns along the bar; of an opposed pair or a tandem the roughing tool.
    pub fn turning(tools: Tools) -> Tool {
        let opposed = tools == Tools::Opposed;
        Tool::new(Place::Turning, if opposed { say!("tool-roughing-of-pair") } else { say!("tool-turning") })
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
