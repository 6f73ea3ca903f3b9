//! The answer when there is no plan: the stages found, what stops them, and what would help.

use crate::job::Job;
use crate::job::plan::{Plan, Shortfall, Stage, Verdict};
use crate::planner::plan::assemble;
use crate::planner::why_not::blocked::Blocked;
use crate::process::Rig;

/// The plan that says why the job has none.
pub fn plan(job: &Job, blocked: &Blocked) -> Plan {
    let collet = blocked.collet.as_deref().and_then(|name| job.machine.collet(name));
    let rig = Rig::new(job, collet);
    Plan {
        collet: blocked.stages.iter().any(|s| s.2.is_some()).then(|| blocked.collet.clone()).flatten(),
        stages: stages(&rig, blocked),
        hand_overs_mm: blocked.stages.iter().skip(1).map(|s| s.0).collect(),
        shortfall: Some(Shortfall {
            farthest_mm: blocked.farthest_mm,
            blocked_by: blocked.by.clone(),
            blocked_with: blocked.together.iter().skip(1).map(|r| r.by.clone()).collect(),
            text: blocked.told(),
            changes: Vec::new(),
            sets: Vec::new(),
            after_trial: Vec::new(),
            tried: None,
        }),
        ..assemble::blank(&rig, Verdict::Infeasible)
    }
}

/// The stages up to the farthest place. Only their places are known: no speeds, no re-grips, no checks.
fn stages(rig: &Rig<'_>, blocked: &Blocked) -> Vec<Stage> {
    let one = |(i, (from_mm, to_mm, nose)): (usize, &(f64, f64, Option<f64>))| {
        let counter = |t: f64| nose.map(|g| t + rig.gap_mm() - g);
        Stage {
            number: i + 1,
            from_mm: *from_mm,
            to_mm: *to_mm,
            travel_mm: to_mm - from_mm,
            grip: nose.map(|nose_mm| assemble::grip(rig, nose_mm)),
            unsupported_max_mm: to_mm + rig.gap_mm() - nose.unwrap_or(0.0),
            l_over_d_max: None,
            time_s: 0.0,
            counter_spindle_start_mm: counter(*from_mm),
            counter_spindle_end_mm: counter(*to_mm),
            headstock_start_mm: 0.0,
            headstock_end_mm: 0.0,
            regrips_mm: Vec::new(),
            rpm_min: 0.0,
            rpm_max: 0.0,
            checks: Vec::new(),
        }
    };
    blocked.stages.iter().filter(|s| s.1 > s.0).enumerate().map(one).collect()
}
