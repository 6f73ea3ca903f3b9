//! `shaft`: name, material, sections, features, work on the rear end.

use serde_saphyr::{Location, Spanned};

use super::lengths::tidy;
use super::node::Node;
use super::reader::{Map, Reader};
use super::{edges, end_work, features, material, section};
use crate::diag::Diag;
use crate::fields::{self, BACK_WORK_MAX, FEATURES_MAX, SECTIONS_MAX, SHAFT_LENGTH_MAX_MM};
use crate::job::materials::{Group, known};
use crate::job::{BackWork, Feature, Material, Section, Shaft, StockKind};
use crate::lang::Measure;
use crate::say;

const KEYS: [&str; 9] =
    ["name", "material", "sections", "features", "straightness", "drawing", "revision", "date", "back_work"];

/// Reads the shaft, and its bow if the job gives it. Assumptions go to the notes.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, notes: &mut Vec<String>) -> Option<(Shaft, Option<f64>)> {
    let map = r.map(node, &KEYS)?;
    let name = r.text_maybe(&map, "name");
    let drawing = r.text_maybe(&map, "drawing");
    let revision = r.text_maybe(&map, "revision");
    let date = r.text_maybe(&map, "date");
    let material =
        r.required(&map, "material", "a name such as C45, or your own values").and_then(|node| material::read(r, node));
    let sections = sections(r, &map);
    let bow = r.number_maybe(&map, &fields::STRAIGHTNESS);
    let material = material.map(|(material, note)| {
        notes.extend(note);
        material
    });
    let mut features: Vec<(Location, Feature)> = Vec::new();
    let mut complete = true;
    if let Some(Some(node)) = r.optional(&map, "features")
        && let Some(items) = r.list(node, "features", FEATURES_MAX)
    {
        for item in items {
            match features::read(r, item, sections.as_deref()) {
                Some(feature) => features.push((item.referenced, feature)),
                None => complete = false,
            }
        }
    }
    complete &= end_work::keyways_lie_in_holes(r, &features, sections.as_deref()).is_some();
    let mut back_work = Vec::new();
    if let Some(Some(node)) = r.optional(&map, "back_work")
        && let Some(items) = r.list(node, "back_work", BACK_WORK_MAX)
    {
        for item in items {
            match back(r, item) {
                Some(work) => back_work.push(work),
                None => complete = false,
            }
        }
    }
    let shaft = Shaft {
        name: name?.unwrap_or_else(|| "shaft".to_owned()),
        drawing: drawing?,
        revision: revision?,
        date: date?,
        material: material?,
        sections: sections?,
        features: features.into_iter().map(|(_, feature)| feature).collect(),
        back_work,
        bow_mm_per_m: fields::STRAIGHTNESS.default?,
    };
    let bow = bow?;
    complete.then_some((shaft, bow))
}

/// The bow of a shaft from a kind of bar, mm per m, with the note that tells it.
pub(super) fn bow_by_bar(r: &mut Reader, material: &Material, bar: Option<StockKind>, notes: &mut Vec<String>) -> f64 {
    let usual = fields::STRAIGHTNESS.default.unwrap_or_default();
    let bow = bar.map_or(usual, |kind| kind.bow_mm_per_m(stainless(&material.name)));
    r.by_default(&fields::STRAIGHTNESS, bow);
    notes.push(match bar {
        Some(kind) => say!("note-straightness-of-bar", bow = Measure::Bow.number(bow), kind = kind.key()),
        None => say!("note-straightness", bow = Measure::Bow.number(bow)),
    });
    bow
}

/// Whether a material of the table is a stainless steel.
fn stainless(name: &str) -> bool {
    known(name).is_some_and(|row| row.group() == Group::StainlessSteel)
}

fn sections(r: &mut Reader, map: &Map) -> Option<Vec<Section>> {
    let node = r.required(map, "sections", "a list from the front face to the part-off face")?;
    let items = r.list(node, "sections", SECTIONS_MAX)?;
    if items.is_empty() {
        let diag = Diag::new(say!("shaft-no-sections")).help(say!("shaft-no-sections-help"));
        r.complain(&node.referenced, diag);
        return None;
    }
    let mut sections = Vec::with_capacity(items.len());
    let mut from_mm = Some(0.0);
    for item in items {
        let (length, section) = section::read(r, item, from_mm.unwrap_or(0.0));
        from_mm = from_mm.zip(length).map(|(from, length)| tidy(from + length));
        sections.extend(section);
    }
    let end_mm = from_mm?;
    if end_mm > SHAFT_LENGTH_MAX_MM {
        let diag = Diag::new(say!("shaft-too-long", length = end_mm.to_string()))
            .help(say!("shaft-too-long-help", most = SHAFT_LENGTH_MAX_MM.to_string()));
        r.complain(&node.referenced, diag);
        return None;
    }
    if sections.len() < items.len() {
        return None;
    }
    edges::fit(r, items, &sections)?;
    Some(sections)
}

fn back(r: &mut Reader, node: &Spanned<Node>) -> Option<BackWork> {
    let map = r.map(node, &["name", "radial_force", "axial_force", "torque", "time_s", "tolerance"])?;
    let name = r.text(&map, "name", "the name of the work");
    let force = r.number_or(&map, &fields::BACK_RADIAL_FORCE, None);
    let axial = r.number_or(&map, &fields::BACK_AXIAL_FORCE, None);
    let torque = r.number_or(&map, &fields::BACK_TORQUE, None);
    let time = r.number(&map, &fields::BACK_TIME);
    let tolerance = r.number_or(&map, &fields::BACK_TOLERANCE, None);
    Some(BackWork {
        name: name?,
        radial_force_n: force?,
        axial_force_n: axial?,
        torque_nm: torque?,
        time_s: time?,
        tolerance_mm: tolerance?,
    })
}
