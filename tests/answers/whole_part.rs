//! The whole part: features as work, tools in their places, both spindles in time, an order. Facts of the trade are common
//! practice without a source; each test says so.

use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof;

fn read(text: &str) -> Job {
    spanhold::input::read_job_text("whole.yaml", text, ".".as_ref()).unwrap_or_else(|messages| panic!("{messages:?}"))
}

fn plan(text: &str) -> Plan {
    // What would help takes many plans, and is not asked here.
    spanhold::answer::advised(&read(text), Advice::None).unwrap_or_else(|d| panic!("{d}"))
}

/// A stub of an invented dosing machine with what a test puts in.
#[derive(Clone, Copy)]
struct Stub {
    material: &'static str,
    features: &'static str,
    /// Of the counter-spindle.
    back_work: &'static str,
    /// Of the machine.
    tools: &'static str,
    rest: &'static str,
}

const STUB: Stub = Stub { material: "C45", features: "", back_work: "in_line", tools: "", rest: "" };

impl Stub {
    fn text(self) -> String {
        let Stub { material, features, back_work, tools, rest } = self;
        format!(
            "shaft:
  name: dosing stub
  material: {material}
  sections:
    - {{length: 30, diameter: 14, interrupt: free}}
    - {{length: 3, diameter: 12, kind: groove}}
    - {{length: 60, diameter: 16, interrupt: free}}
    - {{length: 12, thread: M14x1.5}}
  features:
    - {{cross_hole: 3, at: 40}}
{features}
stock: {{diameter: 18, bar_length: 3000}}
machine:
  name: short 20
  bush: {{max_bar: 20, land: 25, gap: 1.5, stiffness: 120}}
  headstock: {{nearest: 40, stroke: 160, hold: 30, stiffness: 100, max_rpm: 8000, regrip_s: 6, clamp_force: 15000}}
  counter_spindle:
    nearest: 12
    farthest: 200
    bore: 22
    bore_depth: 200
    stiffness: 80
    max_rpm: 8000
    hand_over_s: 5
    back_work: {back_work}
    unload_s: 4
    collets:
      - {{name: \"16\", range: [15.6, 16.1], hold: 20, passes: 16.4, clamp_force: 12000}}
  tool_change_s: 1
  bar_change_s: 30
{tools}
cutting: {{vc: 120, feed: 0.12, ap_max: 3}}
planning: {{station_pitch: 10}}
{rest}
"
        )
    }

    fn plan(self) -> Plan {
        plan(&self.text())
    }
}

fn feasible(plan: Plan) -> Plan {
    assert_eq!(plan.verdict, Verdict::Feasible, "{:?}", plan.shortfall);
    plan
}

const SOCKET: &str = "    - {hex_socket: 5, depth: 6, end: back}";
const PUNCHED: &str = "    - {hex_socket: 5, depth: 6, end: back, forming: punch}";

/// Common practice, no source: a hexagon socket in a tough material is shaved in fine strokes; nothing holds the part
/// against one blow. In brass a blow may do.
#[test]
fn hexagon_sockets_in_tough_materials_are_shaved_in_fine_steps() {
    for material in ["'1.4404'", "Ti-6Al-4V", "CoCrMo"] {
        let punched = Stub { material, features: PUNCHED, ..STUB }.plan();
        assert_eq!(punched.verdict, Verdict::Infeasible, "{material}");
        assert_eq!(punched.shortfall.map(|s| s.blocked_by).as_deref(), Some("push"), "{material}");
        let shaved = feasible(Stub { material, features: SOCKET, ..STUB }.plan());
        let socket = shaved.features.iter().find(|f| f.text.contains("hexagon socket")).expect("it is done");
        // 0.39 mm to the corner in steps of 0.05 mm.
        assert!(socket.text.contains("6 × 8 strokes"), "{}", socket.text);
        assert!(socket.axial_n.is_some_and(|n| n < 800.0), "{socket:?}");
    }
    feasible(
        Stub { material: "CuZn39Pb3", features: "    - {hex_socket: 2, depth: 3, end: back, forming: punch}", ..STUB }
            .plan(),
    );
}

#[test]
fn a_finer_step_pushes_less_and_takes_longer() {
    let socket = |step: &'static str| {
        let found = feasible(Stub { features: step, ..STUB }.plan());
        let push = found.stages.last().and_then(|s| s.checks.iter().find(|c| c.check == "push")).map(|c| c.utilisation);
        (push.expect("the last grip is checked"), found.time_s.back_work)
    };
    let coarse = socket("    - {hex_socket: 5, depth: 6, end: back, step: 0.08}");
    let fine = socket("    - {hex_socket: 5, depth: 6, end: back, step: 0.03}");
    // The hole under it may push harder than fine strokes do.
    assert!(fine.0 <= coarse.0 && fine.1 > 1.5 * coarse.1, "{coarse:?} {fine:?}");
}

/// By hand, C45: a cutter of 8 mm at 140 m/min turns at 5570 rev/min, its two teeth take 0.036 mm each, 401 mm/min, on the mean
/// 0.0229 mm; kc = 2220 × 0.0229^-0.14 = 3766; 3766 × (8 × 4) × 401 / 140000 = 345 N.
#[test]
fn a_cutter_that_mills_a_keyseat_bends_the_bar_like_a_drill() {
    let features = "    - {keyseat: [8, 4], from: 72, to: 88}";
    let plan = feasible(Stub { features, ..STUB }.plan());
    let keyseat = plan.features.iter().find(|f| f.feature == "keyseat").expect("it is done");
    let force_n = keyseat.thrust_n.expect("milling takes force");
    assert!((force_n - 345.3).abs() < 0.5, "{force_n}");
    let drill = plan.stages.iter().flat_map(|s| &s.checks).find(|c| c.check == "drill" && c.at_mm == 88.0);
    let bent_mm = drill.expect("the keyseat bends more than the small hole does").demand;
    // The hole of the stub is drilled with next to nothing, so that the keyseat decides.
    let text = Stub { features, ..STUB }.text().replace("cross_hole: 3, at: 40", "cross_hole: 3, at: 40, thrust: 10");
    let at = |mm: f64| plan_of_limit(&text, mm);
    assert_eq!(at(1.01 * bent_mm).verdict, Verdict::Feasible);
    // Other grips bend it less, but the bush alone gives way by about 345 N / 120 N/µm = 3 µm.
    assert!(0.1 * bent_mm < 0.003, "{bent_mm}");
    let told = at(0.1 * bent_mm).shortfall.expect("too much");
    assert!(told.blocked_by == "drill" && told.text.contains("during keyseat 8 × 4"), "{told:?}");
}

fn plan_of_limit(text: &str, drill_mm: f64) -> Plan {
    plan(&text.replace("planning: {", &format!("limits: {{drill: {drill_mm:.6}}}\nplanning: {{")))
}

/// Features on the rear end are done in the order of the job: a face is faced before it is centred.
#[test]
fn the_rear_end_is_worked_on_in_the_order_of_the_job() {
    let features = "    - {facing: 0.3, end: back}\n    - {centre_hole: A2, end: back}";
    let plan = feasible(Stub { features, ..STUB }.plan());
    let works: Vec<&str> = plan.features.iter().filter(|f| f.stage.is_none()).map(|f| f.text.as_str()).collect();
    assert_eq!(works, ["face 0.3 off", "centre hole A2"]);
}

const MANY: &str = "    - {centre_hole: A2, end: front}
    - {tapped_hole: M5, depth: 8, end: front}
    - {hex_socket: 3, depth: 4, end: back}
    - {tapped_hole: M3, at: 60}
    - {engrave: A7, height: 3, at: 45}";
const GANG: &str = "  tools: {turning: 5, cross_driven: 2, front_fixed: 2, back_fixed: 2}";
const TURRET: &str = "  tools: {turning: 1, back_fixed: 2, turret: {stations: 10, tools_per_station: 3}}";

/// Common practice, no source: a turret of ten stations with up to three tools each holds about thirty, and stages rarely
/// run out of tools; a small gang does.
#[test]
fn a_turret_of_ten_stations_with_three_tools_each_holds_what_a_gang_does_not() {
    let gang = Stub { features: MANY, tools: GANG, ..STUB }.plan();
    assert_eq!(gang.verdict, Verdict::Infeasible);
    let why = gang.shortfall.expect("a reason");
    assert_eq!(why.blocked_by, "tool_places");
    assert!(
        why.text.contains("cross-driven tools: 4 needed") && why.text.contains("front end: 3 needed"),
        "{}",
        why.text
    );
    let told = gang.tooling.expect("told all the same");
    assert!(!told.fits && told.places.iter().map(|p| p.short).sum::<usize>() == 3, "{told:?}");

    let turret = feasible(Stub { features: MANY, tools: TURRET, ..STUB }.plan()).tooling.expect("told");
    assert_eq!(turret.turret_tools, Some(30));
    // Turning, back-turning, grooving, threading and part-off tool, less the one beside the bar; four across, three in front.
    assert_eq!(turret.turret_used, Some(11), "{turret:?}");
    assert!(turret.fits && turret.places.iter().all(|p| p.short == 0));
    assert!(feasible(Stub { features: MANY, ..STUB }.plan()).tooling.is_none(), "nothing is claimed without places");
}

/// A thread longer than the land allows, on a machine that lists its tool places and has no whirling unit: the ways out are told.
#[test]
fn a_long_thread_needs_a_whirling_unit_or_another_way() {
    let long = |tools: &'static str, thread: &str| {
        let text = Stub { tools, ..STUB }.text().replace("{length: 12, thread: M14x1.5}", thread);
        plan(&text)
    };
    let thread = "{length: 40, thread: M14x1.5-6g-LH, name: spigot}";
    let text = Stub { tools: TURRET, ..STUB }.text().replace("{length: 12, thread: M14x1.5}", thread);
    let none = spanhold::answer::advised(&read(&text), Advice::Wanted).unwrap_or_else(|d| panic!("{d}"));
    let why = none.shortfall.expect("a reason");
    assert_eq!(why.blocked_by, "thread_length", "{why:?}");
    let ways: Vec<&str> = why.changes.iter().map(|c| c.change.as_str()).collect();
    assert!(ways.contains(&"tools.whirling") && ways.contains(&"thread_by"), "{ways:?}");

