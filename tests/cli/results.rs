//! What the commands print, and how they end.

use super::shape::assert_shape;
use super::{BAD, COLUMNS, Called, GOOD, call};
use serde_json::Value;

const CHECK: &str = "check text
    demand number
    limit number
    unit text
    utilisation number
    turned_mm number
    at_mm number";

/// A list of keys, each below a path.
fn below(path: &str, list: &str) -> String {
    list.lines().map(|l| format!("{path}.{}\n", l.trim())).collect()
}

const PLAN: &str = "language text
    units text
    verdict text
    job text
    drawing text?
    revision text?
    date text?
    length_mm number
    material text
    holding text
    tools text
    machine text
    collet text?
    stages list
    stages[] map
    stages[].number whole
    stages[].from_mm number
    stages[].to_mm number
    stages[].travel_mm number
    stages[].grip map?
    *stages[].grip.nose_mm number
    *stages[].grip.from_mm number
    *stages[].grip.to_mm number
    *stages[].grip.diameter_mm number
    *stages[].grip.section whole
    stages[].unsupported_max_mm number
    stages[].l_over_d_max number?
    stages[].time_s number
    stages[].counter_spindle_start_mm number?
    stages[].counter_spindle_end_mm number?
    stages[].headstock_start_mm number
    stages[].headstock_end_mm number
    stages[].regrips_mm list
    *stages[].regrips_mm[] number
    stages[].rpm_min number
    stages[].rpm_max number
    stages[].checks list
    *stages[].checks[] map
    hand_overs_mm list
    *hand_overs_mm[] number
    headstock_regrips_mm list
    *headstock_regrips_mm[] number
    segments list
    *segments[] map
    *segments[].section whole
    *segments[].work text
    *segments[].from_mm number
    *segments[].to_mm number
    *segments[].diameter_mm number
    *segments[].travels whole
    *segments[].depths_mm list
    *segments[].depths_mm[] number
    *segments[].rpm number
    *segments[].feed_mm number
    *segments[].cuts list
    *segments[].cuts[] map
    *segments[].cuts[].tools list
    *segments[].cuts[].tools[] text
    *segments[].cuts[].depths_mm list
    *segments[].cuts[].depths_mm[] number
    *segments[].cuts[].feed_mm number
    *segments[].cuts[].rpm number
    *segments[].turning text
    *segments[].stage whole
    *segments[].time_s number
    *segments[].slowed_by text?
    *segments[].full_rpm number?
    *segments[].slowed_s number?
    *segments[].infeeds_mm list
    *segments[].infeeds_mm[] number
    *segments[].threading map?
    *segments[].threading.passes whole
    *segments[].threading.rpm number
    *segments[].threading.pitch_mm number
    part_off_rpm number?
    part_off map?
    *part_off.into text
    *part_off.max_length_mm number?
    *part_off.max_diameter_mm number?
    *part_off.by_default flag
    centre map?
    *centre.force_n number
    *centre.leaves_at_mm number
    drive map?
    *drive.power_kw number
    *drive.power_section whole?
    *drive.torque_nm number
    *drive.torque_section whole?
    *drive.feed_force_n number
    *drive.feed_force_section whole?
    features list
    *features[] map
    *features[].feature text
    *features[].text text
    *features[].at_mm number
    *features[].turned_mm number?
    *features[].stage whole?
    *features[].time_s number
    *features[].axial_n number?
    *features[].torque_nm number?
    *features[].thrust_n number?
    *features[].tool text
    witnesses list
    *witnesses[] map
    *witnesses[].at_mm number
    *witnesses[].section whole
    *witnesses[].cause text
    *witnesses[].interrupt text
    time_s map
    time_s.cutting number
    time_s.segments number
    time_s.hand_overs number
    time_s.regrips number
    time_s.features number
    time_s.part_off number
    time_s.back_work number
    time_s.penalties number
    time_s.total number
    cycle map?
    *cycle.steady_s number
    *cycle.alone_s number
    *cycle.headstock_s number
    *cycle.counter_spindle_s number
    *cycle.hidden_s number
    *cycle.wait_s number
    *cycle.spare_s number
    *cycle.tool_changes whole
    *cycle.tool_changes_s number
    *cycle.unload_s number
    *cycle.bar_change_s number
    *cycle.overlap text
    *cycle.operations list
    *cycle.operations[] map
    *cycle.operations[].side text
    *cycle.operations[].work text
    *cycle.operations[].text text
    *cycle.operations[].stage whole?
    *cycle.operations[].from_s number
    *cycle.operations[].to_s number
    *cycle.operations[].critical flag
    *cycle.critical list
    *cycle.critical[] map
    *cycle.critical[].what text
    *cycle.critical[].seconds number
    *cycle.critical[].share number
    tooling map?
    *tooling.fits flag
    *tooling.no_pair flag
    *tooling.places list
    *tooling.places[] map
    *tooling.places[].place text
    *tooling.places[].tools list
    *tooling.places[].tools[] text
    *tooling.places[].places whole
    *tooling.places[].elsewhere whole
    *tooling.places[].short whole
    *tooling.places[].left whole
    *tooling.turret_tools whole?
    *tooling.turret_used whole?
    order map?
    *order.pieces whole
    *order.bars whole
    *order.set_up_h number
    *order.run_h number
    *order.shifts number
    *order.pieces_per_shift number
    *order.cost number?
    *order.cost_per_piece number?
    *order.currency text?
    *order.quantities list
    *order.quantities[] map
    *order.quantities[].pieces whole
    *order.quantities[].bars whole
    *order.quantities[].shifts number
    *order.quantities[].cost_per_piece number?
    *order.sensitivity list
    *order.sensitivity[] map
    *order.sensitivity[].what text
    *order.sensitivity[].factor number
    *order.sensitivity[].steady_s number
    *order.sensitivity[].change_s number
    margin number?
    margin_at map?
    optimality map
    optimality.gap number
    optimality.stations whole
    optimality.arcs whole
    quote map
    quote.pieces_per_bar whole
    quote.material_kg number
    quote.remnant_mm number
    quote.cost map?
    *quote.cost.machine number
    *quote.cost.material number
    *quote.cost.total number
    *quote.cost.currency text
    shortfall map?
    *shortfall.farthest_mm number
    *shortfall.blocked_by text
    *shortfall.blocked_with list
    *shortfall.blocked_with[] text
    *shortfall.text text
    *shortfall.tried text?
    *shortfall.changes list
    *shortfall.changes[] map
    *shortfall.changes[].change text
    *shortfall.changes[].from any
    *shortfall.changes[].to any
    *shortfall.changes[].extra_time_s number?
    *shortfall.changes[].text text
    *shortfall.changes[].edits list
    *shortfall.changes[].edits[] map
    *shortfall.changes[].edits[].file text
    *shortfall.changes[].edits[].at text
    *shortfall.changes[].edits[].value text
    *shortfall.changes[].edits[].with whole?
    *shortfall.sets list
    *shortfall.sets[] map
    *shortfall.sets[].price number
    *shortfall.sets[].changes list
    *shortfall.sets[].changes[] map
    *shortfall.sets[].changes[].change text
    *shortfall.sets[].changes[].from any
    *shortfall.sets[].changes[].to any
    *shortfall.sets[].changes[].extra_time_s number?
    *shortfall.sets[].changes[].text text
    *shortfall.sets[].changes[].edits list
    *shortfall.sets[].changes[].edits[] map
    *shortfall.sets[].changes[].edits[].file text
    *shortfall.sets[].changes[].edits[].at text
    *shortfall.sets[].changes[].edits[].value text
    *shortfall.sets[].changes[].edits[].with whole?
    *shortfall.sets[].time_s number
    *shortfall.sets[].extra_time_s number
    *shortfall.sets[].good_share number?
    *shortfall.sets[].text text
    *shortfall.after_trial list
    *shortfall.after_trial[] map
    *shortfall.after_trial[].change text
    *shortfall.after_trial[].from any
    *shortfall.after_trial[].to any
    *shortfall.after_trial[].extra_time_s number?
    *shortfall.after_trial[].text text
    *shortfall.after_trial[].edits list
    *shortfall.after_trial[].edits[] map
    *shortfall.after_trial[].edits[].file text
    *shortfall.after_trial[].edits[].at text
    *shortfall.after_trial[].edits[].value text
    *shortfall.after_trial[].edits[].with whole?
    limit_costs list
    *limit_costs[] map
    *limit_costs[].limit text
    *limit_costs[].now any
    *limit_costs[].seconds number
    *limit_costs[].best any
    *limit_costs[].next any
    *limit_costs[].next_seconds number
    *limit_costs[].text text
    scatter map?
    *scatter.samples whole
    *scatter.seed whole
    *scatter.good_share number
    *scatter.runs map
    *scatter.runs.count whole
    *scatter.runs.both_hold number
    *scatter.runs.one_holds number
    *scatter.runs.none_holds number
    *scatter.broken list
    *scatter.broken[] map
    *scatter.broken[].check text
    *scatter.broken[].share number
    *scatter.broken[].from_mm number
    *scatter.stages list
    *scatter.stages[] map
    *scatter.stages[].number whole
    *scatter.stages[].broken_share number
    *scatter.stages[].broken list
    *scatter.stages[].broken[] map
    *scatter.stages[].broken[].check text
    *scatter.stages[].broken[].share number
    *scatter.stages[].broken[].from_mm number
    *scatter.stages[].holds_to_mm number
    *scatter.nearest map?
    *scatter.nearest.check text
    *scatter.nearest.used number
    *scatter.nearest.spread number
    *scatter.inputs list
    *scatter.inputs[] map
    *scatter.inputs[].input text
    *scatter.inputs[].spread number
    *scatter.inputs[].same_for_run flag
    *scatter.inputs[].value number
    *scatter.inputs[].low number
    *scatter.inputs[].high number
    *scatter.inputs[].unit text
    *scatter.inputs[].used_low number
    *scatter.inputs[].used_high number
    *scatter.inputs[].good_below number
    *scatter.inputs[].good_above number
    *scatter.inputs[].time_low_s number?
    *scatter.inputs[].time_high_s number?
    *scatter.inputs[].gain number
    *scatter.inputs[].advice text
    *scatter.confidence map?
    *scatter.confidence.asked number
    *scatter.confidence.reached flag
    *scatter.confidence.fastest_s number
    *scatter.confidence.costs_s number
    *scatter.confidence.fastest_good_share number
    *scatter.confidence.tightened list
    *scatter.confidence.tightened[] map
    *scatter.confidence.tightened[].check text
    *scatter.confidence.tightened[].factor number
    input_digest text
    tool_list list
    *tool_list[] any
    notes list
    *notes[] text
    origins list
    *origins[] map
    *origins[].key text
    *origins[].value text
    *origins[].from text
    *origins[].line whole?
    cautions list
    cautions[] text
    shaft map
    shaft.stock_diameter_mm number
    shaft.stock_bore_mm number?
    shaft.stock_label text
    shaft.stock_tolerance_mm number?
    shaft.bar_length_mm number
    shaft.sections list
    shaft.sections[] map
    shaft.sections[].number whole
    shaft.sections[].name text
    shaft.sections[].kind text
    shaft.sections[].from_mm number
    shaft.sections[].to_mm number
    shaft.sections[].front_diameter_mm number
    shaft.sections[].rear_diameter_mm number
    shaft.sections[].inner_diameter_mm number?
    shaft.sections[].label text
    shaft.sections[].tolerance text
    shaft.sections[].ra_um number?
    shaft.sections[].interrupt text
    shaft.sections[].grip flag
    shaft.sections[].front_edge text?
    shaft.sections[].rear_edge text?
    shaft.sections[].ground_diameter_mm number?
    shaft.sections[].ground_tolerance text?
    shaft.sections[].ground_ra_um number?
    shaft.features list
    *shaft.features[] map
    *shaft.features[].kind text
    *shaft.features[].label text
    *shaft.features[].from_mm number
    *shaft.features[].to_mm number
    *shaft.features[].size_mm number
    *shaft.features[].depth_mm number?
    layout map
    layout.gap_mm number
    layout.bush_land_mm number?
    layout.bush_kind text?
    layout.headstock_nearest_mm number
    layout.headstock_farthest_mm number
    layout.headstock_hold_mm number
    layout.counter_spindle_nearest_mm number?
    layout.counter_spindle_farthest_mm number?
    layout.bore_depth_mm number?
    layout.sleeve_pitch_mm number?
    layout.collet_hold_mm number?
    layout.part_off_width_mm number
    layout.whirl_ratio_limit number
    trace list
    *trace[] map
    *trace[].turned_mm number
    *trace[].stage whole
    *trace[].rpm number
    *trace[].check text
    *trace[].utilisation number
    *trace[].all list
    *trace[].all[] list
    *trace[].all[][] any";

