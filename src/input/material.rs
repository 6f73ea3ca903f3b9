//! `shaft.material`: the name of a material in the table, or a map with the user's own values.

use serde_saphyr::Spanned;

use super::node::Node;
use super::reader::{Map, Reader};
use super::scatter;
use crate::diag::Diag;
use crate::fields;
use crate::job::Material;
use crate::job::materials::{CLASSES, Class, known};
use crate::job::shop::find;
use crate::say;

const KEYS: [&str; 9] = ["name", "e_gpa", "density", "kc11", "mc", "poisson", "vc", "class", "scatter"];

/// The material. If it is from the table, also a note that says how reliable its cutting-force values are.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>) -> Option<(Material, Option<String>)> {
    if matches!(node.value, Node::Map(_)) {
        let map = r.map(node, &KEYS)?;
        return own(r, &map).map(|material| (material, None));
    }
    let name = r.text_in(node, "material")?;
    let shop = r.shop().cloned();
    let grades = shop.as_ref().map_or(&[][..], |shop| &shop.grades);
    let (material, grade) = r.settle(&node.referenced, find(grades, &name))?;
    if let Some((shop, grade)) = shop.as_ref().zip(grade).filter(|(_, grade)| grade.own_force) {
        r.given_by_shop("shaft.material", material.name.clone(), grade.line);
        let (kc11, mc) = (material.kc11_n_per_mm2.to_string(), material.mc.to_string());
        let note =
            say!("note-cutting-force-shop", material = material.name, kc11 = kc11, mc = mc, file = shop.file_name());
        return Some((material, Some(note)));
    }
    let note = known(&material.name).map(|row| {
        say!(
            "note-cutting-force",
            material = row.name,
            kc11 = row.kc11_n_per_mm2.to_string(),
            mc = row.mc.to_string(),
            source = row.cutting_source,
            confidence = row.confidence.word()
        )
    });
    Some((material, note))
}

/// The user's own material, from a map whose keys have been checked.
pub(super) fn own(r: &mut Reader, map: &Map) -> Option<Material> {
    let name = r.text(map, "name", "the name of the material");
    let e_gpa = r.number(map, &fields::E_GPA);
    let density = r.number(map, &fields::DENSITY);
    let kc11 = r.number(map, &fields::KC11);
    let mc = r.number(map, &fields::MC);
    let poisson = r.number_or(map, &fields::POISSON, None);
    let vc = speeds(r, map)?;
    let spreads = scatter::own(r, map, &scatter::OF_MATERIAL);
    let class = r.choice(map, "class", &CLASSES.map(|(key, class)| (key, Some(class))), Some(None));
    let (e_gpa, density, kc11, class) = (e_gpa?, density?, kc11?, class?);
    Some(Material {
        name: name?,
        class: class.unwrap_or_else(|| Class::assumed(e_gpa, density, kc11)),
        class_assumed: class.is_none(),
        e_gpa,
        density_kg_per_m3: density,
        poisson: poisson?,
        kc11_n_per_mm2: kc11,
        mc: mc?,
        vc_m_per_min: vc,
        spreads: spreads?,
    })
}

/// The usual cutting speeds, low and high, m/min: `Some(None)` if they are left out.
pub(super) fn speeds(r: &mut Reader, map: &Map) -> Option<Option<(f64, f64)>> {
    let Some(node) = r.optional(map, "vc")? else { return Some(None) };
    let (low, high) = r.pair(node, &fields::MATERIAL_VC, "[100, 220]")?;
    if low > high {
        let (low, high) = (high.to_string(), low.to_string());
        let diag = Diag::new(say!("material-vc")).help(say!("material-vc-help", low = low, high = high));
        r.complain(&node.referenced, diag);
        return None;
    }
    Some(Some((low, high)))
}
