//! Schemas of the files that people write.

use super::parts::{choice, either, flag, list, map, number, pair, text};
use crate::fields::{self, BACK_WORK_MAX, COLLETS_MAX, FEATURES_MAX, REACHES_MAX, SECTIONS_MAX, TOOLS_MAX, WISHES_MAX};
use crate::lang;
use serde_json::{Value, json};

/// The job file.
pub(super) fn job() -> Value {
    let machine = either(lang::text("schema-machine-file-of-job"), vec![path(), machine()]);
    let mut other = vec![
        ("shop", text(lang::text("schema-shop-of-job"))),
        ("language", choice(lang::text("schema-language"), &lang::LANGUAGES)),
        ("units", units()),
        ("shaft", shaft()),
        (
            "stock",
            map(
                "stock",
                "the bar",
                vec![
                    ("tolerance", tolerance()),
                    ("kind", choice(lang::text("schema-stock-kind"), &["drawn", "turned", "ground", "bar_feeder"])),
                ],
                &[],
            ),
        ),
        ("machine", machine),
        ("cutting", map("cutting", "tools, speeds, feeds", vec![("tools", tools()), ("finisher", finisher())], &[])),
        ("tool_list", tool_list()),
        ("holding", choice("what holds the bar", &["bush", "no_bush"])),
        ("hold", choice(lang::text("schema-hold"), &["collet", "centre"])),
        ("wishes", wishes()),
        ("objective", choice(lang::text("schema-objective"), &["time", "fewest_hand_overs", "margin"])),
        ("rates", rates(&["machine_per_hour", "material_per_kg"])),
        ("order", map("order", lang::text("schema-order"), vec![], &["pieces"])),
        ("vary", vary()),
    ];
    other.extend(limits_of_job());
    map("job", lang::text("schema-job"), other, &["shaft"])
}

/// Spreads that a machine, a material or a bar has of its own.
pub(super) fn own_scatter(path: &str) -> Value {
    map(path, lang::text("schema-own-scatter"), vec![], &[])
}

/// The maps of a job that have numbers only.
pub(super) fn limits_of_job() -> Vec<(&'static str, Value)> {
    vec![
        ("limits", map("limits", "limits of the checks", vec![], &[])),
        ("planning", map("planning", lang::text("schema-planning"), vec![], &[])),
        ("scatter", map("scatter", lang::text("schema-scatter"), vec![], &[])),
        ("change_prices", map("change_prices", lang::text("schema-change-prices"), vec![], &[])),
        (fields::CONFIDENCE.key(), number(&fields::CONFIDENCE)),
        (fields::CONFIDENCE_WARN.key(), number(&fields::CONFIDENCE_WARN)),
    ]
}

/// The tools that there are.
pub(super) fn tool_list() -> Value {
    let cut = |what: &str| {
        let mut cut = map("tool_list.cut", what, vec![], &[]);
        cut["properties"] = json!({"vc": number(&fields::TOOL_VC), "feed": number(&fields::TOOL_FEED)});
        cut
    };
    let both =
        || vec![("rough", cut(lang::text("schema-tool-rough"))), ("finish", cut(lang::text("schema-tool-finish")))];
    let mut own = map("tool_list.material", lang::text("schema-tool-material"), both(), &[]);
    own["properties"]["vc"] = number(&fields::TOOL_VC);
    own["properties"]["feed"] = number(&fields::TOOL_FEED);
    let mut keys = vec![
        ("name", text(lang::text("schema-tool-name"))),
        ("kind", choice(lang::text("schema-tool-kind"), &fields::TOOL_KINDS)),
        ("station", text(lang::text("schema-tool-station"))),
        ("insert", text(lang::text("schema-tool-insert"))),
        (
            "materials",
            json!({"type": "object", "description": lang::text("schema-tool-materials"), "additionalProperties": own}),
        ),
    ];
    keys.extend(both());
    let tool = map("tool_list", lang::text("schema-tool"), keys, &["name", "kind"]);
    list(lang::text("schema-tool-list"), tool, TOOLS_MAX)
}

/// The units of a file.
pub(super) fn units() -> Value {
    choice(lang::text("schema-units"), &[lang::Units::Metric, lang::Units::Inch].map(lang::Units::code))
}

/// The cost rates.
pub(super) fn rates(required: &[&str]) -> Value {
    map("rates", "cost rates", vec![("currency", text("currency of the rates"))], required)
}

pub(super) fn path() -> Value {
    json!({"type": "string", "description": "path of a file"})
}