pub fn plan_list() -> String {
    format!("{PLAN}\n{}{}", below("*stages[].checks[]", CHECK), below("*margin_at", CHECK))
}

/// Text is for reading on a terminal: no line too wide, none with blanks at its end, the last one ended.
fn assert_readable(called: &Called) {
    assert!(called.out.ends_with('\n') && !called.out.contains('\u{1b}'), "{}", called.out);
    for line in called.out.lines() {
        assert!(line.chars().count() <= COLUMNS, "too wide: {line}");
        assert_eq!(line, line.trim_end());
    }
}

#[test]
fn a_job_that_can_be_made_ends_with_0_and_one_that_cannot_with_1() {
    for command in ["plan", "check"] {
        for (job, status, first) in [(GOOD, 0, "FEASIBLE"), (BAD, 1, "NOT FEASIBLE")] {
            let called = call([command, job]);
            assert_eq!(called.status, status, "{command} {job}");
            assert!(called.out.starts_with(first), "{}", called.out);
            assert_eq!(called.err, "", "{command} {job}");
            assert_readable(&called);
        }
    }
}

#[test]
fn a_plan_as_json_has_every_key_with_its_type() {
    for (job, status) in [(GOOD, 0), (BAD, 1)] {
        let called = call(["plan", job, "--format", "json"]);
        assert_eq!(called.status, status, "{job}");
        assert_shape(&called.json(), &plan_list());
    }
    let plan = call(["plan", GOOD, "--format", "json"]).json();
    assert_eq!(plan["verdict"], "feasible");
    assert_eq!(plan["shortfall"], Value::Null);
    assert!(plan["input_digest"].as_str().is_some_and(|d| d.starts_with("sha256:") && d.len() == 71));
    let lists = ["hand_overs_mm", "headstock_regrips_mm", "segments", "features", "witnesses", "notes", "trace"];
    for key in lists {
        assert!(plan[key].as_array().is_some_and(|l| !l.is_empty()), "{key} is empty, so its items were not looked at");
    }
    assert!(plan["quote"]["cost"].is_object() && plan["margin_at"].is_object());
    let none = call(["plan", BAD, "--format", "json"]).json();
    assert_eq!(none["verdict"], "infeasible");
    assert!(none["shortfall"].is_object());
}

