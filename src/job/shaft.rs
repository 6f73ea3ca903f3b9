//! The finished part: sections from the front face to the part-off face, and features on them.

use super::materials::Material;
use super::thread::Thread;
use crate::lang::Measure;
use crate::say;

/// The finished shaft.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Shaft {
    /// Name on the drawing.
    pub name: String,
    /// Drawing number, if given.
    pub drawing: Option<String>,
    /// Revision of the drawing, if given.
    pub revision: Option<String>,
    /// Date for the sheet, if given.
    pub date: Option<String>,
    /// Material.
    pub material: Material,
    /// Sections from `s = 0` (front face, first out of the bush) to the part-off face, without gaps.
    pub sections: Vec<Section>,
    /// Holes, keyseats, centre holes.
    pub features: Vec<Feature>,
    /// Work on the rear end after part-off, in the counter-spindle, in addition to the features at that end.
    pub back_work: Vec<BackWork>,
    /// Bow left in the turned shaft, mm per m.
    pub bow_mm_per_m: f64,
}

impl Shaft {
    /// Length from the front face to the part-off face in mm.
    pub fn length_mm(&self) -> f64 {
        self.sections.last().map_or(0.0, |s| s.to_mm)
    }

    /// Whether the front face has a centre hole.
    pub fn has_front_centre_hole(&self) -> bool {
        self.features.iter().any(|f| matches!(f.kind, FeatureKind::CentreHole { end: End::Front, .. }))
    }

    /// Largest diameter of the finished part, mm.
    pub fn largest_mm(&self) -> f64 {
        self.sections.iter().map(Section::largest_mm).fold(0.0, f64::max)
    }

    /// Index of the section that contains `s`. A shoulder belongs to the section in front of it. `s <= 0` gives the
    /// first section, and `s` beyond the end gives the last.
    pub fn section_at(&self, s_mm: f64) -> usize {
        let i = self.sections.partition_point(|sec| sec.to_mm < s_mm);
        i.min(self.sections.len().saturating_sub(1))
    }
}

/// One section of the shaft.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Section {
    /// Name, if given.
    pub name: Option<String>,
    /// What it is.
    pub kind: SectionKind,
    /// Front end in mm from the front face.
    pub from_mm: f64,
    /// Rear end in mm from the front face.
    pub to_mm: f64,
    /// Tolerance on the diameter.
    pub tolerance: Tolerance,
    /// Wanted roughness Ra in µm.
    pub ra_um: Option<f64>,
    /// Largest run-out against the axis between grip and bush, the full reading, mm (ISO 1101), if given.
    pub run_out_mm: Option<f64>,
    /// Whether a last pass is made in any case.
    pub finish_pass: bool,
    /// Whether a collet may hold it.
    pub grip: bool,
    /// Whether the feed may be stopped inside it.
    pub interrupt: Interrupt,
    /// How a thread is made, if given.
    pub thread_by: Option<ThreadBy>,
    /// What its front and its rear edge get, if anything.
    pub edges: [Option<Edge>; 2],
    /// The surface that grinding makes of it later, if it is ground. Its kind, tolerance and roughness are the turned ones.
    pub ground: Option<Ground>,
}

/// An edge of a section that is not sharp.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Edge {
    /// A chamfer of 45°; its width, mm.
    Chamfer(f64),
    /// A rounded edge, or the fillet of a corner under a thicker section; its radius, mm.
    Radius(f64),
}

impl Edge {
    /// Length that it takes along the axis, mm.
    pub fn size_mm(&self) -> f64 {
        let (Edge::Chamfer(mm) | Edge::Radius(mm)) = self;
        *mm
    }

    /// Length of the path of the tool, mm.
    pub fn path_mm(&self) -> f64 {
        match self {
            Edge::Chamfer(mm) => mm * std::f64::consts::SQRT_2,
            Edge::Radius(mm) => mm * std::f64::consts::FRAC_PI_2,
        }
    }

    /// As on a drawing: `1×45°`, `R0.5`.
    pub fn told(&self) -> String {
        match self {
            Edge::Chamfer(mm) => format!("{}×45°", Measure::Size.number(*mm)),
            Edge::Radius(mm) => format!("R{}", Measure::Size.number(*mm)),
        }
    }
}

/// A ground surface.
#[derive(Debug, Clone, PartialEq)]
pub struct Ground {
    /// Diameter after grinding, mm.
    pub diameter_mm: f64,
    /// Its tolerance.
    pub tolerance: Tolerance,
    /// Its roughness Ra in µm, if given.
    pub ra_um: Option<f64>,
}

impl Section {
    /// Length in mm.
    pub fn length_mm(&self) -> f64 {
        self.to_mm - self.from_mm
    }

    /// The name. If there is none, `section N`, counted from 1.
    pub fn label(&self, index: usize) -> String {
        self.name.clone().unwrap_or_else(|| say!("section-number", number = index + 1))
    }

