//! Entries of `shaft.features`: finds the kind of each, and reads cross holes, keyseats and centre holes. `end_work`
//! reads the other kinds.

use serde_saphyr::Spanned;

use super::end_work;
use super::lengths::{on_the_shaft, thinnest_mm};
use super::node::Node;
use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields;
use crate::job::{End, Feature, FeatureKind, Section, iso6411};
use crate::say;

/// The kinds of features, with their keys. The first key says which kind it is.
const KINDS: [&[&str]; 9] = [
    &["cross_hole", "at", "thrust"],
    &["keyseat", "from", "to"],
    &["centre_hole", "end"],
    &["facing", "end"],
    &["axial_hole", "depth", "end"],
    &["tapped_hole", "at", "depth", "drill_depth", "end"],
    &["hex_socket", "depth", "step", "forming", "end"],
    &["keyway", "length", "step", "end"],
    &["engrave", "height", "depth", "at", "end"],
];
const KEYS: [&str; 20] = [
    "cross_hole",
    "at",
    "thrust",
    "keyseat",
    "from",
    "to",
    "centre_hole",
    "end",
    "facing",
    "axial_hole",
    "depth",
    "tapped_hole",
    "drill_depth",
    "hex_socket",
    "step",
    "forming",
    "keyway",
    "length",
    "engrave",
    "height",
];

/// Reads a feature. If the sections are known, also checks that it is on the shaft and fits it.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, sections: Option<&[Section]>) -> Option<Feature> {
    let map = r.map(node, &KEYS)?;
    // The first key of each kind, and all its keys.
    let kinds = || KINDS.into_iter().filter_map(|keys| Some((*keys.first()?, keys)));
    let given: Vec<(&str, &[&str])> = kinds().filter(|(kind, _)| map.get(kind).is_some()).collect();
    let [(kind, keys)] = given[..] else {
        if given.is_empty() && kinds().any(|(kind, _)| map.tried(kind)) {
            return None;
        }
        let kinds = kinds().map(|(kind, _)| kind).collect::<Vec<_>>().join(", ");
        r.complain(&map.at, Diag::new(say!("feature-kind")).help(say!("feature-kind-help", kinds = kinds)));
        return None;
    };
    let mut fits = true;
    for key in KEYS {
        if map.get(key).is_some() && !keys.contains(&key) {
            let diag = Diag::new(say!("feature-key", key = key, kind = kind))
                .help(say!("key-unknown-help", keys = keys.join(", ")));
            r.complain(&map.place(key), diag);
            fits = false;
        }
    }
    let kind = match kind {
        "cross_hole" => cross_hole(r, &map, sections),
        "keyseat" => keyseat(r, &map, sections),
        "centre_hole" => centre_hole(r, &map, sections),
        "facing" => end_work::facing(r, &map),
        "axial_hole" => end_work::axial_hole(r, &map, sections),
        "tapped_hole" => end_work::tapped_hole(r, &map, sections),
        "hex_socket" => end_work::hex_socket(r, &map, sections),
        "keyway" => end_work::keyway(r, &map),
        _ => end_work::engraving(r, &map, sections),
    };
    kind.filter(|_| fits).map(|kind| Feature { kind })
}

fn cross_hole(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let diameter = r.number(map, &fields::CROSS_HOLE);
    let at = r.number(map, &fields::AT);
    let thrust = r.number_maybe(map, &fields::THRUST);
    let (diameter_mm, at_mm, thrust_n) = (diameter?, at?, thrust?);
    if let Some(sections) = sections {
        let (from, to) = (at_mm - diameter_mm / 2.0, at_mm + diameter_mm / 2.0);
        on_the_shaft(r, map, "at", from, to, sections)?;
        let shaft_mm = thinnest_mm(sections, from, to);
        if diameter_mm >= shaft_mm {
            let diag = Diag::new(say!("hole-too-wide", at = at_mm.to_string(), diameter = shaft_mm.to_string()))
                .help(say!("hole-too-wide-help"));
            r.complain(&map.place("cross_hole"), diag);
            return None;
        }
    }
    Some(FeatureKind::CrossHole { diameter_mm, at_mm, thrust_n })
}

fn keyseat(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let node = r.required(map, "keyseat", "width and depth, `[6, 3.5]`");
    let size = node.and_then(|node| r.pair(node, &fields::KEYSEAT, "[6, 3.5]"));
    let from = r.number(map, &fields::KEYSEAT_FROM);
    let to = r.number(map, &fields::KEYSEAT_TO);
    let ((width_mm, depth_mm), from_mm, to_mm) = (size?, from?, to?);
    if to_mm <= from_mm {
        let diag = Diag::new(say!("keyseat-backwards", from = from_mm.to_string(), to = to_mm.to_string()))
            .help(say!("keyseat-backwards-help"));
        r.complain(&map.place("to"), diag);
        return None;
    }
    if let Some(sections) = sections {
        on_the_shaft(r, map, "to", from_mm, to_mm, sections)?;
        let shaft_mm = thinnest_mm(sections, from_mm, to_mm);
        let diag = if width_mm >= shaft_mm {
            Diag::new(say!("keyseat-too-wide", width = width_mm.to_string(), diameter = shaft_mm.to_string()))
                .help(say!("keyseat-too-wide-help"))
        } else if depth_mm >= shaft_mm / 2.0 {
            Diag::new(say!("keyseat-too-deep", depth = depth_mm.to_string(), diameter = shaft_mm.to_string()))
                .help(say!("keyseat-too-deep-help"))
        } else {
            return Some(FeatureKind::Keyseat { width_mm, depth_mm, from_mm, to_mm });
        };
        r.complain(&map.place("keyseat"), diag);
        return None;
    }
    Some(FeatureKind::Keyseat { width_mm, depth_mm, from_mm, to_mm })
}

fn centre_hole(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let text = r.text(map, "centre_hole", "a centre hole of ISO 6411, such as A2.5");
    let end = r.choice(map, "end", &end_work::ENDS, Some(End::Front));
    let hole = r.settle(&map.place("centre_hole"), iso6411::parse(&text?));
    let (hole, end) = (hole?, end?);
    let face_mm = sections.and_then(|sections| match end {
        End::Front => sections.first().map(|section| section.bending_mm(section.from_mm)),
        End::Back => sections.last().map(|section| section.bending_mm(section.to_mm)),
    });
    if let Some(face_mm) = face_mm
        && hole.mouth_mm >= face_mm
    {
        let (mouth, face) = (hole.mouth_mm.to_string(), face_mm.to_string());
        let diag = Diag::new(say!("centre-hole-too-wide", hole = hole.designation, mouth = mouth, face = face))
            .help(say!("centre-hole-too-wide-help"));
        r.complain(&map.place("centre_hole"), diag);
        return None;
    }
    Some(FeatureKind::CentreHole {
        designation: hole.designation,
        pilot_mm: hole.pilot_mm,
        mouth_mm: hole.mouth_mm,
        end,
    })
}
