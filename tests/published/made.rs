//! Parts that are told as made, and rules of how far a bar may stand out, beside our verdicts; misses included.
//!
//! The sources tell diameter, length and how the part was held. Bar, machine, collet and cutting data are assumed here, and so is the
//! tolerance where none is told. So a verdict says that the part is within reach of a suitable machine, not that it was made so. Short
//! parts are taken by a collet of the counter-spindle, which no source tells.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;

const SEEN: Standing = Standing::Verified("its page, the first 2000 characters of the text");
const RULE: &str = "rules of part makers for the length that may stand out";

/// A part of one diameter.
struct Part {
    material: &'static str,
    diameter_mm: f64,
    length_mm: f64,
    bar_mm: f64,
    cutting: &'static str,
    /// ISO 286 class; empty: ISO 2768-m.
    tolerance: &'static str,
}

/// A counter-spindle with an invented centre, and a tray for any part.
const CENTRE: &str = "  part_off: {width: 1.5, time_s: 4, tray: {max_length: 200, max_diameter: 20}}
  counter_spindle:
    {nearest: 5, farthest: 250, bore: 20, bore_depth: 200, stiffness: 60, max_rpm: 10000, hand_over_s: 5,
     centre: {force: 100, stiffness: 40}, collets: [{name: c, range: [1, 1.2], hold: 8, passes: 1.5, clamp_force: 12000}]}
";

/// An invented machine of the 20 mm class; `headstock` is the stiffness of its collet, N/µm.
fn machine(headstock: f64, collet_mm: Option<f64>) -> String {
    let counter = collet_mm.map_or(String::new(), |d| {
        format!(
            "  counter_spindle:
    {{nearest: 5, farthest: 250, bore: 20, bore_depth: 200, stiffness: 60, max_rpm: 10000, hand_over_s: 5, collets: [
      {{name: c, range: [{:.2}, {:.2}], hold: 8, passes: {:.2}, clamp_force: 12000}}]}}\n",
            d - 0.4,
            d + 0.1,
            d + 0.2
        )
    });
    format!(
        "machine:
  bush: {{max_bar: 20, land: 15, gap: 1, stiffness: 60}}
  no_bush: {{max_bar: 22, collet_gap: 5}}
  headstock: {{nearest: 30, stroke: 200, hold: 25, stiffness: {headstock}, max_rpm: 12000, regrip_s: 5}}
  part_off: {{width: 1.5, time_s: 4}}
{counter}"
    )
}

fn plan(part: &Part, holding: &str, headstock: f64, gripped: bool) -> Plan {
    let tolerance = if part.tolerance.is_empty() { String::new() } else { format!(", tolerance: {}", part.tolerance) };
    let text = format!(
        "shaft:
  material: '{}'
  sections: [{{length: {}, diameter: {}{tolerance}}}]
stock: {{diameter: {}, bar_length: 2000}}
{}cutting: {{{}}}
holding: {holding}
",
        part.material,
        part.length_mm,
        part.diameter_mm,
        part.bar_mm,
        machine(headstock, gripped.then_some(part.diameter_mm)),
        part.cutting
    );
    let job = spanhold::input::read_job_text("made.yaml", &text, ".".as_ref())
        .unwrap_or_else(|told| panic!("{}\n{text}", spanhold::input::render(&told)));
    spanhold::answer::advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}"))
}

/// Without the guide bush, on a centre. The hole is as small as ISO 6411 has them.
fn on_centre(part: &Part) -> Plan {
    let machine = machine(90.0, None).replace("  part_off: {width: 1.5, time_s: 4}\n", CENTRE);
    let text = format!(
        "shaft:
  material: '{}'
  sections: [{{length: {}, diameter: {}}}]
  features: [{{centre_hole: A1, end: front}}]
stock: {{diameter: {}, bar_length: 2000}}
{machine}cutting: {{{}}}
holding: no_bush
hold: centre
",
        part.material, part.length_mm, part.diameter_mm, part.bar_mm, part.cutting
    );
    let job = spanhold::input::read_job_text("centre.yaml", &text, ".".as_ref())
        .unwrap_or_else(|told| panic!("{}\n{text}", spanhold::input::render(&told)));
    spanhold::answer::advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}"))
}

fn feasible(plan: &Plan) -> f64 {
    f64::from(u8::from(plan.verdict == Verdict::Feasible))
}

