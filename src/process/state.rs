//! The state of one moment: how far the bar is turned, what guides the bar behind the tool, and what holds its front.

/// What holds the front.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Counter {
    /// Nothing: the front is free.
    Away,
    /// The counter-spindle's collet is closed, with its nose at this place (mm from the front face).
    Holds {
        /// Nose, mm.
        nose_mm: f64,
    },
    /// The collet is open, with its nose at this place; only sleeves in the bore support the front.
    Open {
        /// Nose, mm.
        nose_mm: f64,
    },
    /// A centre presses into the centre hole of the front face.
    Centre,
}

impl Counter {
    /// Place of the nose of a closed collet, mm.
    pub fn grip_mm(self) -> Option<f64> {
        match self {
            Counter::Holds { nose_mm } => Some(nose_mm),
            _ => None,
        }
    }

    /// Place of the nose of a closed or an open collet, mm.
    pub fn nose_mm(self) -> Option<f64> {
        match self {
            Counter::Away | Counter::Centre => None,
            Counter::Holds { nose_mm } | Counter::Open { nose_mm } => Some(nose_mm),
        }
    }

    /// Front end of the span that is held at both ends: the nose of a closed collet, or the front face on a centre, mm. None: the front is
    /// free.
    pub fn span_from_mm(self) -> Option<f64> {
        match self {
            Counter::Centre => Some(0.0),
            other => other.grip_mm(),
        }
    }

    /// A grip with its nose at a place, or a free front.
    pub fn of(grip_mm: Option<f64>) -> Counter {
        grip_mm.map_or(Counter::Away, |nose_mm| Counter::Holds { nose_mm })
    }
}

/// What is behind the tool.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Guide {
    /// The guide bush, and the headstock with its nose at a distance from the bush face.
    Bush {
        /// Distance of the nose from the bush face, mm.
        headstock_mm: f64,
    },
    /// The headstock's collet alone, set for a stage (or a piece of it) that ends at this place (mm from the front face).
    Collet {
        /// End of the stage, mm.
        stage_end_mm: f64,
    },
    /// Nothing: the part is cut off.
    Parted,
}

/// Two places closer than this are equal, mm. This covers rounding of sums and of plans stored as text.
const SAME_MM: f64 = 1e-4;

/// One moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// Turned length, mm: the bar is finished in front of this place and raw behind it.
    pub turned_mm: f64,
    /// What holds the front.
    pub counter: Counter,
    /// What is behind the tool.
    pub guide: Guide,
}

impl State {
    /// Whether another state is equal, except for rounding of its places.
    pub fn is(&self, other: &State) -> bool {
        let near = |a: f64, b: f64| (a - b).abs() <= SAME_MM;
        let guide = match (self.guide, other.guide) {
            (Guide::Bush { headstock_mm: a }, Guide::Bush { headstock_mm: b }) => near(a, b),
            (Guide::Collet { stage_end_mm: a }, Guide::Collet { stage_end_mm: b }) => near(a, b),
            (Guide::Parted, Guide::Parted) => true,
            _ => false,
        };
        let grip = match (self.counter.nose_mm(), other.counter.nose_mm()) {
            (Some(a), Some(b)) => near(a, b),
            (a, b) => a.is_none() && b.is_none(),
        };
        guide && grip && near(self.turned_mm, other.turned_mm)
    }
}
