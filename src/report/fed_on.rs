//! Bar that is fed on, uncut, farther than the last stage turns, for work behind the end of that stage.

use super::{numbers, words};
use crate::job::plan::{Plan, Stage};

/// Where things stand when the bar is fed on.
#[derive(Debug, Clone, PartialEq)]
pub struct FedOn {
    /// Turned length, mm.
    pub to_mm: f64,
    /// Unsupported length then, mm.
    pub unsupported_mm: f64,
    /// Distance of the counter-spindle's nose from the bush face, mm; none: the front is free.
    pub counter_spindle_mm: Option<f64>,
    /// Distance of the headstock's nose from the bush face, without a bush from the tool, mm.
    pub headstock_mm: f64,
    /// What is worked there.
    pub works: Vec<String>,
}

/// The bar that is fed on in a stage. None: the bar stops where the turning ends.
pub fn of(plan: &Plan, stage: &Stage) -> Option<FedOn> {
    let index = stage.number.checked_sub(1)?;
    let to_mm = plan.fed_on_mm(index)?;
    let on_mm = to_mm - stage.to_mm;
    // Without a bush the headstock's collet is far enough back for this all through the stage, so nothing is added.
    let longer_mm = if words::has_bush(plan) { on_mm } else { 0.0 };
    Some(FedOn {
        to_mm,
        unsupported_mm: stage.unsupported_max_mm + longer_mm,
        counter_spindle_mm: stage.counter_spindle_end_mm.map(|at| at + on_mm),
        headstock_mm: stage.headstock_end_mm - on_mm,
        works: plan.behind(index).map(|f| words::plain(&f.text)).collect(),
    })
}

/// The limit of bar that is fed on, in words for the setter.
pub fn limit(plan: &Plan, stage: &Stage) -> Option<String> {
    let fed = of(plan, stage)?;
    let from = if words::has_bush(plan) { "the bush" } else { "the tool" };
    let mut stands = vec![format!("{} mm unsupported", numbers::mm(fed.unsupported_mm))];
    if let Some(at) = fed.counter_spindle_mm.filter(|_| words::has_bush(plan)) {
        stands.push(format!("counter-spindle {} mm from the bush", numbers::mm(at)));
    }
    stands.push(format!("headstock {} mm from {from}", numbers::mm(fed.headstock_mm)));
    let speed = plan.part_off_rpm.map(|rpm| format!("; never above {} rev/min", numbers::rpm(rpm))).unwrap_or_default();
    Some(format!(
        "Stage {}, before the part-off: feed on to {} mm, no farther, for {}; nothing is turned there; {}{speed}; then back to {} mm",
        stage.number,
        numbers::mm(fed.to_mm),
        words::enumeration(&fed.works),
        words::enumeration(&stands),
        numbers::mm(stage.to_mm),
    ))
}
