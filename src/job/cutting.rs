//! Tools, speeds and feeds.

/// How the bar is held.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Holding {
    /// Guided by the bush next to the tool.
    Bush,
    /// By the headstock collet alone.
    NoBush,
}

impl Holding {
    /// The word of the job file.
    pub fn key(self) -> &'static str {
        match self {
            Holding::Bush => "bush",
            Holding::NoBush => "no_bush",
        }
    }
}

/// What the counter-spindle does with the front of the part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Hold {
    /// Its collet takes the finished front, or the front stays free.
    Collet,
    /// A centre in it supports the centre hole of the front face while the whole part is turned.
    Centre,
}

impl Hold {
    /// The word of the job file.
    pub const fn key(self) -> &'static str {
        match self {
            Hold::Collet => "collet",
            Hold::Centre => "centre",
        }
    }
}

/// One tool, or two that cut at the same time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Tools {
    /// One tool.
    Single,
    /// A roughing tool leads, and a finishing tool follows it on the other side.
    Opposed,
    /// A finishing tool follows a roughing tool in the same travel, where a section asks for it.
    Tandem,
}

impl Tools {
    /// The word of the job file.
    pub fn key(self) -> &'static str {
        match self {
            Tools::Single => "single",
            Tools::Opposed => "opposed",
            Tools::Tandem => "tandem",
        }
    }
}

/// On which side of the bar the finishing tool of a tandem stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// On the side of the roughing tool, on a slide of its own.
    Same,
    /// On the other side of the bar.
    Opposite,
}

impl Side {
    /// The word of the job file.
    pub fn key(self) -> &'static str {
        match self {
            Side::Same => "same",
            Side::Opposite => "opposite",
        }
    }
}

/// The finishing tool of a tandem. It has the feed of the roughing tool, because both cut in one travel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Finisher {
    /// Where it stands.
    pub side: Side,
    /// Nose radius in mm.
    pub nose_radius_mm: f64,
    /// Approach angle in degrees.
    pub approach_deg: f64,
}

/// How the part is cut.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Cutting {
    /// Single tool, opposed pair or tandem.
    pub tools: Tools,
    /// The finishing tool of a tandem; without the key it is on the same side and has the edge of the roughing tool.
    pub finisher: Finisher,
    /// Cutting speed in m/min.
    pub vc_m_per_min: f64,
    /// Feed in mm/rev. None: it follows from the roughness.
    pub feed_mm: Option<f64>,
    /// Nose radius in mm.
    pub nose_radius_mm: f64,
    /// Approach angle in degrees.
    pub approach_deg: f64,
    /// Largest depth of cut of a roughing travel in mm.
    pub ap_max_mm: f64,
    /// Depth of the last pass in mm.
    pub ap_finish_mm: f64,
    /// Smallest share of the speed that slowing down may leave. 1 means never slow down.
    pub speed_floor: f64,
    /// How far the finishing tool of a pair or a tandem is behind the roughing tool, mm.
    pub lag_mm: f64,
    /// Least radial force that a pair leaves unbalanced, as a share of the larger radial force.
    pub unbalance: f64,
    /// In-plane force of each piece of the edge as a share of its main cutting force.
    pub in_plane_share: f64,
    /// Least passive force as a share of the main cutting force.
    pub passive_floor: f64,
    /// Real Ra as a multiple of the ideal one.
    pub ra_factor: f64,
    /// Ra that no feed goes below, µm.
    pub ra_floor_um: f64,
}
