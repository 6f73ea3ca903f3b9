//! Plans built by hand, as a planner would hand them over.

use spanhold::job::plan::*;
use spanhold::lang::Units;

/// A check result.
fn check(name: &str, unit: &str, demand: f64, limit: f64, utilisation: f64, turned_mm: f64, at_mm: f64) -> CheckResult {
    CheckResult { check: name.into(), demand, limit, unit: unit.into(), utilisation, turned_mm, at_mm }
}

struct Sect(&'static str, &'static str, f64, f64, f64, Option<f64>, &'static str, &'static str);

fn sections(list: &[Sect]) -> Vec<SectionOutline> {
    let mut from_mm = 0.0;
    let mut out = Vec::new();
    for (i, Sect(name, kind, length, front, rear, inner, label, interrupt)) in list.iter().enumerate() {
        out.push(SectionOutline {
            number: i + 1,
            name: (*name).into(),
            kind: (*kind).into(),
            from_mm,
            to_mm: from_mm + length,
            front_diameter_mm: *front,
            rear_diameter_mm: *rear,
            inner_diameter_mm: *inner,
            label: (*label).into(),
            tolerance: "h9".into(),
            ra_um: Some(1.6),
            interrupt: (*interrupt).into(),
            grip: *kind == "cylinder",
            front_edge: None,
            rear_edge: None,
            ground_diameter_mm: None,
            ground_tolerance: None,
            ground_ra_um: None,
        });
        from_mm += length;
    }
    out
}

fn layout() -> LayoutOutline {
    LayoutOutline {
        gap_mm: 1.5,
        bush_land_mm: Some(35.0),
        bush_kind: None,
        headstock_nearest_mm: 60.0,
        headstock_farthest_mm: 380.0,
        headstock_hold_mm: 40.0,
        counter_spindle_nearest_mm: Some(28.0),
        counter_spindle_farthest_mm: Some(420.0),
        bore_depth_mm: Some(1200.0),
        sleeve_pitch_mm: Some(150.0),
        collet_hold_mm: Some(25.0),
        part_off_width_mm: 3.0,
        whirl_ratio_limit: 0.7,
    }
}

fn stage(
    number: usize,
    from_mm: f64,
    to_mm: f64,
    nose_mm: Option<(f64, f64, usize)>,
    checks: Vec<CheckResult>,
) -> Stage {
    Stage {
        number,
        from_mm,
        to_mm,
        travel_mm: to_mm - from_mm,
        grip: nose_mm.map(|(nose_mm, diameter_mm, section)| GripPlace {
            nose_mm,
            from_mm: nose_mm - 25.0,
            to_mm: nose_mm,
            diameter_mm,
            section,
        }),
        unsupported_max_mm: to_mm + 1.5 - nose_mm.map_or(0.0, |n| n.0),
        l_over_d_max: Some((to_mm + 1.5 - nose_mm.map_or(0.0, |n| n.0)) / 20.0),
        time_s: (to_mm - from_mm) * 0.3 + 4.8,
        counter_spindle_start_mm: nose_mm.map(|n| from_mm + 1.5 - n.0),
        counter_spindle_end_mm: nose_mm.map(|n| to_mm + 1.5 - n.0),
        headstock_start_mm: 380.0,
        headstock_end_mm: 380.0 - (to_mm - from_mm),
        regrips_mm: vec![],
        rpm_min: 1450.0,
        rpm_max: 2476.0,
        checks,
    }
}

/// A saw-tooth of utilisation: rising over each stage from `low` to that of its governing check.
fn trace(stages: &[Stage], low: f64) -> Vec<TracePoint> {
    let mut points = Vec::new();
    for s in stages {
        let Some(top) = s.governing() else { continue };
        for i in 0..=24u8 {
            let u = f64::from(i) / 24.0;
            let utilisation = low + (top.utilisation - low) * u * u;
            let check = if u < 0.35 { "stiffness" } else { top.check.as_str() };
            points.push(TracePoint {
                turned_mm: s.from_mm + s.travel_mm * u,
                stage: s.number,
                rpm: s.rpm_max,
                check: check.into(),
                utilisation,
                all: vec![(check.into(), utilisation)],
            });
        }
    }
    points
}

