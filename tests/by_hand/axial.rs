//! Axial loads against Euler's columns on paper, and against the whole beam with an exact geometric stiffness.

use super::*;
use nalgebra::DMatrix;
use spanhold::answer::moved::{Move, moved};
use spanhold::process::pressed::stiffness_left;
use spanhold::proof;

/// A bar of 1.5 mm on hard supports, pushed by a headstock that is far away.
pub(super) fn thin_text() -> String {
    let changes = [
        ("diameter: 16, tolerance: [-0.1, 0]", "diameter: 1.2, tolerance: [-0.1, 0]"),
        ("diameter: 12, kind: groove", "diameter: 1, kind: groove"),
        ("diameter: 18, tolerance: [-0.2, 0]", "diameter: 1.4, tolerance: [-0.2, 0]"),
        ("thread: M8", "diameter: 1.3"),
        ("diameter: 20, bar_length", "diameter: 1.5, bar_length"),
        ("range: [15, 18.5], hold: 20, passes: 19", "range: [1.1, 1.45], hold: 10, passes: 2"),
        ("bore: 24", "bore: 6"),
        ("feed: 0.1,", "feed: 0.03,"),
        ("ap_max: 1.5", "ap_max: 0.5"),
    ];
    let mut text = text("single", "");
    for (from, to) in changes {
        assert!(text.contains(from), "no {from}");
        text = text.replacen(from, to, 1);
    }
    text
}

fn thin(more: &[(&str, &str)]) -> Job {
    let mut text = thin_text();
    for (from, to) in more {
        assert!(text.contains(from), "no {from}");
        text = text.replacen(from, to, 1);
    }
    read(&text)
}

fn at(turned_mm: f64, nose: Option<f64>, headstock_mm: f64) -> State {
    State { turned_mm, counter: Counter::of(nose), guide: Guide::Bush { headstock_mm } }
}

/// `EI` of a round bar of the test steel, N·mm².
fn ei(diameter_mm: f64) -> f64 {
    200_000.0 * PI * diameter_mm.powi(4) / 64.0
}

/// How a hold resists a slope, N·mm/rad: hard springs of 10 kN/µm, and the bar that bends between them.
fn hold(diameter_mm: f64, hold_mm: f64) -> f64 {
    1.0 / (4.0 / (10_000_000.0 * hold_mm * hold_mm) + hold_mm / (3.0 * ei(diameter_mm)))
}

/// A collet that resists the slope with `c`, a bush that holds the place: `π² EI/L² · (π² + 4β)/(π² + 2β)`, `β = c L/EI`.
fn column(diameter_mm: f64, length_mm: f64, hold_mm: f64) -> f64 {
    let (square, b) = (PI * PI, hold(diameter_mm, hold_mm) * length_mm / ei(diameter_mm));
    square * ei(diameter_mm) / (length_mm * length_mm) * (square + 4.0 * b) / (square + 2.0 * b)
}

