//! Outlines of the shaft and the machine for drawing, copied into a plan so that the plan alone is enough.

use crate::job::plan::{FeatureOutline, LayoutOutline, SectionOutline, ShaftOutline};
use crate::job::{End, Engraved, FeatureKind, Job, SectionKind, Tapped};
use crate::lang::Measure;
use crate::process::Rig;
use crate::say;

/// A diameter as drawings write it.
fn across(diameter_mm: f64) -> String {
    format!("Ø{}", Measure::Size.number(diameter_mm))
}

/// The shaft as drawn.
pub fn shaft(job: &Job) -> ShaftOutline {
    let sections = job.shaft.sections.iter().enumerate().map(|(i, s)| {
        // The general tolerance is not repeated at every diameter of a drawing.
        let class =
            if s.tolerance.label.starts_with("ISO") { String::new() } else { format!(" {}", s.tolerance.told()) };
        let (kind, label, inner) = match &s.kind {
            SectionKind::Cylinder { diameter_mm } => ("cylinder", across(*diameter_mm) + &class, None),
            SectionKind::Thread(t) => ("thread", t.designation.clone(), Some(t.minor_mm())),
            SectionKind::Taper { front_mm, rear_mm } => {
                ("taper", format!("{}/{}{class}", across(*front_mm), across(*rear_mm)), None)
            }
            SectionKind::Groove { diameter_mm } => ("groove", across(*diameter_mm), None),
            SectionKind::Knurl { diameter_mm } => {
                ("knurl", say!("label-knurl", diameter = Measure::Size.number(*diameter_mm)), None)
            }
            SectionKind::Flats { across_flats_mm, sides, .. } => (
                "flats",
                say!("label-flats", size = Measure::Size.number(*across_flats_mm), sides = *sides),
                Some(*across_flats_mm),
            ),
        };
        // Edges and the ground size stand behind the size that is turned.
        let edges = s.edges.iter().flatten().map(|e| format!(", {}", e.told())).collect::<String>();
        let ground = s.ground.as_ref().map_or(String::new(), |g| {
            let size = Measure::Size.number(g.diameter_mm);
            format!(" ({})", say!("label-ground", diameter = size, class = g.tolerance.told()))
        });
        let label = format!("{label}{ground}{edges}");
        SectionOutline {
            number: i + 1,
            name: s.label(i),
            kind: kind.into(),
            from_mm: s.from_mm,
            to_mm: s.to_mm,
            front_diameter_mm: s.front_mm(),
            rear_diameter_mm: s.rear_mm(),
            inner_diameter_mm: inner,
            label,
            tolerance: s.tolerance.told(),
            ra_um: s.ra_um,
            interrupt: s.interrupt.key().into(),
            grip: s.grip,
            front_edge: s.edges[0].map(|e| e.told()),
            rear_edge: s.edges[1].map(|e| e.told()),
            ground_diameter_mm: s.ground.as_ref().map(|g| g.diameter_mm),
            ground_tolerance: s.ground.as_ref().map(|g| g.tolerance.told()),
            ground_ra_um: s.ground.as_ref().and_then(|g| g.ra_um),
        }
    });
    let length = job.shaft.length_mm();
    let at_end = |end: End, kind: &str, label: String, size_mm: f64, depth_mm: f64| {
        let (from_mm, to_mm) = if end == End::Front { (0.0, depth_mm) } else { (length - depth_mm, length) };
        FeatureOutline { kind: kind.into(), label, from_mm, to_mm, size_mm, depth_mm: Some(depth_mm) }
    };
    let features = job.shaft.features.iter().map(|f| match &f.kind {
        FeatureKind::CrossHole { diameter_mm, at_mm, .. } => FeatureOutline {
            kind: "cross_hole".into(),
            label: across(*diameter_mm),
            from_mm: at_mm - diameter_mm / 2.0,
            to_mm: at_mm + diameter_mm / 2.0,
            size_mm: *diameter_mm,
            depth_mm: None,
        },
        FeatureKind::Keyseat { width_mm, depth_mm, from_mm, to_mm } => FeatureOutline {
            kind: "keyseat".into(),
            label: format!("{} × {}", Measure::Size.number(*width_mm), Measure::Size.number(*depth_mm)),
            from_mm: *from_mm,
            to_mm: *to_mm,
            size_mm: *width_mm,
            depth_mm: Some(*depth_mm),
        },
        FeatureKind::CentreHole { designation, mouth_mm, end, .. } => {
            let at = if *end == crate::job::End::Front { 0.0 } else { length };
            FeatureOutline {
                kind: "centre_hole".into(),
                label: designation.clone(),
                from_mm: at,
                to_mm: at,
                size_mm: *mouth_mm,
                depth_mm: None,
            }
        }
        FeatureKind::Facing { depth_mm, end } => FeatureOutline {
            depth_mm: None,
            ..at_end(*end, "facing", say!("label-face", depth = Measure::Size.number(*depth_mm)), 0.0, 0.0)
        },
        FeatureKind::AxialHole { diameter_mm, depth_mm, end } => at_end(
            *end,
            "axial_hole",
            format!("{} × {}", across(*diameter_mm), Measure::Size.number(*depth_mm)),
            *diameter_mm,
            *depth_mm,
        ),
        FeatureKind::TappedHole { thread, place: Tapped::Across { at_mm } } => FeatureOutline {
            kind: "tapped_hole".into(),
            label: thread.designation.clone(),
            from_mm: at_mm - thread.major_mm / 2.0,
            to_mm: at_mm + thread.major_mm / 2.0,
            size_mm: thread.major_mm,
            depth_mm: None,
        },
        FeatureKind::TappedHole { thread, place: Tapped::InEnd { depth_mm, end, .. } } => at_end(
            *end,
            "tapped_hole",
            format!("{} × {}", thread.designation, Measure::Size.number(*depth_mm)),
            thread.major_mm,
            *depth_mm,
        ),
        FeatureKind::HexSocket { across_flats_mm, depth_mm, end, .. } => at_end(
            *end,
            "hex_socket",
            say!(
                "label-hexagon",
                size = Measure::Size.number(*across_flats_mm),
                depth = Measure::Size.number(*depth_mm)
            ),
            *across_flats_mm,
            *depth_mm,
        ),
        FeatureKind::Keyway { width_mm, depth_mm, length_mm, end, .. } => at_end(
            *end,
            "keyway",
            say!("label-keyway", width = Measure::Size.number(*width_mm), depth = Measure::Size.number(*depth_mm)),
            *width_mm,
            *length_mm,
        ),
        FeatureKind::Engraving { text, height_mm, place, .. } => match place {
            Engraved::Along { from_mm, to_mm } => FeatureOutline {
                kind: "engraving".into(),
                label: text.clone(),
                from_mm: *from_mm,
                to_mm: *to_mm,
                size_mm: *height_mm,
                depth_mm: None,
            },
            Engraved::Face { end } => at_end(*end, "engraving", text.clone(), *height_mm, 0.0),
        },
    });
    let stock = &job.stock;
    let tolerance = stock.tolerance.as_ref().map_or(String::new(), |t| format!(" {}", t.told()));
    let bore = if stock.bore_mm > 0.0 {
        format!(", {}", say!("label-bore", diameter = Measure::Size.number(stock.bore_mm)))
    } else {
        String::new()
    };
    ShaftOutline {
        stock_diameter_mm: stock.diameter_mm,
        stock_bore_mm: (stock.bore_mm > 0.0).then_some(stock.bore_mm),
        stock_label: format!("{}{tolerance}{bore}", across(stock.diameter_mm)),
        stock_tolerance_mm: stock.tolerance.as_ref().map(crate::job::Tolerance::width_mm),
        bar_length_mm: stock.bar_length_mm,
        sections: sections.collect(),
        features: features.collect(),
    }
}