    /// Largest diameter that must pass through a collet, mm: the major diameter of a thread, the turned circle of
    /// flats.
    pub fn largest_mm(&self) -> f64 {
        match &self.kind {
            SectionKind::Cylinder { diameter_mm }
            | SectionKind::Groove { diameter_mm }
            | SectionKind::Knurl { diameter_mm } => *diameter_mm,
            SectionKind::Thread(t) => t.major_mm,
            SectionKind::Taper { front_mm, rear_mm } => front_mm.max(*rear_mm),
            SectionKind::Flats { circle_mm, .. } => *circle_mm,
        }
    }

    /// Smallest turned diameter in mm, to which the last tool turns. For a thread this is its major diameter; for a rolled
    /// one its pitch diameter, because the rolls press the crests up.
    pub fn smallest_turned_mm(&self) -> f64 {
        match &self.kind {
            SectionKind::Thread(t) if self.thread_by == Some(ThreadBy::Rolling) => t.flank_mm(),
            SectionKind::Taper { front_mm, rear_mm } => front_mm.min(*rear_mm),
            _ => self.largest_mm(),
        }
    }

    /// Turned diameter at the front end in mm.
    pub fn front_mm(&self) -> f64 {
        match &self.kind {
            SectionKind::Taper { front_mm, .. } => *front_mm,
            _ => self.largest_mm(),
        }
    }

    /// Turned diameter at the rear end in mm.
    pub fn rear_mm(&self) -> f64 {
        match &self.kind {
            SectionKind::Taper { rear_mm, .. } => *rear_mm,
            _ => self.largest_mm(),
        }
    }

    /// Diameter that carries the bending at `s`, mm: the minor diameter of a thread (ISO 68-1 / ISO 724), the circle
    /// across the flats, the diameter at the bottom of a groove. See "Beam" in docs/model.md.
    pub fn bending_mm(&self, s_mm: f64) -> f64 {
        match &self.kind {
            SectionKind::Cylinder { diameter_mm }
            | SectionKind::Groove { diameter_mm }
            | SectionKind::Knurl { diameter_mm } => *diameter_mm,
            SectionKind::Thread(t) => t.minor_mm(),
            SectionKind::Taper { front_mm, rear_mm } => {
                let u = ((s_mm - self.from_mm) / self.length_mm()).clamp(0.0, 1.0);
                front_mm + (rear_mm - front_mm) * u
            }
            SectionKind::Flats { across_flats_mm, .. } => *across_flats_mm,
        }
    }

    /// Whether it is one plain cylinder. A collet can grip nothing else.
    pub fn is_plain(&self) -> bool {
        matches!(self.kind, SectionKind::Cylinder { .. })
    }
}

/// What a section is. All diameters in mm.
#[derive(Debug, Clone, PartialEq)]
pub enum SectionKind {
    /// A plain cylinder.
    Cylinder {
        /// Diameter.
        diameter_mm: f64,
    },
    /// An external thread.
    Thread(Thread),
    /// A straight taper.
    Taper {
        /// Diameter at the front end.
        front_mm: f64,
        /// Diameter at the rear end.
        rear_mm: f64,
    },
    /// A groove, cut by plunging.
    Groove {
        /// Diameter at the bottom.
        diameter_mm: f64,
    },
    /// A knurl, rolled on a turned cylinder.
    Knurl {
        /// Diameter.
        diameter_mm: f64,
    },
    /// Flats milled on a turned cylinder.
    Flats {
        /// Distance between opposite flats.
        across_flats_mm: f64,
        /// Number of flats (2, 4, 6, 8).
        sides: u32,
        /// The turned circle: the given diameter, otherwise the circle across the corners.
        circle_mm: f64,
    },
}

/// Limits of a diameter.
#[derive(Debug, Clone, PartialEq)]
pub struct Tolerance {
    /// Lower deviation in mm.
    pub lower_mm: f64,
    /// Upper deviation in mm.
    pub upper_mm: f64,
    /// As written on a drawing: `h6`, `+0.02/-0.01`, `ISO 2768-m`.
    pub label: String,
}

impl Tolerance {
    /// Width in mm.
    pub fn width_mm(&self) -> f64 {
        self.upper_mm - self.lower_mm
    }

    /// As a drawing writes it: the class as it is, deviations in the units told.
    pub fn told(&self) -> String {
        let signed = |mm: f64| format!("{}{}", if mm > 0.0 { "+" } else { "" }, Measure::Size.number(mm + 0.0));
        if self.label.contains('/') {
            format!("{}/{}", signed(self.upper_mm), signed(self.lower_mm))
        } else {
            self.label.clone()
        }
    }
}

/// How a thread on the shaft is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ThreadBy {
    /// In passes with a single-point tool.
    SinglePoint,
    /// Whirled from the bar in one travel.
    Whirling,
    /// Pressed into a turned blank by two rolls as wide as the thread, from both sides.
    Rolling,
}

impl ThreadBy {
    /// All of them.
    pub const ALL: [ThreadBy; 3] = [ThreadBy::SinglePoint, ThreadBy::Whirling, ThreadBy::Rolling];