/// Over the free 200 mm behind the bush, held over 40 mm: `β` = 3 · 200/40 = 15, so 1.752 times the 12.26 N between hinges. The supports of
/// 10 kN/µm are hard beside a bar of 1.5 mm.
#[test]
fn a_thin_bar_behind_the_bush_is_a_column() {
    let job = thin(&[]);
    let rig = rig(&job);
    let by_hand = column(1.5, 200.0, 40.0);
    assert!((by_hand - 1.752 * 12.263).abs() < 0.02, "{by_hand}");
    let critical = rig.critical_behind_n(230.0);
    assert!((critical / by_hand - 1.0).abs() < 1e-4, "{critical} {by_hand}");

    // The feed force of the first section: 0.15 mm deep at 0.03 mm.
    let state = at(20.0, None, 230.0);
    let pressed = rig.pressed(&state);
    near(pressed.load_n, forces(&rig, &[0.15], 0.03).cuts[0].feed_n);
    near(pressed.critical_n, critical);
    // 20 mm turned, 2 mm of gap, 30 mm of land, half of the free 200 mm.
    near(pressed.at_mm, 152.0);
    // Only the counter-spindle presses while the tool stands still, and it does not.
    assert_eq!(rig.pressed_standing(&state).share(), 0.0);
    // In the groove nothing is fed along the bar.
    assert_eq!(rig.pressed(&at(53.0, None, 230.0)).share(), 0.0);

    let segments = rig.segments().expect("can be cut");
    let answers = rig.answers(&state).expect("held");
    let view = View { rig: &rig, state: &state, answers: &answers, segment: &segments[0], rpm: 1000.0 };
    let buckling = found(&view, "buckling");
    near(buckling.demand, pressed.load_n);
    near(buckling.limit, 0.2 * critical);
    assert!(!buckling.passes(), "{buckling:?}");
    // 40 mm of free bar: 25 times the load. Less than a quarter of the limit is not told.
    let near_state = at(20.0, None, 70.0);
    let view = View { state: &near_state, ..view };
    assert!(rig.pressed(&near_state).share() < 0.05 && checks::all(&view).all(|f| f.check != "buckling"));
}

/// A force of the counter-spindle presses the finished span, 1.2 mm thick, between its collet of 10 mm and the bush. A pull takes load off the bar behind the bush, but only while the collet is closed.
#[test]
fn the_counter_spindle_presses_or_pulls() {
    let with = |n: &str| thin(&[("bore: 6", &format!("bore: 6\n    axial_load: {n}"))]);
    let job = with("-1.5");
    let rig_pressed = rig(&job);
    let state = at(48.0, Some(20.0), 70.0);
    let span = 48.0 + 2.0 - 20.0;
    let (front, behind) = rig_pressed.pressed_in_front(48.0, state.counter, true);
    let by_hand = column(1.2, span, 10.0);
    assert!((front.critical_n / by_hand - 1.0).abs() < 1e-3, "{} {by_hand}", front.critical_n);
    assert_eq!((front.load_n, front.at_mm), (1.5, 35.0));
    let feed = forces(&rig_pressed, &[0.15], 0.03).cuts[0].feed_n;
    near(behind, feed + 1.5);

    let job = with("2");
    let pulled = rig(&job);
    near(pulled.pressed_in_front(48.0, state.counter, true).1, feed - 2.0);
    near(pulled.pressed_in_front(48.0, Counter::Away, true).1, feed);
    near(pulled.pressed_in_front(48.0, Counter::Open { nose_mm: 20.0 }, true).1, feed);
    let job = with("20000");
    assert_eq!(rig(&job).pressed_in_front(48.0, state.counter, true).1, 0.0);
}

/// A drill in the front face presses the bar with its thrust, while the headstock is farthest: 360 mm, 330 of them free. Behind the last
/// grip the rear end stands out: `1/P = 4 L²/(π² EI) + L/c`, on the 1.3 mm of the last section.
#[test]
fn work_on_an_end_presses_too() {
    let job = thin(&[
        ("straightness: 0.5", "features: [{axial_hole: 0.5, depth: 2, end: front}]\n  straightness: 0.5"),
        ("straightness: 0.5", "back_work: [{name: press, axial_force: 60, time_s: 5}]\n  straightness: 0.5"),
    ]);
    let rig = rig(&job);
    let thrust = spanhold::mechanics::drilling::thrust_n(&rig.resistance, 0.5, 0.006);
    let front = checks::buckling::front(&rig).expect("it presses");
    near(front.demand, thrust);
    let by_hand = 0.2 * column(1.5, 330.0, 40.0);
    assert!((front.limit / by_hand - 1.0).abs() < 1e-3, "{} {by_hand}", front.limit);

    let (nose, slope) = (110.0, hold(1.3, 10.0));
    let out: f64 = 129.0 - nose;
    let critical = 1.0 / (4.0 * out * out / (PI * PI * ei(1.3)) + out / slope);
    let found: Vec<Finding> = checks::of_last_grip(&rig, nose, 1.4).map(|f| f.expect("held")).collect();
    let rear = found.iter().find(|f| f.check == "buckling").expect("it presses");
    near(rear.demand, 60.0);
    near(rear.limit, 0.2 * critical);
}

