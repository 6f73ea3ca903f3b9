//! Kinds of changes that may save a job, and what they are worth to a shop: which it makes sooner.

/// A kind of change.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum ChangeKind {
    /// A wish of the job is dropped.
    Wish,
    /// The part turns more slowly.
    Speed,
    /// A lighter or a deeper cut, a smaller feed, more strokes.
    Cut,
    /// A second tool: an opposed pair or a tandem.
    Tools,
    /// With or without the guide bush, a collet or a centre at the front, less stroke of the headstock.
    Hold,
    /// Another way to make a thread or a socket.
    Method,
    /// The part is made from its other end.
    TurnRound,
    /// Another bar diameter.
    Bar,
    /// A straighter bar.
    Straightness,
    /// Another collet.
    Collet,
    /// The part falls into a tray.
    Tray,
    /// A stop is allowed on a surface.
    Stop,
    /// A grip is allowed on a surface.
    Grip,
    /// Sleeves in the counter-spindle.
    Sleeve,
    /// Work is done in a second set-up.
    SetUp,
    /// The drawing is changed.
    Drawing,
    /// Another machine of the shop.
    ShopMachine,
    /// A machine that can do more.
    Machine,
}

impl ChangeKind {
    /// All kinds, in the order in which they are listed.
    pub const ALL: [ChangeKind; 18] = [
        ChangeKind::Wish,
        ChangeKind::Speed,
        ChangeKind::Cut,
        ChangeKind::Tools,
        ChangeKind::Hold,
        ChangeKind::Method,
        ChangeKind::TurnRound,
        ChangeKind::Bar,
        ChangeKind::Straightness,
        ChangeKind::Collet,
        ChangeKind::Tray,
        ChangeKind::Stop,
        ChangeKind::Grip,
        ChangeKind::Sleeve,
        ChangeKind::SetUp,
        ChangeKind::Drawing,
        ChangeKind::ShopMachine,
        ChangeKind::Machine,
    ];
}

/// The price of each kind of change, in the order of [`ChangeKind::ALL`]. A price is a rank, no money: of two sets of changes the one with
/// the smaller sum of prices is told first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChangePrices(pub [f64; ChangeKind::ALL.len()]);

impl ChangePrices {
    /// The price of a kind.
    pub fn of(&self, kind: ChangeKind) -> f64 {
        let place = ChangeKind::ALL.iter().position(|known| *known == kind);
        place.and_then(|i| self.0.get(i)).copied().unwrap_or(f64::INFINITY)
    }
}
