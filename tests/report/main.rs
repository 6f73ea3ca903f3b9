//! What people read, from plans built by hand: frozen texts, and rules that hold for every output.

mod drawn;
#[path = "../cli/ends.rs"]
#[allow(dead_code, reason = "no program is fed or interrupted here")]
mod ends;
mod inch;
mod paper;
#[cfg(feature = "pdf")]
mod pdf;
mod plans;
mod positions;
mod rendered;
mod stored;
mod xlsx;

use plans::*;
use spanhold::job::plan::*;
use spanhold::report::{
    ReportError, Styled, Tone, check_summary, plan_full, plan_summary, plan_svg, plan_text, sheet_html, stages_csv,
};

/// The last lines of a short answer.
fn next() -> Vec<String> {
    ["To write the sheet: spanhold plan x.yaml --out plans/x", "--full prints everything."].map(String::from).into()
}

fn summary_text(plan: &Plan) -> String {
    plan_summary(plan, &next()).plain().to_string()
}

fn verdict_text(plan: &Plan) -> String {
    check_summary(plan).plain().to_string()
}

/// Everything that is printed of a plan.
fn outputs(plan: &Plan) -> Vec<(&'static str, String)> {
    vec![
        ("text", plan_text(plan)),
        ("summary", summary_text(plan)),
        ("verdict", verdict_text(plan)),
        ("csv", stages_csv(plan)),
        ("svg", plan_svg(plan).expect("drawn")),
        ("sheet", sheet_html(plan).expect("drawn")),
    ]
}

/// Columns in a terminal: the wide scripts used in the samples start at U+2E80.
fn columns(line: &str) -> usize {
    line.chars().map(|c| if c >= '\u{2E80}' { 2 } else { 1 }).sum()
}

fn svg_document(text: &str) -> roxmltree::Document<'_> {
    roxmltree::Document::parse(text).expect("well-formed")
}

/// The first element with a class.
fn by_class<'a>(doc: &'a roxmltree::Document<'a>, class: &str) -> Option<roxmltree::Node<'a, 'a>> {
    doc.descendants().find(|n| n.attribute("class") == Some(class))
}

fn attribute(node: roxmltree::Node, name: &str) -> f64 {
    node.attribute(name).and_then(|v| v.parse().ok()).unwrap_or_else(|| panic!("no number {name} in {node:?}"))
}

#[test]
fn the_text_of_a_plan_is_as_frozen() {
    insta::assert_snapshot!("sample_text", plan_text(&sample_plan()));
    insta::assert_snapshot!("infeasible_text", plan_text(&infeasible_plan()));
}

#[test]
fn the_short_answers_are_as_frozen() {
    insta::assert_snapshot!("sample_summary", summary_text(&sample_plan()));
    insta::assert_snapshot!("infeasible_summary", summary_text(&infeasible_plan()));
    insta::assert_snapshot!("sample_verdict", verdict_text(&sample_plan()));
    insta::assert_snapshot!("infeasible_verdict", verdict_text(&infeasible_plan()));
    insta::assert_snapshot!("hopeless_verdict", verdict_text(&hopeless_plan()));
}

#[test]
fn the_stages_for_a_spreadsheet_are_as_frozen() {
    insta::assert_snapshot!("sample_csv", stages_csv(&sample_plan()));
}

#[test]
fn every_csv_row_has_as_many_fields_as_the_header_and_ends_in_crlf() {
    for (name, plan) in all_plans() {
        let csv = stages_csv(&plan);
        assert!(csv.ends_with("\r\n"));
        let rows: Vec<&str> = csv.trim_end().split("\r\n").collect();
        assert_eq!(rows.len(), plan.stages.len() + 1, "{name}");
        for row in &rows {
            assert_eq!(row.split(',').count(), 28, "{name}: {row}");
        }
    }
}