fn segment(section: usize, from_mm: f64, to_mm: f64, diameter_mm: f64, stage: usize) -> Segment {
    Segment {
        section,
        work: "turn".into(),
        from_mm,
        to_mm,
        diameter_mm,
        travels: 2,
        depths_mm: vec![1.5, 0.25],
        lag_mm: None,
        rpm: 2476.0,
        feed_mm: 0.12,
        cuts: Vec::new(),
        turning: "forward".into(),
        stage,
        time_s: 8.2,
        slowed_by: None,
        full_rpm: None,
        slowed_s: None,
        infeeds_mm: vec![],
        threading: None,
    }
}

fn operation(side: &str, work: &str, text: &str, stage: Option<usize>, from_s: f64, to_s: f64) -> Operation {
    let critical = side != "counter_spindle";
    Operation { side: side.into(), work: work.into(), text: text.into(), stage, from_s, to_s, critical }
}

/// A cycle of a few works, with the rear end of the part before beside the free stage.
pub fn sample_cycle() -> Cycle {
    Cycle {
        steady_s: 120.5,
        alone_s: 138.0,
        headstock_s: 118.0,
        counter_spindle_s: 98.0,
        hidden_s: 20.0,
        wait_s: 0.0,
        spare_s: 20.0,
        tool_changes: 2,
        tool_changes_s: 3.0,
        unload_s: 4.0,
        bar_change_s: 2.5,
        overlap: "aside".into(),
        operations: vec![
            operation("headstock", "feature", "centre hole A2.5, front", Some(1), 0.0, 4.0),
            operation("counter_spindle", "back_work", "hexagon socket 6", None, 0.0, 16.0),
            operation("headstock", "tool_change", "turning tool", Some(1), 4.0, 5.5),
            operation("headstock", "turn", "front journal", Some(1), 5.5, 40.0),
            operation("counter_spindle", "unload", "unload the part", None, 16.0, 20.0),
            operation("both", "hand_over", "hand-over at 180.0 mm", Some(2), 40.0, 47.0),
            operation("both", "turn", "roller <seat>", Some(2), 47.0, 108.5),
            operation("both", "tool_change", "part-off tool", Some(2), 108.5, 110.0),
            operation("both", "part_off", "part-off", Some(2), 110.0, 118.0),
        ],
        critical: vec![
            Critical { what: "cutting roller <seat>".into(), seconds: 61.5, share: 0.521 },
            Critical { what: "hand-overs".into(), seconds: 7.0, share: 0.059 },
        ],
    }
}

fn sample_tooling() -> Tooling {
    let room = |place: &str, tools: &[&str], places, elsewhere| ToolRoom {
        place: place.into(),
        tools: tools.iter().map(|t| t.to_string()).collect(),
        places,
        elsewhere,
        short: 0,
        left: 0,
    };
    Tooling {
        fits: true,
        no_pair: false,
        places: vec![
            room("turning", &["part-off tool", "turning tool"], 2, 0),
            room("cross_driven", &["drill Ø5"], 0, 1),
            room("back_driven", &[], 0, 0),
        ],
        turret_tools: Some(30),
        turret_used: Some(1),
    }
}

fn sample_order() -> OrderQuote {
    let of = |pieces, bars, shifts, each| Quantity { pieces, bars, shifts, cost_per_piece: Some(each) };
    OrderQuote {
        pieces: 200,
        bars: 67,
        set_up_h: 2.0,
        run_h: 7.9,
        shifts: 1.24,
        pieces_per_shift: 203.0,
        cost: Some(1500.0),
        cost_per_piece: Some(7.5),
        currency: Some("EUR".into()),
        quantities: vec![of(20, 7, 0.35, 13.2), of(200, 67, 1.24, 7.5)],
        sensitivity: vec![Sensitivity { what: "cutting_speed".into(), factor: 0.9, steady_s: 131.0, change_s: 10.5 }],
    }
}

