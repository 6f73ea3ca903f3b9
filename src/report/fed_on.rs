//! Bar that is fed on, uncut, farther than the last stage turns, for work behind the end of that stage.

use super::{numbers, words};
use crate::job::plan::{Plan, Stage};
use crate::say;

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
    let mut positions = vec![say!("fed-unsupported", unsupported = numbers::stop_mm(fed.unsupported_mm))];
    if let Some(at) = fed.counter_spindle_mm.filter(|_| words::has_bush(plan)) {
        positions.push(say!("fed-counter-spindle", distance = numbers::mm(at)));
    }
    let headstock = numbers::mm(fed.headstock_mm);
    positions.push(if words::has_bush(plan) {
        say!("fed-headstock-bush", distance = headstock)
    } else {
        say!("fed-headstock-tool", distance = headstock)
    });
    let (to, works, back) =
        (numbers::stop_mm(fed.to_mm), words::enumeration(&fed.works), numbers::stop_mm(stage.to_mm));
    let positions = words::enumeration(&positions);
    Some(match plan.part_off_rpm {
        Some(rpm) => say!(
            "limit-fed-out-speed",
            stage = stage.number,
            to = to,
            works = works,
            positions = positions,
            speed = numbers::rpm(rpm),
            back = back,
        ),
        None => {
            say!("limit-fed-out", stage = stage.number, to = to, works = works, positions = positions, back = back)
        }
    })
}