/// The machine as drawn.
pub fn layout(rig: &Rig<'_>) -> LayoutOutline {
    let machine = &rig.job.machine;
    let counter = machine.counter_spindle.as_ref();
    let guided = rig.job.holding == crate::job::Holding::Bush;
    LayoutOutline {
        gap_mm: rig.gap_mm(),
        bush_land_mm: machine.bush.as_ref().filter(|_| guided).map(|b| b.land_mm),
        bush_kind: machine.bush.as_ref().filter(|_| guided).and_then(|b| b.kind).map(|k| k.key().into()),
        headstock_nearest_mm: machine.headstock.nearest_mm,
        headstock_farthest_mm: machine.headstock.farthest_mm(),
        headstock_hold_mm: machine.headstock.hold_mm,
        counter_spindle_nearest_mm: counter.map(|c| c.nearest_mm),
        counter_spindle_farthest_mm: counter.map(|c| c.farthest_mm),
        bore_depth_mm: counter.map(|c| c.bore_depth_mm),
        sleeve_pitch_mm: counter.and_then(|c| c.sleeve.as_ref()).map(|s| s.pitch_mm),
        collet_hold_mm: rig.collet.map(|c| c.hold_mm),
        part_off_width_mm: machine.part_off.width_mm,
        whirl_ratio_limit: rig.job.limits.whirl_ratio,
    }
}