    const UNIT: &str =
        "  tools: {turning: 1, back_fixed: 2, whirling: 1, turret: {stations: 10, tools_per_station: 3}}";
    let whirled = feasible(long(UNIT, thread));
    assert!(whirled.segments.iter().any(|s| s.work == "whirl" && s.feed_mm == 1.5));
    // Class and hand are told.
    assert!(whirled.shaft.sections.iter().any(|s| s.label == "M14x1.5-6g-LH"));
    assert!(whirled.notes.iter().any(|n| n.contains("left-hand")), "{:?}", whirled.notes);
    // Without a list of places a unit is assumed, and the plan says so.
    let assumed = feasible(long("", thread));
    assert!(assumed.notes.iter().any(|n| n.contains("A whirling unit is assumed")), "{:?}", assumed.notes);

    let rolled = feasible(long(TURRET, "{length: 40, thread: M14x1.5-6g, thread_by: rolling}"));
    assert!(rolled.features.iter().any(|f| f.feature == "thread_rolling"));
    assert!(rolled.notes.iter().any(|n| n.contains("13.03 mm")), "d - 0.649519 P: {:?}", rolled.notes);
}

#[test]
fn a_pair_needs_tools_on_both_sides() {
    let pair = |opposed: &str| {
        let tools = format!("  tools: {{turning: 8, cross_driven: 2, opposed: {opposed}}}");
        plan(
            &STUB
                .text()
                .replace("  bar_change_s: 30", &format!("  bar_change_s: 30\n{tools}"))
                .replace("vc: 120", "tools: opposed, vc: 120"),
        )
    };
    assert_eq!(pair("false").shortfall.map(|s| s.blocked_by).as_deref(), Some("tool_places"));
    feasible(pair("true"));
}

