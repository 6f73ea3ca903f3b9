//! Facts every sliding-head turner knows, which the plans must reproduce. Common practice, no source: each test says so.

use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};

fn read(text: &str) -> Job {
    spanhold::input::read_job_text("trade.yaml", text, ".".as_ref()).unwrap_or_else(|messages| panic!("{messages:?}"))
}

fn plan(text: &str) -> Plan {
    spanhold::answer::answer(&read(text)).unwrap_or_else(|d| panic!("{d}"))
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

/// Common practice, no source: with a roughing and a finishing tool on opposite sides a neck below a millimetre is cut
/// in one travel, and no line crosses it.
#[test]
fn an_opposed_pair_cuts_a_thin_neck_in_one_travel() {
    let plan = plan(&needle("opposed"));
    assert_eq!(plan.verdict, Verdict::Feasible, "{:?}", plan.shortfall);
    let neck: Vec<_> = plan.segments.iter().filter(|s| s.section == 1).collect();
    assert_eq!(neck.len(), 1, "{neck:?}");
    assert_eq!((neck[0].travels, neck[0].from_mm, neck[0].to_mm), (1, 0.0, 40.0));
    assert!(plan.witnesses.iter().all(|w| w.section != 1), "{:?}", plan.witnesses);
}

/// Common practice, no source: one tool of the same depth limit would have to come back, so the bar is pulled back again
/// and again: dozens of short segments, or not at all.
#[test]
fn one_tool_cuts_a_thin_neck_in_dozens_of_segments_or_not_at_all() {
    let plan = plan(&needle("single"));
    if plan.verdict == Verdict::Feasible {
        let segments = plan.segments.iter().filter(|s| s.section == 1).count();
        assert!(segments >= 24, "{segments}");
    }
    // Where the neck must not show a line there is no such way.
    let never = needle("single").replace("tolerance: h9", "tolerance: h9, interrupt: never");
    let plan = self::plan(&never);
    assert_eq!(plan.verdict, Verdict::Infeasible);
    let why = plan.shortfall.map(|s| s.blocked_by);
    assert_eq!(why.as_deref(), Some("interrupt"));
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
limits: {{station_pitch: 20}}
"
    )
}

/// Common practice, no source: a metre of shaft is far beyond one stroke, and beyond what a free end endures; with the
/// counter-spindle carrying the front it is made in several stages.
#[test]
fn a_metre_of_shaft_takes_several_stages() {
    for stroke_mm in [200, 350] {
        let alone = plan(&long_shaft(stroke_mm, false));
        assert_eq!(alone.verdict, Verdict::Infeasible, "stroke {stroke_mm}");
        let reached = alone.shortfall.map_or(f64::INFINITY, |s| s.farthest_mm);
        assert!(reached <= f64::from(stroke_mm), "{reached}");
        let plan = plan(&long_shaft(stroke_mm, true));
        assert_eq!(plan.verdict, Verdict::Feasible, "stroke {stroke_mm}: {:?}", plan.shortfall);
        assert!(plan.stages.len() >= 3, "stroke {stroke_mm}: {} stages", plan.stages.len());
        // At least as often as the strokes demand.
        let strokes = (plan.stages.last().map_or(0.0, |s| s.to_mm) / f64::from(stroke_mm)).ceil() as usize;
        assert!(plan.headstock_regrips_mm.len() >= strokes - 1, "stroke {stroke_mm}");
    }
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

/// Common practice, no source: bar thicker than the bush takes is not turned next to the bush, however short the part.
#[test]
fn bar_beyond_the_bush_is_not_turned_next_to_it() {
    let thick = plan(&stub(42.0));
    assert_eq!(thick.verdict, Verdict::Infeasible);
    let why = thick.shortfall.map(|s| (s.blocked_by, s.text));
    assert_eq!(why.as_ref().map(|w| w.0.as_str()), Some("bush_size"), "{why:?}");
    // It is the bar alone: the same part from bar that the bush guides is made.
    let guided = plan(&stub(38.0));
    assert_eq!(guided.verdict, Verdict::Feasible, "{:?}", guided.shortfall);
}
