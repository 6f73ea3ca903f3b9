//! Bars that a shop keeps.

use serde_saphyr::Spanned;

use super::super::node::Node;
use super::super::reader::Reader;
use super::super::{scatter, stock, tolerance};
use crate::fields;
use crate::job::shop::{Bar, Grade, find};

/// Reads a bar.
pub(super) fn read(r: &mut Reader, node: &Spanned<Node>, grades: &[Grade]) -> Option<Bar> {
    let map = r.map(node, &["material", "diameter", "tolerance", "kind", "bar_length", "price_per_kg", "scatter"])?;
    let name = r.text(&map, "material", "a name such as C45");
    let material = name.and_then(|name| {
        let found = find(grades, &name);
        r.settle(&map.place("material"), found).map(|(material, _)| material.name)
    });
    let diameter = r.number(&map, &fields::SHOP_BAR_DIAMETER);
    let tolerance = tolerance::of_bar(r, &map, diameter);
    let kind = stock::kind(r, &map);
    let length = r.number_maybe(&map, &fields::SHOP_BAR_LENGTH);
    let price = r.number_maybe(&map, &fields::SHOP_BAR_PRICE);
    let spreads = scatter::own(r, &map, &scatter::OF_BAR);
    Some(Bar {
        material: material?,
        diameter_mm: diameter?,
        tolerance: tolerance?,
        kind: kind?,
        bar_length_mm: length?,
        price_per_kg: price?,
        spreads: spreads?,
        line: r.line(node),
    })
}