#[test]
fn the_verdict_as_json_is_that_of_the_plan() {
    let list = "verdict text
        job text
        length_mm number
        holding text
        tools text
        machine text
        collet text?
        stages whole
        hand_overs whole
        headstock_regrips whole
        witness_lines whole
        time_s map
        margin number?
        margin_at map?
        quote map
        shortfall map?
        input_digest text
        cautions list
        cautions[] text";
    for job in [GOOD, BAD] {
        let (check, plan) = (call(["check", job, "--format", "json"]), call(["plan", job, "--format", "json"]));
        assert_eq!(check.status, plan.status);
        let (check, plan) = (check.json(), plan.json());
        for line in list.lines().map(str::trim).filter(|l| !l.contains('[')) {
            let key = line.split(' ').next().expect("a key");
            assert!(check.get(key).is_some(), "{key} is missing");
        }
        for key in ["verdict", "job", "length_mm", "collet", "time_s", "margin", "quote", "shortfall", "input_digest"] {
            assert_eq!(check[key], plan[key], "{key}");
        }
        assert_eq!(check["stages"].as_u64(), plan["stages"].as_array().map(|s| s.len() as u64));
        assert_eq!(check["hand_overs"].as_u64(), plan["hand_overs_mm"].as_array().map(|s| s.len() as u64));
    }
}