/// A shaft of five stages with everything a drawing can show.
pub fn sample_plan() -> Plan {
    let sections = sections(&[
        Sect("front journal", "cylinder", 34.0, 12.0, 12.0, None, "Ø12 h6", "never"),
        Sect("", "groove", 2.5, 11.4, 11.4, None, "Ø11.4", "free"),
        Sect("lock nut", "thread", 26.0, 16.0, 16.0, Some(14.16), "M16x1.5", "free"),
        Sect("roller seat", "cylinder", 310.0, 18.0, 18.0, None, "Ø18 h9", "avoid"),
        Sect("", "taper", 40.0, 18.0, 22.0, None, "Ø18/22", "free"),
        Sect("running face", "cylinder", 120.0, 22.0, 22.0, None, "Ø22 h8", "never"),
        Sect("spanner flats", "flats", 15.0, 19.6, 19.6, Some(17.0), "AF 17", "free"),
        Sect("rear body", "cylinder", 351.0, 18.0, 18.0, None, "Ø18", "free"),
        Sect("grip knurl", "knurl", 30.0, 17.0, 17.0, None, "Ø17 knurl", "free"),
        Sect("rear journal", "cylinder", 30.0, 12.0, 12.0, None, "Ø12 h6", "never"),
    ]);
    let whip = check("whip", "mm", 0.0916, 0.1, 0.916, 560.0, 500.0);
    let stages = vec![
        stage(
            1,
            0.0,
            180.0,
            None,
            vec![
                check("whirl", "", 0.41, 0.7, 0.5857, 180.0, 0.0),
                check("stiffness", "N/µm", 1.61, 1.25, 0.776, 180.0, 0.0),
            ],
        ),
        stage(2, 180.0, 372.5, Some((148.0, 18.0, 4)), vec![check("sag", "mm", 0.0321, 0.05, 0.642, 372.5, 260.0)]),
        stage(
            3,
            372.5,
            560.0,
            Some((360.0, 18.0, 4)),
            vec![check("whirl", "", 0.5, 0.7, 0.714, 560.0, 470.0), whip.clone()],
        ),
        stage(4, 560.0, 765.0, Some((525.0, 22.0, 6)), vec![check("cut", "mm", 0.006, 0.00825, 0.727, 700.0, 700.0)]),
        stage(5, 765.0, 961.5, Some((720.0, 18.0, 8)), vec![check("torque", "N·m", 5.2, 8.1, 0.642, 961.5, 720.0)]),
    ];
    let mut stages = stages;
    stages[1].regrips_mm = vec![300.0];
    stages[2].regrips_mm = vec![560.0];
    stages[4].regrips_mm = vec![840.0];
    let mut back = segment(10, 928.5, 958.5, 12.0, 5);
    back.turning = "back".into();
    back.rpm = 1450.0;
    back.slowed_by = Some("whirl".into());
    let mut thread = segment(3, 36.5, 62.5, 16.0, 1);
    thread.work = "whirl".into();
    thread.travels = 1;
    thread.feed_mm = 1.5;
    let mut groove = segment(2, 34.0, 36.5, 11.4, 1);
    groove.work = "plunge".into();
    groove.feed_mm = 0.048;
    let trace = trace(&stages, 0.18);
    let mut plan = Plan {
        language: "en".into(),
        units: Units::Metric,
        part_off: None,
        centre: None,
        drive: None,
        verdict: Verdict::Feasible,
        job: "feed roller shaft".into(),
        drawing: Some("LP-204-17".into()),
        revision: Some("C".into()),
        date: Some("2026-03-02".into()),
        length_mm: 958.5,
        material: "C45".into(),
        holding: "bush".into(),
        tools: "single".into(),
        machine: "example long-bed 32".into(),
        collet: Some("18".into()),
        stages,
        hand_overs_mm: vec![180.0, 372.5, 560.0, 765.0],
        headstock_regrips_mm: vec![300.0, 560.0, 840.0],
        segments: vec![
            segment(1, 0.0, 34.0, 12.0, 1),
            groove,
            thread,
            segment(4, 62.5, 180.0, 18.0, 1),
            segment(4, 180.0, 372.5, 18.0, 2),
            segment(5, 372.5, 412.5, 18.0, 3),
            segment(6, 412.5, 532.5, 22.0, 3),
            segment(7, 532.5, 547.5, 19.6, 3),
            segment(8, 547.5, 560.0, 18.0, 3),
            segment(8, 560.0, 765.0, 18.0, 4),
            segment(8, 765.0, 898.5, 18.0, 5),
            segment(9, 898.5, 928.5, 17.0, 5),
            back,
        ],
        part_off_rpm: Some(1782.0),
        features: vec![
            FeatureMoment {
                feature: "centre_hole".into(),
                text: "A2.5 front".into(),
                at_mm: 0.0,
                turned_mm: Some(0.0),
                stage: Some(1),
                time_s: 4.0,
                axial_n: None,
                torque_nm: None,
                thrust_n: None,
                tool: String::new(),
            },
            FeatureMoment {
                feature: "cross_hole".into(),
                text: "Ø5 cross hole".into(),
                at_mm: 120.0,
                turned_mm: Some(130.0),
                stage: Some(1),
                time_s: 12.6,
                axial_n: None,
                torque_nm: None,
                thrust_n: None,
                tool: String::new(),
            },
            FeatureMoment {
                feature: "keyseat".into(),
                text: "6 x 3.5 keyseat".into(),
                at_mm: 640.0,
                turned_mm: Some(690.0),
                stage: Some(4),
                time_s: 31.0,
                axial_n: None,
                torque_nm: None,
                thrust_n: None,
                tool: String::new(),
            },
            FeatureMoment {
                feature: "back_work".into(),
                text: "rear centre".into(),
                at_mm: 958.5,
                turned_mm: None,
                stage: None,
                time_s: 6.0,
                axial_n: None,
                torque_nm: None,
                thrust_n: None,
                tool: String::new(),
            },
        ],
        witnesses: vec![
            Witness { at_mm: 130.0, section: 4, cause: "feature".into(), interrupt: "avoid".into() },
            Witness { at_mm: 180.0, section: 4, cause: "hand_over".into(), interrupt: "avoid".into() },
            Witness { at_mm: 300.0, section: 4, cause: "regrip".into(), interrupt: "avoid".into() },
            Witness { at_mm: 560.0, section: 8, cause: "hand_over".into(), interrupt: "free".into() },
            Witness { at_mm: 765.0, section: 8, cause: "hand_over".into(), interrupt: "free".into() },
            Witness { at_mm: 840.0, section: 8, cause: "regrip".into(), interrupt: "free".into() },
        ],
        time_s: Times {
            cutting: 288.4,
            segments: 24.0,
            hand_overs: 28.0,
            regrips: 15.0,
            features: 53.6,
            part_off: 8.0,
            back_work: 6.0,
            penalties: 15.0,
            total: 423.0,
        },
        cycle: Some(sample_cycle()),
        tooling: Some(sample_tooling()),
        order: Some(sample_order()),
        margin: Some(0.084),
        margin_at: Some(whip),
        optimality: Optimality { gap: 0.0, stations: 213, arcs: 2210 },
        quote: Quote {
            pieces_per_bar: 2,
            material_kg: 3.7023,
            remnant_mm: 120.0,
            cost: Some(Cost { machine: 7.3, material: 5.183, total: 12.483, currency: "EUR".into() }),
        },
        shortfall: None,
        limit_costs: Vec::new(),
        scatter: None,
        input_digest: "sha256:0f1e2d3c4b5a69788796a5b4c3d2e1f00f1e2d3c4b5a69788796a5b4c3d2e1f0".into(),
        origins: Vec::new(),
        tool_list: Vec::new(),
        notes: vec!["feed of section 1 lowered to 0.101 mm/rev: Ra 0.8".into()],
        cautions: vec![],
        shaft: ShaftOutline {
            stock_diameter_mm: 25.0,
            stock_bore_mm: None,
            stock_label: "Ø25 h8".into(),
            stock_tolerance_mm: Some(0.033),
            bar_length_mm: 3000.0,
            sections,
            features: vec![
                FeatureOutline {
                    kind: "centre_hole".into(),
                    label: "A2.5".into(),
                    from_mm: 0.0,
                    to_mm: 0.0,
                    size_mm: 2.5,
                    depth_mm: None,
                },
                FeatureOutline {
                    kind: "cross_hole".into(),
                    label: "Ø5 through".into(),
                    from_mm: 117.5,
                    to_mm: 122.5,
                    size_mm: 5.0,
                    depth_mm: None,
                },
                FeatureOutline {
                    kind: "keyseat".into(),
                    label: "keyseat 6 x 3.5".into(),
                    from_mm: 600.0,
                    to_mm: 680.0,
                    size_mm: 6.0,
                    depth_mm: Some(3.5),
                },
            ],
        },
        layout: layout(),
        trace,
    };
    plan.cautions = cautions(&plan);
    plan
}

