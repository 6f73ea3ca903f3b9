//! The quote: pieces a bar, material, cost.

use crate::job::Job;
use crate::job::plan::{Cost, Quote};
use crate::mechanics::beam::area_mm2;
use crate::units::t_per_mm3;

/// Pieces per bar `floor((bar - remnant)/(L + part-off + facing))`; the remnant is what the headstock can no longer push
/// through: its nearest place, its hold and the bar end. Material is what one part takes off the bar, without a share of
/// the remnant. `time_s` none: no plan, so no cost.
pub fn quote(job: &Job, time_s: Option<f64>) -> Quote {
    let machine = &job.machine;
    let remnant_mm = machine.headstock.nearest_mm + machine.headstock.hold_mm + machine.bar_end_mm;
    let each_mm = job.parted_at_mm() + machine.facing_mm;
    // The slack keeps a bar that is an exact multiple from losing a piece to rounding.
    let pieces = ((job.stock.bar_length_mm - remnant_mm) / each_mm + 1e-9).floor().max(0.0);
    let kg_per_mm = area_mm2(job.stock.diameter_mm) * t_per_mm3(job.shaft.material.density_kg_per_m3) * 1000.0;
    let material_kg = each_mm * kg_per_mm;
    let cost = job.rates.as_ref().zip(time_s).map(|(rates, seconds)| {
        let (machine, material) = (rates.machine_per_hour * seconds / 3600.0, rates.material_per_kg * material_kg);
        Cost { machine, material, total: machine + material, currency: rates.currency.clone() }
    });
    Quote { pieces_per_bar: pieces as usize, material_kg, remnant_mm, cost }
}