/// The whole beam of a state with a consistent geometric stiffness of the pressed length, `P/(30 L)` times the matrix of the cubic
/// shape functions: Przemieniecki, Theory of Matrix Structural Analysis (from memory). Fine enough, it is the exact beam-column.
struct Exact {
    stiffness: DMatrix<f64>,
    mass: DMatrix<f64>,
    pressed: DMatrix<f64>,
    tool: usize,
}

impl Exact {
    fn of(rig: &Rig<'_>, state: &State, (from_mm, to_mm): (f64, f64)) -> Exact {
        let fine: Vec<f64> = (0..=60).map(|i| from_mm + (to_mm - from_mm) * f64::from(i) / 60.0).collect();
        let beam = rig.beam(state, &fine);
        let n = beam.x_mm.len();
        let dense = |m: &spanhold::mechanics::banded::BlockTri| {
            let mut out = DMatrix::zeros(2 * n, 2 * n);
            for (i, d) in m.diag.iter().enumerate() {
                let at = 2 * i;
                (out[(at, at)], out[(at, at + 1)]) = (d.a, d.b);
                (out[(at + 1, at)], out[(at + 1, at + 1)]) = (d.b, d.c);
            }
            for (i, e) in m.upper.iter().enumerate() {
                for (k, v) in e.iter().enumerate() {
                    let (row, column) = (2 * i + k / 2, 2 * i + 2 + k % 2);
                    (out[(row, column)], out[(column, row)]) = (*v, *v);
                }
            }
            out
        };
        let mut pressed = DMatrix::zeros(2 * n, 2 * n);
        for (i, ends) in beam.x_mm.windows(2).enumerate() {
            let (l, middle) = (ends[1] - ends[0], 0.5 * (ends[0] + ends[1]));
            if middle < from_mm || middle > to_mm {
                continue;
            }
            let rows = [
                [36.0, 3.0 * l, -36.0, 3.0 * l],
                [3.0 * l, 4.0 * l * l, -3.0 * l, -l * l],
                [-36.0, -3.0 * l, 36.0, -3.0 * l],
                [3.0 * l, -l * l, -3.0 * l, 4.0 * l * l],
            ];
            for (r, row) in rows.iter().enumerate() {
                for (c, v) in row.iter().enumerate() {
                    pressed[(2 * i + r, 2 * i + c)] += v / (30.0 * l);
                }
            }
        }
        Exact {
            stiffness: dense(&beam.stiffness),
            mass: dense(&beam.mass),
            pressed,
            tool: 2 * beam.node(state.turned_mm),
        }
    }

    fn under(&self, load_n: f64, shift: f64) -> DMatrix<f64> {
        &self.stiffness - load_n * &self.pressed - shift * &self.mass
    }

    /// The largest value up to which a matrix stays positive definite.
    fn last(most: f64, matrix: impl Fn(f64) -> DMatrix<f64>) -> f64 {
        let (mut low, mut high) = (0.0, most);
        for _ in 0..45 {
            let middle = 0.5 * (low + high);
            if matrix(middle).cholesky().is_some() { low = middle } else { high = middle }
        }
        low
    }

    fn critical_n(&self, most: f64) -> f64 {
        Exact::last(most, |p| self.under(p, 0.0))
    }

    fn tool_mm_per_n(&self, load_n: f64) -> f64 {
        let inverse = self.under(load_n, 0.0).cholesky().expect("held").inverse();
        inverse[(self.tool, self.tool)]
    }

    fn critical_rpm(&self, load_n: f64, most: f64) -> f64 {
        let most = spanhold::units::rad_per_s(most).powi(2);
        spanhold::units::rpm(Exact::last(most, |s| self.under(load_n, s)).sqrt())
    }
}

