//! The shop's file: found, named, overridden, and told.

use super::{call, call_in};

const PIN: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/shop/dancer-arm-pin.yaml");
const DEMO_SHOP: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/shop/shop.yaml");
const MACHINES: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/machines");

/// A drawing alone.
const ROD: &str =
    "shaft:\n  material: C45\n  sections: [{length: 30, diameter: 18, tolerance: h9}, {length: 90, diameter: 19}]\n";

/// The values that the job does not give, by key: the value, and whether it is the shop's.
fn origins(plan: &serde_json::Value) -> Vec<(String, String, bool)> {
    let text = |v: &serde_json::Value| v.as_str().expect("a text").to_owned();
    let all = plan["origins"].as_array().expect("a list");
    all.iter().map(|o| (text(&o["key"]), text(&o["value"]), o["from"] == "shop")).collect()
}

#[test]
fn a_job_with_the_drawing_alone_takes_the_rest_from_the_shop() {
    let called = call(["plan", PIN, "--format", "json"]);
    assert_eq!((called.status, called.err.as_str()), (0, ""));
    let plan = called.json();
    let shops: Vec<(String, String)> =
        origins(&plan).into_iter().filter(|(_, _, shop)| *shop).map(|(key, value, _)| (key, value)).collect();
    let wanted = [
        ("machine", "long"),
        // The collar has no tolerance of its own and stays as the bar is, so the thinner bar is enough.
        ("stock.diameter", "18 mm"),
        ("stock.tolerance", "h9"),
        ("stock.kind", "drawn"),
        ("stock.bar_length", "3000 mm"),
        ("cutting.ap_max", "3.2 mm"),
        ("tool_list", "5 tools"),
        ("limits.whirl_ratio", "0.6"),
        ("rates.machine_per_hour", "68"),
        ("rates.material_per_kg", "1.4"),
    ];
    assert_eq!(shops, wanted.map(|(key, value)| (key.to_owned(), value.to_owned())));
    assert_eq!(plan["machine"], "long bed 32");
    // Only the shop has a collet for 15 mm, and the body is the only diameter that the machine's own collets do not hold.
    assert!(["15", "12", "18"].contains(&plan["collet"].as_str().expect("a collet")), "{}", plan["collet"]);
    let default = origins(&plan).into_iter().find(|(key, _, _)| key == "limits.sag");
    assert_eq!(default, Some(("limits.sag".to_owned(), "0.05 mm".to_owned(), false)));
    assert!(plan["quote"]["cost"]["total"].as_f64().is_some_and(|cost| cost > 0.0));
    let full = call(["plan", PIN, "--full"]).out;
    assert!(full.contains("limits.whirl_ratio 0.6 (line 16)"), "{full}");
}

#[test]
fn what_the_job_gives_counts_before_the_shop() {
    let job = std::fs::read_to_string(PIN).expect("the demo");
    let dir = tempfile::tempdir().expect("a folder");
    std::fs::create_dir(dir.path().join("jobs")).expect("a folder");
    let shop = std::fs::read_to_string(DEMO_SHOP).expect("the demo");
    let shop = shop.replace("../machines", MACHINES);
    std::fs::write(dir.path().join("shop.yaml"), &shop).expect("written");
    let planned = |more: &str, args: &[&str]| {
        std::fs::write(dir.path().join("jobs/pin.yaml"), format!("{job}{more}")).expect("written");
        // The shop's file is found upwards, from the folder of the job or from the current one.
        let called = call_in(dir.path(), [&["plan", "jobs/pin.yaml", "--format", "json"], args].concat());
        let here = call_in(&dir.path().join("jobs"), [&["plan", "pin.yaml", "--format", "json"], args].concat());
        if !args.contains(&"--shop") {
            assert_eq!((called.status, &called.out), (here.status, &here.out), "{}{}", called.err, here.err);
        }
        called
    };
    let plain = planned("", &[]).json();
    let own = planned("limits: {whirl_ratio: 0.5}\nstock: {diameter: 22}\nrates: {material_per_kg: 3}\n", &[]).json();
    assert_ne!(plain["input_digest"], own["input_digest"]);
    let shops: Vec<String> = origins(&own).into_iter().filter(|(_, _, shop)| *shop).map(|(key, _, _)| key).collect();
    assert!(
        !shops.contains(&"limits.whirl_ratio".to_owned()) && !shops.contains(&"stock.diameter".to_owned()),
        "{shops:?}"
    );
    // The bar of this size that the shop has gives what the job leaves out.
    assert!(
        shops.contains(&"stock.tolerance".to_owned()) && shops.contains(&"rates.machine_per_hour".to_owned()),
        "{shops:?}"
    );
    assert_eq!(own["shaft"]["stock_diameter_mm"].as_f64(), Some(22.0));
    let none = planned("shop: none\n", &[]);
    assert_eq!(none.status, 2);
    assert!(none.err.contains("`stock` is missing") && none.err.contains("`machine` is missing"), "{}", none.err);
    // Another machine of the shop, by name.
    let small = planned("machine: small\n", &[]);
    assert_eq!(small.status, 2);
    assert!(small.err.contains("No bar of C45 in `shop.yaml` gives this shaft"), "{}", small.err);
    let by_call = planned("stock: {diameter: 22}\n", &["--machine", "small"]);
    assert_eq!(by_call.json()["machine"], "small 7", "{}", by_call.err);
    let unknown = planned("machine: smal\n", &[]);
    assert!(unknown.err.contains("write a name from `shop.yaml`: long, small"), "{}", unknown.err);
    // Another file.
    std::fs::write(dir.path().join("other.yaml"), shop.replace("whirl_ratio: 0.6", "whirl_ratio: 0.65"))
        .expect("written");
    let other = planned("", &["--shop", "other.yaml"]).json();
    assert!(origins(&other).contains(&("limits.whirl_ratio".to_owned(), "0.65".to_owned(), true)));
    let missing = planned("", &["--shop", "nowhere.yaml"]);
    assert_eq!(missing.status, 2);
    assert!(missing.err.contains("`nowhere.yaml` does not exist"), "{}", missing.err);
}