/// The same shaft, stopped on the way.
pub fn infeasible_plan() -> Plan {
    let mut plan = sample_plan();
    plan.verdict = Verdict::Infeasible;
    plan.cycle = None;
    plan.order = None;
    plan.collet = None;
    plan.stages.truncate(2);
    plan.stages[1].to_mm = 412.0;
    plan.stages[1].travel_mm = 232.0;
    plan.stages[1].checks = vec![check("whirl", "", 0.70028, 0.7, 1.0004, 412.0, 250.0)];
    plan.trace = trace(&plan.stages, 0.2);
    plan.hand_overs_mm.truncate(1);
    plan.headstock_regrips_mm.truncate(1);
    plan.segments.truncate(5);
    plan.features.truncate(2);
    plan.witnesses.truncate(3);
    plan.margin = None;
    plan.margin_at = None;
    plan.shortfall = Some(Shortfall {
        farthest_mm: 412.0,
        blocked_by: "whirl".into(),
        blocked_with: Vec::new(),
        text: "Behind 412 mm the speed comes nearer than 0.7 to the critical speed of the span between the counter-spindle and the bush.".into(),
        changes: vec![
            change("tools", "single".into(), "opposed".into(), "use an opposed pair: cycle time 71.0 s", edit("job", "cutting.tools", "opposed")),
            change("sleeve", serde_json::Value::Null, true.into(), "support the front inside the counter-spindle: cycle time 83.0 s", edit("machine", "counter_spindle.sleeve", "{pitch: 150, stiffness: 5}")),
        ],
        sets: vec![
            ChangeSet {
                price: 1.0,
                changes: vec![change("rpm", 2476.into(), 1450.into(), "let the speed fall", edit("job", "cutting.speed_floor", "0.58"))],
                time_s: 104.0,
                extra_time_s: 33.0,
                good_share: Some(0.97),
                text: "let the speed fall: cycle time 104.0 s".into(),
            },
            ChangeSet {
                price: 9.0,
                changes: vec![
                    change("interrupt of body", "never".into(), "avoid".into(), "allow a stop on body", edit("job", "shaft.sections[2].interrupt", "avoid")),
                    change("collet", serde_json::Value::Null, "18".into(), "get a collet for 18 mm", edit("machine", "counter_spindle.collets[+]", "{name: 18}")),
                    change("set_up of a hole", "a hole".into(), serde_json::Value::Null, "do a hole in a second set-up", edit("job", "shaft.features[0]", "")),
                ],
                time_s: 71.0,
                extra_time_s: 0.0,
                good_share: None,
                text: "allow a stop on body; get a collet for 18 mm; do a hole in a second set-up: cycle time 71.0 s".into(),
            },
        ],
        after_trial: vec![Change { edits: Vec::new(), ..change("stiffness_min", 1.into(), 0.8.into(), "relax the limit stiffness_min to 0.8 N/µm", edit("job", "", "")) }],
        tried: None,
    });
    plan.cautions = cautions(&plan);
    plan
}

