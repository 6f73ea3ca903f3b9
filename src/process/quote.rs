//! The quote: pieces per bar, material, cost.

use crate::job::Job;
use crate::job::plan::{Cost, Quote};
use crate::units::t_per_mm3;

/// Pieces per bar, remnant of the bar, material and cost. The material is the length of bar that one part takes, without a share of
/// the remnant. `time_s` is the time from part to part; without it (no plan) there is no cost.
pub fn quote(job: &Job, time_s: Option<f64>) -> Quote {
    let kg_per_mm = job.stock.area_mm2() * t_per_mm3(job.shaft.material.density_kg_per_m3) * 1000.0;
    let material_kg = job.piece_mm() * kg_per_mm;
    let cost = job.rates.as_ref().zip(time_s).map(|(rates, seconds)| {
        let (machine, material) = (rates.machine_per_hour * seconds / 3600.0, rates.material_per_kg * material_kg);
        Cost { machine, material, total: machine + material, currency: rates.currency.clone() }
    });
    Quote { pieces_per_bar: job.pieces_per_bar(), material_kg, remnant_mm: job.remnant_mm(), cost }
}
