//! `limits`, `planning` and `rates`: what is good enough, how finely to search, and costs. All may be left out.

use super::reader::{Map, Reader};
use crate::fields::{self, Field};
use crate::job::shop::Given;
use crate::job::{ChangePrices, Limits, Planning, Rates, Reserve};

const KEYS: [&str; 15] = [
    "stiffness_min",
    "span_stiffness_min",
    "free_ratio",
    "whirl_ratio",
    "whip",
    "sag",
    "pick_up",
    "release",
    "tolerance_share",
    "drill",
    "damping_ratio",
    "bore_clearance",
    "torque_margin",
    "buckling_share",
    "avoid_penalty_s",
];

/// Reads the limits. The defaults of the least stiffness and of the bow depend on the bar.
pub(super) fn read(r: &mut Reader, job: &Map, stock_diameter_mm: Option<f64>) -> Option<Limits> {
    let map = match r.optional(job, "limits")? {
        Some(node) => r.map(node, &KEYS)?,
        None => Map::empty(job.at),
    };
    let stiffness_min = r.number_maybe(&map, &fields::STIFFNESS_MIN);
    let span_stiffness_min = r.number_maybe(&map, &fields::SPAN_STIFFNESS_MIN);
    let free_ratio = r.number_maybe(&map, &fields::FREE_RATIO);
    let whirl = r.number_or(&map, &fields::WHIRL_RATIO, None);
    let whip = r.number_or(&map, &fields::WHIP, stock_diameter_mm.map(Limits::whip_for_bar));
    let sag = r.number_or(&map, &fields::SAG, None);
    let pick_up = r.number_or(&map, &fields::PICK_UP, None);
    let release = r.number_or(&map, &fields::RELEASE, None);
    let share = r.number_or(&map, &fields::TOLERANCE_SHARE, None);
    let drill = r.number_or(&map, &fields::DRILL, None);
    let damping = r.number_or(&map, &fields::DAMPING_RATIO, None);
    let clearance = r.number_or(&map, &fields::BORE_CLEARANCE, None);
    let torque = r.number_or(&map, &fields::TORQUE_MARGIN, None);
    let buckling = r.number_or(&map, &fields::BUCKLING_SHARE, None);
    let penalty = r.number_or(&map, &fields::AVOID_PENALTY_S, None);
    let stiffness_min = stiffness_min?.or(stock_diameter_mm.map(Limits::stiffness_for_bar));
    Some(Limits {
        stiffness_min_n_per_um: stiffness_min?,
        span_stiffness_min_n_per_um: span_stiffness_min?.or(stiffness_min)?,
        free_ratio: free_ratio?,
        whirl_ratio: whirl?,
        whip_mm: whip?,
        sag_mm: sag?,
        pick_up_mm: pick_up?,
        release_mm: release?,
        tolerance_share: share?,
        drill_mm: drill?,
        damping_ratio: damping?,
        bore_clearance_mm: clearance?,
        torque_margin: torque?,
        buckling_share: buckling?,
        avoid_penalty_s: penalty?,
        reserve: Reserve::default(),
    })
}

/// Reads how finely the planner searches for a plan.
pub(super) fn planning(r: &mut Reader, job: &Map) -> Option<Planning> {
    let map = match r.optional(job, "planning")? {
        Some(node) => r.map(node, &["station_pitch"])?,
        None => Map::empty(job.at),
    };
    Some(Planning { station_pitch_mm: r.number_or(&map, &fields::STATION_PITCH, None)? })
}

/// Reads which changes the shop makes sooner. Usual prices are no values of the job, so they are not listed with it.
pub(super) fn change_prices(r: &mut Reader, job: &Map) -> Option<ChangePrices> {
    let keys = fields::CHANGE_PRICES.each_ref().map(Field::key);
    let map = match r.optional(job, "change_prices")? {
        Some(node) => r.map(node, &keys)?,
        None => Map::empty(job.at),
    };
    let mut prices = [0.0; fields::CHANGE_PRICES.len()];
    for (price, field) in prices.iter_mut().zip(&fields::CHANGE_PRICES) {
        *price = r.number_maybe(&map, field)?.or(field.default).unwrap_or_default();
    }
    Some(ChangePrices(prices))
}

/// Reads the rates: `Some(None)` if there are none. `per_hour` and `per_kg`: what the shop gives for the machine and for the bar.
pub(super) fn rates(
    r: &mut Reader,
    job: &Map,
    per_hour: Option<Given<f64>>,
    per_kg: Option<Given<f64>>,
) -> Option<Option<Rates>> {
    let node = r.optional(job, "rates")?;
    let map = match node {
        Some(node) => r.map(node, &["machine_per_hour", "material_per_kg", "currency"])?,
        None => Map::empty(job.at),
    };
    let mut rate = |field: &Field, own: Option<Given<f64>>| match own {
        Some(Given { value, line }) if !map.tried(field.key()) => {
            r.given_by_shop(field.path, value.to_string(), line);
            Some(Some(value))
        }
        _ if node.is_some() && r.shop().is_none_or(|shop| shop.number(field.path).is_none()) => {
            r.number(&map, field).map(Some)
        }
        _ => r.number_maybe(&map, field),
    };
    let machine = rate(&fields::MACHINE_PER_HOUR, per_hour);
    let material = rate(&fields::MATERIAL_PER_KG, per_kg);
    let currency =
        r.text_maybe(&map, "currency")?.or_else(|| r.shop()?.word("currency").map(|given| given.value.clone()));
    Some(machine?.zip(material?).map(|(machine_per_hour, material_per_kg)| Rates {
        machine_per_hour,
        material_per_kg,
        currency: currency.unwrap_or_else(|| "EUR".to_owned()),
    }))
}
