//! Run-out of a collet at the tool: a bar over hard pins on paper, and plans that keep a grip away from the bush for it.

use super::*;
use nalgebra::{Matrix4, Vector4};
use spanhold::answer::moved::{Move, moved};
use spanhold::proof;

fn text(collet: &str, section: &str) -> String {
    format!(
        "shaft:
  material: {{name: test steel, kc11: 2000, mc: 0.25, e_gpa: 200, density: 8000, poisson: 0.3}}
  sections:
    - {{length: 60, diameter: 9, tolerance: [-0.1, 0], interrupt: free}}
    - {{length: 120, diameter: 8, tolerance: [-0.1, 0], interrupt: free{section}}}
  straightness: 0.1
stock: {{diameter: 10, bar_length: 3000}}
machine:
  bush: {{max_bar: 12, land: 20, gap: 1, stiffness: 60}}
  headstock: {{nearest: 40, stroke: 200, hold: 30, stiffness: 60, max_rpm: 6000, regrip_s: 6}}
  counter_spindle: {{nearest: 3, farthest: 300, bore: 15, bore_depth: 300, stiffness: 40, max_rpm: 6000, hand_over_s: 5,
    collets: [{{name: A, range: [7.5, 9.5], hold: 15, passes: 10, clamp_force: 9000{collet}}}]}}
cutting: {{tools: single, vc: 30, feed: 0.1, ap_max: 2, ap_finish: 0.2}}
limits: {{whip: 1, sag: 1, stiffness_min: 0.2, whirl_ratio: 0.9, tolerance_share: 1, damping_ratio: 0.3, free_ratio: 8}}
"
    )
}

fn at(turned_mm: f64, nose_mm: f64) -> State {
    State { turned_mm, counter: Counter::Holds { nose_mm }, guide: Guide::Bush { headstock_mm: 150.0 } }
}

/// Deflection `x` behind the second of six pins of a bar with one diameter, when the first two pins are moved by 1: Clapeyron's
/// equation of three moments with moved supports, any text on strength of materials (from memory). `EI` falls out.
fn over_pins(pins: [f64; 6], x: f64) -> f64 {
    let y = [1.0, 1.0, 0.0, 0.0, 0.0, 0.0];
    let l = |i: usize| pins[i + 1] - pins[i];
    let (mut m, mut r) = (Matrix4::zeros(), Vector4::zeros());
    for i in 1..5 {
        m[(i - 1, i - 1)] = 2.0 * (l(i - 1) + l(i));
        if i > 1 {
            m[(i - 1, i - 2)] = l(i - 1);
        }
        if i < 4 {
            m[(i - 1, i)] = l(i);
        }
        r[i - 1] = 6.0 * ((y[i - 1] - y[i]) / l(i - 1) + (y[i + 1] - y[i]) / l(i));
    }
    let moments = m.lu().solve(&r).expect("a row of pins");
    let (a, b, span) = (moments[0], moments[1], l(1));
    1.0 - x / span - x * (span - x) / (6.0 * span) * (a * (2.0 * span - x) + b * (span + x))
}

/// A bar of 1.5 mm is soft beside pins of 5 kN/µm, and thin enough for its shear not to count.
#[test]
fn a_bar_over_hard_pins_follows_its_collet() {
    let hard = |s: String| s.replace("stiffness: 60", "stiffness: 10000").replace("stiffness: 40", "stiffness: 10000");
    let text = hard(text(", run_out: 0.02", ", run_out: 0.01"))
        .replace("diameter: 9", "diameter: 1.5")
        .replace("diameter: 8", "diameter: 1.5")
        .replace("diameter: 10", "diameter: 1.5")
        .replace("range: [7.5, 9.5]", "range: [1.4, 1.6]");
    let job = read(&text);
    let rig = rig(&job);
    let mut last = 1.0;
    for nose in [140.0, 120.0, 80.0, 40.0] {
        let (turned, face) = (150.0, 151.0);
        let by_hand = over_pins([nose - 15.0, nose, face, face + 20.0, face + 150.0, face + 180.0], turned - nose);
        let found = rig.answers(&at(turned, nose)).expect("held").tool_follows;
        assert!((found / by_hand - 1.0).abs() < 0.01, "{nose}: {found}, by hand {by_hand}");
        assert!(found > 0.0 && found < last, "farther from the bush less arrives: {found}");
        last = found;
    }
}