#[test]
fn no_line_of_text_is_wider_than_a_hundred_columns() {
    for (name, plan) in all_plans() {
        for text in [plan_text(&plan), summary_text(&plan), verdict_text(&plan)] {
            for line in text.lines() {
                assert!(columns(line) <= 100, "{name}: {} columns: {line}", columns(line));
                assert_eq!(line, line.trim_end(), "{name}: blanks at the end");
            }
        }
    }
}

/// The plans of the demo jobs.
fn stored_plans() -> Vec<(String, Plan)> {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("plans");
    let dirs = std::fs::read_dir(root).expect("plans").map(|e| e.expect("readable").path());
    let plan = |dir: std::path::PathBuf| {
        let text = std::fs::read_to_string(dir.join("plan.json")).expect("plan.json");
        (dir.display().to_string(), serde_json::from_str(&text).expect("a plan"))
    };
    dirs.map(plan).collect()
}

/// Everything that a plan tells, many times over and in long sentences.
fn swollen(plan: &Plan) -> Plan {
    let mut plan = plan.clone();
    let long = "a sentence of many words that takes several lines of the page ".repeat(12);
    plan.job = long.clone();
    plan.notes = vec![long.clone(); 30];
    let stages: Vec<Stage> = plan.stages.iter().cycle().take(90).cloned().collect();
    plan.stages = stages.into_iter().enumerate().map(|(i, s)| Stage { number: i + 1, ..s }).collect();
    for check in plan.stages.iter_mut().flat_map(|s| &mut s.checks) {
        check.utilisation = 0.97;
    }
    let cost = |i: usize| LimitCost {
        limit: "whip".into(),
        now: 0.1.into(),
        seconds: i as f64,
        best: 0.5.into(),
        next: 0.12.into(),
        next_seconds: 3.0,
        text: long.clone(),
    };
    plan.limit_costs = (0..20).map(cost).collect();
    let broken = |i| Broken { check: format!("check {i} {long}"), share: 0.5, from_mm: Some(1234.5) };
    let input = UncertainInput { advice: long.clone(), ..input("kc", 0.4, 1.7) };
    plan.scatter = Some(ScatterReport {
        samples: 400,
        seed: u64::MAX,
        good_share: 0.3,
        runs: Some(Runs { count: 200, both_hold: 0.3, one_holds: 0.1, none_holds: 0.6 }),
        broken: (0..9).map(broken).collect(),
        nearest: Some(NearestCheck { check: "torque".into(), used: 0.9, spread: 0.3 }),
        inputs: vec![input; 30],
        ..ScatterReport::default()
    });
    if plan.verdict == Verdict::Feasible {
        plan.verdict = Verdict::AtRisk;
    }
    if let Some(shortfall) = &mut plan.shortfall {
        shortfall.text = long.clone();
        shortfall.blocked_with = vec!["counter_spindle_travel".into(); 30];
        shortfall.tried = Some(long.clone());
        shortfall.changes = shortfall.changes.iter().cycle().take(40).cloned().collect();
        shortfall.changes.iter_mut().for_each(|c| c.text = long.clone());
    }
    plan
}

#[test]
fn a_short_answer_of_any_plan_is_a_screen_and_keeps_its_caution() {
    let by_hand = all_plans().into_iter().map(|(name, plan)| (name.to_string(), plan));
    let plans: Vec<(String, Plan)> = stored_plans().into_iter().chain(by_hand).collect();
    let large: Vec<(String, Plan)> = plans.iter().map(|(n, p)| (format!("{n}, swollen"), swollen(p))).collect();
    let long_lines: Vec<String> = vec!["word ".repeat(300), "x".repeat(500), "--full prints everything.".to_string()];
    assert!(plans.len() >= 14);
    for (name, plan) in plans.iter().chain(&large) {
        let texts = [&next(), &long_lines].map(|next| plan_summary(plan, next).plain().to_string());
        for text in texts.iter().chain([&verdict_text(plan)]) {
            assert!(text.lines().count() <= 40, "{name}: {} lines\n{text}", text.lines().count());
            assert!(text.lines().all(|l| columns(l) <= 100), "{name}:\n{text}");
            let told = text.contains("FEASIBLE") || text.contains("AT RISK");
            assert!(told && text.contains("a qualified setter decide"), "{name}:\n{text}");
        }
        assert!(texts.iter().all(|t| t.ends_with("--full prints everything.\n")), "{name}");
    }
}

