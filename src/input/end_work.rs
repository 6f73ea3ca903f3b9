//! Entries of `shaft.features` for work on an end, tapped holes and engraved texts.

use serde_saphyr::Location;

use super::lengths::{on_the_shaft, thinnest_mm, tidy};
use super::reader::{Map, Reader};
use crate::diag::Diag;
use crate::fields;
use crate::job::thread::{Side, Thread};
use crate::job::{End, Engraved, Feature, FeatureKind, Forming, Section, SectionKind, Tapped, engraving};
use crate::say;

/// The words for the ends. `back` and `rear` are the same end.
pub(super) const ENDS: [(&str, End); 3] = [("front", End::Front), ("back", End::Back), ("rear", End::Back)];

/// Circumscribed over inscribed circle of a regular hexagon, 2/√3. Derived here.
const CORNERS_PER_FLATS: f64 = 1.154_700_538_379_251_5;

fn end(r: &mut Reader, map: &Map) -> Option<End> {
    r.choice(map, "end", &ENDS, Some(End::Front))
}

/// Smallest core diameter from an end to a depth, mm.
fn core_mm(sections: &[Section], end: End, depth_mm: f64) -> f64 {
    let length_mm = sections.last().map_or(0.0, |s| s.to_mm);
    match end {
        End::Front => thinnest_mm(sections, 0.0, depth_mm),
        End::Back => thinnest_mm(sections, length_mm - depth_mm, length_mm),
    }
}

/// Reports an error if something of a given size does not fit into the core of the shaft, from an end to a depth.
fn fits(
    r: &mut Reader,
    map: &Map,
    key: &str,
    size_mm: f64,
    end: End,
    depth_mm: f64,
    sections: Option<&[Section]>,
) -> Option<()> {
    let Some(sections) = sections else { return Some(()) };
    let length_mm = sections.last().map_or(0.0, |s| s.to_mm);
    let diag = if depth_mm > length_mm {
        Diag::new(say!("work-too-deep", depth = depth_mm.to_string(), length = length_mm.to_string()))
            .help(say!("work-too-deep-help"))
    } else {
        let core_mm = core_mm(sections, end, depth_mm);
        if size_mm < core_mm {
            return Some(());
        }
        Diag::new(say!("work-too-wide", size = format!("{size_mm:.3}"), diameter = core_mm.to_string()))
            .help(say!("work-too-wide-help"))
    };
    r.complain(&map.place(key), diag);
    None
}

pub(super) fn facing(r: &mut Reader, map: &Map) -> Option<FeatureKind> {
    let depth = r.number(map, &fields::FACE_OFF);
    let end = end(r, map);
    Some(FeatureKind::Facing { depth_mm: depth?, end: end? })
}

pub(super) fn axial_hole(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let diameter = r.number(map, &fields::AXIAL_HOLE);
    let depth = r.number(map, &fields::WORK_DEPTH);
    let end = end(r, map);
    let (diameter_mm, depth_mm, end) = (diameter?, depth?, end?);
    fits(r, map, "axial_hole", diameter_mm, end, depth_mm, sections)?;
    Some(FeatureKind::AxialHole { diameter_mm, depth_mm, end })
}

