//! The whole job: reads its parts in order, then checks what must hold between them.

use std::sync::Arc;

use serde_saphyr::Location;
use sha2::{Digest, Sha256};

use super::machine_from::{self, MachineFrom};
use super::node::{Node, parse, place_of};
use super::reader::{Map, Reader};
use super::shop::ShopFrom;
use super::{centre, cutting, language, limits, order, scatter, shaft, stock, tool_list, units, vary, wishes};
use crate::diag::{Diag, Source};
use crate::job::plan::{Giver, Origin};
use crate::job::shop::{Bar, Given, Shop};
use crate::job::{
    Hold, Holding, Job, ListedTool, Machine, Nearby, Objective, Range, SectionKind, Shaft, Stock, Tolerance,
};
use crate::lang;
use crate::say;

/// Keys of a job.
pub(super) const KEYS: [&str; 21] = [
    "shop",
    "language",
    "units",
    "tool_list",
    "shaft",
    "stock",
    "machine",
    "cutting",
    "holding",
    "hold",
    "limits",
    "planning",
    "scatter",
    "change_prices",
    "confidence",
    "confidence_warn",
    "wishes",
    "objective",
    "rates",
    "vary",
    "order",
];

pub(super) const HOLDINGS: [(&str, Holding); 2] = [("bush", Holding::Bush), ("no_bush", Holding::NoBush)];
const HOLDS: [(&str, Hold); 2] = [(Hold::Collet.key(), Hold::Collet), (Hold::Centre.key(), Hold::Centre)];
const OBJECTIVES: [(&str, Objective); 3] =
    [("time", Objective::Time), ("fewest_hand_overs", Objective::FewestHandOvers), ("margin", Objective::Margin)];

/// Reads a job.
///
/// # Errors
/// All errors: first those of the job, in file order, then those of the machine file.
pub(super) fn read(source: &Arc<Source>, machine: MachineFrom<'_>, shop: ShopFrom<'_>) -> Result<Job, Vec<Diag>> {
    let tree = parse(source).map_err(|diag| vec![diag])?;
    // What is wrong with the shop's file is told in the language of the job too.
    language::of(&tree).into_iter().for_each(lang::prefer);
    units::of(&tree).into_iter().for_each(lang::prefer_units);
    let shop = shop.of(&tree)?;
    read_tree(source, &tree, machine, shop, &[])
}

/// Reads a job from its tree. `varied` are the values of a part of a family. The tree contains them already.
pub(super) fn read_tree(
    source: &Arc<Source>,
    tree: &serde_saphyr::Spanned<Node>,
    machine: MachineFrom<'_>,
    shop: Option<Arc<Shop>>,
    varied: &[(&Range, f64)],
) -> Result<Job, Vec<Diag>> {
    let of_shop = || shop.as_ref().and_then(|shop| shop.language);
    lang::prefer(language::of(tree).or_else(of_shop).unwrap_or_default());
    let own_units = units::of(tree);
    lang::prefer_units(own_units.or_else(|| shop.as_ref()?.units).unwrap_or_default());
    if let Some(diag) = machine_for_job(source, tree) {
        return Err(vec![diag]);
    }
    let mut r = Reader::new(Arc::clone(source)).in_shop(shop);
    r.units = own_units.unwrap_or_default();
    let mut from_machine = Vec::new();
    let job = r.map(tree, &KEYS).and_then(|map| parts(&mut r, source, &map, machine, varied, &mut from_machine));
    let mut diags = r.finish(tree);
    diags.extend(from_machine);
    match job {
        Some(job) if diags.is_empty() => Ok(job),
        _ if diags.is_empty() => Err(vec![Diag::new(say!("defect-of-reader")).help(say!("defect-of-reader-help"))]),
        _ => Err(diags),
    }
}

/// The error if the file is a machine file and not a job. Without it, every key would be an error.
fn machine_for_job(source: &Arc<Source>, tree: &serde_saphyr::Spanned<Node>) -> Option<Diag> {
    let has = |key: &str| tree.value.get(key).is_some();
    let machine = has("headstock") && !["shaft", "stock", "cutting", "machine"].iter().any(|k| has(k));
    machine.then(|| {
        Diag::new(say!("machine-not-job"))
            .help(say!("machine-not-job-help", file = source.path.display().to_string()))
            .at(Some(place_of(source, &tree.referenced)))
    })
}

