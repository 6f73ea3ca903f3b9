//! Places for tools on a machine.

use crate::lang;

/// What kind of tool a place takes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Place {
    /// A turning tool beside the bar.
    Turning,
    /// A driven tool across the bar.
    CrossDriven,
    /// A tool that does not turn, in front of the bar.
    FrontFixed,
    /// A driven tool in front of the bar.
    FrontDriven,
    /// A tool that does not turn, for the rear end in the counter-spindle.
    BackFixed,
    /// A driven tool for the rear end.
    BackDriven,
    /// A whirling unit: a driven ring of inserts around the bar.
    Whirling,
}

impl Place {
    /// All of them.
    pub const ALL: [Place; 7] = [
        Place::Turning,
        Place::CrossDriven,
        Place::FrontFixed,
        Place::FrontDriven,
        Place::BackFixed,
        Place::BackDriven,
        Place::Whirling,
    ];

    /// The word of the machine file.
    pub fn key(self) -> &'static str {
        match self {
            Place::Turning => "turning",
            Place::CrossDriven => "cross_driven",
            Place::FrontFixed => "front_fixed",
            Place::FrontDriven => "front_driven",
            Place::BackFixed => "back_fixed",
            Place::BackDriven => "back_driven",
            Place::Whirling => "whirling",
        }
    }

    /// The tools that it takes, in a sentence.
    pub fn in_words(self) -> &'static str {
        match self {
            Place::Turning => lang::text("place-turning"),
            Place::CrossDriven => lang::text("place-cross-driven"),
            Place::FrontFixed => lang::text("place-front-fixed"),
            Place::FrontDriven => lang::text("place-front-driven"),
            Place::BackFixed => lang::text("place-back-fixed"),
            Place::BackDriven => lang::text("place-back-driven"),
            Place::Whirling => lang::text("place-whirling"),
        }
    }

    /// Whether it works on the rear end, in the counter-spindle.
    pub fn is_back(self) -> bool {
        matches!(self, Place::BackFixed | Place::BackDriven)
    }

    /// Whether a turret can take its tools.
    pub fn fits_turret(self) -> bool {
        !self.is_back() && self != Place::Whirling
    }

    /// Another place that can also take this tool: a driven one at the same end.
    pub fn driven_instead(self) -> Option<Place> {
        match self {
            Place::FrontFixed => Some(Place::FrontDriven),
            Place::BackFixed => Some(Place::BackDriven),
            _ => None,
        }
    }
}

/// A turret beside the bar: it takes turning, cross-driven and front tools.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Turret {
    /// Stations.
    pub stations: usize,
    /// Most tools that one station holds.
    pub tools_per_station: usize,
}

impl Turret {
    /// Number of tools that it holds.
    pub fn tools(self) -> usize {
        self.stations * self.tools_per_station
    }
}

/// The places of a machine.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct ToolPlaces {
    /// Places of each kind, in the order of [`Place::ALL`].
    pub places: [usize; 7],
    /// Whether turning tools are on both sides of the bar, so that two can cut at the same time.
    pub opposed: bool,
    /// Whether two turning tools on one side have slides of their own, so that one can lift while the other cuts.
    pub tandem: bool,
    /// The turret, if there is one.
    pub turret: Option<Turret>,
}

impl ToolPlaces {
    /// Places of a kind.
    pub fn of(&self, place: Place) -> usize {
        Place::ALL.iter().zip(self.places).find(|(p, _)| **p == place).map_or(0, |(_, places)| places)
    }
}

/// Where the rear end is worked on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BackPlace {
    /// In line with the headstock: the next part cannot begin meanwhile.
    InLine,
    /// Aside, with separate tools: meanwhile the free first stage of the next part is turned.
    Aside,
}