fn change(name: &str, from: serde_json::Value, to: serde_json::Value, text: &str, edit: Edit) -> Change {
    Change { change: name.into(), from, to, extra_time_s: Some(0.0), text: text.into(), edits: vec![edit] }
}

fn edit(file: &str, at: &str, value: &str) -> Edit {
    Edit { file: file.into(), at: at.into(), value: value.into(), with: None }
}

/// Sixty sections, ninety segments, long names in several scripts with markup and line breaks in them.
pub fn nasty_plan() -> Plan {
    let mut plan = sample_plan();
    plan.job = "Wärmeübertrager-Ṽerteilerwelle <script>alert(\"1\")</script> & 軸受付き超長尺シャフト\n\u{0}\u{FFFE} "
        .repeat(6);
    plan.machine = "Ωmega–Längdrehmaschine ".repeat(12);
    plan.drawing = Some("Zeichnungsnummer-ohne-ein-einziges-Leerzeichen-".repeat(8));
    plan.length_mm = 600.0;
    plan.shaft.sections = (0..60)
        .map(|i| SectionOutline {
            number: i + 1,
            name: if i % 3 == 0 {
                "Lagersitz für die hintere Umlenkrolle, geschliffen und poliert, 軸受".into()
            } else {
                format!("section {}", i + 1)
            },
            kind: ["cylinder", "groove", "thread", "taper"][i % 4].into(),
            from_mm: i as f64 * 10.0,
            to_mm: (i + 1) as f64 * 10.0,
            front_diameter_mm: 8.0 + (i % 7) as f64,
            rear_diameter_mm: 8.0 + (i % 7) as f64 + if i % 4 == 3 { 1.0 } else { 0.0 },
            inner_diameter_mm: (i % 4 == 2).then_some(7.0),
            label: format!("Ø{} h6 <&>", 8 + i % 7),
            tolerance: "h6".into(),
            ra_um: None,
            interrupt: if i % 2 == 0 { "never".into() } else { "avoid".into() },
            grip: true,
            front_edge: None,
            rear_edge: None,
            ground_diameter_mm: None,
            ground_tolerance: None,
            ground_ra_um: None,
        })
        .collect();
    plan.segments = (0..90)
        .map(|i| {
            let from_mm = i as f64 * 20.0 / 3.0;
            let mut s =
                segment((from_mm / 10.0) as usize + 1, from_mm, from_mm + 20.0 / 3.0, 8.0 + 1.0 / 3.0, 1 + i / 30);
            s.slowed_by = Some("whirl".into());
            s
        })
        .collect();
    plan.stages = (0..20)
        .map(|i| {
            stage(
                i + 1,
                i as f64 * 30.0,
                (i + 1) as f64 * 30.0,
                (i > 0).then_some((i as f64 * 30.0, 8.0, 1)),
                vec![check("whip", "mm", 0.0999, 0.1, 0.999, 30.0, 10.0)],
            )
        })
        .collect();
    plan.trace = trace(&plan.stages, 0.5);
    plan.hand_overs_mm = (1..20).map(|i| f64::from(i) * 30.0).collect();
    plan.headstock_regrips_mm = (1..40).map(|i| f64::from(i) * 15.0).collect();
    plan.witnesses = (1..60)
        .map(|i| Witness {
            at_mm: i as f64 * 10.0 + 0.123456,
            section: i,
            cause: "feature".into(),
            interrupt: "never".into(),
        })
        .collect();
    plan.notes = vec!["x".repeat(400), "Größe <b>".repeat(40)];
    plan.cautions = cautions(&plan);
    plan
}

