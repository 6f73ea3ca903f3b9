//! `shaft`: name, material, sections, features, work on the rear end.

use serde_saphyr::{Location, Spanned};

use super::lengths::tidy;
use super::node::Node;
use super::reader::{Map, Reader};
use super::{end_work, features, material, section};
use crate::diag::Diag;
use crate::fields::{self, BACK_WORK_MAX, FEATURES_MAX, SECTIONS_MAX, SHAFT_LENGTH_MAX_MM};
use crate::job::materials::{Group, known};
use crate::job::{BackWork, Feature, Section, Shaft, StockKind};
use crate::say;

const KEYS: [&str; 8] =
    ["name", "material", "sections", "features", "straightness", "drawing", "revision", "back_work"];

/// Reads the shaft; the kind of bar gives the bow where the job does not. Assumptions go to the notes.
pub(super) fn read(
    r: &mut Reader,
    node: &Spanned<Node>,
    bar: Option<StockKind>,
    notes: &mut Vec<String>,
) -> Option<Shaft> {
    let map = r.map(node, &KEYS)?;
    let name = r.text_maybe(&map, "name");
    let drawing = r.text_maybe(&map, "drawing");
    let revision = r.text_maybe(&map, "revision");
    let material =
        r.required(&map, "material", "a name such as C45, or your own values").and_then(|node| material::read(r, node));
    let sections = sections(r, &map);
    let stainless = material.as_ref().is_some_and(|(material, _)| stainless(&material.name));
    let by_bar = bar.map(|kind| kind.bow_mm_per_m(stainless));
    let bow = r.number_or(&map, &fields::STRAIGHTNESS, by_bar);
    let material = material.map(|(material, note)| {
        notes.extend(note);
        material
    });
    if let (None, Some(bow)) = (map.get("straightness"), bow) {
        let bow = bow.to_string();
        notes.push(match bar {
            Some(kind) => say!("note-straightness-of-bar", bow = bow, kind = kind.key()),
            None => say!("note-straightness", bow = bow),
        });
    }
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
        material: material?,
        sections: sections?,
        features: features.into_iter().map(|(_, feature)| feature).collect(),
        back_work,
        bow_mm_per_m: bow?,
    };
    complete.then_some(shaft)
}

/// Whether a material of the table is a stainless steel.
fn stainless(name: &str) -> bool {
    known(name).is_some_and(|row| row.group == Group::StainlessSteel)
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
    (sections.len() == items.len()).then_some(sections)
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