/// Work on the rear end done aside hides behind the free stage, as far as that is long enough.
#[test]
fn the_rear_end_hides_behind_the_next_parts_free_stage() {
    let line = feasible(Stub { features: SOCKET, ..STUB }.plan());
    let aside = feasible(Stub { features: SOCKET, back_work: "aside", ..STUB }.plan());
    let (line, aside) = (line.cycle.expect("in time"), aside.cycle.expect("in time"));
    assert_eq!((line.overlap.as_str(), aside.overlap.as_str()), ("in_line", "aside"));
    let rear: f64 = aside.operations.iter().filter(|o| o.side == "counter_spindle").map(|o| o.to_s - o.from_s).sum();
    assert!(rear > 15.0, "{rear}");
    assert!((aside.hidden_s + aside.wait_s - rear).abs() < 1e-9);
    // The plan in line would hide as much or less; the plan aside is the fastest up to a thousandth.
    let saved = line.steady_s - aside.steady_s;
    assert!(saved > 10.0 && saved <= aside.hidden_s + 2e-3 * line.steady_s, "{saved} {}", aside.hidden_s);
    // In line nothing is done alone; aside the rear end begins with the next part.
    assert!(line.operations.iter().all(|o| o.side != "counter_spindle"));
    let first = aside.operations.iter().find(|o| o.side == "counter_spindle").expect("there");
    assert!(first.from_s.abs() < 1e-9, "{first:?}");
}