#[test]
fn a_short_answer_says_what_it_leaves_out() {
    let plan = swollen(&sample_plan());
    let text = summary_text(&plan);
    assert!(text.contains("… 79 more") && text.contains(" more: see --full"), "{text}");
    let rows = text.lines().filter(|l| l.ends_with("97 %")).count();
    assert_eq!(rows, 11, "{text}");
    let text = verdict_text(&plan);
    assert!(text.contains(" more: see `spanhold plan JOB --full`") && !text.contains("Stages ("), "{text}");
    let text = summary_text(&swollen(&infeasible_plan()));
    assert!(text.contains("more changes: see --full"), "{text}");
    let mut plan = sample_plan();
    plan.scatter = Some(ScatterReport { samples: 400, seed: 1, good_share: 0.97, ..ScatterReport::default() });
    let squeezed = summary_text(&plan).split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(squeezed.contains("holds in 97 of 100 sampled parts; 5 stages"), "{squeezed}");
}

/// An input whose lower and higher values let the tightest check use these shares.
fn input(key: &str, used_low: f64, used_high: f64) -> UncertainInput {
    UncertainInput {
        input: key.into(),
        spread: 0.18,
        same_for_run: true,
        value: 2220.0,
        low: 1855.0,
        high: 2656.0,
        unit: "N/mm²".into(),
        used_low,
        used_high,
        good_below: 0.9,
        good_above: 0.4,
        time_low_s: None,
        time_high_s: Some(321.0),
        gain: 0.2,
        advice: "Turn a test cut".into(),
    }
}

#[test]
fn a_plan_at_risk_says_what_breaks_and_what_to_measure_everywhere() {
    let mut plan = sample_plan();
    plan.verdict = Verdict::AtRisk;
    let broken = vec![Broken { check: "whirl".into(), share: 0.6, from_mm: Some(170.0) }];
    plan.scatter = Some(ScatterReport {
        samples: 400,
        seed: 1,
        good_share: 0.4225,
        runs: Some(Runs { count: 200, both_hold: 0.42, one_holds: 0.01, none_holds: 0.57 }),
        broken,
        nearest: Some(NearestCheck { check: "torque".into(), used: 0.9, spread: 0.3 }),
        inputs: vec![input("kc", 0.8, 1.2), input("e", 0.98, 0.99), input("ra", 0.97, 0.97)],
        ..ScatterReport::default()
    });
    let text = summary_text(&plan);
    insta::assert_snapshot!(text.lines().take(12).collect::<Vec<_>>().join("\n"));
    let full = plan_text(&plan);
    for words in [
        "holds in 42 of 100",
        "1855 – 2656 N/mm²",
        "80 – 120 %",
        "no plan – 321.0",
        "Young's modulus",
        "Turn a test cut",
    ] {
        assert!(full.contains(words), "{words}\n{full}");
    }
    let page = sheet_html(&plan).expect("drawn");
    for words in
        ["AT RISK", "verdict at_risk", "holds in 42 of 100", "How sure this plan is", "class=\"input\"", "2656 N/mm²"]
    {
        assert!(page.contains(words), "{words}");
    }
}