/// Twice half of the reading times the part that arrives; nothing where a key or the grip is missing, or nothing is cut.
#[test]
fn the_reading_at_the_tool() {
    let job = read(&text(", run_out: 0.05", ", run_out: 0.01"));
    let rig = rig(&job);
    let segments = rig.segments().expect("can be cut");
    let cut = segments.iter().find(|s| s.section == 1).expect("turned");
    let state = at(100.0, 60.0);
    let answers = rig.answers(&state).expect("held");
    let view = View { rig: &rig, state: &state, answers: &answers, segment: cut, rpm: 500.0 };
    let run_out = found(&view, "run_out");
    near(run_out.demand, 0.05 * answers.tool_follows);
    near(run_out.limit, 0.01);
    assert!(answers.tool_follows > 0.01 && answers.tool_follows < 0.5, "{}", answers.tool_follows);
    let none = |view: &View<'_>| assert!(checks::all(view).all(|f| f.check != "run_out"));
    none(&View { segment: &segments[0], ..view });
    none(&View { segment: segments.last().expect("part-off"), ..view });
    let free = State { counter: Counter::Away, ..state };
    none(&View { state: &free, ..view });
    for (collet, section) in [("", ", run_out: 0.01"), (", run_out: 0.05", "")] {
        let job = read(&text(collet, section));
        let rig = self::rig(&job);
        assert_eq!(rig.answers(&state).expect("held").tool_follows, 0.0);
        none(&View { rig: &rig, ..view });
    }
    for (turned, nose, headstock) in [(100.0, 60.0, 150.0), (100.0, 95.0, 220.0), (170.0, 20.0, 60.0)] {
        super::parts::agree(&rig, turned, Counter::Holds { nose_mm: nose }, headstock);
    }
}

/// A limit between what a grip next to the bush and a far one give: the plan keeps its grips away, and is refused with the grip moved
/// next to the bush.
#[test]
fn a_grip_too_near_the_bush_is_refused_for_its_run_out() {
    let probe = read(&text(", run_out: 0.05", ", run_out: 0.01"));
    let follows = |nose: f64| rig(&probe).answers(&at(100.0, nose)).expect("held").tool_follows;
    let limit = 0.05 * (follows(97.0) * follows(50.0)).sqrt();
    let job = read(&text(", run_out: 0.05", &format!(", run_out: {limit:.4}")));
    let plan = spanhold::answer::advised(&job, spanhold::planner::Advice::Wanted).expect("no defect");
    assert_eq!(plan.verdict, spanhold::job::plan::Verdict::Feasible, "{:?}", plan.shortfall);
    let held = proof::prove(&plan, &job);
    assert!(held.holds(), "{:?}", held.breaches);
    let told = |p: &spanhold::job::plan::Plan| {
        p.stages.iter().flat_map(|s| &s.checks).filter(|c| c.check == "run_out").count()
    };
    assert!(told(&plan) > 0);
    let mut refused = 0;
    for (i, stage) in plan.stages.iter().enumerate().filter(|(_, s)| s.grip.is_some() && s.from_mm > 20.0) {
        let to = if stage.from_mm > 64.0 && stage.from_mm < 75.0 { 58.0 } else { stage.from_mm - 2.0 };
        let Ok((_, verified)) = moved(&job, &plan, Move::Grip { stage: i + 1 }, to) else { continue };
        refused += usize::from(verified.breaches.iter().any(|b| b.rule == "run_out"));
    }
    assert!(refused > 0, "{:?}", plan.stages.iter().map(|s| (s.from_mm, s.to_mm, s.grip.clone())).collect::<Vec<_>>());
}