const AT: &str = "turned_mm number
    grip_nose_mm number?
    collet text?
    on_centre flag
    headstock_mm number?
    rpm number
    unsupported_mm number
    n_crit_rpm number
    frequencies_hz list
    frequencies_hz[] number
    stiffness_n_per_um number
    stiffness_at_mm number
    l_over_d number
    span_stiffness_n_per_um number?
    span_stiffness_at_mm number?
    sag_um number
    whip_mm number
    cut_deflection_um number
    cut_diameter_change_um number
    passive_force_n number
    net_radial_force_n number
    main_force_n number
    chatter_depth_limit_mm number?
    section whole
    work text
    checks list
    checks[] map
    shape list
    shape[] map
    shape[].at_mm number
    shape[].weight_um number
    shape[].cut_um number
";

#[test]
fn a_moment_as_json_has_every_key_with_its_type() {
    let free = ["at", GOOD, "--turned", "40", "--format", "json"];
    let held =
        ["at", GOOD, "--turned", "100", "--grip", "60", "--headstock", "90", "--rpm", "2000", "--format", "json"];
    for args in [&free[..], &held[..]] {
        let called = call(args);
        assert_eq!((called.status, called.err.as_str()), (0, ""));
        assert_shape(&called.json(), &(AT.to_string() + &below("checks[]", CHECK)));
    }
    let held = call(held).json();
    // Where the tool stands, the bent bar gives way as told.
    let shape = held["shape"].as_array().expect("the shape");
    let at_tool = shape.iter().find(|p| p["at_mm"].as_f64() == Some(100.0)).expect("a point at the tool");
    let (bent, told) = (at_tool["cut_um"].as_f64(), held["cut_deflection_um"].as_f64());
    assert!(bent.zip(told).is_some_and(|(b, t)| (b.abs() - t).abs() <= 1e-6 * t.max(1e-9)), "{bent:?} {told:?}");
    assert!(shape.windows(2).all(|w| w[0]["at_mm"].as_f64() < w[1]["at_mm"].as_f64()), "points go backwards");
    assert_eq!((held["turned_mm"].as_f64(), held["grip_nose_mm"].as_f64()), (Some(100.0), Some(60.0)));
    assert_eq!((held["headstock_mm"].as_f64(), held["rpm"].as_f64()), (Some(90.0), Some(2000.0)));
    // From the bush face 1 mm behind the tool to the nose.
    assert_eq!(held["unsupported_mm"].as_f64(), Some(41.0));
    // Section 3, from 22 to 142 mm, is the stem.
    assert_eq!(held["section"].as_u64(), Some(3));
}

