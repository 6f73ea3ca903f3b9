//! A readings file: what a workshop measured on its machine, for `fit`.

use std::path::Path;
use std::sync::Arc;

use serde_saphyr::Spanned;

use super::job::HOLDINGS;
use super::machine_from::{self, MachineFrom};
use super::node::{Node, parse, place_of};
use super::reader::{Map, Reader};
use super::{machine_names, material, units};
use crate::diag::{Diag, Source};
use crate::fields::readings as fields;
use crate::job::readings::{Dial, Errors, Grip, Readings, SetUp, Support};
use crate::job::{Collet, Holding, Machine};
use crate::lang;
use crate::say;

const KEYS: [&str; 7] = ["units", "machine", "material", "diameter", "fit", "errors", "set_ups"];
const SET_UP_KEYS: [&str; 8] = ["name", "holding", "headstock", "front", "grip", "collet", "dial", "frequency"];
const SUPPORTS: [(&str, Support); 3] =
    [("bush", Support::Bush), ("headstock", Support::Headstock), ("counter_spindle", Support::CounterSpindle)];

/// Reads readings. A relative machine path is relative to `base_dir`.
///
/// # Errors
/// All errors: first those of the readings file, in file order, then those of the machine file.
pub(super) fn read(source: &Arc<Source>, base_dir: &Path, machine: Option<&Path>) -> Result<Readings, Vec<Diag>> {
    let tree = parse(source).map_err(|diag| vec![diag])?;
    let mut r = Reader::new(Arc::clone(source));
    r.units = units::of(&tree).unwrap_or_default();
    let mut from_machine = Vec::new();
    let read = r.map(&tree, &KEYS).and_then(|map| parts(&mut r, source, &map, base_dir, machine, &mut from_machine));
    let mut diags = r.finish(&tree);
    diags.extend(from_machine);
    match read {
        Some(readings) if diags.is_empty() => Ok(readings),
        _ if diags.is_empty() => Err(vec![Diag::new(say!("defect-of-reader")).help(say!("defect-of-reader-help"))]),
        _ => Err(diags),
    }
}

fn parts(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    base_dir: &Path,
    other_machine: Option<&Path>,
    from_machine: &mut Vec<Diag>,
) -> Option<Readings> {
    units::read(r, map)?;
    let machine = machine_from::of(r, source, map, MachineFrom::files(base_dir, other_machine), from_machine)
        .map(|found| found.machine);
    let material =
        r.required(map, "material", "a name such as C45, or your own values").and_then(|node| material::read(r, node));
    let diameter = r.number(map, &fields::DIAMETER);
    let errors = errors(r, map);
    let node = r.required(map, "set_ups", "a list of set-ups with their readings");
    let items = node.and_then(|node| r.list(node, "set_ups", fields::SET_UPS_MAX).map(|items| (node, items)));
    // Without the machine, the set-ups cannot be checked. The errors found so far are reported first.
    let (machine, diameter_mm, (node, items)) = (machine?, diameter?, items?);
    let fit = supports(r, map, &machine);
    if items.is_empty() {
        let diag = Diag::new(say!("text-empty", key = "set_ups")).help(say!("set-ups-empty-help"));
        r.complain(&node.referenced, diag);
        return None;
    }
    let mut set_ups = Vec::with_capacity(items.len());
    for (index, item) in items.iter().enumerate() {
        set_ups.extend(set_up(r, item, index, &machine, diameter_mm));
    }
    if set_ups.len() < items.len() {
        return None;
    }
    Some(Readings {
        machine,
        material: material?.0,
        diameter_mm,
        fit: fit?,
        errors: errors?,
        set_ups,
        place: Some(place_of(source, &map.key_place("set_ups"))),
    })
}

fn errors(r: &mut Reader, map: &Map) -> Option<Errors> {
    let inner = match r.optional(map, "errors")? {
        Some(node) => r.map(node, &["dial", "load", "tap"])?,
        None => Map::empty(map.at),
    };
    let dial = r.number_or(&inner, &fields::DIAL_ERROR, None);
    let load = r.number_or(&inner, &fields::LOAD_ERROR, None);
    let tap = r.number_or(&inner, &fields::TAP_ERROR, None);
    Some(Errors { dial_um: dial?, load_share: load?, tap_share: tap? })
}

