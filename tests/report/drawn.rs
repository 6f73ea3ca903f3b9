//! The drawing of a plan, read back by the reader of drawings.

use super::plans::all_plans;
use super::stored::{STORED, stored};
use spanhold::drawings::{Options, draft};
use spanhold::input::read_job_text;
use spanhold::job::SectionKind;
use spanhold::job::plan::Plan;
use spanhold::report::{ReportError, plan_dxf};
use std::path::Path;

/// Length and both diameters of each section; neighbours that go on with one diameter are one.
fn outline(plan: &Plan) -> Vec<[f64; 3]> {
    let mut all: Vec<[f64; 3]> = Vec::new();
    for s in &plan.shaft.sections {
        let own = [s.to_mm - s.from_mm, s.front_diameter_mm, s.rear_diameter_mm];
        match all.last_mut() {
            Some(last) if last[1] == last[2] && last[2] == own[1] && own[1] == own[2] => last[0] += own[0],
            _ => all.push(own),
        }
    }
    all
}

#[test]
fn the_sections_come_back_from_the_drawing() {
    let options = Options {
        units: None,
        scale: None,
        gap_mm: 0.05,
        flip: false,
        sheet: None,
        stock_mm: None,
        machine: None,
        material: None,
    };
    for name in STORED {
        let plan = stored(name);
        let drawing = plan_dxf(&plan).expect("drawn");
        assert_eq!(drawing, plan_dxf(&plan).expect("drawn"), "{name}: other bytes");
        assert!(drawing.is_ascii(), "{name}");
        let read = draft(Path::new("plan.dxf"), drawing.as_bytes(), Path::new("."), &options);
        let text = read.unwrap_or_else(|diags| panic!("{name}: {diags:?}")).text;
        let job =
            read_job_text("draft.yaml", &text, Path::new(".")).unwrap_or_else(|d| panic!("{name}: {d:?}\n{text}"));
        let sizes = job.shaft.sections.iter().map(|s| {
            let (front, rear) = match &s.kind {
                SectionKind::Cylinder { diameter_mm } | SectionKind::Groove { diameter_mm } => {
                    (*diameter_mm, *diameter_mm)
                }
                SectionKind::Taper { front_mm, rear_mm } => (*front_mm, *rear_mm),
                other => panic!("{name}: {other:?}"),
            };
            [s.length_mm(), front, rear]
        });
        let (sizes, expected): (Vec<[f64; 3]>, _) = (sizes.collect(), outline(&plan));
        assert_eq!(sizes.len(), expected.len(), "{name}: {sizes:?} {expected:?}");
        for (found, drawn) in sizes.iter().zip(&expected) {
            assert!(found.iter().zip(drawn).all(|(a, b)| (a - b).abs() < 1e-3), "{name}: {found:?} {drawn:?}");
        }
    }
}

#[test]
fn stops_grips_and_stages_stand_on_their_layers() {
    let plan = stored("feed-roller-shaft");
    let drawing = dxf::Drawing::load(&mut std::io::Cursor::new(plan_dxf(&plan).expect("drawn"))).expect("a drawing");
    let on = |layer: &str| drawing.entities().filter(|e| e.common.layer == layer).count();
    let grips = plan.stages.iter().filter(|s| s.grip.is_some()).count();
    assert_eq!((on("CONTOUR"), on("CENTRE_LINE"), on("GRIPS")), (1, 1, 2 * grips));
    let texts: Vec<String> = drawing
        .entities()
        .filter_map(|e| match &e.specific {
            dxf::entities::EntityType::Text(t) => Some(t.value.clone()),
            _ => None,
        })
        .collect();
    for text in ["H1+R1 298.58", "R2 372", "stage 3", "grip of nothing"] {
        assert_eq!(texts.iter().any(|t| t == text), text != "grip of nothing", "{text}: {texts:?}");
    }
    assert!(texts.iter().any(|t| t.contains("qualified setter decide")), "{texts:?}");
}

#[test]
fn every_plan_is_drawn_and_a_number_that_is_none_is_refused() {
    for (name, mut plan) in all_plans() {
        let drawing = plan_dxf(&plan).expect("drawn");
        // Pairs of lines: a code and its value, whatever the names hold.
        let lines: Vec<&str> = drawing.split("\r\n").collect();
        assert!(drawing.is_ascii() && lines.len() % 2 == 1, "{name}");
        assert!(lines.chunks_exact(2).all(|pair| pair[0].parse::<u16>().is_ok()), "{name}");
        assert!(dxf::Drawing::load(&mut std::io::Cursor::new(drawing)).is_ok(), "{name}");
        plan.shaft.sections[0].to_mm = f64::NAN;
        assert!(matches!(plan_dxf(&plan), Err(ReportError::NotDrawable { .. })), "{name}");
    }
}