/// Titles, the verdict word and shares near a limit, and nothing else.
#[test]
fn what_stands_out_is_verdict_titles_and_thin_margins() {
    let mut plan = sample_plan();
    let tight = plan.stages[1].checks[0].utilisation;
    for check in plan.stages.iter_mut().flat_map(|s| &mut s.checks) {
        check.utilisation = if check.utilisation == tight { 0.97 } else { check.utilisation.min(0.5) };
    }
    plan.margin_at = Some(CheckResult { utilisation: 0.97, ..plan.stages[1].checks[0].clone() });
    let marked = |text: &Styled, tone: Tone| -> Vec<String> {
        text.pieces().into_iter().filter(|(t, _)| *t == Some(tone)).map(|(_, piece)| piece.to_string()).collect()
    };
    for text in [plan_full(&plan), plan_summary(&plan, &next())] {
        assert_eq!(marked(&text, Tone::Feasible), ["FEASIBLE"]);
        assert!(marked(&text, Tone::Title).contains(&"Stages (mm, rev/min, s)".to_string()));
        let near = marked(&text, Tone::NearLimit);
        assert!(near.len() >= 3 && near.iter().all(|s| s == "97 %"), "{near:?}");
    }
    assert_eq!(marked(&check_summary(&infeasible_plan()), Tone::NotFeasible), ["NOT FEASIBLE"]);
}

#[test]
fn rows_of_a_table_stay_aligned_under_names_of_wide_characters() {
    let text = plan_text(&nasty_plan());
    let table: Vec<&str> =
        text.lines().skip_while(|l| !l.starts_with("Segments")).skip(1).take_while(|l| !l.is_empty()).collect();
    let ends: Vec<usize> = table.iter().filter(|l| !l.ends_with(" more")).map(|l| columns(l)).collect();
    assert!(ends.len() > 50);
    assert!(ends.iter().all(|e| *e == ends[0]), "{ends:?}");
}

#[test]
fn equal_neighbours_are_one_row_where_segments_are_very_many() {
    let mut plan = nasty_plan();
    let few = plan_text(&plan).lines().filter(|l| l.contains("2 × turn")).count();
    assert!(few > 5, "{few}");
    plan.segments.truncate(59);
    assert!(!plan_text(&plan).contains("× turn"));
}

#[test]
fn a_table_too_long_to_read_keeps_its_head_and_its_tail() {
    let mut plan = nasty_plan();
    for (i, s) in plan.segments.iter_mut().enumerate() {
        s.diameter_mm = 10.0 + i as f64 / 10.0;
    }
    let text = plan_text(&plan);
    assert!(text.contains("… 41 more"), "{text}");
    assert!(text.contains("18.8"), "the last rows are kept");
    assert!(!text.contains("  15.5  "), "a row in the middle is left out");
}

#[test]
fn no_output_shows_a_number_that_is_none() {
    for (name, plan) in all_plans() {
        for (kind, text) in outputs(&plan) {
            for word in text.split(|c: char| !c.is_alphanumeric()) {
                let word = word.to_lowercase();
                assert!(!matches!(word.as_str(), "nan" | "inf" | "infinity"), "{name} {kind}: {word}");
            }
            for word in text.split(|c: char| c.is_whitespace() || matches!(c, ',' | '"' | '>' | '<')) {
                assert!(!matches!(word, "-0" | "-0.0" | "-0.00"), "{name} {kind}");
            }
        }
    }
}

#[test]
fn a_plan_with_a_wrong_number_is_refused_by_the_drawing_and_dashed_in_the_text() {
    let mut plan = sample_plan();
    plan.length_mm = f64::NAN;
    plan.time_s.total = f64::INFINITY;
    assert!(matches!(plan_svg(&plan), Err(ReportError::NotDrawable { .. })));
    assert!(matches!(sheet_html(&plan), Err(ReportError::NotDrawable { .. })));
    assert!(plan_text(&plan).contains("length    – mm"));
    let mut plan = sample_plan();
    plan.trace[3].utilisation = f64::NAN;
    assert!(plan_svg(&plan).is_err());
    let mut plan = sample_plan();
    plan.shaft.stock_diameter_mm = 0.0;
    assert!(plan_svg(&plan).is_err());
    let mut drawn = 0;
    for length_mm in [f64::MAX, f64::MIN_POSITIVE] {
        let mut plan = sample_plan();
        plan.length_mm = length_mm;
        if let Ok(svg) = plan_svg(&plan) {
            assert!(!svg.contains("NaN") && !svg.contains("–\""), "{length_mm}");
            drawn += 1;
        }
    }
    assert!(drawn >= 1, "{drawn}");
}