/// The supports to be fitted: those that `fit` lists, otherwise all that the machine has.
fn supports(r: &mut Reader, map: &Map, machine: &Machine) -> Option<Vec<Support>> {
    let has = |support: Support| match support {
        Support::Bush => machine.bush.is_some(),
        Support::Headstock => true,
        Support::CounterSpindle => machine.counter_spindle.is_some(),
    };
    let Some(node) = r.optional(map, "fit")? else {
        return Some(Support::ALL.into_iter().filter(|s| has(*s)).collect());
    };
    let items = r.list(node, "fit", SUPPORTS.len())?;
    let mut chosen = Vec::with_capacity(items.len());
    for item in items {
        let text = r.text_in(item, "fit")?;
        let Some((_, support)) = SUPPORTS.iter().find(|(word, _)| *word == text) else {
            let diag = Diag::new(say!("choice-unknown", word = super::slips::shown(&text), key = "fit"))
                .help(say!("choice-help", words = "bush, headstock, counter_spindle"));
            r.complain(&item.referenced, diag);
            return None;
        };
        let diag = if !has(*support) {
            Diag::new(say!("machine-without", machine = machine.name, key = support.key()))
                .help(say!("fit-not-on-machine-help"))
        } else if chosen.contains(support) {
            Diag::new(say!("key-twice", key = text)).help(say!("fit-twice-help"))
        } else {
            chosen.push(*support);
            continue;
        };
        r.complain(&item.referenced, diag);
        return None;
    }
    if chosen.is_empty() {
        let diag = Diag::new(say!("text-empty", key = "fit")).help(say!("value-missing-help"));
        r.complain(&node.referenced, diag);
        return None;
    }
    chosen.sort_unstable();
    Some(chosen)
}

fn set_up(r: &mut Reader, node: &Spanned<Node>, index: usize, machine: &Machine, diameter_mm: f64) -> Option<SetUp> {
    let map = r.map(node, &SET_UP_KEYS)?;
    let name =
        r.text_maybe(&map, "name").map(|name| name.unwrap_or_else(|| say!("set-up-unnamed", number = index + 1)));
    let holding = r.choice(&map, "holding", &HOLDINGS, Some(Holding::Bush))?;
    bar_passes(r, &map, machine, holding, diameter_mm)?;
    let headstock = headstock(r, &map, machine, holding);
    let front = r.number(&map, &fields::FRONT);
    let grip = front.and_then(|front_mm| grip(r, &map, machine, diameter_mm, front_mm));
    let frequency = r.number_maybe(&map, &fields::FREQUENCY);
    let bare = SetUp {
        name: name?,
        headstock_mm: headstock?,
        front_mm: front?,
        grip: grip?,
        dial: Vec::new(),
        frequency_hz: frequency?,
    };
    let mut dial = Vec::new();
    if let Some(node) = r.optional(&map, "dial")? {
        let items = r.list(node, "dial", fields::READINGS_MAX)?;
        dial.extend(items.iter().filter_map(|item| reading(r, item, &bare, machine)));
        if dial.len() < items.len() {
            return None;
        }
    }
    if dial.is_empty() && bare.frequency_hz.is_none() {
        let diag = Diag::new(say!("set-up-no-reading")).help(say!("set-up-no-reading-help"));
        r.complain(&map.at, diag);
        return None;
    }
    Some(SetUp { dial, ..bare })
}

fn bar_passes(r: &mut Reader, map: &Map, machine: &Machine, holding: Holding, diameter_mm: f64) -> Option<()> {
    let max = match holding {
        Holding::Bush => machine.bush.as_ref().map(|b| b.max_bar_mm),
        Holding::NoBush => machine.no_bush.as_ref().map(|n| n.max_bar_mm),
    };
    let key = holding.key();
    let diag = match max {
        Some(max) if diameter_mm <= max => return Some(()),
        Some(max) => {
            Diag::new(say!("set-up-bar-too-thick", bar = diameter_mm.to_string(), most = max.to_string(), key = key))
                .help(say!("set-up-bar-too-thick-help"))
        }
        None => Diag::new(say!("machine-without", machine = machine.name, key = key))
            .help(say!("set-up-holding-help", key = key)),
    };
    r.complain(&map.place("holding"), diag);
    None
}

/// Where the headstock is: `Some(None)` without the bush, because places are then measured from the headstock.
fn headstock(r: &mut Reader, map: &Map, machine: &Machine, holding: Holding) -> Option<Option<f64>> {
    if holding == Holding::NoBush {
        if map.get("headstock").is_some() {
            let diag = Diag::new(say!("set-up-headstock")).help(say!("set-up-headstock-help"));
            r.complain(&map.place("headstock"), diag);
            return None;
        }
        return Some(None);
    }
    let at_mm = r.number(map, &fields::HEADSTOCK)?;
    let (nearest, farthest) = (machine.headstock.nearest_mm, machine.headstock.farthest_mm());
    if at_mm < nearest || at_mm > farthest {
        let diag = Diag::new(say!("set-up-out-of-travel", at = at_mm.to_string(), machine = machine.name)).help(say!(
            "set-up-out-of-travel-help",
            nearest = nearest.to_string(),
            farthest = farthest.to_string()
        ));
        r.complain(&map.place("headstock"), diag);
        return None;
    }
    Some(Some(at_mm))
}