#[test]
fn a_moment_for_reading_fits_the_page() {
    let called = call(["at", GOOD, "--turned", "100", "--grip", "60"]);
    assert_eq!(called.status, 0);
    assert_readable(&called);
    assert!(called.out.contains("critical speed") && called.out.contains("stiffness"), "{}", called.out);
}

/// The machine of the job has its headstock between 30 and 130 mm: nine even places are 12.5 mm apart.
#[test]
fn without_a_headstock_place_the_worst_of_nine_counts_and_is_given() {
    let at = |headstock: Option<f64>| {
        let mut args: Vec<String> =
            ["at", GOOD, "--turned", "120", "--grip", "60", "--format", "json"].map(String::from).into();
        args.extend(headstock.into_iter().flat_map(|h| ["--headstock".to_string(), h.to_string()]));
        call(&args).json()
    };
    let most = |moment: &Value| {
        let checks = moment["checks"].as_array().expect("checks").iter();
        checks.filter_map(|c| c["utilisation"].as_f64()).fold(0.0, f64::max)
    };
    let worst = (0..9).map(|i| most(&at(Some(30.0 + 12.5 * f64::from(i))))).fold(0.0, f64::max);
    let found = at(None);
    assert!((most(&found) - worst).abs() < 1e-12, "{} {worst}", most(&found));
    let place = found["headstock_mm"].as_f64().expect("given");
    assert!((0..9).any(|i| (place - 30.0 - 12.5 * f64::from(i)).abs() < 1e-9), "{place}");
    assert!((most(&at(Some(place))) - worst).abs() < 1e-12);
}

