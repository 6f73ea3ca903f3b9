//! Schemas of the files that people write.

use super::parts::{choice, either, flag, list, map, number, pair, text};
use crate::fields::{self, BACK_WORK_MAX, COLLETS_MAX, FEATURES_MAX, REACHES_MAX, SECTIONS_MAX, WISHES_MAX};
use serde_json::{Value, json};

/// The job file.
pub(super) fn job() -> Value {
    let machine = either("path of a machine file, counted from the job's folder, or a map", vec![path(), machine()]);
    let rates = vec![("currency", text("currency of the rates"))];
    let other = vec![
        ("shaft", shaft()),
        ("stock", map("stock", "the bar", vec![("tolerance", tolerance())], &["diameter"])),
        ("machine", machine),
        ("cutting", map("cutting", "tools, speeds, feeds", vec![("tools", tools())], &[])),
        ("holding", choice("what holds the bar", &["bush", "no_bush"])),
        ("limits", map("limits", "limits of the checks", vec![], &[])),
        ("planning", map("planning", "how finely a plan is looked for", vec![], &[])),
        ("scatter", map("scatter", "spreads for `plan --scatter`", vec![], &[])),
        ("wishes", wishes()),
        ("objective", choice("what a plan is to make best", &["time", "fewest_hand_overs", "margin"])),
        ("rates", map("rates", "cost rates", rates, &["machine_per_hour", "material_per_kg"])),
        ("order", map("order", "the order to be quoted", vec![], &["pieces"])),
        ("vary", vary()),
    ];
    map("job", "a shaft, a bar, a machine, and how it is to be turned", other, &["shaft", "stock", "machine"])
}

fn path() -> Value {
    json!({"type": "string", "description": "path of a file"})
}

fn tools() -> Value {
    choice("one tool, or a roughing and a finishing tool on opposite sides", &["single", "opposed"])
}

fn shaft() -> Value {
    let work = vec![("name", text("what the work is called"))];
    let back = map("shaft.back_work", "work on the rear end after part-off", work, &["name", "time_s"]);
    let other = vec![
        ("name", text("name of the shaft")),
        ("drawing", text("number of the drawing")),
        ("revision", text("revision of the drawing")),
        ("material", material()),
        ("sections", {
            let mut sections = list("from the front face to the part-off face", section(), SECTIONS_MAX);
            sections["minItems"] = json!(1);
            sections
        }),
        ("features", list("holes, keyseats, work on the ends", feature(), FEATURES_MAX)),
        ("back_work", list("work on the rear end after part-off", back, BACK_WORK_MAX)),
    ];
    map("shaft", "the finished part", other, &["material", "sections"])
}

fn material() -> Value {
    let own = vec![
        ("name", text("what the material is called")),
        ("vc", pair(&fields::MATERIAL_VC, "usual cutting speeds, [low, high]; m/min")),
    ];
    let own = map("shaft.material", "a material of your own", own, &["name", "e_gpa", "density", "kc11", "mc"]);
    either("name or number of the built-in table, or a map", vec![text("such as C45 or 1.4301"), own])
}

fn tolerance() -> Value {
    let class = json!({"type": "string", "description": "a class of ISO 286 for shafts, such as h6"});
    either("tolerance of the diameter", vec![class, pair(&fields::TOLERANCE, "deviations, [lower, upper]; mm")])
}

fn section() -> Value {
    let other = vec![
        ("name", text("name of the section")),
        ("kind", choice("a groove or a knurl", &["groove", "knurl"])),
        ("thread", json!({"type": "string", "description": "a metric thread, such as M16x1.5"})),
        ("taper", pair(&fields::TAPER, "diameters of a taper, [front, rear]; mm")),
        ("sides", json!({"description": fields::SIDES.what, "enum": [2, 4, 6, 8]})),
        ("tolerance", tolerance()),
        ("interrupt", choice("whether the feed may stop inside it", &["never", "avoid", "free"])),
        ("grip", flag("whether a collet may hold it")),
        ("finish_pass", flag("a last pass in any case")),
    ];
    let mut out = map("shaft.sections", "one section", other, &["length"]);
    let forms = ["diameter", "thread", "taper", "across_flats"];
    out["anyOf"] = forms.iter().map(|key| json!({"required": [key]})).collect();
    out
}

fn feature() -> Value {
    let other = vec![
        ("keyseat", pair(&fields::KEYSEAT, "width and depth of a keyseat; mm")),
        ("centre_hole", text("a centre hole of ISO 6411, such as A2.5")),
        ("tapped_hole", text("a metric thread, such as M6")),
        ("keyway", pair(&fields::KEYWAY, "width and depth of a keyway from an end; mm")),
        ("engrave", text("the text")),
        ("end", choice("which end; rear is another word for back", &["front", "back", "rear"])),
        ("forming", choice("how a socket is made", &["shave", "punch"])),
    ];
    let mut out = map("shaft.features", "one feature", other, &[]);
    let kinds = [
        &["cross_hole", "at"][..],
        &["keyseat", "from", "to"],
        &["centre_hole"],
        &["facing"],
        &["axial_hole", "depth"],
        &["tapped_hole"],
        &["hex_socket", "depth"],
        &["keyway", "length"],
        &["engrave", "height"],
    ];
    out["oneOf"] = kinds.iter().map(|keys| json!({"required": keys})).collect();
    out
}

