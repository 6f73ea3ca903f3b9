//! The order that a quote is for.

/// An order.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Order {
    /// Pieces ordered.
    pub pieces: usize,
    /// Time to set up the machine, h.
    pub set_up_h: f64,
    /// Length of a shift, h.
    pub shift_h: f64,
    /// Share of the time in which the machine really runs.
    pub running_share: f64,
}