pub(super) fn tapped_hole(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let text = r.text(map, "tapped_hole", "such as M6-6H");
    let at = r.number_maybe(map, &fields::AT);
    let depth = r.number_maybe(map, &fields::WORK_DEPTH);
    let drill_depth = r.number_maybe(map, &fields::DRILL_DEPTH);
    let given_end = map.get("end").is_some();
    let end = end(r, map);
    let thread = Thread::parse(&text?).and_then(|t| t.on(Side::Internal));
    let thread = r.settle(&map.place("tapped_hole"), thread);
    let (thread, at, depth, drill_depth, end) = (thread?, at?, depth?, drill_depth?, end?);
    let place = match (at, depth) {
        (Some(at_mm), None) if !given_end && drill_depth.is_none() => {
            if let Some(sections) = sections {
                let half = thread.major_mm / 2.0;
                on_the_shaft(r, map, "at", at_mm - half, at_mm + half, sections)?;
                let core_mm = thinnest_mm(sections, at_mm - half, at_mm + half);
                if thread.major_mm >= core_mm {
                    let what = say!("hole-too-wide", at = at_mm.to_string(), diameter = core_mm.to_string());
                    let diag = Diag::new(what).help(say!("hole-too-wide-help"));
                    r.complain(&map.place("tapped_hole"), diag);
                    return None;
                }
            }
            Tapped::Across { at_mm }
        }
        (None, Some(depth_mm)) => {
            let drill_depth_mm = drill_depth.unwrap_or(depth_mm + RUN_OUT_PITCHES * thread.pitch_mm);
            if drill_depth_mm < depth_mm {
                let diag = Diag::new(say!("thread-deeper-than-hole", hole = drill_depth_mm.to_string()))
                    .help(say!("thread-deeper-than-hole-help", least = depth_mm.to_string()));
                r.complain(&map.place("drill_depth"), diag);
                return None;
            }
            fits(r, map, "tapped_hole", thread.major_mm, end, drill_depth_mm, sections)?;
            Tapped::InEnd { depth_mm, drill_depth_mm, end }
        }
        _ => {
            let diag = Diag::new(say!("tapped-hole-where")).help(say!("tapped-hole-where-help"));
            r.complain(&map.at, diag);
            return None;
        }
    };
    Some(FeatureKind::TappedHole { thread, place })
}

/// How much deeper the hole is than its thread, in pitches, if the job does not say. Common practice, no source.
const RUN_OUT_PITCHES: f64 = 4.0;

pub(super) fn hex_socket(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let across = r.number(map, &fields::HEX_SOCKET);
    let depth = r.number(map, &fields::WORK_DEPTH);
    let step = r.number_or(map, &fields::SHAVING_STEP, None);
    let forming =
        r.choice(map, "forming", &[("shave", Forming::Shaved), ("punch", Forming::Punched)], Some(Forming::Shaved));
    let end = end(r, map);
    let (across_flats_mm, depth_mm, forming, end) = (across?, depth?, forming?, end?);
    fits(r, map, "hex_socket", CORNERS_PER_FLATS * across_flats_mm, end, depth_mm, sections)?;
    if forming == Forming::Punched && map.get("step").is_some() {
        let diag = Diag::new(say!("socket-punched-step")).help(say!("socket-punched-step-help"));
        r.complain(&map.place("step"), diag);
        return None;
    }
    Some(FeatureKind::HexSocket { across_flats_mm, depth_mm, step_mm: step?, forming, end })
}

pub(super) fn keyway(r: &mut Reader, map: &Map) -> Option<FeatureKind> {
    let node = r.required(map, "keyway", "width and depth, `[3, 1.4]`");
    let size = node.and_then(|node| r.pair(node, &fields::KEYWAY, "[3, 1.4]"));
    let length = r.number(map, &fields::KEYWAY_LENGTH);
    let step = r.number_or(map, &fields::SHAVING_STEP, None);
    let end = end(r, map);
    let (width_mm, depth_mm) = size?;
    Some(FeatureKind::Keyway { width_mm, depth_mm, length_mm: length?, step_mm: step?, end: end? })
}