    /// The word of the job file.
    pub fn key(self) -> &'static str {
        match self {
            ThreadBy::SinglePoint => "single_point",
            ThreadBy::Whirling => "whirling",
            ThreadBy::Rolling => "rolling",
        }
    }
}

/// Whether the feed may be stopped inside a section.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Interrupt {
    /// Not at all: a witness line would spoil it.
    Never,
    /// Only if needed: it costs a penalty.
    Avoid,
    /// Freely.
    Free,
}

impl Interrupt {
    /// The word of the job file.
    pub fn key(self) -> &'static str {
        match self {
            Interrupt::Never => "never",
            Interrupt::Avoid => "avoid",
            Interrupt::Free => "free",
        }
    }
}

/// One feature.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Feature {
    /// What it is.
    pub kind: FeatureKind,
}

/// What a feature is.
#[derive(Debug, Clone, PartialEq)]
pub enum FeatureKind {
    /// A through hole across the shaft.
    CrossHole {
        /// Diameter in mm.
        diameter_mm: f64,
        /// Place in mm from the front face.
        at_mm: f64,
        /// Radial thrust in N, if given.
        thrust_n: Option<f64>,
    },
    /// A keyseat cut by a driven tool.
    Keyseat {
        /// Width in mm.
        width_mm: f64,
        /// Depth in mm.
        depth_mm: f64,
        /// Front end in mm.
        from_mm: f64,
        /// Rear end in mm.
        to_mm: f64,
    },
    /// A centre hole of ISO 6411.
    CentreHole {
        /// Designation as written, e.g. `A2.5`.
        designation: String,
        /// Pilot diameter in mm.
        pilot_mm: f64,
        /// Largest (countersink) diameter in mm.
        mouth_mm: f64,
        /// Which end.
        end: End,
    },
    /// An end faced off.
    Facing {
        /// Length faced off in mm.
        depth_mm: f64,
        /// Which end.
        end: End,
    },
    /// A hole on the axis.
    AxialHole {
        /// Diameter in mm.
        diameter_mm: f64,
        /// Depth in mm.
        depth_mm: f64,
        /// Which end.
        end: End,
    },
    /// A drilled and tapped hole.
    TappedHole {
        /// Its thread.
        thread: Thread,
        /// Where.
        place: Tapped,
    },
    /// A hexagon socket in an end.
    HexSocket {
        /// Distance between opposite flats in mm.
        across_flats_mm: f64,
        /// Depth in mm.
        depth_mm: f64,
        /// Depth of one stroke in mm.
        step_mm: f64,
        /// How it is made.
        forming: Forming,
        /// Which end.
        end: End,
    },
    /// A keyway in a bore, cut by shaving.
    Keyway {
        /// Width in mm.
        width_mm: f64,
        /// Depth in mm.
        depth_mm: f64,
        /// Length from the end in mm.
        length_mm: f64,
        /// Depth of one stroke in mm.
        step_mm: f64,
        /// Which end.
        end: End,
    },
    /// An engraved text.
    Engraving {
        /// The text.
        text: String,
        /// Height of the letters in mm.
        height_mm: f64,
        /// Depth in mm.
        depth_mm: f64,
        /// Where.
        place: Engraved,
    },
}

/// Where a tapped hole is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Tapped {
    /// A through hole across the shaft.
    Across {
        /// Place in mm from the front face.
        at_mm: f64,
    },
    /// On the axis, from an end.
    InEnd {
        /// Depth of the thread in mm.
        depth_mm: f64,
        /// Depth of the hole in mm.
        drill_depth_mm: f64,
        /// Which end.
        end: End,
    },
}

/// Where a text is engraved.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Engraved {
    /// On the outside, along the shaft.
    Along {
        /// Where the text begins, mm from the front face.
        from_mm: f64,
        /// Where it ends, mm.
        to_mm: f64,
    },
    /// On a face.
    Face {
        /// Which end.
        end: End,
    },
}

/// How a socket is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Forming {
    /// Shaved in fine strokes by a tool that does not turn.
    Shaved,
    /// Punched in one blow.
    Punched,
}

/// An end of the shaft.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum End {
    /// The front face.
    Front,
    /// The part-off face. Work on it is done after part-off, in the counter-spindle.
    Back,
}

/// Work on the rear end after part-off, while the counter-spindle holds the part.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct BackWork {
    /// What it is.
    pub name: String,
    /// Radial force on the part in N.
    pub radial_force_n: f64,
    /// Force along the shaft's axis in N.
    pub axial_force_n: f64,
    /// Torque about the shaft's axis in N·m.
    pub torque_nm: f64,
    /// Time in s.
    pub time_s: f64,
    /// Tolerance the work has to keep, mm.
    pub tolerance_mm: f64,
}

impl BackWork {
    /// Tolerance of work on the rear end if none is given, mm.
    pub const USUAL_TOLERANCE_MM: f64 = 0.1;
}