/// A neck of 0.9 mm on a bar of 3 mm, one stage, one section behind it.
pub fn neck_plan() -> Plan {
    let mut plan = sample_plan();
    plan.job = "probe needle".into();
    plan.cycle = None;
    plan.length_mm = 45.0;
    plan.tools = "opposed".into();
    plan.collet = None;
    plan.cycle = None;
    plan.shaft.stock_diameter_mm = 3.0;
    plan.shaft.stock_label = "Ø3 h6".into();
    plan.shaft.sections = sections(&[
        Sect("neck", "cylinder", 40.0, 0.9, 0.9, None, "Ø0.9 h7", "never"),
        Sect("head", "cylinder", 5.0, 2.8, 2.8, None, "Ø2.8", "free"),
    ]);
    plan.shaft.features.clear();
    plan.features.clear();
    plan.witnesses.clear();
    plan.hand_overs_mm.clear();
    plan.headstock_regrips_mm.clear();
    plan.layout.bush_land_mm = Some(10.0);
    plan.stages = vec![stage(1, 0.0, 46.0, None, vec![check("stiffness", "N/µm", 0.21, 0.15, 0.714, 40.0, 40.0)])];
    plan.segments = vec![segment(1, 0.0, 40.0, 0.9, 1), segment(2, 40.0, 45.0, 2.8, 1)];
    plan.trace = trace(&plan.stages, 0.6);
    plan.margin_at = plan.stages[0].checks.first().cloned();
    plan.cautions = cautions(&plan);
    plan
}

