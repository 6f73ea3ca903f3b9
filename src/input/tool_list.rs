//! `tool_list`: the tools of a job or of the shop.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use super::slips::shown;
use crate::diag::Diag;
use crate::fields;
use crate::job::shop::{Grade, find};
use crate::job::{CutData, Cuts, ListedTool, ToolKind};
use crate::say;

const KEYS: [&str; 13] = [
    "name",
    "kind",
    "station",
    "insert",
    "nose_radius",
    "approach_angle",
    "ap_max",
    "width",
    "vc",
    "feed",
    "rough",
    "finish",
    "materials",
];

/// Reads the list: `Some(None)` if it is left out. `grades`: those of the shop, by which a tool may name a material.
pub(super) fn read(r: &mut Reader, map: &Map, grades: &[Grade]) -> Option<Option<Vec<ListedTool>>> {
    let Some(node) = r.optional(map, "tool_list")? else { return Some(None) };
    let items = r.list(node, "tool_list", fields::TOOLS_MAX)?;
    let mut tools: Vec<ListedTool> = Vec::with_capacity(items.len());
    for item in items {
        let Some(tool) = one(r, item, grades) else { continue };
        if tools.iter().any(|other| other.name == tool.name) {
            let diag = Diag::new(say!("tool-twice", name = tool.name.clone())).help(say!("tool-twice-help"));
            r.complain(&item.referenced, diag);
            continue;
        }
        tools.push(tool);
    }
    (tools.len() == items.len()).then_some(Some(tools))
}

fn one(r: &mut Reader, node: &Spanned<Node>, grades: &[Grade]) -> Option<ListedTool> {
    let map = r.map(node, &KEYS)?;
    let kinds = ToolKind::ALL.map(|kind| (kind.key(), kind));
    let name = r.text(&map, "name", "the name of the tool");
    let kind = match map.tried("kind") {
        true => r.choice(&map, "kind", &kinds, None),
        false => {
            let words = kinds.map(|(word, _)| word).join(", ");
            r.required(&map, "kind", &words).and(None)
        }
    };
    let (station, insert) = (r.text_maybe(&map, "station"), r.text_maybe(&map, "insert"));
    let nose_radius = r.number_maybe(&map, &fields::TOOL_NOSE_RADIUS);
    let approach = r.number_maybe(&map, &fields::TOOL_APPROACH_ANGLE);
    let ap_max = r.number_maybe(&map, &fields::TOOL_AP_MAX);
    let width = r.number_maybe(&map, &fields::TOOL_WIDTH);
    let cuts = cuts(r, &map);
    let by_material = by_material(r, &map, grades);
    let (kind, cuts) = (kind?, cuts?);
    for (key, fits) in [
        ("rough", kind.turns()),
        ("finish", kind.turns()),
        ("nose_radius", kind.turns()),
        ("approach_angle", kind.turns()),
        ("ap_max", kind.turns()),
        ("width", matches!(kind, ToolKind::Grooving | ToolKind::PartOff)),
    ] {
        if map.get(key).is_some() && !fits {
            let diag = Diag::new(say!("tool-key-unused", kind = kind.key(), key = key));
            r.complain(&map.key_place(key), diag.help(say!("tool-key-unused-help", key = key)));
            return None;
        }
    }
    Some(ListedTool {
        name: name?,
        kind,
        station: station?,
        insert: insert?,
        nose_radius_mm: nose_radius?,
        approach_deg: approach?,
        ap_max_mm: ap_max?,
        width_mm: width?,
        cuts,
        by_material: by_material?,
    })
}

/// The cuts of a map. With `rough` alone, or `finish` alone, the tool takes only this cut; without both it takes both.
fn cuts(r: &mut Reader, map: &Map) -> Option<Cuts> {
    let any = data(r, map)?;
    let rough = of(r, map, "rough")?;
    let finish = of(r, map, "finish")?;
    Some(match (rough, finish) {
        (None, None) => Cuts { rough: Some(any), finish: Some(any) },
        (rough, finish) => Cuts { rough: rough.map(|cut| cut.or(any)), finish: finish.map(|cut| cut.or(any)) },
    })
}

/// One of the cuts: `Some(None)` if it is left out.
fn of(r: &mut Reader, map: &Map, key: &str) -> Option<Option<CutData>> {
    let Some(node) = r.optional(map, key)? else { return Some(None) };
    let inner = r.map(node, &["vc", "feed"])?;
    data(r, &inner).map(Some)
}

fn data(r: &mut Reader, map: &Map) -> Option<CutData> {
    let vc = r.number_maybe(map, &fields::TOOL_VC);
    let feed = r.number_maybe(map, &fields::TOOL_FEED);
    Some(CutData { vc_m_per_min: vc?, feed_mm: feed? })
}

fn by_material(r: &mut Reader, map: &Map, grades: &[Grade]) -> Option<Vec<(String, Cuts)>> {
    let Some(node) = r.optional(map, "materials")? else { return Some(Vec::new()) };
    let Node::Map(entries) = &node.value else {
        let diag = Diag::new(say!("keys-needed", kind = node.value.kind()));
        r.complain(&node.referenced, diag.help(say!("tool-materials-help")));
        return None;
    };
    let mut found: Vec<(String, Cuts)> = Vec::with_capacity(entries.len());
    for (key, value) in entries {
        let name = r.text_in(key, "materials");
        let name = name.and_then(|name| r.settle(&key.referenced, find(grades, &name)).map(|(m, _)| m.name));
        let cuts = r.map(value, &["vc", "feed", "rough", "finish"]).and_then(|map| cuts(r, &map));
        let Some((name, cuts)) = name.zip(cuts) else { continue };
        if found.iter().any(|(other, _)| *other == name) {
            let diag = Diag::new(say!("shop-material-twice", name = shown(&name)));
            r.complain(&key.referenced, diag.help(say!("shop-material-twice-help")));
            continue;
        }
        found.push((name, cuts));
    }
    (found.len() == entries.len()).then_some(found)
}