#[test]
fn the_same_input_gives_the_same_bytes() {
    for args in [
        vec!["plan", GOOD],
        vec!["plan", GOOD, "--format", "json"],
        vec!["check", BAD, "--format", "json"],
        vec!["at", GOOD, "--turned", "100", "--grip", "60", "--format", "json"],
        vec!["batch", GOOD, BAD],
    ] {
        assert_eq!(call(&args).out, call(&args).out, "{args:?}");
    }
}

#[test]
fn another_machine_file_takes_the_place_of_the_jobs() {
    let dir = tempfile::tempdir().expect("a folder");
    let machine = std::fs::read_to_string(super::jobs().join("bench-12.yaml")).expect("the machine");
    let path = dir.path().join("other.yaml");
    std::fs::write(&path, machine.replace("name: bench 12", "name: bench 13")).expect("written");
    let plan = |args: &[&std::ffi::OsStr]| call(args).json();
    let own = plan(&["plan".as_ref(), GOOD.as_ref(), "--format".as_ref(), "json".as_ref()]);
    let other = plan(&[
        "plan".as_ref(),
        GOOD.as_ref(),
        "--machine".as_ref(),
        path.as_os_str(),
        "--format".as_ref(),
        "json".as_ref(),
    ]);
    assert_eq!((own["machine"].as_str(), other["machine"].as_str()), (Some("bench 12"), Some("bench 13")));
    assert_ne!(own["input_digest"], other["input_digest"]);
    assert_eq!(own["stages"], other["stages"]);
}

/// Four ways a machine: with and without the bush, one tool or a pair; those that can be made first, the fastest before.
#[test]
fn ways_are_compared_fastest_first_and_it_is_done_when_one_can_be_made() {
    let called = call(["compare", GOOD, "--format", "json"]);
    assert_eq!((called.status, called.err.as_str()), (0, ""));
    let found = called.json();
    let list = "job text
        ways list
        ways[] map
        ways[].machine text
        ways[].holding text
        ways[].tools text
        ways[].verdict text
        ways[].stages whole
        ways[].hand_overs whole
        ways[].headstock_regrips whole
        ways[].witness_lines whole
        ways[].margin number?
        ways[].margin_check text?
        ways[].good_share number?
        ways[].time_s number?
        ways[].pieces_per_bar whole
        ways[].farthest_mm number?
        ways[].blocked_by text?
        ways[].reason text?";
    assert_shape(&found, list);
    let ways = found["ways"].as_array().expect("a list");
    assert_eq!(ways.len(), 5);
    let times: Vec<Option<f64>> = ways.iter().map(|w| w["time_s"].as_f64()).collect();
    let made = times.iter().flatten().count();
    assert!(made >= 1 && times[..made].iter().all(Option::is_some), "{times:?}");
    assert!(times[..made].is_sorted(), "{times:?}");
    for way in ways {
        let feasible = way["verdict"] != "infeasible";
        assert_eq!(feasible, way["time_s"].is_number());
        assert_eq!(feasible, way["reason"].is_null(), "one that is out says why");
    }
    let own = ways.iter().find(|w| w["holding"] == "bush" && w["tools"] == "single").expect("the job's own way");
    assert_eq!(own["time_s"], call(["plan", GOOD, "--format", "json"]).json()["cycle"]["steady_s"]);
    let text = call(["compare", GOOD]);
    assert_eq!(text.status, 0);
    assert_readable(&text);
    assert_eq!(call(["compare", BAD]).status, 1);
}

