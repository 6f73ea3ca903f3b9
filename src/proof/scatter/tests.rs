use super::*;
use crate::answer::advised;
use crate::input::read_job;
use crate::planner::Advice;
use std::path::Path;

fn demo(name: &str) -> (Job, Plan) {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("demo").join(name);
    let job = read_job(&path).unwrap_or_else(|d| panic!("{d:?}"));
    let plan = advised(&job, Advice::None).unwrap_or_else(|d| panic!("{d}"));
    (job, plan)
}

const DEMOS: [&str; 4] = ["scanner-rail.yaml", "drive-hub.yaml", "metering-spindle.yaml", "probe-needle.yaml"];

#[test]
fn leaving_out_states_that_cannot_fail_changes_nothing() {
    let (mut parts, mut broken) = (0, 0);
    for name in DEMOS {
        let (mut job, plan) = demo(name);
        // Wide spreads, so that many checks fail in many places.
        for spread in &mut job.scatter.spreads {
            *spread *= 1.7;
        }
        let course = Course::new(&plan, &job);
        for i in 0..60 {
            let draw = draw(7, i, 0);
            let (mut fast, mut full) = (course.breaks(&draw, false), course.breaks(&draw, true));
            let order = |a: &Break, b: &Break| (a.stage, a.check).cmp(&(b.stage, b.check));
            fast.sort_by(order);
            full.sort_by(order);
            assert_eq!(fast, full, "{name}, part {i}");
            (parts, broken) = (parts + 1, broken + usize::from(!full.is_empty()));
        }
    }
    assert!(broken > 60 && broken < parts, "{broken} of {parts} break something");
}

#[test]
fn the_nominal_part_uses_what_the_plan_says_and_breaks_nothing() {
    let mut compared = 0;
    for name in DEMOS {
        let (job, plan) = demo(name);
        let course = Course::new(&plan, &job);
        let nominal = [0.0; Uncertain::COUNT];
        assert_eq!(course.breaks(&nominal, true), [], "{name}");
        for (check, used) in course.most(&nominal) {
            let told = plan.stages.iter().flat_map(|s| &s.checks).filter(|c| c.check == check);
            let told = told.map(|c| c.utilisation).fold(0.0, f64::max);
            if told < 0.01 {
                continue;
            }
            // The worst state may lie between two states of the samples.
            let near = used <= told * 1.001 && used > 0.93 * told;
            assert!(near, "{name}, {check}: {used} beside {told}");
            compared += 1;
        }
    }
    assert!(compared > 20, "{compared}");
}

#[test]
fn parts_of_a_run_share_what_does_not_vary_between_them() {
    let (first, second, other) = (draw(1, 5, 0), draw(1, 5, 1), draw(1, 6, 0));
    for input in Uncertain::ALL {
        let i = input as usize;
        assert_eq!(first[i] == second[i], input.varies() == Varies::BetweenRuns, "{input:?}");
        assert_ne!(first[i], other[i]);
    }
    // Mean 0, variance 1, and no two inputs alike, over many runs: within four standard errors.
    let draws: Vec<Draw> = (0..4000).map(|i| draw(3, i, 0)).collect();
    let mean = |f: &dyn Fn(&Draw) -> f64| draws.iter().map(f).sum::<f64>() / draws.len() as f64;
    for i in 0..Uncertain::COUNT {
        assert!(mean(&|d| d[i]).abs() < 4.0 / 63.0, "{i}");
        assert!((mean(&|d| d[i] * d[i]) - 1.0).abs() < 4.0 * 1.42 / 63.0, "{i}");
        for j in 0..i {
            assert!(mean(&|d| d[i] * d[j]).abs() < 4.0 / 63.0, "{i} and {j}");
        }
    }
}

#[test]
fn what_never_varies_breaks_in_every_part_of_a_run_or_in_none() {
    let (mut job, plan) = demo("drive-hub.yaml");
    job.scatter.spreads[Uncertain::Straightness as usize] = 0.0;
    job.stock.tolerance = None;
    let found = scatter(&plan, &job);
    let runs = found.runs.expect("runs");
    assert_eq!(runs.one_holds, 0.0);
    assert!(runs.none_holds > 0.05 && runs.both_hold > 0.5, "{runs:?}");
    assert!(found.inputs.iter().all(|i| i.input != "straightness" && i.input != "bar"));
    // With nothing uncertain, every part is the nominal one.
    job.scatter.spreads = [0.0; Uncertain::COUNT];
    let found = scatter(&plan, &job);
    assert_eq!((found.good_share, found.broken.len(), found.inputs.len()), (1.0, 0, 0));
}

#[test]
fn inputs_are_told_of_the_check_nearest_to_its_limit() {
    let (job, plan) = demo("drive-hub.yaml");
    let found = scatter(&plan, &job);
    let nearest = found.nearest.expect("a check");
    // `torque` uses most of its limit, but others scatter more, and break.
    assert_eq!(plan.margin_at.as_ref().map(|m| m.check.as_str()), Some("torque"));
    assert!(found.broken.iter().take(2).any(|b| b.check == nearest.check), "{nearest:?}, {:?}", found.broken);
    assert!(found.inputs.windows(2).all(|two| two[0].swing() >= two[1].swing() - 1e-6));
    let kc = found.inputs.iter().find(|i| i.input == "kc").expect("kc");
    assert!((kc.high / kc.value - kc.value / kc.low).abs() < 1e-9 && (kc.high / kc.value).ln() < kc.spread);
    assert!(kc.same_for_run && kc.used_low < nearest.used && nearest.used < kc.used_high, "{kc:?}");
    assert!(kc.good_below > kc.good_above + 0.1, "{kc:?}");
    // The squares of what each input does add up to that of the check.
    let squares: f64 = found.inputs.iter().map(|i| (0.5 * (i.used_high / i.used_low).ln()).powi(2)).sum();
    assert!((squares.sqrt() - nearest.spread).abs() < 1e-9);
}
