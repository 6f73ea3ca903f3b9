//! The job as plain data: what is made, from which bar, on which machine, how, and within which limits.
//!
//! The name of a quantity gives its unit. The reader (`input`) checks every value once. After that a [`Job`] is valid,
//! and the code that uses it does not check it again. The types are `non_exhaustive`: outside this crate only the
//! reader can make a job.

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
mod prices;
pub mod readings;
#[expect(clippy::indexing_slicing, reason = "a place for each input, in the order of the list")]
pub mod scatter;
mod shaft;
pub mod shop;
pub mod thread;
mod tool_list;
mod tooling;
mod vary;
mod wishes;

pub use cutting::{Cutting, Finisher, Hold, Holding, Side, Tools};
pub use limits::{Limits, Objective, Planning, Rates, Reserve};
pub use machine::{Bush, BushKind, Centre, Collet, CounterSpindle, Headstock, Machine, NoBush, PartOff, Sleeve, Tray};
pub use materials::Material;
pub use order::Order;
pub use prices::{ChangeKind, ChangePrices};
pub use scatter::{Scatter, Spreads, Uncertain};
pub use shaft::{
    BackWork, Edge, End, Engraved, Feature, FeatureKind, Forming, Ground, Interrupt, Section, SectionKind, Shaft,
    Tapped, ThreadBy, Tolerance,
};
pub use shop::Nearby;
pub use tool_list::{CutData, Cuts, ListedTool, ToolKind};
pub use tooling::{BackPlace, Place, ToolPlaces, Turret};
pub use vary::{Range, Varied};
pub use wishes::{HandOverWish, NeverGrip, Wishes};

use crate::lang::{Language, Units};

/// Two turned lengths that differ by no more than this are the same, mm.
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
    /// The tools that there are, with their cuts in the material. Empty: one set of cutting numbers counts for all.
    pub tool_list: Vec<ListedTool>,
    /// With or without the guide bush.
    pub holding: Holding,
    /// What the counter-spindle does with the front.
    pub hold: Hold,
    /// What is good enough.
    pub limits: Limits,
    /// How finely the planner searches for a plan.
    pub planning: Planning,
    /// What the user has decided before planning.
    pub wishes: Wishes,
    /// What the planner optimises.
    pub objective: Objective,
    /// Cost rates, if given.
    pub rates: Option<Rates>,
    /// The order to be quoted, if there is one.
    pub order: Option<Order>,
    /// How inputs scatter.
    pub scatter: Scatter,
    /// Which changes the shop makes sooner.
    pub change_prices: ChangePrices,
    /// The language of texts and sheets; none: that of the reader.
    pub language: Option<Language>,
    /// The units of texts and sheets: those of the job, else of the shop.
    pub units: Units,
    /// The units that numbers in the job's file are in.
    pub written: Units,
    /// What else the shop has.
    pub nearby: Nearby,
    /// Ranges of a family of parts, the one of the length first. Empty for a single part. The values above are the
    /// nominal ones.
    pub vary: Vec<Range>,
    /// What the reader assumed or lowered, in the order of the file. Printed with the plan.
    pub notes: Vec<String>,
    /// Values that the job does not give: those of the shop's file, and the program's own.
    pub origins: Vec<plan::Origin>,
    /// `sha256:` and the hex digest of the job text, the text of its machine file, the values from the shop's file and the varied values.
    pub input_digest: String,
}

impl Job {
    /// Turned length at which the part is parted off: length of the shaft plus part-off width, in mm.
    pub fn parted_at_mm(&self) -> f64 {
        self.shaft.length_mm() + self.machine.part_off.width_mm
    }

    /// Changes the cutting speed (m/min). Speeds of listed tools change in the same proportion.
    pub fn set_vc(&mut self, vc_m_per_min: f64) {
        let share = vc_m_per_min / self.cutting.vc_m_per_min;
        self.cutting.vc_m_per_min = vc_m_per_min;
        let cuts = self.tool_list.iter_mut().flat_map(|tool| [&mut tool.cuts.rough, &mut tool.cuts.finish]);
        cuts.flatten().filter_map(|cut| cut.vc_m_per_min.as_mut()).for_each(|vc| *vc *= share);
    }

