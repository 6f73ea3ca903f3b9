//! Fixed wishes of a job: a plan keeps them all, the proof holds it to them, and where one stands in the way it is named
//! and dropping it is among the changes that help.

use spanhold::answer;
use spanhold::input::read_job_text;
use spanhold::job::Job;
use spanhold::job::plan::{Plan, Verdict};
use spanhold::planner::Advice;
use spanhold::proof::prove;

/// An invented roller of one land, 300 mm, on a machine whose counter-spindle travels 110 mm: several hand-overs.
fn text(wishes: &str, holding: &str) -> String {
    // The overhang without a bush takes light cuts and more damping; pieces are not pulled back there.
    let (cutting, damping) = match holding {
        "bush" => ("ap_max: 1.5", 0.02),
        _ => ("ap_max: 0.25, ap_finish: 0.1", 0.1),
    };
    format!(
        "shaft:
  material: C45
  straightness: 0.1
  sections:
    - {{length: 6, diameter: 10, tolerance: h11, name: front}}
    - {{length: 254, diameter: 11, tolerance: h11, name: roller}}
    - {{length: 40, diameter: 11, tolerance: h8, interrupt: never, name: seat}}
stock: {{diameter: 12}}
machine:
  name: short 16
  bush: {{max_bar: 16, land: 14, gap: 1, stiffness: 80}}
  no_bush: {{max_bar: 16, collet_gap: 6}}
  headstock: {{nearest: 24, stroke: 160, hold: 20, stiffness: 80, max_rpm: 9000, regrip_s: 5}}
  counter_spindle:
    nearest: 6
    farthest: 110
    bore: 18
    bore_depth: 400
    stiffness: 60
    max_rpm: 9000
    hand_over_s: 4
    sleeve: {{pitch: 40, stiffness: 5}}
    collets:
      - {{name: '11', range: [10.8, 11.1], hold: 12, passes: 11.4, clamp_force: 5000}}
cutting: {{vc: 100, feed: 0.1, {cutting}, speed_floor: 0.3}}
holding: {holding}
limits: {{stiffness_min: 0.1, sag: 0.5, whip: 0.5, damping_ratio: {damping}}}
planning: {{station_pitch: 10}}
{wishes}"
    )
}

fn read(wishes: &str, holding: &str) -> Job {
    read_job_text("wished.yaml", &text(wishes, holding), ".".as_ref()).unwrap_or_else(|told| panic!("{told:?}"))
}

fn plan(job: &Job, advice: Advice) -> Plan {
    answer::advised(job, advice).unwrap_or_else(|defect| panic!("{defect}"))
}

fn planned(wishes: &str, holding: &str) -> Plan {
    let plan = plan(&read(wishes, holding), Advice::None);
    assert_eq!(plan.verdict, Verdict::Feasible, "{wishes}: {:?}", plan.shortfall);
    plan
}

fn near(list: &[f64], place: f64) -> bool {
    list.iter().any(|x| (x - place).abs() < 1e-6)
}

/// What the planner makes least where nothing is hidden: the seconds of a part, and those charged for lines.
fn charged_s(plan: &Plan) -> f64 {
    plan.time_s.total + plan.time_s.penalties
}

#[test]
fn a_wished_hand_over_is_made_with_and_without_a_bush() {
    for holding in ["bush", "no_bush"] {
        let free = planned("", holding);
        assert!(
            !near(&free.hand_overs_mm, 93.0),
            "{holding}: the wish must change something: {:?}",
            free.hand_overs_mm
        );
        let wished = planned("wishes: {hand_over_at: [93]}\n", holding);
        assert!(near(&wished.hand_overs_mm, 93.0), "{holding}: {:?}", wished.hand_overs_mm);
        assert!(charged_s(&wished) >= charged_s(&free) - 1e-6, "{holding}: a wish never saves time");
        assert!(wished.notes.iter().any(|n| n.contains("hand over at 93 mm")), "{:?}", wished.notes);
        let held = planned("wishes: {hand_over_at: [{at: 93, nose: 47.3}]}\n", holding);
        let stage = held.stages.iter().find(|s| (s.from_mm - 93.0).abs() < 1e-6).expect("the wished stage");
        assert_eq!(stage.grip.as_ref().map(|g| g.nose_mm), Some(47.3), "{holding}");
        // The plan without the wish does not keep it, and the proof says so.
        let found = prove(&free, &read("wishes: {hand_over_at: [93]}\n", holding));
        assert!(found.breaches.iter().any(|b| b.rule == "wish"), "{holding}: {:?}", found.breaches);
        let found = prove(&wished, &read("wishes: {hand_over_at: [{at: 93, nose: 47.3}]}\n", holding));
        assert!(found.breaches.iter().any(|b| b.rule == "wish"), "{holding}: {:?}", found.breaches);
    }
}

