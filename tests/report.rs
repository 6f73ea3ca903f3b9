//! What people read, from plans built by hand: frozen texts, and rules that hold for every output.

#[path = "report/plans.rs"]
mod plans;

use plans::*;
use spanhold::job::plan::*;
use spanhold::report::{ReportError, cautions, plan_svg, plan_text, sheet_html, stages_csv, verdict_text};

/// Everything that is printed of a plan.
fn outputs(plan: &Plan) -> Vec<(&'static str, String)> {
    vec![
        ("text", plan_text(plan)),
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
fn the_verdict_alone_is_as_frozen() {
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
            assert_eq!(row.split(',').count(), 25, "{name}: {row}");
        }
    }
}

#[test]
fn no_line_of_text_is_wider_than_a_hundred_columns() {
    for (name, plan) in all_plans() {
        for text in [plan_text(&plan), verdict_text(&plan)] {
            for line in text.lines() {
                assert!(columns(line) <= 100, "{name}: {} columns: {line}", columns(line));
                assert_eq!(line, line.trim_end(), "{name}: blanks at the end");
            }
        }
    }
}

#[test]
fn rows_of_a_table_stay_aligned_under_names_of_wide_characters() {
    let text = plan_text(&nasty_plan());
    let table: Vec<&str> =
        text.lines().skip_while(|l| !l.starts_with("Segments")).skip(1).take_while(|l| !l.is_empty()).collect();
    let ends: Vec<usize> = table.iter().map(|l| columns(l)).collect();
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
    assert!(text.contains("… 40 more"), "{text}");
    assert!(text.contains("18.9"), "the last row is kept");
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
    for length_mm in [f64::MAX, f64::MIN_POSITIVE] {
        let mut plan = sample_plan();
        plan.length_mm = length_mm;
        if let Ok(svg) = plan_svg(&plan) {
            assert!(!svg.contains("NaN") && !svg.contains("–\""), "{length_mm}");
        }
    }
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
    assert!(words.contains("stopped at 412 mm by whirl"), "{words}");
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

#[test]
fn only_a_plan_that_may_be_run_has_a_box_to_sign() {
    let (good, bad) = (sheet_html(&sample_plan()).expect("drawn"), sheet_html(&infeasible_plan()).expect("drawn"));
    assert!(good.contains("Sign-off") && good.contains("never above 2476 rev/min"));
    assert!(!bad.contains("Sign-off") && bad.contains("not a plan to run"));
    assert!(bad.contains("use an opposed pair (tools: single → opposed)"));
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
    assert!(says(&sample, "Cross holes and keyseats are neglected"));
    assert!(says(&sample, "In stage 1 the front"));
    assert!(says(&sample, "clamping and synchronisation"));
    assert!(!says(&sample, "not a plan to run"));
    assert!(cautions(&infeasible_plan())[0].contains("not a plan to run"));
    assert!(!says(&neck_plan(), "Cross holes") && !says(&neck_plan(), "counter-spindle"));
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