#[test]
fn the_same_plan_gives_the_same_bytes() {
    for ((name, a), (_, b)) in all_plans().into_iter().zip(all_plans()) {
        assert_eq!(outputs(&a), outputs(&b), "{name}");
    }
}

#[test]
fn every_diagram_is_well_formed_and_says_what_it_is() {
    for (name, plan) in all_plans() {
        let svg = plan_svg(&plan).expect("drawn");
        let doc = svg_document(&svg);
        let root = doc.root_element();
        let has = |tag: &str| root.children().any(|n| n.has_tag_name(("http://www.w3.org/2000/svg", tag)));
        assert!(has("title") && has("desc"), "{name}");
        assert_eq!(root.attribute("width"), Some("297mm"), "{name}");
        assert_eq!(root.attribute("height"), Some("210mm"), "{name}");
        let ids: Vec<&str> = doc.descendants().filter_map(|n| n.attribute("id")).collect();
        for used in svg.split("url(#").skip(1).filter_map(|rest| rest.split(')').next()) {
            assert!(ids.contains(&used), "{name}: {used}");
        }
        assert!(!doc.descendants().any(|n| n.is_element() && n.tag_name().name() == "script"), "{name}");
    }
}

#[test]
fn drawing_and_chart_share_their_axis() {
    let svg = plan_svg(&sample_plan()).expect("drawn");
    let doc = svg_document(&svg);
    let stops = by_class(&doc, "stops").expect("stops");
    let in_drawing: Vec<f64> = stops
        .children()
        .filter(|n| n.has_tag_name("line") || n.tag_name().name() == "line")
        .map(|n| attribute(n, "x1"))
        .collect();
    let plot = by_class(&doc, "plot").expect("plot");
    let transform = plot.attribute("transform").expect("transform");
    let left: f64 = transform["translate(".len()..].split(' ').next().and_then(|v| v.parse().ok()).expect("a number");
    assert!(transform.ends_with("scale(0.01)"));
    let in_chart: Vec<f64> = plot
        .descendants()
        .filter_map(|n| n.attribute("points"))
        .filter_map(|points| {
            let ends: Vec<(f64, f64)> = points
                .split_whitespace()
                .filter_map(|p| p.split_once(','))
                .filter_map(|(x, y)| Some((x.parse().ok()?, y.parse().ok()?)))
                .collect();
            (ends.len() == 2 && ends[0].0 == ends[1].0).then(|| left + ends[0].0 / 100.0)
        })
        .collect();
    // Hand-overs 180, 372.5, 560, 765 are stage borders in the chart; 300 and 840 are re-grips within a stage.
    assert_eq!(in_drawing.len(), 6);
    assert_eq!(in_chart.len(), 4);
    for (drawing, chart) in [in_drawing[0], in_drawing[2], in_drawing[3], in_drawing[4]].iter().zip(&in_chart) {
        assert!((drawing - chart).abs() <= 0.02, "{drawing} in the drawing, {chart} in the chart");
    }
    let scale = (in_drawing[5] - in_drawing[0]) / (840.0 - 180.0);
    assert!((in_drawing[2] - in_drawing[0] - scale * (372.5 - 180.0)).abs() < 0.02, "true to scale along the axis");
}

#[test]
fn radial_distances_are_drawn_in_one_scale() {
    let svg = plan_svg(&neck_plan()).expect("drawn");
    let doc = svg_document(&svg);
    let heights: Vec<f64> = doc
        .descendants()
        .filter(|n| n.attribute("class") == Some("section"))
        .filter_map(|n| n.descendants().find_map(|p| p.attribute("d")))
        .map(|d| {
            let numbers: Vec<f64> =
                d.split(|c: char| c.is_alphabetic() || c == ' ').filter_map(|v| v.parse().ok()).collect();
            numbers[6] - numbers[1]
        })
        .collect();
    assert_eq!(heights.len(), 2);
    assert!((heights[1] / heights[0] - 2.8 / 0.9).abs() < 0.01, "{heights:?}");
}

