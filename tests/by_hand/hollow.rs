//! A hollow bar.

use super::*;

fn bored(bore: f64) -> Job {
    changed(&[("stock: {diameter: 20", &format!("stock: {{diameter: 20, bore: {bore}"))])
}

/// 20 mm with a bore of 6 mm: `π(20⁴ - 6⁴)/64`, and 0.91 of the area. The first section has 16 mm.
#[test]
fn a_bore_takes_stiffness_and_weight() {
    let (solid, hollow) = (job("single", ""), bored(6.0));
    let (a, b) = (rig(&solid), rig(&hollow));
    near(b.elastic.inertia_mm4(20.0), PI * (160_000.0 - 1_296.0) / 64.0);
    near(b.elastic.area_mm2(20.0), PI * 91.0);
    // A cantilever of 16 mm on hard supports: bending is `16⁴/(16⁴ - 6⁴)` = 1.02 times as soft, shear more.
    let tip = |rig: &Rig<'_>| rig.answers(&state(50.0, None)).expect("held").tool_mm_per_n;
    assert!(tip(&b) / tip(&a) > 1.0 && tip(&b) / tip(&a) < 1.1, "{} {}", tip(&a), tip(&b));
    // Material: 0.91 of that of the solid bar, for a part and for an order.
    near(quote::quote(&hollow, None).material_kg, 0.91 * quote::quote(&solid, None).material_kg);
    near(hollow.stock.area_mm2(), 91.0 * PI);
    // The twist of the bar at part-off: `20⁴/(20⁴ - 6⁴)` as much.
    let (thick, thin) = (a.sides_of_part_off(100.0, 0.0), b.sides_of_part_off(100.0, 0.0));
    near(thin.headstock / thick.headstock, 160_000.0 / 158_704.0);
    // The critical load of the bar behind the bush: `EI` falls by 0.81 %, between springs a little less.
    let share = b.critical_behind_n(200.0) / a.critical_behind_n(200.0);
    assert!(share > 158_704.0 / 160_000.0 - 1e-9 && share < 1.0, "{share}");
    // Cutting does not know the bore; only the pull-back deflects more.
    let travels =
        |rig: &Rig<'_>| -> Vec<_> { rig.segments().expect("can be cut").into_iter().map(|s| s.travels).collect() };
    assert_eq!(travels(&a), travels(&b));
    // Without a bore nothing changes, in any bit.
    let none = bored(0.0);
    assert_eq!(tip(&rig(&none)).to_bits(), tip(&a).to_bits());
}

/// The frequency of a hollow bar on hard pins: `√(I/A)` grows with `√(D² + d²)`, so a tube swings faster than the solid bar: at the
/// thinnest place of 12 mm by `√1.25`.
#[test]
fn a_tube_swings_faster_than_its_bar() {
    let (solid, hollow) = (rig_rpm(&job("single", "")), rig_rpm(&bored(6.0)));
    assert!(hollow > solid && hollow < solid * 1.25f64.sqrt(), "{solid} {hollow}");
}

fn rig_rpm(job: &Job) -> f64 {
    // A free front of 119 mm on the bush: long enough that it bends more than its supports.
    rig(job).answers(&state(117.0, None)).expect("held").critical_rpm
}

#[test]
fn a_bore_leaves_a_wall() {
    let told = |bore: &str, more: &str| {
        let text =
            text("single", more).replace("stock: {diameter: 20", &format!("stock: {{diameter: 20, bore: {bore}"));
        let told = spanhold::input::read_job_text("hand.yaml", &text, ".".as_ref()).expect_err("refused");
        spanhold::input::render(&told)
    };
    // The thread M8 has a root of 8 - 1.22687 · 1.25 = 6.466 mm.
    assert!(told("6.5", "").contains("leaves no wall") && told("6.5", "").contains("6.466"), "{}", told("6.5", ""));
    assert!(told("-1", "").contains("too small"));
    let hole = |end: &str| format!("features: [{{axial_hole: 5, depth: 10, end: {end}}}]");
    assert!(told("5", &hole("front")).contains("nothing to drill"), "{}", told("5", &hole("front")));
    assert_eq!(bored(6.4).stock.bore_mm, 6.4);
}

/// A wall of 1 mm on 8 mm is an eighth of the diameter: the caution says so. 2 mm are a quarter.
#[test]
fn a_thin_wall_is_told() {
    let caution = |bore: f64| {
        let mut job = super::falls::pin("", "");
        job.stock.bore_mm = bore;
        let plan = spanhold::answer::advised(&job, spanhold::planner::Advice::None).unwrap_or_else(|d| panic!("{d}"));
        assert_eq!(plan.shaft.stock_bore_mm, (bore > 0.0).then_some(bore));
        plan.cautions.iter().any(|c| c.contains("may crush it"))
    };
    // The pin falls, so only the bar of 10 mm is held, in the headstock.
    assert_eq!([0.0, 4.0, 7.5].map(caution), [false, false, true]);
}