/// The closed form never calls a bar safer than the whole beam does; the answers under the load are on the safe side of it too.
#[test]
fn a_loaded_bar_is_no_softer_than_told() {
    let mut seen = 0;
    for (supports, span, headstock) in [
        ("10000", None, 200.0),
        ("10000", Some(20.0), 250.0),
        ("30", Some(30.0), 180.0),
        ("1", None, 230.0),
        ("0.2", Some(25.0), 210.0),
    ] {
        let job = read(&thin_text().replace("stiffness: 10000", &format!("stiffness: {supports}")));
        let rig = rig(&job);
        let state = at(46.0, span, headstock);
        // From the tool to the nose of the headstock.
        let exact = Exact::of(&rig, &state, (46.0, 48.0 + headstock));
        let pressed = rig.pressed(&state);
        let critical = exact.critical_n(10.0 * pressed.critical_n);
        let share = pressed.critical_n / critical;
        assert!(share <= 1.0 && share > 0.45, "{supports}: {} of {critical}", pressed.critical_n);

        let (load, left) = (pressed.load_n, stiffness_left(pressed.share()));
        assert!(left < 0.95 && left > 0.1, "{left}");
        let told = rig.answers(&state).expect("held");
        let unloaded = told.tool_mm_per_n * left;
        assert!((exact.tool_mm_per_n(0.0) / unloaded - 1.0).abs() < 1e-6);
        let loaded = exact.tool_mm_per_n(load);
        assert!(loaded > unloaded && loaded <= told.tool_mm_per_n * (1.0 + 1e-9), "{supports}: {loaded} {told:?}");
        let rpm = exact.critical_rpm(load, 2.0 * told.critical_rpm / left.sqrt());
        assert!(rpm >= told.critical_rpm * 0.999, "{supports}: {rpm} {told:?}");
        seen += 1;
    }
    assert_eq!(seen, 5);
}

/// A bar on two hinges under a load in the middle: `F L³/(48 EI) · 3 (tan u - u)/u³` with `u = π/2 √(P/Pcr)`, Timoshenko & Gere (from
/// memory). `1/(1 - P/Pcr)` is above it by less than 2 %.
#[test]
fn the_factor_is_that_of_a_beam_column() {
    assert_eq!((stiffness_left(0.0), stiffness_left(0.05)), (1.0, 1.0));
    for share in [0.06f64, 0.2, 0.5, 0.8, 0.95] {
        let u = PI / 2.0 * share.sqrt();
        let grown = 3.0 * (u.tan() - u) / u.powi(3);
        let told = 1.0 / stiffness_left(share);
        assert!(told >= grown && told < 1.02 * grown, "{share}: {told} {grown}");
    }
    assert!(stiffness_left(2.0) > 0.0);
}

/// Both ways to the answers of a state agree under a load too.
#[test]
fn the_parts_of_a_loaded_bar_are_the_whole() {
    let job = thin(&[("bore: 6", "bore: 6\n    axial_load: -4")]);
    let rig = rig(&job);
    for (turned, nose, headstock) in [(20.0, None, 230.0), (49.0, Some(12.0), 200.0), (100.0, Some(40.0), 60.0)] {
        let state = at(turned, nose, headstock);
        assert!(rig.pressed(&state).share() > 0.05, "{state:?}");
        super::parts::agree(&rig, turned, Counter::of(nose), headstock);
    }
}