/// With the rear end aside and longer than the shortest free stage, a longer free stage costs nothing until it is as long:
/// no plan of the same job with the first hand-over elsewhere is faster from part to part.
#[test]
fn the_free_stage_is_as_long_as_pays() {
    let text = Stub { features: SOCKET, back_work: "aside", ..STUB }.text();
    let free = feasible(plan(&text));
    let best = free.cycle.as_ref().expect("in time").steady_s + free.time_s.penalties;
    let mut compared = 0;
    for at in [40, 50, 60, 70, 80] {
        let forced = text.replace("limits:", &format!("wishes: {{hand_over_at: [{at}]}}\nlimits:"));
        let Ok(job) = spanhold::input::read_job_text("forced.yaml", &forced, ".".as_ref()) else { continue };
        let Ok(other) = spanhold::answer::advised(&job, Advice::None) else { continue };
        let Some(cycle) = &other.cycle else { continue };
        assert!(
            cycle.steady_s + other.time_s.penalties >= best * (1.0 - 1e-3) - 1e-6,
            "{at}: {} {best}",
            cycle.steady_s
        );
        compared += 1;
    }
    assert!(compared >= 2, "{compared} other plans");
}

#[test]
fn operations_fill_the_time_and_no_side_does_two_things_at_once() {
    for back_work in ["in_line", "aside"] {
        let plan = feasible(Stub { features: MANY, back_work, ..STUB }.plan());
        let cycle = plan.cycle.as_ref().expect("in time");
        for sides in [["headstock", "both"], ["counter_spindle", "both"]] {
            let mut at = f64::NEG_INFINITY;
            for o in cycle.operations.iter().filter(|o| sides.contains(&o.side.as_str())) {
                assert!(o.from_s >= at - 1e-9 && o.to_s > o.from_s, "{o:?}");
                at = o.to_s;
            }
        }
        let t = &plan.time_s;
        let works = t.total + cycle.tool_changes_s + cycle.unload_s;
        let sum: f64 = cycle.operations.iter().map(|o| o.to_s - o.from_s).sum();
        assert!((sum - works).abs() < 1e-6, "{back_work}: {sum} {works}");
        let period = cycle.steady_s - cycle.bar_change_s;
        assert!((period - (works - cycle.hidden_s)).abs() < 1e-6, "{back_work}: {period} {works} {}", cycle.hidden_s);
        let told: f64 = cycle.critical.iter().map(|c| c.share).sum();
        assert!(told > 0.5 && told <= 1.0 + 1e-9 && cycle.critical.windows(2).all(|w| w[0].seconds >= w[1].seconds));
    }
}

#[test]
fn a_time_from_part_to_part_that_does_not_add_up_is_not_proven() {
    let text = Stub { features: SOCKET, back_work: "aside", ..STUB }.text();
    let job = read(&text);
    let mut plan = feasible(plan(&text));
    assert!(proof::prove(&plan, &job).holds());
    plan.cycle.as_mut().expect("in time").steady_s -= 0.5;
    let found = proof::prove(&plan, &job);
    assert!(found.breaches.iter().any(|b| b.rule == "times" && b.text.contains("cycle time")), "{found:?}");
}

