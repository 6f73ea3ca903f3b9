//! The schema of the shop's file.

use super::files::{collet, limits_of_job, machine, own_scatter, path, rates, tolerance, tool_list, tools, units};
use super::parts::{choice, either, list, map, number, pair, text};
use crate::fields::{self, SHOP_ITEMS_MAX};
use crate::lang;
use serde_json::Value;

/// The shop's file.
pub(super) fn shop() -> Value {
    let one = vec![("name", text(lang::text("schema-shop-machine-name"))), ("file", path()), ("machine", machine())];
    let one = map("shop.machines", lang::text("schema-shop-machine"), one, &[]);
    let machines = list(
        lang::text("schema-shop-machines"),
        either(lang::text("schema-shop-machine"), vec![path(), one]),
        SHOP_ITEMS_MAX,
    );
    let only = list(lang::text("schema-shop-collet-machines"), text("name of a machine"), SHOP_ITEMS_MAX);
    let collets = list(lang::text("schema-shop-collets"), collet(vec![("machines", only)]), SHOP_ITEMS_MAX);
    let (grades, bars) = (
        list(lang::text("schema-shop-materials"), grade(), SHOP_ITEMS_MAX),
        list(lang::text("schema-shop-bars"), bar(), SHOP_ITEMS_MAX),
    );
    let mut cutting = map("cutting", "tools, speeds, feeds", vec![("tools", tools())], &[]);
    without(&mut cutting, "vc");
    let mut order = map("order", lang::text("schema-order"), vec![], &[]);
    without(&mut order, "pieces");
    let mut other = vec![
        ("name", text("name of the shop")),
        ("language", choice(lang::text("schema-language"), &lang::LANGUAGES)),
        ("units", units()),
        ("machines", machines),
        ("collets", collets),
        ("materials", either(lang::text("schema-shop-materials"), vec![path(), grades])),
        ("bars", bars),
        ("rates", rates(&[])),
        ("holding", choice("what holds the bar", &["bush", "no_bush"])),
        ("objective", choice(lang::text("schema-objective"), &["time", "fewest_hand_overs", "margin"])),
        ("tool_list", tool_list()),
        ("cutting", cutting),
        ("order", order),
    ];
    other.extend(limits_of_job());
    map("shop", lang::text("schema-shop"), other, &[])
}

fn without(of: &mut Value, key: &str) {
    if let Some(properties) = of.get_mut("properties").and_then(Value::as_object_mut) {
        properties.remove(key);
    }
}

fn grade() -> Value {
    let mut keys = vec![
        ("grade", text(lang::text("schema-shop-grade"))),
        ("name", text(lang::text("schema-shop-grade-name"))),
        ("vc", pair(&fields::MATERIAL_VC, "usual cutting speeds, [low, high]; m/min")),
    ];
    keys.push(("class", choice(lang::text("schema-material-class"), &fields::MATERIAL_CLASSES)));
    keys.push(("scatter", own_scatter("shaft.material.scatter")));
    let numbers = [&fields::E_GPA, &fields::DENSITY, &fields::KC11, &fields::MC, &fields::POISSON];
    keys.extend(numbers.map(|field| (field.key(), number(field))));
    map("shop.materials", lang::text("schema-shop-material"), keys, &[])
}

fn bar() -> Value {
    let keys = vec![
        ("material", text(lang::text("schema-shop-bar-material"))),
        ("tolerance", tolerance()),
        ("kind", choice(lang::text("schema-stock-kind"), &["drawn", "turned", "ground", "bar_feeder"])),
        ("scatter", own_scatter("shop.bars.scatter")),
    ];
    map("shop.bars", lang::text("schema-shop-bar"), keys, &["material", "diameter"])
}