#[test]
fn a_plan_that_stops_short_hatches_the_rest_and_gives_the_reason() {
    let svg = plan_svg(&infeasible_plan()).expect("drawn");
    let doc = svg_document(&svg);
    let rest = by_class(&doc, "not-reached").expect("hatched");
    let words: String = rest.descendants().filter_map(|n| n.text()).collect();
    assert!(words.contains("not reached; stops at 412 mm"), "{words}");
    assert!(by_class(&svg_document(&plan_svg(&sample_plan()).expect("drawn")), "not-reached").is_none());
}

#[test]
fn the_sheet_is_well_formed_self_contained_and_has_no_script() {
    for (name, plan) in all_plans() {
        let html = sheet_html(&plan).expect("drawn");
        let options = roxmltree::ParsingOptions { allow_dtd: true, ..Default::default() };
        let doc = roxmltree::Document::parse_with_options(&html, options)
            .unwrap_or_else(|e| panic!("{name} is not well-formed: {e}"));
        for node in doc.descendants().filter(|n| n.is_element()) {
            assert!(!matches!(node.tag_name().name(), "script" | "link" | "img" | "iframe"), "{name}: {node:?}");
            for a in node.attributes() {
                assert!(!matches!(a.name(), "href" | "src") && !a.name().starts_with("on"), "{name}: {a:?}");
            }
        }
        assert!(!html.contains("@import") && !html.contains("url(http"), "{name}");
    }
}

/// The sheet lies at the machine: neither cost nor currency; the text tells both. Seconds charged for lines are in neither.
#[test]
fn the_sheet_tells_no_price_and_no_time_that_is_not_worked() {
    let plan = sample_plan();
    let (html, text) = (sheet_html(&plan).expect("drawn"), plan_text(&plan));
    for words in ["EUR", "cost per piece", "12.48", "7.50"] {
        assert!(text.contains(words) && !html.contains(words), "{words}");
    }
    assert!(html.contains("remnant 120 mm"));
    assert!(plan.time_s.penalties > 0.0 && !text.contains("penalties") && !html.contains("penalties"));
}

#[test]
fn only_a_plan_that_may_be_run_has_a_box_to_sign() {
    let (good, bad) = (sheet_html(&sample_plan()).expect("drawn"), sheet_html(&infeasible_plan()).expect("drawn"));
    assert!(good.contains("Sign-off") && good.contains("never above 2476 rev/min"));
    assert!(!bad.contains("Sign-off") && bad.contains("Do not run this"));
    assert!(bad.contains("Edit the job: cutting.tools: opposed."));
}

#[test]
fn user_text_is_escaped_everywhere() {
    let mut plan = sample_plan();
    let bad = "<script>x</script>&\"'";
    plan.job = bad.into();
    plan.drawing = Some(bad.into());
    plan.revision = Some(bad.into());
    plan.material = bad.into();
    plan.machine = bad.into();
    plan.collet = Some(bad.into());
    plan.notes = vec![bad.into()];
    plan.input_digest = bad.into();
    plan.shaft.stock_label = bad.into();
    for s in &mut plan.shaft.sections {
        s.name = bad.into();
        s.label = bad.into();
    }
    for f in &mut plan.shaft.features {
        f.label = bad.into();
    }
    for f in &mut plan.features {
        f.text = bad.into();
    }
    for s in &mut plan.stages {
        for c in &mut s.checks {
            c.check = bad.into();
            c.unit = bad.into();
        }
    }
    for p in &mut plan.trace {
        p.check = bad.into();
    }
    for text in [plan_svg(&plan).expect("drawn"), sheet_html(&plan).expect("drawn")] {
        assert!(!text.contains("<script"));
        assert!(text.contains("&lt;script&gt;x&lt;/script&gt;&amp;"));
    }
}

