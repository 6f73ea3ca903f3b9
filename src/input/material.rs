//! `shaft.material`: the name of a material in the table, or a map with the user's own values.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::Reader;
use crate::diag::Diag;
use crate::fields;
use crate::job::materials::{Material, find};
use crate::say;

const KEYS: [&str; 7] = ["name", "e_gpa", "density", "kc11", "mc", "poisson", "vc"];

/// The material. If it is from the table, also a note that says how reliable its cutting-force values are.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>) -> Option<(Material, Option<String>)> {
    if !matches!(node.value, Node::Map(_)) {
        let name = r.text_in(node, "material")?;
        let row = r.settle(&node.referenced, find(&name))?;
        let note = say!(
            "note-cutting-force",
            material = row.name,
            kc11 = row.kc11_n_per_mm2.to_string(),
            mc = row.mc.to_string(),
            source = row.cutting_source,
            confidence = row.confidence.word()
        );
        return Some((row.material(), Some(note)));
    }
    let map = r.map(node, &KEYS)?;
    let name = r.text(&map, "name", "the name of the material");
    let e_gpa = r.number(&map, &fields::E_GPA);
    let density = r.number(&map, &fields::DENSITY);
    let kc11 = r.number(&map, &fields::KC11);
    let mc = r.number(&map, &fields::MC);
    let poisson = r.number_or(&map, &fields::POISSON, None);
    let vc = match r.optional(&map, "vc")? {
        None => None,
        Some(node) => {
            let (low, high) = r.pair(node, &fields::MATERIAL_VC, "[100, 220]")?;
            if low > high {
                let diag = Diag::new(say!("material-vc")).help(say!(
                    "material-vc-help",
                    low = high.to_string(),
                    high = low.to_string()
                ));
                r.complain(&node.referenced, diag);
                return None;
            }
            Some((low, high))
        }
    };
    let material = Material {
        name: name?,
        e_gpa: e_gpa?,
        density_kg_per_m3: density?,
        poisson: poisson?,
        kc11_n_per_mm2: kc11?,
        mc: mc?,
        vc_m_per_min: vc,
    };
    Some((material, None))
}