pub(super) fn engraving(r: &mut Reader, map: &Map, sections: Option<&[Section]>) -> Option<FeatureKind> {
    let text = r.text(map, "engrave", "the text");
    let height = r.number(map, &fields::LETTER_HEIGHT);
    let depth = r.number_maybe(map, &fields::WORK_DEPTH);
    let at = r.number_maybe(map, &fields::AT);
    let given_end = map.get("end").is_some();
    let end = end(r, map);
    let (text, height_mm, depth_mm, at, end) =
        (text?, height?, depth?.unwrap_or(fields::ENGRAVING_DEPTH_MM), at?, end?);
    let here = map.place("engrave");
    if text.chars().count() > fields::ENGRAVING_MAX {
        let diag =
            Diag::new(say!("engraving-too-long")).help(say!("engraving-too-long-help", most = fields::ENGRAVING_MAX));
        r.complain(&here, diag);
        return None;
    }
    let path = r.settle(&here, engraving::path(&text, height_mm))?;
    let place = match (at, given_end) {
        (Some(from_mm), false) => {
            let to_mm = tidy(from_mm + path.width_mm);
            if let Some(sections) = sections {
                on_the_shaft(r, map, "at", from_mm, to_mm, sections)?;
                on_one_surface(r, &here, (from_mm, to_mm), height_mm, sections)?;
            }
            Engraved::Along { from_mm, to_mm }
        }
        (None, true) => {
            if let Some(sections) = sections {
                let face_mm = core_mm(sections, end, 0.01);
                let takes_mm = path.width_mm.hypot(height_mm);
                if takes_mm > face_mm {
                    let diag = Diag::new(say!(
                        "engraving-beyond-face",
                        needed = format!("{takes_mm:.1}"),
                        diameter = face_mm.to_string()
                    ))
                    .help(say!("engraving-beyond-face-help"));
                    r.complain(&here, diag);
                    return None;
                }
            }
            Engraved::Face { end }
        }
        _ => {
            let diag = Diag::new(say!("engraving-where")).help(say!("engraving-where-help"));
            r.complain(&map.at, diag);
            return None;
        }
    };
    Some(FeatureKind::Engraving { text, height_mm, depth_mm, place })
}

/// A text must lie on one cylinder or flat. Its letters must not be higher than this surface is wide.
fn on_one_surface(
    r: &mut Reader,
    at: &Location,
    (from_mm, to_mm): (f64, f64),
    height_mm: f64,
    sections: &[Section],
) -> Option<()> {
    let section = sections.iter().find(|s| s.from_mm <= from_mm && s.to_mm >= to_mm);
    let wide_mm = section.and_then(|s| match s.kind {
        SectionKind::Cylinder { diameter_mm } => Some(diameter_mm),
        SectionKind::Flats { across_flats_mm, .. } => Some(across_flats_mm),
        _ => None,
    });
    let diag = match wide_mm {
        None => Diag::new(say!("engraving-on-two", from = from_mm.to_string(), to = format!("{to_mm:.1}")))
            .help(say!("engraving-on-two-help")),
        Some(wide_mm) if height_mm > wide_mm => Diag::new(say!("engraving-too-high", height = height_mm.to_string()))
            .help(say!("engraving-too-high-help", most = wide_mm.to_string())),
        Some(_) => return Some(()),
    };
    r.complain(at, diag);
    None
}

/// Every keyway must lie in a hole at the same end.
pub(super) fn keyways_lie_in_holes(
    r: &mut Reader,
    features: &[(Location, Feature)],
    sections: Option<&[Section]>,
) -> Option<()> {
    let mut good = true;
    for (at, feature) in features {
        let FeatureKind::Keyway { width_mm, depth_mm, length_mm, end, .. } = feature.kind else { continue };
        let bore_mm = features.iter().filter_map(|(_, f)| match f.kind {
            FeatureKind::AxialHole { diameter_mm, depth_mm, end: e } if e == end && depth_mm >= length_mm => {
                Some(diameter_mm)
            }
            _ => None,
        });
        let bore_mm = bore_mm.fold(0.0, f64::max);
        let core_mm = sections.map_or(f64::INFINITY, |s| core_mm(s, end, length_mm));
        let diag = if bore_mm <= width_mm {
            Diag::new(say!("keyway-without-hole")).help(say!(
                "keyway-without-hole-help",
                depth = length_mm.to_string(),
                width = width_mm.to_string()
            ))
        } else if bore_mm / 2.0 + depth_mm >= core_mm / 2.0 {
            let reach = bore_mm / 2.0 + depth_mm;
            Diag::new(say!("keyway-no-wall", reach = reach.to_string()))
                .help(say!("keyway-no-wall-help", most = (core_mm / 2.0).to_string()))
        } else {
            continue;
        };
        r.complain(at, diag);
        good = false;
    }
    good.then_some(())
}