#[test]
fn the_cautions_fit_the_plan() {
    let says = |plan: &Plan, what: &str| cautions(plan).iter().any(|c| c.contains(what));
    let sample = sample_plan();
    assert!(says(&sample, "estimate") && says(&sample, "± 25 %") && says(&sample, "block by block"));
    assert!(says(&sample, "No unsupported bar behind the headstock spindle"));
    assert!(says(&sample, "does not include cross holes and keyseats"));
    assert!(says(&sample, "In stage 1 the front end"));
    assert!(says(&sample, "clamping and the synchronisation"));
    assert!(!says(&sample, "Do not run this"));
    assert!(cautions(&infeasible_plan())[0].contains("Do not run this"));
    assert!(!says(&neck_plan(), "cross holes") && !says(&neck_plan(), "Part in the counter-spindle"));
    assert!(says(&stub_plan(), "Without the guide bush") && !says(&neck_plan(), "Without the guide bush"));
    assert!(says(&nasty_plan(), "marked \"never\"") && !says(&sample, "marked \"never\""));
}

#[test]
fn no_plan_is_printed_without_cautions() {
    let mut plan = sample_plan();
    plan.cautions.clear();
    for text in [plan_text(&plan), sheet_html(&plan).expect("drawn")] {
        assert!(text.contains("Prove the first piece"));
    }
    plan.cautions = vec!["mind the step".into()];
    assert!(plan_text(&plan).ends_with("1. mind the step\n"));
}

#[test]
fn every_check_has_a_curve_or_a_mark_and_its_name_in_the_key() {
    let mut plan = sample_plan();
    let extra = [("bore", 0.31), ("chatter", 0.02), ("whip", 0.11)];
    for p in &mut plan.trace {
        p.all = extra.iter().map(|(name, share)| (name.to_string(), *share)).collect();
    }
    let svg = plan_svg(&plan).expect("drawn");
    let doc = svg_document(&svg);
    let curves: Vec<_> = doc.descendants().filter(|n| n.attribute("class") == Some("curve")).collect();
    assert_eq!(curves.len(), extra.len());
    let dashes: Vec<_> = curves.iter().filter_map(|c| c.attribute("stroke-dasharray")).collect();
    assert!(dashes.windows(2).all(|w| w[0] != w[1]) && dashes[0] != dashes[2], "told apart without colour: {dashes:?}");
    let key = by_class(&doc, "key").expect("a key");
    let said: Vec<&str> = key.descendants().filter_map(|n| n.text()).map(str::trim).collect();
    for words in
        ["limit", "room in the bore", "chatter, at most", "whip", "stiffness", "critical speed", "sag", "Ø change"]
    {
        assert!(said.contains(&words), "{words}: {said:?}");
    }
    assert!(by_class(&doc, "speed").is_some_and(|s| s.descendants().any(|n| n.text().map(str::trim) == Some("2476"))));
}

#[test]
fn a_stage_has_a_strip_for_its_start_and_one_for_its_end() {
    let plan = sample_plan();
    let svg = plan_svg(&plan).expect("drawn");
    let doc = svg_document(&svg);
    let count = |class: &str| doc.descendants().filter(|n| n.attribute("class") == Some(class)).count();
    assert_eq!(count("strip"), 2 * plan.stages.len());
    assert_eq!(count("bush"), 2 * plan.stages.len());
    let strips = by_class(&doc, "strips").expect("strips");
    let held = strips.descendants().filter(|n| n.attribute("class") == Some("grip")).count();
    assert_eq!(held, 2 * plan.stages.iter().filter(|s| s.grip.is_some()).count());
}

