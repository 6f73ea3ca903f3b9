//! A pressed length of the bar, and how much softer a load makes it.

/// Up to this share of the critical load the bar counts as stiff as without a load. Chosen here: it is then softer by no more than 5 %,
/// which is far less than what is known of the supports.
const COUNTS_FROM: f64 = 0.05;
/// Part of its stiffness that a bar at its critical load keeps, so that numbers stay finite. The check `buckling` refuses it anyway.
const LEAST_LEFT: f64 = 1e-3;

/// A pressed length.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pressed {
    /// Axial load, N; positive presses.
    pub load_n: f64,
    /// Load at which it buckles, N.
    pub critical_n: f64,
    /// Its middle, mm from the front face.
    pub at_mm: f64,
}

impl Pressed {
    /// No load.
    pub const NONE: Pressed = Pressed { load_n: 0.0, critical_n: f64::INFINITY, at_mm: 0.0 };

    /// Load as a share of the critical one.
    pub fn share(&self) -> f64 {
        if self.load_n > 0.0 { self.load_n / self.critical_n } else { 0.0 }
    }

    /// Of two the one nearer to its critical load.
    #[must_use]
    pub fn worse(self, other: Pressed) -> Pressed {
        if other.share() > self.share() { other } else { self }
    }
}

/// Part of its stiffness that a bar keeps under a share of its critical load: `1 - P/Pcr`, and 1 while the share is at most 5 %.
///
/// Deflections grow by the inverse of it, natural frequencies fall with its root. Source: beam-columns, Timoshenko & Gere, Theory of
/// Elastic Stability (from memory). It is exact for a deflection and a mode of the shape in which the bar buckles.
pub fn stiffness_left(share: f64) -> f64 {
    if share <= COUNTS_FROM { 1.0 } else { (1.0 - share).max(LEAST_LEFT) }
}

/// Axial force of the tools along a segment.
#[derive(Debug, Clone, PartialEq)]
pub struct Feed {
    /// Front end, mm.
    pub from_mm: f64,
    /// Rear end, mm.
    pub to_mm: f64,
    /// Largest feed force of all travels, N.
    pub load_n: f64,
    /// Least diameter before a travel, mm.
    pub before_mm: f64,
    /// The overhang in front of the bush in the travel that presses it most.
    pub overhang: Pressed,
}