fn one(source: &'static str, agreement: Agreement, what: &str, made: &str, ours: f64) -> Vec<Row> {
    let mut t = Table::new(source, SEEN, agreement);
    t.printed(what, made, ours);
    t.done()
}

const SAME: Agreement = Agreement::Within(0.0);

const PIN: Part = Part {
    material: "1.4305",
    diameter_mm: 1.5,
    length_mm: 101.6,
    bar_mm: 2.0,
    cutting: "feed: 0.03, ap_max: 0.5",
    tolerance: "h8",
};
const SHAFT_4: Part =
    Part { material: "1.4301", diameter_mm: 4.0, length_mm: 65.0, bar_mm: 6.0, cutting: "ap_max: 1.2", tolerance: "" };
const SHAFT_3: Part =
    Part { material: "C45", diameter_mm: 3.2, length_mm: 28.0, bar_mm: 6.0, cutting: "ap_max: 0.5", tolerance: "" };
const ARBOR: Part = Part {
    material: "CuZn39Pb3",
    diameter_mm: 3.2,
    length_mm: 25.0,
    bar_mm: 6.35,
    cutting: "ap_max: 0.4",
    tolerance: "h9",
};
const PIVOT: Part = Part {
    material: "CuZn39Pb3",
    diameter_mm: 1.6,
    length_mm: 3.2,
    bar_mm: 6.35,
    cutting: "ap_max: 0.8",
    tolerance: "",
};
const ROUND: Part =
    Part { material: "1.4301", diameter_mm: 7.0, length_mm: 66.7, bar_mm: 8.0, cutting: "ap_max: 1", tolerance: "h8" };
const WIRE: Part =
    Part { material: "1.4301", diameter_mm: 1.6, length_mm: 8.0, bar_mm: 2.0, cutting: "ap_max: 0.2", tolerance: "" };
const PIN_5: Part =
    Part { material: "E295", diameter_mm: 5.0, length_mm: 25.0, bar_mm: 8.0, cutting: "ap_max: 0.75", tolerance: "" };
const ROD: Part = Part {
    material: "1.4301",
    diameter_mm: 12.0,
    length_mm: 150.0,
    bar_mm: 12.5,
    cutting: "vc: 15.7, feed: 0.5",
    tolerance: "",
};

/// With the guide bush and one tool.
fn guided() -> Vec<Row> {
    let verdict = |part: &Part| feasible(&plan(part, "bush", 90.0, true));
    [
        (
            "a trade magazine's column on long thin pins, 2003",
            "pin Ø1.5 × 101.6, made in a sliding head: feasible",
            &PIN,
        ),
        (
            "a school workshop's page",
            "shaft Ø4 × 65, made on a lathe without a bush, here with one: feasible",
            &SHAFT_4,
        ),
        (
            "a school workshop's page, the second shaft",
            "shaft Ø3.2 × 28, made as the one above, here with a bush: feasible",
            &SHAFT_3,
        ),
        (
            "a clock maker's page, 2014",
            "brass arbor Ø3.2 × 25, made on a small lathe, here with a bush: feasible",
            &ARBOR,
        ),
        (
            "a watchmaker's page on rods, 2014",
            "hexagon rod turned round, here Ø7 × 66.7, made between centres, here with a bush: feasible",
            &ROUND,
        ),
        (
            "a worked example of a course",
            "rod Ø12 × 150 from 12.5, an example on paper, here with a bush: feasible",
            &ROD,
        ),
    ]
    .into_iter()
    .flat_map(|(source, what, part)| one(source, SAME, what, "1", verdict(part)))
    .collect()
}