fn wishes() -> Value {
    let hand_over = either(
        "a hand-over that must be made",
        vec![
            number(&fields::WISH_HAND_OVER),
            map("wishes.hand_over_at", "with the place of its grip", vec![], &["at"]),
        ],
    );
    let stretch = either(
        "a stretch that is never gripped",
        vec![text("name or number of a section"), pair(&fields::WISH_NEVER_GRIP, "two places, [front, rear]; mm")],
    );
    let other = vec![
        ("hand_over_at", list("hand-overs that must be made", hand_over, WISHES_MAX)),
        ("never_grip", list("what is never to be gripped", stretch, WISHES_MAX)),
    ];
    map("wishes", "what is decided beforehand", other, &[])
}

fn vary() -> Value {
    let range = |of: &str| {
        let section = vec![("section", text("name of the section, or its number from the front"))];
        map(&format!("vary.{of}"), &format!("the {of} of a section"), section, &["section", "from", "to", "step"])
    };
    map("vary", "a family of parts", vec![("length", range("length")), ("diameter", range("diameter"))], &[])
}

/// The machine file.
pub(super) fn machine() -> Value {
    let at = |key: &str| format!("machine.{key}");
    let reach = &fields::CROSS_TOOL_REACH;
    let mut reaches = list("one distance a tool; mm", number(reach), REACHES_MAX);
    reaches["minItems"] = json!(1);
    let turret = map(&at("tools.turret"), "the turret", vec![], &["stations"]);
    let opposed = flag("whether two turning tools can cut from opposite sides");
    let other = vec![
        ("name", text("name of the machine")),
        ("bush", map(&at("bush"), "the guide bush", vec![], &["max_bar", "land", "gap", "stiffness"])),
        ("no_bush", map(&at("no_bush"), "work without the bush", vec![], &["max_bar", "collet_gap"])),
        (
            "headstock",
            map(
                &at("headstock"),
                "the headstock",
                vec![],
                &["nearest", "stroke", "hold", "stiffness", "max_rpm", "regrip_s"],
            ),
        ),
        ("counter_spindle", counter_spindle()),
        ("cross_tool_reach", either(reach.what, vec![number(reach), reaches])),
        ("part_off", map(&at("part_off"), "part-off", vec![], &[])),
        ("tools", map(&at("tools"), "places for tools", vec![("opposed", opposed), ("turret", turret)], &[])),
    ];
    map("machine", "a sliding-head lathe", other, &["headstock"])
}

fn counter_spindle() -> Value {
    let prefix = "machine.counter_spindle";
    let at = |key: &str| format!("{prefix}.{key}");
    let collet = vec![
        ("name", text("what the collet is called")),
        ("range", pair(&fields::COLLET_RANGE, "diameters it holds, [smallest, largest]; mm")),
    ];
    let collet = map(&at("collets"), "one collet", collet, &["name", "range", "hold", "passes", "clamp_force"]);
    let mut collets = list("the collets at hand", collet, COLLETS_MAX);
    collets["minItems"] = json!(1);
    let other = vec![
        ("back_work", choice("where the rear end is worked on", &["in_line", "aside"])),
        ("sleeve", map(&at("sleeve"), "supports in the bore", vec![], &["pitch", "stiffness"])),
        ("collets", collets),
    ];
    let required = ["nearest", "farthest", "bore", "bore_depth", "stiffness", "max_rpm", "hand_over_s", "collets"];
    map(prefix, "the counter-spindle", other, &required)
}

/// The readings file of `fit`.
pub(super) fn readings() -> Value {
    let machine =
        either("path of a machine file, counted from the folder of the readings, or a map", vec![path(), machine()]);
    let supports = choice("a support", &["bush", "headstock", "counter_spindle"]);
    let reading = map("readings.set_ups.dial", "one dial reading", vec![], &["load", "at", "deflection"]);
    let set_up = vec![
        ("name", text("name of the set-up")),
        ("holding", choice("what holds the bar", &["bush", "no_bush"])),
        ("collet", text("name of the counter-spindle's collet")),
        ("dial", list("dial readings", reading, fields::readings::READINGS_MAX)),
    ];
    let mut set_up = map("readings.set_ups", "the bar held in one way", set_up, &["front"]);
    set_up["anyOf"] = json!([{"required": ["dial"]}, {"required": ["frequency"]}]);
    let mut set_ups = list("the set-ups", set_up, fields::readings::SET_UPS_MAX);
    set_ups["minItems"] = json!(1);
    let mut fit = list("what is to be fitted", supports, 3);
    fit["minItems"] = json!(1);
    fit["uniqueItems"] = json!(true);
    let other = vec![
        ("machine", machine),
        ("material", material()),
        ("fit", fit),
        ("errors", map("readings.errors", "errors of the readings", vec![], &[])),
        ("set_ups", set_ups),
    ];
    map("readings", "what was measured on a machine", other, &["machine", "material", "diameter", "set_ups"])
}