#[test]
fn what_is_never_to_be_gripped_is_not() {
    let free = planned("", "bush");
    let grip = free.stages[1].grip.as_ref().expect("held");
    let (from, to) = (grip.from_mm.floor() - 2.0, grip.to_mm.ceil() + 2.0);
    let wish = format!("wishes: {{never_grip: [[{from}, {to}]]}}\n");
    let wished = planned(&wish, "bush");
    for grip in wished.stages.iter().filter_map(|s| s.grip.as_ref()) {
        assert!(grip.to_mm <= from + 1e-6 || grip.from_mm >= to - 1e-6, "{grip:?} in {from} to {to}");
    }
    let found = prove(&free, &read(&wish, "bush"));
    assert!(found.breaches.iter().any(|b| b.rule == "wish" && b.stage == Some(2)), "{:?}", found.breaches);
}

#[test]
fn the_number_of_hand_overs_is_bounded_and_the_plan_is_the_fastest_of_those() {
    for holding in ["bush", "no_bush"] {
        let fewest = planned("objective: fewest_hand_overs\n", holding);
        let least = fewest.hand_overs_mm.len();
        // Making the hand-over cheap would not change that the bound is kept.
        let at_most = planned(&format!("wishes: {{at_most_hand_overs: {least}}}\n"), holding);
        assert_eq!(at_most.hand_overs_mm.len(), least, "{holding}");
        assert!(charged_s(&at_most) <= charged_s(&fewest) * 1.002, "{holding}");
        let job = read(&format!("wishes: {{at_most_hand_overs: {}}}\n", least - 1), holding);
        let none = plan(&job, Advice::None);
        assert_eq!(none.verdict, Verdict::Infeasible, "{holding}: fewer than the fewest");
        let shortfall = none.shortfall.expect("why");
        assert_eq!(shortfall.blocked_by, "wish", "{holding}: {}", shortfall.text);
        assert!(shortfall.text.contains("at most"), "{}", shortfall.text);
        let found = prove(&fewest, &job);
        assert!(found.breaches.iter().any(|b| b.rule == "wish"), "{holding}: {:?}", found.breaches);
    }
}

#[test]
fn a_wish_in_the_way_is_named_and_dropping_it_helps() {
    let job = read("wishes: {hand_over_at: [280], never_grip: [front]}\n", "bush");
    let none = plan(&job, Advice::Wanted);
    let shortfall = none.shortfall.expect("the seat must not be interrupted");
    assert_eq!(shortfall.blocked_by, "wish");
    assert!(shortfall.text.contains("the wish \"hand over at 280 mm\""), "{}", shortfall.text);
    assert!(shortfall.text.contains("seat"), "{}", shortfall.text);
    let first = shortfall.changes.first().expect("a change that helps");
    assert_eq!(first.change, "wish");
    assert!(first.text.starts_with("drop the wish \"hand over at 280 mm\": "), "{}", first.text);
    assert!(shortfall.changes.iter().all(|c| !c.text.contains("never grip")), "{:?}", shortfall.changes);
    // Leave to interrupt the seat helps as well.
    assert!(shortfall.changes.iter().any(|c| c.change == "interrupt of seat"), "{:?}", shortfall.changes);

    let nowhere = plan(&read("wishes: {never_grip: [2, seat]}\n", "bush"), Advice::None);
    let text = nowhere.shortfall.expect("nothing to hold").text;
    assert!(text.contains("the wishes together") || text.contains("never grip"), "{text}");
}