#[test]
fn front_work_that_the_headstock_does_not_hold_is_told() {
    let weak = STUB
        .text()
        .replace("clamp_force: 15000", "clamp_force: 900")
        .replace("features:", "features:\n    - {axial_hole: 8, depth: 20}");
    let found = plan(&weak);
    assert_eq!(found.shortfall.as_ref().map(|s| s.blocked_by.as_str()), Some("push"), "{:?}", found.shortfall);
    // Without a clamping force nothing is said.
    feasible(plan(&weak.replace(", clamp_force: 900", "")));
}

#[test]
fn an_order_counts_whole_bars_set_up_and_stops() {
    let rest = "rates: {machine_per_hour: 60, material_per_kg: 2}\norder: {pieces: 100, set_up_h: 3, shift_h: 8, running_share: 0.8}";
    let plan = feasible(Stub { rest, ..STUB }.plan());
    let (order, cycle) = (plan.order.expect("quoted"), plan.cycle.expect("in time"));
    assert_eq!(order.bars, 100usize.div_ceil(plan.quote.pieces_per_bar));
    let run_h = 100.0 * cycle.steady_s / 3600.0 / 0.8;
    assert!((order.run_h - run_h).abs() < 1e-9);
    assert!((order.shifts - (3.0 + run_h) / 8.0).abs() < 1e-9);
    // C45, 7850 kg/m³: a bar of 18 mm and 3 m weighs 5.993 kg.
    let bars_cost = 2.0 * 5.993 * order.bars as f64;
    assert!((order.cost.expect("rates") - (60.0 * (3.0 + run_h) + bars_cost)).abs() < 0.1, "{order:?}");
    let each: Vec<f64> = order.quantities.iter().filter_map(|q| q.cost_per_piece).collect();
    assert!(each.len() > 4 && each.windows(2).all(|w| w[1] < w[0] + 0.05), "{each:?}");
    let slower = order.sensitivity.iter().find(|s| s.what == "cutting_speed" && s.factor < 1.0).expect("tried");
    assert!(slower.change_s > 0.0);
}

/// The changes that would help a job that cannot be made, each as what changes, its new value and its words.
fn help(text: &str) -> Vec<(String, String, String)> {
    let plan = spanhold::answer::answer(&read(text)).unwrap_or_else(|d| panic!("{d}"));
    let found = plan.shortfall.expect("it cannot be made");
    found.changes.into_iter().map(|c| (c.change, c.to.to_string(), c.text)).collect()
}

/// Every change that is told is made by hand too, and is enough.
#[test]
fn a_place_for_a_tool_a_shaved_socket_and_finer_strokes_would_help() {
    // One cross tool more than there are places.
    let few = "  tools: {turning: 5, cross_driven: 3, front_fixed: 3, back_fixed: 2}";
    let places = help(&Stub { features: MANY, tools: few, ..STUB }.text());
    let more = places.iter().find(|c| c.0 == "tools.cross_driven").unwrap_or_else(|| panic!("{places:?}"));
    assert!(more.1 == "4" && more.2.starts_with("use a machine with 4 places for cross-driven tools: "), "{more:?}");
    feasible(plan(&Stub { features: MANY, tools: few, ..STUB }.text().replace("cross_driven: 3", "cross_driven: 4")));

    let shaved = help(&Stub { material: "'1.4404'", features: PUNCHED, ..STUB }.text());
    assert!(shaved.iter().any(|c| c.0 == "forming" && c.1 == "\"shave\""), "{shaved:?}");

    // The collet does not hold against strokes so coarse.
    let coarse = "    - {hex_socket: 5, depth: 6, end: back, step: 0.2}";
    let coarse = Stub { features: coarse, ..STUB }.text();
    let finer = help(&coarse);
    let step = finer.iter().find(|c| c.0 == "step").unwrap_or_else(|| panic!("{finer:?}"));
    let value: f64 = step.1.parse().expect("a number");
    assert!((0.01..0.2).contains(&value) && step.2.contains(&format!("strokes of {value:.3} mm")), "{step:?}");
    feasible(plan(&coarse.replace("step: 0.2", &format!("step: {value}"))));
    // A little coarser is not enough.
    let coarser = coarse.replace("step: 0.2", &format!("step: {}", value + 0.005));
    assert_eq!(plan(&coarser).verdict, Verdict::Infeasible);
}
