//! What a job and its parts are read as; defaults; notes.

use spanhold::input::TEMPLATE;
use spanhold::job::materials::Class;
use spanhold::job::{End, FeatureKind, Holding, Interrupt, Objective, SectionKind, Tools};

use crate::{job, job_of};

#[test]
fn the_template_is_a_job_without_fault() {
    let job = job(TEMPLATE);
    assert_eq!(job.shaft.name, "guide roller shaft");
    assert_eq!(job.shaft.length_mm(), 480.2);
    assert_eq!(job.shaft.sections.len(), 8);
    assert_eq!(job.shaft.features.len(), 3);
    assert_eq!(job.machine.counter_spindle.as_ref().map(|c| c.collets.len()), Some(2));
    assert_eq!((job.cutting.tools, job.cutting.vc_m_per_min, job.cutting.feed_mm), (Tools::Single, 150.0, None));
    assert_eq!((job.holding, job.objective), (Holding::Bush, Objective::Time));
    assert_eq!(job.rates.as_ref().map(|r| r.currency.as_str()), Some("EUR"));
}

#[test]
fn the_values_the_template_shows_as_defaults_are_the_defaults() {
    let limits: String = TEMPLATE
        .lines()
        .skip_while(|line| !line.starts_with("# limits:"))
        .take_while(|line| !line.starts_with("# scatter:"))
        .filter(|line| line.starts_with('#'))
        .map(|line| format!("{}\n", line.trim_start_matches("# ").replacen("#   ", "  ", 1)))
        .collect();
    assert!(limits.lines().count() >= 9, "{limits}");
    let shown = TEMPLATE.replace("  # bar_end:", "  bar_end:").replace("  # facing:", "  facing:") + &limits;
    assert!(shown.contains("\n  bar_end: 20") && shown.contains("\nlimits:\n") && shown.contains("\nplanning:\n"));
    let (job, shown) = (job(TEMPLATE), job(&shown));
    assert_eq!((job.limits, job.planning, job.machine), (shown.limits, shown.planning, shown.machine));
}

#[test]
fn what_is_left_out_gets_its_default() {
    let job = job(&job_of("  sections: [{length: 60, diameter: 12}]"));
    assert_eq!((job.shaft.name.as_str(), job.shaft.bow_mm_per_m, job.stock.bar_length_mm), ("shaft", 0.3, 3000.0));
    let c = &job.cutting;
    assert_eq!((c.vc_m_per_min, c.nose_radius_mm, c.approach_deg), (160.0, 0.4, 93.0));
    assert_eq!((c.ap_max_mm, c.ap_finish_mm, c.speed_floor), (1.5, 0.25, 0.5));
    assert_eq!((c.lag_mm, c.unbalance, c.in_plane_share, c.passive_floor, c.feed_mm), (1.0, 0.10, 0.55, 0.15, None));
    assert_eq!((c.ra_factor, c.ra_floor_um), (1.5, 0.2));
    let l = &job.limits;
    assert!((l.stiffness_min_n_per_um - 0.8).abs() < 1e-12);
    assert!((l.whip_mm - 0.16).abs() < 1e-12);
    assert_eq!((l.whirl_ratio, l.sag_mm, l.pick_up_mm, l.release_mm), (0.7, 0.05, 0.25, 0.25));
    assert_eq!(
        (l.tolerance_share, l.drill_mm, job.planning.station_pitch_mm, l.damping_ratio),
        (0.25, 0.02, 5.0, 0.02)
    );
    assert_eq!((l.bore_clearance_mm, l.torque_margin, l.avoid_penalty_s), (1.0, 1.5, 5.0));
    let m = &job.machine;
    assert_eq!(m.bush.as_ref().map(|b| b.engagement_min_mm), Some(10.0));
    assert_eq!((m.shared_stop_saving_s, m.segment_overhead_s, m.bar_end_mm, m.facing_mm), (0.0, 1.2, 20.0, 0.5));
    assert_eq!((m.cross_tool_reach_mm.clone(), m.part_off.width_mm, m.part_off.time_s), (vec![10.0], 3.0, 8.0));
    assert_eq!(m.counter_spindle.as_ref().map(|c| (c.friction, c.axial_load_n)), Some((0.15, 0.0)));
    assert_eq!(l.buckling_share, 0.2);
    assert!(
        job.notes
            .iter()
            .any(|n| n.contains("160 m/min is assumed, the middle of the usual range for C45 (100 to 220 m/min)")),
        "{:?}",
        job.notes
    );
    assert!(job.notes.iter().any(|n| n.contains("kc1.1 2220") && n.contains("not checked against")), "{:?}", job.notes);
    assert!(job.notes.iter().any(|n| n.contains("0.3 mm per m is assumed")), "{:?}", job.notes);
    assert!(job.rates.is_none() && job.stock.tolerance.is_none());
}

