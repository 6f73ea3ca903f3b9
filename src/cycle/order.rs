//! What an order takes: bars, time, shifts, cost by quantity, and the effect of a changed time.

use super::{AS_PLANNED, Factors, works};
use crate::job::Job;
use crate::job::plan::{OrderQuote, Plan, Quantity, Sensitivity};
use crate::process::Rig;
use crate::process::segments::Segment;
use crate::units::t_per_mm3;

/// Quantities that are quoted, as shares of the order.
const SIZES: [f64; 7] = [0.1, 0.25, 0.5, 1.0, 2.0, 5.0, 10.0];
/// The factors on a time or a speed that are tried.
const LESS: f64 = 0.9;
const MORE: f64 = 1.1;

/// What a number of pieces takes.
struct Batch {
    bars: usize,
    run_h: f64,
    shifts: f64,
    cost: Option<f64>,
}

fn batch(job: &Job, order: &crate::job::Order, steady_s: f64, pieces: usize) -> Batch {
    let bars = pieces.div_ceil(job.pieces_per_bar().max(1));
    let run_h = pieces as f64 * steady_s / 3600.0 / order.running_share;
    let hours = order.set_up_h + run_h;
    let bar_kg =
        job.stock.area_mm2() * job.stock.bar_length_mm * t_per_mm3(job.shaft.material.density_kg_per_m3) * 1000.0;
    let cost = job.rates.as_ref().map(|r| r.machine_per_hour * hours + r.material_per_kg * bar_kg * bars as f64);
    Batch { bars, run_h, shifts: hours / order.shift_h, cost }
}

/// The quote of the job's order. None: the job has no order, or a bar gives no piece.
///
/// Material counts in whole bars, set-up at the machine's hourly rate. A machine also stands still for reasons that are
/// not in a plan, so the run time is divided by the share of the time in which the machine runs.
pub fn order(plan: &Plan, rig: &Rig<'_>, segments: &[Segment]) -> Option<OrderQuote> {
    let job = rig.job;
    let order = job.order.as_ref().filter(|_| job.pieces_per_bar() > 0)?;
    let works = works(plan, rig, segments);
    let steady_s = works.steady_s(AS_PLANNED);
    let whole = batch(job, order, steady_s, order.pieces);
    let mut sizes: Vec<usize> =
        SIZES.iter().map(|share| ((order.pieces as f64 * share).round() as usize).max(1)).collect();
    sizes.dedup();
    let quantities = sizes.into_iter().map(|pieces| {
        let batch = batch(job, order, steady_s, pieces);
        Quantity {
            pieces,
            bars: batch.bars,
            shifts: batch.shifts,
            cost_per_piece: batch.cost.map(|c| c / pieces as f64),
        }
    });
    let tried = [
        ("cutting_speed", LESS, Factors { cutting: 1.0 / LESS, ..AS_PLANNED }),
        ("cutting_speed", MORE, Factors { cutting: 1.0 / MORE, ..AS_PLANNED }),
        ("hand_over", LESS, Factors { hand_over: LESS, ..AS_PLANNED }),
        ("hand_over", MORE, Factors { hand_over: MORE, ..AS_PLANNED }),
        ("regrip", LESS, Factors { regrip: LESS, ..AS_PLANNED }),
        ("tool_change", LESS, Factors { tool_change: LESS, ..AS_PLANNED }),
    ];
    let sensitivity = tried.into_iter().map(|(what, factor, factors)| {
        let changed = works.steady_s(factors);
        Sensitivity { what: what.into(), factor, steady_s: changed, change_s: changed - steady_s }
    });
    Some(OrderQuote {
        pieces: order.pieces,
        bars: whole.bars,
        set_up_h: order.set_up_h,
        run_h: whole.run_h,
        shifts: whole.shifts,
        pieces_per_shift: order.shift_h * 3600.0 * order.running_share / steady_s,
        cost: whole.cost,
        cost_per_piece: whole.cost.map(|c| c / order.pieces as f64),
        currency: job.rates.as_ref().map(|r| r.currency.clone()),
        quantities: quantities.collect(),
        sensitivity: sensitivity.filter(|s| s.change_s != 0.0).collect(),
    })
}
