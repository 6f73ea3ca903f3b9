//! Turns drawings and tables into the text of a job: a draft that a person checks and completes.
//!
//! The steps for a drawing: file → lines, texts and dimensions in mm (`load`, `collect`) → axis and contour (`axis`) →
//! profile (`profile`) → sections (`sections`) → what the texts add (`labels`, `words`, `title`) → the job's text
//! (`yaml`). The dimensions give the scale (`scale`). A table is turned from rows into sections directly (`table`).
//! Nothing in the input is passed over in silence: what was not understood is reported, with what it is and where it
//! is.

#[expect(clippy::indexing_slicing, reason = "parts are lists of indices of the edges they were grouped from")]
mod axis;
mod census;
mod collect;
mod geometry;
mod headings;
mod labels;
mod load;
mod profile;
mod repeats;
mod scale;
mod sections;
mod table;
mod title;
mod words;
mod workbook;
mod yaml;

pub use load::DRAWING_MAX_MIB;
pub use yaml::{BAR_CLASS, bar_length_mm, usual_bar_mm};

/// Largest gap between the ends of two lines that is closed unless the call says more, mm.
pub const GAP_MM: f64 = 0.05;

use std::cell::Cell;
use std::collections::BTreeMap;
use std::panic::{UnwindSafe, catch_unwind};
use std::path::Path;

use crate::diag::Diag;
use crate::fields::SECTIONS_MAX;
use crate::input;
use crate::lang;
use crate::say;
use geometry::Point;
use sections::Section;
use title::Title;

thread_local! {
    /// Whether this thread is inside a library that reads a file.
    static READS: Cell<bool> = const { Cell::new(false) };
}

/// Whether a panic of this thread comes from a library that reads a broken file. It is then reported as an error in the
/// file, not as a defect of this program.
pub fn is_caught() -> bool {
    READS.get()
}

/// Lets a library read. None if the library panics: a broken file must not end this program in a panic.
fn caught<T>(read: impl FnOnce() -> T + UnwindSafe) -> Option<T> {
    READS.set(true);
    let done = catch_unwind(read);
    READS.set(false);
    done.ok()
}

/// The unit of a drawing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Units {
    /// Millimetres.
    Mm,
    /// Centimetres.
    Cm,
    /// Metres.
    M,
    /// Inches.
    Inch,
}

impl Units {
    /// Its length in mm.
    pub fn mm(self) -> f64 {
        match self {
            Units::Mm => 1.0,
            Units::Cm => 10.0,
            Units::M => 1000.0,
            Units::Inch => 25.4,
        }
    }

    /// In words.
    pub fn word(self) -> &'static str {
        match self {
            Units::Mm => "mm",
            Units::Cm => "cm",
            Units::M => "m",
            Units::Inch => lang::text("unit-inches"),
        }
    }
}

/// The options of the call.
#[derive(Debug, Clone, PartialEq)]
pub struct Options {
    /// Unit in place of the drawing's own.
    pub units: Option<Units>,
    /// Scale of the drawing: 0.5 for 1:2.
    pub scale: Option<f64>,
    /// Ends of lines up to this far apart are joined, mm.
    pub gap_mm: f64,
    /// Whether the front face is the right or upper end.
    pub flip: bool,
    /// Sheet of a workbook. None: the first sheet.
    pub sheet: Option<String>,
    /// Diameter of the bar, mm.
    pub stock_mm: Option<f64>,
    /// Path of the machine file, as it is to be written in the job.
    pub machine: Option<String>,
    /// Name of the material.
    pub material: Option<String>,
}

/// A draft of a job.
#[derive(Debug, Clone, PartialEq)]
pub struct JobText {
    /// The job's text.
    pub text: String,
    /// What was decided, used and not understood. The text of the job contains these notes too.
    pub notes: Vec<String>,
}

/// Drafts a job from the bytes of a file. The ending of its name says what it is. A machine path in the options is
/// relative to `base_dir`.
///
/// # Errors
/// Everything that prevents the draft, with its place if it has one.
pub fn draft(path: &Path, bytes: &[u8], base_dir: &Path, options: &Options) -> Result<JobText, Vec<Diag>> {
    let shown = path.display().to_string();
    let ending = path.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default();
    let name = path.file_stem().map_or_else(|| "shaft".to_owned(), |n| n.to_string_lossy().into_owned());
    let (sections, title, notes) = match ending.as_str() {
        "dxf" => of_drawing(path, bytes, options).map_err(|diag| vec![diag])?,
        "csv" | "txt" | "tsv" => table::of_csv(path, bytes).map(|(s, notes)| (s, Title::default(), notes))?,
        "xlsx" | "xls" | "ods" => {
            let (sections, notes) = workbook::of_workbook(path, bytes, options.sheet.as_deref())?;
            (sections, Title::default(), notes)
        }
        "dwg" => {
            return Err(vec![Diag::new(say!("draft-is-dwg", file = shown)).help(say!("draft-is-dwg-help"))]);
        }
        _ => {
            return Err(vec![
                Diag::new(say!("draft-unknown-file", file = shown)).help(say!("draft-unknown-file-help")),
            ]);
        }
    };
    if sections.is_empty() || sections.len() > SECTIONS_MAX {
        let what = say!("draft-sections", file = shown, sections = sections.len());
        return Err(vec![Diag::new(what).help(say!("draft-sections-help", most = SECTIONS_MAX))]);
    }
    let mut notes = notes;
    for (i, section) in sections.iter().enumerate().filter(|(_, s)| labels::needs_tolerance(s)) {
        notes.push(say!("draft-needs-tolerance", section = i + 1, diameter = section.largest_mm().to_string()));
    }
    let from = path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default();
    let content =
        yaml::Content { from: &from, name: &name, sections: &sections, title: &title, notes: &notes, options };
    let text = yaml::job(&content);
    match input::read_job_text("draft.yaml", &text, base_dir) {
        Ok(_) => Ok(JobText { text, notes }),
        Err(mut diags) => {
            let first = Diag::new(say!("draft-no-job", file = shown)).help(say!("draft-no-job-help"));
            diags.insert(0, first);
            Err(diags)
        }
    }
}

