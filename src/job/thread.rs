//! External ISO metric threads.

/// An external ISO metric thread, e.g. M16x1.5.
#[derive(Debug, Clone, PartialEq)]
pub struct Thread {
    /// As written.
    pub designation: String,
    /// Major diameter in mm.
    pub major_mm: f64,
    /// Pitch in mm.
    pub pitch_mm: f64,
}

/// `d - d3` over the pitch: the external root of ISO 68-1 / ISO 724 with its rounding, `17/24 · √3 · P = 1.22687 P`.
const ROOT_PER_PITCH: f64 = 1.226_87;

impl Thread {
    /// Minor diameter at the root, `d - 1.22687 P`, mm (ISO 68-1 / ISO 724, external root).
    pub fn minor_mm(&self) -> f64 {
        self.major_mm - ROOT_PER_PITCH * self.pitch_mm
    }
}
