//! Grades of a shop: its own, and grades of the table with its own prices or measured values.

use std::sync::Arc;

use serde_saphyr::Spanned;

use super::super::node::{Node, parse};
use super::super::reader::{Map, Reader};
use super::super::{material, scatter};
use crate::diag::{Diag, Source};
use crate::fields;
use crate::job::Material;
use crate::job::materials::CLASSES;
use crate::job::shop::Grade;
use crate::say;

/// Reads the grades: a list, or the path of a file that has the list.
pub(super) fn read(r: &mut Reader, map: &Map, open: &dyn Fn(&str) -> Result<Arc<Source>, Diag>) -> Option<Vec<Grade>> {
    let Some(node) = r.optional(map, "materials")? else { return Some(Vec::new()) };
    if matches!(node.value, Node::List(_)) {
        return list(r, node);
    }
    let path = r.text_in(node, "materials")?;
    let file = r.settle(&node.referenced, open(&path))?;
    let tree = match parse(&file) {
        Ok(tree) => tree,
        Err(diag) => {
            r.complain_elsewhere(diag);
            return None;
        }
    };
    let mut inner = Reader::new(Arc::clone(&file));
    // A list has no key for units; it is a part of the shop's file.
    inner.units = r.units;
    let grades = list(&mut inner, &tree);
    let diags = inner.finish(&tree);
    let clean = diags.is_empty();
    diags.into_iter().for_each(|diag| r.complain_elsewhere(diag));
    grades.filter(|_| clean)
}

fn list(r: &mut Reader, node: &Spanned<Node>) -> Option<Vec<Grade>> {
    let items = r.list(node, "materials", fields::SHOP_ITEMS_MAX)?;
    let mut grades: Vec<Grade> = Vec::with_capacity(items.len());
    for item in items {
        let Some(grade) = one(r, item) else { continue };
        if grades.iter().any(|g| g.material.name == grade.material.name) {
            let diag = Diag::new(say!("shop-material-twice", name = grade.material.name))
                .help(say!("shop-material-twice-help"));
            r.complain(&item.referenced, diag);
            continue;
        }
        grades.push(grade);
    }
    (grades.len() == items.len()).then_some(grades)
}

fn one(r: &mut Reader, node: &Spanned<Node>) -> Option<Grade> {
    const KEYS: [&str; 11] =
        ["grade", "name", "e_gpa", "density", "kc11", "mc", "poisson", "vc", "class", "price_per_kg", "scatter"];
    let map = r.map(node, &KEYS)?;
    let price = r.number_maybe(&map, &fields::SHOP_PRICE);
    let line = r.line(node);
    if map.get("grade").is_none() {
        let material = material::own(r, &map);
        return Some(Grade { material: material?, row: None, price_per_kg: price?, own_force: true, line });
    }
    let name = r.text(&map, "grade", "a name of the table of materials")?;
    let row = r.settle(&map.place("grade"), crate::job::materials::find(&name))?;
    let usual = row.material();
    let own_name = r.text_maybe(&map, "name");
    let e_gpa = r.number_or(&map, &fields::E_GPA, Some(usual.e_gpa));
    let density = r.number_or(&map, &fields::DENSITY, Some(usual.density_kg_per_m3));
    let poisson = r.number_or(&map, &fields::POISSON, Some(usual.poisson));
    let kc11 = r.number_or(&map, &fields::KC11, Some(usual.kc11_n_per_mm2));
    let mc = r.number_or(&map, &fields::MC, Some(usual.mc));
    let vc = material::speeds(r, &map);
    let class = r.choice(&map, "class", &CLASSES, Some(usual.class));
    let spreads = scatter::own(r, &map, &scatter::OF_MATERIAL);
    let own_name = own_name?;
    // With a name of its own it is a grade beside that of the table.
    let beside = own_name.is_some();
    let material = Material {
        name: own_name.unwrap_or(usual.name),
        e_gpa: e_gpa?,
        density_kg_per_m3: density?,
        poisson: poisson?,
        kc11_n_per_mm2: kc11?,
        mc: mc?,
        vc_m_per_min: vc?.or(usual.vc_m_per_min),
        class: class?,
        class_assumed: false,
        spreads: spreads?,
    };
    let own_force = map.get("kc11").is_some() || map.get("mc").is_some();
    Some(Grade { material, row: Some(row).filter(|_| !beside), price_per_kg: price?, own_force, line })
}