pub(super) fn tools() -> Value {
    choice(lang::text("schema-tools"), &["single", "opposed", "tandem"])
}

fn finisher() -> Value {
    let side = choice(lang::text("schema-finisher-side"), &["same", "opposite"]);
    map("cutting.finisher", lang::text("schema-finisher"), vec![("side", side)], &[])
}

fn shaft() -> Value {
    let work = vec![("name", text(lang::text("schema-rear-work-name")))];
    let back = map("shaft.back_work", "work on the rear end after part-off", work, &["name", "time_s"]);
    let other = vec![
        ("name", text("name of the shaft")),
        ("drawing", text("number of the drawing")),
        ("revision", text("revision of the drawing")),
        ("date", text("date of the drawing or of the sheet")),
        ("material", material()),
        ("sections", {
            let mut sections = list(lang::text("schema-sections"), section(), SECTIONS_MAX);
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
        ("name", text(lang::text("schema-material-name"))),
        ("vc", pair(&fields::MATERIAL_VC, "usual cutting speeds, [low, high]; m/min")),
        ("class", choice(lang::text("schema-material-class"), &fields::MATERIAL_CLASSES)),
        ("scatter", own_scatter("shaft.material.scatter")),
    ];
    let own =
        map("shaft.material", lang::text("schema-own-material"), own, &["name", "e_gpa", "density", "kc11", "mc"]);
    either("name or number of the built-in table, or a map", vec![text("such as C45 or 1.4301"), own])
}

pub(super) fn tolerance() -> Value {
    let class = json!({"type": "string", "description": "a class of ISO 286 for shafts such as h6, or a deviation to both sides such as ±0.05"});
    either("tolerance of the diameter", vec![class, pair(&fields::TOLERANCE, "deviations, [lower, upper]; mm")])
}

fn section() -> Value {
    let other = vec![
        ("name", text("name of the section")),
        ("kind", choice("a groove or a knurl", &["groove", "knurl"])),
        ("thread", text(lang::text("schema-thread"))),
        ("thread_by", choice(lang::text("schema-thread-by"), &["single_point", "whirling", "rolling"])),
        ("taper", pair(&fields::TAPER, "diameters of a taper, [front, rear]; mm")),
        ("sides", json!({"description": fields::SIDES.what(), "enum": [2, 4, 6, 8]})),
        ("tolerance", tolerance()),
        ("chamfer", edge(&fields::CHAMFER)),
        ("radius", edge(&fields::RADIUS)),
        ("turned_tolerance", tolerance()),
        ("interrupt", choice("whether the feed may stop inside it", &["never", "avoid", "free"])),
        ("grip", flag("whether a collet may hold it")),
        ("finish_pass", flag(lang::text("schema-finish-pass"))),
    ];
    let mut out = map("shaft.sections", "one section", other, &["length"]);
    let forms = ["diameter", "thread", "taper", "across_flats"];
    out["anyOf"] = forms.iter().map(|key| json!({"required": [key]})).collect();
    out
}

/// A size of the front edge, or of both.
fn edge(field: &'static fields::Field) -> Value {
    either(field.what(), vec![number(field), map(field.path, field.what(), vec![], &[])])
}

fn feature() -> Value {
    let other = vec![
        ("keyseat", pair(&fields::KEYSEAT, "width and depth of a keyseat; mm")),
        ("centre_hole", text("a centre hole of ISO 6411, such as A2.5")),
        ("tapped_hole", text(lang::text("schema-thread"))),
        ("keyway", pair(&fields::KEYWAY, "width and depth of a keyway from an end; mm")),
        ("engrave", text(lang::text("schema-engraving"))),
        ("end", choice(lang::text("schema-end"), &["front", "back", "rear"])),
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
            map("wishes.hand_over_at", lang::text("schema-hand-over-with-grip"), vec![], &["at"]),
        ],
    );
    let stretch = either(
        lang::text("schema-never-grip-length"),
        vec![text("name or number of a section"), pair(&fields::WISH_NEVER_GRIP, "two places, [front, rear]; mm")],
    );
    let other = vec![
        ("hand_over_at", list("hand-overs that must be made", hand_over, WISHES_MAX)),
        ("never_grip", list(lang::text("schema-never-grip"), stretch, WISHES_MAX)),
    ];
    map("wishes", lang::text("schema-wishes"), other, &[])
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
    let mut reaches = list(lang::text("schema-reaches"), number(reach), REACHES_MAX);
    reaches["minItems"] = json!(1);
    let turret = map(&at("tools.turret"), "the turret", vec![], &["stations"]);
    let bush_kind = choice(lang::text("schema-bush-kind"), &["fixed", "following"]);
    let tray = map(&at("part_off.tray"), lang::text("schema-tray"), vec![], &["max_length", "max_diameter"]);
    let opposed = flag("whether two turning tools can cut from opposite sides");
    let tandem = flag(lang::text("schema-tool-slides"));
    let other = vec![
        ("name", text("name of the machine")),
        ("units", units()),
        (
            "bush",
            map(&at("bush"), "the guide bush", vec![("kind", bush_kind)], &["max_bar", "land", "gap", "stiffness"]),
        ),
        ("no_bush", map(&at("no_bush"), lang::text("schema-no-bush"), vec![], &["max_bar", "collet_gap"])),
        (
            "headstock",
            map(
                &at("headstock"),
                "the headstock",
                vec![],
                &["nearest", "stroke", "hold", "stiffness", "max_rpm", "regrip_s"],
            ),
        ),
        ("bar_feed", map(&at("bar_feed"), lang::text("schema-bar-feed"), vec![], &["max_rpm"])),
        ("counter_spindle", counter_spindle()),
        ("cross_tool_reach", either(reach.what(), vec![number(reach), reaches])),
        ("part_off", map(&at("part_off"), "part-off", vec![("tray", tray)], &[])),
        ("scatter", own_scatter("machine.scatter")),
        (
            "tools",
            map(
                &at("tools"),
                "places for tools",
                vec![("opposed", opposed), ("tandem", tandem), ("turret", turret)],
                &[],
            ),
        ),
    ];
    map("machine", "a sliding-head lathe", other, &["headstock"])
}

fn counter_spindle() -> Value {
    let prefix = "machine.counter_spindle";
    let at = |key: &str| format!("{prefix}.{key}");
    let mut collets = list(lang::text("schema-collets"), collet(vec![]), COLLETS_MAX);
    collets["minItems"] = json!(1);
    let other = vec![
        ("back_work", choice(lang::text("schema-rear-work-place"), &["in_line", "aside"])),
        ("sleeve", map(&at("sleeve"), "supports in the bore", vec![], &["pitch", "stiffness"])),
        ("centre", map(&at("centre"), lang::text("schema-centre"), vec![], &["force", "stiffness"])),
        ("collets", collets),
    ];
    let required = ["nearest", "farthest", "bore", "bore_depth", "stiffness", "max_rpm", "hand_over_s"];
    map(prefix, "the counter-spindle", other, &required)
}

/// A collet, with `more` keys.
pub(super) fn collet(more: Vec<(&'static str, Value)>) -> Value {
    let mut keys = vec![
        ("name", text(lang::text("schema-collet-name"))),
        ("range", pair(&fields::COLLET_RANGE, "diameters it holds, [smallest, largest]; mm")),
    ];
    keys.extend(more);
    let required = ["name", "range", "hold", "passes", "clamp_force"];
    map("machine.counter_spindle.collets", "one collet", keys, &required)
}

/// The readings file of `fit`.
pub(super) fn readings() -> Value {
    let machine = either(lang::text("schema-machine-file-of-readings"), vec![path(), machine()]);
    let supports = choice("a support", &["bush", "headstock", "counter_spindle"]);
    let reading = map("readings.set_ups.dial", "one dial reading", vec![], &["load", "at", "deflection"]);
    let set_up = vec![
        ("name", text("name of the set-up")),
        ("holding", choice("what holds the bar", &["bush", "no_bush"])),
        ("collet", text("name of the counter-spindle's collet")),
        ("dial", list("dial readings", reading, fields::readings::READINGS_MAX)),
    ];
    let mut set_up = map("readings.set_ups", lang::text("schema-set-up"), set_up, &["front"]);
    set_up["anyOf"] = json!([{"required": ["dial"]}, {"required": ["frequency"]}]);
    let mut set_ups = list("the set-ups", set_up, fields::readings::SET_UPS_MAX);
    set_ups["minItems"] = json!(1);
    let mut fit = list(lang::text("schema-fit"), supports, 3);
    fit["minItems"] = json!(1);
    fit["uniqueItems"] = json!(true);
    let other = vec![
        ("units", units()),
        ("machine", machine),
        ("material", material()),
        ("fit", fit),
        ("errors", map("readings.errors", "errors of the readings", vec![], &[])),
        ("set_ups", set_ups),
    ];
    map("readings", lang::text("schema-readings"), other, &["machine", "material", "diameter", "set_ups"])
}
