//! Facts every sliding-head turner knows, which the plans must reproduce. Common practice, no source: each row says so.
//! A count stands for each fact; a verdict is 1 for feasible, 0 for not.

use crate::row::{Agreement, Row, Standing, Table, assert_agree};
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;

const SOURCE: &str = "sliding-head turning";
const SAME: Agreement = Agreement::Within(0.0);

fn table(agreement: Agreement) -> Table {
    Table::new(SOURCE, Standing::Practice, agreement)
}

fn feasible(plan: &Plan) -> f64 {
    f64::from(u8::from(plan.verdict == Verdict::Feasible))
}

fn read(text: &str) -> Job {
    spanhold::input::read_job_text("trade.yaml", text, ".".as_ref()).unwrap_or_else(|messages| panic!("{messages:?}"))
}

fn plan(text: &str) -> Plan {
    spanhold::answer::advised(&read(text), Advice::None).unwrap_or_else(|d| panic!("{d}"))
}

/// A probe needle of an invented laboratory stirrer: 40 mm of 0.9 mm in front of a body, from 3 mm bar.
fn needle(tools: &str) -> String {
    format!(
        "shaft:
  name: probe needle
  material: '1.4305'
  sections:
    - {{length: 40, diameter: 0.9, tolerance: h9, name: neck}}
    - {{length: 24, diameter: 2.8, name: body}}
stock: {{diameter: 3, bar_length: 3000}}
machine:
  name: short 12
  bush: {{max_bar: 12, land: 12, gap: 0.8, stiffness: 60}}
  headstock: {{nearest: 20, stroke: 90, hold: 20, stiffness: 60, max_rpm: 12000, regrip_s: 5}}
  counter_spindle:
    nearest: 4
    farthest: 150
    bore: 14
    bore_depth: 150
    stiffness: 40
    max_rpm: 10000
    hand_over_s: 4
    collets:
      - {{name: body, range: [2.6, 2.9], hold: 8, passes: 3.1, clamp_force: 3000}}
cutting: {{tools: {tools}, vc: 60, feed: 0.02, nose_radius: 0.1, ap_max: 1.0, ap_finish: 0.1}}
"
    )
}

/// With a roughing and a finishing tool on opposite sides a neck below a millimetre is cut in one travel, and no line
/// crosses it. One tool of the same depth limit would have to come back, so the bar is pulled back again and again: dozens
/// of short segments, or not at all; where the neck must not show a line there is no such way.
fn thin_neck() -> Vec<Row> {
    let pair = plan(&needle("opposed"));
    let neck = |p: &Plan| p.segments.iter().filter(|s| s.section == 1).count() as f64;
    let mut t = table(SAME);
    t.printed("neck Ø0.9 × 40 from 3 mm bar, opposed pair: feasible", "1", feasible(&pair));
    t.printed("neck Ø0.9 × 40, opposed pair: segments", "1", neck(&pair));
    t.printed("neck Ø0.9 × 40, opposed pair: travels", "1", pair.segments[0].travels as f64);
    let lines = pair.witnesses.iter().filter(|w| w.section == 1).count() as f64;
    t.printed("neck Ø0.9 × 40, opposed pair: lines across it", "0", lines);
    let single = plan(&needle("single"));
    let mut many = table(Agreement::AtLeast);
    let segments = if single.verdict == Verdict::Feasible { neck(&single) } else { f64::INFINITY };
    many.printed("neck Ø0.9 × 40, one tool: segments (inf: not at all)", "20", segments);
    let never = plan(&needle("single").replace("tolerance: h9", "tolerance: h9, interrupt: never"));
    t.printed("neck Ø0.9 × 40, one tool, no lines allowed: feasible", "0", feasible(&never));
    let why = never.shortfall.map(|s| s.blocked_by);
    assert_eq!(why.as_deref(), Some("interrupt"));
    [t.done(), many.done()].concat()
}

