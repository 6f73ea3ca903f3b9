//! `chamfer` and `radius` of a section, and `grind` with what belongs to it.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use super::tolerance;
use crate::diag::Diag;
use crate::fields;
use crate::job::{Edge, Ground, Section, SectionKind, Tolerance, iso286};
use crate::lang;
use crate::say;

/// The class of a turned diameter that is ground later, if the job gives none. Common practice, no source.
const TURNED_CLASS: &str = "h9";
/// Two diameters that differ by less than this make no step, mm.
const NO_STEP_MM: f64 = 1e-6;

/// The front and the rear edge of a section, if they are given.
pub(super) fn read(r: &mut Reader, map: &Map) -> Option<[Option<Edge>; 2]> {
    let chamfers = ends(r, map, "chamfer", [&fields::CHAMFER, &fields::CHAMFER_FRONT, &fields::CHAMFER_REAR]);
    let radii = ends(r, map, "radius", [&fields::RADIUS, &fields::RADIUS_FRONT, &fields::RADIUS_REAR]);
    let (chamfers, radii) = (chamfers?, radii?);
    let mut edges = [None; 2];
    for ((edge, chamfer), radius) in edges.iter_mut().zip(chamfers).zip(radii) {
        *edge = match (chamfer, radius) {
            (Some(_), Some(_)) => {
                let diag = Diag::new(say!("edge-both")).help(say!("edge-both-help"));
                r.complain(&map.place("radius"), diag);
                return None;
            }
            (Some(mm), None) => Some(Edge::Chamfer(mm)),
            (None, Some(mm)) => Some(Edge::Radius(mm)),
            (None, None) => None,
        };
    }
    Some(edges)
}

/// The sizes at the front and the rear end. One number is the front end.
fn ends(r: &mut Reader, map: &Map, key: &str, of: [&'static fields::Field; 3]) -> Option<[Option<f64>; 2]> {
    let [alone, front, rear] = of;
    match r.optional(map, key)? {
        None => Some([None; 2]),
        Some(node) if matches!(node.value, Node::Map(_)) => {
            let inner = r.map(node, &["front", "rear"])?;
            let (front, rear) = (r.number_maybe(&inner, front), r.number_maybe(&inner, rear));
            Some([front?, rear?])
        }
        Some(node) => Some([Some(r.number_in(node, alone)?), None]),
    }
}

/// Checks that each edge is smaller than its step and that both leave some of the length. `items` are the places of the sections.
pub(super) fn fit(r: &mut Reader, items: &[Spanned<Node>], sections: &[Section]) -> Option<()> {
    let mut fit = Some(());
    for (i, (section, item)) in sections.iter().zip(items).enumerate() {
        let length: f64 = section.edges.iter().flatten().map(Edge::size_mm).sum();
        let fronts = i.checked_sub(1).and_then(|j| sections.get(j)).map(Section::rear_mm);
        let beside = [(section.front_mm(), fronts), (section.rear_mm(), sections.get(i + 1).map(Section::front_mm))];
        let mut wrong = (length >= section.length_mm() && length > 0.0)
            .then(|| say!("edge-too-long", section = section.label(i), length = section.length_mm().to_string()));
        for (edge, (own, other)) in section.edges.iter().zip(beside) {
            let Some(edge) = edge else { continue };
            let step = (own - other.unwrap_or(0.0)) / 2.0;
            let (name, size) = (section.label(i), edge.size_mm().to_string());
            // A radius may also lie in the corner under a thicker section.
            let room = if matches!(edge, Edge::Radius(_)) { step.abs() } else { step };
            if room <= NO_STEP_MM {
                wrong = Some(say!("edge-no-step", section = name));
            } else if edge.size_mm() > room - if other.is_none() { NO_STEP_MM } else { -NO_STEP_MM } {
                wrong = Some(say!("edge-too-large", section = name, size = size, step = format!("{room:.3}")));
            }
        }
        if let Some(text) = wrong {
            r.complain(&item.referenced, Diag::new(text).help(say!("edge-help")));
            fit = None;
        }
    }
    fit
}

/// What `grind` makes of a section: its turned kind, tolerance and roughness, and the ground ones.
pub(super) struct Turned {
    pub kind: SectionKind,
    pub tolerance: Tolerance,
    pub ra_um: Option<f64>,
    pub ground: Option<Ground>,
}

/// Reads the allowance for grinding. The drawing's diameter, tolerance and roughness are those of the ground surface.
pub(super) fn ground(
    r: &mut Reader,
    map: &Map,
    kind: SectionKind,
    asked: Tolerance,
    ra_um: Option<f64>,
) -> Option<Turned> {
    let grind = r.number_maybe(map, &fields::GRIND);
    let turned_ra = r.number_maybe(map, &fields::TURNED_RA);
    let Some(grind_mm) = grind? else {
        if let Some(key) = ["turned_tolerance", "turned_ra"].into_iter().find(|key| map.get(key).is_some()) {
            let diag = Diag::new(say!("turned-alone", key = key)).help(say!("turned-alone-help"));
            r.complain(&map.place(key), diag);
            return None;
        }
        return Some(Turned { kind, tolerance: asked, ra_um, ground: None });
    };
    let SectionKind::Cylinder { diameter_mm } = kind else {
        let diag = Diag::new(lang::text("grind-cylinder")).help(say!("grind-cylinder-help"));
        r.complain(&map.place("grind"), diag);
        return None;
    };
    let turned_mm = super::lengths::tidy(diameter_mm + grind_mm);
    let turned = match r.optional(map, "turned_tolerance")? {
        Some(node) => tolerance::read(r, node, turned_mm),
        None => r.settle(&map.place("grind"), iso286::shaft_limits(TURNED_CLASS, turned_mm)),
    }?;
    if turned_mm + turned.lower_mm <= diameter_mm + asked.upper_mm {
        let diag = Diag::new(say!("grind-nothing-left", turned = turned_mm.to_string(), label = turned.label.clone()))
            .help(say!("grind-nothing-left-help"));
        r.complain(&map.place("grind"), diag);
        return None;
    }
    let ground = Some(Ground { diameter_mm, tolerance: asked, ra_um });
    Some(Turned {
        kind: SectionKind::Cylinder { diameter_mm: turned_mm },
        tolerance: turned,
        ra_um: turned_ra?,
        ground,
    })
}