#[test]
fn recheck_and_batch_read_the_same_shop() {
    let dir = tempfile::tempdir().expect("a folder");
    let out = dir.path().to_str().expect("UTF-8");
    assert_eq!(call(["plan", PIN, "--out", out]).status, 0);
    let again = call(["recheck", &format!("{out}/plan.json"), PIN]);
    assert_eq!(again.status, 0, "{}{}", again.out, again.err);
    let line = call(["batch", PIN]);
    assert_eq!(line.status, 0, "{}", line.err);
    assert!(line.out.contains("\"at_risk\""), "{}", line.out);
    // The files of the shop are never written over.
    let over = call(["batch", PIN, "--out", DEMO_SHOP]);
    assert_eq!(over.status, 2);
}

#[test]
fn the_example_of_a_shop_can_be_used_as_it_is() {
    let dir = tempfile::tempdir().expect("a folder");
    let made = call_in(dir.path(), ["new", "shop", "shop.yaml"]);
    assert_eq!((made.status, made.out.as_str()), (0, ""), "{}", made.err);
    let text = std::fs::read_to_string(dir.path().join("shop.yaml")).expect("written");
    assert_eq!(call(["new", "shop"]).out, text);
    assert_eq!(call_in(dir.path(), ["new", "shop", "shop.yaml"]).status, 2);
    assert_eq!(call(["new", "a.yaml", "b.yaml"]).status, 2);
    std::fs::write(dir.path().join("pin.yaml"), ROD).expect("written");
    let called = call_in(dir.path(), ["check", "pin.yaml"]);
    assert_eq!(called.status, 0, "{}{}", called.out, called.err);
    // The optional lines can be used too.
    let house = text.split_once("# House values").expect("house values").1;
    let open: String =
        house.lines().skip(1).map(|line| line.strip_prefix("# ").unwrap_or(line).to_owned() + "\n").collect();
    std::fs::write(dir.path().join("shop.yaml"), text.clone() + &open).expect("written");
    let called = call_in(dir.path(), ["check", "pin.yaml"]);
    assert_eq!(called.status, 0, "{}{}", called.out, called.err);
    let listed = call_in(dir.path(), ["materials", "C45"]).out;
    assert!(listed.starts_with("Of `shop.yaml`") && listed.contains("1.4"), "{listed}");
}

/// Every error of a shop's file stands at its place, and the job is not read.
#[test]
fn what_is_wrong_in_the_shops_file_is_told_at_its_place() {
    let dir = tempfile::tempdir().expect("a folder");
    let text = call(["new", "shop"]).out;
    std::fs::write(dir.path().join("pin.yaml"), ROD).expect("written");
    for (from, to, says) in [
        ("per_hour: 62", "per_hours: 62", "Unknown key `per_hours`"),
        ("machines: [long]", "machines: [lang]", "`lang` is no machine of this shop"),
        ("grade: C45", "grade: C4x5", "No material `C4x5`"),
        ("diameter: 25", "diameter: -25", "-25 mm is too small"),
        ("language: en", "language: xx", "`xx` is not a value of `language`"),
        ("{grade: C45, price_per_kg: 1.4}", "{grade: C45}\n  - {grade: 1.0503}", "C45 is listed twice"),
        ("rates: {", "limits: {vc: 1}\nrates: {", "Unknown key `vc`"),
        ("rates: {", "cutting: {vc: 120}\nrates: {", "Unknown key `vc`"),
    ] {
        assert!(text.contains(from), "{from}");
        std::fs::write(dir.path().join("shop.yaml"), text.replacen(from, to, 1)).expect("written");
        let called = call_in(dir.path(), ["check", "pin.yaml"]);
        assert_eq!((called.status, called.out.as_str()), (2, ""), "{to}");
        assert!(called.err.contains(says) && called.err.contains("shop.yaml, line "), "{to}: {}", called.err);
    }
    // A list of materials in its own file.
    let own =
        text.replacen("materials:                      #", "materials: ours.yaml\nmaterials_were:                #", 1);
    let (head, rest) = own.split_once("materials_were:").expect("split");
    let rest = rest.split_once("\nbars:").expect("bars").1;
    std::fs::write(dir.path().join("shop.yaml"), format!("{head}bars:{rest}")).expect("written");
    std::fs::write(dir.path().join("ours.yaml"), "- {grade: C45, price_per_kg: 2.5}\n").expect("written");
    let plan = call_in(dir.path(), ["plan", "pin.yaml", "--format", "json"]);
    assert!(
        origins(&plan.json()).contains(&("rates.material_per_kg".to_owned(), "2.5".to_owned(), true)),
        "{}",
        plan.err
    );
    std::fs::write(dir.path().join("ours.yaml"), "- {grade: C45, price: 2.5}\n").expect("written");
    let called = call_in(dir.path(), ["check", "pin.yaml"]);
    assert!(called.err.contains("ours.yaml, line 1") && called.err.contains("`price`"), "{}", called.err);
}
