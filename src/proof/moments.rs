//! The state of the machine at one moment of a finished plan.

use super::{SAME_MM, centre};
use crate::job::plan::Plan;
use crate::process::stops::SAME_MM as ONE_STOP_MM;
use crate::process::{Counter, Rig, State};

/// Turned length of the last re-grip before a moment of a stage (index). With `after` a re-grip at this moment counts too; without it
/// not, because works of tools at a stop come before the re-grip (see `AtStop`).
pub fn last_regrip(plan: &Plan, stage: usize, turned_mm: f64, after: bool) -> f64 {
    let until = if after { turned_mm + SAME_MM } else { turned_mm - ONE_STOP_MM };
    let here = plan.stages[stage].regrips_mm.iter().rev().find(|t| **t <= until);
    let before = plan.stages[..stage].iter().rev().find_map(|s| s.regrips_mm.last());
    here.or(before).copied().unwrap_or(0.0)
}

/// The state at a turned length of a stage (index) whose last re-grip was at `last_regrip_mm`.
pub fn moment(rig: &Rig<'_>, plan: &Plan, index: usize, turned_mm: f64, last_regrip_mm: f64) -> State {
    let stage = &plan.stages[index];
    // Without a bush the headstock's collet is set for the piece that ends at the next re-grip or at the end of the stage. There it
    // is set far enough back for bar that is fed on.
    let inner = stage.regrips_mm.iter().filter(|t| **t > stage.from_mm + SAME_MM);
    let next = inner.copied().find(|t| *t >= turned_mm - SAME_MM && *t > last_regrip_mm + SAME_MM);
    let end = next.unwrap_or_else(|| plan.fed_on_mm(index).unwrap_or(stage.to_mm));
    State {
        turned_mm,
        counter: match &stage.grip {
            Some(grip) => Counter::Holds { nose_mm: grip.nose_mm },
            None => centre::without_grip(rig.job, turned_mm),
        },
        guide: rig.guide(turned_mm, last_regrip_mm, end),
    }
}