fn parts(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    machine: MachineFrom<'_>,
    varied: &[(&Range, f64)],
    from_machine: &mut Vec<Diag>,
) -> Option<Job> {
    let mut notes = Vec::new();
    r.text_maybe(map, "shop")?;
    let language = language::read(r, map)?;
    let own_units = units::read(r, map)?;
    let shaft = r.required(map, "shaft", "name, material and sections");
    let shaft = shaft.and_then(|node| shaft::read(r, node, &mut notes));
    let bar = stock::map(r, map);
    let machine = machine_from::of(r, source, map, machine, from_machine);
    let holding = r.choice(map, "holding", &HOLDINGS, Some(Holding::Bush));
    let of_machine = machine.as_ref().map(|found| &found.machine);
    let stock = bar.and_then(|bar| stock::read(r, &bar, shaft.as_ref().map(|(shaft, _)| shaft), of_machine, holding));
    // The kind of the bar may give the straightness of the shaft.
    let shaft = shaft.map(|(mut shaft, bow)| {
        let kind = stock.as_ref().and_then(|(stock, _)| stock.kind);
        shaft.bow_mm_per_m = bow.unwrap_or_else(|| shaft::bow_by_bar(r, &shaft.material, kind, &mut notes));
        shaft
    });
    let (stock, bar) = stock.unzip();
    let cutting = cutting::read(r, map, shaft.as_ref().map(|shaft| &shaft.material), &mut notes);
    let tool_list = tools(r, map, shaft.as_ref());
    let hold = r.choice(map, "hold", &HOLDS, Some(Hold::Collet));
    let limits = limits::read(r, map, stock.as_ref().map(|stock| stock.diameter_mm));
    let wishes = wishes::read(r, map, shaft.as_ref());
    if let Some(wishes) = wishes.as_ref().filter(|w| !w.is_empty()) {
        notes.push(say!("note-wishes", wishes = wishes.told().join("; ")));
    }
    let objective = r.choice(map, "objective", &OBJECTIVES, Some(Objective::Time));
    let planning = limits::planning(r, map);
    let own_spreads = scatter::owned(
        machine.as_ref().map(|found| &found.machine.spreads),
        shaft.as_ref().map(|shaft| &shaft.material.spreads),
        bar.as_ref().and_then(Option::as_ref).map(|bar| &bar.spreads),
    );
    let scatter = scatter::read(r, map, &own_spreads);
    let change_prices = limits::change_prices(r, map);
    let per_hour = machine.as_ref().and_then(|found| found.per_hour.clone());
    let rates = limits::rates(r, map, per_hour, price(r, bar.flatten().as_ref(), shaft.as_ref()));
    let order = order::read(r, map);
    let vary = vary::read(r, map, shaft.as_ref());
    let machine = machine.and_then(|found| {
        holds(r, map, &found.machine, holding?)?;
        Some((found.machine, found.text, found.mixed))
    });
    let (shaft, stock, (machine, machine_text, mixed)) = (shaft?, stock?, machine?);
    let (hold, wishes) = (hold?, wishes?);
    if hold == Hold::Centre {
        centre::fits(r, map, &shaft, &machine, &wishes, holding?)?;
    }
    bar_is_long_enough(r, map, &shaft, &stock, &machine)?;
    notes.extend(mixed_units(r, source, mixed));
    notes.extend(stays_as_drawn(&shaft, &stock));
    let vary = vary?;
    notes.extend(vary::note(&vary, varied));
    let origins = r.take_origins();
    notes.extend(of_shop(r, &origins));
    let input_digest = digest(&source.text, machine_text.as_deref(), &origins, varied);
    Some(Job {
        tool_list: tool_list?,
        shaft,
        stock,
        machine,
        cutting: cutting?,
        holding: holding?,
        hold,
        limits: limits?,
        planning: planning?,
        wishes,
        objective: objective?,
        rates: rates?,
        order: order?,
        scatter: scatter?,
        change_prices: change_prices?,
        language: language.or_else(|| r.shop()?.language),
        units: own_units.or_else(|| r.shop()?.units).unwrap_or_default(),
        written: r.units,
        nearby: Nearby(r.shop().cloned()),
        vary,
        notes,
        origins,
        input_digest,
    })
}

/// The tools of the job, else of the shop, with their cuts in the material.
fn tools(r: &mut Reader, map: &Map, shaft: Option<&Shaft>) -> Option<Vec<ListedTool>> {
    let shop = r.shop().cloned();
    let own = tool_list::read(r, map, shop.as_ref().map_or(&[], |shop| &shop.grades))?;
    let listed = match (own, shop) {
        (Some(own), _) => own,
        (None, Some(shop)) => {
            if let Some(Given { value, line }) = &shop.tool_list {
                r.given_by_shop("tool_list", say!("tools-number", number = value.len()), *line);
            }
            shop.tool_list.as_ref().map(|given| given.value.clone()).unwrap_or_default()
        }
        (None, None) => Vec::new(),
    };
    let material = shaft.map(|shaft| shaft.material.name.as_str()).unwrap_or_default();
    Some(listed.into_iter().map(|tool| tool.in_material(material)).collect())
}

/// The price per kg that the shop gives for the bar, else for the material.
fn price(r: &Reader, bar: Option<&Bar>, shaft: Option<&Shaft>) -> Option<Given<f64>> {
    if let Some((bar, value)) = bar.and_then(|bar| Some((bar, bar.price_per_kg?))) {
        return Some(Given { value, line: bar.line });
    }
    let grade = r.shop()?.grades.iter().find(|grade| shaft.is_some_and(|s| s.material.name == grade.material.name))?;
    Some(Given { value: grade.price_per_kg?, line: grade.line })
}