#[test]
fn what_limits_cost_is_told_where_it_is_asked_for() {
    let plan = call(["plan", GOOD, "--costs", "--format", "json"]);
    assert_eq!((plan.status, plan.err.as_str()), (0, ""));
    let plan = plan.json();
    assert_shape(&plan, &plan_list());
    let costs = plan["limit_costs"].as_array().expect("a list");
    let seconds: Vec<f64> = costs.iter().filter_map(|c| c["seconds"].as_f64()).collect();
    assert!(seconds.len() == costs.len() && !costs.is_empty(), "{costs:?}");
    assert!(seconds.windows(2).all(|s| s[0] >= s[1]) && seconds.iter().all(|s| *s > 0.0), "dearest first: {seconds:?}");
    let without = call(["plan", GOOD, "--format", "json"]).json();
    assert_eq!(without["limit_costs"], serde_json::json!([]));
    assert_eq!(without["stages"], plan["stages"]);
    assert_readable(&call(["check", GOOD, "--costs"]));
}

/// Parts that differ from the nominal one, by the job's own spreads and seed: the same every time, another with another seed.
#[test]
fn sampled_parts_are_counted_in_every_plan() {
    let run = |scatter: &str| {
        let dir = super::changed("rates: {", &format!("scatter: {scatter}\nrates: {{"));
        let called = super::call_in(dir.path(), ["plan", "job.yaml", "--format", "json"]);
        assert_eq!((called.status, called.err.as_str()), (0, ""));
        called.json()
    };
    let plan = run("{samples: 40, seed: 7}");
    assert_shape(&plan, &plan_list());
    let found = &plan["scatter"];
    assert_eq!((found["samples"].as_u64(), found["seed"].as_u64()), (Some(40), Some(7)));
    assert_eq!(found["stages"].as_array().map(Vec::len), plan["stages"].as_array().map(Vec::len));
    assert_eq!(*found, run("{samples: 40, seed: 7}")["scatter"]);
    // A proven plan breaks nothing where nothing scatters, and holds to the end of each stage.
    let still = run(
        "{samples: 10, straightness: 0, supports: 0, kc: 0, passive: 0, e: 0, damping: 0, bar: 0, run_out: 0, ra: 0}",
    );
    assert_eq!(
        (still["verdict"].as_str(), still["scatter"]["inputs"].as_array().map(Vec::len)),
        (Some("feasible"), Some(0))
    );
    assert_eq!(still["scatter"]["good_share"].as_f64(), Some(1.0));
    for (s, planned) in
        still["scatter"]["stages"].as_array().expect("stages").iter().zip(still["stages"].as_array().expect("stages"))
    {
        assert_eq!((s["broken_share"].as_f64(), &s["holds_to_mm"]), (Some(0.0), &planned["to_mm"]));
    }
    // Supports a tenth or ten times as stiff, and bows as wild: some part breaks.
    let wild = run("{samples: 40, straightness: 2, supports: 2, kc: 2, damping: 2}");
    assert!(wild["scatter"]["good_share"].as_f64().is_some_and(|s| s < 1.0), "{}", wild["scatter"]);
    assert_eq!(wild["verdict"].as_str(), Some("at_risk"), "below 0.9, with status 0");
    let dir = super::changed("rates: {", "scatter: {samples: 40, supports: 2, kc: 2}\nconfidence_warn: 0\nrates: {");
    let warned = super::call_in(dir.path(), ["plan", "job.yaml", "--format", "json"]).json();
    assert_eq!(warned["verdict"].as_str(), Some("feasible"), "no share is too small");
    assert_readable(&call(["plan", GOOD]));
}