/// A deep cut in the middle of a thin shaft presses too much while the headstock is far. The planner cuts it with the headstock near;
/// with a re-grip just in front of it the plan is refused.
#[test]
fn a_plan_with_the_headstock_too_far_is_refused() {
    let job = read(
        "shaft:
  material: {name: test steel, kc11: 2000, mc: 0.25, e_gpa: 200, density: 8000, poisson: 0.3}
  sections:
    - {length: 40, diameter: 1.9, tolerance: [-0.1, 0], interrupt: free}
    - {length: 20, diameter: 1.2, tolerance: [-0.1, 0], interrupt: free}
    - {length: 40, diameter: 1.9, tolerance: [-0.1, 0], interrupt: free}
  straightness: 0.05
stock: {diameter: 2, bar_length: 3000}
machine:
  bush: {max_bar: 5, land: 10, gap: 0.5, stiffness: 60}
  headstock: {nearest: 20, stroke: 80, hold: 15, stiffness: 60, max_rpm: 5000, regrip_s: 6}
  counter_spindle: {nearest: 3, farthest: 200, bore: 6, bore_depth: 200, stiffness: 40, max_rpm: 5000, hand_over_s: 5,
    collets: [{name: A, range: [1.8, 2], hold: 8, passes: 2.2, clamp_force: 6000}]}
cutting: {tools: single, vc: 12, feed: 0.05, nose_radius: 0.1, ap_max: 1, ap_finish: 0.05}
limits: {whip: 1, sag: 1, stiffness_min: 0.001, whirl_ratio: 0.9, buckling_share: 0.05, tolerance_share: 1, free_ratio: 20}
",
    );
    let plan = spanhold::answer::advised(&job, spanhold::planner::Advice::Wanted).expect("no defect");
    assert_eq!(plan.verdict, spanhold::job::plan::Verdict::Feasible, "{:?}", plan.shortfall);
    let held = proof::prove(&plan, &job);
    assert!(held.holds(), "{:?}", held.breaches);
    assert!(plan.stages.iter().flat_map(|s| &s.checks).any(|c| c.check == "buckling"), "no load counts");
    assert!(!plan.headstock_regrips_mm.is_empty());
    let mut refused = 0;
    for index in 0..plan.headstock_regrips_mm.len() {
        let Ok((changed, verified)) = moved(&job, &plan, Move::Regrip { index }, 41.0) else { continue };
        let breach = verified.breaches.iter().find(|b| b.rule == "buckling").expect("it presses too much");
        assert!(breach.utilisation.is_some_and(|u| u > 1.0), "{breach:?}");
        assert!(!proof::prove(&changed, &job).holds());
        refused += 1;
    }
    assert!(refused > 0, "no re-grip can be moved to 41 mm: {:?}", plan.headstock_regrips_mm);
}

/// Without a bush the bar stands out of the headstock collet: from the tool at 20 mm to the nose at 50 + 8 mm. A grip on its front can only
/// help. Both are compared with the whole beam too.
#[test]
fn without_a_bush_the_bar_is_a_cantilever() {
    let text = thin_text()
        .replacen("machine:\n", "holding: no_bush\nmachine:\n  no_bush: {max_bar: 34, collet_gap: 8}\n", 1)
        .replacen("stiffness: 10000, max_rpm: 5000", "stiffness: 3, max_rpm: 5000", 1);
    let job = read(&text);
    let rig = rig(&job);
    let of = |counter| State { turned_mm: 20.0, counter, guide: Guide::Collet { stage_end_mm: 50.0 } };
    let (out, slope) = (38.0, 1.0 / (4.0 / (3000.0 * 40.0 * 40.0) + 40.0 / (3.0 * ei(1.5))));
    let free = rig.pressed(&of(Counter::Away));
    near(free.critical_n, 1.0 / (4.0 * out * out / (PI * PI * ei(1.5)) + out / slope));
    near(free.load_n, forces(&rig, &[0.15], 0.03).cuts[0].feed_n);
    near(free.at_mm, 39.0);
    let held = rig.pressed(&of(Counter::Holds { nose_mm: 15.0 }));
    assert!(held.critical_n >= free.critical_n && held.load_n == free.load_n);
    for (counter, pressed) in [(Counter::Away, free), (Counter::Holds { nose_mm: 15.0 }, held)] {
        let exact = Exact::of(&rig, &of(counter), (20.0, 58.0)).critical_n(20.0 * pressed.critical_n);
        assert!(pressed.critical_n <= exact, "{pressed:?} {exact}");
    }
}