/// Without the guide bush, front free.
fn unguided() -> Vec<Row> {
    let verdict = |part: &Part| feasible(&plan(part, "no_bush", 90.0, false));
    // What a bench lathe does by light cuts and a file. Chatter is reckoned for the worst speed, and with no more damping than the bar's own.
    const STRICTER: Agreement = Agreement::Missed;
    [
        ("a clock maker's page, 2014", SAME, "brass pivot Ø1.6 × 3.2, made without a bush: feasible", "1", &PIVOT),
        (
            "a school workshop's page",
            STRICTER,
            "shaft Ø4 × 65, made without a bush, told as hard: feasible",
            "1",
            &SHAFT_4,
        ),
        (
            "a school workshop's page, the second shaft",
            STRICTER,
            "shaft Ø3.2 × 28, made without a bush: feasible",
            "1",
            &SHAFT_3,
        ),
        ("a clock maker's page, 2014", STRICTER, "brass arbor Ø3.2 × 25, made without a bush: feasible", "1", &ARBOR),
        ("a bench-lathe page", STRICTER, "steel wire Ø2 standing out 8 mm, told as the most: feasible", "1", &WIRE),
        (
            "a model makers' forum, 2012",
            SAME,
            "steel pin Ø5 × 25 from 8 in a chuck, told as failing: feasible",
            "0",
            &PIN_5,
        ),
        (
            "a worked example of a course",
            SAME,
            "rod Ø12 × 150 without a bush, L/d 12: beyond every rule: feasible",
            "0",
            &ROD,
        ),
    ]
    .into_iter()
    .flat_map(|(source, agreement, what, made, part)| one(source, agreement, what, made, verdict(part)))
    .collect()
}

/// Without the guide bush, with a centre in the front.
fn centred() -> Vec<Row> {
    let parts = [
        (
            "a model makers' forum, 2012",
            SAME,
            "steel pin Ø5 × 25 from 8, told as too long without a centre, here with one: feasible",
            &PIN_5,
        ),
        (
            "a watchmaker's page on rods, 2014",
            Agreement::Missed,
            "hexagon rod turned round, here Ø7 × 66.7, made between centres, here on one: feasible",
            &ROUND,
        ),
    ];
    let row = |(source, agreement, what, part)| one(source, agreement, what, "1", feasible(&on_centre(part)));
    parts.into_iter().flat_map(row).collect()
}

/// Largest L/d that one tool turns in one feed-out with the front free.
fn reach(diameter_mm: f64, holding: &str, headstock: f64) -> f64 {
    let part = Part {
        material: "C45",
        diameter_mm,
        length_mm: 12.0 * diameter_mm,
        bar_mm: (1.25 * diameter_mm).min(20.0),
        cutting: "ap_max: 1",
        tolerance: "h11",
    };
    let found = plan(&part, holding, headstock, false);
    found.shortfall.map_or(part.length_mm, |s| s.farthest_mm) / diameter_mm
}

/// Rules say 3 without a bush, danger from 4 to 5, support above 5; about 2 free without a tailstock, 4 and more with a bush.
fn rules() -> Vec<Row> {
    let table = |agreement| Table::new(RULE, SEEN, agreement);
    let (mut least, mut most, mut missed) =
        (table(Agreement::AtLeast), table(Agreement::AtMost), table(Agreement::Missed));
    let what = |d: f64, how: &str| format!("largest L/d of Ø{d}, C45, h11, one tool, {how}");
    for d in [5.0, 10.0, 16.0] {
        least.printed(what(d, "with a bush"), "4", reach(d, "bush", 90.0));
        most.printed(what(d, "no bush, headstock 400 N/µm"), "5", reach(d, "no_bush", 400.0));
    }
    // A stiff headstock meets the rules from Ø10 on; a soft one and thin bars stay below.
    least.printed(what(10.0, "free without a tailstock, headstock 400 N/µm"), "2", reach(10.0, "no_bush", 400.0));
    least.printed(what(16.0, "no bush, headstock 400 N/µm: the rule of 3"), "3", reach(16.0, "no_bush", 400.0));
    least.printed(what(10.0, "no bush, headstock 400 N/µm: the rule of 3"), "3", reach(10.0, "no_bush", 400.0));
    for (d, k) in [(5.0, 400.0), (16.0, 90.0)] {
        let ours = f64::from(u8::from(reach(d, "no_bush", k) >= 3.0));
        missed.printed(what(d, &format!("no bush, headstock {k} N/µm: the rule of 3 is reached")), "1", ours);
    }
    [least.done(), most.done(), missed.done()].concat()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [guided(), unguided(), centred(), rules()].concat()
}

/// Plans take time, so the rows are those of the ledger.
#[test]
fn val_parts_told_as_made() {
    let layers = crate::ledger::layers().iter();
    let rows: Vec<Row> =
        layers.filter(|(layer, _)| *layer == crate::ledger::MADE).flat_map(|(_, r)| r).cloned().collect();
    assert!(rows.len() > 20, "{}", rows.len());
    assert_agree(&rows);
}
