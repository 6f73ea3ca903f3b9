//! The steps that the benches time are those that lead to the plan.

use crate::planner::{Lessons, plan, steps};
use crate::process::Rig;

#[test]
fn the_steps_of_a_demo_lead_to_its_plan() {
    let job = crate::input::read_job("demo/probe-needle.yaml".as_ref()).expect("a demo job");
    let plan = plan(&job, &Lessons::default()).expect("no defect");
    let rig = Rig::new(&job, plan.collet.as_deref().and_then(|name| job.machine.collet(name)));
    let looked = steps::of(&rig, |steps| {
        let stops = steps.best_within(0.001).expect("no defect").expect("a way");
        let placed = steps.placed(&stops, 1.0).expect("no defect");
        assert_eq!(placed.0.hand_overs_mm().len(), plan.hand_overs_mm.len());
        assert!(!steps.settled(&placed, 1.0).is_empty() && steps.least_s() > 0.0);
        steps.looked_at().len()
    });
    assert!(looked.is_some_and(|n| n > 10), "{looked:?}");
}