/// The note that says what the shop's file gives.
fn of_shop(r: &Reader, origins: &[Origin]) -> Option<String> {
    let keys: Vec<&str> = origins.iter().filter(|o| o.from == Giver::Shop).map(|o| o.key.as_str()).collect();
    let file = r.shop().filter(|_| !keys.is_empty())?.file_name();
    Some(say!("note-shop", file = file, keys = keys.join(", ")))
}

/// The notes about mixed units in the job, in its machine file (`of_machine`) and in the shop's file.
fn mixed_units(r: &Reader, source: &Source, of_machine: Option<String>) -> impl Iterator<Item = String> {
    let of_shop = r.shop().and_then(|shop| units::mixed(&shop.source, &shop.mixed));
    units::mixed(source, r.foreign()).into_iter().chain(of_machine).chain(of_shop)
}

/// Checks that the machine can hold the bar in the way that the job asks for.
fn holds(r: &mut Reader, map: &Map, machine: &Machine, holding: Holding) -> Option<()> {
    let (there, other) = match holding {
        Holding::Bush => (machine.bush.is_some(), Holding::NoBush),
        Holding::NoBush => (machine.no_bush.is_some(), Holding::Bush),
    };
    if there {
        return Some(());
    }
    let at: Location = if map.get("holding").is_some() { map.place("holding") } else { map.place("machine") };
    let key = holding.key();
    let diag = Diag::new(say!("machine-without-holding", machine = machine.name, key = key)).help(say!(
        "machine-without-holding-help",
        key = key,
        other = other.key()
    ));
    r.complain(&at, diag);
    None
}

/// Notes on sections that are not turned because they have the diameter of the bar, if the bar does not keep their
/// tolerance.
fn stays_as_drawn(shaft: &Shaft, stock: &Stock) -> Vec<String> {
    let bar_mm = stock.diameter_mm;
    let told = shaft.sections.iter().enumerate().filter_map(|(i, section)| {
        // A section with the nominal diameter of the bar is not turned.
        let drawn =
            matches!(section.kind, SectionKind::Cylinder { diameter_mm } if (diameter_mm - bar_mm).abs() < 1e-6);
        let asked = &section.tolerance;
        let range = |t: &Tolerance| format!("Ø{:.3} to {:.3} mm", bar_mm + t.lower_mm, bar_mm + t.upper_mm);
        let name = section.name.as_ref().map_or(String::new(), |n| format!(" ({n})"));
        let (name, label, needed) = (format!("{}{name}", i + 1), &asked.label, range(asked));
        match &stock.tolerance {
            _ if !drawn => None,
            Some(bar) if bar.lower_mm < asked.lower_mm - 1e-9 || bar.upper_mm > asked.upper_mm + 1e-9 => {
                let (bar, found) = (&bar.label, range(bar));
                Some(say!("note-not-turned", section = name, label = label, needed = needed, bar = bar, found = found))
            }
            None if !asked.label.starts_with("ISO 2768") => {
                Some(say!("note-not-turned-unknown", section = name, label = label, needed = needed))
            }
            _ => None,
        }
    });
    told.collect()
}

fn bar_is_long_enough(r: &mut Reader, map: &Map, shaft: &Shaft, stock: &Stock, machine: &Machine) -> Option<()> {
    let needed_mm = shaft.length_mm() + machine.part_off.width_mm + machine.facing_mm;
    if stock.bar_length_mm >= needed_mm {
        return Some(());
    }
    let diag = Diag::new(say!("stock-too-short", bar = stock.bar_length_mm.to_string()))
        .help(say!("stock-too-short-help", needed = needed_mm.to_string()));
    r.complain(&map.inner_place("stock", "bar_length"), diag);
    None
}

/// `sha256:` and the hex digest of the job text, the length of the machine text, the machine text, the values from the shop's file and
/// the varied values.
fn digest(job: &str, machine: Option<&str>, origins: &[Origin], varied: &[(&Range, f64)]) -> String {
    let mut hash = Sha256::new();
    hash.update(job.as_bytes());
    if let Some(machine) = machine {
        hash.update((machine.len() as u64).to_le_bytes());
        hash.update(machine.as_bytes());
    }
    for Origin { key, value, .. } in origins.iter().filter(|origin| origin.from == Giver::Shop) {
        hash.update(format!("{key} {value}\n").as_bytes());
    }
    for (range, value_mm) in varied {
        hash.update(format!("{} {value_mm}\n", range.varied.key()).as_bytes());
    }
    let mut out = String::from("sha256:");
    for byte in hash.finalize().iter() {
        out.push_str(&format!("{byte:02x}"));
    }
    out
}