#[test]
fn what_was_not_worked_out_is_a_dash_and_no_place_in_the_drawing() {
    let mut plan = infeasible_plan();
    for s in &mut plan.stages {
        (s.rpm_min, s.rpm_max, s.time_s, s.headstock_start_mm, s.headstock_end_mm) = (0.0, 0.0, 0.0, 0.0, 0.0);
        s.checks.clear();
    }
    let text = plan_text(&plan);
    let row = text.lines().skip_while(|l| !l.starts_with("Stages")).nth(3).expect("a row");
    assert_eq!(row.split_whitespace().filter(|w| *w == "–").count(), 3, "{row}");
    let svg = plan_svg(&plan).expect("drawn");
    assert!(by_class(&svg_document(&svg), "headstock").is_none());
}

#[test]
fn the_segments_tell_both_ends_of_a_taper_the_passes_of_a_thread_and_part_off() {
    let mut plan = sample_plan();
    let section = plan.shaft.sections.iter().find(|s| s.kind == "taper").expect("a taper").clone();
    let taper = plan.segments.iter_mut().find(|s| s.section == section.number).expect("its segment");
    (taper.from_mm, taper.to_mm) = (section.from_mm, section.to_mm);
    let thread = plan.segments.iter_mut().find(|s| s.section == 3).expect("a thread");
    thread.work = "thread".into();
    thread.threading = Some(Threading { passes: 10, rpm: 1393.0, pitch_mm: 1.5 });
    let text = plan_text(&plan);
    let line = |what: &str| text.lines().find(|l| l.contains(what)).unwrap_or_else(|| panic!("{what} in\n{text}"));
    assert!(line("18–22").contains("taper") || line("18–22").contains('5'));
    let passes: Vec<&str> = line("thread passes").split_whitespace().collect();
    assert!(passes.windows(3).any(|w| w == ["10", "1393", "1.5"]), "{passes:?}");
    assert!(line("part-off face").contains("958.5") && line("part-off face").contains("961.5"));
}

#[test]
fn costs_of_limits_and_scatter_are_on_the_sheet_where_they_were_asked_for() {
    let mut plan = sample_plan();
    let plain = sheet_html(&plan).expect("drawn");
    assert!(!plain.contains("What each limit costs") && !plain.contains("Scatter of inputs"));
    plan.limit_costs = vec![LimitCost {
        limit: "whip".into(),
        now: 0.1.into(),
        seconds: 12.5,
        best: 0.5.into(),
        next: 0.12.into(),
        next_seconds: 3.0,
        text: "whip at 0.1 mm costs 12.5 s a part".into(),
    }];
    let broken = vec![Broken { check: "whirl".into(), share: 0.03, from_mm: None }];
    let stage = ScatterStage { number: 1, broken_share: 0.03, broken, holds_to_mm: 170.0 };
    plan.scatter = Some(ScatterReport {
        samples: 400,
        seed: 1,
        good_share: 0.97,
        stages: vec![stage],
        ..ScatterReport::default()
    });
    let asked = sheet_html(&plan).expect("drawn");
    for words in ["Whip at 0.1 mm costs 12.5 s a part", "critical speed 3 %", "holds in 97 of 100 sampled parts"] {
        assert!(asked.contains(words), "{words}");
    }
}

#[test]
fn a_part_stopped_at_part_off_is_not_said_to_reach_beyond_its_length() {
    let mut plan = infeasible_plan();
    plan.shortfall.as_mut().expect("short").farthest_mm = plan.length_mm + 3.0;
    let text = verdict_text(&plan);
    let squeezed = text.split_whitespace().collect::<Vec<_>>().join(" ");
    let wanted = "its full length of 958.5 mm, but not parted off: the bar turns too near to its critical speed";
    assert!(squeezed.contains(wanted), "{text}");
}

#[test]
fn the_verdict_comes_first_then_why_then_the_stages_then_what_to_look_at() {
    let text = plan_text(&sample_plan());
    let at = |what: &str| text.find(what).unwrap_or_else(|| panic!("{what}"));
    let order = ["FEASIBLE", "Tightest check", "\nStages", "\nLook at these", "\nSegments", "\nCautions"].map(at);
    assert!(order.is_sorted(), "{order:?}");
}
