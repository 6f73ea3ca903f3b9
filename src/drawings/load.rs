//! Loads a DXF file: the library reads it, the entities are counted again, and lengths are converted to mm.

use dxf::Drawing;
use dxf::entities::EntityType;
use dxf::enums::{DrawingUnits, Units};
use std::path::Path;

use super::census::{BINARY, Census, census};
use super::collect::{Collected, READ, collect};
use super::geometry::Point;
use super::{Options, caught};
use crate::diag::Diag;
use crate::lang;
use crate::say;

/// Largest drawing, MiB.
pub const DRAWING_MAX_MIB: u64 = 64;

/// A drawing in mm.
pub struct Loaded {
    /// Its lines, texts and dimensions.
    pub collected: Collected,
    /// What was decided while loading.
    pub notes: Vec<String>,
    /// Factor for lengths that new dimensions would get.
    pub new_factor: f64,
}

/// Reads a drawing.
///
/// # Errors
/// The file is not DXF, it is damaged, or it has a version that the library does not read.
pub fn load(name: &Path, bytes: &[u8], options: &Options) -> Result<Loaded, Diag> {
    let shown = name.display().to_string();
    if bytes.starts_with(b"AC10") && bytes.get(4..6).is_some_and(|v| v.iter().all(u8::is_ascii_digit)) {
        return Err(Diag::new(say!("draft-is-dwg", file = shown)).help(say!("draft-is-dwg-help")));
    }
    let counted = census(bytes);
    let binary = bytes.starts_with(BINARY);
    let mut lean = Vec::with_capacity(bytes.len());
    let mut from = 0;
    for needless in &counted.needless {
        lean.extend_from_slice(bytes.get(from..needless.start).unwrap_or_default());
        from = needless.end;
    }
    lean.extend_from_slice(bytes.get(from..).unwrap_or_default());
    let broken = |e: String| {
        let version = counted.version.as_deref().unwrap_or("-");
        Diag::new(say!("draft-not-dxf", file = shown, version = version, reason = e)).help(say!("draft-not-dxf-help"))
    };
    let drawing = caught(|| Drawing::load(&mut &lean[..]))
        .ok_or_else(|| broken(say!("draft-reader-failed")))?
        .map_err(|e| broken(e.to_string()))?;
    if counted.kinds.is_empty() {
        return Err(Diag::new(say!("draft-empty", file = shown)).help(say!("draft-empty-help")));
    }
    whole(name, &drawing, &counted)?;
    let mut notes = Vec::new();
    let mm = unit_mm(&drawing, options, &mut notes);
    let mut collected = collect(&drawing, mm, binary, &counted.factors);
    // Dimensions of R12 name no class, and the library drops them without a message.
    let read = |e: &EntityType| {
        matches!(
            e,
            EntityType::RotatedDimension(_)
                | EntityType::RadialDimension(_)
                | EntityType::DiameterDimension(_)
                | EntityType::AngularThreePointDimension(_)
                | EntityType::OrdinateDimension(_)
        )
    };
    if !drawing.entities().any(|e| read(&e.specific)) {
        collected.raw_dimensions(&counted.dimensions, mm);
    }
    for ((kind, layer), of) in &counted.kinds {
        if !READ.contains(&kind.as_str()) {
            let at = Point { x: of.at.0 * mm, y: of.at.1 * mm };
            collected.leave(kind, layer, lang::text("entity-unknown"), at, of.count);
        }
    }
    let new_factor = drawing.header.dimension_linear_measurements_scale_factor;
    Ok(Loaded { collected, notes, new_factor })
}

/// Checks that the library has lost nothing.
fn whole(name: &Path, drawing: &Drawing, counted: &Census) -> Result<(), Diag> {
    let of = |kind: fn(&EntityType) -> bool| drawing.entities().filter(|e| kind(&e.specific)).count();
    let read = [
        ("LINE", of(|e| matches!(e, EntityType::Line(_)))),
        ("ARC", of(|e| matches!(e, EntityType::Arc(_)))),
        ("LWPOLYLINE", of(|e| matches!(e, EntityType::LwPolyline(_)))),
        ("POLYLINE", of(|e| matches!(e, EntityType::Polyline(_)))),
        ("INSERT", of(|e| matches!(e, EntityType::Insert(_)))),
    ];
    for (kind, read) in read {
        let there = counted.outside_blocks.get(kind).copied().unwrap_or(0);
        if read < there {
            let file = name.display().to_string();
            return Err(Diag::new(say!("draft-damaged", file = file, kind = kind, there = there, read = read))
                .help(say!("draft-damaged-help")));
        }
    }
    Ok(())
}

/// Length of a drawing unit in mm.
fn unit_mm(drawing: &Drawing, options: &Options, notes: &mut Vec<String>) -> f64 {
    let known = match drawing.header.default_drawing_units {
        Units::Inches => Some((25.4, "inches")),
        Units::Feet => Some((304.8, "feet")),
        Units::Millimeters => Some((1.0, "mm")),
        Units::Centimeters => Some((10.0, "cm")),
        Units::Decimeters => Some((100.0, "dm")),
        Units::Meters => Some((1000.0, "m")),
        Units::Mils => Some((0.0254, "thousandths of an inch")),
        Units::Microns => Some((0.001, "µm")),
        _ => None,
    };
    let unit = match (options.units, known) {
        (Some(units), Some((mm, word))) => {
            if units.mm() != mm {
                notes.push(say!("draft-unit-of-call", unit = word, used = units.word()));
            }
            units.mm()
        }
        (Some(units), None) => units.mm(),
        (None, Some((mm, word))) => {
            if mm != 1.0 {
                notes.push(say!("draft-unit", unit = word, mm = mm.to_string()));
            }
            mm
        }
        (None, None) => {
            let inches = drawing.header.drawing_units == DrawingUnits::English;
            notes.push(if inches { say!("draft-no-unit") } else { say!("draft-no-unit-but-metric") });
            1.0
        }
    };
    unit / options.scale.unwrap_or(1.0)
}
