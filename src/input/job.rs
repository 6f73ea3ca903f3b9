//! The whole job: reads its parts in order, then checks what must hold between them.

use std::path::Path;
use std::sync::Arc;

use serde_saphyr::Location;
use sha2::{Digest, Sha256};

use super::node::{Node, parse, place_of};
use super::reader::{Map, Reader};
use super::{Named, centre, cutting, file, limits, machine, order, section, shaft, vary, wishes};
use crate::diag::{Diag, Source};
use crate::fields;
use crate::job::{Hold, Holding, Job, Machine, Objective, Range, SectionKind, Shaft, Stock, StockKind, Tolerance};
use crate::say;

/// Keys of a job.
pub(super) const KEYS: [&str; 14] = [
    "shaft",
    "stock",
    "machine",
    "cutting",
    "holding",
    "hold",
    "limits",
    "planning",
    "scatter",
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

pub(super) const STOCK_KINDS: [(&str, StockKind); 4] = [
    (StockKind::Drawn.key(), StockKind::Drawn),
    (StockKind::Turned.key(), StockKind::Turned),
    (StockKind::Ground.key(), StockKind::Ground),
    (StockKind::BarFeeder.key(), StockKind::BarFeeder),
];

/// Where the machine of a job comes from.
#[derive(Debug, Clone, Copy)]
pub(super) enum MachineFrom<'a> {
    /// From the job. A relative path in it is relative to this folder.
    Folder(&'a Path),
    /// From this file, whatever the job says.
    File(&'a Path),
    /// From the job. If the job names a file, this is the text of that file. No file is opened.
    Text(Option<&'a Named>),
}

impl<'a> MachineFrom<'a> {
    /// From the file `other` if it is given, otherwise from the job, with paths relative to `folder`.
    pub(super) fn files(folder: &'a Path, other: Option<&'a Path>) -> Self {
        other.map_or(MachineFrom::Folder(folder), MachineFrom::File)
    }
}

/// Reads a job.
///
/// # Errors
/// All errors: first those of the job, in file order, then those of the machine file.
pub(super) fn read(source: &Arc<Source>, machine: MachineFrom<'_>) -> Result<Job, Vec<Diag>> {
    let tree = parse(source).map_err(|diag| vec![diag])?;
    read_tree(source, &tree, machine, &[])
}

/// Reads a job from its tree. `varied` are the values of a part of a family. The tree contains them already.
pub(super) fn read_tree(
    source: &Arc<Source>,
    tree: &serde_saphyr::Spanned<Node>,
    machine: MachineFrom<'_>,
    varied: &[(&Range, f64)],
) -> Result<Job, Vec<Diag>> {
    if let Some(diag) = machine_for_job(source, tree) {
        return Err(vec![diag]);
    }
    let mut r = Reader::new(Arc::clone(source));
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
    let Node::Map(entries) = &tree.value else { return None };
    let has = |key: &str| entries.iter().any(|(k, _)| matches!(&k.value, Node::Text(text) if text == key));
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
    // The kind of the bar may give the straightness of the shaft, so the bar is opened first; what is missing is told in order.
    let shaft = r.required(map, "shaft", "name, material and sections");
    let bar = r
        .required(map, "stock", "the bar, such as `{diameter: 25}`")
        .and_then(|node| r.map(node, &["diameter", "tolerance", "bar_length", "kind"]));
    let kind = bar.as_ref().and_then(|bar| kind_of_stock(r, bar));
    let shaft = shaft.and_then(|node| shaft::read(r, node, kind.flatten(), &mut notes));
    let stock = bar.and_then(|bar| stock(r, &bar, kind?, shaft.as_ref()));
    let machine = machine_of(r, source, map, machine, from_machine);
    let cutting = cutting::read(r, map, shaft.as_ref().map(|shaft| &shaft.material), &mut notes);
    let holding = r.choice(map, "holding", &HOLDINGS, Some(Holding::Bush));
    let hold = r.choice(map, "hold", &HOLDS, Some(Hold::Collet));
    let limits = limits::read(r, map, stock.as_ref().map(|stock| stock.diameter_mm));
    let wishes = wishes::read(r, map, shaft.as_ref());
    if let Some(wishes) = wishes.as_ref().filter(|w| !w.is_empty()) {
        notes.push(say!("note-wishes", wishes = wishes.told().join("; ")));
    }
    let objective = r.choice(map, "objective", &OBJECTIVES, Some(Objective::Time));
    let planning = limits::planning(r, map);
    let scatter = limits::scatter(r, map);
    let rates = limits::rates(r, map);
    let order = order::read(r, map);
    let vary = vary::read(r, map, shaft.as_ref());
    let machine = machine.and_then(|(machine, text)| {
        holds(r, map, &machine, holding?)?;
        Some((machine, text))
    });
    let (shaft, stock, (machine, machine_text)) = (shaft?, stock?, machine?);
    let (hold, wishes) = (hold?, wishes?);
    if hold == Hold::Centre {
        centre::fits(r, map, &shaft, &machine, &wishes, holding?)?;
    }
    bar_is_long_enough(r, map, &shaft, &stock, &machine)?;
    notes.extend(stays_as_drawn(&shaft, &stock));
    let vary = vary?;
    notes.extend(vary::note(&vary, varied));
    Some(Job {
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
        vary,
        notes,
        input_digest: digest(&source.text, machine_text.as_deref(), varied),
    })
}

/// How the bar was made: `Some(None)` if it is left out.
fn kind_of_stock(r: &mut Reader, map: &Map) -> Option<Option<StockKind>> {
    match map.tried("kind") {
        false => Some(None),
        true => r.choice(map, "kind", &STOCK_KINDS, None).map(Some),
    }
}

fn stock(r: &mut Reader, map: &Map, kind: Option<StockKind>, shaft: Option<&Shaft>) -> Option<Stock> {
    let diameter = r.number(map, &fields::STOCK_DIAMETER);
    let bar_length = r.number_or(map, &fields::BAR_LENGTH, None);
    let tolerance = r.optional(map, "tolerance").and_then(|node| match (node, diameter) {
        (None, _) => Some(None),
        (Some(node), Some(diameter)) => section::tolerance_in(r, node, diameter).map(Some),
        (Some(_), None) => None,
    });
    let diameter_mm = diameter?;
    let thickest = shaft.and_then(|shaft| {
        shaft
            .sections
            .iter()
            .enumerate()
            .max_by(|a, b| a.1.largest_mm().total_cmp(&b.1.largest_mm()).then(b.0.cmp(&a.0)))
    });
    if let Some((index, section)) = thickest
        && section.largest_mm() > diameter_mm
    {
        // A circle across corners has endless decimals. The message gives it to a millionth of a mm, rounded up so that
        // a bar of this size is enough.
        let enough = (section.largest_mm() * 1e6).ceil() / 1e6;
        let (bar, needed) = (diameter_mm.to_string(), enough.to_string());
        let diag = Diag::new(say!("stock-too-thin", bar = bar, section = section.label(index), needed = needed))
            .help(say!("stock-too-thin-help", needed = needed));
        r.complain(&map.place("diameter"), diag);
        return None;
    }
    Some(Stock { diameter_mm, tolerance: tolerance?, bar_length_mm: bar_length?, kind })
}

/// The machine, and the text of its file if it has one.
pub(super) fn machine_of(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    from: MachineFrom<'_>,
    from_machine: &mut Vec<Diag>,
) -> Option<(Machine, Option<String>)> {
    if let MachineFrom::File(path) = from {
        return match machine_file(path, from_machine) {
            Ok(machine) => machine,
            Err(diag) => {
                from_machine.push(diag);
                None
            }
        };
    }
    let node = r.required(map, "machine", "the path of a machine file, or the machine itself")?;
    if let Node::Map(_) = node.value {
        return machine::read(r, node, "machine").map(|machine| (machine, None));
    }
    let written = r.text_in(node, "machine")?;
    let base_dir = match from {
        MachineFrom::Text(Some(machine)) => {
            return match file::source_of(&machine.name, &machine.text) {
                Ok(source) => machine_text(source, from_machine),
                Err(diag) => {
                    from_machine.push(diag);
                    None
                }
            };
        }
        MachineFrom::Text(None) => {
            let diag = Diag::new(say!("machine-in-file", file = written)).help(say!("machine-in-file-help"));
            r.complain(&node.referenced, diag);
            return None;
        }
        MachineFrom::Folder(folder) => folder,
        MachineFrom::File(_) => Path::new(""),
    };
    match machine_file(&base_dir.join(&written), from_machine) {
        Ok(machine) => machine,
        Err(diag) => {
            let from = say!("machine-path-from", file = source.path.display().to_string());
            let help = diag.help.as_ref().map_or_else(|| from.clone(), |help| format!("{help}. {from}"));
            r.complain(&node.referenced, diag.help(help));
            None
        }
    }
}

/// Reads a machine file. Errors in its content go to `from_machine`.
fn machine_file(path: &Path, from_machine: &mut Vec<Diag>) -> Result<Option<(Machine, Option<String>)>, Diag> {
    Ok(machine_text(file::source_at(path)?, from_machine))
}

/// Reads the machine from a text, and returns the text with it.
fn machine_text(source: Arc<Source>, from_machine: &mut Vec<Diag>) -> Option<(Machine, Option<String>)> {
    let tree = match parse(&source) {
        Ok(tree) => tree,
        Err(diag) => {
            from_machine.push(diag);
            return None;
        }
    };
    let stem = source.path.file_stem();
    let default_name = stem.map_or_else(|| "machine".to_owned(), |stem| stem.to_string_lossy().into_owned());
    let mut r = Reader::new(Arc::clone(&source));
    let machine = machine::read(&mut r, &tree, &default_name);
    let diags = r.finish(&tree);
    let clean = diags.is_empty();
    from_machine.extend(diags);
    machine.filter(|_| clean).map(|machine| (machine, Some(source.text.clone())))
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

/// `sha256:` and the hex digest of the job text, the length of the machine text, the machine text and the varied
/// values.
fn digest(job: &str, machine: Option<&str>, varied: &[(&Range, f64)]) -> String {
    let mut hash = Sha256::new();
    hash.update(job.as_bytes());
    if let Some(machine) = machine {
        hash.update((machine.len() as u64).to_le_bytes());
        hash.update(machine.as_bytes());
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
