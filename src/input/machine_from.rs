//! The machine of a job or of readings: from its own file, from the shop, or from the text around it.

use std::path::Path;
use std::sync::{Arc, LazyLock};

use super::node::{Node, parse};
use super::reader::{Map, Reader};
use super::{Named, file, machine, units};
use crate::diag::{Diag, Source};
use crate::job::Machine;
use crate::job::shop::{Given, ShopMachine, What};
use crate::say;

/// Where the machine of a job comes from.
#[derive(Debug, Clone, Copy)]
pub(super) enum MachineFrom<'a> {
    /// From the job. A relative path in it is relative to this folder.
    Folder(&'a Path),
    /// From this file or machine of the shop, whatever the job says.
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

/// A machine, and what is known of it beside.
#[derive(Debug)]
pub(super) struct Found {
    /// The machine.
    pub(super) machine: Machine,
    /// The text of its file, if it has one.
    pub(super) text: Option<String>,
    /// The note about mixed units in its file.
    pub(super) mixed: Option<String>,
    /// Its cost per hour in the shop.
    pub(super) per_hour: Option<Given<f64>>,
}

/// The machine, with the collets that the shop has for it. Errors in its file go to `from_machine`.
pub(super) fn of(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    from: MachineFrom<'_>,
    from_machine: &mut Vec<Diag>,
) -> Option<Found> {
    let shop = r.shop().cloned();
    let in_shop = |name: Option<&str>| shop.as_ref().and_then(|shop| shop.machine(name));
    let own = match (from, map.get("machine").map(|node| &node.value)) {
        (MachineFrom::File(path), _) => path.to_str().and_then(|name| in_shop(Some(name))),
        (_, None) => in_shop(None),
        (_, Some(Node::Text(name))) => in_shop(Some(name.trim())),
        _ => None,
    };
    let mut found = match own {
        Some(own) => {
            if !matches!(from, MachineFrom::File(_)) && map.get("machine").is_none() {
                r.given_by_shop("machine", own.name.clone(), own.line);
            }
            of_shop(r, own, from_machine)
        }
        None => given(r, source, map, from, from_machine),
    }?;
    let name = own.map(|own| own.name.as_str());
    if let (Some(shop), Some(counter)) = (&shop, &mut found.machine.counter_spindle) {
        shop.add_collets(name, &mut counter.collets);
        if counter.collets.is_empty() {
            let diag = Diag::new(say!("shop-no-collet", machine = found.machine.name, file = shop.file_name()))
                .help(say!("shop-no-collet-help"));
            r.complain(&map.place("machine"), diag);
            return None;
        }
    }
    Some(found)
}

/// A machine of the shop.
fn of_shop(r: &Reader, own: &ShopMachine, from_machine: &mut Vec<Diag>) -> Option<Found> {
    let per_hour = own.per_hour.map(|value| Given { value, line: own.line });
    match &own.what {
        What::Here => {
            LazyLock::force(&own.machine).clone().map(|machine| Found { machine, text: None, mixed: None, per_hour })
        }
        What::File(source) => Some(Found { per_hour, ..in_file(r, source.clone(), from_machine)? }),
    }
}

/// The machine that the call or the job gives.
fn given(
    r: &mut Reader,
    source: &Arc<Source>,
    map: &Map,
    from: MachineFrom<'_>,
    from_machine: &mut Vec<Diag>,
) -> Option<Found> {
    if let MachineFrom::File(path) = from {
        return in_file(r, file::source_at(path), from_machine);
    }
    let node = r.required(map, "machine", "the path of a machine file, or the machine itself")?;
    if let Node::Map(_) = node.value {
        return machine::read(r, node, "machine").map(|machine| Found {
            machine,
            text: None,
            mixed: None,
            per_hour: None,
        });
    }
    let written = r.text_in(node, "machine")?;
    let base_dir = match from {
        MachineFrom::Text(Some(machine)) => {
            return in_file(r, file::source_of(&machine.name, machine.text.as_str()), from_machine);
        }
        MachineFrom::Text(None) => {
            let diag = Diag::new(say!("machine-in-file", file = written)).help(say!("machine-in-file-help"));
            r.complain(&node.referenced, diag);
            return None;
        }
        MachineFrom::Folder(folder) => folder,
        MachineFrom::File(_) => Path::new(""),
    };
    match file::source_at(&base_dir.join(&written)) {
        Ok(source) => in_text(r, &source, from_machine),
        Err(diag) => {
            let from = match r.shop().filter(|shop| !shop.machines.is_empty()) {
                Some(shop) => {
                    let names: Vec<&str> = shop.machines.iter().map(|machine| machine.name.as_str()).collect();
                    say!("machine-path-or-name", file = shop.file_name(), names = names.join(", "))
                }
                None => say!("machine-path-from", file = source.path.display().to_string()),
            };
            let help = diag.help.as_ref().map_or_else(|| from.clone(), |help| format!("{help}. {from}"));
            r.complain(&node.referenced, diag.help(help));
            None
        }
    }
}

/// Reads the machine from its file, if that can be read.
fn in_file(r: &Reader, source: Result<Arc<Source>, Diag>, from_machine: &mut Vec<Diag>) -> Option<Found> {
    match source {
        Ok(source) => in_text(r, &source, from_machine),
        Err(diag) => {
            from_machine.push(diag);
            None
        }
    }
}

/// The machine of a shop's file, if it has no errors. Its collets may be those of the shop.
pub(super) fn in_clean_file(source: &Arc<Source>) -> Option<Machine> {
    let mut r = Reader::new(Arc::clone(source));
    r.collets_elsewhere = true;
    let found = in_text(&r, source, &mut Vec::new())?;
    Some(found.machine)
}

/// Reads the machine from the text of its file.
fn in_text(r: &Reader, source: &Arc<Source>, from_machine: &mut Vec<Diag>) -> Option<Found> {
    let tree = match parse(source) {
        Ok(tree) => tree,
        Err(diag) => {
            from_machine.push(diag);
            return None;
        }
    };
    let stem = source.path.file_stem();
    let default_name = stem.map_or_else(|| "machine".to_owned(), |stem| stem.to_string_lossy().into_owned());
    let mut inner = Reader::new(Arc::clone(source));
    inner.collets_elsewhere = r.collets_elsewhere;
    let machine = machine::read(&mut inner, &tree, &default_name);
    let mixed = units::mixed(source, inner.foreign());
    let diags = inner.finish(&tree);
    let clean = diags.is_empty();
    from_machine.extend(diags);
    let machine = machine.filter(|_| clean)?;
    Some(Found { machine, text: Some(source.text.clone()), mixed, per_hour: None })
}