/// The grip of the counter-spindle: `Some(None)` if it does not hold the bar. `collet` must be given if more than one
/// collet holds this bar.
fn grip(r: &mut Reader, map: &Map, machine: &Machine, diameter_mm: f64, front_mm: f64) -> Option<Option<Grip>> {
    let nose = r.number_maybe(map, &fields::GRIP)?;
    let named = r.text_maybe(map, "collet")?;
    let Some(nose_mm) = nose else {
        if named.is_some() {
            let diag = Diag::new(say!("set-up-collet-alone")).help(say!("set-up-collet-alone-help"));
            r.complain(&map.place("collet"), diag);
            return None;
        }
        return Some(None);
    };
    let Some(spindle) = &machine.counter_spindle else {
        let diag = Diag::new(say!("machine-without", machine = machine.name, key = "counter_spindle"))
            .help(say!("set-up-no-spindle-help"));
        r.complain(&map.place("grip"), diag);
        return None;
    };
    let holds = |c: &Collet| c.holds(diameter_mm);
    let fitting: Vec<&Collet> = spindle.collets.iter().filter(|c| holds(c)).collect();
    let chosen = match &named {
        Some(name) => fitting.iter().find(|c| c.name == *name).copied(),
        None => fitting.first().copied().filter(|_| fitting.len() == 1),
    };
    let Some(collet) = chosen else {
        let bar = diameter_mm.to_string();
        let what = match &named {
            Some(name) if spindle.collets.iter().any(|c| c.name == *name) => {
                say!("set-up-collet-size", collet = name, bar = bar)
            }
            Some(name) => say!("set-up-collet-unknown", collet = super::slips::shown(name)),
            None if fitting.is_empty() => say!("set-up-no-collet", bar = bar),
            None => say!("set-up-collet-which", bar = bar),
        };
        let help = match fitting.first() {
            None => say!("set-up-no-collet-help", collets = machine_names(&spindle.collets)),
            Some(first) => say!("set-up-collet-which-help", first = first.name, collets = fitting_names(&fitting)),
        };
        r.complain(&map.place(if named.is_some() { "collet" } else { "grip" }), Diag::new(what).help(help));
        return None;
    };
    let diag = if nose_mm < spindle.nearest_mm || nose_mm > spindle.farthest_mm {
        let (nearest, farthest) = (spindle.nearest_mm.to_string(), spindle.farthest_mm.to_string());
        Diag::new(say!("set-up-out-of-travel", at = nose_mm.to_string(), machine = machine.name)).help(say!(
            "set-up-out-of-travel-help",
            nearest = nearest,
            farthest = farthest
        ))
    } else if nose_mm + collet.hold_mm > front_mm {
        let least = (nose_mm + collet.hold_mm).to_string();
        Diag::new(say!("set-up-bar-in-collet", front = front_mm.to_string())).help(say!(
            "set-up-bar-in-collet-help",
            least = least,
            collet = collet.name
        ))
    } else {
        return Some(Some(Grip { nose_mm, hold_mm: collet.hold_mm }));
    };
    r.complain(&map.place("grip"), diag);
    None
}

fn fitting_names(collets: &[&Collet]) -> String {
    collets.iter().map(|c| c.name.as_str()).collect::<Vec<_>>().join(", ")
}

fn reading(r: &mut Reader, node: &Spanned<Node>, set_up: &SetUp, machine: &Machine) -> Option<Dial> {
    let map = r.map(node, &["load", "at", "read_at", "deflection"])?;
    let load = r.number(&map, &fields::LOAD);
    let at = r.number(&map, &fields::AT);
    let read_at = r.number_or(&map, &fields::READ_AT, at);
    let deflection = r.number(&map, &fields::DEFLECTION);
    let dial = Dial { load_n: load?, at_mm: at?, read_at_mm: read_at?, deflection_um: deflection? };
    for (key, at_mm) in [("at", dial.at_mm), ("read_at", dial.read_at_mm)] {
        if let Some(why) = out_of_reach(set_up, machine, at_mm) {
            let diag = Diag::new(why).help(say!("reading-place-help"));
            r.complain(&map.place(key), diag);
            return None;
        }
    }
    if dial.at_mm == dial.read_at_mm && dial.deflection_um <= 0.0 {
        let diag = Diag::new(say!("reading-no-deflection")).help(say!("reading-no-deflection-help"));
        r.complain(&map.place("deflection"), diag);
        return None;
    }
    Some(dial)
}

/// Why neither the load nor the dial can be at a place. None if they can.
fn out_of_reach(set_up: &SetUp, machine: &Machine, at_mm: f64) -> Option<&'static str> {
    if at_mm > set_up.front_mm {
        return Some(lang::text("reading-beyond-bar"));
    }
    if set_up.grip.is_some_and(|g| at_mm > g.nose_mm) {
        return Some(lang::text("reading-in-spindle"));
    }
    if at_mm >= 0.0 {
        return None;
    }
    match set_up.headstock_mm {
        None => Some(lang::text("reading-in-headstock")),
        Some(_) if machine.bush.as_ref().is_some_and(|b| at_mm > -b.land_mm) => Some(lang::text("reading-in-bush")),
        Some(headstock_mm) if at_mm < -headstock_mm => Some(lang::text("reading-behind-headstock")),
        Some(_) => None,
    }
}