/// Each value differs from its default, so a key that is accepted but not read shows.
#[test]
fn what_is_given_arrives() {
    let job = job("
shaft:
  drawing: FR-7
  revision: C
  straightness: 0.1
  material: C45
  sections: [{length: 60, diameter: 12, run_out: 0.02}]
  back_work: [{name: face, radial_force: 20, torque: 0.4, time_s: 3, tolerance: 0.05}]
stock: {diameter: 16, tolerance: h9, bar_length: 2500}
machine:
  name: m
  bush: {max_bar: 20, land: 21, gap: 1.5, stiffness: 80, engagement_min: 7, kind: following}
  no_bush: {max_bar: 22, collet_gap: 9}
  headstock: {nearest: 50, stroke: 200, hold: 30, stiffness: 90, max_rpm: 10001, regrip_s: 4}
  counter_spindle:
    {nearest: 20, farthest: 300, bore: 23, bore_depth: 500, stiffness: 60, max_rpm: 10002, hand_over_s: 5, friction: 0.2,
     axial_load: -150, torsional_stiffness: 4000, phase_error: 0.2,
     sleeve: {pitch: 110, stiffness: 6},
     collets: [{name: a, range: [11.6, 12.1], hold: 18, passes: 12.4, clamp_force: 6000, run_out: 0.015}]}
  shared_stop_saving_s: 2
  cross_tool_reach: [11, 24]
  driven_max_rpm: 7000
  segment_overhead_s: 1.1
  bar_feed: {max_rpm: 6500}
  part_off: {width: 2, time_s: 6, tray: {max_length: 45, max_diameter: 12.5}}
  bar_end: 15
  facing: 0.3
cutting: {tools: opposed, vc: 131, feed: 0.09, nose_radius: 0.2, approach_angle: 91, ap_max: 1.4, ap_finish: 0.3,
          speed_floor: 0.5, lag: 0.8, unbalance: 0.15, in_plane_share: 0.6, passive_floor: 0.2, ra_factor: 1.3, ra_floor: 0.4}
holding: no_bush
limits: {stiffness_min: 2, whirl_ratio: 0.6, whip: 0.08, sag: 0.04, release: 0.2, tolerance_share: 0.3, drill: 0.03,
         damping_ratio: 0.03, bore_clearance: 0.8, torque_margin: 2, avoid_penalty_s: 6, buckling_share: 0.15}
planning: {station_pitch: 4}
objective: fewest_hand_overs
rates: {machine_per_hour: 55, material_per_kg: 2.5, currency: CHF}
");
    let s = &job.shaft;
    assert_eq!((s.drawing.as_deref(), s.revision.as_deref(), s.bow_mm_per_m), (Some("FR-7"), Some("C"), 0.1));
    assert_eq!(s.sections[0].run_out_mm, Some(0.02));
    let w = &s.back_work[0];
    assert_eq!((w.radial_force_n, w.torque_nm, w.time_s, w.tolerance_mm), (20.0, 0.4, 3.0, 0.05));
    assert_eq!(job.stock.bar_length_mm, 2500.0);
    assert_eq!(job.stock.tolerance.as_ref().map(|t| (t.lower_mm, t.upper_mm)), Some((-0.043, 0.0)));
    let m = &job.machine;
    let b = m.bush.as_ref().expect("bush");
    assert_eq!(b.kind.map(|k| k.key()), Some("following"));
    assert_eq!(
        (b.max_bar_mm, b.land_mm, b.gap_mm, b.stiffness_n_per_um, b.engagement_min_mm),
        (20.0, 21.0, 1.5, 80.0, 7.0)
    );
    assert_eq!(m.no_bush.as_ref().map(|n| (n.max_bar_mm, n.collet_gap_mm)), Some((22.0, 9.0)));
    let h = &m.headstock;
    assert_eq!((h.nearest_mm, h.stroke_mm, h.hold_mm, h.stiffness_n_per_um), (50.0, 200.0, 30.0, 90.0));
    assert_eq!((h.max_rpm, h.regrip_s, h.farthest_mm()), (10_001.0, 4.0, 250.0));
    let c = m.counter_spindle.as_ref().expect("counter-spindle");
    assert_eq!((c.nearest_mm, c.farthest_mm, c.bore_mm, c.bore_depth_mm), (20.0, 300.0, 23.0, 500.0));
    assert_eq!((c.stiffness_n_per_um, c.max_rpm, c.hand_over_s, c.friction), (60.0, 10_002.0, 5.0, 0.2));
    assert_eq!((c.torsional_n_m_per_rad, c.phase_error_deg), (Some(4000.0), 0.2));
    assert_eq!((c.axial_load_n, job.limits.buckling_share), (-150.0, 0.15));
    assert_eq!(c.sleeve.as_ref().map(|s| (s.pitch_mm, s.stiffness_n_per_um)), Some((110.0, 6.0)));
    let k = &c.collets[0];
    assert_eq!((k.name.as_str(), k.smallest_mm, k.largest_mm), ("a", 11.6, 12.1));
    assert_eq!((k.hold_mm, k.passes_mm, k.clamp_force_n, k.run_out_mm), (18.0, 12.4, 6000.0, Some(0.015)));
    assert_eq!((m.shared_stop_saving_s, m.segment_overhead_s, m.bar_end_mm, m.facing_mm), (2.0, 1.1, 15.0, 0.3));
    assert_eq!((m.cross_tool_reach_mm.clone(), m.part_off.width_mm, m.part_off.time_s), (vec![11.0, 24.0], 2.0, 6.0));
    assert_eq!((m.bar_feed_max_rpm, m.driven_max_rpm), (Some(6500.0), 7000.0));
    assert_eq!(m.part_off.tray.map(|t| (t.max_length_mm, t.max_diameter_mm)), Some((45.0, 12.5)));
    let c = &job.cutting;
    assert_eq!((c.tools, c.vc_m_per_min, c.feed_mm, c.nose_radius_mm), (Tools::Opposed, 131.0, Some(0.09), 0.2));
    assert_eq!((c.approach_deg, c.ap_max_mm, c.ap_finish_mm, c.speed_floor), (91.0, 1.4, 0.3, 0.5));
    assert_eq!((c.lag_mm, c.unbalance, c.in_plane_share, c.passive_floor), (0.8, 0.15, 0.6, 0.2));
    assert_eq!((c.ra_factor, c.ra_floor_um), (1.3, 0.4));
    let l = &job.limits;
    assert_eq!((l.stiffness_min_n_per_um, l.whirl_ratio, l.whip_mm, l.sag_mm), (2.0, 0.6, 0.08, 0.04));
    assert_eq!((l.release_mm, l.tolerance_share, l.drill_mm, job.planning.station_pitch_mm), (0.2, 0.3, 0.03, 4.0));
    assert_eq!((l.damping_ratio, l.bore_clearance_mm, l.torque_margin, l.avoid_penalty_s), (0.03, 0.8, 2.0, 6.0));
    assert_eq!((job.holding, job.objective), (Holding::NoBush, Objective::FewestHandOvers));
    let r = job.rates.as_ref().expect("rates");
    assert_eq!((r.machine_per_hour, r.material_per_kg, r.currency.as_str()), (55.0, 2.5, "CHF"));
}

/// A bar of h11 at 16 mm is up to 110 µm small, h7 allows 18; h11 allows what the bar has.
#[test]
fn a_section_that_stays_as_drawn_is_told_where_the_bar_does_not_keep_it() {
    let told = |bar: &str, section: &str| {
        let text = job_of(&format!("  sections: [{{length: 60, diameter: 16, {section}}}]"));
        let notes = job(&text.replace("stock: {diameter: 16}", &format!("stock: {{diameter: 16{bar}}}"))).notes;
        notes.into_iter().filter(|n| n.contains("has the diameter of the bar and is not turned")).collect::<Vec<_>>()
    };
    let one = told(", tolerance: h11", "tolerance: h7, name: seat");
    let wanted = "Section 1 (seat) has the diameter of the bar and is not turned. Its tolerance h7 allows Ø15.982 \
        to 16.000 mm, but the bar tolerance h11 gives Ø15.890 to 16.000 mm. ";
    assert!(one.len() == 1 && one[0].starts_with(wanted), "{one:?}");
    assert!(told("", "tolerance: h7")[0].contains("the tolerance of the bar is not given"));
    for (bar, section) in [(", tolerance: h7", "tolerance: h7"), (", tolerance: h11", "ra: 3.2"), ("", "ra: 3.2")] {
        assert!(told(bar, section).is_empty(), "{bar} {section}");
    }
}

#[test]
fn the_rear_end_is_the_back() {
    let at = |end: &str| {
        job(&job_of(&format!(
            "  sections: [{{length: 60, diameter: 12}}]\n  features: [{{centre_hole: A1, end: {end}}}]"
        )))
    };
    assert_eq!(at("rear").shaft.features, at("back").shaft.features);
}

/// By the width of IT7 and IT9 at the largest diameter, here 18 and 43 µm, and by Ra 0.8 and 1.6.
#[test]
fn the_usual_interrupt_follows_tolerance_and_roughness() {
    let cases = [
        ("tolerance: [-0.018, 0]", Interrupt::Never),
        ("tolerance: [-0.0181, 0]", Interrupt::Avoid),
        ("tolerance: js9", Interrupt::Avoid),
        ("tolerance: [-0.0431, 0]", Interrupt::Free),
        ("tolerance: h10, ra: 0.8", Interrupt::Never),
        ("ra: 0.81", Interrupt::Avoid),
        ("ra: 1.6", Interrupt::Avoid),
        ("ra: 1.7", Interrupt::Free),
        ("tolerance: h6, interrupt: free", Interrupt::Free),
        ("interrupt: never", Interrupt::Never),
    ];
    for (keys, wanted) in cases {
        let job = job(&job_of(&format!("  sections: [{{length: 60, diameter: 12, {keys}}}]")));
        assert_eq!(job.shaft.sections[0].interrupt, wanted, "{keys}");
    }
}

#[test]
fn every_kind_of_section_is_read() {
    let job = job(&job_of(
        "  sections:
    - {length: 34, diameter: 12, tolerance: h6, ra: 0.8, name: front journal}
    - {length: 2.5, diameter: 11.4, kind: groove}
    - {length: 26, thread: M16x1.5}
    - {length: 31, diameter: 14, tolerance: h9, finish_pass: true}
    - {length: 40, taper: [12, 15]}
    - {length: 12, diameter: 15, tolerance: [-0.02, 0.01], interrupt: never, grip: false}
    - {length: 15, across_flats: 13, sides: 6}
    - {length: 10, across_flats: 12, sides: 2, diameter: 15}
    - {length: 10, diameter: 15, kind: knurl}
    - {length: 0.1, diameter: 15}
    - {length: 0.2, diameter: 15}",
    ));
    let s = &job.shaft.sections;
    let kinds: Vec<&SectionKind> = s.iter().map(|s| &s.kind).collect();
    assert_eq!(kinds[0], &SectionKind::Cylinder { diameter_mm: 12.0 });
    assert_eq!(kinds[1], &SectionKind::Groove { diameter_mm: 11.4 });
    let SectionKind::Thread(thread) = kinds[2] else { panic!("{:?}", kinds[2]) };
    assert_eq!((thread.designation.as_str(), thread.major_mm, thread.pitch_mm), ("M16x1.5", 16.0, 1.5));
    assert_eq!(kinds[4], &SectionKind::Taper { front_mm: 12.0, rear_mm: 15.0 });
    let SectionKind::Flats { across_flats_mm: 13.0, sides: 6, circle_mm } = kinds[6] else { panic!("{:?}", kinds[6]) };
    // Across the corners of a hexagon: 2/√3 of across flats.
    assert!((circle_mm - 15.011_107).abs() < 1e-6);
    assert_eq!(kinds[7], &SectionKind::Flats { across_flats_mm: 12.0, sides: 2, circle_mm: 15.0 });
    assert_eq!(kinds[8], &SectionKind::Knurl { diameter_mm: 15.0 });
    // The sum of decimal lengths is a decimal place: no 180.89999999999998.
    assert_eq!(
        s.iter().map(|s| s.to_mm).collect::<Vec<_>>(),
        [34.0, 36.5, 62.5, 93.5, 133.5, 145.5, 160.5, 170.5, 180.5, 180.6, 180.8]
    );
    assert_eq!(
        s.iter().map(|s| s.grip).collect::<Vec<_>>(),
        [true, false, false, true, false, false, false, false, false, true, true]
    );
    let interrupts: Vec<Interrupt> = s.iter().map(|s| s.interrupt).collect();
    assert_eq!(
        interrupts[..6],
        [Interrupt::Never, Interrupt::Free, Interrupt::Never, Interrupt::Avoid, Interrupt::Free, Interrupt::Never]
    );
    assert_eq!((s[0].label(0), s[1].label(1)), ("front journal".to_owned(), "section 2".to_owned()));
    assert_eq!(
        (s[5].tolerance.label.as_str(), s[5].tolerance.lower_mm, s[5].tolerance.upper_mm),
        ("+0.01/-0.02", -0.02, 0.01)
    );
    assert_eq!(s.iter().map(|s| s.finish_pass).filter(|f| *f).count(), 1);
}

#[test]
fn features_are_read_and_a_rear_centre_hole_becomes_back_end_work() {
    let job = job(&job_of(
        "  sections: [{length: 60, diameter: 12}]
  features:
    - {cross_hole: 4, at: 20, thrust: 350}
    - {keyseat: [4, 2.5], from: 30, to: 45}
    - {centre_hole: A2.5, end: front}
    - {centre_hole: A2, end: back}
  back_work: [{name: face, radial_force: 20, torque: 0.4, time_s: 3}]",
    ));
    let kinds: Vec<&FeatureKind> = job.shaft.features.iter().map(|f| &f.kind).collect();
    assert_eq!(kinds[0], &FeatureKind::CrossHole { diameter_mm: 4.0, at_mm: 20.0, thrust_n: Some(350.0) });
    assert_eq!(kinds[1], &FeatureKind::Keyseat { width_mm: 4.0, depth_mm: 2.5, from_mm: 30.0, to_mm: 45.0 });
    let centre = |designation: &str, pilot_mm, mouth_mm, end| FeatureKind::CentreHole {
        designation: designation.to_owned(),
        pilot_mm,
        mouth_mm,
        end,
    };
    assert_eq!(kinds[2], &centre("A2.5", 2.5, 5.3, End::Front));
    assert_eq!(kinds[3], &centre("A2", 2.0, 4.25, End::Back));
    let rig = spanhold::process::Rig::new(&job, None);
    let work: Vec<_> = rig.back.iter().map(|b| &b.work).collect();
    assert_eq!(work.iter().map(|w| w.name.as_str()).collect::<Vec<_>>(), ["face", "centre hole A2"]);
    // By hand, C45 (2220, 0.14), d 2: f 0.036, kc = 2220 * 0.01548^-0.14 = 3979.1; torque 1.2 * 3979.1 * 0.036 * 4 / 8 = 85.95 N mm; thrust
    // 85.95/1.085 = 79.21 times 2.71/2 and 0.0084 * 2^0.2/0.036^0.8: 107.33 + 10.92 N, a tenth of it radial.
    assert!((work[1].radial_force_n - 11.83).abs() < 0.01, "{work:?}");
    assert!((work[1].torque_nm - 0.0859).abs() < 0.0001, "{work:?}");
    assert_eq!((work[1].time_s, work[1].tolerance_mm, work[0].tolerance_mm), (4.0, 0.1, 0.1));
}

#[test]
fn a_material_of_ones_own_is_read() {
    let own = job_of("  sections: [{length: 60, diameter: 12}]").replace(
        "material: C45",
        "material: {name: test alloy, e_gpa: 70, density: 2700, kc11: 700, mc: 0.25, poisson: 0.33, vc: [200, 500]}",
    );
    let job = job(&own);
    let m = &job.shaft.material;
    assert_eq!((m.name.as_str(), m.e_gpa, m.density_kg_per_m3, m.poisson), ("test alloy", 70.0, 2700.0, 0.33));
    assert_eq!((m.kc11_n_per_mm2, m.mc, job.cutting.vc_m_per_min), (700.0, 0.25, 350.0));
    assert_eq!((m.class, m.class_assumed), (Class::Aluminium, true));
    let told = crate::job(&own.replace("poisson: 0.33,", "poisson: 0.33, class: plastic,"));
    assert_eq!((told.shaft.material.class, told.shaft.material.class_assumed), (Class::Plastic, false));
}

#[test]
fn names_may_look_like_numbers() {
    let text =
        job_of("  name: 4711\n  revision: 2.10\n  sections: [{length: 60, diameter: 12}]").replace("C45", "1.4301");
    let job = job(&text);
    assert_eq!((job.shaft.name.as_str(), job.shaft.revision.as_deref()), ("4711", Some("2.10")));
    assert_eq!(job.shaft.material.name, "X5CrNi18-10");
}

/// A bar too thick for the bush is an answer of the planner, not a fault of the file.
#[test]
fn a_bar_thicker_than_the_bush_takes_is_read() {
    let text = job_of("  sections: [{length: 60, diameter: 12}]").replace("{diameter: 16}", "{diameter: 42}");
    assert_eq!(job(&text).stock.diameter_mm, 42.0);
}
