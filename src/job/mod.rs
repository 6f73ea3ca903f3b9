//! The job as plain data: what is made, from which bar, on which machine, how, and within which limits.
//!
//! Units are fixed by the names. The reader (`input`) validates every value once; afterwards a [`Job`] cannot be
//! wrong, so nothing below re-checks it. The types are `non_exhaustive`: outside this crate a job comes from the
//! reader only.

mod cutting;
pub mod engraving;
pub mod iso2768;
#[expect(clippy::indexing_slicing, reason = "the rows are as long as the table of steps")]
pub mod iso286;
pub mod iso6411;
mod limits;
mod machine;
pub mod materials;
mod order;
pub mod plan;
pub mod readings;
mod shaft;
pub mod thread;
mod tooling;
mod vary;
mod wishes;

pub use cutting::{Cutting, Holding, Tools};
pub use limits::{Limits, Objective, Planning, Rates, Scatter};
pub use machine::{Bush, Collet, CounterSpindle, Headstock, Machine, NoBush, PartOff, Sleeve};
pub use materials::Material;
pub use order::Order;
pub use shaft::{
    BackWork, End, Engraved, Feature, FeatureKind, Forming, Interrupt, Section, SectionKind, Shaft, Tapped, Tolerance,
};
pub use tooling::{BackPlace, Place, ToolPlaces, Turret};
pub use vary::{Range, Varied};
pub use wishes::{HandOverWish, NeverGrip, Wishes};

/// Two turned lengths closer than this are one, mm.
const SAME_MM: f64 = 1e-6;

/// Everything the planner needs to know.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Job {
    /// The finished part.
    pub shaft: Shaft,
    /// The bar it is made from.
    pub stock: Stock,
    /// The lathe.
    pub machine: Machine,
    /// Tools, speeds and feeds.
    pub cutting: Cutting,
    /// With or without the guide bush.
    pub holding: Holding,
    /// What counts as good enough.
    pub limits: Limits,
    /// How finely a plan is looked for.
    pub planning: Planning,
    /// What has been decided beforehand.
    pub wishes: Wishes,
    /// What the plan is to make best.
    pub objective: Objective,
    /// Cost rates, where given.
    pub rates: Option<Rates>,
    /// The order to be quoted, where there is one.
    pub order: Option<Order>,
    /// How inputs scatter.
    pub scatter: Scatter,
    /// Ranges of a family of parts, the length's first; empty for a single part. The values above are the nominal ones.
    pub vary: Vec<Range>,
    /// Things the reader assumed or lowered, in the order of the file; printed with the plan.
    pub notes: Vec<String>,
    /// `sha256:` and the hex digest of the job text and the machine text it names.
    pub input_digest: String,
}

impl Job {
    /// Turned length at which the part is parted off: the shaft plus the part-off width, in mm.
    pub fn parted_at_mm(&self) -> f64 {
        self.shaft.length_mm() + self.machine.part_off.width_mm
    }

    /// Bar that the headstock can no longer push through: its nearest place, its hold and the bar end, mm.
    pub fn out_of_reach_mm(&self) -> f64 {
        self.machine.headstock.nearest_mm + self.machine.headstock.hold_mm + self.machine.bar_end_mm
    }

    /// Bar that one part takes: the shaft, part-off and what is faced off its ends, in front at least what the machine file
    /// says, mm.
    pub fn piece_mm(&self) -> f64 {
        self.parted_at_mm() + self.machine.facing_mm.max(self.faced_mm(End::Front)) + self.faced_mm(End::Back)
    }

    /// What the job's features face off an end, mm.
    fn faced_mm(&self, at: End) -> f64 {
        let faced = self.shaft.features.iter().filter_map(|f| match f.kind {
            FeatureKind::Facing { depth_mm, end } if end == at => Some(depth_mm),
            _ => None,
        });
        faced.sum()
    }

    /// What is left of a bar after its last part, mm.
    pub fn remnant_mm(&self) -> f64 {
        self.stock.bar_length_mm - self.pieces_per_bar() as f64 * self.piece_mm()
    }

    /// Parts of a bar, `floor((bar - out of reach)/(L + part-off + facing))`.
    pub fn pieces_per_bar(&self) -> usize {
        // The slack keeps a bar that is an exact multiple from losing a piece to rounding.
        ((self.stock.bar_length_mm - self.out_of_reach_mm()) / self.piece_mm() + 1e-9).floor().max(0.0) as usize
    }
}

/// The bar.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Stock {
    /// Diameter in mm.
    pub diameter_mm: f64,
    /// Tolerance of the bar, for the sheet.
    pub tolerance: Option<Tolerance>,
    /// Length of a bar in mm.
    pub bar_length_mm: f64,
}
