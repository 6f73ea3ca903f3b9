//! A front that is free, and a span that needs its grip.

use super::*;

fn away(turned_mm: f64) -> State {
    state(turned_mm, None)
}

fn checked(rig: &Rig<'_>, state: &State, segment: usize) -> Vec<Finding> {
    let segments = rig.segments().expect("can be cut");
    let answers = rig.answers(state).expect("held");
    checks::all(&View { rig, state, answers: &answers, segment: &segments[segment], rpm: 100.0 }).collect()
}

/// 52 mm from the front face to the bush on 16 mm; 109 mm on 50 of 16, 7 of 12 and 50 of 18 mm: 16.79 mm in the mean. From a grip at
/// 57 mm: 52 mm on 18 mm.
#[test]
fn length_over_diameter() {
    let job = changed(&[("stiffness_min: 2", "stiffness_min: 2, free_ratio: 6")]);
    let rig = rig(&job);
    let ratio = |state: &State| checks::free_ratio::ratio(&rig, state);
    near(ratio(&away(50.0)), 52.0 / 16.0);
    near(ratio(&away(107.0)), 109.0 / ((50.0 * 16.0 + 7.0 * 12.0 + 50.0 * 18.0) / 107.0));
    near(ratio(&state(107.0, Some(57.0))), 52.0 / 18.0);
    // Nothing is turned yet: the bar.
    near(ratio(&away(0.0)), 2.0 / 20.0);
    let found = |state: &State, segment| checked(&rig, state, segment).into_iter().find(|f| f.check == "free_ratio");
    assert!(found(&away(50.0), 0).is_some_and(|f| f.passes() && f.limit == 6.0));
    assert!(found(&away(107.0), 2).is_some_and(|f| !f.passes()));
    assert!(found(&state(107.0, Some(57.0)), 2).is_none(), "a gripped front is not free");
    let off = super::job("single", "");
    assert!(checked(&super::rig(&off), &away(107.0), 2).iter().all(|f| f.check != "free_ratio"));
}

/// A free front of 52 mm: a little more than `w L⁴/(8 EI)` of 16 mm, because shear and supports give way too, and the bow `4 · 0.5 · 0.052²` mm.
#[test]
fn a_free_front_is_met_off_the_axis() {
    let job = job("single", "");
    let rig = rig(&job);
    let (ei, w) = (200_000.0 * PI * 16f64.powi(4) / 64.0, 8e-6 * 9.81 * PI * 64.0);
    let clamped = w * 52f64.powi(4) / (8.0 * ei);
    let droop = rig.droop_mm(&away(50.0)).expect("held");
    assert!(droop > clamped && droop < 1.6 * clamped, "{droop} {clamped}");
    let found = checks::pick_up::find(&rig, &away(50.0)).expect("held");
    near(found.demand, droop + 4.0 * 0.5 * 0.052 * 0.052);
    assert_eq!((found.check, found.limit, found.at_mm), ("pick_up", 0.25, 0.0));
    let at = |state| -> Vec<&str> {
        let found = checks::at_event(&rig, &state, checks::Event::LetsGo);
        found.map(|f| f.expect("held").check).collect()
    };
    assert_eq!(at(away(50.0)), ["pick_up"]);
    assert_eq!(at(state(50.0, Some(20.0))), ["release"]);
    // Its own weight counts nowhere else while it is free.
    assert!(checked(&rig, &away(50.0), 0).iter().all(|f| f.check != "sag"));
}

/// A limit that no span keeps refuses only where the front could not run free at half of its speed either.
#[test]
fn a_soft_span_is_refused_only_where_it_needs_its_grip() {
    let soft =
        |more: &str| changed(&[("stiffness_min: 2", &format!("stiffness_min: 2, span_stiffness_min: 5000{more}"))]);
    let held = state(107.0, Some(57.0));
    let refuses = |job: &Job| {
        let found = checked(&rig(job), &held, 2);
        found.iter().find(|f| f.check == "span_stiffness").is_some_and(|f| !f.passes())
    };
    // 18 mm, 109 mm long: it swings far above 2000 rev/min.
    assert!(!refuses(&soft("")));
    // A whip of 0.5 · 4 · 0.109² = 0.024 mm is too much for the front, a quarter of it for a span of 52 mm is not.
    assert!(refuses(&changed(&[("whip: 1", "whip: 0.02, span_stiffness_min: 5000")])));
    let pair = read(&text("opposed", "").replacen("whip: 1", "whip: 0.02, span_stiffness_min: 5000", 1));
    assert!(!refuses(&pair), "the forces of a pair meet at the bar");
}

/// Nothing written: 0.05 N/µm and 0.01 mm for each mm of the 20 mm bar; the span's limit is that at the tool, whatever it is.
#[test]
fn limits_that_follow_the_bar() {
    let job = changed(&[("whip: 1, ", ""), ("stiffness_min: 2, ", "")]);
    let l = &job.limits;
    near(l.stiffness_min_n_per_um, 1.0);
    near(l.span_stiffness_min_n_per_um, 1.0);
    near(l.whip_mm, 0.2);
    assert_eq!((l.free_ratio, super::job("single", "").limits.span_stiffness_min_n_per_um), (None, 2.0));
    let mut other = job.limits.clone();
    other.follow_bar(20.0, 30.0);
    near(other.stiffness_min_n_per_um, 1.5);
    near(other.span_stiffness_min_n_per_um, 1.5);
    near(other.whip_mm, 0.3);
    // What is written stays.
    let mut written = super::job("single", "").limits;
    written.follow_bar(20.0, 30.0);
    assert_eq!((written.stiffness_min_n_per_um, written.whip_mm), (2.0, 1.0));
}

/// The bow of a bar by its kind, where the straightness is left out; 1.5 mm per m for a steel that no table knows.
#[test]
fn the_kind_of_bar_gives_the_bow() {
    let bow = |kind: &str, material: &str| {
        let given = changed(&[
            ("  straightness: 0.5\n", ""),
            ("stock: {", &format!("stock: {{kind: {kind}, ")),
            ("material: {name: test steel, kc11: 2000, mc: 0.25, e_gpa: 200, density: 8000, poisson: 0.3}", material),
        ]);
        assert!(given.notes.iter().any(|n| n.contains("from the bar") && n.contains(kind)), "{:?}", given.notes);
        given.shaft.bow_mm_per_m
    };
    assert_eq!((bow("drawn", "material: C45"), bow("turned", "material: '1.4305'")), (1.5, 1.0));
    assert_eq!((bow("ground", "material: C45"), bow("bar_feeder", "material: C45")), (0.25, 0.29));
    let written = changed(&[("stock: {", "stock: {kind: drawn, ")]);
    assert_eq!(written.shaft.bow_mm_per_m, 0.5);
}
