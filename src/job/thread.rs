//! Threads: ISO metric, unified inch, pipe (parallel) and trapezoidal, by their designations.

mod class;
mod read;
mod sizes;
mod write;

pub use class::Side;
pub use sizes::coarse_pitch_mm;

use crate::diag::Diag;
use crate::units::INCH_MM;

/// Depth of an external thread with a rounded root over its pitch, `17√3/48`: ISO 68-1 and ISO 724, `h3`; the same 60° profile
/// for unified threads (ASME B1.1).
pub const DEPTH_PER_PITCH: f64 = 0.613_435;
/// The same for the 55° profile of ISO 228-1.
const PIPE_DEPTH_PER_PITCH: f64 = 0.640_327;
/// Pitch diameter below the major diameter over the pitch, `3√3/8` (ISO 724, ASME B1.1).
const FLANK_PER_PITCH: f64 = 0.649_519;

/// The profile of a thread and the standard of its sizes.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// ISO metric, 60°: ISO 261, ISO 724.
    Metric,
    /// Unified inch, 60°: ASME B1.1.
    Unified(Series),
    /// Parallel pipe thread, 55°: ISO 228-1.
    Pipe,
    /// ISO metric trapezoidal, 30°: ISO 2902, ISO 2904.
    Trapezoidal,
}

/// A series of unified threads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Series {
    /// Coarse.
    Unc,
    /// Fine.
    Unf,
    /// Extra fine.
    Unef,
    /// Any other number of threads per inch.
    Uns,
}

impl Series {
    /// The word of a designation.
    pub fn word(self) -> &'static str {
        match self {
            Series::Unc => "UNC",
            Series::Unf => "UNF",
            Series::Unef => "UNEF",
            Series::Uns => "UNS",
        }
    }
}

/// A thread, e.g. M16x1.5-6g.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Thread {
    /// The whole designation in one form: `M16x1.5-6g-LH`, `1/4-20 UNC-2A`, `G1/4A`, `Tr20x8(P4)LH-7e`. A coarse metric pitch is left
    /// out, as ISO 261 allows. It reads back to the same thread.
    pub designation: String,
    /// Profile and standard.
    pub form: Form,
    /// Major diameter in mm.
    pub major_mm: f64,
    /// Pitch in mm: the distance from a ridge to the next.
    pub pitch_mm: f64,
    /// Number of starts.
    pub starts: u32,
    /// Whether it is a left-hand thread.
    pub left: bool,
    /// Tolerance class, if given: `6g`, `2A`. It changes nothing in the plan.
    pub class: Option<String>,
}

impl Thread {
    /// Reads a designation: `M16x1.5`, `M16`, `M20 x 1,5 - 6g`, `M16xPh3P1.5`, `1/4-20 UNC-2A`, `#10-32 UNF`, `G1/2A`, `Tr20x4-7e`,
    /// `Tr20x8(P4)`; each may have `LH`. A decimal comma is read as a point.
    ///
    /// - **Units**: mm; sizes of unified threads in inches.
    ///
    /// ```
    /// use spanhold::job::thread::Thread;
    /// assert_eq!(Thread::parse("M16")?.pitch_mm, 2.0);
    /// assert!((Thread::parse("M16x1.5")?.minor_mm() - 14.1597).abs() < 1e-4);
    /// assert_eq!(Thread::parse("m20 × 1,5 lh 6g")?.designation, "M20x1.5-6g-LH");
    /// assert_eq!(Thread::parse("Tr 20x8 (P4)")?.starts, 2);
    /// # Ok::<(), spanhold::diag::Diag>(())
    /// ```
    ///
    /// # Errors
    /// The text is not a designation, its standard has no such size, or the pitch does not suit the diameter.
    pub fn parse(text: &str) -> Result<Thread, Diag> {
        read::thread(text)
    }

    /// The thread, if its class is one for this side.
    ///
    /// # Errors
    /// The class is one of a nut on a shaft, or the other way round.
    pub fn on(self, side: Side) -> Result<Thread, Diag> {
        class::on(self, side)
    }

    /// Distance along the axis for one turn, mm.
    pub fn lead_mm(&self) -> f64 {
        self.pitch_mm * f64::from(self.starts)
    }

    /// Depth of the profile of an external thread, mm: `h3` of ISO 724 for both 60° profiles, `h` of ISO 228-1, `0.5 P + ac` of ISO
    /// 2904.
    pub fn depth_mm(&self) -> f64 {
        match self.form {
            Form::Metric | Form::Unified(_) => DEPTH_PER_PITCH * self.pitch_mm,
            Form::Pipe => PIPE_DEPTH_PER_PITCH * self.pitch_mm,
            Form::Trapezoidal => 0.5 * self.pitch_mm + sizes::crest_clearance_mm(self.pitch_mm),
        }
    }

    /// Minor diameter at the root of an external thread, mm.
    pub fn minor_mm(&self) -> f64 {
        self.major_mm - 2.0 * self.depth_mm()
    }

    /// Pitch diameter, mm. A thread is rolled on a blank of about this diameter.
    pub fn flank_mm(&self) -> f64 {
        let below = match self.form {
            Form::Metric | Form::Unified(_) => FLANK_PER_PITCH,
            Form::Pipe => PIPE_DEPTH_PER_PITCH,
            Form::Trapezoidal => 0.5,
        };
        self.major_mm - below * self.pitch_mm
    }

    /// Angle of the profile, degrees.
    pub fn angle_deg(&self) -> u32 {
        match self.form {
            Form::Metric | Form::Unified(_) => 60,
            Form::Pipe => 55,
            Form::Trapezoidal => 30,
        }
    }

    /// The standard of its sizes.
    pub fn standard(&self) -> &'static str {
        match self.form {
            Form::Metric => "ISO 261",
            Form::Unified(_) => "ASME B1.1",
            Form::Pipe => "ISO 228-1",
            Form::Trapezoidal => "ISO 2902",
        }
    }

    /// Whether its standard has this diameter with this pitch, as far as the tables here go (metric up to 64 mm, trapezoidal from 8
    /// to 60 mm); beyond them true.
    ///
    /// ```
    /// use spanhold::job::thread::Thread;
    /// assert!(Thread::parse("M16x1.5")?.is_usual() && !Thread::parse("M16x1.4")?.is_usual());
    /// # Ok::<(), spanhold::diag::Diag>(())
    /// ```
    pub fn is_usual(&self) -> bool {
        match self.form {
            Form::Metric => sizes::metric_has(self.major_mm, self.pitch_mm),
            Form::Unified(series) => series != Series::Uns,
            Form::Pipe => true,
            Form::Trapezoidal => sizes::trapezoidal_has(self.major_mm, self.pitch_mm),
        }
    }
}
