//! Other bars: those of the shop in the material of the job, else usual sizes.

use crate::job::{ChangeKind, Holding, Job};
use crate::lang::Measure;
use crate::planner::advice::candidate::{Candidate, Role, edit, once};
use crate::say;
use serde_json::json;

/// Usual diameters of drawn and ground bars, mm. Common practice, no source.
static USUAL_MM: [f64; 33] = [
    1.0, 1.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0, 12.0, 13.0, 14.0, 15.0, 16.0, 17.0, 18.0, 19.0,
    20.0, 22.0, 24.0, 25.0, 26.0, 28.0, 30.0, 32.0, 34.0, 35.0, 36.0, 38.0,
];
/// Number of sizes tried to either side.
const EACH_WAY: usize = 2;

/// Bars worth trying.
pub fn all(job: &Job) -> Vec<Candidate> {
    let now_mm = job.stock.diameter_mm;
    let most_mm = match job.holding {
        Holding::Bush => job.machine.bush.as_ref().map(|b| b.max_bar_mm),
        Holding::NoBush => job.machine.no_bush.as_ref().map(|n| n.max_bar_mm),
    };
    let largest_mm = job.shaft.largest_mm();
    let of_shop = job.nearby.bars_mm(&job.shaft);
    let sizes = if of_shop.is_empty() { USUAL_MM.to_vec() } else { of_shop };
    let fits = |d: &&f64| **d > largest_mm + 1e-6 && most_mm.is_none_or(|most| **d <= most) && **d > job.stock.bore_mm;
    let sizes: Vec<f64> = sizes.iter().filter(fits).copied().collect();
    let thicker = sizes.iter().filter(|d| **d > now_mm + 1e-6).take(EACH_WAY);
    let thinner = sizes.iter().rev().filter(|d| **d < now_mm - 1e-6).take(EACH_WAY);
    thinner.chain(thicker).map(|d| other(now_mm, *d)).collect()
}

fn other(now_mm: f64, d: f64) -> Candidate {
    let says = say!("change-bar", diameter = Measure::Size.number(d));
    let bar = once("bar", Role::Change(ChangeKind::Bar), json!(now_mm), json!(d), says, move |j| {
        j.limits.follow_bar(j.stock.diameter_mm, d);
        j.stock.diameter_mm = d;
    });
    bar.in_group("bar").written(move |_| vec![edit("job", "stock.diameter", &d.to_string())])
}