/// About a metre of shaft from 25 mm bar on a machine of the 32 mm class; `counter` says whether it has one.
fn long_shaft(stroke_mm: u32, counter: bool) -> String {
    let counter = if counter {
        "  counter_spindle:
    nearest: 28
    farthest: 420
    bore: 34
    bore_depth: 1200
    stiffness: 80
    max_rpm: 8000
    hand_over_s: 7
    sleeve: {pitch: 150, stiffness: 5}
    collets:
      - {name: \"20\", range: [19.6, 20.1], hold: 25, passes: 20.4, clamp_force: 12000}
"
    } else {
        ""
    };
    format!(
        "shaft:
  name: transport roller core
  material: C45
  sections:
    - {{length: 30, diameter: 16}}
    - {{length: 420, diameter: 20}}
    - {{length: 4, diameter: 18, kind: groove}}
    - {{length: 480, diameter: 20}}
    - {{length: 30, diameter: 16}}
  straightness: 0.3
stock: {{diameter: 22, bar_length: 3000}}
machine:
  name: long 32
  bush: {{max_bar: 32, land: 35, gap: 1.5, stiffness: 150}}
  headstock: {{nearest: 60, stroke: {stroke_mm}, hold: 40, stiffness: 120, max_rpm: 8000, regrip_s: 6}}
{counter}  shared_stop_saving_s: 3
cutting: {{vc: 110, feed: 0.12, ap_max: 3, speed_floor: 0.6}}
planning: {{station_pitch: 20}}
"
    )
}

/// A metre of shaft is far beyond one stroke, and beyond what a free end endures; with the counter-spindle carrying the
/// front it is made in several stages.
fn metre() -> Vec<Row> {
    let (mut t, mut least) = (table(SAME), table(Agreement::AtLeast));
    let mut reach = table(Agreement::AtMost);
    for stroke_mm in [200, 350] {
        let alone = plan(&long_shaft(stroke_mm, false));
        let name = |what: &str| format!("a metre from 22 mm bar, stroke {stroke_mm}, {what}");
        t.printed(name("no counter-spindle: feasible"), "0", feasible(&alone));
        let reached = alone.shortfall.map_or(f64::INFINITY, |s| s.farthest_mm);
        reach.printed(name("no counter-spindle: reached, mm"), &stroke_mm.to_string(), reached);
        let held = plan(&long_shaft(stroke_mm, true));
        t.printed(name("counter-spindle: feasible"), "1", feasible(&held));
        least.printed(name("counter-spindle: stages"), "3", held.stages.len() as f64);
        // At least as often as the strokes demand.
        let strokes = (held.stages.last().map_or(0.0, |s| s.to_mm) / f64::from(stroke_mm)).ceil() as usize;
        let regrips = held.headstock_regrips_mm.len() as f64;
        least.printed(name("counter-spindle: re-grips"), &(strokes - 1).to_string(), regrips);
    }
    [t.done(), reach.done(), least.done()].concat()
}

/// A short stub of an invented textile machine from thick bar, on a machine that guides bar up to 38 mm.
fn stub(bar_mm: f64) -> String {
    format!(
        "shaft:
  name: warp beam stub
  material: C45
  sections:
    - {{length: 25, diameter: 30}}
    - {{length: 35, diameter: 36}}
stock: {{diameter: {bar_mm}, bar_length: 3000}}
machine:
  name: guided 38
  bush: {{max_bar: 38, land: 40, gap: 2, stiffness: 200}}
  no_bush: {{max_bar: 42, collet_gap: 10}}
  headstock: {{nearest: 70, stroke: 250, hold: 45, stiffness: 150, max_rpm: 6000, regrip_s: 6}}
  counter_spindle:
    nearest: 10
    farthest: 300
    bore: 40
    bore_depth: 400
    stiffness: 100
    max_rpm: 6000
    hand_over_s: 6
    collets:
      - {{name: \"36\", range: [35.6, 36.1], hold: 20, passes: 36.4, clamp_force: 20000}}
cutting: {{vc: 150, feed: 0.15, ap_max: 4}}
"
    )
}

/// Bar thicker than the bush takes is not turned next to the bush, however short the part; the same part from bar that
/// the bush guides is made. Without the bush the thick bar is turned, but unheld only as a short part.
fn thick_bar() -> Vec<Row> {
    let mut t = table(SAME);
    let thick = plan(&stub(42.0));
    t.printed("60 mm long stub from 42 mm bar, bush for 38 mm: feasible", "0", feasible(&thick));
    let why = thick.shortfall.map(|s| s.blocked_by);
    assert_eq!(why.as_deref(), Some("bush_size"));
    t.printed("the same from 38 mm bar: feasible", "1", feasible(&plan(&stub(38.0))));
    let bare = |text: String| text.replace("cutting: ", "holding: no_bush\ncutting: ");
    t.printed("the same from 42 mm bar without the bush: feasible", "1", feasible(&plan(&bare(stub(42.0)))));
    // With nothing to hold the front a slender part is out of reach: eleven diameters past the collet.
    let long = bare(stub(42.0)).replace("length: 35", "length: 375");
    let (head, rest) = long.split_once("  counter_spindle:").expect("the stub's machine has one");
    let (_, tail) = rest.split_once("holding: ").expect("comes after the machine");
    let alone = plan(&format!("{head}holding: {tail}"));
    t.printed("400 mm from 42 mm bar without bush and counter-spindle: feasible", "0", feasible(&alone));
    t.done()
}

/// Rows of this subject.
pub fn rows() -> Vec<Row> {
    [thin_neck(), metre(), thick_bar()].concat()
}

/// Plans take time, so the rows are those of the ledger.
#[test]
fn val_facts_of_the_trade() {
    let layers = crate::ledger::layers().iter();
    let facts: Vec<Row> = layers.flat_map(|(_, rows)| rows).filter(|r| r.source == SOURCE).cloned().collect();
    assert_agree(&facts);
}