/// One section, short and fat, held without the bush.
pub fn stub_plan() -> Plan {
    let mut plan = neck_plan();
    plan.job = "stub".into();
    plan.holding = "no_bush".into();
    plan.length_mm = 60.0;
    plan.shaft.stock_diameter_mm = 42.0;
    plan.shaft.sections = sections(&[Sect("", "cylinder", 60.0, 40.0, 40.0, None, "Ø40", "free")]);
    plan.layout.bush_land_mm = None;
    plan.layout.gap_mm = 8.0;
    plan.stages[0].to_mm = 63.0;
    plan.trace.clear();
    plan.cautions = cautions(&plan);
    plan
}

/// No stage at all: not even the first one is possible.
pub fn hopeless_plan() -> Plan {
    let mut plan = infeasible_plan();
    plan.stages.clear();
    plan.trace.clear();
    plan.segments.clear();
    plan.hand_overs_mm.clear();
    plan.headstock_regrips_mm.clear();
    plan.features.clear();
    plan.witnesses.clear();
    plan.shortfall = Some(Shortfall {
        farthest_mm: 0.0,
        blocked_by: "counter_spindle_travel".into(),
        blocked_with: Vec::new(),
        text: "The counter-spindle does not reach the first grip.".into(),
        changes: vec![],
        sets: vec![],
        after_trial: vec![],
        tried: Some(
            "No set of changes helps. Even with all 31 changes of the list together: the bar is too soft".into(),
        ),
    });
    plan
}

/// Every plan of this file with a name.
pub fn all_plans() -> Vec<(&'static str, Plan)> {
    vec![
        ("sample", sample_plan()),
        ("infeasible", infeasible_plan()),
        ("nasty", nasty_plan()),
        ("neck", neck_plan()),
        ("stub", stub_plan()),
        ("hopeless", hopeless_plan()),
    ]
}