    /// Whether length and largest diameter of the part allow it to fall at part-off.
    pub fn small_enough_to_fall(&self) -> bool {
        let (length_mm, diameter_mm) = (self.shaft.length_mm(), self.shaft.largest_mm());
        self.machine.tray().is_none_or(|tray| tray.takes(length_mm, diameter_mm))
    }

    /// Length of bar that the headstock can no longer push through: its nearest place, its hold and the bar end, mm.
    pub fn out_of_reach_mm(&self) -> f64 {
        self.machine.headstock.nearest_mm + self.machine.headstock.hold_mm + self.machine.bar_end_mm
    }

    /// Length of bar that one part takes, mm: the shaft, the part-off, and what is faced off both ends. At the front
    /// this is at least the facing of the machine file.
    pub fn piece_mm(&self) -> f64 {
        self.parted_at_mm() + self.machine.facing_mm.max(self.faced_mm(End::Front)) + self.faced_mm(End::Back)
    }

    /// Length that the job's features face off an end, mm.
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

    /// Number of parts from one bar, `floor((bar - out of reach)/(L + part-off + facing))`. Derived here.
    pub fn pieces_per_bar(&self) -> usize {
        // The small addition keeps a bar that is an exact multiple from losing a piece to rounding.
        ((self.stock.bar_length_mm - self.out_of_reach_mm()) / self.piece_mm() + 1e-9).floor().max(0.0) as usize
    }
}

/// The bar.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Stock {
    /// Diameter in mm.
    pub diameter_mm: f64,
    /// Inner diameter of a hollow bar in mm; 0 for a solid one.
    pub bore_mm: f64,
    /// Tolerance of the bar, printed on the sheet.
    pub tolerance: Option<Tolerance>,
    /// Length of a bar in mm.
    pub bar_length_mm: f64,
    /// How the bar was made, if given.
    pub kind: Option<StockKind>,
}

impl Stock {
    /// Area of the bar's section, without its bore, mm².
    pub fn area_mm2(&self) -> f64 {
        let circle = |d: f64| std::f64::consts::PI * d * d / 4.0;
        circle(self.diameter_mm) - circle(self.bore_mm)
    }
}

/// How a bar was made: it says how straight it may be taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StockKind {
    /// Cold drawn.
    Drawn,
    /// Turned or peeled.
    Turned,
    /// Ground.
    Ground,
    /// Sold as straight enough for a fast bar feeder.
    BarFeeder,
}

impl StockKind {
    /// As written in a job.
    pub const fn key(self) -> &'static str {
        match self {
            StockKind::Drawn => "drawn",
            StockKind::Turned => "turned",
            StockKind::Ground => "ground",
            StockKind::BarFeeder => "bar_feeder",
        }
    }

    /// The bow to expect, mm per m: half of what a dial reads over a full turn.
    ///
    /// - Drawn and turned: EN 10278 allows 1.0 for stainless steels and 1.5 for steels of 0.25 % carbon and more, alloyed, or quenched
    ///   and tempered (as printed by a bar supplier); other metals count like the latter, common practice, no source.
    /// - Ground: pump-shaft quality is told as 0.04 to 0.25 (a bar grinder's page); the upper end.
    /// - Bar-feeder grade: a full turn reading of at most 0.58 (a bar-feeder maker's page), so a bow of 0.29.
    pub fn bow_mm_per_m(self, stainless: bool) -> f64 {
        match self {
            StockKind::Drawn | StockKind::Turned if stainless => 1.0,
            StockKind::Drawn | StockKind::Turned => 1.5,
            StockKind::Ground => 0.25,
            StockKind::BarFeeder => 0.29,
        }
    }
}