type Drafted = (Vec<Section>, Title, Vec<String>);

fn of_drawing(path: &Path, bytes: &[u8], options: &Options) -> Result<Drafted, Diag> {
    let load::Loaded { mut collected, mut notes, new_factor } = load::load(path, bytes, options)?;
    let mut found = axis::find(&collected.segments, options.gap_mm);
    let mut sheet = options.scale.map_or(1.0, |scale| 1.0 / scale);
    if options.scale.is_none() {
        if let Some(factor) = scale::enlarged(&collected, found.as_ref().ok(), &mut notes) {
            let tidy = (factor * 1e4).round() / 1e4;
            let scale = (1e4 / factor).round() / 1e4;
            notes.push(say!("draft-scale", factor = tidy.to_string(), scale = scale.to_string()));
            collected.enlarge(factor);
            sheet = factor;
            found = axis::find(&collected.segments, options.gap_mm);
        } else if collected.dimensions.is_empty() && new_factor.is_finite() && (new_factor - 1.0).abs() > 1e-9 {
            notes.push(say!("draft-factor-of-new", factor = new_factor.to_string()));
        }
    }
    let found = found?;
    notes.push(found.how.clone());
    let pieces = profile::profile(&found, options.gap_mm, &mut notes)?;
    let (first, last) = (pieces.first().map_or(0.0, |p| p.z0), pieces.last().map_or(0.0, |p| p.z1));
    let mut sections = sections::sections(&pieces, &found.axis, options.flip, &mut notes);
    let front = if options.flip { last } else { first };
    let level = found.axis.along.x > 0.5;
    let at = found.axis.point(front, 0.0).text();
    notes.push(match (level, options.flip) {
        (true, false) => say!("draft-front-left", at = at),
        (true, true) => say!("draft-front-right", at = at),
        (false, false) => say!("draft-front-lower", at = at),
        (false, true) => say!("draft-front-upper", at = at),
    });
    let places = labels::Places { axis: &found.axis, front, sign: if options.flip { -1.0 } else { 1.0 }, sheet };
    let said = labels::read_all(&collected, &places, &mut sections);
    notes.extend(said.title.notes.iter().cloned());
    notes.extend(said.taken);
    notes.extend(said.left);
    for left in collected.left() {
        let (count, kind, layer, at) = (left.count, left.what, left.layer, left.at.text());
        notes.push(say!("draft-not-read", count = count, kind = kind, layer = layer, at = at, why = left.why));
    }
    notes.extend(beside(&found, &pieces));
    Ok((sections, said.title, notes))
}

/// Edges that are not part of the contour, by kind and layer. Those inside the contour are listed apart. For the
/// others, the text says how near they come to it.
fn beside(found: &axis::Found, pieces: &[profile::ProfilePart]) -> Vec<String> {
    /// If a line ends nearer than this to an end of the contour, it may belong to the contour.
    const NEAR_MM: f64 = 1.0;
    let inside = |p: Point| {
        let (z, r) = found.axis.of(p);
        pieces.iter().any(|piece| piece.z0 <= z && z <= piece.z1 && r.abs() <= piece.r0.max(piece.r1) + NEAR_MM / 10.0)
    };
    // Kind, layer and whether inside. Then how many, where the first is, and which end is nearest to the contour.
    type Key<'a> = (&'a str, &'a str, bool);
    type Told = (usize, Point, Option<(f64, Point)>);
    let mut by_layer: BTreeMap<Key, Told> = BTreeMap::new();
    for segment in &found.rest {
        let within = inside(segment.a) && inside(segment.b);
        let entry = by_layer.entry((segment.entity, &segment.layer, within)).or_insert((0, segment.a, None));
        entry.0 += 1;
        for end in [segment.a, segment.b].into_iter().filter(|_| !within) {
            let ends = found.contour.iter().flat_map(|c| [c.a, c.b]);
            let near = ends.map(|p| p.distance(end)).fold(f64::INFINITY, f64::min);
            if near <= NEAR_MM && entry.2.is_none_or(|(d, _)| near < d) {
                entry.2 = Some((near, end));
            }
        }
    }
    let told = by_layer.into_iter().map(|((entity, layer, within), (count, at, near))| {
        let said = if within {
            say!("draft-inside", count = count, kind = entity, layer = layer, at = at.text())
        } else {
            say!("draft-beside", count = count, kind = entity, layer = layer, at = at.text())
        };
        let near = near.map(|(mm, end)| {
            let distance = ((mm * 1e3).round() / 1e3).to_string();
            say!("draft-beside-near", distance = distance, at = end.text())
        });
        near.map_or_else(|| said.clone(), |near| format!("{said} {near}"))
    });
    told.collect()
}