/// What an input changes in time is worked out where it is asked for.
#[test]
fn times_of_uncertain_inputs_come_with_an_option() {
    let hub = concat!(env!("CARGO_MANIFEST_DIR"), "/demo/drive-hub.yaml");
    let plan = call(["plan", hub, "--scatter", "--format", "json"]).json();
    assert_shape(&plan, &plan_list());
    let inputs = plan["scatter"]["inputs"].as_array().expect("inputs");
    assert!(inputs.iter().all(|i| !i["time_low_s"].is_null() || !i["time_high_s"].is_null()), "{inputs:?}");
    let ra = inputs.iter().find(|i| i["input"] == "ra").expect("a finish is asked for");
    assert!(ra["time_low_s"].as_f64() < ra["time_high_s"].as_f64(), "a rougher cut takes a smaller feed: {ra}");
    assert!(call(["plan", hub, "--scatter", "--full"]).out.contains("roughness over ideal"));
}

/// A plan made to hold says what that costs; the option counts before the job.
#[test]
fn a_confidence_is_asked_for_by_job_or_option() {
    let dir = super::changed("rates: {", "confidence: 0.6\nscatter: {samples: 100, kc: 0.5, supports: 0.6}\nrates: {");
    let by_job = super::call_in(dir.path(), ["plan", "job.yaml", "--format", "json"]).json();
    assert_shape(&by_job, &plan_list());
    assert_eq!(by_job["scatter"]["confidence"]["asked"].as_f64(), Some(0.6));
    let option = ["plan", "job.yaml", "--confidence", "0.9", "--format", "json"];
    let by_option = super::call_in(dir.path(), option).json();
    let told = &by_option["scatter"]["confidence"];
    assert_eq!(told["asked"].as_f64(), Some(0.9));
    assert!(told["costs_s"].as_f64() >= by_job["scatter"]["confidence"]["costs_s"].as_f64(), "{told}");
    assert_eq!(by_option["verdict"] == "at_risk", told["reached"] == false, "{told}");
    let check = super::call_in(dir.path(), ["check", "job.yaml", "--confidence", "0.9"]);
    assert!(check.status == 0 && check.out.contains("in 90 of 100 sampled parts"), "{}", check.out);
    for wrong in ["0.3", "1", "95", "x"] {
        let called = call(["plan", GOOD, "--confidence", wrong]);
        assert!(called.status == 2 && called.err.contains("0.5 to 0.999"), "{}", called.err);
    }
}

#[test]
fn help_and_version_are_results() {
    for args in [["--help"], ["--version"], ["help"]] {
        let called = call(args);
        assert_eq!((called.status, called.err.as_str()), (0, ""), "{args:?}");
        assert!(called.out.contains("spanhold"), "{}", called.out);
    }
    assert_eq!(call(["--version"]).out, format!("spanhold {}\n", env!("CARGO_PKG_VERSION")));
    let help = call(["--help"]).out;
    for command in ["plan", "check", "at", "compare", "recheck", "batch", "new"] {
        assert!(help.contains(&format!("\n  {command} ")), "{command} is not in the help:\n{help}");
        let own = call([command, "--help"]);
        assert!(own.status == 0 && own.out.contains("Usage:"), "{command}");
    }
}

/// A reader such as `head` closes its end early: that is no error, and no panic.
#[test]
fn a_closed_pipe_is_no_error() {
    use super::ends::Running;
    use std::process::{Command, Stdio};
    for args in [vec!["plan", GOOD, "--format", "json"], vec!["new"], vec!["--help"]] {
        let (reader, closed) = std::io::pipe().expect("a pipe");
        drop(reader);
        let mut command = Command::new(env!("CARGO_BIN_EXE_spanhold"));
        command.current_dir(super::jobs()).args(&args).stdin(Stdio::null()).stdout(closed).stderr(Stdio::piped());
        let output = Running::start(&mut command).output();
        let err = String::from_utf8_lossy(&output.stderr);
        assert_eq!((output.status.code(), &*err), (Some(0), ""), "{args:?}");
    }
}
