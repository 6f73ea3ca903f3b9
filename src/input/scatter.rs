//! `scatter`, `confidence` and `confidence_warn`: how surely inputs are known, and in how many parts a plan must hold. A machine, a material
//! and a bar of the shop may have spreads of their own.

use super::reader::{Map, Reader};
use crate::fields::{self, Field};
use crate::job::{Scatter, Spreads, Uncertain};

const KEYS: [&str; 16] = [
    "samples",
    "seed",
    "straightness",
    "supports",
    "bush",
    "headstock",
    "counter_spindle",
    "centre",
    "sleeve",
    "kc",
    "passive",
    "e",
    "damping",
    "ra",
    "run_out",
    "bar",
];

/// Spreads that a machine may have of its own.
pub(super) const OF_MACHINE: [(Uncertain, Field); 7] = [
    (Uncertain::Bush, fields::MACHINE_SCATTER_BUSH),
    (Uncertain::Headstock, fields::MACHINE_SCATTER_HEADSTOCK),
    (Uncertain::CounterSpindle, fields::MACHINE_SCATTER_COUNTER_SPINDLE),
    (Uncertain::Centre, fields::MACHINE_SCATTER_CENTRE),
    (Uncertain::Sleeve, fields::MACHINE_SCATTER_SLEEVE),
    (Uncertain::Damping, fields::MACHINE_SCATTER_DAMPING),
    (Uncertain::RunOut, fields::MACHINE_SCATTER_RUN_OUT),
];
/// Spreads that a material may have of its own.
pub(super) const OF_MATERIAL: [(Uncertain, Field); 2] =
    [(Uncertain::Kc, fields::MATERIAL_SCATTER_KC), (Uncertain::E, fields::MATERIAL_SCATTER_E)];
/// Spreads that a bar may have of its own.
pub(super) const OF_BAR: [(Uncertain, Field); 2] =
    [(Uncertain::Straightness, fields::BAR_SCATTER_STRAIGHTNESS), (Uncertain::Bar, fields::BAR_SCATTER_BAR)];

/// Reads `scatter` of a machine, a material or a bar.
pub(super) fn own<const N: usize>(r: &mut Reader, map: &Map, may: &[(Uncertain, Field); N]) -> Option<Spreads> {
    let Some(node) = r.optional(map, "scatter")? else { return Some(Spreads::new()) };
    let keys = may.each_ref().map(|(_, field)| field.key());
    let map = r.map(node, &keys)?;
    let mut all = Spreads::new();
    for (input, field) in may {
        all.extend(r.number_maybe(&map, field)?.map(|spread| (*input, spread)));
    }
    Some(all)
}

/// Reads how inputs scatter. `own`: the spreads of machine, material and bar, which count before those of the shop.
pub(super) fn read(r: &mut Reader, job: &Map, own: &Spreads) -> Option<Scatter> {
    let map = match r.optional(job, "scatter")? {
        Some(node) => r.map(node, &KEYS)?,
        None => Map::empty(job.at),
    };
    let samples = r.number_or(&map, &fields::SCATTER_SAMPLES, None);
    let seed = r.number_or(&map, &fields::SCATTER_SEED, None);
    let own = |input: Uncertain| own.iter().find(|(known, _)| *known == input).map(|(_, spread)| *spread);
    let supports_given = map.tried(fields::SCATTER_SUPPORTS.key());
    let supports = r.number_or(&map, &fields::SCATTER_SUPPORTS, None);
    let mut of = |input: Uncertain, field: &Field| match own(input) {
        Some(spread) if !map.tried(field.key()) => Some(spread),
        _ => r.number_or(&map, field, None),
    };
    let kc = of(Uncertain::Kc, &fields::SCATTER_KC);
    let passive = of(Uncertain::Passive, &fields::SCATTER_PASSIVE);
    let e = of(Uncertain::E, &fields::SCATTER_E);
    let damping = of(Uncertain::Damping, &fields::SCATTER_DAMPING);
    let ra = of(Uncertain::Ra, &fields::SCATTER_RA);
    let straightness = of(Uncertain::Straightness, &fields::SCATTER_STRAIGHTNESS);
    let run_out = of(Uncertain::RunOut, &fields::SCATTER_RUN_OUT);
    let mut one = |input: Uncertain, field: &Field| match own(input) {
        // What the job says of all supports counts before what the machine says of one.
        Some(spread) if !map.tried(field.key()) && !supports_given => Some(spread),
        _ => Some(r.number_maybe(&map, field)?.unwrap_or(supports?)),
    };
    let bush = one(Uncertain::Bush, &fields::SCATTER_BUSH);
    let headstock = one(Uncertain::Headstock, &fields::SCATTER_HEADSTOCK);
    let counter_spindle = one(Uncertain::CounterSpindle, &fields::SCATTER_COUNTER_SPINDLE);
    let centre = one(Uncertain::Centre, &fields::SCATTER_CENTRE);
    let sleeve = one(Uncertain::Sleeve, &fields::SCATTER_SLEEVE);
    let bar = match own(Uncertain::Bar) {
        Some(spread) if !map.tried(fields::SCATTER_BAR.key()) => Some(Some(spread)),
        _ => r.number_maybe(&map, &fields::SCATTER_BAR),
    };
    let confidence = r.number_maybe(job, &fields::CONFIDENCE);
    let confidence_warn = r.number_or(job, &fields::CONFIDENCE_WARN, None);
    let bar = bar?;
    Some(Scatter {
        samples: samples?.round() as usize,
        seed: seed?.round() as u64,
        // In the order of the inputs.
        spreads: [
            kc?,
            passive?,
            e?,
            damping?,
            bush?,
            headstock?,
            counter_spindle?,
            centre?,
            sleeve?,
            ra?,
            straightness?,
            bar.unwrap_or(0.0),
            run_out?,
        ],
        bar_even: bar.is_none(),
        confidence: confidence?,
        confidence_warn: confidence_warn?,
    })
}

/// What machine, material and bar say of their own spreads.
pub(super) fn owned(machine: Option<&Spreads>, material: Option<&Spreads>, bar: Option<&Spreads>) -> Spreads {
    [machine, material, bar].into_iter().flatten().flatten().copied().collect()
}
